//! Quantities with their unit, the rounding they need, and how each system of units writes them.
//!
//! This is the one place that rounds: every figure is held exact until it is written here, and each is rounded
//! from the exact value by its own [`Unit`] and [`Rounding`], never from another figure that is rounded
//! already. What is taped goes to the marks that a tape has, 1 mm or 1/16 in. Where stone is kept on one side of it
//! ([`Rounding::DownToHalf`], [`Rounding::UpToHalf`]) it goes away from that stone: to the middle between two marks
//! (1/2 mm, 1/32 in) where that leaves less on; in inches, whose marks are farther apart and less readily
//! halved, only where the whole mark would leave more on than a reading of the tape may be wrong by.

use crate::units::{GRAVITY, KG_PER_POUND, LengthUnit, MM_PER_INCH, Mass};

/// The system of units that a reader measures in.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum System {
    /// Millimetres, kilograms, megapascals.
    #[default]
    Metric,
    /// Inches and feet, pounds, pounds per square inch.
    Inch,
}

impl From<LengthUnit> for System {
    fn from(unit: LengthUnit) -> Self {
        match unit {
            LengthUnit::Millimetre => Self::Metric,
            LengthUnit::Inch => Self::Inch,
        }
    }
}

/// Which way a figure is rounded.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Rounding {
    /// To the nearest.
    #[default]
    Nearest,
    /// Never above the value: what is permitted or at hand.
    Down,
    /// Never below the value: what is required or used up.
    Up,
    /// Never above the value, to half of the step that is usual where the whole step leaves too much on: a
    /// mark beyond which stone is kept.
    DownToHalf,
    /// Never below the value, likewise: a mark before which stone is kept.
    UpToHalf,
}

impl Rounding {
    /// True for those that go to half of the usual step.
    const fn halves(self) -> bool {
        matches!(self, Self::DownToHalf | Self::UpToHalf)
    }
}

/// What is measured, and in which unit the value is held.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Unit {
    /// A size, held in mm: whole millimetres, or the nearest 1/8 in.
    Size,
    /// A distance to be taped or a depth to be set, held in mm: whole millimetres, or the nearest 1/16 in.
    Tape,
    /// A core bit, across, held in mm: tenths where it has them, or the nearest 1/16 in, as bits are sold.
    Bit,
    /// A depth, a width of a kerf, a small amount, held in mm: tenths, or hundredths of an inch.
    Fine,
    /// A way to go, held in mm: metres or feet.
    Way,
    /// Held in mm²: square metres (square centimetres below a tenth), or square feet and inches.
    Area,
    /// Held in kg: whole kilograms from 10 kg and tenths below, or pounds alike.
    Mass,
    /// Held in grams: grams or ounces.
    Gram,
    /// Held in kN: kilonewtons or pounds-force.
    Kilonewton,
    /// Held in `MPa`: megapascals or pounds per square inch.
    Megapascal,
    /// Held in litres: litres or US gallons.
    Litre,
    /// Held in litres a minute: the same or US gallons a minute.
    LitrePerMinute,
    /// Held in m³/h: the same or cubic feet a minute.
    Airflow,
    /// Held in cm² a minute: the same or square inches a minute.
    SawingRate,
    /// Held in kg/m³: the same or pounds per cubic foot.
    Density,
    /// Held in degrees Celsius: the same or degrees Fahrenheit.
    Celsius,
    /// Minutes.
    Minute,
    /// Hours.
    Hour,
    /// Per cent.
    Percent,
    /// Degrees of an angle.
    Degree,
    /// Metres a second (discs are marked so everywhere).
    MetrePerSecond,
    /// Vibration, m/s².
    Vibration,
    /// A-weighted sound, dB(A).
    Decibel,
    /// C-weighted peak of sound, dB(C).
    PeakDecibel,
    /// Revolutions a minute.
    Rpm,
    /// Milligrams in a cubic metre of air.
    MilligramPerCubicMetre,
    /// Milliamperes.
    Milliampere,
    /// Volts.
    Volt,
    /// A plain number without a unit.
    Number,
}

/// A quantity, unrounded, with what is needed to write it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Quantity {
    /// The value in the unit that [`Unit`] names.
    pub value: f64,
    /// What it is.
    pub unit: Unit,
    /// Which way it is rounded.
    pub rounding: Rounding,
    /// Decimals in place of those usual for the unit.
    pub decimals: Option<u8>,
}

