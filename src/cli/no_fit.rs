//! Why there is no place for the top, in words.

use std::fmt::Write;

use crate::job::Job;
use crate::place::NoFit;
use crate::words::{Language, Unit, Value, Writer};

/// What is shown, what stands against the nearest miss, and what would fit.
pub(super) fn no_fit_words(name: &str, job: &Job, no_fit: &NoFit) -> String {
    let writer = Writer::new(job.units.into(), Language::English);
    let mut words = format!("{name}: {}\n", writer.say(&no_fit.verdict()));
    if !no_fit.objections.is_empty() {
        let turn = Value::of(no_fit.turn_deg.rem_euclid(360.0), Unit::Degree);
        let _ = writeln!(words, "The nearest miss, turned {}:", writer.write(&turn));
    }
    for reason in &no_fit.reasons {
        let _ = writeln!(words, "  - {}", writer.say(reason));
    }
    let advice = no_fit.advice();
    if !advice.is_empty() {
        words.push_str("What would fit, by the box round the finished top:\n");
        for size in advice {
            let _ = writeln!(words, "  - {}", writer.say(&size));
        }
    }
    words
}
