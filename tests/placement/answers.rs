//! Answers that can be said beforehand, and the same job told another way.

use std::fmt::Write as _;
use std::process::Command;

use kerfwright::geom::Pose;
use kerfwright::job::{Job, Part};
use kerfwright::place::{
    self, EdgeUse, Less, Objection, Placement, Trim, TrimEnd, candidate, search, several,
};

use crate::replay::plane::Place;
use crate::wide_job::WideJob;

fn read(text: &str) -> Job {
    let (job, _) = kerfwright::job::read(text).unwrap_or_else(|f| panic!("{f:#?}\n{text}"));
    job
}

fn stone(slab: &str, top: &str) -> String {
    format!("[stone]\nkind = \"granite\"\nthickness = 30\n[slab]\n{slab}\n[top]\n{top}\n")
}

fn placed(text: &str) -> Placement {
    place::place(&read(text)).map_or_else(|m| panic!("{:?}", m.reasons), |p| p.0)
}

/// An L with no allowance flush in the slab's corner: two run-off trims, two that stop in the inside
/// corner and free the waste together.
#[test]
fn an_l_shaped_top_has_two_stopped_trims() {
    let top = "corners = [[0, 0], [900, 0], [900, 300], [350, 300], [350, 500], [0, 500]]\n\
               allowance = { polish = 0, ease = 0, saw = 0 }";
    let place = placed(&stone("rectangle = [1500, 800]", top));
    let (off, stopped): (Vec<_>, Vec<_>) = place.trims.iter().partition(|t| t.runs_off());
    assert_eq!((off.len(), stopped.len()), (2, 2), "{:#?}", place.trims);
    let inside = place.top.corners()[3];
    for trim in &stopped {
        let ends = trim.ends.iter().filter_map(|e| match e {
            TrimEnd::Stops(at) => Some(*at),
            TrimEnd::RunOff => None,
        });
        let ends: Vec<_> = ends.collect();
        assert_eq!(ends.len(), 1, "{trim:?}");
        assert!(ends[0].distance(inside) < 1e-6, "{trim:?}");
    }
    // The stopped ones come last.
    assert!(place.trims[..2].iter().all(Trim::runs_off));
    // Two edges flush: one trim across the slab, one along the top; then 550 and 200 into the corner.
    let straight: f64 = off.iter().map(|t| t.length_mm).sum();
    assert!(
        (straight - (800.0 + 900.0)).abs() < 1e-6 || (straight - (1500.0 + 500.0)).abs() < 1e-6
    );
    assert!((place.work_mm2 - (straight + 2.0 * 750.0) * 30.0).abs() < 1e-3);
}

/// A notch is three trims, the middle one stopped at both ends.
#[test]
fn a_notch_is_sawn_from_both_sides_and_across() {
    let top = "corners = [[0, 0], [900, 0], [900, 500], [600, 500], [600, 300], [350, 300], [350, 500], [0, 500]]\n\
               allowance = { polish = 1, ease = 1, saw = 1 }";
    let place = placed(&stone("rectangle = [1500, 800]", top));
    let both = place
        .trims
        .iter()
        .filter(|t| t.ends.iter().all(|e| *e != TrimEnd::RunOff));
    let across: Vec<_> = both.collect();
    assert_eq!(across.len(), 1, "{:#?}", place.trims);
    assert_eq!(across[0].part, Part::Edge(4));
    // The pocket is smaller by the allowance on both sides.
    assert!(
        (across[0].length_mm - 248.0).abs() < 1e-6,
        "{:?}",
        across[0]
    );
    // One run makes both ends of the prongs.
    assert_eq!(
        place
            .trims
            .iter()
            .filter(|t| matches!(t.part, Part::Edge(2 | 6)))
            .count(),
        1
    );
}

/// A run that would meet kept stone farther on stops before it.
#[test]
fn a_run_stops_before_kept_stone() {
    // A hook: the underside of its tip, carried on, meets the shank.
    let top = "corners = [[0, 0], [800, 0], [800, 600], [500, 600], [500, 400], [600, 400], [600, 200], [0, 200]]\n\
               allowance = { polish = 0, ease = 0, saw = 0 }\nfinish = { \"1-2\" = \"saw\" }";
    let place = placed(&stone(
        "rectangle = [1600, 1000]\nrough = [\"AB\", \"BC\", \"CD\", \"DA\"]",
        top,
    ));
    let tip = place
        .trims
        .iter()
        .find(|t| t.part == Part::Edge(3))
        .expect("sawn");
    // From corner 5 on, edge 4-5 runs on to the arm that lies across it.
    let stop = tip.ends.iter().find_map(|e| match e {
        TrimEnd::Stops(at) => Some(*at),
        TrimEnd::RunOff => None,
    });
    let stop = stop.unwrap_or_else(|| panic!("{tip:?}"));
    let corner = place.top.corners()[4];
    assert!(
        (stop.distance(corner) - 200.0).abs() < 1e-6,
        "{stop:?} from {corner:?}"
    );
}

