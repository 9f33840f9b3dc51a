//! Stones and crews that the checks share.

use std::f64::consts::{FRAC_PI_2, PI};

use kerfwright::geom::{Arc, Outline, Point, Region, Seg};
use kerfwright::handle::Lift;
use kerfwright::handle::Load;
use kerfwright::handle::axes::Axes;
use kerfwright::handle::bend::{Beam, PlateSection};
use kerfwright::handle::guideline::{Guideline, guideline};
use kerfwright::handle::lift::{self};
use kerfwright::handle::plate::Spring;
use kerfwright::handle::strip::BeamProfile;
use kerfwright::job::{self, Aid};
use kerfwright::tables::region::RegionCode;
use kerfwright::units::{GRAVITY, Mass, MassRange};

pub(crate) fn close(got: f64, want: f64, within: f64) {
    assert!(
        (got - want).abs() <= within,
        "{got} is not {want} ± {within}"
    );
}

pub(crate) fn p(x: f64, y: f64) -> Point {
    Point::new(x, y)
}

pub(crate) fn plate(corners: &[(f64, f64)]) -> Region {
    let corners: Vec<Point> = corners.iter().map(|c| p(c.0, c.1)).collect();
    Region::solid(Outline::polygon(&corners).unwrap())
}

pub(crate) fn rectangle(length: f64, width: f64) -> Region {
    plate(&[(0.0, 0.0), (length, 0.0), (length, width), (0.0, width)])
}

/// A counter top of 2150 × 640 with a semicircular right end and a round bowl hole.
pub(crate) fn counter() -> Region {
    let end = Arc {
        centre: p(1830.0, 320.0),
        radius: 320.0,
        start: -FRAC_PI_2,
        sweep: PI,
    };
    let outer = Outline::new(vec![
        Seg::Line(p(0.0, 0.0), p(1830.0, 0.0)),
        Seg::Arc(end),
        Seg::Line(p(1830.0, 640.0), p(0.0, 640.0)),
        Seg::Line(p(0.0, 640.0), p(0.0, 0.0)),
    ]);
    Region {
        outer: outer.unwrap(),
        holes: vec![Outline::circle(p(620.0, 330.0), 180.0).unwrap()],
    }
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

pub(crate) fn strip(region: &Region) -> BeamProfile {
    BeamProfile::new(region, Axes::of(region))
}

pub(crate) fn slice(weight_n_per_mm2: f64, thickness_mm: f64) -> PlateSection {
    PlateSection {
        weight_n_per_mm2,
        thickness_mm,
    }
}

pub(crate) fn springs(at: &[(f64, f64)]) -> Vec<Spring> {
    let one = |a: &(f64, f64)| Spring {
        at: p(a.0, a.1),
        stiffness: 1.0,
    };
    at.iter().map(one).collect()
}

pub(crate) fn crew(people: usize, kg: f64) -> job::Lift {
    job::Lift {
        check_call: String::new(),
        people,
        each: vec![Mass::from_kg(kg); people],
        each_is_guideline: true,
        stand: vec![],
        hands_mm: 750.0,
        carry_mm: 10_000.0,
        trestles: vec![],
        aid: Aid::None,
        rated: None,
        trolley: job::Trolley {
            track_mm: 400.0,
            deck_mm: 150.0,
        },
    }
}

pub(crate) fn lifted(load: &Load, people: usize, kg: f64) -> Lift {
    let rule = guideline(RegionCode::Eu);
    held(load, &crew(people, kg), &[], &rule)
}

/// A lift of stone that bending does not keep from anything.
pub(crate) fn held(load: &Load, crew: &job::Lift, given: &[Point], rule: &Guideline) -> Lift {
    let strip = strip(&load.region);
    let weight = 1.2 * GRAVITY * load.mass.high.kg() / load.region.area();
    let beam = Beam::new(&strip, slice(weight, 30.0));
    lift::plan(load, &beam, 1000.0, crew, given, rule)
}

/// A repeatable spread of numbers in [0, 1): the "minimal standard" multiplier 48271 modulo
/// 2³¹ − 1 (Park, Miller and Stockmeyer 1993).
pub(crate) struct Spread(pub(crate) u64);

impl Spread {
    pub(crate) fn next(&mut self) -> f64 {
        self.0 = self.0 * 48_271 % 2_147_483_647;
        f64::from(u32::try_from(self.0).unwrap()) / 2_147_483_647.0
    }

    pub(crate) fn point(&mut self) -> Point {
        p(2600.0 * self.next(), 900.0 * self.next())
    }
}

// Gere, Mechanics of Materials, 7th ed., problem 5.6-18 (read): L 915, b 305, t 22, 7.5 MPa:
// 10.28 kN/m with the supports at 0.2071 L.
