//! Bending of a stone under its own weight: lying flat on two supports, and on edge.
//!
//! The stone is a beam along its long direction with the line load its cross-sections give,
//! times a handling factor. Sound stone is assumed: across a fissure or a mend no strength holds.
//! Beside a cutout the rails are taken to bend together; their shear is not looked at.

use serde::Serialize;

use super::strip::{Node, Strip};
use crate::geom::Point;

/// Widths below this, mm, carry no stress: the very tip of a round end.
const TIP_MM: f64 = 1e-3;
/// Golden sections of the stretch that holds a peak: a few centimetres to a tenth of a micrometre. The
/// stress there is flat, so its error is far smaller.
const SECTIONS: usize = 28;

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

/// The most stressed cross-section of one way of lying.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Worst {
    /// Flat or on edge.
    pub lie: Lie,
    /// Distances of the two supports from the end of the stone, mm.
    pub supports_mm: [f64; 2],
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
pub struct Beam<'a> {
    strip: &'a Strip,
    slice: Slice,
}

impl<'a> Beam<'a> {
    /// A beam of a stone.
    #[must_use]
    pub fn new(strip: &'a Strip, slice: Slice) -> Self {
        Self { strip, slice }
    }

    /// The stone it is a beam of.
    #[must_use]
    pub fn strip(&self) -> &Strip {
        self.strip
    }

    /// The most stressed cross-section on two supports, `supports[0] < supports[1]`, mm from the
    /// end. The balance point must lie between them, or a support would have to pull.
    #[must_use]
    pub fn worst(&self, lie: Lie, supports: [f64; 2]) -> Worst {
        let sag = self.worst_of(lie, supports, Sense::Sag);
        let hog = self.worst_of(lie, supports, Sense::Hog);
        if hog.stress_mpa > sag.stress_mpa {
            hog
        } else {
            sag
        }
    }

    /// As [`Beam::worst`], of the moments of one sense only; stress 0 when there are none.
    #[must_use]
    pub fn worst_of(&self, lie: Lie, supports: [f64; 2], sense: Sense) -> Worst {
        let bent = |n: &Node| sense.sign() * self.moment(supports, n);
        let stress = |n: &Node| self.stress(lie, n, bent(n).max(0.0));
        let at_supports = supports.into_iter().flat_map(|u| {
            let spans = self.strip.spans_at(u);
            spans.filter_map(move |s| self.strip.node_in(s, u))
        });
        let nodes = self.strip.nodes().iter().copied().enumerate();
        let peak = nodes
            .map(|(i, n)| (i, n, stress(&n)))
            .reduce(|best, next| if next.2 > best.2 { next } else { best })
            .map(|(i, n, _)| self.sharpened(i, n, &stress));
        let worst = peak.into_iter().chain(at_supports).reduce(|best, next| {
            if stress(&next) > stress(&best) {
                next
            } else {
                best
            }
        });
        let moment = worst.map_or(0.0, |n| bent(&n).max(0.0));
        Worst {
            lie,
            supports_mm: supports,
            at_mm: worst.map_or(0.0, |n| n.u),
            width_mm: worst.map_or(0.0, |n| n.width),
            moment_nm: sense.sign() * moment / 1000.0,
            stress_mpa: worst.map_or(0.0, |n| stress(&n)),
        }
    }

    /// Bending moment at a node, N·mm; positive stretches the underside.
    fn moment(&self, supports: [f64; 2], node: &Node) -> f64 {
        let [s1, s2] = supports;
        let p = self.slice.weight_n_per_mm2;
        let weight = p * self.strip.area();
        let second = weight * (self.strip.middle() - s1) / (s2 - s1);
        let first = weight - second;
        let lever = |s: f64| (node.u - s).max(0.0);
        first * lever(s1) + second * lever(s2) - p * (node.u * node.area - node.moment)
    }

    /// Greatest stress of a cross-section under a moment in N·mm, `MPa`.
    fn stress(&self, lie: Lie, node: &Node, moment: f64) -> f64 {
        let (t, b) = (self.slice.thickness_mm, node.width);
        if b <= TIP_MM || (lie == Lie::OnEdge && b < t && self.is_end(node.u)) {
            return 0.0;
        }
        let modulus = match lie {
            Lie::Flat => b * t * t / 6.0,
            Lie::OnEdge => edge_modulus(&self.strip.rails_in(node.span, node.u), t),
        };
        moment.abs() / modulus
    }

    /// Within a thickness of either end of the stone. Where an end runs out into a corner there, a
    /// stone on edge is lower than it is thick: it bears on the support and is no beam.
    fn is_end(&self, u: f64) -> bool {
        u.min(self.strip.length_mm() - u) < self.slice.thickness_mm
    }

    /// The peak between the neighbours of the most stressed node, by golden section.
    fn sharpened(&self, i: usize, node: Node, stress: &dyn Fn(&Node) -> f64) -> Node {
        let nodes = self.strip.nodes();
        let same = |j: usize| nodes.get(j).filter(|n| n.span == node.span);
        let mut low = same(i.wrapping_sub(1)).map_or(node.u, |n| n.u);
        let mut high = same(i + 1).map_or(node.u, |n| n.u);
        let at = |u: f64| self.strip.node_in(node.span, u).unwrap_or(node);
        let golden = 0.5 * (5.0_f64.sqrt() - 1.0);
        let inner = |low: f64, high: f64| {
            let u = low + golden * (high - low);
            (u, stress(&at(u)))
        };
        let (mut a, mut b) = (inner(high, low), inner(low, high));
        for _ in 0..SECTIONS {
            if a.1 > b.1 {
                (high, b) = (b.0, a);
                a = inner(high, low);
            } else {
                (low, a) = (a.0, b);
                b = inner(low, high);
            }
        }
        let peak = at(f64::midpoint(low, high));
        if stress(&peak) > stress(&node) {
            peak
        } else {
            node
        }
    }
}

/// Section modulus on edge of rails that bend to the same curve, mm³; `t·b²/6` for a single one.
fn edge_modulus(rails: &[f64], thickness: f64) -> f64 {
    let deepest = rails.iter().copied().fold(0.0, f64::max);
    let cubes: f64 = rails.iter().map(|b| b.powi(3)).sum();
    thickness * cubes / (6.0 * deepest)
}

/// One way of lying, judged.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Bending {
    /// The way of lying, in words.
    pub what: &'static str,
    /// The most stressed cross-section.
    #[serde(flatten)]
    pub worst: Worst,
    /// The supports as chords across the stone, slab frame.
    pub support_lines: [[Point; 2]; 2],
    /// The chord of the most stressed cross-section, slab frame.
    pub worst_line: [Point; 2],
    /// How the stress stands to what is allowed.
    pub verdict: BendVerdict,
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
