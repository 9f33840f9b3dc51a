//! Figures that are drawn again and again: people, trestles, the trolley, the machine, all to scale.
//!
//! Sizes of a person: 1750 mm tall, 460 mm across the shoulders (judgement, a grown person).

use super::drawing::Drawing;
use super::item::{Ink, Path, PenStroke};
use super::labels::around;
use super::pen::{MIDDLE_MM, NARROW_MM, grown};
use crate::document::figure::Lettering;
use crate::geom::seg::{capsule, circle, ring};
use crate::geom::{Bounds, Point, Seg, Vector};

/// Nobody is drawn smaller on paper than a head of this radius, mm.
const LEAST_HEAD_MM: f64 = 1.3;
/// Room for the word beside a person, mm.
const WORD_MM: f64 = 8.0;
/// Nor larger than with shoulders of this width, mm: beside a small stone a person stands for a place.
const MOST_SHOULDERS_MM: f64 = 22.0;

/// A person seen from above: shoulders, head and arms towards what is faced; the word beside it.
pub(super) fn above(drawing: &mut Drawing, at: Point, facing: Vector, word: &str) {
    let c = drawing.at(at);
    let way = drawing.way(facing).unit();
    let shoulders = drawing.length(460.0).min(MOST_SHOULDERS_MM);
    let unit = (shoulders / 460.0).max(LEAST_HEAD_MM / 100.0);
    let across = way.left();
    let spot = |side: f64, ahead: f64| c + across * (side * unit) + way * (ahead * unit);
    let line = PenStroke::solid(MIDDLE_MM, Ink::Black);
    let limb = |a: Point, b: Point| {
        Path::closed(
            vec![capsule(a, b, 34.0 * unit)],
            Some(line),
            Some(Ink::Black),
        )
    };
    let shoulders = capsule(spot(-150.0, 0.0), spot(150.0, 0.0), 85.0 * unit);
    let head = circle(spot(0.0, 20.0), 100.0 * unit);
    drawing.put([
        limb(spot(-185.0, 0.0), spot(-120.0, 210.0)).into(),
        limb(spot(185.0, 0.0), spot(120.0, 210.0)).into(),
        Path::closed(vec![shoulders], Some(line), Some(Ink::Black)).into(),
        Path::closed(vec![head], Some(line), Some(Ink::White)).into(),
    ]);
    drawing.occupy(grown(Bounds::around([c]), 240.0 * unit));
    if !word.is_empty() {
        // On the other side where the paper ends: the word would go over the stone.
        let area = drawing.labels.area();
        let [left, right] = [1.0, -1.0].map(|side| c + across * (side * 330.0 * unit));
        let room = |p: Point| p.x > area.min.x + WORD_MM && p.x < area.max.x - WORD_MM;
        let at = if room(left) || !room(right) {
            left
        } else {
            right
        };
        drawing.beside(at, Lettering::Name, word);
    }
}

/// A person seen from the side who stands on the floor, hands at a height, mm.
pub(super) fn side(drawing: &mut Drawing, at: Point, right: bool, hands: f64) {
    let sign = if right { 1.0 } else { -1.0 };
    let spot = |x: f64, y: f64| drawing.at(Point::new(at.x + sign * x, at.y + y));
    let half = |mm: f64| drawing.length(mm);
    let line = PenStroke::solid(NARROW_MM, Ink::Black);
    let part = |a: Point, b: Point, wide: f64| {
        Path::closed(
            vec![capsule(a, b, half(wide))],
            Some(line),
            Some(Ink::Black),
        )
        .into()
    };
    let hand = spot(330.0, hands);
    let items = [
        part(spot(-30.0, 40.0), spot(-20.0, 850.0), 65.0),
        part(spot(90.0, 40.0), spot(0.0, 850.0), 65.0),
        part(spot(-30.0, 40.0), spot(90.0, 40.0), 38.0),
        part(spot(-10.0, 880.0), spot(0.0, 1380.0), 105.0),
        part(spot(20.0, 1370.0), hand, 45.0),
        Path::closed(
            vec![circle(spot(30.0, 1610.0), half(115.0))],
            Some(line),
            Some(Ink::Black),
        )
        .into(),
    ];
    let taken = Bounds::around([spot(-140.0, 0.0), spot(150.0, 1740.0)]);
    drawing.put_under(items, taken);
}

