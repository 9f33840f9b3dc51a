//! Narrow stone left beside cutouts.
//!
//! In a cross-section through a cutout the pieces of stone on its sides are taken to bend together.
//! When the stone is lifted by one side first, or a clamp or hand bears on one of them, a rail may
//! have to take the whole moment alone: that is reckoned too, as the worse end of what can happen.
//! On edge a cutout's two rails also pass the shear across it, bent like posts fixed at both ends.

mod place;

pub(super) use place::TopSide;
pub use place::{OpeningSize, RailPlace};

use serde::Serialize;

use super::bend::{Beam, Reaction, lowest};
use super::splint::Splint;
use super::strip::BeamProfile;
use crate::geom::{Outline, Point, Pose, Region, SAME_MM, Vector};
use crate::handle::loads::{Load, Marks};

/// Published least width of a rail in front of or behind a cutout, mm.
pub const LEAST_RAIL_MM: f64 = 90.0;
/// Published least width of the bridge between two cutouts, mm.
pub const LEAST_BRIDGE_MM: f64 = 70.0;
/// A drawing's corner and the corner meant are the same within this, mm (judgement: allowances).
pub(crate) const SAME_PLACE_MM: f64 = 60.0;
/// Golden sections of the stretch that holds the narrowest place.
const SECTIONS: usize = 30;

/// How a rail stands to what its stone may be stressed.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum RailVerdict {
    /// Not above it even when it takes the moment alone, nor on edge. Sound stone.
    Holds {
        /// The greater of these stresses over allowed stress.
        utilisation: f64,
    },
    /// Above it when it takes the moment alone, or on edge: brace it before the stone is moved.
    Brace {
        /// The greater of these stresses over allowed stress.
        utilisation: f64,
    },
    /// Above it even with the other rails' help: not to be lifted flat at all.
    TooWeak {
        /// Stress together over allowed stress.
        utilisation: f64,
    },
}

impl RailVerdict {
    fn of(together: f64, alone: f64, allowed: f64) -> Self {
        if together > allowed {
            Self::TooWeak {
                utilisation: together / allowed,
            }
        } else if alone > allowed {
            Self::Brace {
                utilisation: alone / allowed,
            }
        } else {
            Self::Holds {
                utilisation: alone / allowed,
            }
        }
    }
}

/// Stone between a cutout and an edge or another cutout.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Rail {
    /// Name as printed: "front rail of wash bowl".
    pub name: String,
    /// The same in parts, to be said in another language.
    #[serde(skip)]
    pub place: RailPlace,
    /// Narrowest width, mm.
    pub width_mm: f64,
    /// Length of the cutout along it, mm.
    pub length_mm: f64,
    /// Where it is narrowest, across it, slab frame.
    pub narrowest: [Point; 2],
    /// Published least width; nothing where there is none.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub least_mm: Option<f64>,
    /// Greatest moment in the cross-sections through the cutout, N·m, lying flat.
    pub moment_nm: f64,
    /// Stress when all stone of the cross-section bends together, `MPa`.
    pub together_mpa: f64,
    /// Stress when it takes the moment alone, `MPa`.
    pub alone_mpa: f64,
    /// Stress on edge, shear across the cutout included, `MPa`; nothing for a rail that then stands
    /// upright.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub on_edge_mpa: Option<f64>,
    /// How it stands.
    pub verdict: RailVerdict,
    /// A brace, when the verdict asks for one and timber can do it.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub splint: Option<Splint>,
}

impl Rail {
    /// Narrower than half its length, narrower than what is published, or not strong enough alone.
    fn is_narrow(&self) -> bool {
        let holds = matches!(self.verdict, RailVerdict::Holds { .. });
        let published = self.least_mm.is_some_and(|least| self.width_mm < least);
        !holds || published || self.width_mm < self.length_mm / 2.0
    }
}

/// How the stone is held when its rails are looked at.
pub struct Held<'a> {
    /// The stone along its length.
    pub beam: &'a Beam<'a>,
    /// What holds it lying flat, each way by itself.
    pub flat: Vec<Vec<Reaction>>,
    /// What holds it on edge.
    pub on_edge: Vec<Reaction>,
    /// Stress allowed, `MPa`.
    pub allowed_mpa: f64,
    /// Carries the top's frame into the slab's: front is the side of edge 1-2.
    pub pose: Pose,
}

/// The rails along the stone, and those across it at the ends of cutouts, that are narrow for their
/// length, for what is published or for the moment.
#[must_use]
pub fn rails(load: &Load, held: &Held<'_>, marks: &Marks) -> Vec<Rail> {
    if load.region.holes.is_empty() {
        return Vec::new();
    }
    let axes = held.beam.strip().axes();
    let cross = axes.across(&load.region);
    let strip = BeamProfile::new(&load.region, cross);
    let beam = Beam::new(&strip, held.beam.slice());
    // Tilted up, the stone bears on one long side and is held at the other.
    let [near, far] = strip.reach();
    let tilted = vec![beam.on_two([near, far]).to_vec()];
    let across = Held {
        beam: &beam,
        flat: tilted,
        on_edge: Vec::new(),
        allowed_mpa: held.allowed_mpa,
        pose: held.pose,
    };
    let mut rails = in_direction(&load.region, held, marks);
    rails.extend(in_direction(&load.region, &across, marks));
    rails.retain(Rail::is_narrow);
    rails
}

