//! What becomes of an opening that came out otherwise than it was wanted.
//!
//! Its sides are settled like the edges of the top, seen from the stone that is kept: a side that came out
//! too large by more than the allowance moves out, one that came out too small is ground or cut a second
//! time.

use crate::cut::corner::LEAST_RADIUS_MM;
use crate::cut::kept::Whose;
use crate::cut::resumed::SERVES_MM;
use crate::geom::Outline;
use crate::job::{CornerCut, Cutout, Job, Part, Shape};
use crate::place::{NoFit, Placement};
use crate::words::{Message, Value};

use super::faces::{Faces, On, notch};
use super::moved::moved_in_exactly;
use super::no_way::no_way;
use super::settle::{Edge, Settled, settle};

/// Halvings of a span of radii: 500 mm come down to below a millionth.
const HALVINGS: u32 = 40;
/// The opening as sawn may leave this much of a chip, by the rounding of the numbers, mm.
const SLACK_MM: f64 = 1e-3;

/// An opening as it can be had.
#[derive(Clone, Debug)]
pub struct Opened {
    /// The finished opening, in the wanted top's frame.
    pub shape: Shape,
    /// What becomes of each side; it moves into the stone that was to be kept.
    pub settled: Vec<Settled>,
    /// Faces that are not sawn again, and the stone left on each, mm.
    pub ready: Vec<(Part, f64)>,
    /// Stone to take off where the arc at a corner is not sawn again, mm.
    pub corners_take_off: Vec<Option<f64>>,
}

/// Settles every opening of the top, in the order of the cutouts.
///
/// # Errors
/// [`NoFit`] when a changed opening has no figure.
pub fn all(
    job: &Job,
    grind_mm: f64,
    placement: &Placement,
    faces: &Faces,
) -> Result<Vec<Opened>, NoFit> {
    let each = job.top.cutouts.iter().enumerate();
    each.map(|(i, cutout)| {
        let opening = OpeningFaces {
            cutout,
            whose: Whose::Cutout(i),
            allowance_mm: job.top.allowances.for_finish(cutout.finish),
            grind_mm,
            least_strip_mm: job.place.least_strip_mm,
            placement,
            faces,
        };
        opening.settled().ok_or_else(|| {
            let opening = ("opening", Value::name(cutout.what.clone()));
            no_way(
                placement,
                Message::new("repair-opening-no-figure", [opening]),
            )
        })
    })
    .collect()
}

struct OpeningFaces<'a> {
    cutout: &'a Cutout,
    whose: Whose,
    allowance_mm: f64,
    grind_mm: f64,
    least_strip_mm: f64,
    placement: &'a Placement,
    faces: &'a Faces,
}

