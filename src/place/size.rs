//! The largest size of the wanted top that a slab has room for.

use rayon::iter::{IntoParallelIterator, IntoParallelRefIterator, ParallelIterator};

use crate::geom::Point;
use crate::job::shape::ShapeFault;
use crate::job::{CornerCut, Cutout, Job, Shape};
use crate::words::{Message, Value};

use super::search::fits;

/// What of the top is made smaller.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Less {
    /// Everything alike: the shape stays.
    Scale,
    /// The longer side of the box round it.
    Length,
    /// The shorter side.
    Depth,
}

/// A size that fits, in whole mm: the box round the finished top in its own frame.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Fitting {
    /// What was made smaller.
    pub less: Less,
    /// The longer side, mm.
    pub length_mm: f64,
    /// The shorter side, mm.
    pub depth_mm: f64,
}

/// Smaller than this share of what was wanted nobody asks for (judgement).
const LEAST_SHARE: f64 = 0.1;

/// The largest sizes that fit: of the same shape, with less length, with less depth; those that exist.
/// Each was tried and fits.
#[must_use]
pub fn largest(job: &Job) -> Vec<Fitting> {
    let ways = [Less::Scale, Less::Length, Less::Depth];
    ways.into_par_iter()
        .filter_map(|less| largest_with(job, less))
        .collect()
}

fn largest_with(job: &Job, less: Less) -> Option<Fitting> {
    let bounds = job.top.shape.outline().bounds();
    let (width, height) = (bounds.width(), bounds.height());
    let (length, depth) = (width.max(height), width.min(height));
    let whole = if less == Less::Depth { depth } else { length };
    let at = |mm: f64| {
        let share = mm / whole;
        let across = match (less, width >= height) {
            (Less::Scale, _) => (share, share),
            (Less::Length, true) | (Less::Depth, false) => (share, 1.0),
            (Less::Length, false) | (Less::Depth, true) => (1.0, share),
        };
        resized(job, across).is_some_and(|smaller| fits(&smaller))
    };
    let gap = 2.0 * (job.place.least_strip_mm + job.slab.tape_error_mm) + 1.0;
    let least = largest_whole(whole, gap.ceil(), at)?;
    Some(match less {
        Less::Scale => Fitting {
            less,
            length_mm: least,
            depth_mm: (depth * least / length).floor(),
        },
        Less::Length => Fitting {
            less,
            length_mm: least,
            depth_mm: depth,
        },
        Less::Depth => Fitting {
            less,
            length_mm: length,
            depth_mm: least,
        },
    })
}

/// The largest whole number below `whole` that was found to fit. Halving finds one; since an edge may
/// lie on the slab's or leave a strip, and nothing between, larger ones may fit again: those up to `gap`
/// above are looked at too.
#[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
fn largest_whole(whole: f64, gap: f64, fits: impl Fn(f64) -> bool + Sync) -> Option<f64> {
    let top = whole.ceil() - 1.0;
    let (mut low, mut high) = (top, whole.ceil());
    while !fits(low) {
        high = low;
        low = (low / 2.0).floor();
        if low < LEAST_SHARE * whole || low < 1.0 {
            return None;
        }
    }
    while high - low > 1.0 {
        let middle = f64::midpoint(low, high).floor();
        if fits(middle) {
            low = middle;
        } else {
            high = middle;
        }
    }
    // Where the size that fits lies flush, smaller ones leave strips too narrow to saw: between two sizes
    // that fit lie no more than both strips and the tape's error.
    let above = |low: f64| (1..=gap as u32).map(move |by| low + f64::from(by));
    loop {
        let sizes: Vec<f64> = above(low).filter(|size| *size <= top).collect();
        match sizes.par_iter().find_last(|size| fits(**size)) {
            Some(larger) => low = *larger,
            None => return Some(low),
        }
    }
}

/// The job with its top stretched by a share each way; nothing when its corners and bows leave no such
/// figure. Openings stay where the shape does, and are left out where it is stretched.
fn resized(job: &Job, (x, y): (f64, f64)) -> Option<Job> {
    let alike = (x - y).abs() <= f64::EPSILON;
    let mut smaller = job.clone();
    smaller.top.shape = stretched(&job.top.shape, (x, y), if alike { x } else { 1.0 })
        .or_else(|_| stretched(&job.top.shape, (x, y), x.min(y)))
        .ok()?;
    let scaled = |c: &Cutout| {
        let shape = stretched(&c.shape, (x, y), x).ok()?;
        Some(Cutout { shape, ..c.clone() })
    };
    smaller.top.cutouts = if alike {
        job.top.cutouts.iter().filter_map(scaled).collect()
    } else {
        Vec::new()
    };
    Some(smaller)
}

/// A figure stretched about the origin, what is done to its corners made smaller by a share of its own.
fn stretched(shape: &Shape, (x, y): (f64, f64), cuts: f64) -> Result<Shape, ShapeFault> {
    let corners = shape.corners().iter();
    let cut = |c: &CornerCut| match *c {
        CornerCut::Sharp => CornerCut::Sharp,
        CornerCut::Round(r) => CornerCut::Round(r * cuts),
        CornerCut::Clip(by) => CornerCut::Clip(by * cuts),
        CornerCut::Scoop(r) => CornerCut::Scoop(r * cuts),
    };
    Shape::bowed(
        shape.naming(),
        corners.map(|p| Point::new(p.x * x, p.y * y)).collect(),
        shape.corner_cuts().iter().map(cut).collect(),
        shape.bows().iter().map(|b| b * cuts).collect(),
    )
}

/// A size as a message.
#[must_use]
pub(super) fn message(fitting: &Fitting) -> Message {
    let id = match fitting.less {
        Less::Scale => "place-fits-smaller",
        Less::Length => "place-fits-shorter",
        Less::Depth => "place-fits-narrower",
    };
    let size = |mm: f64| Value::size(mm).down();
    let args = [
        ("long", size(fitting.length_mm)),
        ("deep", size(fitting.depth_mm)),
    ];
    Message::new(id, args)
}
