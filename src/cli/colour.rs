//! Colour on the terminal.

/// Whether to draw in colour. Nothing is said by colour alone.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Colour {
    /// Plain text.
    Plain,
    /// With terminal colours.
    Ansi,
}
