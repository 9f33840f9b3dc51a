//! A job for the tests of this module: nothing stands against it.

use super::Work;
use crate::geom::Point;
use crate::job::{
    Aid, Allowances, Asbestos, Binder, Bond, CircleJig, CornerCut, Disc, DiscUse, Dust, DustMethod,
    EdgeState, Finish, Guide, Heading, Job, Lift, Machine, MachineKind, Naming, Passes, PlaceHow,
    PlaceWish, Power, Protection, Protector, Range, Respirator, Route, Shape, Slab, Steel, Stone,
    Thickness, Top, Trolley, VeinWish, Vibration, Workplace,
};
use crate::tables::region::RegionCode;
use crate::tables::respirator::MaskClass;
use crate::tables::stone::StoneKind;
use crate::units::LengthUnit;

/// Granite, cut wet outdoors with a battery grinder made for it, in the European Union.
pub(super) fn job() -> Job {
    let mut job = Job {
        base: None,
        core_bits: Vec::new(),
        heading: Heading::default(),
        region: RegionCode::Eu,
        units: LengthUnit::Millimetre,
        stone: stone(),
        slab: slab(),
        top: top(),
        supports: Vec::new(),
        place: PlaceWish {
            how: PlaceHow::Search,
            least_strip_mm: 10.0,
        },
        machine: machine(),
        discs: vec![disc()],
        guide: Guide {
            length_mm: 1400.0,
            offset_mm: 118.0,
            overlap_mm: 150.0,
        },
        circle_jig: CircleJig {
            offset_mm: 96.0,
            reach_mm: (150.0, 900.0),
        },
        passes: passes(),
        dust: dust(),
        protector: Protector::Snr(28.0),
        today: Vec::new(),
        lift: Lift {
            people: 2,
            each: Vec::new(),
            each_is_guideline: true,
            stand: Vec::new(),
            hands_mm: 750.0,
            carry_mm: 10_000.0,
            trestles: Vec::new(),
            aid: Aid::None,
            rated: None,
            trolley: Trolley {
                track_mm: 400.0,
                deck_mm: 150.0,
            },
            check_call: String::new(),
        },
        route: Route {
            obstacles: Vec::new(),
            room_mm: 80.0,
            raise_mm: 100.0,
            spare_mm: 20.0,
        },
        as_cut: None,
        assumed: Vec::new(),
    };
    set_stone(&mut job, StoneKind::Granite);
    job
}

/// An hour of cutting with the disc of the kit.
pub(super) fn work() -> Work {
    Work {
        kerf_volume_mm3: 1e6,
        sawn_face_mm2: 4e5,
        trigger_minutes: 60.0,
        discs: vec![disc()],
    }
}

/// Makes the job one of another stone, with the figures of the table.
pub(super) fn set_stone(job: &mut Job, kind: StoneKind) {
    job.stone.kind = kind;
    job.stone.name = kind.name().into();
    job.stone.binder = match kind {
        StoneKind::EngineeredStone => Binder::Resin,
        StoneKind::Own | StoneKind::Terrazzo | StoneKind::Porcelain | StoneKind::SinteredStone => {
            Binder::Unknown
        }
        _ => Binder::Natural,
    };
    if let Some(record) = kind.record() {
        let (density, silica) = (record.density_kg_m3, record.silica_share);
        job.stone.density = Range {
            low: density.low,
            likely: density.likely,
            high: density.high,
        };
        job.stone.silica = Range {
            low: silica.low,
            likely: silica.likely,
            high: silica.high,
        };
    }
}

fn stone() -> Stone {
    let any = Range {
        low: 2600.0,
        likely: 2700.0,
        high: 2800.0,
    };
    Stone {
        kind: StoneKind::Own,
        name: String::new(),
        thickness: Thickness {
            least: 20.0,
            mean: 20.0,
            most: 20.0,
        },
        density: any,
        strength_mpa: 8.0,
        strength_source: String::new(),
        safety_factor: 3.0,
        silica: Range {
            low: 0.0,
            likely: 0.0,
            high: 0.0,
        },
        steel: Steel::None,
        binder: Binder::Natural,
        asbestos: Asbestos::NotTested,
        weighed: None,
        said: None,
    }
}

fn shape(naming: Naming, width: f64, depth: f64) -> Shape {
    let corners = [(0.0, 0.0), (width, 0.0), (width, depth), (0.0, depth)]
        .map(|(x, y)| Point { x, y })
        .to_vec();
    Shape::new(naming, corners, vec![CornerCut::Sharp; 4]).expect("a rectangle is a shape")
}

fn slab() -> Slab {
    Slab {
        shape: shape(Naming::Letters, 2640.0, 905.0),
        edges: vec![EdgeState::Sawn; 4],
        undescribed: Vec::new(),
        rough_margin_mm: 25.0,
        flaws: Vec::new(),
        tape_error_mm: 1.0,
        vein_deg: None,
        survey: crate::job::Survey::default(),
        begun: crate::job::Begun::default(),
    }
}

fn top() -> Top {
    Top {
        cutouts: Vec::new(),
        shape: shape(Naming::Numbers, 2150.0, 640.0),
        finishes: vec![Finish::Saw; 4],
        allowances: Allowances {
            polish_mm: 1.0,
            ease_mm: 0.5,
            saw_mm: 0.0,
        },
        vein: VeinWish::Any,
        ready: Vec::new(),
    }
}

fn machine() -> Machine {
    Machine {
        kind: MachineKind::AngleGrinder,
        rpm: 9800.0,
        power: Power::Battery,
        wet_rated: true,
        protected: Protection::Battery,
        plate_mm: 6.0,
        vibration: Vibration { a: 6.5, k: 1.5 },
        noise_db: 104.0,
        noise_c_db: 104.0,
        seat_mm: 22.23,
        largest_disc_mm: Some(125.0),
    }
}

fn disc() -> Disc {
    Disc {
        name: "125 continuous rim".into(),
        diameter: 125.0,
        kerf: 2.2,
        obstruction: 42.0,
        max_rpm: 12_200.0,
        bore: 22.23,
        bond: Bond::Diamond,
        usage: DiscUse::All,
    }
}

fn passes() -> Passes {
    Passes {
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
        waste_piece: crate::units::Mass::from_kg(5.0),
    }
}

fn dust() -> Dust {
    Dust {
        place: Workplace::Outdoors,
        method: DustMethod::Water,
        airflow_m3h: 0.0,
        water_l_min: 0.5,
        respirator: Respirator::Mask(MaskClass::Ffp3),
        mask_fit_tested: true,
        hours_today: 0.0,
        days: 1.0,
    }
}
