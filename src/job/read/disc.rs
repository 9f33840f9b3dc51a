//! `[[disc]]`: the cutting discs of the kit.

use crate::job::given::Given;
use crate::job::quantity::{Limits, SPEED, from_to};
use crate::job::reader::Reader;
use crate::job::words::short;
use crate::job::{Bond, Disc, DiscUse};
use crate::tables::disc::BORE_MM;

const USES: [(&str, DiscUse); 3] = [
    ("all", DiscUse::All),
    ("straights", DiscUse::Straights),
    ("curves", DiscUse::Curves),
];
/// What carries the grains of a disc.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Kept {
    Steel,
    Resin,
}
const BONDS: [(&str, Kept); 2] = [("diamond", Kept::Steel), ("resin", Kept::Resin)];
/// The most discs of one kit (judgement).
const MOST_DISCS: usize = 16;
/// Rim speed that diamond discs for hand machines are marked for, m/s (EN 12413, red stripe).
const MARKED_RIM_SPEED: f64 = 80.0;
/// Marked speeds are round numbers of turns.
const MARK_STEP: f64 = 50.0;
/// Diameter of the disc that is taken when none is given, mm.
const DIAMETER: f64 = 125.0;
/// Discs for hand machines, mm (judgement).
const DIAMETERS: Limits = from_to(50.0, 400.0);
/// Width of the cut of a thin disc, mm (common practice).
const KERF: f64 = 2.2;
/// Flange or gear head of a 125 mm grinder, mm (common practice).
const OBSTRUCTION: f64 = 42.0;

/// Reads the discs; one is assumed when there are none.
pub(super) fn read(root: &mut Reader<'_>) -> Vec<Disc> {
    let mut names: Vec<String> = Vec::new();
    let discs = root.each("disc", MOST_DISCS, |r| one(r, &mut names));
    if !discs.is_empty() {
        return discs;
    }
    let disc = Disc {
        name: "125 continuous rim".to_owned(),
        diameter: DIAMETER,
        kerf: KERF,
        obstruction: OBSTRUCTION,
        max_rpm: marked_rpm(DIAMETER),
        bore: BORE_MM,
        bond: Bond::Diamond,
        usage: DiscUse::All,
    };
    let value = format!(
        "{}: kerf {} mm, obstruction {} mm, marked {} rpm, for all cuts",
        disc.name, disc.kerf, disc.obstruction, disc.max_rpm
    );
    let why = "common practice: a thin diamond disc for a 125 mm grinder; measure yours";
    root.ledger.assume("disc[0]", value, why);
    vec![disc]
}

fn one(r: &mut Reader<'_>, names: &mut Vec<String>) -> Option<Disc> {
    let named = r.get("name");
    let sizes = [r.get("obstruction"), r.get("diameter")];
    let diameter = r.length_or("diameter", DIAMETERS, DIAMETER, "the usual hand size");
    let why = "thin discs are 1.5 to 2.2 mm; measure a practice cut";
    let kerf = r.length_or("kerf", from_to(0.8, 8.0), KERF, why);
    let why = "common practice: the flange of a 125 mm grinder; measure yours";
    let obstruction = r.length_or("obstruction", from_to(10.0, 390.0), OBSTRUCTION, why);
    let why = "EN 12413, 80 m/s at the rim; read the mark on the disc and give it here";
    let speeds = from_to(500.0, 30_000.0);
    let max_rpm = r.quantity_or("max_rpm", &SPEED, speeds, marked_rpm(diameter), why);
    let bores = from_to(5.0, 100.0);
    let bore = r.length_or(
        "bore",
        bores,
        BORE_MM,
        "7/8 in, the usual bore; measure yours",
    );
    let bond = bond(r);
    let why = "no disc is kept for one kind of cut";
    let usage = r.choice_or("for", &USES, DiscUse::All, why);
    let sound = !r.ledger.has_fault_at(&r.key("diameter"));
    if sound && obstruction >= diameter {
        let message = format!(
            "leaves nothing to cut with: obstruction {}, diameter {}",
            r.ledger.length(obstruction),
            r.ledger.length(diameter)
        );
        let at = sizes.into_iter().flatten().next()?;
        return at.fault(
            &message,
            "the obstruction is the wider of flange and gear head",
        );
    }
    Some(Disc {
        name: name(named.as_ref(), diameter, names)?,
        diameter,
        kerf,
        obstruction,
        max_rpm,
        bore,
        bond,
        usage,
    })
}

/// What holds the disc together; only resin has a last day.
fn bond(r: &mut Reader<'_>) -> Bond {
    let why = "discs for stone are diamond on steel; say \"resin\" for a reinforced one";
    let resin = r.choice_or("bond", &BONDS, Kept::Steel, why) == Kept::Resin;
    let given = r.get("expires");
    if resin {
        let expires = given.and_then(|day| day.date()).unwrap_or_default();
        return Bond::Resin { expires };
    }
    if let Some(given) = given {
        given.fault::<()>(
            "stands on a diamond disc, which has no last day",
            "give bond = \"resin\" if it is a reinforced one, or leave it out",
        );
    }
    Bond::Diamond
}

/// The name of a disc, which no other may have.
fn name(given: Option<&Given<'_>>, diameter: f64, names: &mut Vec<String>) -> Option<String> {
    let name = match given {
        Some(given) => given.text()?.to_owned(),
        None => format!("disc of {} mm", short(diameter)),
    };
    if let Some(given) = given
        && names.contains(&name)
    {
        let message = format!("is \"{name}\", which another disc is called already");
        return given.fault(&message, "give each disc a name of its own");
    }
    names.push(name.clone());
    Some(name)
}

/// The speed a disc of a diameter in mm is marked with, as far as it follows from the rim speed.
fn marked_rpm(diameter: f64) -> f64 {
    let exact = MARKED_RIM_SPEED * 60_000.0 / (std::f64::consts::PI * diameter);
    (exact / MARK_STEP).floor() * MARK_STEP
}
