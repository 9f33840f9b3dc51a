//! The figures of random jobs: slabs with their flaws, tops with their openings, places.

use super::{Corner, Dice, Flaw, Opened, Opening};
use crate::replay::plane::{Place, Stone, moved};

pub(super) fn slab(dice: &mut Dice, long: f64, deep: f64) -> Vec<Place> {
    let mut wobble = |p: Place| {
        [
            p[0] + dice.between(-8.0, 8.0),
            p[1] + dice.between(-8.0, 8.0),
        ]
    };
    let square = [[0.0, 0.0], [long, 0.0], [long, deep], [0.0, deep]];
    let askew = [
        square[0],
        wobble(square[1]),
        wobble(square[2]),
        wobble(square[3]),
    ];
    match dice.below(10) {
        0..=2 => square.to_vec(),
        3..=5 => askew.to_vec(),
        6..=7 => {
            let [a, b, c, d] = askew;
            let (back, down) = (
                dice.between(40.0, long * 0.3),
                dice.between(40.0, deep * 0.4),
            );
            let mut corners = vec![a, b, [c[0], c[1] - down], [c[0] - back, c[1]], d];
            if dice.chance(0.5) {
                corners[1] = [b[0] - dice.between(30.0, 200.0), b[1]];
                corners.insert(2, [b[0], b[1] + dice.between(30.0, deep * 0.3)]);
            }
            corners
        }
        _ => {
            let (x, y) = (
                dice.between(long * 0.5, long * 0.85),
                dice.between(deep * 0.4, deep * 0.8),
            );
            vec![
                [0.0, 0.0],
                [long, 0.0],
                [long, y],
                [x, y],
                [x, deep],
                [0.0, deep],
            ]
        }
    }
}

pub(super) fn top(dice: &mut Dice, long: f64, deep: f64) -> (Vec<Place>, Vec<Corner>) {
    let share = if dice.chance(0.3) {
        (0.85, 1.0)
    } else {
        (0.3, 0.85)
    };
    let (l, d) = (
        dice.between(long * share.0, long * share.1),
        dice.between(deep * share.0, deep * share.1),
    );
    let mut corners = vec![[0.0, 0.0], [l, 0.0], [l, d], [0.0, d]];
    let half = l.min(d) / 2.0;
    let askew = dice.chance(0.25);
    if askew {
        corners[1][1] += dice.between(0.0, d * 0.1);
        corners[2][0] -= dice.between(0.0, l * 0.2);
        corners[3][0] += dice.between(0.0, l * 0.05);
    }
    let mut treated = vec![Corner::Sharp; 4];
    match dice.below(6) {
        0 if !askew && l >= d => {
            treated[1] = Corner::Round(d / 2.0);
            treated[2] = Corner::Round(d / 2.0);
        }
        1 if !askew => treated = vec![Corner::Round(half); 4],
        2 => {}
        _ => {
            for corner in &mut treated {
                *corner = match dice.below(4) {
                    0 | 1 => Corner::Round(dice.between(10.0, half * 0.7)),
                    2 => Corner::Clip(dice.between(10.0, half * 0.6)),
                    _ => Corner::Sharp,
                };
            }
        }
    }
    if dice.chance(0.15) && treated[3] == Corner::Sharp {
        // A fifth corner: the upper left one cut off by an edge of its own.
        let [x, y] = corners[3];
        let by = dice.between(30.0, half * 0.25);
        corners[3] = [x + by, y];
        corners.push([x, y - by]);
        treated = treated.into_iter().map(|_| Corner::Sharp).collect();
        treated.push(Corner::Sharp);
    }
    (corners, treated)
}

pub(super) fn flaws(dice: &mut Dice, slab: &[Place], long: f64, deep: f64) -> Vec<(Flaw, f64)> {
    let slab = Stone::ring(slab);
    let count = dice.pick(&[0, 0, 1, 2]);
    (0..count)
        .filter_map(|_| {
            let at = [
                dice.between(20.0, long - 20.0),
                dice.between(20.0, deep - 20.0),
            ];
            let on = |p: Place, dice: &mut Dice, by: f64| {
                let turn = dice.share() * std::f64::consts::TAU;
                let q = moved(p, [turn.cos(), turn.sin()], by);
                [q[0].clamp(1.0, long - 1.0), q[1].clamp(1.0, deep - 1.0)]
            };
            let flaw = match dice.below(3) {
                0 => Flaw::Spot(at, dice.between(5.0, 60.0)),
                1 => Flaw::Line(vec![at, on(at, dice, 150.0)]),
                _ => Flaw::Area(vec![
                    at,
                    [at[0] + dice.between(20.0, 90.0), at[1]],
                    [at[0] + 10.0, at[1] + dice.between(20.0, 90.0)],
                ]),
            };
            let clear = dice.pick(&[0.0, 5.0, 15.0]);
            // A flaw off the slab is the reader's to refuse.
            slab.holds(at).then_some((flaw, clear))
        })
        .collect()
}

