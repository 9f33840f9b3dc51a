//! Numbers in both systems of units, the job's own first: stone is lifted by people who think in
//! either.

use crate::handle::lift::Share;
use crate::sheet::figure::Figures;
use crate::units::{LengthUnit, Mass, MassRange};

/// Prints lengths and masses in both systems.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Both {
    units: LengthUnit,
}

const MM: Figures = Figures {
    units: LengthUnit::Millimetre,
};
const INCH: Figures = Figures {
    units: LengthUnit::Inch,
};

impl Both {
    /// In the order of a job's numbers.
    #[must_use]
    pub const fn of(figures: Figures) -> Self {
        Self {
            units: figures.units,
        }
    }

    fn ordered<'a>(self, metric: &'a str, inch: &'a str) -> (&'a str, &'a str) {
        match self.units {
            LengthUnit::Millimetre => (metric, inch),
            LengthUnit::Inch => (inch, metric),
        }
    }

    fn beside(self, metric: &str, inch: &str) -> String {
        let (first, second) = self.ordered(metric, inch);
        format!("{first} ({second})")
    }

    /// A mass: `54 kg (119 lb)`.
    #[must_use]
    pub fn mass(self, mass: Mass) -> String {
        self.beside(&MM.mass(mass), &pounds(mass))
    }

    /// The same on two lines.
    #[must_use]
    pub fn mass_stacked(self, mass: Mass) -> String {
        let (metric, inch) = (MM.mass(mass), pounds(mass));
        let (first, second) = self.ordered(&metric, &inch);
        format!("{first}\n{second}")
    }

    /// A share of the stone, on two lines.
    #[must_use]
    pub fn share_stacked(self, share: Share) -> String {
        match share {
            Share::Carries(mass) => self.mass_stacked(mass),
            Share::LiftsOff => "nothing".into(),
        }
    }

    /// A share of the stone.
    #[must_use]
    pub fn share(self, share: Share) -> String {
        match share {
            Share::Carries(mass) => self.mass(mass),
            Share::LiftsOff => "nothing".into(),
        }
    }

    /// A range of masses.
    #[must_use]
    pub fn mass_range(self, range: &MassRange) -> String {
        let in_pounds = |m: Mass| Mass::from_kg(m.pounds());
        let pounds = MM.mass_range(&MassRange {
            low: in_pounds(range.low),
            likely: in_pounds(range.likely),
            high: in_pounds(range.high),
        });
        let pounds = format!("{} lb", pounds.trim_end_matches(" kg"));
        self.beside(&MM.mass_range(range), &pounds)
    }

    /// The same on two lines.
    #[must_use]
    pub fn mass_range_stacked(self, range: &MassRange) -> String {
        let beside = self.mass_range(range);
        beside
            .replacen(" (", "\n", 1)
            .trim_end_matches(')')
            .to_owned()
    }

    /// A length set out with a tape: `412.5 mm (16 1/4 in)`.
    #[must_use]
    pub fn tape(self, mm: f64) -> String {
        self.beside(&MM.tape(mm), &INCH.tape(mm))
    }

    /// The same on two lines.
    #[must_use]
    pub fn tape_stacked(self, mm: f64) -> String {
        let (metric, inch) = (MM.tape(mm), INCH.tape(mm));
        let (first, second) = self.ordered(&metric, &inch);
        format!("{first}\n{second}")
    }

    /// A size to the millimetre and the 1/32 inch.
    #[must_use]
    pub fn size(self, mm: f64) -> String {
        self.beside(&MM.size(mm), &INCH.tape(mm))
    }
}

/// The number of [`Figures::mass`], in pounds.
fn pounds(mass: Mass) -> String {
    let text = MM.mass(Mass::from_kg(mass.pounds()));
    format!("{} lb", text.trim_end_matches(" kg"))
}
