//! Every rule on noise, in its order.

use crate::hazard::Work;
use crate::hazard::noise::level::{MIN_PER_H, finite};
use crate::hazard::notes::Notes;
use crate::job::Job;
use crate::tables::documents as doc;
use crate::tables::region::NoiseMeasure;

use super::{
    NoisePeriod, NoiseReport, exposure, hours_to, lex_8h, niosh_minutes, osha_dose, osha_hours,
    osha_twa, protector,
};

/// Noise of the day, and what is over.
pub(in crate::hazard) fn assess(job: &Job, work: &Work, notes: &mut Notes) -> NoiseReport {
    let report = report(job, work);
    notes.used(report.values.source);
    notes.used(&doc::NIOSH_NOISE);
    exposure::assess(&report, notes);
    report
}

fn report(job: &Job, work: &Work) -> NoiseReport {
    let record = job.region.record();
    let (values, level) = (record.noise, job.machine.noise_db);
    let hours = work.hours_a_day(job) + job.dust.hours_today;
    let spells: Vec<NoisePeriod> = job.today.iter().map(spell).collect();
    let mut day = vec![(level, hours)];
    day.extend(spells.iter().map(|s| (s.level_db, s.minutes / MIN_PER_H)));
    let dose = (values.measure == NoiseMeasure::OshaDose).then(|| osha_dose(&day));
    NoiseReport {
        level_db: level,
        hours,
        spells,
        lex_8h_db: finite(lex_8h(&day)),
        minutes_to_duty: MIN_PER_H
            * match values.measure {
                NoiseMeasure::EqualEnergy => hours_to(level, values.duty_db),
                NoiseMeasure::OshaDose => osha_hours(level),
            },
        osha_dose_percent: dose,
        osha_twa_db: dose.map(osha_twa).and_then(finite),
        niosh_minutes: niosh_minutes(level),
        protector: protector::report(job, &day),
        values,
    }
}

fn spell(spell: &crate::job::ExposurePeriod) -> NoisePeriod {
    NoisePeriod {
        what: spell.what.clone(),
        level_db: spell.noise_db,
        minutes: spell.minutes,
    }
}
