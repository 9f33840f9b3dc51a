//! A job sheet's PDF read back: its texts with their places, page by page.

// Each test that reads a sheet asks for its own part of this.
#![allow(dead_code)]

use std::collections::BTreeMap;

use lopdf::content::{Content, Operation};
use lopdf::{Document, Encoding, Object};

/// Millimetres in a point (1/72 inch).
const POINT_MM: f64 = 25.4 / 72.0;

/// How a text runs.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Turn {
    /// From left to right.
    Level,
    /// From bottom to top.
    Upwards,
}

/// A text as it stands on the paper.
#[derive(Clone, Debug)]
pub(crate) struct Placed {
    /// Where its base line begins, mm from the page's left edge.
    pub(crate) x: f64,
    /// Where its base line begins, mm from the page's lower edge.
    pub(crate) y: f64,
    /// Size in points.
    pub(crate) size_pt: f64,
    /// How it runs.
    pub(crate) turn: Turn,
    /// Name of its font in the file.
    pub(crate) font: String,
    /// The characters, through the font's own map back to Unicode.
    pub(crate) words: String,
}

/// The texts of every page, in the order they are drawn.
pub(crate) fn pages(pdf: &[u8]) -> Vec<Vec<Placed>> {
    let doc = Document::load_mem(pdf).expect("the PDF is whole");
    doc.get_pages().values().map(|id| page(&doc, *id)).collect()
}

fn page(doc: &Document, id: lopdf::ObjectId) -> Vec<Placed> {
    let fonts = doc.get_page_fonts(id).expect("fonts");
    let encodings: BTreeMap<String, Encoding<'_>> = fonts
        .iter()
        .map(|(name, font)| {
            let encoding = font.get_font_encoding(doc).expect("a map to Unicode");
            (String::from_utf8_lossy(name).into_owned(), encoding)
        })
        .collect();
    let content = doc.get_page_content(id);
    let operations = Content::decode(&content).expect("content").operations;
    let mut pen = Pen::default();
    operations
        .iter()
        .filter_map(|o| pen.follow(o, &encodings))
        .collect()
}

/// The text state that the sheet's writer uses.
#[derive(Default)]
struct Pen {
    font: String,
    size_pt: f64,
    matrix: [f64; 6],
}

impl Pen {
    fn follow(
        &mut self,
        operation: &Operation,
        encodings: &BTreeMap<String, Encoding<'_>>,
    ) -> Option<Placed> {
        let operands = &operation.operands;
        match operation.operator.as_str() {
            // A text object begins at the origin; its font holds on from the one before (ISO 32000-1, 9.4.1).
            "BT" => self.matrix = [1.0, 0.0, 0.0, 1.0, 0.0, 0.0],
            "Tf" => {
                self.font = String::from_utf8_lossy(operands[0].as_name().unwrap()).into_owned();
                self.size_pt = number(&operands[1]);
            }
            "Tm" => {
                for (place, value) in self.matrix.iter_mut().zip(operands) {
                    *place = number(value);
                }
            }
            "Tj" => {
                let bytes = operands[0].as_str().unwrap();
                let encoding = &encodings[&self.font];
                return Some(self.placed(Document::decode_text(encoding, bytes).unwrap()));
            }
            // Any other way of moving or showing text would be read at the wrong place.
            "Td" | "TD" | "T*" | "TJ" | "'" | "\"" | "cm" => {
                panic!("the reader does not follow {}", operation.operator)
            }
            _ => {}
        }
        None
    }

    fn placed(&self, words: String) -> Placed {
        let [a, b, c, d, x, y] = self.matrix;
        let turn = match [a, b, c, d] {
            [1.0, 0.0, 0.0, 1.0] => Turn::Level,
            [0.0, 1.0, -1.0, 0.0] => Turn::Upwards,
            other => panic!("{words:?} is turned by {other:?}"),
        };
        Placed {
            x: x * POINT_MM,
            y: y * POINT_MM,
            size_pt: self.size_pt,
            turn,
            font: self.font.clone(),
            words,
        }
    }
}

fn number(object: &Object) -> f64 {
    f64::from(object.as_float().expect("a number"))
}
