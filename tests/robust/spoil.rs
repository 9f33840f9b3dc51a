//! Inputs spoilt: each seed makes another out of the corpus, always the same.

use crate::replay::random_job::Dice;

/// Numbers that are on or beyond some edge.
const ODD: [&str; 24] = [
    "0",
    "-1",
    "1",
    "2",
    "3",
    "0.1",
    "0.05",
    "-0.0",
    "1e-9",
    "1e-300",
    "1e308",
    "1e309",
    "nan",
    "inf",
    "-inf",
    "9223372036854775807",
    "10000",
    "9999.999",
    "30",
    "29.999",
    "90",
    "360",
    "\"3 1/2 in\"",
    "\"1,5 m\"",
];

/// The most bytes of a spoilt input; what is longer is cut off.
const MOST: usize = 4096;

/// What inputs are made of.
pub(crate) struct Corpus {
    /// Jobs that are read.
    pub(crate) jobs: Vec<Vec<u8>>,
    /// Inputs that are refused.
    pub(crate) refused: Vec<Vec<u8>>,
}

impl Corpus {
    fn one(&self, dice: &mut Dice) -> Vec<u8> {
        let from = if dice.chance(0.5) {
            &self.jobs
        } else {
            &self.refused
        };
        dice.pick(from)
    }
}

/// The spoilt input of a seed: half of them one of the corpus after one to six changes of any kind, half a job that
/// is read after one or two that leave it TOML.
pub(crate) fn spoilt(corpus: &Corpus, seed: u64) -> Vec<u8> {
    let dice = &mut Dice(seed.wrapping_mul(0x1000_0000_01B3) ^ 0x5EED);
    let gently = dice.chance(0.5);
    let mut input = if gently {
        dice.pick(&corpus.jobs)
    } else {
        corpus.one(dice)
    };
    for _ in 0..=dice.below(if gently { 2 } else { 6 }) {
        let other = corpus.one(dice);
        if gently || dice.chance(0.7) {
            in_toml(&mut input, &other, dice);
        } else {
            anyhow(&mut input, &other, dice);
        }
        input.truncate(MOST);
    }
    input
}

/// Changes bytes, wherever they are.
fn anyhow(input: &mut Vec<u8>, other: &[u8], dice: &mut Dice) {
    match dice.below(5) {
        0 => set_byte(input, dice),
        1 => {
            let byte = dice.pick(b"\n\r\t \"'[]{}=,.#-+e_0\x00\x1b\x7f\xc3\xff");
            input.insert(dice.below(input.len() + 1), byte);
        }
        2 => {
            let (from, to) = range(input.len(), 24, dice);
            input.drain(from..to);
        }
        3 => {
            let (from, to) = range(input.len(), 64, dice);
            let again = input[from..to].to_vec();
            input.splice(from..from, again);
        }
        _ => {
            input.truncate(dice.below(input.len() + 1));
            input.extend(&other[dice.below(other.len() + 1)..]);
        }
    }
}

/// Changes a number, a word or a line.
fn in_toml(input: &mut Vec<u8>, other: &[u8], dice: &mut Dice) {
    match dice.below(12) {
        0 => put(input, numbers, dice.pick(&ODD).as_bytes(), dice),
        1..=4 => scaled(input, dice),
        5 | 6 => put_others(input, other, numbers, dice),
        7 => put_others(input, other, words, dice),
        8 => put(input, lines, b"", dice),
        9 => put_others(input, other, lines, dice),
        _ => {
            // A line of another, or one of its own once more, before some line.
            let from = if dice.chance(0.2) {
                input.clone()
            } else {
                other.to_vec()
            };
            let line = one(&from, lines, dice).map_or(Vec::new(), |(a, b)| from[a..b].to_vec());
            let at = one(input, lines, dice).map_or(0, |(a, _)| a);
            input.splice(at..at, line);
        }
    }
}

fn set_byte(input: &mut [u8], dice: &mut Dice) {
    let at = dice.below(input.len().max(1));
    if let Some(byte) = input.get_mut(at) {
        *byte ^= 1 << dice.below(8);
    }
}

fn range(length: usize, most: usize, dice: &mut Dice) -> (usize, usize) {
    let from = dice.below(length + 1);
    (from, (from + dice.below(most) + 1).min(length))
}

/// Where something stands: from, to.
type Spans = fn(&[u8]) -> Vec<(usize, usize)>;

fn one(input: &[u8], spans: Spans, dice: &mut Dice) -> Option<(usize, usize)> {
    let all = spans(input);
    (!all.is_empty()).then(|| dice.pick(&all))
}

/// Puts something in the place of one such thing.
fn put(input: &mut Vec<u8>, spans: Spans, new: &[u8], dice: &mut Dice) {
    if let Some((from, to)) = one(input, spans, dice) {
        input.splice(from..to, new.iter().copied());
    }
}

fn put_others(input: &mut Vec<u8>, other: &[u8], spans: Spans, dice: &mut Dice) {
    if let Some((from, to)) = one(other, spans, dice) {
        put(input, spans, &other[from..to], dice);
    }
}

/// Makes a number larger or smaller, by a hair or by much.
fn scaled(input: &mut Vec<u8>, dice: &mut Dice) {
    let Some((from, to)) = one(input, numbers, dice) else {
        return;
    };
    let old: Option<f64> = std::str::from_utf8(&input[from..to])
        .ok()
        .and_then(|t| t.parse().ok());
    let by = dice.pick(&[
        0.01, 0.1, 0.5, 0.9, 0.999_999, 1.000_001, 1.1, 2.0, 10.0, -1.0,
    ]);
    if let Some(old) = old {
        let new = format!("{}", old * by);
        input.splice(from..to, new.into_bytes());
    }
}

/// Runs of bytes of one kind.
fn runs(input: &[u8], of: fn(u8) -> bool) -> Vec<(usize, usize)> {
    let mut all = Vec::new();
    let mut from = None;
    for (i, byte) in input.iter().copied().chain([b'\n']).enumerate() {
        match (from, of(byte) && i < input.len()) {
            (None, true) => from = Some(i),
            (Some(start), false) => {
                all.push((start, i));
                from = None;
            }
            _ => {}
        }
    }
    all
}

fn numbers(input: &[u8]) -> Vec<(usize, usize)> {
    runs(input, |b| b.is_ascii_digit() || b == b'.')
}

fn words(input: &[u8]) -> Vec<(usize, usize)> {
    runs(input, |b| b.is_ascii_alphabetic() || b == b'_')
}

/// Lines with their ends.
fn lines(input: &[u8]) -> Vec<(usize, usize)> {
    let mut from = 0;
    let ends = input.split_inclusive(|b| *b == b'\n').map(|line| {
        let start = from;
        from += line.len();
        (start, from)
    });
    ends.collect()
}

#[test]
fn a_seed_makes_always_the_same() {
    let corpus = Corpus {
        jobs: vec![b"[stone]\nkind = \"slate\"\nthickness = 30\n".to_vec()],
        refused: vec![b"a = 1.5\nb = [2, 3]\n".to_vec()],
    };
    let some: Vec<Vec<u8>> = (0..200).map(|seed| spoilt(&corpus, seed)).collect();
    assert_eq!(some[17], spoilt(&corpus, 17));
    let distinct: std::collections::BTreeSet<&Vec<u8>> = some.iter().collect();
    assert!(distinct.len() > 150, "{}", distinct.len());
}
