//! What the stone's own weights and pieces give cause to say.

use crate::cut::kept::Kept;
use crate::cut::missing::{self, Missing};
use crate::cut::{Cut, CutKind};
use crate::diag::{Finding, Findings, Phrase};
use crate::geom::{Region, SAME_MM, Seg, boolean};
use crate::job::Job;
use crate::place::Placement;
use crate::words::{Unit, Value};

use super::{CRUMB_MM2, Piece, Stones, fissure, mass_of};

/// Stone on the kept part that on the mean stands out farther over the sawn outline than anything the cuts are said to
/// leave, or than the doubt of the tape on a flush edge: waste that was never parted from it.
pub(super) fn lumps(job: &Job, placement: &Placement, kept: &Region, cuts: &[Cut]) -> Vec<Region> {
    let mut parts = standing_out(&Kept::of(job, placement), kept);
    let slits = cuts.iter().filter_map(|c| c.tool.disc().map(|d| d.kerf));
    let most = slits.fold(left_by(cuts), f64::max);
    parts.retain(|part| {
        let thick = 2.0 * part.area() / part.outer.perimeter();
        thick > most + STANDS_OUT_MM
    });
    parts
}

/// Stone on the kept part outside the sawn outlines, crumbs left out.
fn standing_out(sawn: &Kept, kept: &Region) -> Vec<Region> {
    let region = sawn.region();
    let whole = std::slice::from_ref(kept);
    let mut parts = boolean::difference(whole, std::slice::from_ref(&region.outer));
    parts.extend(boolean::intersection(whole, &region.holes));
    parts.retain(|part| part.area() > CRUMB_MM2);
    parts
}

/// The most stone that the cuts are said to leave on the sawn outline, run-outs apart, mm.
fn left_by(cuts: &[Cut]) -> f64 {
    cuts.iter().map(Cut::stands_out_mm).fold(0.0, f64::max)
}

/// Whether stone cut off at the face that hangs on lower down is waste: what lies within the depth that the
/// cuts are said to leave is ground off with the rest.
pub(super) fn stands_out(job: &Job, placement: &Placement, waste: &Region, cuts: &[Cut]) -> bool {
    let (kept, most) = (Kept::of(job, placement), left_by(cuts));
    let mut corners = waste.outer.segs().iter().map(Seg::start);
    corners.any(|p| kept.distance(p) > most + SAME_MM)
}

/// Stone standing out by this much more than was said is more than doubt of the tape, mm (judgement).
const STANDS_OUT_MM: f64 = 6.0;

/// Two pieces of waste with their middles no farther apart are one, mm.
const APART_MM: f64 = 0.01;

/// A seller's word that differs from the computed weight by more than this is told (judgement).
const SAID_TOLERANCE: f64 = 0.10;
/// Waste heavier than this wants a support of its own under it, kg (judgement).
const HELD_BY_HAND_KG: f64 = 5.0;

/// What nothing in the kit makes, with the waste that stays on for it; and what the weights themselves give
/// cause to say: a seller's figure that cannot be right, waste too heavy to be held by hand.
#[must_use]
pub fn findings(
    job: &Job,
    placement: &Placement,
    (cuts, missing): (&[Cut], &[Missing]),
    stones: &Stones,
) -> Findings {
    let kept = Kept::of(job, placement);
    let mut findings = Findings {
        stops: unmade(&kept, missing, stones),
        ..Findings::default()
    };
    findings.warnings.extend(against_said(job));
    findings.warnings.extend(heavy_waste(&stones.pieces));
    let dropped = dropped_by_curves(job, cuts, &stones.pieces);
    findings.warnings.extend(dropped);
    findings.warnings.extend(fissure::findings(job, stones));
    findings
}

pub(crate) const NOT_FREED: Phrase = Phrase::of_job("waste-not-freed");
pub(crate) const SAID_WEIGHT: Phrase = Phrase::of_job("said-weight");
pub(crate) const NEEDS_SUPPORT: Phrase = Phrase::of_job("waste-needs-support");
pub(crate) const CURVE_WASTE: Phrase = Phrase::of_job("curve-waste-heavy");

