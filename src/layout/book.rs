//! Sections one after another over as many pages as they need, before they have heads and feet.

use super::heights::Heights;
use super::item::{Item, Paper};
use super::setter::{Said, Setter};
use super::voice::Type;
use crate::document::block::{Block, Document, Section, Table};
use crate::geom::{Bounds, Point};
use crate::words::Writer;

/// White edge all around, mm.
pub(super) const MARGIN_MM: f64 = 14.0;
/// Height of the head and of the foot with the space to the content, mm.
const HEAD_MM: f64 = 9.5;
const FOOT_MM: f64 = 8.0;
/// A drawing that is well seen keeps this part of the height it likes (judgement).
pub(super) const WELL: f64 = 0.62;

/// A page's content before it has a head and a foot.
pub(super) struct Filled<'a> {
    pub(super) section: &'a Section,
    pub(super) name: String,
    pub(super) items: Vec<Item>,
}

/// A document on a paper.
pub(super) struct Book<'a> {
    pub(super) document: &'a Document,
    pub(super) paper: Paper,
    /// What blocks of the bench pages are found to need.
    pub(super) heights: Heights,
}

impl<'a> Book<'a> {
    pub(super) fn area(&self) -> Bounds {
        let (width, height) = self.paper.size_mm();
        Bounds {
            min: Point::new(MARGIN_MM, MARGIN_MM + FOOT_MM - 3.0),
            max: Point::new(width - MARGIN_MM, height - MARGIN_MM - HEAD_MM + 2.0),
        }
    }

    pub(super) fn setter(
        &self,
        section: &Section,
        step: usize,
        (said, least_share): (Said, f64),
    ) -> Setter {
        Setter {
            least_share,
            said,
            to_scale: true,
            writer: Writer::new(self.document.system, section.language),
            kind: Type::of(section.reading, step),
            page_mm: self.area().height(),
        }
    }

    /// Blocks one after another over as many pages as they need.
    pub(super) fn flow(&self, sections: &[&'a Section], step: usize) -> Vec<Filled<'a>> {
        let mut pages: Vec<Filled<'a>> = Vec::new();
        let mut run = OpenPage::new(self.area());
        for section in sections {
            let setter = self.setter(section, step, (Said::InFull, WELL));
            let name = setter.writer.say(&section.name);
            let mut rest: Vec<Block> = section.blocks.iter().rev().cloned().collect();
            if let Some(page) = run.page.as_mut().filter(|_| !run.items.is_empty()) {
                page.1 = format!("{} · {name}", page.1);
            }
            run.page.get_or_insert((*section, name.clone()));
            while let Some(block) = rest.pop() {
                let keeps = rest.last().filter(|_| block.leads());
                match run.take(&setter, &block, keeps) {
                    Taken::All => {}
                    Taken::Part(left) => {
                        rest.push(left);
                        pages.extend(run.turn(section, &name));
                    }
                    Taken::None => {
                        rest.push(block);
                        pages.extend(run.turn(section, &name));
                    }
                }
            }
        }
        pages.extend(run.last());
        pages
    }
}

/// A page being filled.
struct OpenPage<'a> {
    area: Bounds,
    y: f64,
    items: Vec<Item>,
    page: Option<(&'a Section, String)>,
}

/// What became of a block.
enum Taken {
    All,
    Part(Block),
    None,
}

impl<'a> OpenPage<'a> {
    const fn new(area: Bounds) -> Self {
        Self {
            area,
            y: area.max.y,
            items: Vec::new(),
            page: None,
        }
    }

    /// Places a block, or what fits of it; a heading only with something of what it leads.
    fn take(&mut self, setter: &Setter, block: &Block, next: Option<&Block>) -> Taken {
        let fresh = self.items.is_empty();
        let gap = if fresh { 0.0 } else { setter.gap_before(block) };
        let left = self.y - gap - self.area.min.y;
        let width = self.area.width();
        let after = next.map_or(0.0, |n| {
            let whole = setter.extent(n, width).least;
            let begun = entries(n).map_or(whole, |_| whole.min(24.0));
            begun + setter.gap_before(n)
        });
        let fits = |b: &Block| setter.extent(b, width).least + after <= left;
        if fits(block) || fresh && entries(block).is_none() {
            self.put(setter, block, gap, left);
            return Taken::All;
        }
        let Some(count) = entries(block) else {
            return Taken::None;
        };
        let most = (1..count).rev().find(|n| fits(&cut(block, 0, *n)));
        match most.or(fresh.then_some(1)) {
            Some(n) if n < count => {
                self.put(setter, &cut(block, 0, n), gap, left);
                Taken::Part(cut(block, n, count))
            }
            Some(_) => {
                self.put(setter, block, gap, left);
                Taken::All
            }
            None => Taken::None,
        }
    }

    fn put(&mut self, setter: &Setter, block: &Block, gap: f64, left: f64) {
        let liked = setter.extent(block, self.area.width()).liked;
        let top = self.y - gap;
        let part = Bounds {
            min: Point::new(self.area.min.x, top - liked.min(left)),
            max: Point::new(self.area.max.x, top),
        };
        let (items, used) = setter.stack(std::slice::from_ref(block), part);
        self.items.extend(items);
        self.y = top - used;
    }

    /// The page as filled; the next begins.
    fn turn(&mut self, section: &'a Section, name: &str) -> Option<Filled<'a>> {
        let page = self.last();
        self.y = self.area.max.y;
        self.page = Some((section, name.to_owned()));
        page
    }

    fn last(&mut self) -> Option<Filled<'a>> {
        let items = std::mem::take(&mut self.items);
        let (section, name) = self.page.take()?;
        (!items.is_empty()).then_some(Filled {
            section,
            name,
            items,
        })
    }
}

/// How many entries a block has that may be parted from each other.
const fn entries(block: &Block) -> Option<usize> {
    match block {
        Block::Table(table) => Some(table.rows.len()),
        Block::Ticks(all) => Some(all.len()),
        Block::Notices(all) => Some(all.len()),
        Block::Facts(all) => Some(all.len()),
        _ => None,
    }
}

/// Some entries of a block.
fn cut(block: &Block, from: usize, to: usize) -> Block {
    match block {
        Block::Table(table) => Block::Table(Table {
            columns: table.columns.clone(),
            rows: table.rows[from..to].to_vec(),
        }),
        Block::Ticks(all) => Block::Ticks(all[from..to].to_vec()),
        Block::Notices(all) => Block::Notices(all[from..to].to_vec()),
        Block::Facts(all) => Block::Facts(all[from..to].to_vec()),
        other => other.clone(),
    }
}
