//! `[stone]`: kind, thickness, density, strength, silica.

use crate::job::given::Given;
use crate::job::keys::{DENSITIES, Tested, elsewhere};
use crate::job::ledger::{Ledger, TextRange};
use crate::job::quantity::{DENSITY, NUMBER, PERCENT, STRENGTH};
use crate::job::reader::Reader;
use crate::job::words::{nearest, plain, short};
use crate::job::{Asbestos, Binder, Range, Slab, Steel, Stone, Thickness};
use crate::tables::stone::{Spread, StoneKind, StoneRecord};

/// Safety factor of a stone that is not in the table: the greatest in it (judgement).
const OWN_SAFETY_FACTOR: f64 = 8.0;
/// The stone, and where its weight was said.
#[derive(Debug)]
pub(super) struct StoneGiven {
    stone: Stone,
    weighed_span: TextRange,
    density_given: bool,
}

/// Reads the stone. The density of a weighed slab follows later, from [`weigh`].
pub(super) fn read(r: &mut Reader<'_>, wanted: bool) -> Option<StoneGiven> {
    let kind_given = r.get("kind");
    let thickness = r.get("thickness");
    let [density, strength, silica] = ["density", "strength", "silica"].map(|key| r.get(key));
    let safety_factor = r.get("safety_factor");
    let (weighed, said) = (r.get("weighed"), r.get("said"));
    let steel = r.word("steel", Steel::Unknown);
    let binder = r.get("binder").and_then(|given| given.word());
    let asbestos = asbestos(r);
    if wanted && kind_given.is_none() {
        r.missing("kind");
    }
    if wanted && thickness.is_none() {
        r.missing("thickness");
    }
    let has_all = density.is_some() && strength.is_some() && silica.is_some();
    let kind = kind_given.and_then(|given| kind(&given, has_all));
    let table = Table {
        r,
        name: kind.as_ref().map_or("", |k| &k.1),
        record: kind.as_ref().and_then(|k| k.0.record()),
    };
    // Each is read before any may end the reading, so that every fault is noted.
    let density_range = table.density(density.as_ref(), weighed.is_some());
    let strength_mpa = table.strength(strength.as_ref());
    let silica = table.silica(silica.as_ref());
    let safety_factor = table.safety_factor(safety_factor.as_ref());
    let thickness = thickness.and_then(|given| readings(&given));
    let on_scale = weighed.as_ref().map(Given::mass);
    let said = said.map(|s| s.mass());
    let strength_source = match (strength, table.record) {
        (None, Some(record)) => record.strength_mpa.source.cite(),
        _ => "the job file".to_owned(),
    };
    let (kind, name) = kind.clone()?;
    Some(StoneGiven {
        stone: Stone {
            kind,
            name,
            thickness: thickness?,
            density: density_range?,
            strength_mpa: strength_mpa?,
            strength_source,
            safety_factor: safety_factor?,
            silica: silica?,
            steel,
            binder: binder.unwrap_or_else(|| binder_of(kind)),
            asbestos,
            weighed: on_scale.flatten(),
            said: said.flatten(),
        },
        weighed_span: weighed.and_then(|w| w.span),
        density_given: density.is_some(),
    })
}

/// What is known of asbestos minerals: "tested free" counts only with the report's name and its date.
fn asbestos(r: &Reader<'_>) -> Asbestos {
    let given = r.get("asbestos");
    let tested = given.as_ref().and_then(Given::word);
    let report = r.text("report");
    let date = r.get("date").and_then(|given| given.date());
    match (tested, date) {
        (Some(Tested::Free), Some(date)) if !report.is_empty() => {
            Asbestos::TestedFree { report, date }
        }
        (Some(Tested::Free), _) => {
            if let Some(given) = given {
                given.fault::<()>(
                    "is \"tested free\" without a report",
                    "add report = \"name or number, laboratory\" and date = 2026-11-30 to [stone]",
                );
            }
            Asbestos::NotTested
        }
        _ => Asbestos::NotTested,
    }
}

/// What binds a kind when nothing is said: nothing is known of a made slab or a stone of the user's own.
fn binder_of(kind: StoneKind) -> Binder {
    match kind {
        StoneKind::EngineeredStone => Binder::Resin,
        StoneKind::Own | StoneKind::Terrazzo | StoneKind::Porcelain | StoneKind::SinteredStone => {
            Binder::Unknown
        }
        _ => Binder::Natural,
    }
}

/// The stone with the density that follows from the weight of the whole slab, if it was weighed.
pub(super) fn weigh(ledger: &Ledger, given: StoneGiven, slab: Option<&Slab>) -> Stone {
    let StoneGiven {
        mut stone,
        weighed_span,
        density_given,
    } = given;
    let (Some(weighed), Some(slab)) = (stone.weighed, slab) else {
        return stone;
    };
    let volume_m3 = slab.shape.outline().area() * stone.thickness.mean * 1e-9;
    let density = weighed.kg() / volume_m3;
    let (key, span) = ("stone.weighed", weighed_span);
    if let Some(why) = DENSITIES.broken_by(density, |d| DENSITY.show(d)) {
        let message = format!("{key} gives a density of {why}");
        let hint = "check the weight, its unit, the slab's size and its thickness";
        ledger.fault(key, span, message, hint);
        return stone;
    }
    if let Some((message, hint)) = against_other_figures(&stone, density, density_given) {
        ledger.remark(key, span, format!("{key} gives {message}"), hint);
    }
    stone.density = exactly(density);
    stone
}

