//! How long the handling of a whole job takes, every state of the stone included:
//! `cargo bench --bench handle`. To be under 10 ms for an ordinary job.

use divan::{Bencher, black_box};
use kerfwright::cut;
use kerfwright::handle::{Loads, assess};
use kerfwright::job::{Job, read};
use kerfwright::piece;
use kerfwright::place::{Placement, place};

const JOBS: [(&str, &str); 4] = [
    (
        "tea-counter",
        include_str!("../../examples/tea-counter.toml"),
    ),
    (
        "garden-bench",
        include_str!("../../examples/garden-bench.toml"),
    ),
    ("washstand", include_str!("../../examples/washstand.toml")),
    ("heavy-slab", include_str!("../golden/heavy-slab/job.toml")),
];
const NAMES: [&str; 4] = [JOBS[0].0, JOBS[1].0, JOBS[2].0, JOBS[3].0];

fn main() {
    divan::main();
}

fn stones(name: &str) -> (Job, Loads, Placement) {
    let (_, text) = JOBS.iter().find(|(n, _)| *n == name).expect("a name");
    let job = read(text).expect("a whole job").0;
    let placement = place(&job).expect("it fits").0;
    let mut cuts = cut::plan(&job, &placement).0;
    let followed = piece::follow(&job, &placement, &mut cuts);
    let loads = Loads::of(&job, &placement, &followed);
    (job, loads, placement)
}

#[divan::bench(args = NAMES)]
fn handling(bencher: Bencher<'_, '_>, name: &str) {
    let (job, loads, placement) = stones(name);
    bencher.bench(|| assess(black_box(&job), black_box(&loads), placement.pose));
}
