//! The slab from tapes: sides and diagonals, ties from a base line.

use kerfwright::diag::Severity;
use kerfwright::geom::Point;
use kerfwright::job::survey::How;
use kerfwright::job::{CornerCut, EdgeState, Job, Slab};

use super::{LEAST, expect_fault, findings, job};

pub(crate) const SIDES: &str = "sides = [2640, 902, 2636, 899]";
pub(crate) const BOTH: &str = "diagonals = { AC = 2790, BD = 2786 }";
pub(crate) const TIES: &str =
    "base_line = 2640\nties = [[0, 2640], [2640, 0], [2785, 901], [899, 2789]]";

/// The least job file with another slab.
pub(crate) fn with(slab: &str) -> String {
    LEAST.replace("rectangle = [2400, 800]", slab)
}

fn slab(words: &str) -> Slab {
    let Job { slab, .. } = job(&with(words));
    slab
}

/// The remarks of a job without a fault.
pub(crate) fn remarks(words: &str) -> Vec<String> {
    job(&with(words));
    let found = findings(&with(words)).into_iter();
    found.map(|d| format!("{} {}", d.message, d.hint)).collect()
}

fn near(point: Point, x: f64, y: f64, within: f64) {
    assert!(point.distance(Point::new(x, y)) < within, "{point:?}");
}

#[test]
fn four_sides_and_both_diagonals() {
    let slab = slab(&format!("{SIDES}\n{BOTH}"));
    assert_eq!(slab.survey.how, How::SidesAndDiagonals);
    let corners = slab.shape.corners();
    near(corners[0], 0.0, 0.0, 1e-12);
    assert_eq!(corners[1].y, 0.0);
    // Worked out by the cosine rule and by hand: within the millimetre that is shared out.
    near(corners[2], 2640.2, 902.0, 1.0);
    near(corners[3], 3.6, 899.0, 1.0);
    let closes = &slab.survey.misclosures[0];
    assert!((closes.by() - 1.1).abs() < 0.05 && closes.is_explained());
    assert!((closes.explained - 4.0).abs() < 0.05, "{closes:?}");
    let square: Vec<&str> = slab
        .survey
        .out_of_square
        .iter()
        .map(|c| c.corner.as_str())
        .collect();
    assert_eq!(square, ["A", "D"]);
    let [ac, bd] = slab.survey.diagonals.unwrap();
    assert!((ac - bd - 4.0).abs() < 0.2);
}

#[test]
fn one_diagonal_fixes_the_slab_and_foretells_the_other() {
    for (given, other) in [
        ("AC = 2790", "BD"),
        ("CA = 2790", "BD"),
        ("DB = 2786", "AC"),
    ] {
        let words = format!("{SIDES}\ndiagonals = {{ {given} }}");
        assert_eq!(slab(&words).survey.how, How::SidesAndDiagonal);
        assert!(slab(&words).survey.misclosures.is_empty());
        let said = remarks(&words).join("\n");
        assert!(said.contains("checks nothing"), "{said}");
        let told = said
            .split(&format!("tape {other} as well: it should come to "))
            .nth(1);
        let told: f64 = told.unwrap().split(' ').next().unwrap().parse().unwrap();
        let both = match other {
            "BD" => format!("{SIDES}\ndiagonals = {{ AC = 2790, BD = {told} }}"),
            _ => format!("{SIDES}\ndiagonals = {{ AC = {told}, BD = 2786 }}"),
        };
        let closes = &slab(&both).survey.misclosures[0];
        assert!(closes.by().abs() < 0.06, "{closes:?}");
    }
}

#[test]
fn diagonals_named_the_wrong_way_round() {
    // Nearly a parallelogram: only the person can tell, and is asked to.
    let said = remarks(&format!("{SIDES}\n{BOTH}")).join("\n");
    assert!(said.contains("make sure which diagonal is which"), "{said}");
    let equal = remarks(&format!("{SIDES}\ndiagonals = {{ AC = 2788, BD = 2787 }}")).join("\n");
    assert!(!equal.contains("which diagonal"), "{equal}");
    // A trapezium of corners (0, 0), (2000, 0), (1500, 800), (100, 900) tells by itself.
    let sides = "sides = [2000, 943.4, 1403.6, 905.5]";
    let right = remarks(&format!(
        "{sides}\ndiagonals = {{ AC = 1700, BD = 2102.4 }}"
    ))
    .join("\n");
    assert!(
        right.contains("close") && !right.contains("which diagonal"),
        "{right}"
    );
    expect_fault(
        &with(&format!(
            "{sides}\ndiagonals = {{ AC = 2102.4, BD = 1700 }}"
        )),
        "slab.diagonals",
        &["may be changed over", "AC and BD"],
        "diagonals",
    );
}

#[test]
fn ties_from_the_slabs_own_edge() {
    let slab = slab(TIES);
    assert_eq!(slab.survey.how, How::Ties);
    assert!(slab.survey.misclosures.is_empty());
    let corners = slab.shape.corners();
    near(corners[0], 0.0, 0.0, 1e-12);
    near(corners[1], 2640.0, 0.0, 1e-12);
    // x = (p² − q² + L²)/2L, by hand.
    near(corners[2], 2635.2318, 900.9874, 1e-3);
    near(corners[3], -0.1364, 899.0, 1e-3);
    let said = remarks(TIES).join("\n");
    assert!(
        said.contains("it should come to: C 1594.2 mm, D 1597.2 mm"),
        "{said}"
    );
}

