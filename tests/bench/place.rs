//! How long placing takes, and how it grows: `cargo bench --bench place`.

use std::f64::consts::TAU;
use std::fmt::Write;

use divan::{Bencher, black_box};
use kerfwright::job::{Job, read};
use kerfwright::place::place;

const EXAMPLES: [(&str, &str); 3] = [
    (
        "tea-counter",
        include_str!("../../examples/tea-counter.toml"),
    ),
    (
        "garden-bench",
        include_str!("../../examples/garden-bench.toml"),
    ),
    ("washstand", include_str!("../../examples/washstand.toml")),
];
const NAMES: [&str; 3] = [EXAMPLES[0].0, EXAMPLES[1].0, EXAMPLES[2].0];

fn main() {
    divan::main();
}

fn job(text: &str) -> Job {
    read(text).expect("a whole job").0
}

#[divan::bench(args = NAMES)]
fn example(bencher: Bencher<'_, '_>, name: &str) {
    let (_, text) = EXAMPLES.iter().find(|(n, _)| *n == name).expect("a name");
    let job = job(text);
    bencher.bench(|| place(black_box(&job)));
}

/// Half the length and half the width of the slab, mm.
const HALF: (f64, f64) = (1500.0, 800.0);

/// A place on an oval, `far` of the way out, in the frame of its first corner. The first two corners
/// lie level, half a step to either side of the lowest point.
fn on_oval(steps: f64, far: f64, corners: u32) -> (f64, f64) {
    let at = |steps: f64, far: f64| {
        let angle = steps * TAU / f64::from(corners) - TAU / 4.0;
        (HALF.0 * far * angle.cos(), HALF.1 * far * angle.sin())
    };
    let (origin, point) = (at(-0.5, 1.0), at(steps - 0.5, far));
    (point.0 - origin.0, point.1 - origin.1)
}

/// A slab with many corners, some of them inside corners, and many flaws, most of them near its rim.
fn slab(corners: u32, flaws: u32) -> String {
    let mut text = String::from("[stone]\nkind = \"granite\"\nthickness = 30\n[slab]\ncorners = [");
    for i in 0..corners {
        let far = if i % 5 == 3 { 0.97 } else { 1.0 };
        let (x, y) = on_oval(f64::from(i), far, corners);
        let _ = write!(text, "[{x:.1}, {y:.1}], ");
    }
    text.push_str("]\n");
    for i in 0..flaws {
        let far = 0.75 + 0.05 * f64::from(i % 4);
        let (x, y) = on_oval(f64::from(i * corners / flaws) + 0.5, far, corners);
        let _ = writeln!(
            text,
            "[[slab.flaw]]\nwhat = \"knot {i}\"\nspot = {{ at = [{x:.1}, {y:.1}], across = 20 }}"
        );
    }
    text
}

/// A top with twelve corners, one of them an inside corner, and arcs.
const TOP: &str = "[top]\ncorners = [[0, 0], [500, -40], [1000, -30], [1400, 0], [1480, 150], [1470, \
                   330], [1380, 480], [1000, 520], [700, 430], [300, 500], [20, 470], [-60, 200]]\n\
                   round = { 4 = 60, 5 = 80, 6 = 80, 11 = 50, 12 = 120 }\nscoop = { 1 = 40 }\n\
                   bow = { \"2-3\" = 12, \"7-8\" = -8 }\n";
const PLAIN: &str = "[top]\nrectangle = [1400, 500]\n";

/// Corners of the slab and flaws.
const SIZES: [(u32, u32); 4] = [(8, 4), (15, 8), (30, 15), (60, 30)];

#[divan::bench(args = SIZES, sample_count = 5)]
fn rectangle(bencher: Bencher<'_, '_>, (corners, flaws): (u32, u32)) {
    let job = job(&(slab(corners, flaws) + PLAIN));
    bencher.bench(|| place(black_box(&job)));
}

#[divan::bench(args = SIZES, sample_count = 5)]
fn twelve_corners_with_arcs(bencher: Bencher<'_, '_>, (corners, flaws): (u32, u32)) {
    let job = job(&(slab(corners, flaws) + TOP));
    assert!(place(&job).is_ok(), "the hard case has an answer");
    bencher.bench(|| place(black_box(&job)));
}
