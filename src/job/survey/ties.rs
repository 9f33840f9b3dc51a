//! A corner from a base line: two tapes fix it, a third checks it.
//!
//! The base line runs along x from its left mark at the origin. Corners lie on its left, y ≥ 0: two
//! tapes cannot tell a corner from its mirror image. The third tape starts from the middle of the base
//! line, which needs no further mark on the stone.

use super::network::{self, Free, Leg};
use super::{EXPLAINED, Misclosure, TapeCheck, apex, blunder};
use crate::geom::Point;
use crate::units::LengthUnit;

/// A tape shorter than this is none: the corner is the mark, mm (far below what a tape can tell).
const AT_MARK_MM: f64 = 1e-6;

/// The tapes to one corner, mm.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CornerTapes {
    /// From the left mark of the base line.
    pub left: f64,
    /// From its right mark.
    pub right: f64,
    /// From its middle, as a check.
    pub middle: Option<f64>,
}

/// Where a tape of a tie starts.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Mark {
    /// The left mark.
    Left,
    /// The right mark.
    Right,
    /// The middle.
    Middle,
}

impl Mark {
    /// In the order of the job file.
    pub const ALL: [Self; 3] = [Self::Left, Self::Right, Self::Middle];

    /// In words.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Left => "from the left mark",
            Self::Right => "from the right mark",
            Self::Middle => "from the middle",
        }
    }
}

/// Two tapes that do not meet over the base line.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct NoMeeting {
    /// The least and the most the tape from the left mark can be by the other.
    pub left: [f64; 2],
    /// The least and the most the tape from the right mark can be by the other.
    pub right: [f64; 2],
}

impl CornerTapes {
    /// What a tape reads, mm.
    #[must_use]
    pub const fn taped(&self, from: Mark) -> Option<f64> {
        match from {
            Mark::Left => Some(self.left),
            Mark::Right => Some(self.right),
            Mark::Middle => self.middle,
        }
    }

    /// Which mark the corner is, if it is one.
    #[must_use]
    pub fn mark(&self) -> Option<Mark> {
        if self.left <= AT_MARK_MM {
            Some(Mark::Left)
        } else if self.right <= AT_MARK_MM {
            Some(Mark::Right)
        } else {
            None
        }
    }

    /// Where the corner is: with a third tape the best fit, every tape counting the same.
    ///
    /// # Errors
    /// [`NoMeeting`] when the first two tapes miss each other by more than `tape_error` explains. When it
    /// explains it, the corner is on the base line.
    pub fn corner(&self, base: f64, tape_error: f64) -> Result<Point, NoMeeting> {
        match self.mark() {
            Some(Mark::Left) => return Ok(Point::ORIGIN),
            Some(_) => return Ok(Point::new(base, 0.0)),
            None => {}
        }
        let Some(corner) = apex(base, self.left, self.right) else {
            return self.on_the_line(base, tape_error);
        };
        Ok(self.best_fit(corner, base).unwrap_or(corner))
    }

    fn on_the_line(&self, base: f64, tape_error: f64) -> Result<Point, NoMeeting> {
        let (left, right) = (self.left, self.right);
        let gaps = [
            base - left - right,
            left - right - base,
            right - left - base,
        ];
        let missed = gaps.into_iter().fold(0.0, f64::max);
        // Three tapes in one line: the base, and the two to the corner.
        if missed <= EXPLAINED * tape_error * 3.0_f64.sqrt() {
            let x = (left - right) * (left + right) / (2.0 * base) + base / 2.0;
            return Ok(Point::new(x, 0.0));
        }
        Err(NoMeeting {
            left: [(base - right).abs(), base + right],
            right: [(base - left).abs(), base + left],
        })
    }

    fn best_fit(&self, start: Point, base: f64) -> Option<Point> {
        let middle = self.middle?;
        let marks = [
            Point::ORIGIN,
            Point::new(base, 0.0),
            Point::new(base / 2.0, 0.0),
        ];
        let leg = |mark: usize, taped: f64| Leg {
            ends: [mark, 3],
            taped,
        };
        let legs = [leg(0, self.left), leg(1, self.right), leg(2, middle)];
        let points = [marks[0], marks[1], marks[2], start];
        let found = network::adjust(&points, &[Free::X(3), Free::Y(3)], &legs)?;
        found.points.last().copied().filter(|p| p.y >= 0.0)
    }

