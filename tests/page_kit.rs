//! The page kit: what is measured is what is placed, nothing overlaps.

use std::f64::consts::{FRAC_PI_2, PI, SQRT_2};

use kerfwright::geom::seg::{circle, ring};
use kerfwright::geom::{Arc, Bounds, Point, Seg};
use kerfwright::layout::dimension::{Dimension, DimensionRun};
use kerfwright::layout::hatch::hatch;
use kerfwright::layout::item::{Ink, Item, Page, Paper, Path, PenStroke, Sheet, Text, Typeface};
use kerfwright::layout::labels::{Labels, Prefer};
use kerfwright::layout::pen::NARROW_MM;
use kerfwright::layout::typeface::{POINT_MM, font_file, missing, pressed_font_file, width_mm};
use kerfwright::layout::wrap::{Style, wrap};

const FACES: [Typeface; 2] = [Typeface::Regular, Typeface::Bold];
const LINE: PenStroke = PenStroke::solid(NARROW_MM, Ink::Black);

fn area(x: f64, y: f64, width: f64, height: f64) -> Bounds {
    Bounds {
        min: Point::new(x, y),
        max: Point::new(x + width, y + height),
    }
}

fn texts(items: &[Item]) -> Vec<&Text> {
    let mut found = vec![];
    for item in items {
        if let Item::Text(text) = item {
            found.push(text);
        }
    }
    found
}

fn paths(items: &[Item]) -> Vec<&Path> {
    let mut found = vec![];
    for item in items {
        if let Item::Path(path) = item {
            found.push(path);
        }
    }
    found
}

/// The box of an item with its line's width.
fn reach(item: &Item) -> Bounds {
    match item {
        Item::Begin(_) | Item::End | Item::Part(..) => area(0.0, 0.0, 0.0, 0.0),
        Item::Text(text) => text.bounds(),
        Item::Path(path) => {
            let half = path.stroke.map_or(0.0, |s| s.width_mm / 2.0);
            let segs = path.runs.iter().flatten().map(Seg::bounds);
            let b = segs.reduce(Bounds::joined).expect("a path has pieces");
            // An open line ends square at its last point: it widens across, not along.
            let along = |length: f64| {
                if path.closed || length == 0.0 {
                    half
                } else {
                    0.0
                }
            };
            let (x, y) = (along(b.width()), along(b.height()));
            area(
                b.min.x - x,
                b.min.y - y,
                b.width() + 2.0 * x,
                b.height() + 2.0 * y,
            )
        }
    }
}

fn holds(outer: Bounds, inner: Bounds) -> bool {
    let slack = 1e-6;
    inner.min.x >= outer.min.x - slack
        && inner.min.y >= outer.min.y - slack
        && inner.max.x <= outer.max.x + slack
        && inner.max.y <= outer.max.y + slack
}

fn overlap(a: Bounds, b: Bounds) -> bool {
    a.min.x < b.max.x && b.min.x < a.max.x && a.min.y < b.max.y && b.min.y < a.max.y
}

#[test]
fn digits_are_equally_wide_in_both_weights() {
    for face in FACES {
        let zero = width_mm("0", face, 12.0);
        assert!(zero > 0.0);
        for digit in '1'..='9' {
            assert_eq!(width_mm(&digit.to_string(), face, 12.0), zero, "{digit}");
        }
    }
}

#[test]
fn widths_are_the_rounded_down_advances() {
    for face in FACES {
        let font = ttf_parser::Face::parse(font_file(face), 0).unwrap();
        let em = u32::from(font.units_per_em());
        let line = "Rip 3200 × 1600 mm, ½ Ș";
        let thousandths: u32 = line
            .chars()
            .map(|c| font.glyph_index(c).unwrap())
            .map(|g| u32::from(font.glyph_hor_advance(g).unwrap()) * 1000 / em)
            .sum();
        let expected = f64::from(thousandths) / 1000.0 * 10.0 * POINT_MM;
        assert!((width_mm(line, face, 10.0) - expected).abs() < 1e-9);
    }
}

#[test]
fn the_pressed_font_files_are_the_font_files() {
    for face in FACES {
        let mut bytes = Vec::new();
        let mut read = flate2::read::ZlibDecoder::new(pressed_font_file(face));
        std::io::Read::read_to_end(&mut read, &mut bytes).unwrap();
        assert!(bytes == font_file(face), "{face:?}");
    }
}

