//! The ears, and what else fills the day.

use serde::Serialize;

use super::machine::Vibration;

/// The hearing protector at hand, by the figure printed on it.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Protector {
    /// Not said.
    Unknown,
    /// Single number rating, dB (EN 352).
    #[serde(rename = "snr-db")]
    Snr(f64),
    /// Reductions in high, middle and low noise, dB (EN 352).
    Hml {
        /// In high noise.
        #[serde(rename = "h_db")]
        h: f64,
        /// In middle noise.
        #[serde(rename = "m_db")]
        m: f64,
        /// In low noise.
        #[serde(rename = "l_db")]
        l: f64,
    },
    /// Noise reduction rating, dB (American).
    Nrr {
        /// The rating.
        #[serde(rename = "nrr_db")]
        nrr: f64,
        /// What it is, for the derating by kind.
        kind: EarKind,
    },
}

/// Kind of hearing protector.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum EarKind {
    /// Earmuffs.
    Muffs,
    /// Plugs that are rolled or shaped before they go in.
    FormablePlugs,
    /// Any other plugs, or not said.
    OtherPlugs,
}

/// Other work of the same day.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct ExposurePeriod {
    /// What it is.
    pub what: String,
    /// How long, minutes.
    pub minutes: f64,
    /// Its vibration, m/s².
    pub vibration: Vibration,
    /// Its noise at the ear, dB(A).
    pub noise_db: f64,
    /// Whether it raises stone dust.
    pub dusty: Dusty,
}

/// Whether other work raises stone dust.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Dusty {
    /// It does: its hours count with the cutting.
    Dusty,
    /// It does not.
    Clean,
}
