//! Cuts that stop at inside corners, and openings: planned again from what really came out.

use kerfwright::repair::{Outcome, Repaired, ToDo};
use serde_json::Value;

use super::replay::plane::{list, number, word};
use super::replay::{Wish, faults};
use super::{after, plan};
use kerfwright::words::Writer;

pub(super) const USUAL: Wish = Wish {
    score: 2.0,
    step: 6.0,
    plunge_step: 10.0,
    through: 3.0,
    cusp: 0.5,
};

/// An L with an inside corner, on a slab of whose edges none is used. Its base stands 20 mm in on the
/// left and in front, 30 on the right of each leg, 25 behind the long leg, 20 behind the short one.
const L_TOP: &str = r#"
[stone]
kind = "granite"
thickness = 30
[slab]
rectangle = [2400, 1700]
rough = ["AB", "BC", "CD", "DA"]
[top]
corners = [[0, 0], [2000, 0], [2000, 600], [600, 600], [600, 1500], [0, 1500]]
finish = { "1-2" = "polish", "2-3" = "polish", "3-4" = "polish", "4-5" = "polish", "5-6" = "polish", "6-1" = "polish" }
[base]
corners = [[0, 0], [1950, 0], [1950, 555], [550, 555], [550, 1460], [0, 1460]]
at = [20, 20]
[place]
at = [150, 100]
[[core_bit]]
diameter = 35
"#;

/// The outer trims of the L.
pub(super) const OUTER: &str = "\"1-2\", \"2-3\", \"5-6\", \"6-1\"";

/// A counter with an opening whose rails are 110 mm in front and behind, 420 at the sides.
const SINK: &str = r#"
[stone]
kind = "granite"
thickness = 30
[slab]
rectangle = [1800, 900]
rough = ["AB", "BC", "CD", "DA"]
[top]
rectangle = [1400, 620]
finish = { "1-2" = "polish", "2-3" = "polish", "3-4" = "polish", "4-1" = "polish" }
[[top.cutout]]
what = "sink"
rectangle = [560, 400]
at = [700, 310]
[place]
at = [150, 120]
[[core_bit]]
diameter = 35
[as_cut]
done = ["1-2", "2-3", "3-4", "4-1"]
"#;

/// Plans what is left and replays it with another library's geometry.
pub(super) fn replayed(text: &str) -> Value {
    let plan = plan(text);
    let faults = faults(&plan, &USUAL);
    assert!(faults.is_empty(), "{}\n{text}", faults.join("\n"));
    assert!(
        !super::replay::rules::waste_stays(&plan),
        "waste hangs on\n{text}"
    );
    plan
}

pub(super) fn repaired(text: &str) -> Repaired {
    replayed(text);
    after(text).unwrap_or_else(|miss| panic!("{:?}\n{text}", miss.reasons))
}

pub(super) fn cuts(plan: &Value) -> Vec<String> {
    let each = list(plan, "cuts").iter();
    each.map(|c| format!("{} {}", word(c, "kind"), word(c, "edge")))
        .collect()
}

pub(super) fn l_top(as_cut: &str) -> String {
    format!("{L_TOP}[as_cut]\n{as_cut}")
}

pub(super) fn near(found: f64, wanted: f64) {
    assert!((found - wanted).abs() < 1e-6, "{found}, not {wanted}");
}

/// Nothing slipped: what is done is not planned again, what is not is, and the hole in the corner counts
/// as drilled.
#[test]
fn half_of_an_inside_corner_is_done() {
    let plan = replayed(&l_top(&format!("done = [{OUTER}, \"3-4\"]\n")));
    assert_eq!(plan["repair"]["outcome"], "as_planned");
    assert_eq!(cuts(&plan), ["straight 4-5"]);
    assert_eq!(list(&plan["slab"], "drilled").len(), 1);
    let all = replayed(&l_top(&format!("done = [{OUTER}, \"3-4\", \"4-5\"]\n")));
    assert!(cuts(&all).is_empty(), "{:?}", cuts(&all));
}

