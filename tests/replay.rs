//! Replays plans from their JSON alone, as a machine that trusts nobody would; and checks that the
//! replay itself notices a plan that was tampered with.

// Counts and grid coordinates are far below what the casts can hold.
#![allow(
    clippy::cast_possible_truncation,
    clippy::cast_precision_loss,
    clippy::cast_sign_loss
)]

#[path = "replay/mod.rs"]
mod replay;

use kerfwright::plan::Plan;
use serde_json::{Value, json};

use replay::random_job::RandomJob;
use replay::{Wish, faults};

/// What a job file gets that says nothing about passes.
const USUAL: Wish = Wish {
    score: 2.0,
    step: 6.0,
    plunge_step: 10.0,
    through: 3.0,
    cusp: 0.5,
};

fn plan(text: &str) -> Value {
    let (job, _) = kerfwright::job::read(text).unwrap_or_else(|f| panic!("{f:#?}\n{text}"));
    let plan = Plan::of(&job).unwrap_or_else(|miss| panic!("{:?}\n{text}", miss.reasons));
    serde_json::to_value(&plan).expect("a plan is data")
}

fn holds(text: &str) {
    let faults = faults(&plan(text), &USUAL);
    assert!(faults.is_empty(), "{}\n{text}", faults.join("\n"));
}

/// A slab a little out of square with a fissure, a counter with a half-round end on its two
/// finished edges.
const COUNTER: &str = r#"
[stone]
kind = "gabbro"
thickness = [29.6, 30.4, 30.1]
[slab]
corners = [[0, 0], [2640, 3], [2636, 905], [0, 902]]
factory = ["AB", "DA"]
[[slab.flaw]]
what = "healed fissure"
line = [[2380, 905], [2500, 640]]
clear = 15
[top]
rectangle = [2150, 640]
round = { 2 = 320, 3 = 320 }
finish = { "4-1" = "factory", "1-2" = "polish", "2-3" = "polish", "3-4" = "ease" }
"#;

#[test]
fn counter_with_a_round_end() {
    holds(COUNTER);
}

#[test]
fn plain_rectangle_in_the_middle_of_a_slab() {
    holds(
        r#"
[stone]
kind = "marble"
thickness = 20
[slab]
rectangle = [1800, 900]
rough = ["AB", "BC", "CD", "DA"]
[top]
rectangle = [1200, 600]
"#,
    );
}

#[test]
fn whole_circle() {
    holds(
        r#"
[stone]
kind = "limestone"
thickness = 20
[slab]
rectangle = [1000, 1000]
rough = ["AB", "BC", "CD", "DA"]
[top]
rectangle = [800, 800]
round = { 1 = 400, 2 = 400, 3 = 400, 4 = 400 }
finish = { "1-2" = "polish", "2-3" = "polish", "3-4" = "polish", "4-1" = "polish" }
"#,
    );
}

#[test]
fn top_in_one_leg_of_a_slab_with_an_inside_corner() {
    holds(
        r#"
[stone]
kind = "granite"
thickness = 30
[slab]
corners = [[0, 0], [2400, 0], [2400, 620], [900, 620], [900, 1400], [0, 1400]]
[top]
rectangle = [1300, 560]
round = { 3 = 60 }
clip = { 2 = 40 }
finish = { "2-3" = "polish", "3-4" = "ease" }
"#,
    );
}

/// The slab is narrow on both sides of trim 3-4: its guide goes where there is stone.
#[test]
fn guide_wider_than_the_top() {
    let text = r#"
[stone]
kind = "gabbro"
thickness = 17
[slab]
rectangle = [800, 475]
rough = ["AB", "BC", "CD", "DA"]
[top]
rectangle = [450, 158]
round = { 1 = 33, 2 = 33 }
[place]
at = [150, 170]
turn = 3
[guide]
offset = 168
"#;
    holds(text);
    let plan = plan(text);
    let straight = replay::plane::list(&plan, "cuts").iter();
    assert_eq!(straight.filter(|c| c["kind"] == "straight").count(), 4);
}

/// Random jobs that once came out wrong.
fn seed_holds(seed: u64) {
    let job = RandomJob::of(seed);
    let faults = faults(&plan(&job.text()), &job.wish);
    assert!(faults.is_empty(), "{}\n{}", faults.join("\n"), job.text());
}

/// Half-round ends with different finishes on their two edges: the allowances were lost.
#[test]
fn half_round_end_with_two_finishes() {
    seed_holds(1);
    seed_holds(174);
}

