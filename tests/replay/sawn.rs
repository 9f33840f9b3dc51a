//! What the saw should leave, derived from the finished top and the finishes alone.

use serde_json::Value;

use super::plane::{
    Piece, Place, Stone, apart, list, moved, number, on_circle, pieces, place, word,
};

/// Larger than any slab, mm.
const FAR: f64 = 1e4;

/// The finished top with every piece's allowance added, for a top without inside corners: the
/// stone on the kept side of every straight face and not beyond any sawn arc.
pub(crate) fn outline(plan: &Value) -> Stone {
    let top = &plan["top"];
    let middle = place(&top["balance"]);
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
    kept
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

/// The allowance on a piece: that of its edge, or at a corner the larger of its two finishes'.
fn allowance(plan: &Value, piece: &Piece) -> f64 {
    let top = &plan["top"];
    let corners: Vec<Place> = list(top, "corners")
        .iter()
        .map(|c| place(&c["at"]))
        .collect();
    let edges = list(top, "edges");
    let n = corners.len();
    if let Piece::Line(a, b) = *piece {
        let on = |i: usize, p: Place| {
            super::plane::to_stretch(p, corners[i], corners[(i + 1) % n]) < 1e-6
        };
        if let Some(edge) = (0..n).find(|i| on(*i, a) && on(*i, b)) {
            return number(&edges[edge], "allowance");
        }
    }
    let middle = match *piece {
        Piece::Line(a, b) => [f64::midpoint(a[0], b[0]), f64::midpoint(a[1], b[1])],
        Piece::Arc(centre, radius, start, sweep) => on_circle(centre, radius, start + sweep / 2.0),
    };
    let corner = (0..n)
        .min_by(|i, j| apart(corners[*i], middle).total_cmp(&apart(corners[*j], middle)))
        .expect("a top has corners");
    let name = word(&top["corners"][corner], "name");
    let cut = list(plan, "cuts").iter().find(|c| word(c, "edge") == name);
    let of = |edge: usize| number(&edges[edge % n], "allowance");
    cut.map_or_else(
        || of(corner).max(of(corner + n - 1)),
        |c| number(c, "allowance"),
    )
}
