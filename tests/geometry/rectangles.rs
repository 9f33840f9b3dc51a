//! The largest rectangle in a piece, against brute force that knows only whether a rectangle lies in it.

use std::f64::consts::FRAC_PI_2;

use kerfwright::geom::rectangle::{Rectangle, best_along_edges, best_at_any_angle};
use kerfwright::geom::{Outline, Point, Side};
use proptest::prelude::*;

/// Pieces as offcuts are: convex, with inside corners, slivers.
fn pieces() -> Vec<(&'static str, Vec<(f64, f64)>)> {
    vec![
        ("triangle", vec![(0.0, 0.0), (600.0, 40.0), (210.0, 380.0)]),
        (
            "right triangle",
            vec![(0.0, 0.0), (500.0, 0.0), (0.0, 300.0)],
        ),
        (
            "L",
            vec![
                (0.0, 0.0),
                (900.0, 0.0),
                (900.0, 200.0),
                (340.0, 200.0),
                (340.0, 700.0),
                (0.0, 700.0),
            ],
        ),
        (
            "slanting L",
            vec![
                (0.0, 0.0),
                (880.0, 60.0),
                (860.0, 290.0),
                (300.0, 240.0),
                (260.0, 640.0),
                (-30.0, 610.0),
            ],
        ),
        (
            "four-sided",
            vec![(0.0, 0.0), (1200.0, 35.0), (1100.0, 300.0), (80.0, 210.0)],
        ),
        (
            "U",
            vec![
                (0.0, 0.0),
                (800.0, 0.0),
                (790.0, 500.0),
                (560.0, 510.0),
                (550.0, 180.0),
                (250.0, 200.0),
                (240.0, 520.0),
                (10.0, 500.0),
            ],
        ),
        (
            "notched",
            vec![
                (0.0, 0.0),
                (700.0, 0.0),
                (700.0, 400.0),
                (400.0, 400.0),
                (350.0, 150.0),
                (300.0, 400.0),
                (0.0, 400.0),
            ],
        ),
    ]
}

fn outline(points: &[(f64, f64)]) -> Outline {
    let points: Vec<Point> = points.iter().map(|(x, y)| Point::new(*x, *y)).collect();
    Outline::polygon(&points).expect("a piece")
}

/// Whether a rectangle lies in a piece: no edge of the one crosses an edge of the other deeper than a
/// hair, and its corners are inside.
fn lies_in(piece: &[(f64, f64)], corners: &[Point; 4]) -> bool {
    let ring: Vec<Point> = piece.iter().map(|(x, y)| Point::new(*x, *y)).collect();
    let hair = 1e-6;
    let next = |k: usize| corners[(k + 1) % 4];
    // In the rectangle's own frame: no corner of the piece inside, no edge of it through.
    let (u, v) = (
        (next(0) - corners[0]).unit(),
        (corners[3] - corners[0]).unit(),
    );
    let (w, h) = (
        corners[0].distance(corners[1]),
        corners[0].distance(corners[3]),
    );
    let own: Vec<(f64, f64)> = ring
        .iter()
        .map(|p| ((*p - corners[0]).dot(u), (*p - corners[0]).dot(v)))
        .collect();
    let cut = own.iter().zip(own.iter().cycle().skip(1)).any(|(a, b)| {
        // The part of the edge inside the rectangle less a hair, by clipping.
        let (mut from, mut to) = (0.0_f64, 1.0_f64);
        for (p, q, low, high) in [(a.0, b.0, hair, w - hair), (a.1, b.1, hair, h - hair)] {
            let rise = q - p;
            if rise.abs() < 1e-12 {
                if p <= low || p >= high {
                    return false;
                }
            } else {
                let (s, t) = ((low - p) / rise, (high - p) / rise);
                from = from.max(s.min(t));
                to = to.min(s.max(t));
            }
        }
        from < to
    });
    let middle = corners[0].midpoint(corners[2]);
    !cut && outline(piece).side(middle) == Side::Inside
}

fn at(middle: (f64, f64), turn: f64, w: f64, h: f64) -> [Point; 4] {
    let (sin, cos) = turn.sin_cos();
    [(-1.0, -1.0), (1.0, -1.0), (1.0, 1.0), (-1.0, 1.0)].map(|(a, b)| {
        let (x, y) = (a * w / 2.0, b * h / 2.0);
        Point::new(middle.0 + x * cos - y * sin, middle.1 + x * sin + y * cos)
    })
}

