//! Blocks of words: titles, paragraphs, facts, tiles, steps, ticks, notices, signs, blanks.

use super::item::{Anchor, Ink, Item, Path, PenStroke, Tag};
use super::pen::{MIDDLE_MM, NARROW_MM};
use super::setter::{Said, Setter};
use super::sign::sign_items;
use super::typeface::{cap_height_mm, descent_mm};
use super::voice::Voice;
use crate::document::block::{Block, Fact, Notice, Tick, Tile};
use crate::document::sign::Sign;
use crate::geom::seg::circle;
use crate::geom::{Bounds, Point};
use crate::words::{Message, Value};

/// Side of a box to tick, mm.
const BOX_MM: f64 = 3.6;
/// From an entry's left edge to its words, mm.
const INDENT_MM: f64 = 6.5;
/// Width of the field that names a harm, mm.
const HARM_MM: f64 = 30.0;
/// Width kept for what is written in beside a tick, mm.
const BLANK_MM: f64 = 48.0;
/// Most of the width that the names of facts may take.
const NAMES_SHARE: f64 = 0.3;
/// From the names of facts to what they are, mm.
const FACT_GAP_MM: f64 = 3.0;
/// Side of a sign, mm.
const SIGN_MM: f64 = 15.0;
/// Inside a frame, mm.
const PADDING_MM: f64 = 2.0;
/// Height of a line to write on, mm.
const WRITING_MM: f64 = 7.6;

/// Items begun at a top left corner, and how far down they reach.
pub(super) type Set = (Vec<Item>, f64);

impl Setter {
    /// A block of words from its top left corner, and its height.
    pub(super) fn words(&self, block: &Block, top: Point, width: f64) -> Set {
        match block {
            Block::Title(numbers, text) => {
                let text = self.writer.say(text);
                let set = numbered(numbers, &text, top, width, self.kind.title);
                tagged(Tag::Title, set)
            }
            Block::Heading(text) => {
                let text = self.writer.say(text);
                tagged(
                    Tag::Heading,
                    self.kind.heading.set(&text, top, width, Anchor::Start),
                )
            }
            Block::Text(text) => {
                let text = self.writer.say(text);
                tagged(
                    Tag::Paragraph,
                    self.kind.body.set(&text, top, width, Anchor::Start),
                )
            }
            Block::Facts(facts) => self.facts(facts, top, width),
            Block::Tiles(tiles) => self.tiles(tiles, top, width),
            Block::Steps(steps) => self.steps(steps, top, width),
            Block::Ticks(ticks) => listed(ticks, top, |t, at| self.tick(t, at, width)),
            Block::Notices(all) => listed(all, top, |n, at| self.notice(n, at, width)),
            Block::Boxed(text) => self.boxed(text, top, width),
            Block::Signs(signs) => self.signs(signs, top, width),
            Block::Run(name, values) => self.run(name, values, top, width),
            Block::Blanks(names) => self.blanks(names, top, width),
            Block::Table(_) | Block::Figure(_) | Block::Beside(..) | Block::Card(_) => {
                (Vec::new(), 0.0)
            }
        }
    }

    fn facts(&self, facts: &[Fact], top: Point, width: f64) -> Set {
        let names: Vec<String> = facts.iter().map(|f| self.writer.say(&f.name)).collect();
        let widest = names.iter().map(|n| self.kind.small.width_mm(n));
        let column = widest.fold(0.0, f64::max).min(width * NAMES_SHARE) + FACT_GAP_MM;
        listed(
            facts.iter().zip(&names).collect::<Vec<_>>(),
            top,
            |(fact, name), at| {
                let value = self.writer.write(&fact.value);
                let of_value = Point::new(at.x + column, at.y);
                let voice = self.kind.body;
                let (mut items, high) = voice.set(&value, of_value, width - column, Anchor::Start);
                // The name stands on the base line of the value's first line.
                let lower = first_base(&items, at.y) - self.kind.small.words.base_mm();
                let name_top = Point::new(at.x, at.y - lower.max(0.0));
                let (named, low) =
                    self.kind
                        .small
                        .set(name, name_top, column - FACT_GAP_MM, Anchor::Start);
                items.splice(0..0, named);
                (items, high.max(low + lower.max(0.0)) + 0.4)
            },
        )
    }

