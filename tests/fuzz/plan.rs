//! Bytes as a job file, planned where they are read: every number is one, and the plan replays.
#![no_main]

#[path = "../replay/mod.rs"]
mod replay;
#[path = "../robust/trial.rs"]
mod trial;

use libfuzzer_sys::fuzz_target;
use trial::{Depth, tried};

fuzz_target!(|bytes: &[u8]| {
    let trial = tried(bytes, Depth::Plan);
    assert!(trial.wrong.is_empty(), "{:?}", trial.wrong);
});
