//! What every job asks for besides what its own choices bring: one line each at its moment.

use super::moment::Moment;
use super::notes::Notes;
use crate::diag::{Harm, Phrase};
use crate::job::{DustMethod, Job, Power};
use crate::tables::Source;
use crate::tables::documents as doc;
use crate::tables::record::Record;
use crate::words::Value;

/// A line that every job has.
struct StandLine {
    moment: Moment,
    phrase: &'static Phrase,
    source: &'static Source,
}

/// Other people and children.
pub static BYSTANDERS: Record = Record {
    id: "bystanders",
    title: "Bystanders and children",
    what: "Everybody within reach of dust, mist, noise and flying pieces who is not at work.",
    why: "They wear nothing, do not know the line of the disc, and a child's lungs and ears are harmed sooner. A \
          piece of a broken disc flies tens of metres.",
    what_to_do: "Close the place off, tell the neighbours when, and stop the disc when somebody comes in.",
    sources: &[&doc::COMMON_PRACTICE],
    phrases: &[OTHERS],
    ..Record::HAZARD
};
const OTHERS: Phrase = Phrase::of_every_job("bystanders").harm(Harm::KillsLater);

/// Windows and air intakes.
pub static INTAKES: Record = Record {
    id: "windows-and-intakes",
    title: "Windows, doors and air intakes",
    what: "Openings of the house and of neighbours, and intakes of ventilation, heat pumps and cars.",
    why: "The fine dust drifts unseen and is drawn in; indoors it settles where people sleep and eat.",
    what_to_do: "Shut them all, switch ventilation off, and cut downwind of them.",
    sources: &[&doc::COMMON_PRACTICE],
    phrases: &[OPENINGS],
    ..Record::HAZARD
};
const OPENINGS: Phrase = Phrase::of_every_job("windows-and-intakes").harm(Harm::KillsLater);

/// Height of the work, ladders.
pub static HEIGHT: Record = Record {
    id: "working-height",
    title: "Working height and ladders",
    what: "Stone is cut between hip and elbow, on firm ground, never from a ladder or above the shoulder.",
    why: "A machine that kicks throws whoever stands on a rung, and overhead it falls on its holder.",
    what_to_do: "Trestles at working height; no ladder, no step, no kneeling under the stone.",
    sources: &[&doc::GRINDER_WARNINGS],
    phrases: &[FOOTING],
    ..Record::HAZARD
};
const FOOTING: Phrase = Phrase::of_every_job("working-height").harm(Harm::Maims);

/// The eyes.
pub static EYES: Record = Record {
    id: "eyes",
    title: "Eyes",
    what: "Chips, grit in slurry and pieces of a disc.",
    why: "Safety spectacles let them in from below and from the side; a splinter in the eye is for good.",
    what_to_do: "Closed goggles, a face shield over them, for everybody near; a bottle of eyewash within reach.",
    sources: &[&doc::GRINDER_WARNINGS],
    phrases: &[GOGGLES],
    ..Record::HAZARD
};
const GOGGLES: Phrase = Phrase::of_every_job("eyes").harm(Harm::Maims);

/// Side handle, guard and switch.
pub static SWITCHES: Record = Record {
    id: "side-handle",
    title: "Side handle, guard and lock-on switch",
    what: "A grinder without its side handle or guard, or one whose switch can be locked on.",
    why: "One hand does not hold a kickback. A locked switch keeps the disc turning after the machine was dropped.",
    what_to_do: "Side handle and guard on, both hands; the lock is never used, a machine that stays off after the \
                 power fails is better.",
    sources: &[&doc::GRINDER_WARNINGS],
    phrases: &[HANDLE],
    ..Record::HAZARD
};
const HANDLE: Phrase = Phrase::of_every_job("side-handle").harm(Harm::KillsNow);

/// Leads and hoses.
pub static LEADS: Record = Record {
    id: "leads",
    title: "Leads and hoses",
    what: "Leads and hoses on the floor, across the way, near the disc, in the wet.",
    why: "A disc cuts a lead in no time, and a foot caught in one sends machine and man to the ground.",
    what_to_do: "Behind the cutter and over the shoulder, unrolled, unharmed, joints dry and off the ground.",
    sources: &[&doc::GRINDER_WARNINGS],
    phrases: &[CABLES, HOSES],
    ..Record::HAZARD
};
const CABLES: Phrase = Phrase::of_every_job("leads").harm(Harm::KillsNow);
const HOSES: Phrase = Phrase::of_every_job("hoses").harm(Harm::Maims);

