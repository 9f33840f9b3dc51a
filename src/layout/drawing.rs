//! A drawing under way: the world at a round scale on paper, with labels that keep clear of each
//! other and of the lines.
//!
//! Lines after ISO 128: the kept outline wide, edges of middle width, set-out lines long dash and dot,
//! what is under the stone dashed, what has gone dotted.

use std::f64::consts::PI;

use super::hatch::hatch;
use super::item::{Dash, Ink, Item, Path, PenStroke, Typeface};
use super::labels::Labels;
use super::pen::{MIDDLE_MM, NARROW_MM, WIDE_MM, corners};
use super::wrap::Style;
use crate::document::figure::{Lettering, Shape};
use crate::geom::{Arc, Bounds, Outline, Point, Region, Seg, Vector, boolean};

/// Distance between hatch lines on paper, mm; where nobody stands they lie farther apart.
const HATCH_MM: [f64; 2] = [2.4, 6.0];
/// Parts of a piece that are shown or not, each by its middle.
const PARTS: u32 = 64;

/// Paper left free on the sides of a drawing, mm.
#[derive(Clone, Copy, Debug, Default)]
pub struct Margins {
    /// Left and right.
    pub across: [f64; 2],
    /// Below and above.
    pub upright: [f64; 2],
}

/// A drawing under way.
#[derive(Clone, Debug)]
pub struct Drawing {
    /// Paper mm for a mm of the world; negative for a drawing turned half round.
    pub(super) scale: f64,
    shift: Vector,
    pub(super) labels: Labels,
    /// The part of the world that is shown, when it is only a part.
    window: Option<Bounds>,
    /// The frame on paper: dimensions lie outside it.
    pub(super) frame: Bounds,
    items: Vec<Item>,
    pub(super) over: Vec<Item>,
    /// Letters on their white: nothing is drawn after them.
    pub(super) letters: Vec<Item>,
    /// No letter is smaller, points.
    least_pt: f64,
    /// True where a scale bar tells the unit of a figure that has no room for its own.
    pub(super) unit_told: bool,
}

impl Drawing {
    /// A drawing of a part of the world at 1 : `reduction` in the middle of an area of paper.
    #[must_use]
    pub fn new(
        frame: Bounds,
        area: Bounds,
        margins: Margins,
        reduction: f64,
        turned: bool,
        least_pt: f64,
    ) -> Self {
        let scale = if turned { -1.0 } else { 1.0 } / reduction;
        let low = Point::new(
            area.min.x + margins.across[0],
            area.min.y + margins.upright[0],
        );
        let high = Point::new(
            area.max.x - margins.across[1],
            area.max.y - margins.upright[1],
        );
        let (middle, centre) = (low.midpoint(high), frame.centre());
        let shift = Vector::new(middle.x - centre.x * scale, middle.y - centre.y * scale);
        let mut drawing = Self {
            scale,
            shift,
            labels: Labels::new(area),
            window: None,
            frame,
            items: Vec::new(),
            over: Vec::new(),
            letters: Vec::new(),
            least_pt,
            unit_told: false,
        };
        drawing.frame = Bounds::around([drawing.at(frame.min), drawing.at(frame.max)]);
        drawing
    }

    /// Style of a lettering.
    #[must_use]
    pub fn style(&self, lettering: Lettering) -> Style {
        let (face, size) = match lettering {
            Lettering::Number => (Typeface::Bold, 12.0),
            Lettering::Name => (Typeface::Bold, 10.5),
            Lettering::Word => (Typeface::Regular, 9.5),
        };
        let size = f64::max(size, self.least_pt);
        Style::new(face, size, size * 0.44)
    }

    /// The same drawing with what lies outside a part of the world cut off.
    #[must_use]
    pub fn clipped(self, window: Bounds) -> Self {
        Self {
            window: Some(window),
            ..self
        }
    }

