//! The program: the only code that knows files and a terminal.

pub mod report;
