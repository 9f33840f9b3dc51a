//! A plan as a document: sections of headings, facts, tables, steps, ticks, notices and figures.
//!
//! Typed values and message ids, no paper: [`crate::layout`] makes pages of it, and a screen or a text
//! can be made of it as well. The bench pages are what is taken to the stone; the annex holds the rest.
//!
//! | file | what it is |
//! |---|---|
//! | [`block`] | sections and blocks |
//! | [`figure`] | what a drawing shows, at its place in the world |
//! | [`sign`] | safety signs |
//! | `bench` | the whole document, section by section |
//! | `glance` … `day` | the bench pages, in their order |
//! | `stand` | where the helper stands at each cut |
//! | `supports` | what the top stands on |
//! | `stop` | what to do when something goes wrong, for a screen |
//! | `annex` | the annex |
//! | `group`, `mark`, `scene` | cuts that share a page; names of marks; the slab at a stage |

mod annex;
mod answer;
mod bench;
pub mod block;
mod curve;
mod day;
mod dust;
pub mod figure;
mod fingerprint;
mod glance;
mod group;
mod helper;
pub(crate) mod mark;
mod mark_out;
mod moving;
mod opening;
mod relief;
mod repair;
mod say;
mod scene;
pub mod sign;
mod stop;
mod straight;
mod supports;
mod turning;
mod weigh;

pub use answer::answer;
pub use bench::{Annex, document, fingerprint, overview};
pub use weigh::{Stones, weighing};
