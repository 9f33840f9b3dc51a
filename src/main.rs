//! The program `kerfwright`. Everything it does is in the library of the same name.

use std::process::ExitCode;

fn main() -> ExitCode {
    kerfwright::cli::run()
}
