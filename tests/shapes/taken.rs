//! Figures taken from drawings that programs of another language wrote (`drawings/make.py`).

use std::f64::consts::PI;

use kerfwright::job::{self, CornerCut, Drawings, FlawPlace, Job};
use proptest::prelude::*;

/// Areas agree to a millionth where the drawing has lines and true arcs.
const EXACT: f64 = 1e-6;

fn drawing(name: &str) -> String {
    let path = format!(
        "{}/tests/shapes/drawings/{name}",
        env!("CARGO_MANIFEST_DIR")
    );
    std::fs::read_to_string(path).expect("the drawing is there")
}

fn read(text: &str, files: &[(&str, &str)]) -> Result<Job, Vec<String>> {
    let drawings: Drawings = files
        .iter()
        .map(|(name, text)| ((*name).to_owned(), Ok((*text).to_owned())))
        .collect();
    match job::read_with(text, &drawings) {
        Ok((job, _)) => Ok(job),
        Err(faults) => Err(faults
            .into_iter()
            .map(|f| format!("{}: {}", f.key, f.message))
            .collect()),
    }
}

/// A job whose top is what these lines say.
fn with_top(top: &str) -> String {
    format!(
        "[stone]\nkind = \"granite\"\nthickness = 30\n[slab]\nrectangle = [3000, 1500]\n[top]\n{top}\n"
    )
}

fn top(top: &str, files: &[&str]) -> Result<Job, Vec<String>> {
    let texts: Vec<(&str, String)> = files.iter().map(|name| (*name, drawing(name))).collect();
    let texts: Vec<(&str, &str)> = texts.iter().map(|(n, t)| (*n, t.as_str())).collect();
    read(&with_top(top), &texts)
}

fn near(found: f64, wanted: f64, share: f64) {
    assert!(
        (found / wanted - 1.0).abs() < share,
        "{found}, wanted {wanted}"
    );
}

/// The area of the tray and of the counter, mm².
fn tray() -> f64 {
    let lost: f64 = [50.0_f64, 40.0, 30.0, 20.0].iter().map(|r| r * r).sum();
    600.0 * 400.0 - lost * (1.0 - PI / 4.0)
}

fn counter() -> f64 {
    1830.0 * 640.0 + PI * 320.0 * 320.0 / 2.0
}

fn rounds(job: &Job) -> Vec<f64> {
    let cuts = job.top.shape.corner_cuts().iter();
    let round = |cut: &CornerCut| match cut {
        CornerCut::Round(mm) => Some((mm * 1000.0).round() / 1000.0),
        _ => None,
    };
    cuts.filter_map(round).collect()
}

#[test]
fn a_polyline_with_bulges_is_a_rectangle_with_rounded_corners() {
    let job = top("shape = \"tray.dxf\"", &["tray.dxf"]).expect("no faults");
    near(job.top.area(), tray(), EXACT);
    assert_eq!(rounds(&job), [50.0, 40.0, 30.0, 20.0]);
    assert_eq!(job.top.shape.count(), 4);
    assert_eq!(job.top.shape.corners()[0].to_vector().length(), 0.0);
}

#[test]
fn loose_lines_and_arcs_in_inches_are_joined() {
    let text = "shape = \"counter-inches.dxf#cut\"";
    let job = top(text, &["counter-inches.dxf"]).expect("no faults");
    near(job.top.area(), counter(), EXACT);
    // The half circle is parted in its middle: a bow rises less than half its chord.
    assert_eq!(job.top.shape.count(), 5);
}

#[test]
fn a_hole_on_a_layer_of_its_own_is_a_round_opening() {
    let text = "rectangle = [1000, 600]\n[[top.cutout]]\nshape = \"counter-inches.dxf#bowl\"\nat = [500, 300]";
    let job = top(text, &["counter-inches.dxf"]).expect("no faults");
    let (centre, radius) = job.top.cutouts[0].shape.as_circle().expect("a circle");
    assert!((radius - 150.0).abs() < 1e-6 && (centre.x - 500.0).abs() < 1e-6);
}

#[test]
fn arcs_are_found_again_in_chords() {
    let job = top(
        "shape = \"chords.dxf\"\nshape_unit = \"mm\"",
        &["chords.dxf"],
    )
    .expect("no faults");
    assert_eq!(rounds(&job), [50.0, 40.0, 30.0, 20.0]);
    near(job.top.area(), tray(), EXACT);
    let told = job
        .assumed
        .iter()
        .find(|a| a.key == "top.shape")
        .expect("it is told");
    assert!(told.why.contains("4 arcs found again"), "{told:?}");
}

