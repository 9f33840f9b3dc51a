//! Lengths and masses as people write them, and the two unit systems a sheet can speak.

use std::error::Error;
use std::fmt;

use serde::{Serialize, Serializer};

/// Millimetres in an inch, by definition (international yard and pound agreement, 1959).
pub const MM_PER_INCH: f64 = 25.4;
/// Kilograms in a pound, by definition (same agreement).
pub const KG_PER_POUND: f64 = 0.453_592_37;
/// Standard acceleration of free fall, m/s² (ISO 80000-3).
pub const GRAVITY: f64 = 9.806_65;

/// The unit of bare numbers in a job file, and of the lengths printed first on its sheet.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum LengthUnit {
    /// Millimetres; masses in kilograms.
    #[default]
    Millimetre,
    /// Inches; masses in pounds first.
    Inch,
}

impl LengthUnit {
    /// How many millimetres one of it is.
    #[must_use]
    pub const fn in_mm(self) -> f64 {
        match self {
            Self::Millimetre => 1.0,
            Self::Inch => MM_PER_INCH,
        }
    }
}

/// Written as `mm` or `in`.
impl Serialize for LengthUnit {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_str(match self {
            Self::Millimetre => "mm",
            Self::Inch => "in",
        })
    }
}

/// A mass. Not a force: multiply by [`GRAVITY`] for that.
#[derive(Clone, Copy, Debug, Default, PartialEq, PartialOrd)]
pub struct Mass {
    kg: f64,
}

impl Mass {
    /// A mass in kilograms.
    #[must_use]
    pub const fn from_kg(kg: f64) -> Self {
        Self { kg }
    }

    /// A mass in pounds.
    #[must_use]
    pub const fn from_pounds(pounds: f64) -> Self {
        Self {
            kg: pounds * KG_PER_POUND,
        }
    }

    /// In kilograms.
    #[must_use]
    pub const fn kg(self) -> f64 {
        self.kg
    }

    /// In pounds.
    #[must_use]
    pub const fn pounds(self) -> f64 {
        self.kg / KG_PER_POUND
    }
}

/// Written as a number of kilograms.
impl Serialize for Mass {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_f64(self.kg)
    }
}

/// A mass that is not known exactly.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct MassRange {
    /// With the lightest stone of the kind and the thinnest reading.
    pub low: Mass,
    /// With the likely density and the mean thickness.
    pub likely: Mass,
    /// With the heaviest stone of the kind and the thickest reading: plan lifts with this one.
    pub high: Mass,
}

/// What a text should have been.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum UnitFault {
    /// No number could be read.
    NotANumber,
    /// A number, but the unit behind it is unknown.
    UnknownUnit,
    /// A number whose decimals stand behind a comma.
    DecimalComma,
    /// A fraction over zero, or a number that is not finite.
    NotFinite,
}

impl fmt::Display for UnitFault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::NotANumber => "no number could be read",
            Self::UnknownUnit => "the unit is not known",
            Self::DecimalComma => "decimals stand behind a point, not a comma",
            Self::NotFinite => "the number is not finite",
        })
    }
}

impl Error for UnitFault {}

/// Reads a length such as `640`, `640 mm`, `2.2 m`, `64 cm`, `25 1/4 in`, `25-1/4"`, `2 ft 1 1/4 in`,
/// `25¼″`; the unit in small letters or capitals.
///
/// A text without a unit is in `bare`. The answer is in millimetres.
///
/// ```
/// use kerfwright::units::{LengthUnit, parse_length_mm};
/// let length = parse_length_mm("25 1/4 in", LengthUnit::Millimetre).unwrap();
/// assert!((length - 641.35).abs() < 1e-9);
/// assert_eq!(parse_length_mm("2.2 m", LengthUnit::Inch), Ok(2200.0));
/// ```
///
/// # Errors
/// See [`UnitFault`].
pub fn parse_length_mm(text: &str, bare: LengthUnit) -> Result<f64, UnitFault> {
    let text = usual_signs(text);
    let mut total = 0.0;
    let mut rest = text.trim();
    let mut parts = 0;
    while !rest.is_empty() {
        let (number, after) = take_number(rest)?;
        let (unit, after) = take_unit(after);
        let mm = match unit.to_lowercase().as_str() {
            "" if parts == 0 && after.is_empty() => bare.in_mm(),
            "mm" => 1.0,
            "cm" => 10.0,
            "m" => 1000.0,
            "in" | "\"" | "inch" | "inches" => MM_PER_INCH,
            "ft" | "'" | "foot" | "feet" => 12.0 * MM_PER_INCH,
            _ => return Err(UnitFault::UnknownUnit),
        };
        total += number * mm;
        parts += 1;
        rest = after;
    }
    if parts == 0 {
        return Err(UnitFault::NotANumber);
    }
    finite(total)
}

