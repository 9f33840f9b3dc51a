//! Quartz in the air as measured in studies. Quoted as measured: none of it predicts this job.

use std::sync::LazyLock;

use serde::{Deserialize, Serialize};

use super::Source;
use super::records::{Text, kept};

/// One measured row.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct MeasuredDust {
    /// Tool and stone.
    #[serde(deserialize_with = "kept")]
    pub work: Text,
    /// How the dust was held down.
    #[serde(deserialize_with = "kept")]
    pub control: Text,
    /// What was found, in the study's own measure.
    #[serde(deserialize_with = "kept")]
    pub found: Text,
    /// The study.
    pub source: &'static Source,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Rows {
    row: Vec<MeasuredDust>,
}

/// Every measured row, read from its file when it is first asked for.
#[must_use]
pub fn measured_dust() -> &'static [MeasuredDust] {
    static ROWS: LazyLock<Vec<MeasuredDust>> = LazyLock::new(|| read().unwrap_or_default());
    &ROWS
}

fn read() -> Result<Vec<MeasuredDust>, toml::de::Error> {
    toml::from_str(include_str!("records/measured-dust.toml")).map(|rows: Rows| rows.row)
}

#[cfg(test)]
mod tests {
    #[test]
    fn the_file_is_whole_and_nothing_more() {
        let read = super::read().map_err(|e| e.to_string());
        assert!(read.as_ref().is_ok_and(|rows| rows.len() > 5), "{read:?}");
    }
}
