//! A sheet as a PDF; the only file that names `printpdf`.
//!
//! The same sheet gives the same bytes, in one process or in two: fonts and bookmarks stand under
//! names of our own, and what `printpdf` takes from a counter or from a clock is written afresh.

use std::fmt;

use printpdf::{
    Color, CustomPdfConformance, FontId, Greyscale, Line, LineCapStyle, LineDashPattern,
    LineJoinStyle, LinePoint, Mm, Op, PageAnnotId, PageAnnotation, PaintMode, ParsedFont,
    PdfConformance, PdfDocument, PdfFont, PdfFontHandle, PdfPage, PdfSaveOptions, Polygon,
    PolygonRing, Pt, Rgb, TextItem, TextMatrix, WindingOrder,
};

use super::bezier::cubics;
use super::pdf_finish;
use crate::geom::{Point, Seg};
use crate::sheet::item::{Dash, Face, Ink, Item, Page, Path, Sheet, Stroke, Text, TextTurn};
use crate::sheet::typeface::{font_file, missing_from};

/// Why a sheet cannot be written.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum RenderFault {
    /// A coordinate, width or size is not a finite number.
    NotFinite {
        /// The page's name.
        page: String,
        /// What has it.
        item: String,
    },
    /// The typeface has no glyph for a character, or it is a control character.
    MissingCharacter {
        /// The page's name.
        page: String,
        /// The character.
        character: char,
        /// The line of text that holds it.
        text: String,
    },
    /// The sheet's date is not `YYYY-MM-DD`.
    Date(String),
    /// An embedded font cannot be read: the program was built wrongly.
    Font(Face),
    /// The PDF could not be put together.
    Writer(String),
}

impl fmt::Display for RenderFault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::NotFinite { page, item } => {
                write!(
                    f,
                    "page \"{page}\": {item} is not at a finite place or size"
                )
            }
            Self::MissingCharacter {
                page,
                character,
                text,
            } => {
                let code = u32::from(*character);
                let shown = character.escape_debug();
                write!(
                    f,
                    "page \"{page}\": the typeface has no '{shown}' (U+{code:04X}), in \"{}\"",
                    text.escape_debug()
                )
            }
            Self::Date(date) => write!(f, "the date \"{date}\" is not of the form YYYY-MM-DD"),
            Self::Font(face) => write!(f, "the embedded font {face:?} cannot be read"),
            Self::Writer(what) => write!(f, "the PDF cannot be written: {what}"),
        }
    }
}

impl std::error::Error for RenderFault {}

/// The sheet as a PDF 1.7: fonts embedded, one bookmark for each page, text that can be copied.
///
/// # Errors
/// See [`RenderFault`].
pub fn pdf(sheet: &Sheet) -> Result<Vec<u8>, RenderFault> {
    let mut doc = PdfDocument::new(&sheet.title);
    doc.metadata.info.conformance = PdfConformance::Custom(CustomPdfConformance::default());
    for face in [Face::Regular, Face::Bold] {
        doc.resources.fonts.map.insert(font_id(face), font(face)?);
    }
    let (width, height) = sheet.paper.size_mm();
    for (i, page) in sheet.pages.iter().enumerate() {
        let ops = page_ops(page)?;
        // Replaced by boxes in f64 when the document is finished.
        let size = (Mm(single(width)), Mm(single(height)));
        doc.pages.push(PdfPage::new(size.0, size.1, ops));
        let bookmark = PageAnnotation {
            name: page.name.clone(),
            page: i + 1,
        };
        let id = PageAnnotId(format!("page{i:06}"));
        doc.bookmarks.map.insert(id, bookmark);
    }
    let options = PdfSaveOptions {
        optimize: false,
        subset_fonts: false,
        secure: true,
        image_optimization: None,
    };
    let finished = doc.to_lopdf_document(&options, &mut Vec::new());
    pdf_finish::finish(finished, sheet)
}

fn font(face: Face) -> Result<PdfFont, RenderFault> {
    let parsed = ParsedFont::from_bytes(font_file(face), 0, &mut Vec::new());
    let mut parsed = parsed.ok_or(RenderFault::Font(face))?;
    parsed.font_name = Some(font_name(face).to_owned());
    Ok(PdfFont::new(parsed))
}

const fn font_name(face: Face) -> &'static str {
    match face {
        Face::Regular => "Roboto-Regular",
        Face::Bold => "Roboto-Bold",
    }
}

fn font_id(face: Face) -> FontId {
    FontId(match face {
        Face::Regular => "Regular".into(),
        Face::Bold => "Bold".into(),
    })
}

/// What is drawn on a page, with the sharp joins and plain ends every line has.
fn page_ops(page: &Page) -> Result<Vec<Op>, RenderFault> {
    let mut ops = vec![
        Op::SetLineJoinStyle {
            join: LineJoinStyle::Miter,
        },
        Op::SetLineCapStyle {
            cap: LineCapStyle::Butt,
        },
    ];
    for item in &page.items {
        match item {
            Item::Path(path) => path_ops(path, &page.name, &mut ops)?,
            Item::Text(text) => text_ops(text, &page.name, &mut ops)?,
        }
    }
    Ok(ops)
}

