//! Page 2: set-out. Every mark is made with a tape before the first cut.

use crate::cut::{Cut, CutKind, EdgeMark, MarkedLine, SetOut, Tie};
use crate::geom::Point;
use crate::plan::SlabNote;
use crate::sheet::book::{Book, Part};
use crate::sheet::drawing::Drawing;
use crate::sheet::figure::{Figures, angle};
use crate::sheet::flow::{Block, Mark, Scale};
use crate::sheet::item::{Dash, Ink, Stroke};
use crate::sheet::measured;
use crate::sheet::pen::NARROW_MM;
use crate::sheet::scene;
use crate::sheet::table::{Heading, Table, Width};

/// Greatest height of the drawing, mm.
const DRAWING_MM: f64 = 84.0;

/// Adds the pages.
pub fn add(book: &mut Book<'_>) {
    let plan = book.plan;
    let mut column = book.column(Scale::BENCH);
    column.place(&Block::Heading(
        "Mark everything before the first cut".into(),
    ));
    let area = column.reserve(scene::height_for(plan, column.width, DRAWING_MM));
    let mut drawing = Drawing::fit(scene::slab_bounds(plan), area, scene::DIMENSIONED_MM);
    drawing.slab(&plan.slab.outline);
    drawing.kept(&plan.top.outline, &plan.top.cutouts);
    scene::slab_names(&mut drawing, plan);
    for cut in plan.cuts.iter().filter(|c| c.cutout.is_none()) {
        draw_marks(&mut drawing, cut);
    }
    scene::top_names(&mut drawing, plan);
    column.items.extend(drawing.finish());
    column.place(&Block::Note(
        "Long dash and dot: the line to keep. Dashed: the guide's edge. Cross: a pivot. Letters A, \
         B, C … are the slab's corners; a mark's number is its cut's."
            .into(),
    ));
    let parts = parts(book);
    book.fill("Set-out", column, &parts);
}

fn draw_marks(drawing: &mut Drawing, cut: &Cut) {
    match &cut.set_out {
        SetOut::Guide(set_out) => {
            let face = Stroke::solid(0.25, Ink::Black).dashed(Dash::DashDot);
            let guide = Stroke::solid(NARROW_MM, Ink::Accent).dashed(Dash::Dashed);
            for (line, stroke, names) in
                [(&set_out.face, face, "ab"), (&set_out.guide, guide, "cd")]
            {
                drawing.line_apart(line.start.at, line.end.at, stroke);
                for (mark, letter) in [&line.start, &line.end].into_iter().zip(names.chars()) {
                    drawing.dot(mark.at);
                    drawing.name(mark.at, &format!("{}{letter}", cut.number));
                }
            }
            let stops = set_out.stops.iter().enumerate();
            for (i, stop) in stops.filter(|(_, stop)| !stop.into_hole) {
                drawing.dot(stop.at);
                drawing.name(stop.at, &format!("{}s{}", cut.number, i + 1));
            }
        }
        SetOut::Pivot(set_out) => {
            drawing.cross(set_out.pivot);
            drawing.name(set_out.pivot, &format!("{}p", cut.number));
        }
        SetOut::Ordinates(set_out) => {
            let chord = Stroke::solid(NARROW_MM, Ink::Accent).dashed(Dash::DashDot);
            drawing.line_apart(set_out.from.at, set_out.to.at, chord);
            for (end, letter) in [(&set_out.from, 'e'), (&set_out.to, 'f')] {
                drawing.cross(end.at);
                drawing.name(end.at, &format!("{}{letter}", cut.number));
            }
        }
        SetOut::Centres(marks) => {
            for (i, mark) in marks.iter().enumerate() {
                drawing.cross(mark.at);
                drawing.name(mark.at, &hole_name(cut, i));
            }
        }
    }
}

/// The name of a core hole's mark: `3h1`.
pub(super) fn hole_name(cut: &Cut, hole: usize) -> String {
    format!("{}h{}", cut.number, hole + 1)
}

