//! What the file itself says: version, language, fonts, bookmarks, the order of the pages.

use lopdf::{Dictionary, Document, Object};

use crate::{PRINTED, Printed, squeezed, words};

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
        assert_eq!(title, words(&printed.json["job"]["title"]));
        let date = text(information.get(b"CreationDate").unwrap());
        let expected = words(&printed.json["job"]["date"]).replace('-', "");
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

/// The names of the pages in order, a name that goes on over several pages once.
fn chapters(printed: &Printed) -> Vec<&str> {
    let mut names: Vec<&str> = printed.pages.iter().map(|p| p.0.as_str()).collect();
    names.dedup();
    names
}

/// Whether a way in is given, an aid is named, or a stone is no lift for hands.
fn is_moved_with_care(handling: &serde_json::Value) -> bool {
    let by_hand = |stone: &str| handling[stone]["lift"]["verdict"]["within"].is_object();
    !handling["route"].is_null()
        || words(&handling["aid"]) != "none"
        || !by_hand("slab")
        || !by_hand("top")
}

/// A page for each cut of the top, and one for all the cuts of an opening, in the order of the cuts.
fn cut_pages(printed: &Printed) -> Vec<String> {
    let mut pages = Vec::new();
    for cut in printed.list("cuts") {
        let kind = match (words(&cut["kind"]), cut["holes"].as_array().map(Vec::len)) {
            ("core", Some(1)) => "core hole",
            ("core", _) => "core holes",
            ("relief", _) => "straight",
            (kind, _) => kind,
        };
        let own = format!("Cut {}: {kind}", cut["number"]);
        let shared = cut["cutout"].as_u64().map(|n| format!("Cutout {n}"));
        let page = shared.unwrap_or(own);
        if pages.last() != Some(&page) {
            pages.push(page);
        }
    }
    pages
}

#[test]
fn the_pages_come_in_the_order_of_the_work() {
    for printed in PRINTED.iter() {
        let mut expected = vec!["At a glance".to_owned(), "Set-out".to_owned()];
        if !printed.list("cuts").is_empty() {
            expected.push("Practice".to_owned());
        }
        expected.extend(cut_pages(printed));
        expected
            .extend(["Pieces and weights", "Lift and carry", "Lie and stand"].map(str::to_owned));
        let handling = &printed.json["handling"];
        if is_moved_with_care(handling) {
            expected.push("Way in and standing on edge".to_owned());
        }
        if !handling["setting"].is_null() {
            expected.push("Set down".to_owned());
        }
        let last = [
            "Dust and safety",
            "Helper briefing",
            "Sources and assumptions",
        ];
        expected.extend(last.map(str::to_owned));
        assert_eq!(chapters(printed), expected, "{}", printed.name);
    }
}

#[test]
fn each_page_carries_its_name_its_job_and_its_number() {
    for printed in PRINTED.iter() {
        let count = printed.pages.len();
        let title = squeezed(words(&printed.json["job"]["title"]));
        for (i, (name, texts)) in printed.pages.iter().enumerate() {
            let top = texts.iter().map(|t| t.y).fold(0.0, f64::max);
            let mut head = texts.iter().filter(|t| t.y > top - 0.1);
            assert!(head.any(|t| t.words == *name), "{}: {name}", printed.name);
            let mut head = texts.iter().filter(|t| t.y > top - 0.1);
            assert!(head.any(|t| {
                let begun = squeezed(t.words.trim_end_matches('…'));
                !begun.is_empty() && title.starts_with(&begun)
            }));
            let foot = format!("Page {} of {count}", i + 1);
            assert!(texts.iter().any(|t| t.words.ends_with(&foot)), "{foot}");
        }
    }
}
