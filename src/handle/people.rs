//! Where people stand while the stone is cut: the sawyer beside the line, the helper in line with no disc and
//! out of reach of waste that falls.

use serde::Serialize;

use crate::cut::{Cut, SetOut, StraightSetOut, Stroke};
use crate::geom::{Bounds, Line, Point, Seg, Vector};
use crate::piece::Piece;

/// How far outside the stone the sawyer stands, mm (judgement).
const OFF_STONE_MM: f64 = 230.0;
/// Half the strip in line with the disc that nobody enters, mm (judgement: the disc kicks and throws along its line).
pub const HALF_STRIP_MM: f64 = 175.0;
/// Half a person, mm (judgement: 460 mm across the shoulders).
const HALF_PERSON_MM: f64 = 250.0;
/// How far off the slab a helper stands, the nearest that serves, mm (judgement: to the tap in a few steps).
const OFF_MM: [f64; 3] = [700.0, 1000.0, 1400.0];
/// Places are tried so far apart, mm.
const STEP_MM: f64 = 100.0;
/// More room than this beside a line is no better, mm.
const ROOM_MM: f64 = 400.0;
/// What a millimetre farther off is worth in room, mm (judgement).
const STEPS: f64 = 0.2;
/// The helper keeps so far from the sawyer's way along a cut, mm (judgement: out of arms' and elbows' reach).
const FROM_SAWYER_MM: f64 = 650.0;

/// Where people stand while the stone is cut, slab frame.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Stands {
    /// The sawyer at each cut along a guide.
    pub sawyer: Vec<Sawyer>,
    /// The helper's places; consecutive cuts share one as long as it serves them all.
    pub helper: Vec<Helper>,
    /// Cuts whose line turns so far round that no one place is out of it.
    pub turning: Vec<usize>,
}

/// Where the sawyer stands at a cut along a guide.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Sawyer {
    /// The cut, by number.
    pub cut: usize,
    /// On the ground.
    pub at: Point,
    /// Which way he or she looks, length 1.
    pub facing: Vector,
}

/// Where the helper stands, and at which cuts.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Helper {
    /// On the ground.
    pub at: Point,
    /// The cuts, by number.
    pub cuts: Vec<usize>,
}

impl Stands {
    /// Where people stand at the cuts of a slab in a box; `top` is the finished top's balance point.
    ///
    /// Time grows with the cuts, their strokes and the way round the slab.
    #[must_use]
    pub fn of(slab: Bounds, top: Point, cuts: &[Cut], pieces: &[Piece]) -> Self {
        let guided = cuts.iter().filter_map(|cut| match &cut.set_out {
            SetOut::Guide(set_out) => Some(Sawyer::of(slab, top, cut, set_out)),
            _ => None,
        });
        let area = WorkArea {
            slab,
            pieces,
            sawyer: guided.collect(),
        };
        let (helper, turning) = area.helper(cuts);
        Self {
            sawyer: area.sawyer,
            helper,
            turning,
        }
    }

    /// The sawyer at a cut; nothing where no guide is used.
    #[must_use]
    pub fn sawyer_at(&self, cut: usize) -> Option<&Sawyer> {
        self.sawyer.iter().find(|s| s.cut == cut)
    }
}

impl Sawyer {
    /// Beside the line on the kept side, outside the stone: behind the start of a cut that runs up the
    /// slab, below or above a cut that runs along it.
    fn of(slab: Bounds, top: Point, cut: &Cut, set_out: &StraightSetOut) -> Self {
        let [from, to] = set_out.sawn;
        let along = (to - from).unit();
        let kept = if top.x.is_finite() {
            along.left() * (top - from).dot(along.left()).signum()
        } else {
            along.left()
        };
        let stands_at = |x: f64, below: bool| {
            let (y, looks) = if below {
                (slab.min.y - OFF_STONE_MM, 1.0)
            } else {
                (slab.max.y + OFF_STONE_MM, -1.0)
            };
            Self {
                cut: cut.number,
                at: Point::new(x, y),
                facing: Vector::new(0.0, looks),
            }
        };
        if along.x.abs() > along.y.abs() {
            let x = from.x + along.x.signum() * (cut.length * 0.3).min(600.0);
            return stands_at(x, kept.y < 0.0);
        }
        stands_at(from.midpoint(to).x + kept.x * 450.0, from.y <= to.y)
    }

    /// His or her way along a line.
    fn way(&self, [from, to]: [Point; 2]) -> Seg {
        let across = (to - from).unit().left();
        let beside = across * (self.at - from).dot(across);
        Seg::Line(from + beside, to + beside)
    }
}

/// What a helper keeps clear of.
struct WorkArea<'a> {
    slab: Bounds,
    pieces: &'a [Piece],
    sawyer: Vec<Sawyer>,
}

