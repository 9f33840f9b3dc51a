//! Characters of a job that the sheet's typeface cannot print.

use crate::diag::Diagnostic;
use crate::layout::item::Sheet;

/// A fault for each such character, at its place in the job file.
pub(super) fn lacking(text: &str, sheet: &Sheet) -> Vec<Diagnostic> {
    let mut told: Vec<char> = Vec::new();
    let mut faults = Vec::new();
    for lacking in sheet.missing_characters() {
        let c = lacking.character;
        if told.contains(&c) {
            continue;
        }
        told.push(c);
        let at = text.find(c);
        let key = at.map_or_else(String::new, |at| key_at(text, at));
        let message = format!(
            "{key}{} the sheet's typeface has no '{}' (U+{:04X}), in \"{}\"",
            if key.is_empty() { "" } else { ":" },
            c.escape_debug(),
            u32::from(c),
            lacking.text.escape_debug()
        );
        let span = at.map(|at| (at, at + c.len_utf8()));
        let hint = "write it another way";
        faults.push(Diagnostic::fault(key, span, message.trim_start(), hint));
    }
    faults
}

/// The key that the line at a place gives a value to, by the last header above it.
fn key_at(text: &str, at: usize) -> String {
    let mut section = "";
    let mut key = "";
    let mut start = 0;
    for line in text.split_inclusive('\n') {
        let said = line.trim();
        if said.starts_with('[') && !said.contains('=') {
            section = said.split('#').next().unwrap_or("").trim();
            section = section.trim_matches(['[', ']', ' ']);
        } else if let Some((name, _)) = said.split_once('=') {
            key = name.trim();
        }
        start += line.len();
        if start > at {
            break;
        }
    }
    if section.is_empty() {
        key.to_owned()
    } else {
        format!("{section}.{key}")
    }
}
