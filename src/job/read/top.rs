//! `[top]`: the finished worktop.

use super::figure::{self, edge_hint, find_edge};
use crate::job::given::Given;
use crate::job::ledger::Span;
use crate::job::quantity::{Limits, from_to};
use crate::job::reader::Reader;
use crate::job::shape::turn_at;
use crate::job::words::listed;
use crate::job::{Allowances, Finish, Naming, Shape, Slab, Top, VeinWish};

const FINISHES: [(&str, Finish); 4] = [
    ("factory", Finish::Factory),
    ("polish", Finish::Polish),
    ("ease", Finish::Ease),
    ("saw", Finish::Saw),
];
const VEINS: [(&str, VeinWish); 3] = [
    ("along", VeinWish::Along),
    ("across", VeinWish::Across),
    ("any", VeinWish::Any),
];
/// Stone left by the saw, mm (judgement).
const ALLOWANCE: Limits = from_to(0.0, 20.0);

/// Reads the top.
pub(super) fn read(r: &mut Reader<'_>, wanted: bool, slab: Option<&Slab>) -> Option<Top> {
    let otherwise = not_planned(r);
    let said = r.get("corners").or_else(|| r.get("rectangle"));
    let shape = figure::read(r, Naming::Numbers, wanted && !otherwise);
    let finish = r.get("finish");
    let allowances = r.section("allowance", allowances);
    let vein = vein(r, slab);
    let shape = shape?;
    let finishes = finishes(r, &shape, finish);
    if let Some(said) = said {
        refuse_inside_corners(&shape, &said);
    }
    Some(Top {
        shape,
        finishes,
        allowances,
        vein,
    })
}

/// What the format knows and this version does not plan. True when it stands for the outline.
fn not_planned(r: &mut Reader<'_>) -> bool {
    r.not_planned(
        "cutout",
        "a cutout",
        "take it out to plan the outline, and have the opening cut by a stone shop; \
         or use a bowl that stands on the top and needs only a drilled hole",
    );
    r.not_planned("scoop", "scooped corners", "round the corner or clip it");
    r.not_planned(
        "bow",
        "bowed edges",
        "keep the edge straight; a round corner can soften its ends",
    );
    let circle = r.not_planned(
        "circle",
        "a whole circle",
        "a square with all four corners rounded by half its side is the same circle",
    );
    let base = r.not_planned(
        "over_base",
        "a top from its base",
        "add the overhang yourself and give the finished size as `rectangle` or `corners`",
    );
    circle || base
}

fn allowances(r: &mut Reader<'_>) -> Allowances {
    Allowances {
        polish_mm: r.length_or(
            "polish",
            ALLOWANCE,
            1.0,
            "judgement: saw marks ground away, then polished",
        ),
        ease_mm: r.length_or(
            "ease",
            ALLOWANCE,
            0.5,
            "judgement: only the arris is taken off",
        ),
        saw_mm: r.length_or(
            "saw",
            ALLOWANCE,
            0.0,
            "judgement: nothing is taken off a sawn edge",
        ),
    }
}

fn vein(r: &mut Reader<'_>, slab: Option<&Slab>) -> VeinWish {
    let Some(given) = r.get("vein") else {
        if slab.is_some_and(|s| s.vein_deg.is_some()) {
            r.ledger.assume(r.key("vein"), "any", "no wish was given");
        }
        return VeinWish::Any;
    };
    let wish = given.choice(&VEINS).unwrap_or(VeinWish::Any);
    if wish != VeinWish::Any && slab.is_some_and(|s| s.vein_deg.is_none()) {
        given.fault::<()>(
            "asks for a direction of the vein, but slab.vein does not say how the vein runs",
            "give slab.vein in degrees from edge AB, or leave this out",
        );
    }
    wish
}

/// The finish of every edge: as sawn unless said.
fn finishes(r: &Reader<'_>, shape: &Shape, given: Option<Given<'_>>) -> Vec<Finish> {
    let mut finishes: Vec<Option<Finish>> = vec![None; shape.count()];
    let mut clean = true;
    for (name, span, value) in given.and_then(|g| g.entries()).unwrap_or_default() {
        let finish = value.choice(&FINISHES);
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
        let why = "judgement: left as sawn where nothing else was asked for";
        r.ledger.assume(r.key("finish"), value, why);
    }
    finishes
        .into_iter()
        .map(|f| f.unwrap_or(Finish::Saw))
        .collect()
}

fn edge_of(shape: &Shape, name: &str, span: Span, value: &Given<'_>) -> Option<usize> {
    let edge = find_edge(shape, name);
    if edge.is_none() {
        let message = format!("{}: there is no edge {name}", value.key);
        value
            .ledger
            .fault(&value.key, span, message, edge_hint(shape, name));
    }
    edge
}

/// An inside corner can only be reached by cuts that stop inside the stone.
fn refuse_inside_corners(shape: &Shape, said: &Given<'_>) {
    for corner in 0..shape.count() {
        if turn_at(shape.corners(), corner) < -1e-6 {
            let name = shape.corner_name(corner);
            let message = format!(
                "has an inside corner at {name}: an inside corner needs stopped cuts, which this version does not plan"
            );
            let hint = "make the top of two pieces with a seam at that corner, each with a job file of its own";
            said.fault::<()>(&message, hint);
        }
    }
}
