//! What holds for every job: a line to go through at its moment, and what of this job is settled.

use serde::Serialize;

use crate::diag::Finding;

/// When a line of the standing checklist is gone through.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Moment {
    /// Before the machine starts.
    Before,
    /// While the disc turns.
    Cutting,
    /// While stone is moved.
    Moving,
    /// After the last cut.
    After,
}

impl Moment {
    /// Every moment, in the order of the day.
    pub const ALL: [Self; 4] = [Self::Before, Self::Cutting, Self::Moving, Self::After];

    /// The id of its heading in the catalogues.
    #[must_use]
    pub const fn id(self) -> &'static str {
        match self {
            Self::Before => "moment-before",
            Self::Cutting => "moment-cutting",
            Self::Moving => "moment-moving",
            Self::After => "moment-after",
        }
    }
}

/// A line of the standing checklist: its words are the finding's one line, in full its detail.
#[derive(Clone, Debug, PartialEq)]
pub struct CheckLine {
    /// When it is gone through.
    pub moment: Moment,
    /// What it says and what it rests on.
    pub finding: Finding,
}
