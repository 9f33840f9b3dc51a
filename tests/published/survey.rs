//! The slab as measured: against worked examples of surveyors, and against a least-squares library.
//!
//! The library is rmpfit, MINPACK's Levenberg-Marquardt with derivatives by differences: another
//! method, another start, other code.

use kerfwright::geom::Point;
use kerfwright::job::survey::network::{self, Adjusted, Free, Leg};
use kerfwright::job::survey::quadrilateral::{Quadrilateral, Refusal, Tape};
use kerfwright::job::survey::ties::CornerTapes;
use kerfwright::job::survey::{Misclosure, apex};
use kerfwright::units::LengthUnit;
use proptest::prelude::*;
use rmpfit::{MPFitter, MPResult};

use crate::printed;

fn p(x: f64, y: f64) -> Point {
    Point::new(x, y)
}

/// The angle at `here` between two points, degrees.
fn angle(here: Point, one: Point, other: Point) -> f64 {
    let (a, b) = (one - here, other - here);
    a.cross(b).atan2(a.dot(b)).abs().to_degrees()
}

#[test]
fn the_apex_of_a_triangle_by_its_sides() {
    // "Trilateration Problem", review notes for surveyors, scribd.com document 795531250, pages 1 to 3
    // (R): AB 923.245, BC 517.328, CA 896.126 m; angles A 32°59'46.9", B 70°37'14.7", C 76°22'58.4";
    // B at N 9450.085, E 10150.022, so A at N 10032.650, E 10866.262 and C at N 9936.999, E 9975.255.
    let (a, b) = (p(0.0, 0.0), p(923.245, 0.0));
    let c = apex(923.245, 896.126, 517.328).unwrap();
    let degrees = |d: f64, m: f64, s: f64| d + m / 60.0 + s / 3600.0;
    // The angle at A is 46.952" and printed as 46.9": the text cuts off, so a whole tenth is allowed.
    let printed = |found: f64, expected: f64| {
        assert!(
            (found - expected).abs() * 3600.0 <= 0.1,
            "{found} {expected}"
        );
    };
    printed(angle(a, b, c), degrees(32.0, 59.0, 46.9));
    printed(angle(b, a, c), degrees(70.0, 37.0, 14.7));
    printed(angle(c, a, b), degrees(76.0, 22.0, 58.4));
    // The printed places, carried into the frame of the triangle; each printed to the millimetre.
    let (pa, pb, pc) = (
        p(10_866.262, 10_032.650),
        p(10_150.022, 9_450.085),
        p(9_975.255, 9_936.999),
    );
    let along = (pb - pa).unit();
    let placed = p((pc - pa).dot(along), (pc - pa).cross(along).abs());
    assert!(placed.distance(c) < 0.002, "{placed:?} {c:?}");
    // The same corner as a tie of the base line AB.
    let (left, right) = (896.126, 517.328);
    let tie = CornerTapes {
        left,
        right,
        middle: None,
    };
    assert!(tie.corner(923.245, 0.001).unwrap().distance(c) < 1e-9);
}

#[test]
fn a_point_by_three_distances() {
    // Ghilani, Adjustment Computations, 5th ed., Example 14.2. The stations and the distances, ft, are in
    // the book's own worked sheet for chapter 14 (R, geolabsolutions.com, "Adjustment of Horizontal
    // Surveys: Trilateration"); what the book prints for the answer was not at hand: residuals −0.037,
    // 0.077, −0.047 and a standard deviation of unit weight of 0.098 ft are from memory (M).
    let stations = [
        p(865.40, 4_527.15),
        p(2_432.55, 2_047.25),
        p(2_865.22, 27.15),
    ];
    let taped = [6_049.00, 4_736.83, 5_446.49];
    let start = p(6_800.0, 3_800.0);
    let found = fix(&stations, &taped, start);
    for (residual, expected) in found.residuals.iter().zip([-0.037, 0.077, -0.047]) {
        printed(*residual, expected, 3);
    }
    // Three distances, two unknowns: one redundant.
    printed(found.sum_of_squares().sqrt(), 0.098, 3);
    let other = library(
        &points(&stations, start),
        &[Free::X(3), Free::Y(3)],
        &legs(&taped),
    );
    assert!(found.points[3].distance(other.points[3]) < 1e-4);
}

