//! A column that is filled from top to bottom: headings, paragraphs, lists, rows and notices.
//!
//! A page's author makes [`Block`]s, asks a [`Column`] how high they are or whether they fit, and
//! places them. Measuring is placing into a column that is thrown away, so the two cannot differ.

use super::item::{Anchor, Ink, Item, Path, Stroke, Text};
use super::pen::{MIDDLE_MM, NARROW_MM};
use super::wrap::{Style, wrap};
use crate::geom::{Bounds, Point};

/// From a list's edge to its text, in widths of the letter m of the body text.
const INDENT_EM: f64 = 1.9;
/// Space between a key and its value, mm.
const KEY_GAP_MM: f64 = 5.0;
/// Widest that keys may become, as a share of the column.
const KEY_SHARE: f64 = 0.5;

/// The styles that go together on one kind of page.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Scale {
    /// Reading text.
    pub body: Style,
    /// Values of rows: numbers to be read at the bench.
    pub strong: Style,
    /// Headings of sections.
    pub heading: Style,
    /// Headings inside a section.
    pub subheading: Style,
    /// Notes and sources.
    pub small: Style,
    /// The words in the boxes of a stop and a caution.
    pub notice_words: [&'static str; 2],
}

impl Scale {
    /// For pages read at a desk: body 9.5 pt.
    pub const DESK: Self = Self::of([9.5, 9.5, 14.0, 10.5, 9.0]);
    /// For pages read at the bench: body 11 pt, numbers 13 pt bold.
    pub const BENCH: Self = Self::of([11.0, 13.0, 16.0, 12.0, 9.0]);
    /// For the helper's page, read at arm's length and more: nothing under 14 pt.
    pub const HELPER: Self = Self::of([14.0, 16.0, 20.0, 16.0, 14.0]);

    /// From sizes in points: body, strong, heading, subheading, small. Line distances are 1.36
    /// times the size for text and 1.25 times for headings (judgement: calm at a bench's distance).
    const fn of(sizes: [f64; 5]) -> Self {
        use super::item::Face::{Bold, Regular};
        const TEXT_MM: f64 = 1.36 * 25.4 / 72.0;
        const HEADING_MM: f64 = 1.25 * 25.4 / 72.0;
        let [body, strong, heading, subheading, small] = sizes;
        Self {
            body: Style::new(Regular, body, body * TEXT_MM),
            strong: Style::new(Bold, strong, strong * TEXT_MM),
            heading: Style::new(Bold, heading, heading * HEADING_MM).inked(Ink::Accent),
            subheading: Style::new(Bold, subheading, subheading * HEADING_MM),
            small: Style::new(Regular, small, small * TEXT_MM),
            notice_words: [Grade::Stop.word(), Grade::Caution.word()],
        }
    }
}

/// What stands before each entry of a list.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Mark {
    /// A dot.
    Dot,
    /// A number, counting on from this one.
    From(usize),
    /// A square to tick, drawn as lines.
    Square,
}

/// How loud a notice is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Grade {
    /// Work must not go on: thick black border, the word STOP in white on black.
    Stop,
    /// Take care: thin border, the word CAUTION.
    Caution,
}

impl Grade {
    /// The word printed in the box.
    #[must_use]
    pub const fn word(self) -> &'static str {
        match self {
            Self::Stop => "STOP",
            Self::Caution => "CAUTION",
        }
    }
}

/// One thing to place in a column.
#[derive(Clone, Debug, PartialEq)]
pub enum Block {
    /// Heading of a section.
    Heading(String),
    /// Heading inside a section.
    Subheading(String),
    /// Reading text, wrapped; a line feed begins a new line.
    Paragraph(String),
    /// A small note, wrapped.
    Note(String),
    /// Entries with a mark before each.
    List(Mark, Vec<String>),
    /// Names and values, the values in one line down the column.
    Rows(Vec<(String, String)>),
    /// A thin line across.
    Rule,
    /// Empty space, mm; nothing at the top of a column.
    Gap(f64),
    /// A boxed notice: grade, what it is, and its lines.
    Notice(Grade, String, Vec<String>),
    /// A thing to tick: what it is, what is said about it, and a note.
    Ticked(String, String, String),
}

