//! How long the sheet takes from a finished plan: `cargo bench --bench sheet`.

use divan::{Bencher, black_box};
use kerfwright::document::{Annex, document};
use kerfwright::job::read;
use kerfwright::layout;
use kerfwright::layout::item::{Paper, Sheet};
use kerfwright::plan::Plan;
use kerfwright::render::pdf::pdf;

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

fn example(name: &str) -> Plan {
    let (_, text) = EXAMPLES.iter().find(|(n, _)| *n == name).expect("a name");
    let job = read(text).expect("a whole job").0;
    Plan::of(&job).expect("it fits")
}

fn sheet(plan: &Plan) -> Sheet {
    layout::pages(&document(plan, Annex::Without), Paper::A4)
}

#[divan::bench(args = NAMES)]
fn pages(bencher: Bencher<'_, '_>, name: &str) {
    let plan = example(name);
    bencher.bench(|| sheet(black_box(&plan)));
}

#[divan::bench(args = NAMES)]
fn written_as_pdf(bencher: Bencher<'_, '_>, name: &str) {
    let sheet = sheet(&example(name));
    bencher.bench(|| pdf(black_box(&sheet)));
}
