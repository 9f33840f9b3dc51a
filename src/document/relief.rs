//! Relief cuts as rows of a table.

use super::block::Cell;
use super::mark;
use super::say::cell;
use crate::cut::Cut;
use crate::words::Value;

/// A relief cut as a row: its number, its marks, its depths.
pub(super) fn relief_row(cut: &Cut) -> Vec<Cell> {
    let lines = mark::lines(cut);
    let guide = lines.iter().find(|l| l.guide);
    let ends = guide.map_or(Cell::Empty, |l| {
        cell(
            "bench-two-marks",
            [
                ("first", Value::name(&l.names[0])),
                ("second", Value::name(&l.names[1])),
            ],
        )
    });
    let last = cut.passes.last().map_or(0.0, |p| p.depth);
    vec![
        Cell::Value(cut.number.into()),
        ends,
        Cell::Value(Value::size(cut.length)),
        Cell::Value(Value::tape(last).up()),
        Cell::Tick,
    ]
}
