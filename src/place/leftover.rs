//! What a place leaves of the slab.

use crate::geom::{Outline, rectangle};

use super::Placement;

impl Placement {
    /// Area of the largest rectangle in one offcut of the straight trims, mm²; kerfs not yet taken
    /// off. For choosing between places that cost the same work.
    #[must_use]
    pub fn best_leftover_mm2(&self, slab: &Outline) -> f64 {
        let mut stone = slab.clone();
        let mut best = 0.0_f64;
        for trim in &self.trims {
            if let Some(chord) = stone.chord(&trim.face, trim.middle) {
                let rectangle = rectangle::best_along_edges(&chord.right);
                best = best.max(rectangle.map_or(0.0, |r| r.area()));
                stone = chord.left;
            }
        }
        best
    }
}
