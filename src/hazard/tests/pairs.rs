//! For every finding of every hazard a job that raises it and one that does not.

use super::change::{
    Change, Pair, american, californian, engineered, fan, granite_shroud, no_change, on_mains,
    shrouded,
};
use crate::hazard::sample::set_stone;
use crate::job::{
    Bond, DustMethod, EarKind, Place, Power, Protection, Protector, Respirator, Steel,
};
use crate::tables::region::RegionCode;
use crate::tables::stone::StoneKind;

const fn pair(id: &'static str, raises: Change, does_not: Change) -> Pair {
    Pair {
        id,
        raises,
        does_not,
    }
}

/// The stone.
pub(super) const STONE: &[Pair] = &[
    pair(
        "engineered-stone-banned",
        |job, _| engineered(job, RegionCode::Au),
        |job, _| engineered(job, RegionCode::Nz),
    ),
    pair(
        "engineered-stone-dry",
        |job, _| {
            californian(job, StoneKind::EngineeredStone);
            shrouded(job, 300.0);
        },
        |job, _| californian(job, StoneKind::EngineeredStone),
    ),
    pair(
        "engineered-stone-powered-respirator",
        |job, _| engineered(job, RegionCode::Uk),
        |job, _| {
            engineered(job, RegionCode::Uk);
            job.dust.respirator = Respirator::Th2;
        },
    ),
    pair(
        "engineered-stone",
        |job, _| engineered(job, RegionCode::De),
        no_change,
    ),
    pair(
        "controlled-processing",
        |job, _| job.region = RegionCode::Au,
        no_change,
    ),
    pair("high-silica-stone", no_change, |job, _| {
        set_stone(job, StoneKind::Limestone);
    }),
    pair(
        "california-silica-rule",
        |job, _| californian(job, StoneKind::Granite),
        |job, _| californian(job, StoneKind::Marble),
    ),
    pair(
        "silica-rich-stone-dry",
        |job, _| {
            californian(job, StoneKind::Granite);
            shrouded(job, 300.0);
        },
        |job, _| {
            californian(job, StoneKind::Marble);
            shrouded(job, 300.0);
        },
    ),
    pair(
        "silica-unknown",
        |job, _| job.stone.silica.high = 0.0,
        |job, _| set_stone(job, StoneKind::Soapstone),
    ),
    pair(
        "soapstone-asbestos",
        |job, _| set_stone(job, StoneKind::Soapstone),
        no_change,
    ),
    pair(
        "marble-veins",
        |job, _| set_stone(job, StoneKind::Marble),
        no_change,
    ),
    pair(
        "stone-kind-unknown",
        |job, _| set_stone(job, StoneKind::Own),
        no_change,
    ),
    pair(
        "sparks-into-extractor",
        |job, _| {
            granite_shroud(job);
            job.stone.steel = Steel::Some;
        },
        |job, _| granite_shroud(job),
    ),
    pair(
        "sparks-from-steel",
        |job, _| job.stone.steel = Steel::Some,
        no_change,
    ),
    pair(
        "steel-not-known",
        |job, _| job.stone.steel = Steel::Unknown,
        no_change,
    ),
];

/// The supply.
pub(super) const SUPPLY: &[Pair] = &[
    pair(
        "water-on-mains-unrated",
        |job, _| on_mains(job, false, Protection::Rcd),
        |job, _| on_mains(job, true, Protection::Rcd),
    ),
    pair(
        "water-not-rated",
        |job, _| job.machine.wet_rated = false,
        no_change,
    ),
    pair(
        "supply-unprotected",
        |job, _| on_mains(job, true, Protection::Battery),
        |job, _| on_mains(job, true, Protection::Gfci),
    ),
    pair(
        "supply-unprotected-dry",
        |job, _| {
            on_mains(job, false, Protection::None);
            shrouded(job, 300.0);
        },
        |job, _| {
            on_mains(job, false, Protection::CentreTapped110V);
            shrouded(job, 300.0);
        },
    ),
    pair(
        "wet-mains",
        |job, _| on_mains(job, true, Protection::Rcd),
        no_change,
    ),
    pair("battery-wet", no_change, |job, _| shrouded(job, 300.0)),
    pair(
        "air-hose",
        |job, _| job.machine.power = Power::Air,
        no_change,
    ),
    pair(
        "engine-indoors",
        |job, _| {
            job.machine.power = Power::Engine;
            job.dust.place = Place::Indoors;
        },
        |job, _| job.machine.power = Power::Engine,
    ),
    pair(
        "engine-fumes",
        |job, _| job.machine.power = Power::Engine,
        no_change,
    ),
];

