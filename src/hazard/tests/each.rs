//! Every finding of the registry is raised by the job that deserves it, and by no other.

use super::change::{Pair, all_ids, findings_of, ids, no_change};
use super::pairs::{DUST, RESPIRATOR, STONE, SUPPLY};
use super::pairs_of_use::{DISC, PEOPLE};
use crate::hazard::registry::{HAZARDS, all, find};
use crate::words::Writer;

/// Findings that every job raises.
const ALWAYS: [&str; 10] = [
    "local-rules-first",
    "falling-stone",
    "bystanders",
    "windows-and-intakes",
    "working-height",
    "eyes",
    "side-handle",
    "leaning-slabs",
    "not-for-everyone",
    "first-aid",
];
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
            for finding in found.stops.iter().chain(&found.open).chain(&found.warnings) {
                let words = format!(
                    "{} {}",
                    Writer::default().say(&finding.message),
                    Writer::default().detail(&finding.message)
                );
                assert!(!words.contains("{$"), "{}: {words}", finding.id());
                assert!(!words.contains("  "), "{}: {words}", finding.id());
            }
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
