//! A plank round a corner: published numbers, and what must hold for every corner.

use kerfwright::handle::route::{Corner, How, Longest, Turning};

use crate::fixtures::{Spread, close};

fn corner(from_mm: f64, to_mm: f64, thickness_mm: f64) -> Corner {
    Corner {
        from_mm,
        to_mm,
        thickness_mm,
    }
}

fn turned(corner: &Corner) -> (f64, f64) {
    match corner.turning() {
        Turning::UpTo(Longest {
            length_mm,
            how: How::Turned { tightest },
        }) => (length_mm, tightest),
        other => panic!("{other:?}"),
    }
}

// A ladder without thickness: textbook problems, read. Corridors of 2 and 3: 7.0234824 (J. Loy,
// "Ladder around a corner"); 3 and 4: 9.8657. In closed form (a^(2/3) + b^(2/3))^(3/2).
#[test]
fn a_plank_without_thickness() {
    close(turned(&corner(2.0, 3.0, 0.0)).0, 7.023_482_4, 5e-8);
    close(turned(&corner(3.0, 4.0, 0.0)).0, 9.8657, 5e-5);
    let mut spread = Spread(7);
    for _ in 0..500 {
        let (a, b) = (spread.between(500.0, 3000.0), spread.between(500.0, 3000.0));
        let closed = (a.powf(2.0 / 3.0) + b.powf(2.0 / 3.0)).powf(1.5);
        let (length, angle) = turned(&corner(a, b, 0.0));
        close(length, closed, 1e-9 * closed);
        close(angle.tan(), (b / a).cbrt(), 1e-9);
    }
}

// Moretti, College Mathematics Journal 33(3), 2002 (read): corridors 8 and 3, thickness 1. Printed:
// 12.8927 at a slope of 0.600861; the least of the same formula is 12.8563 at 33.53°.
#[test]
fn a_plank_with_thickness() {
    let corner = corner(8.0, 3.0, 1.0);
    close(corner.room_at(0.600_861_f64.atan()), 12.8927, 5e-5);
    let (length, angle) = turned(&corner);
    close(length, 12.8563, 5e-5);
    close(angle.to_degrees(), 33.53, 5e-3);
}

#[test]
fn no_angle_has_less_room_than_the_tightest() {
    let mut spread = Spread(11);
    for _ in 0..300 {
        let (a, b) = (spread.between(400.0, 2500.0), spread.between(400.0, 2500.0));
        let corner = corner(a, b, spread.between(0.0, 0.999) * a.min(b));
        let least = corner.room_at(corner.tightest());
        for i in 1..2000 {
            let angle = f64::from(i) / 2000.0 * std::f64::consts::FRAC_PI_2;
            assert!(corner.room_at(angle) >= least - 1e-9 * least, "{corner:?}");
        }
    }
}

#[test]
fn a_corner_is_the_same_both_ways() {
    let mut spread = Spread(13);
    for _ in 0..300 {
        let (a, b) = (spread.between(400.0, 2500.0), spread.between(400.0, 2500.0));
        let corner = corner(a, b, spread.between(0.0, 1.1) * a.min(b));
        match (corner.longest_mm(), corner.reversed().longest_mm()) {
            (Some(there), Some(back)) => close(there, back, 1e-9 * there),
            (None, None) => assert!(corner.thickness_mm > a.min(b)),
            other => panic!("{corner:?}: {other:?}"),
        }
    }
}

#[test]
fn a_thicker_plank_is_shorter_and_a_wider_way_takes_a_longer_one() {
    let mut spread = Spread(17);
    for _ in 0..300 {
        let (a, b) = (spread.between(600.0, 2500.0), spread.between(600.0, 2500.0));
        let t = spread.between(0.0, 500.0);
        let longest = |from, to, t| corner(from, to, t).longest_mm().unwrap();
        assert!(longest(a, b, t + 20.0) <= longest(a, b, t));
        assert!(longest(a + 10.0, b, t) > longest(a, b, t));
        assert!(longest(a, b + 10.0, t) > longest(a, b, t));
    }
}

#[test]
fn the_least_widths_are_just_enough() {
    let mut spread = Spread(19);
    for _ in 0..200 {
        let tight = corner(
            spread.between(500.0, 1500.0),
            spread.between(500.0, 1500.0),
            spread.between(30.0, 300.0),
        );
        let length = tight.longest_mm().unwrap() * spread.between(1.0, 1.6);
        let from = tight.least_from_mm(length).unwrap();
        let to = tight.least_to_mm(length).unwrap();
        let both = tight.least_both_mm(length);
        assert!(from >= tight.from_mm - 1e-6 && to >= tight.to_mm - 1e-6);
        let takes = |from_mm: f64, to_mm: f64| {
            let wider = Corner {
                from_mm,
                to_mm,
                ..tight
            };
            wider.longest_mm().is_some_and(|l| l >= length - 1e-9)
        };
        assert!(takes(from, tight.to_mm) && !takes(from - 0.01, tight.to_mm));
        assert!(takes(tight.from_mm, to) && !takes(tight.from_mm, to - 0.01));
        assert!(takes(both, both) && !takes(both - 0.01, both - 0.01));
    }
    assert_eq!(corner(900.0, 80.0, 100.0).least_from_mm(2000.0), None);
}

#[test]
fn a_short_thick_one_goes_broadside() {
    // 0.95 m thick in corridors of 1 m: turning leaves 0.928 m, but 1 m goes broadside.
    let corner = corner(1000.0, 1000.0, 950.0);
    assert_eq!(
        corner.turning(),
        Turning::UpTo(Longest {
            length_mm: 1000.0,
            how: How::Sideways
        })
    );
    close(corner.room_at(corner.tightest()), 928.427, 1e-3);
    let too_thick = Corner {
        thickness_mm: 1000.5,
        ..corner
    };
    assert_eq!(too_thick.turning(), Turning::TooThick(0.5));
}
