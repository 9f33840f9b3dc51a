//! Where each face lies, and how far in the stone is unhurt.

use crate::cut::kept::Whose;
use crate::geom::{Line, Outline, Point, Seg};
use crate::job::{AsCut, Chip, CornerCut, DeviatingFace, Deviation, Job, Part, Shape};
use crate::place::{EdgeUse, NoFit, Placement};
use crate::words::{Message, Value};

use super::no_way::no_way;
use super::settle::{Edge, settle};

/// One part of the sawn outline that has been cut, and the slip of its face.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Face {
    /// The edge or corner.
    pub part: Part,
    /// Distance outwards from the line to keep where it lies farthest out, mm; negative inside it.
    pub out_mm: f64,
    /// Of a slanting face the same at the start of its edge and at its end.
    pub taper: Option<[f64; 2]>,
}

impl Face {
    /// Distance outwards from the line to keep where it lies farthest in, mm.
    #[must_use]
    pub fn least_mm(&self) -> f64 {
        self.taper
            .map_or(self.out_mm, |[start, end]| start.min(end))
    }
}

/// A part of the top's outline or of an opening's.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct On {
    /// Whose it is.
    pub whose: Whose,
    /// The edge or corner.
    pub part: Part,
}

/// Whose a part is, in words behind its name: nothing for the top's own.
#[must_use]
pub fn of_words(whose: Whose) -> String {
    let number = whose.cutout_number();
    number.map_or_else(String::new, |n| format!(" of cutout {n}"))
}

/// What is known of every face.
#[derive(Clone, Debug)]
pub struct Faces {
    /// The faces of the top that have been cut.
    pub done: Vec<Face>,
    /// The same of each opening, in the order of the cutouts.
    pub openings: Vec<Vec<Face>>,
    /// Chips, and the part each is on, in the order given.
    pub chips: Vec<(Chip, On)>,
}

impl Faces {
    /// Lays what came out against the lines that were wanted.
    #[must_use]
    pub fn of(job: &Job, as_cut: &AsCut, placement: &Placement) -> Self {
        let faces = |whose: Whose, done: &[Part], slips: &[DeviatingFace]| -> Vec<Face> {
            let face = |part: &Part| {
                let on = On { whose, part: *part };
                let slip = slips.iter().find(|s| s.part == *part);
                let taper = slip.and_then(|slip| match slip.came {
                    Deviation::Taper(ends) => Some(ends),
                    _ => None,
                });
                Face {
                    part: *part,
                    out_mm: slip.map_or(0.0, |slip| out_of_line(placement, on, slip.came)),
                    taper,
                }
            };
            done.iter().map(face).collect()
        };
        let opening = |cutout: usize| {
            let begun = as_cut.openings.iter().find(|o| o.cutout == cutout);
            begun.map_or_else(Vec::new, |o| {
                faces(Whose::Cutout(cutout), &o.done, &o.slips)
            })
        };
        let chips = as_cut.chips.iter();
        Self {
            done: faces(Whose::Top, &as_cut.done, &as_cut.slips),
            openings: (0..job.top.cutouts.len()).map(opening).collect(),
            chips: chips.map(|c| (*c, nearest_part(job, c))).collect(),
        }
    }

    /// Where a face lies, mm outwards from its line to keep, into the waste; nothing when it has not
    /// been cut.
    #[must_use]
    pub fn face_mm(&self, on: On) -> Option<f64> {
        self.face(on).map(|f| f.out_mm)
    }

    /// The face of a part; nothing when it has not been cut.
    #[must_use]
    pub fn face(&self, on: On) -> Option<&Face> {
        let faces = match on.whose {
            Whose::Top => &self.done,
            Whose::Cutout(i) => self.openings.get(i)?,
        };
        faces.iter().find(|f| f.part == on.part)
    }

    /// The same faces as they are once the edges named have been ground down to their lines to keep.
    #[must_use]
    pub fn ground(&self, edges: &[usize]) -> Self {
        let mut ground = self.clone();
        for face in &mut ground.done {
            if matches!(face.part, Part::Edge(edge) if edges.contains(&edge)) {
                (face.out_mm, face.taper) = (0.0, None);
            }
        }
        ground
    }

