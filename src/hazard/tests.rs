//! Numbers and sources of a whole assessment; findings one by one and all combinations.

mod change;
mod each;
mod matrix;
mod pairs;
mod pairs_of_use;

use super::assess;
use super::sample::{job, work};
use crate::job::{Job, MachineKind, Respirator};
use crate::tables::dust_control::TableAnswer;
use crate::tables::region::RegionCode;

fn american(job: &mut Job) {
    job.region = RegionCode::Us;
    job.dust.respirator = Respirator::N95;
}

fn near(value: f64, expected: f64) {
    assert!((value - expected).abs() < 1e-9, "{value} is not {expected}");
}

#[test]
fn hours_of_the_day_add_up_and_exactly_four_counts_as_short() {
    let answer = |minutes: f64, other: f64| {
        let (mut job, mut work) = (job(), work());
        american(&mut job);
        job.machine.kind = MachineKind::HandSaw;
        work.trigger_minutes = minutes;
        job.dust.hours_today = other;
        assess(&job, &work).0.dust.table_answer
    };
    assert_eq!(answer(60.0, 3.0), Some(TableAnswer::NoRespirator));
    assert_eq!(answer(61.0, 3.0), Some(TableAnswer::Apf(10)));
    assert_eq!(answer(240.0, 0.0), Some(TableAnswer::NoRespirator));
    assert_eq!(answer(240.5, 0.0), Some(TableAnswer::Apf(10)));
}

#[test]
fn a_litre_of_granite_is_weighed_with_its_silica() {
    let (hazards, _) = assess(&job(), &work());
    let silica = hazards.silica;
    near(silica.dust_g.low, 2400.0);
    near(silica.dust_g.likely, 2700.0);
    near(silica.dust_g.high, 3000.0);
    near(silica.silica_g.low, 480.0);
    near(silica.silica_g.likely, 810.0);
    near(silica.silica_g.high, 1800.0);
    assert!(silica.limit_text.contains("2017") && silica.limit_text.contains("check your current"));
}

#[test]
fn every_finding_has_words_and_a_source_and_every_source_is_listed_once() {
    for region in RegionCode::ALL {
        let mut job = job();
        job.region = region;
        let (hazards, found) = assess(&job, &work());
        let cited: Vec<String> = hazards.sources.iter().map(|s| s.cite()).collect();
        for finding in found.stops.iter().chain(&found.cautions) {
            assert!(!finding.title.is_empty() && !finding.detail.is_empty());
            assert!(cited.contains(&finding.source), "{}", finding.id);
        }
        for (i, source) in hazards.sources.iter().enumerate() {
            assert!(!hazards.sources[i + 1..].contains(source));
        }
    }
}

#[test]
fn vibration_counts_the_uncertainty_and_the_rest_of_the_day() {
    let mut job = job();
    job.dust.hours_today = 1.0;
    let report = assess(&job, &work()).0.vibration;
    // 6.5 + 1.5 m/s²: 2 × 64 points an hour; 480 × (2.5/8)² minutes.
    near(report.reckoned_m_s2, 8.0);
    near(report.points_per_hour, 128.0);
    near(report.points_job, 128.0);
    near(report.points_day, 256.0);
    near(report.a8_job_m_s2, 8_f64.sqrt());
    near(report.a8_day_m_s2, 4.0);
    near(report.minutes_to_action.unwrap(), 46.875);
    near(report.minutes_to_limit.unwrap(), 187.5);
    // No uncertainty stated: 40 %.
    job.machine.vibration.k = 0.0;
    near(assess(&job, &work()).0.vibration.reckoned_m_s2, 6.5 * 1.4);
}

#[test]
fn noise_is_added_up_in_the_measure_of_the_region() {
    let mut job = job();
    job.machine.noise_db = 105.0;
    let europe = assess(&job, &work()).0.noise;
    assert_eq!((europe.osha_dose_percent, europe.osha_twa_db), (None, None));
    // An hour of 105 dB(A): 105 − 10·lg 8.
    near(europe.lex_8h_db.unwrap(), 105.0 - 10.0 * 8_f64.log10());
    american(&mut job);
    let us = assess(&job, &work()).0.noise;
    // OSHA allows an hour at 105 dBA.
    near(us.osha_dose_percent.unwrap(), 100.0);
    near(us.osha_twa_db.unwrap(), 90.0);
    near(us.minutes_to_duty, 60.0);
}

#[test]
fn the_hazards_are_plain_data() {
    let (hazards, _) = assess(&job(), &work());
    let json = serde_json::to_value(&hazards).unwrap();
    assert_eq!(json["respirator"]["required"]["at-least"], 20);
    assert_eq!(json["dust"]["control"], "water");
    assert_eq!(json["silica"]["limit"]["limit_mg_m3"], 0.1);
    assert_eq!(json["discs"][0]["machine_rpm"], 9800.0);
}

#[test]
fn a_borrowed_rule_says_that_it_is_borrowed() {
    for region in RegionCode::ALL {
        let mut job = job();
        job.region = region;
        job.dust.respirator = Respirator::None;
        let (hazards, found) = assess(&job, &work());
        let said = found
            .stops
            .iter()
            .chain(&found.cautions)
            .find(|finding| finding.id.starts_with("respirator-"))
            .map(|finding| finding.detail.contains("borrowed"));
        let own = matches!(region, RegionCode::Uk | RegionCode::Us | RegionCode::UsCa);
        assert_eq!(said, Some(!own), "{region:?} {hazards:?}");
    }
}
