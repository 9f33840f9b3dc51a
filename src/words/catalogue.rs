//! The texts of one language.

use std::collections::BTreeMap;
use std::sync::OnceLock;

use toml::{Table, Value};

use super::notation::is_quantity;
use super::{Language, Notation};
use crate::diag::{Said, Values, fill};
use crate::tables::region::Standing;

/// The files of a catalogue, each a TOML table of templates.
macro_rules! files {
    ($code:literal) => {
        &[
            include_str!(concat!($code, "/helper.toml")),
            include_str!(concat!($code, "/safety.toml")),
            include_str!(concat!($code, "/terms.toml")),
            include_str!(concat!($code, "/findings.toml")),
        ]
    };
}

/// How the ids of terms begin.
const TERMS: &str = "terms.";
/// The gap of a term that has a number in it.
const NUMBER: &str = "{n}";
/// What stands between the parts of a list, the outer lists first.
const LISTED_BY: [&str; 2] = ["; ", ", "];

/// Whether a text may stand in the gap of a term: a quantity, or the number of a cut, a corner or an
/// edge, such as `2-3` or `C-D`.
fn is_number(text: &str) -> bool {
    let mark = |c: char| c.is_ascii_digit() || c.is_ascii_uppercase() || c == '-';
    is_quantity(text) || (!text.is_empty() && text.chars().all(mark))
}

/// The files of a language.
const fn files(language: Language) -> &'static [&'static str] {
    match language {
        // English terms stand for themselves, and English findings in their phrases.
        Language::English => &[
            include_str!("en/helper.toml"),
            include_str!("en/safety.toml"),
        ],
        Language::German => files!("de"),
        Language::French => files!("fr"),
        Language::Spanish => files!("es"),
        Language::Polish => files!("pl"),
        Language::Norwegian => files!("no"),
        Language::Portuguese => files!("pt"),
        Language::Italian => files!("it"),
        Language::Dutch => files!("nl"),
        Language::Romanian => files!("ro"),
    }
}

/// The texts of one language, by id: `helper.title`, `findings.disc-bore.detail`.
#[derive(Debug)]
pub struct Catalogue {
    /// The language.
    pub language: Language,
    texts: BTreeMap<String, String>,
}

