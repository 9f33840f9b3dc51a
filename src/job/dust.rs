//! Where it is cut, what holds the dust, what is breathed through.

use serde::Serialize;

use crate::tables::respirator::MaskClass;

/// Dust control.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Dust {
    /// Where the cutting is done.
    pub place: Workplace,
    /// How the dust is held down.
    pub method: DustMethod,
    /// Airflow of the extractor, m³/h; 0 when not known.
    pub airflow_m3h: f64,
    /// Water fed to the disc while it cuts, litres a minute; 0 without water.
    pub water_l_min: f64,
    /// The respirator at hand.
    pub respirator: Respirator,
    /// The mask was fit-tested on its wearer.
    pub mask_fit_tested: bool,
    /// Other dusty, vibrating or loud work the same day, hours.
    pub hours_today: f64,
    /// Days, or people in turn, over which the sawing is spread: at least 1.
    pub days: f64,
}

impl Dust {
    /// Whether water reaches the disc: no flow is dry cutting, whatever the method is called.
    #[must_use]
    pub fn is_wet(&self) -> bool {
        self.method == DustMethod::Water && self.water_l_min > 0.0
    }
}

/// Where the cutting is done.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Workplace {
    /// In the open.
    Outdoors,
    /// Indoors or in an enclosed space.
    Indoors,
}

/// How the dust is held down.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum DustMethod {
    /// Water fed to the disc.
    Water,
    /// Shroud and extractor.
    Shroud,
    /// Nothing.
    None,
}

/// The respirator at hand.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Respirator {
    /// None, or not said.
    None,
    /// A paper or cloth mask without a class: no respirator at all.
    Nuisance,
    /// A mask of a class.
    Mask(MaskClass),
}