fn path_ops(path: &Path, page: &str, ops: &mut Vec<Op>) -> Result<(), RenderFault> {
    let finite = |s: &Seg| s.start().is_finite() && s.end().is_finite() && s.length().is_finite();
    let width = path.stroke.map_or(0.0, |s| s.width_mm);
    if !width.is_finite() || !path.runs.iter().flatten().all(finite) {
        return Err(RenderFault::NotFinite {
            page: page.to_owned(),
            item: "a line".to_owned(),
        });
    }
    let rings = || path.runs.iter().map(|run| points_of(run));
    if let Some(ink) = path.fill {
        ops.push(Op::SetFillColor { col: colour(ink) });
        let polygon = Polygon {
            rings: rings().map(|points| PolygonRing { points }).collect(),
            mode: PaintMode::Fill,
            winding_order: WindingOrder::EvenOdd,
        };
        ops.push(Op::DrawPolygon { polygon });
    }
    if let Some(stroke) = path.stroke {
        stroke_ops(stroke, ops);
        ops.extend(rings().map(|points| Op::DrawLine {
            line: Line {
                points,
                is_closed: path.closed,
            },
        }));
    }
    Ok(())
}

fn stroke_ops(stroke: Stroke, ops: &mut Vec<Op>) {
    ops.extend([
        Op::SetOutlineColor {
            col: colour(stroke.ink),
        },
        Op::SetOutlineThickness {
            pt: points(stroke.width_mm),
        },
        Op::SetLineDashPattern {
            dash: dashes(stroke.dash),
        },
    ]);
}

/// The points of a run; the curves' handles are marked, and each curve ends in a point of its own.
fn points_of(run: &[Seg]) -> Vec<LinePoint> {
    let plain = |at: Point| line_point(at, false);
    let mut found: Vec<LinePoint> = run.first().map(|s| plain(s.start())).into_iter().collect();
    for seg in run {
        match seg {
            Seg::Line(_, to) => found.push(plain(*to)),
            Seg::Arc(arc) => {
                for [first, second, end] in cubics(arc) {
                    found.push(line_point(first, true));
                    found.push(line_point(second, true));
                    found.push(plain(end));
                }
            }
        }
    }
    found
}

fn line_point(at: Point, bezier: bool) -> LinePoint {
    LinePoint {
        p: printpdf::Point {
            x: points(at.x),
            y: points(at.y),
        },
        bezier,
    }
}

fn text_ops(text: &Text, page: &str, ops: &mut Vec<Op>) -> Result<(), RenderFault> {
    if !text.at.is_finite() || !text.size_pt.is_finite() {
        return Err(RenderFault::NotFinite {
            page: page.to_owned(),
            item: format!("the text \"{}\"", text.content.escape_debug()),
        });
    }
    if let Some(character) = missing_from(&text.content, text.face).first() {
        return Err(RenderFault::MissingCharacter {
            page: page.to_owned(),
            character: *character,
            text: text.content.clone(),
        });
    }
    let start = text.start();
    let (x, y) = (points(start.x).0, points(start.y).0);
    let matrix = match text.turn {
        TextTurn::Level => [1.0, 0.0, 0.0, 1.0, x, y],
        TextTurn::Upwards => [0.0, 1.0, -1.0, 0.0, x, y],
    };
    ops.extend([
        Op::StartTextSection,
        Op::SetFillColor {
            col: colour(text.ink),
        },
        Op::SetFont {
            font: PdfFontHandle::External(font_id(text.face)),
            size: Pt(single(text.size_pt)),
        },
        Op::SetTextMatrix {
            matrix: TextMatrix::Raw(matrix),
        },
        Op::ShowText {
            items: vec![TextItem::Text(text.content.clone())],
        },
        Op::EndTextSection,
    ]);
    Ok(())
}

fn dashes(dash: Dash) -> LineDashPattern {
    let pattern: Vec<f32> = dash.pattern_mm().iter().map(|mm| points(*mm).0).collect();
    LineDashPattern::new(0.0, &pattern)
}

fn colour(ink: Ink) -> Color {
    let [r, g, b] = ink.rgb().map(|part| f32::from(part) / 255.0);
    if r == g && g == b {
        Color::Greyscale(Greyscale::new(r, None))
    } else {
        Color::Rgb(Rgb::new(r, g, b, None))
    }
}

fn points(mm: f64) -> Pt {
    Pt(single(mm * 72.0 / 25.4))
}

/// `printpdf` counts in single precision: a hundredth of a micrometre on these pages.
#[allow(clippy::cast_possible_truncation)]
fn single(value: f64) -> f32 {
    value as f32
}
