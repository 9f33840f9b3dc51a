//! What the sheet tells people about themselves: where the helper stands, what can be switched off and by whom, how
//! long hands may hold the machine, what is still to be settled.
//!
//! Every rule is worked out again here from the plan's cuts and pieces, over the examples, the golden jobs and
//! random jobs.

// Counts and grid coordinates are far below what the casts can hold.
#![allow(
    clippy::cast_possible_truncation,
    clippy::cast_precision_loss,
    clippy::cast_sign_loss
)]

mod job_texts;
#[path = "replay/mod.rs"]
mod replay;

use std::sync::OnceLock;

use kerfwright::cut::{Cut, SetOut};
use kerfwright::document::block::{Block, Document};
use kerfwright::document::figure::Thing;
use kerfwright::document::{Annex, document};
use kerfwright::geom::{Point, Vector};
use kerfwright::job::{DustMethod, Power, read};
use kerfwright::plan::Plan;
use kerfwright::render::{json, text};
use kerfwright::words::{Message, Value, Writer};

use job_texts::jobs;
use replay::random_job::RandomJob;

/// Half the strip in line with the disc, and half a person, mm.
const OUT_OF_LINE_MM: f64 = 175.0 + 230.0;

/// The plans of the examples, the golden jobs and some random jobs, each with a name.
fn plans() -> &'static [(String, Plan)] {
    static PLANS: OnceLock<Vec<(String, Plan)>> = OnceLock::new();
    PLANS.get_or_init(planned)
}

fn planned() -> Vec<(String, Plan)> {
    let mut texts = [jobs("examples"), jobs("tests/golden")].concat();
    texts.extend((0..36).map(|seed| (format!("seed {seed}"), RandomJob::of(seed).text())));
    let inside = |seed| {
        (
            format!("inside {seed}"),
            RandomJob::with_insides(seed).text(),
        )
    };
    texts.extend((0..12).map(inside));
    let plan = |(name, job): (String, String)| {
        let (job, _) = read(&job).ok()?;
        Some((name, Plan::of(&job).ok()?))
    };
    let plans: Vec<_> = texts.into_iter().filter_map(plan).collect();
    assert!(plans.len() > 50, "only {} plans", plans.len());
    plans
}

/// Every block of a document, those inside others too.
fn blocks(document: &Document) -> Vec<&Block> {
    fn inside<'a>(block: &'a Block, into: &mut Vec<&'a Block>) {
        into.push(block);
        if let Block::Beside(_, left, right) = block {
            left.iter().chain(right).for_each(|b| inside(b, into));
        }
    }
    let mut all = Vec::new();
    for block in document.sections.iter().flat_map(|s| &s.blocks) {
        inside(block, &mut all);
    }
    all
}

fn listed(value: Option<&Value>) -> Vec<usize> {
    let count = |v: &Value| match v {
        Value::Count(n) => Some(*n as usize),
        _ => None,
    };
    match value {
        Some(Value::List(all)) => all.iter().filter_map(count).collect(),
        _ => Vec::new(),
    }
}

/// The helper's places in a document, each with its cuts; the one place of all cuts has none of its own.
fn places(document: &Document) -> Vec<(Point, Vec<usize>)> {
    let mut places = Vec::new();
    for block in blocks(document) {
        let Block::Figure(figure) = block else {
            continue;
        };
        for thing in &figure.things {
            if let Thing::PersonAbove(at, _, Value::Message(word)) = thing
                && word.id.starts_with("helper-place-")
                && word.id != "helper-place-sawyer"
            {
                places.push((*at, listed(word.arg("cuts"))));
            }
        }
    }
    places
}

fn turning(document: &Document) -> Vec<usize> {
    let told = |message: &Message| listed(message.arg("cuts"));
    let mut cuts = Vec::new();
    for block in blocks(document) {
        if let Block::Ticks(ticks) = block {
            let turns = ticks.iter().filter(|t| t.text.id == "helper-place-turns");
            cuts.extend(turns.flat_map(|t| told(&t.text)));
        }
    }
    cuts
}

/// What is wrong with a place at a cut.
fn wrong(plan: &Plan, cut: &Cut, at: Point) -> Option<String> {
    let first = cut.strokes.first()?.depth;
    for stroke in cut.strokes.iter().filter(|s| s.depth <= first) {
        let off = (at - stroke.from)
            .cross(Vector::at_angle(stroke.heading))
            .abs();
        if off < OUT_OF_LINE_MM {
            return Some(format!("{off:.0} mm off the disc's line"));
        }
    }
    for piece in plan.pieces.iter().filter(|p| cut.frees.contains(&p.name)) {
        for ring in &piece.outline {
            let points: Vec<Point> = ring.iter().map(|s| s.at(0.5)).collect();
            let far = points.iter().map(|p| p.distance(at));
            let off = far.fold(f64::INFINITY, f64::min);
            if off < 300.0 {
                return Some(format!("{off:.0} mm from {}", piece.name));
            }
        }
    }
    None
}

