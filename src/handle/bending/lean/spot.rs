//! Where on the top a person leans and where the stone is stressed most, as one sees it on the sheet.

use serde::Serialize;

use crate::geom::{Outline, Point, Pose, Region, SAME_MM, Seg};
use crate::handle::bending::rail::{RailPlace, TOUCH_MM, WIDEST_RAIL_MM, side_of_top};
use crate::handle::bending::rests::{Footing, Rests};
use crate::handle::bending::strip::BeamProfile;
use crate::handle::loads::{Load, Marks};

/// A place on the top.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Spot {
    /// On the stone beside an opening.
    Rail(RailPlace),
    /// Beyond the supports: the edge or corner there.
    Overhang(String),
    /// Between two supports, by their numbers from 1 on.
    Between([usize; 2]),
    /// Over a support, by its number from 1 on.
    Over(usize),
}

/// The top, its supports and its names.
pub(in crate::handle::bending) struct Set<'a> {
    pub(in crate::handle::bending) top: &'a Load,
    pub(in crate::handle::bending) rests: &'a Rests,
    pub(in crate::handle::bending) marks: &'a Marks,
    /// Carries the top's frame into the slab's.
    pub(in crate::handle::bending) pose: Pose,
}

/// What places are told from.
pub(super) struct Map<'a> {
    strip: &'a BeamProfile,
    rests: &'a Rests,
    marks: &'a Marks,
    pose: Pose,
    holes: Vec<(&'a Outline, BeamProfile)>,
}

/// A footing along the beam, mm.
struct Seen<'a> {
    footing: &'a Footing,
    from: f64,
    to: f64,
    /// Whether it runs across the beam rather than along it.
    crosses: bool,
}

impl Seen<'_> {
    fn holds(&self, u: f64) -> bool {
        self.from - OVER_MM <= u && u <= self.to + OVER_MM
    }
}

/// A place this near a support is over it, mm (judgement: a board's thickness).
const OVER_MM: f64 = 20.0;

impl<'a> Map<'a> {
    pub(super) fn new(set: &Set<'a>, strip: &'a BeamProfile) -> Self {
        let holes = set.top.region.holes.iter();
        let seen = |hole: &'a Outline| {
            let alone = BeamProfile::new(&Region::solid(hole.clone()), *strip.axes());
            (hole, alone)
        };
        Self {
            strip,
            rests: set.rests,
            marks: set.marks,
            pose: set.pose,
            holes: holes.map(seen).collect(),
        }
    }

    /// What a point of the top is called; nothing where no support is near that would name it.
    pub(super) fn spot(&self, at: Point) -> Option<Spot> {
        let (u, v) = self.strip.axes().seen(at);
        if let Some(rail) = self.rail(u, v) {
            return Some(Spot::Rail(rail));
        }
        let seen: Vec<Seen> = self.rests.places.iter().map(|f| self.seen(f)).collect();
        let crossing = seen.iter().find(|s| s.crosses && s.holds(u));
        if let Some(over) = crossing {
            return Some(Spot::Over(over.footing.support + 1));
        }
        let before = seen.iter().filter(|s| s.to < u);
        let after = seen.iter().filter(|s| s.from > u);
        let before = before.max_by(|a, b| a.to.total_cmp(&b.to));
        let after = after.min_by(|a, b| a.from.total_cmp(&b.from));
        if let (Some(before), Some(after)) = (before, after) {
            return Some(Spot::Between(
                [before, after].map(|s| s.footing.support + 1),
            ));
        }
        let along = seen.iter().filter(|s| s.holds(u));
        let away = |s: &&Seen| s.footing.distance(at);
        if let Some(over) = along.min_by(|a, b| away(a).total_cmp(&away(b))) {
            return Some(Spot::Over(over.footing.support + 1));
        }
        self.edge(u).map(Spot::Overhang)
    }

    fn seen<'f>(&self, footing: &'f Footing) -> Seen<'f> {
        let [a, b] = footing.ends.map(|end| self.strip.axes().seen(end));
        Seen {
            footing,
            from: a.0.min(b.0) - footing.radius_mm,
            to: a.0.max(b.0) + footing.radius_mm,
            crosses: (a.0 - b.0).abs() <= (a.1 - b.1).abs(),
        }
    }

    /// The rail of an opening at a place, if it is one.
    fn rail(&self, u: f64, v: f64) -> Option<RailPlace> {
        let away = |r: &[f64; 2]| (r[0] - v).max(v - r[1]).max(0.0);
        let rails = self.strip.rails_at(u);
        let [low, high] = *rails.iter().min_by(|a, b| away(a).total_cmp(&away(b)))?;
        let touching = self.holes.iter().filter_map(|(hole, alone)| {
            let [from, to] = alone.reach();
            let [first, last] = alone.sides_at(u);
            let through = (from - SAME_MM..=to + SAME_MM).contains(&u);
            let above = through && (first - high).abs() <= TOUCH_MM;
            let below = through && (last - low).abs() <= TOUCH_MM;
            let narrow = high - low <= (to - from).max(WIDEST_RAIL_MM);
            ((above || below) && narrow).then_some((*hole, above))
        });
        let touching: Vec<(&Outline, bool)> = touching.collect();
        let left = self.strip.axes().direction().left();
        let (hole, above) = touching.first()?;
        let side = side_of_top(if *above { -left } else { left }, self.pose);
        let other = touching.get(1).map(|(hole, _)| *hole);
        Some(RailPlace::of(hole, other, side, self.marks))
    }

    /// The edge or corner at the end of the top that a place is nearer to.
    fn edge(&self, u: f64) -> Option<String> {
        let [from, to] = self.strip.reach();
        let end = if u - from < to - u { from } else { to };
        let [a, b] = self.strip.chord_at(end);
        let middle = a.midpoint(b);
        let far = |seg: &Seg| seg.distance(middle);
        let edges = self.marks.edges.iter();
        let nearest = edges.min_by(|a, b| far(&a.1).total_cmp(&far(&b.1)));
        nearest.map(|(name, _)| name.clone())
    }
}
