//! Blocks one below the other: how high each must be and would like to be, and how the height at
//! hand is shared among them. Only drawings give way.

use std::borrow::Borrow;

use super::item::{Ink, Item, Path, PenStroke, Tag};
use super::setter::{Extent, Setter};
use super::words::numbered;
use crate::document::block::{Block, Card};
use crate::geom::{Bounds, Point};

/// Between two columns, mm.
const GUTTER_MM: f64 = 6.0;
/// Inside a card's frame, mm.
const PADDING_MM: f64 = 3.0;
/// A card's frame, and that of a card of a plan with a stop, mm.
const FRAME_MM: [f64; 2] = [0.3, 1.4];

impl Setter {
    /// Heights of blocks one below the other at a width.
    #[must_use]
    pub fn extent_of(&self, blocks: &[Block], width: f64) -> Extent {
        let each = blocks.iter().map(|b| self.extent(b, width));
        let sum = each.fold(Extent::default(), Extent::plus);
        sum.plus(Extent::fixed(self.gaps(blocks)))
    }

    /// Heights of one block at a width.
    #[must_use]
    pub fn extent(&self, block: &Block, width: f64) -> Extent {
        match block {
            Block::Figure(figure) => self.figure_extent(figure, width),
            Block::Beside(percent, left, right) => {
                let [a, b] = columns(width, *percent);
                self.extent_of(left, a).or(self.extent_of(right, b))
            }
            Block::Card(card) => {
                let inside = self.extent_of(&card.blocks, width - 2.0 * PADDING_MM);
                inside.plus(Extent::fixed(
                    self.card_head(card, width) + 2.0 * PADDING_MM,
                ))
            }
            Block::Table(table) => Extent::fixed(self.table_height(table, width)),
            _ => Extent::fixed(self.words(block, Point::ORIGIN, width).1),
        }
    }

    /// Blocks from the top of an area, drawings as high as the area lets them; the items and the
    /// height they take.
    #[must_use]
    pub fn stack<B: Borrow<Block>>(&self, blocks: &[B], area: Bounds) -> (Vec<Item>, f64) {
        let width = area.width();
        let each = blocks.iter().map(|b| self.extent(b.borrow(), width));
        let extents: Vec<Extent> = each.collect();
        let least: f64 = extents.iter().map(|e| e.least).sum();
        let more: f64 = extents.iter().map(|e| e.liked - e.least).sum();
        let spare = area.height() - least - self.gaps(blocks);
        let share = if more > 0.0 {
            (spare / more).clamp(0.0, 1.0)
        } else {
            0.0
        };
        let (mut items, mut y) = (Vec::new(), area.max.y);
        for (i, (block, extent)) in blocks.iter().zip(&extents).enumerate() {
            let block = block.borrow();
            if i > 0 {
                y -= self.gap_before(block);
            }
            let height = extent.least + share * (extent.liked - extent.least);
            let part = Bounds {
                min: Point::new(area.min.x, y - height),
                max: Point::new(area.max.x, y),
            };
            let (mut drawn, used) = self.place(block, part);
            items.append(&mut drawn);
            y -= used;
        }
        (items, area.max.y - y)
    }

    fn place(&self, block: &Block, area: Bounds) -> (Vec<Item>, f64) {
        let top = Point::new(area.min.x, area.max.y);
        match block {
            Block::Figure(figure) => self.figure(figure, area),
            Block::Beside(percent, left, right) => {
                let [a, b] = columns(area.width(), *percent);
                let column = |from: f64, width: f64| Bounds {
                    min: Point::new(area.min.x + from, area.min.y),
                    max: Point::new(area.min.x + from + width, area.max.y),
                };
                let (mut items, one) = self.stack(left, column(0.0, a));
                let (mut second, two) = self.stack(right, column(area.width() - b, b));
                items.append(&mut second);
                (items, one.max(two))
            }
            Block::Card(card) => self.card(card, area),
            Block::Table(table) => self.table(table, top, area.width()),
            _ => self.words(block, top, area.width()),
        }
    }

    fn card(&self, card: &Card, area: Bounds) -> (Vec<Item>, f64) {
        let (mut items, head) = self.card_title(card, area);
        let inside = Bounds {
            min: Point::new(area.min.x + PADDING_MM, area.min.y + PADDING_MM),
            max: Point::new(
                area.max.x - PADDING_MM,
                area.max.y - PADDING_MM - head - self.kind.gap_mm / 2.0,
            ),
        };
        let (mut body, used) = self.stack(&card.blocks, inside);
        items.append(&mut body);
        let height = used + self.card_head(card, area.width()) + 2.0 * PADDING_MM;
        let frame = Bounds {
            min: Point::new(area.min.x, area.max.y - height),
            max: area.max,
        };
        let line = PenStroke::solid(FRAME_MM[usize::from(card.stop)], Ink::Black);
        items.push(Path::frame(frame, Some(line), None).into());
        (items, height)
    }

    fn card_title(&self, card: &Card, area: Bounds) -> (Vec<Item>, f64) {
        let top = Point::new(area.min.x + PADDING_MM, area.max.y - PADDING_MM);
        let width = area.width() - 2.0 * PADDING_MM;
        let title = self.writer.say(&card.title);
        let (drawn, height) = numbered(&card.numbers, &title, top, width, self.kind.heading);
        let mut items = vec![Item::Begin(Tag::Heading)];
        items.extend(drawn);
        items.push(Item::End);
        (items, height)
    }

    fn card_head(&self, card: &Card, width: f64) -> f64 {
        let area = Bounds {
            min: Point::ORIGIN,
            max: Point::new(width, 0.0),
        };
        self.card_title(card, area).1 + self.kind.gap_mm / 2.0
    }

    /// Space between blocks one below the other, mm.
    pub(super) fn gaps<B: Borrow<Block>>(&self, blocks: &[B]) -> f64 {
        let below = blocks.iter().skip(1);
        below.map(|b| self.gap_before(b.borrow())).sum()
    }

    /// Space above a block that is not the first, mm.
    #[must_use]
    pub fn gap_before(&self, block: &Block) -> f64 {
        match block {
            Block::Title(..) => self.kind.gap_mm * 2.0,
            Block::Heading(_) => self.kind.gap_mm * 1.5,
            _ => self.kind.gap_mm,
        }
    }
}

fn columns(width: f64, percent: u8) -> [f64; 2] {
    let first = (width - GUTTER_MM) * f64::from(percent) / 100.0;
    [first, width - GUTTER_MM - first]
}
