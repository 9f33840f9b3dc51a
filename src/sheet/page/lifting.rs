//! Lift and carry.

use crate::geom::Vector;
use crate::handle::bend::{BendVerdict, Bending};
use crate::handle::lift::{PeopleNeeded, Share, Verdict};
use crate::handle::support::BearingVerdict;
use crate::handle::{Handling, Piece};
use crate::plan::Plan;
use crate::sheet::book::{Book, Part};
use crate::sheet::drawing::Drawing;
use crate::sheet::figure::Figures;
use crate::sheet::flow::{Block, Mark, Scale};
use crate::sheet::item::{Dash, Ink, Stroke};
use crate::sheet::pen::MIDDLE_MM;
use crate::sheet::scene;
use crate::sheet::table::{Heading, Table, Width};

/// Height of the drawing, mm.
const DRAWING_MM: f64 = 70.0;

/// Adds the pages.
pub fn add(book: &mut Book<'_>) {
    let plan = book.plan;
    let mut column = book.column(Scale::BENCH);
    column.place(&Block::Heading("Lift and carry the finished top".into()));
    let paper = column.reserve(DRAWING_MM);
    let mut drawing = Drawing::fit(plan.top.outline.bounds(), paper, scene::DIMENSIONED_MM);
    drawing.kept(&plan.top.outline, &plan.top.cutouts);
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
    let parts = parts(&plan.handling, book.figures);
    book.fill("Lift and carry", column, &parts);
}

/// Name of the top's corner that the lifters' distances are counted from.
fn base_corner(plan: &Plan) -> &str {
    let base = plan.handling.top.base_line[0];
    let nearest = plan
        .top
        .corners
        .iter()
        .min_by(|a, b| a.at.distance(base).total_cmp(&b.at.distance(base)));
    nearest.map_or("", |c| &c.name)
}

fn parts(handling: &Handling, figures: Figures) -> Vec<Part> {
    let top = &handling.top;
    let mut parts: Vec<Part> = vec![
        lifter_table(top, figures).into(),
        Block::Paragraph(verdict_words(top, figures)).into(),
        Block::List(Mark::Dot, advice(handling, figures)).into(),
        Block::Subheading("Bending under its own weight".into()).into(),
        bending_table(handling).into(),
        Block::Note(bending_words(top)).into(),
    ];
    if let Some(setting) = &handling.setting {
        parts.push(Block::Subheading("Set down on its supports".into()).into());
        let rows = setting.bearings.iter().map(|b| {
            let verdict = match b.verdict {
                BearingVerdict::NoLimitGiven => "no limit given: ask its maker".to_owned(),
                BearingVerdict::Within { limit } => {
                    format!("limit given {}", figures.mass(limit))
                }
                BearingVerdict::Over { limit } => {
                    format!("OVER the limit given, {}", figures.mass(limit))
                }
                BearingVerdict::Idle => "carries nothing: the top lifts off it".to_owned(),
            };
            vec![b.what.clone(), share_words(b.share, figures), verdict]
        });
        parts.push(
            Table {
                headings: vec![
                    Heading::words("Support", Width::Part(1.0)),
                    Heading::numbers("Carries up to", Width::Mm(40.0)),
                    Heading::words("Limit", Width::Part(1.2)),
                ],
                rows: rows.collect(),
                style: Scale::BENCH.body,
            }
            .into(),
        );
    }
    parts
}

fn share_words(share: Share, figures: Figures) -> String {
    match share {
        Share::Carries(mass) => figures.mass(mass),
        Share::LiftsOff => "nothing".into(),
    }
}

fn lifter_table(top: &Piece, figures: Figures) -> Table {
    let rows = top.lift.lifters.iter().map(|l| {
        vec![
            l.number.to_string(),
            figures.tape_bare(l.from_end_mm),
            figures.tape_bare(l.from_side_mm),
            share_words(l.share, figures),
            l.limit
                .map_or_else(|| "none for so many".into(), |m| figures.mass(m)),
        ]
    });
    let unit = figures.unit();
    Table {
        headings: vec![
            Heading::words("Person", Width::Mm(20.0)),
            Heading::numbers(format!("From end, {unit}"), Width::Mm(34.0)),
            Heading::numbers(format!("From side, {unit}"), Width::Mm(36.0)),
            Heading::numbers("Carries up to", Width::Part(1.0)),
            Heading::numbers("Team guideline", Width::Part(1.0)),
        ],
        rows: rows.collect(),
        style: Scale::BENCH.strong,
    }
}

