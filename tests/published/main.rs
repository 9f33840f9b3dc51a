//! Somebody else's answers: every check has its source beside it and how sure the source is.
//!
//! R: the source's own text was read. Q: quoted by another document. C: computed from a published
//! figure. M: from memory, not confirmed. Tolerances are half the last digit printed.

mod disc;
mod electricity;
mod noise;
mod protector;
mod respirator;
mod silica;
mod slurry;
mod survey;
mod vibration;

/// Fails unless a value rounds to what the source prints with this many decimals.
#[track_caller]
fn printed(value: f64, expected: f64, decimals: i32) {
    let half = 0.5 * 10_f64.powi(-decimals);
    assert!(
        (value - expected).abs() <= half + 1e-9,
        "{value} does not print as {expected}"
    );
}
