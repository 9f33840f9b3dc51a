//! Labels that keep clear of each other and of what is already drawn.

use std::f64::consts::TAU;
use std::sync::LazyLock;

use super::item::{Anchor, Ink, Item, Path, PenStroke, Text};
use super::pen::{NARROW_MM, corners, grown};
use super::typeface::{cap_height_mm, descent_mm};
use super::wrap::Style;
use crate::geom::seg::ring;
use crate::geom::{Bounds, Line, Point, Seg, Vector};

/// Least space between a label and anything else, mm.
const CLEAR_MM: f64 = 0.8;
/// From the anchor to a label beside it, mm.
const BESIDE_MM: f64 = 2.0;
/// Each next ring of places to try lies so much farther out, mm.
const RING_MM: f64 = 3.0;
/// Rings tried.
const RINGS: u32 = 16;
/// Directions tried on a ring.
const DIRECTIONS: u32 = 16;
/// A label farther from its anchor than this gets a leader, mm.
const LEADER_FROM_MM: f64 = 3.5;
/// White left around a label's text, over hatching, mm.
const WHITE_MM: f64 = 0.4;
/// Between the places that are tried all over a drawing, mm.
const GRID_MM: f64 = 3.0;
/// Points no farther apart on paper are one, mm.
const SAME_PLACE_MM: f64 = 0.3;
/// Radius of the dot at a leader's end, mm.
const DOT_MM: f64 = 0.5;

/// Where a label may first be tried.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Prefer {
    /// On the anchor itself: names of pieces.
    Centred,
    /// Beside it: names of points and edges.
    Beside,
}

/// What a label's white may cover.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Cover {
    /// Nothing: it stands in free paper.
    Nothing,
    /// Lines, which then end at its white.
    Lines,
}

/// A place found for a label.
#[derive(Clone, Copy, Debug)]
pub struct Spot {
    /// Its middle.
    pub centre: Point,
    /// The line from the anchor to it, when it is not beside the anchor.
    pub leader: Option<Seg>,
}

/// A label at its place.
#[derive(Clone, Debug)]
pub struct Label {
    /// Its leader: drawn before any letters.
    pub leader: Vec<Item>,
    /// Its letters on white: drawn after every line.
    pub letters: Vec<Item>,
    /// The box of its letters.
    pub area: Bounds,
}

/// The places already taken on a drawing.
///
/// Greedy: labels placed first get the best places, so place the most important first.
#[derive(Clone, Debug)]
pub struct Labels {
    area: Bounds,
    taken: Vec<Bounds>,
    texts: Vec<Bounds>,
    points: Vec<Point>,
    named: Vec<Point>,
    /// Each with its box.
    lines: Vec<(Seg, Bounds)>,
}

impl Labels {
    /// Nothing taken yet; labels stay inside `area`.
    #[must_use]
    pub fn new(area: Bounds) -> Self {
        Self {
            area,
            taken: vec![],
            texts: vec![],
            points: vec![],
            named: vec![],
            lines: vec![],
        }
    }

    /// Where labels stay inside.
    #[must_use]
    pub const fn area(&self) -> Bounds {
        self.area
    }

    /// Keeps labels off a box.
    pub fn occupy(&mut self, area: Bounds) {
        self.taken.push(area);
    }

    /// Keeps labels off a line or arc. Leaders may cross it.
    pub fn occupy_seg(&mut self, seg: Seg) {
        self.lines.push((seg, seg.bounds()));
    }

    /// Keeps labels off a point, such as the anchor of a label still to come; a label with this
    /// anchor may lie on it.
    pub fn occupy_point(&mut self, point: Point) {
        self.points.push(point);
    }

    /// A point that is to have a name of its own: no other's name comes nearer to it than to its own.
    pub fn occupy_named(&mut self, point: Point) {
        self.named.push(point);
    }

    /// True when a label lies nearer to its anchor than to every other point that has a name.
    fn is_its_own(&self, area: Bounds, anchor: Point) -> bool {
        let off = |p: Point| nearest(area, p).distance(p);
        let others = self
            .named
            .iter()
            .filter(|p| p.distance(anchor) > SAME_PLACE_MM);
        !self.named.contains(&anchor) || others.into_iter().all(|p| off(*p) > off(anchor))
    }

    /// True when a point lies in no taken box, such as a cut's ring.
    #[must_use]
    pub fn is_clear_point(&self, point: Point) -> bool {
        self.taken.iter().all(|t| !has(*t, point))
    }

