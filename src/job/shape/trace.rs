//! From sharp corners and bowed edges to the pieces of the finished outline.

use super::part::{CornerCut, Part, ShapeFault};
use crate::geom::{Arc, Line, Outline, Point, SAME_MM, Seg, Vector};

/// A change of direction smaller than this is none, radians (far below what a tape can tell).
pub(in crate::job) const STRAIGHT: f64 = 1e-6;

/// The figure before anything is done to its corners: one line or arc for each edge.
pub(in crate::job) struct Sharp<'a> {
    corners: &'a [Point],
    bows: &'a [f64],
    edges: Vec<Seg>,
}

/// What the treatment of a corner takes of its two edges, and the piece between the two.
struct Treatment {
    /// Share of the edge before the corner that is left; below 0 when it takes too much.
    arrive: f64,
    /// Share of the edge after the corner that it takes; above 1 when it takes too much.
    leave: f64,
    /// Where the edge before ends.
    from: Point,
    /// Where the edge after begins.
    to: Point,
    piece: Option<Seg>,
}

impl<'a> Sharp<'a> {
    /// The edges of a figure: straight, or arcs over their chords.
    ///
    /// # Errors
    /// [`ShapeFault::BowTooHigh`], [`ShapeFault::Figure`] or [`ShapeFault::Clockwise`].
    pub(in crate::job) fn new(corners: &'a [Point], bows: &'a [f64]) -> Result<Self, ShapeFault> {
        let straight = Outline::polygon(corners).map_err(ShapeFault::Figure)?;
        if straight.segs()[0].end() != corners[1] {
            return Err(ShapeFault::Clockwise);
        }
        let n = corners.len();
        let edge = |i: usize| bowed_edge(corners[i], corners[(i + 1) % n], bows[i]);
        let edges: Vec<Option<Seg>> = (0..n).map(edge).collect();
        if let Some(edge) = edges.iter().position(Option::is_none) {
            let half_mm = straight.segs()[edge].length() / 2.0;
            return Err(ShapeFault::BowTooHigh { edge, half_mm });
        }
        Ok(Self {
            corners,
            bows,
            edges: edges.into_iter().flatten().collect(),
        })
    }

    /// The edges between the sharp corners.
    pub(super) fn edges(&self) -> &[Seg] {
        &self.edges
    }

    /// The pieces of the finished outline and what each belongs to.
    ///
    /// # Errors
    /// [`ShapeFault::NoRound`] or [`ShapeFault::EdgeTooShort`].
    pub(super) fn trimmed(&self, cuts: &[CornerCut]) -> Result<(Vec<Seg>, Vec<Part>), ShapeFault> {
        let n = self.corners.len();
        let treatments = self.treatments(cuts)?;
        if let Some(&(edge, length_mm, needed_mm)) = self.too_short(&treatments).first() {
            return Err(ShapeFault::EdgeTooShort {
                edge,
                length_mm,
                needed_mm,
            });
        }
        let (mut segs, mut parts) = (Vec::new(), Vec::new());
        for (i, treatment) in treatments.iter().enumerate() {
            segs.extend(treatment.piece);
            parts.extend(treatment.piece.map(|_| Part::Corner(i)));
            let edge = self.edge_left(i, treatment, &treatments[(i + 1) % n]);
            // An edge wholly used up by its two ends is only rounding wide.
            if edge.length() > SAME_MM {
                segs.push(edge);
                parts.push(Part::Edge(i));
            }
        }
        Ok((segs, parts))
    }

    /// Every edge that is too short for the treatments of its two ends: the edge counted from 0,
    /// its length and what its ends need, mm.
    fn too_short(&self, treatments: &[Treatment]) -> Vec<(usize, f64, f64)> {
        let n = self.corners.len();
        (0..n)
            .map(|edge| {
                let length_mm = self.edges[edge].length();
                let taken = treatments[edge].leave + 1.0 - treatments[(edge + 1) % n].arrive;
                (edge, length_mm, taken * length_mm)
            })
            .filter(|(_, length_mm, needed_mm)| *needed_mm > length_mm + SAME_MM)
            .collect()
    }

    fn edge_left(&self, edge: usize, start: &Treatment, end: &Treatment) -> Seg {
        match self.edges[edge] {
            Seg::Line(..) => Seg::Line(start.to, end.from),
            Seg::Arc(_) => self.edges[edge].part(start.leave, end.arrive),
        }
    }

