//! Dimensions after ISO 129-1: extension lines, a dimension line with filled slim arrowheads, the
//! figure above the line. Level or upright only.

use super::item::{Anchor, Ink, Item, Path, PenStroke, Text, Typeface};
use super::pen::{NARROW_MM, grown};
use super::typeface::descent_mm;
use crate::geom::{Bounds, Point, Vector};

/// Length of an arrowhead, mm, and half its width: an angle of 15° between its sides.
const ARROW_MM: f64 = 3.0;
const ARROW_HALF_MM: f64 = 0.4;
/// From the object to the extension line, mm.
const OFF_OBJECT_MM: f64 = 1.0;
/// From the dimension line to the extension line's end, mm.
const BEYOND_MM: f64 = 1.4;
/// From the dimension line to the lowest a figure's letters reach, mm.
const ABOVE_LINE_MM: f64 = 0.3;
/// White left around the figure, mm: its own line shows below it.
const WHITE_MM: f64 = 0.2;
/// Least of the line on both sides of a figure above it, mm.
const CLEAR_MM: f64 = 0.4;
/// How far the dimension line goes on outside when its arrows point inwards, mm.
const TAIL_MM: f64 = 5.0;
/// From the second end to a figure that stands outside, mm: past the arrowhead.
const OUTSIDE_MM: f64 = ARROW_MM + 1.0;

/// A figure up to so many times as wide as its line may stand over the middle of it (judgement).
const LITTLE_WIDER: f64 = 1.6;

const LINE: PenStroke = PenStroke::solid(NARROW_MM, Ink::Black);

/// Which way a dimension runs.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum DimensionRun {
    /// Along x: the dimension line is level, the figure reads from left to right.
    Level,
    /// Along y: the dimension line is upright, the figure reads upwards.
    Upright,
}

/// One dimension to draw, at paper size.
#[derive(Clone, Debug, PartialEq)]
pub struct Dimension {
    /// One of the measured points, mm.
    pub from: Point,
    /// The other.
    pub to: Point,
    /// Which of their distances is shown.
    pub run: DimensionRun,
    /// Where the dimension line lies: its y when level, its x when upright, mm.
    pub line_at: f64,
    /// The figure with its unit.
    pub figure: String,
    /// Size of the figure, points.
    pub size_pt: f64,
    /// Where a figure too wide for the line stands: beyond its left or lower end, else beyond the other.
    pub before: bool,
    /// True where it stands in the middle in spite of being a little wider than the line.
    pub centred: bool,
}

/// A drawn dimension, and the boxes that labels must keep clear of.
#[derive(Clone, Debug)]
pub struct DrawnDimension {
    /// Its lines and arrowheads.
    pub lines: Vec<Item>,
    /// Its figure on white, drawn after every line.
    pub letters: Vec<Item>,
    /// The figure's box.
    pub figure: Bounds,
    /// The box around the dimension line with its arrows.
    pub line: Bounds,
}

impl Dimension {
    /// Whether the figure has room above the line, between the arrows.
    #[must_use]
    pub fn has_room(&self) -> bool {
        let (a, b) = self.ends();
        let text = Text::new(&self.figure, a, Typeface::Bold, self.size_pt);
        has_room(&text, a.distance(b))
    }

    /// Whether the figure is so little wider than the line that it can only be read as that line's.
    #[must_use]
    pub fn nearly_has_room(&self) -> bool {
        let (a, b) = self.ends();
        let text = Text::new(&self.figure, a, Typeface::Bold, self.size_pt);
        text.width_mm() <= a.distance(b) * LITTLE_WIDER
    }

    /// The dimension as items; the figure is drawn over white.
    #[must_use]
    pub fn draw(&self) -> DrawnDimension {
        let (a, b) = self.ends();
        let along = self.along();
        let span = (b - a).dot(along);
        let text = self.text(a, b, span);
        let arrows_inside = span >= 2.0 * ARROW_MM + 1.0;
        let (mut tail, mut reach) = if arrows_inside {
            (0.0, span)
        } else {
            (TAIL_MM, span + TAIL_MM)
        };
        // The line runs on below a figure that stands outside.
        let beyond = OUTSIDE_MM + text.width_mm();
        match text.anchor {
            Anchor::Start => reach = reach.max(span + beyond),
            Anchor::End => tail = f64::max(tail, beyond),
            Anchor::Middle => {}
        }
        let (low, high) = (a - along * tail, a + along * reach);
        let outwards = if arrows_inside { 1.0 } else { -1.0 };
        let figure = text.bounds();
        let mut lines = self.extensions();
        lines.push(Path::line(low, high, LINE).into());
        lines.push(arrow(a, along * -outwards));
        lines.push(arrow(b, along * outwards));
        let white = Path::frame(grown(figure, WHITE_MM), None, Some(Ink::White));
        DrawnDimension {
            lines,
            letters: vec![white.into(), text.into()],
            figure,
            line: grown(Bounds::around([low, high]), ARROW_HALF_MM),
        }
    }

    fn along(&self) -> Vector {
        match self.run {
            DimensionRun::Level => Vector::new(1.0, 0.0),
            DimensionRun::Upright => Vector::new(0.0, 1.0),
        }
    }

    /// The measured points brought onto the dimension line.
    fn feet(&self) -> (Point, Point) {
        let foot = |p: Point| match self.run {
            DimensionRun::Level => Point::new(p.x, self.line_at),
            DimensionRun::Upright => Point::new(self.line_at, p.y),
        };
        (foot(self.from), foot(self.to))
    }

    /// The feet, the left or lower one first.
    fn ends(&self) -> (Point, Point) {
        let (from, to) = self.feet();
        if (to - from).dot(self.along()) < 0.0 {
            (to, from)
        } else {
            (from, to)
        }
    }

    fn extensions(&self) -> Vec<Item> {
        let (a, b) = self.feet();
        [(self.from, a), (self.to, b)]
            .into_iter()
            .filter(|(p, foot)| p.distance(*foot) > OFF_OBJECT_MM)
            .map(|(p, foot)| {
                let out = (foot - p).unit();
                Path::line(p + out * OFF_OBJECT_MM, foot + out * BEYOND_MM, LINE).into()
            })
            .collect()
    }

    /// The figure: in the middle above the line, or beyond the second arrow when it is too wide.
    fn text(&self, a: Point, b: Point, span: f64) -> Text {
        let hanging = descent_mm(Typeface::Bold, self.size_pt);
        let above = self.along().left() * (ABOVE_LINE_MM + hanging);
        let text = Text::new(&self.figure, a, Typeface::Bold, self.size_pt);
        let text = match self.run {
            DimensionRun::Level => text,
            DimensionRun::Upright => text.upwards(),
        };
        if self.centred || has_room(&text, span) {
            Text {
                at: a.midpoint(b) + above,
                anchor: Anchor::Middle,
                ..text
            }
        } else if self.before {
            Text {
                at: a - self.along() * OUTSIDE_MM + above,
                anchor: Anchor::End,
                ..text
            }
        } else {
            Text {
                at: b + self.along() * OUTSIDE_MM + above,
                ..text
            }
        }
    }
}

fn has_room(text: &Text, span: f64) -> bool {
    text.width_mm() + 2.0 * CLEAR_MM <= span
}

/// A filled arrowhead with its tip at a point; `pointing` has length 1.
fn arrow(tip: Point, pointing: Vector) -> Item {
    let back = tip - pointing * ARROW_MM;
    let side = pointing.left() * ARROW_HALF_MM;
    Path::filled(&[tip, back + side, back - side], Ink::Black).into()
}
