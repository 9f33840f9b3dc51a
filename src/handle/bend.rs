//! Bending of a stone under its own weight: lying flat on two supports, in people's hands, on edge.
//!
//! The stone is a beam along its long direction with the line load its cross-sections give,
//! times a handling factor. Sound stone is assumed: across a fissure or a mend no strength holds.
//! Beside a cutout the rails are taken to bend together; [`super::rail`] looks at them alone.

use serde::Serialize;

use super::strip::{Station, Strip};
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
pub enum Lie {
    /// Face up; bends over its thickness.
    Flat,
    /// On edge; bends over its depth.
    OnEdge,
}

/// The stone's weight and thickness for bending.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Slice {
    /// Weight of a square millimetre of face, N, handling factor included.
    pub weight_n_per_mm2: f64,
    /// Thinnest reading, mm.
    pub thickness_mm: f64,
}

/// Something that holds the beam up.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Prop {
    /// Distance from the end of the stone, mm.
    pub at_mm: f64,
    /// What it pushes up with, N, handling factor included.
    pub force_n: f64,
}

/// The most stressed cross-section of one way of lying.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Worst {
    /// Flat or on edge.
    pub lie: Lie,
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
    strip: &'a Strip,
    slice: Slice,
    /// One over the section modulus of every station, flat and on edge, 1/mm³; 0 at tips.
    flat: Vec<f64>,
    on_edge: Vec<f64>,
}

impl<'a> Beam<'a> {
    /// A beam of a stone.
    #[must_use]
    pub fn new(strip: &'a Strip, slice: Slice) -> Self {
        let mut beam = Self {
            strip,
            slice,
            flat: Vec::new(),
            on_edge: Vec::new(),
        };
        let inverse = |lie| {
            let stations = strip.stations().iter();
            stations.map(|s| beam.inverse_modulus(lie, s)).collect()
        };
        let (flat, on_edge) = (inverse(Lie::Flat), inverse(Lie::OnEdge));
        (beam.flat, beam.on_edge) = (flat, on_edge);
        beam
    }

    /// The stone it is a beam of.
    #[must_use]
    pub fn strip(&self) -> &Strip {
        self.strip
    }

    /// Its weight and thickness.
    #[must_use]
    pub const fn slice(&self) -> Slice {
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
    pub fn on_two(&self, supports: [f64; 2]) -> [Prop; 2] {
        let [s1, s2] = supports;
        let second = self.weight_n() * (self.strip.middle() - s1) / (s2 - s1);
        let prop = |at_mm, force_n| Prop { at_mm, force_n };
        [prop(s1, self.weight_n() - second), prop(s2, second)]
    }

    /// The most stressed cross-section on two supports; see [`Beam::on_two`].
    #[must_use]
    pub fn worst(&self, lie: Lie, supports: [f64; 2]) -> Worst {
        self.worst_held(lie, &self.on_two(supports))
    }

    /// The most stressed cross-section under any forces that hold the stone in balance.
    #[must_use]
    pub fn worst_held(&self, lie: Lie, props: &[Prop]) -> Worst {
        let [sag, hog] = [Sense::Sag, Sense::Hog].map(|sense| {
            let (station, stress) = self.peak(lie, props, sense);
            (station, stress, sense)
        });
        let (at, stress, sense) = if hog.1 > sag.1 { hog } else { sag };
        let moment = at.map_or(0.0, |s| self.moment(props, &s) * sense.sign());
        Worst {
            lie,
            supports_mm: props.iter().map(|p| p.at_mm).collect(),
            at_mm: at.map_or(0.0, |s| s.u),
            width_mm: at.map_or(0.0, |s| s.width),
            moment_nm: sense.sign() * moment.max(0.0) / 1000.0,
            stress_mpa: stress,
        }
    }

    /// The greatest stress on two supports of one sense only; 0 when there is none.
    #[must_use]
    pub fn stress_of(&self, lie: Lie, supports: [f64; 2], sense: Sense) -> f64 {
        self.peak(lie, &self.on_two(supports), sense).1
    }

    /// As [`Beam::stress_of`] flat, at the stations alone: quick, and short of it by less than
    /// [`super::strip`] says.
    pub(super) fn stress_at_stations(&self, supports: [f64; 2], sense: Sense) -> f64 {
        let props = self.on_two(supports);
        self.highest(Lie::Flat, &props, sense).1
    }

    /// Bending moment at `u`, N·m; positive stretches the underside.
    #[must_use]
    pub fn moment_at(&self, props: &[Prop], u: f64) -> f64 {
        let load = self.slice.weight_n_per_mm2 * self.strip.left_of(u).1;
        (held(props, u) - load) / 1000.0
    }

    /// Shear force at `u`, N: what holds the stone left of it less its weight there; the greater
    /// one where something holds it at `u` itself.
    #[must_use]
    pub fn shear_at(&self, props: &[Prop], u: f64) -> f64 {
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

    fn peak(&self, lie: Lie, props: &[Prop], sense: Sense) -> (Option<Station>, f64) {
        let (at, stress) = self.highest(lie, props, sense);
        let of = |s: &Station| {
            let moment = sense.sign() * self.moment(props, s);
            moment.max(0.0) * self.inverse_modulus(lie, s)
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
    fn highest(&self, lie: Lie, props: &[Prop], sense: Sense) -> (usize, f64) {
        let inverse = match lie {
            Lie::Flat => &self.flat,
            Lie::OnEdge => &self.on_edge,
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
    fn moment(&self, props: &[Prop], station: &Station) -> f64 {
        held(props, station.u) - self.slice.weight_n_per_mm2 * station.turn
    }

    /// One over the section modulus of a cross-section, 1/mm³; 0 where it is no beam.
    fn inverse_modulus(&self, lie: Lie, station: &Station) -> f64 {
        let (t, b) = (self.slice.thickness_mm, station.width);
        if b <= TIP_MM || (lie == Lie::OnEdge && b < t && self.is_end(station.u)) {
            return 0.0;
        }
        match lie {
            Lie::Flat => 6.0 / (b * t * t),
            Lie::OnEdge => 1.0 / (t * self.strip.edge_modulus(station.span, station.u)),
        }
    }

    /// Within a thickness of either end of the stone. Where an end runs out into a corner there, a
    /// stone on edge is lower than it is thick: it bears on the support and is no beam.
    fn is_end(&self, u: f64) -> bool {
        let [first, last] = self.strip.reach();
        (u - first).min(last - u) < self.slice.thickness_mm
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

/// Moment of what holds the stone left of `u` about `u`, N·mm.
fn held(props: &[Prop], u: f64) -> f64 {
    let levers = props.iter().map(|p| p.force_n * (u - p.at_mm).max(0.0));
    levers.sum()
}

/// Where a function with one valley between `low` and `high` is least, by golden section.
pub(super) fn lowest(low: f64, high: f64, sections: usize, of: impl Fn(f64) -> f64) -> f64 {
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
