//! `[machine]`: the grinder or saw.

use crate::job::quantity::{NOISE, NOISE_C, SPEED, VIBRATION, from_to};
use crate::job::reader::Reader;
use crate::job::{Machine, MachineKind, Power, Protection, Vibration};
use crate::tables::disc::BORE_MM;

const KINDS: [(&str, MachineKind); 2] = [
    ("angle grinder", MachineKind::AngleGrinder),
    ("hand saw", MachineKind::HandSaw),
];
const POWERS: [(&str, Power); 4] = [
    ("mains", Power::Mains),
    ("battery", Power::Battery),
    ("air", Power::Air),
    ("engine", Power::Engine),
];
const PROTECTIONS: [(&str, Protection); 5] = [
    ("rcd", Protection::Rcd),
    ("gfci", Protection::Gfci),
    ("110v-cte", Protection::CentreTapped110V),
    ("battery", Protection::Battery),
    ("none", Protection::None),
];
/// Vibration of a grinder cutting stone, m/s² (HSE stonemasonry pages, Table 1, 2026: 4 to 13, use 9).
const VIBRATION_OF_GRINDER: f64 = 9.0;
/// Uncertainty when the maker states none, share of the magnitude (HSE OC 246/31).
const UNCERTAINTY: f64 = 0.4;
/// Noise at the ear, dB(A): the lower end of what a 350 mm diamond blade makes (IFA 4214: 105 to 107).
const NOISE_OF_BLADE: f64 = 105.0;
/// How much higher a level is C-weighted than A-weighted, dB (judgement: the difference at which the
/// HML method gives M; high noise such as a disc's is lower).
const C_OVER_A: f64 = 2.0;

/// Reads the machine.
pub(super) fn read(r: &mut Reader<'_>) -> Machine {
    let kind = r.choice_or(
        "kind",
        &KINDS,
        MachineKind::AngleGrinder,
        "the usual machine",
    );
    let rpm = r.quantity_or(
        "rpm",
        &SPEED,
        from_to(500.0, 30_000.0),
        11_000.0,
        "common practice: many 125 mm grinders; read the plate of yours",
    );
    let power = r.choice_or(
        "power",
        &POWERS,
        Power::Mains,
        "the case that asks for most care",
    );
    let noise_db = r.quantity_or(
        "noise",
        &NOISE,
        from_to(40.0, 140.0),
        NOISE_OF_BLADE,
        "IFA 4214: diamond blades 105 to 107 dB(A) at the ear",
    );
    let wet_rated = r.flag_or("wet_rated", false, "not known to be built for wet use");
    Machine {
        kind,
        rpm,
        power,
        wet_rated,
        protected: protection(r, power),
        plate_mm: r.length_or(
            "plate",
            from_to(0.0, 100.0),
            6.0,
            "judgement: a thin jig base; measure yours",
        ),
        vibration: vibration(r),
        noise_db,
        noise_c_db: r.quantity_or(
            "noise_c",
            &NOISE_C,
            from_to(40.0, 150.0),
            noise_db + C_OVER_A,
            "judgement: 2 dB above the A-weighted level, where HML gives M; measure yours",
        ),
        seat_mm: r.length_or(
            "seat",
            from_to(5.0, 100.0),
            BORE_MM,
            "the usual seat of hand machines, 7/8 in; measure yours",
        ),
    }
}

fn protection(r: &mut Reader<'_>, power: Power) -> Protection {
    let Some(given) = r.get("protected") else {
        let (taken, word, why) = match power {
            Power::Battery => (
                Protection::Battery,
                "battery",
                "the machine runs on a battery",
            ),
            Power::Mains => (Protection::None, "none", "not known to be protected"),
            Power::Air | Power::Engine => (Protection::None, "none", "no electric supply"),
        };
        r.ledger.assume(r.key("protected"), word, why);
        return taken;
    };
    let taken = given.choice(&PROTECTIONS).unwrap_or(Protection::None);
    if taken == Protection::Battery && power != Power::Battery {
        given.fault::<()>(
            "is \"battery\", but the machine does not run on one",
            "give machine.power = \"battery\", or how the supply is protected: rcd, gfci, 110v-cte, none",
        );
    }
    taken
}

fn vibration(r: &mut Reader<'_>) -> Vibration {
    r.section("vibration", |r| {
        let range = from_to(0.0, 50.0);
        let a = r.quantity_or(
            "a",
            &VIBRATION,
            range,
            VIBRATION_OF_GRINDER,
            "HSE stonemasonry pages, Table 1 (2026): grinder cutting stone, 4 to 13 m/s²",
        );
        let why = "HSE OC 246/31: 40 % of the magnitude when the maker states no uncertainty";
        let k = r.quantity_or("k", &VIBRATION, range, UNCERTAINTY * a, why);
        Vibration { a, k }
    })
}
