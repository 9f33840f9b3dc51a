//! Every stop and caution is raised by the job that deserves it, and by no other.

use super::sample::{job, set_stone, work};
use super::{Work, assess};
use crate::diag::{Finding, Findings};
use crate::job::{DustMethod, Job, MachineKind, Place, Power, Protection, Respirator};
use crate::tables::dust_control::TableAnswer;
use crate::tables::region::RegionCode;
use crate::tables::stone::StoneKind;

/// A change to the sample job and its work.
type Change = fn(&mut Job, &mut Work);

fn findings_of(change: Change) -> Findings {
    let (mut job, mut work) = (job(), work());
    change(&mut job, &mut work);
    assess(&job, &work).1
}

fn ids(findings: &[Finding]) -> Vec<&'static str> {
    findings.iter().map(|finding| finding.id).collect()
}

/// Each stop, a change that raises it alone, and the same change put right.
const STOPS: [(&str, Change, Change); 17] = [
    (
        "no-dust-control",
        |job, _| job.dust.method = DustMethod::None,
        |_, _| {},
    ),
    (
        "shroud-airflow-unknown",
        |job, _| job.dust.method = DustMethod::Shroud,
        |job, _| shrouded(job, 212.0),
    ),
    (
        "shroud-airflow-too-small",
        |job, _| shrouded(job, 211.0),
        |job, _| shrouded(job, 212.0),
    ),
    (
        "water-on-mains-unrated",
        |job, _| mains(job, false, Protection::Rcd),
        |job, _| mains(job, true, Protection::Rcd),
    ),
    (
        "water-not-rated",
        |job, _| job.machine.wet_rated = false,
        |_, _| {},
    ),
    (
        "supply-unprotected",
        |job, _| mains(job, true, Protection::None),
        |job, _| mains(job, true, Protection::Gfci),
    ),
    (
        "supply-unprotected",
        |job, _| mains(job, true, Protection::Battery),
        |job, _| mains(job, true, Protection::CentreTapped110V),
    ),
    (
        "engine-indoors",
        |job, _| engine(job, Place::Indoors),
        |job, _| engine(job, Place::Outdoors),
    ),
    (
        "engineered-stone",
        |job, _| engineered(job, RegionCode::Au),
        |job, _| engineered(job, RegionCode::Nz),
    ),
    (
        "engineered-stone-dry",
        |job, _| {
            california(job, StoneKind::EngineeredStone);
            shrouded(job, 300.0);
        },
        |job, _| california(job, StoneKind::EngineeredStone),
    ),
    (
        "engineered-stone-powered-respirator",
        |job, _| engineered(job, RegionCode::Uk),
        |job, _| {
            engineered(job, RegionCode::Uk);
            job.dust.respirator = Respirator::PoweredHood;
        },
    ),
    (
        "silica-rich-stone-dry",
        |job, _| {
            california(job, StoneKind::Granite);
            shrouded(job, 300.0);
        },
        |job, _| {
            california(job, StoneKind::Marble);
            shrouded(job, 300.0);
        },
    ),
    (
        "respirator-missing",
        |job, _| job.dust.respirator = Respirator::None,
        |_, _| {},
    ),
    (
        "respirator-below-required",
        |job, _| job.dust.respirator = Respirator::Ffp2,
        |job, _| job.dust.respirator = Respirator::FullFace,
    ),
    (
        "disc-over-marked-rpm",
        |job, _| job.machine.rpm = 12_201.0,
        |job, _| job.machine.rpm = 12_200.0,
    ),
    (
        "disc-mark-unknown",
        |_, work| work.discs.iter_mut().for_each(|disc| disc.max_rpm = 0.0),
        |_, _| {},
    ),
    (
        "machine-speed-unknown",
        |job, _| job.machine.rpm = 0.0,
        |_, _| {},
    ),
];

fn shrouded(job: &mut Job, airflow_m3h: f64) {
    job.dust.method = DustMethod::Shroud;
    job.dust.airflow_m3h = airflow_m3h;
}

fn mains(job: &mut Job, wet_rated: bool, protected: Protection) {
    job.machine.power = Power::Mains;
    job.machine.wet_rated = wet_rated;
    job.machine.protected = protected;
}

fn engine(job: &mut Job, place: Place) {
    job.machine.power = Power::Engine;
    job.dust.place = place;
}

fn engineered(job: &mut Job, region: RegionCode) {
    job.region = region;
    set_stone(job, StoneKind::EngineeredStone);
}

fn california(job: &mut Job, kind: StoneKind) {
    job.region = RegionCode::UsCa;
    job.dust.respirator = Respirator::N95;
    set_stone(job, kind);
}

