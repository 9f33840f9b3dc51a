//! Bearers: what is told, what is drawn, and whether there is room for them.

use kerfwright::document::figure::{LineStyle, Thing};
use kerfwright::document::{Annex, document};
use kerfwright::geom::{Point, Side};
use kerfwright::words::{Message, Value};

use crate::PLANS;
use crate::reading::{cards, figures, messages};

/// The bearers that are told under edges without a cut are those that a card draws; each lies under the top, and no two
/// bearers lie on one another.
#[test]
fn bearers_under_edges_are_told_drawn_and_have_room() {
    let (mut faults, mut seen) = (Vec::new(), 0);
    for (name, plan) in PLANS.iter() {
        let middle = |[a, b]: &[Point; 2]| a.midpoint(*b);
        let under: Vec<Point> = plan.edge_bearers.iter().map(middle).collect();
        seen += under.len();
        let document = document(plan, Annex::Without);
        let told: Vec<Message> = { &document.sections }
            .iter()
            .flat_map(|s| messages(&s.blocks))
            .filter(|m| m.id == "bench-bring-bearers-edges")
            .collect();
        let count = told
            .first()
            .map_or(Some(&Value::count(0)), |m| m.arg("count"))
            .cloned();
        if count != Some(Value::count(under.len())) {
            faults.push(format!("{name}: {count:?} told, {} there", under.len()));
        }
        for (cut, blocks) in cards(plan) {
            for figure in figures(&blocks) {
                let dashes = figure.things.iter().filter(|thing| match thing {
                    Thing::Line(LineStyle::Hidden, segs) => segs
                        .iter()
                        .any(|s| under.iter().any(|at| at.distance(s.at(0.5)) < 1e-6)),
                    _ => false,
                });
                let drawn = dashes.count();
                if drawn != under.len() {
                    faults.push(format!(
                        "{name}, cut {}: {drawn} of {} drawn",
                        cut.number,
                        under.len()
                    ));
                }
            }
        }
        for (i, at) in under.iter().enumerate() {
            let outside = plan.top.sawn_outline.side(*at) != Side::Inside;
            let close = under[..i]
                .iter()
                .any(|other| other.distance(*at) < 100.0 - 1e-9);
            if outside || close {
                faults.push(format!("{name}: bearer at {at:?}"));
            }
        }
    }
    assert!(faults.is_empty(), "{}", faults.join("\n"));
    assert!(seen > 50, "only {seen} bearers");
}
