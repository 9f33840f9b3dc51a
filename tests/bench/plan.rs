//! How long planning takes: `cargo bench --bench plan`.

use std::f64::consts::TAU;
use std::fmt::Write;

use divan::{Bencher, black_box};
use kerfwright::job::{Job, read};
use kerfwright::place::place;
use kerfwright::plan::Plan;

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

fn example(name: &str) -> Job {
    let (_, text) = EXAMPLES.iter().find(|(n, _)| *n == name).expect("a name");
    job(text)
}

#[divan::bench(args = NAMES)]
fn read_job(bencher: Bencher<'_, '_>, name: &str) {
    let (_, text) = EXAMPLES.iter().find(|(n, _)| *n == name).expect("a name");
    bencher.bench(|| read(black_box(text)));
}

#[divan::bench(args = NAMES)]
fn plan_of(bencher: Bencher<'_, '_>, name: &str) {
    let job = example(name);
    bencher.bench(|| Plan::of(black_box(&job)));
}

/// Corners of the slab in the hard case.
const CORNERS: u32 = 60;
/// Flaws of the slab in the hard case.
const FLAWS: u32 = 30;

/// Half the length and half the width of the slab in the hard case, mm.
const HALF: (f64, f64) = (1500.0, 800.0);

/// A place on the oval of the hard case, `far` of the way out, in the frame of its first corner.
fn on_oval(steps: f64, far: f64) -> (f64, f64) {
    let at = |steps: f64, far: f64| {
        let angle = steps * TAU / f64::from(CORNERS) - TAU / 4.0;
        (HALF.0 * far * angle.cos(), HALF.1 * far * angle.sin())
    };
    // The first two corners lie level, half a step to either side of the lowest point.
    let (origin, point) = (at(-0.5, 1.0), at(steps - 0.5, far));
    (point.0 - origin.0, point.1 - origin.1)
}

/// A slab with very many corners, slightly uneven, and very many flaws, most of them near its rim.
fn many_corners_and_flaws() -> String {
    let mut text = String::from("[stone]\nkind = \"granite\"\nthickness = 30\n[slab]\ncorners = [");
    for i in 0..CORNERS {
        let far = if i % 3 == 2 { 1.004 } else { 1.0 };
        let (x, y) = on_oval(f64::from(i), far);
        let _ = write!(text, "[{x:.1}, {y:.1}], ");
    }
    text.push_str("]\n");
    for i in 0..FLAWS {
        let far = 0.75 + 0.05 * f64::from(i % 4);
        let (x, y) = on_oval(f64::from(i * CORNERS / FLAWS) + 0.5, far);
        let _ = writeln!(
            text,
            "[[slab.flaw]]\nwhat = \"knot {i}\"\nspot = {{ at = [{x:.1}, {y:.1}], across = 20 }}"
        );
    }
    text.push_str("[top]\nrectangle = [1400, 500]\n");
    text
}

#[divan::bench(sample_count = 3)]
fn place_on_60_corners_with_30_flaws(bencher: Bencher<'_, '_>) {
    let job = job(&many_corners_and_flaws());
    assert!(place(&job).is_ok(), "the hard case has an answer");
    bencher.bench(|| place(black_box(&job)));
}