fn parts(book: &Book<'_>) -> Vec<Part> {
    let plan = book.plan;
    let mut parts: Vec<Part> = Vec::new();
    let own: Vec<&Cut> = plan.cuts.iter().filter(|c| c.cutout.is_none()).collect();
    let rows = edge_rows(book.figures, &own);
    if !rows.is_empty() {
        parts.push(Block::Subheading("Marks on the edges of the slab".into()).into());
        parts.push(marks_table(book.figures, rows).into());
    }
    let rows = point_rows(book.figures, &own);
    if !rows.is_empty() {
        let words = if own.iter().any(|c| is_bored_or_stopped(c)) {
            "Pivots (p), ends of chords (e, f), middles of core holes (h), ends of stopped cuts (s), by tapes from the slab's \
             corners"
        } else {
            "Pivots (p) and ends of chords (e, f), by tapes from the slab's corners"
        };
        parts.push(Block::Subheading(words.into()).into());
        parts.push(points_table(book.figures, rows).into());
    }
    if own.len() < plan.cuts.len() {
        let words = "The marks of each cutout stand on its own pages: make them now as well, before the \
                     first cut takes the corners they are taped from.";
        parts.push(Block::Paragraph(words.into()).into());
    }
    let corners = corner_table(book);
    parts.push(Block::Subheading("Corners of the finished top, from slab corner A".into()).into());
    parts.push(corners.into());
    parts.extend(measured(book));
    parts.push(
        Block::List(
            Mark::From(1),
            vec![
                "Lay the slab face up on level bearers. Hold the tape at the named corner, not near it."
                    .into(),
                format!(
                    "Check every line with its check tie before you trust it. The tape is taken to be \
                     good to ±{}.",
                    book.figures.small(plan.slab.tape)
                ),
                "Cover the face with masking tape along each line, mark on the tape, and strike every \
                 line across the whole slab: an earlier cut may take a mark, the line stays."
                    .into(),
            ],
        )
        .into(),
    );
    parts
}

fn is_bored_or_stopped(cut: &Cut) -> bool {
    match &cut.set_out {
        SetOut::Centres(_) => true,
        SetOut::Guide(set_out) => !set_out.stops.is_empty(),
        SetOut::Pivot(_) | SetOut::Ordinates(_) => false,
    }
}

fn edge_rows(figures: Figures, cuts: &[&Cut]) -> Vec<Vec<String>> {
    let mut rows = Vec::new();
    for cut in cuts {
        if let SetOut::Guide(set_out) = &cut.set_out {
            for (line, what, names) in [
                (&set_out.face, face_word(cut), ["a", "b"]),
                (&set_out.guide, "guide edge", ["c", "d"]),
            ] {
                rows.extend(line_rows(figures, cut, line, what, names));
            }
        }
    }
    rows
}

/// The table of marks on the edges of the slab.
pub(super) fn marks_table(figures: Figures, rows: Vec<Vec<String>>) -> Table {
    Table {
        headings: vec![
            Heading::words("Mark", Width::Mm(15.0)),
            Heading::words("What", Width::Part(1.0)),
            Heading::words("On edge", Width::Mm(20.0)),
            Heading::words("Tape from", Width::Mm(24.0)),
            Heading::numbers(format!("Measure, {}", figures.unit()), Width::Mm(34.0)),
            Heading::words("Check tie", Width::Mm(42.0)),
        ],
        rows,
        style: Scale::BENCH.strong,
    }
}

/// What the near face of a straight cut is.
fn face_word(cut: &Cut) -> &'static str {
    match cut.kind {
        CutKind::Relief => "relief line",
        _ => "line to keep",
    }
}

/// The two marks of a line, with a check tie to the first.
pub(super) fn line_rows(
    figures: Figures,
    cut: &Cut,
    line: &MarkedLine,
    what: &str,
    names: [&str; 2],
) -> Vec<Vec<String>> {
    let row = |mark: &EdgeMark, name: &str, what: &str, check: String| {
        vec![
            format!("{}{name}", cut.number),
            what.to_owned(),
            mark.on.clone(),
            mark.tie.corner.clone(),
            figures.tape_bare(mark.tie.distance),
            check,
        ]
    };
    let check = format!(
        "{}: {}",
        line.check.corner,
        figures.tape(line.check.distance)
    );
    vec![
        row(&line.start, names[0], what, check),
        row(&line.end, names[1], what, String::new()),
    ]
}

/// The rows of pivots, core holes and stops.
fn point_rows(figures: Figures, cuts: &[&Cut]) -> Vec<Vec<String>> {
    let mut rows = Vec::new();
    for cut in cuts {
        if let SetOut::Pivot(set_out) = &cut.set_out {
            let name = format!("{}p", cut.number);
            rows.push(point_row(figures, name, set_out.pivot, &set_out.pivot_ties));
        }
        if let SetOut::Ordinates(set_out) = &cut.set_out {
            for (end, letter) in [(&set_out.from, 'e'), (&set_out.to, 'f')] {
                let name = format!("{}{letter}", cut.number);
                rows.push(point_row(figures, name, end.at, &end.ties));
            }
        }
        rows.extend(super::cutout::point_rows(figures, cut));
    }
    rows
}

