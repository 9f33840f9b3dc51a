//! Which of the values that were assumed change the plan most: each is taken otherwise, by itself, and
//! the job planned again.

use std::num::NonZero;
use std::sync::Mutex;
use std::sync::atomic::{AtomicUsize, Ordering};

use toml::{Table, Value};

use super::files::JobText;
use crate::diag::{Clears, Finding};
use crate::job::keys::{self, Key, Kind, LeftOut, Plain};
use crate::job::{self, Assumption, Drawings, Job};
use crate::plan::Plan;
use crate::units::LengthUnit;
use crate::words::{Unit, Value as Written};

/// How much otherwise a number is taken, as a factor (judgement: as far as a guess is often off).
const OTHERWISE: f64 = 1.25;

/// Two that are made to each other, so that the one without the other is no likely mistake.
const PAIRED: [&str; 2] = ["disc.bore", "machine.seat"];

/// What one assumed value does to the plan.
#[derive(Clone, Debug)]
pub(super) struct Effect {
    /// The key.
    pub(super) key: String,
    /// What was assumed.
    pub(super) value: String,
    /// What was taken instead, and what that changes.
    pub(super) told: String,
    weight: f64,
}

/// The effects of the assumed values that have one, the greatest first. Plans the job once for each.
pub(super) fn effects(text: &JobText, job: &Job, plan: &Plan) -> Vec<Effect> {
    let Ok(table) = text.text.parse::<Table>() else {
        return Vec::new();
    };
    let next = AtomicUsize::new(0);
    let found = Mutex::new(Vec::new());
    let workers = std::thread::available_parallelism().map_or(1, NonZero::get);
    std::thread::scope(|scope| {
        for _ in 0..workers {
            scope.spawn(|| {
                while let Some(assumption) = job.assumed.get(next.fetch_add(1, Ordering::Relaxed)) {
                    let effect = effect((&table, &text.drawings), assumption, plan);
                    if let (Some(effect), Ok(mut found)) = (effect, found.lock()) {
                        found.push(effect);
                    }
                }
            });
        }
    });
    let mut effects = found.into_inner().unwrap_or_default();
    effects.sort_by(|a, b| {
        b.weight
            .total_cmp(&a.weight)
            .then_with(|| a.key.cmp(&b.key))
    });
    effects
}

/// What one value does when it is taken otherwise; nothing when that is not tried or changes nothing.
fn effect(
    (table, drawings): (&Table, &Drawings),
    assumption: &Assumption,
    plan: &Plan,
) -> Option<Effect> {
    let entry = keys::find(&assumption.key)?;
    if PAIRED.contains(&entry.path.as_str()) {
        return None;
    }
    let others = otherwise(entry.key, assumption, plan.job.units).into_iter();
    let tried = others.filter_map(|other| {
        let mut changed = table.clone();
        set(&mut changed, &assumption.key, other.clone())?;
        let text = toml::to_string(&changed).ok()?;
        // What another key then asks for is not this value's doing.
        let (job, _) = job::read_with(&text, drawings).ok()?;
        let (weight, told) = match Plan::of(&job) {
            Err(_) => (MISS, "the top no longer fits".to_owned()),
            Ok(after) => difference(&entry.path, plan, &after),
        };
        (weight > 0.0).then(|| Effect {
            key: assumption.key.clone(),
            value: assumption.value.clone(),
            told: format!("with {}: {told}", shown(entry.key, &other)),
            weight,
        })
    });
    tried.max_by(|a, b| a.weight.total_cmp(&b.weight))
}

/// A value as a person reads it.
fn shown(key: &Key, value: &Value) -> String {
    match (value, key.kind.quantity()) {
        (Value::Float(number), Some((quantity, _))) => quantity.show(*number),
        (Value::String(text), _) => text.clone(),
        (other, _) => other.to_string(),
    }
}

/// Other values that might as well be so: both ends of a range, or one value that is more.
fn otherwise(key: &Key, assumption: &Assumption, units: LengthUnit) -> Vec<Value> {
    let more = |assumed: f64| {
        let value = rounded(assumed * OTHERWISE);
        match key.kind {
            Kind::Length(limits) if limits.allow(value) => Some(length(value, units).into()),
            Kind::Mass(limits) if limits.allow(value) => Some(format!("{value} kg").into()),
            Kind::Quantity(_, limits) if limits.allow(value) => Some(value.into()),
            _ => None,
        }
    };
    let one: Option<Value> = match (&key.kind, key.left_out) {
        (Kind::Whole(_, most), _) => {
            let more = assumption.value.parse::<i64>().map(|count| count + 1).ok();
            more.filter(|more| more <= most).map(Value::from)
        }
        (_, LeftOut::Assumed(Plain::Number(assumed), _)) => more(assumed),
        (_, LeftOut::Assumed(Plain::Flag(flag), _)) => Some(Value::from(!flag)),
        (Kind::Word(_), _) => {
            let usual = key.line().parse::<Table>().ok();
            let usual = usual.and_then(|usual| usual.get(key.name).cloned());
            usual.filter(|usual| usual.as_str() != Some(&assumption.value))
        }
        (Kind::Quantity(quantity, _), LeftOut::Follows(_)) => {
            let read = |text: &str| quantity.parse(text).ok();
            if let Some((range, _)) = assumption.value.rsplit_once(", likely ") {
                let ends = range.split(" to ").filter_map(read);
                return ends.map(Value::from).collect();
            }
            read(&assumption.value).and_then(more)
        }
        _ => None,
    };
    one.into_iter().collect()
}