/// What an inch tape's whole mark may leave on beside kept stone, mm (judgement: what one reading of a tape may be
/// wrong by when nothing is said of it, `slab.tape`).
const LEAVES_MM: f64 = 1.0;
/// Litres in a US gallon (231 cubic inches exactly).
const LITRES_PER_GALLON: f64 = 3.785_411_784;
/// Grams in an ounce (a sixteenth of a pound).
const GRAMS_PER_OUNCE: f64 = KG_PER_POUND * 1000.0 / 16.0;
/// Pounds per square inch in a megapascal (the pound-force at standard gravity).
const PSI_PER_MEGAPASCAL: f64 = MM_PER_INCH * MM_PER_INCH / (KG_PER_POUND * GRAVITY);
/// Pounds-force in a kilonewton.
const POUNDS_FORCE_PER_KILONEWTON: f64 = 1000.0 / (KG_PER_POUND * GRAVITY);
/// Cubic feet a minute in a cubic metre an hour.
const CFM_PER_CUBIC_METRE_AN_HOUR: f64 = 1e9 / (MM_PER_FOOT * MM_PER_FOOT * MM_PER_FOOT) / 60.0;
const MM_PER_FOOT: f64 = MM_PER_INCH * 12.0;

/// How a figure stands on paper: the figure in the printed unit, its resolution and the unit's sign.
struct Printed {
    figure: f64,
    step: Step,
    sign: &'static str,
}

/// The resolution of a printed figure.
#[derive(Clone, Copy)]
enum Step {
    /// A count of decimals.
    Decimals(u8),
    /// Fractions of an inch with this denominator.
    Fraction(u32),
}

impl Quantity {
    /// A quantity rounded to the nearest, with the decimals usual for its unit.
    #[must_use]
    pub const fn new(value: f64, unit: Unit) -> Self {
        Self {
            value,
            unit,
            rounding: Rounding::Nearest,
            decimals: None,
        }
    }

    /// The figure without its unit, in plain English notation: a decimal point and no groups.
    ///
    /// ```
    /// use kerfwright::words::{Quantity, System, Unit};
    /// let mass = Quantity::new(133.24, Unit::Mass);
    /// assert_eq!(mass.figure(System::Metric), "133");
    /// assert_eq!(Quantity::new(1320.0, Unit::Tape).figure(System::Inch), "51\u{a0}15/16");
    /// ```
    #[must_use]
    pub fn figure(&self, system: System) -> String {
        let Printed { figure, step, .. } = self.printed(system);
        match self.decimals.map_or(step, Step::Decimals) {
            Step::Decimals(n) => decimal(figure, n, self.rounding),
            Step::Fraction(parts)
                if self.rounding.halves() && leaves_much(figure, parts, self.rounding) =>
            {
                fraction(figure, 2 * parts, self.rounding)
            }
            Step::Fraction(parts) => fraction(figure, parts, self.rounding),
        }
    }

