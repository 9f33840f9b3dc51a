//! What drives the machine, and water near it: one file for each hazard.
//!
//! | drive | dry | wet, rated for it | wet, not rated |
//! |---|---|---|---|
//! | mains, RCD, GFCI or 110 V | nothing | [`wet_mains`]: caution | [`water`]: stop |
//! | mains, none of them | [`protection`]: stop outdoors, open point indoors | [`protection`]: stop | both stops |
//! | battery | nothing | [`battery`]: caution | [`water`]: stop |
//! | air | [`air`]: caution | [`air`]: caution | [`water`]: stop |
//! | engine | [`engine`]: stop indoors, caution outdoors | the same | with [`water`]: stop |

pub mod air;
mod assess;

pub(super) use assess::assess;
pub mod battery;
pub mod engine;
mod power;
pub mod protection;
pub mod water;
pub mod wet_mains;

use power::{is_mains, is_protected, is_wet};
