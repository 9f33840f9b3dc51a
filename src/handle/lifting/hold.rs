//! How people hold a stone: the way it lies in their hands, and where the hands are.
//!
//! Only what bending allows is proposed: flat when the stone may hang flat from those places, else on edge,
//! held or strapped at its lower long side, else nothing.

use super::stand;
use crate::geom::{Point, Region};
use crate::handle::bending::axes::Axes;
use crate::handle::bending::bend::{Beam, Orientation, Reaction};
use crate::handle::bending::judged::Bending;
use crate::handle::bending::plate::{Resting, Spring, unilateral};

/// Places along the stone closer together than this, mm, are one (rounding).
const LEVEL_MM: f64 = 1e-6;
/// On edge people hold this share of the way from the balance point to the nearer end away from it, tried
/// in this order (judgement, next to 0.586, where an even strip is bent least).
const EDGE_SHARES: [f64; 6] = [0.6, 0.5, 0.7, 0.4, 0.8, 0.3];
/// People who stand at one end of a stone on edge, or one person's two hands, are so far apart, mm
/// (judgement: an arm's reach).
const APART_MM: f64 = 400.0;
/// Most people at a stone on edge: two at either end (judgement).
const MOST_ON_EDGE: usize = 4;

/// A way of holding a stone.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Hold {
    /// How it lies in the hands.
    pub(crate) orientation: Orientation,
    /// Where the hands are, slab frame; on edge, on its lower long side.
    pub(crate) points: Vec<Point>,
}

/// What a stone may be asked for while people hold it.
pub(crate) struct Holder<'a> {
    /// The stone along its length.
    pub(crate) beam: &'a Beam<'a>,
    /// The stone.
    pub(crate) region: &'a Region,
    /// Stress allowed, `MPa`.
    pub(crate) allowed_mpa: f64,
}

impl Holder<'_> {
    /// A way for a number of people that bending allows; nothing when there is none.
    pub(crate) fn propose(&self, people: usize) -> Option<Hold> {
        let (axes, region) = (self.beam.strip().axes(), self.region);
        let flat = match people {
            // Alone nobody reaches round a stone that lies flat.
            0 | 1 => None,
            2 => stand::across_balance(region, axes)
                .map(|pair| pair.to_vec())
                .find(|points| self.holds(Orientation::Flat, points)),
            more => Some(stand::propose(region, axes, more))
                .filter(|p| self.holds(Orientation::Flat, p)),
        };
        let flat = flat.map(|points| Hold {
            orientation: Orientation::Flat,
            points,
        });
        flat.or_else(|| self.on_edge(people))
    }

    /// The way that places given are used in: flat, or on edge when only that is allowed; nothing when
    /// neither is.
    pub(crate) fn lie_of(&self, points: &[Point]) -> Option<Orientation> {
        [Orientation::Flat, Orientation::OnEdge]
            .into_iter()
            .find(|orientation| self.holds(*orientation, points))
    }

    /// On edge, equal shares: one person about the balance point; two at equal distances from it; three with
    /// the single one twice as far; four in pairs.
    pub(crate) fn on_edge(&self, people: usize) -> Option<Hold> {
        let strip = self.beam.strip();
        let (middle, [first, last]) = (strip.middle(), strip.reach());
        let reach = (middle - first).min(last - middle);
        let half = APART_MM / 2.0;
        let lower = self.lower_side();
        let point = |u: f64| strip.chord_at(u)[lower];
        let at = |share: f64| -> Vec<f64> {
            let far = share * reach;
            let near = half.min(far);
            match people {
                1 => vec![0.0],
                2 => vec![-far, far],
                3 => vec![-far, far / 2.0 - near / 2.0, far / 2.0 + near / 2.0],
                _ => vec![
                    -far - near / 2.0,
                    -far + near / 2.0,
                    far - near / 2.0,
                    far + near / 2.0,
                ],
            }
        };
        let ways = EDGE_SHARES.into_iter().map(|share| {
            let places = at(share).into_iter();
            let points = places.map(|away| point((middle + away).clamp(first, last)));
            points.collect::<Vec<Point>>()
        });
        let found = (1..=MOST_ON_EDGE).contains(&people).then_some(ways)?;
        let points = found
            .into_iter()
            .find(|p| self.holds(Orientation::OnEdge, p))?;
        Some(Hold {
            orientation: Orientation::OnEdge,
            points,
        })
    }

    /// The long side the stone stands on: the one its balance point is nearer to; 0 the right-hand one.
    fn lower_side(&self) -> usize {
        let axes = self.beam.strip().axes();
        let (_, across) = axes.seen(self.region.centroid());
        usize::from(across > axes.width_mm() - across)
    }

    /// Whether bending allows it.
    pub(crate) fn holds(&self, orientation: Orientation, points: &[Point]) -> bool {
        let rest = rest(
            orientation,
            points,
            1.0,
            self.region,
            self.beam.strip().axes(),
        );
        let props = props(self.beam, points, &rest);
        let bending = || Bending::of(self.beam, "", orientation, &props, self.allowed_mpa);
        !props.is_empty() && !bending().verdict.is_above()
    }
}

/// How a rigid stone rests in hands at these places, forces in the unit of `load`. On edge the balance point
/// stands above them: only places along the stone count.
pub(crate) fn rest(
    orientation: Orientation,
    points: &[Point],
    load: f64,
    region: &Region,
    axes: &Axes,
) -> Resting {
    let balance = region.centroid();
    let (_, across) = axes.seen(balance);
    let place = |at: &Point| match orientation {
        Orientation::Flat => *at,
        Orientation::OnEdge => axes.point(axes.seen(*at).0, across),
    };
    let springs = points.iter().map(|at| Spring {
        at: place(at),
        stiffness: 1.0,
    });
    unilateral(&springs.collect::<Vec<_>>(), load, balance)
}

/// Hands as what holds the beam, forces in the proportion of a rigid plate's. Those level with each other
/// add up; one person's two hands stand for a single one on edge.
pub(crate) fn props(beam: &Beam<'_>, points: &[Point], rest: &Resting) -> Vec<Reaction> {
    let axes = beam.strip().axes();
    let total: f64 = rest.forces.iter().flatten().sum();
    let mut props: Vec<Reaction> = Vec::new();
    let forces = points.iter().zip(&rest.forces);
    let forces: Vec<(f64, f64)> = forces
        .filter_map(|(at, force)| Some((axes.seen(*at).0, (*force)? / total * beam.weight_n())))
        .collect();
    let spread = |(at, force): (f64, f64)| match points.len() {
        1 => vec![
            (at - APART_MM / 2.0, force / 2.0),
            (at + APART_MM / 2.0, force / 2.0),
        ],
        _ => vec![(at, force)],
    };
    for (at_mm, force_n) in forces.into_iter().flat_map(spread) {
        let level = |p: &&mut Reaction| (p.at_mm - at_mm).abs() <= LEVEL_MM;
        match props.iter_mut().find(level) {
            Some(prop) => prop.force_n += force_n,
            None if force_n > 0.0 => props.push(Reaction { at_mm, force_n }),
            None => {}
        }
    }
    props.sort_by(|a, b| a.at_mm.total_cmp(&b.at_mm));
    props
}
