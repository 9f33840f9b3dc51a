//! The same for the disc, and for hands, ears and people.

use super::change::{Pair, no_change, on_mains, pair, shrouded};
use crate::hazard::Work;
use crate::job::{Assumption, Bond, DustMethod, EarKind, Job, Protection, Protector, Workplace};

/// The disc.
pub(super) const DISC: &[Pair] = &[
    pair(
        "disc-over-marked-rpm",
        |job, _| job.machine.rpm = 12_201.0,
        |job, _| job.machine.rpm = 12_200.0,
    ),
    pair(
        "disc-mark-unknown",
        |_, work| work.discs.iter_mut().for_each(|disc| disc.max_rpm = 0.0),
        no_change,
    ),
    pair(
        "machine-speed-unknown",
        |job, _| job.machine.rpm = 0.0,
        no_change,
    ),
    pair(
        "disc-larger-than-machine",
        |job, _| job.machine.largest_disc_mm = Some(115.0),
        no_change,
    ),
    pair(
        "speed-assumed",
        |job, _| {
            job.assumed.push(Assumption {
                key: "machine.rpm".into(),
                value: String::new(),
                why: String::new(),
            });
        },
        no_change,
    ),
    pair(
        "rim-speed-over-limit",
        |job, work| faster(job, work, 15_400.0),
        |job, work| faster(job, work, 15_279.0),
    ),
    pair(
        "rim-speed-above-hand-discs",
        |job, work| faster(job, work, 12_400.0),
        |job, work| faster(job, work, 12_223.0),
    ),
    pair(
        "disc-bore",
        |_, work| work.discs.iter_mut().for_each(|disc| disc.bore = 22.0),
        |_, work| work.discs.iter_mut().for_each(|disc| disc.bore = 22.2),
    ),
    pair(
        "resin-disc-expired",
        |job, work| resin(job, work, "2027-03-31", "2027-04-01"),
        |job, work| resin(job, work, "2027-03-31", "2027-03-31"),
    ),
    pair(
        "resin-disc-age-unknown",
        |job, work| resin(job, work, "", "2027-03-31"),
        |job, work| resin(job, work, "2027-03-31", "2027-03-31"),
    ),
    pair(
        "resin-disc-age",
        |job, work| resin(job, work, "2027-03-31", ""),
        no_change,
    ),
    pair("never-steer-the-disc", no_change, nothing_cut),
    pair("kickback-pinched-disc", no_change, nothing_cut),
    pair("support-both-sides", no_change, nothing_cut),
    pair("disc-before-use", no_change, nothing_cut),
    pair("new-disc-run", no_change, nothing_cut),
    pair("disc-run-down", no_change, nothing_cut),
    pair("leads", |job, _| on_mains(job, true, Protection::Rcd), dry),
    pair("hoses", |job, _| job.dust.method = DustMethod::Water, dry),
];

fn dry(job: &mut Job, _: &mut Work) {
    job.dust.method = DustMethod::None;
}

/// Hands, ears and people.
pub(super) const PEOPLE: &[Pair] = &[
    pair(
        "vibration-over-limit",
        |job, _| job.dust.hours_today = 3.0,
        no_change,
    ),
    pair("vibration-over-action", no_change, |_, work| {
        work.trigger_minutes = 40.0;
    }),
    pair(
        "vibration-unknown",
        |job, _| job.machine.vibration.a = 0.0,
        no_change,
    ),
    pair(
        "noise-over-limit",
        |job, _| job.protector = Protector::Snr(7.0),
        no_change,
    ),
    pair(
        "noise-unknown",
        |job, _| job.machine.noise_db = 0.0,
        no_change,
    ),
    pair(
        "protector-unknown",
        |job, _| job.protector = Protector::Unknown,
        no_change,
    ),
    pair(
        "protector-too-weak",
        |job, _| job.protector = Protector::Snr(9.0),
        |job, _| job.protector = Protector::Snr(11.0),
    ),
    pair(
        "protector-too-strong",
        |job, _| job.protector = Protector::Snr(35.0),
        |job, _| job.protector = Protector::Snr(34.0),
    ),
    pair(
        "protector-foreign-rating",
        |job, _| {
            job.protector = Protector::Nrr {
                nrr: 30.0,
                kind: EarKind::Muffs,
            };
        },
        no_change,
    ),
    pair("working-alone", |job, _| job.lift.people = 1, no_change),
    pair("second-person", no_change, |job, _| job.lift.people = 1),
    pair("cold-water", no_change, |job, _| shrouded(job, 300.0)),
    pair("wet-floor", no_change, |job, _| shrouded(job, 300.0)),
    pair("frost", no_change, |job, _| {
        job.dust.place = Workplace::Indoors;
    }),
];

fn faster(job: &mut Job, work: &mut Work, rpm: f64) {
    job.machine.rpm = rpm;
    work.discs
        .iter_mut()
        .for_each(|disc| disc.max_rpm = 16_000.0);
}

fn resin(job: &mut Job, work: &mut Work, expires: &str, date: &str) {
    job.heading.date = date.into();
    for disc in &mut work.discs {
        disc.bond = Bond::Resin {
            expires: expires.into(),
        };
    }
}

fn nothing_cut(_: &mut Job, work: &mut Work) {
    work.sawn_face_mm2 = 0.0;
}
