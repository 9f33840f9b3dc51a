//! The work that the hazards are those of: what is sawn, how long, with what.

use crate::cut::Cut;
use crate::job::{Disc, Dusty, Job};

/// What the cutting amounts to, as far as the hazards need to know it.
#[derive(Clone, Debug)]
pub struct Work {
    /// Stone turned to dust or slurry by all cuts, mm³.
    pub kerf_volume_mm3: f64,
    /// Face sawn by all cuts, mm².
    pub sawn_face_mm2: f64,
    /// Time with the disc in the stone, minutes.
    pub trigger_minutes: f64,
    /// The discs that are used.
    pub discs: Vec<Disc>,
}

impl Work {
    /// The work of all cuts; `kerf_mm2` is what they take out of the face.
    #[must_use]
    pub fn of(job: &Job, cuts: &[Cut], kerf_mm2: f64) -> Self {
        let mut discs = Vec::new();
        for disc in cuts.iter().filter_map(|c| c.tool.disc()) {
            if !discs.contains(disc) {
                discs.push(disc.clone());
            }
        }
        Self {
            kerf_volume_mm3: kerf_mm2 * job.stone.thickness.mean,
            sawn_face_mm2: cuts.iter().map(|c| c.face_mm2).sum(),
            trigger_minutes: cuts.iter().map(|c| c.minutes).sum(),
            discs,
        }
    }

    /// Time with the disc in the stone, hours.
    #[must_use]
    pub const fn hours(&self) -> f64 {
        // 60 minutes to an hour.
        self.trigger_minutes / 60.0
    }

    /// Time with the disc in the stone on one day or by one person, hours: the sawing is spread evenly.
    #[must_use]
    pub fn hours_a_day(&self, job: &Job) -> f64 {
        self.hours() / job.dust.days.max(1.0)
    }

    /// Whether anything is cut at all.
    #[must_use]
    pub fn cuts(&self) -> bool {
        self.sawn_face_mm2 > 0.0
    }

    /// This job and the other dusty work of the day, hours.
    #[must_use]
    pub fn dusty_hours(&self, job: &Job) -> f64 {
        let dusty = job.today.iter().filter(|s| s.dusty == Dusty::Dusty);
        let others: f64 = dusty.map(|spell| spell.minutes).sum();
        self.hours_a_day(job) + job.dust.hours_today + others / 60.0
    }
}

/// The discs to look at: those used, or the whole kit while no cut is planned.
pub(super) fn discs_on<'a>(job: &'a Job, work: &'a Work) -> &'a [Disc] {
    if work.discs.is_empty() {
        &job.discs
    } else {
        &work.discs
    }
}
