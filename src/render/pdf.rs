//! A sheet as a PDF; the only file that names `printpdf`.
//!
//! The same sheet gives the same bytes, in one process or in two: fonts and bookmarks stand under
//! names of our own, and what `printpdf` takes from a counter or from a clock is written afresh.

use std::collections::BTreeSet;
use std::sync::LazyLock;

use lopdf::Document;
use printpdf::{
    Color, CurTransMat, CustomPdfConformance, FontId, Greyscale, Line, LineCapStyle,
    LineDashPattern, LineJoinStyle, LinePoint, Mm, Op, PageAnnotId, PageAnnotation, PaintMode,
    ParsedFont, PdfConformance, PdfDocument, PdfFont, PdfFontHandle, PdfPage, PdfSaveOptions,
    Polygon, PolygonRing, Pt, Rgb, TextItem, TextMatrix, WindingOrder,
};

use super::bezier::cubics;
use super::fault::RenderFault;
use super::pdf_tags::{Marker, Node};
use super::{pdf_finish, pdf_tags};
use crate::geom::{Point, Seg};
use crate::layout::item::{Dash, Face, Ink, Item, Page, Path, Sheet, Stroke, Text, TextTurn};
use crate::layout::typeface::{font_file, missing_from};

/// The sheet as a PDF 1.7: fonts embedded, one bookmark for each page, text that can be copied.
///
/// # Errors
/// See [`RenderFault`].
pub fn pdf(sheet: &Sheet) -> Result<Vec<u8>, RenderFault> {
    let (first, second) = rayon::join(|| half(sheet, 0), || half(sheet, 1));
    let ((mut doc, mut parts), (mut other, others)) = (first?, second?);
    for (i, parts_of_page) in others.into_iter().enumerate().skip(1).step_by(2) {
        parts[i] = parts_of_page;
    }
    for page in doc.get_pages().into_values().skip(1).step_by(2) {
        for content in doc.get_page_contents(page) {
            let drawn = other.objects.remove(&content);
            doc.objects.extend(drawn.map(|drawn| (content, drawn)));
        }
    }
    pdf_finish::strip(&mut doc, sheet)?;
    pdf_tags::add(&mut doc, sheet, &parts)?;
    pdf_finish::finish(doc, sheet)
}

