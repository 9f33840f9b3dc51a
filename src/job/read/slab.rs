//! `[slab]`: the slab as measured, its edges and its flaws.

use super::figure::{edge_hint, find_edge};
use super::{flaw, slab_figure};
use crate::job::given::Given;
use crate::job::reader::Reader;
use crate::job::words::listed;
use crate::job::{EdgeState, Shape, Slab};

/// Reads the slab.
pub(super) fn read(r: &mut Reader<'_>, wanted: bool) -> Option<Slab> {
    let tape_error_mm = r.length("tape");
    let measured = slab_figure::read(r, wanted, tape_error_mm);
    let said = [
        (r.get("factory"), EdgeState::Factory),
        (r.get("sawn"), EdgeState::Sawn),
        (r.get("rough"), EdgeState::Rough),
    ];
    let rough_margin_mm = r.length("rough_margin");
    let vein_deg = r.get("vein").and_then(|v| v.quantity());
    let outline = measured.as_ref().map(|(shape, _)| shape.outline());
    let flaws = r.each("flaw", |r| flaw::read(r, outline));
    let (shape, survey) = measured?;
    let states = edges(r, &shape, said);
    let undescribed = (0..shape.count()).filter(|e| states[*e].is_none());
    Some(Slab {
        undescribed: undescribed.collect(),
        edges: states
            .into_iter()
            .map(|state| state.unwrap_or(EdgeState::Sawn))
            .collect(),
        rough_margin_mm,
        shape,
        flaws,
        tape_error_mm,
        vein_deg,
        survey,
        begun: crate::job::Begun::default(),
    })
}

/// The state of every edge that is said; the others are told as taken for sawn.
fn edges(
    r: &Reader<'_>,
    shape: &Shape,
    said: [(Option<Given<'_>>, EdgeState); 3],
) -> Vec<Option<EdgeState>> {
    let mut states: Vec<Option<EdgeState>> = vec![None; shape.count()];
    for (given, state) in said {
        let names = given.and_then(|g| g.list());
        for name in names.unwrap_or_default() {
            mark(shape, &mut states, &name, state);
        }
    }
    let open: Vec<String> = (0..shape.count())
        .filter(|edge| states[*edge].is_none())
        .map(|edge| shape.edge_name(edge))
        .collect();
    if !open.is_empty() {
        let value = format!("{}: sawn", listed(&open));
        r.assume("factory", value);
    }
    states
}

fn mark(shape: &Shape, states: &mut [Option<EdgeState>], given: &Given<'_>, state: EdgeState) {
    let Some(name) = given.text() else { return };
    let Some(edge) = find_edge(shape, name) else {
        given.fault::<()>(
            &format!("is {name}: there is no such edge"),
            edge_hint(shape, name),
        );
        return;
    };
    if let Some(open @ None) = states.get_mut(edge) {
        *open = Some(state);
    } else {
        let message = format!("names edge {name} a second time");
        given.fault::<()>(&message, "an edge is factory, sawn or rough; keep one");
    }
}
