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
#[path = "replay/tampered.rs"]
mod tampered;

use kerfwright::plan::Plan;
use serde_json::Value;

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
    serde_json::from_str(&kerfwright::render::json::plan(&plan)).expect("a plan is data")
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

/// A slot a fraction of a millimetre wider than the bit: one hole makes both corners of an end, where two were drilled
/// almost on each other.
#[test]
fn slot_as_wide_as_the_bit() {
    insides_hold(1097);
}

/// A hollow that no disc of the kit gets into: what stays on there was not told where it was thin, or where a strip
/// along an edge hung on to it.
#[test]
fn thin_waste_that_stays_is_told() {
    insides_hold(1685);
    insides_hold(3539);
}

/// Between two holes of one opening that just touch there is no rail: its stress, nothing by nothing, was no number.
#[test]
fn holes_that_touch_leave_no_rail() {
    insides_hold(8945);
    let plan = plan(&RandomJob::with_insides(8945).text()).to_string();
    assert!(plan.contains("\"rails\":"));
    assert!(!plan.contains("\"alone_mpa\":null"));
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

const BASIN: &str = include_str!("golden/basin-and-two-taps/job.toml");

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
