//! The day and its record: what to do when something goes wrong, the order with times, what the top is set
//! down on, what to bring, practice, initials.

use super::block::{Block, Cell, Column, Fact, Table};
use super::dust::caught;
use super::group::{Group, busy, groups};
use super::say::{name, names, plain, say, value};
use super::supports;
use super::turning::{Turning, turning};
use crate::cut::bearer::BLOCK_MM;
use crate::cut::{Cut, CutKind, PracticeMark, SetOut};
use crate::handle::aid::Aids;
use crate::hazard::slurry::Caught;
use crate::job::Aid;
use crate::plan::Plan;
use crate::units::{LengthUnit, MM_PER_INCH, Mass};
use crate::words::{Message, Unit, Value};

/// The page's blocks; of a busy job the order stands on page 1.
pub(super) fn blocks(plan: &Plan) -> Vec<Block> {
    let mut blocks = vec![
        Block::Title(Vec::new(), plain("bench-day-title")),
        Block::Heading(plain("bench-day-wrong")),
        Block::Facts(wrong()),
    ];
    if !busy(plan) {
        blocks.push(Block::Table(order(plan)));
    }
    blocks.extend(supports::blocks(plan));
    blocks.push(Block::Blanks(vec![
        plain("bench-day-started"),
        plain("bench-day-ended"),
        plain("bench-day-initials"),
        plain("bench-day-date"),
    ]));
    blocks.push(Block::Text(plain("bench-day-annex")));
    blocks
}

/// What comes before the first cut: what to bring, practice in the waste.
pub(super) fn before(plan: &Plan) -> Vec<Block> {
    let bring = vec![
        Block::Heading(plain("bench-day-bring")),
        Block::Facts(bring(plan)),
    ];
    let practice = practice(plan);
    if practice.is_empty() {
        return bring;
    }
    let mut practice = vec![
        Block::Heading(plain("bench-day-practice")),
        Block::Facts(practice),
    ];
    practice.extend(found(plan).map(|blank| Block::Blanks(vec![blank])));
    practice.push(Block::Text(plain("bench-practice-differs")));
    vec![Block::Beside(50, bring, practice)]
}

/// What the practice shows, each beside what was reckoned with.
fn found(plan: &Plan) -> impl Iterator<Item = Message> {
    let reckoned = |id, mm: f64| say(id, [("reckoned", Value::tape(mm))]);
    let guide = plan.practice.cut.iter();
    let guide = guide.map(move |_| reckoned("bench-practice-offset", plan.kit.guide_offset));
    let jig = plan.practice.plunges.iter();
    let jig = jig.map(move |_| reckoned("bench-practice-jig", plan.kit.jig_offset));
    guide.chain(jig).chain([plain("bench-practice-minutes")])
}

/// What can go wrong at the stone, and what to do.
pub(super) fn wrong() -> Vec<Fact> {
    vec![
        Fact::new("bench-wrong-cracks", value("bench-wrong-cracks-do", [])),
        Fact::new("bench-wrong-pinches", value("bench-wrong-pinches-do", [])),
        Fact::new("bench-wrong-slips", value("bench-wrong-slips-do", [])),
    ]
}

/// The lines of the day, each with its minutes and room for the time.
pub(super) fn order(plan: &Plan) -> Table {
    let set_up = |count: usize| {
        #[allow(clippy::cast_precision_loss)]
        let share = count as f64 / plan.cuts.len().max(1) as f64;
        plan.totals.set_up_minutes * share
    };
    let mut rows = vec![
        row(plain("bench-day-read"), None),
        row(plain("bench-day-unload"), None),
        row(plain("bench-day-mark"), None),
    ];
    // Whole minutes that add up to the whole day's.
    let mut spent: f64 = 0.0;
    for group in groups(plan) {
        let (message, cuts) = group_line(plan, &group);
        let before = spent.ceil();
        spent += cuts.iter().map(|c| c.minutes).sum::<f64>() + set_up(cuts.len());
        rows.push(row(message, Some(spent.ceil() - before)));
    }
    if !busy(plan) {
        rows.push(sum(plan, spent.ceil()));
    }
    // The floor first: nobody walks on slurry with stone.
    let clean = plan
        .hazards
        .caught
        .either("bench-day-clean", "bench-day-clean-dry");
    rows.push(row(plain(clean), None));
    rows.push(row(plain("bench-day-move"), None));
    Table {
        columns: vec![
            Column::words(Value::Nothing, 6),
            Column::words(value("bench-day-what", []), 100),
            Column::figures(value("bench-day-minutes", []), 26),
            Column::words(value("bench-day-at", []), 30),
        ],
        rows,
    }
}

