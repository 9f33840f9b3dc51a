//! What the stone weighs and how it is moved, as text for a terminal: metric and inch figures side by
//! side, whatever the unit of the job.

use std::fmt::Write;

use super::text_moving::Shown;
use crate::diag::Finding;
use crate::handle::Piece;
use crate::handle::lift::Tilt;
use crate::plan::{TopState, Weighing};
use crate::sheet::figure::{Figures, area};
use crate::sheet::page::both::Both;
use crate::sheet::page::lifting::verdict_words;
use crate::units::{MM_PER_INCH, Mass, MassRange};

/// Which stones are told of.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Stones {
    /// The slab and the top of a job.
    SlabAndTop,
    /// One stone alone.
    One,
}

/// The weighing in words and numbers.
#[must_use]
pub fn weighing(weighing: &Weighing, stones: Stones) -> String {
    let figures = Figures {
        units: weighing.job.units,
    };
    let mut out = String::new();
    heading(&mut out, weighing, stones);
    findings(&mut out, "STOP", &weighing.stops);
    let handling = &weighing.handling;
    let shown = match stones {
        Stones::SlabAndTop => Shown::Both,
        Stones::One => Shown::First,
    };
    let pieces = [&handling.slab, &handling.top];
    for (piece, area_mm2) in pieces.iter().zip(weighing.area_mm2).take(shown.count()) {
        stone(
            &mut out,
            Both::of(figures),
            piece,
            area_mm2,
            weighing.thickness.most,
        );
    }
    super::text_moving::way(&mut out, figures, &handling.moving);
    super::text_moving::numbers(&mut out, figures, &handling.moving, shown);
    findings(&mut out, "Caution", &weighing.cautions);
    assumed(&mut out, weighing);
    out
}

fn row(out: &mut String, name: &str, value: &str) {
    let _ = writeln!(out, "  {name:<18} {value}");
}

fn heading(out: &mut String, weighing: &Weighing, stones: Stones) {
    if stones == Stones::SlabAndTop {
        let _ = writeln!(out, "{}", weighing.job.title);
    }
    let (t, d) = (weighing.thickness, weighing.stone.density);
    row(out, "region", &weighing.job.region_name);
    row(out, "stone", &weighing.stone.name);
    row(
        out,
        "thickness",
        &format!(
            "{:.1} mm ({:.2} in) mean, {:.1} to {:.1} mm",
            t.mean,
            t.mean / MM_PER_INCH,
            t.least,
            t.most
        ),
    );
    row(
        out,
        "density",
        &format!(
            "{:.0} to {:.0} kg/m³, likely {:.0}",
            d.low, d.high, d.likely
        ),
    );
    if let TopState::DoesNotFit(_) = weighing.top {
        row(
            out,
            "place",
            "the top does not fit this slab: it is weighed as wanted",
        );
    }
}

fn findings(out: &mut String, word: &str, findings: &[Finding]) {
    for finding in findings {
        let _ = writeln!(out, "\n{word}: {} [{}]", finding.title, finding.id);
        let _ = writeln!(out, "  {}\n  Source: {}", finding.detail, finding.source);
    }
}

fn stone(out: &mut String, units: Both, piece: &Piece, area_mm2: f64, thickest_mm: f64) {
    let _ = writeln!(out, "\n{}", piece.name.to_uppercase());
    let [low, likely, high] = kg_and_lb(&piece.mass);
    row(out, "weighs", &format!("likely {likely}"));
    row(out, "at least", &low);
    row(out, "at most", &format!("{high}: lift with this one"));
    let sides = [piece.length_mm, piece.width_mm, thickest_mm];
    let mm = sides.map(|s| format!("{s:.0}")).join(" × ");
    let inches = sides.map(|s| format!("{:.1}", s / MM_PER_INCH)).join(" × ");
    row(
        out,
        "size",
        &format!("{mm} mm ({inches} in), {}", area(area_mm2)),
    );
    let ([along, across], [first, _]) = (from_the_corner(piece), piece.base_line);
    row(
        out,
        "balance point",
        &format!(
            "{} from the end, {} from the side that meet at x {:.0}, y {:.0} mm",
            both(along),
            both(across),
            tidy(first.x),
            tidy(first.y)
        ),
    );
    people(out, units, piece);
    row(out, "by hand", &verdict_words(piece, units));
    row(out, "tilting up", &tilting(&piece.tilts));
}

/// Who carries what.
fn people(out: &mut String, units: Both, piece: &Piece) {
    for lifter in &piece.lift.lifters {
        let limit = lifter.limit.map_or_else(String::new, |m| {
            format!("; guideline in this team {}", units.mass(m))
        });
        let told = format!(
            "{} at {} from the end, {} from the side{limit}",
            units.share(lifter.share),
            both(lifter.from_end_mm),
            both(lifter.from_side_mm)
        );
        row(out, &format!("person {}", lifter.number), &told);
    }
}

/// Low, likely and high mass in both units.
fn kg_and_lb(mass: &MassRange) -> [String; 3] {
    [mass.low, mass.likely, mass.high].map(|m| format!("{:.1} kg ({:.1} lb)", m.kg(), m.pounds()))
}

/// A length in both units.
fn both(mm: f64) -> String {
    format!("{mm:.0} mm ({:.1} in)", mm / MM_PER_INCH)
}

/// No minus sign in front of what rounds to nothing.
fn tidy(mm: f64) -> f64 {
    if mm.abs() < 0.5 { 0.0 } else { mm }
}

/// The balance point from the end and the side that meet at the base line's first end, mm.
fn from_the_corner(piece: &Piece) -> [f64; 2] {
    let [first, second] = piece.base_line;
    let (along, off) = ((second - first).unit(), piece.balance - first);
    [off.dot(along), off.dot(along.left())]
}

fn tilting([a, b]: &[Tilt; 2]) -> String {
    let heavier = a.lifted.kg().max(b.lifted.kg());
    let mass = Mass::from_kg(heavier);
    format!(
        "on edge takes up to {:.1} kg ({:.1} lb) at the far side",
        mass.kg(),
        mass.pounds()
    )
}

fn assumed(out: &mut String, weighing: &Weighing) {
    if weighing.assumed.is_empty() {
        return;
    }
    let _ = writeln!(out, "\nASSUMED");
    for a in &weighing.assumed {
        let _ = writeln!(out, "  {} = {} ({})", a.key, a.value, a.why);
    }
}
