//! Slips of straight faces and of roundings.

use cavalier_contours::polyline::{BooleanOp, PlineSource, PlineSourceMut, PlineVertex, Polyline};
use kerfwright::geom::{Outline, Pose, Seg};
use kerfwright::job::{CornerCut, Job, Naming, PlaceHow, Shape};
use kerfwright::repair::{Outcome, ToDo};
use proptest::prelude::*;

use super::{after, counter};

/// An outline as another library's polyline: arcs stay arcs.
fn polyline(outline: &Outline) -> Polyline<f64> {
    let mut line = Polyline::new_closed();
    for seg in outline.segs() {
        // That library takes arcs up to half a circle.
        let parts = match seg {
            Seg::Arc(arc) if arc.sweep.abs() > 3.0 => vec![seg.part(0.0, 0.5), seg.part(0.5, 1.0)],
            _ => vec![*seg],
        };
        for part in parts {
            let bulge = match part {
                Seg::Line(..) => 0.0,
                Seg::Arc(arc) => (arc.sweep / 4.0).tan(),
            };
            let at = part.start();
            line.add_vertex(PlineVertex::new(at.x, at.y, bulge));
        }
    }
    line
}

/// Area of one outline outside another, mm².
fn outside(inner: &Outline, outer: &Outline) -> f64 {
    let rest = polyline(inner).boolean(&polyline(outer), BooleanOp::Not);
    let area = |lines: &[cavalier_contours::polyline::BooleanResultPline<Polyline<f64>>]| {
        lines.iter().map(|l| l.pline.area().abs()).sum::<f64>()
    };
    area(&rest.pos_plines) - area(&rest.neg_plines)
}

/// The top of a repaired job on its stone, moved out all round by so much.
fn on_stone(job: &Job, by: f64) -> Outline {
    let PlaceHow::AsCut { at, turn_deg } = job.place.how else {
        panic!("a repaired job has its place");
    };
    let pose = Pose::new(turn_deg.to_radians(), at.to_vector());
    let top = job.top.shape.posed(pose);
    let count = top.outline().segs().len();
    top.outline()
        .offset_each(&vec![by; count])
        .expect("an outline")
}

fn short(edge: &str, by: f64) -> String {
    let done = "[as_cut]\ndone = [\"1-2\", \"2-3\", \"3-4\", \"4-1\"]\n";
    counter(&format!(
        "{done}[[as_cut.edge]]\nedge = \"{edge}\"\nshort = {by}\n"
    ))
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]

    /// Below the allowance of 1 mm nothing changes but what is left to grind.
    #[test]
    fn below_the_allowance_nothing_is_lost(by in 0.01..0.99_f64, edge in 0..4_usize) {
        let names = ["1-2", "2-3", "3-4", "4-1"];
        let repaired = after(&short(names[edge], by)).expect("it can be saved");
        let note = &repaired.note;
        prop_assert_eq!(note.outcome, Outcome::WithinAllowance);
        prop_assert!((note.now.area_mm2 - note.wanted.area_mm2).abs() < 1e-9);
        for (i, e) in note.edges.iter().enumerate() {
            prop_assert!(e.moved_in == 0.0, "{} moved", e.name);
            let want = if i == edge { 1.0 - by } else { 1.0 };
            match e.to_do {
                ToDo::Finish(mm) => prop_assert!((mm - want).abs() < 1e-9, "{mm} on {}", e.name),
                other => prop_assert!(false, "{} is {other:?}", e.name),
            }
        }
    }

    /// Beyond it the edge moves in by the slip and no more; the new top with its allowance lies inside
    /// the stone, and one a hair larger does not.
    #[test]
    fn beyond_the_allowance_the_top_is_the_largest(by in 1.02..40.0_f64, edge in 0..4_usize) {
        let names = ["1-2", "2-3", "3-4", "4-1"];
        let repaired = after(&short(names[edge], by)).expect("it can be saved");
        let (job, note) = (&repaired.job, &repaired.note);
        prop_assert_eq!(note.outcome, Outcome::Smaller);
        for (i, e) in note.edges.iter().enumerate() {
            let want = if i == edge { by } else { 0.0 };
            prop_assert!((e.moved_in - want).abs() < 1e-9, "{} moved {}", e.name, e.moved_in);
        }
        let stone = job.slab.shape.outline();
        let held = outside(&on_stone(job, 1.0 - 1e-4), stone);
        prop_assert!(held < 1e-3, "{held} mm² of the top lie outside the stone");
        let more = outside(&on_stone(job, 1.0 + 0.01), stone);
        prop_assert!(more > 1.0, "only {more} mm² of a larger top lie outside");
        // How far it stands over its base is less by as much.
        for (o, e) in note.overhangs.iter().zip(&note.edges) {
            prop_assert!((o.wanted - o.now - e.moved_in).abs() < 1e-9);
        }
    }

    /// A rounding plunged too deep: whichever way is taken, the top lies on unhurt stone, and neither a
    /// smaller radius with the edges kept nor edges a hair farther out would.
    #[test]
    fn a_slipped_rounding(by in 1.05..12.0_f64) {
        let radius = 151.0 - by;
        let repaired = after(&counter(&format!(
            "[as_cut]\ndone = [\"1-2\", \"2-3\", \"3-4\", \"4-1\"]\n[[as_cut.arc]]\ncorner = 2\nradius = {radius}\n"
        ))).expect("it can be saved");
        let (job, note) = (&repaired.job, &repaired.note);
        prop_assert_eq!(note.outcome, Outcome::Smaller);
        let stone = job.slab.shape.outline();
        let held = outside(&on_stone(job, 1.0 - 2e-3), stone);
        prop_assert!(held < 1e-2, "{held} mm² of the top lie outside the stone");
        let moved: f64 = note.edges.iter().map(|e| e.moved_in).sum();
        let corner = note.corners.iter().find(|c| c.name == "2").expect("corner 2");
        let widened = corner.now > corner.wanted + 1e-6;
        prop_assert!(widened != (moved > 0.0), "radius {} and edges {moved}", corner.now);
        if widened {
            // With a slightly smaller radius the same edges would run into the slots' bites: the arc
            // must have left the edge before the bite is as deep as the slip.
            let slot = 55.1; // half the cut of a 125 disc 33 mm down, √(62.5² − 29.5²)
            let run = corner.now - corner.wanted - slot;
            let sawn = corner.now + 1.0;
            let deep = sawn - (sawn * sawn - run * run).sqrt();
            prop_assert!((deep - by).abs() < 0.05, "{deep} mm deep where {by} are gone");
        } else {
            let sizes = note.edges.iter().map(|e| e.moved_in);
            let moved: Vec<f64> = sizes.filter(|m| *m > 0.0).collect();
            prop_assert!(moved.len() == 2 && moved.iter().all(|m| *m >= by - 1e-9), "{moved:?}");
        }
    }
}

