//! What is told of the aid that is used.

use super::vacuum::Cups;
use super::{Aids, Rating};
use crate::diag::{Finding, Findings, Phrase, number};
use crate::handle::aid::trolley::RAMP_RUN;
use crate::handle::guideline::L23_PUSH;
use crate::handle::words::Words;
use crate::job::{Aid, DustMethod, Job};
use crate::tables::stone::StoneKind;

const PRACTICE: &str = "common practice; numbers computed";

pub(crate) const TOO_WEAK: Phrase = Phrase {
    id: "aid-too-weak",
    title: "{stone}: the lifting aid is not marked for its weight",
    detail: "The aid ({aid}) is marked for {rated}; this stone needs {needs}. Use one that is marked for it, \
             or a lighter stone: cut before it is moved.",
};
pub(crate) const TROLLEY: Phrase = Phrase {
    id: "on-a-trolley",
    title: "the trolley: on edge, tied, on level ground",
    detail: "The heavier long side down, tied to the trolley's frame, somebody on either end and nobody \
             beside it. Going down, it is held back from uphill. Maker's instructions come first.",
};
pub(crate) const STONE_ON_TROLLEY: Phrase = Phrase {
    id: "on-a-trolley-numbers",
    title: "{stone}: a trolley marked for {rated} or more",
    detail: "On the trolley its balance point is {height} above the floor, and it tips over on ground that \
             falls across by {tips}° (standing still, hard tyres: sooner when it moves). It takes a push of \
             {push} at least on the level, and on a ramp of 1 in {run} another {ramp}, which also pulls it \
             downhill.",
};
pub(crate) const VACUUM: Phrase = Phrase {
    id: "under-a-vacuum-lifter",
    title: "the vacuum lifter: marked for twice the weight, and a second securing",
    detail: "Only on a dry, clean, sound, polished or honed face: never on a rough or split one, and nowhere \
             across a flaw or a mend. On an upright face the cups hold by friction only: use the maker's \
             figure for that. A second securing (strap, sling) under the stone at all times. Maker's \
             instructions come first.{wet}{poor}",
};
pub(crate) const STONE_UNDER_CUPS: Phrase = Phrase {
    id: "under-a-vacuum-lifter-numbers",
    title: "{stone}: a vacuum lifter marked for {rated} or more",
    detail: "Cups in pairs about the balance point: {cups}, and each carries {each}.",
};
pub(crate) const NO_ROOM_FOR_CUPS: Phrase = Phrase {
    id: "under-a-vacuum-lifter-no-room",
    title: "{stone}: a vacuum lifter has no room",
    detail: "It would have to be marked for {rated} or more, but there is no room for a pair of cups about \
             the balance point. Use slings or a trolley.",
};
pub(crate) const SLINGS: Phrase = Phrase {
    id: "in-slings",
    title: "the gantry: set up and used by somebody competent",
    detail: "Hook over the balance point, edges padded, the slings tied so that they cannot slide together, \
             a tag line at each end, nobody under or beside it. Lifting gear is inspected, marked, and set \
             up by a competent, where the law asks for it licensed, person.",
};
pub(crate) const STONE_IN_SLINGS: Phrase = Phrase {
    id: "in-slings-numbers",
    title: "{stone}: slings {first} and {second} from its left end",
    detail: "From the lower end when upright. {each} hang on each sling; with {legs}° between the legs each \
             pulls {factor} of the weight, {tension}, and the hook hangs {hook} or more above the stone.",
};

/// Said with a vacuum lifter where the face gets wet.
const WET_FACE: &str = " This job cuts with water: wash the slurry off and let the face dry first.";

/// The aid's own findings, for the slab and the top.
pub(super) fn findings(job: &Job, stones: &[Aids; 2], words: Words) -> Findings {
    let mut found = Findings::default();
    let weak = stones
        .iter()
        .filter_map(|s| too_weak(s, job.lift.aid, words));
    found.stops.extend(weak);
    found.cautions.extend(practice(job));
    let numbers = stones.iter().filter_map(|s| match job.lift.aid {
        Aid::None => None,
        Aid::Trolley => Some(trolley(s, words)),
        Aid::VacuumLifter => Some(vacuum(s, words)),
        Aid::Gantry => Some(gantry(s, words)),
    });
    found.cautions.extend(numbers);
    found
}

