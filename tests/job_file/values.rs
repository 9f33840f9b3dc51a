//! Faults of single values, and of values that contradict each other.

use kerfwright::tables::stone::StoneKind;

use super::{LEAST, expect_fault, expect_fault_in, expect_fault_with, findings, job};

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
        &["is 25000 mm, most 10000 mm"],
        "25000",
    );
    expect_fault_with(
        "[2000, 640]",
        "[2000, 0.5]",
        "top.rectangle[1]",
        &["is 0.5 mm, least 30 mm"],
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
fn an_unclear_unit_does_not_set_off_other_faults() {
    let text = format!(
        "[job]\nunits = \"yard\"\n{}",
        LEAST.replace("= 30", "= 1.25")
    );
    expect_fault(&text, "job.units", &["is \"yard\"", "mm, in"], "units");
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
fn a_corridor_is_wider_than_a_hand() {
    expect_fault_in(
        "[[route.corner]]\nfrom = 10\nto = 900\nheight = 2000\n",
        "route.corner[0].from",
        &["is 10 mm, least 100 mm"],
        "from",
    );
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