    fn treatments(&self, cuts: &[CornerCut]) -> Result<Vec<Treatment>, ShapeFault> {
        let each = cuts.iter().enumerate().take(self.corners.len());
        each.map(|(i, cut)| self.treatment(i, *cut)).collect()
    }

    fn treatment(&self, corner: usize, cut: CornerCut) -> Result<Treatment, ShapeFault> {
        let n = self.corners.len();
        let (before, after) = (self.edges[(corner + n - 1) % n], self.edges[corner]);
        match cut {
            CornerCut::Sharp => Ok(Treatment {
                arrive: 1.0,
                leave: 0.0,
                from: self.corners[corner],
                to: self.corners[corner],
                piece: None,
            }),
            CornerCut::Clip(back) => {
                let arrive = 1.0 - back / before.length();
                let leave = back / after.length();
                let (from, to) = (before.at(arrive), after.at(leave));
                Ok(Treatment {
                    arrive,
                    leave,
                    from,
                    to,
                    piece: Some(Seg::Line(from, to)),
                })
            }
            CornerCut::Scoop(radius) => Ok(self.scoop(corner, radius)),
            CornerCut::Round(radius) => {
                let turn = turn_at(self.corners, self.bows, corner);
                rounded(&before, &after, turn, radius).ok_or_else(|| ShapeFault::NoRound {
                    corner,
                    most_mm: largest_round(&before, &after, turn, radius),
                })
            }
        }
    }

    /// A hollow about a corner, from where its circle crosses the one edge to where it crosses the
    /// other, through the figure.
    fn scoop(&self, corner: usize, radius: f64) -> Treatment {
        let n = self.corners.len();
        let (before, after) = (self.edges[(corner + n - 1) % n], self.edges[corner]);
        let centre = self.corners[corner];
        let arrive = 1.0 - share_at_distance(&before.reversed(), radius);
        let leave = share_at_distance(&after, radius);
        let (from, to) = (before.at(arrive), after.at(leave));
        let piece = Seg::Arc(Arc::between(centre, from, to, -1.0));
        Treatment {
            arrive,
            leave,
            from,
            to,
            piece: Some(piece),
        }
    }
}

/// The line from `a` to `b`, or the arc that rises `bow` mm to the right of it; nothing when the rise
/// is half the chord or more.
fn bowed_edge(a: Point, b: Point, bow: f64) -> Option<Seg> {
    if bow == 0.0 {
        return Some(Seg::Line(a, b));
    }
    let (chord, rise) = (a.distance(b), bow.abs());
    if rise * 2.0 >= chord {
        return None;
    }
    // Sagitta: r = (c²/4 + s²) / 2s.
    let radius = (chord * chord / 4.0 + rise * rise) / (2.0 * rise);
    let inwards = (b - a).unit().left() * bow.signum();
    let centre = a.midpoint(b) + inwards * (radius - rise);
    Some(Seg::Arc(Arc::between(centre, a, b, bow)))
}

/// The share of an edge, from its start, at which it lies `distance` mm from its start. Beyond 1
/// when the edge is shorter.
fn share_at_distance(edge: &Seg, distance: f64) -> f64 {
    match edge {
        Seg::Line(..) => distance / edge.length(),
        // The chord from the start is 2r·sin(α/2).
        Seg::Arc(arc) => {
            let half = distance / (2.0 * arc.radius);
            if half > 1.0 {
                f64::INFINITY
            } else {
                2.0 * half.asin() / arc.sweep.abs()
            }
        }
    }
}

/// The arc of a radius that touches both edges of a corner; nothing when there is none.
fn rounded(before: &Seg, after: &Seg, turn: f64, radius: f64) -> Option<Treatment> {
    if let (Seg::Line(a, corner), Seg::Line(_, b)) = (before, after) {
        return Some(rounded_straight(*a, *corner, *b, turn, radius));
    }
    // At an outside corner the centre lies to the left of both edges, at an inside corner to the
    // right.
    let side = turn.signum();
    let (near, far) = (
        shifted_left(before, side * radius)?,
        shifted_left(after, side * radius)?,
    );
    let corner = after.start();
    let centres = near.carrier_meets(&far).into_iter();
    let all = centres.filter_map(|centre| {
        let (arrive, leave) = (share_of_foot(before, centre), share_of_foot(after, centre));
        let before_and_after = arrive <= 1.0 && leave >= 0.0;
        before_and_after.then_some((centre, arrive, leave))
    });
    let (centre, arrive, leave) =
        all.min_by(|p, q| p.0.distance(corner).total_cmp(&q.0.distance(corner)))?;
    let (from, to) = (before.at(arrive), after.at(leave));
    Some(Treatment {
        arrive,
        leave,
        from,
        to,
        piece: Some(Seg::Arc(Arc::between(centre, from, to, side))),
    })
}

