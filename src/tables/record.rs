//! What can be explained: one record for each hazard and each formula, and the phrases that a
//! hazard's findings are made of.

use super::Source;
use crate::diag::Phrase;

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

    /// The same record with the phrases that it speaks in.
    #[must_use]
    pub const fn saying(self, phrases: &'static [Phrase]) -> Self {
        Self { phrases, ..self }
    }
}
