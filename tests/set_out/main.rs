//! Marks, tapes and cards as a person follows them at the stone: what is measured from is there when it is
//! measured from.

// Counts and grid coordinates are far below what the casts can hold.
#![allow(
    clippy::cast_possible_truncation,
    clippy::cast_precision_loss,
    clippy::cast_sign_loss
)]

mod bearers;
#[path = "../job_texts/mod.rs"]
mod job_texts;
mod openings;
mod reading;
#[path = "../replay/mod.rs"]
mod replay;

use std::sync::LazyLock;

use kerfwright::cut::{Cut, EdgeMark, SetOut, Tie};
use kerfwright::document::figure::Thing;
use kerfwright::document::{Annex, document};
use kerfwright::geom::{Point, Vector};
use kerfwright::job::read;
use kerfwright::plan::Plan;
use kerfwright::words::{Message, Quantity, System, Value};

use job_texts::jobs;
use reading::{cards, checked_marks, figures, labelled, messages, names};
use replay::random_job::RandomJob;

/// Between a mark on the line to keep and the stone beside it: an allowance and a kerf at most, mm.
const BESIDE_MM: f64 = 10.0;

fn planned(text: &str) -> Option<Plan> {
    let (job, _) = read(text).ok()?;
    Plan::of(&job).ok()
}

/// The plans of the examples, of the golden jobs and of random jobs, by name.
static PLANS: LazyLock<Vec<(String, Plan)>> = LazyLock::new(plans);

fn plans() -> Vec<(String, Plan)> {
    let mut texts = [jobs("examples"), jobs("tests/golden")].concat();
    for seed in 0..24 {
        texts.push((format!("seed {seed}"), RandomJob::of(seed).text()));
        texts.push((
            format!("inside {seed}"),
            RandomJob::with_insides(seed).text(),
        ));
    }
    let plans = texts
        .into_iter()
        .filter_map(|(name, text)| Some((name, planned(&text)?)));
    let plans: Vec<_> = plans.collect();
    assert!(plans.len() > 40, "only {} jobs are planned", plans.len());
    plans
}

/// Whether stone stands at a point before a cut: the top, or waste that this cut or a later one frees.
fn stone_at(plan: &Plan, cut: &Cut, at: Point) -> bool {
    let near = |ring: &[kerfwright::geom::Seg]| ring.iter().any(|s| s.distance(at) < BESIDE_MM);
    let mut waste = plan.pieces.iter().filter(|p| p.after_cut >= cut.number);
    near(plan.top.outline.segs()) || waste.any(|p| p.outline.iter().any(|r| near(r)))
}

/// The marks of a straight cut by their letters.
fn marks(cut: &Cut) -> Vec<(String, &EdgeMark)> {
    let SetOut::Guide(s) = &cut.set_out else {
        return Vec::new();
    };
    let all = [
        ("a", &s.face.start),
        ("b", &s.face.end),
        ("c", &s.guide.start),
        ("d", &s.guide.end),
    ];
    all.map(|(letter, mark)| (format!("{}{letter}", cut.number), mark))
        .to_vec()
}

/// A tape on a card begins at a mark or a corner on stone that is still there, or says that the stone's own
/// end is meant.
#[test]
fn a_card_measures_from_what_is_still_there() {
    let from_marks = [
        "bench-moves",
        "bench-bearers",
        "bench-bearers-even",
        "bench-how-far-end",
    ];
    let (mut faults, mut seen, mut ends) = (Vec::new(), 0, 0);
    for (name, plan) in PLANS.iter() {
        for (cut, blocks) in cards(plan) {
            for message in messages(&blocks) {
                ends += usize::from(message.id == "bench-stone-end");
                if !from_marks.contains(&&*message.id) {
                    continue;
                }
                let gap = message.arg("mark").or_else(|| message.arg("last"));
                let Some(Value::Name(mark)) = gap else {
                    continue;
                };
                seen += 1;
                let known = marks(cut).into_iter().find(|(m, _)| m == mark);
                if known.is_some_and(|(_, m)| !stone_at(plan, cut, m.at)) {
                    faults.push(format!(
                        "{name}, cut {}: {} from {mark}",
                        cut.number, message.id
                    ));
                }
            }
            for thing in figures(&blocks).iter().flat_map(|f| &f.things) {
                if let Thing::Dimension(from, to, ..) = thing
                    && !(stone_at(plan, cut, *from) && stone_at(plan, cut, *to))
                {
                    faults.push(format!(
                        "{name}, cut {}: from {from:?} to {to:?}",
                        cut.number
                    ));
                }
            }
        }
    }
    assert!(faults.is_empty(), "{}", faults.join("\n"));
    assert!(
        seen > 100 && ends > 5,
        "{seen} tapes, {ends} from the stone's end"
    );
}

