//! What the kind of stone brings with it: one file for each hazard.

pub mod asbestos;
mod assess;

pub(super) use assess::assess;
pub mod binder;
pub mod controlled;
pub mod engineered;
mod kind;
pub mod rich;
pub mod steel;
pub mod unknown;
pub mod veins;

pub(super) use kind::Engineered;
pub(super) use kind::asks_for_mask;
pub(super) use kind::high_exposure;
pub(super) use kind::is_engineered;
pub(super) use kind::is_rich;
use kind::percent;
