//! The catalogues of the ten languages: complete, with the same gaps and the same numbers as the
//! English, in letters that the typefaces have, and the English helper's page easy enough to read.

mod catalogue;

use std::collections::{BTreeMap, BTreeSet};
use std::process::Command;

use catalogue::{Template, templates};
use kerfwright::hazard::registry;
use kerfwright::layout::typeface::missing;
use kerfwright::plan::Plan;
use kerfwright::words::{Language, System, Value, Writer, term_id};

type Catalogue = BTreeMap<String, Template>;

fn english() -> Catalogue {
    templates(Language::English)
}

fn others() -> impl Iterator<Item = (Language, Catalogue)> {
    let foreign = Language::ALL
        .into_iter()
        .filter(|l| *l != Language::English);
    foreign.map(|language| (language, templates(language)))
}

/// The numbers that stand in a template's own words, decimal commas read as points.
fn literal_numbers(words: &str) -> Vec<String> {
    let digit_or_sign = |c: char| c.is_ascii_digit() || c == '.' || c == ',';
    let mut numbers: Vec<String> = words
        .split(|c| !digit_or_sign(c))
        .map(|n| n.trim_matches(['.', ',']).replace(',', "."))
        .filter(|n| n.chars().any(|c| c.is_ascii_digit()))
        .collect();
    numbers.sort();
    numbers
}

/// How many words of three letters or more a text has.
fn word_count(text: &str) -> usize {
    let words = text.split(|c: char| !c.is_alphabetic());
    words.filter(|w| w.chars().count() > 2).count()
}

#[test]
fn every_catalogue_has_every_text_with_the_gaps_and_numbers_of_the_english() {
    let wanted = english();
    assert!(wanted.len() > 500, "only {} texts", wanted.len());
    let mut faults = Vec::new();
    for (language, own) in others() {
        let code = language.code();
        for (id, template) in &wanted {
            let Some(said) = own.get(id) else {
                faults.push(format!("{code} lacks {id}"));
                continue;
            };
            if said.gaps != template.gaps {
                faults.push(format!(
                    "{code} {id}: {:?} for {:?}",
                    said.gaps, template.gaps
                ));
            }
            let numbers = [&template.words, &said.words].map(|w| literal_numbers(w));
            if numbers[0] != numbers[1] {
                faults.push(format!("{code} {id}: {numbers:?}"));
            }
            if word_count(&template.words) > 5 && template.words == said.words {
                faults.push(format!("{code} {id} is the English"));
            }
        }
        let unknown = own.keys().filter(|id| !wanted.contains_key(*id));
        faults.extend(unknown.map(|id| format!("{code} has {id}, which is not said")));
    }
    let count = faults.len();
    assert!(count == 0, "{count} faults\n{}", faults.join("\n"));
}

#[test]
fn the_typefaces_have_every_letter() {
    for language in Language::ALL {
        for (id, template) in templates(language) {
            let lacking = missing(&template.words.replace(['\u{1}', '\n'], ""));
            assert!(lacking.is_empty(), "{language:?} {id}: {lacking:?}");
        }
    }
}

