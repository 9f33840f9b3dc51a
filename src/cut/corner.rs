//! Inside corners and hollow arcs that core holes make: which bit, where each hole lies, where the
//! cuts beside it stop.

use std::f64::consts::TAU;

use crate::geom::{Arc, Line, Point, SAME_MM, Seg, Vector};
use crate::job::CoreBit;

use super::Hole;
use super::kept::{Kept, Ring};

/// Least radius of an inside corner, mm: a sharper one starts a crack (judgement; a single trade page
/// restating a design manual for stone worktops has 9.5).
pub const LEAST_RADIUS_MM: f64 = 10.0;
/// The most stone that core holes may leave in a corner or between two of them to be ground off by
/// hand, mm (judgement).
pub const GROUND_MM: f64 = 3.0;
/// Neighbouring holes of a chain overlap by at least this share of their radius (judgement).
const OVERLAP: f64 = 0.4;

/// The core holes of one inside corner or one hollow arc.
#[derive(Clone, Debug)]
pub struct Bored {
    /// The holes in order along the boundary.
    pub holes: Vec<Hole>,
    /// The bit.
    pub bit: CoreBit,
    /// Radius left as sawn, mm.
    pub radius_mm: f64,
    /// Radius asked for, as sawn, mm; 0 for a sharp corner.
    pub asked_mm: f64,
    /// The most stone left to grind off, mm: in the corner, or between two holes of a chain.
    pub ground_mm: f64,
    /// Where the piece before the corner ends and the piece after it begins.
    pub stops: [Point; 2],
}

/// The pieces on both sides of a corner: straight or curved, counted in the ring.
#[derive(Clone, Copy, Debug)]
pub struct Sides {
    /// The piece that runs to the corner.
    pub before: usize,
    /// The piece that runs from it.
    pub after: usize,
}

/// One hole that touches both sides of an inside corner, from the smallest bit whose radius is at
/// least the one asked for. A corner asked for sharper than [`LEAST_RADIUS_MM`] gets that radius or
/// the next larger, failing that the largest that fits. Nothing when no bit fits, or when one would
/// leave more than `ground_mm` in the corner of a radius that was asked for.
#[must_use]
pub fn one_hole(
    bits: &[CoreBit],
    kept: &Kept,
    ring: &Ring,
    sides: Sides,
    asked_mm: f64,
    ground_mm: f64,
) -> Option<Bored> {
    let sharp = asked_mm < LEAST_RADIUS_MM - SAME_MM;
    let wanted = asked_mm.max(LEAST_RADIUS_MM);
    let mut fitting: Vec<Bored> = bits
        .iter()
        .filter_map(|bit| touching(*bit, kept, ring, sides, asked_mm))
        .collect();
    fitting.sort_by(|a, b| a.radius_mm.total_cmp(&b.radius_mm));
    let enough = fitting.iter().position(|b| b.radius_mm >= wanted - SAME_MM);
    match enough {
        Some(i) if sharp || fitting[i].ground_mm <= ground_mm => Some(fitting.swap_remove(i)),
        None if sharp => fitting.pop(),
        _ => None,
    }
}

/// The hole of a bit that touches both sides of a corner from the waste; nothing when it does not
/// fit there.
fn touching(bit: CoreBit, kept: &Kept, ring: &Ring, sides: Sides, asked_mm: f64) -> Option<Bored> {
    let radius = bit.diameter / 2.0;
    let (a, b) = (
        &ring.pieces[sides.before].seg,
        &ring.pieces[sides.after].seg,
    );
    let (near, far) = (beside(a, radius)?, beside(b, radius)?);
    let corner = a.end().midpoint(b.start());
    let on_both = |centre: &Point| {
        let feet = [foot(a, *centre), foot(b, *centre)];
        a.distance(feet[0]) <= 1e-5 && b.distance(feet[1]) <= 1e-5
    };
    let centre = near
        .carrier_meets(&far)
        .into_iter()
        .filter(|c| on_both(c) && kept.is_clear_of_circle(*c, radius))
        .min_by(|p, q| p.distance(corner).total_cmp(&q.distance(corner)))?;
    let stops = [foot(a, centre), foot(b, centre)];
    // Between the two tangents the hole lies as far from their meeting point as its own radius
    // makes it; the corner asked for lies nearer by the difference of the two.
    let axis = (corner_of(a, b, stops) - centre).length();
    let ground_mm = (axis - radius) * (1.0 - asked_mm / radius).max(0.0);
    Some(Bored {
        holes: vec![Hole {
            at: centre,
            diameter: bit.diameter,
        }],
        bit,
        radius_mm: radius,
        asked_mm,
        ground_mm: if asked_mm > 0.0 { ground_mm } else { 0.0 },
        stops,
    })
}