#[test]
fn a_half_circle_of_curves_is_two_arcs() {
    let job = top("shape = \"counter.svg\"", &["counter.svg"]).expect("no faults");
    near(job.top.area(), counter(), EXACT);
    let told = job
        .assumed
        .iter()
        .find(|a| a.key == "top.shape")
        .expect("it is told");
    // A circle of curves is off by 2.7e-4 of its radius.
    assert!(told.why.contains("up to 0.08"), "{told:?}");
}

#[test]
fn basic_shapes_under_transformations_are_read() {
    let job = top("shape = \"shapes.svg#tray\"", &["shapes.svg"]).expect("no faults");
    assert_eq!(rounds(&job), [30.0; 4]);
    near(job.top.area(), 600.0 * 400.0 - 900.0 * (4.0 - PI), EXACT);
    let job = top("shape = \"shapes.svg#wedge\"", &["shapes.svg"]).expect("no faults");
    near(job.top.area(), 10_000.0, EXACT);
    let tap = "rectangle = [900, 500]\n[[top.cutout]]\nshape = \"shapes.svg#tap\"\nat = [200, 200]";
    let job = top(tap, &["shapes.svg"]).expect("no faults");
    near(
        job.top.cutouts[0].shape.outline().area(),
        PI * 17.5 * 17.5,
        EXACT,
    );
}

#[test]
fn an_ellipse_becomes_arcs_within_the_tolerance() {
    let text = "shape = \"shapes.svg#bowl\"";
    let job = top(text, &["shapes.svg"]).expect("no faults");
    near(job.top.area(), PI * 120.0 * 80.0, 2e-4);
    for i in 0..720 {
        let angle = f64::from(i) * PI / 360.0;
        // Its frame begins at its first corner: compare about its middle.
        let middle = job.top.shape.outline().bounds().centre();
        let at = middle + kerfwright::geom::Vector::new(120.0 * angle.cos(), 80.0 * angle.sin());
        let off = job.top.shape.outline().distance(at);
        assert!(off < 0.06, "{off} mm at {i}");
    }
}

#[test]
fn marked_lengths_scale_a_drawing_and_check_each_other() {
    let scaled = |second: u32| {
        let text = format!(
            "shape = \"shapes.svg#tray\"\nshape_scale = {{ tape-1 = 960, tape-2 = {second} }}"
        );
        top(&text, &["shapes.svg"])
    };
    let job = scaled(480).expect("no faults");
    near(
        job.top.area(),
        4.0 * (600.0 * 400.0 - 900.0 * (4.0 - PI)),
        EXACT,
    );
    let faults = scaled(520).expect_err("they differ");
    assert!(faults[0].contains("differ by 8.333 %"), "{faults:?}");
}

#[test]
fn a_flaw_in_the_slabs_own_drawing_lies_where_it_is_drawn() {
    let text = "[stone]\nkind = \"granite\"\nthickness = 30\n[slab]\nshape = \"shapes.svg#tray\"\n\
        [[slab.flaw]]\nshape = \"shapes.svg#tap\"\n[top]\nrectangle = [200, 100]\n";
    let job = read(text, &[("shapes.svg", &drawing("shapes.svg"))]).expect("no faults");
    let FlawPlace::Area(area) = &job.slab.flaws[0].place else {
        panic!("an area");
    };
    // 150 from the left and 200 from above, seen from the lower left corner.
    let centre = area.centroid();
    assert!(
        (centre.x - 150.0).abs() < 1e-6 && (centre.y - 200.0).abs() < 1e-6,
        "{centre:?}"
    );
}

#[test]
fn the_drawn_top_of_one_job_is_the_top_of_another() {
    let (job, _) = job::read(include_str!("../../examples/tea-counter.toml")).expect("no faults");
    let plan = kerfwright::plan::Plan::of(&job).expect("it fits");
    let layers = kerfwright::template::layers(&plan);
    let drawn = [
        (
            "a.svg#top-outline",
            kerfwright::render::svg_layers("t", &layers),
        ),
        (
            "a.dxf#top",
            kerfwright::render::dxf(&layers).expect("it is written"),
        ),
    ];
    for (name, text) in drawn {
        let file = name.split('#').next().expect("a name");
        let top = with_top(&format!("shape = \"{name}\""));
        let again = read(&top, &[(file, &text)]).expect("no faults");
        near(again.top.area(), job.top.shape.outline().area(), EXACT);
    }
}

