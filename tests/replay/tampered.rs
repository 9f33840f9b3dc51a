//! The replay notices a plan that was tampered with.

use serde_json::{Value, json};

use super::replay::{Wish, faults};
use super::{BASIN, COUNTER, USUAL, plan};

fn basin_notices(what: &str, change: impl FnOnce(&mut Value)) {
    noticed_in(BASIN, what, change);
}

/// A top with an inside corner: the run-outs of the cuts that meet there are taken out by hand.
fn corner_notices(what: &str, change: impl FnOnce(&mut Value)) {
    noticed_in(include_str!("../golden/l-top/job.toml"), what, change);
}

fn noticed_in(job: &str, what: &str, change: impl FnOnce(&mut Value)) {
    let mut plan = plan(job);
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
fn notices_run_outs_that_are_not_told() {
    corner_notices("no cut frees W5", |plan| {
        last_straight(plan)["run_outs_removed"] = json!([]);
    });
    corner_notices("a run-out of", |plan| {
        last_straight(plan)["tail"] = json!(20.0);
    });
    corner_notices("beside its cut", |plan| {
        let left = last_straight(plan)["left_to_remove"]
            .as_array_mut()
            .expect("left");
        shift(&mut left[0]["at"], 3.0, 3.0);
    });
    corner_notices("of a run-out are left", |plan| {
        let left = last_straight(plan)["left_to_remove"]
            .as_array_mut()
            .expect("left");
        left[0]["left_mm"] = json!(5.0);
    });
}

#[test]
fn notices_a_drop_out_said_to_fall_by_itself() {
    corner_notices("does not come free", |plan| {
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
    let mut plan = plan(include_str!("../golden/round-a-pillar/job.toml"));
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
        let angle = gone["angle_deg"].as_f64().expect("a number") + 90.0;
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