fn in_direction(region: &Region, held: &Held<'_>, marks: &Marks) -> Vec<Rail> {
    let axes = *held.beam.strip().axes();
    let strips: Vec<BeamProfile> = region
        .holes
        .iter()
        .map(|h| BeamProfile::new(&Region::solid(h.clone()), axes))
        .collect();
    let mut rails = Vec::new();
    let openings = region.holes.iter().zip(&strips);
    for (hole, strip) in openings.filter(|(hole, _)| !marks.is_drilled(hole)) {
        for side in [Beside::Low, Beside::High] {
            let gap = Gap {
                held,
                hole: strip,
                side,
            };
            let other = gap.other_hole(&strips);
            // A bridge between two cutouts is found from both; it is told once.
            if other.is_none() || side == Beside::Low {
                let other = other.and_then(|i| region.holes.get(i));
                if !other.is_some_and(|other| marks.are_one(hole, other)) {
                    rails.extend(gap.rail(hole, other, marks));
                }
            }
        }
    }
    rails
}

/// Stone beside a cutout no wider than this is a rail however short it is, mm (judgement: the widest that
/// is published, 125, and half as much again).
pub(super) const WIDEST_RAIL_MM: f64 = 190.0;

/// Which side of a cutout, across the beam.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Beside {
    Low,
    High,
}

/// The stone on one side of a cutout.
struct Gap<'a> {
    held: &'a Held<'a>,
    hole: &'a BeamProfile,
    side: Beside,
}

impl Gap<'_> {
    fn strip(&self) -> &BeamProfile {
        self.held.beam.strip()
    }

    /// The stone beside the cutout in the cross-section at `u`, as a stretch of `v`.
    fn stretch(&self, u: f64) -> Option<[f64; 2]> {
        let [low, high] = self.hole.sides_at(u);
        let touches = |r: &[f64; 2]| match self.side {
            Beside::Low => (r[1] - low).abs() <= TOUCH_MM,
            Beside::High => (r[0] - high).abs() <= TOUCH_MM,
        };
        self.strip().rails_at(u).into_iter().find(touches)
    }

    fn width(&self, u: f64) -> f64 {
        self.stretch(u).map_or(f64::INFINITY, |s| s[1] - s[0])
    }

    /// Cross-sections through the cutout.
    fn places(&self) -> Vec<f64> {
        let [from, to] = self.hole.reach();
        let stations = self.strip().stations().iter().map(|s| s.u);
        let mut places: Vec<f64> = stations.filter(|u| (from..=to).contains(u)).collect();
        places.dedup_by(|a, b| (*a - *b).abs() <= SAME_MM);
        places
    }

    fn narrowest(&self, places: &[f64]) -> Option<f64> {
        let all = places.iter().enumerate();
        let (i, u) = all.min_by(|a, b| self.width(*a.1).total_cmp(&self.width(*b.1)))?;
        let low = places.get(i.wrapping_sub(1)).copied().unwrap_or(*u);
        let high = places.get(i + 1).copied().unwrap_or(*u);
        let between = lowest(low, high, SECTIONS, |u| self.width(u));
        let better = self.width(between) < self.width(*u);
        Some(if better { between } else { *u })
    }

    /// The cutout on the other side of this stone, where it is narrowest.
    fn other_hole(&self, strips: &[BeamProfile]) -> Option<usize> {
        let places = self.places();
        let u = self.narrowest(&places)?;
        let [low, high] = self.stretch(u)?;
        strips.iter().position(|other| {
            let [from, to] = other.reach();
            let [first, last] = other.sides_at(u);
            let beyond = match self.side {
                Beside::Low => (last - low).abs() <= TOUCH_MM,
                Beside::High => (first - high).abs() <= TOUCH_MM,
            };
            (from..=to).contains(&u) && beyond
        })
    }

    fn rail(&self, hole: &Outline, other: Option<&Outline>, marks: &Marks) -> Option<Rail> {
        let mut places = self.places();
        let narrow = self.narrowest(&places)?;
        places.push(narrow);
        let width_mm = self.width(narrow);
        let [low, high] = self.stretch(narrow)?;
        let axes = self.strip().axes();
        let [from, to] = self.hole.reach();
        // Wider than the hole is long it is no rail but the stone itself; without width it is parted already.
        if width_mm > (to - from).max(WIDEST_RAIL_MM) || width_mm <= TOUCH_MM {
            return None;
        }
        let bent = self.bent(&places);
        let allowed = self.held.allowed_mpa;
        let on_edge_mpa = self.on_edge(&places);
        let verdict = RailVerdict::of(
            bent.together,
            bent.alone.max(on_edge_mpa.unwrap_or(0.0)),
            allowed,
        );
        let t = self.held.beam.slice().thickness_mm;
        let braced = !matches!(verdict, RailVerdict::Holds { .. });
        let splint = || Splint::for_rail(bent.moment, width_mm, t, to - from, allowed);
        let direction = match self.side {
            Beside::Low => -axes.direction().left(),
            Beside::High => axes.direction().left(),
        };
        let side = side_of_top(direction, self.held.pose);
        let place = RailPlace::of(hole, other, side, marks);
        Some(Rail {
            name: place.name(),
            place,
            width_mm,
            length_mm: to - from,
            narrowest: [axes.point(narrow, low), axes.point(narrow, high)],
            least_mm: least(other, side),
            moment_nm: bent.moment / 1000.0,
            together_mpa: bent.together,
            alone_mpa: bent.alone,
            on_edge_mpa,
            verdict,
            splint: braced.then(splint).flatten(),
        })
    }

    /// The greatest moment and stresses over the cross-sections and the ways of lying flat.
    fn bent(&self, places: &[f64]) -> Bent {
        let t = self.held.beam.slice().thickness_mm;
        let mut bent = Bent::default();
        for props in &self.held.flat {
            for u in places {
                let moment = 1000.0 * self.held.beam.moment_at(props, *u).abs();
                let over = |b: f64| 6.0 * moment / (b * t * t);
                bent.moment = bent.moment.max(moment);
                bent.together = bent.together.max(over(self.strip().width_at(*u)));
                bent.alone = bent.alone.max(over(self.width(*u)));
            }
        }
        bent
    }

    /// Stress on edge: the rails' part in the moment, and their bending between the cutout's ends
    /// under their part in the shear.
    fn on_edge(&self, places: &[f64]) -> Option<f64> {
        if self.held.on_edge.is_empty() {
            return None;
        }
        let t = self.held.beam.slice().thickness_mm;
        let [from, to] = self.hole.reach();
        let stress = |u: &f64| {
            let b = self.width(*u);
            let rails = self.strip().rails_at(*u);
            let cubes: f64 = rails.iter().map(|r| (r[1] - r[0]).powi(3)).sum();
            let part = b.powi(3) / cubes;
            let moment = 1000.0 * self.held.beam.moment_at(&self.held.on_edge, *u).abs();
            let shear = self.held.beam.shear_at(&self.held.on_edge, *u).abs();
            let local = shear * (to - from) / 2.0;
            6.0 * part * (moment + local) / (t * b * b)
        };
        let finite = places.iter().map(stress).filter(|s| s.is_finite());
        Some(finite.fold(0.0, f64::max))
    }
}

