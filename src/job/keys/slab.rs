//! The keys of `[slab]` and of its flaws.

use super::figure::{
    BOW, CLIP, CORNERS, MOST_CORNERS, RECTANGLE, ROUND, SCOOP, SHAPE, SHAPE_SCALE, SHAPE_UNIT,
    SIDE, WHOLE,
};
use super::key::{Key, KeyPart, Kind, Section};
use crate::job::quantity::{ANGLE, from_to};

/// A tape may be 0 when the corner is the mark; one below 0 is answered with where the corner lies.
const TIE: Kind = Kind::List(&Kind::Length(from_to(-SIDE.most, SIDE.most)), 2, 3);
const ONE_OF: &str = "rectangle, corners, shape, sides with diagonals, base_line with ties";
const EDGE_NAMES: Kind = Kind::List(&Kind::Text, 0, MOST_CORNERS);

/// `[slab]`.
pub(super) const SLAB: Section = Section {
    path: "slab",
    keys: &[
        RECTANGLE
            .one_of(ONE_OF)
            .means("length AB and depth BC of a square slab", "[2640, 905]"),
        CORNERS.one_of(ONE_OF).means(
            "the corners A, B, C … counter-clockwise seen from above, A at [0, 0]",
            "[[0, 0], [2640, 0], [2636, 905], [0, 902]]",
        ),
        SHAPE.one_of(ONE_OF),
        SHAPE_UNIT,
        SHAPE_SCALE,
        Key::new(
            "sides",
            Kind::List(&Kind::Length(WHOLE), 4, 4),
            "the four sides in turn, AB, BC, CD, DA; with diagonals",
            "[2640, 902, 2636, 899]",
        )
        .one_of(ONE_OF),
        Key::new(
            "diagonals",
            Kind::Named(KeyPart::Diagonal, &Kind::Length(SIDE)),
            "four sides alone can lean either way: give one diagonal, or better both, so that one checks the other",
            "{ AC = 2790, BD = 2786 }",
        )
        .open("asked for beside sides"),
        Key::new(
            "base_line",
            Kind::Length(SIDE),
            "the distance between two marks that every corner is taped from; with ties",
            "2640",
        )
        .one_of(ONE_OF),
        Key::new(
            "ties",
            Kind::List(&TIE, 3, MOST_CORNERS),
            "for each corner in turn the tapes from the left and the right mark; a third from the middle checks it",
            "[[0, 2640], [2640, 0], [2785, 901], [899, 2789]]",
        )
        .open("asked for beside base_line"),
        Key::new(
            "factory",
            EDGE_NAMES,
            "the edges that are finished and can be used as they are",
            "[\"AB\", \"DA\"]",
        )
        .follows("an edge that is in none of `factory`, `sawn` and `rough` is taken as sawn"),
        Key::new(
            "sawn",
            EDGE_NAMES,
            "the edges that were looked at and are sawn: straight, square to the face, without chips",
            "[\"BC\"]",
        )
        .open("every edge that is neither in `factory` nor in `rough` is taken as sawn, and asked about"),
        Key::new(
            "rough",
            EDGE_NAMES,
            "the edges that are broken or bark and must come off",
            "[\"CD\"]",
        )
        .open("no edge is taken as rough"),
        Key::new(
            "rough_margin",
            Kind::Length(from_to(0.0, 500.0)),
            "how far the finished top keeps off a rough edge",
            "25",
        )
        .number(
            25.0,
            "judgement: a rough edge is chipped, and cracked further in",
        ),
        ROUND.means("the radius of the slab's rounded corners: one for all, or by corner", "{ B = 12 }"),
        CLIP.means("how far the slab's corners are cut off: one for all, or by corner", "{ C = 40 }"),
        SCOOP.means("the radius of corners scooped out of the slab: one for all, or by corner", "{ C = 60 }"),
        BOW.means(
            "how far the middle of an edge stands out of the straight line, + outwards, - inwards",
            "{ AB = -2 }",
        ),
        Key::new(
            "tape",
            Kind::Length(from_to(0.1, 20.0)),
            "how far one reading of the tape may be wrong",
            "1",
        )
        .number(1.0, "judgement: a good tape, read twice"),
        Key::new(
            "vein",
            Kind::Quantity(&ANGLE, from_to(-360.0, 360.0)),
            "the angle of the vein to AB, counter-clockwise",
            "15",
        )
        .open("the stone is taken as without a vein"),
        Key::new(
            "flaw",
            Kind::Tables(&FLAW, 200),
            "what the top must keep clear of: cracks, holes, stains",
            "",
        )
        .open("the slab is taken as sound"),
    ],
};

/// `[[slab.flaw]]`.
const FLAW: Section = Section {
    path: "slab.flaw",
    keys: &[
        Key::new("what", Kind::Text, "what it is", "\"healed fissure\"").open("it is called flaw"),
        Key::new(
            "spot",
            Kind::Table(&SPOT),
            "a round place, by its middle and its width",
            "{ at = [1200, 300], across = 20 }",
        )
        .one_of(FLAW_IS),
        Key::new(
            "line",
            LINE,
            "points along a crack, in the slab's frame: x from A along AB, y square to it",
            "[[2400, 905], [2640, 690]]",
        )
        .one_of(FLAW_IS),
        Key::new(
            "area",
            Kind::List(&Kind::Point, 3, MOST_CORNERS),
            "the corners of a bad place",
            "[[2500, 0], [2640, 0], [2640, 120]]",
        )
        .one_of(FLAW_IS),
        SHAPE.one_of(FLAW_IS).means(
            "an SVG or DXF drawing of it, in the slab's own drawing or with its origin at corner A",
            "\"slab.svg#stain\"",
        ),
        SHAPE_UNIT,
        SHAPE_SCALE,
        Key::new(
            "clear",
            Kind::Length(from_to(0.0, 1000.0)),
            "how far the top keeps clear of it",
            "15",
        )
        .number(
            15.0,
            "judgement: a crack runs on a little beyond what is seen",
        ),
    ],
};

const FLAW_IS: &str = "spot, line, area, shape";

/// Points along a line.
pub(super) const LINE: Kind = Kind::List(&Kind::Point, 2, MOST_CORNERS);
/// The width of a spot or a pad, mm.
pub(super) const ACROSS: Kind = Kind::Length(from_to(0.1, 5000.0));

const SPOT: Section = Section {
    path: "slab.flaw.spot",
    keys: &[
        Key::new(
            "at",
            Kind::Point,
            "its middle, in the slab's frame",
            "[1200, 300]",
        ),
        Key::new("across", ACROSS, "how wide it is", "20"),
    ],
};
