//! A small diagram of the bending moments along a stone that lies on its best two bearers.

use super::both::Both;
use crate::geom::{Bounds, Point};
use crate::handle::Piece;
use crate::handle::judged::BendVerdict;
use crate::sheet::drawing::FIGURE;
use crate::sheet::item::{Anchor, Face, Ink, Item, Path, Stroke};
use crate::sheet::pen::{MIDDLE_MM, NARROW_MM, WIDE_MM};
use crate::sheet::wrap::Style;

/// What the diagrams show.
pub(super) const NOTE: &str = "Thick line: the stone, seen from the side, on the two bearers that stress it \
     least (triangles; distances from its left or lower end). Shaded: bending moment, drawn on the side \
     that is stretched. Dot: the most stressed cross-section.";

/// Width of the words beside a diagram, mm.
const WORDS_MM: f64 = 64.0;
/// Below the diagram for the distances, mm.
const FOOT_MM: f64 = 7.0;
/// Half the height of the diagram's moments, mm.
const HALF_MM: f64 = 7.0;
/// Half width and height of a bearer, mm.
const BEARER_MM: f64 = 2.2;
/// Between two distances, mm.
const APART_MM: f64 = 2.0;

const TITLE: Style = Style::new(Face::Bold, 11.0, 5.0);
const WORDS: Style = Style::new(Face::Regular, 9.5, 4.4);
const DISTANCE: Style = Style::new(Face::Bold, 12.0, 5.4);

/// The diagram with its words in a box of paper.
#[must_use]
pub(super) fn drawn(piece: &Piece, area: Bounds, both: Both) -> Vec<Item> {
    let mut items = words(piece, area, both);
    let frame = Frame::new(piece, area);
    items.extend(frame.curve());
    items.extend(frame.stone());
    items.extend(frame.distances(both));
    items
}

fn words(piece: &Piece, area: Bounds, both: Both) -> Vec<Item> {
    let worst = &piece.strength.best.worst;
    let verdict = match piece.strength.best.verdict {
        BendVerdict::NotAbove { utilisation } => {
            format!("{:.0} % of what is allowed", utilisation * 100.0)
        }
        BendVerdict::Above { utilisation } => format!("{:.0} %: DO NOT", utilisation * 100.0),
    };
    let lines = [
        both.mass(piece.mass.high),
        format!("{:.2} MPa, {verdict}", worst.stress_mpa),
        format!(
            "{:.0} N·m at {}",
            worst.moment_nm.abs(),
            both.size(worst.at_mm)
        ),
        format!("where it is {} wide", both.size(worst.width_mm)),
    ];
    let mut y = area.max.y - TITLE.leading_mm;
    let mut items: Vec<Item> = vec![
        TITLE
            .text(piece.name.clone(), Point::new(area.min.x, y), Anchor::Start)
            .into(),
    ];
    for line in lines {
        y -= WORDS.leading_mm;
        let at = Point::new(area.min.x, y);
        items.push(WORDS.text(line, at, Anchor::Start).into());
    }
    items
}

/// The stone's length and moments at the diagram's scale.
struct Frame<'a> {
    piece: &'a Piece,
    left: f64,
    right: f64,
    base: f64,
    across: f64,
    up: f64,
}

impl<'a> Frame<'a> {
    fn new(piece: &'a Piece, area: Bounds) -> Self {
        let points = &piece.strength.diagram.points;
        let greatest = points.iter().map(|p| p[1].abs()).fold(0.0, f64::max);
        let left = area.min.x + WORDS_MM;
        let right = area.max.x - 2.0;
        Self {
            piece,
            left,
            right,
            base: area.min.y + FOOT_MM + HALF_MM + 2.0,
            across: (right - left) / piece.length_mm.max(1.0),
            up: HALF_MM / greatest.max(f64::MIN_POSITIVE),
        }
    }

    /// The place of a moment: what stretches the underside is drawn below.
    fn at(&self, u: f64, moment: f64) -> Point {
        Point::new(self.left + u * self.across, self.base - moment * self.up)
    }

    fn curve(&self) -> Vec<Item> {
        let points = &self.piece.strength.diagram.points;
        let run: Vec<Point> = points.iter().map(|p| self.at(p[0], p[1])).collect();
        let mut filled = vec![self.at(0.0, 0.0)];
        filled.extend(&run);
        filled.push(self.at(self.piece.length_mm, 0.0));
        let segs = run.windows(2).map(|w| crate::geom::Seg::Line(w[0], w[1]));
        let line = Stroke::solid(NARROW_MM, Ink::Black);
        vec![
            Path::filled(&filled, Ink::Pale).into(),
            Path::open(vec![segs.collect()], line).into(),
        ]
    }

    fn stone(&self) -> Vec<Item> {
        let worst = &self.piece.strength.best.worst;
        let ends = [self.at(0.0, 0.0), self.at(self.piece.length_mm, 0.0)];
        let mut items: Vec<Item> =
            vec![Path::line(ends[0], ends[1], Stroke::solid(2.0 * WIDE_MM, Ink::Black)).into()];
        for u in &worst.supports_mm {
            let tip = self.at(*u, 0.0);
            let foot = |side: f64| Point::new(tip.x + side * BEARER_MM, tip.y - BEARER_MM * 1.6);
            let corners = [tip, foot(-1.0), foot(1.0)];
            let ring = crate::geom::seg::ring(&corners);
            let edge = Some(Stroke::solid(MIDDLE_MM, Ink::Black));
            items.push(Path::closed(vec![ring], edge, Some(Ink::White)).into());
        }
        items.push(Path::dot(self.at(worst.at_mm, worst.moment_nm), 1.0, Ink::Black).into());
        items
    }

    /// The bearers' distances below the diagram, kept apart and on the paper.
    fn distances(&self, both: Both) -> Vec<Item> {
        let supports = &self.piece.strength.best.worst.supports_mm;
        let y = self.base - HALF_MM - DISTANCE.leading_mm;
        let mut free = self.left;
        let mut items: Vec<Item> = Vec::new();
        for u in supports {
            let text = both.tape(*u);
            let width = DISTANCE.width_mm(&text);
            let wanted = self.at(*u, 0.0).x - width / 2.0;
            let x = wanted.min(self.right - width).max(free);
            free = x + width + APART_MM;
            items.push(DISTANCE.text(text, Point::new(x, y), Anchor::Start).into());
        }
        if items.is_empty() {
            let at = Point::new(self.left, y);
            items.push(FIGURE.text("not on two bearers", at, Anchor::Start).into());
        }
        items
    }
}
