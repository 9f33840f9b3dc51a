//! The screens of a document: a section each, and one cut a screen.

use crate::document::block::{Block, Card, Document, DocumentPart, Reading, Section};
use crate::words::Writer;

/// What is seen at once.
#[derive(Clone, Debug)]
pub(super) struct Screen<'a> {
    /// Its name in links.
    pub id: String,
    /// The section it shows, or shows a part of.
    pub section: &'a Section,
    /// Numbers of the cuts it is about.
    pub numbers: &'a [usize],
    /// Its name in the list of contents.
    pub name: String,
    /// What it holds.
    pub content: Content<'a>,
}

/// What a screen holds.
#[derive(Clone, Copy, Debug)]
pub(super) enum Content<'a> {
    /// Blocks, their title among them.
    Blocks(&'a [Block]),
    /// A card.
    Card(&'a Card),
}

impl Screen<'_> {
    /// True for the screen that is read with the helper.
    pub(super) fn is_helpers(&self) -> bool {
        self.section.reading == Reading::Helper
    }
}

/// The screens in the order they are gone through; cuts in the order of their numbers.
pub(super) fn screens(document: &Document) -> Vec<Screen<'_>> {
    let sections = document.sections.iter().enumerate();
    let mut all: Vec<Screen<'_>> = sections
        .flat_map(|(index, section)| of_section(document, section, index + 1))
        .collect();
    let from = all.iter().position(|s| !s.numbers.is_empty());
    let to = all.iter().rposition(|s| !s.numbers.is_empty());
    if let (Some(from), Some(to)) = (from, to) {
        all[from..=to].sort_by_key(|s| s.numbers.iter().min().copied());
    }
    all
}

fn of_section<'a>(document: &Document, section: &'a Section, number: usize) -> Vec<Screen<'a>> {
    let writer = Writer::new(document.system, section.language);
    let letter = match section.part {
        DocumentPart::Bench => 'b',
        DocumentPart::Annex => 'a',
    };
    let id = format!("{letter}{number}");
    let cards: Option<Vec<&Card>> = section.blocks.iter().map(card).collect();
    let Some(cards) = cards else {
        return vec![Screen {
            id,
            section,
            numbers: numbers(&section.blocks),
            name: writer.say(&section.name),
            content: Content::Blocks(&section.blocks),
        }];
    };
    let each = cards.into_iter().enumerate();
    each.map(|(i, card)| Screen {
        id: format!("{id}.{}", i + 1),
        section,
        numbers: &card.numbers,
        name: writer.say(&card.title),
        content: Content::Card(card),
    })
    .collect()
}

const fn card(block: &Block) -> Option<&Card> {
    match block {
        Block::Card(card) => Some(card),
        _ => None,
    }
}

fn numbers(blocks: &[Block]) -> &[usize] {
    let titles = blocks.iter().find_map(|block| match block {
        Block::Title(numbers, _) => Some(&numbers[..]),
        _ => None,
    });
    titles.unwrap_or_default()
}
