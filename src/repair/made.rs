//! What the cuts that have been made took out of the stone, where they stop inside it: slots, hollows,
//! openings, core holes.
//!
//! The waste of cuts that belong together comes free when the last of them is made. Until then their slots
//! stand in the stone.

use crate::cut::kept::{BoundaryPiece, Kept, Ring, Whose};
use crate::cut::resumed::SERVES_MM;
use crate::cut::{self, Because, Cut, CutKind, course};
use crate::geom::{Arc, Line, Outline, Seg, Vector};
use crate::job::{AsCut, Drilled, Job, Part};
use crate::place::Placement;

use super::faces::{Faces, On, of_words};

/// A slot and a hollow that touch are joined over this length, mm: nothing depends on it.
const JOINED_MM: f64 = 0.5;

/// What has been taken out, in the slab's frame.
#[derive(Clone, Debug, Default)]
pub struct Made {
    /// Edges whose trims ran off the slab.
    pub run_off: Vec<usize>,
    /// Tools' marks round waste that has come free: it is gone as well.
    pub gone: Vec<Outline>,
    /// Slots and holes of the top's own boundary whose waste is still there.
    pub of_top: Vec<Outline>,
    /// The same of openings.
    pub of_openings: Vec<Outline>,
    /// Every core hole that has been drilled.
    pub drilled: Vec<Drilled>,
    /// Cuts that are made and whose run-outs still stand at the underside, by their edges.
    pub run_outs: Vec<String>,
}

impl Made {
    /// Follows the plan of the job as far as it has been carried out.
    #[must_use]
    pub fn of(job: &Job, as_cut: &AsCut, placement: &Placement, faces: &Faces) -> Self {
        let (cuts, ..) = cut::plan(job, placement);
        let kept = Kept::of(job, placement);
        let mut made = Self::default();
        for (ring, whose) in kept.rings.iter().map(|r| (r, r.whose)) {
            let begun = match whose {
                Whose::Top => !as_cut.done.is_empty(),
                Whose::Cutout(i) => as_cut.openings.iter().any(|o| o.cutout == i),
            };
            if begun {
                let mut along = Along {
                    ring,
                    cuts: &cuts,
                    faces,
                    holes: Vec::new(),
                    grind_mm: as_cut.grind_mm.max(SERVES_MM),
                    kerf_mm: job.discs.iter().map(|d| d.kerf).fold(0.0, f64::max),
                };
                along.holes = along.drilled();
                along.followed(&mut made);
            }
        }
        made
    }
}

/// One boundary and the cuts that make it.
struct Along<'a> {
    ring: &'a Ring,
    cuts: &'a [Cut],
    faces: &'a Faces,
    holes: Vec<Drilled>,
    kerf_mm: f64,
    grind_mm: f64,
}

