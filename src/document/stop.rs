//! What to do when something goes wrong: whom to call, how the work is stopped, what comes first.
//! Paper has it on the helper's and the day's page; a screen has it at one touch from every other.

use super::block::{Block, DocumentPart, Reading, Section, Sharing};
use super::say::plain;
use super::{day, helper};
use crate::plan::Plan;
use crate::words::Language;

/// The page in the job's language, and in English behind it when that is another.
pub(super) fn sections(plan: &Plan) -> Vec<Section> {
    let mut languages = vec![plan.job.language];
    if plan.job.language != Language::English {
        languages.push(Language::English);
    }
    let page = |language| Section {
        part: DocumentPart::Bench,
        reading: Reading::Helper,
        language,
        name: plain("bench-stop"),
        foot: plain("bench-foot"),
        sharing: Sharing::Alone,
        blocks: blocks(plan),
    };
    languages.into_iter().map(page).collect()
}

fn blocks(plan: &Plan) -> Vec<Block> {
    let mut blocks = vec![Block::Title(Vec::new(), plain("bench-stop"))];
    blocks.extend(helper::emergency(plan));
    blocks.push(Block::Heading(plain("bench-day-wrong")));
    blocks.push(Block::Facts(day::wrong()));
    blocks.push(Block::Heading(plain("helper-stop-heading")));
    let signs = helper::stop(plan).into_iter().map(|tick| tick.text);
    blocks.push(Block::Steps(signs.collect()));
    blocks.push(Block::Blanks(vec![helper::shut_off(plan)]));
    blocks
}
