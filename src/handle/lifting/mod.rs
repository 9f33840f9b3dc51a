//! Lifting by hand: who holds it where, and what the guidelines say.
//!
//! | file | what it works out |
//! |---|---|
//! | [`guideline`](mod@guideline), [`niosh`] | published figures, team factors; the lifting equation |
//! | [`stand`], `hold` | places for hands; those that bending allows, flat or on edge |
//! | [`record`] | what is known of a lift once it is planned |
//! | [`lift`] | shares, verdict, tilting up on edge |
//! | `waste` | waste pieces by the same rule |

pub mod guideline;
pub(crate) mod hold;
pub mod lift;
pub mod niosh;
pub mod record;
pub mod stand;
pub mod waste;
