//! Chord, rise and radius against published rows, and ordinates against the circle's own equation.

use kerfwright::cut::ordinates::Chord;
use kerfwright::geom::{Arc, Point, Seg};
use kerfwright::job::{CornerCut, Naming, Shape};

use super::plan;
use super::replay::plane::{list, number, place};

/// The bowed edge of a figure, and the figure's area beyond its chord.
fn bowed(chord: f64, rise: f64) -> (Arc, f64) {
    let corners = [(0.0, 0.0), (chord, 0.0), (chord, chord), (0.0, chord)];
    let corners = corners.map(|(x, y)| Point::new(x, y)).to_vec();
    let shape = Shape::bowed(
        Naming::Numbers,
        corners,
        vec![CornerCut::Sharp; 4],
        vec![rise, 0.0, 0.0, 0.0],
    );
    let shape = shape.expect("a figure");
    let Some(Seg::Arc(arc)) = shape.edge_seg(0) else {
        panic!("edge 1-2 is not an arc");
    };
    (arc, shape.outline().area() - chord * chord)
}

fn near(what: &str, got: f64, want: f64, digits: f64) {
    assert!(
        (got - want).abs() <= digits,
        "{what}: {got}, published {want}"
    );
}

/// `MathAss` help, circular segment: chord 21, rise 6 → r 12.1875, 118.97953°, arc 25.308373, area 89.254148;
/// a hundred times as large.
#[test]
fn segment_of_chord_21_and_rise_6() {
    let (arc, beyond) = bowed(2100.0, 600.0);
    near("radius", arc.radius, 1218.75, 1e-9);
    near("angle", arc.sweep.to_degrees(), 118.97953, 5e-6);
    near("arc", arc.radius * arc.sweep, 2530.8373, 5e-5);
    near("area", beyond, 892_541.48, 5e-3);
}

/// `MathAss` help: arc 1, 45° → r 1.2732395, chord 0.97449536, rise 0.096919589, area 0.063460604; a
/// thousand times as large.
#[test]
fn segment_of_arc_1_and_45_degrees() {
    let (arc, beyond) = bowed(974.495_36, 96.919_589);
    near("radius", arc.radius, 1273.2395, 1e-4);
    near("angle", arc.sweep.to_degrees(), 45.0, 1e-5);
    near("arc", arc.radius * arc.sweep, 1000.0, 1e-4);
    near("area", beyond, 63_460.604, 5e-2);
}

/// The chord's own frame: ends at ordinate 0, the crown at the rise.
#[test]
fn ordinates_of_ends_and_crown() {
    let (arc, _) = bowed(2100.0, 600.0);
    let chord = Chord::of(&arc);
    let at = |share: f64| chord.ordinate(arc.at_angle(arc.start + arc.sweep * share));
    for (share, along, off) in [(0.0, 0.0, 0.0), (0.5, 1050.0, 600.0), (1.0, 2100.0, 0.0)] {
        let o = at(share);
        near("along", o.along, along, 1e-9);
        near("off", o.off, off, 1e-9);
    }
}

/// Every station of a bow front by the circle's equation: off = √(r² − (along − c/2)²) − (r − s).
#[test]
fn ordinates_of_every_station() {
    let plan = plan(super::BOW_FRONT);
    let cut = list(&plan, "cuts").iter().find(|c| c["kind"] == "curve");
    let set_out = &cut.expect("a curve")["set_out"]["ordinates"];
    let (radius, chord) = (
        number(set_out, "sawn_radius_mm"),
        number(set_out, "chord_length_mm"),
    );
    let rise = number(set_out, "rise_mm");
    // The finished bow rises 70 over 2200: r = 2200²/560 + 35; the saw leaves 1 mm outside it.
    near("radius", radius, 2200.0 * 2200.0 / 560.0 + 35.0 + 1.0, 1e-6);
    let marks = list(set_out, "marks");
    assert!(marks.len() > 50, "{}", marks.len());
    for mark in marks {
        let (along, off) = (
            number(&mark["touch"], "along_mm"),
            number(&mark["touch"], "off_mm"),
        );
        let x = along - chord / 2.0;
        let want = (radius * radius - x * x).sqrt() - (radius - rise);
        near("ordinate", off, want, 1e-6);
        // The slope of the guide is that of the circle: dy/dx = −x / √(r² − x²).
        let [a, b] = [0, 1].map(|i| {
            let g = &mark["guide"][i];
            (number(g, "along_mm"), number(g, "off_mm"))
        });
        let slope = (b.1 - a.1) / (b.0 - a.0);
        near("slope", slope, -x / (radius * radius - x * x).sqrt(), 1e-9);
    }
    // The tapes to the chord's ends are the distances to the slab's corners.
    let corners = list(&plan["slab"], "corners");
    for end in ["from", "to"] {
        let at = place(&set_out[end]["at"]);
        for tie in list(&set_out[end], "ties") {
            let corner = corners.iter().find(|c| c["name"] == tie["corner"]);
            let corner = place(&corner.expect("a corner")["at"]);
            let taped = (at[0] - corner[0]).hypot(at[1] - corner[1]);
            near("tie", number(tie, "distance_mm"), taped, 1e-9);
        }
    }
}

/// Archimedes' recurrence, n·tan(π/n) round a unit circle: 6 → 3.464101615, 24 → 3.159659942. The corner of such
/// a polygon stands out by 1/cos(π/n) − 1, and its side is 2·tan(π/n).
#[test]
fn polygon_of_tangent_cuts() {
    for (sides, half_round) in [(6_u32, 3.464_101_615), (24, 3.159_659_942)] {
        let corner = kerfwright::cut::tangents::polygon_corner(1.0, sides);
        // From the corner's height: tan²(π/n) = 1/cos²(π/n) − 1.
        let tangent = ((1.0 + corner).powi(2) - 1.0).sqrt();
        near("n·tan(π/n)", f64::from(sides) * tangent, half_round, 1e-9);
    }
}
