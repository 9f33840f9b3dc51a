//! What the blocks of a document say, for the checks.

use kerfwright::cut::Cut;
use kerfwright::document::block::{Block, Cell};
use kerfwright::document::figure::{Figure, Thing};
use kerfwright::document::{Annex, document};
use kerfwright::plan::Plan;
use kerfwright::words::{Message, Quantity, Value};

/// Every message of some blocks, those within others too.
pub(crate) fn messages(blocks: &[Block]) -> Vec<Message> {
    let mut found = Vec::new();
    for block in blocks {
        match block {
            Block::Facts(facts) => {
                for fact in facts {
                    within(&fact.value, &mut found);
                }
            }
            Block::Table(table) => {
                let cells = table.rows.iter().flatten();
                for cell in cells {
                    if let Cell::Value(value) = cell {
                        within(value, &mut found);
                    }
                }
            }
            Block::Text(m) | Block::Boxed(m) | Block::Title(_, m) | Block::Heading(m) => {
                within(&m.clone().into(), &mut found);
            }
            Block::Tiles(tiles) => found.extend(tiles.iter().map(|t| t.note.clone())),
            Block::Run(m, _) => within(&m.clone().into(), &mut found),
            Block::Steps(all) | Block::Blanks(all) => {
                for m in all {
                    within(&m.clone().into(), &mut found);
                }
            }
            Block::Beside(_, a, b) => found.extend([a, b].into_iter().flat_map(|b| messages(b))),
            Block::Card(card) => {
                within(&card.title.clone().into(), &mut found);
                found.extend(messages(&card.blocks));
            }
            _ => {}
        }
    }
    found
}

/// The marks of lines in some tables with their distances and their checks.
pub(crate) fn checked_marks(blocks: &[Block]) -> Vec<(String, [Quantity; 2])> {
    let tables = blocks.iter().filter_map(|block| match block {
        Block::Table(table) => Some(table),
        _ => None,
    });
    let message = |cell: &Cell| match cell {
        Cell::Value(Value::Message(message)) => Some((**message).clone()),
        _ => None,
    };
    let rows = tables.flat_map(|t| &t.rows);
    let pairs = rows.flat_map(|row| row.windows(2));
    let marks = pairs.filter_map(|pair| {
        let (mark, check) = (message(&pair[0])?, message(&pair[1])?);
        let told = mark.id.starts_with("bench-marked") && check.id == "bench-tape";
        match (
            mark.arg("mark")?,
            mark.arg("distance")?,
            check.arg("distance")?,
        ) {
            (Value::Name(name), Value::Quantity(at), Value::Quantity(check)) if told => {
                Some((name.clone(), [*at, *check]))
            }
            _ => None,
        }
    });
    marks.collect()
}

/// Every value that one holds, itself first.
fn walk<'a>(value: &'a Value, seen: &mut impl FnMut(&'a Value)) {
    seen(value);
    match value {
        Value::Message(message) => message.args.iter().for_each(|arg| walk(&arg.1, seen)),
        Value::List(all) => all.iter().for_each(|inner| walk(inner, seen)),
        _ => {}
    }
}

fn within(value: &Value, found: &mut Vec<Message>) {
    walk(value, &mut |one| {
        if let Value::Message(message) = one {
            found.push((**message).clone());
        }
    });
}

pub(crate) fn figures(blocks: &[Block]) -> Vec<&Figure> {
    let mut found = Vec::new();
    for block in blocks {
        match block {
            Block::Figure(figure) => found.push(&**figure),
            Block::Beside(_, a, b) => found.extend(figures(a).into_iter().chain(figures(b))),
            Block::Card(card) => found.extend(figures(&card.blocks)),
            _ => {}
        }
    }
    found
}

/// The cards of straight cuts with the cut that each is about.
pub(crate) fn cards(plan: &Plan) -> Vec<(&Cut, Vec<Block>)> {
    let sections = document(plan, Annex::Without).sections.into_iter();
    let cards = sections
        .flat_map(|s| s.blocks)
        .filter_map(|block| match block {
            Block::Card(card) => Some(card),
            _ => None,
        });
    let of = |number: &usize| plan.cuts.iter().find(|c| c.number == *number);
    cards
        .filter_map(|card| Some((of(card.numbers.last()?)?, card.blocks)))
        .collect()
}

/// The names that a value holds, those within messages too.
pub(crate) fn names(value: &Value, found: &mut Vec<String>) {
    walk(value, &mut |one| {
        if let Value::Name(name) = one {
            found.push(name.clone());
        }
    });
}

/// The numbers of the top's corners that a figure labels.
pub(crate) fn labelled(figure: &Figure) -> Vec<String> {
    let mut found = Vec::new();
    for thing in &figure.things {
        if let Thing::Towards(.., value @ Value::Message(message)) = thing
            && message.id == "bench-top-corner"
        {
            names(value, &mut found);
        }
    }
    found
}
