//! Noise at the ear: formulas and report; the hazards stand in [`exposure`] and [`protection`].

mod assess;

pub(super) use assess::assess;
mod explained;
pub mod exposure;
mod level;
pub mod protection;
pub mod protector;
mod report;

use level::day_level;
pub use level::{
    NoisePeriod, hours_to, lex_8h, mean_level, niosh_minutes, osha_dose, osha_hours, osha_twa,
};
pub use report::NoiseReport;

pub use explained::{LEX, NIOSH, OSHA};
