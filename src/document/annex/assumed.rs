//! What the plan assumed.

use crate::document::block::{Block, Column, Table};
use crate::document::say::{name, value};
use crate::job::Assumption;

/// Values that the job file left open, as a table.
pub(in crate::document) fn assumed(all: &[Assumption]) -> Vec<Block> {
    let rows = all.iter().map(|a| {
        vec![
            name(&a.key).into(),
            name(&a.value).into(),
            name(&a.why).into(),
        ]
    });
    let rows: Vec<_> = rows.collect();
    if rows.is_empty() {
        return Vec::new();
    }
    vec![Block::Table(Table {
        columns: vec![
            Column::words(value("annex-key", []), 45),
            Column::words(value("annex-value", []), 45),
            Column::words(value("annex-why", []), 90),
        ],
        rows,
    })]
}
