//! `kerfwright new FILE`: a job file to fill in.

use std::path::PathBuf;

use super::{Ending, files, own_failure, write};
use crate::job::keys;
use crate::units::LengthUnit;

/// What `new` can be told.
#[derive(Debug, clap::Args)]
pub struct Options {
    /// The job file to write; it must not be there yet
    #[arg(value_name = "FILE")]
    file: PathBuf,
    /// Start from a whole job instead of an empty one
    #[arg(long, value_name = "NAME", value_enum)]
    like: Option<Like>,
    /// The unit of bare numbers
    #[arg(long, value_name = "UNIT", value_enum, default_value_t)]
    units: UnitName,
}

/// The whole jobs to start from.
#[derive(Clone, Copy, Debug, clap::ValueEnum)]
enum Like {
    /// A counter with a round end, cut outdoors with water, mm
    TeaCounter,
    /// A washstand with a bowl, shroud and extractor, inches
    Washstand,
    /// A weighed slab out of square, two corners cut off, mm
    GardenBench,
    /// A top for upstairs, with doors and a landing on the way in, mm
    UpstairsVanity,
}

#[derive(Clone, Copy, Debug, Default, clap::ValueEnum)]
enum UnitName {
    /// Millimetres
    #[default]
    Mm,
    /// Inches
    In,
}

impl Like {
    const fn text(self) -> &'static str {
        match self {
            Self::TeaCounter => include_str!("../../examples/tea-counter.toml"),
            Self::Washstand => include_str!("../../examples/washstand.toml"),
            Self::GardenBench => include_str!("../../examples/garden-bench.toml"),
            Self::UpstairsVanity => include_str!("../../examples/upstairs-vanity.toml"),
        }
    }
}

/// Writes the file and says what to do next.
#[must_use]
pub fn run(options: &Options) -> Ending {
    let path = &options.file;
    let name = files::shown(path);
    if path.symlink_metadata().is_ok() {
        files::say(&format!(
            "kerfwright: {name} is there already, and nothing was changed; give another name\n"
        ));
        return Ending::CommandAtFault;
    }
    let text = match (options.like, options.units) {
        (Some(like), _) => like.text().to_owned(),
        (None, UnitName::Mm) => keys::starter(LengthUnit::Millimetre),
        (None, UnitName::In) => keys::starter(LengthUnit::Inch),
    };
    if let Err(fault) = write::whole(path, text.as_bytes()) {
        return own_failure(&fault);
    }
    let next = match options.like {
        Some(_) => "Change it to what you measured",
        None => "Open it in a text editor and put your own values where a ? stands",
    };
    let told = format!(
        "{name}: written. {next}, save it, then:\n\n    kerfwright check {}\n",
        files::typed(path)
    );
    match files::print(&told) {
        Ok(()) => Ending::Done,
        Err(fault) => own_failure(&fault),
    }
}
