//! The practice cut and plunges: where in the waste, and boxes for what they show.

use crate::cut::{Clearance, MarkedEnd, Pass, PracticeMark};
use crate::plan::Plan;
use crate::sheet::book::{Book, Part};
use crate::sheet::drawing::Drawing;
use crate::sheet::figure::Figures;
use crate::sheet::flow::{Block, Grade, Mark, Scale};
use crate::sheet::item::{Ink, Stroke};
use crate::sheet::pen::NARROW_MM;
use crate::sheet::scene;
use crate::sheet::table::{Heading, Table, Width};

/// Greatest height of the drawing, mm.
const DRAWING_MM: f64 = 70.0;

/// Adds the page.
pub fn add(book: &mut Book<'_>) {
    let plan = book.plan;
    if plan.cuts.is_empty() {
        return;
    }
    let mut column = book.column(Scale::BENCH);
    column.place(&Block::Heading(
        "Practise in the waste before the first cut".into(),
    ));
    if !plan.stops.is_empty() {
        let words = "A stop stands against this job: see page 1. Do not cut.".to_owned();
        column.place(&Block::Notice(Grade::Stop, words, Vec::new()));
    }
    let area = column.reserve(scene::height_for(plan, column.width, DRAWING_MM));
    let mut drawing = Drawing::fit(scene::slab_bounds(plan), area, scene::DIMENSIONED_MM);
    scene::stage(&mut drawing, plan, 1);
    scene::practice(&mut drawing, plan);
    scene::slab_names(&mut drawing, plan);
    for ring in plan.pieces.iter().flat_map(|p| &p.outline) {
        drawing.keep_labels_off(ring);
    }
    for (mark, _) in named(plan) {
        let thin = Stroke::solid(NARROW_MM, Ink::Black);
        drawing.line_apart(mark.ends[0].at, mark.ends[1].at, thin);
        for end in &mark.ends {
            drawing.dot(end.at);
        }
    }
    for (mark, names) in named(plan) {
        for (end, name) in mark.ends.iter().zip(names) {
            drawing.name(end.at, name);
        }
    }
    drawing.word(plan.top.balance, "keep");
    column.items.extend(drawing.finish());
    let parts = parts(plan, book.figures);
    book.fill("Practice", column, &parts);
}

