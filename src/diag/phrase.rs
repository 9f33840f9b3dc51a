//! The kinds of findings: what each does to people, whether it is of one job, and what clears it. Its
//! words stand in the catalogues under its id.

use serde::Serialize;

/// What happens to whoever does not heed a finding, worst first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Harm {
    /// It kills on the day.
    KillsNow,
    /// It kills years later.
    KillsLater,
    /// It maims: a hand, an eye, a foot.
    Maims,
    /// It harms for good: hearing, fingers, back.
    Lasting,
    /// It breaks the stone.
    Stone,
}

/// Whether a finding is of one job or of every job.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Scope {
    /// A number or a choice of this job raised it.
    Job,
    /// It holds for every job of the kind.
    Every,
}

/// What makes a finding go away.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize)]
#[serde(untagged)]
pub enum Clears {
    /// A key of the job file, such as `lift.aid`.
    Key(&'static str),
    /// Something to do, by the id of its message (`act-…`).
    Act(&'static str),
}

/// A kind of finding.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Phrase {
    /// Its fixed name, and the id of its words: one line, and in full under `.detail`.
    pub id: &'static str,
    /// What it does to people or stone.
    pub harm: Harm,
    /// Of this job or of every job.
    pub of: Scope,
    /// The key or the act that clears it.
    pub clears: Clears,
}

impl Phrase {
    /// A finding of one job that breaks the stone, cleared by heeding it: the start of a record.
    #[must_use]
    pub const fn of_job(id: &'static str) -> Self {
        Self {
            id,
            harm: Harm::Stone,
            of: Scope::Job,
            clears: Clears::Act("act-heed"),
        }
    }

    /// The same for a finding of every job.
    #[must_use]
    pub const fn of_every_job(id: &'static str) -> Self {
        Self {
            of: Scope::Every,
            ..Self::of_job(id)
        }
    }

    /// With what it does to people or stone.
    #[must_use]
    pub const fn harm(self, harm: Harm) -> Self {
        Self { harm, ..self }
    }

    /// Cleared by a key of the job file.
    #[must_use]
    pub const fn key(self, key: &'static str) -> Self {
        Self {
            clears: Clears::Key(key),
            ..self
        }
    }

    /// Cleared by something done, by the id of its message.
    #[must_use]
    pub const fn act(self, id: &'static str) -> Self {
        Self {
            clears: Clears::Act(id),
            ..self
        }
    }
}
