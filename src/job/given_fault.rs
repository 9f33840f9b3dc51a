//! What is said of one value that cannot be read, and what was probably meant.

use toml::Spanned;
use toml::de::DeValue;

use super::given::Given;
use super::keys::{Kind, TO_FILL};
use super::quantity::Limits;
use super::words::short;
use crate::units::LengthUnit;

impl Given<'_> {
    /// Whether it is still the sign of a starter file for a value to fill in.
    pub(super) fn is_to_fill(&self) -> bool {
        let is_name = matches!(self.kind, Kind::Text);
        !is_name && matches!(self.value, DeValue::String(text) if text.trim() == TO_FILL)
    }

    pub(super) fn not_filled<T>(&self) -> Option<T> {
        let wanted = self.kind.wanted();
        self.fault("is not filled in yet", format!("write {wanted}"))
    }

    /// Notes that the program reads a key otherwise than the list of keys says.
    pub(super) fn undeclared<T>(&self) -> Option<T> {
        self.fault(
            "is read otherwise than the list of keys says",
            "this is a fault of the program, not of the job file",
        )
    }

    /// A list of twice as many whole numbers as it needs, each pair joined by a decimal point.
    pub(super) fn with_points(&self, count: usize, least: usize, most: usize) -> Option<String> {
        let DeValue::Array(items) = self.value else {
            return None;
        };
        let whole = |item: &Spanned<DeValue<'_>>| match item.get_ref() {
            DeValue::Integer(digits) => Some(digits.as_str().to_owned()),
            _ => None,
        };
        let whole: Vec<String> = items.iter().map(whole).collect::<Option<_>>()?;
        let joined: Vec<String> = whole.chunks(2).map(|pair| pair.join(".")).collect();
        (count == 2 * least && least == most).then(|| format!("[{}]", joined.join(", ")))
    }

    /// What to write when a bare number is out of its limits and would be within them in another unit.
    pub(super) fn meant_unit(&self, mm: f64, limits: Limits) -> Option<String> {
        let own = self.ledger.length_unit();
        let bare = mm / own.in_mm();
        let others: [(&str, &str, f64); 3] = match own {
            LengthUnit::Millimetre => [
                ("metres", "m", 1000.0),
                ("centimetres", "cm", 10.0),
                ("inches", "in", 25.4),
            ],
            LengthUnit::Inch => [
                ("millimetres", "mm", 1.0),
                ("feet", "ft", 304.8),
                ("centimetres", "cm", 10.0),
            ],
        };
        let (name, unit, factor) = others
            .into_iter()
            .find(|(.., factor)| limits.allow(bare * factor))?;
        let (bare, own) = (short(bare), short(bare * factor / own.in_mm()));
        Some(format!(
            "is this in {name}? write \"{bare} {unit}\", or {own}"
        ))
    }

    pub(super) fn mass_unit_fault<T>(&self) -> Option<T> {
        self.fault(
            "has no unit: in a job in inches it could be kilograms or pounds",
            "write it as \"66 lb\" or \"30 kg\"",
        )
    }

    /// The wrong kind of thing altogether.
    pub(super) fn wrong<T>(&self, is: &str) -> Option<T> {
        if self.is_to_fill() {
            return self.not_filled();
        }
        let wanted = self.kind.wanted();
        self.fault(&format!("is {is}"), format!("write {wanted}"))
    }

    pub(super) fn unit_hint(&self) -> &'static str {
        match self.ledger.length_unit() {
            LengthUnit::Millimetre => "check the number and its unit: a bare number is in mm",
            LengthUnit::Inch => "check the number and its unit: a bare number is in inches",
        }
    }

    pub(super) fn is(&self) -> &'static str {
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
