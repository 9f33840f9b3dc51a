//! The stone as it is now: its outline, and the slab it makes.

use crate::cut::disc;
use crate::cut::kept::Whose;
use crate::geom::{Arc, Line, Outline, Point, Pose, Region, Seg, Side, Vector, boolean};
use crate::job::{
    AsCut, Begun, CornerCut, Drilled, EdgeState, Flaw, FlawPlace, Job, Naming, Part, Shape, Slab,
};
use crate::place::Placement;

use super::faces::{Faces, On, notch, sawn_seg};
use super::made::Made;

/// Farther than any slab reaches from a curve, mm.
const FAR_MM: f64 = 30_000.0;
/// A piece of the stone's boundary lies on the old slab's edge when its ends and its middle come so
/// near, mm: a hundred times the rounding of a boolean.
const ON_EDGE_MM: f64 = 1e-3;

/// The stone as it is now.
#[derive(Clone, Debug)]
pub struct Now {
    /// Its outline in the old slab's frame.
    pub outline: Outline,
    /// The same where the slots of curves that slipped inwards have bitten into the edges beside them.
    pub bitten: Outline,
    /// From the old slab's frame to that of the stone as it is now.
    pub frame: StoneFrame,
    /// What stands in it already, in the old slab's frame.
    pub begun: Begun,
    /// Of that, what belongs to cuts of the top's own boundary.
    pub beside_top: Vec<Outline>,
    /// Cuts that are made and whose run-outs still stand at the underside, by their edges.
    pub run_outs: Vec<String>,
}

/// The frame of the stone as it is now.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct StoneFrame {
    /// Carries the old slab's frame into it.
    pub pose: Pose,
    /// Whether corner A and the direction of AB are still those of the old slab.
    pub kept: bool,
}

impl StoneFrame {
    /// Where a top lies in the new frame whose corner 1 has moved by `moved` in its own frame.
    #[must_use]
    pub fn then(&self, top: Pose, moved: Vector) -> Pose {
        let origin = self.pose.apply(top.apply(Point::ORIGIN + moved));
        Pose::new(self.pose.turn + top.turn, origin.to_vector())
    }
}

/// The line of a face that came out slanting.
fn slanting(placement: &Placement, faces: &Faces, part: Part) -> Option<Line> {
    let on = On {
        whose: Whose::Top,
        part,
    };
    let [start, end] = faces.face(on)?.taper?;
    let seg = sawn_seg(placement, on)?;
    let out = seg.heading(0.5).right();
    Some(Line::through(
        seg.start() + out * start,
        seg.end() + out * end,
    ))
}

impl Now {
    /// Takes the waste of every cut that has been made off the slab. Nothing when no stone would be left
    /// under the top.
    #[must_use]
    pub fn of(job: &Job, as_cut: &AsCut, placement: &Placement, faces: &Faces) -> Option<Self> {
        let made = Made::of(job, as_cut, placement, faces);
        let mut stone = job.slab.shape.outline().clone();
        for trim in &placement.trims {
            let ran_off = match trim.part {
                Part::Edge(edge) => made.run_off.contains(&edge),
                Part::Corner(_) => true,
            };
            if let Some(out) = faces.out_mm(trim.part).filter(|_| ran_off) {
                let face = slanting(placement, faces, trim.part)
                    .unwrap_or_else(|| trim.face.shifted_right(out));
                let chord = stone.chord(&face, trim.middle);
                stone = chord.map_or(stone, |c| c.left);
            }
        }
        let middle = inner_point(placement)?;
        let mut gone: Vec<Outline> = curves(placement, faces)
            .filter_map(|(arc, out)| beyond(&arc, out))
            .collect();
        gone.extend(made.gone);
        let whole = kept(&stone, &gone, middle)?;
        let outline = whole.outer;
        let bites = curves(placement, faces).filter(|(_, out)| *out < 0.0);
        let bites: Vec<Outline> = bites
            .flat_map(|(arc, out)| end_slots(job, &arc, out))
            .collect();
        let bitten = if bites.is_empty() {
            outline.clone()
        } else {
            kept(&outline, &bites, middle)?.outer
        };
        let frame = frame(&outline, job.slab.shape.outline());
        let (of_openings, beside): (Vec<Outline>, Vec<Outline>) = whole
            .holes
            .into_iter()
            .partition(|hole| is_opening(placement, hole));
        let beside_top: Vec<Outline> = beside.into_iter().chain(made.of_top).collect();
        let slots = beside_top.iter().chain(&made.of_openings).cloned();
        Some(Self {
            outline,
            bitten,
            frame,
            begun: Begun {
                taken: of_openings.into_iter().chain(slots).collect(),
                drilled: made.drilled,
            },
            beside_top,
            run_outs: made.run_outs,
        })
    }

