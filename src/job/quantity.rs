//! Quantities other than lengths and masses: the units they may be written in, and the limits of
//! every number.

use super::words::short;

/// The least and the most a number may be, both allowed.
#[derive(Clone, Copy, Debug)]
pub struct Limits {
    /// Least.
    pub least: f64,
    /// Most.
    pub most: f64,
}

/// Limits from least to most.
#[must_use]
pub const fn from_to(least: f64, most: f64) -> Limits {
    Limits { least, most }
}

impl Limits {
    /// Whether a value is allowed.
    #[must_use]
    pub fn allow(self, value: f64) -> bool {
        (self.least..=self.most).contains(&value)
    }

    /// Both limits in words, each written by `show`.
    #[must_use]
    pub fn words(self, show: impl Fn(f64) -> String) -> String {
        format!("{} to {}", show(self.least), show(self.most))
    }

    /// Why a value is refused, with the limit it breaks written by `show`; nothing when it is within.
    #[must_use]
    pub fn broken_by(self, value: f64, show: impl Fn(f64) -> String) -> Option<String> {
        if value < self.least {
            Some(format!("{}, least {}", show(value), show(self.least)))
        } else if value > self.most {
            Some(format!("{}, most {}", show(value), show(self.most)))
        } else {
            None
        }
    }
}

/// A kind of quantity: the units it may carry and what each is in the first.
#[derive(Debug)]
pub struct Quantity {
    /// Unit and how many of the first unit it is; the first is the unit of a bare number.
    units: &'static [(&'static str, f64)],
}

impl Quantity {
    /// The unit of a bare number.
    #[must_use]
    pub fn unit(&self) -> &'static str {
        self.units.first().map_or("", |u| u.0)
    }

    /// A value with its unit.
    #[must_use]
    pub fn show(&self, value: f64) -> String {
        format!("{} {}", short(value), self.unit())
            .trim_end()
            .to_owned()
    }

    /// Reads a number with an optional unit behind it, into the first unit.
    ///
    /// # Errors
    /// What the text should have been.
    pub fn parse(&self, text: &str) -> Result<f64, String> {
        let text = text.trim();
        let numeric = |c: char| c.is_ascii_digit() || matches!(c, '.' | '-' | '+');
        let end = text.find(|c| !numeric(c)).unwrap_or(text.len());
        let (number, unit) = text.split_at(end);
        let number: f64 = number.parse().map_err(|_| self.wanted())?;
        let unit = unit.trim();
        if unit.is_empty() {
            return Ok(number);
        }
        let exact = self.units.iter().find(|u| u.0 == unit);
        let factor = exact.or_else(|| self.units.iter().find(|u| u.0.eq_ignore_ascii_case(unit)));
        factor.map(|u| number * u.1).ok_or_else(|| self.wanted())
    }

    /// What is to be written, in words.
    #[must_use]
    pub fn wanted(&self) -> String {
        let names: Vec<&str> = self.units.iter().map(|u| u.0).collect();
        if names == [""] {
            return "a number".to_owned();
        }
        format!("a number, or a text with a unit: {}", names.join(", "))
    }
}

/// A plain number.
pub const NUMBER: Quantity = Quantity {
    units: &[("", 1.0)],
};

/// Share of mass, per cent.
pub const PERCENT: Quantity = Quantity {
    units: &[("%", 1.0), ("per cent", 1.0), ("percent", 1.0)],
};

/// Density. A pound is 0.45359237 kg and a foot 0.3048 m by definition (1959 agreement).
pub const DENSITY: Quantity = Quantity {
    units: &[
        ("kg/m³", 1.0),
        ("kg/m3", 1.0),
        ("g/cm³", 1000.0),
        ("g/cm3", 1000.0),
        ("lb/ft³", 16.018_463_373_960_14),
        ("lb/ft3", 16.018_463_373_960_14),
    ],
};

/// Strength. One psi is 0.45359237 kg × 9.80665 m/s² over (0.0254 m)².
pub const STRENGTH: Quantity = Quantity {
    units: &[
        ("MPa", 1.0),
        ("N/mm²", 1.0),
        ("N/mm2", 1.0),
        ("psi", 0.006_894_757_293_168),
    ],
};

/// Turns per minute.
pub const SPEED: Quantity = Quantity {
    units: &[("rpm", 1.0), ("/min", 1.0), ("1/min", 1.0)],
};

/// Angle.
pub const ANGLE: Quantity = Quantity {
    units: &[("°", 1.0), ("deg", 1.0), ("degrees", 1.0)],
};

/// Vibration magnitude.
pub const VIBRATION: Quantity = Quantity {
    units: &[("m/s²", 1.0), ("m/s2", 1.0)],
};

/// Noise level.
pub const NOISE: Quantity = Quantity {
    units: &[("dB(A)", 1.0), ("dBA", 1.0), ("dB", 1.0)],
};

/// Noise level, C-weighted.
pub const NOISE_C: Quantity = Quantity {
    units: &[("dB(C)", 1.0), ("dBC", 1.0), ("dB", 1.0)],
};

/// What a hearing protector holds back.
pub const DECIBEL: Quantity = Quantity {
    units: &[("dB", 1.0)],
};

/// Water.
pub const WATER: Quantity = Quantity {
    units: &[("l/min", 1.0), ("L/min", 1.0), ("gal/min", 3.785_411_784)],
};

/// Airflow. A cubic foot is 0.028316846592 m³, sixty times an hour.
pub const AIRFLOW: Quantity = Quantity {
    units: &[
        ("m³/h", 1.0),
        ("m3/h", 1.0),
        ("l/s", 3.6),
        ("cfm", 1.699_010_795_52),
    ],
};

/// Sawn face a minute. A square inch is 6.4516 cm².
pub const FACE_RATE: Quantity = Quantity {
    units: &[
        ("cm²/min", 1.0),
        ("cm2/min", 1.0),
        ("in²/min", 6.4516),
        ("in2/min", 6.4516),
    ],
};

/// Hours.
pub const HOURS: Quantity = Quantity {
    units: &[("h", 1.0), ("hours", 1.0), ("min", 1.0 / 60.0)],
};

/// Minutes.
pub const MINUTES: Quantity = Quantity {
    units: &[("min", 1.0), ("minutes", 1.0), ("h", 60.0)],
};
