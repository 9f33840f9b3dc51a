//! Sources and assumptions: what the numbers rest on.

use crate::sheet::book::{Book, Part};
use crate::sheet::flow::{Block, Scale};
use crate::sheet::table::{Heading, Table, Width};
use crate::tables::Sure;

/// Adds the pages.
pub fn add(book: &mut Book<'_>) {
    let plan = book.plan;
    let mut parts: Vec<Part> =
        vec![Block::Heading("Assumed, because the job file does not say".into()).into()];
    if plan.assumed.is_empty() {
        parts.push(Block::Paragraph("Nothing was assumed.".into()).into());
    } else {
        parts.push(assumed_table(book).into());
    }
    parts.push(Block::Heading("Published sources".into()).into());
    parts.push(
        Block::Paragraph(
            "Limits change. Each is printed with its document and year: check your current rules. \
             \"As quoted elsewhere\" means the document itself was not read."
                .into(),
        )
        .into(),
    );
    parts.push(source_table(book, false).into());
    parts.push(Block::Heading("Common practice, judgement, memory".into()).into());
    parts.push(
        Block::Paragraph(
            "No published source stands behind these. The job file can change most of them.".into(),
        )
        .into(),
    );
    parts.push(source_table(book, true).into());
    book.flow("Sources and assumptions", Scale::DESK, &parts);
}

fn assumed_table(book: &Book<'_>) -> Table {
    let rows = book
        .plan
        .assumed
        .iter()
        .map(|a| vec![a.key.clone(), a.value.clone(), a.why.clone()]);
    Table {
        headings: vec![
            Heading::words("Key", Width::Mm(42.0)),
            Heading::words("Taken", Width::Mm(48.0)),
            Heading::words("Why", Width::Part(1.0)),
        ],
        rows: rows.collect(),
        style: Scale::DESK.small,
    }
}

fn source_table(book: &Book<'_>, unsourced: bool) -> Table {
    let is_unsourced = |s: Sure| matches!(s, Sure::Practice | Sure::Judgement | Sure::Memory);
    let rows = book
        .plan
        .sources
        .iter()
        .filter(|s| is_unsourced(s.sure) == unsourced)
        .map(|s| vec![sentence(s.what), s.cite()]);
    Table {
        headings: vec![
            Heading::words("What", Width::Part(1.0)),
            Heading::words("Document", Width::Part(1.2)),
        ],
        rows: rows.collect(),
        style: Scale::DESK.small,
    }
}

fn sentence(text: &str) -> String {
    super::glance::sentence(text)
}
