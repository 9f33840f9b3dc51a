//! Least squares: points moved until their distances agree with the tapes as well as they can.
//!
//! Every tape counts the same. Gauss and Newton's method: the distances are taken as straight-line
//! functions of the coordinates near the last answer, that problem is solved, and so on. A step that
//! would make matters worse is shortened first (Levenberg's damping).

use crate::geom::{Point, Vector};

/// The coordinates are found when no step is longer than this, mm.
const SETTLED_MM: f64 = 1e-10;
/// Steps before it is given up.
const MOST_STEPS: usize = 200;
/// The damping at the start, as a share of the largest term, and what it is changed by.
const DAMPING: f64 = 1e-12;
const DAMPING_STEP: f64 = 10.0;
/// Damping beyond which no step helps any more.
const MOST_DAMPING: f64 = 1e12;

/// A coordinate that may move.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Free {
    /// The x of a point.
    X(usize),
    /// The y of a point.
    Y(usize),
}

/// One tape: the two points it joins and the length read, mm.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Leg {
    /// The points, by their places in the list.
    pub ends: [usize; 2],
    /// The length read, mm.
    pub taped: f64,
}

/// What the adjustment gives.
#[derive(Clone, Debug, PartialEq)]
pub struct Adjusted {
    /// The points.
    pub points: Vec<Point>,
    /// Distance less tape for each leg, mm.
    pub residuals: Vec<f64>,
}

impl Adjusted {
    /// Sum of the squares of the residuals, mm².
    #[must_use]
    pub fn sum_of_squares(&self) -> f64 {
        self.residuals.iter().map(|v| v * v).sum()
    }
}

/// Moves the free coordinates from where the points stand until the sum of the squares of the
/// residuals is least nearby. It is never more than at the start.
///
/// Nothing when a leg names a point that is not there, when the legs leave a coordinate open, or when
/// the steps do not settle.
#[must_use]
pub fn adjust(points: &[Point], free: &[Free], legs: &[Leg]) -> Option<Adjusted> {
    let mut best = measured(points.to_vec(), legs)?;
    let mut damping = DAMPING;
    for _ in 0..MOST_STEPS {
        let (normal, pull) = equations(&best, free, legs)?;
        let step = damped(&normal, &pull, damping)?;
        let longest = step.iter().fold(0.0_f64, |most, s| most.max(s.abs()));
        let next = measured(moved(&best.points, free, &step)?, legs)?;
        if next.sum_of_squares() <= best.sum_of_squares() {
            best = next;
            damping = (damping / DAMPING_STEP).max(DAMPING);
        } else {
            damping *= DAMPING_STEP;
        }
        if longest < SETTLED_MM || damping > MOST_DAMPING {
            return Some(best);
        }
    }
    None
}

fn measured(points: Vec<Point>, legs: &[Leg]) -> Option<Adjusted> {
    let residual = |leg: &Leg| Some(along(&points, leg)?.length() - leg.taped);
    let residuals: Option<Vec<f64>> = legs.iter().map(residual).collect();
    let residuals = residuals.filter(|all| all.iter().all(|v| v.is_finite()))?;
    Some(Adjusted { points, residuals })
}

fn along(points: &[Point], leg: &Leg) -> Option<Vector> {
    let [from, to] = leg.ends;
    Some(*points.get(to)? - *points.get(from)?)
}

fn moved(points: &[Point], free: &[Free], step: &[f64]) -> Option<Vec<Point>> {
    let mut points = points.to_vec();
    for (coordinate, by) in free.iter().zip(step) {
        match *coordinate {
            Free::X(i) => points.get_mut(i)?.x += by,
            Free::Y(i) => points.get_mut(i)?.y += by,
        }
    }
    Some(points)
}

type Matrix = Vec<Vec<f64>>;

