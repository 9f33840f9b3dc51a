//! A practice cut and, in a job with curves, three practice plunges in waste, before the first real cut.
//!
//! They give the jigs' offsets and the cutting rate. They lie inside one offcut, the largest that falls
//! early, never in an opening: at least the least strip from the edges of the slab and from every flaw, as
//! far from the kept stone as there is room, where the guide has stone to lie on and the clamps reach it, and
//! where no guide of a later cut comes to lie and no machine runs if there is such a place.

use serde::Serialize;

use crate::cut::field::BETWEEN_MM;
use crate::geom::{Outline, Point, SAME_MM, Seg, Vector};
use crate::job::{Disc, Job};

use super::disc::{self, Task, full_depth, half_length};
use super::field::{Boundary, Field, Ground, PracticeRoom, guide_of};
use super::set_out::point_ties;
use super::{Cut, CutKind, Pass, Stroke, StrokeKind, Tie, passes};

/// Wanted between practice strokes and the top with its allowances, mm (judgement).
pub const CLEAR_MM: f64 = 50.0;
/// Least that is accepted where there is no more room, mm (judgement: a slip of the hand).
const LEAST_CLEAR_MM: f64 = 10.0;
/// Length of the practice cut in the face, mm (judgement: long enough to time).
const LENGTH_MM: f64 = 200.0;
/// Least way the disc runs in it, mm (judgement).
const LEAST_RUN_MM: f64 = 80.0;
/// The practice goes through so many depths: the score and steps (judgement).
const DEPTHS: usize = 3;
/// Places tried each way across an offcut.
const PLACES: u32 = 16;
/// Plunges.
const PLUNGES: u32 = 3;

/// The practice before the first real cut.
#[derive(Clone, Debug, Serialize)]
pub struct Practice {
    /// The cut; nothing when no offcut has room for it: another piece of the same stone is used.
    pub cut: Option<PracticeMark>,
    /// The plunges; nothing when the job has no curves, or no offcut has room for them.
    pub plunges: Option<PracticeMark>,
}

/// A practice cut or a group of practice plunges.
#[derive(Clone, Debug, Serialize)]
pub struct PracticeMark {
    /// The piece of waste it lies in.
    pub piece: String,
    /// How far it stays from the top with its allowances.
    pub clearance: Clearance,
    /// Ends of the line that the near face is held to: of the cut, or of the first plunge.
    pub ends: [MarkedEnd; 2],
    /// Length in the face from end to end, mm.
    #[serde(rename = "length_mm")]
    pub length: f64,
    /// Depth at the end, mm.
    #[serde(rename = "depth_mm")]
    pub depth: f64,
    /// From one plunge's near face to the next one's, mm; 0 for the cut.
    #[serde(rename = "apart_mm")]
    pub apart: f64,
    /// Sawn face of one cut or plunge, mm².
    pub face_mm2: f64,
    /// What the round disc takes off the length at the ends, mm: (length − this) × depth is the sawn face.
    #[serde(rename = "ends_lost_mm")]
    pub ends_lost: f64,
    /// The disc.
    pub disc: Disc,
    /// The depths in order.
    pub passes: Vec<Pass>,
    /// Every movement of the disc in order.
    pub strokes: Vec<Stroke>,
}

/// How far practice stays from the top.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Clearance {
    /// As far as wanted or farther, mm.
    #[serde(rename = "wanted-mm")]
    Wanted(f64),
    /// Nearer than wanted, the farthest there is room for, mm.
    #[serde(rename = "narrow-mm")]
    Narrow(f64),
}

impl Clearance {
    /// The distance, mm.
    #[must_use]
    pub const fn mm(self) -> f64 {
        match self {
            Self::Wanted(mm) | Self::Narrow(mm) => mm,
        }
    }
}

/// An end of a line to mark.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct MarkedEnd {
    /// Where it is.
    pub at: Point,
    /// Ties to it: two, and one or two more as checks.
    pub ties: Vec<Tie>,
}

