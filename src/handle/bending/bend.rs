//! Bending of a stone under its own weight: lying flat on two supports, in people's hands, on edge.
//!
//! The stone is a beam along its long direction with the line load its cross-sections give,
//! times a handling factor. Sound stone is assumed: across a fissure or a mend no strength holds.
//! Beside a cutout the rails are taken to bend together; [`super::rail`] looks at them alone.

use serde::Serialize;

use super::on_two::OnTwo;
use super::strip::{BeamProfile, Station};
use crate::geom::SAME_MM;

/// Widths below this, mm, carry no stress: the very tip of a round end.
const TIP_MM: f64 = 1e-3;
/// Golden sections of the stretch that holds a peak: a few centimetres to a few hundredths of a
/// millimetre. The stress there is flat, so its error is below a thousand-millionth.
const SECTIONS: usize = 14;

/// Which face a moment stretches.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Sense {
    /// The underside, as between two supports.
    Sag,
    /// The upper face, as over a support.
    Hog,
}

impl Sense {
    fn sign(self) -> f64 {
        match self {
            Self::Sag => 1.0,
            Self::Hog => -1.0,
        }
    }
}

/// How the stone lies.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Orientation {
    /// Face up; bends over its thickness.
    Flat,
    /// On edge; bends over its depth.
    OnEdge,
}

/// The stone's weight and thickness for bending.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PlateSection {
    /// Weight of a square millimetre of face, N, handling factor included.
    pub weight_n_per_mm2: f64,
    /// Thinnest reading, mm.
    pub thickness_mm: f64,
}

/// Something that holds the beam up.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Reaction {
    /// Distance from the end of the stone, mm.
    pub at_mm: f64,
    /// What it pushes up with, N, handling factor included.
    pub force_n: f64,
}

/// The most stressed cross-section of one way of lying.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Worst {
    /// Flat or on edge.
    pub orientation: Orientation,
    /// Distances of what holds it from the end of the stone, mm.
    pub supports_mm: Vec<f64>,
    /// Distance of the most stressed cross-section from the same end, mm.
    pub at_mm: f64,
    /// Its net width, mm.
    pub width_mm: f64,
    /// Bending moment there, N·m; positive stretches the underside.
    pub moment_nm: f64,
    /// Greatest stress, `MPa`.
    pub stress_mpa: f64,
}

/// A beam ready to be laid down.
#[derive(Clone, Debug)]
pub struct Beam<'a> {
    strip: &'a BeamProfile,
    slice: PlateSection,
    /// One over the section modulus of every station, flat and on edge, 1/mm³; 0 at tips.
    flat: Vec<f64>,
    on_edge: Vec<f64>,
    on_two: OnTwo,
}

impl<'a> Beam<'a> {
    /// A beam of a stone.
    #[must_use]
    pub fn new(strip: &'a BeamProfile, slice: PlateSection) -> Self {
        let inverse = |orientation| -> Vec<f64> {
            let stations = strip.stations().iter();
            stations
                .map(|s| inverse_modulus(strip, slice, orientation, s))
                .collect()
        };
        let flat = inverse(Orientation::Flat);
        Self {
            strip,
            slice,
            on_two: OnTwo::new(strip, slice.weight_n_per_mm2, &flat),
            flat,
            on_edge: inverse(Orientation::OnEdge),
        }
    }

    /// The stone it is a beam of.
    #[must_use]
    pub fn strip(&self) -> &BeamProfile {
        self.strip
    }

    /// Its weight and thickness.
    #[must_use]
    pub const fn slice(&self) -> PlateSection {
        self.slice
    }

    /// Its whole weight, N, handling factor included.
    #[must_use]
    pub fn weight_n(&self) -> f64 {
        self.slice.weight_n_per_mm2 * self.strip.area()
    }

    /// What two supports push up with, `supports[0] < supports[1]`, mm from the end. The balance
    /// point must lie between them, or a support would have to pull.
    #[must_use]
    pub fn on_two(&self, supports: [f64; 2]) -> [Reaction; 2] {
        let [s1, s2] = supports;
        let second = self.weight_n() * (self.strip.middle() - s1) / (s2 - s1);
        let prop = |at_mm, force_n| Reaction { at_mm, force_n };
        [prop(s1, self.weight_n() - second), prop(s2, second)]
    }

