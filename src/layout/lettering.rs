//! Letters in a drawing: labels in and beside areas, and dimensions. They come after every line, each
//! on its white, so that no line runs through them.

use super::dimension::{Dimension, DimensionRun, DrawnDimension};
use super::drawing::Drawing;
use super::item::Item;
use super::labels::{Cover, Label, Prefer, Spot, around, half_of, leader};
use super::pen::corners;
use super::wrap::Style;
use crate::document::figure::{Lettering, Side};
use crate::geom::{Bounds, Outline, Point, Side as Where, Vector};

/// From the drawing to the first row of dimensions, and from one row to the next, mm.
const ROW_MM: [f64; 2] = [8.0, 7.5];
/// Lines of places across a piece, each way, tried for its name.
const NAME_PLACES: i32 = 8;

impl Drawing {
    /// Letters on white, over every line, with a box that labels keep off.
    pub(super) fn letter(&mut self, items: impl IntoIterator<Item = Item>, taken: Bounds) {
        self.letters.extend(items);
        self.labels.occupy(taken);
    }

    fn labelled(&mut self, label: Label) {
        self.over.extend(label.leader);
        self.letters.extend(label.letters);
    }

    pub(super) fn label_on_paper(&mut self, at: Point, text: &str, style: &Style, prefer: Prefer) {
        if let Some(label) = self.labels.must_place(at, text, style, prefer) {
            self.labelled(label);
        }
    }

    /// Words inside an area of the world near a place in it, elsewhere inside it, or beside it with a
    /// leader.
    pub(super) fn within(
        &mut self,
        outline: &Outline,
        at: Point,
        lettering: Lettering,
        text: &str,
    ) {
        let style = self.style(lettering);
        let half = half_of(text, &style);
        let spots = self.spots_in(outline, at);
        let inside = self.room_inside(outline, &spots, half);
        let found = inside.map(|c| {
            (
                c,
                Spot {
                    centre: c,
                    leader: None,
                },
            )
        });
        let Some((anchor, spot)) = found.or_else(|| self.room_beside(&spots, half)) else {
            return;
        };
        let label = self.labels.put(anchor, spot, text, &style);
        self.labelled(label);
    }

    /// The first of some places in the world where a box lies inside a shape, on free paper if it can.
    fn room_inside(&self, outline: &Outline, spots: &[Point], half: Vector) -> Option<Point> {
        let fits = |c: Point, cover: Cover| {
            let area = around(c, half);
            self.labels.is_free(area, c, cover) && self.inside(outline, area)
        };
        let first = |cover| spots.iter().copied().find(|c| fits(*c, cover));
        first(Cover::Nothing).or_else(|| first(Cover::Lines))
    }

    /// A place beside a shape, and where in the shape its leader ends.
    fn room_beside(&self, spots: &[Point], half: Vector) -> Option<(Point, Spot)> {
        // A leader that ends under a cut's ring points at nothing.
        let clear = |p: &&Point| self.labels.is_clear_point(**p);
        let seen: Vec<&Point> = spots.iter().filter(clear).collect();
        let anchors = if seen.is_empty() {
            spots.iter().collect()
        } else {
            seen
        };
        let near = anchors.iter().find_map(|a| {
            let spot = self
                .labels
                .spot(**a, half, Prefer::Beside, Cover::Nothing)?;
            Some((**a, spot))
        });
        let (anchor, spot) = near.or_else(|| {
            let anchor = **anchors.first()?;
            Some((anchor, self.labels.any_spot(anchor, half, Prefer::Beside)?))
        })?;
        let line = spot
            .leader
            .or_else(|| leader(anchor, around(spot.centre, half), 0.0));
        Some((
            anchor,
            Spot {
                leader: line,
                ..spot
            },
        ))
    }

