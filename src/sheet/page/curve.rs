//! A page for each curve: stations, arm, pivot.

use super::straight::{Kerf, freed_steps, tool_words};
use crate::cut::{CurveSetOut, Cut, PivotPlace, Reach};
use crate::geom::{Bounds, Vector};
use crate::sheet::book::{Book, Part};
use crate::sheet::drawing::{Drawing, FIGURE};
use crate::sheet::figure::{Figures, angle, time};
use crate::sheet::flow::{Block, Grade, Mark, Scale};
use crate::sheet::item::{Dash, Ink, Item, Stroke as Line};
use crate::sheet::labels::Prefer;
use crate::sheet::pen::NARROW_MM;
use crate::sheet::scene;
use crate::sheet::table::{Heading, Table, Width};

/// Height of the drawing, mm.
const DRAWING_MM: f64 = 92.0;

const RINGS: &str = "Rings: every station to one depth, then every station to the next";

/// Adds the page of a curve.
pub(super) fn page(book: &mut Book<'_>, cut: &Cut, set_out: &CurveSetOut) {
    let name = format!("Cut {}: curve", cut.number);
    let mut column = book.column(Scale::BENCH);
    let place = if cut.edge.contains('-') {
        "along edge"
    } else {
        "at corner"
    };
    let kind = if set_out.inside.is_some() {
        "hollow curve"
    } else {
        "curve"
    };
    let heading = format!("Cut {}: {kind} {place} {} of the top", cut.number, cut.edge);
    column.place(&Block::Heading(heading));
    if !book.plan.stops.is_empty() {
        let words = "A stop stands against this job: see page 1. Do not cut.".to_owned();
        column.place(&Block::Notice(Grade::Stop, words, Vec::new()));
    }
    let area = column.reserve(DRAWING_MM);
    column.items.extend(draw(book, cut, set_out, area));
    let mut parts: Vec<Part> = vec![
        Block::Rows(rows(book, cut, set_out)).into(),
        Block::Subheading(RINGS.into()).into(),
    ];
    parts.extend(super::straight::pass_tables(cut));
    parts.push(Block::Subheading("How".into()).into());
    parts.push(Block::List(Mark::From(1), steps(book, cut, set_out)).into());
    let stations = if set_out.inside.is_some() {
        "Stations: marks on the line of the disc's outer face"
    } else {
        "Stations: marks on the line to keep"
    };
    parts.push(Block::Subheading(stations.into()).into());
    parts.push(station_table(book.figures, set_out).into());
    book.fill(&name, column, &parts);
}

fn draw(book: &Book<'_>, cut: &Cut, set_out: &CurveSetOut, area: Bounds) -> Vec<Item> {
    let plan = book.plan;
    let reach = set_out.slot_half + 20.0;
    let touches = set_out.stations.iter().map(|s| s.touch);
    let around = Bounds::around(touches.chain([set_out.pivot]));
    let subject = crate::sheet::pen::grown(around, reach);
    let mut drawing = Drawing::window(subject, area);
    scene::stage(&mut drawing, plan, cut.number);
    scene::kerf(&mut drawing, cut);
    drawing.cross(set_out.pivot);
    for station in &set_out.stations {
        drawing.dot(station.touch);
        // On the kept side.
        let out = Vector::at_angle(station.angle);
        let side = if set_out.inside.is_some() { 1.3 } else { -1.3 };
        drawing.name_towards(station.touch, out * side, &station.number.to_string());
    }
    drawing.name(set_out.pivot, &format!("pivot {}p", cut.number));
    let arm = Line::solid(NARROW_MM, Ink::Accent).dashed(Dash::DashDot);
    if let Some(station) = set_out.stations.get(set_out.stations.len() / 2) {
        drawing.line_apart(set_out.pivot, station.touch, arm);
        let text = format!("sawn radius {}", book.figures.tape(set_out.sawn_radius));
        let part = set_out.pivot + (station.touch - set_out.pivot) * 0.3;
        drawing.label(part, &text, &FIGURE, Prefer::Beside);
    }
    drawing.finish()
}

