//! One value of the job file, with its key and its place in the text.

use toml::Spanned;
use toml::de::DeValue;

use super::keys::{Kind, Word, elsewhere};
use super::ledger::{Ledger, TextRange, Units};
use super::quantity::from_to;
use super::words::{nearest, plain, short};
use crate::geom::Point;
use crate::units::{LengthUnit, Mass, UnitFault, parse_length_mm, parse_mass};

/// The coordinates of a point; at most so far from the origin, mm (judgement: no worktop reaches so far).
const PAIR: Kind = Kind::List(&Kind::Length(from_to(-20_000.0, 20_000.0)), 2, 2);
/// The longest text that is printed, characters (judgement: three lines of a title block).
const LONGEST_TEXT: usize = 300;

/// A value as typed.
///
/// Every reading method answers nothing after noting a fault, so that the reading goes on.
#[derive(Clone, Debug)]
pub(super) struct Given<'a> {
    /// The key, such as `disc[0].kerf`.
    pub(super) key: String,
    /// Where the value stands.
    pub(super) span: TextRange,
    pub(super) ledger: &'a Ledger,
    /// What may stand there by the list of keys.
    pub(super) kind: &'static Kind,
    pub(super) value: &'a DeValue<'a>,
}

impl<'a> Given<'a> {
    pub(super) fn new(
        key: String,
        kind: &'static Kind,
        value: &'a Spanned<DeValue<'a>>,
        ledger: &'a Ledger,
    ) -> Self {
        let span = Some((value.span().start, value.span().end));
        Self {
            key,
            span,
            ledger,
            kind,
            value: value.get_ref(),
        }
    }

    /// Notes a fault at this value.
    pub(super) fn fault<T>(&self, message: &str, hint: impl Into<String>) -> Option<T> {
        let message = format!("{} {message}", self.key);
        self.ledger.fault(&self.key, self.span, message, hint);
        None
    }

    /// The same value, read as one of the kinds that may stand there.
    fn as_kind(&self, kind: &'static Kind) -> Self {
        Self {
            kind,
            ..self.clone()
        }
    }

    /// A length in mm: a bare number in the unit of the job, or a text with its own unit.
    pub(super) fn length(&self) -> Option<f64> {
        let Some(limits) = self.kind.length() else {
            return self.undeclared();
        };
        let mm = match self.value {
            DeValue::String(text) => self.length_text(text)?,
            _ => self.bare()? * self.ledger.length_unit().in_mm(),
        };
        let bare = !matches!(self.value, DeValue::String(_));
        if bare && self.ledger.units() == Units::Unclear {
            return Some(mm);
        }
        let show = |mm| self.ledger.length(mm);
        match limits.broken_by(mm, show) {
            Some(why) if bare => {
                let hint = self
                    .meant_unit(mm, limits)
                    .unwrap_or_else(|| self.unit_hint().into());
                self.fault(&format!("is {why}"), hint)
            }
            Some(why) => self.fault(&format!("is {why}"), self.unit_hint()),
            None => Some(mm),
        }
    }

    /// A mass: a text with its unit, or in a job in millimetres a bare number of kilograms.
    pub(super) fn mass(&self) -> Option<Mass> {
        let Some(limits_kg) = self.kind.mass() else {
            return self.undeclared();
        };
        let mass = match self.value {
            DeValue::String(text) if self.needs_unit(text) => return self.mass_unit_fault(),
            DeValue::String(text) => match parse_mass(text) {
                Ok(mass) => mass,
                Err(_) => return self.wrong(&format!("\"{text}\"")),
            },
            _ => {
                let kg = self.bare()?;
                if self.ledger.units() == Units::Known(LengthUnit::Inch) {
                    return self.mass_unit_fault();
                }
                Mass::from_kg(kg)
            }
        };
        let show = |kg| format!("{} kg", short(kg));
        match limits_kg.broken_by(mass.kg(), show) {
            Some(why) => self.fault(&format!("is {why}"), "check the number and its unit"),
            None => Some(mass),
        }
    }

    /// Any other quantity: a bare number in its first unit, or a text with a unit.
    pub(super) fn quantity(&self) -> Option<f64> {
        let Some((quantity, limits)) = self.kind.quantity() else {
            return self.undeclared();
        };
        let value = match self.value {
            DeValue::String(text) => match quantity.parse(text) {
                Ok(value) => value,
                Err(_) => return self.wrong(&format!("\"{text}\"")),
            },
            _ => self.bare()?,
        };
        match limits.broken_by(value, |v| quantity.show(v)) {
            Some(why) => self.fault(&format!("is {why}"), "check the number and its unit"),
            None => Some(value),
        }
    }

