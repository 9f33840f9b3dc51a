//! Numbers and dates as a language writes them.
//!
//! Decimal signs, grouping and the order of dates are those of the Unicode CLDR 44 (2023), "short"
//! date with four digits for the year; grouping from five digits on, by a no-break space (ISO
//! 80000-1:2022, 7.3.2 asks for a small space and never a sign). English pages are written as the
//! rest of the sheet: decimal point, no grouping, dates as in the job file (ISO 8601).

use super::Language;

/// Between groups of three digits.
const SPACE: char = '\u{a0}';
/// Numbers with fewer digits before the decimal sign are not grouped (CLDR, least grouping of 2).
const GROUPED_FROM: usize = 5;

/// How a language writes numbers and dates.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Notation {
    language: Language,
}

impl Notation {
    /// The notation of a language.
    #[must_use]
    pub const fn of(language: Language) -> Self {
        Self { language }
    }

    /// A text that was written the English way: every number in it with the language's own decimal
    /// sign and groups. A text that is no number, range of numbers or number with a unit comes back
    /// as it is, for a name or a title may hold a full stop that is no decimal sign.
    ///
    /// ```
    /// use kerfwright::words::{Language, Notation};
    /// let polish = Notation::of(Language::Polish);
    /// assert_eq!(polish.number("1.7 kg"), "1,7 kg");
    /// assert_eq!(polish.number("12200"), "12\u{a0}200");
    /// assert_eq!(polish.number("0.5–1.2 m/s²"), "0,5–1,2 m/s²");
    /// assert_eq!(polish.number("29 CFR 1926.1153"), "29 CFR 1926.1153");
    /// ```
    #[must_use]
    pub fn number(self, english: &str) -> String {
        if self.language == Language::English || !is_quantity(english) {
            return english.to_owned();
        }
        let mut out = String::new();
        let mut rest = english;
        while let Some(start) = rest.find(|c: char| c.is_ascii_digit()) {
            let (before, from) = rest.split_at(start);
            let end = from
                .find(|c: char| !c.is_ascii_digit() && c != '.')
                .unwrap_or(from.len());
            out.push_str(before);
            out.push_str(&one(&from[..end]));
            rest = &from[end..];
        }
        out.push_str(rest);
        out
    }

    /// A figure in plain English notation, a fraction or several figures among them, with the
    /// language's own decimal sign and groups.
    #[must_use]
    pub fn figure(self, plain: &str) -> String {
        if self.language == Language::English {
            return plain.to_owned();
        }
        let parts = plain.split(' ').map(|part| match part.chars().next() {
            Some(c) if c.is_ascii_digit() && !part.contains('/') => one(part),
            Some(c @ ('-' | '−')) => format!("{c}{}", one(part.trim_start_matches(c))),
            _ => part.to_owned(),
        });
        parts.collect::<Vec<_>>().join(" ")
    }

    /// A date of the form `YYYY-MM-DD` in the language's own order; anything else as it is.
    ///
    /// ```
    /// use kerfwright::words::{Language, Notation};
    /// assert_eq!(Notation::of(Language::German).date("2026-11-30"), "30.11.2026");
    /// assert_eq!(Notation::of(Language::French).date("2026-11-30"), "30/11/2026");
    /// assert_eq!(Notation::of(Language::Dutch).date("2026-11-30"), "30-11-2026");
    /// assert_eq!(Notation::of(Language::English).date("2026-11-30"), "2026-11-30");
    /// ```
    #[must_use]
    pub fn date(self, iso: &str) -> String {
        let parts: Vec<&str> = iso.split('-').collect();
        let [year, month, day] = parts[..] else {
            return iso.to_owned();
        };
        let digits = |t: &str, n: usize| t.len() == n && t.bytes().all(|b| b.is_ascii_digit());
        if !(digits(year, 4) && digits(month, 2) && digits(day, 2)) {
            return iso.to_owned();
        }
        match self.language {
            Language::English => iso.to_owned(),
            Language::German | Language::Polish | Language::Norwegian | Language::Romanian => {
                format!("{day}.{month}.{year}")
            }
            Language::French | Language::Spanish | Language::Portuguese | Language::Italian => {
                format!("{day}/{month}/{year}")
            }
            Language::Dutch => format!("{day}-{month}-{year}"),
        }
    }
}

/// Whether a text is a number, a range or a list of numbers, with or without units.
pub(super) fn is_quantity(text: &str) -> bool {
    const UNITS: [&str; 21] = [
        "mm", "cm", "m", "m²", "cm²", "in", "ft", "kg", "kg/m²", "g", "lb", "l", "l/min", "h",
        "min", "s", "m/s", "m/s²", "mg/m³", "kN", "MPa",
    ];
    let mut numbers = 0;
    for word in text.split([' ', '(', ')', ',', '–', SPACE]) {
        let number = word.trim_end_matches('%').trim_start_matches(['−', '-']);
        let plain = number
            .chars()
            .all(|c| c.is_ascii_digit() || c == '.' || c == '/');
        if plain && number.starts_with(|c: char| c.is_ascii_digit()) {
            numbers += 1;
        } else if !(word.is_empty() || word == "%" || UNITS.contains(&word)) {
            return false;
        }
    }
    numbers > 0
}

/// One number, its decimal sign and its groups.
fn one(english: &str) -> String {
    let (whole, decimals) = english.split_once('.').unwrap_or((english, ""));
    let mut out = String::new();
    for (i, digit) in whole.chars().enumerate() {
        let left = whole.len() - i;
        if whole.len() >= GROUPED_FROM && i > 0 && left.is_multiple_of(3) {
            out.push(SPACE);
        }
        out.push(digit);
    }
    if !decimals.is_empty() {
        out.push(',');
        out.push_str(decimals);
    }
    out
}