/// The same between straight edges, from `a` round `corner` to `b`: set back r·tan(turn/2).
fn rounded_straight(a: Point, corner: Point, b: Point, turn: f64, radius: f64) -> Treatment {
    let (inward, onward) = (Line::through(a, corner), Line::through(corner, b));
    let back = radius * (turn / 2.0).tan().abs();
    let side = inward.along.left() * turn.signum();
    let from = corner - inward.along * back;
    let piece = Seg::Arc(Arc {
        centre: from + side * radius,
        radius,
        start: (-side).angle(),
        sweep: turn,
    });
    Treatment {
        arrive: 1.0 - back / a.distance(corner),
        leave: back / corner.distance(b),
        from,
        to: corner + onward.along * back,
        piece: Some(piece),
    }
}

/// An edge moved to its left by `by` mm, concentric when it is an arc; nothing when that arc would
/// vanish.
pub(super) fn shifted_left(edge: &Seg, by: f64) -> Option<Seg> {
    match *edge {
        Seg::Line(a, b) => {
            let out = (b - a).unit().left() * by;
            Some(Seg::Line(a + out, b + out))
        }
        Seg::Arc(arc) => {
            // The centre of an arc that turns left lies to its left.
            let radius = arc.radius - by * arc.sweep.signum();
            (radius > SAME_MM).then_some(Seg::Arc(Arc { radius, ..arc }))
        }
    }
}

/// The share of an edge at which a point stands square to it; below 0 and above 1 beyond its ends.
fn share_of_foot(edge: &Seg, point: Point) -> f64 {
    match edge {
        Seg::Line(a, b) => (point - *a).dot(*b - *a) / (*b - *a).dot(*b - *a),
        Seg::Arc(arc) => {
            let middle = Vector::at_angle(arc.start + arc.sweep / 2.0);
            let to = point - arc.centre;
            0.5 + middle.cross(to).atan2(middle.dot(to)) / arc.sweep
        }
    }
}

/// The largest radius below `radius` whose arc touches both edges of a corner between their ends, mm.
fn largest_round(before: &Seg, after: &Seg, turn: f64, radius: f64) -> f64 {
    let fits = |r: f64| {
        let made = rounded(before, after, turn, r);
        made.is_some_and(|t| t.arrive >= 0.0 && t.leave <= 1.0)
    };
    let (mut most, mut too_much) = (0.0, radius);
    // Halved to below a thousandth of a millimetre of the largest radius that can be asked for.
    for _ in 0..40 {
        let middle = f64::midpoint(most, too_much);
        if fits(middle) {
            most = middle;
        } else {
            too_much = middle;
        }
    }
    most
}

/// Every edge that is too short for the treatments of its two ends: the edge counted from 0, its
/// length and what its ends need, mm. Empty when the figure has another fault.
pub(in crate::job) fn short_edges(
    corners: &[Point],
    cuts: &[CornerCut],
    bows: &[f64],
) -> Vec<(usize, f64, f64)> {
    let Ok(sharp) = Sharp::new(corners, bows) else {
        return Vec::new();
    };
    sharp
        .treatments(cuts)
        .map(|treatments| sharp.too_short(&treatments))
        .unwrap_or_default()
}

/// The change of direction at a corner, radians, positive to the left: that of the edges' tangents.
pub(in crate::job) fn turn_at(corners: &[Point], bows: &[f64], corner: usize) -> f64 {
    let n = corners.len();
    let before = (corner + n - 1) % n;
    let heading = |edge: usize, share: f64| {
        let (a, b) = (corners[edge], corners[(edge + 1) % n]);
        bowed_edge(a, b, bows[edge]).map_or(b - a, |seg| match seg {
            Seg::Line(..) => b - a,
            Seg::Arc(_) => seg.heading(share),
        })
    };
    let (inward, onward) = (heading(before, 1.0), heading(corner, 0.0));
    inward.cross(onward).atan2(inward.dot(onward))
}