/// What all cuts take together; page 1 has it in its figures.
fn sum(plan: &Plan, minutes: f64) -> Vec<Cell> {
    let whole = |m: f64| Value::of(m, Unit::Minute).up();
    let [stone, setting] = [plan.totals.sawing_minutes, plan.totals.set_up_minutes];
    let args = [("stone", whole(stone)), ("setting", whole(setting))];
    let mut cells = row(say("bench-day-sum", args), Some(minutes));
    cells[0] = Cell::Empty;
    cells[3] = Cell::Empty;
    cells
}

fn row(message: Message, minutes: Option<f64>) -> Vec<Cell> {
    vec![
        Cell::Tick,
        Cell::Value(message.into()),
        minutes.map_or(Cell::Empty, |m| {
            Cell::Value(Value::of(m, Unit::Minute).up())
        }),
        Cell::Blank,
    ]
}

fn group_line<'a>(plan: &Plan, group: &Group<'a>) -> (Message, Vec<&'a Cut>) {
    match group {
        Group::Straight(cut, holes) => {
            let mut cuts = holes.clone();
            cuts.push(cut);
            let args = [
                ("cut", cut.number.into()),
                ("edge", name(&cut.edge)),
                ("waste", names(cut.frees.iter().map(String::as_str))),
            ];
            (say("bench-day-straight", args), cuts)
        }
        Group::Curve(arcs, relief) => {
            let cuts: Vec<&Cut> = relief.iter().chain(arcs).copied().collect();
            let args = [
                ("cuts", numbers(&cuts)),
                ("edge", names(arcs.iter().map(|c| c.edge.as_str()))),
            ];
            (say("bench-day-curve", args), cuts)
        }
        Group::Opening(number, cuts) => {
            let what = number
                .checked_sub(1)
                .and_then(|i| plan.top.openings.get(i))
                .map_or(Value::Nothing, |o| name(&o.what));
            let args = [("cuts", numbers(cuts)), ("what", what)];
            (say("bench-day-opening", args), cuts.clone())
        }
    }
}

fn numbers(cuts: &[&Cut]) -> Value {
    Value::List(cuts.iter().map(|c| Value::count(c.number)).collect())
}

/// Least thickness of a deck's boards, mm (judgement: they bear 600 kg over 2 m with room to spare).
pub(super) const BOARD_MM: f64 = 45.0;

/// The boards between trestles and bearers, so that what comes free lies as high as what stays.
fn deck(plan: &Plan) -> Value {
    let bounds = plan.slab.outline.bounds();
    let (length, wide) = (bounds.width(), bounds.height());
    let args = [
        ("thick", Value::size(BOARD_MM)),
        ("length", Value::size(length.max(wide))),
        ("wide", Value::size(length.min(wide))),
    ];
    value("bench-bring-deck-are", args)
}

/// The core bits that are used, each size once; nothing where nothing is drilled.
fn bits(plan: &Plan) -> Option<Value> {
    let drilled = plan.cuts.iter().filter(|c| c.kind == CutKind::Core);
    let mut sizes: Vec<f64> = drilled.map(|c| c.tool.width_mm()).collect();
    sizes.sort_by(f64::total_cmp);
    sizes.dedup();
    let bits = sizes.into_iter().map(Value::bit).collect::<Vec<_>>();
    (!bits.is_empty()).then(|| value("bench-bring-bits-are", [("bits", Value::List(bits))]))
}

/// A roll of masking tape as it is sold, mm (common practice): 50 m, or 60 yards where inches are used.
const ROLL_MM: f64 = 50_000.0;
const ROLL_60_YARDS_MM: f64 = 60.0 * 36.0 * MM_PER_INCH;

