//! A document for a terminal: the same sections and blocks as on paper, one under the other.

use crate::document::block::{Block, Cell, Document, Fact, Notice, Section, Table, Tick};
use crate::words::{Message, Writer};

/// Columns that words are broken at.
const WIDTH: usize = 100;
/// Columns that the names of facts may take.
const NAMES: usize = 24;

/// A whole document.
#[must_use]
pub fn document(document: &Document) -> String {
    let sections = document.sections.iter();
    let each = sections.map(|s| section(s, &Writer::new(document.system, s.language)));
    each.collect::<Vec<_>>().join("\n")
}

/// One section.
#[must_use]
pub fn section(section: &Section, writer: &Writer) -> String {
    blocks(&section.blocks, writer)
}

/// Blocks one under the other.
#[must_use]
pub fn blocks(blocks: &[Block], writer: &Writer) -> String {
    let mut page = Page {
        writer,
        out: String::new(),
    };
    page.blocks(blocks);
    page.out
}

struct Page<'a> {
    writer: &'a Writer,
    out: String,
}

impl Page<'_> {
    fn blocks(&mut self, blocks: &[Block]) {
        for block in blocks {
            self.block(block);
        }
    }

    fn block(&mut self, block: &Block) {
        match block {
            Block::Title(numbers, text) => {
                let numbers: Vec<String> = numbers.iter().map(ToString::to_string).collect();
                let title = format!("{} {}", numbers.join(", "), self.writer.say(text));
                self.line(title.trim().to_uppercase().as_str());
            }
            Block::Heading(text) => {
                self.out.push('\n');
                let text = self.writer.say(text);
                self.line(&text);
            }
            Block::Text(text) | Block::Boxed(text) => self.paragraph(text, 2),
            Block::Facts(facts) => facts.iter().for_each(|f| self.fact(f)),
            Block::Tiles(tiles) => {
                for tile in tiles {
                    let value = self.writer.write(&tile.value);
                    let note = self.writer.say(&tile.note);
                    let name = self.writer.say(&tile.name);
                    self.named(&name, format!("{value}  {note}").trim());
                }
            }
            Block::Table(table) => self.table(table),
            Block::Steps(steps) => {
                for (i, step) in steps.iter().enumerate() {
                    let text = self.writer.say(step);
                    self.hanging(&format!("  {}. ", i + 1), &text);
                }
            }
            Block::Ticks(ticks) => ticks.iter().for_each(|t| self.tick(t)),
            Block::Notices(all) => all.iter().for_each(|n| self.notice(n)),
            Block::Signs(signs) => {
                for (sign, words) in signs {
                    let text = self.writer.say(words);
                    self.hanging(&format!("  {}  ", sign.reference()), &text);
                }
            }
            Block::Run(name, values) => {
                let values: Vec<String> = values.iter().map(|v| self.writer.write(v)).collect();
                let name = self.writer.say(name);
                self.named(&name, &values.join(", "));
            }
            Block::Blanks(names) => {
                for name in names {
                    let text = self.writer.say(name);
                    self.line(&format!("  {text}: ____________"));
                }
            }
            Block::Figure(_) => {}
            Block::Beside(_, left, right) => {
                self.blocks(left);
                self.blocks(right);
            }
            Block::Card(card) => {
                let numbers: Vec<String> = card.numbers.iter().map(ToString::to_string).collect();
                let title = self.writer.say(&card.title);
                self.out.push('\n');
                self.line(&format!("{} {title}", numbers.join(", ")));
                self.blocks(&card.blocks);
            }
        }
    }

    fn fact(&mut self, fact: &Fact) {
        let (name, value) = (self.writer.say(&fact.name), self.writer.write(&fact.value));
        self.named(&name, &value);
    }

    fn named(&mut self, name: &str, value: &str) {
        let missing = NAMES.saturating_sub(name.chars().count());
        self.hanging(&format!("  {name}{} ", " ".repeat(missing)), value);
    }

    fn tick(&mut self, tick: &Tick) {
        let sign = if tick.done { "[x]" } else { "[ ]" };
        let text = self.writer.say(&tick.text);
        self.hanging(&format!("  {sign} "), &text);
    }

    fn notice(&mut self, notice: &Notice) {
        let title = self.writer.say(&notice.message);
        let word = if notice.stop {
            self.writer.text("bench-stop")
        } else {
            String::new()
        };
        let sign = if word.is_empty() {
            "  ! ".to_owned()
        } else {
            format!("  {word}: ")
        };
        self.hanging(&sign, &title);
        if notice.full {
            let detail = self.writer.detail(&notice.message);
            self.hanging("      ", &detail);
            if !notice.source.is_empty() {
                self.hanging("      ", &format!("({})", notice.source));
            }
        }
    }

    fn paragraph(&mut self, text: &Message, indent: usize) {
        let text = self.writer.say(text);
        self.hanging(&" ".repeat(indent), &text);
    }

    fn table(&mut self, table: &Table) {
        let mut rows = vec![self.heads(table)];
        rows.extend(table.rows.iter().map(|row| {
            let cells = row.iter().map(|cell| self.cell(cell));
            cells.collect::<Vec<String>>()
        }));
        let count = table.columns.len();
        let wide = |i: usize| {
            let cells = rows.iter().filter_map(|r| r.get(i));
            cells.map(|c| c.chars().count()).max().unwrap_or(0)
        };
        let widths: Vec<usize> = (0..count).map(wide).collect();
        for row in &rows {
            let cells = row.iter().zip(&widths).zip(&table.columns);
            let line = cells.fold(String::from("  "), |line, ((cell, wide), column)| {
                let space = " ".repeat(wide - cell.chars().count().min(*wide));
                if column.figures {
                    format!("{line}{space}{cell}  ")
                } else {
                    format!("{line}{cell}{space}  ")
                }
            });
            self.line(line.trim_end());
        }
    }

    fn heads(&self, table: &Table) -> Vec<String> {
        let heads = table.columns.iter().map(|c| self.writer.write(&c.title));
        heads.collect()
    }

    fn cell(&self, cell: &Cell) -> String {
        match cell {
            Cell::Value(value) => self.writer.write(value),
            Cell::Tick => "[ ]".into(),
            Cell::Blank => "____".into(),
            Cell::Empty => String::new(),
        }
    }

    fn line(&mut self, text: &str) {
        self.out.push_str(&text.replace('\u{a0}', " "));
        self.out.push('\n');
    }

    /// Words broken at the width, later lines as far in as the first.
    fn hanging(&mut self, sign: &str, text: &str) {
        let indent = " ".repeat(sign.chars().count());
        let mut line = sign.to_owned();
        let mut begun = false;
        for word in text.split([' ', '\n']).filter(|w| !w.is_empty()) {
            if begun && line.chars().count() + 1 + word.chars().count() > WIDTH {
                self.line(&line);
                line.clone_from(&indent);
                begun = false;
            }
            if begun {
                line.push(' ');
            }
            line.push_str(word);
            begun = true;
        }
        self.line(line.trim_end());
    }
}
