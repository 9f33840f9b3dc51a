//! Lines, boxes and texts as items: the strokes of the sheet, and short ways to make things.

use super::item::{Anchor, Dash, Ink, Item, Path, PenStroke, Text, TextTurn, Typeface};
use super::typeface;
use crate::geom::seg::{circle, ring};
use crate::geom::{Bounds, Point, Seg};

/// Outlines of what is kept, after ISO 128 the wide line, mm.
pub const WIDE_MM: f64 = 0.5;
/// Frames, table rules, mm.
pub const MIDDLE_MM: f64 = 0.3;
/// Dimensions, hatching, leaders, after ISO 128 half the wide line or less, mm.
pub const NARROW_MM: f64 = 0.18;

impl PenStroke {
    /// A continuous line of a width in mm.
    #[must_use]
    pub const fn solid(width_mm: f64, ink: Ink) -> Self {
        Self {
            width_mm,
            ink,
            dash: Dash::Continuous,
        }
    }

    /// The same line in another line type.
    #[must_use]
    pub const fn dashed(self, dash: Dash) -> Self {
        Self { dash, ..self }
    }
}

impl Path {
    /// One straight line.
    #[must_use]
    pub fn line(a: Point, b: Point, stroke: PenStroke) -> Self {
        Self {
            runs: vec![vec![Seg::Line(a, b)]],
            closed: false,
            stroke: Some(stroke),
            fill: None,
        }
    }

    /// Runs of pieces, each left open.
    #[must_use]
    pub fn open(runs: Vec<Vec<Seg>>, stroke: PenStroke) -> Self {
        Self {
            runs,
            closed: false,
            stroke: Some(stroke),
            fill: None,
        }
    }

    /// Closed runs of pieces, stroked, filled or both.
    #[must_use]
    pub fn closed(runs: Vec<Vec<Seg>>, stroke: Option<PenStroke>, fill: Option<Ink>) -> Self {
        Self {
            runs,
            closed: true,
            stroke,
            fill,
        }
    }

    /// An upright box.
    #[must_use]
    pub fn frame(area: Bounds, stroke: Option<PenStroke>, fill: Option<Ink>) -> Self {
        Self::closed(vec![ring(&corners(area))], stroke, fill)
    }

    /// A filled polygon without a line.
    #[must_use]
    pub fn filled(points: &[Point], ink: Ink) -> Self {
        Self::closed(vec![ring(points)], None, Some(ink))
    }

    /// A filled disc without a line.
    #[must_use]
    pub fn dot(centre: Point, radius_mm: f64, ink: Ink) -> Self {
        Self::closed(vec![circle(centre, radius_mm)], None, Some(ink))
    }
}

impl Text {
    /// A level line of black text that begins at `at`.
    #[must_use]
    pub fn new(content: impl Into<String>, at: Point, face: Typeface, size_pt: f64) -> Self {
        Self {
            at,
            size_pt,
            face,
            ink: Ink::Black,
            anchor: Anchor::Start,
            turn: TextTurn::Level,
            content: content.into(),
        }
    }

    /// The same text, with `at` its middle or its end.
    #[must_use]
    pub fn anchored(self, anchor: Anchor) -> Self {
        Self { anchor, ..self }
    }

    /// The same text in another colour.
    #[must_use]
    pub fn inked(self, ink: Ink) -> Self {
        Self { ink, ..self }
    }

    /// The same text reading upwards.
    #[must_use]
    pub fn upwards(self) -> Self {
        Self {
            turn: TextTurn::Upwards,
            ..self
        }
    }

    /// Measured width of the line, mm.
    #[must_use]
    pub fn width_mm(&self) -> f64 {
        typeface::width_mm(&self.content, self.face, self.size_pt)
    }

    /// Where its base line begins.
    #[must_use]
    pub fn start(&self) -> Point {
        let back = match self.anchor {
            Anchor::Start => 0.0,
            Anchor::Middle => self.width_mm() / 2.0,
            Anchor::End => self.width_mm(),
        };
        match self.turn {
            TextTurn::Level => Point::new(self.at.x - back, self.at.y),
            TextTurn::Upwards => Point::new(self.at.x, self.at.y - back),
        }
    }

    /// The box it covers: its measured width, from descent to capital height.
    #[must_use]
    pub fn bounds(&self) -> Bounds {
        let start = self.start();
        let up = typeface::cap_height_mm(self.face, self.size_pt);
        let down = typeface::descent_mm(self.face, self.size_pt);
        let (low, high) = match self.turn {
            TextTurn::Level => (
                Point::new(start.x, start.y - down),
                Point::new(start.x + self.width_mm(), start.y + up),
            ),
            TextTurn::Upwards => (
                Point::new(start.x - up, start.y),
                Point::new(start.x + down, start.y + self.width_mm()),
            ),
        };
        Bounds {
            min: low,
            max: high,
        }
    }
}

impl From<Path> for Item {
    fn from(path: Path) -> Self {
        Self::Path(path)
    }
}

impl From<Text> for Item {
    fn from(text: Text) -> Self {
        Self::Text(text)
    }
}

/// The corners of a box, counter-clockwise from the lower left.
#[must_use]
pub fn corners(area: Bounds) -> [Point; 4] {
    let (low, high) = (area.min, area.max);
    [
        low,
        Point::new(high.x, low.y),
        high,
        Point::new(low.x, high.y),
    ]
}

/// A box grown by a margin on every side, mm.
#[must_use]
pub fn grown(area: Bounds, by_mm: f64) -> Bounds {
    Bounds {
        min: Point::new(area.min.x - by_mm, area.min.y - by_mm),
        max: Point::new(area.max.x + by_mm, area.max.y + by_mm),
    }
}
