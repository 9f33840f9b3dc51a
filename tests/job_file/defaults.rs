//! Defaults, units and the examples: what a sound job file becomes.

use kerfwright::diag::Severity;
use kerfwright::geom::Point;
use kerfwright::job::{
    Aid, CornerCut, DustMethod, EdgeState, Finish, PlaceHow, Power, Protection, Respirator,
    VeinWish, read,
};
use kerfwright::tables::region::RegionCode;
use kerfwright::tables::respirator::MaskClass;
use kerfwright::tables::stone::StoneKind;
use kerfwright::units::LengthUnit;

use super::{LEAST, expect_fault, expect_fault_with, findings, job};

#[test]
fn the_least_job_file_has_every_default_and_lists_it() {
    let job = job(LEAST);
    assert_eq!(job.units, LengthUnit::Millimetre);
    assert_eq!(job.region, RegionCode::Other);
    assert_eq!(job.stone.kind, StoneKind::Granite);
    assert_eq!(job.slab.tape_error_mm, 1.0);
    assert_eq!(job.slab.edges, vec![EdgeState::Sawn; 4]);
    assert_eq!(job.top.finishes, vec![Finish::Saw; 4]);
    assert_eq!(job.top.allowances.for_finish(Finish::Polish), 1.0);
    assert_eq!(job.top.allowances.for_finish(Finish::Ease), 0.5);
    assert_eq!(job.place.how, PlaceHow::Search);
    assert_eq!(job.place.least_strip_mm, 10.0);
    assert!(!job.machine.wet_rated);
    assert_eq!(job.machine.protected, Protection::None);
    assert_eq!(
        (job.machine.vibration.a, job.machine.noise_db),
        (9.0, 105.0)
    );
    assert!((job.machine.vibration.k - 3.6).abs() < 1e-12);
    assert_eq!(job.discs.len(), 1);
    assert_eq!(job.discs[0].max_rpm, 12_200.0);
    assert_eq!((job.guide.offset_mm, job.guide.overlap_mm), (118.0, 150.0));
    assert_eq!(job.circle_jig.reach_mm, (150.0, 900.0));
    let p = job.passes;
    assert_eq!(
        (p.score_mm, p.step_mm, p.plunge_step_mm, p.through_mm),
        (2.0, 6.0, 10.0, 3.0)
    );
    assert_eq!(
        (p.cusp_mm, p.rate_cm2_per_min, p.far_end_mm),
        (0.5, 25.0, 60.0)
    );
    assert_eq!(
        (p.curve_factor, p.set_up_min, p.rate_is_guess),
        (3.0, 15.0, true)
    );
    assert_eq!(job.dust.method, DustMethod::None);
    assert_eq!(job.dust.respirator, Respirator::None);
    assert_eq!((job.lift.people, job.lift.each.len()), (1, 1));
    assert!(job.lift.each_is_guideline);

    let keys: Vec<&str> = job.assumed.iter().map(|a| a.key.as_str()).collect();
    for key in [
        "job.units",
        "job.region",
        "stone.density",
        "stone.strength",
        "stone.safety_factor",
        "stone.silica",
        "slab.factory",
        "slab.tape",
        "top.finish",
        "top.allowance.polish",
        "place.least_strip",
        "machine.rpm",
        "machine.power",
        "machine.wet_rated",
        "machine.protected",
        "machine.plate",
        "machine.vibration.a",
        "machine.vibration.k",
        "machine.noise",
        "disc[0]",
        "guide.length",
        "circle_jig.reach",
        "passes.rate",
        "passes.far_end",
        "dust.where",
        "dust.method",
        "dust.respirator",
        "lift.people",
        "lift.each",
        "lift.aid",
    ] {
        assert_eq!(
            keys.iter().filter(|k| **k == key).count(),
            1,
            "{key} in {keys:?}"
        );
    }
    assert!(
        job.assumed
            .iter()
            .all(|a| !a.value.is_empty() && !a.why.is_empty())
    );
    let step = job
        .assumed
        .iter()
        .find(|a| a.key == "passes.step")
        .map(|a| a.value.as_str());
    assert_eq!(step, Some("6 mm"));
}

#[test]
fn a_value_that_is_given_is_not_assumed() {
    let job = job(&format!("{LEAST}[passes]\nrate = 31\nstep = 5\n"));
    assert_eq!(
        (job.passes.rate_cm2_per_min, job.passes.step_mm),
        (31.0, 5.0)
    );
    assert!(!job.passes.rate_is_guess);
    let given = ["passes.rate", "passes.step"];
    assert!(job.assumed.iter().all(|a| !given.contains(&a.key.as_str())));
}

#[test]
fn soft_stone_is_guessed_to_saw_faster() {
    let soft = job(&LEAST.replace("granite", "marble"));
    assert_eq!(soft.passes.rate_cm2_per_min, 40.0);
}

