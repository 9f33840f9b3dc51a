//! Lift and carry.

use super::both::Both;
use crate::geom::{Bounds, Vector};
use crate::handle::Piece;
use crate::handle::lift::{PeopleNeeded, Stand, Verdict};
use crate::handle::niosh::LiftOff;
use crate::plan::Plan;
use crate::sheet::book::{Book, Part};
use crate::sheet::drawing::Drawing;
use crate::sheet::flow::{Block, Mark, Scale};
use crate::sheet::item::{Dash, Ink, Stroke};
use crate::sheet::pen::{MIDDLE_MM, WIDE_MM};
use crate::sheet::scene;
use crate::sheet::table::{Heading, Table, Width};
use crate::units::Mass;

/// Height of the drawing, mm.
const DRAWING_MM: f64 = 66.0;

/// Adds the pages.
pub fn add(book: &mut Book<'_>) {
    let plan = book.plan;
    let mut column = book.column(Scale::BENCH);
    column.place(&Block::Heading("Lift and carry the finished top".into()));
    let paper = column.reserve(DRAWING_MM);
    let mut drawing = top(plan, paper);
    let bearer = Stroke::solid(MIDDLE_MM, Ink::Accent).dashed(Dash::Dashed);
    for line in &plan.handling.top.strength.best.support_lines {
        drawing.line_apart(line[0], line[1], bearer);
    }
    let middle = plan.top.balance;
    for lifter in &plan.handling.top.lift.lifters {
        drawing.dot(lifter.point);
        let away = lifter.point - middle;
        let out = if away.length() > 1.0 {
            away.unit() * 5.0
        } else {
            Vector::new(0.0, 5.0)
        };
        drawing.badge_off(lifter.point, out, &lifter.number.to_string());
    }
    drawing.balance(middle);
    scene::top_names(&mut drawing, plan);
    column.items.extend(drawing.finish());
    column.place(&Block::Note(
        format!(
            "Ringed numbers: people. Dashed: the two bearers that stress the stone least. Quartered \
             disc: balance point. Distances are from the end and the long side that meet at corner {}.",
            base_corner(plan)
        ),
    ));
    let parts = parts(plan, Both::of(book.figures));
    book.fill("Lift and carry", column, &parts);
}

/// The finished top with its cutouts, on paper.
pub(super) fn top(plan: &Plan, paper: Bounds) -> Drawing {
    let mut drawing = Drawing::fit(plan.top.outline.bounds(), paper, scene::DIMENSIONED_MM);
    drawing.kept(&plan.top.outline);
    let edge = Stroke::solid(WIDE_MM, Ink::Black);
    for cutout in &plan.top.cutouts {
        drawing.line(cutout, edge);
    }
    drawing
}

/// Name of the top's corner that the lifters' distances are counted from.
pub(super) fn base_corner(plan: &Plan) -> &str {
    let base = plan.handling.top.base_line[0];
    let nearest = plan
        .top
        .corners
        .iter()
        .min_by(|a, b| a.at.distance(base).total_cmp(&b.at.distance(base)));
    nearest.map_or("", |c| &c.name)
}

fn parts(plan: &Plan, both: Both) -> Vec<Part> {
    let (top, slab) = (&plan.handling.top, &plan.handling.slab);
    vec![
        lifter_table(top, both).into(),
        Block::Paragraph(verdict_words(top, both)).into(),
        Block::List(Mark::Dot, advice(plan, both)).into(),
        Block::Subheading("The slab as delivered".into()).into(),
        Block::Paragraph(verdict_words(slab, both)).into(),
    ]
}

fn lifter_table(top: &Piece, both: Both) -> Table {
    let rows = top.lift.lifters.iter().map(|l| {
        vec![
            l.number.to_string(),
            both.tape_stacked(l.from_end_mm),
            both.tape_stacked(l.from_side_mm),
            both.share_stacked(l.share),
            l.limit
                .map_or_else(|| "none for so many".into(), |m| both.mass_stacked(m)),
        ]
    });
    Table {
        headings: vec![
            Heading::words("Person", Width::Mm(22.0)),
            Heading::numbers("From the end", Width::Part(1.0)),
            Heading::numbers("From the side", Width::Part(1.0)),
            Heading::numbers("Carries up to", Width::Part(1.0)),
            Heading::numbers("Guideline in this team", Width::Part(1.2)),
        ],
        rows: rows.collect(),
        style: Scale::BENCH.strong,
    }
}

/// What stands for or against lifting a piece by hand, in words.
#[must_use]
pub fn verdict_words(piece: &Piece, both: Both) -> String {
    let mass = both.mass(piece.lift.mass);
    let people = match piece.lift.people_needed {
        PeopleNeeded::AtLeast(n) if n > piece.lift.lifters.len() => {
            format!("The guideline asks for at least {n} people.")
        }
        PeopleNeeded::AtLeast(_) => String::new(),
        PeopleNeeded::MoreThanATeam => {
            "The guideline asks for more than four people, and more than four are unlikely to lift as a \
             team."
                .into()
        }
    };
    let verdict = match piece.lift.verdict {
        Verdict::Within { utilisation } => format!(
            "The heaviest share is {:.0} % of its guideline figure. A guideline is not a safe limit.",
            utilisation * 100.0
        ),
        Verdict::Over {
            lifter,
            carried,
            limit,
        } => format!(
            "Person {lifter} would carry {}, the guideline figure in this team is {}.",
            both.mass(carried),
            both.mass(limit)
        ),
        Verdict::Tips { off_balance_mm } => format!(
            "The places do not hold it: they leave the balance point {} to one side.",
            both.tape(off_balance_mm)
        ),
        Verdict::TooManyHands { people } => {
            format!("{people} people are unlikely to lift as one team.")
        }
        Verdict::NotAHandLift { team_limit } => format!(
            "This is not a hand lift: a whole team counts on {} at most.",
            both.mass(team_limit)
        ),
    };
    format!("Up to {mass}. {verdict} {people}")
        .trim_end()
        .to_owned()
}

fn advice(plan: &Plan, both: Both) -> Vec<String> {
    let top = &plan.handling.top;
    let tilt = top
        .tilts
        .iter()
        .map(|t| t.lifted)
        .fold(Mass::default(), |a, b| if b > a { b } else { a });
    let proposed = top.lift.lifters.iter().any(|l| l.stand == Stand::Proposed);
    let mut advice = vec![
        format!(
            "Tilting it up on edge takes up to {} at the far edge at the start.",
            both.mass(tilt)
        ),
        lift_off_words(&top.lift.off_trestles, both),
        "Carry it on edge, never flat. Nobody stands where it can fall. Tie it whenever it stands."
            .into(),
    ];
    if proposed {
        advice.push(
            "The places are proposed: clear of corners and cutouts, reached from outside. Never lift by a \
             narrow rail."
                .into(),
        );
    }
    advice
}

/// The lifting equation's answer and what would better it.
#[must_use]
pub fn lift_off_words(off: &LiftOff, both: Both) -> String {
    let verdict = if off.index > 1.0 {
        format!(
            "What lowers the limit most: {}. With that alone put right the index would be {:.1}.",
            off.worst.cause.remedy(),
            off.index_without
        )
    } else {
        String::new()
    };
    format!(
        "Off the trestles, the person who carries most: load {}, recommended weight limit {}, lifting index \
         {:.1}. The equation is for lifting, not for carrying. {verdict}",
        both.mass(off.load),
        both.mass(off.limit),
        off.index
    )
    .trim_end()
    .to_owned()
}
