//! Core holes: which bit, how many, what they leave.

use kerfwright::cut::corner::{GROUND_MM, ridge_between};
use serde_json::Value;

use super::{list, near, number, plan, told};

/// A counter with one opening; `more` is the opening's shape and the core bits.
fn counter(opening: &str, bits: &[f64]) -> Value {
    let bits: Vec<String> = bits
        .iter()
        .map(|d| format!("[[core_bit]]\ndiameter = {d}\n"))
        .collect();
    let bits = bits.concat();
    plan(&format!(
        "[stone]\nkind = \"granite\"\nthickness = 30\n[slab]\nrectangle = [2200, 900]\n\
         rough = [\"AB\", \"BC\", \"CD\", \"DA\"]\n[top]\nrectangle = [1900, 640]\n\
         [[top.cutout]]\nat = [900, 320]\n{opening}\n[[disc]]\ndiameter = 125\nkerf = 2.2\n\
         obstruction = 42\n[machine]\nplate = 6\n{bits}"
    ))
}

fn cores(plan: &Value) -> Vec<&Value> {
    list(plan, "cuts")
        .iter()
        .filter(|c| c["kind"] == "core")
        .collect()
}

/// The cuts of holes that make a corner or a side, without those that part the piece at the underside.
fn of_boundary(plan: &Value) -> Vec<&Value> {
    let mut own = cores(plan);
    own.retain(|c| c["because"] != "parts_underside");
    own
}

const BASIN: &str = "rectangle = [500, 340]\nround = { 1 = 17.5, 2 = 17.5, 3 = 17.5, 4 = 17.5 }";

#[test]
fn a_tap_hole_is_one_core_hole_of_its_size() {
    let plan = counter("circle = 35\nfinish = \"polish\"", &[20.0, 35.0, 68.0]);
    let cores = cores(&plan);
    assert_eq!((cores.len(), list(&plan, "core_holes").len()), (1, 1));
    assert_eq!(number(&cores[0]["bit"], "diameter"), 35.0);
    assert_eq!(number(cores[0], "allowance"), 0.0);
}

#[test]
fn a_round_opening_too_wide_for_the_bits_is_plunged() {
    let plan = counter("circle = 380", &[35.0]);
    let curve = list(&plan, "cuts")
        .iter()
        .find(|c| c["kind"] == "curve")
        .expect("a curve");
    let said = &curve["set_out"]["pivot"]["inside"];
    near(
        number(said, "sagitta_mm"),
        190.0 - number(said, "face_at_mm"),
        1e-9,
    );
    assert_eq!(
        list(curve, "frees").len(),
        1,
        "the drop-out comes free at the underside"
    );
    assert_eq!(number(curve, "tail"), 0.0);
}

#[test]
fn the_corner_takes_the_smallest_bit_that_is_large_enough() {
    let plan = counter(BASIN, &[68.0, 20.0, 40.0, 35.0]);
    assert_eq!(number(&cores(&plan)[0]["bit"], "diameter"), 35.0);
    assert_eq!(cores(&plan)[0]["holes"].as_array().map(Vec::len), Some(4));
    assert!(told(&plan, "inside-corner-radius").is_empty());
}

#[test]
fn a_corner_asked_for_sharper_is_told() {
    let sharp = counter("rectangle = [500, 340]", &[35.0]);
    let said = told(&sharp, "inside-corner-radius").join("\n");
    assert!(said.contains("a radius of 17.5 mm"), "{said}");
    let small = counter("rectangle = [500, 340]", &[12.0]);
    let said = told(&small, "inside-corner-radius").join("\n");
    assert!(
        said.contains("a radius of 6.0 mm") && said.contains("less than 10 mm"),
        "{said}"
    );
}

#[test]
fn a_rounder_corner_than_any_bit_is_a_chain_of_holes() {
    let wide = "rectangle = [500, 340]\nround = { 1 = 50, 2 = 50, 3 = 50, 4 = 50 }";
    let plan = counter(wide, &[35.0]);
    let holes = list(cores(&plan)[0], "holes");
    assert!(
        holes.len() > 8 && holes.len().is_multiple_of(4),
        "{}",
        holes.len()
    );
    let left = list(cores(&plan)[0], "left_to_remove");
    let most = left.iter().map(|l| number(l, "length")).fold(0.0, f64::max);
    assert!(most > 0.0 && most <= GROUND_MM + 1e-9, "{most}");
}

/// The ridge between two holes inside an arc, found by walking out along the line between them until
/// both holes have ended.
#[test]
fn ridge_between_two_holes() {
    for (arc, bit, step) in [
        (50.0, 17.5, 0.4),
        (190.0, 34.0, 0.2),
        (20.0, 17.5, 1.0),
        (60.0, 10.0, 0.1),
    ] {
        let off: f64 = arc - bit;
        let (x, y) = (off * f64::cos(step / 2.0), off * f64::sin(step / 2.0));
        let mut out = x;
        while (out - x).hypot(y) <= bit {
            out += 1e-5;
        }
        near(ridge_between(arc, bit, step), arc - out, 1e-4);
    }
}

