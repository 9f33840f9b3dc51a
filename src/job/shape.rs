//! Figures with named corners and edges: the slab, the top, its cutouts and its base.

mod grow;
mod part;
mod trace;

use crate::geom::{Line, Outline, Point, Pose, Seg};

pub use grow::GrowFault;
pub use part::{CornerCut, Naming, Part, ShapeFault};
use trace::Sharp;
pub(super) use trace::{STRAIGHT, short_edges, turn_at};

/// A closed figure whose corners and edges have names.
#[derive(Clone, Debug)]
pub struct Shape {
    naming: Naming,
    corners: Vec<Point>,
    cuts: Vec<CornerCut>,
    bows: Vec<f64>,
    outline: Outline,
    parts: Vec<Part>,
}

impl Shape {
    /// A figure of straight edges from its corners, counter-clockwise, and what is done to each.
    ///
    /// # Errors
    /// See [`ShapeFault`]. `cuts` must have one entry for each corner.
    pub fn new(
        naming: Naming,
        corners: Vec<Point>,
        cuts: Vec<CornerCut>,
    ) -> Result<Self, ShapeFault> {
        let bows = vec![0.0; corners.len()];
        Self::bowed(naming, corners, cuts, bows)
    }

    /// A figure whose edges are arcs rising `bows[i]` mm over their chords: outwards when positive,
    /// inwards when negative, straight when 0.
    ///
    /// # Errors
    /// See [`ShapeFault`]. `cuts` and `bows` must have one entry for each corner.
    pub fn bowed(
        naming: Naming,
        corners: Vec<Point>,
        cuts: Vec<CornerCut>,
        bows: Vec<f64>,
    ) -> Result<Self, ShapeFault> {
        let sharp = Sharp::new(&corners, &bows)?;
        let (segs, parts) = sharp.trimmed(&cuts)?;
        let outline = Outline::new(segs).map_err(ShapeFault::Finished)?;
        Ok(Self {
            naming,
            corners,
            cuts,
            bows,
            outline,
            parts,
        })
    }

    /// A circle: the square around it with every corner rounded by half its side, corner 1 at the
    /// origin.
    ///
    /// # Errors
    /// See [`ShapeFault`]: the diameter, in mm, must be positive and finite.
    pub fn circle(naming: Naming, across_mm: f64) -> Result<Self, ShapeFault> {
        let d = across_mm;
        let corners = [(0.0, 0.0), (d, 0.0), (d, d), (0.0, d)].map(|(x, y)| Point::new(x, y));
        Self::new(naming, corners.to_vec(), vec![CornerCut::Round(d / 2.0); 4])
    }

    /// The whole circle that the figure is: its centre and its radius in mm.
    #[must_use]
    pub fn as_circle(&self) -> Option<(Point, f64)> {
        let mut arcs = self.outline.segs().iter().map(|s| match s {
            Seg::Arc(arc) if arc.sweep > 0.0 => Some((arc.centre, arc.radius)),
            _ => None,
        });
        let (centre, radius) = arcs.next()??;
        let same = |(c, r): (Point, f64)| {
            c.distance(centre) <= crate::geom::SAME_MM && (r - radius).abs() <= crate::geom::SAME_MM
        };
        arcs.all(|arc| arc.is_some_and(same))
            .then_some((centre, radius))
    }

    /// How its corners and edges are named.
    #[must_use]
    pub const fn naming(&self) -> Naming {
        self.naming
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

    /// The rise of each edge over its chord, mm: + outwards, − inwards, 0 straight.
    #[must_use]
    pub fn bows(&self) -> &[f64] {
        &self.bows
    }

    /// True when an edge is a straight one.
    #[must_use]
    pub fn is_straight(&self, edge: usize) -> bool {
        self.bows[edge] == 0.0
    }

    /// True at an inside corner: the figure lies on more than half of the way round it.
    #[must_use]
    pub fn is_inside_corner(&self, corner: usize) -> bool {
        trace::turn_at(&self.corners, &self.bows, corner) < -trace::STRAIGHT
    }

    /// How many corners, and edges, there are.
    #[must_use]
    pub fn count(&self) -> usize {
        self.corners.len()
    }

    /// The infinite line through the ends of an edge, running counter-clockwise: the edge itself when
    /// it is straight, its chord when it is bowed. It exists even when roundings have used up the
    /// whole edge.
    #[must_use]
    pub fn edge_line(&self, edge: usize) -> Line {
        Line::through(self.corners[edge], self.corners[(edge + 1) % self.count()])
    }

    /// The length of an edge between the sharp corners, mm.
    #[must_use]
    pub fn edge_length(&self, edge: usize) -> f64 {
        self.corners[edge].distance(self.corners[(edge + 1) % self.count()])
    }

    /// What is left of an edge between its corners' treatments, if anything: a straight piece, or an
    /// arc when the edge is bowed.
    #[must_use]
    pub fn edge_seg(&self, edge: usize) -> Option<Seg> {
        self.piece_of(Part::Edge(edge))
    }

    /// The arc, hollow or flat at a corner, if any.
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
