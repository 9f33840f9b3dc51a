//! Findings about bending, narrow stone and the trestles.

use super::BEND_SOURCE;
use super::words::{Words, finding};
use crate::diag::{Finding, Findings};
use crate::handle::bench::{Bench, Lies, Places};
use crate::handle::judged::Bending;
use crate::handle::neck::Neck;
use crate::handle::rail::{Rail, RailVerdict, WIDTH_SOURCE};
use crate::handle::splint::Splint;
use crate::handle::{Handling, Piece};
use crate::job::Job;

pub(super) fn bending(piece: &Piece, words: Words, found: &mut Findings) {
    let s = &piece.strength;
    if s.best.verdict.is_above() {
        found.cautions.push(finding(
            "bends-flat",
            format!("{}: must not lie flat on two supports", piece.name),
            format!(
                "{} Even on the best two supports. Keep it on edge, or bed it on a full flat board.",
                stress(&s.best, s.allowed_mpa, words)
            ),
            BEND_SOURCE,
        ));
        return;
    }
    let bad = [&s.ends_only, &s.one_end_lifted];
    let worst = bad
        .into_iter()
        .max_by(|a, b| a.worst.stress_mpa.total_cmp(&b.worst.stress_mpa));
    if let Some(worst) = worst.filter(|b| b.verdict.is_above()) {
        found.cautions.push(finding(
            "bends-flat",
            format!("{}: lying flat it can snap", piece.name),
            format!(
                "{} Never lift one end of it while it lies flat. Flat it may lie only on supports \
                 {} from the left end (lower end when upright), where it is {:.2} MPa.",
                stress(worst, s.allowed_mpa, words),
                words.lengths(&s.best.worst.supports_mm),
                s.best.worst.stress_mpa,
            ),
            BEND_SOURCE,
        ));
    }
}

/// The worst state between slab and top, when it may not lie flat though both of them may.
pub(super) fn between(handling: &Handling, words: Words, found: &mut Findings) {
    let above = |piece: &Piece| piece.strength.best.verdict.is_above();
    if above(&handling.slab) || above(&handling.top) {
        return;
    }
    let stress = |piece: &Piece| piece.strength.best.worst.stress_mpa;
    let states = handling.states.iter().filter(|s| above(s));
    if let Some(worst) = states.max_by(|a, b| stress(a).total_cmp(&stress(b))) {
        bending(worst, words, found);
    }
}

fn stress(bending: &Bending, allowed_mpa: f64, words: Words) -> String {
    let utilisation = bending.verdict.utilisation();
    format!(
        "Lying {}: {:.2} MPa where it is {} wide, {} from the end; allowed {allowed_mpa:.2} MPa \
         (strength ÷ safety factor), {utilisation:.2} times.",
        bending.what,
        bending.worst.stress_mpa,
        words.length(bending.worst.width_mm),
        words.length(bending.worst.at_mm),
    )
}

/// Slab and top on edge against flat, in one finding.
pub(super) fn on_edge(handling: &Handling, words: Words) -> Finding {
    let pieces = [&handling.slab, &handling.top];
    let each = pieces.map(|piece| edge_against_flat(piece, words));
    let allowed = handling.top.strength.allowed_mpa;
    finding(
        "carry-on-edge",
        "Carry slab and top on edge, never flat".to_owned(),
        format!(
            "Held at the two ends: {}; allowed is {allowed:.2} MPa. Sound stone is assumed.",
            each.join("; ")
        ),
        BEND_SOURCE,
    )
}

fn edge_against_flat(piece: &Piece, words: Words) -> String {
    let s = &piece.strength;
    let how = if s.best_on_edge.verdict.is_above() {
        ", and not even on edge on two supports within what is allowed: brace its narrow parts first, or \
         carry it bedded on a frame"
            .to_owned()
    } else if s.ends_on_edge.verdict.is_above() {
        format!(
            ", so not even on edge may it hang from its ends: hold or stand it {} from the end, where it is \
             {:.2} MPa",
            words.lengths(&s.best_on_edge.worst.supports_mm),
            s.best_on_edge.worst.stress_mpa
        )
    } else {
        String::new()
    };
    format!(
        "{} {:.2} MPa flat and {:.3} MPa on edge{how}",
        piece.name, s.ends_only.worst.stress_mpa, s.ends_on_edge.worst.stress_mpa
    )
}

pub(super) fn flawed(job: &Job) -> Option<Finding> {
    let count = job.slab.flaws.len();
    let noted = if count == 1 {
        "One flaw is".to_owned()
    } else {
        format!("{count} flaws are")
    };
    (count > 0).then(|| {
        finding(
            "flaws-and-strength",
            "The slab has flaws: the strength figures do not hold across them".to_owned(),
            format!(
                "{noted} noted. Every stress here assumes sound stone; at a fissure or a \
                 mend it may break far below them. Keep it on edge, on a full board or frame."
            ),
            "judgement",
        )
    })
}

