//! The keys of the job file that only the handling needs.

use kerfwright::diag::Diagnostic;
use kerfwright::handle::guideline::guideline;
use kerfwright::handle::niosh::{Cause, off_trestles};
use kerfwright::job::{Job, read};
use kerfwright::tables::region::RegionCode;
use kerfwright::units::Mass;

use crate::fixtures::close;

fn job(more: &str) -> Result<Job, Vec<Diagnostic>> {
    let text = format!(
        "[stone]\nkind = \"granite\"\nthickness = 30\n[slab]\nrectangle = [2400, 800]\n\
         [top]\nrectangle = [2000, 640]\n{more}"
    );
    read(&text).map(|r| r.0)
}

fn fault(more: &str) -> String {
    let faults = job(more).expect_err("a fault");
    assert_eq!(faults.len(), 1, "{faults:?}");
    format!("{}: {}", faults[0].key, faults[0].message)
}

#[test]
fn what_is_left_out_is_assumed() {
    let job = job("").unwrap();
    assert_eq!((job.lift.hands_mm, job.lift.carry_mm), (750.0, 10_000.0));
    assert!(job.lift.trestles.is_empty());
    for key in ["lift.hands", "lift.carry"] {
        assert!(job.assumed.iter().any(|a| a.key == key), "{key}");
    }
}

#[test]
fn what_is_given_is_taken() {
    let job = job(
        "[lift]\ntrestles = [1900, \"40 cm\"]\nhands = \"60 cm\"\ncarry = \"14 m\"\n\
         [[support]]\nline = [[20, 20], [20, 600]]\nstiffness = 0.2\n\
         [[support]]\nline = [[900, 20], [900, 600]]",
    )
    .unwrap();
    assert_eq!(job.lift.trestles, [400.0, 1900.0]);
    assert_eq!((job.lift.hands_mm, job.lift.carry_mm), (600.0, 14_000.0));
    let stiff: Vec<f64> = job.supports.iter().map(|s| s.stiffness).collect();
    assert_eq!(stiff, [0.2, 1.0]);
}

#[test]
fn what_cannot_be_is_a_fault() {
    assert!(fault("[lift]\ntrestles = [400, 420]").contains("trestles"));
    assert!(fault("[lift]\ntrestles = [400]").contains("trestles"));
    assert!(fault("[lift]\nhands = 3000").contains("hands"));
    let support = |s: &str| {
        fault(&format!(
            "[[support]]\nline = [[20, 20], [20, 600]]\nstiffness = {s}"
        ))
    };
    for wrong in ["0", "-1", "1.5", "\"stiff\""] {
        assert!(support(wrong).contains("stiffness"), "{wrong}");
    }
}

// HSE L23 and INDG143 (quoted): 25 kg between elbow and knuckle, 20 on either side of that, 10 above
// the shoulder and below the lower leg. Others give no height.
#[test]
fn published_weights_go_with_the_height_of_the_hands() {
    let uk = guideline(RegionCode::Uk);
    let at = |mm: f64| uk.at_height(mm).kg();
    assert_eq!(
        [1500.0, 1200.0, 800.0, 500.0, 100.0].map(at),
        [10.0, 20.0, 25.0, 20.0, 10.0]
    );
    let eu = guideline(RegionCode::Eu);
    close(eu.at_height(100.0).kg(), eu.each.kg(), 0.0);
}

#[test]
fn the_lifting_equation_says_what_lowers_it_most() {
    // At the best height the reach of 40 cm is worst: 25/40.
    let best = off_trestles(Mass::from_kg(20.0), 750.0);
    assert_eq!(best.worst.cause, Cause::Reach);
    close(best.worst.value, 0.625, 1e-12);
    close(best.index, 20.0 / (23.0 * 0.625 * 0.9), 1e-12);
    close(best.index_without, 20.0 / (23.0 * 0.9), 1e-12);
    // From the floor the height still costs less, 1 − 0.003 · 75 = 0.775, but the limit falls.
    let floor = off_trestles(Mass::from_kg(20.0), 0.0);
    close(floor.limit.kg() / best.limit.kg(), 0.775, 1e-12);
    assert_eq!(floor.worst.cause, Cause::Reach);
    // Above what the equation covers there is no limit at all.
    let above = off_trestles(Mass::from_kg(20.0), 1760.0);
    assert_eq!((above.worst.cause, above.worst.value), (Cause::Height, 0.0));
    assert!(above.index.is_infinite());
}
