//! The way in, the aids and the fall of a stone, against published examples and a second method.

mod aids;
mod corner;
mod fall;
mod fixtures;
mod places;
mod reading_it;
mod sweep;
mod weigh;
