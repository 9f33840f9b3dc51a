//! Openings: their pieces come free at the underside by what is cut and drilled, and each plunge of a curve is found
//! by tape.

use kerfwright::cut::{Because, CutKind};
use kerfwright::document::block::{Block, Cell};
use kerfwright::document::{Annex, document};
use kerfwright::plan::Plan;
use kerfwright::words::{Message, Value, Writer};

use super::PLANS;
use super::reading::messages;
use super::replay::disc::{drilled, holes, strokes, taken};
use super::replay::plane::{Stone, list};

/// Where the plan says that holes part an opening's piece, the stone at the underside falls apart by the disc's
/// slots and the holes alone, by another library's geometry: no run-out is taken out first.
#[test]
fn a_piece_is_parted_at_the_underside_by_what_is_cut() {
    let (mut seen, mut faults) = (0, Vec::new());
    for (name, plan) in PLANS.iter() {
        let parted = plan
            .cuts
            .iter()
            .filter(|c| c.because == Because::PartsUnderside);
        let parted: Vec<usize> = parted.filter_map(|c| c.cutout).collect();
        if parted.is_empty() || plan.repair.is_some() {
            continue;
        }
        let data: serde_json::Value =
            serde_json::from_str(&kerfwright::render::json::plan(plan)).expect("a plan is data");
        let below = plan.slab.thickness.most;
        for number in parted {
            let own = list(&data, "cuts").iter().filter(|c| c["cutout"] == number);
            let tools = own.flat_map(|c| [taken(&strokes(c), below), drilled(&holes(c))]);
            let whole = Stone::outline(&data["slab"]["outline"]);
            let left = whole.minus(&Stone::all(tools)).parts();
            let bounds = plan.top.openings[number - 1].outline.bounds();
            let middle = bounds.min.midpoint(bounds.max);
            let middle = [middle.x, middle.y];
            let kept = left.iter().max_by(|a, b| a.area().total_cmp(&b.area()));
            if kept.is_some_and(|stone| stone.holds(middle)) {
                faults.push(format!("{name}, opening {number}"));
            }
            seen += 1;
        }
    }
    assert!(faults.is_empty(), "{}", faults.join("\n"));
    assert!(seen > 3, "only {seen} openings");
}

/// The rows of the tables that have a box for a cut.
fn rows(blocks: &[Block], cut: usize) -> usize {
    let each = blocks.iter().map(|block| match block {
        Block::Beside(_, a, b) => rows(a, cut) + rows(b, cut),
        Block::Table(table) => {
            let titled = |v: &Value| *v == Value::count(cut);
            let column = table.columns.iter().position(|c| titled(&c.title));
            column.map_or(0, |column| {
                let ticked = |row: &&Vec<Cell>| matches!(row[column], Cell::Tick);
                table.rows.iter().filter(ticked).count()
            })
        }
        _ => 0,
    });
    each.sum()
}

/// Every plunge of a curve in an opening has its row with its box on the opening's page.
#[test]
fn every_plunge_in_an_opening_has_its_place() {
    let (mut seen, mut faults) = (0, Vec::new());
    for (name, plan) in PLANS.iter() {
        let blocks: Vec<Block> = bench(plan);
        let curves = plan
            .cuts
            .iter()
            .filter(|c| c.cutout.is_some() && c.kind == CutKind::Curve);
        for cut in curves {
            let Some(curve) = cut.set_out.curve() else {
                continue;
            };
            let plunges = curve.stations.iter().filter(|s| s.in_stone).count();
            let found = rows(&blocks, cut.number);
            if found != plunges {
                faults.push(format!("{name}, cut {}: {found} of {plunges}", cut.number));
            }
            seen += 1;
        }
    }
    assert!(faults.is_empty(), "{}", faults.join("\n"));
    assert!(seen > 3, "only {seen} curves");
}

fn bench(plan: &Plan) -> Vec<Block> {
    let sections = document(plan, Annex::Without).sections.into_iter();
    sections.flat_map(|s| s.blocks).collect()
}

/// The step that the words give is the one between any two neighbours, and the one that the table gives beside a
/// struck station.
#[test]
fn the_words_and_the_table_give_one_step() {
    let (mut seen, mut faults) = (0, Vec::new());
    let writer = Writer::default();
    for (name, plan) in PLANS.iter() {
        let curves: Vec<_> = plan.cuts.iter().filter_map(|c| c.set_out.curve()).collect();
        let told: Vec<String> = { messages(&bench(plan)).into_iter() }
            .filter(|m: &Message| m.id == "bench-curve-stations" || m.id == "bench-curve-ordinates")
            .filter_map(|m| m.arg("apart").map(|v| writer.write(v)))
            .collect();
        for curve in curves {
            let steps = curve
                .stations
                .iter()
                .skip(1)
                .map(|s| writer.write(&Value::tape(s.chord)));
            for (station, step) in curve.stations.iter().skip(1).zip(steps) {
                let beside = station.number.abs_diff(station.taped_from) == 1;
                let taped = writer.write(&Value::tape(station.taped));
                if !told.contains(&step) || (beside && taped != step) {
                    faults.push(format!(
                        "{name}: station {}: {step}, {taped}, {told:?}",
                        station.number
                    ));
                }
                seen += 1;
            }
        }
    }
    assert!(faults.is_empty(), "{}", faults.join("\n"));
    assert!(seen > 50, "only {seen} stations");
}
