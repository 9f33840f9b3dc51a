//! Reading one table of the job file: each key is asked for once, and what nobody asked for is
//! unknown.

use toml::de::{DeTable, DeValue};

use super::given::Given;
use super::ledger::{Ledger, Span};
use super::quantity::{Limits, Quantity};
use super::words::{known_names, nearest, short};
use crate::units::LengthUnit;

/// A table being read.
///
/// The keys it is asked for are the keys it knows; there is no second list to keep in step.
#[derive(Debug)]
pub(super) struct Reader<'a> {
    path: String,
    table: Option<&'a DeTable<'a>>,
    span: Span,
    asked: Vec<&'static str>,
    pub(super) ledger: &'a Ledger,
}

impl<'a> Reader<'a> {
    /// A reader of a table, or of one that was left out.
    pub(super) fn new(
        path: String,
        table: Option<&'a DeTable<'a>>,
        span: Span,
        ledger: &'a Ledger,
    ) -> Self {
        Self {
            path,
            table,
            span,
            asked: Vec::new(),
            ledger,
        }
    }

    /// Reads the table, then notes the keys that were not asked for.
    pub(super) fn finish_with<T>(mut self, read: impl FnOnce(&mut Self) -> T) -> T {
        let answer = read(&mut self);
        self.note_unknown();
        answer
    }

    /// The full key of one of this table's keys.
    pub(super) fn key(&self, key: &str) -> String {
        if self.path.is_empty() {
            key.to_owned()
        } else {
            format!("{}.{key}", self.path)
        }
    }

    /// Where the table, or the header that opens it, stands.
    pub(super) fn span(&self) -> Span {
        self.span
    }

    /// A value, if it was given.
    pub(super) fn get(&mut self, key: &'static str) -> Option<Given<'a>> {
        self.ask(key);
        let value = self.table?.get(key)?;
        Some(Given::new(self.key(key), value, self.ledger))
    }

    /// A value that must be given.
    pub(super) fn need(&mut self, key: &'static str, what: &str) -> Option<Given<'a>> {
        let given = self.get(key);
        if given.is_none() {
            self.missing(key, what);
        }
        given
    }

    /// Notes that a key is missing, unless it may stand where the text could not be read.
    pub(super) fn missing(&self, key: &str, what: &str) {
        if self.ledger.is_spoilt() {
            return;
        }
        let message = format!("{} is missing: {what}", self.key(key));
        let hint = match self.path.as_str() {
            "" => format!("add [{key}]"),
            section if section.contains('[') => format!("add `{key} = …` there"),
            section => format!("add `{key} = …` to [{section}]"),
        };
        self.ledger.fault(self.key(key), self.span, message, hint);
    }

    /// A length in mm, or an assumed one.
    pub(super) fn length_or(
        &mut self,
        key: &'static str,
        limits: Limits,
        default_mm: f64,
        why: &str,
    ) -> f64 {
        let Some(given) = self.get(key) else {
            let mut value = format!("{} mm", short(default_mm));
            if self.ledger.length_unit() == LengthUnit::Inch {
                value = format!("{value} ({})", self.ledger.length(default_mm));
            }
            self.ledger.assume(self.key(key), value, why);
            return default_mm;
        };
        given.length(limits).unwrap_or(default_mm)
    }

    /// Another quantity, or an assumed one.
    pub(super) fn quantity_or(
        &mut self,
        key: &'static str,
        quantity: &Quantity,
        limits: Limits,
        default: f64,
        why: &str,
    ) -> f64 {
        let Some(given) = self.get(key) else {
            self.ledger
                .assume(self.key(key), quantity.show(default), why);
            return default;
        };
        given.quantity(quantity, limits).unwrap_or(default)
    }

    /// One of several words, or an assumed one.
    pub(super) fn choice_or<T: Copy + PartialEq>(
        &mut self,
        key: &'static str,
        words: &[(&str, T)],
        default: T,
        why: &str,
    ) -> T {
        let Some(given) = self.get(key) else {
            let word = words.iter().find(|w| w.1 == default).map_or("", |w| w.0);
            self.ledger.assume(self.key(key), word, why);
            return default;
        };
        given.choice(words).unwrap_or(default)
    }

    /// True or false, or an assumed one.
    pub(super) fn flag_or(&mut self, key: &'static str, default: bool, why: &str) -> bool {
        let Some(given) = self.get(key) else {
            self.ledger.assume(self.key(key), default.to_string(), why);
            return default;
        };
        given.flag().unwrap_or(default)
    }

    /// A line of text, empty when left out.
    pub(super) fn text(&mut self, key: &'static str) -> String {
        let text = self.get(key).and_then(|given| given.text());
        text.unwrap_or_default().to_owned()
    }

    /// A section; one that was left out reads as empty.
    pub(super) fn section<T>(
        &mut self,
        key: &'static str,
        read: impl FnOnce(&mut Reader<'a>) -> T,
    ) -> T {
        self.ask(key);
        let found = self.table.and_then(|t| t.get_key_value(key));
        let table = match found.map(|(_, value)| value.get_ref()) {
            Some(DeValue::Table(table)) => Some(table),
            _ => None,
        };
        let span = found.map_or(self.span, |(key, _)| {
            Some((key.span().start, key.span().end))
        });
        if let (Some((_, value)), None) = (found, table) {
            let given = Given::new(self.key(key), value, self.ledger);
            given.fault::<()>("is not a table", format!("write it as [{}]", self.key(key)));
        }
        Reader::new(self.key(key), table, span, self.ledger).finish_with(read)
    }

    /// Each table of a list of tables; none when it was left out.
    pub(super) fn each<T>(
        &mut self,
        key: &'static str,
        most: usize,
        mut read: impl FnMut(&mut Reader<'a>) -> Option<T>,
    ) -> Vec<T> {
        let Some(given) = self.get(key) else {
            return Vec::new();
        };
        if !given.is_list() {
            given.fault::<()>(
                "is not a list of tables",
                format!("write it as [[{}]]", self.key(key)),
            );
            return Vec::new();
        }
        let items = given.list(0, most).unwrap_or_default();
        items
            .iter()
            .filter_map(|item| item.table(&mut read).flatten())
            .collect()
    }

    fn ask(&mut self, key: &'static str) {
        if !self.asked.contains(&key) {
            self.asked.push(key);
        }
    }

    /// Notes the keys nobody asked for, each with the nearest known one.
    fn note_unknown(&self) {
        for (key, _) in self.table.into_iter().flatten() {
            let name: &str = key.get_ref();
            if self.asked.contains(&name) {
                continue;
            }
            let hint = match nearest(name, self.asked.iter().copied()) {
                Some(near) => format!("did you mean `{near}`?"),
                None => format!("known here: {}", known_names(&self.asked)),
            };
            let span = Some((key.span().start, key.span().end));
            let full = self.key(name);
            let message = format!("{full} is not a known key");
            self.ledger.fault(full, span, message, hint);
        }
    }
}