    /// The sign of the unit it is printed in, empty for a plain number.
    #[must_use]
    pub fn sign(&self, system: System) -> &'static str {
        self.printed(system).sign
    }

    /// The figure in the printed unit before rounding.
    #[must_use]
    pub fn converted(&self, system: System) -> f64 {
        self.printed(system).figure
    }

    fn printed(&self, system: System) -> Printed {
        match system {
            System::Metric => self.metric(),
            System::Inch => self.inch().unwrap_or_else(|| self.metric()),
        }
    }

    fn metric(&self) -> Printed {
        let v = self.value;
        let (figure, decimals, sign) = match self.unit {
            Unit::Size | Unit::Tape => (v, 0, "mm"),
            Unit::Bit => (v, u8::from((v - v.round()).abs() > 0.05), "mm"),
            Unit::Fine => (v, 1, "mm"),
            Unit::Way => (v / 1000.0, u8::from(v < 10_000.0), "m"),
            // 1e5 mm² is a tenth of a square metre.
            Unit::Area if v.abs() < 1e5 => (v / 100.0, 0, "cm²"),
            Unit::Area => (v / 1e6, 2, "m²"),
            Unit::Mass => (v, tenths_below_ten(v), "kg"),
            Unit::Gram => (v, 0, "g"),
            Unit::Kilonewton => (v, 1, "kN"),
            Unit::Megapascal => (v, 2, "MPa"),
            Unit::Litre => (v, tenths_below_ten(v), "l"),
            Unit::LitrePerMinute => (v, 1, "l/min"),
            Unit::Airflow => (v, 0, "m³/h"),
            Unit::SawingRate => (v, 0, "cm²/min"),
            Unit::Density => (v, 0, "kg/m³"),
            Unit::Celsius => (v, 0, "°C"),
            Unit::Minute => (v, 0, "min"),
            Unit::Hour => (v, 1, "h"),
            Unit::Percent => (v, 0, "%"),
            Unit::Degree => (v, 1, "°"),
            Unit::MetrePerSecond => (v, 0, "m/s"),
            Unit::Vibration => (v, 1, "m/s²"),
            Unit::Decibel => (v, 0, "dB(A)"),
            Unit::PeakDecibel => (v, 0, "dB(C)"),
            Unit::Rpm => (v, 0, "rpm"),
            Unit::MilligramPerCubicMetre => (v, 3, "mg/m³"),
            Unit::Milliampere => (v, 0, "mA"),
            Unit::Volt => (v, 0, "V"),
            Unit::Number => (v, 0, ""),
        };
        Printed {
            figure,
            step: Step::Decimals(decimals),
            sign,
        }
    }

    /// How a reader with an inch tape has it, when that differs.
    fn inch(&self) -> Option<Printed> {
        let v = self.value;
        let inches = v / MM_PER_INCH;
        let tenths = |x: f64| Step::Decimals(tenths_below_ten(x));
        let (figure, step, sign) = match self.unit {
            Unit::Size => (inches, Step::Fraction(8), "in"),
            Unit::Tape | Unit::Bit => (inches, Step::Fraction(16), "in"),
            // A tenth of a millimetre is not nothing.
            Unit::Fine if (f64::MIN_POSITIVE..0.005).contains(&inches.abs()) => {
                (inches, Step::Decimals(3), "in")
            }
            Unit::Fine => (inches, Step::Decimals(2), "in"),
            Unit::Way => (v / MM_PER_FOOT, Step::Decimals(0), "ft"),
            Unit::Area if v.abs() < 1e5 => {
                (v / (MM_PER_INCH * MM_PER_INCH), Step::Decimals(0), "sq in")
            }
            Unit::Area => (v / (MM_PER_FOOT * MM_PER_FOOT), Step::Decimals(1), "sq ft"),
            Unit::Mass => {
                let pounds = Mass::from_kg(v).pounds();
                (pounds, tenths(pounds), "lb")
            }
            Unit::Gram => (v / GRAMS_PER_OUNCE, Step::Decimals(0), "oz"),
            Unit::Kilonewton => (v * POUNDS_FORCE_PER_KILONEWTON, Step::Decimals(0), "lbf"),
            Unit::Megapascal => (v * PSI_PER_MEGAPASCAL, Step::Decimals(0), "psi"),
            Unit::Litre => {
                let gallons = v / LITRES_PER_GALLON;
                (gallons, tenths(gallons), "gal")
            }
            Unit::LitrePerMinute => (v / LITRES_PER_GALLON, Step::Decimals(2), "gal/min"),
            Unit::Airflow => (v * CFM_PER_CUBIC_METRE_AN_HOUR, Step::Decimals(0), "cfm"),
            Unit::SawingRate => (
                v * 100.0 / (MM_PER_INCH * MM_PER_INCH),
                Step::Decimals(1),
                "sq in/min",
            ),
            Unit::Density => (
                v / KG_PER_POUND * (MM_PER_FOOT / 1000.0).powi(3),
                Step::Decimals(0),
                "lb/cu ft",
            ),
            Unit::Celsius => (v * 1.8 + 32.0, Step::Decimals(0), "°F"),
            _ => return None,
        };
        Some(Printed { figure, step, sign })
    }
}

/// One decimal below ten, as far as rounding to it stays below ten; none from there on.
fn tenths_below_ten(figure: f64) -> u8 {
    u8::from(figure.abs() < 9.95)
}

/// What lies within this share of a step beside a whole step is that step: a rounding of the sum that
/// it came from must not push it to the next.
const SAME_STEP: f64 = 1e-6;

/// Whole steps, rounded the way that is asked for, halves away from zero, never a negative zero.
fn steps(value: f64, rounding: Rounding) -> f64 {
    let near = (value.abs() + 0.5 + SAME_STEP).floor().copysign(value);
    let whole = match rounding {
        _ if (value - near).abs() < SAME_STEP => near,
        Rounding::Nearest => near,
        Rounding::Down | Rounding::DownToHalf => value.floor(),
        Rounding::Up | Rounding::UpToHalf => value.ceil(),
    };
    whole + 0.0
}

/// Whether a whole mark of an inch tape, away from the kept stone, leaves more on than [`LEAVES_MM`].
fn leaves_much(inches: f64, parts: u32, rounding: Rounding) -> bool {
    let marks = inches * f64::from(parts);
    (steps(marks, rounding) - marks).abs() / f64::from(parts) * MM_PER_INCH > LEAVES_MM
}

fn decimal(figure: f64, decimals: u8, rounding: Rounding) -> String {
    let scale = 10_f64.powi(i32::from(decimals));
    let halves = if rounding.halves() { 2.0 } else { 1.0 };
    let whole = steps(figure * scale * halves, rounding);
    let rounded = whole / halves / scale + 0.0;
    let more = usize::from(whole % halves != 0.0);
    format!("{rounded:.*}", usize::from(decimals) + more)
}

