//! The outline of the slab, by whichever way it was measured: `rectangle`, `corners`, a drawing, `sides` with
//! `diagonals`, or `base_line` with `ties`.

use super::{figure, slab_sides, slab_ties, slab_words};
use crate::job::given::Given;
use crate::job::reader::Reader;
use crate::job::survey::{How, Misclosure};
use crate::job::{Naming, Shape, Survey};

/// Reads the outline and how it was measured; `tape_error` in mm.
pub(super) fn read(r: &mut Reader<'_>, wanted: bool, tape_error: f64) -> Option<(Shape, Survey)> {
    let (rectangle, corners) = (r.get("rectangle"), r.get("corners"));
    let (sides, diagonals) = (r.get("sides"), r.get("diagonals"));
    let (base_line, ties) = (r.get("base_line"), r.get("ties"));
    let how = match rectangle {
        Some(_) => How::Rectangle,
        None => How::Offsets,
    };
    let plain = rectangle.or(corners).or(r.get("shape"));
    let by_sides = sides.as_ref().or(diagonals.as_ref()).cloned();
    let by_ties = base_line.as_ref().or(ties.as_ref()).cloned();
    if twice(&[&plain, &by_sides, &by_ties]) {
        return None;
    }
    let taped = if by_sides.is_some() {
        slab_sides::read(r, sides, diagonals, tape_error)
    } else if by_ties.is_some() {
        slab_ties::read(r, base_line, ties, tape_error)
    } else {
        if plain.is_none() && wanted {
            r.none_of("rectangle");
        }
        let shape = figure::read(r, Naming::Letters, false)?;
        return Some(finish(r, shape, how, Vec::new(), tape_error));
    };
    let taped = taped?;
    let shape = figure::with_corners(r, Naming::Letters, taped.corners, taped.said)?;
    Some(finish(r, shape, taped.how, taped.misclosures, tape_error))
}

fn finish(
    r: &Reader<'_>,
    shape: Shape,
    how: How,
    misclosures: Vec<Misclosure>,
    tape_error: f64,
) -> (Shape, Survey) {
    let survey = Survey::of(how, misclosures, &shape, tape_error);
    slab_words::out_of_square(r, &survey, tape_error);
    (shape, survey)
}

/// Notes a slab that is described in more than one way.
fn twice(ways: &[&Option<Given<'_>>]) -> bool {
    let mut given = ways.iter().filter_map(|way| way.as_ref());
    let (Some(first), Some(second)) = (given.next(), given.next()) else {
        return false;
    };
    let first = first.key.rsplit('.').next().unwrap_or(&first.key);
    second.fault::<()>(
        &format!("stands beside `{first}`: the slab is described twice"),
        "keep one of `rectangle`, `corners`, `shape`, `sides` with `diagonals`, and `base_line` with `ties`",
    );
    true
}