impl OpeningFaces<'_> {
    fn on(&self, part: Part) -> On {
        On {
            whose: self.whose,
            part,
        }
    }

    fn unhurt(&self, part: Part) -> f64 {
        self.faces.unhurt_of(self.placement, self.on(part))
    }

    fn is_lost(&self, unhurt_mm: f64) -> bool {
        -unhurt_mm > self.allowance_mm + crate::geom::SAME_MM
    }

    fn settled(&self) -> Option<Opened> {
        let shape = &self.cutout.shape;
        if shape.as_circle().is_some() {
            return self.circle();
        }
        let mut cuts = shape.corner_cuts().to_vec();
        let count = shape.count();
        // A hurt corner first gets a smaller radius where that clears it, and costs no side.
        let mut carried: Vec<f64> = vec![f64::INFINITY; count];
        for corner in 0..count {
            let hurt = self.unhurt(Part::Corner(corner));
            if !self.is_lost(hurt) {
                continue;
            }
            match self.sharper(corner, &cuts) {
                Some(cut) => cuts[corner] = cut,
                None => {
                    for side in [corner, (corner + count - 1) % count] {
                        carried[side] = carried[side].min(hurt);
                    }
                }
            }
        }
        let settled = (0..count).map(|side| self.side(side, carried[side]));
        let mut settled: Vec<Settled> = settled.collect();
        self.lengthen(&mut settled);
        let out: Vec<f64> = settled.iter().map(|s| -s.moved_mm).collect();
        let changed = cuts != shape.corner_cuts() || out.iter().any(|mm| *mm != 0.0);
        let shape = if changed {
            moved_in_exactly(shape, &out, cuts)?
        } else {
            shape.clone()
        };
        Some(self.opened(shape, settled))
    }

    /// A side that is cut already but ends at a corner that has moved on farther than is ground off there is cut
    /// again, as far as the new corner.
    fn lengthen(&self, settled: &mut [Settled]) {
        let count = settled.len();
        let moved: Vec<f64> = settled.iter().map(|s| s.moved_mm).collect();
        for (side, own) in settled.iter_mut().enumerate() {
            let beside = [(side + 1) % count, (side + count - 1) % count];
            if beside
                .iter()
                .any(|s| moved[*s] > self.grind_mm.max(SERVES_MM))
            {
                own.ready_mm = None;
                own.take_off_mm = 0.0;
            }
        }
    }

    fn side(&self, side: usize, carried_mm: f64) -> Settled {
        let part = Part::Edge(side);
        let edge = Edge {
            taper_mm: 0.0,
            allowance_mm: self.allowance_mm,
            face_mm: self.faces.face_mm(self.on(part)),
            unhurt_mm: self.unhurt(part).min(carried_mm),
        };
        settle(edge, self.grind_mm, self.least_strip_mm)
    }

    /// A circle has one side all round.
    fn circle(&self) -> Option<Opened> {
        let shape = &self.cutout.shape;
        let parts = shape.parts();
        let unhurt = parts.iter().map(|p| self.unhurt(*p));
        let edge = Edge {
            taper_mm: 0.0,
            allowance_mm: self.allowance_mm,
            face_mm: parts.first().and_then(|p| self.faces.face_mm(self.on(*p))),
            unhurt_mm: unhurt.fold(f64::INFINITY, f64::min),
        };
        let settled = settle(edge, self.grind_mm, self.least_strip_mm);
        let grown = if settled.moved_mm > 0.0 {
            shape.grown(&vec![settled.moved_mm; shape.count()]).ok()?
        } else {
            shape.clone()
        };
        let ready = settled.ready_mm.into_iter();
        let ready = ready.flat_map(|mm| parts.iter().map(move |p| (*p, mm)));
        let take_off = settled.ready_mm.map(|_| settled.take_off_mm);
        Some(Opened {
            ready: ready.collect(),
            corners_take_off: vec![take_off; shape.count()],
            settled: vec![settled; shape.count()],
            shape: grown,
        })
    }

    /// The largest smaller radius at a rounded corner with which the opening takes in the chips there;
    /// nothing when the arc itself slipped, or when none of at least [`LEAST_RADIUS_MM`] does.
    fn sharper(&self, corner: usize, cuts: &[CornerCut]) -> Option<CornerCut> {
        let CornerCut::Round(wanted) = cuts[corner] else {
            return None;
        };
        let on = self.on(Part::Corner(corner));
        let slipped = self.faces.face_mm(on).is_some_and(|out| self.is_lost(out));
        if slipped || wanted <= LEAST_RADIUS_MM {
            return None;
        }
        let own = self.faces.chips.iter().filter(|(_, at)| *at == on);
        let notches = own.filter_map(|(chip, at)| notch(self.placement, self.faces, chip, *at));
        let notches: Vec<Outline> = notches.collect();
        let still = vec![0.0; self.cutout.shape.count()];
        let takes_in = |radius: f64| {
            let mut cuts = cuts.to_vec();
            cuts[corner] = CornerCut::Round(radius);
            let shape = moved_in_exactly(&self.cutout.shape, &still, cuts);
            let posed = shape.map(|s| s.posed(self.placement.pose));
            posed.is_some_and(|s| notches.iter().all(|n| s.outline().holds(n, SLACK_MM)))
        };
        if !takes_in(LEAST_RADIUS_MM) {
            return None;
        }
        let (mut yes, mut no) = (LEAST_RADIUS_MM, wanted);
        for _ in 0..HALVINGS {
            let middle = f64::midpoint(yes, no);
            if takes_in(middle) {
                yes = middle;
            } else {
                no = middle;
            }
        }
        Some(CornerCut::Round(yes))
    }

    fn opened(&self, shape: Shape, settled: Vec<Settled>) -> Opened {
        let count = shape.count();
        let left = |corner: usize| {
            let part = Part::Corner(corner);
            let face = self.faces.face_mm(self.on(part))?;
            let beside = [corner, (corner + count - 1) % count];
            let stays = beside.iter().all(|s| settled[*s].moved_mm == 0.0);
            let same = shape.corner_cuts()[corner] == self.cutout.shape.corner_cuts()[corner];
            let kept = stays && same && face <= self.grind_mm;
            let unhurt = self.unhurt(part).min(face).min(0.0);
            kept.then_some((self.allowance_mm + unhurt, self.allowance_mm + face))
        };
        let corners: Vec<Option<(f64, f64)>> = (0..count).map(left).collect();
        let sides = settled.iter().enumerate();
        let sides = sides.filter_map(|(s, settled)| Some((Part::Edge(s), settled.ready_mm?)));
        let arcs = corners.iter().enumerate();
        let arcs = arcs.filter_map(|(c, left)| Some((Part::Corner(c), (*left)?.0)));
        Opened {
            ready: sides.chain(arcs).collect(),
            corners_take_off: corners.iter().map(|c| c.map(|c| c.1)).collect(),
            shape,
            settled,
        }
    }
}
