//! What a PDF needs besides its pages: boxes, language, dates, version and a fixed identity.

use flate2::{Compress, Compression, FlushCompress, Status};
use lopdf::{Dictionary, Document, Object, Stream, StringFormat, dictionary, text_string};
use rayon::iter::{IndexedParallelIterator, IntoParallelIterator, ParallelIterator};

use super::fault::RenderFault;
use super::pdf_content::POINTS_PER_MM;
use crate::layout::item::{Sheet, Typeface};
use crate::layout::typeface::{font_file, pressed_font_file};

/// Date written when the job has none, so that the same job gives the same bytes.
const NO_DATE: &str = "1970-01-01";

/// Gives a document whose pages are drawn its boxes, and leaves out what nothing refers to.
pub(super) fn strip(doc: &mut Document, sheet: &Sheet) -> Result<(), RenderFault> {
    set_boxes(doc, sheet.paper.size_mm())?;
    doc.trailer.remove(b"Info");
    doc.prune_objects();
    Ok(())
}

/// Mends and saves a document whose pages are drawn and tagged.
pub(super) fn finish(mut doc: Document, sheet: &Sheet) -> Result<Vec<u8>, RenderFault> {
    "1.7".clone_into(&mut doc.version);
    set_information(&mut doc, sheet)?;
    set_catalogue(&mut doc, sheet)?;
    deflate(&mut doc);
    let blank = Object::String(vec![0; ID_BYTES], StringFormat::Hexadecimal);
    doc.trailer.set("ID", vec![blank.clone(), blank]);
    let mut bytes = saved(&mut doc)?;
    identify(&mut bytes)?;
    Ok(bytes)
}

/// Length of the file's identity.
const ID_BYTES: usize = 16;

/// Writes the file's identity, made from all its other bytes, over the blanks in its trailer.
fn identify(bytes: &mut [u8]) -> Result<(), RenderFault> {
    let id = format!("{:032X}", identity(bytes));
    let blank = vec![b'0'; id.len()];
    let trailer = bytes.windows(7).rposition(|w| w == b"trailer");
    let from = trailer.unwrap_or(bytes.len());
    for _ in 0..2 {
        let found = bytes[from..].windows(blank.len()).position(|w| w == blank);
        let at = found.ok_or_else(|| RenderFault::Writer("no place for the identity".into()))?;
        bytes[from + at..][..id.len()].copy_from_slice(id.as_bytes());
    }
    Ok(())
}

/// How hard streams are pressed, of 9: the slower levels take twice the time for two parts in a hundred.
const LEVEL: Compression = Compression::new(4);

/// Presses every stream that is not pressed yet, on all cores.
fn deflate(doc: &mut Document) {
    let streams = doc.objects.values_mut().filter_map(|object| match object {
        Object::Stream(stream) if !stream.dict.has(b"Filter") => Some(stream),
        _ => None,
    });
    let streams: Vec<&mut Stream> = streams.collect();
    // One after the other on each core: what presses them is large.
    let each = streams.into_par_iter().with_max_len(1);
    each.for_each_init(presser, |by, stream| press(stream, by));
}

/// What presses streams, one after the other.
pub(super) fn presser() -> Compress {
    Compress::new(LEVEL, true)
}

/// Presses a stream, where that makes it shorter.
pub(super) fn press(stream: &mut Stream, by: &mut Compress) {
    let pressed = font(&stream.content).or_else(|| pressed(&stream.content, by));
    if let Some(pressed) = pressed {
        stream.dict.set("Filter", "FlateDecode");
        stream.set_content(pressed);
    }
}

/// The pressed bytes of the typeface, where the bytes are its own.
fn font(bytes: &[u8]) -> Option<Vec<u8>> {
    let known = [Typeface::Regular, Typeface::Bold].into_iter();
    let mut own = known.filter(|face| font_file(*face) == bytes);
    own.next().map(|face| pressed_font_file(face).to_vec())
}

