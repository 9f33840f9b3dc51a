//! Where a figure comes from and how sure it is.

use std::collections::BTreeMap;
use std::ops::Deref;

use serde::{Deserialize, Deserializer, Serialize, Serializer};

use super::records::{Text, kept};

/// How sure a figure is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum Provenance {
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

/// What a source cites.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(try_from = "Entry")]
pub struct Citation {
    /// What figure or rule it gives.
    pub what: Text,
    /// The document.
    pub document: Text,
    /// Clause, table or row, and why there is no year where there is none; empty for a judgement.
    pub clause: Text,
    /// Year of the edition; 0 when it has none.
    pub year: u16,
    /// How sure.
    pub sure: Provenance,
}

/// A source, by the name under which a file of `records/sources` keeps its [`Citation`].
///
/// The file is read when one of its citations is first looked at.
#[derive(Clone, Copy, Debug)]
pub struct Source {
    pub(super) name: &'static str,
    pub(super) shelf: fn() -> &'static Shelf,
}

/// The citations of one file, by name.
pub type Shelf = BTreeMap<String, Citation>;

/// What stands in for a citation that its file does not have.
static MISSING: Citation = Citation {
    what: "",
    document: "no document found",
    clause: "",
    year: 0,
    sure: Provenance::Memory,
};

/// A citation as its file has it.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Entry {
    #[serde(deserialize_with = "kept")]
    what: Text,
    cite: Cite,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Cite {
    #[serde(deserialize_with = "kept")]
    document: Text,
    #[serde(default)]
    clause: String,
    year: Option<u16>,
    no_year: Option<String>,
    sure: Provenance,
}

impl Provenance {
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

    /// Whether somebody published the figure, so that there is a document to look into.
    #[must_use]
    pub const fn is_published(self) -> bool {
        matches!(self, Self::Read | Self::Quoted | Self::Memory)
    }
}

impl Citation {
    /// Document, clause, year (where the source has one) and how sure, as one printed phrase.
    ///
    /// ```
    /// use kerfwright::tables::documents::UK_SILICA;
    /// assert_eq!(UK_SILICA.cite(), "EH40/2005, 4th ed. (2020; text read)");
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

impl TryFrom<Entry> for Citation {
    type Error = String;

    /// A published figure has its clause, and its year or the reason why it has none.
    fn try_from(entry: Entry) -> Result<Self, String> {
        let Entry { what, cite } = entry;
        let found = cite.document != MISSING.document;
        if cite.sure.is_published() && found {
            if cite.clause.is_empty() && cite.no_year.is_none() {
                return Err(format!("no clause: {what}"));
            }
            if cite.year.is_some() == cite.no_year.is_some() {
                return Err(format!("a year, or the reason why there is none: {what}"));
            }
        }
        let why = cite.no_year.map(|why| format!("no year: {why}"));
        let parts: Vec<String> = [Some(cite.clause).filter(|c| !c.is_empty()), why]
            .into_iter()
            .flatten()
            .collect();
        Ok(Self {
            what,
            document: cite.document,
            clause: parts.join("; ").leak(),
            year: cite.year.unwrap_or_default(),
            sure: cite.sure,
        })
    }
}

impl Deref for Source {
    type Target = Citation;

    fn deref(&self) -> &Citation {
        (self.shelf)().get(self.name).unwrap_or(&MISSING)
    }
}

impl PartialEq for Source {
    fn eq(&self, other: &Self) -> bool {
        self.name == other.name
    }
}

impl Serialize for Source {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        (**self).serialize(serializer)
    }
}

impl<'de> Deserialize<'de> for &'static Source {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        let name = String::deserialize(deserializer)?;
        let unknown = || serde::de::Error::custom(format!("no source of this name: {name}"));
        Source::find(&name).ok_or_else(unknown)
    }
}
