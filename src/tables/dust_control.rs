//! OSHA's table of dust controls: which respirator goes with tool, control, place and hours.

use serde::Serialize;

use crate::units::MM_PER_INCH;

/// A tool of the table.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Tool {
    /// Handheld power saw, any blade diameter: row (ii).
    HandSaw,
    /// Handheld grinder, not for mortar removal: row (xii).
    Grinder,
    /// Handheld grinder for mortar removal: row (xi).
    MortarGrinder,
    /// Handheld or stand-mounted drill: row (vii).
    Drill,
    /// Stationary masonry saw: row (i).
    StationarySaw,
    /// Walk-behind saw: row (iv).
    WalkBehindSaw,
    /// Rig-mounted core drill: row (vi).
    CoreDrill,
}

/// A control of the table.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Control {
    /// Water fed continuously to the blade or the grinding surface.
    Water,
    /// Shroud and extractor with the airflow, filter and cleaning that the row asks for.
    Extraction,
    /// Neither.
    Nothing,
}

/// Where the work is done.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Site {
    /// In the open.
    Outdoors,
    /// Indoors or in an enclosed area; the rule asks for exhaust there as well, (c)(2)(i).
    Indoors,
}

/// What the table answers.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum TableAnswer {
    /// Listed; no respirator is asked for.
    NoRespirator,
    /// Listed; a respirator with at least this factor.
    Apf(u16),
    /// Not listed: exposure must be assessed.
    NotInTable,
}

/// Answers up to 4 hours and above, for one place.
type Answers = (TableAnswer, TableAnswer);

/// One row of the table.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Row {
    /// The tool.
    pub tool: Tool,
    /// The control.
    pub control: Control,
    /// Outdoors: up to 4 hours, above.
    pub outdoors: (TableAnswer, TableAnswer),
    /// Indoors: up to 4 hours, above.
    pub indoors: (TableAnswer, TableAnswer),
}

/// A shift has two columns: up to this many hours of the task, and above.
pub const SHORT_SHIFT_H: f64 = 4.0;

/// Rounding allowed when hours are compared, h: far below a second.
const SAME_H: f64 = 1e-9;

const NONE: Answers = (TableAnswer::NoRespirator, TableAnswer::NoRespirator);
const TEN: Answers = (TableAnswer::Apf(10), TableAnswer::Apf(10));
const NONE_TEN: Answers = (TableAnswer::NoRespirator, TableAnswer::Apf(10));
const TEN_TWENTY_FIVE: Answers = (TableAnswer::Apf(10), TableAnswer::Apf(25));
const NOT_LISTED: Answers = (TableAnswer::NotInTable, TableAnswer::NotInTable);

const fn row(tool: Tool, control: Control, outdoors: Answers, indoors: Answers) -> Row {
    Row {
        tool,
        control,
        outdoors,
        indoors,
    }
}

/// The rows for tools that a stone cutter may hold (29 CFR 1926.1153(c)(1) Table 1, text read).
pub const TABLE_1: [Row; 8] = [
    row(Tool::HandSaw, Control::Water, NONE_TEN, TEN),
    row(Tool::Grinder, Control::Water, NONE, NOT_LISTED),
    row(Tool::Grinder, Control::Extraction, NONE, NONE_TEN),
    row(
        Tool::MortarGrinder,
        Control::Extraction,
        TEN_TWENTY_FIVE,
        TEN_TWENTY_FIVE,
    ),
    row(Tool::Drill, Control::Extraction, NONE, NONE),
    row(Tool::StationarySaw, Control::Water, NONE, NONE),
    row(Tool::WalkBehindSaw, Control::Water, NONE, TEN),
    row(Tool::CoreDrill, Control::Water, NONE, NONE),
];

/// What the table asks for a tool, a control, a place and the hours of that task in one shift.
///
/// All hours of the shift add up, (c)(3). Exactly 4 hours counts as up to 4. Hours that are not a
/// number count as above 4.
#[must_use]
pub fn lookup(tool: Tool, control: Control, site: Site, hours: f64) -> TableAnswer {
    let Some(row) = TABLE_1
        .iter()
        .find(|row| row.tool == tool && row.control == control)
    else {
        return TableAnswer::NotInTable;
    };
    let (short, long) = match site {
        Site::Outdoors => row.outdoors,
        Site::Indoors => row.indoors,
    };
    if hours <= SHORT_SHIFT_H + SAME_H {
        short
    } else {
        long
    }
}

/// Airflow for each inch of wheel, cubic feet a minute (Table 1, rows xi and xii).
pub const CFM_PER_INCH: f64 = 25.0;
/// Cubic metres an hour in a cubic foot a minute: 0.3048³ × 60.
pub const M3H_PER_CFM: f64 = 0.3048 * 0.3048 * 0.3048 * 60.0;

/// The inch size that a metric wheel is sold as: its diameter to the nearest half inch
/// (judgement: 115 mm is 4½, 125 is 5, 230 is 9).
#[must_use]
pub fn nominal_inches(diameter_mm: f64) -> f64 {
    (diameter_mm / MM_PER_INCH * 2.0).round() / 2.0
}

/// Least airflow of the extractor for a wheel of a diameter in mm, m³/h.
///
/// ```
/// use kerfwright::tables::dust_control::least_airflow_m3h;
/// assert_eq!(least_airflow_m3h(125.0).round(), 212.0);
/// ```
#[must_use]
pub fn least_airflow_m3h(diameter_mm: f64) -> f64 {
    CFM_PER_INCH * nominal_inches(diameter_mm) * M3H_PER_CFM
}
