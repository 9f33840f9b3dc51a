//! Where the top lies, against brute force with rules of its own: no place of a grid of places and
//! turns is valid and takes less work; every place is inside the slab and clear of its flaws.

#![allow(
    clippy::cast_possible_truncation,
    clippy::cast_precision_loss,
    clippy::cast_sign_loss,
    reason = "counts and grid steps are small"
)]

#[path = "placement/answers.rs"]
mod answers;
#[path = "placement/any_turn.rs"]
mod any_turn;
#[path = "placement/convex.rs"]
mod convex;
#[path = "placement/grid.rs"]
mod grid;
#[path = "placement/natural.rs"]
mod natural;
#[path = "placement/polygon.rs"]
mod polygon;
#[path = "replay/mod.rs"]
mod replay;
#[path = "placement/rules.rs"]
mod rules;
#[path = "placement/told.rs"]
mod told;
#[path = "placement/wide.rs"]
mod wide;
#[path = "placement/wide_job.rs"]
mod wide_job;

use clipper2_rust::{EndType, JoinType, inflate_paths_64};
use kerfwright::job::{Job, Part};
use kerfwright::place::{self, NoFit, Objection, Placement, search};
use kerfwright::words::Writer;
use replay::plane::{CHORD_MM, Stone};
use replay::random_job::{Dice, Flaw, RandomJob};
use rules::{Judge, Pose};
use wide::Wide;
use wide_job::WideJob;

/// Work that differs by less is the same for the same place, mm²: a sixth of a millimetre of sawing.
const SAME_WORK_MM2: f64 = 5.0;

/// A place may be had for less by using up the tape's error itself: a flush edge may lie anywhere
/// within 2e, and each trim beside it is so much shorter. That is no better place.
fn within_tape(job: &RandomJob) -> f64 {
    let thickness = job.thickness.iter().copied().fold(0.0, f64::max);
    SAME_WORK_MM2 + 6.0 * job.tape * thickness
}

fn read(text: &str) -> Job {
    let (job, _) = kerfwright::job::read(text).unwrap_or_else(|f| panic!("{f:#?}\n{text}"));
    job
}

/// Random jobs whose slab has no inside corner, places searched.
fn small_case(seed: u64) -> Option<RandomJob> {
    let mut job = RandomJob::of(seed);
    job.fixed = None;
    job.vein = None;
    job.inches = false;
    let lines = convex::lines(&job.slab);
    let hollow = |p: &replay::plane::Place| lines.iter().any(|l| l.left_of(*p) < -1e-6);
    (!job.slab.iter().any(hollow)).then_some(job)
}

/// The best valid place of the grid that takes less work than `below`.
fn brute(job: &RandomJob, seed: u64, below: f64) -> Option<(f64, Pose)> {
    let judge = Judge::new(job);
    let dice = &mut Dice(seed);
    let mut best: Option<(f64, Pose)> = None;
    for turn in grid::turns(&judge) {
        for shift in grid::places(&judge, turn, dice) {
            let pose = Pose { turn, shift };
            let limit = best.map_or(below, |b| b.0);
            if let Some(work) = judge.work(&pose, limit, 1e-6)
                && work < limit
            {
                best = Some((work, pose));
            }
        }
    }
    best
}

/// What clipper2 has against a place.
fn against(job: &RandomJob, placement: &Placement) -> Vec<String> {
    let data = |o: &kerfwright::geom::Outline| serde_json::to_value(o).expect("data");
    let slab = Stone::ring(&job.slab);
    let mut wrong = Vec::new();
    for (what, outline) in [("top", placement.top.outline()), ("sawn", &placement.sawn)] {
        let over = Stone::outline(&data(outline)).minus(&slab).area();
        if over > 0.005 * outline.perimeter() {
            wrong.push(format!("{what} sticks out by {over} mm²"));
        }
    }
    let top = Stone::outline(&data(placement.top.outline()));
    for (flaw, clear) in &job.flaws {
        // A hundredth is left to rounding.
        let hit = zone(flaw, clear - 0.01).within(&top).area();
        if hit > 1e-3 {
            wrong.push(format!(
                "{hit} mm² of {flaw:?} and its clearance are in the top"
            ));
        }
    }
    wrong
}

