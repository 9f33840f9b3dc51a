//! Published figures, each with its source; the only place where they are written down.

pub mod region;
pub mod source;
pub mod stone;

pub use source::{Source, Sure};