#[test]
fn faults_name_the_element_and_what_to_do() {
    let svg = |body: &str| {
        format!(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"100mm\" height=\"100mm\" viewBox=\"0 0 100 100\">\n{body}\n</svg>"
        )
    };
    let cases = [
        (
            "a.svg",
            svg("<path id=\"p\" d=\"M0 0 L50 0 L50 50\"/>"),
            "<path id=\"p\">: the outline is open",
        ),
        (
            "a.svg",
            svg("<path id=\"p\" d=\"M0 0 L50 0 Q\"/>"),
            "<path id=\"p\">: its path cannot be read",
        ),
        (
            "a.svg",
            svg("<rect width=\"60\" height=\"40\"/><circle r=\"40\"/>"),
            "2 closed outlines: <rect> on line 2, <circle> on line 2",
        ),
        (
            "a.svg",
            svg("<polygon id=\"x\" points=\"0,0 50,50 50,0 0,50\"/>"),
            "crosses itself",
        ),
        (
            "a.svg",
            svg("<use href=\"#x\"/>"),
            "<use> on line 2: copies",
        ),
        ("a.svg", svg(""), "no lines"),
        ("a.svg", "<html/>".into(), "<html>"),
        ("a.svg", "<svg".into(), "it is no SVG"),
        (
            "a.svg",
            svg("<rect id=\"r\" width=\"60\" height=\"40\"/>").replace("mm", ""),
            "in which unit",
        ),
        (
            "a.dxf",
            "hello\nworld\n".into(),
            "line 1 is not a group's number",
        ),
        ("a.dxf", drawing("spline.dxf"), "SPLINE"),
        ("a.dxf", drawing("chords.dxf"), "in which unit"),
        ("a.png", String::new(), ".svg or .dxf"),
    ];
    for (file, text, said) in cases {
        let faults = read(&with_top(&format!("shape = \"{file}\"")), &[(file, &text)]);
        let faults = faults.expect_err(said);
        assert!(
            faults
                .iter()
                .any(|f| f.starts_with("top.shape") && f.contains(said)),
            "{said}: {faults:?}"
        );
    }
}

#[test]
fn a_name_stays_in_the_folder_of_the_job() {
    for name in [
        "../a.svg",
        "/etc/a.svg",
        "b/../../a.svg",
        "C:\\\\a.svg",
        "..\\\\a.svg",
        "~/a.svg",
        "#top",
    ] {
        let text = with_top(&format!("shape = \"{name}\""));
        let file = job::JobFile::new(&text).expect("it is TOML");
        assert_eq!(file.drawings(), Vec::<String>::new(), "{name}");
        let faults = read(&text, &[]).expect_err(name);
        assert!(faults[0].contains("leads out of"), "{faults:?}");
    }
    let faults = read(&with_top("shape = \"a.svg\""), &[]).expect_err("not given");
    assert!(faults[0].contains("not read here"), "{faults:?}");
    let faults = read(
        &with_top("rectangle = [900, 500]\nshape_unit = \"mm\""),
        &[],
    );
    assert!(faults.expect_err("no shape")[0].contains("there is no `shape`"));
}

/// A change to a text: bytes written over, or a line left out, doubled or made a number.
fn spoilt(text: &str, (kind, at, with): &(u8, usize, String)) -> String {
    if *kind == 0 {
        let mut bytes = text.as_bytes().to_vec();
        let from = at % bytes.len();
        let to = (from + with.len()).min(bytes.len());
        bytes.splice(from..to, with.bytes());
        return String::from_utf8_lossy(&bytes).into_owned();
    }
    let mut lines: Vec<&str> = text.lines().collect();
    let line = at % lines.len();
    let number = (at % 1100).to_string();
    match kind {
        1 => drop(lines.remove(line)),
        2 => lines.insert(line, lines[line]),
        3 => lines[line] = &number,
        _ => lines[line] = "-1e308",
    }
    lines.join("\n")
}

fn whole(name: &'static str) -> impl Strategy<Value = (&'static str, String)> {
    let text = drawing(name);
    let change = (0..5_u8, any::<usize>(), "[ -~\\n]{0,3}");
    let changes = prop::collection::vec(change, 1..4);
    changes.prop_map(move |changes| {
        let text = changes
            .iter()
            .fold(text.clone(), |text, change| spoilt(&text, change));
        (name, text)
    })
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(300))]

    #[test]
    fn a_spoilt_drawing_never_panics(
        (name, text) in prop_oneof![whole("counter.svg"), whole("shapes.svg"), whole("tray.dxf"), whole("chords.dxf")]
    ) {
        let job = with_top(&format!("shape = \"{name}\"\nshape_unit = \"mm\""));
        let _ = read(&job, &[(name, &text)]);
    }
}
