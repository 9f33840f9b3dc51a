//! The PDF and SVG writers, read back: structure, text, curves, the same bytes every time, and
//! faults instead of broken files.

use std::f64::consts::{FRAC_PI_2, PI};
use std::process::Command;

use kerfwright::geom::seg::{circle, ring};
use kerfwright::geom::{Arc, Point, Seg};
use kerfwright::layout::item::{
    Anchor, Dash, Ink, Item, Page, Paper, Path, PenStroke, Sheet, Text, Typeface,
};
use kerfwright::render::{RenderFault, pdf, svg_page};
use lopdf::content::{Content, Operation};
use lopdf::{Dictionary, Document, Object};

const POINT_MM: f64 = 25.4 / 72.0;
/// Places are written in hundredths of a point: each is at most half of one off, along both axes.
const WRITTEN_MM: f64 = 0.005 * POINT_MM * std::f64::consts::SQRT_2;
const LINE: PenStroke = PenStroke::solid(0.3, Ink::Black);
const WORDS: [&str; 5] = [
    "Wet cut at 5 °C, 1.53 m² of 0.046 m³",
    "rail ≥ 90 mm, kerf ≤ 3.2 mm ± 0.1 mm",
    "µ × – — … • Ø ½ ¼ ¾ − ′ ″ √ Σ φ Δ π σ ≈",
    "Łódź, Iași, Țara, Ørsted, İzmir, Győr, Þór",
    "(brackets) \\ and <marks> & \"quotes\"",
];

fn half_circle() -> Seg {
    Seg::Arc(Arc {
        centre: Point::new(100.0, 100.0),
        radius: 80.0,
        start: -FRAC_PI_2,
        sweep: PI,
    })
}

fn every_item() -> Vec<Item> {
    let at = Point::new;
    let corners = [at(20.0, 20.0), at(60.0, 20.0), at(60.0, 40.0)];
    let mut items: Vec<Item> = vec![
        Path::closed(vec![ring(&corners)], Some(LINE), Some(Ink::Pale)).into(),
        Path::closed(
            vec![ring(&corners), circle(at(50.0, 25.0), 2.0)],
            None,
            Some(Ink::Accent),
        )
        .into(),
        Path::open(vec![vec![half_circle()]], LINE).into(),
    ];
    for dash in [Dash::Continuous, Dash::Dashed, Dash::DashDot, Dash::Dotted] {
        items.push(Path::line(at(20.0, 60.0), at(90.0, 60.0), LINE.dashed(dash)).into());
    }
    for (i, words) in (0..).zip(WORDS) {
        let at = at(20.0, 270.0 - 8.0 * f64::from(i));
        let face = if i % 2 == 0 {
            Typeface::Regular
        } else {
            Typeface::Bold
        };
        items.push(Text::new(words, at, face, 11.0).into());
    }
    let grey = Text::new("1600 mm", at(15.0, 150.0), Typeface::Bold, 12.0).inked(Ink::Grey);
    items.push(grey.clone().upwards().anchored(Anchor::Middle).into());
    items.push(Path::dot(at(150.0, 230.0), 8.0, Ink::Black).into());
    items.push(grey.inked(Ink::White).anchored(Anchor::End).into());
    items
}

fn sheet(paper: Paper) -> Sheet {
    let page = |name: &str, items| Page {
        language: "en",
        name: name.into(),
        items,
    };
    Sheet {
        title: "Worktop in Łódź — 30 mm".into(),
        language: "en",
        date: "2025-03-14".into(),
        paper,
        scale: [1.0; 2],
        pages: vec![
            page("Overview", every_item()),
            page("Cut 1", every_item()),
            page("A page without text", vec![]),
        ],
    }
}

fn written(sheet: &Sheet) -> Document {
    Document::load_mem(&pdf(sheet).unwrap()).unwrap()
}

fn dict<'a>(doc: &'a Document, object: &'a Object) -> &'a Dictionary {
    let object = match object {
        Object::Reference(id) => doc.get_object(*id).unwrap(),
        other => other,
    };
    object.as_dict().unwrap()
}

fn words_of(object: &Object) -> String {
    lopdf::decode_text_string(object).unwrap()
}

