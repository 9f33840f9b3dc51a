//! Straight cuts, a card each: the drawing the way up the sawyer stands, the guide, the passes to
//! tick, the bearers, what comes free and on what it lies.

mod facts;

use crate::cut::bearer::blocks;
use crate::cut::field::GUIDE_MM;
use crate::cut::{Cut, CutKind, SetOut, StraightSetOut};
use crate::geom::seg::ring;
use crate::geom::{Line, Point, Seg};
use crate::handle::bench::Lies;
use crate::handle::bend::Orientation;
use crate::handle::waste::{Leaves, Waste};
use crate::job::Aid;
use crate::piece::Piece;
use crate::plan::Plan;
use crate::units::Mass;
use crate::words::{Message, Value};

use super::block::{Block, Card};
use super::figure::{Figure, LineStyle, Shape, Thing};
use super::say::{name, plain, say, value};
use super::{mark, scene};

/// A straight cut with the holes drilled before it; `late` when other pages come between it and the card
/// above.
pub(super) fn card(plan: &Plan, cut: &Cut, holes: &[&Cut], late: bool) -> Block {
    let SetOut::Guide(set_out) = &cut.set_out else {
        return Block::Text(plain("bench-straight-title"));
    };
    let left = vec![Block::Figure(Box::new(figure(plan, cut, set_out)))];
    let drawn = dimensions(plan, cut, set_out).len() == 2;
    let right = vec![Block::Facts(facts::facts(plan, cut, holes, drawn))];
    let mut blocks = vec![
        Block::Beside(56, left, right),
        Block::Run(plain("bench-depths"), depths(cut)),
    ];
    let boxed = |piece: &Piece| {
        let free = free(plan, piece);
        Block::Boxed(breaks(plan, cut, piece).into_iter().fold(free, and))
    };
    blocks.extend(scene::freed(plan, cut).map(boxed));
    blocks.push(Block::Blanks(measured(cut)));
    blocks.splice(0..0, moved(plan, cut));
    if late {
        let before = [("cut", Value::count(cut.number.saturating_sub(1)))];
        blocks.insert(0, Block::Boxed(say("bench-late", before)));
    }
    Block::Card(Card {
        numbers: holes.iter().chain([&cut]).map(|c| c.number).collect(),
        title: title(plan, cut),
        stop: !plan.stops.is_empty(),
        blocks,
    })
}

/// Stone left under a pass, mm, that waste may break off by its own weight (judgement: a sixth of a usual slab).
const SKIN_MM: f64 = 5.0;

/// The pass from which heavy waste may break off: the last that does not come through.
fn breaks(plan: &Plan, cut: &Cut, piece: &Piece) -> Option<Value> {
    let through = plan.slab.thickness.least;
    let pass = cut.passes.iter().rev().find(|p| p.depth < through)?;
    let heavy = piece.mass.high.kg() > plan.kit.waste_piece.kg();
    let depth = [("depth", Value::tape(pass.depth).up())];
    (heavy && through - pass.depth < SKIN_MM).then(|| value("bench-how-breaks", depth))
}

/// One sentence after another.
fn and(said: Message, more: Value) -> Message {
    say("bench-sentences", [("a", said.into()), ("b", more)])
}

/// What the stone lies on from this cut on, where that changes.
fn moved(plan: &Plan, cut: &Cut) -> Option<Block> {
    let benches = plan.handling.bench.iter();
    let bench = benches
        .into_iter()
        .find(|b| b.before_cut == Some(cut.number))?;
    let [first, second] = bench.at_mm.map(Value::size);
    Some(Block::Boxed(match bench.lies {
        Lies::Bedded { .. } => plain("bench-trestles-board"),
        Lies::Judged { .. } | Lies::Falls { .. } => say(
            "bench-trestles-move",
            [("first", first), ("second", second)],
        ),
    }))
}

fn title(plan: &Plan, cut: &Cut) -> Message {
    let id = match cut.kind {
        CutKind::Relief => "bench-relief-title",
        _ => "bench-straight-title",
    };
    say(
        id,
        [
            ("edge", name(&cut.edge)),
            ("length", Value::size(cut.length)),
            ("thick", scene::thick(plan)),
        ],
    )
}

/// What comes free, how heavy, on what it lies, how it leaves the bench when one person cannot carry it, and the flaws
/// that may break a heavy one.
pub(super) fn free(plan: &Plan, piece: &Piece) -> Message {
    if piece.mass.high.kg() <= plan.kit.waste_piece.kg() {
        return light(&piece.name, piece.mass.high);
    }
    let waste = plan.handling.waste.iter().find(|w| w.name == piece.name);
    let [named, mass] = [
        ("name", name(&piece.name)),
        ("mass", Value::mass(piece.mass.high).up()),
    ];
    let said = match waste.and_then(|w| Some((w, w.leaves?))) {
        Some((waste, leaves)) => {
            let away = ("away", away_from_bench(waste, leaves));
            say("bench-free-carried", [named, mass, away])
        }
        None => say("bench-free-heavy", [named, mass]),
    };
    let flaws = piece.flaws.iter().filter_map(|i| plan.slab.flaws.get(*i));
    let flaws = flaws.map(|flaw| value("bench-free-flaw", [("flaw", name(&flaw.what))]));
    flaws.fold(said, and)
}

/// What comes free and may be taken away by anyone.
pub(super) fn light(named: &str, mass: Mass) -> Message {
    let args = [("name", name(named)), ("mass", Value::mass(mass).up())];
    say("bench-free-light", args)
}

