//! What the stone weighs and how it is moved, for whoever asks before buying or carrying.

use crate::diag::Finding;
use crate::handle::HandledPiece;
use crate::handle::lifting::record::Lifter;
use crate::plan::{TopState, Weighing};
use crate::words::{Unit, Value};

use super::annex::{assumed, way};
use super::block::{Block, Column, Fact, Notice, Table};
use super::moving::{in_slings, verdict};
use super::say::{name, plain, say, value};

/// Which stones are weighed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Stones {
    /// The slab and the top of a job.
    SlabAndTop,
    /// One stone alone.
    One,
}

/// The blocks.
#[must_use]
pub fn weighing(weighing: &Weighing, stones: Stones) -> Vec<Block> {
    let mut blocks = vec![Block::Facts(heading(weighing, stones))];
    blocks.extend(findings("annex-stops", &weighing.stops, true));
    let handling = &weighing.handling;
    let count = match stones {
        Stones::SlabAndTop => 2,
        Stones::One => 1,
    };
    let pieces = [&handling.slab, &handling.top].into_iter().enumerate();
    for (index, piece) in pieces.take(count) {
        let thickest = weighing.thickness.most;
        blocks.push(Block::Heading(say(
            "weigh-stone",
            [("name", Value::term(piece.name.clone()))],
        )));
        blocks.push(Block::Facts(stone(weighing, piece, index, thickest)));
        if !piece.lift.lifters.is_empty() {
            blocks.push(Block::Table(lifters(piece)));
        }
    }
    let way = way::blocks(&handling.moving);
    if !way.is_empty() {
        blocks.push(Block::Heading(plain("annex-way")));
        blocks.extend(way);
    }
    blocks.extend(findings("annex-open", &weighing.open, false));
    blocks.extend(findings("annex-warnings", &weighing.warnings, false));
    let assumed = assumed(&weighing.assumed);
    if !assumed.is_empty() {
        blocks.push(Block::Heading(plain("annex-assumed")));
        blocks.extend(assumed);
    }
    blocks
}

fn findings(heading: &'static str, all: &[Finding], stop: bool) -> Vec<Block> {
    if all.is_empty() {
        return Vec::new();
    }
    let notice = |f: &Finding| Notice {
        harm: f.phrase.harm,
        stop,
        message: f.message.clone(),
        full: true,
        source: f.source.clone(),
    };
    vec![
        Block::Heading(plain(heading)),
        Block::Notices(all.iter().map(notice).collect()),
    ]
}

fn heading(weighing: &Weighing, stones: Stones) -> Vec<Fact> {
    let mut facts = Vec::new();
    if stones == Stones::SlabAndTop {
        facts.push(Fact::new("answer-job", name(&weighing.job.title)));
    }
    let density = |v: f64| Value::of(v, Unit::Density);
    let (t, d) = (weighing.thickness, weighing.stone.density);
    let three = |low, likely, high| {
        value(
            "annex-three",
            [("low", low), ("likely", likely), ("high", high)],
        )
    };
    facts.extend([
        Fact::new(
            "weigh-region",
            Value::term(weighing.job.region_name.clone()),
        ),
        Fact::new("annex-kind", name(&weighing.stone.name)),
        Fact::new(
            "annex-thickness",
            three(
                Value::fine(t.least),
                Value::fine(t.mean),
                Value::fine(t.most),
            ),
        ),
        Fact::new(
            "annex-density",
            three(density(d.low), density(d.likely), density(d.high)),
        ),
    ]);
    if let TopState::DoesNotFit(_) = weighing.top {
        facts.push(Fact::new("weigh-place", value("weigh-no-fit", [])));
    }
    facts
}

fn stone(weighing: &Weighing, piece: &HandledPiece, index: usize, thickest: f64) -> Vec<Fact> {
    let aids = &weighing.handling.moving.aids[index];
    let fall = &weighing.handling.moving.falls[index];
    let tilt = piece.tilts.iter().map(|t| t.lifted);
    let tilt = tilt
        .max_by(|a, b| a.kg().total_cmp(&b.kg()))
        .unwrap_or_default();
    let mass = |m| Value::mass(m).up();
    let mut facts = vec![
        Fact::new(
            "weigh-mass",
            value(
                "weigh-mass-is",
                [
                    ("high", mass(piece.mass.high)),
                    ("likely", Value::mass(piece.mass.likely)),
                    ("low", Value::mass(piece.mass.low).down()),
                ],
            ),
        ),
        Fact::new(
            "weigh-size",
            value(
                "weigh-size-is",
                [
                    ("length", Value::size(piece.length_mm)),
                    ("width", Value::size(piece.width_mm)),
                    ("thick", Value::fine(thickest)),
                    ("area", Value::of(weighing.area_mm2[index], Unit::Area)),
                ],
            ),
        ),
        Fact::new("weigh-balance", balance(piece)),
        Fact::new("bench-fact-lift", verdict(piece, &weighing.handling)),
        Fact::new("weigh-tilt", mass(tilt)),
        Fact::new(
            "bench-fact-trolley",
            value(
                "bench-trolley",
                [
                    ("rated", mass(aids.trolley.rated)),
                    ("push", mass(aids.trolley.level_push)),
                ],
            ),
        ),
        Fact::new(
            "bench-fact-vacuum",
            value("bench-rated", [("rated", mass(aids.vacuum.rated))]),
        ),
        Fact::new(
            "bench-fact-fall",
            value("bench-fall", [("clear", Value::size(fall.shadow_mm))]),
        ),
    ];
    facts.extend(aids.slings.as_ref().map(in_slings));
    facts
}

/// The balance point from the end and the side that meet at the base line's first end.
fn balance(piece: &HandledPiece) -> Value {
    let [first, second] = piece.base_line;
    let (along, off) = ((second - first).unit(), piece.balance - first);
    value(
        "weigh-balance-is",
        [
            ("end", Value::size(off.dot(along))),
            ("side", Value::size(off.dot(along.left()))),
        ],
    )
}

/// Where lifters stand and what each carries.
pub(super) fn lifters(piece: &HandledPiece) -> Table {
    let row = |l: &Lifter| {
        vec![
            Value::count(l.number).into(),
            Value::size(l.from_end_mm).into(),
            Value::size(l.from_side_mm).into(),
            Value::mass(l.share.mass()).up().into(),
        ]
    };
    Table {
        columns: vec![
            Column::figures(value("annex-person", []), 20),
            Column::figures(value("annex-from-end", []), 40),
            Column::figures(value("annex-from-side", []), 40),
            Column::figures(value("annex-carries", []), 40),
        ],
        rows: piece.lift.lifters.iter().map(row).collect(),
    }
}
