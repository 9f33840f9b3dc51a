//! Who or what turns a stone about its long side: flat on to the trestles, and down at its place.

use crate::handle::HandledPiece;
use crate::handle::lifting::record::Effort;
use crate::job::Aid;
use crate::plan::Plan;
use crate::words::Value;

/// Who or what turns a stone about its long side.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum Turning {
    /// The job's lifter.
    Aid,
    /// The team.
    Team,
    /// The team, if what page 1 leaves open is settled so.
    Open,
    /// No hands, and the job names nothing that could.
    NoHands,
}

/// Who or what turns a stone, by the job's aid and by what it takes at the far side.
pub(super) fn turning(plan: &Plan, piece: &HandledPiece) -> Turning {
    match (plan.handling.moving.aid, piece.lift.tilting.effort) {
        (Aid::VacuumLifter | Aid::Gantry, _) => Turning::Aid,
        (Aid::None | Aid::Trolley, Effort::Within) => Turning::Team,
        (Aid::None | Aid::Trolley, Effort::Above) => Turning::Open,
        (Aid::None | Aid::Trolley, Effort::Beyond) => Turning::NoHands,
    }
}

/// The same as a case of the sentences.
pub(super) fn turned_by(plan: &Plan, piece: &HandledPiece) -> Value {
    Value::Case(match turning(plan, piece) {
        Turning::Aid => "aid",
        Turning::Team => "team",
        Turning::Open => "open",
        Turning::NoHands => "none",
    })
}