/// What there is to practise, with the names of its two marks.
fn named(plan: &Plan) -> Vec<(&PracticeMark, [&'static str; 2])> {
    let cut = plan.practice.cut.iter().map(|m| (m, ["T1", "T2"]));
    let plunges = plan.practice.plunges.iter().map(|m| (m, ["T3", "T4"]));
    cut.chain(plunges).collect()
}

fn parts(plan: &Plan, figures: Figures) -> Vec<Part> {
    let mut parts: Vec<Part> = Vec::new();
    let marks = named(plan);
    if !marks.is_empty() {
        parts.push(mark_table(&marks, figures).into());
    }
    parts.push(Block::Subheading("What to do".into()).into());
    parts.push(Block::List(Mark::From(1), steps(plan, figures)).into());
    parts.push(
        Block::Subheading("What it shows: write it in, then into the job file".into()).into(),
    );
    parts.push(record().into());
    parts.push(Block::Note(formula(plan, figures)).into());
    parts
}

fn mark_table(marks: &[(&PracticeMark, [&'static str; 2])], figures: Figures) -> Table {
    let tie = |end: &MarkedEnd, i: usize| {
        end.ties.get(i).map_or_else(String::new, |t| {
            format!("{} {}", t.corner, figures.tape_bare(t.distance))
        })
    };
    let rows = marks.iter().flat_map(|(mark, names)| {
        mark.ends.iter().zip(names).map(move |(end, name)| {
            vec![
                (*name).to_owned(),
                mark.piece.clone(),
                tie(end, 0),
                tie(end, 1),
                tie(end, 2),
            ]
        })
    });
    let unit = figures.unit();
    Table {
        headings: vec![
            Heading::words("Mark", Width::Mm(18.0)),
            Heading::words("In", Width::Mm(18.0)),
            Heading::words(format!("First tape, {unit}"), Width::Part(1.0)),
            Heading::words(format!("Second tape, {unit}"), Width::Part(1.0)),
            Heading::words(format!("Check, {unit}"), Width::Part(1.0)),
        ],
        rows: rows.collect(),
        style: Scale::BENCH.strong,
    }
}

fn depths(passes: &[Pass]) -> String {
    let each: Vec<String> = passes.iter().map(|p| format!("{:.1}", p.depth)).collect();
    format!("{} mm", each.join(", "))
}

fn steps(plan: &Plan, figures: Figures) -> Vec<String> {
    const OTHER: &str =
        "no offcut has room for it clear of the top. Use another piece of the same stone.";
    let practice = &plan.practice;
    let mut steps = Vec::new();
    match &practice.cut {
        None => steps.push(format!("Practice cut: {OTHER}")),
        Some(cut) => {
            steps.push(format!(
                "Practice cut: clamp the guide beside the line T1–T2, {} long. Lower the disc at one end, \
                 run to the other, lift it out; depths {}. {}",
                figures.tape(cut.length),
                depths(&cut.passes),
                clear(cut, figures)
            ));
            steps.push(
                "Time it with the disc in the stone. Measure from the guide's edge to the near face at \
                 both ends, and the length in the face."
                    .into(),
            );
        }
    }
    match &practice.plunges {
        None => steps.push(format!("Practice plunges: {OTHER}")),
        Some(plunges) => {
            steps.push(format!(
                "Practice plunges: the first with its near face on T3–T4, two more beside it, {} apart, each \
                 straight down to {} and straight out. {}",
                figures.small(plunges.apart),
                depths(&plunges.passes),
                clear(plunges, figures)
            ));
            steps.push(
                "Hold them with the jig the curves need, and measure from the arm's mark to the near \
                 face each time."
                    .into(),
            );
        }
    }
    steps
}

fn clear(mark: &PracticeMark, figures: Figures) -> String {
    match mark.clearance {
        Clearance::Wanted(mm) => format!("It stays {} clear of the top.", figures.size(mm.floor())),
        Clearance::Narrow(mm) => format!(
            "It stays only {} clear of the top, the most there is room for: clamp a stop.",
            figures.size(mm.floor())
        ),
    }
}

fn record() -> Table {
    let line = "________".to_owned();
    let row = |what: &str, key: &str| vec![what.to_owned(), line.clone(), key.to_owned()];
    Table {
        headings: vec![
            Heading::words("Measured", Width::Part(1.5)),
            Heading::words("Figure", Width::Mm(36.0)),
            Heading::words("Key in the job file", Width::Part(1.0)),
        ],
        rows: vec![
            row("Guide edge to near face, mm", "guide.offset"),
            row("Arm mark to near face, mm", "circle_jig.offset"),
            row("Length in the face, mm", ""),
            row("Depth, mm", ""),
            row("Disc in stone, minutes", ""),
            row("Sawn face a minute, cm²", "passes.rate"),
        ],
        style: Scale::BENCH.body,
    }
}

fn formula(plan: &Plan, figures: Figures) -> String {
    let lost = plan.practice.cut.as_ref().map(|cut| {
        format!(
            ", with {} for the round ends of this disc at this depth",
            figures.small(cut.ends_lost)
        )
    });
    let rate = plan.kit.rate;
    let guess = if plan.kit.rate_is_guess {
        " (a guess)"
    } else {
        ""
    };
    format!(
        "Sawn face a minute, cm² = (length − round ends) × depth ÷ 100 ÷ minutes, lengths in mm{}. This plan \
         counts with {rate:.0} cm²/min{guess}.",
        lost.unwrap_or_default()
    )
}
