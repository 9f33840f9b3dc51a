//! The catalogues of the ten languages: complete, with the same gaps and the same numbers as the
//! English, in letters that the typefaces have, and the English helper's page easy enough to read.

use std::collections::BTreeSet;
use std::process::Command;

use kerfwright::diag::{Phrase, gaps};
use kerfwright::hazard::registry;
use kerfwright::plan::Plan;
use kerfwright::sheet::item::{Item, Paper};
use kerfwright::sheet::sheet;
use kerfwright::sheet::typeface::missing;
use kerfwright::words::{Catalogue, Language};

fn english() -> &'static Catalogue {
    Catalogue::of(Language::English)
}

fn others() -> impl Iterator<Item = &'static Catalogue> {
    let foreign = Language::ALL
        .into_iter()
        .filter(|l| *l != Language::English);
    foreign.map(Catalogue::of)
}

/// The numbers that stand in a template itself, not in its gaps, decimal commas read as points.
fn literal_numbers(template: &str) -> Vec<String> {
    let mut outside = String::new();
    let mut depth = 0;
    for c in template.chars() {
        match c {
            '{' => depth += 1,
            '}' => depth -= 1,
            c if depth == 0 => outside.push(c),
            _ => {}
        }
    }
    let digit_or_sign = |c: char| c.is_ascii_digit() || c == '.' || c == ',';
    let mut numbers: Vec<String> = outside
        .split(|c| !digit_or_sign(c))
        .map(|n| n.trim_matches(['.', ',']).replace(',', "."))
        .filter(|n| n.chars().any(|c| c.is_ascii_digit()))
        .collect();
    numbers.sort();
    numbers
}

#[test]
fn every_catalogue_has_every_text_of_the_english() {
    let wanted: Vec<&str> = english().templates().map(|t| t.0).collect();
    assert!(wanted.len() > 120, "only {} texts", wanted.len());
    for catalogue in others() {
        let lacking: Vec<&&str> = wanted
            .iter()
            .filter(|id| catalogue.find(id).is_none())
            .collect();
        assert!(lacking.is_empty(), "{:?}: {lacking:?}", catalogue.language);
    }
}

#[test]
fn gaps_and_numbers_are_those_of_the_english() {
    for catalogue in others() {
        for (id, text) in english().templates() {
            let own = catalogue.text(id);
            let sets = [text, own].map(|t| gaps(t).into_iter().collect::<BTreeSet<_>>());
            assert_eq!(sets[0], sets[1], "{:?} {id}: {own}", catalogue.language);
            let numbers = [text, own].map(literal_numbers);
            assert_eq!(
                numbers[0], numbers[1],
                "{:?} {id}: {own}",
                catalogue.language
            );
        }
    }
}

/// Every phrase that a finding or a step of the order of controls is said in.
fn phrases() -> impl Iterator<Item = &'static Phrase> {
    registry::all().flat_map(|record| record.phrases)
}

#[test]
fn every_finding_is_said_in_every_language_with_the_same_gaps_and_numbers() {
    assert!(phrases().count() > 80, "{} phrases", phrases().count());
    let mut faults = Vec::new();
    for catalogue in others() {
        for phrase in phrases() {
            for (part, english) in [("title", phrase.title), ("detail", phrase.detail)] {
                let place = format!("{} {} {part}", catalogue.language.code(), phrase.id);
                let Some(own) = catalogue.find(&format!("findings.{}.{part}", phrase.id)) else {
                    faults.push(format!("{place} is lacking"));
                    continue;
                };
                let sets = [english, own].map(|t| gaps(t).into_iter().collect::<BTreeSet<_>>());
                if sets[0] != sets[1] || literal_numbers(english) != literal_numbers(own) {
                    faults.push(format!("{place}: {own}"));
                }
                if own_words(english) > 4 && own == english {
                    faults.push(format!("{place} is the English"));
                }
            }
        }
    }
    assert!(faults.is_empty(), "\n{}", faults.join("\n"));
}

#[test]
fn no_catalogue_says_a_finding_that_there_is_not() {
    let ids: BTreeSet<&str> = phrases().map(|p| p.id).collect();
    for catalogue in others() {
        for (id, _) in catalogue.templates() {
            let Some(id) = id.strip_prefix("findings.") else {
                continue;
            };
            let phrase = id.trim_end_matches(".title").trim_end_matches(".detail");
            assert!(ids.contains(phrase), "{:?}: {phrase}", catalogue.language);
        }
    }
}

/// How many words a template has besides its gaps.
fn own_words(template: &str) -> usize {
    let parts = template.split('{').filter_map(|p| p.rsplit('}').next());
    let words = parts.flat_map(|p| p.split(|c: char| !c.is_alphabetic()));
    words.filter(|w| w.chars().count() > 2).count()
}

