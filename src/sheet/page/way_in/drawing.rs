//! The tightest corner seen from above, the stone in it at its worst angle.

use crate::geom::{Bounds, Outline, Point, Vector, seg::ring};
use crate::handle::Piece;
use crate::handle::route::{Corner, How, Longest, Passage, Turning, Walk};
use crate::sheet::dimension::Run;
use crate::sheet::drawing::{Drawing, FIGURE};
use crate::sheet::figure::{Figures, angle};
use crate::sheet::item::{Ink, Item, Stroke};
use crate::sheet::labels::Prefer;
use crate::sheet::pen::MIDDLE_MM;

/// Thickness of the walls drawn, mm of the building.
const WALL_MM: f64 = 140.0;
/// The corridors are drawn at least so far beyond the stone's ends, mm of the building.
const BEYOND_MM: f64 = 250.0;
/// Paper left free all round for dimensions, mm.
const BORDER_MM: f64 = 13.0;
/// The stone's length is written beside it this share of it from its end, clear of the corner.
const LABEL_SHARE: f64 = 0.25;
/// From the drawing to a dimension line, mm of paper.
const OFF_MM: f64 = 6.5;

/// The corner of a walk in which the stone on edge has the least length to spare.
pub(super) fn tightest(walk: &Walk) -> Option<(&Passage, Corner)> {
    let corners = walk.passages.iter().filter_map(|p| Some((p, p.plank?)));
    corners
        .filter_map(|(p, corner)| Some((p, corner, corner.longest_mm()?)))
        .min_by(|a, b| a.2.total_cmp(&b.2))
        .map(|(p, corner, _)| (p, corner))
}

/// A stone on edge in a corner.
pub(super) struct Turn<'a> {
    pub(super) passage: &'a Passage,
    pub(super) corner: Corner,
    pub(super) stone: &'a Piece,
    pub(super) thickness_mm: f64,
}

impl Turn<'_> {
    /// What the drawing shows.
    pub(super) fn caption(&self, figures: Figures) -> String {
        let longest = match self.corner.turning() {
            Turning::UpTo(Longest { length_mm, how }) => {
                let at = match how {
                    How::Turned { tightest } => {
                        format!(
                            "tightest at {} to the way after the corner",
                            angle(tightest)
                        )
                    }
                    How::Sideways => "carried broadside, not turned".to_owned(),
                };
                let spare = length_mm - self.stone.length_mm;
                let verdict = if spare < 0.0 {
                    format!("it is {} too long", figures.size((-spare).ceil()))
                } else {
                    format!("{} to spare", figures.size(spare.floor()))
                };
                let longest = figures.size(length_mm.floor());
                format!("up to {longest} gets round, {at}: {verdict}")
            }
            Turning::TooThick(_) => "too thick for it".to_owned(),
        };
        format!(
            "{} from above, the tightest corner of the way. Solid: the top on edge, {} long. Dotted: with \
             hands or frame, {} thick; {longest}.",
            super::sentence(&self.passage.at.what),
            figures.size(self.stone.length_mm),
            figures.size(self.corner.thickness_mm),
        )
    }

    /// The drawing: the way comes up from below and goes off to the right.
    pub(super) fn draw(&self, figures: Figures, area: Bounds) -> Vec<Item> {
        let far = self.far();
        let subject = Bounds {
            min: Point::new(-WALL_MM, -far.y),
            max: Point::new(far.x, WALL_MM),
        };
        let mut drawing = Drawing::fit(subject, area, BORDER_MM);
        self.walls(&mut drawing, far);
        self.stone(&mut drawing);
        self.sizes(&mut drawing, far, figures);
        drawing.finish()
    }

    /// Widths of the two ways, length of the stone, and which way is which.
    fn sizes(&self, drawing: &mut Drawing, far: Point, figures: Figures) {
        let (from, to) = (self.corner.from_mm, self.corner.to_mm);
        let (foot, side) = (-far.y, far.x);
        let label = |mm| figures.size_label(mm);
        let before = [Point::new(0.0, foot), Point::new(from, foot)];
        let after = [Point::new(side, -to), Point::new(side, 0.0)];
        drawing.dimension(before[0], before[1], Run::Level, -OFF_MM, label(from));
        drawing.dimension(after[0], after[1], Run::Upright, OFF_MM, label(to));
        let middle = self.end(LABEL_SHARE) + self.across() * (self.corner.thickness_mm / 2.0);
        let length = label(self.stone.length_mm);
        drawing.label(middle, &length, &FIGURE, Prefer::Beside);
        drawing.word(Point::new(from / 2.0, 0.5 * (foot - to)), "before");
        drawing.word(Point::new(0.5 * (side + from), -to / 2.0), "after");
    }

    /// How far the corridors are drawn to the right and down.
    fn far(&self) -> Point {
        let (sin, cos) = self.corner.tightest().sin_cos();
        let length = self.stone.length_mm;
        let beyond = |end: f64, width: f64| end.max(width + BEYOND_MM) + BEYOND_MM;
        Point::new(
            beyond(length * cos, self.corner.from_mm),
            beyond(length * sin, self.corner.to_mm),
        )
    }

    /// A point of the plank's outer face, which touches both outer walls: 0 at the way before the
    /// corner, 1 at the way after it.
    fn end(&self, share: f64) -> Point {
        let (sin, cos) = self.corner.tightest().sin_cos();
        let length = self.stone.length_mm;
        Point::new(share * length * cos, (share - 1.0) * length * sin)
    }

    /// From the outer face towards the inner corner, length 1.
    fn across(&self) -> Vector {
        let (sin, cos) = self.corner.tightest().sin_cos();
        Vector::new(sin, -cos)
    }

    fn walls(&self, drawing: &mut Drawing, far: Point) {
        let (from, to) = (self.corner.from_mm, self.corner.to_mm);
        let outer = [
            (-WALL_MM, WALL_MM),
            (-WALL_MM, -far.y),
            (0.0, -far.y),
            (0.0, 0.0),
            (far.x, 0.0),
            (far.x, WALL_MM),
        ];
        let inner = [(from, -far.y), (far.x, -far.y), (far.x, -to), (from, -to)];
        drawing.waste(&[ring(&outer.map(|c| Point::new(c.0, c.1)))]);
        drawing.waste(&[ring(&inner.map(|c| Point::new(c.0, c.1)))]);
    }

    /// The stone with what carries it, and over both the faces of the inner corner: where the stone
    /// is too long they run through it.
    fn stone(&self, drawing: &mut Drawing) {
        let thick = self.corner.thickness_mm;
        let side = (thick - self.thickness_mm).max(0.0) / 2.0;
        let band = |from: f64, to: f64| {
            let (near, away) = (self.across() * from, self.across() * to);
            [
                self.end(0.0) + near,
                self.end(0.0) + away,
                self.end(1.0) + away,
                self.end(1.0) + near,
            ]
        };
        if let Ok(stone) = Outline::polygon(&band(side, thick - side)) {
            drawing.kept(&stone, &[]);
        }
        drawing.gone(&[ring(&band(0.0, thick))]);
        let corner = Point::new(self.corner.from_mm, -self.corner.to_mm);
        let face = Stroke::solid(MIDDLE_MM, Ink::Black);
        let reach = BEYOND_MM * 2.0;
        for way in [Vector::new(0.0, -reach), Vector::new(reach, 0.0)] {
            drawing.line_apart(corner, corner + way, face);
        }
    }
}