    /// The most stressed cross-section on two supports; see [`Beam::on_two`].
    #[must_use]
    pub fn worst(&self, orientation: Orientation, supports: [f64; 2]) -> Worst {
        self.worst_held(orientation, &self.on_two(supports))
    }

    /// The most stressed cross-section under any forces that hold the stone in balance.
    #[must_use]
    pub fn worst_held(&self, orientation: Orientation, props: &[Reaction]) -> Worst {
        let [sag, hog] = [Sense::Sag, Sense::Hog].map(|sense| {
            let (station, stress) = self.peak(orientation, props, sense);
            (station, stress, sense)
        });
        let (at, stress, sense) = if hog.1 > sag.1 { hog } else { sag };
        let moment = at.map_or(0.0, |s| self.moment(props, &s) * sense.sign());
        Worst {
            orientation,
            supports_mm: props.iter().map(|p| p.at_mm).collect(),
            at_mm: at.map_or(0.0, |s| s.u),
            width_mm: at.map_or(0.0, |s| s.width),
            moment_nm: sense.sign() * moment.max(0.0) / 1000.0,
            stress_mpa: stress,
        }
    }

    /// The greatest stresses flat on two supports, underside and upper face, `MPa`; 0 where there is none.
    ///
    /// At the stations and at the supports, and between stations by a parabola through three: next to exact where
    /// the width does not jump. Cost: see [`OnTwo`].
    pub(crate) fn stresses(&self, supports: [f64; 2]) -> [f64; 2] {
        let props = self.on_two(supports);
        let best = self.on_two.peaks(props[0].force_n, supports);
        let mut stresses = [(1.0, best[0]), (-1.0, best[1])]
            .map(|(sign, (at, stress))| self.parabola(&props, sign, at).max(stress));
        for at in supports {
            let spans = self.strip.spans_at(at);
            for station in spans.filter_map(|s| self.strip.station_in(s, at)) {
                let moment = self.moment(&props, &station);
                let stress = moment * self.inverse_modulus(Orientation::Flat, &station);
                stresses = [stresses[0].max(stress), stresses[1].max(-stress)];
            }
        }
        stresses
    }

    /// The top of a parabola through a station's stress and its neighbours'; 0 where there are none in the
    /// same stretch, or something holds the stone between them.
    fn parabola(&self, props: &[Reaction], sign: f64, at: usize) -> f64 {
        let stations = self.strip.stations();
        let near = at.checked_sub(1).and_then(|low| stations.get(low..=at + 1));
        let Some([low, here, high]) = near else {
            return 0.0;
        };
        let held_between = props.iter().any(|p| p.at_mm > low.u && p.at_mm < high.u);
        if low.span != here.span || high.span != here.span || held_between {
            return 0.0;
        }
        let of = |i: usize, s: &Station| {
            let inverse = self.flat.get(i).copied().unwrap_or(0.0);
            sign * self.moment(props, s) * inverse
        };
        let (a, b, c) = (of(at - 1, low), of(at, here), of(at + 1, high));
        let curve = a - 2.0 * b + c;
        if curve < 0.0 {
            b - (c - a).powi(2) / (8.0 * curve)
        } else {
            0.0
        }
    }

    /// Bending moment at `u`, N·m; positive stretches the underside.
    #[must_use]
    pub fn moment_at(&self, props: &[Reaction], u: f64) -> f64 {
        let load = self.slice.weight_n_per_mm2 * self.strip.left_of(u).1;
        (held(props, u) - load) / 1000.0
    }

    /// Shear force at `u`, N: what holds the stone left of it less its weight there; the greater
    /// one where something holds it at `u` itself.
    #[must_use]
    pub fn shear_at(&self, props: &[Reaction], u: f64) -> f64 {
        let load = self.slice.weight_n_per_mm2 * self.strip.left_of(u).0;
        let up_to = |at: &dyn Fn(f64) -> bool| -> f64 {
            let left = props.iter().filter(|p| at(p.at_mm));
            left.map(|p| p.force_n).sum::<f64>() - load
        };
        let (before, after) = (up_to(&|at| at < u), up_to(&|at| at <= u));
        if before.abs() > after.abs() {
            before
        } else {
            after
        }
    }

