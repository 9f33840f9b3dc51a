//! How the top's long direction lies to the vein.

use crate::job::{Job, Shape, VeinWish};

use super::Objection;

/// The long direction may lie this far from the wished one, degrees (judgement: nearer to the wish
/// than to the middle between along and across).
const VEIN_SLACK_DEG: f64 = 30.0;

/// What stands against a turn, in radians, for the vein's sake.
pub(super) fn against(job: &Job, turn: f64) -> Option<Objection> {
    let vein = job.slab.vein_deg?.to_radians();
    let long = long_direction(&job.top.shape) + turn;
    let off = (long - vein).rem_euclid(std::f64::consts::PI);
    let angle = off.min(std::f64::consts::PI - off).to_degrees();
    let amiss = match job.top.vein {
        VeinWish::Along => angle > VEIN_SLACK_DEG,
        VeinWish::Across => angle < 90.0 - VEIN_SLACK_DEG,
        VeinWish::Any => false,
    };
    amiss.then_some(Objection::Vein { angle_deg: angle })
}

/// False when the vein forbids every turn within `half` radians of one.
pub(super) fn may_allow(job: &Job, turn: f64, half: f64) -> bool {
    match against(job, turn) {
        Some(Objection::Vein { angle_deg }) => {
            let half_deg = half.to_degrees();
            match job.top.vein {
                VeinWish::Along => angle_deg - half_deg <= VEIN_SLACK_DEG,
                VeinWish::Across => angle_deg + half_deg >= 90.0 - VEIN_SLACK_DEG,
                VeinWish::Any => true,
            }
        }
        _ => true,
    }
}

/// Direction of the top's longest edge, radians, in the top's frame.
fn long_direction(top: &Shape) -> f64 {
    let longest = (0..top.count())
        .max_by(|a, b| top.edge_length(*a).total_cmp(&top.edge_length(*b)))
        .unwrap_or(0);
    top.edge_line(longest).along.angle()
}
