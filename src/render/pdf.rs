//! A sheet as a PDF; the only file that names `printpdf`.
//!
//! The same sheet gives the same bytes, in one process or in two: fonts and bookmarks stand under
//! names of our own, and what `printpdf` takes from a counter or from a clock is written afresh.

use std::collections::BTreeSet;
use std::sync::LazyLock;

use lopdf::{Dictionary, Document, Object, Stream};
use printpdf::{
    CustomPdfConformance, FontId, Mm, Op, PageAnnotId, PageAnnotation, ParsedFont, PdfConformance,
    PdfDocument, PdfFont, PdfFontHandle, PdfPage, PdfSaveOptions, Pt, TextItem,
};
use rayon::iter::{IndexedParallelIterator, IntoParallelRefIterator, ParallelIterator};

use crate::layout::item::{Item, Page, Sheet, Typeface};
use crate::layout::typeface::font_file;

use super::fault::RenderFault;
use super::pdf_finish;
use super::pdf_page::content;
use super::pdf_tags::{self, Node};

/// The sheet as a PDF 1.7: fonts embedded, one bookmark for each page, text that can be copied.
///
/// # Errors
/// See [`RenderFault`].
pub fn pdf(sheet: &Sheet) -> Result<Vec<u8>, RenderFault> {
    let (doc, drawn) = rayon::join(|| blank(sheet), || drawn(sheet));
    let (mut doc, drawn) = (doc?, drawn?);
    let mut parts = Vec::new();
    for (page, (stream, of_page)) in doc.get_pages().into_values().zip(drawn) {
        let contents = doc.get_page_contents(page).into_iter().next();
        let letters =
            contents.ok_or_else(|| RenderFault::Writer("a page has no content".into()))?;
        doc.objects.insert(letters, Object::Stream(stream));
        parts.push(of_page);
    }
    pdf_finish::strip(&mut doc, sheet)?;
    pdf_tags::add(&mut doc, sheet, &parts)?;
    pdf_finish::finish(doc, sheet)
}

/// What is drawn on each page, pressed, and the page's parts.
fn drawn(sheet: &Sheet) -> Result<Vec<(Stream, Vec<Node>)>, RenderFault> {
    let page = |press: &mut _, page: &Page| {
        let (bytes, parts) = content(page, sheet.scale, font_name_on_page)?;
        let mut stream = Stream::new(Dictionary::new(), bytes);
        pdf_finish::press(&mut stream, press);
        Ok((stream, parts))
    };
    let pages = sheet.pages.par_iter().with_max_len(1);
    // All of them first, so that of several faults that of the earliest page is told.
    let each: Vec<Result<_, RenderFault>> = pages.map_init(pdf_finish::presser, page).collect();
    each.into_iter().collect()
}

/// The sheet with the letters of each page in place of what is drawn on it, so that the typeface has them.
fn blank(sheet: &Sheet) -> Result<Document, RenderFault> {
    let mut doc = PdfDocument::new(&sheet.title);
    doc.metadata.info.conformance = PdfConformance::Custom(CustomPdfConformance::default());
    for face in [Typeface::Regular, Typeface::Bold] {
        doc.resources.fonts.map.insert(font_id(face), font(face)?);
    }
    let (width, height) = sheet.paper.size_mm();
    for (i, page) in sheet.pages.iter().enumerate() {
        // Replaced by boxes in f64 when the document is finished.
        let size = (Mm(single(width)), Mm(single(height)));
        doc.pages.push(PdfPage::new(size.0, size.1, letters(page)));
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
    Ok(doc.to_lopdf_document(&options, &mut Vec::new()))
}

/// Reads the typeface on another core, for a program that knows it will write a PDF.
pub fn make_ready() {
    rayon::spawn(|| {
        LazyLock::force(&FONTS);
    });
}

/// The two weights, read once.
static FONTS: LazyLock<[Option<PdfFont>; 2]> =
    LazyLock::new(|| [Typeface::Regular, Typeface::Bold].map(read));

fn font(face: Typeface) -> Result<PdfFont, RenderFault> {
    let [regular, bold] = &*FONTS;
    let font = match face {
        Typeface::Regular => regular,
        Typeface::Bold => bold,
    };
    font.clone().ok_or(RenderFault::Font(face))
}

fn read(face: Typeface) -> Option<PdfFont> {
    let mut parsed = ParsedFont::from_bytes(font_file(face), 0, &mut Vec::new())?;
    parsed.font_name = Some(font_name(face).to_owned());
    Some(PdfFont::new(parsed))
}

const fn font_name(face: Typeface) -> &'static str {
    match face {
        Typeface::Regular => "Roboto-Regular",
        Typeface::Bold => "Roboto-Bold",
    }
}

/// What a page calls a face.
const fn font_name_on_page(face: Typeface) -> &'static str {
    match face {
        Typeface::Regular => "Regular",
        Typeface::Bold => "Bold",
    }
}

fn font_id(face: Typeface) -> FontId {
    FontId(font_name_on_page(face).into())
}

/// Every letter of a page, each once.
fn letters(page: &Page) -> Vec<Op> {
    let mut ops = vec![Op::StartTextSection];
    for face in [Typeface::Regular, Typeface::Bold] {
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

/// `printpdf` counts in single precision.
#[allow(clippy::cast_possible_truncation)]
fn single(value: f64) -> f32 {
    value as f32
}
