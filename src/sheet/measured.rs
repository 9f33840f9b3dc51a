//! The slab as measured, in words: how, how well the tapes close, and how square it is.

use super::figure::{Figures, angle};
use crate::job::survey::{How, Misclosure, OutOfSquare};
use crate::plan::SlabNote;

/// What was measured, in a few words.
#[must_use]
pub fn how(slab: &SlabNote) -> &'static str {
    match slab.survey.how {
        How::Rectangle => "length and depth of a rectangle, taken as square",
        How::Offsets => "offsets of every corner from a base line",
        How::SidesAndDiagonal => "four sides and one diagonal, nothing checked",
        How::SidesAndDiagonals => "four sides and both diagonals",
        How::Ties => "tapes to every corner from a base line",
    }
}

/// How well the tapes close, one line for each check.
#[must_use]
pub fn misclosures(figures: Figures, slab: &SlabNote) -> Vec<String> {
    let found = slab.survey.misclosures.iter();
    found.map(|m| misclosure(figures, slab, m)).collect()
}

fn misclosure(figures: Figures, slab: &SlabNote, found: &Misclosure) -> String {
    let (what, tape) = match slab.survey.how {
        How::Ties => (
            format!("Corner {}", found.of),
            format!("the tape {}", found.check),
        ),
        _ => ("The slab".into(), found.check.clone()),
    };
    let changed = found.tapes.iter().map(|t| (t.adjusted - t.taped).abs());
    format!(
        "{what} closes within {}: {tape} is {}, by the other tapes {}. Tapes good to ±{} explain {} \
         (judgement). Best fit: no tape is changed by more than {}.",
        figures.small(found.by().abs()),
        figures.small(found.taped),
        figures.small(found.computed),
        figures.small(slab.tape),
        figures.small(found.explained),
        figures.small(changed.fold(0.0, f64::max))
    )
}

/// The corners that are out of square, one line each.
#[must_use]
pub fn corners(figures: Figures, slab: &SlabNote) -> Vec<String> {
    let corner = |c: &OutOfSquare| {
        format!(
            "corner {}: {} over the {} of edge {}, {}",
            c.corner,
            out(figures, c),
            figures.size(c.over),
            c.edge,
            angle(c.angle.to_radians())
        )
    };
    slab.survey.out_of_square.iter().map(corner).collect()
}

/// How far a corner is from square, and which way.
#[must_use]
pub fn out(figures: Figures, found: &OutOfSquare) -> String {
    let way = if found.out > 0.0 { "open" } else { "closed" };
    format!("{} {way}", figures.small(found.out.abs()))
}

/// The diagonals of a four-cornered slab; nothing for a rectangle.
#[must_use]
pub fn diagonals(figures: Figures, slab: &SlabNote) -> Option<String> {
    let [ac, bd] = slab.survey.diagonals?;
    Some(format!(
        "diagonals: AC {}, BD {}, {} apart",
        figures.small(ac),
        figures.small(bd),
        figures.small((ac - bd).abs())
    ))
}