fn operations(doc: &Document, page: u32) -> Vec<Operation> {
    let id = doc.get_pages()[&page];
    let content = doc.get_page_content(id);
    Content::decode(&content).unwrap().operations
}

#[test]
fn the_document_says_what_it_is() {
    let doc = written(&sheet(Paper::A4));
    assert_eq!(doc.version, "1.7");
    assert_eq!(doc.get_pages().len(), 3);
    let catalogue = doc.catalog().unwrap();
    assert_eq!(words_of(catalogue.get(b"Lang").unwrap()), "en");
    let mode = catalogue.get(b"PageMode").unwrap();
    assert_eq!(mode.as_name().unwrap(), b"UseOutlines");
    assert!(!catalogue.has(b"OutputIntents"));
    let information = dict(&doc, doc.trailer.get(b"Info").unwrap());
    let title = information.get(b"Title").unwrap();
    assert_eq!(words_of(title), "Worktop in Łódź — 30 mm");
    let date = information.get(b"CreationDate").unwrap();
    assert_eq!(words_of(date), "D:20250314000000Z");
    assert!(!information.has(b"GTS_PDFXVersion"));
    let id = doc.trailer.get(b"ID").unwrap().as_array().unwrap();
    assert_eq!(id.len(), 2);
    assert_eq!(id[0].as_str().unwrap().len(), 16);
}

#[test]
fn the_boxes_are_the_paper_to_a_ten_thousandth_of_a_point() {
    for (paper, width, height) in [
        (Paper::A4, 210.0 / 25.4 * 72.0, 297.0 / 25.4 * 72.0),
        (Paper::Letter, 612.0, 792.0),
    ] {
        let doc = written(&sheet(paper));
        for id in doc.get_pages().into_values() {
            let page = doc.get_dictionary(id).unwrap();
            for name in [b"MediaBox".as_slice(), b"CropBox", b"TrimBox"] {
                let sides = page.get(name).unwrap().as_array().unwrap();
                let side = |i: usize| f64::from(sides[i].as_float().unwrap());
                assert_eq!((side(0), side(1)), (0.0, 0.0));
                assert!((side(2) - width).abs() < 1e-4 && (side(3) - height).abs() < 1e-4);
            }
        }
    }
    let letter = pdf(&sheet(Paper::Letter)).unwrap();
    let found = letter.windows(14).any(|w| w == &b"[0 0 612 792]/"[..14]);
    assert!(found, "Letter is 612 by 792 points exactly");
}

#[test]
fn both_fonts_are_embedded_under_fixed_names() {
    let doc = written(&sheet(Paper::A4));
    let id = doc.get_pages()[&1];
    let fonts = doc.get_page_fonts(id).unwrap();
    let names: Vec<&[u8]> = fonts.keys().map(Vec::as_slice).collect();
    assert_eq!(names, [b"Bold".as_slice(), b"Regular"]);
    for font in fonts.values() {
        assert!(font.has(b"ToUnicode"));
        let below = font.get(b"DescendantFonts").unwrap();
        let below = match below {
            Object::Reference(id) => doc.get_object(*id).unwrap(),
            other => other,
        };
        let below = dict(&doc, &below.as_array().unwrap()[0]);
        let descriptor = dict(&doc, below.get(b"FontDescriptor").unwrap());
        let file = descriptor
            .get(b"FontFile2")
            .unwrap()
            .as_reference()
            .unwrap();
        let stream = doc.get_object(file).unwrap().as_stream().unwrap();
        let program = stream.decompressed_content().unwrap();
        assert!(ttf_parser::Face::parse(&program, 0).is_ok());
    }
}

#[test]
fn there_is_a_bookmark_for_each_page_in_order() {
    let doc = written(&sheet(Paper::A4));
    let outlines = dict(&doc, doc.catalog().unwrap().get(b"Outlines").unwrap());
    let mut next = outlines.get(b"First").ok();
    let mut found = Vec::new();
    while let Some(object) = next {
        let bookmark = dict(&doc, object);
        let target = bookmark.get(b"Dest").unwrap().as_array().unwrap()[0]
            .as_reference()
            .unwrap();
        found.push((words_of(bookmark.get(b"Title").unwrap()), target));
        next = bookmark.get(b"Next").ok();
    }
    let pages: Vec<_> = doc.get_pages().into_values().collect();
    let names = ["Overview", "Cut 1", "A page without text"];
    let expected: Vec<_> = names.map(str::to_owned).into_iter().zip(pages).collect();
    assert_eq!(found, expected);
}

