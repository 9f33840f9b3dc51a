//! Dust, noise, hands: the order of controls with what is still open, the mask, the minutes allowed,
//! the slurry, the standing checklist.

use super::block::{Block, Fact, Tick};
use super::say::{plain, say, value};
use super::sign::Sign;
use crate::hazard::dust::order::{State, Step};
use crate::hazard::moment::Moment;
use crate::hazard::respirator::{Enough, Required};
use crate::hazard::slurry::Caught;
use crate::job::Finish;
use crate::plan::Plan;
use crate::words::{Message, Unit, Value};

/// The page's blocks.
pub(super) fn blocks(plan: &Plan) -> Vec<Block> {
    let mut order = vec![
        Block::Heading(plain("bench-dust-order")),
        Block::Ticks(plan.hazards.order.iter().map(control).collect()),
    ];
    order.extend(not_counted(plan));
    let mut blocks = vec![
        Block::Title(Vec::new(), plain("bench-dust-title")),
        Block::Beside(
            40,
            order,
            vec![
                Block::Heading(plain("bench-dust-limits")),
                Block::Facts(facts(plan)),
            ],
        ),
        Block::Signs(signs(plan)),
    ];
    if !plan.hazards.settled.is_empty() {
        let done = |m: &Message| Tick {
            done: true,
            ..Tick::new(m.clone())
        };
        blocks.push(Block::Heading(plain("bench-dust-settled")));
        blocks.push(Block::Ticks(
            plan.hazards.settled.iter().map(done).collect(),
        ));
    }
    let mut lists = Moment::ALL.iter().filter_map(|m| at(plan, *m));
    if let Some(first) = lists.next() {
        blocks.push(Block::Beside(50, first, lists.flatten().collect()));
    }
    blocks
}

/// What the job's minutes, silica and vibration leave out: the edges are ground, polished and eased afterwards.
pub(super) fn not_counted(plan: &Plan) -> Option<Block> {
    let by_hand = |finish: Finish| matches!(finish, Finish::Polish | Finish::Ease);
    let edges = plan.top.edges.iter().any(|e| by_hand(e.finish));
    let cuts = plan
        .cuts
        .iter()
        .any(|c| by_hand(c.finish) || c.stands_out_mm() > 0.0);
    (edges || cuts).then(|| Block::Text(plain("bench-not-counted")))
}

/// The standing checklist at a moment of the day.
fn at(plan: &Plan, moment: Moment) -> Option<Vec<Block>> {
    let lines = plan.hazards.checklist.iter().filter(|l| l.moment == moment);
    let ticks: Vec<Tick> = lines
        .map(|l| Tick::new(l.finding.message.clone()))
        .collect();
    let heading = Block::Heading(plain(moment.id()));
    (!ticks.is_empty()).then(|| vec![heading, Block::Ticks(ticks)])
}

fn control(step: &Step) -> Tick {
    let state = match step.state {
        State::Done => "done",
        State::Open => "open",
        State::OnTheDay => "day",
    };
    Tick {
        text: say(
            "bench-control",
            [
                ("what", step.message.clone().into()),
                ("state", Value::Case(state)),
            ],
        ),
        ..Tick::new(plain("bench-blank"))
    }
}

/// The signs of what is worn, each with what this job asks of it.
pub(super) fn signs(plan: &Plan) -> Vec<(Sign, Message)> {
    vec![
        (Sign::Lungs, mask(plan)),
        (
            Sign::Ears,
            say(
                "bench-wear-ears",
                [(
                    "level",
                    Value::of(plan.hazards.noise.level_db, Unit::Decibel).up(),
                )],
            ),
        ),
        (Sign::Eyes, plain("bench-wear-eyes")),
        (Sign::Hands, plain("bench-wear-hands")),
        (Sign::Feet, plain("bench-wear-feet")),
        (Sign::Warning, plain("bench-wear-disc")),
    ]
}

fn mask(plan: &Plan) -> Message {
    let report = &plan.hazards.respirator;
    match report.required {
        Required::NoneAsked => plain("bench-wear-mask-ready"),
        Required::AtLeast(factor) => {
            let factor = ("factor", Value::count(usize::from(factor)));
            if report.enough == Enough::Yes {
                let mask = ("mask", Value::term(report.at_hand));
                say("bench-wear-mask-here", [mask, factor])
            } else {
                say("bench-wear-mask", [factor])
            }
        }
        Required::MustBeAssessed => plain("bench-wear-mask-assess"),
    }
}

fn facts(plan: &Plan) -> Vec<Fact> {
    let hazards = &plan.hazards;
    let (vibration, noise) = (&hazards.vibration, &hazards.noise);
    let minutes = |m: f64| Value::of(m, Unit::Minute).down();
    let mut facts = vec![Fact::new(
        "bench-fact-mask",
        value(
            "bench-mask-at-hand",
            [("mask", Value::term(hazards.respirator.at_hand))],
        ),
    )];
    let allowed = vibration.minutes_to_action.map_or_else(
        || value("bench-hands-never", []),
        |m| {
            value(
                "bench-hands-allowed",
                [
                    ("action", minutes(m)),
                    (
                        "job",
                        Value::of(plan.totals.sawing_minutes, Unit::Minute).up(),
                    ),
                ],
            )
        },
    );
    let hands = if vibration.other_min > 0.0 {
        let other = Value::of(vibration.other_min, Unit::Minute).up();
        value("bench-hands-other", [("hands", allowed), ("other", other)])
    } else {
        allowed
    };
    facts.push(Fact::new("bench-fact-hands", hands));
    facts.push(Fact::new(
        "bench-fact-ears",
        value(
            "bench-ears",
            [
                ("level", Value::of(noise.level_db, Unit::Decibel).up()),
                (
                    "minutes",
                    minutes(noise.minutes_to_duty.min(noise.niosh_minutes)),
                ),
            ],
        ),
    ));
    let slurry = hazards
        .caught
        .either("bench-fact-slurry", "bench-fact-slurry-dry");
    facts.push(Fact::new(slurry, caught(&hazards.caught)));
    facts.push(Fact::new(
        "bench-fact-silica",
        value(
            "bench-silica",
            [
                (
                    "dust",
                    Value::of(hazards.silica.dust_g.high, Unit::Gram).up(),
                ),
                (
                    "silica",
                    Value::of(hazards.silica.silica_g.high, Unit::Gram).up(),
                ),
            ],
        ),
    ));
    facts.push(Fact::new(
        "bench-fact-vacuum-class",
        value("bench-term", [("term", Value::term(hazards.vacuum.words))]),
    ));
    facts
}

/// What must be carried away.
pub(super) fn caught(caught: &Caught) -> Value {
    #[allow(clippy::cast_possible_truncation)]
    let whole = |x: f64| Value::Count(x.ceil().clamp(0.0, 1e6) as i64);
    match caught {
        Caught::Slurry {
            slurry_kg, buckets, ..
        } => value(
            "bench-slurry",
            [
                (
                    "mass",
                    Value::mass(crate::units::Mass::from_kg(*slurry_kg)).up(),
                ),
                ("buckets", whole(*buckets)),
            ],
        ),
        Caught::Bags { bags } => value("bench-bags", [("bags", whole(*bags))]),
        Caught::Nothing => value("bench-nothing-caught", []),
    }
}
