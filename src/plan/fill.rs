//! The plan's notes filled from the stages.

use super::note::{
    FlawNote, JobNote, Kit, NamedPoint, OpeningNote, PlacementNote, SlabEdge, SlabNote, StoneNote,
    SupportNote, TopEdge, TopNote, TopPart,
};
use crate::geom::{Point, Seg};
use crate::job::{Flaw, FlawPlace, Job, Part, Shape, SupportPlace};
use crate::place::{EdgeUse, Placement};
use crate::units::MassRange;

pub(super) fn job_note(job: &Job) -> JobNote {
    let heading = job.heading.clone();
    JobNote {
        title: if heading.title.is_empty() {
            "Untitled job".into()
        } else {
            heading.title
        },
        region: job.region.code().into(),
        region_name: job.region.name().into(),
        language: heading.language,
        date: heading.date,
        made_for: heading.made_for,
        made_by: heading.made_by,
        note: heading.note,
        units: job.units,
    }
}

pub(super) fn stone_note(job: &Job) -> StoneNote {
    let stone = job.stone.clone();
    StoneNote {
        name: stone.name,
        density: stone.density,
        strength_mpa: stone.strength_mpa,
        strength_source: stone.strength_source,
        safety_factor: stone.safety_factor,
        silica: stone.silica,
        weighed: stone.weighed,
        said: stone.said,
    }
}

pub(super) fn named_corners(shape: &Shape) -> Vec<NamedPoint> {
    let corners = shape.corners().iter().enumerate();
    corners
        .map(|(i, at)| NamedPoint {
            name: shape.corner_name(i),
            at: *at,
            edge: shape.corner_seg(i).map_or(*at, |piece| piece.at(0.5)),
        })
        .collect()
}

pub(super) fn slab_note(job: &Job, mass: MassRange) -> SlabNote {
    let shape = &job.slab.shape;
    let edges = job.slab.edges.iter().enumerate();
    let (stone, begun) = (job.slab.region(), &job.slab.begun);
    SlabNote {
        outline: shape.outline().clone(),
        corners: named_corners(shape),
        edges: edges
            .map(|(i, state)| SlabEdge {
                name: shape.edge_name(i),
                state: *state,
                length: shape.edge_length(i),
            })
            .collect(),
        flaws: job.slab.flaws.iter().map(flaw_note).collect(),
        taken: begun.taken.iter().map(|o| o.segs().to_vec()).collect(),
        drilled: begun.drilled.clone(),
        area_mm2: stone.area(),
        thickness: job.stone.thickness,
        mass,
        balance: stone.centroid(),
        tape: job.slab.tape_error_mm,
        vein: job.slab.vein_deg,
        survey: job.slab.survey.clone(),
    }
}

pub(super) fn flaw_note(flaw: &Flaw) -> FlawNote {
    FlawNote {
        what: flaw.what.clone(),
        path: match &flaw.place {
            FlawPlace::Spot { at, across_mm } => crate::geom::seg::circle(*at, across_mm / 2.0),
            FlawPlace::Line(points) => points.windows(2).map(|w| Seg::Line(w[0], w[1])).collect(),
            FlawPlace::Area(outline) => outline.segs().to_vec(),
        },
        clear: flaw.clear_mm,
        clearance: flaw.clearance(),
    }
}

pub(super) fn placement_note(placement: &Placement) -> PlacementNote {
    let uses = placement.uses.iter().enumerate();
    PlacementNote {
        turn: placement.pose.turn.to_degrees(),
        shift: placement.pose.shift,
        work_mm2: placement.work_mm2,
        flush: uses
            .filter(|(_, used)| matches!(used, EdgeUse::Flush { .. }))
            .map(|(i, _)| placement.top.edge_name(i))
            .collect(),
        least_spare: placement.spare_mm(),
    }
}

pub(super) fn top_note(job: &Job, placement: &Placement, mass: MassRange) -> TopNote {
    let top = &placement.top;
    let finished = placement.finished();
    let own = job.top.shape.outline().bounds();
    let edges = placement.uses.iter().enumerate();
    TopNote {
        outline: top.outline().clone(),
        cutouts: placement
            .cutouts
            .iter()
            .map(|c| c.shape.outline().clockwise())
            .collect(),
        openings: placement
            .cutouts
            .iter()
            .map(|c| OpeningNote {
                what: c.what.clone(),
                outline: c.shape.outline().clone(),
                allowance: c.allowance_mm,
                sawn: c.begun.then(|| c.sawn.clone()),
                made: c.sawn.clone(),
            })
            .collect(),
        sawn_outline: placement.sawn.clone(),
        corners: named_corners(top),
        edges: edges
            .map(|(i, used)| TopEdge {
                name: top.edge_name(i),
                finish: job.top.finishes[i],
                length: top.edge_length(i),
                flush_with: match used {
                    EdgeUse::Flush { slab_edge, .. } => Some(job.slab.shape.edge_name(*slab_edge)),
                    EdgeUse::Sawn { .. } | EdgeUse::UsedUp | EdgeUse::Bowed { .. } => None,
                },
                allowance: used.allowance_mm(),
            })
            .collect(),
        parts: top
            .parts()
            .iter()
            .map(|part| TopPart {
                name: top.part_name(*part),
                allowance: match part {
                    Part::Edge(i) => placement.uses[*i].allowance_mm(),
                    Part::Corner(i) => placement.corner_allowances[*i],
                },
            })
            .collect(),
        area_mm2: finished.area(),
        mass,
        balance: finished.centroid(),
        size: [own.width(), own.height()],
    }
}

pub(super) fn kit(job: &Job) -> Kit {
    Kit {
        rpm: job.machine.rpm,
        plate: job.machine.plate_mm,
        guide_offset: job.guide.offset_mm,
        guide_length: job.guide.length_mm,
        jig_offset: job.circle_jig.offset_mm,
        rate: job.passes.rate_cm2_per_min,
        rate_is_guess: job.passes.rate_is_guess,
        through: job.passes.through_mm,
        curve_factor: job.passes.curve_factor,
        waste_piece: job.passes.waste_piece,
        dust_method: job.dust.method,
        power: job.machine.power,
    }
}

pub(super) fn supports(job: &Job, placement: &Placement) -> Vec<SupportNote> {
    let posed = |p: Point| placement.pose.apply(p);
    job.supports
        .iter()
        .map(|support| SupportNote {
            what: support.what.clone(),
            ends: match support.place {
                SupportPlace::Line(a, b) => [posed(a), posed(b)],
                SupportPlace::Pad(at, _) => [posed(at), posed(at)],
            },
            limit: support.limit,
        })
        .collect()
}
