//! The plan at true size: what a plotter, a shop or a person with a printed template follows. No paper
//! in it, and nothing that a stage has not computed.
//!
//! | file | what it is |
//! |---|---|
//! | [`layer`] | the whole job as named elements on named layers |
//! | [`part`] | the parts that a template can be printed of |
//! | [`full_size`] | the lines of one part, each with its meaning |

pub mod full_size;
pub mod layer;
pub mod part;

pub use full_size::{Role, Template, template};
pub use layer::{Element, Form, Layer, layers};
pub use part::{NamedPart, parts};
