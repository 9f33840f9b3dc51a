//! The plan: everything the stages have worked out, as plain data.

use serde::Serialize;

use crate::cut::{self, Consumables, CoreHole, Cut, Practice};
use crate::diag::{Finding, Findings};
use crate::geom::Point;
use crate::handle::people::Stands;
use crate::handle::{self, Handling, Loads};
use crate::hazard::{self, Hazards, Work};
use crate::job::{Assumption, Job};
use crate::piece::{self, BalanceSheet, Piece, Remaining, Totals};
use crate::place::{self, NoFit};
use crate::plan::fill::{job_note, kit, placement_note, slab_note, stone_note, supports, top_note};
use crate::repair::{self, Repair, Repaired};
use crate::tables::Source;
use crate::words::Writer;

use super::{JobNote, Kit, PlacementNote, SlabNote, StoneNote, SupportNote, TopNote};

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
    #[serde(skip)]
    pub stops: Vec<Finding>,
    /// Each has a blank to fill or asks for a look before the start.
    #[serde(skip)]
    pub open: Vec<Finding>,
    /// To be read and heeded.
    #[serde(skip)]
    pub warnings: Vec<Finding>,
    /// The slab.
    pub slab: SlabNote,
    /// Where the top lies on it.
    pub placement: PlacementNote,
    /// The finished top.
    pub top: TopNote,
    /// Core holes, in the order they are drilled.
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
    /// Time with the tools in the stone, and what is used up.
    pub consumables: Consumables,
    /// Machine, jig and passes as the sheet shows them.
    pub kit: Kit,
    /// Bearers under the edges of the top that no cut makes: the two ends of each, slab frame.
    pub edge_bearers: Vec<[Point; 2]>,
    /// The practice before the first cut.
    pub practice: Practice,
    /// What happened and what it costs, when the cutting did not go as planned: the rest of this plan
    /// is then of the stone as it is now.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub repair: Option<Repair>,
    /// What the top stands on.
    pub supports: Vec<SupportNote>,
    /// Lifting, carrying, bending.
    pub handling: Handling,
    /// Where people stand while the stone is cut.
    pub stands: Stands,
    /// Dust, vibration, noise, disc, electricity.
    pub hazards: Hazards,
    /// Every published figure that was used.
    pub sources: Vec<Source>,
}

impl Plan {
    /// Who writes it: the job's units and language.
    #[must_use]
    pub fn writer(&self) -> Writer {
        Writer::new(self.job.units.into(), self.job.language)
    }

    /// Plans a whole job: every stage in its order.
    ///
    /// # Errors
    /// [`NoFit`] when the top cannot be had from the slab.
    pub fn of(job: &Job) -> Result<Self, NoFit> {
        match repair::after(job)? {
            None => Self::planned(job),
            Some(Repaired {
                job,
                note,
                findings,
            }) => {
                let mut plan = Self::planned(&job)?;
                plan.stops.extend(findings.stops);
                plan.open.extend(findings.open);
                plan.warnings.extend(findings.warnings);
                Ok(Self {
                    repair: Some(note),
                    ..plan
                })
            }
        }
    }

    fn planned(job: &Job) -> Result<Self, NoFit> {
        let (placement, mut findings) = place::place(job)?;
        let (mut cuts, missing, of_cuts) = cut::plan(job, &placement);
        let mut stones = piece::follow(job, &placement, &mut cuts);
        let work = Work::of(job, &cuts, stones.balance_sheet.kerf_mm2);
        let loads = Loads::of(job, &placement, &stones);
        // What follows from the pieces side by side.
        let handled = || handle::assess(job, &loads, placement.pose);
        let practised =
            || cut::practice::plan(job, &cuts, &placement.sawn_boundaries(), &stones.offcuts());
        let top = top_note(job, &placement, loads.top.mass);
        let slab = job.slab.shape.outline().bounds();
        let stood = || Stands::of(slab, top.balance, &cuts, &stones.pieces);
        let others = || (practised(), stones.best_rectangles(), stood());
        let ((handling, of_handling), (practice, rectangles, stands)) =
            rayon::join(handled, others);
        for (piece, rectangle) in stones.pieces.iter_mut().zip(rectangles) {
            piece.best_rectangle = rectangle;
        }
        let edge_bearers = cut::bearer::under_edges(&placement, &cuts);
        let (hazards, of_hazards) = hazard::assess(job, &work);
        findings.append(of_cuts);
        findings.append(piece::findings(job, &placement, (&cuts, &missing), &stones));
        findings.append(of_handling);
        findings.append(of_hazards);
        findings.worst_first();
        let Findings {
            stops,
            open,
            warnings,
        } = findings;
        Ok(Self {
            kerfwright: env!("CARGO_PKG_VERSION"),
            job: job_note(job),
            stone: stone_note(job),
            assumed: job.assumed.clone(),
            stops,
            open,
            warnings,
            slab: slab_note(job, loads.slab.mass),
            placement: placement_note(&placement),
            top,
            core_holes: cut::core::all(&cuts),
            totals: Totals::of(job, &cuts, stones.balance_sheet.kerf_mm2),
            consumables: Consumables::of(job, &cuts, stones.balance_sheet.kerf_mm2),
            cuts,
            pieces: stones.pieces,
            remaining: stones.remaining,
            balance_sheet: stones.balance_sheet,
            kit: kit(job),
            edge_bearers,
            practice,
            repair: None,
            supports: supports(job, &placement),
            sources: sources(&handling, &hazards),
            handling,
            stands,
            hazards,
        })
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
            all.push(*source);
        }
    }
    all
}
