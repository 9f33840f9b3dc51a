//! The messages of one language, in the syntax of Project Fluent.

use std::collections::HashMap;
use std::sync::OnceLock;

use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource};

use super::Language;

/// The files of a language's catalogue.
macro_rules! files {
    ($code:literal) => {
        [
            include_str!(concat!($code, "/terms.ftl")),
            include_str!(concat!($code, "/place.ftl")),
            include_str!(concat!($code, "/cut.ftl")),
            include_str!(concat!($code, "/repair.ftl")),
            include_str!(concat!($code, "/handle.ftl")),
            include_str!(concat!($code, "/hazard.ftl")),
            include_str!(concat!($code, "/helper.ftl")),
            include_str!(concat!($code, "/safety.ftl")),
            include_str!(concat!($code, "/bench.ftl")),
            include_str!(concat!($code, "/check.ftl")),
            include_str!(concat!($code, "/shapes.ftl")),
        ]
    };
}

/// How many files a catalogue has.
const FILES: usize = 11;

const fn files(language: Language) -> [&'static str; FILES] {
    match language {
        Language::English => files!("en"),
        Language::German => files!("de"),
        Language::French => files!("fr"),
        Language::Spanish => files!("es"),
        Language::Polish => files!("pl"),
        Language::Norwegian => files!("no"),
        Language::Portuguese => files!("pt"),
        Language::Italian => files!("it"),
        Language::Dutch => files!("nl"),
        Language::Romanian => files!("ro"),
    }
}

/// The messages of one language, by id.
pub struct Messages {
    entries: HashMap<&'static str, Entry>,
}

/// One message as it stands in its file, and as it is understood: read when it is first asked for, since
/// no sheet says more than a part of the catalogue. No message refers to another.
struct Entry {
    language: Language,
    text: &'static str,
    read: OnceLock<FluentBundle<FluentResource>>,
}

impl Messages {
    /// The catalogue of a language; looked through once for where its messages begin, linear in its length.
    #[must_use]
    pub fn of(language: Language) -> &'static Self {
        static ALL: [OnceLock<Messages>; Language::ALL.len()] =
            [const { OnceLock::new() }; Language::ALL.len()];
        ALL[language as usize].get_or_init(|| Self {
            entries: files(language)
                .into_iter()
                .flat_map(|file| entries(language, file))
                .collect(),
        })
    }

    /// A message, or an attribute of it, with its gaps filled; nothing when the language lacks it.
    #[must_use]
    pub fn format(&self, id: &str, attribute: Option<&str>, args: &FluentArgs) -> Option<String> {
        let bundle = self.entries.get(id)?.bundle();
        let message = bundle.get_message(id)?;
        let pattern = match attribute {
            None => message.value()?,
            Some(name) => message.get_attribute(name)?.value(),
        };
        let mut faults = Vec::new();
        let words = bundle.format_pattern(pattern, Some(args), &mut faults);
        Some(words.into_owned())
    }

    /// Whether the language has a message.
    #[must_use]
    pub fn has(&self, id: &str) -> bool {
        self.entries.contains_key(id)
    }
}

impl Entry {
    fn bundle(&self) -> &FluentBundle<FluentResource> {
        self.read.get_or_init(|| {
            let tag = self.language.tag().parse().into_iter().collect();
            let mut bundle = FluentBundle::new_concurrent(tag);
            bundle.set_use_isolating(false);
            // A fault in a file is for the tests to find: the file is part of the program.
            let resource = FluentResource::try_new(self.text.to_owned());
            bundle.add_resource_overriding(resource.unwrap_or_else(|(read, _)| read));
            bundle
        })
    }
}

/// The messages of a file with their ids: each begins at a line that begins with a letter, and ends before
/// the next.
fn entries(language: Language, file: &'static str) -> Vec<(&'static str, Entry)> {
    let lines = file.match_indices('\n').map(|(end, _)| end + 1);
    let begins = |at: &usize| file[*at..].starts_with(|c: char| c.is_ascii_alphabetic());
    let mut starts: Vec<usize> = std::iter::once(0).chain(lines).filter(begins).collect();
    starts.push(file.len());
    let entry = |at: &[usize]| {
        let text = &file[at[0]..at[1]];
        let id = text.split([' ', '=']).next().unwrap_or(text);
        let read = OnceLock::new();
        (
            id,
            Entry {
                language,
                text,
                read,
            },
        )
    };
    starts.windows(2).map(entry).collect()
}

/// The source of every file of a language's catalogue, for tests that compare languages.
#[must_use]
pub fn sources(language: Language) -> Vec<&'static str> {
    files(language).to_vec()
}
