//! How long a whole plan takes, the worst of many: `cargo bench --bench random -- COUNT`, 500 jobs of each
//! kind where no count is given. A line a kind: median, 99th in a hundred and worst, with the worst one's
//! seed. `cargo bench --bench random -- KIND SEED` prints that job's file.

#![allow(
    clippy::cast_possible_truncation,
    clippy::cast_precision_loss,
    clippy::cast_sign_loss
)]

#[path = "../replay/mod.rs"]
mod replay;

use std::path::Path;
use std::time::{Duration, Instant};

use kerfwright::plan::Plan;
use replay::random_job::RandomJob;

/// Jobs of each kind where no count is given.
const COUNT: u64 = 500;

/// A kind of job: its name, and the job file of a seed.
type Kind = (&'static str, fn(u64) -> Option<String>);

const KINDS: [Kind; 4] = [
    ("plain", |seed| Some(RandomJob::of(seed).text())),
    ("insides", |seed| Some(RandomJob::with_insides(seed).text())),
    ("bowed", |seed| RandomJob::of(seed).bowed(seed)),
    ("bowed-insides", |seed| {
        RandomJob::with_insides(seed).bowed(seed)
    }),
];

fn main() {
    let words: Vec<String> = std::env::args()
        .skip(1)
        .filter(|a| a != "--bench")
        .collect();
    let kind = words
        .first()
        .and_then(|w| KINDS.iter().find(|k| k.0 == w.as_str()));
    match (kind, words.get(1).and_then(|w| w.parse().ok())) {
        (Some((_, text)), Some(seed)) => println!("{}", text(seed).unwrap_or_default()),
        _ => table(words.first().and_then(|w| w.parse().ok()).unwrap_or(COUNT)),
    }
}

fn table(count: u64) {
    println!(
        "{:<28}{:>10}{:>10}{:>10}  worst",
        "ms", "median", "99 %", "worst"
    );
    for folder in ["examples", "tests/golden"] {
        for (name, text) in files(Path::new(folder)) {
            let each: Vec<Duration> = (0..5).filter_map(|_| timed(&text)).collect();
            if let Some(least) = each.iter().min() {
                println!("{name:<28}{:>10.1}", ms(*least));
            }
        }
    }
    for (name, text) in KINDS {
        let mut times: Vec<(Duration, u64)> = (0..count)
            .filter_map(|seed| Some((timed(&text(seed)?)?, seed)))
            .collect();
        times.sort_unstable();
        let at = |share: f64| times[((times.len() - 1) as f64 * share) as usize];
        let (worst, seed) = at(1.0);
        println!(
            "{:<28}{:>10.1}{:>10.1}{:>10.1}  seed {seed}",
            format!("{} {name}", times.len()),
            ms(at(0.5).0),
            ms(at(0.99).0),
            ms(worst),
        );
    }
}

/// Job files of a folder, or of the folders in it, by name.
fn files(folder: &Path) -> Vec<(String, String)> {
    let entries = std::fs::read_dir(folder).expect("run from the package's folder");
    let mut found: Vec<(String, String)> = entries
        .filter_map(|entry| {
            let path = entry.ok()?.path();
            let name = path.file_stem()?.to_string_lossy().into_owned();
            let file = if path.is_dir() {
                path.join("job.toml")
            } else {
                path
            };
            let is_job = file.extension().is_some_and(|e| e == "toml");
            Some((name, std::fs::read_to_string(file).ok().filter(|_| is_job)?))
        })
        .collect();
    found.sort();
    found
}

/// Time of one plan; nothing for a text that is no job.
fn timed(text: &str) -> Option<Duration> {
    let (job, _) = kerfwright::job::read(text).ok()?;
    let start = Instant::now();
    let plan = Plan::of(&job);
    let took = start.elapsed();
    drop(plan);
    Some(took)
}

fn ms(time: Duration) -> f64 {
    time.as_secs_f64() * 1000.0
}
