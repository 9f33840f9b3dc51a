//! Slabs with a natural back edge: what the trims leave is the sawn top and nothing else, and no place
//! lives on a tolerance.

use kerfwright::place::{self, EdgeUse, Placement};

use crate::convex::{Line, clipped};
use crate::polygon::{cut, edges, inside, strip, to_ring};
use crate::read;
use crate::replay::plane::Place;
use crate::replay::random_job::Dice;

/// How far a corner of one may lie in the other, mm: rounding.
const ROUNDING: f64 = 2e-6;
/// Narrower than this nothing is sawn off, mm: the default of `place.least_strip`.
const LEAST_STRIP: f64 = 10.0;

/// A slab whose back edge wanders, and a top with straight sides.
struct Case {
    slab: Vec<Place>,
    top: Vec<Place>,
}

impl Case {
    fn of(seed: u64) -> Self {
        let dice = &mut Dice(seed);
        let (long, deep) = (dice.between(1200.0, 2600.0), dice.between(600.0, 900.0));
        let back = 2 + dice.below(8);
        let mut slab = vec![[0.0, 0.0], [long, dice.between(0.0, 4.0)]];
        for i in 0..=back {
            let share = 1.0 - i as f64 / back as f64;
            slab.push([long * share, deep + dice.between(-60.0, 60.0)]);
        }
        let (a, b) = (
            dice.between(0.4, 0.9) * long,
            dice.between(0.5, 0.95) * deep,
        );
        let top = if dice.chance(0.3) {
            let (c, d) = (0.5 * a, 0.6 * b);
            vec![[0.0, 0.0], [a, 0.0], [a, d], [c, d], [c, b], [0.0, b]]
        } else {
            vec![[0.0, 0.0], [a, 0.0], [a, b], [0.0, b]]
        };
        Self { slab, top }
    }

    fn text(&self) -> String {
        format!(
            "[stone]\nkind = \"granite\"\nthickness = 30\n[slab]\ncorners = {:?}\n[top]\ncorners = {:?}\n",
            self.slab, self.top
        )
    }
}

fn places(outline: &kerfwright::geom::Outline) -> Vec<Place> {
    let corners = outline.segs().iter().map(kerfwright::geom::Seg::start);
    corners.map(|p| [p.x, p.y]).collect()
}

fn area(ring: &[Place]) -> f64 {
    let each = edges(ring).map(|(a, b)| a[0] * b[1] - b[0] * a[1]);
    each.sum::<f64>() / 2.0
}

/// What is wrong with a place, by rules of this file.
fn against(case: &Case, found: &Placement) -> Vec<String> {
    let mut wrong = Vec::new();
    let sawn = places(&found.sawn);
    for p in &case.slab {
        let deep = to_ring(&sawn, *p);
        if inside(&sawn, *p) && deep > ROUNDING {
            wrong.push(format!("slab corner {p:?} lies {deep} mm in the sawn top"));
        }
    }
    for p in &sawn {
        let off = to_ring(&case.slab, *p);
        if !inside(&case.slab, *p) && off > ROUNDING {
            wrong.push(format!("corner {p:?} lies {off} mm off the slab"));
        }
    }
    for (edge, used) in found.uses.iter().enumerate() {
        let EdgeUse::Sawn { allowance_mm } = used else {
            continue;
        };
        let seg = found.top.edge_seg(edge).expect("a sharp corner");
        let (from, to) = (seg.start(), seg.end());
        let face = Line {
            at: [from.x, from.y],
            along: line(&found.top.edge_line(edge)).along,
        }
        .moved_out(*allowance_mm);
        // A slab corner up to a millimetre inside the face leaves no strip.
        let wide = strip(&case.slab, &face, from.distance(to), 1.0);
        if wide < LEAST_STRIP - ROUNDING {
            wrong.push(format!("edge {edge} leaves a strip of {wide} mm"));
        }
    }
    wrong.extend(left_on(case, found, &sawn));
    wrong
}

/// Waste that the trims leave on the sawn top, that beside the slab's own edges aside.
fn left_on(case: &Case, found: &Placement, sawn: &[Place]) -> Option<String> {
    // Stopped trims free their waste together: only tops without inside corners are cut by lines alone.
    if found.trims.iter().any(|t| !t.runs_off()) {
        return None;
    }
    let stone = found.trims.iter().fold(case.slab.clone(), |stone, trim| {
        let line = line(&trim.face);
        let near = trim.face.foot(trim.middle);
        cut(&stone, &line, near).map_or(stone, |(_, left)| left)
    });
    let flush = found.uses.iter().enumerate();
    let flush = flush.filter(|(_, u)| matches!(u, EdgeUse::Flush { .. }));
    let stone = flush.fold(stone, |stone, (edge, used)| {
        let line = line(&found.top.edge_line(edge)).moved_out(used.allowance_mm());
        clipped(&stone, &line)
    });
    let more = area(&stone) - area(sawn);
    (more.abs() > 5.0).then(|| format!("{more} mm² of waste stay on the top"))
}

fn line(of: &kerfwright::geom::Line) -> Line {
    Line {
        at: [of.point.x, of.point.y],
        along: [of.along.x, of.along.y],
    }
}

#[test]
fn trims_leave_nothing_on_the_top() {
    let (mut placed, mut bad) = (0, Vec::new());
    for seed in 0..400 {
        let case = Case::of(seed);
        if let Ok((found, _)) = place::place(&read(&case.text())) {
            placed += 1;
            let wrong = against(&case, &found).into_iter();
            bad.extend(wrong.map(|w| format!("seed {seed}: {w}")));
        }
    }
    assert!(placed > 200, "{placed} placed");
    assert!(bad.is_empty(), "{} bad:\n{}", bad.len(), bad.join("\n"));
}

/// A corner of the slab in the middle of the top's edge, ever so little inside it: there is no strip.
#[test]
fn a_corner_inside_an_edge_leaves_no_strip() {
    for inside_by in [1e-7, 2e-6, 1e-5, 1e-4, 1e-3, 0.009, 0.02, 0.5] {
        let back = 540.0 - inside_by;
        let text = format!(
            "[stone]\nkind = \"granite\"\nthickness = 30\n[slab]\ncorners = [[0, 0], [1400, 0], [1400, 620], \
             [700, {back}], [0, 620]]\n[top]\nrectangle = [900, 500]\nallowance = {{ polish = 0, ease = 0, saw = 0 }}\n\
             [place]\nat = [250, 40]\nturn = 0\n"
        );
        let found = place::place(&read(&text)).map(|(p, _)| p.least_spare_mm);
        assert!(found.is_err(), "inside by {inside_by}: {found:?}");
    }
}
