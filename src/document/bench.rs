//! The document of a plan: the bench pages, and the annex behind them.

use crate::plan::Plan;
use crate::words::{Language, Message, System};

use super::block::{Block, Document, DocumentPart, Reading, Section, Sharing};
use super::figure::{Figure, Lettering, Thing};
use super::group::{Group, groups};
use super::say::{self, plain, say};
use super::{
    annex, curve, day, dust, glance, helper, mark_out, moving, opening, repair, stop, straight,
};

/// Whether the annex is wanted.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Annex {
    /// The bench pages alone.
    #[default]
    Without,
    /// The annex behind the bench pages.
    With,
    /// The annex alone.
    Only,
}

/// Four characters that tell the plan from others.
#[must_use]
pub fn fingerprint(plan: &Plan) -> String {
    super::fingerprint::fingerprint(plan)
}

/// The document of a plan.
#[must_use]
pub fn document(plan: &Plan, annex: Annex) -> Document {
    let sections = || {
        let mut sections = Vec::new();
        if annex != Annex::Only {
            sections.extend(bench(plan));
        }
        if annex != Annex::Without {
            sections.extend(annex::sections(plan));
        }
        sections
    };
    let (sections, fingerprint) = rayon::join(sections, || fingerprint(plan));
    Document {
        title: plan.job.title.clone(),
        date: plan.job.date.clone(),
        system: System::from(plan.job.units),
        fingerprint,
        sections,
        stop: stop::sections(plan),
    }
}

/// The slab with the top, the numbers of its corners, the cuts and the waste.
#[must_use]
pub fn overview(plan: &Plan) -> Figure {
    let mut figure = glance::figure(plan);
    figure.extend(plan.top.corners.iter().map(|corner| {
        let inwards = (plan.top.balance - corner.edge).unit();
        let number = say::name(&corner.name);
        Thing::Towards(corner.edge, inwards, Lettering::Name, number)
    }));
    figure
}

/// The bench pages. Those that a helper reads are in the job's language.
fn bench(plan: &Plan) -> Vec<Section> {
    let page = |name: Message, blocks: Vec<Block>| Section {
        part: DocumentPart::Bench,
        reading: Reading::Bench,
        language: Language::English,
        name,
        foot: plain("bench-foot"),
        sharing: Sharing::Alone,
        blocks,
    };
    let translated = |section: Section| Section {
        language: plan.job.language,
        ..section
    };
    let mut pages = vec![translated(page(
        plain("bench-glance"),
        glance::blocks(plan),
    ))];
    if let Some(repair) = &plan.repair {
        pages.push(page(plain("bench-repair"), repair::blocks(plan, repair)));
    }
    pages.push(page(plain("bench-mark"), mark_out::blocks(plan)));
    pages.push(Section {
        sharing: Sharing::Floating,
        ..page(plain("bench-day-bring"), day::before(plan))
    });
    let shared = |(name, sharing, blocks)| Section {
        foot: plain("bench-foot-cut"),
        sharing,
        ..page(name, blocks)
    };
    pages.extend(cuts(plan).into_iter().map(shared));
    pages.push(translated(page(plain("bench-dust"), dust::blocks(plan))));
    pages.push(translated(Section {
        reading: Reading::Helper,
        ..page(plain("helper-name"), helper::blocks(plan))
    }));
    let last = |name, blocks| Section {
        sharing: Sharing::IfRoom,
        ..page(plain(name), blocks)
    };
    pages.push(last("bench-move", moving::blocks(plan)));
    pages.push(last("bench-day", day::blocks(plan)));
    pages
}

/// A section of cuts: its name, what it shares a page with, its blocks.
type OfCuts = (Message, Sharing, Vec<Block>);

/// The sections of the cuts. Straight cuts stand two by two, so that a page holds both, the second
/// before what is cut between them.
fn cuts(plan: &Plan) -> Vec<OfCuts> {
    let mut sections: Vec<OfCuts> = Vec::new();
    // Behind the straight cut that has no second yet.
    let mut second: Option<usize> = None;
    for group in groups(plan) {
        match group {
            Group::Straight(cut, holes) => {
                let late = second.is_some_and(|at| at < sections.len());
                let card = straight::card(plan, cut, &holes, late);
                let section = (plain("bench-straight"), Sharing::InPairs, vec![card]);
                let at = second.take();
                sections.insert(at.unwrap_or(sections.len()), section);
                second = at.is_none().then_some(sections.len());
            }
            Group::Curve(arcs, relief) => {
                let numbers: Vec<usize> = arcs.iter().map(|c| c.number).collect();
                let blocks = curve::blocks(plan, &arcs, &relief);
                sections.push((named("bench-curve", &numbers), Sharing::IfRoom, blocks));
            }
            Group::Opening(number, cuts) => {
                let name = say("bench-opening", [("number", number.into())]);
                let blocks = opening::blocks(plan, number, &cuts);
                sections.push((name, Sharing::IfRoom, blocks));
            }
        }
    }
    sections
}

fn named(id: &'static str, numbers: &[usize]) -> Message {
    use crate::words::Value;
    let cuts = numbers.iter().map(|n| Value::count(*n)).collect();
    say(id, [("cuts", Value::List(cuts))])
}
