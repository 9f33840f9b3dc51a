//! Findings about setting the top down.

use super::sources::BEND_SOURCE;
use crate::diag::{Finding, Findings, Grade, Harm, Phrase};
use crate::handle::bending::judged::BendVerdict;
use crate::handle::bending::lean::{Leaning, Spot};
use crate::handle::bending::overhang::{Overhang, PERSON_N, ReachLimit};
use crate::handle::bending::span::Span;
use crate::handle::bending::support::{Bearing, BearingVerdict, Setting, Standing};
use crate::tables::documents as doc;
use crate::words::{Message, Unit, Value, Writer};

pub(crate) const TIPS: Phrase = Phrase::of_job("tips-off-supports")
    .harm(Harm::Maims)
    .key("support");
pub(crate) const RESTS: Phrase = Phrase::of_job("rests-poorly")
    .harm(Harm::Maims)
    .key("support");
pub(crate) const IDLE: Phrase = Phrase::of_job("support-lifts-off").key("support");

/// With a person on the top a support may carry this many times its limit before it is a stop (judgement: what
/// is sold for a load is made for about so much more).
const WITH_PERSON: f64 = 1.5;

/// One thing that is wrong with how the top rests: its message in short; in full under the same id and `-part`.
struct Fault {
    grade: Grade,
    message: Message,
}

/// How the top rests: that it does not lie still; a support that does nothing; and all that is too far, too
/// wide or too weak in one finding, as grave as the worst of it.
pub(super) fn set_down(setting: &Setting, strength_mpa: f64, found: &mut Findings) {
    if setting.stands != Standing::Balanced {
        let finding = Finding::of(&TIPS, [], "statics of a rigid plate");
        found.stops.push(finding);
    }
    let idle = setting.bearings.iter();
    let idle = idle.filter(|b| b.verdict == BearingVerdict::Idle);
    found.warnings.extend(idle.map(|bearing| {
        let support = [("support", Value::name(bearing.what.clone()))];
        Finding::of(
            &IDLE,
            support,
            "top on supports, rigid and bent, stiffness by length",
        )
    }));
    let mut faults = overhangs(&setting.overhangs, strength_mpa);
    faults.extend(setting.span.as_ref().and_then(span));
    faults.extend(
        setting
            .leaning
            .iter()
            .flat_map(|l| leant_on(l, &setting.bearings, strength_mpa)),
    );
    faults.extend(setting.bearings.iter().filter_map(overloaded));
    // The gravest first: what tips is read before what bends.
    faults.sort_by_key(|fault| fault.grade);
    let Some(grade) = faults.iter().map(|f| f.grade).min() else {
        return;
    };
    let mut what: Vec<Value> = Vec::new();
    let mut parts = Vec::new();
    for Fault { message, .. } in faults {
        let named = message.args.iter().filter(|a| a.0 == "support").cloned();
        let short = Value::message(message.id.clone(), named.collect::<Vec<_>>());
        if !what.contains(&short) {
            what.push(short);
        }
        parts.push(Value::from(Message {
            id: format!("{}-part", message.id).into(),
            ..message
        }));
    }
    let values = [("what", Value::List(what)), ("parts", Value::List(parts))];
    let source = format!(
        "{}; {BEND_SOURCE}; a person of 1 kN, judgement",
        doc::REACH_LIMITS.cite()
    );
    found.add(grade, Finding::of(&RESTS, values, source));
}

/// Beyond the stone's full strength a stop; above what is allowed of it to be looked at.
fn by_stress(stress_mpa: f64, strength_mpa: f64) -> Grade {
    if stress_mpa > strength_mpa {
        Grade::Stop
    } else {
        Grade::Open
    }
}

fn person() -> Value {
    Value::of(PERSON_N / 1000.0, Unit::Kilonewton)
}

/// A support over its limit: by the stone alone a stop; with a person by how far.
fn overloaded(bearing: &Bearing) -> Option<Fault> {
    let support = ("support", Value::name(bearing.what.clone()));
    match bearing.verdict {
        BearingVerdict::Over { limit } => {
            let values = vec![
                support,
                ("carried", Value::mass(bearing.share.mass()).up()),
                ("limit", Value::mass(limit).down()),
            ];
            Some(Fault {
                grade: Grade::Stop,
                message: Message::new("rests-over", values),
            })
        }
        BearingVerdict::Within { limit } if bearing.with_person > limit => {
            let values = vec![
                support,
                ("with_person", Value::mass(bearing.with_person).up()),
                ("limit", Value::mass(limit).down()),
                ("force", person()),
            ];
            let far = bearing.with_person.kg() > WITH_PERSON * limit.kg();
            Some(Fault {
                grade: if far { Grade::Stop } else { Grade::Open },
                message: Message::new("rests-over-person", values),
            })
        }
        BearingVerdict::NoLimitGiven | BearingVerdict::Within { .. } | BearingVerdict::Idle => None,
    }
}

