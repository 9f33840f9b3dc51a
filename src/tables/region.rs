//! Whose rules apply, and what one region's record holds.

use serde::Serialize;

use super::Source;
use super::respirator::MaskScheme;
use super::stone::Figure;

pub use super::regions::RegionCode;

/// The rules of one region, as far as they were found.
///
/// A value taken from elsewhere has [`Standing::Borrowed`]. Limits change: whoever prints one
/// prints its source and asks the reader to check the rules now in force.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct RegionRecord {
    /// The code as a job file writes it.
    pub code: &'static str,
    /// The English name that a sheet prints.
    pub name: &'static str,
    /// Respirable crystalline silica.
    pub silica: SilicaLimit,
    /// Advice of other bodies of the region for the same dust; stricter advice is worth heeding.
    pub silica_advice: &'static [SilicaLimit],
    /// Whose respirator factors count.
    pub masks: MaskRule,
    /// Hand-arm vibration.
    pub vibration: VibrationValues,
    /// Noise.
    pub noise: NoiseValues,
    /// Lifting by hand.
    pub hand_lift: HandLift,
    /// Engineered stone.
    pub engineered_stone: EngineeredStoneRule,
    /// Share of silica from which any stone is cut under control only, where there is such a rule.
    pub controlled_from: Option<Figure>,
    /// Share of silica above which natural stone is cut wet only, where there is such a rule; the
    /// words are those for engineered stone.
    pub wet_above: Option<Figure>,
    /// Cleaning up.
    pub cleaning: Rule,
    /// The vacuum cleaner and the extractor.
    pub vacuum: Rule,
    /// The electric supply of hand machines.
    pub supply: Rule,
    /// Hearing protectors.
    pub hearing: HearingRule,
    /// Who is asked, in words for the sheet.
    pub authority: &'static str,
}

/// Whether a value is the region's own.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Standing {
    /// The region's own rule.
    Own,
    /// No rule of the region was found: the best published one elsewhere is used.
    Borrowed,
}

/// Limit for respirable crystalline silica.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct SilicaLimit {
    /// Mean over 8 hours, mg/m³.
    pub limit_mg_m3: f64,
    /// Action level, mean over 8 hours, mg/m³, where the rule has one.
    pub action_mg_m3: Option<f64>,
    /// Whether it is the region's own.
    pub standing: Standing,
    /// Where it comes from.
    pub source: &'static Source,
    /// A change that is on its way, when one is known.
    pub change: Option<LimitChange>,
}

/// A limit that is to be replaced.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct LimitChange {
    /// The day, `YYYY-MM-DD`.
    pub on: &'static str,
    /// The day in words.
    pub on_words: &'static str,
    /// What replaces it.
    pub by: &'static str,
}

impl SilicaLimit {
    /// A limit of the region's own, mg/m³, without an action level.
    #[must_use]
    pub const fn own(limit_mg_m3: f64, source: &'static Source) -> Self {
        Self {
            limit_mg_m3,
            action_mg_m3: None,
            standing: Standing::Own,
            source,
            change: None,
        }
    }
}

/// Whose respirator factors count.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct MaskRule {
    /// The scheme; two schemes are never mixed.
    pub scheme: MaskScheme,
    /// Whether it is the region's own.
    pub standing: Standing,
    /// Where it comes from.
    pub source: &'static Source,
}

/// Daily hand-arm vibration values.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct VibrationValues {
    /// Action value A(8), m/s².
    pub action_m_s2: f64,
    /// Limit value A(8), m/s².
    pub limit_m_s2: f64,
    /// Whether they are the region's own.
    pub standing: Standing,
    /// Where they come from.
    pub source: &'static Source,
}

/// How a region adds up a day of noise.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum NoiseMeasure {
    /// Equal energy: 3 dB more halves the time. Values are `L_EX,8h`.
    EqualEnergy,
    /// OSHA dose: 5 dB more halves the time. Values are `TWA`.
    OshaDose,
}

/// Daily noise values.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct NoiseValues {
    /// How the day is added up.
    pub measure: NoiseMeasure,
    /// Level from which hearing protection is offered, dB(A) over 8 hours.
    pub action_db: f64,
    /// Level from which hearing protection is a duty, dB(A) over 8 hours.
    pub duty_db: f64,
    /// Level not to be exceeded, dB(A) over 8 hours.
    pub limit_db: f64,
    /// Whether they are the region's own.
    pub standing: Standing,
    /// Where they come from.
    pub source: &'static Source,
}

/// Guideline for lifting by hand.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct HandLift {
    /// The most for one person under the best conditions, kg.
    pub one_person_kg: f64,
    /// Whether it is the region's own.
    pub standing: Standing,
    /// Where it comes from.
    pub source: &'static Source,
    /// Share of the sum of the single guidelines that a team of 1, 2, 3, 4 can count on. More
    /// than four are unlikely to work as a team.
    pub team_factors: [f64; 4],
    /// Whether the team factors are the region's own.
    pub team_standing: Standing,
    /// Where the team factors come from.
    pub team_source: &'static Source,
}

/// What a region says about engineered stone.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum EngineeredStoneLaw {
    /// It may not be cut at all.
    Banned,
    /// It may only be cut wet.
    WetOnly,
    /// It may only be cut wet and with a powered respirator.
    WetAndPoweredRespirator,
    /// No rule of the region was found.
    NotFound,
}

/// The rule for engineered stone.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct EngineeredStoneRule {
    /// What it asks.
    pub law: EngineeredStoneLaw,
    /// In words, for the sheet.
    pub words: &'static str,
    /// Where it comes from.
    pub source: &'static Source,
}

/// A rule in words.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Rule {
    /// What it asks.
    pub words: &'static str,
    /// Whether it is the region's own.
    pub standing: Standing,
    /// Where it comes from.
    pub source: &'static Source,
}

/// How a region reckons what a hearing protector holds back.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum HearingMethod {
    /// SNR or HML as tested.
    AsTested,
    /// SNR or HML, less what fitting costs in practice.
    RealWorld,
    /// Half of NRR less 7.
    HalfNrr,
    /// The least that any of the methods gives.
    Least,
}

/// How hearing protectors are reckoned.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct HearingRule {
    /// The method.
    pub method: HearingMethod,
    /// Whether it is the region's own.
    pub standing: Standing,
    /// Where it comes from.
    pub source: &'static Source,
}

impl RegionCode {
    /// The code as a job file writes it.
    #[must_use]
    pub const fn code(self) -> &'static str {
        self.record().code
    }

    /// The English name that a sheet prints.
    #[must_use]
    pub const fn name(self) -> &'static str {
        self.record().name
    }

    /// Reads a code; capitals and underscores do not matter.
    ///
    /// ```
    /// use kerfwright::tables::region::RegionCode;
    /// assert_eq!(RegionCode::parse("US-CA"), Some(RegionCode::UsCa));
    /// assert_eq!(RegionCode::parse("moon"), None);
    /// ```
    #[must_use]
    pub fn parse(text: &str) -> Option<Self> {
        let code = text.trim().to_lowercase().replace('_', "-");
        Self::ALL.into_iter().find(|region| region.code() == code)
    }
}

impl Standing {
    /// What is printed behind a value: nothing for an own one.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::Own => "",
            Self::Borrowed => " (borrowed: no rule of this region on file)",
        }
    }
}
