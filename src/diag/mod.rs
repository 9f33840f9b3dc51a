//! Faults and remarks about a job file, as data. Drawing them is someone else's job.

mod phrase;

pub use phrase::{Phrase, Said, Values, fill, gaps, number};

use serde::Serialize;

/// How bad a finding is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Severity {
    /// Worth knowing; the job goes on.
    Remark,
    /// The job file cannot be planned as it stands.
    Fault,
}

/// One finding about a job file.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Diagnostic {
    /// Fault or remark.
    pub severity: Severity,
    /// The key it concerns, such as `top.round.2` or `disc[0].kerf`.
    pub key: String,
    /// Byte range in the job text, when the place is known.
    pub span: Option<(usize, usize)>,
    /// What is wrong: the thing, its number and the limit.
    pub message: String,
    /// What to do about it.
    pub hint: String,
}

impl Diagnostic {
    /// A fault at a key.
    #[must_use]
    pub fn fault(
        key: impl Into<String>,
        span: Option<(usize, usize)>,
        message: impl Into<String>,
        hint: impl Into<String>,
    ) -> Self {
        Self {
            severity: Severity::Fault,
            key: key.into(),
            span,
            message: message.into(),
            hint: hint.into(),
        }
    }
}

/// Something about the planned job itself that must be read before the machine starts.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Finding {
    /// Short fixed name, such as `water-on-mains`.
    pub id: &'static str,
    /// One line.
    pub title: String,
    /// What, the number, the limit, what to do.
    pub detail: String,
    /// Document, clause and year, or "common practice", or "judgement".
    pub source: String,
    /// How it was said, to be said in another language.
    #[serde(skip)]
    pub said: Said,
}

impl Finding {
    /// A finding in a phrase's words, what stands in its gaps and what it rests on.
    #[must_use]
    pub fn of(phrase: &'static Phrase, values: &Values, source: impl Into<String>) -> Self {
        let said = Said {
            phrase,
            values: values.to_vec(),
        };
        let [title, detail] = [phrase.title, phrase.detail].map(|words| said.put_into(words));
        Self {
            id: phrase.id,
            title,
            detail,
            source: source.into(),
            said,
        }
    }
}

/// What stands against the job, and what to mind.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Findings {
    /// The job must not start while one of these stands.
    pub stops: Vec<Finding>,
    /// To be read and heeded.
    pub cautions: Vec<Finding>,
}

impl Findings {
    /// Adds the findings of another stage behind these.
    pub fn append(&mut self, mut other: Self) {
        self.stops.append(&mut other.stops);
        self.cautions.append(&mut other.cautions);
    }
}