/// Reads a mass such as `30 kg`, `12 lb`, `1.2 t`. A text without a unit is in kilograms.
///
/// # Errors
/// See [`UnitFault`].
pub fn parse_mass(text: &str) -> Result<Mass, UnitFault> {
    let (number, after) = take_number(text.trim())?;
    let (unit, after) = take_unit(after);
    if !after.is_empty() {
        return Err(UnitFault::UnknownUnit);
    }
    let kg = match unit.to_lowercase().as_str() {
        "" | "kg" => number,
        "g" => number / 1000.0,
        "t" => number * 1000.0,
        "lb" | "lbs" => number * KG_PER_POUND,
        _ => return Err(UnitFault::UnknownUnit),
    };
    finite(kg).map(Mass::from_kg)
}

/// The text with the signs of a keyboard in place of those of print: curly quotes and primes, fractions
/// in one sign, dashes.
fn usual_signs(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for c in text.chars() {
        match c {
            '″' | '”' | '“' | '„' => out.push('"'),
            '′' | '’' | '‘' => out.push('\''),
            '–' | '−' => out.push('-'),
            '⁄' => out.push('/'),
            '\u{a0}' | '\u{202f}' => out.push(' '),
            '½' => out.push_str(" 1/2"),
            '¼' => out.push_str(" 1/4"),
            '¾' => out.push_str(" 3/4"),
            '⅛' => out.push_str(" 1/8"),
            '⅜' => out.push_str(" 3/8"),
            '⅝' => out.push_str(" 5/8"),
            '⅞' => out.push_str(" 7/8"),
            c => out.push(c),
        }
    }
    out
}

fn finite(value: f64) -> Result<f64, UnitFault> {
    if value.is_finite() {
        Ok(value)
    } else {
        Err(UnitFault::NotFinite)
    }
}

/// A decimal number, a fraction, or a whole number and a fraction, from the front of a text.
fn take_number(text: &str) -> Result<(f64, &str), UnitFault> {
    let (first, rest) = take_decimal(text)?;
    if let Some(below) = rest.strip_prefix('/') {
        let (under, rest) = take_decimal(below)?;
        return Ok((finite(first / under)?, rest.trim_start()));
    }
    // A whole number may be followed by a fraction: `25 1/4` or `25-1/4`.
    let next = rest.trim_start_matches([' ', '-']);
    if let Ok((over, after)) = take_decimal(next)
        && let Some(below) = after.strip_prefix('/')
        && let Ok((under, after)) = take_decimal(below)
    {
        let part = finite(over / under)?;
        return Ok((first + part.copysign(first), after.trim_start()));
    }
    Ok((first, rest.trim_start()))
}

fn take_decimal(text: &str) -> Result<(f64, &str), UnitFault> {
    let numeric = |(i, c): (usize, char)| {
        c.is_ascii_digit() || c == '.' || (i == 0 && (c == '-' || c == '+'))
    };
    let end = text
        .char_indices()
        .find(|&pair| !numeric(pair))
        .map_or(text.len(), |(i, _)| i);
    let number = text[..end].parse().map_err(|_| UnitFault::NotANumber)?;
    let mut after = text[end..].chars();
    if after.next() == Some(',') && after.next().is_some_and(|c| c.is_ascii_digit()) {
        return Err(UnitFault::DecimalComma);
    }
    Ok((number, &text[end..]))
}

fn take_unit(text: &str) -> (&str, &str) {
    let end = text
        .char_indices()
        .find(|(_, c)| !(c.is_alphabetic() || *c == '"' || *c == '\''))
        .map_or(text.len(), |(i, _)| i);
    (&text[..end], text[end..].trim_start())
}
