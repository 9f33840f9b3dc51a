//! What reaches beyond the supports, and a person leaning on it.
//!
//! The stone beyond the supports is held like a shelf at the line where they end. A person bears on
//! a strip along the edge; what of that strip is over the shelf turns it down. The load spreads from
//! there to the line at 45° to either side (a point load at the edge of a wide shelf then gives half
//! its size per unit length of line, next to the 0.51 of plate theory); cutouts in the line are taken
//! off.

use serde::Serialize;

use super::judged::BendVerdict;
use super::rests::Rests;
use crate::geom::split::Chord;
use crate::geom::{Line, Outline, Point, Region, Seg, Vector};
use crate::handle::loads::{Load, Marks};
use crate::job::Stone;
use crate::units::GRAVITY;

/// A person leaning or sitting on an edge, N (judgement: 1 kN, about 100 kg).
pub const PERSON_N: f64 = 1000.0;
/// Width over which that person bears, mm (judgement: hips, or two hands).
pub const BEARS_MM: f64 = 300.0;
/// Depth over which that person bears from the edge inwards, mm (judgement: the same).
const BEARS_DEEP_MM: f64 = 100.0;
/// Stone sold as so thick may measure less by this, mm (judgement).
const THINNER_MM: f64 = 1.5;
/// Nominal thickness and published overhang, mm.
const BY_THICKNESS_MM: [(f64, f64); 2] = [(30.0, 250.0), (20.0, 150.0)];
/// Published overhang as a part of the top's width in its direction.
const OF_WIDTH: f64 = 1.0 / 3.0;
/// Places along a curved edge that are looked at.
const PLACES: u8 = 16;
/// Overhangs shorter than this are none, mm (judgement: a tape's and a cabinet's slack).
const NONE_MM: f64 = 3.0;

/// An edge of the top that reaches beyond the supports.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Overhang {
    /// The edge, or the corner when it is all curve.
    pub edge: String,
    /// How far it reaches beyond the outermost support, square to the edge, mm.
    pub overhang_mm: f64,
    /// What it is measured to and from, slab frame: the support's line and the edge.
    pub measured: [Point; 2],
    /// How far it may.
    pub limit: ReachLimit,
    /// Stress at the line of the supports with a person on the edge, `MPa`; nothing when that line
    /// runs through no stone.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub person_mpa: Option<f64>,
    /// How that stands to what is allowed.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub verdict: Option<BendVerdict>,
}

impl Overhang {
    /// Whether either check speaks against it.
    #[must_use]
    pub fn is_over(&self) -> bool {
        let too_far = match self.limit {
            ReachLimit::UpTo { limit_mm } => self.overhang_mm > limit_mm,
            ReachLimit::NonePublished => true,
        };
        too_far || self.verdict.is_some_and(BendVerdict::is_above)
    }
}

/// The published limit of an overhang or a free span.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum ReachLimit {
    /// Up to so many mm.
    UpTo {
        /// The limit, mm.
        limit_mm: f64,
    },
    /// Nothing is published for stone so thin.
    NonePublished,
}

impl ReachLimit {
    /// From a table of nominal thicknesses, thickest first.
    pub(crate) fn of(thickness_mm: f64, table: &[(f64, f64)]) -> Self {
        let mut rows = table.iter();
        let row = rows.find(|(nominal, _)| thickness_mm >= nominal - THINNER_MM);
        row.map_or(Self::NonePublished, |(_, limit_mm)| Self::UpTo {
            limit_mm: *limit_mm,
        })
    }

    fn and_no_more_than(self, most_mm: f64) -> Self {
        match self {
            Self::UpTo { limit_mm } => Self::UpTo {
                limit_mm: limit_mm.min(most_mm),
            },
            Self::NonePublished => Self::NonePublished,
        }
    }
}

/// Every edge that reaches beyond the supports, farthest first.
#[must_use]
pub fn overhangs(top: &Load, rests: &Rests, stone: &Stone, marks: &Marks) -> Vec<Overhang> {
    let mut found: Vec<Overhang> = Vec::new();
    for (edge, seg) in &marks.edges {
        let Some(reach) = farthest(seg, rests) else {
            continue;
        };
        let overhang = reach.judged(edge, top, stone);
        match found.iter_mut().find(|o| o.edge == *edge) {
            Some(same) if same.overhang_mm >= overhang.overhang_mm => {}
            Some(same) => *same = overhang,
            None => found.push(overhang),
        }
    }
    found.sort_by(|a, b| b.overhang_mm.total_cmp(&a.overhang_mm));
    found
}

/// A place of the edge and how far it lies beyond the supports, square to the edge.
struct Reach {
    at: Point,
    out: Vector,
    mm: f64,
}

