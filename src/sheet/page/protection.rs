//! The parts of the safety page about controls: their order, what is carried away, ears, other work
//! of the day, and the region's rules for vacuum and supply.

use crate::hazard::Hazards;
use crate::hazard::dust::order::{State, Step};
use crate::hazard::respirator::{Suitable, Worn};
use crate::hazard::slurry::{BAG_KG, BUCKET_L, Caught};
use crate::job::Protector;
use crate::sheet::flow::Scale;
use crate::sheet::page::glance::sentence;
use crate::sheet::page::safety::{at_hand_words, required_words};
use crate::sheet::table::{Heading, Table, Width};
use crate::tables::dust_control::TableAnswer;
use crate::tables::region::Rule;

/// A name and its value.
type Row = (String, String);

fn row(name: &str, value: String) -> Row {
    (name.to_owned(), value)
}

/// The order of controls, the strongest first.
pub(super) fn order_table(h: &Hazards) -> Table {
    let rows = h.order.iter().enumerate().map(|(i, step)| {
        vec![
            (i + 1).to_string(),
            sentence(&step.what),
            step_words(step),
            step.state.word().to_owned(),
        ]
    });
    Table {
        headings: vec![
            Heading::numbers("", Width::Mm(7.0)),
            Heading::words("Strongest first", Width::Mm(38.0)),
            Heading::words("How", Width::Part(1.0)),
            Heading::words("State", Width::Mm(24.0)),
        ],
        rows: rows.collect(),
        style: Scale::DESK.small,
    }
}

/// How a step is taken, and what the regulator's table would then ask for.
fn step_words(step: &Step) -> String {
    let then = match step.table {
        None | Some(TableAnswer::NotInTable) => return sentence(&step.how),
        Some(TableAnswer::NoRespirator) => "no respirator".to_owned(),
        Some(TableAnswer::Apf(apf)) => format!("APF {apf}"),
    };
    // Taken already, and there is a better way to take it.
    let other = if step.state == State::Done {
        "With the other of the two"
    } else {
        "With it"
    };
    format!("{}. {other}, Table 1 asks for {then}", sentence(&step.how))
}

/// The respirators that reach what is asked for, in words; empty when no factor is asked for.
fn suitable_words(h: &Hazards) -> String {
    let one = |s: &Suitable| {
        let worn = match s.worn {
            Worn::FitTestedAndShaven => "",
            Worn::Loose => ", no fit test",
        };
        format!("{} ({}{worn})", s.name, s.apf)
    };
    let all: Vec<String> = h.respirator.suitable.iter().map(one).collect();
    all.join("; ")
}

/// Rows about which respirator, and what it is not.
pub(super) fn respirator_rows(h: &Hazards) -> Vec<Row> {
    let mut rows = vec![
        row("Asked for", required_words(h)),
        row("At hand", at_hand_words(h)),
    ];
    let suitable = suitable_words(h);
    if !suitable.is_empty() {
        let words = format!("{suitable}. Tight ones: fit test, clean-shaven");
        rows.push(row("Reach that factor", words));
    }
    rows.push(row(
        "Not to be confused",
        sentence(h.respirator.not_to_be_confused),
    ));
    rows
}

/// What is carried away afterwards.
#[must_use]
pub fn caught_words(h: &Hazards) -> String {
    match h.caught {
        Caught::Slurry {
            water_l,
            slurry_kg,
            buckets,
            ..
        } => format!(
            "about {slurry_kg:.0} kg of slurry, {water_l:.0} l of it water: {buckets:.0} buckets of \
             {BUCKET_L:.0} l"
        ),
        Caught::Bags { bags } => {
            format!(
                "{bags:.0} bags of the extractor, at most {BAG_KG:.0} kg each, if it caught all"
            )
        }
        Caught::Nothing => "nothing holds it".into(),
    }
}

/// The hearing protector and what it leaves, in words.
#[must_use]
pub fn ear_words(h: &Hazards) -> String {
    let protector = &h.noise.protector;
    let what = match protector.at_hand {
        Protector::Unknown => return "not known".into(),
        Protector::Snr(snr) => format!("SNR {snr}"),
        Protector::Hml { h, m, l } => format!("H {h} M {m} L {l}"),
        Protector::Nrr { nrr, .. } => format!("NRR {nrr}"),
    };
    let niosh = protector
        .niosh_holds_db
        .map_or_else(String::new, |db| format!("; NIOSH counts on {db:.1} dB"));
    let (Some(holds), Some(ear)) = (protector.holds_db, protector.at_ear_db) else {
        return what;
    };
    format!("{what}: {holds:.1} dB held back, {ear:.0} dB(A) at the ear{niosh}")
}

/// Rows about ears and other work of the day.
pub(super) fn day_rows(h: &Hazards) -> Vec<Row> {
    let mut rows = vec![row("Hearing protector", ear_words(h))];
    let spells = h.vibration.spells.iter().zip(&h.noise.spells);
    for (vibration, noise) in spells {
        rows.push(row(
            "Other work that day",
            format!(
                "{}: {:.0} min, {:.1} m/s², {:.0} points, {:.0} dB(A)",
                vibration.what,
                vibration.minutes,
                vibration.reckoned_m_s2,
                vibration.points,
                noise.level_db
            ),
        ));
    }
    rows.push(row(
        "Split over people or days",
        format!(
            "{:.0} to stay below the action value, {:.0} for the limit",
            h.vibration.shares_to_action, h.vibration.shares_to_limit
        ),
    ));
    rows
}

/// Rows about the region's vacuum cleaner and supply.
pub(super) fn rule_rows(h: &Hazards) -> Vec<Row> {
    let words = |rule: &Rule| format!("{}{}", sentence(rule.words), rule.standing.words());
    vec![
        row("Carried away", caught_words(h)),
        row("Vacuum and extractor", words(&h.vacuum)),
        row("Supply of a mains machine", words(&h.supply)),
        row("Ask about the rules", h.authority.to_owned()),
    ]
}