/// A trim along an edge used up by two rounds cut into the curve's allowance.
#[test]
fn trim_beside_a_half_round_end() {
    seed_holds(217);
}

/// A corner arc that lies wholly inside the sawn faces of its edges: plunges ran into the top.
#[test]
fn arc_buried_between_its_edges() {
    seed_holds(202);
}

/// A rounding so slight that there is nothing to plunge into.
#[test]
fn rounding_within_the_kerf() {
    seed_holds(200);
}

/// Waste that hangs on below the face until the next curve is made.
#[test]
fn waste_that_hangs_on_lower_down() {
    seed_holds(3);
}

/// Parts that are separate at the face and one piece lower down.
#[test]
fn parts_that_hang_together() {
    seed_holds(45);
    seed_holds(169);
}

/// Slots that touch in a point: a part of the kerf was lost from the balance.
#[test]
fn slots_that_touch_in_a_point() {
    seed_holds(293);
}

/// A strip thinner than half a kerf beside a curve was left standing over the cusps.
#[test]
fn thin_strip_beside_a_curve() {
    seed_holds(19);
    seed_holds(323);
}

/// Random jobs with inside corners, hollow arcs and openings that once came out wrong.
fn insides_hold(seed: u64) {
    let job = RandomJob::with_insides(seed);
    let faults = faults(&plan(&job.text()), &job.wish);
    assert!(faults.is_empty(), "{}\n{}", faults.join("\n"), job.text());
}

/// Two edges in one line with different finishes: the trim of the first makes both.
#[test]
fn edges_in_line_with_two_finishes() {
    insides_hold(5);
    insides_hold(287);
}

/// A row of core holes drilled over the holes at its ends: the balance counted them twice.
#[test]
fn row_between_two_corner_holes() {
    insides_hold(26);
    insides_hold(280);
}

/// Two holes a tenth of a millimetre apart where one does it: the areas no longer balanced.
#[test]
fn nearly_the_bit_s_own_radius() {
    insides_hold(43);
}

/// No bit for the corners of an opening: nothing came free, and nobody said so.
#[test]
fn opening_without_a_bit() {
    insides_hold(58);
    insides_hold(62);
}

/// Where a hollow arc joins a straight edge, a corner of stone stood out farther than said.
#[test]
fn hollow_arc_between_two_stopped_cuts() {
    insides_hold(78);
}

/// A corner arc whose end the neighbour's smaller allowance takes off, on a top with an inside corner.
#[test]
fn arc_cut_short_beside_an_inside_corner() {
    insides_hold(42);
    insides_hold(274);
}

#[test]
fn jobs_of_the_golden_folders() {
    for text in [
        BASIN,
        include_str!("golden/l-top/job.toml"),
        include_str!("golden/round-a-pillar/job.toml"),
        include_str!("golden/disc-too-small/job.toml"),
    ] {
        holds(text);
    }
}

const BASIN: &str = include_str!("golden/basin-and-two-taps/job.toml");

fn basin_notices(what: &str, change: impl FnOnce(&mut Value)) {
    let mut plan = plan(BASIN);
    change(&mut plan);
    let said = faults(&plan, &USUAL).join("\n");
    assert!(said.contains(what), "no \"{what}\" in:\n{said}");
}

#[test]
fn notices_a_core_hole_in_the_top() {
    basin_notices("of the kept stone", |plan| {
        let holes = cut(plan, "core")["holes"].as_array_mut().expect("holes");
        shift(&mut holes[0]["at"], 0.2, 0.0);
    });
    basin_notices("is marked elsewhere", |plan| {
        let marks = cut(plan, "core")["set_out"]["centres"]
            .as_array_mut()
            .expect("marks");
        shift(&mut marks[0]["at"], 0.2, 0.0);
    });
}

#[test]
fn notices_two_core_holes_in_one_place() {
    basin_notices("two core holes 0.30 mm apart", |plan| {
        let holes = cut(plan, "core")["holes"].as_array_mut().expect("holes");
        let mut twin = holes[0].clone();
        shift(&mut twin["at"], 0.3, 0.0);
        holes.push(twin);
    });
}

fn last_straight(plan: &mut Value) -> &mut Value {
    let cuts = plan["cuts"].as_array_mut().expect("cuts");
    let found = cuts.iter_mut().rev().find(|c| c["kind"] == "straight");
    found.expect("a straight cut")
}

