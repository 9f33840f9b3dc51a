//! Lifting, carrying, bending and setting down.
//!
//! | room | what it works out |
//! |---|---|
//! | `loads`, `smooth` | the stones of the job, cusps smoothed away |
//! | [`bending`] | the stone as a beam and a plate: stresses, trestles, narrow places, supports |
//! | [`lifting`] | who holds it where, shares, guidelines |
//! | [`transport`] | aids, standing on edge, the way in |
//! | `piece`, `handling`, `assess` | all of it for one stone, for a job |
//! | [`people`] | where the sawyer and the helper stand while the stone is cut |
//! | `finding` | what must be read before anybody lifts |
//!
//! Lengths mm, masses kg, stresses `MPa`, points in the slab's frame.

mod assess;
pub mod bending;
pub(crate) mod finding;
mod handling;
pub mod lifting;
mod loads;
pub mod people;
mod piece;
mod smooth;
pub mod transport;

pub use assess::assess;
pub use bending::poses::{HANDLING_FACTOR, Strength};
pub use bending::{
    axes, bench, bend, continuous, judged, lean, neck, overhang, plate, poses, rail, rests, span,
    splint, strip, support, trestles,
};
pub use handling::Handling;
pub use lifting::record::{
    Effort, Lift, Lifter, PeopleNeeded, Share, Stand, Tilt, Tilting, Verdict,
};
pub use lifting::{guideline, lift, niosh, stand, waste};
pub use loads::{Free, Load, Loads, Marks};
pub use piece::HandledPiece;
pub use transport::{aid, fall, moving, route};
pub use waste::Waste;
