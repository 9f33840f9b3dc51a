//! HTML as it is written: elements, attributes and words, so that it is well-formed XML as well.

use std::fmt::Write;

use crate::layout::voice::is_figure;
use crate::render::svg::escaped;

/// Markup under way.
#[derive(Debug, Default)]
pub(super) struct Markup(String);

/// An attribute: its name and its value.
pub(super) type Attribute<'a> = (&'a str, &'a str);

impl Markup {
    /// Begins an element.
    pub(super) fn open(&mut self, tag: &str, attributes: &[Attribute<'_>]) {
        self.begin(tag, attributes);
        self.0.push('>');
    }

    /// Ends an element.
    pub(super) fn close(&mut self, tag: &str) {
        let _ = writeln!(self.0, "</{tag}>");
    }

    /// An element without content.
    pub(super) fn void(&mut self, tag: &str, attributes: &[Attribute<'_>]) {
        self.begin(tag, attributes);
        self.0.push_str("/>");
    }

    /// An element that holds words.
    pub(super) fn element(&mut self, tag: &str, attributes: &[Attribute<'_>], words: &str) {
        self.open(tag, attributes);
        self.text(words);
        self.close(tag);
    }

    /// Words as they are.
    pub(super) fn text(&mut self, words: &str) {
        self.0.push_str(&escaped(words));
    }

    /// Words in which the numbers stand out, line by line.
    pub(super) fn loud(&mut self, words: &str) {
        for (i, line) in words.split('\n').enumerate() {
            if i > 0 {
                self.0.push_str("<br/>");
            }
            let mut before = "";
            for word in line.split(' ').filter(|w| !w.is_empty()) {
                self.0.push_str(before);
                self.word(word);
                before = " ";
            }
        }
    }

    fn word(&mut self, word: &str) {
        let word_escaped = escaped(word);
        if is_figure(word) {
            let _ = write!(self.0, "<b>{word_escaped}</b>");
        } else {
            self.0.push_str(&word_escaped);
        }
    }

    /// What is HTML already.
    pub(super) fn raw(&mut self, html: &str) {
        self.0.push_str(html);
    }

    /// All that was written.
    pub(super) fn finish(self) -> String {
        self.0
    }

    fn begin(&mut self, tag: &str, attributes: &[Attribute<'_>]) {
        let _ = write!(self.0, "<{tag}");
        for (name, value) in attributes {
            let _ = write!(self.0, " {name}=\"{}\"", escaped(value));
        }
    }
}
