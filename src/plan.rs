//! The finished answer as plain data: what the sheet prints and what `--json` writes.
//!
//! Lengths mm, areas mm², masses kg, angles degrees counter-clockwise from AB, all places in the
//! slab's frame. Nothing is rounded. Nothing is computed here that a stage has not computed.

use serde::Serialize;

use crate::cut::{self, Cut, CutKind};
use crate::diag::{Finding, Findings};
use crate::geom::{Outline, Point, Region, Seg, Vector};
use crate::handle::{self, Handling, Load};
use crate::hazard::{self, Hazards, Work};
use crate::job::{
    Assumption, DustMethod, EdgeState, Finish, Flaw, FlawPlace, Job, Range, Shape, SupportPlace,
    Thickness,
};
use crate::piece::{self, BalanceSheet, Piece, Remaining, Stones};
use crate::place::{self, EdgeUse, NoFit, Placement};
use crate::tables::Source;
use crate::units::{LengthUnit, Mass, MassRange};

/// The plan of a whole job.
#[derive(Clone, Debug, Serialize)]
pub struct Plan {
    /// Version of the planner.
    pub kerfwright: &'static str,
    /// What is printed in the title block.
    pub job: JobNote,
    /// The stone.
    pub stone: StoneNote,
    /// Values that the job file left open.
    pub assumed: Vec<Assumption>,
    /// The job must not start while one of these stands.
    pub stops: Vec<Finding>,
    /// To be read and heeded.
    pub cautions: Vec<Finding>,
    /// The slab.
    pub slab: SlabNote,
    /// Where the top lies on it.
    pub placement: PlacementNote,
    /// The finished top.
    pub top: TopNote,
    /// Core holes; none in a plan of run-off cuts.
    pub core_holes: Vec<CoreHole>,
    /// The cuts in order.
    pub cuts: Vec<Cut>,
    /// Waste pieces in the order they come free.
    pub pieces: Vec<Piece>,
    /// The kept stone after each cut.
    pub remaining: Vec<Remaining>,
    /// Where the slab's area went.
    pub balance_sheet: BalanceSheet,
    /// Sums over all cuts.
    pub totals: Totals,
    /// Machine, jig and passes as the sheet shows them.
    pub kit: Kit,
    /// What the top stands on.
    pub supports: Vec<SupportNote>,
    /// Lifting, carrying, bending.
    pub handling: Handling,
    /// Dust, vibration, noise, disc, electricity.
    pub hazards: Hazards,
    /// Every published figure that was used.
    pub sources: Vec<Source>,
}

/// The title block.
#[derive(Clone, Debug, Serialize)]
pub struct JobNote {
    /// Name of the job.
    pub title: String,
    /// Region code.
    pub region: String,
    /// Region in words.
    pub region_name: String,
    /// Date, or empty.
    pub date: String,
    /// For whom.
    pub made_for: String,
    /// By whom.
    pub made_by: String,
    /// A remark.
    pub note: String,
    /// The unit printed first.
    pub units: LengthUnit,
}

/// The stone.
#[derive(Clone, Debug, Serialize)]
pub struct StoneNote {
    /// Its name.
    pub name: String,
    /// Density, kg/m³.
    pub density: Range,
    /// Flexural strength, `MPa`.
    pub strength_mpa: f64,
    /// Where that figure comes from.
    pub strength_source: String,
    /// The strength is divided by this.
    pub safety_factor: f64,
    /// Crystalline silica, share of mass.
    pub silica: Range,
    /// Weight of the slab on a scale.
    pub weighed: Option<Mass>,
    /// Weight of the slab by the seller's word.
    pub said: Option<Mass>,
}

/// A corner with its name.
#[derive(Clone, Debug, Serialize)]
pub struct NamedPoint {
    /// The name.
    pub name: String,
    /// Where it is; for a rounded or clipped corner, as if it were sharp.
    pub at: Point,
    /// The same for a sharp corner; the middle of the arc or flat for a rounded or clipped one.
    pub edge: Point,
}

