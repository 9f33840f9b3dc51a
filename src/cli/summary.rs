//! The few figures of a plan by which jobs, or states of one job, are compared.

use std::fmt::Write;

use crate::cut::CutKind;
use crate::plan::Plan;
use crate::words::{Quantity, Unit, Value};

/// One figure of a plan.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct SummaryFigure {
    /// What it is.
    pub(super) name: &'static str,
    /// As it is written.
    pub(super) value: String,
}

/// The figures of a plan, always the same and in the same order.
pub(super) fn figures(plan: &Plan) -> Vec<SummaryFigure> {
    let writer = plan.writer().english();
    let mass = |kg| Quantity::new(kg, Unit::Mass);
    let top = &plan.top.mass;
    let minutes = |minutes| Value::of(minutes, Unit::Minute).up();
    let stations = plan.cuts.iter().filter(|cut| cut.kind == CutKind::Curve);
    let values = [
        (
            "finished top",
            Value::between(mass(top.low.kg()), mass(top.high.kg())),
        ),
        ("straight cuts", Value::count(plan.totals.straight_cuts)),
        ("curves", Value::count(plan.totals.curves)),
        (
            "plunges in curves",
            Value::count(stations.map(|cut| cut.strokes.len()).sum()),
        ),
        ("core holes", Value::count(plan.totals.core_holes)),
        ("sawing time", minutes(plan.totals.sawing_minutes)),
        ("setting up", minutes(plan.totals.set_up_minutes)),
        ("stops", Value::count(plan.stops.len())),
        ("open points", Value::count(plan.open.len())),
        ("warnings", Value::count(plan.warnings.len())),
    ];
    let figure = |(name, value)| SummaryFigure {
        name,
        value: writer.write(&value),
    };
    values.into_iter().map(figure).collect()
}

/// The titles of the stops of a plan.
pub(super) fn stop_titles(plan: &Plan) -> Vec<String> {
    let writer = plan.writer().english();
    plan.stops
        .iter()
        .map(|stop| writer.say(&stop.message))
        .collect()
}

/// What is otherwise after a change: each figure with its old and new value, stops that came and went.
pub(super) fn changes(before: &Plan, after: &Plan) -> String {
    let mut out = String::new();
    for (old, new) in figures(before).into_iter().zip(figures(after)) {
        if old != new {
            let _ = writeln!(out, "  {:<18} {} → {}", new.name, old.value, new.value);
        }
    }
    let [old, new] = [before, after].map(stop_titles);
    for gone in old.iter().filter(|stop| !new.contains(stop)) {
        let _ = writeln!(out, "  no longer: {gone}");
    }
    for come in new.iter().filter(|stop| !old.contains(stop)) {
        let _ = writeln!(out, "  STOP: {come}");
    }
    out
}
