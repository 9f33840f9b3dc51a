//! What breaks it, as long as wanted: `cargo bench --bench spoilt -- COUNT [FROM]` spoils so many inputs of the
//! corpus, the first seed FROM, and tries each; `-- jobs COUNT [FROM]` tries random jobs, a third of each kind, with
//! their sheets, `-- plans COUNT [FROM]` without, `-- text COUNT [FROM]` prints them. A line for each input that breaks something, and the counts at the end.
//!
//! `-- grow COUNT [FROM]` makes the corpus anew: of what there is and of so many spoilt inputs, each that is answered
//! as none before, as short as it can be made line by line.

#[path = "../robust/pack.rs"]
mod pack;
#[path = "../replay/mod.rs"]
#[allow(
    clippy::cast_possible_truncation,
    clippy::cast_precision_loss,
    clippy::cast_sign_loss,
    reason = "counts and grid coordinates are far below what the casts can hold"
)]
mod replay;
#[path = "../robust/spoil.rs"]
mod spoil;
#[path = "../robust/trial.rs"]
mod trial;

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::time::{Duration, Instant};

use replay::random_job::RandomJob;
use spoil::{Corpus, spoilt};
use trial::{Depth, End, Trial, Wrong, tried};

/// Inputs where no count is given.
const COUNT: u64 = 10_000;
/// What takes longer hangs.
const LONG: Duration = Duration::from_secs(2);
/// What a form that plans at each key should keep to.
const SLOW: Duration = Duration::from_millis(200);
/// What takes longer is not made shorter line by line.
const QUICK: Duration = Duration::from_millis(60);
/// The most bytes of the packed corpus.
const MOST: usize = 240_000;

fn main() {
    let words: Vec<String> = std::env::args()
        .skip(1)
        .filter(|a| a != "--bench")
        .collect();
    let numbers: Vec<u64> = words.iter().filter_map(|w| w.parse().ok()).collect();
    let count = numbers.first().copied().unwrap_or(COUNT);
    let from = numbers.get(1).copied().unwrap_or(0);
    let seeds = from..from + count;
    std::panic::set_hook(Box::new(|_| {}));
    let corpus = read();
    match words.first().map(String::as_str) {
        Some("grow") => write(&grown(corpus, seeds)),
        Some("text") => seeds.for_each(|seed| println!("{}", String::from_utf8_lossy(&job(seed)))),
        Some("jobs") => Counts::of(seeds, job, Sheets::All).print(),
        Some("plans") => Counts::of(seeds, job, Sheets::None).print(),
        _ => Counts::of(seeds, |seed| spoilt(&corpus, seed), Sheets::OfNewAnswers).print(),
    }
}

const JOBS: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/corpus/jobs.txt");
const REFUSED: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/corpus/refused.txt");

fn read() -> Corpus {
    let [jobs, refused] =
        [JOBS, REFUSED].map(|path| pack::unpacked(&fs::read_to_string(path).expect("the corpus")));
    Corpus { jobs, refused }
}

fn write(corpus: &Corpus) {
    for (path, inputs) in [(JOBS, &corpus.jobs), (REFUSED, &corpus.refused)] {
        fs::write(path, pack::packed(inputs)).expect("the corpus can be written");
        println!("{path}: {} inputs", inputs.len());
    }
}

/// The random job of a seed.
fn job(seed: u64) -> Vec<u8> {
    let at = seed / 3;
    let text = match seed % 3 {
        0 => RandomJob::of(at).text(),
        1 => RandomJob::with_insides(at).text(),
        _ => {
            let job = RandomJob::of(at);
            job.bowed(at).unwrap_or_else(|| job.text())
        }
    };
    text.into_bytes()
}

/// Which inputs have their sheet made.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Sheets {
    None,
    /// Those with an answer that none before had.
    OfNewAnswers,
    All,
}

#[derive(Default)]
struct Counts {
    inputs: u64,
    ends: BTreeMap<trial::End, u64>,
    wrong: BTreeMap<&'static str, u64>,
    long: u64,
    /// Each with its seed.
    times: Vec<(Duration, u64)>,
    answers: BTreeSet<u64>,
    all: Duration,
}

