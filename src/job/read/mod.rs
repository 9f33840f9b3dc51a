//! Reading the job file section by section. Each function asks for the keys of one section, in the
//! order of the format, and says the limits, the defaults and why.

mod as_cut;
mod as_cut_opening;
mod as_cut_part;
mod base;
mod cross;
mod cutout;
mod disc;
mod drawn;
mod dust;
mod figure;
mod figure_fault;
mod figure_said;
mod flaw;
mod heading;
mod lift;
mod machine;
mod place;
mod protector;
mod route;
mod slab;
mod slab_figure;
mod slab_sides;
mod slab_taped;
mod slab_ties;
mod slab_words;
mod stone;
mod support;
mod today;
mod tools;
mod top;
mod whole;

pub(super) use whole::job;
