//! The stone left beside openings and inside corners: the weakest sections when the top is moved.

use std::f64::consts::FRAC_PI_4;

use crate::diag::{Finding, Findings, Phrase, number};
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

pub(crate) const NARROW: Phrase = Phrase {
    id: "rail-too-narrow",
    title: "Cutout {cutout}{called} leaves too narrow a rail at {edge}",
    detail: "cutout {cutout} leaves a {rail} of {width} mm{tap}, least {least} mm; move it {by} mm {away}. That rail \
             lies along {edge} of the top.",
};
pub(crate) const NARROW_BETWEEN: Phrase = Phrase {
    id: "rail-too-narrow-between",
    title: "Cutouts {first}{called_first} and {second}{called_second} leave too narrow a rail between them",
    detail: "cutouts {first} and {second} leave a rail of {width} mm between them, least {least} mm; move them \
             {by} mm apart.",
};
pub(crate) const STRIP: Phrase = Phrase {
    id: "hangs-on-a-strip",
    title: "Only {about} mm of stone are left between cutout {cutout} and the edge",
    detail: STRIP_WORDS,
};
pub(crate) const STRIP_BETWEEN: Phrase = Phrase {
    id: "hangs-on-a-strip-between",
    title: "Only {about} mm of stone are left between cutouts {first} and {second}",
    detail: STRIP_WORDS,
};
pub(crate) const STRIP_AT_CORNER: Phrase = Phrase {
    id: "hangs-on-a-strip-corner",
    title: "Only {about} mm of stone are left behind the inside corner at {edge}",
    detail: STRIP_WORDS,
};
const STRIP_WORDS: &str = "That strip is {width} mm wide, narrower than the stone is thick ({thick} mm). It breaks in \
                           the sawing or in the lifting. Move or change what leaves it, to at least {least} mm.";

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
            Self::Front => "front rail",
            Self::Right => "right rail",
            Self::Back => "back rail",
            Self::Left => "left rail",
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
#[must_use]
pub fn narrowest(a: &[Seg], b: &[Seg]) -> f64 {
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
    let told = |(way, width, least, edge): (Way, f64, f64, String)| {
        let tap = if least > EDGE_MM {
            " with its tap hole"
        } else {
            ""
        };
        let values = [
            ("cutout", (cutout + 1).to_string()),
            ("called", called(job, cutout)),
            ("edge", edge),
            ("rail", way.rail().to_owned()),
            ("width", number(width, 0)),
            ("tap", tap.to_owned()),
            ("least", number(least, 0)),
            ("by", number((least - width).ceil(), 0)),
            ("away", way.away().to_owned()),
        ];
        Finding::of(&NARROW, &values, SOURCE)
    };
    narrow.map(told).collect()
}

/// What the job calls a cutout, in brackets behind its number; nothing when it has no name of its own.
fn called(job: &Job, cutout: usize) -> String {
    let what = &job.top.cutouts[cutout].what;
    if *what == format!("cutout {}", cutout + 1) {
        String::new()
    } else {
        format!(" ({what})")
    }
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
    let values = [
        ("first", (i + 1).to_string()),
        ("called_first", called(job, i)),
        ("second", (j + 1).to_string()),
        ("called_second", called(job, j)),
        ("width", number(width, 0)),
        ("least", number(BETWEEN_MM, 0)),
        ("by", number((BETWEEN_MM - width).ceil(), 0)),
    ];
    (BETWEEN_MM - width > 0.05).then(|| Finding::of(&NARROW_BETWEEN, &values, SOURCE))
}

/// A strip of kept stone: its width, mm, and how its finding names the place.
struct Strip {
    width_mm: f64,
    phrase: &'static Phrase,
    place: Vec<(&'static str, String)>,
}

impl Strip {
    /// The stop for it in stone of a thickness, mm.
    fn told(mut self, thick: f64) -> Finding {
        self.place.extend([
            ("about", number(self.width_mm, 0)),
            ("width", number(self.width_mm, 1)),
            ("thick", number(thick, 1)),
            ("least", number(thick.ceil(), 0)),
        ]);
        let source = "judgement: a strip as wide as the stone is thick";
        Finding::of(self.phrase, &self.place, source)
    }
}

/// The stops for kept stone that would hang on a strip narrower than it is thick.
///
/// The stone at every stage of the cutting holds the whole finished top, so no order of the cuts leaves a
/// narrower strip than the top itself has: it is the top that is looked at.
fn hangs(job: &Job) -> Vec<Finding> {
    let thick = job.stone.thickness.most;
    let mut strips: Vec<Strip> = Vec::new();
    let outline = job.top.shape.outline();
    for (i, a) in job.top.cutouts.iter().enumerate() {
        let own = a.shape.outline().segs();
        let first = (i + 1).to_string();
        strips.push(Strip {
            width_mm: narrowest(own, outline.segs()),
            phrase: &STRIP,
            place: vec![("cutout", first.clone())],
        });
        for (j, b) in job.top.cutouts.iter().enumerate().skip(i + 1) {
            strips.push(Strip {
                width_mm: narrowest(own, b.shape.outline().segs()),
                phrase: &STRIP_BETWEEN,
                place: vec![("first", first.clone()), ("second", (j + 1).to_string())],
            });
        }
    }
    strips.extend(legs(job, outline));
    strips.retain(|strip| strip.width_mm < thick);
    strips.into_iter().map(|strip| strip.told(thick)).collect()
}

/// The narrowest way from each inside corner through the stone to a piece that does not end there.
fn legs(job: &Job, outline: &Outline) -> Vec<Strip> {
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
        found.push(Strip {
            width_mm: widths.fold(f64::INFINITY, f64::min),
            phrase: &STRIP_AT_CORNER,
            place: vec![("edge", name)],
        });
    }
    found
}
