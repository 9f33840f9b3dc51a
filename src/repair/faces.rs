//! Where each face lies, and how far in the stone is unhurt.

use crate::geom::{Outline, Point, Seg};
use crate::job::{AsCut, Came, Chip, Job, Part};
use crate::place::{EdgeUse, NoFit, Placement};

use super::no_way;
use super::settle::Edge;

/// One part of the sawn outline that has been cut, and the slip of its face.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Face {
    /// The edge or corner.
    pub part: Part,
    /// Distance outwards from the line to keep, mm; negative inside it.
    pub out_mm: f64,
}

/// What is known of every face.
#[derive(Clone, Debug)]
pub struct Faces {
    /// The faces that have been cut.
    pub done: Vec<Face>,
    /// The part each chip is on, in the order given.
    pub chipped: Vec<Part>,
    chips: Vec<Chip>,
}

impl Faces {
    /// Lays what came out against the lines that were wanted.
    #[must_use]
    pub fn of(job: &Job, as_cut: &AsCut, placement: &Placement) -> Self {
        let done = as_cut.done.iter().map(|part| {
            let slip = as_cut.slips.iter().find(|s| s.part == *part);
            let out_mm = slip.map_or(0.0, |slip| out_of_line(placement, *part, slip.came));
            Face {
                part: *part,
                out_mm,
            }
        });
        let top = &job.top.shape;
        let on = |chip: &Chip| {
            let pieces = top.outline().segs().iter().zip(top.parts());
            pieces
                .min_by(|a, b| a.0.distance(chip.at).total_cmp(&b.0.distance(chip.at)))
                .map_or(Part::Edge(0), |(_, part)| *part)
        };
        Self {
            done: done.collect(),
            chipped: as_cut.chips.iter().map(on).collect(),
            chips: as_cut.chips.clone(),
        }
    }

    /// Where a part's face lies, mm outwards from its line to keep; nothing when it has not been cut.
    #[must_use]
    pub fn out_mm(&self, part: Part) -> Option<f64> {
        self.done.iter().find(|f| f.part == part).map(|f| f.out_mm)
    }

    /// How far out a part is unhurt by its own face and chips, mm; infinite when nothing is known.
    #[must_use]
    pub fn unhurt_mm(&self, part: Part) -> f64 {
        let face = self.out_mm(part);
        let own = self.chipped.iter().zip(&self.chips);
        let chips = own
            .filter(|(on, _)| **on == part)
            .map(|(_, chip)| face.unwrap_or(0.0) - chip.deep_mm);
        chips.fold(face.unwrap_or(f64::INFINITY), f64::min)
    }

    /// How far out an edge is unhurt when the slots of a curve that slipped inwards have bitten into it
    /// as well: they run on along the edge from the curve's ends.
    #[must_use]
    pub fn unhurt_beside_curves(&self, placement: &Placement, edge: usize) -> f64 {
        let count = placement.top.count();
        let beside = [edge, (edge + 1) % count].into_iter();
        let slips = beside
            .filter(|c| matches!(placement.top.corner_seg(*c), Some(Seg::Arc(_))))
            .filter_map(|c| self.out_mm(Part::Corner(c)))
            .filter(|out| *out < 0.0);
        slips.fold(self.unhurt_mm(Part::Edge(edge)), f64::min)
    }

    /// An edge as it has to be settled.
    #[must_use]
    pub fn edge(&self, placement: &Placement, edge: usize, unhurt_mm: f64) -> Edge {
        Edge {
            allowance_mm: allowance_mm(placement, Part::Edge(edge)),
            face_mm: self.out_mm(Part::Edge(edge)).or(gap_mm(placement, edge)),
            unhurt_mm,
        }
    }

    /// Whether what was cut can be followed from here.
    ///
    /// # Errors
    /// A cut that stops at an inside corner, a hollow, a curve whose neighbours are not cut, or an edge
    /// that was never to be sawn.
    pub fn can_be_followed(&self, placement: &Placement) -> Result<(), NoFit> {
        let faults = self
            .done
            .iter()
            .filter_map(|f| self.fault(placement, f.part));
        let reasons: Vec<String> = faults.collect();
        if reasons.is_empty() {
            return Ok(());
        }
        Err(NoFit {
            reasons,
            ..no_way(placement, String::new())
        })
    }

