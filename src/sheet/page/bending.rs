//! How each state of the stone may lie, where trestles stand, and the narrow places.

use super::both::Both;
use super::lifting;
use super::moments;
use crate::handle::Piece;
use crate::handle::bench::{Bench, Lies, Places};
use crate::handle::judged::{BendVerdict, Bending};
use crate::handle::neck::Neck;
use crate::handle::rail::{Rail, RailVerdict};
use crate::handle::splint::Splint;
use crate::plan::Plan;
use crate::sheet::book::{Book, Part};
use crate::sheet::flow::{Block, Scale};
use crate::sheet::item::{Ink, Stroke};
use crate::sheet::pen::WIDE_MM;
use crate::sheet::scene;
use crate::sheet::table::{Heading, Table, Width};

/// Name of the pages.
const NAME: &str = "Lie and stand";
/// Height of one moment diagram, mm.
const DIAGRAM_MM: f64 = 27.5;
/// Height of the drawing of the narrow places, mm.
const DRAWING_MM: f64 = 62.0;

/// Adds the pages.
pub fn add(book: &mut Book<'_>) {
    let plan = book.plan;
    let both = Both::of(book.figures);
    let mut column = book.column(Scale::BENCH);
    column.place(&Block::Heading("How the stone may lie and stand".into()));
    column.place(&Block::Paragraph(
        "Flat only on the places given, never by its ends; carried on edge. Two trestles carry the kept \
         stone while it is cut; the waste side of each cut wants strips of its own, level with them."
            .into(),
    ));
    for piece in told(plan) {
        let area = column.reserve(DIAGRAM_MM);
        column.items.extend(moments::drawn(piece, area, both));
    }
    let parts: Vec<Part> = vec![
        Block::Note(moments::NOTE.into()).into(),
        Block::Subheading("Two trestles while it is cut".into()).into(),
        trestle_table(plan, both).into(),
        Block::Subheading("Bending under its own weight, as a part of what is allowed".into())
            .into(),
        Block::Note(words(plan)).into(),
        stress_table(plan, both).into(),
    ];
    book.fill(NAME, column, &parts);
    if !(plan.handling.top.rails.is_empty() && plan.handling.top.necks.is_empty()) {
        narrow(book, both);
    }
}

/// The slab, the worst state on the way, the finished top.
fn told(plan: &Plan) -> Vec<&Piece> {
    let h = &plan.handling;
    let stress = |p: &&Piece| p.strength.best.worst.stress_mpa;
    let worst = h
        .states
        .iter()
        .max_by(|a, b| stress(a).total_cmp(&stress(b)));
    std::iter::once(&h.slab)
        .chain(worst)
        .chain([&h.top])
        .collect()
}

fn trestle_table(plan: &Plan, both: Both) -> Table {
    let rows = plan.handling.bench.iter().map(|b| {
        let [first, second] = b.at_mm;
        vec![
            states(b),
            both.tape_stacked(first),
            both.tape_stacked(second),
            lies(b),
        ]
    });
    Table {
        headings: vec![
            Heading::words("Stone", Width::Part(1.2)),
            Heading::numbers("First, from A's end", Width::Part(1.0)),
            Heading::numbers("Second", Width::Part(1.0)),
            Heading::words("Stressed most", Width::Part(1.4)),
        ],
        rows: rows.collect(),
        style: Scale::BENCH.strong,
    }
}

fn states(bench: &Bench) -> String {
    let given = match bench.places {
        Places::Given => " (given)",
        Places::Proposed => "",
    };
    if bench.from == bench.to {
        format!("{}{given}", bench.from)
    } else {
        format!("{} to {}{given}", bench.from, bench.to)
    }
}

fn lies(bench: &Bench) -> String {
    match &bench.lies {
        Lies::Judged { state, verdict, .. } => format!("{state}: {}", part(*verdict)),
        Lies::Falls { state } => format!("{state}: FALLS OFF THEM"),
    }
}

fn part(verdict: BendVerdict) -> String {
    match verdict {
        BendVerdict::NotAbove { utilisation } => format!("{:.0} %", utilisation * 100.0),
        BendVerdict::Above { utilisation } => format!("{:.0} %: do not", utilisation * 100.0),
    }
}

fn stress_table(plan: &Plan, both: Both) -> Table {
    let rows = plan.handling.pieces().map(|piece| {
        let s = &piece.strength;
        let of = |b: &Bending| short(b.verdict);
        let carried = s.carried.as_ref().map_or_else(|| "not held".to_owned(), of);
        vec![
            piece.name.clone(),
            both.mass_range_stacked(&piece.mass),
            of(&s.best),
            carried,
            of(&s.ends_only),
            of(&s.one_end_lifted),
            of(&s.best_on_edge),
            of(&s.ends_on_edge),
        ]
    });
    let number = |title: &str| Heading::numbers(title, Width::Part(1.0));
    Table {
        headings: vec![
            Heading::words("Stone", Width::Mm(30.0)),
            Heading::numbers("Weighs", Width::Mm(25.0)),
            number("Flat on best bearers"),
            number("Flat in hands"),
            number("Flat by its ends"),
            number("One end lifted"),
            number("On edge on bearers"),
            number("On edge by ends"),
        ],
        rows: rows.collect(),
        style: Scale::DESK.body,
    }
}

