//! What the stone's own weights and pieces give cause to say.

use super::{CRUMB_MM2, Piece, Stones, mass_of};
use crate::cut::kept::Kept;
use crate::cut::{Cut, CutKind, Remains};
use crate::diag::{Finding, Findings, Phrase, number};
use crate::geom::{Region, boolean};
use crate::job::Job;
use crate::place::Placement;

/// Stone on the kept part that on the mean stands out farther over the sawn outline than anything the cuts are said to
/// leave, or than the doubt of the tape on a flush edge: waste that was never parted from it.
pub(super) fn lumps(placement: &Placement, kept: &Region, cuts: &[Cut]) -> Vec<Region> {
    let sawn = Kept::of(placement);
    let region = sawn.region();
    let whole = std::slice::from_ref(kept);
    let mut parts = boolean::difference(whole, std::slice::from_ref(&region.outer));
    parts.extend(boolean::intersection(whole, &region.holes));
    let left = cuts.iter().flat_map(|c| &c.left_to_remove);
    let left = left.filter(|l| l.why != Remains::Tail).map(|l| l.length);
    let slits = cuts.iter().filter_map(|c| c.tool.disc().map(|d| d.kerf));
    let most = left.chain(slits).fold(0.0, f64::max);
    parts.retain(|part| {
        let thick = 2.0 * part.area() / part.outer.perimeter();
        part.area() > CRUMB_MM2 && thick > most + STANDS_OUT_MM
    });
    parts
}

/// Stone standing out by this much more than was said is more than doubt of the tape, mm (judgement).
const STANDS_OUT_MM: f64 = 6.0;

/// A seller's word that differs from the computed weight by more than this is told (judgement).
const SAID_TOLERANCE: f64 = 0.10;
/// Waste heavier than this wants a support of its own under it, kg (judgement).
const HELD_BY_HAND_KG: f64 = 5.0;

/// What the weights themselves give cause to say: a seller's figure that cannot be right, waste
/// too heavy to be held by hand.
#[must_use]
pub fn findings(job: &Job, cuts: &[Cut], stones: &Stones) -> Findings {
    let mut findings = Findings::default();
    findings.stops.extend(not_freed(&stones.unfreed));
    findings.cautions.extend(against_said(job));
    findings.cautions.extend(heavy_waste(&stones.pieces));
    let dropped = dropped_by_curves(job, cuts, &stones.pieces);
    findings.cautions.extend(dropped);
    findings
}

pub(crate) const NOT_FREED: Phrase = Phrase {
    id: "waste-not-freed",
    title: "The planned cuts do not free all the waste",
    detail: "Parts of the waste that still hang on to the top after the last cut: {parts}, the largest of {area} cm² \
             about {along} mm along AB and {up} mm up from corner A. The other stops say which cut is missing; \
             without it the job cannot be finished from this sheet.",
};
pub(crate) const SAID_WEIGHT: Phrase = Phrase {
    id: "said-weight",
    title: "The seller's weight and the computed weight differ",
    detail: "Said {said} kg, computed {computed} kg: {off} %, more than {tolerance} %. One of stone, size or \
             thickness is wrong. Plan the lift with the heavier figure and weigh the slab if you can.",
};
pub(crate) const NEEDS_SUPPORT: Phrase = Phrase {
    id: "waste-needs-support",
    title: "Waste too heavy to be held by hand comes free",
    detail: "Waste piece (cut that frees it) and its weight at most: {pieces}. Carry every piece over {limit} kg on \
             its own supports, level with the kept stone on both sides of the cut, before the last pass. A \
             sagging piece closes the kerf on the disc.",
};
pub(crate) const CURVE_WASTE: Phrase = Phrase {
    id: "curve-waste-heavy",
    title: "The waste of a curve drops in a piece too heavy to hold",
    detail: "Waste piece (cut that frees it) and its weight at most: {pieces}. That is more than {limit} kg \
             (passes.waste_piece), and no straight cuts clear of the kept stone part it further. Bear it from \
             below over its whole length before the last ring; nobody holds it, no foot under it.",
};

/// The stop for waste that the planned cuts leave on the kept stone.
fn not_freed(unfreed: &[Region]) -> Option<Finding> {
    let largest = unfreed
        .iter()
        .max_by(|a, b| a.area().total_cmp(&b.area()))?;
    let at = largest.centroid();
    let values = [
        ("parts", unfreed.len().to_string()),
        ("area", number(largest.area() / 100.0, 0)),
        ("along", number(at.x, 0)),
        ("up", number(at.y, 0)),
    ];
    let source = "geometry: what is left of the slab after the last cut";
    Some(Finding::of(&NOT_FREED, &values, source))
}

fn against_said(job: &Job) -> Option<Finding> {
    let said = job.stone.said?.kg();
    let computed = mass_of(&job.stone, job.slab.shape.outline().area())
        .likely
        .kg();
    let off = said / computed - 1.0;
    let values = [
        ("said", number(said, 0)),
        ("computed", number(computed, 0)),
        ("off", format!("{:+.0}", off * 100.0)),
        ("tolerance", number(SAID_TOLERANCE * 100.0, 0)),
    ];
    (off.abs() > SAID_TOLERANCE).then(|| Finding::of(&SAID_WEIGHT, &values, "judgement: 10 %"))
}

fn heavy_waste(pieces: &[Piece]) -> Option<Finding> {
    let heavy = pieces.iter().filter(|p| p.mass.high.kg() > HELD_BY_HAND_KG);
    let source = "judgement: 5 kg; support on both sides of the cut: standard grinder warnings, IEC 62841-2-3";
    heavier(&NEEDS_SUPPORT, heavy, number(HELD_BY_HAND_KG, 0), source)
}

/// The caution for waste that a curve drops in a piece too heavy to hold, relief cuts or not.
fn dropped_by_curves(job: &Job, cuts: &[Cut], pieces: &[Piece]) -> Option<Finding> {
    let most = job.passes.waste_piece.kg();
    let by_curve = |p: &&Piece| {
        let cut = cuts.iter().find(|c| c.number == p.after_cut);
        cut.is_some_and(|c| c.kind == CutKind::Curve) && p.mass.high.kg() > most
    };
    let heavy = pieces.iter().filter(by_curve);
    heavier(&CURVE_WASTE, heavy, number(most, 1), "judgement: 5 kg")
}

/// A caution that names pieces, the cut that frees each, and what it weighs at most; nothing when there is
/// none.
fn heavier<'a>(
    phrase: &'static Phrase,
    pieces: impl Iterator<Item = &'a Piece>,
    limit: String,
    source: &str,
) -> Option<Finding> {
    let named = |p: &Piece| {
        let kg = number(p.mass.high.kg(), 1);
        format!("{} ({}): {kg} kg", p.name, p.after_cut)
    };
    let named: Vec<String> = pieces.map(named).collect();
    let values = [("pieces", named.join(", ")), ("limit", limit)];
    (!named.is_empty()).then(|| Finding::of(phrase, &values, source))
}
