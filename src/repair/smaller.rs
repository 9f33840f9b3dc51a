//! The largest top of the same kind that the stone still holds.

use crate::cut::corner::LEAST_RADIUS_MM;
use crate::cut::kept::Whose;
use crate::geom::{Outline, Pose, Region, Seg, Vector, boolean};
use crate::job::{AsCut, CornerCut, Finish, Job, Part, Shape};
use crate::place::{EdgeUse, NoFit, Placement};
use crate::words::{Message, Value};

use super::faces::{Faces, On, allowance_mm};
use super::moved::{half_turn, moved_in, moved_in_exactly};
use super::no_way::no_way;
use super::settle::{Settled, settle};
use super::stone::Now;

/// The sawn face may lie over the stone's by the rounding of the numbers, mm.
const SLACK_MM: f64 = 1e-3;
/// The farthest that edges are moved in to save a top, mm (judgement: beyond that it is another top).
const MOST_MM: f64 = 200.0;
/// Halvings of a span of lengths: 200 mm come down to below a thousandth of a micrometre.
const HALVINGS: u32 = 40;
/// Radii tried between the wanted one and the largest that the edges have room for.
const RADII_TRIED: u32 = 64;
/// More slipped roundings than this are all mended by moving edges in.
const MOST_WIDENED: usize = 6;

/// A smaller top.
#[derive(Clone, Debug)]
pub struct Smaller {
    /// The finished top, its corner 1 at the origin.
    pub shape: Shape,
    /// Where its corner 1 lies in the wanted top's frame.
    pub corner_1: Vector,
    /// What becomes of each edge.
    pub settled: Vec<Settled>,
    /// Faces that are not sawn again, and the unhurt stone left on each, mm.
    pub ready: Vec<(Part, f64)>,
    /// Stone to take off where a rounding or flat is not sawn again, mm.
    pub corners_take_off: Vec<Option<f64>>,
}

/// The largest top the stone holds whose edges lie along the wanted ones.
///
/// Each edge is settled by itself. A rounding that slipped farther than its allowance is mended in one
/// of two ways, whichever leaves the larger top: its two edges move in and it keeps its radius, or the
/// edges stay and its radius grows until the arc clears both the slip and the slots' bites beside it.
///
/// # Errors
/// [`NoFit`] when no such top is left.
pub fn largest(
    job: &Job,
    as_cut: &AsCut,
    placement: &Placement,
    faces: &Faces,
    now: &Now,
) -> Result<Smaller, NoFit> {
    let search = Search {
        job,
        as_cut,
        placement,
        faces,
        now,
    };
    let slipped: Vec<usize> = (0..placement.top.count())
        .filter(|c| search.is_lost(*c))
        .take(MOST_WIDENED)
        .collect();
    let choices = 0..1_usize << slipped.len();
    let ways = choices.map(|choice| {
        let widened = slipped.iter().enumerate();
        let widened = widened.filter(|(bit, _)| choice & (1 << bit) != 0);
        widened.map(|(_, corner)| *corner).collect::<Vec<_>>()
    });
    let found = ways.filter_map(|widened| search.with(&widened));
    found
        .max_by(|a, b| {
            let area = |s: &Smaller| s.shape.outline().area();
            area(a).total_cmp(&area(b))
        })
        .ok_or_else(|| {
            let by = short_mm(placement, faces, now);
            let gaps = [("by", Value::fine(by)), ("most", Value::size(MOST_MM))];
            no_way(placement, Message::new("repair-nothing-left", gaps))
        })
}

/// How far the top as asked, with its allowances, reaches over the unhurt stone there is now, mm.
fn short_mm(placement: &Placement, faces: &Faces, now: &Now) -> f64 {
    let hurt = placement.top.parts().iter();
    let hurt = hurt.map(|part| -faces.unhurt_mm(placement, *part));
    hurt.fold(now.outline.deepest_breach(&placement.sawn), f64::max)
}

struct Search<'a> {
    job: &'a Job,
    as_cut: &'a AsCut,
    placement: &'a Placement,
    faces: &'a Faces,
    now: &'a Now,
}

