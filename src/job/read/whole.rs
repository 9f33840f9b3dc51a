//! The whole job file, section by section.

use crate::job::Job;
use crate::job::reader::Reader;

use super::{
    as_cut, base, cross, disc, dust, heading, lift, machine, place, protector, route, slab, stone,
    support, today, tools, top,
};

/// The whole job; nothing when a part without a default could not be read.
pub(in crate::job) fn job(root: &mut Reader<'_>) -> Option<Job> {
    // The unit of bare numbers stands in here, so this comes first.
    let (heading, region) = root.section("job", heading::read);
    let has_slab = require(root, "slab");
    let slab = root.section("slab", |r| slab::read(r, has_slab));
    let has_stone = require(root, "stone");
    let stone = root.section("stone", |r| stone::read(r, has_stone));
    let stone = stone.map(|given| stone::weigh(root.ledger, given, slab.as_ref()));
    let has_top = require(root, "top");
    let base = base::read(root);
    let top = root.section("top", |r| {
        top::read(r, has_top, slab.as_ref(), base.as_ref())
    });
    let over_base = top.as_ref().and_then(|t| t.base_at);
    let base = base.map(|b| b.in_top_frame(over_base));
    let outline = top.as_ref().map(|t| t.top.shape.outline());
    let supports = root.each("support", |r| support::read(r, outline));
    let place = root.section("place", place::read);
    let machine = root.section("machine", machine::read);
    let discs = disc::read(root);
    let core_bits = tools::core_bits(root);
    let guide = root.section("guide", tools::guide);
    let circle_jig = root.section("circle_jig", tools::circle_jig);
    let kind = stone.as_ref().map(|s| s.kind);
    let passes = root.section("passes", |r| tools::passes(r, kind));
    let dust = root.section("dust", dust::read);
    let protector = root.section("protector", protector::read);
    let today = today::read(root, &machine);
    let lift = root.section("lift", |r| lift::read(r, region));
    let route = root.section("route", |r| route::read(r, &lift));
    let as_cut = as_cut::read(root, top.as_ref().map(|t| &t.top));
    let job = Job {
        heading,
        region,
        units: root.ledger.length_unit(),
        stone: stone?,
        slab: slab?,
        top: top?.top,
        base,
        supports,
        place,
        machine,
        discs,
        core_bits,
        guide,
        circle_jig,
        passes,
        dust,
        protector,
        today,
        lift,
        route,
        as_cut,
        assumed: Vec::new(),
    };
    cross::check(root.ledger, &job);
    Some(job)
}

/// Whether a section that must be there is there; notes when it is not.
fn require(root: &mut Reader<'_>, key: &'static str) -> bool {
    root.need(key).is_some()
}
