//! The job at true size, written as SVG and DXF and read back by other libraries.

use std::collections::BTreeMap;

use cavalier_contours::polyline::{PlineSource, PlineSourceMut, Polyline};
use dxf::entities::EntityType;
use kerfwright::plan::Plan;
use kerfwright::{render, template};

/// Closed areas by the layer they are on, mm², in the drawing's order.
type Areas = BTreeMap<String, Vec<f64>>;

fn plans() -> Vec<(String, Plan)> {
    let mut folders: Vec<_> = ["examples", "tests/golden"]
        .iter()
        .flat_map(|folder| std::fs::read_dir(folder).expect("a folder"))
        .map(|entry| entry.expect("an entry").path())
        .collect();
    folders.sort();
    let jobs = folders.into_iter().filter_map(|path| {
        let path = if path.is_dir() {
            path.join("job.toml")
        } else {
            path
        };
        (path.extension()? == "toml").then_some(path)
    });
    let planned = jobs.filter_map(|path| {
        let text = std::fs::read_to_string(&path).ok()?;
        let (job, _) = kerfwright::job::read(&text).ok()?;
        Some((path.display().to_string(), Plan::of(&job).ok()?))
    });
    planned.collect()
}

/// What the plan says the areas are.
fn planned_areas(plan: &Plan) -> Areas {
    let openings = plan.top.openings.iter();
    let [finished, made]: [Vec<f64>; 2] = [
        openings.clone().map(|o| o.outline.area()).collect(),
        openings.map(|o| o.made.area()).collect(),
    ];
    let mut areas = Areas::from([
        ("top".to_owned(), vec![plan.top.outline.area()]),
        (
            "sawn".to_owned(),
            [vec![plan.top.sawn_outline.area()], made].concat(),
        ),
    ]);
    if !finished.is_empty() {
        areas.insert("openings".to_owned(), finished);
    }
    areas
}

fn compare(name: &str, planned: &Areas, read: &Areas) {
    for (layer, areas) in planned {
        let found = read
            .get(layer)
            .unwrap_or_else(|| panic!("{name}: no layer {layer}"));
        assert_eq!(areas.len(), found.len(), "{name}, {layer}");
        for (a, b) in areas.iter().zip(found) {
            assert!((a / b - 1.0).abs() < 1e-6, "{name}, {layer}: {a} and {b}");
        }
    }
    // An offcut's rings are signed: the outer ones add, the holes take away.
    assert!(read["slab"][0] > read["top"][0], "{name}");
}

#[test]
fn a_dxf_read_back_has_the_plans_areas_and_true_arcs() {
    let plans = plans();
    assert!(plans.len() > 15, "{}", plans.len());
    for (name, plan) in &plans {
        let text = render::dxf(&template::layers(plan)).expect("it is written");
        assert!(!text.contains("$TDCREATE"));
        let drawing = dxf::Drawing::load(&mut text.as_bytes()).expect("it is read");
        assert_eq!(
            drawing.header.default_drawing_units,
            dxf::enums::Units::Millimeters
        );
        let mut areas = Areas::new();
        let mut arcs = 0;
        for entity in drawing.entities() {
            let EntityType::LwPolyline(line) = &entity.specific else {
                continue;
            };
            arcs += line.vertices.iter().filter(|v| v.bulge != 0.0).count();
            if line.is_closed() {
                let mut ring = Polyline::new_closed();
                for v in &line.vertices {
                    ring.add(v.x, v.y, v.bulge);
                }
                let layer = areas.entry(entity.common.layer.clone()).or_default();
                layer.push(ring.area());
            }
        }
        compare(name, &planned_areas(plan), &areas);
        let curved = |s: &&kerfwright::geom::Seg| matches!(s, kerfwright::geom::Seg::Arc(_));
        let least = plan.top.outline.segs().iter().filter(curved).count();
        assert!(arcs >= least, "{name}: {arcs} arcs, at least {least}");
    }
}

#[test]
fn an_svg_read_back_has_the_plans_areas() {
    for (name, plan) in &plans() {
        let text = render::svg_layers(name, &template::layers(plan));
        let document = roxmltree::Document::parse(&text).expect("it is XML");
        let mut ids = std::collections::BTreeSet::new();
        let mut areas = Areas::new();
        for node in document.descendants().filter(|n| n.has_attribute("id")) {
            let id = node.attribute("id").expect("it has one");
            assert!(ids.insert(id), "{name}: {id} twice");
            let layer = node.parent_element().and_then(|p| p.attribute("id"));
            let d = node.attribute("d").unwrap_or_default();
            if let (Some(layer), Some(area)) = (layer, closed_area(d)) {
                areas.entry(layer.to_owned()).or_default().push(area);
            }
        }
        // SVG's y runs down: what is counter-clockwise on the slab is clockwise there.
        let turned = areas
            .into_iter()
            .map(|(layer, all)| (layer, all.into_iter().map(|a| -a).collect()))
            .collect();
        compare(name, &planned_areas(plan), &turned);
    }
}

/// The signed area of a closed path of lines and arcs; nothing for one that is not closed.
fn closed_area(d: &str) -> Option<f64> {
    let mut ring = Polyline::new_closed();
    let (mut at, mut closed) = (kurbo::Point::ORIGIN, false);
    for part in svgtypes::PathParser::from(d) {
        use svgtypes::PathSegment as S;
        match part.expect("a path") {
            S::MoveTo { x, y, .. } => at = kurbo::Point::new(x, y),
            S::LineTo { x, y, .. } => {
                ring.add(at.x, at.y, 0.0);
                at = kurbo::Point::new(x, y);
            }
            S::EllipticalArc {
                rx,
                ry,
                x,
                y,
                large_arc,
                sweep,
                x_axis_rotation,
                ..
            } => {
                let to = kurbo::Point::new(x, y);
                let arc = kurbo::Arc::from_svg_arc(&kurbo::SvgArc {
                    from: at,
                    to,
                    radii: kurbo::Vec2::new(rx, ry),
                    x_rotation: x_axis_rotation,
                    large_arc,
                    sweep,
                });
                ring.add(at.x, at.y, (arc.expect("an arc").sweep_angle / 4.0).tan());
                at = to;
            }
            S::ClosePath { .. } => closed = true,
            _ => {}
        }
    }
    closed.then(|| ring.area())
}

#[test]
fn the_same_job_gives_the_same_drawing() {
    let plans = plans();
    let (_, plan) = &plans[0];
    let layers = template::layers(plan);
    let twice = [(), ()].map(|()| render::dxf(&layers).expect("it is written"));
    assert_eq!(twice[0], twice[1]);
}
