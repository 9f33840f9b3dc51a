//! Pieces and weights.

use crate::plan::Plan;
use crate::sheet::book::{Book, Part};
use crate::sheet::drawing::Drawing;
use crate::sheet::figure::{Figures, area, time};
use crate::sheet::flow::{Block, Scale};
use crate::sheet::scene;
use crate::sheet::table::{Heading, Table, Width};

/// Greatest height of the drawing, mm.
const DRAWING_MM: f64 = 54.0;

/// Adds the page.
pub fn add(book: &mut Book<'_>) {
    let plan = book.plan;
    let mut column = book.column(Scale::BENCH);
    column.place(&Block::Heading("Pieces and weights".into()));
    let paper = column.reserve(scene::height_for(plan, column.width, DRAWING_MM));
    let mut drawing = Drawing::fit(scene::slab_bounds(plan), paper, scene::DIMENSIONED_MM);
    scene::stage(&mut drawing, plan, 1);
    scene::slab_names(&mut drawing, plan);
    drawing.balance(plan.top.balance);
    for piece in &plan.pieces {
        drawing.balance(piece.balance);
    }
    drawing.name(plan.top.balance, "top");
    for piece in &plan.pieces {
        drawing.name(piece.balance, &piece.name);
    }
    column.items.extend(drawing.finish());
    column.place(&Block::Note(
        "Quartered disc: balance point. Heavy figures come from the densest stone of the kind and \
         the thickest reading: lift by those."
            .into(),
    ));
    let parts = parts(plan, book.figures);
    book.fill("Pieces and weights", column, &parts);
}

fn parts(plan: &Plan, figures: Figures) -> Vec<Part> {
    let mut parts: Vec<Part> = vec![piece_table(plan, figures).into()];
    parts.push(Block::Subheading("What is left after each cut".into()).into());
    parts.push(remaining_table(plan, figures).into());
    let b = &plan.balance_sheet;
    parts.push(Block::Subheading("Where the slab goes".into()).into());
    parts.push(
        Block::Paragraph(format!(
            "Slab {} = finished top {} + left on the edges {} + kerf {} + waste pieces {}. Crumbs \
             smaller than 1 cm² between slots count as kerf.",
            area(b.slab_mm2),
            area(b.top_mm2),
            area(b.allowance_mm2),
            area(b.kerf_mm2),
            area(b.offcuts_mm2)
        ))
        .into(),
    );
    parts.push(Block::Note(density_words(plan)).into());
    parts.push(Block::Subheading("Time and consumables".into()).into());
    parts.push(Block::Rows(consumables(plan, figures)).into());
    parts
}

/// What the cuts take, each figure with where it comes from.
fn consumables(plan: &Plan, figures: Figures) -> Vec<(String, String)> {
    let used = &plan.consumables;
    let row = |name: &str, value: String| (name.to_owned(), value);
    let rate = if plan.kit.rate_is_guess {
        "a guess, put in your own"
    } else {
        "the practice cut's own"
    };
    let mut rows = vec![row(
        "Disc in stone",
        format!(
            "{} at {:.0} cm²/min, {rate}",
            time(used.sawing_minutes),
            plan.kit.rate
        ),
    )];
    if used.drilling_minutes > 0.0 {
        let words = format!(
            "{} for {} holes, judgement",
            time(used.drilling_minutes),
            plan.totals.core_holes
        );
        rows.push(row("Drilling", words));
    }
    rows.push(row("Stone to slurry or dust", figures.mass(used.slurry)));
    if used.water_l > 0.0 {
        let words = format!(
            "about {:.0} l, at {:.0} l/min by judgement",
            used.water_l.ceil(),
            used.water_l_per_min
        );
        rows.push(row("Water", words));
    }
    rows.push(row("Masking tape", figures.size(used.tape_mm)));
    rows.push(row(
        "Discs",
        "no life is published: keep a spare of each".into(),
    ));
    rows
}

fn piece_table(plan: &Plan, figures: Figures) -> Table {
    let mut rows = vec![
        vec![
            "Slab".into(),
            "as bought".into(),
            area(plan.slab.area_mm2),
            figures.mass(plan.slab.mass.likely),
            figures.mass(plan.slab.mass.high),
            String::new(),
        ],
        vec![
            "Top".into(),
            "finished".into(),
            area(plan.top.area_mm2),
            figures.mass(plan.top.mass.likely),
            figures.mass(plan.top.mass.high),
            String::new(),
        ],
    ];
    rows.extend(plan.pieces.iter().map(|p| {
        vec![
            p.name.clone(),
            format!("cut {}", p.after_cut),
            area(p.area_mm2),
            figures.mass(p.mass.likely),
            figures.mass(p.mass.high),
            p.best_rectangle.as_ref().map_or_else(String::new, |b| {
                format!(
                    "{} × {}",
                    figures.size_bare(b.long_mm),
                    figures.size_label(b.short_mm)
                )
            }),
        ]
    }));
    Table {
        headings: vec![
            Heading::words("Piece", Width::Mm(18.0)),
            Heading::words("Free after", Width::Mm(25.0)),
            Heading::numbers("Area", Width::Mm(27.0)),
            Heading::numbers("Likely", Width::Part(1.0)),
            Heading::numbers("At most", Width::Part(1.0)),
            Heading::numbers("Rectangle in it", Width::Mm(44.0)),
        ],
        rows,
        style: Scale::BENCH.strong,
    }
}

fn remaining_table(plan: &Plan, figures: Figures) -> Table {
    let rows = plan.remaining.iter().map(|r| {
        vec![
            format!("after cut {}", r.after_cut),
            figures.mass(r.mass.likely),
            figures.mass(r.mass.high),
            figures.tape_bare(r.balance.x),
            figures.tape_bare(r.balance.y),
        ]
    });
    let unit = figures.unit();
    Table {
        headings: vec![
            Heading::words("Kept stone", Width::Mm(34.0)),
            Heading::numbers("Likely", Width::Part(1.0)),
            Heading::numbers("At most", Width::Part(1.0)),
            Heading::numbers(format!("Balance x, {unit}"), Width::Mm(38.0)),
            Heading::numbers(format!("Balance y, {unit}"), Width::Mm(38.0)),
        ],
        rows: rows.collect(),
        style: Scale::BENCH.strong,
    }
}

fn density_words(plan: &Plan) -> String {
    let d = &plan.stone.density;
    let t = plan.slab.thickness;
    let weighed = plan.stone.weighed.map_or_else(String::new, |m| {
        format!(" The slab was weighed: {:.0} kg.", m.kg())
    });
    format!(
        "Weights are area × thickness × density: {} at {:.0} kg/m³ ({:.0} to {:.0}), thickness {:.1} mm \
         ({:.1} to {:.1}).{weighed}",
        plan.stone.name, d.likely, d.low, d.high, t.mean, t.least, t.most
    )
}
