//! Where the power comes from and how it is protected.

use crate::job::{Job, Power, Protection};

/// Whether the job feeds water to the disc.
pub(super) fn is_wet(job: &Job) -> bool {
    job.dust.is_wet()
}

/// Whether the machine hangs on the mains.
pub(super) fn is_mains(job: &Job) -> bool {
    job.machine.power == Power::Mains
}

/// Whether a mains supply has a protection that counts; "battery" is none for a mains machine.
pub(super) const fn is_protected(protection: Protection) -> bool {
    matches!(
        protection,
        Protection::Rcd | Protection::Gfci | Protection::CentreTapped110V
    )
}
