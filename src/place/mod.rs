//! Where the top lies on the slab, or why nothing fits.
//!
//! | file | operation |
//! |---|---|
//! | [`mod@self`] | the [`Placement`] and the way to it |
//! | [`candidate`] | one position judged: everything that stands against it, or the place |
//! | [`edge`] | what becomes of one edge: sawn, flush, used up, bowed |
//! | `any_turn` | a place at any turn, or the proof that there is none |
//! | `free_turn` | a turn in between that saves sawing |
//! | `allowance` | the stone left on each edge and corner |
//! | `sawn` | the top with its allowances |
//! | [`opening`] | the top's cutouts on the slab |
//! | [`room`] | how much stone lies beyond an edge |
//! | [`flaw`] | how the top and its cuts lie to the flaws |
//! | `tolerance` | the tolerances that decide a case |
//! | `vein` | how the top lies to the vein |
//! | [`trim`] | where each straight trim runs, and where it must stop |
//! | `order` | the order of the straight trims with the least length sawn |
//! | [`objection`] | what stands against a position, and the words for it |
//! | [`search`] | the best of all positions worth judging |
//! | `ground` | the slab and the top taken apart into convex pieces |
//! | `turned`, `guide_line` | the shifts worth judging at one turn |
//! | `bound` | the least work a position can take, before it is judged |
//! | `share` | the margin shared where nothing pulls the top to one side |
//! | [`leftover`] | what a place leaves of the slab |
//! | [`several`] | the best few places that differ |
//! | [`size`] | the largest size of the wanted top that fits |

mod allowance;
mod answer;
mod any_turn;
mod apart;
mod bound;
pub mod candidate;
pub mod edge;
mod evaluator;
pub mod flaw;
mod free_turn;
mod ground;
mod guide_line;
pub mod leftover;
mod no_fit;
pub mod objection;
pub mod opening;
mod order;
mod placement;
pub mod room;
mod sawn;
pub mod search;
pub mod several;
mod share;
pub mod size;
mod tolerance;
pub mod trim;
mod turned;
mod vein;

pub(crate) use answer::EDGES_UNDESCRIBED;
pub(crate) use answer::MEASURE_AGAIN;
pub use answer::place;

pub use no_fit::{NoFit, Stock};
pub use placement::{Placement, fixing_lines};

pub use any_turn::WITHIN_MM;
pub use edge::EdgeUse;
pub(crate) use free_turn::TURN_SAVES;
pub use objection::{Miss, Objection, Proof};
pub use opening::SawnCutout;
pub use size::{Fitting, Less};
pub use trim::{Trim, TrimEnd};
