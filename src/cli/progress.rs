//! What is shown on a terminal while something takes time.

use std::time::Duration;

use indicatif::{ProgressBar, ProgressStyle};

/// How often it is shown that something goes on (judgement: then a person begins to wonder).
const OFTEN: Duration = Duration::from_millis(500);

/// Does something and says meanwhile what, on a terminal only.
pub(super) fn during<T>(what: &'static str, act: impl FnOnce() -> T) -> T {
    let shown = ProgressBar::new_spinner().with_message(what);
    shown.enable_steady_tick(OFTEN);
    let answer = act();
    shown.finish_and_clear();
    answer
}

/// A bar for so many jobs, on a terminal only.
pub(super) fn bar(of: usize) -> ProgressBar {
    let style = ProgressStyle::with_template("{bar:30} {pos} of {len} jobs, {eta} to go");
    let style = style.unwrap_or_else(|_| ProgressStyle::default_bar());
    ProgressBar::new(of as u64).with_style(style)
}