    /// The frame on paper.
    #[must_use]
    pub const fn frame(&self) -> Bounds {
        self.frame
    }

    /// The place on paper of a place in the world.
    #[must_use]
    pub fn at(&self, point: Point) -> Point {
        Point::new(
            point.x * self.scale + self.shift.x,
            point.y * self.scale + self.shift.y,
        )
    }

    /// The direction on paper of a direction in the world.
    #[must_use]
    pub fn way(&self, way: Vector) -> Vector {
        way * self.scale.signum()
    }

    /// Paper mm of a length in the world.
    #[must_use]
    pub const fn length(&self, mm: f64) -> f64 {
        mm * self.scale.abs()
    }

    pub(super) fn back(&self, point: Point) -> Point {
        let moved = point - self.shift;
        Point::new(moved.x / self.scale, moved.y / self.scale)
    }

    pub(super) fn seg(&self, seg: &Seg) -> Seg {
        match *seg {
            Seg::Line(a, b) => Seg::Line(self.at(a), self.at(b)),
            Seg::Arc(arc) => Seg::Arc(Arc {
                centre: self.at(arc.centre),
                radius: self.length(arc.radius),
                start: if self.scale < 0.0 {
                    arc.start + PI
                } else {
                    arc.start
                },
                ..arc
            }),
        }
    }

    /// A closed shape: its outer boundary and any holes. Its edge is not drawn where the window cuts
    /// it off.
    pub fn area(&mut self, shape: Shape, rings: &[Vec<Seg>]) {
        let window = self.window.or_else(|| self.paper_window(rings));
        let shown = shown(rings, window);
        let runs: Vec<Vec<Seg>> = shown
            .iter()
            .map(|ring| ring.iter().map(|s| self.seg(s)).collect())
            .collect();
        let thin = PenStroke::solid(NARROW_MM, Ink::Black);
        let (fill, edge) = match shape {
            Shape::Kept => (Some(Ink::White), PenStroke::solid(WIDE_MM, Ink::Black)),
            Shape::Waste => (Some(Ink::White), thin),
            Shape::Gone => (
                None,
                PenStroke::solid(NARROW_MM, Ink::Grey).dashed(Dash::Dotted),
            ),
            Shape::Edge => (None, PenStroke::solid(MIDDLE_MM, Ink::Black)),
            Shape::Kerf => (Some(Ink::Black), thin),
            Shape::Guide | Shape::Tool => {
                (Some(Ink::Pale), PenStroke::solid(MIDDLE_MM, Ink::Black))
            }
            Shape::Danger => (None, thin.dashed(Dash::Dashed)),
        };
        if fill.is_some() {
            self.items
                .push(Path::closed(runs.clone(), None, fill).into());
        }
        let spacing = match shape {
            Shape::Waste => Some(HATCH_MM[0]),
            Shape::Danger => Some(HATCH_MM[1]),
            _ => None,
        };
        if let Some(spacing) = spacing {
            let line = PenStroke::solid(NARROW_MM * 0.7, Ink::Grey);
            self.items.push(hatch(&runs, spacing, line).into());
        }
        if matches!(shape, Shape::Kept | Shape::Edge | Shape::Guide) {
            for seg in runs.iter().flatten() {
                self.labels.occupy_seg(*seg);
            }
        }
        if let Some(window) = window {
            let edges = shown.iter().flatten().filter(|s| !on_border(s, window));
            let runs = edges.map(|s| vec![self.seg(s)]).collect();
            self.items.push(Path::open(runs, edge).into());
        } else {
            self.items.push(Path::closed(runs, Some(edge), None).into());
        }
    }

    /// The drawing's paper as a part of the world, for a shape that reaches beyond it.
    fn paper_window(&self, rings: &[Vec<Seg>]) -> Option<Bounds> {
        let paper = self.labels.area();
        let paper = Bounds::around([self.back(paper.min), self.back(paper.max)]);
        let bounds = rings.iter().flatten().map(Seg::bounds);
        let reach = bounds.reduce(Bounds::joined)?;
        let inside = paper.joined(reach) == paper;
        (!inside).then_some(paper)
    }