#[test]
fn the_helper_stands_in_no_line_and_under_no_waste() {
    let (mut faults, mut placed) = (Vec::new(), 0);
    for (name, plan) in plans() {
        let document = document(plan, Annex::Without);
        let (places, turning) = (places(&document), turning(&document));
        let sawn: Vec<&Cut> = plan.cuts.iter().filter(|c| !c.strokes.is_empty()).collect();
        for cut in sawn {
            let n = cut.number;
            let here = places
                .iter()
                .filter(|(_, cuts)| cuts.is_empty() || cuts.contains(&n));
            let here: Vec<_> = here.collect();
            match (turning.contains(&n), here.as_slice()) {
                (true, _) => {}
                (false, [(at, _)]) => {
                    placed += 1;
                    let wrong = wrong(plan, cut, *at);
                    faults.extend(wrong.map(|w| format!("{name}, cut {n}: {w}")));
                }
                (false, here) => faults.push(format!("{name}, cut {n}: {} places", here.len())),
            }
        }
    }
    assert!(placed > 100, "only {placed} cuts with a place");
    assert!(faults.is_empty(), "{faults:#?}");
}

/// The places are in the plan, for whoever reads it as data, and the pages show no others.
#[test]
fn the_plan_carries_where_people_stand() {
    let mut faults = Vec::new();
    for (name, plan) in plans() {
        let document = document(plan, Annex::Without);
        let drawn: Vec<Point> = places(&document).into_iter().map(|(at, _)| at).collect();
        let planned: Vec<Point> = plan.stands.helper.iter().map(|s| s.at).collect();
        if !drawn.is_empty() && drawn != planned || turning(&document) != plan.stands.turning {
            faults.push(format!("{name}: {drawn:?} for {planned:?}"));
        }
        let data: serde_json::Value = serde_json::from_str(&json::plan(plan)).unwrap();
        let listed = |key: &str| data["stands"][key].as_array().map_or(0, Vec::len);
        let guided = plan
            .cuts
            .iter()
            .filter(|c| matches!(c.set_out, SetOut::Guide(_)));
        if listed("helper") != planned.len() || listed("sawyer") != guided.count() {
            faults.push(format!("{name}: {}", data["stands"]));
        }
        for sawyer in &plan.stands.sawyer {
            // Outside the stone, looking at it.
            let slab = plan.slab.outline.bounds();
            let ahead = sawyer.at + sawyer.facing * 400.0;
            let within = |p: Point| p.y > slab.min.y && p.y < slab.max.y;
            if within(sawyer.at) || !within(ahead) {
                faults.push(format!("{name}, cut {}: {:?}", sawyer.cut, sawyer.at));
            }
        }
    }
    assert!(faults.is_empty(), "{faults:#?}");
}

/// Every message of a value, the outer ones first.
fn messages<'a>(value: &'a Value, into: &mut Vec<&'a Message>) {
    match value {
        Value::Message(message) => {
            into.push(message);
            message.args.iter().for_each(|a| messages(&a.1, into));
        }
        Value::List(all) => all.iter().for_each(|v| messages(v, into)),
        _ => {}
    }
}

/// The messages of an id in the ticks, facts and tiles of a document's page.
fn said<'a>(document: &'a Document, id: &str) -> Vec<&'a Message> {
    let mut all = Vec::new();
    let mut of = |message: &'a Message| {
        all.push(message);
        message.args.iter().for_each(|a| messages(&a.1, &mut all));
    };
    for block in blocks(document) {
        match block {
            Block::Ticks(ticks) => ticks.iter().for_each(|t| of(&t.text)),
            Block::Tiles(tiles) => tiles.iter().for_each(|t| of(&t.note)),
            Block::Facts(facts) => facts.iter().for_each(|f| {
                if let Value::Message(message) = &f.value {
                    of(message);
                }
            }),
            _ => {}
        }
    }
    all.retain(|m| m.id == id);
    all
}

/// A printed figure of a message.
fn figure(message: &Message, arg: &str) -> Option<f64> {
    let printed = Writer::default().write(message.arg(arg)?);
    let digits = |c: &char| c.is_ascii_digit() || *c == '.';
    printed
        .chars()
        .take_while(digits)
        .collect::<String>()
        .parse()
        .ok()
}

