//! Curves set out without an arm: by distances along the chord and square to it.
//!
//! A bow front's centre lies metres off the slab, where nobody can fix a pivot. The chord between the ends
//! of the sawn arc is struck on the stone instead. For every station the sheet gives the mark on the arc
//! and two marks on the guide's edge, each as a distance along the chord and an ordinate square to it:
//! the guide laid on its two marks holds the disc tangent to the arc.

use crate::geom::{Arc, Line, Point, Side, Vector};
use crate::job::Job;

use super::kept::Kept;
use super::set_out::point_ties;
use super::{ChordEnd, CurveSetOut, Ordinate, OrdinateSetOut, Reach, SetOut, StationMarks};

/// From a station to each of the two marks of the guide's edge, mm (judgement: far enough apart to lay a
/// straight edge by, near enough to stay on the stone).
const GUIDE_HALF_MM: f64 = 150.0;

/// The chord of an arc as a line to measure from.
#[derive(Clone, Copy, Debug)]
pub struct Chord {
    line: Line,
    /// 1 when the arc lies to the right of the line, −1 when to its left.
    side: f64,
}

impl Chord {
    /// The chord of an arc of less than a full circle.
    #[must_use]
    pub fn of(arc: &Arc) -> Self {
        let (from, to) = ends(arc);
        Self {
            line: Line::through(from, to),
            side: arc.sweep.signum(),
        }
    }

    /// A place as seen from the chord.
    #[must_use]
    pub fn ordinate(&self, at: Point) -> Ordinate {
        Ordinate {
            at,
            along: self.line.foot(at),
            off: -self.side * self.line.left_of(at),
        }
    }
}

fn ends(arc: &Arc) -> (Point, Point) {
    (arc.at_angle(arc.start), arc.at_angle(arc.start + arc.sweep))
}

/// Shares of the half length by which a guide's two marks are moved along its edge, until both lie on the
/// kept stone.
const MOVED: [f64; 9] = [0.0, 0.25, -0.25, 0.5, -0.5, 0.75, -0.75, 1.0, -1.0];

/// Two marks on a guide's edge, `half` to each side of its middle, or moved along so that both lie on the
/// kept stone.
fn marks_on(kept: &Kept, edge: &Line, half: f64) -> [Point; 2] {
    let pair = |moved: f64| [-half, half].map(|d| edge.at(d + moved * half));
    let on = |p: &Point| kept.region().side(*p) == Side::Inside;
    let found = MOVED.into_iter().map(pair).find(|p| p.iter().all(on));
    found.unwrap_or_else(|| pair(0.0))
}

/// The set-out of a curve: about its pivot when the jig's arm reaches, else from its chord.
///
/// `arc` is the sawn arc with the kept stone to its left. The guide lies on the kept stone.
#[must_use]
pub fn arm_or_chord(job: &Job, kept: &Kept, arc: &Arc, curve: CurveSetOut) -> SetOut {
    let (from, to) = ends(arc);
    // A whole circle has no chord.
    if curve.reach == Reach::Within || from.distance(to) <= crate::geom::SAME_MM {
        return SetOut::Pivot(Box::new(curve));
    }
    let chord = Chord::of(arc);
    let end = |at: Point| ChordEnd {
        at,
        ties: point_ties(&job.slab.shape, at),
        offsets: Vec::new(),
    };
    // Kept stone lies towards the centre of an outside arc and away from that of a hollow one.
    let inwards = -arc.sweep.signum() * job.guide.offset_mm;
    let half = GUIDE_HALF_MM.min(job.guide.length_mm / 2.0);
    let marks = curve.stations.iter().map(|station| {
        let out = Vector::at_angle(station.angle);
        let edge = Line {
            point: station.touch + out * inwards,
            along: out.left(),
        };
        let guide = marks_on(kept, &edge, half);
        StationMarks {
            number: station.number,
            touch: chord.ordinate(station.touch),
            guide: guide.map(|p| chord.ordinate(p)),
        }
    });
    SetOut::Ordinates(Box::new(OrdinateSetOut {
        marks: marks.collect(),
        from: end(from),
        to: end(to),
        chord_length: from.distance(to),
        // r·(1 − cos(Δ/2)) = 2r·sin²(Δ/4).
        rise: 2.0 * arc.radius * (arc.sweep / 4.0).sin().powi(2),
        guide_to_face: job.guide.offset_mm,
        curve,
    }))
}
