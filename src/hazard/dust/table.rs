//! Work that is in no row of the regulator's table.

use super::DustReport;
use crate::diag::{Harm, Phrase};
use crate::hazard::notes::Notes;
use crate::hazard::respirator::Required;
use crate::tables::documents as doc;
use crate::tables::dust_control::{Control, Site, TableAnswer, Tool, lookup};
use crate::tables::record::{Example, Record};
use crate::words::Value;

/// The record.
pub static RECORD: Record = Record {
    id: "not-in-table",
    title: "Not in the regulator's table",
    what: "OSHA's Table 1 lists tool, control, place and hours of the task in one shift, and the respirator \
           that goes with them. All hours of the shift add up; exactly 4 hours counts as up to 4.",
    why: "Without a row nobody has published which respirator is enough. Anything dry and unshrouded is in \
          no row, nor is a wet grinder indoors.",
    what_to_do: "Change control, place or hours to a row that is there, or have the exposure measured or \
                 assessed by a competent person.",
    sources: &[&doc::OSHA_TABLE_1],
    formula: "tool × control × place × (up to 4 h, above) → no respirator, a factor, or no row",
    example: Some(example),
    phrases: &[INDOORS, OUTDOORS],
    ..Record::HAZARD
};

const INDOORS: Phrase = Phrase::of_job("not-in-table-indoors")
    .harm(Harm::KillsLater)
    .key("dust.where");
const OUTDOORS: Phrase = Phrase::of_job("not-in-table")
    .harm(Harm::KillsLater)
    .key("dust.method");

fn example() -> Example {
    let answer = |hours| match lookup(Tool::HandSaw, Control::Water, Site::Outdoors, hours) {
        TableAnswer::NoRespirator => "no respirator".to_owned(),
        TableAnswer::Apf(apf) => format!("factor {apf}"),
        TableAnswer::NotInTable => "no row".to_owned(),
    };
    Example {
        given: "a hand saw with water, outdoors: 3 h of cutting, then 1 h more, then another half"
            .into(),
        result: format!(
            "3 h: {}; 4 h: {}; 4.5 h: {}",
            answer(3.0),
            answer(4.0),
            answer(4.5)
        ),
    }
}

/// An open point where a control works and the table that decides has no row.
pub(in crate::hazard) fn assess(report: &DustReport, required: Required, notes: &mut Notes) {
    if report.control == Control::Nothing || required != Required::MustBeAssessed {
        return;
    }
    let phrase = match report.site {
        Site::Indoors => &INDOORS,
        Site::Outdoors => &OUTDOORS,
    };
    let values = [("hours", Value::number(report.task_hours, 1))];
    notes.open_on(phrase, &doc::OSHA_TABLE_1, &values);
}
