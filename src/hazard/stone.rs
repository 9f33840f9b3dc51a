//! What the kind of stone brings with it.

use super::notes::Notes;
use super::respirator::powered;
use crate::job::{DustMethod, Job};
use crate::tables::documents as doc;
use crate::tables::region::{EngineeredStoneLaw, RegionCode};
use crate::tables::regions::au;
use crate::tables::stone::{RICH_IN_SILICA, StoneKind};
use crate::tables::stones::sources;

/// Whether the stone is bound with resin, as far as the table knows.
fn engineered(job: &Job) -> bool {
    job.stone.kind.record().is_some_and(|r| r.engineered)
}

/// Whether the stone may hold more silica than the Californian threshold for natural stone.
fn rich_in_silica(job: &Job) -> bool {
    job.stone.silica.high > RICH_IN_SILICA.value
}

/// Whether the Californian rule for artificial and silica-rich stone applies.
pub(super) fn california_rule_applies(job: &Job) -> bool {
    job.region == RegionCode::UsCa && (engineered(job) || rich_in_silica(job))
}

/// Stops and cautions about the stone itself.
pub(super) fn assess(job: &Job, notes: &mut Notes) {
    if engineered(job) {
        engineered_stone(job, notes);
    } else if california_rule_applies(job) {
        california_natural(job, notes);
    }
    if job.region == RegionCode::Au && job.stone.silica.high >= au::CONTROLLED_SHARE {
        australia_controlled(job, notes);
    }
    if rich_in_silica(job) {
        rich(job, notes);
    }
    if job.stone.silica.high <= 0.0 {
        silica_unknown(job, notes);
    }
    if job.stone.kind.record().is_some_and(|r| r.asbestos_question) {
        asbestos(notes);
    }
    match job.stone.kind {
        StoneKind::Marble => veins(notes),
        StoneKind::Own | StoneKind::Terrazzo => binder_unknown(job, notes),
        _ => {}
    }
}

fn engineered_stone(job: &Job, notes: &mut Notes) {
    let rule = job.region.record().engineered_stone;
    let wet = job.dust.method == DustMethod::Water;
    let asks_powered = rule.law == EngineeredStoneLaw::WetAndPoweredRespirator;
    let asks_wet = asks_powered || rule.law == EngineeredStoneLaw::WetOnly;
    let mut stopped = false;
    if rule.law == EngineeredStoneLaw::Banned {
        stopped = true;
        notes.stop(
            "engineered-stone",
            rule.source,
            "engineered stone may not be cut here",
            rule.words,
        );
    }
    if asks_wet && !wet {
        stopped = true;
        notes.stop(
            "engineered-stone-dry",
            rule.source,
            "engineered stone without water",
            format!("Wet methods: none, asked for. {}", rule.words),
        );
    }
    if asks_powered && !powered(job.dust.respirator) {
        stopped = true;
        notes.stop(
            "engineered-stone-powered-respirator",
            rule.source,
            "engineered stone without a powered respirator",
            format!(
                "Powered respirator: none at hand, asked for. {}",
                rule.words
            ),
        );
    }
    if !stopped {
        notes.caution(
            "engineered-stone",
            rule.source,
            "engineered stone: stricter rules come first",
            format!(
                "{} Leaving it to a licensed shop is the safe choice.",
                rule.words
            ),
        );
    }
}

fn california_natural(job: &Job, notes: &mut Notes) {
    let rule = job.region.record().engineered_stone;
    let title = "stone above 10 % silica: California asks for wet methods";
    let detail = format!(
        "Silica up to {:.0} %, threshold {:.0} %. {}",
        job.stone.silica.high * 100.0,
        RICH_IN_SILICA.value * 100.0,
        rule.words
    );
    if job.dust.method == DustMethod::Water {
        notes.caution("california-silica-rule", rule.source, title, detail);
    } else {
        notes.stop("silica-rich-stone-dry", rule.source, title, detail);
    }
}

fn australia_controlled(job: &Job, notes: &mut Notes) {
    notes.caution(
        "controlled-processing",
        &au::CONTROLLED_PROCESSING,
        "material with 1 % silica or more: cut under control only",
        format!(
            "Silica up to {:.0} %, threshold {:.0} %: since 1 September 2024 it is cut, ground and \
             polished only with a control such as water, on-tool extraction or local exhaust.",
            job.stone.silica.high * 100.0,
            au::CONTROLLED_SHARE * 100.0
        ),
    );
}

fn rich(job: &Job, notes: &mut Notes) {
    let silica = job.stone.silica;
    notes.caution(
        "high-silica-stone",
        RICH_IN_SILICA.source,
        format!(
            "{} may be up to {:.0} % silica",
            job.stone.name,
            silica.high * 100.0
        ),
        format!(
            "Silica {:.0} to {:.0} % of the stone, above {:.0} % counts as rich (California's \
             figure, used everywhere here). Its dust scars the lungs for good: control and respirator from the first touch to the last of the \
             cleaning up, and nobody near without one.",
            silica.low * 100.0,
            silica.high * 100.0,
            RICH_IN_SILICA.value * 100.0
        ),
    );
}

fn silica_unknown(job: &Job, notes: &mut Notes) {
    notes.caution(
        "silica-unknown",
        &doc::OUR_JUDGEMENT,
        format!("{}: silica share not known", job.stone.name),
        format!(
            "Silica {:.0} % at most as entered: hardly any stone is free of it. Until a data sheet says \
             so, treat it as rich in silica (above {:.0} %), and enter stone.silica.",
            job.stone.silica.high * 100.0,
            RICH_IN_SILICA.value * 100.0
        ),
    );
}

fn asbestos(notes: &mut Notes) {
    notes.caution(
        "soapstone-asbestos",
        &sources::SOAPSTONE_SILICA,
        "soapstone may hold asbestos minerals",
        "Asbestos that may be cut: none. Before the first cut have a laboratory test a chip of this \
         slab, or get the quarry's own test. Without a clear result it is work for licensed people.",
    );
}

fn veins(notes: &mut Notes) {
    notes.caution(
        "marble-veins",
        &sources::HSG201,
        "veins in marble can hold far more silica than the stone",
        "Marble as a whole is at most 5 to 7 % silica; its veins can be far more. Treat a cut along \
         or through a vein as a cut in stone rich in silica.",
    );
}

fn binder_unknown(job: &Job, notes: &mut Notes) {
    let law = job.region.record().engineered_stone;
    notes.caution(
        "stone-kind-unknown",
        law.source,
        format!("{}: what binds it is not known", job.stone.name),
        format!(
            "Stone bound with resin and holding 1 % silica or more counts as engineered stone. Ask \
             for the data sheet. If it is: {}",
            law.words
        ),
    );
}
