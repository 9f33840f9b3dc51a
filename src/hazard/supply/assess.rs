//! Every rule on the supply, in its order.

use crate::hazard::notes::Notes;
use crate::job::Job;

use super::{air, battery, engine, protection, water, wet_mains};

/// Stops and cautions about water and the supply.
pub(in crate::hazard) fn assess(job: &Job, notes: &mut Notes) {
    water::assess(job, notes);
    protection::assess(job, notes);
    wet_mains::assess(job, notes);
    battery::assess(job, notes);
    air::assess(job, notes);
    engine::assess(job, notes);
}