#[test]
fn notices_tails_that_are_not_told() {
    basin_notices("no cut frees W3", |plan| {
        last_straight(plan)["tails_out"] = json!([]);
    });
    basin_notices("a tail of", |plan| {
        last_straight(plan)["tail"] = json!(20.0);
    });
    basin_notices("beside its cut", |plan| {
        let left = last_straight(plan)["left_to_remove"]
            .as_array_mut()
            .expect("left");
        shift(&mut left[0]["at"], 3.0, 3.0);
    });
    basin_notices("of a tail are left", |plan| {
        let left = last_straight(plan)["left_to_remove"]
            .as_array_mut()
            .expect("left");
        left[0]["left"] = json!(5.0);
    });
}

#[test]
fn notices_a_drop_out_said_to_fall_by_itself() {
    basin_notices("does not come free", |plan| {
        let pieces = plan["pieces"].as_array_mut().expect("pieces");
        let drop_out = pieces.iter_mut().find(|p| p["freed"] == "hand");
        drop_out.expect("a drop-out")["freed"] = json!("saw");
    });
}

#[test]
fn notices_a_stop_overrun() {
    basin_notices("of the kept stone", |plan| {
        let strokes = last_straight(plan)["strokes"]
            .as_array_mut()
            .expect("strokes");
        for stroke in strokes {
            let heading = stroke["heading"].as_f64().expect("a number").to_radians();
            shift(&mut stroke["to"], 5.0 * heading.cos(), 5.0 * heading.sin());
        }
    });
}

#[test]
fn notices_a_hollow_plunge_set_too_far_out() {
    let mut plan = plan(include_str!("golden/round-a-pillar/job.toml"));
    let curve = cut(&mut plan, "curve");
    let pivot = curve["set_out"]["pivot"]["pivot"].clone();
    for stroke in curve["strokes"].as_array_mut().expect("strokes") {
        let out: Vec<f64> = (0..2)
            .map(|k| stroke["from"][k].as_f64().expect("x") - pivot[k].as_f64().expect("x"))
            .collect();
        let far = out[0].hypot(out[1]);
        for end in ["from", "to"] {
            shift(&mut stroke[end], 0.2 * out[0] / far, 0.2 * out[1] / far);
        }
    }
    let said = faults(&plan, &USUAL).join("\n");
    assert!(said.contains("of the kept stone"), "{said}");
    assert!(said.contains("not set tangent"), "{said}");
}

/// What the replay says of the counter's plan after somebody has changed it.
fn said(change: impl FnOnce(&mut Value)) -> String {
    let mut plan = plan(COUNTER);
    change(&mut plan);
    faults(&plan, &USUAL).join("\n")
}

fn notices(what: &str, change: impl FnOnce(&mut Value)) {
    let said = said(change);
    assert!(said.contains(what), "no \"{what}\" in:\n{said}");
}

fn cut<'a>(plan: &'a mut Value, kind: &str) -> &'a mut Value {
    let cuts = plan["cuts"].as_array_mut().expect("cuts");
    let found = cuts.iter_mut().find(|c| c["kind"] == kind);
    found.expect("a cut of that kind")
}

fn shift(point: &mut Value, x: f64, y: f64) {
    for (axis, by) in [x, y].into_iter().enumerate() {
        point[axis] = json!(point[axis].as_f64().expect("a number") + by);
    }
}

#[test]
fn notices_a_run_moved_towards_the_top() {
    notices("of the kept stone", |plan| {
        for stroke in cut(plan, "straight")["strokes"]
            .as_array_mut()
            .expect("strokes")
        {
            let heading = stroke["heading"].as_f64().expect("a number").to_radians();
            let far_end = (stroke["to"][0].as_f64(), stroke["from"][0].as_f64());
            assert!(far_end.0.is_some() && heading.is_finite());
            // Both directions of the line lie along the same trim: push it to the top's middle.
            let (x, y) = (1075.0 - far_end.1.expect("x"), 320.0);
            let side = (-heading.sin() * x + heading.cos() * y).signum() * 0.1;
            let (dx, dy) = (-heading.sin() * side, heading.cos() * side);
            shift(&mut stroke["from"], dx, dy);
            shift(&mut stroke["to"], dx, dy);
        }
    });
}

