//! Numbers as they are printed: rounded to what a hand can use, always with a unit.

use crate::units::{LengthUnit, MM_PER_INCH, Mass, MassRange};

/// How a job's numbers are printed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Figures {
    /// The unit printed first.
    pub units: LengthUnit,
}

/// Smallest division of an inch tape, as the denominator.
const INCH_DIVISION: u32 = 32;

impl Figures {
    /// A length set out with a tape: to half a millimetre, or to 1/32 inch.
    #[must_use]
    pub fn tape(self, mm: f64) -> String {
        format!("{} {}", self.tape_bare(mm), self.unit())
    }

    /// As [`Self::tape`] without the unit, for a column whose head names it.
    #[must_use]
    pub fn tape_bare(self, mm: f64) -> String {
        match self.units {
            LengthUnit::Millimetre => format!("{:.1}", tidy((mm * 2.0).round() / 2.0)),
            LengthUnit::Inch => inches(mm),
        }
    }

    /// A depth, a width or a small amount: to a tenth of a millimetre, with inches beside it when
    /// the job is in inches.
    #[must_use]
    pub fn small(self, mm: f64) -> String {
        match self.units {
            LengthUnit::Millimetre => format!("{:.1} mm", tidy(mm)),
            // Less than the tape's smallest division has no inch figure worth printing.
            LengthUnit::Inch if mm.abs() * 32.0 < MM_PER_INCH => format!("{:.1} mm", tidy(mm)),
            LengthUnit::Inch => format!("{:.1} mm ({} in)", tidy(mm), inches(mm)),
        }
    }

    /// A size of the job: to the millimetre, with both units when the job is in inches.
    #[must_use]
    pub fn size(self, mm: f64) -> String {
        match self.units {
            LengthUnit::Millimetre => format!("{:.0} mm", tidy(mm)),
            LengthUnit::Inch => format!("{} in ({:.0} mm)", inches(mm), tidy(mm)),
        }
    }

    /// A size without its second unit or any unit, for labels in drawings.
    #[must_use]
    pub fn size_bare(self, mm: f64) -> String {
        match self.units {
            LengthUnit::Millimetre => format!("{:.0}", tidy(mm)),
            LengthUnit::Inch => inches(mm),
        }
    }

    /// A size with its first unit only, for dimensions in drawings.
    #[must_use]
    pub fn size_label(self, mm: f64) -> String {
        format!("{} {}", self.size_bare(mm), self.unit())
    }

    /// Name of the length unit.
    #[must_use]
    pub const fn unit(self) -> &'static str {
        match self.units {
            LengthUnit::Millimetre => "mm",
            LengthUnit::Inch => "in",
        }
    }

    /// A mass: whole kilograms from 10 kg, else to a tenth; pounds first when the job is in inches.
    #[must_use]
    pub fn mass(self, mass: Mass) -> String {
        let kg = format!("{} kg", weight(mass.kg()));
        match self.units {
            LengthUnit::Millimetre => kg,
            LengthUnit::Inch => format!("{} lb ({kg})", weight(mass.pounds())),
        }
    }

    /// A mass range as `55–58 kg`.
    #[must_use]
    pub fn mass_range(self, range: &MassRange) -> String {
        let kg = between(range.low.kg(), range.high.kg());
        match self.units {
            LengthUnit::Millimetre => format!("{kg} kg"),
            LengthUnit::Inch => {
                let pounds = between(range.low.pounds(), range.high.pounds());
                format!("{pounds} lb ({kg} kg)")
            }
        }
    }
}

fn between(low: f64, high: f64) -> String {
    let (low, high) = (weight(low), weight(high));
    if low == high {
        low
    } else {
        format!("{low}–{high}")
    }
}

fn weight(value: f64) -> String {
    if value > 0.0 && value < 0.05 {
        "under 0.1".to_owned()
    } else if value.abs() < 9.95 {
        format!("{:.1}", tidy(value))
    } else {
        format!("{value:.0}")
    }
}

/// No minus sign in front of what rounds to nothing.
fn tidy(value: f64) -> f64 {
    if value.abs() < 0.05 { 0.0 } else { value }
}

/// Inches and a fraction in lowest terms: `25 1/4`.
fn inches(mm: f64) -> String {
    let parts = (mm.abs() / MM_PER_INCH * f64::from(INCH_DIVISION)).round();
    // A slab is far shorter than 2³² thirty-seconds of an inch.
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
    let parts = parts.min(4e9) as u32;
    let (whole, mut over, mut under) =
        (parts / INCH_DIVISION, parts % INCH_DIVISION, INCH_DIVISION);
    while over != 0 && over % 2 == 0 {
        over /= 2;
        under /= 2;
    }
    let sign = if mm < 0.0 && parts > 0 { "−" } else { "" };
    match (whole, over) {
        (0, 0) => "0".into(),
        (_, 0) => format!("{sign}{whole}"),
        (0, _) => format!("{sign}{over}/{under}"),
        _ => format!("{sign}{whole} {over}/{under}"),
    }
}

/// An area in square metres, to the thousandth; a small one in square centimetres.
#[must_use]
pub fn area(mm2: f64) -> String {
    if mm2.abs() < 1e4 && mm2 != 0.0 {
        format!("{:.1} cm²", mm2 / 100.0)
    } else {
        format!("{:.3} m²", mm2 / 1e6)
    }
}

/// A sawn face in square centimetres.
#[must_use]
pub fn face(mm2: f64) -> String {
    format!("{:.0} cm²", mm2 / 100.0)
}

/// A span of time: minutes, and hours from two hours on.
#[must_use]
pub fn time(minutes: f64) -> String {
    // The sum of no cuts at all is minus nothing.
    let minutes = minutes.abs();
    if minutes < 120.0 {
        format!("{:.0} min", minutes.ceil())
    } else {
        let minutes = minutes.ceil();
        let hours = (minutes / 60.0).floor();
        format!("{hours:.0} h {:02.0} min", minutes - hours * 60.0)
    }
}

/// An angle given in radians, to a tenth of a degree.
#[must_use]
pub fn angle(radians: f64) -> String {
    let degrees = tidy(radians.to_degrees());
    let sign = if degrees < 0.0 { "−" } else { "" };
    format!("{sign}{:.1}°", degrees.abs())
}

#[cfg(test)]
mod tests {
    use super::*;

    const MM: Figures = Figures {
        units: LengthUnit::Millimetre,
    };
    const INCH: Figures = Figures {
        units: LengthUnit::Inch,
    };

    #[test]
    fn tape_lengths_fall_on_the_tapes_divisions() {
        assert_eq!(MM.tape(487.3), "487.5 mm");
        assert_eq!(INCH.tape(641.35), "25 1/4 in");
        assert_eq!(INCH.tape(0.2), "0 in");
        assert_eq!(INCH.tape(25.4), "1 in");
    }

    #[test]
    fn masses_carry_both_units_in_an_inch_job() {
        // 200 kg = 440.92 lb by the exact definition of the pound.
        assert_eq!(INCH.mass(Mass::from_kg(200.0)), "441 lb (200 kg)");
        assert_eq!(MM.mass(Mass::from_kg(1.72)), "1.7 kg");
    }

    #[test]
    fn time_is_never_rounded_down() {
        assert_eq!(time(71.2), "72 min");
        assert_eq!(time(120.0), "2 h 00 min");
        assert_eq!(time(179.5), "3 h 00 min");
    }
}
