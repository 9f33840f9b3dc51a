//! The answer on one screen: does it fit, the cuts in order with guide and depth, the weights, stops and
//! open points.

use super::block::{Block, Cell, Column, Fact, Notice, Table, Tick};
use super::mark;
use super::say::{name, names, plain, value};
use crate::cut::{Cut, CutKind, SetOut};
use crate::diag::Finding;
use crate::plan::Plan;
use crate::words::{Unit, Value};

/// The blocks.
#[must_use]
pub fn answer(plan: &Plan) -> Vec<Block> {
    let mut blocks = vec![Block::Facts(facts(plan)), Block::Table(cuts(plan))];
    if !plan.stops.is_empty() {
        blocks.push(Block::Heading(plain("annex-stops")));
        blocks.push(Block::Notices(plan.stops.iter().map(stop).collect()));
    }
    if !plan.open.is_empty() {
        blocks.push(Block::Heading(plain("bench-glance-open")));
        let ticks = plan.open.iter().map(|f| Tick::new(f.message.clone()));
        blocks.push(Block::Ticks(ticks.collect()));
    }
    blocks
}

fn stop(finding: &Finding) -> Notice {
    Notice {
        harm: finding.phrase.harm,
        stop: true,
        message: finding.message.clone(),
        full: true,
        source: String::new(),
    }
}

fn facts(plan: &Plan) -> Vec<Fact> {
    let minutes = |m: f64| Value::of(m, Unit::Minute).up();
    let [length, width] = plan.top.size;
    vec![
        Fact::new("answer-job", name(&plan.job.title)),
        Fact::new(
            "answer-fits",
            value(
                "answer-fits-is",
                [
                    ("length", Value::size(length)),
                    ("width", Value::size(width)),
                    ("spare", Value::size(plan.placement.least_spare).down()),
                ],
            ),
        ),
        Fact::new(
            "answer-weighs",
            value(
                "answer-weighs-is",
                [
                    ("top", Value::mass(plan.top.mass.high).up()),
                    ("slab", Value::mass(plan.slab.mass.high).up()),
                ],
            ),
        ),
        Fact::new(
            "answer-time",
            value(
                "answer-time-is",
                [
                    ("stone", minutes(plan.totals.sawing_minutes)),
                    ("setting", minutes(plan.totals.set_up_minutes)),
                ],
            ),
        ),
    ]
}

fn cuts(plan: &Plan) -> Table {
    Table {
        columns: vec![
            Column::figures(value("bench-relief-cut", []), 10),
            Column::words(value("bench-opening-what", []), 40),
            Column::words(value("bench-fact-guide", []), 40),
            Column::figures(value("bench-depth", []), 20),
            Column::words(value("answer-frees", []), 30),
        ],
        rows: plan.cuts.iter().map(|c| row(plan, c)).collect(),
    }
}

fn row(plan: &Plan, cut: &Cut) -> Vec<Cell> {
    let id = match cut.kind {
        CutKind::Straight => "answer-straight",
        CutKind::Relief => "answer-relief",
        CutKind::Curve => "answer-curve",
        CutKind::Core => "answer-hole",
    };
    let heaviest = super::scene::freed(plan, cut).map(|p| p.mass.high);
    let mass = heaviest.max_by(|a, b| a.kg().total_cmp(&b.kg()));
    let frees = mass.map_or(Cell::Empty, |mass| {
        Cell::Value(value(
            "bench-waste-name",
            [
                ("name", names(cut.frees.iter().map(String::as_str))),
                ("mass", Value::mass(mass).up()),
            ],
        ))
    });
    vec![
        Cell::Value(cut.number.into()),
        Cell::Value(value(
            id,
            [
                ("edge", name(&cut.edge)),
                ("length", Value::size(cut.length)),
            ],
        )),
        Cell::Value(guide(cut)),
        Cell::Value(Value::tape(cut.full_depth).up()),
        frees,
    ]
}

/// Where the guide lies, or the arm's length.
fn guide(cut: &Cut) -> Value {
    match &cut.set_out {
        SetOut::Guide(s) => value(
            "answer-guide",
            [
                ("first", mark::taped(&s.guide.start)),
                ("from", name(&s.guide.start.tie.corner)),
                ("second", mark::taped(&s.guide.end)),
                ("to", name(&s.guide.end.tie.corner)),
            ],
        ),
        SetOut::Pivot(c) => value("bench-arm", [("length", mark::swung(c, c.arm))]),
        SetOut::Ordinates(o) => value("answer-chord", [("length", Value::tape(o.chord_length))]),
        SetOut::Centres(_) => Value::Nothing,
    }
}
