//! The part of the safety page about hands and ears: vibration and noise of the job and of the day.

use super::protection::{Row, borrowed, row};
use crate::hazard::Hazards;
use crate::job::Protector;
use crate::sheet::figure::time;
use crate::words::Catalogue;

/// Rows about vibration and noise.
pub(super) fn rows(h: &Hazards, words: &Catalogue) -> Vec<Row> {
    let mut rows = vibration_rows(h, words);
    rows.extend(noise_rows(h, words));
    rows.push(row(words, "protector", ear_words(h, words)));
    rows.extend(spell_rows(h, words));
    let split = [
        ("action", format!("{:.0}", h.vibration.shares_to_action)),
        ("limit", format!("{:.0}", h.vibration.shares_to_limit)),
    ];
    rows.push(row(words, "split", words.say("safety.body.split", &split)));
    rows
}

fn vibration_rows(h: &Hazards, words: &Catalogue) -> Vec<Row> {
    let v = &h.vibration;
    let never = || words.say("safety.body.never", &[]);
    let minutes = |m: Option<f64>| m.map_or_else(never, |m| floor_time(m, words));
    let say = |id: &str, values: &[(&'static str, String)]| {
        row(words, id, words.say(&format!("safety.body.{id}"), values))
    };
    vec![
        say("vibration", &[("a", format!("{:.1}", v.reckoned_m_s2))]),
        say(
            "trigger",
            &[
                ("job", time(v.trigger_min)),
                ("other", format!("{:.1}", v.other_hours)),
            ],
        ),
        say(
            "a8",
            &[
                ("a8", format!("{:.1}", v.a8_day_m_s2)),
                ("points", format!("{:.0}", v.points_day)),
            ],
        ),
        say(
            "to_values",
            &[
                ("action", minutes(v.minutes_to_action)),
                ("limit", minutes(v.minutes_to_limit)),
            ],
        ),
    ]
}

fn noise_rows(h: &Hazards, words: &Catalogue) -> Vec<Row> {
    let n = &h.noise;
    let say = |id: &str, values: &[(&'static str, String)]| {
        row(words, id, words.say(&format!("safety.body.{id}"), values))
    };
    let mut rows = vec![say("noise", &[("level", format!("{:.0}", n.level_db))])];
    if let Some(lex) = n.lex_8h_db {
        rows.push(say("noise_day", &[("level", format!("{lex:.1}"))]));
    }
    if let (Some(dose), Some(twa)) = (n.osha_dose_percent, n.osha_twa_db) {
        let values = [("dose", format!("{dose:.0}")), ("twa", format!("{twa:.1}"))];
        rows.push(say("osha", &values));
    }
    let unprotected = [("time", floor_time(n.niosh_minutes, words))];
    rows.push(say("unprotected", &unprotected));
    rows
}

fn spell_rows(h: &Hazards, words: &Catalogue) -> Vec<Row> {
    let spells = h.vibration.spells.iter().zip(&h.noise.spells);
    let rows = spells.map(|(vibration, noise)| {
        let values = [
            ("what", vibration.what.clone()),
            ("minutes", format!("{:.0}", vibration.minutes)),
            ("a", format!("{:.1}", vibration.reckoned_m_s2)),
            ("points", format!("{:.0}", vibration.points)),
            ("level", format!("{:.0}", noise.level_db)),
        ];
        row(
            words,
            "other_work",
            words.say("safety.body.other_work", &values),
        )
    });
    rows.collect()
}

/// The hearing protector and what it leaves, in words.
#[must_use]
pub fn ear_words(h: &Hazards, words: &Catalogue) -> String {
    let protector = &h.noise.protector;
    let rating = match protector.at_hand {
        Protector::Unknown => return words.say("safety.body.protector_unknown", &[]),
        Protector::Snr(snr) => format!("SNR {snr}"),
        Protector::Hml { h, m, l } => format!("H {h} M {m} L {l}"),
        Protector::Nrr { nrr, .. } => format!("NRR {nrr}"),
    };
    let niosh = protector.niosh_holds_db.map_or_else(String::new, |db| {
        words.say("safety.body.niosh", &[("db", format!("{db:.1}"))])
    });
    let (Some(holds), Some(ear)) = (protector.holds_db, protector.at_ear_db) else {
        return rating;
    };
    let values = [
        ("rating", rating),
        ("holds", format!("{holds:.1}")),
        ("ear", format!("{ear:.0}")),
        ("niosh", niosh),
    ];
    words.say("safety.body.protector", &values)
}

/// A permitted span: never rounded up.
fn floor_time(minutes: f64, words: &Catalogue) -> String {
    if minutes < 10.0 {
        words.value(&format!("{:.1} min", (minutes * 10.0).floor() / 10.0))
    } else if minutes > 1440.0 {
        words.say("safety.body.more_than_a_day", &[])
    } else {
        time(minutes.floor())
    }
}

/// The region's values for vibration and noise, with their sources.
pub(super) fn values_words(h: &Hazards, words: &Catalogue) -> String {
    let (v, n) = (&h.vibration.values, &h.noise.values);
    let values = [
        ("action", format!("{:.1}", v.action_m_s2)),
        ("limit", format!("{:.1}", v.limit_m_s2)),
        ("vibration_source", words.source(&v.source.cite())),
        ("vibration_borrowed", borrowed(words, v.standing)),
        ("offered", format!("{:.0}", n.action_db)),
        ("duty", format!("{:.0}", n.duty_db)),
        ("most", format!("{:.0}", n.limit_db)),
        ("noise_source", words.source(&n.source.cite())),
        ("noise_borrowed", borrowed(words, n.standing)),
    ];
    words.say("safety.body.values", &values)
}
