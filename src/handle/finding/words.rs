//! The words of findings.

use crate::diag::Finding;
pub(super) use crate::handle::words::Words;

pub(super) fn finding(id: &'static str, title: String, detail: String, source: &str) -> Finding {
    Finding {
        id,
        title,
        detail,
        source: source.to_owned(),
        said: None,
    }
}
