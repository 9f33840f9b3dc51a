//! How lengths, masses and stresses are worded: both systems of units, the job's own first.

use crate::diag::Finding;
use crate::units::{LengthUnit, MM_PER_INCH, Mass};

/// The job's unit of length.
#[derive(Clone, Copy)]
pub(super) struct Words(pub(super) LengthUnit);

impl Words {
    pub(super) fn mass(self, mass: Mass) -> String {
        let (kg, pounds) = (mass.kg(), mass.pounds());
        match self.0 {
            LengthUnit::Millimetre => format!("{kg:.1} kg ({pounds:.0} lb)"),
            LengthUnit::Inch => format!("{pounds:.0} lb ({kg:.1} kg)"),
        }
    }

    pub(super) fn length(self, mm: f64) -> String {
        let inches = mm / MM_PER_INCH;
        match self.0 {
            LengthUnit::Millimetre => format!("{mm:.0} mm ({inches:.1} in)"),
            LengthUnit::Inch => format!("{inches:.1} in ({mm:.0} mm)"),
        }
    }

    /// A way to go, in metres and feet.
    pub(super) fn way(self, mm: f64) -> String {
        let (metres, feet) = (mm / 1000.0, mm / MM_PER_INCH / 12.0);
        match self.0 {
            LengthUnit::Millimetre => format!("{metres:.0} m ({feet:.0} ft)"),
            LengthUnit::Inch => format!("{feet:.0} ft ({metres:.0} m)"),
        }
    }

    /// Several lengths: "at 412 mm (16.2 in) and 1655 mm (65.2 in)".
    pub(super) fn lengths(self, mm: &[f64]) -> String {
        let all: Vec<String> = mm.iter().map(|l| self.length(*l)).collect();
        all.join(" and ")
    }
}

pub(super) fn finding(id: &'static str, title: String, detail: String, source: &str) -> Finding {
    Finding {
        id,
        title,
        detail,
        source: source.to_owned(),
    }
}