/// The slab.
#[derive(Clone, Debug, Serialize)]
pub struct SlabNote {
    /// Its outline.
    pub outline: Outline,
    /// Its corners.
    pub corners: Vec<NamedPoint>,
    /// Its edges.
    pub edges: Vec<SlabEdge>,
    /// Its flaws.
    pub flaws: Vec<FlawNote>,
    /// Area.
    pub area_mm2: f64,
    /// Thickness readings.
    pub thickness: Thickness,
    /// Mass.
    pub mass: MassRange,
    /// Balance point.
    pub balance: Point,
    /// Tape error.
    pub tape: f64,
    /// Direction of the vein.
    pub vein: Option<f64>,
}

/// An edge of the slab.
#[derive(Clone, Debug, Serialize)]
pub struct SlabEdge {
    /// Its name.
    pub name: String,
    /// What it can be used for.
    pub state: EdgeState,
    /// Length between sharp corners.
    pub length: f64,
}

/// A flaw.
#[derive(Clone, Debug, Serialize)]
pub struct FlawNote {
    /// What it is.
    pub what: String,
    /// The flaw itself: a circle or an area closed, a line open.
    pub path: Vec<Seg>,
    /// Clearance all round.
    pub clear: f64,
    /// The edge of the clearance, as closed rings that may overlap.
    pub clearance: Vec<Vec<Seg>>,
}

/// Where the top lies.
#[derive(Clone, Debug, Serialize)]
pub struct PlacementNote {
    /// Turn of the top.
    pub turn: f64,
    /// Where the origin of the top's frame lies.
    pub shift: Vector,
    /// Sawing work, curves counted by their factor.
    pub work_mm2: f64,
    /// The top's edges that lie on an edge of the slab.
    pub flush: Vec<String>,
    /// Least distance to spare.
    pub least_spare: f64,
}

/// The finished top.
#[derive(Clone, Debug, Serialize)]
pub struct TopNote {
    /// Its outline.
    pub outline: Outline,
    /// Cutouts; none in a plan of run-off cuts.
    pub cutouts: Vec<Vec<Seg>>,
    /// The outline with the allowances, as the saw leaves it.
    pub sawn_outline: Outline,
    /// Its corners.
    pub corners: Vec<NamedPoint>,
    /// Its edges.
    pub edges: Vec<TopEdge>,
    /// Area.
    pub area_mm2: f64,
    /// Mass.
    pub mass: MassRange,
    /// Balance point.
    pub balance: Point,
    /// Length and width of the box around it in its own frame.
    pub size: [f64; 2],
}

/// An edge of the top.
#[derive(Clone, Debug, Serialize)]
pub struct TopEdge {
    /// Its name.
    pub name: String,
    /// What is done to it.
    pub finish: Finish,
    /// Length between sharp corners.
    pub length: f64,
    /// The slab's edge it lies on, when it does.
    pub flush_with: Option<String>,
    /// Stone left by the saw.
    pub allowance: f64,
}

/// A core hole.
#[derive(Clone, Debug, Serialize)]
pub struct CoreHole {
    /// The cut it belongs to.
    pub cut: usize,
    /// Its centre.
    pub at: Point,
    /// The bit's diameter.
    pub diameter: f64,
}

/// Sums over all cuts.
#[derive(Clone, Copy, Debug, Serialize)]
pub struct Totals {
    /// Straight trims.
    pub straight_cuts: usize,
    /// Curves.
    pub curves: usize,
    /// Length sawn.
    pub length_mm: f64,
    /// Sawn face.
    pub face_mm2: f64,
    /// Stone turned to dust or slurry, mm³.
    pub kerf_volume_mm3: f64,
    /// Time with the disc in the stone.
    pub sawing_minutes: f64,
    /// Setting-up time.
    pub set_up_minutes: f64,
}

/// Machine, jig and passes.
#[derive(Clone, Debug, Serialize)]
pub struct Kit {
    /// Speed without load, turns per minute.
    pub rpm: f64,
    /// Between machine and stone.
    pub plate: f64,
    /// From the guide's edge to the near face.
    pub guide_offset: f64,
    /// Length of the guide.
    pub guide_length: f64,
    /// From the arm mark to the near face.
    pub jig_offset: f64,
    /// Sawn face a minute, cm².
    pub rate: f64,
    /// The rate is a guess.
    pub rate_is_guess: bool,
    /// Through the stone.
    pub through: f64,
    /// Curves take this many times longer.
    pub curve_factor: f64,
    /// How the dust is held down.
    pub dust_method: DustMethod,
}

