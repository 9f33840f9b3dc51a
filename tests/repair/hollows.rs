//! Hollow arcs and round openings: planned again from what really came out.

use kerfwright::repair::{Outcome, ToDo};
use kerfwright::words::Writer;

use super::inside::{OUTER, cuts, l_top, near, repaired, replayed, sink};
use super::{after, counter, plan};

/// The L with its inside corner rounded, 200 finished, 199 as sawn.
fn hollow(as_cut: &str) -> String {
    let done = format!("done = [{OUTER}, \"3-4\", \"4-5\", 4]\n");
    l_top(&format!("{done}{as_cut}")).replace("finish =", "round = { 4 = 200 }\nfinish =")
}

fn radius(mm: f64) -> String {
    hollow(&format!("[[as_cut.arc]]\ncorner = 4\nradius = {mm}\n"))
}

/// 201.5 in place of 199: 2.5 mm of stone are gone along the whole arc, and where it meets the two edges
/// their lines are bitten as deep. Both move in by 2.5 and the curve keeps its radius.
#[test]
fn an_inside_curve_that_came_out_too_large() {
    let note = repaired(&radius(201.5)).note;
    assert_eq!(note.outcome, Outcome::Smaller);
    near(note.edges[2].moved_in, 2.5);
    near(note.edges[3].moved_in, 2.5);
    near(note.corners[0].now, 200.0);
    near(
        note.wanted.area_mm2 - note.now.area_mm2,
        2.5 * (1402.5 + 902.5) - 2.5 * 2.5,
    );
    near(note.overhangs[2].now, 22.5);
    near(note.overhangs[3].now, 27.5);
}

/// Within the allowance nothing is lost; stone left is ground off or cut to the wanted radius.
#[test]
fn an_inside_curve_within_the_allowance_or_too_small() {
    let within = repaired(&radius(199.5)).note;
    assert_eq!(within.outcome, Outcome::WithinAllowance);
    assert_eq!(within.corners[0].to_do, ToDo::Finish(0.5));
    let ground = repaired(&radius(197.0)).note;
    assert_eq!(ground.corners[0].to_do, ToDo::Finish(3.0));
    let again = radius(185.0);
    let note = repaired(&again).note;
    near(note.wanted.area_mm2, note.now.area_mm2);
    assert_eq!(note.corners[0].to_do, ToDo::Cut);
    assert_eq!(cuts(&plan(&again)), ["curve 4"]);
}

/// A chip 6 deep in the middle of the arc: a smaller radius takes it out and the edges stay.
#[test]
fn a_chip_in_the_middle_of_an_inside_curve() {
    let at = 800.0 - 200.0 / 2.0_f64.sqrt();
    let text = hollow(&format!(
        "[[as_cut.chip]]\nat = [{at}, {at}]\ndeep = 6\nacross = 10\n"
    ));
    let note = repaired(&text).note;
    near(note.edges[2].moved_in, 0.0);
    near(note.edges[3].moved_in, 0.0);
    // The notch is a rectangle 10 long: its inner corners lie √(205² + 5²) from the old middle, seen
    // from there under asin(5/205.061) beside the diagonal. The sawn arc of radius ρ − 1 about the
    // new middle, (200 − ρ)·√2 nearer to the corner, must pass through them.
    let (along, off) = (205.0, 5.0);
    let nearer = |rho: f64| (200.0 - rho) * 2.0_f64.sqrt();
    let passes = |rho: f64| (along - nearer(rho)).hypot(off) - (rho - 1.0);
    let rho = note.corners[0].now;
    assert!(passes(rho).abs() < 2e-3, "{rho}: {}", passes(rho));
    let lost = note.wanted.area_mm2 - note.now.area_mm2;
    near(
        lost,
        (1.0 - std::f64::consts::FRAC_PI_4) * (200.0 * 200.0 - rho * rho),
    );
}

