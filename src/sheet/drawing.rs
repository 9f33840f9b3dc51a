//! Drawings of the slab: layers put one over the other at one scale.
//!
//! Kept stone is plain, waste hatched, kerf solid. Lines after ISO 128: the kept outline wide, the
//! slab's edge of middle width, set-out lines long dash and dot, what has gone dotted.

use std::f64::consts::TAU;

use super::dimension::{Dimension, Run};
use super::hatch::hatch;
use super::item::{Anchor, Dash, Face, Ink, Item, Path, Stroke};
use super::labels::{Labelled, Labels, Prefer, leader};
use super::pen::{MIDDLE_MM, NARROW_MM, WIDE_MM, grown};
use super::wrap::Style;
use crate::geom::{Arc, Bounds, Outline, Point, Region, Seg, Side, Vector, boolean};

/// Distance between hatch lines on paper, mm.
const HATCH_MM: f64 = 2.2;
/// Names of corners and edges.
pub const NAME: Style = Style::new(Face::Bold, 10.0, 4.5);
/// Figures in drawings.
pub const FIGURE: Style = Style::new(Face::Regular, 9.0, 4.2);
/// From a point to the middle of its name on paper, mm.
pub const NAME_OFF_MM: f64 = 4.2;
/// Radius of the ring round a cut's number, mm.
const BADGE_MM: f64 = 2.6;

/// What the inside of a shape shows.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Fill {
    /// Nothing.
    None,
    /// One colour.
    Ink(Ink),
    /// Hatching.
    Hatch,
}

/// Lines of places across a piece, each way, tried for its name.
const NAME_PLACES: i32 = 8;
/// Places tried for a ring that finds no room where it is wanted.
const BADGE_PLACES: u32 = 36;

/// A drawing under way: the slab's frame at a scale on paper.
#[derive(Clone, Debug)]
pub struct Drawing {
    scale: f64,
    shift: Vector,
    labels: Labels,
    /// The part of the slab's frame that is shown, when it is only a part.
    window: Option<Bounds>,
    items: Vec<Item>,
    over: Vec<Item>,
}

impl Drawing {
    /// A drawing that shows `subject` (slab's frame) as large as fits in `area` (paper) with
    /// `border` mm of paper left free on every side for names and dimensions.
    #[must_use]
    pub fn fit(subject: Bounds, area: Bounds, border: f64) -> Self {
        let room = (
            (area.width() - 2.0 * border).max(1.0),
            (area.height() - 2.0 * border).max(1.0),
        );
        let scale = (room.0 / subject.width().max(1.0)).min(room.1 / subject.height().max(1.0));
        let (middle, centre) = (area.centre(), subject.centre());
        let shift = Vector::new(middle.x - centre.x * scale, middle.y - centre.y * scale);
        Self {
            scale,
            shift,
            labels: Labels::new(area),
            window: None,
            items: Vec::new(),
            over: Vec::new(),
        }
    }

    /// A drawing of a part of the slab that fills `area`; what lies outside is cut off.
    #[must_use]
    pub fn window(subject: Bounds, area: Bounds) -> Self {
        let mut drawing = Self::fit(subject, area, 0.0);
        let back = |p: Point| {
            let moved = p - drawing.shift;
            Point::new(moved.x / drawing.scale, moved.y / drawing.scale)
        };
        drawing.window = Some(Bounds {
            min: back(area.min),
            max: back(area.max),
        });
        drawing
    }

    /// The place on paper of a place on the slab.
    #[must_use]
    pub fn at(&self, point: Point) -> Point {
        Point::new(
            point.x * self.scale + self.shift.x,
            point.y * self.scale + self.shift.y,
        )
    }

    /// How many times smaller than life: the n of 1 : n.
    #[must_use]
    pub fn reduction(&self) -> f64 {
        1.0 / self.scale
    }

    fn seg(&self, seg: &Seg) -> Seg {
        match *seg {
            Seg::Line(a, b) => Seg::Line(self.at(a), self.at(b)),
            Seg::Arc(arc) => Seg::Arc(Arc {
                centre: self.at(arc.centre),
                radius: arc.radius * self.scale,
                ..arc
            }),
        }
    }

    fn run(&self, segs: &[Seg]) -> Vec<Seg> {
        segs.iter().map(|s| self.seg(s)).collect()
    }