#[test]
fn each_stop_has_a_job_that_raises_it_and_one_that_does_not() {
    assert_eq!(ids(&findings_of(|_, _| {}).stops), Vec::<&str>::new());
    for (id, wrong, right) in STOPS {
        assert_eq!(ids(&findings_of(wrong).stops), [id]);
        assert_eq!(ids(&findings_of(right).stops), Vec::<&str>::new(), "{id}");
    }
}

/// Each caution, a change that raises it and one that does not.
const CAUTIONS: [(&str, Change, Change); 24] = [
    ("water-flow", |_, _| {}, |job, _| shrouded(job, 300.0)),
    ("wet-floor", |_, _| {}, |job, _| shrouded(job, 300.0)),
    ("slurry-clean-up", |_, _| {}, |job, _| shrouded(job, 300.0)),
    ("extractor-filter", |job, _| shrouded(job, 300.0), |_, _| {}),
    (
        "supply-unprotected",
        |job, _| {
            mains(job, false, Protection::None);
            shrouded(job, 300.0);
        },
        |job, _| mains(job, true, Protection::Rcd),
    ),
    (
        "not-in-table",
        |job, _| american(job, Place::Indoors),
        |job, _| american(job, Place::Outdoors),
    ),
    (
        "indoors-exhaust",
        |job, _| job.dust.place = Place::Indoors,
        |_, _| {},
    ),
    (
        "respirator-not-fit-tested",
        |job, _| job.dust.mask_fit_tested = false,
        |_, _| {},
    ),
    (
        "respirator-not-fit-tested",
        |job, _| {
            job.dust.mask_fit_tested = false;
            job.dust.respirator = Respirator::PoweredMask;
        },
        |job, _| {
            job.dust.mask_fit_tested = false;
            job.dust.respirator = Respirator::PoweredHood;
        },
    ),
    (
        "respirator-class",
        |job, _| job.dust.respirator = Respirator::PoweredHood,
        |_, _| {},
    ),
    (
        "respirator-missing",
        |job, _| {
            american(job, Place::Outdoors);
            job.dust.respirator = Respirator::None;
        },
        |job, _| american(job, Place::Outdoors),
    ),
    (
        "respirator-not-in-scheme",
        |job, _| {
            american(job, Place::Outdoors);
            job.dust.respirator = Respirator::Ffp3;
        },
        |job, _| american(job, Place::Outdoors),
    ),
    (
        "rim-speed-over-limit",
        |job, work| faster_disc(job, work, 12_400.0),
        |job, work| faster_disc(job, work, 12_223.0),
    ),
    (
        "vibration-over-action",
        |_, work| work.trigger_minutes = 60.0,
        |_, work| work.trigger_minutes = 40.0,
    ),
    (
        "vibration-over-limit",
        |job, _| job.dust.hours_today = 3.0,
        |_, _| {},
    ),
    (
        "vibration-unknown",
        |job, _| job.machine.vibration.a = 0.0,
        |_, _| {},
    ),
    (
        "noise-over-action",
        |job, _| job.machine.noise_db = 90.0,
        |job, _| job.machine.noise_db = 88.0,
    ),
    (
        "noise-over-limit",
        |_, _| {},
        |job, _| job.machine.noise_db = 95.0,
    ),
    (
        "noise-unknown",
        |job, _| job.machine.noise_db = 0.0,
        |_, _| {},
    ),
    (
        "soapstone-asbestos",
        |job, _| set_stone(job, StoneKind::Soapstone),
        |_, _| {},
    ),
    (
        "marble-veins",
        |job, _| set_stone(job, StoneKind::Marble),
        |_, _| {},
    ),
    (
        "high-silica-stone",
        |_, _| {},
        |job, _| set_stone(job, StoneKind::Limestone),
    ),
    (
        "stone-kind-unknown",
        |job, _| set_stone(job, StoneKind::Own),
        |_, _| {},
    ),
    (
        "controlled-processing",
        |job, _| job.region = RegionCode::Au,
        |_, _| {},
    ),
];

fn american(job: &mut Job, place: Place) {
    job.region = RegionCode::Us;
    job.dust.respirator = Respirator::N95;
    job.dust.place = place;
}

fn faster_disc(job: &mut Job, work: &mut Work, rpm: f64) {
    job.machine.rpm = rpm;
    work.discs
        .iter_mut()
        .for_each(|disc| disc.max_rpm = 15_000.0);
}

