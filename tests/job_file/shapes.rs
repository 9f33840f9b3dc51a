//! Hollows, bows, circles, inside corners, cutouts and tops over a base.

use std::f64::consts::PI;

use kerfwright::geom::Point;
use kerfwright::job::{CornerCut, Finish};

use super::{LEAST, expect_fault, findings, job};

/// The least job with another top.
fn with_top(top: &str) -> String {
    LEAST.replace("rectangle = [2000, 640]", top)
}

#[test]
fn a_scoop_takes_a_quarter_circle_off_its_corner() {
    let job = job(&with_top("rectangle = [2000, 640]\nscoop = { 3 = 50 }"));
    let area = 2000.0 * 640.0 - PI * 50.0 * 50.0 / 4.0;
    assert!((job.top.shape.outline().area() - area).abs() < 1e-6);
    assert_eq!(job.top.shape.corner_cuts()[2], CornerCut::Scoop(50.0));
}

/// Circular segment: chord 21, rise 6 encloses 89.254148 (`MatheAss` help); here ten times as large.
#[test]
fn a_bow_adds_or_takes_a_circular_segment() {
    for (sign, added) in [(1.0, 8_925.414_8), (-1.0, -8_925.414_8)] {
        let top = format!(
            "rectangle = [210, 400]\nbow = {{ \"2-1\" = {} }}",
            60.0 * sign
        );
        let job = job(&with_top(&top));
        let area = job.top.shape.outline().area();
        assert!((area - 84_000.0 - added).abs() < 1e-3, "{area}");
    }
}

#[test]
fn a_round_between_a_bow_and_a_straight_edge_touches_both() {
    for (bow, radius) in [(30.0, 80.0), (-30.0, 80.0), (200.0, 25.0)] {
        let top = format!(
            "rectangle = [1500, 600]\nbow = {{ \"1-2\" = {bow} }}\nround = {{ 2 = {radius} }}"
        );
        let shape = job(&with_top(&top)).top.shape;
        let segs = shape.outline().segs();
        for (a, b) in segs.iter().zip(segs.iter().cycle().skip(1)) {
            let joint = a.end();
            if joint.distance(shape.corners()[1]) < 300.0 {
                let turn = a.heading(1.0).cross(b.heading(0.0));
                assert!(
                    turn.abs() < 1e-9,
                    "bow {bow}: a kink of {turn} at {joint:?}"
                );
            }
        }
        assert_eq!(segs.len(), 5);
    }
}

#[test]
fn a_circle_is_a_circle() {
    let job = job(&with_top("circle = 600\nfinish = \"polish\""));
    let (centre, radius) = job.top.shape.as_circle().expect("it is one");
    assert!(centre.distance(Point::new(300.0, 300.0)) < 1e-9 && (radius - 300.0).abs() < 1e-9);
    assert!(job.top.finishes.iter().all(|f| *f == Finish::Polish));
    assert!((job.top.shape.outline().area() - PI * 9e4).abs() < 1e-6);
}

#[test]
fn an_inside_corner_is_known_as_one() {
    let l_shape = "corners = [[0, 0], [2000, 0], [2000, 640], [1000, 640], [1000, 300], [0, 300]]\nround = { 5 = 30 }";
    let shape = job(&with_top(l_shape)).top.shape;
    let inside: Vec<usize> = (0..6).filter(|c| shape.is_inside_corner(*c)).collect();
    assert_eq!(inside, [4]);
    let area = 2000.0 * 300.0 + 1000.0 * 340.0 + (1.0 - PI / 4.0) * 900.0;
    assert!((shape.outline().area() - area).abs() < 1e-6);
}

#[test]
fn a_cutout_is_laid_by_its_centre_and_turned_about_it() {
    let text = format!(
        "{LEAST}[[top.cutout]]\nwhat = \"basin\"\nrectangle = [500, 300]\nround = {{ 1 = 20, 2 = 20, 3 = 20, 4 = 20 }}\n\
         at = [900, 320]\nturn = 90\nfinish = \"polish\"\n[[top.cutout]]\ncircle = 35\nat = [1200, 80]\n[[core_bit]]\ndiameter = 35\n"
    );
    let job = job(&text);
    let [basin, tap] = &job.top.cutouts[..] else {
        panic!("two cutouts were given");
    };
    assert_eq!(
        (basin.what.as_str(), tap.what.as_str()),
        ("basin", "cutout 2")
    );
    let bounds = basin.shape.outline().bounds();
    assert!(bounds.centre().distance(Point::new(900.0, 320.0)) < 1e-9);
    assert!((bounds.width() - 300.0).abs() < 1e-9 && (bounds.height() - 500.0).abs() < 1e-9);
    assert_eq!((basin.finish, tap.finish), (Finish::Polish, Finish::Saw));
    assert_eq!(job.core_bits[0].diameter, 35.0);
    let holes = basin.shape.outline().area() + tap.shape.outline().area();
    assert!((job.top.area() - (2000.0 * 640.0 - holes)).abs() < 1e-9);
}

