//! A stone lying flat on two supports, made ready for a search of their places.
//!
//! What hangs over a support stresses a section the same wherever the supports stand: the greatest of that up to
//! each station is summed up once, from either end. Between the supports the moment is that of the first one's force,
//! a straight line, less the hanging stone's. Cost: the stations between the supports, a few sums each.

use super::strip::BeamProfile;

/// The sections of a beam as a search asks for them, station by station.
#[derive(Clone, Debug)]
pub(super) struct OnTwo {
    /// Places along the beam, mm.
    places: Vec<f64>,
    /// One over the section modulus, 1/mm³; 0 at tips.
    inverse: Vec<f64>,
    /// Upper face's stress when all stone to the left hangs on the section, `MPa`.
    hung: Vec<f64>,
    /// The most stressed station up to each one, and from each one on, where stone hangs over.
    from_left: Vec<Peak>,
    from_right: Vec<Peak>,
}

/// A station by its number, and its stress.
pub(super) type Peak = (usize, f64);

impl OnTwo {
    /// A beam with the weight of its face, N/mm², and one over its section moduli.
    pub(super) fn new(strip: &BeamProfile, weight: f64, inverse: &[f64]) -> Self {
        let stations = strip.stations();
        let places: Vec<f64> = stations.iter().map(|s| s.u).collect();
        let each = stations.iter().zip(inverse);
        let hung: Vec<f64> = each.map(|(s, i)| weight * s.turn * i).collect();
        // The stone to the right of a section about it: all of it, less what lies to the left.
        let (area, middle) = (strip.area(), strip.middle());
        let each = stations.iter().zip(inverse);
        let right = each.map(|(s, i)| weight * (s.turn - area * (s.u - middle)) * i);
        let right: Vec<f64> = right.collect();
        let mut from_right = running(right.iter().copied().enumerate().rev());
        from_right.reverse();
        Self {
            from_left: running(hung.iter().copied().enumerate()),
            from_right,
            inverse: inverse.to_vec(),
            places,
            hung,
        }
    }

    /// The most stressed stations with the first support's force, N, and both places, mm: underside and upper
    /// face.
    pub(super) fn peaks(&self, force: f64, [first, second]: [f64; 2]) -> [Peak; 2] {
        let from = self.places.partition_point(|u| *u <= first);
        let to = self.places.partition_point(|u| *u < second).max(from);
        let left = from.checked_sub(1).and_then(|i| self.from_left.get(i));
        let ends = [left, self.from_right.get(to)].into_iter().flatten();
        let mut hog = ends.fold((0, 0.0), |best, p| if p.1 > best.1 { *p } else { best });
        let mut sag = (0, 0.0);
        let between = self.places[from..to].iter().zip(&self.inverse[from..to]);
        for (i, ((u, inverse), hung)) in between.zip(&self.hung[from..to]).enumerate() {
            let stress = force * (u - first) * inverse - hung;
            if stress > sag.1 {
                sag = (from + i, stress);
            }
            if -stress > hog.1 {
                hog = (from + i, -stress);
            }
        }
        [sag, hog]
    }
}

/// The greatest value up to each.
fn running(values: impl Iterator<Item = Peak>) -> Vec<Peak> {
    let greatest = |best: &mut Peak, next: Peak| {
        if next.1 > best.1 {
            *best = next;
        }
        Some(*best)
    };
    values.scan((0, 0.0), greatest).collect()
}