/// A piece of waste to practise in.
#[derive(Clone, Debug)]
pub struct Offcut<'a> {
    /// Its name.
    pub name: &'a str,
    /// Its boundaries: outer ones counter-clockwise, holes clockwise.
    pub rings: &'a [Vec<Seg>],
    /// Its area, mm².
    pub area_mm2: f64,
    /// The cut that frees it.
    pub after_cut: usize,
}

/// Finds the places; `sawn` are the boundaries of the top with its allowances: its own and its openings'.
#[must_use]
pub fn plan(job: &Job, cuts: &[Cut], sawn: &[Outline], offcuts: &[Offcut<'_>]) -> Practice {
    let order = early_first(cuts, offcuts);
    let ground = |guides| Ground {
        job,
        slab: Boundary::of(job.slab.shape.outline()),
        sawn: sawn.iter().map(Boundary::of).collect(),
        flaws: job.slab.flaws.iter().map(|f| f.place.bounds()).collect(),
        guides,
    };
    let off_guides = ground(cuts.iter().filter_map(guide_of).collect());
    let place = |wanted: &WantedPractice<'_>, taken: Option<&Field>| {
        let found = wanted.place(&off_guides, &order, taken);
        found.or_else(|| wanted.place(&ground(Vec::new()), &order, taken))
    };
    let cut = WantedPractice::cut(job, disc::choose(job, Task::RunOff).disc);
    let cut_at = place(&cut, None);
    let taken = cut_at.as_ref().map(|p| p.field.clone());
    let has_curves = cuts.iter().any(|c| c.kind == CutKind::Curve);
    let plunges = WantedPractice::plunges(job, disc::choose(job, Task::Outside).disc);
    let plunges_at = has_curves
        .then(|| place(&plunges, taken.as_ref()))
        .flatten();
    Practice {
        cut: cut_at.map(|place| cut.marked(job, &place)),
        plunges: plunges_at.map(|place| plunges.marked(job, &place)),
    }
}

/// Offcuts that no opening drops, those of straight cuts before those of curves, the largest first.
fn early_first<'p, 'o>(cuts: &[Cut], offcuts: &'p [Offcut<'o>]) -> Vec<&'p Offcut<'o>> {
    let freed_by = |o: &Offcut<'_>| cuts.iter().find(|c| c.number == o.after_cut);
    let outside = |o: &&Offcut<'_>| freed_by(o).is_some_and(|c| c.cutout.is_none());
    let late = |o: &Offcut<'_>| freed_by(o).is_some_and(|c| c.kind == CutKind::Curve);
    let mut order: Vec<&Offcut<'o>> = offcuts.iter().filter(outside).collect();
    order.sort_by(|a, b| {
        let larger = b.area_mm2.total_cmp(&a.area_mm2);
        late(a).cmp(&late(b)).then(larger)
    });
    order
}

/// What is wanted: a field of a length along the disc and a width across it.
struct WantedPractice<'a> {
    disc: &'a Disc,
    passes: Vec<Pass>,
    /// Way the disc's centre runs, mm; 0 for plunges.
    run: f64,
    /// Half the disc's cut in the face at the last depth, mm.
    half: f64,
    count: u32,
}

/// A place found for a field.
struct PracticePlace<'o> {
    field: Field,
    clearance: f64,
    offcut: &'o str,
}

impl<'a> WantedPractice<'a> {
    fn cut(job: &Job, disc: &'a Disc) -> Self {
        let passes = first(job.passes.score_mm, job.passes.step_mm, full_depth(job));
        let half = half_length(disc, last(&passes), 0.0);
        Self {
            run: (LENGTH_MM - 2.0 * half).max(LEAST_RUN_MM),
            disc,
            passes,
            half,
            count: 1,
        }
    }

    fn plunges(job: &Job, disc: &'a Disc) -> Self {
        let passes = first(
            job.passes.score_mm,
            job.passes.plunge_step_mm,
            full_depth(job),
        );
        Self {
            half: half_length(disc, last(&passes), 0.0),
            run: 0.0,
            disc,
            passes,
            count: PLUNGES,
        }
    }

    fn length(&self) -> f64 {
        self.run + 2.0 * self.half
    }

