//! Stone and silica that the kerf sets free, and the limit for the air.
//!
//! The silica share of a stone says what is in the slurry. It does not predict what is in the
//! air, and no concentration is computed from it.

use serde::Serialize;

use super::Work;
use super::notes::Notes;
use crate::job::{DustMethod, Job, Range};
use crate::tables::Source;
use crate::tables::documents as doc;
use crate::tables::record::{Example, Record};
use crate::tables::region::{RuleOrigin, SilicaLimit};

/// Grams in a cubic millimetre of a stone of 1 kg/m³: 1e-9 m³ × 1000 g.
const G_PER_MM3_PER_KG_M3: f64 = 1e-6;
/// Hours of the reference day of every 8-hour limit.
const REFERENCE_DAY_H: f64 = 8.0;

/// Grams of stone and silica.
pub static GRAMS: Record = Record {
    id: "silica-grams",
    title: "Stone and silica that the kerf sets free",
    what: "Volume of the kerf times density is the stone turned to dust or slurry; times the stone's \
           share of crystalline silica it is silica.",
    why: "It says what must be caught and carried away. It says nothing of what is in the air: no exposure \
          follows from it, and none is computed.",
    what_to_do: "Show it to whoever thinks that a few cuts need no water.",
    sources: &[&doc::COMPUTED],
    formula: "stone, g = kerf volume, mm³ × density, kg/m³ × 1e-6; silica, g = stone × share",
    example: Some(grams_example),
    ..Record::FORMULA
};
/// Mean of a day.
pub static TWA: Record = Record {
    id: "twa",
    title: "Mean over an 8-hour day of measured concentrations",
    what: "Each measured concentration times its hours, summed, over 8 hours.",
    why: "Limits for dust are means over 8 hours; a short, bad task counts with its time.",
    what_to_do: "For measured values only. Compare with the limit of the region.",
    sources: &[&doc::OSHA_MEANS],
    formula: "TWA = (C1·T1 + C2·T2 + …) / 8 h",
    example: Some(twa_example),
    ..Record::FORMULA
};
/// Several substances.
pub static MIXTURE: Record = Record {
    id: "mixture",
    title: "Several substances that act together",
    what: "Each measured concentration over its own limit, summed.",
    why: "Two dusts below their limits can be too much together: above 1 the limit of the mixture is passed.",
    what_to_do: "For measured values only.",
    sources: &[&doc::OSHA_MEANS],
    formula: "E = C1/L1 + C2/L2 + …, at most 1",
    example: Some(mixture_example),
    ..Record::FORMULA
};

fn grams_example() -> Example {
    // 2.2 mm wide, 33 mm deep, 2 m long; granite of 2700 kg/m³ with 30 % silica.
    let stone = dust_g(2.2 * 33.0 * 2000.0, 2700.0);
    Example {
        given: "a kerf 2.2 mm wide, 33 mm deep and 2 m long in granite, 2700 kg/m³, 30 % silica"
            .into(),
        result: format!("{stone:.0} g of stone, {:.0} g of silica", stone * 0.30),
    }
}

fn twa_example() -> Example {
    let mean = twa(&[(150.0, 2.0), (75.0, 2.0), (50.0, 4.0)]);
    Example {
        given: "2 h at 150, 2 h at 75, 4 h at 50 (29 CFR 1910.1000(d)(1))".into(),
        result: format!("{mean}"),
    }
}

fn mixture_example() -> Example {
    let sum = mixture(&[(500.0, 1000.0), (45.0, 200.0), (40.0, 200.0)]);
    Example {
        given: "500 of 1000, 45 of 200, 40 of 200 (29 CFR 1910.1000(d)(2))".into(),
        result: format!("{sum:.3}: below 1"),
    }
}

