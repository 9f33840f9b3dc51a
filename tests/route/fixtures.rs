//! Jobs and stones that the checks share.

use kerfwright::diag::Findings;
use kerfwright::geom::{Outline, Point, Pose, Region};
use kerfwright::handle::Load;
use kerfwright::handle::moving::Moving;
use kerfwright::job::{self, Job};
use kerfwright::units::{Mass, MassRange};

pub(crate) fn close(got: f64, want: f64, within: f64) {
    assert!(
        (got - want).abs() <= within,
        "{got} is not {want} ± {within}"
    );
}

/// The least a job needs: a slab of 2640 × 905 and a top of 2150 × 640, 30 thick.
pub(crate) const LEAST: &str = "\
[stone]
kind = \"granite\"
thickness = [29, 30, 31]
[slab]
rectangle = [2640, 905]
[top]
rectangle = [2150, 640]
";

pub(crate) fn job(added: &str) -> Job {
    match job::read(&format!("{LEAST}{added}")) {
        Ok((job, _)) => job,
        Err(faults) => panic!("{faults:?}"),
    }
}

pub(crate) fn region(corners: &[(f64, f64)]) -> Region {
    let corners: Vec<Point> = corners.iter().map(|c| Point::new(c.0, c.1)).collect();
    Region::solid(Outline::polygon(&corners).unwrap())
}

pub(crate) fn rectangle(length: f64, width: f64) -> Region {
    region(&[(0.0, 0.0), (length, 0.0), (length, width), (0.0, width)])
}

pub(crate) fn load(region: Region, kg: f64) -> Load {
    let mass = Mass::from_kg(kg);
    let mass = MassRange {
        low: mass,
        likely: mass,
        high: mass,
    };
    Load::new("stone", region, mass)
}

/// The stone turned and shifted.
pub(crate) fn posed(load: &Load, pose: Pose) -> Load {
    let holes = load.region.holes.iter().map(|h| h.posed(pose)).collect();
    let region = Region {
        outer: load.region.outer.posed(pose),
        holes,
    };
    Load::new(load.name.clone(), region, load.mass)
}

/// Slab and top of a job as drawn, moved.
pub(crate) fn moved(job: &Job) -> (Moving, Findings) {
    let of = |shape: &job::Shape, kg| load(Region::solid(shape.outline().clone()), kg);
    let (slab, top) = (of(&job.slab.shape, 206.0), of(&job.top.shape, 110.0));
    Moving::assess(job, &slab, &top)
}

pub(crate) fn ids(found: &[kerfwright::diag::Finding]) -> Vec<&str> {
    found.iter().map(kerfwright::diag::Finding::id).collect()
}

/// A repeatable spread of numbers in [0, 1): the "minimal standard" multiplier 48271 modulo
/// 2³¹ − 1 (Park, Miller and Stockmeyer 1993).
pub(crate) struct Spread(pub(crate) u64);

impl Spread {
    pub(crate) fn next(&mut self) -> f64 {
        self.0 = self.0 * 48_271 % 2_147_483_647;
        f64::from(u32::try_from(self.0).unwrap()) / 2_147_483_647.0
    }

    pub(crate) fn between(&mut self, low: f64, high: f64) -> f64 {
        low + (high - low) * self.next()
    }
}
