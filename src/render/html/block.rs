//! The blocks of a section as HTML.

use super::setting::Setting;
use crate::diag::Harm;
use crate::document::block::{Block, Card, Fact, Notice, Tick, Tile};
use crate::document::figure::Figure;
use crate::document::sign::Sign;
use crate::geom::Point;
use crate::layout::sign::sign_items;
use crate::layout::{self, harm_id};
use crate::render::svg;
use crate::words::{Message, Value};

/// Widths that a drawing is laid out for, mm. At the first its letters are about as high on a hand-held
/// screen as on paper; a crowded drawing takes more (judgement).
const FIGURE_MM: [f64; 5] = [90.0, 105.0, 125.0, 150.0, 182.0];
/// Side of a safety sign, mm.
const SIGN_MM: f64 = 15.0;

impl Setting {
    /// Blocks one below the other.
    pub(super) fn blocks(&mut self, blocks: &[Block]) {
        for block in blocks {
            self.block(block);
        }
    }

    /// A card: its title, then its blocks.
    pub(super) fn card(&mut self, card: &Card) {
        self.title(&card.numbers, &card.title);
        self.blocks(&card.blocks);
    }

    fn block(&mut self, block: &Block) {
        match block {
            Block::Title(numbers, text) => self.title(numbers, text),
            Block::Heading(text) => self.in_element("h3", "", text),
            Block::Text(text) => self.in_element("p", "", text),
            Block::Boxed(text) => self.boxed(text),
            Block::Facts(facts) => self.facts(facts),
            Block::Tiles(tiles) => self.tiles(tiles),
            Block::Table(table) => self.table(table),
            Block::Steps(steps) => {
                self.listed("ol", "steps", steps, Self::say);
            }
            Block::Ticks(ticks) => self.listed("ul", "ticks", ticks, Self::box_and_words),
            Block::Notices(all) => self.listed("ul", "notices", all, Self::notice),
            Block::Signs(signs) => self.listed("ul", "signs", signs, Self::sign),
            Block::Run(name, values) => self.run(name, values),
            Block::Blanks(names) => self.blanks(names),
            Block::Figure(figure) => self.figure(figure),
            Block::Beside(_, left, right) => self.two_columns(left, right),
            Block::Card(card) => self.card(card),
        }
    }

    fn in_element(&mut self, tag: &str, class: &str, text: &Message) {
        let class = (!class.is_empty()).then_some(("class", class));
        self.markup.open(tag, class.as_slice());
        self.say(text);
        self.markup.close(tag);
    }

    pub(super) fn title(&mut self, numbers: &[usize], text: &Message) {
        self.markup.open("h2", &[("tabindex", "-1")]);
        for number in numbers {
            let number = number.to_string();
            self.markup.element("span", &[("class", "ring")], &number);
        }
        self.say(text);
        self.markup.close("h2");
    }

    /// What must not be missed. A telephone number can be called.
    fn boxed(&mut self, text: &Message) {
        let number = match text.arg("number") {
            Some(Value::Name(number)) if text.id == "bench-emergency" => number,
            _ => return self.in_element("p", "boxed", text),
        };
        self.markup.open("p", &[("class", "boxed call")]);
        self.markup.open("a", &[("href", &format!("tel:{number}"))]);
        self.say(text);
        self.markup.close("a");
        self.markup.close("p");
    }

    fn facts(&mut self, facts: &[Fact]) {
        self.markup.open("dl", &[("class", "facts")]);
        for fact in facts {
            self.markup.open("div", &[]);
            self.in_element("dt", "", &fact.name);
            self.markup.open("dd", &[]);
            let words = self.writer.write(&fact.value);
            self.words(&words);
            self.markup.close("dd");
            self.markup.close("div");
        }
        self.markup.close("dl");
    }

    fn tiles(&mut self, tiles: &[Tile]) {
        self.markup.open("dl", &[("class", "tiles")]);
        for tile in tiles {
            self.markup.open("div", &[]);
            self.in_element("dt", "", &tile.name);
            let figure = self.writer.write(&tile.value);
            self.markup.element("dd", &[("class", "figure")], &figure);
            self.in_element("dd", "", &tile.note);
            self.markup.close("div");
        }
        self.markup.close("dl");
    }