impl Block {
    /// True for a block that must not be the last in a column.
    #[must_use]
    pub fn belongs_to_next(&self) -> bool {
        matches!(self, Self::Heading(_) | Self::Subheading(_) | Self::Gap(_))
    }
}

/// A column being filled from its top down.
#[derive(Clone, Debug)]
pub struct Column {
    /// Left edge, mm.
    pub x: f64,
    /// Width, mm.
    pub width: f64,
    /// Where the next block begins, mm from the foot of the paper.
    pub y: f64,
    /// The column's top, mm.
    pub top: f64,
    /// The column's bottom, mm.
    pub floor: f64,
    /// The styles.
    pub scale: Scale,
    /// What was placed.
    pub items: Vec<Item>,
}

impl Column {
    /// An empty column that fills a box.
    #[must_use]
    pub fn new(area: Bounds, scale: Scale) -> Self {
        Self {
            x: area.min.x,
            width: area.width(),
            y: area.max.y,
            top: area.max.y,
            floor: area.min.y,
            scale,
            items: vec![],
        }
    }

    /// Height left, mm; negative when something was placed beyond the bottom.
    #[must_use]
    pub fn left(&self) -> f64 {
        self.y - self.floor
    }

    /// True when nothing was placed yet.
    #[must_use]
    pub fn is_fresh(&self) -> bool {
        self.y >= self.top
    }

    /// The box from here to the bottom.
    #[must_use]
    pub fn rest(&self) -> Bounds {
        Bounds {
            min: Point::new(self.x, self.floor),
            max: Point::new(self.x + self.width, self.y),
        }
    }

    /// Height a block would take here, mm.
    #[must_use]
    pub fn height_of(&self, block: &Block) -> f64 {
        let mut trial = Self {
            items: vec![],
            ..*self
        };
        trial.place(block);
        self.y - trial.y
    }

    /// True when a block fits in what is left.
    #[must_use]
    pub fn fits(&self, block: &Block) -> bool {
        self.height_of(block) <= self.left()
    }

    /// Places blocks in order until one does not fit; returns how many were placed. A heading is
    /// not left behind at the bottom.
    pub fn pour(&mut self, blocks: &[Block]) -> usize {
        let mut kept = (0, self.y, self.items.len());
        for (i, block) in blocks.iter().enumerate() {
            if !self.fits(block) {
                let (count, y, items) = kept;
                self.y = y;
                self.items.truncate(items);
                return count;
            }
            self.place(block);
            if !block.belongs_to_next() {
                kept = (i + 1, self.y, self.items.len());
            }
        }
        blocks.len()
    }

    /// Takes an area of full width and a height in mm for a drawing, and moves on below it.
    pub fn reserve(&mut self, height_mm: f64) -> Bounds {
        let high = Point::new(self.x + self.width, self.y);
        self.y -= height_mm;
        Bounds {
            min: Point::new(self.x, self.y),
            max: high,
        }
    }

    /// Places a block, whether it fits or not.
    pub fn place(&mut self, block: &Block) {
        let scale = self.scale;
        match block {
            Block::Heading(text) => self.titled(text, &scale.heading),
            Block::Subheading(text) => self.titled(text, &scale.subheading),
            Block::Paragraph(text) => self.lines(text, &scale.body, 0.0, self.half()),
            Block::Note(text) => self.lines(text, &scale.small, 0.0, self.half()),
            Block::List(mark, entries) => self.list(*mark, entries),
            Block::Rows(rows) => self.rows(rows),
            Block::Rule => self.rule(),
            Block::Gap(mm) => self.gap(*mm),
            Block::Notice(grade, title, lines) => self.notice(*grade, title, lines),
            Block::Ticked(title, detail, note) => self.ticked(title, detail, note),
        }
    }

    /// Half a line of body text: the space between blocks, mm.
    fn half(&self) -> f64 {
        self.scale.body.leading_mm / 2.0
    }

    fn gap(&mut self, mm: f64) {
        if !self.is_fresh() {
            self.y -= mm;
        }
    }