/// Edge 3-4 came out 3 mm short: 2 beyond its allowance of 1. The line moves in by 3, so that a whole
/// allowance is on it again.
#[test]
fn a_stopped_cut_that_came_out_short() {
    for done in [OUTER.to_owned(), format!("{OUTER}, \"4-5\"")] {
        let text = l_top(&format!(
            "done = [{done}]\n[[as_cut.edge]]\nedge = \"3-4\"\nshort = 3\n"
        ));
        let note = repaired(&text).note;
        assert_eq!(note.outcome, Outcome::Smaller);
        near(note.edges[2].moved_in, 3.0);
        // 1400 mm of edge 3-4 move in by 3.
        near(note.wanted.area_mm2 - note.now.area_mm2, 1400.0 * 3.0);
        near(note.now.size[0], 2000.0);
        near(note.now.size[1], 1500.0);
        // The edges beside it grow and shrink by as much.
        near(note.edges[1].length_now, 597.0);
        near(note.edges[3].length_now, 903.0);
        assert_eq!(note.edges[2].to_do, ToDo::Finish(1.0));
        let over: Vec<[f64; 2]> = note.overhangs.iter().map(|o| [o.wanted, o.now]).collect();
        let wanted = [
            [20.0, 20.0],
            [30.0, 30.0],
            [25.0, 22.0],
            [30.0, 30.0],
            [20.0, 20.0],
            [20.0, 20.0],
        ];
        for (found, wanted) in over.iter().zip(wanted) {
            near(found[0], wanted[0]);
            near(found[1], wanted[1]);
        }
    }
}

/// Within the allowance nothing is lost.
#[test]
fn a_stopped_cut_within_the_allowance() {
    let text = l_top(&format!(
        "done = [{OUTER}, \"4-5\"]\n[[as_cut.edge]]\nedge = \"3-4\"\nshort = 0.75\n"
    ));
    let note = repaired(&text).note;
    assert_eq!(note.outcome, Outcome::WithinAllowance);
    near(note.wanted.area_mm2, note.now.area_mm2);
    assert_eq!(note.edges[2].to_do, ToDo::Finish(0.25));
}

/// It came out too far: a little is ground off, a strip wide enough is sawn off.
#[test]
fn a_stopped_cut_that_came_out_long() {
    let over = |mm: f64| {
        l_top(&format!(
            "done = [{OUTER}, \"4-5\"]\n[[as_cut.edge]]\nedge = \"3-4\"\nover = {mm}\n"
        ))
    };
    let ground = replayed(&over(2.0));
    assert!(cuts(&ground).is_empty(), "{:?}", cuts(&ground));
    assert_eq!(
        number(&list(&ground["repair"], "edges")[2]["to_do"], "finish-mm"),
        3.0
    );
    let sawn = replayed(&over(12.0));
    assert_eq!(cuts(&sawn), ["straight 3-4"]);
    assert_eq!(
        number(&list(&sawn["repair"], "edges")[2], "moved_in_mm"),
        0.0
    );
}

/// A chip right in the inside corner: its notch is 14 mm long about a place 1 mm off the line of edge 4-5
/// and reaches 5 mm below the face of edge 3-4, and so 7 mm past the face of edge 4-5. Either is more
/// than is ground off, so both edges move in by the least strip, 10 mm, and are sawn again.
#[test]
fn a_chip_in_an_inside_corner() {
    let text = l_top(&format!(
        "done = [{OUTER}, \"3-4\", \"4-5\"]\n[[as_cut.chip]]\nat = [601, 600]\ndeep = 5\nacross = 14\n"
    ));
    let note = repaired(&text).note;
    near(note.edges[2].moved_in, 10.0);
    near(note.edges[3].moved_in, 10.0);
    near(
        note.wanted.area_mm2 - note.now.area_mm2,
        10.0 * (1410.0 + 910.0) - 100.0,
    );
    assert_eq!(note.outcome, Outcome::Smaller);
    assert_eq!(
        cuts(&plan(&text)),
        ["core 4", "straight 3-4", "straight 4-5"]
    );
}

pub(super) fn sink(cutout: &str) -> String {
    format!("{SINK}[[as_cut.cutout]]\ncutout = \"sink\"\n{cutout}")
}

