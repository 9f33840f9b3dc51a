//! The formulas of noise, explained.

use super::{lex_8h, niosh_minutes, osha_dose, osha_twa};
use crate::tables::documents as doc;
use crate::tables::record::{Example, Record};

/// Level over 8 hours.
pub static LEX: Record = Record {
    id: "lex-8h",
    title: "Noise over 8 hours, equal energy",
    what: "The level that, over 8 hours, would carry the same energy as the day's noises. 3 dB more \
           halve the time.",
    why: "Action values 80 and 85 dB(A), limit 87 dB(A) under the protector, where the European \
          directive holds.",
    what_to_do: "Add every loud spell of the day; quiet hours hardly count.",
    sources: &[&doc::EU_NOISE],
    formula: "L_EX,8h = 10·lg(Σ T·10^(L/10) / 8 h), dB(A)",
    example: Some(disc),
    ..Record::FORMULA
};
/// Dose and average of OSHA.
pub static OSHA: Record = Record {
    id: "osha-dose",
    title: "OSHA's noise dose and time-weighted average",
    what: "Each level has its allowed hours, 8 at 90 dBA, halved for 5 dB more; the shares used up are \
           summed.",
    why: "100 % is the limit, 50 % (85 dBA) the action level.",
    what_to_do: "Never mix it with the equal-energy level: the two halve at different steps.",
    sources: &[&doc::OSHA_NOISE],
    formula: "T = 8 / 2^((L - 90)/5) h; D = 100·Σ C/T %; TWA = 16.61·lg(D/100) + 90 dBA",
    example: Some(appendix),
    ..Record::FORMULA
};
/// Time that NIOSH recommends.
pub static NIOSH: Record = Record {
    id: "niosh-minutes",
    title: "Minutes that NIOSH recommends at most",
    what: "How long a level may be borne without protection: 8 hours at 85 dBA, halved for 3 dB more.",
    why: "It is stricter than OSHA's limit and nearer to what ears bear.",
    what_to_do: "Wear protection from the first start of the machine; the minutes say how soon it is \
                 too late.",
    sources: &[&doc::NIOSH_NOISE],
    formula: "T = 480 / 2^((L - 85)/3) min",
    example: Some(hundred),
    ..Record::FORMULA
};

fn disc() -> Example {
    Example {
        given: "105 dB(A) for 1 h".into(),
        result: format!("L_EX,8h = {:.1} dB(A)", lex_8h(&[(105.0, 1.0)])),
    }
}

fn appendix() -> Example {
    let dose = osha_dose(&[(90.0, 4.0), (95.0, 2.0), (85.0, 2.0)]);
    Example {
        given: "90 dBA for 4 h, 95 for 2 h, 85 for 2 h".into(),
        result: format!("dose {dose:.1} %, TWA {:.2} dBA", osha_twa(dose)),
    }
}

fn hundred() -> Example {
    Example {
        given: "100 dBA".into(),
        result: format!("{:.0} minutes", niosh_minutes(100.0)),
    }
}