/// A bowed edge that came out short keeps its centre: the new radius is less by the slip.
#[test]
fn a_bow_that_came_out_short() {
    let text = counter("").replace("round = { 2 = 150, 3 = 100 }", "bow = { \"1-2\" = 60 }");
    let text = format!(
        "{text}[as_cut]\ndone = [\"2-3\", \"3-4\", \"4-1\"]\n[[as_cut.edge]]\nedge = \"1-2\"\nshort = 2.5\n"
    );
    let repaired = after(&text).expect("it can be saved");
    let (job, note) = (&repaired.job, &repaired.note);
    assert_eq!(note.edges[0].moved_in, 2.5);
    let stone = job.slab.shape.outline();
    assert!(outside(&on_stone(job, 1.0 - 1e-3), stone) < 1e-2);
    assert!(outside(&on_stone(job, 1.0 + 0.01), stone) > 1.0);
    let radius = |s: &Shape| match s.edge_seg(0) {
        Some(Seg::Arc(arc)) => arc.radius,
        other => panic!("{other:?}"),
    };
    // r = c²/8s + s/2 of the bow as wanted.
    let wanted = 1400.0 * 1400.0 / 480.0 + 30.0;
    assert!((radius(&job.top.shape) - (wanted - 2.5)).abs() < 1e-6);
}

/// The lines it gives for a job file describe the top it planned.
#[test]
fn job_lines_say_what_was_planned() {
    let repaired = after(&short("2-3", 4.25)).expect("it can be saved");
    let lines = repaired.note.job_lines.join("\n");
    let text = format!(
        "[stone]\nkind = \"granite\"\nthickness = 30\n[slab]\nrectangle = [1800, 900]\n{lines}\n"
    );
    let again = super::read(&text).top.shape;
    let planned = &repaired.job.top.shape;
    assert_eq!(again.corner_cuts(), planned.corner_cuts());
    assert_eq!(again.naming(), Naming::Numbers);
    assert!(again.corner_cuts().contains(&CornerCut::Round(150.0)));
    for (a, b) in again.corners().iter().zip(planned.corners()) {
        assert!(a.distance(*b) < 2e-3, "{a:?} and {b:?}");
    }
}
