//! The parts of a piece inside an upright box.

use super::point::{Bounds, Line, Point, Vector};
use super::{SAME_MM, Seg};

/// The parts of a piece that lie inside a box or on its edge, in its own direction. Parts shorter than
/// [`SAME_MM`] are left out.
#[must_use]
pub fn inside(seg: &Seg, area: Bounds) -> Vec<Seg> {
    let mut shares = vec![0.0, 1.0];
    for line in sides(area) {
        let crossings = seg.line_crossings(&line).into_iter();
        shares.extend(crossings.map(|along| seg.nearest(line.at(along))));
    }
    shares.sort_by(f64::total_cmp);
    let parts = shares.windows(2).filter(|w| w[1] > w[0]);
    let parts = parts.map(|w| seg.part(w[0], w[1]));
    parts
        .filter(|part| part.length() > SAME_MM && holds(area, part.at(0.5)))
        .collect()
}

fn sides(area: Bounds) -> [Line; 4] {
    let side = |point: Point, along: Vector| Line { point, along };
    let (x, y) = (Vector::new(1.0, 0.0), Vector::new(0.0, 1.0));
    [
        side(area.min, x),
        side(area.min, y),
        side(area.max, x),
        side(area.max, y),
    ]
}

fn holds(area: Bounds, at: Point) -> bool {
    let within = |v: f64, low: f64, high: f64| v >= low - SAME_MM && v <= high + SAME_MM;
    within(at.x, area.min.x, area.max.x) && within(at.y, area.min.y, area.max.y)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::geom::seg::circle;

    #[test]
    fn a_circle_through_a_box_leaves_its_arcs() {
        let area = Bounds::around([Point::new(-3.0, -10.0), Point::new(3.0, 10.0)]);
        let parts: Vec<Seg> = circle(Point::ORIGIN, 5.0)
            .iter()
            .flat_map(|s| inside(s, area))
            .collect();
        let length: f64 = parts.iter().map(Seg::length).sum();
        // Above and below, between x = −3 and 3: 4·r·asin(3/5).
        assert!((length - 20.0 * 0.6_f64.asin()).abs() < 1e-9, "{length}");
    }

    #[test]
    fn a_line_outside_leaves_nothing_and_one_inside_is_kept() {
        let area = Bounds::around([Point::ORIGIN, Point::new(10.0, 10.0)]);
        let line = |a: (f64, f64), b: (f64, f64)| {
            inside(&Seg::Line(Point::new(a.0, a.1), Point::new(b.0, b.1)), area)
        };
        assert!(line((-5.0, 12.0), (15.0, 12.0)).is_empty());
        assert_eq!(line((1.0, 1.0), (9.0, 5.0)).len(), 1);
        assert!((line((-5.0, 5.0), (15.0, 5.0))[0].length() - 10.0).abs() < 1e-9);
    }
}