/// Slabs that lean.
pub static LEANING: Record = Record {
    id: "leaning-slabs",
    title: "A-frames and slabs that lean",
    what: "Slabs stored or stood on edge against a wall, a frame or each other.",
    why: "They fall without warning, the whole pack at once: six people were killed in five years in Great Britain.",
    what_to_do: "On an A-frame or tied, foot out from the wall, one slab moved at a time, nobody where it can fall, \
                 never somebody between two slabs. A slab that starts to fall is let go.",
    sources: &[&doc::FALL_ZONE],
    phrases: &[FRAMES],
    ..Record::HAZARD
};
const FRAMES: Phrase = Phrase::of_every_job("leaning-slabs").harm(Harm::KillsNow);

/// Who should not do this work.
pub static NOT_FOR: Record = Record {
    id: "not-for-everyone",
    title: "Who should not do this work",
    what: "Machine, dust, noise, vibration and weight are not for everybody.",
    why: "Lungs, blood vessels, heart and back that are ill are harmed sooner; drink, drugs and tiredness cost \
          fingers.",
    what_to_do: "Not while pregnant, not with lung disease, white fingers, a pacemaker its maker warns for, a hurt \
                 back; not under age, tired, or after alcohol. Ask a doctor.",
    sources: &[&doc::COMMON_PRACTICE],
    phrases: &[NOT_YOU],
    ..Record::HAZARD
};
const NOT_YOU: Phrase = Phrase::of_every_job("not-for-everyone").harm(Harm::Lasting);

/// First aid.
pub static FIRST_AID: Record = Record {
    id: "first-aid",
    title: "First aid",
    what: "What must be at hand when a disc cuts somebody, a slab falls or a current flows.",
    why: "A cut artery kills within minutes, long before an ambulance comes.",
    what_to_do: "Pressure bandage or tourniquet and eyewash within reach, a charged telephone, the address and the \
                 way in written down, somebody who knows how. Power off before a shocked person is touched.",
    sources: &[&doc::COMMON_PRACTICE],
    phrases: &[BANDAGE],
    ..Record::HAZARD
};
const BANDAGE: Phrase = Phrase::of_every_job("first-aid").harm(Harm::KillsNow);

const LINES: [StandLine; 8] = [
    line(Moment::Before, &BANDAGE, &doc::COMMON_PRACTICE),
    line(Moment::Before, &HANDLE, &doc::GRINDER_WARNINGS),
    line(Moment::Before, &OTHERS, &doc::COMMON_PRACTICE),
    line(Moment::Before, &OPENINGS, &doc::COMMON_PRACTICE),
    line(Moment::Before, &FOOTING, &doc::GRINDER_WARNINGS),
    line(Moment::Before, &GOGGLES, &doc::GRINDER_WARNINGS),
    line(Moment::Before, &NOT_YOU, &doc::COMMON_PRACTICE),
    line(Moment::Moving, &FRAMES, &doc::FALL_ZONE),
];

const fn line(moment: Moment, phrase: &'static Phrase, source: &'static Source) -> StandLine {
    StandLine {
        moment,
        phrase,
        source,
    }
}

/// Adds the lines of every job, and of leads and hoses where there are any.
pub(super) fn assess(job: &Job, notes: &mut Notes) {
    let power = [("power", Value::Case(job.machine.power.case()))];
    for line in &LINES {
        notes.check(line.moment, line.phrase, line.source, power.clone());
    }
    let phrase = match (job.machine.power, job.dust.method) {
        (Power::Mains, _) | (_, DustMethod::Shroud) => &CABLES,
        (Power::Air, _) | (_, DustMethod::Water) => &HOSES,
        (Power::Battery | Power::Engine, DustMethod::None) => return,
    };
    notes.check(Moment::Before, phrase, &doc::GRINDER_WARNINGS, []);
}
