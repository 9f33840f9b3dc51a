//! Move and set down: how the slab gets to the trestles and the top to its place with the aid that the
//! job names; the trestles; how it is laid flat and set down.

use crate::geom::seg::{circle, ring};
use crate::geom::{Bounds, Point, Seg, Vector};
use crate::handle::aid::sling::Slings;
use crate::handle::bend::Orientation;
use crate::handle::lifting::record::{Effort, Verdict};
use crate::handle::moving::Moving;
use crate::handle::{HandledPiece, Handling};
use crate::job::Aid;
use crate::plan::{FlawNote, NamedPoint, Plan};
use crate::units::Mass;
use crate::words::{Arg, Message, Unit, Value};

use super::block::{Block, Fact};
use super::day;
use super::figure::{Figure, Lettering, LineStyle, Shape, Side, Thing};
use super::say::{name, plain, say, value};
use super::turning::turned_by;

/// So far apart on the floor stand the words under two trestles, mm.
const WORDS_APART_MM: f64 = 900.0;
/// Height of the trestles as drawn, mm (judgement: low, to leave room for the numbers).
const TRESTLE_MM: f64 = 500.0;
/// Height of hands that steady a stone on edge, mm above the floor (judgement).
const HANDS_MM: f64 = 1000.0;
/// Off the floor where hands or cups carry the stone as drawn, mm (judgement).
const CARRIED_MM: f64 = 300.0;
/// Balance points nearer the middle than this share of the width make both long sides alike (judgement).
const ALIKE: f64 = 0.02;

/// A flaw that comes so near to a long side may part there under the stone's weight, mm (judgement).
const FLAWED_MM: f64 = 50.0;

/// The page's blocks.
pub(super) fn blocks(plan: &Plan) -> Vec<Block> {
    let mut blocks = vec![Block::Title(Vec::new(), title(plan))];
    let [slab, top] = [&plan.handling.slab, &plan.handling.top];
    let half = |piece: &HandledPiece, index: usize, title: &'static str| {
        let corners = [&plan.slab.corners, &plan.top.corners][index];
        let flaws = &plan.slab.flaws[..];
        vec![
            Block::Heading(say(title, down(piece, corners, flaws))),
            Block::Figure(Box::new(carried(plan, piece, index))),
            Block::Facts(facts(plan, piece, index)),
        ]
    };
    blocks.push(Block::Beside(
        50,
        half(slab, 0, "bench-move-slab"),
        half(top, 1, "bench-move-top"),
    ));
    blocks.push(Block::Boxed(rule(plan)));
    let by_hand = |piece: &HandledPiece| piece.lift.by_hand(plan.handling.moving.aid);
    let lifted = if by_hand(top) { top } else { slab };
    let hands = by_hand(lifted).then(|| {
        vec![
            Block::Heading(plain(match lifted.lift.orientation {
                Orientation::Flat => "bench-move-hands",
                Orientation::OnEdge => "bench-move-hands-on-edge",
            })),
            Block::Figure(Box::new(hands(plan, lifted))),
        ]
    });
    let trestles = trestles(plan).map(|figure| {
        vec![
            Block::Heading(say("bench-move-trestles", [("corner", end(plan))])),
            Block::Figure(Box::new(figure)),
        ]
    });
    match (trestles, hands) {
        (Some(left), Some(right)) => blocks.push(Block::Beside(50, left, right)),
        (left, right) => blocks.extend(left.into_iter().chain(right).flatten()),
    }
    let turned = |fact: &'static str, id: &'static str, piece| {
        Fact::new(fact, value(id, [("hands", turned_by(plan, piece))]))
    };
    blocks.push(Block::Facts(vec![
        turned("bench-fact-flat", "bench-turn-slab", slab),
        turned("bench-fact-set", "bench-turn-top", top),
    ]));
    blocks
}