fn farthest(seg: &Seg, rests: &Rests) -> Option<Reach> {
    let mut places = (0..=PLACES).map(|k| {
        let share = f64::from(k) / f64::from(PLACES);
        let (at, out) = (seg.at(share), seg.heading(share).right());
        Reach {
            at,
            out,
            mm: at.to_vector().dot(out) - rests.reach(out),
        }
    });
    let farthest = match seg {
        // Every place of a straight edge is as far out as its middle.
        Seg::Line(..) => places.nth(usize::from(PLACES / 2)),
        Seg::Arc(_) => places.reduce(|best, next| if next.mm > best.mm { next } else { best }),
    };
    farthest.filter(|r| r.mm.is_finite() && r.mm > NONE_MM)
}

impl Reach {
    fn judged(&self, edge: &str, top: &Load, stone: &Stone) -> Overhang {
        let width = extent(&top.region.outer, self.out);
        let table = ReachLimit::of(stone.thickness.least, &BY_THICKNESS_MM);
        let person_mpa = self.person(top, stone.thickness.least);
        let allowed = stone.strength_mpa / stone.safety_factor;
        Overhang {
            edge: edge.to_owned(),
            overhang_mm: self.mm,
            measured: [self.at - self.out * self.mm, self.at],
            limit: table.and_no_more_than(width * OF_WIDTH),
            person_mpa,
            verdict: person_mpa.map(|s| BendVerdict::of(s, allowed)),
        }
    }

    /// What of the person bears on the shelf, N, and how far out, mm.
    fn pressed(&self) -> (f64, f64) {
        let over = self.mm.min(BEARS_DEEP_MM);
        (PERSON_N * over / BEARS_DEEP_MM, self.mm - over / 2.0)
    }

    /// Stress at the line where the supports end: the shelf's own weight and the person.
    fn person(&self, top: &Load, thickness: f64) -> Option<f64> {
        let root = self.at - self.out * self.mm;
        let line = Line {
            point: root,
            along: self.out.left(),
        };
        let chord = top.region.outer.chord(&line, root)?;
        let gaps = gaps(&top.region, &line);
        let [from, to] = [chord.start, chord.end].map(|p| line.foot(p));
        let net = (to - from) - gaps.iter().map(|g| g[1] - g[0]).sum::<f64>();
        let weight = GRAVITY * top.mass.high.kg() / top.region.area();
        let own = weight * shelf(&chord, &top.region, &line) / net;
        let (force, lever) = self.pressed();
        let middle = f64::midpoint(from, to);
        let inset = (BEARS_MM / 2.0).min(middle - from);
        let over_gaps = gaps.iter().map(|g| f64::midpoint(g[0], g[1]));
        let places = over_gaps.chain([from + inset, to - inset, middle]);
        let widths = places.map(|c| {
            let half = BEARS_MM / 2.0 + lever;
            let within = |a: f64, b: f64| (b.min(c + half) - a.max(c - half)).max(0.0);
            let taken: f64 = gaps.iter().map(|g| within(g[0], g[1])).sum();
            within(from, to) - taken
        });
        let width = widths.fold(f64::INFINITY, f64::min);
        let person = force * lever / width.max(f64::MIN_POSITIVE);
        Some(6.0 * (own + person) / (thickness * thickness))
    }
}

/// Stretches of a line that run through holes.
fn gaps(region: &Region, line: &Line) -> Vec<[f64; 2]> {
    let through = region.holes.iter().filter_map(|h| {
        let marks: Vec<f64> = h
            .segs()
            .iter()
            .flat_map(|s| s.line_crossings(line))
            .collect();
        let low = marks.iter().copied().reduce(f64::min)?;
        let high = marks.iter().copied().reduce(f64::max)?;
        Some([low, high])
    });
    through.filter(|g| g[1] > g[0]).collect()
}

/// Moment of the stone right of a line about it, mm³. A hole counts for the side its middle is on.
fn shelf(chord: &Chord, region: &Region, line: &Line) -> f64 {
    let beyond = |o: &Outline| (-line.left_of(o.centroid())).max(0.0) * o.area();
    let holes: f64 = region.holes.iter().map(beyond).sum();
    (beyond(&chord.right) - holes).max(0.0)
}

fn extent(outline: &Outline, direction: Vector) -> f64 {
    let points = outline.flattened();
    let along = points.iter().map(|p| p.to_vector().dot(direction));
    let (low, high) = along.fold((f64::INFINITY, f64::NEG_INFINITY), |s, d| {
        (s.0.min(d), s.1.max(d))
    });
    high - low
}