/// The narrow rails and necks that want a brace, each told once, where it is stressed most.
pub(super) fn narrow(handling: &Handling, words: Words, found: &mut Findings) {
    let mut rails: Vec<(&Piece, &Rail)> = Vec::new();
    let mut necks: Vec<(&Piece, &Neck)> = Vec::new();
    for piece in handling.states.iter().chain([&handling.top]) {
        for rail in &piece.rails {
            match rails.iter_mut().find(|r| r.1.name == rail.name) {
                Some(same) if same.1.alone_mpa > rail.alone_mpa => {}
                Some(same) => *same = (piece, rail),
                None => rails.push((piece, rail)),
            }
        }
        for neck in piece.necks.iter().filter(|n| n.verdict.is_above()) {
            match necks.iter_mut().find(|n| n.1.name == neck.name) {
                Some(same) if same.1.stress_mpa > neck.stress_mpa => {}
                Some(same) => *same = (piece, neck),
                None => necks.push((piece, neck)),
            }
        }
    }
    for (piece, rail) in rails {
        found.cautions.extend(weak_rail(piece, rail, words));
        found.cautions.extend(narrow_rail(rail, words));
    }
    for (piece, neck) in necks {
        found.cautions.push(weak_neck(piece, neck, words));
    }
}

fn weak_rail(piece: &Piece, rail: &Rail, words: Words) -> Option<Finding> {
    let allowed = piece.strength.allowed_mpa;
    let title = match rail.verdict {
        RailVerdict::Holds { .. } => return None,
        RailVerdict::Brace { .. } => format!("Brace the {} before the stone is moved", rail.name),
        RailVerdict::TooWeak { .. } => format!("The {} is too weak to be moved flat", rail.name),
    };
    let edge = rail.on_edge_mpa.filter(|s| *s > allowed);
    let edge = edge.map_or_else(String::new, |s| {
        format!("On edge on two supports it is stressed {s:.2} MPa. ")
    });
    let detail = format!(
        "{}, {}: {} wide, {} long. {edge}Lying flat or in people's hands it is stressed {:.2} MPa with the \
         other stone's help and {:.2} MPa when it must take the bending alone, as when that side is \
         lifted first; allowed {allowed:.2} MPa. {} Carry it on edge; never hold or clamp it there.",
        piece.name,
        rail.name,
        words.length(rail.width_mm),
        words.length(rail.length_mm),
        rail.together_mpa,
        rail.alone_mpa,
        splint(rail.splint.as_ref(), words),
    );
    Some(finding("brace-the-rail", title, detail, BEND_SOURCE))
}

fn splint(splint: Option<&Splint>, words: Words) -> String {
    let Some(splint) = splint else {
        return "No timber is stiff enough: bed the whole stone on a frame or board.".to_owned();
    };
    let [width, depth] = splint.timber_mm;
    let timbers = match splint.count {
        1 => "a straight timber".to_owned(),
        n => format!("{n} straight timbers side by side, each"),
    };
    format!(
        "Before it is lifted clamp along it, on edge and touching all the way, {timbers} {width:.0} × \
         {depth:.0} mm and at least {} long, with padded clamps on whole stone at both ends: that \
         leaves {:.2} MPa.",
        words.length(splint.length_mm),
        splint.stone_mpa,
    )
}

fn narrow_rail(rail: &Rail, words: Words) -> Option<Finding> {
    let least = rail.least_mm.filter(|least| rail.width_mm < *least)?;
    Some(finding(
        "narrow-rail",
        format!("The {} is narrower than the trade leaves it", rail.name),
        format!(
            "It is {} wide; {} is what is published as the least. Move the cutout or make it smaller, or \
             ask whether the stone can be stiffened from below for good.",
            words.length(rail.width_mm),
            words.length(least),
        ),
        &WIDTH_SOURCE.cite(),
    ))
}

fn weak_neck(piece: &Piece, neck: &Neck, words: Words) -> Finding {
    finding(
        "brace-the-neck",
        format!(
            "{}: the {} must not carry the stone beyond it",
            piece.name, neck.name
        ),
        format!(
            "It is {} wide; {} hanging on it lying flat stresses it {:.2} MPa, allowed {:.2} MPa. Hold \
             the stone up on both sides of it whenever it lies flat. {}",
            words.length(neck.width_mm),
            words.mass(neck.hanging),
            neck.stress_mpa,
            piece.strength.allowed_mpa,
            splint(neck.splint.as_ref(), words),
        ),
        BEND_SOURCE,
    )
}

/// Trestles that drop the stone or let it bend too far.
pub(super) fn trestles(benches: &[Bench], words: Words, found: &mut Findings) {
    for bench in benches {
        let places = words.lengths(&bench.at_mm);
        match &bench.lies {
            Lies::Falls { state } => found.stops.push(finding(
                "falls-off-trestles",
                format!("{state}: the stone does not lie on the trestles"),
                format!(
                    "With trestles {places} from the slab's end its balance point is not between them, \
                     or it does not reach them. Move them before that cut, or leave lift.trestles out."
                ),
                "statics",
            )),
            Lies::Judged {
                state,
                stress_mpa,
                verdict,
            } if verdict.is_above() && bench.places == Places::Given => found.cautions.push(finding(
                "bends-on-trestles",
                format!("{state}: two trestles are not enough"),
                format!(
                    "On trestles {places} from the slab's end it is stressed {stress_mpa:.2} MPa, {:.2} times \
                     what is allowed. Bed it on a full flat board instead.",
                    verdict.utilisation()
                ),
                BEND_SOURCE,
            )),
            Lies::Judged { .. } => {}
        }
    }
}
