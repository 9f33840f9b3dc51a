//! A plank round a right-angled corner between two corridors.

use std::f64::consts::FRAC_PI_2;

use serde::Serialize;

/// Halvings of an interval until nothing is left to halve in a number of 53 binary digits.
const HALVINGS: u32 = 60;

/// A right-angled corner seen from above, and how thick the plank is that must turn in it.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Corner {
    /// Clear width of the way before it, mm.
    pub from_mm: f64,
    /// Clear width of the way after it, mm.
    pub to_mm: f64,
    /// Thickness of the plank with what carries it, mm.
    pub thickness_mm: f64,
}

/// Whether a plank of some length turns in a corner.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Turning {
    /// A plank so thick does not even go into the narrower corridor: by this much, mm.
    TooThick(f64),
    /// Planks up to a length get round.
    UpTo(Longest),
}

/// The longest plank that gets round.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Longest {
    /// Its length, mm.
    pub length_mm: f64,
    /// How it gets round.
    pub how: How,
}

/// How the longest plank gets round.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum How {
    /// It is turned, and is tightest at this angle to the second corridor, radians.
    Turned {
        /// The angle.
        tightest: f64,
    },
    /// It is not turned: it goes along one corridor and broadside along the other.
    Sideways,
}

impl Corner {
    /// Room for a plank that touches both outer walls at an angle to the second corridor and the
    /// inner corner with its other face: `a/cos θ + b/sin θ − t/(sin θ·cos θ)`, mm.
    ///
    /// `angle` in radians, more than 0 and less than a right angle.
    ///
    /// ```
    /// use kerfwright::handle::route::Corner;
    /// let corner = Corner { from_mm: 1000.0, to_mm: 1000.0, thickness_mm: 0.0 };
    /// // Two corridors of 1 m: √2 × 2 m at 45°.
    /// assert!((corner.room_at(0.25 * std::f64::consts::PI) - 2828.427).abs() < 1e-3);
    /// ```
    #[must_use]
    pub fn room_at(&self, angle: f64) -> f64 {
        let (sin, cos) = angle.sin_cos();
        (self.from_mm * sin + self.to_mm * cos - self.thickness_mm) / (sin * cos)
    }

    /// The angle at which a plank has the least room, radians.
    ///
    /// Where the plank goes into both corridors the room is a convex function of the angle: with
    /// `s = sin θ + cos θ` its part in `t` is `2t/(s + 1)`, the rest is `(a − t)/cos θ +
    /// (b − t)/sin θ`. The sign of its slope is that of `a·sin³θ − b·cos³θ + t·cos 2θ`, which
    /// changes once; the angle is halved down to it.
    #[must_use]
    pub fn tightest(&self) -> f64 {
        let rises = |angle: f64| {
            let (sin, cos) = angle.sin_cos();
            let turn = self.from_mm * sin.powi(3) - self.to_mm * cos.powi(3);
            turn + self.thickness_mm * (cos * cos - sin * sin) > 0.0
        };
        halved(0.0, FRAC_PI_2, rises)
    }

    /// The longest plank that gets round, and how. A right angle between endless corridors is
    /// taken, and nothing else in the way; the plank is not tipped.
    ///
    /// A plank longer than both corridors are wide must pass every angle between them, so it needs
    /// the least room of all; a shorter one may also go broadside.
    #[must_use]
    pub fn turning(&self) -> Turning {
        let narrower = self.from_mm.min(self.to_mm);
        if self.thickness_mm > narrower {
            return Turning::TooThick(self.thickness_mm - narrower);
        }
        let angle = self.tightest();
        let (turned, broadside) = (self.room_at(angle), self.from_mm.max(self.to_mm));
        Turning::UpTo(if turned >= broadside {
            Longest {
                length_mm: turned,
                how: How::Turned { tightest: angle },
            }
        } else {
            Longest {
                length_mm: broadside,
                how: How::Sideways,
            }
        })
    }

    /// Length of the longest plank, mm; nothing gets round when it is too thick.
    #[must_use]
    pub fn longest_mm(&self) -> Option<f64> {
        match self.turning() {
            Turning::TooThick(_) => None,
            Turning::UpTo(longest) => Some(longest.length_mm),
        }
    }

    /// The least width of the first corridor at which a plank of a length gets round while the
    /// second stays as it is, mm; nothing when the second is too narrow for its thickness.
    #[must_use]
    pub fn least_from_mm(&self, length_mm: f64) -> Option<f64> {
        if self.thickness_mm > self.to_mm {
            return None;
        }
        // A corridor as wide as the plank is long lets it go broadside.
        let most = length_mm.max(self.thickness_mm);
        let passes = |from_mm: f64| {
            let wider = Self { from_mm, ..*self };
            wider.longest_mm().is_some_and(|l| l >= length_mm)
        };
        Some(halved(self.thickness_mm, most, passes))
    }

    /// The same for the second corridor.
    #[must_use]
    pub fn least_to_mm(&self, length_mm: f64) -> Option<f64> {
        self.reversed().least_from_mm(length_mm)
    }

    /// The least width of both corridors at which a plank of a length gets round, mm.
    #[must_use]
    pub fn least_both_mm(&self, length_mm: f64) -> f64 {
        let most = length_mm.max(self.thickness_mm);
        let passes = |width: f64| {
            let wider = Self {
                from_mm: width,
                to_mm: width,
                ..*self
            };
            wider.longest_mm().is_some_and(|l| l >= length_mm)
        };
        halved(self.thickness_mm, most, passes)
    }

    /// The corner passed the other way.
    #[must_use]
    pub fn reversed(&self) -> Self {
        Self {
            from_mm: self.to_mm,
            to_mm: self.from_mm,
            ..*self
        }
    }
}

/// The least value at which something becomes true and stays so; `most` when it never does before.
fn halved(mut least: f64, mut most: f64, holds: impl Fn(f64) -> bool) -> f64 {
    for _ in 0..HALVINGS {
        let middle = f64::midpoint(least, most);
        if holds(middle) {
            most = middle;
        } else {
            least = middle;
        }
    }
    most
}
