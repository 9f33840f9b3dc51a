//! Random jobs with inside corners, hollows, bows, openings and flaws in the middle.

use std::fmt::Write as _;

use crate::convex::Line;
use crate::replay::plane::{Place, apart, moved, on_circle};
use crate::replay::random_job::{Dice, Flaw};

/// What is done to a corner of the top.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum Corner {
    Sharp,
    Round(f64),
    Clip(f64),
    Scoop(f64),
}

/// A job of straight-sided slabs and tops of any shape; one allowance for all edges.
#[derive(Clone, Debug)]
pub(crate) struct WideJob {
    pub(crate) slab: Vec<Place>,
    pub(crate) states: Vec<&'static str>,
    pub(crate) flaws: Vec<(Flaw, f64)>,
    pub(crate) top: Vec<Place>,
    pub(crate) corners: Vec<Corner>,
    pub(crate) bows: Vec<f64>,
    /// Centre and diameter of a round opening.
    pub(crate) opening: Option<(Place, f64)>,
    pub(crate) allowance: f64,
    pub(crate) tape: f64,
    pub(crate) least_strip: f64,
    pub(crate) thickness: f64,
    pub(crate) kerf: f64,
}

fn slab(dice: &mut Dice, long: f64, deep: f64) -> Vec<Place> {
    let (u, v) = (dice.between(0.2, 0.6) * long, dice.between(0.2, 0.6) * deep);
    match dice.below(5) {
        0 => vec![[0.0, 0.0], [long, 0.0], [long, deep], [0.0, deep]],
        1 => vec![
            [0.0, 0.0],
            [long, 0.0],
            [long, deep],
            [u, deep],
            [u, v],
            [0.0, v],
        ],
        2 => {
            let tip = [u, deep - v];
            vec![
                [0.0, 0.0],
                [long, 0.0],
                [long, deep],
                [u + 90.0, deep],
                tip,
                [u - 60.0, deep],
                [0.0, deep],
            ]
        }
        3 => {
            let end = [0.0, deep - dice.between(0.0, 40.0)];
            vec![
                [0.0, 0.0],
                [long, -12.0],
                [long - 60.0, deep],
                [u, deep - 25.0],
                end,
            ]
        }
        _ => {
            let w = u + 0.25 * long;
            vec![
                [0.0, 0.0],
                [long, 0.0],
                [long, deep],
                [w, deep],
                [w, deep - 0.3 * v],
                [u, deep - 0.3 * v],
                [u, deep],
                [0.0, deep],
            ]
        }
    }
}

/// A figure, and corners that may be treated.
fn top(dice: &mut Dice, long: f64, deep: f64) -> (Vec<Place>, Vec<Corner>, Vec<f64>) {
    let (a, b) = (dice.between(0.3, 0.6) * long, dice.between(0.3, 0.6) * deep);
    let corners = match dice.below(5) {
        0 | 1 => vec![[0.0, 0.0], [long, 0.0], [long, deep], [0.0, deep]],
        2 => vec![
            [0.0, 0.0],
            [long, 0.0],
            [long, b],
            [a, b],
            [a, deep],
            [0.0, deep],
        ],
        3 => {
            let c = a + dice.between(60.0, 150.0);
            vec![
                [0.0, 0.0],
                [long, 0.0],
                [long, deep],
                [c, deep],
                [c, b],
                [a, b],
                [a, deep],
                [0.0, deep],
            ]
        }
        _ => vec![
            [0.0, 0.0],
            [long, 0.0],
            [long, deep],
            [0.3 * long, deep + 40.0],
            [0.0, 0.7 * deep],
        ],
    };
    let n = corners.len();
    let mut cuts = vec![Corner::Sharp; n];
    let mut bows = vec![0.0; n];
    let least = 0.2 * long.min(deep);
    if dice.chance(0.4) {
        let at = dice.below(2);
        cuts[at] = match dice.below(3) {
            0 => Corner::Round(dice.between(10.0, least)),
            1 => Corner::Clip(dice.between(10.0, least)),
            _ => Corner::Scoop(dice.between(10.0, least)),
        };
    }
    if dice.chance(0.3) && cuts[0] == Corner::Sharp && cuts[1] == Corner::Sharp {
        bows[0] = dice.pick(&[-15.0, -6.0, 8.0, 20.0]);
    }
    (corners, cuts, bows)
}

