//! What is told of the aid that is used.

use super::needs::{Aids, Rating};
use super::vacuum::Cups;
use crate::diag::{Finding, Findings, Harm, Phrase};
use crate::handle::transport::aid::trolley::RAMP_RUN;
use crate::job::{Aid, DustMethod, Job};
use crate::tables::documents::L23_PUSH;
use crate::tables::stone::StoneKind;
use crate::units::Mass;
use crate::words::{Unit, Value};

const PRACTICE: &str = "common practice; numbers computed";

pub(crate) const TOO_WEAK: Phrase = Phrase::of_job("aid-too-weak")
    .harm(Harm::KillsNow)
    .key("lift.rated");
pub(crate) const UNMARKED: Phrase = Phrase::of_job("aid-without-mark")
    .harm(Harm::KillsNow)
    .key("lift.rated");
pub(crate) const TROLLEY: Phrase = Phrase::of_every_job("on-a-trolley").harm(Harm::KillsNow);
pub(crate) const STONE_ON_TROLLEY: Phrase =
    Phrase::of_job("on-a-trolley-numbers").harm(Harm::KillsNow);
pub(crate) const VACUUM: Phrase =
    Phrase::of_every_job("under-a-vacuum-lifter").harm(Harm::KillsNow);
pub(crate) const STONE_UNDER_CUPS: Phrase =
    Phrase::of_job("under-a-vacuum-lifter-numbers").harm(Harm::KillsNow);
pub(crate) const NO_ROOM_FOR_CUPS: Phrase =
    Phrase::of_job("under-a-vacuum-lifter-no-room").harm(Harm::KillsNow);
pub(crate) const SLINGS: Phrase = Phrase::of_every_job("in-slings").harm(Harm::KillsNow);
pub(crate) const STONE_IN_SLINGS: Phrase = Phrase::of_job("in-slings-numbers").harm(Harm::KillsNow);
pub(crate) const NO_PLACE_FOR_SLINGS: Phrase = Phrase::of_job("in-slings-no-place");

/// The aid's own findings, slab and top together by the heavier of them.
pub(super) fn findings(job: &Job, stones: &[Aids; 2]) -> Findings {
    let mut found = Findings::default();
    let [slab, top] = stones;
    let heavier = if top.mass > slab.mass { top } else { slab };
    match heavier.rating {
        Rating::TooWeak { rated, needs } => {
            found
                .stops
                .push(too_weak(heavier, job.lift.aid, rated, needs));
        }
        Rating::NotGiven => found.open.extend(unmarked(heavier, job.lift.aid)),
        Rating::Enough { .. } => {}
    }
    found.warnings.extend(practice(job));
    found.warnings.extend(match job.lift.aid {
        Aid::None => None,
        Aid::Trolley => Some(trolley(heavier)),
        Aid::VacuumLifter => Some(vacuum(
            stones
                .iter()
                .find(|s| s.vacuum.cups == Cups::NoRoom)
                .unwrap_or(heavier),
        )),
        Aid::Gantry => Some(gantry(
            stones
                .iter()
                .find(|s| s.slings.is_none())
                .unwrap_or(heavier),
        )),
    });
    found
}

/// How the aid is used, whatever the stone.
fn practice(job: &Job) -> Option<Finding> {
    match job.lift.aid {
        Aid::None => None,
        Aid::Trolley => Some(Finding::of(&TROLLEY, [], "common practice")),
        Aid::VacuumLifter => {
            let wet = job.dust.method == DustMethod::Water;
            let values = [
                ("wet", Value::Case(if wet { "yes" } else { "no" })),
                ("face", Value::Case(face(job.stone.kind))),
            ];
            Some(Finding::of(&VACUUM, values, "common practice"))
        }
        Aid::Gantry => Some(Finding::of(&SLINGS, [], "common practice")),
    }
}

/// The aid in words.
const fn name(aid: Aid) -> &'static str {
    match aid {
        Aid::None => "hands",
        Aid::Trolley => "trolley",
        Aid::VacuumLifter => "vacuum lifter",
        Aid::Gantry => "gantry",
    }
}

fn too_weak(stone: &Aids, aid: Aid, rated: Mass, needs: Mass) -> Finding {
    let values = [
        ("stone", Value::term(stone.name.clone())),
        ("aid", Value::term(name(aid))),
        ("rated", Value::mass(rated).down()),
        ("needs", Value::mass(needs).up()),
    ];
    Finding::of(&TOO_WEAK, values, PRACTICE)
}

/// An aid whose mark the job file does not give.
fn unmarked(stone: &Aids, aid: Aid) -> Option<Finding> {
    let values = [
        ("stone", Value::term(stone.name.clone())),
        ("aid", Value::term(name(aid))),
        ("needs", Value::mass(stone.needs_rating(aid)?).up()),
    ];
    Some(Finding::of(&UNMARKED, values, PRACTICE))
}

fn trolley(stone: &Aids) -> Finding {
    let t = &stone.trolley;
    let values = [
        ("stone", Value::term(stone.name.clone())),
        ("rated", Value::mass(t.rated).up()),
        ("height", Value::size(t.deck_mm + t.balance_mm)),
        ("tips", Value::of(t.tips_at_deg, Unit::Degree).decimals(1)),
        ("push", Value::mass(t.level_push).up()),
        ("run", Value::number(RAMP_RUN, 0)),
        ("ramp", Value::mass(t.ramp_adds).up()),
    ];
    let source = format!("{} ({}); statics", L23_PUSH.document, L23_PUSH.year);
    Finding::of(&STONE_ON_TROLLEY, values, source)
}

fn vacuum(stone: &Aids) -> Finding {
    let mut values = vec![
        ("stone", Value::term(stone.name.clone())),
        ("rated", Value::mass(stone.vacuum.rated).up()),
    ];
    match &stone.vacuum.cups {
        Cups::Placed { at, each, .. } => {
            values.push(("cups", Value::count(at.len())));
            values.push(("each", Value::mass(*each).up()));
            Finding::of(&STONE_UNDER_CUPS, values, PRACTICE)
        }
        Cups::NoRoom => Finding::of(&NO_ROOM_FOR_CUPS, values, PRACTICE),
    }
}

/// What holds a vacuum badly at a stone's face (judgement by what it is), as the message tells them apart.
const fn face(kind: StoneKind) -> &'static str {
    match kind {
        StoneKind::Sandstone | StoneKind::Limestone | StoneKind::Travertine => "porous",
        StoneKind::Slate | StoneKind::Quartzite => "split",
        _ => "even",
    }
}

fn gantry(stone: &Aids) -> Finding {
    let Some(s) = &stone.slings else {
        let values = [("stone", Value::term(stone.name.clone()))];
        return Finding::of(&NO_PLACE_FOR_SLINGS, values, PRACTICE);
    };
    let [first, second] = s.from_end_mm.map(Value::size);
    let values = [
        ("stone", Value::term(stone.name.clone())),
        ("first", first),
        ("second", second),
        ("each", Value::mass(s.each).up()),
        ("legs", Value::of(s.legs_deg, Unit::Degree).decimals(0)),
        ("factor", Value::number(s.tension_factor, 2)),
        ("tension", Value::mass(s.tension).up()),
        ("hook", Value::size(s.hook_mm).up()),
    ];
    Finding::of(&STONE_IN_SLINGS, values, PRACTICE)
}
