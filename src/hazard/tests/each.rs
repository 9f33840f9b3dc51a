//! Every stop and caution is raised by the job that deserves it, and by no other.

use crate::diag::{Finding, Findings};
use crate::hazard::sample::{job, set_stone, work};
use crate::hazard::{Work, assess};
use crate::job::{DustMethod, Job, Place, Power, Protection, Respirator};
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
const CAUTIONS: [(&str, Change, Change); 25] = [
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
        "silica-unknown",
        |job, _| job.stone.silica.high = 0.0,
        |job, _| set_stone(job, StoneKind::Soapstone),
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