/// Bytes in the zlib format; nothing where they would not become fewer.
fn pressed(bytes: &[u8], press: &mut Compress) -> Option<Vec<u8>> {
    let mut pressed = Vec::with_capacity(bytes.len());
    press.reset();
    let status = press.compress_vec(bytes, &mut pressed, FlushCompress::Finish);
    matches!(status, Ok(Status::StreamEnd)).then_some(pressed)
}

fn saved(doc: &mut Document) -> Result<Vec<u8>, RenderFault> {
    let mut bytes = Vec::new();
    doc.save_to(&mut bytes)
        .map_err(|e| RenderFault::Writer(e.to_string()))?;
    Ok(bytes)
}

fn set_information(doc: &mut Document, sheet: &Sheet) -> Result<(), RenderFault> {
    let date = Object::string_literal(pdf_date(&sheet.date)?);
    let information = dictionary! {
        "Title" => text_string(&sheet.title),
        "Creator" => text_string("kerfwright"),
        "Producer" => text_string("kerfwright"),
        "CreationDate" => date.clone(),
        "ModDate" => date,
    };
    let id = doc.add_object(information);
    doc.trailer.set("Info", id);
    Ok(())
}

fn set_catalogue(doc: &mut Document, sheet: &Sheet) -> Result<(), RenderFault> {
    let catalogue = doc
        .catalog_mut()
        .map_err(|e| RenderFault::Writer(e.to_string()))?;
    catalogue.set("Lang", text_string(sheet.language));
    catalogue.set("PageLayout", "SinglePage");
    let mode = if catalogue.has(b"Outlines") {
        "UseOutlines"
    } else {
        "UseNone"
    };
    catalogue.set("PageMode", Object::Name(mode.into()));
    let preferences = dictionary! { "DisplayDocTitle" => true };
    catalogue.set("ViewerPreferences", preferences);
    Ok(())
}

/// The page boxes, from points in `f64`, to a ten thousandth of a point.
fn set_boxes(doc: &mut Document, size_mm: (f64, f64)) -> Result<(), RenderFault> {
    let points = |mm: f64| (mm * POINTS_PER_MM * 1e4).round() / 1e4;
    let area: Vec<Object> = [0.0, 0.0, points(size_mm.0), points(size_mm.1)]
        .into_iter()
        .map(Object::from)
        .collect();
    for id in doc.get_pages().into_values() {
        let page: &mut Dictionary = doc
            .get_object_mut(id)
            .and_then(Object::as_dict_mut)
            .map_err(|e| RenderFault::Writer(e.to_string()))?;
        for name in ["MediaBox", "CropBox", "TrimBox"] {
            page.set(name, area.clone());
        }
        page.remove(b"Annots");
    }
    Ok(())
}

/// `YYYY-MM-DD` as a PDF date at midnight, universal time.
fn pdf_date(date: &str) -> Result<String, RenderFault> {
    let date = if date.is_empty() { NO_DATE } else { date };
    let parts: Vec<&str> = date.split('-').collect();
    let digits = |part: &str, n: usize| part.len() == n && part.bytes().all(|b| b.is_ascii_digit());
    match parts.as_slice() {
        [year, month, day] if digits(year, 4) && digits(month, 2) && digits(day, 2) => {
            Ok(format!("D:{year}{month}{day}000000Z"))
        }
        _ => Err(RenderFault::Date(date.to_owned())),
    }
}

/// A 128-bit FNV-1a hash (offset basis and prime of its definition).
fn identity(bytes: &[u8]) -> u128 {
    const BASIS: u128 = 0x6c62_272e_07bb_0142_62b8_2175_6295_c58d;
    const PRIME: u128 = 0x0000_0000_0100_0000_0000_0000_0000_013b;
    bytes
        .iter()
        .fold(BASIS, |hash, b| (hash ^ u128::from(*b)).wrapping_mul(PRIME))
}
