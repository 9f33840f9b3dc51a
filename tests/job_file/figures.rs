//! Faults of outlines, corners, edges, flaws and supports.

use kerfwright::job::{CornerCut, EdgeState, FlawPlace, SupportPlace};

use super::{LEAST, expect_fault, findings, job};

#[test]
fn figures_that_cannot_be() {
    let corners =
        |list: &str| LEAST.replace("rectangle = [2000, 640]", &format!("corners = {list}"));
    let cases: [(&str, &[&str]); 6] = [
        (
            "[[0, 0], [0, 640], [2000, 640], [2000, 0]]",
            &[
                "run clockwise",
                "corners = [[0, 0], [2000, 0], [2000, 640], [0, 640]]",
            ],
        ),
        (
            "[[0, 0], [2000, 640], [2000, 0], [0, 640]]",
            &["edges 1-2 and 3-4 touch or cross near (1000 mm, 320 mm)"],
        ),
        (
            "[[0, 0], [2000, 0], [2000, 0], [0, 640]]",
            &["corners 2 and 3 are the same point"],
        ),
        ("[[0, 0], [2000, 0], [1000, 0]]", &["touch or cross"]),
        ("[[0, 0], [2000, 0]]", &["has 2 entries, least 3"]),
        (
            "[[5, 0], [2000, 0], [2000, 640]]",
            &["puts corner 1 at (5 mm, 0 mm)", "origin"],
        ),
    ];
    for (list, words) in cases {
        expect_fault(&corners(list), "top.corners", words, "corners");
    }
    expect_fault(
        &corners("[[0, 0], [2000, 0, 1], [0, 640]]"),
        "top.corners[1]",
        &["has 3 entries, it needs 2"],
        "corners",
    );
    expect_fault(
        &corners("[[0, 0], [2000, 30000], [0, 640]]"),
        "top.corners[1][1]",
        &["is 30000 mm, most 20000 mm"],
        "corners",
    );
    let many: Vec<String> = (0..65).map(|i| format!("[{i}, 0]")).collect();
    expect_fault(
        &corners(&format!("[{}]", many.join(","))),
        "top.corners",
        &["has 65 entries, most 64"],
        "corners",
    );
    let twice = LEAST.replace(
        "rectangle = [2400, 800]",
        "rectangle = [2400, 800]\ncorners = [[0, 0], [9, 0], [0, 9]]",
    );
    expect_fault(&twice, "slab.corners", &["described twice"], "corners");
}

#[test]
fn an_inside_corner_of_the_slab_is_fine() {
    let l_shape = "corners = [[0, 0], [2400, 0], [2400, 800], [1000, 800], [1000, 700], [0, 700]]";
    let job = job(&LEAST.replace("rectangle = [2400, 800]", l_shape));
    assert_eq!(job.slab.shape.count(), 6);
}

#[test]
fn one_size_is_for_every_corner() {
    let one = job(&format!("{LEAST}round = 20\n"));
    let each = job(&format!(
        "{LEAST}round = {{ 1 = 20, 2 = 20, 3 = 20, 4 = 20 }}\n"
    ));
    let [one, each] = [one, each].map(|job| job.top.shape.corner_cuts().to_vec());
    assert_eq!(one, each);
    // Where the edges run straight on there is nothing to round.
    let halved = "corners = [[0, 0], [1000, 0], [2000, 0], [2000, 640], [0, 640]]\nround = 20";
    let cuts = job(&LEAST.replace("rectangle = [2000, 640]", halved));
    assert_eq!(cuts.top.shape.corner_cuts()[1], CornerCut::Sharp);
}

#[test]
fn corners_that_are_cut_must_fit_their_edges() {
    let top = |added: &str| format!("{LEAST}{added}\n");
    expect_fault(
        &top("round = { 2 = 350, 3 = 350 }"),
        "top.round.2",
        &[
            "corners 2 and 3 need 700 mm of edge 2-3, which is 640 mm: 60 mm too much",
            "take 320 mm or less each",
        ],
        "round",
    );
    expect_fault(
        &top("round = { 2 = 700 }"),
        "top.round.2",
        &[
            "corner 2 needs 700 mm of edge 2-3, which is 640 mm",
            "take 640 mm or less at corner 2",
        ],
        "round",
    );
    expect_fault(
        &top("round = { 2 = 480 }\nclip = { 3 = 240 }"),
        "top.round.2",
        &[
            "need 720 mm",
            "take 426.6 mm and 213.3 mm or less at corners 2 and 3",
        ],
        "round",
    );
    expect_fault(
        &top("round = { 7 = 10 }"),
        "top.round.7",
        &["no corner 7", "1 to 4"],
        "round",
    );
    expect_fault(
        &top("round = { 2 = 10 }\nclip = { 2 = 10 }"),
        "top.clip.2",
        &["treated already"],
        "clip",
    );
    expect_fault(
        &top("round = { 2 = 0 }"),
        "top.round.2",
        &["is 0 mm, least 0.1 mm"],
        "round",
    );
    expect_fault(
        &top("round = true"),
        "top.round",
        &["is true or false", "a length", "{ 2 = 320 }"],
        "round",
    );
    let straight = LEAST.replace(
        "rectangle = [2000, 640]",
        "corners = [[0, 0], [900, 0], [2000, 0], [0, 640]]\nround = { 2 = 9 }",
    );
    expect_fault(
        &straight,
        "top.round.2",
        &["straight through corner 2"],
        "round",
    );
    let both = findings(&top("round = { 1 = 400, 2 = 400, 3 = 400, 4 = 400 }"));
    assert_eq!(both.len(), 2, "edges 2-3 and 4-1 are both told: {both:?}");
    // A half circle is just what fits.
    let round = job(&top("round = { 2 = 320, 3 = 320 }"));
    assert_eq!(round.top.shape.corner_cuts()[1], CornerCut::Round(320.0));
    assert!(round.top.shape.edge_seg(1).is_none());
}

