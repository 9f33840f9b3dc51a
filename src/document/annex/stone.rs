//! The stone, where the top lies on the slab, the pieces, where the slab's area goes, the corners.

use crate::cut::{Cut, Tool};
use crate::document::block::{Block, Cell, Column, Fact, Table};
use crate::document::say::{cell, mass_range, name, plain, say, value};
use crate::plan::Plan;
use crate::words::{Unit, Value};

pub(super) fn blocks(plan: &Plan) -> Vec<Block> {
    let mut blocks = vec![
        Block::Facts(stone(plan)),
        Block::Heading(plain("annex-place")),
        Block::Table(corners(plan)),
        Block::Table(edges(plan)),
        Block::Heading(plain("annex-pieces")),
        Block::Table(pieces(plan)),
        Block::Text(say("annex-balance", balance(plan))),
    ];
    let chosen = passes(plan);
    if !chosen.rows.is_empty() {
        blocks.push(Block::Heading(plain("annex-cuts")));
        blocks.push(Block::Table(chosen));
    }
    blocks
}

fn stone(plan: &Plan) -> Vec<Fact> {
    let stone = &plan.stone;
    let density = |v: f64| Value::of(v, Unit::Density);
    vec![
        Fact::new("annex-kind", name(&stone.name)),
        Fact::new(
            "annex-density",
            value(
                "annex-three",
                [
                    ("low", density(stone.density.low)),
                    ("likely", density(stone.density.likely)),
                    ("high", density(stone.density.high)),
                ],
            ),
        ),
        Fact::new(
            "annex-thickness",
            value(
                "annex-three",
                [
                    ("low", Value::fine(plan.slab.thickness.least)),
                    ("likely", Value::fine(plan.slab.thickness.mean)),
                    ("high", Value::fine(plan.slab.thickness.most)),
                ],
            ),
        ),
        Fact::new(
            "annex-allowed",
            value(
                "annex-strength-is",
                [
                    ("strength", Value::of(stone.strength_mpa, Unit::Megapascal)),
                    ("factor", Value::number(stone.safety_factor, 1)),
                    ("source", name(&stone.strength_source)),
                ],
            ),
        ),
        Fact::new("annex-slab-area", Value::of(plan.slab.area_mm2, Unit::Area)),
        Fact::new("annex-slab-mass", mass_range(&plan.slab.mass)),
        Fact::new("annex-top-mass", mass_range(&plan.top.mass)),
        Fact::new(
            "annex-spare",
            Value::fine(plan.placement.least_spare).down(),
        ),
        Fact::new("annex-turn", Value::of(plan.placement.turn, Unit::Degree)),
    ]
}

fn corners(plan: &Plan) -> Table {
    let rows = plan.top.corners.iter().map(|c| {
        vec![
            cell("annex-corner-of-top", [("name", name(&c.name))]),
            Value::tape(c.at.x).into(),
            Value::tape(c.at.y).into(),
        ]
    });
    Table {
        columns: vec![
            Column::words(value("annex-corner", []), 60),
            Column::figures(value("annex-x", []), 60),
            Column::figures(value("annex-y", []), 60),
        ],
        rows: rows.collect(),
    }
}

fn edges(plan: &Plan) -> Table {
    let rows = plan.top.edges.iter().map(|e| {
        let lies = e.flush_with.as_ref().map_or_else(
            || cell("annex-edge-sawn", [("left", Value::fine(e.allowance))]),
            |slab| cell("annex-edge-flush", [("edge", name(slab))]),
        );
        vec![name(&e.name).into(), Value::size(e.length).into(), lies]
    });
    Table {
        columns: vec![
            Column::words(value("annex-edge", []), 40),
            Column::figures(value("annex-length", []), 50),
            Column::words(value("annex-lies", []), 90),
        ],
        rows: rows.collect(),
    }
}

fn pieces(plan: &Plan) -> Table {
    let rows = plan.pieces.iter().map(|p| {
        let best = p.best_rectangle.as_ref().map_or(Cell::Empty, |b| {
            cell(
                "bench-top-size",
                [
                    ("length", Value::size(b.long_mm)),
                    ("width", Value::size(b.short_mm)),
                ],
            )
        });
        vec![
            name(&p.name).into(),
            Value::count(p.after_cut).into(),
            Value::of(p.area_mm2, Unit::Area).into(),
            mass_range(&p.mass).into(),
            best,
        ]
    });
    let left = plan.remaining.iter().map(|r| {
        vec![
            cell("annex-left", []),
            Value::count(r.after_cut).into(),
            Cell::Empty,
            mass_range(&r.mass).into(),
            Cell::Empty,
        ]
    });
    Table {
        columns: vec![
            Column::words(value("annex-piece", []), 40),
            Column::figures(value("annex-after", []), 30),
            Column::figures(value("annex-area", []), 35),
            Column::figures(value("annex-mass", []), 35),
            Column::figures(value("annex-rectangle", []), 45),
        ],
        rows: rows.chain(left).collect(),
    }
}

fn balance(plan: &Plan) -> [(&'static str, Value); 5] {
    let area = |mm2: f64| Value::of(mm2, Unit::Area).decimals(3);
    let sheet = &plan.balance_sheet;
    [
        ("slab", area(sheet.slab_mm2)),
        ("top", area(sheet.top_mm2)),
        ("left", area(sheet.allowance_mm2)),
        ("kerf", area(sheet.kerf_mm2)),
        ("waste", area(sheet.offcuts_mm2)),
    ]
}

/// What a cut is made with.
fn tool(cut: &Cut) -> Value {
    match &cut.tool {
        Tool::Disc(disc) => name(&disc.name),
        Tool::Bit(bit) => value("annex-core-bit", [("bit", Value::bit(bit.diameter))]),
    }
}

fn passes(plan: &Plan) -> Table {
    let rows = plan.cuts.iter().map(|c| {
        let depths = c.passes.iter().map(|p| Value::fine(p.depth));
        vec![
            Value::count(c.number).into(),
            name(&c.edge).into(),
            tool(c).into(),
            Value::size(c.length).into(),
            Value::List(depths.collect()).into(),
            Value::of(c.minutes, Unit::Minute).up().into(),
        ]
    });
    Table {
        columns: vec![
            Column::figures(value("bench-relief-cut", []), 10),
            Column::words(value("annex-edge", []), 20),
            Column::words(value("annex-tool", []), 40),
            Column::figures(value("annex-length", []), 22),
            Column::words(value("bench-opening-depths", []), 65),
            Column::figures(value("bench-day-minutes", []), 20),
        ],
        rows: rows.collect(),
    }
}