#[test]
fn the_typeface_prints_the_languages_of_europe_and_the_trade_s_signs() {
    let latin: String = ('\u{20}'..='\u{7e}').chain('\u{a0}'..='\u{24f}').collect();
    assert_eq!(missing(&latin), Vec::<char>::new());
    assert_eq!(
        missing("°²³±≤≥µ×–—…•Ø½¼¾−′″√ΣφΔπσ≈€„“”‘’"),
        Vec::<char>::new()
    );
    assert_eq!(
        missing("șțȘȚ łŁ őű ğışİ đžčć þðÞ ħġ ŵŷ ąęįų ķļņ ß ẞ"),
        Vec::<char>::new()
    );
}

#[test]
fn what_the_typeface_lacks_is_named_once() {
    assert_eq!(missing("a → b → c\t☐"), vec!['→', '\t', '☐']);
    let page = |content: &str| Page {
        name: "p".into(),
        language: "en",
        items: vec![Text::new(content, Point::ORIGIN, Typeface::Bold, 9.0).into()],
    };
    let sheet = Sheet {
        title: "t".into(),
        language: "en",
        date: String::new(),
        paper: Paper::A4,
        scale: [1.0; 2],
        pages: vec![page("good"), page("漢 mm")],
    };
    let found = sheet.missing_characters();
    assert_eq!(found.len(), 1);
    assert_eq!((found[0].page, found[0].character), (1, '漢'));
    assert_eq!(found[0].text, "漢 mm");
}

#[test]
fn wrapped_lines_keep_within_the_width_and_lose_nothing() {
    let style = Style::new(Typeface::Regular, 9.5, 4.5);
    let text = "Wet the stone along the whole cut; Donaudampfschifffahrtsgesellschaftskapitän \
                holds 12\u{a0}mm of water.";
    for width in [12.0, 25.0, 60.0, 400.0] {
        let lines = wrap(text, &style, width);
        for line in &lines {
            assert!(style.width_mm(line) <= width, "{line:?} in {width}");
        }
        let squeeze = |s: &str| s.replace(' ', "");
        assert_eq!(squeeze(&lines.concat()), squeeze(text));
    }
    let broken = wrap("a 12\u{a0}mm", &style, style.width_mm("12\u{a0}mm"));
    assert_eq!(broken, ["a", "12\u{a0}mm"]);
    assert_eq!(wrap("one\ntwo", &style, 100.0), ["one", "two"]);
}

#[test]
fn hatching_lies_inside_the_shape_and_covers_it() {
    // A D of radius 20 with a hole of radius 5, somewhere off the origin.
    let at = |x: f64, y: f64| Point::new(31.7 + x, 88.2 + y);
    let end = Seg::Arc(Arc {
        centre: at(40.0, 20.0),
        radius: 20.0,
        start: -FRAC_PI_2,
        sweep: PI,
    });
    let outer = vec![
        Seg::Line(at(0.0, 0.0), at(40.0, 0.0)),
        end,
        Seg::Line(at(40.0, 40.0), at(0.0, 40.0)),
        Seg::Line(at(0.0, 40.0), at(0.0, 0.0)),
    ];
    let hole = at(30.0, 20.0);
    let spacing = 0.7;
    let path = hatch(&[outer, circle(hole, 5.0)], spacing, LINE);
    let mut length = 0.0;
    for seg in path.runs.iter().flatten() {
        length += seg.length();
        for i in 1..100 {
            let p = seg.at(f64::from(i) / 100.0);
            let (x, y) = (p.x - 31.7, p.y - 88.2);
            let square = (-1e-6..=40.0 + 1e-6).contains(&x) && (-1e-6..=40.0 + 1e-6).contains(&y);
            let round = (x - 40.0).hypot(y - 20.0) <= 20.0 + 1e-6;
            assert!(square || round, "{p:?}");
            assert!(p.distance(hole) >= 5.0 - 1e-6, "{p:?} in the hole");
        }
        let way = seg.end() - seg.start();
        assert!((way.x - way.y).abs() < 1e-6, "not at 45°");
    }
    let shape = 1600.0 + PI * 200.0 - PI * 25.0;
    assert!((length * spacing - shape).abs() < 0.01 * shape);
}

#[test]
fn hatching_survives_lines_through_corners_and_along_edges() {
    // A square on its corner: grid lines run along two of its edges and through two corners.
    let tip = |x: f64, y: f64| Point::new(x, y);
    let square = ring(&[tip(0.0, -4.0), tip(4.0, 0.0), tip(0.0, 4.0), tip(-4.0, 0.0)]);
    let path = hatch(&[square], SQRT_2 / 2.0, LINE);
    let side = 4.0 * SQRT_2;
    // Eight steps across the square: seven lines inside, the two on its edges not drawn.
    assert_eq!(path.runs.len(), 7);
    for seg in path.runs.iter().flatten() {
        assert!((seg.length() - side).abs() < 1e-6);
    }
    assert!(hatch(&[], 1.0, LINE).runs.is_empty());
    let far = tip(f64::INFINITY, 0.0);
    assert!(hatch(&[circle(far, 3.0)], 1.0, LINE).runs.is_empty());
    assert!(
        hatch(&[circle(tip(0.0, 0.0), 3.0)], 0.0, LINE)
            .runs
            .is_empty()
    );
}

