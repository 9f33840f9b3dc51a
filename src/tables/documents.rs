//! Documents that more than one table or hazard names.

use super::{Source, Sure};

/// The middle of a published range.
pub static MIDDLE_OF_RANGE: Source = Source::new(
    "likely value: the middle of the published range",
    "computed from the two ends of the range",
    "",
    0,
    Sure::Computed,
);
/// Follows from other figures of the job.
pub static COMPUTED: Source = Source::new(
    "follows from the job's own figures",
    "computed",
    "",
    0,
    Sure::Computed,
);
/// Bending of a strip on two supports placed best.
pub static GERE: Source = Source::new(
    "a strip on two supports placed best: 0.2071 of its length from each end",
    "Gere, Mechanics of Materials, 7th ed.",
    "5.6-18",
    0,
    Sure::Read,
);
/// Trade limits of worktops.
pub static MIA_RAILS: Source = Source::new(
    "worktops: free span, overhang, rails beside a cutout, inside corners",
    "MIA/NSI design manual, as trade pages restate it",
    "",
    0,
    Sure::Quoted,
);
/// OSHA's means and mixtures.
pub static OSHA_MEANS: Source = Source::new(
    "mean over 8 hours; sum of a mixture",
    "29 CFR 1910.1000",
    "(d)(1), (d)(2)",
    0,
    Sure::Read,
);
/// OSHA's construction rule for silica.
pub static OSHA_SILICA: Source = Source::new(
    "silica limit 0.05 mg/m³, action level 0.025 mg/m³, 8 hours",
    "29 CFR 1926.1153",
    "(b), (d)(1); general industry 1910.1053",
    2016,
    Sure::Read,
);
/// NIOSH's advice on silica.
pub static NIOSH_SILICA: Source = Source::new(
    "recommended silica limit 0.05 mg/m³, up to 10 hours",
    "NIOSH Pocket Guide; NMAM ch. R",
    "",
    0,
    Sure::Read,
);
/// ACGIH's advice on silica.
pub static ACGIH_SILICA: Source = Source::new(
    "recommended silica limit 0.025 mg/m³, 8 hours",
    "ACGIH TLV list",
    "",
    0,
    Sure::Quoted,
);
/// OSHA's table of tools, controls and respirators.
pub static OSHA_TABLE_1: Source = Source::new(
    "controls and respirators by tool, place and hours",
    "29 CFR 1926.1153",
    "(c)(1) Table 1, (c)(2), (c)(3)",
    2016,
    Sure::Read,
);
/// OSHA's airflow for shrouds.
pub static OSHA_AIRFLOW: Source = Source::new(
    "extractor airflow: at least 25 cubic feet a minute for each inch of wheel diameter",
    "29 CFR 1926.1153",
    "(c)(1) Table 1, rows (xi), (xii)",
    2016,
    Sure::Read,
);
/// OSHA's housekeeping rule.
pub static OSHA_HOUSEKEEPING: Source = Source::new(
    "no dry sweeping, no compressed air",
    "29 CFR 1926.1153",
    "(f)",
    2016,
    Sure::Read,
);
/// OSHA's respirator rule.
pub static OSHA_MASKS: Source = Source::new(
    "assigned protection factors, fit test, greatest concentration",
    "29 CFR 1910.134",
    "Table 1, (b), (f), (g)",
    0,
    Sure::Read,
);
/// British respirator factors that were read.
pub static UK_MASKS: Source = Source::new(
    "assigned protection factors of FFP3 and P3 half masks; clean-shaven, fit test",
    "HSE HSG53 and HSE pages",
    "",
    0,
    Sure::Read,
);
/// British advice for stone worktops.
pub static HSE_STONEMASONRY: Source = Source::new(
    "worktops: water or shrouded extraction with an M-class unit, and a respirator with a factor \
     of at least 20",
    "HSE stonemasonry pages",
    "",
    2026,
    Sure::Read,
);
/// European vibration directive.
pub static EU_VIBRATION: Source = Source::new(
    "hand-arm vibration A(8): action 2.5 m/s², limit 5 m/s²",
    "Directive 2002/44/EC",
    "Art. 3",
    2002,
    Sure::Read,
);
/// HSE's exposure points.
pub static HSE_POINTS: Source = Source::new(
    "vibration points 2a²T: 100 at the action value, 400 at the limit value",
    "HSE hand-arm vibration ready-reckoner",
    "",
    0,
    Sure::Read,
);
/// Uncertainty of a vibration figure.
pub static HSE_UNCERTAINTY: Source = Source::new(
    "uncertainty of a vibration figure when none is stated: 40 % of it",
    "HSE OC 246/31",
    "",
    0,
    Sure::Read,
);
/// European noise directive.
pub static EU_NOISE: Source = Source::new(
    "noise over 8 hours: 80 and 85 dB(A) action, 87 dB(A) limit under the ear protection",
    "Directive 2003/10/EC",
    "Art. 3",
    2003,
    Sure::Read,
);
/// OSHA's noise rule.
pub static OSHA_NOISE: Source = Source::new(
    "noise dose: 90 dBA for 8 hours is 100 %, 5 dB halves the time; action at 50 %, 85 dBA",
    "29 CFR 1910.95",
    "App. A",
    0,
    Sure::Read,
);
/// OSHA's way with hearing protectors.
pub static OSHA_PROTECTOR: Source = Source::new(
    "hearing protector: (NRR - 7) / 2 off a level in dBA; App. B takes NRR - 7, the manual halves it",
    "29 CFR 1910.95 App. B; OSHA technical manual",
    "noise chapter",
    0,
    Sure::Quoted,
);
/// NIOSH's derating of hearing protectors.
pub static NIOSH_PROTECTOR: Source = Source::new(
    "hearing protector: NRR less 25 % for muffs, 50 % for formable plugs, 70 % for other plugs",
    "NIOSH 98-126",
    "",
    1998,
    Sure::Quoted,
);
/// SNR and HML.
pub static EN_ISO_4869_2: Source = Source::new(
    "hearing protector: level at the ear is the C-weighted level less SNR, or the A-weighted less the HML reduction",
    "EN ISO 4869-2",
    "SNR and HML methods",
    0,
    Sure::Quoted,
);
/// British allowance for the fit of hearing protectors.
pub static HSE_REAL_WORLD: Source = Source::new(
    "hearing protector: 4 dB less than tested, for how it is worn",
    "HSE L108",
    "",
    2021,
    Sure::Quoted,
);
/// How quiet is too quiet.
pub static EN_458: Source = Source::new(
    "level at the ear: 75 to 80 dB(A) is good, below 70 is over-protection",
    "EN 458",
    "",
    2016,
    Sure::Quoted,
);
/// Water for cut-off saws.
pub static NIOSH_WATER: Source = Source::new(
    "water for a hand-held cut-off saw: 0.5 litres a minute; less holds down less dust",
    "NIOSH, engineering controls for silica in construction, cut-off saws",
    "",
    0,
    Sure::Read,
);
/// Whom Table 1 serves.
pub static OSHA_TWO_RULES: Source = Source::new(
    "construction has Table 1; general industry has none and assesses exposure",
    "29 CFR 1926.1153; 1910.1053",
    "(c)(1); (c), (d)",
    2016,
    Sure::Read,
);
/// NIOSH's noise advice.
pub static NIOSH_NOISE: Source = Source::new(
    "noise: 85 dBA for 8 hours, 3 dB halves the time",
    "NIOSH recommended exposure limit",
    "",
    0,
    Sure::Read,
);
/// British lifting guideline.
pub static HSE_LIFTING: Source = Source::new(
    "lifting guideline: 25 kg (men), 16 kg (women), close to the body, elbow to knuckle height",
    "HSE L23, INDG143",
    "guideline filter",
    0,
    Sure::Quoted,
);
/// British team factors.
pub static HSE_TEAM: Source = Source::new(
    "a team of two lifts 2/3 of the sum, three or four 1/2, more is unlikely to work",
    "HSE L23",
    "paras 119-120",
    0,
    Sure::Read,
);
/// NIOSH's load constant.
pub static NIOSH_LIFTING: Source = Source::new(
    "load constant 23 kg (51 lb) under the best conditions",
    "NIOSH 94-110",
    "rev. 9/2021",
    2021,
    Sure::Read,
);
/// International lifting standard.
pub static ISO_LIFTING: Source =
    Source::new("reference mass 25 kg", "ISO 11228-1", "", 0, Sure::Quoted);
