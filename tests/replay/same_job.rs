//! The same job told another way: turned, renumbered, mirrored, larger, in inches.

use super::plane::Place;
use super::random_job::{Flaw, RandomJob};

fn turned(p: Place, angle: f64) -> Place {
    let (sin, cos) = angle.to_radians().sin_cos();
    [p[0] * cos - p[1] * sin, p[0] * sin + p[1] * cos]
}

/// An angle in [−180, 180).
fn wrapped(angle: f64) -> f64 {
    (angle + 180.0).rem_euclid(360.0) - 180.0
}

fn minus(p: Place, q: Place) -> Place {
    [p[0] - q[0], p[1] - q[1]]
}

impl RandomJob {
    fn flaws_moved(&mut self, to: impl Fn(Place) -> Place) {
        for (flaw, _) in &mut self.flaws {
            match flaw {
                Flaw::Spot(at, _) => *at = to(*at),
                Flaw::Line(points) | Flaw::Area(points) => {
                    for p in points {
                        *p = to(*p);
                    }
                }
            }
        }
    }

    /// The slab's frame turned about corner A by degrees.
    pub(crate) fn turned(mut self, angle: f64) -> Self {
        for corner in &mut self.slab {
            *corner = turned(*corner, angle);
        }
        self.flaws_moved(|p| turned(p, angle));
        self.vein = self.vein.map(|(vein, wish)| (wrapped(vein + angle), wish));
        self.fixed = self
            .fixed
            .map(|(at, turn)| (turned(at, angle), wrapped(turn + angle)));
        self
    }

    /// Corner `first` of the slab called A.
    pub(crate) fn slab_renumbered(mut self, first: usize) -> Self {
        let origin = self.slab[first];
        self.slab.rotate_left(first);
        self.states.rotate_left(first);
        for corner in &mut self.slab {
            *corner = minus(*corner, origin);
        }
        self.flaws_moved(|p| minus(p, origin));
        self.fixed = self.fixed.map(|(at, turn)| (minus(at, origin), turn));
        self
    }

    /// Corner `first` of the top called 1.
    pub(crate) fn top_renumbered(mut self, first: usize) -> Self {
        let origin = self.top[first];
        self.top.rotate_left(first);
        self.corners.rotate_left(first);
        self.finishes.rotate_left(first);
        for corner in &mut self.top {
            *corner = minus(*corner, origin);
        }
        for opening in &mut self.openings {
            opening.at = minus(opening.at, origin);
        }
        self.fixed = self.fixed.map(|(at, turn)| {
            let on = turned(origin, turn);
            ([at[0] + on[0], at[1] + on[1]], turn)
        });
        self
    }

    /// Slab and top seen in a mirror along AB.
    pub(crate) fn mirrored(mut self) -> Self {
        let flip = |p: Place| [p[0], -p[1]];
        for ring in [&mut self.slab, &mut self.top] {
            ring[1..].reverse();
            for corner in ring.iter_mut() {
                *corner = flip(*corner);
            }
        }
        // Edge i runs from corner i to the next: in the mirror it is counted from the end.
        self.states.reverse();
        self.finishes.reverse();
        self.corners[1..].reverse();
        self.flaws_moved(flip);
        for opening in &mut self.openings {
            opening.at = flip(opening.at);
        }
        self.vein = self.vein.map(|(vein, wish)| (-vein, wish));
        self.fixed = self.fixed.map(|(at, turn)| (flip(at), -turn));
        self
    }

    /// The same job in inches.
    pub(crate) fn in_inches(mut self) -> Self {
        self.inches = true;
        self
    }
}