/// The lines that are struck for a straight cut, the kept stone to their left.
fn struck(plan: &Plan) -> impl Iterator<Item = (&Cut, [&EdgeMark; 2])> {
    plan.cuts.iter().flat_map(|cut| {
        let lines = match &cut.set_out {
            SetOut::Guide(s) => vec![&s.face, &s.guide],
            _ => Vec::new(),
        };
        lines.into_iter().map(move |l| (cut, [&l.start, &l.end]))
    })
}

fn corner(plan: &Plan, name: &str) -> Point {
    let known = plan.slab.corners.iter().find(|c| c.name == name);
    known.unwrap_or_else(|| panic!("no corner {name}")).at
}

/// The figure of a quantity as it is printed, in mm.
fn printed(quantity: &Quantity, system: System) -> f64 {
    let figure = quantity.figure(system);
    let mut parts = figure
        .split('\u{a0}')
        .map(|part| match part.split_once('/') {
            Some((over, under)) => over.parse::<f64>().unwrap() / under.parse::<f64>().unwrap(),
            None => part.parse().unwrap(),
        });
    let whole: f64 = parts.by_ref().sum();
    match system {
        System::Metric => whole,
        System::Inch => whole * 25.4,
    }
}

/// A mark as it is printed never lies in the kept stone, nor more than half a millimetre off, or in inches a whole one,
/// what one reading of a tape may be wrong by.
#[test]
fn a_marks_figure_never_moves_a_line_into_kept_stone() {
    let (mut faults, mut seen) = (Vec::new(), 0);
    for (name, plan) in PLANS.iter() {
        let document = document(plan, Annex::Without);
        let messages: Vec<Message> = { &document.sections }
            .iter()
            .flat_map(|s| messages(&s.blocks))
            .collect();
        for (cut, ends) in struck(plan) {
            let along = (ends[1].at - ends[0].at).unit();
            for (i, mark) in ends.into_iter().enumerate() {
                let letters = if mark_is_face(cut, mark) {
                    ["a", "b"]
                } else {
                    ["c", "d"]
                };
                let named = format!("{}{}", cut.number, letters[i]);
                let told = messages.iter().filter(|m| {
                    ["bench-marked", "bench-marked-from", "bench-end"].contains(&&*m.id)
                        && m.arg("mark") == Some(&Value::Name(named.clone()))
                });
                for message in told {
                    let Some(Value::Quantity(quantity)) = message.arg("distance") else {
                        panic!("{name}: {named} has no distance");
                    };
                    let way = mark.at - corner(plan, &mark.tie.corner);
                    let into_kept = way.dot(along.left()).signum();
                    for (system, step) in [(System::Metric, 0.5), (System::Inch, 1.0)] {
                        seen += 1;
                        let off = printed(quantity, system) - mark.tie.distance;
                        if off.abs() > step || off * into_kept > 1e-3 {
                            faults.push(format!("{name}: {named} is told {off:.3} mm off"));
                        }
                    }
                }
            }
        }
    }
    assert!(faults.is_empty(), "{}", faults.join("\n"));
    assert!(seen > 400, "{seen} figures");
}

fn mark_is_face(cut: &Cut, mark: &EdgeMark) -> bool {
    let SetOut::Guide(s) = &cut.set_out else {
        return false;
    };
    [&s.face.start, &s.face.end]
        .iter()
        .any(|m| std::ptr::eq(*m, mark))
}

