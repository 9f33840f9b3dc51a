//! Respirators: factors, greatest concentration, and what OSHA's Table 1 asks for.

use kerfwright::hazard::respirator::max_use_concentration;
use kerfwright::tables::dust_control::{
    Control, Site, TableAnswer, Tool, least_airflow_m3h, lookup,
};
use kerfwright::tables::respirator::{Assigned, HSE_WORKTOP_APF, MaskClass, MaskScheme, assigned};

use crate::printed;

use TableAnswer::{Apf, NoRespirator, NotInTable};

#[test]
fn american_factors() {
    // 29 CFR 1910.134 Table 1 (R).
    let least = |class| assigned(MaskScheme::Us, class).least();
    assert_eq!(least(MaskClass::N95), 10);
    assert_eq!(least(MaskClass::P100), 10);
    assert_eq!(least(MaskClass::FullFace), 50);
    assert_eq!(least(MaskClass::PoweredHood), 25);
    let powered = assigned(MaskScheme::Us, MaskClass::PoweredMask);
    assert_eq!((powered.least(), powered.most()), (50, 1000));
    assert_eq!(least(MaskClass::PoweredHalfMask), 50);
    assert_eq!(least(MaskClass::PoweredFullFace), 1000);
}

#[test]
fn british_factors() {
    let range = |class| {
        let given = assigned(MaskScheme::Uk, class);
        (given.least(), given.most())
    };
    // HSG53 and HSE pages (R).
    assert_eq!(range(MaskClass::Ffp3), (20, 20));
    assert_eq!(range(MaskClass::HalfMaskP3), (20, 20));
    // (Q)
    assert_eq!(range(MaskClass::FullFace), (40, 40));
    assert_eq!(range(MaskClass::PoweredHood), (10, 40));
    assert_eq!(range(MaskClass::Th1), (10, 10));
    assert_eq!(range(MaskClass::Th2), (20, 20));
    assert_eq!(range(MaskClass::Th3), (40, 40));
    // (M)
    assert_eq!(range(MaskClass::PoweredMask), (10, 40));
    assert_eq!(range(MaskClass::Tm1), (10, 10));
    assert_eq!(range(MaskClass::Tm2), (20, 20));
    assert_eq!(range(MaskClass::Tm3), (40, 40));
    // An American powered mask carries no British mark.
    assert_eq!(range(MaskClass::PoweredFullFace), (10, 40));
    // HSE stonemasonry pages 2026 (R).
    assert_eq!(HSE_WORKTOP_APF, 20);
}

#[test]
fn schemes_are_not_mixed() {
    assert_eq!(
        assigned(MaskScheme::Us, MaskClass::Ffp3),
        Assigned::NotInScheme
    );
    for european in [MaskClass::Th3, MaskClass::Tm3, MaskClass::HalfMaskP3] {
        assert_eq!(assigned(MaskScheme::Us, european), Assigned::NotInScheme);
    }
    assert_eq!(
        assigned(MaskScheme::Uk, MaskClass::N95),
        Assigned::NotInScheme
    );
    // Where neither scheme is the region's own, the lower factor counts.
    assert_eq!(
        assigned(MaskScheme::Strictest, MaskClass::FullFace).most(),
        40
    );
    assert_eq!(
        assigned(MaskScheme::Strictest, MaskClass::PoweredHood).most(),
        25
    );
}

#[test]
fn greatest_concentration() {
    // 29 CFR 1910.134(b) (R), at 0.05 mg/m³.
    for (apf, most) in [(10, 0.5), (25, 1.25), (50, 2.5)] {
        printed(max_use_concentration(apf, 0.05), most, 2);
    }
}

/// Answers of Table 1 at 3.9, exactly 4, and 4.1 hours.
fn answers(tool: Tool, control: Control, site: Site) -> [TableAnswer; 3] {
    [3.9, 4.0, 4.1].map(|hours| lookup(tool, control, site, hours))
}

#[test]
fn table_1() {
    // 29 CFR 1926.1153(c)(1) Table 1 (R): tool, control, outdoors ≤ 4 h / > 4 h, indoors likewise.
    let rows = [
        (
            Tool::HandSaw,
            Control::Water,
            (NoRespirator, Apf(10)),
            (Apf(10), Apf(10)),
        ),
        (
            Tool::Grinder,
            Control::Water,
            (NoRespirator, NoRespirator),
            (NotInTable, NotInTable),
        ),
        (
            Tool::Grinder,
            Control::Extraction,
            (NoRespirator, NoRespirator),
            (NoRespirator, Apf(10)),
        ),
        (
            Tool::MortarGrinder,
            Control::Extraction,
            (Apf(10), Apf(25)),
            (Apf(10), Apf(25)),
        ),
        (
            Tool::Drill,
            Control::Extraction,
            (NoRespirator, NoRespirator),
            (NoRespirator, NoRespirator),
        ),
        (
            Tool::StationarySaw,
            Control::Water,
            (NoRespirator, NoRespirator),
            (NoRespirator, NoRespirator),
        ),
        (
            Tool::WalkBehindSaw,
            Control::Water,
            (NoRespirator, NoRespirator),
            (Apf(10), Apf(10)),
        ),
        (
            Tool::CoreDrill,
            Control::Water,
            (NoRespirator, NoRespirator),
            (NoRespirator, NoRespirator),
        ),
    ];
    for (tool, control, outdoors, indoors) in rows {
        for (site, (short, long)) in [(Site::Outdoors, outdoors), (Site::Indoors, indoors)] {
            let expected = [short, short, long];
            assert_eq!(
                answers(tool, control, site),
                expected,
                "{tool:?} {control:?} {site:?}"
            );
        }
    }
}

#[test]
fn dry_and_unshrouded_is_in_no_row() {
    // 29 CFR 1926.1153(c)(1) Table 1 (R).
    for tool in [
        Tool::HandSaw,
        Tool::Grinder,
        Tool::MortarGrinder,
        Tool::Drill,
        Tool::StationarySaw,
        Tool::WalkBehindSaw,
        Tool::CoreDrill,
    ] {
        for site in [Site::Outdoors, Site::Indoors] {
            assert_eq!(answers(tool, Control::Nothing, site), [NotInTable; 3]);
        }
    }
    assert_eq!(
        answers(Tool::HandSaw, Control::Extraction, Site::Outdoors),
        [NotInTable; 3]
    );
}

#[test]
fn airflow_by_disc() {
    // 25 cubic feet a minute for each inch, Table 1 (R); m³/h (C).
    for (diameter, airflow) in [
        (100.0, 170.0),
        (115.0, 191.0),
        (125.0, 212.0),
        (180.0, 297.0),
        (230.0, 382.0),
    ] {
        printed(least_airflow_m3h(diameter), airflow, 0);
    }
}