#[test]
fn marks_beside_the_slab_are_moved_out_of_the_frame() {
    // The same slab, 2640 × 900, from marks 150 below AB: left at x = −200, right at x = 2800.
    let corners = [(0.0, 0.0), (2640.0, 0.0), (2640.0, 900.0), (0.0, 900.0)];
    let marks = [(-200.0, -150.0), (2800.0, -150.0), (1300.0, -150.0)];
    let tape = |c: (f64, f64), m: (f64, f64)| f64::hypot(c.0 - m.0, c.1 - m.1);
    let tie = |c| format!("{:?}", marks.map(|m| tape(c, m)));
    let ties: Vec<String> = corners.map(tie).to_vec();
    let found = slab(&format!("base_line = 3000\nties = [{}]", ties.join(", ")));
    for (corner, (x, y)) in found.shape.corners().iter().zip(corners) {
        near(*corner, x, y, 1e-6);
    }
    assert_eq!(found.survey.misclosures.len(), 4);
    assert!(found.survey.out_of_square.is_empty());
}

#[test]
fn corners_in_line_with_the_marks_are_badly_fixed() {
    let ties = |rest: &str| format!("base_line = 3000\nties = {rest}");
    let said = remarks(&ties(
        "[[100, 2900], [2740, 260], [2891, 940], [905, 3043]]",
    ));
    let line = said
        .iter()
        .filter(|s| s.contains("lies in line with the two marks"));
    assert_eq!(line.count(), 2, "{said:?}");
    let said = remarks(&ties(
        "[[200, 2802], [2740, 262], [2891, 940], [905, 3043]]",
    ));
    let slant = said.iter().filter(|s| s.contains("cross at a slant"));
    assert_eq!(slant.count(), 2, "{said:?}");
}

#[test]
fn corners_and_edges_are_treated_as_in_any_figure() {
    let treated = "round = { B = 12 }\nclip = { C = 40 }\nscoop = { D = 30 }\nbow = { AB = -2 }\n\
                   factory = [\"DA\"]\nrough = [\"CB\"]";
    for measured in [format!("{SIDES}\n{BOTH}"), TIES.to_owned()] {
        let slab = slab(&format!("{measured}\n{treated}"));
        let cuts = slab.shape.corner_cuts();
        let wanted = [
            CornerCut::Sharp,
            CornerCut::Round(12.0),
            CornerCut::Clip(40.0),
            CornerCut::Scoop(30.0),
        ];
        assert_eq!(cuts, wanted);
        assert_eq!(slab.shape.bows(), [-2.0, 0.0, 0.0, 0.0]);
        assert_eq!(slab.edges[3], EdgeState::Factory);
        assert_eq!(slab.edges[1], EdgeState::Rough);
    }
}

#[test]
fn inches() {
    let text = |bd: &str| {
        let slab = format!(
            "sides = [\"104 in\", 35.5, 103.75, 35.375]\ndiagonals = {{ AC = 109.875, BD = {bd} }}\ntape = 0.0625"
        );
        let text = with(&slab).replace("[2000, 640]", "[80, 25]");
        format!(
            "[job]\nunits = \"in\"\n{}",
            text.replace("thickness = 30", "thickness = 1.25")
        )
    };
    let found = findings(&text("109.625"));
    assert!(
        found.iter().all(|d| d.severity == Severity::Remark),
        "{found:?}"
    );
    let said: String = found.iter().map(|d| d.message.as_str()).collect();
    assert!(
        said.contains("tapes good to ±0.062 in explain 0.25 in"),
        "{said}"
    );
    expect_fault(
        &text("108.625"),
        "slab.diagonals.AC",
        &[
            "108.625 in, but 109.63 in",
            "AC (110.875 in, 1 in more)",
            "BD (109.625 in, 1 in more)",
        ],
        "BD",
    );
    // Where the unit itself is at fault nothing is said of bare tapes.
    let unclear = text("108.625").replace("\"in\"", "\"yard\"");
    let keys: Vec<String> = findings(&unclear).into_iter().map(|d| d.key).collect();
    assert_eq!(keys, ["job.units"]);
}

#[test]
fn out_of_square_is_told_and_a_rectangle_says_nothing() {
    let said = remarks("corners = [[0, 0], [2640, 3], [2636, 905], [-20, 902]]").join("\n");
    assert!(
        said.contains("corner A 19 mm over the 902.2 mm of DA (91.2°)"),
        "{said}"
    );
    assert!(said.contains("diagonals differ by 20.8 mm"), "{said}");
    assert!(remarks("rectangle = [2400, 800]").is_empty());
    // More than 5° from square is not meant to be square.
    assert!(remarks("corners = [[0, 0], [2400, 0], [2250, 800], [150, 800]]").is_empty());
    // An inside corner counts too.
    let l_shape = "corners = [[0, 0], [2400, 0], [2400, 800], [1000, 800], [1000, 700], [0, 700]]";
    assert!(remarks(l_shape).is_empty());
    let leaning = slab(&l_shape.replace("[1000, 700]", "[1006, 700]"));
    let corners: Vec<(&str, bool)> = leaning
        .survey
        .out_of_square
        .iter()
        .map(|c| (c.corner.as_str(), c.out > 0.0))
        .collect();
    assert_eq!(corners, [("D", false), ("E", true)]);
}
