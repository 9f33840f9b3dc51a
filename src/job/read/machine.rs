//! `[machine]`: the grinder or saw.

use crate::job::reader::Reader;
use crate::job::{Machine, MachineKind, Power, Protection, Vibration};

/// Uncertainty when the maker states none, share of the magnitude (HSE OC 246/31).
const UNCERTAINTY: f64 = 0.4;
/// How much higher a level is C-weighted than A-weighted, dB (judgement: the difference at which the
/// HML method gives M; high noise such as a disc's is lower).
const C_OVER_A: f64 = 2.0;

/// Reads the machine.
pub(super) fn read(r: &mut Reader<'_>) -> Machine {
    let power = r.word("power", Power::Mains);
    let noise_db = r.quantity("noise");
    Machine {
        kind: r.word("kind", MachineKind::AngleGrinder),
        rpm: r.quantity("rpm"),
        power,
        wet_rated: r.flag("wet_rated"),
        protected: protection(r, power),
        plate_mm: r.length("plate"),
        vibration: vibration(r),
        noise_db,
        noise_c_db: r.quantity_else("noise_c", noise_db + C_OVER_A),
        seat_mm: r.length("seat"),
        largest_disc_mm: r.get("largest_disc").and_then(|given| given.length()),
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
        r.assume_because("protected", word, why);
        return taken;
    };
    let taken = given.word().unwrap_or(Protection::None);
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
        let a = r.quantity("a");
        let k = r.quantity_else("k", UNCERTAINTY * a);
        Vibration { a, k }
    })
}
