//! The sheet's typeface: how wide a line of text is, and which characters it lacks.
//!
//! The two weights are embedded (see `fonts/README.md`). Widths are what a PDF reader makes of
//! them: each glyph's advance rounded down to a thousandth of the size, no kerning.

use std::collections::BTreeMap;
use std::sync::LazyLock;

use super::item::{Item, Sheet, Typeface};

/// One point (1/72 inch), mm.
pub const POINT_MM: f64 = 25.4 / 72.0;

const REGULAR: &[u8] = include_bytes!("../../fonts/Roboto-Regular.ttf");
const PRESSED: [&[u8]; 2] = [
    include_bytes!("../../fonts/Roboto-Regular.ttf.zlib"),
    include_bytes!("../../fonts/Roboto-Bold.ttf.zlib"),
];
/// Codes of the Latin letters lie below this: blocks Basic Latin to Latin Extended-B.
const LATIN: usize = 0x250;
const BOLD: &[u8] = include_bytes!("../../fonts/Roboto-Bold.ttf");

static METRICS: LazyLock<[Metrics; 2]> =
    LazyLock::new(|| [REGULAR, BOLD].map(|bytes| Metrics::read(bytes).unwrap_or_default()));

/// What is measured of one weight, in thousandths of the size.
#[derive(Default)]
struct Metrics {
    /// The characters by code up to the end of the Latin letters; nothing where one is lacking.
    latin: Vec<Option<Glyph>>,
    /// The same for the signs beyond.
    signs: BTreeMap<char, Glyph>,
    cap_height: f64,
    ascent: f64,
    descent: f64,
}

/// What stands for a character.
#[derive(Clone, Copy)]
struct Glyph {
    /// Its number in the font file.
    number: u16,
    /// How wide it is.
    advance: f64,
}

impl Metrics {
    fn read(bytes: &[u8]) -> Option<Self> {
        let font = ttf_parser::Face::parse(bytes, 0).ok()?;
        let em = f64::from(font.units_per_em());
        let thousandths = |units: i16| f64::from(units) * 1000.0 / em;
        let mut metrics = Self {
            latin: vec![None; LATIN],
            signs: BTreeMap::new(),
            cap_height: thousandths(font.capital_height()?),
            ascent: thousandths(font.ascender()),
            descent: thousandths(-font.descender()),
        };
        for table in font.tables().cmap?.subtables {
            if !table.is_unicode() {
                continue;
            }
            table.codepoints(|code| {
                let glyph = table.glyph_index(code).filter(|g| g.0 != 0);
                let advance = glyph.and_then(|g| font.glyph_hor_advance(g));
                if let (Some(c), Some(glyph), Some(units)) = (char::from_u32(code), glyph, advance)
                {
                    let advance = (f64::from(units) * 1000.0 / em).floor();
                    let number = glyph.0;
                    metrics.learn(c, Glyph { number, advance });
                }
            });
        }
        Some(metrics)
    }

    fn learn(&mut self, c: char, glyph: Glyph) {
        match self.latin.get_mut(c as usize) {
            Some(place) => *place = Some(glyph),
            None => {
                self.signs.insert(c, glyph);
            }
        }
    }

    fn glyph(&self, c: char) -> Option<Glyph> {
        match self.latin.get(c as usize) {
            Some(glyph) => *glyph,
            None => self.signs.get(&c).copied(),
        }
    }

    fn advance(&self, c: char) -> Option<f64> {
        self.glyph(c).map(|g| g.advance)
    }
}

fn metrics(face: Typeface) -> &'static Metrics {
    match face {
        Typeface::Regular => &METRICS[0],
        Typeface::Bold => &METRICS[1],
    }
}

/// The font file of a weight (TrueType).
#[must_use]
pub fn font_file(face: Typeface) -> &'static [u8] {
    match face {
        Typeface::Regular => REGULAR,
        Typeface::Bold => BOLD,
    }
}

/// The same file pressed, in the zlib format.
#[must_use]
pub fn pressed_font_file(face: Typeface) -> &'static [u8] {
    let [regular, bold] = PRESSED;
    match face {
        Typeface::Regular => regular,
        Typeface::Bold => bold,
    }
}

/// The number of a character's glyph in the font file; nothing where the font lacks it.
#[must_use]
pub fn glyph(character: char, face: Typeface) -> Option<u16> {
    metrics(face).glyph(character).map(|g| g.number)
}

/// Width of a line of text at a size in points, mm. Characters the font lacks count as nothing.
#[must_use]
pub fn width_mm(text: &str, face: Typeface, size_pt: f64) -> f64 {
    let metrics = metrics(face);
    let thousandths: f64 = text.chars().filter_map(|c| metrics.advance(c)).sum();
    thousandths / 1000.0 * size_pt * POINT_MM
}

/// Height of the capitals above the base line, mm.
#[must_use]
pub fn cap_height_mm(face: Typeface, size_pt: f64) -> f64 {
    metrics(face).cap_height / 1000.0 * size_pt * POINT_MM
}

/// Height above the base line that holds every letter with its accents, mm.
#[must_use]
pub fn ascent_mm(face: Typeface, size_pt: f64) -> f64 {
    metrics(face).ascent / 1000.0 * size_pt * POINT_MM
}

/// Depth below the base line that holds every letter, mm.
#[must_use]
pub fn descent_mm(face: Typeface, size_pt: f64) -> f64 {
    metrics(face).descent / 1000.0 * size_pt * POINT_MM
}

/// The characters of a text that a weight lacks, control characters included, each once.
#[must_use]
pub fn missing_from(text: &str, face: Typeface) -> Vec<char> {
    let metrics = metrics(face);
    let mut found: Vec<char> = Vec::new();
    for c in text.chars() {
        let lacking = c.is_control() || metrics.advance(c).is_none();
        if lacking && !found.contains(&c) {
            found.push(c);
        }
    }
    found
}

/// The characters of a text that the typeface lacks in either weight, each once.
#[must_use]
pub fn missing(text: &str) -> Vec<char> {
    let mut found = missing_from(text, Typeface::Regular);
    for c in missing_from(text, Typeface::Bold) {
        if !found.contains(&c) {
            found.push(c);
        }
    }
    found
}

/// A character that cannot be printed, and where it stands.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct MissingCharacter {
    /// The page, counted from 0.
    pub page: usize,
    /// The character.
    pub character: char,
    /// The line of text that holds it.
    pub text: String,
}

impl Sheet {
    /// Every character on the pages that the typeface cannot print, in page order.
    #[must_use]
    pub fn missing_characters(&self) -> Vec<MissingCharacter> {
        let mut found = Vec::new();
        for (page, content) in self.pages.iter().enumerate() {
            for item in &content.items {
                let Item::Text(text) = item else { continue };
                for character in missing_from(&text.content, text.face) {
                    found.push(MissingCharacter {
                        page,
                        character,
                        text: text.content.clone(),
                    });
                }
            }
        }
        found
    }
}
