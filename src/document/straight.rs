//! Straight cuts, a card each: the drawing the way up the sawyer stands, the guide, the passes to
//! tick, the bearers, what comes free and on what it lies.

mod facts;

use super::block::{Block, Card};
use super::figure::{Figure, Shape, Stroke, Thing};
use super::mark;
use super::say::{name, plain, say, value};
use super::scene;
use crate::cut::{Cut, CutKind, SetOut, StraightSetOut};
use crate::geom::seg::ring;
use crate::geom::{Line, Point, Vector};
use crate::handle::bench::Lies;
use crate::plan::Plan;
use crate::words::{Message, Value};

/// How wide a guide is drawn, mm (judgement: a common rail).
const GUIDE_MM: f64 = 80.0;
/// How far outside the stone the sawyer is drawn, mm (judgement).
const OFF_STONE_MM: f64 = 230.0;

/// A straight cut with the holes drilled before it; `late` when other pages come between it and the card
/// above.
pub(super) fn card(plan: &Plan, cut: &Cut, holes: &[&Cut], late: bool) -> Block {
    let SetOut::Guide(set_out) = &cut.set_out else {
        return Block::Text(plain("bench-straight-title"));
    };
    let stand = Stand::of(plan, cut, set_out);
    let left = vec![Block::Figure(Box::new(figure(plan, cut, set_out, &stand)))];
    let drawn = dimensions(plan, cut, set_out).len() == 2;
    let right = vec![Block::Facts(facts::facts(plan, cut, holes, drawn))];
    let mut blocks = vec![
        Block::Beside(66, left, right),
        Block::Run(plain("bench-depths"), depths(cut)),
    ];
    blocks.extend(
        scene::freed(plan, cut).map(|piece| Block::Boxed(free(plan, &piece.name, piece.mass.high))),
    );
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

/// What comes free, how heavy, and on what it lies.
pub(super) fn free(plan: &Plan, piece: &str, mass: crate::units::Mass) -> Message {
    let id = if mass.kg() > plan.kit.waste_piece.kg() {
        "bench-free-heavy"
    } else {
        "bench-free-light"
    };
    say(
        id,
        [
            ("name", Value::name(piece)),
            ("mass", Value::mass(mass).up()),
        ],
    )
}

fn measured(cut: &Cut) -> Vec<Message> {
    vec![
        say("bench-measured", [("edge", name(&cut.edge))]),
        plain("bench-cut-by"),
    ]
}

/// Where the sawyer stands, and whether the drawing is turned half round for that.
pub(super) struct Stand {
    pub(super) at: Point,
    pub(super) facing: Vector,
    turned: bool,
}

impl Stand {
    /// Beside the line on the kept side, outside the stone: behind the start of a cut that runs up the
    /// drawing, below or above a cut that runs along it.
    pub(super) fn of(plan: &Plan, cut: &Cut, set_out: &StraightSetOut) -> Self {
        let bounds = scene::slab_bounds(plan);
        let [from, to] = set_out.sawn;
        let along = (to - from).unit();
        let kept = if plan.top.balance.x.is_finite() {
            along.left() * (plan.top.balance - from).dot(along.left()).signum()
        } else {
            along.left()
        };
        let middle = from.midpoint(to);
        if along.x.abs() > along.y.abs() {
            let below = kept.y < 0.0;
            let y = if below {
                bounds.min.y - OFF_STONE_MM
            } else {
                bounds.max.y + OFF_STONE_MM
            };
            let x = from.x + along.x.signum() * (cut.length * 0.3).min(600.0);
            let facing = Vector::new(0.0, if below { 1.0 } else { -1.0 });
            return Self {
                at: Point::new(x, y),
                facing,
                turned: !below,
            };
        }
        let turned = from.y > to.y;
        let y = if turned {
            bounds.max.y + OFF_STONE_MM
        } else {
            bounds.min.y - OFF_STONE_MM
        };
        Self {
            at: Point::new(middle.x + kept.x * 450.0, y),
            facing: Vector::new(0.0, if turned { -1.0 } else { 1.0 }),
            turned,
        }
    }
}

fn figure(plan: &Plan, cut: &Cut, set_out: &StraightSetOut, stand: &Stand) -> Figure {
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
    frame.min.y = frame.min.y.min(stand.at.y - 110.0);
    frame.max.y = frame.max.y.max(stand.at.y + 110.0);
    let mut figure = Figure::new(alt, frame);
    figure.turned = stand.turned;
    figure.extend(scene::stage(plan, cut.number));
    figure.extend(bearers(plan, cut, set_out));
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
    figure.add(Thing::PersonAbove(
        stand.at,
        stand.facing,
        value("bench-you", []),
    ));
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
        _ => Thing::Line(Stroke::Hidden, bar),
    });
    shown.collect()
}

/// The bearers under the stone across the line, on both sides of it.
fn bearers(plan: &Plan, cut: &Cut, set_out: &StraightSetOut) -> Vec<Thing> {
    let Some(bearers) = &cut.bearers else {
        return Vec::new();
    };
    let [from, to] = set_out.sawn;
    let along = (to - from).unit();
    let across = along.right();
    let reach = 320.0_f64.min(scene::slab_bounds(plan).height() / 3.0);
    let bounds = scene::grown(scene::slab_bounds(plan), 30.0);
    let within = |p: Point| {
        Point::new(
            p.x.clamp(bounds.min.x, bounds.max.x),
            p.y.clamp(bounds.min.y, bounds.max.y),
        )
    };
    let each = bearers.at.iter().flat_map(|at| {
        let on = from + along * *at;
        let out = |side: f64, off: f64| {
            let near = within(on + across * (side * off));
            let far = within(on + across * (side * (off + reach)));
            Thing::Line(Stroke::Hidden, vec![crate::geom::Seg::Line(near, far)])
        };
        [out(1.0, bearers.waste_off), out(-1.0, bearers.kept_off)]
    });
    each.collect()
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
