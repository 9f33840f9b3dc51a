//! The cuts in the order they are made: strokes, passes and set-out.
//!
//! | file | operation |
//! |---|---|
//! | [`mod@self`] | the [`Cut`] and the way to it |
//! | [`disc`] | what a disc reaches, and the shape of its cut |
//! | [`passes`] | the depths, one after another |
//! | [`set_out`] | marks and ties from named corners |
//! | [`straight`] | run-off trims |
//! | [`curve`] | arcs as plunges |

pub mod curve;
pub mod disc;
pub mod passes;
pub mod set_out;
pub mod straight;

use serde::{Serialize, Serializer};

use crate::diag::{Finding, Findings};
use crate::geom::{Outline, Point, Seg, Vector};
use crate::job::{Disc, Finish, Job, Part};
use crate::place::Placement;

pub use curve::{CurveSetOut, PivotPlace, Reach, Station};
pub use set_out::{EdgeMark, Tie};
pub use straight::{GuideSide, MarkedLine, RunEnd, SetUp, StraightSetOut};

/// A straight trim or a curve.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum CutKind {
    /// One straight line from edge to edge of the stone.
    Straight,
    /// An arc made of straight plunges.
    Curve,
}

/// One cut.
#[derive(Clone, Debug, Serialize)]
pub struct Cut {
    /// Its place in the order, from 1.
    pub number: usize,
    /// Straight or curve.
    pub kind: CutKind,
    /// The top's edge (`1-2`) or corner (`2`) that it makes.
    pub edge: String,
    /// Enters and leaves through the edge of the stone.
    pub run_off: bool,
    /// The disc.
    pub disc: Disc,
    /// Depth of the last pass, mm.
    pub full_depth: f64,
    /// Stone left on the edge, mm.
    pub allowance: f64,
    /// What is done to the edge afterwards.
    pub finish: Finish,
    /// Length of the sawn face, mm.
    pub length: f64,
    /// Sawn face, mm².
    pub face_mm2: f64,
    /// Time with the disc in the stone, minutes.
    pub minutes: f64,
    /// How it is set out.
    pub set_out: SetOut,
    /// Stone left low down at a stopped end, mm; 0 for a run-off cut.
    pub tail: f64,
    /// Ridge left between plunges, mm; 0 for a straight cut.
    pub cusp: f64,
    /// The depths in order.
    pub passes: Vec<Pass>,
    /// Every movement of the disc in order.
    pub strokes: Vec<Stroke>,
    /// Pieces that come free.
    pub frees: Vec<String>,
    /// What is left to take off by hand.
    pub left_to_remove: Vec<LeftOver>,
}

/// How a cut is set out.
#[derive(Clone, Debug, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum SetOut {
    /// Along a guide.
    Guide(Box<StraightSetOut>),
    /// About a pivot.
    Pivot(Box<CurveSetOut>),
}

/// One depth.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Pass {
    /// From 1.
    pub number: usize,
    /// Depth of the disc's rim below the face, mm.
    pub depth: f64,
}

/// One movement of the disc.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Stroke {
    /// The pass it belongs to.
    pub pass: usize,
    /// A run or a plunge.
    pub kind: StrokeKind,
    /// Centre of the disc at its start, on the mid-plane of the kerf.
    pub from: Point,
    /// Centre of the disc at its end; for a plunge the same.
    pub to: Point,
    /// Direction of the disc.
    #[serde(serialize_with = "in_degrees")]
    pub heading: f64,
    /// Depth of the rim below the face, mm.
    pub depth: f64,
}

/// How the disc moves.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum StrokeKind {
    /// Along the cut at one depth.
    Run,
    /// Straight down.
    Plunge,
}

/// Stone that the disc leaves standing and a hand takes off.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct LeftOver {
    /// What it is: `cusps`.
    pub why: String,
    /// Where.
    pub at: Point,
    /// Its size, mm.
    pub length: f64,
}

// The signature is the one `serialize_with` asks for.
#[allow(clippy::trivially_copy_pass_by_ref)]
fn in_degrees<S: Serializer>(radians: &f64, serializer: S) -> Result<S::Ok, S::Error> {
    serializer.serialize_f64(radians.to_degrees())
}