fn points(stations: &[Point], start: Point) -> Vec<Point> {
    stations.iter().copied().chain([start]).collect()
}

/// Tapes from points 0, 1 … to the point after the last of them.
fn legs(taped: &[f64]) -> Vec<Leg> {
    let to = taped.len();
    let leg = |(from, taped): (usize, &f64)| Leg {
        ends: [from, to],
        taped: *taped,
    };
    taped.iter().enumerate().map(leg).collect()
}

fn fix(stations: &[Point], taped: &[f64], start: Point) -> Adjusted {
    let free = [Free::X(stations.len()), Free::Y(stations.len())];
    network::adjust(&points(stations, start), &free, &legs(taped)).unwrap()
}

/// Chandra, Higher Surveying, Example 3.3, page 53: the six sides of a braced quadrilateral, m (Q: the
/// figures as two companions of worked examples give them, one in Scilab and one in Python).
fn chandra() -> Quadrilateral {
    Quadrilateral {
        sides: [1_525.456, 2_176.945, 1_697.435, 2_401.435],
        diagonals: [Some(3_073.845), Some(2_483.115)],
    }
}

#[test]
fn a_braced_quadrilateral() {
    // The example closes the figure by angles: eight of them by the cosine rule, their conditions
    // e1 = 360° − Σ, e2 = A1 + B1 − A3 − B3 and e3 = A2 + B2 − A4 − B4, each shared out in equal parts.
    // What its text prints was not at hand (C). The same steps, written out here, give the lengths below
    // with AB held; least squares on the lengths themselves must stay as near to the tapes or nearer.
    let q = chandra();
    let [ab, bc, cd, da] = q.sides;
    let [Some(ac), Some(bd)] = q.diagonals else {
        unreachable!()
    };
    let at = |a: f64, b: f64, c: f64| ((a * a + b * b - c * c) / (2.0 * a * b)).acos();
    let mut a = [
        at(cd, ac, da),
        at(da, bd, ab),
        at(ab, ac, bc),
        at(bc, bd, cd),
    ];
    let mut b = [
        at(cd, bd, bc),
        at(da, ac, cd),
        at(ab, bd, da),
        at(ac, bc, ab),
    ];
    let all: f64 = a.iter().chain(&b).sum();
    let (e1, e2, e3) = (
        std::f64::consts::TAU - all,
        a[0] + b[0] - a[2] - b[2],
        a[1] + b[1] - a[3] - b[3],
    );
    for (i, (a, b)) in a.iter_mut().zip(&mut b).enumerate() {
        let by = e1 / 8.0 + [-e2, -e3, e2, e3][i] / 4.0;
        *a += by;
        *b += by;
    }
    let by_angles = [
        ab,
        ab * a[2].sin() / b[3].sin(),
        ab * a[2].sin() / b[3].sin() * a[3].sin() / b[0].sin(),
        ab * b[2].sin() / a[1].sin(),
        ab * (a[3] + b[2]).sin() / b[3].sin(),
        ab * (a[2] + b[1]).sin() / a[1].sin(),
    ];
    let taped = Tape::ALL.map(|t| q.taped(t).unwrap());
    let squares = |lengths: &[f64]| -> f64 {
        let terms = lengths.iter().zip(&taped).map(|(l, t)| (l - t).powi(2));
        terms.sum()
    };
    let found = q.misclosure(0.05, LengthUnit::Millimetre).unwrap();
    let adjusted: Vec<f64> = found.tapes.iter().map(|t| t.adjusted).collect();
    assert!(squares(&adjusted) < squares(&by_angles), "{by_angles:?}");
    // By angles the figure closes roughly where it closes by lengths: every side within the misclosure.
    printed(found.by(), 0.587, 3);
    for (one, other) in adjusted.iter().zip(&by_angles) {
        assert!((one - other).abs() < found.by().abs(), "{one} {other}");
    }
}

