//! The keys of the dust, the ears, the day, the people and the way in.

use super::key::{Key, Kind, Section};
use super::tools::{NO_UNCERTAINTY, SHAKES};
use super::word::words;
use crate::job::quantity::{AIRFLOW, DECIBEL, HOURS, MINUTES, NOISE, WATER, from_to};
use crate::job::{Aid, DustMethod, EarKind, Respirator, Workplace};

/// `[dust]`.
pub(super) const DUST: Section = Section {
    path: "dust",
    keys: &[
        Key::new(
            "where",
            Kind::Word(words::<Workplace>),
            "where the cutting is done",
            "\"outdoors\"",
        )
        .word("indoors", "not said; the worse of the two"),
        Key::new(
            "method",
            Kind::Word(words::<DustMethod>),
            "what holds the dust: water on the disc, a shroud with an extractor, or nothing",
            "\"water\"",
        )
        .word("none", "nothing was said to hold the dust down"),
        Key::new(
            "water",
            Kind::Quantity(&WATER, from_to(0.0, 50.0)),
            "water fed to the disc",
            "0.5",
        )
        // Text read; for a grinder nothing is published.
        .number(
            0.5,
            "NIOSH for hand-held cut-off saws; measure yours with a bucket and a watch",
        ),
        Key::new(
            "airflow",
            Kind::Quantity(&AIRFLOW, from_to(0.0, 5000.0)),
            "the extractor's airflow",
            "200",
        )
        .number(0.0, "the airflow of the extractor is not known"),
        Key::new(
            "respirator",
            Kind::Word(words::<Respirator>),
            "the mask at hand, by the class marked on it",
            "\"ffp3\"",
        )
        .word("none", "none was said to be at hand"),
        Key::new(
            "mask_fit_tested",
            Kind::Flag,
            "the mask was fit-tested on its wearer",
            "true",
        )
        .flag(false, "not known to be fit-tested on its wearer"),
        Key::new(
            "hours_today",
            Kind::Quantity(&HOURS, from_to(0.0, 24.0)),
            "other dusty, vibrating or loud work the same day",
            "1",
        )
        .number(
            0.0,
            "no other dusty, vibrating or loud work the same day was told",
        ),
        Key::new(
            "days",
            Kind::Whole(1, 60),
            "days, or people in turn, over which the sawing is spread",
            "2",
        )
        .open("one person saws everything on one day"),
    ],
};

/// Ratings that hearing protectors carry, dB (judgement: two worn together reach 45).
const RATING: Kind = Kind::Quantity(&DECIBEL, from_to(0.0, 45.0));
const NOT_KNOWN: &str = "the protector is not known";

/// `[protector]`.
pub(super) const PROTECTOR: Section = Section {
    path: "protector",
    keys: &[
        Key::new("snr", RATING, "its single number rating", "30").open(NOT_KNOWN),
        Key::new(
            "h",
            RATING,
            "what it holds back of high noise; with m and l",
            "32",
        )
        .open(NOT_KNOWN),
        Key::new("m", RATING, "of middle noise; with h and l", "27").open(NOT_KNOWN),
        Key::new("l", RATING, "of low noise; with h and m", "19").open(NOT_KNOWN),
        Key::new(
            "nrr",
            RATING,
            "its American noise reduction rating; with kind",
            "25",
        )
        .open(NOT_KNOWN),
        Key::new(
            "kind",
            Kind::Word(words::<EarKind>),
            "what it is, beside nrr",
            "\"muffs\"",
        )
        .word(
            "other plugs",
            "not said; the kind that loses most of its rating in use",
        ),
    ],
};

const AS_MACHINE: &str = "not said; as the machine of this job. Give 0 for none";

/// `[[today]]`.
pub(super) const TODAY: Section = Section {
    path: "today",
    keys: &[
        Key::new(
            "what",
            Kind::Text,
            "what that work is",
            "\"breaking up a path\"",
        )
        .open("it is called other work"),
        Key::new(
            "minutes",
            Kind::Quantity(&MINUTES, from_to(0.0, 1440.0)),
            "how long that work takes on the day",
            "45",
        ),
        Key::new("a", SHAKES, "its vibration", "12").follows(AS_MACHINE),
        Key::new("k", SHAKES, "the uncertainty that is added", "4").follows(NO_UNCERTAINTY),
        Key::new(
            "noise",
            Kind::Quantity(&NOISE, from_to(0.0, 140.0)),
            "its noise at the ear",
            "95",
        )
        .follows(AS_MACHINE),
        Key::new("dusty", Kind::Flag, "it raises stone dust", "false")
            .flag(true, "not said; counted as stone dust"),
    ],
};

/// The most people that are reckoned with (judgement: more than four hardly work as a team).
const MOST_PEOPLE: usize = 20;
/// What one person may be said to lift, kg (judgement).
const ONE_LIFTS: Kind = Kind::Mass(from_to(1.0, 80.0));
const MEASURE_TROLLEY: &str = "judgement: measure your trolley";

