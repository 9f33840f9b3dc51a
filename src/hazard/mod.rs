//! What can hurt: silica, vibration, noise, the disc, the supply, the stone itself.
//!
//! Each hazard has one file: its record, its phrases and its part of [`assess`]. [`registry`] lists
//! the records. Nothing here predicts what is in the air: silica is given in grams, exposures only
//! as studies measured them.

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

#[cfg(test)]
mod sample;
#[cfg(test)]
mod tests;

use serde::Serialize;

use crate::diag::Findings;
use crate::job::{Disc, Dusty, Job};
use crate::tables::Source;
use crate::tables::measured_dust::{MeasuredDust, measured_dust};
use crate::tables::region::{Emergency, Rule};
use crate::words::Message;
use moment::CheckLine;
use notes::Notes;

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
fn discs_on<'a>(job: &'a Job, work: &'a Work) -> &'a [Disc] {
    if work.discs.is_empty() {
        &job.discs
    } else {
        &work.discs
    }
}

/// The hazards of the job with their numbers.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Hazards {
    /// Stone and silica that the kerf sets free, and the limit for the air.
    pub silica: silica::SilicaReport,
    /// How the dust is held down, and what the regulator's table says of it.
    pub dust: dust::DustReport,
    /// The order of controls, the strongest first.
    pub order: Vec<dust::order::Step>,
    /// What holds the stone afterwards.
    pub caught: slurry::Caught,
    /// The respirator asked for and the one at hand.
    pub respirator: respirator::RespiratorReport,
    /// Hand-arm vibration.
    pub vibration: vibration::VibrationReport,
    /// Noise.
    pub noise: noise::NoiseReport,
    /// Rim speed of each disc used.
    pub discs: Vec<disc::DiscReport>,
    /// What to wear.
    pub protective: Vec<protective::ProtectiveItem>,
    /// Quartz in the air as studies measured it; it does not predict this job.
    pub measured: Vec<MeasuredDust>,
    /// The region's rule for the vacuum cleaner and the extractor.
    pub vacuum: Rule,
    /// The region's rule for the supply of hand machines.
    pub supply: Rule,
    /// Who is asked about the rules, in words.
    pub authority: &'static str,
    /// What every job of the kind asks for, by its moment.
    #[serde(skip)]
    pub checklist: Vec<CheckLine>,
    /// What of this job is settled, a line each.
    #[serde(skip)]
    pub settled: Vec<Message>,
    /// The number that calls help where the job is done.
    pub emergency: Emergency,
    /// The sources that the numbers and findings rest on.
    pub sources: Vec<&'static Source>,
}

/// Works out every hazard of the job and what stands against it.
///
/// `hours_today` counts as work with the same machine, other work as it is told; hours of the task
/// add up.
/// `work` must hold finite numbers that are not negative.
#[must_use]
pub fn assess(job: &Job, work: &Work) -> (Hazards, Findings) {
    let mut notes = Notes::default();
    rules::assess(job, &mut notes);
    stone::assess(job, &mut notes);
    supply::assess(job, &mut notes);
    let dust = dust::assess(job, work, &mut notes);
    stone::controlled::assess(job, &dust, &mut notes);
    bound::assess(job, &mut notes);
    let silica = silica::assess(job, work, &mut notes);
    let respirator = respirator::assess(job, &dust, &mut notes);
    let order = dust::order::list(
        job,
        work,
        &dust,
        &respirator,
        silica.dust_g.likely,
        &mut notes,
    );
    let discs = disc::assess(job, work, &mut notes);
    let vibration = vibration::assess(job, work, &mut notes);
    let noise = noise::assess(job, work, &mut notes);
    switch::assess(job, &mut notes);
    cold::assess(job, &mut notes);
    crush::assess(job, &mut notes);
    standing::assess(job, &mut notes);
    sweeping::assess(job, &silica, &mut notes);
    let caught = slurry::assess(job, work, dust.control, &silica, &mut notes);
    let protective = protective::list(job, &respirator, &noise, &mut notes);
    let record = job.region.record();
    notes.used(record.vacuum.source);
    notes.used(record.supply.source);
    notes.used(record.emergency.source);
    for row in measured_dust() {
        notes.used(row.source);
    }
    let hazards = Hazards {
        silica,
        dust,
        order,
        caught,
        respirator,
        vibration,
        noise,
        discs,
        protective,
        measured: measured_dust().to_vec(),
        vacuum: record.vacuum,
        supply: record.supply,
        authority: record.authority,
        checklist: in_order(notes.checklist),
        settled: notes.settled,
        emergency: record.emergency,
        sources: notes.sources,
    };
    (hazards, notes.findings)
}

/// The lines by their moment, in each the worst first; of the same harm, as they were found.
fn in_order(mut lines: Vec<CheckLine>) -> Vec<CheckLine> {
    lines.sort_by_key(|line| (line.moment, line.finding.phrase.harm));
    lines
}
