//! The pages of the job sheet, one file each, in the order they are bound.

pub mod bending;
pub mod body;
pub mod both;
pub mod curve;
pub mod cutout;
pub mod glance;
pub mod helper;
pub mod lifting;
mod moments;
pub mod pieces;
pub mod practice;
pub mod protection;
pub mod repair;
pub mod repair_openings;
pub mod safety;
pub mod set_out;
pub mod setting;
pub mod sources;
mod stations;
pub mod straight;
pub mod way_in;

use super::book::Book;
use crate::cut::SetOut;

/// A card for every cut in its order; an opening's cuts stand together on the pages of the opening.
pub fn cuts(book: &mut Book<'_>) {
    let plan = book.plan;
    let mut opened = Vec::new();
    for cut in &plan.cuts {
        match (cut.cutout, cut.kind, &cut.set_out) {
            (Some(number), _, _) => {
                if !opened.contains(&number) {
                    opened.push(number);
                    cutout::pages(book, number);
                }
            }
            (None, _, SetOut::Guide(set_out)) => straight::card(book, cut, set_out),
            (None, _, SetOut::Pivot(_) | SetOut::Ordinates(_)) => curve::add(book, cut),
            (None, _, SetOut::Centres(_)) => cutout::core_card(book, cut),
        }
    }
}
