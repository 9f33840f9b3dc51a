//! kerfwright plans the cutting of a stone worktop from one job file and prints a job sheet.
//!
//! One straight way through the house; each stage uses only those above it.
//!
//! | stage | takes → gives |
//! |---|---|
//! | [`units`], [`geom`], [`words`], [`diag`], [`tables`] | ground: lengths and masses, exact outlines, typed values and messages, findings, sourced figures |
//! | [`job`] | text → [`job::Job`]: defaults filled in, millimetres, outlines checked |
//! | [`place`] | job → [`place::Placement`], or why nothing fits |
//! | [`cut`] | placement → [`cut::Cut`]s in order, with set-out, strokes, passes |
//! | [`piece`] | cuts → [`piece::Stones`]: outlines, areas, masses, balance points |
//! | [`repair`] | a job begun and gone wrong → the job that is left |
//! | [`handle`] | → [`handle::Handling`]: lifting, carrying, bending, setting down |
//! | [`hazard`] | → [`hazard::Hazards`]: dust, vibration, noise, disc, supply |
//! | [`plan`] | all of it → [`plan::Plan`]: plain data |
//! | [`document`] | plan → [`document::block::Document`]: sections of typed blocks, no paper in them |
//! | [`template`] | plan → the job at true size: elements on layers, lines to print and cut along |
//! | [`layout`] | document → [`layout::item::Sheet`]: pages of items at fixed places |
//! | [`render`] | pages → PDF, figures → SVG, document → text, plan → JSON |
//! | [`cli`] | the program: files, terminal, environment |
//!
//! The library is pure: the same text gives the same bytes.
//!
//! ```
//! use kerfwright::{document, job, layout, plan::Plan, render};
//!
//! let text = include_str!("../examples/tea-counter.toml");
//! let (job, _remarks) = job::read(text).expect("no faults");
//! let plan = Plan::of(&job).expect("it fits");
//! assert_eq!(plan.cuts.len(), 3); // two straight trims, one curve
//!
//! let areas = plan.balance_sheet;
//! let parts = areas.top_mm2 + areas.allowance_mm2 + areas.kerf_mm2 + areas.offcuts_mm2;
//! assert!((parts / areas.slab_mm2 - 1.0).abs() < 1e-9);
//!
//! let document = document::document(&plan, document::Annex::Without);
//! let pages = layout::pages(&document, layout::item::Paper::A4);
//! let pdf = render::pdf(&pages).expect("every character is in the typeface");
//! assert!(pdf.starts_with(b"%PDF-1.7"));
//! ```

#![cfg_attr(
    not(test),
    warn(
        clippy::unwrap_used,
        clippy::expect_used,
        clippy::panic,
        clippy::todo,
        clippy::unimplemented,
        clippy::unreachable,
        clippy::print_stdout,
        clippy::print_stderr,
        clippy::dbg_macro
    )
)]

pub mod cli;
pub mod cut;
pub mod diag;
pub mod document;
pub mod geom;
pub mod handle;
pub mod hazard;
pub mod job;
pub mod layout;
pub mod piece;
pub mod place;
pub mod plan;
pub mod render;
pub mod repair;
pub mod tables;
pub mod template;
pub mod units;
pub mod words;
