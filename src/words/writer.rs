//! The one place that writes a value or a message: for one system of units and one language.

use fluent_bundle::{FluentArgs, FluentValue};

use super::{Language, Message, Messages, Notation, Quantity, System, Unit, Value};

/// Writes values and messages for a reader.
///
/// ```
/// use kerfwright::words::{Language, System, Unit, Value, Writer};
/// let here = Writer::new(System::Metric, Language::German);
/// assert_eq!(here.write(&Value::of(2.449, Unit::Vibration)), "2,4\u{a0}m/s²");
/// let there = Writer::new(System::Inch, Language::English);
/// assert_eq!(there.write(&Value::size(641.35)), "25\u{a0}1/4\u{a0}in");
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Writer {
    /// The units it writes.
    pub system: System,
    /// The language it writes.
    pub language: Language,
}

/// Between a figure and its unit (ISO 80000-1:2022, 7.3.4): a space that no line ends at.
const SPACE: char = '\u{a0}';

impl Writer {
    /// A writer for a system of units and a language.
    #[must_use]
    pub const fn new(system: System, language: Language) -> Self {
        Self { system, language }
    }

    /// The same system of units in English.
    #[must_use]
    pub const fn english(self) -> Self {
        Self::new(self.system, Language::English)
    }

    /// A value with its unit.
    #[must_use]
    pub fn write(self, value: &Value) -> String {
        match value {
            Value::Quantity(quantity) => {
                let figure = self.figure(quantity);
                with_unit(figure, quantity, self.system)
            }
            Value::Range(low, high) => {
                let (from, to) = (self.figure(low), self.figure(high));
                let figure = if from == to {
                    to
                } else {
                    format!("{from}–{to}")
                };
                with_unit(figure, high, self.system)
            }
            Value::Count(n) => Notation::of(self.language).figure(&n.to_string()),
            Value::Name(name) => name.clone(),
            Value::Term(english) => self.term(english),
            Value::Date { year, month, day } => {
                Notation::of(self.language).date(&format!("{year:04}-{month:02}-{day:02}"))
            }
            Value::Case(case) => (*case).to_owned(),
            Value::List(values) => {
                let each: Vec<String> = values.iter().map(|v| self.write(v)).collect();
                each.join(", ")
            }
            Value::Message(message) => self.say(message),
            Value::Nothing => String::new(),
        }
    }

    /// A quantity's figure without its unit, for a label whose unit stands elsewhere.
    #[must_use]
    pub fn figure(self, quantity: &Quantity) -> String {
        Notation::of(self.language).figure(&quantity.figure(self.system))
    }

    /// A message with its gaps filled; in English what the language lacks.
    #[must_use]
    pub fn say(self, message: &Message) -> String {
        self.find(message, None)
            .unwrap_or_else(|| message.id.clone().into_owned())
    }

    /// The longer part of a message, its attribute `detail`; empty when it has none.
    #[must_use]
    pub fn detail(self, message: &Message) -> String {
        self.find(message, Some("detail")).unwrap_or_default()
    }

    /// A message without gaps.
    #[must_use]
    pub fn text(self, id: &str) -> String {
        self.say(&Message::plain(id.to_owned()))
    }

    /// A fixed term in this language; the English when there is no other.
    #[must_use]
    pub fn term(self, english: &str) -> String {
        self.find(&Message::plain(term_id(english)), None)
            .unwrap_or_else(|| english.to_owned())
    }

    /// A message or one of its attributes in this language, else in English.
    fn find(self, message: &Message, attribute: Option<&str>) -> Option<String> {
        let mut args = FluentArgs::with_capacity(message.args.len());
        for (name, value) in &message.args {
            args.set(*name, self.argument(value));
        }
        let in_language = |l| Messages::of(l).format(&message.id, attribute, &args);
        in_language(self.language).or_else(|| in_language(Language::English))
    }

    fn argument(self, value: &Value) -> FluentValue<'static> {
        match value {
            Value::Count(n) => FluentValue::from(*n),
            other => FluentValue::from(self.write(other)),
        }
    }
}

fn with_unit(figure: String, quantity: &Quantity, system: System) -> String {
    match quantity.sign(system) {
        "" => figure,
        // Degrees of an angle and per cent in English and metric tables alike: no space before a degree.
        sign if quantity.unit == Unit::Degree => figure + sign,
        sign => format!("{figure}{SPACE}{sign}"),
    }
}

/// The id of a term in the catalogues: its English words in small letters, joined by hyphens.
///
/// ```
/// assert_eq!(kerfwright::words::term_id("half mask 50, full face 1000"), "term-half-mask-50-full-face-1000");
/// ```
#[must_use]
pub fn term_id(english: &str) -> String {
    let mut id = String::from("term");
    let words = english.split(|c: char| !c.is_ascii_alphanumeric());
    for word in words.filter(|w| !w.is_empty()) {
        id.push('-');
        id.push_str(&word.to_ascii_lowercase());
    }
    id
}
