//! Every rule on vibration, in its order.

use crate::hazard::Work;
use crate::hazard::notes::Notes;
use crate::hazard::vibration::dose::{MIN_PER_H, whole_shares};
use crate::job::Job;
use crate::tables::documents as doc;
use crate::tables::tool::VIBRATION_UNCERTAINTY;

use super::{VibrationPeriod, VibrationReport, a8, exposure, minutes_to, points, shares};

/// Vibration of the job, and what is over.
pub(in crate::hazard) fn assess(job: &Job, work: &Work, notes: &mut Notes) -> VibrationReport {
    let report = report(job, work, notes);
    notes.used(report.values.source);
    notes.used(&doc::HSE_POINTS);
    exposure::assess(&report, notes);
    report
}

fn report(job: &Job, work: &Work, notes: &mut Notes) -> VibrationReport {
    let values = job.region.record().vibration;
    let vibration = job.machine.vibration;
    let k = uncertainty(vibration.a, vibration.k, notes);
    let reckoned = vibration.a + k;
    let (job_h, other_h) = (work.hours_a_day(job), job.dust.hours_today);
    let spells = spells(job, notes);
    let mut day = vec![(reckoned, job_h), (reckoned, other_h)];
    day.extend(
        spells
            .iter()
            .map(|s| (s.reckoned_m_s2, s.minutes / MIN_PER_H)),
    );
    let points_day: f64 = day.iter().map(|(a, hours)| points(*a, *hours)).sum();
    let points_job = points(reckoned, job_h);
    let points_per_hour = points(reckoned, 1.0);
    let trigger_min = job_h * MIN_PER_H;
    let other_min = if points_per_hour > 0.0 {
        (points_day - points_job).max(0.0) / points_per_hour * MIN_PER_H
    } else {
        0.0
    };
    let to = |value| minutes_to(reckoned, value);
    let shares_to =
        |value| shares(points_day, value).max(whole_shares(trigger_min, other_min, to(value)));
    VibrationReport {
        a_m_s2: vibration.a,
        k_m_s2: k,
        reckoned_m_s2: reckoned,
        trigger_min,
        other_hours: other_h,
        other_min,
        spells,
        a8_job_m_s2: a8(&[(reckoned, job_h)]),
        a8_day_m_s2: a8(&day),
        points_per_hour,
        points_job,
        points_day,
        minutes_to_action: to(values.action_m_s2),
        minutes_to_limit: to(values.limit_m_s2),
        shares_to_action: shares_to(values.action_m_s2),
        shares_to_limit: shares_to(values.limit_m_s2),
        values,
    }
}

fn spells(job: &Job, notes: &mut Notes) -> Vec<VibrationPeriod> {
    let one = |spell: &crate::job::ExposurePeriod, notes: &mut Notes| {
        let (a, k) = (spell.vibration.a, spell.vibration.k);
        let reckoned = a + uncertainty(a, k, notes);
        VibrationPeriod {
            what: spell.what.clone(),
            reckoned_m_s2: reckoned,
            minutes: spell.minutes,
            points: points(reckoned, spell.minutes / MIN_PER_H),
        }
    };
    job.today.iter().map(|spell| one(spell, notes)).collect()
}

/// The maker's uncertainty; when none is stated, the published share of the magnitude.
fn uncertainty(a: f64, stated: f64, notes: &mut Notes) -> f64 {
    if stated > 0.0 {
        return stated;
    }
    if a > 0.0 {
        notes.used(VIBRATION_UNCERTAINTY.source);
    }
    a * VIBRATION_UNCERTAINTY.value
}
