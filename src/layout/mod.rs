//! A document on paper: pages of items at fixed places, in mm.
//!
//! | file | what it is |
//! |---|---|
//! | [`item`] | what a page is made of |
//! | `book` | sections one after another over pages |
//! | [`page`] | sections on pages, heads and feet |
//! | `share`, `heights` | which sections stand on a bench page together, by how high their blocks are |
//! | [`setter`], [`stack`] | what blocks are set with; blocks one below the other, heights shared out |
//! | `words`, `table`, `figure` | the blocks |
//! | [`voice`] | sizes of type; paragraphs in which numbers stand out |
//! | [`drawing`] | a drawing under way, at a round scale |
//! | `lettering` | its labels and dimensions, on white over every line |
//! | [`dimension`] | dimensions after ISO 129 |
//! | [`labels`] | labels that keep clear of each other |
//! | [`hatch`] | 45° hatching cut to a shape |
//! | `symbols` | marks, pivots, stations, ringed numbers |
//! | [`tiles`] | a template at 1:1 on tiles or on one long page |
//! | `people`, [`sign`] | people, trestles, trolley, machine; safety signs |
//! | [`pen`], [`wrap`], [`typeface`] | strokes, lines broken to a width, measured widths |

mod book;
pub mod dimension;
pub mod drawing;
mod figure;
pub mod hatch;
mod heights;
pub mod item;
pub mod labels;
mod lettering;
pub mod page;
pub mod pen;
mod people;
pub mod setter;
mod share;
pub mod sign;
pub mod stack;
mod symbols;
mod table;
pub mod tiles;
pub mod typeface;
pub mod voice;
mod words;
pub mod wrap;

pub use page::{drawing_page, figure_page, pages};
pub use words::harm_id;
