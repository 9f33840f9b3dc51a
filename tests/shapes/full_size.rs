//! Templates at 1:1, measured on the paper as a PDF reader sees them.

use kerfwright::geom::{Point, Seg};
use kerfwright::layout::item::Paper;
use kerfwright::layout::tiles::{self, Format, Printed, WantedSheets};
use kerfwright::plan::Plan;
use kerfwright::template::{NamedPart, Template, parts, template};
use kerfwright::words::{Language, System, Writer};
use kerfwright::{job, render};
use lopdf::content::Content;

/// The most that a place may be off, mm; and what is held here.
const ALLOWED_MM: f64 = 0.1;
const HELD_MM: f64 = 0.01;
/// Millimetres in a point.
const POINT_MM: f64 = 25.4 / 72.0;

const LONG: &str = r#"
[job]
title = "A bar of three metres"
[stone]
kind = "granite"
thickness = 30
[slab]
rectangle = [3200, 900]
[top]
rectangle = [3000, 700]
round = { 2 = 350, 3 = 350 }
clip = { 1 = 60 }
[[top.cutout]]
what = "bowl"
circle = 420
at = [900, 350]
[[disc]]
name = "125"
diameter = 125
kerf = 2.2
max_rpm = 12200
"#;

fn plan() -> Plan {
    let (job, _) = job::read(LONG).expect("no faults");
    Plan::of(&job).expect("it fits")
}

fn print(templates: &[Template], format: Format, measured: Option<[f64; 2]>) -> Printed {
    let wanted = WantedSheets {
        job: "A bar of three metres",
        date: "",
        plan: "ABCD",
        writer: Writer::new(System::Metric, Language::English),
        format,
        measured,
    };
    tiles::print(templates, &wanted).expect("short enough")
}

/// A straight stretch of a drawn line, mm on the paper.
type Stretch = (Point, Point);

/// Chords of a curve of the PDF: they lie within 0.002 mm of an eighth of a circle of 500 mm.
const CHORDS: u32 = 128;

/// Every line drawn on each page.
fn drawn(pdf: &[u8]) -> Vec<Vec<Stretch>> {
    let doc = lopdf::Document::load_mem(pdf).expect("the PDF is whole");
    let pages = doc.get_pages();
    let each = pages.values().map(|id| {
        let content = Content::decode(&doc.get_page_content(*id)).expect("content");
        lines(&content)
    });
    each.collect()
}

fn lines(content: &Content) -> Vec<Stretch> {
    let (mut scale, mut at, mut first) = ([1.0, 1.0], Point::ORIGIN, Point::ORIGIN);
    let mut found = Vec::new();
    for operation in &content.operations {
        let numbers: Vec<f64> = operation
            .operands
            .iter()
            .filter_map(|o| o.as_float().ok().map(f64::from))
            .collect();
        let point = |i: usize| {
            let x = numbers[2 * i] * scale[0] * POINT_MM;
            Point::new(x, numbers[2 * i + 1] * scale[1] * POINT_MM)
        };
        match operation.operator.as_str() {
            "cm" => scale = [numbers[0], numbers[3]],
            "m" => (at, first) = (point(0), point(0)),
            "l" => {
                found.push((at, point(0)));
                at = point(0);
            }
            "c" => {
                let knots = [at, point(0), point(1), point(2)].map(|p| kurbo::Point::new(p.x, p.y));
                let curve = kurbo::CubicBez::new(knots[0], knots[1], knots[2], knots[3]);
                for i in 1..=CHORDS {
                    use kurbo::ParamCurve;
                    let to = curve.eval(f64::from(i) / f64::from(CHORDS));
                    let to = Point::new(to.x, to.y);
                    found.push((at, to));
                    at = to;
                }
            }
            "h" | "s" | "b" => {
                found.push((at, first));
                at = first;
            }
            _ => {}
        }
    }
    found
}

/// How far a place is from the nearest drawn line, mm.
fn off(at: Point, lines: &[Stretch]) -> f64 {
    let each = lines
        .iter()
        .filter(|(a, b)| a.distance(*b) > 0.0)
        .map(|(a, b)| Seg::Line(*a, *b).distance(at));
    each.fold(f64::INFINITY, f64::min)
}

fn along(template: &Template) -> Vec<Point> {
    let segs = template.lines.iter().flat_map(|l| &l.segs);
    segs.flat_map(|s| (0..=10).map(|i| s.at(f64::from(i) / 10.0)))
        .collect()
}