#[test]
fn what_no_tool_can_do_is_a_stop_with_numbers() {
    let none = counter("rectangle = [500, 340]", &[]);
    let said = told(&none, "inside-corner-needs-core-bit").join("\n");
    assert!(said.contains("at least 20 mm across"), "{said}");
    // c(0) of a 125 disc 33 deep is 55.1: 110 mm long in the face.
    let tight = counter("circle = 90", &[]);
    let said = told(&tight, "no-disc-for-hollow").join("\n");
    assert!(said.contains("110 mm long"), "{said}");
    assert!(said.contains("A core bit of 90 mm"), "{said}");
    // 2·(33 + 6) + 42 = 120 is the smallest that gets through; 2·√(120·33 − 33²) = 107.2, never told shorter.
    assert!(said.contains("120 mm across, cuts 108 mm long"), "{said}");
}

#[test]
fn a_side_too_short_for_the_disc_is_a_row_of_holes() {
    let narrow = "rectangle = [500, 90]\nround = { 1 = 17.5, 2 = 17.5, 3 = 17.5, 4 = 17.5 }";
    let plan = counter(narrow, &[35.0]);
    let rows: Vec<&Value> = of_boundary(&plan).into_iter().skip(1).collect();
    assert_eq!(rows.len(), 2, "one for each short side");
    assert!(
        list(&plan, "stops")
            .iter()
            .all(|s| s["id"] != "waste-not-freed")
    );
    let bare = counter("rectangle = [500, 90]", &[]);
    let stops = list(&bare, "stops");
    let wanting = stops
        .iter()
        .filter(|s| s["id"] == "inside-corner-needs-core-bit");
    let titles: Vec<&str> = wanting.filter_map(|s| s["title"].as_str()).collect();
    assert_eq!(titles.len(), 1, "one missing bit is one stop: {titles:?}");
    for place in [
        "corner 1", "corner 2", "corner 3", "corner 4", "edge 2-3", "edge 4-1",
    ] {
        assert!(
            titles[0].contains(&format!("{place} of cutout 1")),
            "{titles:?}"
        );
    }
    let rounded = "rectangle = [500, 210]\nround = { 1 = 80, 2 = 80, 3 = 80, 4 = 80 }";
    let said = told(&counter(rounded, &[]), "stopped-cut-too-short").join("\n");
    assert!(said.contains("50 mm between two stops"), "{said}");
}

#[test]
fn run_outs_are_what_the_round_disc_leaves() {
    let plan = counter(BASIN, &[35.0]);
    let straight: Vec<&Value> = list(&plan, "cuts")
        .iter()
        .filter(|c| c["cutout"] == 1 && c["kind"] == "straight")
        .collect();
    assert_eq!(straight.len(), 4);
    let c = |up: f64| (62.5_f64.powi(2) - (62.5 - up).powi(2)).sqrt();
    for cut in &straight {
        near(number(cut, "tail"), c(33.0) - c(3.0), 1e-9);
        for left in list(cut, "left_to_remove") {
            // The hole reaches √(17.5² − 16.4²) back along the middle of the kerf, the one that parts the piece at
            // the underside as far to both sides, but for 2 mm that lie in the cut there.
            let hole = (17.5_f64.powi(2) - 16.4_f64.powi(2)).sqrt();
            near(
                number(left, "left_mm"),
                number(cut, "tail") - hole - (2.0 * hole - 2.0),
                1e-6,
            );
            assert_eq!(left["by"], "from_core_hole");
        }
    }
    let last = straight[3];
    assert_eq!(list(last, "run_outs_removed").len(), 4);
    let piece = list(&plan, "pieces").last().expect("the drop-out");
    assert_eq!(piece["freed"], "saw", "parted by the holes beside the ends");
}

/// A basin that one person would call ordinary: a hole in each corner, and beside each end of each cut one that parts
/// the piece at the underside, timed like the others.
#[test]
fn an_openings_piece_is_parted_at_the_underside() {
    let plan = counter(BASIN, &[35.0]);
    let [corners, ends] = &cores(&plan)[..] else {
        panic!("two cuts of holes: {:?}", cores(&plan));
    };
    assert_eq!(
        (list(corners, "holes").len(), list(ends, "holes").len()),
        (4, 8)
    );
    assert_eq!(ends["because"], "parts_underside");
    near(
        number(ends, "minutes"),
        2.0 * number(corners, "minutes"),
        1e-9,
    );
    let total = number(&plan["consumables"], "drilling_minutes");
    near(total, 3.0 * number(corners, "minutes"), 1e-9);
    // Without a bit nothing parts it, and that is said.
    let wide = "rectangle = [500, 400]\nround = { 1 = 90, 2 = 90, 3 = 90, 4 = 90 }";
    let open = |plan: &Value| {
        list(plan, "open")
            .iter()
            .any(|f| f["id"] == "piece-held-below")
    };
    assert!(open(&counter(wide, &[])));
    assert!(!open(&plan));
}

