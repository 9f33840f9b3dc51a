//! The straight trims of a place: where each runs, and where it must stop.

use crate::geom::{Line, Outline, Point, SAME_MM, Seg};
use crate::job::{Job, Part, Shape};

use super::edge::{EdgeUse, edge_span};

/// How a trim ends.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum TrimEnd {
    /// It leaves the stone through an edge.
    RunOff,
    /// The sawn face stops here, inside the stone: at an inside corner of the top, or before kept
    /// stone that lies farther along.
    Stops(Point),
}

/// A straight trim: the near face of the kerf and where it runs through the stone.
#[derive(Clone, Debug)]
pub struct Trim {
    /// The edge, or the flat at a corner, that it makes.
    pub part: Part,
    /// The near face, running counter-clockwise round the top: kept stone to its left.
    pub face: Line,
    /// The middle of the finished edge, which tells the right stretch of the line.
    pub middle: Point,
    /// Stone left on the edge, mm.
    pub allowance_mm: f64,
    /// How it ends: backwards along the face, and forwards.
    pub ends: [TrimEnd; 2],
    /// The stretch that is sawn at its turn in the order, as distances along the face, mm.
    pub span: (f64, f64),
    /// Length of that stretch through the stone, mm.
    pub length_mm: f64,
}

impl Trim {
    /// True when it leaves the stone at both ends.
    #[must_use]
    pub fn runs_off(&self) -> bool {
        self.ends == [TrimEnd::RunOff; 2]
    }

    /// Where along the face the middle of the finished edge lies, mm.
    pub(super) fn foot(&self) -> f64 {
        self.face.foot(self.middle)
    }
}

/// The faces that a top needs, whatever slab it lies on: one for each straight edge that is sawn and
/// each flat, in the order of the edges.
pub(super) fn faces(
    top: &Shape,
    uses: &[EdgeUse],
    corner_allowances: &[f64],
    sawn_parts: &[Part],
) -> Vec<Trim> {
    let mut faces = Vec::new();
    for i in 0..top.count() {
        if sawn_parts.contains(&Part::Corner(i))
            && let Some(Seg::Line(a, b)) = top.corner_seg(i)
        {
            let (line, allowance) = (Line::through(a, b), corner_allowances[i]);
            faces.push(face(Part::Corner(i), line, a.midpoint(b), allowance));
        }
        if let EdgeUse::Sawn { allowance_mm } = uses[i] {
            let (from, to) = edge_span(top, i);
            let (line, middle) = (top.edge_line(i), from.midpoint(to));
            faces.push(face(Part::Edge(i), line, middle, allowance_mm));
        }
    }
    faces
}

fn face(part: Part, edge: Line, middle: Point, allowance_mm: f64) -> Trim {
    Trim {
        part,
        face: edge.shifted_right(allowance_mm),
        middle,
        allowance_mm,
        ends: [TrimEnd::RunOff; 2],
        span: (0.0, 0.0),
        length_mm: 0.0,
    }
}

/// How far a face may be sawn to either side of its middle before it runs into kept stone, as
/// distances along the face; infinite where it never does.
pub(super) fn limits(face: &Trim, sawn: &Outline) -> (f64, f64) {
    let middle = face.foot();
    let (mut back, mut ahead) = (f64::NEG_INFINITY, f64::INFINITY);
    for (from, to) in sawn.stretches(&face.face) {
        if f64::midpoint(from, to) >= middle {
            ahead = ahead.min(from);
        } else {
            back = back.max(to);
        }
    }
    (back, ahead)
}

/// Each face as it is sawn when it is the first. A face that already lies on the slab's edge is left
/// out, and so is one that lies wholly in the run of another.
pub(super) fn runs(job: &Job, faces: Vec<Trim>, sawn: &Outline) -> Vec<Trim> {
    let slab = job.slab.shape.outline();
    let mut runs: Vec<Trim> = Vec::new();
    for mut trim in faces {
        let Some((from, to)) = slab.stretch(&trim.face, trim.middle) else {
            continue;
        };
        if runs.iter().any(|r| same_run(r, &trim)) {
            continue;
        }
        let (back, ahead) = limits(&trim, sawn);
        let stops = |at: f64| TrimEnd::Stops(trim.face.at(at));
        let ends = [
            if back > from + SAME_MM {
                stops(back)
            } else {
                TrimEnd::RunOff
            },
            if ahead < to - SAME_MM {
                stops(ahead)
            } else {
                TrimEnd::RunOff
            },
        ];
        trim.ends = ends;
        trim.span = (from.max(back), to.min(ahead));
        trim.length_mm = trim.span.1 - trim.span.0;
        if trim.length_mm > SAME_MM {
            runs.push(trim);
        }
    }
    runs
}

/// Whether a face lies on that of an earlier run and within it.
fn same_run(run: &Trim, face: &Trim) -> bool {
    let (line, other) = (&run.face, &face.face);
    let foot = line.foot(face.middle);
    line.along.dot(other.along) > 1.0 - 1e-9
        && line
            .left_of(other.point + other.along * other.foot(face.middle))
            .abs()
            <= SAME_MM
        && foot > run.span.0
        && foot < run.span.1
}