/// `[lift]`.
pub(super) const LIFT: Section = Section {
    path: "lift",
    keys: &[
        Key::new("people", Kind::Whole(1, 20), "how many people lift", "4")
            .number(1.0, "nobody else was said to be there"),
        Key::new(
            "each",
            Kind::Either(&[ONE_LIFTS, Kind::List(&ONE_LIFTS, 1, MOST_PEOPLE)]),
            "what each can lift: one mass for all, or one for each",
            "\"25 kg\"",
        )
        .follows("guideline for good conditions of the region"),
        Key::new(
            "check_call",
            Kind::Text,
            "working alone: who knows where you are, and when they call",
            "\"sister, every half hour\"",
        )
        .open("nobody was named"),
        Key::new("aid", Kind::Word(words::<Aid>), "what helps", "\"trolley\"")
            .word("none", "no lifting aid was said to be at hand"),
        Key::new(
            "rated",
            Kind::Mass(from_to(10.0, 10_000.0)),
            "the load marked on the aid",
            "\"500 kg\"",
        )
        .open("its load is not known"),
        Key::new(
            "stand",
            Kind::List(&Kind::Point, 1, MOST_PEOPLE),
            "where each stands, in the top's frame",
            "[[200, 0], [1950, 0], [200, 640], [1950, 640]]",
        )
        .open("places are proposed"),
        Key::new(
            "hands",
            Kind::Length(from_to(0.0, 1750.0)),
            "the height of the hands when the stone is lifted off the trestles",
            "750",
        )
        .number(
            750.0,
            "hands at the height that the lifting equation takes as the best",
        ),
        // A kilometre at most (judgement).
        Key::new(
            "carry",
            Kind::Length(from_to(0.0, 1e6)),
            "how far it is carried without a rest",
            "\"10 m\"",
        )
        .number(
            10_000.0,
            "the farthest that is carried without a rest, HSE L23",
        ),
        Key::new(
            "trestles",
            Kind::List(&Kind::Length(from_to(0.0, 10_000.0)), 2, 2),
            "where two trestles stand, from the end of the slab along its length",
            "[550, 2090]",
        )
        .open("places are proposed"),
        // Two wheels astride the stone, low between them (judgement).
        Key::new(
            "trolley_track",
            Kind::Length(from_to(100.0, 2000.0)),
            "between the lines that the trolley's outer wheels run on",
            "400",
        )
        .number(400.0, MEASURE_TROLLEY),
        Key::new(
            "trolley_deck",
            Kind::Length(from_to(0.0, 1000.0)),
            "from the floor to what the stone stands on",
            "150",
        )
        .number(150.0, MEASURE_TROLLEY),
    ],
};

/// Door or corridor, mm (judgement).
const WAY: Kind = Kind::Length(from_to(100.0, 20_000.0));
/// Room beside the stone and how high it is carried, mm (judgement).
const ROOM: Kind = Kind::Length(from_to(0.0, 1000.0));
/// The most doors, and the most corners (judgement).
const MOST: usize = 64;
const NO_WAY: &str = "nothing is assumed about a way that is not given";

/// `[route]`.
pub(super) const ROUTE: Section = Section {
    path: "route",
    keys: &[
        Key::new(
            "door",
            Kind::Tables(&DOOR, MOST),
            "a door on the way in",
            "",
        )
        .open(NO_WAY),
        Key::new(
            "corner",
            Kind::Tables(&CORNER, MOST),
            "a corner on the way in",
            "",
        )
        .open(NO_WAY),
        // Knuckles stand off about 40 mm on each side (judgement).
        Key::new(
            "room",
            ROOM,
            "room for the hands on both faces of the stone",
            "80",
        )
        .number(80.0, "judgement: hands on both faces of the stone"),
        Key::new(
            "raise",
            ROOM,
            "how high the stone's lower edge is carried",
            "100",
        )
        .follows("judgement: over a threshold and toes"),
        Key::new(
            "spare",
            Kind::Length(from_to(0.0, 500.0)),
            "less to spare than this is tight",
            "20",
        )
        .number(
            20.0,
            "judgement: a hand's unsteadiness and the error of the tape",
        ),
    ],
};

/// `[[route.door]]`.
const DOOR: Section = Section {
    path: "route.door",
    keys: &[
        Key::new("what", Kind::Text, "which door", "\"yard gate\"")
            .open("it is called by its number"),
        Key::new("width", WAY, "the clear width", "900"),
        Key::new("height", WAY, "the clear height", "2000"),
    ],
};

/// `[[route.corner]]`.
const CORNER: Section = Section {
    path: "route.corner",
    keys: &[
        Key::new("what", Kind::Text, "which corner", "\"landing\"")
            .open("it is called by its number"),
        Key::new(
            "from",
            WAY,
            "the width of the way before the corner",
            "1100",
        ),
        Key::new("to", WAY, "the width of the way after it", "950"),
        Key::new("height", WAY, "the clear height", "2300"),
    ],
};
