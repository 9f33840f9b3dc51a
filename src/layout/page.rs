//! Sections on pages: each bench section on one page, its drawings and its type as large as fits;
//! the annex runs on from page to page. Every page has a head and a foot.

use super::book::{Book, Filled, MARGIN_MM, WELL};
use super::figure::MOST_SHARE;
use super::heights::Heights;
use super::item::{Anchor, Ink, Item, Page, Paper, Path, PenStroke, Sheet, Typeface};
use super::pen::NARROW_MM;
use super::setter::{Said, Setter};
use super::voice::Type;
use super::wrap::Style;
use crate::document::block::{Block, Document, DocumentPart, Reading, Section};
use crate::document::figure::Figure;
use crate::geom::{Bounds, Point};
use crate::words::{Language, Message, Value, Writer};

/// Least space between two texts of one line, mm.
const APART_MM: f64 = 8.0;

const HEAD: Style = Style::new(Typeface::Bold, 10.5, 5.0);
const FOOT: Style = Style::new(Typeface::Regular, 9.0, 4.2);

/// The document on paper.
#[must_use]
pub fn pages(document: &Document, paper: Paper) -> Sheet {
    let book = Book {
        document,
        paper,
        heights: Heights::default(),
    };
    let of = |part: DocumentPart| document.sections.iter().filter(move |s| s.part == part);
    let bench = book.bench(&of(DocumentPart::Bench).collect::<Vec<_>>());
    let annex = book.flow(&of(DocumentPart::Annex).collect::<Vec<_>>(), 0);
    let mut pages = book.bound(bench, DocumentPart::Bench);
    pages.extend(book.bound(annex, DocumentPart::Annex));
    Sheet {
        title: document.title.clone(),
        language: document
            .sections
            .first()
            .map_or(Language::English, |s| s.language)
            .tag(),
        date: document.date.clone(),
        paper,
        scale: [1.0; 2],
        pages,
    }
}

/// Height of a figure alone against its width, at most (judgement: a hand-held screen shows it whole).
const TALLEST: f64 = 1.25;
/// Width and height of a drawing on its own, mm.
const DRAWING_MM: (f64, f64) = (280.0, 180.0);

/// A figure alone on a page, and the page's size in mm.
#[must_use]
pub fn drawing_page(figure: &Figure, writer: Writer) -> (Page, (f64, f64)) {
    let setter = Setter {
        writer,
        kind: Type::of(Reading::Bench, 0),
        page_mm: DRAWING_MM.1 / MOST_SHARE,
        least_share: WELL,
        said: Said::InFull,
        to_scale: true,
    };
    let area = Bounds {
        min: Point::new(4.0, 2.0),
        max: Point::new(DRAWING_MM.0 - 4.0, DRAWING_MM.1 - 2.0),
    };
    let page = Page {
        name: writer.say(&figure.alt),
        language: writer.language.tag(),
        items: setter
            .stack(&[Block::Figure(Box::new(figure.clone()))], area)
            .0,
    };
    (page, DRAWING_MM)
}

/// A figure alone for a screen that shows it at any size, no higher than it needs, and the size of both in
/// mm: the first of some widths at which no word of it is missing for want of room.
#[must_use]
pub fn figure_page(
    figure: &Figure,
    writer: Writer,
    reading: Reading,
    widths_mm: &[f64],
) -> (Page, (f64, f64)) {
    let alone = |width: f64| figure_alone(figure, writer, reading, width);
    let widest = widths_mm.last().copied().unwrap_or(DRAWING_MM.0);
    let mut found = alone(widest);
    let words = words_on(&found.0);
    for width in widths_mm.iter().rev().skip(1) {
        let narrower = alone(*width);
        if words_on(&narrower.0) < words {
            break;
        }
        found = narrower;
    }
    found
}

fn words_on(page: &Page) -> usize {
    let texts = page.items.iter().filter(|i| matches!(i, Item::Text(_)));
    texts.count()
}

