//! The order of controls: the strongest first, the mask last, each done or still open.

use serde::Serialize;

use super::DustReport;
use crate::diag::{Harm, Phrase};
use crate::hazard::Work;
use crate::hazard::notes::Notes;
use crate::hazard::respirator::{Enough, RespiratorReport};
use crate::job::{DustMethod, Job};
use crate::tables::documents as doc;
use crate::tables::dust_control::{Control, SHORT_SHIFT_H, Site, TableAnswer, lookup};
use crate::tables::record::Record;
use crate::words::{Message, Unit, Value};

/// The record.
pub static RECORD: Record = Record {
    id: "order-of-controls",
    title: "The order of controls",
    what: "Six steps against dust, the strongest first: cut less, have it cut wet by a shop, water or \
           extraction at the disc, outdoors, distance, and the mask last.",
    why: "Each step above takes away what the step below would have to catch. A mask protects one person, \
          while it fits; the steps above it protect everybody.",
    what_to_do: "Take the highest open step that can be taken before a better mask is bought.",
    sources: &[&doc::COMMON_PRACTICE, &doc::OSHA_TABLE_1],
    phrases: &[LESS, SHOP, AT_DISC, OUTDOORS, DISTANCE, MASK, OPEN],
    ..Record::CHECK
};

const LESS: Phrase = Phrase::of_job("control-cut-less");
const SHOP: Phrase = Phrase::of_job("control-shop");
const AT_DISC: Phrase = Phrase::of_job("control-at-the-disc");
const OUTDOORS: Phrase = Phrase::of_job("control-outdoors");
const DISTANCE: Phrase = Phrase::of_job("control-distance");
const MASK: Phrase = Phrase::of_job("control-mask");
const OPEN: Phrase = Phrase::of_job("controls-open").harm(Harm::KillsLater);

/// One step of the order.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Step {
    /// Its fixed name.
    pub id: &'static str,
    /// What it is, and how under `.detail`.
    #[serde(skip)]
    pub message: Message,
    /// How it stands.
    pub state: State,
    /// What the regulator's table would answer with it, where that is less than now.
    pub table: Option<TableAnswer>,
}

/// How a step stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum State {
    /// The job file says so.
    Done,
    /// Not taken.
    Open,
    /// To be kept on the day, by the people there.
    OnTheDay,
}

impl State {
    /// The word that is printed.
    #[must_use]
    pub const fn word(self) -> &'static str {
        match self {
            Self::Done => "done",
            Self::Open => "OPEN",
            Self::OnTheDay => "on the day",
        }
    }

    const fn done_if(done: bool) -> Self {
        if done { Self::Done } else { Self::Open }
    }
}

/// The steps for a job.
pub(in crate::hazard) fn list(
    job: &Job,
    work: &Work,
    dust: &DustReport,
    respirator: &RespiratorReport,
    stone_g: f64,
    notes: &mut Notes,
) -> Vec<Step> {
    notes.used(&doc::COMMON_PRACTICE);
    let table = Table(dust);
    let method = match job.dust.method {
        DustMethod::Water => "water",
        DustMethod::Shroud => "shroud",
        DustMethod::None => "none",
    };
    let values = [
        // 1e6 mm² to a square metre.
        ("face", Value::number(work.sawn_face_mm2 / 1e6, 2)),
        ("minutes", Value::number(work.trigger_minutes.ceil(), 0)),
        ("grams", Value::of(stone_g, Unit::Gram).decimals(0)),
        (
            "airflow",
            Value::of(dust.least_airflow_m3h, Unit::Airflow).decimals(0),
        ),
        ("disc", Value::size(dust.widest_disc_mm)),
        ("method", Value::Case(method)),
    ];
    let step = |phrase: &'static Phrase, state, table| Step {
        id: phrase.id,
        message: Message::new(phrase.id, values.to_vec()),
        state,
        table,
    };
    let steps = vec![
        step(&LESS, State::done_if(!work.cuts()), table.in_short_shift()),
        step(&SHOP, State::done_if(!work.cuts()), None),
        step(
            &AT_DISC,
            State::done_if(dust.control != Control::Nothing),
            table.with_control(),
        ),
        step(
            &OUTDOORS,
            State::done_if(dust.site == Site::Outdoors),
            table.outdoors(),
        ),
        step(&DISTANCE, State::OnTheDay, None),
        step(
            &MASK,
            State::done_if(respirator.enough == Enough::Yes),
            None,
        ),
    ];
    say_open(&steps, notes);
    steps
}

/// Every open step before the mask in one open point; the mask has findings of its own.
fn say_open(steps: &[Step], notes: &mut Notes) {
    let open = steps
        .iter()
        .filter(|s| s.state == State::Open && s.id != MASK.id);
    let what: Vec<Value> = open.map(|s| s.message.clone().into()).collect();
    if !what.is_empty() {
        let what = [("what", Value::List(what))];
        notes.open_on(&OPEN, &doc::COMMON_PRACTICE, what);
    }
}

/// What the regulator's table would answer if one thing were otherwise.
struct Table<'d>(&'d DustReport);

impl Table<'_> {
    fn in_short_shift(&self) -> Option<TableAnswer> {
        self.less(self.0.control, self.0.site, SHORT_SHIFT_H)
    }

    fn with_control(&self) -> Option<TableAnswer> {
        [Control::Water, Control::Extraction]
            .into_iter()
            .filter_map(|control| self.less(control, self.0.site, self.0.task_hours))
            .min_by_key(|answer| weight(*answer))
    }

    fn outdoors(&self) -> Option<TableAnswer> {
        self.less(self.0.control, Site::Outdoors, self.0.task_hours)
    }

    /// The answer, where it asks for less than the present one.
    fn less(&self, control: Control, site: Site, hours: f64) -> Option<TableAnswer> {
        let now = self.0.table_answer?;
        let then = lookup(self.0.tool, control, site, hours);
        (weight(then) < weight(now)).then_some(then)
    }
}

/// How much an answer asks for.
const fn weight(answer: TableAnswer) -> u32 {
    match answer {
        TableAnswer::NoRespirator => 0,
        TableAnswer::Apf(apf) => apf as u32,
        TableAnswer::NotInTable => u32::MAX,
    }
}