/// How much of a small move of a point a tape from a corner shows.
fn shown(plan: &Plan, tie: &Tie, at: Point, moved: Vector) -> f64 {
    let to = corner(plan, &tie.corner);
    let with = |p: Point| to.distance(p);
    (with(at + moved * 1e-3) - with(at)).abs() / 1e-3
}

/// A check of a mark on an edge changes by at least half of what the mark is off along it; one of the checks
/// of a point by at least half of what a misread tape moves it, where any corner shows that.
#[test]
fn a_check_moves_at_least_half_as_much_as_its_mark() {
    let (mut faults, mut seen, mut hidden) = (Vec::new(), 0, 0);
    for (name, plan) in PLANS.iter() {
        for (cut, ends) in struck(plan) {
            for mark in ends {
                let way = mark.at - corner(plan, &mark.tie.corner);
                if way.length() < 1.0 {
                    continue;
                }
                seen += 1;
                let part = shown(plan, &mark.check, mark.at, way.unit());
                let best = best(plan, &[&mark.tie], mark.at, way.unit());
                if part < 0.5 && part < best - 1e-6 || mark.check.corner == mark.tie.corner {
                    faults.push(format!(
                        "{name}, cut {}: {mark:?} shows {part:.2}",
                        cut.number
                    ));
                }
            }
        }
        for (what, at, ties) in points(plan) {
            if ties.iter().any(|t| t.distance < 1.0) {
                continue;
            }
            let off = |other: &Tie| (at - corner(plan, &other.corner)).unit().left();
            for other in [&ties[1], &ties[0]] {
                seen += 1;
                let part = ties[2..].iter().map(|t| shown(plan, t, at, off(other)));
                let part = part.fold(0.0, f64::max);
                let best = best(plan, &[&ties[0], &ties[1]], at, off(other));
                hidden += usize::from(best < 0.5);
                if part < 0.5 && part < best - 1e-6 && ties.len() < 4 {
                    faults.push(format!("{name}, {what}: {part:.2} of {ties:?}"));
                }
            }
        }
    }
    assert!(faults.is_empty(), "{}", faults.join("\n"));
    assert!(
        seen > 400 && hidden * 20 < seen,
        "{seen} checks, {hidden} hidden"
    );
}

/// The most of a small move of a point that a tape from a sharp corner other than some shows.
fn best(plan: &Plan, other_than: &[&Tie], at: Point, moved: Vector) -> f64 {
    let sharp = plan
        .slab
        .corners
        .iter()
        .filter(|c| c.at.distance(c.edge) < 1e-6);
    let others = sharp.filter(|c| other_than.iter().all(|t| t.corner != c.name));
    let tie = |name: &str| Tie {
        corner: name.to_owned(),
        distance: 0.0,
    };
    others
        .map(|c| shown(plan, &tie(&c.name), at, moved))
        .fold(0.0, f64::max)
}

/// The pivots with their ties.
fn points(plan: &Plan) -> Vec<(String, Point, Vec<Tie>)> {
    let mut found = Vec::new();
    for cut in &plan.cuts {
        if let SetOut::Pivot(curve) = &cut.set_out {
            let pivot = format!("pivot of cut {}", cut.number);
            found.push((pivot, curve.pivot, curve.pivot_ties.clone()));
        }
    }
    found
}

/// Every station is taped from a struck one, straight, over a quarter circle at most; and the tape to a struck
/// one shows at least half of what it is off along the curve, where one from any corner does.
#[test]
fn a_stations_tape_stands_over_a_quarter_circle_at_most() {
    let (mut faults, mut seen) = (Vec::new(), 0);
    for (name, plan) in PLANS.iter() {
        for curve in plan.cuts.iter().filter_map(|c| c.set_out.curve()) {
            for station in &curve.stations {
                seen += 1;
                let from = curve
                    .struck
                    .iter()
                    .find(|s| s.station == station.taped_from);
                let told = from.map_or(f64::NAN, |s| s.at.distance(station.touch) - station.taped);
                let across = curve.pivot.distance(station.touch) * std::f64::consts::SQRT_2;
                if told.is_nan() || told.abs() > 1e-6 || station.taped > across + 1e-6 {
                    faults.push(format!("{name}: {station:?}"));
                }
            }
            for s in &curve.struck {
                let way = (s.at - curve.pivot).unit().left();
                let part = shown(plan, &s.tie, s.at, way);
                if part < 0.5 && part < best(plan, &[], s.at, way) * 0.8 {
                    faults.push(format!("{name}: {s:?} shows {part:.2}"));
                }
            }
        }
    }
    assert!(faults.is_empty(), "{}", faults.join("\n"));
    assert!(seen > 400, "{seen} stations");
}

