//! Rules of the trade that every plan must keep, written from what a mason would say and not from the
//! planner: one cause is one stop, waste never stays on unsaid, practice where it harms nothing, marks where
//! their tapes say, no advice against another, no number that is none.

use serde_json::Value;

use super::disc::{strokes, taken};
use super::plane::{Place, Stone, apart, list, place, word};
use super::random_job::{Flaw, RandomJob};

/// What chords and the clipping grid may take off a distance, mm.
const SLACK_MM: f64 = 0.15;

/// Whether a stop says that waste stays on the top.
pub(crate) fn waste_stays(plan: &Value) -> bool {
    let said = |stop: &Value| word(stop, "detail").contains("Waste stays on the top");
    let alone = |stop: &Value| word(stop, "id") == "waste-not-freed";
    list(plan, "stops").iter().any(|s| said(s) || alone(s))
}

/// What is wrong with the plan of a random job.
pub(crate) fn faults(plan: &Value, job: &RandomJob) -> Vec<String> {
    let mut faults = one_cause_one_stop(plan);
    faults.extend(practice(plan, job));
    faults.extend(marks(plan));
    faults.extend(rails(plan));
    faults.extend(no_number(plan));
    faults
}

/// No two stops say the same of different places, and one of waste names where it is held.
fn one_cause_one_stop(plan: &Value) -> Vec<String> {
    let stops = list(plan, "stops");
    let mut faults = Vec::new();
    for (i, stop) in stops.iter().enumerate() {
        let (id, detail) = (word(stop, "id"), word(stop, "detail"));
        let cause = detail.split(" Waste stays on").next();
        let again = stops[..i].iter().any(|s| {
            word(s, "id") == id && word(s, "detail").split(" Waste stays on").next() == cause
        });
        if again {
            faults.push(format!("two stops for one cause: {id}: {detail}"));
        }
        let words = ["edge ", "corner ", "corners ", "circle"];
        if id == "waste-not-freed" && !words.iter().any(|w| detail.contains(w)) {
            faults.push(format!("nobody says where waste hangs on: {detail}"));
        }
    }
    faults
}

/// Practice lies in no opening, off the slab's edges and its flaws; and plunges are for curves only.
fn practice(plan: &Value, job: &RandomJob) -> Vec<String> {
    let mut faults = Vec::new();
    let curves = list(plan, "cuts").iter().any(|c| c["kind"] == "curve");
    if !curves && !plan["practice"]["plunges"].is_null() {
        faults.push("practice plunges in a job without curves".into());
    }
    for what in ["cut", "plunges"] {
        let mark = &plan["practice"][what];
        if mark.is_null() {
            continue;
        }
        let found = practised(plan, job, mark);
        faults.extend(found.into_iter().map(|f| format!("practice {what}: {f}")));
    }
    faults
}

fn practised(plan: &Value, job: &RandomJob, mark: &Value) -> Vec<String> {
    let mut faults = Vec::new();
    let piece = list(plan, "pieces")
        .iter()
        .find(|p| p["name"] == mark["piece"]);
    let cuts = list(plan, "cuts");
    let by = piece.and_then(|p| cuts.iter().find(|c| c["number"] == p["after_cut"]));
    if by.is_none_or(|cut| !cut["cutout"].is_null()) {
        faults.push(format!("in {}, which an opening drops", mark["piece"]));
    }
    let slots = taken(&strokes(mark), 0.0);
    let slab = Stone::outline(&plan["slab"]["outline"]);
    let corners: Vec<Place> = slots.corners().collect();
    let to_edge = corners
        .iter()
        .map(|p| slab.to_boundary(*p))
        .fold(f64::MAX, f64::min);
    if to_edge < job.least_strip - SLACK_MM {
        faults.push(format!("{to_edge:.1} mm from the slab's edge"));
    }
    for (flaw, clear) in &job.flaws {
        let off = corners
            .iter()
            .map(|p| to_flaw(flaw, *p))
            .fold(f64::MAX, f64::min);
        if off < clear + job.least_strip - SLACK_MM {
            faults.push(format!("{off:.1} mm from a flaw"));
        }
    }
    faults
}