    /// The stone round a curve: bitten by slots, and by the chips on the curve itself.
    #[must_use]
    pub fn hurt_at(&self, placement: &Placement, faces: &Faces, on: On) -> Option<Outline> {
        let own = faces.chips.iter().filter(|(_, at)| *at == on);
        let notches = own.filter_map(|(chip, at)| notch(placement, faces, chip, *at));
        let notches: Vec<Outline> = notches.collect();
        if notches.is_empty() {
            return Some(self.bitten.clone());
        }
        Some(kept(&self.bitten, &notches, inner_point(placement)?)?.outer)
    }

    /// The stone as a slab in its own frame: every piece of its boundary an edge with a letter, its
    /// chips and the bites of slots flaws. Nothing when its outline cannot be named.
    #[must_use]
    pub fn slab(&self, job: &Job, placement: &Placement, faces: &Faces) -> Option<Slab> {
        let pieces = lettered(&self.outline, self.frame);
        let edges = pieces.iter().map(|p| state(job, p)).collect();
        let corners = pieces.iter().map(|p| self.frame.pose.apply(p.start()));
        let bows = pieces.iter().map(bow).collect();
        let cuts = vec![CornerCut::Sharp; pieces.len()];
        let shape = Shape::bowed(Naming::Letters, corners.collect(), cuts, bows).ok()?;
        let flaws = job.slab.flaws.iter().filter_map(|f| self.carried(f));
        let chips = self.chips(placement, faces);
        let posed = |o: &Outline| o.posed(self.frame.pose);
        let drilled = self.begun.drilled.iter().map(|d| Drilled {
            at: self.frame.pose.apply(d.at),
            ..*d
        });
        Some(Slab {
            begun: Begun {
                taken: self.begun.taken.iter().map(posed).collect(),
                drilled: drilled.collect(),
            },
            shape,
            edges,
            undescribed: Vec::new(),
            flaws: flaws.chain(chips).collect(),
            vein_deg: job
                .slab
                .vein_deg
                .map(|v| v + self.frame.pose.turn.to_degrees()),
            ..job.slab.clone()
        })
    }

    /// A flaw in the new frame, if any of it is still on the stone.
    fn carried(&self, flaw: &Flaw) -> Option<Flaw> {
        let to = |p: &Point| self.frame.pose.apply(*p);
        let on = |p: &Point| self.outline.side(*p) != Side::Outside;
        let (still, place) = match &flaw.place {
            FlawPlace::Spot { at, across_mm } => (
                self.outline.depth(*at) > -(across_mm / 2.0 + flaw.clear_mm),
                FlawPlace::Spot {
                    at: to(at),
                    across_mm: *across_mm,
                },
            ),
            FlawPlace::Line(points) => (
                points.iter().any(on),
                FlawPlace::Line(points.iter().map(to).collect()),
            ),
            FlawPlace::Area(area) => (
                area.flattened().iter().any(on),
                FlawPlace::Area(area.posed(self.frame.pose)),
            ),
        };
        still.then(|| Flaw {
            place,
            ..flaw.clone()
        })
    }

    fn chips(&self, placement: &Placement, faces: &Faces) -> Vec<Flaw> {
        let notches = faces.chips.iter();
        let notches = notches.filter_map(|(chip, on)| notch(placement, faces, chip, *on));
        notches
            .map(|notch| Flaw {
                what: "chip".into(),
                place: FlawPlace::Area(notch.posed(self.frame.pose)),
                clear_mm: 0.0,
            })
            .collect()
    }
}

