//! A rectangle across a rectangle: the published criterion says when one fits at any turn.
//!
//! A rectangle p × q goes into one of a × b (p ≥ q, a ≥ b) if and only if p ≤ a and q ≤ b, or p > a, q ≤ b and
//! ((a + b) / (p + q))² + ((a − b) / (p − q))² ≥ 2 (W. B. Carver, problem E 1225, The American Mathematical
//! Monthly 64, 1957, pages 114 to 116; quoted from memory).

use kerfwright::place::{self, Proof};

use crate::read;
use crate::replay::random_job::Dice;

/// The least strip that a job file may ask for, mm.
const STRIP: f64 = 1.0;

fn goes_in((a, b): (f64, f64), (p, q): (f64, f64)) -> bool {
    let sum = (a + b) / (p + q);
    let difference = (a - b) / (p - q);
    (p <= a && q <= b) || (p > a && q <= b && sum * sum + difference * difference >= 2.0)
}

fn text((a, b): (f64, f64), (p, q): (f64, f64)) -> String {
    format!(
        "[stone]\nkind = \"granite\"\nthickness = 30\n[slab]\nrectangle = [{a}, {b}]\n[top]\nrectangle = [{p}, {q}]\n\
         allowance = {{ polish = 0, ease = 0, saw = 0 }}\n[place]\nleast_strip = {STRIP}\n"
    )
}

#[test]
fn a_no_is_a_proof_and_a_yes_a_place() {
    let (mut yes, mut no, mut bad) = (0, 0, Vec::new());
    let dice = &mut Dice(7);
    for _ in 0..150 {
        let slab = (dice.between(900.0, 2400.0), dice.between(400.0, 850.0));
        let far = slab.0.hypot(slab.1);
        let top = (dice.between(slab.0 + 1.0, far), dice.between(30.0, 200.0));
        let grown = |by: f64| (top.0 + by, top.1 + by);
        let found = place::place(&read(&text(slab, top))).map_err(|m| m.proof);
        match found {
            Ok((place, _)) => {
                yes += 1;
                let inside = place.top.corners().iter().all(|c| {
                    c.x > -1e-6 && c.y > -1e-6 && c.x < slab.0 + 1e-6 && c.y < slab.1 + 1e-6
                });
                if !inside || !goes_in(slab, top) {
                    bad.push(format!("{top:?} in {slab:?}: {:?}", place.pose));
                }
            }
            Err(proof) => {
                no += 1;
                // Strips on both sides and some room for the search; a tenth of a millimetre for the proof.
                if goes_in(slab, grown(2.0 * STRIP + 1.0)) {
                    bad.push(format!("{top:?} goes into {slab:?}"));
                } else if !goes_in(slab, grown(-0.4)) && proof != Proof::AnyTurn {
                    bad.push(format!("{top:?} in {slab:?}: {proof:?}"));
                }
            }
        }
    }
    assert!(yes >= 20 && no >= 20, "{yes} fit, {no} do not");
    assert!(bad.is_empty(), "{} bad:\n{}", bad.len(), bad.join("\n"));
}

/// A long top across a slab that is shorter than it.
#[test]
fn a_long_top_lies_across() {
    let text = "[stone]\nkind = \"granite\"\nthickness = 30\n[slab]\nrectangle = [2000, 800]\n[top]\nrectangle = [2040, 60]\n";
    let (place, findings) = place::place(&read(text))
        .map_err(|m| m.proof)
        .expect("it fits");
    assert!(findings.stops.is_empty(), "{findings:?}");
    assert!(place.least_spare_mm >= 10.0 - 1e-6, "{place:?}");
    let turn = place.pose.turn.to_degrees().rem_euclid(180.0);
    let off = turn.min(180.0 - turn);
    assert!((15.0..21.0).contains(&off), "turned {turn}");
}
