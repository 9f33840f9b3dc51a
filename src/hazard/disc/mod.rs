//! The disc: its speed and mounting, and what breaks or throws it; one file for each hazard.

mod assess;

pub(super) use assess::assess;
pub mod before_use;
pub mod bore;
pub mod kickback;
pub mod larger;
pub mod new_disc;
mod report;
pub mod resin;
pub mod rim;
pub mod run_down;
pub mod speed;
pub mod steer;
pub mod support;

pub use report::{DiscReport, RIM_SPEED, rim_speed_m_s, rpm_at};
