//! A document as one HTML file for a telephone: one cut a screen, ticks that stay, the helper's page and
//! what to do when something goes wrong at one touch. It loads nothing and works without scripts as a
//! plain long page.
//!
//! | file | what it is |
//! |---|---|
//! | `screen` | the screens of a document |
//! | `setting`, `block`, `table` | a screen being written, its blocks, its tables |
//! | `markup` | elements and words |
//! | `page.css`, `page.js` | how it looks; screens, ticks, the screen kept awake |

mod block;
mod markup;
mod page;
mod screen;
mod setting;
mod table;

pub use page::page;
