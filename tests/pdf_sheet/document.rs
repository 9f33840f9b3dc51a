//! What the file itself says: version, language, fonts, bookmarks, structure, size.

use kerfwright::document::{Annex, document};
use kerfwright::layout::pages;
use kerfwright::render::pdf;
use lopdf::{Dictionary, Document, Object};

use crate::PRINTED;

fn load(pdf: &[u8]) -> Document {
    Document::load_mem(pdf).expect("the PDF is whole")
}

fn dict<'a>(doc: &'a Document, object: &'a Object) -> &'a Dictionary {
    doc.dereference(object).unwrap().1.as_dict().unwrap()
}

fn text(object: &Object) -> String {
    lopdf::decode_text_string(object).unwrap()
}

/// The names of the bookmarks, one for each page; fails when they are not that.
pub(crate) fn bookmarks(pdf: &[u8]) -> Vec<String> {
    let doc = load(pdf);
    let outlines = dict(&doc, doc.catalog().unwrap().get(b"Outlines").unwrap());
    let mut names = Vec::new();
    let mut targets = Vec::new();
    let mut next = outlines.get(b"First").ok();
    while let Some(object) = next {
        let bookmark = dict(&doc, object);
        let target = bookmark.get(b"Dest").unwrap().as_array().unwrap();
        targets.push(target[0].as_reference().unwrap());
        names.push(text(bookmark.get(b"Title").unwrap()));
        next = bookmark.get(b"Next").ok();
    }
    let pages: Vec<_> = doc.get_pages().into_values().collect();
    assert_eq!(targets, pages, "a bookmark for each page, in order");
    names
}

#[test]
fn the_file_says_what_it_is() {
    for printed in PRINTED.iter() {
        let doc = load(&printed.pdf);
        assert_eq!(doc.version, "1.7");
        let catalogue = doc.catalog().unwrap();
        assert_eq!(text(catalogue.get(b"Lang").unwrap()), "en");
        let information = dict(&doc, doc.trailer.get(b"Info").unwrap());
        let title = text(information.get(b"Title").unwrap());
        assert_eq!(title, printed.plan.job.title);
        let date = text(information.get(b"CreationDate").unwrap());
        let expected = printed.plan.job.date.replace('-', "");
        assert!(date.starts_with(&format!("D:{expected}")), "{date}");
    }
}

#[test]
fn every_font_is_in_the_file() {
    for printed in PRINTED.iter() {
        let doc = load(&printed.pdf);
        for id in doc.get_pages().into_values() {
            for font in doc.get_page_fonts(id).unwrap().values() {
                let below = font.get(b"DescendantFonts").unwrap();
                let below = doc.dereference(below).unwrap().1.as_array().unwrap();
                let descriptor = dict(&doc, &below[0]).get(b"FontDescriptor").unwrap();
                let file = dict(&doc, descriptor).get(b"FontFile2").unwrap();
                let file = doc.dereference(file).unwrap().1.as_stream().unwrap();
                let program = file.decompressed_content().unwrap();
                assert!(ttf_parser::Face::parse(&program, 0).is_ok());
            }
        }
    }
}

/// Names of the structure elements below one, with its own.
fn structure(doc: &Document, element: &Dictionary, names: &mut Vec<String>) {
    let name = element.get(b"S").and_then(Object::as_name).unwrap_or(b"");
    names.push(String::from_utf8_lossy(name).into_owned());
    let kids = element.get(b"K").and_then(Object::as_array);
    for kid in kids.into_iter().flatten() {
        if kid.as_reference().is_ok() {
            structure(doc, dict(doc, kid), names);
        }
    }
}

/// ISO 32000-1, 14.8: a tagged file says so, and its tree names headings, lists, tables and figures;
/// every figure has its alternative text.
#[test]
fn the_file_is_tagged() {
    for printed in PRINTED.iter() {
        let doc = load(&printed.pdf);
        let catalogue = doc.catalog().unwrap();
        let marked = dict(&doc, catalogue.get(b"MarkInfo").unwrap());
        assert!(marked.get(b"Marked").unwrap().as_bool().unwrap());
        let root = dict(&doc, catalogue.get(b"StructTreeRoot").unwrap());
        let whole = dict(&doc, &root.get(b"K").unwrap().as_array().unwrap()[0]);
        let mut names = Vec::new();
        structure(&doc, whole, &mut names);
        for wanted in [
            "H1", "H2", "P", "L", "LI", "Table", "TR", "TH", "TD", "Figure",
        ] {
            assert!(
                names.iter().any(|n| n == wanted),
                "{}: {wanted}",
                printed.name
            );
        }
        let sections = names.iter().filter(|n| *n == "Sect").count();
        assert_eq!(sections, printed.pages.len());
        let figures = doc.objects.values().filter_map(|o| o.as_dict().ok());
        let figures = figures.filter(|d| {
            d.get(b"S")
                .and_then(Object::as_name)
                .is_ok_and(|s| s == b"Figure")
        });
        for figure in figures {
            assert!(
                !text(figure.get(b"Alt").unwrap()).is_empty(),
                "{}",
                printed.name
            );
        }
    }
}

#[test]
fn the_bench_pages_are_a_small_file() {
    for printed in PRINTED.iter() {
        let bench = pages(
            &document(&printed.plan, Annex::Without),
            printed.sheet.paper,
        );
        let size = pdf(&bench).expect("it is written").len();
        // A job whose every name is as long as can be takes a little more.
        let most = if printed.name.starts_with("long-words") {
            265_000
        } else {
            250_000
        };
        assert!(size <= most, "{}: {size}", printed.name);
    }
}
