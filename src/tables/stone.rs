//! Kinds of stone.

/// A kind of stone.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum StoneKind {
    /// Granite.
    Granite,
    /// A kind of the user's own.
    Own,
}
