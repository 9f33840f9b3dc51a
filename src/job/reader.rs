//! Reading one table of the job file. The list of keys says what may stand in it; what is not in the
//! list is unknown.

use toml::de::{DeTable, DeValue};

use super::given::Given;
use super::keys::{Key, Kind, LeftOut, Section, Word, elsewhere};
use super::ledger::{Ledger, TextRange};
use super::words::{known_names, nearest, short};
use crate::units::{LengthUnit, Mass};

/// The keys of a section that is not in the list.
const NO_KEYS: Section = Section {
    path: "",
    keys: &[],
};

/// A table being read.
#[derive(Debug)]
pub(super) struct Reader<'a> {
    path: String,
    section: &'static Section,
    table: Option<&'a DeTable<'a>>,
    span: TextRange,
    pub(super) ledger: &'a Ledger,
}

impl<'a> Reader<'a> {
    /// A reader of a table, or of one that was left out.
    pub(super) fn new(
        path: String,
        section: &'static Section,
        table: Option<&'a DeTable<'a>>,
        span: TextRange,
        ledger: &'a Ledger,
    ) -> Self {
        Self {
            path,
            section,
            table,
            span,
            ledger,
        }
    }

    /// Reads the table, then notes the keys that are not in the list.
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
    pub(super) fn span(&self) -> TextRange {
        self.span
    }

