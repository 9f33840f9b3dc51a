//! One value of the job file, with its key and its place in the text.

use toml::Spanned;
use toml::de::{DeTable, DeValue};

use super::ledger::{Ledger, Span, Units};
use super::quantity::{Limits, Quantity, from_to};
use super::reader::Reader;
use super::words::{nearest, short};
use crate::geom::Point;
use crate::units::{LengthUnit, Mass, UnitFault, parse_length_mm, parse_mass};

/// The farthest a coordinate may be from the origin, mm (judgement: no worktop reaches so far).
const FARTHEST_MM: f64 = 20_000.0;
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
    pub(super) span: Span,
    pub(super) ledger: &'a Ledger,
    value: &'a DeValue<'a>,
}

impl<'a> Given<'a> {
    pub(super) fn new(key: String, value: &'a Spanned<DeValue<'a>>, ledger: &'a Ledger) -> Self {
        let span = Some((value.span().start, value.span().end));
        Self {
            key,
            span,
            ledger,
            value: value.get_ref(),
        }
    }

    /// Notes a fault at this value.
    pub(super) fn fault<T>(&self, message: &str, hint: impl Into<String>) -> Option<T> {
        let message = format!("{} {message}", self.key);
        self.ledger.fault(&self.key, self.span, message, hint);
        None
    }

    /// A length in mm: a bare number in the unit of the job, or a text with its own unit.
    pub(super) fn length(&self, limits: Limits) -> Option<f64> {
        let mm = match self.value {
            DeValue::String(text) => self.length_text(text)?,
            _ => self.bare("a length")? * self.ledger.length_unit().in_mm(),
        };
        let bare = !matches!(self.value, DeValue::String(_));
        if bare && self.ledger.units() == Units::Unclear {
            return Some(mm);
        }
        let show = |mm| self.ledger.length(mm);
        match limits.broken_by(mm, show) {
            Some(why) => self.fault(&format!("is {why}"), self.unit_hint()),
            None => Some(mm),
        }
    }

