//! Every finding in full, with its source.

use crate::diag::Finding;
use crate::document::block::{Block, Notice};
use crate::document::say::plain;
use crate::plan::Plan;

pub(super) fn blocks(plan: &Plan) -> Vec<Block> {
    let groups = [
        ("annex-stops", &plan.stops, true),
        ("annex-open", &plan.open, false),
        ("annex-warnings", &plan.warnings, false),
    ];
    let mut blocks = Vec::new();
    for (heading, findings, stop) in groups {
        if findings.is_empty() {
            continue;
        }
        blocks.push(Block::Heading(plain(heading)));
        blocks.push(Block::Notices(
            findings.iter().map(|f| notice(f, stop)).collect(),
        ));
    }
    let lines = plan.hazards.checklist.iter();
    let lines: Vec<Notice> = lines.map(|l| notice(&l.finding, false)).collect();
    if !lines.is_empty() {
        blocks.push(Block::Heading(plain("annex-every")));
        blocks.push(Block::Notices(lines));
    }
    blocks
}

fn notice(finding: &Finding, stop: bool) -> Notice {
    Notice {
        harm: finding.phrase.harm,
        stop,
        message: finding.message.clone(),
        full: true,
        source: finding.source.clone(),
    }
}
