//! The program: the only code that knows files, a terminal and the environment.
//!
//! | file | command |
//! |---|---|
//! | [`sheet`] | `kerfwright sheet JOB` |
//! | [`plan`] | `kerfwright plan JOB` |
//! | [`check`] | `kerfwright check JOB` |
//! | [`draw`] | `kerfwright draw JOB` |
//! | [`template`] | `kerfwright template JOB` |
//! | [`weigh`] | `kerfwright weigh JOB` |
//! | [`hazards`] | `kerfwright hazards` |
//! | [`explain`] | `kerfwright explain ID` |
//! | [`watch`], [`compare`], [`batch`] | `kerfwright watch JOB`, `compare A B`, `batch FOLDER` |
//! | [`shell`] | `kerfwright completions SHELL`, `kerfwright man` |
//! | [`new`] | `kerfwright new FILE` |
//! | [`desk`] | `kerfwright desk [FILE]` |
//! | [`keys`] | `kerfwright keys`, `kerfwright schema` |
//! | [`fit`] | `kerfwright fit JOB` |
//! | [`places`] | `kerfwright places JOB` |
//! | `command`, `ending`, `planned` | the command line; how a command ends; a job read and planned |
//! | `output`, `progress`, `summary`, `assumed` | where to; what is shown meanwhile; the figures of a plan; what an assumed value changes |
//! | [`report`] | faults and remarks as a person reads them |
//! | [`files`], [`write`](mod@write) | job texts in, whole files out |
//!
//! Exit 0: done. Exit 1: the job is at fault or holds a stop, or an id is not known. Exit 2: the command line or the
//! program is at fault, or a file could not be read or written.

mod assumed;
pub mod batch;
pub mod check;
mod colour;
mod command;
pub mod compare;
pub mod desk;
pub mod draw;
mod drawings;
mod ending;
pub mod explain;
mod explain_sources;
pub mod files;
pub mod fit;
pub mod hazards;
pub mod keys;
pub mod new;
mod no_fit;
mod output;
pub mod places;
pub mod plan;
mod planned;
mod progress;
pub mod report;
pub mod sheet;
pub mod shell;
mod summary;
pub mod template;
mod typeface;
pub mod watch;
pub mod weigh;
pub mod write;

pub use command::run;
pub use ending::{Ending, JobArgument};

use no_fit::no_fit_words;
use planned::{conclude, conclude_all, own_failure, planned, read_job, stops};
