//! Work that is in no row of the regulator's table.

use super::DustReport;
use crate::diag::{Phrase, number};
use crate::hazard::notes::Notes;
use crate::tables::documents as doc;
use crate::tables::dust_control::{Control, Site, TableAnswer, Tool, lookup};
use crate::tables::record::{Example, Record};

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

const INDOORS: Phrase = Phrase {
    id: "not-in-table-indoors",
    title: "not in the regulator's table: exposure must be assessed",
    detail: "This machine, this control, indoors, {hours} h of the day: no row. Nobody has published which \
             respirator is enough. Outdoors has rows for water and for a shroud: change place or control to \
             one that the table lists, or have the exposure assessed by a competent person.",
};
const OUTDOORS: Phrase = Phrase {
    id: "not-in-table",
    title: "not in the regulator's table: exposure must be assessed",
    detail: "This machine, this control, outdoors, {hours} h of the day: no row. Nobody has published which \
             respirator is enough. Change the control to one that the table lists for this machine, or have \
             the exposure assessed by a competent person.",
};

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

/// Said where the table is consulted and has no row.
pub(super) fn assess(report: &DustReport, notes: &mut Notes) {
    if report.table_answer != Some(TableAnswer::NotInTable) {
        return;
    }
    let phrase = match report.site {
        Site::Indoors => &INDOORS,
        Site::Outdoors => &OUTDOORS,
    };
    let values = [("hours", number(report.task_hours, 1))];
    notes.caution_on(phrase, &doc::OSHA_TABLE_1, &values);
}
