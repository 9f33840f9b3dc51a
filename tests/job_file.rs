//! The job file: every kind of fault, with its key, its words and its line; units; defaults; and
//! the examples.

use kerfwright::cli::report::{Colour, draw};
use kerfwright::diag::{Diagnostic, Severity};
use kerfwright::geom::Point;
use kerfwright::job::{
    Aid, CornerCut, DustMethod, EdgeState, Finish, FlawPlace, Job, PlaceHow, Power, Protection,
    Respirator, SupportPlace, VeinWish, read,
};
use kerfwright::tables::region::RegionCode;
use kerfwright::tables::stone::StoneKind;
use kerfwright::units::LengthUnit;
use proptest::prelude::*;

/// The least a job file can say.
const LEAST: &str = "\
[stone]
kind = \"granite\"
thickness = 30
[slab]
rectangle = [2400, 800]
[top]
rectangle = [2000, 640]
";

fn job(text: &str) -> Job {
    match read(text) {
        Ok((job, _)) => job,
        Err(faults) => panic!("{}", draw("job.toml", text, &faults, Colour::Plain)),
    }
}

fn findings(text: &str) -> Vec<Diagnostic> {
    match read(text) {
        Ok((_, remarks)) => remarks,
        Err(faults) => faults,
    }
}

/// The line of the text that a finding points at.
fn line_of<'t>(text: &'t str, finding: &Diagnostic) -> &'t str {
    let start = finding.span.map_or(0, |s| s.0);
    let from = text[..start].rfind('\n').map_or(0, |i| i + 1);
    text[from..].lines().next().unwrap_or("")
}

/// Asserts that a text has exactly one fault: its key, the words in its message and hint, and the
/// line it points at.
fn expect_fault(text: &str, key: &str, words: &[&str], line: &str) {
    let found = findings(text);
    let drawn = draw("job.toml", text, &found, Colour::Plain);
    assert_eq!(found.len(), 1, "one finding was expected\n{drawn}\n{text}");
    assert_eq!(found[0].severity, Severity::Fault, "{drawn}");
    assert_eq!(found[0].key, key, "{drawn}");
    let said = format!("{}\n{}", found[0].message, found[0].hint);
    for word in words {
        assert!(said.contains(word), "{word:?} is not in\n{said}");
    }
    assert!(
        line_of(text, &found[0]).contains(line),
        "points at the wrong line\n{drawn}"
    );
}

/// As [`expect_fault`], for the least job file with lines added at its end.
fn expect_fault_in(added: &str, key: &str, words: &[&str], line: &str) {
    expect_fault(&format!("{LEAST}{added}"), key, words, line);
}

/// As [`expect_fault`], for the least job file with one part replaced.
fn expect_fault_with(old: &str, new: &str, key: &str, words: &[&str], line: &str) {
    assert!(LEAST.contains(old));
    expect_fault(&LEAST.replace(old, new), key, words, line);
}

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
fn unknown_keys_name_the_nearest_known_one() {
    expect_fault_in(
        "[passes]\nscor = 2\n",
        "passes.scor",
        &["not a known key", "did you mean `score`?"],
        "scor = 2",
    );
    expect_fault_in(
        "[pases]\nscore = 2\n",
        "pases",
        &["not a known key", "did you mean `passes`?"],
        "[pases]",
    );
    expect_fault_in(
        "[machine]\nvibration = { a = 3, kk = 1 }\n",
        "machine.vibration.kk",
        &["did you mean `k`?"],
        "vibration",
    );
    expect_fault_in(
        "[[disc]]\ncolour = \"red\"\n",
        "disc[0].colour",
        &["known here", "obstruction"],
        "colour",
    );
    expect_fault_in(
        "[[disc]]\n[[disc]]\nname=\"b\"\ndiametre = 125\n",
        "disc[1].diametre",
        &["did you mean `diameter`?"],
        "diametre",
    );
}

