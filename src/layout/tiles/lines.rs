//! The lines and words of one tile.

use super::tile::Tile;
use crate::geom::{Bounds, Point, Pose, Seg, clip};
use crate::layout::item::{Anchor, Dash, Ink, Item, Path, PenStroke, Text, Typeface};
use crate::layout::pen::{MIDDLE_MM, NARROW_MM, WIDE_MM};
use crate::layout::typeface::cap_height_mm;
use crate::template::{Role, Template};
use crate::words::Writer;

/// Size of numbers and names, points.
const LETTERS_PT: f64 = 9.0;

/// How a line is drawn: its middle is where it is.
pub(super) const fn stroke(role: Role) -> PenStroke {
    match role {
        Role::Keep => PenStroke::solid(WIDE_MM, Ink::Black),
        Role::Saw => PenStroke::solid(MIDDLE_MM, Ink::Accent).dashed(Dash::Dashed),
        Role::Slab => PenStroke::solid(MIDDLE_MM, Ink::Black).dashed(Dash::DashDot),
        Role::Slot => PenStroke::solid(NARROW_MM, Ink::Grey),
        Role::Station => PenStroke::solid(MIDDLE_MM, Ink::Black),
        Role::Flange => PenStroke::solid(WIDE_MM, Ink::Black).dashed(Dash::Dotted),
        Role::Mark => PenStroke::solid(NARROW_MM, Ink::Black),
    }
}

/// What a tile shows of a template that lies at a pose.
pub(super) fn items(template: &Template, pose: Pose, tile: &Tile, writer: Writer) -> Vec<Item> {
    let on_page = |at: Point| pose.apply(at) + tile.shift;
    let to_page = Pose::new(pose.turn, pose.shift + tile.shift);
    let mut items = Vec::new();
    for line in &template.lines {
        let posed = line.segs.iter().map(|seg| seg.posed(to_page));
        let runs: Vec<Vec<Seg>> = joined(posed.flat_map(|s| clip::inside(&s, tile.frame)));
        if !runs.is_empty() {
            items.push(Path::open(runs, stroke(line.role)).into());
        }
    }
    for label in &template.labels {
        let at = on_page(label.at);
        if holds(tile.frame, at) {
            items.push(words(&writer.write(&label.words), at, tile.frame).into());
        }
    }
    items
}

/// Pieces that follow each other as one run, so that dashes go on round corners.
fn joined(segs: impl Iterator<Item = Seg>) -> Vec<Vec<Seg>> {
    const SAME_MM: f64 = 1e-6;
    let mut runs: Vec<Vec<Seg>> = Vec::new();
    for seg in segs {
        let goes_on = |run: &&mut Vec<Seg>| {
            run.last()
                .is_some_and(|l| l.end().distance(seg.start()) < SAME_MM)
        };
        match runs.last_mut().filter(goes_on) {
            Some(run) => run.push(seg),
            None => runs.push(vec![seg]),
        }
    }
    runs
}

fn holds(area: Bounds, at: Point) -> bool {
    area.gap(&Bounds::around([at])) <= 0.0
}

/// Words about a point, moved so that they stay in the frame.
fn words(words: &str, at: Point, frame: Bounds) -> Text {
    let cap = cap_height_mm(Typeface::Bold, LETTERS_PT);
    let base = Point::new(at.x, at.y - cap / 2.0);
    let text = Text::new(words, base, Typeface::Bold, LETTERS_PT).anchored(Anchor::Middle);
    let half = text.width_mm() / 2.0 + 1.0;
    let keep = |v: f64, low: f64, high: f64| v.min(high).max(low);
    Text {
        at: Point::new(
            keep(base.x, frame.min.x + half, frame.max.x - half),
            keep(base.y, frame.min.y + 1.0, frame.max.y - cap - 1.0),
        ),
        ..text
    }
}