/// The row of a point: its name, where it is, two tapes to it and a check.
pub(super) fn point_row(figures: Figures, name: String, at: Point, ties: &[Tie]) -> Vec<String> {
    let tie = |i: usize| {
        ties.get(i).map_or_else(String::new, |t| {
            format!("{}: {}", t.corner, figures.tape(t.distance))
        })
    };
    vec![
        name,
        figures.tape_bare(at.x),
        figures.tape_bare(at.y),
        tie(0),
        tie(1),
        tie(2),
    ]
}

/// The table of points inside the slab.
pub(super) fn points_table(figures: Figures, rows: Vec<Vec<String>>) -> Table {
    let unit = figures.unit();
    Table {
        headings: vec![
            Heading::words("Mark", Width::Mm(17.0)),
            Heading::numbers(format!("x, {unit}"), Width::Mm(27.0)),
            Heading::numbers(format!("y, {unit}"), Width::Mm(27.0)),
            Heading::words("First tape", Width::Part(1.0)),
            Heading::words("Second tape", Width::Part(1.0)),
            Heading::words("Check", Width::Part(1.0)),
        ],
        rows,
        style: Scale::BENCH.strong,
    }
}

fn corner_table(book: &Book<'_>) -> Table {
    let figures = book.figures;
    let unit = figures.unit();
    let edges = &book.plan.top.edges;
    let rows = book
        .plan
        .top
        .corners
        .iter()
        .zip(edges)
        .map(|(corner, edge)| {
            let use_of = edge.flush_with.as_ref().map_or_else(
                || match edge.allowance {
                    0.0 => "sawn to size".to_owned(),
                    left => format!("sawn, {} left on it", figures.small(left)),
                },
                |slab_edge| match edge.allowance {
                    0.0 => format!("lies on slab edge {slab_edge}, not sawn"),
                    left => format!(
                        "lies on slab edge {slab_edge}, not sawn, {} to take off",
                        figures.small(left)
                    ),
                },
            );
            vec![
                corner.name.clone(),
                figures.tape_bare(corner.at.x),
                figures.tape_bare(corner.at.y),
                format!("edge {}: {use_of}", edge.name),
            ]
        });
    Table {
        headings: vec![
            Heading::words("Corner", Width::Mm(18.0)),
            Heading::numbers(format!("x, {unit}"), Width::Mm(27.0)),
            Heading::numbers(format!("y, {unit}"), Width::Mm(27.0)),
            Heading::words("Edge from this corner on", Width::Part(1.0)),
        ],
        rows: rows.collect(),
        style: Scale::BENCH.body,
    }
}

/// How the slab was measured, how well the tapes close and how far it is from square; nothing for a
/// rectangle, nor when there is nothing to say.
fn measured(book: &Book<'_>) -> Vec<Part> {
    let (figures, slab) = (book.figures, &book.plan.slab);
    let closes = measured::misclosures(figures, slab);
    let square = square_table(figures, slab);
    if closes.is_empty() && square.rows.is_empty() {
        return Vec::new();
    }
    let heading = format!("Slab as measured: {}", measured::how(slab));
    let mut parts: Vec<Part> = vec![Block::Subheading(heading).into()];
    if !closes.is_empty() {
        parts.push(Block::List(Mark::Dot, closes).into());
    }
    if !square.rows.is_empty() {
        parts.push(square.into());
        let diagonals = measured::diagonals(figures, slab);
        let diagonals = diagonals.map_or_else(String::new, |words| format!(" The {words}."));
        parts.push(
            Block::Paragraph(format!(
                "Out of square: how far the end of that edge lies from a square laid along the longer edge \
                 at the corner.{diagonals} The tapes above allow for it; do not set out with a square from \
                 the slab's edges."
            ))
            .into(),
        );
    }
    parts
}

fn square_table(figures: Figures, slab: &SlabNote) -> Table {
    let rows = slab.survey.out_of_square.iter().map(|corner| {
        vec![
            corner.corner.clone(),
            angle(corner.angle.to_radians()),
            measured::out(figures, corner),
            format!("{} of edge {}", figures.size(corner.over), corner.edge),
        ]
    });
    Table {
        headings: vec![
            Heading::words("Corner", Width::Mm(18.0)),
            Heading::numbers("Angle inside", Width::Mm(30.0)),
            Heading::words("Out of square", Width::Part(1.0)),
            Heading::words("Over the", Width::Part(1.0)),
        ],
        rows: rows.collect(),
        style: Scale::BENCH.body,
    }
}
