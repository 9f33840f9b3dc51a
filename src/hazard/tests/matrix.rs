//! Every combination of machine, supply, control, place, stone and region: no combination yields
//! neither a stop nor a complete set of controls.

use super::change::{all_ids, ids};
use crate::diag::Findings;
use crate::hazard::dust::order::State;
use crate::hazard::respirator::{Enough, Required};
use crate::hazard::sample::{job, set_stone, work};
use crate::hazard::slurry::Caught;
use crate::hazard::{Hazards, assess};
use crate::job::{DustMethod, Job, MachineKind, Place, Power, Protection, Respirator};
use crate::tables::dust_control::Control;
use crate::tables::protective as sign;
use crate::tables::region::RegionCode;
use crate::tables::stone::StoneKind;

const POWERS: [Power; 4] = [Power::Mains, Power::Battery, Power::Air, Power::Engine];
const PROTECTIONS: [Protection; 5] = [
    Protection::Rcd,
    Protection::Gfci,
    Protection::CentreTapped110V,
    Protection::Battery,
    Protection::None,
];
/// Method and airflow: an extractor may be strong enough or not known.
const METHODS: [(DustMethod, f64); 4] = [
    (DustMethod::Water, 0.0),
    (DustMethod::Shroud, 300.0),
    (DustMethod::Shroud, 0.0),
    (DustMethod::None, 0.0),
];
const PLACES: [Place; 2] = [Place::Outdoors, Place::Indoors];

fn kinds() -> Vec<StoneKind> {
    StoneKind::ALL.into_iter().chain([StoneKind::Own]).collect()
}

/// A job of the matrix with what was found.
struct Case<'c> {
    job: &'c Job,
    hazards: &'c Hazards,
    found: &'c Findings,
}

impl Case<'_> {
    fn stopped(&self, id: &str) -> bool {
        self.found.stops.iter().any(|stop| stop.id == id)
    }

    fn said(&self, id: &str) -> bool {
        self.stopped(id) || self.found.cautions.iter().any(|caution| caution.id == id)
    }

    fn wet(&self) -> bool {
        self.job.dust.method == DustMethod::Water
    }

    fn is(&self, power: Power) -> bool {
        self.job.machine.power == power
    }

    fn protected(&self) -> bool {
        let protection = self.job.machine.protected;
        !matches!(protection, Protection::None | Protection::Battery)
    }

    fn name(&self) -> String {
        let (machine, dust) = (&self.job.machine, &self.job.dust);
        format!(
            "{:?} wet {} {:?}, {:?} {:?}, {:?}, {:?}: stops {:?}",
            machine.power,
            machine.wet_rated,
            machine.protected,
            dust.method,
            dust.place,
            self.job.stone.kind,
            self.job.region,
            ids(&self.found.stops)
        )
    }
}

/// Every job of the matrix, with the respirator that is usual in its region. Gives the count.
fn matrix(mut check: impl FnMut(&Case<'_>)) -> usize {
    let (mut job, work) = (job(), work());
    let mut count = 0;
    for power in POWERS {
        for wet_rated in [true, false] {
            for protected in PROTECTIONS {
                (job.machine.power, job.machine.wet_rated) = (power, wet_rated);
                job.machine.protected = protected;
                for (method, airflow) in METHODS {
                    (job.dust.method, job.dust.airflow_m3h) = (method, airflow);
                    for place in PLACES {
                        job.dust.place = place;
                        for kind in kinds() {
                            set_stone(&mut job, kind);
                            for region in RegionCode::ALL {
                                job.region = region;
                                job.dust.respirator = usual(region);
                                let (hazards, found) = assess(&job, &work);
                                check(&Case {
                                    job: &job,
                                    hazards: &hazards,
                                    found: &found,
                                });
                                count += 1;
                            }
                        }
                    }
                }
            }
        }
    }
    count
}

/// A good respirator of the region's scheme.
const fn usual(region: RegionCode) -> Respirator {
    match region {
        RegionCode::Us | RegionCode::UsCa | RegionCode::CaQc => Respirator::P100,
        _ => Respirator::Th3,
    }
}

/// The stops that a job deserves, each told by rules written here again.
fn deserved(case: &Case<'_>) -> [(&'static str, bool); 10] {
    let (job, wet) = (case.job, case.wet());
    let engineered = job.stone.kind == StoneKind::EngineeredStone;
    let rich = job.stone.silica.high > 0.10;
    let california = job.region == RegionCode::UsCa;
    let dry_british = job.region == RegionCode::Uk && engineered && !wet;
    [
        ("no-dust-control", job.dust.method == DustMethod::None),
        (
            "shroud-airflow-unknown",
            job.dust.method == DustMethod::Shroud && job.dust.airflow_m3h == 0.0,
        ),
        (
            "water-on-mains-unrated",
            wet && case.is(Power::Mains) && !job.machine.wet_rated,
        ),
        (
            "water-not-rated",
            wet && !case.is(Power::Mains) && !job.machine.wet_rated,
        ),
        (
            "supply-unprotected",
            wet && case.is(Power::Mains) && !case.protected(),
        ),
        (
            "engineered-stone-banned",
            engineered && matches!(job.region, RegionCode::Au | RegionCode::Other),
        ),
        (
            "engineered-stone-dry",
            dry_british || (california && engineered && !wet),
        ),
        (
            "silica-rich-stone-dry",
            california && rich && !engineered && !wet,
        ),
        (
            "engine-indoors",
            case.is(Power::Engine) && job.dust.place == Place::Indoors,
        ),
        ("engineered-stone-powered-respirator", false),
    ]
}

