//! Cleaning up without raising the dust again.

use super::notes::Notes;
use super::silica::SilicaReport;
use crate::job::{DustMethod, Job};
use crate::tables::documents as doc;
use crate::tables::region::Standing;

/// Cautions about sweeping and slurry.
pub(super) fn assess(job: &Job, silica: &SilicaReport, notes: &mut Notes) {
    let rule = job.region.record().cleaning;
    let borrowed = match rule.standing {
        Standing::Own => "",
        Standing::Borrowed => " (Borrowed: this region's own rule is not on file.)",
    };
    notes.caution(
        "no-dry-sweeping",
        rule.source,
        "no dry sweeping, no compressed air",
        format!(
            "{} About {:.0} g of stone, up to {:.0} g of it silica, lie about after the cuts: dry, \
             they rise again.{borrowed}",
            rule.words, silica.dust_g.likely, silica.silica_g.high
        ),
    );
    if job.dust.method == DustMethod::Water {
        notes.caution(
            "slurry-clean-up",
            &doc::COMMON_PRACTICE,
            "slurry is collected before it dries",
            format!(
                "About {:.0} g of stone in the water: dry, it is the dust you kept down. Sheet under \
                 the trestles, scrape and wet-vacuum while wet, rinse clothes, boots and machine, let \
                 the rest settle; none into drains.",
                silica.dust_g.likely
            ),
        );
    }
}