    /// True when a point of the world is shown.
    #[must_use]
    pub fn shows(&self, point: Point) -> bool {
        let inside = |w: Bounds| {
            (w.min.x..=w.max.x).contains(&point.x) && (w.min.y..=w.max.y).contains(&point.y)
        };
        self.window.is_none_or(inside)
    }

    /// An open run of pieces.
    pub fn line(&mut self, segs: &[Seg], stroke: PenStroke, apart: bool) {
        let shown = segs.iter().flat_map(|s| self.in_window(s));
        let run: Vec<Seg> = shown.map(|s| self.seg(&s)).collect();
        if apart {
            for seg in &run {
                self.labels.occupy_seg(*seg);
            }
        }
        let runs = run.into_iter().map(|s| vec![s]).collect();
        self.items.push(Path::open(runs, stroke).into());
    }

    /// The parts of a piece that the window shows.
    fn in_window(&self, seg: &Seg) -> Vec<Seg> {
        if self.window.is_none() {
            return vec![*seg];
        }
        let share = |i: u32| f64::from(i) / f64::from(PARTS);
        let mut found: Vec<(u32, u32)> = Vec::new();
        for i in 0..PARTS {
            if !self.shows(seg.at(f64::midpoint(share(i), share(i + 1)))) {
                continue;
            }
            match found.last_mut() {
                Some((_, to)) if *to == i => *to = i + 1,
                _ => found.push((i, i + 1)),
            }
        }
        let part = |(a, b): (u32, u32)| seg.part(share(a), share(b));
        found.into_iter().map(part).collect()
    }

    /// Items of paper over everything drawn.
    pub fn put(&mut self, items: impl IntoIterator<Item = Item>) {
        self.over.extend(items);
    }

    /// Items of paper among what is drawn so far, with a box that labels keep off.
    pub fn put_under(&mut self, items: impl IntoIterator<Item = Item>, taken: Bounds) {
        self.items.extend(items);
        self.labels.occupy(taken);
    }

    /// Keeps labels off a box of paper.
    pub fn occupy(&mut self, area: Bounds) {
        self.labels.occupy(area);
    }

    /// Everything drawn, letters over the rest.
    #[must_use]
    pub fn finish(mut self) -> Vec<Item> {
        self.items.append(&mut self.over);
        self.items.append(&mut self.letters);
        self.items
    }
}

/// The rings of a shape inside a window.
fn shown(rings: &[Vec<Seg>], window: Option<Bounds>) -> Vec<Vec<Seg>> {
    let Some(window) = window else {
        return rings.to_vec();
    };
    let outlines: Option<Vec<Outline>> =
        rings.iter().map(|r| Outline::new(r.clone()).ok()).collect();
    let (Some(mut outlines), Ok(frame)) = (outlines, Outline::polygon(&corners(window))) else {
        return Vec::new();
    };
    if outlines.is_empty() {
        return Vec::new();
    }
    let holes = outlines.split_off(1);
    let outer = outlines.remove(0);
    boolean::intersection(&[Region { outer, holes }], &[frame])
        .iter()
        .flat_map(|r| {
            let holes = r.holes.iter().map(Outline::clockwise);
            std::iter::once(r.outer.segs().to_vec()).chain(holes)
        })
        .collect()
}

fn on_border(seg: &Seg, window: Bounds) -> bool {
    let near = |a: f64, b: f64| (a - b).abs() < 1e-3;
    let ends = [seg.start(), seg.end()];
    let x = [window.min.x, window.max.x];
    let y = [window.min.y, window.max.y];
    x.iter().any(|x| ends.iter().all(|e| near(e.x, *x)))
        || y.iter().any(|y| ends.iter().all(|e| near(e.y, *y)))
}
