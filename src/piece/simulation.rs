//! Makes every cut in order and follows the stone.

use crate::cut::Cut;
use crate::cut::kept::Kept;
use crate::geom::{Outline, Point, Region, Seg, Side, boolean};
use crate::job::{Job, Stone};
use crate::place::Placement;

use super::{
    BalanceSheet, CRUMB_MM2, Crossing, Freed, Piece, Remaining, Stones, finding, fissure, mass_of,
    standing,
};

/// Makes every cut in order and follows the stone. Names in [`Cut::frees`] are filled in. Where the run-outs
/// of some cuts are taken out by hand after a cut, that is done as one more step of it.
#[must_use]
pub fn follow(job: &Job, placement: &Placement, cuts: &mut [Cut]) -> Stones {
    let slab = job.slab.region();
    let inside = inner_point(job, placement);
    let mut simulation = CutSimulation {
        job,
        inside,
        kept: slab.clone(),
        under: Underside::new(job, slab.clone()),
        hanging: Vec::new(),
        kerf_mm2: 0.0,
        pieces: Vec::new(),
        whole: Vec::new(),
        crossings: Vec::new(),
    };
    let (mut remaining, mut states) = (Vec::new(), Vec::new());
    for i in 0..cuts.len() {
        let number = cuts[i].number;
        let under = cuts[i].slots_at(simulation.under.below_mm);
        let mut freed = simulation.make(number, &cuts[i].slots(), &under, Freed::Saw);
        let by_hand: Vec<Outline> = cuts
            .iter()
            .filter(|c| cuts[i].run_outs_removed.contains(&c.number))
            .flat_map(Cut::run_outs)
            .collect();
        if !by_hand.is_empty() {
            freed.extend(simulation.make(number, &by_hand, &by_hand, Freed::Hand));
        }
        cuts[i].frees = freed;
        remaining.push(left(job, number, &simulation.kept, &simulation.hanging));
        states.push(simulation.kept.clone());
    }
    let top_mm2 = placement.finished().area();
    let balance_sheet = BalanceSheet {
        slab_mm2: slab.area(),
        top_mm2,
        allowance_mm2: simulation.kept.area() + total(&simulation.hanging) - top_mm2,
        kerf_mm2: simulation.kerf_mm2,
        offcuts_mm2: simulation.pieces.iter().map(|p| p.area_mm2).sum(),
    };
    let mut unfreed = simulation.hanging;
    unfreed.retain(|waste| finding::stands_out(job, placement, waste, cuts));
    unfreed.extend(finding::lumps(job, placement, &simulation.kept, cuts));
    let left = [&simulation.kept, &simulation.under.kept];
    standing::add(job, placement, left, &unfreed, cuts);
    Stones {
        pieces: simulation.pieces,
        whole: simulation.whole,
        remaining,
        kept: simulation.kept,
        under: simulation.under.kept,
        unfreed,
        states,
        crossings: simulation.crossings,
        balance_sheet,
    }
}

/// The stone in the course of the cuts.
pub(super) struct CutSimulation<'a> {
    job: &'a Job,
    /// A point of the kept stone.
    inside: Point,
    kept: Region,
    under: Underside,
    /// Cut off at the face, but still hanging on to the kept stone lower down.
    hanging: Vec<Region>,
    kerf_mm2: f64,
    pieces: Vec<Piece>,
    whole: Vec<Vec<Outline>>,
    crossings: Vec<Crossing>,
}

