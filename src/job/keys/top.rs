//! The keys of `[top]`, its openings, its base and supports, and of `[place]`.

use super::figure::{
    BOW, CIRCLE, CLIP, CORNERS, RECTANGLE, ROUND, SCOOP, SHAPE, SHAPE_SCALE, SHAPE_UNIT, SIDE,
};
use super::key::{Key, KeyPart, Kind, Section};
use super::slab::{ACROSS, LINE};
use super::word::words;
use crate::job::quantity::{ANGLE, NUMBER, from_to};
use crate::job::{Finish, VeinWish};

const FINISH: Kind = Kind::Word(words::<Finish>);
/// Stone left by the saw, mm (judgement).
const ALLOWANCE_MM: Kind = Kind::Length(from_to(0.0, 20.0));
/// An overhang over the base, mm (judgement).
const OVERHANG: Kind = Kind::Length(from_to(0.0, 1000.0));
const TURN: Kind = Kind::Quantity(&ANGLE, from_to(-360.0, 360.0));
const ONE_OF: &str = "rectangle, corners, circle, shape, over_base";
const FIGURE: &str = "rectangle, corners, circle, shape";

/// `[top]`.
pub(super) const TOP: Section = Section {
    path: "top",
    keys: &[
        RECTANGLE.one_of(ONE_OF),
        CORNERS.one_of(ONE_OF),
        CIRCLE.one_of(ONE_OF).means(
            "a round top, measured across; its corner 1 is that of the square round it",
            "900",
        ),
        SHAPE.one_of(ONE_OF),
        SHAPE_UNIT,
        SHAPE_SCALE,
        Key::new(
            "over_base",
            Kind::Either(&[OVERHANG, Kind::Named(KeyPart::Edge, &OVERHANG)]),
            "the overhang over [base]: one for all edges, or by edge of the base",
            "25",
        )
        .one_of(ONE_OF),
        ROUND.means(
            "the radius of rounded corners: one for all, or by corner; half the depth at both corners of an end makes it round",
            "{ 2 = 320, 3 = 320 }",
        ),
        CLIP,
        SCOOP,
        BOW,
        Key::new(
            "finish",
            Kind::Either(&[FINISH, Kind::Named(KeyPart::Edge, &FINISH)]),
            "how the edges are finished: one word for all, or by edge",
            "{ \"1-2\" = \"polish\", \"4-1\" = \"factory\" }",
        )
        .follows("judgement: left as sawn where nothing else was asked for"),
        Key::new(
            "vein",
            Kind::Word(words::<VeinWish>),
            "how the top's length runs to the vein; slab.vein says how that runs",
            "\"along\"",
        )
        .follows("no wish was given"),
        Key::new(
            "cutout",
            Kind::Tables(&CUTOUT, 24),
            "an opening: bowl, hob, tap",
            "",
        )
        .open("the top has no openings"),
        Key::new(
            "allowance",
            Kind::Table(&ALLOWANCE),
            "stone left on a sawn edge for grinding, by finish",
            "",
        )
        .open("each by its own key"),
    ],
};

/// `[top.allowance]`.
const ALLOWANCE: Section = Section {
    path: "top.allowance",
    keys: &[
        Key::new(
            "polish",
            ALLOWANCE_MM,
            "left for an edge that is polished",
            "1",
        )
        .number(1.0, "judgement: saw marks ground away, then polished"),
        Key::new(
            "ease",
            ALLOWANCE_MM,
            "left for an edge whose arris is eased",
            "0.5",
        )
        .number(0.5, "judgement: only the arris is taken off"),
        Key::new("saw", ALLOWANCE_MM, "left for an edge as sawn", "0")
            .number(0.0, "judgement: nothing is taken off a sawn edge"),
    ],
};