impl Search<'_> {
    /// Whether a rounding or flat is hurt deeper than its allowance.
    fn is_lost(&self, corner: usize) -> bool {
        let part = Part::Corner(corner);
        let allowance = allowance_mm(self.placement, part);
        -self.faces.unhurt_mm(self.placement, part) > allowance + crate::geom::SAME_MM
    }

    /// The top whose slipped roundings are mended by a larger radius at the corners named, and by moving
    /// edges in elsewhere.
    fn with(&self, widened: &[usize]) -> Option<Smaller> {
        let count = self.placement.top.count();
        let settled: Vec<Settled> = (0..count).map(|e| self.settled(e, widened)).collect();
        if self.moves_factory_edge(&settled) {
            return None;
        }
        let cuts = self.flats(&settled);
        let shape = |more: f64, cuts: Vec<CornerCut>| {
            let moved: Vec<f64> = settled
                .iter()
                .enumerate()
                .map(|(e, s)| s.moved_mm + if self.may_move(e) { more } else { 0.0 })
                .collect();
            moved_in(&self.job.top.shape, &moved, cuts).map(|shape| (shape, moved))
        };
        let mut cuts_now = cuts;
        for corner in widened {
            cuts_now = self.widened(*corner, &settled, &cuts_now)?;
        }
        let holds = |more: f64| {
            let (shape, _) = shape(more, cuts_now.clone())?;
            self.holds(&shape, &settled).then_some(())
        };
        let more = if holds(0.0).is_some() {
            0.0
        } else {
            holds(MOST_MM)?;
            least(0.0, MOST_MM, |more| holds(more).is_some())
        };
        let (shape, moved) = shape(more, cuts_now)?;
        let settled = settled
            .iter()
            .zip(&moved)
            .map(|(s, moved)| moved_on(*s, *moved))
            .collect();
        Some(self.finished(&shape, settled))
    }

    /// How an edge is settled; the bites of a rounding that is widened do not count.
    fn settled(&self, edge: usize, widened: &[usize]) -> Settled {
        let unhurt = self
            .faces
            .unhurt_beside_curves(self.placement, edge, widened);
        let known = self.faces.edge(self.placement, edge, unhurt);
        let (grind, strip) = (self.as_cut.grind_mm, self.job.place.least_strip_mm);
        let settled = settle(known, grind, strip);
        if !self.may_move(edge) && settled.moved_mm == 0.0 {
            // The slab's own edge, as it was.
            return Settled {
                ready_mm: None,
                take_off_mm: 0.0,
                ..settled
            };
        }
        settled
    }

    /// Whether an edge would move that is to stay a finished edge of the slab.
    fn moves_factory_edge(&self, settled: &[Settled]) -> bool {
        let finishes = self.job.top.finishes.iter();
        let mut both = settled.iter().zip(finishes);
        both.any(|(s, finish)| s.moved_mm > 0.0 && *finish == Finish::Factory)
    }

    /// Edges that lie on the slab's own edge stay there.
    fn may_move(&self, edge: usize) -> bool {
        !matches!(self.placement.uses[edge], EdgeUse::Flush { .. })
    }

    /// The corners' treatments, flats that are hurt set back farther.
    fn flats(&self, settled: &[Settled]) -> Vec<CornerCut> {
        let top = &self.job.top.shape;
        let count = top.count();
        let cuts = top.corner_cuts().iter().enumerate();
        cuts.map(|(i, cut)| match cut {
            CornerCut::Clip(back) if self.is_lost(i) => {
                let by = -self.faces.unhurt_mm(self.placement, Part::Corner(i));
                let half = half_turn(top, i).cos();
                // The edges' own moves carry the flat in already.
                let carried = settled[i]
                    .moved_mm
                    .min(settled[(i + count - 1) % count].moved_mm);
                CornerCut::Clip(back + (by - carried).max(0.0) / half)
            }
            kept => *kept,
        })
        .collect()
    }

    /// The nearest other radius at a corner that clears what is hurt there: a larger one at an outside
    /// corner and of a scoop, a smaller one at an inside corner, where that leaves less stone.
    fn widened(
        &self,
        corner: usize,
        settled: &[Settled],
        cuts: &[CornerCut],
    ) -> Option<Vec<CornerCut>> {
        let with = |cut: CornerCut| {
            let mut cuts = cuts.to_vec();
            cuts[corner] = cut;
            cuts
        };
        let wanted = match cuts[corner] {
            CornerCut::Round(wanted) => wanted,
            CornerCut::Scoop(wanted) => {
                let lost = -self.faces.unhurt_mm(self.placement, Part::Corner(corner));
                return Some(with(CornerCut::Scoop(wanted + lost)));
            }
            CornerCut::Sharp | CornerCut::Clip(_) => return None,
        };
        let moved: Vec<f64> = settled.iter().map(|s| s.moved_mm).collect();
        let whose = Whose::Top;
        let part = Part::Corner(corner);
        let hurt = self
            .now
            .hurt_at(self.placement, self.faces, On { whose, part })?;
        let inside = self.job.top.shape.is_inside_corner(corner);
        let slipped = self
            .faces
            .out_mm(part)
            .is_some_and(|out| -out > allowance_mm(self.placement, part) + crate::geom::SAME_MM);
        if inside && slipped {
            // The lines beside it are bitten as deep: no radius mends that.
            return None;
        }
        let way = if inside { -1.0 } else { 1.0 };
        let most = if inside {
            wanted - LEAST_RADIUS_MM
        } else {
            self.job.top.shape.outline().perimeter()
        };
        let clears = |off: f64| {
            let round = CornerCut::Round(wanted + way * off);
            let shape = moved_in_exactly(&self.job.top.shape, &moved, with(round));
            shape.is_some_and(|s| self.clears(&s, corner, &hurt))
        };
        let tried = (1..=RADII_TRIED).map(|i| most * f64::from(i) / f64::from(RADII_TRIED));
        let mut below = 0.0;
        for off in tried.filter(|off| *off > 0.0) {
            if clears(off) {
                let off = least(below, off, clears);
                return Some(with(CornerCut::Round(wanted + way * off)));
            }
            below = off;
        }
        None
    }

    /// Whether the sawn arc at a corner, and the edges beside it, lie on unhurt stone, bites and all.
    fn clears(&self, shape: &Shape, corner: usize, hurt: &Outline) -> bool {
        let Some(Seg::Arc(_)) = shape.corner_seg(corner) else {
            return false;
        };
        let posed = self.posed(shape);
        let allowance = allowance_mm(self.placement, Part::Corner(corner));
        let by: Vec<f64> = posed.parts().iter().map(|_| allowance).collect();
        let Ok(sawn) = posed.outline().offset_each(&by) else {
            return false;
        };
        // Only this corner's arc and its near neighbourhood are its own affair.
        let pieces = sawn.segs().iter().zip(posed.parts());
        let arc = pieces
            .into_iter()
            .find(|(_, p)| **p == Part::Corner(corner));
        let on_stone = |seg: &Seg| {
            let points = seg
                .flattened(crate::geom::FLATTEN_MM)
                .into_iter()
                .chain([seg.end()]);
            points.into_iter().all(|p| hurt.depth(p) >= -SLACK_MM)
        };
        let corners = hurt.segs().iter().map(Seg::start);
        let bites = corners.filter(|p| !self.near_outline(*p));
        let mut bites = bites.filter(|p| sawn.depth(*p) > SLACK_MM);
        arc.is_some_and(|(seg, _)| on_stone(seg)) && bites.next().is_none()
    }

    /// Whether a corner of the bitten stone is one of the unbitten.
    fn near_outline(&self, p: crate::geom::Point) -> bool {
        self.now
            .outline
            .segs()
            .iter()
            .any(|s| s.start().distance(p) <= SLACK_MM)
    }

    fn posed(&self, shape: &Shape) -> Shape {
        shape.posed(self.placement.pose)
    }

    /// Whether the stone holds a top with the unhurt stone that is to be left on each of its edges.
    fn holds(&self, shape: &Shape, settled: &[Settled]) -> bool {
        let sawn = self.sawn(shape, settled);
        sawn.is_some_and(|sawn| {
            self.now.outline.holds(&sawn, SLACK_MM) && self.clear_of_slots(&sawn)
        })
    }

    /// Whether the slots and holes that stand in the waste beside the top do not reach into it.
    fn clear_of_slots(&self, sawn: &Outline) -> bool {
        if self.now.beside_top.is_empty() {
            return true;
        }
        let whole = [Region::solid(sawn.clone())];
        let bitten = boolean::intersection(&whole, &self.now.beside_top);
        let thick = |r: &Region| 2.0 * r.area() / r.outer.perimeter();
        bitten.iter().all(|r| thick(r) <= SLACK_MM)
    }

    /// The outline of the unhurt stone that is wanted: the allowance on every part, less where a part is
    /// not sawn again and has less.
    fn sawn(&self, shape: &Shape, settled: &[Settled]) -> Option<Outline> {
        let posed = self.posed(shape);
        let left = |part: &Part| {
            let whole = allowance_mm(self.placement, *part);
            match part {
                Part::Edge(e) => settled[*e].ready_mm.map_or(whole, |r| r.min(whole)),
                Part::Corner(c) => {
                    let ready = self.ready_corner(*c, settled);
                    ready.map_or(whole, |r| r.min(whole))
                }
            }
        };
        let by: Vec<f64> = posed.parts().iter().map(left).collect();
        let offset = posed.outline().offset_each(&by);
        // Where an arc has less left on it than the edges beside it, the least goes for all.
        let least = by.iter().copied().fold(f64::INFINITY, f64::min);
        offset
            .or_else(|_| posed.outline().offset_each(&vec![least; by.len()]))
            .ok()
    }

    /// The unhurt stone on a rounding or flat that is not sawn again, mm.
    fn ready_corner(&self, corner: usize, settled: &[Settled]) -> Option<f64> {
        let count = self.placement.top.count();
        let part = Part::Corner(corner);
        let face = self.faces.out_mm(part)?;
        let moved = [corner, (corner + count - 1) % count].map(|e| settled[e].moved_mm);
        let stays = moved.iter().all(|m| *m == 0.0) && !self.is_lost(corner);
        let ground = face <= self.as_cut.grind_mm;
        let unhurt = face.min(self.faces.unhurt_mm(self.placement, part));
        let left = allowance_mm(self.placement, part) + unhurt.min(0.0);
        (stays && ground).then_some(left)
    }

    fn finished(&self, shape: &Shape, settled: Vec<Settled>) -> Smaller {
        let count = shape.count();
        let corner_1 = shape.corners()[0].to_vector();
        let edges = settled.iter().enumerate();
        let edges = edges.filter_map(|(e, s)| Some((Part::Edge(e), s.ready_mm?)));
        let corners = (0..count).map(|c| self.ready_corner(c, &settled));
        let corners: Vec<Option<f64>> = corners.collect();
        let rounded = corners.iter().enumerate();
        let rounded = rounded.filter_map(|(c, left)| Some((Part::Corner(c), (*left)?)));
        Smaller {
            ready: edges.chain(rounded).collect(),
            corners_take_off: (0..count)
                .map(|c| {
                    let part = Part::Corner(c);
                    let face = self.faces.out_mm(part)?;
                    corners[c].map(|_| allowance_mm(self.placement, part) + face)
                })
                .collect(),
            shape: shape.posed(Pose::new(0.0, Vector::default() - corner_1)),
            corner_1,
            settled,
        }
    }
}

/// What becomes of an edge that has to move in farther than it would by itself.
fn moved_on(settled: Settled, moved_mm: f64) -> Settled {
    let more = moved_mm - settled.moved_mm;
    if more <= 0.0 {
        return settled;
    }
    Settled {
        moved_mm,
        ready_mm: settled.ready_mm,
        take_off_mm: settled.take_off_mm
            + if settled.ready_mm.is_some() {
                more
            } else {
                0.0
            },
    }
}

/// The least value of a span at which something holds that holds at its upper end and from some value on.
fn least(low: f64, high: f64, holds: impl Fn(f64) -> bool) -> f64 {
    let (mut no, mut yes) = (low, high);
    for _ in 0..HALVINGS {
        let middle = f64::midpoint(no, yes);
        if holds(middle) {
            yes = middle;
        } else {
            no = middle;
        }
    }
    yes
}