/// A flaw with its clearance, as clipper2 grows it.
fn zone(flaw: &Flaw, clear: f64) -> Stone {
    const GRID: f64 = 1e5;
    let path = |points: &[replay::plane::Place]| {
        points
            .iter()
            .map(|p| {
                let on = |v: f64| (v * GRID).round() as i64;
                clipper2_rust::Point64::new(on(p[0]), on(p[1]))
            })
            .collect::<Vec<_>>()
    };
    let (path, by, end) = match flaw {
        Flaw::Spot(at, across) => {
            // A stretch too short to matter stands for the point.
            let beside = [at[0] + 0.001, at[1]];
            (path(&[*at, beside]), clear + across / 2.0, EndType::Round)
        }
        Flaw::Line(points) => (path(points), clear, EndType::Round),
        Flaw::Area(points) => (Stone::ring(points).0[0].clone(), clear, EndType::Polygon),
    };
    if by <= 0.0 {
        return Stone::default();
    }
    Stone(inflate_paths_64(
        &vec![path],
        by * GRID,
        JoinType::Round,
        end,
        2.0,
        CHORD_MM * GRID,
    ))
}

/// Judges the planner's places for some seeds; gives how many there were, and how many did not fit.
fn judged(seeds: std::ops::Range<u64>) -> (usize, usize) {
    let (mut placed, mut none, mut bad) = (0, 0, Vec::new());
    for seed in seeds {
        let Some(random) = small_case(seed) else {
            continue;
        };
        let found = place::place(&read(&random.text()));
        let mut below = f64::INFINITY;
        if let Ok((placement, _)) = &found {
            placed += 1;
            let wrong = against(&random, placement);
            bad.extend(wrong.into_iter().map(|w| format!("seed {seed}: {w}")));
            let pose = Pose {
                turn: placement.pose.turn,
                shift: [placement.pose.shift.x, placement.pose.shift.y],
            };
            let (ours, theirs) = (
                Judge::new(&random).work(&pose, f64::INFINITY, 0.05),
                placement.work_mm2,
            );
            if ours.is_none_or(|w| (w - theirs).abs() > SAME_WORK_MM2) {
                bad.push(format!("seed {seed}: work {theirs}, by the rules {ours:?}"));
            }
            below = theirs - within_tape(&random);
        } else {
            none += 1;
        }
        if let Some((work, pose)) = brute(&random, seed, below) {
            let theirs = found
                .map(|(p, _)| (p.work_mm2, p.pose))
                .map_err(|m| m.reasons);
            bad.push(format!(
                "seed {seed}: {work} at {pose:?}, the planner has {theirs:?}"
            ));
        }
    }
    assert!(bad.is_empty(), "{} bad:\n{}", bad.len(), bad.join("\n"));
    (placed, none)
}

#[test]
fn brute_force_finds_nothing_better() {
    let (placed, none) = judged(0..65);
    assert!(placed >= 28 && none >= 2, "{placed} placed, {none} not");
}

#[test]
fn brute_force_finds_nothing_better_again() {
    let (placed, _) = judged(65..130);
    assert!(placed >= 28, "{placed} placed");
}

/// What clipper2 has against a place of a wide job.
fn against_wide(job: &WideJob, placement: &Placement) -> Vec<String> {
    let data = |o: &kerfwright::geom::Outline| serde_json::to_value(o).expect("data");
    let slab = Stone::ring(&job.slab);
    let mut wrong = Vec::new();
    for (what, outline) in [("top", placement.top.outline()), ("sawn", &placement.sawn)] {
        let over = Stone::outline(&data(outline)).minus(&slab).area();
        if over > 0.01 * outline.perimeter() {
            wrong.push(format!("{what} sticks out by {over} mm²"));
        }
    }
    let top = Stone::outline(&data(placement.top.outline()));
    for (flaw, clear) in &job.flaws {
        let zone = zone(flaw, clear - 0.01).within(&top);
        let flaw = zone_itself(flaw);
        let taken_out = placement.cutouts.iter().any(|c| {
            let opening = Stone::outline(&data(&c.sawn));
            flaw.minus(&opening).area() < 0.01
        });
        if !taken_out && zone.area() > 1e-3 {
            wrong.push(format!("{} mm² of a clearance are in the top", zone.area()));
        }
    }
    wrong
}

