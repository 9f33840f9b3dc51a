//! What placement, cuts and pieces give cause to say is said in phrases that can be put into another
//! language: every gap holds a number, a name or one of a fixed set of words.

use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};

use kerfwright::diag::Finding;
use kerfwright::hazard::registry::find;
use kerfwright::job::{self, Job};
use kerfwright::plan::Plan;

/// The records of these stages.
const RECORDS: [&str; 21] = [
    "opening-larger",
    "measure-again",
    "turn-saves",
    "disc-too-small",
    "no-room-for-guide",
    "arm-out-of-reach",
    "corner-ground-by-hand",
    "said-weight",
    "waste-needs-support",
    "hangs-on-a-strip",
    "rail-too-narrow",
    "inside-corner-radius",
    "inside-corner-needs-core-bit",
    "core-holes-close",
    "much-to-grind",
    "no-disc-for-hollow",
    "stopped-cut-too-short",
    "waste-not-freed",
    "curve-without-arm",
    "sawn-with-another",
    "curve-waste-heavy",
];

fn files(at: &Path) -> Vec<PathBuf> {
    if at.is_file() {
        return vec![at.to_path_buf()];
    }
    let entries = fs::read_dir(at).into_iter().flatten();
    entries.flat_map(|e| files(&e.unwrap().path())).collect()
}

/// Every job of the examples and the golden tests that can be planned, and the jobs below.
fn plans() -> Vec<(Job, Plan)> {
    let root = Path::new(env!("CARGO_MANIFEST_DIR"));
    let at_hand = ["examples", "tests/golden"].map(|folder| files(&root.join(folder)));
    let texts = at_hand.into_iter().flatten();
    let texts = texts.filter(|path| path.extension().is_some_and(|e| e == "toml"));
    let texts = texts.map(|path| fs::read_to_string(path).unwrap());
    texts
        .chain(own())
        .filter_map(|text| {
            let (job, _) = job::read(&text).ok()?;
            let plan = Plan::of(&job).ok()?;
            Some((job, plan))
        })
        .collect()
}

const SLAB: &str = "[slab]\nrectangle = [2300, 900]\nrough = [\"AB\", \"BC\", \"CD\", \"DA\"]\n";
const NOTCHED: &str = "[top]\ncorners = [[0, 0], [1200, 0], [1200, 420], [700, 420], [700, 300], \
                       [500, 300], [500, 420], [0, 420]]\n";
const LONG_ARM: &str = "[circle_jig]\nreach = [150, 200]\n";
const BIT: &str = "[[core_bit]]\ndiameter = 35\n";

/// A granite top of 2000 by 600 on a slab with room, and what is said besides.
fn counter(more: &str) -> String {
    format!(
        "[stone]\nkind = \"granite\"\nthickness = 30\n{SLAB}[top]\nrectangle = [2000, 600]\n{more}"
    )
}

fn notched(treated: &str, more: &str) -> String {
    format!(
        "[stone]\nkind = \"granite\"\nthickness = 30\n{SLAB}{NOTCHED}{treated}\n[place]\nat = [100, 100]\n\
         turn = 0\n{more}"
    )
}

fn opening(at: [f64; 2], shape: &str) -> String {
    format!("[[top.cutout]]\nat = [{}, {}]\n{shape}\n", at[0], at[1])
}

fn bowl(x: f64, y: f64, size: [f64; 2]) -> String {
    let round = "round = { 1 = 17.5, 2 = 17.5, 3 = 17.5, 4 = 17.5 }";
    opening(
        [x, y],
        &format!("rectangle = [{}, {}]\n{round}", size[0], size[1]),
    )
}

