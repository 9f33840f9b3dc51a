//! Silica: limits by region, shares by stone, sums of measured exposures.

use kerfwright::hazard::silica::{mixture, twa};
use kerfwright::tables::Provenance;
use kerfwright::tables::documents::{AKBAR_2007, COOPER_2015, HEALY_2014};
use kerfwright::tables::measured_dust::measured_dust;
use kerfwright::tables::protective as sign;
use kerfwright::tables::region::{EngineeredStoneLaw, RegionCode};
use kerfwright::tables::stone::StoneKind;
use kerfwright::tables::vacuum::{
    CLASS_H_PASSES, CLASS_L_PASSES, CLASS_M_PASSES, HEPA_HOLDS, OSHA_FILTER_HOLDS,
};

use crate::printed;

#[test]
fn limits_over_eight_hours() {
    let limits = [
        // Directive 2004/37/EC as amended by (EU) 2017/2398 (Q).
        (RegionCode::Eu, 0.1, None, Provenance::Quoted),
        // BMAS notice 2016, TRGS 559 (R).
        (RegionCode::De, 0.05, None, Provenance::Read),
        // National list (Q).
        (RegionCode::Nl, 0.075, None, Provenance::Quoted),
        // The former 0.1 halved in July 2021 (Q), so computed (C).
        (RegionCode::No, 0.05, None, Provenance::Computed),
        // EH40/2005, 4th ed. 2020 (R).
        (RegionCode::Uk, 0.1, None, Provenance::Read),
        // 29 CFR 1926.1153 (R).
        (RegionCode::Us, 0.05, Some(0.025), Provenance::Read),
        // 8 CCR 5204 (Q).
        (RegionCode::UsCa, 0.05, Some(0.025), Provenance::Quoted),
        // RSST, since 28 April 2024 (R).
        (RegionCode::CaQc, 0.05, None, Provenance::Read),
        // Workplace exposure standards 2019 (R).
        (RegionCode::Au, 0.05, None, Provenance::Read),
        // WorkSafe NZ 2023 (R).
        (RegionCode::Nz, 0.025, None, Provenance::Read),
    ];
    for (region, limit, action, sure) in limits {
        let silica = region.record().silica;
        assert_eq!(
            (silica.limit_mg_m3, silica.action_mg_m3),
            (limit, action),
            "{region:?}"
        );
        assert_eq!(silica.source.sure, sure, "{region:?}");
    }
}

#[test]
fn american_advice() {
    // NIOSH REL, up to 10 h (R); ACGIH TLV (Q).
    for region in [RegionCode::Us, RegionCode::UsCa] {
        let advice = &region.record().silica_advice;
        let values: Vec<f64> = advice.iter().map(|guide| guide.limit_mg_m3).collect();
        assert_eq!(values, [0.05, 0.025]);
    }
}

#[test]
fn what_filters_hold() {
    // EN 60335-2-69 (Q): class L 1 %, M 0.1 %, H 0.005 %.
    assert_eq!(
        (CLASS_L_PASSES, CLASS_M_PASSES, CLASS_H_PASSES),
        (0.01, 0.001, 0.000_05)
    );
    // HEPA 99.97 % at 0.3 µm (R); OSHA Table 1 filter 99 % (R): class M is better than that.
    assert_eq!((HEPA_HOLDS, OSHA_FILTER_HOLDS), (0.9997, 0.99));
}

#[test]
fn signs() {
    // ISO 7010 (Q).
    let signs = [
        sign::EAR,
        sign::EYE,
        sign::FOOT,
        sign::HAND,
        sign::BREATHING,
    ];
    assert_eq!(signs, ["M003", "M004", "M008", "M009", "M017"]);
}

#[test]
fn an_unknown_region_gets_the_strictest_of_each_kind() {
    let other = RegionCode::Other.record();
    for region in RegionCode::ALL {
        let own = region.record();
        assert!(other.silica.limit_mg_m3 <= own.silica.limit_mg_m3);
        assert!(other.vibration.action_m_s2 <= own.vibration.action_m_s2);
        assert!(other.vibration.limit_m_s2 <= own.vibration.limit_m_s2);
        assert!(other.noise.action_db <= own.noise.action_db);
        assert!(other.noise.limit_db <= own.noise.limit_db);
        assert!(other.hand_lift.one_person_kg <= own.hand_lift.one_person_kg);
        let words = other.name;
        assert!(words.contains("strictest published"));
    }
}

