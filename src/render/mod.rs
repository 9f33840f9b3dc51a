//! Translates a finished sheet into files; computes nothing about the job.
//!
//! | file | what it writes |
//! |---|---|
//! | [`mod@pdf`] | a PDF of the whole sheet; the only file that names `printpdf` |
//! | [`svg`] | one page as a drawing of its own |
//! | [`text`] | the plan for a terminal |
//! | [`json`] | the plan as data |

mod bezier;
pub mod json;
pub mod pdf;
mod pdf_finish;
pub mod svg;
pub mod text;
mod text_lifting;
mod text_safety;

pub use pdf::{RenderFault, pdf};
pub use svg::svg_page;
