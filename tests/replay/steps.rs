//! The depths of a cut, and the order of its strokes.

use serde_json::Value;

use super::disc::Stroke;
use super::plane::{apart, list, number, place, word};
use super::{NEAR_MM, Wish};

/// Rounding of a depth, mm.
const ROUNDING: f64 = 1e-9;

/// What is wrong with the strokes of one cut.
pub(crate) fn faults(plan: &Value, cut: &Value, strokes: &[Stroke], wish: &Wish) -> Vec<String> {
    let mut faults = match word(cut, "kind") {
        "core" => bores(plan, cut),
        "straight" | "relief" => runs(strokes),
        _ => rings(plan, cut, strokes),
    };
    if word(cut, "kind") != "core" {
        faults.extend(depths(plan, cut, strokes, wish));
        faults.extend(round_ends(plan, cut, strokes));
    }
    let cusp = number(cut, "cusp");
    if cusp > wish.cusp + ROUNDING {
        faults.push(format!("a cusp of {cusp} mm, wanted {}", wish.cusp));
    }
    let name = format!("cut {} ({})", cut["number"], cut["edge"]);
    faults.into_iter().map(|f| format!("{name}: {f}")).collect()
}

/// Core holes go right through, each marked at its middle and listed once for the whole plan.
fn bores(plan: &Value, cut: &Value) -> Vec<String> {
    let mut faults = Vec::new();
    let holes = super::disc::holes(cut);
    let marks = list(&cut["set_out"], "centres");
    if holes.is_empty() || marks.len() != holes.len() {
        faults.push(format!("{} holes, {} marks", holes.len(), marks.len()));
    }
    for (hole, mark) in holes.iter().zip(marks) {
        if apart(place(&mark["at"]), hole.at) > 1e-9 {
            faults.push(format!("a hole at {:?} is marked elsewhere", hole.at));
        }
        let bit = number(&cut["bit"], "diameter");
        if (2.0 * hole.radius - bit).abs() > 1e-9 {
            faults.push(format!("a hole of {} by a bit of {bit}", 2.0 * hole.radius));
        }
    }
    let all = list(plan, "core_holes").iter();
    let listed = all.filter(|h| h["cut"] == cut["number"]).count();
    if listed != holes.len() {
        faults.push(format!("{listed} of {} holes are listed", holes.len()));
    }
    faults
}

/// The stone left under a stopped end is what the round disc leaves: c(0) − c(t).
fn round_ends(plan: &Value, cut: &Value, strokes: &[Stroke]) -> Vec<String> {
    let thick = number(&plan["slab"]["thickness"], "most");
    let Some(last) = strokes.last() else {
        return vec!["no strokes".into()];
    };
    let half = |below: f64| last.half_length(below).unwrap_or(0.0);
    let (want, said) = (half(0.0) - half(thick), number(cut, "tail"));
    let run_outs = super::disc::run_outs(cut);
    let mut faults = Vec::new();
    let none = run_outs.is_empty();
    if none != (said == 0.0) || (!none && (said - want).abs() > 1e-6) {
        faults.push(format!(
            "a run-out of {said} mm, {} told; {want} by the disc",
            run_outs.len()
        ));
    }
    for run_out in &run_outs {
        if (run_out.length - want).abs() > 1e-6 || run_out.left > run_out.length {
            faults.push(format!(
                "a run-out {} mm long, {} left",
                run_out.length, run_out.left
            ));
        }
    }
    faults
}

/// Passes go down in steps no deeper than asked, the last right through the thickest reading.
fn depths(plan: &Value, cut: &Value, strokes: &[Stroke], wish: &Wish) -> Vec<String> {
    let mut faults = Vec::new();
    let step = if matches!(word(cut, "kind"), "straight" | "relief") {
        wish.step
    } else {
        wish.plunge_step
    };
    let full = number(&plan["slab"]["thickness"], "most") + wish.through;
    let said: Vec<f64> = list(cut, "passes")
        .iter()
        .map(|p| number(p, "depth_mm"))
        .collect();
    let (mut before, mut limit) = (0.0, wish.score);
    for depth in &said {
        if *depth <= before || depth - before > limit + ROUNDING {
            faults.push(format!("a pass from {before} to {depth} mm, step {limit}"));
        }
        (before, limit) = (*depth, step);
    }
    if (before - full).abs() > ROUNDING || (number(cut, "full_depth") - full).abs() > ROUNDING {
        faults.push(format!("the last pass is {before} mm deep, not {full}"));
    }
    let mut last = 1;
    for stroke in strokes {
        if stroke.pass < last || stroke.pass > last + 1 {
            faults.push(format!("pass {} follows pass {last}", stroke.pass));
        }
        last = stroke.pass;
        if said.get(stroke.pass - 1).is_none_or(|d| *d != stroke.depth) {
            faults.push(format!(
                "a stroke of pass {} is {} deep",
                last, stroke.depth
            ));
        }
    }
    if last != said.len() {
        faults.push(format!("{} passes, but strokes of {last}", said.len()));
    }
    faults
}