/// A support.
#[derive(Clone, Debug, Serialize)]
pub struct SupportNote {
    /// What it is.
    pub what: String,
    /// Both ends of a line, or the middle of a pad twice.
    pub ends: [Point; 2],
    /// The most it may carry.
    pub limit: Option<Mass>,
}

impl Plan {
    /// Plans a whole job: every stage in its order.
    ///
    /// # Errors
    /// [`NoFit`] when the top cannot be had from the slab.
    pub fn of(job: &Job) -> Result<Self, NoFit> {
        let (placement, mut findings) = place::place(job)?;
        let (mut cuts, of_cuts) = cut::plan(job, &placement);
        let stones = piece::follow(job, &placement, &mut cuts);
        let work = work(job, &cuts, &stones);
        let (slab_load, top_load) = loads(job, &placement);
        let (handling, of_handling) = handle::assess(job, &slab_load, &top_load, placement.pose);
        let (hazards, of_hazards) = hazard::assess(job, &work);
        findings.append(of_cuts);
        findings.append(piece::findings(job, &stones));
        findings.append(of_handling);
        findings.append(of_hazards);
        let Findings { stops, cautions } = findings;
        Ok(Self {
            kerfwright: env!("CARGO_PKG_VERSION"),
            job: job_note(job),
            stone: stone_note(job),
            assumed: job.assumed.clone(),
            stops,
            cautions,
            slab: slab_note(job, slab_load.mass),
            placement: placement_note(&placement),
            top: top_note(job, &placement, top_load.mass),
            core_holes: Vec::new(),
            totals: totals(job, &cuts, &work),
            cuts,
            pieces: stones.pieces,
            remaining: stones.remaining,
            balance_sheet: stones.balance_sheet,
            kit: kit(job),
            supports: supports(job, &placement),
            sources: sources(&handling, &hazards),
            handling,
            hazards,
        })
    }
}

fn work(job: &Job, cuts: &[Cut], stones: &Stones) -> Work {
    let mut discs = Vec::new();
    for cut in cuts {
        if !discs.contains(&cut.disc) {
            discs.push(cut.disc.clone());
        }
    }
    Work {
        kerf_volume_mm3: stones.balance_sheet.kerf_mm2 * job.stone.thickness.mean,
        sawn_face_mm2: cuts.iter().map(|c| c.face_mm2).sum(),
        trigger_minutes: cuts.iter().map(|c| c.minutes).sum(),
        discs,
    }
}

fn loads(job: &Job, placement: &Placement) -> (Load, Load) {
    let load = |name: &str, outline: &Outline| Load {
        name: name.into(),
        region: Region::solid(outline.clone()),
        mass: piece::mass_of(&job.stone, outline.area()),
    };
    (
        load("slab as delivered", job.slab.shape.outline()),
        load("finished top", placement.top.outline()),
    )
}

fn totals(job: &Job, cuts: &[Cut], work: &Work) -> Totals {
    let count = |kind: CutKind| cuts.iter().filter(|c| c.kind == kind).count();
    #[allow(clippy::cast_precision_loss)]
    let set_ups = cuts.len() as f64;
    Totals {
        straight_cuts: count(CutKind::Straight),
        curves: count(CutKind::Curve),
        length_mm: cuts.iter().map(|c| c.length).sum(),
        face_mm2: work.sawn_face_mm2,
        kerf_volume_mm3: work.kerf_volume_mm3,
        sawing_minutes: work.trigger_minutes,
        set_up_minutes: job.passes.set_up_min * set_ups,
    }
}

fn sources(handling: &Handling, hazards: &Hazards) -> Vec<Source> {
    let mut all: Vec<Source> = Vec::new();
    for source in handling
        .sources
        .iter()
        .chain(hazards.sources.iter().copied())
    {
        if !all.contains(source) {
            all.push(source.clone());
        }
    }
    all
}

fn job_note(job: &Job) -> JobNote {
    let heading = job.heading.clone();
    JobNote {
        title: heading.title,
        region: job.region.code().into(),
        region_name: job.region.name().into(),
        date: heading.date,
        made_for: heading.made_for,
        made_by: heading.made_by,
        note: heading.note,
        units: job.units,
    }
}

fn stone_note(job: &Job) -> StoneNote {
    let stone = job.stone.clone();
    StoneNote {
        name: stone.name,
        density: stone.density,
        strength_mpa: stone.strength_mpa,
        strength_source: stone.strength_source,
        safety_factor: stone.safety_factor,
        silica: stone.silica,
        weighed: stone.weighed,
        said: stone.said,
    }
}