#[test]
fn the_text_comes_back_in_order() {
    let doc = written(&sheet(Paper::A4));
    let text = doc.extract_text(&[1]).unwrap();
    let mut from = 0;
    for words in WORDS.iter().chain(&["1600 mm"]) {
        let at = text[from..].find(words);
        from += at.unwrap_or_else(|| panic!("{words:?} not in {text:?}"));
    }
    assert!(!text.contains('\u{FFFD}'));
}

#[test]
fn arcs_are_curves_within_a_hundredth_of_a_millimetre() {
    let doc = written(&sheet(Paper::A4));
    let operations = operations(&doc, 1);
    let number = |o: &Object| f64::from(o.as_float().unwrap()) * POINT_MM;
    let start = operations
        .windows(2)
        .position(|w| {
            w[0].operator == "m" && w[1].operator == "c" && {
                number(&w[0].operands[1]) < 20.1 && number(&w[0].operands[0]) > 99.9
            }
        })
        .expect("the half circle begins at its lowest point");
    let mut at = (
        number(&operations[start].operands[0]),
        number(&operations[start].operands[1]),
    );
    let curves = operations[start + 1..]
        .iter()
        .take_while(|o| o.operator == "c");
    let mut count = 0;
    for curve in curves {
        let p: Vec<f64> = curve.operands.iter().map(number).collect();
        for i in 0..=50 {
            let t = f64::from(i) / 50.0;
            let u = 1.0 - t;
            let along = |a: f64, b: f64, c: f64, d: f64| {
                u * u * u * a + 3.0 * u * u * t * b + 3.0 * u * t * t * c + t * t * t * d
            };
            let x = along(at.0, p[0], p[2], p[4]);
            let y = along(at.1, p[1], p[3], p[5]);
            assert!(((x - 100.0).hypot(y - 100.0) - 80.0).abs() < 0.001 + WRITTEN_MM);
        }
        at = (p[4], p[5]);
        count += 1;
    }
    assert_eq!(count, 4);
    assert!((at.0 - 100.0).abs() < WRITTEN_MM && (at.1 - 180.0).abs() < WRITTEN_MM);
}

#[test]
fn fills_are_even_odd_and_line_types_are_written() {
    let doc = written(&sheet(Paper::A4));
    let operations = operations(&doc, 1);
    let count = |name: &str| operations.iter().filter(|o| o.operator == name).count();
    assert_eq!(count("f*"), 3);
    assert_eq!(count("f"), 0);
    let dashes: Vec<usize> = operations
        .iter()
        .filter(|o| o.operator == "d")
        .map(|o| o.operands[0].as_array().unwrap().len())
        .collect();
    // A line type that is set already is not set again.
    assert_eq!(dashes, [0, 2, 4, 2]);
}

/// Writes the sample where `SAMPLE_PDF` says, for the test that compares processes.
#[test]
fn the_sample_can_be_written_to_a_file() {
    let folder = tempfile::tempdir().unwrap();
    let own = folder.path().join("sample.pdf").into_os_string();
    let path = std::env::var_os("SAMPLE_PDF").unwrap_or(own);
    std::fs::write(&path, pdf(&sheet(Paper::A4)).unwrap()).unwrap();
    assert!(std::fs::read(&path).unwrap().starts_with(b"%PDF-1.7"));
}

#[test]
fn the_same_sheet_gives_the_same_bytes_here_and_in_another_process() {
    let first = pdf(&sheet(Paper::A4)).unwrap();
    let other = pdf(&sheet(Paper::Letter)).unwrap();
    assert!(
        first == pdf(&sheet(Paper::A4)).unwrap(),
        "second of a process"
    );
    assert!(first != other);
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("sample.pdf");
    let status = Command::new(std::env::current_exe().unwrap())
        .args(["--exact", "the_sample_can_be_written_to_a_file"])
        .env("SAMPLE_PDF", &path)
        .env("TZ", "Asia/Tokyo")
        .output()
        .unwrap()
        .status;
    assert!(status.success());
    assert!(first == std::fs::read(&path).unwrap(), "another process");
}