    fn titled(&mut self, text: &str, style: &Style) {
        self.gap(self.half());
        self.lines(text, style, 0.0, self.half() / 2.0);
    }

    /// Wrapped lines, begun `indent` mm from the edge, with `after` mm of space below.
    fn lines(&mut self, text: &str, style: &Style, indent: f64, after: f64) {
        for line in wrap(text, style, self.width - indent) {
            let at = Point::new(self.x + indent, self.y - style.base_mm());
            self.put(style.text(line, at, Anchor::Start));
            self.y -= style.leading_mm;
        }
        self.y -= after;
    }

    fn put(&mut self, item: impl Into<Item>) {
        let item = item.into();
        let empty = matches!(&item, Item::Text(Text { content, .. }) if content.is_empty());
        if !empty {
            self.items.push(item);
        }
    }

    fn list(&mut self, mark: Mark, entries: &[String]) {
        let body = self.scale.body;
        let indent = INDENT_EM * body.width_mm("m");
        for (i, entry) in entries.iter().enumerate() {
            self.mark(mark, i, indent);
            let after = match mark {
                Mark::Dot => 0.0,
                Mark::From(_) | Mark::Square => self.half() / 2.0,
            };
            self.lines(entry, &body, indent, after);
        }
        self.y -= self.half();
    }

    fn ticked(&mut self, title: &str, detail: &str, note: &str) {
        let Scale { body, small, .. } = self.scale;
        let indent = INDENT_EM * body.width_mm("m");
        self.mark(Mark::Square, 0, indent);
        self.lines(title, &body.bold(), indent, 0.0);
        self.lines(detail, &body, indent, 0.0);
        self.lines(note, &small, indent, self.half());
    }

    fn mark(&mut self, mark: Mark, entry: usize, indent: f64) {
        let body = self.scale.body;
        let base = Point::new(self.x, self.y - body.base_mm());
        let cap = super::typeface::cap_height_mm(body.face, body.size_pt);
        match mark {
            Mark::Dot => {
                let centre = Point::new(base.x + indent * 0.45, base.y + cap * 0.42);
                self.put(Path::dot(centre, cap * 0.16, Ink::Black));
            }
            Mark::From(first) => {
                let at = Point::new(base.x + indent * 0.72, base.y);
                let number = (first + entry).to_string();
                self.put(body.bold().text(number, at, Anchor::End));
            }
            Mark::Square => {
                // A little larger than a capital, standing evenly over its line.
                let side = cap * 1.3;
                let low = Point::new(base.x + NARROW_MM, base.y - cap * 0.15);
                let high = Point::new(low.x + side, low.y + side);
                let area = Bounds {
                    min: low,
                    max: high,
                };
                let line = Stroke::solid(MIDDLE_MM, Ink::Black);
                self.put(Path::frame(area, Some(line), None));
            }
        }
    }

    fn rows(&mut self, rows: &[(String, String)]) {
        let (body, strong) = (self.scale.body, self.scale.strong);
        let widest = rows
            .iter()
            .map(|(key, _)| body.width_mm(key))
            .fold(0.0, f64::max);
        // A hair is added so that the widest key does not wrap for rounding's sake.
        let keys = widest.min(self.width * KEY_SHARE - KEY_GAP_MM) + 0.01;
        for (key, value) in rows {
            let (top, width) = (self.y, self.width);
            let base = top - strong.base_mm();
            self.width = keys;
            self.y = base + body.base_mm();
            self.lines(key, &body, 0.0, 0.0);
            let under_key = self.y;
            self.width = width;
            self.y = top;
            self.lines(value, &strong, keys + KEY_GAP_MM, 0.0);
            self.y = self.y.min(under_key);
        }
        self.y -= self.half();
    }

    fn rule(&mut self) {
        let y = self.y - self.half() / 2.0;
        let (a, b) = (Point::new(self.x, y), Point::new(self.x + self.width, y));
        self.put(Path::line(a, b, Stroke::solid(NARROW_MM, Ink::Black)));
        self.y = y - self.half() / 2.0;
    }

    fn notice(&mut self, grade: Grade, title: &str, lines: &[String]) {
        super::notice::place(self, grade, title, lines);
    }
}
