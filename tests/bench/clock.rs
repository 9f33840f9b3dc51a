//! Time that the processor has spent, so that what else a machine does is not counted.

use std::time::Duration;

/// What this thread has taken of the processor so far; wall-clock time where the system does not tell.
pub(crate) fn cpu() -> Duration {
    let told = std::fs::read_to_string("/proc/thread-self/schedstat").ok();
    let nanoseconds = told.and_then(|t| t.split(' ').next()?.parse().ok());
    nanoseconds.map_or_else(since_start, Duration::from_nanos)
}

fn since_start() -> Duration {
    static START: std::sync::LazyLock<std::time::Instant> =
        std::sync::LazyLock::new(std::time::Instant::now);
    START.elapsed()
}

/// What a piece of work takes, and what it gives.
pub(crate) fn timed<T>(work: impl FnOnce() -> T) -> (Duration, T) {
    let start = cpu();
    let given = work();
    (cpu().saturating_sub(start), given)
}

pub(crate) fn ms(time: Duration) -> f64 {
    time.as_secs_f64() * 1000.0
}
