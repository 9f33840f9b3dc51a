//! The slab from tapes: sides and diagonals, ties from a base line; what does not close.

use kerfwright::diag::Severity;
use kerfwright::geom::Point;
use kerfwright::job::survey::How;
use kerfwright::job::{CornerCut, EdgeState, Job, Slab};

use super::{LEAST, expect_fault, findings, job};

const SIDES: &str = "sides = [2640, 902, 2636, 899]";
const BOTH: &str = "diagonals = { AC = 2790, BD = 2786 }";
const TIES: &str = "base_line = 2640\nties = [[0, 2640], [2640, 0], [2785, 901], [899, 2789]]";

/// The least job file with another slab.
fn with(slab: &str) -> String {
    LEAST.replace("rectangle = [2400, 800]", slab)
}

fn slab(words: &str) -> Slab {
    let Job { slab, .. } = job(&with(words));
    slab
}

/// The remarks of a job without a fault.
fn remarks(words: &str) -> Vec<String> {
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
fn six_tapes_that_do_not_close() {
    let diagonals = |d: &str| with(&format!("{SIDES}\ndiagonals = {{ {d} }}"));
    // Two digits changed over: the best explanation is shown, the others are named.
    expect_fault(
        &diagonals("AC = 2790, BD = 2876"),
        "slab.diagonals.BD",
        &[
            "BD is 2876 mm, but 2784.9 mm by the other five, 91.1 mm apart",
            "tapes good to ±1 mm explain 4 mm",
            "first: BD (2786 mm, two digits changed over)",
            "should read: BC",
        ],
        "BD = 2876",
    );
    // A round number.
    expect_fault(
        &with(&format!("{SIDES}\n{BOTH}").replace("902", "802")),
        "slab.sides[1]",
        &["first: BC (902 mm, 100 mm more)", "DA 1014.8 mm"],
        "802",
    );
    // Nothing in particular: all six, and by how much.
    expect_fault(
        &diagonals("AC = 2790, BD = 2743"),
        "slab.diagonals",
        &[
            "cannot tell which",
            "AB 2596 mm, or BC 773.1 mm, or CD 2592.1 mm, or DA 770.6 mm, or AC 2831.2 mm, or BD 2784.9 mm",
        ],
        "diagonals",
    );
    // Sides out of order.
    expect_fault(
        &with(&format!("sides = [2640, 902, 899, 2636]\n{BOTH}")),
        "slab.sides[0]",
        &["may be changed over, AB and BC, or CD and DA"],
        "sides",
    );
    // Named as if the diagonals were sides.
    expect_fault(
        &with("sides = [2640, 2790, 2636, 2786]\ndiagonals = { AC = 902, BD = 899 }"),
        "slab.diagonals",
        &["sides cross", "in order round the slab"],
        "diagonals",
    );
    // A coarser tape explains more.
    assert!(
        remarks(&format!(
            "{SIDES}\ndiagonals = {{ AC = 2790, BD = 2781 }}\ntape = 2"
        ))
        .len()
            > 1
    );
    expect_fault(
        &diagonals("AC = 2790, BD = 2780.5"),
        "slab.diagonals",
        &["4.4 mm apart"],
        "diagonals",
    );
}

#[test]
fn triangles_that_cannot_close() {
    // The diagonal breaks both of its triangles.
    expect_fault(
        &with(&format!("{SIDES}\ndiagonals = {{ AC = 3790 }}")),
        "slab.diagonals.AC",
        &[
            "AC = 3790 mm is longer than CD + DA = 3535 mm",
            "AC is at least 1738 mm and at most 3535 mm",
        ],
        "AC",
    );
    // A side breaks both of its triangles, though another tape is the long one.
    expect_fault(
        &with(&format!("{SIDES}\n{BOTH}").replace("2640", "264")),
        "slab.sides[0]",
        &[
            "BD = 2786 mm is longer than AB + DA = 1163 mm",
            "AB is at least 1888 mm and at most 3685 mm",
        ],
        "264",
    );
    // One triangle: each of its tapes could be the one.
    expect_fault(
        &with("sides = [2640, 92, 2636, 899]\ndiagonals = { AC = 2790 }"),
        "slab.diagonals.AC",
        &[
            "one of them is wrong",
            "or BC is at least 150 mm",
            "AC is at least 2548 mm and at most 2732 mm",
        ],
        "AC",
    );
    expect_fault(
        &with("base_line = 2640\nties = [[0, 2640], [2640, 0], [700, 901], [899, 2789]]"),
        "slab.ties[2]",
        &[
            "do not meet",
            "measure corner C again",
            "at least 1739 mm and at most 3541 mm",
        ],
        "ties",
    );
}

#[test]
fn tapes_of_a_figure_that_is_no_slab() {
    expect_fault(
        &with("sides = [1000, 700, 700, 1000]\ndiagonals = { BD = 1200, AC = 439.5 }"),
        "slab.sides",
        &["inside corner of C, 242°", "`base_line` and `ties`"],
        "sides",
    );
    expect_fault(
        &with("sides = [1000, 400, 400, 1000]\ndiagonals = { AC = 620 }"),
        "slab.sides",
        &["inside corner of C"],
        "sides",
    );
    expect_fault(
        &with("base_line = 2640\nties = [[0, 2640], [899, 2789], [2785, 901], [2640, 0]]"),
        "slab.ties",
        &["run clockwise", "left of the base line"],
        "ties",
    );
    expect_fault(
        &with("base_line = 2640\nties = [[0, 2640], [2640, 0], [-899, 2789]]"),
        "slab.ties[2][0]",
        &["is -899 mm", "none lies on its right"],
        "ties",
    );
}

#[test]
fn ties_that_do_not_agree() {
    expect_fault(
        &with(&TIES.replace("[2785, 901]", "[2785, 901, 1694]")),
        "slab.ties[2][2]",
        &[
            "the tapes to corner C do not agree",
            "from the middle: 1694 mm, but 1594.2 mm by the two others",
            "first: from the middle (1594 mm, 100 mm less)",
            "from the left mark 29",
        ],
        "ties",
    );
    expect_fault(
        &with(&TIES.replace("[0, 2640]", "[0, 2740]")),
        "slab.ties[0][1]",
        &[
            "corner A",
            "2640 mm by the base line",
            "base line (2740 mm, 100 mm more)",
        ],
        "ties",
    );
}

#[test]
fn every_odd_tape_is_told_at_once() {
    let text =
        with("sides = [nan, 0, -5, \"899 kg\"]\ndiagonals = { AC = inf, BD = \"x\", AD = 7 }");
    let keys: Vec<String> = findings(&text).into_iter().map(|d| d.key).collect();
    let wanted = [
        "slab.sides[0]",
        "slab.sides[1]",
        "slab.sides[2]",
        "slab.sides[3]",
        "slab.diagonals.AC",
        "slab.diagonals.BD",
        "slab.diagonals.AD",
    ];
    assert_eq!(keys, wanted);
    let cases: [(&str, &str, &[&str]); 9] = [
        (SIDES, "slab.diagonals", &["missing", "give one diagonal"]),
        (BOTH, "slab.sides", &["missing", "[AB, BC, CD, DA]"]),
        ("base_line = 2640", "slab.ties", &["missing"]),
        (
            "ties = [[1, 2], [1, 2], [1, 2]]",
            "slab.base_line",
            &["missing"],
        ),
        (
            "sides = [2640, 902, 2636]\ndiagonals = { AC = 2790 }",
            "slab.sides",
            &["has 3 entries, it needs 4"],
        ),
        (
            "sides = [2640, 902, 2636, 899]\ndiagonals = {}",
            "slab.diagonals",
            &["is empty"],
        ),
        (
            "base_line = 2640\nties = [[0, 2640], [2640], [899, 2789]]",
            "slab.ties[1]",
            &["least 2"],
        ),
        (
            "rectangle = [2640, 905]\nsides = [1, 2, 3, 4]",
            "slab.sides",
            &["described twice", "`rectangle`"],
        ),
        (
            "sides = [2640, 902, 2636, 899]\ndiagonals = { AC = 2790 }\nbase_line = 2640\nties = []",
            "slab.base_line",
            &["described twice", "`sides`"],
        ),
    ];
    for (words, key, said) in cases {
        expect_fault(
            &with(&format!("{words}\nround = {{ B = 12 }}")),
            key,
            said,
            "",
        );
    }
}

#[test]
fn a_fault_elsewhere_in_the_slab_is_told_beside_tapes_that_do_not_close() {
    let text = with(&format!(
        "{SIDES}\ndiagonals = {{ AC = 2790, BD = 2743 }}\nfactory = [\"XY\"]"
    ));
    let keys: Vec<String> = findings(&text).into_iter().map(|d| d.key).collect();
    assert_eq!(keys, ["slab.diagonals", "slab.factory[0]"]);
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
    let unclear = text("108.625").replace("\"in\"", "\"inch\"");
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