/// A flaw without its clearance, a hundredth wide where it is a line.
fn zone_itself(flaw: &Flaw) -> Stone {
    match flaw {
        Flaw::Area(points) => Stone::ring(points),
        other => zone(other, 0.01),
    }
}

/// Judges the planner's places of wide jobs for some seeds; gives how many there were, how many did not
/// fit, and how many have stopped trims.
fn judged_wide(seeds: std::ops::Range<u64>) -> (usize, usize, usize) {
    let (mut placed, mut none, mut stopped, mut bad) = (0, 0, 0, Vec::new());
    for seed in seeds {
        let job = WideJob::of(seed);
        let Ok((read, _)) = kerfwright::job::read(&job.text()) else {
            continue;
        };
        let wide = Wide::new(&job);
        let found = search::best(&read);
        let mut below = f64::INFINITY;
        if let Ok(placement) = &found {
            placed += 1;
            stopped += usize::from(placement.trims.iter().any(|t| !t.runs_off()));
            let wrong = against_wide(&job, placement);
            bad.extend(wrong.into_iter().map(|w| format!("seed {seed}: {w}")));
            let pose = Pose {
                turn: placement.pose.turn,
                shift: [placement.pose.shift.x, placement.pose.shift.y],
            };
            let (ours, theirs) = (wide.work(&pose, f64::INFINITY, 0.03), placement.work_mm2);
            if ours.is_none_or(|w| (w - theirs).abs() > SAME_WORK_MM2) {
                bad.push(format!("seed {seed}: work {theirs}, by the rules {ours:?}"));
            }
            below = theirs - SAME_WORK_MM2 - 8.0 * job.tape * job.thickness;
        } else {
            none += 1;
        }
        let dice = &mut Dice(seed);
        let mut better = None;
        for turn in wide::turns(&wide) {
            for shift in wide::places(&wide, turn, dice) {
                let pose = Pose { turn, shift };
                if let Some(work) = wide.work(&pose, below, 1e-6)
                    && work < below
                {
                    below = work;
                    better = Some((work, pose));
                }
            }
        }
        if let Some(better) = better {
            let theirs = found.map(|p| (p.work_mm2, p.pose));
            bad.push(format!(
                "seed {seed}: {better:?}, the planner has {theirs:?}"
            ));
        }
    }
    assert!(bad.is_empty(), "{} bad:\n{}", bad.len(), bad.join("\n"));
    (placed, none, stopped)
}

#[test]
fn brute_force_finds_nothing_better_with_inside_corners() {
    let (placed, none, stopped) = judged_wide(0..110);
    assert!(
        placed >= 80 && none >= 2 && stopped >= 20,
        "{placed} placed, {none} not, {stopped} with stopped trims"
    );
}

#[test]
fn brute_force_finds_nothing_better_with_inside_corners_again() {
    let (placed, _, stopped) = judged_wide(110..230);
    assert!(
        placed >= 80 && stopped >= 20,
        "{placed} placed, {stopped} with stopped trims"
    );
}

fn no_fit(text: &str) -> NoFit {
    let found = place::place(&read(text));
    found.map(|(p, _)| p.pose).expect_err("it cannot fit")
}

fn slab_and_top(slab: [f64; 2], top: [f64; 2], more: &str) -> String {
    format!(
        "[stone]\nkind = \"granite\"\nthickness = 30\n[slab]\nrectangle = {slab:?}\n{more}\n\
         [top]\nrectangle = {top:?}\n"
    )
}

/// How far it sticks out, by the slab's edge.
fn sticks_out(miss: &NoFit) -> Vec<(Part, f64)> {
    let out = |o: &Objection| match o {
        Objection::Outside { slab_part, by_mm } => Some((*slab_part, *by_mm)),
        _ => None,
    };
    miss.objections.iter().filter_map(out).collect()
}

