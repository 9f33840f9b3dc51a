//! The replay notices a plan of a curve that was tampered with.

use serde_json::{Value, json};

use super::replay::faults;
use super::{BOW_FRONT, USUAL, plan};

fn notices(what: &str, change: impl FnOnce(&mut Value)) {
    let mut plan = plan(BOW_FRONT);
    change(&mut plan);
    let said = faults(&plan, &USUAL).join("\n");
    assert!(said.contains(what), "no \"{what}\" in:\n{said}");
}

fn cut<'a>(plan: &'a mut Value, kind: &str) -> &'a mut Value {
    let cuts = plan["cuts"].as_array_mut().expect("cuts");
    cuts.iter_mut()
        .find(|c| c["kind"] == kind)
        .expect("a cut of that kind")
}

fn add(number: &mut Value, by: f64) {
    *number = json!(number.as_f64().expect("a number") + by);
}

#[test]
fn an_ordinate_that_is_off() {
    notices("the arc is marked at", |plan| {
        let marks = &mut cut(plan, "curve")["set_out"]["ordinates"]["marks"];
        add(&mut marks[3]["touch"]["off_mm"], 0.1);
    });
    notices("the guide is marked at", |plan| {
        let marks = &mut cut(plan, "curve")["set_out"]["ordinates"]["marks"];
        add(&mut marks[5]["guide"][1]["along_mm"], 0.1);
    });
}

#[test]
fn a_rise_that_is_off() {
    notices("is a radius of", |plan| {
        add(
            &mut cut(plan, "curve")["set_out"]["ordinates"]["rise_mm"],
            0.2,
        );
    });
}

#[test]
fn a_relief_cut_too_near() {
    notices("of the kept stone, 5 promised", |plan| {
        for stroke in cut(plan, "relief")["strokes"]
            .as_array_mut()
            .expect("strokes")
        {
            for end in ["from", "to"] {
                add(&mut stroke[end][1], 0.5);
            }
        }
    });
}

#[test]
fn waste_too_heavy_to_hold() {
    notices("in one piece, 1 allowed", |plan| {
        plan["kit"]["waste_piece_kg"] = json!(1.0);
    });
}

#[test]
fn practice_in_the_top() {
    notices("mm from the top", |plan| {
        for stroke in plan["practice"]["cut"]["strokes"]
            .as_array_mut()
            .expect("strokes")
        {
            for end in ["from", "to"] {
                stroke[end] = json!([1100.0, stroke[end][0].as_f64().expect("x") / 10.0 + 300.0]);
            }
        }
    });
}

#[test]
fn practice_timed_by_a_wrong_face() {
    notices("the sawn face is", |plan| {
        add(&mut plan["practice"]["cut"]["face_mm2"], 30.0);
    });
}
