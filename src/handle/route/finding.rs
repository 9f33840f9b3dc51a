//! What is told of the way in: stops and cautions, one for each place.

use super::{Attempt, Carried, Fit, Measure, Passage, Remedy, Walk, WayIn};
use crate::diag::{Finding, Findings, Phrase};
use crate::handle::words::Words;

const SOURCE: &str = "geometry of a plank round a corner: L ≤ a/cos θ + b/sin θ − t/(sin θ·cos θ); sizes from \
     the job file; room for hands: judgement";

/// What a stone lacks on edge.
macro_rules! on_edge {
    () => {
        "On edge {edge_short} are missing ({edge_measure}: needed {edge_needs}, there {edge_has}). "
    };
}
/// What it lacks upright.
macro_rules! upright {
    () => {
        "Upright {upright_short} are missing ({upright_measure}: needed {upright_needs}, there {upright_has}). "
    };
}
/// What must give. A pose that is short in two measures needs both.
macro_rules! what_helps {
    () => {
        "What helps, one of these, or both where a pose lacks two measures: {remedies}. "
    };
}

pub(crate) const BLOCKED: Phrase = Phrase {
    id: "way-in-blocked",
    title: "the top does not get in: {place}",
    detail: concat!(
        on_edge!(),
        upright!(),
        what_helps!(),
        "Lying flat it does not go through either."
    ),
};
pub(crate) const UPRIGHT: Phrase = Phrase {
    id: "way-in-upright",
    title: "the top passes only upright: {place}",
    detail: concat!(
        on_edge!(),
        "Upright it goes through with {spare} to spare. ",
        what_helps!(),
        "To stand it up on its short side takes {stand_up} of clear height: do it before the place, with \
         the aid and the people its weight asks for, and never on a stair."
    ),
};
pub(crate) const FLAT: Phrase = Phrase {
    id: "way-in-flat-only",
    title: "the top passes only lying flat, which is not advised: {place}",
    detail: concat!(
        on_edge!(),
        upright!(),
        "Flat it goes through with {spare} to spare. ",
        what_helps!(),
        "Flat it may snap under its own weight: see the bending table, and carry it flat on a full board \
         or not at all."
    ),
};
pub(crate) const TIGHT: Phrase = Phrase {
    id: "way-in-tight",
    title: "tight way in: {place}",
    detail: "Carried {pose} it goes through with only {spare} to spare. Measure again at the narrowest place, \
             and carry a batten of the stone's length and a board of its height through before the stone.",
};
pub(crate) const SLAB: Phrase = Phrase {
    id: "way-in-slab",
    title: "cut before carrying in: the whole slab is stopped at {place}",
    detail: concat!(
        on_edge!(),
        upright!(),
        what_helps!(),
        "The finished top goes through: unload and cut on this side of it."
    ),
};
pub(crate) const SLAB_FLAT: Phrase = Phrase {
    id: "way-in-slab-flat",
    title: "cut before carrying in: the whole slab passes only lying flat: {place}",
    detail: concat!(
        on_edge!(),
        upright!(),
        "Flat it goes through with {spare} to spare, and may snap under its own weight. ",
        what_helps!(),
        "The finished top goes through: unload and cut on this side of it."
    ),
};

/// Said where nothing that is reckoned here helps.
const ANOTHER_WAY: &str = "another way in";

