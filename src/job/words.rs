//! Numbers, lists and likeness of words, for messages.

use crate::units::LengthUnit;

/// A number with at most three decimals and no trailing zeros.
pub(super) fn short(value: f64) -> String {
    let text = format!("{value:.3}");
    let text = text.trim_end_matches('0').trim_end_matches('.');
    if text == "-0" { "0" } else { text }.to_owned()
}

/// A length in a unit, such as `640 mm` or `25.25 in`.
pub(super) fn length(unit: LengthUnit, mm: f64) -> String {
    let name = match unit {
        LengthUnit::Millimetre => "mm",
        LengthUnit::Inch => "in",
    };
    format!("{} {name}", short(mm / unit.in_mm()))
}

/// A list in words: `a, b and c`.
pub(super) fn listed<T: AsRef<str>>(items: &[T]) -> String {
    match items {
        [] => String::new(),
        [one] => one.as_ref().to_owned(),
        [first @ .., last] => {
            let first: Vec<&str> = first.iter().map(AsRef::as_ref).collect();
            format!("{} and {}", first.join(", "), last.as_ref())
        }
    }
}

/// The known word most like a text, if any is like it at all.
pub(super) fn nearest<'w>(text: &str, known: impl Iterator<Item = &'w str>) -> Option<&'w str> {
    // No known word is nearly so long, and likeness costs the product of the lengths.
    const LONGEST: usize = 40;
    if text.len() > LONGEST {
        return None;
    }
    // A word is like another when at most a third of its letters, and one at least, differ.
    let allowed = (text.chars().count() / 3).max(1);
    known
        .map(|word| (strsim::damerau_levenshtein(text, word), word))
        .filter(|(distance, _)| *distance <= allowed)
        .min()
        .map(|(_, word)| word)
}

/// Joins names for a hint.
pub(super) fn known_names(names: &[&str]) -> String {
    if names.is_empty() {
        return "there are none".to_owned();
    }
    listed(names)
}

/// A word as it is compared: small letters, and a space for what joins words.
pub(super) fn plain(word: &str) -> String {
    word.trim().to_lowercase().replace(['-', '_'], " ")
}