#[test]
fn a_slab_ten_too_shallow_is_told_so() {
    let miss = no_fit(&slab_and_top([1000.0, 590.0], [900.0, 600.0], ""));
    let out = sticks_out(&miss);
    assert_eq!((out.len(), miss.objections.len()), (1, 1), "{miss:?}");
    assert!((out[0].1 - 10.0).abs() < 1e-6, "{miss:?}");
    assert!(matches!(out[0].0, Part::Edge(0 | 2)), "{miss:?}");
    assert!(
        Writer::default()
            .say(&miss.reasons[0])
            .contains("10.0\u{a0}mm"),
        "{:?}",
        miss.reasons
    );
}

#[test]
fn a_slab_seven_too_short_is_told_so() {
    let miss = no_fit(&slab_and_top([893.0, 640.0], [900.0, 600.0], ""));
    let out = sticks_out(&miss);
    assert_eq!((out.len(), miss.objections.len()), (1, 1), "{miss:?}");
    assert!((out[0].1 - 7.0).abs() < 1e-6, "{miss:?}");
    assert!(matches!(out[0].0, Part::Edge(1 | 3)), "{miss:?}");
}

/// A tilt fits nothing more: along both diagonals the slab is too small by far.
#[test]
fn far_too_large_is_told_on_both_sides() {
    let miss = no_fit(&slab_and_top([800.0, 500.0], [1200.0, 700.0], ""));
    let out = sticks_out(&miss);
    let total: f64 = out.iter().map(|o| o.1).sum();
    assert!((total - 600.0).abs() < 1e-6, "{miss:?}");
}

/// Rough edges on all sides: the strips need 10 mm each and there are 15 in all.
#[test]
fn strips_too_narrow_are_told_so() {
    let rough = "rough = [\"AB\", \"BC\", \"CD\", \"DA\"]\nrough_margin = 0";
    let miss = no_fit(&slab_and_top([1000.0, 615.0], [900.0, 600.0], rough));
    let narrow: Vec<f64> = miss
        .objections
        .iter()
        .filter_map(|o| match o {
            Objection::NarrowStrip { width_mm, .. } => Some(*width_mm),
            _ => None,
        })
        .collect();
    assert_eq!(narrow.len(), miss.objections.len(), "{miss:?}");
    let lacking: f64 = narrow.iter().map(|w| 10.0 - w).sum();
    assert!((lacking - 5.0).abs() < 1e-6, "{miss:?}");
}

/// The same slab with the margin that a rough edge asks for, 25 mm on both sides of 600.
#[test]
fn rough_edges_are_kept_off() {
    let rough = "rough = [\"AB\", \"BC\", \"CD\", \"DA\"]";
    let text = |deep: f64| slab_and_top([1000.0, deep], [900.0, 600.0], rough);
    let miss = no_fit(&text(615.0));
    let near = |o: &Objection| match o {
        Objection::NearEdge { by_mm, .. } => Some(*by_mm),
        _ => None,
    };
    let lacking: f64 = miss.objections.iter().filter_map(near).sum();
    assert!((lacking - 35.0).abs() < 1e-6, "{miss:?}");
    let (place, _) = place::place(&read(&text(650.0))).expect("it just fits");
    let least = place.top.corners().iter().map(|p| p.y.min(650.0 - p.y));
    let least = least.fold(f64::INFINITY, f64::min);
    assert!((least - 25.0).abs() < 1e-6, "{least}");
}

/// A fissure right across the middle leaves two halves, neither large enough.
#[test]
fn a_flaw_in_the_way_is_told() {
    let fissure = "[[slab.flaw]]\nwhat = \"fissure\"\nline = [[500, 0], [500, 600]]\nclear = 15";
    let miss = no_fit(&slab_and_top([1000.0, 600.0], [500.0, 550.0], fissure));
    assert!(
        miss.objections
            .iter()
            .any(|o| matches!(o, Objection::OnFlaw { .. } | Objection::Outside { .. })),
        "{miss:?}"
    );
    let lacking: f64 = miss
        .objections
        .iter()
        .map(|o| match o {
            Objection::OnFlaw { by_mm, .. } | Objection::Outside { by_mm, .. } => *by_mm,
            _ => f64::INFINITY,
        })
        .sum();
    // Flush in a half of 500 less 15: 15 too long.
    assert!((lacking - 15.0).abs() < 1e-3, "{miss:?}");
}
