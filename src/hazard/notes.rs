//! Where the hazards put down what they find and what it rests on.

use crate::diag::{Finding, Findings, Phrase, Values};
use crate::tables::Source;

/// Findings and the sources used so far.
#[derive(Debug, Default)]
pub(super) struct Notes {
    pub(super) findings: Findings,
    pub(super) sources: Vec<&'static Source>,
}

impl Notes {
    /// Puts down a source, once.
    pub(super) fn used(&mut self, source: &'static Source) {
        if !self.sources.contains(&source) {
            self.sources.push(source);
        }
    }

    /// Something that must not stand when the machine starts.
    pub(super) fn stop_on(
        &mut self,
        phrase: &'static Phrase,
        source: &'static Source,
        values: &Values,
    ) {
        let finding = self.spoken(phrase, source, values);
        self.findings.stops.push(finding);
    }

    /// Something to be read and heeded.
    pub(super) fn caution_on(
        &mut self,
        phrase: &'static Phrase,
        source: &'static Source,
        values: &Values,
    ) {
        let finding = self.spoken(phrase, source, values);
        self.findings.cautions.push(finding);
    }

    fn spoken(
        &mut self,
        phrase: &'static Phrase,
        source: &'static Source,
        values: &Values,
    ) -> Finding {
        self.used(source);
        Finding::of(phrase, values, source.cite())
    }
}