#[test]
fn each_caution_has_a_job_that_raises_it_and_one_that_does_not() {
    for (id, wrong, right) in CAUTIONS {
        assert!(
            ids(&findings_of(wrong).cautions).contains(&id),
            "{id} not raised"
        );
        assert!(
            !ids(&findings_of(right).cautions).contains(&id),
            "{id} raised"
        );
    }
}

#[test]
fn what_holds_for_every_job_is_always_said() {
    let found = ids(&findings_of(|_, _| {}).cautions);
    for id in [
        "local-rules-first",
        "never-steer-the-disc",
        "kickback-pinched-disc",
        "disc-before-use",
        "falling-stone",
        "no-dry-sweeping",
    ] {
        assert!(found.contains(&id), "{id}");
    }
}

#[test]
fn a_rim_above_every_stripe_stops_the_job() {
    // 125 mm at 15 400 turns a minute: 100.8 m/s.
    let found = findings_of(|job, work| {
        job.machine.rpm = 15_400.0;
        work.discs
            .iter_mut()
            .for_each(|disc| disc.max_rpm = 16_000.0);
    });
    assert_eq!(ids(&found.stops), ["rim-speed-over-limit"]);
}

/// Every job of the matrix, with its findings.
fn matrix(mut check: impl FnMut(&Job, &Findings)) {
    let mut job = job();
    job.dust.airflow_m3h = 300.0;
    let work = work();
    let kinds: Vec<StoneKind> = StoneKind::ALL.into_iter().chain([StoneKind::Own]).collect();
    for power in [Power::Mains, Power::Battery, Power::Air, Power::Engine] {
        for wet_rated in [true, false] {
            for protected in PROTECTIONS {
                (job.machine.power, job.machine.wet_rated) = (power, wet_rated);
                job.machine.protected = protected;
                for method in [DustMethod::Water, DustMethod::Shroud, DustMethod::None] {
                    for place in [Place::Outdoors, Place::Indoors] {
                        (job.dust.method, job.dust.place) = (method, place);
                        for &kind in &kinds {
                            set_stone(&mut job, kind);
                            for region in RegionCode::ALL {
                                job.region = region;
                                check(&job, &assess(&job, &work).1);
                            }
                        }
                    }
                }
            }
        }
    }
}

const PROTECTIONS: [Protection; 5] = [
    Protection::Rcd,
    Protection::Gfci,
    Protection::CentreTapped110V,
    Protection::Battery,
    Protection::None,
];

#[test]
fn no_dangerous_job_of_the_matrix_goes_without_its_stop() {
    let mut count = 0;
    matrix(|job, found| {
        let stopped = |id: &str| found.stops.iter().any(|stop| stop.id == id);
        let wet = job.dust.method == DustMethod::Water;
        let mains = job.machine.power == Power::Mains;
        let engineered = job.stone.kind == StoneKind::EngineeredStone;
        let banned = matches!(job.region, RegionCode::Au | RegionCode::Other);
        let unprotected = matches!(
            job.machine.protected,
            Protection::None | Protection::Battery
        );
        for (id, deserved) in [
            ("no-dust-control", job.dust.method == DustMethod::None),
            (
                "water-on-mains-unrated",
                wet && mains && !job.machine.wet_rated,
            ),
            ("water-not-rated", wet && !mains && !job.machine.wet_rated),
            ("supply-unprotected", wet && mains && unprotected),
            ("engineered-stone", engineered && banned),
            (
                "engine-indoors",
                job.machine.power == Power::Engine && job.dust.place == Place::Indoors,
            ),
        ] {
            assert_eq!(stopped(id), deserved, "{id}: {job:?}");
        }
        count += 1;
    });
    // power, wet rating, protection, method, place, stone, region
    assert_eq!(count, 4 * 2 * 5 * 3 * 2 * 16 * 11);
}

#[test]
fn no_mask_is_never_silently_fine() {
    for region in RegionCode::ALL {
        for place in [Place::Outdoors, Place::Indoors] {
            for kind in [MachineKind::AngleGrinder, MachineKind::HandSaw] {
                let mut job = job();
                (job.region, job.dust.place, job.machine.kind) = (region, place, kind);
                job.dust.respirator = Respirator::None;
                let found = assess(&job, &work()).1;
                let said: Vec<_> = [ids(&found.stops), ids(&found.cautions)].concat();
                assert!(said.contains(&"respirator-missing"), "{region:?} {place:?}");
            }
        }
    }
}

#[test]
fn hours_of_the_day_add_up_and_exactly_four_counts_as_short() {
    let answer = |minutes: f64, other: f64| {
        let (mut job, mut work) = (job(), work());
        american(&mut job, Place::Outdoors);
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
    let near = |a: f64, b: f64| assert!((a - b).abs() < 1e-9, "{a} {b}");
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
