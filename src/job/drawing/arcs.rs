//! Arcs found again: in runs of short chords, and in curves.

use super::bit::Bit;
use crate::geom::{Arc, Point, Seg, Vector};

/// An arc that is found again passes so near to every point of what is drawn, mm.
pub(in crate::job) const WITHIN_MM: f64 = 0.05;
/// A run of chords stands for an arc from so many on, when it turns at each by no more than this, and when
/// the arc rises no more than this over any of them (judgement: a drawing program's chords are finer,
/// a corner that is meant turns more).
const LEAST_CHORDS: usize = 4;
const MOST_TURN: f64 = 0.27;
const MOST_RISE_MM: f64 = 1.0;
/// Handles of a curve that is meant as an arc are so near to an arc's own, as a share.
const HANDLE_SHARE: f64 = 0.005;

/// A run of lines and arcs, and how far it lies from what was drawn.
#[derive(Clone, Debug, Default)]
pub(super) struct Found {
    /// Lines and arcs end to end, closed.
    pub(super) segs: Vec<Seg>,
    /// The arcs that were not drawn as arcs.
    pub(super) arcs: usize,
    /// The farthest that one of them lies from what was drawn, mm.
    pub(super) off_mm: f64,
}

/// A closed run as lines and arcs.
pub(super) fn found(bits: &[Bit]) -> Found {
    let mut found = Found::default();
    let mut chords: Vec<Point> = Vec::new();
    for bit in from_corner(bits) {
        match bit {
            Bit::Seg(Seg::Line(a, b)) => {
                if chords.is_empty() {
                    chords.push(a);
                }
                chords.push(b);
            }
            Bit::Seg(arc) => {
                found.chords(&std::mem::take(&mut chords));
                found.segs.push(arc);
            }
            Bit::Cubic(knots) => {
                found.chords(&std::mem::take(&mut chords));
                found.curve(knots);
            }
        }
    }
    found.chords(&chords);
    found.join();
    found
}

/// The same run from its sharpest corner on, or from the longest line of a run without corners, so that no
/// arc is cut by its beginning.
fn from_corner(bits: &[Bit]) -> Vec<Bit> {
    let before = bits.iter().cycle().skip(bits.len().saturating_sub(1));
    let turn = |(before, after): (&Bit, &Bit)| {
        let (a, b) = (before.headings()[1], after.headings()[0]);
        a.cross(b).atan2(a.dot(b)).abs()
    };
    let turns: Vec<f64> = before.zip(bits).map(turn).collect();
    let lengths = bits.iter().map(|bit| match bit {
        Bit::Seg(line @ Seg::Line(..)) => line.length(),
        _ => 0.0,
    });
    let first = if turns.iter().any(|t| *t > MOST_TURN) {
        largest(turns.iter().copied())
    } else {
        largest(lengths)
    };
    let mut run = bits.to_vec();
    run.rotate_left(first);
    run
}

/// Where the largest of some numbers stands.
fn largest(numbers: impl Iterator<Item = f64>) -> usize {
    let all = numbers.enumerate();
    all.max_by(|a, b| a.1.total_cmp(&b.1)).map_or(0, |n| n.0)
}

impl Found {
    /// Takes over a run of straight pieces, as arcs where they stand for some.
    fn chords(&mut self, points: &[Point]) {
        let mut from = 0;
        while from + 1 < points.len() {
            if let Some((arc, count)) = longest_arc(&points[from..]) {
                self.add(arc, &points[from..=from + count]);
                from += count;
            } else {
                self.segs.push(Seg::Line(points[from], points[from + 1]));
                from += 1;
            }
        }
    }

    /// Takes over a curve: as the arc it is meant as, or as the longest lines and arcs along it.
    fn curve(&mut self, knots: [Point; 4]) {
        let points = Bit::chords(knots);
        if let Some(arc) = meant_as_arc(knots) {
            self.add(Seg::Arc(arc), &points);
            return;
        }
        let mut from = 0;
        while from + 1 < points.len() {
            let (seg, count) = longest_along(&points[from..]);
            self.add(seg, &points[from..=from + count]);
            from += count;
        }
    }

    /// Takes over a piece that stands for points in a row.
    fn add(&mut self, seg: Seg, points: &[Point]) {
        let middles = points.windows(2).map(|w| w[0].midpoint(w[1]));
        let off = points
            .iter()
            .copied()
            .chain(middles)
            .map(|p| seg.distance(p));
        self.off_mm = off.fold(self.off_mm, f64::max);
        self.arcs += usize::from(matches!(seg, Seg::Arc(_)));
        self.segs.push(seg);
    }

    /// Makes one of neighbours on one line or one circle.
    fn join(&mut self) {
        let mut segs: Vec<Seg> = Vec::new();
        for seg in std::mem::take(&mut self.segs) {
            match segs.last().and_then(|last| joined(last, &seg)) {
                Some(one) => {
                    segs.pop();
                    segs.push(one);
                }
                None => segs.push(seg),
            }
        }
        if segs.len() > 2
            && let Some(one) = joined(&segs[segs.len() - 1], &segs[0])
        {
            segs.pop();
            segs[0] = one;
        }
        self.segs = segs;
    }
}