#[test]
fn one_redundant_tape_in_closed_form() {
    // Adjustment by one condition: with slopes a of the misclosure w the residuals are −a·w/Σa² and the
    // normalised residuals all equal (Mikhail and Ackermann, Observations and Least Squares, 1976, chapter
    // 7, from memory (M)). Near enough for a small w.
    let q = Quadrilateral {
        sides: [2640.0, 902.0, 2636.0, 899.0],
        diagonals: [Some(2790.0), Some(2785.5)],
    };
    let found = q.misclosure(1.0, LengthUnit::Millimetre).unwrap();
    let slope = |t: &str| {
        let tape = found.tapes.iter().find(|c| c.name == t).unwrap();
        found.explained / tape.open
    };
    let slopes = ["AB", "BC", "CD", "DA", "AC", "BD"].map(slope);
    let all: f64 = slopes.iter().map(|s| s * s).sum();
    for (tape, slope) in found.tapes.iter().zip(slopes) {
        let residual = (tape.adjusted - tape.taped).abs();
        let expected = slope * found.by().abs() / all;
        assert!((residual - expected).abs() < 1e-3 * expected, "{tape:?}");
    }
    // In a parallelogram 2·AC·dAC + 2·BD·dBD = 2·ΣLdL, so four slopes' squares sum to 2(AB² + BC²)/BD²,
    // which is 2 for a rectangle, and the diagonals' to 2: the tape's error is explained four times over.
    let rectangle = Quadrilateral {
        sides: [2640.0, 905.0, 2640.0, 905.0],
        diagonals: [Some(2640.0_f64.hypot(905.0)); 2],
    };
    let found = rectangle.misclosure(1.0, LengthUnit::Millimetre).unwrap();
    assert!(found.by().abs() < 1e-9 && (found.explained - 4.0).abs() < 1e-4);
}

/// The same problem given to the library.
struct Problem<'a> {
    points: &'a [Point],
    free: &'a [Free],
    legs: &'a [Leg],
}

impl Problem<'_> {
    fn placed(&self, coordinates: &[f64]) -> Vec<Point> {
        let mut points = self.points.to_vec();
        for (free, value) in self.free.iter().zip(coordinates) {
            match *free {
                Free::X(i) => points[i].x = *value,
                Free::Y(i) => points[i].y = *value,
            }
        }
        points
    }
}

impl MPFitter for Problem<'_> {
    fn eval(&mut self, coordinates: &[f64], deviates: &mut [f64]) -> MPResult<()> {
        let points = self.placed(coordinates);
        for (deviate, leg) in deviates.iter_mut().zip(self.legs) {
            *deviate = points[leg.ends[1]].distance(points[leg.ends[0]]) - leg.taped;
        }
        Ok(())
    }

    fn number_of_points(&self) -> usize {
        self.legs.len()
    }
}

/// What the library makes of it.
fn library(points: &[Point], free: &[Free], legs: &[Leg]) -> Adjusted {
    let mut coordinates: Vec<f64> = free
        .iter()
        .map(|f| match *f {
            Free::X(i) => points[i].x,
            Free::Y(i) => points[i].y,
        })
        .collect();
    let mut problem = Problem { points, free, legs };
    problem.mpfit(&mut coordinates).unwrap();
    let mut residuals = vec![0.0; legs.len()];
    problem.eval(&coordinates, &mut residuals).unwrap();
    let points = problem.placed(&coordinates);
    Adjusted { points, residuals }
}

/// Slabs with four corners: edges from 300 to 3000 mm, corners from 60° or so to 120°.
fn slabs() -> impl Strategy<Value = [Point; 4]> {
    let size = (600.0..3000.0_f64, 400.0..1500.0_f64);
    (size, prop::array::uniform6(-0.15..0.15_f64)).prop_map(|((l, w), lean)| {
        let a = p(0.0, 0.0);
        let b = p(l, 0.0);
        let c = p(l * (1.0 + lean[0]), w * (1.0 + lean[1]));
        let d = p(l * lean[2], w * (1.0 + lean[3]));
        [a, b, c, d]
    })
}

