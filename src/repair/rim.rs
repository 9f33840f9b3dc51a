//! What a larger opening gives cause to say: whether what goes in still covers it.

use crate::diag::{Finding, Findings, Phrase};
use crate::words::Value;

use super::note::{OpeningNow, Repair};

/// The words of an opening that came out larger than was asked.
pub const LARGER: Phrase = Phrase::of_job("opening-larger");

/// A cutout whose opening has become larger in any way is told of.
#[must_use]
pub fn findings(repair: &Repair) -> Findings {
    Findings {
        warnings: repair.openings.iter().filter_map(larger).collect(),
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
            ("number", opening.number.to_string().into()),
            ("what", opening.what.clone().into()),
            ("long", Value::number(opening.size_now[0], 1)),
            ("wide", Value::fine(opening.size_now[1])),
            ("long_asked", Value::number(opening.size_wanted[0], 1)),
            ("wide_asked", Value::fine(opening.size_wanted[1])),
            ("more", Value::fine(most)),
            ("sides", names.join(", ").into()),
        ];
        Finding::of(&LARGER, values, "geometry: the opening as cut")
    })
}