    fn tiles(&self, tiles: &[Tile], top: Point, width: f64) -> Set {
        #[allow(clippy::cast_precision_loss)]
        let count = tiles.len().max(1) as f64;
        let gap = 2.5;
        let each = (width - gap * (count - 1.0)) / count;
        let (mut items, mut tallest, mut x) = (Vec::new(), 0.0_f64, top.x);
        let mut frames = Vec::new();
        for tile in tiles {
            let inner = each - 2.0 * PADDING_MM;
            let mut y = top.y - PADDING_MM / 2.0;
            let figure = self.writer.write(&tile.value);
            let voice = self.fitting(&figure, inner);
            items.push(Item::Begin(Tag::Paragraph));
            for (text, voice) in [
                (self.writer.say(&tile.name), self.kind.small),
                (figure, voice),
                (self.writer.say(&tile.note), self.kind.small),
            ] {
                let at = Point::new(x + PADDING_MM, y);
                let (set, height) = voice.set(&text, at, inner, Anchor::Start);
                items.extend(set);
                y -= height;
            }
            items.push(Item::End);
            tallest = tallest.max(top.y - y + PADDING_MM / 2.0);
            frames.push(x);
            x += each + gap;
        }
        for x in frames {
            let frame = Bounds {
                min: Point::new(x, top.y - tallest),
                max: Point::new(x + each, top.y),
            };
            let line = PenStroke::solid(MIDDLE_MM, Ink::Black);
            items.push(Path::frame(frame, Some(line), None).into());
        }
        (items, tallest)
    }

    /// The tile's voice, smaller where the figure is too wide for one line.
    fn fitting(&self, figure: &str, width: f64) -> Voice {
        let voice = self.kind.tile;
        let wide = voice.width_mm(figure);
        if wide <= width {
            return voice;
        }
        let mut style = voice.words;
        style.size_pt = (style.size_pt * width / wide).max(12.0);
        Voice::even(style)
    }

    fn steps(&self, steps: &[Message], top: Point, width: f64) -> Set {
        let numbered: Vec<(usize, &Message)> = steps.iter().enumerate().collect();
        listed(numbered, top, |(i, step), at| {
            let text = self.writer.say(step);
            let words = Point::new(at.x + INDENT_MM, at.y);
            let body = self.kind.body;
            let (mut items, height) = body.set(&text, words, width - INDENT_MM, Anchor::Start);
            let base = at.y - first_base(&items, at.y);
            let number = body.words.bold().text(
                (i + 1).to_string(),
                Point::new(at.x + INDENT_MM - 2.0, base),
                Anchor::End,
            );
            items.insert(0, number.into());
            (items, height + 0.6)
        })
    }

    fn tick(&self, tick: &Tick, at: Point, width: f64) -> Set {
        let text = self.writer.say(&tick.text);
        let room = if tick.blank.is_some() { BLANK_MM } else { 0.0 };
        let words = Point::new(at.x + INDENT_MM, at.y);
        let body = self.kind.body;
        let wide = width - INDENT_MM - room;
        let (mut items, mut height) = body.set(&text, words, wide, Anchor::Start);
        let base = at.y - first_base(&items, at.y);
        if tick.full && self.said == Said::InFull {
            let more = self.writer.detail(&tick.text);
            let below = Point::new(words.x, words.y - height);
            let (detail, high) = body.set(&more, below, wide, Anchor::Start);
            items.extend(detail);
            height += high;
        }
        items.splice(0..0, tick_box(Point::new(at.x, base - 0.4), tick.done));
        if let Some(blank) = &tick.blank {
            let unit = self.writer.say(blank);
            let right = at.x + width;
            let style = self.kind.small.words;
            let line = PenStroke::solid(NARROW_MM, Ink::Black);
            let from = Point::new(right - room + 3.0, base - 1.0);
            let to = Point::new(right - style.width_mm(&unit) - 1.5, base - 1.0);
            items.push(Path::line(from, to, line).into());
            items.push(
                style
                    .text(unit, Point::new(right, base), Anchor::End)
                    .into(),
            );
        }
        (items, height + 1.0)
    }

