//! Plane geometry for the replay: rings of straight chords, clipped by clipper2. Nothing here is
//! the planner's.

use clipper2_rust::{
    EndType, FillRule, JoinType, Path64, Paths64, Point64, PointInPolygonResult, area,
    difference_64, inflate_paths_64, intersect_64, point_in_polygon, xor_64,
};
use serde_json::Value;

/// A place, mm.
pub(crate) type Place = [f64; 2];

/// Grid steps to the millimetre.
const GRID: f64 = 1e5;
/// Chords keep this close to their arc, mm.
pub(crate) const CHORD_MM: f64 = 0.001;

/// A number of a plan; its absence is a fault of the plan.
pub(crate) fn number(value: &Value, key: &str) -> f64 {
    value[key]
        .as_f64()
        .unwrap_or_else(|| panic!("no number {key} in {value}"))
}

/// A list of a plan.
pub(crate) fn list<'a>(value: &'a Value, key: &str) -> &'a Vec<Value> {
    value[key]
        .as_array()
        .unwrap_or_else(|| panic!("no list {key} in {value}"))
}

/// A word of a plan.
pub(crate) fn word<'a>(value: &'a Value, key: &str) -> &'a str {
    value[key]
        .as_str()
        .unwrap_or_else(|| panic!("no text {key} in {value}"))
}

/// A point written `[x, y]`.
pub(crate) fn place(value: &Value) -> Place {
    [0, 1].map(|i| {
        value[i]
            .as_f64()
            .unwrap_or_else(|| panic!("no point in {value}"))
    })
}

/// Distance between two places.
pub(crate) fn apart(a: Place, b: Place) -> f64 {
    (a[0] - b[0]).hypot(a[1] - b[1])
}

/// A place carried along a direction.
pub(crate) fn moved(p: Place, along: Place, by: f64) -> Place {
    [p[0] + along[0] * by, p[1] + along[1] * by]
}

/// Distance from a place to a straight stretch.
pub(crate) fn to_stretch(p: Place, a: Place, b: Place) -> f64 {
    let (ux, uy) = (b[0] - a[0], b[1] - a[1]);
    let square = ux * ux + uy * uy;
    let share = if square > 0.0 {
        (((p[0] - a[0]) * ux + (p[1] - a[1]) * uy) / square).clamp(0.0, 1.0)
    } else {
        0.0
    };
    apart(p, [a[0] + ux * share, a[1] + uy * share])
}

/// One piece of an outline as the plan writes it.
#[derive(Clone, Copy, Debug)]
pub(crate) enum Piece {
    Line(Place, Place),
    /// Centre, radius, start and sweep in radians.
    Arc(Place, f64, f64, f64),
}

/// The pieces of an outline.
pub(crate) fn pieces(outline: &Value) -> Vec<Piece> {
    let segs = outline.as_array().expect("an outline is a list");
    segs.iter()
        .map(|seg| {
            if let Some(ends) = seg.get("line") {
                return Piece::Line(place(&ends[0]), place(&ends[1]));
            }
            let arc = &seg["arc"];
            Piece::Arc(
                place(&arc["centre"]),
                number(arc, "radius"),
                number(arc, "start").to_radians(),
                number(arc, "sweep").to_radians(),
            )
        })
        .collect()
}

/// A point of a circle.
pub(crate) fn on_circle(centre: Place, radius: f64, angle: f64) -> Place {
    moved(centre, [angle.cos(), angle.sin()], radius)
}

/// The corners of the chords round a circle.
pub(crate) fn circle(centre: Place, radius: f64) -> Vec<Place> {
    chords(&Piece::Arc(centre, radius, 0.0, std::f64::consts::TAU))
}

/// The corners of the chords along a piece, its last point left out.
pub(crate) fn chords(piece: &Piece) -> Vec<Place> {
    match *piece {
        Piece::Line(a, _) => vec![a],
        Piece::Arc(centre, radius, start, sweep) => {
            let half = (1.0 - (CHORD_MM / radius).min(1.0)).acos();
            let count = (sweep.abs() / (2.0 * half)).ceil().clamp(2.0, 4000.0);
            let step = sweep / count;
            (0..count as u32)
                .map(|i| on_circle(centre, radius, start + step * f64::from(i)))
                .collect()
        }
    }
}

/// Stone, or any set of plane pieces: outer rings counter-clockwise, holes clockwise.
#[derive(Clone, Debug, Default)]
pub(crate) struct Stone(pub(crate) Paths64);

impl Stone {
    /// A piece without holes.
    pub(crate) fn ring(corners: &[Place]) -> Self {
        let mut path: Path64 = corners.iter().map(|p| on_grid(*p)).collect();
        if area(&path) < 0.0 {
            path.reverse();
        }
        Self(vec![path])
    }

    /// From an outline of the plan.
    pub(crate) fn outline(outline: &Value) -> Self {
        let corners: Vec<Place> = pieces(outline).iter().flat_map(chords).collect();
        Self::ring(&corners)
    }

