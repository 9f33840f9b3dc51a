//! Every published figure says where it comes from: document, clause, year, and how sure it is.

use std::collections::BTreeMap;

use kerfwright::hazard::registry;
use kerfwright::tables::Source;
use kerfwright::tables::region::RegionCode;
use kerfwright::tables::stone::StoneKind;

/// Every source of a record, a region or a stone, by what it cites.
fn sources() -> BTreeMap<String, &'static Source> {
    let of_records = registry::all().flat_map(|record| record.sources.iter().copied());
    let of_regions = RegionCode::ALL.into_iter().flat_map(|region| {
        let record = region.record();
        let rules = record.rules().map(|(_, _, source)| source);
        rules.into_iter().chain([record.emergency.source])
    });
    let of_stones = StoneKind::ALL
        .into_iter()
        .filter_map(StoneKind::record)
        .flat_map(|r| {
            [
                r.density_kg_m3.source,
                r.strength_mpa.source,
                r.safety_factor.source,
                r.silica_share.source,
            ]
        });
    let all = of_records.chain(of_regions).chain(of_stones);
    all.map(|source| (format!("{}: {}", source.cite(), source.what), source))
        .collect()
}

#[test]
fn every_published_figure_has_a_document_a_clause_and_a_year_or_says_why_not() {
    let sources = sources();
    assert!(sources.len() > 80, "only {}", sources.len());
    for (cited, source) in sources
        .into_iter()
        .filter(|(_, s)| s.sure.is_published() && s.document != "no document found")
    {
        assert!(!source.document.is_empty(), "{cited}");
        assert!(!source.clause.is_empty(), "no clause: {cited}");
        let says_why_not = source.clause.contains("no year: ");
        assert!(
            (1980..=2026).contains(&source.year) != says_why_not,
            "a year, or the reason why there is none: {cited}"
        );
    }
}

#[test]
fn every_region_has_its_emergency_number_but_the_one_that_is_no_place() {
    for region in RegionCode::ALL {
        let number = region.record().emergency.number;
        let digits = !number.is_empty() && number.chars().all(|c| c.is_ascii_digit());
        assert_eq!(digits, region != RegionCode::Other, "{region:?}");
    }
}
