//! Whose rules apply, and what one region's record holds.

use std::sync::OnceLock;

use serde::{Deserialize, Serialize};

use super::Source;
use super::records::{Text, kept, read_over};
use super::respirator::MaskScheme;
use super::stone::SourcedFigure;

/// Makes the enumeration of the regions, each with the name of its file in `records/regions`.
macro_rules! regions {
    ($($variant:ident = $code:literal: $name:literal;)+) => {
        /// A region with a record of its own.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize)]
        #[serde(rename_all = "kebab-case")]
        pub enum RegionCode {
            $(#[doc = $name] $variant,)+
        }

        impl RegionCode {
            /// Every region.
            pub const ALL: [Self; [$($code),+].len()] = [$(Self::$variant),+];

            /// The code as a job file writes it.
            #[must_use]
            pub const fn code(self) -> &'static str {
                match self {
                    $(Self::$variant => $code,)+
                }
            }

            const fn file(self) -> &'static str {
                match self {
                    $(Self::$variant => include_str!(concat!("records/regions/", $code, ".toml")),)+
                }
            }
        }
    };
}

regions! {
    Eu = "eu": "European Union.";
    De = "de": "Germany.";
    Nl = "nl": "Netherlands.";
    No = "no": "Norway.";
    Uk = "uk": "United Kingdom.";
    Us = "us": "United States.";
    UsCa = "us-ca": "California.";
    CaQc = "ca-qc": "Quebec.";
    Au = "au": "Australia.";
    Nz = "nz": "New Zealand.";
    Other = "other": "Anywhere else.";
}

/// The rules of one region, as far as they were found.
///
/// A value taken from elsewhere has [`RuleOrigin::Borrowed`]. Limits change: whoever prints one
/// prints its source and asks the reader to check the rules now in force.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct RegionRecord {
    /// The code as a job file writes it.
    #[serde(skip_deserializing)]
    pub code: &'static str,
    /// The English name that a sheet prints.
    #[serde(deserialize_with = "kept")]
    pub name: Text,
    /// Respirable crystalline silica.
    pub silica: SilicaLimit,
    /// Advice of other bodies of the region for the same dust; stricter advice is worth heeding.
    pub silica_advice: Vec<SilicaLimit>,
    /// Whose respirator factors count.
    pub masks: MaskRule,
    /// Which respirator is asked for on worktops, besides water or extraction.
    pub respirator: RespiratorRule,
    /// Work that asks for the strongest respirator whatever was measured, where there is such a rule.
    pub high_exposure: Option<HighExposure>,
    /// Hand-arm vibration.
    pub vibration: VibrationValues,
    /// Noise.
    pub noise: NoiseValues,
    /// Lifting by hand.
    pub hand_lift: HandLift,
    /// Engineered stone.
    pub engineered_stone: EngineeredStoneRule,
    /// Share of silica from which any stone is cut under control only, where there is such a rule.
    pub controlled_from: Option<SourcedFigure>,
    /// Cleaning up.
    pub cleaning: Rule,
    /// The vacuum cleaner and the extractor.
    pub vacuum: Rule,
    /// The electric supply of hand machines.
    pub supply: Rule,
    /// Hearing protectors.
    pub hearing: HearingRule,
    /// Who is asked, in words for the sheet.
    #[serde(deserialize_with = "kept")]
    pub authority: Text,
    /// The number that calls help.
    pub emergency: Emergency,
}

/// The number that calls an ambulance.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Emergency {
    /// The number as it is dialled; empty when none is published for the region.
    #[serde(deserialize_with = "kept")]
    pub number: Text,
    /// Where it comes from.
    pub source: &'static Source,
}

/// Which respirator is asked for on worktops, besides water or extraction.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct RespiratorRule {
    /// What decides.
    pub by: RespiratorBasis,
    /// Whether it is the region's own.
    pub standing: RuleOrigin,
    /// Where it comes from.
    pub source: &'static Source,
}

/// What decides which respirator is asked for.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum RespiratorBasis {
    /// OSHA's Table 1: tool, control, place and hours.
    #[default]
    Table1,
    /// A least factor, whatever the tool.
    Least(u16),
    /// A least factor, with a filter of the 100 series or HEPA.
    LeastWithFinestFilter(u16),
    /// The greater of a least factor and what Table 1 answers.
    Greater(u16),
}

/// Work that asks for the strongest respirator whatever was measured.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct HighExposure {
    /// Share of silica in natural stone above which it counts.
    pub natural_above: f64,
    /// Share of silica in artificial stone above which it counts.
    pub artificial_above: f64,
    /// Least factor of the respirator.
    pub apf: u16,
    /// Where it comes from.
    pub source: &'static Source,
}

/// Whether a value is the region's own.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum RuleOrigin {
    /// The region's own rule.
    Own,
    /// No rule of the region was found: the best published one elsewhere is used.
    #[default]
    Borrowed,
}

/// Limit for respirable crystalline silica.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct SilicaLimit {
    /// Mean over 8 hours, mg/m³.
    pub limit_mg_m3: f64,
    /// Action level, mean over 8 hours, mg/m³, where the rule has one.
    pub action_mg_m3: Option<f64>,
    /// Whether it is the region's own.
    pub standing: RuleOrigin,
    /// Where it comes from.
    pub source: &'static Source,
}

/// Whose respirator factors count.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct MaskRule {
    /// The scheme; two schemes are never mixed.
    pub scheme: MaskScheme,
    /// Whether it is the region's own.
    pub standing: RuleOrigin,
    /// Where it comes from.
    pub source: &'static Source,
}