fn named_corners(shape: &Shape) -> Vec<NamedPoint> {
    let corners = shape.corners().iter().enumerate();
    corners
        .map(|(i, at)| NamedPoint {
            name: shape.corner_name(i),
            at: *at,
            edge: shape.corner_seg(i).map_or(*at, |piece| piece.at(0.5)),
        })
        .collect()
}

fn slab_note(job: &Job, mass: MassRange) -> SlabNote {
    let shape = &job.slab.shape;
    let edges = job.slab.edges.iter().enumerate();
    SlabNote {
        outline: shape.outline().clone(),
        corners: named_corners(shape),
        edges: edges
            .map(|(i, state)| SlabEdge {
                name: shape.edge_name(i),
                state: *state,
                length: shape.edge_length(i),
            })
            .collect(),
        flaws: job.slab.flaws.iter().map(flaw_note).collect(),
        area_mm2: shape.outline().area(),
        thickness: job.stone.thickness,
        mass,
        balance: shape.outline().centroid(),
        tape: job.slab.tape_error_mm,
        vein: job.slab.vein_deg,
    }
}

fn flaw_note(flaw: &Flaw) -> FlawNote {
    FlawNote {
        what: flaw.what.clone(),
        path: match &flaw.place {
            FlawPlace::Spot { at, across_mm } => crate::geom::seg::circle(*at, across_mm / 2.0),
            FlawPlace::Line(points) => points.windows(2).map(|w| Seg::Line(w[0], w[1])).collect(),
            FlawPlace::Area(outline) => outline.segs().to_vec(),
        },
        clear: flaw.clear_mm,
        clearance: flaw.clearance(),
    }
}

fn placement_note(placement: &Placement) -> PlacementNote {
    let uses = placement.uses.iter().enumerate();
    PlacementNote {
        turn: placement.pose.turn.to_degrees(),
        shift: placement.pose.shift,
        work_mm2: placement.work_mm2,
        flush: uses
            .filter(|(_, used)| matches!(used, EdgeUse::Flush { .. }))
            .map(|(i, _)| placement.top.edge_name(i))
            .collect(),
        least_spare: placement.least_spare_mm,
    }
}

fn top_note(job: &Job, placement: &Placement, mass: MassRange) -> TopNote {
    let top = &placement.top;
    let own = job.top.shape.outline().bounds();
    let edges = placement.uses.iter().enumerate();
    TopNote {
        outline: top.outline().clone(),
        cutouts: Vec::new(),
        sawn_outline: placement.sawn.clone(),
        corners: named_corners(top),
        edges: edges
            .map(|(i, used)| TopEdge {
                name: top.edge_name(i),
                finish: job.top.finishes[i],
                length: top.edge_length(i),
                flush_with: match used {
                    EdgeUse::Flush { slab_edge, .. } => Some(job.slab.shape.edge_name(*slab_edge)),
                    EdgeUse::Sawn { .. } | EdgeUse::UsedUp => None,
                },
                allowance: used.allowance_mm(),
            })
            .collect(),
        area_mm2: top.outline().area(),
        mass,
        balance: top.outline().centroid(),
        size: [own.width(), own.height()],
    }
}

fn kit(job: &Job) -> Kit {
    Kit {
        rpm: job.machine.rpm,
        plate: job.machine.plate_mm,
        guide_offset: job.guide.offset_mm,
        guide_length: job.guide.length_mm,
        jig_offset: job.circle_jig.offset_mm,
        rate: job.passes.rate_cm2_per_min,
        rate_is_guess: job.passes.rate_is_guess,
        through: job.passes.through_mm,
        curve_factor: job.passes.curve_factor,
        dust_method: job.dust.method,
    }
}

fn supports(job: &Job, placement: &Placement) -> Vec<SupportNote> {
    let posed = |p: Point| placement.pose.apply(p);
    job.supports
        .iter()
        .map(|support| SupportNote {
            what: support.what.clone(),
            ends: match support.place {
                SupportPlace::Line(a, b) => [posed(a), posed(b)],
                SupportPlace::Pad(at, _) => [posed(at), posed(at)],
            },
            limit: support.limit,
        })
        .collect()
}