    /// True when a label for an anchor may lie here: inside the area and clear of all taken.
    #[must_use]
    pub fn is_free(&self, area: Bounds, anchor: Point, cover: Cover) -> bool {
        let wide = grown(area, CLEAR_MM);
        let off_point = |p: &Point| *p == anchor || !has(wide, *p);
        let mut boxes = self.taken.iter().chain(&self.texts);
        holds(self.area, area)
            && boxes.all(|t| !overlap(*t, wide))
            && self.points.iter().all(off_point)
            && (cover == Cover::Lines || self.lines.iter().all(|s| !meets_box(s, wide)))
    }

    /// True when a leader crosses no text, and no taken box but one its anchor lies in.
    fn is_clear(&self, leader: &Seg, anchor: Point) -> bool {
        let mut boxes = self.taken.iter().filter(|t| !has(**t, anchor));
        let leader = (*leader, leader.bounds());
        boxes.all(|t| !meets_box(&leader, *t)) && self.texts.iter().all(|t| !meets_box(&leader, *t))
    }

    /// The nearest place to an anchor for a box of which half the diagonal is given.
    #[must_use]
    pub fn spot(&self, anchor: Point, half: Vector, prefer: Prefer, cover: Cover) -> Option<Spot> {
        let mut places = candidates(anchor, half, prefer);
        places.find_map(|centre| {
            let area = around(centre, half);
            let leader = leader(anchor, area, LEADER_FROM_MM);
            let clear = leader.is_none_or(|l| self.is_clear(&l, anchor));
            let own = self.is_its_own(area, anchor);
            (clear && own && self.is_free(area, anchor, cover)).then_some(Spot { centre, leader })
        })
    }

    /// The same anywhere on the drawing, over lines and with a leader across what it must cross.
    #[must_use]
    pub fn any_spot(&self, anchor: Point, half: Vector, prefer: Prefer) -> Option<Spot> {
        let near = self.spot(anchor, half, prefer, Cover::Lines);
        near.or_else(|| {
            let free = |c: &Point| self.is_free(around(*c, half), anchor, Cover::Lines);
            let places = self.grid().into_iter().filter(free);
            let far = |c: &Point| c.distance(anchor);
            let centre = places.min_by(|a, b| far(a).total_cmp(&far(b)))?;
            let leader = leader(anchor, around(centre, half), LEADER_FROM_MM);
            Some(Spot { centre, leader })
        })
    }

    fn grid(&self) -> Vec<Point> {
        #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
        let count = |mm: f64| (mm / GRID_MM).max(0.0) as u32;
        let (low, high) = (self.area.min, count(self.area.height()));
        let across = 0..=count(self.area.width());
        let each = across.flat_map(|i| (0..=high).map(move |j| (f64::from(i), f64::from(j))));
        each.map(|(i, j)| low + Vector::new(i, j) * GRID_MM)
            .collect()
    }

    /// A one-line label in free paper, as near to its anchor as it can, with a leader when that is
    /// not beside it.
    pub fn place(
        &mut self,
        anchor: Point,
        text: &str,
        style: &Style,
        prefer: Prefer,
    ) -> Option<Label> {
        let spot = self.spot(anchor, half_of(text, style), prefer, Cover::Nothing)?;
        Some(self.put(anchor, spot, text, style))
    }

    /// The same where no free paper is near: over lines, then anywhere that is clear of other labels.
    pub fn must_place(
        &mut self,
        anchor: Point,
        text: &str,
        style: &Style,
        prefer: Prefer,
    ) -> Option<Label> {
        let half = half_of(text, style);
        let free = self.spot(anchor, half, prefer, Cover::Nothing);
        let spot = free.or_else(|| self.any_spot(anchor, half, prefer))?;
        Some(self.put(anchor, spot, text, style))
    }

    /// A label at a place found for it.
    pub fn put(&mut self, anchor: Point, spot: Spot, text: &str, style: &Style) -> Label {
        let text = centred(text, spot.centre, style);
        let area = text.bounds();
        self.texts.push(area);
        let white = Path::frame(grown(area, WHITE_MM), None, Some(Ink::White));
        Label {
            leader: self.lead(anchor, spot.leader),
            letters: vec![white.into(), text.into()],
            area,
        }
    }

    /// A leader with a dot at its anchor, which later labels keep off.
    pub fn lead(&mut self, anchor: Point, leader: Option<Seg>) -> Vec<Item> {
        let Some(line) = leader.filter(|_| has(self.area, anchor)) else {
            return Vec::new();
        };
        self.occupy_seg(line);
        let stroke = PenStroke::solid(NARROW_MM, Ink::Black);
        vec![
            Path::open(vec![vec![line]], stroke).into(),
            Path::dot(anchor, DOT_MM, Ink::Black).into(),
        ]
    }
}

