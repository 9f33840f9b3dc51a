//! Where two supports stress a flat stone least.

use super::bend::{Beam, Lie, Sense};

/// Least distance of a support from the balance point, mm (judgement: a trestle's half width).
const TRESTLE_MM: f64 = 25.0;
/// Places of the first support tried before the best of them is refined.
const TRIES: u8 = 24;
/// Most steps in search of the second support's place; every other one halves.
const STEPS: u8 = 84;
/// The second support's place is known to this, mm.
const CLOSE_MM: f64 = 1e-9;
/// Golden sections of the first support's place.
const SECTIONS: u8 = 48;

/// The two supports, mm from the end, with the least greatest stress when the stone lies flat.
///
/// With the first support fixed, moving the second outwards lets the stone sag more and hog less
/// everywhere, so the best second place is where the two stresses are equal.
/// The first place is the best of an even row, refined by golden section between its neighbours.
#[must_use]
pub fn best_supports(beam: &Beam<'_>) -> [f64; 2] {
    let inner = (beam.strip().middle() - TRESTLE_MM).max(0.0);
    let step = inner / f64::from(TRIES);
    let stress = |first: f64| worst(beam, [first, second(beam, first)]);
    let (_, best) = (0..=TRIES)
        .map(|k| step * f64::from(k))
        .map(|first| (stress(first), first))
        .reduce(|best, next| if next.0 < best.0 { next } else { best })
        .unwrap_or((0.0, 0.0));
    let (mut low, mut high) = ((best - step).max(0.0), (best + step).min(inner));
    let golden = 0.5 * (5.0_f64.sqrt() - 1.0);
    let (mut a, mut b) = (high - golden * (high - low), low + golden * (high - low));
    let (mut at_a, mut at_b) = (stress(a), stress(b));
    for _ in 0..SECTIONS {
        if at_a < at_b {
            (high, b, at_b) = (b, a, at_a);
            a = high - golden * (high - low);
            at_a = stress(a);
        } else {
            (low, a, at_a) = (a, b, at_b);
            b = low + golden * (high - low);
            at_b = stress(b);
        }
    }
    let first = f64::midpoint(low, high);
    [first, second(beam, first)]
}

/// The best second support for a first one: where sagging and hogging stress are equal. Steps along
/// the chord between the ends of the interval and halvings take turns.
fn second(beam: &Beam<'_>, first: f64) -> f64 {
    let length = beam.strip().length_mm();
    let hog_over_sag = |place: f64| {
        let of = |sense| beam.worst_of(Lie::Flat, [first, place], sense).stress_mpa;
        of(Sense::Hog) - of(Sense::Sag)
    };
    let mut low = (beam.strip().middle() + TRESTLE_MM).min(length);
    let mut high = length;
    let (mut at_low, mut at_high) = (hog_over_sag(low), hog_over_sag(high));
    // Stresses are even when they differ by no more than rounding makes of them.
    let even = 1e-13 * (at_low.abs() + at_high.abs());
    for step in 0..STEPS {
        if high - low <= CLOSE_MM {
            break;
        }
        let chord = low + (high - low) * at_low / (at_low - at_high);
        let place = if step % 2 == 0 && chord > low && chord < high {
            chord
        } else {
            f64::midpoint(low, high)
        };
        let here = hog_over_sag(place);
        if here.abs() <= even {
            return place;
        }
        if here > 0.0 {
            (low, at_low) = (place, here);
        } else {
            (high, at_high) = (place, here);
        }
    }
    // Where a width jumps the two stresses may jump past each other: take the better side.
    if worst(beam, [first, low]) < worst(beam, [first, high]) {
        low
    } else {
        high
    }
}

fn worst(beam: &Beam<'_>, supports: [f64; 2]) -> f64 {
    beam.worst(Lie::Flat, supports).stress_mpa
}
