//! The stone left beside openings and inside corners: the weakest sections when the top is moved.

use std::f64::consts::FRAC_PI_4;

use crate::diag::{Finding, Findings, Phrase};
use crate::geom::{Outline, Point, Seg, Side};
use crate::job::{Cutout, Job};
use crate::words::{Arg, Value};

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

pub(crate) const NARROW: Phrase = Phrase::of_job("rail-too-narrow");
pub(crate) const NARROW_BOTH: Phrase = Phrase::of_job("rails-add-up");
pub(crate) const NARROW_BETWEEN: Phrase = Phrase::of_job("rail-too-narrow-between");
pub(crate) const STRIP: Phrase = Phrase::of_job("hangs-on-a-strip");
pub(crate) const STRIP_BETWEEN: Phrase = Phrase::of_job("hangs-on-a-strip-between");
pub(crate) const STRIP_AT_CORNER: Phrase = Phrase::of_job("hangs-on-a-strip-corner");

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

    const fn opposite(self) -> Self {
        match self {
            Self::Front => Self::Back,
            Self::Right => Self::Left,
            Self::Back => Self::Front,
            Self::Left => Self::Right,
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
        findings.warnings.extend(told);
        for j in i + 1..job.top.cutouts.len() {
            findings.warnings.extend(between(job, i, j));
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

/// The stone between an opening and the nearest edge on one side of it.
#[derive(Clone, Debug)]
struct Beside {
    way: Way,
    width_mm: f64,
    least_mm: f64,
    edge: String,
}

impl Beside {
    fn missing_mm(&self) -> f64 {
        self.least_mm - self.width_mm
    }

    fn is_narrow(&self) -> bool {
        self.missing_mm() > TOLD_MM
    }

    /// What its words say of it, the gaps named for the one rail or for the one opposite.
    fn values(&self, gaps: [&'static str; 4]) -> [Arg; 4] {
        let tap = if self.least_mm > EDGE_MM {
            Value::term(" with its tap hole")
        } else {
            Value::Nothing
        };
        let [rail, width, tap_gap, least] = gaps;
        [
            (rail, Value::term(self.way.rail())),
            (width, Value::size(self.width_mm)),
            (tap_gap, tap),
            (least, Value::size(self.least_mm)),
        ]
    }
}

/// A rail too narrow by less than this is not told, mm: no tape shows it.
const TOLD_MM: f64 = 0.05;

/// The cautions for an opening: to move it where the rail opposite has that much to give, and what the two
/// add up to where it has not.
fn to_edges(job: &Job, cutout: usize) -> Vec<Finding> {
    if is_tap(&job.top.cutouts[cutout]) {
        return Vec::new();
    }
    let rails = beside(job, cutout);
    let mut told: Vec<Finding> = Vec::new();
    for rail in rails.iter().filter(|r| r.is_narrow()) {
        let opposite = rails.iter().find(|r| r.way == rail.way.opposite());
        let short = opposite.map_or(0.0, |o| o.missing_mm() + rail.missing_mm());
        let finding = match opposite {
            Some(other) if short > TOLD_MM => add_up(job, cutout, rail, other, short),
            _ => narrow(job, cutout, rail),
        };
        let second = opposite.is_some_and(|o| o.is_narrow() && short > TOLD_MM);
        // Of two that are both too narrow the first tells both.
        if !(second && matches!(rail.way, Way::Back | Way::Left)) {
            told.push(finding);
        }
    }
    told
}

/// The narrowest place on each side of an opening, against what is asked for there.
fn beside(job: &Job, cutout: usize) -> Vec<Beside> {
    let opening = &job.top.cutouts[cutout];
    let shape = &job.top.shape;
    let mut worst: Vec<Beside> = Vec::new();
    for (edge, part) in shape.outline().segs().iter().zip(shape.parts()) {
        let own = opening.shape.outline().segs();
        let width_mm = narrowest(own, std::slice::from_ref(edge));
        let tap = tap_in_rail(job, opening, edge, width_mm);
        let found = Beside {
            way: Way::of(edge),
            width_mm,
            least_mm: if tap { TAP_MM } else { EDGE_MM },
            edge: shape.part_name(*part),
        };
        match worst.iter_mut().find(|w| w.way == found.way) {
            Some(w) if found.missing_mm() > w.missing_mm() => *w = found,
            Some(_) => {}
            None => worst.push(found),
        }
    }
    worst
}

fn narrow(job: &Job, cutout: usize, rail: &Beside) -> Finding {
    let mut values = vec![
        ("cutout", Value::count(cutout + 1)),
        ("called", called(job, cutout)),
        ("edge", Value::name(rail.edge.clone())),
        ("by", Value::size(rail.missing_mm()).up()),
        ("away", Value::term(rail.way.away())),
    ];
    values.extend(rail.values(["rail", "width", "tap", "least"]));
    Finding::of(&NARROW, values, SOURCE)
}

/// Two rails on opposite sides that are too narrow together: moving the opening helps neither.
fn add_up(job: &Job, cutout: usize, rail: &Beside, other: &Beside, short: f64) -> Finding {
    let mut values = vec![
        ("cutout", Value::count(cutout + 1)),
        ("called", called(job, cutout)),
        ("sum", Value::size(rail.width_mm + other.width_mm)),
        ("needed", Value::size(rail.least_mm + other.least_mm)),
        ("short", Value::size(short).up()),
    ];
    values.extend(rail.values(["rail", "width", "tap", "least"]));
    values.extend(other.values(["other", "other_width", "other_tap", "other_least"]));
    Finding::of(&NARROW_BOTH, values, SOURCE)
}

/// What the job calls a cutout, in brackets behind its number; nothing when it has no name of its own.
pub(super) fn called(job: &Job, cutout: usize) -> Value {
    let what = &job.top.cutouts[cutout].what;
    if *what == format!("cutout {}", cutout + 1) {
        Value::Nothing
    } else {
        Value::message("cutout-called", [("name", Value::name(what.clone()))])
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
        ("first", Value::count(i + 1)),
        ("called_first", called(job, i)),
        ("second", Value::count(j + 1)),
        ("called_second", called(job, j)),
        ("width", Value::size(width)),
        ("least", Value::size(BETWEEN_MM)),
        ("by", Value::size(BETWEEN_MM - width).up()),
    ];
    (BETWEEN_MM - width > TOLD_MM).then(|| Finding::of(&NARROW_BETWEEN, values, SOURCE))
}

/// A strip of kept stone: its width, mm, and how its finding names the place.
struct Strip {
    width_mm: f64,
    phrase: &'static Phrase,
    place: Vec<Arg>,
}

impl Strip {
    /// The stop for it in stone of a thickness, mm.
    fn told(mut self, thick: f64) -> Finding {
        self.place.extend([
            ("about", Value::size(self.width_mm)),
            ("width", Value::fine(self.width_mm)),
            ("thick", Value::fine(thick)),
            ("least", Value::size(thick.ceil())),
        ]);
        let source = "judgement: a strip as wide as the stone is thick";
        Finding::of(self.phrase, self.place, source)
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
        strips.push(Strip {
            width_mm: narrowest(own, outline.segs()),
            phrase: &STRIP,
            place: vec![("cutout", Value::count(i + 1))],
        });
        for (j, b) in job.top.cutouts.iter().enumerate().skip(i + 1) {
            strips.push(Strip {
                width_mm: narrowest(own, b.shape.outline().segs()),
                phrase: &STRIP_BETWEEN,
                place: vec![
                    ("first", Value::count(i + 1)),
                    ("second", Value::count(j + 1)),
                ],
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
            place: vec![("edge", Value::name(name))],
        });
    }
    found
}