impl Counts {
    /// Tries every input of some seeds.
    fn of(seeds: std::ops::Range<u64>, input: impl Fn(u64) -> Vec<u8>, sheets: Sheets) -> Self {
        let start = Instant::now();
        let mut counts = Self::default();
        for seed in seeds {
            let input = input(seed);
            let mut trial = match sheets {
                Sheets::All => tried(&input, Depth::Sheet),
                Sheets::None | Sheets::OfNewAnswers => tried(&input, Depth::Plan),
            };
            let known = counts.answers.len();
            counts.answers.extend(&trial.answers);
            if sheets == Sheets::OfNewAnswers && counts.answers.len() > known {
                trial = tried(&input, Depth::Sheet);
            }
            counts.take(&trial, seed);
            let long = trial.took > LONG;
            if long || !trial.wrong.is_empty() {
                println!(
                    "seed {seed}, {:.1} s: {:?}",
                    trial.took.as_secs_f64(),
                    trial.wrong
                );
                println!("{}", pack::packed(&[input]));
            }
            if counts.inputs % 100_000 == 0 {
                counts.all = start.elapsed();
                counts.print();
            }
        }
        counts.all = start.elapsed();
        counts
    }

    fn take(&mut self, trial: &Trial, seed: u64) {
        self.inputs += 1;
        *self.ends.entry(trial.end).or_default() += 1;
        self.long += u64::from(trial.took > LONG);
        self.times.push((trial.took, seed));
        let kinds: BTreeSet<&str> = trial.wrong.iter().map(kind).collect();
        for kind in kinds {
            *self.wrong.entry(kind).or_default() += 1;
        }
    }

    fn print(&self) {
        let wrong = |kind| self.wrong.get(kind).copied().unwrap_or(0);
        println!(
            "{} inputs in {:.0} s: {:?}",
            self.inputs,
            self.all.as_secs_f64(),
            self.ends
        );
        println!(
            "panics {}, over 2 s {}, numbers that are none {}, replays that fail {}, reports that fail {}",
            wrong("panic"),
            self.long,
            wrong("not finite"),
            wrong("replay"),
            wrong("report")
        );
        let mut times = self.times.clone();
        times.sort();
        let ms = |(took, _): &(Duration, u64)| took.as_secs_f64() * 1e3;
        let of = |percent: usize| times.get(times.len() * percent / 100).map_or(0.0, ms);
        let slow = times.iter().filter(|t| t.0 > SLOW).count();
        println!(
            "median {:.1} ms, 99th in a hundred {:.0} ms, {slow} over {SLOW:?}; {} different answers",
            of(50),
            of(99),
            self.answers.len()
        );
        let longest = times.iter().rev().take(8);
        let longest: Vec<String> = longest
            .map(|t| format!("{:.0} ms seed {}", ms(t), t.1))
            .collect();
        println!("longest: {}", longest.join(", "));
    }
}

fn kind(wrong: &Wrong) -> &'static str {
    match wrong {
        Wrong::Panicked(_) => "panic",
        Wrong::NotFinite => "not finite",
        Wrong::Replay(_) => "replay",
        Wrong::Report(_) => "report",
    }
}

/// A corpus of the shortest inputs with an answer that no other has.
fn grown(corpus: Corpus, seeds: std::ops::Range<u64>) -> Corpus {
    let mut new: Vec<Vec<u8>> = seeds.map(|seed| spoilt(&corpus, seed)).collect();
    let mut all: Vec<Vec<u8>> = corpus.jobs.into_iter().chain(corpus.refused).collect();
    all.sort_by_key(Vec::len);
    all.append(&mut new);
    let mut known = BTreeSet::new();
    let mut room = [MOST / 2; 2];
    let mut kept = [vec![], vec![]];
    for input in all {
        let trial = tried(&input, Depth::Plan);
        let side = usize::from(trial.end < End::NoFit);
        let new: BTreeSet<u64> = trial.answers.difference(&known).copied().collect();
        if trial.took > LONG || new.is_empty() {
            continue;
        }
        let short = if trial.took < QUICK {
            shortened(&input, &trial, &new)
        } else {
            input
        };
        let size = pack::packed(std::slice::from_ref(&short)).len();
        if size <= room[side] {
            room[side] -= size;
            known.extend(new);
            kept[side].push(short);
        }
    }
    let [jobs, refused] = kept;
    Corpus { jobs, refused }
}

/// The input without every line that its end and its new answers do not need.
fn shortened(input: &[u8], as_it_is: &Trial, answers: &BTreeSet<u64>) -> Vec<u8> {
    let mut lines: Vec<&[u8]> = input.split_inclusive(|b| *b == b'\n').collect();
    let mut at = lines.len();
    while at > 0 {
        at -= 1;
        let line = lines.remove(at);
        let without = tried(&lines.concat(), Depth::Plan);
        let same_side = (without.end < End::NoFit) == (as_it_is.end < End::NoFit);
        if !same_side || !answers.is_subset(&without.answers) {
            lines.insert(at, line);
        }
    }
    lines.concat()
}
