//! The booleans of `geom` against booleans on exact arcs, on the cuts that jobs really make:
//! `cargo bench --bench booleans`.
//!
//! Each job's slab has the slots of its cuts taken from it one cut after another, as the planner does:
//! by `geom::boolean`, by `cavalier_contours` on lines and arcs, and by `clipper2-rust` on a fine
//! grid, which is the referee. Printed for each job: how many slots, the greatest difference of the
//! area left from the referee's after any cut, the time.

// Counts and grid coordinates are far below what the casts can hold.
#![allow(
    clippy::cast_possible_truncation,
    clippy::cast_precision_loss,
    clippy::cast_sign_loss
)]

use std::path::Path;
use std::time::Instant;

use cavalier_contours::polyline::{BooleanOp, PlineSource, PlineSourceMut, Polyline};
use clipper2_rust::{FillRule, Path64, Point64, area, difference_64};
use kerfwright::geom::{Outline, Pose, Region, Seg, Vector, boolean};
use kerfwright::{cut, job, place};

/// Grid steps to the millimetre for the referee.
const GRID: f64 = 1e5;
/// All is turned by so much, so that edges that lie on one line do so only to the rounding of `f64`.
const TURN: f64 = 0.3;
/// Chords of the referee stay so near their arcs, mm.
const CHORD_MM: f64 = 1e-4;

fn main() {
    println!(
        "{:28} {:>6} {:>13} {:>13} {:>9} {:>9}",
        "job", "slots", "geom mm²", "arcs mm²", "geom ms", "arcs ms"
    );
    for folder in ["examples", "tests/golden"] {
        let mut jobs = job_files(Path::new(folder));
        jobs.sort();
        for path in jobs {
            if let Some(row) = compared(&path) {
                println!("{row}");
            }
        }
    }
}

/// Job files of a folder, or of the folders in it.
fn job_files(folder: &Path) -> Vec<std::path::PathBuf> {
    let entries = std::fs::read_dir(folder).into_iter().flatten().flatten();
    let paths = entries.map(|e| e.path()).flat_map(|p| {
        if p.is_dir() {
            vec![p.join("job.toml")]
        } else {
            vec![p]
        }
    });
    let toml = |p: &std::path::PathBuf| p.extension().is_some_and(|e| e == "toml") && p.exists();
    paths.filter(toml).collect()
}

/// One line of the table; none when the job has no plan.
fn compared(path: &Path) -> Option<String> {
    let (job, _) = job::read(&std::fs::read_to_string(path).ok()?).ok()?;
    let (placement, _) = place::place(&job).ok()?;
    let (cuts, ..) = cut::plan(&job, &placement);
    let turn = |o: &Outline| o.posed(Pose::new(TURN, Vector::new(1.7, 2.3)));
    let slab = turn(&job.slab.region().outer);
    let turned_slots = |cut: &cut::Cut| cut.slots().iter().map(turn).collect();
    let slots: Vec<Vec<Outline>> = cuts.iter().map(turned_slots).collect();
    let (ours, our_ms) = timed(|| by_geom(&slab, &slots));
    let (arcs, arcs_ms) = timed(|| by_arcs(&slab, &slots));
    let referee = by_grid(&slab, &slots);
    let worst = |areas: &[f64]| {
        let off = areas.iter().zip(&referee).map(|(a, b)| (a - b).abs());
        off.fold(0.0, f64::max)
    };
    Some(format!(
        "{:28} {:>6} {:>13.4} {:>13.4} {our_ms:>9.2} {arcs_ms:>9.2}",
        path.with_extension("")
            .display()
            .to_string()
            .replace("tests/golden/", ""),
        slots.iter().map(Vec::len).sum::<usize>(),
        worst(&ours),
        worst(&arcs),
    ))
}

fn timed<T>(work: impl FnOnce() -> T) -> (T, f64) {
    let start = Instant::now();
    let done = work();
    (done, start.elapsed().as_secs_f64() * 1e3)
}

