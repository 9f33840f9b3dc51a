//! How long planning takes: `cargo bench --bench plan`.

use divan::{Bencher, black_box};
use kerfwright::job::{Job, read};
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