fn figure_alone(
    figure: &Figure,
    writer: Writer,
    reading: Reading,
    width_mm: f64,
) -> (Page, (f64, f64)) {
    let setter = Setter {
        writer,
        kind: Type::of(reading, 0),
        page_mm: width_mm * TALLEST / MOST_SHARE,
        least_share: WELL,
        said: Said::InFull,
        to_scale: false,
    };
    let area = |height: f64| Bounds {
        min: Point::ORIGIN,
        max: Point::new(width_mm, height),
    };
    let liked = setter.figure_extent(figure, width_mm).liked;
    let (mut items, mut used) = setter.figure(figure, area(liked));
    if used < liked {
        (items, used) = setter.figure(figure, area(used));
    }
    let page = Page {
        name: writer.say(&figure.alt),
        language: writer.language.tag(),
        items,
    };
    (page, (width_mm, used))
}

impl Book<'_> {
    /// The pages with their heads and feet, counted.
    fn bound(&self, filled: Vec<Filled<'_>>, part: DocumentPart) -> Vec<Page> {
        let count = filled.len();
        let each = filled.into_iter().enumerate();
        each.map(|(i, page)| {
            let writer = Writer::new(self.document.system, page.section.language);
            let mut items = self.head(writer, i + 1, count, part);
            items.extend(page.items);
            items.extend(self.foot(writer, page.section));
            Page {
                name: page.name,
                language: page.section.language.tag(),
                items,
            }
        })
        .collect()
    }

    fn head(&self, writer: Writer, number: usize, count: usize, part: DocumentPart) -> Vec<Item> {
        let (width, height) = self.paper.size_mm();
        let base = height - MARGIN_MM - 2.0;
        let id = match part {
            DocumentPart::Bench => "bench-head",
            DocumentPart::Annex => "bench-head-annex",
        };
        let right = writer.say(&Message::new(
            id,
            [
                ("plan", Value::name(self.document.fingerprint.clone())),
                ("number", Value::count(number)),
                ("count", Value::count(count)),
            ],
        ));
        let room = width - 2.0 * MARGIN_MM - HEAD.width_mm(&right) - APART_MM;
        let title = shortened(&self.document.title, &HEAD, room);
        let left = Point::new(MARGIN_MM, base);
        let end = Point::new(width - MARGIN_MM, base);
        vec![
            HEAD.text(title, left, Anchor::Start).into(),
            HEAD.text(right, end, Anchor::End).into(),
            self.rule(base - 1.8),
        ]
    }

    fn foot(&self, writer: Writer, section: &Section) -> Vec<Item> {
        let (width, _) = self.paper.size_mm();
        let date = writer_date(writer, &self.document.date);
        let room = width - 2.0 * MARGIN_MM - FOOT.width_mm(&date) - APART_MM;
        let line = shortened(&writer.say(&section.foot), &FOOT, room);
        let base = MARGIN_MM - 3.0;
        let right = Point::new(width - MARGIN_MM, base);
        let mut items = vec![
            self.rule(base + 4.2),
            FOOT.text(line, Point::new(MARGIN_MM, base), Anchor::Start)
                .into(),
        ];
        if !date.is_empty() {
            items.push(FOOT.text(date, right, Anchor::End).into());
        }
        items
    }

    fn rule(&self, y: f64) -> Item {
        let (width, _) = self.paper.size_mm();
        let ends = (Point::new(MARGIN_MM, y), Point::new(width - MARGIN_MM, y));
        Path::line(ends.0, ends.1, PenStroke::solid(NARROW_MM, Ink::Black)).into()
    }
}

fn writer_date(writer: Writer, date: &str) -> String {
    let mut parts = date.splitn(3, '-').map(str::parse::<u16>);
    match (parts.next(), parts.next(), parts.next()) {
        (Some(Ok(year)), Some(Ok(month)), Some(Ok(day))) => writer.write(&Value::Date {
            year,
            month: u8::try_from(month).unwrap_or(0),
            day: u8::try_from(day).unwrap_or(0),
        }),
        _ => String::new(),
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
