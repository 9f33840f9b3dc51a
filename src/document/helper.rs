//! The helper's page: read aloud and signed before the first cut.

use super::block::{Block, Tick};
use super::dust;
use super::figure::{Figure, Lettering, Shape, Thing};
use super::say::{plain, say, value};
use super::scene;
use crate::cut::{Cut, CutKind, SetOut};
use crate::geom::seg::ring;
use crate::geom::{Bounds, Point, Vector};
use crate::handle::people::HALF_STRIP_MM;
use crate::job::{DustMethod, Power};
use crate::plan::Plan;
use crate::words::{Message, Value};

/// How far the strip in line with the disc is drawn beyond the stone, mm (judgement: it shows which side, not how far).
const STRIP_MM: f64 = 300.0;
/// So many strips are named.
const MOST_NAMED: usize = 4;

/// The page's blocks.
pub(super) fn blocks(plan: &Plan) -> Vec<Block> {
    let title = if plan.stops.is_empty() {
        "helper-title"
    } else {
        "helper-stopped"
    };
    let mut blocks = emergency(plan);
    blocks.push(Block::Title(Vec::new(), plain(title)));
    let ticks = Block::Ticks(place(plan));
    blocks.push(match figure(plan) {
        Some(figure) => Block::Beside(50, vec![Block::Figure(Box::new(figure))], vec![ticks]),
        None => ticks,
    });
    blocks.push(Block::Heading(plain("helper-stop-heading")));
    blocks.push(Block::Ticks(stop(plan)));
    blocks.push(Block::Signs(dust::signs(plan)));
    blocks.push(Block::Heading(plain("helper-never-heading")));
    let never = [
        "helper-never-line",
        "helper-never-under",
        "helper-never-catch",
        "helper-never-disc",
        "helper-never-mask",
    ];
    blocks.push(Block::Ticks(never.map(|id| Tick::new(plain(id))).to_vec()));
    let signed = [
        "helper-fill-helper",
        "helper-fill-sawyer",
        "helper-fill-date",
    ]
    .map(plain);
    let fill = std::iter::once(shut_off(plan)).chain(signed).collect();
    blocks.push(Block::Blanks(fill));
    blocks
}

/// Whom to call and where this is: the first line.
pub(super) fn emergency(plan: &Plan) -> Vec<Block> {
    let number = plan.hazards.emergency.number;
    let here = ["helper-fill-address", "helper-fill-first_aid"].map(plain);
    if number.is_empty() {
        let mut blanks = vec![plain("helper-fill-emergency")];
        blanks.extend(here);
        return vec![Block::Blanks(blanks)];
    }
    vec![
        Block::Boxed(say("bench-emergency", [("number", Value::name(number))])),
        Block::Blanks(here.to_vec()),
    ]
}

fn place(plan: &Plan) -> Vec<Tick> {
    let (stands, handling) = (&plan.stands, &plan.handling);
    let falls = handling.moving.falls.iter().map(|f| f.shadow_mm);
    let mut ticks = Vec::new();
    if !stands.helper.is_empty() {
        ticks.push(Tick::new(plain("helper-place-stay")));
    }
    if !stands.turning.is_empty() {
        let cuts = [("cuts", numbers(&stands.turning))];
        ticks.push(Tick::new(say("helper-place-turns", cuts)));
    }
    ticks.push(Tick::new(say(
        "helper-place-fall",
        [("reach", Value::size(falls.fold(0.0, f64::max)))],
    )));
    let hands = match [&handling.slab, &handling.top].map(|p| p.lift.lifters.is_empty()) {
        [_, true] => "none",
        [true, false] => "top",
        [false, false] => "both",
    };
    ticks.push(Tick::new(say(
        "bench-helper-weight",
        [
            ("slab", Value::mass(plan.slab.mass.high).up()),
            ("top", Value::mass(plan.top.mass.high).up()),
            ("hands", Value::Case(hands)),
        ],
    )));
    ticks
}

fn numbers(cuts: &[usize]) -> Value {
    Value::List(cuts.iter().map(|n| Value::count(*n)).collect())
}

