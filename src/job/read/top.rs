//! `[top]`: the finished worktop.

use super::base::Base;
use super::cutout;
use super::figure::{self, edge_hint, find_edge};
use crate::geom::{Pose, Vector};
use crate::job::given::Given;
use crate::job::ledger::{Ledger, TextRange};
use crate::job::reader::Reader;
use crate::job::shape::GrowFault;
use crate::job::words::listed;
use crate::job::{Allowances, Finish, Naming, Shape, Slab, Top, VeinWish};

/// The top as given, and where corner 1 of its base lies in its frame when it was made over one.
#[derive(Debug)]
pub(super) struct GivenTop {
    pub(super) top: Top,
    pub(super) base_at: Option<Vector>,
}

/// Reads the top.
pub(super) fn read(
    r: &mut Reader<'_>,
    wanted: bool,
    slab: Option<&Slab>,
    base: Option<&Base>,
) -> Option<GivenTop> {
    let over_base = r.get("over_base");
    let given = figure::read(r, Naming::Numbers, wanted && over_base.is_none());
    let over_base = over_base.map(|said| over(r, &said, base, given.is_some()));
    let (shape, base_at) = match over_base {
        Some(grown) => grown.map_or((None, None), |(shape, at)| (Some(shape), Some(at))),
        None => (given, None),
    };
    let finish = r.get("finish");
    let allowances = r.section("allowance", allowances);
    let vein = vein(r, slab);
    let cutouts = cutout::read(r, shape.as_ref());
    let shape = shape?;
    let finishes = finishes(r, &shape, finish);
    let top = Top {
        shape,
        cutouts,
        finishes,
        allowances,
        vein,
        ready: Vec::new(),
    };
    Some(GivenTop { top, base_at })
}

/// The top that stands over its base by the given overhangs, corner 1 at the origin, and where corner
/// 1 of the base then lies.
fn over(
    r: &Reader<'_>,
    said: &Given<'_>,
    base: Option<&Base>,
    second: bool,
) -> Option<(Shape, Vector)> {
    if second {
        return said.fault(
            "stands beside the top's own size: the top is described twice",
            "keep the overhangs and drop the size, or the other way round",
        );
    }
    let Some(base) = base else {
        return said.fault(
            "asks for a top over its base, but there is no sound [base]",
            "add [base] with its `rectangle` or `corners`, in the words of the top",
        );
    };
    if base.says_where() {
        return said.fault(
            "says where the base lies, and so does base.at",
            "leave out base.at: the overhangs place the base",
        );
    }
    let overhangs = overhangs(r, said, &base.shape)?;
    match base.shape.grown(&overhangs) {
        Ok(grown) => {
            let first = grown.corners().first()?.to_vector();
            Some((grown.posed(Pose::new(0.0, -first)), -first))
        }
        Err(fault) => {
            let (message, hint) = grow_words(r.ledger, &base.shape, fault);
            said.fault(&message, hint)
        }
    }
}

/// One overhang for all edges, or one for each edge named.
fn overhangs(r: &Reader<'_>, said: &Given<'_>, base: &Shape) -> Option<Vec<f64>> {
    if !said.is_table() {
        return Some(vec![said.length()?; base.count()]);
    }
    let mut by: Vec<Option<f64>> = vec![None; base.count()];
    let mut clean = true;
    for (name, span, value) in said.entries()? {
        let overhang = value.length();
        let edge = edge_of(base, name, span, &value);
        clean &= overhang.is_some() && edge.is_some();
        match edge.and_then(|edge| by.get_mut(edge)) {
            Some(open @ None) => *open = overhang,
            Some(Some(_)) => {
                value.fault::<()>("names an edge a second time", "keep one of the two");
                clean = false;
            }
            None => {}
        }
    }
    let open: Vec<String> = (0..base.count())
        .filter(|edge| by[*edge].is_none())
        .map(|edge| base.edge_name(edge))
        .collect();
    if clean && !open.is_empty() {
        let value = format!("{}: 0", listed(&open));
        r.ledger.assume(
            &said.key,
            value,
            "flush with the base where nothing was said",
        );
    }
    clean.then(|| by.into_iter().map(|b| b.unwrap_or(0.0)).collect())
}

