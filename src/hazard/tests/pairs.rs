//! For every finding of every hazard a job that raises it and one that does not.

use super::change::{
    Pair, american, californian, engineered, fan, granite_shroud, no_change, on_mains, pair,
    shrouded,
};
use crate::hazard::sample::set_stone;
use crate::job::{DustMethod, Place, Power, Protection, Respirator, Steel};
use crate::tables::region::RegionCode;
use crate::tables::stone::StoneKind;

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
