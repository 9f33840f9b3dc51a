//! The stone piece by piece: what comes free, what is left, and what that weighs.

use rayon::iter::{IntoParallelRefIterator, ParallelIterator};
use serde::Serialize;

use crate::cut::practice::Offcut;
use crate::geom::rectangle::{Rectangle, best_of_piece};
use crate::geom::{Outline, Point, Region, Seg};
use crate::job::Stone;
use crate::units::{Mass, MassRange};

/// Stone smaller than this that comes free between overlapping slots is a crumb: it is counted with
/// the kerf, mm² (judgement: one square centimetre).
pub(crate) const CRUMB_MM2: f64 = 100.0;

/// What frees a piece.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Freed {
    /// The cut itself.
    Saw,
    /// A hand that takes out the run-outs after the cut.
    Hand,
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
    /// Taken by the discs and core bits, crumbs included; a core hole counts whole, its core is too
    /// small to use.
    pub kerf_mm2: f64,
    /// Waste pieces.
    pub offcuts_mm2: f64,
}

/// Everything known about the stone in the course of the cuts.
#[derive(Clone, Debug)]
pub struct Stones {
    /// Waste pieces in the order they come free; their best rectangles are still to be found.
    pub pieces: Vec<Piece>,
    /// Of each piece the parts without a hole.
    pub(super) whole: Vec<Vec<Outline>>,
    /// The kept stone after each cut.
    pub remaining: Vec<Remaining>,
    /// The kept stone after the last cut, allowances and cusps still on it.
    pub kept: Region,
    /// The kept stone at the underside, with what hangs on to it there.
    pub under: Region,
    /// Waste that no cut frees: it hangs on to the kept stone at the face or lower down.
    pub unfreed: Vec<Region>,
    /// The kept stone after each cut, as in `remaining` but without waste that still hangs on to it
    /// lower down.
    pub states: Vec<Region>,
    /// Cuts that cross flaws along a line.
    pub crossings: Vec<Crossing>,
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

impl Stones {
    /// The waste pieces, to practise in.
    #[must_use]
    pub fn offcuts(&self) -> Vec<Offcut<'_>> {
        let pieces = self.pieces.iter();
        pieces
            .map(|piece| Offcut {
                name: &piece.name,
                rings: &piece.outline,
                area_mm2: piece.area_mm2,
                after_cut: piece.after_cut,
            })
            .collect()
    }

    /// The best rectangle of each piece. It takes as long as all else about the pieces, and nothing else asks for it.
    #[must_use]
    pub fn best_rectangles(&self) -> Vec<Option<BestRectangle>> {
        let best = |parts: &Vec<Outline>| {
            let each = parts.iter().filter_map(best_of_piece);
            let best = each.max_by(|a, b| a.area().total_cmp(&b.area()));
            best.map(BestRectangle::from)
        };
        self.whole.par_iter().map(best).collect()
    }
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

/// A piece of waste.
#[derive(Clone, Debug, Serialize)]
pub struct Piece {
    /// `W1`, `W2` … in the order they come free.
    pub name: String,
    /// The cut that frees it.
    pub after_cut: usize,
    /// Whether the tools alone free it, or a hand that takes out the run-outs.
    pub freed: Freed,
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
    /// The flaws along a line that run through it, by their places in the job file from 0 on.
    pub flaws: Vec<usize>,
}

/// A cut that crosses a flaw that runs along a line.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Crossing {
    /// The flaw, by its place in the job file.
    pub flaw: usize,
    /// The cut, by number.
    pub cut: usize,
}
