//! The keys of the machine, the discs, the jigs and the passes.

use super::key::{Key, Kind, Section};
use super::word::{Carrier, words};
use crate::job::quantity::{
    FACE_RATE, Limits, MINUTES, NOISE, NOISE_C, NUMBER, SPEED, VIBRATION, from_to,
};
use crate::job::{DiscUse, MachineKind, Power, Protection};
use crate::tables::disc::BORE_MM;

/// Speed of a machine or a disc, turns a minute (judgement).
const SPEEDS: Kind = Kind::Quantity(&SPEED, from_to(500.0, 30_000.0));
/// Vibration magnitude, m/s² (judgement).
pub(super) const SHAKES: Kind = Kind::Quantity(&VIBRATION, from_to(0.0, 50.0));
/// Where hand discs and machines are held, mm (judgement).
const BORES: Kind = Kind::Length(from_to(5.0, 100.0));
pub(super) const NO_UNCERTAINTY: &str =
    "HSE OC 246/31: 40 % of the magnitude when the maker states no uncertainty";

/// `[machine]`.
pub(super) const MACHINE: Section = Section {
    path: "machine",
    keys: &[
        Key::new(
            "kind",
            Kind::Word(words::<MachineKind>),
            "what it is",
            "\"angle grinder\"",
        )
        .word("angle grinder", "the usual machine"),
        Key::new(
            "rpm",
            SPEEDS,
            "its speed without load, from its plate",
            "9800",
        )
        .number(
            11_000.0,
            "common practice: many 125 mm grinders; read the plate of yours",
        ),
        Key::new(
            "power",
            Kind::Word(words::<Power>),
            "what drives it",
            "\"battery\"",
        )
        .word("mains", "the case that asks for most care"),
        Key::new(
            "wet_rated",
            Kind::Flag,
            "built by its maker for wet use",
            "true",
        )
        .flag(false, "not known to be built for wet use"),
        Key::new(
            "protected",
            Kind::Word(words::<Protection>),
            "how its supply is protected",
            "\"rcd\"",
        )
        .follows("as machine.power says: nothing unless it runs on a battery"),
        Key::new(
            "plate",
            Kind::Length(from_to(0.0, 100.0)),
            "everything between machine and stone, such as the base of a jig",
            "6",
        )
        .number(6.0, "judgement: a thin jig base; measure yours"),
        Key::new(
            "vibration",
            Kind::Table(&SHAKING),
            "its vibration a and the uncertainty k, from its papers",
            "{ a = 6.5, k = 1.5 }",
        )
        .open("each by its own key"),
        Key::new(
            "noise",
            Kind::Quantity(&NOISE, from_to(40.0, 140.0)),
            "its noise at the ear while it cuts",
            "104",
        )
        // The lower end of what a 350 mm diamond blade makes.
        .number(
            105.0,
            "IFA 4214: diamond blades 105 to 107 dB(A) at the ear",
        ),
        Key::new(
            "noise_c",
            Kind::Quantity(&NOISE_C, from_to(40.0, 150.0)),
            "the same noise, C-weighted",
            "106",
        )
        .follows("judgement: 2 dB above the A-weighted level, where HML gives M; measure yours"),
        Key::new(
            "seat",
            BORES,
            "the seat that carries the disc's bore, across",
            "22.2",
        )
        .number(
            BORE_MM,
            "the usual seat of hand machines, 7/8 in; measure yours",
        ),
        Key::new(
            "largest_disc",
            Kind::Length(from_to(50.0, 400.0)),
            "the largest disc that the machine and its guard are made for, across",
            "125",
        )
        .open("discs are not compared with it"),
    ],
};

/// `[machine.vibration]`.
const SHAKING: Section = Section {
    path: "machine.vibration",
    keys: &[
        Key::new("a", SHAKES, "its magnitude", "6.5").number(
            9.0,
            "HSE stonemasonry pages, Table 1 (2026): grinder cutting stone, 4 to 13 m/s²",
        ),
        Key::new("k", SHAKES, "the uncertainty that is added", "1.5").follows(NO_UNCERTAINTY),
    ],
};

/// `[[disc]]`.
pub(super) const DISC: Section = Section {
    path: "disc",
    keys: &[
        Key::new(
            "name",
            Kind::Text,
            "what it is called; each disc its own",
            "\"125 continuous rim\"",
        )
        .open("it is called by its diameter"),
        Key::new(
            "diameter",
            Kind::Length(from_to(50.0, 400.0)),
            "the disc, across",
            "125",
        )
        .number(125.0, "the usual hand size"),
        Key::new(
            "kerf",
            Kind::Length(from_to(0.8, 8.0)),
            "the width of the slot it cuts, from a practice cut",
            "2.2",
        )
        .number(2.2, "thin discs are 1.5 to 2.2 mm; measure a practice cut"),
        Key::new(
            "obstruction",
            Kind::Length(from_to(10.0, 390.0)),
            "the wider of flange and gear head, across",
            "42",
        )
        .number(
            42.0,
            "common practice: the flange of a 125 mm grinder; measure yours",
        ),
        Key::new("max_rpm", SPEEDS, "the speed marked on it", "12200")
            .follows("EN 12413, 80 m/s at the rim; read the mark on the disc and give it here"),
        Key::new("bore", BORES, "the hole in its middle, across", "22.2")
            .number(BORE_MM, "7/8 in, the usual bore; measure yours"),
        Key::new(
            "bond",
            Kind::Word(words::<Carrier>),
            "diamond on steel, or resin with fibre, which ages",
            "\"diamond\"",
        )
        .word(
            "diamond",
            "discs for stone are diamond on steel; say \"resin\" for a reinforced one",
        ),
        Key::new(
            "expires",
            Kind::Date,
            "the last day of a resin disc",
            "2028-06-30",
        )
        .open("the day is not known"),
        Key::new(
            "for",
            Kind::Word(words::<DiscUse>),
            "the cuts it is kept for",
            "\"all\"",
        )
        .word("all", "no disc is kept for one kind of cut"),
    ],
};

