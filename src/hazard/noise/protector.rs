//! What a hearing protector leaves at the ear: SNR, HML and NRR, each derated as the region does.

use serde::Serialize;

use super::day_level;
use crate::job::{EarKind, Job, Protector};
use crate::tables::documents as doc;
use crate::tables::record::{Example, Record};
use crate::tables::region::{HearingMethod, HearingRule};

/// C-weighted over A-weighted level from which HML reckons with L instead of H, dB (EN ISO 4869-2).
const HML_KNEE_DB: f64 = 2.0;
/// What British practice takes off for how a protector is worn, dB (HSE L108).
const REAL_WORLD_DB: f64 = 4.0;
/// What comes off NRR when the level is A-weighted, dB (29 CFR 1910.95 App. B).
const NRR_TO_A_DB: f64 = 7.0;
/// Share of the rest that OSHA's manual counts on.
const OSHA_SHARE: f64 = 0.5;

/// SNR method.
pub static SNR: Record = Record {
    id: "snr",
    title: "Hearing protector by SNR",
    what: "The C-weighted level less the single number rating is the A-weighted level at the ear.",
    why: "A rating is a laboratory's; at the ear it is less. British practice takes another 4 dB off.",
    what_to_do: "Enter protector.snr and, where it was measured, machine.noise_c.",
    sources: &[&doc::EN_ISO_4869_2, &doc::HSE_REAL_WORLD],
    formula: "L'A = LC - SNR, dB(A); in Britain + 4 dB",
    example: Some(snr_example),
    ..Record::FORMULA
};
/// HML method.
pub static HML: Record = Record {
    id: "hml",
    title: "Hearing protector by H, M and L",
    what: "The reduction follows from the difference between C- and A-weighted level: M at 2 dB, \
           towards H in high noise, towards L in low noise.",
    why: "A disc's noise is high, and SNR alone does not see that.",
    what_to_do: "Enter protector.h, protector.m and protector.l.",
    sources: &[&doc::EN_ISO_4869_2, &doc::HSE_REAL_WORLD],
    formula: "d = LC - LA; PNR = M - (H - M)/4·(d - 2) for d ≤ 2, M - (M - L)/8·(d - 2) above; L'A = \
              LA - PNR",
    example: Some(hml_example),
    ..Record::FORMULA
};
/// NRR and its deratings.
pub static NRR: Record = Record {
    id: "nrr",
    title: "Hearing protector by NRR",
    what: "7 dB come off for an A-weighted level, and OSHA's manual counts on half of the rest. NIOSH \
           takes 25 % off muffs, 50 % off formable plugs and 70 % off other plugs before the 7 dB.",
    why: "Worn at work, protectors give far less than the box says.",
    what_to_do: "Enter protector.nrr and protector.kind.",
    sources: &[&doc::OSHA_PROTECTOR, &doc::NIOSH_PROTECTOR],
    formula: "OSHA: L'A = LA - (NRR - 7)/2; NIOSH: L'A = LA - (NRR·share - 7)",
    example: Some(nrr_example),
    ..Record::FORMULA
};

fn snr_example() -> Example {
    let at_ear = 97.0 - 28.0;
    Example {
        given: "97 dB(C), SNR 28".into(),
        result: format!(
            "{at_ear:.0} dB(A) at the ear, in Britain {:.0}",
            at_ear + REAL_WORLD_DB
        ),
    }
}

fn hml_example() -> Example {
    let left = 96.0 - hml([30.0, 24.0, 22.0], 99.0 - 96.0);
    Example {
        given: "96 dB(A), 99 dB(C), H 30, M 24, L 22".into(),
        result: format!(
            "{left:.2} dB(A) at the ear, in Britain {:.2}",
            left + REAL_WORLD_DB
        ),
    }
}

fn nrr_example() -> Example {
    let niosh = niosh_nrr(25.0, EarKind::Muffs);
    Example {
        given: "100 dBA, muffs of NRR 25".into(),
        result: format!(
            "OSHA {:.0} dBA at the ear, NIOSH {:.2}",
            100.0 - osha_nrr(25.0),
            100.0 - niosh
        ),
    }
}