/// From a place to a flaw; a flaw that the place lies in is nearer than nothing.
fn to_flaw(flaw: &Flaw, p: Place) -> f64 {
    match flaw {
        Flaw::Spot(at, across) => apart(*at, p) - across / 2.0,
        Flaw::Line(points) => to_path(points, p),
        Flaw::Area(points) => {
            let mut round = points.clone();
            round.push(points[0]);
            let off = to_path(&round, p);
            if Stone::ring(points).holds(p) {
                -off
            } else {
                off
            }
        }
    }
}

fn to_path(points: &[Place], p: Place) -> f64 {
    let to_piece = |pair: &[Place]| {
        let (a, b) = (pair[0], pair[1]);
        let along = [b[0] - a[0], b[1] - a[1]];
        let square = along[0].powi(2) + along[1].powi(2);
        let share = ((p[0] - a[0]) * along[0] + (p[1] - a[1]) * along[1]) / square;
        let share = share.clamp(0.0, 1.0);
        apart([a[0] + along[0] * share, a[1] + along[1] * share], p)
    };
    points.windows(2).map(to_piece).fold(f64::MAX, f64::min)
}

/// Every taped distance in the set-out of a cut is the distance from the corner it names.
fn marks(plan: &Value) -> Vec<String> {
    let corners = list(&plan["slab"], "corners");
    let mut faults = Vec::new();
    for cut in list(plan, "cuts") {
        each_tied(&cut["set_out"], &mut |at, tie| {
            let corner = corners.iter().find(|c| c["name"] == tie["corner"]);
            let said = tie["distance_mm"].as_f64().unwrap_or(f64::NAN);
            let off = corner.map_or(f64::MAX, |c| apart(place(&c["at"]), at) - said);
            // A distance that is no number is a fault too.
            if off.is_nan() || off.abs() > SLACK_MM {
                let number = &cut["number"];
                faults.push(format!("cut {number}: a tape to {at:?} is off: {tie}"));
            }
        });
    }
    faults
}

fn each_tied(value: &Value, told: &mut impl FnMut(Place, &Value)) {
    match value {
        Value::Object(map) => {
            if let (Some(at), Some(tie)) = (map.get("at"), map.get("tie")) {
                told(place(at), tie);
            }
            if let (Some(at), Some(Value::Array(ties))) = (map.get("at"), map.get("ties")) {
                for tie in ties {
                    told(place(at), tie);
                }
            }
            map.values().for_each(|v| each_tied(v, told));
        }
        Value::Array(all) => all.iter().for_each(|v| each_tied(v, told)),
        _ => {}
    }
}

/// No cutout is to be moved two opposite ways.
fn rails(plan: &Value) -> Vec<String> {
    let told = list(plan, "warnings").iter();
    let moves: Vec<&str> = told
        .filter(|w| word(w, "id") == "rail-too-narrow")
        .map(|w| word(w, "detail"))
        .collect();
    let cutout = |detail: &str| detail.split(" leaves").next().map(str::to_owned);
    let ways = [(" back.", " forward."), (" to the left.", " to the right.")];
    let mut faults = Vec::new();
    for a in &moves {
        for b in moves.iter().filter(|b| cutout(a) == cutout(b)) {
            for (one, other) in ways {
                if a.contains(one) && b.contains(other) {
                    faults.push(format!("{a} And yet: {b}"));
                }
            }
        }
    }
    faults
}

/// Keys of what is cut that may stand empty.
const MAY_BE_EMPTY: [&str; 13] = [
    "bearers",
    "best_rectangle",
    "bit",
    "cut",
    "cutout",
    "diagonals_mm",
    "disc",
    "flush_with",
    "heading_deg",
    "inside",
    "plunges",
    "survey",
    "vein_deg",
];

/// A number that is none comes out as null: only what may be left out is.
fn no_number(plan: &Value) -> Vec<String> {
    let rooms = [
        "slab",
        "placement",
        "top",
        "core_holes",
        "cuts",
        "pieces",
        "remaining",
        "balance_sheet",
        "totals",
        "practice",
    ];
    let mut faults = Vec::new();
    for room in rooms {
        nulls(&plan[room], room, &mut faults);
    }
    faults
}

fn nulls(value: &Value, key: &str, faults: &mut Vec<String>) {
    match value {
        Value::Null if !MAY_BE_EMPTY.contains(&key) => faults.push(format!("{key} is null")),
        Value::Object(map) => map.iter().for_each(|(k, v)| nulls(v, k, faults)),
        Value::Array(all) => all.iter().for_each(|v| nulls(v, key, faults)),
        _ => {}
    }
}
