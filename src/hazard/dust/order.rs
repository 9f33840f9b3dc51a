//! The order of controls: the strongest first, the mask last, each done or still open.

use serde::Serialize;

use super::DustReport;
use crate::diag::{Phrase, Said, number};
use crate::hazard::Work;
use crate::hazard::notes::Notes;
use crate::hazard::respirator::{Enough, RespiratorReport};
use crate::tables::documents as doc;
use crate::tables::dust_control::{Control, SHORT_SHIFT_H, Site, TableAnswer, lookup};
use crate::tables::record::Record;

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
    phrases: &[LESS, SHOP, AT_DISC, OUTDOORS, DISTANCE, MASK],
    ..Record::CHECK
};

const LESS: Phrase = Phrase {
    id: "control-cut-less",
    title: "cut less",
    detail: "{face} m² of face are sawn, {minutes} minutes with the disc in the stone: every edge that \
             stays as it is raises no dust",
};
const SHOP: Phrase = Phrase {
    id: "control-shop",
    title: "have it cut wet by a shop",
    detail: "a bridge saw under water cuts this in a few minutes, and {grams} g of stone never reach \
             your place",
};
const AT_DISC: Phrase = Phrase {
    id: "control-at-the-disc",
    title: "water or extraction at the disc",
    detail: "water on a machine rated for it, or a shroud with at least {airflow} m³/h for a {disc} mm disc",
};
const OUTDOORS: Phrase = Phrase {
    id: "control-outdoors",
    title: "outdoors",
    detail: "in moving air, wind from the side, away from doors and air intakes",
};
const DISTANCE: Phrase = Phrase {
    id: "control-distance",
    title: "distance",
    detail: "nobody without a respirator where dust or mist is seen, and nobody in line with the disc",
};
const MASK: Phrase = Phrase {
    id: "control-mask",
    title: "the mask, last",
    detail: "fitting its wearer, clean-shaven where it is tight, worn until the place is clean",
};

/// One step of the order.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Step {
    /// Its fixed name.
    pub id: &'static str,
    /// What it is.
    pub what: String,
    /// How.
    pub how: String,
    /// How it stands.
    pub state: State,
    /// What the regulator's table would answer with it, where that is less than now.
    pub table: Option<TableAnswer>,
    /// How it was said, to be said in another language.
    #[serde(skip)]
    pub said: Said,
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
    work: &Work,
    dust: &DustReport,
    respirator: &RespiratorReport,
    stone_g: f64,
    notes: &mut Notes,
) -> Vec<Step> {
    notes.used(&doc::COMMON_PRACTICE);
    let table = Table(dust);
    let values = [
        // 1e6 mm² to a square metre.
        ("face", number(work.sawn_face_mm2 / 1e6, 2)),
        ("minutes", number(work.trigger_minutes.ceil(), 0)),
        ("grams", number(stone_g, 0)),
        ("airflow", number(dust.least_airflow_m3h, 0)),
        ("disc", number(dust.widest_disc_mm, 0)),
    ];
    let step = |phrase: &'static Phrase, state, table| {
        let said = Said {
            phrase,
            values: values.to_vec(),
        };
        Step {
            id: phrase.id,
            what: phrase.title.into(),
            how: said.put_into(phrase.detail),
            state,
            table,
            said,
        }
    };
    vec![
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
    ]
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
