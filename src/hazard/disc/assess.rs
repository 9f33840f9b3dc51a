//! Every rule on discs, in its order.

use crate::hazard::notes::Notes;
use crate::hazard::{Work, discs_on};
use crate::job::{Disc, Job};

use super::{
    DiscReport, before_use, bore, kickback, larger, new_disc, resin, rim, rim_speed_m_s, run_down,
    speed, steer, support,
};

/// Speeds of the discs used, and what to mind.
pub(in crate::hazard) fn assess(job: &Job, work: &Work, notes: &mut Notes) -> Vec<DiscReport> {
    let reports: Vec<DiscReport> = discs_on(job, work)
        .iter()
        .map(|disc| report(disc, job))
        .collect();
    speed::machine(job, notes);
    speed::assumed(job, notes);
    for disc in &reports {
        speed::assess(disc, job, notes);
        larger::assess(disc, job, notes);
        rim::assess(disc, notes);
        bore::assess(disc, notes);
        resin::assess(disc, &job.heading.date, notes);
    }
    if work.cuts() {
        for always in [
            steer::assess,
            kickback::assess,
            support::assess,
            before_use::assess,
            new_disc::assess,
        ] {
            always(notes);
        }
        run_down::assess(job, notes);
    }
    reports
}

fn report(disc: &Disc, job: &Job) -> DiscReport {
    let machine_rpm = job.machine.rpm;
    DiscReport {
        name: disc.name.clone(),
        diameter_mm: disc.diameter,
        machine_rpm,
        marked_rpm: disc.max_rpm,
        rim_speed_m_s: rim_speed_m_s(disc.diameter, machine_rpm),
        marked_speed_m_s: rim_speed_m_s(disc.diameter, disc.max_rpm),
        bore_mm: disc.bore,
        seat_mm: job.machine.seat_mm,
        bond: disc.bond.clone(),
    }
}