    /// A closed shape: a fill and an edge. `rings` are its outer boundary and any holes. The edge
    /// is not drawn where the window cuts the shape off.
    fn shape(&mut self, rings: &[Vec<Seg>], fill: Fill, edge: Stroke) {
        let shown = self.shown(rings);
        let runs: Vec<Vec<Seg>> = shown.iter().map(|r| self.run(r)).collect();
        match fill {
            Fill::None => {}
            Fill::Ink(ink) => self
                .items
                .push(Path::closed(runs.clone(), None, Some(ink)).into()),
            Fill::Hatch => {
                let line = Stroke::solid(NARROW_MM * 0.7, Ink::Grey);
                self.items.push(hatch(&runs, HATCH_MM, line).into());
            }
        }
        if self.window.is_none() {
            self.items.push(Path::closed(runs, Some(edge), None).into());
        } else {
            let edges = shown.iter().flatten().filter(|s| !self.on_border(s));
            let runs = edges.map(|s| vec![self.seg(s)]).collect();
            self.items.push(Path::open(runs, edge).into());
        }
    }

    /// The rings of a shape inside the window.
    fn shown(&self, rings: &[Vec<Seg>]) -> Vec<Vec<Seg>> {
        let Some(window) = self.window else {
            return rings.to_vec();
        };
        let outlines: Option<Vec<Outline>> =
            rings.iter().map(|r| Outline::new(r.clone()).ok()).collect();
        let (Some(mut outlines), Ok(frame)) =
            (outlines, Outline::polygon(&super::pen::corners(window)))
        else {
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

    fn on_border(&self, seg: &Seg) -> bool {
        let near = |a: f64, b: f64| (a - b).abs() < 1e-3;
        self.window.is_some_and(|w| {
            let ends = [seg.start(), seg.end()];
            [w.min.x, w.max.x]
                .iter()
                .any(|x| ends.iter().all(|e| near(e.x, *x)))
                || [w.min.y, w.max.y]
                    .iter()
                    .any(|y| ends.iter().all(|e| near(e.y, *y)))
        })
    }

    /// Keeps labels off a run of pieces that is drawn without that.
    pub fn keep_labels_off(&mut self, segs: &[Seg]) {
        for seg in segs {
            self.labels.occupy_seg(self.seg(seg));
        }
    }

    /// The kept stone: plain, its edge wide. `openings` are its holes, run clockwise.
    pub fn kept(&mut self, outline: &Outline, openings: &[Vec<Seg>]) {
        let mut rings = vec![outline.segs().to_vec()];
        rings.extend_from_slice(openings);
        self.keep_labels_off(&rings.concat());
        self.shape(
            &rings,
            Fill::Ink(Ink::White),
            Stroke::solid(WIDE_MM, Ink::Black),
        );
    }

    /// A piece of waste: hatched. `rings` are its boundaries.
    pub fn waste(&mut self, rings: &[Vec<Seg>]) {
        self.shape(rings, Fill::Hatch, Stroke::solid(NARROW_MM, Ink::Black));
    }

    /// The slab's edge.
    pub fn slab(&mut self, outline: &Outline) {
        self.keep_labels_off(outline.segs());
        let rings = [outline.segs().to_vec()];
        self.shape(&rings, Fill::None, Stroke::solid(MIDDLE_MM, Ink::Black));
    }

    /// Stone that has gone: dotted.
    pub fn gone(&mut self, rings: &[Vec<Seg>]) {
        let dots = Stroke::solid(NARROW_MM, Ink::Grey).dashed(Dash::Dotted);
        self.shape(rings, Fill::None, dots);
    }

    /// A slot of the disc, solid, with a line so that a narrow one shows.
    pub fn kerf(&mut self, corners: &[Point]) {
        let rings = [crate::geom::seg::ring(corners)];
        self.shape(
            &rings,
            Fill::Ink(Ink::Black),
            Stroke::solid(NARROW_MM, Ink::Black),
        );
    }

    /// An open run of pieces in a line type.
    pub fn line(&mut self, segs: &[Seg], stroke: Stroke) {
        let run = self.run(segs);
        self.items.push(Path::open(vec![run], stroke).into());
    }

    /// A line that labels keep off.
    pub fn line_apart(&mut self, a: Point, b: Point, stroke: Stroke) {
        self.labels.occupy_seg(Seg::Line(self.at(a), self.at(b)));
        self.line(&[Seg::Line(a, b)], stroke);
    }

    /// A small cross at a point, such as a pivot or a mark.
    pub fn cross(&mut self, at: Point) {
        let (c, arm) = (self.at(at), 1.8);
        let stroke = Stroke::solid(MIDDLE_MM, Ink::Black);
        let runs = [Vector::new(arm, 0.0), Vector::new(0.0, arm)];
        let runs = runs.map(|v| vec![Seg::Line(c - v, c + v)]).to_vec();
        self.over.push(Path::open(runs, stroke).into());
        self.labels.occupy(grown(Bounds::around([c]), arm));
    }

    /// A dot at a point.
    pub fn dot(&mut self, at: Point) {
        let c = self.at(at);
        self.over.push(Path::dot(c, 0.7, Ink::Black).into());
        self.labels.occupy(grown(Bounds::around([c]), 0.9));
    }

    /// The balance point: a disc with two black quarters.
    pub fn balance(&mut self, at: Point) {
        let (c, r) = (self.at(at), 2.0);
        let quarter = |start: f64| {
            let arc = Arc {
                centre: c,
                radius: r,
                start,
                sweep: std::f64::consts::FRAC_PI_2,
            };
            let seg = Seg::Arc(arc);
            vec![Seg::Line(c, seg.start()), seg, Seg::Line(seg.end(), c)]
        };
        let stroke = Stroke::solid(NARROW_MM, Ink::Black);
        let circle = crate::geom::seg::circle(c, r);
        self.over
            .push(Path::closed(vec![circle], Some(stroke), Some(Ink::White)).into());
        let quarters = vec![quarter(0.0), quarter(std::f64::consts::PI)];
        self.over
            .push(Path::closed(quarters, None, Some(Ink::Black)).into());
        self.labels.occupy(grown(Bounds::around([c]), r));
    }

    /// A ringed number at a point: a cut, a lifter.
    pub fn badge(&mut self, at: Point, text: &str) {
        self.badge_off(at, Vector::default(), text);
    }

    /// A ringed number `off` (mm on paper) from a point, or as near to there as there is room.
    pub fn badge_off(&mut self, at: Point, off: Vector, text: &str) {
        let wanted = self.at(at) + off;
        let ring = |c: &Point| grown(Bounds::around([*c]), BADGE_MM);
        let around = (0..BADGE_PLACES).map(|i| {
            let (turn, out) = (f64::from(i % 12) * TAU / 12.0, f64::from(i / 12 + 1));
            wanted + Vector::at_angle(turn) * (out * BADGE_MM * 1.2)
        });
        let free = std::iter::once(wanted)
            .chain(around)
            .find(|c| self.labels.is_clear_of_boxes(ring(c)));
        let c = free.unwrap_or(wanted);
        let circle = crate::geom::seg::circle(c, BADGE_MM);
        let stroke = Stroke::solid(MIDDLE_MM, Ink::Black);
        self.over
            .push(Path::closed(vec![circle], Some(stroke), Some(Ink::White)).into());
        let cap = super::typeface::cap_height_mm(NAME.face, NAME.size_pt);
        let base = Point::new(c.x, c.y - cap / 2.0);
        self.over.push(NAME.text(text, base, Anchor::Middle).into());
        self.labels.occupy(ring(&c));
    }

    /// A name beside a point, clear of what is drawn.
    pub fn name(&mut self, at: Point, text: &str) {
        self.label(at, text, &NAME, Prefer::Beside);
    }

    /// A name a little way from a point in a direction of the slab's frame: a corner's name lies on
    /// the side the direction shows.
    pub fn name_towards(&mut self, at: Point, towards: Vector, text: &str) {
        let spot = self.at(at) + towards * NAME_OFF_MM;
        self.label_at_paper(spot, text, &NAME, Prefer::Centred);
    }

    /// A figure or word at a point.
    pub fn word(&mut self, at: Point, text: &str) {
        self.label(at, text, &FIGURE, Prefer::Centred);
    }

    /// The best place for a piece's name: inside the piece near its balance point, elsewhere inside
    /// it, or beside it.
    fn room_for(
        &mut self,
        outline: &Outline,
        at: Point,
        text: &str,
    ) -> Option<(Point, Vec<Item>, Bounds)> {
        let bounds = outline.bounds();
        let part = |i: i32| f64::from(i) / f64::from(NAME_PLACES);
        let spread = (1..NAME_PLACES).flat_map(|i| (1..NAME_PLACES).map(move |j| (i, j)));
        let others = spread.map(|(i, j)| {
            Point::new(
                bounds.min.x + bounds.width() * part(i),
                bounds.min.y + bounds.height() * part(j),
            )
        });
        let spots: Vec<Point> = std::iter::once(at).chain(others).collect();
        let inside = |p: &Point| outline.side(*p) == Side::Inside;
        let spots: Vec<Point> = spots.into_iter().filter(inside).collect();
        // A leader that ends under a cut's ring points at nothing.
        let clear = |p: &Point| self.labels.is_clear_point(self.at(*p));
        let seen: Vec<Point> = spots.iter().copied().filter(clear).collect();
        let mut beside = None;
        for spot in if seen.is_empty() { spots } else { seen } {
            let mut labels = self.labels.clone();
            let paper = self.at(spot);
            let placed = labels.place(paper, text, &FIGURE, Prefer::Centred);
            if let Labelled::Placed(items, area) = placed {
                let found = (labels, paper, items, area);
                if self.inside(outline, area) {
                    beside = Some(found);
                    break;
                }
                beside.get_or_insert(found);
            }
        }
        let (labels, paper, items, area) = beside?;
        self.labels = labels;
        Some((paper, items, area))
    }

    /// Whether a box on paper lies inside a shape of the slab's frame.
    fn inside(&self, outline: &Outline, area: Bounds) -> bool {
        super::pen::corners(area).iter().all(|c| {
            let moved = *c - self.shift;
            let back = Point::new(moved.x / self.scale, moved.y / self.scale);
            outline.side(back) != Side::Outside
        })
    }

    /// The name of a piece of waste with its mass, at its balance point. Where both do not fit into
    /// the piece they stand beside it with a leader, so that they cannot be read as its neighbour's.
    pub fn piece(&mut self, outline: &Outline, at: Point, text: &str) {
        let Some((spot, items, area)) = self.room_for(outline, at, text) else {
            return;
        };
        if leader(spot, area).is_none() && !self.inside(outline, area) {
            let near = Point::new(
                spot.x.clamp(area.min.x, area.max.x),
                spot.y.clamp(area.min.y, area.max.y),
            );
            let line = Path::line(spot, near, Stroke::solid(NARROW_MM, Ink::Black));
            self.over.push(line.into());
            self.over.push(Path::dot(spot, 0.7, Ink::Black).into());
        }
        let white = Path::frame(grown(area, 0.5), None, Some(Ink::White));
        self.over.push(white.into());
        self.over.extend(items);
    }

    /// A text in a style near a point.
    pub fn label(&mut self, at: Point, text: &str, style: &Style, prefer: Prefer) {
        let at = self.at(at);
        self.label_at_paper(at, text, style, prefer);
    }

    fn label_at_paper(&mut self, at: Point, text: &str, style: &Style, prefer: Prefer) {
        if let Labelled::Placed(items, area) = self.labels.place(at, text, style, prefer) {
            let white = Path::frame(grown(area, 0.5), None, Some(Ink::White));
            self.over.push(white.into());
            self.over.extend(items);
        }
    }

    /// A dimension along x or y, its line `off` mm of paper beyond the outermost of the two points
    /// (negative: below or left).
    pub fn dimension(&mut self, from: Point, to: Point, run: Run, off: f64, figure: String) {
        let (from, to) = (self.at(from), self.at(to));
        let line_at = match (run, off > 0.0) {
            (Run::Level, true) => from.y.max(to.y) + off,
            (Run::Level, false) => from.y.min(to.y) + off,
            (Run::Upright, true) => from.x.max(to.x) + off,
            (Run::Upright, false) => from.x.min(to.x) + off,
        };
        let drawn = Dimension {
            from,
            to,
            run,
            line_at,
            figure,
            size_pt: 10.0,
        }
        .draw();
        self.labels.occupy(drawn.figure);
        self.labels.occupy(drawn.line);
        self.over.extend(drawn.items);
    }

    /// Everything drawn, labels over the rest.
    #[must_use]
    pub fn finish(mut self) -> Vec<Item> {
        self.items.append(&mut self.over);
        self.items
    }
}
