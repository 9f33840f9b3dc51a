//! Short ways to make messages, values and cells.

use super::block::Cell;
use crate::units::MassRange;
use crate::words::{Arg, Message, Value};

/// A message with its values.
pub(super) fn say<const N: usize>(id: &'static str, args: [Arg; N]) -> Message {
    Message::new(id, args)
}

/// A message without values.
pub(super) fn plain(id: &'static str) -> Message {
    Message::plain(id)
}

/// A message as a value.
pub(super) fn value<const N: usize>(id: &'static str, args: [Arg; N]) -> Value {
    Value::message(id, args)
}

/// A message as a cell.
pub(super) fn cell<const N: usize>(id: &'static str, args: [Arg; N]) -> Cell {
    Cell::Value(value(id, args))
}

/// A name that the job's author or the planner gave.
pub(super) fn name(text: &str) -> Value {
    Value::name(text)
}

/// A list of names.
pub(super) fn names<'a>(all: impl IntoIterator<Item = &'a str>) -> Value {
    Value::List(all.into_iter().map(Value::name).collect())
}

/// A range of mass from low to high; one figure when they are the same.
pub(super) fn mass_range(mass: &MassRange) -> Value {
    if mass.low == mass.high {
        return Value::mass(mass.high).up();
    }
    value(
        "annex-range",
        [
            ("low", Value::mass(mass.low).down()),
            ("high", Value::mass(mass.high).up()),
        ],
    )
}