#[test]
fn cutouts_lie_inside_the_top_and_apart() {
    let cut = |at: &str| format!("{LEAST}[[top.cutout]]\ncircle = 300\nat = {at}\n");
    expect_fault(
        &cut("[100, 320]"),
        "top.cutout[0].at",
        &["cutout 1 reaches 50 mm beyond the edge of the top"],
        "[[top.cutout]]",
    );
    let far = findings(&cut("[-5000, 320]"));
    assert!(far[0].message.contains("beyond the edge"), "{far:?}");
    let two = format!(
        "{}[[top.cutout]]\ncircle = 100\nat = [600, 320]\n",
        cut("[700, 320]")
    );
    let faults = findings(&two);
    assert!(
        faults[0]
            .message
            .contains("cutout 2 and cutout 1 touch or overlap"),
        "{faults:?}"
    );
    let factory = format!("{}finish = \"factory\"\n", cut("[700, 320]"));
    assert!(findings(&factory)[0].message.contains("an opening is sawn"));
}

#[test]
fn a_top_over_its_base() {
    let text = |over: &str, base: &str| {
        let top = LEAST.replace("rectangle = [2000, 640]", &format!("over_base = {over}"));
        format!("{top}[base]\n{base}\n")
    };
    let even = job(&text("25", "rectangle = [1800, 550]\nround = { 2 = 60 }"));
    let base = even.base.as_ref().expect("a base was given");
    assert_eq!(base.corners()[0], Point::new(25.0, 25.0));
    assert_eq!(even.top.shape.corner_cuts()[1], CornerCut::Round(85.0));
    assert_eq!(even.top.shape.corners()[2], Point::new(1850.0, 600.0));
    let uneven = job(&text(
        "{ \"1-2\" = 30, \"2-3\" = 10, \"4-1\" = 10 }",
        "rectangle = [1800, 550]\nbow = { \"1-2\" = 40 }",
    ));
    let shape = &uneven.top.shape;
    assert_eq!(shape.corners()[0], Point::new(0.0, 0.0));
    let base = uneven.base.as_ref().expect("a base was given");
    // The bow stays concentric: every point of the top's front lies 30 mm outside the base's.
    for share in [0.1, 0.5, 0.9] {
        let at = shape.edge_seg(0).expect("it is there").at(share);
        assert!((base.edge_seg(0).expect("it is there").distance(at) - 30.0).abs() < 1e-9);
    }
    assert!(uneven.assumed.iter().any(|a| a.value == "3-4: 0"));
}

#[test]
fn shapes_that_cannot_be_are_told_by_corner_or_edge() {
    let cases: [(&str, &str, &[&str], &str); 6] = [
        (
            "bow = { \"1-2\" = 1000 }",
            "top.bow.1-2",
            &["edge 1-2 rises 1000 mm", "half its chord, 1000 mm"],
            "1000",
        ),
        (
            "bow = { \"1-3\" = 10 }",
            "top.bow.1-3",
            &["there is no edge 1-3"],
            "\"1-3\"",
        ),
        (
            "scoop = { 2 = 700 }",
            "top.scoop.2",
            &[
                "corner 2 needs 700 mm of edge 2-3",
                "60 mm too much",
                "take 640 mm or less",
            ],
            "700",
        ),
        (
            "scoop = { 2 = 70 }\nround = { 2 = 70 }",
            "top.scoop.2",
            &["treated already"],
            "70",
        ),
        (
            "bow = { \"1-2\" = -300, \"3-4\" = -400 }",
            "top.rectangle",
            &["touches or crosses itself"],
            "rectangle",
        ),
        (
            "bow = { \"1-2\" = 900 }\nround = { 2 = 5000 }",
            "top.round.2",
            &["no arc of radius 5000 mm touches both edges of corner 2"],
            "5000",
        ),
    ];
    for (added, key, words, under) in cases {
        let text = with_top(&format!("rectangle = [2000, 640]\n{added}"));
        expect_fault(&text, key, words, under);
    }
    let circle = with_top("circle = 600\nround = { 1 = 20 }");
    assert!(findings(&circle)[0].message.contains("a circle has none"));
    let twice = with_top("rectangle = [2000, 640]\ncircle = 600");
    assert!(findings(&twice)[0].message.contains("described twice"));
    let baseless = with_top("over_base = 20");
    assert!(findings(&baseless)[0].message.contains("no sound [base]"));
}
