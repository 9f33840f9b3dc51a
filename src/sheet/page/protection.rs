//! The parts of the safety page about controls: their order, what is carried away, the mask, and the
//! region's rules for vacuum and supply.

use crate::hazard::Hazards;
use crate::hazard::dust::order::{State, Step};
use crate::hazard::respirator::{Required, Suitable, Worn};
use crate::hazard::slurry::{BAG_KG, BUCKET_L, Caught};
use crate::sheet::flow::Scale;
use crate::sheet::page::glance::sentence;
use crate::sheet::table::{Heading, Table, Width};
use crate::tables::dust_control::TableAnswer;
use crate::tables::region::{Rule, Standing};
use crate::tables::respirator::Assigned;
use crate::words::Catalogue;

/// A name and its value.
pub(super) type Row = (String, String);

/// A row under its id.
pub(super) fn row(words: &Catalogue, id: &str, value: String) -> Row {
    (words.say(&format!("safety.row.{id}"), &[]), value)
}

/// What is said behind a value that is not the region's own.
pub(super) fn borrowed(words: &Catalogue, standing: Standing) -> String {
    match standing {
        Standing::Own => String::new(),
        Standing::Borrowed => words.say("safety.borrowed", &[]),
    }
}

/// The order of controls, the strongest first.
pub(super) fn order_table(h: &Hazards, words: &Catalogue) -> Table {
    let rows = h.order.iter().enumerate().map(|(i, step)| {
        let [what, how] = words.said(&step.said);
        let state = match step.state {
            State::Done => "done",
            State::Open => "open",
            State::OnTheDay => "on_the_day",
        };
        vec![
            (i + 1).to_string(),
            sentence(&what),
            step_words(step, &sentence(&how), words),
            words.say(&format!("safety.order.{state}"), &[]),
        ]
    });
    let heading = |id: &str| words.say(&format!("safety.order.{id}"), &[]);
    Table {
        headings: vec![
            Heading::numbers("", Width::Mm(7.0)),
            Heading::words(heading("strongest"), Width::Mm(38.0)),
            Heading::words(heading("how"), Width::Part(1.0)),
            Heading::words(heading("state"), Width::Mm(24.0)),
        ],
        rows: rows.collect(),
        style: Scale::DESK.small,
    }
}

/// How a step is taken, and what the regulator's table would then ask for.
fn step_words(step: &Step, how: &str, words: &Catalogue) -> String {
    let then = match step.table {
        None | Some(TableAnswer::NotInTable) => return how.to_owned(),
        Some(TableAnswer::NoRespirator) => words.say("safety.order.no_respirator", &[]),
        Some(TableAnswer::Apf(apf)) => {
            words.say("safety.order.factor", &[("apf", apf.to_string())])
        }
    };
    // Taken already, and there is a better way to take it.
    let id = if step.state == State::Done {
        "safety.order.with_other"
    } else {
        "safety.order.with_it"
    };
    words.say(id, &[("how", how.to_owned()), ("then", then)])
}

/// The respirators that reach what is asked for, in words; empty when no factor is asked for.
fn suitable_words(h: &Hazards, words: &Catalogue) -> String {
    let one = |s: &Suitable| {
        let id = match s.worn {
            Worn::FitTestedAndShaven => "safety.mask.fitted",
            Worn::Loose => "safety.mask.loose",
        };
        words.say(
            id,
            &[("mask", s.name.to_owned()), ("apf", s.apf.to_string())],
        )
    };
    let all: Vec<String> = h.respirator.suitable.iter().map(one).collect();
    all.join("; ")
}

/// Rows about which respirator, and what it is not.
pub(super) fn respirator_rows(h: &Hazards, words: &Catalogue) -> Vec<Row> {
    let mut rows = vec![
        row(words, "required", required_words(h, words)),
        row(words, "at_hand", at_hand_words(h, words)),
    ];
    let masks = suitable_words(h, words);
    if !masks.is_empty() {
        let all = words.say("safety.mask.suitable", &[("masks", masks)]);
        rows.push(row(words, "suitable", all));
    }
    let not_confused = words.term(h.respirator.not_to_be_confused);
    rows.push(row(words, "not_confused", sentence(&not_confused)));
    rows
}

/// The respirator that is asked for, in words.
#[must_use]
pub fn required_words(h: &Hazards, words: &Catalogue) -> String {
    match h.respirator.required {
        Required::NoneAsked => words.say("safety.mask.none_asked", &[]),
        Required::AtLeast(apf) => {
            let values = [
                ("apf", apf.to_string()),
                ("borrowed", borrowed(words, h.respirator.required_standing)),
            ];
            words.say("safety.mask.at_least", &values)
        }
        Required::MustBeAssessed => words.say("safety.mask.assess", &[]),
    }
}

/// The respirator at hand and what it is worth, in words.
#[must_use]
pub fn at_hand_words(h: &Hazards, words: &Catalogue) -> String {
    let mask = ("mask", h.respirator.at_hand.to_owned());
    match h.respirator.assigned {
        None => words.term(h.respirator.at_hand),
        Some(Assigned::NotInScheme) => words.say("safety.mask.not_in_scheme", &[mask]),
        Some(Assigned::One { apf, .. }) => {
            words.say("safety.mask.one", &[mask, ("apf", apf.to_string())])
        }
        Some(Assigned::ByMark { least, most, .. }) => {
            let factors = [("least", least.to_string()), ("most", most.to_string())];
            let [least, most] = factors;
            words.say("safety.mask.by_mark", &[mask, least, most])
        }
    }
}

/// What is carried away afterwards.
#[must_use]
pub fn caught_words(h: &Hazards, words: &Catalogue) -> String {
    match h.caught {
        Caught::Slurry {
            water_l,
            slurry_kg,
            buckets,
            ..
        } => words.say(
            "safety.caught.slurry",
            &[
                ("kilos", format!("{slurry_kg:.0}")),
                ("water", format!("{water_l:.0}")),
                ("buckets", format!("{buckets:.0}")),
                ("bucket", format!("{BUCKET_L:.0}")),
            ],
        ),
        Caught::Bags { bags } => words.say(
            "safety.caught.bags",
            &[
                ("bags", format!("{bags:.0}")),
                ("bag", format!("{BAG_KG:.0}")),
            ],
        ),
        Caught::Nothing => words.say("safety.caught.nothing", &[]),
    }
}

/// Rows about the region's vacuum cleaner and supply.
pub(super) fn rule_rows(h: &Hazards, words: &Catalogue) -> Vec<Row> {
    let rule = |rule: &Rule| {
        let text = sentence(&words.term(rule.words));
        format!("{text}{}", borrowed(words, rule.standing))
    };
    vec![
        row(words, "carried", caught_words(h, words)),
        row(words, "vacuum", rule(&h.vacuum)),
        row(words, "supply", rule(&h.supply)),
        row(words, "authority", words.term(h.authority)),
    ]
}
