//! Cuts that share a page: arcs about one pivot are one curve, cuts of an opening are one opening,
//! holes drilled for an inner corner go with the straight cut after them, relief cuts with their curve.

use crate::cut::{Cut, CutKind, SetOut};
use crate::plan::Plan;

/// Cuts shown together.
#[derive(Clone, Debug)]
pub(super) enum Group<'a> {
    /// A straight cut, with the holes drilled before it.
    Straight(&'a Cut, Vec<&'a Cut>),
    /// Arcs about one pivot, with the relief cuts before them.
    Curve(Vec<&'a Cut>, Vec<&'a Cut>),
    /// An opening, by its number, with its holes and cuts.
    Opening(usize, Vec<&'a Cut>),
}

/// Two pivots nearer than this are one, mm: less than a tape shows (judgement).
const ONE_PIVOT_MM: f64 = 0.5;

/// Pages of cuts from which on a job is busy (judgement: with the pages of every job more than eight).
const BUSY: usize = 3;

/// Whether the cuts take so many pages that the other pages draw together.
pub(super) fn busy(plan: &Plan) -> bool {
    let groups = groups(plan);
    let straight = groups.iter().filter(|g| matches!(g, Group::Straight(..)));
    let straight = straight.count();
    let others = groups.len() - straight + usize::from(plan.repair.is_some());
    straight.div_ceil(2) + others >= BUSY
}

/// The groups in the order of the cutting.
pub(super) fn groups(plan: &Plan) -> Vec<Group<'_>> {
    let mut groups: Vec<Group<'_>> = Vec::new();
    let (mut holes, mut relief) = (Vec::new(), Vec::new());
    for cut in &plan.cuts {
        if let Some(number) = cut.cutout {
            let own = groups
                .iter_mut()
                .find(|g| matches!(g, Group::Opening(n, _) if *n == number));
            match own {
                Some(Group::Opening(_, cuts)) => cuts.push(cut),
                _ => groups.push(Group::Opening(number, vec![cut])),
            }
            continue;
        }
        match cut.kind {
            CutKind::Core => holes.push(cut),
            CutKind::Relief => relief.push(cut),
            CutKind::Straight => groups.push(Group::Straight(cut, std::mem::take(&mut holes))),
            CutKind::Curve => add_curve(&mut groups, cut, std::mem::take(&mut relief)),
        }
    }
    add_rest(&mut groups, holes, relief);
    groups
}

fn add_curve<'a>(groups: &mut Vec<Group<'a>>, cut: &'a Cut, relief: Vec<&'a Cut>) {
    let same = groups.iter_mut().find_map(|g| match g {
        Group::Curve(cuts, before) if cuts.iter().all(|c| one_pivot(c, cut)) => {
            Some((cuts, before))
        }
        _ => None,
    });
    match same {
        Some((cuts, before)) => {
            cuts.push(cut);
            before.extend(relief);
        }
        None => groups.push(Group::Curve(vec![cut], relief)),
    }
}

/// Holes and relief cuts that nothing follows go with the last group of their kind.
fn add_rest<'a>(groups: &mut Vec<Group<'a>>, holes: Vec<&'a Cut>, relief: Vec<&'a Cut>) {
    for cut in holes {
        let last = groups.iter_mut().rev().find_map(|g| match g {
            Group::Straight(_, before) => Some(before),
            _ => None,
        });
        match last {
            Some(before) => before.push(cut),
            None => groups.push(Group::Opening(0, vec![cut])),
        }
    }
    for cut in relief {
        let last = groups.iter_mut().rev().find_map(|g| match g {
            Group::Curve(_, before) => Some(before),
            _ => None,
        });
        match last {
            Some(before) => before.push(cut),
            None => groups.push(Group::Straight(cut, Vec::new())),
        }
    }
}

/// True when two curves are swung about one pivot at one radius.
fn one_pivot(a: &Cut, b: &Cut) -> bool {
    match (&a.set_out, &b.set_out) {
        (SetOut::Pivot(a), SetOut::Pivot(b)) => {
            a.pivot.distance(b.pivot) < ONE_PIVOT_MM
                && (a.sawn_radius - b.sawn_radius).abs() < ONE_PIVOT_MM
        }
        _ => false,
    }
}