/// How the work is stopped, and when.
pub(super) fn stop(plan: &Plan) -> Vec<Tick> {
    let power = match plan.kit.power {
        Power::Mains => "helper-stop-mains",
        Power::Air => "helper-stop-air",
        Power::Battery | Power::Engine => "helper-stop-sawyer_only",
    };
    let dust = match plan.kit.dust_method {
        DustMethod::Water => "helper-stop-water",
        DustMethod::Shroud => "helper-stop-shroud",
        DustMethod::None => "helper-stop-none",
    };
    [
        "helper-stop-hand",
        "helper-stop-touch",
        power,
        dust,
        "helper-stop-when",
    ]
    .map(|id| Tick::new(plain(id)))
    .to_vec()
}

/// Where the power, the air or the water is cut off.
pub(super) fn shut_off(plan: &Plan) -> Message {
    plain(match (plan.kit.power, plan.kit.dust_method) {
        (Power::Mains, _) => "helper-fill-mains",
        (Power::Air, _) => "helper-fill-air",
        (_, DustMethod::Water) => "helper-fill-water",
        (_, DustMethod::Shroud | DustMethod::None) => "bench-vacuum-off",
    })
}

/// The place seen from above: the sawyer at the first cut along a guide, the helper's places, and beyond the ends
/// of every straight cut the strip in line with the disc.
fn figure(plan: &Plan) -> Option<Figure> {
    let stands = &plan.stands.helper;
    let own = plan.cuts.iter().filter(|c| c.cutout.is_none());
    let along_guide = |cut: &Cut| match &cut.set_out {
        SetOut::Guide(set_out) if cut.kind == CutKind::Straight => Some((*set_out).clone()),
        _ => None,
    };
    let straight: Vec<_> = own.filter_map(|c| Some((c, along_guide(c)?))).collect();
    let first = straight.first();
    let number = first.map(|(cut, _)| *cut).or(plan.cuts.first())?.number;
    let strips: Vec<_> = straight.iter().flat_map(|(_, s)| strips(s.sawn)).collect();
    let sawyer = first.and_then(|(cut, _)| plan.stands.sawyer_at(cut.number));
    let slab = scene::slab_bounds(plan);
    let shown = strips.iter().flatten().copied();
    let people = stands.iter().map(|s| s.at).chain(sawyer.map(|s| s.at));
    let shown = Bounds::around(shown.chain(people).chain([slab.min, slab.max]));
    let alt = say("helper-place-drawing", [("cut", number.into())]);
    let mut figure = Figure::new(alt, scene::grown(shown, 100.0));
    figure.extend(scene::stage(plan, number));
    for strip in &strips {
        figure.add(Thing::Area(Shape::Danger, vec![ring(strip)]));
    }
    figure.extend(first.into_iter().flat_map(|(cut, _)| scene::kerf(cut)));
    if let Some(sawyer) = sawyer {
        let word = value("helper-place-sawyer", []);
        figure.add(Thing::PersonAbove(sawyer.at, sawyer.facing, word));
    }
    for stand in stands {
        let word = if stands.len() > 1 {
            value("helper-place-at", [("cuts", numbers(&stand.cuts))])
        } else {
            value("helper-place-helper", [])
        };
        let facing = (slab.centre() - stand.at).unit();
        figure.add(Thing::PersonAbove(stand.at, facing, word));
    }
    let nobody = |strip: &[Point; 4]| {
        let far = strip[2].midpoint(strip[3]);
        let out = (far - strip[0].midpoint(strip[1])).unit();
        let word = value("helper-place-nobody", []);
        Thing::Towards(far, out, Lettering::Name, word)
    };
    // The strips look alike: of many only the first are named.
    figure.extend(strips.iter().take(MOST_NAMED).map(nobody));
    Some(figure)
}

/// The strips beyond both ends of a line, each from its end outwards.
fn strips([from, to]: [Point; 2]) -> [[Point; 4]; 2] {
    let strip = |end: Point, out: Vector| {
        let side = out.left() * HALF_STRIP_MM;
        let far = end + out * STRIP_MM;
        [end - side, end + side, far + side, far - side]
    };
    let along = (to - from).unit();
    [strip(from, -along), strip(to, along)]
}
