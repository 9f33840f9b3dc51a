//! The job: what was measured, wanted and decided.
//!
//! Text becomes a [`JobFile`] (as typed), and that a [`Job`]: defaults filled in, millimetres
//! everywhere, outlines closed and checked. Nothing after [`Job`] asks whether a value was given;
//! what was assumed is listed in [`Job::assumed`].
//!
//! | file | what it does |
//! |---|---|
//! | `whole`, `stone`, `slab`, `flaw`, `top`, `place` | the job: stone, slab, top, supports, where it lies |
//! | `machine`, `disc`, `jig`, `dust`, `day`, `lift` | what it is done with, by whom, and what else fills the day |
//! | [`shape`] | figures with named corners and edges |
//! | [`route`] | the way in |
//! | [`as_cut`] | what really happened at the cutting |
//! | [`begun`] | what has been cut into a slab already |
//! | [`file`](mod@file) | the text as typed, with places |
//! | [`keys`] | every key, described once |
//! | `reader`, `given`, `given_fault`, [`quantity`] | one table, one value, its units and limits |
//! | [`drawing`] | figures taken from an SVG or a DXF |
//! | [`survey`] | from tapes to corners, and how well they close |
//! | `ledger`, `words` | what is noted meanwhile; words for messages |
//! | `read/` | one file for each section of the job file |

pub mod as_cut;
pub mod begun;
mod day;
mod disc;
pub mod drawing;
mod dust;
pub mod file;
mod flaw;
mod given;
mod given_fault;
mod jig;
pub mod keys;
mod ledger;
mod lift;
mod machine;
mod place;
pub mod quantity;
mod read;
mod reader;
pub mod route;
pub mod shape;
mod slab;
mod stone;
pub mod survey;
mod top;
mod whole;
mod words;

pub use as_cut::{AsCut, Chip, DeviatingFace, Deviation, OpeningCut};
pub use begun::{Begun, Drilled};
pub use day::{Dusty, EarKind, ExposurePeriod, Protector};
pub use disc::{Bond, CoreBit, Disc, DiscUse};
pub use drawing::Drawings;
pub use dust::{Dust, DustMethod, Respirator, Workplace};
pub use file::{JobFile, read, read_with};
pub use flaw::{Flaw, FlawPlace};
pub use given::is_printable;
pub use jig::{CircleJig, Guide, Passes};
pub use lift::{Aid, Lift, Trolley};
pub use machine::{Machine, MachineKind, Power, Protection, Vibration};
pub use place::{PlaceHow, PlaceWish, Support, SupportPlace};
pub use route::{ClearSize, Obstacle, Route};
pub use shape::{CornerCut, Naming, Part, Shape};
pub use slab::{EdgeState, Slab};
pub use stone::{Asbestos, Binder, Range, Steel, Stone, Thickness};
pub use survey::Survey;
pub use top::{Allowances, Cutout, Finish, Top, VeinWish};
pub use whole::{Assumption, Heading, Job};
