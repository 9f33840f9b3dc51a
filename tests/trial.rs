use kerfwright::geom::*;
use kerfwright::job::*;
use kerfwright::plan::Plan;
use kerfwright::tables::{region::RegionCode, stone::StoneKind};
use kerfwright::units::*;
fn job() -> Job {
    let p = Point::new;
    let r = |a| Range {
        low: a,
        likely: a,
        high: a,
    };
    Job {
        heading: Heading::default(),
        region: RegionCode::Eu,
        units: LengthUnit::Millimetre,
        stone: Stone {
            kind: StoneKind::Gabbro,
            name: "gabbro".into(),
            thickness: Thickness {
                least: 29.6,
                mean: 30.0,
                most: 30.4,
            },
            density: r(2900.),
            strength_mpa: 8.27,
            strength_source: "x".into(),
            safety_factor: 3.,
            silica: r(0.05),
            weighed: None,
            said: None,
        },
        slab: Slab {
            shape: Shape::new(
                Naming::Letters,
                vec![p(0., 0.), p(2640., 3.), p(2636., 905.), p(0., 902.)],
                vec![CornerCut::Sharp; 4],
            )
            .unwrap(),
            edges: vec![
                EdgeState::Factory,
                EdgeState::Sawn,
                EdgeState::Sawn,
                EdgeState::Factory,
            ],
            flaws: vec![Flaw {
                what: "fissure".into(),
                place: FlawPlace::Line(vec![p(2380., 905.), p(2500., 640.)]),
                clear_mm: 15.,
            }],
            tape_error_mm: 1.,
            vein_deg: None,
        },
        top: Top {
            shape: Shape::new(
                Naming::Numbers,
                vec![p(0., 0.), p(2150., 0.), p(2150., 640.), p(0., 640.)],
                vec![
                    CornerCut::Sharp,
                    CornerCut::Round(320.),
                    CornerCut::Round(320.),
                    CornerCut::Sharp,
                ],
            )
            .unwrap(),
            finishes: vec![
                Finish::Polish,
                Finish::Polish,
                Finish::Ease,
                Finish::Factory,
            ],
            allowances: Allowances {
                polish_mm: 1.,
                ease_mm: 0.5,
                saw_mm: 0.,
            },
            vein: VeinWish::Any,
        },
        supports: vec![],
        place: PlaceWish {
            how: PlaceHow::Search,
            least_strip_mm: 10.,
        },
        machine: Machine {
            kind: MachineKind::AngleGrinder,
            rpm: 9800.,
            power: Power::Battery,
            wet_rated: true,
            protected: Protection::Battery,
            plate_mm: 6.,
            vibration: Vibration { a: 6.5, k: 1.5 },
            noise_db: 104.,
        },
        discs: vec![Disc {
            name: "125".into(),
            diameter: 125.,
            kerf: 2.2,
            obstruction: 42.,
            max_rpm: 12200.,
            usage: DiscUse::All,
        }],
        guide: Guide {
            length_mm: 1400.,
            offset_mm: 118.,
            overlap_mm: 150.,
        },
        circle_jig: CircleJig {
            offset_mm: 96.,
            reach_mm: (150., 900.),
        },
        passes: Passes {
            score_mm: 2.,
            step_mm: 6.,
            plunge_step_mm: 10.,
            through_mm: 3.,
            cusp_mm: 0.5,
            rate_cm2_per_min: 25.,
            rate_is_guess: true,
            far_end_mm: 60.,
            curve_factor: 3.,
            set_up_min: 15.,
        },
        dust: Dust {
            place: Place::Outdoors,
            method: DustMethod::Water,
            airflow_m3h: 0.,
            respirator: Respirator::Ffp3,
            mask_fit_tested: true,
            hours_today: 1.,
        },
        lift: Lift {
            people: 4,
            each: vec![Mass::from_kg(25.); 4],
            each_is_guideline: false,
            stand: vec![],
            aid: Aid::Trolley,
        },
        assumed: vec![],
    }
}
#[test]
fn trial() {
    let j = job();
    let t = std::time::Instant::now();
    let pl = Plan::of(&j);
    eprintln!("{:?}", t.elapsed());
    match pl {
        Ok(pl) => {
            eprintln!("{:?}", pl.placement);
            eprintln!("{:?}", pl.balance_sheet);
            let b = pl.balance_sheet;
            eprintln!(
                "err {:e}",
                (b.slab_mm2 - b.top_mm2 - b.allowance_mm2 - b.kerf_mm2 - b.offcuts_mm2)
                    / b.slab_mm2
            );
            for c in &pl.cuts {
                eprintln!(
                    "{} {:?} {} len {} strokes {} passes {:?} frees {:?}",
                    c.number,
                    c.kind,
                    c.edge,
                    c.length,
                    c.strokes.len(),
                    c.passes.iter().map(|p| p.depth).collect::<Vec<_>>(),
                    c.frees
                );
                eprintln!("{}", serde_json::to_string(&c.set_out).unwrap());
            }
            for p in &pl.pieces {
                eprintln!(
                    "{} {} {:?} {:?}",
                    p.name, p.area_mm2, p.mass, p.best_rectangle
                )
            }
        }
        Err(e) => eprintln!("{e:?}"),
    }
}
