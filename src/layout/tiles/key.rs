//! The page before the tiles: what to do, what the lines mean, and how the tiles lie.

use super::lines::stroke;
use super::tile::{EDGE_MM, OVERLAP_MM, Tiled, WantedSheets, corner, plain};
use crate::geom::{Arc, Bounds, Point, Pose, Seg, Vector};
use crate::layout::item::{Anchor, Ink, Item, Page, Paper, Path, PenStroke, Tag, Typeface};
use crate::layout::pen::NARROW_MM;
use crate::layout::wrap::{Style, wrap};
use crate::template::{Role, Template};
use crate::words::{Message, Value, Writer};

const TITLE: Style = Style::new(Typeface::Bold, 16.0, 8.0);
const WARNING: Style = Style::new(Typeface::Bold, 12.0, 6.0);
const WORDS: Style = Style::new(Typeface::Regular, 10.0, 5.0);
const NAME: Style = Style::new(Typeface::Bold, 12.0, 5.0);
/// White edge of the page, mm.
const MARGIN_MM: f64 = EDGE_MM + 6.0;
/// Length of a line in the legend, mm.
const SAMPLE_MM: f64 = 16.0;

/// The page.
pub(super) fn page(
    template: &Template,
    tiled: &Tiled,
    wanted: &WantedSheets<'_>,
    (paper, pitch): (Paper, (f64, f64)),
) -> Page {
    let writer = wanted.writer;
    let (width, height) = paper.size_mm();
    let mut setter = Setter {
        items: Vec::new(),
        y: height - MARGIN_MM,
        width: width - 2.0 * MARGIN_MM,
    };
    let title = writer.say(&template.title);
    setter.paragraph(Tag::Title, &TITLE, &title);
    let count = Message::new(
        "template-count",
        [
            ("count", Value::count(tiled.tiles.len())),
            ("job", Value::name(wanted.job)),
            ("plan", Value::name(wanted.plan)),
        ],
    );
    setter.paragraph(Tag::Paragraph, &WORDS, &writer.say(&count));
    setter.paragraph(Tag::Paragraph, &WARNING, &plain(writer, "template-measure"));
    let alone = tiled.tiles.len() < 2;
    let told = ["template-again", "template-join", "template-lay"].into_iter();
    for id in told.filter(|id| !alone || *id != "template-join") {
        setter.paragraph(Tag::Paragraph, &WORDS, &plain(writer, id));
    }
    let at = Point::new(MARGIN_MM, setter.y);
    setter.items.extend(legend(template, at, writer));
    let area = Bounds {
        min: Point::new(MARGIN_MM, MARGIN_MM),
        max: Point::new(width - MARGIN_MM, setter.y - legend_height(template) - 4.0),
    };
    setter
        .items
        .push(Item::Begin(Tag::Figure(plain(writer, "template-map"))));
    setter.items.extend(map(template, tiled, area, pitch));
    setter.items.push(Item::End);
    Page {
        name: title,
        language: writer.language.tag(),
        items: setter.items,
    }
}

/// Words one below the other.
struct Setter {
    items: Vec<Item>,
    y: f64,
    width: f64,
}

impl Setter {
    fn paragraph(&mut self, tag: Tag, style: &Style, words: &str) {
        self.items.push(Item::Begin(tag));
        for line in wrap(words, style, self.width) {
            let at = Point::new(MARGIN_MM, self.y - style.base_mm());
            self.items.push(style.text(line, at, Anchor::Start).into());
            self.y -= style.leading_mm;
        }
        self.items.push(Item::End);
        self.y -= 2.0;
    }
}

/// Height of the legend, mm.
pub(super) fn legend_height(template: &Template) -> f64 {
    template.roles().iter().map(|_| WORDS.leading_mm).sum()
}

/// What each line means, from a point downwards.
pub(super) fn legend(template: &Template, at: Point, writer: Writer) -> Vec<Item> {
    let mut items = Vec::new();
    let mut y = at.y;
    for role in template.roles() {
        let base = Point::new(at.x, y - WORDS.base_mm());
        let line = base + Vector::new(0.0, 1.2);
        let along = Vector::new(SAMPLE_MM, 0.0);
        let words = base + along + Vector::new(3.0, 0.0);
        let said = plain(writer, role.message());
        items.extend([
            Path::line(line, line + along, stroke(role)).into(),
            Item::Begin(Tag::Paragraph),
            WORDS.text(said, words, Anchor::Start).into(),
            Item::End,
        ]);
        y -= WORDS.leading_mm;
    }
    items
}

/// The tiles with their names and the lines to keep, as large as an area allows.
fn map(template: &Template, tiled: &Tiled, area: Bounds, pitch: (f64, f64)) -> Vec<Item> {
    let overlap = Vector::new(OVERLAP_MM, OVERLAP_MM);
    let tiles: Vec<(Bounds, &str)> = tiled
        .tiles
        .iter()
        .map(|tile| {
            let min = corner(tile.cell, pitch);
            let max = min + Vector::new(pitch.0, pitch.1) + overlap;
            (Bounds { min, max }, tile.name.as_str())
        })
        .collect();
    let Some(whole) = tiles.iter().map(|t| t.0).reduce(Bounds::joined) else {
        return Vec::new();
    };
    let scale = (area.width() / whole.width()).min(area.height() / whole.height());
    let origin = Point::new(area.min.x, area.max.y - whole.height() * scale);
    let small = |p: Point| origin + (p - whole.min) * scale;
    let mut items = Vec::new();
    for line in template.lines.iter().filter(|l| l.role == Role::Keep) {
        // The tiles' frame begins half an overlap before the first of them.
        let onto = Pose::new(tiled.pose.turn, tiled.pose.shift + overlap * 0.5);
        let posed = line.segs.iter().map(|seg| seg.posed(onto));
        let run = posed.map(|seg| scaled(&seg, &small, scale)).collect();
        items.push(Path::open(vec![run], stroke(Role::Keep)).into());
    }
    for (tile, name) in tiles {
        let box_of = Bounds {
            min: small(tile.min),
            max: small(tile.max),
        };
        let thin = PenStroke::solid(NARROW_MM, Ink::Black);
        items.push(Path::frame(box_of, Some(thin), None).into());
        let at = Point::new(box_of.min.x + 1.5, box_of.max.y - NAME.leading_mm);
        items.push(NAME.text(name, at, Anchor::Start).into());
    }
    items
}

fn scaled(seg: &Seg, small: &impl Fn(Point) -> Point, scale: f64) -> Seg {
    match seg {
        Seg::Line(a, b) => Seg::Line(small(*a), small(*b)),
        Seg::Arc(arc) => Seg::Arc(Arc {
            centre: small(arc.centre),
            radius: arc.radius * scale,
            ..*arc
        }),
    }
}
