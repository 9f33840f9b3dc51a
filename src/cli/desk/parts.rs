//! The edges and corners of the drawing that can be pointed at, under the names that the form has for
//! them: `top.1-2`, `top.2`, `slab.AB`, `slab.A`, `top.cutout.0`.

use crate::document::figure::Thing;
use crate::geom::{Point, Seg};
use crate::job::{CornerCut, Job, Shape};
use crate::plan::Plan;

/// The parts of the slab as bought, of the top and its openings; the top's lie over the slab's.
pub(super) fn parts(job: &Job, plan: &Plan) -> Vec<Thing> {
    let mut parts = Vec::new();
    // The stone that is left after a begun cutting is no longer the slab of the job file.
    if plan.repair.is_none() {
        parts.extend(of_shape("slab", &job.slab.shape));
    }
    for (i, opening) in plan.top.openings.iter().enumerate() {
        parts.push(Thing::Part(
            format!("top.cutout.{i}"),
            opening.outline.segs().to_vec(),
        ));
    }
    parts.extend(of_top(plan));
    parts
}

fn of_shape(whole: &str, shape: &Shape) -> Vec<Thing> {
    let edges = (0..shape.count()).filter_map(|i| {
        let seg = shape.edge_seg(i)?;
        Some(Thing::Part(
            format!("{whole}.{}", shape.edge_name(i)),
            vec![seg],
        ))
    });
    let corners = (0..shape.count()).map(|i| {
        let sharp = shape.corner_cuts()[i] == CornerCut::Sharp;
        let seg = shape.corner_seg(i).filter(|_| !sharp);
        corner(whole, &shape.corner_name(i), shape.corners()[i], seg)
    });
    edges.chain(corners).collect()
}

fn of_top(plan: &Plan) -> Vec<Thing> {
    let segs = plan.top.outline.segs().iter().zip(&plan.top.parts);
    let mut parts: Vec<Thing> = segs
        .map(|(seg, part)| Thing::Part(format!("top.{}", part.name), vec![*seg]))
        .collect();
    for named in &plan.top.corners {
        if !plan.top.parts.iter().any(|part| part.name == named.name) {
            parts.push(corner("top", &named.name, named.at, None));
        }
    }
    parts
}

/// A corner: its arc or flat, or the place where two edges meet.
fn corner(whole: &str, name: &str, at: Point, seg: Option<Seg>) -> Thing {
    let seg = seg.unwrap_or(Seg::Line(at, at));
    Thing::Part(format!("{whole}.{name}"), vec![seg])
}
