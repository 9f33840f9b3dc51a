//! A refusal at the place the top had.

use crate::place::{NoFit, Placement, Proof, Stock};
use crate::words::Message;

/// A refusal at the place the top had.
pub(super) fn no_way(placement: &Placement, why: Message) -> NoFit {
    NoFit {
        stock: Stock::Begun,
        turn_deg: placement.pose.turn.to_degrees(),
        objections: Vec::new(),
        reasons: vec![why],
        proof: Proof::ThisPlace,
        fitting: Vec::new(),
    }
}
