//! The order of the cuts, the discs, and why.

use serde_json::Value;

use super::{list, near, number, plan};

const CORNER: &str = r#"
[stone]
kind = "granite"
thickness = 30
[slab]
rectangle = [2400, 1500]
rough = ["AB", "BC", "CD", "DA"]
[top]
corners = [[0, 0], [2100, 0], [2100, 620], [640, 620], [640, 1300], [0, 1300]]
round = { 2 = 120 }
[[top.cutout]]
what = "hob"
at = [1300, 310]
rectangle = [500, 400]
[[top.cutout]]
circle = 35
at = [300, 900]
[place]
at = [60, 60]
turn = 0
[[disc]]
name = "narrow"
diameter = 230
kerf = 1.9
obstruction = 80
[[disc]]
name = "small"
diameter = 125
kerf = 2.2
obstruction = 42
[[core_bit]]
diameter = 35
[circle_jig]
reach = [60, 900]
"#;

fn names(plan: &Value, of: impl Fn(&Value) -> bool) -> Vec<&str> {
    let cuts = list(plan, "cuts").iter().filter(|c| of(c));
    cuts.map(|c| c["disc"]["name"].as_str().unwrap_or("bit"))
        .collect()
}

#[test]
fn holes_then_trims_then_stopped_cuts_then_openings() {
    let plan = plan(CORNER);
    let rank = |cut: &Value| match (cut["cutout"].as_u64(), cut["kind"].as_str()) {
        (None, Some("core")) => 0,
        (None, Some("straight")) if cut["run_off"] == true => 1,
        (None, _) => 2,
        // A single hole before the opening that is sawn.
        (Some(2), _) => 3,
        (Some(_), _) => 4,
    };
    let ranks: Vec<i32> = list(&plan, "cuts").iter().map(rank).collect();
    let mut sorted = ranks.clone();
    sorted.sort_unstable();
    assert_eq!(ranks, sorted);
    assert!(ranks.starts_with(&[0, 1]) && ranks.ends_with(&[4]));
}

#[test]
fn the_narrow_disc_trims_and_the_small_one_stops() {
    let plan = plan(CORNER);
    let straight = |c: &Value| c["kind"] == "straight" && c["run_off"] == true;
    assert!(names(&plan, straight).iter().all(|n| *n == "narrow"));
    let stopped = |c: &Value| c["kind"] == "straight" && c["run_off"] == false;
    assert!(names(&plan, stopped).iter().all(|n| *n == "small"));
    // Curves keep the narrow disc on, and come before the change.
    let sawn = names(&plan, |c| c["kind"] != "core");
    let changes = sawn.windows(2).filter(|w| w[0] != w[1]).count();
    assert_eq!(changes, 1, "{sawn:?}");
}

#[test]
fn the_first_trim_says_what_it_shortens() {
    let plan = plan(CORNER);
    let first = list(&plan, "cuts")
        .iter()
        .find(|c| c["run_off"] == true)
        .expect("a trim");
    let said = &first["because"]["shortens"];
    let gained = number(said, "by_mm");
    // What the later cuts would be long in the whole slab, less what they are.
    let cuts = list(said, "cuts");
    let later = list(&plan, "cuts")
        .iter()
        .filter(|c| cuts.contains(&c["number"]));
    let whole: f64 = later.map(|c| across(&plan, c)).sum();
    assert!(
        !cuts.is_empty() && gained > 1.0 && gained < whole,
        "{first}"
    );
    // The strip that the first trim takes off the others' way, from the job's figures.
    let strip = match first["edge"].as_str() {
        Some("1-2" | "6-1") => 60.0,
        Some("2-3") => 2400.0 - 60.0 - 2100.0,
        Some("5-6") => 1500.0 - 60.0 - 1300.0,
        other => panic!("{other:?} runs off first"),
    };
    let strip = strip - number(first, "allowance");
    let each: f64 = cuts.iter().map(|_| strip).sum();
    near(gained, each, 1e-6);
}

/// The slab's side along a cut of this job, mm.
fn across(_: &Value, cut: &Value) -> f64 {
    let [a, b] = [0, 1].map(|i| &cut["set_out"]["guide"]["sawn"][i]);
    let level = (a[1].as_f64().expect("y") - b[1].as_f64().expect("y")).abs() < 1.0;
    if level { 2400.0 } else { 1500.0 }
}

#[test]
fn bearers_stand_along_both_sides() {
    let plan = plan(CORNER);
    for cut in list(&plan, "cuts")
        .iter()
        .filter(|c| c["kind"] == "straight")
    {
        let bearers = &cut["bearers"];
        let at: Vec<f64> = list(bearers, "at_mm")
            .iter()
            .filter_map(Value::as_f64)
            .collect();
        let length = number(cut, "length");
        assert!(
            !at.is_empty() && at.iter().all(|d| *d > 0.0 && *d < length),
            "{cut}"
        );
        assert!(at.windows(2).all(|w| w[1] - w[0] <= 450.0 + 1e-9));
        assert!(number(bearers, "kept_off_mm") > 0.0 && number(bearers, "waste_off_mm") > 0.0);
    }
}

#[test]
fn a_pillar_hollow_is_freed_at_the_underside() {
    let plan = plan(
        "[stone]\nkind = \"limestone\"\nthickness = 30\n[slab]\nrectangle = [1900, 760]\n\
         rough = [\"AB\", \"BC\", \"CD\", \"DA\"]\n[top]\nrectangle = [1600, 560]\n\
         scoop = { 3 = 260 }\n",
    );
    let curve = list(&plan, "cuts").last().expect("cuts");
    assert_eq!(
        (curve["kind"].as_str(), list(curve, "frees").len()),
        (Some("curve"), 1)
    );
    let name = &curve["frees"][0];
    let piece = list(&plan, "pieces")
        .iter()
        .find(|p| p["name"] == *name)
        .expect("named");
    assert_eq!(piece["freed"], "saw");
}
