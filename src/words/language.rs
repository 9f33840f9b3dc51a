//! The languages that a helper can read.

use serde::{Serialize, Serializer};

/// A language that the helper's and the safety page can be printed in.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
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
