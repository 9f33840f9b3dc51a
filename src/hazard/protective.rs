//! What to wear, and why.

use serde::Serialize;

use super::noise::NoiseReport;
use super::notes::Notes;
use super::respirator::{Required, RespiratorReport};
use crate::job::Job;
use crate::tables::Source;
use crate::tables::documents as doc;
use crate::tables::protective as sign;

/// One thing to wear.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct ProtectiveItem {
    /// What.
    pub what: String,
    /// Why.
    pub why: String,
    /// Number of its sign in ISO 7010, when it has one.
    pub sign: Option<&'static str>,
    /// Where it comes from.
    pub source: &'static Source,
}

/// Everything to wear on this job.
pub(super) fn list(
    job: &Job,
    respirator: &RespiratorReport,
    noise: &NoiseReport,
    notes: &mut Notes,
) -> Vec<ProtectiveItem> {
    let mut items = vec![breathing(respirator), ear(noise)];
    items.extend(against_fragments());
    if job.dust.is_wet() {
        items.push(item(
            "waterproof apron and boots",
            "slurry that dries in clothes becomes dust at home",
            None,
            &doc::COMMON_PRACTICE,
        ));
    } else {
        items.push(item(
            "overalls that stay at the place of work",
            "dust in clothes is carried home",
            None,
            &doc::COMMON_PRACTICE,
        ));
    }
    for item in &items {
        notes.used(item.source);
    }
    notes.used(&doc::ISO_7010);
    items
}

fn item(
    what: impl Into<String>,
    why: impl Into<String>,
    sign: Option<&'static str>,
    source: &'static Source,
) -> ProtectiveItem {
    ProtectiveItem {
        what: what.into(),
        why: why.into(),
        sign,
        source,
    }
}

fn breathing(report: &RespiratorReport) -> ProtectiveItem {
    let what = match report.required {
        Required::AtLeast(apf) => format!("respirator with a factor of at least {apf}"),
        Required::MustBeAssessed => "respirator chosen after exposure was assessed".into(),
        Required::NoneAsked => {
            "respirator that fits, worn while the disc turns and for cleaning up".into()
        }
    };
    item(
        what,
        format!("respirable silica; at hand: {}", report.at_hand),
        Some(sign::BREATHING),
        report.required_source,
    )
}

fn ear(noise: &NoiseReport) -> ProtectiveItem {
    item(
        "hearing protection",
        format!("{:.0} dB(A) at the ear", noise.level_db),
        Some(sign::EAR),
        noise.values.source,
    )
}

fn against_fragments() -> [ProtectiveItem; 3] {
    let source = &doc::COMMON_PRACTICE;
    [
        item(
            "goggles, and a face shield over them",
            "chips and pieces of a broken disc",
            Some(sign::EYE),
            &doc::GRINDER_WARNINGS,
        ),
        item(
            "close-fitting gloves, no loose cuffs",
            "sharp arrises; loose cloth is caught by the disc",
            Some(sign::HAND),
            source,
        ),
        item(
            "safety shoes with caps",
            "falling waste and slabs set down",
            Some(sign::FOOT),
            source,
        ),
    ]
}
