//! The fewest tiles that carry every line of a drawing, over turns and shifts of it.

use super::tile::Cell;
use crate::geom::{Bounds, Point, Pose, Vector};

/// Turns that are tried, 1° apart over half a turn: beyond it the tiles are the same, upside down.
const TURNS: u32 = 180;
/// Shifts that are tried along each side of a tile.
const SHIFTS: u32 = 12;
/// What a drawing in one more group of tiles costs, in tiles: groups cannot be joined by their edges.
const APART: usize = 20;

/// A drawing laid on tiles.
#[derive(Clone, Debug)]
pub(super) struct Laid {
    /// Carries the drawing into the frame of the tiles, whose corner is the origin.
    pub(super) pose: Pose,
    /// The tiles that carry something: row after row from above, each from the left.
    pub(super) cells: Vec<Cell>,
}

/// The fewest tiles of a width and a height in mm for points along the lines. Turns that keep the
/// drawing square to the paper come first among equals.
pub(super) fn fewest(points: &[Point], pitch: (f64, f64)) -> Laid {
    let mut best: Option<(usize, Laid)> = None;
    for step in 0..TURNS {
        let turn = f64::from(square_first(step)).to_radians();
        let turned = turned(points, turn);
        let low = Bounds::around(turned.iter().copied()).min;
        for shift in 0..SHIFTS * SHIFTS {
            let share = |n: u32| f64::from(n) / f64::from(SHIFTS);
            let (across, up) = (share(shift % SHIFTS), share(shift / SHIFTS));
            let by = Vector::new(across * pitch.0 - low.x, up * pitch.1 - low.y);
            let most = best.as_ref().map_or(usize::MAX, |b| b.0);
            let cells = cells(&turned, by, pitch, most);
            if cells.len() >= most {
                continue;
            }
            let cost = cells.len() + APART * (groups(&cells) - 1);
            if cost < most {
                let pose = Pose::new(turn, by);
                best = Some((cost, Laid { pose, cells }));
            }
        }
    }
    best.map_or(
        Laid {
            pose: Pose::default(),
            cells: Vec::new(),
        },
        |b| b.1,
    )
}

/// The turn, in degrees and in the shift's frame, at which a drawing is lowest: for a roll.
pub(super) fn lowest(points: &[Point]) -> Pose {
    let all = (0..TURNS).map(|step| {
        let turn = f64::from(square_first(step)).to_radians();
        (turn, Bounds::around(turned(points, turn)))
    });
    // A tenth of a millimetre is not worth a turn.
    let height = |b: &Bounds| (b.height() * 10.0).round();
    let best = all.min_by(|a, b| height(&a.1).total_cmp(&height(&b.1)));
    best.map_or(Pose::default(), |(turn, bounds)| {
        Pose::new(turn, Vector::new(-bounds.min.x, -bounds.min.y))
    })
}

/// 0, 90, then all the others.
const fn square_first(step: u32) -> u32 {
    match step {
        0 => 0,
        1 => 90,
        2..=90 => step - 1,
        _ => step,
    }
}

fn turned(points: &[Point], turn: f64) -> Vec<Point> {
    let pose = Pose::new(turn, Vector::default());
    points.iter().map(|p| pose.apply(*p)).collect()
}

/// The tiles that points lie on; the count stops at `most`.
fn cells(points: &[Point], by: Vector, pitch: (f64, f64), most: usize) -> Vec<Cell> {
    let mut cells: Vec<Cell> = Vec::new();
    for point in points {
        let at = *point + by;
        // Never below 0: the lowest point lies at 0 or above.
        #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
        let index = |v: f64, pitch: f64| (v / pitch).max(0.0) as usize;
        let cell = (index(at.x, pitch.0), index(at.y, pitch.1));
        // Points come in order along the lines: the tile is mostly one of the last.
        if !cells.iter().rev().any(|c| *c == cell) {
            cells.push(cell);
            if cells.len() >= most {
                break;
            }
        }
    }
    cells.sort_by_key(|(column, row)| (std::cmp::Reverse(*row), *column));
    cells
}

/// In how many groups tiles hang together by their sides; 1 for none.
fn groups(cells: &[Cell]) -> usize {
    let mut left = cells.to_vec();
    let mut count = 0;
    while let Some(first) = left.pop() {
        count += 1;
        let mut open = vec![first];
        while let Some((column, row)) = open.pop() {
            let beside = |c: &Cell| c.0.abs_diff(column) + c.1.abs_diff(row) == 1;
            open.extend(left.iter().copied().filter(beside));
            left.retain(|c| !beside(c));
        }
    }
    count.max(1)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn line(from: Point, to: Point) -> Vec<Point> {
        (0..=200)
            .map(|i| from + (to - from) * (f64::from(i) / 200.0))
            .collect()
    }

    #[test]
    fn a_slanting_line_is_turned_along_the_tiles() {
        let slant = line(Point::ORIGIN, Point::new(600.0, 600.0));
        let laid = fewest(&slant, (180.0, 250.0));
        // 849 mm along tiles of 250 mm take four, and no turn takes fewer.
        assert_eq!(laid.cells.len(), 4, "{laid:?}");
    }

    #[test]
    fn what_fits_one_tile_takes_one_and_lies_square() {
        let small = line(Point::new(-900.0, 40.0), Point::new(-800.0, 40.0));
        let laid = fewest(&small, (180.0, 250.0));
        assert_eq!(laid.cells.len(), 1);
        assert_eq!(laid.pose.turn, 0.0);
    }

    #[test]
    fn tiles_that_touch_only_at_a_corner_are_apart() {
        assert_eq!(groups(&[(0, 0), (1, 1)]), 2);
        assert_eq!(groups(&[(0, 0), (1, 0), (1, 1)]), 1);
    }
}
