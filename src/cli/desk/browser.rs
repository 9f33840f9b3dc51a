//! Opening an address in the user's web browser.

use std::process::{Command, Stdio};

/// Opens an address with what the system has for that. When it has nothing, the address that was printed
/// is there to be opened by hand.
pub(super) fn open(address: &str) {
    let mut command = if cfg!(target_os = "macos") {
        Command::new("open")
    } else if cfg!(windows) {
        let mut command = Command::new("rundll32");
        command.arg("url.dll,FileProtocolHandler");
        command
    } else {
        Command::new("xdg-open")
    };
    command.arg(address);
    command.stdin(Stdio::null());
    command.stdout(Stdio::null()).stderr(Stdio::null());
    let _ = command.spawn();
}