#[test]
fn a_translation_is_not_the_english_over_again() {
    for catalogue in others() {
        let same = english()
            .templates()
            .filter(|(_, text)| own_words(text) > 4)
            .filter(|(id, text)| *id != "catalogue.machine_made" && catalogue.text(id) == *text)
            .map(|(id, _)| id);
        let same: Vec<&str> = same.collect();
        assert!(same.is_empty(), "{:?}: {same:?}", catalogue.language);
    }
}

#[test]
fn the_typefaces_have_every_letter() {
    for catalogue in Language::ALL.map(Catalogue::of) {
        for (id, text) in catalogue.templates() {
            let lacking = missing(text);
            assert!(
                lacking.is_empty(),
                "{:?} {id}: {lacking:?}",
                catalogue.language
            );
        }
    }
}

/// Groups of vowels: near enough for short English words. A silent e at the end is none.
fn syllables(word: &str) -> usize {
    let letters: Vec<char> = word.to_lowercase().chars().collect();
    let vowel = |c: &char| "aeiouy".contains(*c);
    let groups = letters
        .split(|c| !vowel(c))
        .filter(|g| !g.is_empty())
        .count();
    let silent = letters.ends_with(&['e']) && !letters.ends_with(&['l', 'e']) && groups > 1;
    (groups - usize::from(silent)).max(1)
}

/// Flesch–Kincaid grade: 0.39·words/sentences + 11.8·syllables/words − 15.59 (Kincaid and others,
/// Navy report 8-75, 1975; from memory). A child of eleven is in grade 5 to 6.
#[test]
fn the_helpers_page_is_read_at_eleven() {
    let texts = english().templates().filter(|t| t.0.starts_with("helper."));
    let (mut words, mut sentences, mut all) = (0.0, 0.0, 0.0);
    for (_, text) in texts {
        let ends = text.matches(['.', ':', '!']).count().max(1);
        #[allow(clippy::cast_precision_loss)]
        for word in text
            .split(|c: char| !c.is_alphabetic())
            .filter(|w| !w.is_empty())
        {
            words += 1.0;
            all += syllables(word) as f64;
        }
        #[allow(clippy::cast_precision_loss)]
        {
            sentences += ends as f64;
        }
    }
    let grade = 0.39 * words / sentences + 11.8 * all / words - 15.59;
    assert!(
        words > 400.0 && grade < 6.0,
        "grade {grade:.1} of {words} words"
    );
}

#[test]
fn both_pages_are_printed_in_every_language() {
    let text = include_str!("../../examples/tea-counter.toml");
    let (job, _) = kerfwright::job::read(text).expect("the example is sound");
    for language in Language::ALL {
        let mut plan = Plan::of(&job).expect("it fits");
        plan.job.language = language;
        let printed = sheet(&plan, Paper::A4);
        assert!(printed.missing_characters().is_empty(), "{language:?}");
        let words = Catalogue::of(language);
        let names: Vec<&str> = printed.pages.iter().map(|p| p.name.as_str()).collect();
        assert!(
            names.contains(&words.text("helper.name")),
            "{language:?}: {names:?}"
        );
    }
}

/// Every word of every table heading, whole: none is broken over two lines for want of width.
#[test]
fn no_word_of_a_heading_is_broken() {
    let text = include_str!("../../examples/tea-counter.toml");
    let (job, _) = kerfwright::job::read(text).expect("the example is sound");
    let plan = Plan::of(&job).expect("it fits");
    let mut broken = Vec::new();
    for language in Language::ALL {
        let words = Catalogue::of(language);
        let mut plan = plan.clone();
        plan.job.language = language;
        let sheet = sheet(&plan, Paper::A4);
        let items = sheet.pages.iter().flat_map(|p| &p.items);
        let texts = items.filter_map(|item| match item {
            Item::Text(text) => Some(text.content.as_str()),
            Item::Path(_) => None,
        });
        let printed: BTreeSet<&str> = texts.flat_map(str::split_whitespace).collect();
        let tables = ["safety.disc.", "safety.order.", "safety.measured."];
        let texts = words.templates();
        for (id, heading) in texts.filter(|(id, _)| tables.iter().any(|t| id.starts_with(t))) {
            let whole = |word: &&str| word.contains('{') || printed.contains(word);
            let parts: Vec<&str> = heading.split_whitespace().filter(|w| !whole(w)).collect();
            if !parts.is_empty() && IN_THIS_JOB.iter().any(|name| id.ends_with(name)) {
                broken.push(format!("{} {id}: {parts:?}", language.code()));
            }
        }
    }
    assert!(broken.is_empty(), "\n{}", broken.join("\n"));
}