/// A corner of the top that a title or a proof names has its number in a drawing of the page on which every
/// line is struck.
#[test]
fn every_corner_that_is_named_is_numbered_where_lines_are_struck() {
    let (mut faults, mut seen) = (Vec::new(), 0);
    for (name, plan) in PLANS.iter() {
        let sections = document(plan, Annex::Without).sections;
        let page = sections.iter().find(|s| s.name.id == "bench-mark");
        let page = page.expect("lines are struck");
        let known: Vec<String> = figures(&page.blocks)
            .into_iter()
            .flat_map(labelled)
            .collect();
        for message in sections.iter().flat_map(|s| messages(&s.blocks)) {
            let gap = match &*message.id {
                "bench-straight-title" | "bench-relief-title" => "edge",
                "bench-curve-title" => "corners",
                "bench-mark-both" | "bench-mark-along" => "corner",
                _ => continue,
            };
            let mut named = Vec::new();
            names(message.arg(gap).expect("a gap"), &mut named);
            let corners = named.iter().flat_map(|n| n.split([',', '-', ' ']));
            // A circle has none.
            for corner in corners.filter(|c| c.parse::<usize>().is_ok()) {
                seen += 1;
                if !known.iter().any(|k| k == corner) {
                    faults.push(format!("{name}: corner {corner} of {}", message.id));
                }
            }
        }
    }
    assert!(faults.is_empty(), "{}", faults.join("\n"));
    assert!(seen > 200, "{seen} corners");
}

/// How thick the stone is stands on the first page and with every cut's depths.
#[test]
fn the_stones_thickness_stands_on_page_one_and_with_every_cut() {
    for (name, plan) in PLANS.iter() {
        let sections = document(plan, Annex::Without).sections;
        for (i, section) in sections.iter().enumerate() {
            let told = messages(&section.blocks);
            let thick = told.iter().any(|m| m.arg("thick").is_some());
            let wanted = i == 0 || section.foot.id == "bench-foot-cut";
            assert!(!wanted || thick, "{name}: {:?}", section.name);
        }
    }
}

/// A mark and its check from the other end of the edge, as they are printed, add up to the edge as it is measured to
/// half a millimetre, the least that is printed.
#[test]
fn a_mark_and_its_check_add_up_to_their_edge() {
    let (mut faults, mut seen) = (Vec::new(), 0);
    for (name, plan) in PLANS.iter() {
        let document = document(plan, Annex::Without);
        let told: Vec<(String, [Quantity; 2])> = { &document.sections }
            .iter()
            .flat_map(|s| checked_marks(&s.blocks))
            .collect();
        for (cut, [start, end]) in struck(plan).filter(|(c, ends)| mark_is_face(c, ends[0])) {
            for (mark, letter) in [(start, "a"), (end, "b")] {
                let ends = [&mark.tie, &mark.check].map(|tie| corner(plan, &tie.corner));
                let edge = ends[0].distance(ends[1]);
                if (mark.tie.distance + mark.check.distance - edge).abs() > 1e-6 {
                    continue;
                }
                let named = format!("{}{letter}", cut.number);
                for (_, both) in told.iter().filter(|(of, _)| *of == named) {
                    let both = both.each_ref().map(|q| printed(q, System::Metric));
                    seen += 1;
                    if (both[0] + both[1] - edge).abs() > 0.5 {
                        faults.push(format!("{name}: {named} {both:?} on {edge}"));
                    }
                }
            }
        }
    }
    assert!(faults.is_empty(), "{}", faults.join("\n"));
    assert!(seen > 100, "only {seen} marks");
}