/// Every pass of a straight cut runs over the same line, end to end without a gap.
fn runs(strokes: &[Stroke]) -> Vec<String> {
    let mut faults = Vec::new();
    let Some(first) = strokes.first() else {
        return vec!["no strokes".into()];
    };
    let off_line = |p: [f64; 2]| {
        let (x, y) = (p[0] - first.from[0], p[1] - first.from[1]);
        (x * first.along[1] - y * first.along[0]).abs()
    };
    let foot = |p: [f64; 2]| p[0] * first.along[0] + p[1] * first.along[1];
    let stretch = |pass: usize| {
        let mut runs: Vec<(f64, f64)> = strokes
            .iter()
            .filter(|s| s.pass == pass)
            .map(|s| (foot(s.from).min(foot(s.to)), foot(s.from).max(foot(s.to))))
            .collect();
        runs.sort_by(|a, b| a.0.total_cmp(&b.0));
        let mut whole = runs.first().copied()?;
        for run in runs {
            if run.0 > whole.1 + NEAR_MM {
                return None;
            }
            whole.1 = whole.1.max(run.1);
        }
        Some(whole)
    };
    for stroke in strokes {
        let still = apart(stroke.from, stroke.to) < 1e-6;
        if stroke.plunge != still || off_line(stroke.from).max(off_line(stroke.to)) > NEAR_MM {
            faults.push(format!("a stroke off the line: {stroke:?}"));
        }
        let run = [stroke.to[0] - stroke.from[0], stroke.to[1] - stroke.from[1]];
        if run[0] * stroke.along[0] + run[1] * stroke.along[1] < -NEAR_MM {
            faults.push(format!("a run against its heading: {stroke:?}"));
        }
    }
    for pass in 2..=strokes.last().map_or(1, |s| s.pass) {
        match (stretch(1), stretch(pass)) {
            (Some(a), Some(b)) if (a.0 - b.0).abs().max((a.1 - b.1).abs()) < NEAR_MM => {}
            (a, b) => faults.push(format!("pass {pass} runs over {b:?}, pass 1 over {a:?}")),
        }
    }
    faults
}

/// Inside a hollow arc: the slot in the face just reaches the arc with its ends, and what is left follows.
fn inside(plan: &Value, set_out: &Value, strokes: &[Stroke]) -> Vec<String> {
    let (said, Some(last)) = (&set_out["inside"], strokes.last()) else {
        return Vec::new();
    };
    if said.is_null() {
        return Vec::new();
    }
    let thick = number(&plan["slab"]["thickness"], "most");
    let radius = number(set_out, "sawn_radius_mm");
    let half = |below: f64| last.half_length(below).unwrap_or(0.0);
    let face = (radius.powi(2) - half(0.0).powi(2)).sqrt();
    let want = [
        ("face_at_mm", face),
        ("sagitta_mm", radius - face),
        ("left_under_mm", radius - face.hypot(half(thick))),
    ];
    want.into_iter()
        .filter(|(key, want)| (number(said, key) - want).abs() > 1e-6)
        .map(|(key, want)| format!("{key} is {}, not {want}", number(said, key)))
        .collect()
}

/// Every pass of a curve plunges at the same stations, each tangent to the sawn arc and outside
/// it: the near face at right angles to the radius at the station's mark.
fn rings(plan: &Value, cut: &Value, strokes: &[Stroke]) -> Vec<String> {
    let set_out = stations_of(cut);
    let pivot = place(&set_out["pivot"]);
    let mut faults = inside(plan, set_out, strokes);
    // Inside a hollow arc the marks lie on the disc's outer face.
    let hollow = !set_out["inside"].is_null();
    let (radius, side) = if hollow {
        (number(&set_out["inside"], "face_at_mm"), -1.0)
    } else {
        (number(set_out, "sawn_radius_mm"), 1.0)
    };
    let live: Vec<&Value> = list(set_out, "stations")
        .iter()
        .filter(|s| s["in_stone"] == Value::Bool(true))
        .collect();
    let kerf = number(&cut["disc"], "kerf");
    let passes = list(cut, "passes").len();
    if strokes.len() != passes * live.len() {
        faults.push(format!(
            "{} plunges for {} stations and {passes} passes",
            strokes.len(),
            live.len()
        ));
        return faults;
    }
    for (i, stroke) in strokes.iter().enumerate() {
        if stroke.pass != i / live.len() + 1 {
            faults.push(format!("plunge {i} is of pass {}", stroke.pass));
        }
        let mark = place(&live[i % live.len()]["touch"]);
        let out = [0, 1].map(|k| (mark[k] - pivot[k]) / radius);
        let centre = super::plane::moved(mark, out, side * kerf / 2.0);
        let skew = out[0] * stroke.along[0] + out[1] * stroke.along[1];
        let beside = apart(stroke.from, centre) > 1e-6 || apart(stroke.to, centre) > 1e-6;
        if !stroke.plunge || beside || skew.abs() > 1e-9 {
            faults.push(format!(
                "plunge {i} is not set tangent at its mark: {stroke:?}"
            ));
        }
    }
    faults
}

/// How a curve is set out: about a pivot or from its chord.
fn stations_of(cut: &Value) -> &Value {
    let by_arm = &cut["set_out"]["pivot"];
    if by_arm.is_null() {
        &cut["set_out"]["ordinates"]
    } else {
        by_arm
    }
}
