//! The revised NIOSH lifting equation: for lifting with both hands, never for carrying.
//!
//! It leaves out carrying beyond a step or two, one-handed lifts and lifts in a tight place
//! (NIOSH 94-110, page 6). It was made for one person; for a team the planner puts in the share
//! of the one who carries most.

use serde::Serialize;

use crate::units::Mass;

/// The equation's numbers in one system of units.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Constants {
    /// Load constant: kg or lb.
    pub load: f64,
    /// Nearest the hands can be, and the numerator of HM: cm or in.
    pub nearest: f64,
    /// Farthest the hands may be: cm or in.
    pub farthest: f64,
    /// Best height of the hands: cm or in.
    pub best_height: f64,
    /// Loss of VM for each cm or in away from it.
    pub height_loss: f64,
    /// Highest hands: cm or in.
    pub highest: f64,
    /// Numerator of DM: cm or in.
    pub travel: f64,
    /// Travel below which DM is 1: cm or in.
    pub least_travel: f64,
}

/// Kilograms and centimetres (NIOSH 94-110).
pub const METRIC: Constants = Constants {
    load: 23.0,
    nearest: 25.0,
    farthest: 63.0,
    best_height: 75.0,
    height_loss: 0.003,
    highest: 175.0,
    travel: 4.5,
    least_travel: 25.0,
};

/// Pounds and inches (NIOSH 94-110); rounded by the document apart from the metric ones.
pub const US_CUSTOMARY: Constants = Constants {
    load: 51.0,
    nearest: 10.0,
    farthest: 25.0,
    best_height: 30.0,
    height_loss: 0.0075,
    highest: 70.0,
    travel: 1.8,
    least_travel: 10.0,
};

/// Largest turn of the body the equation covers, degrees (NIOSH 94-110).
const MOST_TURN_DEG: f64 = 135.0;
/// Loss of AM for each degree of turn (NIOSH 94-110).
const TURN_LOSS: f64 = 0.0032;
/// Coupling multiplier of a load without handles or edges to hook under (NIOSH 94-110).
pub const POOR_COUPLING: f64 = 0.90;
/// Frequency multiplier up to one hour at 0.2 lifts a minute or fewer (NIOSH 94-110).
pub const SELDOM: f64 = 1.0;

/// One lift, in the units of the [`Constants`] it is used with.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Task {
    /// Hands in front of the ankles, H.
    #[serde(rename = "horizontal_cm")]
    pub horizontal: f64,
    /// Hands above the floor, V.
    #[serde(rename = "height_cm")]
    pub height: f64,
    /// Up-and-down travel, D.
    #[serde(rename = "travel_cm")]
    pub travel: f64,
    /// Turn of the body, A, degrees.
    pub turn_deg: f64,
    /// Frequency multiplier from the document's table, FM.
    pub frequency: f64,
    /// Coupling multiplier from the document's table, CM.
    pub coupling: f64,
}

/// RWL = LC·HM·VM·DM·AM·FM·CM, kg or lb; 0 outside what the equation covers.
#[must_use]
pub fn recommended_weight_limit(task: &Task, units: &Constants) -> f64 {
    let all = multipliers(task, units);
    units.load * all.iter().map(|m| m.value).product::<f64>()
}

/// What the equation multiplies the load constant by.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Cause {
    /// HM: hands far in front of the ankles.
    Reach,
    /// VM: hands too low or too high.
    Height,
    /// DM: a long way up or down.
    Travel,
    /// AM: the body turned.
    Turn,
    /// FM: often, or for long.
    Frequency,
    /// CM: little to grip.
    Grip,
}

impl Cause {
    /// What would raise this multiplier, in words.
    #[must_use]
    pub const fn remedy(self) -> &'static str {
        match self {
            Self::Reach => {
                "bring the stone's edge in over the thighs before lifting: every cm nearer than it \
                 counts"
            }
            Self::Height => "set the trestles so that the hands are about 75 cm (30 in) high",
            Self::Travel => "lift no farther than it takes to clear the trestles",
            Self::Turn => "turn the feet, not the back",
            Self::Frequency => "lift it once, and rest",
            Self::Grip => "use suction cups with handles or slings on a dry, clean, sound face",
        }
    }
}