fn rows(book: &Book<'_>, cut: &Cut, set_out: &CurveSetOut) -> Vec<(String, String)> {
    let (plan, figures) = (book.plan, book.figures);
    let row = |name: &str, value: String| (name.to_owned(), value);
    let on = match set_out.pivot_on {
        PivotPlace::Top => "the top: tape or suction, never drilled",
        PivotPlace::Waste => "waste: make sure it is still there",
        PivotPlace::Off => "something fixed beside the slab, level with its face",
    };
    let reach = match set_out.reach {
        Reach::Within => "",
        Reach::TooShortBy(_) => " (too short for the jig)",
        Reach::TooLongBy(_) => " (too long for the jig)",
    };
    let plunges = set_out.stations.iter().filter(|s| s.in_stone).count();
    vec![
        row("Disc", tool_words(plan, cut, figures, Kerf::Told)),
        row(
            "Arm, pivot to jig mark",
            format!("{}{reach}", figures.tape(set_out.arm)),
        ),
        row("Pivot stands on", on.into()),
        row("Finished radius", figures.tape(set_out.radius)),
        row("Left on the arc", figures.small(cut.allowance)),
        row(
            "Plunges",
            format!("{plunges} stations, {} apart", angle(set_out.step)),
        ),
        set_out.inside.map_or_else(
            || row("Ridges to grind off", figures.small(cut.cusp)),
            |inside| {
                let (middle, under) = (inside.left_middle, inside.left_under);
                let words = format!(
                    "{} beside the middle of a slot, {} at its ends underneath",
                    figures.small(middle),
                    figures.small(under)
                );
                row("Left to grind off", words)
            },
        ),
        row("Disc in stone", time(cut.minutes)),
    ]
}

fn steps(book: &Book<'_>, cut: &Cut, set_out: &CurveSetOut) -> Vec<String> {
    let figures = book.figures;
    let chord = set_out.stations.get(1).map_or(0.0, |s| s.chord);
    let marked_at = set_out
        .inside
        .map_or(set_out.sawn_radius, |inside| inside.face_at);
    let (line, side) = match set_out.inside {
        None => (
            "the line to keep",
            "its near face on the mark, the kerf outside",
        ),
        Some(_) => (
            "the line of the disc's outer face",
            "its outer face on the mark, the kerf inside, towards the pivot",
        ),
    };
    let mut steps = vec![
        format!(
            "Strike {line} with a radius of {} about {}p. Tape each station from station 1; neighbours \
             must then be {} apart.",
            figures.tape(marked_at),
            cut.number,
            figures.small(chord)
        ),
        format!(
            "At each station set the disc square to the arm, {side}. Lower it straight down and lift it \
             straight out."
        ),
        "Never steer the disc round the curve: side load bends and breaks it.".into(),
    ];
    steps.extend(freed_steps(book, cut, "ring"));
    if set_out.inside.is_none() {
        steps.push(format!(
            "For comparison: four straight cuts to the quarter circle would leave corners of {} to grind.",
            figures.small(set_out.four_cut_corner)
        ));
    }
    steps
}

fn station_table(figures: Figures, set_out: &CurveSetOut) -> Table {
    let unit = figures.unit();
    let rows = set_out.stations.iter().map(|s| {
        vec![
            s.number.to_string(),
            angle(s.angle),
            figures.tape_bare(s.from_first),
            figures.tape_bare(s.touch.x),
            figures.tape_bare(s.touch.y),
            if s.in_stone {
                String::new()
            } else {
                "already cut".into()
            },
        ]
    });
    Table {
        headings: vec![
            Heading::numbers("Station", Width::Mm(22.0)),
            Heading::numbers("Angle from AB", Width::Mm(34.0)),
            Heading::numbers(format!("From station 1, {unit}"), Width::Mm(28.0)),
            Heading::numbers(format!("x from A, {unit}"), Width::Mm(32.0)),
            Heading::numbers(format!("y from A, {unit}"), Width::Mm(32.0)),
            Heading::words("", Width::Part(1.0)),
        ],
        rows: rows.collect(),
        style: Scale::BENCH.strong,
    }
}