    /// What a tape should read by the two others, mm, by Apollonius' theorem on the median of a
    /// triangle. Nothing when no length does.
    #[must_use]
    pub fn without(&self, from: Mark, base: f64) -> Option<f64> {
        let square = |mm: f64| mm * mm;
        let half = square(base) / 2.0;
        let of = |from| self.taped(from).map(square);
        let needed = match from {
            Mark::Left => 2.0 * of(Mark::Middle)? + half - of(Mark::Right)?,
            Mark::Right => 2.0 * of(Mark::Middle)? + half - of(Mark::Left)?,
            Mark::Middle => (of(Mark::Left)? + of(Mark::Right)? - half) / 2.0,
        };
        (needed >= 0.0).then(|| needed.sqrt())
    }

    /// The check of a corner that is a mark: its other tape against the base line. Of any other corner:
    /// its third tape. Nothing when there is no check. `tape_error` is in mm; slips are looked for in
    /// the digits of `unit`.
    #[must_use]
    pub fn misclosure(
        &self,
        name: &str,
        base: f64,
        tape_error: f64,
        unit: LengthUnit,
    ) -> Option<Misclosure> {
        if let Some(mark) = self.mark() {
            return self.against_base(mark, name, base, tape_error, unit);
        }
        let (taped, computed) = (self.middle?, self.without(Mark::Middle, base)?);
        let corner = self.corner(base, tape_error).ok()?;
        let sides = [self.left, self.right, computed].map(|mm| mm / (2.0 * computed));
        // The base line's own error counts too: a quarter of it, as a share of the third tape.
        let along = base / (4.0 * computed);
        let slopes = [sides[0], sides[1], 1.0];
        let all: f64 = slopes.iter().chain([&along]).map(|s| s * s).sum();
        let explained = EXPLAINED * tape_error * all.sqrt();
        let told = (taped - computed).abs() > explained;
        let check = |(from, slope): (Mark, f64)| {
            let taped = self.taped(from)?;
            let (alone, open) = (self.without(from, base), explained / slope);
            let blunder = alone
                .filter(|_| told)
                .and_then(|alone| blunder::find(taped, alone, open, unit));
            Some(TapeCheck {
                name: from.name().into(),
                taped,
                adjusted: corner.distance(mark_at(from, base)),
                alone,
                open,
                blunder,
            })
        };
        let tapes = Mark::ALL.into_iter().zip(slopes).filter_map(check);
        Some(Misclosure {
            of: name.into(),
            check: Mark::Middle.name().into(),
            taped,
            computed,
            explained,
            tapes: tapes.collect(),
        })
    }

    fn against_base(
        &self,
        mark: Mark,
        name: &str,
        base: f64,
        tape_error: f64,
        unit: LengthUnit,
    ) -> Option<Misclosure> {
        let from = match mark {
            Mark::Left => Mark::Right,
            _ => Mark::Left,
        };
        // The base line's own number written once more is no second reading.
        let taped = self
            .taped(from)
            .filter(|mm| (mm - base).abs() > AT_MARK_MM)?;
        let explained = EXPLAINED * tape_error * 2.0_f64.sqrt();
        let told = (taped - base).abs() > explained;
        let tape = |name: &str, taped: f64, alone: f64| TapeCheck {
            name: name.into(),
            taped,
            adjusted: base,
            alone: Some(alone),
            open: explained,
            blunder: Some(())
                .filter(|()| told)
                .and_then(|()| blunder::find(taped, alone, explained, unit)),
        };
        Some(Misclosure {
            of: name.into(),
            check: from.name().into(),
            taped,
            computed: base,
            explained,
            tapes: vec![
                tape(from.name(), taped, base),
                tape("base line", base, taped),
            ],
        })
    }

    /// How far the corner may be off, mm: what an error of `tape_error` in both of the first two tapes
    /// makes of it where they cross at a slant. Nothing for a corner that is a mark.
    #[must_use]
    pub fn uncertainty(&self, base: f64, tape_error: f64) -> Option<f64> {
        let corner = match self.mark() {
            None => apex(base, self.left, self.right),
            Some(_) => return None,
        };
        let sine = corner.map_or(0.0, |c| base * c.y / (self.left * self.right));
        Some(2.0_f64.sqrt() * tape_error / sine)
    }
}

const fn mark_at(from: Mark, base: f64) -> Point {
    match from {
        Mark::Left => Point::ORIGIN,
        Mark::Right => Point::new(base, 0.0),
        Mark::Middle => Point::new(base / 2.0, 0.0),
    }
}