#[test]
fn every_finding_has_its_line_and_its_full_words() {
    let english = english();
    for phrase in registry::all().flat_map(|record| record.phrases) {
        assert!(english.contains_key(phrase.id), "{}", phrase.id);
        let detail = format!("{}.detail", phrase.id);
        assert!(english.contains_key(&detail), "{detail}");
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
#[allow(clippy::cast_precision_loss)]
fn the_helpers_page_is_read_at_eleven() {
    let english = english();
    let texts = english.iter().filter(|t| t.0.starts_with("helper-"));
    let (mut words, mut sentences, mut all) = (0.0, 0.0, 0.0);
    for (_, template) in texts {
        let text = &template.words;
        let parts = text.split(|c: char| !c.is_alphabetic());
        for word in parts.filter(|w| !w.is_empty()) {
            words += 1.0;
            all += syllables(word) as f64;
        }
        sentences += text.matches(['.', ':', '!']).count().max(1) as f64;
    }
    let grade = 0.39 * words / sentences + 11.8 * all / words - 15.59;
    assert!(
        words > 250.0 && grade < 6.0,
        "grade {grade:.1} of {words} words"
    );
}

#[test]
fn an_unknown_language_is_refused_with_the_list() {
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

/// The plans of those jobs that can be planned, each with its text.
fn plans() -> Vec<(String, Plan)> {
    let plan = |text: String| {
        let (job, _) = kerfwright::job::read(&text).ok()?;
        Plan::of(&job).ok().map(|plan| (text, plan))
    };
    jobs().into_iter().filter_map(plan).collect()
}

/// Looks at a value and at what stands in it.
fn each_value(value: &Value, look: &mut impl FnMut(&Value)) {
    look(value);
    match value {
        Value::List(values) => values.iter().for_each(|v| each_value(v, look)),
        Value::Message(message) => message.args.iter().for_each(|a| each_value(&a.1, look)),
        _ => {}
    }
}

/// How many names of findings are still English words; the number only falls.
const ENGLISH_NAMES_LEFT: usize = 55;

/// A name is the job's own; everything else is a typed value or has its words in the catalogues.
#[test]
fn names_are_the_jobs_own_and_terms_stand_in_the_catalogue() {
    let english = english();
    let mut faults = BTreeSet::new();
    let mut looked_at = 0;
    for (text, plan) in plans() {
        let findings = plan.stops.iter().chain(&plan.open).chain(&plan.warnings);
        for finding in findings {
            for (gap, value) in &finding.message.args {
                each_value(value, &mut |value| {
                    looked_at += 1;
                    let place = format!("{} {gap}", finding.id());
                    match value {
                        Value::Name(name) if word_count(name) > 0 => {
                            let own = text.contains(name.as_str())
                                || plan.hazards.discs.iter().any(|d| d.name == *name);
                            if !own {
                                faults.insert(format!("{place}: the name {name:?}"));
                            }
                        }
                        Value::Term(words) if !english.contains_key(&term_id(words)) => {
                            faults.insert(format!("{place}: the term {words:?}"));
                        }
                        Value::Message(message) if !english.contains_key(&*message.id) => {
                            faults.insert(format!("{place}: the message {:?}", message.id));
                        }
                        _ => {}
                    }
                });
            }
        }
    }
    assert!(looked_at > 500, "only {looked_at} values");
    let faults: Vec<&String> = faults.iter().collect();
    assert!(
        faults.len() <= ENGLISH_NAMES_LEFT,
        "{} faults {faults:#?}",
        faults.len()
    );
}

/// Nothing is left open in any language, and an inch job prints no metric unit.
#[test]
fn every_gap_is_filled_in_every_language_and_inch_jobs_are_in_inches() {
    let metric = [" mm", " kg", " MPa", " cm", " m²", " l "];
    let mut faults = BTreeSet::new();
    for (_, plan) in plans() {
        let system = plan.writer().system;
        for language in Language::ALL {
            let writer = Writer::new(system, language);
            for finding in plan.stops.iter().chain(&plan.open).chain(&plan.warnings) {
                let words = [
                    writer.say(&finding.message),
                    writer.detail(&finding.message),
                ]
                .join(" ");
                let place = format!("{} {}", language.code(), finding.id());
                if words.contains("{$") || words.contains("  ") {
                    faults.insert(format!("{place}: {words}"));
                }
                let spaced = words.replace('\u{a0}', " ");
                let unit = metric.iter().find(|unit| spaced.contains(*unit));
                if let (System::Inch, Some(unit)) = (system, unit) {
                    faults.insert(format!("{place} prints{unit}: {words}"));
                }
            }
        }
    }
    let faults: Vec<&String> = faults.iter().collect();
    assert!(faults.is_empty(), "{} faults {faults:#?}", faults.len());
}

#[test]
fn numbers_follow_the_language() {
    let writer = Writer::new(System::Metric, Language::German);
    let mass = Value::of(1.72, kerfwright::words::Unit::Mass);
    assert_eq!(writer.write(&mass), "1,7\u{a0}kg");
}
