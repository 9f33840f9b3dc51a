//! Collects what the hazards find and what it rests on.

use super::moment::{CheckLine, Moment};
use crate::diag::{Finding, Findings, Grade, Phrase};
use crate::tables::Source;
use crate::words::{Arg, Message};

/// Findings of this job, lines of every job, what is settled, and the sources used so far.
#[derive(Debug, Default)]
pub(super) struct Notes {
    pub(super) findings: Findings,
    pub(super) checklist: Vec<CheckLine>,
    pub(super) settled: Vec<Message>,
    pub(super) sources: Vec<&'static Source>,
}

impl Notes {
    /// Notes a source, once.
    pub(super) fn used(&mut self, source: &'static Source) {
        if !self.sources.contains(&source) {
            self.sources.push(source);
        }
    }

    /// Adds a finding of a grade.
    pub(super) fn add(
        &mut self,
        grade: Grade,
        phrase: &'static Phrase,
        source: &'static Source,
        args: impl Into<Vec<Arg>>,
    ) {
        self.used(source);
        let finding = Finding::of(phrase, args, source.cite());
        self.findings.add(grade, finding);
    }

    /// Adds what must not stand when the machine starts.
    pub(super) fn stop_on(
        &mut self,
        phrase: &'static Phrase,
        source: &'static Source,
        args: impl Into<Vec<Arg>>,
    ) {
        self.add(Grade::Stop, phrase, source, args);
    }

    /// Adds a blank to fill or a thing to look at before the start.
    pub(super) fn open_on(
        &mut self,
        phrase: &'static Phrase,
        source: &'static Source,
        args: impl Into<Vec<Arg>>,
    ) {
        self.add(Grade::Open, phrase, source, args);
    }

    /// Adds what is to be read and heeded.
    pub(super) fn warn_on(
        &mut self,
        phrase: &'static Phrase,
        source: &'static Source,
        args: impl Into<Vec<Arg>>,
    ) {
        self.add(Grade::Warning, phrase, source, args);
    }

    /// Adds a line of the standing checklist.
    pub(super) fn check(
        &mut self,
        moment: Moment,
        phrase: &'static Phrase,
        source: &'static Source,
        args: impl Into<Vec<Arg>>,
    ) {
        self.used(source);
        let finding = Finding::of(phrase, args, source.cite());
        self.checklist.push(CheckLine { moment, finding });
    }

    /// Adds a point of this job that is settled, by the id of its words.
    pub(super) fn settle(
        &mut self,
        id: &'static str,
        source: &'static Source,
        args: impl Into<Vec<Arg>>,
    ) {
        self.used(source);
        self.settled.push(Message::new(id, args));
    }
}
