//! The plan's lifting and safety numbers as text.

use std::fmt::Write;

use crate::plan::Plan;
use crate::sheet::figure::{Figures, time};
use crate::sheet::page::body::ear_words;
use crate::sheet::page::both::Both;
use crate::sheet::page::protection::{at_hand_words, caught_words, required_words};
use crate::sheet::page::safety::grams;
use crate::words::{Catalogue, Language};

/// Writes lifting, then dust, vibration and noise.
pub(super) fn write(out: &mut String, figures: Figures, plan: &Plan) {
    let _ = writeln!(out, "\nLIFT AND CARRY");
    let mut row = |name: &str, value: &str| {
        let _ = writeln!(out, "  {name:<18} {value}");
    };
    super::text_lifting::write(&mut row, Both::of(figures), plan);
    let h = &plan.hazards;
    let english = Catalogue::of(Language::English);
    let _ = writeln!(out, "\nDUST, VIBRATION, NOISE");
    let mut row = |name: &str, value: &str| {
        let _ = writeln!(out, "  {name:<18} {value}");
    };
    row("stone to dust", &grams(&h.silica.dust_g));
    row("silica in it", &grams(&h.silica.silica_g));
    row("carried away", &caught_words(h, english));
    row("limit", &h.silica.limit_text);
    row("respirator needed", &required_words(h, english));
    row("at hand", &at_hand_words(h, english));
    row(
        "vibration",
        &format!(
            "A(8) {:.1} m/s², {:.0} points, {} with the disc in the stone",
            h.vibration.a8_day_m_s2,
            h.vibration.points_day,
            time(h.vibration.trigger_min)
        ),
    );
    if let Some(lex) = h.noise.lex_8h_db {
        row("noise", &format!("{lex:.1} dB(A) over 8 h"));
    }
    row("hearing protector", &ear_words(h, english));
    let _ = writeln!(out, "  order of controls");
    for (i, step) in h.order.iter().enumerate() {
        let state = step.state.word();
        let _ = writeln!(out, "    {} {:<34} {state}", i + 1, step.what);
    }
}