#[test]
fn wrong_kinds_of_values_are_told_with_what_is_wanted() {
    let cases: [(&str, &str, &[&str], &str); 14] = [
        (
            "[passes]\nscore = true\n",
            "passes.score",
            &["is true or false", "a length"],
            "score",
        ),
        (
            "[passes]\nscore = \"two\"\n",
            "passes.score",
            &["is \"two\"", "640 mm"],
            "score",
        ),
        (
            "[passes]\nscore = \"2 furlong\"\n",
            "passes.score",
            &["unit is not known", "mm, cm, m, in or ft"],
            "score",
        ),
        (
            "[passes]\nscore = \"1/0 in\"\n",
            "passes.score",
            &["not a finite number"],
            "score",
        ),
        (
            "[machine]\nrpm = [1]\n",
            "machine.rpm",
            &["is a list", "a number"],
            "rpm",
        ),
        (
            "[machine]\nrpm = \"9800 km\"\n",
            "machine.rpm",
            &["is \"9800 km\"", "rpm"],
            "rpm",
        ),
        (
            "[machine]\nwet_rated = \"yes\"\n",
            "machine.wet_rated",
            &["is a text", "true or false"],
            "wet_rated",
        ),
        (
            "[job]\ntitle = 5\n",
            "job.title",
            &["is a number", "a text in quotes"],
            "title",
        ),
        (
            "[job]\ndate = \"2026-01-02\"\n",
            "job.date",
            &["is a text", "without quotes"],
            "date",
        ),
        (
            "[job]\ndate = 2026-01-02T10:00:00\n",
            "job.date",
            &["without a time"],
            "date",
        ),
        (
            "[lift]\npeople = 2.5\n",
            "lift.people",
            &["a whole number"],
            "people",
        ),
        (
            "[dust]\nwhere = \"outdors\"\n",
            "dust.where",
            &["which is not known", "did you mean \"outdoors\"?"],
            "where",
        ),
        (
            "[slab.flaw]\nline = 3\n",
            "slab.flaw",
            &["not a list of tables", "[[slab.flaw]]"],
            "slab.flaw",
        ),
        (
            "[[passes]]\nscore = 2\n",
            "passes",
            &["is not a table", "[passes]"],
            "passes",
        ),
    ];
    for (added, key, words, line) in cases {
        expect_fault_in(added, key, words, line);
    }
}

#[test]
fn numbers_out_of_range_are_told_with_the_limit() {
    let cases: [(&str, &str, &[&str]); 13] = [
        (
            "[passes]\nscore = 30\n",
            "passes.score",
            &["is 30 mm, most 20 mm", "bare number is in mm"],
        ),
        ("[slab.x]\n", "slab.x", &["not a known key"]),
        (
            "[place]\nleast_strip = 0\n",
            "place.least_strip",
            &["is 0 mm, least 1 mm"],
        ),
        (
            "[machine]\nrpm = 99000\n",
            "machine.rpm",
            &["is 99000 rpm, most 30000 rpm"],
        ),
        (
            "[machine]\nrpm = -1\n",
            "machine.rpm",
            &["is -1 rpm, least 500 rpm"],
        ),
        (
            "[machine]\nrpm = nan\n",
            "machine.rpm",
            &["not a finite number"],
        ),
        (
            "[machine]\nplate = inf\n",
            "machine.plate",
            &["not a finite number"],
        ),
        (
            "[machine]\nplate = -inf\n",
            "machine.plate",
            &["not a finite number"],
        ),
        (
            "[machine]\nnoise = 1e999\n",
            "machine.noise",
            &["not a finite number"],
        ),
        (
            "[dust]\nhours_today = 25\n",
            "dust.hours_today",
            &["is 25 h, most 24 h"],
        ),
        ("[lift]\npeople = 0\n", "lift.people", &["is 0, least 1"]),
        (
            "[lift]\npeople = 99999999999999999999\n",
            "lift.people",
            &["most 20"],
        ),
        (
            "[lift]\neach = \"900 kg\"\n",
            "lift.each",
            &["is 900 kg, most 80 kg"],
        ),
    ];
    for (added, key, words) in cases {
        let line = added.lines().last().unwrap_or("");
        expect_fault_in(added, key, words, line);
    }
    expect_fault_with(
        "= 30\n",
        "= 3\n",
        "stone.thickness",
        &["is 3 mm, least 5 mm"],
        "thickness",
    );
    expect_fault_with(
        "= 30\n",
        "= [30, 201]\n",
        "stone.thickness[1]",
        &["is 201 mm, most 200 mm"],
        "thickness",
    );
    expect_fault_with(
        "[2400, 800]",
        "[25000, 800]",
        "slab.rectangle[0]",
        &["is 25000 mm, most 20000 mm"],
        "25000",
    );
    expect_fault_with(
        "[2000, 640]",
        "[2000, 0.5]",
        "top.rectangle[1]",
        &["is 0.5 mm, least 1 mm"],
        "0.5",
    );
    expect_fault_with(
        "thickness",
        "density = 900\nthickness",
        "stone.density",
        &["is 900 kg/m³, least 1000 kg/m³"],
        "density",
    );
}

