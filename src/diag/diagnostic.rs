//! A fault of a job file, as data.

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
