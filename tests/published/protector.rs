//! Hearing protectors: SNR, HML, NRR and their deratings.

use kerfwright::hazard::noise::protection::TOO_QUIET_DB;
use kerfwright::hazard::noise::protector::{hml, holds, niosh_nrr, osha_nrr};
use kerfwright::job::{EarKind, Protector};
use kerfwright::tables::region::{HearingMethod, RegionCode};

use crate::printed;

#[test]
fn snr_off_the_c_weighted_level() {
    // A help page of a maker of meters (Q): SNR 28 at 97 dB(C), 73 dB with the 4 dB of HSE.
    let at_ear = |method| 97.0 - holds(method, Protector::Snr(28.0), 0.0).unwrap();
    printed(at_ear(HearingMethod::AsTested), 69.0, 0);
    printed(at_ear(HearingMethod::RealWorld), 73.0, 1);
    // Another page (Q): 100 dB(C), SNR 25: 75.0, with 4 dB 79.0.
    let of = |method| 100.0 - holds(method, Protector::Snr(25.0), 0.0).unwrap();
    printed(of(HearingMethod::AsTested), 75.0, 1);
    printed(of(HearingMethod::RealWorld), 79.0, 1);
}

#[test]
fn hml_by_the_difference_of_c_and_a() {
    // A help page of a maker of meters (Q): H 30, M 24, L 22 at 96 dB(A) and 99 dB(C): 72.3 dB(A),
    // with the 4 dB of HSE 76.3.
    let reduction = hml([30.0, 24.0, 22.0], 99.0 - 96.0);
    printed(96.0 - reduction, 72.3, 1);
    printed(96.0 - reduction + 4.0, 76.3, 1);
    // A manual of a meter (Q) gives H 25, M 19, L 13 at 103.2 dB(A), 103.4 dB(C); computed (C).
    printed(hml([25.0, 19.0, 13.0], 103.4 - 103.2), 21.7, 1);
    // Another page (Q): 95 dB(A), 97 dB(C): M alone, 22 dB, 73 dB(A).
    printed(95.0 - hml([30.0, 22.0, 15.0], 2.0), 73.0, 1);
    // The two branches meet (C).
    printed(hml([35.0, 30.0, 20.0], 2.0), 30.0, 9);
}

#[test]
fn nrr_with_what_osha_takes_off() {
    // 29 CFR 1910.95 App. B (Q): 100 dBA, NRR 19: 100 - (19 - 7) = 88; half of it is counted on
    // by the technical manual (Q): 100 dBA, NRR 25: 91.
    printed(100.0 - 2.0 * osha_nrr(19.0), 88.0, 1);
    printed(100.0 - osha_nrr(25.0), 91.0, 1);
    // Never more than nothing is lost (C).
    assert_eq!(osha_nrr(5.0), 0.0);
}

#[test]
fn nrr_with_what_niosh_takes_off() {
    // NIOSH 98-126 (Q): 25 % off muffs, 50 % off formable plugs, 70 % off other plugs; 7 dB for an
    // A-weighted level.
    printed(niosh_nrr(24.0, EarKind::Muffs), 11.0, 1);
    printed(niosh_nrr(24.0, EarKind::FormablePlugs), 5.0, 1);
    printed(niosh_nrr(30.0, EarKind::OtherPlugs), 2.0, 1);
    assert_eq!(niosh_nrr(20.0, EarKind::OtherPlugs), 0.0);
}

#[test]
fn the_strictest_way_is_never_above_another() {
    let nrr = |nrr| Protector::Nrr {
        nrr,
        kind: EarKind::OtherPlugs,
    };
    for protector in [Protector::Snr(30.0), nrr(30.0), nrr(20.0)] {
        let least = holds(HearingMethod::Least, protector, 2.0).unwrap();
        for method in [
            HearingMethod::AsTested,
            HearingMethod::RealWorld,
            HearingMethod::HalfNrr,
        ] {
            assert!(least <= holds(method, protector, 2.0).unwrap());
        }
    }
    assert_eq!(
        holds(HearingMethod::AsTested, Protector::Unknown, 2.0),
        None
    );
}

#[test]
fn which_region_reckons_how() {
    let method = |region: RegionCode| region.record().hearing.method;
    assert_eq!(method(RegionCode::Eu), HearingMethod::AsTested);
    assert_eq!(method(RegionCode::Uk), HearingMethod::RealWorld);
    assert_eq!(method(RegionCode::Us), HearingMethod::HalfNrr);
    assert_eq!(method(RegionCode::UsCa), HearingMethod::HalfNrr);
    assert_eq!(method(RegionCode::Other), HearingMethod::Least);
}

#[test]
fn below_seventy_is_too_quiet() {
    // EN 458 (Q).
    assert_eq!(TOO_QUIET_DB, 70.0);
}
