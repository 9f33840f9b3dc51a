//! A four-cornered slab from its four sides and one or both diagonals.
//!
//! Five of the six tapes fix the figure, the sixth checks it. Each tape can be left out and computed
//! from the other five, so that each can be told what it would have to read.

use super::network::{self, Free, Leg};
use super::{EXPLAINED, Misclosure, TapeCheck, apex, blunder};
use crate::geom::Point;
use crate::units::LengthUnit;

/// One of the six tapes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Tape {
    /// The side from A to B.
    Ab,
    /// The side from B to C.
    Bc,
    /// The side from C to D.
    Cd,
    /// The side from D to A.
    Da,
    /// The diagonal from A to C.
    Ac,
    /// The diagonal from B to D.
    Bd,
}

impl Tape {
    /// The sides in order, then the diagonals.
    pub const ALL: [Self; 6] = [Self::Ab, Self::Bc, Self::Cd, Self::Da, Self::Ac, Self::Bd];

    /// Its name, such as `AB`.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Ab => "AB",
            Self::Bc => "BC",
            Self::Cd => "CD",
            Self::Da => "DA",
            Self::Ac => "AC",
            Self::Bd => "BD",
        }
    }

    /// The corners it joins, A being 0.
    #[must_use]
    pub const fn ends(self) -> [usize; 2] {
        match self {
            Self::Ab => [0, 1],
            Self::Bc => [1, 2],
            Self::Cd => [2, 3],
            Self::Da => [3, 0],
            Self::Ac => [0, 2],
            Self::Bd => [1, 3],
        }
    }

    /// The tape between two corners; nothing for a corner and itself.
    #[must_use]
    pub fn between(one: usize, other: usize) -> Option<Self> {
        let joins = |tape: &Self| tape.ends() == [one, other] || tape.ends() == [other, one];
        Self::ALL.into_iter().find(joins)
    }

    /// The tape between the two corners that this one does not touch.
    #[must_use]
    pub const fn across(self) -> Self {
        match self {
            Self::Ab => Self::Cd,
            Self::Bc => Self::Da,
            Self::Cd => Self::Ab,
            Self::Da => Self::Bc,
            Self::Ac => Self::Bd,
            Self::Bd => Self::Ac,
        }
    }

    const fn is_diagonal(self) -> bool {
        matches!(self, Self::Ac | Self::Bd)
    }
}

/// Four sides and one or two diagonals, mm.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Quadrilateral {
    /// AB, BC, CD, DA.
    pub sides: [f64; 4],
    /// AC and BD; at least one is needed.
    pub diagonals: [Option<f64>; 2],
}

/// Why no slab can have these tapes.
#[derive(Clone, Debug, PartialEq)]
pub enum Refusal {
    /// Both diagonals are missing.
    NoDiagonal,
    /// Tapes that should close a triangle do not.
    NoTriangle(NoTriangle),
    /// The tapes fit a figure with an inside corner.
    InsideCorner {
        /// The corner, A being 0.
        corner: usize,
        /// The angle inside the slab, degrees.
        angle: f64,
    },
    /// The tapes fit a figure whose sides cross, and no other.
    Crossing,
}

/// A triangle that cannot close because one tape is longer than the two others together.
#[derive(Clone, Debug, PartialEq)]
pub struct NoTriangle {
    /// The tape that is too long for the others.
    pub long: Tape,
    /// The two others.
    pub short: [Tape; 2],
    /// The tapes that could be the wrong one, each with the least and the most it can be by the others.
    /// One of them mends every triangle that does not close; empty when no single tape does.
    pub could_be: Vec<(Tape, [f64; 2])>,
}

impl Quadrilateral {
    /// What a tape reads, mm.
    #[must_use]
    pub fn taped(&self, tape: Tape) -> Option<f64> {
        let [ab, bc, cd, da] = self.sides;
        match tape {
            Tape::Ab => Some(ab),
            Tape::Bc => Some(bc),
            Tape::Cd => Some(cd),
            Tape::Da => Some(da),
            Tape::Ac => self.diagonals[0],
            Tape::Bd => self.diagonals[1],
        }
    }

