//! Core holes that part an opening's piece from the top at the underside.
//!
//! The disc is round: where a cut ends in the face, its end at the underside lies a run-out short of that, and
//! there the piece hangs on. A row of holes in the waste, each touching the line to keep, from the cut's end
//! at the underside to the hole in the corner or to the end of the cut in the face, parts the piece
//! from the top. They are drilled before the cuts, from above, in stone that bears the bit all round.

use crate::geom::{Point, Vector};
use crate::job::CoreBit;

use super::core::Drilled;
use super::course::Course;
use super::kept::{ENDS, Kept, Whose};
use super::resumed::SERVES_MM;
use super::{Because, Cut, Hole, LeftOver, Remains};

/// A run-out of which no more than this is left hangs on by nothing, mm (judgement).
const NOTHING_MM: f64 = 1.0;
/// The first hole reaches so far over the end of the cut at the underside, mm (judgement: a disc wears, a mark is
/// off by a pencil's line).
const OVER_MM: f64 = 2.0;
/// A hole reaches so far into the next of another kind, mm (judgement: as above).
const INTO_MM: f64 = 1.0;
/// Neighbours of a row lie no farther apart than this share of their radius, as those of a chain (judgement).
const APART: f64 = 1.6;
/// More holes than these at one end are not planned.
const MOST: f64 = 20.0;

/// The holes that part the piece of an opening made by `cuts`, whose run-outs are known: of the bit that takes
/// the fewest minutes. Nothing when no run-out hangs on; an error when no bit of the kit finds room at
/// every end. Bits times run-outs times holes.
pub(super) fn holes(
    course: &Course<'_>,
    cutout: usize,
    cuts: &[Cut],
) -> Result<Option<Drilled>, NoRoom> {
    let run_outs: Vec<(&LeftOver, f64)> = cuts.iter().flat_map(run_outs).collect();
    if run_outs.is_empty() {
        return Ok(None);
    }
    let before = course.job.slab.begun.drilled.iter().map(|d| Hole {
        at: d.at,
        diameter: d.diameter,
    });
    let own = course.cuts.iter().filter(|c| c.cutout == Some(cutout + 1));
    let there: Vec<Hole> = before.chain(own.flat_map(|c| c.holes.clone())).collect();
    let each = course.job.core_bits.iter().filter_map(|bit| {
        let holes = with(*bit, &course.kept, &there, &run_outs)?;
        Some((bit, holes))
    });
    #[allow(clippy::cast_precision_loss)]
    let minutes = |(bit, holes): &(&CoreBit, Vec<Hole>)| bit.minutes * holes.len() as f64;
    let best = each.min_by(|a, b| minutes(a).total_cmp(&minutes(b)));
    let (bit, holes) = best.ok_or(NoRoom)?;
    Ok((!holes.is_empty()).then(|| Drilled {
        whose: Whose::Cutout(cutout),
        name: ENDS.into(),
        bit: *bit,
        holes,
        allowance_mm: 0.0,
        finish: course.job.top.cutouts[cutout].finish,
        because: Because::PartsUnderside,
        left_to_remove: Vec::new(),
    }))
}

/// No bit of the kit finds room at every end.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct NoRoom;

/// The run-outs of a cut that hold on to something, each with the width of its kerf.
fn run_outs(cut: &Cut) -> impl Iterator<Item = (&LeftOver, f64)> {
    let kerf = cut.tool.width_mm();
    let left = cut.left_to_remove.iter();
    left.filter(|l| l.why == Remains::RunOut && l.left > NOTHING_MM)
        .map(move |l| (l, kerf))
}

/// The holes of one bit at every run-out; nothing where one would reach into the kept stone.
fn with(
    bit: CoreBit,
    kept: &Kept,
    there: &[Hole],
    run_outs: &[(&LeftOver, f64)],
) -> Option<Vec<Hole>> {
    let mut all = there.to_vec();
    for (run_out, kerf) in run_outs {
        let row = Row::beside(run_out, *kerf, bit.diameter / 2.0, kept)?;
        for at in row.centres(&all)? {
            let serves = |h: &Hole| h.at.distance(at) <= SERVES_MM;
            if !all.iter().any(serves) {
                if !kept.is_clear_of_circle(at, bit.diameter / 2.0) {
                    return None;
                }
                all.push(Hole {
                    at,
                    diameter: bit.diameter,
                });
            }
        }
    }
    Some(all.split_off(there.len()))
}

/// The line on which the middles of a run-out's holes lie.
struct Row {
    /// Beside the end of the cut at the underside.
    from: Point,
    /// Towards its end in the face.
    heading: Vector,
    /// Length of the run-out, mm.
    length: f64,
    radius: f64,
    /// Half of what a hole takes of the middle of the kerf, mm.
    half: f64,
}

impl Row {
    /// The row of a run-out, on the side of its kerf that is the farther from the kept stone.
    fn beside(run_out: &LeftOver, kerf: f64, radius: f64, kept: &Kept) -> Option<Self> {
        let heading = Vector::at_angle(run_out.heading?.to_radians());
        let under = run_out.at - heading * run_out.length;
        let off = radius - kerf / 2.0;
        let sides = [heading.left(), heading.right()].map(|out| under + out * off);
        let from = sides
            .into_iter()
            .max_by(|a, b| signed(kept, *a).total_cmp(&signed(kept, *b)))?;
        Some(Self {
            from,
            heading,
            length: run_out.length,
            radius,
            half: (radius * radius - off * off).max(0.0).sqrt(),
        })
    }

    /// The middles: the first over the end at the underside, the last as far as the next hole or the end
    /// of the run-out. Nothing when they would be too many.
    fn centres(&self, there: &[Hole]) -> Option<Vec<Point>> {
        let first = (self.half - OVER_MM).max(0.0);
        let ends = there
            .iter()
            .filter_map(|hole| self.last_before(hole, first));
        let last = ends.fold(self.length - self.half, f64::min);
        let gaps = ((last - first) / (APART * self.radius) - 1e-9)
            .ceil()
            .max(0.0);
        if gaps > MOST {
            return None;
        }
        #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
        let count = gaps as u32;
        let at = |i: u32| first + (last - first).max(0.0) * f64::from(i) / gaps.max(1.0);
        Some(
            (0..=count)
                .map(|i| self.from + self.heading * at(i))
                .collect(),
        )
    }

    /// How far along the row the last hole must lie to reach into a hole ahead; nothing for one that lies
    /// behind, or aside.
    fn last_before(&self, hole: &Hole, first: f64) -> Option<f64> {
        let to = hole.at - self.from;
        let (ahead, aside) = (to.dot(self.heading), to.cross(self.heading));
        let reach = self.radius + hole.diameter / 2.0 - INTO_MM;
        let along = reach * reach - aside * aside;
        let before = ahead <= first || ahead > self.length + hole.diameter;
        (!before && along > 0.0).then(|| ahead - along.sqrt())
    }
}

/// How far a point lies from the kept stone, mm; negative in it.
fn signed(kept: &Kept, at: Point) -> f64 {
    let off = kept.distance(at);
    if kept.region().side(at) == crate::geom::Side::Inside {
        -off
    } else {
        off
    }
}
