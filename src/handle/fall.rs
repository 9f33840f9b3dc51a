//! A stone standing on edge: what knocks it over, what holds it, and where it falls.

use serde::Serialize;

use super::Load;
use super::axes::Axes;
use super::lift::tilts;
use super::words::Words;
use crate::diag::{Finding, Phrase, number};
use crate::tables::{Source, Sure};
use crate::units::{GRAVITY, Mass};

/// Leans off the upright that the tie is worked out for, degrees (judgement: from hardly seen to a
/// rack's usual lean and beyond).
const LEANS_DEG: [f64; 3] = [5.0, 10.0, 15.0];

/// Where the fall zone and the restraint of standing slabs come from.
pub const FALL_ZONE: Source = Source {
    what: "slabs on edge: nobody in the zone where one can fall, always restrained, foot kept from slipping",
    document: "HSE safety alert OPSTD MS 3-2010, large sheet stone slabs",
    clause: "",
    year: 2010,
    sure: Sure::Read,
};

pub(crate) const FALLS: Phrase = Phrase {
    id: "crush-and-falls",
    title: "{stone}: it crushes what it falls on",
    detail: "{mass} presses with {weight} kN. On edge it stands on {thickness} mm: {push} of push on its \
             upper edge tips it, and leaning more than {tips}° it falls by itself, over a strip {shadow} \
             wide on either side: nobody stands there, and nobody tries to catch it. Tie it to something \
             that holds before anybody lets go, one stone at a time; what it leans on must keep it from \
             falling forward and its foot from slipping out. Leaning {leans}°, its upper edge pulls on \
             the tie with {pulls}, in this order; the tie and what it is fixed to must hold several times \
             that. Set it down on two battens, never on the floor: fingers, toes and children out of the gap.",
};

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
    pub push_tips: Mass,
    /// The pull that holds it when it leans.
    pub ties: Vec<Tie>,
    /// Mass it is worked out with: the high one.
    pub mass: Mass,
    /// Its weight, kN.
    pub weight_kn: f64,
}

/// What holds a leaning stone by its upper edge.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Tie {
    /// Lean off the upright, degrees.
    pub lean_deg: f64,
    /// Level pull on the upper edge, as a mass; nothing while it still stands by itself.
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
                .map(|lean_deg| Tie {
                    lean_deg,
                    pull: pull(lean_deg),
                })
                .to_vec(),
            mass: load.mass.high,
            weight_kn: mass * GRAVITY / 1000.0,
        }
    }

    /// What must be read before it is stood up.
    pub(super) fn finding(&self, words: Words) -> Finding {
        let list = |each: &dyn Fn(&Tie) -> String| {
            let all: Vec<String> = self.ties.iter().map(each).collect();
            all.join(", ")
        };
        let values = [
            ("stone", self.name.clone()),
            ("mass", words.mass(self.mass)),
            ("weight", number(self.weight_kn, 2)),
            ("thickness", number(self.thickness_mm, 1)),
            ("push", words.mass_at_most(self.push_tips)),
            ("tips", number(self.tips_at_deg, 1)),
            ("shadow", words.at_least(self.shadow_mm)),
            ("leans", list(&|t| number(t.lean_deg, 0))),
            ("pulls", list(&|t| words.mass_at_least(t.pull))),
        ];
        let source = format!("statics of a standing plate; {}", FALL_ZONE.cite());
        Finding::of(&FALLS, &values, source)
    }
}
