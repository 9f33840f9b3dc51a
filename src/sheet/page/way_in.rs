//! The way in, aids, and the stone standing on edge.
//!
//! | file | part of the page |
//! |---|---|
//! | [`mod@self`] | the page, and the table of places |
//! | `drawing` | the tightest corner seen from above |
//! | [`numbers`] | what each aid needs, and what knocks a standing stone over |

mod drawing;
pub mod numbers;

use crate::diag::Finding;
use crate::handle::lift::Verdict;
use crate::handle::route::{Attempt, Fit, Measure, Passage, Walk, WayIn};
use crate::job::{Aid, Opening};
use crate::plan::Plan;
use crate::sheet::book::{Book, Part};
use crate::sheet::figure::Figures;
use crate::sheet::flow::{Block, Grade, Scale};
use crate::sheet::page::glance::sentence;
use crate::sheet::table::{Heading, Table, Width};

/// Height of the drawing, mm.
const DRAWING_MM: f64 = 88.0;
/// Name of the page.
const NAME: &str = "Way in and standing on edge";
/// How the findings of the way in are called.
const FINDINGS: &str = "way-in-";

/// Adds the page when there is a way in to tell of, or the stone is more than hands may lift.
pub fn add(book: &mut Book<'_>) {
    let plan = book.plan;
    let route = plan.handling.moving.route.as_ref();
    if route.is_none() && !wants_an_aid(plan) {
        return;
    }
    let mut column = book.column(Scale::BENCH);
    column.place(&Block::Heading(NAME.into()));
    if let Some((passage, corner)) = route.and_then(|r| drawing::tightest(&r.top)) {
        let area = column.reserve(DRAWING_MM);
        let turn = drawing::Turn {
            passage,
            corner,
            stone: &plan.handling.top,
            thickness_mm: plan.slab.thickness.most,
        };
        column.items.extend(turn.draw(book.figures, area));
        column.place(&Block::Note(turn.caption(book.figures)));
    }
    let mut desk = book.column(Scale::DESK);
    desk.y = column.y;
    desk.items = column.items;
    book.fill(NAME, desk, &parts(plan, book.figures));
}

/// Whether the job names an aid, or a stone in it is no lift for hands.
fn wants_an_aid(plan: &Plan) -> bool {
    let handling = &plan.handling;
    let beyond_hands = |v: Verdict| !matches!(v, Verdict::Within { .. });
    handling.moving.aid != Aid::None
        || beyond_hands(handling.slab.lift.verdict)
        || beyond_hands(handling.top.lift.verdict)
}

fn parts(plan: &Plan, figures: Figures) -> Vec<Part> {
    let mut parts: Vec<Part> = Vec::new();
    match &plan.handling.moving.route {
        Some(way) => {
            parts.push(place_table(way, figures).into());
            parts.push(Block::Note(reckoned(way, figures)).into());
            parts.extend(notices(plan));
        }
        None => parts.push(Block::Paragraph(not_given(plan, figures)).into()),
    }
    parts.push(Block::Subheading("Standing on edge".into()).into());
    parts.push(numbers::fall_table(plan, figures).into());
    parts.push(Block::Note(numbers::FALL_WORDS.into()).into());
    if wants_an_aid(plan) {
        parts.push(Block::Subheading("What each aid needs".into()).into());
        parts.push(numbers::aid_table(plan, figures).into());
        parts.push(Block::Note(numbers::AID_WORDS.into()).into());
    }
    parts
}

/// The findings about the way in, in full: they are needed on the way.
fn notices(plan: &Plan) -> impl Iterator<Item = Part> {
    let of = |grade: Grade, found: &[Finding]| -> Vec<Part> {
        let found = found.iter().filter(|f| f.id.starts_with(FINDINGS));
        let notice = |f: &Finding| {
            let lines = vec![f.detail.clone()];
            Block::Notice(grade, sentence(&f.title), lines).into()
        };
        found.map(notice).collect()
    };
    let stops = of(Grade::Stop, &plan.stops);
    stops.into_iter().chain(of(Grade::Caution, &plan.cautions))
}

fn not_given(plan: &Plan, figures: Figures) -> String {
    let top = &plan.handling.top;
    format!(
        "The job file names no door and no corner, so nothing is known of the way in. Before you buy, \
         carry a batten of {} and a board {} high through every door and round every corner.",
        figures.size(top.length_mm.ceil()),
        figures.size(top.width_mm.ceil())
    )
}

