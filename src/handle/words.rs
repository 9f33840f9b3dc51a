//! Lengths and masses in the words of a finding.

use crate::units::{LengthUnit, MM_PER_INCH, Mass};

/// Tenths of an inch to a millimetre: what a rounded inch figure is rounded to.
const TENTHS_PER_MM: f64 = 10.0 / MM_PER_INCH;

/// How lengths and masses are worded.
#[derive(Clone, Copy, Debug)]
pub(super) struct Words(pub(super) LengthUnit);

impl Words {
    /// A mass, pounds first in a job in inches.
    pub(super) fn mass(self, mass: Mass) -> String {
        match self.0 {
            LengthUnit::Millimetre => format!("{:.1} kg", mass.kg()),
            LengthUnit::Inch => format!("{:.0} lb ({:.1} kg)", mass.pounds(), mass.kg()),
        }
    }

    /// A length to the nearest millimetre.
    pub(super) fn length(self, mm: f64) -> String {
        match self.0 {
            LengthUnit::Millimetre => format!("{mm:.0} mm"),
            LengthUnit::Inch => format!("{:.1} in ({mm:.0} mm)", mm / MM_PER_INCH),
        }
    }

    /// A mass that must be held or marked: never rounded down.
    pub(super) fn mass_at_least(self, mass: Mass) -> String {
        self.mass(Self::tenth(mass, f64::ceil))
    }

    /// A mass that is already too much: never rounded up.
    pub(super) fn mass_at_most(self, mass: Mass) -> String {
        self.mass(Self::tenth(mass, f64::floor))
    }

    fn tenth(mass: Mass, round: impl Fn(f64) -> f64) -> Mass {
        Mass::from_kg(whole(mass.kg() * 10.0, round) / 10.0)
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