/// European silica limit.
pub static EU_SILICA: Source = Source::new(
    "silica limit 0.1 mg/m³, 8 hours",
    "Directive 2004/37/EC, as amended by (EU) 2017/2398",
    "Annex III",
    2017,
    Sure::Quoted,
);
/// Nothing was found.
pub static NOT_FOUND: Source = Source::new(
    "no rule of this region was found",
    "no document found",
    "",
    0,
    Sure::Judgement,
);
/// What every trade page says.
pub static COMMON_PRACTICE: Source = Source::new(
    "common practice in the trade",
    "common practice",
    "",
    0,
    Sure::Practice,
);
/// Standard warnings for grinders.
pub static GRINDER_WARNINGS: Source = Source::new(
    "standard safety warnings for grinders and cutting-off discs",
    "IEC 62841-2-3",
    "",
    0,
    Sure::Read,
);
/// Safety signs.
pub static ISO_7010: Source = Source::new(
    "mandatory signs: M003 ear, M004 eye, M008 foot, M009 hand, M017 breathing",
    "ISO 7010",
    "",
    0,
    Sure::Quoted,
);
/// Our own judgement.
pub static OUR_JUDGEMENT: Source = Source::new(
    "no document settles it; the safer side was taken",
    "our judgement",
    "",
    0,
    Sure::Judgement,
);
