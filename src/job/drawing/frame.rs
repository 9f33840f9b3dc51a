//! A drawing read: its parts by name, and the frame they are put in.

use std::collections::BTreeMap;

use crate::geom::Vector;
use crate::job::drawing::content::DrawnPath;

use super::{Drawing, Drawn, arcs, figure, join, svg};

/// The texts of the drawings that a job names, by the name it has for each; what stands against
/// reading one, in words.
pub type Drawings = BTreeMap<String, Result<String, String>>;

/// The longest drawing that is read, bytes (judgement: many times what an outline needs).
pub const LONGEST_DRAWING: usize = 1024 * 1024;

/// The most pieces of an outline that are looked at (judgement).
const MOST_BITS: usize = 5_000;

/// The name of a file and, behind a #, the name of an outline in it.
pub(in crate::job) fn split_name(text: &str) -> (&str, Option<&str>) {
    match text.split_once('#') {
        Some((file, outline)) => (file.trim(), Some(outline.trim())),
        None => (text.trim(), None),
    }
}

/// Whether a name is no plain path downwards from the job file's folder.
pub(in crate::job) fn leads_out(name: &str) -> bool {
    let rooted = name.starts_with(['/', '\\', '~']) || name.contains(':');
    rooted || name.is_empty() || name.split(['/', '\\']).any(|part| part == "..")
}

impl Drawing {
    /// Reads a drawing by the ending of its name.
    ///
    /// # Errors
    /// What is wrong with it, in words.
    pub(in crate::job) fn read(name: &str, text: &str) -> Result<Self, String> {
        if text.len() > LONGEST_DRAWING {
            return Err(format!("it has more than {LONGEST_DRAWING} bytes"));
        }
        let ending = name.rsplit('.').next().unwrap_or("").to_lowercase();
        match ending.as_str() {
            "svg" => svg::read(text),
            "dxf" => super::dxf::read(text),
            _ => Err("a drawing is a file whose name ends in .svg or .dxf".to_owned()),
        }
    }

    /// The closed outline of a name, or the only one there is; `without` are names of marks.
    ///
    /// # Errors
    /// What is wrong with it, in words that name the element.
    pub(in crate::job) fn outline(
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
        let pieces: Vec<&DrawnPath> = self.pieces.iter().filter(|p| chosen(&p.ids)).collect();
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
        let scaled: Vec<DrawnPath> = pieces.iter().map(|p| p.scaled(mm_per_unit)).collect();
        let bits = join::one(&scaled)?;
        figure::of(&arcs::found(&bits))
    }
}

/// Where the frame of a figure taken from a drawing lies in it, for others in the same drawing.
#[derive(Clone, Debug)]
pub(in crate::job) struct FigureFrame {
    /// The drawing.
    pub(in crate::job) file: String,
    /// Millimetres in its unit.
    pub(in crate::job) mm_per_unit: f64,
    /// From the drawing's origin to the figure's, mm.
    pub(in crate::job) shift: Vector,
}
