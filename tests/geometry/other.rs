//! The same outlines in other libraries' terms.

use cavalier_contours::polyline::{PlineSource, PlineSourceMut, Polyline};
use clipper2_rust::{Path64, Paths64, Point64, area};
use kerfwright::geom::{Outline, Seg};
use kurbo::{BezPath, ParamCurveMoments, Shape as _};

/// Grid steps to the millimetre for clipper2.
pub(crate) const GRID: f64 = 1e6;

/// An outline as a kurbo path, arcs as Béziers within 1e-9 mm.
pub(crate) fn kurbo_path(outline: &Outline) -> BezPath {
    let mut path = BezPath::new();
    let first = outline.segs()[0].start();
    path.move_to((first.x, first.y));
    for seg in outline.segs() {
        match seg {
            Seg::Line(_, b) => path.line_to((b.x, b.y)),
            Seg::Arc(a) => {
                let arc = kurbo::Arc::new(
                    (a.centre.x, a.centre.y),
                    (a.radius, a.radius),
                    a.start,
                    a.sweep,
                    0.0,
                );
                path.extend(arc.append_iter(1e-9));
            }
        }
    }
    path.close_path();
    path
}

/// Area and balance point by kurbo. Its `moment_x` is the integral of x over the area.
pub(crate) fn kurbo_moments(outline: &Outline) -> (f64, f64, f64) {
    let path = kurbo_path(outline);
    let (moments, area) = (path.moments(), path.area());
    // Both carry the sign of the path's direction.
    (
        area.abs(),
        moments.moment_x / signed(&path),
        moments.moment_y / signed(&path),
    )
}

/// kurbo's moments run the other way round than its area.
fn signed(path: &BezPath) -> f64 {
    let square = kurbo::Rect::new(1.0, 1.0, 2.0, 2.0).to_path(1e-9);
    let sign = (square.moments().moment_x / square.area()).signum();
    path.area() * sign
}

/// An outline as a closed polyline of exact arcs, none longer than a quarter circle.
pub(crate) fn cavalier(outline: &Outline) -> Polyline<f64> {
    let mut line = Polyline::new_closed();
    for seg in outline.segs() {
        match seg {
            Seg::Line(a, _) => line.add(a.x, a.y, 0.0),
            Seg::Arc(arc) => {
                let count = (arc.sweep.abs() / 1.6).ceil();
                let bulge = (arc.sweep / count / 4.0).tan();
                for i in 0..count as u32 {
                    let p = seg.at(f64::from(i) / count);
                    line.add(p.x, p.y, bulge);
                }
            }
        }
    }
    line
}

/// Area of what `cavalier_contours` leaves.
pub(crate) fn cavalier_area(lines: &[Polyline<f64>]) -> f64 {
    lines.iter().map(|l| l.area().abs()).sum()
}

/// An outline as chords that stay within `tolerance` mm of it.
pub(crate) fn clipper(outline: &Outline, tolerance: f64) -> Path64 {
    outline
        .segs()
        .iter()
        .flat_map(|s| {
            let count = match s {
                Seg::Line(..) => 1,
                Seg::Arc(a) => a.chords_within(tolerance),
            };
            (0..count).map(move |i| s.at(i as f64 / count as f64))
        })
        .map(|p| Point64::new((p.x * GRID).round() as i64, (p.y * GRID).round() as i64))
        .collect()
}

/// Area of rings, mm².
pub(crate) fn clipper_area(paths: &Paths64) -> f64 {
    paths.iter().map(area).sum::<f64>() / (GRID * GRID)
}
