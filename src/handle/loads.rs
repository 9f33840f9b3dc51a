//! Every stone that is lifted, carried or lain down in the course of the job.

use super::smooth::smooth;
use crate::geom::seg::flattened_ring;
use crate::geom::{Outline, Point, Region, Seg};
use crate::job::{Job, Part, Shape, Stone};
use crate::piece::{Stones, mass_of};
use crate::place::Placement;
use crate::units::MassRange;

/// One piece of stone at one moment of the job.
#[derive(Clone, Debug)]
pub struct Load {
    /// Name as printed: "slab as delivered", "after cut 2", "finished top".
    pub name: String,
    /// Its outline, in the slab's frame. Along what is sawn round a curve it is the curve, without the
    /// cusps that the plunges leave.
    pub region: Region,
    /// Its mass, cusps included.
    pub mass: MassRange,
    /// Its balance point, cusps included.
    pub balance: Point,
    /// The cut it is left by; nothing before the first.
    pub after_cut: Option<usize>,
}

impl Load {
    /// A stone of a known mass.
    #[must_use]
    pub fn new(name: impl Into<String>, region: Region, mass: MassRange) -> Self {
        Self {
            name: name.into(),
            balance: region.centroid(),
            region,
            mass,
            after_cut: None,
        }
    }

    /// A piece of the job's slab.
    #[must_use]
    pub fn of(stone: &Stone, name: impl Into<String>, region: Region) -> Self {
        let mass = mass_of(stone, region.area());
        Self::new(name, region, mass)
    }
}

/// Every stone that is lifted, carried or lain down in the course of the job.
#[derive(Clone, Debug)]
pub struct Loads {
    /// The slab as delivered.
    pub slab: Load,
    /// The kept stone after each cut.
    pub states: Vec<Load>,
    /// The finished top.
    pub top: Load,
    /// Waste pieces in the order they come free.
    pub waste: Vec<Free>,
    /// Names of the top's parts.
    pub marks: Marks,
}

/// A waste piece that has come free.
#[derive(Clone, Debug)]
pub struct Free {
    /// Its name: `W1`.
    pub name: String,
    /// The cut that frees it.
    pub after_cut: usize,
    /// Its mass.
    pub mass: MassRange,
    /// Its largest body at the face; nothing when its boundary cannot be closed.
    pub region: Option<Region>,
    /// Whether a flaw along a line runs through it.
    pub flawed: bool,
}

/// The largest body of a piece's boundaries at the face, with the holes in it: outer ones run counter-clockwise,
/// holes clockwise.
fn largest(rings: &[Vec<Seg>]) -> Option<Region> {
    let runs_left = |ring: &&Vec<Seg>| {
        let points = flattened_ring(ring);
        let next = points.iter().cycle().skip(1);
        let turns = points.iter().zip(next).map(|(a, b)| a.x * b.y - b.x * a.y);
        turns.sum::<f64>() > 0.0
    };
    let (outers, inners): (Vec<_>, Vec<_>) = rings.iter().partition(runs_left);
    let outers = outers.into_iter();
    let outers = outers.filter_map(|ring| Outline::new(ring.clone()).ok());
    let outer = outers.max_by(|a, b| a.area().total_cmp(&b.area()))?;
    let holes = inners.into_iter().filter_map(|ring| {
        let segs = ring.iter().rev().map(Seg::reversed).collect();
        Outline::new(segs)
            .ok()
            .filter(|hole| outer.holds(hole, 0.0))
    });
    let holes = holes.collect();
    Some(Region { outer, holes })
}

impl Loads {
    /// The stones of a job before anything is cut, and the finished top.
    #[must_use]
    pub fn uncut(job: &Job, placement: &Placement) -> Self {
        Self {
            slab: Load::of(&job.stone, "slab as delivered", job.slab.region()),
            states: Vec::new(),
            top: Load::of(&job.stone, "finished top", placement.finished()),
            waste: Vec::new(),
            marks: Marks::of(placement),
        }
    }

    /// Every stone of a job, with its mass. What still hangs on to the kept stone is weighed with it.
    #[must_use]
    pub fn of(job: &Job, placement: &Placement, stones: &Stones) -> Self {
        let openings = placement.cutouts.iter().map(|c| &c.sawn);
        let sawn: Vec<&Outline> = std::iter::once(&placement.sawn).chain(openings).collect();
        let after = stones.remaining.iter().zip(&stones.states);
        let after = after.map(|(left, kept)| Load {
            name: format!("after cut {}", left.after_cut),
            region: smooth(kept.clone(), &sawn, job.passes.cusp_mm),
            mass: left.mass,
            balance: left.balance,
            after_cut: Some(left.after_cut),
        });
        let waste = stones.pieces.iter().map(|piece| Free {
            name: piece.name.clone(),
            after_cut: piece.after_cut,
            mass: piece.mass,
            region: largest(&piece.outline),
            flawed: !piece.flaws.is_empty(),
        });
        Self {
            states: after.collect(),
            waste: waste.collect(),
            ..Self::uncut(job, placement)
        }
    }

    /// The states that differ from the one before.
    pub(super) fn changes(&self) -> impl Iterator<Item = &Load> {
        let before = std::iter::once(&self.slab).chain(&self.states);
        let pairs = before.zip(&self.states);
        pairs
            .filter(|(before, after)| before.region != after.region)
            .map(|(_, after)| after)
    }
}

/// Names of the top's parts, in the slab's frame.
#[derive(Clone, Debug, Default)]
pub struct Marks {
    /// Its corners.
    pub corners: Vec<(String, Point)>,
    /// Its edges: the name, and the piece of the outline.
    pub edges: Vec<(String, Seg)>,
    /// Its openings.
    pub cutouts: Vec<(String, Outline)>,
}

impl Marks {
    fn of(placement: &Placement) -> Self {
        let top = &placement.top;
        let corners = top.corners().iter().enumerate();
        let edges = top.parts().iter().zip(top.outline().segs());
        let cutouts = placement.cutouts.iter();
        Self {
            corners: corners.map(|(i, at)| (top.corner_name(i), *at)).collect(),
            edges: edges
                .map(|(part, seg)| (named_part(top, *part), *seg))
                .collect(),
            cutouts: cutouts
                .map(|c| (c.what.clone(), c.shape.outline().clone()))
                .collect(),
        }
    }
}

/// What a piece of an outline is, with its name.
fn named_part(shape: &Shape, part: Part) -> String {
    let kind = match part {
        Part::Edge(_) => "edge",
        Part::Corner(_) => "corner",
    };
    format!("{kind} {}", shape.part_name(part))
}
