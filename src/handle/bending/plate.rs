//! A rigid plate on springs: how a stone's weight is shared by what holds it.
//!
//! Each spring at `(x, y)` with stiffness `k` takes `k·(a + b·x + c·y)`; force and both moments
//! balance. A spring cannot pull: one that would is left out and the rest are solved again.

use crate::geom::{Point, Vector};

/// Springs closer together than this, mm, count as one point or one line (judgement: far below
/// the width of a hand or a rail).
const COLLAPSED_MM: f64 = 1e-3;

/// Something that holds the plate up at a point.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Spring {
    /// Where.
    pub at: Point,
    /// Stiffness against the others', any unit, > 0.
    pub stiffness: f64,
}

/// How a load comes to rest.
#[derive(Clone, Debug, PartialEq)]
pub struct Resting {
    /// Force of each spring in the load's unit; nothing where the plate lifts off.
    pub forces: Vec<Option<f64>>,
    /// How far the middle of the forces lies from the load, mm; above rounding the plate tips. Infinite when
    /// nothing holds it.
    pub off_balance_mm: f64,
}

/// The plane a plate sinks to.
struct Plane {
    centre: Point,
    sink: f64,
    slope: Vector,
}

impl Plane {
    fn sink_at(&self, at: Point) -> f64 {
        self.sink + self.slope.dot(at - self.centre)
    }
}

/// The forces when springs may also pull.
///
/// Springs on one line, or at one point, leave a moment that nothing takes up; then the answer is
/// the one with the least tilt. Empty when there are no springs.
#[must_use]
pub fn bilateral(springs: &[Spring], load: f64, at: Point) -> Vec<f64> {
    match sink(&mut springs.iter(), load, at) {
        Some(plane) => springs
            .iter()
            .map(|s| s.stiffness * plane.sink_at(s.at))
            .collect(),
        None => Vec::new(),
    }
}

/// The forces when springs only push.
///
/// The spring that would pull hardest is let go first; one that the tilting plate presses on again
/// is taken back once. Linear in the springs for each step, at most three steps a spring.
#[must_use]
pub fn unilateral(springs: &[Spring], load: f64, at: Point) -> Resting {
    let mut holds: Vec<bool> = springs.iter().map(|s| s.stiffness > 0.0).collect();
    let mut retaken = vec![false; springs.len()];
    loop {
        let mut held = springs.iter().zip(&holds).filter(|h| *h.1).map(|h| h.0);
        let Some(plane) = sink(&mut held, load, at) else {
            return nothing_holds(springs.len());
        };
        let sinks: Vec<f64> = springs.iter().map(|s| plane.sink_at(s.at)).collect();
        let slack = 1e-12 * plane.sink.abs();
        if let Some(pulls) = lowest(&sinks, |i| holds[i] && sinks[i] < -slack) {
            holds[pulls] = false;
        } else if let Some(pressed) = lowest(&sinks, |i| {
            springs[i].stiffness > 0.0 && !holds[i] && !retaken[i] && sinks[i] > slack
        }) {
            holds[pressed] = true;
            retaken[pressed] = true;
        } else {
            return rest(springs, &holds, &sinks, at);
        }
    }
}

fn rest(springs: &[Spring], holds: &[bool], sinks: &[f64], at: Point) -> Resting {
    let forces: Vec<Option<f64>> = (0..springs.len())
        .map(|i| holds[i].then(|| springs[i].stiffness * sinks[i]))
        .collect();
    let total: f64 = forces.iter().flatten().sum();
    let pull = springs
        .iter()
        .zip(&forces)
        .fold(Vector::default(), |sum, (s, f)| {
            sum + (s.at - at) * f.unwrap_or(0.0)
        });
    let off_balance_mm = if total > 0.0 {
        pull.length() / total
    } else {
        0.0
    };
    Resting {
        forces,
        off_balance_mm,
    }
}

fn nothing_holds(count: usize) -> Resting {
    Resting {
        forces: vec![None; count],
        off_balance_mm: f64::INFINITY,
    }
}

fn lowest(sinks: &[f64], wanted: impl Fn(usize) -> bool) -> Option<usize> {
    (0..sinks.len())
        .filter(|i| wanted(*i))
        .min_by(|a, b| sinks[*a].total_cmp(&sinks[*b]))
}

/// The plane that balances the load, about the springs' own centre so that force and tilt part.
fn sink(springs: &mut dyn Iterator<Item = &Spring>, load: f64, at: Point) -> Option<Plane> {
    let springs: Vec<&Spring> = springs.collect();
    let stiff: f64 = springs.iter().map(|s| s.stiffness).sum();
    let first = springs.first()?.at;
    let mean = springs.iter().fold(Vector::default(), |sum, s| {
        sum + (s.at - first) * (s.stiffness / stiff)
    });
    let centre = first + mean;
    let second = springs.iter().fold((0.0, 0.0, 0.0), |sum, s| {
        let d = s.at - centre;
        let k = s.stiffness;
        (
            sum.0 + k * d.x * d.x,
            sum.1 + k * d.x * d.y,
            sum.2 + k * d.y * d.y,
        )
    });
    Some(Plane {
        centre,
        sink: load / stiff,
        slope: tilt(second, stiff, (at - centre) * load),
    })
}

/// Solves the 2 × 2 tilt along its own axes, leaving out those without any stiffness.
fn tilt((xx, xy, yy): (f64, f64, f64), stiff: f64, moment: Vector) -> Vector {
    let stiffest = Vector::at_angle(0.5 * (2.0 * xy).atan2(xx - yy));
    let stiffness_about = |e: Vector| xx * e.x * e.x + 2.0 * xy * e.x * e.y + yy * e.y * e.y;
    [stiffest, stiffest.left()]
        .into_iter()
        .map(|e| (e, stiffness_about(e)))
        .filter(|(_, s)| *s > stiff * COLLAPSED_MM * COLLAPSED_MM)
        .fold(Vector::default(), |sum, (e, s)| {
            sum + e * (moment.dot(e) / s)
        })
}