/// Where the tangents at the two feet of a hole meet.
fn corner_of(a: &Seg, b: &Seg, feet: [Point; 2]) -> Point {
    let tangent = |seg: &Seg, at: Point| Line {
        point: at,
        along: seg.heading(seg.nearest(at)),
    };
    tangent(a, feet[0])
        .meet(&tangent(b, feet[1]))
        .unwrap_or_else(|| feet[0].midpoint(feet[1]))
}

/// The carrier of a piece moved to its right, into the waste.
fn beside(seg: &Seg, by: f64) -> Option<Seg> {
    match *seg {
        Seg::Line(a, b) => {
            let out = (b - a).unit().right() * by;
            Some(Seg::Line(a + out, b + out))
        }
        Seg::Arc(arc) => {
            let radius = arc.radius + by * arc.sweep.signum();
            (radius > SAME_MM).then_some(Seg::Arc(Arc { radius, ..arc }))
        }
    }
}

/// The point of a piece's carrier nearest to a point.
fn foot(seg: &Seg, p: Point) -> Point {
    match seg {
        Seg::Line(a, b) => {
            let line = Line::through(*a, *b);
            line.at(line.foot(p))
        }
        Seg::Arc(arc) => arc.centre + (p - arc.centre).unit() * arc.radius,
    }
}

/// Height of the ridge between two holes of radius `bit` that touch an arc of radius `arc` from
/// inside, `step` radians apart about its centre, mm: r − ((r − b)·cos(Δ/2) + √(b² − (r − b)²·sin²(Δ/2))).
#[must_use]
pub fn ridge_between(arc: f64, bit: f64, step: f64) -> f64 {
    let (off, half) = (arc - bit, step / 2.0);
    let across = off * half.sin();
    if across >= bit {
        return arc;
    }
    arc - (off * half.cos() + (bit * bit - across * across).sqrt())
}

/// A chain of holes along a hollow arc from the largest bit that fits inside it: every hole touches the
/// arc, ridges between them are no higher than [`GROUND_MM`]. A single hole when the bit is the
/// arc's own. Nothing when no bit fits.
#[must_use]
pub fn chain(bits: &[CoreBit], kept: &Kept, arc: &Arc) -> Option<Bored> {
    let mut fitting: Vec<CoreBit> = bits
        .iter()
        .copied()
        .filter(|bit| bit.diameter / 2.0 <= arc.radius + SAME_MM)
        .collect();
    fitting.sort_by(|a, b| b.diameter.total_cmp(&a.diameter));
    fitting.into_iter().find_map(|bit| of_bit(bit, kept, arc))
}

fn of_bit(bit: CoreBit, kept: &Kept, arc: &Arc) -> Option<Bored> {
    let radius = bit.diameter / 2.0;
    let off = (arc.radius - radius).max(0.0);
    let whole = arc.sweep.abs() >= TAU - 1e-9;
    let count = holes_needed(arc, radius);
    let steps = if whole { count } else { count - 1 };
    #[allow(clippy::cast_precision_loss)]
    let step = arc.sweep / steps.max(1) as f64;
    let hole = |i: usize| {
        #[allow(clippy::cast_precision_loss)]
        let angle = if count == 1 {
            arc.start + arc.sweep / 2.0
        } else {
            arc.start + step * i as f64
        };
        Hole {
            at: arc.centre + Vector::at_angle(angle) * off,
            diameter: bit.diameter,
        }
    };
    let holes: Vec<Hole> = (0..count).map(hole).collect();
    let clear = holes.iter().all(|h| kept.is_clear_of_circle(h.at, radius));
    let ground_mm = if count == 1 {
        left_at_ends(arc, radius)
    } else {
        ridge_between(arc.radius, radius, step.abs())
    };
    clear.then(|| Bored {
        holes,
        bit,
        radius_mm: arc.radius,
        asked_mm: arc.radius,
        ground_mm,
        stops: [arc.at_angle(arc.start), arc.at_angle(arc.start + arc.sweep)],
    })
}

/// One hole in the middle of an arc may leave this much at the arc's ends, mm (judgement: less than a
/// kerf, so that the cuts beside it still run into it).
pub(super) const ONE_LEAVES_MM: f64 = 1.0;

/// Two holes nearer than this from middle to middle are better one in the middle, which leaves at most
/// `ONE_LEAVES_MM` more, mm.
pub(super) const NEAR_MM: f64 = 2.0 * ONE_LEAVES_MM;

