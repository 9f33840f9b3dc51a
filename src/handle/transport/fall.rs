//! A stone standing on edge: what knocks it over, what holds it, and where it falls.

use serde::Serialize;

use crate::diag::{Finding, Harm, Phrase};
use crate::handle::bending::axes::Axes;
use crate::handle::lifting::lift::tilts;
use crate::handle::loads::Load;
use crate::tables::documents as doc;
use crate::units::{GRAVITY, Mass};
use crate::words::{Unit, Value};

/// Leans off the upright that the tie is worked out for, degrees (judgement: from hardly seen to a
/// rack's usual lean and beyond).
const LEANS_DEG: [f64; 3] = [5.0, 10.0, 15.0];

pub(crate) const FALLS: Phrase = Phrase::of_job("crush-and-falls").harm(Harm::KillsNow);

/// A stone standing on its long side on a level floor.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Fall {
    /// Name of the stone.
    pub name: String,
    /// Nobody stands within this of it, on either side, mm: its height on edge, which is how far
    /// it reaches when it falls.
    pub shadow_mm: f64,
    /// Thickness it stands on, mm: the thinnest reading.
    pub thickness_mm: f64,
    /// It falls by itself when it leans more than this off the upright, degrees.
    pub tips_at_deg: f64,
    /// A push on its upper edge, as a mass, that is enough to tip it from the upright.
    #[serde(rename = "push_tips_kg")]
    pub push_tips: Mass,
    /// The pull that holds it when it leans.
    pub ties: Vec<Lashing>,
    /// Mass it is worked out with: the high one.
    #[serde(rename = "mass_kg")]
    pub mass: Mass,
    /// Its weight, kN.
    pub weight_kn: f64,
}

/// What holds a leaning stone by its upper edge.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Lashing {
    /// Lean off the upright, degrees.
    pub lean_deg: f64,
    /// Level pull on the upper edge, as a mass; nothing while it still stands by itself.
    #[serde(rename = "pull_kg")]
    pub pull: Mass,
}

impl Fall {
    /// A stone on its lighter side up, on the thinnest thickness of its slab.
    ///
    /// By moments about the arris it turns over: with the balance point `c` above a face `t` thick
    /// and the upper edge at `b`, it tips by itself at `atan((t/2)/c)`; leaning at `φ` it takes
    /// `W·(c·sin φ − (t/2)·cos φ)/(b·cos φ)` at the upper edge to hold it. The floor is taken as
    /// hard and rough enough that its foot does not slip.
    #[must_use]
    pub fn of(load: &Load, thickness_mm: f64) -> Self {
        let axes = Axes::of(&load.region);
        // The higher balance point of the two is the less steady one.
        let centre_mm = tilts(load, &axes)
            .iter()
            .map(|t| t.balance_height_mm)
            .fold(0.0, f64::max);
        let (height_mm, half) = (axes.width_mm(), thickness_mm / 2.0);
        let mass = load.mass.high.kg();
        let pull = |lean_deg: f64| {
            let arm = centre_mm * lean_deg.to_radians().tan() - half;
            Mass::from_kg(mass * arm.max(0.0) / height_mm)
        };
        Self {
            name: load.name.clone(),
            shadow_mm: height_mm,
            thickness_mm,
            tips_at_deg: half.atan2(centre_mm).to_degrees(),
            push_tips: Mass::from_kg(mass * half / height_mm),
            ties: LEANS_DEG
                .map(|lean_deg| Lashing {
                    lean_deg,
                    pull: pull(lean_deg),
                })
                .to_vec(),
            mass: load.mass.high,
            weight_kn: mass * GRAVITY / 1000.0,
        }
    }

    /// What must be read before it is stood up.
    pub(crate) fn finding(&self) -> Finding {
        let list =
            |each: &dyn Fn(&Lashing) -> Value| Value::List(self.ties.iter().map(each).collect());
        let values = [
            ("stone", Value::term(self.name.clone())),
            ("mass", Value::mass(self.mass).up()),
            (
                "weight",
                Value::of(self.weight_kn, Unit::Kilonewton).decimals(2),
            ),
            ("thickness", Value::fine(self.thickness_mm)),
            ("push", Value::mass(self.push_tips).down()),
            (
                "tips",
                Value::of(self.tips_at_deg, Unit::Degree).decimals(1),
            ),
            ("shadow", Value::size(self.shadow_mm)),
            (
                "leans",
                list(&|t| Value::of(t.lean_deg, Unit::Degree).decimals(0)),
            ),
            ("pulls", list(&|t| Value::mass(t.pull).up())),
        ];
        let source = format!("statics of a standing plate; {}", doc::FALL_ZONE.cite());
        Finding::of(&FALLS, values, source)
    }
}