/// The normal equations: one row for each free coordinate, and what pulls at it.
fn equations(now: &Adjusted, free: &[Free], legs: &[Leg]) -> Option<(Matrix, Vec<f64>)> {
    let count = free.len();
    let (mut normal, mut pull) = (vec![vec![0.0; count]; count], vec![0.0; count]);
    for (leg, residual) in legs.iter().zip(&now.residuals) {
        let row = slopes(along(&now.points, leg)?.unit(), free, leg.ends);
        for i in 0..count {
            pull[i] -= row[i] * residual;
            for j in 0..count {
                normal[i][j] += row[i] * row[j];
            }
        }
    }
    Some((normal, pull))
}

/// How a leg's length changes with each free coordinate. A leg of no length pulls nowhere.
fn slopes(direction: Vector, free: &[Free], [from, to]: [usize; 2]) -> Vec<f64> {
    let towards = |i: usize| match i {
        i if i == to => 1.0,
        i if i == from => -1.0,
        _ => 0.0,
    };
    let slope = |coordinate: &Free| match *coordinate {
        Free::X(i) => towards(i) * direction.x,
        Free::Y(i) => towards(i) * direction.y,
    };
    let finite = direction.x.is_finite() && direction.y.is_finite();
    let slopes = free.iter().map(slope);
    slopes.map(|s| if finite { s } else { 0.0 }).collect()
}

/// Solves the normal equations with their diagonal raised.
fn damped(normal: &Matrix, pull: &[f64], damping: f64) -> Option<Vec<f64>> {
    let mut matrix = normal.clone();
    let diagonal = normal.iter().enumerate().map(|(i, row)| row[i]);
    let most = diagonal.fold(0.0, f64::max);
    for (i, row) in matrix.iter_mut().enumerate() {
        row[i] += damping * most;
    }
    solve(matrix, pull.to_vec())
}

/// Gauss's elimination with the largest pivot first; nothing when a coordinate is left open.
fn solve(mut matrix: Matrix, mut right: Vec<f64>) -> Option<Vec<f64>> {
    let count = right.len();
    for column in 0..count {
        let size = |row: usize| matrix[row][column].abs();
        let pivot = (column..count).max_by(|a, b| size(*a).total_cmp(&size(*b)))?;
        if size(pivot) == 0.0 || !size(pivot).is_finite() {
            return None;
        }
        matrix.swap(column, pivot);
        right.swap(column, pivot);
        let top = matrix[column].clone();
        for row in column + 1..count {
            let share = matrix[row][column] / top[column];
            for (cell, above) in matrix[row].iter_mut().zip(&top) {
                *cell -= share * above;
            }
            right[row] -= share * right[column];
        }
    }
    for column in (0..count).rev() {
        let known: f64 = (column + 1..count)
            .map(|j| matrix[column][j] * right[j])
            .sum();
        right[column] = (right[column] - known) / matrix[column][column];
    }
    Some(right)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_triangle_is_closed_from_afar() {
        let points = [(0.0, 0.0), (5.0, 0.0), (1.0, 1.0)].map(|(x, y)| Point::new(x, y));
        let leg = |a, b, taped| Leg {
            ends: [a, b],
            taped,
        };
        let legs = [leg(0, 1, 4.0), leg(1, 2, 5.0), leg(0, 2, 3.0)];
        let free = [Free::X(1), Free::X(2), Free::Y(2)];
        let found = adjust(&points, &free, &legs).unwrap();
        assert!(found.sum_of_squares() < 1e-20, "{found:?}");
        assert!((found.points[2].x).abs() < 1e-9 && (found.points[2].y - 3.0).abs() < 1e-9);
    }

    #[test]
    fn what_no_tape_holds_is_not_found() {
        let points = [Point::ORIGIN, Point::new(1.0, 0.0)];
        let leg = Leg {
            ends: [0, 1],
            taped: 1.0,
        };
        assert_eq!(adjust(&points, &[Free::X(1), Free::Y(1)], &[]), None);
        assert_eq!(adjust(&points, &[Free::X(2)], &[leg]), None);
    }
}
