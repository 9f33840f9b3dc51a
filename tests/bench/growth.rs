//! How the time of a plan grows with the size of a job: `cargo bench --bench growth`, or with the first
//! letters of one table. A line a size: processor time of reading and planning, and the exponent from the size
//! before it. `cargo bench --bench growth -- TABLE SIZE` prints that job's file.

#![allow(clippy::cast_precision_loss)]

mod clock;

use std::f64::consts::TAU;
use std::fmt::Write;

use clock::{ms, timed};
use kerfwright::plan::Plan;

/// A table: its name, its sizes up to the limit of the job file, and the job of a size.
type Table = (&'static str, &'static [u32], fn(u32) -> String);

const TABLES: [Table; 10] = [
    (
        "convex corners, top and slab",
        &[5, 10, 20, 40, 80, 200],
        convex,
    ),
    ("slab corners", &[4, 10, 30, 100, 300, 1000], slab_corners),
    ("top corners", &[4, 10, 30, 100, 200], top_corners),
    ("comb notches", &[2, 4, 8, 15, 30, 49], comb),
    ("points of a line flaw, 64 flaws", &[5, 20, 60, 200], lines),
    ("flaws", &[1, 10, 30, 100, 200, 300], spots),
    ("openings", &[1, 2, 6, 12, 24, 50], openings),
    (
        "mm of four hollow edges",
        &[600, 1000, 1600, 2400, 3000],
        hollow,
    ),
    (
        "mm of a round top's stations",
        &[100, 300, 1000, 3000, 9000],
        round,
    ),
    (
        "cut-up slab: inside corners",
        &[1, 4, 12, 40, 100],
        notched_slab,
    ),
];

fn main() {
    let words: Vec<String> = std::env::args()
        .skip(1)
        .filter(|a| a != "--bench")
        .collect();
    let wanted = words.first().map_or("", String::as_str);
    let size = words.get(1).and_then(|w| w.parse().ok());
    for (name, sizes, job) in TABLES.iter().filter(|t| t.0.starts_with(wanted)) {
        match size {
            Some(size) => println!("{}", job(size)),
            None => table(name, sizes, *job),
        }
    }
}

fn table(name: &str, sizes: &[u32], job: fn(u32) -> String) {
    println!("{name:<36}{:>10}  exponent", "ms");
    let mut before: Option<(f64, f64)> = None;
    for size in sizes {
        let text = job(*size);
        let (once, ended) = timed(|| end_of(&text));
        let again = if ms(once) < 200.0 { 3 } else { 0 };
        let time = (0..again).fold(ms(once), |least, _| {
            least.min(ms(timed(|| end_of(&text)).0))
        });
        let here = (f64::from(*size), time);
        let grows = before.map_or(String::new(), |(n, t)| {
            format!("{:.1}", (time / t).ln() / (here.0 / n).ln())
        });
        println!("{size:>36}{time:>10.1}{grows:>10}  {ended}");
        before = Some(here);
    }
}

/// Plans a job; how that ended.
fn end_of(text: &str) -> String {
    match kerfwright::job::read(text) {
        Err(faults) => format!("refused: {}", faults.first().map_or("", |f| &f.message)),
        Ok((job, _)) => match Plan::of(&job) {
            Err(no_fit) => format!("does not fit: {:?}", no_fit.proof),
            Ok(plan) => {
                let strokes: usize = plan.cuts.iter().map(|c| c.strokes.len()).sum();
                format!("{} cuts, {strokes} strokes", plan.cuts.len())
            }
        },
    }
}

const STONE: &str = "[stone]\nkind = \"granite\"\nthickness = 30\n";

/// A list of points as a job file has it.
fn points(of: impl IntoIterator<Item = (f64, f64)>) -> String {
    let mut text = String::from("[");
    for (x, y) in of {
        let _ = write!(text, "[{x:.3}, {y:.3}], ");
    }
    text.push(']');
    text
}

/// Corners on an ellipse, the first at 0, 0 and the second on the x axis: no two edges parallel.
fn on_ellipse(count: u32, half: (f64, f64), askew: f64) -> Vec<(f64, f64)> {
    let at = |k: u32| {
        let k = f64::from(k);
        let angle = TAU * (k + 0.3 * (k * 1.7 + askew).sin()) / f64::from(count) + askew;
        (half.0 * angle.cos(), half.1 * angle.sin())
    };
    let (first, second) = (at(0), at(1));
    let (x, y) = (second.0 - first.0, second.1 - first.1);
    let length = x.hypot(y);
    let (x, y) = (x / length, y / length);
    let seen = |k: u32| {
        let (dx, dy) = (at(k).0 - first.0, at(k).1 - first.1);
        (dx * x + dy * y, dy * x - dx * y)
    };
    (0..count).map(seen).collect()
}

fn convex(count: u32) -> String {
    let slab = points(on_ellipse(count, (1300.0, 900.0), 0.2));
    let top = points(on_ellipse(count, (900.0, 550.0), 1.1));
    format!("{STONE}[slab]\ncorners = {slab}\n[top]\ncorners = {top}\n")
}

