//! Every combination of machine, supply, control, place, stone and region.

use crate::diag::{Finding, Findings};
use crate::hazard::assess;
use crate::hazard::sample::{job, set_stone, work};
use crate::job::{DustMethod, Job, MachineKind, Place, Power, Protection, Respirator};
use crate::tables::region::RegionCode;
use crate::tables::stone::StoneKind;

fn ids(findings: &[Finding]) -> Vec<&'static str> {
    findings.iter().map(|finding| finding.id).collect()
}

/// Every job of the matrix, with its findings.
fn matrix(mut check: impl FnMut(&Job, &Findings)) {
    let mut job = job();
    job.dust.airflow_m3h = 300.0;
    let work = work();
    let kinds: Vec<StoneKind> = StoneKind::ALL.into_iter().chain([StoneKind::Own]).collect();
    for power in [Power::Mains, Power::Battery, Power::Air, Power::Engine] {
        for wet_rated in [true, false] {
            for protected in PROTECTIONS {
                (job.machine.power, job.machine.wet_rated) = (power, wet_rated);
                job.machine.protected = protected;
                for method in [DustMethod::Water, DustMethod::Shroud, DustMethod::None] {
                    for place in [Place::Outdoors, Place::Indoors] {
                        (job.dust.method, job.dust.place) = (method, place);
                        for &kind in &kinds {
                            set_stone(&mut job, kind);
                            for region in RegionCode::ALL {
                                job.region = region;
                                check(&job, &assess(&job, &work).1);
                            }
                        }
                    }
                }
            }
        }
    }
}

const PROTECTIONS: [Protection; 5] = [
    Protection::Rcd,
    Protection::Gfci,
    Protection::CentreTapped110V,
    Protection::Battery,
    Protection::None,
];

#[test]
fn no_dangerous_job_of_the_matrix_goes_without_its_stop() {
    let mut count = 0;
    matrix(|job, found| {
        let stopped = |id: &str| found.stops.iter().any(|stop| stop.id == id);
        let wet = job.dust.method == DustMethod::Water;
        let mains = job.machine.power == Power::Mains;
        let engineered = job.stone.kind == StoneKind::EngineeredStone;
        let banned = matches!(job.region, RegionCode::Au | RegionCode::Other);
        let unprotected = matches!(
            job.machine.protected,
            Protection::None | Protection::Battery
        );
        for (id, deserved) in [
            ("no-dust-control", job.dust.method == DustMethod::None),
            (
                "water-on-mains-unrated",
                wet && mains && !job.machine.wet_rated,
            ),
            ("water-not-rated", wet && !mains && !job.machine.wet_rated),
            ("supply-unprotected", wet && mains && unprotected),
            ("engineered-stone", engineered && banned),
            (
                "engine-indoors",
                job.machine.power == Power::Engine && job.dust.place == Place::Indoors,
            ),
        ] {
            assert_eq!(stopped(id), deserved, "{id}: {job:?}");
        }
        count += 1;
    });
    // power, wet rating, protection, method, place, stone, region
    assert_eq!(count, 4 * 2 * 5 * 3 * 2 * 16 * 11);
}

#[test]
fn no_mask_is_never_silently_fine() {
    for region in RegionCode::ALL {
        for place in [Place::Outdoors, Place::Indoors] {
            for kind in [MachineKind::AngleGrinder, MachineKind::HandSaw] {
                let mut job = job();
                (job.region, job.dust.place, job.machine.kind) = (region, place, kind);
                job.dust.respirator = Respirator::None;
                let found = assess(&job, &work()).1;
                let said: Vec<_> = [ids(&found.stops), ids(&found.cautions)].concat();
                assert!(said.contains(&"respirator-missing"), "{region:?} {place:?}");
            }
        }
    }
}
