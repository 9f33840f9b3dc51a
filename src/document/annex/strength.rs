//! Lying, standing, lifting: stresses of every state of the stone, people's shares, what aids need.

use crate::document::block::{Block, Cell, Column, Fact, Table};
use crate::document::moving::verdict;
use crate::document::say::{cell, mass_range, name, plain, say, value};
use crate::document::weigh;
use crate::handle::HandledPiece;
use crate::handle::rail::Rail;
use crate::plan::Plan;
use crate::words::{Unit, Value};

pub(super) fn blocks(plan: &Plan) -> Vec<Block> {
    let handling = &plan.handling;
    let mut blocks = vec![
        Block::Heading(plain("annex-bending")),
        Block::Table(bending(plan)),
        Block::Heading(plain("annex-lifting")),
        Block::Facts(vec![
            Fact::new("annex-slab", verdict(&handling.slab, handling)),
            Fact::new("annex-top", verdict(&handling.top, handling)),
            Fact::new(
                "annex-guideline",
                value(
                    "annex-guideline-is",
                    [
                        ("each", Value::mass(handling.guideline.each).down()),
                        ("source", name(handling.guideline.source.document)),
                    ],
                ),
            ),
        ]),
        Block::Table(lifters(&handling.top)),
        Block::Table(aids(plan)),
    ];
    let rails: Vec<&Rail> = handling.top.rails.iter().collect();
    if !rails.is_empty() {
        blocks.push(Block::Heading(plain("annex-rails")));
        blocks.push(Block::Facts(rails.into_iter().map(rail).collect()));
    }
    blocks.extend(setting(plan));
    blocks
}

fn bending(plan: &Plan) -> Table {
    let mpa = |v: f64| Cell::Value(Value::of(v, Unit::Megapascal).up());
    let rows = plan.handling.pieces().map(|p| {
        let s = &p.strength;
        vec![
            cell("annex-state", [("name", Value::term(p.name.clone()))]),
            mass_range(&p.mass).into(),
            mpa(s.best.worst.stress_mpa),
            s.carried
                .as_ref()
                .map_or(Cell::Empty, |c| mpa(c.worst.stress_mpa)),
            mpa(s.ends_only.worst.stress_mpa),
            mpa(s.one_end_lifted.worst.stress_mpa),
            mpa(s.ends_on_edge.worst.stress_mpa),
            Cell::Value(Value::of(s.allowed_mpa, Unit::Megapascal).down()),
        ]
    });
    Table {
        columns: vec![
            Column::words(value("annex-stone-state", []), 34),
            Column::figures(value("annex-mass", []), 26),
            Column::figures(value("annex-flat-best", []), 20),
            Column::figures(value("annex-flat-hands", []), 20),
            Column::figures(value("annex-flat-ends", []), 20),
            Column::figures(value("annex-one-end", []), 20),
            Column::figures(value("annex-on-edge", []), 20),
            Column::figures(value("annex-may", []), 20),
        ],
        rows: rows.collect(),
    }
}

/// The lifters, with the figure that each is allowed.
fn lifters(piece: &HandledPiece) -> Table {
    let mut table = weigh::lifters(piece);
    let limit = |m| Cell::Value(Value::mass(m).down());
    for (row, lifter) in table.rows.iter_mut().zip(&piece.lift.lifters) {
        row.push(lifter.limit.map_or(Cell::Empty, limit));
    }
    let figure = Column::figures(value("annex-figure", []), 40);
    table.columns.push(figure);
    table
}

fn aids(plan: &Plan) -> Table {
    let rows = plan
        .handling
        .moving
        .aids
        .iter()
        .zip(&plan.handling.moving.falls);
    let rows = rows.map(|(a, f)| {
        vec![
            cell("annex-state", [("name", Value::term(a.name.clone()))]),
            Value::mass(a.trolley.rated).up().into(),
            Value::mass(a.trolley.level_push).up().into(),
            Value::mass(a.trolley.ramp_adds).up().into(),
            Value::of(a.trolley.tips_at_deg, Unit::Degree).down().into(),
            Value::mass(a.vacuum.rated).up().into(),
            a.slings
                .as_ref()
                .map_or(Cell::Empty, |s| Cell::Value(Value::mass(s.tension).up())),
            Value::of(f.tips_at_deg, Unit::Degree).down().into(),
        ]
    });
    Table {
        columns: vec![
            Column::words(value("annex-stone-state", []), 34),
            Column::figures(value("annex-trolley-rated", []), 22),
            Column::figures(value("annex-trolley-push", []), 22),
            Column::figures(value("annex-trolley-ramp", []), 22),
            Column::figures(value("annex-trolley-tips", []), 20),
            Column::figures(value("annex-vacuum-rated", []), 20),
            Column::figures(value("annex-sling-pull", []), 20),
            Column::figures(value("annex-leans", []), 20),
        ],
        rows: rows.collect(),
    }
}

fn rail(rail: &Rail) -> Fact {
    let mpa = |v: f64| Value::of(v, Unit::Megapascal).up();
    Fact {
        name: say("bench-rail", [("what", name(&rail.name))]),
        value: value(
            "annex-rail-is",
            [
                ("width", Value::size(rail.width_mm).down()),
                ("length", Value::size(rail.length_mm).up()),
                ("together", mpa(rail.together_mpa)),
                ("alone", mpa(rail.alone_mpa)),
            ],
        ),
    }
}

fn setting(plan: &Plan) -> Vec<Block> {
    let Some(setting) = &plan.handling.setting else {
        return Vec::new();
    };
    let rows = setting.bearings.iter().map(|b| {
        vec![
            name(&b.what).into(),
            Value::mass(b.share.mass()).up().into(),
            Value::mass(b.with_person).up().into(),
        ]
    });
    let overhangs = setting.overhangs.iter().map(|o| {
        vec![
            name(&o.edge).into(),
            Value::size(o.overhang_mm).up().into(),
            o.person_mpa.map_or(Cell::Empty, |v| {
                Cell::Value(Value::of(v, Unit::Megapascal).up())
            }),
        ]
    });
    let three = |a: &'static str, b: &'static str, c: &'static str| {
        vec![
            Column::words(value(a, []), 80),
            Column::figures(value(b, []), 50),
            Column::figures(value(c, []), 50),
        ]
    };
    vec![
        Block::Heading(plain("annex-setting")),
        Block::Table(Table {
            columns: three("annex-support", "annex-carries-most", "annex-with-person"),
            rows: rows.collect(),
        }),
        Block::Table(Table {
            columns: three("annex-edge", "annex-reaches", "annex-person-stress"),
            rows: overhangs.collect(),
        }),
    ]
}
