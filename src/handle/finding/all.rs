//! What lifting, bending and moving give cause to say.

use crate::diag::{Finding, Findings, Harm, Phrase};
use crate::handle::handling::Handling;
use crate::handle::loads::Load;
use crate::job::Job;
use crate::words::Value;

use super::{lift, narrow, setting, strength};

pub(crate) const NOT_A_LIMIT: Phrase =
    Phrase::of_every_job("guideline-is-not-a-limit").harm(Harm::Lasting);

/// All findings of the handling.
pub(in crate::handle) fn findings(job: &Job, top: &Load, handling: &Handling) -> Findings {
    let mut found = Findings::default();
    lift::by_hand(job, handling, &mut found);
    strength::bending(job, handling, &mut found);
    narrow::narrow(handling, &mut found);
    strength::trestles(&handling.bench, &mut found);
    let hands = &handling.top.lift;
    found.warnings.extend(lift::off_the_edge(top, hands));
    found.warnings.extend(lift::at_cutout(top, hands));
    found.warnings.extend(lift::far(job));
    if let Some(setting) = &handling.setting {
        setting::set_down(setting, job.stone.strength_mpa, &mut found);
    }
    found.warnings.push(not_a_limit(handling));
    found
}

fn not_a_limit(handling: &Handling) -> Finding {
    let rule = &handling.guideline;
    let source = format!("{}, {}", rule.source.document, rule.source.clause);
    let each = [("each", Value::mass(rule.each))];
    Finding::of(&NOT_A_LIMIT, each, source)
}
