//! Page 1, at a glance: the slab and the top, the cuts in order, six figures, stops, what is still open,
//! the warnings of this job, worst first.

use super::block::{Block, Notice, Tick, Tile};
use super::day;
use super::dust;
use super::figure::{Figure, Lettering, Thing};
use super::group::{Group, busy, groups};
use super::say::{name, plain, say, value};
use super::scene;
use crate::diag::{Finding, Scope};
use crate::plan::Plan;
use crate::words::{Message, Unit, Value};

/// At most so many warnings stand on the first page.
const MOST_WARNINGS: usize = 8;
/// And at least so many.
const LEAST_WARNINGS: usize = 4;

/// The page's blocks.
pub(super) fn blocks(plan: &Plan) -> Vec<Block> {
    let mut blocks = vec![Block::Title(Vec::new(), title(plan))];
    if !plan.stops.is_empty() {
        let stops = plan.stops.iter().map(|f| notice(f, true));
        blocks.push(Block::Notices(stops.collect()));
    }
    blocks.push(Block::Figure(Box::new(figure(plan))));
    blocks.push(Block::Tiles(tiles(plan)));
    if busy(plan) {
        blocks.push(Block::Table(day::order(plan)));
    }
    if !plan.open.is_empty() {
        blocks.push(Block::Heading(plain("bench-glance-open")));
        blocks.push(Block::Ticks(plan.open.iter().map(open).collect()));
    }
    let warnings = warnings(plan);
    if !warnings.is_empty() {
        blocks.push(Block::Heading(plain("bench-glance-warnings")));
        blocks.push(Block::Notices(warnings));
    }
    blocks
}

fn title(plan: &Plan) -> Message {
    let (mut straight, mut curves, mut openings) = (0, 0, 0);
    for group in groups(plan) {
        match group {
            Group::Straight(..) => straight += 1,
            Group::Curve(..) => curves += 1,
            Group::Opening(..) => openings += 1,
        }
    }
    let parts = [
        ("bench-work-straight", straight),
        ("bench-work-curves", curves),
        ("bench-work-openings", openings),
    ];
    let work = parts
        .into_iter()
        .filter(|(_, n)| *n > 0)
        .map(|(id, n)| value(id, [("count", Value::count(n))]));
    say(
        "bench-glance-title",
        [("work", Value::List(work.collect()))],
    )
}

/// Everything at once: slab, waste, kerfs, top.
pub(super) fn figure(plan: &Plan) -> Figure {
    let [length, width] = plan.top.size;
    let size = [
        ("length", Value::size(length)),
        ("width", Value::size(width)),
    ];
    let [long, wide] = size.clone();
    let alt = say("bench-glance-alt", size);
    let mut figure = Figure::new(alt, scene::slab_bounds(plan));
    figure.extend(scene::stage(plan, 1));
    for cut in &plan.cuts {
        figure.extend(scene::kerf(cut));
    }
    figure.extend(scene::slab_dimensions(plan, 0));
    figure.extend(scene::rings(plan, &plan.cuts));
    figure.extend(scene::corner_names(plan));
    figure.add(Thing::Within(
        plan.top.outline.clone(),
        plan.top.balance,
        Lettering::Number,
        value("bench-top-size", [long, wide]),
    ));
    figure.extend(scene::flaws(plan));
    figure.extend(scene::waste_weights(plan));
    figure
}

fn tiles(plan: &Plan) -> Vec<Tile> {
    let (heaviest, mass) = heaviest(plan);
    let minutes = |m: f64| Value::of(m, Unit::Minute).up();
    vec![
        Tile {
            name: plain("bench-tile-top"),
            value: Value::mass(plan.top.mass.high).up(),
            note: say(
                "bench-tile-likely",
                [("mass", Value::mass(plan.top.mass.likely).up())],
            ),
        },
        Tile {
            name: plain("bench-tile-slab"),
            value: Value::mass(plan.slab.mass.high).up(),
            note: say(
                "bench-tile-likely-thick",
                [
                    ("mass", Value::mass(plan.slab.mass.likely).up()),
                    ("thick", scene::thick(plan)),
                ],
            ),
        },
        Tile {
            name: plain("bench-tile-waste"),
            value: mass,
            note: heaviest,
        },
        Tile {
            name: plain("bench-tile-sawing"),
            value: minutes(plan.totals.sawing_minutes),
            note: without_edges(plan, shares(plan)),
        },
        Tile {
            name: plain("bench-tile-setting"),
            value: minutes(plan.totals.set_up_minutes),
            note: say("bench-tile-set-ups", [("count", plan.cuts.len().into())]),
        },
        Tile {
            name: plain(
                plan.hazards
                    .caught
                    .either("bench-tile-silica", "bench-tile-silica-dry"),
            ),
            value: Value::of(plan.hazards.silica.silica_g.high, Unit::Gram).up(),
            note: say(
                "bench-tile-of-dust",
                [(
                    "mass",
                    Value::of(plan.hazards.silica.dust_g.high, Unit::Gram).up(),
                )],
            ),
        },
    ]
}

/// The minutes leave out how the edges are finished: the page on dust says it in full.
fn without_edges(plan: &Plan, shares: Message) -> Message {
    if dust::not_counted(plan).is_some() {
        say("bench-tile-without-edges", [("shares", shares.into())])
    } else {
        shares
    }
}

/// Over how many people or days the sawing is shared, and the other work that counts in.
fn shares(plan: &Plan) -> Message {
    let vibration = &plan.hazards.vibration;
    // The sawing is spread over days already; a day's share may want more people still.
    let days = (plan.totals.sawing_minutes / vibration.trigger_min.max(0.1)).max(1.0);
    #[allow(clippy::cast_possible_truncation)]
    let count = (vibration.shares_to_action * days.round()).clamp(1.0, 1e6) as i64;
    let shares = say("bench-tile-shares", [("count", Value::Count(count))]);
    if vibration.other_min > 0.0 {
        let other = Value::of(vibration.other_min, Unit::Minute).up();
        return say(
            "bench-tile-with-other",
            [("other", other), ("shares", shares.into())],
        );
    }
    shares
}

fn heaviest(plan: &Plan) -> (Message, Value) {
    let pieces = plan.pieces.iter();
    let most = pieces.max_by(|a, b| a.mass.high.kg().total_cmp(&b.mass.high.kg()));
    most.map_or((plain("bench-tile-no-waste"), Value::Nothing), |piece| {
        let note = say(
            "bench-tile-after",
            [("name", name(&piece.name)), ("cut", piece.after_cut.into())],
        );
        (note, Value::mass(piece.mass.high).up())
    })
}

fn open(finding: &Finding) -> Tick {
    Tick {
        full: true,
        ..Tick::new(finding.message.clone()).blank("bench-blank")
    }
}

fn notice(finding: &Finding, stop: bool) -> Notice {
    Notice {
        harm: finding.phrase.harm,
        stop,
        message: finding.message.clone(),
        full: stop,
        source: String::new(),
    }
}

/// The warnings of this job, worst first.
fn warnings(plan: &Plan) -> Vec<Notice> {
    let own = plan.warnings.iter().filter(|f| f.phrase.of == Scope::Job);
    let mut own: Vec<&Finding> = own.collect();
    own.sort_by_key(|f| f.phrase.harm);
    // Stops and open points come first; with many of them fewer warnings have room.
    let taken = plan.stops.len() + plan.open.len();
    let room = MOST_WARNINGS.saturating_sub(taken).max(LEAST_WARNINGS);
    let first = own.into_iter().take(room);
    first.map(|f| notice(f, false)).collect()
}