    /// Edges that came out too far to be left standing beside a curve that is still to be cut, and not far
    /// enough to be sawn again: the curve's waste would hang on to the strip, so that is ground off first.
    #[must_use]
    pub fn ground_first(&self, job: &Job, as_cut: &AsCut, placement: &Placement) -> Vec<usize> {
        let top = &placement.top;
        let kerf = job
            .discs
            .iter()
            .map(|d| d.kerf)
            .fold(f64::INFINITY, f64::min);
        let to_cut = |corner: usize| {
            let round = matches!(top.corner_cuts()[corner], CornerCut::Round(_));
            round && self.out_mm(Part::Corner(corner)).is_none()
        };
        let strip = |edge: &usize| self.out_mm(Part::Edge(*edge)).is_some_and(|out| out > kerf);
        let edges = (0..top.count()).filter(strip);
        let beside = edges.filter(|e| to_cut(*e) || to_cut((*e + 1) % top.count()));
        let settled = |edge: usize| {
            let unhurt = self.unhurt_beside_curves(placement, edge, &[]);
            let known = self.edge(placement, edge, unhurt);
            settle(known, as_cut.grind_mm, job.place.least_strip_mm)
        };
        beside.filter(|e| settled(*e).ready_mm.is_some()).collect()
    }

    /// How far out a face is unhurt by itself and the chips on it, mm; infinite when nothing is known.
    #[must_use]
    pub fn unhurt_of(&self, placement: &Placement, on: On) -> f64 {
        let face = self.face_mm(on);
        let depths = self.chips.iter().filter_map(|(chip, at)| {
            if *at == on {
                return Some(face.unwrap_or(0.0) - chip.deep_mm);
            }
            self.round_the_corner(placement, chip, *at, on)
        });
        let own = self.face(on).map_or(f64::INFINITY, Face::least_mm);
        depths.fold(own, f64::min)
    }

    /// A chip at an inside corner reaches past the line of the other edge as well: how far, mm outwards.
    fn round_the_corner(&self, placement: &Placement, chip: &Chip, at: On, on: On) -> Option<f64> {
        let (Part::Edge(own), Part::Edge(edge)) = (at.part, on.part) else {
            return None;
        };
        let shape = shape_of(placement, on.whose)?;
        let count = shape.count();
        let shared = if (own + 1) % count == edge {
            edge
        } else if (edge + 1) % count == own {
            own
        } else {
            return None;
        };
        let inside = shape.is_inside_corner(shared) == (on.whose == Whose::Top);
        if at.whose != on.whose || !inside || !shape.is_straight(edge) {
            return None;
        }
        let face = sawn_seg(placement, on)?;
        let line = Line::through(face.start(), face.end());
        let notch = notch(placement, self, chip, at)?;
        let reach = notch.segs().iter().map(|s| line.left_of(s.start()));
        let deepest = reach.fold(0.0, f64::max);
        (deepest > crate::geom::SAME_MM).then_some(-deepest)
    }

    /// Where a part's face lies, mm outwards from its line to keep; nothing when it has not been cut.
    #[must_use]
    pub fn out_mm(&self, part: Part) -> Option<f64> {
        self.done.iter().find(|f| f.part == part).map(|f| f.out_mm)
    }

    /// How far out a part of the top is unhurt by its own face and chips, mm; infinite when nothing is
    /// known.
    #[must_use]
    pub fn unhurt_mm(&self, placement: &Placement, part: Part) -> f64 {
        self.unhurt_of(
            placement,
            On {
                whose: Whose::Top,
                part,
            },
        )
    }

    /// How far out an edge is unhurt when curves beside it that slipped inwards have bitten into it as
    /// well: the slots of an outside curve run on along the edge from the curve's ends, and a hollow
    /// that is too large crosses its line. Those of the corners named do not count, nor do scoops,
    /// whose circle lies beyond the edge.
    #[must_use]
    pub fn unhurt_beside_curves(
        &self,
        placement: &Placement,
        edge: usize,
        except: &[usize],
    ) -> f64 {
        let top = &placement.top;
        let beside = [edge, (edge + 1) % top.count()].into_iter();
        let round = |c: &usize| matches!(top.corner_cuts()[*c], CornerCut::Round(_));
        let hurt = beside
            .filter(|c| round(c) && !except.contains(c))
            .filter_map(|c| {
                let part = Part::Corner(c);
                if top.is_inside_corner(c) {
                    return Some(self.unhurt_mm(placement, part));
                }
                self.out_mm(part)
            });
        let own = self.unhurt_mm(placement, Part::Edge(edge));
        hurt.filter(|out| *out < 0.0).fold(own, f64::min)
    }

    /// An edge as it has to be settled.
    #[must_use]
    pub fn edge(&self, placement: &Placement, edge: usize, unhurt_mm: f64) -> Edge {
        let part = Part::Edge(edge);
        let whose = Whose::Top;
        let taper = self.face(On { whose, part }).and_then(|f| f.taper);
        Edge {
            taper_mm: taper.map_or(0.0, |[start, end]| (start - end).abs()),
            allowance_mm: allowance_mm(placement, Part::Edge(edge)),
            face_mm: self.out_mm(Part::Edge(edge)).or(gap_mm(placement, edge)),
            unhurt_mm,
        }
    }

