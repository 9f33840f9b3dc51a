//! Where the figures for stone come from.

use crate::tables::{Source, Sure};

/// Density of natural stones.
pub static CEN_DENSITY: Source = Source::new(
    "density of natural stone, low and high",
    "CEN/TR 17024",
    "",
    0,
    Sure::Quoted,
);
/// Density of kinds outside the CEN list.
pub static TRADE_DENSITY: Source = Source::new(
    "density of gabbro, quartzite, limestone, low and high",
    "rock property tables, document not recorded",
    "",
    0,
    Sure::Quoted,
);
/// Density of travertine.
pub static TRAVERTINE_DENSITY: Source = Source::new(
    "density of travertine: low end the ASTM minimum, high end as limestone",
    "ASTM C1527 and our judgement",
    "",
    0,
    Sure::Judgement,
);
/// Density of soapstone.
pub static SOAPSTONE_DENSITY: Source = Source::new(
    "density of soapstone: 2980 kg/m³, with 3 % either way as our judgement",
    "a producer's data sheet",
    "",
    0,
    Sure::Judgement,
);
/// Soapstone as a producer gives it.
pub static SOAPSTONE_PRODUCER: Source = Source::new(
    "soapstone: density 2980 kg/m³, flexural strength 15.7 to 16.8 MPa",
    "a producer's data sheet",
    "",
    0,
    Sure::Read,
);
/// Resin-bound quartz as a producer gives it.
pub static RESIN_QUARTZ_PRODUCER: Source = Source::new(
    "resin-bound quartz: density 2320 to 2480 kg/m³, flexural strength 42 to 80 MPa",
    "a producer's data sheet",
    "EN 14617-1 (density)",
    0,
    Sure::Read,
);
/// Density of porcelain and terrazzo.
pub static MADE_DENSITY: Source = Source::new(
    "density of porcelain and terrazzo",
    "no document found",
    "",
    0,
    Sure::Memory,
);
/// Density of sintered slabs.
pub static SINTERED_AS_PORCELAIN: Source = Source::new(
    "sintered slab taken as porcelain: ask for its data sheet",
    "no document found",
    "",
    0,
    Sure::Judgement,
);

/// Strength of granite.
pub static ASTM_C615: Source = Source::new(
    "flexural strength of granite, least",
    "ASTM C615 (test C880)",
    "",
    0,
    Sure::Quoted,
);
/// Safety factor of rocks sold as granite.
pub static FACTOR_AS_GRANITE: Source = Source::new(
    "safety factor of gabbro, basalt, gneiss: taken as granite's, as their strength is",
    "Beall, stone design, Table 1",
    "row granite",
    0,
    Sure::Judgement,
);
/// Strength of rocks sold as granite.
pub static AS_GRANITE: Source = Source::new(
    "flexural strength of gabbro, basalt, gneiss: taken as granite's least",
    "ASTM C615 (test C880)",
    "",
    0,
    Sure::Judgement,
);
/// Strength of marble.
pub static ASTM_C503: Source = Source::new(
    "flexural strength of marble, least",
    "ASTM C503 (test C880)",
    "",
    0,
    Sure::Quoted,
);
/// Strength of limestone.
pub static ASTM_C568: Source = Source::new(
    "modulus of rupture of limestone, medium density, least; no flexural minimum found",
    "ASTM C568 (test C99)",
    "",
    0,
    Sure::Quoted,
);
/// Strength of travertine.
pub static ASTM_C1527: Source = Source::new(
    "flexural strength of travertine, least",
    "ASTM C1527 (test C880)",
    "",
    0,
    Sure::Quoted,
);
/// Strength of sandstone.
pub static ASTM_C616: Source = Source::new(
    "modulus of rupture of sandstone, least; no flexural minimum found",
    "ASTM C616 (test C99)",
    "",
    0,
    Sure::Quoted,
);
/// Strength of quartzite.
pub static QUARTZITE_STRENGTH: Source = Source::new(
    "modulus of rupture of quartzitic sandstone, least, taken for quartzite because the two are \
     sold under one name (true quartzite 13.79 MPa)",
    "ASTM C616 (test C99)",
    "",
    0,
    Sure::Judgement,
);
/// Strength of slate.
pub static ASTM_C629: Source = Source::new(
    "modulus of rupture of interior slate across the grain, least",
    "ASTM C629 (test C120)",
    "",
    0,
    Sure::Quoted,
);
/// Strength of porcelain.
pub static PORCELAIN_STRENGTH: Source = Source::new(
    "modulus of rupture of porcelain, least",
    "ISO 13006",
    "group BIa",
    0,
    Sure::Memory,
);
/// Strength of terrazzo.
pub static TERRAZZO_STRENGTH: Source = Source::new(
    "flexural strength of a single terrazzo tile, least",
    "EN 13748-1",
    "",
    0,
    Sure::Memory,
);

