//! Curves set out from their chord: every mark computed again from the stations alone.

use serde_json::Value;

use super::plane::{Place, apart, list, moved, number, place};

/// Marks may be off by this much, mm: far below what a tape can tell, above the rounding of a long radius.
const NEAR_MM: f64 = 1e-5;

/// What is wrong with a curve's ordinates.
pub(crate) fn faults(cut: &Value) -> Vec<String> {
    let set_out = &cut["set_out"]["ordinates"];
    if set_out.is_null() {
        return Vec::new();
    }
    let found = ends(set_out).into_iter().chain(marks(cut, set_out));
    let name = format!("cut {} ({})", cut["number"], cut["edge"]);
    found.map(|f| format!("{name}: {f}")).collect()
}

/// The chord and the rise by the chord formula: r = c²/8s + s/2.
fn ends(set_out: &Value) -> Vec<String> {
    let (from, to) = (place(&set_out["from"]["at"]), place(&set_out["to"]["at"]));
    let (chord, rise) = (
        number(set_out, "chord_length_mm"),
        number(set_out, "rise_mm"),
    );
    let radius = number(set_out, "sawn_radius_mm");
    let mut faults = Vec::new();
    if (apart(from, to) - chord).abs() > NEAR_MM {
        faults.push(format!("the chord is {}, not {chord}", apart(from, to)));
    }
    let by_rise = chord * chord / (8.0 * rise) + rise / 2.0;
    if (by_rise - radius).abs() > 1e-6 * radius {
        faults.push(format!(
            "a rise of {rise} on {chord} is a radius of {by_rise}, not {radius}"
        ));
    }
    faults
}

fn marks(cut: &Value, set_out: &Value) -> Vec<String> {
    let (from, to) = (place(&set_out["from"]["at"]), place(&set_out["to"]["at"]));
    let centre = place(&set_out["pivot"]);
    let chord = apart(from, to);
    let along = [0, 1].map(|k| (to[k] - from[k]) / chord);
    let hollow = !set_out["inside"].is_null();
    // The arc lies on the other side of the chord than the centre.
    let mut off = [along[1], -along[0]];
    if (centre[0] - from[0]) * off[0] + (centre[1] - from[1]) * off[1] > 0.0 {
        off = [-off[0], -off[1]];
    }
    let stations = list(set_out, "stations");
    let mut faults = Vec::new();
    for (station, marks) in stations.iter().zip(list(set_out, "marks")) {
        let touch = place(&station["touch"]);
        let check = |what: &str, said: &Value, at: Place| {
            let here = moved(
                moved(from, along, number(said, "along_mm")),
                off,
                number(said, "off_mm"),
            );
            let wrong = apart(here, at) > NEAR_MM || apart(place(&said["at"]), at) > NEAR_MM;
            let number = &station["number"];
            wrong.then(|| format!("station {number}: {what} is marked at {here:?}, not {at:?}"))
        };
        faults.extend(check("the arc", &marks["touch"], touch));
        // The guide's edge runs square to the radius, on the kept side of the face.
        let out = [0, 1].map(|k| (touch[k] - centre[k]) / apart(touch, centre));
        let to_kept = if hollow { 1.0 } else { -1.0 };
        let edge = moved(touch, out, to_kept * number(set_out, "guide_to_face_mm"));
        for guide in list(marks, "guide") {
            let at = place(&guide["at"]);
            let beside = (at[0] - edge[0]) * out[0] + (at[1] - edge[1]) * out[1];
            if beside.abs() > NEAR_MM {
                faults.push(format!(
                    "station {}: the guide is {beside} off",
                    station["number"]
                ));
            }
            faults.extend(check("the guide", guide, at));
        }
        let both: Vec<Place> = list(marks, "guide")
            .iter()
            .map(|g| place(&g["at"]))
            .collect();
        if apart(both[0], both[1]) < 20.0 {
            faults.push(format!(
                "station {}: the guide's marks are too close",
                station["number"]
            ));
        }
    }
    if stations.len() != list(set_out, "marks").len() {
        faults.push(format!("cut {}: stations without marks", cut["number"]));
    }
    faults
}
