//! No text makes the reader or the drawing panic.

use kerfwright::cli::report::{Colour, draw};
use kerfwright::diag::Severity;
use kerfwright::job::read;
use proptest::prelude::*;

use super::{LEAST, findings};

/// Pieces of job files, to be strung together at random.
fn pieces() -> impl Strategy<Value = String> {
    let words = prop::sample::select(vec![
        "[stone]\n",
        "[slab]\n",
        "[top]\n",
        "[[slab.flaw]]\n",
        "[[disc]]\n",
        "[machine]\n",
        "[lift]\n",
        "kind = ",
        "thickness = ",
        "rectangle = ",
        "corners = ",
        "round = ",
        "line = ",
        "at = ",
        "\"granite\"\n",
        "30\n",
        "-1e308\n",
        "nan\n",
        "[1, 2]\n",
        "[[0,0],[9,0],[9,9]]\n",
        "{ 2 = 3, 3 = 1e9 }\n",
        "{ at = [1, 2], across = \"1/3 in\" }\n",
        "weighed = ",
        "\"1 kg\"\n",
        "people = ",
        "each = ",
        "stand = ",
        "[job]\nunits = \"in\"\n",
        "\u{e9}\u{1F9F1}",
        "'''",
        "\r\n",
        "\"",
    ]);
    prop::collection::vec(words, 0..40).prop_map(|v| v.concat())
}

/// Reads and draws a text; neither may panic, and every span lies within the text.
fn survive(text: &str) {
    if let Err(found) = read(text) {
        assert!(found.iter().any(|f| f.severity == Severity::Fault));
    }
    for finding in findings(text) {
        if let Some((start, end)) = finding.span {
            assert!(start <= end && end <= text.len());
        }
        let drawn = draw("x.toml", text, &[finding], Colour::Plain);
        assert!(drawn.contains("x.toml"));
    }
}

proptest! {
    #[test]
    fn no_text_panics(text in any::<String>()) {
        survive(&text);
    }

    #[test]
    fn no_mixture_of_pieces_panics(text in pieces()) {
        survive(&text);
    }

    #[test]
    fn no_numbers_panic(x in any::<f64>(), y in any::<f64>(), r in any::<f64>(), t in any::<i64>()) {
        let corners = format!("corners = [[0, 0], [{x:?}, 0], [{x:?}, {y:?}], [{t}, {y:?}]]\nround = {{ 2 = {r:?} }}");
        let text = LEAST.replace("rectangle = [2000, 640]", &corners).replace("= 30", &format!("= {t}"));
        survive(&text);
    }

    #[test]
    fn no_plausible_figure_panics(v in prop::collection::vec(-9..9_i32, 6), r in 0..9_i32, c in 0..9_i32) {
        let corners = format!(
            "corners = [[0, 0], [{}, {}], [{}, {}], [{}, {}]]\nround = {{ 2 = {r} }}\nclip = {{ 3 = {c} }}",
            v[0], v[1], v[2], v[3], v[4], v[5]
        );
        survive(&LEAST.replace("rectangle = [2000, 640]", &corners));
    }
}