/// The outside curves that have been cut, as wanted, and how far out each came.
fn curves<'a>(placement: &'a Placement, faces: &'a Faces) -> impl Iterator<Item = (Arc, f64)> + 'a {
    let seg = |part| {
        let whose = Whose::Top;
        sawn_seg(placement, On { whose, part })
    };
    faces
        .done
        .iter()
        .filter_map(move |face| match seg(face.part) {
            Some(Seg::Arc(arc)) if arc.sweep > 0.0 => Some((arc, face.out_mm)),
            _ => None,
        })
}

/// Everything beyond a curve between its two end radii.
fn beyond(arc: &Arc, out_mm: f64) -> Option<Outline> {
    let ring = |radius: f64| Arc { radius, ..*arc };
    let (near, far) = (ring(arc.radius + out_mm), ring(arc.radius + FAR_MM));
    let (near, far) = (Seg::Arc(near), Seg::Arc(far));
    Outline::new(vec![
        Seg::Line(near.start(), far.start()),
        far,
        Seg::Line(far.end(), near.end()),
        near.reversed(),
    ])
    .ok()
}

/// The slots of the plunges at both ends of a curve, which run on along its neighbours. The disc is not
/// said: the one of the kit with the longest slot.
fn end_slots(job: &Job, arc: &Arc, out_mm: f64) -> Vec<Outline> {
    let depth = job.stone.thickness.most + job.passes.through_mm;
    let halves = job.discs.iter().map(|d| disc::half_length(d, depth, 0.0));
    let half = halves.fold(0.0, f64::max);
    let kerf = job.discs.iter().map(|d| d.kerf).fold(0.0, f64::max);
    [arc.start, arc.start + arc.sweep]
        .into_iter()
        .filter_map(|angle| {
            let out = Vector::at_angle(angle);
            let near = arc.centre + out * (arc.radius + out_mm);
            let (along, far) = (out.left() * half, near + out * kerf);
            Outline::polygon(&[near - along, near + along, far + along, far - along]).ok()
        })
        .collect()
}

/// Whether a hole in the stone is one of the top's openings.
fn is_opening(placement: &Placement, hole: &Outline) -> bool {
    let whole = [Region::solid(hole.clone())];
    let openings: Vec<Outline> = placement.cutouts.iter().map(|c| c.sawn.clone()).collect();
    !boolean::intersection(&whole, &openings).is_empty()
}

/// The part of a stone that holds a point when cutters have been taken from it.
fn kept(stone: &Outline, cutters: &[Outline], inside: Point) -> Option<Region> {
    let parts = boolean::difference(&[Region::solid(stone.clone())], cutters);
    parts.into_iter().find(|p| p.side(inside) == Side::Inside)
}

/// A point as deep in the finished top as can be found by going in from its edges, or its balance point.
fn inner_point(placement: &Placement) -> Option<Point> {
    let top = placement.finished();
    let depth = |p: &Point| {
        let edges = top.boundaries().flat_map(Outline::segs);
        edges.map(|s| s.distance(*p)).fold(f64::INFINITY, f64::min)
    };
    let segs = top.outer.segs().iter();
    let going_in = segs.flat_map(|s| {
        let inwards = s.heading(0.5).left();
        WAYS_IN_MM.map(|mm| s.at(0.5) + inwards * mm)
    });
    let points = going_in.chain([top.centroid()]);
    let inside = points.filter(|p| top.side(*p) == Side::Inside);
    inside.max_by(|a, b| depth(a).total_cmp(&depth(b)))
}

/// So far in from the middle of an edge a point of the kept stone is looked for, mm.
const WAYS_IN_MM: [f64; 6] = [5.0, 15.0, 40.0, 100.0, 200.0, 400.0];

/// An edge so long, as a share of the longest, may carry the frame (judgement).
const NEARLY_LONGEST: f64 = 0.6;

