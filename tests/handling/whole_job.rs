//! Tilting, supports, and the findings of a whole job.

use kerfwright::geom::{Pose, Vector};
use kerfwright::handle::Share;
use kerfwright::handle::axes::Axes;
use kerfwright::handle::lift::{self};
use kerfwright::handle::support::{BearingVerdict, Setting, Standing, setting};
use kerfwright::handle::{Load, Loads, Marks};
use kerfwright::job::{self, Aid, Support, SupportPlace};
use kerfwright::tables::region::RegionCode;
use kerfwright::tables::respirator::MaskClass;
use kerfwright::units::Mass;

#[allow(clippy::wildcard_imports)]
use crate::fixtures::*;
use kerfwright::words::Writer;

#[test]
fn tilting_up_takes_the_lever_share_at_the_far_edge() {
    let stone = load(plate(&[(0.0, 0.0), (3000.0, 0.0), (0.0, 900.0)]), 90.0);
    let axes = Axes::of(&stone.region);
    let tilts = lift::tilts(&stone, &axes);
    close(tilts[0].share + tilts[1].share, 1.0, 1e-12);
    let least = tilts[0].share.min(tilts[1].share);
    close(least, 1.0 / 3.0, 1e-12);
}

fn rail(x: f64, limit: Option<f64>) -> Support {
    Support {
        what: format!("rail at {x}"),
        place: SupportPlace::Line(p(x, 0.0), p(x, 600.0)),
        limit: limit.map(Mass::from_kg),
        stiffness: 1.0,
    }
}

/// The top of a whole job on supports.
fn set_down(top: &Load, supports: &[Support]) -> Option<Setting> {
    let job = job::Job {
        supports: supports.to_vec(),
        ..whole_job(Aid::None)
    };
    setting(
        top,
        &job,
        &Marks::default(),
        Pose::new(0.0, Vector::default()),
    )
}

#[test]
fn supports_share_by_length_and_place() {
    let top = load(rectangle(2000.0, 600.0), 100.0);
    let set = set_down(&top, &[rail(100.0, Some(40.0)), rail(1900.0, None)]).unwrap();
    close(set.bearings[0].share.mass().kg(), 50.0, 1e-9);
    assert!(matches!(
        set.bearings[0].verdict,
        BearingVerdict::Over { .. }
    ));
    assert_eq!(set.bearings[1].verdict, BearingVerdict::NoLimitGiven);
    assert_eq!(set.stands, Standing::Balanced);
    // A third rail far out to one side is left in the air by two on the other.
    let far = [rail(900.0, None), rail(1100.0, None), rail(1990.0, None)];
    let set = set_down(&top, &far).unwrap();
    let total: f64 = set.bearings.iter().map(|b| b.share.mass().kg()).sum();
    // Each is told the most it may carry, so together they are told no less than the whole.
    assert!(total >= 100.0 - 1e-9, "{total}");
    let outside = set_down(&top, &[rail(1200.0, None), rail(1900.0, None)]).unwrap();
    assert_eq!(outside.stands, Standing::Tips);
    assert_eq!(outside.bearings[1].share, Share::LiftsOff);
    let beside = set_down(&top, &[rail(2500.0, None)]).unwrap();
    assert_eq!(beside.stands, Standing::NotSupported);
    assert_eq!(set_down(&top, &[]), None);
}

fn granite() -> job::Stone {
    let range = |likely| job::Range {
        low: likely,
        likely,
        high: likely,
    };
    job::Stone {
        binder: job::Binder::Natural,
        asbestos: job::Asbestos::NotTested,
        kind: kerfwright::tables::stone::StoneKind::Granite,
        name: "granite".to_owned(),
        thickness: job::Thickness {
            least: 29.6,
            mean: 30.0,
            most: 30.4,
        },
        density: range(2900.0),
        strength_mpa: 8.27,
        strength_source: "ASTM C615".to_owned(),
        safety_factor: 3.0,
        silica: range(0.3),
        steel: job::Steel::None,
        weighed: None,
        said: None,
    }
}

fn no_way() -> job::Route {
    job::Route {
        obstacles: Vec::new(),
        room_mm: 80.0,
        raise_mm: 100.0,
        spare_mm: 20.0,
    }
}

fn passes() -> job::Passes {
    job::Passes {
        score_mm: 2.0,
        step_mm: 6.0,
        plunge_step_mm: 10.0,
        through_mm: 3.0,
        cusp_mm: 0.5,
        rate_cm2_per_min: 25.0,
        rate_is_guess: true,
        far_end_mm: 60.0,
        curve_factor: 3.0,
        stopped_factor: 2.0,
        set_up_min: 10.0,
        waste_piece: Mass::from_kg(5.0),
    }
}

fn shape(naming: job::Naming, l: f64, w: f64) -> job::Shape {
    let corners = vec![p(0.0, 0.0), p(l, 0.0), p(l, w), p(0.0, w)];
    job::Shape::new(naming, corners, vec![job::CornerCut::Sharp; 4]).unwrap()
}

