//! What to keep clear of.

use crate::geom::{Bounds, Outline, Point, Seg, Vector, seg};

/// A flaw of the slab and how far to keep clear of it.
#[derive(Clone, Debug)]
pub struct Flaw {
    /// What it is, in the user's words.
    pub what: String,
    /// Where it is, in the slab's frame.
    pub place: FlawPlace,
    /// Clearance all round, mm.
    pub clear_mm: f64,
}

impl Flaw {
    /// The edge of the clearance: a ring round a spot, one round each straight piece of a line or
    /// of an area's boundary.
    #[must_use]
    pub fn clearance(&self) -> Vec<Vec<Seg>> {
        let round = |a: &Point, b: &Point| seg::capsule(*a, *b, self.clear_mm);
        match &self.place {
            FlawPlace::Spot { at, across_mm } => {
                vec![seg::circle(*at, across_mm / 2.0 + self.clear_mm)]
            }
            FlawPlace::Line(points) => points.windows(2).map(|w| round(&w[0], &w[1])).collect(),
            FlawPlace::Area(outline) => {
                let ring = outline.flattened();
                let next = ring.iter().cycle().skip(1);
                ring.iter().zip(next).map(|(a, b)| round(a, b)).collect()
            }
        }
    }
}

/// The shape of a flaw.
#[derive(Clone, Debug)]
pub enum FlawPlace {
    /// A round spot.
    Spot {
        /// Its centre.
        at: Point,
        /// Its diameter, mm.
        across_mm: f64,
    },
    /// A line through two or more points.
    Line(Vec<Point>),
    /// An area.
    Area(Outline),
}

impl FlawPlace {
    /// The upright box around it.
    #[must_use]
    pub fn bounds(&self) -> Bounds {
        match self {
            Self::Spot { at, across_mm } => {
                let half = Vector::new(across_mm / 2.0, across_mm / 2.0);
                Bounds::around([*at - half, *at + half])
            }
            Self::Line(points) => Bounds::around(points.iter().copied()),
            Self::Area(outline) => outline.bounds(),
        }
    }
}
