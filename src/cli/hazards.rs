//! `kerfwright hazards`: every hazard, check and formula with one line each.

use std::fmt::Write;

use super::{Ending, files, own_failure};
use crate::hazard::registry;
use crate::tables::record::Record;

/// Prints the list on standard output.
#[must_use]
pub fn run() -> Ending {
    match files::print(&list()) {
        Ok(()) => Ending::Done,
        Err(fault) => own_failure(&fault),
    }
}

/// The list in words: the id that `explain` takes, and the title.
#[must_use]
pub fn list() -> String {
    let mut out = String::new();
    part(&mut out, "Hazards", registry::HAZARDS.iter().copied());
    part(&mut out, "Checks of the plan", registry::checks());
    part(&mut out, "Formulas", registry::formulas());
    out.push_str("\n`kerfwright explain ID` explains one.\n");
    out
}

fn part(out: &mut String, name: &str, records: impl Iterator<Item = &'static Record>) {
    if !out.is_empty() {
        out.push('\n');
    }
    let _ = writeln!(out, "{name}");
    for record in records {
        let _ = writeln!(out, "  {:<26} {}", record.id, record.title);
    }
}