/// The greatest error of any place of a template, and how many places were looked for.
fn worst(template: &Template, printed: &Printed, scale: [f64; 2]) -> (f64, usize) {
    let pages = drawn(&render::pdf(&printed.sheet).expect("it is printed"));
    let tiled = &printed.templates[0];
    let (mut worst, mut count) = (0.0_f64, 0);
    for place in along(template) {
        let mut shown = 0;
        for tile in &tiled.tiles {
            let at = tiled.pose.apply(place) + tile.shift;
            let inside = tile.frame.gap(&kerfwright::geom::Bounds::around([at])) <= 0.0;
            if inside {
                let paper = Point::new(at.x * scale[0], at.y * scale[1]);
                worst = worst.max(off(paper, &pages[tile.page]));
                shown += 1;
            }
        }
        assert!(shown > 0, "{place:?} is on no tile");
        count += shown;
    }
    (worst, count)
}

#[test]
fn three_metres_on_one_page_are_true_to_a_hundredth_of_a_millimetre() {
    let plan = plan();
    let top = template(&plan, &NamedPart::Top).expect("there is a top");
    let printed = print(std::slice::from_ref(&top), Format::Roll, None);
    assert!(printed.sheet.paper.size_mm().0 > 3000.0);
    let (worst, count) = worst(&top, &printed, [1.0; 2]);
    assert!(worst < HELD_MM && HELD_MM < ALLOWED_MM, "{worst} mm");
    assert!(count > 1000, "{count}");
}

#[test]
fn every_part_on_tiles_is_whole_and_true() {
    let plan = plan();
    let all = parts(&plan);
    assert!(all.len() >= 4, "{all:?}");
    for part in &all {
        let one = template(&plan, part).expect("it is there");
        // The whole top takes some dozens of tiles: one paper will do.
        let papers = if *part == NamedPart::Top { 1 } else { 2 };
        for paper in [Paper::A4, Paper::Letter].into_iter().take(papers) {
            let printed = print(std::slice::from_ref(&one), Format::Tiles(paper), None);
            let (worst, _) = worst(&one, &printed, [1.0; 2]);
            assert!(worst < HELD_MM, "{part}: {worst} mm");
            let tiles = &printed.templates[0].tiles;
            assert_eq!(printed.sheet.pages.len(), tiles.len() + 1);
            for tile in tiles {
                let carried = along(&one).into_iter().any(|p| {
                    let at = printed.templates[0].pose.apply(p) + tile.shift;
                    tile.frame.gap(&kerfwright::geom::Bounds::around([at])) <= 0.0
                });
                assert!(carried, "{part}: {} carries nothing", tile.name);
            }
        }
    }
}

#[test]
fn a_measured_print_is_scaled_and_its_bars_with_it() {
    let plan = plan();
    let clip = template(&plan, &NamedPart::Clip("1".into())).expect("corner 1 is clipped");
    let format = Format::Tiles(Paper::A4);
    let printed = print(std::slice::from_ref(&clip), format, Some([99.4, 99.6]));
    let scale = [100.0 / 99.4, 100.0 / 99.6];
    let (worst, _) = worst(&clip, &printed, scale);
    assert!(worst < HELD_MM, "{worst} mm");
    let pages = drawn(&render::pdf(&printed.sheet).expect("it is printed"));
    for (axis, length) in scale.map(|s| s * 100.0).into_iter().enumerate() {
        let bar = pages[1].iter().any(|(a, b)| {
            let d = *b - *a;
            let (on, square) = if axis == 0 { (d.x, d.y) } else { (d.y, d.x) };
            (on.abs() - length).abs() < HELD_MM && square.abs() < HELD_MM
        });
        assert!(bar, "no bar of {length} mm");
    }
}

#[test]
fn what_is_longer_than_a_roll_says_how_long() {
    let text = LONG.replace("3200", "6200").replace("3000", "6000");
    let (job, _) = job::read(&text).expect("no faults");
    let plan = Plan::of(&job).expect("it fits");
    let top = template(&plan, &NamedPart::Top).expect("there is a top");
    let wanted = WantedSheets {
        job: "",
        date: "",
        plan: "",
        writer: Writer::new(System::Metric, Language::English),
        format: Format::Roll,
        measured: None,
    };
    let length = tiles::print(&[top], &wanted).expect_err("too long");
    assert!(length > 6000.0);
}