    /// The same tapes with one reading another length.
    #[must_use]
    pub fn with(&self, tape: Tape, taped: f64) -> Self {
        let mut changed = *self;
        match tape {
            Tape::Ab => changed.sides[0] = taped,
            Tape::Bc => changed.sides[1] = taped,
            Tape::Cd => changed.sides[2] = taped,
            Tape::Da => changed.sides[3] = taped,
            Tape::Ac => changed.diagonals[0] = Some(taped),
            Tape::Bd => changed.diagonals[1] = Some(taped),
        }
        changed
    }

    /// The same tapes with two readings changed over; nothing when one of them was not taped.
    #[must_use]
    pub fn exchanged(&self, one: Tape, other: Tape) -> Option<Self> {
        let (first, second) = (self.taped(one)?, self.taped(other)?);
        Some(self.with(one, second).with(other, first))
    }

    /// What a tape should read by the other five, mm. Nothing when those do not fix it.
    #[must_use]
    pub fn without(&self, tape: Tape) -> Option<f64> {
        self.left_out(tape, if tape.is_diagonal() { -1.0 } else { 1.0 })
    }

    /// The distance of the two ends of a tape, each fixed by its tapes from the two other corners; on
    /// the same side of the line between those (1) or on opposite sides (−1).
    fn left_out(&self, tape: Tape, side: f64) -> Option<f64> {
        let base = self.taped(tape.across())?;
        let [start, end] = tape.across().ends();
        let fixed = |corner: usize| {
            let from = |mark: usize| self.taped(Tape::between(corner, mark)?);
            apex(base, from(start)?, from(end)?)
        };
        let [one, other] = tape.ends();
        let (one, other) = (fixed(one)?, fixed(other)?);
        Some(one.distance(Point::new(other.x, side * other.y)))
    }

    /// The corners: A at the origin, B on x, the others on the left of AB. With both diagonals they are
    /// the best fit, every tape counting the same.
    ///
    /// # Errors
    /// Every [`Refusal`]. That six tapes disagree is none: see [`Self::misclosure`].
    pub fn corners(&self) -> Result<[Point; 4], Vec<Refusal>> {
        let diagonal = self.diagonals.iter().position(Option::is_some);
        let Some(diagonal) = diagonal else {
            return Err(vec![Refusal::NoDiagonal]);
        };
        let refusals = self.open_triangles();
        if !refusals.is_empty() {
            return Err(refusals);
        }
        let corners = match diagonal {
            0 => self.corners_by_ac(-1.0),
            _ => self.corners_by_bd(),
        };
        let corners = corners.ok_or(vec![Refusal::Crossing])?;
        let corners = self.best_fit(corners).unwrap_or(corners);
        match inside_corner(&corners) {
            None => Ok(corners),
            Some((corner, angle)) => Err(vec![Refusal::InsideCorner { corner, angle }]),
        }
    }

    /// The corners from the sides and AC; D on the other side of AC from B (−1) or on the same (1).
    fn corners_by_ac(&self, side: f64) -> Option<[Point; 4]> {
        let [ab, bc, cd, da] = self.sides;
        let ac = self.diagonals[0]?;
        let c = apex(ab, ac, bc)?;
        let d = apex(ac, da, cd)?;
        let d = Point::ORIGIN
            + (Point::new(d.x, -side * d.y) - Point::ORIGIN).turned((c - Point::ORIGIN).angle());
        Some([Point::ORIGIN, Point::new(ab, 0.0), c, d])
    }

    /// The corners from the sides and BD, C on the other side of BD from A.
    fn corners_by_bd(&self) -> Option<[Point; 4]> {
        let [ab, bc, cd, da] = self.sides;
        let bd = self.diagonals[1]?;
        let (b, d) = (Point::new(ab, 0.0), apex(ab, da, bd)?);
        let c = apex(bd, bc, cd)?;
        let c = b + (Point::new(c.x, -c.y) - Point::ORIGIN).turned((d - b).angle());
        Some([Point::ORIGIN, b, c, d])
    }

    /// All six tapes; nothing when one was not taken.
    fn legs(&self) -> Option<Vec<Leg>> {
        let leg = |tape: Tape| {
            let (ends, taped) = (tape.ends(), self.taped(tape)?);
            Some(Leg { ends, taped })
        };
        Tape::ALL.into_iter().map(leg).collect()
    }