/// How the aid is used, whatever the stone.
fn practice(job: &Job) -> Option<Finding> {
    match job.lift.aid {
        Aid::None => None,
        Aid::Trolley => Some(Finding::of(&TROLLEY, &[], "common practice")),
        Aid::VacuumLifter => {
            let wet = match job.dust.method {
                DustMethod::Water => WET_FACE,
                DustMethod::Shroud | DustMethod::None => "",
            };
            let poor = poor_face(job.stone.kind);
            let values = [("wet", wet.to_owned()), ("poor", poor.to_owned())];
            Some(Finding::of(&VACUUM, &values, "common practice"))
        }
        Aid::Gantry => Some(Finding::of(&SLINGS, &[], "common practice")),
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

fn too_weak(stone: &Aids, aid: Aid, words: Words) -> Option<Finding> {
    let Rating::TooWeak { rated, needs } = stone.rating else {
        return None;
    };
    let values = [
        ("stone", stone.name.clone()),
        ("aid", name(aid).to_owned()),
        ("rated", words.mass(rated)),
        ("needs", words.mass_at_least(needs)),
    ];
    Some(Finding::of(&TOO_WEAK, &values, PRACTICE))
}

fn trolley(stone: &Aids, words: Words) -> Finding {
    let t = &stone.trolley;
    let values = [
        ("stone", stone.name.clone()),
        ("rated", words.mass_at_least(t.rated)),
        ("height", words.length(t.deck_mm + t.balance_mm)),
        ("tips", number(t.tips_at_deg, 1)),
        ("push", words.mass(t.level_push)),
        ("run", number(RAMP_RUN, 0)),
        ("ramp", words.mass(t.ramp_adds)),
    ];
    let source = format!("{} ({}); statics", L23_PUSH.document, L23_PUSH.year);
    Finding::of(&STONE_ON_TROLLEY, &values, source)
}

fn vacuum(stone: &Aids, words: Words) -> Finding {
    let mut values = vec![
        ("stone", stone.name.clone()),
        ("rated", words.mass_at_least(stone.vacuum.rated)),
    ];
    match &stone.vacuum.cups {
        Cups::Placed { at, each, .. } => {
            values.push(("cups", at.len().to_string()));
            values.push(("each", words.mass_at_least(*each)));
            Finding::of(&STONE_UNDER_CUPS, &values, PRACTICE)
        }
        Cups::NoRoom => Finding::of(&NO_ROOM_FOR_CUPS, &values, PRACTICE),
    }
}

/// What is to be said of stones whose faces hold a vacuum badly (judgement by what they are).
const fn poor_face(kind: StoneKind) -> &'static str {
    match kind {
        StoneKind::Sandstone | StoneKind::Limestone | StoneKind::Travertine => {
            " This stone is porous: air goes through it and the hold fails. Ask the maker, or use slings."
        }
        StoneKind::Slate | StoneKind::Quartzite => {
            " This stone is often sold with a split face: no cup holds on that."
        }
        _ => "",
    }
}

fn gantry(stone: &Aids, words: Words) -> Finding {
    let s = &stone.slings;
    let [first, second] = s.from_end_mm.map(|mm| words.length(mm));
    let values = [
        ("stone", stone.name.clone()),
        ("first", first),
        ("second", second),
        ("each", words.mass_at_least(s.each)),
        ("legs", number(s.legs_deg, 0)),
        ("factor", number(s.tension_factor, 2)),
        ("tension", words.mass_at_least(s.tension)),
        ("hook", words.at_least(s.hook_mm)),
    ];
    Finding::of(&STONE_IN_SLINGS, &values, PRACTICE)
}
