//! The stations of a curve, and which of them are struck before the first cut: the others are taped from
//! the nearest of these.
//!
//! A millimetre on the tape is a millimetre over the cosine of half the angle of the chord along the arc: over
//! a quarter circle 1.4, over nearly half a circle ten and more.

use std::f64::consts::{FRAC_PI_2, TAU};

use crate::geom::Vector;
use crate::job::Job;

use super::set_out::tie_along;
use super::{Station, StruckStation};

/// The stations with the marks they are taped from: as few as leave none over more than a quarter circle.
#[must_use]
pub fn taped(stations: &[Station], whole: bool) -> Vec<Station> {
    let near = |a: usize, b: usize| turn(&stations[a], &stations[b]) <= FRAC_PI_2 + 1e-9;
    let nearest = |from: &[usize], i: usize| {
        let of = from.iter().copied();
        of.min_by(|a, b| {
            let off = |x: &usize| turn(&stations[*x], &stations[i]);
            off(a).total_cmp(&off(b))
        })
    };
    let enough = |from: &Vec<usize>| {
        let all = 0..stations.len();
        all.into_iter()
            .all(|i| nearest(from, i).is_some_and(|f| near(f, i)))
    };
    let spreads = (1..=stations.len()).map(|gaps| spread(stations.len(), gaps, whole));
    let from = { spreads }.find(enough).unwrap_or_default();
    let each = stations.iter().enumerate().map(|(i, station)| {
        let from = &stations[nearest(&from, i).unwrap_or(i)];
        Station {
            taped_from: from.number,
            taped: from.touch.distance(station.touch),
            ..*station
        }
    });
    each.collect()
}

/// Places in a row of stations, ends included, with so many gaps between; round a whole circle the last gap
/// leads back to the first.
fn spread(count: usize, gaps: usize, whole: bool) -> Vec<usize> {
    let mut places: Vec<usize> = if whole {
        (0..gaps).map(|i| i * count / gaps).collect()
    } else {
        (0..=gaps)
            .map(|i| (i * (count - 1) + gaps / 2) / gaps)
            .collect()
    };
    places.dedup();
    places
}

/// The angle between two stations, radians.
fn turn(a: &Station, b: &Station) -> f64 {
    let off = (a.angle - b.angle).abs() % TAU;
    off.min(TAU - off)
}

/// The stations that others are taped from, with their ties.
#[must_use]
pub fn struck(job: &Job, stations: &[Station]) -> Vec<StruckStation> {
    let own = stations.iter().filter(|s| s.taped_from == s.number);
    own.map(|s| StruckStation {
        station: s.number,
        at: s.touch,
        tie: tie_along(&job.slab.shape, s.touch, Vector::at_angle(s.angle).left()),
    })
    .collect()
}