/// One side 3 mm too large, all done: the opening is 563 long, the right rail 417.
#[test]
fn an_opening_too_large() {
    for done in ["\"all\"", "[\"1-2\"]", "[\"1-2\", \"3-4\", \"4-1\"]", "[]"] {
        let text = sink(&format!(
            "done = {done}\n[[as_cut.cutout.edge]]\nedge = \"2-3\"\nlarger = 3\n"
        ));
        let repaired = repaired(&text);
        let note = repaired.note;
        assert_eq!(note.outcome, Outcome::OtherOpening);
        let opening = &note.openings[0];
        near(opening.size_now[0], 563.0);
        near(opening.size_now[1], 400.0);
        near(opening.sides[1].moved_in, 3.0);
        near(note.wanted.area_mm2 - note.now.area_mm2, 3.0 * 400.0);
        let rails: Vec<(&str, f64, f64)> = opening
            .rails
            .iter()
            .map(|r| (r.beside.as_str(), r.wanted, r.now))
            .collect();
        assert_eq!(rails.len(), 1, "{rails:?}");
        assert_eq!(rails[0].0, "2-3");
        near(rails[0].1, 420.0);
        near(rails[0].2, 417.0);
        let told = repaired.findings.warnings.iter();
        let told: Vec<String> = told
            .map(|f| Writer::default().detail(&f.message).replace('\u{a0}', " "))
            .collect();
        assert_eq!(told.len(), 1);
        assert!(told[0].contains("563.0 × 400.0 mm"), "{}", told[0]);
        assert!(told[0].contains("3.0 mm farther"), "{}", told[0]);
    }
}

/// A rail of 110 mm becomes 85: the planner's own check says so.
#[test]
fn a_rail_that_gets_too_narrow() {
    let plan = replayed(&sink(
        "done = \"all\"\n[[as_cut.cutout.edge]]\nedge = \"1-2\"\nlarger = 25\n",
    ));
    let told = list(&plan, "warnings").iter();
    let rail = told.filter(|c| word(c, "id") == "rail-too-narrow");
    let rail: Vec<&str> = rail.map(|c| word(c, "detail")).collect();
    assert_eq!(rail.len(), 1);
    assert!(rail[0].contains("front rail of 85 mm"), "{}", rail[0]);
}

/// Too small: ground off when it is little, cut a second time when there is a strip to saw.
#[test]
fn an_opening_too_small() {
    let smaller = |mm: f64| {
        sink(&format!(
            "done = \"all\"\n[[as_cut.cutout.edge]]\nedge = \"2-3\"\nsmaller = {mm}\n"
        ))
    };
    let ground = replayed(&smaller(2.0));
    assert!(cuts(&ground).is_empty(), "{:?}", cuts(&ground));
    let side = &list(&list(&ground["repair"], "openings")[0], "sides")[1];
    assert_eq!(number(&side["to_do"], "finish-mm"), 2.0);
    let sawn = replayed(&smaller(15.0));
    assert_eq!(cuts(&sawn), ["straight 2-3"]);
    assert_eq!(sawn["repair"]["openings"][0]["size_now_mm"][0], 560.0);
}

/// Begun and nothing slipped: only what is missing is cut, no hole twice.
#[test]
fn an_opening_begun() {
    let plan = replayed(&sink("done = [\"1-2\", \"3-4\"]\n"));
    assert_eq!(cuts(&plan), ["straight 4-1", "straight 2-3"]);
    assert_eq!(list(&plan["repair"], "run_outs_first").len(), 2);
    let made = replayed(&sink("done = \"all\"\n"));
    assert!(cuts(&made).is_empty(), "{:?}", cuts(&made));
}

/// A chip in the middle of the front side: 2.5 deep it is ground out, 6 deep it is sawn out with the least
/// strip of 10 mm.
#[test]
fn a_chip_beside_an_opening() {
    let chip = |deep: f64| {
        sink(&format!(
            "done = \"all\"\n[[as_cut.chip]]\nat = [700, 110]\ndeep = {deep}\nacross = 12\n"
        ))
    };
    let shallow = repaired(&chip(2.5)).note;
    near(shallow.openings[0].sides[0].moved_in, 2.5);
    assert_eq!(shallow.openings[0].sides[0].to_do, ToDo::Finish(2.5));
    near(shallow.openings[0].rails[0].now, 107.5);
    let deep = repaired(&chip(6.0)).note;
    near(deep.openings[0].sides[0].moved_in, 10.0);
    assert_eq!(deep.openings[0].sides[0].to_do, ToDo::Cut);
    near(deep.openings[0].size_now[1], 410.0);
}
