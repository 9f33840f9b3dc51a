//! What the saw should leave, derived from the finished top and the finishes alone.

use serde_json::Value;

use super::plane::{Piece, Place, Stone, apart, list, moved, number, on_circle, pieces, word};

/// Larger than any slab, mm.
const FAR: f64 = 1e4;

/// Wider than what rounding leaves between two areas that share a side, mm.
const RAY_MM: f64 = 2e-4;

/// What the saw should leave: the sawn outline and the openings as they are sawn.
pub(crate) fn kept(plan: &Value) -> Stone {
    let outline = if is_convex(plan) {
        outline(plan)
    } else {
        Stone::outline(&plan["top"]["sawn_outline"])
    };
    let openings = list(&plan["top"], "cutouts").iter().enumerate();
    openings.fold(outline, |stone, (i, opening)| {
        // Where some sides have been cut already, the plan says what is left on each.
        let begun = &list(&plan["top"], "openings")[i]["sawn"];
        if !begun.is_null() {
            return stone.minus(&Stone::outline(begun));
        }
        stone.minus(&opened(opening).shrunk(left_in_opening(plan, i + 1)))
    })
}

/// The finished top.
pub(crate) fn finished(plan: &Value) -> Stone {
    let openings = list(&plan["top"], "cutouts").iter();
    openings.fold(Stone::outline(&plan["top"]["outline"]), |stone, opening| {
        stone.minus(&opened(opening))
    })
}

/// An opening, written clockwise, as an area.
fn opened(opening: &Value) -> Stone {
    Stone::outline(opening)
}

/// The stone left in an opening by the cuts that make it; nothing when none does.
fn left_in_opening(plan: &Value, number_of: usize) -> f64 {
    let cuts = list(plan, "cuts").iter();
    let mut own = cuts.filter(|c| c["cutout"].as_u64() == Some(number_of as u64));
    own.next().map_or(0.0, |c| number(c, "allowance"))
}

/// No inside corner, no hollow arc and no bowed edge.
fn is_convex(plan: &Value) -> bool {
    let bowed = list(&plan["top"], "parts")
        .iter()
        .zip(pieces(&plan["top"]["outline"]));
    let is_bow = |(part, piece): (&Value, Piece)| {
        word(part, "name").contains('-') && matches!(piece, Piece::Arc(..))
    };
    if bowed.into_iter().any(is_bow) {
        return false;
    }
    let pieces = pieces(&plan["top"]["outline"]);
    let hollow = |p: &Piece| matches!(p, Piece::Arc(_, _, _, sweep) if *sweep < 0.0);
    let turns_right = |i: usize| {
        let (a, b) = (&pieces[i], &pieces[(i + 1) % pieces.len()]);
        let (u, v) = (heading(a, 1.0), heading(b, 0.0));
        u[0] * v[1] - u[1] * v[0] < -1e-6
    };
    !pieces.iter().any(hollow) && !(0..pieces.len()).any(turns_right)
}

/// Direction of travel at a share of the way.
fn heading(piece: &Piece, share: f64) -> Place {
    match *piece {
        Piece::Line(a, b) => {
            let long = apart(a, b);
            [(b[0] - a[0]) / long, (b[1] - a[1]) / long]
        }
        Piece::Arc(_, _, start, sweep) => {
            let angle = start + sweep * share;
            [-angle.sin() * sweep.signum(), angle.cos() * sweep.signum()]
        }
    }
}

fn at(piece: &Piece, share: f64) -> Place {
    match *piece {
        Piece::Line(a, b) => [0, 1].map(|k| a[k] + (b[k] - a[k]) * share),
        Piece::Arc(centre, radius, start, sweep) => {
            on_circle(centre, radius, start + sweep * share)
        }
    }
}

/// What is wrong with the planner's sawn outline. A top without inside corners is grown here; any other
/// is probed: the outline holds the top, and opposite every piece it runs at its allowance.
pub(crate) fn faults(plan: &Value) -> Vec<String> {
    let said = Stone::outline(&plan["top"]["sawn_outline"]);
    if is_convex(plan) {
        let grown = outline(plan);
        let off = said.unlike(&grown).area();
        let wrong = off > 2.0 * super::plane::CHORD_MM * grown.perimeter();
        let words =
            format!("the sawn outline is not the top and its allowances: {off:.3} mm² differ");
        return wrong.then_some(words).into_iter().collect();
    }
    let top = Stone::outline(&plan["top"]["outline"]);
    let mut faults = Vec::new();
    let lost = top.minus(&said).area();
    if lost > super::NEAR_MM * top.perimeter() {
        faults.push(format!(
            "the sawn outline leaves out {lost:.3} mm² of the top"
        ));
    }
    let mut most = top.area();
    for piece in pieces(&plan["top"]["outline"]) {
        let by = allowance(plan, &piece);
        for i in 1..8 {
            let share = f64::from(i) / 8.0;
            let along = heading(&piece, share);
            let p = moved(at(&piece, share), [along[1], -along[0]], by);
            // Near a corner the neighbour's allowance may cover it.
            let on =
                said.to_boundary(p) <= super::NEAR_MM || said.holds(p) || beyond_another(plan, p);
            if !on {
                faults.push(format!("the sawn outline is not {by} mm from {piece:?}"));
                break;
            }
        }
        let length: f64 = super::plane::chords(&piece).len() as f64;
        most += (by + super::NEAR_MM) * length_of(&piece) + 4.0 * by * by + length * 1e-6;
    }
    if said.area() > most {
        faults.push(format!(
            "the sawn outline has {:.2} mm² too many",
            said.area() - most
        ));
    }
    faults
}

