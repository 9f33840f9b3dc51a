//! What can be explained: one record for each hazard and each formula, and the phrases that a
//! hazard's findings are made of.

use super::Source;

/// A hazard, a check of a stage, or a formula, as it is explained.
#[derive(Clone, Copy, Debug)]
pub struct Record {
    /// Short fixed name.
    pub id: &'static str,
    /// What it is called, in one line.
    pub title: &'static str,
    /// Hazard, check or formula.
    pub kind: Kind,
    /// What it is.
    pub what: &'static str,
    /// Why it matters.
    pub why: &'static str,
    /// What to do about it, or with it.
    pub what_to_do: &'static str,
    /// What it rests on, each with how sure it is.
    pub sources: &'static [&'static Source],
    /// The formula with its units; empty when there is none.
    pub formula: &'static str,
    /// A worked example, computed by the code it explains.
    pub example: Option<fn() -> Example>,
    /// The findings that it raises, or the lines it prints.
    pub phrases: &'static [Phrase],
}

/// What a record explains.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Kind {
    /// Something that can hurt.
    Hazard,
    /// Something that a stage of the plan looks at and reports.
    Check,
    /// A formula.
    Formula,
}

/// A worked example in words and numbers.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Example {
    /// What goes in.
    pub given: String,
    /// What comes out.
    pub result: String,
}

/// The words of one finding: a title and a detail with named gaps, such as `{minutes}`.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Phrase {
    /// The finding's fixed name.
    pub id: &'static str,
    /// One line.
    pub title: &'static str,
    /// What, the number, the limit, what to do.
    pub detail: &'static str,
}

/// What is put into the gaps of a phrase: the gap's name and its words or number.
pub type Values = [(&'static str, String)];

/// A finding as it was said: its phrase and what stands in the gaps, so that it can be said again in
/// other words of the same gaps.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Said {
    /// The phrase.
    pub phrase: &'static Phrase,
    /// What stands in its gaps.
    pub values: Vec<(&'static str, String)>,
}

impl Said {
    /// A template with this finding's values in its gaps.
    #[must_use]
    pub fn put_into(&self, template: &str) -> String {
        fill(template, &self.values)
    }
}

/// A number with a fixed count of decimals, for a gap.
///
/// ```
/// assert_eq!(kerfwright::tables::record::number(2.449, 1), "2.4");
/// ```
#[must_use]
pub fn number(value: f64, decimals: usize) -> String {
    format!("{value:.decimals$}")
}

/// A template with its gaps filled; a gap without a value stays as it is written.
///
/// ```
/// use kerfwright::tables::record::fill;
/// let words = fill("{a8} m/s² of {limit}", &[("a8", "2.4".into()), ("limit", "5".into())]);
/// assert_eq!(words, "2.4 m/s² of 5");
/// ```
#[must_use]
pub fn fill(template: &str, values: &Values) -> String {
    let mut words = String::with_capacity(template.len());
    let mut rest = template;
    while let Some((before, behind)) = rest.split_once('{') {
        words.push_str(before);
        let Some((name, after)) = behind.split_once('}') else {
            words.push('{');
            rest = behind;
            continue;
        };
        match values.iter().find(|(gap, _)| *gap == name) {
            Some((_, value)) => words.push_str(value),
            None => words.extend(["{", name, "}"]),
        }
        rest = after;
    }
    words.push_str(rest);
    words
}

/// The names of a template's gaps, in their order.
#[must_use]
pub fn gaps(template: &str) -> Vec<&str> {
    let parts = template.split('{').skip(1);
    parts
        .filter_map(|part| part.split_once('}').map(|(name, _)| name))
        .collect()
}

impl Record {
    /// A hazard with everything still to be said.
    pub const HAZARD: Self = Self {
        id: "",
        title: "",
        kind: Kind::Hazard,
        what: "",
        why: "",
        what_to_do: "",
        sources: &[],
        formula: "",
        example: None,
        phrases: &[],
    };
    /// A check with everything still to be said.
    pub const CHECK: Self = Self {
        kind: Kind::Check,
        ..Self::HAZARD
    };
    /// A formula with everything still to be said.
    pub const FORMULA: Self = Self {
        kind: Kind::Formula,
        ..Self::HAZARD
    };

    /// Whether an id is this record's own or one of its findings'.
    #[must_use]
    pub fn answers_to(&self, id: &str) -> bool {
        self.id == id || self.phrases.iter().any(|phrase| phrase.id == id)
    }

    /// Its own id and those of its phrases, each once.
    #[must_use]
    pub fn ids(&self) -> Vec<&'static str> {
        let mut ids = vec![self.id];
        for phrase in self.phrases {
            if phrase.id != self.id {
                ids.push(phrase.id);
            }
        }
        ids
    }
}