impl Along<'_> {
    fn followed(&self, made: &mut Made) {
        let inner: Vec<usize> = match self.ring.whose {
            Whose::Top => (0..self.ring.pieces.len())
                .filter(|p| self.stops(*p))
                .collect(),
            Whose::Cutout(_) => (0..self.ring.pieces.len()).collect(),
        };
        if self.ring.whose == Whose::Top {
            let run_off = self.ring.pieces.iter().enumerate();
            let run_off = run_off.filter(|(i, p)| !inner.contains(i) && self.face(p).is_some());
            made.run_off
                .extend(run_off.filter_map(|(_, p)| match p.part() {
                    Part::Edge(edge) => Some(edge),
                    Part::Corner(_) => None,
                }));
        }
        let groups = match self.ring.whose {
            Whose::Top => course::groups(self.ring, &inner),
            Whose::Cutout(_) => vec![inner.clone()],
        };
        let nearest = |hole: &Drilled| {
            let off = |p: &usize| self.ring.pieces[*p].seg.distance(hole.at);
            inner
                .iter()
                .copied()
                .min_by(|a, b| off(a).total_cmp(&off(b)))
        };
        for group in groups {
            let whole = group.iter().all(|p| self.is_made(*p));
            let slots = group.iter().flat_map(|p| self.taken(*p));
            let own = self
                .holes
                .iter()
                .filter(|h| nearest(h).is_some_and(|p| group.contains(&p)));
            let own = own.filter_map(|h| Outline::circle(h.at, h.diameter / 2.0).ok());
            let taken = slots.chain(own);
            match self.ring.whose {
                _ if whole => made.gone.extend(taken),
                Whose::Top => made.of_top.extend(taken),
                Whose::Cutout(_) => made.of_openings.extend(taken),
            }
            if !whole {
                let cut = group
                    .iter()
                    .filter(|p| self.face(&self.ring.pieces[**p]).is_some());
                let names = cut.filter_map(|p| {
                    let piece = &self.ring.pieces[*p];
                    let run_out = self.cut_of(piece).is_some_and(|c| c.run_out > 0.0);
                    run_out.then(|| format!("{}{}", piece.name, of_words(self.ring.whose)))
                });
                made.run_outs.extend(names);
            }
        }
        made.drilled.extend(&self.holes);
    }

    fn drilled(&self) -> Vec<Drilled> {
        // Those that part the piece at the underside lie in the waste alone.
        self.own(CutKind::Core)
            .filter(|c| c.because != Because::PartsUnderside)
            .flat_map(|c| self.holes_of(c))
            .collect()
    }

    fn own(&self, kind: CutKind) -> impl Iterator<Item = &Cut> {
        let number = self.ring.whose.cutout_number();
        self.cuts
            .iter()
            .filter(move |c| c.kind == kind && c.cutout == number)
    }

    /// The cut that makes a piece.
    fn cut_of(&self, piece: &BoundaryPiece) -> Option<&Cut> {
        let kind = match piece.seg {
            Seg::Line(..) => CutKind::Straight,
            Seg::Arc(_) => CutKind::Curve,
        };
        self.own(kind).find(|c| c.edge == piece.name)
    }

    /// The holes of a cut that have been drilled: those at corners come first of all, a row of holes in
    /// place of a saw cut when its side is made.
    fn holes_of(&self, cut: &Cut) -> Vec<Drilled> {
        let row = self.ring.pieces.iter().find(|p| p.name == cut.edge);
        let row = row.filter(|p| matches!(p.seg, Seg::Line(..)));
        if row.is_some_and(|p| self.face(p).is_none()) {
            return Vec::new();
        }
        let each = cut.holes.iter().map(|h| Drilled {
            at: h.at,
            diameter: h.diameter,
        });
        each.collect()
    }

    fn face(&self, piece: &BoundaryPiece) -> Option<f64> {
        let whose = self.ring.whose;
        self.faces.face_mm(On {
            whose,
            part: piece.part(),
        })
    }

    /// Whether a piece of the top's boundary is made by a cut that stops inside the stone.
    fn stops(&self, piece: usize) -> bool {
        let own = &self.ring.pieces[piece];
        if own.hollow().is_some() {
            return true;
        }
        let straight = matches!(own.seg, Seg::Line(..)) && own.sawn;
        straight && !self.cut_of(own).is_some_and(|c| c.run_off) && {
            let ends = [self.ring.before(piece), piece];
            let inside = ends
                .iter()
                .any(|p| self.ring.joint_after(*p) == cut::kept::Joint::Inside);
            let beside = [self.ring.before(piece), self.ring.after(piece)];
            inside
                || beside
                    .iter()
                    .any(|p| self.ring.pieces[*p].hollow().is_some())
        }
    }

    /// Whether nothing is left to cut along a piece.
    fn is_made(&self, piece: usize) -> bool {
        let piece = &self.ring.pieces[piece];
        let by_holes = || {
            let mut names = self.own(CutKind::Core).flat_map(|c| c.edge.split(", "));
            piece.hollow().is_some() && names.any(|n| piece.name.split(", ").any(|own| own == n))
        };
        !piece.sawn || self.face(piece).is_some() || by_holes()
    }

    /// What the cut along a piece has taken out.
    fn taken(&self, piece: usize) -> Vec<Outline> {
        let own = &self.ring.pieces[piece];
        let Some(out) = self.face(own) else {
            return Vec::new();
        };
        match own.seg {
            Seg::Line(a, b) => {
                let aside = (b - a).unit().right() * out;
                let moved = crate::geom::Pose::new(0.0, aside);
                let slots = self.cut_of(own).map(Cut::slots).unwrap_or_default();
                if slots.is_empty() {
                    return band(a + aside, b + aside, self.kerf_mm)
                        .into_iter()
                        .collect();
                }
                let bridges = self.bridges(piece, &Line::through(a, b), out);
                let slots = slots.iter().map(|s| s.posed(moved));
                slots.chain(bridges).collect()
            }
            Seg::Arc(arc) => {
                let round = self.round(&arc, out);
                let joints =
                    [arc.start, arc.start + arc.sweep].map(|at| self.joined(&arc, at, out));
                round
                    .into_iter()
                    .chain(joints.into_iter().flatten())
                    .collect()
            }
        }
    }

    /// Where a slot lies so far inside its line that it misses the core holes at its ends: the bridge of
    /// stone between the two, which a hand breaks out before the waste can come free. At a corner of the
    /// top whose other edge is cut already, and too much to be ground off stands there, the other cut
    /// is sawn on to the new corner as well.
    fn bridges(&self, piece: usize, face: &Line, out: f64) -> Vec<Outline> {
        if -out < self.kerf_mm / 2.0 {
            return Vec::new();
        }
        let ends = [
            (
                self.ring.before(piece),
                face.foot(self.ring.pieces[piece].seg.start()),
            ),
            (
                self.ring.after(piece),
                face.foot(self.ring.pieces[piece].seg.end()),
            ),
        ];
        let beside = self.holes.iter().filter(|h| {
            let off = -face.left_of(h.at) - h.diameter / 2.0;
            off.abs() <= JOINED_MM
        });
        let aside = face.along.right();
        let bridge = |h: &Drilled| {
            let foot = face.foot(h.at);
            let away = |end: &&(usize, f64)| (end.1 - foot).abs();
            let end = ends.iter().min_by(|a, b| away(a).total_cmp(&away(b)))?;
            let sawn_on =
                self.ring.whose == Whose::Top && -out > self.grind_mm && self.is_made(end.0);
            let to = if sawn_on { end.1 } else { foot };
            let (low, high) = (foot.min(to) - self.kerf_mm, foot.max(to) + self.kerf_mm);
            let (low, high) = match (sawn_on, to > foot) {
                (true, true) => (low, to),
                (true, false) => (to, high),
                _ => (low, high),
            };
            let at = |along: f64, off: f64| face.at(along) + aside * off;
            let corners = [
                at(low, self.kerf_mm),
                at(high, self.kerf_mm),
                at(high, out),
                at(low, out),
            ];
            Outline::polygon(&corners).ok()
        };
        beside.filter_map(bridge).collect()
    }

    /// A ring beside an arc's face, on the waste side, as wide as the kerf beside the line to keep, so that
    /// it meets the slots of its neighbours; a whole circle is gone right through.
    fn round(&self, arc: &Arc, out: f64) -> Option<Outline> {
        let side = arc.sweep.signum();
        let near = arc.radius + side * out;
        if arc.sweep.abs() >= std::f64::consts::TAU - 1e-9 {
            return Outline::circle(arc.centre, near).ok();
        }
        let beyond = arc.radius + side * (self.kerf_mm + out.max(0.0));
        let far = beyond.max(near / 2.0);
        let (near, far) = (
            Arc {
                radius: near,
                ..*arc
            },
            Arc {
                radius: far,
                ..*arc
            },
        );
        let (near, far) = (Seg::Arc(near), Seg::Arc(far));
        let segs = vec![
            near.reversed(),
            Seg::Line(near.start(), far.start()),
            far,
            Seg::Line(far.end(), near.end()),
        ];
        // Counter-clockwise: the kept stone's side is that of the clockwise arc.
        Outline::new(segs.clone()).ok().or_else(|| {
            let back: Vec<Seg> = segs.iter().rev().map(Seg::reversed).collect();
            Outline::new(back).ok()
        })
    }

    /// A wedge on the waste side where an arc and the slot beside it touch, lest rounding part them.
    fn joined(&self, arc: &Arc, at: f64, out: f64) -> Option<Outline> {
        let side = arc.sweep.signum();
        let outwards = Vector::at_angle(at) * side;
        let tip = arc.centre + Vector::at_angle(at) * (arc.radius + side * out);
        let far = tip + outwards * (self.kerf_mm / 2.0);
        let along = outwards.left() * JOINED_MM;
        Outline::polygon(&[tip, far - along, far + along])
            .or_else(|_| Outline::polygon(&[tip, far + along, far - along]))
            .ok()
    }
}

/// The slot of a straight cut between two points of its face.
fn band(a: crate::geom::Point, b: crate::geom::Point, kerf_mm: f64) -> Option<Outline> {
    let out = Line::through(a, b).along.right() * kerf_mm;
    Outline::polygon(&[a + out, b + out, b, a]).ok()
}
