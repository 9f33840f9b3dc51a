//! Whole plans after something happened: what is left to cut replays like any other job.

use serde_json::Value;

use super::replay::Wish;
use super::replay::faults;
use super::replay::plane::{list, number, word};
use super::{after, counter, plan};

const USUAL: Wish = Wish {
    score: 2.0,
    step: 6.0,
    plunge_step: 10.0,
    through: 3.0,
    cusp: 0.5,
};

fn holds(text: &str) -> Value {
    let plan = plan(text);
    let faults = faults(&plan, &USUAL);
    assert!(faults.is_empty(), "{}\n{text}", faults.join("\n"));
    plan
}

fn cuts(plan: &Value) -> Vec<String> {
    let each = list(plan, "cuts").iter();
    each.map(|c| format!("{} {}", word(c, "kind"), word(c, "edge")))
        .collect()
}

#[test]
fn half_done_and_all_on_their_lines() {
    let plan = holds(&counter("[as_cut]\ndone = [\"1-2\", \"4-1\"]\n"));
    assert_eq!(plan["repair"]["outcome"], "as_planned");
    let left = cuts(&plan);
    assert!(
        !left
            .iter()
            .any(|c| c.ends_with("1-2") || c.ends_with("4-1")),
        "{left:?}"
    );
    assert!(left.iter().any(|c| c == "straight 2-3"), "{left:?}");
}

#[test]
fn everything_done() {
    let plan = holds(&counter(
        "[as_cut]\ndone = [\"1-2\", \"2-3\", \"3-4\", \"4-1\", 2, 3]\n",
    ));
    assert!(cuts(&plan).is_empty(), "{:?}", cuts(&plan));
    // The stone is the top and its allowance.
    let (slab, top) = (
        number(&plan["slab"], "area_mm2"),
        number(&plan["top"], "area_mm2"),
    );
    assert!(slab > top && slab - top < 1.1 * 4200.0, "{slab} and {top}");
}

/// A chip too deep to grind out: the edge is sawn again as a strip of the least width.
#[test]
fn second_cut_after_a_chip() {
    let plan = holds(&counter(
        "[as_cut]\ndone = [\"1-2\", \"2-3\", \"3-4\", \"4-1\"]\n[[as_cut.chip]]\nat = [700, 600]\ndeep = 6\nacross = 14\n",
    ));
    assert!(
        cuts(&plan).contains(&"straight 3-4".to_owned()),
        "{:?}",
        cuts(&plan)
    );
    let edges = list(&plan["repair"], "edges");
    assert_eq!(number(&edges[2], "moved_in_mm"), 10.0);
    assert_eq!(edges[2]["to_do"], "cut");
    // The new line to keep clears the chip.
    let chip = list(&plan["slab"], "flaws")
        .iter()
        .find(|f| f["what"] == "chip");
    let chip = super::replay::plane::Stone::outline(&chip.expect("the chip")["path"]);
    let top = super::replay::plane::Stone::outline(&plan["top"]["sawn_outline"]);
    assert_eq!(chip.within(&top).area(), 0.0);
}

#[test]
fn a_slipped_rounding_replays() {
    let plan = holds(&counter(
        "[as_cut]\ndone = [\"1-2\", \"2-3\", \"3-4\", \"4-1\"]\n[[as_cut.arc]]\ncorner = 2\nradius = 147\n",
    ));
    assert_eq!(plan["repair"]["outcome"], "smaller");
}

/// What came out too far costs no size.
#[test]
fn over_is_ground() {
    let plan = holds(&counter(
        "[as_cut]\ndone = [\"2-3\", \"3-4\", \"4-1\"]\n[[as_cut.edge]]\nedge = \"1-2\"\nover = 2\n",
    ));
    let edge = &list(&plan["repair"], "edges")[0];
    assert_eq!(number(edge, "moved_in_mm"), 0.0);
    assert_eq!(number(&edge["to_do"], "finish-mm"), 3.0);
}

/// Letters stay while corner A and AB are there; otherwise the frame goes along.
#[test]
fn letters_of_the_stone_now() {
    let kept = holds(&counter("[as_cut]\ndone = [\"2-3\"]\n"));
    assert_eq!(kept["repair"]["letters"], "same_a");
    let new = holds(&counter("[as_cut]\ndone = [\"4-1\"]\n"));
    assert_eq!(new["repair"]["letters"], "new");
    let a = &list(&new["slab"], "corners")[0];
    assert_eq!(word(a, "name"), "A");
    let at = super::replay::plane::place(&a["at"]);
    assert!(at[0].hypot(at[1]) < 1e-9, "{at:?}");
}

#[test]
fn nothing_can_be_saved() {
    let text = counter(
        "[as_cut]\ndone = [\"1-2\", \"2-3\", \"3-4\", \"4-1\"]\n[[as_cut.chip]]\nat = [700, 600]\ndeep = 500\nacross = 400\n[[as_cut.chip]]\nat = [700, 0]\ndeep = 400\nacross = 300\n",
    );
    let miss = after(&text).expect_err("there is no stone left");
    assert!(
        miss.reasons.iter().any(|r| r.id == "repair-nothing-left"),
        "{miss:?}"
    );
}

