//! The head and foot of every page, and the binding of pages into a sheet.

use super::flow::{Block, Column, Scale};
use super::item::{Anchor, Face, Ink, Item, Page, Paper, Path, Sheet, Stroke};
use super::pen::NARROW_MM;
use super::wrap::Style;
use crate::geom::{Bounds, Point};
use crate::words::Catalogue;

/// White edge all around, mm.
pub const MARGIN_MM: f64 = 15.0;
/// Height of the head with the space below it, mm.
const HEAD_MM: f64 = 12.0;
/// Height of the foot with the space above it, mm.
const FOOT_MM: f64 = 9.0;
/// From the head's base line to its rule, mm.
const UNDER_HEAD_MM: f64 = 2.2;
/// From the foot's rule to its base line, mm.
const OVER_FOOT_MM: f64 = 4.6;
/// Least space between two texts of one line, mm.
const APART_MM: f64 = 8.0;

const HEAD: Style = Style::new(Face::Bold, 11.0, 5.0);
const FOOT: Style = Style::new(Face::Regular, 9.0, 4.3);

/// What every page of a sheet says at its head and foot.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Frame {
    /// Title of the job: at the head's left, and the document's title.
    pub title: String,
    /// Date of the job as `YYYY-MM-DD`, or empty.
    pub date: String,
    /// The paper.
    pub paper: Paper,
}

impl Frame {
    /// The box that a page's content may fill.
    #[must_use]
    pub fn area(&self) -> Bounds {
        let (width, height) = self.paper.size_mm();
        Bounds {
            min: Point::new(MARGIN_MM, MARGIN_MM + FOOT_MM),
            max: Point::new(width - MARGIN_MM, height - MARGIN_MM - HEAD_MM),
        }
    }

    /// One column over the whole content box.
    #[must_use]
    pub fn column(&self, scale: Scale) -> Column {
        Column::new(self.area(), scale)
    }

    /// Blocks poured over as many pages of one name as they need.
    ///
    /// A block higher than a whole page stands on a page of its own and runs over its foot: make
    /// blocks shorter than that.
    #[must_use]
    pub fn pages(&self, name: &str, scale: Scale, blocks: &[Block]) -> Vec<Page> {
        let mut pages = Vec::new();
        let mut rest = blocks;
        while let Some(first) = rest.first() {
            let mut column = self.column(scale);
            let mut placed = column.pour(rest);
            if placed == 0 {
                column.place(first);
                placed = 1;
            }
            rest = rest.get(placed..).unwrap_or_default();
            pages.push(Page {
                name: name.to_owned(),
                items: column.items,
            });
        }
        pages
    }

    /// Binds named pages into a sheet: adds head and foot and counts the pages. `words_of` tells by
    /// a page's name the language of its foot.
    #[must_use]
    pub fn bind(&self, pages: Vec<Page>, words_of: impl Fn(&str) -> &'static Catalogue) -> Sheet {
        let count = pages.len();
        let framed = pages.into_iter().enumerate().map(|(i, mut page)| {
            let mut items = self.head(&page.name);
            items.append(&mut page.items);
            items.extend(self.feet([i + 1, count], words_of(&page.name)));
            Page {
                name: page.name,
                items,
            }
        });
        Sheet {
            title: self.title.clone(),
            language: "en",
            date: self.date.clone(),
            paper: self.paper,
            pages: framed.collect(),
        }
    }

    fn head(&self, name: &str) -> Vec<Item> {
        let (width, height) = self.paper.size_mm();
        let base = height - MARGIN_MM - HEAD.base_mm();
        let right = Point::new(width - MARGIN_MM, base);
        let space = width - 2.0 * MARGIN_MM;
        let name = shortened(name, &HEAD, space / 2.0);
        let title = shortened(&self.title, &HEAD, space - HEAD.width_mm(&name) - APART_MM);
        vec![
            HEAD.text(title, Point::new(MARGIN_MM, base), Anchor::Start)
                .into(),
            HEAD.inked(Ink::Accent)
                .text(name, right, Anchor::End)
                .into(),
            self.rule(base - UNDER_HEAD_MM),
        ]
    }

    fn feet(&self, numbers: [usize; 2], words: &Catalogue) -> Vec<Item> {
        let (width, _) = self.paper.size_mm();
        let right = Point::new(width - MARGIN_MM, MARGIN_MM);
        let space = width - 2.0 * MARGIN_MM;
        let [number, count] = numbers.map(|n| n.to_string());
        let mut page = words.say("foot.page", &[("number", number), ("count", count)]);
        if !self.date.is_empty() {
            page = format!("{} · {page}", words.value(&self.date));
        }
        let room = space - FOOT.width_mm(&page) - APART_MM;
        let line = shortened(words.text("foot.line"), &FOOT, room);
        vec![
            self.rule(MARGIN_MM + OVER_FOOT_MM),
            FOOT.text(line, Point::new(MARGIN_MM, MARGIN_MM), Anchor::Start)
                .into(),
            FOOT.text(page, right, Anchor::End).into(),
        ]
    }

    fn rule(&self, y: f64) -> Item {
        let (width, _) = self.paper.size_mm();
        let ends = (Point::new(MARGIN_MM, y), Point::new(width - MARGIN_MM, y));
        Path::line(ends.0, ends.1, Stroke::solid(NARROW_MM, Ink::Black)).into()
    }
}

/// A text cut to a width, with "…" for what was cut.
#[must_use]
pub fn shortened(text: &str, style: &Style, width_mm: f64) -> String {
    if style.width_mm(text) <= width_mm {
        return text.to_owned();
    }
    let mut kept = text.to_owned();
    while kept.pop().is_some() {
        let cut = format!("{}…", kept.trim_end());
        if style.width_mm(&cut) <= width_mm {
            return cut;
        }
    }
    String::new()
}
