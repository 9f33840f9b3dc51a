//! Published figures, each with its source; the only place where they are written down.

pub mod disc;
pub mod documents;
pub mod dust_control;
pub mod measured_dust;
pub mod protective;
pub mod record;
pub mod records;
pub mod region;
pub mod respirator;
pub mod source;
pub mod stone;
pub mod supply;
pub mod tool;
pub mod vacuum;

pub use source::{Provenance, Source};