/// What stands for or against lifting the top by hand, in words.
#[must_use]
pub fn verdict_words(top: &Piece, figures: Figures) -> String {
    let mass = figures.mass(top.lift.mass);
    let people = match top.lift.people_needed {
        PeopleNeeded::AtLeast(n) if n > top.lift.lifters.len() => {
            format!("The guideline asks for at least {n} people.")
        }
        PeopleNeeded::AtLeast(_) => String::new(),
        PeopleNeeded::MoreThanATeam => {
            "The guideline asks for more people than can lift as a team.".into()
        }
    };
    let verdict = match top.lift.verdict {
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
            figures.mass(carried),
            figures.mass(limit)
        ),
        Verdict::Tips { off_balance_mm } => format!(
            "The places do not hold it: they leave the balance point {} to one side.",
            figures.tape(off_balance_mm)
        ),
        Verdict::TooManyHands { people } => {
            format!("{people} people are unlikely to lift as one team.")
        }
        Verdict::NotAHandLift { team_limit } => format!(
            "This is not a hand lift: a whole team counts on {} at most.",
            figures.mass(team_limit)
        ),
    };
    format!("Up to {mass}. {verdict} {people}")
        .trim_end()
        .to_owned()
}

fn advice(handling: &Handling, figures: Figures) -> Vec<String> {
    let top = &handling.top;
    let off = &top.lift.off_trestles;
    let tilt = top
        .tilts
        .iter()
        .map(|t| t.lifted)
        .fold(crate::units::Mass::default(), |a, b| {
            if b.kg() > a.kg() { b } else { a }
        });
    vec![
        format!(
            "Tilting it up on edge takes up to {} at the far edge.",
            figures.mass(tilt)
        ),
        format!(
            "Off the trestles, the person who carries most: load {}, recommended weight limit {}, lifting \
             index {:.1}. The equation is for lifting, not for carrying.",
            figures.mass(off.load),
            figures.mass(off.limit),
            off.index
        ),
        "Carry it on edge, never flat. Nobody stands where it can fall. Tie it whenever it stands."
            .into(),
        format!(
            "The slab as delivered: {}",
            verdict_words(&handling.slab, figures)
        ),
    ]
}

fn bending_table(handling: &Handling) -> Table {
    let mut rows = Vec::new();
    for piece in [&handling.slab, &handling.top] {
        for bending in piece.bendings() {
            rows.push(bending_row(piece, bending));
        }
    }
    Table {
        headings: vec![
            Heading::words("Stone", Width::Mm(34.0)),
            Heading::words("How it lies", Width::Part(1.0)),
            Heading::numbers("Bearers from the end, mm", Width::Mm(36.0)),
            Heading::numbers("Stress, MPa", Width::Mm(18.0)),
            Heading::numbers("Of what is allowed", Width::Mm(26.0)),
        ],
        rows,
        style: Scale::DESK.body,
    }
}

fn bending_row(piece: &Piece, bending: &Bending) -> Vec<String> {
    let [a, b] = bending.worst.supports_mm;
    let verdict = match bending.verdict {
        BendVerdict::NotAbove { utilisation } => format!("{:.0} %", utilisation * 100.0),
        BendVerdict::Above { utilisation } => format!("{:.0} %: do not", utilisation * 100.0),
    };
    vec![
        piece.name.clone(),
        bending.what.to_owned(),
        format!("{a:.0} and {b:.0}"),
        format!("{:.2}", bending.worst.stress_mpa),
        verdict,
    ]
}

fn bending_words(top: &Piece) -> String {
    let s = &top.strength;
    format!(
        "Allowed {:.2} MPa = {:.2} MPa ÷ {:.0} ({}). Own weight × {:.1} for handling, thickness {:.1} mm, the \
         thinnest reading. Sound stone only: a flaw breaks far earlier.",
        s.allowed_mpa,
        s.strength_mpa,
        s.safety_factor,
        s.strength_source,
        s.handling_factor,
        s.thickness_mm
    )
}
