//! Every rule that can become a finding, and every formula.

use crate::hazard::{
    bound, cold, crush, disc, dust, noise, respirator, rules, silica, slurry, standing, stone,
    supply, sweeping, switch, vibration,
};
use crate::tables::record::Record;

/// The hazards, in the order of the sheet.
pub static HAZARDS: &[&Record] = &[
    &rules::RECORD,
    &stone::engineered::RECORD,
    &stone::controlled::RECORD,
    &stone::rich::RECORD,
    &stone::unknown::RECORD,
    &stone::asbestos::RECORD,
    &stone::veins::RECORD,
    &stone::binder::RECORD,
    &stone::steel::RECORD,
    &supply::water::RECORD,
    &supply::protection::RECORD,
    &supply::wet_mains::RECORD,
    &supply::battery::RECORD,
    &supply::air::RECORD,
    &supply::engine::RECORD,
    &dust::uncontrolled::RECORD,
    &dust::water::RECORD,
    &dust::shroud::RECORD,
    &dust::filter::RECORD,
    &dust::table::RECORD,
    &dust::indoors::RECORD,
    &bound::RECORD,
    &respirator::filter::RECORD,
    &respirator::nuisance::RECORD,
    &respirator::missing::RECORD,
    &respirator::scheme::RECORD,
    &respirator::weak::RECORD,
    &respirator::mark::RECORD,
    &respirator::fit::RECORD,
    &disc::speed::RECORD,
    &disc::larger::RECORD,
    &disc::rim::RECORD,
    &disc::bore::RECORD,
    &disc::resin::RECORD,
    &disc::steer::RECORD,
    &disc::kickback::RECORD,
    &disc::support::RECORD,
    &disc::before_use::RECORD,
    &disc::new_disc::RECORD,
    &disc::run_down::RECORD,
    &vibration::exposure::RECORD,
    &noise::exposure::RECORD,
    &noise::protection::RECORD,
    &switch::RECORD,
    &cold::RECORD,
    &crush::FALLING,
    &crush::FLOOR,
    &sweeping::RECORD,
    &slurry::RECORD,
    &standing::BYSTANDERS,
    &standing::INTAKES,
    &standing::HEIGHT,
    &standing::EYES,
    &standing::SWITCHES,
    &standing::LEADS,
    &standing::LEANING,
    &standing::NOT_FOR,
    &standing::FIRST_AID,
];

/// The formulas of the hazards.
pub(super) static FORMULAS: &[&Record] = &[
    &silica::GRAMS,
    &silica::TWA,
    &silica::MIXTURE,
    &respirator::MOST,
    &vibration::A8,
    &vibration::POINTS,
    &vibration::TIME,
    &noise::LEX,
    &noise::OSHA,
    &noise::NIOSH,
    &noise::protector::SNR,
    &noise::protector::HML,
    &noise::protector::NRR,
    &disc::RIM_SPEED,
];

/// What this stage and those before it look at and report.
pub fn checks() -> impl Iterator<Item = &'static Record> {
    let own = std::iter::once(&dust::order::RECORD);
    own.chain(super::checks::OF_CUTTING)
        .chain(super::checks::OF_HANDLING)
}

/// The formulas of all stages.
pub fn formulas() -> impl Iterator<Item = &'static Record> {
    FORMULAS.iter().copied().chain(super::formulas::OF_STAGES)
}

/// Every record, hazards first.
pub fn all() -> impl Iterator<Item = &'static Record> {
    HAZARDS.iter().copied().chain(checks()).chain(formulas())
}

/// The record that answers to an id, its own or that of one of its findings.
#[must_use]
pub fn find(id: &str) -> Option<&'static Record> {
    all().find(|record| record.answers_to(id))
}