/// Inches and the nearest fraction in its lowest terms: `25 1/4`, `3/16`, `0`.
fn fraction(inches: f64, parts: u32, rounding: Rounding) -> String {
    let total = steps(inches * f64::from(parts), rounding);
    let sign = if total < 0.0 { "−" } else { "" };
    let total = total.abs();
    let whole = (total / f64::from(parts)).floor();
    let (mut over, mut under) = (total - whole * f64::from(parts), parts);
    while over > 0.0 && over % 2.0 == 0.0 {
        over /= 2.0;
        under /= 2;
    }
    match (whole > 0.0, over > 0.0) {
        (_, false) => format!("{sign}{whole:.0}"),
        (false, true) => format!("{sign}{over:.0}/{under}"),
        // Held together: a figure is never broken over two lines.
        (true, true) => format!("{sign}{whole:.0}\u{a0}{over:.0}/{under}"),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn required_is_never_rounded_down_and_permitted_never_up() {
        let written = |value, unit, rounding| {
            let q = Quantity {
                rounding,
                ..Quantity::new(value, unit)
            };
            q.figure(System::Metric)
        };
        assert_eq!(written(238.01, Unit::Mass, Rounding::Up), "239");
        assert_eq!(written(49.99, Unit::Mass, Rounding::Down), "49");
        assert_eq!(written(50.0 - 1e-9, Unit::Mass, Rounding::Down), "50");
        assert_eq!(written(-0.2, Unit::Size, Rounding::Nearest), "0");
    }

    #[test]
    fn a_mark_goes_to_half_a_step_on_the_side_that_is_asked_for() {
        let written = |mm, rounding, system| {
            let q = Quantity {
                rounding,
                ..Quantity::new(mm, Unit::Tape)
            };
            q.figure(system)
        };
        let (down, up) = (Rounding::DownToHalf, Rounding::UpToHalf);
        assert_eq!(written(264.5, down, System::Metric), "264.5");
        assert_eq!(written(264.9, down, System::Metric), "264.5");
        assert_eq!(written(264.6, up, System::Metric), "265");
        assert_eq!(written(264.1, up, System::Metric), "264.5");
        // 25 1/4 in and a hundredth of a millimetre: the next 1/16 in would leave 1.6 mm on, 1/32 in 0.8 mm.
        assert_eq!(written(641.36, up, System::Inch), "25\u{a0}9/32");
        assert_eq!(written(641.36, down, System::Inch), "25\u{a0}1/4");
    }

    #[test]
    fn an_inch_mark_is_a_sixteenth_where_that_leaves_a_millimetre_at_most() {
        let up = |mm| {
            let q = Quantity {
                rounding: Rounding::UpToHalf,
                ..Quantity::new(mm, Unit::Tape)
            };
            q.figure(System::Inch)
        };
        // 10 in are 254 mm, 10 1/16 in 255.5875 mm.
        assert_eq!(up(254.55), "10\u{a0}1/32");
        assert_eq!(up(254.6), "10\u{a0}1/16");
        assert_eq!(up(255.0), "10\u{a0}1/16");
        assert_eq!(up(254.0), "10");
    }

    #[test]
    fn a_core_bit_is_written_as_it_is_sold() {
        let bit = |mm, system| Quantity::new(mm, Unit::Bit).figure(system);
        assert_eq!(bit(35.0, System::Metric), "35");
        assert_eq!(bit(6.5, System::Metric), "6.5");
        assert_eq!(bit(34.925, System::Inch), "1\u{a0}3/8");
    }

    #[test]
    fn inches_are_fractions_in_lowest_terms() {
        let tape = |mm| Quantity::new(mm, Unit::Tape).figure(System::Inch);
        assert_eq!(tape(609.6), "24");
        assert_eq!(tape(641.35), "25\u{a0}1/4");
        assert_eq!(tape(4.7625), "3/16");
        assert_eq!(tape(-25.4), "−1");
    }

    #[test]
    fn factors_of_the_inch_system() {
        // NIST SP 811 (2008), Appendix B.8: 1 psi = 6.894 757 kPa, 1 lbf = 4.448 222 N,
        // 1 gal (US) = 3.785 412 l, 1 ft³/min = 4.719 474e-4 m³/s, 1 lb/ft³ = 16.018 46 kg/m³.
        let of = |value, unit| Quantity::new(value, unit).converted(System::Inch);
        assert!((of(6.894_757e-3, Unit::Megapascal) - 1.0).abs() < 1e-6);
        assert!((of(4.448_222e-3, Unit::Kilonewton) - 1.0).abs() < 1e-6);
        assert!((of(3.785_412, Unit::Litre) - 1.0).abs() < 1e-6);
        assert!((of(4.719_474e-4 * 3600.0, Unit::Airflow) - 1.0).abs() < 1e-6);
        assert!((of(16.018_46, Unit::Density) - 1.0).abs() < 1e-6);
    }
}
