//! What is said of a place: what stops it, what is to be looked at, whose fault it is.

use kerfwright::diag::{Finding, Findings};
use kerfwright::place::{self, EdgeUse, NoFit, Objection, Placement, Proof, several};
use kerfwright::words::Value;

use crate::read;

fn job(slab: &str, top: &str, more: &str) -> String {
    format!("[stone]\nkind = \"granite\"\nthickness = 30\n[slab]\n{slab}\n[top]\n{top}\n{more}\n")
}

fn miss(text: &str) -> NoFit {
    let found = place::place(&read(text));
    found.map(|(p, _)| p.pose).expect_err("no place")
}

/// A spot of 60 mm with 30 mm of clearance is 120 mm across: an opening of 119 does not take it out.
#[test]
fn an_opening_takes_a_flaw_out_with_its_clearance() {
    let text = |across: f64| {
        job(
            "rectangle = [1000, 700]\n[[slab.flaw]]\nwhat = \"knot\"\nspot = { at = [500, 350], across = 60 }\n\
             clear = 30",
            "rectangle = [900, 600]",
            &format!(
                "[[top.cutout]]\nwhat = \"bowl\"\ncircle = {across}\nat = [450, 300]\n[place]\nat = [50, 50]\nturn = 0"
            ),
        )
    };
    let small = miss(&text(119.0));
    let on_flaw = |o: &Objection| matches!(o, Objection::OnFlaw { .. });
    assert!(small.objections.iter().any(on_flaw), "{small:?}");
    assert!(place::place(&read(&text(121.0))).is_ok());
}

/// Between two factory edges of the slab nothing is cut: there is nothing to measure again. Between two
/// sawn ones the top needs all of the slab.
#[test]
fn a_top_between_factory_edges_is_not_measured_again() {
    let stops = |slab: &str, top: &str| {
        let (_, findings) = place::place(&read(&job(slab, top, ""))).expect("a place");
        findings.stops.iter().map(Finding::id).collect::<Vec<_>>()
    };
    let factory = "rectangle = [2400, 700]\nfactory = [\"BC\", \"DA\"]";
    let ends = "rectangle = [2400, 600]\nfinish = { \"2-3\" = \"factory\", \"4-1\" = \"factory\" }";
    assert!(stops(factory, ends).is_empty());
    let sawn = "rectangle = [2400, 700]\nsawn = [\"BC\", \"DA\"]";
    let ends = "rectangle = [2400, 600]\nallowance = { polish = 0, ease = 0, saw = 0 }";
    assert_eq!(stops(sawn, ends), ["measure-again"]);
}

/// Two edges lie on edges of the slab that nobody has described: one open point, with both, and gone once
/// they are described.
#[test]
fn undescribed_edges_are_asked_about() {
    let open = |said: &str| {
        let slab = format!("rectangle = [1000, 650]\n{said}");
        let (place, findings) =
            place::place(&read(&job(&slab, "rectangle = [900, 600]", ""))).expect("a place");
        let flush = |u: &&EdgeUse| matches!(u, EdgeUse::Flush { .. });
        let ids: Vec<_> = findings.open.iter().map(Finding::id).collect();
        (place.uses.iter().filter(flush).count(), ids)
    };
    assert_eq!(open(""), (2, vec!["edges-undescribed"]));
    let all = "sawn = [\"AB\", \"BC\", \"CD\", \"DA\"]";
    assert_eq!(open(all), (2, vec![]));
    assert_eq!(
        open("rough = [\"AB\", \"BC\", \"CD\", \"DA\"]\nrough_margin = 15"),
        (0, vec![])
    );
}

/// A bowed edge is always sawn: none can be the slab's own, and that is shown of every turn without a search.
#[test]
fn a_bowed_edge_is_no_factory_edge() {
    let top = "rectangle = [900, 600]\nbow = { \"1-2\" = 30 }\nfinish = { \"1-2\" = \"factory\" }";
    let missed = miss(&job("rectangle = [1400, 900]\nfactory = [\"AB\"]", top, ""));
    assert_eq!(missed.proof, Proof::AnyTurn);
    assert_eq!(missed.objections, [Objection::FactoryBow { edge: 0 }]);
}

#[test]
fn a_fixed_place_that_is_off_is_at_fault() {
    let top = "rectangle = [900, 600]";
    let off = miss(&job(
        "rectangle = [1000, 650]",
        top,
        "[place]\nat = [-5, 0]",
    ));
    assert_eq!(off.proof, Proof::Elsewhere);
    let too_small = miss(&job("rectangle = [800, 500]", top, "[place]\nat = [-5, 0]"));
    assert_eq!(too_small.proof, Proof::AnyTurn);
}