/// `[[top.cutout]]`.
const CUTOUT: Section = Section {
    path: "top.cutout",
    keys: &[
        Key::new("what", Kind::Text, "what it is for", "\"wash bowl\"")
            .open("it is called by its number"),
        RECTANGLE
            .of(Kind::List(&Kind::Length(SIDE), 2, 2))
            .one_of(FIGURE)
            .means("length and depth of the opening", "[560, 490]"),
        CORNERS.one_of(FIGURE).means(
            "the corners of the opening in turn, the first at [0, 0]",
            "[[0, 0], [560, 0], [560, 490], [0, 490]]",
        ),
        CIRCLE
            .of(Kind::Length(SIDE))
            .one_of(FIGURE)
            .means("a round opening, measured across", "360"),
        SHAPE.one_of(FIGURE),
        SHAPE_UNIT,
        SHAPE_SCALE,
        Key::new(
            "at",
            Kind::Point,
            "its centre, in the top's frame: x from corner 1 along edge 1-2, y square to it",
            "[620, 330]",
        ),
        Key::new("turn", TURN, "how far it is turned, counter-clockwise", "0")
            .number(0.0, "square to edge 1-2 of the top"),
        ROUND.means(
            "the radius of the opening's corners: one for all, or by corner",
            "20",
        ),
        CLIP.means(
            "how far the opening's corners are cut off: one for all, or by corner",
            "{ 4 = 40 }",
        ),
        SCOOP,
        BOW,
        Key::new(
            "finish",
            FINISH,
            "how its edge is finished: polish, ease or saw",
            "\"polish\"",
        )
        .word(
            "saw",
            "judgement: the edge of an opening is left as sawn where nothing else was asked for",
        ),
    ],
};

/// `[base]`.
pub(super) const BASE: Section = Section {
    path: "base",
    keys: &[
        RECTANGLE
            .one_of(FIGURE)
            .means("length and depth of what the top stands on", "[2100, 600]"),
        CORNERS.one_of(FIGURE),
        CIRCLE
            .one_of(FIGURE)
            .means("a round base, measured across", "850"),
        SHAPE.one_of(FIGURE),
        SHAPE_UNIT,
        SHAPE_SCALE,
        ROUND.means(
            "the radius of the base's rounded corners: one for all, or by corner",
            "{ 2 = 20 }",
        ),
        CLIP,
        SCOOP,
        BOW,
        Key::new(
            "at",
            Kind::Point,
            "where its corner 1 lies in the top's frame, unless the top is made over it",
            "[25, 20]",
        )
        .open("it lies at corner 1 of the top"),
    ],
};

/// `[[support]]`.
pub(super) const SUPPORT: Section = Section {
    path: "support",
    keys: &[
        Key::new("what", Kind::Text, "what it is", "\"left cabinet side\"")
            .open("it is called support"),
        Key::new(
            "line",
            LINE,
            "its two ends, in the top's frame",
            "[[20, 20], [20, 600]]",
        )
        .one_of("line, pad"),
        Key::new(
            "pad",
            Kind::Table(&PAD),
            "a round pad, by its middle and its width",
            "{ at = [1000, 320], across = 60 }",
        )
        .one_of("line, pad"),
        Key::new(
            "limit",
            Kind::Mass(from_to(1.0, 10_000.0)),
            "the most it may carry",
            "\"120 kg\"",
        )
        .open("it is not checked"),
        // Below a hundredth it is no support (judgement).
        Key::new(
            "stiffness",
            Kind::Quantity(&NUMBER, from_to(0.01, 1.0)),
            "how stiff it is for its length against a wall or a sound cabinet side, which are 1",
            "0.5",
        )
        .open("it is as stiff as a wall"),
    ],
};

const PAD: Section = Section {
    path: "support.pad",
    keys: &[
        Key::new(
            "at",
            Kind::Point,
            "its middle, in the top's frame",
            "[1000, 320]",
        ),
        Key::new("across", ACROSS, "how wide it is", "60"),
    ],
};

/// `[place]`.
pub(super) const PLACE: Section = Section {
    path: "place",
    keys: &[
        Key::new(
            "at",
            Kind::Point,
            "where the origin of the top's frame lies on the slab; the place is then only checked",
            "[40, 60]",
        )
        .open("the best place is searched"),
        Key::new(
            "turn",
            TURN,
            "how far the top is turned on the slab, counter-clockwise",
            "0",
        )
        .follows("a place was given without a turn"),
        Key::new(
            "least_strip",
            Kind::Length(from_to(1.0, 500.0)),
            "the narrowest strip that may be sawn off",
            "10",
        )
        .number(
            10.0,
            "judgement: a narrower sliver lets the disc wander and snaps",
        ),
    ],
};