    fn listed<T>(&mut self, tag: &str, class: &str, all: &[T], each: impl Fn(&mut Self, &T)) {
        self.markup.open(tag, &[("class", class)]);
        for entry in all {
            self.markup.open("li", &[]);
            each(self, entry);
            self.markup.close("li");
        }
        self.markup.close(tag);
    }

    fn box_and_words(&mut self, tick: &Tick) {
        if tick.done {
            self.markup.open("span", &[("class", "done")]);
            self.say(&tick.text);
            self.markup.close("span");
            return;
        }
        self.markup.open("label", &[]);
        self.tick(None);
        self.markup.open("span", &[]);
        if tick.full {
            self.in_element("strong", "", &tick.text);
            self.detail(&tick.text);
        } else {
            self.say(&tick.text);
        }
        self.markup.close("span");
        self.markup.close("label");
        if let Some(blank) = &tick.blank {
            let name = self.writer.say(blank);
            let label = format!("{name}: {}", self.writer.say(&tick.text));
            let key = self.key();
            self.blank(&key, Some(&label));
        }
    }

    fn detail(&mut self, message: &Message) {
        let detail = self.writer.detail(message);
        self.markup.open("span", &[("class", "detail")]);
        self.words(&detail);
        self.markup.close("span");
    }

    fn notice(&mut self, notice: &Notice) {
        let (class, harm) = if notice.stop {
            ("harm stop", "bench-stop")
        } else {
            (harm_class(notice.harm), harm_id(notice.harm))
        };
        let harm = self.writer.text(harm);
        self.markup.element("strong", &[("class", class)], &harm);
        self.markup.open("span", &[]);
        self.say(&notice.message);
        if notice.full {
            self.detail(&notice.message);
        }
        if notice.full && !notice.source.is_empty() {
            let source = format!("({})", notice.source);
            self.markup.element("span", &[("class", "detail")], &source);
        }
        self.markup.close("span");
    }

    fn sign(&mut self, (sign, words): &(Sign, Message)) {
        let items = sign_items(*sign, Point::ORIGIN, SIGN_MM);
        let drawn = svg::inline(&items, (SIGN_MM, SIGN_MM), None);
        self.markup.raw(&drawn);
        self.markup.open("span", &[]);
        self.say(words);
        self.markup.close("span");
    }

    fn run(&mut self, name: &Message, values: &[Value]) {
        self.markup.open("fieldset", &[("class", "run")]);
        self.in_element("legend", "", name);
        for value in values {
            self.markup.open("label", &[]);
            self.tick(None);
            let figure = self.writer.write(value);
            self.markup.element("b", &[], &figure);
            self.markup.close("label");
        }
        self.markup.close("fieldset");
    }

    /// Room to write in. What has a name of its own is the same wherever it stands.
    fn blanks(&mut self, names: &[Message]) {
        self.markup.open("div", &[("class", "blanks")]);
        for name in names {
            self.markup.open("label", &[]);
            self.say(name);
            let own = self.key();
            let shared = name.args.is_empty() && name.id.starts_with("helper-");
            let key = if shared {
                name.id.clone().into_owned()
            } else {
                own
            };
            self.blank(&key, None);
            self.markup.close("label");
        }
        self.markup.close("div");
    }

    fn figure(&mut self, figure: &Figure) {
        let (page, size) = layout::figure_page(figure, self.writer, self.reading, &FIGURE_MM);
        let drawn = svg::inline(&page.items, size, Some(&page.name));
        self.markup.open("figure", &[]);
        self.markup.raw(&drawn);
        self.markup.close("figure");
    }

    fn two_columns(&mut self, left: &[Block], right: &[Block]) {
        self.markup.open("div", &[("class", "columns")]);
        for column in [left, right] {
            self.markup.open("div", &[]);
            self.blocks(column);
            self.markup.close("div");
        }
        self.markup.close("div");
    }
}

const fn harm_class(harm: Harm) -> &'static str {
    match harm {
        Harm::KillsNow | Harm::KillsLater => "harm kills",
        Harm::Maims | Harm::Lasting | Harm::Stone => "harm",
    }
}