/// Daily hand-arm vibration values.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct VibrationValues {
    /// Action value A(8), m/s².
    pub action_m_s2: f64,
    /// Limit value A(8), m/s².
    pub limit_m_s2: f64,
    /// Whether they are the region's own.
    pub standing: RuleOrigin,
    /// Where they come from.
    pub source: &'static Source,
}

/// How a region adds up a day of noise.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum NoiseMeasure {
    /// Equal energy: 3 dB more halves the time. Values are `L_EX,8h`.
    #[default]
    EqualEnergy,
    /// OSHA dose: 5 dB more halves the time. Values are `TWA`.
    OshaDose,
}

/// Daily noise values.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
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
    pub standing: RuleOrigin,
    /// Where they come from.
    pub source: &'static Source,
}

/// Guideline for lifting by hand.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct HandLift {
    /// The most for one person under the best conditions, kg.
    pub one_person_kg: f64,
    /// Whether it is the region's own.
    pub standing: RuleOrigin,
    /// Where it comes from.
    pub source: &'static Source,
    /// Share of the sum of the single guidelines that a team of 1, 2, 3, 4 can count on. More
    /// than four are unlikely to work as a team.
    pub team_factors: [f64; 4],
    /// Whether the team factors are the region's own.
    pub team_standing: RuleOrigin,
    /// Where the team factors come from.
    pub team_source: &'static Source,
}

/// What a region says about engineered stone.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum EngineeredStoneLaw {
    /// It may not be cut at all.
    #[default]
    Banned,
    /// Only wet, and behind a powered respirator.
    WetAndPoweredRespirator,
}

/// The rule for engineered stone.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct EngineeredStoneRule {
    /// What it asks.
    pub law: EngineeredStoneLaw,
    /// In words, for the sheet.
    #[serde(deserialize_with = "kept")]
    pub words: Text,
    /// Whether it is the region's own.
    pub standing: RuleOrigin,
    /// Where it comes from.
    pub source: &'static Source,
}

/// A rule in words.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Rule {
    /// What it asks.
    #[serde(deserialize_with = "kept")]
    pub words: Text,
    /// Whether it is the region's own.
    pub standing: RuleOrigin,
    /// Where it comes from.
    pub source: &'static Source,
}

/// How a region reckons what a hearing protector holds back.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum HearingMethod {
    /// SNR or HML as tested.
    AsTested,
    /// SNR or HML, less what fitting costs in practice.
    RealWorld,
    /// Half of NRR less 7.
    HalfNrr,
    /// The least that any of the methods gives.
    #[default]
    Least,
}

/// How hearing protectors are reckoned.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct HearingRule {
    /// The method.
    pub method: HearingMethod,
    /// Whether it is the region's own.
    pub standing: RuleOrigin,
    /// Where it comes from.
    pub source: &'static Source,
}

impl RegionCode {
    /// The rules of the region, read from its file when they are first asked for.
    #[must_use]
    pub fn record(self) -> &'static RegionRecord {
        static ALL: [OnceLock<RegionRecord>; RegionCode::ALL.len()] =
            [const { OnceLock::new() }; RegionCode::ALL.len()];
        ALL[self as usize].get_or_init(|| RegionRecord {
            code: self.code(),
            ..self.read().unwrap_or_default()
        })
    }

    fn read(self) -> Result<RegionRecord, toml::de::Error> {
        read_over(self.file(), base)
    }

    /// The English name that a sheet prints.
    #[must_use]
    pub fn name(self) -> &'static str {
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

impl RegionRecord {
    /// Every rule but the emergency number: its name, whether it is the region's own, its source.
    #[must_use]
    pub const fn rules(&self) -> [(&'static str, RuleOrigin, &'static Source); 12] {
        [
            ("silica", self.silica.standing, self.silica.source),
            ("respirator factors", self.masks.standing, self.masks.source),
            (
                "respirator asked for",
                self.respirator.standing,
                self.respirator.source,
            ),
            ("vibration", self.vibration.standing, self.vibration.source),
            ("noise", self.noise.standing, self.noise.source),
            ("lifting", self.hand_lift.standing, self.hand_lift.source),
            (
                "lifting in a team",
                self.hand_lift.team_standing,
                self.hand_lift.team_source,
            ),
            (
                "engineered stone",
                self.engineered_stone.standing,
                self.engineered_stone.source,
            ),
            ("cleaning", self.cleaning.standing, self.cleaning.source),
            ("vacuum", self.vacuum.standing, self.vacuum.source),
            ("supply", self.supply.standing, self.supply.source),
            ("hearing", self.hearing.standing, self.hearing.source),
        ]
    }
}

/// What the records of several regions are laid over.
fn base(name: &str) -> &'static str {
    match name {
        "european" => include_str!("records/regions/european.toml"),
        "american" => include_str!("records/regions/american.toml"),
        _ => include_str!("records/regions/borrowed.toml"),
    }
}

impl RuleOrigin {
    /// What is printed behind a value: nothing for an own one.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::Own => "",
            Self::Borrowed => " (borrowed: no rule of this region on file)",
        }
    }
}

#[cfg(test)]
mod tests {
    use super::RegionCode;

    #[test]
    fn every_file_is_a_whole_record_and_nothing_more() {
        for region in RegionCode::ALL {
            let read = region.read().map_err(|e| e.to_string());
            assert!(read.is_ok(), "{}: {read:?}", region.code());
        }
    }
}
