//! How lengths and masses are worded in findings: both systems of units, the job's own first.

use crate::units::{LengthUnit, MM_PER_INCH, Mass};

/// Tenths of an inch to a millimetre: what a rounded inch figure is rounded to.
const TENTHS_PER_MM: f64 = 10.0 / MM_PER_INCH;

/// How lengths and masses are worded.
#[derive(Clone, Copy, Debug)]
pub(super) struct Words(pub(super) LengthUnit);

impl Words {
    /// A mass in both units, the job's own first.
    pub(super) fn mass(self, mass: Mass) -> String {
        self.told(mass.kg(), mass.pounds())
    }

    fn told(self, kg: f64, pounds: f64) -> String {
        match self.0 {
            LengthUnit::Millimetre => format!("{kg:.1} kg ({pounds:.0} lb)"),
            LengthUnit::Inch => format!("{pounds:.0} lb ({kg:.1} kg)"),
        }
    }

    /// A length in both units, the job's own first.
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

    /// A mass that must be held or marked: never rounded down.
    pub(super) fn mass_at_least(self, mass: Mass) -> String {
        self.mass_rounded(mass, f64::ceil)
    }

    /// A mass that is already too much: never rounded up.
    pub(super) fn mass_at_most(self, mass: Mass) -> String {
        self.mass_rounded(mass, f64::floor)
    }

    fn mass_rounded(self, mass: Mass, round: impl Fn(f64) -> f64) -> String {
        let kg = whole(mass.kg() * 10.0, &round) / 10.0;
        self.told(kg, whole(mass.pounds(), &round))
    }

    /// A length that must be there: never rounded down.
    pub(super) fn at_least(self, mm: f64) -> String {
        self.rounded(mm, f64::ceil)
    }

    /// A length that may be there: never rounded up.
    pub(super) fn at_most(self, mm: f64) -> String {
        self.rounded(mm, f64::floor)
    }

    fn rounded(self, mm: f64, round: impl Fn(f64) -> f64) -> String {
        let in_mm = format!("{:.0} mm", whole(mm, &round));
        match self.0 {
            LengthUnit::Millimetre => in_mm,
            LengthUnit::Inch => {
                let inches = whole(mm * TENTHS_PER_MM, &round) / 10.0;
                format!("{inches:.1} in ({in_mm})")
            }
        }
    }
}

/// Rounded up or down; what lies a rounding of the sum beside a whole number is that number.
fn whole(value: f64, round: impl Fn(f64) -> f64) -> f64 {
    let near = value.round();
    if (value - near).abs() < 1e-6 {
        near
    } else {
        round(value)
    }
}