/// Jobs that raise one after another of the findings.
fn own() -> Vec<String> {
    let round = |r: f64| format!("round = {{ 1 = {r}, 2 = {r}, 3 = {r}, 4 = {r} }}");
    let sharp = opening([1000.0, 300.0], "rectangle = [500, 340]");
    let named = format!(
        "{}what = \"copper sink\"\n",
        bowl(1000.0, 220.0, [500.0, 356.0])
    );
    let short = opening([1000.0, 300.0], "rectangle = [500, 90]");
    let bent = |r: f64| {
        opening(
            [1000.0, 300.0],
            &format!("rectangle = [500, 340]\n{}", round(r)),
        )
    };
    let cross = "corners = [[0, 0], [300, 0], [300, 100], [200, 100], [200, 200], [0, 200]]";
    vec![
        // A flaw within the error of the tape, and a seller's weight that cannot be right.
        "[stone]\nkind = \"granite\"\nthickness = 30\nsaid = \"20 kg\"\n[slab]\nrectangle = [2300, 900]\ntape = 2\n\
         [[slab.flaw]]\nspot = { at = [2132, 300], across = 20 }\nclear = 20\n[top]\nrectangle = [2000, 600]\n[place]\nat = [100, 100]\nturn = 0\n"
            .into(),
        "[stone]\nkind = \"granite\"\nthickness = 60\n[slab]\nrectangle = [900, 350]\n[top]\n\
         rectangle = [800, 300]\n"
            .into(),
        // A slab that runs askew, all its edges rough.
        "[stone]\nkind = \"granite\"\nthickness = 30\n[slab]\ncorners = [[0, 0], [1903, 0], [2285, 1105], [382, 1105]]\n\
         rough = [\"AB\", \"BC\", \"CD\", \"DA\"]\n[top]\nrectangle = [1060, 198]\n"
            .into(),
        // A guide wider than the stone.
        format!(
            "[stone]\nkind = \"granite\"\nthickness = 30\n[slab]\nrectangle = [900, 350]\n[top]\n\
             rectangle = [800, 300]\n{}[guide]\noffset = 330\n{BIT}",
            opening([400.0, 150.0], "rectangle = [300, 120]")
        ),
        // Inside corners and hollows: no bit, one too small, one too large.
        counter(&sharp),
        counter(&(sharp.clone() + BIT)),
        counter(&(sharp.clone() + "[[core_bit]]\ndiameter = 12\n")),
        counter(&(bent(15.0) + BIT)),
        notched("", ""),
        notched("", BIT),
        notched("", "[[core_bit]]\ndiameter = 12\n"),
        notched("round = { 5 = 15 }", BIT),
        notched("round = { 5 = 15, 6 = 15 }", BIT),
        notched("round = { 5 = 40 }", ""),
        counter(&opening([1000.0, 300.0], "circle = 90")),
        counter(&opening([1000.0, 300.0], "circle = 130")),
        counter(&(opening([1000.0, 300.0], "circle = 360") + LONG_ARM)),
        counter(&bent(80.0)),
        counter(&opening([1000.0, 300.0], &format!("rectangle = [500, 210]\n{}", round(80.0)))),
        counter(&(bent(100.0) + LONG_ARM)),
        notched("round = { 5 = 80 }", LONG_ARM),
        counter(&("scoop = { 3 = 80 }\n".to_owned() + LONG_ARM)),
        counter(&("scoop = { 3 = 260 }\n".to_owned() + LONG_ARM)),
        counter(&("round = { 3 = 260 }\n".to_owned() + LONG_ARM)),
        // So slight a curve, and one without room, that no plunge is made.
        format!(
            "[stone]\nkind = \"granite\"\nthickness = 30\n{SLAB}[top]\ncorners = [[0, 0], [2000, 0], [2000, 600], \
             [1000, 690], [0, 600]]\nround = {{ 4 = 20 }}\n"
        ),
        counter(
            &(opening(
                [1000.0, 300.0],
                "corners = [[0, 0], [300, 0], [300, 30], [30, 30], [30, 300], [0, 300]]\nround = { 4 = 5 }",
            ) + "[[core_bit]]\ndiameter = 20\n"),
        ),
        // Cuts too short.
        counter(&short),
        notched("", "[[core_bit]]\ndiameter = 600\n"),
        format!(
            "[stone]\nkind = \"granite\"\nthickness = 30\n{SLAB}[top]\ncorners = [[0, 0], [1200, 0], [1200, 420], \
             [640, 420], [640, 300], [560, 300], [560, 420], [0, 420]]\n[place]\nat = [100, 100]\nturn = 0\n"
        ),
        counter(&opening([1000.0, 300.0], cross)),
        counter(&(opening([1000.0, 300.0], &format!("{cross}\nround = {{ 4 = 2 }}")) + BIT)),
        // Plunges and the hole beside them that do not meet.
        "[stone]\nkind = \"gabbro\"\nthickness = [20.3, 21.1]\n[slab]\nrectangle = [1471.6, 894.5]\n[top]\n\
         corners = [[0, 0], [1374, 0], [1374, 796.9], [812.7, 796.9], [812.7, 344.4], [687.7, 344.4], \
         [687.7, 796.9], [0, 796.9]]\nround = { 6 = 108.6 }\nfinish = { \"1-2\" = \"ease\", \"2-3\" = \"saw\", \
         \"3-4\" = \"saw\", \"4-5\" = \"saw\", \"5-6\" = \"saw\", \"6-7\" = \"polish\", \"7-8\" = \"saw\", \
         \"8-1\" = \"saw\" }\n[place]\nat = [63.1, 25.1]\nturn = 2\n[machine]\nplate = 6\n[passes]\ncusp = 1\n\
         [[disc]]\nname = \"small\"\ndiameter = 125\nkerf = 2.2\nobstruction = 34\nmax_rpm = 12200\n\
         [[core_bit]]\ndiameter = 20\n[[core_bit]]\ndiameter = 35\n[[core_bit]]\ndiameter = 50\n"
            .into(),
        // Rails and strips.
        counter(&(named + BIT)),
        counter(&(bowl(600.0, 300.0, [500.0, 380.0]) + &bowl(1152.0, 300.0, [500.0, 380.0]) + BIT)),
        counter(&(bowl(600.0, 300.0, [500.0, 380.0]) + &bowl(1120.0, 300.0, [500.0, 380.0]) + BIT)),
        counter(&(bowl(1000.0, 205.0, [500.0, 360.0]) + BIT)),
        counter(
            &(bowl(1000.0, 290.0, [500.0, 380.0]) + &opening([1000.0, 540.0], "circle = 35") + BIT),
        ),
        "[stone]\nkind = \"granite\"\nthickness = 30\n[slab]\nrectangle = [1500, 900]\n[top]\n\
         corners = [[0, 0], [1200, 0], [1200, 28], [500, 28], [500, 600], [0, 600]]\n\
         [place]\nat = [100, 100]\nturn = 0\n[[core_bit]]\ndiameter = 35\n"
            .into(),
        // The edges beside a notch lie in line and ask for different allowances.
        notched("finish = { \"3-4\" = \"polish\", \"7-8\" = \"saw\" }", BIT),
        counter("round = { 2 = 300, 3 = 300 }\n[passes]\nwaste_piece = \"0.5 kg\"\n"),
    ]
}

/// The findings of these stages in a plan.
fn of_stages(plan: &Plan) -> impl Iterator<Item = &Finding> {
    let all = plan.stops.iter().chain(&plan.open).chain(&plan.warnings);
    all.filter(|f| find(f.id()).is_some_and(|record| RECORDS.contains(&record.id)))
}

#[test]
fn every_phrase_of_these_stages_is_said_by_some_job() {
    let records = RECORDS.map(|id| find(id).unwrap_or_else(|| panic!("{id} has no record")));
    let phrases = records.iter().flat_map(|record| record.phrases);
    let wanted: BTreeSet<&str> = phrases.map(|phrase| phrase.id).collect();
    let plans = plans();
    let told = plans.iter().flat_map(|(_, plan)| of_stages(plan));
    let said: BTreeSet<&str> = told.map(Finding::id).collect();
    let silent: Vec<&str> = wanted.difference(&said).copied().collect();
    assert!(silent.is_empty(), "{silent:?}");
}
