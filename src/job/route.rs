//! The way in: doors and corners that the stone must pass.

use serde::Serialize;

/// The way from where the stone is unloaded to where the top will stand.
#[derive(Clone, Debug, PartialEq)]
pub struct Route {
    /// Doors and corners in the order they stand in the job file; none: the way is not known.
    pub obstacles: Vec<Obstacle>,
    /// What carries the stone takes so much room beside its faces, both sides together, mm.
    pub room_mm: f64,
    /// The stone's lower edge is carried so high above the floor, mm.
    pub raise_mm: f64,
    /// Less to spare than this is tight, mm.
    pub spare_mm: f64,
}

/// One place that the stone must pass.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Obstacle {
    /// Its name, in the user's words.
    pub what: String,
    /// What it is, with its clear sizes.
    pub opening: ClearSize,
}

/// The clear sizes of a place on the way, mm.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum ClearSize {
    /// A door, a gate, a straight flight of stairs.
    Door {
        /// Clear width.
        width_mm: f64,
        /// Clear height.
        height_mm: f64,
    },
    /// A right-angled corner between two corridors, or a landing between two flights.
    Corner {
        /// Clear width of the way before it.
        from_mm: f64,
        /// Clear width of the way after it.
        to_mm: f64,
        /// Clear height.
        height_mm: f64,
    },
}

impl ClearSize {
    /// Clear height, mm.
    #[must_use]
    pub const fn height_mm(self) -> f64 {
        match self {
            Self::Door { height_mm, .. } | Self::Corner { height_mm, .. } => height_mm,
        }
    }
}