/// Stone that one hole touching the middle of an arc leaves at the arc's ends, mm; the whole radius where
/// the hole does not reach.
fn left_at_ends(arc: &Arc, bit: f64) -> f64 {
    let (off, half) = ((arc.radius - bit).max(0.0), arc.sweep.abs() / 2.0);
    let across = off * half.sin();
    if half > 1.6 || across >= bit {
        return if off <= SAME_MM { 0.0 } else { arc.radius };
    }
    arc.radius - (off * half.cos() + (bit * bit - across * across).sqrt())
}

/// How many holes an arc needs: one when the bit is its own size or leaves next to nothing at the ends,
/// otherwise so many that ridges are low enough and neighbours overlap.
fn holes_needed(arc: &Arc, bit: f64) -> usize {
    let off = arc.radius - bit;
    if off <= SAME_MM || left_at_ends(arc, bit) <= ONE_LEAVES_MM {
        return 1;
    }
    // Halving finds the widest step whose ridge is low enough.
    let overlap = ((2.0 - OVERLAP) * bit / (2.0 * off)).min(1.0).asin() * 2.0;
    let (mut fine, mut wide) = (0.0, overlap.min(TAU / 3.0));
    if ridge_between(arc.radius, bit, wide) <= GROUND_MM {
        fine = wide;
    }
    for _ in 0..50 {
        let middle = f64::midpoint(fine, wide);
        if ridge_between(arc.radius, bit, middle) <= GROUND_MM {
            fine = middle;
        } else {
            wide = middle;
        }
    }
    let steps = (arc.sweep.abs() / fine.max(1e-3) - 1e-9)
        .ceil()
        .clamp(1.0, 2000.0);
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
    let steps = steps as usize;
    if arc.sweep.abs() >= TAU - 1e-9 {
        steps.max(3)
    } else {
        steps + 1
    }
}

/// A row of holes that touch a straight face from the waste, where no disc finds room: from the middle
/// of the first hole to the middle of the last, `from` and `to` mm along the line, ridges no
/// higher than [`GROUND_MM`]; one hole in the middle where the two would lie nearer than `NEAR_MM`. The largest bit that stays clear of the kept stone.
#[must_use]
pub fn row(bits: &[CoreBit], kept: &Kept, face: &Line, (from, to): (f64, f64)) -> Option<Bored> {
    let mut by_size: Vec<CoreBit> = bits.to_vec();
    by_size.sort_by(|a, b| b.diameter.total_cmp(&a.diameter));
    by_size.into_iter().find_map(|bit| {
        let radius = bit.diameter / 2.0;
        let off = (radius - GROUND_MM).max(radius * 0.6);
        let widest = 2.0 * (radius * radius - off * off).sqrt();
        let gaps = ((to - from) / widest - 1e-9).ceil().clamp(1.0, 500.0);
        let middle = face.shifted_right(radius);
        let share_at: Vec<f64> = if to - from <= NEAR_MM {
            vec![0.5]
        } else {
            #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
            let count = gaps as u32;
            (0..=count).map(|i| f64::from(i) / gaps).collect()
        };
        let hole = |share: f64| Hole {
            at: middle.at(from + (to - from) * share),
            diameter: bit.diameter,
        };
        let holes: Vec<Hole> = share_at.into_iter().map(hole).collect();
        let half = (to - from) / gaps / 2.0;
        let clear = holes.iter().all(|h| kept.is_clear_of_circle(h.at, radius));
        clear.then(|| Bored {
            holes,
            bit,
            radius_mm: radius,
            asked_mm: 0.0,
            ground_mm: radius - (radius * radius - half * half).sqrt(),
            stops: [face.at(from), face.at(to)],
        })
    })
}

/// The holes of a row, those aside whose place another hole of the same bit has taken so nearly that it
/// leaves at most `ONE_LEAVES_MM` more; and what is left to grind then, mm.
#[must_use]
pub fn beside_those_there(row: &Bored, there: &[Hole]) -> (Vec<Hole>, f64) {
    let (mut holes, mut moved) = (Vec::new(), 0.0);
    for hole in &row.holes {
        let same = there.iter().filter(|h| h.diameter == hole.diameter);
        let apart = same.map(|h| h.at.distance(hole.at));
        let nearest = apart.fold(f64::INFINITY, f64::min);
        if nearest <= ONE_LEAVES_MM {
            moved = nearest.max(moved);
        } else {
            holes.push(*hole);
        }
    }
    // Nothing stands out farther than it would by more than a hole lies beside its place.
    (holes, row.ground_mm + moved)
}
