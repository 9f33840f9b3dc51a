//! The job sheet: pages of items at fixed places, in mm.
//!
//! | file | what it gives a page |
//! |---|---|
//! | [`item`] | what a page is made of |
//! | [`typeface`] | measured widths, and the characters the typeface lacks |
//! | [`pen`] | lines, boxes and texts as items |
//! | [`wrap`] | lines broken to a width |
//! | [`flow`] | a column of headings, paragraphs, lists, check boxes and notices |
//! | [`table`] | tables that may run over several pages |
//! | [`frame`] | the head and foot of every page, and the binding into a sheet |
//! | [`hatch`] | 45° hatching cut to a shape |
//! | [`dimension`] | dimensions after ISO 129 |
//! | [`labels`] | labels that keep clear of each other |

pub mod dimension;
pub mod flow;
pub mod frame;
pub mod hatch;
pub mod item;
pub mod labels;
mod notice;
pub mod pen;
pub mod table;
pub mod typeface;
pub mod wrap;
