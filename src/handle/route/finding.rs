//! What is told of the way in: stops and cautions.

use super::{Attempt, Carried, Fit, Measure, Passage, Remedy, Walk, WayIn};
use crate::diag::{Finding, Findings};
use crate::handle::words::Words;

const SOURCE: &str = "geometry of a plank round a corner: L ≤ a/cos θ + b/sin θ − t/(sin θ·cos θ); sizes from \
     the job file; room for hands: judgement";
const MEASURE_AGAIN: &str = "Measure again at the narrowest place, and carry a batten of the stone's length and a \
     board of its height through before the stone.";

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
    fn blocked(&self, top: &Walk) -> Option<Finding> {
        let at = places(top, |p| p.best.is_none());
        let title = format!("the top does not get in: {}", names(&at)?);
        let told: Vec<String> = at.iter().map(|p| self.against(p)).collect();
        Some(finding("way-in-blocked", title, told.join(" ")))
    }

    /// Places that are passed in a pose that is not on edge.
    fn only(&self, top: &Walk, pose: Carried) -> Option<Finding> {
        let at = places(top, |p| p.best == Some(pose));
        let (places, words) = (names(&at)?, self.words);
        let told: Vec<String> = at.iter().map(|p| self.against(p)).collect();
        let told = told.join(" ");
        Some(match pose {
            Carried::Upright | Carried::OnEdge => finding(
                "way-in-upright",
                format!("the top passes only upright: {places}"),
                format!(
                    "{told} To stand it up on its short side takes {} of clear height: do it before the \
                     place, with the aid and the people its weight asks for, and never on a stair.",
                    words.at_least(top.stand_up_mm)
                ),
            ),
            Carried::Flat => finding(
                "way-in-flat-only",
                format!("the top passes only lying flat, which is not advised: {places}"),
                format!(
                    "{told} Flat it may snap under its own weight: see the bending table, and carry it \
                     flat on a full board or not at all."
                ),
            ),
        })
    }

    fn tight(&self, top: &Walk) -> Option<Finding> {
        let tight = |p: &Passage| matches!(p.best_attempt().map(|a| a.fit), Some(Fit::Tight(_)));
        let at = places(top, tight);
        let title = format!("tight way in: {}", names(&at)?);
        let told: Vec<String> = at
            .iter()
            .filter_map(|p| Some((p, p.best_attempt()?)))
            .map(|(p, a)| format!("{}: {}.", p.at.what, self.outcome(a)))
            .collect();
        let detail = format!("{} {MEASURE_AGAIN}", told.join(" "));
        Some(finding("way-in-tight", title, detail))
    }

    /// The slab where the top goes through.
    fn slab(&self, slab: &Walk) -> Option<Finding> {
        let at = places(slab, |p| matches!(p.best, None | Some(Carried::Flat)));
        let title = format!(
            "cut before carrying in: the whole slab is stopped at {}",
            names(&at)?
        );
        let told: Vec<String> = at.iter().map(|p| self.against(p)).collect();
        let detail = format!(
            "{} The finished top goes through: unload and cut on this side of it.",
            told.join(" ")
        );
        Some(finding("way-in-slab", title, detail))
    }

    /// How each pose fares at a place, and what must give.
    fn against(&self, passage: &Passage) -> String {
        let poses: Vec<String> = passage
            .attempts
            .iter()
            .filter(|a| a.carried != Carried::Flat || Some(a.carried) == passage.best)
            .map(|a| self.outcome(a))
            .collect();
        let what = &passage.at.what;
        let mut told = format!("{what}: {}.", poses.join("; "));
        let remedies = passage.remedies.iter().map(|r| self.remedy(r));
        let remedies: Vec<String> = remedies.collect();
        if !remedies.is_empty() {
            told.push_str(" What helps: ");
            told.push_str(&remedies.join("; or "));
            told.push('.');
        }
        told
    }

    /// One pose at one place: `on edge 18 mm too long (2150 mm; at most 2132 mm turns)`.
    fn outcome(&self, attempt: &Attempt) -> String {
        let (words, need) = (self.words, attempt.binds);
        let pose = attempt.carried.words();
        match attempt.fit {
            Fit::Clears(spare) => {
                format!(
                    "{pose} it goes through with {} to spare",
                    words.at_most(spare)
                )
            }
            Fit::Tight(spare) => {
                let spare = words.at_most(spare);
                format!("{pose} it goes through with only {spare} to spare")
            }
            Fit::Short(short) => {
                let (needs, has) = (words.at_least(need.needs_mm), words.at_most(need.has_mm));
                let why = match need.measure {
                    Measure::Width => format!("too wide (needs {needs}; {has} is there)"),
                    Measure::Height => format!("too high (needs {needs}; {has} is there)"),
                    Measure::Turn => format!("too long ({needs}; at most {has} turns)"),
                };
                format!("{pose} it is {} {why}", words.at_least(short))
            }
        }
    }

    fn remedy(&self, remedy: &Remedy) -> String {
        let words = self.words;
        match *remedy {
            Remedy::TakeUpright { needs_mm, has_mm } => format!(
                "take it upright, which needs {} of height, and {} is there",
                words.at_least(needs_mm),
                words.at_most(has_mm)
            ),
            Remedy::CutTo(mm) => {
                format!(
                    "cut it to at most {} long before this place",
                    words.at_most(mm)
                )
            }
            Remedy::WidenFrom(mm) => {
                format!(
                    "make the way before the corner at least {} wide",
                    words.at_least(mm)
                )
            }
            Remedy::WidenTo(mm) => {
                format!(
                    "make the way after the corner at least {} wide",
                    words.at_least(mm)
                )
            }
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

fn places(walk: &Walk, of: impl Fn(&Passage) -> bool) -> Vec<&Passage> {
    walk.passages.iter().filter(|p| of(p)).collect()
}

/// The names of places; nothing when there are none.
fn names(at: &[&Passage]) -> Option<String> {
    let names: Vec<&str> = at.iter().map(|p| p.at.what.as_str()).collect();
    (!names.is_empty()).then(|| names.join(", "))
}

fn finding(id: &'static str, title: String, detail: String) -> Finding {
    Finding {
        id,
        title,
        detail,
        source: SOURCE.to_owned(),
        said: None,
    }
}
