//! What a document is made of: sections of typed blocks, with no paper in them.
//!
//! Everything said is a [`Message`] or a [`Value`]; whoever shows the document chooses sizes and
//! places, and writes them through a [`crate::words::Writer`].

use crate::diag::Harm;
use crate::words::{Language, Message, System, Value};

use super::figure::Figure;
use super::sign::Sign;

/// A whole job, ready to be shown.
#[derive(Clone, Debug)]
pub struct Document {
    /// Title of the job, as its author wrote it.
    pub title: String,
    /// Date of the job as `YYYY-MM-DD`, or empty.
    pub date: String,
    /// The system of units of every value.
    pub system: System,
    /// Four characters that differ between plans, so that pages of two plans are never mixed.
    pub fingerprint: String,
    /// The sections in order: bench pages first, the annex behind them.
    pub sections: Vec<Section>,
    /// What to do when something goes wrong, in each language that is read at this job. Paper has it on
    /// other pages; on a screen it is one touch away from everywhere.
    pub stop: Vec<Section>,
}

/// Where a section belongs.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum DocumentPart {
    /// Printed by default and taken to the stone.
    Bench,
    /// Working, tables, sources: printed when asked for.
    Annex,
}

/// How far from the eye a section is read.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Reading {
    /// At the stone, in wet gloves.
    Bench,
    /// Aloud, by two people.
    Helper,
    /// At a desk.
    Desk,
}

/// With what a section shares its page.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Sharing {
    /// With nothing.
    Alone,
    /// With those before and after it that have room on the page as well.
    IfRoom,
    /// The same, and always with one more of its kind.
    InPairs,
    /// With the one before it if there is room, else with the last of all.
    Floating,
}

/// One subject: a bench page, or a chapter of the annex.
#[derive(Clone, Debug)]
pub struct Section {
    /// Bench or annex.
    pub part: DocumentPart,
    /// How it is read.
    pub reading: Reading,
    /// Its language.
    pub language: Language,
    /// Its name.
    pub name: Message,
    /// A line to end on.
    pub foot: Message,
    /// Whether it may share a page with the sections beside it.
    pub sharing: Sharing,
    /// What it holds.
    pub blocks: Vec<Block>,
}

/// One block of a section.
#[derive(Clone, Debug)]
pub enum Block {
    /// The section's title, with the numbers of the cuts it is about.
    Title(Vec<usize>, Message),
    /// A heading inside the section.
    Heading(Message),
    /// A paragraph.
    Text(Message),
    /// Names with what they are.
    Facts(Vec<Fact>),
    /// A few large figures side by side.
    Tiles(Vec<Tile>),
    /// A table.
    Table(Table),
    /// Things done one after another.
    Steps(Vec<Message>),
    /// Things to tick.
    Ticks(Vec<Tick>),
    /// Stops and warnings.
    Notices(Vec<Notice>),
    /// What must not be missed, in a frame.
    Boxed(Message),
    /// A drawing.
    Figure(Box<Figure>),
    /// Safety signs with their words.
    Signs(Vec<(Sign, Message)>),
    /// Two columns; the first takes this part of the width, in percent.
    Beside(u8, Vec<Block>, Vec<Block>),
    /// A frame of its own that is never broken; a stop makes it unmistakable.
    Card(Card),
    /// A run of figures, each with a box to tick, behind a name.
    Run(Message, Vec<Value>),
    /// Lines to write on, each with its name.
    Blanks(Vec<Message>),
}

/// A name with what it is.
#[derive(Clone, Debug)]
pub struct Fact {
    /// The name.
    pub name: Message,
    /// What it is.
    pub value: Value,
}

/// A large figure.
#[derive(Clone, Debug)]
pub struct Tile {
    /// What it is.
    pub name: Message,
    /// The figure.
    pub value: Value,
    /// A few words more.
    pub note: Message,
}

/// A thing to tick.
#[derive(Clone, Debug)]
pub struct Tick {
    /// The words.
    pub text: Message,
    /// What is written in beside it, when there is something to write.
    pub blank: Option<Message>,
    /// True when the plan knows it as done.
    pub done: bool,
    /// True to print the message's detail as well.
    pub full: bool,
}

/// A stop or a warning.
#[derive(Clone, Debug)]
pub struct Notice {
    /// What it does.
    pub harm: Harm,
    /// True for a stop.
    pub stop: bool,
    /// The finding's message: one line, more under its detail.
    pub message: Message,
    /// True to print the detail as well.
    pub full: bool,
    /// Where it comes from, or empty.
    pub source: String,
}

/// A framed part of a section about some cuts.
#[derive(Clone, Debug)]
pub struct Card {
    /// The cuts' numbers.
    pub numbers: Vec<usize>,
    /// Its title.
    pub title: Message,
    /// True when the plan holds a stop.
    pub stop: bool,
    /// What it holds.
    pub blocks: Vec<Block>,
}

/// A table.
#[derive(Clone, Debug)]
pub struct Table {
    /// The columns.
    pub columns: Vec<Column>,
    /// The cells, row by row, one for each column.
    pub rows: Vec<Vec<Cell>>,
}

/// A column of a table.
#[derive(Clone, Debug)]
pub struct Column {
    /// Its head.
    pub title: Value,
    /// True for figures: set to the right.
    pub figures: bool,
    /// Its part of the width against the other columns.
    pub width: u8,
}

/// One cell.
#[derive(Clone, Debug)]
pub enum Cell {
    /// A value or a message.
    Value(Value),
    /// A box to tick.
    Tick,
    /// Room to write in.
    Blank,
    /// Nothing.
    Empty,
}

impl Block {
    /// True for a block that must not stand alone at the end of a page.
    #[must_use]
    pub const fn leads(&self) -> bool {
        matches!(self, Self::Title(..) | Self::Heading(_))
    }
}

impl Column {
    /// A column of words.
    #[must_use]
    pub const fn words(title: Value, width: u8) -> Self {
        Self {
            title,
            figures: false,
            width,
        }
    }

    /// A column of figures.
    #[must_use]
    pub const fn figures(title: Value, width: u8) -> Self {
        Self {
            title,
            figures: true,
            width,
        }
    }
}

impl Fact {
    /// A fact.
    #[must_use]
    pub fn new(name: &'static str, value: impl Into<Value>) -> Self {
        Self {
            name: Message::plain(name),
            value: value.into(),
        }
    }
}

impl Tick {
    /// Something to tick.
    #[must_use]
    pub const fn new(text: Message) -> Self {
        Self {
            text,
            blank: None,
            done: false,
            full: false,
        }
    }

    /// With room to write in.
    #[must_use]
    pub fn blank(self, what: &'static str) -> Self {
        Self {
            blank: Some(Message::plain(what)),
            ..self
        }
    }
}

impl From<Value> for Cell {
    fn from(value: Value) -> Self {
        Self::Value(value)
    }
}
