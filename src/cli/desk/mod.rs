//! `kerfwright desk [FILE]`: a form and the drawing in the web browser.
//!
//! The page holds the text of the job file and sends what was typed; here it is put into the text, read
//! and planned, and the answer goes back. Nothing is kept between two requests but the file itself.
//!
//! | file | what it does |
//! |---|---|
//! | `http` | requests and answers on the wire |
//! | `door` | who may come in: address, token, host, origin, length |
//! | `serve` | what is asked, and the answers |
//! | `file` | the one file: read, and saved unless it changed meanwhile |
//! | `edit` | changes put into the text, the rest of which stays as it is |
//! | `form` | the form as data, from the list of keys |
//! | `look`, `parts` | what a text comes to; what can be pointed at in the drawing |
//! | `others` | other places of the top on the slab |
//! | `page/` | the page itself |

mod browser;
mod door;
mod edit;
mod file;
mod form;
mod http;
mod look;
mod others;
mod parts;
mod serve;
mod start;

pub use start::{Options, run};
