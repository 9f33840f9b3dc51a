//! Arcs with one centre and one radius are one curve: one pivot, one arm, one row of stations.

use kerfwright::cut;
use serde_json::Value;

use super::{list, near, number, plan};

/// The curves of a plan with the set-out about their pivots.
fn curves(plan: &Value) -> Vec<(&Value, &Value)> {
    let curves = list(plan, "cuts").iter().filter(|c| c["kind"] == "curve");
    curves.map(|c| (c, &c["set_out"]["pivot"])).collect()
}

/// Two corners rounded by half the depth: an arc of r 321 as sawn, from the touching edge 1-2 to where the face
/// of 3-4, sawn half a millimetre nearer, crosses it, at acos(320.5/321) = 3.198° before 180°; and at the other
/// end as much beside the slab's own edge at 320: acos(320/321) = 4.523°. With a ridge of 0.5 mm the step is at
/// most 2·acos(321/321.5) = 6.391° (the underside allows 6.822°): 27 steps. Worked from the formulas of the
/// plunges.
#[test]
fn a_half_round_end_is_one_curve() {
    let text = std::fs::read_to_string("examples/tea-counter.toml").expect("the example");
    let plan = plan(&text);
    let kinds: Vec<&str> = list(&plan, "cuts")
        .iter()
        .filter_map(|c| c["kind"].as_str())
        .collect();
    assert_eq!(kinds, ["straight", "straight", "curve"]);
    let [(curve, pivot)] = curves(&plan)[..] else {
        panic!("one curve");
    };
    assert_eq!(curve["edge"], "2, 3");
    let stations = list(pivot, "stations");
    assert_eq!(stations.len(), 28);
    let step = number(pivot, "step_deg");
    assert!(step <= 6.391, "{step}");
    let round = number(&stations[27], "angle_deg") - number(&stations[0], "angle_deg");
    near(round, 180.0 - 3.198 - 4.523, 2e-3);
    near(round, 27.0 * step, 1e-9);
}

/// A round top has no corners: one curve, and no station twice.
#[test]
fn a_round_top_is_one_curve_all_round() {
    let text = r#"
[stone]
kind = "granite"
thickness = 30
[slab]
rectangle = [1200, 1200]
[top]
circle = 900
"#;
    let plan = plan(text);
    let [(curve, pivot)] = curves(&plan)[..] else {
        panic!("one curve");
    };
    assert_eq!(curve["edge"], "all round");
    let stations = list(pivot, "stations");
    let (count, step) = (
        f64::from(u32::try_from(stations.len()).expect("few")),
        number(pivot, "step_deg"),
    );
    near(count * step, 360.0, 1e-9);
    near(
        number(curve, "length"),
        std::f64::consts::TAU * number(pivot, "sawn_radius_mm"),
        1e-6,
    );
    assert!(
        list(&plan, "stops")
            .iter()
            .all(|s| s["id"] != "waste-not-freed")
    );
}

/// A circle cut out with the disc has the circle's name, and what it is called in the plan of its faces too.
#[test]
fn a_round_opening_is_named_as_a_circle() {
    let text = r#"
[stone]
kind = "granite"
thickness = 20
[slab]
rectangle = [1800, 800]
[top]
rectangle = [1500, 620]
[[top.cutout]]
what = "wash bowl"
circle = 420
at = [700, 310]
"#;
    let plan = plan(text);
    let [(curve, pivot)] = curves(&plan)[..] else {
        panic!("one curve");
    };
    assert_eq!(curve["edge"], cut::kept::ALL_ROUND);
    assert!(list(pivot, "pivot_ties").len() >= 2, "{pivot}");
}