/// Stone and silica set free, and the limit.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct SilicaReport {
    /// Stone turned to dust or slurry, g.
    pub dust_g: Range,
    /// Crystalline silica in it, g.
    pub silica_g: Range,
    /// Where that goes.
    pub where_to: &'static str,
    /// The limit of the region.
    pub limit: SilicaLimit,
    /// Advice of other bodies of the region.
    pub advice: &'static [SilicaLimit],
    /// The limit in words, with document and year.
    pub limit_text: String,
}

/// Mass of the stone in a kerf, g, from its volume in mm³ and the density in kg/m³.
///
/// ```
/// // A litre of stone of 2700 kg/m³ is 2.7 kg.
/// assert_eq!(kerfwright::hazard::silica::dust_g(1e6, 2700.0), 2700.0);
/// ```
#[must_use]
pub fn dust_g(volume_mm3: f64, density_kg_m3: f64) -> f64 {
    volume_mm3 * density_kg_m3 * G_PER_MM3_PER_KG_M3
}

/// Mean over an 8-hour day of concentrations, each with its hours: the sum of `C·T` over 8.
///
/// In the unit of the concentrations. For measured values only. Source: 29 CFR 1910.1000(d)(1).
#[must_use]
pub fn twa(spells: &[(f64, f64)]) -> f64 {
    spells.iter().map(|(c, hours)| c * hours).sum::<f64>() / REFERENCE_DAY_H
}

/// Sum of concentration over limit for substances that act together; above 1 is over the limit.
///
/// For measured values only. Source: 29 CFR 1910.1000(d)(2).
#[must_use]
pub fn mixture(parts: &[(f64, f64)]) -> f64 {
    parts.iter().map(|(c, limit)| c / limit).sum()
}

/// Stone, silica and limit for the job.
pub(super) fn assess(job: &Job, work: &Work, notes: &mut Notes) -> SilicaReport {
    let rules = job.region.record();
    let (limit, advice) = (rules.silica, &rules.silica_advice);
    notes.used(limit.source);
    for guide in advice {
        notes.used(guide.source);
    }
    table_sources(job, notes);
    let dust = map(job.stone.density, |d| dust_g(work.kerf_volume_mm3, d));
    let share = job.stone.silica;
    SilicaReport {
        dust_g: dust,
        silica_g: Range {
            low: dust.low * share.low,
            likely: dust.likely * share.likely,
            high: dust.high * share.high,
        },
        where_to: where_to(job.dust.method),
        limit,
        advice,
        limit_text: limit_text(&limit),
    }
}

/// The stone's density and silica rest on the table when the job took them from there.
fn table_sources(job: &Job, notes: &mut Notes) {
    let Some(record) = job.stone.kind.record() else {
        return;
    };
    for (table, taken) in [
        (record.density_kg_m3, job.stone.density),
        (record.silica_share, job.stone.silica),
    ] {
        if table.low == taken.low && table.high == taken.high {
            notes.used(table.source);
            notes.used(table.likely_source);
        }
    }
}

fn map(range: Range, f: impl Fn(f64) -> f64) -> Range {
    Range {
        low: f(range.low),
        likely: f(range.likely),
        high: f(range.high),
    }
}

const fn where_to(method: DustMethod) -> &'static str {
    match method {
        DustMethod::Water => {
            "into the slurry: collect it wet, before it dries to dust; let it settle in a bucket, \
             never into a drain"
        }
        DustMethod::Shroud => {
            "into the extractor's bag, what the shroud does not catch into the air and onto the floor"
        }
        DustMethod::None => "into the air, onto everything, into every lung nearby",
    }
}

/// The limit in words.
fn limit_text(limit: &SilicaLimit) -> String {
    let source: &Source = limit.source;
    let borrowed = match limit.standing {
        RuleOrigin::Own => "",
        RuleOrigin::Borrowed => ", borrowed from elsewhere",
    };
    let action = limit
        .action_mg_m3
        .map_or_else(String::new, |level| format!(", action level {level} mg/m³"));
    format!(
        "respirable crystalline silica {} mg/m³ over 8 hours{action}{borrowed}: {}; check your \
         current rules",
        limit.limit_mg_m3,
        source.cite(),
    )
}
