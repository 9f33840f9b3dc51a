//! The practice cut and plunges: inside one offcut, clear of the top at every depth, timed by the right
//! face.

use serde_json::Value;

use super::NEAR_MM;
use super::disc::{Stroke, strokes, taken};
use super::plane::{Stone, list, number, word};

/// Wanted between practice and top, mm, as the planner promises.
const CLEAR_MM: f64 = 50.0;
/// What chords and the clipping grid may take off a clearance, mm.
const SLACK_MM: f64 = 0.15;

/// What is wrong with the practice.
pub(crate) fn faults(sawn: &Stone, plan: &Value) -> Vec<String> {
    let practice = &plan["practice"];
    // Slivers of no width are the clipping's own, and reach far.
    let sawn = &sawn.shrunk(NEAR_MM).shrunk(-NEAR_MM);
    let mut faults = Vec::new();
    let mut slots = Vec::new();
    for (what, count) in [("cut", 1), ("plunges", 3)] {
        let mark = &practice[what];
        if mark.is_null() {
            continue;
        }
        let found = one(sawn, plan, mark, count);
        faults.extend(found.into_iter().map(|f| format!("practice {what}: {f}")));
        slots.push(taken(&strokes(mark), 0.0));
    }
    if let [a, b] = &slots[..]
        && a.within(b).area() > 1e-6
    {
        faults.push("the practice cut runs into the plunges".into());
    }
    faults
}

fn one(sawn: &Stone, plan: &Value, mark: &Value, count: usize) -> Vec<String> {
    let mut faults = Vec::new();
    let made = strokes(mark);
    let passes = list(mark, "passes").len();
    if made.len() != passes * count {
        faults.push(format!("{} strokes for {passes} passes", made.len()));
    }
    let (word_of, clear) = match &mark["clearance"] {
        c if c["wanted-mm"].is_number() => ("wanted", number(c, "wanted-mm")),
        c => ("narrow", number(c, "narrow-mm")),
    };
    if (word_of == "wanted") != (clear >= CLEAR_MM) {
        faults.push(format!("{clear} mm clear is called {word_of}"));
    }
    let thick = number(&plan["slab"]["thickness"], "most");
    for quarter in 0..5_u32 {
        let below = thick * f64::from(quarter) / 4.0;
        let slots = taken(&made, below);
        let gap = slots.gap(sawn);
        if gap < clear - SLACK_MM || slots.within(sawn).area() > 0.0 {
            faults.push(format!("{gap} mm from the top at {below} mm, {clear} said"));
        }
    }
    let piece = list(plan, "pieces")
        .iter()
        .find(|p| p["name"] == mark["piece"]);
    match piece {
        None => faults.push(format!("there is no piece {}", word(mark, "piece"))),
        Some(piece) => {
            let piece = Stone::all(list(piece, "outline").iter().map(Stone::boundary));
            let outside = taken(&made, 0.0).minus(&piece).area();
            if outside > 1e-3 {
                faults.push(format!("leaves its offcut by {outside} mm²"));
            }
        }
    }
    faults.extend(made.last().and_then(|s| face(mark, s)));
    faults
}

/// The sawn face added up in thin layers.
fn face(mark: &Value, last: &Stroke) -> Option<String> {
    const LAYERS: u32 = 4000;
    let depth = number(mark, "depth_mm");
    let run = super::plane::apart(last.from, last.to);
    let layer = depth / f64::from(LAYERS);
    let sum: f64 = (0..LAYERS)
        .filter_map(|i| last.half_length((f64::from(i) + 0.5) * layer))
        .map(|half| (run + 2.0 * half) * layer)
        .sum();
    let said = number(mark, "face_mm2");
    let by_length = (number(mark, "length_mm") - number(mark, "ends_lost_mm")) * depth;
    let wrong = (sum - said).abs() > 1e-3 * said || (by_length - said).abs() > 1e-6 * said;
    wrong.then(|| format!("the sawn face is {said} mm² and {by_length}, not {sum}"))
}
