//! A tile, what is said on it, and where it lies.

use crate::geom::{Bounds, Point, Pose, Vector};
use crate::layout::item::{Paper, Sheet};
use crate::words::{Message, Writer};

/// White edge that a printer may leave, mm (judgement: more than common printers need).
pub(super) const EDGE_MM: f64 = 8.0;
/// The strip below the lines for the tile's name and the level bar, and the one beside them for the
/// upright bar, mm.
pub(super) const STRIP_MM: (f64, f64) = (9.0, 24.0);
/// So far neighbours show the same, mm.
pub(super) const OVERLAP_MM: f64 = 10.0;
/// A tile by its column from the left and its row from below, both from 0.
pub(super) type Cell = (usize, usize);

/// What to print on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Format {
    /// Sheets to be joined.
    Tiles(Paper),
    /// One page as long as it must be.
    Roll,
}

/// What is said on every page, and how it is printed.
#[derive(Clone, Debug)]
pub struct WantedSheets<'a> {
    /// Title of the job.
    pub job: &'a str,
    /// Date of the job.
    pub date: &'a str,
    /// What tells the plan from others.
    pub plan: &'a str,
    /// Units and language.
    pub writer: Writer,
    /// The paper.
    pub format: Format,
    /// The two bars as measured on an earlier print, across and up, mm.
    pub measured: Option<[f64; 2]>,
}

/// The pages, and where on them the templates lie.
#[derive(Clone, Debug)]
pub struct Printed {
    /// The pages.
    pub sheet: Sheet,
    /// One for each template.
    pub templates: Vec<Tiled>,
}

/// A template on its tiles.
#[derive(Clone, Debug)]
pub struct Tiled {
    /// Carries the slab's frame into that of the tiles laid together.
    pub pose: Pose,
    /// The tiles.
    pub tiles: Vec<Tile>,
}

/// One tile.
#[derive(Clone, Debug)]
pub struct Tile {
    /// Its name: a letter for the row, a number for the column.
    pub name: String,
    /// The page that it is, counted from 0.
    pub page: usize,
    /// What a place of the tiles laid together is moved by to its place on the page, mm.
    pub shift: Vector,
    /// The part of the page that shows lines.
    pub frame: Bounds,
    pub(super) cell: Cell,
}

/// The lower left corner of a tile among the tiles laid together.
pub(super) fn corner((column, row): Cell, pitch: (f64, f64)) -> Point {
    #[allow(clippy::cast_precision_loss)]
    Point::new(column as f64 * pitch.0, row as f64 * pitch.1)
}

/// A message without gaps.
pub(super) fn plain(writer: Writer, id: &'static str) -> String {
    writer.say(&Message::plain(id))
}
