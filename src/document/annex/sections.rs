//! The sections of the annex.

use crate::document::block::{Block, Column, DocumentPart, Reading, Section, Sharing, Table};
use crate::document::say::{cell, name, plain, value};
use crate::plan::Plan;
use crate::words::{Language, Value};

use super::{assumed, findings, health, stone, strength, way};

/// The sections.
pub(in crate::document) fn sections(plan: &Plan) -> Vec<Section> {
    let chapters = [
        ("annex-findings", findings::blocks(plan)),
        ("annex-stone", stone::blocks(plan)),
        ("annex-strength", strength::blocks(plan)),
        ("annex-way", way::blocks(&plan.handling.moving)),
        ("annex-health", health::blocks(plan)),
        ("annex-assumed", assumed(&plan.assumed)),
        ("annex-sources", sources(plan)),
    ];
    chapters
        .into_iter()
        .filter(|(_, blocks)| !blocks.is_empty())
        .map(|(id, mut blocks)| {
            blocks.insert(0, Block::Title(Vec::new(), plain(id)));
            Section {
                part: DocumentPart::Annex,
                sharing: Sharing::Alone,
                reading: Reading::Desk,
                language: Language::English,
                name: plain(id),
                foot: plain("bench-foot"),
                blocks,
            }
        })
        .collect()
}

fn sources(plan: &Plan) -> Vec<Block> {
    let rows = plan.sources.iter().map(|s| {
        vec![
            name(s.what).into(),
            name(s.document).into(),
            name(s.clause).into(),
            if s.year == 0 {
                cell("annex-no-year", [])
            } else {
                Value::Name(s.year.to_string()).into()
            },
        ]
    });
    let rows: Vec<_> = rows.collect();
    if rows.is_empty() {
        return Vec::new();
    }
    vec![Block::Table(Table {
        columns: vec![
            Column::words(value("annex-what", []), 80),
            Column::words(value("annex-document", []), 55),
            Column::words(value("annex-clause", []), 30),
            Column::words(value("annex-year", []), 12),
        ],
        rows,
    })]
}
