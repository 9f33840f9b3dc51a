//! A page for each curve: its stations, set out about a pivot or from the chord.

use super::stations;
use super::straight::{Kerf, freed_steps, tool_words};
use crate::cut::{
    ChordEnd, CurveSetOut, Cut, CutKind, OrdinateSetOut, PivotPlace, SetOut, Station, Tie,
};
use crate::geom::{Bounds, Point, Vector};
use crate::sheet::book::{Book, Part};
use crate::sheet::drawing::{Drawing, FIGURE, NAME_OFF_MM};
use crate::sheet::figure::{Figures, angle, time};
use crate::sheet::flow::{Block, Grade, Mark, Scale};
use crate::sheet::item::{Dash, Ink, Item, Stroke as Line};
use crate::sheet::labels::Prefer;
use crate::sheet::pen::NARROW_MM;
use crate::sheet::scene;

/// Height of the drawing, mm.
const DRAWING_MM: f64 = 92.0;
/// Least height of it, mm.
const LEAST_DRAWING_MM: f64 = 52.0;
/// A chord shorter than this on paper is not drawn, mm.
const LONG_CHORD_MM: f64 = 80.0;
/// Stations closer than this on paper are not all named, mm.
const NAMED_APART_MM: f64 = 3.0;
/// More stations than this are a row that nobody reads whole in the drawing.
const MANY: usize = 24;
/// Numbers of such a row stand so far apart, mm.
const MANY_APART_MM: f64 = 12.0;

const RINGS: &str = "Rings: every station to one depth, then every station to the next";

/// Adds the page of a curve.
pub(super) fn add(book: &mut Book<'_>, cut: &Cut) {
    if let Some(curve) = cut.set_out.curve() {
        page(book, cut, curve);
    }
}

fn page(book: &mut Book<'_>, cut: &Cut, curve: &CurveSetOut) {
    let name = format!("Cut {}: curve", cut.number);
    let mut column = book.column(Scale::BENCH);
    let kind = if curve.inside.is_some() {
        "hollow curve"
    } else {
        "curve"
    };
    let heading = format!("Cut {}: {kind} {}", cut.number, place(cut));
    column.place(&Block::Heading(heading));
    if !book.plan.stops.is_empty() {
        let words = "A stop stands against this job: see page 1. Do not cut.".to_owned();
        column.place(&Block::Notice(Grade::Stop, words, Vec::new()));
    }
    let subject = subject(cut, curve);
    let needed = column.width * subject.height() / subject.width().max(1.0);
    let area = column.reserve(needed.clamp(LEAST_DRAWING_MM, DRAWING_MM));
    column.items.extend(draw(book, cut, curve, subject, area));
    let figures = book.figures;
    let mut rows = rows(book, cut, curve);
    let (how, title, table) = if let SetOut::Ordinates(set_out) = &cut.set_out {
        rows.extend(chord_rows(figures, cut, set_out));
        (
            by_chord(figures, cut, set_out),
            "Stations: along the chord, and square to it".to_owned(),
            stations::by_chord(figures, set_out),
        )
    } else {
        rows.extend(arm_rows(figures, curve));
        (
            by_arm(figures, cut, curve),
            stations_title(curve),
            stations::by_arm(figures, curve),
        )
    };
    let mut parts: Vec<Part> = vec![
        Block::Rows(rows).into(),
        Block::Subheading(RINGS.into()).into(),
    ];
    parts.extend(super::straight::pass_tables(cut));
    parts.push(Block::Subheading("How".into()).into());
    let steps = how.into_iter().chain(steps(book, cut, curve)).collect();
    parts.push(Block::List(Mark::From(1), steps).into());
    parts.push(Block::Subheading(title).into());
    parts.push(table.into());
    book.fill(&name, column, &parts);
}

fn stations_title(curve: &CurveSetOut) -> String {
    let line = match curve.inside {
        None => "the line to keep",
        Some(_) => "the line of the disc's outer face",
    };
    format!("Stations: marks on {line}")
}

/// Where the curve is, in words.
fn place(cut: &Cut) -> String {
    let what = if cut.edge.contains('-') {
        "along edge"
    } else {
        "at corner"
    };
    let whose = cut
        .cutout
        .map_or_else(|| "the top".to_owned(), |n| format!("cutout {n}"));
    format!("{what} {} of {whose}", cut.edge)
}