/// Safety factors by kind of stone.
pub static BEALL: Source = Source::new(
    "safety factor: granite 3, marble 5, limestone 8",
    "Beall",
    "Table 1",
    0,
    Sure::Read,
);
/// Safety factor of kinds without a row.
pub static HIGHEST_FACTOR: Source = Source::new(
    "safety factor 8 for a kind without a row: the highest that is published",
    "Beall",
    "Table 1",
    0,
    Sure::Judgement,
);

/// Silica by stone, British list.
pub static HSG201: Source = Source::new(
    "crystalline silica by stone, share of mass",
    "HSE HSG201, 2nd ed., as listed by HSENI",
    "",
    2022,
    Sure::Read,
);
/// Silica in granite.
pub static GRANITE_SILICA: Source = Source::new(
    "crystalline silica in granite: low end and typical value British, high end Victorian",
    "HSE HSG201, 2nd ed.; WorkSafe Victoria",
    "",
    2022,
    Sure::Read,
);
/// Silica by stone, Australian list.
pub static SWA_SILICA: Source = Source::new(
    "crystalline silica by stone, share of mass",
    "Safe Work Australia",
    "",
    0,
    Sure::Read,
);
/// Silica in quartzite.
pub static QUARTZITE_SILICA: Source = Source::new(
    "crystalline silica in quartzite: more than 70 % published, high end taken as all of it",
    "HSE HSG201, 2nd ed., as listed by HSENI",
    "",
    2022,
    Sure::Judgement,
);
/// Silica in gneiss.
pub static GNEISS_SILICA: Source = Source::new(
    "crystalline silica in gneiss: taken as granite's",
    "HSE HSG201, 2nd ed.; WorkSafe Victoria",
    "",
    2022,
    Sure::Judgement,
);
/// Silica in gabbro.
pub static GABBRO_SILICA: Source = Source::new(
    "crystalline silica in gabbro: taken as basalt's",
    "no document found",
    "",
    0,
    Sure::Memory,
);
/// Silica in travertine.
pub static TRAVERTINE_SILICA: Source = Source::new(
    "crystalline silica in travertine: taken as limestone's",
    "HSE HSG201, 2nd ed., as listed by HSENI",
    "",
    2022,
    Sure::Judgement,
);
/// Silica in soapstone.
pub static SOAPSTONE_SILICA: Source = Source::new(
    "crystalline silica in soapstone: less than 1 %",
    "29 CFR 1910.1000",
    "Table Z-3",
    0,
    Sure::Read,
);
/// Silica in terrazzo.
pub static TERRAZZO_SILICA: Source = Source::new(
    "crystalline silica in terrazzo: that of its chips; high end as concrete",
    "no document found",
    "",
    0,
    Sure::Memory,
);
/// Silica in engineered stone.
pub static ENGINEERED_SILICA: Source = Source::new(
    "crystalline silica in engineered stone: up to 97 %; low end the legal definition's 1 %",
    "Safe Work Australia",
    "",
    2024,
    Sure::Read,
);
/// Likely silica in engineered stone.
pub static ENGINEERED_LIKELY: Source = Source::new(
    "likely silica in engineered stone whose data sheet is not at hand: 90 %",
    "our judgement",
    "",
    0,
    Sure::Judgement,
);
/// Silica in porcelain.
pub static PORCELAIN_SILICA: Source = Source::new(
    "crystalline silica in porcelain: 14 to 18 %; 21 ± 5 % in more than 300 tests",
    "WorkSafe Victoria; Molinari et al.",
    "",
    2024,
    Sure::Read,
);
