//! The worktop, its openings and edges.

use serde::Serialize;

use super::shape::{Part, Shape};

/// The finished worktop, in its own frame: corner 1 at the origin.
#[derive(Clone, Debug)]
pub struct Top {
    /// Its outline with the names of its corners and edges (numbers).
    pub shape: Shape,
    /// Its cutouts, in the order given.
    pub cutouts: Vec<Cutout>,
    /// The finish of each edge, in the order 1-2, 2-3 ….
    pub finishes: Vec<Finish>,
    /// Stone left by the saw for each finish.
    pub allowances: Allowances,
    /// How the long direction should lie to the vein.
    pub vein: VeinWish,
    /// Edges and corners whose face is on the stone already and is not sawn again, and the stone left
    /// on each, mm; none before the first cut.
    pub ready: Vec<(Part, f64)>,
}

impl Top {
    /// The stone left on a face that is on the stone already, mm; nothing for one still to be sawn.
    #[must_use]
    pub fn ready_mm(&self, part: Part) -> Option<f64> {
        self.ready.iter().find(|r| r.0 == part).map(|r| r.1)
    }

    /// Area of the finished top, its cutouts taken out, mm².
    #[must_use]
    pub fn area(&self) -> f64 {
        let holes = self.cutouts.iter().map(|c| c.shape.outline().area());
        self.shape.outline().area() - holes.sum::<f64>()
    }
}

/// An opening in the top. Openings lie inside the top and touch neither it nor each other.
#[derive(Clone, Debug)]
pub struct Cutout {
    /// What it is for, in the user's words; `cutout 1` when nothing was said.
    pub what: String,
    /// The finished opening, in the top's frame; corners and edges named by numbers of its own.
    pub shape: Shape,
    /// What is done to its edge.
    pub finish: Finish,
    /// Sides and corners whose face is on the stone already and is not sawn again, and the stone left on
    /// each, mm; none before the first cut.
    pub ready: Vec<(Part, f64)>,
}

impl Cutout {
    /// The stone left on a face that is on the stone already, mm; nothing for one still to be sawn.
    #[must_use]
    pub fn ready_mm(&self, part: Part) -> Option<f64> {
        self.ready.iter().find(|r| r.0 == part).map(|r| r.1)
    }

    /// Whether every face of it is on the stone already.
    #[must_use]
    pub fn is_made(&self) -> bool {
        let mut parts = self.shape.parts().iter();
        parts.all(|part| self.ready_mm(*part).is_some())
    }
}

/// What is done to an edge after sawing.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Finish {
    /// Not sawn: an existing finished edge of the slab is used.
    Factory,
    /// Ground and polished.
    Polish,
    /// Sawn, arris taken off.
    Ease,
    /// Left as sawn.
    Saw,
}

/// Stone left on a sawn edge, mm.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Allowances {
    /// For a polished edge.
    pub polish_mm: f64,
    /// For an eased edge.
    pub ease_mm: f64,
    /// For an edge left as sawn.
    pub saw_mm: f64,
}

impl Allowances {
    /// The allowance for a finish; none on a factory edge, which is not sawn.
    #[must_use]
    pub const fn for_finish(&self, finish: Finish) -> f64 {
        match finish {
            Finish::Factory => 0.0,
            Finish::Polish => self.polish_mm,
            Finish::Ease => self.ease_mm,
            Finish::Saw => self.saw_mm,
        }
    }
}

/// How the top's long direction should lie to the vein.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum VeinWish {
    /// Along the vein.
    Along,
    /// Across the vein.
    Across,
    /// Either way.
    Any,
}