/// Values of a phrase.
type Said = Vec<(&'static str, String)>;

pub(super) fn findings(way: &WayIn, words: Words) -> Findings {
    let tell = Teller { words };
    let mut found = Findings::default();
    found.stops.extend(tell.blocked(&way.top));
    found.cautions.extend(tell.only(&way.top, Carried::Flat));
    found.cautions.extend(tell.only(&way.top, Carried::Upright));
    found.cautions.extend(tell.tight(&way.top));
    if found.stops.is_empty() {
        found.cautions.extend(tell.slab(&way.slab));
    }
    found
}

struct Teller {
    words: Words,
}

impl Teller {
    fn blocked(&self, top: &Walk) -> Vec<Finding> {
        let at = top.passages.iter().filter(|p| p.best.is_none());
        at.map(|p| finding(&BLOCKED, &self.against(p))).collect()
    }

    /// Places that are passed in a pose that is not on edge.
    fn only(&self, top: &Walk, pose: Carried) -> Vec<Finding> {
        let phrase = match pose {
            Carried::Upright | Carried::OnEdge => &UPRIGHT,
            Carried::Flat => &FLAT,
        };
        let at = top.passages.iter().filter(|p| p.best == Some(pose));
        let told = at.map(|p| {
            let mut values = self.against(p);
            values.push(("stand_up", self.words.at_least(top.stand_up_mm)));
            finding(phrase, &values)
        });
        told.collect()
    }

    fn tight(&self, top: &Walk) -> Vec<Finding> {
        let at = top.passages.iter();
        let best = at.filter_map(|p| Some((p, p.best_attempt()?)));
        let tight = best.filter(|(_, a)| matches!(a.fit, Fit::Tight(_)));
        let told = tight.map(|(p, a)| {
            let values = [
                ("place", p.at.what.clone()),
                ("pose", a.carried.words().to_owned()),
                ("spare", self.words.at_most(a.fit.spare_mm())),
            ];
            finding(&TIGHT, &values)
        });
        told.collect()
    }

    /// The slab where the top goes through.
    fn slab(&self, slab: &Walk) -> Vec<Finding> {
        let told = slab.passages.iter().filter_map(|p| {
            let phrase = match p.best {
                None => &SLAB,
                Some(Carried::Flat) => &SLAB_FLAT,
                Some(Carried::OnEdge | Carried::Upright) => return None,
            };
            Some(finding(phrase, &self.against(p)))
        });
        told.collect()
    }

    /// What a place takes off the poses that do not go through, what the best leaves to spare, and
    /// what must give.
    fn against(&self, passage: &Passage) -> Said {
        let mut said = vec![("place", passage.at.what.clone())];
        let on_edge = ["edge_short", "edge_measure", "edge_needs", "edge_has"];
        let upright = [
            "upright_short",
            "upright_measure",
            "upright_needs",
            "upright_has",
        ];
        said.extend(self.short(on_edge, passage.on_edge()));
        said.extend(self.short(upright, passage.upright()));
        let best = passage.best_attempt();
        said.extend(best.map(|a| ("spare", self.words.at_most(a.fit.spare_mm()))));
        let remedies = passage.remedies.iter().map(|r| self.remedy(r));
        let mut remedies: Vec<String> = remedies.collect();
        if remedies.is_empty() {
            remedies.push(ANOTHER_WAY.to_owned());
        }
        said.push(("remedies", remedies.join("; ")));
        said
    }

    /// By how much a pose is short, of what, what it needs and what is there; nothing when it passes.
    fn short(&self, gaps: [&'static str; 4], attempt: &Attempt) -> Said {
        let (words, need) = (self.words, attempt.binds);
        let Fit::Short(short_mm) = attempt.fit else {
            return Vec::new();
        };
        let measure = match need.measure {
            Measure::Width => "clear width",
            Measure::Height => "clear height",
            Measure::Turn => "length that turns in the corner",
        };
        let values = [
            words.at_least(short_mm),
            measure.to_owned(),
            words.at_least(need.needs_mm),
            words.at_most(need.has_mm),
        ];
        gaps.into_iter().zip(values).collect()
    }

    fn remedy(&self, remedy: &Remedy) -> String {
        let words = self.words;
        match *remedy {
            Remedy::TakeUpright { needs_mm, .. } => format!(
                "take it upright, which needs {} of height",
                words.at_least(needs_mm)
            ),
            Remedy::CutTo(mm) => format!(
                "cut it to at most {} long before this place",
                words.at_most(mm)
            ),
            Remedy::WidenFrom(mm) => format!(
                "make the way before the corner at least {} wide",
                words.at_least(mm)
            ),
            Remedy::WidenTo(mm) => format!(
                "make the way after the corner at least {} wide",
                words.at_least(mm)
            ),
            Remedy::Widen(mm) => format!(
                "make it at least {} wide: take off the leaf, the stops, a frame",
                words.at_least(mm)
            ),
            Remedy::Raise { carried, needs_mm } => format!(
                "make at least {} of clear height for it {}",
                words.at_least(needs_mm),
                carried.words()
            ),
        }
    }
}

fn finding(phrase: &'static Phrase, values: &[(&'static str, String)]) -> Finding {
    Finding::of(phrase, values, SOURCE)
}
