//! The stone after each cut: what is left, what came free, and where every square millimetre went.

use serde::Serialize;

use crate::cut::Cut;
use crate::diag::{Finding, Findings};
use crate::geom::rectangle::{Rectangle, best_along_edges};
use crate::geom::{Outline, Point, Region, Seg, Side, boolean};
use crate::job::{Job, Stone};
use crate::place::Placement;
use crate::units::{Mass, MassRange};

/// Stone smaller than this that comes free between overlapping slots is a crumb: it is counted with
/// the kerf, mm² (judgement: one square centimetre).
const CRUMB_MM2: f64 = 100.0;

/// A piece of waste.
#[derive(Clone, Debug, Serialize)]
pub struct Piece {
    /// `W1`, `W2` … in the order they come free.
    pub name: String,
    /// The cut that frees it.
    pub after_cut: usize,
    /// Its boundaries at the face: the outer one counter-clockwise, then any holes clockwise. Parts
    /// that are separate at the face but hang together lower down are one piece with several outer
    /// boundaries.
    pub outline: Vec<Vec<Seg>>,
    /// Area, mm².
    pub area_mm2: f64,
    /// Mass.
    pub mass: MassRange,
    /// Balance point.
    pub balance: Point,
    /// A large rectangle that can still be had from it.
    pub best_rectangle: Option<BestRectangle>,
}

/// A rectangle inside an offcut.
#[derive(Clone, Debug, Serialize)]
pub struct BestRectangle {
    /// Its corners.
    pub corners: [Point; 4],
    /// The longer side, mm.
    pub long_mm: f64,
    /// The shorter side, mm.
    pub short_mm: f64,
    /// Area, mm².
    pub area_mm2: f64,
}

/// The stone that is kept, after a cut.
#[derive(Clone, Debug, Serialize)]
pub struct Remaining {
    /// The cut.
    pub after_cut: usize,
    /// Mass of what is left.
    pub mass: MassRange,
    /// Its balance point.
    pub balance: Point,
}

/// Where the slab's area went, mm². The last four add up to the first.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct BalanceSheet {
    /// The slab as bought.
    pub slab_mm2: f64,
    /// The finished top.
    pub top_mm2: f64,
    /// Left on the sawn edges to be taken off, cusps included.
    pub allowance_mm2: f64,
    /// Taken by the disc, crumbs included.
    pub kerf_mm2: f64,
    /// Waste pieces.
    pub offcuts_mm2: f64,
}

/// Everything known about the stone in the course of the cuts.
#[derive(Clone, Debug)]
pub struct Stones {
    /// Waste pieces in the order they come free.
    pub pieces: Vec<Piece>,
    /// The kept stone after each cut.
    pub remaining: Vec<Remaining>,
    /// The kept stone after the last cut, allowances and cusps still on it.
    pub kept: Region,
    /// The kept stone after each cut, as in `remaining` but without waste that still hangs on to it
    /// lower down.
    pub states: Vec<Region>,
    /// Where the area went.
    pub balance_sheet: BalanceSheet,
}

/// Mass of a piece of the slab from its area in mm².
///
/// The range spans the density range and the thickness readings; a weighed slab leaves none.
#[must_use]
pub fn mass_of(stone: &Stone, area_mm2: f64) -> MassRange {
    let t = stone.thickness;
    let mass = |thickness: f64, density: f64| Mass::from_kg(area_mm2 * thickness * density * 1e-9);
    let (thin, thick) = if stone.weighed.is_some() {
        (t.mean, t.mean)
    } else {
        (t.least, t.most)
    };
    MassRange {
        low: mass(thin, stone.density.low),
        likely: mass(t.mean, stone.density.likely),
        high: mass(thick, stone.density.high),
    }
}

