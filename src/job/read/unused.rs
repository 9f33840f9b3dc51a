//! Sections that belong to the format and that this version reads but does not use, or refuses.

use crate::job::quantity::{Limits, from_to};
use crate::job::reader::Reader;

/// Door or corridor, mm (judgement).
const WAY: Limits = from_to(100.0, 20_000.0);

/// Checks `[[route.door]]` and `[[route.corner]]` and says that they are not used.
pub(super) fn route(r: &mut Reader<'_>) {
    r.each("door", 64, |r| {
        r.text("what");
        let sizes = [("width", "the clear width"), ("height", "the clear height")];
        measures(r, &sizes);
        Some(())
    });
    r.each("corner", 64, |r| {
        r.text("what");
        let sizes = [
            ("from", "the width of the way before the corner"),
            ("to", "the width of the way after it"),
            ("height", "the clear height"),
        ];
        measures(r, &sizes);
        Some(())
    });
    let instead = "carry a batten as long as the top through every door and corner before you buy";
    not_used(r, "door", instead);
    not_used(r, "corner", instead);
}

fn measures(r: &mut Reader<'_>, sizes: &[(&'static str, &str)]) {
    for (key, what) in sizes {
        if let Some(given) = r.need(key, what) {
            given.length(WAY);
        }
    }
}

fn not_used(r: &mut Reader<'_>, key: &'static str, hint: &str) {
    if let Some(given) = r.get(key) {
        let message = format!("{} is read, but not used by this version", given.key);
        r.ledger.remark(&given.key, given.span, message, hint);
    }
}