#[test]
fn a_dimension_points_at_its_ends_and_keeps_its_figure_off_every_line() {
    let figures = ["3200 mm", "127.5 mm"];
    for (run, figure, span) in [
        (DimensionRun::Level, figures[0], 120.0),
        (DimensionRun::Level, figures[1], 6.0),
        (DimensionRun::Upright, figures[0], -80.0),
        (DimensionRun::Upright, figures[1], 10.0),
    ] {
        let from = Point::new(50.0, 60.0);
        let (to, line_at) = match run {
            DimensionRun::Level => (Point::new(50.0 + span, 75.0), 40.0),
            DimensionRun::Upright => (Point::new(66.0, 60.0 + span), 30.0),
        };
        let drawn = Dimension {
            from,
            to,
            run,
            line_at,
            figure: figure.into(),
            size_pt: 12.0,
            before: false,
            centred: false,
        }
        .draw();
        assert_eq!(texts(&drawn.letters)[0].bounds(), drawn.figure);
        let tips: Vec<Point> = paths(&drawn.lines)
            .iter()
            .filter(|p| p.fill == Some(Ink::Black))
            .map(|p| p.runs[0][0].start())
            .collect();
        for end in [from, to] {
            let foot = match run {
                DimensionRun::Level => Point::new(end.x, line_at),
                DimensionRun::Upright => Point::new(line_at, end.y),
            };
            assert!(tips.iter().any(|t| t.distance(foot) < 1e-9), "{tips:?}");
        }
        for path in paths(&drawn.lines) {
            let line = reach(&Item::Path(path.clone()));
            assert!(!overlap(line, drawn.figure), "{path:?}");
        }
    }
}

#[test]
fn labels_never_overlap_each_other_or_what_is_taken() {
    let own = area(20.0, 30.0, 120.0, 90.0);
    let taken = area(60.0, 60.0, 25.0, 20.0);
    let mut labels = Labels::new(own);
    labels.occupy(taken);
    let edge = Seg::Line(Point::new(20.0, 50.0), Point::new(140.0, 55.0));
    labels.occupy_seg(edge);
    let style = Style::new(Typeface::Bold, 10.0, 4.5);
    let mut boxes: Vec<Bounds> = Vec::new();
    let mut leaders: Vec<Seg> = Vec::new();
    // Anchors crowded by a fixed scatter: 17 and 29 have no factor in common with the ranges.
    let anchors: Vec<Point> = (0..40u32)
        .map(|i| (f64::from(i * 17 % 60), f64::from(i * 29 % 50)))
        .map(|(x, y)| Point::new(45.0 + x, 45.0 + y))
        .collect();
    for anchor in &anchors {
        labels.occupy_point(*anchor);
    }
    for (i, &anchor) in anchors.iter().enumerate() {
        let name = format!("station {i}");
        if let Some(label) = labels.place(anchor, &name, &style, Prefer::Beside) {
            assert_eq!(texts(&label.letters)[0].bounds(), label.area);
            let lines = paths(&label.leader)
                .into_iter()
                .filter(|p| p.stroke.is_some());
            leaders.extend(lines.flat_map(|p| p.runs[0].clone()));
            boxes.push(label.area);
        }
    }
    assert!(boxes.len() > 25, "only {} placed", boxes.len());
    assert!(!leaders.is_empty());
    for (i, a) in boxes.iter().enumerate() {
        assert!(holds(own, *a));
        assert!(
            anchors
                .iter()
                .all(|p| !overlap(area(p.x, p.y, 1e-9, 1e-9), *a))
        );
        assert!(!overlap(*a, taken));
        assert!(boxes[i + 1..].iter().all(|b| !overlap(*a, *b)));
        for line in leaders.iter().chain([&edge]) {
            let inside = |k: u32| {
                let p = line.at(f64::from(k) / 400.0);
                overlap(area(p.x, p.y, 1e-9, 1e-9), *a)
            };
            assert!(!(0..=400).any(inside), "{line:?} through {a:?}");
        }
    }
}

#[test]
fn a_label_without_room_is_reported() {
    let mut labels = Labels::new(area(0.0, 0.0, 30.0, 10.0));
    let style = Style::new(Typeface::Regular, 9.0, 4.0);
    labels.occupy(area(0.0, 0.0, 30.0, 10.0));
    let got = labels.place(Point::new(15.0, 5.0), "arris", &style, Prefer::Centred);
    assert!(got.is_none());
}