impl WorkArea<'_> {
    fn helper(&self, cuts: &[Cut]) -> (Vec<Helper>, Vec<usize>) {
        let (places, middle) = (places(self.slab), self.slab.centre());
        let (mut stands, mut turning) = (Vec::new(), Vec::new());
        let mut open: Option<(Vec<f64>, Vec<usize>)> = None;
        for cut in cuts.iter().filter(|c| !c.strokes.is_empty()) {
            let danger = self.danger(cut);
            let here: Vec<f64> = places.iter().map(|p| danger.room(*p)).collect();
            if !serves(&here) {
                turning.push(cut.number);
                continue;
            }
            let both = open.as_ref().map(|(rooms, _)| least(rooms, &here));
            match (both, &mut open) {
                (Some(both), Some((rooms, cuts))) if serves(&both) => {
                    *rooms = both;
                    cuts.push(cut.number);
                }
                _ => {
                    stands.extend(open.take().map(|group| best(&places, middle, group)));
                    open = Some((here, vec![cut.number]));
                }
            }
        }
        stands.extend(open.map(|group| best(&places, middle, group)));
        (stands, turning)
    }

    /// What a cut keeps people clear of.
    fn danger(&self, cut: &Cut) -> Danger {
        let first = cut.strokes.first().map_or(0.0, |s| s.depth);
        let lines = cut.strokes.iter().filter(|s| s.depth <= first);
        let line = |stroke: &Stroke| Line {
            point: stroke.from,
            along: Vector::at_angle(stroke.heading),
        };
        let freed = self.pieces.iter().filter(|p| cut.frees.contains(&p.name));
        let falls = freed.flat_map(|piece| &piece.outline);
        let fall = |ring: &Vec<Seg>| {
            Bounds::around(ring.iter().flat_map(|s| [s.start(), s.at(0.5), s.end()]))
        };
        Danger {
            lines: lines.map(line).collect(),
            falls: falls.map(fall).collect(),
            sawyer: self.way(cut),
        }
    }

    /// The way of the sawyer beside a cut along a guide.
    fn way(&self, cut: &Cut) -> Option<Seg> {
        let SetOut::Guide(set_out) = &cut.set_out else {
            return None;
        };
        let sawyer = self.sawyer.iter().find(|s| s.cut == cut.number);
        sawyer.map(|sawyer| sawyer.way(set_out.sawn))
    }
}

/// What a cut keeps people clear of.
struct Danger {
    /// Lines that the disc runs in.
    lines: Vec<Line>,
    /// The boxes round waste that comes free.
    falls: Vec<Bounds>,
    /// The sawyer's way beside a guide.
    sawyer: Option<Seg>,
}

impl Danger {
    /// How much room a person has at a place, mm; without any, nothing or less.
    fn room(&self, at: Point) -> f64 {
        let beside = |line: &Line| line.left_of(at).abs() - HALF_STRIP_MM - HALF_PERSON_MM;
        // What tips over its bearers reaches as far as it is wide.
        let clear = |b: &Bounds| off(*b, at) - b.width().min(b.height()) - HALF_PERSON_MM;
        let sawyer = self.sawyer.map(|way| way.distance(at) - FROM_SAWYER_MM);
        let lines = self.lines.iter().map(beside);
        let each = lines.chain(self.falls.iter().map(clear)).chain(sawyer);
        each.fold(f64::INFINITY, f64::min)
    }
}

fn serves(rooms: &[f64]) -> bool {
    rooms.iter().any(|room| *room > 0.0)
}

fn least(a: &[f64], b: &[f64]) -> Vec<f64> {
    a.iter().zip(b).map(|(a, b)| a.min(*b)).collect()
}

/// Of the places that serve, the best: room beside the lines, and few steps off the slab's middle.
fn best(places: &[Point], middle: Point, (rooms, cuts): (Vec<f64>, Vec<usize>)) -> Helper {
    let worth = |(room, at): &(f64, Point)| room.min(ROOM_MM) - middle.distance(*at) * STEPS;
    let serving = rooms.into_iter().zip(places.iter().copied());
    let best = serving
        .filter(|(room, _)| *room > 0.0)
        .max_by(|a, b| worth(a).total_cmp(&worth(b)));
    Helper {
        at: best.map_or(middle, |(_, at)| at),
        cuts,
    }
}

/// Places round a box, the nearest way round first.
fn places(slab: Bounds) -> Vec<Point> {
    let round = |off: &f64| {
        let more = Vector::new(*off, *off);
        let (min, max) = (slab.min - more, slab.max + more);
        let (across, up) = (max.x - min.x, max.y - min.y);
        let [right, left] = [Vector::new(1.0, 0.0), Vector::new(-1.0, 0.0)];
        let sides = [
            (min, right, across),
            (Point::new(max.x, min.y), right.left(), up),
            (max, left, across),
            (Point::new(min.x, max.y), right.right(), up),
        ];
        sides.map(|(from, way, long)| {
            #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
            let count = (long / STEP_MM).ceil().clamp(1.0, 1e4) as u32;
            (0..count).map(move |i| from + way * (long * f64::from(i) / f64::from(count)))
        })
    };
    OFF_MM.iter().flat_map(round).flatten().collect()
}

/// How far a point lies outside a box, mm.
fn off(b: Bounds, at: Point) -> f64 {
    let x = (b.min.x - at.x).max(at.x - b.max.x).max(0.0);
    let y = (b.min.y - at.y).max(at.y - b.max.y).max(0.0);
    x.hypot(y)
}