/// A stop for each thing missing, with the waste that stays on for it, be it ever so thin; and one for waste that stays
/// on where nothing is missing: the cuts beside it do not meet.
fn unmade(kept: &Kept, missing: &[Missing], stones: &Stones) -> Vec<Finding> {
    let mut unheld: Vec<&Region> = stones.unfreed.iter().collect();
    let mut stops = Vec::new();
    let apart = |w: &Region| {
        let mut others = stones.unfreed.iter();
        others.all(|other| other.centroid().distance(w.centroid()) > APART_MM)
    };
    let mut thin = match missing {
        [] => Vec::new(),
        _ => standing_out(kept, &stones.kept),
    };
    thin.retain(apart);
    let mut thin: Vec<&Region> = thin.iter().collect();
    for cause in missing {
        let (mut held, others): (Vec<&Region>, _) =
            unheld.into_iter().partition(|w| cause.holds(w));
        unheld = others;
        if held.is_empty() {
            (held, thin) = thin.into_iter().partition(|w| cause.holds(w));
        }
        let stays = missing::waste(&held);
        let stays = stays.map_or(Value::Nothing, |gaps| Value::message("waste-stays", gaps));
        stops.push(cause.told(stays));
    }
    if let Some(gaps) = missing::waste(&unheld) {
        let places = missing::beside(kept, &stones.under, &unheld);
        let mut values = gaps.to_vec();
        values.push(("places", Value::List(places)));
        let source = "geometry: what is left of the slab after the last cut";
        stops.push(Finding::of(&NOT_FREED, values, source));
    }
    stops
}

fn against_said(job: &Job) -> Option<Finding> {
    let said = job.stone.said?.kg();
    let computed = mass_of(&job.stone, job.slab.shape.outline().area())
        .likely
        .kg();
    let off = said / computed - 1.0;
    let values = [
        ("said", Value::of(said, Unit::Mass).decimals(0)),
        ("computed", Value::of(computed, Unit::Mass).decimals(0)),
        ("off", format!("{:+.0}", off * 100.0).into()),
        (
            "tolerance",
            Value::of(SAID_TOLERANCE * 100.0, Unit::Percent).decimals(0),
        ),
    ];
    (off.abs() > SAID_TOLERANCE).then(|| Finding::of(&SAID_WEIGHT, values, "judgement: 10 %"))
}

fn heavy_waste(pieces: &[Piece]) -> Option<Finding> {
    let heavy = pieces.iter().filter(|p| p.mass.high.kg() > HELD_BY_HAND_KG);
    let source = "judgement: 5 kg; support on both sides of the cut: standard grinder warnings, IEC 62841-2-3";
    heavier(
        &NEEDS_SUPPORT,
        heavy,
        Value::of(HELD_BY_HAND_KG, Unit::Mass),
        source,
    )
}

/// The caution for waste that a curve drops in a piece too heavy to hold, relief cuts or not.
fn dropped_by_curves(job: &Job, cuts: &[Cut], pieces: &[Piece]) -> Option<Finding> {
    let most = job.passes.waste_piece.kg();
    let by_curve = |p: &&Piece| {
        let cut = cuts.iter().find(|c| c.number == p.after_cut);
        cut.is_some_and(|c| c.kind == CutKind::Curve) && p.mass.high.kg() > most
    };
    let heavy = pieces.iter().filter(by_curve);
    heavier(
        &CURVE_WASTE,
        heavy,
        Value::of(most, Unit::Mass),
        "judgement: 5 kg",
    )
}

/// A caution that names pieces, the cut that frees each, and what it weighs at most; nothing when there is
/// none.
fn heavier<'a>(
    phrase: &'static Phrase,
    pieces: impl Iterator<Item = &'a Piece>,
    limit: Value,
    source: &str,
) -> Option<Finding> {
    let named = |p: &Piece| {
        let values = [
            ("piece", Value::name(p.name.clone())),
            ("cut", Value::count(p.after_cut)),
            ("mass", Value::mass(p.mass.high).up()),
        ];
        Value::message("piece-of-cut", values)
    };
    let named: Vec<Value> = pieces.map(named).collect();
    let any = !named.is_empty();
    let values = [("pieces", Value::List(named)), ("limit", limit)];
    any.then(|| Finding::of(phrase, values, source))
}