/// A circle has no edge of its own to lay along the slab.
#[test]
fn a_round_top_is_placed() {
    let place = placed(&stone("rectangle = [900, 700]", "circle = 600"));
    assert!(place.top.as_circle().is_some());
    let place = placed(&stone(
        "rectangle = [900, 900]\nround = { A = 450, B = 450, C = 450, D = 450 }",
        "rectangle = [600, 500]",
    ));
    assert_eq!(
        place
            .uses
            .iter()
            .filter(|u| matches!(u, EdgeUse::Flush { .. }))
            .count(),
        0
    );
}

/// A flaw that an opening takes out is no obstacle.
#[test]
fn an_opening_takes_a_flaw_out() {
    let slab = "rectangle = [1000, 600]\n[[slab.flaw]]\nwhat = \"hole\"\nspot = { at = [500, 300], across = 60 }\nclear = 30";
    let top = "rectangle = [900, 560]";
    let whole = search::best(&read(&stone(slab, top)));
    assert!(whole.is_err(), "the hole lies in the top");
    let bowl = format!("{top}\n[[top.cutout]]\nwhat = \"bowl\"\ncircle = 300\nat = [450, 280]");
    let place = placed(&stone(slab, &bowl));
    let opening = place.cutouts[0].sawn.centroid();
    assert!(opening.distance(kerfwright::geom::Point::new(500.0, 300.0)) < 150.0 - 30.0);
}

/// A cut crosses a fissure in the waste; along it no cut runs.
#[test]
fn no_trim_runs_along_a_fissure() {
    let fissure = |y: f64| {
        let slab = format!(
            "rectangle = [1200, 700]\nfactory = [\"AB\", \"DA\"]\n[[slab.flaw]]\nwhat = \"fissure\"\nline = [[0, {y}], [1200, {y}]]\nclear = 5"
        );
        let top = "rectangle = [1000, 500]\nfinish = { \"1-2\" = \"factory\", \"4-1\" = \"factory\", \"2-3\" = \"saw\", \"3-4\" = \"saw\" }";
        stone(&slab, top)
    };
    // The kerf on the back edge would lie within the clearance all along.
    let at_origin = candidate::judge(&read(&fissure(506.0)), Pose::default());
    let refused = at_origin
        .expect_err("along the fissure")
        .in_words(&read(&fissure(506.0)));
    assert!(
        matches!(
            refused.objections[..],
            [Objection::AlongFlaw {
                part: Part::Edge(2),
                ..
            }]
        ),
        "{refused:?}"
    );
    assert!(place::place(&read(&fissure(506.0))).is_err());
    let place = placed(&fissure(520.0));
    assert!(place.work_mm2 > 0.0);
}

/// The sizes told fit, and one mm more does not.
#[test]
fn the_sizes_that_fit_are_told() {
    let job = read(&stone(
        "rectangle = [1000, 590]",
        "rectangle = [900, 600]\nallowance = { polish = 0, ease = 0, saw = 0 }",
    ));
    let miss = place::place(&job).expect_err("ten too deep");
    let of = |less: Less| {
        miss.fitting
            .iter()
            .find(|f| f.less == less)
            .copied()
            .expect("a size")
    };
    let (scale, depth) = (of(Less::Scale), of(Less::Depth));
    assert_eq!((scale.length_mm, scale.depth_mm), (885.0, 590.0));
    assert_eq!((depth.length_mm, depth.depth_mm), (900.0, 590.0));
    assert_eq!(miss.advice().len(), miss.fitting.len());
    let told = format!(
        "rectangle = [{}, {}]\nallowance = {{ polish = 0, ease = 0, saw = 0 }}",
        depth.length_mm, depth.depth_mm
    );
    assert!(search::best(&read(&stone("rectangle = [1000, 590]", &told))).is_ok());
}

