//! `[[disc]]`: the cutting discs of the kit.

use crate::job::given::Given;
use crate::job::keys::Carrier;
use crate::job::ledger::Ledger;
use crate::job::reader::Reader;
use crate::job::{Bond, Disc, DiscUse};
use crate::tables::disc::BORE_MM;
use crate::units::LengthUnit;

/// Rim speed that diamond discs for hand machines are marked for, m/s (EN 12413, red stripe).
const MARKED_RIM_SPEED: f64 = 80.0;
/// Marked speeds are round numbers of turns.
const MARK_STEP: f64 = 50.0;
/// The disc that is taken when none is given, mm (common practice).
const DIAMETER: f64 = 125.0;
const KERF: f64 = 2.2;
const OBSTRUCTION: f64 = 42.0;

/// Reads the discs; one is assumed when there are none.
pub(super) fn read(root: &mut Reader<'_>) -> Vec<Disc> {
    let mut names: Vec<String> = Vec::new();
    let discs = root.each("disc", |r| one(r, &mut names));
    if !discs.is_empty() {
        return discs;
    }
    let disc = Disc {
        name: match root.ledger.length_unit() {
            LengthUnit::Millimetre => "125 continuous rim",
            LengthUnit::Inch => "5 in continuous rim",
        }
        .to_owned(),
        diameter: DIAMETER,
        kerf: KERF,
        obstruction: OBSTRUCTION,
        max_rpm: marked_rpm(DIAMETER),
        bore: BORE_MM,
        bond: Bond::Diamond,
        usage: DiscUse::All,
    };
    let [kerf, obstruction] = [disc.kerf, disc.obstruction].map(|mm| root.ledger.length(mm));
    let value = format!(
        "{}: kerf {kerf}, obstruction {obstruction}, marked {} rpm, for all cuts",
        disc.name, disc.max_rpm
    );
    let why = root.why("disc");
    root.ledger.assume("disc[0]", value, why);
    vec![disc]
}

fn one(r: &mut Reader<'_>, names: &mut Vec<String>) -> Option<Disc> {
    let named = r.get("name");
    let sizes = [r.get("obstruction"), r.get("diameter")];
    let diameter = r.length("diameter");
    let kerf = r.length("kerf");
    let obstruction = r.length("obstruction");
    let max_rpm = r.quantity_else("max_rpm", marked_rpm(diameter));
    let bore = r.length("bore");
    let bond = bond(r);
    let usage = r.word("for", DiscUse::All);
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
        name: name(named.as_ref(), r.ledger, diameter, names)?,
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
    let resin = r.word("bond", Carrier::Diamond) == Carrier::Resin;
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
fn name(
    given: Option<&Given<'_>>,
    ledger: &Ledger,
    diameter: f64,
    names: &mut Vec<String>,
) -> Option<String> {
    let name = match given {
        Some(given) => given.text()?.to_owned(),
        None => format!("disc of {}", ledger.length(diameter)),
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