/// A place near the middle of the slab, or flush in its corner A.
pub(super) fn fixed(dice: &mut Dice, slab: &[Place], top: &[Place], turn: f64) -> (Place, f64) {
    if dice.chance(0.3) {
        return ([1.0, 1.0], 0.0);
    }
    let centre = |ring: &[Place]| {
        let mean = |k: usize| {
            let all = ring.iter().map(|p| p[k]);
            let (low, high) = all.fold((f64::MAX, f64::MIN), |m, v| (m.0.min(v), m.1.max(v)));
            f64::midpoint(low, high)
        };
        [mean(0), mean(1)]
    };
    let (sin, cos) = turn.to_radians().sin_cos();
    let of = centre(top);
    let here = [of[0] * cos - of[1] * sin, of[0] * sin + of[1] * cos];
    let on = centre(slab);
    let at = [on[0] - here[0], on[1] - here[1]];
    let near = |v: f64, dice: &mut Dice| ((v + dice.between(-40.0, 40.0)) * 10.0).round() / 10.0;
    ([near(at[0], dice), near(at[1], dice)], turn)
}

/// A top with an inside corner, a notch, a hollow, or a plain one that openings will be cut into.
pub(super) fn reflex_top(dice: &mut Dice, l: f64, d: f64) -> (Vec<Place>, Vec<Corner>) {
    let x = dice.between(l * 0.3, l * 0.6);
    let y = dice.between(d * 0.35, d * 0.6);
    let corner = |dice: &mut Dice| match dice.below(5) {
        0 => Corner::Round(dice.pick(&[10.0, 17.5, 20.0, 25.0])),
        1 => Corner::Round(dice.between(40.0, 140.0)),
        _ => Corner::Sharp,
    };
    match dice.below(5) {
        0 => {
            let corners = vec![[0.0, 0.0], [l, 0.0], [l, y], [x, y], [x, d], [0.0, d]];
            let mut treated = vec![Corner::Sharp; 6];
            treated[3] = corner(dice);
            if dice.chance(0.4) {
                treated[1] = Corner::Round(dice.between(10.0, 100.0));
            }
            (corners, treated)
        }
        1 => {
            let wide = dice.between(120.0, l * 0.3);
            let corners = vec![
                [0.0, 0.0],
                [l, 0.0],
                [l, d],
                [x + wide, d],
                [x + wide, y],
                [x, y],
                [x, d],
                [0.0, d],
            ];
            let mut treated = vec![Corner::Sharp; 8];
            treated[4] = corner(dice);
            treated[5] = corner(dice);
            (corners, treated)
        }
        2 => {
            let mut treated = vec![Corner::Sharp; 4];
            treated[2] = Corner::Scoop(dice.between(20.0, d * 0.5));
            if dice.chance(0.3) {
                treated[0] = Corner::Clip(dice.between(20.0, 120.0));
            }
            (vec![[0.0, 0.0], [l, 0.0], [l, d], [0.0, d]], treated)
        }
        _ => {
            let mut treated = vec![Corner::Sharp; 4];
            if dice.chance(0.3) {
                treated[1] = Corner::Round(dice.between(20.0, 120.0));
            }
            (vec![[0.0, 0.0], [l, 0.0], [l, d], [0.0, d]], treated)
        }
    }
}

/// Openings apart from each other and from the edges, in the part of the top that every figure has.
pub(super) fn openings(dice: &mut Dice, top: &[Place]) -> Vec<Opening> {
    let long = top[1][0];
    let deep = top[2][1].min(
        top.iter()
            .map(|p| p[1])
            .filter(|y| *y > 0.0)
            .fold(f64::MAX, f64::min),
    );
    let count = if top.len() > 4 {
        dice.below(2)
    } else {
        dice.below(3)
    };
    let each = long / (count.max(1) as f64);
    (0..count)
        .filter_map(|i| {
            let (wide, high) = (each - 140.0, deep - 140.0);
            if wide < 60.0 || high < 60.0 {
                return None;
            }
            let shape = match dice.below(4) {
                0 => Opened::Circle(dice.pick(&[35.0, 36.0, 50.0, 20.0])),
                1 => Opened::Circle(dice.between(40.0, wide.min(high))),
                _ => {
                    let (a, b) = (dice.between(50.0, wide), dice.between(50.0, high));
                    let most = a.min(b) / 2.0 - 1.0;
                    let r = dice.pick(&[0.0, 10.0, 17.5, 25.0, 60.0]);
                    Opened::Rectangle([a, b], if r < most { r } else { 0.0 })
                }
            };
            Some(Opening {
                at: [each * (i as f64 + 0.5), deep / 2.0],
                shape,
                finish: dice.pick(&["saw", "ease", "polish"]),
            })
        })
        .collect()
}

/// The middle of the top's box over the middle of the slab's.
pub(super) fn centred(slab: &[Place], top: &[Place], turn: f64) -> (Place, f64) {
    let middle = |ring: &[Place], k: usize| {
        let all = ring.iter().map(|p| p[k]);
        let (low, high) = all.fold((f64::MAX, f64::MIN), |m, v| (m.0.min(v), m.1.max(v)));
        f64::midpoint(low, high)
    };
    let (sin, cos) = turn.to_radians().sin_cos();
    let of = [middle(top, 0), middle(top, 1)];
    let here = [of[0] * cos - of[1] * sin, of[0] * sin + of[1] * cos];
    let on = [middle(slab, 0), middle(slab, 1)];
    (
        [0, 1].map(|k| ((on[k] - here[k]) * 10.0).round() / 10.0),
        turn,
    )
}