/// Fixing one of the places that are listed gives it back.
#[test]
fn a_fixed_place_is_the_one_that_was_listed() {
    for seed in [1, 4, 9, 16, 25, 36] {
        let text = WideJob::of(seed).text();
        let Ok((job, _)) = kerfwright::job::read(&text) else {
            continue;
        };
        let Ok(places) = several::several(&job, 4) else {
            continue;
        };
        let best = search::best(&job).expect("there are places").work_mm2;
        assert!((places[0].work_mm2 - best).abs() < 1e-6);
        assert!(
            places
                .windows(2)
                .skip(1)
                .all(|w| w[0].work_mm2 <= w[1].work_mm2 + 1.0)
        );
        for place in places {
            let lines = place::fixing_lines(&place).join("\n");
            let again = placed(&text.replace("[place]\n", &format!("[place]\n{lines}\n")));
            assert!(
                (again.work_mm2 - place.work_mm2).abs() < 1e-3,
                "seed {seed}: {lines}"
            );
            let moved = again.pose.shift - place.pose.shift;
            assert!(moved.length() < 1e-6, "seed {seed}: {lines}");
        }
    }
}

/// The same slab and top with corners named from another one on, or turned about, cost the same.
#[test]
fn the_same_job_told_another_way() {
    let turned = |ring: &[Place], angle: f64| -> Vec<Place> {
        let (sin, cos) = f64::sin_cos(angle);
        ring.iter()
            .map(|p| [p[0] * cos - p[1] * sin, p[0] * sin + p[1] * cos])
            .collect()
    };
    let mut told = 0;
    for seed in 0..60 {
        let mut job = WideJob::of(seed);
        job.flaws.clear();
        let Ok((first, _)) = kerfwright::job::read(&job.text()) else {
            continue;
        };
        let work = |job: &Job| search::best(job).map(|p| p.work_mm2).ok();
        let expected = work(&first);
        // Corner B first: the frame's base line is another edge.
        let by = job.slab[1];
        let angle = -(job.slab[2][1] - by[1]).atan2(job.slab[2][0] - by[0]);
        let mut again = job.clone();
        again.slab = turned(
            &job.slab
                .iter()
                .map(|p| [p[0] - by[0], p[1] - by[1]])
                .collect::<Vec<_>>(),
            angle,
        );
        again.slab.rotate_left(1);
        again.states.rotate_left(1);
        let Ok((second, _)) = kerfwright::job::read(&again.text()) else {
            continue;
        };
        told += 1;
        let found = work(&second);
        let same = match (expected, found) {
            (Some(a), Some(b)) => (a - b).abs() < 5.0,
            (a, b) => a.is_none() == b.is_none(),
        };
        assert!(same, "seed {seed}: {expected:?} and {found:?}");
    }
    assert!(told >= 40, "{told} told");
}

/// Mirrored twice it is the same: mirrored once, with the top mirrored too, it costs the same.
#[test]
fn a_mirrored_job_costs_the_same() {
    for seed in [2, 3, 5, 8, 13, 21, 34, 55] {
        let mut job = WideJob::of(seed);
        job.flaws.clear();
        job.opening = None;
        let mut mirrored = job.clone();
        let flip = |ring: &mut Vec<Place>| {
            let far = ring.iter().map(|p| p[0]).fold(f64::NEG_INFINITY, f64::max);
            for p in ring.iter_mut() {
                p[0] = far - p[0];
            }
            ring.reverse();
        };
        flip(&mut mirrored.slab);
        flip(&mut mirrored.top);
        mirrored.corners.reverse();
        // Edge i of the mirrored ring is what was edge n − 2 − i.
        mirrored.states.reverse();
        mirrored.states.rotate_left(1);
        mirrored.bows = vec![0.0; job.bows.len()];
        job.bows = vec![0.0; job.bows.len()];
        let work = |job: &WideJob| {
            let (read, _) = kerfwright::job::read(&job.text()).ok()?;
            search::best(&read).map(|p| p.work_mm2).ok()
        };
        let (a, b) = (work(&job), work(&mirrored));
        let both = a.zip(b).is_some_and(|(a, b)| (a - b).abs() < 5.0);
        assert!(
            both || a.is_none() || b.is_none(),
            "seed {seed}: {a:?} and {b:?}"
        );
    }
}

