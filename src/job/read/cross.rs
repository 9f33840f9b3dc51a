//! What no section can see by itself: values that contradict each other.

use crate::geom::Seg;
use crate::job::ledger::Ledger;
use crate::job::{DiscUse, EdgeState, Finish, Job, Shape};
use crate::units::LengthUnit;

/// Notes the contradictions between parts that are sound in themselves.
pub(super) fn check(ledger: &Ledger, job: &Job) {
    for (name, shape) in [("slab", &job.slab.shape), ("top", &job.top.shape)] {
        if !ledger.has_fault_at(name) && !ledger.has_fault_at("stone") {
            wider_than_thick(ledger, name, shape, job.stone.thickness.most);
        }
    }
    if !ledger.has_fault_at("slab") && !ledger.has_fault_at("top") {
        factory_edges(ledger, job);
    }
    if !ledger.has_fault_at("disc") && !ledger.has_fault_at("top") {
        discs_for_all_cuts(ledger, job);
    }
}

/// A slab or a top lies flat: it is wider than it is thick, or its sizes are in another unit.
fn wider_than_thick(ledger: &Ledger, name: &str, shape: &Shape, thickness_mm: f64) {
    let bounds = shape.outline().bounds();
    if bounds.width().min(bounds.height()) > thickness_mm {
        return;
    }
    let message = format!(
        "the {name} is {} by {}, and the stone is {} thick",
        ledger.length(bounds.width()),
        ledger.length(bounds.height()),
        ledger.length(thickness_mm)
    );
    let hint = match ledger.length_unit() {
        LengthUnit::Millimetre => "are its sizes in metres? a bare number is in mm: 2.6 m is 2600",
        LengthUnit::Inch => "are its sizes in feet? a bare number is in inches: 8 ft is 96",
    };
    ledger.fault(name, None, message, hint);
}

/// A factory edge of the top needs one on the slab.
fn factory_edges(ledger: &Ledger, job: &Job) {
    let wanted = job.top.finishes.iter().position(|f| *f == Finish::Factory);
    let there = job.slab.edges.contains(&EdgeState::Factory);
    if let Some(edge) = wanted
        && !there
    {
        let name = job.top.shape.edge_name(edge);
        let message =
            format!("edge {name} of the top is to be a factory edge, but the slab has none");
        let hint = "name the slab's finished edges in slab.factory, or choose polish, ease or saw";
        ledger.fault(format!("top.finish.{name}"), None, message, hint);
    }
}

/// Straight cuts need a disc, and so do curves when there are any.
fn discs_for_all_cuts(ledger: &Ledger, job: &Job) {
    let has = |usage| {
        job.discs
            .iter()
            .any(|d| d.usage == usage || d.usage == DiscUse::All)
    };
    let openings = job.top.cutouts.iter().map(|c| &c.shape);
    let mut figures = openings.chain(std::iter::once(&job.top.shape));
    let curved = figures.any(|f| f.outline().segs().iter().any(|s| matches!(s, Seg::Arc(_))));
    let hint = "add a [[disc]], or give one of them for = \"all\"";
    if !has(DiscUse::Straights) {
        ledger.fault("disc", None, "no disc is for straight cuts", hint);
    }
    if curved && !has(DiscUse::Curves) {
        ledger.fault(
            "disc",
            None,
            "the top has curves, but no disc is for curves",
            hint,
        );
    }
}
