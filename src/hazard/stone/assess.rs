//! Every rule on the stone, in its order.

use crate::hazard::notes::Notes;
use crate::job::Job;

use super::{asbestos, binder, engineered, rich, steel, unknown, veins};

/// Stops and cautions about the stone itself.
pub(in crate::hazard) fn assess(job: &Job, notes: &mut Notes) {
    engineered::assess(job, notes);
    rich::assess(job, notes);
    unknown::assess(job, notes);
    asbestos::assess(job, notes);
    veins::assess(job, notes);
    binder::assess(job, notes);
    steel::assess(job, notes);
}