    /// A whole number.
    pub(super) fn whole(&self) -> Option<i64> {
        let most = self.kind.whole().map_or(0, |(_, most)| most);
        self.whole_up_to(most)
    }

    /// A whole number, at most this.
    pub(super) fn whole_up_to(&self, most: i64) -> Option<i64> {
        let Some((least, _)) = self.kind.whole() else {
            return self.undeclared();
        };
        let DeValue::Integer(digits) = self.value else {
            return self.wrong(self.is());
        };
        match i64::from_str_radix(digits.as_str(), digits.radix()) {
            Ok(value) if value < least => {
                self.fault(&format!("is {value}, least {least}"), "check the number")
            }
            Ok(value) if value <= most => Some(value),
            _ => self.fault(&format!("is {digits}, most {most}"), "check the number"),
        }
    }

    /// One line of text.
    pub(super) fn text(&self) -> Option<&'a str> {
        let DeValue::String(text) = self.value else {
            return self.wrong(self.is());
        };
        if self.is_to_fill() {
            return self.not_filled();
        }
        if let Some(odd) = text.chars().find(|c| !is_printable(*c)) {
            let message = format!(
                "holds the character U+{:04X}, which cannot be printed",
                u32::from(odd)
            );
            return self.fault(&message, "write one line of plain text");
        }
        let count = text.chars().count();
        if count > LONGEST_TEXT {
            let message = format!("has {count} characters, most {LONGEST_TEXT}");
            return self.fault(&message, "shorten it");
        }
        Some(text)
    }

    /// True or false.
    pub(super) fn flag(&self) -> Option<bool> {
        match self.value {
            DeValue::Boolean(flag) => Some(*flag),
            _ => self.wrong(self.is()),
        }
    }

    /// A date as `YYYY-MM-DD`.
    pub(super) fn date(&self) -> Option<String> {
        match self.value {
            DeValue::Datetime(moment) if moment.time.is_none() && moment.offset.is_none() => {
                moment.date.map(|date| date.to_string())
            }
            _ => self.wrong(self.is()),
        }
    }

    /// One of several words, without regard to case.
    pub(super) fn word<T: Word>(&self) -> Option<T> {
        let text = self.text()?;
        let words = T::all();
        if let Some((_, one)) = words.iter().find(|(word, _)| plain(word) == plain(text)) {
            return Some(*one);
        }
        let known: Vec<&'static str> = words.iter().map(|w| w.0).collect();
        let meant = elsewhere(text, &known);
        let hint = match meant.or_else(|| nearest(&plain(text), known.iter().copied())) {
            Some(near) => format!("did you mean \"{near}\"? It can be {}", known.join(", ")),
            None => format!("it can be {}", known.join(", ")),
        };
        self.fault(&format!("is \"{text}\", which is not known"), hint)
    }

    /// A list of as many values as the list of keys says.
    pub(super) fn list(&self) -> Option<Vec<Given<'a>>> {
        let Some((of, least, most)) = self.kind.list() else {
            return self.undeclared();
        };
        let items = self.items(of)?;
        let count = items.len();
        if count < least || count > most {
            let wanted = match (least, most) {
                (a, b) if a == b => format!("it needs {a}"),
                (a, _) if count < a => format!("least {a}"),
                (_, b) => format!("most {b}"),
            };
            let hint = match self.with_points(count, least, most) {
                Some(meant) => format!("decimals stand behind a point: write {meant}"),
                None => format!("write {}", self.kind.wanted()),
            };
            return self.fault(&format!("has {count} entries, {wanted}"), hint);
        }
        Some(items)
    }

    /// The entries of a list, however many, each of a kind.
    fn items(&self, of: &'static Kind) -> Option<Vec<Given<'a>>> {
        let DeValue::Array(items) = self.value else {
            return self.wrong(self.is());
        };
        let entry = |(i, item)| Given::new(format!("{}[{i}]", self.key), of, item, self.ledger);
        Some(items.iter().enumerate().map(entry).collect())
    }

    /// How many entries a list has.
    pub(super) fn count(&self) -> Option<usize> {
        match self.value {
            DeValue::Array(items) => Some(items.len()),
            _ => None,
        }
    }

    /// The tables of a list of tables.
    pub(super) fn tables(&self) -> Option<Vec<Given<'a>>> {
        let (_, most) = self.kind.section()?;
        let items = self.items(self.kind)?;
        if items.len() > most {
            let message = format!("has {} entries, most {most}", items.len());
            return self.fault(&message, "leave out what is not needed");
        }
        Some(items)
    }

    /// A list, or one value standing for a list of one.
    pub(super) fn one_or_list(&self) -> Option<Vec<Given<'a>>> {
        match self.value {
            DeValue::Array(_) => self.list(),
            _ => Some(vec![self.clone()]),
        }
    }

    /// True for a list.
    pub(super) fn is_list(&self) -> bool {
        matches!(self.value, DeValue::Array(_))
    }

    /// True for a table.
    pub(super) fn is_table(&self) -> bool {
        matches!(self.value, DeValue::Table(_))
    }

    /// A point `[x, y]`.
    pub(super) fn point(&self) -> Option<Point> {
        let pair = self.as_kind(&PAIR).list()?;
        let xy: Vec<Option<f64>> = pair.iter().map(Given::length).collect();
        match xy[..] {
            [Some(x), Some(y)] => Some(Point::new(x, y)),
            _ => None,
        }
    }

    /// A list of points.
    pub(super) fn points(&self) -> Option<Vec<Point>> {
        let points: Vec<_> = self.list()?.iter().map(Given::point).collect();
        points.into_iter().collect()
    }

    /// A table whose keys are names of the user's figure: each key's place and its value.
    pub(super) fn entries(&self) -> Option<Vec<(&'a str, TextRange, Given<'a>)>> {
        let Some(of) = self.kind.named() else {
            return self.undeclared();
        };
        let DeValue::Table(table) = self.value else {
            return self.wrong(self.is());
        };
        let entry = |(key, value): (&'a Spanned<_>, &'a _)| {
            let name: &'a std::borrow::Cow<'a, str> = key.get_ref();
            let span = Some((key.span().start, key.span().end));
            let path = format!("{}.{name}", self.key);
            (
                name.as_ref(),
                span,
                Given::new(path, of, value, self.ledger),
            )
        };
        Some(table.iter().map(entry).collect())
    }

    /// A bare number that a plain percentage or ratio was written as.
    pub(super) fn bare_number(&self) -> Option<f64> {
        match self.value {
            DeValue::Integer(_) | DeValue::Float(_) => self.bare(),
            _ => None,
        }
    }

    fn bare(&self) -> Option<f64> {
        let number = match self.value {
            DeValue::Integer(digits) => i64::from_str_radix(digits.as_str(), digits.radix())
                .ok()
                .map(|whole| {
                    // Beyond 2^53 the nearest number that f64 holds will do: no limit is so wide.
                    #[allow(clippy::cast_precision_loss)]
                    let number = whole as f64;
                    number
                }),
            DeValue::Float(digits) => digits.as_str().parse().ok(),
            _ => return self.wrong(self.is()),
        };
        match number {
            Some(number) if f64::is_finite(number) => Some(number),
            _ => self.fault("is not a finite number", "write a plain number"),
        }
    }

    fn length_text(&self, text: &str) -> Option<f64> {
        match parse_length_mm(text, self.ledger.length_unit()) {
            Ok(mm) => Some(mm),
            Err(UnitFault::NotANumber) => self.wrong(&format!("\"{text}\"")),
            Err(UnitFault::UnknownUnit) => self.fault(
                &format!("is \"{text}\", whose unit is not known"),
                "lengths can be in mm, cm, m, in or ft",
            ),
            Err(UnitFault::DecimalComma) => self.fault(
                &format!("is \"{text}\", with a comma"),
                format!(
                    "decimals stand behind a point: write \"{}\"",
                    text.replace(',', ".")
                ),
            ),
            Err(UnitFault::NotFinite) => self.fault(
                &format!("is \"{text}\", which is not a finite number"),
                format!("write {}", self.kind.wanted()),
            ),
        }
    }

    fn needs_unit(&self, text: &str) -> bool {
        let inches = self.ledger.units() == Units::Known(LengthUnit::Inch);
        inches && !text.chars().any(char::is_alphabetic)
    }
}

/// Whether a character may be printed: no control character, and none of the invisible ones that
/// reorder or hide text.
#[must_use]
pub fn is_printable(c: char) -> bool {
    let hides = matches!(c, '\u{200B}'..='\u{200F}' | '\u{2028}'..='\u{202E}' | '\u{2066}'..='\u{2069}' | '\u{FEFF}');
    !c.is_control() && !hides
}
