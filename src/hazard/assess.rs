//! Every hazard of the job, one after another.

use serde::Serialize;

use crate::diag::Findings;
use crate::hazard::moment::CheckLine;
use crate::hazard::notes::Notes;
use crate::job::Job;
use crate::tables::Source;
use crate::tables::measured_dust::{MeasuredDust, measured_dust};
use crate::tables::region::{Emergency, Rule};
use crate::words::Message;

use super::{
    Work, bound, cold, crush, disc, dust, noise, protective, respirator, rules, silica, slurry,
    standing, stone, supply, sweeping, switch, vibration,
};

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