/// From the whole minutes that are printed, by hand: how many share, and A(8) = value × √(minutes / allowed), within
/// what rounding to whole minutes does.
#[test]
fn minutes_shares_and_vibration_follow_from_one_another() {
    let (mut faults, mut shared) = (Vec::new(), 0);
    for (name, plan) in plans() {
        let document = document(plan, Annex::Without);
        let vibration = &plan.hazards.vibration;
        let allowed = said(&document, "bench-hands-allowed");
        let Some(allowed) = allowed.first().filter(|_| vibration.spells.is_empty()) else {
            continue;
        };
        let one = |id: &str, arg: &str| said(&document, id).first().and_then(|m| figure(m, arg));
        let (Some(job), Some(action)) = (figure(allowed, "job"), figure(allowed, "action")) else {
            continue;
        };
        let other = one("bench-hands-other", "other").unwrap_or(0.0);
        let of_tile = one("bench-tile-with-other", "other").unwrap_or(0.0);
        let count = one("bench-tile-shares", "count").unwrap_or(0.0);
        let days = (plan.totals.sawing_minutes / vibration.trigger_min)
            .round()
            .max(1.0);
        let day = if days > 1.0 {
            vibration.trigger_min.ceil()
        } else {
            job
        };
        let want = ((day + other) / action).ceil().max(1.0) * days;
        let a8 = vibration.values.action_m_s2 * ((day + other) / action).sqrt();
        if other.to_bits() != of_tile.to_bits() || count.to_bits() != want.to_bits() {
            faults.push(format!(
                "{name}: {job} + {other} min of {action}: {count} share, not {want}"
            ));
        }
        let off = (vibration.a8_day_m_s2 / a8 - 1.0).abs();
        if off > 1.5 / (day + other) + 1.0 / action {
            faults.push(format!("{name}: A(8) {} for {a8}", vibration.a8_day_m_s2));
        }
        shared += usize::from(count > 1.0);
    }
    assert!(shared > 5, "only {shared} jobs are shared");
    assert!(faults.is_empty(), "{faults:#?}");
}

#[test]
fn what_the_dust_page_leaves_open_stands_on_page_1() {
    let (mut faults, mut seen) = (Vec::new(), 0);
    for (name, plan) in plans() {
        let document = document(plan, Annex::Without);
        let open = |m: &&&Message| matches!(m.arg("state"), Some(Value::Case("open")));
        let controls = said(&document, "bench-control");
        let mut listed = Vec::new();
        for message in said(&document, "controls-open") {
            message
                .args
                .iter()
                .for_each(|a| messages(&a.1, &mut listed));
        }
        for control in controls.iter().filter(open) {
            let Some(Value::Message(what)) = control.arg("what") else {
                continue;
            };
            seen += 1;
            // An unfit mask is an open point or a stop of its own.
            if what.id != "control-mask" && !listed.contains(&&**what) {
                faults.push(format!("{name}: {}", what.id));
            }
        }
    }
    assert!(seen > 50, "only {seen} steps are open");
    assert!(faults.is_empty(), "{faults:#?}");
}

#[test]
fn the_fall_zone_and_the_grams_are_the_same_on_every_page() {
    let mut faults = Vec::new();
    for (name, plan) in plans() {
        let document = document(plan, Annex::Without);
        let of = |id: &str, arg: &str| -> Vec<f64> {
            let all = said(&document, id);
            all.iter().filter_map(|m| figure(m, arg)).collect()
        };
        let reach = of("helper-place-fall", "reach");
        let clear = of("bench-fall", "clear").into_iter().fold(0.0, f64::max);
        if reach.len() != 1 || reach[0].to_bits() != clear.to_bits() {
            faults.push(format!("{name}: {reach:?} for {clear}"));
        }
        let (tile, fact) = (of("bench-tile-of-dust", "mass"), of("bench-silica", "dust"));
        if tile != fact || tile.len() != 1 {
            faults.push(format!("{name}: {tile:?} g and {fact:?} g"));
        }
    }
    assert!(faults.is_empty(), "{faults:#?}");
}

/// The words of a text that name a lead to the mains; the plugs of ears are none.
fn of_mains(text: &str) -> Vec<String> {
    let text = text
        .to_lowercase()
        .replace("ear plugs", "")
        .replace("plugs under muffs", "");
    let words = text.split(|c: char| !c.is_alphabetic()).collect::<Vec<_>>();
    let names = ["plug", "plugs", "cable", "cables", "leads"];
    let found = words.iter().enumerate().filter(|(_, w)| names.contains(*w));
    found
        .map(|(i, _)| words[i.saturating_sub(4)..(i + 3).min(words.len())].join(" "))
        .collect()
}

#[test]
fn a_plug_or_lead_is_named_only_where_the_machine_or_the_extractor_has_one() {
    let (mut faults, mut with, mut without) = (Vec::new(), 0, 0);
    for (name, plan) in plans() {
        let mut plan = plan.clone();
        plan.job.language = kerfwright::words::Language::English;
        let found = of_mains(&text::document(&document(&plan, Annex::With)));
        if plan.kit.power == Power::Mains || plan.kit.dust_method == DustMethod::Shroud {
            with += usize::from(!found.is_empty());
        } else {
            without += 1;
            faults.extend(found.into_iter().map(|f| format!("{name}: {f}")));
        }
    }
    assert!(with > 0 && without > 5, "{with} with, {without} without");
    assert!(faults.is_empty(), "{faults:#?}");
}
