//! Numbers and sources of a whole assessment; findings one by one and all combinations.

mod change;
mod each;
mod matrix;
mod pairs;
mod pairs_of_use;

use super::assess;
use super::dust::order::State;
use super::respirator::Worn;
use super::sample::{job, set_stone, work};
use crate::job::{
    Dusty, ExposurePeriod, Job, MachineKind, Protector, Respirator, Vibration, Workplace,
};
use crate::tables::dust_control::TableAnswer;
use crate::tables::region::{RegionCode, RuleOrigin};
use crate::tables::respirator::MaskClass;
use crate::tables::stone::StoneKind;
use crate::words::Writer;

fn american(job: &mut Job) {
    job.region = RegionCode::Us;
    job.dust.respirator = Respirator::Mask(MaskClass::N95);
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
        for finding in found.stops.iter().chain(&found.open).chain(&found.warnings) {
            assert!(
                !Writer::default().say(&finding.message).is_empty()
                    && !Writer::default().detail(&finding.message).is_empty()
            );
            assert!(cited.contains(&finding.source), "{}", finding.id());
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

/// Other work of the day: strong, loud and dusty or not.
fn breaking(minutes: f64, dusty: Dusty) -> ExposurePeriod {
    ExposurePeriod {
        what: "breaking a path".into(),
        minutes,
        vibration: Vibration { a: 12.0, k: 4.0 },
        noise_db: 100.0,
        dusty,
    }
}

#[test]
fn dusty_work_with_another_machine_counts_as_hours_of_the_day() {
    let answer = |dusty| {
        let mut job = job();
        american(&mut job);
        job.machine.kind = MachineKind::HandSaw;
        job.today = vec![breaking(181.0, dusty)];
        assess(&job, &work()).0.dust.table_answer
    };
    assert_eq!(answer(Dusty::Dusty), Some(TableAnswer::Apf(10)));
    assert_eq!(answer(Dusty::Clean), Some(TableAnswer::NoRespirator));
}

#[test]
fn other_machines_of_the_day_add_their_points_and_their_noise() {
    let mut job = job();
    job.today = vec![breaking(30.0, Dusty::Clean)];
    let (hazards, _) = assess(&job, &work());
    // 2 × 8² for an hour and 2 × 16² for half an hour.
    near(hazards.vibration.points_day, 128.0 + 256.0);
    near(hazards.vibration.a8_day_m_s2, (384.0_f64 / 16.0).sqrt());
    near(hazards.vibration.shares_to_action, 4.0);
    near(hazards.vibration.shares_to_limit, 1.0);
    let energy = 10_f64.powf(10.4) + 0.5 * 10_f64.powf(10.0);
    near(
        hazards.noise.lex_8h_db.unwrap(),
        10.0 * (energy / 8.0).log10(),
    );
    // Everything is 28 dB less under the protector.
    let under = hazards.noise.protector.day_at_ear_db.unwrap();
    near(under, hazards.noise.lex_8h_db.unwrap() - 28.0);
}

#[test]
fn a_stronger_control_is_offered_with_what_it_changes_before_the_mask() {
    let mut job = job();
    american(&mut job);
    job.dust.place = Workplace::Indoors;
    job.dust.hours_today = 4.0;
    set_stone(&mut job, StoneKind::Limestone);
    let (hazards, _) = assess(&job, &work());
    let steps: Vec<(&str, State, Option<TableAnswer>)> = hazards
        .order
        .iter()
        .map(|step| (step.id, step.state, step.table))
        .collect();
    let none = Some(TableAnswer::NoRespirator);
    // A wet grinder indoors is in no row; a shroud asks for factor 10 above 4 hours.
    assert_eq!(
        steps,
        [
            ("control-cut-less", State::Open, None),
            ("control-shop", State::Open, None),
            (
                "control-at-the-disc",
                State::Done,
                Some(TableAnswer::Apf(10))
            ),
            ("control-outdoors", State::Open, none),
            ("control-distance", State::OnTheDay, None),
            ("control-mask", State::Open, None),
        ]
    );
}

#[test]
fn the_limit_of_the_directive_holds_under_the_protector() {
    let mut job = job();
    let said = |job: &Job| {
        let (hazards, found) = assess(job, &work());
        let settled = hazards.settled.iter().any(|m| m.id == "settled-noise");
        (
            found.stops.iter().any(|f| f.id() == "noise-over-limit"),
            settled,
        )
    };
    assert_eq!(said(&job), (false, true));
    // 104 dB(A) for an hour is 94.97 over the day: 8 dB are enough for the limit of 87, 7 are not.
    job.protector = Protector::Snr(10.0);
    assert_eq!(said(&job), (false, true));
    job.protector = Protector::Snr(8.0);
    assert_eq!(said(&job), (false, false));
    job.protector = Protector::Snr(7.0);
    assert_eq!(said(&job), (true, false));
}

#[test]
fn respirators_that_reach_the_factor_are_of_the_region_s_own_scheme() {
    let names = |region| {
        let mut job = job();
        job.region = region;
        job.machine.kind = MachineKind::HandSaw;
        job.dust.place = Workplace::Indoors;
        let suitable = assess(&job, &work()).0.respirator.suitable;
        let named = suitable.iter().map(|s| (s.name, s.apf, s.worn));
        named.collect::<Vec<_>>()
    };
    let british = names(RegionCode::Uk);
    assert!(british.contains(&("FFP3 filtering half mask", 20, Worn::FitTestedAndShaven)));
    assert!(british.contains(&("powered hood or helmet TH2", 20, Worn::Loose)));
    assert!(
        !british
            .iter()
            .any(|(name, ..)| name.contains("N95") || name.contains("TH1"))
    );
    let american = names(RegionCode::Us);
    assert!(american.contains(&("N95 filtering facepiece", 10, Worn::FitTestedAndShaven)));
    assert!(
        !american
            .iter()
            .any(|(name, ..)| name.contains("FFP") || name.contains("TH"))
    );
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
            .chain(&found.open)
            .find(|finding| finding.id().starts_with("respirator-"))
            .map(|finding| {
                Writer::default()
                    .detail(&finding.message)
                    .contains("borrowed")
            });
        let own = hazards.respirator.required_standing == RuleOrigin::Own;
        assert_eq!(said, Some(!own), "{region:?} {hazards:?}");
    }
}