#[test]
fn no_combination_goes_without_its_stop_or_a_complete_set_of_controls() {
    let count = matrix(|case| {
        for (id, deserved) in deserved(case) {
            assert_eq!(case.stopped(id), deserved, "{id}: {}", case.name());
        }
        if case.found.stops.is_empty() {
            complete(case);
        } else {
            let known = deserved(case).map(|(id, _)| id);
            for stop in &case.found.stops {
                assert!(known.contains(&stop.id), "{}: {}", stop.id, case.name());
            }
        }
        never_silent(case);
    });
    // power, wet rating, protection, method, place, stone, region
    assert_eq!(count, 4 * 2 * 5 * 4 * 2 * 16 * 11);
}

/// What must be there when nothing stops the job.
fn complete(case: &Case<'_>) {
    let (job, hazards) = (case.job, case.hazards);
    let must = |holds: bool, what: &str| assert!(holds, "{what}: {}", case.name());
    must(hazards.dust.control != Control::Nothing, "dust is held");
    let at_disc = hazards.order.iter().find(|s| s.id == "control-at-the-disc");
    must(
        at_disc.is_some_and(|step| step.state == State::Done),
        "the order of controls says so",
    );
    must(hazards.caught != Caught::Nothing, "something catches it");
    let settled = match hazards.respirator.required {
        Required::NoneAsked | Required::AtLeast(_) => hazards.respirator.enough == Enough::Yes,
        Required::MustBeAssessed => {
            case.said("not-in-table-indoors")
                || case.said("not-in-table")
                || case.said("california-silica-rule")
                || case.said("engineered-stone")
        }
    };
    must(
        settled,
        "the respirator is settled, or it is said that it is not",
    );
    must(
        !case.wet() || job.machine.wet_rated,
        "water on a wet machine",
    );
    must(
        !case.is(Power::Mains) || case.protected() || case.said("supply-unprotected-dry"),
        "the supply is protected, or it is said that it is not",
    );
    must(
        !case.is(Power::Engine) || job.dust.place == Place::Outdoors,
        "engines outdoors",
    );
    for worn in [
        sign::BREATHING,
        sign::EAR,
        sign::EYE,
        sign::HAND,
        sign::FOOT,
    ] {
        let listed = hazards.protective.iter().any(|p| p.sign == Some(worn));
        must(listed, "every thing to wear is listed");
    }
}

/// What is said of every job, stopped or not.
fn never_silent(case: &Case<'_>) {
    let must = |id: &str| assert!(case.said(id), "{id} not said: {}", case.name());
    for id in [
        "local-rules-first",
        "no-dry-sweeping",
        "never-steer-the-disc",
    ] {
        must(id);
    }
    if case.job.dust.place == Place::Indoors {
        must("indoors-exhaust");
    }
    if case.job.stone.kind == StoneKind::EngineeredStone {
        let said = [
            "engineered-stone",
            "engineered-stone-banned",
            "engineered-stone-dry",
        ];
        assert!(said.iter().any(|id| case.said(id)), "{}", case.name());
    }
    if case.job.stone.silica.high > 0.10 {
        must("high-silica-stone");
    }
    if case.job.stone.silica.high <= 0.0 {
        must("silica-unknown");
    }
}

#[test]
fn what_is_not_known_is_never_silently_fine() {
    type Unknown = (&'static str, fn(&mut Job));
    let unknown: [Unknown; 9] = [
        ("machine-speed-unknown", |job| job.machine.rpm = 0.0),
        ("disc-mark-unknown", |job| job.discs[0].max_rpm = 0.0),
        ("vibration-unknown", |job| job.machine.vibration.a = 0.0),
        ("noise-unknown", |job| job.machine.noise_db = 0.0),
        ("protector-unknown", |job| {
            job.protector = crate::job::Protector::Unknown;
        }),
        ("steel-not-known", |job| {
            job.stone.steel = crate::job::Steel::Unknown;
        }),
        ("silica-unknown", |job| job.stone.silica.high = 0.0),
        ("shroud-airflow-unknown", |job| {
            job.dust.method = DustMethod::Shroud;
        }),
        ("supply-unprotected", |job| {
            job.machine.power = Power::Mains;
            job.machine.protected = Protection::None;
        }),
    ];
    for region in RegionCode::ALL {
        for (id, change) in unknown {
            let (mut job, mut work) = (job(), work());
            (job.region, job.dust.respirator) = (region, usual(region));
            change(&mut job);
            work.discs.clone_from(&job.discs);
            let found = assess(&job, &work).1;
            assert!(all_ids(&found).contains(&id), "{id}: {region:?}");
        }
    }
}

#[test]
fn no_mask_is_never_silently_fine() {
    let none = [
        "respirator-missing",
        "respirator-missing-unassessed",
        "respirator-none-asked",
    ];
    for region in RegionCode::ALL {
        for place in PLACES {
            for kind in [MachineKind::AngleGrinder, MachineKind::HandSaw] {
                let mut job = job();
                (job.region, job.dust.place, job.machine.kind) = (region, place, kind);
                job.dust.respirator = Respirator::None;
                let said = all_ids(&assess(&job, &work()).1);
                let count = none.iter().filter(|id| said.contains(id)).count();
                assert_eq!(count, 1, "{region:?} {place:?}");
            }
        }
    }
}
