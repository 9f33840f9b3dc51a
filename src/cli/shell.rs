//! `kerfwright completions SHELL` and `kerfwright man`: for the shell and for the manual.

use clap_complete::Shell;

use super::{Ending, files, own_failure};

/// What `completions` can be told.
#[derive(Debug, clap::Args)]
pub struct Options {
    /// The shell
    #[arg(value_name = "SHELL", value_enum)]
    shell: Shell,
}

/// Prints what the shell needs to complete commands and options.
#[must_use]
pub fn completions(options: &Options, command: &mut clap::Command) -> Ending {
    let mut bytes = Vec::new();
    clap_complete::generate(options.shell, command, "kerfwright", &mut bytes);
    put(&bytes)
}

/// Prints the manual page.
#[must_use]
pub fn man(command: clap::Command) -> Ending {
    let mut bytes = Vec::new();
    match clap_mangen::Man::new(command).render(&mut bytes) {
        Ok(()) => put(&bytes),
        Err(_) => Ending::OwnFailure,
    }
}

fn put(bytes: &[u8]) -> Ending {
    match files::put(bytes) {
        Ok(()) => Ending::Done,
        Err(fault) => own_failure(&fault),
    }
}
