//! The shape of the disc's cut, against printed answers for circular segments.

use kerfwright::cut::ConcaveArc;
use kerfwright::cut::disc::{Sunk, half_length};
use kerfwright::job::{Disc, DiscUse};

use super::near;

fn disc(diameter: f64) -> Disc {
    Disc {
        bore: 22.23,
        bond: kerfwright::job::Bond::Diamond,
        name: "a disc".into(),
        diameter,
        kerf: 2.0,
        obstruction: 1.0,
        max_rpm: 10_000.0,
        usage: DiscUse::All,
    }
}

/// `MatheAss`, help page "circle parts": chord 21, rise 6 give r 12.1875. A disc of that radius sunk to
/// 6 cuts 21 long; the same chord inside an arc of that radius leaves 6 beside its middle.
#[test]
fn chord_21_and_rise_6() {
    near(
        2.0 * half_length(&disc(2.0 * 12.1875), 6.0, 0.0),
        21.0,
        1e-9,
    );
    let sunk = Sunk {
        face_mm: 10.5,
        under_mm: 0.0,
    };
    let hollow = ConcaveArc::of(12.1875, sunk).expect("room for it");
    near(hollow.sagitta, 6.0, 1e-9);
    near(hollow.left_under, 6.0, 1e-9);
}

/// `MatheAss`, help page "circle parts": arc 1 and 45° give r 1.2732395, chord 0.97449536, rise
/// 0.096919589.
#[test]
fn arc_1_and_45_degrees() {
    let length = 2.0 * half_length(&disc(2.0 * 1.273_239_5), 0.096_919_589, 0.0);
    near(length, 0.974_495_36, 5e-8);
    let sunk = Sunk {
        face_mm: 0.974_495_36 / 2.0,
        under_mm: 0.1,
    };
    let hollow = ConcaveArc::of(1.273_239_5, sunk).expect("room for it");
    near(hollow.sagitta, 0.096_919_589, 5e-8);
}

/// A disc whose cut is as long as the circle is wide finds no room in it.
#[test]
fn no_room_in_a_tight_hollow() {
    let sunk = Sunk {
        face_mm: 55.0,
        under_mm: 19.0,
    };
    assert_eq!(ConcaveArc::of(55.0, sunk), None);
    assert!(ConcaveArc::of(55.1, sunk).is_some());
}

/// Below the rim there is nothing; past the centre the cut is as long as the disc is wide.
#[test]
fn ends_of_the_disc() {
    let disc = disc(100.0);
    assert_eq!(half_length(&disc, 20.0, 20.0), 0.0);
    assert_eq!(half_length(&disc, 20.0, 25.0), 0.0);
    assert_eq!(half_length(&disc, 60.0, 0.0), 50.0);
}