impl Stroke {
    /// The rectangle this stroke takes out of the stone at `below` mm under the face.
    #[must_use]
    pub fn slot(&self, disc: &Disc, below: f64) -> Vec<Point> {
        let along = Vector::at_angle(self.heading);
        let half = along * disc::half_length(disc, self.depth, below);
        let side = along.left() * (disc.kerf / 2.0);
        let (a, b) = (self.from - half, self.to + half);
        vec![a - side, b - side, b + side, a + side]
    }
}

impl Cut {
    /// What the cut takes out of the face of the stone, as overlapping outlines.
    #[must_use]
    pub fn slots(&self) -> Vec<Outline> {
        self.slots_at(0.0)
    }

    /// What the cut takes out of the stone at `below` mm under the face, as overlapping outlines: the
    /// slots of the last pass, which are the longest.
    #[must_use]
    pub fn slots_at(&self, below: f64) -> Vec<Outline> {
        let last = self.passes.last().map_or(0, |p| p.number);
        self.strokes
            .iter()
            .filter(|s| s.pass == last)
            .filter_map(|s| Outline::polygon(&s.slot(&self.disc, below)).ok())
            .collect()
    }
}

/// Plans every cut: straight trims in the placement's order, then the curves.
///
/// Pieces are not yet known: [`Cut::frees`] is filled by the next stage. The findings hold a stop
/// for each cut that no disc of the kit can make.
#[must_use]
pub fn plan(job: &Job, placement: &Placement) -> (Vec<Cut>, Findings) {
    let mut findings = Findings::default();
    let mut cuts = Vec::new();
    let mut stone = job.slab.shape.outline().clone();
    for trim in &placement.trims {
        let choice = disc::choose(job, CutKind::Straight);
        findings.stops.extend(disc::too_small(&choice));
        if let Some((cut, kept)) = straight::plan(job, placement, trim, &stone, choice.disc) {
            cuts.push(cut);
            stone = kept;
        } else if stone.chord(&trim.face, trim.middle).is_some() {
            let stop = straight::no_room_for_guide(job, placement, trim);
            findings.stops.push(stop);
        }
    }
    for (seg, part) in placement
        .top
        .outline()
        .segs()
        .iter()
        .zip(placement.top.parts())
    {
        if let (Seg::Arc(arc), Part::Corner(corner)) = (seg, part)
            && arc.sweep > 0.0
        {
            let choice = disc::choose(job, CutKind::Curve);
            findings.stops.extend(disc::too_small(&choice));
            let cut = curve::plan(job, placement, *corner, arc, &stone, choice.disc);
            let sawn = placement.sawn_parts.contains(&Part::Corner(*corner));
            if sawn && !cut.strokes.is_empty() {
                findings.append(curve::against_jig(job, &cut));
                cuts.push(cut);
            } else {
                findings.cautions.push(curve::ground_only(&cut));
            }
        }
    }
    for (i, cut) in cuts.iter_mut().enumerate() {
        cut.number = i + 1;
    }
    findings.stops.extend(not_planned(placement));
    findings.stops.dedup_by(same);
    findings.cautions.dedup_by(same);
    (cuts, findings)
}

/// A top that run-off trims and outside curves alone do not make.
fn not_planned(placement: &Placement) -> Option<Finding> {
    let top = &placement.top;
    let inside = (0..top.count()).any(|corner| top.is_inside_corner(corner));
    let bowed = (0..top.count()).any(|edge| !top.is_straight(edge));
    let hollow = |s: &Seg| matches!(s, Seg::Arc(arc) if arc.sweep < 0.0);
    let hollow = top.outline().segs().iter().any(hollow);
    let open = !placement.cutouts.is_empty();
    (inside || bowed || hollow || open).then(|| Finding {
        id: "cuts-not-planned",
        title: "Not every cut of this top is planned".into(),
        detail:
            "Inside corners, hollow or bowed edges and cutouts are not in the list of cuts. Do \
                 not start from this sheet: have them cut by a stone shop, or change the shape."
                .into(),
        source: "limits of this planner".into(),
    })
}

fn same(a: &mut Finding, b: &mut Finding) -> bool {
    a == b
}