/// Nothing that can be read makes the search fail in any other way than by saying so.
#[test]
fn absurd_jobs_are_answered() {
    let mut flaws = String::from("rectangle = [3000, 1500]\n");
    for i in 0..200 {
        let (x, y) = (15 * i, (i * 37) % 1500);
        let _ = writeln!(
            flaws,
            "[[slab.flaw]]\nwhat = \"{i}\"\nspot = {{ at = [{x}, {y}], across = 5 }}\nclear = 3"
        );
    }
    let jobs = [
        stone("rectangle = [1, 1]", "rectangle = [20000, 20000]"),
        stone("rectangle = [20000, 20000]", "rectangle = [1, 1]"),
        stone(
            "corners = [[0, 0], [20000, 0], [20000, 1]]",
            "rectangle = [100, 100]",
        ),
        stone(
            "rectangle = [2000, 2]",
            "rectangle = [2000, 1]\nround = { 1 = 0.5, 2 = 0.5 }",
        ),
        stone("rectangle = [20000, 20000]", "circle = 19999"),
        stone(&flaws, "rectangle = [400, 300]\nround = { 1 = 100 }"),
        stone("rectangle = [500, 500]", "rectangle = [500, 500]"),
    ];
    for text in &jobs {
        if let Ok((job, _)) = kerfwright::job::read(text) {
            match place::place(&job) {
                Ok((place, _)) => assert!(place.work_mm2.is_finite() && place.work_mm2 >= 0.0),
                Err(miss) => assert!(miss.turn_deg.is_finite(), "{miss:?}"),
            }
        }
    }
}

/// No more than this is read before buying.
const MOST_LINES: usize = 13;

/// `fit` answers in a few lines, with what stops the job, and ends by the answer; `places` writes its
/// drawings whole.
#[test]
fn the_commands_answer() {
    let folder = tempfile::tempdir().expect("a folder");
    let run = |name: &str, text: &str, more: &[&str]| {
        let job = folder.path().join("job.toml");
        std::fs::write(&job, text).expect("written");
        let mut command = Command::new(env!("CARGO_BIN_EXE_kerfwright"));
        let out = command
            .arg(name)
            .arg(&job)
            .args(more)
            .output()
            .expect("run");
        (
            out.status.code(),
            String::from_utf8_lossy(&out.stdout).into_owned(),
        )
    };
    let sound = include_str!("../../examples/upstairs-vanity.toml");
    let (code, words) = run("fit", sound, &[]);
    assert_eq!(code, Some(0), "{words}");
    assert!(
        words.starts_with("Fits") && words.lines().count() <= MOST_LINES,
        "{words}"
    );
    // Nothing is said of the dust: it fits, and must not be started.
    let fits = stone("rectangle = [1000, 650]", "rectangle = [900, 600]");
    let (code, words) = run("fit", &fits, &[]);
    assert_eq!(code, Some(1), "{words}");
    assert!(
        words.starts_with("It fits, but") && words.contains("respirator"),
        "{words}"
    );
    let light = stone("rectangle = [700, 400]", "rectangle = [600, 300]");
    let (_, words) = run("fit", &light, &[]);
    assert!(
        words.contains("people or more; top: ") && !words.contains("gantry"),
        "{words}"
    );
    let heavy = stone("rectangle = [3000, 1400]", "rectangle = [900, 600]");
    let (_, words) = run("fit", &heavy, &[]);
    // More than four do not lift as a team: no count of people, but what to use.
    assert!(
        words.contains("slab: no hand lift; top: ")
            && words.contains("a vacuum lifter or a gantry")
            && words.lines().count() <= MOST_LINES,
        "{words}"
    );
    let (code, words) = run(
        "fit",
        &stone(
            "rectangle = [900, 600.5]",
            "rectangle = [900, 600]\nallowance = { polish = 0, ease = 0, saw = 0 }",
        ),
        &[],
    );
    assert_eq!(code, Some(1), "{words}");
    assert!(words.starts_with("Measure again"), "{words}");
    let (code, words) = run(
        "fit",
        &stone("rectangle = [800, 590]", "rectangle = [900, 600]"),
        &[],
    );
    assert_eq!(code, Some(1), "{words}");
    assert!(
        words.contains("would fit") && words.lines().count() <= MOST_LINES,
        "{words}"
    );
    let drawings = folder.path().join("place-#.svg");
    let (code, words) = run(
        "places",
        &fits,
        &["--most", "3", "--svg", &drawings.to_string_lossy()],
    );
    assert_eq!(code, Some(1), "{words}");
    assert!(
        words.contains("Place 3") && words.contains("turn = ") && words.contains("respirator"),
        "{words}"
    );
    let third = std::fs::read_to_string(folder.path().join("place-3.svg")).expect("drawn");
    assert!(third.trim_end().ends_with("</svg>"));
}
