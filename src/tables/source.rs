//! Where a figure comes from and how sure it is.

use serde::Serialize;

/// How sure a figure is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Sure {
    /// The source's own text was read.
    Read,
    /// Quoted by another document.
    Quoted,
    /// Computed from a published figure.
    Computed,
    /// From memory, not confirmed.
    Memory,
    /// Common practice without a published source.
    Practice,
    /// Our own judgement; the job file can change it.
    Judgement,
}

/// A source as it is printed.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Source {
    /// What figure or rule it gives.
    pub what: &'static str,
    /// The document.
    pub document: &'static str,
    /// Clause, table or row; empty when the document is one page.
    pub clause: &'static str,
    /// Year of the edition; 0 when it has none.
    pub year: u16,
    /// How sure.
    pub sure: Sure,
}

impl Sure {
    /// The words printed behind a figure.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::Read => "text read",
            Self::Quoted => "as quoted elsewhere",
            Self::Computed => "computed",
            Self::Memory => "from memory, not confirmed",
            Self::Practice => "common practice",
            Self::Judgement => "our judgement",
        }
    }
}

impl Source {
    /// A source from its parts, in the order of the fields.
    #[must_use]
    pub const fn new(
        what: &'static str,
        document: &'static str,
        clause: &'static str,
        year: u16,
        sure: Sure,
    ) -> Self {
        Self {
            what,
            document,
            clause,
            year,
            sure,
        }
    }

    /// Document, clause, year (where the source has one) and how sure, as one printed phrase.
    ///
    /// ```
    /// use kerfwright::tables::{Source, Sure};
    /// let source = Source::new("limit", "EH40/2005", "4th ed.", 2020, Sure::Read);
    /// assert_eq!(source.cite(), "EH40/2005, 4th ed. (2020; text read)");
    /// ```
    #[must_use]
    pub fn cite(&self) -> String {
        if self.document == self.sure.words() {
            return self.document.into();
        }
        let mut text = String::from(self.document);
        if !self.clause.is_empty() {
            text.push_str(", ");
            text.push_str(self.clause);
        }
        text.push_str(" (");
        if self.year != 0 {
            text.push_str(&self.year.to_string());
            text.push_str("; ");
        }
        text.push_str(self.sure.words());
        text.push(')');
        text
    }
}
