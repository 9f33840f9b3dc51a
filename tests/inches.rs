//! Inch jobs are in inches throughout: what is marked is a mark that the tape has, on the safe side; what is bought is
//! counted in that system's sizes; no metric unit stands on a sheet but those of rules and markings.

mod job_texts;
mod quantities;

use kerfwright::document::{Annex, document};
use kerfwright::job::{Job, read};
use kerfwright::layout::item::{Item, Paper};
use kerfwright::layout::pages;
use kerfwright::plan::Plan;
use kerfwright::units::LengthUnit;
use kerfwright::words::{Quantity, Rounding, System, Unit};

use job_texts::jobs;
use quantities::quantities;

const MM: f64 = 25.4;
/// The most that a mark may leave on beside kept stone for the sake of a whole mark of the tape, mm.
const LEAVES_MM: f64 = 1.0;

/// A basin with a hole in each corner, a tap hole, a wide one of plunged corners, a bow: everything that a sheet says of
/// openings and curves, in inches.
const BASIN: &str = "[job]\ntitle = \"Basin top\"\nunits = \"in\"\nregion = \"us\"\n[stone]\nkind = \"granite\"\n\
    thickness = [\"1 3/16 in\"]\n[slab]\nrectangle = [110, 34]\n[top]\nrectangle = [96, 25.5]\nround = { 2 = 6 }\n\
    finish = { \"1-2\" = \"polish\", \"2-3\" = \"ease\" }\n\
    [[top.cutout]]\nwhat = \"basin\"\nrectangle = [20, 14]\nround = { 1 = 1, 2 = 1, 3 = 1, 4 = 1 }\nat = [24, 12]\n\
    [[top.cutout]]\nwhat = \"tap\"\ncircle = \"1 3/8 in\"\nat = [24, 22]\n\
    [[top.cutout]]\nwhat = \"round sink\"\ncircle = 15\nat = [66, 12.5]\n\
    [[core_bit]]\ndiameter = \"1 3/8 in\"\n[dust]\nmethod = \"water\"\nwhere = \"outdoors\"\n";

/// Every job with its name, as it is written.
fn all() -> Vec<(String, Job)> {
    let texts = [jobs("examples"), jobs("tests/golden")].concat();
    let texts = texts
        .into_iter()
        .chain([("basin in inches".into(), BASIN.into())]);
    texts
        .filter_map(|(name, text): (String, String)| Some((name, read(&text).ok()?.0)))
        .collect()
}

/// The texts of a sheet, page by page.
fn texts(plan: &Plan) -> Vec<String> {
    let sheet = pages(&document(plan, Annex::Without), Paper::Letter).pages;
    let items = sheet.into_iter().flat_map(|p| p.items);
    items
        .filter_map(|item| match item {
            Item::Text(text) => Some(text.content),
            _ => None,
        })
        .collect()
}

/// A metric unit behind a number, when one stands in a text.
fn metric(text: &str) -> Option<String> {
    const UNITS: [&str; 14] = [
        "mm", "cm", "m", "km", "kg", "l", "l/min", "cm²", "m²", "m³/h", "kN", "MPa", "°C", "kg/m³",
    ];
    let words: Vec<&str> = text
        .split([' ', '\u{a0}', '(', ')', ',', ';', ':'])
        .collect();
    let number = |w: &str| w.starts_with(|c: char| c.is_ascii_digit());
    let found = words
        .windows(2)
        .find(|w| number(w[0]) && UNITS.contains(&w[1].trim_end_matches('.')));
    found.map(|w| w.join(" "))
}

#[test]
fn no_metric_unit_stands_on_an_inch_sheet() {
    let (mut seen, mut faults) = (0, Vec::new());
    for (name, job) in all() {
        if job.units != LengthUnit::Inch {
            continue;
        }
        let Ok(plan) = Plan::of(&job) else { continue };
        seen += 1;
        // A name and its unit may be two texts beside each other on one line.
        let texts = texts(&plan);
        let joined = texts.windows(2).map(|pair| pair.join(" "));
        let told = joined.filter_map(|t| metric(&t).map(|m| format!("{name}: {m} in {t}")));
        faults.extend(told);
        assert!(
            texts.iter().any(|t| t.contains("ft")),
            "{name}: masking tape is bought in feet"
        );
    }
    assert!(faults.is_empty(), "{}", faults.join("\n"));
    assert!(seen >= 3, "{seen}");
}

/// A figure such as `25 9/32`: inches, and the denominator.
fn inches(figure: &str) -> (f64, u32) {
    let (whole, part) = figure
        .split_once('\u{a0}')
        .unwrap_or(if figure.contains('/') {
            ("0", figure)
        } else {
            (figure, "0/1")
        });
    let (over, under) = part.split_once('/').expect("a fraction");
    let [whole, over, under] =
        [whole, over, under].map(|n| n.replace('−', "-").parse::<f64>().expect("a number"));
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
    let parts = under as u32;
    (
        whole + (over / under).copysign(if figure.starts_with('−') { -1.0 } else { 1.0 }),
        parts,
    )
}

/// Every job turned into inches: sixteenths, and thirty-seconds only beside kept stone, where a sixteenth would leave
/// more than a millimetre on; never into the kept stone.
#[test]
fn what_is_marked_is_a_mark_of_the_tape_on_the_safe_side() {
    let (mut seen, mut halves) = (0, 0);
    for (name, mut job) in all() {
        job.units = LengthUnit::Inch;
        let Ok(plan) = Plan::of(&job) else { continue };
        for (quantity, id) in quantities(&document(&plan, Annex::Without)) {
            if !matches!(quantity.unit, Unit::Tape | Unit::Size) || quantity.decimals.is_some() {
                continue;
            }
            let figure = quantity.figure(System::Inch);
            let (printed, parts) = inches(&figure);
            let over = printed * MM - quantity.value;
            let said = format!("{name}, {id}: {figure} for {} mm", quantity.value);
            let up = match quantity.rounding {
                Rounding::Nearest => {
                    assert!(parts <= 16 && over.abs() <= MM / 16.0 + 1e-6, "{said}");
                    continue;
                }
                Rounding::Up | Rounding::UpToHalf => over,
                Rounding::Down | Rounding::DownToHalf => -over,
            };
            assert!(up >= -1e-4, "{said}: towards the wrong side");
            if parts > 16 {
                halves += 1;
                let whole = up + MM / 32.0;
                assert!(
                    parts == 32 && whole > LEAVES_MM,
                    "{said}: a sixteenth leaves {whole:.2} mm"
                );
            }
            let kept = matches!(quantity.rounding, Rounding::UpToHalf | Rounding::DownToHalf);
            assert!(
                !kept || up <= LEAVES_MM + 1e-4,
                "{said}: {up:.2} mm are left on"
            );
            seen += 1;
        }
    }
    assert!(seen > 500 && halves > 10, "{seen}, {halves}");
}

/// 25.4 mm are an inch (international yard and pound agreement, 1959): 0.1 mm are 0.0039 in, and are not written as none.
#[test]
fn a_tenth_of_a_millimetre_is_not_nothing() {
    let figure = |mm: f64| Quantity::new(mm, Unit::Fine).figure(System::Inch);
    assert_eq!(figure(0.1), "0.004");
    assert_eq!(figure(0.5), "0.02");
    assert_eq!(figure(0.0), "0.00");
}
