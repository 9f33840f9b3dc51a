//! The stone as a beam and as a plate: bending in every way of lying, and what it rests on.
//!
//! | file | what it works out |
//! |---|---|
//! | [`axes`], [`strip`] | the stone's long direction; its cross-sections along it |
//! | [`bend`], [`judged`], [`poses`] | stresses, flat and on edge; what is allowed; the ways of lying |
//! | [`trestles`], [`mod@bench`] | where two supports stress it least; where they stand while it is cut |
//! | [`rail`], [`neck`], [`splint`] | narrow stone beside cutouts and at inside corners, and its brace |
//! | [`plate`], [`continuous`] | a rigid plate on springs; an elastic beam over several supports |
//! | [`rests`], `elastic`, [`support`] | the supports under the top, and the most that each carries |
//! | [`overhang`], [`span`], [`lean`] | what reaches beyond them and between them; a person on it |

pub mod axes;
pub mod bench;
pub mod bend;
pub mod continuous;
mod course;
mod elastic;
pub mod judged;
pub mod lean;
pub mod neck;
mod on_two;
pub mod overhang;
pub mod plate;
pub mod poses;
pub mod rail;
pub mod rests;
pub mod span;
pub mod splint;
pub mod strip;
pub mod support;
pub mod trestles;
