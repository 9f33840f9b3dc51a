//! The keys of `[job]` and `[stone]`.

use super::key::{Key, Kind, Section};
use super::word::{Tested, stones, words};
use crate::job::quantity::{DENSITY, Limits, NUMBER, PERCENT, STRENGTH, from_to};
use crate::job::{Binder, Steel};
use crate::tables::region::RegionCode;
use crate::units::LengthUnit;
use crate::words::Language;

/// `[job]`.
pub(super) const JOB: Section = Section {
    path: "job",
    keys: &[
        Key::new("title", Kind::Text, "what the sheet is called", "\"Tea counter\"")
            .open("the sheet has no title"),
        Key::new(
            "units",
            Kind::Word(words::<LengthUnit>),
            "the unit of bare numbers, and of what is printed",
            "\"mm\"",
        )
        .word("mm", "the format's own unit"),
        Key::new(
            "region",
            Kind::Word(words::<RegionCode>),
            "whose rules apply",
            "\"eu\"",
        )
        .word(
            "other",
            "no region was given, so the strictest published values; ask for your own current rules",
        ),
        Key::new("date", Kind::Date, "the day of the job; no clock is read", "2026-11-30")
            .open("no date is printed"),
        Key::new("made_for", Kind::Text, "a line of the title block", "\"the courtyard room\"")
            .open(NO_LINE),
        Key::new("made_by", Kind::Text, "a line of the title block", "\"the workshop\"")
            .open(NO_LINE),
        Key::new("note", Kind::Text, "a line of the title block", "\"seat of the yard wall\"")
            .open(NO_LINE),
        Key::new(
            "language",
            Kind::Word(words::<Language>),
            "the language of the helper's and the safety page",
            "\"de\"",
        )
        .open("English"),
    ],
};

const NO_LINE: &str = "the line is left out";

/// Density of anything sold as a slab of stone, kg/m³ (judgement: wider than every row of the table).
pub(in crate::job) const DENSITIES: Limits = from_to(1000.0, 4000.0);
/// Thickness of a slab that is sawn by hand, mm (judgement).
const THICKNESS: Kind = Kind::Length(from_to(5.0, 200.0));
/// Readings of thickness that are taken (judgement).
const MOST_READINGS: usize = 100;
/// Mass of a whole slab, kg (judgement).
const SLAB_MASS: Kind = Kind::Mass(from_to(1.0, 10_000.0));
const BY_TABLE: &str = "from the table of stones";

/// `[stone]`.
pub(super) const STONE: Section = Section {
    path: "stone",
    keys: &[
        Key::new(
            "kind",
            Kind::Name(stones),
            "the kind of stone; one of your own needs density, strength and silica",
            "\"granite\"",
        ),
        Key::new(
            "thickness",
            Kind::Either(&[THICKNESS, Kind::List(&THICKNESS, 1, MOST_READINGS)]),
            "the thickness of the slab, one reading or several",
            "[29.7, 30.3, 30]",
        ),
        Key::new(
            "steel",
            Kind::Word(words::<Steel>),
            "rods, dowels or mesh in the stone or glued to its back",
            "\"none\"",
        )
        .word(
            "not known",
            "nobody said whether rods, dowels or mesh are in the stone or glued to its back",
        ),
        Key::new(
            "binder",
            Kind::Word(words::<Binder>),
            "what binds the stone: none (natural stone), cement, resin, fired",
            "\"none\"",
        )
        .follows("from the kind of stone; not known for terrazzo, fired slabs and a stone of your own"),
        Key::new(
            "asbestos",
            Kind::Word(words::<Tested>),
            "whether this slab was tested for asbestos minerals; \"tested free\" needs report and date",
            "\"tested free\"",
        )
        .open("it counts as not tested"),
        Key::new(
            "report",
            Kind::Text,
            "name or number of the report on asbestos minerals, and who made it",
            "\"12/7, stone laboratory\"",
        )
        .open("there is none"),
        Key::new("date", Kind::Date, "the date of that report", "2026-10-01").open("there is none"),
        Key::new(
            "weighed",
            SLAB_MASS,
            "the whole slab on a scale; it replaces the density",
            "\"206 kg\"",
        )
        .open("the weight follows from the density"),
        Key::new(
            "said",
            SLAB_MASS,
            "what the seller says it weighs; only compared",
            "\"230 kg\"",
        )
        .open("nothing is compared"),
        Key::new(
            "density",
            Kind::Quantity(&DENSITY, DENSITIES),
            "the density of this stone",
            "2950",
        )
        .follows(BY_TABLE),
        // From the weakest sandstone to a glassy porcelain (judgement).
        Key::new(
            "strength",
            Kind::Quantity(&STRENGTH, from_to(0.5, 150.0)),
            "the bending strength of this stone",
            "14",
        )
        .follows(BY_TABLE),
        Key::new(
            "safety_factor",
            Kind::Quantity(&NUMBER, from_to(1.0, 20.0)),
            "by how much the strength is divided before it is used",
            "4",
        )
        .follows(BY_TABLE),
        Key::new(
            "silica",
            Kind::Quantity(&PERCENT, from_to(0.0, 100.0)),
            "crystalline silica, per cent of the mass",
            "\"5 %\"",
        )
        .follows(BY_TABLE),
    ],
};
