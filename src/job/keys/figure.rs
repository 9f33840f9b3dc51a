//! The keys of a figure, shared by the slab, the top, its openings and its base.

use super::key::{Key, KeyPart, Kind};
use super::word::{DrawnUnit, words};
use crate::job::quantity::{Limits, from_to};

/// The most corners a figure may have (judgement: far more than a worktop has).
pub(in crate::job) const MOST_CORNERS: usize = 64;
/// A tape or a side of an opening, mm (judgement: from the smallest thing to measure with a tape to
/// longer than any slab).
pub(super) const SIDE: Limits = from_to(1.0, 20_000.0);
/// A side of a slab or a top, mm (judgement: no narrower strip is sawn and none so long is carried).
pub(super) const WHOLE: Limits = from_to(30.0, 10_000.0);
/// The radius or set-back of a corner, mm.
const CORNER: Kind = Kind::Length(from_to(0.1, 20_000.0));
/// The rise of a bow, mm.
const RISE: Kind = Kind::Length(from_to(-10_000.0, 10_000.0));
/// One size for all corners, or one for each that is named.
const BY_CORNER: Kind = Kind::Either(&[CORNER, Kind::Named(KeyPart::Corner, &CORNER)]);

const SHARP: &str = "the corners are sharp";

pub(super) const RECTANGLE: Key = Key::new(
    "rectangle",
    Kind::List(&Kind::Length(WHOLE), 2, 2),
    "length and depth, the length along the first edge",
    "[2150, 640]",
);
pub(super) const CORNERS: Key = Key::new(
    "corners",
    Kind::List(&Kind::Point, 3, MOST_CORNERS),
    "the corners in turn, counter-clockwise seen from above, the first at [0, 0]",
    "[[0, 0], [2150, 0], [2150, 640], [0, 640]]",
);
pub(super) const CIRCLE: Key = Key::new(
    "circle",
    Kind::Length(WHOLE),
    "a circle, measured across",
    "360",
);
pub(super) const ROUND: Key = Key::new(
    "round",
    BY_CORNER,
    "the radius of rounded corners: one for all, or by corner",
    "{ 2 = 320, 3 = 320 }",
)
.open(SHARP);
pub(super) const CLIP: Key = Key::new(
    "clip",
    BY_CORNER,
    "how far corners are cut off straight, measured along both edges: one for all, or by corner",
    "{ 4 = 40 }",
)
.open(SHARP);
pub(super) const SCOOP: Key = Key::new(
    "scoop",
    BY_CORNER,
    "the radius of corners scooped out, about the corner itself: one for all, or by corner",
    "{ 4 = 60 }",
)
.open(SHARP);
pub(super) const BOW: Key = Key::new(
    "bow",
    Kind::Named(KeyPart::Edge, &RISE),
    "how far the middle of an edge stands out of the straight line, + outwards, - inwards",
    "{ \"1-2\" = 25 }",
)
.open("the edges are straight");

pub(super) const SHAPE: Key = Key::new(
    "shape",
    Kind::Text,
    "an SVG or DXF drawing of it beside the job file; a name behind # chooses one outline of several",
    "\"template.svg#top\"",
);
pub(super) const SHAPE_UNIT: Key = Key::new(
    "shape_unit",
    Kind::Word(words::<DrawnUnit>),
    "the unit in which the drawing is drawn",
    "\"mm\"",
)
.open("the drawing says it itself");
pub(super) const SHAPE_SCALE: Key = Key::new(
    "shape_scale",
    Kind::Named(KeyPart::Mark, &Kind::Length(SIDE)),
    "straight lines in the drawing by name, with the length taped there: they scale it, and check each other",
    "{ tape-1 = 2400 }",
)
.open("the drawing's unit scales it");