/// Half the diagonal of a line of text's box.
#[must_use]
pub fn half_of(text: &str, style: &Style) -> Vector {
    let high = cap_height_mm(style.face, style.size_pt) + descent_mm(style.face, style.size_pt);
    Vector::new(style.width_mm(text) / 2.0, high / 2.0)
}

/// A box round a point.
#[must_use]
pub fn around(centre: Point, half: Vector) -> Bounds {
    Bounds {
        min: centre - half,
        max: centre + half,
    }
}

/// A line of text with the middle of its box at a point.
#[must_use]
pub fn centred(text: &str, centre: Point, style: &Style) -> Text {
    let down = half_of(text, style).y - descent_mm(style.face, style.size_pt);
    let base = Point::new(centre.x, centre.y - down);
    style.text(text, base, Anchor::Middle)
}

/// The directions tried on a ring.
static WAYS: LazyLock<Vec<Vector>> = LazyLock::new(|| {
    let turn = |step: u32| TAU * f64::from(step) / f64::from(DIRECTIONS);
    (0..DIRECTIONS)
        .map(|step| Vector::at_angle(turn(step)))
        .collect()
});

/// Middles to try, nearest first.
fn candidates(anchor: Point, half: Vector, prefer: Prefer) -> impl Iterator<Item = Point> {
    let first = (prefer == Prefer::Centred).then_some(anchor);
    let rings = (0..RINGS).flat_map(move |ring| {
        let off = BESIDE_MM + f64::from(ring) * RING_MM;
        WAYS.iter().map(move |way| {
            // The box's support in this direction keeps its nearest side `off` mm away.
            let x = way.x * off + way.x.signum() * half.x * way.x.abs().sqrt();
            let y = way.y * off + way.y.signum() * half.y * way.y.abs().sqrt();
            anchor + Vector::new(x, y)
        })
    });
    first.into_iter().chain(rings)
}

/// The leader from an anchor to a label farther from it than `from` mm.
pub(super) fn leader(anchor: Point, area: Bounds, from: f64) -> Option<Seg> {
    let near = nearest(area, anchor);
    (anchor.distance(near) > from)
        .then(|| Seg::Line(anchor, near - (near - anchor).unit() * WHITE_MM))
}

/// The place in a box nearest to a point.
fn nearest(area: Bounds, point: Point) -> Point {
    Point::new(
        point.x.clamp(area.min.x, area.max.x),
        point.y.clamp(area.min.y, area.max.y),
    )
}

fn holds(outer: Bounds, inner: Bounds) -> bool {
    has(outer, inner.min) && has(outer, inner.max)
}

fn has(area: Bounds, point: Point) -> bool {
    let across = (area.min.x..=area.max.x).contains(&point.x);
    across && (area.min.y..=area.max.y).contains(&point.y)
}

fn overlap(a: Bounds, b: Bounds) -> bool {
    a.min.x < b.max.x && b.min.x < a.max.x && a.min.y < b.max.y && b.min.y < a.max.y
}

/// True when any part of a line or arc lies in a box; its own box is given.
fn meets_box((seg, bounds): &(Seg, Bounds), area: Bounds) -> bool {
    overlap_or_touch(*bounds, area)
        && match seg {
            Seg::Line(a, b) => line_meets(*a, *b - *a, area),
            Seg::Arc(_) => {
                has(area, seg.start())
                    || has(area, seg.end())
                    || ring(&corners(area))
                        .iter()
                        .any(|side| side_meets(side, seg))
            }
        }
}

/// Whether a line from `a` along `d` has a part in a box: what is left of it between the box's sides, one
/// pair after the other.
fn line_meets(a: Point, d: Vector, area: Bounds) -> bool {
    let (mut low, mut high) = (0.0, 1.0);
    for (from, along, min, max) in [
        (a.x, d.x, area.min.x, area.max.x),
        (a.y, d.y, area.min.y, area.max.y),
    ] {
        if along == 0.0 {
            if from < min || from > max {
                return false;
            }
            continue;
        }
        let ends = [(min - from) / along, (max - from) / along];
        low = f64::max(low, ends[0].min(ends[1]));
        high = f64::min(high, ends[0].max(ends[1]));
    }
    low <= high
}

fn side_meets(side: &Seg, seg: &Seg) -> bool {
    let Seg::Line(a, b) = *side else { return false };
    let length = a.distance(b);
    let line = Line::through(a, b);
    let crossings = seg.line_crossings(&line);
    crossings.iter().any(|at| (0.0..=length).contains(at))
}

fn overlap_or_touch(a: Bounds, b: Bounds) -> bool {
    a.min.x <= b.max.x && b.min.x <= a.max.x && a.min.y <= b.max.y && b.min.y <= a.max.y
}