#[test]
fn required_sections_and_keys() {
    let found = findings("");
    let keys: Vec<&str> = found.iter().map(|f| f.key.as_str()).collect();
    assert_eq!(keys.len(), 3);
    assert!(
        ["slab", "stone", "top"].iter().all(|k| keys.contains(k)),
        "{keys:?}"
    );
    assert!(found.iter().all(|f| f.message.contains("is missing")));
    expect_fault_with(
        "kind = \"granite\"\n",
        "",
        "stone.kind",
        &["is missing", "granite"],
        "[stone]",
    );
    expect_fault_with(
        "thickness = 30\n",
        "",
        "stone.thickness",
        &["is missing"],
        "[stone]",
    );
    expect_fault_with(
        "rectangle = [2400, 800]\n",
        "",
        "slab.rectangle",
        &["is missing", "corners"],
        "[slab]",
    );
    expect_fault_in(
        "[[core_bit]]\n",
        "core_bit[0].diameter",
        &["is missing"],
        "core_bit",
    );
}

#[test]
fn keys_given_twice_and_texts_that_are_not_toml() {
    expect_fault_with(
        "thickness = 30",
        "thickness = 30\nthickness = 31",
        "",
        &["given twice"],
        "thickness = 31",
    );
    expect_fault_in("[slab]\ntape = 1\n", "", &["given twice"], "[slab]");
    let text = LEAST.replace("\"granite\"", "granite");
    let found = findings(&text);
    assert_eq!(found.len(), 1, "{found:?}");
    assert!(found[0].message.contains("cannot be read as TOML"));
    assert!(line_of(&text, &found[0]).contains("kind = granite"));
}

