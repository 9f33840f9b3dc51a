//! Where two supports stress a flat stone least.

use super::bend::{Beam, Lie, Sense, lowest};

/// Least distance of a support from the balance point, mm (judgement: a trestle's half width).
pub(super) const TRESTLE_MM: f64 = 25.0;
/// Places of the first support tried before the best of them is refined.
const TRIES: u8 = 32;
/// Most steps in search of the second support's place.
const STEPS: u8 = 60;
/// The second support's place is known to this, mm.
const CLOSE_MM: f64 = 1e-7;
/// The same while the first one's is only tried, mm.
const QUICK_MM: f64 = 0.5;
/// Golden sections of the first support's place: a sixteenth of its room to a thousand-millionth.
const SECTIONS: usize = 36;
/// The same for places that several stones share: to a thousandth of the room.
const QUICK_SECTIONS: usize = 9;

/// Where each of two supports may stand, from and to, mm from the end.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Room {
    /// The first.
    pub first: [f64; 2],
    /// The second.
    pub second: [f64; 2],
}

impl Room {
    /// Under one stone: clear of its balance point.
    #[must_use]
    pub fn under(beam: &Beam<'_>) -> Self {
        let (middle, [low, high]) = (beam.strip().middle(), beam.strip().reach());
        Self {
            first: [low, (middle - TRESTLE_MM).max(low)],
            second: [(middle + TRESTLE_MM).min(high), high],
        }
    }

    /// Under several stones at once; nothing when there is no such place.
    #[must_use]
    pub fn shared(self, other: Self) -> Option<Self> {
        let common = |a: [f64; 2], b: [f64; 2]| [a[0].max(b[0]), a[1].min(b[1])];
        let first = common(self.first, other.first);
        let second = common(self.second, other.second);
        (first[0] <= first[1] && second[0] <= second[1]).then_some(Self { first, second })
    }
}

/// The two supports, mm from the end, with the least greatest stress when the stone lies flat.
///
/// With the first support fixed, moving the second outwards lets the stone sag more and hog less
/// everywhere, so the best second place is where the two stresses are equal. The first place is
/// the best of an even row, judged at the stations alone, and refined by golden section on the
/// exact sections.
#[must_use]
pub fn best_supports(beam: &Beam<'_>) -> [f64; 2] {
    let room = Room::under(beam);
    let quick = Search {
        room,
        stress: |s, sense| beam.stress_at_stations(s, sense),
        close_mm: QUICK_MM,
    };
    let exact = Search {
        room,
        stress: |s, sense| beam.stress_of(Lie::Flat, s, sense),
        close_mm: CLOSE_MM,
    };
    let [low, high] = quick.stretch();
    exact.pair(lowest(low, high, SECTIONS, |first| exact.greatest(first)))
}

/// Supports that several stones, seen in the same frame, share in turn: the greatest of their
/// stresses is least, to about a millimetre.
#[must_use]
pub fn shared_supports(beams: &[Beam<'_>], room: Room) -> [f64; 2] {
    let search = Search {
        room,
        stress: |s, sense| {
            let each = beams.iter().map(|b| b.stress_at_stations(s, sense));
            each.fold(0.0, f64::max)
        },
        close_mm: QUICK_MM,
    };
    let [low, high] = search.stretch();
    search.pair(lowest(low, high, QUICK_SECTIONS, |first| {
        search.greatest(first)
    }))
}

/// A search for the pair whose greatest stress is least.
struct Search<F: Fn([f64; 2], Sense) -> f64> {
    room: Room,
    stress: F,
    /// The second support's place is found to this, mm.
    close_mm: f64,
}

impl<F: Fn([f64; 2], Sense) -> f64> Search<F> {
    /// The pair with a first support and the best second one for it.
    fn pair(&self, first: f64) -> [f64; 2] {
        [first, self.second(first)]
    }

    fn greatest(&self, first: f64) -> f64 {
        let pair = self.pair(first);
        (self.stress)(pair, Sense::Sag).max((self.stress)(pair, Sense::Hog))
    }

    /// The stretch round the best first place of an even row.
    fn stretch(&self) -> [f64; 2] {
        let [low, high] = self.room.first;
        let step = (high - low) / f64::from(TRIES);
        let best = (0..=TRIES)
            .map(|k| low + step * f64::from(k))
            .map(|first| (self.greatest(first), first))
            .reduce(|best, next| if next.0 < best.0 { next } else { best })
            .map_or(low, |best| best.1);
        [(best - step).max(low), (best + step).min(high)]
    }

    /// The best second support for a first one: where sagging and hogging stress are equal. False
    /// position, the side that stays put halved each time (Illinois).
    fn second(&self, first: f64) -> f64 {
        let hog_over_sag = |place: f64| {
            let pair = [first, place];
            (self.stress)(pair, Sense::Hog) - (self.stress)(pair, Sense::Sag)
        };
        let [mut low, mut high] = self.room.second;
        let (mut at_low, mut at_high) = (hog_over_sag(low), hog_over_sag(high));
        if at_low <= 0.0 {
            return low;
        }
        if at_high >= 0.0 {
            return high;
        }
        // Stresses are even when they differ by no more than rounding makes of them.
        let even = 1e-13 * (at_low - at_high);
        let (mut place, mut last) = (low, Stayed::Neither);
        for _ in 0..STEPS {
            let before = place;
            place = (low * at_high - high * at_low) / (at_high - at_low);
            let here = hog_over_sag(place);
            if here.abs() <= even || (place - before).abs() <= self.close_mm {
                break;
            }
            if here > 0.0 {
                (low, at_low) = (place, here);
                at_high *= if last == Stayed::High { 0.5 } else { 1.0 };
                last = Stayed::High;
            } else {
                (high, at_high) = (place, here);
                at_low *= if last == Stayed::Low { 0.5 } else { 1.0 };
                last = Stayed::Low;
            }
        }
        place
    }
}

/// Which end of the stretch a step of false position left where it was.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Stayed {
    Neither,
    Low,
    High,
}