    /// What the list says of a key; a key outside it is not read.
    fn known(&self, key: &str) -> Option<&'static Key> {
        let known = self.section.key(key);
        if known.is_none() {
            let message = format!("{} is not in the list of keys", self.key(key));
            let hint = "this is a fault of the program, not of the job file";
            self.ledger.fault(self.key(key), self.span, message, hint);
        }
        known
    }

    /// A value, if it was given.
    pub(super) fn get(&self, key: &'static str) -> Option<Given<'a>> {
        let known = self.known(key)?;
        let value = self.table?.get(key)?;
        Some(Given::new(self.key(key), &known.kind, value, self.ledger))
    }

    /// A value that must be given.
    pub(super) fn need(&self, key: &'static str) -> Option<Given<'a>> {
        let given = self.get(key);
        if given.is_none() {
            self.missing(key);
        }
        given
    }

    /// Notes that a key is missing, unless it may stand where the text could not be read.
    pub(super) fn missing(&self, key: &'static str) {
        let Some(known) = self.known(key) else { return };
        let message = format!("{} is missing: {}", self.key(key), known.meaning);
        self.note_missing(known, message);
    }

    /// Notes that none of several keys is there, of which this is the usual one.
    pub(super) fn none_of(&self, key: &'static str) {
        let Some(known) = self.known(key) else { return };
        let mut message = format!("{} is missing: {}", self.key(key), known.meaning);
        if let LeftOut::OneOf(names) = known.left_out {
            message = format!("{message}. One of these is needed: {names}");
        }
        self.note_missing(known, message);
    }

    fn note_missing(&self, known: &Key, message: String) {
        if self.ledger.is_spoilt() {
            return;
        }
        let key = known.name;
        let hint = match self.path.as_str() {
            "" => format!("add [{key}]"),
            section if section.contains('[') => format!("add it there, such as `{}`", known.line()),
            section => format!("add it to [{section}], such as `{}`", known.line()),
        };
        self.ledger.fault(self.key(key), self.span, message, hint);
    }

    /// Notes a value that is taken for a key that was left out, for the reason in the list.
    pub(super) fn assume(&self, key: &'static str, value: impl Into<String>) {
        self.assume_because(key, value, self.why(key));
    }

    /// The same for a reason of its own.
    pub(super) fn assume_because(&self, key: &str, value: impl Into<String>, why: &str) {
        self.ledger.assume(self.key(key), value, why);
    }

    /// A length in mm, or the assumed one.
    pub(super) fn length(&self, key: &'static str) -> f64 {
        let usual = self.known(key).map_or(0.0, Key::assumed_number);
        self.length_else(key, usual)
    }

    /// A length in mm, or one that was worked out.
    pub(super) fn length_else(&self, key: &'static str, worked_out_mm: f64) -> f64 {
        let Some(given) = self.get(key) else {
            self.assume_length(key, worked_out_mm, self.why(key));
            return worked_out_mm;
        };
        given.length().unwrap_or(worked_out_mm)
    }

    /// Notes a length in mm that is taken for a key that was left out.
    pub(super) fn assume_length(&self, key: &str, mm: f64, why: &str) {
        let value = match self.ledger.length_unit() {
            LengthUnit::Millimetre => format!("{} mm", short(mm)),
            LengthUnit::Inch => self.ledger.length(mm),
        };
        self.assume_because(key, value, why);
    }

    /// A mass, or the assumed one.
    pub(super) fn mass(&self, key: &'static str) -> Mass {
        let usual = Mass::from_kg(self.known(key).map_or(0.0, Key::assumed_number));
        let Some(given) = self.get(key) else {
            self.assume(key, format!("{} kg", short(usual.kg())));
            return usual;
        };
        given.mass().unwrap_or(usual)
    }

    /// Why something is assumed when a key is left out.
    pub(super) fn why(&self, key: &str) -> &'static str {
        self.known(key).map_or("", Key::why)
    }

    /// Another quantity, or the assumed one.
    pub(super) fn quantity(&self, key: &'static str) -> f64 {
        let usual = self.known(key).map_or(0.0, Key::assumed_number);
        self.quantity_else(key, usual)
    }

    /// Another quantity, or one that was worked out.
    pub(super) fn quantity_else(&self, key: &'static str, worked_out: f64) -> f64 {
        if let Some(given) = self.get(key) {
            return given.quantity().unwrap_or(worked_out);
        }
        let quantity = self.known(key).and_then(|k| k.kind.quantity());
        let value = quantity.map_or_else(|| short(worked_out), |(q, _)| q.show(worked_out));
        self.assume(key, value);
        worked_out
    }

    /// A number that is read but not assumed when it is left out; the list's number stands for it.
    pub(super) fn usual_unless(&self, key: &'static str) -> f64 {
        let usual = self.known(key).map_or(0.0, Key::assumed_number);
        let Some(given) = self.get(key) else {
            return usual;
        };
        let read = match self.known(key).map(|k| &k.kind) {
            Some(Kind::Length(_)) => given.length(),
            _ => given.quantity(),
        };
        read.unwrap_or(usual)
    }

    /// One of several words, or the assumed one.
    pub(super) fn word<T: Word>(&self, key: &'static str, otherwise: T) -> T {
        let Some(given) = self.get(key) else {
            let usual = self.known(key).map_or("", Key::assumed_word);
            self.assume(key, usual);
            let all = T::all();
            let found = all.into_iter().find(|(word, _)| *word == usual);
            return found.map_or(otherwise, |(_, one)| one);
        };
        given.word().unwrap_or(otherwise)
    }

    /// True or false, or the assumed one.
    pub(super) fn flag(&self, key: &'static str) -> bool {
        let usual = self.known(key).is_some_and(Key::assumed_flag);
        let Some(given) = self.get(key) else {
            self.assume(key, usual.to_string());
            return usual;
        };
        given.flag().unwrap_or(usual)
    }

    /// A line of text, empty when left out.
    pub(super) fn text(&self, key: &'static str) -> String {
        let text = self.get(key).and_then(|given| given.text());
        text.unwrap_or_default().to_owned()
    }

    /// A section; one that was left out reads as empty.
    pub(super) fn section<T>(
        &self,
        key: &'static str,
        read: impl FnOnce(&mut Reader<'a>) -> T,
    ) -> T {
        let declared = self.known(key).and_then(|k| k.kind.section());
        let section = declared.map_or(&NO_KEYS, |(section, _)| section);
        let found = self.table.and_then(|t| t.get_key_value(key));
        let table = match found.map(|(_, value)| value.get_ref()) {
            Some(DeValue::Table(table)) => Some(table),
            _ => None,
        };
        let span = found.map_or(self.span, |(key, _)| {
            Some((key.span().start, key.span().end))
        });
        if let (Some(given), None) = (self.get(key), table) {
            let name = self.key(key);
            let hint = format!("write it as [{name}], with its keys on the lines below");
            given.fault::<()>("is not a table", hint);
        }
        let reader = Reader::new(self.key(key), section, table, span, self.ledger);
        reader.finish_with(read)
    }

    /// Each table of a list of tables; none when it was left out.
    pub(super) fn each<T>(
        &self,
        key: &'static str,
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
        let items = given.tables().unwrap_or_default();
        items
            .iter()
            .filter_map(|item| item.table(&mut read).flatten())
            .collect()
    }

    /// Notes the keys that are not in the list, each with the nearest that is.
    fn note_unknown(&self) {
        let known: Vec<&'static str> = self.section.keys.iter().map(|key| key.name).collect();
        for (key, _) in self.table.into_iter().flatten() {
            let name: &str = key.get_ref();
            if known.contains(&name) {
                continue;
            }
            let meant = elsewhere(name, &known).or_else(|| nearest(name, known.iter().copied()));
            let hint = match meant {
                Some(near) => format!("did you mean `{near}`?"),
                None => format!("known here: {}", known_names(&known)),
            };
            let span = Some((key.span().start, key.span().end));
            let full = self.key(name);
            let message = format!("{full} is not a known key");
            self.ledger.fault(full, span, message, hint);
        }
    }
}

impl<'a> Given<'a> {
    /// A table, read by `read`, which names every key it knows by asking for it.
    pub(super) fn table<T>(&self, read: impl FnOnce(&mut Reader<'a>) -> T) -> Option<T> {
        let Some((section, _)) = self.kind.section() else {
            return self.undeclared();
        };
        let DeValue::Table(table) = self.value else {
            return self.wrong(self.is());
        };
        let path = self.key.clone();
        let reader = Reader::new(path, section, Some(table), self.span, self.ledger);
        Some(reader.finish_with(read))
    }
}