#[test]
fn a_change_of_one_letter_changes_the_identity() {
    let identity = |sheet: &Sheet| {
        let doc = written(sheet);
        let id = doc.trailer.get(b"ID").unwrap().as_array().unwrap();
        id[0].as_str().unwrap().to_vec()
    };
    let mut changed = sheet(Paper::A4);
    changed.title.push('.');
    assert_ne!(identity(&sheet(Paper::A4)), identity(&changed));
}

fn with(item: Item) -> Sheet {
    let mut sheet = sheet(Paper::A4);
    sheet.pages[1].items.push(item);
    sheet
}

#[test]
fn what_cannot_be_printed_is_a_fault() {
    let at = Point::new(20.0, 20.0);
    for (text, character) in [("turn → right", '→'), ("a\tb", '\t'), ("漢", '漢')] {
        let fault = pdf(&with(Text::new(text, at, Typeface::Regular, 9.0).into())).unwrap_err();
        let expected = RenderFault::MissingCharacter {
            page: "Cut 1".into(),
            character,
            text: text.into(),
        };
        assert_eq!(fault, expected);
        assert!(
            fault
                .to_string()
                .contains(&format!("U+{:04X}", u32::from(character)))
        );
    }
    let nowhere = Point::new(f64::NAN, 20.0);
    let far = Point::new(20.0, f64::INFINITY);
    let wide = PenStroke::solid(f64::NAN, Ink::Black);
    for item in [
        Path::line(at, nowhere, LINE).into(),
        Path::line(far, at, LINE).into(),
        Path::line(at, Point::ORIGIN, wide).into(),
        Path::dot(at, f64::INFINITY, Ink::Black).into(),
        Text::new("x", nowhere, Typeface::Regular, 9.0).into(),
        Text::new("x", at, Typeface::Regular, f64::NAN).into(),
    ] {
        let fault = pdf(&with(item)).unwrap_err();
        assert!(matches!(fault, RenderFault::NotFinite { .. }), "{fault}");
    }
}

#[test]
fn dates_are_checked_and_a_job_without_one_has_a_fixed_one() {
    let mut sheet = sheet(Paper::A4);
    sheet.date = "14 March".into();
    assert_eq!(pdf(&sheet), Err(RenderFault::Date("14 March".into())));
    sheet.date = String::new();
    let doc = written(&sheet);
    let information = dict(&doc, doc.trailer.get(b"Info").unwrap());
    let date = information.get(b"CreationDate").unwrap();
    assert_eq!(words_of(date), "D:19700101000000Z");
}

#[test]
fn a_page_as_svg_has_arcs_escapes_and_no_more_than_its_items() {
    let items = every_item();
    let texts = items.iter().filter(|i| matches!(i, Item::Text(_))).count();
    let paths = items.len() - texts;
    let page = Page {
        language: "en",
        name: "Cut <1> & 2".into(),
        items,
    };
    let svg = svg_page(&page, (210.0, 297.0));
    assert!(svg.starts_with("<svg xmlns=\"http://www.w3.org/2000/svg\""));
    assert!(svg.contains("width=\"210mm\" height=\"297mm\" viewBox=\"0 0 210 297\""));
    assert!(svg.contains("<title>Cut &lt;1&gt; &amp; 2</title>"));
    assert!(svg.contains("(brackets) \\ and &lt;marks&gt; &amp; &quot;quotes&quot;</text>"));
    // From (100, 20) up around the right side, y turned over; two arcs of a quarter.
    assert!(svg.contains("M100 277 A80 80 0 0 0 180 197 A80 80 0 0 0 100 117\""));
    assert!(svg.contains("transform=\"rotate(-90 15 147)\""));
    assert_eq!(svg.matches("<path ").count(), paths);
    assert_eq!(svg.matches("<text ").count(), texts);
    assert_eq!(svg.matches(" textLength=").count(), texts);
    assert_eq!(svg.matches("stroke-dasharray").count(), 3);
    assert!(svg.ends_with("</svg>\n"));
    assert!(!svg.contains("NaN"));
}
