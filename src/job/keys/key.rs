//! What is known of one key of the job file: the types of the list.

use crate::job::quantity::{Limits, Quantity};
use crate::job::words::short;

/// One key of the job file, described once.
#[derive(Clone, Copy, Debug)]
pub struct Key {
    /// Its name, such as `kerf`.
    pub name: &'static str,
    /// What may stand there.
    pub kind: Kind,
    /// What holds when it is left out.
    pub left_out: LeftOut,
    /// What it is, in one line without a full stop.
    pub meaning: &'static str,
    /// A value as it is written in a job file in millimetres; empty for a section.
    pub example: &'static str,
}

/// What holds when a key is left out.
#[derive(Clone, Copy, Debug)]
pub enum LeftOut {
    /// Nothing can be planned without it.
    Needed,
    /// One of these keys is needed, this among them.
    OneOf(&'static str),
    /// Nothing is assumed; what follows from that.
    Open(&'static str),
    /// A fixed value is assumed, and why.
    Assumed(Plain, &'static str),
    /// It is worked out from something else, and how.
    Follows(&'static str),
}

/// A value that is assumed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Plain {
    /// A number in the first unit of its kind: mm, kg, or the quantity's own.
    Number(f64),
    /// A word.
    Word(&'static str),
    /// True or false.
    Flag(bool),
}

/// What may stand at a key.
#[derive(Clone, Copy, Debug)]
pub enum Kind {
    /// One line of text.
    Text,
    /// True or false.
    Flag,
    /// A date.
    Date,
    /// One of a few words.
    Word(fn() -> Vec<&'static str>),
    /// One of a few words, or a name of the user's own.
    Name(fn() -> Vec<&'static str>),
    /// A whole number, least and most.
    Whole(i64, i64),
    /// A length, limits in mm.
    Length(Limits),
    /// A mass, limits in kg.
    Mass(Limits),
    /// Another quantity, limits in its first unit.
    Quantity(&'static Quantity, Limits),
    /// A point `[x, y]`.
    Point,
    /// A list of so many.
    List(&'static Kind, usize, usize),
    /// A table whose keys are names of corners, edges, diagonals or lines of a drawing.
    Named(KeyPart, &'static Kind),
    /// One of several kinds.
    Either(&'static [Kind]),
    /// A section `[name]`, or a table in braces.
    Table(&'static Section),
    /// A list of at most so many sections `[[name]]`.
    Tables(&'static Section, usize),
}

/// The parts of a figure that have names.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum KeyPart {
    /// Corners: `A` or `2`.
    Corner,
    /// Edges: `AB` or `1-2`.
    Edge,
    /// The two diagonals of a slab.
    Diagonal,
    /// Lines of a drawing.
    Mark,
}

impl Key {
    /// A key, needed until said otherwise.
    pub(super) const fn new(
        name: &'static str,
        kind: Kind,
        meaning: &'static str,
        example: &'static str,
    ) -> Self {
        Self {
            name,
            kind,
            left_out: LeftOut::Needed,
            meaning,
            example,
        }
    }

    /// The same key, one of several of which one is needed.
    pub(super) const fn one_of(self, names: &'static str) -> Self {
        let left_out = LeftOut::OneOf(names);
        Self { left_out, ..self }
    }

    /// The same key, for which nothing is assumed.
    pub(super) const fn open(self, then: &'static str) -> Self {
        let left_out = LeftOut::Open(then);
        Self { left_out, ..self }
    }

    /// The same key, worked out when it is left out.
    pub(super) const fn follows(self, how: &'static str) -> Self {
        let left_out = LeftOut::Follows(how);
        Self { left_out, ..self }
    }

    /// The same key with an assumed number.
    pub(super) const fn number(self, value: f64, why: &'static str) -> Self {
        let left_out = LeftOut::Assumed(Plain::Number(value), why);
        Self { left_out, ..self }
    }

    /// The same key with an assumed word.
    pub(super) const fn word(self, word: &'static str, why: &'static str) -> Self {
        let left_out = LeftOut::Assumed(Plain::Word(word), why);
        Self { left_out, ..self }
    }

    /// The same key with an assumed answer.
    pub(super) const fn flag(self, flag: bool, why: &'static str) -> Self {
        let left_out = LeftOut::Assumed(Plain::Flag(flag), why);
        Self { left_out, ..self }
    }

    /// The same key where something else may stand.
    pub(super) const fn of(self, kind: Kind) -> Self {
        Self { kind, ..self }
    }

    /// The same key with another meaning and example.
    pub(super) const fn means(self, meaning: &'static str, example: &'static str) -> Self {
        Self {
            meaning,
            example,
            ..self
        }
    }

    /// Why something is assumed or worked out; empty when nothing is.
    #[must_use]
    pub const fn why(&self) -> &'static str {
        match self.left_out {
            LeftOut::Assumed(_, why) | LeftOut::Follows(why) => why,
            LeftOut::Needed | LeftOut::OneOf(_) | LeftOut::Open(_) => "",
        }
    }

    /// The assumed number; 0 where none is declared.
    pub(in crate::job) const fn assumed_number(&self) -> f64 {
        match self.left_out {
            LeftOut::Assumed(Plain::Number(number), _) => number,
            _ => 0.0,
        }
    }

    /// The assumed word; empty where none is declared.
    pub(in crate::job) const fn assumed_word(&self) -> &'static str {
        match self.left_out {
            LeftOut::Assumed(Plain::Word(word), _) => word,
            _ => "",
        }
    }

    /// The assumed answer; false where none is declared.
    pub(in crate::job) const fn assumed_flag(&self) -> bool {
        matches!(self.left_out, LeftOut::Assumed(Plain::Flag(true), _))
    }

    /// The assumed value with its unit, such as `2.2 mm`; empty where none is declared.
    #[must_use]
    pub fn assumed_value(&self) -> String {
        match (self.left_out, &self.kind) {
            (LeftOut::Assumed(Plain::Number(mm), _), Kind::Length(_)) => {
                format!("{} mm", short(mm))
            }
            (LeftOut::Assumed(Plain::Number(kg), _), Kind::Mass(_)) => format!("{} kg", short(kg)),
            (LeftOut::Assumed(Plain::Number(value), _), Kind::Quantity(quantity, _)) => {
                quantity.show(value)
            }
            (LeftOut::Assumed(Plain::Word(word), _), _) => word.to_owned(),
            _ => self.assumed_plain(),
        }
    }

    /// The assumed value as it is written in a job file in millimetres; empty where none is declared.
    #[must_use]
    pub fn assumed_plain(&self) -> String {
        match (self.left_out, &self.kind) {
            (LeftOut::Assumed(Plain::Number(kg), _), Kind::Mass(_)) => {
                format!("\"{} kg\"", short(kg))
            }
            (LeftOut::Assumed(Plain::Number(number), _), _) => short(number),
            (LeftOut::Assumed(Plain::Word(word), _), _) => format!("\"{word}\""),
            (LeftOut::Assumed(Plain::Flag(flag), _), _) => flag.to_string(),
            _ => String::new(),
        }
    }

    /// As it is written in a job file in millimetres, such as `kerf = 2.2`.
    #[must_use]
    pub fn line(&self) -> String {
        format!("{} = {}", self.name, self.example)
    }
}

/// A section of the job file and its keys.
#[derive(Clone, Copy, Debug)]
pub struct Section {
    /// Where it stands, such as `top.cutout`; empty for the file as a whole.
    pub path: &'static str,
    /// Its keys in the order they are best filled in.
    pub keys: &'static [Key],
}

impl Section {
    /// The key of a name.
    #[must_use]
    pub fn key(&self, name: &str) -> Option<&'static Key> {
        self.keys.iter().find(|key| key.name == name)
    }
}
