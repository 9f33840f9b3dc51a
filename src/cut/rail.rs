//! The stone left beside openings and inside corners: the weakest sections when the top is moved.

use std::f64::consts::FRAC_PI_4;

use crate::diag::{Finding, Findings};
use crate::geom::{Outline, Point, Seg, Side};
use crate::job::{Cutout, Job};

/// Least rail between an opening and an edge, mm. Published for the front and the back; taken for the
/// sides as well.
const EDGE_MM: f64 = 90.0;
/// The same where a tap hole stands in the rail, mm.
const TAP_MM: f64 = 125.0;
/// Least rail between two openings, mm.
const BETWEEN_MM: f64 = 70.0;
/// A round opening no wider than this is a tap hole, mm (judgement).
pub(crate) const TAP_HOLE_MM: f64 = 60.0;

const SOURCE: &str = "a single trade page restating a design manual for stone worktops: 90 mm in front \
                      and behind, 125 mm with a tap hole, 70 mm between bowls; the sides by judgement \
                      as the front";

/// Where an edge of the top lies as one stands before it, corner 1 at the near left.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Way {
    Front,
    Right,
    Back,
    Left,
}

impl Way {
    /// Of an edge by its direction in the top's frame, counter-clockwise.
    fn of(edge: &Seg) -> Self {
        let turn = edge.heading(0.5).angle().rem_euclid(8.0 * FRAC_PI_4);
        match ((turn + FRAC_PI_4) / (2.0 * FRAC_PI_4)).floor() {
            1.0 => Self::Right,
            2.0 => Self::Back,
            3.0 => Self::Left,
            _ => Self::Front,
        }
    }

    const fn rail(self) -> &'static str {
        match self {
            Self::Front => "front",
            Self::Right => "right",
            Self::Back => "back",
            Self::Left => "left",
        }
    }

    const fn away(self) -> &'static str {
        match self {
            Self::Front => "back",
            Self::Right => "to the left",
            Self::Back => "forward",
            Self::Left => "to the right",
        }
    }
}

/// Every rail that is narrower than it should be: a caution, and a stop when it is narrower than the stone
/// is thick.
#[must_use]
pub fn findings(job: &Job) -> Findings {
    let mut findings = Findings::default();
    for i in 0..job.top.cutouts.len() {
        let told: Vec<Finding> = to_edges(job, i);
        findings.cautions.extend(told);
        for j in i + 1..job.top.cutouts.len() {
            findings.cautions.extend(between(job, i, j));
        }
    }
    findings.stops.extend(hangs(job));
    findings
}

fn is_tap(cutout: &Cutout) -> bool {
    let circle = cutout.shape.as_circle();
    circle.is_some_and(|(_, radius)| 2.0 * radius <= TAP_HOLE_MM)
}

/// The least distance between the pieces of two boundaries, mm.
fn narrowest(a: &[Seg], b: &[Seg]) -> f64 {
    let one_way = |from: &Seg, to: &Seg| {
        let places = (0..=SHARES).map(|i| from.at(f64::from(i) / f64::from(SHARES)));
        places.map(|p| to.distance(p)).fold(f64::INFINITY, f64::min)
    };
    let pairs = a.iter().flat_map(|p| b.iter().map(move |q| (p, q)));
    pairs
        .map(|(p, q)| one_way(p, q).min(one_way(q, p)))
        .fold(f64::INFINITY, f64::min)
}

/// Places along a piece that are measured: two straight pieces are nearest at an end, an arc's nearest
/// point lies within a thousandth of its length of one of these.
const SHARES: u32 = 256;

fn to_edges(job: &Job, cutout: usize) -> Vec<Finding> {
    let opening = &job.top.cutouts[cutout];
    if is_tap(opening) {
        return Vec::new();
    }
    let shape = &job.top.shape;
    let pieces = shape.outline().segs().iter().zip(shape.parts());
    let mut worst: Vec<(Way, f64, f64, String)> = Vec::new();
    for (edge, part) in pieces {
        let own = opening.shape.outline().segs();
        let width = narrowest(own, std::slice::from_ref(edge));
        let way = Way::of(edge);
        let least = if tap_in_rail(job, opening, edge, width) {
            TAP_MM
        } else {
            EDGE_MM
        };
        let name = shape.part_name(*part);
        match worst.iter_mut().find(|w| w.0 == way) {
            Some(w) if least - width > w.2 - w.1 => *w = (way, width, least, name),
            Some(_) => {}
            None => worst.push((way, width, least, name)),
        }
    }
    let narrow = worst.into_iter().filter(|w| w.2 - w.1 > 0.05);
    narrow
        .map(|(way, width, least, name)| {
            let with_tap = if least > EDGE_MM { " with its tap hole" } else { "" };
            Finding {
                id: "rail-too-narrow",
                title: format!("{} leaves too narrow a rail at {name}", opening.what),
                detail: format!(
                    "cutout {} leaves a {} rail of {width:.0} mm{with_tap}, least {least:.0} mm; move \
                     it {:.0} mm {}. That rail lies along {name} of the top.",
                    cutout + 1,
                    way.rail(),
                    (least - width).ceil(),
                    way.away()
                ),
                source: SOURCE.into(),
                said: None,
            }
        })
        .collect()
}