    fn best_fit(&self, start: [Point; 4]) -> Option<[Point; 4]> {
        let free = [Free::X(1), Free::X(2), Free::Y(2), Free::X(3), Free::Y(3)];
        let found = network::adjust(&start, &free, &self.legs()?)?;
        found.points.try_into().ok()
    }

    /// How far BD disagrees with the other five, with a tape error in mm; nothing without both diagonals
    /// or when the five do not fix it. Slips are looked for in the digits of `unit`.
    #[must_use]
    pub fn misclosure(&self, tape_error: f64, unit: LengthUnit) -> Option<Misclosure> {
        let (taped, computed) = (self.taped(Tape::Bd)?, self.without(Tape::Bd)?);
        let corners = self.best_fit(self.corners_by_ac(-1.0)?)?;
        let (slopes, explained) = self.slopes(-1.0, tape_error);
        let told = (taped - computed).abs() > explained;
        let check = |(tape, slope): (Tape, f64)| {
            let [one, other] = tape.ends();
            let taped = self.taped(tape)?;
            let (alone, open) = (self.without(tape), explained / slope.abs());
            let blunder = alone
                .filter(|_| told)
                .and_then(|alone| blunder::find(taped, alone, open, unit));
            Some(TapeCheck {
                name: tape.name().into(),
                taped,
                adjusted: corners[one].distance(corners[other]),
                alone,
                open,
                blunder,
            })
        };
        let tapes = Tape::ALL.into_iter().zip(slopes).filter_map(check);
        Some(Misclosure {
            of: "slab".into(),
            check: Tape::Bd.name().into(),
            taped,
            computed,
            explained,
            tapes: tapes.collect(),
        })
    }

    /// The pairs of tapes whose readings, changed over, close the figure that `found` says is open. Readings
    /// too near each other to tell are left out.
    #[must_use]
    pub fn exchanges(&self, found: &Misclosure) -> Vec<[Tape; 2]> {
        let later = |i: usize| Tape::ALL.into_iter().skip(i + 1);
        let pairs = Tape::ALL.into_iter().enumerate();
        let pairs = pairs.flat_map(|(i, one)| later(i).map(move |other| [one, other]));
        pairs
            .filter(|pair| self.closes_exchanged(*pair, found) == Some(true))
            .collect()
    }

    fn closes_exchanged(&self, [one, other]: [Tape; 2], found: &Misclosure) -> Option<bool> {
        let changed = self.exchanged(one, other)?;
        let by = changed.taped(Tape::Bd)? - changed.without(Tape::Bd)?;
        let open = |tape: Tape| {
            found
                .tapes
                .iter()
                .find(|t| t.name == tape.name())
                .map(|t| t.open)
        };
        let told = blunder::CLEAR * open(one)?.max(open(other)?);
        let apart = (self.taped(one)? - self.taped(other)?).abs();
        Some(apart >= told && by.abs() <= found.explained && changed.corners().is_ok())
    }

    /// How the misclosure changes for each mm of each tape, and what single errors of `tape_error` in all
    /// six add up to, times [`EXPLAINED`]. `side` as in [`Self::left_out`].
    fn slopes(&self, side: f64, tape_error: f64) -> ([f64; 6], f64) {
        // A central difference over a span that is small against any slab and large against rounding.
        const SPAN: f64 = 1e-3;
        let computed = |tape: Tape, by: f64| {
            let taped = self.taped(tape)? + by;
            self.with(tape, taped).left_out(Tape::Bd, side)
        };
        let slopes = Tape::ALL.map(|tape| match (computed(tape, SPAN), computed(tape, -SPAN)) {
            _ if tape == Tape::Bd => 1.0,
            (Some(more), Some(less)) => (less - more) / (2.0 * SPAN),
            _ => 0.0,
        });
        let all: f64 = slopes.iter().map(|s| s * s).sum();
        (slopes, EXPLAINED * tape_error * all.sqrt())
    }