/// The dust.
pub(super) const DUST: &[Pair] = &[
    pair(
        "no-dust-control",
        |job, _| job.dust.method = DustMethod::None,
        no_change,
    ),
    pair("water-flow", no_change, |job, _| shrouded(job, 300.0)),
    pair(
        "water-too-little",
        |job, _| job.dust.water_l_min = 0.4,
        no_change,
    ),
    pair(
        "shroud-airflow-unknown",
        |job, _| shrouded(job, 0.0),
        |job, _| shrouded(job, 212.0),
    ),
    pair(
        "shroud-airflow-too-small",
        |job, _| shrouded(job, 211.0),
        |job, _| shrouded(job, 212.0),
    ),
    pair("extractor-filter", |job, _| shrouded(job, 300.0), no_change),
    pair(
        "not-in-table-indoors",
        |job, _| american(job, Place::Indoors),
        |job, _| american(job, Place::Outdoors),
    ),
    pair(
        "not-in-table",
        |job, _| {
            american(job, Place::Outdoors);
            job.dust.method = DustMethod::None;
        },
        |job, _| american(job, Place::Outdoors),
    ),
    pair(
        "indoors-exhaust",
        |job, _| job.dust.place = Place::Indoors,
        no_change,
    ),
    pair(
        "who-is-bound",
        |job, _| american(job, Place::Outdoors),
        no_change,
    ),
    pair(
        "silica-limit-changes",
        |job, _| {
            job.region = RegionCode::Au;
            job.heading.date = "2026-11-30".into();
        },
        no_change,
    ),
    pair(
        "silica-limit-replaced",
        |job, _| {
            job.region = RegionCode::Au;
            job.heading.date = "2026-12-01".into();
        },
        |job, _| job.region = RegionCode::Au,
    ),
    pair("no-dry-sweeping", no_change, |_, work| {
        work.kerf_volume_mm3 = 0.0;
    }),
    pair(
        "vacuum-before-the-mask-comes-off",
        |job, _| shrouded(job, 300.0),
        no_change,
    ),
    pair("slurry-clean-up", no_change, |job, _| shrouded(job, 300.0)),
    pair("dust-bags", |job, _| shrouded(job, 300.0), no_change),
];

/// The respirator.
pub(super) const RESPIRATOR: &[Pair] = &[
    pair(
        "nuisance-mask",
        |job, _| job.dust.respirator = Respirator::Nuisance,
        no_change,
    ),
    pair(
        "respirator-missing",
        |job, _| job.dust.respirator = Respirator::None,
        no_change,
    ),
    pair(
        "respirator-missing-unassessed",
        |job, _| {
            american(job, Place::Indoors);
            job.dust.respirator = Respirator::None;
        },
        |job, _| american(job, Place::Indoors),
    ),
    pair(
        "respirator-none-asked",
        |job, _| {
            american(job, Place::Outdoors);
            job.dust.respirator = Respirator::None;
        },
        |job, _| american(job, Place::Outdoors),
    ),
    pair(
        "respirator-not-in-scheme",
        |job, _| job.dust.respirator = Respirator::N95,
        no_change,
    ),
    pair(
        "respirator-unlisted",
        |job, _| {
            american(job, Place::Outdoors);
            job.dust.respirator = Respirator::Ffp3;
        },
        |job, _| american(job, Place::Outdoors),
    ),
    pair(
        "respirator-below-required",
        |job, _| job.dust.respirator = Respirator::Th1,
        |job, _| job.dust.respirator = Respirator::FullFace,
    ),
    pair(
        "respirator-class",
        |job, _| job.dust.respirator = Respirator::PoweredHood,
        |job, _| job.dust.respirator = Respirator::Th3,
    ),
    pair(
        "respirator-not-fit-tested",
        |job, _| fan(job, Respirator::Tm3),
        |job, _| fan(job, Respirator::Th3),
    ),
    pair("respirator-clean-shaven", no_change, |job, _| {
        job.dust.respirator = Respirator::Th3;
    }),
];

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
];

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
        |job, _| job.protector = Protector::Unknown,
        no_change,
    ),
    pair("noise-over-action", no_change, |job, _| {
        job.machine.noise_db = 88.0;
    }),
    pair(
        "noise-over-osha-limit",
        |job, _| {
            american(job, Place::Outdoors);
            job.machine.noise_db = 106.0;
        },
        |job, _| american(job, Place::Outdoors),
    ),
    pair(
        "noise-over-osha-action",
        |job, _| american(job, Place::Outdoors),
        |job, _| {
            american(job, Place::Outdoors);
            job.machine.noise_db = 99.0;
        },
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
    pair("frost", no_change, |job, _| {
        job.dust.place = Place::Indoors;
    }),
];

fn faster(job: &mut crate::job::Job, work: &mut crate::hazard::Work, rpm: f64) {
    job.machine.rpm = rpm;
    work.discs
        .iter_mut()
        .for_each(|disc| disc.max_rpm = 16_000.0);
}

fn resin(job: &mut crate::job::Job, work: &mut crate::hazard::Work, expires: &str, date: &str) {
    job.heading.date = date.into();
    for disc in &mut work.discs {
        disc.bond = Bond::Resin {
            expires: expires.into(),
        };
    }
}

fn nothing_cut(_: &mut crate::job::Job, work: &mut crate::hazard::Work) {
    work.sawn_face_mm2 = 0.0;
}
