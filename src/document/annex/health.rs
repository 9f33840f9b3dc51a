//! Dust, vibration, noise, discs: the figures behind the bench page, and what studies measured.

use crate::document::block::{Block, Cell, Column, Fact, Table};
use crate::document::say::{name, plain, value};
use crate::plan::Plan;
use crate::tables::Source;
use crate::tables::region::RuleOrigin;
use crate::words::{Unit, Value};

pub(super) fn blocks(plan: &Plan) -> Vec<Block> {
    vec![
        Block::Facts(facts(plan)),
        Block::Heading(plain("safety-disc-heading")),
        Block::Table(discs(plan)),
        Block::Heading(plain("safety-measured-heading")),
        Block::Table(measured(plan)),
        Block::Text(plain("safety-grams")),
    ]
}

fn facts(plan: &Plan) -> Vec<Fact> {
    let (v, n) = (&plan.hazards.vibration, &plan.hazards.noise);
    let mut facts = vec![
        Fact::new("annex-limit", name(&plan.hazards.silica.limit_text)),
        Fact::new(
            "annex-vibration",
            value(
                "annex-vibration-is",
                [
                    ("reckoned", Value::of(v.reckoned_m_s2, Unit::Vibration)),
                    ("job", Value::of(v.trigger_min, Unit::Minute).up()),
                    ("day", Value::of(v.a8_day_m_s2, Unit::Vibration).up()),
                    ("action", Value::of(v.values.action_m_s2, Unit::Vibration)),
                    ("limit", Value::of(v.values.limit_m_s2, Unit::Vibration)),
                    ("source", cited(v.values.source, v.values.standing)),
                ],
            ),
        ),
    ];
    if let Some(day) = n.lex_8h_db {
        facts.push(Fact::new(
            "annex-noise",
            value(
                "annex-noise-is",
                [
                    ("level", Value::of(n.level_db, Unit::Decibel).up()),
                    ("day", Value::of(day, Unit::Decibel).up()),
                    ("hours", Value::of(n.hours, Unit::Hour).up()),
                    ("duty", Value::of(n.values.duty_db, Unit::Decibel)),
                    ("source", cited(n.values.source, n.values.standing)),
                ],
            ),
        ));
    }
    let masks = plan.hazards.respirator.suitable.iter();
    facts.push(Fact::new(
        "annex-masks",
        Value::List(
            masks
                .map(|m| {
                    value(
                        "annex-mask",
                        [
                            ("mask", Value::term(m.name)),
                            ("factor", Value::count(usize::from(m.apf))),
                        ],
                    )
                })
                .collect(),
        ),
    ));
    facts.push(Fact::new(
        "annex-authority",
        Value::term(plan.hazards.authority),
    ));
    facts
}

/// A document with its year, and whether it is another region's.
fn cited(source: &Source, standing: RuleOrigin) -> Value {
    let borrowed = match standing {
        RuleOrigin::Borrowed => value("safety-borrowed", []),
        RuleOrigin::Own => Value::Nothing,
    };
    let document = name(source.document);
    if source.year == 0 {
        return value(
            "annex-cited",
            [("document", document), ("borrowed", borrowed)],
        );
    }
    let year = Value::Name(source.year.to_string());
    value(
        "annex-cited-year",
        [
            ("document", document),
            ("year", year),
            ("borrowed", borrowed),
        ],
    )
}

fn discs(plan: &Plan) -> Table {
    let rows = plan.hazards.discs.iter().map(|d| {
        vec![
            Cell::Value(name(&d.name)),
            Value::size(d.diameter_mm).into(),
            Value::of(d.machine_rpm, Unit::Rpm).into(),
            Value::of(d.marked_rpm, Unit::Rpm).into(),
            Value::of(d.rim_speed_m_s, Unit::MetrePerSecond).up().into(),
        ]
    });
    Table {
        columns: vec![
            Column::words(value("safety-disc-disc", []), 60),
            Column::figures(value("safety-disc-diameter", []), 30),
            Column::figures(value("safety-disc-machine", []), 30),
            Column::figures(value("safety-disc-marked", []), 30),
            Column::figures(value("safety-disc-rim", []), 30),
        ],
        rows: rows.collect(),
    }
}

fn measured(plan: &Plan) -> Table {
    let rows = plan.hazards.measured.iter().map(|m| {
        vec![
            Cell::Value(Value::term(m.work)),
            Value::term(m.control).into(),
            name(m.found).into(),
            name(m.source.document).into(),
        ]
    });
    Table {
        columns: vec![
            Column::words(value("safety-measured-work", []), 60),
            Column::words(value("safety-measured-control", []), 35),
            Column::words(value("safety-measured-found", []), 35),
            Column::words(value("safety-measured-study", []), 50),
        ],
        rows: rows.collect(),
    }
}