/// What to bring, in units that a shop sells.
fn bring(plan: &Plan) -> Vec<Fact> {
    let used = &plan.consumables;
    let roll = match plan.job.units {
        LengthUnit::Millimetre => ROLL_MM,
        LengthUnit::Inch => ROLL_60_YARDS_MM,
    };
    #[allow(clippy::cast_possible_truncation)]
    let rolls = Value::Count((used.tape_mm / roll).ceil().clamp(1.0, 1e6) as i64);
    let jig = plan
        .cuts
        .iter()
        .any(|c| matches!(c.set_out, SetOut::Pivot(_)));
    let suction = plan
        .cuts
        .iter()
        .any(|c| matches!(&c.set_out, SetOut::Guide(guided) if guided.out_of_reach));
    let args = [
        ("length", Value::size(plan.kit.guide_length)),
        ("jig", Value::Case(if jig { "yes" } else { "no" })),
        ("suction", Value::Case(if suction { "yes" } else { "no" })),
    ];
    let mut facts = vec![
        Fact::new("bench-bring-guide", value("bench-bring-guide-is", args)),
        Fact::new("bench-bring-discs", discs(plan)),
    ];
    facts.extend(bits(plan).map(|bits| Fact::new("bench-bring-bits", bits)));
    facts.extend([
        Fact::new("bench-bring-bearers", bearers(plan)),
        Fact::new("bench-bring-deck", deck(plan)),
        Fact::new(
            "bench-bring-tape",
            value(
                "bench-bring-tape-is",
                [("rolls", rolls), ("roll", Value::way(roll))],
            ),
        ),
        Fact::new("bench-bring-carry", carried_with(plan)),
    ]);
    if turning(plan, &plan.handling.slab) == Turning::NoHands {
        let with = value("bench-bring-turn-is", []);
        facts.push(Fact::new("bench-bring-turn", with));
    }
    match plan.hazards.caught {
        Caught::Slurry { buckets, .. } => {
            let args = [
                (
                    "water",
                    Value::of(used.water_l, Unit::Litre).up().decimals(0),
                ),
                ("buckets", Value::number(buckets, 0)),
            ];
            let words = value("bench-bring-water-is", args);
            facts.push(Fact::new("bench-bring-water", words));
        }
        Caught::Bags { .. } => {
            let bags = caught(&plan.hazards.caught);
            facts.push(Fact::new("bench-fact-slurry-dry", bags));
        }
        Caught::Nothing => {}
    }
    facts
}

/// What the stone is moved with, marked for the heavier stone.
fn carried_with(plan: &Plan) -> Value {
    let moving = &plan.handling.moving;
    let most = |of: fn(&Aids) -> Mass| {
        let marked = moving.aids.iter().map(of);
        marked
            .max_by(|a, b| a.kg().total_cmp(&b.kg()))
            .unwrap_or_default()
    };
    let (aid, rated) = match moving.aid {
        Aid::None => ("none", Mass::default()),
        Aid::Trolley => ("trolley", most(|a| a.trolley.rated)),
        Aid::VacuumLifter => ("vacuum", most(|a| a.vacuum.rated)),
        Aid::Gantry => ("gantry", most(|a| a.trolley.rated)),
    };
    let args = [
        ("aid", Value::Case(aid)),
        ("rated", Value::mass(rated).up()),
    ];
    value("bench-bring-carry-is", args)
}

fn discs(plan: &Plan) -> Value {
    let mut all: Vec<&str> = Vec::new();
    for disc in &plan.hazards.discs {
        if !all.contains(&disc.name.as_str()) {
            all.push(&disc.name);
        }
    }
    let ridges = |c: &Cut| c.kind == CutKind::Curve && c.stands_out_mm() > 0.0;
    let grind = plan.cuts.iter().any(|c| ridges(c) || c.allowance > 0.0);
    let args = [
        ("discs", names(all)),
        ("grind", Value::Case(if grind { "yes" } else { "no" })),
    ];
    value("bench-bring-discs-are", args)
}

/// Bearers of the whole job, since they all lie there before the slab does: under both sides of every line that
/// has its own, two under whatever else comes free in an opening, one outside; and under the edges that no cut makes,
/// so that nobody who leans there tips the stone.
fn bearers(plan: &Plan) -> Value {
    let each = plan.cuts.iter().map(|cut| match &cut.bearers {
        Some(bearers) => bearers.at.len() * 2,
        None if cut.cutout.is_some() => cut.frees.len() * 2,
        None => cut.frees.len(),
    });
    let beside = plan.edge_bearers.len();
    let edges = if beside > 0 {
        let args = [("count", beside.into())];
        value("bench-bring-bearers-edges", args)
    } else {
        Value::Nothing
    };
    let args = [
        ("count", (each.sum::<usize>() + beside).into()),
        ("long", Value::size(BLOCK_MM)),
        ("edges", edges),
    ];
    value("bench-bring-bearers-are", args)
}

fn practice(plan: &Plan) -> Vec<Fact> {
    let marked = |mark: &PracticeMark, fact: &'static str, id: &'static str| {
        let depths = mark.passes.iter().map(|p| Value::tape(p.depth).up());
        Fact::new(
            fact,
            value(
                id,
                [
                    ("piece", name(&mark.piece)),
                    ("length", Value::size(mark.length)),
                    ("depths", Value::List(depths.collect())),
                ],
            ),
        )
    };
    let cut = plan.practice.cut.iter();
    let plunges = plan.practice.plunges.iter();
    cut.map(|m| marked(m, "bench-practice-cut", "bench-practice-cut-is"))
        .chain(plunges.map(|m| marked(m, "bench-practice-plunge", "bench-practice-plunge-is")))
        .collect()
}
