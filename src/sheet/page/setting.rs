//! Set the top down on its supports.

use super::both::Both;
use super::lifting;
use crate::handle::lift::Verdict;
use crate::handle::overhang::{Overhang, ReachLimit};
use crate::handle::support::{Bearing, BearingVerdict, Setting, Standing};
use crate::plan::Plan;
use crate::sheet::book::{Book, Part};
use crate::sheet::flow::{Block, Mark, Scale};
use crate::sheet::item::{Ink, Stroke};
use crate::sheet::scene;
use crate::sheet::table::{Heading, Table, Width};

/// Height of the drawing, mm.
const DRAWING_MM: f64 = 66.0;
/// So many of the farthest overhangs are told though nothing speaks against them.
const TOLD: usize = 2;
/// Width of a support's line on paper, mm.
const SUPPORT_MM: f64 = 1.2;

/// Adds the pages; none when the job file names no support.
pub fn add(book: &mut Book<'_>) {
    let plan = book.plan;
    let Some(setting) = &plan.handling.setting else {
        return;
    };
    let both = Both::of(book.figures);
    let mut column = book.column(Scale::BENCH);
    column.place(&Block::Heading("Set it down on its supports".into()));
    let paper = column.reserve(DRAWING_MM);
    let mut drawing = lifting::top(plan, paper);
    drawing.balance(plan.top.balance);
    let line = Stroke::solid(SUPPORT_MM, Ink::Accent);
    for (i, bearing) in setting.bearings.iter().enumerate() {
        let [a, b] = bearing.place;
        if a.distance(b) > 1.0 {
            drawing.line_apart(a, b, line);
        } else {
            let radius = bearing.length_mm / 2.0;
            drawing.line(&crate::geom::seg::circle(a, radius), line);
        }
        drawing.badge(a.midpoint(b), &(i + 1).to_string());
    }
    scene::top_names(&mut drawing, plan);
    column.items.extend(drawing.finish());
    book.fill("Set down", column, &parts(plan, setting, both));
}

fn parts(plan: &Plan, setting: &Setting, both: Both) -> Vec<Part> {
    let mut parts: Vec<Part> = vec![bearing_table(setting, both).into()];
    if setting.stands != Standing::Balanced {
        parts.push(
            Block::Paragraph(
                "The top does not lie still on these supports: do not set it down on them.".into(),
            )
            .into(),
        );
    }
    parts.push(
        Block::Note(
            "The stone is taken as rigid, each support as stiff as it is long, times the stiffness given \
             for it (1 where none was given). No support pulls: where the stone would lift off it carries \
             nothing, and must not be screwed or glued down to. \"With a person\": the most it carries \
             when somebody of 1 kN leans on the edge at the worst place."
                .into(),
        )
        .into(),
    );
    if !setting.overhangs.is_empty() {
        parts.push(Block::Subheading("Beyond the supports".into()).into());
        parts.push(overhang_table(setting, both).into());
    }
    parts.push(Block::List(Mark::Dot, between(plan, setting, both)).into());
    parts
}

fn bearing_table(setting: &Setting, both: Both) -> Table {
    let rows = setting.bearings.iter().enumerate().map(|(i, b)| {
        vec![
            (i + 1).to_string(),
            named(b),
            both.share_stacked(b.share),
            both.mass_stacked(b.with_person),
            verdict(b, both),
        ]
    });
    Table {
        headings: vec![
            Heading::words("", Width::Mm(10.0)),
            Heading::words("Support", Width::Part(1.3)),
            Heading::numbers("Carries up to", Width::Mm(30.0)),
            Heading::numbers("With a person", Width::Mm(30.0)),
            Heading::words("Limit", Width::Part(1.0)),
        ],
        rows: rows.collect(),
        style: Scale::BENCH.strong,
    }
}

fn named(bearing: &Bearing) -> String {
    if bearing.stiffness < 1.0 {
        format!("{} (stiffness {})", bearing.what, bearing.stiffness)
    } else {
        bearing.what.clone()
    }
}

fn verdict(bearing: &Bearing, both: Both) -> String {
    match bearing.verdict {
        BearingVerdict::NoLimitGiven => "none given: ask its maker".to_owned(),
        BearingVerdict::Within { limit } if bearing.with_person > limit => {
            format!("{}: OVER with a person", both.mass(limit))
        }
        BearingVerdict::Within { limit } => both.mass(limit),
        BearingVerdict::Over { limit } => format!("OVER {}", both.mass(limit)),
        BearingVerdict::Idle => "carries nothing: the top lifts off it".to_owned(),
    }
}

fn overhang_table(setting: &Setting, both: Both) -> Table {
    let all = setting.overhangs.iter().enumerate();
    let told = all.filter(|(i, o)| *i < TOLD || o.is_over());
    let rows = told.map(|(_, o)| {
        vec![
            o.edge.clone(),
            both.tape_stacked(o.overhang_mm),
            limit(o.limit, both),
            person(o),
        ]
    });
    Table {
        headings: vec![
            Heading::words("Edge", Width::Part(0.8)),
            Heading::numbers("Reaches beyond", Width::Mm(38.0)),
            Heading::words("Published up to", Width::Part(1.2)),
            Heading::words("With a person on it", Width::Part(1.2)),
        ],
        rows: rows.collect(),
        style: Scale::BENCH.strong,
    }
}

fn limit(limit: ReachLimit, both: Both) -> String {
    match limit {
        ReachLimit::UpTo { limit_mm } => both.size(limit_mm),
        ReachLimit::NonePublished => "none for stone so thin".to_owned(),
    }
}

fn person(overhang: &Overhang) -> String {
    overhang.verdict.map_or_else(
        || "not worked out".to_owned(),
        |v| {
            let of = format!("{:.0} % of what is allowed", v.utilisation() * 100.0);
            if v.is_above() {
                format!("{of}: support it")
            } else {
                of
            }
        },
    )
}

fn between(plan: &Plan, setting: &Setting, both: Both) -> Vec<String> {
    let mut all = Vec::new();
    if let Some(span) = &setting.span {
        let word = if span.is_over() { "TOO WIDE: " } else { "" };
        all.push(format!(
            "{word}The widest stretch between supports is {}; published up to {}.",
            both.tape(span.span_mm),
            limit(span.limit, both)
        ));
    }
    if let Some(leaning) = &setting.leaning {
        let word = if leaning.verdict.is_above() {
            "Keep people off, or add supports: "
        } else {
            ""
        };
        all.push(format!(
            "{word}With a person of 1 kN at the worst place the stone is stressed {:.2} \
             MPa, {:.0} % of what is allowed.",
            leaning.stress_mpa,
            leaning.verdict.utilisation() * 100.0
        ));
        if leaning.tips_at.is_some() {
            all.push("The top TIPS when a person leans on it at the worst place.".to_owned());
        }
    }
    let lift = &plan.handling.top.lift;
    let lower = match lift.verdict {
        Verdict::NotAHandLift { .. } | Verdict::TooManyHands { .. } | Verdict::Tips { .. } => {
            "Lower it with the aid that carries it, not by hand"
        }
        Verdict::Within { .. } | Verdict::Over { .. } => "Lower it with all hands on one word",
    };
    all.push(format!(
        "{lower}: {}. Nobody's fingers between stone and support. Shim until every support touches before it \
         is let go.",
        both.mass(lift.mass)
    ));
    all
}