/// The sheet with every second page drawn from the first (0) or the second (1) on, and the parts of those pages. The
/// others have their letters only, so that the typeface has them all. Both halves have the same objects under the
/// same numbers.
fn half(sheet: &Sheet, from: usize) -> Result<(Document, Vec<Vec<Node>>), RenderFault> {
    let mut doc = PdfDocument::new(&sheet.title);
    doc.metadata.info.conformance = PdfConformance::Custom(CustomPdfConformance::default());
    for face in [Face::Regular, Face::Bold] {
        doc.resources.fonts.map.insert(font_id(face), font(face)?);
    }
    let (width, height) = sheet.paper.size_mm();
    let mut parts_of_pages = Vec::new();
    for (i, page) in sheet.pages.iter().enumerate() {
        let (ops, parts) = if i % 2 == from {
            page_ops(page, sheet.scale)?
        } else {
            (letters(page), Vec::new())
        };
        parts_of_pages.push(parts);
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
    let drawn = doc.to_lopdf_document(&options, &mut Vec::new());
    Ok((drawn, parts_of_pages))
}

/// Reads the typeface on another core, for a program that knows it will write a PDF.
pub fn make_ready() {
    rayon::spawn(|| {
        LazyLock::force(&FONTS);
        pdf_finish::ready();
    });
}

/// The two weights, read once.
static FONTS: LazyLock<[Option<PdfFont>; 2]> =
    LazyLock::new(|| [Face::Regular, Face::Bold].map(read));

fn font(face: Face) -> Result<PdfFont, RenderFault> {
    let [regular, bold] = &*FONTS;
    let font = match face {
        Face::Regular => regular,
        Face::Bold => bold,
    };
    font.clone().ok_or(RenderFault::Font(face))
}

fn read(face: Face) -> Option<PdfFont> {
    let mut parsed = ParsedFont::from_bytes(font_file(face), 0, &mut Vec::new())?;
    parsed.font_name = Some(font_name(face).to_owned());
    Some(PdfFont::new(parsed))
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

/// Every letter of a page, each once.
fn letters(page: &Page) -> Vec<Op> {
    let mut ops = vec![Op::StartTextSection];
    for face in [Face::Regular, Face::Bold] {
        let texts = page.items.iter().filter_map(|item| match item {
            Item::Text(text) if text.face == face => Some(text.content.chars()),
            _ => None,
        });
        let once: BTreeSet<char> = texts.flatten().collect();
        let font = PdfFontHandle::External(font_id(face));
        let items = vec![TextItem::Text(once.into_iter().collect())];
        let size = Pt(1.0);
        ops.extend([Op::SetFont { font, size }, Op::ShowText { items }]);
    }
    ops.push(Op::EndTextSection);
    ops
}

/// What is drawn on a page, with the sharp joins and plain ends every line has.
fn page_ops(page: &Page, scale: [f64; 2]) -> Result<(Vec<Op>, Vec<Node>), RenderFault> {
    let mut ops = vec![
        Op::SetLineJoinStyle {
            join: LineJoinStyle::Miter,
        },
        Op::SetLineCapStyle {
            cap: LineCapStyle::Butt,
        },
    ];
    if scale != [1.0; 2] {
        let [across, up] = scale.map(single);
        let matrix = CurTransMat::Raw([across, 0.0, 0.0, up, 0.0, 0.0]);
        ops.push(Op::SetTransformationMatrix { matrix });
    }
    let mut marker = Marker::default();
    let mut set = SetSoFar::default();
    for item in &page.items {
        match item {
            Item::Begin(tag) => marker.begin(tag, &mut ops),
            Item::End => marker.end(&mut ops),
            Item::Path(path) => {
                marker.content(&mut ops);
                path_ops(path, &page.name, &mut set, &mut ops)?;
            }
            Item::Part(..) => {}
            Item::Text(text) => {
                marker.content(&mut ops);
                text_ops(text, &page.name, &mut set, &mut ops)?;
            }
        }
    }
    let parts = marker.finish(&mut ops);
    Ok((ops, parts))
}

/// What is set on a page so far, so that it is not set again: it halves the file.
#[derive(Default)]
struct SetSoFar {
    fill: Option<Ink>,
    stroke: Option<Stroke>,
    font: Option<(Face, f64)>,
}

impl SetSoFar {
    fn fill(&mut self, ink: Ink, ops: &mut Vec<Op>) {
        if self.fill.replace(ink) != Some(ink) {
            ops.push(Op::SetFillColor { col: colour(ink) });
        }
    }

    fn stroke(&mut self, stroke: Stroke, ops: &mut Vec<Op>) {
        if self.stroke.replace(stroke) != Some(stroke) {
            stroke_ops(stroke, ops);
        }
    }
}

fn path_ops(
    path: &Path,
    page: &str,
    set: &mut SetSoFar,
    ops: &mut Vec<Op>,
) -> Result<(), RenderFault> {
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
        set.fill(ink, ops);
        let polygon = Polygon {
            rings: rings().map(|points| PolygonRing { points }).collect(),
            mode: PaintMode::Fill,
            winding_order: WindingOrder::EvenOdd,
        };
        ops.push(Op::DrawPolygon { polygon });
    }
    if let Some(stroke) = path.stroke {
        set.stroke(stroke, ops);
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

fn text_ops(
    text: &Text,
    page: &str,
    set: &mut SetSoFar,
    ops: &mut Vec<Op>,
) -> Result<(), RenderFault> {
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
    set.fill(text.ink, ops);
    ops.push(Op::StartTextSection);
    let font = (text.face, text.size_pt);
    if set.font.replace(font) != Some(font) {
        ops.push(Op::SetFont {
            font: PdfFontHandle::External(font_id(text.face)),
            size: Pt(single(text.size_pt)),
        });
    }
    ops.extend([
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

/// Parts of a point that a place on paper is written in: 3.5 micrometres each, which halves the figures of a page.
const PARTS: f64 = 100.0;

fn points(mm: f64) -> Pt {
    Pt(single((mm * 72.0 / 25.4 * PARTS).round() / PARTS))
}

/// `printpdf` counts in single precision: no coarser than [`PARTS`] up to 40 m.
#[allow(clippy::cast_possible_truncation)]
fn single(value: f64) -> f32 {
    value as f32
}
