//! Labels that keep clear of each other and of what is already drawn.

use std::f64::consts::TAU;

use super::item::{Anchor, Ink, Item, Path, Stroke, Text};
use super::pen::{NARROW_MM, corners, grown};
use super::typeface::cap_height_mm;
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

/// What became of a label.
#[derive(Clone, Debug)]
pub enum Labelled {
    /// It is placed: its items, and the box of its text.
    Placed(Vec<Item>, Bounds),
    /// There is no free place within reach; the author must say it elsewhere.
    NoRoom,
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
    lines: Vec<Seg>,
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
            lines: vec![],
        }
    }

    /// Keeps labels off a box.
    pub fn occupy(&mut self, area: Bounds) {
        self.taken.push(area);
    }

    /// Keeps labels off a line or arc. Leaders may cross it.
    pub fn occupy_seg(&mut self, seg: Seg) {
        self.lines.push(seg);
    }

    /// Keeps labels off a point, such as the anchor of a label still to come; a label with this
    /// anchor may lie on it.
    pub fn occupy_point(&mut self, point: Point) {
        self.points.push(point);
    }

    /// True when a box is inside the area and clear of every other box: a ring may sit on a line.
    #[must_use]
    pub fn is_clear_of_boxes(&self, area: Bounds) -> bool {
        holds(self.area, area) && self.taken.iter().all(|t| !overlap(*t, area))
    }

    /// True when a point lies in no taken box, such as a cut's ring.
    #[must_use]
    pub fn is_clear_point(&self, point: Point) -> bool {
        self.taken.iter().all(|t| !has(*t, point))
    }

    /// True when a label for an anchor may lie here: inside the area and clear of all taken.
    fn is_free(&self, area: Bounds, anchor: Point) -> bool {
        let wide = grown(area, CLEAR_MM);
        let off_point = |p: &Point| *p == anchor || !has(wide, *p);
        let mut boxes = self.taken.iter().chain(&self.texts);
        holds(self.area, area)
            && boxes.all(|t| !overlap(*t, wide))
            && self.points.iter().all(off_point)
            && self.lines.iter().all(|s| !meets_box(s, wide))
    }

    /// True when a leader crosses no text, and no taken box but one its anchor lies in.
    fn is_clear(&self, leader: &Seg, anchor: Point) -> bool {
        let mut boxes = self.taken.iter().filter(|t| !has(**t, anchor));
        boxes.all(|t| !meets_box(leader, *t)) && self.texts.iter().all(|t| !meets_box(leader, *t))
    }

    /// Places a one-line label, on white, as near to its anchor as it can, with a leader when that
    /// is not beside it.
    pub fn place(&mut self, anchor: Point, text: &str, style: &Style, prefer: Prefer) -> Labelled {
        for centre in candidates(anchor, style.width_mm(text), style, prefer) {
            let label = centred(text, centre, style);
            let area = label.bounds();
            let leader = leader(anchor, area);
            let clear = leader.is_none_or(|l| self.is_clear(&l, anchor));
            if !clear || !self.is_free(area, anchor) {
                continue;
            }
            self.texts.push(area);
            let mut items = vec![];
            if let Some(line) = leader {
                self.lines.push(line);
                let stroke = Stroke::solid(NARROW_MM, Ink::Black);
                items.push(Path::open(vec![vec![line]], stroke).into());
                items.push(Path::dot(anchor, DOT_MM, Ink::Black).into());
            }
            let white = grown(area, WHITE_MM);
            items.push(Path::frame(white, None, Some(Ink::White)).into());
            items.push(label.into());
            return Labelled::Placed(items, area);
        }
        Labelled::NoRoom
    }
}

fn centred(text: &str, centre: Point, style: &Style) -> Text {
    let half = cap_height_mm(style.face, style.size_pt) / 2.0;
    let base = Point::new(centre.x, centre.y - half);
    style.text(text, base, Anchor::Middle)
}

/// Middles to try, nearest first.
fn candidates(anchor: Point, width: f64, style: &Style, prefer: Prefer) -> Vec<Point> {
    let half = Vector::new(width / 2.0, cap_height_mm(style.face, style.size_pt) / 2.0);
    let mut found = match prefer {
        Prefer::Centred => vec![anchor],
        Prefer::Beside => vec![],
    };
    for ring in 0..RINGS {
        let off = BESIDE_MM + f64::from(ring) * RING_MM;
        for step in 0..DIRECTIONS {
            let way = Vector::at_angle(TAU * f64::from(step) / f64::from(DIRECTIONS));
            // The box's support in this direction keeps its nearest side `off` mm away.
            let x = way.x * off + way.x.signum() * half.x * way.x.abs().sqrt();
            let y = way.y * off + way.y.signum() * half.y * way.y.abs().sqrt();
            found.push(anchor + Vector::new(x, y));
        }
    }
    found
}

/// The leader from an anchor to a label that is not beside it.
pub(super) fn leader(anchor: Point, area: Bounds) -> Option<Seg> {
    let near = Point::new(
        anchor.x.clamp(area.min.x, area.max.x),
        anchor.y.clamp(area.min.y, area.max.y),
    );
    (anchor.distance(near) > LEADER_FROM_MM).then(|| {
        let stop = near - (near - anchor).unit() * CLEAR_MM;
        Seg::Line(anchor, stop)
    })
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

/// True when any part of a line or arc lies in a box.
fn meets_box(seg: &Seg, area: Bounds) -> bool {
    overlap_or_touch(seg.bounds(), area)
        && (has(area, seg.start())
            || has(area, seg.end())
            || ring(&corners(area))
                .iter()
                .any(|side| side_meets(side, seg)))
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
