//! The job sheet: pages of items at fixed places, in mm.
//!
//! | file | what it gives a page |
//! |---|---|
//! | [`item`] | what a page is made of |
//! | [`typeface`] | measured widths, and the characters the typeface lacks |
//! | [`pen`] | lines, boxes and texts as items |
//! | [`wrap`] | lines broken to a width |
//! | [`flow`] | a column of headings, paragraphs, lists, check boxes and notices |
//! | [`table`] | tables that may run over several pages |
//! | [`frame`] | the head and foot of every page, and the binding into a sheet |
//! | [`hatch`] | 45° hatching cut to a shape |
//! | [`dimension`] | dimensions after ISO 129 |
//! | [`labels`] | labels that keep clear of each other |
//! | [`figure`] | numbers as they are printed |
//! | [`measured`] | the slab as measured, in words |
//! | [`drawing`] | the slab's frame at a scale |
//! | [`scene`] | the slab at a stage of the cutting |
//! | [`book`] | pages put together one after another |
//! | [`page`] | the pages, one file each |

pub mod book;
pub mod dimension;
pub mod drawing;
pub mod figure;
pub mod flow;
pub mod frame;
pub mod hatch;
pub mod item;
pub mod labels;
pub mod measured;
mod notice;
pub mod page;
pub mod pen;
pub mod scene;
pub mod table;
pub mod typeface;
pub mod wrap;

use crate::geom::{Bounds, Point};
use crate::plan::Plan;
use book::Book;
use frame::Frame;
use item::{Page, Paper, Sheet};

/// The whole job sheet of a plan.
#[must_use]
pub fn sheet(plan: &Plan, paper: Paper) -> Sheet {
    let frame = Frame {
        title: plan.job.title.clone(),
        date: plan.job.date.clone(),
        paper,
    };
    let mut book = Book::new(plan, frame);
    page::glance::add(&mut book);
    page::repair::add(&mut book);
    page::set_out::add(&mut book);
    page::practice::add(&mut book);
    page::cuts(&mut book);
    page::pieces::add(&mut book);
    page::lifting::add(&mut book);
    page::bending::add(&mut book);
    page::way_in::add(&mut book);
    page::setting::add(&mut book);
    page::safety::add(&mut book);
    page::helper::add(&mut book);
    page::sources::add(&mut book);
    book.bind()
}

/// Width and height of a drawing on its own, mm.
const DRAWING_MM: (f64, f64) = (280.0, 180.0);

/// The slab with the top, the cuts and the waste, alone on a page, and the page's size in mm.
#[must_use]
pub fn drawing_page(plan: &Plan) -> (Page, (f64, f64)) {
    let area = Bounds {
        min: Point::ORIGIN,
        max: Point::new(DRAWING_MM.0, DRAWING_MM.1),
    };
    let page = Page {
        name: plan.job.title.clone(),
        items: scene::overview(plan, area).finish(),
    };
    (page, DRAWING_MM)
}