/// The area left after each cut, mm².
fn by_geom(slab: &Outline, cuts: &[Vec<Outline>]) -> Vec<f64> {
    let mut whole = vec![Region::solid(slab.clone())];
    let step = cuts.iter().map(|slots| {
        whole = boolean::difference(&whole, slots);
        whole.iter().map(Region::area).sum()
    });
    step.collect()
}

/// An outline of lines and exact arcs, none longer than a quarter circle.
fn exact(outline: &Outline) -> Polyline<f64> {
    let mut line = Polyline::new_closed();
    for seg in outline.segs() {
        let (count, bulge) = match seg {
            Seg::Line(..) => (1.0, 0.0),
            Seg::Arc(arc) => {
                let count = (arc.sweep.abs() / 1.6).ceil();
                (count, (arc.sweep / count / 4.0).tan())
            }
        };
        for i in 0..count as u32 {
            let p = seg.at(f64::from(i) / count);
            line.add(p.x, p.y, bulge);
        }
    }
    line
}

/// A body and its holes, since the library has no regions with holes. All are counter-clockwise.
struct Body {
    outer: Polyline<f64>,
    holes: Vec<Polyline<f64>>,
}

impl Body {
    fn area(&self) -> f64 {
        self.outer.area() - self.holes.iter().map(PlineSource::area).sum::<f64>()
    }

    /// What is left when a slot is taken away. The slot is joined to the holes that it meets; what they
    /// ring round together is a body of its own.
    fn without(self, slot: &Polyline<f64>) -> Vec<Self> {
        let (mut cutter, mut apart, mut left) = (slot.clone(), Vec::new(), Vec::new());
        for hole in self.holes {
            let joined = hole.boolean(&cutter, BooleanOp::Or);
            if joined.pos_plines.len() == 1 {
                cutter = joined.pos_plines[0].pline.clone();
                let ringed = joined.neg_plines.into_iter().map(|p| solid(p.pline));
                left.extend(ringed);
            } else {
                apart.push(hole);
            }
        }
        let result = self.outer.boolean(&cutter, BooleanOp::Not);
        let inner: Vec<_> = result
            .neg_plines
            .into_iter()
            .map(|p| turned(p.pline))
            .collect();
        apart.extend(inner);
        for outer in result.pos_plines {
            let mut body = solid(outer.pline);
            let within = |hole: &Polyline<f64>| body.outer.winding_number(hole.at(0).pos()) != 0;
            let (inside, outside) = apart.drain(..).partition(within);
            (body.holes, apart) = (inside, outside);
            left.push(body);
        }
        left
    }
}

fn solid(outer: Polyline<f64>) -> Body {
    let outer = turned(outer);
    Body {
        outer,
        holes: Vec::new(),
    }
}

/// The outline counter-clockwise.
fn turned(mut line: Polyline<f64>) -> Polyline<f64> {
    if line.area() < 0.0 {
        line.invert_direction_mut();
    }
    line
}

fn by_arcs(slab: &Outline, cuts: &[Vec<Outline>]) -> Vec<f64> {
    let mut bodies = vec![solid(exact(slab))];
    let step = cuts.iter().map(|slots| {
        for slot in slots.iter().map(exact) {
            bodies = bodies.drain(..).flat_map(|b| b.without(&slot)).collect();
        }
        bodies.iter().map(Body::area).sum()
    });
    step.collect()
}

fn by_grid(slab: &Outline, cuts: &[Vec<Outline>]) -> Vec<f64> {
    let mut whole = vec![on_grid(slab)];
    let step = cuts.iter().map(|slots| {
        let slots = slots.iter().map(on_grid).collect();
        whole = difference_64(&whole, &slots, FillRule::NonZero);
        whole.iter().map(area).sum::<f64>() / (GRID * GRID)
    });
    step.collect()
}

fn on_grid(outline: &Outline) -> Path64 {
    let points = outline.segs().iter().flat_map(|seg| {
        let count = match seg {
            Seg::Line(..) => 1,
            Seg::Arc(arc) => arc.chords_within(CHORD_MM),
        };
        (0..count).map(move |i| seg.at(i as f64 / count as f64))
    });
    let round = |x: f64| (x * GRID).round() as i64;
    points
        .map(|p| Point64::new(round(p.x), round(p.y)))
        .collect()
}