/// `[[core_bit]]`.
pub(super) const CORE_BIT: Section = Section {
    path: "core_bit",
    keys: &[
        // From a pilot hole to the widest that is held by hand (judgement).
        Key::new(
            "diameter",
            Kind::Length(from_to(3.0, 300.0)),
            "the bit, across, which is that of the hole",
            "35",
        ),
        Key::new(
            "minutes",
            Kind::Quantity(&MINUTES, from_to(0.1, 240.0)),
            "the time for one hole",
            "6",
        )
        .number(
            6.0,
            "judgement: drilled wet by hand, lifted often to clear the core",
        ),
    ],
};

/// From a guide or an arm to the disc, mm.
const OFFSET: Kind = Kind::Length(from_to(0.0, 600.0));

/// `[guide]`.
pub(super) const GUIDE: Section = Section {
    path: "guide",
    keys: &[
        Key::new(
            "length",
            Kind::Length(from_to(200.0, 6000.0)),
            "the straight guide",
            "1400",
        )
        .number(
            1400.0,
            "common practice: half a usual guide rail; measure yours",
        ),
        Key::new(
            "offset",
            OFFSET,
            "from the guide's edge to the disc's near face, by a test cut",
            "118",
        )
        .number(118.0, "judgement; make a test cut and measure guide to cut"),
        Key::new(
            "overlap",
            Kind::Length(from_to(0.0, 2000.0)),
            "how far a second set-up of a short guide lies on the first cut",
            "150",
        )
        .number(
            150.0,
            "judgement: enough to line up the second set-up on the first cut",
        ),
    ],
};

/// The arms a circle jig may have, mm.
const ARM: Limits = from_to(1.0, 5000.0);

/// `[circle_jig]`.
pub(super) const CIRCLE_JIG: Section = Section {
    path: "circle_jig",
    keys: &[
        Key::new(
            "offset",
            OFFSET,
            "from the arm's mark to the disc's near face, by a test cut",
            "96",
        )
        .number(
            96.0,
            "judgement; make a test cut and measure the arm's mark to the cut",
        ),
        Key::new(
            "reach",
            Kind::List(&Kind::Length(ARM), 2, 2),
            "its shortest and its longest arm",
            "[150, 900]",
        )
        .follows("judgement: a jig of a batten and a pivot; measure yours"),
    ],
};

/// `[passes]`.
pub(super) const PASSES: Section = Section {
    path: "passes",
    keys: &[
        Key::new(
            "rate",
            Kind::Quantity(&FACE_RATE, from_to(0.5, 1000.0)),
            "sawn face a minute, from the practice cut",
            "25",
        )
        .follows("a guess: nothing is published; put in the practice cut's own figure"),
        depth(
            "score",
            from_to(0.2, 20.0),
            "how deep the scoring pass goes",
            "2",
        )
        .number(2.0, "judgement: a shallow first pass protects the arris"),
        depth(
            "step",
            from_to(0.5, 50.0),
            "how deep one pass of a run goes",
            "6",
        )
        .number(
            6.0,
            "hand cuts in Cooper, Johnson and Phillips (2015) were 6 mm deep",
        ),
        depth(
            "plunge_step",
            from_to(0.5, 50.0),
            "how deep one step of a plunge goes",
            "10",
        )
        .number(10.0, "judgement: a plunge meets less stone than a run"),
        depth(
            "through",
            from_to(0.5, 30.0),
            "how far the disc goes through the stone",
            "3",
        )
        .number(3.0, "judgement: the rim is round and the bench uneven"),
        depth(
            "cusp",
            from_to(0.05, 5.0),
            "the highest ridge left between plunges",
            "0.5",
        )
        .number(0.5, "judgement: what is quickly ground off by hand"),
        depth(
            "far_end",
            from_to(0.0, 500.0),
            "the length sawn from the far side first",
            "60",
        )
        .number(
            60.0,
            "judgement: sawn first from the far side so that the corner does not break off",
        ),
        factor(
            "curve_factor",
            "how many times longer a curve takes than a straight cut of the same face",
            "3",
        )
        .number(
            3.0,
            "judgement: a curve of plunges takes three times as long",
        ),
        factor(
            "stopped_factor",
            "how many times longer a stopped cut takes than one that runs off",
            "2",
        )
        .number(
            2.0,
            "judgement: a stopped cut and what it leaves in the corner take twice as long",
        ),
        Key::new(
            "set_up",
            Kind::Quantity(&MINUTES, from_to(0.0, 240.0)),
            "setting up one cut",
            "15",
        )
        .number(15.0, "judgement: measuring, clamping and checking one cut"),
        Key::new(
            "waste_piece",
            Kind::Mass(from_to(0.5, 50.0)),
            "the heaviest piece of waste that a curve may free at once",
            "\"5 kg\"",
        )
        .number(5.0, "judgement: what one person holds while it drops"),
    ],
};

const fn depth(
    name: &'static str,
    limits: Limits,
    meaning: &'static str,
    example: &'static str,
) -> Key {
    Key::new(name, Kind::Length(limits), meaning, example)
}

const fn factor(name: &'static str, meaning: &'static str, example: &'static str) -> Key {
    let kind = Kind::Quantity(&NUMBER, from_to(1.0, 20.0));
    Key::new(name, kind, meaning, example)
}