#[derive(Clone, Copy, Debug, Default)]
struct Bent {
    /// N·mm.
    moment: f64,
    together: f64,
    alone: f64,
}

/// Edges of a stretch and of a cutout are the same within this, mm: rounding.
pub(super) const TOUCH_MM: f64 = 1e-4;

/// The side a direction of the slab's frame points to.
pub(super) fn side_of_top(direction: Vector, pose: Pose) -> TopSide {
    let own = direction.turned(-pose.turn);
    if own.y.abs() >= own.x.abs() {
        if own.y < 0.0 {
            TopSide::Front
        } else {
            TopSide::Back
        }
    } else if own.x > 0.0 {
        TopSide::Right
    } else {
        TopSide::Left
    }
}

fn least(other: Option<&Outline>, side: TopSide) -> Option<f64> {
    match (other, side) {
        (Some(_), _) => Some(LEAST_BRIDGE_MM),
        (None, TopSide::Front | TopSide::Back) => Some(LEAST_RAIL_MM),
        (None, TopSide::Left | TopSide::Right) => None,
    }
}

impl Marks {
    /// The name of a hole: that of the cutout its balance point lies in.
    fn cutout(&self, hole: &Outline) -> &str {
        self.named(hole).unwrap_or("the opening")
    }

    /// Whether a hole has only been drilled at a corner of what is still to be sawn: it lies at none of
    /// the top's openings. The stone beside it is no rail.
    fn is_drilled(&self, hole: &Outline) -> bool {
        !self.corners.is_empty() && self.named(hole).is_none()
    }

    fn named(&self, hole: &Outline) -> Option<&str> {
        self.opening(hole).map(|i| self.cutouts[i].0.as_str())
    }

    /// The top's opening that a hole lies at.
    fn opening(&self, hole: &Outline) -> Option<usize> {
        let middle = hole.centroid();
        let away = |(i, c): (usize, &(String, Outline))| (c.1.centroid().distance(middle), i);
        let each = self.cutouts.iter().enumerate().map(away);
        let (off, nearest) = each.min_by(|a, b| a.0.total_cmp(&b.0))?;
        (off <= SAME_PLACE_MM).then_some(nearest)
    }

    /// Whether two holes lie at one opening: the stone between them falls with it and is no rail.
    fn are_one(&self, hole: &Outline, other: &Outline) -> bool {
        let opening = self.opening(hole);
        opening.is_some() && opening == self.opening(other)
    }
}
