//! A screen being written: who writes it, and the names under which its ticks are kept.

use super::markup::Markup;
use crate::document::block::Reading;
use crate::words::{Message, Writer};

/// A screen being written.
#[derive(Debug)]
pub(super) struct Setting {
    /// Writes values and messages.
    pub writer: Writer,
    /// How the screen is read.
    pub reading: Reading,
    /// The screen's name; its ticks are counted behind it.
    pub name: String,
    /// Ticks and blanks so far.
    pub kept: usize,
    /// What is written so far.
    pub markup: Markup,
}

impl Setting {
    /// Nothing written yet.
    pub(super) fn new(writer: Writer, reading: Reading, name: &str) -> Self {
        Self {
            writer,
            reading,
            name: name.to_owned(),
            kept: 0,
            markup: Markup::default(),
        }
    }

    /// Words of a message, the numbers standing out.
    pub(super) fn say(&mut self, message: &Message) {
        let words = self.writer.say(message);
        self.words(&words);
    }

    /// Words, the numbers standing out but at a desk.
    pub(super) fn words(&mut self, words: &str) {
        if self.reading == Reading::Desk {
            self.markup.text(words);
        } else {
            self.markup.loud(words);
        }
    }

    /// The name of the next tick or blank.
    pub(super) fn key(&mut self) -> String {
        self.kept += 1;
        format!("{}.{}", self.name, self.kept)
    }

    /// A box to tick; without words beside it a label says what it is.
    pub(super) fn tick(&mut self, label: Option<&str>) {
        let key = self.key();
        let mut attributes = vec![("type", "checkbox"), ("data-key", &*key)];
        attributes.extend(label.map(|words| ("aria-label", words)));
        self.markup.void("input", &attributes);
    }

    /// Room to write in.
    pub(super) fn blank(&mut self, key: &str, label: Option<&str>) {
        let mut attributes = vec![("type", "text"), ("autocomplete", "off"), ("data-key", key)];
        attributes.extend(label.map(|words| ("aria-label", words)));
        self.markup.void("input", &attributes);
    }
}