/// A small job in the open with four people and a granite slab.
pub(crate) fn whole_job(aid: Aid) -> job::Job {
    job::Job {
        base: None,
        core_bits: Vec::new(),
        route: no_way(),
        heading: job::Heading::default(),
        region: RegionCode::Eu,
        units: kerfwright::units::LengthUnit::Millimetre,
        stone: granite(),
        slab: job::Slab {
            shape: shape(job::Naming::Letters, 2640.0, 905.0),
            edges: vec![job::EdgeState::Sawn; 4],
            undescribed: Vec::new(),
            rough_margin_mm: 25.0,
            flaws: vec![],
            tape_error_mm: 1.0,
            vein_deg: None,
            survey: job::Survey::default(),
            begun: job::Begun::default(),
        },
        top: job::Top {
            cutouts: Vec::new(),
            shape: shape(job::Naming::Numbers, 2150.0, 640.0),
            finishes: vec![job::Finish::Saw; 4],
            allowances: job::Allowances {
                polish_mm: 1.0,
                ease_mm: 0.5,
                saw_mm: 0.0,
            },
            vein: job::VeinWish::Any,
            ready: Vec::new(),
        },
        supports: vec![rail(100.0, Some(20.0)), rail(2000.0, None)],
        place: job::PlaceWish {
            how: job::PlaceHow::Search,
            least_strip_mm: 10.0,
        },
        machine: job::Machine {
            largest_disc_mm: None,
            kind: job::MachineKind::AngleGrinder,
            rpm: 9800.0,
            power: job::Power::Battery,
            wet_rated: true,
            protected: job::Protection::Battery,
            plate_mm: 6.0,
            vibration: job::Vibration { a: 6.5, k: 1.5 },
            noise_db: 104.0,
            noise_c_db: 104.0,
            seat_mm: 22.23,
        },
        discs: vec![],
        guide: job::Guide {
            length_mm: 1400.0,
            offset_mm: 118.0,
            overlap_mm: 150.0,
        },
        circle_jig: job::CircleJig {
            offset_mm: 96.0,
            reach_mm: (150.0, 900.0),
        },
        passes: passes(),
        dust: dust(),
        protector: job::Protector::Unknown,
        today: vec![],
        lift: job::Lift {
            aid,
            ..crew(4, 25.0)
        },
        as_cut: None,
        assumed: vec![],
    }
}

const fn dust() -> job::Dust {
    job::Dust {
        days: 1.0,
        place: job::Workplace::Outdoors,
        method: job::DustMethod::Water,
        airflow_m3h: 0.0,
        water_l_min: 0.5,
        respirator: job::Respirator::Mask(MaskClass::Ffp3),
        mask_fit_tested: true,
        hours_today: 0.0,
    }
}

#[test]
fn the_findings_stop_a_hand_lift_that_is_none() {
    let (slab, top) = (
        load(rectangle(2640.0, 905.0), 206.0),
        load(counter(), 110.0),
    );
    let pose = Pose::new(0.0, Vector::default());
    let loads = Loads {
        slab,
        states: Vec::new(),
        top,
        waste: Vec::new(),
        marks: Marks::default(),
    };
    let found = |aid| kerfwright::handle::assess(&whole_job(aid), &loads, pose);
    let ids = |list: &[kerfwright::diag::Finding]| {
        list.iter()
            .map(kerfwright::diag::Finding::id)
            .collect::<Vec<_>>()
    };
    let (handling, bare) = found(Aid::None);
    let stops = ids(&bare.stops);
    // Slab and top in one, and so all that is wrong with the supports.
    for id in ["not-a-hand-lift", "rests-poorly"] {
        assert_eq!(stops.iter().filter(|s| **s == id).count(), 1, "{stops:?}");
    }
    assert!(handling.slab.lift.lifters.is_empty() && handling.top.lift.lifters.is_empty());
    let (_, aided) = found(Aid::Trolley);
    assert!(!ids(&aided.stops).contains(&"not-a-hand-lift"));
    let open = ids(&aided.open);
    for id in ["tilt-over-guideline", "aid-without-mark"] {
        assert!(open.contains(&id), "{id} is missing from {open:?}");
    }
    let cautions = ids(&aided.warnings);
    for id in ["crush-and-falls", "guideline-is-not-a-limit"] {
        assert!(cautions.contains(&id), "{id} is missing from {cautions:?}");
    }
    // 206 kg: a vacuum lifter for 412 kg, printed in full.
    let heavy = bare.stops.iter().find(|f| f.id() == "not-a-hand-lift");
    let said = Writer::default().detail(&heavy.unwrap().message);
    assert!(said.contains("412\u{a0}kg"), "{said}");
    let edge = &handling.top.strength;
    assert!(edge.ends_on_edge.worst.stress_mpa < edge.ends_only.worst.stress_mpa);
    for given in handling.top.bendings() {
        assert!(given.worst.stress_mpa.is_finite());
    }
    assert!(!handling.sources.is_empty());
    serde_json::to_string(&handling).unwrap();
}
