//! Random slips at stopped cuts, hollows and openings: whatever is planned replays, what is refused says why.

use std::fmt::Write;

use kerfwright::job;
use kerfwright::plan::Plan;

use super::inside::{USUAL, l_top, sink};
use super::replay::faults;

/// Numbers that are the same on every machine.
struct Dice(u64);

impl Dice {
    fn throw(&mut self) -> f64 {
        self.0 = self
            .0
            .wrapping_mul(6_364_136_223_846_793_005)
            .wrapping_add(1_442_695_040_888_963_407);
        (self.0 >> 11) as f64 / (1_u64 << 53) as f64
    }

    fn one<'a>(&mut self, of: &[&'a str]) -> &'a str {
        of[((self.throw() * of.len() as f64) as usize).min(of.len() - 1)]
    }

    /// Some of a list, in its order.
    fn some<'a>(&mut self, of: &[&'a str]) -> Vec<&'a str> {
        of.iter().copied().filter(|_| self.throw() < 0.6).collect()
    }

    /// A slip, to a twentieth of a millimetre.
    fn slip(&mut self) -> f64 {
        let most = if self.throw() < 0.5 { 3.0 } else { 24.0 };
        (self.throw() * most * 20.0).round().max(2.0) / 20.0
    }
}

fn quoted(names: &[&str]) -> String {
    let names: Vec<String> = names.iter().map(|n| format!("\"{n}\"")).collect();
    names.join(", ")
}

fn l_job(dice: &mut Dice) -> String {
    let trims = ["1-2", "2-3", "5-6", "6-1", "3-4", "4-5"];
    let rounded = dice.throw() < 0.5;
    let done = if rounded && dice.throw() < 0.5 {
        format!("{}, 4", quoted(&trims))
    } else {
        quoted(&dice.some(&trims))
    };
    let mut text = l_top(&format!("done = [{done}]\n"));
    if rounded {
        text = text.replace("finish =", "round = { 4 = 180 }\nfinish =");
    }
    match dice.one(&["edge", "arc", "chip", "none"]) {
        "edge" => {
            let (edge, way) = (dice.one(&trims), dice.one(&["short", "over"]));
            let by = dice.slip();
            let _ = write!(text, "[[as_cut.edge]]\nedge = \"{edge}\"\n{way} = {by}\n");
        }
        "arc" if done.ends_with('4') => {
            let radius = 179.0 + dice.slip() - 8.0;
            let _ = write!(text, "[[as_cut.arc]]\ncorner = 4\nradius = {radius}\n");
        }
        "chip" => {
            let x = if rounded { 800.0 } else { 590.0 } + dice.throw() * 700.0;
            let (deep, across) = (dice.slip(), 4.0 + dice.throw() * 30.0);
            let _ = write!(
                text,
                "[[as_cut.chip]]\nat = [{x}, 600]\ndeep = {deep}\nacross = {across}\n"
            );
        }
        _ => {}
    }
    text
}

fn sink_job(dice: &mut Dice) -> String {
    let sides = ["1-2", "2-3", "3-4", "4-1"];
    let done = if dice.throw() < 0.5 {
        "\"all\"".to_owned()
    } else {
        format!("[{}]", quoted(&dice.some(&sides)))
    };
    let mut text = sink(&format!("done = {done}\n"));
    for side in dice.some(&sides) {
        if dice.throw() < 0.5 {
            let (way, by) = (dice.one(&["larger", "smaller"]), dice.slip());
            let _ = write!(
                text,
                "[[as_cut.cutout.edge]]\nedge = \"{side}\"\n{way} = {by}\n"
            );
        }
    }
    if dice.throw() < 0.3 {
        let x = 560.0 + dice.throw() * 280.0;
        let (deep, across) = (dice.slip(), 4.0 + dice.throw() * 30.0);
        let _ = write!(
            text,
            "[[as_cut.chip]]\nat = [{x}, 510]\ndeep = {deep}\nacross = {across}\n"
        );
    }
    if dice.throw() < 0.4 {
        text = text.replace(
            "[560, 400]",
            "[560, 400]\nround = { 1 = 17.5, 2 = 17.5, 3 = 110, 4 = 110 }",
        );
    }
    text
}

/// Plans and replays jobs; gives how many were planned.
fn replayed(seeds: std::ops::Range<u64>, of: fn(&mut Dice) -> String) -> usize {
    let (mut planned, mut bad) = (0, Vec::new());
    for seed in seeds {
        let mut dice = Dice(seed.wrapping_mul(0x9E37_79B9_7F4A_7C15) ^ 0x5DEE_CE66);
        dice.throw();
        let text = of(&mut dice);
        let (job, _) = job::read(&text).unwrap_or_else(|f| panic!("{f:#?}\n{text}"));
        match Plan::of(&job) {
            Ok(plan) => {
                planned += 1;
                let plan = serde_json::from_str(&kerfwright::render::json::plan(&plan))
                    .expect("a plan is data");
                let faults = faults(&plan, &USUAL);
                if !faults.is_empty() {
                    let tail = text.split("[as_cut]").nth(1).unwrap_or_default();
                    bad.push(format!("seed {seed}: {}\n{tail}", faults.join("\n   ")));
                }
            }
            Err(miss) => assert!(!miss.reasons.is_empty(), "no reason\n{text}"),
        }
    }
    assert!(bad.is_empty(), "{} bad\n{}", bad.len(), bad.join("\n"));
    planned
}

#[test]
fn slips_at_inside_corners_replay() {
    let planned = replayed(0..120, l_job);
    assert!(planned > 100, "only {planned} planned");
}

#[test]
fn slips_at_openings_replay() {
    let planned = replayed(0..120, sink_job);
    assert!(planned > 100, "only {planned} planned");
}