    fn apart(&self) -> f64 {
        self.disc.kerf + BETWEEN_MM
    }

    fn width(&self) -> f64 {
        self.disc.kerf + f64::from(self.count - 1) * self.apart()
    }

    /// The place in the first offcut that is clear enough; else the one with the largest clearance.
    fn place<'o>(
        &self,
        ground: &Ground<'_>,
        order: &[&Offcut<'o>],
        taken: Option<&Field>,
    ) -> Option<PracticePlace<'o>> {
        let mut widest: Option<PracticePlace<'o>> = None;
        for offcut in order {
            let Some((clearance, field)) = self.best_in(ground, offcut, taken) else {
                continue;
            };
            let better = widest.as_ref().is_none_or(|w| clearance > w.clearance);
            if better {
                widest = Some(PracticePlace {
                    field,
                    clearance,
                    offcut: offcut.name,
                });
            }
            if clearance >= CLEAR_MM {
                break;
            }
        }
        widest.filter(|p| p.clearance >= LEAST_CLEAR_MM)
    }

    /// The place in one offcut farthest from the top, the first of those that are equally far.
    ///
    /// Fields are tried by how far they can be at most, until none that is left can be farther.
    fn best_in(
        &self,
        ground: &Ground<'_>,
        offcut: &Offcut<'_>,
        taken: Option<&Field>,
    ) -> Option<(f64, Field)> {
        let (outer, holes) = sorted(offcut.rings);
        let least_mm = ground.job.place.least_strip_mm;
        let mut best: Option<(f64, Field)> = None;
        for ring in &outer {
            let room = PracticeRoom {
                ring: Boundary::of(ring),
                holes: holes.iter().map(Boundary::of).collect(),
                least_mm,
            };
            for along in directions(ring) {
                let fields = self.fields(ring, along, least_mm).into_iter();
                let mut fields: Vec<(f64, usize, Field)> = fields
                    .enumerate()
                    .map(|(i, field)| (ground.clearance_at_most(&field), i, field))
                    .collect();
                fields.sort_by(|a, b| b.0.total_cmp(&a.0));
                let farther = |than: f64| best.as_ref().is_none_or(|b| than > b.0 + SAME_MM);
                let mut found: Option<(f64, usize, Field)> = None;
                for (at_most, i, field) in fields {
                    let so_far = found.as_ref().map(|f| (f.0, f.1));
                    if !farther(at_most) || so_far.is_some_and(|(mm, _)| at_most < mm - SAME_MM) {
                        break;
                    }
                    let free = room.holds(&field)
                        && taken.is_none_or(|t| field.is_apart_from(t))
                        && ground.is_sound(&field)
                        && ground.is_off_guides(&field, offcut.after_cut)
                        && (self.run == 0.0 || ground.has_guide(&field));
                    if !free {
                        continue;
                    }
                    let clearance = ground.clearance(&field);
                    let better = so_far.is_none_or(|(mm, first)| {
                        clearance > mm + SAME_MM || clearance > mm - SAME_MM && i < first
                    });
                    if better && farther(clearance) {
                        found = Some((clearance, i, field));
                    }
                }
                best = found.map(|(mm, _, field)| (mm, field)).or(best);
            }
        }
        best
    }

    /// Fields laid over the box round an offcut in a direction.
    fn fields(&self, ring: &Outline, along: Vector, least_mm: f64) -> Vec<Field> {
        let right = along.right();
        let span = |by: Vector| {
            let feet = ring.flattened().into_iter().map(|p| p.to_vector().dot(by));
            feet.fold((f64::INFINITY, f64::NEG_INFINITY), |s, f| {
                (s.0.min(f), s.1.max(f))
            })
        };
        let (long, wide) = (self.length(), self.width());
        let steps = |(low, high): (f64, f64), size: f64| -> Vec<f64> {
            let (low, high) = (low + least_mm, high - least_mm - size);
            if high < low {
                return Vec::new();
            }
            let at = |i: u32| low + (high - low) * f64::from(i) / f64::from(PLACES);
            (0..=PLACES).map(at).collect()
        };
        let (ups, rights) = (steps(span(along), long), steps(span(right), wide));
        let pairs = ups
            .iter()
            .flat_map(|u| rights.iter().map(move |r| (*u, *r)));
        pairs
            .map(|(u, r)| Field {
                from: Point::ORIGIN + along * u + right * r,
                along,
                long,
                wide,
            })
            .collect()
    }

    fn marked(&self, job: &Job, place: &PracticePlace<'_>) -> PracticeMark {
        let field = &place.field;
        let (a, b) = (field.from, field.from + field.along * field.long);
        let depth = last(&self.passes);
        let face_mm2 = self.face_mm2(depth);
        let end = |at: Point| MarkedEnd {
            at,
            ties: point_ties(&job.slab.shape, at),
        };
        PracticeMark {
            piece: place.offcut.into(),
            clearance: if place.clearance >= CLEAR_MM {
                Clearance::Wanted(place.clearance)
            } else {
                Clearance::Narrow(place.clearance)
            },
            ends: [end(a), end(b)],
            length: field.long,
            depth,
            apart: if self.count > 1 { self.apart() } else { 0.0 },
            face_mm2,
            ends_lost: field.long - face_mm2 / depth,
            disc: self.disc.clone(),
            strokes: self.strokes(field),
            passes: self.passes.clone(),
        }
    }

    /// The run's rectangle and the segment of the disc below the face.
    fn face_mm2(&self, depth: f64) -> f64 {
        let radius = self.disc.diameter / 2.0;
        let up = (radius - depth).max(0.0);
        let segment = radius * radius * (up / radius).acos() - up * self.half;
        self.run * depth + segment
    }

    fn strokes(&self, field: &Field) -> Vec<Stroke> {
        let right = field.along.right();
        let kind = if self.run > 0.0 {
            StrokeKind::Run
        } else {
            StrokeKind::Plunge
        };
        let stroke = |pass: &Pass, i: u32| {
            let across = self.disc.kerf / 2.0 + f64::from(i) * self.apart();
            let from = field.from + field.along * self.half + right * across;
            Stroke {
                pass: pass.number,
                kind,
                from,
                to: from + field.along * self.run,
                heading: field.along.angle(),
                depth: pass.depth,
            }
        };
        let passes = self.passes.iter();
        passes
            .flat_map(|pass| (0..self.count).map(move |i| stroke(pass, i)))
            .collect()
    }
}

