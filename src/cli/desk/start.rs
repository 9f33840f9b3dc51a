//! Opens the form in the browser and serves it until it is closed.

use std::path::PathBuf;

use crate::cli::desk::door::Door;
use crate::cli::desk::file::OneFile;
use crate::cli::{Ending, files, own_failure};

use super::{browser, serve};

/// What `desk` can be told.
#[derive(Debug, clap::Args)]
pub struct Options {
    /// The job file; one that is not there yet is written by the first save
    #[arg(value_name = "FILE", default_value = "job.toml")]
    file: PathBuf,
    /// Only print the address, and leave it to you to open it
    #[arg(long)]
    no_open: bool,
}

/// Serves the page until it is ended from there, or with Ctrl-C.
#[must_use]
pub fn run(options: &Options) -> Ending {
    if options.file.as_os_str() == "-" {
        files::say("kerfwright: the desk needs a file that it can save; name one\n");
        return Ending::CommandAtFault;
    }
    let file = OneFile::at(&options.file);
    if let Err(fault) = file.read() {
        return own_failure(&fault);
    }
    let (listener, door) = match Door::open() {
        Ok(opened) => opened,
        Err(why) => {
            files::say(&format!("kerfwright: the desk cannot be opened: {why}\n"));
            return Ending::OwnFailure;
        }
    };
    let address = door.address();
    let told = format!(
        "The desk is open in your web browser. If it is not, open this address there:\n\n    {address}\n\n\
         It is for this machine alone. \"End\" on the page, or Ctrl-C here, ends it.\n"
    );
    if let Err(fault) = files::print(&told) {
        return own_failure(&fault);
    }
    if !options.no_open {
        browser::open(&address);
    }
    serve::serve(listener, door, file);
    Ending::Done
}
