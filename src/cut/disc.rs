//! What a disc reaches, the shape of its cut, and which disc is put on for a cut.

use crate::diag::{Finding, Phrase};
use crate::job::{Disc, DiscUse, Job};
use crate::words::{Arg, Value};

/// Deepest cut of a disc, mm: half of what its diameter exceeds the obstruction by, less everything
/// between machine and stone.
#[must_use]
pub fn deepest_mm(disc: &Disc, plate_mm: f64) -> f64 {
    (disc.diameter - disc.obstruction) / 2.0 - plate_mm
}

/// Half the length of the disc's cut at `below` mm under the face, when its rim is `depth` mm under
/// it: √(R² − (R − (depth − below))²), mm.
///
/// 0 below the rim. Past the disc's centre the cut is as long as the disc is wide.
#[must_use]
pub fn half_length(disc: &Disc, depth: f64, below: f64) -> f64 {
    let radius = disc.diameter / 2.0;
    let up = (depth - below).clamp(0.0, radius);
    (radius * radius - (radius - up).powi(2)).max(0.0).sqrt()
}

/// Depth of the last pass, mm: through the thickest reading and a little farther.
#[must_use]
pub fn full_depth(job: &Job) -> f64 {
    job.stone.thickness.most + job.passes.through_mm
}

/// How a disc that is right through lies in the stone.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Sunk {
    /// Half the length of its cut in the face, mm.
    pub face_mm: f64,
    /// Half the length of its cut at the underside of the thickest reading, mm.
    pub under_mm: f64,
}

impl Sunk {
    /// A disc lowered to its full depth.
    #[must_use]
    pub fn of(job: &Job, disc: &Disc) -> Self {
        let depth = full_depth(job);
        Self {
            face_mm: half_length(disc, depth, 0.0),
            under_mm: half_length(disc, depth, job.stone.thickness.most),
        }
    }

    /// The stone left at the underside where a cut stops, mm: c(0) − c(t).
    #[must_use]
    pub fn run_out_mm(&self) -> f64 {
        self.face_mm - self.under_mm
    }
}

/// What a disc is wanted for.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Task {
    /// A straight cut that runs off the stone at both ends.
    RunOff,
    /// A straight cut that stops inside the stone; the room between two stops in mm, infinite when
    /// one end runs off.
    Stopped {
        /// Room for the disc's cut in the face, mm.
        room_mm: f64,
    },
    /// Plunges round the outside of an arc.
    Outside,
    /// Plunges inside a hollow arc of a radius in mm.
    Inside {
        /// Its radius as sawn, mm.
        radius_mm: f64,
    },
}

/// Whether a disc gets through.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Depth {
    /// It does, with this much to spare, mm.
    Reaches(f64),
    /// It falls short by this much, mm.
    ShortBy(f64),
}

/// The disc taken for a cut.
#[derive(Clone, Debug)]
pub struct Choice<'a> {
    /// The disc.
    pub disc: &'a Disc,
    /// Whether it gets through.
    pub depth: Depth,
    /// Depth needed, mm.
    pub needed_mm: f64,
    plate_mm: f64,
}

impl Choice<'_> {
    /// The smallest diameter that gets through with this disc's obstruction, mm.
    #[must_use]
    pub fn least_diameter_mm(&self) -> f64 {
        2.0 * (self.needed_mm + self.plate_mm) + self.disc.obstruction
    }
}