    /// Places of paper inside an outline: the wanted one, then others spread over it, the nearest first.
    fn spots_in(&self, outline: &Outline, at: Point) -> Vec<Point> {
        let bounds = outline.bounds();
        let part = |i: i32| f64::from(i) / f64::from(NAME_PLACES);
        let spread = (1..NAME_PLACES).flat_map(|i| (1..NAME_PLACES).map(move |j| (i, j)));
        let others = spread.map(|(i, j)| {
            Point::new(
                bounds.min.x + bounds.width() * part(i),
                bounds.min.y + bounds.height() * part(j),
            )
        });
        let inside = |p: &Point| outline.side(*p) == Where::Inside && self.shows(*p);
        let mut found: Vec<Point> = std::iter::once(at).chain(others).filter(inside).collect();
        found.sort_by(|a, b| a.distance(at).total_cmp(&b.distance(at)));
        found.into_iter().map(|p| self.at(p)).collect()
    }

    /// Whether a box on paper lies inside a shape of the world.
    fn inside(&self, outline: &Outline, area: Bounds) -> bool {
        let points = corners(area);
        points
            .iter()
            .all(|c| outline.side(self.back(*c)) != Where::Outside)
    }

    /// A dimension on a side of the frame, in a row counted outwards from 0.
    pub(super) fn dimension(&mut self, from: Point, to: Point, side: Side, row: u8, figure: &str) {
        let side = if self.scale < 0.0 {
            opposite(side)
        } else {
            side
        };
        let off = ROW_MM[0] + f64::from(row) * ROW_MM[1];
        let (run, line_at) = match side {
            Side::Below => (DimensionRun::Level, self.frame.min.y - off),
            Side::Above => (DimensionRun::Level, self.frame.max.y + off - 3.0),
            Side::Left => (DimensionRun::Upright, self.frame.min.x - off + 3.0),
            Side::Right => (DimensionRun::Upright, self.frame.max.x + off),
        };
        let (from, to) = (self.at(from), self.at(to));
        // A figure too wide for its line stands on the side where the drawing goes on.
        let middle = from.midpoint(to);
        let before = match run {
            DimensionRun::Level => middle.x > self.frame.centre().x,
            DimensionRun::Upright => middle.y > self.frame.centre().y,
        };
        let dimension = |figure: &str, before, centred| Dimension {
            from,
            to,
            run,
            line_at,
            figure: figure.to_owned(),
            size_pt: 12.0,
            before,
            centred,
        };
        // Where only the figure has room between the arrows, its unit is told by the scale bar.
        let bare = figure.rsplit_once(char::is_whitespace).map(|(f, _)| f);
        let bare = bare.filter(|_| self.unit_told);
        let room = |f: &&str| dimension(f, before, false).has_room();
        let nearly = |f: &&str| dimension(f, before, true).nearly_has_room();
        let whole = Some(figure).filter(room).or(bare.filter(room));
        let wider = bare.filter(|f| whole.is_none() && nearly(f));
        let figure = whole.or(wider).unwrap_or(figure);
        let centred = wider.is_some();
        let dimension = |figure: &str, before| dimension(figure, before, centred).draw();
        let clear = |d: &DrawnDimension| {
            let area = d.figure;
            self.labels.is_free(area, area.centre(), Cover::Lines)
        };
        let drawn = [before, !before].map(|b| dimension(figure, b));
        if let Some(drawn) = drawn.into_iter().find(clear) {
            self.labels.occupy(drawn.line);
            self.over.extend(drawn.lines);
            self.letter(drawn.letters, drawn.figure);
        } else {
            let bare = dimension("", before);
            self.labels.occupy(bare.line);
            self.over.extend(bare.lines);
            let style = self.style(Lettering::Number);
            self.label_on_paper(bare.line.centre(), figure, &style, Prefer::Beside);
        }
    }
}

/// Paper that rows of dimensions take on a side, mm.
#[must_use]
pub(super) fn rows_mm(rows: u8) -> f64 {
    match rows {
        0 => 5.0,
        n => ROW_MM[0] + 2.5 + f64::from(n - 1) * ROW_MM[1],
    }
}

/// The side that a side comes to lie on when the drawing is turned half round.
#[must_use]
pub(super) const fn opposite(side: Side) -> Side {
    match side {
        Side::Below => Side::Above,
        Side::Above => Side::Below,
        Side::Left => Side::Right,
        Side::Right => Side::Left,
    }
}
