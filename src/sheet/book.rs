//! Pages put together one after another.

use super::figure::Figures;
use super::flow::{Block, Column, Mark, Scale};
use super::frame::Frame;
use super::item::{Item, Page, Sheet};
use super::table::{Placed, Table};
use crate::plan::Plan;
use crate::words::{Catalogue, Language};

/// A sheet being written.
#[derive(Debug)]
pub struct Book<'a> {
    /// The plan it is about.
    pub plan: &'a Plan,
    /// How its numbers are printed.
    pub figures: Figures,
    /// The words of the helper's and the safety page.
    pub words: &'static Catalogue,
    frame: Frame,
    pages: Vec<Page>,
}

/// What a page is filled with, from top to bottom.
#[derive(Clone, Debug)]
pub enum Part {
    /// Text.
    Block(Block),
    /// A table.
    Table(Table),
}

impl From<Block> for Part {
    fn from(block: Block) -> Self {
        Self::Block(block)
    }
}

impl From<Table> for Part {
    fn from(table: Table) -> Self {
        Self::Table(table)
    }
}

impl<'a> Book<'a> {
    /// An empty sheet.
    #[must_use]
    pub fn new(plan: &'a Plan, frame: Frame) -> Self {
        Self {
            plan,
            figures: Figures {
                units: plan.job.units,
            },
            words: Catalogue::of(plan.job.language),
            frame,
            pages: Vec::new(),
        }
    }

    /// A fresh column over a whole page.
    #[must_use]
    pub fn column(&self, scale: Scale) -> Column {
        self.frame.column(scale)
    }

    /// Adds a finished page.
    pub fn add(&mut self, name: &str, items: Vec<Item>) {
        self.pages.push(Page {
            name: name.into(),
            items,
        });
    }

    /// Fills a page that has been begun with parts and goes on on further pages of the same name.
    pub fn fill(&mut self, name: &str, mut column: Column, parts: &[Part]) {
        let scale = column.scale;
        let mut parts = parts.to_vec();
        let (mut at, mut row) = (0, 0);
        while at < parts.len() {
            let done = match &parts[at] {
                Part::Block(_) => {
                    let run = blocks_from(&parts[at..]);
                    let placed = pour(&mut column, &run, parts.get(at + run.len()));
                    at += placed;
                    placed == run.len()
                }
                Part::Table(table) => match table.place(row, &mut column) {
                    Placed::All => {
                        (at, row) = (at + 1, 0);
                        true
                    }
                    Placed::GoesOn(next) => {
                        row = next;
                        false
                    }
                    // A row higher than a page cannot be printed whole; the next one is.
                    Placed::RowTooHigh(next) => {
                        row = next + 1;
                        true
                    }
                },
            };
            if done {
                continue;
            }
            if let (Some(Part::Block(heading)), Some(Part::Block(list))) =
                (parts.get(at), parts.get(at + 1))
                && heading.belongs_to_next()
            {
                // A heading stays with the entries of its list that still fit.
                let mut trial = column.clone();
                trial.place(heading);
                if let Some((now, rest)) = broken(&trial, list) {
                    trial.place(&now);
                    column = trial;
                    at += 1;
                    parts[at] = rest.into();
                }
            } else if let Some(Part::Block(block)) = parts.get(at) {
                if let Some((now, rest)) = broken(&column, block) {
                    column.place(&now);
                    parts[at] = rest.into();
                } else if column.is_fresh() {
                    // Higher than a whole page: placed all the same rather than dropped.
                    column.place(block);
                    at += 1;
                }
            }
            self.add(name, std::mem::take(&mut column.items));
            column = self.frame.column(scale);
        }
        if !column.items.is_empty() {
            self.add(name, column.items);
        }
    }

    /// Pages of parts alone.
    pub fn flow(&mut self, name: &str, scale: Scale, parts: &[Part]) {
        let column = self.column(scale);
        self.fill(name, column, parts);
    }

    /// The sheet, its pages numbered.
    #[must_use]
    pub fn bind(self) -> Sheet {
        let own = ["safety.name", "helper.name"].map(|id| self.words.text(id));
        let words_of = |name: &str| {
            if own.contains(&name) {
                self.words
            } else {
                Catalogue::of(Language::English)
            }
        };
        self.frame.bind(self.pages, words_of)
    }
}

fn blocks_from(parts: &[Part]) -> Vec<Block> {
    parts
        .iter()
        .map_while(|p| match p {
            Part::Block(block) => Some(block.clone()),
            Part::Table(_) => None,
        })
        .collect()
}

/// A list's entries that still fit, and the rest as a list that counts on.
fn broken(column: &Column, block: &Block) -> Option<(Block, Block)> {
    let Block::List(mark, entries) = block else {
        return None;
    };
    let first = |n: usize| Block::List(*mark, entries[..n].to_vec());
    let fitting = (1..entries.len()).rev().find(|n| column.fits(&first(*n)))?;
    let rest = match mark {
        Mark::From(start) => Mark::From(start + fitting),
        other => *other,
    };
    Some((
        first(fitting),
        Block::List(rest, entries[fitting..].to_vec()),
    ))
}

/// Pours blocks; a heading right before a table stays with the table's first rows.
fn pour(column: &mut Column, blocks: &[Block], next: Option<&Part>) -> usize {
    let heading_last = blocks.last().is_some_and(Block::belongs_to_next);
    if !(next.is_some() && heading_last) {
        return column.pour(blocks);
    }
    let body = &blocks[..blocks.len() - 1];
    let placed = column.pour(body);
    if placed < body.len() {
        return placed;
    }
    let heading = &blocks[body.len()];
    let table_head = match next {
        Some(Part::Table(table)) => 4.0 * table.style.leading_mm,
        _ => 0.0,
    };
    if column.height_of(heading) + table_head > column.left() {
        return placed;
    }
    column.place(heading);
    blocks.len()
}