    /// From a boundary of the plan that keeps its direction: a hole when it runs clockwise.
    pub(crate) fn boundary(outline: &Value) -> Self {
        let corners = pieces(outline)
            .iter()
            .flat_map(chords)
            .map(on_grid)
            .collect();
        Self(vec![corners])
    }

    /// Several pieces that may overlap, as one set.
    pub(crate) fn all(parts: impl IntoIterator<Item = Self>) -> Self {
        Self(parts.into_iter().flat_map(|p| p.0).collect())
    }

    pub(crate) fn minus(&self, other: &Self) -> Self {
        Self(difference_64(&self.0, &other.0, FillRule::NonZero))
    }

    pub(crate) fn within(&self, other: &Self) -> Self {
        Self(intersect_64(&self.0, &other.0, FillRule::NonZero))
    }

    pub(crate) fn unlike(&self, other: &Self) -> Self {
        Self(xor_64(&self.0, &other.0, FillRule::NonZero))
    }

    /// The same, its boundary moved inwards.
    pub(crate) fn shrunk(&self, by: f64) -> Self {
        let (miter, tolerance) = (4.0, CHORD_MM * GRID);
        Self(inflate_paths_64(
            &self.0,
            -by * GRID,
            JoinType::Miter,
            EndType::Polygon,
            miter,
            tolerance,
        ))
    }

    /// mm²; overlaps count twice.
    pub(crate) fn area(&self) -> f64 {
        self.0.iter().map(area).sum::<f64>() / (GRID * GRID)
    }

    pub(crate) fn perimeter(&self) -> f64 {
        self.edges().map(|(a, b)| apart(a, b)).sum()
    }

    /// Balance point.
    pub(crate) fn balance(&self) -> Place {
        let base = self.corners().next().unwrap_or_default();
        let (mut twice, mut x, mut y) = (0.0, 0.0, 0.0);
        for (a, b) in self.edges() {
            let (a, b) = (
                [a[0] - base[0], a[1] - base[1]],
                [b[0] - base[0], b[1] - base[1]],
            );
            let cross = a[0] * b[1] - b[0] * a[1];
            twice += cross;
            x += cross * (a[0] + b[0]);
            y += cross * (a[1] + b[1]);
        }
        [base[0] + x / (3.0 * twice), base[1] + y / (3.0 * twice)]
    }

    pub(crate) fn corners(&self) -> impl Iterator<Item = Place> {
        self.0.iter().flatten().map(off_grid)
    }

    pub(crate) fn edges(&self) -> impl Iterator<Item = (Place, Place)> {
        self.0.iter().flat_map(|ring| {
            let next = ring.iter().cycle().skip(1);
            ring.iter()
                .zip(next)
                .map(|(a, b)| (off_grid(a), off_grid(b)))
        })
    }

    /// Whether a place is inside; the boundary counts as inside.
    pub(crate) fn holds(&self, p: Place) -> bool {
        let point = on_grid(p);
        let turns: i32 = self
            .0
            .iter()
            .map(|ring| match point_in_polygon(point, ring) {
                PointInPolygonResult::IsOutside => 0,
                _ if area(ring) > 0.0 => 1,
                _ => -1,
            })
            .sum();
        turns > 0
    }

    /// Distance from a place to the boundary, mm.
    pub(crate) fn to_boundary(&self, p: Place) -> f64 {
        self.edges()
            .map(|(a, b)| to_stretch(p, a, b))
            .fold(f64::INFINITY, f64::min)
    }

    /// Shortest distance between two sets that do not overlap, mm.
    pub(crate) fn gap(&self, other: &Self) -> f64 {
        let ours = self.corners().map(|p| other.to_boundary(p));
        let theirs = other.corners().map(|p| self.to_boundary(p));
        ours.chain(theirs).fold(f64::INFINITY, f64::min)
    }

    /// The connected pieces, each with its holes.
    pub(crate) fn parts(&self) -> Vec<Self> {
        let (outer, holes): (Vec<&Path64>, Vec<&Path64>) =
            self.0.iter().partition(|ring| area(ring) > 0.0);
        let mut parts: Vec<Self> = outer.iter().map(|r| Self(vec![(*r).clone()])).collect();
        for hole in holes {
            let around = parts
                .iter_mut()
                .filter(|p| Self(vec![p.0[0].clone()]).holds(off_grid(&hole[0])))
                .min_by(|a, b| area(&a.0[0]).total_cmp(&area(&b.0[0])));
            if let Some(part) = around {
                part.0.push(hole.clone());
            }
        }
        parts
    }
}

fn on_grid(p: Place) -> Point64 {
    Point64::new((p[0] * GRID).round() as i64, (p[1] * GRID).round() as i64)
}

fn off_grid(p: &Point64) -> Place {
    [p.x as f64 / GRID, p.y as f64 / GRID]
}