    fn fault(&self, placement: &Placement, part: Part) -> Option<String> {
        let top = &placement.top;
        let name = top.part_name(part);
        let count = top.count();
        let ends = |edge: usize| [edge, (edge + 1) % count];
        match part {
            Part::Edge(edge) => {
                let inside = ends(edge).into_iter().any(|c| top.is_inside_corner(c));
                let hollow = matches!(top.edge_seg(edge), Some(Seg::Arc(a)) if a.sweep < 0.0);
                if inside || hollow {
                    return Some(format!(
                        "as_cut: edge {name} is hollow or ends at an inside corner; what happened there \
                         cannot be planned again from here. Measure the stone and describe it as a \
                         slab of its own"
                    ));
                }
                matches!(placement.uses[edge], EdgeUse::Flush { .. }).then(|| {
                    format!(
                        "as_cut: edge {name} lies on an edge of the slab and was never to be cut; \
                         leave it out of as_cut.done and as_cut.edge"
                    )
                })
            }
            Part::Corner(corner) => {
                let hollow = matches!(top.corner_seg(corner), Some(Seg::Arc(a)) if a.sweep < 0.0);
                if hollow {
                    return Some(format!(
                        "as_cut: the hollow at corner {name} cannot be planned again from here. Measure \
                         the stone and describe it as a slab of its own"
                    ));
                }
                let open: Vec<String> = [(corner + count - 1) % count, corner]
                    .into_iter()
                    .filter(|e| matches!(placement.uses[*e], EdgeUse::Sawn { .. }))
                    .filter(|e| self.out_mm(Part::Edge(*e)).is_none())
                    .map(|e| top.edge_name(e))
                    .collect();
                (!open.is_empty()).then(|| {
                    format!(
                        "as_cut: corner {name} is said to be cut, but not edge {}; trims come before \
                         curves. Put it into as_cut.done",
                        open.join(" and ")
                    )
                })
            }
        }
    }
}

/// How far the slab's edge stands over an edge of the top that lies on it, mm.
#[must_use]
pub fn gap_mm(placement: &Placement, edge: usize) -> Option<f64> {
    match placement.uses[edge] {
        EdgeUse::Flush { gap_mm, .. } => Some(gap_mm),
        _ => None,
    }
}

/// Stone that was to be left on a part, mm.
#[must_use]
pub fn allowance_mm(placement: &Placement, part: Part) -> f64 {
    match part {
        Part::Edge(edge) => match placement.uses[edge] {
            // The roundings at its ends are all there is of it.
            EdgeUse::UsedUp => placement.corner_allowances[edge],
            used => used.allowance_mm(),
        },
        Part::Corner(corner) => placement.corner_allowances[corner],
    }
}

fn out_of_line(placement: &Placement, part: Part, came: Came) -> f64 {
    match came {
        Came::Short(by) => -by,
        Came::Over(by) => by,
        Came::Radius(radius) => {
            let sawn = sawn_seg(placement, part);
            match sawn {
                Some(Seg::Arc(arc)) => radius - arc.radius,
                _ => 0.0,
            }
        }
    }
}

/// The piece of the sawn outline that belongs to a part.
#[must_use]
pub fn sawn_seg(placement: &Placement, part: Part) -> Option<Seg> {
    let at = placement.sawn_parts.iter().position(|p| *p == part)?;
    placement.sawn.segs().get(at).copied()
}

/// The notch of a chip in the slab's frame: from the edge of the stone to its depth, square to the edge.
#[must_use]
pub fn notch(placement: &Placement, faces: &Faces, chip: &Chip, part: Part) -> Option<Outline> {
    let at = placement.pose.apply(chip.at);
    let seg = sawn_seg(placement, part)?;
    let share = seg.nearest(at);
    let along = seg.heading(share);
    let inwards = along.left();
    // From a little outside the face, so that the notch is open to it.
    let face = faces.out_mm(part).unwrap_or(0.0);
    let outer = seg.at(share) - inwards * (face + OUTSIDE_MM);
    let inner = seg.at(share) - inwards * (face - chip.deep_mm);
    let half = along * (chip.across_mm / 2.0);
    let corners: [Point; 4] = [outer - half, outer + half, inner + half, inner - half];
    Outline::polygon(&corners).ok()
}

/// How far a notch reaches out over the face, mm: nothing depends on it.
const OUTSIDE_MM: f64 = 0.01;