/// An arrow with a filled head.
pub(super) fn arrow(drawing: &mut Drawing, from: Point, to: Point) {
    let (a, b) = (drawing.at(from), drawing.at(to));
    let way = (b - a).unit();
    let side = way.left() * 1.0;
    let back = b - way * 3.2;
    drawing.put([
        Path::line(a, back, PenStroke::solid(MIDDLE_MM, Ink::Black)).into(),
        Path::filled(&[b, back + side, back - side], Ink::Black).into(),
    ]);
    drawing.occupy(Bounds::around([a, b]));
}

/// A trestle seen from the side, from the middle of its top to the floor at 0.
pub(super) fn trestle(drawing: &mut Drawing, top: Point) {
    let bar = capsule(
        Point::new(top.x - 40.0, top.y - 45.0),
        Point::new(top.x + 40.0, top.y - 45.0),
        45.0,
    );
    let leg = |x: f64| {
        vec![Seg::Line(
            Point::new(top.x, top.y - 60.0),
            Point::new(top.x + x, 0.0),
        )]
    };
    let heavy = PenStroke::solid(MIDDLE_MM * 2.0, Ink::Black);
    drawing.line(&leg(-220.0), heavy, false);
    drawing.line(&leg(220.0), heavy, false);
    drawing.area(crate::document::figure::Shape::Tool, &[bar]);
}

/// A trolley seen from the side: wheels on the floor, a deck at a height.
pub(super) fn trolley(drawing: &mut Drawing, at: Point, deck: f64, length: f64) {
    use crate::document::figure::Shape;
    let half = length / 2.0;
    let radius = (deck * 0.42).clamp(40.0, 110.0);
    for x in [-half * 0.6, half * 0.6] {
        let wheel = circle(Point::new(at.x + x, at.y + radius), radius);
        drawing.area(Shape::Tool, &[wheel]);
    }
    let (low, high) = (at.y + deck - 45.0, at.y + deck);
    let board = ring(&[
        Point::new(at.x - half, low),
        Point::new(at.x + half, low),
        Point::new(at.x + half, high),
        Point::new(at.x - half, high),
    ]);
    drawing.area(Shape::Tool, &[board]);
}

/// The machine seen from above, its disc on a line.
pub(super) fn machine(drawing: &mut Drawing, at: Point, heading: Vector) {
    use crate::document::figure::Shape;
    let (along, off) = (heading.unit(), heading.unit().left());
    let spot = |x: f64, y: f64| at + along * x + off * y;
    let plate = ring(&[
        spot(-110.0, -15.0),
        spot(110.0, -15.0),
        spot(110.0, 118.0),
        spot(-110.0, 118.0),
    ]);
    let body = capsule(spot(-40.0, 55.0), spot(-290.0, 75.0), 36.0);
    drawing.area(Shape::Tool, &[plate]);
    drawing.area(Shape::Tool, &[body]);
    // Squares along the plate and along the body: one box round a slanting machine would take its corners too.
    let along_plate = (-1..=1).map(|i| (spot(f64::from(i) * 60.0, 52.0), 50.0));
    let along_body = (0..=5).map(|i| (spot(-40.0 - f64::from(i) * 50.0, 65.0), 36.0));
    for (middle, half) in along_plate.chain(along_body) {
        let half = Vector::new(half, half) * drawing.scale.abs();
        drawing.occupy(around(drawing.at(middle), half));
    }
    let disc = ring(&[
        spot(-62.0, -3.0),
        spot(62.0, -3.0),
        spot(62.0, 3.0),
        spot(-62.0, 3.0),
    ]);
    drawing.area(Shape::Kerf, &[disc]);
}
