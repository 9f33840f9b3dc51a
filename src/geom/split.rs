//! Cutting an outline in two along a straight chord.

use super::SAME_MM;
use super::outline::{Outline, Side};
use super::point::{Line, Point};
use super::seg::Seg;

/// The stretch of a line that runs through stone, and what lies on its two sides.
#[derive(Clone, Debug)]
pub struct Chord {
    /// Where the line enters the stone.
    pub start: Point,
    /// Where it leaves it again.
    pub end: Point,
    /// The stone to the left of the line.
    pub left: Outline,
    /// The stone to the right of the line.
    pub right: Outline,
}

impl Chord {
    /// Length through the stone, mm.
    #[must_use]
    pub fn length(&self) -> f64 {
        self.start.distance(self.end)
    }
}

impl Outline {
    /// Cuts the outline along the stretch of `line` that passes through or nearest to `near`,
    /// from the edge of the stone to the edge of the stone. Nothing when the line does not run
    /// through the inside. Exact.
    #[must_use]
    pub fn chord(&self, line: &Line, near: Point) -> Option<Chord> {
        let (from, to) = self.stretch(line, near)?;
        let (start, end) = (line.at(from), line.at(to));
        let leaves = self.share_of(end)?;
        let enters = self.share_of(start)?;
        // Left of the line: along it to its end, then counter-clockwise home to its start.
        let close = |mut way: Vec<Seg>, a: Point, b: Point| {
            way.push(Seg::Line(a, b));
            Outline::trusted(way)
        };
        Some(Chord {
            start,
            end,
            left: close(self.way(leaves, end, enters, start), start, end),
            right: close(self.way(enters, start, leaves, end), end, start),
        })
    }

    /// The part of a line inside the outline, nearest to a point, as distances along the line.
    #[must_use]
    pub fn stretch(&self, line: &Line, near: Point) -> Option<(f64, f64)> {
        let at = line.foot(near);
        let away = |s: &(f64, f64)| (s.0 - at).max(at - s.1).max(0.0);
        self.stretches(line)
            .into_iter()
            .min_by(|a, b| away(a).total_cmp(&away(b)))
    }

    /// The parts of a line inside the outline, in their order, as distances along the line.
    #[must_use]
    pub fn stretches(&self, line: &Line) -> Vec<(f64, f64)> {
        let mut marks: Vec<f64> = self
            .segs()
            .iter()
            .flat_map(|s| s.line_crossings(line))
            .collect();
        marks.sort_by(f64::total_cmp);
        marks.dedup_by(|a, b| (*a - *b).abs() <= SAME_MM);
        let inside = |w: &[f64]| self.side(line.at(f64::midpoint(w[0], w[1]))) == Side::Inside;
        let mut stretches: Vec<(f64, f64)> = Vec::new();
        for w in marks.windows(2).filter(|w| inside(w)) {
            match stretches.last_mut() {
                Some(last) if last.1 == w[0] => last.1 = w[1],
                _ => stretches.push((w[0], w[1])),
            }
        }
        stretches
    }

    /// The piece a boundary point lies on and the share of the way along it.
    #[must_use]
    pub(crate) fn share_of(&self, point: Point) -> Option<(usize, f64)> {
        let (piece, seg) = self
            .segs()
            .iter()
            .enumerate()
            .min_by(|a, b| a.1.distance(point).total_cmp(&b.1.distance(point)))?;
        Some((piece, seg.nearest(point)))
    }

    /// The boundary pieces counter-clockwise from one boundary point to another.
    #[must_use]
    pub(crate) fn way(
        &self,
        from: (usize, f64),
        start: Point,
        to: (usize, f64),
        end: Point,
    ) -> Vec<Seg> {
        let n = self.segs().len();
        let count = if from.0 == to.0 && from.1 <= to.1 {
            1
        } else {
            (to.0 + n - from.0 - 1) % n + 2
        };
        let mut way: Vec<Seg> = (0..count)
            .map(|k| {
                let first = if k == 0 { from.1 } else { 0.0 };
                let last = if k + 1 == count { to.1 } else { 1.0 };
                self.segs()[(from.0 + k) % n].part(first, last)
            })
            .filter(|s| s.length() > SAME_MM)
            .collect();
        // The exact crossing points, not the pieces' own rounding of them.
        if let Some(Seg::Line(a, _)) = way.first_mut() {
            *a = start;
        }
        if let Some(Seg::Line(_, b)) = way.last_mut() {
            *b = end;
        }
        way
    }
}
