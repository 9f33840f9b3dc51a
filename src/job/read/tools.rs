//! `[guide]`, `[circle_jig]` and `[passes]`: how the cuts are led and how deep each goes.

use crate::job::given::Given;
use crate::job::quantity::{FACE_RATE, Limits, MINUTES, NUMBER, from_to};
use crate::job::reader::Reader;
use crate::job::{CircleJig, CoreBit, Guide, Passes};
use crate::tables::stone::StoneKind;
use crate::units::Mass;

/// Sawn face a minute in granite and other hard stone, cm² (judgement; nothing is published).
const HARD_RATE: f64 = 25.0;
/// Sawn face a minute in marble and limestone, cm² (judgement; nothing is published).
const SOFT_RATE: f64 = 40.0;
/// The arms a circle jig may have, mm.
const ARM: Limits = from_to(1.0, 5000.0);

/// Reads the straight guide.
pub(super) fn guide(r: &mut Reader<'_>) -> Guide {
    let length_mm = r.length_or(
        "length",
        from_to(200.0, 6000.0),
        1400.0,
        "common practice: half a usual guide rail; measure yours",
    );
    let why = "judgement; make a test cut and measure guide to cut";
    let offset_mm = r.length_or("offset", from_to(0.0, 600.0), 118.0, why);
    let overlap_given = r.get("overlap");
    let why = "judgement: enough to line up the second set-up on the first cut";
    let overlap_mm = r.length_or("overlap", from_to(0.0, 2000.0), 150.0, why);
    if overlap_mm >= length_mm {
        let message = format!(
            "is {}, but the guide is only {} long",
            r.ledger.length(overlap_mm),
            r.ledger.length(length_mm)
        );
        overlap_given.and_then(|g| g.fault::<()>(&message, "take less than the guide's length"));
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
    let why = "judgement; make a test cut and measure the arm's mark to the cut";
    let offset_mm = r.length_or("offset", from_to(0.0, 600.0), 96.0, why);
    let reach_given = r.get("reach");
    if reach_given.is_none() {
        let why = "judgement: a jig of a batten and a pivot; measure yours";
        r.ledger.assume(r.key("reach"), "150 mm to 900 mm", why);
    }
    let reach_mm = reach_given.and_then(|given| reach(&given)).unwrap_or(REACH);
    CircleJig {
        offset_mm,
        reach_mm,
    }
}

fn reach(given: &Given<'_>) -> Option<(f64, f64)> {
    let arms: Vec<_> = given.list(2, 2)?.iter().map(|a| a.length(ARM)).collect();
    match arms[..] {
        [Some(short), Some(long)] if short < long => Some((short, long)),
        [Some(_), Some(_)] => given.fault("is not in order", "shortest arm first, longest second"),
        _ => None,
    }
}

/// The diameters of core bits, mm (judgement: from a pilot hole to the widest that is held by hand).
const BIT: Limits = from_to(3.0, 300.0);

/// Time for one core hole, minutes (judgement; nothing is published for hand drilling).
const HOLE_MINUTES: f64 = 6.0;

/// Reads the core bits.
pub(super) fn core_bits(root: &mut Reader<'_>) -> Vec<CoreBit> {
    root.each("core_bit", 32, |r| {
        let given = r.need("diameter", "across the bit")?;
        let diameter = given.length(BIT)?;
        let why = "judgement: drilled wet by hand, lifted often to clear the core";
        let minutes = r.quantity_or("minutes", &MINUTES, from_to(0.1, 240.0), HOLE_MINUTES, why);
        Some(CoreBit { diameter, minutes })
    })
}

/// Reads depths and rates.
pub(super) fn passes(r: &mut Reader<'_>, kind: Option<StoneKind>) -> Passes {
    let rate_is_guess = r.get("rate").is_none();
    Passes {
        score_mm: r.length_or(
            "score",
            from_to(0.2, 20.0),
            2.0,
            "judgement: a shallow first pass protects the arris",
        ),
        step_mm: r.length_or(
            "step",
            from_to(0.5, 50.0),
            6.0,
            "hand cuts in Cooper, Johnson and Phillips (2015) were 6 mm deep",
        ),
        plunge_step_mm: r.length_or(
            "plunge_step",
            from_to(0.5, 50.0),
            10.0,
            "judgement: a plunge meets less stone than a run",
        ),
        through_mm: r.length_or(
            "through",
            from_to(0.5, 30.0),
            3.0,
            "judgement: the rim is round and the bench uneven",
        ),
        cusp_mm: r.length_or(
            "cusp",
            from_to(0.05, 5.0),
            0.5,
            "judgement: what is quickly ground off by hand",
        ),
        rate_cm2_per_min: r.quantity_or(
            "rate",
            &FACE_RATE,
            from_to(0.5, 1000.0),
            usual_rate(kind),
            "a guess: nothing is published; put in the practice cut's own figure",
        ),
        rate_is_guess,
        far_end_mm: r.length_or(
            "far_end",
            from_to(0.0, 500.0),
            60.0,
            "judgement: sawn first from the far side so that the corner does not break off",
        ),
        curve_factor: r.quantity_or(
            "curve_factor",
            &NUMBER,
            from_to(1.0, 20.0),
            3.0,
            "judgement: a curve of plunges takes three times as long",
        ),
        stopped_factor: r.quantity_or(
            "stopped_factor",
            &NUMBER,
            from_to(1.0, 20.0),
            2.0,
            "judgement: a stopped cut and what it leaves in the corner take twice as long",
        ),
        set_up_min: r.quantity_or(
            "set_up",
            &MINUTES,
            from_to(0.0, 240.0),
            15.0,
            "judgement: measuring, clamping and checking one cut",
        ),
        waste_piece: waste_piece(r),
    }
}

/// The heaviest piece of waste that a curve may free at once, kg (judgement: what one person holds while it
/// drops).
const WASTE_PIECE_KG: f64 = 5.0;

fn waste_piece(r: &mut Reader<'_>) -> Mass {
    let usual = Mass::from_kg(WASTE_PIECE_KG);
    let Some(given) = r.get("waste_piece") else {
        let why = "judgement: what one person holds while it drops";
        r.ledger.assume(r.key("waste_piece"), "5 kg", why);
        return usual;
    };
    given.mass(from_to(0.5, 50.0)).unwrap_or(usual)
}

/// The guess for a kind of stone.
fn usual_rate(kind: Option<StoneKind>) -> f64 {
    match kind {
        Some(StoneKind::Marble | StoneKind::Limestone | StoneKind::Travertine) => SOFT_RATE,
        _ => HARD_RATE,
    }
}
