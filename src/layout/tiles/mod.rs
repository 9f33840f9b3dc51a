//! A template on paper at 1:1: tiles that overlap, or one long page.
//!
//! | file | operation |
//! |---|---|
//! | [`mod@self`] | templates to pages |
//! | `tile` | a tile, and what is said on it |
//! | `grid` | the fewest tiles, over turns and shifts |
//! | `lines` | the lines and words of one tile |
//! | `strip` | its name, the bars to measure, the crosses to join by |
//! | `key` | the page before the tiles: map, legend, what to do |

mod grid;
mod key;
mod lines;
mod sheets;
mod strip;
mod tile;

pub use sheets::{LONGEST_MM, print};

pub use tile::{Format, Printed, Tile, Tiled, WantedSheets};