impl CutSimulation<'_> {
    /// Takes slots out of the face and of the underside, and gives the names of what comes free.
    fn make(
        &mut self,
        number: usize,
        slots: &[Outline],
        under: &[Outline],
        freed: Freed,
    ) -> Vec<String> {
        let mut whole = std::mem::take(&mut self.hanging);
        whole.insert(0, self.kept.clone());
        let flaws = &self.job.slab.flaws;
        let met = fissure::crossed(flaws, &whole, slots, number);
        self.crossings
            .extend(met.into_iter().filter(|_| freed == Freed::Saw));
        let (inside, underside) = (self.inside, &mut self.under);
        let (parts, ()) = rayon::join(
            || boolean::difference(&whole, slots),
            || underside.make(under, inside),
        );
        // The kerf is what the parts have lost, so that the balance closes whatever the slots' own areas
        // have lost by rounding.
        self.kerf_mm2 += total(&whole) - total(&parts);
        let mut free = Vec::new();
        for part in parts {
            if part.side(self.inside) == Side::Inside {
                self.kept = part;
            } else if part.area() < CRUMB_MM2 {
                self.kerf_mm2 += part.area();
            } else if self.under.holds(&part) {
                self.hanging.push(part);
            } else {
                free.push(part);
            }
        }
        let mut names = Vec::new();
        for parts in self.under.together(free) {
            let count = self.pieces.len() + 1;
            let piece = Piece {
                flaws: fissure::through(flaws, &parts),
                ..piece(&self.job.stone, &parts, count, number, freed)
            };
            names.push(piece.name.clone());
            self.pieces.push(piece);
            let whole = parts.into_iter().filter(|p| p.holes.is_empty());
            self.whole.push(whole.map(|p| p.outer).collect());
        }
        names
    }
}

/// The kept stone at the underside, where the disc's cuts are shortest: waste that is joined to it
/// there is not free.
pub(super) struct Underside {
    below_mm: f64,
    kept: Region,
    /// What the last cut has parted from it.
    parted: Vec<Region>,
}

impl Underside {
    fn new(job: &Job, slab: Region) -> Self {
        Self {
            below_mm: job.stone.thickness.most,
            kept: slab,
            parted: Vec::new(),
        }
    }

    fn make(&mut self, slots: &[Outline], inside: Point) {
        let whole = [self.kept.clone()];
        let parts = boolean::difference(&whole, slots);
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
pub(super) fn joined(under: &Region, part: &Region) -> bool {
    let on = boolean::intersection(
        std::slice::from_ref(under),
        std::slice::from_ref(&part.outer),
    );
    total(&on) > JOINED_MM2
}

/// Overlaps smaller than this are rounding, mm².
pub(super) const JOINED_MM2: f64 = 1.0;

pub(super) fn left(job: &Job, after_cut: usize, kept: &Region, hanging: &[Region]) -> Remaining {
    let (area, balance) = together(std::iter::once(kept).chain(hanging));
    Remaining {
        after_cut,
        mass: mass_of(&job.stone, area),
        balance,
    }
}

/// A point well inside the kept stone: the top's centroid where there is stone, else just inside the
/// boundary.
pub(super) fn inner_point(job: &Job, placement: &Placement) -> Point {
    let top = placement.finished();
    let centroid = top.centroid();
    if top.side(centroid) == Side::Inside {
        return centroid;
    }
    let inner = Kept::of(job, placement).inner_point();
    inner.unwrap_or_else(|| top.outer.segs()[0].at(0.5))
}

pub(super) fn total(regions: &[Region]) -> f64 {
    regions.iter().map(Region::area).sum()
}

pub(super) fn piece(
    stone: &Stone,
    parts: &[Region],
    number: usize,
    after_cut: usize,
    freed: Freed,
) -> Piece {
    let (area_mm2, balance) = together(parts);
    let boundaries = |p: &Region| -> Vec<Vec<Seg>> {
        std::iter::once(p.outer.segs().to_vec())
            .chain(p.holes.iter().map(Outline::clockwise))
            .collect()
    };
    Piece {
        name: format!("W{number}"),
        after_cut,
        freed,
        outline: parts.iter().flat_map(boundaries).collect(),
        area_mm2,
        mass: mass_of(stone, area_mm2),
        balance,
        best_rectangle: None,
        flaws: Vec::new(),
    }
}

/// Area and balance point of several parts as one body.
pub(super) fn together<'a>(parts: impl IntoIterator<Item = &'a Region>) -> (f64, Point) {
    let moments = parts.into_iter().map(Region::first_moments);
    let (area, x, y) = moments.fold((0.0, 0.0, 0.0), |a, m| (a.0 + m.0, a.1 + m.1, a.2 + m.2));
    (area, Point::new(x / area, y / area))
}