fn short(verdict: BendVerdict) -> String {
    match verdict {
        BendVerdict::NotAbove { utilisation } => format!("{:.0} %", utilisation * 100.0),
        BendVerdict::Above { utilisation } => format!("no: {:.0} %", utilisation * 100.0),
    }
}

fn words(plan: &Plan) -> String {
    let s = &plan.handling.top.strength;
    let weights = if plan.stone.weighed.is_some() {
        "Weights from the slab's weight on a scale."
    } else {
        "Weights from the range of the stone's density and the thickness readings; lifts are reckoned with \
         the high one."
    };
    format!(
        "{weights} Allowed {:.2} MPa = {:.2} MPa ÷ {:.0} ({}). Own weight × {:.1} for handling, thickness {:.1} mm, the \
         thinnest reading. Sound stone only: a flaw breaks far earlier.",
        s.allowed_mpa,
        s.strength_mpa,
        s.safety_factor,
        s.strength_source,
        s.handling_factor,
        s.thickness_mm
    )
}

fn narrow_table(plan: &Plan, both: Both) -> Table {
    let top = &plan.handling.top;
    let allowed = top.strength.allowed_mpa;
    let rails = top.rails.iter().map(|r| rail_row(r, allowed, both));
    let necks = top.necks.iter().map(|n| neck_row(n, both));
    let rows = rails.chain(necks).enumerate();
    Table {
        headings: vec![
            Heading::words("", Width::Mm(10.0)),
            Heading::words("Place", Width::Part(1.1)),
            Heading::numbers("Width", Width::Mm(30.0)),
            Heading::words("What to do", Width::Part(1.9)),
        ],
        rows: rows
            .map(|(i, row)| [vec![letter(i)], row].concat())
            .collect(),
        style: Scale::BENCH.strong,
    }
}

fn letter(i: usize) -> String {
    crate::job::shape::letters(i).to_lowercase()
}

fn rail_row(rail: &Rail, allowed_mpa: f64, both: Both) -> Vec<String> {
    let brace = match rail.verdict {
        RailVerdict::Holds { .. } => String::new(),
        RailVerdict::Brace { .. } => format!(" {}", splint(rail.splint.as_ref(), both)),
        RailVerdict::TooWeak { .. } => format!(
            " Never flat without a brace. {}",
            splint(rail.splint.as_ref(), both)
        ),
    };
    let percent = |stress: f64| 100.0 * stress / allowed_mpa;
    vec![
        rail.name.clone(),
        both.tape_stacked(rail.width_mm),
        format!(
            "{:.0} % of what is allowed, {:.0} % alone.{brace}",
            percent(rail.together_mpa),
            percent(rail.alone_mpa)
        ),
    ]
}

fn neck_row(neck: &Neck, both: Both) -> Vec<String> {
    let brace = if neck.verdict.is_above() {
        format!(" {}", splint(neck.splint.as_ref(), both))
    } else {
        String::new()
    };
    vec![
        neck.name.clone(),
        both.tape_stacked(neck.width_mm),
        format!(
            "{:.0} % if {} hangs on it.{brace}",
            neck.verdict.utilisation() * 100.0,
            both.mass(neck.hanging)
        ),
    ]
}

fn splint(splint: Option<&Splint>, both: Both) -> String {
    let Some(splint) = splint else {
        return "No timber is stiff enough: bed it on a frame.".to_owned();
    };
    let [width, depth] = splint.timber_mm;
    format!(
        "Clamp on: {} × timber {width:.0} × {depth:.0} mm on edge, {} long.",
        splint.count,
        both.size(splint.length_mm)
    )
}

/// The top with its narrow places, lettered as in the table below.
fn narrow(book: &mut Book<'_>, both: Both) {
    let plan = book.plan;
    let mut column = book.column(Scale::BENCH);
    column.place(&Block::Heading("Narrow places of the finished top".into()));
    let paper = column.reserve(DRAWING_MM);
    let mut drawing = lifting::top(plan, paper);
    let top = &plan.handling.top;
    let rails = top.rails.iter().map(|r| r.narrowest);
    let chords = rails.chain(top.necks.iter().map(|n| n.chord));
    let line = Stroke::solid(WIDE_MM, Ink::Accent);
    for (i, [a, b]) in chords.enumerate() {
        drawing.line_apart(a, b, line);
        drawing.badge(a.midpoint(b), &letter(i));
    }
    scene::top_names(&mut drawing, plan);
    column.items.extend(drawing.finish());
    let parts: Vec<Part> = vec![
        narrow_table(plan, both).into(),
        Block::Paragraph(
            "Alone: when a rail has to take the bending by itself, as when its side is lifted first. Clamp \
             the timber on before the stone is moved and leave it on until the top lies on its supports. \
             Padded clamps, on whole stone at both ends, never on the rail."
                .into(),
        )
        .into(),
    ];
    book.fill(NAME, column, &parts);
}
