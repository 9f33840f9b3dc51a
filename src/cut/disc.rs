//! What a disc reaches, and the shape of its cut.

use crate::diag::Finding;
use crate::job::{Disc, DiscUse, Job};

use super::CutKind;

/// Deepest cut of a disc, mm: half of what its diameter exceeds the obstruction by, less everything
/// between machine and stone.
#[must_use]
pub fn deepest_mm(disc: &Disc, plate_mm: f64) -> f64 {
    (disc.diameter - disc.obstruction) / 2.0 - plate_mm
}

/// Half the length of the disc's cut at `below` mm under the face, when its rim is `depth` mm under
/// it: √(R² − (R − (depth − below))²), mm.
///
/// 0 below the rim. Past the disc's centre the cut is as long as the disc is wide.
#[must_use]
pub fn half_length(disc: &Disc, depth: f64, below: f64) -> f64 {
    let radius = disc.diameter / 2.0;
    let up = (depth - below).clamp(0.0, radius);
    (radius * radius - (radius - up).powi(2)).max(0.0).sqrt()
}

/// Whether a disc gets through.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Depth {
    /// It does, with this much to spare, mm.
    Reaches(f64),
    /// It falls short by this much, mm.
    ShortBy(f64),
}

/// The disc taken for a cut.
#[derive(Clone, Debug)]
pub struct Choice<'a> {
    /// The disc.
    pub disc: &'a Disc,
    /// Whether it gets through.
    pub depth: Depth,
    /// Depth needed, mm.
    pub needed_mm: f64,
    plate_mm: f64,
}

/// The disc with the narrowest kerf among those kept for this kind of cut that get through; when
/// none does, the one that comes nearest.
#[must_use]
pub fn choose(job: &Job, kind: CutKind) -> Choice<'_> {
    let needed_mm = job.stone.thickness.most + job.passes.through_mm;
    let plate_mm = job.machine.plate_mm;
    let fits = |d: &&Disc| match kind {
        CutKind::Straight => d.usage != DiscUse::Curves,
        CutKind::Curve => d.usage != DiscUse::Straights,
    };
    let spare = |d: &Disc| deepest_mm(d, plate_mm) - needed_mm;
    let best = |a: &&Disc, b: &&Disc| {
        let (reach_a, reach_b) = (spare(a) >= 0.0, spare(b) >= 0.0);
        let nearer = || {
            if reach_a {
                a.kerf.total_cmp(&b.kerf)
            } else {
                spare(b).total_cmp(&spare(a))
            }
        };
        reach_b.cmp(&reach_a).then_with(nearer)
    };
    // A kit without a disc kept for this kind of cut falls back on the whole kit.
    let kept = job.discs.iter().filter(fits).min_by(best);
    let disc = kept
        .or_else(|| job.discs.iter().min_by(best))
        .unwrap_or(&job.discs[0]);
    let depth = match spare(disc) {
        spare if spare >= 0.0 => Depth::Reaches(spare),
        spare => Depth::ShortBy(-spare),
    };
    Choice {
        disc,
        depth,
        needed_mm,
        plate_mm,
    }
}

/// The stop for a disc that does not get through.
#[must_use]
pub fn too_small(choice: &Choice<'_>) -> Option<Finding> {
    let Depth::ShortBy(short) = choice.depth else {
        return None;
    };
    let (disc, needed) = (choice.disc, choice.needed_mm);
    let least = 2.0 * (needed + choice.plate_mm) + disc.obstruction;
    Some(Finding {
        id: "disc-too-small",
        title: "The disc does not get through the stone".into(),
        detail: format!(
            "\"{}\" cuts {:.1} mm deep at most (diameter {:.0}, obstruction {:.0}, plate {:.1} mm); \
             {needed:.1} mm are needed: {short:.1} mm short. With the same flange a disc of at \
             least {least:.0} mm is needed, on a machine made for that size.",
            disc.name,
            deepest_mm(disc, choice.plate_mm),
            disc.diameter,
            disc.obstruction,
            choice.plate_mm,
        ),
        source: "geometry: (diameter − obstruction) ÷ 2 − plate".into(),
    })
}
