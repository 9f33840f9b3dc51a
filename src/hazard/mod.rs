//! What can hurt: silica, vibration, noise, the disc, the supply, the stone itself.
//!
//! Each hazard has one file: its record, its phrases and its part of [`assess`]. [`registry`] lists
//! the records. Nothing here predicts what is in the air: silica is given in grams, exposures only
//! as studies measured them.

mod assess;
pub mod bound;
pub mod cold;
pub mod crush;
pub mod disc;
pub mod dust;
pub mod moment;
pub mod noise;
mod notes;
pub mod protective;
pub mod registry;
pub mod respirator;
pub mod rules;
pub mod silica;
pub mod slurry;
pub mod standing;
pub mod stone;
pub mod supply;
pub mod sweeping;
pub mod switch;
pub mod vibration;
mod work;

pub use assess::{Hazards, assess};
pub use work::Work;
use work::discs_on;

#[cfg(test)]
mod sample;
#[cfg(test)]
mod tests;
