//! A catalogue read as a list of texts, each with the gaps that it names.

use std::collections::{BTreeMap, BTreeSet};

use fluent_syntax::ast::{Entry, Expression, InlineExpression, Pattern, PatternElement};
use fluent_syntax::parser;
use kerfwright::words::{Language, sources};

/// One text of a catalogue.
#[derive(Debug, Default)]
pub(crate) struct Template {
    /// The words between the gaps.
    pub(crate) words: String,
    /// The names of its gaps.
    pub(crate) gaps: BTreeSet<String>,
}

/// Every text of a language under `id` or `id.attribute`. Panics when a file cannot be read.
pub(crate) fn templates(language: Language) -> BTreeMap<String, Template> {
    let mut found = BTreeMap::new();
    for source in sources(language) {
        let resource = parser::parse(source).unwrap_or_else(|(_, faults)| {
            panic!("{}: {faults:?}", language.code());
        });
        for entry in resource.body {
            let Entry::Message(message) = entry else {
                continue;
            };
            let id = message.id.name.to_owned();
            for attribute in &message.attributes {
                let name = format!("{id}.{}", attribute.id.name);
                found.insert(name, template(&attribute.value));
            }
            if let Some(pattern) = &message.value {
                let twice = found.insert(id.clone(), template(pattern));
                assert!(twice.is_none(), "{} has {id} twice", language.code());
            }
        }
    }
    found
}

fn template(pattern: &Pattern<&str>) -> Template {
    let mut template = Template::default();
    collect(pattern, &mut template);
    template
}

fn collect(pattern: &Pattern<&str>, into: &mut Template) {
    for element in &pattern.elements {
        match element {
            PatternElement::TextElement { value } => into.words.push_str(value),
            PatternElement::Placeable { expression } => match expression {
                Expression::Inline(inline) => inline_gap(inline, into),
                Expression::Select { selector, variants } => {
                    inline_gap(selector, into);
                    for variant in variants {
                        into.words.push(' ');
                        collect(&variant.value, into);
                    }
                }
            },
        }
    }
}

fn inline_gap(expression: &InlineExpression<&str>, into: &mut Template) {
    match expression {
        InlineExpression::VariableReference { id } => {
            into.gaps.insert(id.name.to_owned());
            into.words.push('\u{1}');
        }
        InlineExpression::StringLiteral { value } => into.words.push_str(value),
        _ => {}
    }
}
