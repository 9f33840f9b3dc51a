//! The safety pages of one job under the rules of each region.

use std::fs;
use std::path::{Path, PathBuf};

use kerfwright::diag::Finding;
use kerfwright::document::{Annex, document};
use kerfwright::hazard::registry::find;
use kerfwright::job;
use kerfwright::plan::Plan;
use kerfwright::render::text;
use kerfwright::tables::record::Kind;
use kerfwright::tables::region::{RegionCode, RuleOrigin};
use kerfwright::words::Writer;
use snapbox::Assert;
use snapbox::assert::DEFAULT_ACTION_ENV;
use snapbox::data::{Data, DataFormat};

/// Granite, cut wet outdoors, with a protector known and other work the same day.
const JOB: &str = include_str!("region.toml");

fn folder() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/safety/regions")
}

/// The job under a region's rules, with a respirator that is approved there.
fn plan(region: RegionCode) -> Plan {
    let american = matches!(region, RegionCode::Us | RegionCode::UsCa | RegionCode::CaQc);
    let (mask, ear) = if american {
        ("p100", "nrr = 25\nkind = \"muffs\"")
    } else {
        ("ffp3", "snr = 28")
    };
    let text = JOB
        .replace("REGION", region.code())
        .replace("MASK", mask)
        .replace("RATING", ear);
    let (job, _) = job::read(&text).unwrap_or_else(|faults| panic!("{region:?}: {faults:?}"));
    let mut plan = Plan::of(&job).unwrap_or_else(|no_fit| panic!("{region:?}: {no_fit:?}"));
    // What cutting, lifting and setting down say of this job is for their own tests.
    let of_hazards = |finding: &Finding| find(finding.id()).is_some_and(|r| r.kind == Kind::Hazard);
    plan.stops.retain(of_hazards);
    plan.warnings.retain(of_hazards);
    plan
}

/// The dust page, the figures behind it and the findings in full, as text.
fn pages(plan: &Plan) -> String {
    let document = document(plan, Annex::With);
    let wanted = ["bench-dust", "annex-findings", "annex-health"];
    let sections = document.sections.iter();
    let sections = sections.filter(|s| wanted.contains(&s.name.id.as_ref()));
    let each = sections.map(|s| text::section(s, &Writer::new(document.system, s.language)));
    each.collect::<Vec<String>>().join("----\n")
}

#[test]
fn every_region_has_its_safety_pages() {
    for region in RegionCode::ALL {
        let path = folder().join(format!("{}.txt", region.code()));
        let expected = Data::read_from(&path, Some(DataFormat::Text)).raw();
        Assert::new()
            .action_env(DEFAULT_ACTION_ENV)
            .eq(Data::text(pages(&plan(region))), expected);
    }
    let files = fs::read_dir(folder()).expect("the folder is there");
    assert_eq!(
        files.count(),
        RegionCode::ALL.len(),
        "a page without a region"
    );
}

#[test]
fn every_limit_is_printed_with_its_document_and_the_call_to_check() {
    for region in RegionCode::ALL {
        let page = pages(&plan(region)).replace(['\n', '|'], " ");
        let page = page.split_whitespace().collect::<Vec<_>>().join(" ");
        let record = region.record();
        let sources = [
            record.silica.source,
            record.vibration.source,
            record.noise.source,
        ];
        for source in sources {
            assert!(
                page.contains(source.document),
                "{region:?}: {}",
                source.document
            );
            if source.year != 0 {
                assert!(page.contains(&source.year.to_string()), "{region:?}");
            }
        }
        assert!(page.contains("heck your current rules"), "{region:?}");
        assert!(page.contains(record.authority), "{region:?}");
        let limit = format!("{} mg/m³ over 8 hours", record.silica.limit_mg_m3);
        assert!(page.contains(&limit), "{region:?}: {limit}");
        if record.vibration.standing == RuleOrigin::Borrowed {
            assert!(page.contains("borrowed"), "{region:?}");
        }
    }
}

#[test]
fn anywhere_else_the_page_says_that_the_figures_are_the_strictest_published() {
    let page = pages(&plan(RegionCode::Other));
    assert!(page.contains("strictest published values"));
    assert!(page.contains("0.025 mg/m³"));
}