/// Message and hint for a base that cannot be overhung so far.
fn grow_words(ledger: &Ledger, base: &Shape, fault: GrowFault) -> (String, String) {
    match fault {
        GrowFault::EdgeVanishes { edge } => (
            format!(
                "is wider than the radius of the hollow edge {} of the base",
                base.edge_name(edge)
            ),
            "take less there".to_owned(),
        ),
        GrowFault::Apart { corner } => (
            format!(
                "gives different overhangs to the two edges that run straight on at corner {} of the base",
                base.corner_name(corner)
            ),
            "give both edges the same overhang".to_owned(),
        ),
        GrowFault::RoundVanishes { corner, least_mm } => (
            format!(
                "leaves nothing of the rounding at the inside corner {} of the base",
                base.corner_name(corner)
            ),
            format!("round it by more than {}", ledger.length(least_mm)),
        ),
        GrowFault::Shape(_) => (
            "makes a top that touches or crosses itself".to_owned(),
            "take less, or give the top's own corners".to_owned(),
        ),
    }
}

fn allowances(r: &mut Reader<'_>) -> Allowances {
    Allowances {
        polish_mm: r.length("polish"),
        ease_mm: r.length("ease"),
        saw_mm: r.length("saw"),
    }
}

fn vein(r: &mut Reader<'_>, slab: Option<&Slab>) -> VeinWish {
    let Some(given) = r.get("vein") else {
        if slab.is_some_and(|s| s.vein_deg.is_some()) {
            r.assume("vein", "any");
        }
        return VeinWish::Any;
    };
    let wish = given.word().unwrap_or(VeinWish::Any);
    if wish != VeinWish::Any && slab.is_some_and(|s| s.vein_deg.is_none()) {
        given.fault::<()>(
            "asks for a direction of the vein, but slab.vein does not say how the vein runs",
            "give slab.vein in degrees from edge AB, or leave this out",
        );
    }
    wish
}

/// The finish of every edge: as sawn unless said; one word stands for all of them.
fn finishes(r: &Reader<'_>, shape: &Shape, given: Option<Given<'_>>) -> Vec<Finish> {
    if let Some(word) = given.as_ref().filter(|g| !g.is_table()) {
        return vec![word.word().unwrap_or(Finish::Saw); shape.count()];
    }
    let mut finishes: Vec<Option<Finish>> = vec![None; shape.count()];
    let mut clean = true;
    for (name, span, value) in given.and_then(|g| g.entries()).unwrap_or_default() {
        let finish = value.word();
        let edge = edge_of(shape, name, span, &value);
        clean &= finish.is_some() && edge.is_some();
        match edge.and_then(|edge| finishes.get_mut(edge)) {
            Some(open @ None) => *open = finish,
            Some(Some(_)) => {
                value.fault::<()>(
                    "names an edge that has a finish already",
                    "keep one of the two",
                );
            }
            None => {}
        }
    }
    let open: Vec<String> = (0..shape.count())
        .filter(|edge| finishes[*edge].is_none())
        .map(|edge| shape.edge_name(edge))
        .collect();
    if clean && !open.is_empty() {
        let value = format!("{}: saw", listed(&open));
        r.assume("finish", value);
    }
    finishes
        .into_iter()
        .map(|f| f.unwrap_or(Finish::Saw))
        .collect()
}

fn edge_of(shape: &Shape, name: &str, span: TextRange, value: &Given<'_>) -> Option<usize> {
    let edge = find_edge(shape, name);
    if edge.is_none() {
        let message = format!("{}: there is no edge {name}", value.key);
        value
            .ledger
            .fault(&value.key, span, message, edge_hint(shape, name));
    }
    edge
}