    fn notice(&self, notice: &Notice, at: Point, width: f64) -> Set {
        let harm = self.writer.text(if notice.stop {
            "bench-stop"
        } else {
            harm_id(notice.harm)
        });
        let words = Point::new(at.x + HARM_MM + 2.5, at.y - 0.8);
        let wide = width - HARM_MM - 2.5;
        let title = self.writer.say(&notice.message);
        let voice = if notice.full {
            self.kind.body.bold()
        } else {
            self.kind.body
        };
        let (mut items, mut height) = voice.set(&title, words, wide, Anchor::Start);
        if notice.full && self.said < Said::InShort {
            let mut more = self.writer.detail(&notice.message);
            if !notice.source.is_empty() {
                more = format!("{more} ({})", notice.source);
            }
            let at = Point::new(words.x, words.y - height);
            let (detail, high) = self.kind.body.set(&more, at, wide, Anchor::Start);
            items.extend(detail);
            height += high;
        }
        let small = self.kind.small.bold().inked(Ink::White);
        let (tag, tag_high) = small.set(
            &harm,
            Point::new(at.x + HARM_MM / 2.0, at.y - 0.8),
            HARM_MM - 2.0,
            Anchor::Middle,
        );
        let total = height.max(tag_high) + 1.6;
        let field = Bounds {
            min: Point::new(at.x, at.y - total + 0.3),
            max: Point::new(at.x + HARM_MM, at.y - 0.1),
        };
        let mut all = vec![Path::frame(field, None, Some(Ink::Black)).into()];
        all.extend(tag);
        all.append(&mut items);
        let low = at.y - total + 0.1;
        let line = PenStroke::solid(NARROW_MM, Ink::Black);
        all.push(Path::line(Point::new(at.x, low), Point::new(at.x + width, low), line).into());
        (all, total)
    }

    fn boxed(&self, text: &Message, top: Point, width: f64) -> Set {
        let text = self.writer.say(text);
        let at = Point::new(top.x + PADDING_MM + 0.5, top.y - PADDING_MM);
        let voice = self.kind.body.bold();
        let (words, height) = voice.set(&text, at, width - 2.0 * PADDING_MM - 1.0, Anchor::Start);
        let total = height + 2.0 * PADDING_MM;
        let frame = Bounds {
            min: Point::new(top.x, top.y - total),
            max: Point::new(top.x + width, top.y),
        };
        let line = PenStroke::solid(0.6, Ink::Black);
        let mut items = vec![Path::frame(frame, Some(line), Some(Ink::Pale)).into()];
        items.extend(tagged(Tag::Paragraph, (words, 0.0)).0);
        (items, total)
    }

    fn signs(&self, signs: &[(Sign, Message)], top: Point, width: f64) -> Set {
        const ACROSS: usize = 3;
        let each = width / 3.0;
        let (mut items, mut down) = (Vec::new(), 0.0);
        for row in signs.chunks(ACROSS) {
            let (mut x, mut tall) = (top.x, SIGN_MM);
            for (sign, words) in row {
                let text = self.writer.say(words);
                let corner = Point::new(x, top.y - down - SIGN_MM);
                items.push(Item::Begin(Tag::Figure(text.clone())));
                items.extend(sign_items(*sign, corner, SIGN_MM));
                items.push(Item::End);
                let at = Point::new(x + SIGN_MM + 2.0, top.y - down - 0.5);
                let wide = each - SIGN_MM - 4.0;
                let (set, height) = self.kind.body.set(&text, at, wide, Anchor::Start);
                items.extend(tagged(Tag::Paragraph, (set, 0.0)).0);
                tall = tall.max(height + 0.5);
                x += each;
            }
            down += tall + 1.5;
        }
        (items, down - 1.5)
    }

    /// A name, then figures with their boxes, broken to the width.
    fn run(&self, name: &Message, values: &[Value], top: Point, width: f64) -> Set {
        let text = self.writer.say(name);
        let style = self.kind.body.numbers;
        let indent = self.kind.small.width_mm(&text) + FACT_GAP_MM;
        let high = style.leading_mm + 1.2;
        let base = |row: f64| top.y - row * high - style.base_mm() - 0.4;
        let mut items = vec![Item::Begin(Tag::List)];
        let at = Point::new(top.x, base(0.0));
        items.push(self.kind.small.words.text(text, at, Anchor::Start).into());
        let (mut x, mut row) = (indent, 0.0);
        for value in values {
            let figure = self.writer.write(value);
            let wide = BOX_MM + 1.2 + style.width_mm(&figure);
            if x + wide > width && x > indent {
                (x, row) = (indent, row + 1.0);
            }
            items.push(Item::Begin(Tag::Entry));
            items.extend(tick_box(Point::new(top.x + x, base(row) - 0.3), false));
            let at = Point::new(top.x + x + BOX_MM + 1.2, base(row));
            items.push(style.text(figure, at, Anchor::Start).into());
            items.push(Item::End);
            x += wide + 4.5;
        }
        items.push(Item::End);
        (items, (row + 1.0) * high)
    }

