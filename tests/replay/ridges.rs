//! What stands out over the sawn outline at the end of a replay.

use serde_json::Value;

use super::begun::{drilled_before, ground_by_repair};
use super::disc::{Hole, holes};
use super::plane::{Stone, apart, list, number, word};
use super::{NEAR_MM, Replay, rules};

impl Replay {
    /// Stone that stands out over the sawn outline is a ridge or a rest no higher than its plan says,
    /// the edge of a core hole, or the slab's own edge within the tape's doubt of a flush edge.
    pub(super) fn ridges(&mut self, plan: &Value, below: f64, kept: &Stone) {
        if rules::waste_stays(plan) {
            return;
        }
        let left = said_left(plan)
            .max(ground_corners(plan))
            .max(ground_by_repair(plan));
        let holes = list(plan, "cuts").iter().flat_map(holes);
        let holes: Vec<Hole> = holes.chain(drilled_before(plan)).collect();
        let flush = !list(&plan["placement"], "flush").is_empty();
        let gap = if flush {
            // In a corner with two flush edges the two gaps add up.
            3.0 * number(&plan["slab"], "tape_mm")
        } else {
            0.0
        };
        // Slivers of no width between slots that share a face are the clipping's own.
        let kept = kept.shrunk(NEAR_MM).shrunk(-NEAR_MM);
        for p in kept.corners() {
            if self.sawn.holds(p) {
                continue;
            }
            let out = self.sawn.to_boundary(p);
            let most = if self.slab.to_boundary(p) <= gap + NEAR_MM {
                // Beside a flush edge the stone goes on to the slab's own edge.
                gap.max(left)
            } else {
                left
            };
            let of_hole = |h: &Hole| (apart(h.at, p) - h.radius).abs() <= 3.0 * NEAR_MM;
            if out > most + NEAR_MM && !holes.iter().any(of_hole) {
                self.faults.push(format!(
                    "stone stands out {out:.3} mm at {p:?}, {below:.1} mm down; {most:.3} allowed"
                ));
            }
        }
    }
}

/// The most that the cuts say they leave, run-outs apart.
fn said_left(plan: &Value) -> f64 {
    let cuts = list(plan, "cuts").iter();
    let left = cuts.flat_map(|c| list(c, "left_to_remove"));
    left.filter(|l| word(l, "why") != "tail")
        .map(|l| number(l, "length"))
        .fold(0.0, f64::max)
}

/// A corner so slight that no plunge is made for it stands out by less than a kerf, and is ground.
fn ground_corners(plan: &Value) -> f64 {
    let told = list(plan, "warnings").iter();
    let ground = told.filter(|c| word(c, "id").starts_with("corner-ground-by-hand"));
    if ground.count() == 0 {
        return 0.0;
    }
    let discs = list(plan, "cuts").iter().filter_map(|c| c.get("disc"));
    discs.map(|d| number(d, "kerf")).fold(0.0, f64::max)
}
