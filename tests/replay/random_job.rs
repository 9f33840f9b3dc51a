//! Random jobs, written as job-file text; the same seed gives the same job.

mod figure;
mod text;

use super::Wish;
use super::plane::Place;
use figure::{centred, fixed, flaws, openings, reflex_top, slab, top};

/// A source of numbers that look random: `SplitMix64`.
#[derive(Clone, Debug)]
pub(crate) struct Dice(pub(crate) u64);

impl Dice {
    fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        z ^ (z >> 31)
    }

    /// 0 to 1, the 1 left out.
    pub(crate) fn share(&mut self) -> f64 {
        (self.next() >> 11) as f64 / (1_u64 << 53) as f64
    }

    /// A length between two, to a tenth.
    pub(crate) fn between(&mut self, low: f64, high: f64) -> f64 {
        ((low + (high - low) * self.share()) * 10.0).round() / 10.0
    }

    pub(crate) fn chance(&mut self, share: f64) -> bool {
        self.share() < share
    }

    pub(crate) fn below(&mut self, count: usize) -> usize {
        (self.next() % count as u64) as usize
    }

    pub(crate) fn pick<T: Clone>(&mut self, of: &[T]) -> T {
        of[self.below(of.len())].clone()
    }
}

/// What is done to a corner of the top.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum Corner {
    Sharp,
    Round(f64),
    Clip(f64),
    Scoop(f64),
}

/// An opening of the top: symmetrical, its middle in the top's frame.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Opening {
    pub(crate) at: Place,
    pub(crate) shape: Opened,
    pub(crate) finish: &'static str,
}

/// The shape of an opening.
#[derive(Clone, Copy, Debug)]
pub(crate) enum Opened {
    /// Across.
    Circle(f64),
    /// Length, depth and the radius of all corners.
    Rectangle([f64; 2], f64),
}

/// A flaw of the slab.
#[derive(Clone, Debug)]
pub(crate) enum Flaw {
    Spot(Place, f64),
    Line(Vec<Place>),
    Area(Vec<Place>),
}

/// A job as a person would describe it, lengths in mm whatever unit it is written in.
#[derive(Clone, Debug)]
pub(crate) struct RandomJob {
    pub(crate) slab: Vec<Place>,
    pub(crate) states: Vec<&'static str>,
    pub(crate) flaws: Vec<(Flaw, f64)>,
    pub(crate) top: Vec<Place>,
    pub(crate) corners: Vec<Corner>,
    pub(crate) finishes: Vec<&'static str>,
    pub(crate) allowances: [f64; 3],
    pub(crate) tape: f64,
    pub(crate) vein: Option<(f64, &'static str)>,
    pub(crate) fixed: Option<(Place, f64)>,
    pub(crate) least_strip: f64,
    pub(crate) thickness: Vec<f64>,
    /// Diameter, kerf and obstruction of each disc.
    pub(crate) discs: Vec<[f64; 3]>,
    pub(crate) bits: Vec<f64>,
    pub(crate) openings: Vec<Opening>,
    pub(crate) plate: f64,
    pub(crate) wish: Wish,
    pub(crate) far_end: f64,
    pub(crate) guide: [f64; 3],
    pub(crate) inches: bool,
}

/// Diameter, kerf and obstruction of discs, mm.
const DISCS: [[f64; 3]; 4] = [
    [125.0, 2.2, 34.0],
    [125.0, 2.2, 20.0],
    [180.0, 2.6, 60.0],
    [230.0, 3.2, 80.0],
];

impl RandomJob {
    /// The job of a seed with inside corners, hollow arcs or openings in its top, which lies in the middle of
    /// its slab; several discs and core bits.
    pub(crate) fn with_insides(seed: u64) -> Self {
        let mut job = Self::of(seed);
        let dice = &mut Dice(seed.wrapping_mul(0x2000_0003).wrapping_add(7));
        let (long, deep) = (dice.between(900.0, 2200.0), dice.between(500.0, 1100.0));
        let (top, corners) = reflex_top(dice, long, deep);
        job.openings = openings(dice, &top);
        job.finishes = top
            .iter()
            .map(|_| dice.pick(&["polish", "ease", "saw"]))
            .collect();
        (job.top, job.corners) = (top, corners);
        let edge = dice.between(40.0, 120.0);
        let (l, d) = (long + 2.0 * edge, deep + 2.0 * edge);
        job.slab = vec![[0.0, 0.0], [l, 0.0], [l, d], [0.0, d]];
        job.states = vec!["sawn"; 4];
        job.flaws = Vec::new();
        job.vein = None;
        job.least_strip = 5.0;
        let turn = dice.pick(&[0.0, 0.0, 180.0, 2.0]);
        job.fixed = Some(centred(&job.slab, &job.top, turn));
        job.discs = DISCS.into_iter().filter(|_| dice.chance(0.5)).collect();
        if job.discs.is_empty() {
            job.discs.push(DISCS[0]);
        }
        job.bits = [20.0, 35.0, 50.0, 68.0]
            .into_iter()
            .filter(|_| dice.chance(0.6))
            .collect();
        // A figure that is none is not what is tried here.
        if kerfwright::job::read(&job.text()).is_err() {
            job.openings.clear();
        }
        if kerfwright::job::read(&job.text()).is_err() {
            job.corners = vec![Corner::Sharp; job.top.len()];
        }
        job
    }

