//! `kerfwright explain sources`: what the figures rest on that nobody published, or that was not read.

use std::fmt::Write;

use super::explain::row;
use crate::tables::region::{RegionCode, RuleOrigin};
use crate::tables::{Provenance, Source, documents};

/// The kinds of source that are listed, the least sure first.
const LISTED: [Provenance; 4] = [
    Provenance::Memory,
    Provenance::Judgement,
    Provenance::Practice,
    Provenance::Computed,
];

/// Every source that is no published text, by kind; then what each region borrows and from whom.
///
/// ```
/// let words = kerfwright::cli::explain::sources();
/// assert!(words.contains("from memory, not confirmed"));
/// assert!(words.contains("Quebec"));
/// ```
#[must_use]
pub fn sources() -> String {
    let mut out = String::new();
    for kind in LISTED {
        let all: Vec<&Source> = documents::all().filter(|s| s.sure == kind).collect();
        let _ = writeln!(out, "{}: {}", kind.words(), all.len());
        for source in all {
            row(&mut out, source.document, source.what);
        }
    }
    for region in RegionCode::ALL {
        let rules = region.record().rules();
        let borrowed: Vec<_> = rules
            .iter()
            .filter(|rule| rule.1 == RuleOrigin::Borrowed)
            .collect();
        let _ = writeln!(
            out,
            "borrowed in {}: {} of {}",
            region.name(),
            borrowed.len(),
            rules.len()
        );
        for (name, _, source) in borrowed {
            row(&mut out, name, &source.cite());
        }
    }
    out
}
