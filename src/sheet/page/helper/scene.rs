//! Where the sawyer and the helper stand, and where nobody does, seen from above.

use super::Say;
use super::entry::View;
use crate::cut::Cut;
use crate::geom::{Bounds, Line, Outline, Point, Region, Vector, boolean, seg};
use crate::sheet::drawing::Drawing;
use crate::sheet::item::{Dash, Face, Ink, Item, Path, Stroke};
use crate::sheet::labels::Prefer;
use crate::sheet::pen::{MIDDLE_MM, WIDE_MM, corners, grown};
use crate::sheet::scene;
use crate::sheet::wrap::Style;

/// Half the width of the band along the disc in which nobody stands, mm (judgement: half the width
/// of a person on either side of the disc, and as much again as the disc may be turned by hand).
const BAND_MM: f64 = 350.0;
/// From the stone to a person, mm: a step.
const STEP_MM: f64 = 300.0;
/// Floor shown round the slab, mm.
const FLOOR_MM: f64 = 800.0;
/// Height of the drawing on paper, mm.
const HEIGHT_MM: f64 = 78.0;
/// Names in the drawing.
const NAME: Style = Style::new(Face::Bold, 14.0, 6.4);
/// Radius of the mark of a person, mm on paper.
const PERSON_MM: f64 = 1.3;

/// The first cut with the slab, the waste it frees, the band and the people.
pub(super) fn places(say: &Say<'_>, cut: &Cut) -> View {
    let plan = say.plan;
    let number = [("cut", cut.number.to_string())];
    let stage = Stage {
        slab: plan.slab.outline.clone(),
        waste: plan
            .pieces
            .iter()
            .filter(|p| p.after_cut == cut.number)
            .cloned()
            .collect(),
        cut: cut.clone(),
        names: ["sawyer", "helper", "nobody"].map(|n| say.line(&format!("place.{n}"), &[])),
    };
    View {
        height_mm: HEIGHT_MM,
        draw: Box::new(move |area| stage.draw(area)),
        note: say.line("place.drawing", &number),
    }
}

/// What is shown.
struct Stage {
    slab: Outline,
    waste: Vec<crate::piece::Piece>,
    cut: Cut,
    names: [String; 3],
}

impl Stage {
    fn draw(&self, area: Bounds) -> Vec<Item> {
        let floor = grown(self.slab.bounds(), FLOOR_MM);
        let mut drawing = Drawing::fit(floor, area, 0.0);
        let mut items = self.band(&drawing, area);
        drawing.kept(&self.slab, &[]);
        for piece in &self.waste {
            drawing.waste(&piece.outline);
        }
        scene::kerf(&mut drawing, &self.cut);
        let people = self.people(&mut drawing);
        for piece in &self.waste {
            drawing.label(piece.balance, &piece.name, &NAME, Prefer::Centred);
        }
        for at in self.named() {
            drawing.label(at, &self.names[2], &NAME, Prefer::Centred);
        }
        items.append(&mut drawing.finish());
        items.extend(people);
        items
    }

    /// Direction of the disc, and the middle of the cut.
    fn axis(&self) -> (Vector, Point) {
        let heading = self.cut.strokes.first().map_or(0.0, |s| s.heading);
        (Vector::at_angle(heading), scene::middle(&self.cut))
    }

    /// The band, as far as the floor goes.
    fn band(&self, drawing: &Drawing, area: Bounds) -> Vec<Item> {
        let (along, middle) = self.axis();
        let far = along * (self.slab.bounds().width() + self.slab.bounds().height() + FLOOR_MM);
        let side = along.left() * BAND_MM;
        let ring = [
            middle - far - side,
            middle + far - side,
            middle + far + side,
            middle - far + side,
        ];
        let on_paper = ring.map(|p| drawing.at(p));
        let outlines = (
            Outline::polygon(&on_paper),
            Outline::polygon(&corners(area)),
        );
        let (Ok(band), Ok(sheet)) = outlines else {
            return Vec::new();
        };
        let edge = Stroke::solid(MIDDLE_MM, Ink::Accent).dashed(Dash::Dashed);
        let parts = boolean::intersection(&[Region::solid(band)], &[sheet]);
        let shapes = parts.iter().map(|part| {
            let run = vec![part.outer.segs().to_vec()];
            Path::closed(run, Some(edge), Some(Ink::Pale)).into()
        });
        shapes.collect()
    }

    /// Where the band is named: beyond both ends of the slab.
    fn named(&self) -> Vec<Point> {
        let (along, middle) = self.axis();
        let ends = self.ends(Line::through(middle, middle + along));
        ends.map_or_else(Vec::new, |(from, to)| {
            let out = along * (FLOOR_MM / 2.0);
            vec![from - out, to + out]
        })
    }

    /// Where a line enters and leaves the slab, nearest to its beginning and farthest from it.
    fn ends(&self, line: Line) -> Option<(Point, Point)> {
        let crossings = self
            .slab
            .segs()
            .iter()
            .flat_map(|s| s.line_crossings(&line));
        let (least, most) = crossings.fold((f64::INFINITY, f64::NEG_INFINITY), |(a, b), t| {
            (a.min(t), b.max(t))
        });
        (least <= most).then(|| (line.at(least), line.at(most)))
    }

    /// The sawyer beside the cut, where the reach over the stone is shorter; the helper across the
    /// stone and away from the cut's middle, in sight.
    fn people(&self, drawing: &mut Drawing) -> Vec<Item> {
        let (along, middle) = self.axis();
        let across = along.left();
        let Some((right, left)) = self.ends(Line::through(middle, middle + across)) else {
            return Vec::new();
        };
        let (near, far, away) = if middle.distance(left) <= middle.distance(right) {
            (left, right, across)
        } else {
            (right, left, across * -1.0)
        };
        let beside = |edge: Point, way: Vector| {
            let off = (middle.distance(edge) + STEP_MM).max(BAND_MM + STEP_MM);
            middle + way * off
        };
        let sawyer = beside(near, away);
        let aside = along * (self.slab.bounds().width().max(self.slab.bounds().height()) / 4.0);
        let helper = beside(far, away * -1.0) + aside;
        let edge = Stroke::solid(WIDE_MM, Ink::Black);
        let people = [
            (sawyer, &self.names[0], Ink::Black),
            (helper, &self.names[1], Ink::White),
        ];
        let marks = people.map(|(at, name, fill)| {
            drawing.dot(at);
            drawing.label(at, name, &NAME, Prefer::Beside);
            let ring = seg::circle(drawing.at(at), PERSON_MM);
            Path::closed(vec![ring], Some(edge), Some(fill)).into()
        });
        marks.to_vec()
    }
}