/// Whether a tap hole stands between an opening and an edge.
fn tap_in_rail(job: &Job, opening: &Cutout, edge: &Seg, width: f64) -> bool {
    let taps = job.top.cutouts.iter().filter(|c| is_tap(c));
    let mut middles = taps.filter_map(|c| c.shape.as_circle());
    middles.any(|(at, _)| {
        let to_edge = edge.distance(at);
        let outline = opening.shape.outline();
        let to_opening = outline.distance(at);
        // Between the two, and not beside them.
        to_edge < width && to_opening < width && to_edge + to_opening < width + 2.0 * TAP_HOLE_MM
    })
}

fn between(job: &Job, i: usize, j: usize) -> Option<Finding> {
    let (a, b) = (&job.top.cutouts[i], &job.top.cutouts[j]);
    if is_tap(a) || is_tap(b) {
        return None;
    }
    let width = narrowest(a.shape.outline().segs(), b.shape.outline().segs());
    (BETWEEN_MM - width > 0.05).then(|| Finding {
        id: "rail-too-narrow",
        title: format!("{} and {} leave too narrow a rail between them", a.what, b.what),
        detail: format!(
            "cutouts {} and {} leave a rail of {width:.0} mm between them, least {BETWEEN_MM:.0} mm; \
             move them {:.0} mm apart.",
            i + 1,
            j + 1,
            (BETWEEN_MM - width).ceil()
        ),
        source: SOURCE.into(),
        said: None,
    })
}

/// The stops for kept stone that would hang on a strip narrower than it is thick.
///
/// The stone at every stage of the cutting holds the whole finished top, so no order of the cuts leaves a
/// narrower strip than the top itself has: it is the top that is looked at.
fn hangs(job: &Job) -> Vec<Finding> {
    let thick = job.stone.thickness.most;
    let mut strips: Vec<(f64, String)> = Vec::new();
    let outline = job.top.shape.outline();
    for (i, a) in job.top.cutouts.iter().enumerate() {
        let own = a.shape.outline().segs();
        let to_edge = narrowest(own, outline.segs());
        strips.push((to_edge, format!("between cutout {} and the edge", i + 1)));
        for (j, b) in job.top.cutouts.iter().enumerate().skip(i + 1) {
            let width = narrowest(own, b.shape.outline().segs());
            strips.push((width, format!("between cutouts {} and {}", i + 1, j + 1)));
        }
    }
    strips.extend(legs(job, outline));
    strips.retain(|(width, _)| *width < thick);
    let words = |(width, place): (f64, String)| Finding {
        id: "hangs-on-a-strip",
        title: format!("Only {width:.0} mm of stone are left {place}"),
        detail: format!(
            "The strip {place} is {width:.1} mm wide, narrower than the stone is thick ({thick:.1} mm). \
             It breaks in the sawing or in the lifting. Move or change what leaves it, to at least \
             {thick:.0} mm."
        ),
        source: "judgement: a strip as wide as the stone is thick".into(),
        said: None,
    };
    strips.into_iter().map(words).collect()
}

/// The narrowest way from each inside corner through the stone to a piece that does not end there.
fn legs(job: &Job, outline: &Outline) -> Vec<(f64, String)> {
    let shape = &job.top.shape;
    let segs = outline.segs();
    let n = segs.len();
    let mut found = Vec::new();
    for (i, seg) in segs.iter().enumerate() {
        let next = &segs[(i + 1) % n];
        let hollow = matches!(seg, Seg::Arc(arc) if arc.sweep < 0.0);
        let inside = seg.heading(1.0).cross(next.heading(0.0)) < -1e-6;
        let name = shape.part_name(shape.parts()[i]);
        let from: Vec<Point> = if hollow {
            (0..=16).map(|k| seg.at(f64::from(k) / 16.0)).collect()
        } else if inside {
            vec![seg.end()]
        } else {
            continue;
        };
        let own = [(i + n - 1) % n, i, (i + 1) % n];
        let others = segs.iter().enumerate().filter(|(k, _)| !own.contains(k));
        let widths = others.flat_map(|(_, other)| {
            from.iter().filter_map(|p| {
                let q = other.at(other.nearest(*p));
                let through = outline.side(p.midpoint(q)) == Side::Inside;
                through.then(|| p.distance(q))
            })
        });
        let width = widths.fold(f64::INFINITY, f64::min);
        found.push((width, format!("behind the inside corner at {name}")));
    }
    found
}
