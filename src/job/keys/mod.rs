//! The keys of the job file, each described once.
//!
//! From this list come what the reader knows, the limits and the defaults it reads with, the words of
//! its messages, `explain`, `keys`, the schema, the starter file and the reference in the README.
//!
//! | file | keys of |
//! |---|---|
//! | `stone` | `[job]`, `[stone]` |
//! | `slab`, `figure` | `[slab]` and its flaws; the words of every figure |
//! | `top` | `[top]`, its openings, `[base]`, `[[support]]`, `[place]` |
//! | `tools` | `[machine]`, `[[disc]]`, `[[core_bit]]`, `[guide]`, `[circle_jig]`, `[passes]` |
//! | `people` | `[dust]`, `[protector]`, `[[today]]`, `[lift]`, `[route]` |
//! | `as_cut` | `[as_cut]` |
//! | `key`, `kind`, `word` | what is known of a key, what may stand there, the words for things |
//! | `foreign` | the commonest of them in other languages |
//! | `root` | the sections, and every key by its path |
//! | `reference`, `schema`, `starter` | the list as the README has it, as JSON Schema, as a file to fill in |

mod as_cut;
mod figure;
mod foreign;
mod key;
mod kind;
mod people;
mod reference;
mod root;
mod schema;
mod slab;
mod starter;
mod stone;
mod tools;
mod top;
mod word;

pub(super) use figure::MOST_CORNERS;
pub(super) use foreign::elsewhere;
pub use key::{Key, KeyPart, Kind, LeftOut, Plain, Section};
pub use reference::reference;
pub use root::{Entry, ROOT, all, find, sections};
pub use schema::schema;
pub use starter::{TO_FILL, starter};
pub(super) use stone::DENSITIES;
pub(super) use word::{Carrier, DrawnUnit, Tested, Word};
