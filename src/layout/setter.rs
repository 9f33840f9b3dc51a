//! What blocks are set with, and how high they are.

use super::voice::Type;
use crate::words::Writer;

/// Heights of a block, mm.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Extent {
    /// The least.
    pub least: f64,
    /// What it would like.
    pub liked: f64,
}

/// How much of the open points and the stops stands on a page; the annex has them in full.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Said {
    /// Everything.
    InFull,
    /// The open points by their first line.
    OpenInShort,
    /// The stops as well.
    InShort,
}

/// What blocks are set with.
#[derive(Clone, Copy, Debug)]
pub struct Setter {
    /// Writes values and messages.
    pub writer: Writer,
    /// The styles.
    pub kind: Type,
    /// Room that a page has, mm: nothing would like to be higher.
    pub page_mm: f64,
    /// A drawing shrinks to this part of the height it likes, no further.
    pub least_share: f64,
    /// How much is said of open points and stops.
    pub said: Said,
    /// True when a rule laid on a drawing reads true at its scale: the scale is then told.
    pub to_scale: bool,
}

impl Extent {
    /// A block that does not give way.
    #[must_use]
    pub const fn fixed(mm: f64) -> Self {
        Self {
            least: mm,
            liked: mm,
        }
    }

    /// Two blocks, one below the other.
    #[must_use]
    pub fn plus(self, other: Self) -> Self {
        Self {
            least: self.least + other.least,
            liked: self.liked + other.liked,
        }
    }

    /// Two blocks side by side.
    #[must_use]
    pub fn or(self, other: Self) -> Self {
        Self {
            least: self.least.max(other.least),
            liked: self.liked.max(other.liked),
        }
    }
}
