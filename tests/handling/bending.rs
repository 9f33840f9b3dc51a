//! Bending against sums made another way.

use std::f64::consts::PI;

use kerfwright::geom::{Outline, Pose, Region, Vector};
use kerfwright::handle::bend::{Beam, Orientation};
use kerfwright::handle::trestles::best_supports;

#[allow(clippy::wildcard_imports)]
use crate::fixtures::*;

/// The moment at every slice's middle by a plain sum over slices of the sampled stone, and the
/// greatest stress: nothing shared with the library but the question "inside or not".
fn summed_stress(region: &Region, supports: [f64; 2], q: f64, t: f64, slices: u32) -> f64 {
    let step = 2150.0 / f64::from(slices);
    let rows = 640_u32;
    let widths: Vec<f64> = (0..slices)
        .map(|i| {
            let x = (f64::from(i) + 0.5) * step;
            let hit = |r: &u32| {
                let at = p(x, (f64::from(*r) + 0.5) * 640.0 / f64::from(rows));
                region.side(at) == kerfwright::geom::Side::Inside
            };
            let count = u32::try_from((0..rows).filter(hit).count()).unwrap();
            f64::from(count) * 640.0 / f64::from(rows)
        })
        .collect();
    let at = |i: usize| (f64::from(u32::try_from(i).unwrap()) + 0.5) * step;
    let loads: Vec<f64> = widths.iter().map(|b| q * b * step).collect();
    let total: f64 = loads.iter().sum();
    let turn: f64 = loads.iter().enumerate().map(|(i, w)| w * at(i)).sum();
    let second = (turn - total * supports[0]) / (supports[1] - supports[0]);
    let reactions = [total - second, second];
    // Second differences: M″ = −w, stepped from the free end.
    let (mut shear, mut moment, mut most) = (0.0, 0.0, 0.0_f64);
    for (i, w) in loads.iter().enumerate() {
        for (s, r) in supports.iter().zip(reactions) {
            let here = (*s - (at(i) - 0.5 * step)) / step;
            if (0.0..1.0).contains(&here) {
                shear += r;
                moment -= r * here * step;
            }
        }
        moment += shear * step - 0.5 * w * step;
        shear -= w;
        if widths[i] > 100.0 {
            most = most.max(moment.abs() * 6.0 / (widths[i] * t * t));
        }
    }
    most
}

#[test]
fn bending_agrees_with_a_stepped_sum_on_a_holed_round_ended_top() {
    let region = counter();
    let strip = strip(&region);
    close(strip.area() / region.area(), 1.0, 1e-9);
    close(strip.middle(), region.centroid().x, 1e-6);
    let (q, t) = (30.0 * 2900e-9 * 9.806_65 * 1.2, 29.6);
    let beam = Beam::new(&strip, slice(q, t));
    let best = best_supports(&beam);
    for supports in [[0.0, 2150.0], [300.0, 1700.0], best] {
        let exact = beam.worst(Orientation::Flat, supports).stress_mpa;
        let stepped = summed_stress(&region, supports, q, t, 1075);
        close(exact / stepped, 1.0, 0.015);
    }
    // No pair of supports on a grid does better than the best.
    let least = beam.worst(Orientation::Flat, best).stress_mpa;
    for i in 0..40 {
        for j in 0..40 {
            let tried = [f64::from(i) * 20.0, 2150.0 - f64::from(j) * 20.0];
            assert!(beam.worst(Orientation::Flat, tried).stress_mpa >= least * (1.0 - 1e-9));
        }
    }
}

#[test]
fn a_turned_or_mirrored_stone_is_as_strong_and_as_heavy_to_lift() {
    let region = counter();
    let pose = Pose::new(0.3, Vector::new(170.0, 90.0));
    let turned = Region {
        outer: region.outer.posed(pose),
        holes: region.holes.iter().map(|h| h.posed(pose)).collect(),
    };
    // Half a turn swaps the ends the distances are counted from.
    let about = Pose::new(PI, Vector::new(0.0, 0.0));
    let swapped = Region {
        outer: region.outer.posed(about),
        holes: region.holes.iter().map(|h| h.posed(about)).collect(),
    };
    let mut mirrored = region.clone();
    mirrored.holes = vec![Outline::circle(p(620.0, 310.0), 180.0).unwrap()];
    let best = |r: &Region| {
        let strip = strip(r);
        let beam = Beam::new(&strip, slice(1e-3, 30.0));
        let supports = best_supports(&beam);
        (supports, beam.worst(Orientation::Flat, supports).stress_mpa)
    };
    let ([s1, s2], stress) = best(&region);
    for (other, ends) in [
        (&turned, [s1, s2]),
        (&mirrored, [s1, s2]),
        (&swapped, [2150.0 - s2, 2150.0 - s1]),
    ] {
        let (supports, same) = best(other);
        close(same / stress, 1.0, 1e-9);
        close(supports[0], ends[0], 1e-3);
        close(supports[1], ends[1], 1e-3);
    }
    let (here, there) = (
        lifted(&load(region, 45.0), 4, 25.0),
        lifted(&load(turned, 45.0), 4, 25.0),
    );
    for (a, b) in here.lifters.iter().zip(&there.lifters) {
        close(pose.apply(a.point).distance(b.point), 0.0, 1e-6);
        close(a.share.mass().kg(), b.share.mass().kg(), 1e-9);
    }
}

#[test]
fn a_slab_out_of_square_is_as_strong_on_edge_as_a_square_one() {
    // Its ends run out into corners a few mm long; held at those ends it is still a deep beam.
    let square = rectangle(1810.0, 607.0);
    let skew = plate(&[(0.0, 0.0), (1812.0, -3.0), (1806.0, 604.0), (4.0, 611.0)]);
    let stress = |region: &Region| {
        let strip = strip(region);
        let beam = Beam::new(&strip, slice(1e-3, 39.0));
        beam.worst(Orientation::OnEdge, [0.0, strip.length_mm()])
            .stress_mpa
    };
    close(stress(&skew) / stress(&square), 1.0, 0.02);
}