/// The first depths of a cut.
fn first(score: f64, step: f64, full: f64) -> Vec<Pass> {
    passes::depths(score, step, full)
        .into_iter()
        .take(DEPTHS)
        .collect()
}

fn last(passes: &[Pass]) -> f64 {
    passes.last().map_or(0.0, |p| p.depth)
}

/// Outer boundaries and holes of a piece.
fn sorted(rings: &[Vec<Seg>]) -> (Vec<Outline>, Vec<Outline>) {
    let (mut outer, mut holes) = (Vec::new(), Vec::new());
    for ring in rings {
        let Some(base) = ring.first().map(Seg::start) else {
            continue;
        };
        let area: f64 = ring.iter().map(|s| s.moments(base).0).sum();
        if let Ok(outline) = Outline::new(ring.clone()) {
            if area > 0.0 {
                outer.push(outline);
            } else {
                holes.push(outline);
            }
        }
    }
    (outer, holes)
}

/// Directions along the straight edges of a piece, and along x, each once.
fn directions(ring: &Outline) -> Vec<Vector> {
    let mut found = vec![Vector::new(1.0, 0.0), Vector::new(0.0, 1.0)];
    // The longest first; a ragged edge of many slots has little to offer.
    let mut lines: Vec<&Seg> = ring
        .segs()
        .iter()
        .filter(|s| matches!(s, Seg::Line(..)))
        .collect();
    lines.sort_by(|a, b| b.length().total_cmp(&a.length()));
    for seg in lines.into_iter().take(4) {
        let along = seg.heading(0.0);
        if found.iter().all(|f: &Vector| f.cross(along).abs() > 1e-6) {
            found.push(along);
        }
    }
    found
}
