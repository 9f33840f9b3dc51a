//! Where the hazards put down what they find and what it rests on.

use crate::diag::{Finding, Findings};
use crate::tables::Source;
use crate::tables::record::{Phrase, Said, Values};

/// Findings, how they were said, and the sources used so far.
#[derive(Debug, Default)]
pub(super) struct Notes {
    pub(super) findings: Findings,
    pub(super) said: Vec<Said>,
    pub(super) sources: Vec<&'static Source>,
}

impl Notes {
    /// Puts down a source, once.
    pub(super) fn used(&mut self, source: &'static Source) {
        if !self.sources.contains(&source) {
            self.sources.push(source);
        }
    }

    /// Something that must not stand when the machine starts, in a hazard's own phrase.
    pub(super) fn stop_on(
        &mut self,
        phrase: &'static Phrase,
        source: &'static Source,
        values: &Values,
    ) {
        let finding = self.spoken(phrase, source, values);
        self.findings.stops.push(finding);
    }

    /// Something to be read and heeded, in a hazard's own phrase.
    pub(super) fn caution_on(
        &mut self,
        phrase: &'static Phrase,
        source: &'static Source,
        values: &Values,
    ) {
        let finding = self.spoken(phrase, source, values);
        self.findings.cautions.push(finding);
    }

    /// Something to be read and heeded, in words of the moment.
    pub(super) fn caution(
        &mut self,
        id: &'static str,
        source: &'static Source,
        title: impl Into<String>,
        detail: impl Into<String>,
    ) {
        let finding = self.finding(id, source, title.into(), detail.into());
        self.findings.cautions.push(finding);
    }

    fn spoken(
        &mut self,
        phrase: &'static Phrase,
        source: &'static Source,
        values: &Values,
    ) -> Finding {
        let said = Said {
            phrase,
            values: values.to_vec(),
        };
        let [title, detail] = [phrase.title, phrase.detail].map(|words| said.put_into(words));
        self.said.push(said);
        self.finding(phrase.id, source, title, detail)
    }

    fn finding(
        &mut self,
        id: &'static str,
        source: &'static Source,
        title: String,
        detail: String,
    ) -> Finding {
        self.used(source);
        Finding {
            id,
            title,
            detail,
            source: source.cite(),
        }
    }
}
