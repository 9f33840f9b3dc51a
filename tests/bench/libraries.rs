//! The geometry against general libraries, on the same shapes: `cargo bench --bench libraries`. A line an
//! operation, a column a library: microseconds, the least of seven rounds. Shapes are made ready in
//! each library's own terms beforehand; where a library has no arcs, they are chords within 0.01 mm.

#![allow(
    dead_code,
    clippy::cast_possible_truncation,
    clippy::cast_precision_loss,
    clippy::cast_sign_loss
)]

#[path = "../geometry/other.rs"]
mod other;

use std::f64::consts::{PI, TAU};
use std::hint::black_box;
use std::time::Instant;

use cavalier_contours::polyline::{BooleanOp, PlineSource, Polyline};
use clipper2_rust::{EndType, FillRule, JoinType, Path64, difference_64, inflate_paths_64};
use geo::{Area, BooleanOps, Buffer, Centroid, Coord, LineString, Polygon};
use kerfwright::geom::rectangle::best_along_edges;
use kerfwright::geom::{Arc, Outline, Point, Region, Seg, boolean};
use kurbo::{BezPath, ParamCurveMoments, Shape as _};
use other::{GRID, cavalier, clipper, kurbo_path};

/// Chords stand for arcs to this, mm.
const CHORDS_MM: f64 = 0.01;

/// A shape in every library's terms.
struct Shape {
    ours: Outline,
    flat: Polygon,
    arcs: Polyline<f64>,
    grid: Path64,
    path: BezPath,
}

impl Shape {
    fn new(ours: Outline) -> Self {
        let chords = ours.segs().iter().flat_map(|s| s.flattened(CHORDS_MM));
        let ring: LineString = chords.map(|p| Coord { x: p.x, y: p.y }).collect();
        Self {
            flat: Polygon::new(ring, vec![]),
            arcs: cavalier(&ours),
            grid: clipper(&ours, CHORDS_MM),
            path: kurbo_path(&ours),
            ours,
        }
    }
}

fn main() {
    let slab = polygon(&[(0.0, 0.0), (2640.0, 0.0), (2636.0, 905.0), (0.0, 902.0)]);
    let slot = polygon(&[
        (-10.0, 650.0),
        (2700.0, 661.0),
        (2700.0, 663.2),
        (-10.0, 652.2),
    ]);
    println!(
        "{:<34}{:>10}{:>10}{:>12}{:>12}{:>10}",
        "microseconds", "ours", "geo", "cavalier", "clipper2", "kurbo"
    );
    rows(
        "slab of 4 edges",
        &Shape::new(slab),
        &Shape::new(slot.clone()),
    );
    rows(
        "top with a round end",
        &Shape::new(tea_counter()),
        &Shape::new(slot),
    );
    let saw = Shape::new(star(100));
    rows("star of 100 edges", &saw, &Shape::new(star(60)));
}

fn polygon(corners: &[(f64, f64)]) -> Outline {
    let corners: Vec<Point> = corners.iter().map(|(x, y)| Point::new(*x, *y)).collect();
    Outline::polygon(&corners).expect("an outline")
}

fn tea_counter() -> Outline {
    let at = Point::new;
    let end = Arc {
        centre: at(1830.0, 330.0),
        radius: 320.0,
        start: -PI / 2.0,
        sweep: PI,
    };
    let segs = vec![
        Seg::Line(at(0.0, 10.0), at(1830.0, 10.0)),
        Seg::Arc(end),
        Seg::Line(at(1830.0, 650.0), at(0.0, 655.0)),
        Seg::Line(at(0.0, 655.0), at(0.0, 10.0)),
    ];
    Outline::new(segs).expect("an outline")
}

fn star(edges: u32) -> Outline {
    let corner = |k: u32| {
        let angle = TAU * f64::from(k) / f64::from(edges);
        let far = if k.is_multiple_of(2) { 900.0 } else { 700.0 };
        (far * angle.cos(), far * angle.sin())
    };
    polygon(&(0..edges).map(corner).collect::<Vec<_>>())
}

fn rows(name: &str, shape: &Shape, cutter: &Shape) {
    println!("{name}");
    let none = f64::NAN;
    row(
        "  area",
        [
            least(|| shape.ours.area()),
            least(|| shape.flat.unsigned_area()),
            least(|| shape.arcs.area()),
            least(|| clipper2_rust::area(&shape.grid)),
            least(|| shape.path.area()),
        ],
    );
    row(
        "  area and centroid",
        [
            least(|| shape.ours.first_moments()),
            least(|| (shape.flat.unsigned_area(), shape.flat.centroid())),
            none,
            none,
            least(|| shape.path.moments()),
        ],
    );
    let by = vec![-3.0; shape.ours.segs().len()];
    row(
        "  offset 3 mm inwards",
        [
            least(|| shape.ours.offset_each(&by)),
            least(|| shape.flat.buffer(-3.0)),
            least(|| shape.arcs.parallel_offset(3.0)),
            least(|| {
                let paths = vec![shape.grid.clone()];
                inflate_paths_64(
                    &paths,
                    -3.0 * GRID,
                    JoinType::Miter,
                    EndType::Polygon,
                    2.0,
                    0.0,
                )
            }),
            none,
        ],
    );
    let stone = [Region::solid(shape.ours.clone())];
    let slots = std::slice::from_ref(&cutter.ours);
    row(
        "  difference",
        [
            least(|| boolean::difference(&stone, slots)),
            least(|| shape.flat.difference(&cutter.flat)),
            least(|| shape.arcs.boolean(&cutter.arcs, BooleanOp::Not)),
            least(|| {
                let (a, b) = (vec![shape.grid.clone()], vec![cutter.grid.clone()]);
                difference_64(&a, &b, FillRule::NonZero)
            }),
            none,
        ],
    );
    let ours = least(|| best_along_edges(&shape.ours));
    row(
        "  largest inscribed rectangle",
        [ours, none, none, none, none],
    );
}

fn row(name: &str, times: [f64; 5]) {
    let shown = times.map(|t| {
        if t.is_nan() {
            "-".to_owned()
        } else {
            format!("{t:.2}")
        }
    });
    let [ours, geo, cavalier, clipper, kurbo] = shown;
    println!("{name:<34}{ours:>10}{geo:>10}{cavalier:>12}{clipper:>12}{kurbo:>10}");
}

/// Microseconds of one call: the least mean of seven rounds of about two milliseconds. The clock on the wall, since the
/// processor's is told by the tick only on some systems, and a tick is longer than a round.
fn least<T>(work: impl Fn() -> T) -> f64 {
    let timed = |count: u32| {
        let start = Instant::now();
        (0..count).for_each(|_| drop(black_box(work())));
        start.elapsed().as_secs_f64()
    };
    let once = timed(1).max(2e-8);
    let count = (0.002 / once).clamp(1.0, 1e5) as u32;
    let round = || timed(count) * 1e6 / f64::from(count);
    (0..7).map(|_| round()).fold(f64::INFINITY, f64::min)
}
