//! What is not known is never silently fine, in no region; the whole matrix stands in `tests/safety`.

use super::change::all_ids;
use crate::hazard::assess;
use crate::hazard::sample::{job, work};
use crate::job::{DustMethod, Job, MachineKind, Power, Protection, Respirator, Workplace};
use crate::tables::region::RegionCode;
use crate::tables::respirator::MaskClass;

const PLACES: [Workplace; 2] = [Workplace::Outdoors, Workplace::Indoors];

/// A good respirator of the region's scheme.
const fn usual(region: RegionCode) -> Respirator {
    match region {
        RegionCode::UsCa => Respirator::Mask(MaskClass::PoweredFullFace),
        RegionCode::Us | RegionCode::CaQc => Respirator::Mask(MaskClass::P100),
        RegionCode::Au | RegionCode::Nz => Respirator::Mask(MaskClass::P2),
        _ => Respirator::Mask(MaskClass::Th3),
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
