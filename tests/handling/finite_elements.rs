//! Bending against finite elements: Euler–Bernoulli beams with cubic (Hermite) deflections, written
//! here and sharing nothing with the library but the stone's measures.

use kerfwright::geom::{Outline, Region, Vector};
use kerfwright::handle::axes::Axes;
use kerfwright::handle::bend::{Beam, Orientation};
use kerfwright::handle::continuous::{Continuous, Post};
use kerfwright::handle::plate::{Spring, unilateral};
use kerfwright::handle::strip::BeamProfile;

#[allow(clippy::wildcard_imports)]
use crate::fixtures::*;

/// Length of the stone and of an element, mm.
const LENGTH: f64 = 2400.0;
const ELEMENT: f64 = 2.5;
const ELEMENTS: usize = 960;
/// Thickness, mm, weight, N/mm², and Young's modulus, `MPa`.
const THICK: f64 = 30.0;
const WEIGHT: f64 = 30.0 * 2900e-9 * 9.806_65;
const YOUNG: f64 = 70_000.0;

/// A stone that tapers from 700 to 500 mm with a square cutout from 600 to 1100 mm.
fn tapered() -> Region {
    let mut region = plate(&[(0.0, 0.0), (LENGTH, 0.0), (LENGTH, 500.0), (0.0, 700.0)]);
    let hole = [
        p(600.0, 150.0),
        p(1100.0, 150.0),
        p(1100.0, 450.0),
        p(600.0, 450.0),
    ];
    region.holes.push(Outline::polygon(&hole).unwrap());
    region
}

/// Along x, not along the slanting side.
fn lengthwise(region: &Region) -> BeamProfile {
    BeamProfile::new(region, Axes::along(region, Vector::new(1.0, 0.0)))
}

fn width(x: f64) -> f64 {
    let hole = if (600.0..1100.0).contains(&x) {
        300.0
    } else {
        0.0
    };
    700.0 - 200.0 * x / LENGTH - hole
}

fn at(i: usize) -> f64 {
    ELEMENT * f64::from(u32::try_from(i).unwrap())
}

/// The stone on springs, and what comes of it.
struct Mesh {
    /// Deflection and slope of every node, downwards.
    moved: Vec<f64>,
}

impl Mesh {
    /// Springs as node numbers and N/mm; a force in N presses on a node.
    fn solved(springs: &[(usize, f64)], pressed: Option<(usize, f64)>) -> Self {
        let n = 2 * (ELEMENTS + 1);
        // Rows of seven: the diagonal in the middle.
        let mut rows = vec![[0.0; 7]; n];
        let mut loads = vec![0.0; n];
        for e in 0..ELEMENTS {
            let middle = at(e) + ELEMENT / 2.0;
            let (stiff, load) = element(middle);
            for (i, row) in stiff.iter().enumerate() {
                for (j, value) in row.iter().enumerate() {
                    rows[2 * e + i][j + 3 - i] += value;
                }
                loads[2 * e + i] += load[i];
            }
        }
        for (node, k) in springs {
            rows[2 * node][3] += k;
        }
        if let Some((node, force)) = pressed {
            loads[2 * node] += force;
        }
        Self {
            moved: banded(rows, loads),
        }
    }

    /// As [`Mesh::solved`] with springs that only push: those that would pull are taken away, all at
    /// once, until none does.
    fn unilateral(springs: &[(usize, f64)], pressed: Option<(usize, f64)>) -> (Self, Vec<f64>) {
        let mut held = springs.to_vec();
        loop {
            let mesh = Self::solved(&held, pressed);
            let count = held.len();
            held.retain(|(node, _)| mesh.sink(*node) > 0.0);
            if held.len() == count {
                let force = |s: &(usize, f64)| s.1 * mesh.sink(s.0).max(0.0);
                let forces = springs.iter().map(force).collect();
                return (mesh, forces);
            }
        }
    }

    fn sink(&self, node: usize) -> f64 {
        self.moved[2 * node]
    }

    /// The greatest stress from the elements' end moments: `k·u − f`.
    fn stress(&self) -> f64 {
        let mut most = 0.0_f64;
        for e in 0..ELEMENTS {
            let middle = at(e) + ELEMENT / 2.0;
            let (stiff, load) = element(middle);
            let own = &self.moved[2 * e..2 * e + 4];
            let end =
                |i: usize| stiff[i].iter().zip(own).map(|(k, u)| k * u).sum::<f64>() - load[i];
            let moment = end(1).abs().max(end(3).abs());
            most = most.max(6.0 * moment / (width(middle) * THICK * THICK));
        }
        most
    }
}

