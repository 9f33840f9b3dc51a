//! Slips of a tape that a person can make: a whole 10, 100 or 1000 misread, two digits changed over.

use crate::job::words::short;
use crate::units::LengthUnit;

/// A blunder that would explain a wrong tape.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Blunder {
    /// Read too long or too short by a round number.
    RoundNumber,
    /// Two neighbouring digits changed over.
    SwappedDigits,
}

/// Round numbers that are misread on a tape in mm: a centimetre, a decimetre, a metre (judgement).
const ROUND_MM: [f64; 3] = [10.0, 100.0, 1000.0];
/// The same on a tape in inches: an inch, ten inches, a foot (judgement).
const ROUND_INCHES: [f64; 3] = [1.0, 10.0, 12.0];
/// A blunder is told only when it is so many times what the tapes leave open (judgement: otherwise any
/// number is near a round one).
pub(super) const CLEAR: f64 = 2.0;

/// The blunder, and the length meant, that brings a tape within `open` of `needed`; lengths in mm, digits
/// as written in the unit.
#[must_use]
pub fn find(taped: f64, needed: f64, open: f64, unit: LengthUnit) -> Option<(Blunder, f64)> {
    let fits = |meant: &f64| {
        (meant - needed).abs() <= open.max(1e-6) && (meant - taped).abs() >= CLEAR * open
    };
    let round = match unit {
        LengthUnit::Millimetre => ROUND_MM,
        LengthUnit::Inch => ROUND_INCHES.map(|inches| inches * unit.in_mm()),
    };
    let misread = round.into_iter().flat_map(|by| [taped + by, taped - by]);
    let swapped = swaps(taped / unit.in_mm()).into_iter();
    let misread = misread.map(|meant| (Blunder::RoundNumber, meant));
    let swapped = swapped.map(|number| (Blunder::SwappedDigits, number * unit.in_mm()));
    misread
        .chain(swapped)
        .filter(|(_, meant)| fits(meant))
        .min_by(|a, b| (a.1 - needed).abs().total_cmp(&(b.1 - needed).abs()))
}

/// The numbers that come of a number by changing over two neighbouring digits before its point.
fn swaps(number: f64) -> Vec<f64> {
    let digits: Vec<char> = short(number).chars().collect();
    let whole = digits.iter().position(|c| *c == '.');
    let whole = whole.unwrap_or(digits.len());
    let swap = |i: usize| {
        let mut changed = digits.clone();
        changed.swap(i, i + 1);
        let text: String = changed.into_iter().collect();
        text.parse::<f64>().ok()
    };
    let pairs = (0..whole.saturating_sub(1)).filter(|i| digits[*i] != digits[i + 1]);
    pairs.filter_map(swap).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    const MM: LengthUnit = LengthUnit::Millimetre;

    #[test]
    fn blunders_are_recognised() {
        let blunder = |taped, needed| find(taped, needed, 2.0, MM);
        assert_eq!(
            blunder(2790.0, 2690.4),
            Some((Blunder::RoundNumber, 2690.0))
        );
        assert_eq!(
            blunder(2790.0, 2969.0),
            Some((Blunder::SwappedDigits, 2970.0))
        );
        assert_eq!(blunder(902.0, 920.5), Some((Blunder::SwappedDigits, 920.0)));
        assert_eq!(blunder(2790.0, 2746.0), None);
        // 25 1/4 in. read for 26 1/4 in., and 52 1/4 in.
        let inches = |taped: f64, needed: f64| {
            find(taped * 25.4, needed * 25.4, 0.5, LengthUnit::Inch).map(|s| s.0)
        };
        assert_eq!(inches(25.25, 26.25), Some(Blunder::RoundNumber));
        assert_eq!(inches(25.25, 52.25), Some(Blunder::SwappedDigits));
        assert_eq!(inches(25.25, 25.75), None);
    }

    #[test]
    fn when_much_is_open_nothing_is_told() {
        assert_eq!(find(2790.0, 2800.0, 6.0, MM), None);
        assert!(find(2790.0, 2890.0, 6.0, MM).is_some());
    }
}