impl WideJob {
    pub(crate) fn of(seed: u64) -> Self {
        let dice = &mut Dice(seed.wrapping_mul(0x2545_F491) ^ 0xABCD);
        let (long, deep) = (dice.between(900.0, 2600.0), dice.between(500.0, 1200.0));
        let slab = slab(dice, long, deep);
        let share = dice.between(3.0, 9.0) / 10.0;
        let (w, h) = (long * share, deep * dice.between(3.0, 8.0) / 10.0);
        let (top, corners, bows) = top(dice, w, h);
        let allowance = dice.pick(&[0.0, 0.0, 1.0]);
        let states: &[&str] = if allowance == 0.0 {
            &["factory", "sawn", "sawn", "rough"]
        } else {
            &["sawn", "sawn", "rough"]
        };
        let opening = dice.chance(0.4).then(|| {
            let across = 0.35 * w.min(h) * 0.6;
            ([0.18 * w, 0.18 * h.min(w)], across.max(20.0))
        });
        let mut flaws = Vec::new();
        for _ in 0..dice.below(4) {
            let at = [dice.between(0.1, 0.9) * long, dice.between(0.1, 0.9) * deep];
            let clear = dice.pick(&[0.0, 10.0, 20.0]);
            let end = [
                at[0] + dice.between(-120.0, 120.0),
                at[1] + dice.between(-120.0, 120.0),
            ];
            let flaw = match dice.below(3) {
                0 => Flaw::Spot(at, dice.between(4.0, 40.0)),
                1 => Flaw::Line(vec![at, end]),
                _ => Flaw::Area(vec![
                    at,
                    [at[0] + 50.0, at[1] + 6.0],
                    [at[0] + 20.0, at[1] + 45.0],
                ]),
            };
            flaws.push((flaw, clear));
        }
        Self {
            states: slab.iter().map(|_| dice.pick(states)).collect(),
            slab,
            flaws,
            top,
            corners,
            bows,
            opening,
            allowance,
            tape: dice.pick(&[0.5, 1.0]),
            least_strip: dice.pick(&[5.0, 10.0, 25.0]),
            thickness: 30.0,
            kerf: 2.2,
        }
    }

    pub(crate) fn text(&self) -> String {
        let mut text = String::from("[stone]\nkind = \"gabbro\"\nthickness = 30\n");
        let n = self.slab.len();
        let letter = |i: usize| char::from(b'A' + (i % n) as u8);
        let named = |state: &str| {
            let names: Vec<String> = (0..n)
                .filter(|i| self.states[*i] == state)
                .map(|i| format!("\"{}{}\"", letter(i), letter(i + 1)))
                .collect();
            names.join(", ")
        };
        let _ = writeln!(
            text,
            "[slab]\ncorners = {:?}\nfactory = [{}]\nrough = [{}]\ntape = {}",
            self.slab,
            named("factory"),
            named("rough"),
            self.tape
        );
        for (flaw, clear) in &self.flaws {
            let place = match flaw {
                Flaw::Spot(at, across) => format!("spot = {{ at = {at:?}, across = {across} }}"),
                Flaw::Line(points) => format!("line = {points:?}"),
                Flaw::Area(points) => format!("area = {points:?}"),
            };
            let _ = writeln!(
                text,
                "[[slab.flaw]]\nwhat = \"mend\"\n{place}\nclear = {clear}"
            );
        }
        let _ = writeln!(text, "[top]\ncorners = {:?}", self.top);
        for (i, corner) in self.corners.iter().enumerate() {
            let _ = match corner {
                Corner::Sharp => Ok(()),
                Corner::Round(r) => writeln!(text, "round = {{ {} = {r} }}", i + 1),
                Corner::Clip(r) => writeln!(text, "clip = {{ {} = {r} }}", i + 1),
                Corner::Scoop(r) => writeln!(text, "scoop = {{ {} = {r} }}", i + 1),
            };
        }
        if self.bows[0] != 0.0 {
            let _ = writeln!(text, "bow = {{ \"1-2\" = {} }}", self.bows[0]);
        }
        let a = self.allowance;
        let _ = writeln!(
            text,
            "allowance = {{ polish = {a}, ease = {a}, saw = {a} }}"
        );
        if let Some((at, across)) = self.opening {
            let _ = writeln!(
                text,
                "[[top.cutout]]\nwhat = \"bowl\"\ncircle = {across}\nat = {at:?}"
            );
        }
        let _ = writeln!(
            text,
            "[place]\nleast_strip = {}\n[[disc]]\nname = \"disc\"\ndiameter = 125\nkerf = {}\nobstruction = 34\nmax_rpm = 12200",
            self.least_strip, self.kerf
        );
        text
    }