/// The headings that this job's pages have.
const IN_THIS_JOB: [&str; 11] = [
    ".disc",
    ".diameter",
    ".machine",
    ".marked",
    ".rim",
    ".strongest",
    ".how",
    ".state",
    ".work",
    ".control",
    ".study",
];

#[test]
fn an_unknown_language_is_told_with_the_list() {
    let job = concat!(env!("CARGO_MANIFEST_DIR"), "/examples/tea-counter.toml");
    let ended = Command::new(env!("CARGO_BIN_EXE_kerfwright"))
        .args(["sheet", job, "--language", "eo"])
        .output()
        .expect("it runs");
    assert_eq!(ended.status.code(), Some(2));
    let said = String::from_utf8_lossy(&ended.stderr);
    assert!(
        said.contains("de (German)") && said.contains("ro (Romanian)"),
        "{said}"
    );
}

#[test]
fn numbers_follow_the_language() {
    let words = Catalogue::of(Language::German);
    let values = [
        ("name", "W1".to_owned()),
        ("mass", "1.7 kg".to_owned()),
        ("cut", "2".to_owned()),
    ];
    assert_eq!(
        words.say("helper.weight.waste_piece", &values),
        "W1: bis zu 1,7 kg, frei nach Schnitt 2"
    );
}

/// Every job of the examples and of the golden folders, and small jobs that raise the rest.
fn jobs() -> Vec<String> {
    let root = std::path::Path::new(env!("CARGO_MANIFEST_DIR"));
    let files = |folder: &str| {
        let entries = std::fs::read_dir(root.join(folder)).expect("the folder is there");
        entries.map(|entry| entry.expect("it can be read").path())
    };
    let golden = files("tests/golden").map(|folder| folder.join("job.toml"));
    let all = files("examples").chain(files("tests/safety/handling"));
    let all = all
        .chain(golden)
        .filter(|p| p.extension().is_some_and(|e| e == "toml"));
    all.filter_map(|path| std::fs::read_to_string(path).ok())
        .collect()
}

/// Whether a value has words in it, not only numbers, units and the letters of corners.
fn has_words(value: &str) -> bool {
    let words = value.split(|c: char| !c.is_alphabetic());
    let mut long = words.filter(|w| w.chars().count() > 2);
    long.any(|w| w != "MPa" && w != "min")
}

#[test]
fn what_stands_in_the_gaps_is_said_in_the_language_or_is_a_name_of_the_job() {
    let mut looked_at = 0;
    let mut english = BTreeSet::new();
    for text in jobs() {
        let Ok((job, _)) = kerfwright::job::read(&text) else {
            continue;
        };
        let Ok(plan) = Plan::of(&job) else { continue };
        let discs: Vec<&str> = plan.hazards.discs.iter().map(|d| d.name.as_str()).collect();
        let is_name = |part: &str| text.contains(part) || discs.contains(&part);
        for finding in plan.stops.iter().chain(&plan.cautions) {
            for (gap, value) in &finding.said.values {
                if others().all(|c| c.find_term(value).is_some()) {
                    continue;
                }
                for part in value.split("; ").filter(|p| has_words(p)) {
                    looked_at += 1;
                    let same = others().filter(|c| c.value(part) == part);
                    let codes: Vec<&str> = same.map(|c| c.language.code()).collect();
                    let named =
                        |p: &str| !has_words(p) || is_name(p.trim().trim_matches(['(', ')']));
                    if codes.len() > 2 && !part.split(", ").all(named) {
                        english.insert(format!("{} {gap}: {part} in {codes:?}", finding.id));
                    }
                }
            }
        }
    }
    assert!(looked_at > 50, "only {looked_at} values");
    let english: Vec<&String> = english.iter().collect();
    assert!(english.is_empty(), "{english:#?}");
}

#[test]
fn the_words_behind_every_finding_are_said_in_the_language() {
    let mut english = BTreeSet::new();
    for text in jobs() {
        let Ok((job, _)) = kerfwright::job::read(&text) else {
            continue;
        };
        let Ok(plan) = Plan::of(&job) else { continue };
        for finding in plan.stops.iter().chain(&plan.cautions) {
            let source = &finding.source;
            for catalogue in others() {
                let document =
                    source.contains('(') || source.contains("IEC") || source.contains("ISO");
                if catalogue.source(source) == *source && !document {
                    english.insert(format!("{}: {source}", catalogue.language.code()));
                }
            }
        }
    }
    let english: Vec<&String> = english.iter().collect();
    assert!(english.is_empty(), "{english:#?}");
}