#[test]
fn lengths_and_masses_carry_their_units() {
    let text = "\
[job]
units = \"in\"
[stone]
kind = \"marble\"
thickness = \"13/16 in\"
said = \"100 lb\"
[slab]
rectangle = [50, \"2.2 ft\"]
[top]
rectangle = [\"36 1/2\", \"51.5 cm\"]
[machine]
plate = 0.25
[dust]
method = \"shroud\"
airflow = \"100 cfm\"
";
    let job = job(text);
    assert_eq!(job.units, LengthUnit::Inch);
    assert_eq!(job.stone.thickness.mean, 0.8125 * 25.4);
    let slab = job.slab.shape.corners()[2];
    assert!(slab.distance(Point::new(1270.0, 2.2 * 304.8)) < 1e-9);
    let top = job.top.shape.corners()[2];
    assert!(top.distance(Point::new(36.5 * 25.4, 515.0)) < 1e-9);
    assert_eq!(job.machine.plate_mm, 6.35);
    assert_eq!(job.stone.said.map(|m| m.pounds().round()), Some(100.0));
    // 100 cfm: 100 × 60 × 0.3048³ m³/h.
    assert!((job.dust.airflow_m3h - 6000.0 * 0.3048_f64.powi(3)).abs() < 1e-6);
    let tape = job
        .assumed
        .iter()
        .find(|a| a.key == "slab.tape")
        .map(|a| a.value.as_str());
    assert_eq!(tape, Some("0.039 in"));

    let bare = text.replace("\"100 lb\"", "100");
    expect_fault(&bare, "stone.said", &["has no unit", "66 lb"], "said");
    let far = text.replace("[50,", "[800,");
    expect_fault(
        &far,
        "slab.rectangle[0]",
        &["is 800 in, most 393.701 in", "in millimetres?", "31.496"],
        "800",
    );
}

#[test]
fn a_weighed_slab_gives_its_own_density() {
    let job = job(&LEAST.replace("= 30", "= [29, 31]\nweighed = \"155.52 kg\""));
    assert_eq!(
        (job.stone.thickness.least, job.stone.thickness.most),
        (29.0, 31.0)
    );
    // 2.4 m × 0.8 m × 0.030 m = 0.0576 m³; 155.52 kg / 0.0576 m³ = 2700 kg/m³.
    let density = job.stone.density;
    assert!((density.likely - 2700.0).abs() < 1e-9);
    assert_eq!(
        (density.low, density.high),
        (density.likely, density.likely)
    );
    assert!(job.assumed.iter().all(|a| a.key != "stone.density"));

    expect_fault_with(
        "= 30",
        "= 30\nweighed = \"900 kg\"",
        "stone.weighed",
        &["gives a density of 15625 kg/m³, most 4000"],
        "weighed",
    );
    let odd = LEAST.replace("= 30", "= 30\nweighed = \"115.2 kg\"");
    let remarks = findings(&odd);
    assert_eq!(remarks.len(), 1);
    assert_eq!(remarks[0].severity, Severity::Remark);
    assert!(
        remarks[0].message.contains("2000 kg/m³"),
        "{}",
        remarks[0].message
    );
}

#[test]
fn the_tea_counter() {
    let (job, remarks) = read(include_str!("../../examples/tea-counter.toml")).expect("no fault");
    assert!(remarks.is_empty());
    assert_eq!(
        (job.region, job.heading.date.as_str()),
        (RegionCode::Eu, "2026-10-17")
    );
    assert_eq!(job.top.finishes[3], Finish::Factory);
    // A rectangle less two corners of r²(1 − π/4).
    let area = 2150.0 * 640.0 - 2.0 * 320.0_f64.powi(2) * (1.0 - std::f64::consts::FRAC_PI_4);
    assert!((job.top.shape.outline().area() - area).abs() < 1e-6);
    assert_eq!(
        (job.machine.power, job.machine.protected),
        (Power::Battery, Protection::Battery)
    );
    assert_eq!((job.lift.people, job.lift.aid), (4, Aid::Trolley));
    assert!(job.passes.rate_is_guess && job.lift.each_is_guideline);
}

#[test]
fn the_washstand() {
    let (job, remarks) = read(include_str!("../../examples/washstand.toml")).expect("no fault");
    assert!(remarks.is_empty(), "{remarks:?}");
    assert_eq!((job.units, job.region), (LengthUnit::Inch, RegionCode::Us));
    assert_eq!(job.top.shape.corner_cuts()[0], CornerCut::Round(3.0 * 25.4));
    assert_eq!(job.top.vein, VeinWish::Along);
    assert_eq!(job.dust.respirator, Respirator::Mask(MaskClass::N95));
    assert!((job.passes.rate_cm2_per_min - 5.0 * 6.4516).abs() < 1e-9);
    assert_eq!(job.lift.each.len(), 2);
}

#[test]
fn the_garden_bench() {
    let (job, remarks) = read(include_str!("../../examples/garden-bench.toml")).expect("no fault");
    assert_eq!(remarks.len(), 1, "{remarks:?}");
    assert!(
        remarks[0]
            .message
            .contains("corner B 7 mm over the 607 mm of BC")
    );
    assert_eq!(job.stone.kind, StoneKind::Sandstone);
    assert_eq!(job.top.shape.corner_cuts()[2], CornerCut::Clip(60.0));
    assert!((job.machine.vibration.k - 3.0).abs() < 1e-12);
    assert_eq!(job.dust.hours_today, 0.5);
    assert_eq!(job.lift.stand.len(), 3);
}
