//! A rectangle moved round the corner in small steps, with clipper2 watching the walls.
//!
//! Nothing here uses the formula. The two corridors are a polygon; the rectangle is pushed into
//! the outer corner at each angle, since every other place at that angle is nearer to the inner
//! corner, and whatever sticks out of the polygon is measured.

use clipper2_rust::{FillRule, Path64, Point64, area, difference_64};
use kerfwright::handle::route::{Corner, How, Turning};

use crate::fixtures::Spread;

/// Grid steps to the millimetre.
const GRID: f64 = 1e5;
/// Steps of the turn through a right angle.
const STEPS: i32 = 1800;
/// More than this outside the corridors, mm², is a wall hit.
const TOUCH_MM2: f64 = 1e-2;
/// How far the corridors reach, mm.
const FAR_MM: f64 = 30_000.0;

/// The two corridors: the first comes up from below, the second goes off to the right, the outer
/// corner is the origin.
fn corridors(from: f64, to: f64) -> Path64 {
    path(&[
        (0.0, 0.0),
        (0.0, -FAR_MM),
        (from, -FAR_MM),
        (from, -to),
        (FAR_MM, -to),
        (FAR_MM, 0.0),
    ])
}

#[allow(clippy::cast_possible_truncation)] // thirty metres on the grid are 3e9
fn path(corners: &[(f64, f64)]) -> Path64 {
    let point =
        |c: &(f64, f64)| Point64::new((c.0 * GRID).round() as i64, (c.1 * GRID).round() as i64);
    corners.iter().map(point).collect()
}

/// A rectangle whose long side makes an angle with the second corridor, pushed into the outer
/// corner.
fn rectangle(length: f64, thickness: f64, angle: f64) -> Path64 {
    let (sin, cos) = angle.sin_cos();
    let along = (length * cos, length * sin);
    let across = (thickness * sin, -thickness * cos);
    let raw = [
        (0.0, 0.0),
        along,
        (along.0 + across.0, along.1 + across.1),
        across,
    ];
    let left = raw.iter().map(|c| c.0).fold(f64::INFINITY, f64::min);
    let top = raw.iter().map(|c| c.1).fold(f64::NEG_INFINITY, f64::max);
    path(&raw.map(|c| (c.0 - left, c.1 - top)))
}

/// What of the rectangle lies in a wall at an angle, mm².
fn in_a_wall(walls: &Path64, length: f64, thickness: f64, angle: f64) -> f64 {
    let plank = rectangle(length, thickness, angle);
    let out = difference_64(&vec![plank], &vec![walls.clone()], FillRule::NonZero);
    out.iter().map(area).sum::<f64>().abs() / (GRID * GRID)
}

/// Turned step by step from one corridor into the other.
fn gets_round(corner: &Corner, length: f64) -> bool {
    let walls = corridors(corner.from_mm, corner.to_mm);
    (0..=STEPS).all(|i| {
        let angle = f64::from(i) / f64::from(STEPS) * std::f64::consts::FRAC_PI_2;
        in_a_wall(&walls, length, corner.thickness_mm, angle) < TOUCH_MM2
    })
}

/// Along one corridor, then broadside along the other.
fn goes_broadside(corner: &Corner, length: f64) -> bool {
    let fits = corner.thickness_mm <= corner.from_mm.min(corner.to_mm);
    fits && length <= corner.from_mm.max(corner.to_mm)
}

#[test]
fn the_longest_plank_just_gets_round_random_corners() {
    let mut spread = Spread(2002);
    let mut turned = 0;
    for _ in 0..60 {
        let (from, to) = (spread.between(500.0, 2000.0), spread.between(500.0, 2000.0));
        let share = spread.next();
        let corner = Corner {
            from_mm: from,
            to_mm: to,
            thickness_mm: share * share * from.min(to),
        };
        let Turning::UpTo(longest) = corner.turning() else {
            panic!("{corner:?}");
        };
        let length = longest.length_mm;
        // One that is a tenth of a millimetre shorter touches nothing; one that is a millimetre
        // longer is well inside the inner corner between two steps.
        let (shorter, longer) = (length - 0.1, length + 1.0);
        match longest.how {
            How::Turned { .. } => {
                turned += 1;
                assert!(gets_round(&corner, shorter), "{corner:?} {shorter}");
            }
            How::Sideways => assert!(goes_broadside(&corner, length), "{corner:?}"),
        }
        assert!(!gets_round(&corner, longer), "{corner:?} {longer}");
        assert!(!goes_broadside(&corner, longer), "{corner:?} {longer}");
    }
    assert!(turned > 40, "{turned}");
}

#[test]
fn the_inner_corner_touches_at_the_tightest_angle() {
    let mut spread = Spread(33);
    for _ in 0..60 {
        let corner = Corner {
            from_mm: spread.between(700.0, 1500.0),
            to_mm: spread.between(700.0, 1500.0),
            thickness_mm: spread.between(30.0, 300.0),
        };
        let walls = corridors(corner.from_mm, corner.to_mm);
        let angle = corner.tightest();
        let length = corner.longest_mm().unwrap();
        let hit = |length| in_a_wall(&walls, length, corner.thickness_mm, angle);
        assert!(hit(length - 0.1) < TOUCH_MM2, "{corner:?}");
        assert!(hit(length + 1.0) > TOUCH_MM2, "{corner:?}");
    }
}
