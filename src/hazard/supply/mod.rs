//! What drives the machine, and water near it: one file for each hazard.
//!
//! | drive | dry | wet, rated for it | wet, not rated |
//! |---|---|---|---|
//! | mains, RCD, GFCI or 110 V | nothing | [`wet_mains`]: caution | [`water`]: stop |
//! | mains, none of them | [`protection`]: stop outdoors, open point indoors | [`protection`]: stop | both stops |
//! | battery | nothing | [`battery`]: caution | [`water`]: stop |
//! | air | [`air`]: caution | [`air`]: caution | [`water`]: stop |
//! | engine | [`engine`]: stop indoors, caution outdoors | the same | with [`water`]: stop |

pub mod air;
pub mod battery;
pub mod engine;
pub mod protection;
pub mod water;
pub mod wet_mains;

use super::notes::Notes;
use crate::job::{Job, Power, Protection};

/// Whether the job feeds water to the disc.
fn is_wet(job: &Job) -> bool {
    job.dust.is_wet()
}

/// Whether the machine hangs on the mains.
fn is_mains(job: &Job) -> bool {
    job.machine.power == Power::Mains
}

/// Whether a mains supply has a protection that counts; "battery" is none for a mains machine.
const fn is_protected(protection: Protection) -> bool {
    matches!(
        protection,
        Protection::Rcd | Protection::Gfci | Protection::CentreTapped110V
    )
}

/// Stops and cautions about water and the supply.
pub(super) fn assess(job: &Job, notes: &mut Notes) {
    water::assess(job, notes);
    protection::assess(job, notes);
    wet_mains::assess(job, notes);
    battery::assess(job, notes);
    air::assess(job, notes);
    engine::assess(job, notes);
}