#[test]
fn faults_of_all_kinds_come_in_one_run_in_the_order_of_the_file() {
    let text = "\
[job]
units = \"mm\"
region = \"moon\"
[stone]
kind = \"granit\"
thickness = [30, nan]
[slab]
rectangle = [2400, 800, 3]
factory = [\"AB\", \"XY\"]
tape = \"1 lightyear\"
tape = 2
[top]
corners = [[0, 0], [0, 640], [2000, 640], [2000, 0]]
colour = \"black\"
[machine]
rpm = 99999
[[disc]]
diameter = 125
obstruction = 130
";
    let found = findings(text);
    let keys: Vec<&str> = found.iter().map(|f| f.key.as_str()).collect();
    let wanted = [
        "job.region",
        "stone.kind",
        "stone.thickness[1]",
        "slab.rectangle",
        "slab.tape",
        "",
        "top.corners",
        "top.colour",
        "machine.rpm",
        "disc[0].obstruction",
    ];
    assert_eq!(keys, wanted);
    let starts: Vec<_> = found.iter().map(|f| f.span).collect();
    assert!(starts.is_sorted());
    let drawn = draw("counter.toml", text, &found, Colour::Plain);
    assert!(drawn.ends_with("counter.toml: 10 faults\n"), "{drawn}");
    assert!(drawn.contains("counter.toml:5:8"), "{drawn}");
    assert!(!drawn.contains('\u{1b}'));
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
    assert_eq!(tape, Some("1 mm (0.039 in)"));

    let bare = text.replace("\"100 lb\"", "100");
    expect_fault(&bare, "stone.said", &["has no unit", "66 lb"], "said");
    let far = text.replace("[50,", "[800,");
    expect_fault(
        &far,
        "slab.rectangle[0]",
        &["is 800 in, most 787.402 in", "in inches"],
        "800",
    );
}

#[test]
fn an_unclear_unit_does_not_set_off_other_faults() {
    let text = format!(
        "[job]\nunits = \"inch\"\n{}",
        LEAST.replace("= 30", "= 1.25")
    );
    expect_fault(&text, "job.units", &["is \"inch\"", "mm, in"], "units");
}

#[test]
fn texts_are_one_printable_line() {
    expect_fault_in(
        "[job]\ntitle = \"a\\u0007b\"\n",
        "job.title",
        &["U+0007"],
        "title",
    );
    expect_fault_in(
        "[job]\nnote = \"a\\u202Eb\"\n",
        "job.note",
        &["U+202E"],
        "note",
    );
    let long = format!("[job]\nnote = \"{}\"\n", "x".repeat(301));
    expect_fault_in(&long, "job.note", &["has 301 characters, most 300"], "note");
}

#[test]
fn stones_of_ones_own_need_their_figures() {
    expect_fault_with(
        "\"granite\"",
        "\"granit\"",
        "stone.kind",
        &["not in the table", "did you mean \"granite\"?"],
        "kind",
    );
    expect_fault_with(
        "\"granite\"",
        "\"moonstone\"",
        "stone.kind",
        &["density, strength and silica"],
        "kind",
    );
    let own = "\"moonstone\"\ndensity = \"2.7 g/cm3\"\nstrength = \"1000 psi\"\nsilica = \"40 %\"";
    let job = job(&LEAST.replace("\"granite\"", own));
    assert_eq!(
        (job.stone.kind, job.stone.name.as_str()),
        (StoneKind::Own, "moonstone")
    );
    assert_eq!(
        (job.stone.density.low, job.stone.density.high),
        (2700.0, 2700.0)
    );
    assert!((job.stone.strength_mpa - 6.894_757_293).abs() < 1e-9);
    assert_eq!(job.stone.silica.likely, 0.4);
    assert!(job.assumed.iter().any(|a| a.key == "stone.safety_factor"));
    expect_fault_with(
        "thickness",
        "silica = 0.3\nthickness",
        "stone.silica",
        &["0.3 %", "30 %"],
        "silica",
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
fn figures_that_cannot_be() {
    let corners =
        |list: &str| LEAST.replace("rectangle = [2000, 640]", &format!("corners = {list}"));
    let cases: [(&str, &[&str]); 8] = [
        (
            "[[0, 0], [0, 640], [2000, 640], [2000, 0]]",
            &[
                "run clockwise",
                "corners = [[0, 0], [2000, 0], [2000, 640], [0, 640]]",
            ],
        ),
        (
            "[[0, 0], [2000, 640], [2000, 0], [0, 640]]",
            &["edges 1-2 and 3-4 touch or cross near (1000 mm, 320 mm)"],
        ),
        (
            "[[0, 0], [2000, 0], [2000, 0], [0, 640]]",
            &["corners 2 and 3 are the same point"],
        ),
        ("[[0, 0], [2000, 0], [1000, 0]]", &["touch or cross"]),
        ("[[0, 0], [2000, 0]]", &["has 2 entries, least 3"]),
        (
            "[[5, 0], [2000, 0], [2000, 640]]",
            &["puts corner 1 at (5 mm, 0 mm)", "origin"],
        ),
        (
            "[[0, 0], [2000, 0], [2000, 640], [1000, 640], [1000, 300], [0, 300]]",
            &["inside corner at 5", "stopped cuts", "does not plan"],
        ),
        (
            "[[0, 0], [2000, 0], [1000, 300], [2000, 640], [0, 640]]",
            &["inside corner at 3"],
        ),
    ];
    for (list, words) in cases {
        expect_fault(&corners(list), "top.corners", words, "corners");
    }
    expect_fault(
        &corners("[[0, 0], [2000, 0, 1], [0, 640]]"),
        "top.corners[1]",
        &["has 3 entries, it needs 2"],
        "corners",
    );
    expect_fault(
        &corners("[[0, 0], [2000, 30000], [0, 640]]"),
        "top.corners[1][1]",
        &["is 30000 mm, most 20000 mm"],
        "corners",
    );
    let many: Vec<String> = (0..65).map(|i| format!("[{i}, 0]")).collect();
    expect_fault(
        &corners(&format!("[{}]", many.join(","))),
        "top.corners",
        &["has 65 entries, most 64"],
        "corners",
    );
    let twice = LEAST.replace(
        "rectangle = [2400, 800]",
        "rectangle = [2400, 800]\ncorners = [[0, 0], [9, 0], [0, 9]]",
    );
    expect_fault(&twice, "slab.corners", &["described twice"], "corners");
}

#[test]
fn an_inside_corner_of_the_slab_is_fine() {
    let l_shape = "corners = [[0, 0], [2400, 0], [2400, 800], [1000, 800], [1000, 700], [0, 700]]";
    let job = job(&LEAST.replace("rectangle = [2400, 800]", l_shape));
    assert_eq!(job.slab.shape.count(), 6);
}

#[test]
fn corners_that_are_cut_must_fit_their_edges() {
    let top = |added: &str| format!("{LEAST}{added}\n");
    expect_fault(
        &top("round = { 2 = 350, 3 = 350 }"),
        "top.round.2",
        &[
            "corners 2 and 3 need 700 mm of edge 2-3, which is 640 mm: 60 mm too much",
            "take 320 mm or less each",
        ],
        "round",
    );
    expect_fault(
        &top("round = { 2 = 700 }"),
        "top.round.2",
        &[
            "corner 2 needs 700 mm of edge 2-3, which is 640 mm",
            "take 640 mm or less at corner 2",
        ],
        "round",
    );
    expect_fault(
        &top("round = { 2 = 480 }\nclip = { 3 = 240 }"),
        "top.round.2",
        &[
            "need 720 mm",
            "take 426.6 mm and 213.3 mm or less at corners 2 and 3",
        ],
        "round",
    );
    expect_fault(
        &top("round = { 7 = 10 }"),
        "top.round.7",
        &["no corner 7", "1 to 4"],
        "round",
    );
    expect_fault(
        &top("round = { 2 = 10 }\nclip = { 2 = 10 }"),
        "top.clip.2",
        &["treated already"],
        "clip",
    );
    expect_fault(
        &top("round = { 2 = 0 }"),
        "top.round.2",
        &["is 0 mm, least 0.1 mm"],
        "round",
    );
    expect_fault(
        &top("round = 20"),
        "top.round",
        &["is a number", "{ 2 = 320 }"],
        "round",
    );
    let straight = LEAST.replace(
        "rectangle = [2000, 640]",
        "corners = [[0, 0], [900, 0], [2000, 0], [0, 640]]\nround = { 2 = 9 }",
    );
    expect_fault(
        &straight,
        "top.round.2",
        &["straight through corner 2"],
        "round",
    );
    let both = findings(&top("round = { 1 = 400, 2 = 400, 3 = 400, 4 = 400 }"));
    assert_eq!(both.len(), 2, "edges 2-3 and 4-1 are both told: {both:?}");
    // A half circle is just what fits.
    let round = job(&top("round = { 2 = 320, 3 = 320 }"));
    assert_eq!(round.top.shape.corner_cuts()[1], CornerCut::Round(320.0));
    assert!(round.top.shape.edge_seg(1).is_none());
}

#[test]
fn edges_are_known_by_name() {
    let slab = |added: &str| LEAST.replace("[top]", &format!("{added}\n[top]"));
    let two = job(&slab("factory = [\"AB\", \"AD\"]\nrough = [\"CD\"]"));
    let states = [
        EdgeState::Factory,
        EdgeState::Sawn,
        EdgeState::Rough,
        EdgeState::Factory,
    ];
    assert_eq!(two.slab.edges, states);
    expect_fault(
        &slab("factory = [\"AC\"]"),
        "slab.factory[0]",
        &["no such edge", "AB, BC, CD and DA"],
        "factory",
    );
    expect_fault(
        &slab("factory = [\"AB\"]\nrough = [\"BA\"]"),
        "slab.rough[0]",
        &["a second time"],
        "rough",
    );
    let finish = |f: &str| format!("{LEAST}finish = {{ {f} }}\n");
    expect_fault(
        &finish("\"1-3\" = \"saw\""),
        "top.finish.1-3",
        &["no edge 1-3"],
        "finish",
    );
    expect_fault(
        &finish("\"1-2\" = \"polsh\""),
        "top.finish.1-2",
        &["did you mean \"polish\"?"],
        "finish",
    );
    expect_fault(
        &finish("\"1-2\" = \"saw\", \"2-1\" = \"ease\""),
        "top.finish.2-1",
        &["a finish already"],
        "finish",
    );
    let none = findings(&finish("\"1-2\" = \"factory\""));
    assert_eq!(none[0].key, "top.finish.1-2");
    assert!(none[0].message.contains("but the slab has none"));
}

#[test]
fn what_this_version_does_not_plan_is_refused_with_a_way_round() {
    let cases: [(&str, &str, &[&str]); 7] = [
        (
            "[[top.cutout]]\ncircle = 300\n",
            "top.cutout",
            &["a cutout", "does not plan"],
        ),
        (
            "scoop = { 2 = 30 }\n",
            "top.scoop",
            &["scooped corners", "round"],
        ),
        ("bow = { \"1-2\" = 25 }\n", "top.bow", &["bowed edges"]),
        (
            "[slab.bow]\nAB = 3\n",
            "slab.bow",
            &["bowed edges", "straight line"],
        ),
        (
            "[base]\nrectangle = [1, 1]\n",
            "base",
            &["a base outline", "[[support]]"],
        ),
        (
            "over_base = 25\n",
            "top.over_base",
            &["from its base", "overhang"],
        ),
        (
            "circle = 600\n",
            "top.circle",
            &["a whole circle", "half its side"],
        ),
    ];
    for (added, key, words) in cases {
        expect_fault_in(added, key, words, added.lines().next().unwrap_or(""));
    }
    let sides = LEAST.replace(
        "rectangle = [2400, 800]",
        "sides = [1, 2, 3, 4]\ndiagonals = { AC = 5 }",
    );
    let keys: Vec<String> = findings(&sides).into_iter().map(|f| f.key).collect();
    assert_eq!(keys, ["slab.sides", "slab.diagonals"]);
}

#[test]
fn what_is_read_but_not_used_is_remarked() {
    let text = format!(
        "{LEAST}[[core_bit]]\ndiameter = 35\n[[route.door]]\nwhat = \"gate\"\nwidth = 900\nheight = 2000\n"
    );
    let (_, remarks) = read(&text).expect("no fault");
    let keys: Vec<&str> = remarks.iter().map(|f| f.key.as_str()).collect();
    assert_eq!(keys, ["core_bit", "route.door"]);
    assert!(
        remarks
            .iter()
            .all(|r| r.severity == Severity::Remark && r.message.contains("not used"))
    );
    expect_fault_in(
        "[[route.corner]]\nfrom = 10\nto = 900\nheight = 2000\n",
        "route.corner[0].from",
        &["is 10 mm, least 100 mm"],
        "from",
    );
}

#[test]
fn flaws_and_supports_lie_on_the_stone() {
    let flaw = |place: &str| format!("{LEAST}[[slab.flaw]]\n{place}\n");
    let support = |place: &str| format!("{LEAST}[[support]]\n{place}\n");
    let cases: [(String, &str, &[&str]); 10] = [
        (
            flaw("spot = { at = [2500, 400], across = 20 }"),
            "slab.flaw[0].spot",
            &["wholly off the slab"],
        ),
        (
            flaw("line = [[2500, 0], [2600, 700]]"),
            "slab.flaw[0].line",
            &["wholly off the slab"],
        ),
        (
            flaw("area = [[2500, 0], [2600, 0], [2600, 9]]"),
            "slab.flaw[0].area",
            &["wholly off"],
        ),
        (
            flaw("line = [[10, 10], [10, 10]]"),
            "slab.flaw[0].line",
            &["same point twice"],
        ),
        (
            flaw("area = [[0, 0], [9, 9], [9, 0], [0, 9]]"),
            "slab.flaw[0].area",
            &["crosses itself near (4.5 mm, 4.5 mm)"],
        ),
        (
            flaw("spot = { at = [5, 5] }"),
            "slab.flaw[0].spot.across",
            &["is missing"],
        ),
        (
            flaw("what = \"?\""),
            "slab.flaw[0].line",
            &["one of `spot`, `line` and `area`; here are 0"],
        ),
        (
            support("line = [[3000, 0], [3000, 600]]"),
            "support[0].line",
            &["wholly outside the top"],
        ),
        (
            support("pad = { at = [1, 1], across = 0 }"),
            "support[0].pad.across",
            &["least 0.1 mm"],
        ),
        (
            support("what = \"?\""),
            "support[0].line",
            &["one of `line` and `pad`; here are 0"],
        ),
    ];
    for (text, key, words) in cases {
        expect_fault(&text, key, words, "");
    }
    let mut many = LEAST.to_owned();
    for _ in 0..201 {
        many.push_str("[[slab.flaw]]\nspot = { at = [9, 9], across = 2 }\n");
    }
    expect_fault(
        &many,
        "slab.flaw",
        &["has 201 entries, most 200"],
        "slab.flaw",
    );
    // A crack that runs off the slab at both ends still crosses it.
    let crossing = job(&flaw("line = [[1000, -50], [1200, 900]]"));
    assert!(matches!(&crossing.slab.flaws[0].place, FlawPlace::Line(p) if p.len() == 2));
    let on = job(&support(
        "pad = { at = [1000, 300], across = 80 }\nlimit = \"90 kg\"",
    ));
    assert!(matches!(on.supports[0].place, SupportPlace::Pad(_, 80.0)));
}

#[test]
fn values_that_contradict_each_other() {
    let cases: [(&str, &str, &[&str]); 10] = [
        ("[place]\nturn = 5\n", "place.turn", &["without a place"]),
        (
            "[machine]\npower = \"mains\"\nprotected = \"battery\"\n",
            "machine.protected",
            &["does not run on one"],
        ),
        ("vein = \"along\"\n", "top.vein", &["slab.vein"]),
        (
            "[guide]\nlength = 300\noverlap = 300\n",
            "guide.overlap",
            &["only 300 mm long"],
        ),
        (
            "[circle_jig]\nreach = [900, 150]\n",
            "circle_jig.reach",
            &["not in order"],
        ),
        (
            "[lift]\npeople = 3\neach = [\"20 kg\", \"25 kg\"]\n",
            "lift.each",
            &["has 2 entries for 3 people"],
        ),
        (
            "[lift]\npeople = 2\nstand = [[0, 0]]\n",
            "lift.stand",
            &["has 1 places for 2 people"],
        ),
        (
            "[[disc]]\nname = \"a\"\n[[disc]]\nname = \"a\"\n",
            "disc[1].name",
            &["another disc"],
        ),
        (
            "[[disc]]\nobstruction = 125\n",
            "disc[0].obstruction",
            &["nothing to cut with"],
        ),
        (
            "[[disc]]\nfor = \"curves\"\n",
            "disc",
            &["no disc is for straight cuts"],
        ),
    ];
    for (added, key, words) in cases {
        expect_fault_in(added, key, words, "");
    }
    let rounded = format!("{LEAST}round = {{ 2 = 30 }}\n[[disc]]\nfor = \"straights\"\n");
    assert!(
        findings(&rounded)[0]
            .message
            .contains("no disc is for curves")
    );
}

#[test]
fn a_text_beyond_a_mebibyte_is_refused() {
    let filler = "#".repeat(1024 * 1024 - LEAST.len());
    assert!(read(&format!("{LEAST}{filler}")).is_ok());
    let found = findings(&format!("{LEAST}{filler}#"));
    assert_eq!(found.len(), 1);
    assert!(
        found[0].message.contains("1048577 bytes, most 1048576"),
        "{}",
        found[0].message
    );
}

#[test]
fn the_tea_counter() {
    let (job, remarks) = read(include_str!("../examples/tea-counter.toml")).expect("no fault");
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
    let (job, remarks) = read(include_str!("../examples/washstand.toml")).expect("no fault");
    assert!(remarks.is_empty(), "{remarks:?}");
    assert_eq!((job.units, job.region), (LengthUnit::Inch, RegionCode::Us));
    assert_eq!(job.top.shape.corner_cuts()[0], CornerCut::Round(3.0 * 25.4));
    assert_eq!(job.top.vein, VeinWish::Along);
    assert_eq!(job.dust.respirator, Respirator::N95);
    assert!((job.passes.rate_cm2_per_min - 5.0 * 6.4516).abs() < 1e-9);
    assert_eq!(job.lift.each.len(), 2);
}

#[test]
fn the_garden_bench() {
    let (job, remarks) = read(include_str!("../examples/garden-bench.toml")).expect("no fault");
    assert!(remarks.is_empty(), "{remarks:?}");
    assert_eq!(job.stone.kind, StoneKind::Sandstone);
    assert_eq!(job.top.shape.corner_cuts()[2], CornerCut::Clip(60.0));
    assert!((job.machine.vibration.k - 3.0).abs() < 1e-12);
    assert_eq!(job.dust.hours_today, 0.5);
    assert_eq!(job.lift.stand.len(), 3);
}

#[test]
fn a_report_can_be_read_without_colour() {
    let text = LEAST.replace("[2400, 800]", "[25000, 800]");
    let found = findings(&text);
    let drawn = draw("counter.toml", &text, &found, Colour::Plain);
    let expected = "\
fault: slab.rectangle[0] is 25000 mm, most 20000 mm
 --> counter.toml:5:14
  |
5 | rectangle = [25000, 800]
  |              ^^^^^
  |
  = do: check the number and its unit: a bare number is in mm

counter.toml: 1 fault
";
    assert_eq!(drawn, expected);
    assert!(draw("counter.toml", &text, &found, Colour::Ansi).contains('\u{1b}'));
    assert_eq!(draw("counter.toml", &text, &[], Colour::Plain), "");
}

/// Pieces of job files, to be strung together at random.
fn pieces() -> impl Strategy<Value = String> {
    let words = prop::sample::select(vec![
        "[stone]\n",
        "[slab]\n",
        "[top]\n",
        "[[slab.flaw]]\n",
        "[[disc]]\n",
        "[machine]\n",
        "[lift]\n",
        "kind = ",
        "thickness = ",
        "rectangle = ",
        "corners = ",
        "round = ",
        "line = ",
        "at = ",
        "\"granite\"\n",
        "30\n",
        "-1e308\n",
        "nan\n",
        "[1, 2]\n",
        "[[0,0],[9,0],[9,9]]\n",
        "{ 2 = 3, 3 = 1e9 }\n",
        "{ at = [1, 2], across = \"1/3 in\" }\n",
        "weighed = ",
        "\"1 kg\"\n",
        "people = ",
        "each = ",
        "stand = ",
        "[job]\nunits = \"in\"\n",
        "\u{e9}\u{1F9F1}",
        "'''",
        "\r\n",
        "\"",
    ]);
    prop::collection::vec(words, 0..40).prop_map(|v| v.concat())
}

/// Reads and draws a text; neither may panic, and every span lies within the text.
fn survive(text: &str) {
    for finding in findings(text) {
        if let Some((start, end)) = finding.span {
            assert!(start <= end && end <= text.len());
        }
        draw("x.toml", text, &[finding], Colour::Plain);
    }
}

proptest! {
    #[test]
    fn no_text_panics(text in any::<String>()) {
        survive(&text);
    }

    #[test]
    fn no_mixture_of_pieces_panics(text in pieces()) {
        survive(&text);
    }

    #[test]
    fn no_numbers_panic(x in any::<f64>(), y in any::<f64>(), r in any::<f64>(), t in any::<i64>()) {
        let corners = format!("corners = [[0, 0], [{x:?}, 0], [{x:?}, {y:?}], [{t}, {y:?}]]\nround = {{ 2 = {r:?} }}");
        let text = LEAST.replace("rectangle = [2000, 640]", &corners).replace("= 30", &format!("= {t}"));
        survive(&text);
    }

    #[test]
    fn no_plausible_figure_panics(v in prop::collection::vec(-9..9_i32, 6), r in 0..9_i32, c in 0..9_i32) {
        let corners = format!(
            "corners = [[0, 0], [{}, {}], [{}, {}], [{}, {}]]\nround = {{ 2 = {r} }}\nclip = {{ 3 = {c} }}",
            v[0], v[1], v[2], v[3], v[4], v[5]
        );
        survive(&LEAST.replace("rectangle = [2000, 640]", &corners));
    }
}
