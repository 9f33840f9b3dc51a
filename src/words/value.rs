//! What stands in the gaps of a message: typed values, not yet written.

use std::borrow::Cow;

use crate::units::Mass;

use super::{Quantity, Rounding, Unit};

/// A message of the catalogues with the values that stand in its gaps.
#[derive(Clone, Debug, PartialEq)]
pub struct Message {
    /// Its id in the catalogues.
    pub id: Cow<'static, str>,
    /// What stands in its gaps, by name.
    pub args: Vec<Arg>,
}

/// The name of a gap and what stands in it.
pub type Arg = (&'static str, Value);

impl Message {
    /// A message with values in its gaps.
    #[must_use]
    pub fn new(id: impl Into<Cow<'static, str>>, args: impl Into<Vec<Arg>>) -> Self {
        Self {
            id: id.into(),
            args: args.into(),
        }
    }

    /// A message without gaps.
    #[must_use]
    pub fn plain(id: impl Into<Cow<'static, str>>) -> Self {
        Self::new(id, Vec::new())
    }

    /// The value in a gap.
    #[must_use]
    pub fn arg(&self, name: &str) -> Option<&Value> {
        self.args.iter().find(|(n, _)| *n == name).map(|(_, v)| v)
    }
}

/// A typed value: it knows its unit and its rounding, and nothing of languages.
#[derive(Clone, Debug, PartialEq)]
pub enum Value {
    /// A quantity with its unit.
    Quantity(Quantity),
    /// The least and the most of a quantity in one unit, `55–58 kg`.
    Range(Quantity, Quantity),
    /// A count, which chooses between singular and plural.
    Count(i64),
    /// A name that the user gave: never translated, never parsed.
    Name(String),
    /// A fixed term under its English words, such as the name of a mask.
    Term(Cow<'static, str>),
    /// A calendar date.
    Date {
        /// Year of the common era.
        year: u16,
        /// 1 to 12.
        month: u8,
        /// 1 to 31.
        day: u8,
    },
    /// Chooses a variant of the message and is never printed.
    Case(&'static str),
    /// Values in a row, separated as the language does.
    List(Vec<Value>),
    /// A message within a message.
    Message(Box<Message>),
    /// Nothing, where a message leaves a gap empty.
    Nothing,
}

impl Value {
    /// From a least to a most, each rounded away from the other.
    #[must_use]
    pub const fn between(low: Quantity, high: Quantity) -> Self {
        let low = Quantity {
            rounding: Rounding::Down,
            ..low
        };
        let high = Quantity {
            rounding: Rounding::Up,
            ..high
        };
        Self::Range(low, high)
    }

    /// A quantity in a unit, rounded to the nearest.
    #[must_use]
    pub const fn of(value: f64, unit: Unit) -> Self {
        Self::Quantity(Quantity::new(value, unit))
    }

    /// A size in mm, see [`Unit::Size`].
    #[must_use]
    pub const fn size(mm: f64) -> Self {
        Self::of(mm, Unit::Size)
    }

    /// A distance to be taped in mm, see [`Unit::Tape`].
    #[must_use]
    pub const fn tape(mm: f64) -> Self {
        Self::of(mm, Unit::Tape)
    }

    /// A core bit in mm, see [`Unit::Bit`].
    #[must_use]
    pub const fn bit(mm: f64) -> Self {
        Self::of(mm, Unit::Bit)
    }

    /// A small length in mm, see [`Unit::Fine`].
    #[must_use]
    pub const fn fine(mm: f64) -> Self {
        Self::of(mm, Unit::Fine)
    }

    /// A way to go in mm, see [`Unit::Way`].
    #[must_use]
    pub const fn way(mm: f64) -> Self {
        Self::of(mm, Unit::Way)
    }

    /// A mass.
    #[must_use]
    pub const fn mass(mass: Mass) -> Self {
        Self::of(mass.kg(), Unit::Mass)
    }

    /// A plain number with a fixed count of decimals.
    #[must_use]
    pub const fn number(value: f64, decimals: u8) -> Self {
        Self::of(value, Unit::Number).decimals(decimals)
    }

    /// A count.
    #[must_use]
    pub fn count(n: usize) -> Self {
        Self::Count(i64::try_from(n).unwrap_or(i64::MAX))
    }

    /// A name that the user gave.
    #[must_use]
    pub fn name(name: impl Into<String>) -> Self {
        Self::Name(name.into())
    }

    /// A fixed term, by its English words.
    #[must_use]
    pub fn term(english: impl Into<Cow<'static, str>>) -> Self {
        Self::Term(english.into())
    }

    /// A message within a message.
    #[must_use]
    pub fn message(id: impl Into<Cow<'static, str>>, args: impl Into<Vec<Arg>>) -> Self {
        Self::Message(Box::new(Message::new(id, args)))
    }

    /// The same, never rounded down: what is required or used up.
    #[must_use]
    pub const fn up(self) -> Self {
        self.rounded(Rounding::Up)
    }

    /// The same, never rounded up: what is permitted or at hand.
    #[must_use]
    pub const fn down(self) -> Self {
        self.rounded(Rounding::Down)
    }

    /// The same, rounded away from the kept stone beside it, see [`Rounding::DownToHalf`]: never above the value
    /// or else never below it.
    #[must_use]
    pub const fn to_half(self, down: bool) -> Self {
        self.rounded(if down {
            Rounding::DownToHalf
        } else {
            Rounding::UpToHalf
        })
    }

    /// The same with a fixed count of decimals.
    #[must_use]
    pub const fn decimals(mut self, decimals: u8) -> Self {
        if let Self::Quantity(ref mut quantity) = self {
            quantity.decimals = Some(decimals);
        }
        self
    }

    const fn rounded(mut self, rounding: Rounding) -> Self {
        if let Self::Quantity(ref mut quantity) = self {
            quantity.rounding = rounding;
        }
        self
    }
}

impl From<Message> for Value {
    fn from(message: Message) -> Self {
        Self::Message(Box::new(message))
    }
}

impl From<usize> for Value {
    fn from(n: usize) -> Self {
        Self::count(n)
    }
}

/// Text that was written before: as a name.
impl From<String> for Value {
    fn from(text: String) -> Self {
        Self::Name(text)
    }
}
