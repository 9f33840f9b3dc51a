//! Hatching: lines at 45° cut to the inside of a shape.

use std::f64::consts::{FRAC_1_SQRT_2, TAU};

use super::item::{Path, PenStroke};
use crate::geom::{Bounds, Line, Point, SAME_MM, Seg, Vector};

/// The 45° lines inside closed runs of lines and arcs (even-odd), `spacing_mm` apart.
///
/// The lines lie on one grid for the whole page, so the hatching of neighbours meets. Nothing is
/// drawn for a spacing that is not a positive finite number, nor for a shape that is not finite.
#[must_use]
pub fn hatch(runs: &[Vec<Seg>], spacing_mm: f64, stroke: PenStroke) -> Path {
    let lines = if spacing_mm.is_finite() && spacing_mm > 0.0 {
        grid(runs, spacing_mm)
    } else {
        vec![]
    };
    let inside = lines.iter().flat_map(|line| stretches(runs, line));
    Path::open(inside.map(|s| vec![s]).collect(), stroke)
}

/// The grid lines that can reach the shape.
fn grid(runs: &[Vec<Seg>], spacing_mm: f64) -> Vec<Line> {
    let bounds = runs.iter().flatten().map(Seg::bounds);
    let Some(bounds) = bounds.reduce(Bounds::joined) else {
        return vec![];
    };
    if !(bounds.min.is_finite() && bounds.max.is_finite()) {
        return vec![];
    }
    let along = Vector::new(FRAC_1_SQRT_2, FRAC_1_SQRT_2);
    let across = along.left();
    let reach = |x: f64, y: f64| Vector::new(x, y).dot(across) / spacing_mm;
    let (low, high) = (
        reach(bounds.max.x, bounds.min.y).ceil(),
        reach(bounds.min.x, bounds.max.y).floor(),
    );
    let mut lines = Vec::new();
    let mut step = low;
    while step <= high {
        lines.push(Line {
            point: Point::ORIGIN + across * (step * spacing_mm),
            along,
        });
        step += 1.0;
    }
    lines
}

/// The parts of a line inside the shape.
fn stretches(runs: &[Vec<Seg>], line: &Line) -> Vec<Seg> {
    let segs = runs.iter().flatten();
    let mut at: Vec<f64> = segs.flat_map(|s| s.line_crossings(line)).collect();
    at.sort_by(f64::total_cmp);
    at.dedup_by(|a, b| (*a - *b).abs() <= SAME_MM);
    at.windows(2)
        .filter(|w| inside(runs, line.at(f64::midpoint(w[0], w[1]))))
        .map(|w| Seg::Line(line.at(w[0]), line.at(w[1])))
        .collect()
}

/// Even-odd: inside when an odd number of turns surrounds the point; a point on the boundary is
/// not inside.
fn inside(runs: &[Vec<Seg>], point: Point) -> bool {
    if runs.iter().flatten().any(|s| s.distance(point) <= SAME_MM) {
        return false;
    }
    let turns = |run: &Vec<Seg>| {
        let angle: f64 = run.iter().map(|s| s.winding_about(point)).sum();
        (angle / TAU).round()
    };
    let total: f64 = runs.iter().map(turns).sum();
    total.rem_euclid(2.0) > 0.5
}
