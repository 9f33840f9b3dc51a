//! Where the helper stands: in line with no disc, out of reach of waste that falls.

use super::scene;
use super::straight::Stand as Sawyer;
use crate::cut::{Cut, SetOut};
use crate::geom::{Bounds, Point, Seg, Vector};
use crate::plan::Plan;

/// Half the strip in line with the disc that nobody enters, mm (judgement: the disc kicks and throws along its line).
pub(super) const HALF_STRIP_MM: f64 = 175.0;
/// Half a person, mm (judgement: 460 mm across the shoulders).
const HALF_PERSON_MM: f64 = 250.0;
/// How far off the slab a helper stands, the nearest that serves, mm (judgement: to the tap in a few steps).
const OFF_MM: [f64; 3] = [700.0, 1000.0, 1400.0];
/// Places are tried so far apart, mm.
const STEP_MM: f64 = 100.0;
/// More room than this beside a line is no better, mm.
const ROOM_MM: f64 = 400.0;
/// What a millimetre farther off is worth in room, mm (judgement).
const STEPS: f64 = 0.2;
/// The helper keeps so far from the sawyer's way along a cut, mm (judgement: out of arms' and elbows' reach).
const FROM_SAWYER_MM: f64 = 650.0;

/// Where the helper stands, and at which cuts.
pub(super) struct Stand {
    /// On the ground.
    pub(super) at: Point,
    /// The cuts, by number.
    pub(super) cuts: Vec<usize>,
}

/// The helper's places, and the cuts whose line turns so far round that no one place is out of it.
///
/// Consecutive cuts share a place as long as one serves them all. Time grows with the cuts, their strokes and the
/// way round the slab.
pub(super) fn stands(plan: &Plan) -> (Vec<Stand>, Vec<usize>) {
    let slab = scene::slab_bounds(plan);
    let (places, middle) = (places(slab), slab.centre());
    let (mut stands, mut turning) = (Vec::new(), Vec::new());
    let mut open: Option<(Vec<f64>, Vec<usize>)> = None;
    for cut in plan.cuts.iter().filter(|c| !c.strokes.is_empty()) {
        let here: Vec<f64> = places.iter().map(|p| room(plan, cut, *p)).collect();
        if !serves(&here) {
            turning.push(cut.number);
            continue;
        }
        let both = open.as_ref().map(|(rooms, _)| least(rooms, &here));
        match (both, &mut open) {
            (Some(both), Some((rooms, cuts))) if serves(&both) => {
                *rooms = both;
                cuts.push(cut.number);
            }
            _ => {
                stands.extend(open.take().map(|group| stand(&places, middle, group)));
                open = Some((here, vec![cut.number]));
            }
        }
    }
    stands.extend(open.map(|group| stand(&places, middle, group)));
    (stands, turning)
}

fn serves(rooms: &[f64]) -> bool {
    rooms.iter().any(|room| *room > 0.0)
}

fn least(a: &[f64], b: &[f64]) -> Vec<f64> {
    a.iter().zip(b).map(|(a, b)| a.min(*b)).collect()
}

/// Of the places that serve, the best: room beside the lines, and few steps off the slab's middle.
fn stand(places: &[Point], middle: Point, (rooms, cuts): (Vec<f64>, Vec<usize>)) -> Stand {
    let worth = |(room, at): &(f64, Point)| room.min(ROOM_MM) - middle.distance(*at) * STEPS;
    let serving = rooms.into_iter().zip(places.iter().copied());
    let best = serving
        .filter(|(room, _)| *room > 0.0)
        .max_by(|a, b| worth(a).total_cmp(&worth(b)));
    Stand {
        at: best.map_or(middle, |(_, at)| at),
        cuts,
    }
}

/// Places round a box, the nearest way round first.
fn places(slab: Bounds) -> Vec<Point> {
    let round = |off: &f64| {
        let b = scene::grown(slab, *off);
        let (across, up) = (b.width(), b.height());
        let [right, left] = [Vector::new(1.0, 0.0), Vector::new(-1.0, 0.0)];
        let sides = [
            (b.min, right, across),
            (Point::new(b.max.x, b.min.y), right.left(), up),
            (b.max, left, across),
            (Point::new(b.min.x, b.max.y), right.right(), up),
        ];
        sides.map(|(from, way, long)| {
            #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
            let count = (long / STEP_MM).ceil().clamp(1.0, 1e4) as u32;
            (0..count).map(move |i| from + way * (long * f64::from(i) / f64::from(count)))
        })
    };
    OFF_MM.iter().flat_map(round).flatten().collect()
}

/// How much room a person has at a place beside the disc's lines and the waste that a cut frees, mm; without any,
/// nothing or less.
fn room(plan: &Plan, cut: &Cut, at: Point) -> f64 {
    let first = cut.strokes.first().map_or(0.0, |s| s.depth);
    let lines = cut.strokes.iter().filter(|s| s.depth <= first);
    let line = |stroke: &crate::cut::Stroke| {
        let along = Vector::at_angle(stroke.heading);
        (at - stroke.from).cross(along).abs() - HALF_STRIP_MM - HALF_PERSON_MM
    };
    let falls = scene::freed(plan, cut).flat_map(|piece| &piece.outline);
    let clear = |ring: &Vec<Seg>| {
        let b = Bounds::around(ring.iter().flat_map(|s| [s.start(), s.at(0.5), s.end()]));
        // What tips over its bearers reaches as far as it is wide.
        off(b, at) - b.width().min(b.height()) - HALF_PERSON_MM
    };
    let sawyer = sawyer(plan, cut).map(|way| way.distance(at) - FROM_SAWYER_MM);
    lines
        .map(line)
        .chain(falls.map(clear))
        .chain(sawyer)
        .fold(f64::INFINITY, f64::min)
}

/// The way of the sawyer beside a cut along a guide.
fn sawyer(plan: &Plan, cut: &Cut) -> Option<Seg> {
    let SetOut::Guide(set_out) = &cut.set_out else {
        return None;
    };
    let at = Sawyer::of(plan, cut, set_out).at;
    let [from, to] = set_out.sawn;
    let across = (to - from).unit().left();
    let beside = across * (at - from).dot(across);
    Some(Seg::Line(from + beside, to + beside))
}

/// How far a point lies outside a box, mm.
fn off(b: Bounds, at: Point) -> f64 {
    let x = (b.min.x - at.x).max(at.x - b.max.x).max(0.0);
    let y = (b.min.y - at.y).max(at.y - b.max.y).max(0.0);
    x.hypot(y)
}
