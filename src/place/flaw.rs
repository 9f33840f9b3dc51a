//! How the top and its cuts lie to the flaws of the slab.

use crate::geom::{Line, Outline, Point, SAME_MM, Seg, Side};
use crate::job::{DiscUse, Flaw, FlawPlace, Job};
use crate::place::apart::between;

use super::tolerance::TOUCH_MM;
use super::{SawnCutout, Trim};

/// Points along each piece of a flaw at which its depth in the top is probed.
const PROBES: u32 = 16;
/// Sine of the angle below which a cut that meets a line flaw runs along it and does not cross it
/// (judgement: 30°; there it stays beside the flaw for twice the width of both).
const ALONG: f64 = 0.5;

/// Distance from a top to a flaw itself, mm, without its clearance: negative when some of the flaw
/// lies in the top, by how deep at least. Pieces of the top × pieces of the flaw.
#[must_use]
pub fn distance(top: &Outline, flaw: &Flaw) -> f64 {
    match &flaw.place {
        FlawPlace::Spot { at, across_mm } => -top.depth(*at) - across_mm / 2.0,
        FlawPlace::Line(points) => from_pieces(top, &pieces(points)),
        FlawPlace::Area(outline) => {
            let inside = outline.depth(top.segs()[0].start());
            let apart = from_pieces(top, outline.segs());
            if inside > 0.0 {
                apart.min(-inside)
            } else {
                apart
            }
        }
    }
}

fn pieces(points: &[Point]) -> Vec<Seg> {
    points.windows(2).map(|w| Seg::Line(w[0], w[1])).collect()
}

fn from_pieces(top: &Outline, pieces: &[Seg]) -> f64 {
    let apart = between(top, pieces);
    let Some(first) = pieces.first() else {
        return apart;
    };
    if apart > 0.0 && top.depth(first.start()) < 0.0 {
        return apart;
    }
    let depths = pieces
        .iter()
        .flat_map(|p| probes(top, p))
        .map(|p| top.depth(p));
    let deepest = depths.fold(f64::NEG_INFINITY, f64::max);
    if deepest > 0.0 { -deepest } else { apart }
}

/// Points along a piece of a flaw at which its depth in the top is asked: even steps, and one between each
/// two crossings of the top's boundary, so that no part inside goes unseen.
fn probes(top: &Outline, piece: &Seg) -> Vec<Point> {
    let mut shares: Vec<f64> = (0..=PROBES)
        .map(|i| f64::from(i) / f64::from(PROBES))
        .collect();
    let meets = top.segs().iter().flat_map(|s| s.meets(piece));
    shares.extend(meets.map(|p| piece.nearest(p)));
    shares.sort_by(f64::total_cmp);
    let middles = shares.windows(2).map(|w| f64::midpoint(w[0], w[1]));
    let all: Vec<f64> = middles.chain([0.0, 1.0]).collect();
    all.into_iter().map(|share| piece.at(share)).collect()
}

/// True when a flaw lies with its clearance in the stone that one of the openings takes out for good.
#[must_use]
pub fn is_taken_out(openings: &[SawnCutout], flaw: &Flaw) -> bool {
    openings.iter().any(|o| holds(o.shape.outline(), flaw))
}

fn holds(opening: &Outline, flaw: &Flaw) -> bool {
    let clear = |pieces: &[Seg]| between(opening, pieces) >= flaw.clear_mm - TOUCH_MM;
    match &flaw.place {
        FlawPlace::Spot { at, across_mm } => {
            opening.depth(*at) >= across_mm / 2.0 + flaw.clear_mm - TOUCH_MM
        }
        FlawPlace::Line(points) => {
            let pieces = pieces(points);
            pieces.iter().all(|s| holds_stretch(opening, s)) && clear(&pieces)
        }
        FlawPlace::Area(area) => opening.holds(area, TOUCH_MM) && clear(area.segs()),
    }
}

/// Whether a straight piece lies wholly inside or on an outline.
fn holds_stretch(opening: &Outline, piece: &Seg) -> bool {
    let (a, b) = (piece.start(), piece.end());
    let line = Line::through(a, b);
    let long = a.distance(b);
    let crossings = opening.segs().iter().flat_map(|s| s.line_crossings(&line));
    let mut marks: Vec<f64> = crossings.filter(|d| *d > 0.0 && *d < long).collect();
    marks.extend([0.0, long]);
    marks.sort_by(f64::total_cmp);
    let out = |at: f64| opening.side(line.at(at)) == Side::Outside;
    !marks.iter().any(|m| out(*m)) && !marks.windows(2).any(|w| out(f64::midpoint(w[0], w[1])))
}

/// A cut that runs along a line flaw: the trim and the flaw, counted from 0, and how far, mm.
pub(super) struct RunsAlong {
    pub(super) trim: usize,
    pub(super) flaw: usize,
    pub(super) length_mm: f64,
}

/// Every trim that runs along a line flaw: whose kerf stays within the clearance for longer than a
/// crossing at 30° would.
pub(super) fn runs_along(job: &Job, trims: &[Trim]) -> Vec<RunsAlong> {
    let kerf = kerf_mm(job);
    let mut found = Vec::new();
    for (flaw, f) in job.slab.flaws.iter().enumerate() {
        let FlawPlace::Line(points) = &f.place else {
            continue;
        };
        for (i, trim) in trims.iter().enumerate() {
            let length_mm = beside(trim, points, f.clear_mm, kerf);
            if length_mm > most_beside(f.clear_mm, kerf) + SAME_MM {
                found.push(RunsAlong {
                    trim: i,
                    flaw,
                    length_mm,
                });
            }
        }
    }
    found
}

/// How long a kerf may stay within the clearance of a line flaw, mm.
pub(super) fn most_beside(clear_mm: f64, kerf_mm: f64) -> f64 {
    (2.0 * clear_mm + kerf_mm) / ALONG
}

/// The widest kerf of a straight cut, mm.
pub(super) fn kerf_mm(job: &Job) -> f64 {
    let straight = job.discs.iter().filter(|d| d.usage != DiscUse::Curves);
    straight.map(|d| d.kerf).fold(0.0, f64::max)
}

/// Length of a trim beside a line flaw: where the flaw comes within the clearance of the kerf.
fn beside(trim: &Trim, points: &[Point], clear: f64, kerf: f64) -> f64 {
    let mut total = 0.0;
    for w in points.windows(2) {
        // In the trim's own frame: along the face, and out into the waste.
        let own = |p: Point| (trim.face.foot(p), -trim.face.left_of(p));
        if let Some((from, to)) = within(
            own(w[0]),
            own(w[1]),
            SAME_MM - clear,
            kerf + clear - SAME_MM,
        ) {
            let (low, high) = (from.min(to).max(trim.span.0), from.max(to).min(trim.span.1));
            total += (high - low).max(0.0);
        }
    }
    total
}

/// Where a stretch enters and leaves a band across its second coordinate, by its first.
fn within(a: (f64, f64), b: (f64, f64), low: f64, high: f64) -> Option<(f64, f64)> {
    let rise = b.1 - a.1;
    let share = |level: f64| (level - a.1) / rise;
    let (from, to) = if rise.abs() <= SAME_MM {
        if a.1 < low || a.1 > high {
            return None;
        }
        (0.0, 1.0)
    } else {
        let (p, q) = (share(low), share(high));
        (p.min(q).max(0.0), p.max(q).min(1.0))
    };
    let at = |share: f64| a.0 + (b.0 - a.0) * share;
    (from <= to).then(|| (at(from), at(to)))
}
