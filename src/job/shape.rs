//! Figures with named corners and edges: the slab and the top.

use crate::geom::{Arc, Line, Outline, OutlineFault, Point, Pose, Seg};

/// How corners and edges are named.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Naming {
    /// Corners A, B, C …, edges AB, BC …: the slab.
    Letters,
    /// Corners 1, 2, 3 …, edges 1-2, 2-3 …: the top.
    Numbers,
}

/// What is done to a corner of the straight-sided figure.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum CornerCut {
    /// Left sharp.
    Sharp,
    /// Rounded by an arc of a radius in mm, tangent to both edges.
    Round(f64),
    /// A flat across it, set back along both edges by this many mm.
    Clip(f64),
}

/// Which corner or edge a piece of the outline belongs to, counted from 0.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Part {
    /// The straight piece of the edge from corner `i` to the next.
    Edge(usize),
    /// The arc or flat at corner `i`.
    Corner(usize),
}

/// A closed figure whose corners and edges have names.
#[derive(Clone, Debug)]
pub struct Shape {
    naming: Naming,
    corners: Vec<Point>,
    cuts: Vec<CornerCut>,
    outline: Outline,
    parts: Vec<Part>,
}

/// Why a figure cannot be made. Corners and edges are counted from 0.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum ShapeFault {
    /// Corners run clockwise.
    Clockwise,
    /// The straight-sided figure is not an outline.
    Figure(OutlineFault),
    /// The treatments of an edge's two ends need more than its length.
    EdgeTooShort {
        /// The edge.
        edge: usize,
        /// Its length, mm.
        length_mm: f64,
        /// What its two ends need, mm.
        needed_mm: f64,
    },
    /// The finished figure is not an outline.
    Finished(OutlineFault),
}

impl Shape {
    /// A figure from its corners, counter-clockwise, and what is done to each.
    ///
    /// # Errors
    /// See [`ShapeFault`]. `cuts` must have one entry for each corner.
    pub fn new(
        naming: Naming,
        corners: Vec<Point>,
        cuts: Vec<CornerCut>,
    ) -> Result<Self, ShapeFault> {
        let sharp = Outline::polygon(&corners).map_err(ShapeFault::Figure)?;
        if sharp.segs()[0].end() != corners[1] {
            return Err(ShapeFault::Clockwise);
        }
        let n = corners.len();
        let set_backs: Vec<f64> = (0..n).map(|i| set_back(&corners, i, cuts[i])).collect();
        if let Some(&(edge, length_mm, needed_mm)) = short_edges(&corners, &cuts).first() {
            return Err(ShapeFault::EdgeTooShort {
                edge,
                length_mm,
                needed_mm,
            });
        }
        let (segs, parts) = pieces(&corners, &cuts, &set_backs);
        let outline = Outline::new(segs).map_err(ShapeFault::Finished)?;
        Ok(Self {
            naming,
            corners,
            cuts,
            outline,
            parts,
        })
    }

    /// The finished outline.
    #[must_use]
    pub fn outline(&self) -> &Outline {
        &self.outline
    }

    /// What each piece of the outline belongs to, in the outline's order.
    #[must_use]
    pub fn parts(&self) -> &[Part] {
        &self.parts
    }

    /// The corners of the straight-sided figure, before rounding.
    #[must_use]
    pub fn corners(&self) -> &[Point] {
        &self.corners
    }

    /// What was done to each corner.
    #[must_use]
    pub fn corner_cuts(&self) -> &[CornerCut] {
        &self.cuts
    }

    /// How many corners, and edges, there are.
    #[must_use]
    pub fn count(&self) -> usize {
        self.corners.len()
    }

    /// The infinite line of an edge, running counter-clockwise; it exists even when roundings
    /// have used up the whole edge.
    #[must_use]
    pub fn edge_line(&self, edge: usize) -> Line {
        Line::through(self.corners[edge], self.corners[(edge + 1) % self.count()])
    }

    /// The length of an edge between the sharp corners, mm.
    #[must_use]
    pub fn edge_length(&self, edge: usize) -> f64 {
        self.corners[edge].distance(self.corners[(edge + 1) % self.count()])
    }

    /// The straight piece left of an edge, if any.
    #[must_use]
    pub fn edge_seg(&self, edge: usize) -> Option<Seg> {
        self.piece_of(Part::Edge(edge))
    }

    /// The arc or flat at a corner, if any.
    #[must_use]
    pub fn corner_seg(&self, corner: usize) -> Option<Seg> {
        self.piece_of(Part::Corner(corner))
    }

    /// Name of a corner: `A` or `1`.
    #[must_use]
    pub fn corner_name(&self, corner: usize) -> String {
        corner_name(self.naming, corner)
    }

    /// Name of an edge: `AB` or `1-2`.
    #[must_use]
    pub fn edge_name(&self, edge: usize) -> String {
        edge_name(self.naming, edge, self.count())
    }