/// No two listed places lie within 25 mm of each other, whichever corner lies where.
#[test]
fn listed_places_differ() {
    let text = job("rectangle = [1000, 650]", "rectangle = [900, 600]", "");
    let places = several::several(&read(&text), 5).expect("places");
    assert!(places.len() >= 3, "{}", places.len());
    let near = |a: &Placement, b: &Placement| {
        let beside =
            |p: &kerfwright::geom::Point| b.top.corners().iter().any(|q| p.distance(*q) <= 25.0);
        a.top.corners().iter().all(beside)
    };
    for (i, a) in places.iter().enumerate() {
        assert!(!places[..i].iter().any(|b| near(a, b)), "{places:#?}");
    }
}

/// Forty edges and forty flats, each sawn by a trim of its own or lying on the slab's edge.
#[test]
fn eighty_faces_are_all_sawn() {
    let round = |k: u32| {
        let angle =
            (f64::from(k) - 0.5) * std::f64::consts::TAU / 40.0 - std::f64::consts::FRAC_PI_2;
        [600.0 * angle.cos(), 600.0 * angle.sin()]
    };
    let origin = round(0);
    let corner = |k: u32| [round(k)[0] - origin[0], round(k)[1] - origin[1]];
    let corners: Vec<[f64; 2]> = (0..40).map(corner).collect();
    let top = format!("corners = {corners:?}\nclip = 30");
    let (place, _) =
        place::place(&read(&job("rectangle = [1500, 1400]", &top, ""))).expect("a place");
    let sawn = |u: &&EdgeUse| matches!(u, EdgeUse::Sawn { .. });
    assert_eq!(
        place.trims.len(),
        place.uses.iter().filter(sawn).count() + 40
    );
    assert!(place.trims.len() >= 76, "{}", place.trims.len());
}

/// A round top touches no edge of the slab: it stands the least strip off all of them, and in the middle
/// where no leftover is worth having.
#[test]
fn a_round_top_stands_clear() {
    let circle = |slab: &str| {
        let (place, _) = place::place(&read(&job(slab, "circle = 600", ""))).expect("a place");
        let bounds = place.top.outline().bounds();
        [bounds.min.x, bounds.min.y]
    };
    let [x, y] = circle("rectangle = [900, 700]");
    assert!(x >= 10.0 - 1e-6 && y >= 10.0 - 1e-6, "{x} {y}");
    let [x, y] = circle("rectangle = [760, 700]");
    assert!((y - 50.0).abs() < 2.5, "{x} {y}");
}

/// On a slab that runs askew a turn in between takes at least a tenth less sawing than any that lays an edge along
/// an edge. It is told with the lines that fix it, and following them gives that place. On a square slab none does.
#[test]
fn a_turn_that_saves_sawing_is_told_with_its_place() {
    let rough = "rough = [\"AB\", \"BC\", \"CD\", \"DA\"]";
    let top = "rectangle = [1060, 198]";
    let askew = format!("corners = [[0, 0], [1903, 0], [2285, 1105], [382, 1105]]\n{rough}");
    let said = |findings: Findings| {
        let all = findings.warnings.into_iter();
        all.filter(|f| f.id() == "turn-saves").collect::<Vec<_>>()
    };
    let (along, findings) = place::place(&read(&job(&askew, top, ""))).expect("a place");
    let told = said(findings);
    let [told] = &told[..] else {
        panic!("told {} times", told.len());
    };
    let line = |gap: &str| {
        let found = told.message.args.iter().find(|(name, _)| *name == gap);
        match found {
            Some((_, Value::Name(line))) => line.clone(),
            other => panic!("{other:?}"),
        }
    };
    let fixed = format!("[place]\n{}\n{}", line("at"), line("to"));
    let (turned, findings) = place::place(&read(&job(&askew, top, &fixed))).expect("it fits");
    assert!(
        turned.work_mm2 < 0.9 * along.work_mm2,
        "{} against {}",
        turned.work_mm2,
        along.work_mm2
    );
    assert!(findings.stops.is_empty() && said(findings).is_empty());

    let square = format!("rectangle = [1903, 1105]\n{rough}");
    let (_, findings) = place::place(&read(&job(&square, top, ""))).expect("a place");
    assert!(said(findings).is_empty());
}
