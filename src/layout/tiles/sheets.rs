//! A template on the fewest sheets, or along a roll.

use crate::geom::{Bounds, Point, Seg, Vector};
use crate::layout::item::{Item, Page, Paper, Sheet, Tag};
use crate::layout::tiles::grid::Laid;
use crate::layout::tiles::tile::{Cell, EDGE_MM, OVERLAP_MM, STRIP_MM, corner};
use crate::template::Template;

use super::{Format, Printed, Tile, Tiled, WantedSheets, grid, key, lines, strip};

/// White round the lines on a roll, mm.
const ROUND_MM: f64 = 6.0;

/// The longest page, mm: a PDF's page is at most 14,400 points long (ISO 32000-1, annex C).
pub const LONGEST_MM: f64 = 5000.0;

/// The shortest page of a roll, mm: its words need so much.
const SHORTEST_MM: f64 = 230.0;

/// Points along a line are no farther apart than this when tiles are counted, mm: less than the overlap
/// covers.
const APART_MM: f64 = 5.0;

/// The templates on paper.
///
/// # Errors
/// The length in mm that a roll would need, when it is more than [`LONGEST_MM`].
pub fn print(templates: &[Template], wanted: &WantedSheets<'_>) -> Result<Printed, f64> {
    let mut pages = Vec::new();
    let mut tiled = Vec::new();
    let mut paper = Paper::default();
    for template in templates {
        let (used, one) = match wanted.format {
            Format::Tiles(paper) => (paper, on_tiles(template, wanted, paper, &mut pages)),
            Format::Roll => on_roll(template, wanted, &mut pages)?,
        };
        paper = used;
        tiled.push(one);
    }
    let scale = wanted
        .measured
        .map_or([1.0; 2], |m| m.map(|bar| strip::BAR_MM / bar));
    Ok(Printed {
        sheet: Sheet {
            title: wanted.job.to_owned(),
            language: wanted.writer.language.tag(),
            date: wanted.date.to_owned(),
            paper,
            scale,
            pages,
        },
        templates: tiled,
    })
}

fn on_tiles(
    template: &Template,
    wanted: &WantedSheets<'_>,
    paper: Paper,
    pages: &mut Vec<Page>,
) -> Tiled {
    let frame = frame(paper);
    let pitch = (frame.width() - OVERLAP_MM, frame.height() - OVERLAP_MM);
    let Laid { pose, cells } = grid::fewest(&points(template), pitch);
    let rows = cells.iter().map(|c| c.1).max().unwrap_or(0);
    let first = pages.len() + 1;
    let tiles: Vec<Tile> = cells
        .iter()
        .enumerate()
        .map(|(i, cell)| Tile {
            name: name(*cell, rows),
            page: first + i,
            shift: (frame.min - corner(*cell, pitch)) + half_overlap(),
            frame,
            cell: *cell,
        })
        .collect();
    let tiled = Tiled { pose, tiles };
    pages.push(key::page(template, &tiled, wanted, (paper, pitch)));
    let each = tiled.tiles.iter();
    pages.extend(each.map(|tile| page(template, &tiled, tile, wanted, pitch)));
    tiled
}

/// One page, as long as the shape lying flat.
fn on_roll(
    template: &Template,
    wanted: &WantedSheets<'_>,
    pages: &mut Vec<Page>,
) -> Result<(Paper, Tiled), f64> {
    let points = points(template);
    let pose = grid::lowest(&points);
    let size = Bounds::around(points.iter().map(|p| pose.apply(*p)));
    let legend = key::legend_height(template);
    let width = size.width() + 2.0 * (EDGE_MM + ROUND_MM) + STRIP_MM.0;
    let height = size.height() + 2.0 * (EDGE_MM + ROUND_MM) + STRIP_MM.1 + legend;
    if width.max(height) > LONGEST_MM {
        return Err(width.max(height));
    }
    // Both are below 5000.
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
    let whole = |mm: f64| mm.ceil() as u16;
    let paper = Paper::Roll {
        width_mm: whole(width.max(SHORTEST_MM)),
        height_mm: whole(height.max(SHORTEST_MM)),
    };
    let mut frame = frame(paper);
    frame.min.y += legend;
    let tile = Tile {
        name: String::new(),
        page: pages.len(),
        shift: (frame.min - Point::ORIGIN) + Vector::new(ROUND_MM, ROUND_MM),
        frame,
        cell: (0, 0),
    };
    let tiled = Tiled {
        pose,
        tiles: vec![tile],
    };
    let whole = (frame.width(), frame.height());
    let mut page = page(template, &tiled, &tiled.tiles[0], wanted, whole);
    let at = Point::new(frame.min.x, frame.min.y - 2.0);
    page.items.extend(key::legend(template, at, wanted.writer));
    pages.push(page);
    Ok((paper, tiled))
}

/// Where the lines are on a page.
fn frame(paper: Paper) -> Bounds {
    let (width, height) = paper.size_mm();
    Bounds {
        min: Point::new(EDGE_MM + STRIP_MM.0, EDGE_MM + STRIP_MM.1),
        max: Point::new(width - EDGE_MM, height - EDGE_MM),
    }
}

fn half_overlap() -> Vector {
    Vector::new(OVERLAP_MM / 2.0, OVERLAP_MM / 2.0)
}

/// `A1` at the upper left.
fn name((column, row): Cell, rows: usize) -> String {
    format!("{}{}", crate::job::shape::letters(rows - row), column + 1)
}

/// Points along all lines.
fn points(template: &Template) -> Vec<Point> {
    let segs = template.lines.iter().flat_map(|l| &l.segs);
    segs.flat_map(along).collect()
}

fn along(seg: &Seg) -> Vec<Point> {
    // A drawing is some metres long.
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
    let steps = (seg.length() / APART_MM).ceil().clamp(1.0, 1e5) as u32;
    (0..=steps)
        .map(|i| seg.at(f64::from(i) / f64::from(steps)))
        .collect()
}

fn page(
    template: &Template,
    tiled: &Tiled,
    tile: &Tile,
    wanted: &WantedSheets<'_>,
    pitch: (f64, f64),
) -> Page {
    let writer = wanted.writer;
    let title = writer.say(&template.title);
    let mut items = vec![Item::Begin(Tag::Figure(title.clone()))];
    items.extend(lines::items(template, tiled.pose, tile, writer));
    items.push(Item::End);
    items.extend(strip::items(tiled, tile, &title, wanted));
    items.extend(strip::crosses(tiled, tile, pitch));
    Page {
        name: format!("{title} {}", tile.name).trim_end().to_owned(),
        language: writer.language.tag(),
        items,
    }
}