    /// The finished outline as places close together, and its straight edges and flats with the edge
    /// they belong to; the length of its curves.
    pub(crate) fn outline(&self) -> (Vec<Place>, Vec<Straight>, f64) {
        let n = self.top.len();
        let unit = |i: usize| Line::through(self.top[i % n], self.top[(i + 1) % n]).along;
        let turn = |i: usize| {
            let (u, v) = (unit(i + n - 1), unit(i));
            (u[0] * v[1] - u[1] * v[0]).atan2(u[0] * v[0] + u[1] * v[1])
        };
        let back = |i: usize| match self.corners[i % n] {
            Corner::Sharp => 0.0,
            Corner::Clip(by) | Corner::Scoop(by) => by,
            Corner::Round(r) => r * (turn(i % n) / 2.0).tan().abs(),
        };
        let (mut ring, mut straights, mut curved) = (Vec::new(), Vec::new(), 0.0);
        for i in 0..n {
            let from = moved(self.top[i], unit(i + n - 1), -back(i));
            let to = moved(self.top[i], unit(i), back(i));
            match self.corners[i] {
                Corner::Sharp => ring.push(self.top[i]),
                Corner::Clip(_) => {
                    ring.extend([from, to]);
                    straights.push(Straight {
                        edge: None,
                        from,
                        to,
                    });
                }
                Corner::Round(r) => {
                    let side = turn(i).signum();
                    let along = unit(i + n - 1);
                    let left = [-along[1] * side, along[0] * side];
                    curved += arc(&mut ring, moved(from, left, r), from, turn(i));
                    ring.push(to);
                }
                Corner::Scoop(_) => {
                    let (a, b) = (apart_angle(self.top[i], from), apart_angle(self.top[i], to));
                    let sweep = -((a - b).rem_euclid(std::f64::consts::TAU));
                    curved += arc(&mut ring, self.top[i], from, sweep);
                    ring.push(to);
                }
            }
            let end = moved(self.top[(i + 1) % n], unit(i), -back(i + 1));
            if self.bows[i] == 0.0 {
                straights.push(Straight {
                    edge: Some(i),
                    from: to,
                    to: end,
                });
            } else {
                let (rise, half) = (self.bows[i], apart(to, end) / 2.0);
                let radius = (half * half + rise * rise) / (2.0 * rise.abs());
                let middle = moved(to, unit(i), half);
                let inwards = [-unit(i)[1], unit(i)[0]];
                let centre = moved(middle, inwards, (radius - rise.abs()) * rise.signum());
                curved += arc(
                    &mut ring,
                    centre,
                    to,
                    2.0 * (half / radius).asin() * rise.signum(),
                );
            }
        }
        (ring, straights, curved)
    }
}

/// A straight piece of the outline.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Straight {
    /// The edge; none for a flat.
    pub(crate) edge: Option<usize>,
    pub(crate) from: Place,
    pub(crate) to: Place,
}

fn apart_angle(centre: Place, p: Place) -> f64 {
    (p[1] - centre[1]).atan2(p[0] - centre[0])
}

/// Adds an arc from a place on, its end left out; gives its length.
fn arc(ring: &mut Vec<Place>, centre: Place, from: Place, sweep: f64) -> f64 {
    let (radius, start) = (apart(centre, from), apart_angle(centre, from));
    // Chords keep a thousandth of a millimetre from the arc.
    let widest = (2.0 * (1.0 - 0.001 / radius).acos()).min(0.01);
    let steps = (sweep.abs() / widest).ceil().max(1.0) as u32;
    let step = sweep / f64::from(steps);
    ring.extend((0..steps).map(|k| on_circle(centre, radius, start + step * f64::from(k))));
    radius * sweep.abs()
}
