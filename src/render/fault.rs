//! Why a sheet cannot be written.

use std::fmt;

use crate::layout::item::Typeface;

/// Why a sheet cannot be written.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum RenderFault {
    /// A coordinate, width or size is not a finite number.
    NotFinite {
        /// The page's name.
        page: String,
        /// What has it.
        item: String,
    },
    /// The typeface has no glyph for a character, or it is a control character.
    MissingCharacter {
        /// The page's name.
        page: String,
        /// The character.
        character: char,
        /// The line of text that holds it.
        text: String,
    },
    /// The sheet's date is not `YYYY-MM-DD`.
    Date(String),
    /// An embedded font cannot be read: the program was built wrongly.
    Font(Typeface),
    /// The PDF could not be put together.
    Writer(String),
}

impl fmt::Display for RenderFault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::NotFinite { page, item } => {
                write!(
                    f,
                    "page \"{page}\": {item} is not at a finite place or size"
                )
            }
            Self::MissingCharacter {
                page,
                character,
                text,
            } => {
                let code = u32::from(*character);
                let shown = character.escape_debug();
                write!(
                    f,
                    "page \"{page}\": the typeface has no '{shown}' (U+{code:04X}), in \"{}\"",
                    text.escape_debug()
                )
            }
            Self::Date(date) => write!(f, "the date \"{date}\" is not of the form YYYY-MM-DD"),
            Self::Font(face) => write!(f, "the embedded font {face:?} cannot be read"),
            Self::Writer(what) => write!(f, "the PDF cannot be written: {what}"),
        }
    }
}

impl std::error::Error for RenderFault {}
