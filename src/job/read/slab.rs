//! `[slab]`: the slab as measured, its edges and its flaws.

use super::figure::{self, edge_hint, find_edge};
use super::flaw;
use crate::job::given::Given;
use crate::job::quantity::{ANGLE, from_to};
use crate::job::reader::Reader;
use crate::job::words::listed;
use crate::job::{EdgeState, Naming, Shape, Slab};

/// The most flaws that are kept clear of (judgement).
const MOST_FLAWS: usize = 200;

/// Reads the slab.
pub(super) fn read(r: &mut Reader<'_>, wanted: bool) -> Option<Slab> {
    let otherwise = not_planned(r);
    let shape = figure::read(r, Naming::Letters, wanted && !otherwise);
    let (factory, rough) = (r.get("factory"), r.get("rough"));
    let tape_error_mm = r.length_or(
        "tape",
        from_to(0.1, 20.0),
        1.0,
        "judgement: a good tape, read twice",
    );
    let vein_deg = r
        .get("vein")
        .and_then(|v| v.quantity(&ANGLE, from_to(-360.0, 360.0)));
    let outline = shape.as_ref().map(Shape::outline);
    let flaws = r.each("flaw", MOST_FLAWS, |r| flaw::read(r, outline));
    let shape = shape?;
    let edges = edges(r, &shape, factory, rough);
    Some(Slab {
        shape,
        edges,
        flaws,
        tape_error_mm,
        vein_deg,
    })
}

/// The ways to measure a slab that this version does not work out. True when one was used in
/// place of the corners.
fn not_planned(r: &mut Reader<'_>) -> bool {
    let corners = "give `corners = [[x, y], …]`: x along the straight edge AB from corner A, \
                   y square to it";
    let ways = [
        ("sides", "a slab from its four sides"),
        ("diagonals", "a slab from its diagonals"),
        ("base_line", "a slab from a base line"),
        ("ties", "a slab from taped ties"),
    ];
    let mut used = false;
    for (key, what) in ways {
        used |= r.not_planned(key, what, corners);
    }
    used
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