    /// Whether what was cut can be followed from here.
    ///
    /// # Errors
    /// A curve whose neighbours are not cut, or an edge that was never to be sawn.
    pub fn can_be_followed(&self, placement: &Placement) -> Result<(), NoFit> {
        let faults = self
            .done
            .iter()
            .filter_map(|f| self.fault(placement, f.part));
        let reasons: Vec<Message> = faults.collect();
        match reasons.first() {
            None => Ok(()),
            Some(first) => Err(NoFit {
                reasons: reasons.clone(),
                ..no_way(placement, first.clone())
            }),
        }
    }

    fn fault(&self, placement: &Placement, part: Part) -> Option<Message> {
        let top = &placement.top;
        let name = top.part_name(part);
        let count = top.count();
        match part {
            Part::Edge(edge) => matches!(placement.uses[edge], EdgeUse::Flush { .. })
                .then(|| Message::new("repair-never-sawn", [("edge", Value::name(name))])),
            Part::Corner(corner) => {
                let open: Vec<Value> = [(corner + count - 1) % count, corner]
                    .into_iter()
                    .filter(|e| matches!(placement.uses[*e], EdgeUse::Sawn { .. }))
                    .filter(|e| self.out_mm(Part::Edge(*e)).is_none())
                    .map(|e| Value::name(top.edge_name(e)))
                    .collect();
                (!open.is_empty()).then(|| {
                    let corner = ("corner", Value::name(name));
                    Message::new("repair-trims-first", [corner, ("edges", Value::List(open))])
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

/// The figure of the top or of an opening where it lies.
fn shape_of(placement: &Placement, whose: Whose) -> Option<&Shape> {
    match whose {
        Whose::Top => Some(&placement.top),
        Whose::Cutout(i) => Some(&placement.cutouts.get(i)?.shape),
    }
}

/// The part of the top or of an opening that a chip is nearest to.
fn nearest_part(job: &Job, chip: &Chip) -> On {
    let openings = job.top.cutouts.iter().enumerate();
    let openings = openings.map(|(i, c)| (Whose::Cutout(i), &c.shape));
    let all = std::iter::once((Whose::Top, &job.top.shape)).chain(openings);
    let pieces = all.flat_map(|(whose, shape)| {
        let pieces = shape.outline().segs().iter().zip(shape.parts());
        pieces.map(move |(seg, part)| (seg.distance(chip.at), On { whose, part: *part }))
    });
    let nearest = pieces.min_by(|a, b| a.0.total_cmp(&b.0));
    nearest.map_or(
        On {
            whose: Whose::Top,
            part: Part::Edge(0),
        },
        |(_, on)| on,
    )
}

/// How far out of its line to keep a face came, mm; kept stone lies outside the circle of a hollow.
fn out_of_line(placement: &Placement, on: On, came: Deviation) -> f64 {
    match (came, sawn_seg(placement, on)) {
        (Deviation::Short(by), _) => -by,
        (Deviation::Over(by), _) => by,
        (Deviation::Taper([start, end]), _) => start.max(end),
        (Deviation::Radius(radius), Some(Seg::Arc(arc))) => {
            (radius - arc.radius) * arc.sweep.signum()
        }
        (Deviation::Radius(_), _) => 0.0,
    }
}

/// The piece of the sawn outline that belongs to a part, kept stone to its left.
#[must_use]
pub fn sawn_seg(placement: &Placement, on: On) -> Option<Seg> {
    match on.whose {
        Whose::Top => {
            let at = placement.sawn_parts.iter().position(|p| *p == on.part)?;
            placement.sawn.segs().get(at).copied()
        }
        Whose::Cutout(i) => {
            let opening = placement.cutouts.get(i)?;
            let at = opening.shape.parts().iter().position(|p| *p == on.part)?;
            opening.sawn.segs().get(at).map(Seg::reversed)
        }
    }
}

/// The notch of a chip in the slab's frame: from the edge of the stone to its depth, square to the edge.
#[must_use]
pub fn notch(placement: &Placement, faces: &Faces, chip: &Chip, on: On) -> Option<Outline> {
    let at = placement.pose.apply(chip.at);
    let seg = sawn_seg(placement, on)?;
    let share = seg.nearest(at);
    let along = seg.heading(share);
    let inwards = along.left();
    // From a little outside the face, so that the notch is open to it.
    let face = faces.face_mm(on).unwrap_or(0.0);
    let outer = seg.at(share) - inwards * (face + OUTSIDE_MM);
    let inner = seg.at(share) - inwards * (face - chip.deep_mm);
    let half = along * (chip.across_mm / 2.0);
    let corners: [Point; 4] = [outer - half, outer + half, inner + half, inner - half];
    Outline::polygon(&corners).ok()
}

/// How far a notch reaches out over the face, mm: nothing depends on it.
const OUTSIDE_MM: f64 = 0.01;
