//! Core holes as a cut: holes of one bit drilled one after another.

use std::f64::consts::PI;

use crate::diag::{Finding, Phrase};
use crate::geom::SAME_MM;
use crate::job::{self, CoreBit, Finish, Job};
use crate::words::Value;

use super::corner::Bored;
use super::kept::Whose;
use super::set_out::point_ties;
use super::{
    Because, CentreMark, CoreHole, Cut, CutKind, Hole, LeftOver, Remains, Removal, SetOut, Tool,
};

/// What holes of one bit make.
#[derive(Clone, Debug)]
pub struct Drilled {
    /// Whose they are.
    pub whose: Whose,
    /// Names of the corners they make.
    pub name: String,
    /// The bit.
    pub bit: CoreBit,
    /// The holes in the order they are drilled.
    pub holes: Vec<Hole>,
    /// Stone left round them, mm.
    pub allowance_mm: f64,
    /// What is done to the edge afterwards.
    pub finish: Finish,
    /// Why they come at this place in the order.
    pub because: Because,
    /// What is left to take off by hand.
    pub left_to_remove: Vec<LeftOver>,
}

/// Plans the holes: right through, as deep as a disc would go.
#[must_use]
pub fn plan(job: &Job, drilled: Drilled) -> Cut {
    let holes = drilled.holes;
    #[allow(clippy::cast_precision_loss)]
    let count = holes.len() as f64;
    let length = PI * drilled.bit.diameter * count;
    let marks = holes
        .iter()
        .map(|hole| CentreMark {
            at: hole.at,
            diameter: hole.diameter,
            ties: point_ties(&job.slab.shape, hole.at),
            offsets: Vec::new(),
        })
        .collect();
    Cut {
        cutout: drilled.whose.cutout_number(),
        full_depth: job.stone.thickness.most + job.passes.through_mm,
        allowance: drilled.allowance_mm,
        finish: drilled.finish,
        length,
        face_mm2: length * job.stone.thickness.mean,
        minutes: drilled.bit.minutes * count,
        run_off: false,
        because: drilled.because,
        left_to_remove: drilled.left_to_remove,
        holes,
        ..Cut::begun(
            CutKind::Core,
            drilled.name,
            Tool::Bit(drilled.bit),
            SetOut::Centres(marks),
        )
    }
}

/// What holes leave to take off by hand: ridges between them, or stone in a corner.
#[must_use]
pub fn left(bored: &Bored) -> Option<LeftOver> {
    let why = if bored.holes.len() > 1 {
        Remains::Cusps
    } else {
        Remains::Corner
    };
    let first = bored.holes.first()?;
    (bored.ground_mm > SAME_MM).then_some(LeftOver {
        why,
        at: first.at,
        length: bored.ground_mm,
        heading: None,
        left: bored.ground_mm,
        by: Removal::Ground,
    })
}

/// Less stone than this between two holes breaks out, mm (judgement).
const LEAST_WEB_MM: f64 = 5.0;

pub(crate) const CLOSE: Phrase = Phrase::of_job("core-holes-close");

/// The cautions for cuts whose holes overlap, or nearly touch, each other, those of an earlier cut or those
/// that were there before the first.
pub(super) fn close(cuts: &[Cut], before: &[job::Drilled]) -> Vec<Finding> {
    let there = before.iter().map(|d| Hole {
        at: d.at,
        diameter: d.diameter,
    });
    let there: Vec<Hole> = there.collect();
    let each = cuts.iter().enumerate().filter_map(|(i, cut)| {
        let earlier = cuts[..i].iter().flat_map(|c| &c.holes);
        let all: Vec<&Hole> = there.iter().chain(earlier).chain(&cut.holes).collect();
        let before = all.len() - cut.holes.len();
        let pairs = (before..all.len()).flat_map(|j| (0..j).map(move |k| (k, j)));
        let web = |a: &Hole, b: &Hole| a.at.distance(b.at) - f64::midpoint(a.diameter, b.diameter);
        let pairs = pairs.map(|(k, j)| (all[k], all[j]));
        let close = pairs.filter(|(a, b)| web(a, b) < LEAST_WEB_MM);
        let nearest = close.map(|(a, b)| a.at.distance(b.at)).reduce(f64::min)?;
        let values = [
            ("cut", cut.number.to_string().into()),
            ("apart", Value::fine(nearest)),
            ("bit", Value::size(cut.holes.first()?.diameter)),
            ("web", Value::size(LEAST_WEB_MM)),
        ];
        Some(Finding::of(&CLOSE, values, "judgement: 5 mm"))
    });
    each.collect()
}

/// Every core hole of the plan, with the cut it belongs to.
#[must_use]
pub fn all(cuts: &[Cut]) -> Vec<CoreHole> {
    let each = |cut: &Cut| {
        let number = cut.number;
        let holes = cut.holes.iter().map(move |hole| CoreHole {
            cut: number,
            at: hole.at,
            diameter: hole.diameter,
        });
        holes.collect::<Vec<_>>()
    };
    cuts.iter().flat_map(each).collect()
}
