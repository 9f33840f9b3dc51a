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
mod join;
mod svg;
mod svg_path;

use std::collections::BTreeMap;

pub(super) use arcs::WITHIN_MM;
pub(super) use content::Drawing;
use content::Piece;
pub(super) use figure::Drawn;

use crate::geom::Vector;

/// The texts of the drawings that a job names, by the name it has for each; what stands against
/// reading one, in words.
pub type Drawings = BTreeMap<String, Result<String, String>>;

/// The longest drawing that is read, bytes (judgement: many times what an outline needs).
pub const LONGEST_DRAWING: usize = 1024 * 1024;
/// The most pieces of an outline that are looked at (judgement).
const MOST_BITS: usize = 5_000;

/// The name of a file and, behind a #, the name of an outline in it.
pub(super) fn split_name(text: &str) -> (&str, Option<&str>) {
    match text.split_once('#') {
        Some((file, outline)) => (file.trim(), Some(outline.trim())),
        None => (text.trim(), None),
    }
}

/// Whether a name is no plain path downwards from the job file's folder.
pub(super) fn leads_out(name: &str) -> bool {
    let rooted = name.starts_with(['/', '\\', '~']) || name.contains(':');
    rooted || name.is_empty() || name.split(['/', '\\']).any(|part| part == "..")
}

impl Drawing {
    /// Reads a drawing by the ending of its name.
    ///
    /// # Errors
    /// What is wrong with it, in words.
    pub(super) fn read(name: &str, text: &str) -> Result<Self, String> {
        if text.len() > LONGEST_DRAWING {
            return Err(format!("it has more than {LONGEST_DRAWING} bytes"));
        }
        let ending = name.rsplit('.').next().unwrap_or("").to_lowercase();
        match ending.as_str() {
            "svg" => svg::read(text),
            "dxf" => dxf::read(text),
            _ => Err("a drawing is a file whose name ends in .svg or .dxf".to_owned()),
        }
    }

    /// The closed outline of a name, or the only one there is; `without` are names of marks.
    ///
    /// # Errors
    /// What is wrong with it, in words that name the element.
    pub(super) fn outline(
        &self,
        wanted: Option<&str>,
        without: &[&str],
        mm_per_unit: f64,
    ) -> Result<Drawn, String> {
        let chosen = |ids: &[String]| {
            wanted.map_or_else(
                || !ids.iter().any(|id| without.contains(&id.as_str())),
                |name| ids.iter().any(|id| id == name),
            )
        };
        if let Some(refused) = self.refused.iter().find(|r| chosen(&r.ids)) {
            return Err(format!("{}: {}", refused.name, refused.why));
        }
        let pieces: Vec<&Piece> = self.pieces.iter().filter(|p| chosen(&p.ids)).collect();
        if pieces.is_empty() {
            let there = self.names();
            return Err(wanted.map_or_else(
                || "it has no lines in it".to_owned(),
                |name| format!("nothing in it is called {name}; there is {there}"),
            ));
        }
        if pieces.iter().map(|p| p.bits.len()).sum::<usize>() > MOST_BITS {
            return Err(format!(
                "the outline has more than {MOST_BITS} pieces, which is the most that is read"
            ));
        }
        let scaled: Vec<Piece> = pieces.iter().map(|p| p.scaled(mm_per_unit)).collect();
        let bits = join::one(&scaled)?;
        figure::of(&arcs::found(&bits))
    }
}

/// Where the frame of a figure taken from a drawing lies in it, for others in the same drawing.
#[derive(Clone, Debug)]
pub(super) struct Frame {
    /// The drawing.
    pub(super) file: String,
    /// Millimetres in its unit.
    pub(super) mm_per_unit: f64,
    /// From the drawing's origin to the figure's, mm.
    pub(super) shift: Vector,
}
