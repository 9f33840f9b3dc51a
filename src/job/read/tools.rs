//! `[guide]`, `[circle_jig]` and `[passes]`: how the cuts are led and how deep each goes.

use crate::job::given::Given;
use crate::job::reader::Reader;
use crate::job::{CircleJig, CoreBit, Guide, Passes};
use crate::tables::stone::StoneKind;

/// Sawn face a minute in granite and other hard stone, cm² (judgement; nothing is published).
const HARD_RATE: f64 = 25.0;
/// Sawn face a minute in marble and limestone, cm² (judgement; nothing is published).
const SOFT_RATE: f64 = 40.0;
/// Reads the straight guide.
pub(super) fn guide(r: &mut Reader<'_>) -> Guide {
    let (length_mm, offset_mm) = (r.length("length"), r.length("offset"));
    let overlap_mm = r.length("overlap");
    if overlap_mm >= length_mm {
        let message = format!(
            "is {}, but the guide is only {} long",
            r.ledger.length(overlap_mm),
            r.ledger.length(length_mm)
        );
        r.get("overlap")
            .and_then(|g| g.fault::<()>(&message, "take less than the guide's length"));
    }
    Guide {
        length_mm,
        offset_mm,
        overlap_mm,
    }
}

/// Reads the circle jig.
pub(super) fn circle_jig(r: &mut Reader<'_>) -> CircleJig {
    const REACH: (f64, f64) = (150.0, 900.0);
    let offset_mm = r.length("offset");
    let reach_given = r.get("reach");
    if reach_given.is_none() {
        r.assume("reach", "150 mm to 900 mm");
    }
    let reach_mm = reach_given.and_then(|given| reach(&given)).unwrap_or(REACH);
    CircleJig {
        offset_mm,
        reach_mm,
    }
}

fn reach(given: &Given<'_>) -> Option<(f64, f64)> {
    let arms: Vec<_> = given.list()?.iter().map(Given::length).collect();
    match arms[..] {
        [Some(short), Some(long)] if short < long => Some((short, long)),
        [Some(_), Some(_)] => given.fault("is not in order", "shortest arm first, longest second"),
        _ => None,
    }
}

/// Reads the core bits.
pub(super) fn core_bits(root: &mut Reader<'_>) -> Vec<CoreBit> {
    root.each("core_bit", |r| {
        let diameter = r.need("diameter").and_then(|given| given.length());
        let minutes = r.quantity("minutes");
        Some(CoreBit {
            diameter: diameter?,
            minutes,
        })
    })
}

/// Reads depths and rates.
pub(super) fn passes(r: &mut Reader<'_>, kind: Option<StoneKind>) -> Passes {
    let rate_is_guess = r.get("rate").is_none();
    Passes {
        score_mm: r.length("score"),
        step_mm: r.length("step"),
        plunge_step_mm: r.length("plunge_step"),
        through_mm: r.length("through"),
        cusp_mm: r.length("cusp"),
        rate_cm2_per_min: r.quantity_else("rate", usual_rate(kind)),
        rate_is_guess,
        far_end_mm: r.length("far_end"),
        curve_factor: r.quantity("curve_factor"),
        stopped_factor: r.quantity("stopped_factor"),
        set_up_min: r.quantity("set_up"),
        waste_piece: r.mass("waste_piece"),
    }
}

/// The guess for a kind of stone.
fn usual_rate(kind: Option<StoneKind>) -> f64 {
    match kind {
        Some(StoneKind::Marble | StoneKind::Limestone | StoneKind::Travertine) => SOFT_RATE,
        _ => HARD_RATE,
    }
}
