//! The way in, aids, and the stone standing on edge, as text.

use std::fmt::Write;

use crate::handle::moving::Moving;
use crate::sheet::figure::Figures;
use crate::sheet::page::way_in;
use crate::sheet::page::way_in::numbers;

/// Least and greatest width of the names of places, characters.
const PLACE: (usize, usize) = (18, 32);
/// Width of the first stone's column, characters.
const COLUMN: usize = 26;

/// Which stones a part of the text is about.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Shown {
    /// The slab, then the top.
    Both,
    /// The first alone.
    First,
}

impl Shown {
    /// How many.
    pub(super) const fn count(self) -> usize {
        match self {
            Self::Both => 2,
            Self::First => 1,
        }
    }
}

/// Writes the way in, when one is given.
pub(super) fn way(out: &mut String, figures: Figures, moving: &Moving) {
    let Some(route) = &moving.route else {
        return;
    };
    let rows = way_in::rows(route, figures);
    let longest = rows.iter().map(|(place, _)| place.chars().count()).max();
    let width = longest.unwrap_or(0).clamp(PLACE.0, PLACE.1);
    let _ = writeln!(out, "\nWAY IN");
    for (place, told) in rows {
        let _ = writeln!(out, "  {place:<width$} {told}");
    }
}

/// Writes what each aid needs and what a standing stone does: for the slab, or for slab and top.
pub(super) fn numbers(out: &mut String, figures: Figures, moving: &Moving, shown: Shown) {
    let parts = [
        ("STANDING ON EDGE", numbers::falls(moving, figures)),
        ("WHAT EACH AID NEEDS", numbers::aids(moving, figures)),
    ];
    let names = moving.aids.each_ref().map(|a| a.name.as_str());
    for (title, rows) in parts {
        let _ = writeln!(out, "\n{title}");
        if shown == Shown::Both {
            row(out, "", &names);
        }
        for (name, values) in &rows {
            told(out, name, values, &names, shown);
        }
    }
}

/// One row: the stones side by side, or one below the other when that is too wide.
fn told(out: &mut String, name: &str, values: &[String; 2], names: &[&str; 2], shown: Shown) {
    let stones = names.iter().zip(values.iter().map(String::as_str));
    let stones: Vec<(&str, &str)> = stones
        .map(|(name, value)| (*name, value))
        .take(shown.count())
        .collect();
    match stones[..] {
        [(_, only)] => row(out, name, &[only, ""]),
        [(_, slab), (_, top)] if slab.chars().count() < COLUMN => row(out, name, &[slab, top]),
        _ => {
            row(out, name, &["", ""]);
            for (stone, value) in stones {
                let _ = writeln!(out, "    {stone}: {value}");
            }
        }
    }
}

fn row(out: &mut String, name: &str, [first, second]: &[&str; 2]) {
    let line = format!("  {name:<36} {first:<COLUMN$} {second}");
    let _ = writeln!(out, "{}", line.trim_end());
}