/// The edges that reach too far, farthest first; those that reach as far and may as far in one part, with
/// the worst stress of them.
fn overhangs(all: &[Overhang], strength_mpa: f64) -> Vec<Fault> {
    let mut alike: Vec<Vec<&Overhang>> = Vec::new();
    let writer = Writer::default();
    for overhang in all.iter().filter(|o| o.is_over()) {
        let told = |o: &Overhang| {
            let reach = writer.write(&Value::size(o.overhang_mm).up());
            (reach, writer.write(&limit(o.limit)))
        };
        let same = |group: &&mut Vec<&Overhang>| {
            let first = group.first();
            first.is_some_and(|first| told(first) == told(overhang))
        };
        match alike.iter_mut().find(same) {
            Some(group) => group.push(overhang),
            None => alike.push(vec![overhang]),
        }
    }
    let faults = alike
        .iter()
        .filter_map(|group| overhang(group, strength_mpa));
    faults.collect()
}

fn overhang(alike: &[&Overhang], strength_mpa: f64) -> Option<Fault> {
    let first = alike.first()?;
    let edges = alike.iter().map(|o| named(&o.edge));
    let mut values = vec![
        ("edges", Value::List(edges.collect())),
        ("count", Value::count(alike.len())),
        ("reach", Value::size(first.overhang_mm).up()),
        ("limit", limit(first.limit)),
    ];
    let stresses = alike.iter().filter_map(|o| o.person_mpa.zip(o.verdict));
    let over = stresses.filter(|(_, verdict)| verdict.is_above());
    let worst = over.max_by(|a, b| a.0.total_cmp(&b.0));
    let (id, grade) = match worst {
        Some((mpa, verdict)) => {
            values.push(("times", times(verdict)));
            ("rests-overhang-person", by_stress(mpa, strength_mpa))
        }
        None => ("rests-overhang", Grade::Warning),
    };
    Some(Fault {
        grade,
        message: Message::new(id, values),
    })
}

/// An edge or a corner in the reader's language; another name as it stands.
pub(crate) fn named(edge: &str) -> Value {
    let (id, name) = match edge.split_once(' ') {
        Some(("corner", name)) => ("annex-corner-of-top", name),
        Some(("edge", name)) => ("bench-repair-edge", name),
        _ => return Value::term(edge.to_owned()),
    };
    Value::message(id, [("name", Value::name(name))])
}

/// How much of what is allowed, in per cent: what is above it never reads as all of it.
fn times(verdict: BendVerdict) -> Value {
    Value::of(100.0 * verdict.utilisation(), Unit::Percent).up()
}

/// How far something may reach; in words where nothing is published.
pub(crate) fn limit(limit: ReachLimit) -> Value {
    match limit {
        ReachLimit::UpTo { limit_mm } => Value::size(limit_mm),
        ReachLimit::NonePublished => Value::message("none-published", []),
    }
}

fn span(span: &Span) -> Option<Fault> {
    let values = [
        ("span", Value::size(span.span_mm).up()),
        ("limit", limit(span.limit)),
    ];
    span.is_over().then(|| Fault {
        grade: Grade::Warning,
        message: Message::new("rests-span", values),
    })
}

/// What a person leaning on the top does to it, where, and where the stone is stressed most by that.
fn leant_on(leaning: &Leaning, bearings: &[Bearing], strength_mpa: f64) -> Vec<Fault> {
    let place = |spot: &Option<Spot>| match spot {
        Some(spot) => told(spot, bearings),
        None => Value::message("lean-worst", []),
    };
    let tips = leaning.tips_at.map(|_| Fault {
        grade: Grade::Stop,
        message: Message::new(
            "rests-tips",
            [("force", person()), ("place", place(&leaning.tips_spot))],
        ),
    });
    let bends = leaning.verdict.is_above().then(|| {
        let mut values = vec![
            ("force", person()),
            ("place", place(&leaning.spot)),
            ("times", times(leaning.verdict)),
        ];
        let elsewhere = leaning.worst_spot != leaning.spot && leaning.worst_spot.is_some();
        let id = if elsewhere {
            values.push(("section", place(&leaning.worst_spot)));
            "rests-bends-elsewhere"
        } else {
            "rests-bends"
        };
        Fault {
            grade: by_stress(leaning.stress_mpa, strength_mpa),
            message: Message::new(id, values),
        }
    });
    tips.into_iter().chain(bends).collect()
}

/// A place on the top as the sheet names it.
fn told(spot: &Spot, bearings: &[Bearing]) -> Value {
    let support = |number: usize| {
        let what = number.checked_sub(1).and_then(|i| bearings.get(i));
        let what = what.map_or(String::new(), |b| b.what.clone());
        let args = [
            ("number", Value::count(number)),
            ("what", Value::name(what)),
        ];
        Value::message("bench-support-name", args)
    };
    match spot {
        Spot::Rail(rail) => {
            let cutouts = rail.cutouts.iter().map(|c| Value::name(c.clone()));
            let args = [
                ("rail", Value::term(rail.kind)),
                ("cutouts", Value::List(cutouts.collect())),
            ];
            Value::message("lean-rail", args)
        }
        Spot::Overhang(edge) => Value::message("lean-overhang", [("edge", named(edge))]),
        Spot::Between([first, second]) => {
            let args = [("first", support(*first)), ("second", support(*second))];
            Value::message("lean-between", args)
        }
        Spot::Over(number) => Value::message("lean-over", [("support", support(*number))]),
    }
}
