//! What is told of the aid that is used.

use super::vacuum::Cups;
use super::{Aids, Rating};
use crate::diag::{Finding, Findings};
use crate::handle::aid::trolley::RAMP_RUN;
use crate::handle::guideline::L23_PUSH;
use crate::handle::words::Words;
use crate::job::{Aid, DustMethod, Job};
use crate::tables::stone::StoneKind;

const PRACTICE: &str = "common practice; numbers computed";

/// The aid's own findings, for the slab and the top.
pub(super) fn findings(job: &Job, stones: &[Aids; 2], words: Words) -> Findings {
    let mut found = Findings::default();
    let weak = stones
        .iter()
        .filter_map(|s| too_weak(s, job.lift.aid, words));
    found.stops.extend(weak);
    found.cautions.extend(match job.lift.aid {
        Aid::None => None,
        Aid::Trolley => Some(trolley(stones, words)),
        Aid::VacuumLifter => Some(vacuum(job, stones, words)),
        Aid::Gantry => Some(gantry(stones, words)),
    });
    found
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
    let aid = name(aid);
    Some(Finding {
        id: "aid-too-weak",
        title: format!("{}: the {aid} is not marked for its weight", stone.name),
        detail: format!(
            "It is marked for {}; this stone needs {}. Use one that is marked for it, or a lighter \
             stone: cut before it is moved.",
            words.mass(rated),
            words.mass_at_least(needs)
        ),
        source: PRACTICE.to_owned(),
        said: None,
    })
}

fn each(stones: &[Aids; 2], tell: impl Fn(&Aids) -> String) -> String {
    let told = stones.iter().map(|s| format!("{}: {}.", s.name, tell(s)));
    told.collect::<Vec<String>>().join(" ")
}

fn trolley(stones: &[Aids; 2], words: Words) -> Finding {
    let numbers = each(stones, |s| {
        let t = &s.trolley;
        format!(
            "marked for {} or more, balance point {} above the floor, tips over on ground that falls \
             across by {:.1}° (standing still, hard tyres: sooner when it moves), takes a push of {} at least on the level, and on a ramp of \
             1 in {RAMP_RUN:.0} another {}, which also pulls it downhill",
            words.mass_at_least(t.rated),
            words.length(t.deck_mm + t.balance_mm),
            t.tips_at_deg,
            words.mass(t.level_push),
            words.mass(t.ramp_adds),
        )
    });
    Finding {
        id: "on-a-trolley",
        title: "the trolley: on edge, tied, on level ground".to_owned(),
        detail: format!(
            "{numbers} The heavier long side down, tied to the trolley's frame, somebody on either end \
             and nobody beside it. Going down, it is held back from uphill. Maker's instructions \
             come first."
        ),
        source: format!(
            "{} ({}); statics; the rest common practice",
            L23_PUSH.document, L23_PUSH.year
        ),
        said: None,
    }
}

fn vacuum(job: &Job, stones: &[Aids; 2], words: Words) -> Finding {
    let numbers = each(stones, |s| {
        let rated = words.mass_at_least(s.vacuum.rated);
        format!(
            "marked for {rated} or more; {}",
            cups(&s.vacuum.cups, words)
        )
    });
    let wet = match job.dust.method {
        DustMethod::Water => {
            " This job cuts with water: wash the slurry off and let the face dry first."
        }
        DustMethod::Shroud | DustMethod::None => "",
    };
    let poor = poor_face(job.stone.kind);
    Finding {
        id: "under-a-vacuum-lifter",
        title: "the vacuum lifter: marked for twice the weight, and a second securing".to_owned(),
        detail: format!(
            "{numbers} Only on a dry, clean, sound, polished or honed face: never on a rough or split \
             one, and nowhere across a flaw or a mend. On an upright face the cups hold by friction \
             only: use the maker's figure for that. A second securing (strap, sling) under the stone \
             at all times. Maker's instructions come first.{wet}{poor}"
        ),
        source: PRACTICE.to_owned(),
        said: None,
    }
}

fn cups(cups: &Cups, words: Words) -> String {
    match cups {
        Cups::Placed { at, each, .. } => format!(
            "{} cups in pairs about the balance point carry {} each",
            at.len(),
            words.mass_at_least(*each)
        ),
        Cups::NoRoom => "there is no room for a pair of cups about the balance point".to_owned(),
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

fn gantry(stones: &[Aids; 2], words: Words) -> Finding {
    let numbers = each(stones, |s| {
        let [first, second] = s.slings.from_end_mm;
        format!(
            "slings {} and {} from the left end (lower end when upright), {} on each; with {:.0}° between \
             the legs each pulls {:.2} of the weight, {}, and the hook hangs {} or more above the stone",
            words.length(first),
            words.length(second),
            words.mass_at_least(s.slings.each),
            s.slings.legs_deg,
            s.slings.tension_factor,
            words.mass_at_least(s.slings.tension),
            words.at_least(s.slings.hook_mm),
        )
    });
    Finding {
        id: "in-slings",
        title: "the gantry: set up and used by somebody competent".to_owned(),
        detail: format!(
            "{numbers} Hook over the balance point, edges padded, the slings tied so that they cannot slide \
             together, a tag line at each end, nobody under or beside it. Lifting gear is inspected, \
             marked, and set up by a competent, where the law asks for it licensed, person."
        ),
        source: PRACTICE.to_owned(),
        said: None,
    }
}