/// Which long side is down on edge: the one that no flaw reaches, else the one nearer the balance point, by the corners
/// nearest its ends; where that is the same, either.
fn down(piece: &HandledPiece, corners: &[NamedPoint], flaws: &[FlawNote]) -> [Arg; 2] {
    let [first, second] = piece.base_line;
    let up = (second - first).unit().left() * piece.width_mm;
    let share = (piece.balance - first).dot(up.unit()) / piece.width_mm;
    let sides = [[first, second], [first + up, second + up]];
    let flawed = sides.map(|[a, b]| {
        let side = Seg::Line(a, b);
        let near = |seg: &Seg| [seg.start(), seg.end()].map(|p| side.distance(p));
        let all = flaws.iter().flat_map(|f| &f.path).flat_map(near);
        all.fold(f64::INFINITY, f64::min) < FLAWED_MM
    });
    let [a, b] = match flawed {
        [true, false] => sides[1],
        [false, true] => sides[0],
        _ => sides[usize::from(share > 0.5)],
    };
    let nearest = |end: Point| {
        let far = |c: &&NamedPoint| c.at.distance(end);
        let nearest = corners.iter().min_by(|a, b| far(a).total_cmp(&far(b)));
        nearest.map_or("", |c| c.name.as_str())
    };
    let (from, to) = (nearest(a), nearest(b));
    let alike = flawed[0] == flawed[1] && (share - 0.5).abs() < ALIKE || from == to;
    let dash = if from.chars().all(char::is_alphabetic) {
        ""
    } else {
        "-"
    };
    [
        ("alike", Value::Case(if alike { "yes" } else { "no" })),
        ("side", Value::name(format!("{from}{dash}{to}"))),
    ]
}

fn title(plan: &Plan) -> Message {
    plain(match plan.handling.moving.aid {
        Aid::None => "bench-move-title",
        Aid::Trolley => "bench-move-title-trolley",
        Aid::VacuumLifter => "bench-move-title-vacuum",
        Aid::Gantry => "bench-move-title-gantry",
    })
}

/// A stone on edge with the aid, from the side.
fn carried(plan: &Plan, piece: &HandledPiece, index: usize) -> Figure {
    let moving: &Moving = &plan.handling.moving;
    let (length, height) = (piece.length_mm, piece.width_mm);
    let aids = &moving.aids[index];
    let lift = match moving.aid {
        Aid::Trolley => aids.trolley.deck_mm,
        Aid::None | Aid::VacuumLifter | Aid::Gantry => CARRIED_MM,
    };
    let frame = both_in_view(plan, length, lift);
    let alt = say(
        "bench-move-alt",
        [("mass", Value::mass(piece.mass.high).up())],
    );
    let mut figure = Figure::new(alt, frame);
    figure.add(floor(frame));
    if moving.aid == Aid::Trolley {
        let middle = Point::new(length / 2.0, 0.0);
        figure.add(Thing::TrolleySide(middle, lift, (length * 0.7).min(1500.0)));
    }
    figure.add(Thing::Area(
        Shape::Kept,
        vec![upright(0.0, length, lift, lift + height)],
    ));
    match moving.aid {
        Aid::Gantry => figure.extend(slings(plan, piece, index, lift)),
        Aid::VacuumLifter => figure.extend(cups(plan, index, lift)),
        Aid::None | Aid::Trolley => {}
    }
    for (x, right) in [(-420.0, true), (length + 420.0, false)] {
        figure.add(Thing::PersonSide(
            Point::new(x, 0.0),
            right,
            HANDS_MM.min(lift + height),
        ));
    }
    let middle = Point::new(length / 2.0, lift + height * 0.62);
    figure.add(Thing::Label(
        middle,
        Lettering::Number,
        Value::mass(piece.mass.high).up(),
    ));
    figure
}

/// A view with a stone of a length in its middle that would show the slab and the top as well: side by side they are
/// at one scale.
fn both_in_view(plan: &Plan, length: f64, lift: f64) -> Bounds {
    let both = [&plan.handling.slab, &plan.handling.top];
    let longest = both.map(|p| p.length_mm).into_iter().fold(0.0, f64::max);
    let highest = both.map(|p| p.width_mm).into_iter().fold(0.0, f64::max);
    let beside = (longest - length) / 2.0 + 750.0;
    Bounds {
        min: Point::new(-beside, 0.0),
        max: Point::new(length + beside, (lift + highest).max(1800.0) + 100.0),
    }
}

fn floor(frame: Bounds) -> Thing {
    let [a, b] = [frame.min.x, frame.max.x].map(|x| Point::new(x, 0.0));
    Thing::Line(LineStyle::Solid, vec![Seg::Line(a, b)])
}

fn upright(from: f64, to: f64, low: f64, high: f64) -> Vec<Seg> {
    ring(&[
        Point::new(from, low),
        Point::new(to, low),
        Point::new(to, high),
        Point::new(from, high),
    ])
}