/// Makes every cut in order and follows the stone. Names in [`Cut::frees`] are filled in.
#[must_use]
pub fn follow(job: &Job, placement: &Placement, cuts: &mut [Cut]) -> Stones {
    let slab = job.slab.shape.outline();
    let inside = inner_point(placement);
    let mut kept = Region::solid(slab.clone());
    let mut under = Underside::new(job, slab);
    let (mut pieces, mut remaining, mut kerf_mm2) = (Vec::new(), Vec::new(), 0.0);
    let mut states = Vec::new();
    // Cut off at the face, but still hanging on to the kept stone lower down.
    let mut hanging: Vec<Region> = Vec::new();
    for cut in cuts.iter_mut() {
        let slots = cut.slots();
        let mut whole = std::mem::take(&mut hanging);
        whole.insert(0, kept.clone());
        kerf_mm2 += total(&boolean::intersection(&whole, &slots));
        under.make(cut, inside);
        let mut free = Vec::new();
        for part in boolean::difference(&whole, &slots) {
            if part.side(inside) == Side::Inside {
                kept = part;
            } else if part.area() < CRUMB_MM2 {
                kerf_mm2 += part.area();
            } else if under.holds(&part) {
                hanging.push(part);
            } else {
                free.push(part);
            }
        }
        for parts in under.together(free) {
            let piece = piece(&job.stone, &parts, pieces.len() + 1, cut.number);
            cut.frees.push(piece.name.clone());
            pieces.push(piece);
        }
        remaining.push(left(job, cut.number, &kept, &hanging));
        states.push(kept.clone());
    }
    let top_mm2 = placement.top.outline().area();
    let balance_sheet = BalanceSheet {
        slab_mm2: slab.area(),
        top_mm2,
        allowance_mm2: kept.area() + total(&hanging) - top_mm2,
        kerf_mm2,
        offcuts_mm2: pieces.iter().map(|p| p.area_mm2).sum(),
    };
    Stones {
        pieces,
        remaining,
        kept,
        states,
        balance_sheet,
    }
}

/// The kept stone at the underside, where the disc's cuts are shortest: waste that is joined to it
/// there is not free.
struct Underside {
    below_mm: f64,
    kept: Region,
    /// What the last cut has parted from it.
    parted: Vec<Region>,
}

impl Underside {
    fn new(job: &Job, slab: &Outline) -> Self {
        Self {
            below_mm: job.stone.thickness.most,
            kept: Region::solid(slab.clone()),
            parted: Vec::new(),
        }
    }

    fn make(&mut self, cut: &Cut, inside: Point) {
        let whole = [self.kept.clone()];
        let parts = boolean::difference(&whole, &cut.slots_at(self.below_mm));
        let (kept, parted): (Vec<Region>, Vec<Region>) = parts
            .into_iter()
            .partition(|p| p.side(inside) == Side::Inside);
        self.parted = parted;
        if let Some(kept) = kept.into_iter().next() {
            self.kept = kept;
        }
    }

    fn holds(&self, part: &Region) -> bool {
        joined(&self.kept, part)
    }

    /// Parts of the face sorted into bodies: those that hang together here are one.
    fn together(&self, parts: Vec<Region>) -> Vec<Vec<Region>> {
        let mut bodies: Vec<(Option<usize>, Vec<Region>)> = Vec::new();
        for part in parts {
            let root = self.parted.iter().position(|under| joined(under, &part));
            match bodies.iter_mut().find(|b| root.is_some() && b.0 == root) {
                Some((_, body)) => body.push(part),
                None => bodies.push((root, vec![part])),
            }
        }
        bodies.into_iter().map(|(_, body)| body).collect()
    }
}

/// Whether a part of the face stands on a part of the underside.
fn joined(under: &Region, part: &Region) -> bool {
    let on = boolean::intersection(
        std::slice::from_ref(under),
        std::slice::from_ref(&part.outer),
    );
    total(&on) > JOINED_MM2
}

/// Overlaps smaller than this are rounding, mm².
const JOINED_MM2: f64 = 1.0;

fn left(job: &Job, after_cut: usize, kept: &Region, hanging: &[Region]) -> Remaining {
    let (area, balance) = together(std::iter::once(kept).chain(hanging));
    Remaining {
        after_cut,
        mass: mass_of(&job.stone, area),
        balance,
    }
}

/// A seller's word that differs from the computed weight by more than this is told (judgement).
const SAID_TOLERANCE: f64 = 0.10;
/// Waste heavier than this wants a support of its own under it, kg (judgement).
const HELD_BY_HAND_KG: f64 = 5.0;

