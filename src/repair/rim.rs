//! What a larger opening gives cause to say: whether what goes in still covers it.

use crate::diag::{Finding, Findings, Phrase, number};

use super::note::{OpeningNow, Repair};

/// The words of an opening that came out larger than was asked.
pub const LARGER: Phrase = Phrase {
    id: "opening-larger",
    title: "Cutout {number} comes out larger: is it still covered?",
    detail: "Cutout {number}, {what}, becomes {long} × {wide} mm in place of {long_asked} × {wide_asked} mm: \
             {more} mm more at {sides}. Whether the rim of what goes in still covers its edge, and still \
             finds stone to stand on or be clamped to, is not known here: the rim must reach {more} mm farther \
             there than the opening as asked needed. Lay it in, or measure its rim, before anything \
             else is cut.",
};

/// A cutout whose opening has become larger in any way is told of.
#[must_use]
pub fn findings(repair: &Repair) -> Findings {
    Findings {
        cautions: repair.openings.iter().filter_map(larger).collect(),
        ..Findings::default()
    }
}

fn larger(opening: &OpeningNow) -> Option<Finding> {
    let sides = opening.sides.iter().map(|s| (&s.name, s.moved_in));
    let circle = opening.corners.iter().filter(|_| opening.sides.is_empty());
    let circle = circle.map(|c| (&c.name, c.now - c.wanted));
    let grown: Vec<(&String, f64)> = sides.chain(circle).filter(|(_, mm)| *mm > 0.0).collect();
    let most = grown.iter().map(|(_, mm)| *mm).fold(0.0, f64::max);
    let names: Vec<&str> = grown.iter().map(|(name, _)| name.as_str()).collect();
    (!grown.is_empty()).then(|| {
        let values = [
            ("number", opening.number.to_string()),
            ("what", opening.what.clone()),
            ("long", number(opening.size_now[0], 1)),
            ("wide", number(opening.size_now[1], 1)),
            ("long_asked", number(opening.size_wanted[0], 1)),
            ("wide_asked", number(opening.size_wanted[1], 1)),
            ("more", number(most, 1)),
            ("sides", names.join(", ")),
        ];
        Finding::of(&LARGER, &values, "geometry: the opening as cut")
    })
}