/// Two neighbours as one, when they lie on one line, or on one circle and run through less than a
/// whole one.
fn joined(a: &Seg, b: &Seg) -> Option<Seg> {
    match (a, b) {
        (Seg::Line(from, middle), Seg::Line(_, to)) => {
            let (u, v) = ((*middle - *from).unit(), (*to - *middle).unit());
            (u.cross(v).abs() < 1e-9 && u.dot(v) > 0.0).then_some(Seg::Line(*from, *to))
        }
        (Seg::Arc(p), Seg::Arc(q)) => {
            let near = p.centre.distance(q.centre) + (p.radius - q.radius).abs();
            let sweep = p.sweep + q.sweep;
            let one = near < WITHIN_MM && p.sweep * q.sweep > 0.0 && sweep.abs() < 6.0;
            one.then(|| {
                let middle = q.at_angle(q.start);
                through(a.start(), middle, b.end()).map(Seg::Arc)
            })?
        }
        _ => None,
    }
}

/// The arc from a point through another to a third; nothing when they lie on one line.
fn through(a: Point, b: Point, c: Point) -> Option<Arc> {
    let (u, v) = (b - a, c - a);
    let across = 2.0 * u.cross(v);
    if across.abs() <= 1e-12 * u.length() * v.length() {
        return None;
    }
    let towards = v.left() * -u.dot(u) + u.left() * v.dot(v);
    let centre = a + towards * (1.0 / across);
    centre
        .is_finite()
        .then(|| Arc::between(centre, a, c, across))
}

/// The longest arc that the first chords stand for, and how many they are.
fn longest_arc(points: &[Point]) -> Option<(Seg, usize)> {
    let mut best = None;
    let mut sign = 0.0;
    for count in 2..points.len() {
        let (before, after) = (
            points[count - 1] - points[count - 2],
            points[count] - points[count - 1],
        );
        let turn = before.cross(after).atan2(before.dot(after));
        if turn.abs() > MOST_TURN || turn * sign < 0.0 || turn.abs() < 1e-6 {
            break;
        }
        sign = turn;
        if count < LEAST_CHORDS {
            continue;
        }
        let Some(arc) = over(&points[..=count]).filter(|arc| rises_little(arc, &points[..=count]))
        else {
            break;
        };
        best = Some((Seg::Arc(arc), count));
    }
    best
}

fn rises_little(arc: &Arc, points: &[Point]) -> bool {
    points.windows(2).all(|w| {
        let middle = w[0].midpoint(w[1]);
        arc.radius - arc.centre.distance(middle) <= MOST_RISE_MM
    })
}

/// The arc over points in a row that passes within [`WITHIN_MM`] of each, in their order.
fn over(points: &[Point]) -> Option<Arc> {
    let (first, last) = (*points.first()?, *points.last()?);
    let arc = through(first, points[points.len() / 2], last)?;
    let mut share = 0.0;
    let along = points.iter().all(|p| {
        let out = *p - arc.centre;
        let near = (out.length() - arc.radius).abs() <= WITHIN_MM;
        let at = arc.share_at(out.angle(), 1e-6).unwrap_or(-1.0);
        let forward = at >= share - 1e-9;
        share = at;
        near && forward
    });
    along.then_some(arc)
}

/// The longest line or arc along the first points of a curve, and how many steps of it.
fn longest_along(points: &[Point]) -> (Seg, usize) {
    let line = Seg::Line(points[0], points[1]);
    let (mut best, mut steps) = ((line, 1), 2);
    while steps < points.len() {
        let part = &points[..=steps];
        let Some(seg) = straight(part).or_else(|| over(part).map(Seg::Arc)) else {
            break;
        };
        best = (seg, steps);
        steps += 1;
    }
    best
}

fn straight(points: &[Point]) -> Option<Seg> {
    /// Nearer to a line than this is straight, mm: a hundredth of what a tape can tell.
    const STRAIGHT_MM: f64 = 0.002;
    let line = Seg::Line(points[0], points[points.len() - 1]);
    let near = points.iter().all(|p| line.distance(*p) <= STRAIGHT_MM);
    near.then_some(line)
}

/// The arc that a curve is the usual likeness of: its handles touch one circle at both ends and are as
/// long as such a likeness has them, 4/3·tan(Δ/4)·r.
fn meant_as_arc([a, b, c, d]: [Point; 4]) -> Option<Arc> {
    let (out, back, chord) = (b - a, d - c, d - a);
    let turn = out.cross(back).atan2(out.dot(back));
    let half = out.cross(chord).atan2(out.dot(chord));
    let even = (out.length() / back.length() - 1.0).abs() < HANDLE_SHARE;
    if !even || turn.abs() < 1e-3 || (half - turn / 2.0).abs() > 1e-3 {
        return None;
    }
    let radius = chord.length() / (2.0 * (turn / 2.0).sin().abs());
    let handle = 4.0 / 3.0 * (turn / 4.0).tan().abs() * radius;
    if (out.length() / handle - 1.0).abs() > HANDLE_SHARE {
        return None;
    }
    // The centre is halfway, as far to the side as the chord asks for.
    let aside = (radius * radius - chord.dot(chord) / 4.0).max(0.0).sqrt();
    let side: Vector =
        chord.unit().left() * (aside * turn.signum() * (turn.abs() / 2.0).cos().signum());
    let centre = a.midpoint(d) + side;
    Some(Arc::between(centre, a, d, turn))
}
