//! The slab from tapes: what does not close, and what no slab is.

use super::slab::{BOTH, SIDES, TIES, remarks, with};
use super::{expect_fault, findings};

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
        (BOTH, "slab.sides", &["missing", "AB, BC, CD, DA"]),
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