fn place_table(way: &WayIn, figures: Figures) -> Table {
    let rows = way.top.passages.iter().zip(&way.slab.passages);
    let rows = rows.map(|(top, slab)| {
        let [on_edge, upright, flat] = &top.attempts;
        vec![
            format!("{}\n{}", top.at.what, sizes(top.at.opening, figures)),
            outcome(on_edge, figures),
            outcome(upright, figures),
            outcome(flat, figures),
            outcome(slab.on_edge(), figures),
        ]
    });
    Table {
        headings: vec![
            Heading::words("Place", Width::Part(1.5)),
            Heading::words("Top on edge", Width::Part(1.0)),
            Heading::words("Top upright", Width::Part(1.0)),
            Heading::words("Top flat\n(not advised)", Width::Part(1.0)),
            Heading::words("Slab on edge", Width::Part(1.0)),
        ],
        rows: rows.collect(),
        style: Scale::DESK.body,
    }
}

/// The clear sizes of a place.
#[must_use]
pub fn sizes(opening: Opening, figures: Figures) -> String {
    let bare = |mm| figures.size_bare(mm);
    let unit = figures.unit();
    match opening {
        Opening::Door {
            width_mm,
            height_mm,
        } => format!("{} × {} {unit} high", bare(width_mm), bare(height_mm)),
        Opening::Corner {
            from_mm,
            to_mm,
            height_mm,
        } => format!(
            "from {} into {}, {} {unit} high",
            bare(from_mm),
            bare(to_mm),
            bare(height_mm)
        ),
    }
}

/// How a pose fares: `42 mm to spare`, `NO: 18 mm too long`. What is to spare is never rounded up.
#[must_use]
pub fn outcome(attempt: &Attempt, figures: Figures) -> String {
    match attempt.fit {
        Fit::Clears(spare) => format!("{} to spare", figures.size(spare.floor())),
        Fit::Tight(spare) => format!("TIGHT: {} to spare", figures.size(spare.floor())),
        Fit::Short(short) => {
            let too = match attempt.binds.measure {
                Measure::Width => "too wide",
                Measure::Height => "too high",
                Measure::Turn => "too long",
            };
            format!("NO: {} {too}", figures.size(short.ceil()))
        }
    }
}

fn reckoned(way: &WayIn, figures: Figures) -> String {
    let wheels = way.trolley_mm.map_or_else(String::new, |mm| {
        format!(", a trolley {} wide over its wheels", figures.size(mm))
    });
    format!(
        "Reckoned with the box around the stone, its thickest reading, {} beside it for hands or frame, its \
         lower edge {} above the floor{wheels}. Less than {} to spare is tight. Corners are taken as square, \
         the walls as plumb. Measure between what stands out most: skirtings, handles, stops, the leaf of \
         the door itself. A door beside a wall that is nearer than the stone is long is a corner too. On a \
         straight flight of stairs the clear height is measured square to the slope.",
        figures.size(way.room_mm),
        figures.size(way.raise_mm),
        figures.size(way.enough_mm),
    )
}

/// The way in as rows of text: the place, and how each stone fares.
#[must_use]
pub fn rows(way: &WayIn, figures: Figures) -> Vec<(String, String)> {
    let walks = [&way.top, &way.slab];
    let rows = walks.into_iter().flat_map(|walk| {
        let told = walk.passages.iter();
        told.map(|passage| (passage.at.what.clone(), line(walk, passage, figures)))
    });
    rows.collect()
}

/// `finished top goes through on edge, 42 mm to spare`; where it does not go on edge, why.
fn line(walk: &Walk, passage: &Passage, figures: Figures) -> String {
    let told = |a: &Attempt| format!("{} {}", a.carried.words(), outcome(a, figures));
    let name = &walk.name;
    let (best, worse) = match passage.best_attempt() {
        Some(best) => (
            format!(
                "{name} goes through {}, {}",
                best.carried.words(),
                outcome(best, figures)
            ),
            passage.better_than(best.carried),
        ),
        None => (
            format!("{name} does not go through"),
            passage.attempts.iter().collect(),
        ),
    };
    let parts = std::iter::once(best).chain(worse.into_iter().map(told));
    parts.collect::<Vec<String>>().join("; ")
}