/// What the drawing shows.
fn subject(cut: &Cut, curve: &CurveSetOut) -> Bounds {
    let reach = curve.slot_half + 20.0;
    let touches = curve.stations.iter().map(|s| s.touch);
    let around = match &cut.set_out {
        // The centre may lie metres away.
        SetOut::Ordinates(set_out) => {
            Bounds::around(touches.chain([set_out.from.at, set_out.to.at]))
        }
        _ => Bounds::around(touches.chain([curve.pivot])),
    };
    crate::sheet::pen::grown(around, reach)
}

fn draw(
    book: &Book<'_>,
    cut: &Cut,
    curve: &CurveSetOut,
    subject: Bounds,
    area: Bounds,
) -> Vec<Item> {
    let plan = book.plan;
    let mut drawing = Drawing::window(subject, area);
    scene::stage(&mut drawing, plan, cut.number);
    scene::kerf(&mut drawing, cut);
    // Lines first, then numbers, then words: numbers have the better places.
    if let SetOut::Ordinates(set_out) = &cut.set_out {
        let guide = chord_lines(&mut drawing, set_out, subject);
        name_stations(&mut drawing, curve);
        chord_names(&mut drawing, cut, set_out, guide);
    } else {
        drawing.cross(curve.pivot);
        name_stations(&mut drawing, curve);
        draw_arm(&mut drawing, book.figures, cut, curve);
    }
    drawing.finish()
}

/// Numbers at the stations, on the kept side; where they stand too close there, at the ends of their
/// slots, which fan out; and where those are too close as well, at every second or fifth only.
fn name_stations(drawing: &mut Drawing, curve: &CurveSetOut) {
    let stations = &curve.stations;
    let tip = |s: &Station| s.touch + Vector::at_angle(s.angle).left() * curve.slot_half;
    let wanted = if stations.len() > MANY {
        MANY_APART_MM
    } else {
        NAMED_APART_MM
    };
    let side = if curve.inside.is_some() { 1.3 } else { -1.3 };
    let apart = nearest(stations.iter().map(|s| drawing.at(s.touch)));
    let named_apart = nearest(stations.iter().map(|s| {
        let inwards = Vector::at_angle(s.angle) * side;
        drawing.at(s.touch) + inwards * NAME_OFF_MM
    }));
    let tips_apart = nearest(stations.iter().map(|s| drawing.at(tip(s))));
    let at_tips = named_apart < NAMED_APART_MM && tips_apart >= wanted;
    let every = if at_tips { 1 } else { every(apart, wanted) };
    for (i, station) in stations.iter().enumerate() {
        drawing.dot(station.touch);
        if i % every != 0 && i + 1 != stations.len() {
            continue;
        }
        let out = Vector::at_angle(station.angle);
        let number = station.number.to_string();
        if at_tips && station.in_stone {
            drawing.name_towards(tip(station), out.left(), &number);
        } else {
            drawing.name_towards(station.touch, out * side, &number);
        }
    }
}

/// The least distance between neighbours, mm.
fn nearest(on_paper: impl Iterator<Item = Point>) -> f64 {
    let on_paper: Vec<Point> = on_paper.collect();
    let each = on_paper.windows(2).map(|w| w[0].distance(w[1]));
    each.fold(f64::INFINITY, f64::min)
}

/// Which of a row of stations can be named when neighbours are `apart` and names want `wanted`, mm.
fn every(apart: f64, wanted: f64) -> usize {
    let steps = [1, 2, 5, 10, 20, 50].into_iter();
    #[allow(clippy::cast_precision_loss)]
    let mut fits = steps.filter(|n| *n as f64 * apart >= wanted);
    fits.next().unwrap_or(100)
}

fn draw_arm(drawing: &mut Drawing, figures: Figures, cut: &Cut, curve: &CurveSetOut) {
    drawing.name(curve.pivot, &format!("pivot {}p", cut.number));
    let arm = Line::solid(NARROW_MM, Ink::Accent).dashed(Dash::DashDot);
    if let Some(station) = curve.stations.get(curve.stations.len() / 2) {
        drawing.line_apart(curve.pivot, station.touch, arm);
        let text = format!("sawn radius {}", figures.tape(curve.sawn_radius));
        let part = curve.pivot + (station.touch - curve.pivot) * 0.3;
        drawing.label(part, &text, &FIGURE, Prefer::Beside);
    }
}

