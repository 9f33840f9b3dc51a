//! Core holes that lie almost on one another: nobody can drill the second.

use serde_json::Value;

use super::disc::{Hole, holes};
use super::plane::{apart, list};

/// Two middles nearer than this are one hole, mm.
const ONE_HOLE_MM: f64 = 1.0;

/// Each hole whose middle lies beside that of an earlier one of the same bit.
pub(crate) fn faults(plan: &Value) -> Vec<String> {
    let all: Vec<Hole> = list(plan, "cuts").iter().flat_map(holes).collect();
    let pairs = (0..all.len()).flat_map(|i| all[..i].iter().map(move |b| (i, b)));
    pairs
        .map(|(i, b)| (&all[i], b))
        .filter(|(a, b)| a.radius == b.radius && apart(a.at, b.at) < ONE_HOLE_MM)
        .map(|(a, b)| format!("two core holes {:.2} mm apart", apart(a.at, b.at)))
        .collect()
}
