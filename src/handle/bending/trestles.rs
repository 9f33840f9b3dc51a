//! Where two supports stress a flat stone least.

use super::bend::{Beam, lowest};

/// Least distance of a support from the balance point, mm (judgement: a trestle's half width).
pub(crate) const TRESTLE_MM: f64 = 25.0;
/// Places of the first support tried before the best of them is refined.
const TRIES: u8 = 24;
/// Most steps in search of the second support's place.
const STEPS: u8 = 60;
/// The second support's place is known to this, mm.
const CLOSE_MM: f64 = 1e-7;
/// The same while the first one's is only tried, or several stones share them, mm.
const QUICK_MM: f64 = 1.0;
/// Golden sections of the first support's place: a twelfth of its room to less than a thousand-millionth.
const SECTIONS: usize = 44;
/// The same for places that several stones share: to a thousandth of the room.
const QUICK_SECTIONS: usize = 10;

/// Where each of two supports may stand, from and to, mm from the end.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TrestleRanges {
    /// The first.
    pub first: [f64; 2],
    /// The second.
    pub second: [f64; 2],
}

impl TrestleRanges {
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
/// the best of an even row, refined by golden section. Cost: some 500 passes over the stations
/// between the supports.
#[must_use]
pub fn best_supports(beam: &Beam<'_>) -> [f64; 2] {
    let search = Search {
        room: TrestleRanges::under(beam),
        beams: std::slice::from_ref(beam),
    };
    search.best(SECTIONS, CLOSE_MM)
}

/// Supports that several stones, seen in the same frame, share in turn: the greatest of their
/// stresses is least, to about a millimetre.
#[must_use]
pub fn shared_supports(beams: &[Beam<'_>], room: TrestleRanges) -> [f64; 2] {
    Search { room, beams }.best(QUICK_SECTIONS, QUICK_MM)
}

/// A search for the pair whose greatest stress is least.
struct Search<'a> {
    room: TrestleRanges,
    beams: &'a [Beam<'a>],
}

impl Search<'_> {
    fn best(&self, sections: usize, close_mm: f64) -> [f64; 2] {
        let [low, high] = self.stretch();
        let most = |first: f64| self.pair(first, close_mm).1;
        self.pair(lowest(low, high, sections, most), close_mm).0
    }

    /// The greatest stresses of all stones, underside and upper face.
    fn stresses(&self, pair: [f64; 2]) -> [f64; 2] {
        let each = self.beams.iter().map(|b| b.stresses(pair));
        each.fold([0.0, 0.0], |most, one| {
            [most[0].max(one[0]), most[1].max(one[1])]
        })
    }

    /// The stretch round the best first place of an even row.
    fn stretch(&self) -> [f64; 2] {
        let [low, high] = self.room.first;
        let step = (high - low) / f64::from(TRIES);
        let best = (0..=TRIES)
            .map(|k| low + step * f64::from(k))
            .map(|first| (self.pair(first, QUICK_MM).1, first))
            .reduce(|best, next| if next.0 < best.0 { next } else { best })
            .map_or(low, |best| best.1);
        [(best - step).max(low), (best + step).min(high)]
    }

    /// A first support with the best second one for it, and the greatest stress: where sagging and hogging
    /// stress are equal. False position, the side that stays put halved each time (Illinois).
    fn pair(&self, first: f64, close_mm: f64) -> ([f64; 2], f64) {
        let at = |second: f64| {
            let [sag, hog] = self.stresses([first, second]);
            (hog - sag, sag.max(hog))
        };
        let [mut low, mut high] = self.room.second;
        let ((mut at_low, most_low), (mut at_high, most_high)) = (at(low), at(high));
        if at_low <= 0.0 {
            return ([first, low], most_low);
        }
        if at_high >= 0.0 {
            return ([first, high], most_high);
        }
        // Stresses are even when they differ by no more than rounding makes of them.
        let even = 1e-13 * (at_low - at_high);
        let (mut place, mut most, mut last) = (low, most_low, Stayed::Neither);
        for _ in 0..STEPS {
            let before = place;
            place = (low * at_high - high * at_low) / (at_high - at_low);
            let here;
            (here, most) = at(place);
            if here.abs() <= even || (place - before).abs() <= close_mm {
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
        ([first, place], most)
    }
}

/// Which end of the stretch a step of false position left where it was.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Stayed {
    Neither,
    Low,
    High,
}
