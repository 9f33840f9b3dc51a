//! What the top stands on: each support with its place and what it carries, the widest stretch without one, and
//! where the top reaches too far. All of it lies as whoever wrote the job drew the top, since its left is there.

use super::block::{Block, Fact};
use super::figure::{Figure, Lettering, Shape, Thing};
use super::group::busy;
use super::say::{name, plain, say, value};
use crate::geom::seg::{circle, ring};
use crate::geom::{Point, Pose};
use crate::handle::finding::setting::{RESTS, limit, named};
use crate::handle::overhang::{Overhang, ReachLimit};
use crate::handle::support::{Bearing, BearingVerdict, Setting};
use crate::plan::Plan;
use crate::words::Value;

/// The blocks, closer together in a busy job; none of a top without supports.
pub(super) fn blocks(plan: &Plan) -> Vec<Block> {
    let Some(setting) = &plan.handling.setting else {
        return Vec::new();
    };
    let figure = vec![Block::Figure(Box::new(figure(plan, setting)))];
    let mut left = facts(plan, setting);
    let mut asked = plan.stops.iter().chain(&plan.open);
    let heading = if asked.any(|f| f.phrase == &RESTS) {
        let [a, b] = ["bench-supports-short", "bench-move-supports"].map(|id| value(id, []));
        say("bench-sentences", [("a", a), ("b", b)])
    } else {
        plain("bench-move-supports")
    };
    let mut blocks = vec![Block::Heading(heading)];
    if busy(plan) {
        blocks.push(Block::Beside(45, figure, vec![Block::Facts(left)]));
    } else {
        let right = left.split_off(left.len().div_ceil(2));
        blocks.extend(figure);
        blocks.push(Block::Beside(
            50,
            vec![Block::Facts(left)],
            vec![Block::Facts(right)],
        ));
    }
    blocks
}

/// The edge or corner that reaches farthest beyond its supports, where that is too far.
fn too_far(setting: &Setting) -> Option<&Overhang> {
    let over = setting.overhangs.iter().filter(|o| o.is_over());
    over.max_by(|a, b| a.overhang_mm.total_cmp(&b.overhang_mm))
}

/// From the slab's frame into the top's own.
fn own(plan: &Plan) -> Pose {
    let placed = &plan.placement;
    Pose::new(placed.turn.to_radians(), placed.shift).inverse()
}

fn figure(plan: &Plan, setting: &Setting) -> Figure {
    let own = own(plan);
    let outline = plan.top.outline.posed(own);
    let frame = super::scene::grown(outline.bounds(), 60.0);
    let mut figure = Figure::new(plain("bench-supports-alt"), frame);
    let cutouts = plan.top.cutouts.iter();
    let cutouts = cutouts.map(|ring| ring.iter().map(|s| s.posed(own)).collect());
    let rings = std::iter::once(outline.segs().to_vec()).chain(cutouts);
    figure.add(Thing::Area(Shape::Kept, rings.collect()));
    let bearings = setting.bearings.iter().zip(1..);
    figure.extend(bearings.flat_map(|(bearing, number)| drawn(bearing, own, number)));
    if let Some(over) = too_far(setting) {
        let [a, b] = over.measured.map(|p| own.apply(p));
        let words = Value::size(over.overhang_mm).up();
        figure.add(Thing::Arrow(a, b));
        figure.add(Thing::Label(a.midpoint(b), Lettering::Number, words));
    }
    figure
}

/// A support with its number.
fn drawn(bearing: &Bearing, own: Pose, number: i64) -> [Thing; 2] {
    let [a, b] = bearing.place.map(|p| own.apply(p));
    let outline = if a.distance(b) < 1.0 {
        circle(a, bearing.length_mm / 2.0)
    } else {
        let side = (b - a).unit().left() * 9.0;
        ring(&[a - side, b - side, b + side, a + side])
    };
    [
        Thing::Area(Shape::Tool, vec![outline]),
        Thing::Label(a.midpoint(b), Lettering::Name, Value::Count(number)),
    ]
}

fn facts(plan: &Plan, setting: &Setting) -> Vec<Fact> {
    let own = own(plan);
    let corner = plan.top.outline.posed(own).bounds().min;
    let mut facts: Vec<Fact> = Vec::new();
    for (bearing, number) in setting.bearings.iter().zip(1..) {
        let of = |words| Fact {
            name: say(
                "bench-support-name",
                [
                    ("number", Value::Count(number)),
                    ("what", name(&bearing.what)),
                ],
            ),
            value: words,
        };
        facts.push(of(place(bearing, own, corner)));
        facts.extend(overloaded(bearing).map(of));
    }
    if let Some(span) = &setting.span {
        let args = [
            ("length", Value::size(span.span_mm).up()),
            ("limit", limit(span.limit)),
        ];
        facts.push(Fact::new("bench-fact-free", value("bench-free-span", args)));
    }
    facts.extend(too_far(setting).map(|over| Fact::new("bench-fact-over", reaching(over))));
    facts
}

/// How far an edge reaches, beside what is published; where that is kept a person there is too much for it.
fn reaching(over: &Overhang) -> Value {
    let length = Value::size(over.overhang_mm).up();
    let args = [("edge", named(&over.edge)), ("length", length)];
    match over.limit {
        ReachLimit::UpTo { limit_mm } if over.overhang_mm <= limit_mm => {
            value("bench-overhang-person", args)
        }
        _ => {
            let [edge, length] = args;
            value(
                "bench-overhang",
                [edge, length, ("limit", limit(over.limit))],
            )
        }
    }
}

/// Where the middle of a support is, from the top's left end and lower side as drawn, and what it carries.
fn place(bearing: &Bearing, own: Pose, corner: Point) -> Value {
    let [a, b] = bearing.place.map(|p| own.apply(p));
    let from = a.midpoint(b) - corner;
    value(
        "bench-support",
        [
            ("along", Value::size(from.x).up()),
            ("up", Value::size(from.y).up()),
            ("mass", Value::mass(bearing.share.mass()).up()),
        ],
    )
}

/// What a person leaning on the top does to a support that is over its limit.
fn overloaded(bearing: &Bearing) -> Option<Value> {
    let BearingVerdict::Over { limit } = bearing.verdict else {
        return None;
    };
    let args = [
        ("person", Value::mass(bearing.with_person).up()),
        ("limit", Value::mass(limit).down()),
    ];
    Some(value("bench-bearing-over", args))
}
