//! Two outlines: what one takes from the other.

use cavalier_contours::polyline::{BooleanOp, BooleanResult, PlineSource, Polyline};
use clipper2_rust::{FillRule, difference_64, intersect_64};
use kerfwright::geom::{FLATTEN_MM, Outline, Pose, Region, Seg, Vector, boolean};
use proptest::prelude::*;

use crate::other::{cavalier, clipper, clipper_area};
use crate::outlines::outline;

/// The second outline brought over the first, its middle somewhere in the first's box.
fn pair() -> impl Strategy<Value = (Outline, Outline)> {
    (outline(), outline(), 0.1..0.9_f64, 0.1..0.9_f64).prop_map(|(a, b, x, y)| {
        let (over, from) = (a.bounds(), b.bounds().centre());
        let to = over.min + Vector::new(over.width() * x, over.height() * y);
        let moved = b.posed(Pose::new(0.0, to - from));
        (a, moved)
    })
}

fn left(result: &BooleanResult<Polyline<f64>>) -> f64 {
    let sum = |lines: &[cavalier_contours::polyline::BooleanResultPline<Polyline<f64>>]| {
        lines.iter().map(|p| p.pline.area().abs()).sum::<f64>()
    };
    sum(&result.pos_plines) - sum(&result.neg_plines)
}

fn total(regions: &[Region]) -> f64 {
    regions.iter().map(Region::area).sum()
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(1000))]

    /// Against exact arcs: our answer is as exact, far inside the chords' tolerance.
    #[test]
    fn against_exact_arcs((a, b) in pair()) {
        let stone = [Region::solid(a.clone())];
        let cutter = std::slice::from_ref(&b);
        let (minus, both) = (
            total(&boolean::difference(&stone, cutter)),
            total(&boolean::intersection(&stone, cutter)),
        );
        let slack = 1e-6 * a.area() + 1e-3;
        prop_assert!((minus + both - a.area()).abs() <= slack, "{minus} + {both}, {}", a.area());
        let (pa, pb) = (cavalier(&a), cavalier(&b));
        let theirs = left(&pa.boolean(&pb, BooleanOp::Not));
        prop_assert!((minus - theirs).abs() <= slack, "difference {minus}, {theirs}");
        let theirs = left(&pa.boolean(&pb, BooleanOp::And));
        prop_assert!((both - theirs).abs() <= slack, "intersection {both}, {theirs}");
    }

    #[test]
    fn against_polygons((a, b) in pair()) {
        let stone = [Region::solid(a.clone())];
        let cutter = std::slice::from_ref(&b);
        let (pa, pb) = (vec![clipper(&a, 1e-4)], vec![clipper(&b, 1e-4)]);
        let slack = 1e-4 * (a.perimeter() + b.perimeter());
        let minus = total(&boolean::difference(&stone, cutter));
        let theirs = clipper_area(&difference_64(&pa, &pb, FillRule::NonZero));
        prop_assert!((minus - theirs).abs() <= slack, "difference {minus}, {theirs}");
        let both = total(&boolean::intersection(&stone, cutter));
        let theirs = clipper_area(&intersect_64(&pa, &pb, FillRule::NonZero));
        prop_assert!((both - theirs).abs() <= slack, "intersection {both}, {theirs}");
    }

    /// An arc that is cut stays an arc of the same circle.
    #[test]
    fn arcs_stay_arcs((a, b) in pair()) {
        let arcs = |o: &Outline| -> Vec<kerfwright::geom::Arc> {
            let arc = |s: &Seg| if let Seg::Arc(a) = s { Some(*a) } else { None };
            o.segs().iter().filter_map(arc).collect()
        };
        let sources: Vec<_> = arcs(&a).into_iter().chain(arcs(&b)).collect();
        let parts = boolean::difference(&[Region::solid(a.clone())], std::slice::from_ref(&b));
        for part in &parts {
            let pieces: usize = part.boundaries().map(|o| o.segs().len()).sum();
            prop_assert!(pieces <= 4 * (a.segs().len() + b.segs().len()), "flattened: {pieces}");
            for arc in part.boundaries().flat_map(&arcs) {
                let known = sources.iter().any(|s| {
                    s.centre.distance(arc.centre) < 1e-6 && (s.radius - arc.radius).abs() < FLATTEN_MM
                });
                prop_assert!(known, "{arc:?} is of no circle that went in");
            }
        }
    }

    /// Cutters that overlap take their union, whatever their order.
    #[test]
    fn overlapping_cutters((a, b) in pair(), (c, _) in pair()) {
        let over = b.posed(Pose::new(0.0, Vector::new(17.0, 9.0)));
        let c = c.posed(Pose::new(0.0, a.centroid() - c.centroid()));
        let stone = [Region::solid(a.clone())];
        let cutters = [b.clone(), over, c];
        let paths = cutters.iter().map(|o| clipper(o, 1e-4)).collect();
        let theirs = clipper_area(&difference_64(&vec![clipper(&a, 1e-4)], &paths, FillRule::NonZero));
        let minus = total(&boolean::difference(&stone, &cutters));
        let slack = 2e-4 * (a.perimeter() + 3.0 * b.perimeter()) + 1e-6 * a.area();
        prop_assert!((minus - theirs).abs() <= slack, "{minus}, {theirs}");
        let mut turned = cutters.to_vec();
        turned.reverse();
        let again = total(&boolean::difference(&stone, &turned));
        prop_assert!((minus - again).abs() <= 1e-3);
    }
}
