//! What the job is done with: machine, discs, jigs, depths, dust control, people.

use serde::Serialize;

use super::gear::Bond;
use crate::geom::Point;
use crate::units::Mass;

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

/// A cutting disc.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Disc {
    /// Name as printed.
    pub name: String,
    /// Diameter, mm.
    pub diameter: f64,
    /// Width of the cut, mm.
    pub kerf: f64,
    /// The wider of flange and gear head, mm.
    pub obstruction: f64,
    /// Highest speed marked on the disc, turns per minute.
    pub max_rpm: f64,
    /// Diameter of the hole in its middle, mm.
    pub bore: f64,
    /// What holds it together.
    pub bond: Bond,
    /// What it is kept for.
    #[serde(rename = "for")]
    pub usage: DiscUse,
}

/// A diamond hole saw.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct CoreBit {
    /// Outer diameter: that of the hole, mm.
    pub diameter: f64,
}

/// What a disc is kept for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum DiscUse {
    /// Every cut.
    All,
    /// Straight cuts only.
    Straights,
    /// Curves only.
    Curves,
}

/// The straight guide.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Guide {
    /// Length, mm.
    pub length_mm: f64,
    /// From the guide's edge to the disc's near face, by test cut, mm.
    pub offset_mm: f64,
    /// Overlap of two set-ups of a short guide, mm.
    pub overlap_mm: f64,
}

/// The circle jig.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CircleJig {
    /// From the jig's arm mark to the disc's near face, mm.
    pub offset_mm: f64,
    /// Shortest and longest arm, mm.
    pub reach_mm: (f64, f64),
}

/// Depths and rates.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Passes {
    /// Depth of the scoring pass, mm.
    pub score_mm: f64,
    /// Deepest step of a run, mm.
    pub step_mm: f64,
    /// Deepest step of a plunge, mm.
    pub plunge_step_mm: f64,
    /// How far the disc goes through the stone, mm.
    pub through_mm: f64,
    /// Highest ridge left between plunges, mm.
    pub cusp_mm: f64,
    /// Sawn face per minute, cm².
    pub rate_cm2_per_min: f64,
    /// True when the rate is a guess and not the practice cut's own figure.
    pub rate_is_guess: bool,
    /// Length sawn from the far side first, mm.
    pub far_end_mm: f64,
    /// How many times longer a curve takes than a straight cut of the same face.
    pub curve_factor: f64,
    /// Setting-up time for each cut, minutes.
    pub set_up_min: f64,
}

/// Dust control.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Dust {
    /// Where the cutting is done.
    pub place: Place,
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
}

/// Where the cutting is done.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Place {
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
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Respirator {
    /// None, or not said.
    None,
    /// A paper or cloth mask without a class: no respirator at all.
    Nuisance,
    /// Filtering half mask FFP2.
    Ffp2,
    /// Filtering half mask FFP3.
    Ffp3,
    /// Filtering facepiece N95.
    N95,
    /// Filtering facepiece or half mask with P100.
    P100,
    /// Half mask with P3 filters.
    HalfMaskP3,
    /// Full face mask with P3 or P100 filters.
    FullFace,
    /// Powered, hood or helmet, class mark not read.
    PoweredHood,
    /// Powered, hood or helmet, marked TH1.
    Th1,
    /// Powered, hood or helmet, marked TH2.
    Th2,
    /// Powered, hood or helmet, marked TH3.
    Th3,
    /// Powered, tight half or full mask, neither mark nor kind said.
    PoweredMask,
    /// Powered, tight mask, marked TM1.
    Tm1,
    /// Powered, tight mask, marked TM2.
    Tm2,
    /// Powered, tight mask, marked TM3.
    Tm3,
    /// Powered, tight half mask.
    PoweredHalfMask,
    /// Powered, tight full face mask.
    PoweredFullFace,
}

/// Lifting.
#[derive(Clone, Debug)]
pub struct Lift {
    /// How many people.
    pub people: usize,
    /// What each can lift; one entry per person.
    pub each: Vec<Mass>,
    /// True when `each` is the region's guideline and not the user's figure.
    pub each_is_guideline: bool,
    /// Where they stand, in the top's frame; empty: to be proposed.
    pub stand: Vec<Point>,
    /// Height of the hands when the stone is lifted off the trestles, mm.
    pub hands_mm: f64,
    /// How far it is carried without a rest, mm.
    pub carry_mm: f64,
    /// Where two trestles stand while the slab is cut, mm from the end of the slab along its length;
    /// empty: to be proposed.
    pub trestles: Vec<f64>,
    /// What helps.
    pub aid: Aid,
}

/// A lifting aid.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Aid {
    /// Hands only.
    None,
    /// Trolley that carries the stone on edge.
    Trolley,
    /// Vacuum lifter.
    #[serde(rename = "vacuum lifter")]
    VacuumLifter,
    /// Gantry or hoist.
    Gantry,
}
