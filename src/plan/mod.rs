//! The finished answer as plain data: what the sheet prints and what `--json` writes.
//!
//! Lengths mm, areas mm², masses kg, angles degrees counter-clockwise from AB, all places in the
//! slab's frame. Nothing is rounded. Nothing is computed here that a stage has not computed.

mod fill;
mod note;

pub use note::{
    CoreHole, FlawNote, JobNote, Kit, NamedPoint, PlacementNote, SlabEdge, SlabNote, StoneNote,
    SupportNote, TopEdge, TopNote, Totals,
};

use serde::Serialize;

use fill::{job_note, kit, placement_note, slab_note, stone_note, supports, top_note};

use crate::cut::{self, Cut, CutKind};
use crate::diag::{Finding, Findings};
use crate::geom::Region;
use crate::handle::{self, Handling, Load};
use crate::hazard::{self, Hazards, Work};
use crate::job::{Assumption, Job};
use crate::piece::{self, BalanceSheet, Piece, Remaining, Stones};
use crate::place::{self, NoFit, Placement};
use crate::tables::Source;

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
    let load = |name: &str, region: Region| Load {
        name: name.into(),
        mass: piece::mass_of(&job.stone, region.area()),
        region,
    };
    let slab = Region::solid(job.slab.shape.outline().clone());
    (
        load("slab as delivered", slab),
        load("finished top", placement.finished()),
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