/// The chord, and the guide's edge at the middle station; gives that edge where it lies in the picture.
fn chord_lines(
    drawing: &mut Drawing,
    set_out: &OrdinateSetOut,
    shown: Bounds,
) -> Option<[Point; 2]> {
    let (from, to) = (set_out.from.at, set_out.to.at);
    if drawing.at(from).distance(drawing.at(to)) < LONG_CHORD_MM {
        // The stations' numbers need its place.
        return None;
    }
    let chord = Line::solid(NARROW_MM, Ink::Accent).dashed(Dash::DashDot);
    drawing.line_apart(from, to, chord);
    drawing.cross(from);
    drawing.cross(to);
    let marks = set_out.marks.get(set_out.marks.len() / 2)?;
    let guide = marks.guide.map(|g| g.at);
    let inside = |p: &Point| shown.joined(Bounds::around([*p])) == shown;
    if !guide.iter().all(inside) {
        return None;
    }
    let edge = Line::solid(0.35, Ink::Accent).dashed(Dash::Dashed);
    drawing.line_apart(guide[0], guide[1], edge);
    drawing.dot(guide[0]);
    drawing.dot(guide[1]);
    Some(guide)
}

fn chord_names(
    drawing: &mut Drawing,
    cut: &Cut,
    set_out: &OrdinateSetOut,
    guide: Option<[Point; 2]>,
) {
    let (from, to) = (set_out.from.at, set_out.to.at);
    for (end, name) in [(from, 'e'), (to, 'f')] {
        drawing.name(end, &format!("{}{name}", cut.number));
    }
    let middle = set_out.marks.get(set_out.marks.len() / 2);
    if let (Some([a, b]), Some(marks)) = (guide, middle) {
        let text = format!("guide at {}", marks.number);
        drawing.label(a.midpoint(b), &text, &FIGURE, Prefer::Beside);
    }
    if drawing.at(from).distance(drawing.at(to)) >= LONG_CHORD_MM {
        let quarter: Point = from + (to - from) * 0.25;
        drawing.label(quarter, "chord", &FIGURE, Prefer::Beside);
    }
}

fn row(name: &str, value: String) -> (String, String) {
    (name.to_owned(), value)
}

fn rows(book: &Book<'_>, cut: &Cut, curve: &CurveSetOut) -> Vec<(String, String)> {
    let figures = book.figures;
    let plunges = curve.stations.iter().filter(|s| s.in_stone).count();
    vec![
        row("Disc", tool_words(book.plan, cut, figures, Kerf::Told)),
        row("Finished radius", figures.tape(curve.radius)),
        row("Left on the arc", figures.small(cut.allowance)),
        row(
            "Plunges",
            format!("{plunges} stations, {} apart", angle(curve.step)),
        ),
        curve.inside.map_or_else(
            || row("Ridges to grind off", figures.small(cut.cusp)),
            |inside| {
                let words = format!(
                    "{} beside the middle of a slot, {} at its ends underneath",
                    figures.small(inside.left_middle),
                    figures.small(inside.left_under)
                );
                row("Left to grind off", words)
            },
        ),
        row("Disc in stone", time(cut.minutes)),
    ]
}

fn arm_rows(figures: Figures, curve: &CurveSetOut) -> Vec<(String, String)> {
    let on = match curve.pivot_on {
        PivotPlace::Top => "the top: tape or suction, never drilled",
        PivotPlace::Cutout => {
            "the piece that falls out of a cutout, still in place: it may be drilled"
        }
        PivotPlace::Waste => "waste: make sure it is still there; it may be drilled",
        PivotPlace::Off => "a block fixed to the bench beside the slab, level with its face",
    };
    vec![
        row("Arm, pivot to jig mark", figures.tape(curve.arm)),
        row("Pivot stands on", on.into()),
    ]
}

