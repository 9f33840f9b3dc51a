//! Every finding of the registry is raised by the job that deserves it, and by no other.

use super::change::{Pair, all_ids, findings_of, ids, no_change};
use super::pairs::{DUST, RESPIRATOR, STONE, SUPPLY};
use super::pairs_of_use::{DISC, PEOPLE};
use crate::diag::gaps;
use crate::hazard::registry::{HAZARDS, all, find};

/// Findings that every job raises.
const ALWAYS: [&str; 2] = ["local-rules-first", "falling-stone"];
/// Every pair.
const PARTS: [&[Pair]; 6] = [STONE, SUPPLY, DUST, RESPIRATOR, DISC, PEOPLE];

fn pairs() -> impl Iterator<Item = &'static Pair> {
    PARTS.into_iter().flatten()
}

#[test]
fn the_sample_job_has_no_stop() {
    assert_eq!(
        ids(&findings_of(no_change).stops),
        Vec::<&str>::new(),
        "the sample job"
    );
}

#[test]
fn each_finding_has_a_job_that_raises_it_and_one_that_does_not() {
    for Pair {
        id,
        raises,
        does_not,
    } in pairs()
    {
        assert!(
            all_ids(&findings_of(*raises)).contains(id),
            "{id} not raised"
        );
        assert!(
            !all_ids(&findings_of(*does_not)).contains(id),
            "{id} raised"
        );
    }
}

#[test]
fn every_phrase_of_every_hazard_has_its_pair_and_every_pair_its_phrase() {
    let mut in_registry: Vec<&str> = HAZARDS
        .iter()
        .flat_map(|record| record.phrases.iter().map(|phrase| phrase.id))
        .collect();
    let mut in_pairs: Vec<&str> = pairs().map(|pair| pair.id).chain(ALWAYS).collect();
    in_registry.sort_unstable();
    in_pairs.sort_unstable();
    assert_eq!(in_registry, in_pairs);
}

#[test]
fn every_gap_of_every_phrase_is_filled() {
    for pair in pairs() {
        for change in [pair.raises, pair.does_not] {
            let found = findings_of(change);
            for finding in found.stops.iter().chain(&found.cautions) {
                let words = format!("{} {}", finding.title, finding.detail);
                assert_eq!(gaps(&words), Vec::<&str>::new(), "{}", finding.id);
                assert!(!words.contains("  "), "{}: {words}", finding.id);
            }
        }
    }
}

#[test]
fn every_finding_can_be_said_again_in_other_words_of_the_same_gaps() {
    for pair in pairs() {
        let found = findings_of(pair.raises);
        let mut all = found.stops.iter().chain(&found.cautions);
        let finding = all.find(|finding| finding.id == pair.id);
        let Some(finding) = finding else {
            assert!(finding.is_some(), "{} was not said", pair.id);
            continue;
        };
        let said = &finding.said;
        let [title, detail] = [said.phrase.title, said.phrase.detail];
        assert_eq!(finding.title, said.put_into(title));
        assert_eq!(finding.detail, said.put_into(detail));
        for gap in gaps(title).into_iter().chain(gaps(detail)) {
            let other = said.put_into(&format!("otherwise: {{{gap}}}"));
            let value = said.values.iter().find(|(name, _)| *name == gap);
            assert_eq!(
                value.map(|(_, words)| format!("otherwise: {words}")),
                Some(other)
            );
        }
    }
}

#[test]
fn every_record_says_what_why_and_what_to_do_with_its_sources() {
    let mut ids = Vec::new();
    for record in all() {
        for words in [
            record.id,
            record.title,
            record.what,
            record.why,
            record.what_to_do,
        ] {
            assert!(!words.is_empty(), "{}", record.id);
            assert!(!words.contains("  "), "{}", record.id);
        }
        assert!(!record.sources.is_empty(), "{}", record.id);
        assert_eq!(
            record.formula.is_empty(),
            record.example.is_none(),
            "{}: a formula with a worked example, or neither",
            record.id
        );
        ids.extend(record.ids());
    }
    let count = ids.len();
    ids.sort_unstable();
    ids.dedup();
    assert_eq!(ids.len(), count, "an id stands in two records");
}

#[test]
fn every_id_leads_to_its_record() {
    for record in all() {
        for id in record.ids() {
            assert_eq!(find(id).map(|found| found.id), Some(record.id));
        }
    }
    assert!(find("cheese").is_none());
}