/// Whether a place lies off the sawn face of some straight edge: the face of a neighbour with a smaller
/// allowance takes the end off an arc.
fn beyond_another(plan: &Value, p: Place) -> bool {
    pieces(&plan["top"]["outline"]).iter().any(|piece| {
        let Piece::Line(a, b) = *piece else {
            return false;
        };
        let along = heading(piece, 0.0);
        let out = (p[0] - a[0]) * along[1] - (p[1] - a[1]) * along[0];
        let foot = (p[0] - a[0]) * along[0] + (p[1] - a[1]) * along[1];
        let beside = foot > -100.0 && foot < apart(a, b) + 100.0;
        beside && out >= allowance(plan, piece) - super::NEAR_MM
    })
}

fn length_of(piece: &Piece) -> f64 {
    match *piece {
        Piece::Line(a, b) => apart(a, b),
        Piece::Arc(_, radius, _, sweep) => radius * sweep.abs(),
    }
}

/// The finished top with every piece's allowance added, for a top without inside corners: the
/// stone on the kept side of every straight face and not beyond any sawn arc.
fn outline(plan: &Value) -> Stone {
    let top = &plan["top"];
    let middle = Stone::outline(&top["outline"]).balance();
    let big: Vec<Place> = (0..4)
        .map(|i| {
            on_circle(
                middle,
                FAR,
                f64::from(i) * std::f64::consts::FRAC_PI_2 + 0.4,
            )
        })
        .collect();
    let mut kept = Stone::ring(&big);
    for piece in pieces(&top["outline"]) {
        kept = kept.minus(&beyond(&piece, allowance(plan, &piece)));
    }
    // Between two arcs that meet a ray of no width is left standing.
    kept.shrunk(RAY_MM).shrunk(-RAY_MM)
}

/// The stone beyond one piece of the outline moved out by its allowance.
fn beyond(piece: &Piece, by: f64) -> Stone {
    match *piece {
        Piece::Line(a, b) => {
            let long = apart(a, b);
            let along = [(b[0] - a[0]) / long, (b[1] - a[1]) / long];
            let out = [along[1], -along[0]];
            let face = moved(a, out, by);
            let ends = [
                moved(face, along, -2.0 * FAR),
                moved(face, along, 2.0 * FAR),
            ];
            Stone::ring(&[
                ends[0],
                ends[1],
                moved(ends[1], out, 4.0 * FAR),
                moved(ends[0], out, 4.0 * FAR),
            ])
        }
        Piece::Arc(centre, radius, start, sweep) => {
            let grown = Piece::Arc(centre, radius + by, start, sweep);
            let mut ring = super::plane::chords(&grown);
            ring.push(on_circle(centre, radius + by, start + sweep));
            // Round the outside in steps small enough to stay clear of the top.
            for i in 0..=8_u32 {
                let angle = start + sweep * (1.0 - f64::from(i) / 8.0);
                ring.push(on_circle(centre, 2.0 * FAR, angle));
            }
            Stone::ring(&ring)
        }
    }
}

/// The allowance on a piece: that of its edge, or at a corner that of the cut that makes it; where none
/// does, what the plan says is on it.
fn allowance(plan: &Value, piece: &Piece) -> f64 {
    let top = &plan["top"];
    let found = pieces(&top["outline"]).iter().position(|p| same(p, piece));
    let part = &list(top, "parts")[found.expect("a piece of the outline")];
    let name = word(part, "name");
    if let Some(edge) = list(top, "edges").iter().find(|e| word(e, "name") == name) {
        return number(edge, "allowance_mm");
    }
    let mut cuts = list(plan, "cuts").iter();
    let makes = |c: &&Value| {
        let kind = word(c, "kind");
        c["cutout"].is_null() && kind != "core" && kind != "relief" && word(c, "edge") == name
    };
    cuts.find(makes)
        .map_or_else(|| number(part, "allowance_mm"), |c| number(c, "allowance"))
}

fn same(a: &Piece, b: &Piece) -> bool {
    [0.0, 0.5, 1.0]
        .iter()
        .all(|s| apart(at(a, *s), at(b, *s)) < 1e-9)
}
