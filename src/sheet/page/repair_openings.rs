//! What happened at the openings: tables and steps of the repair page.

use crate::cut::resumed::SERVES_MM;
use crate::repair::{EdgeNow, OpeningNow, Rail, Repair, ToDo};
use crate::sheet::book::Part;
use crate::sheet::figure::Figures;
use crate::sheet::flow::{Block, Scale};
use crate::sheet::table::{Heading, Table, Width};

use super::repair::{corner_table, edge_table};

/// Adds the tables of every opening that has been begun.
pub(super) fn add(parts: &mut Vec<Part>, repair: &Repair, figures: Figures) {
    for opening in &repair.openings {
        let (wanted, now) = (opening.size_wanted, opening.size_now);
        let heading = format!(
            "Cutout {}, {}: {} × {} {}, wanted {} × {}",
            opening.number,
            opening.what,
            figures.tape_bare(now[0]),
            figures.tape_bare(now[1]),
            figures.unit(),
            figures.tape_bare(wanted[0]),
            figures.tape_bare(wanted[1]),
        );
        parts.push(Block::Subheading(heading).into());
        if !opening.sides.is_empty() {
            parts.push(edge_table("Side", &opening.sides, came, figures).into());
        }
        if !opening.corners.is_empty() {
            parts.push(corner_table(&opening.corners, came, figures).into());
        }
        if !opening.rails.is_empty() {
            parts.push(rail_table(&opening.rails, figures).into());
        }
    }
}

/// Where a face of an opening came to lie, in words: stone that is short there makes it too large.
fn came(face_out: Option<f64>, figures: Figures) -> String {
    match face_out {
        None => "not cut".into(),
        Some(out) if out.abs() < 0.05 => "on its line".into(),
        Some(out) if out < 0.0 => format!("{} too large", figures.small(-out)),
        Some(out) => format!("{} too small", figures.small(out)),
    }
}

fn rail_table(rails: &[Rail], figures: Figures) -> Table {
    let row = |rail: &Rail| {
        vec![
            format!("to {}", rail.beside),
            figures.tape_bare(rail.wanted),
            figures.tape_bare(rail.now),
        ]
    };
    let unit = figures.unit();
    Table {
        headings: vec![
            Heading::words("Rail", Width::Part(1.0)),
            Heading::numbers(format!("Wanted, {unit}"), Width::Mm(40.0)),
            Heading::numbers(format!("Now, {unit}"), Width::Mm(40.0)),
        ],
        rows: rails.iter().map(row).collect(),
        style: Scale::BENCH.strong,
    }
}

/// What comes before everything else.
pub(super) fn first(repair: &Repair) -> Vec<String> {
    if repair.tails_first.is_empty() {
        return Vec::new();
    }
    vec![format!(
        "Take out the tails at the stopped ends of the cuts that are made, and what bridges them and the core \
         holes there, before the rest is cut: {}. The other pages count that as gone.",
        repair.tails_first.join(", ")
    )]
}

/// The steps at the openings.
pub(super) fn steps(repair: &Repair, figures: Figures) -> Vec<String> {
    let mut steps: Vec<String> = off_holes("of the top", &repair.off_holes, figures)
        .into_iter()
        .collect();
    for opening in &repair.openings {
        let of = format!("of cutout {}", opening.number);
        let again = opening
            .sides
            .iter()
            .filter(|s| s.to_do == ToDo::Cut && s.face_out.is_some());
        let again: Vec<&str> = again.map(|s| s.name.as_str()).collect();
        if !again.is_empty() {
            steps.push(format!("Cut again: {} {of}.", again.join(", ")));
        }
        let ground = ground(opening, figures);
        if !ground.is_empty() {
            steps.push(format!(
                "Grind down to the finished line {of}, where it is thickest: {}.",
                ground.join(", ")
            ));
        }
        steps.extend(off_holes(&of, &opening.off_holes, figures));
    }
    steps
}

/// Corners that lie beyond the core holes drilled for them.
fn off_holes(of: &str, off: &[(String, f64)], figures: Figures) -> Option<String> {
    let each = off.iter();
    let each = each.map(|(corner, off)| format!("{corner} by {}", figures.small(*off)));
    let each: Vec<String> = each.collect();
    (!each.is_empty()).then(|| {
        format!(
            "Inside corners {of} lie beyond the core holes drilled for them: {}. Up to {} the old hole serves: \
             grind the corner out to the new lines and leave it round. Beyond that it is drilled again: see \
             the cuts; where both its edges are cut already, saw the one on to the other and round the \
             corner before the stone is moved.",
            each.join(", "),
            figures.small(SERVES_MM)
        )
    })
}

fn ground(opening: &OpeningNow, figures: Figures) -> Vec<String> {
    let sides = opening.sides.iter().filter_map(|s| match s.to_do {
        ToDo::Finish(mm) if mm >= 0.05 => {
            Some(format!("{} off side {}", figures.small(mm), s.name))
        }
        _ => None,
    });
    let corners = opening.corners.iter().filter_map(|c| match c.to_do {
        ToDo::Finish(mm) if mm >= 0.05 => Some(format!("{} off {}", figures.small(mm), c.name)),
        _ => None,
    });
    sides.chain(corners).collect()
}

/// The openings as lines of text: a name, and what is told.
#[must_use]
pub fn text(repair: &Repair, figures: Figures) -> Vec<(String, String)> {
    let mut lines = Vec::new();
    for opening in &repair.openings {
        let name = format!("cutout {}", opening.number);
        let (wanted, now) = (opening.size_wanted, opening.size_now);
        lines.push((
            name.clone(),
            format!(
                "{}: {} × {}, wanted {} × {}",
                opening.what,
                figures.tape(now[0]),
                figures.tape(now[1]),
                figures.tape(wanted[0]),
                figures.tape(wanted[1])
            ),
        ));
        let sides = opening.sides.iter().map(|side: &EdgeNow| {
            let words = format!(
                "{}; line moves {}; {}",
                came(side.face_out, figures),
                figures.small(side.moved_in),
                super::repair::task(side.to_do, figures)
            );
            (format!("  side {}", side.name), words)
        });
        lines.extend(sides);
        let corners = opening.corners.iter().map(|corner| {
            let words = format!(
                "{}; {} {}, wanted {}; {}",
                came(corner.face_out, figures),
                corner.what,
                figures.tape(corner.now),
                figures.tape(corner.wanted),
                super::repair::task(corner.to_do, figures)
            );
            (format!("  corner {}", corner.name), words)
        });
        lines.extend(corners);
        let rails = opening.rails.iter().map(|rail| {
            let (now, wanted) = (figures.tape(rail.now), figures.tape(rail.wanted));
            (
                format!("  rail to {}", rail.beside),
                format!("{now}, wanted {wanted}"),
            )
        });
        lines.extend(rails);
    }
    lines
}