/// The least distance between the middles of two core holes of a plan, mm.
fn nearest_holes(plan: &Value) -> f64 {
    let holes = list(plan, "core_holes").iter().map(|h| {
        let at = |i: usize| h["at"][i].as_f64().expect("a place");
        [at(0), at(1)]
    });
    let holes: Vec<[f64; 2]> = holes.collect();
    let pairs = holes
        .iter()
        .enumerate()
        .flat_map(|(i, a)| holes[..i].iter().map(move |b| (a, b)));
    pairs
        .map(|(a, b)| (a[0] - b[0]).hypot(a[1] - b[1]))
        .fold(f64::INFINITY, f64::min)
}

/// A top with a notch between its corners 4 to 7.
fn notch(corners: &str, more: &str) -> Value {
    plan(&format!(
        "[stone]\nkind = \"granite\"\nthickness = 30\n[slab]\nrectangle = [1800, 1000]\n[top]\n\
         corners = {corners}\n{more}\n[place]\nat = [60, 60]\nturn = 0\n"
    ))
}

#[test]
fn a_round_corner_between_unlike_allowances_is_one_hole() {
    // The edges beside corner 6 keep 1.0 and 0.5 mm, so the sawn arc meets them at a slight angle.
    let corners = "[[0, 0], [1653, 0], [1653, 842], [1034, 842], [1034, 367], [625, 367], [625, 842], [0, 842]]";
    let plan = notch(
        corners,
        "round = { 6 = 20 }\nfinish = { \"5-6\" = \"polish\", \"6-7\" = \"ease\" }\n\
         allowance = { polish = 1, ease = 0.5, saw = 0 }\n[[core_bit]]\ndiameter = 35\n",
    );
    assert_eq!(list(&plan, "core_holes").len(), 2, "one at each corner");
    assert!(told(&plan, "core-holes-close").is_empty());
    let left = list(cores(&plan)[0], "left_to_remove");
    assert!(left.iter().all(|l| number(l, "left_mm") <= 1.0), "{left:?}");
}

#[test]
fn two_corners_as_far_apart_as_a_bit_is_wide_are_one_hole() {
    let slot = "rectangle = [218.7, 51.6]\nround = { 1 = 25, 2 = 25, 3 = 25, 4 = 25 }";
    let plan = counter(slot, &[50.0]);
    let holes = of_boundary(&plan)
        .into_iter()
        .flat_map(|c| list(c, "holes"));
    assert_eq!(holes.count(), 2, "one at each end");
    let left = list(cores(&plan)[0], "left_to_remove");
    let most = left
        .iter()
        .map(|l| number(l, "left_mm"))
        .fold(0.0, f64::max);
    // Half of the 1.6 mm that the slot is wider.
    assert!((0.8..=GROUND_MM).contains(&most), "{most}");
}

#[test]
fn a_row_hardly_longer_than_nothing_is_one_hole() {
    let corners = "[[0, 0], [1508, 0], [1508, 644], [1091.5, 644], [1091.5, 356], [896.6, 356], [896.6, 644], [0, 644]]";
    let plan = notch(
        corners,
        "round = { 5 = 130, 6 = 63.5 }\n\
         finish = { \"4-5\" = \"ease\", \"5-6\" = \"saw\", \"6-7\" = \"ease\" }\n\
         allowance = { polish = 1, ease = 0.5, saw = 0 }\n[[core_bit]]\ndiameter = 20\n\
         [[core_bit]]\ndiameter = 35\n",
    );
    // 1.4 mm of edge 5-6 lie between the two arcs.
    let row = cores(&plan).into_iter().find(|c| c["edge"] == "5-6");
    let holes = row.map(|c| list(c, "holes").len());
    assert_eq!(holes, Some(1));
}

#[test]
fn holes_that_overlap_are_told_with_what_to_do() {
    let wide = "rectangle = [500, 340]\nround = { 1 = 50, 2 = 50, 3 = 50, 4 = 50 }";
    let plan = counter(wide, &[35.0]);
    let said = told(&plan, "core-holes-close").join("\n");
    let least = nearest_holes(&plan);
    assert!(
        said.contains(&format!("{least:.1} mm from middle to middle")),
        "{said}"
    );
    assert!(said.contains("template"), "{said}");
    // Holes that part a piece at the underside reach into those of its corners.
    assert!(!told(&counter(BASIN, &[35.0]), "core-holes-close").is_empty());
    assert!(told(&counter("circle = 35", &[35.0]), "core-holes-close").is_empty());
}
