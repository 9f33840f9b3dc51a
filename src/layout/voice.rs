//! Sizes of type, and paragraphs in which the numbers stand out: a word that begins with a digit is
//! set as a number, with the unit that hangs on it by a no-break space.

use super::item::{Anchor, Ink, Item, Typeface};
use super::typeface::POINT_MM;
use super::wrap::{Style, break_word};
use crate::document::block::Reading;
use crate::geom::Point;

/// Steps by which a page's words may shrink until everything is on it.
pub const STEPS: usize = 5;

/// The styles of a page.
#[derive(Clone, Copy, Debug)]
pub struct Type {
    /// Running words and the numbers in them.
    pub body: Voice,
    /// Small words: names of facts, heads of tables.
    pub small: Voice,
    /// Headings inside a page.
    pub heading: Voice,
    /// The page's title.
    pub title: Voice,
    /// The large figure of a tile.
    pub tile: Voice,
    /// No letter of a drawing is smaller, points.
    pub least_pt: f64,
    /// From one block to the next, mm.
    pub gap_mm: f64,
}

/// How words and the numbers among them are set.
#[derive(Clone, Copy, Debug)]
pub struct Voice {
    /// Words.
    pub words: Style,
    /// Numbers.
    pub numbers: Style,
}

/// A line of a paragraph: runs of one style with the place where each begins, mm.
#[derive(Clone, Debug, Default)]
struct SpokenLine {
    runs: Vec<(Style, f64, String)>,
    width: f64,
    leading: f64,
}

impl Type {
    /// The styles for a way of reading at a step of shrinking. Judgement on the sizes: read at arm's
    /// length words want 9 pt and numbers 12 pt, read aloud by two people 14 pt.
    #[must_use]
    pub fn of(reading: Reading, step: usize) -> Self {
        let pick = |sizes: [f64; STEPS]| sizes[step.min(STEPS - 1)];
        let tight = pick([1.26, 1.2, 1.15, 1.1, 1.06]);
        let [words, numbers, small, heading, title] = match reading {
            Reading::Bench => [
                pick([10.5, 10.0, 9.5, 9.2, 9.0]),
                12.0,
                9.0,
                pick([12.5, 12.0, 11.5, 11.0, 10.5]),
                pick([18.0, 17.0, 16.0, 15.0, 14.0]),
            ],
            Reading::Helper => [
                14.0,
                14.0,
                14.0,
                pick([17.0, 16.0, 15.0, 14.5, 14.5]),
                pick([20.0, 19.0, 18.0, 17.0, 16.0]),
            ],
            Reading::Desk => [9.0, 9.0, 9.0, 11.0, 14.0],
        };
        let style = |face, size: f64| Style::new(face, size, size * tight * POINT_MM);
        let plain = style(Typeface::Regular, words);
        let loud = if reading == Reading::Desk {
            plain
        } else {
            style(Typeface::Bold, numbers)
        };
        let accent = |size| style(Typeface::Bold, size).inked(Ink::Accent);
        let low = style(Typeface::Regular, small);
        Self {
            body: Voice {
                words: plain,
                numbers: loud,
            },
            small: Voice::even(low),
            heading: Voice::even(accent(heading)),
            title: Voice::even(accent(title)),
            tile: Voice::even(style(Typeface::Bold, 18.0)),
            least_pt: if reading == Reading::Helper {
                14.0
            } else {
                9.0
            },
            gap_mm: pick([2.6, 2.2, 1.8, 1.5, 1.2]),
        }
    }
}

impl Voice {
    /// Words and numbers in one style.
    #[must_use]
    pub const fn even(style: Style) -> Self {
        Self {
            words: style,
            numbers: style,
        }
    }

    /// The same with its words in bold.
    #[must_use]
    pub const fn bold(self) -> Self {
        Self {
            words: self.words.bold(),
            numbers: self.numbers.bold(),
        }
    }

    /// The same in another colour.
    #[must_use]
    pub const fn inked(self, ink: Ink) -> Self {
        Self {
            words: self.words.inked(ink),
            numbers: self.numbers.inked(ink),
        }
    }