fn slab_corners(count: u32) -> String {
    let slab = points(on_ellipse(count, (1600.0, 1200.0), 0.2));
    format!(
        "{STONE}[slab]\ncorners = {slab}\n[top]\nrectangle = [1400, 640]\nround = {{ 2 = 100 }}\n"
    )
}

fn top_corners(count: u32) -> String {
    let top = points(on_ellipse(count, (900.0, 450.0), 1.1));
    format!("{STONE}[slab]\nrectangle = [2600, 1400]\n[top]\ncorners = {top}\n")
}

fn comb(notches: u32) -> String {
    let pitch = 4000.0 / f64::from(notches + 1);
    let mut corners = vec![(0.0, 0.0), (4000.0, 0.0), (4000.0, 600.0)];
    for k in (1..=notches).rev() {
        let (from, to) = (pitch * (f64::from(k) - 0.2), pitch * (f64::from(k) + 0.2));
        corners.extend([(to, 600.0), (to, 480.0), (from, 480.0), (from, 600.0)]);
    }
    corners.push((0.0, 600.0));
    let top = points(corners);
    format!("{STONE}[slab]\nrectangle = [4300, 760]\n[top]\ncorners = {top}\n")
}

fn lines(count: u32) -> String {
    let mut text =
        format!("{STONE}[slab]\nrectangle = [3000, 1400]\n[top]\nrectangle = [2200, 640]\n");
    for flaw in 0..64_u32 {
        let (column, row) = (f64::from(flaw % 16), f64::from(flaw / 16));
        let from = (60.0 + 180.0 * column, 800.0 + 150.0 * row);
        let at = |k: u32| {
            let share = f64::from(k) / f64::from(count - 1);
            let wave = 12.0 * (share * 9.0 + f64::from(flaw)).sin();
            (from.0 + 120.0 * share, from.1 + wave)
        };
        let line = points((0..count).map(at));
        let _ = writeln!(text, "[[slab.flaw]]\nline = {line}\nclear = 5");
    }
    text
}

fn spots(count: u32) -> String {
    let mut text =
        format!("{STONE}[slab]\nrectangle = [3000, 1400]\n[top]\nrectangle = [1800, 640]\n");
    for flaw in 0..count {
        let k = f64::from(flaw);
        let at = (40.0 + (k * 547.3) % 2920.0, 760.0 + (k * 211.7) % 600.0);
        let spot = format!("{{ at = [{:.1}, {:.1}], across = 8 }}", at.0, at.1);
        let _ = writeln!(text, "[[slab.flaw]]\nspot = {spot}\nclear = 5");
    }
    text
}

fn openings(count: u32) -> String {
    let mut text =
        format!("{STONE}[slab]\nrectangle = [4600, 900]\n[top]\nrectangle = [4300, 640]\n");
    let pitch = 4300.0 / f64::from(count.div_ceil(2));
    for opening in 0..count {
        let (column, row) = (f64::from(opening / 2), f64::from(opening % 2));
        let at = (pitch * (column + 0.5), 190.0 + 260.0 * row);
        let across = (pitch - 60.0).min(180.0);
        let figure = if opening % 3 == 0 {
            format!("circle = {across:.1}")
        } else {
            format!("rectangle = [{across:.1}, {:.1}]", across * 0.7)
        };
        let _ = writeln!(
            text,
            "[[top.cutout]]\n{figure}\nat = [{:.1}, {:.1}]",
            at.0, at.1
        );
    }
    text
}

fn hollow(edge: u32) -> String {
    let (slab, bow) = (edge + 200, edge / 30);
    let bows =
        format!("{{ \"1-2\" = -{bow}, \"2-3\" = -{bow}, \"3-4\" = -{bow}, \"4-1\" = -{bow} }}");
    format!(
        "{STONE}[slab]\nrectangle = [{slab}, {slab}]\n[top]\nrectangle = [{edge}, {edge}]\nbow = {bows}\n"
    )
}

fn round(across: u32) -> String {
    let slab = (across + 200).min(9990);
    format!(
        "{STONE}[slab]\nrectangle = [{slab}, {slab}]\n[top]\ncircle = {across}\n[circle_jig]\nreach = [20, 5000]\n[passes]\ncusp = 0.05\n"
    )
}

fn notched_slab(count: u32) -> String {
    let pitch = 4200.0 / f64::from(count);
    let mut corners = vec![(0.0, 0.0), (4200.0, 0.0)];
    for k in (0..count).rev() {
        let deep = 1000.0 + 60.0 * (f64::from(k) * 2.3).sin();
        let (from, to) = (pitch * f64::from(k), pitch * f64::from(k + 1));
        corners.extend([
            (to, deep),
            (from + 0.4 * pitch, deep),
            (from + 0.4 * pitch, 1100.0),
            (from, 1100.0),
        ]);
    }
    let slab = points(corners);
    format!("{STONE}[slab]\ncorners = {slab}\n[top]\nrectangle = [2400, 640]\n")
}