impl Catalogue {
    /// The catalogue of a language; read once.
    #[must_use]
    pub fn of(language: Language) -> &'static Self {
        static ALL: [OnceLock<Catalogue>; Language::ALL.len()] =
            [const { OnceLock::new() }; Language::ALL.len()];
        ALL[language as usize].get_or_init(|| Self::read(language))
    }

    fn read(language: Language) -> Self {
        let mut texts = BTreeMap::new();
        for file in files(language) {
            // That every file can be read is for the tests to show: it is part of the program.
            let table: Table = file.parse().unwrap_or_default();
            flatten("", &table, &mut texts);
        }
        Self { language, texts }
    }

    /// How the language writes numbers and dates.
    #[must_use]
    pub const fn notation(&self) -> Notation {
        Notation::of(self.language)
    }

    /// Every id with its template, in order.
    pub fn templates(&self) -> impl Iterator<Item = (&str, &str)> {
        self.texts
            .iter()
            .map(|(id, text)| (id.as_str(), text.as_str()))
    }

    /// The template of an id, if this language has it.
    #[must_use]
    pub fn find(&self, id: &str) -> Option<&str> {
        self.texts
            .get(id)
            .map(String::as_str)
            .filter(|t| !t.is_empty())
    }

    /// The template of an id; in English, or else the id itself, when this language lacks it.
    #[must_use]
    pub fn text<'a>(&'a self, id: &'a str) -> &'a str {
        self.find(id)
            .or_else(|| Self::of(Language::English).find(id))
            .unwrap_or(id)
    }

    /// A template with its gaps filled, numbers in the language's own notation.
    ///
    /// ```
    /// use kerfwright::words::{Catalogue, Language};
    /// let words = Catalogue::of(Language::German);
    /// let values = [("name", "W1".to_owned()), ("mass", "1.7 kg".to_owned())];
    /// assert!(words.say("helper.weight.waste_piece", &values).contains("1,7 kg"));
    /// ```
    #[must_use]
    pub fn say(&self, id: &str, values: &Values) -> String {
        fill(self.text(id), &self.own(values))
    }

    /// Words that come from the tables, such as the name of a mask, in this language; the English
    /// when there is no term for them.
    #[must_use]
    pub fn term(&self, english: &str) -> String {
        self.find_term(english)
            .map_or_else(|| english.to_owned(), str::to_owned)
    }

    /// As [`Self::term`], nothing when there is no term.
    #[must_use]
    pub fn find_term(&self, english: &str) -> Option<&str> {
        self.texts
            .get(&format!("terms.{english}"))
            .map(String::as_str)
    }

    /// Title and detail of a finding in this language; in English what the language lacks.
    #[must_use]
    pub fn said(&self, said: &Said) -> [String; 2] {
        let phrase = said.phrase;
        let values = self.own(&said.values);
        [("title", phrase.title), ("detail", phrase.detail)].map(|(part, english)| {
            let own = self.find(&format!("findings.{}.{part}", phrase.id));
            own.map_or_else(|| said.put_into(english), |words| fill(words, &values))
        })
    }

    /// Values as this language says them: numbers in its notation, dates in its order, words by
    /// their terms.
    fn own(&self, values: &Values) -> Vec<(&'static str, String)> {
        values
            .iter()
            .map(|(gap, value)| (*gap, self.value(value)))
            .collect()
    }

    /// One value as this language says it: by its term, by a term with one number in it, each part of a
    /// list and both sides of a colon by themselves, or as the number it is; a name that is none of
    /// these stays as it is.
    ///
    /// ```
    /// use kerfwright::words::{Catalogue, Language};
    /// let words = Catalogue::of(Language::German);
    /// assert_eq!(words.value("1.5 m, 2 mm (0.1 in)"), "1,5 m, 2 mm (0,1 in)");
    /// assert_eq!(words.value("W1 (2): 11.2 kg"), "W1 (2): 11,2 kg");
    /// assert_eq!(words.value("2026-11-30"), "30.11.2026");
    /// ```
    #[must_use]
    pub fn value(&self, english: &str) -> String {
        if let Some(term) = self.find_term(english) {
            return term.to_owned();
        }
        let borrowed = Standing::Borrowed.words();
        if let (Some(rule), Some(remark)) =
            (english.strip_suffix(borrowed), self.find_term(borrowed))
        {
            return format!("{}{remark}", self.value(rule));
        }
        if let Some(words) = self.numbered(english) {
            return words;
        }
        let document = self.source(english);
        if document != english {
            return document;
        }
        if let Some(separator) = LISTED_BY.into_iter().find(|s| english.contains(s)) {
            let each: Vec<String> = english.split(separator).map(|v| self.value(v)).collect();
            return each.join(separator);
        }
        if let Some((name, amount)) = english.rsplit_once(": ") {
            return format!("{}: {}", self.value(name), self.value(amount));
        }
        let notation = self.notation();
        let date = notation.date(english);
        if date == english {
            notation.number(english)
        } else {
            date
        }
    }

    /// Words with one number in them, such as `after cut 2`, by the term that has the gap `{n}` in its
    /// place.
    fn numbered(&self, english: &str) -> Option<String> {
        let terms = self.texts.range(TERMS.to_owned()..);
        let terms = terms.map_while(|(id, text)| Some((id.strip_prefix(TERMS)?, text)));
        let mut with_gap = terms.filter_map(|(term, text)| Some((term.split_once(NUMBER)?, text)));
        with_gap.find_map(|((before, behind), text)| {
            let number = english.strip_prefix(before)?.strip_suffix(behind)?;
            is_number(number).then(|| fill(text, &[("n", self.notation().number(number))]))
        })
    }

    /// A cited source with the words behind it, which tell how sure it is, in this language; the
    /// document keeps its own name.
    #[must_use]
    pub fn source(&self, cited: &str) -> String {
        if let Some(term) = self.find_term(cited) {
            return term.to_owned();
        }
        let parts = cited.rsplit_once('(');
        let Some((document, sure)) = parts.and_then(|(d, s)| Some((d, s.strip_suffix(')')?)))
        else {
            return cited.to_owned();
        };
        match sure.rsplit_once("; ") {
            Some((year, sure)) => format!("{document}({year}; {})", self.term(sure)),
            None => format!("{document}({})", self.term(sure)),
        }
    }

    /// The words in the boxes of a stop and a caution.
    #[must_use]
    pub fn notice(&'static self) -> [&'static str; 2] {
        ["safety.stop_word", "safety.caution_word"].map(|id| self.text(id))
    }

    /// Who has read the translation; nothing while nobody has, and for English.
    #[must_use]
    pub fn read_by(&self) -> Option<&str> {
        self.find("catalogue.read_by")
    }

    /// What a translated page says about itself, in its own language and in English: that a machine
    /// made it, or who has read it. Empty for English.
    #[must_use]
    pub fn standing(&self) -> Vec<String> {
        if self.language == Language::English {
            return Vec::new();
        }
        let english = Self::of(Language::English);
        let (id, values) = match self.read_by() {
            None => ("catalogue.machine_made", Vec::new()),
            Some(reader) => ("catalogue.was_read", vec![("reader", reader.to_owned())]),
        };
        vec![self.say(id, &values), english.say(id, &values)]
    }
}

/// Puts the texts of a table under ids joined by full stops.
fn flatten(before: &str, table: &Table, texts: &mut BTreeMap<String, String>) {
    for (key, value) in table {
        let id = if before.is_empty() {
            key.clone()
        } else {
            format!("{before}.{key}")
        };
        match value {
            Value::String(text) => {
                texts.insert(id, text.clone());
            }
            Value::Table(inner) => flatten(&id, inner, texts),
            _ => {}
        }
    }
}
