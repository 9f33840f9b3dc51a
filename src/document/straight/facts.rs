//! What stands beside a straight cut's drawing: its guide, how it is run, its bearers.

use crate::cut::straight::ends_at;
use crate::cut::{Bearers, Cut, EdgeMark, GuideSide, RunEnd, SetOut, StraightSetOut};
use crate::document::block::Fact;
use crate::document::mark;
use crate::document::say::{name, names, value};
use crate::document::scene;
use crate::plan::Plan;
use crate::words::Value;

/// The facts of a cut and of the holes drilled before it; `drawn` when the drawing dimensions both marks
/// of the guide.
pub(super) fn facts(plan: &Plan, cut: &Cut, holes: &[&Cut], drawn: bool) -> Vec<Fact> {
    let mut facts = Vec::new();
    let SetOut::Guide(set_out) = &cut.set_out else {
        return facts;
    };
    for hole in holes {
        facts.push(Fact::new("bench-fact-drill", drill(hole)));
    }
    let side = match set_out.guide_side {
        GuideSide::Kept => "bench-guide-kept",
        GuideSide::Waste => "bench-guide-waste",
    };
    let offset = [("offset", mark::offset(set_out))];
    facts.push(Fact::new("bench-fact-guide", value(side, offset)));
    if !drawn {
        facts.push(Fact::new("bench-fact-ends", ends(plan, cut, set_out)));
    }
    if set_out.set_ups.len() > 1 {
        facts.push(Fact::new("bench-fact-moves", moves(cut, set_out)));
    }
    facts.push(Fact::new("bench-fact-how", how(cut, set_out)));
    if let Some(bearers) = &cut.bearers {
        facts.push(Fact::new(
            "bench-fact-bearers",
            under(cut, set_out, bearers),
        ));
    }
    facts
}

fn drill(cut: &Cut) -> Value {
    let points = mark::points(cut);
    value(
        "bench-drill",
        [
            ("bit", Value::bit(cut.tool.width_mm())),
            ("marks", names(points.iter().map(|p| p.name.as_str()))),
        ],
    )
}

/// The bearers, from the end that can be taped from: from the first to the last when they lie evenly,
/// else each.
fn under(cut: &Cut, set_out: &StraightSetOut, bearers: &Bearers) -> Value {
    const EVEN_MM: f64 = 1.0;
    let mark = ("mark", end(cut, set_out, set_out.set_ups_from.is_leaving()));
    let off = ("off", off_line(bearers));
    let mut at = bearers.at.clone();
    if set_out.set_ups_from.is_leaving() {
        at = at.iter().rev().map(|mm| cut.length - mm).collect();
    }
    let steps: Vec<f64> = at.windows(2).map(|w| w[1] - w[0]).collect();
    if let (Some(first), Some(last), [step, more @ ..]) = (at.first(), at.last(), &steps[..])
        && !more.is_empty()
        && more.iter().all(|s| (s - step).abs() < EVEN_MM)
    {
        let args = [
            ("count", Value::count(at.len())),
            ("first", Value::size(*first)),
            ("last", Value::size(*last)),
            ("step", Value::size(*step)),
            mark,
            off,
        ];
        return value("bench-bearers-even", args);
    }
    let at = at.iter().map(|mm| Value::size(*mm)).collect();
    value("bench-bearers", [("at", Value::List(at)), mark, off])
}

/// How far the bearers lie off the line, on either side.
fn off_line(bearers: &Bearers) -> Value {
    let (kept, waste) = (bearers.kept_off, bearers.waste_off);
    if (kept - waste).abs() < 1.0 {
        return value("bench-bearers-off", [("off", Value::size(kept))]);
    }
    let args = [("kept", Value::size(kept)), ("waste", Value::size(waste))];
    value("bench-bearers-off-each", args)
}

/// An end of a cut as it is found when the cut is made: the mark there, where it stops, or else the
/// stone's own end.
fn end(cut: &Cut, set_out: &StraightSetOut, leaving: bool) -> Value {
    let (mark, letter) = if leaving {
        (&set_out.face.end, "b")
    } else {
        (&set_out.face.start, "a")
    };
    let named = |letter| Value::name(mark::mark_name(cut, letter));
    if ends_at(
        mark,
        set_out.sawn[usize::from(leaving)],
        cut.tool.width_mm(),
    ) {
        named(letter)
    } else if !leaving && set_out.set_ups_from == RunEnd::StopAtStart {
        named("s")
    } else {
        value("bench-stone-end", [("mark", named(letter))])
    }
}

/// The guide's marks, unless both are dimensioned in the drawing; where a mark or the corner that it was
/// taped from has gone, the line between them.
fn ends(plan: &Plan, cut: &Cut, set_out: &StraightSetOut) -> Value {
    let (start, end) = (&set_out.guide.start, &set_out.guide.end);
    let [first, second] = [(start, "c"), (end, "d")].map(|(end, letter)| {
        let gaps = [
            ("mark", Value::name(mark::mark_name(cut, letter))),
            ("distance", mark::taped(end)),
            ("corner", name(&end.tie.corner)),
            ("edge", name(&end.on)),
        ];
        value("bench-end", gaps)
    });
    let corner = |tied: &str| plan.slab.corners.iter().find(|c| c.name == tied);
    let there = |mark: &EdgeMark| {
        let corner = corner(&mark.tie.corner);
        mark.still_there && corner.is_some_and(|c| scene::still_there(plan, cut.number, c.at))
    };
    if there(start) && there(end) {
        return value("bench-ends", [("first", first), ("second", second)]);
    }
    let named = |letter| Value::name(mark::mark_name(cut, letter));
    let gaps = [("first", named("c")), ("second", named("d"))];
    value("bench-struck", gaps)
}

fn moves(cut: &Cut, set_out: &StraightSetOut) -> Value {
    let each = set_out.set_ups.iter().map(|s| {
        value(
            "bench-span",
            [("from", Value::tape(s.from)), ("to", Value::tape(s.to))],
        )
    });
    value(
        "bench-moves",
        [
            ("places", Value::List(each.collect())),
            (
                "clamp",
                Value::Case(if set_out.out_of_reach { "no" } else { "yes" }),
            ),
            ("mark", end(cut, set_out, set_out.set_ups_from.is_leaving())),
        ],
    )
}

fn how(cut: &Cut, set_out: &StraightSetOut) -> Value {
    let mark_of = |letter| Value::name(mark::mark_name(cut, letter));
    let mut parts = Vec::new();
    if set_out.far_end > 0.0 && set_out.stops.is_empty() {
        parts.push(value(
            "bench-how-far-end",
            [
                ("length", Value::size(set_out.far_end)),
                ("last", end(cut, set_out, true)),
            ],
        ));
    }
    for (stop, letter) in set_out.stops.iter().zip(["s", "t"]) {
        let id = if stop.into_hole {
            "bench-how-stop-hole"
        } else {
            "bench-how-stop"
        };
        let args = [
            ("mark", mark_of(letter)),
            ("short", Value::tape(stop.centre_short).up()),
        ];
        parts.push(value(id, args));
    }
    if cut.allowance > 0.0 {
        parts.push(value(
            "bench-how-allowance",
            [("left", Value::fine(cut.allowance))],
        ));
    }
    value("bench-how", [("parts", joined(parts))])
}

/// Sentences one after another.
fn joined(parts: Vec<Value>) -> Value {
    let mut parts = parts.into_iter();
    let first = parts.next().unwrap_or(Value::Nothing);
    parts.fold(first, |a, b| value("bench-sentences", [("a", a), ("b", b)]))
}
