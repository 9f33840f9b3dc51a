//! The keys of `[as_cut]`: what really happened.

use super::key::{Key, Kind, Section};
use crate::job::quantity::from_to;

/// How far a face may have come out from its line, mm (judgement: more is another top).
const SLIP: Kind = Kind::Length(from_to(0.0, 200.0));
/// The same, or one at the start of the edge and one at its end.
const SLIP_OR_TAPER: Kind = Kind::Either(&[SLIP, Kind::List(&SLIP, 2, 2)]);
/// Radii that may have come out, mm.
const RADIUS: Kind = Kind::Length(from_to(1.0, 20_000.0));
/// Depth and length of a chip, mm (judgement).
const CHIP_MM: Kind = Kind::Length(from_to(0.1, 500.0));
/// Slips and chips of one job (judgement).
const MOST: usize = 64;
/// Cuts of one sheet (judgement).
const MOST_CUTS: usize = 500;
/// A corner by its number.
const CORNER: Kind = Kind::Whole(1, 64);
/// Cuts by the edges' names and the corners' numbers.
const CUTS: Kind = Kind::List(&Kind::Either(&[Kind::Text, CORNER]), 0, MOST);
const AS_PLANNED: &str = "they came out as planned";

/// `[as_cut]`.
pub(super) const AS_CUT: Section = Section {
    path: "as_cut",
    keys: &[
        Key::new(
            "done",
            CUTS,
            "the cuts that have been made: edges by name, corners by number",
            "[\"1-2\", 2]",
        )
        .open("those that are told of below"),
        Key::new(
            "cuts",
            Kind::List(&Kind::Whole(1, 500), 0, MOST_CUTS),
            "the same by the numbers of the cuts on the sheet of this job file as it was before the slip",
            "[1, 2]",
        )
        .open("those of `done`"),
        Key::new(
            "grind",
            Kind::Length(from_to(0.0, 50.0)),
            "the most that is ground off by hand; a thicker strip is sawn",
            "3",
        )
        .number(
            3.0,
            "judgement: more is slower to grind off a whole edge than to saw",
        ),
        Key::new(
            "edge",
            Kind::Tables(&EDGE, MOST),
            "an edge that came out otherwise",
            "",
        )
        .open(AS_PLANNED),
        Key::new(
            "arc",
            Kind::Tables(&ARC, MOST),
            "an arc that came out otherwise",
            "",
        )
        .open(AS_PLANNED),
        Key::new(
            "cutout",
            Kind::Tables(&CUTOUT, MOST),
            "an opening that has been begun",
            "",
        )
        .open("none has been begun"),
        Key::new(
            "chip",
            Kind::Tables(&CHIP, MOST),
            "a chip broken out of an edge",
            "",
        )
        .open("there are none"),
    ],
};

/// `[[as_cut.edge]]`.
const EDGE: Section = Section {
    path: "as_cut.edge",
    keys: &[
        Key::new("edge", Kind::Text, "the edge's name", "\"1-2\""),
        Key::new(
            "short",
            SLIP_OR_TAPER,
            "how far inside the line to keep its face lies; of a slanting one at its start and at its end",
            "[0, 4]",
        )
        .one_of("short, over"),
        Key::new(
            "over",
            SLIP_OR_TAPER,
            "how far outside the line to keep its face lies; of a slanting one at its start and at its end",
            "2",
        )
        .one_of("short, over"),
    ],
};

/// `[[as_cut.arc]]`.
const ARC: Section = Section {
    path: "as_cut.arc",
    keys: &[
        Key::new("corner", CORNER, "the number of the rounded corner", "2").one_of("corner, edge"),
        Key::new("edge", Kind::Text, "the name of the bowed edge", "\"1-2\"")
            .one_of("corner, edge"),
        Key::new(
            "radius",
            RADIUS,
            "the radius it has on the stone now",
            "318",
        ),
    ],
};

/// `[[as_cut.chip]]`.
const CHIP: Section = Section {
    path: "as_cut.chip",
    keys: &[
        Key::new(
            "at",
            Kind::Point,
            "its middle on the edge, in the top's frame",
            "[800, 0]",
        ),
        Key::new("deep", CHIP_MM, "how far it reaches in from the edge", "3"),
        Key::new("across", CHIP_MM, "how long it is along the edge", "12"),
    ],
};

/// `[[as_cut.cutout]]`.
const CUTOUT: Section = Section {
    path: "as_cut.cutout",
    keys: &[
        Key::new(
            "cutout",
            Kind::Either(&[Kind::Whole(1, 64), Kind::Text]),
            "which opening: its number in the job file, or what it is",
            "1",
        ),
        Key::new(
            "done",
            Kind::Either(&[Kind::Text, CUTS]),
            "the cuts that have been made: all, or sides by name and corners by number",
            "\"all\"",
        )
        .open("those that are told of below"),
        Key::new(
            "edge",
            Kind::Tables(&SIDE, MOST),
            "a side that came out otherwise",
            "",
        )
        .open(AS_PLANNED),
        Key::new(
            "arc",
            Kind::Tables(&OPENING_ARC, MOST),
            "an arc that came out otherwise",
            "",
        )
        .open(AS_PLANNED),
    ],
};

/// `[[as_cut.cutout.edge]]`.
const SIDE: Section = Section {
    path: "as_cut.cutout.edge",
    keys: &[
        Key::new("edge", Kind::Text, "the side's name", "\"1-2\""),
        Key::new(
            "larger",
            SLIP,
            "by how much the opening is too large at this side",
            "2",
        )
        .one_of("larger, smaller"),
        Key::new("smaller", SLIP, "by how much it is too small", "2").one_of("larger, smaller"),
    ],
};

/// `[[as_cut.cutout.arc]]`.
const OPENING_ARC: Section = Section {
    path: "as_cut.cutout.arc",
    keys: &[
        Key::new(
            "corner",
            CORNER,
            "the number of the rounded corner; a circle has none",
            "2",
        )
        .open("the opening is a circle"),
        Key::new(
            "radius",
            RADIUS,
            "the radius it has on the stone now",
            "181",
        ),
    ],
};