/// Stiffness and even load of the element around a place.
fn element(middle: f64) -> ([[f64; 4]; 4], [f64; 4]) {
    let l = ELEMENT;
    let ei = YOUNG * width(middle) * THICK.powi(3) / 12.0 / l.powi(3);
    let stiff = [
        [12.0, 6.0 * l, -12.0, 6.0 * l],
        [6.0 * l, 4.0 * l * l, -6.0 * l, 2.0 * l * l],
        [-12.0, -6.0 * l, 12.0, -6.0 * l],
        [6.0 * l, 2.0 * l * l, -6.0 * l, 4.0 * l * l],
    ];
    let q = WEIGHT * width(middle);
    let load = [
        q * l / 2.0,
        q * l * l / 12.0,
        q * l / 2.0,
        -q * l * l / 12.0,
    ];
    (stiff.map(|row| row.map(|v| v * ei)), load)
}

/// Gauss elimination of a symmetric system with three diagonals on either side.
fn banded(mut rows: Vec<[f64; 7]>, mut loads: Vec<f64>) -> Vec<f64> {
    let n = rows.len();
    for k in 0..n {
        for below in 1..=3.min(n - 1 - k) {
            let factor = rows[k + below][3 - below] / rows[k][3];
            for j in 0..=3 {
                let above = rows[k][3 + j];
                rows[k + below][3 + j - below] -= factor * above;
            }
            loads[k + below] -= factor * loads[k];
        }
    }
    for k in (0..n).rev() {
        let known: f64 = (1..=3.min(n - 1 - k))
            .map(|j| rows[k][3 + j] * loads[k + j])
            .sum();
        loads[k] = (loads[k] - known) / rows[k][3];
    }
    loads
}

/// So stiff that it does not give, N/mm.
const ROCK: f64 = 1e9;

#[test]
fn two_supports_agree_with_finite_elements() {
    let strip = lengthwise(&tapered());
    let beam = Beam::new(&strip, slice(WEIGHT, THICK));
    for (first, second) in [(0, 960), (160, 760), (240, 600), (300, 700)] {
        let mesh = Mesh::solved(&[(first, ROCK), (second, ROCK)], None);
        let ours = beam
            .worst(Orientation::Flat, [at(first), at(second)])
            .stress_mpa;
        close(ours / mesh.stress(), 1.0, 2e-3);
        let props = beam.on_two([at(first), at(second)]);
        close(props[0].force_n / (ROCK * mesh.sink(first)), 1.0, 1e-3);
    }
}

#[test]
fn five_supports_agree_with_finite_elements_with_and_without_a_person() {
    let strip = lengthwise(&tapered());
    let beam = Beam::new(&strip, slice(WEIGHT, THICK));
    let springs = [
        (16, 30_000.0),
        (200, 35_000.0),
        (440, 6_000.0),
        (620, 35_000.0),
        (900, 30_000.0),
    ];
    let posts = springs.map(|(node, stiffness)| Post {
        across_mm: 0.0,
        at_mm: at(node),
        stiffness,
    });
    let continuous = Continuous::new(&beam, &posts, 0.0).unwrap();
    for pressed in [
        None,
        Some((100, 1000.0)),
        Some((330, 1000.0)),
        Some((530, 700.0)),
    ] {
        let (mesh, forces) = Mesh::unilateral(&springs, pressed);
        let (node, load) = pressed.unwrap_or((0, 0.0));
        let mut props = continuous.unilateral(load, (at(node), 0.0)).unwrap();
        let total: f64 = props.iter().map(|p| p.force_n).sum();
        close(total / (beam.weight_n() + load), 1.0, 1e-9);
        for (force, prop) in forces.iter().zip(&props) {
            close(prop.force_n, *force, 2e-3 * beam.weight_n());
        }
        props.push(kerfwright::handle::bend::Reaction {
            at_mm: at(node),
            force_n: -load,
        });
        close(
            beam.worst_held(Orientation::Flat, &props).stress_mpa / mesh.stress(),
            1.0,
            5e-3,
        );
    }
}

