//! The way in, place by place.

use crate::document::block::{Block, Cell, Column, Table};
use crate::document::say::{cell, name, plain, say, value};
use crate::handle::moving::Moving;
use crate::handle::route::{Fit, Passage, Walk};
use crate::words::Value;

/// The way of the slab and of the top, when the job names places on it.
pub(in crate::document) fn blocks(moving: &Moving) -> Vec<Block> {
    let Some(way) = &moving.route else {
        return Vec::new();
    };
    [&way.slab, &way.top]
        .into_iter()
        .flat_map(|walk| {
            [
                Block::Heading(say(
                    "annex-way-of",
                    [("name", Value::term(walk.name.clone()))],
                )),
                Block::Table(table(walk)),
            ]
        })
        .chain([Block::Text(plain("annex-way-note"))])
        .collect()
}

fn table(walk: &Walk) -> Table {
    Table {
        columns: vec![
            Column::words(value("annex-way-place", []), 70),
            Column::words(value("annex-way-carried", []), 40),
            Column::words(value("annex-way-spare", []), 70),
        ],
        rows: walk.passages.iter().map(row).collect(),
    }
}

fn row(passage: &Passage) -> Vec<Cell> {
    let best = passage
        .attempts
        .iter()
        .max_by(|a, b| a.fit.spare_mm().total_cmp(&b.fit.spare_mm()));
    let carried = best.map_or(Cell::Empty, |a| Cell::Value(Value::term(a.carried.words())));
    let fit = best.map_or(Cell::Empty, |a| match a.fit {
        Fit::Clears(mm) => cell("annex-way-clears", [("spare", Value::size(mm).down())]),
        Fit::Tight(mm) => cell("annex-way-tight", [("spare", Value::size(mm).down())]),
        Fit::Short(mm) => cell("annex-way-short", [("short", Value::size(mm).up())]),
    });
    vec![name(&passage.at.what).into(), carried, fit]
}