/// Two slings down to the stone from one hook.
fn slings(plan: &Plan, piece: &HandledPiece, index: usize, lift: f64) -> Vec<Thing> {
    let Some(slings) = &plan.handling.moving.aids[index].slings else {
        return Vec::new();
    };
    let top = lift + piece.width_mm;
    let [a, b] = slings.from_end_mm;
    let hook = Point::new(f64::midpoint(a, b), top + slings.hook_mm.min(900.0));
    let leg = |x: f64| Thing::Line(LineStyle::Solid, vec![Seg::Line(hook, Point::new(x, top))]);
    let round = |x: f64| {
        Thing::Line(
            LineStyle::Solid,
            vec![Seg::Line(Point::new(x, top), Point::new(x, lift))],
        )
    };
    let end = Point::new(0.0, lift);
    vec![
        leg(a),
        leg(b),
        round(a),
        round(b),
        Thing::Dimension(end, Point::new(a, lift), Side::Below, 0, Value::size(a)),
        Thing::Dimension(end, Point::new(b, lift), Side::Below, 1, Value::size(b)),
    ]
}

/// The cups of a vacuum lifter on the stone's face.
fn cups(plan: &Plan, index: usize, lift: f64) -> Vec<Thing> {
    use crate::handle::aid::vacuum::Cups;
    let Cups::Placed {
        from_end_and_side_mm,
        ..
    } = &plan.handling.moving.aids[index].vacuum.cups
    else {
        return Vec::new();
    };
    let cup =
        |[x, y]: &[f64; 2]| Thing::Area(Shape::Tool, vec![circle(Point::new(*x, lift + y), 110.0)]);
    let mut things: Vec<Thing> = from_end_and_side_mm.iter().map(cup).collect();
    let mut along: Vec<f64> = from_end_and_side_mm.iter().map(|p| p[0]).collect();
    along.sort_by(f64::total_cmp);
    along.dedup_by(|a, b| (*a - *b).abs() < 1.0);
    let end = Point::new(0.0, lift);
    for (row, x) in (0..2).zip(along) {
        let at = Point::new(x, lift);
        things.push(Thing::Dimension(end, at, Side::Below, row, Value::size(x)));
    }
    things
}

fn facts(plan: &Plan, piece: &HandledPiece, index: usize) -> Vec<Fact> {
    let moving = &plan.handling.moving;
    let (aids, fall) = (&moving.aids[index], &moving.falls[index]);
    let mut facts = Vec::new();
    match moving.aid {
        Aid::Trolley => facts.push(marked("bench-fact-trolley", aids.trolley.rated)),
        Aid::VacuumLifter => facts.push(marked("bench-fact-vacuum", aids.vacuum.rated)),
        Aid::Gantry => facts.extend(aids.slings.as_ref().map(in_slings)),
        Aid::None => {}
    }
    facts.push(Fact::new("bench-fact-lift", verdict(piece, &plan.handling)));
    facts.push(Fact::new(
        "bench-fact-fall",
        value("bench-fall", [("clear", Value::size(fall.shadow_mm))]),
    ));
    facts
}

fn marked(aid: &'static str, rated: Mass) -> Fact {
    let rated = [("rated", Value::mass(rated).up())];
    Fact::new(aid, value("bench-rated", rated))
}

/// What two slings carry.
pub(super) fn in_slings(slings: &Slings) -> Fact {
    let args = [
        ("each", Value::mass(slings.each).up()),
        ("tension", Value::mass(slings.tension).up()),
        (
            "angle",
            Value::of(slings.legs_deg, Unit::Degree).decimals(0),
        ),
    ];
    Fact::new("bench-fact-slings", value("bench-slings", args))
}

/// What hands may do with a stone.
pub(super) fn verdict(piece: &HandledPiece, handling: &Handling) -> Value {
    let never = || {
        let people = ("people", handling.people.into());
        let limit = Value::mass(piece.lift.team_limit).down();
        let pair = [("mass", Value::mass(piece.lift.pair_limit).down())];
        let two = if handling.people > 2 {
            value("bench-lift-two", pair)
        } else {
            Value::Nothing
        };
        value("bench-lift-never", [people, ("limit", limit), ("two", two)])
    };
    match piece.lift.verdict {
        Verdict::NotAHandLift { .. } => never(),
        Verdict::Over { .. } if handling.moving.aid != Aid::None => never(),
        Verdict::Over { carried, limit, .. } => value(
            match piece.lift.effort() {
                Effort::Within | Effort::Above => "bench-lift-above",
                Effort::Beyond => "bench-lift-over",
            },
            [
                ("carried", Value::mass(carried).up()),
                ("limit", Value::mass(limit).down()),
            ],
        ),
        Verdict::Tips { .. } => value("bench-lift-tips", []),
        Verdict::Breaks => value("bench-lift-breaks", []),
        Verdict::TooManyHands { people } => value("bench-lift-many", [("people", people.into())]),
        Verdict::Within { .. } => {
            let most = piece.lift.lifters.iter().map(|l| l.share.mass());
            let most = most
                .max_by(|a, b| a.kg().total_cmp(&b.kg()))
                .unwrap_or_default();
            value(
                "bench-lift-within",
                [
                    ("people", piece.lift.lifters.len().into()),
                    ("most", Value::mass(most).up()),
                ],
            )
        }
    }
}