#[test]
fn a_support_that_would_pull_is_let_go_as_in_finite_elements_without_it() {
    let strip = lengthwise(&tapered());
    let beam = Beam::new(&strip, slice(WEIGHT, THICK));
    let springs = [
        (16, 30_000.0),
        (440, 35_000.0),
        (500, 35_000.0),
        (900, 30_000.0),
    ];
    let posts = springs.map(|(node, stiffness)| Post {
        across_mm: 0.0,
        at_mm: at(node),
        stiffness,
    });
    let continuous = Continuous::new(&beam, &posts, 0.0).unwrap();
    // 1.5 kN half-way between the first two lifts the stone off the third.
    let pressed = (240, 1500.0);
    let all = Mesh::solved(&springs, Some(pressed));
    assert!(all.sink(500) < 0.0);
    let kept = [springs[0], springs[1], springs[3]];
    let mesh = Mesh::solved(&kept, Some(pressed));
    assert!(mesh.sink(500) < 0.0 && mesh.sink(900) > 0.0);
    let props = continuous
        .unilateral(pressed.1, (at(pressed.0), 0.0))
        .unwrap();
    assert_eq!(props[2].force_n, 0.0);
    for (node, k, i) in [(16, 30_000.0, 0), (440, 35_000.0, 1), (900, 30_000.0, 3)] {
        close(
            props[i].force_n,
            k * mesh.sink(node),
            2e-3 * beam.weight_n(),
        );
    }
    // Tipped over the last one, nothing holds it.
    assert!(continuous.unilateral(1e5, (at(960), 0.0)).is_none());
}

// Textbook coefficients of an even beam over three even spans' ends (Gere, Mechanics of Materials,
// appendix of beams; also any table): two equal spans, reactions 3/8, 10/8 and 3/8 of a span's load;
// moment over the middle q·l²/8.
#[test]
fn published_two_equal_spans() {
    let strip = strip(&rectangle(2000.0, 600.0));
    let beam = Beam::new(&strip, slice(WEIGHT, THICK));
    let posts = [0.0, 1000.0, 2000.0].map(|at_mm| Post {
        across_mm: 0.0,
        at_mm,
        stiffness: ROCK,
    });
    let props = Continuous::new(&beam, &posts, 0.0)
        .unwrap()
        .unilateral(0.0, (0.0, 0.0))
        .unwrap();
    let span = beam.weight_n() / 2.0;
    for (prop, part) in props.iter().zip([0.375, 1.25, 0.375]) {
        close(prop.force_n / span, part, 1e-4);
    }
    close(
        beam.moment_at(&props, 1000.0) / (-span * 1.0 / 8.0),
        1.0,
        1e-3,
    );
}

/// A stone too thick to bend is a rigid plate: the same forces from the plate's own sums, springs that lift off
/// among them.
#[test]
fn a_beam_that_does_not_bend_shares_as_a_rigid_plate() {
    let region = tapered();
    let strip = lengthwise(&region);
    let beam = Beam::new(&strip, slice(WEIGHT, 3e5));
    let balance = region.centroid();
    let mut spread = Spread(7);
    let mut lifted = 0;
    for _ in 0..200 {
        let count = 3 + (6.0 * spread.next()) as usize;
        let corners = [(40.0, 60.0), (2360.0, 40.0), (2350.0, 420.0), (60.0, 640.0)];
        let more = (0..count).map(|_| (2400.0 * spread.next(), 500.0 * spread.next()));
        let mut posts: Vec<Post> = corners
            .into_iter()
            .chain(more)
            .map(|(at_mm, across_mm)| Post {
                at_mm,
                across_mm,
                stiffness: 1000.0,
            })
            .collect();
        posts.sort_by(|a, b| a.at_mm.total_cmp(&b.at_mm));
        let (load, press) = (900.0, (2400.0 * spread.next(), 480.0 * spread.next()));
        let springs: Vec<Spring> = posts
            .iter()
            .map(|post| Spring {
                at: p(post.at_mm, post.across_mm),
                stiffness: post.stiffness,
            })
            .collect();
        let total = beam.weight_n() + load;
        let middle = balance + (p(press.0, press.1) - balance) * (load / total);
        let plate = unilateral(&springs, total, middle);
        let bent = Continuous::new(&beam, &posts, balance.y).unwrap();
        let Some(props) = bent.unilateral(load, press) else {
            assert!(plate.off_balance_mm > 1e-6, "{posts:?} {press:?}");
            continue;
        };
        for (force, prop) in plate.forces.iter().zip(props) {
            close(prop.force_n, force.unwrap_or(0.0), 1e-4 * total);
            lifted += usize::from(force.is_none());
        }
    }
    assert!(lifted > 20, "{lifted}");
}
