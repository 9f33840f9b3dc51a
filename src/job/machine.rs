//! The machine.

use serde::Serialize;

/// The machine.
#[derive(Clone, Debug)]
pub struct Machine {
    /// What it is.
    pub kind: MachineKind,
    /// Speed without load, turns per minute.
    pub rpm: f64,
    /// What drives it.
    pub power: Power,
    /// Built for wet use by its maker.
    pub wet_rated: bool,
    /// How the supply is protected.
    pub protected: Protection,
    /// Everything between machine and stone, mm.
    pub plate_mm: f64,
    /// Vibration.
    pub vibration: Vibration,
    /// Noise at the ear, dB(A).
    pub noise_db: f64,
    /// The same noise C-weighted, dB(C); hearing protectors are reckoned from it.
    pub noise_c_db: f64,
    /// Diameter of the seat that carries the disc's bore, mm.
    pub seat_mm: f64,
    /// The largest disc that the machine and its guard are made for, mm; nothing when not known.
    pub largest_disc_mm: Option<f64>,
}

/// What machine it is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub enum MachineKind {
    /// Hand-held grinder with a cutting disc.
    #[serde(rename = "angle grinder")]
    AngleGrinder,
    /// Hand-held masonry saw.
    #[serde(rename = "hand saw")]
    HandSaw,
}

/// What drives the machine.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Power {
    /// Mains electricity.
    Mains,
    /// A battery.
    Battery,
    /// Compressed air.
    Air,
    /// A combustion engine.
    Engine,
}

impl Power {
    /// Its case in words that differ by it.
    #[must_use]
    pub const fn case(self) -> &'static str {
        match self {
            Self::Mains => "mains",
            Self::Battery => "battery",
            Self::Air => "air",
            Self::Engine => "engine",
        }
    }
}

/// How the electric supply is protected.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub enum Protection {
    /// Residual current device, 30 mA or less.
    #[serde(rename = "rcd")]
    Rcd,
    /// Ground-fault circuit interrupter.
    #[serde(rename = "gfci")]
    Gfci,
    /// 110 V with the centre of the transformer earthed.
    #[serde(rename = "110v-cte")]
    CentreTapped110V,
    /// Battery: nothing to protect.
    #[serde(rename = "battery")]
    Battery,
    /// None known.
    #[serde(rename = "none")]
    None,
}

/// Hand-arm vibration of the machine.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Vibration {
    /// Magnitude, m/s².
    pub a: f64,
    /// Uncertainty added to it, m/s².
    pub k: f64,
}