#[test]
fn a_factory_edge_cannot_move() {
    let text = counter("[as_cut]\n[[as_cut.chip]]\nat = [0, 300]\ndeep = 3\nacross = 9\n")
        .replace(
            "rough = [\"AB\", \"BC\", \"CD\", \"DA\"]",
            "factory = [\"DA\"]",
        )
        .replace("\"4-1\" = \"polish\"", "\"4-1\" = \"factory\"")
        .replace("at = [150, 120]\n", "at = [0, 120]\n");
    assert!(after(&text).is_err());
}

/// The most usual slip: an edge beside a rounding that is still to be cut came out too far. It is ground or sawn
/// again, one of the two, and the rounding comes after it.
#[test]
fn over_beside_a_rounding_is_planned_again() {
    for (over, outcome) in [
        (2, "grind_off"),
        (5, "grind_off"),
        (9, "grind_off"),
        (12, "saw_again"),
        (30, "saw_again"),
    ] {
        let plan = holds(&counter(&format!(
            "[as_cut]\ndone = [\"2-3\", \"3-4\", \"4-1\"]\n[[as_cut.edge]]\nedge = \"1-2\"\nover = {over}\n"
        )));
        assert!(!super::replay::rules::waste_stays(&plan), "{over} over");
        assert_eq!(plan["repair"]["outcome"], outcome, "{over} over");
        let edge = &list(&plan["repair"], "edges")[0];
        let sawn = cuts(&plan).iter().any(|c| c == "straight 1-2");
        assert_eq!(edge["to_do"] == "cut", sawn, "{over} over: {edge}");
        assert_eq!(sawn, outcome == "saw_again");
        assert!(
            cuts(&plan).iter().any(|c| c == "curve 2"),
            "{:?}",
            cuts(&plan)
        );
    }
}

/// Without an allowance nothing takes a slip up: what stands over is ground.
#[test]
fn over_without_an_allowance() {
    let sawn =
        "[as_cut]\ndone = [\"2-3\", \"3-4\", \"4-1\"]\n[[as_cut.edge]]\nedge = \"1-2\"\nover = 2\n";
    let plan = holds(&counter(sawn).replace("\"1-2\" = \"polish\"", "\"1-2\" = \"saw\""));
    assert_eq!(plan["repair"]["outcome"], "grind_off");
    let edge = &list(&plan["repair"], "edges")[0];
    assert_eq!(number(&edge["to_do"], "finish-mm"), 2.0);
}

/// A slanting face costs its deepest end, and leaves a wedge to grind: 4 mm and the allowance.
#[test]
fn a_slanting_face() {
    let done = "[as_cut]\ndone = [\"2-3\", \"3-4\", \"4-1\"]\n[[as_cut.edge]]\nedge = \"1-2\"\n";
    let slanting = holds(&counter(&format!("{done}short = [0, 4]\n")));
    let all_along = holds(&counter(&format!("{done}short = 4\n")));
    let edge = |plan: &Value| list(&plan["repair"], "edges")[0].clone();
    assert_eq!(number(&edge(&slanting), "moved_in_mm"), 4.0);
    assert_eq!(number(&edge(&slanting)["to_do"], "finish-mm"), 5.0);
    // The stone has half the strip more than after a slip of 4 mm all along the edge of 1400 less a rounding.
    let area = |plan: &Value| number(&plan["slab"], "area_mm2");
    let more = area(&slanting) - area(&all_along);
    assert!((more - 2.0 * 1400.0).abs() < 0.15 * 2800.0, "{more}");
    // The other way round it is the other end.
    let other = holds(&counter(&format!("{done}over = [6, 0]\n")));
    assert_eq!(other["repair"]["outcome"], "grind_off");
}

/// The numbers of the sheet's cuts say which edges are done.
#[test]
fn cuts_by_their_numbers() {
    let sheet = plan(&counter(""));
    let first = &list(&sheet, "cuts")[0];
    let edge = word(first, "edge").to_owned();
    let numbered = holds(&counter("[as_cut]\ncuts = [1]\n"));
    let named = holds(&counter(&format!("[as_cut]\ndone = [\"{edge}\"]\n")));
    assert_eq!(cuts(&numbered), cuts(&named));
    let told = list(&numbered, "assumed")
        .iter()
        .find(|a| a["key"] == "as_cut.cuts");
    assert_eq!(
        word(told.expect("it is told"), "value"),
        format!("1: {edge}")
    );
    let none = after(&counter("[as_cut]\ncuts = [99]\n")).expect_err("there is no such cut");
    assert_eq!(none.reasons[0].id, "repair-no-such-cut");
    assert_eq!(
        none.reasons[0].arg("number"),
        Some(&kerfwright::words::Value::count(99))
    );
}
