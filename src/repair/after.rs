//! The job that is left after what has happened, and where its top lies.

use crate::diag::Findings;
use crate::job::Job;
use crate::place::{self, NoFit};
use crate::repair::faces::Faces;
use crate::repair::happened::{Happened, inside};
use crate::repair::no_way::no_way;
use crate::repair::stone::Now;
use crate::words::Message;

use super::{Repair, account, numbered, opening, rim, smaller};

/// The rest of a job.
#[derive(Clone, Debug)]
pub struct Repaired {
    /// The job that is left: its slab is the stone as it is now.
    pub job: Job,
    /// What happened and what it costs.
    pub note: Repair,
    /// What that gives cause to say.
    pub findings: Findings,
}

/// Plans again what is left of a job whose cutting has begun. Nothing when it says nothing of that.
///
/// # Errors
/// [`NoFit`] when the wanted top has no place on the slab, or when nothing of its kind can be had from
/// the stone as it is now.
pub fn after(job: &Job) -> Result<Option<Repaired>, NoFit> {
    let Some(as_cut) = &job.as_cut else {
        return Ok(None);
    };
    let (placement, _) = place::place(job)?;
    let (as_cut, told) = numbered::resolved(job, as_cut, &placement)?;
    let as_cut = &as_cut;
    let faces = Faces::of(job, as_cut, &placement);
    faces.can_be_followed(&placement)?;
    let ground = faces.ground_first(job, as_cut, &placement);
    let now = Now::of(job, as_cut, &placement, &faces.ground(&ground))
        .ok_or_else(|| no_way(&placement, Message::plain("repair-no-stone")))?;
    let opened = opening::all(job, as_cut.grind_mm, &placement, &faces)?;
    for (cutout, opened) in job.top.cutouts.iter().zip(&opened) {
        inside(&placement, &job.top.shape, cutout, &opened.shape)?;
    }
    let smaller = smaller::largest(job, as_cut, &placement, &faces, &now)?;
    let happened = Happened {
        job,
        placement: &placement,
        faces: &faces,
        smaller: &smaller,
        opened: &opened,
        ground: &ground,
        numbered: told.as_ref(),
        now: &now,
    };
    let rest = happened.rest()?;
    let note = account::of(&happened, &rest);
    let findings = rim::findings(&note);
    Ok(Some(Repaired {
        job: rest,
        note,
        findings,
    }))
}