    /// The job of a seed.
    pub(crate) fn of(seed: u64) -> Self {
        let dice = &mut Dice(seed.wrapping_mul(0x1000_0001));
        let (long, deep) = (dice.between(700.0, 3000.0), dice.between(400.0, 1100.0));
        let slab = slab(dice, long, deep);
        let n = slab.len();
        let states: Vec<&str> = (0..n)
            .map(|_| dice.pick(&["factory", "sawn", "sawn", "rough"]))
            .collect();
        let (top, corners) = top(dice, long, deep);
        let usual: &[&str] = &["polish", "ease", "saw"];
        let with_factory: &[&str] = &["polish", "ease", "saw", "factory"];
        let any_factory = states.contains(&"factory") && dice.chance(0.5);
        let from = if any_factory { with_factory } else { usual };
        let finishes = top.iter().map(|_| dice.pick(from)).collect();
        let thick = dice.between(12.0, 40.0);
        Self {
            flaws: flaws(dice, &slab, long, deep),
            finishes,
            allowances: dice.pick(&[[1.0, 0.5, 0.0], [2.0, 1.0, 0.3], [0.0, 0.0, 0.0]]),
            tape: dice.pick(&[0.5, 1.0, 2.0]),
            vein: dice.chance(0.2).then(|| {
                (
                    dice.between(-40.0, 40.0),
                    dice.pick(&["along", "across", "any"]),
                )
            }),
            fixed: dice.chance(0.25).then(|| {
                let turn = dice.pick(&[0.0, 90.0, 180.0, 3.0]);
                fixed(dice, &slab, &top, turn)
            }),
            least_strip: dice.pick(&[5.0, 10.0, 25.0]),
            thickness: vec![thick, thick + dice.between(0.0, 1.5)],
            discs: vec![dice.pick(&DISCS)],
            bits: Vec::new(),
            openings: Vec::new(),
            plate: dice.pick(&[0.0, 3.0, 6.0]),
            wish: Wish {
                score: dice.pick(&[1.0, 2.0]),
                step: dice.pick(&[4.0, 6.0, 15.0]),
                plunge_step: dice.pick(&[8.0, 10.0]),
                through: dice.pick(&[2.0, 3.0, 5.0]),
                cusp: dice.pick(&[0.3, 0.5, 1.0]),
            },
            far_end: dice.pick(&[0.0, 60.0]),
            guide: [
                dice.between(600.0, 3000.0),
                dice.between(60.0, 200.0),
                100.0,
            ],
            inches: dice.chance(0.15),
            slab,
            states,
            top,
            corners,
        }
    }
}