/// A length in the unit of the file.
fn length(mm: f64, units: LengthUnit) -> String {
    match units {
        LengthUnit::Millimetre => format!("{mm} mm"),
        LengthUnit::Inch => format!("{} in", rounded(mm / units.in_mm())),
    }
}

/// To three figures, as a person would write it.
fn rounded(value: f64) -> f64 {
    format!("{value:.2e}").parse().unwrap_or(value)
}

/// Sets a key such as `disc[0].kerf` in a job file.
fn set(table: &mut Table, key: &str, value: Value) -> Option<()> {
    let (section, name) = key.rsplit_once('.')?;
    let mut at = table;
    for part in section.split('.') {
        let (part, number) = match part.split_once('[') {
            Some((part, number)) => (part, number.trim_end_matches(']').parse::<usize>().ok()),
            None => (part, None),
        };
        let below = at.entry(part).or_insert_with(|| Value::Table(Table::new()));
        at = match number {
            Some(number) => below.as_array_mut()?.get_mut(number)?.as_table_mut()?,
            None => below.as_table_mut()?,
        };
    }
    at.insert(name.to_owned(), value);
    Some(())
}

/// A top that no longer fits outweighs everything; a stop that comes or goes, any figure.
const MISS: f64 = 1000.0;
const STOP: f64 = 100.0;
/// An open point that comes or goes counts as much as this share of a figure (judgement).
const POINT: f64 = 0.02;
/// A share of a figure that is told of; less is noise.
const TOLD: f64 = 0.01;

/// How much two plans differ when the value of a key is taken otherwise, and in what. How many warnings
/// there are says nothing to a person, and that the key clears an open point is told with that point.
fn difference(path: &str, before: &Plan, after: &Plan) -> (f64, String) {
    let writer = before.writer().english();
    let mut told: Vec<(f64, String)> = Vec::new();
    let mut say = |found: Vec<&Finding>, counts: f64, what: &str| {
        for finding in found {
            told.push((counts, format!("{what}: {}", writer.say(&finding.message))));
        }
    };
    say(only_in(&after.stops, &before.stops), STOP, "STOP");
    let gone = only_in(&before.stops, &after.stops);
    say(gone, STOP, "no longer a stop");
    say(only_in(&after.open, &before.open), POINT, "open");
    let mut closed = only_in(&before.open, &after.open);
    closed.retain(|f| !matches!(f.phrase.clears, Clears::Key(key) if key == path));
    say(closed, POINT, "no longer open");
    told.extend(figures(before, after));
    told.sort_by(|a, b| b.0.total_cmp(&a.0));
    let weight = told.iter().map(|(weight, _)| weight).sum();
    let told: Vec<String> = told.into_iter().map(|(_, words)| words).collect();
    (weight, told.join("\n        "))
}

/// The findings whose like is not among others.
fn only_in<'a>(these: &'a [Finding], others: &[Finding]) -> Vec<&'a Finding> {
    let is_new = |f: &&Finding| others.iter().all(|other| other.id() != f.id());
    these.iter().filter(is_new).collect()
}

/// The weights and times that differ, each with the share by which it does.
fn figures(before: &Plan, after: &Plan) -> Vec<(f64, String)> {
    let writer = before.writer().english();
    let of = |plan: &Plan| {
        let totals = &plan.totals;
        [
            (plan.top.mass.high.kg(), Unit::Mass, "the top at most"),
            (totals.sawing_minutes, Unit::Minute, "sawing"),
            (totals.set_up_minutes, Unit::Minute, "setting up"),
        ]
    };
    let pairs = of(before).into_iter().zip(of(after));
    let told = pairs.map(|((old, unit, what), (new, ..))| {
        let [a, b] = [old, new].map(|v| writer.write(&Written::of(v, unit).up()));
        (
            (new - old).abs() / old.abs().max(1.0),
            format!("{what} {a} → {b}"),
        )
    });
    told.filter(|(share, _)| *share >= TOLD).collect()
}
