//! `[slab]`: the slab as measured, its edges and its flaws.

use super::figure::{edge_hint, find_edge};
use super::{flaw, slab_figure};
use crate::job::given::Given;
use crate::job::quantity::{ANGLE, from_to};
use crate::job::reader::Reader;
use crate::job::words::listed;
use crate::job::{EdgeState, Shape, Slab};

/// The most flaws that are kept clear of (judgement).
const MOST_FLAWS: usize = 200;

/// Reads the slab.
pub(super) fn read(r: &mut Reader<'_>, wanted: bool) -> Option<Slab> {
    let tape_error_mm = r.length_or(
        "tape",
        from_to(0.1, 20.0),
        1.0,
        "judgement: a good tape, read twice",
    );
    let measured = slab_figure::read(r, wanted, tape_error_mm);
    let (factory, rough) = (r.get("factory"), r.get("rough"));
    let vein_deg = r
        .get("vein")
        .and_then(|v| v.quantity(&ANGLE, from_to(-360.0, 360.0)));
    let outline = measured.as_ref().map(|(shape, _)| shape.outline());
    let flaws = r.each("flaw", MOST_FLAWS, |r| flaw::read(r, outline));
    let (shape, survey) = measured?;
    let edges = edges(r, &shape, factory, rough);
    Some(Slab {
        shape,
        edges,
        flaws,
        tape_error_mm,
        vein_deg,
        survey,
        begun: crate::job::Begun::default(),
    })
}

/// The state of every edge: sawn unless said.
fn edges(
    r: &Reader<'_>,
    shape: &Shape,
    factory: Option<Given<'_>>,
    rough: Option<Given<'_>>,
) -> Vec<EdgeState> {
    let mut states: Vec<Option<EdgeState>> = vec![None; shape.count()];
    for (given, state) in [(factory, EdgeState::Factory), (rough, EdgeState::Rough)] {
        let names = given.and_then(|g| g.list(0, shape.count()));
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
        let why = "an edge that is neither in `factory` nor in `rough` is taken as sawn";
        r.ledger.assume(r.key("factory"), value, why);
    }
    states
        .into_iter()
        .map(|state| state.unwrap_or(EdgeState::Sawn))
        .collect()
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
        given.fault::<()>(&message, "an edge is factory, rough or neither; keep one");
    }
}