/// The old frame while corner A and the direction of AB are still there, else one along the long straight
/// edge of the stone that runs most nearly as AB did.
fn frame(stone: &Outline, slab: &Outline) -> StoneFrame {
    let (a, along) = (slab.segs()[0].start(), slab.segs()[0].heading(0.0));
    let same = |s: &&Seg| {
        let first = s.start().distance(a) <= ON_EDGE_MM;
        first && matches!(s, Seg::Line(..)) && s.heading(0.0).dot(along) > 1.0 - 1e-9
    };
    if stone.segs().iter().any(|s| same(&s)) {
        return StoneFrame {
            pose: Pose::default(),
            kept: true,
        };
    }
    let straight = || stone.segs().iter().filter(|s| matches!(s, Seg::Line(..)));
    let longest = straight().map(Seg::length).fold(0.0, f64::max);
    let long = straight().filter(|s| s.length() >= NEARLY_LONGEST * longest);
    let like_ab = |s: &&Seg| s.heading(0.0).dot(along);
    let base = long.max_by(|a, b| like_ab(a).total_cmp(&like_ab(b)));
    let base = base.unwrap_or(&stone.segs()[0]);
    let turn = -(base.end() - base.start()).angle();
    let turned = Pose::new(turn, Vector::default()).apply(base.start());
    StoneFrame {
        pose: Pose::new(turn, Point::ORIGIN - turned),
        kept: false,
    }
}

/// The boundary from corner A on: straight runs in one piece, arcs of half a circle or more in parts.
fn lettered(stone: &Outline, frame: StoneFrame) -> Vec<Seg> {
    let mut pieces: Vec<Seg> = Vec::new();
    for seg in stone.segs() {
        match (pieces.last_mut(), seg) {
            (Some(Seg::Line(a, b)), Seg::Line(_, c)) if on_line(*a, *b, *c) => *b = *c,
            _ => pieces.extend(below_half(seg)),
        }
    }
    if let (Some(Seg::Line(a, b)), Some(Seg::Line(_, c))) = (pieces.last(), pieces.first())
        && pieces.len() > 3
        && on_line(*a, *b, *c)
    {
        let joined = Seg::Line(*a, *c);
        pieces.pop();
        pieces[0] = joined;
    }
    let from_a = |p: &Seg| frame.pose.apply(p.start()).distance(Point::ORIGIN);
    let first =
        (0..pieces.len()).min_by(|i, j| from_a(&pieces[*i]).total_cmp(&from_a(&pieces[*j])));
    pieces.rotate_left(first.unwrap_or(0));
    pieces
}

fn on_line(a: Point, b: Point, c: Point) -> bool {
    let line = Line::through(a, c);
    line.left_of(b).abs() <= ON_EDGE_MM && (b - a).dot(c - b) > 0.0
}

/// An arc in parts that an edge's bow can stand for.
fn below_half(seg: &Seg) -> Vec<Seg> {
    match seg {
        Seg::Arc(arc) if arc.sweep.abs() > 3.0 => {
            let thirds = [0.0, 1.0 / 3.0, 2.0 / 3.0, 1.0];
            thirds.windows(2).map(|w| seg.part(w[0], w[1])).collect()
        }
        _ => vec![*seg],
    }
}

/// The rise of a piece over its chord, mm: + outwards.
fn bow(seg: &Seg) -> f64 {
    match seg {
        Seg::Line(..) => 0.0,
        Seg::Arc(arc) => {
            // r·(1 − cos(Δ/2)) = 2r·sin²(Δ/4), which keeps its digits on a long radius.
            2.0 * arc.radius * (arc.sweep / 4.0).sin().powi(2) * arc.sweep.signum()
        }
    }
}

/// What a piece of the boundary can be used for: the old slab's edges as they were, a sawn face as
/// sawn, a curve not at all.
fn state(job: &Job, piece: &Seg) -> EdgeState {
    if matches!(piece, Seg::Arc(_)) {
        return EdgeState::Rough;
    }
    let slab = &job.slab.shape;
    let lies_on = |seg: &Seg| {
        [0.0, 0.5, 1.0]
            .iter()
            .all(|s| seg.distance(piece.at(*s)) <= ON_EDGE_MM)
    };
    let pieces = slab.outline().segs().iter().zip(slab.parts());
    let on = pieces.into_iter().find(|(seg, _)| lies_on(seg));
    match on {
        Some((_, Part::Edge(edge))) => job
            .slab
            .edges
            .get(*edge)
            .copied()
            .unwrap_or(EdgeState::Rough),
        Some((_, Part::Corner(_))) => EdgeState::Rough,
        None => EdgeState::Sawn,
    }
}
