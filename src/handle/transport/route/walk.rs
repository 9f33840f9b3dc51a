//! A stone on its way in, place by place.

use serde::Serialize;

use super::attempt::{Attempt, Carried};
use super::corner::Corner;
use super::remedy::Remedy;
use crate::job::Obstacle;

/// One stone at one place.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Passage {
    /// The place.
    pub at: Obstacle,
    /// On edge, upright, flat.
    pub attempts: [Attempt; 3],
    /// The best pose that goes through; nothing when none does.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub best: Option<Carried>,
    /// What must give so that a better pose goes through; empty when it goes through on edge.
    pub remedies: Vec<Remedy>,
    /// The plank on edge in this corner; nothing at a door.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub plank: Option<Corner>,
}

impl Passage {
    /// The best attempt that goes through.
    #[must_use]
    pub fn best_attempt(&self) -> Option<&Attempt> {
        self.attempts.iter().find(|a| Some(a.carried) == self.best)
    }

    /// The attempts in better poses than this one; none of them goes through when this is the best.
    #[must_use]
    pub fn better_than(&self, carried: Carried) -> Vec<&Attempt> {
        let before = self.attempts.iter().take_while(|a| a.carried != carried);
        before.collect()
    }

    /// The attempt on edge.
    #[must_use]
    pub const fn on_edge(&self) -> &Attempt {
        let [on_edge, _, _] = &self.attempts;
        on_edge
    }

    /// The attempt upright.
    #[must_use]
    pub const fn upright(&self) -> &Attempt {
        let [_, upright, _] = &self.attempts;
        upright
    }
}

/// How far one stone gets.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum GetsIn {
    /// On edge all the way.
    OnEdge,
    /// On edge, upright at some places.
    Upright,
    /// Only by lying flat at some places.
    Flat,
    /// Nothing goes through at some places.
    No,
}

/// One stone on its way in.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Walk {
    /// Name of the stone.
    pub name: String,
    /// Length of the box around it, mm.
    pub length_mm: f64,
    /// Width of the box around it, mm.
    pub width_mm: f64,
    /// Thickest reading, mm.
    pub thickness_mm: f64,
    /// Height that it needs while it is stood up on its short side, mm: its diagonal.
    pub stand_up_mm: f64,
    /// Each place, in the order of the job file.
    pub passages: Vec<Passage>,
    /// How far it gets.
    pub gets_in: GetsIn,
}

/// The way in for the slab as delivered and for the finished top.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct WayIn {
    /// Room beside the stone's faces, both sides together, mm.
    pub room_mm: f64,
    /// Height of the stone's lower edge over the floor, mm.
    pub raise_mm: f64,
    /// Width of the trolley over its wheels, mm; nothing without a trolley.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub trolley_mm: Option<f64>,
    /// Less to spare than this is tight, mm; never less than two tape errors.
    pub enough_mm: f64,
    /// The slab as delivered.
    pub slab: Walk,
    /// The finished top.
    pub top: Walk,
}
