//! The parts of the plan as text that tell of curves without an arm, of practice and of repair.

use std::fmt::Write;

use crate::cut::{ChordEnd, OrdinateSetOut, PracticeMark};
use crate::plan::Plan;
use crate::repair::Repair;
use crate::sheet::figure::{Figures, angle, area};
use crate::sheet::page::repair::{came, letters, task, to_do, verdict};
use crate::sheet::page::repair_openings::text as openings;

/// A curve set out from its chord.
pub(super) fn ordinates(out: &mut String, figures: Figures, set_out: &OrdinateSetOut, cusp: f64) {
    let ties = |end: &ChordEnd| {
        let ties = end.ties.iter();
        let ties: Vec<String> = ties
            .map(|t| format!("{} from {}", figures.tape(t.distance), t.corner))
            .collect();
        ties.join(", ")
    };
    row(out, "chord begins", &ties(&set_out.from));
    row(out, "chord ends", &ties(&set_out.to));
    row(out, "chord", &figures.tape(set_out.chord_length));
    row(out, "rise", &figures.tape(set_out.rise));
    row(out, "sawn radius", &figures.tape(set_out.curve.sawn_radius));
    row(
        out,
        "guide",
        &format!(
            "{} from the line to keep",
            figures.small(set_out.guide_to_face)
        ),
    );
    row(out, "cusps", &figures.small(cusp));
    let chord = set_out.curve.stations.get(1).map_or(0.0, |s| s.chord);
    let step = angle(set_out.curve.step);
    row(
        out,
        "step",
        &format!("{step}, chord {}", figures.small(chord)),
    );
    let unit = figures.unit();
    let _ = writeln!(
        out,
        "  station   arc along / off {unit:<4}     guide along / off {unit:<4}         and {unit}"
    );
    for (station, marks) in set_out.curve.stations.iter().zip(&set_out.marks) {
        let pairs = [marks.touch, marks.guide[0], marks.guide[1]].map(|o| {
            let (along, off) = (figures.tape_bare(o.along), figures.tape_bare(o.off));
            format!("{along:>10} {off:>9}")
        });
        let cut = if station.in_stone {
            ""
        } else {
            "  already cut: no plunge"
        };
        let _ = writeln!(out, "  {:>7} {}{cut}", station.number, pairs.join("  "));
    }
}

/// The practice before the first cut.
pub(super) fn practice(out: &mut String, figures: Figures, plan: &Plan) {
    if plan.cuts.is_empty() {
        return;
    }
    let _ = writeln!(out, "\nPRACTICE BEFORE THE FIRST CUT");
    let marks = [
        ("practice cut", &plan.practice.cut),
        ("practice plunges", &plan.practice.plunges),
    ];
    for (name, mark) in marks {
        let words = mark.as_ref().map_or_else(
            || "no room in the waste: use another piece of the same stone".to_owned(),
            |mark| place_of(mark, figures),
        );
        row(out, name, &words);
    }
}

fn place_of(mark: &PracticeMark, figures: Figures) -> String {
    let ends = mark.ends.iter().map(|end| {
        let ties = end.ties.iter().take(2);
        let ties: Vec<String> = ties
            .map(|t| format!("{} from {}", figures.tape(t.distance), t.corner))
            .collect();
        ties.join(" and ")
    });
    let ends: Vec<String> = ends.collect();
    format!(
        "in {}, {} clear of the top, {} long, {} deep, from {} to {}",
        mark.piece,
        figures.size(mark.clearance.mm().floor()),
        figures.tape(mark.length),
        figures.small(mark.depth),
        ends[0],
        ends[1]
    )
}

/// What happened and what it costs.
pub(super) fn repair(out: &mut String, figures: Figures, plan: &Plan) {
    let Some(repair) = &plan.repair else {
        return;
    };
    let _ = writeln!(out, "\nWHAT HAPPENED");
    row(out, "result", &verdict(repair, figures));
    row(out, "letters", letters(repair));
    edges(out, figures, repair);
    for (name, words) in openings(repair, figures) {
        row(out, &name, &words);
    }
    for step in to_do(repair, figures) {
        row(out, "do", &step);
    }
    for overhang in &repair.overhangs {
        let words = format!(
            "{} over the base, wanted {}",
            figures.tape(overhang.now),
            figures.tape(overhang.wanted)
        );
        row(out, &format!("edge {}", overhang.edge), &words);
    }
    let lost = repair.wanted.area_mm2 - repair.now.area_mm2;
    row(out, "lost", &area(lost));
    for line in &repair.job_lines {
        row(out, "job file", line);
    }
}

fn edges(out: &mut String, figures: Figures, repair: &Repair) {
    for edge in &repair.edges {
        let words = format!(
            "{}; line moves in {}; {}",
            came(edge.face_out, figures),
            figures.small(edge.moved_in),
            task(edge.to_do, figures)
        );
        row(out, &format!("edge {}", edge.name), &words);
    }
    for corner in &repair.corners {
        let words = format!(
            "{}; {} {}, wanted {}; {}",
            came(corner.face_out, figures),
            corner.what,
            figures.tape(corner.now),
            figures.tape(corner.wanted),
            task(corner.to_do, figures)
        );
        row(out, &format!("corner {}", corner.name), &words);
    }
}

fn row(out: &mut String, name: &str, value: &str) {
    let _ = writeln!(out, "  {name:<18} {value}");
}
