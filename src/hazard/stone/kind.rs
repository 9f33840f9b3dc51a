//! What kind of stone it is, as the rules ask.

use crate::job::{Binder, Job};
use crate::tables::region::HighExposure;
use crate::tables::stone::{RICH_IN_SILICA, StoneKind};

/// Share of silica from which a stone bound with resin counts as engineered, 0 to 1 (Australia).
const ENGINEERED_FROM: f64 = 0.01;

/// Share of silica above which a respirator is asked for whatever a table says, 0 to 1 (judgement:
/// above basalt and limestone, below slate, granite and quartzite).
const MASK_FROM: f64 = 0.05;

/// Whether the stone counts as engineered.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(in crate::hazard) enum Engineered {
    /// It is.
    Yes,
    /// Nobody said what binds a stone of the user's own with silica in it: it counts as engineered.
    UntilSaidOtherwise,
    /// It is not.
    No,
}

/// Whether the stone is bound with resin, or counts so because nobody said what binds it.
pub(in crate::hazard) fn is_engineered(job: &Job) -> Engineered {
    let stone = &job.stone;
    let silica = stone.silica.high >= ENGINEERED_FROM;
    if stone.kind.record().is_some_and(|r| r.engineered) {
        return Engineered::Yes;
    }
    match stone.binder {
        Binder::Resin if silica => Engineered::Yes,
        Binder::Unknown if silica && stone.kind == StoneKind::Own => Engineered::UntilSaidOtherwise,
        _ => Engineered::No,
    }
}

/// Whether the stone was made and did not grow, as far as it is known.
fn is_artificial(job: &Job) -> bool {
    job.stone.binder != Binder::Natural
}

/// Whether the stone may hold more silica than the Californian threshold for natural stone.
pub(in crate::hazard) fn is_rich(job: &Job) -> bool {
    job.stone.silica.high > RICH_IN_SILICA.value
}

/// Whether the stone holds enough silica that a respirator is asked for whatever a table says; a
/// share that is not known counts as enough.
pub(in crate::hazard) fn asks_for_mask(job: &Job) -> bool {
    let high = job.stone.silica.high;
    high > MASK_FROM || high <= 0.0 || is_engineered(job) != Engineered::No
}

/// The region's rule for work of high exposure, where it applies to this stone.
pub(in crate::hazard) fn high_exposure(job: &Job) -> Option<&'static HighExposure> {
    let rule = job.region.record().high_exposure.as_ref()?;
    let above = if is_artificial(job) {
        rule.artificial_above
    } else {
        rule.natural_above
    };
    (job.stone.silica.high > above).then_some(rule)
}

/// A share in whole per cent.
pub(super) fn percent(share: f64) -> String {
    format!("{:.0}", share * 100.0)
}
