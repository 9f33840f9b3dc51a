//! Cuts told by their numbers on the sheet, as the edges and corners that they make.

use crate::cut::kept::{ALL_ROUND, Whose};
use crate::cut::{self, Cut, CutKind};
use crate::job::{AsCut, Assumption, CornerCut, Job, OpeningCut, Part, Shape};
use crate::place::{NoFit, Placement};
use crate::words::{Message, Value};

use super::faces::of_words;
use super::no_way::no_way;

/// What happened with the numbered cuts among those that are done, and which they are in words.
///
/// # Errors
/// [`NoFit`] for a number that the sheet does not have.
pub(super) fn resolved(
    job: &Job,
    as_cut: &AsCut,
    placement: &Placement,
) -> Result<(AsCut, Option<Assumption>), NoFit> {
    let mut known = as_cut.clone();
    if as_cut.cuts.is_empty() {
        return Ok((known, None));
    }
    let (cuts, ..) = cut::plan(job, placement);
    let mut said = Vec::new();
    for number in &as_cut.cuts {
        let Some(cut) = cuts.iter().find(|c| c.number == *number) else {
            let gaps = [
                ("number", Value::count(*number)),
                ("last", Value::count(cuts.len())),
            ];
            return Err(no_way(placement, Message::new("repair-no-such-cut", gaps)));
        };
        let whose = cut.cutout.map_or(Whose::Top, |n| Whose::Cutout(n - 1));
        said.push(format!("{number}: {}{}", cut.edge, of_words(whose)));
        done(job, &mut known, whose, cut);
    }
    let told = Assumption {
        key: "as_cut.cuts".into(),
        value: said.join("; "),
        why: "the numbers of this job file's own sheet: compare them with the sheet in your hand"
            .into(),
    };
    Ok((known, Some(told)))
}

/// Adds what a cut makes to what is done. Relief cuts make nothing of the top; core holes are taken as
/// drilled wherever a cut beside them is made.
fn done(job: &Job, known: &mut AsCut, whose: Whose, cut: &Cut) {
    if matches!(cut.kind, CutKind::Relief) {
        return;
    }
    let (shape, list) = match whose {
        Whose::Top => (&job.top.shape, &mut known.done),
        Whose::Cutout(i) => {
            let at = known.openings.iter().position(|o| o.cutout == i);
            let at = at.unwrap_or_else(|| {
                known.openings.push(OpeningCut {
                    cutout: i,
                    done: Vec::new(),
                    slips: Vec::new(),
                });
                known.openings.len() - 1
            });
            (&job.top.cutouts[i].shape, &mut known.openings[at].done)
        }
    };
    for part in made_by(shape, &cut.edge) {
        if !list.contains(&part) {
            list.push(part);
        }
    }
}

/// The edges and the treated corners of a shape that a cut's name lists.
fn made_by(shape: &Shape, name: &str) -> Vec<Part> {
    let parts = shape.parts().iter().copied();
    let own = parts.filter(|part| match part {
        Part::Edge(_) => true,
        Part::Corner(corner) => shape.corner_cuts()[*corner] != CornerCut::Sharp,
    });
    own.filter(|part| name == ALL_ROUND || name.split(", ").any(|n| n == shape.part_name(*part)))
        .collect()
}
