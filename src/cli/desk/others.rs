//! Other places of the top on the slab, each with what it costs, its drawing and the change that fixes it.

use serde::Serialize;
use serde_json::{Value as Json, json};

use super::file::OneFile;
use super::look;
use crate::cli::places;
use crate::job::{self, Job};
use crate::place::Placement;
use crate::plan::Plan;

/// At most so many are shown (judgement: more are not compared).
const MOST: usize = 5;

/// A place that can be taken.
#[derive(Clone, Debug, Serialize)]
pub(super) struct Other {
    /// What it costs and leaves, in lines.
    told: Vec<String>,
    drawing: String,
    /// The changes of the job file that fix it.
    changes: Json,
}

/// The best few places; none for a text that is at fault or a top that does not fit.
pub(super) fn others(file: &OneFile, text: &str, room_mm: f64) -> Vec<Other> {
    let Ok((job, _)) = job::read_with(text, &file.drawings(text)) else {
        return Vec::new();
    };
    let Ok((now, places)) = places::places(&job, MOST) else {
        return Vec::new();
    };
    let each = places.iter().enumerate();
    each.filter_map(|(i, placement)| other(&job, &now, i + 1, placement, room_mm))
        .collect()
}

fn other(
    job: &Job,
    now: &Job,
    number: usize,
    placement: &Placement,
    room_mm: f64,
) -> Option<Other> {
    let fixed = places::fixed(job, placement);
    let plan = Plan::of(&fixed).ok()?;
    let told = places::told(number, now, placement) + &places::stopped(&plan);
    Some(Other {
        told: told.lines().map(str::to_owned).collect(),
        drawing: look::drawing(&fixed, &plan, room_mm),
        changes: changes(placement),
    })
}

fn changes(placement: &Placement) -> Json {
    // 0.0 takes the sign from a zero.
    let mm = |v: f64| format!("{} mm", (v * 1e8).round() / 1e8 + 0.0);
    let (at, turn) = (placement.pose.shift, placement.pose.turn.to_degrees());
    json!([
        { "at": ["place", "at"], "to": [mm(at.x), mm(at.y)] },
        { "at": ["place", "turn"], "to": format!("{}", turn + 0.0) },
    ])
}
