//! The depths, one after another.

use super::Pass;

/// A scoring pass, then equal steps no deeper than `step`, the last to `full`; depths in mm.
///
/// When the score is no shallower than the full depth, one pass does it.
#[must_use]
pub fn depths(score: f64, step: f64, full: f64) -> Vec<Pass> {
    if score >= full {
        return vec![Pass {
            number: 1,
            depth: full,
        }];
    }
    // A step over by rounding alone is not a step more.
    let steps = ((full - score) / step - 1e-9).ceil().clamp(1.0, 500.0);
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
    let count = steps as usize;
    let depth = |i: usize| {
        #[allow(clippy::cast_precision_loss)]
        let share = i as f64 / steps;
        score + (full - score) * share
    };
    (0..=count)
        .map(|i| Pass {
            number: i + 1,
            depth: depth(i),
        })
        .collect()
}