fn taped(corners: &[Point; 4]) -> Quadrilateral {
    let length = |tape: Tape| corners[tape.ends()[0]].distance(corners[tape.ends()[1]]);
    let [ab, bc, cd, da, ac, bd] = Tape::ALL.map(length);
    Quadrilateral {
        sides: [ab, bc, cd, da],
        diagonals: [Some(ac), Some(bd)],
    }
}

fn checked(q: &Quadrilateral) -> Misclosure {
    q.misclosure(1.0, LengthUnit::Millimetre).unwrap()
}

fn reading(q: &Quadrilateral, errors: &[f64; 6]) -> Quadrilateral {
    let tapes = Tape::ALL.into_iter().zip(errors);
    tapes.fold(*q, |q, (tape, by)| {
        q.with(tape, q.taped(tape).unwrap() + by)
    })
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(200))]

    #[test]
    fn a_slab_comes_back_from_its_tapes(corners in slabs()) {
        let all = taped(&corners);
        let [ac, bd] = all.diagonals;
        for diagonals in [[ac, bd], [ac, None], [None, bd]] {
            let found = Quadrilateral { diagonals, ..all }.corners().unwrap();
            for (one, other) in found.iter().zip(&corners) {
                prop_assert!(one.distance(*other) < 1e-6, "{one:?} {other:?}");
            }
        }
        prop_assert!(checked(&all).by().abs() < 1e-6);
    }

    #[test]
    fn a_slab_comes_back_from_its_ties(
        corners in slabs(),
        marks in ((-400.0..200.0_f64, -500.0..-50.0_f64), (0.4..1.5_f64, -500.0..-50.0_f64)),
    ) {
        let ((left, below), (right, deep)) = marks;
        let (from, to) = (p(left, below), p(left + 400.0 + 2000.0 * right, deep));
        let (base, middle) = (from.distance(to), from.midpoint(to));
        let along = (to - from).unit();
        for corner in corners {
            let (l, r, m) = (corner.distance(from), corner.distance(to), corner.distance(middle));
            let here = p((corner - from).dot(along), along.cross(corner - from));
            prop_assume!(here.y > 1.0);
            for middle in [None, Some(m)] {
                let tie = CornerTapes { left: l, right: r, middle };
                prop_assert!(tie.corner(base, 1.0).unwrap().distance(here) < 1e-6);
            }
            let tie = CornerTapes { left: l, right: r, middle: Some(m) };
            let found = tie.misclosure("C", base, 1.0, LengthUnit::Millimetre).unwrap();
            prop_assert!(found.by().abs() < 1e-6 && found.is_explained());
        }
    }

    #[test]
    fn noise_is_shared_out_as_well_as_the_library_does(
        corners in slabs(),
        errors in prop::array::uniform6(-3.0..3.0_f64),
    ) {
        let read = reading(&taped(&corners), &errors);
        let found = read.corners().unwrap();
        let legs = Tape::ALL.map(|t| Leg { ends: t.ends(), taped: read.taped(t).unwrap() });
        let squares = |points: &[Point]| -> f64 {
            let residual = |l: &Leg| points[l.ends[0]].distance(points[l.ends[1]]) - l.taped;
            legs.iter().map(|l| residual(l).powi(2)).sum()
        };
        // Never worse than the truth, nor than any five tapes taken alone.
        prop_assert!(squares(&found) <= squares(&corners) + 1e-9);
        let [ac, bd] = read.diagonals;
        for diagonals in [[ac, None], [None, bd]] {
            let five = Quadrilateral { diagonals, ..read }.corners().unwrap();
            prop_assert!(squares(&found) <= squares(&five) + 1e-9);
        }
        let free = [Free::X(1), Free::X(2), Free::Y(2), Free::X(3), Free::Y(3)];
        let other = library(&corners, &free, &legs);
        prop_assert!((squares(&found) - other.sum_of_squares()).abs() < 1e-6);
        for (one, other) in found.iter().zip(&other.points) {
            prop_assert!(one.distance(*other) < 0.01, "{one:?} {other:?}");
        }
    }

    #[test]
    fn each_tape_would_close_the_slab_alone(
        corners in slabs(),
        errors in prop::array::uniform6(-3.0..3.0_f64),
    ) {
        let read = reading(&taped(&corners), &errors);
        for tape in checked(&read).tapes {
            let which = Tape::ALL.into_iter().find(|t| t.name() == tape.name).unwrap();
            // A tape near the limits of its triangle may have no length that closes.
            if let Some(alone) = tape.alone {
                prop_assert!(checked(&read.with(which, alone)).by().abs() < 1e-6);
            }
        }
    }

    #[test]
    fn a_tape_misread_by_100_mm_is_told_and_named(
        corners in slabs(),
        which in 0..6_usize,
        sign in prop::bool::ANY,
        errors in prop::array::uniform6(-0.3..0.3_f64),
    ) {
        let tape = Tape::ALL[which];
        let by = if sign { 100.0 } else { -100.0 };
        let good = reading(&taped(&corners), &errors);
        let read = good.with(tape, good.taped(tape).unwrap() + by);
        // A triangle that does not close: the tape is among those that could be wrong.
        for refusal in read.corners().err().unwrap_or_default() {
            match refusal {
                Refusal::NoTriangle(open) => {
                    let named = open.could_be.iter().any(|(t, _)| *t == tape);
                    prop_assert!(named, "{open:?}");
                    return Ok(());
                }
                // Told by the misclosure before the shape is.
                Refusal::InsideCorner { .. } => {}
                other => prop_assert!(false, "{other:?}"),
            }
        }
        let found = checked(&read);
        prop_assert!(!found.is_explained(), "{found:?}");
        let named = found.suspects().iter().any(|t| t.name == tape.name());
        prop_assert!(named, "{tape:?} {found:?}");
    }

    #[test]
    fn ties_with_noise_fit_as_well_as_the_library_does(
        corner in (200.0..2400.0_f64, 200.0..1500.0_f64),
        errors in prop::array::uniform3(-2.0..2.0_f64),
    ) {
        let base = 2640.0;
        let (marks, at) = ([p(0.0, 0.0), p(base, 0.0), p(base / 2.0, 0.0)], p(corner.0, corner.1));
        let read: Vec<f64> = marks.iter().zip(errors).map(|(m, e)| m.distance(at) + e).collect();
        let tie = CornerTapes { left: read[0], right: read[1], middle: Some(read[2]) };
        let found = tie.corner(base, 1.0).unwrap();
        let squares = |at: Point| -> f64 {
            marks.iter().zip(&read).map(|(m, l)| (m.distance(at) - l).powi(2)).sum()
        };
        let other = library(&points(&marks, at), &[Free::X(3), Free::Y(3)], &legs(&read));
        prop_assert!(squares(found) <= squares(at) + 1e-9);
        prop_assert!((squares(found) - other.sum_of_squares()).abs() < 1e-6);
        prop_assert!(found.distance(other.points[3]) < 0.01);
    }

    #[test]
    fn a_tie_misread_by_100_mm_is_told_and_named(
        corner in (200.0..2400.0_f64, 300.0..1500.0_f64),
        which in 0..3_usize,
        sign in prop::bool::ANY,
    ) {
        let base = 2640.0;
        let (marks, at) = ([p(0.0, 0.0), p(base, 0.0), p(base / 2.0, 0.0)], p(corner.0, corner.1));
        let mut read: Vec<f64> = marks.iter().map(|m| m.distance(at)).collect();
        read[which] += if sign { 100.0 } else { -100.0 };
        let tie = CornerTapes { left: read[0], right: read[1], middle: Some(read[2]) };
        if tie.corner(base, 1.0).is_ok() {
            let found = tie.misclosure("C", base, 1.0, LengthUnit::Millimetre).unwrap();
            prop_assert!(!found.is_explained());
            let names = ["from the left mark", "from the right mark", "from the middle"];
            prop_assert!(found.suspects().iter().any(|t| t.name == names[which]), "{found:?}");
        }
    }
}