#[test]
fn rules_on_engineered_stone() {
    let law = |region: RegionCode| region.record().engineered_stone.law;
    // Safe Work Australia (R).
    assert_eq!(law(RegionCode::Au), EngineeredStoneLaw::Banned);
    // 8 CCR 5204 (R), HSE stonemasonry pages 2026 (R); the strictest of these where a region has none.
    for region in RegionCode::ALL {
        let banned = matches!(region, RegionCode::Au | RegionCode::Other);
        let powered = EngineeredStoneLaw::WetAndPoweredRespirator;
        let expected = if banned {
            EngineeredStoneLaw::Banned
        } else {
            powered
        };
        assert_eq!(law(region), expected, "{region:?}");
    }
    // Resin-bound only: sintered and porcelain are not in the Australian ban (R).
    for kind in StoneKind::ALL {
        let engineered = kind.record().is_some_and(|record| record.engineered);
        assert_eq!(engineered, kind == StoneKind::EngineeredStone);
    }
}

#[test]
fn shares_by_stone() {
    let share = |kind: StoneKind| kind.record().expect("in the table").silica_share;
    // HSG201, 2nd ed. 2022 (R): granite 20 to 45, typical 30; WorkSafe Victoria (R): up to 60.
    let granite = share(StoneKind::Granite);
    assert_eq!(
        (granite.low, granite.likely, granite.high),
        (0.20, 0.30, 0.60)
    );
    // HSG201 (R): slate 20 to 40; basalt up to 5; limestone up to 5, typically below 2.
    assert_eq!(
        (share(StoneKind::Slate).low, share(StoneKind::Slate).high),
        (0.20, 0.40)
    );
    assert_eq!(share(StoneKind::Basalt).high, 0.05);
    let limestone = share(StoneKind::Limestone);
    assert_eq!((limestone.likely, limestone.high), (0.02, 0.05));
    // HSG201 (R): quartzite above 70.
    assert_eq!(share(StoneKind::Quartzite).low, 0.70);
    // Safe Work Australia (R): sandstone 52 to 95, engineered stone up to 97.
    let sandstone = share(StoneKind::Sandstone);
    assert_eq!((sandstone.low, sandstone.high), (0.52, 0.95));
    // HSE stonemasonry pages (R): marble as high as 30.
    assert_eq!(share(StoneKind::Marble).high, 0.30);
    assert_eq!(share(StoneKind::EngineeredStone).high, 0.97);
    // WorkSafe Victoria (R): porcelain 14 to 18; Molinari et al. 2024 (R): 21 ± 5.
    let porcelain = share(StoneKind::Porcelain);
    assert_eq!(
        (porcelain.low, porcelain.likely, porcelain.high),
        (0.14, 0.21, 0.26)
    );
    // 29 CFR 1910.1000 Table Z-3 (R): soapstone below 1.
    assert_eq!(share(StoneKind::Soapstone).high, 0.01);
    // Gabbro as basalt (M).
    assert_eq!(share(StoneKind::Gabbro).high, 0.05);
    assert_eq!(share(StoneKind::Gabbro).source.sure, Provenance::Memory);
}

#[test]
fn mean_of_a_day() {
    // 29 CFR 1910.1000(d)(1) (R).
    printed(twa(&[(150.0, 2.0), (75.0, 2.0), (50.0, 4.0)]), 81.25, 2);
}

#[test]
fn sum_of_a_mixture() {
    // 29 CFR 1910.1000(d)(2) (R).
    printed(
        mixture(&[(500.0, 1000.0), (45.0, 200.0), (40.0, 200.0)]),
        0.925,
        3,
    );
}

#[test]
fn measured_exposures_are_quoted_as_measured() {
    let found = |source, control: &str| {
        measured_dust()
            .iter()
            .find(|row| row.source == source && row.control == control)
            .map(|row| row.found)
    };
    // Cooper, Johnson, Phillips 2015 (R).
    assert_eq!(found(&COOPER_2015, "dry"), Some("44.6 mg/m³"));
    assert_eq!(found(&COOPER_2015, "wet blade"), Some("1.87 to 4.85 mg/m³"));
    assert_eq!(
        found(&COOPER_2015, "wet blade and extraction"),
        Some("below 0.12 to 0.20 mg/m³")
    );
    // Akbar-Khanzadeh 2007 (R).
    assert_eq!(found(&AKBAR_2007, "dry"), Some("61.7 mg/m³"));
    assert_eq!(found(&AKBAR_2007, "wet"), Some("0.896 mg/m³"));
    assert_eq!(found(&AKBAR_2007, "extraction"), Some("0.155 mg/m³"));
    // Healy 2014 (R).
    assert!(found(&HEALY_2014, "shroud").is_some_and(|words| words.contains("99 %")));
}

#[test]
fn work_of_high_exposure_in_california() {
    // 8 CCR 5204(b) (R): artificial stone above 0.1 %, other stone above 10 %; factor 1000 (Q).
    for region in RegionCode::ALL {
        let rule = region.record().high_exposure;
        assert_eq!(rule.is_some(), region == RegionCode::UsCa, "{region:?}");
    }
    let rule = RegionCode::UsCa
        .record()
        .high_exposure
        .expect("it is there");
    assert_eq!((rule.artificial_above, rule.natural_above), (0.001, 0.10));
    assert_eq!(rule.apf, 1000);
}