/// A hollow edge keeps its centre: its radius grows by the slip.
#[test]
fn a_hollow_edge_by_its_radius() {
    let bow = |as_cut: &str| {
        counter(as_cut).replace("round = { 2 = 150, 3 = 100 }", "bow = { \"1-2\" = -40 }")
    };
    // c²/8s + s/2 about the chord of 1400, 1 mm less as sawn.
    let wanted = 1400.0 * 1400.0 / 320.0 + 20.0;
    let text = bow(&format!(
        "[as_cut]\ndone = [\"2-3\", \"3-4\", \"4-1\"]\n[[as_cut.arc]]\nedge = \"1-2\"\nradius = {}\n",
        wanted - 1.0 + 3.0
    ));
    let note = repaired(&text).note;
    near(note.edges[0].moved_in, 3.0);
    assert_eq!(note.edges[0].to_do, ToDo::Finish(1.0));
}

/// A scoop about its corner: the hollow stays larger and no edge moves.
#[test]
fn a_scoop_that_came_out_too_large() {
    let text = counter(
        "[as_cut]\ndone = [\"1-2\", \"2-3\", \"3-4\", \"4-1\"]\n[[as_cut.arc]]\ncorner = 3\nradius = 203\n",
    )
    .replace("round = { 2 = 150, 3 = 100 }", "scoop = { 3 = 200 }");
    let note = repaired(&text).note;
    // 203 as sawn and a whole allowance of 1 again.
    near(note.corners[0].now, 204.0);
    assert!(note.edges.iter().all(|e| e.moved_in == 0.0));
    near(
        note.wanted.area_mm2 - note.now.area_mm2,
        std::f64::consts::FRAC_PI_4 * (204.0 * 204.0 - 200.0 * 200.0),
    );
}

/// A round opening 400 across came out with a radius of 203: the rails in front and behind lose 3 mm each.
#[test]
fn a_round_opening() {
    let round = |as_cut: &str| sink(as_cut).replace("rectangle = [560, 400]", "circle = 400");
    let larger = round("[[as_cut.cutout.arc]]\nradius = 203\n");
    let note = repaired(&larger).note;
    assert_eq!(note.outcome, Outcome::OtherOpening);
    near(note.openings[0].size_now[0], 406.0);
    assert_eq!(note.openings[0].rails.len(), 4);
    near(note.openings[0].rails[0].wanted, 110.0);
    near(note.openings[0].rails[0].now, 107.0);
    near(note.openings[0].rails[1].now, 497.0);
    let smaller = round("[[as_cut.cutout.arc]]\nradius = 180\n");
    let note = repaired(&smaller).note;
    assert_eq!(note.openings[0].corners[0].to_do, ToDo::Cut);
    near(note.openings[0].size_now[0], 400.0);
    let made = replayed(&round("done = \"all\"\n"));
    assert!(cuts(&made).is_empty(), "{:?}", cuts(&made));
}

/// An opening with rounded corners whose corner 2 was plunged 2.5 mm too far: both its sides move out.
#[test]
fn a_rounded_corner_of_an_opening() {
    let text = sink("done = \"all\"\n[[as_cut.cutout.arc]]\ncorner = 2\nradius = 122.5\n").replace(
        "rectangle = [560, 400]",
        "rectangle = [560, 400]\nround = { 1 = 120, 2 = 120, 3 = 120, 4 = 120 }",
    );
    let note = repaired(&text).note;
    let sides: Vec<f64> = note.openings[0].sides.iter().map(|s| s.moved_in).collect();
    assert_eq!(sides, [2.5, 2.5, 0.0, 0.0]);
    near(note.openings[0].size_now[0], 562.5);
    near(note.openings[0].size_now[1], 402.5);
}

/// What cannot be had is told with the amount.
#[test]
fn openings_that_run_into_something() {
    let text = sink("done = \"all\"\n[[as_cut.cutout.edge]]\nedge = \"1-2\"\nlarger = 115\n");
    let miss = after(&text).expect_err("it breaks the edge");
    assert!(
        Writer::default()
            .say(&miss.reasons[0])
            .contains("sink would break the edge of what is left of the top by 5.0\u{a0}mm"),
        "{miss:?}"
    );
}
