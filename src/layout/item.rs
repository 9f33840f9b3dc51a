//! What a page is made of.
//!
//! Places are mm from the page's lower left corner, y up. Text sizes are points (1/72 inch).
//! Nothing here computes: the pages decide, the renderers translate.

use crate::geom::{Point, Seg};

/// A sheet of paper.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Paper {
    /// 210 × 297 mm (ISO 216).
    #[default]
    A4,
    /// 8.5 × 11 in (ANSI/ASME Y14.1 size A).
    Letter,
    /// Cut from a roll: width and height, mm.
    Roll {
        /// Along the roll.
        width_mm: u16,
        /// Across it.
        height_mm: u16,
    },
}

impl Paper {
    /// Width and height, mm.
    #[must_use]
    pub fn size_mm(self) -> (f64, f64) {
        match self {
            Self::A4 => (210.0, 297.0),
            Self::Letter => (215.9, 279.4),
            Self::Roll {
                width_mm,
                height_mm,
            } => (width_mm.into(), height_mm.into()),
        }
    }
}

/// A whole document.
#[derive(Clone, Debug)]
pub struct Sheet {
    /// Title, for the document's properties.
    pub title: String,
    /// Language of the text, such as `en`.
    pub language: &'static str,
    /// Date of the job as `YYYY-MM-DD`, or empty.
    pub date: String,
    /// The paper.
    pub paper: Paper,
    /// What is printed is stretched by this, across and up, from the page's lower left corner, to cure a
    /// printer that is out.
    pub scale: [f64; 2],
    /// The pages in order.
    pub pages: Vec<Page>,
}

/// One page.
#[derive(Clone, Debug)]
pub struct Page {
    /// Name in the outline of bookmarks.
    pub name: String,
    /// Language of its words, such as `en`.
    pub language: &'static str,
    /// What is on it, later items over earlier ones.
    pub items: Vec<Item>,
}

/// One thing on a page.
#[derive(Clone, Debug)]
pub enum Item {
    /// A line or an area.
    Path(Path),
    /// A line of text.
    Text(Text),
    /// A part of a drawing that can be pointed at on a screen: its name, and where it runs. Paper shows
    /// nothing of it.
    Part(String, Vec<Seg>),
    /// What follows, up to its end, is one part of the page for whoever has it read out.
    Begin(Tag),
    /// The end of the part begun last.
    End,
}

/// What a part of a page is, after the standard structure types of PDF (ISO 32000-1, 14.8.4).
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Tag {
    /// The page's title.
    Title,
    /// A heading.
    Heading,
    /// A paragraph.
    Paragraph,
    /// A list.
    List,
    /// An entry of a list.
    Entry,
    /// A table.
    Table,
    /// A row of a table.
    Row,
    /// A head of a column.
    Head,
    /// A cell.
    Cell,
    /// A drawing, with what it shows in words.
    Figure(String),
}

impl Tag {
    /// Its name as a structure type.
    #[must_use]
    pub const fn name(&self) -> &'static str {
        match self {
            Self::Title => "H1",
            Self::Heading => "H2",
            Self::Paragraph => "P",
            Self::List => "L",
            Self::Entry => "LI",
            Self::Table => "Table",
            Self::Row => "TR",
            Self::Head => "TH",
            Self::Cell => "TD",
            Self::Figure(_) => "Figure",
        }
    }

    /// True when it holds other parts and nothing of its own.
    #[must_use]
    pub const fn groups(&self) -> bool {
        matches!(self, Self::List | Self::Table | Self::Row)
    }
}

/// One or more runs of lines and arcs, stroked, filled or both.
#[derive(Clone, Debug)]
pub struct Path {
    /// Each run: pieces end to end.
    pub runs: Vec<Vec<Seg>>,
    /// Close every run.
    pub closed: bool,
    /// How the line is drawn; nothing for no line.
    pub stroke: Option<PenStroke>,
    /// What the inside is filled with (even-odd); nothing for no fill.
    pub fill: Option<Ink>,
}

/// How a line is drawn.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PenStroke {
    /// Width, mm.
    pub width_mm: f64,
    /// Colour.
    pub ink: Ink,
    /// Line type.
    pub dash: Dash,
}

/// Line types after ISO 128.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Dash {
    /// Continuous: edges, dimensions.
    #[default]
    Continuous,
    /// Dashed: hidden edges.
    Dashed,
    /// Long dash, dot: centre lines, cut lines.
    DashDot,
    /// Dots: projections.
    Dotted,
}

impl Dash {
    /// Lengths of dash and gap in turn, mm; empty for a continuous line. ISO 128-2
    /// gives them in line widths; the dots and gaps are a little longer here, so that they survive
    /// a worn printer (judgement).
    #[must_use]
    pub const fn pattern_mm(self) -> &'static [f64] {
        match self {
            Self::Continuous => &[],
            Self::Dashed => &[3.0, 1.0],
            Self::DashDot => &[6.0, 1.0, 0.5, 1.0],
            Self::Dotted => &[0.35, 0.9],
        }
    }
}

/// The colours of a sheet. It must survive a black-and-white printer.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Ink {
    /// Black.
    Black,
    /// Grey, for construction lines and small notes.
    Grey,
    /// Light grey, for table stripes.
    Pale,
    /// White, for text on black.
    White,
    /// The one accent colour; it never carries a meaning alone.
    Accent,
}

impl Ink {
    /// Red, green and blue, 0 to 255 (judgement: the accent prints as a dark grey, light enough to
    /// tell from black; the pale stripe still shows on a worn printer).
    #[must_use]
    pub const fn rgb(self) -> [u8; 3] {
        match self {
            Self::Black => [0, 0, 0],
            Self::Grey => [96, 96, 96],
            Self::Pale => [238, 238, 238],
            Self::White => [255, 255, 255],
            Self::Accent => [20, 60, 120],
        }
    }
}

/// A line of text. Control characters do not belong in it.
#[derive(Clone, Debug)]
pub struct Text {
    /// Where its base line begins, is centred, or ends.
    pub at: Point,
    /// Size, points.
    pub size_pt: f64,
    /// Weight.
    pub face: Typeface,
    /// Colour.
    pub ink: Ink,
    /// What `at` is to the text.
    pub anchor: Anchor,
    /// Upright or reading upwards.
    pub turn: TextTurn,
    /// The characters.
    pub content: String,
}

/// The two weights of the sheet's one typeface.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Typeface {
    /// For reading.
    #[default]
    Regular,
    /// For headings and for numbers read at the bench.
    Bold,
}

/// What a text's place is to the text.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Anchor {
    /// Its start.
    #[default]
    Start,
    /// Its middle.
    Middle,
    /// Its end.
    End,
}

/// Direction of a line of text.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum TextTurn {
    /// Reading from left to right.
    #[default]
    Level,
    /// Reading from bottom to top.
    Upwards,
}