    /// Name of the edge or corner a piece belongs to.
    #[must_use]
    pub fn part_name(&self, part: Part) -> String {
        match part {
            Part::Edge(i) => self.edge_name(i),
            Part::Corner(i) => self.corner_name(i),
        }
    }

    /// The figure carried along by a pose.
    #[must_use]
    pub fn posed(&self, pose: Pose) -> Self {
        Self {
            corners: self.corners.iter().map(|c| pose.apply(*c)).collect(),
            outline: self.outline.posed(pose),
            ..self.clone()
        }
    }

    fn piece_of(&self, part: Part) -> Option<Seg> {
        let i = self.parts.iter().position(|p| *p == part)?;
        Some(self.outline.segs()[i])
    }
}

/// Name of a corner counted from 0: `A`, `B` … `Z`, `AA` …, or `1`, `2` ….
#[must_use]
pub fn corner_name(naming: Naming, corner: usize) -> String {
    match naming {
        Naming::Numbers => (corner + 1).to_string(),
        Naming::Letters => letters(corner),
    }
}

/// Name of the edge from corner `edge` to the next of `count`: `AB` or `1-2`.
#[must_use]
pub fn edge_name(naming: Naming, edge: usize, count: usize) -> String {
    let (a, b) = (
        corner_name(naming, edge),
        corner_name(naming, (edge + 1) % count),
    );
    match naming {
        Naming::Letters => format!("{a}{b}"),
        Naming::Numbers => format!("{a}-{b}"),
    }
}

/// `A` to `Z`, then `AA`, `AB` ….
#[must_use]
pub fn letters(index: usize) -> String {
    let last = char::from(b'A' + u8::try_from(index % 26).unwrap_or(0));
    match index / 26 {
        0 => last.to_string(),
        more => format!("{}{last}", letters(more - 1)),
    }
}

/// Every edge that is too short for the treatments of its two ends: the edge counted from 0, its
/// length and what its ends need, mm.
pub(super) fn short_edges(corners: &[Point], cuts: &[CornerCut]) -> Vec<(usize, f64, f64)> {
    let n = corners.len();
    let back = |i: usize| set_back(corners, i, cuts[i]);
    (0..n)
        .map(|edge| {
            let next = (edge + 1) % n;
            let length_mm = corners[edge].distance(corners[next]);
            (edge, length_mm, back(edge) + back(next))
        })
        .filter(|(_, length_mm, needed_mm)| *needed_mm > length_mm + crate::geom::SAME_MM)
        .collect()
}

/// How far along each of its edges a corner's treatment reaches, mm.
fn set_back(corners: &[Point], corner: usize, cut: CornerCut) -> f64 {
    match cut {
        CornerCut::Sharp => 0.0,
        CornerCut::Clip(back) => back,
        CornerCut::Round(radius) => radius * (turn_at(corners, corner) / 2.0).tan().abs(),
    }
}

/// The change of direction at a corner, radians, positive to the left.
pub(super) fn turn_at(corners: &[Point], corner: usize) -> f64 {
    let n = corners.len();
    let inward = corners[corner] - corners[(corner + n - 1) % n];
    let onward = corners[(corner + 1) % n] - corners[corner];
    inward.cross(onward).atan2(inward.dot(onward))
}

fn pieces(corners: &[Point], cuts: &[CornerCut], set_backs: &[f64]) -> (Vec<Seg>, Vec<Part>) {
    let n = corners.len();
    let along = |i: usize| Line::through(corners[i], corners[(i + 1) % n]).along;
    let arrive = |i: usize| corners[i] - along((i + n - 1) % n) * set_backs[i];
    let leave = |i: usize| corners[i] + along(i) * set_backs[i];
    let mut segs = Vec::new();
    let mut parts = Vec::new();
    for (i, cut) in cuts.iter().enumerate().take(n) {
        let (from, to) = (arrive(i), leave(i));
        let piece = match *cut {
            CornerCut::Sharp => None,
            CornerCut::Clip(_) => Some(Seg::Line(from, to)),
            CornerCut::Round(radius) => {
                let turn = turn_at(corners, i);
                let side = along((i + n - 1) % n).left() * turn.signum();
                Some(Seg::Arc(Arc {
                    centre: from + side * radius,
                    radius,
                    start: (-side).angle(),
                    sweep: turn,
                }))
            }
        };
        segs.extend(piece);
        parts.extend(piece.map(|_| Part::Corner(i)));
        let edge = Seg::Line(to, arrive((i + 1) % n));
        // An edge wholly used up by its two ends is only rounding wide.
        if edge.length() > crate::geom::SAME_MM {
            segs.push(edge);
            parts.push(Part::Edge(i));
        }
    }
    (segs, parts)
}
