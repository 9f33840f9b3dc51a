//! What a drawing holds: elements with their names.

use super::affine::Affine;
use super::bit::Bit;
use crate::geom::Seg;

/// The most elements that are looked at (judgement).
pub(super) const MOST_ELEMENTS: usize = 20_000;

/// A drawing as read, in its own unit, y upwards.
#[derive(Clone, Debug, Default)]
pub(in crate::job) struct Drawing {
    /// Its lines.
    pub(super) pieces: Vec<DrawnPath>,
    /// Elements that are not read, and why.
    pub(super) refused: Vec<Refused>,
    /// Millimetres in its unit, when it says so.
    pub(in crate::job) unit_mm: Option<f64>,
}

/// An element of a drawing.
#[derive(Clone, Debug)]
pub(super) struct DrawnPath {
    /// How it is called in messages: `<path id="top">`, `LINE on layer cut`.
    pub(super) name: String,
    /// The names by which it can be asked for: its own and those of what holds it.
    pub(super) ids: Vec<String>,
    /// Its parts, end to end.
    pub(super) bits: Vec<Bit>,
    /// Whether it says that it is closed.
    pub(super) closed: bool,
}

/// An element that is not read.
#[derive(Clone, Debug)]
pub(super) struct Refused {
    pub(super) name: String,
    pub(super) ids: Vec<String>,
    pub(super) why: &'static str,
}

impl Drawing {
    /// The length of a straight line of a name, in the drawing's unit.
    pub(in crate::job) fn mark_length(&self, name: &str) -> Option<f64> {
        let marked = |p: &&DrawnPath| p.ids.iter().any(|id| id == name);
        match self.pieces.iter().find(marked)?.bits[..] {
            [Bit::Seg(Seg::Line(a, b))] => Some(a.distance(b)),
            _ => None,
        }
    }

    /// The names that can be asked for, the first dozen.
    pub(super) fn names(&self) -> String {
        let mut names: Vec<&str> = Vec::new();
        for id in self.pieces.iter().flat_map(|p| &p.ids) {
            if !names.contains(&id.as_str()) && names.len() < 12 {
                names.push(id);
            }
        }
        if names.is_empty() {
            return "no name in it".to_owned();
        }
        names.join(", ")
    }

    pub(super) fn add(&mut self, name: String, ids: Vec<String>, (bits, closed): (Vec<Bit>, bool)) {
        if !bits.is_empty() {
            self.pieces.push(DrawnPath {
                name,
                ids,
                bits,
                closed,
            });
        }
    }

    pub(super) fn refuse(&mut self, name: String, ids: Vec<String>, why: &'static str) {
        self.refused.push(Refused { name, ids, why });
    }
}

impl DrawnPath {
    pub(super) fn scaled(&self, by: f64) -> Self {
        let to = Affine::scale(by, by);
        Self {
            bits: self.bits.iter().flat_map(|bit| bit.moved(&to)).collect(),
            ..self.clone()
        }
    }
}
