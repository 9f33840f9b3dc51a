//! How the stations of a curve are set out and plunged.

use crate::cut::{Cut, OrdinateSetOut, SetOut};
use crate::document::mark;
use crate::document::say::{plain, say};
use crate::document::scene;
use crate::plan::Plan;
use crate::words::{Message, Value};

/// The steps in order; none without a curve.
pub(super) fn steps(plan: &Plan, cuts: &[&Cut]) -> Vec<Message> {
    let Some(first) = cuts.first() else {
        return Vec::new();
    };
    let depths = first.passes.iter().map(|p| Value::tape(p.depth).up());
    let mut steps = vec![
        stations(first),
        plunge(first),
        say(
            "bench-curve-rings",
            [
                ("depths", Value::List(depths.collect())),
                ("thick", scene::thick(plan)),
            ],
        ),
    ];
    let left = cuts.iter().map(|c| c.stands_out_mm()).fold(0.0, f64::max);
    if left > 0.0 {
        steps.push(say(
            "bench-curve-ridges",
            [("left", Value::fine(left).up())],
        ));
    }
    steps
}

/// How the stations are found.
pub(in crate::document) fn stations(cut: &Cut) -> Message {
    let curve = cut.set_out.curve();
    let apart = curve.and_then(|c| c.stations.get(1).map(|s| s.chord));
    let id = if matches!(cut.set_out, SetOut::Pivot(_)) {
        "bench-curve-stations"
    } else {
        "bench-curve-ordinates"
    };
    say(id, [("apart", apart.map_or(Value::Nothing, Value::tape))])
}

/// How the disc is set at a station: about a pivot both its near face and the jig's mark by their distance
/// from it.
pub(in crate::document) fn plunge(cut: &Cut) -> Message {
    let curve = match &cut.set_out {
        SetOut::Pivot(curve) => curve,
        SetOut::Ordinates(o) => return beside_guide(o),
        SetOut::Guide(_) | SetOut::Centres(_) => return plain("bench-curve-how"),
    };
    let near = match &curve.inside {
        Some(hollow) => hollow.face_at - cut.tool.width_mm(),
        None => curve.sawn_radius,
    };
    let gaps = [
        ("near", mark::swung(curve, near)),
        ("arm", mark::swung(curve, curve.arm)),
    ];
    say("bench-curve-plunge", gaps)
}

/// The centre of a hollow arc up to this radius is struck from its ends, mm (judgement: what a pair of compasses or a
/// short rule reaches).
const COMPASS_MM: f64 = 300.0;

/// How the guide is laid at a station of a curve set out from its chord: so far from the station, and from
/// the curve to either side, that it lies along the tangent.
fn beside_guide(o: &OrdinateSetOut) -> Message {
    let offset = ("offset", Value::tape(o.guide_to_face).to_half(true));
    if o.curve.inside.is_some() && o.curve.sawn_radius <= COMPASS_MM {
        let centre = ("radius", mark::swung(&o.curve, o.curve.sawn_radius));
        return say("bench-curve-plunge-square", [offset, centre]);
    }
    // Far enough apart to lay a straight edge by, near enough to meet the curve.
    let half = f64::min(150.0, o.chord_length / 4.0);
    let radius = o.curve.inside.map_or(o.curve.sawn_radius, |h| h.face_at);
    let rise = radius - (radius * radius - half * half).max(0.0).sqrt();
    let gap = match o.curve.inside {
        Some(_) => o.guide_to_face + rise,
        None => o.guide_to_face - rise,
    };
    let gaps = [
        offset,
        ("gap", Value::tape(gap).to_half(true)),
        ("half", Value::tape(half)),
    ];
    say("bench-curve-plunge-guide", gaps)
}
