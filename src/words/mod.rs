//! What is printed, as typed values and messages, and the one place that writes them.
//!
//! | file | what it is |
//! |---|---|
//! | `quantity` | a figure, its unit and its rounding, in both systems of units |
//! | `value` | what stands in the gaps of a message |
//! | `writer` | values and messages as text, for one system of units and one language |
//! | `messages` | the catalogue of a language, in the syntax of Project Fluent |
//! | `notation` | numbers and dates as a language writes them |
//! | `en/`, `de/`, … | the catalogues, one file for each part of the program |
//!
//! English is a catalogue like every other. `tests/languages` compares the others with it.

mod language;
mod messages;
mod notation;
mod quantity;
mod value;
mod writer;

pub use language::Language;

pub use messages::{Messages, sources};
pub use notation::Notation;
pub use quantity::{Quantity, Rounding, System, Unit};
pub use value::{Arg, Message, Value};
pub use writer::{Writer, term_id};