/// What the weights themselves give cause to say: a seller's figure that cannot be right, waste
/// too heavy to be held by hand.
#[must_use]
pub fn findings(job: &Job, stones: &Stones) -> Findings {
    let mut findings = Findings::default();
    findings.cautions.extend(against_said(job));
    findings.cautions.extend(heavy_waste(&stones.pieces));
    findings
}

fn against_said(job: &Job) -> Option<Finding> {
    let said = job.stone.said?.kg();
    let computed = mass_of(&job.stone, job.slab.shape.outline().area())
        .likely
        .kg();
    let off = said / computed - 1.0;
    (off.abs() > SAID_TOLERANCE).then(|| Finding {
        id: "said-weight",
        title: "The seller's weight and the computed weight differ".into(),
        detail: format!(
            "Said {said:.0} kg, computed {computed:.0} kg: {:+.0} %, more than {:.0} %. One of \
             stone, size or thickness is wrong. Plan the lift with the heavier figure and weigh \
             the slab if you can.",
            off * 100.0,
            SAID_TOLERANCE * 100.0
        ),
        source: "judgement: 10 %".into(),
    })
}

fn heavy_waste(pieces: &[Piece]) -> Option<Finding> {
    let heavy: Vec<String> = pieces
        .iter()
        .filter(|p| p.mass.high.kg() > HELD_BY_HAND_KG)
        .map(|p| {
            let kg = p.mass.high.kg();
            format!("{} up to {kg:.0} kg after cut {}", p.name, p.after_cut)
        })
        .collect();
    (!heavy.is_empty()).then(|| Finding {
        id: "waste-needs-support",
        title: "Waste too heavy to be held by hand comes free".into(),
        detail: format!(
            "{}. Carry every piece over {HELD_BY_HAND_KG:.0} kg on its own supports, level with \
             the kept stone on both sides of the cut, before the last pass. A sagging piece \
             closes the kerf on the disc.",
            heavy.join("; ")
        ),
        source: "judgement: 5 kg; support on both sides of the cut: standard grinder warnings, \
                 IEC 62841-2-3"
            .into(),
    })
}

/// A point well inside the top: its centroid, or failing that a point just inside its boundary.
fn inner_point(placement: &Placement) -> Point {
    let top = placement.top.outline();
    let centroid = top.centroid();
    if top.side(centroid) == Side::Inside {
        return centroid;
    }
    let edge = top.segs()[0];
    edge.at(0.5) + edge.heading(0.5).left() * 1.0
}

fn total(regions: &[Region]) -> f64 {
    regions.iter().map(Region::area).sum()
}

fn piece(stone: &Stone, parts: &[Region], number: usize, after_cut: usize) -> Piece {
    let (area_mm2, balance) = together(parts);
    let whole = parts.iter().filter(|p| p.holes.is_empty());
    let best = whole.filter_map(|p| best_along_edges(&p.outer));
    let boundaries = |p: &Region| -> Vec<Vec<Seg>> {
        std::iter::once(p.outer.segs().to_vec())
            .chain(p.holes.iter().map(Outline::clockwise))
            .collect()
    };
    Piece {
        name: format!("W{number}"),
        after_cut,
        outline: parts.iter().flat_map(boundaries).collect(),
        area_mm2,
        mass: mass_of(stone, area_mm2),
        balance,
        best_rectangle: best
            .max_by(|a, b| a.area().total_cmp(&b.area()))
            .map(BestRectangle::from),
    }
}

/// Area and balance point of several parts as one body.
fn together<'a>(parts: impl IntoIterator<Item = &'a Region>) -> (f64, Point) {
    let moments = parts.into_iter().map(Region::first_moments);
    let (area, x, y) = moments.fold((0.0, 0.0, 0.0), |a, m| (a.0 + m.0, a.1 + m.1, a.2 + m.2));
    (area, Point::new(x / area, y / area))
}

impl From<Rectangle> for BestRectangle {
    fn from(rectangle: Rectangle) -> Self {
        let (long_mm, short_mm) = rectangle.sides();
        Self {
            corners: rectangle.corners,
            long_mm,
            short_mm,
            area_mm2: rectangle.area(),
        }
    }
}
