//! Many places of the top: a plain grid, and the places at which something touches.

use std::f64::consts::TAU;

use crate::convex::Line;
use crate::replay::plane::Place;
use crate::replay::random_job::Dice;
use crate::rules::{Judge, Pose, Top};

/// Steps of the plain grid each way.
const STEPS: u32 = 10;
/// Places along each line of touching places.
const ALONG: u32 = 8;

/// The turns tried: those that lay an edge of the top along an edge of the slab. A top that is sawn
/// all round may now and then be had for less at a turn between them; that is not looked for.
pub(crate) fn turns(judge: &Judge<'_>) -> Vec<f64> {
    let (job, none) = (
        judge.job,
        Pose {
            turn: 0.0,
            shift: [0.0, 0.0],
        },
    );
    let angle = |l: &Line| l.along[1].atan2(l.along[0]);
    let mut turns: Vec<f64> = Vec::new();
    for edge in 0..job.top.len() {
        let own = angle(&Top::edge_line(job, edge, &none));
        turns.extend(
            judge
                .slab
                .iter()
                .map(|slab| (angle(slab) - own).rem_euclid(TAU)),
        );
    }
    turns.sort_by(f64::total_cmp);
    turns.dedup_by(|a, b| (*a - *b).abs() < 1e-9);
    turns
}

/// A line of shifts: those whose product with `across` is `at`.
struct Touch {
    across: Place,
    at: f64,
}

/// The places tried at one turn.
pub(crate) fn places(judge: &Judge<'_>, turn: f64, dice: &mut Dice) -> Vec<Place> {
    let lying = judge.top.lying(&Pose {
        turn,
        shift: [0.0, 0.0],
    });
    let range = |k: usize, of: &[Place]| {
        let all = of.iter().map(|p| p[k]);
        all.fold((f64::MAX, f64::MIN), |m, v| (m.0.min(v), m.1.max(v)))
    };
    let low_high = [0, 1].map(|k| {
        let (slab, top) = (range(k, &judge.job.slab), range(k, &lying));
        (slab.0 - top.0, slab.1 - top.1)
    });
    if low_high.iter().any(|(low, high)| high < low) {
        return Vec::new();
    }
    let at = |k: usize, share: f64| low_high[k].0 + (low_high[k].1 - low_high[k].0) * share;
    let mut places = Vec::new();
    for i in 0..=STEPS {
        for j in 0..=STEPS {
            let (x, y) = (
                f64::from(i) / f64::from(STEPS),
                f64::from(j) / f64::from(STEPS),
            );
            places.push([at(0, x), at(1, y)]);
        }
    }
    let touches = touches(judge, turn, &lying);
    for (i, a) in touches.iter().enumerate() {
        for b in &touches[..i] {
            let cross = a.across[0] * b.across[1] - a.across[1] * b.across[0];
            if cross.abs() > 1e-6 {
                places.push([
                    (a.at * b.across[1] - b.at * a.across[1]) / cross,
                    (a.across[0] * b.at - b.across[0] * a.at) / cross,
                ]);
            }
        }
        let long = low_high.iter().map(|(l, h)| h - l).fold(0.0, f64::max);
        for _ in 0..ALONG {
            let p = [at(0, dice.share()), at(1, dice.share())];
            let off = a.at - (a.across[0] * p[0] + a.across[1] * p[1]);
            if off.abs() <= long + 1.0 {
                places.push([p[0] + a.across[0] * off, p[1] + a.across[1] * off]);
            }
        }
    }
    places
}

/// For every slab edge: the top's farthest point on it, an allowance inside it, a least strip inside.
fn touches(judge: &Judge<'_>, turn: f64, lying: &[Place]) -> Vec<Touch> {
    let pose = Pose {
        turn,
        shift: [0.0, 0.0],
    };
    let mut touches = Vec::new();
    for slab in &judge.slab {
        let inwards = [-slab.along[1], slab.along[0]];
        let dot = |p: Place| p[0] * inwards[0] + p[1] * inwards[1];
        let edge_at = dot(slab.at);
        let nearest = lying.iter().map(|p| dot(*p)).fold(f64::INFINITY, f64::min);
        let mut depths = vec![0.0, 2.0 * judge.job.tape];
        for edge in 0..judge.job.top.len() {
            let line = Top::edge_line(judge.job, edge, &pose);
            let along = line.along[0] * slab.along[0] + line.along[1] * slab.along[1];
            if along > 0.999 {
                let own = judge.top.edge_allowance(edge);
                depths.extend([own, own + judge.job.least_strip]);
            }
        }
        depths.sort_by(f64::total_cmp);
        depths.dedup_by(|a, b| (*a - *b).abs() < 1e-9);
        touches.extend(depths.into_iter().map(|depth| Touch {
            across: inwards,
            at: edge_at + depth - nearest,
        }));
    }
    touches
}
