//! Bytes as a job file: they are read or refused, and what is found is drawn into the text.
#![no_main]

use kerfwright::cli::files::text;
use kerfwright::cli::report::{Colour, draw};
use kerfwright::diag::Severity;
use kerfwright::job::read;
use libfuzzer_sys::fuzz_target;

fuzz_target!(|bytes: &[u8]| {
    let Ok(text) = text(bytes.to_vec()) else {
        return;
    };
    let found = match read(&text) {
        Ok((_, remarks)) => remarks,
        Err(faults) => {
            let refused = faults.iter().any(|f| f.severity == Severity::Fault);
            assert!(refused, "refused without a fault");
            faults
        }
    };
    for one in &found {
        let (start, end) = one.span.unwrap_or((0, 0));
        assert!(start <= end && end <= text.len(), "{}: {start}..{end}", one.key);
    }
    let drawn = draw("job.toml", &text, &found, Colour::Plain);
    assert!(found.is_empty() || drawn.contains("job.toml"), "nothing is drawn");
});
