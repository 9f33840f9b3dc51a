//! What a plan says must be known before the machine starts.

use crate::words::{Arg, Message};

use super::Phrase;

/// How much a finding asks for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Grade {
    /// Do not start.
    Stop,
    /// A blank to fill or a thing to look at; then start.
    Open,
    /// Known, with what to do.
    Warning,
}

/// One finding: its kind, the values in its words and what it rests on.
#[derive(Clone, Debug, PartialEq)]
pub struct Finding {
    /// Its kind.
    pub phrase: &'static Phrase,
    /// Its words: one line, and in full under `.detail`.
    pub message: Message,
    /// Document, clause and year, or "common practice", or "judgement".
    pub source: String,
}

impl Finding {
    /// A finding of a kind, with what stands in its words and what it rests on.
    #[must_use]
    pub fn of(
        phrase: &'static Phrase,
        args: impl Into<Vec<Arg>>,
        source: impl Into<String>,
    ) -> Self {
        Self {
            phrase,
            message: Message::new(phrase.id, args),
            source: source.into(),
        }
    }

    /// Its fixed name.
    #[must_use]
    pub const fn id(&self) -> &'static str {
        self.phrase.id
    }
}

/// The findings of a stage or of a whole plan, by grade.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Findings {
    /// The job must not start while one of these stands.
    pub stops: Vec<Finding>,
    /// Each has a blank to fill or asks for a look before the start.
    pub open: Vec<Finding>,
    /// To be read and heeded.
    pub warnings: Vec<Finding>,
}

impl Findings {
    /// Adds a finding under its grade.
    pub fn add(&mut self, grade: Grade, finding: Finding) {
        self.of_grade(grade).push(finding);
    }

    /// Adds the findings of another stage behind these.
    pub fn append(&mut self, other: Self) {
        self.stops.extend(other.stops);
        self.open.extend(other.open);
        self.warnings.extend(other.warnings);
    }

    /// Orders each grade by harm, the worst first; of the same harm, as they were found.
    pub fn worst_first(&mut self) {
        for list in [&mut self.stops, &mut self.open, &mut self.warnings] {
            list.sort_by_key(|finding| finding.phrase.harm);
        }
    }

    fn of_grade(&mut self, grade: Grade) -> &mut Vec<Finding> {
        match grade {
            Grade::Stop => &mut self.stops,
            Grade::Open => &mut self.open,
            Grade::Warning => &mut self.warnings,
        }
    }
}
