//! A stone standing on edge.

use kerfwright::handle::fall::Fall;

use crate::fixtures::{close, job, load, moved, rectangle, region};
use kerfwright::words::Writer;

#[test]
fn an_even_plate_tips_where_its_diagonal_stands_upright() {
    let fall = Fall::of(&load(rectangle(2150.0, 640.0), 110.0), 29.0);
    close(
        fall.tips_at_deg,
        (29.0_f64 / 640.0).atan().to_degrees(),
        1e-9,
    );
    close(fall.shadow_mm, 640.0, 1e-9);
    // Pushed at the upper edge: W·(t/2) = F·b.
    close(fall.push_tips.kg(), 110.0 * 14.5 / 640.0, 1e-9);
}

// The moment about the arris it turns over, point by point through the plate: a second way.
#[test]
fn the_tie_holds_the_sum_of_the_moments() {
    let (height, thickness, mass) = (700.0, 30.0, 140.0);
    let fall = Fall::of(&load(rectangle(2000.0, height), mass), thickness);
    for tie in &fall.ties {
        let lean = tie.lean_deg.to_radians();
        let steps = 400;
        let mut moment = 0.0;
        for i in 0..steps {
            for j in 0..steps {
                let up = (f64::from(i) + 0.5) / f64::from(steps) * height;
                let back = (f64::from(j) + 0.5) / f64::from(steps) * thickness;
                // Seen from the arris, the body leans over it: level arm of this bit.
                moment += up * lean.sin() - back * lean.cos();
            }
        }
        moment *= mass / f64::from(steps * steps);
        let arm = height * lean.cos();
        close(tie.pull.kg(), (moment / arm).max(0.0), 1e-6);
    }
    assert!(fall.ties.windows(2).all(|t| t[0].pull < t[1].pull));
}

#[test]
fn a_thick_low_stone_needs_no_pull_while_it_stands_by_itself() {
    let fall = Fall::of(&load(rectangle(900.0, 300.0), 40.0), 80.0);
    assert!(fall.tips_at_deg > 10.0);
    assert_eq!(fall.ties[0].pull.kg(), 0.0);
    assert!(fall.ties[2].pull.kg() > 0.0);
}

#[test]
fn the_less_steady_way_up_is_taken() {
    let wedge = load(region(&[(0.0, 0.0), (2000.0, 0.0), (1000.0, 600.0)]), 60.0);
    let fall = Fall::of(&wedge, 30.0);
    // Point up the balance point is at 200, point down at 400.
    close(
        fall.tips_at_deg,
        (15.0_f64 / 400.0).atan().to_degrees(),
        1e-9,
    );
}

#[test]
fn the_finding_carries_the_numbers() {
    let (moving, found) = moved(&job(""));
    let told: Vec<String> = found
        .warnings
        .iter()
        .filter(|f| f.id() == "crush-and-falls")
        .map(|f| Writer::default().detail(&f.message).replace('\u{a0}', " "))
        .collect();
    // The heavier of slab and top is told. Thinnest reading 29; slab 905 high, top 640 high.
    assert_eq!(told.len(), 1);
    assert!(told[0].contains("905 mm") && !told[0].contains("640 mm"));
    assert!(
        told.iter()
            .all(|t| t.contains("29.0 mm") && t.contains("battens"))
    );
    assert_eq!(moving.falls[0].thickness_mm, 29.0);
}
