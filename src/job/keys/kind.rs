//! What may stand at a key, in words and limits.

use std::collections::HashSet;

use super::key::{KeyPart, Kind, Section};
use crate::job::quantity::{Limits, Quantity};
use crate::job::words::{length, short};
use crate::units::LengthUnit;

impl Kind {
    /// The first kind among the alternatives of this one of which `pick` makes something.
    pub fn find<T>(&self, pick: impl Fn(&Kind) -> Option<T>) -> Option<T> {
        match self {
            Self::Either(kinds) => kinds.iter().find_map(pick),
            one => pick(one),
        }
    }

    /// The limits of a length, mm.
    pub(in crate::job) fn length(&self) -> Option<Limits> {
        self.find(|kind| match kind {
            Self::Length(limits) => Some(*limits),
            _ => None,
        })
    }

    /// The limits of a mass, kg.
    pub(in crate::job) fn mass(&self) -> Option<Limits> {
        self.find(|kind| match kind {
            Self::Mass(limits) => Some(*limits),
            _ => None,
        })
    }

    /// A quantity and its limits.
    #[must_use]
    pub fn quantity(&self) -> Option<(&'static Quantity, Limits)> {
        self.find(|kind| match kind {
            Self::Quantity(quantity, limits) => Some((*quantity, *limits)),
            _ => None,
        })
    }

    /// The least and the most of a whole number.
    pub(in crate::job) fn whole(&self) -> Option<(i64, i64)> {
        self.find(|kind| match kind {
            Self::Whole(least, most) => Some((*least, *most)),
            _ => None,
        })
    }

    /// What a list holds, and how many.
    #[must_use]
    pub fn list(&self) -> Option<(&'static Kind, usize, usize)> {
        self.find(|kind| match kind {
            Self::List(of, least, most) => Some((*of, *least, *most)),
            _ => None,
        })
    }

    /// What stands beside each name of a corner, an edge or a diagonal.
    #[must_use]
    pub fn named(&self) -> Option<&'static Kind> {
        self.find(|kind| match kind {
            Self::Named(_, of) => Some(*of),
            _ => None,
        })
    }

    /// The section behind a table or a list of tables, and how many there may be.
    #[must_use]
    pub fn section(&self) -> Option<(&'static Section, usize)> {
        self.find(|kind| match kind {
            Self::Table(section) => Some((*section, 1)),
            Self::Tables(section, most) => Some((*section, *most)),
            _ => None,
        })
    }

    /// The words that may stand there.
    #[must_use]
    pub fn words(&self) -> Vec<&'static str> {
        match self {
            Self::Word(words) | Self::Name(words) => words(),
            Self::Either(kinds) => {
                let mut words: Vec<_> = kinds.iter().flat_map(Kind::words).collect();
                let mut seen = HashSet::new();
                words.retain(|word| seen.insert(*word));
                words
            }
            Self::List(of, ..) | Self::Named(_, of) => of.words(),
            _ => Vec::new(),
        }
    }

    /// What is to be written there, in words.
    #[must_use]
    pub fn wanted(&self) -> String {
        match self {
            Self::Text => "a text in quotes".to_owned(),
            Self::Flag => "true or false, without quotes".to_owned(),
            Self::Date => "a date without quotes and without a time, such as 2026-11-30".to_owned(),
            Self::Word(words) => format!("one of {}", quoted(&words())),
            Self::Name(words) => format!("one of {}, or a name of your own", quoted(&words())),
            Self::Whole(least, most) => format!("a whole number from {least} to {most}"),
            Self::Length(_) => "a length such as \"640 mm\", \"2.2 m\" or \"25 1/4 in\"".to_owned(),
            Self::Mass(_) => "a mass such as \"30 kg\" or \"66 lb\"".to_owned(),
            Self::Quantity(quantity, _) => quantity.wanted(),
            Self::Point => "a point in square brackets, [x, y]".to_owned(),
            Self::List(of, least, most) if least == most => {
                format!("a list in square brackets, {least} times {}", of.wanted())
            }
            Self::List(of, ..) => format!("a list in square brackets of {}", of.wanted()),
            Self::Named(part, of) => format!("{}, each with {}", part.table(), of.wanted()),
            Self::Either(kinds) => {
                let mut each: Vec<String> = Vec::new();
                for kind in *kinds {
                    each.push(match kind {
                        Self::List(of, ..) if each.contains(&of.wanted()) => {
                            "several, in square brackets with commas between".to_owned()
                        }
                        other => other.wanted(),
                    });
                }
                each.join("; or ")
            }
            Self::Table(section) => format!("a table of keys and values: [{}]", section.path),
            Self::Tables(section, _) => format!("a list of tables: [[{}]]", section.path),
        }
    }

    /// The type in a word or two, for a table of keys, with its unit.
    #[must_use]
    pub fn name(&self) -> String {
        match self {
            Self::Text => "text".to_owned(),
            Self::Flag => "true or false".to_owned(),
            Self::Date => "date".to_owned(),
            Self::Word(_) => "word".to_owned(),
            Self::Name(_) => "word or name".to_owned(),
            Self::Whole(..) => "whole number".to_owned(),
            Self::Length(_) => "length".to_owned(),
            Self::Mass(_) => "mass".to_owned(),
            Self::Quantity(quantity, _) if quantity.unit().is_empty() => "number".to_owned(),
            Self::Quantity(quantity, _) => format!("number, {}", quantity.unit()),
            Self::Point => "point [x, y]".to_owned(),
            Self::List(of, ..) => format!("list: {}", of.name()),
            Self::Named(part, of) => format!("by {}: {}", part.name(), of.name()),
            Self::Either(kinds) => {
                let each: Vec<String> = kinds.iter().map(Kind::name).collect();
                each.join(", or ")
            }
            Self::Table(_) => "section".to_owned(),
            Self::Tables(..) => "sections".to_owned(),
        }
    }

    /// The least and the most that may stand there, in words; empty where nothing is limited.
    #[must_use]
    pub fn range(&self, unit: LengthUnit) -> String {
        match self {
            Self::Whole(least, most) => format!("{least} to {most}"),
            Self::Length(limits) => limits.words(|mm| length(unit, mm)),
            Self::Mass(limits) => limits.words(|kg| format!("{} kg", short(kg))),
            Self::Quantity(quantity, limits) => limits.words(|v| quantity.show(v)),
            Self::List(of, ..) | Self::Named(_, of) => of.range(unit),
            Self::Either(kinds) => {
                let ranges = kinds.iter().map(|kind| kind.range(unit));
                ranges
                    .into_iter()
                    .find(|r| !r.is_empty())
                    .unwrap_or_default()
            }
            _ => String::new(),
        }
    }
}

impl KeyPart {
    /// In a word.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Corner => "corner",
            Self::Edge => "edge",
            Self::Diagonal => "diagonal",
            Self::Mark => "line of the drawing",
        }
    }

    const fn table(self) -> &'static str {
        match self {
            Self::Corner => "a table such as { 2 = 320 }, by corner",
            Self::Edge => "a table such as { \"1-2\" = 25 }, by edge",
            Self::Diagonal => "a table such as { AC = 2790, BD = 2786 }",
            Self::Mark => "a table such as { tape-1 = 2400 }",
        }
    }
}

/// Words in quotes, in a list.
fn quoted(words: &[&str]) -> String {
    let quoted: Vec<String> = words.iter().map(|word| format!("\"{word}\"")).collect();
    quoted.join(", ")
}
