//! Hand-arm vibration: formulas and report; the hazard stands in [`exposure`].

mod assess;

pub(super) use assess::assess;
mod dose;
mod explained;
pub mod exposure;
mod report;

pub(crate) use dose::whole_minutes;

pub use dose::{a8, minutes_to, points, shares};
pub use report::{VibrationPeriod, VibrationReport};

pub use explained::{A8, POINTS, TIME};