fn chord_rows(figures: Figures, cut: &Cut, set_out: &OrdinateSetOut) -> Vec<(String, String)> {
    let ties = |end: &ChordEnd| {
        let ties: Vec<String> = end.ties.iter().map(|t| tie(figures, t)).collect();
        ties.join(", ")
    };
    let n = cut.number;
    vec![
        row(
            "Chord",
            format!(
                "{n}e to {n}f, {}; the arc rises {}",
                figures.tape(set_out.chord_length),
                figures.tape(set_out.rise)
            ),
        ),
        row(&format!("Mark {n}e from"), ties(&set_out.from)),
        row(&format!("Mark {n}f from"), ties(&set_out.to)),
        row(
            "Guide to line to keep",
            figures.small(set_out.guide_to_face),
        ),
    ]
}

fn tie(figures: Figures, tie: &Tie) -> String {
    format!("{} {}", tie.corner, figures.tape(tie.distance))
}

/// The line that is struck, and how the disc lies to a mark.
fn side_words(curve: &CurveSetOut) -> (&'static str, &'static str) {
    match curve.inside {
        None => (
            "the line to keep",
            "its near face on the mark, the kerf outside",
        ),
        Some(_) => (
            "the line of the disc's outer face",
            "its outer face on the mark, the kerf inside, towards the pivot",
        ),
    }
}

fn by_arm(figures: Figures, cut: &Cut, curve: &CurveSetOut) -> Vec<String> {
    let chord = curve.stations.get(1).map_or(0.0, |s| s.chord);
    let marked_at = curve.inside.map_or(curve.sawn_radius, |i| i.face_at);
    let (line, side) = side_words(curve);
    vec![
        format!(
            "Strike {line} with a radius of {} about {}p. Tape each station from station 1; neighbours must \
             then be {} apart.",
            figures.tape(marked_at),
            cut.number,
            figures.small(chord)
        ),
        format!(
            "At each station set the disc square to the arm, {side}. Lower it straight down and lift it \
             straight out."
        ),
    ]
}

fn by_chord(figures: Figures, cut: &Cut, set_out: &OrdinateSetOut) -> Vec<String> {
    let n = cut.number;
    let chord = set_out.curve.stations.get(1).map_or(0.0, |s| s.chord);
    let (line, side) = side_words(&set_out.curve);
    vec![
        format!(
            "No arm reaches this curve. Mark {n}e and {n}f by their ties and strike the chord through \
             them. Hook the tape at {n}e; measure along the chord, then square to it: plus to the side \
             of the arc, minus to the other."
        ),
        format!(
            "Mark every station on {line}; neighbours must then be {} apart. Spring a thin batten \
             through the marks: it shows a mark that is wrong.",
            figures.small(chord)
        ),
        format!(
            "At each station mark the two points of the guide's edge and clamp the guide on them: the disc \
             then lies along the arc, {side}. Lower it straight down and lift it straight out."
        ),
    ]
}

fn steps(book: &Book<'_>, cut: &Cut, curve: &CurveSetOut) -> Vec<String> {
    let figures = book.figures;
    let mut steps =
        vec!["Never steer the disc round the curve: side load bends and breaks it.".into()];
    let relief: Vec<String> = book
        .plan
        .cuts
        .iter()
        .filter(|c| c.kind == CutKind::Relief && c.edge == cut.edge)
        .map(|c| c.number.to_string())
        .collect();
    if !relief.is_empty() {
        steps.push(format!(
            "Relief: cut {} before the first ring, so that no piece heavier than {} drops from this \
             curve.",
            relief.join(", "),
            figures.mass(book.plan.kit.waste_piece)
        ));
    }
    steps.extend(freed_steps(book, cut, "ring"));
    if curve.inside.is_some() {
        return steps;
    }
    let t = curve.tangents;
    let words = if t.cuts == 1 {
        "For comparison: one straight cut".to_owned()
    } else {
        format!("For comparison: {} straight cuts", t.cuts)
    };
    let quarter = if curve_turns(curve) {
        format!(
            "; four to the quarter circle, {}",
            figures.small(t.four_to_quarter)
        )
    } else {
        String::new()
    };
    steps.push(format!(
        "{words} tangent to the arc would leave corners of {} to grind{quarter}.",
        figures.small(t.corner)
    ));
    steps
}

/// Whether the stations go round an eighth of a circle or more.
fn curve_turns(curve: &CurveSetOut) -> bool {
    let ends = [curve.stations.first(), curve.stations.last()];
    matches!(ends, [Some(a), Some(b)] if (b.angle - a.angle).abs() >= std::f64::consts::FRAC_PI_4)
}