fn checked(name: &str, piece: &[(f64, f64)], best: Option<Rectangle>) -> Rectangle {
    let best = best.unwrap_or_else(|| panic!("{name}: none"));
    let [a, b, c, d] = best.corners;
    assert!(
        (b - a).dot(c - b).abs() < 1e-6 * best.area(),
        "{name}: not square"
    );
    assert!(
        (a.midpoint(c)).distance(b.midpoint(d)) < 1e-6,
        "{name}: no rectangle"
    );
    assert!(lies_in(piece, &best.corners), "{name}: {best:?} sticks out");
    best
}

#[test]
fn known_ones() {
    // Half of a triangle at most, and that along its longest side as along any.
    let piece = [(0.0, 0.0), (500.0, 0.0), (0.0, 300.0)];
    let best = checked(
        "right triangle",
        &piece,
        best_at_any_angle(&outline(&piece)),
    );
    assert!(
        (best.area() - 75_000.0 / 2.0).abs() < 25.0,
        "{}",
        best.area()
    );
    let along = checked("right triangle", &piece, best_along_edges(&outline(&piece)));
    assert!((along.area() - 37_500.0).abs() < 1e-3, "{}", along.area());
    // A square stood on its corner in a strip of two ends.
    let square = [(100.0, 0.0), (200.0, 100.0), (100.0, 200.0), (0.0, 100.0)];
    let best = checked("square", &square, best_at_any_angle(&outline(&square)));
    assert!((best.area() - 20_000.0).abs() < 1e-3, "{}", best.area());
}

/// No rectangle of a fine grid of angles and places that lies in the piece is larger.
#[test]
fn brute_force_finds_none_larger() {
    for (name, piece) in pieces() {
        let whole = outline(&piece);
        let any = checked(name, &piece, best_at_any_angle(&whole));
        let along = checked(name, &piece, best_along_edges(&whole));
        assert!(along.area() <= any.area() + 1e-6, "{name}");
        let bounds = whole.bounds();
        let (mut most, steps) = (0.0_f64, 24);
        for turn in 0..90 {
            let turn = f64::from(turn) / 90.0 * FRAC_PI_2;
            for i in 1..steps {
                for j in 1..steps {
                    let middle = (
                        bounds.min.x + bounds.width() * f64::from(i) / f64::from(steps),
                        bounds.min.y + bounds.height() * f64::from(j) / f64::from(steps),
                    );
                    most = most.max(grown(&piece, middle, turn, most));
                }
            }
        }
        let slack = 0.1 * (any.sides().0 + any.sides().1);
        assert!(
            most <= any.area() + slack,
            "{name}: {most}, found {}",
            any.area()
        );
        // The grid comes near: it is a check and no mere formality.
        assert!(
            most > 0.7 * any.area(),
            "{name}: {most}, found {}",
            any.area()
        );
    }
}

/// The largest of a few shapes about a middle that lies in the piece, mm², when larger than another.
fn grown(piece: &[(f64, f64)], middle: (f64, f64), turn: f64, beat: f64) -> f64 {
    let mut most = 0.0_f64;
    for k in 0..17 {
        let slender = 2.0_f64.powf(f64::from(k) * 0.25 - 2.0);
        let area = |w: f64| w * w * slender;
        let fits = |w: f64| lies_in(piece, &at(middle, turn, w, w * slender));
        let (mut low, mut high) = ((beat.max(most) / slender).sqrt(), 2000.0);
        if !fits(low.max(1.0)) {
            continue;
        }
        for _ in 0..14 {
            let w = f64::midpoint(low, high);
            if fits(w) {
                low = w;
            } else {
                high = w;
            }
        }
        most = most.max(area(low));
    }
    most
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 60, failure_persistence: None, ..Default::default() })]

    /// Turned about, a piece has the same best rectangle.
    #[test]
    fn turned_pieces_have_the_same(which in 0_usize..7, turn in -3.0_f64..3.0) {
        let (name, piece) = pieces().swap_remove(which);
        let (sin, cos) = turn.sin_cos();
        let turned: Vec<(f64, f64)> = piece
            .iter()
            .map(|(x, y)| (x * cos - y * sin, x * sin + y * cos))
            .collect();
        let best = |p: &[(f64, f64)]| best_along_edges(&outline(p)).map_or(0.0, |r| r.area());
        let (a, b) = (best(&piece), best(&turned));
        prop_assert!((a - b).abs() < 1e-3 * a.sqrt(), "{}: {} and {}", name, a, b);
    }
}
