//! For every finding of every hazard a job that raises it and one that does not.

use super::change::{
    Pair, american, californian, engineered, fan, granite_shroud, no_change, on_mains, pair,
    shrouded,
};
use crate::hazard::sample::set_stone;
use crate::job::{
    Asbestos, Binder, DustMethod, MachineKind, Power, Protection, Respirator, Steel, Workplace,
};
use crate::tables::region::RegionCode;
use crate::tables::respirator::MaskClass;
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
            job.dust.respirator = Respirator::Mask(MaskClass::Th2);
        },
    ),
    pair(
        "engineered-stone",
        |job, _| {
            engineered(job, RegionCode::De);
            job.dust.respirator = Respirator::Mask(MaskClass::Th3);
        },
        no_change,
    ),
    pair("high-silica-stone", no_change, |job, _| {
        set_stone(job, StoneKind::Limestone);
    }),
    pair(
        "california-silica-rule",
        |job, _| californian(job, StoneKind::Granite),
        |job, _| californian(job, StoneKind::Limestone),
    ),
    pair(
        "silica-rich-stone-dry",
        |job, _| {
            californian(job, StoneKind::Granite);
            shrouded(job, 300.0);
        },
        |job, _| {
            californian(job, StoneKind::Limestone);
            shrouded(job, 300.0);
        },
    ),
    pair(
        "silica-unknown",
        |job, _| job.stone.silica.high = 0.0,
        |job, _| set_stone(job, StoneKind::Soapstone),
    ),
    pair(
        "asbestos-not-tested",
        |job, _| set_stone(job, StoneKind::Soapstone),
        |job, _| {
            set_stone(job, StoneKind::Soapstone);
            job.stone.asbestos = Asbestos::TestedFree {
                report: "12/7, stone laboratory".into(),
                date: "2026-10-01".into(),
            };
        },
    ),
    pair(
        "asbestos-declaration",
        |job, _| set_stone(job, StoneKind::Gabbro),
        no_change,
    ),
    pair(
        "binder-unknown",
        |job, _| {
            set_stone(job, StoneKind::Own);
            job.stone.silica.high = 0.3;
        },
        |job, _| {
            set_stone(job, StoneKind::Own);
            job.stone.silica.high = 0.3;
            job.stone.binder = Binder::Cement;
        },
    ),
    pair(
        "resin-in-fired-slab",
        |job, _| {
            job.region = RegionCode::Au;
            set_stone(job, StoneKind::Porcelain);
        },
        |job, _| set_stone(job, StoneKind::Porcelain),
    ),
    pair(
        "marble-veins",
        |job, _| set_stone(job, StoneKind::Marble),
        no_change,
    ),
    pair(
        "stone-kind-unknown",
        |job, _| set_stone(job, StoneKind::Terrazzo),
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
        "supply-unprotected-outdoors",
        |job, _| {
            on_mains(job, false, Protection::None);
            shrouded(job, 300.0);
        },
        |job, _| {
            on_mains(job, false, Protection::Rcd);
            shrouded(job, 300.0);
        },
    ),
    pair(
        "supply-unprotected-dry",
        |job, _| {
            job.dust.place = Workplace::Indoors;
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
            job.dust.place = Workplace::Indoors;
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
    pair(
        "no-water-flow",
        |job, _| job.dust.water_l_min = 0.0,
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
        |job, _| american(job, Workplace::Indoors),
        |job, _| american(job, Workplace::Outdoors),
    ),
    pair(
        "not-in-table",
        |job, _| {
            american(job, Workplace::Outdoors);
            job.machine.kind = MachineKind::HandSaw;
            shrouded(job, 300.0);
        },
        |job, _| american(job, Workplace::Outdoors),
    ),
    pair(
        "indoors-exhaust",
        |job, _| job.dust.place = Workplace::Indoors,
        no_change,
    ),
    pair(
        "who-is-bound",
        |job, _| american(job, Workplace::Outdoors),
        no_change,
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
            american(job, Workplace::Indoors);
            job.dust.respirator = Respirator::None;
        },
        |job, _| american(job, Workplace::Indoors),
    ),
    pair(
        "respirator-none-asked",
        |job, _| {
            american(job, Workplace::Outdoors);
            set_stone(job, StoneKind::Limestone);
            job.dust.respirator = Respirator::None;
        },
        |job, _| american(job, Workplace::Outdoors),
    ),
    pair(
        "respirator-not-in-scheme",
        |job, _| job.dust.respirator = Respirator::Mask(MaskClass::N95),
        no_change,
    ),
    pair(
        "respirator-unlisted",
        |job, _| {
            american(job, Workplace::Outdoors);
            set_stone(job, StoneKind::Limestone);
            job.dust.respirator = Respirator::Mask(MaskClass::Ffp3);
        },
        |job, _| american(job, Workplace::Outdoors),
    ),
    pair(
        "respirator-below-required",
        |job, _| job.dust.respirator = Respirator::Mask(MaskClass::Th1),
        |job, _| job.dust.respirator = Respirator::Mask(MaskClass::FullFace),
    ),
    pair(
        "respirator-filter",
        |job, _| {
            american(job, Workplace::Outdoors);
            job.region = RegionCode::CaQc;
        },
        |job, _| american(job, Workplace::Outdoors),
    ),
    pair(
        "respirator-class",
        |job, _| job.dust.respirator = Respirator::Mask(MaskClass::PoweredHood),
        |job, _| job.dust.respirator = Respirator::Mask(MaskClass::Th3),
    ),
    pair(
        "respirator-not-fit-tested",
        |job, _| fan(job, Respirator::Mask(MaskClass::Tm3)),
        |job, _| fan(job, Respirator::Mask(MaskClass::Th3)),
    ),
    pair("respirator-clean-shaven", no_change, |job, _| {
        job.dust.respirator = Respirator::Mask(MaskClass::Th3);
    }),
];