/// The disc that suits a task best among those kept for it that get through; when none does, the
/// one that comes nearest.
///
/// A run-off cut and an outside arc take the narrowest kerf. A stopped cut takes the shortest run-out among
/// the discs that find room, a hollow arc the shortest cut in the face: there the smaller disc is
/// better. The kerf decides between equals.
#[must_use]
pub fn choose(job: &Job, task: Task) -> Choice<'_> {
    let needed_mm = full_depth(job);
    let plate_mm = job.machine.plate_mm;
    let curve = matches!(task, Task::Outside | Task::Inside { .. });
    let kept_for = |d: &&Disc| match d.usage {
        DiscUse::All => true,
        DiscUse::Straights => !curve,
        DiscUse::Curves => curve,
    };
    let spare = |d: &Disc| deepest_mm(d, plate_mm) - needed_mm;
    let best = |a: &&Disc, b: &&Disc| {
        let (reach_a, reach_b) = (spare(a) >= 0.0, spare(b) >= 0.0);
        let nearer = || {
            if reach_a {
                let cost = |d: &Disc| cost(job, task, d);
                let ((out_a, a1, a2), (out_b, b1, b2)) = (cost(a), cost(b));
                let by_cost = a1.total_cmp(&b1).then(a2.total_cmp(&b2));
                out_a.cmp(&out_b).then(by_cost)
            } else {
                spare(b).total_cmp(&spare(a))
            }
        };
        reach_b.cmp(&reach_a).then_with(nearer)
    };
    // A kit without a disc kept for this kind of cut falls back on the whole kit.
    let kept = job.discs.iter().filter(kept_for).min_by(best);
    let disc = kept
        .or_else(|| job.discs.iter().min_by(best))
        .unwrap_or(&job.discs[0]);
    let depth = match spare(disc) {
        spare if spare >= 0.0 => Depth::Reaches(spare),
        spare => Depth::ShortBy(-spare),
    };
    Choice {
        disc,
        depth,
        needed_mm,
        plate_mm,
    }
}

/// What speaks against a disc for a task, the least first: that it finds no room, then what it wastes.
fn cost(job: &Job, task: Task, disc: &Disc) -> (bool, f64, f64) {
    let sunk = Sunk::of(job, disc);
    match task {
        Task::RunOff | Task::Outside => (false, disc.kerf, 0.0),
        Task::Stopped { room_mm } => (2.0 * sunk.face_mm > room_mm, sunk.run_out_mm(), disc.kerf),
        Task::Inside { radius_mm } => (sunk.face_mm >= radius_mm, sunk.face_mm, disc.kerf),
    }
}

pub(crate) const TOO_SMALL: Phrase = Phrase::of_job("disc-too-small");

/// The stop for a disc that does not get through.
#[must_use]
pub fn too_small(choice: &Choice<'_>) -> Option<Finding> {
    let Depth::ShortBy(short) = choice.depth else {
        return None;
    };
    let disc = choice.disc;
    let values = [
        ("disc", disc.name.clone().into()),
        ("deepest", Value::fine(deepest_mm(disc, choice.plate_mm))),
        ("diameter", Value::size(disc.diameter)),
        ("obstruction", Value::size(disc.obstruction)),
        ("plate", Value::fine(choice.plate_mm)),
        ("needed", Value::fine(choice.needed_mm)),
        ("short", Value::fine(short)),
        ("least", Value::size(choice.least_diameter_mm().ceil())),
    ];
    let source = "geometry: (diameter − obstruction) ÷ 2 − plate";
    Some(Finding::of(&TOO_SMALL, values, source))
}

/// What a disc of this obstruction must be to get through and to find room between two stops, for the gaps
/// `least`, `shortest` and `most`, all mm, and `verdict`.
#[must_use]
pub fn that_would_fit(choice: &Choice<'_>, room_mm: f64) -> [Arg; 4] {
    let (h, least) = (choice.needed_mm, choice.least_diameter_mm());
    // 2·√(D·h − h²) ≤ room.
    let most = (room_mm * room_mm / 4.0 + h * h) / h;
    let shortest = 2.0 * (least * h - h * h).max(0.0).sqrt();
    let verdict = if most >= least {
        "A disc between the two would do."
    } else {
        "So no disc does."
    };
    [
        ("least", Value::size(least).up()),
        ("shortest", Value::size(shortest).up()),
        ("most", Value::size(most).down()),
        ("verdict", Value::term(verdict)),
    ]
}