#[test]
fn notices_a_plunge_moved_into_the_top() {
    notices("of the kept stone", |plan| {
        let stroke = &mut cut(plan, "curve")["strokes"][4];
        let heading = stroke["heading"].as_f64().expect("a number").to_radians();
        // Inwards is to the left of the disc's direction about a pivot on the left.
        let (dx, dy) = (-heading.sin() * 0.1, heading.cos() * 0.1);
        shift(&mut stroke["from"], dx, dy);
        shift(&mut stroke["to"], dx, dy);
    });
}

#[test]
fn notices_missing_stations() {
    let said = said(|plan| {
        let cut = cut(plan, "curve");
        let middle = cut["set_out"]["pivot"]["stations"]
            .as_array()
            .expect("stations")
            .len()
            / 2;
        let gone = cut["set_out"]["pivot"]["stations"][middle].clone();
        cut["set_out"]["pivot"]["stations"][middle]["in_stone"] = json!(false);
        let angle = gone["angle"].as_f64().expect("a number") + 90.0;
        let strokes = cut["strokes"].as_array_mut().expect("strokes");
        strokes.retain(|s| {
            let heading = s["heading"].as_f64().expect("a number");
            ((heading - angle + 540.0).rem_euclid(360.0) - 180.0).abs() > 1e-6
        });
    });
    assert!(said.contains("stands out"), "{said}");
}

#[test]
fn notices_a_cut_not_right_through() {
    notices("the last pass is", |plan| {
        let cut = cut(plan, "curve");
        let deep = cut["passes"].as_array().expect("passes").len();
        cut["passes"].as_array_mut().expect("passes").pop();
        let strokes = cut["strokes"].as_array_mut().expect("strokes");
        strokes.retain(|s| s["pass"] != json!(deep));
    });
}

#[test]
fn notices_waste_that_is_still_held() {
    notices("does not come free at the face", |plan| {
        for kind in ["straight", "curve"] {
            let strokes = cut(plan, kind)["strokes"].as_array_mut().expect("strokes");
            strokes.truncate(strokes.len() / 2);
            strokes.retain(|s| s["depth"].as_f64() < Some(20.0));
        }
    });
}

#[test]
fn notices_a_run_that_stops_inside_the_stone() {
    notices("ends inside the stone", |plan| {
        let strokes = cut(plan, "straight")["strokes"]
            .as_array_mut()
            .expect("strokes");
        for stroke in strokes {
            for end in ["from", "to"] {
                let heading = stroke["heading"].as_f64().expect("a number").to_radians();
                let back = if end == "from" { 50.0 } else { -50.0 };
                shift(&mut stroke[end], back * heading.cos(), back * heading.sin());
            }
        }
    });
}

#[test]
fn notices_wrong_sums() {
    for (key, what) in [
        ("kerf_mm2", "does not close"),
        ("slab_mm2", "does not close"),
    ] {
        notices(what, |plan| {
            let sheet = &mut plan["balance_sheet"];
            sheet[key] = json!(sheet[key].as_f64().expect("a number") + 1.0);
        });
    }
    notices("does not come free at the face", |plan| {
        let area = plan["pieces"][0]["area_mm2"].as_f64().expect("a number");
        plan["pieces"][0]["area_mm2"] = json!(area * 1.01);
    });
    notices("does not come free at the face", |plan| {
        shift(&mut plan["pieces"][0]["balance"], 1.0, 0.0);
    });
    notices("outline is", |plan| {
        let line = &mut plan["pieces"][0]["outline"][0][0]["line"][0];
        shift(line, 3.0, 3.0);
    });
}

#[test]
fn notices_a_piece_freed_twice_or_never() {
    notices("a second time", |plan| {
        plan["cuts"][1]["frees"]
            .as_array_mut()
            .expect("frees")
            .push(json!("W1"));
    });
    notices("no cut frees W1", |plan| {
        plan["cuts"][0]["frees"] = json!([]);
    });
}

#[test]
fn notices_a_wrong_sawn_outline() {
    notices("not the top and its allowances", |plan| {
        plan["top"]["sawn_outline"] = plan["top"]["outline"].clone();
    });
}

#[test]
fn notices_steps_that_are_too_deep() {
    let plan = plan(COUNTER);
    let shy = Wish { step: 4.0, ..USUAL };
    assert!(faults(&plan, &shy).join("\n").contains("step 4"));
    let fine = Wish { cusp: 0.1, ..USUAL };
    assert!(faults(&plan, &fine).join("\n").contains("a cusp of"));
}
