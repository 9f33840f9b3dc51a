//! How high blocks must be at least, each found once however often a page is tried with it.

use std::collections::HashMap;
use std::sync::{Mutex, PoisonError};

use super::setter::{Said, Setter};
use crate::document::block::{Block, Reading};
use crate::words::Language;

/// What a block's height depends on, its width given: where the block is kept, the step of the type, what is
/// said and to which part drawings shrink, for whom.
type Key = (usize, usize, Said, u64, Reading, Language);

/// How a page is tried.
#[derive(Clone, Copy)]
pub(super) struct Trial {
    pub(super) step: usize,
    pub(super) said: Said,
    /// Drawings shrink to this part of the height they like.
    pub(super) share: f64,
    pub(super) reading: Reading,
}

/// Least heights found so far, mm, of blocks that stay where they are as long as this does.
#[derive(Default)]
pub(super) struct Heights(Mutex<HashMap<Key, f64>>);

impl Heights {
    /// The least height of a block at the one width that is asked for, mm.
    pub(super) fn of(&self, block: &Block, width: f64, setter: &Setter, trial: Trial) -> f64 {
        let key = (
            std::ptr::from_ref(block) as usize,
            trial.step,
            trial.said,
            trial.share.to_bits(),
            trial.reading,
            setter.writer.language,
        );
        let known = || self.0.lock().unwrap_or_else(PoisonError::into_inner);
        let found = known().get(&key).copied();
        found.unwrap_or_else(|| {
            let least = setter.extent(block, width).least;
            known().insert(key, least);
            least
        })
    }
}