    /// Whether the six tapes close, within what `tape_error` mm explains, as a figure that is no slab: its
    /// sides cross, or a corner points inwards.
    #[must_use]
    pub fn other_figure(&self, tape_error: f64) -> Option<Refusal> {
        let computed = self.left_out(Tape::Bd, 1.0)?;
        let (_, explained) = self.slopes(1.0, tape_error);
        let fits = (self.taped(Tape::Bd)? - computed).abs() <= explained;
        let corners = self.corners_by_ac(1.0).filter(|_| fits)?;
        let inwards = (0..4).filter(|i| turn(&corners, *i) < 0.0).count();
        match inside_corner(&corners) {
            Some((corner, angle)) if inwards == 1 => Some(Refusal::InsideCorner { corner, angle }),
            _ => Some(Refusal::Crossing),
        }
    }

    /// The triangles that do not close.
    fn open_triangles(&self) -> Vec<Refusal> {
        let open: Vec<(Tape, [Tape; 2])> =
            (0..4).filter_map(|corner| self.open_at(corner)).collect();
        let Some((long, short)) = open.first().copied() else {
            return Vec::new();
        };
        let in_all = |tape: &Tape| open.iter().all(|(l, s)| l == tape || s.contains(tape));
        let limits = |tape: Tape| Some((tape, self.limits(tape)?));
        let could_be: Vec<_> = Tape::ALL
            .into_iter()
            .filter(in_all)
            .filter_map(limits)
            .collect();
        if could_be.is_empty() {
            let alone = |(long, short)| {
                let could_be = Vec::new();
                Refusal::NoTriangle(NoTriangle {
                    long,
                    short,
                    could_be,
                })
            };
            return open.into_iter().map(alone).collect();
        }
        vec![Refusal::NoTriangle(NoTriangle {
            long,
            short,
            could_be,
        })]
    }

    /// The triangle of all corners but one: its tapes, if they were taken.
    fn triangle(&self, but: usize) -> Option<[(Tape, f64); 3]> {
        let mut tapes = Tape::ALL.into_iter().filter(|t| !t.ends().contains(&but));
        let mut next = || {
            let tape = tapes.next()?;
            Some((tape, self.taped(tape)?))
        };
        Some([next()?, next()?, next()?])
    }

    /// The tape that is too long in the triangle without a corner, and the two others.
    fn open_at(&self, but: usize) -> Option<(Tape, [Tape; 2])> {
        let [a, b, c] = self.triangle(but)?;
        let turned = [[a, b, c], [b, c, a], [c, a, b]];
        let too_long = turned
            .into_iter()
            .find(|[long, one, other]| long.1 > one.1 + other.1);
        too_long.map(|[long, one, other]| (long.0, [one.0, other.0]))
    }

    /// The least and the most a tape can be by the triangles it is in; nothing when they contradict.
    #[must_use]
    pub fn limits(&self, tape: Tape) -> Option<[f64; 2]> {
        let (mut least, mut most) = (0.0_f64, f64::INFINITY);
        for but in (0..4).filter(|but| !tape.ends().contains(but)) {
            let Some(triangle) = self.triangle(but) else {
                continue;
            };
            let mut others = triangle
                .into_iter()
                .filter(|(t, _)| *t != tape)
                .map(|(_, mm)| mm);
            let (one, other) = (others.next()?, others.next()?);
            least = least.max((one - other).abs());
            most = most.min(one + other);
        }
        (least <= most).then_some([least, most])
    }
}

/// The turn at a corner, radians, left positive.
fn turn(corners: &[Point; 4], corner: usize) -> f64 {
    let here = corners[corner % 4];
    let (arriving, leaving) = (
        here - corners[(corner + 3) % 4],
        corners[(corner + 1) % 4] - here,
    );
    arriving.cross(leaving).atan2(arriving.dot(leaving))
}

/// The corner that points inwards most, and the angle inside it in degrees.
fn inside_corner(corners: &[Point; 4]) -> Option<(usize, f64)> {
    let turns = (0..4).map(|corner| (corner, turn(corners, corner)));
    let (corner, turn) = turns.min_by(|a, b| a.1.total_cmp(&b.1))?;
    (turn < 0.0).then(|| (corner, 180.0 - turn.to_degrees()))
}
