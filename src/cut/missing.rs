//! What nothing in the kit makes: one stop for each cause, with every place that waits for it inside.

use crate::diag::Finding;
use crate::geom::{Point, Region, Seg, Side};
use crate::words::{Arg, Quantity, Unit, Value};

use super::kept::{BoundaryPiece, Kept, Ring, Whose};
use super::rail::narrowest;

/// Lengths that differ by less than this are one and the same in two findings, mm (judgement: no tape shows it).
const ALIKE: f64 = 0.3;
/// A place keeps waste on the top that comes this near to it, mm (judgement: wider than any kerf).
const HOLDS_MM: f64 = 12.0;

/// A piece of a boundary that a stop names.
#[derive(Clone, Debug)]
pub struct Spot {
    whose: Whose,
    pub(super) name: String,
    seg: Seg,
}

/// One cause, and the places that are not made because of it.
#[derive(Clone, Debug)]
pub struct Missing {
    /// What is missing, the gaps for places and waste still empty.
    cause: Finding,
    places: Vec<Spot>,
}

impl Spot {
    pub(super) fn of(ring: &Ring, piece: &BoundaryPiece, name: impl Into<String>) -> Self {
        Self {
            whose: ring.whose,
            name: name.into(),
            seg: piece.seg,
        }
    }

    pub(super) const fn straight(whose: Whose, name: String, seg: Seg) -> Self {
        Self { whose, name, seg }
    }

    fn distance(&self, waste: &Region) -> f64 {
        let boundaries = waste.boundaries();
        let each = boundaries.map(|b| narrowest(b.segs(), std::slice::from_ref(&self.seg)));
        each.fold(f64::INFINITY, f64::min)
    }

    fn named(&self) -> Value {
        self.whose.part(&self.name)
    }
}

impl Missing {
    pub(super) fn of(cause: Finding, place: Spot) -> Self {
        Self {
            cause,
            places: vec![place],
        }
    }

    /// Whether this is one more place of that cause.
    pub(super) fn is_for(&self, cause: &Finding) -> bool {
        one(&self.cause, cause)
    }

    pub(super) fn add(&mut self, place: Spot) {
        self.places.push(place);
    }

    /// Whether this is what keeps waste on the top.
    #[must_use]
    pub fn holds(&self, waste: &Region) -> bool {
        self.places.iter().any(|p| p.distance(waste) <= HOLDS_MM)
    }

    /// The stop: the cause, its places, and the waste that stays on for it.
    #[must_use]
    pub fn told(&self, waste: Value) -> Finding {
        let mut finding = self.cause.clone();
        let places = self.places.iter().map(Spot::named).collect();
        let own: [Arg; 2] = [("places", Value::List(places)), ("waste", waste)];
        finding.message.args.extend(own);
        finding
    }
}

/// The pieces of the kept stone's boundary along which nothing parts waste from it: beside them the stone
/// at the underside, `under`, goes on.
#[must_use]
pub fn beside(kept: &Kept, under: &Region, stays: &[&Region]) -> Vec<Value> {
    let near = |p: Point| {
        let mut boundaries = stays.iter().flat_map(|w| w.boundaries());
        boundaries.any(|b| b.distance(p) <= HOLDS_MM)
    };
    let goes_on = |piece: &&BoundaryPiece| {
        let outside = (0..=SAMPLES).map(|i| {
            let share = f64::from(i) / f64::from(SAMPLES);
            piece.seg.at(share) + piece.seg.heading(share).right() * BESIDE_MM
        });
        let held = |p: Point| under.side(p) == Side::Inside && near(p);
        piece.sawn && outside.into_iter().any(held)
    };
    let of_ring = |ring: &Ring| -> Vec<Value> {
        let held = ring.pieces.iter().filter(goes_on);
        held.map(|piece| ring.whose.part(&piece.name)).collect()
    };
    kept.rings.iter().flat_map(of_ring).collect()
}

/// So far outside the boundary a kerf has taken the stone wherever a cut runs, mm.
const BESIDE_MM: f64 = 1.0;
/// Places looked at along a piece of the boundary.
const SAMPLES: u32 = 64;

/// Whether two findings have one cause: the same words with the same values.
fn one(a: &Finding, b: &Finding) -> bool {
    let (left, right) = (&a.message.args, &b.message.args);
    let alike = |(a, b): (&Arg, &Arg)| a.0 == b.0 && same(&a.1, &b.1);
    a.id() == b.id() && left.len() == right.len() && left.iter().zip(right).all(alike)
}

fn same(a: &Value, b: &Value) -> bool {
    match (a, b) {
        (Value::Quantity(a), Value::Quantity(b)) => {
            let near = (a.value - b.value).abs() < ALIKE;
            near && Quantity { value: 0.0, ..*a } == Quantity { value: 0.0, ..*b }
        }
        _ => a == b,
    }
}

/// The waste that stays on, for the gaps `parts`, `area`, `along` and `up`.
#[must_use]
pub fn waste(stays: &[&Region]) -> Option<[Arg; 4]> {
    let largest = stays.iter().max_by(|a, b| a.area().total_cmp(&b.area()))?;
    let at = largest.centroid();
    Some([
        ("parts", Value::count(stays.len())),
        ("area", Value::of(largest.area(), Unit::Area)),
        ("along", Value::size(at.x)),
        ("up", Value::size(at.y)),
    ])
}
