//! A way of lying, judged against what the stone may be stressed.

use serde::Serialize;

use crate::geom::Point;

use super::bend::{Beam, Orientation, Reaction, Worst};

/// Stretches of the diagram along the stone.
const STRETCHES: u8 = 24;

/// One way of lying, judged.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Bending {
    /// The way of lying, in words.
    pub what: &'static str,
    /// The most stressed cross-section.
    #[serde(flatten)]
    pub worst: Worst,
    /// What holds it, as chords across the stone, slab frame.
    pub support_lines: Vec<[Point; 2]>,
    /// The chord of the most stressed cross-section, slab frame.
    pub worst_line: [Point; 2],
    /// How the stress stands to what is allowed.
    pub verdict: BendVerdict,
}

impl Bending {
    /// The worst of one way of lying.
    #[must_use]
    pub fn of(
        beam: &Beam<'_>,
        what: &'static str,
        orientation: Orientation,
        props: &[Reaction],
        allowed_mpa: f64,
    ) -> Self {
        let worst = beam.worst_held(orientation, props);
        let strip = beam.strip();
        Self {
            what,
            support_lines: props.iter().map(|p| strip.chord_at(p.at_mm)).collect(),
            worst_line: strip.chord_at(worst.at_mm),
            verdict: BendVerdict::of(worst.stress_mpa, allowed_mpa),
            worst,
        }
    }

    /// The worse of two.
    #[must_use]
    pub fn worse(self, other: Self) -> Self {
        if other.worst.stress_mpa > self.worst.stress_mpa {
            other
        } else {
            self
        }
    }
}

/// How a bending stress stands to strength ÷ safety factor.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum BendVerdict {
    /// Not above it. Sound stone, nobody on it, set down gently.
    NotAbove {
        /// Stress over allowed stress.
        utilisation: f64,
    },
    /// Above it: do not.
    Above {
        /// Stress over allowed stress.
        utilisation: f64,
    },
}

impl BendVerdict {
    /// A stress against what is allowed, both `MPa`.
    #[must_use]
    pub fn of(stress_mpa: f64, allowed_mpa: f64) -> Self {
        let utilisation = stress_mpa / allowed_mpa;
        if utilisation <= 1.0 {
            Self::NotAbove { utilisation }
        } else {
            Self::Above { utilisation }
        }
    }

    /// Stress over allowed stress.
    #[must_use]
    pub fn utilisation(self) -> f64 {
        match self {
            Self::NotAbove { utilisation } | Self::Above { utilisation } => utilisation,
        }
    }

    /// True for [`BendVerdict::Above`].
    #[must_use]
    pub fn is_above(self) -> bool {
        matches!(self, Self::Above { .. })
    }
}

/// Bending moments along the stone, for drawing.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Diagram {
    /// Distance from the end of the stone in mm and moment in N·m, positive stretching the
    /// underside; among them every support.
    #[serde(rename = "points_mm_nm")]
    pub points: Vec<[f64; 2]>,
}

impl Diagram {
    /// The moments under given forces.
    #[must_use]
    pub fn of(beam: &Beam<'_>, props: &[Reaction]) -> Self {
        let [first, last] = beam.strip().reach();
        let step = (last - first) / f64::from(STRETCHES);
        let even = (0..=STRETCHES).map(|k| first + step * f64::from(k));
        let mut places: Vec<f64> = even.chain(props.iter().map(|p| p.at_mm)).collect();
        places.sort_by(f64::total_cmp);
        places.dedup();
        let point = |u: f64| [u, beam.moment_at(props, u)];
        Self {
            points: places.into_iter().map(point).collect(),
        }
    }
}
