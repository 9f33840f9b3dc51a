//! Drawings that a figure is taken from: SVG and DXF texts, read into pieces of lines, arcs and curves,
//! joined to one closed outline of lines and arcs, whose corners get names.
//!
//! | file | operation |
//! |---|---|
//! | [`mod@self`] | from a drawing's text to a figure |
//! | `content`, `bit` | what a drawing holds |
//! | `svg`, `svg_path` | the elements of an SVG; the data of a path |
//! | `dxf`, `dxf_pairs` | the entities of a DXF; what of its text is looked at |
//! | `affine` | turned, scaled, mirrored, slanted |
//! | `join` | pieces end to end, closed |
//! | `arcs` | arcs found again in short chords and in curves |
//! | `figure` | corners, rounded corners, bowed edges |

mod affine;
mod arcs;
mod bit;
mod content;
mod dxf;
mod dxf_pairs;
mod figure;
mod frame;
mod join;
mod svg;
mod svg_path;

pub(super) use frame::FigureFrame;
pub(super) use frame::leads_out;
pub(super) use frame::split_name;
pub use frame::{Drawings, LONGEST_DRAWING};

pub(super) use arcs::WITHIN_MM;
pub(super) use content::Drawing;
pub(super) use figure::Drawn;
