//! The cuts being planned: what is made so far, what is left of the slab, what is missing.

use crate::diag::{Finding, Findings};
use crate::geom::Outline;
use crate::job::Job;
use crate::place::{Placement, Trim};

use super::Cut;
use super::disc::{self, Sunk, Task};
use super::kept::{Joint, Kept, Ring};
use super::missing::{Missing, Spot};

/// The cuts being planned.
#[derive(Clone)]
pub(super) struct Course<'a> {
    pub(super) job: &'a Job,
    pub(super) placement: &'a Placement,
    pub(super) kept: Kept,
    /// What is left of the slab so far.
    pub(super) stone: Outline,
    pub(super) cuts: Vec<Cut>,
    /// What nothing in the kit makes.
    pub(super) missing: Vec<Missing>,
    pub(super) findings: Findings,
}

impl Course<'_> {
    pub(super) fn push(&mut self, mut cut: Cut) {
        cut.number = self.cuts.len() + 1;
        self.cuts.push(cut);
    }

    /// Whether a trim's disc leaves the stone at both ends before it would reach kept stone.
    pub(super) fn runs_off(&self, trim: &Trim) -> bool {
        let Some(chord) = self.stone.chord(&trim.face, trim.middle) else {
            return false;
        };
        let disc = disc::choose(self.job, Task::RunOff).disc;
        let half = Sunk::of(self.job, disc).face_mm;
        let ends = [chord.start, chord.end].map(|p| trim.face.foot(p));
        let (low, high) = self.kept.free_stretch(&trim.face, disc.kerf, trim.middle);
        low <= ends[0] - half && high >= ends[1] + half
    }

    /// Whether a cause is known already.
    pub(super) fn is_missing(&self, cause: &Finding) -> bool {
        self.missing.iter().any(|m| m.is_for(cause))
    }

    /// Notes that something is missing for a place: another place of a cause already known, or a new one.
    pub(super) fn lacks(&mut self, cause: Finding, place: Spot) {
        match self.missing.iter_mut().find(|m| m.is_for(&cause)) {
            Some(known) => known.add(place),
            None => self.missing.push(Missing::of(cause, place)),
        }
    }
}

/// Pieces of a boundary that stopped cuts and hollow arcs make together: their run-outs are taken out when
/// the last of them is made.
pub(crate) type Group = Vec<usize>;

/// Runs of neighbouring pieces that meet at inside corners or along hollow arcs.
pub(crate) fn groups(ring: &Ring, stopped: &[usize]) -> Vec<Group> {
    let inside = |piece: usize| stopped.contains(&piece) || ring.pieces[piece].hollow().is_some();
    let mut groups: Vec<Group> = Vec::new();
    for piece in (0..ring.pieces.len()).filter(|p| inside(*p)) {
        let before = ring.before(piece);
        let joined = ring.joint_after(before) != Joint::Outside;
        match groups.last_mut() {
            Some(last) if joined && last.last() == Some(&before) => last.push(piece),
            _ => groups.push(vec![piece]),
        }
    }
    // The last run may go on at the first piece.
    let wraps = groups.len() > 1
        && groups[0].first() == Some(&0)
        && groups[groups.len() - 1].last() == Some(&(ring.pieces.len() - 1))
        && ring.joint_after(ring.pieces.len() - 1) != Joint::Outside;
    if wraps && let Some(mut last) = groups.pop() {
        last.append(&mut groups[0]);
        groups[0] = last;
    }
    groups
}