/// Reduction by H, M and L, dB, with the C-weighted level `c_over_a` above the A-weighted one.
///
/// Source: EN ISO 4869-2.
#[must_use]
pub fn hml([h, m, l]: [f64; 3], c_over_a: f64) -> f64 {
    let d = c_over_a - HML_KNEE_DB;
    if d <= 0.0 {
        m - (h - m) / 4.0 * d
    } else {
        m - (m - l) / 8.0 * d
    }
}

/// What OSHA's manual counts on of a rating, dB off an A-weighted level; never less than nothing.
#[must_use]
pub fn osha_nrr(nrr: f64) -> f64 {
    ((nrr - NRR_TO_A_DB) * OSHA_SHARE).max(0.0)
}

/// What NIOSH counts on of a rating, dB off an A-weighted level; never less than nothing.
#[must_use]
pub fn niosh_nrr(nrr: f64, kind: EarKind) -> f64 {
    let share = match kind {
        EarKind::Muffs => 0.75,
        EarKind::FormablePlugs => 0.5,
        EarKind::OtherPlugs => 0.3,
    };
    (nrr * share - NRR_TO_A_DB).max(0.0)
}

/// What the hearing protector leaves.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct ProtectorReport {
    /// The protector at hand.
    pub at_hand: Protector,
    /// How the region reckons.
    pub rule: HearingRule,
    /// What it holds back, dB off an A-weighted level; nothing when none is known.
    pub holds_db: Option<f64>,
    /// Level at the ear while cutting, dB(A); nothing when none is known.
    pub at_ear_db: Option<f64>,
    /// The day under the protector in the region's measure, dB(A), worn all the time.
    pub day_at_ear_db: Option<f64>,
    /// What NIOSH counts on instead, dB, for an American rating.
    pub niosh_holds_db: Option<f64>,
    /// Whether the rating is one that the region reckons with.
    pub rating: Rating,
}

/// Whether a rating is of the kind that the region reckons with.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Rating {
    /// It is, or there is none.
    Own,
    /// It is another part of the world's.
    Foreign,
}

/// What a protector holds back, dB off an A-weighted level; nothing when none is known.
///
/// A rating of another part of the world is reckoned by that part's stricter way.
#[must_use]
pub fn holds(method: HearingMethod, protector: Protector, c_over_a: f64) -> Option<f64> {
    let tested = match protector {
        Protector::Unknown => return None,
        Protector::Snr(snr) => snr - c_over_a,
        Protector::Hml { h, m, l } => hml([h, m, l], c_over_a),
        Protector::Nrr { nrr, kind } if method == HearingMethod::Least => {
            return Some(osha_nrr(nrr).min(niosh_nrr(nrr, kind)));
        }
        Protector::Nrr { nrr, .. } => return Some(osha_nrr(nrr)),
    };
    let worn = match method {
        HearingMethod::AsTested => tested,
        HearingMethod::RealWorld | HearingMethod::HalfNrr | HearingMethod::Least => {
            tested - REAL_WORLD_DB
        }
    };
    Some(worn.max(0.0))
}

/// The protector on the day's levels in dB(A), each with its hours.
pub(super) fn report(job: &Job, day: &[(f64, f64)]) -> ProtectorReport {
    let record = job.region.record();
    let (rule, at_hand) = (record.hearing, job.protector);
    let level = job.machine.noise_db;
    let holds_db = holds(rule.method, at_hand, job.machine.noise_c_db - level);
    let under = holds_db.map(|db| -> Vec<(f64, f64)> {
        day.iter()
            .map(|(level, hours)| (level - db, *hours))
            .collect()
    });
    ProtectorReport {
        at_hand,
        rule,
        holds_db,
        at_ear_db: holds_db.map(|db| level - db),
        day_at_ear_db: under.and_then(|day| day_level(record.noise.measure, &day)),
        niosh_holds_db: match at_hand {
            Protector::Nrr { nrr, kind } => Some(niosh_nrr(nrr, kind)),
            _ => None,
        },
        rating: rating(rule.method, at_hand),
    }
}

fn rating(method: HearingMethod, protector: Protector) -> Rating {
    let american = matches!(protector, Protector::Nrr { .. });
    match (method, protector) {
        (_, Protector::Unknown) | (HearingMethod::Least, _) => Rating::Own,
        (HearingMethod::HalfNrr, _) if !american => Rating::Foreign,
        (HearingMethod::AsTested | HearingMethod::RealWorld, _) if american => Rating::Foreign,
        _ => Rating::Own,
    }
}