/// How the stone is carried.
fn rule(plan: &Plan) -> Message {
    let flat = |piece: &HandledPiece| {
        let ends = &piece.strength.ends_only;
        ends.worst.stress_mpa > piece.strength.allowed_mpa
    };
    if flat(&plan.handling.slab) || flat(&plan.handling.top) {
        plain("bench-move-on-edge")
    } else {
        plain("bench-move-tied")
    }
}

/// Where people stand who lift a stone by hand, from above.
fn hands(plan: &Plan, piece: &HandledPiece) -> Figure {
    let outline = if std::ptr::eq(piece, &raw const plan.handling.slab) {
        &plan.slab.outline
    } else {
        &plan.top.outline
    };
    let bounds = outline.bounds();
    let frame = super::scene::grown(bounds, 420.0);
    let mut figure = Figure::new(plain("bench-hands-alt"), frame);
    figure.add(Thing::Area(Shape::Kept, vec![outline.segs().to_vec()]));
    figure.add(Thing::Balance(piece.balance));
    for lifter in &piece.lift.lifters {
        let out = (lifter.point - piece.balance).unit_or(Vector::new(0.0, 1.0));
        let at = lifter.point + out * 220.0;
        let words = value(
            "bench-hands",
            [
                ("number", lifter.number.into()),
                ("mass", Value::mass(lifter.share.mass()).up()),
            ],
        );
        figure.add(Thing::PersonAbove(at, -out, words));
    }
    figure
}

/// Bearers in the side view, as drawn: how many, and how wide and high, mm. A cut's card says where they lie.
const BEARERS: u8 = 7;
const BEARER_MM: f64 = 60.0;

/// The name of the slab's end that trestles are measured from.
fn end(plan: &Plan) -> Value {
    name(plan.slab.corners.first().map_or("A", |c| &c.name))
}

/// The slab on its two trestles, from the side, with the distances from its end.
fn trestles(plan: &Plan) -> Option<Figure> {
    let bench = plan.handling.bench.first()?;
    let length = plan.handling.slab.length_mm;
    let thick = plan.slab.thickness.mean;
    let frame = Bounds {
        min: Point::new(-100.0, -150.0),
        max: Point::new(length + 100.0, TRESTLE_MM + thick + 145.0),
    };
    let [a, b] = bench.at_mm;
    let alt = say(
        "bench-trestles-alt",
        [("first", Value::size(a)), ("second", Value::size(b))],
    );
    let mut figure = Figure::new(alt, frame);
    figure.add(floor(frame));
    figure.extend([a, b].map(|x| Thing::TrestleSide(Point::new(x, TRESTLE_MM))));
    let loads = bench.bears.into_iter().flatten();
    // Under trestles that stand close together the words stand farther out, lest two numbers be read as one.
    let aside = ((WORDS_APART_MM - (b - a)) / 2.0).min(a).min(length - b);
    let aside = aside.max(0.0);
    let under = [a - aside, b + aside];
    figure.extend(loads.zip(under).zip(1..).map(|((mass, x), number)| {
        let args = [
            ("number", Value::count(number)),
            ("mass", Value::mass(mass).up()),
        ];
        let at = Point::new(x, -80.0);
        Thing::Label(at, Lettering::Name, value("bench-hands", args))
    }));
    let deck = TRESTLE_MM + day::BOARD_MM;
    let lies = deck + BEARER_MM;
    let board = upright(0.0, length, TRESTLE_MM, deck);
    figure.add(Thing::Area(Shape::Tool, vec![board]));
    figure.extend((0..BEARERS).map(|k| {
        let from = (length - BEARER_MM) * f64::from(k) / f64::from(BEARERS - 1);
        let bearer = upright(from, from + BEARER_MM, deck, lies);
        Thing::Area(Shape::Tool, vec![bearer])
    }));
    let stone = upright(0.0, length, lies, lies + thick);
    figure.add(Thing::Area(Shape::Kept, vec![stone]));
    let end = Point::new(0.0, lies + thick);
    for (row, x) in [(0, a), (1, b)] {
        let at = Point::new(x, lies + thick);
        figure.add(Thing::Dimension(end, at, Side::Above, row, Value::size(x)));
    }
    Some(figure)
}