    fn blanks(&self, names: &[Message], top: Point, width: f64) -> Set {
        let half = match names.len() {
            1 => width,
            _ => (width - 6.0) / 2.0,
        };
        let (mut items, mut down) = (Vec::new(), 0.0);
        for pair in names.chunks(2) {
            let mut x = top.x;
            for name in pair {
                let text = self.writer.say(name);
                let base = top.y - down - WRITING_MM + 2.2;
                let style = self.kind.body.words;
                items.push(Item::Begin(Tag::Paragraph));
                let wide = style.width_mm(&text);
                items.push(style.text(text, Point::new(x, base), Anchor::Start).into());
                items.push(Item::End);
                let line = PenStroke::solid(NARROW_MM, Ink::Black);
                let from = Point::new(x + wide + 1.5, base - 0.8);
                items.push(Path::line(from, Point::new(x + half, base - 0.8), line).into());
                x += half + 6.0;
            }
            down += WRITING_MM;
        }
        (items, down)
    }
}

/// A title behind the ringed numbers of its cuts.
pub(super) fn numbered(numbers: &[usize], text: &str, top: Point, width: f64, voice: Voice) -> Set {
    let style = voice.words;
    let (mut items, mut x) = (Vec::new(), 0.0);
    let middle = top.y - style.leading_mm / 2.0;
    let low =
        cap_height_mm(style.face, style.size_pt) / 2.0 + descent_mm(style.face, style.size_pt);
    for number in numbers {
        let label = number.to_string();
        let corner = low.hypot(style.width_mm(&label) / 2.0);
        let half = corner.max(style.leading_mm * 0.55);
        let centre = Point::new(top.x + x + half, middle);
        let line = PenStroke::solid(MIDDLE_MM, Ink::Black);
        items.push(Path::closed(vec![circle(centre, half)], Some(line), None).into());
        let base = Point::new(centre.x, top.y - style.base_mm());
        items.push(
            style
                .inked(Ink::Black)
                .text(label, base, Anchor::Middle)
                .into(),
        );
        x += 2.0 * half + 1.5;
    }
    let at = Point::new(top.x + x + 1.0, top.y);
    let left = width - x - 1.0;
    let at = if numbers.is_empty() { top } else { at };
    let (mut words, height) = voice.set(text, at, left.max(20.0), Anchor::Start);
    items.append(&mut words);
    (items, height)
}

/// The words of a harm.
#[must_use]
pub const fn harm_id(harm: crate::diag::Harm) -> &'static str {
    use crate::diag::Harm;
    match harm {
        Harm::KillsNow => "bench-kills-now",
        Harm::KillsLater => "bench-kills-later",
        Harm::Maims => "bench-maims",
        Harm::Lasting => "bench-lasting",
        Harm::Stone => "bench-breaks-stone",
    }
}

/// Entries one below the other as a list.
fn listed<T>(
    entries: impl IntoIterator<Item = T>,
    top: Point,
    mut set: impl FnMut(T, Point) -> Set,
) -> Set {
    let (mut items, mut down) = (vec![Item::Begin(Tag::List)], 0.0);
    for entry in entries {
        let (drawn, height) = set(entry, Point::new(top.x, top.y - down));
        items.push(Item::Begin(Tag::Entry));
        items.extend(drawn);
        items.push(Item::End);
        down += height;
    }
    items.push(Item::End);
    (items, down)
}

fn tagged(tag: Tag, (drawn, height): Set) -> Set {
    let mut items = vec![Item::Begin(tag)];
    items.extend(drawn);
    items.push(Item::End);
    (items, height)
}

/// From a top down to the base line of the first text, mm.
fn first_base(items: &[Item], top: f64) -> f64 {
    let mut texts = items.iter().filter_map(|item| match item {
        Item::Text(text) => Some(text.at.y),
        _ => None,
    });
    texts.next().map_or(0.0, |y| top - y)
}

/// A box to tick with its lower left corner at a point; one that is done holds a tick.
pub(super) fn tick_box(low: Point, done: bool) -> Vec<Item> {
    let frame = Bounds {
        min: low,
        max: Point::new(low.x + BOX_MM, low.y + BOX_MM),
    };
    let line = PenStroke::solid(MIDDLE_MM, Ink::Black);
    let mut items: Vec<Item> = vec![Path::frame(frame, Some(line), None).into()];
    if done {
        let at = |x: f64, y: f64| Point::new(low.x + x * BOX_MM, low.y + y * BOX_MM);
        let heavy = PenStroke::solid(0.5, Ink::Black);
        items.push(Path::line(at(0.2, 0.5), at(0.42, 0.2), heavy).into());
        items.push(Path::line(at(0.42, 0.2), at(0.85, 0.85), heavy).into());
    }
    items
}
