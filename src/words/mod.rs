//! What a page says, as data: one catalogue of templates for each language.
//!
//! | file | what it is |
//! |---|---|
//! | [`catalogue`] | texts of one language, and how they are filled |
//! | [`notation`] | numbers and dates as a language writes them |
//! | `en/`, `de/`, … | the catalogues: `helper.toml`, `safety.toml`, `terms.toml`, `findings.toml` |
//!
//! A template holds named gaps, such as `{kg}`. English findings have their templates beside their
//! formulas (see [`crate::diag::Phrase`]); every other language has them in
//! `findings.toml` under the finding's id, and in `terms.toml` the rules and names that stand in
//! gaps, under their English words. `tests/languages` compares every catalogue with the English.

pub mod catalogue;
pub mod notation;

pub use catalogue::Catalogue;
pub use notation::Notation;

use serde::{Serialize, Serializer};

/// A language that the helper's and the safety page can be printed in.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord)]
pub enum Language {
    /// English.
    #[default]
    English,
    /// German.
    German,
    /// French.
    French,
    /// Spanish.
    Spanish,
    /// Polish.
    Polish,
    /// Norwegian (bokmål).
    Norwegian,
    /// Portuguese, as written in Portugal.
    Portuguese,
    /// Italian.
    Italian,
    /// Dutch.
    Dutch,
    /// Romanian.
    Romanian,
}

impl Language {
    /// Every language, in the order it is listed.
    pub const ALL: [Self; 10] = [
        Self::English,
        Self::German,
        Self::French,
        Self::Spanish,
        Self::Polish,
        Self::Norwegian,
        Self::Portuguese,
        Self::Italian,
        Self::Dutch,
        Self::Romanian,
    ];

    /// The code by which it is asked for.
    #[must_use]
    pub const fn code(self) -> &'static str {
        match self {
            Self::English => "en",
            Self::German => "de",
            Self::French => "fr",
            Self::Spanish => "es",
            Self::Polish => "pl",
            Self::Norwegian => "no",
            Self::Portuguese => "pt",
            Self::Italian => "it",
            Self::Dutch => "nl",
            Self::Romanian => "ro",
        }
    }

    /// The tag that a document carries (BCP 47): Norwegian is written as bokmål, Portuguese as in
    /// Portugal.
    #[must_use]
    pub const fn tag(self) -> &'static str {
        match self {
            Self::Norwegian => "nb",
            Self::Portuguese => "pt-PT",
            other => other.code(),
        }
    }

    /// Its English name.
    #[must_use]
    pub const fn english_name(self) -> &'static str {
        match self {
            Self::English => "English",
            Self::German => "German",
            Self::French => "French",
            Self::Spanish => "Spanish",
            Self::Polish => "Polish",
            Self::Norwegian => "Norwegian",
            Self::Portuguese => "Portuguese",
            Self::Italian => "Italian",
            Self::Dutch => "Dutch",
            Self::Romanian => "Romanian",
        }
    }

    /// Reads a code or a tag; capitals and a country behind it do not matter.
    ///
    /// ```
    /// use kerfwright::words::Language;
    /// assert_eq!(Language::parse("DE"), Some(Language::German));
    /// assert_eq!(Language::parse("nb"), Some(Language::Norwegian));
    /// assert_eq!(Language::parse("de-AT"), Some(Language::German));
    /// assert_eq!(Language::parse("eo"), None);
    /// ```
    #[must_use]
    pub fn parse(text: &str) -> Option<Self> {
        let text = text.trim().to_lowercase();
        let code = text.split(['-', '_']).next()?;
        let code = if code == "nb" { "no" } else { code };
        Self::ALL.into_iter().find(|l| l.code() == code)
    }

    /// Every code with its English name: `en (English), de (German), …`.
    #[must_use]
    pub fn list() -> String {
        let each = Self::ALL.map(|l| format!("{} ({})", l.code(), l.english_name()));
        each.join(", ")
    }
}

/// Written as its code.
impl Serialize for Language {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_str(self.code())
    }
}