    /// A mass: a text with its unit, or in a job in millimetres a bare number of kilograms.
    pub(super) fn mass(&self, limits_kg: Limits) -> Option<Mass> {
        let mass = match self.value {
            DeValue::String(text) if self.needs_unit(text) => return self.mass_unit_fault(),
            DeValue::String(text) => match parse_mass(text) {
                Ok(mass) => mass,
                Err(_) => {
                    return self.wrong(
                        &format!("\"{text}\""),
                        "a mass such as \"30 kg\" or \"66 lb\"",
                    );
                }
            },
            _ => {
                let kg = self.bare("a mass such as \"30 kg\"")?;
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
    pub(super) fn quantity(&self, quantity: &Quantity, limits: Limits) -> Option<f64> {
        let value = match self.value {
            DeValue::String(text) => match quantity.parse(text) {
                Ok(value) => value,
                Err(wanted) => return self.wrong(&format!("\"{text}\""), &wanted),
            },
            _ => self.bare("a number")?,
        };
        match limits.broken_by(value, |v| quantity.show(v)) {
            Some(why) => self.fault(&format!("is {why}"), "check the number and its unit"),
            None => Some(value),
        }
    }

    /// A whole number.
    pub(super) fn whole(&self, least: i64, most: i64) -> Option<i64> {
        let DeValue::Integer(digits) = self.value else {
            return self.wrong(self.kind(), "a whole number");
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
            return self.wrong(self.kind(), "a text in quotes");
        };
        if let Some(odd) = text.chars().find(|c| unprintable(*c)) {
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
            _ => self.wrong(self.kind(), "true or false, without quotes"),
        }
    }

    /// A date as `YYYY-MM-DD`.
    pub(super) fn date(&self) -> Option<String> {
        match self.value {
            DeValue::Datetime(moment) if moment.time.is_none() && moment.offset.is_none() => {
                moment.date.map(|date| date.to_string())
            }
            _ => self.wrong(
                self.kind(),
                "a date without quotes and without a time, such as 2026-11-30",
            ),
        }
    }

    /// One of several words.
    pub(super) fn choice<T: Copy>(&self, words: &[(&str, T)]) -> Option<T> {
        let text = self.text()?;
        if let Some((_, value)) = words.iter().find(|(word, _)| *word == text) {
            return Some(*value);
        }
        let known: Vec<&str> = words.iter().map(|w| w.0).collect();
        let hint = match nearest(text, known.iter().copied()) {
            Some(near) => format!("did you mean \"{near}\"? It can be {}", known.join(", ")),
            None => format!("it can be {}", known.join(", ")),
        };
        self.fault(&format!("is \"{text}\", which is not known"), hint)
    }

    /// A list of `least` to `most` values.
    pub(super) fn list(&self, least: usize, most: usize) -> Option<Vec<Given<'a>>> {
        let DeValue::Array(items) = self.value else {
            return self.wrong(self.kind(), "a list in square brackets");
        };
        let count = items.len();
        if count < least || count > most {
            let wanted = match (least, most) {
                (a, b) if a == b => format!("it needs {a}"),
                (a, _) if count < a => format!("least {a}"),
                (_, b) => format!("most {b}"),
            };
            return self.fault(&format!("has {count} entries, {wanted}"), "check the list");
        }
        let entry = |(i, item)| Given::new(format!("{}[{i}]", self.key), item, self.ledger);
        Some(items.iter().enumerate().map(entry).collect())
    }

    /// A list, or one value standing for a list of one.
    pub(super) fn one_or_list(&self, most: usize) -> Option<Vec<Given<'a>>> {
        match self.value {
            DeValue::Array(_) => self.list(1, most),
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
        let pair = self.list(2, 2)?;
        let limits = from_to(-FARTHEST_MM, FARTHEST_MM);
        let xy: Vec<Option<f64>> = pair.iter().map(|v| v.length(limits)).collect();
        match xy[..] {
            [Some(x), Some(y)] => Some(Point::new(x, y)),
            _ => None,
        }
    }

    /// A list of points.
    pub(super) fn points(&self, least: usize, most: usize) -> Option<Vec<Point>> {
        let points: Vec<_> = self.list(least, most)?.iter().map(Given::point).collect();
        points.into_iter().collect()
    }

    /// A table, read by `read`, which names every key it knows by asking for it.
    pub(super) fn table<T>(&self, read: impl FnOnce(&mut Reader<'a>) -> T) -> Option<T> {
        match self.value {
            DeValue::Table(table) => Some(self.reader(table).finish_with(read)),
            _ => self.wrong(self.kind(), "a table of keys and values"),
        }
    }

    /// A table whose keys are names of the user's figure: each key's place and its value.
    pub(super) fn entries(&self) -> Option<Vec<(&'a str, Span, Given<'a>)>> {
        let DeValue::Table(table) = self.value else {
            return self.wrong(self.kind(), "a table such as { 2 = 320 }");
        };
        let entry = |(key, value): (&'a Spanned<_>, &'a _)| {
            let name: &'a std::borrow::Cow<'a, str> = key.get_ref();
            let span = Some((key.span().start, key.span().end));
            let path = format!("{}.{name}", self.key);
            (name.as_ref(), span, Given::new(path, value, self.ledger))
        };
        Some(table.iter().map(entry).collect())
    }

    /// A bare number that a plain percentage or ratio was written as.
    pub(super) fn bare_number(&self) -> Option<f64> {
        match self.value {
            DeValue::Integer(_) | DeValue::Float(_) => self.bare("a number"),
            _ => None,
        }
    }

    fn reader(&self, table: &'a DeTable<'a>) -> Reader<'a> {
        Reader::new(self.key.clone(), Some(table), self.span, self.ledger)
    }

    fn bare(&self, wanted: &str) -> Option<f64> {
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
            _ => return self.wrong(self.kind(), wanted),
        };
        match number {
            Some(number) if f64::is_finite(number) => Some(number),
            _ => self.fault("is not a finite number", "write a plain number"),
        }
    }

    fn length_text(&self, text: &str) -> Option<f64> {
        let wanted = "a length such as \"640 mm\", \"2.2 m\" or \"25 1/4 in\"";
        match parse_length_mm(text, self.ledger.length_unit()) {
            Ok(mm) => Some(mm),
            Err(UnitFault::NotANumber) => self.wrong(&format!("\"{text}\""), wanted),
            Err(UnitFault::UnknownUnit) => self.fault(
                &format!("is \"{text}\", whose unit is not known"),
                "lengths can be in mm, cm, m, in or ft",
            ),
            Err(UnitFault::NotFinite) => self.fault(
                &format!("is \"{text}\", which is not a finite number"),
                wanted,
            ),
        }
    }

    fn needs_unit(&self, text: &str) -> bool {
        let inches = self.ledger.units() == Units::Known(LengthUnit::Inch);
        inches && !text.chars().any(char::is_alphabetic)
    }

    fn mass_unit_fault<T>(&self) -> Option<T> {
        self.fault(
            "has no unit: in a job in inches it could be kilograms or pounds",
            "write it as \"66 lb\" or \"30 kg\"",
        )
    }

    /// The wrong kind of thing altogether.
    pub(super) fn wrong<T>(&self, is: &str, wanted: &str) -> Option<T> {
        self.fault(&format!("is {is}"), format!("write {wanted}"))
    }

    fn unit_hint(&self) -> &'static str {
        match self.ledger.length_unit() {
            LengthUnit::Millimetre => "check the number and its unit: a bare number is in mm",
            LengthUnit::Inch => "check the number and its unit: a bare number is in inches",
        }
    }

    fn kind(&self) -> &'static str {
        match self.value {
            DeValue::String(_) => "a text",
            DeValue::Integer(_) | DeValue::Float(_) => "a number",
            DeValue::Boolean(_) => "true or false",
            DeValue::Datetime(_) => "a date or time",
            DeValue::Array(_) => "a list",
            DeValue::Table(_) => "a table",
        }
    }
}

/// Control characters, and the invisible ones that reorder or hide text.
fn unprintable(c: char) -> bool {
    c.is_control()
        || matches!(c, '\u{200B}'..='\u{200F}' | '\u{2028}'..='\u{202E}' | '\u{2066}'..='\u{2069}' | '\u{FEFF}')
}
