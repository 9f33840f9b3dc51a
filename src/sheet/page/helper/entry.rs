//! What the helper's page is made of, and how it is poured over pages.

use crate::geom::{Bounds, Point};
use crate::sheet::flow::{Block, Column, Mark};
use crate::sheet::item::{Anchor, Ink, Item, Path, Stroke};
use crate::sheet::pen::MIDDLE_MM;

/// Height of a line to write on, with the space above it, mm: for a hand in a glove.
const LINE_MM: f64 = 11.5;
/// From a label to its line, mm.
const BEHIND_MM: f64 = 2.0;
/// From one line to the next label, mm.
const BETWEEN_MM: f64 = 6.0;
/// Below the drawing, mm.
const UNDER_MM: f64 = 2.0;
/// How much wider than the others the first of several lines is: a name before a date.
const FIRST_SHARE: f64 = 1.6;

/// One thing on the page.
pub(super) enum Entry {
    /// Text that stays together.
    Block(Block),
    /// Entries with a mark before each; the list may run on.
    Boxes(Mark, Vec<String>),
    /// The plan view: what it takes and draws.
    Drawing(View),
    /// Labels, each with a line to write on behind it.
    Line(Vec<String>),
}

/// A drawing of a height that is made once its place is known.
pub(super) struct View {
    /// Height, mm.
    pub(super) height_mm: f64,
    /// Draws it in the area it is given.
    pub(super) draw: Box<dyn FnOnce(Bounds) -> Vec<Item>>,
    /// The line below it.
    pub(super) note: String,
}

impl From<Block> for Entry {
    fn from(block: Block) -> Self {
        Self::Block(block)
    }
}

/// Pages being filled.
pub(super) struct Pages {
    done: Vec<Vec<Item>>,
    column: Column,
    /// A heading that waits for what it belongs to.
    waiting: Option<Block>,
}

impl Pages {
    /// No page yet; the first column.
    pub(super) const fn new(column: Column) -> Self {
        Self {
            done: Vec::new(),
            column,
            waiting: None,
        }
    }

    /// Places an entry, on a fresh column when it does not fit.
    pub(super) fn place(&mut self, entry: Entry, fresh: impl Fn() -> Column) {
        match entry {
            Entry::Block(block) if block.belongs_to_next() => self.waiting = Some(block),
            Entry::Block(block) => {
                self.make_room(self.column.height_of(&block), &fresh);
                self.column.place(&block);
            }
            Entry::Boxes(mark, lines) => self.list(mark, &lines, &fresh),
            Entry::Drawing(view) => {
                let note = Block::Note(view.note);
                let height = view.height_mm + UNDER_MM + self.column.height_of(&note);
                self.make_room(height, &fresh);
                let area = self.column.reserve(view.height_mm);
                self.column.items.append(&mut (view.draw)(area));
                self.column.reserve(UNDER_MM);
                self.column.place(&note);
            }
            Entry::Line(labels) => {
                self.make_room(LINE_MM, &fresh);
                write_on(&mut self.column, &labels);
            }
        }
    }

    /// A list, as many entries on this page as fit.
    fn list(&mut self, mark: Mark, lines: &[String], fresh: &impl Fn() -> Column) {
        let mut rest = lines;
        while !rest.is_empty() {
            let block = |n: usize| Block::List(mark, rest[..n].to_vec());
            let heading = self
                .waiting
                .as_ref()
                .map_or(0.0, |h| self.column.height_of(h));
            // The space below a list may hang over the foot.
            let after = self.column.scale.body.leading_mm / 2.0;
            let room = self.column.left() - heading + after;
            let fits = |n: &usize| self.column.height_of(&block(*n)) <= room;
            let count = (1..=rest.len()).rev().find(fits);
            let Some(count) = count.or(self.column.is_fresh().then_some(1)) else {
                self.turn(fresh);
                continue;
            };
            if let Some(heading) = self.waiting.take() {
                self.column.place(&heading);
            }
            self.column.place(&block(count));
            rest = &rest[count..];
            if !rest.is_empty() {
                self.turn(fresh);
            }
        }
    }

    /// Turns the page when a height does not fit, then places the heading that waits.
    fn make_room(&mut self, height: f64, fresh: &impl Fn() -> Column) {
        let heading = self
            .waiting
            .as_ref()
            .map_or(0.0, |h| self.column.height_of(h));
        if heading + height > self.column.left() && !self.column.is_fresh() {
            self.turn(fresh);
        }
        if let Some(heading) = self.waiting.take() {
            self.column.place(&heading);
        }
    }

    fn turn(&mut self, fresh: &impl Fn() -> Column) {
        let full = std::mem::replace(&mut self.column, fresh());
        self.done.push(full.items);
    }

    /// The pages.
    pub(super) fn finish(mut self) -> Vec<Vec<Item>> {
        if !self.column.items.is_empty() {
            self.done.push(self.column.items);
        }
        self.done
    }
}

/// Labels side by side, each with a line to write on behind it.
fn write_on(column: &mut Column, labels: &[String]) {
    let style = column.scale.body;
    let area = column.reserve(LINE_MM);
    let base = area.min.y + style.leading_mm - style.base_mm();
    let shares: Vec<f64> = (0..labels.len())
        .map(|i| {
            if i == 0 && labels.len() > 1 {
                FIRST_SHARE
            } else {
                1.0
            }
        })
        .collect();
    let total: f64 = shares.iter().sum();
    let mut x = area.min.x;
    for (label, share) in labels.iter().zip(shares) {
        let end = x + area.width() * share / total;
        let text = style.text(label.clone(), Point::new(x, base), Anchor::Start);
        column.items.push(text.into());
        let from = Point::new(x + style.width_mm(label) + BEHIND_MM, base - 0.6);
        let to = Point::new(end - BETWEEN_MM, base - 0.6);
        let line = Stroke::solid(MIDDLE_MM, Ink::Black);
        column.items.push(Path::line(from, to, line).into());
        x = end;
    }
}