#[test]
fn edges_are_known_by_name() {
    let slab = |added: &str| LEAST.replace("[top]", &format!("{added}\n[top]"));
    let two = job(&slab("factory = [\"AB\", \"AD\"]\nrough = [\"CD\"]"));
    let states = [
        EdgeState::Factory,
        EdgeState::Sawn,
        EdgeState::Rough,
        EdgeState::Factory,
    ];
    assert_eq!(two.slab.edges, states);
    expect_fault(
        &slab("factory = [\"AC\"]"),
        "slab.factory[0]",
        &["no such edge", "AB, BC, CD and DA"],
        "factory",
    );
    expect_fault(
        &slab("factory = [\"AB\"]\nrough = [\"BA\"]"),
        "slab.rough[0]",
        &["a second time"],
        "rough",
    );
    let finish = |f: &str| format!("{LEAST}finish = {{ {f} }}\n");
    expect_fault(
        &finish("\"1-3\" = \"saw\""),
        "top.finish.1-3",
        &["no edge 1-3"],
        "finish",
    );
    expect_fault(
        &finish("\"1-2\" = \"polsh\""),
        "top.finish.1-2",
        &["did you mean \"polish\"?"],
        "finish",
    );
    expect_fault(
        &finish("\"1-2\" = \"saw\", \"2-1\" = \"ease\""),
        "top.finish.2-1",
        &["a finish already"],
        "finish",
    );
    let none = findings(&finish("\"1-2\" = \"factory\""));
    assert_eq!(none[0].key, "top.finish.1-2");
    assert!(none[0].message.contains("but the slab has none"));
}

#[test]
fn flaws_and_supports_lie_on_the_stone() {
    let flaw = |place: &str| format!("{LEAST}[[slab.flaw]]\n{place}\n");
    let support = |place: &str| format!("{LEAST}[[support]]\n{place}\n");
    let cases: [(String, &str, &[&str]); 10] = [
        (
            flaw("spot = { at = [2500, 400], across = 20 }"),
            "slab.flaw[0].spot",
            &["wholly off the slab"],
        ),
        (
            flaw("line = [[2500, 0], [2600, 700]]"),
            "slab.flaw[0].line",
            &["wholly off the slab"],
        ),
        (
            flaw("area = [[2500, 0], [2600, 0], [2600, 9]]"),
            "slab.flaw[0].area",
            &["wholly off"],
        ),
        (
            flaw("line = [[10, 10], [10, 10]]"),
            "slab.flaw[0].line",
            &["same point twice"],
        ),
        (
            flaw("area = [[0, 0], [9, 9], [9, 0], [0, 9]]"),
            "slab.flaw[0].area",
            &["crosses itself near (4.5 mm, 4.5 mm)"],
        ),
        (
            flaw("spot = { at = [5, 5] }"),
            "slab.flaw[0].spot.across",
            &["is missing"],
        ),
        (
            flaw("what = \"?\""),
            "slab.flaw[0].line",
            &["one of `spot`, `line`, `area` and `shape`; here are 0"],
        ),
        (
            support("line = [[3000, 0], [3000, 600]]"),
            "support[0].line",
            &["wholly outside the top"],
        ),
        (
            support("pad = { at = [1, 1], across = 0 }"),
            "support[0].pad.across",
            &["least 0.1 mm"],
        ),
        (
            support("what = \"?\""),
            "support[0].line",
            &["one of `line` and `pad`; here are 0"],
        ),
    ];
    for (text, key, words) in cases {
        expect_fault(&text, key, words, "");
    }
    let mut many = LEAST.to_owned();
    for _ in 0..201 {
        many.push_str("[[slab.flaw]]\nspot = { at = [9, 9], across = 2 }\n");
    }
    expect_fault(
        &many,
        "slab.flaw",
        &["has 201 entries, most 200"],
        "slab.flaw",
    );
    // A crack that runs off the slab at both ends still crosses it.
    let crossing = job(&flaw("line = [[1000, -50], [1200, 900]]"));
    assert!(matches!(&crossing.slab.flaws[0].place, FlawPlace::Line(p) if p.len() == 2));
    let on = job(&support(
        "pad = { at = [1000, 300], across = 80 }\nlimit = \"90 kg\"",
    ));
    assert!(matches!(on.supports[0].place, SupportPlace::Pad(_, 80.0)));
}
