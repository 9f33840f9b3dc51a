//! A brace for narrow stone: straight timber clamped along it, on edge.
//!
//! Stone and timber are clamped, not glued: both bend to the same curve, and share the moment as
//! their stiffnesses. The timber's place along the rail and its clamps are the person's to judge.

use serde::Serialize;

/// Young's modulus of stone, `MPa`: the stiffer the stone the more it takes (judgement: on the high
/// side of granite and gabbro).
pub(crate) const STONE_MPA: f64 = 70_000.0;
/// Young's modulus of softwood of class C24, mean, `MPa`.
const TIMBER_MPA: f64 = 11_000.0;
/// What timber may be stressed, `MPa`: half the bending strength of class C24 (judgement).
const TIMBER_ALLOWED_MPA: f64 = 12.0;
/// Sizes of planed timber, width and depth, mm (common practice).
const TIMBERS_MM: [[f64; 2]; 5] = [
    [45.0, 45.0],
    [45.0, 70.0],
    [45.0, 95.0],
    [45.0, 120.0],
    [45.0, 145.0],
];
/// The most timbers side by side (judgement: what clamps hold).
const MOST: u8 = 3;
/// How far a splint reaches past either end of the narrow stone, mm (judgement: room for two clamps
/// on sound stone).
pub const BEYOND_MM: f64 = 200.0;

/// A splint that is stiff enough.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Splint {
    /// Width and depth of one timber, the depth upright when the stone lies flat, mm.
    pub timber_mm: [f64; 2],
    /// How many of them.
    pub count: u8,
    /// Least length, mm.
    pub length_mm: f64,
    /// Stress left in the stone, `MPa`.
    pub stone_mpa: f64,
    /// Stress in the timber, `MPa`.
    pub timber_mpa: f64,
}

impl Splint {
    /// The smallest splint that brings a moment's stress in a rail down to what is allowed; nothing
    /// when no timber does. Moment N·mm, lengths mm, stress `MPa`.
    #[must_use]
    pub fn for_rail(
        moment: f64,
        width_mm: f64,
        thickness_mm: f64,
        length_mm: f64,
        allowed_mpa: f64,
    ) -> Option<Self> {
        let modulus = width_mm * thickness_mm * thickness_mm / 6.0;
        let stone = STONE_MPA * modulus * thickness_mm / 2.0;
        let with = |timber_mm: [f64; 2], count: u8| {
            let [b, h] = timber_mm;
            let section = f64::from(count) * b * h * h / 6.0;
            let timber = TIMBER_MPA * section * h / 2.0;
            Self {
                timber_mm,
                count,
                length_mm: length_mm + 2.0 * BEYOND_MM,
                stone_mpa: moment * stone / (stone + timber) / modulus,
                timber_mpa: moment * timber / (stone + timber) / section,
            }
        };
        let mut all = (1..=MOST).flat_map(|n| TIMBERS_MM.map(|size| with(size, n)));
        all.find(|s| s.stone_mpa <= allowed_mpa && s.timber_mpa <= TIMBER_ALLOWED_MPA)
    }
}
