//! Translates a finished sheet into files; computes nothing about the job.
//!
//! | file | what it writes |
//! |---|---|
//! | [`mod@pdf`] | a PDF of the whole sheet; the only file that names `printpdf` |
//! | [`svg`] | one page as a drawing of its own |
//! | [`svg_layers`](mod@svg_layers), [`mod@dxf`] | the job at true size, for a plotter or a shop |
//! | [`html`] | a document as one page for a telephone |
//! | [`text`] | a document for a terminal |
//! | [`json`] | the plan as data |

mod bezier;
pub mod dxf;
mod fault;
pub mod html;
pub mod json;
pub mod pdf;
mod pdf_content;
mod pdf_finish;
mod pdf_page;
mod pdf_tags;
pub mod svg;
pub mod svg_layers;
pub mod text;

pub use dxf::dxf;
pub use fault::RenderFault;
pub use pdf::pdf;
pub use svg::svg_page;
pub use svg_layers::svg_layers;
