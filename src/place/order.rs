//! The order of the straight trims.
//!
//! A trim made after its neighbour's waste is gone is shorter. What is left after a set of trims
//! does not depend on their order, so the search goes over the 2ⁿ sets, not the n! orders.

use crate::geom::{Line, Outline, Point};
use crate::job::Part;

/// How a trim ends.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum TrimEnd {
    /// It leaves the stone through an edge.
    RunOff,
    /// The sawn face stops here, inside the stone: at an inside corner of the top, or before kept
    /// stone that lies farther along.
    Stops(Point),
}

/// A straight trim: the near face of the kerf and where it runs through the stone.
#[derive(Clone, Debug)]
pub struct Trim {
    /// The edge, or the flat at a corner, that it makes.
    pub part: Part,
    /// The near face, running counter-clockwise round the top: kept stone to its left.
    pub face: Line,
    /// The middle of the finished edge, which tells the right stretch of the line.
    pub middle: Point,
    /// Stone left on the edge, mm.
    pub allowance_mm: f64,
    /// How it ends: backwards along the face, and forwards.
    pub ends: [TrimEnd; 2],
    /// Length through the stone at its turn in the order, mm.
    pub length_mm: f64,
}

/// More trims than this are taken in the order given.
const MOST_SEARCHED: usize = 12;

/// Puts trims into the order with the least total length sawn and fills in each length.
///
/// Trims whose line no longer runs through stone are left out. Cost: 2ⁿ cuts of the outline.
#[must_use]
pub fn least_sawing(slab: &Outline, trims: &[Trim]) -> Vec<Trim> {
    let order: Vec<usize> = if trims.len() <= MOST_SEARCHED {
        Search::new(slab, trims).best_order()
    } else {
        (0..trims.len()).collect()
    };
    let mut stone = slab.clone();
    let mut ordered = Vec::new();
    for i in order {
        let trim = &trims[i];
        if let Some(chord) = stone.chord(&trim.face, trim.middle) {
            ordered.push(Trim {
                length_mm: chord.length(),
                ..trim.clone()
            });
            stone = chord.left;
        }
    }
    ordered
}

/// What is known of one set of trims already made.
struct Stage {
    stone: Outline,
    /// Least total length that leads here, and the trim made last.
    total_mm: f64,
    last: Option<usize>,
}

struct Search<'a> {
    trims: &'a [Trim],
    stages: Vec<Option<Stage>>,
}

impl<'a> Search<'a> {
    fn new(slab: &Outline, trims: &'a [Trim]) -> Self {
        let mut stages: Vec<Option<Stage>> = (0..1usize << trims.len()).map(|_| None).collect();
        stages[0] = Some(Stage {
            stone: slab.clone(),
            total_mm: 0.0,
            last: None,
        });
        Self { trims, stages }
    }

    fn best_order(mut self) -> Vec<usize> {
        for set in 0..self.stages.len() {
            for next in (0..self.trims.len()).filter(|i| set & (1 << i) == 0) {
                self.try_next(set, next);
            }
        }
        self.trace_back()
    }

    fn try_next(&mut self, set: usize, next: usize) {
        let Some(here) = &self.stages[set] else {
            return;
        };
        let trim = &self.trims[next];
        let chord = here.stone.chord(&trim.face, trim.middle);
        let total_mm = here.total_mm
            + chord
                .as_ref()
                .map_or(0.0, crate::geom::split::Chord::length);
        let stone = chord.map_or_else(|| here.stone.clone(), |c| c.left);
        let there = &mut self.stages[set | (1 << next)];
        // A gain below a hundredth of a millimetre is rounding: keep the earlier name first.
        if there.as_ref().is_none_or(|t| total_mm < t.total_mm - 0.01) {
            *there = Some(Stage {
                stone,
                total_mm,
                last: Some(next),
            });
        }
    }

    fn trace_back(&self) -> Vec<usize> {
        let mut order = Vec::new();
        let mut set = self.stages.len() - 1;
        while let Some(last) = self.stages[set].as_ref().and_then(|s| s.last) {
            order.push(last);
            set &= !(1 << last);
        }
        order.reverse();
        order
    }
}