    fn peak(
        &self,
        orientation: Orientation,
        props: &[Reaction],
        sense: Sense,
    ) -> (Option<Station>, f64) {
        let (at, stress) = self.highest(orientation, props, sense);
        let of = |s: &Station| {
            let moment = sense.sign() * self.moment(props, s);
            moment.max(0.0) * self.inverse_modulus(orientation, s)
        };
        let mut best = (self.strip.stations().get(at).copied(), stress);
        let near_props = props.iter().flat_map(|p| {
            let spans = self.strip.spans_at(p.at_mm);
            spans.filter_map(|s| self.strip.station_in(s, p.at_mm))
        });
        for station in near_props.chain(self.sharpened(at, &of)) {
            let here = of(&station);
            if here > best.1 {
                best = (Some(station), here);
            }
        }
        best
    }

    /// The most stressed station by its number, and its stress.
    fn highest(&self, orientation: Orientation, props: &[Reaction], sense: Sense) -> (usize, f64) {
        let inverse = match orientation {
            Orientation::Flat => &self.flat,
            Orientation::OnEdge => &self.on_edge,
        };
        let (sign, load) = (sense.sign(), self.slice.weight_n_per_mm2);
        let mut best = (0, 0.0);
        for (i, (s, inverse)) in self.strip.stations().iter().zip(inverse).enumerate() {
            let stress = sign * (held(props, s.u) - load * s.turn) * inverse;
            if stress > best.1 {
                best = (i, stress);
            }
        }
        best
    }

    /// Bending moment at a station, N·mm; positive stretches the underside.
    fn moment(&self, props: &[Reaction], station: &Station) -> f64 {
        held(props, station.u) - self.slice.weight_n_per_mm2 * station.turn
    }

    /// One over the section modulus of a cross-section, 1/mm³; 0 where it is no beam.
    fn inverse_modulus(&self, orientation: Orientation, station: &Station) -> f64 {
        inverse_modulus(self.strip, self.slice, orientation, station)
    }

    /// The peak between the neighbours of the most stressed station, by golden section.
    fn sharpened(&self, at: usize, stress: &dyn Fn(&Station) -> f64) -> Option<Station> {
        let stations = self.strip.stations();
        let here = stations.get(at)?;
        let same = |i: usize| stations.get(i).filter(|s| s.span == here.span);
        let low = same(at.wrapping_sub(1)).map_or(here.u, |s| s.u);
        let high = same(at + 1).map_or(here.u, |s| s.u);
        if high - low <= SAME_MM {
            return None;
        }
        let of = |u: f64| {
            let station = self.strip.station_in(here.span, u);
            station.map_or(0.0, |s| -stress(&s))
        };
        self.strip
            .station_in(here.span, lowest(low, high, SECTIONS, of))
    }
}

/// One over the section modulus of a cross-section, 1/mm³; 0 where it is no beam.
///
/// Within a thickness of either end of the stone, where an end runs out into a corner, a stone on edge is lower than
/// it is thick: it bears on the support and is no beam.
fn inverse_modulus(
    strip: &BeamProfile,
    slice: PlateSection,
    orientation: Orientation,
    station: &Station,
) -> f64 {
    let (t, b) = (slice.thickness_mm, station.width);
    let [first, last] = strip.reach();
    let is_end = (station.u - first).min(last - station.u) < t;
    if b <= TIP_MM || (orientation == Orientation::OnEdge && b < t && is_end) {
        return 0.0;
    }
    match orientation {
        Orientation::Flat => 6.0 / (b * t * t),
        Orientation::OnEdge => 1.0 / (t * strip.edge_modulus(station.span, station.u)),
    }
}

/// Moment of what holds the stone left of `u` about `u`, N·mm.
fn held(props: &[Reaction], u: f64) -> f64 {
    let levers = props.iter().map(|p| p.force_n * (u - p.at_mm).max(0.0));
    levers.sum()
}

/// Where a function with one valley between `low` and `high` is least, by golden section.
pub(crate) fn lowest(low: f64, high: f64, sections: usize, of: impl Fn(f64) -> f64) -> f64 {
    let (mut low, mut high) = (low, high);
    let golden = 0.5 * (5.0_f64.sqrt() - 1.0);
    let (mut a, mut b) = (high - golden * (high - low), low + golden * (high - low));
    let (mut at_a, mut at_b) = (of(a), of(b));
    for _ in 0..sections {
        if at_a < at_b {
            (high, b, at_b) = (b, a, at_a);
            a = high - golden * (high - low);
            at_a = of(a);
        } else {
            (low, a, at_a) = (a, b, at_b);
            b = low + golden * (high - low);
            at_b = of(b);
        }
    }
    f64::midpoint(low, high)
}
