//! The plan's lifting, bending and setting-down numbers as text.

use crate::handle::Piece;
use crate::handle::bench::Lies;
use crate::handle::support::Setting;
use crate::plan::Plan;
use crate::sheet::page::both::Both;
use crate::sheet::page::lifting::{lift_off_words, verdict_words};

/// Writes the rows: people, equation, bending of every state, trestles, narrow places, supports.
pub(super) fn write(row: &mut impl FnMut(&str, &str), both: Both, plan: &Plan) {
    let handling = &plan.handling;
    row("finished top", &verdict_words(&handling.top, both));
    for lifter in &handling.top.lift.lifters {
        row(
            &format!("person {}", lifter.number),
            &format!(
                "{}, standing {} from the end, {} from the side",
                both.share(lifter.share),
                both.tape(lifter.from_end_mm),
                both.tape(lifter.from_side_mm)
            ),
        );
    }
    row(
        "lift off",
        &lift_off_words(&handling.top.lift.off_trestles, both),
    );
    row("slab", &verdict_words(&handling.slab, both));
    for piece in handling.pieces() {
        bending(row, piece, both);
    }
    trestles(row, both, plan);
    narrow(row, &handling.top, both);
    if let Some(setting) = &handling.setting {
        supports(row, setting, both);
    }
}

fn bending(row: &mut impl FnMut(&str, &str), piece: &Piece, both: Both) {
    row(&piece.name, &both.mass(piece.mass.high));
    for bending in piece.bendings() {
        row(
            "",
            &format!(
                "{}: {:.2} MPa, {:.0} % of what is allowed",
                bending.what,
                bending.worst.stress_mpa,
                bending.verdict.utilisation() * 100.0
            ),
        );
    }
}

fn trestles(row: &mut impl FnMut(&str, &str), both: Both, plan: &Plan) {
    for bench in &plan.handling.bench {
        let [first, second] = bench.at_mm.map(|at| both.tape(at));
        let lies = match &bench.lies {
            Lies::Judged {
                state, stress_mpa, ..
            } => format!("most in \"{state}\", {stress_mpa:.2} MPa"),
            Lies::Falls { state } => format!("falls off them in \"{state}\""),
        };
        row(
            "trestles",
            &format!(
                "{first} and {second} from the slab's end, {} to {}: {lies}",
                bench.from, bench.to
            ),
        );
    }
}

fn narrow(row: &mut impl FnMut(&str, &str), top: &Piece, both: Both) {
    for rail in &top.rails {
        row(
            &rail.name,
            &format!(
                "{} wide: {:.2} MPa together, {:.2} MPa alone",
                both.tape(rail.width_mm),
                rail.together_mpa,
                rail.alone_mpa
            ),
        );
    }
    for neck in &top.necks {
        row(
            &neck.name,
            &format!(
                "{} wide: {:.2} MPa",
                both.tape(neck.width_mm),
                neck.stress_mpa
            ),
        );
    }
}

fn supports(row: &mut impl FnMut(&str, &str), setting: &Setting, both: Both) {
    for bearing in &setting.bearings {
        row(
            &bearing.what,
            &format!(
                "carries {}, with a person {}",
                both.share(bearing.share),
                both.mass(bearing.with_person)
            ),
        );
    }
    for overhang in &setting.overhangs {
        row(
            "overhang",
            &format!("{}: {}", overhang.edge, both.tape(overhang.overhang_mm)),
        );
    }
    if let Some(span) = &setting.span {
        row("free span", &both.tape(span.span_mm));
    }
}