/// One multiplier of the equation.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Multiplier {
    /// What it stands for.
    pub cause: Cause,
    /// Its value, 0 to 1.
    pub value: f64,
}

/// The six multipliers in the document's order; 0 outside what the equation covers.
#[must_use]
pub fn multipliers(task: &Task, units: &Constants) -> [Multiplier; 6] {
    let one = |cause, value| Multiplier { cause, value };
    [
        one(Cause::Reach, reach(task.horizontal, units)),
        one(Cause::Height, level(task.height, units)),
        one(Cause::Travel, travel(task.travel, units)),
        one(Cause::Turn, turn(task.turn_deg)),
        one(Cause::Frequency, task.frequency),
        one(Cause::Grip, task.coupling),
    ]
}

/// Lifting index: the load over the limit. Infinite when the limit is 0.
#[must_use]
pub fn lifting_index(load: f64, limit: f64) -> f64 {
    load / limit
}

fn reach(horizontal: f64, units: &Constants) -> f64 {
    if horizontal > units.farthest {
        0.0
    } else {
        units.nearest / horizontal.max(units.nearest)
    }
}

fn level(height: f64, units: &Constants) -> f64 {
    if (0.0..=units.highest).contains(&height) {
        1.0 - units.height_loss * (height - units.best_height).abs()
    } else {
        0.0
    }
}

fn travel(travel: f64, units: &Constants) -> f64 {
    if travel > units.highest {
        0.0
    } else if travel <= units.least_travel {
        1.0
    } else {
        0.82 + units.travel / travel
    }
}

fn turn(turn_deg: f64) -> f64 {
    if (0.0..=MOST_TURN_DEG).contains(&turn_deg) {
        1.0 - TURN_LOSS * turn_deg
    } else {
        0.0
    }
}

/// The lift off the trestles, cm: judgements, printed with the answer.
///
/// The stone's edge keeps the feet back, so the hands are 40 cm in front of the ankles; trestles
/// at the best height (replaced by the job's); a straight lift of a hand's breadth or two, seldom;
/// nothing to grip.
pub const OFF_TRESTLES: Task = Task {
    horizontal: 40.0,
    height: 75.0,
    travel: 25.0,
    turn_deg: 0.0,
    frequency: SELDOM,
    coupling: POOR_COUPLING,
};

/// The lifting equation applied to one lifter.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct LiftOff {
    /// What was put in, cm and degrees.
    pub task: Task,
    /// What the one who carries most has to lift.
    #[serde(rename = "load_kg")]
    pub load: Mass,
    /// Recommended weight limit, for this lift only.
    #[serde(rename = "limit_kg")]
    pub limit: Mass,
    /// Load over limit; above 1 the lift is more than the equation recommends.
    pub index: f64,
    /// The multiplier that lowers the limit most.
    pub worst: Multiplier,
    /// The index if that one alone were 1.
    pub index_without: f64,
}

/// The lift off the trestles for the lifter with the greatest share, hands at a height in mm.
#[must_use]
pub fn off_trestles(load: Mass, hands_mm: f64) -> LiftOff {
    let task = Task {
        height: hands_mm / MM_PER_CM,
        ..OFF_TRESTLES
    };
    let limit = recommended_weight_limit(&task, &METRIC);
    let start = Multiplier {
        cause: Cause::Grip,
        value: task.coupling,
    };
    let worst = multipliers(&task, &METRIC)
        .into_iter()
        .fold(
            start,
            |worst, m| if m.value < worst.value { m } else { worst },
        );
    let index = lifting_index(load.kg(), limit);
    LiftOff {
        task,
        load,
        limit: Mass::from_kg(limit),
        index,
        worst,
        index_without: index * worst.value,
    }
}

/// Millimetres in a centimetre.
const MM_PER_CM: f64 = 10.0;