/// What to remark when a weighed density stands against the file's own or the table's.
fn against_other_figures(
    stone: &Stone,
    density: f64,
    density_given: bool,
) -> Option<(String, &'static str)> {
    let weighed = DENSITY.show(density);
    let Range { low, high, .. } = stone.density;
    if density_given {
        let message = format!("{weighed} and replaces stone.density");
        return Some((message, "leave stone.density out"));
    }
    (density < low || density > high).then(|| {
        let (low, high) = (DENSITY.show(low), DENSITY.show(high));
        let name = &stone.name;
        (
            format!("{weighed}; {name} is {low} to {high} in the table"),
            "the weight is used; check it, the slab's size, its thickness and the kind of stone",
        )
    })
}

/// Kind and name, from the table or of the user's own.
fn kind(given: &Given<'_>, has_all: bool) -> Option<(StoneKind, String)> {
    let name = given.text()?;
    if let Some(kind) = StoneKind::parse(name) {
        return Some((kind, kind.name().to_owned()));
    }
    if has_all && !name.trim().is_empty() {
        return Some((StoneKind::Own, name.trim().to_owned()));
    }
    let names = StoneKind::ALL.map(StoneKind::name);
    let near = elsewhere(name, &names);
    let near = near.or_else(|| nearest(&plain(name), names.iter().copied()));
    let near = near.map_or(String::new(), |near| format!("did you mean \"{near}\"? "));
    given.fault(
        &format!("is \"{name}\", which is not in the table of stones"),
        format!(
            "{near}The table has {}; a kind of your own needs density, strength and silica",
            names.join(", ")
        ),
    )
}

fn readings(given: &Given<'_>) -> Option<Thickness> {
    let readings = given.one_or_list()?;
    let mm: Vec<_> = readings.iter().map(Given::length).collect();
    let mm: Vec<f64> = mm.into_iter().collect::<Option<_>>()?;
    let count = u32::try_from(mm.len()).ok()?;
    Some(Thickness {
        least: mm.iter().copied().fold(f64::INFINITY, f64::min),
        mean: mm.iter().sum::<f64>() / f64::from(count),
        most: mm.iter().copied().fold(0.0, f64::max),
    })
}

/// Silica in per cent of mass, as a share. A bare number below 1 could be either.
fn silica_share(given: &Given<'_>) -> Option<f64> {
    if let Some(bare) = given.bare_number()
        && bare > 0.0
        && bare < 1.0
    {
        let percent = short(bare * 100.0);
        let bare = short(bare);
        return given.fault(
            &format!("is {bare}: it could be {bare} % or a share of {percent} %"),
            format!("write it as \"{bare} %\" or \"{percent} %\""),
        );
    }
    Some(given.quantity()? / 100.0)
}

const fn exactly(value: f64) -> Range {
    Range {
        low: value,
        likely: value,
        high: value,
    }
}

/// What the table of stones has for the values that the file leaves open.
struct Table<'r, 'a> {
    r: &'r Reader<'a>,
    name: &'r str,
    /// Nothing for a kind of the user's own, or one that could not be read.
    record: Option<&'static StoneRecord>,
}

impl Table<'_, '_> {
    fn density(&self, given: Option<&Given<'_>>, weighed: bool) -> Option<Range> {
        if let Some(given) = given {
            return given.quantity().map(exactly);
        }
        let spread = &self.record?.density_kg_m3;
        let range = range(spread);
        if !weighed {
            let value = between(range, |v| DENSITY.show(v));
            self.assume("density", value, &spread.source.cite());
        }
        Some(range)
    }

    fn strength(&self, given: Option<&Given<'_>>) -> Option<f64> {
        if let Some(given) = given {
            return given.quantity();
        }
        let figure = &self.record?.strength_mpa;
        let value = STRENGTH.show(figure.value);
        self.assume("strength", value, &figure.source.cite());
        Some(figure.value)
    }

    fn silica(&self, given: Option<&Given<'_>>) -> Option<Range> {
        if let Some(given) = given {
            return silica_share(given).map(exactly);
        }
        let spread = &self.record?.silica_share;
        let range = range(spread);
        let value = between(range, |v| PERCENT.show(v * 100.0));
        self.assume("silica", value, &spread.source.cite());
        Some(range)
    }

    fn safety_factor(&self, given: Option<&Given<'_>>) -> Option<f64> {
        if let Some(given) = given {
            return given.quantity();
        }
        let (factor, why) = match self.record {
            Some(record) => {
                let figure = &record.safety_factor;
                (figure.value, figure.source.cite())
            }
            None => (OWN_SAFETY_FACTOR, "judgement: as limestone".to_owned()),
        };
        self.assume("safety_factor", NUMBER.show(factor), &why);
        Some(factor)
    }

    fn assume(&self, key: &str, value: String, source: &str) {
        let why = format!("{}: {source}", self.name);
        self.r.assume_because(key, value, &why);
    }
}

const fn range(spread: &Spread) -> Range {
    Range {
        low: spread.low,
        likely: spread.likely,
        high: spread.high,
    }
}

fn between(range: Range, show: impl Fn(f64) -> String) -> String {
    let [low, likely, high] = [range.low, range.likely, range.high].map(show);
    format!("{low} to {high}, likely {likely}")
}
