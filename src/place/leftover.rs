//! What a place leaves of the slab.

use crate::geom::rectangle::{self, Rectangle};
use crate::geom::{Outline, Region, boolean};

use super::Placement;

impl Placement {
    /// Area of the largest rectangle in one offcut of the straight trims, mm²; kerfs not yet taken
    /// off. Nothing when it is not more than `least_mm2`,
    /// where that is more than nothing. For choosing between places that cost the
    /// same work.
    #[must_use]
    pub fn best_leftover_mm2(&self, slab: &Outline, least_mm2: f64) -> Option<f64> {
        let mut offcuts: Vec<(f64, Outline)> = self
            .offcuts(slab)
            .into_iter()
            .map(|o| (o.area(), o))
            .collect();
        offcuts.sort_by(|a, b| b.0.total_cmp(&a.0));
        if offcuts.first().map_or(0.0, |o| o.0) < least_mm2 {
            return None;
        }
        let (mut best, mut larger) = (least_mm2.max(0.0), least_mm2 <= 0.0);
        for (area, offcut) in &offcuts {
            // No rectangle is larger than the offcut it is cut from.
            if *area > best
                && let Some(rectangle) = rectangle::larger_along_edges(offcut, best)
            {
                (best, larger) = (rectangle.area(), true);
            }
        }
        larger.then_some(best)
    }

    /// The largest rectangle in one offcut of the straight trims, kerfs not yet taken off.
    #[must_use]
    pub fn best_rectangle(&self, slab: &Outline) -> Option<Rectangle> {
        let offcuts = self.offcuts(slab).into_iter();
        offcuts
            .filter_map(|offcut| rectangle::best_along_edges(&offcut))
            .max_by(|a, b| a.area().total_cmp(&b.area()))
    }

    /// What each trim that runs off the stone takes off, and what stopped trims free.
    #[must_use]
    pub fn offcuts(&self, slab: &Outline) -> Vec<Outline> {
        let mut stone = slab.clone();
        let mut offcuts = Vec::new();
        for trim in self.trims.iter().filter(|t| t.runs_off()) {
            if let Some(chord) = stone.chord(&trim.face, trim.middle) {
                offcuts.push(chord.right);
                stone = chord.left;
            }
        }
        if self.trims.iter().any(|t| !t.runs_off()) {
            let kept = [self.sawn.clone()];
            let left = boolean::difference(&[Region::solid(stone)], &kept);
            offcuts.extend(left.into_iter().map(|piece| piece.outer));
        }
        offcuts
    }
}