    /// Height of a text at a width, mm.
    #[must_use]
    pub fn height_mm(&self, text: &str, width_mm: f64) -> f64 {
        self.lines(text, width_mm).iter().map(|l| l.leading).sum()
    }

    /// Width of a text on one line, mm.
    #[must_use]
    pub fn width_mm(&self, text: &str) -> f64 {
        let lines = self.lines(text, f64::INFINITY);
        lines.iter().map(|l| l.width).fold(0.0, f64::max)
    }

    /// The text from a top corner (left, right or the middle, as `anchor` says), and its height.
    #[must_use]
    pub fn set(&self, text: &str, top: Point, width_mm: f64, anchor: Anchor) -> (Vec<Item>, f64) {
        let (mut items, mut down) = (Vec::new(), 0.0);
        for line in self.lines(text, width_mm) {
            let left = match anchor {
                Anchor::Start => 0.0,
                Anchor::Middle => -line.width / 2.0,
                Anchor::End => -line.width,
            };
            let tallest = line.runs.iter().map(|(s, ..)| s.base_mm());
            let base = top.y - down - tallest.fold(0.0, f64::max);
            for (style, x, words) in line.runs {
                let at = Point::new(top.x + left + x, base);
                items.push(style.text(words, at, Anchor::Start).into());
            }
            down += line.leading;
        }
        (items, down)
    }

    fn lines(&self, text: &str, width_mm: f64) -> Vec<SpokenLine> {
        let mut lines = Vec::new();
        for paragraph in text.split('\n') {
            let mut line = SpokenLine::default();
            for (word, style) in self.words_of(paragraph, width_mm) {
                if !line.takes(word, &style, width_mm) {
                    lines.push(std::mem::take(&mut line));
                }
                if style.width_mm(word) <= width_mm {
                    line.push(word, style);
                    continue;
                }
                let mut whole = Vec::new();
                let rest = break_word(word, &style, width_mm, &mut whole);
                for part in whole {
                    line.push(&part, style);
                    lines.push(std::mem::take(&mut line));
                }
                line.push(&rest, style);
            }
            line.leading = line.leading.max(self.words.leading_mm);
            lines.push(line);
        }
        lines
    }

    /// The words of a paragraph with their styles. A figure wider than the line lets go of its unit.
    fn words_of<'a>(&self, paragraph: &'a str, width_mm: f64) -> Vec<(&'a str, Style)> {
        let words = paragraph.split(' ').filter(|w| !w.is_empty());
        let parts = words.flat_map(|word| {
            let style = self.style_of(word);
            if style.width_mm(word) <= width_mm {
                vec![(word, style)]
            } else {
                word.split('\u{a0}').map(|part| (part, style)).collect()
            }
        });
        parts.collect()
    }

    fn style_of(&self, word: &str) -> Style {
        if is_figure(word) {
            self.numbers
        } else {
            self.words
        }
    }
}

/// True for a word that stands out as a number: it, or a part of it, begins with a digit.
#[must_use]
pub fn is_figure(word: &str) -> bool {
    let opening = ['(', '±', '−', '≤', '≥', 'Ø', '×', '“', '"'];
    word.split('\u{a0}').any(|part| {
        let bare = part.trim_start_matches(opening);
        bare.starts_with(|c: char| c.is_ascii_digit())
    })
}

impl SpokenLine {
    fn takes(&self, word: &str, style: &Style, width_mm: f64) -> bool {
        self.runs.is_empty()
            || self.width + style.width_mm(" ") + style.width_mm(word) <= width_mm + 1e-9
    }

    /// Adds a word; a word in the style of the last run goes on in it.
    fn push(&mut self, word: &str, style: Style) {
        let space = if self.runs.is_empty() {
            0.0
        } else {
            style.width_mm(" ")
        };
        match self.runs.last_mut() {
            Some((last, _, words)) if *last == style => {
                words.push(' ');
                words.push_str(word);
            }
            _ => self.runs.push((style, self.width + space, word.to_owned())),
        }
        self.width += space + style.width_mm(word);
        self.leading = self.leading.max(style.leading_mm);
    }
}