fn away_from_bench(waste: &Waste, leaves: Leaves) -> Value {
    let by = |id: &'static str, people: usize, orientation: Orientation| {
        let flat = match orientation {
            Orientation::Flat => "flat",
            Orientation::OnEdge => "edge",
        };
        let args = [("people", people.into()), ("how", Value::Case(flat))];
        value(id, args)
    };
    match leaves {
        Leaves::InHands {
            people,
            orientation,
        } => by("bench-away", people, orientation),
        Leaves::WantsMore {
            people,
            orientation,
        } => by("bench-away-more", people, orientation),
        Leaves::WithAid(aid) => {
            let aid = match aid {
                Aid::None | Aid::Trolley => "trolley",
                Aid::VacuumLifter => "vacuum",
                Aid::Gantry => "gantry",
            };
            let args = [
                ("aid", Value::Case(aid)),
                ("people", waste.turned_by.into()),
                ("half", Value::mass(waste.turned).up()),
            ];
            value("bench-away-aid", args)
        }
        Leaves::SawnAcross => value("bench-away-sawn", []),
    }
}

fn measured(cut: &Cut) -> Vec<Message> {
    vec![
        say("bench-measured", [("edge", name(&cut.edge))]),
        plain("bench-cut-by"),
    ]
}

fn figure(plan: &Plan, cut: &Cut, set_out: &StraightSetOut) -> Figure {
    let alt = say(
        "bench-straight-alt",
        [
            ("edge", name(&cut.edge)),
            (
                "waste",
                super::say::names(cut.frees.iter().map(String::as_str)),
            ),
        ],
    );
    let mut frame = scene::slab_bounds(plan);
    let sawyer = plan.stands.sawyer_at(cut.number);
    if let Some(sawyer) = sawyer {
        frame.min.y = frame.min.y.min(sawyer.at.y - 110.0);
        frame.max.y = frame.max.y.max(sawyer.at.y + 110.0);
    }
    let mut figure = Figure::new(alt, frame);
    // The way up in which the sawyer sees it.
    figure.turned = sawyer.is_some_and(|s| s.facing.y < 0.0);
    figure.extend(scene::stage(plan, cut.number));
    figure.extend(bearers(plan, cut));
    figure.extend(scene::kerf(cut));
    figure.extend(guide(set_out));
    figure.add(Thing::MachineAbove(
        set_out.sawn[0] + (set_out.sawn[1] - set_out.sawn[0]) * 0.18,
        set_out.sawn[1] - set_out.sawn[0],
    ));
    for line in mark::lines(cut) {
        for (named, end) in line.names.iter().zip(line.ends) {
            figure.add(Thing::Mark(end.at, named.clone()));
        }
    }
    for point in mark::points(cut) {
        figure.add(Thing::Pivot(point.at, point.name));
    }
    figure.extend(dimensions(plan, cut, set_out));
    figure.extend(scene::corner_names(plan));
    figure.extend(sawyer.map(|s| Thing::PersonAbove(s.at, s.facing, value("bench-you", []))));
    figure.extend(scene::waste_names(scene::freed(plan, cut)));
    figure.extend(scene::freed(plan, cut).map(|piece| away(piece.balance, set_out)));
    figure.add(scene::keep(plan, plan.top.balance));
    figure
}

/// Which way a piece goes: an arrow from the line outwards past its balance point.
fn away(balance: Point, set_out: &StraightSetOut) -> Thing {
    let [from, to] = set_out.sawn;
    let along = (to - from).unit();
    let off = (balance - from).dot(along.right());
    let out = along.right() * off.signum();
    let beside = balance + along * (from.distance(to) * 0.25).min(260.0);
    let half = out * off.abs().min(60.0);
    Thing::Arrow(beside - half, beside + half)
}

/// The guide: a bar on its side of the marked line at its first place, the others dashed.
fn guide(set_out: &StraightSetOut) -> Vec<Thing> {
    let [from, to] = if set_out.set_ups_from.is_leaving() {
        [set_out.sawn[1], set_out.sawn[0]]
    } else {
        set_out.sawn
    };
    let line = Line::through(set_out.guide.start.at, set_out.guide.end.at);
    let (base, along) = (line.at(line.foot(from)), (to - from).unit());
    let back = (base - from).unit() * GUIDE_MM;
    let places = set_out.set_ups.iter().map(|s| {
        let (a, b) = (base + along * s.from, base + along * s.to);
        ring(&[a, b, b + back, a + back])
    });
    let shown = places.enumerate().map(|(i, bar)| match i {
        0 => Thing::Area(Shape::Guide, vec![bar]),
        _ => Thing::Line(LineStyle::Hidden, bar),
    });
    shown.collect()
}

/// The bearers under the line, on both sides of it, and those under the edges that no cut makes.
fn bearers(plan: &Plan, cut: &Cut) -> impl Iterator<Item = Thing> {
    let all = blocks(cut).into_iter().chain(plan.edge_bearers.clone());
    all.map(|[a, b]| Thing::Line(LineStyle::Hidden, vec![Seg::Line(a, b)]))
}

/// The distances to the guide's marks, where their edge runs level or upright and they and the corner are
/// still there.
fn dimensions(plan: &Plan, cut: &Cut, set_out: &StraightSetOut) -> Vec<Thing> {
    let ends = [&set_out.guide.start, &set_out.guide.end];
    let things = ends.into_iter().filter_map(|end| {
        let (from, side) = scene::reach(plan, end)?;
        let there = end.still_there && scene::still_there(plan, cut.number, from);
        let shown = there && end.tie.distance > 1.0;
        let figure = mark::taped(end);
        shown.then_some(Thing::Dimension(from, end.at, side, 0, figure))
    });
    things.collect()
}

/// The depths to tick, one pass after another.
pub(super) fn depths(cut: &Cut) -> Vec<Value> {
    let passes = cut.passes.iter();
    passes.map(|pass| Value::tape(pass.depth).up()).collect()
}
