//! The disc as a solid, moved through the strokes of one cut; core holes as cylinders; run-outs as a hand
//! takes them out.

use serde_json::Value;

use super::plane::{Place, Stone, circle, list, moved, number, place, word};

/// One movement of the disc.
#[derive(Clone, Debug)]
pub(crate) struct Stroke {
    pub(crate) pass: usize,
    pub(crate) plunge: bool,
    pub(crate) from: Place,
    pub(crate) to: Place,
    pub(crate) along: Place,
    pub(crate) depth: f64,
    diameter: f64,
    kerf: f64,
}

/// The strokes of a cut in their order.
pub(crate) fn strokes(cut: &Value) -> Vec<Stroke> {
    if list(cut, "strokes").is_empty() {
        return Vec::new();
    }
    let disc = &cut["disc"];
    list(cut, "strokes")
        .iter()
        .map(|stroke| {
            let heading = number(stroke, "heading").to_radians();
            Stroke {
                pass: number(stroke, "pass") as usize,
                plunge: word(stroke, "kind") == "plunge",
                from: place(&stroke["from"]),
                to: place(&stroke["to"]),
                along: [heading.cos(), heading.sin()],
                depth: number(stroke, "depth"),
                diameter: number(disc, "diameter"),
                kerf: number(disc, "kerf"),
            }
        })
        .collect()
}

impl Stroke {
    /// Half the length that the disc has cut at `below` mm under the face; nothing above its rim.
    /// Once its centre has gone past, that is its radius.
    pub(crate) fn half_length(&self, below: f64) -> Option<f64> {
        let radius = self.diameter / 2.0;
        let sunk = (self.depth - below).min(radius);
        (sunk > 0.0).then(|| (radius * radius - (radius - sunk).powi(2)).sqrt())
    }

    /// The rectangle taken out at `below` mm under the face.
    pub(crate) fn slot(&self, below: f64) -> Option<Stone> {
        let half = self.half_length(below)?;
        let side = [-self.along[1], self.along[0]];
        let (a, b) = (
            moved(self.from, self.along, -half),
            moved(self.to, self.along, half),
        );
        let wide = self.kerf / 2.0;
        Some(Stone::ring(&[
            moved(a, side, -wide),
            moved(b, side, -wide),
            moved(b, side, wide),
            moved(a, side, wide),
        ]))
    }
}

/// Everything that strokes take out at one depth.
pub(crate) fn taken(strokes: &[Stroke], below: f64) -> Stone {
    Stone::all(strokes.iter().filter_map(|s| s.slot(below)))
}

/// A core hole: the same at every depth.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Hole {
    pub(crate) at: Place,
    pub(crate) radius: f64,
}

/// The core holes of a cut.
pub(crate) fn holes(cut: &Value) -> Vec<Hole> {
    let hole = |h: &Value| Hole {
        at: place(&h["at"]),
        radius: number(h, "diameter_mm") / 2.0,
    };
    list(cut, "holes").iter().map(hole).collect()
}

/// What holes take out of the stone.
pub(crate) fn drilled(holes: &[Hole]) -> Stone {
    Stone::all(holes.iter().map(|h| Stone::ring(&circle(h.at, h.radius))))
}

/// Stone under a stopped end that a hand takes out, one kerf wide.
#[derive(Clone, Copy, Debug)]
pub(crate) struct RunOut {
    pub(crate) at: Place,
    pub(crate) along: Place,
    pub(crate) length: f64,
    pub(crate) left: f64,
    pub(crate) kerf: f64,
}

/// The run-outs of a cut.
pub(crate) fn run_outs(cut: &Value) -> Vec<RunOut> {
    let run_out = |left: &Value| {
        let heading = number(left, "heading_deg").to_radians();
        RunOut {
            at: place(&left["at"]),
            along: [heading.cos(), heading.sin()],
            length: number(left, "length"),
            left: number(left, "left_mm"),
            kerf: number(&cut["disc"], "kerf"),
        }
    };
    let all = list(cut, "left_to_remove").iter();
    all.filter(|l| word(l, "why") == "tail")
        .map(run_out)
        .collect()
}

impl RunOut {
    /// The same in a narrower kerf about the same middle.
    pub(crate) fn narrowed(&self, kerf: f64) -> Self {
        Self { kerf, ..*self }
    }

    /// Its rectangle, which begins `back` mm before the run-out does.
    pub(crate) fn slot(&self, back: f64) -> Stone {
        let side = [-self.along[1], self.along[0]];
        let (a, b) = (moved(self.at, self.along, -self.length - back), self.at);
        let wide = self.kerf / 2.0;
        Stone::ring(&[
            moved(a, side, -wide),
            moved(b, side, -wide),
            moved(b, side, wide),
            moved(a, side, wide),
        ])
    }
}
