//! The formulas of the stages before this one, explained with the stages' own code.

use std::f64::consts::FRAC_PI_2;

use crate::cut::curve::widest_step;
use crate::cut::disc::{deepest_mm, half_length};
use crate::cut::tangents::{cusp_height, polygon_corner};
use crate::geom::{Outline, Point, Region};
use crate::handle::axes::Axes;
use crate::handle::bend::{Beam, Orientation, PlateSection};
use crate::handle::guideline::team_factor;
use crate::handle::niosh::{Task, US_CUSTOMARY, recommended_weight_limit};
use crate::handle::plate::{Spring, bilateral, unilateral};
use crate::handle::strip::BeamProfile;
use crate::hazard::crush::area_mass_kg_m2;
use crate::job::{Bond, Disc, DiscUse};
use crate::tables::disc::BORE_MM;
use crate::tables::documents as doc;
use crate::tables::documents::{L23_TEAM, NIOSH_EQUATION, TEAM_OF_FOUR};
use crate::tables::record::{Example, Record};

/// Every formula of the stages before.
pub(super) static OF_STAGES: &[Record] = &[
    Record {
        id: "deepest-cut",
        title: "Deepest cut of a disc",
        what: "Half of what the diameter exceeds flange or gear head by, less everything between \
               machine and stone.",
        why: "It must reach the thickest reading and 3 mm more.",
        what_to_do: "Measure obstruction and plate; both cost depth at once.",
        sources: &[&doc::COMPUTED],
        formula: "H = (D - obstruction)/2 - plate, mm",
        example: Some(deepest),
        ..Record::FORMULA
    },
    Record {
        id: "kerf-chord",
        title: "Length of a plunge, c(z)",
        what: "Half the length of a disc's cut at a depth z when its rim is h below the face.",
        why: "At the face it tells how near a plunge comes to kept stone, at the underside whether \
              plunges meet.",
        what_to_do: "A bigger disc cuts longer; lower it less, and the cut is shorter.",
        sources: &[&doc::COMPUTED],
        formula: "c(z) = √(R² - (R - (h - z))²), mm",
        example: Some(chord),
        ..Record::FORMULA
    },
    Record {
        id: "cusp",
        title: "Cusp between two plunges",
        what: "The ridge that stands between neighbouring plunges tangent to an arc.",
        why: "It is ground off by hand: half a millimetre is quickly done.",
        what_to_do: "More stations for a lower ridge; passes.cusp sets the limit.",
        sources: &[&doc::COMPUTED],
        formula: "cusp = r·(1/cos(Δ/2) - 1), mm",
        example: Some(ridge),
        ..Record::FORMULA
    },
    Record {
        id: "station-step",
        title: "Largest step between stations",
        what: "The smaller of two angles: that of the cusp limit, and that at which plunges still meet \
               at the underside.",
        why: "Beyond the first the ridge is too high, beyond the second the waste hangs on below.",
        what_to_do: "The arc is divided into equal steps, none larger than this.",
        sources: &[&doc::COMPUTED],
        formula: "Δ = min(2·acos(r/(r + cusp)), 2·atan(c(t)/r))",
        example: Some(step),
        ..Record::FORMULA
    },
    Record {
        id: "polygon-corner",
        title: "Corners left by straight cuts round a circle",
        what: "How far the corners of a regular polygon stand out over the circle it is drawn round.",
        why: "It shows what tangent straight cuts instead of plunges would leave to grind.",
        what_to_do: "Compare with the cusps of plunges.",
        sources: &[&doc::COMPUTED],
        formula: "r·(1/cos(π/n) - 1), mm",
        example: Some(polygon),
        ..Record::FORMULA
    },
    Record {
        id: "area-mass",
        title: "Mass of a square metre",
        what: "Thickness times density.",
        why: "Rules of thumb of the trade run 8 to 18 % higher.",
        what_to_do: "Weigh the slab if you can: its density follows and replaces the table's.",
        sources: &[&doc::COMPUTED],
        formula: "kg/m² = thickness, mm / 1000 × density, kg/m³",
        example: Some(square_metre),
        ..Record::FORMULA
    },
    Record {
        id: "team-factor",
        title: "What a team can count on",
        what: "Two people lift two thirds of the sum of what each may lift, three and four half of it.",
        why: "They do not lift at the same moment and see each other badly.",
        what_to_do: "More than four are unlikely to work as a team.",
        sources: &[&L23_TEAM, &TEAM_OF_FOUR],
        formula: "team, kg = sum of the single figures, kg × factor",
        example: Some(team),
        ..Record::FORMULA
    },
    Record {
        id: "niosh-lifting",
        title: "The revised lifting equation",
        what: "A recommended weight limit for one person's lift; load over limit is the lifting index.",
        why: "Reach, height, travel, turn, frequency and grip each take their part of 23 kg (51 lb).",
        what_to_do: "For the lift off the trestles only. It leaves out carrying, one-handed lifts and \
                     tight places.",
        sources: &[&NIOSH_EQUATION],
        formula: "RWL = LC·HM·VM·DM·AM·FM·CM; HM 25/H, VM 1 - 0.003|V - 75|, DM 0.82 + 4.5/D, AM 1 - \
                  0.0032·A (cm, degrees)",
        example: Some(lift),
        ..Record::FORMULA
    },
    Record {
        id: "shares",
        title: "Who carries how much",
        what: "A stiff stone on several hands or supports: each takes its part so that force and both moments balance.",
        why: "Who stands nearer the balance point carries more; one that would have to pull carries nothing.",
        what_to_do: "Stand in pairs opposite each other about the balance point.",
        sources: &[&doc::COMPUTED],
        formula: "F = k·(a + b·x + c·y); ΣF = W, ΣF·x = W·x0, ΣF·y = W·y0; where F < 0 solve again without it",
        example: Some(shares),
        ..Record::FORMULA
    },
    Record {
        id: "bending",
        title: "Bending of a stone under its own weight",
        what: "Greatest moment between or over two supports, over the section's resistance.",
        why: "Flat, only the thickness resists; on edge, the depth: far less stress.",
        what_to_do: "Compare with strength over safety factor. The best two supports of a plain strip \
                     stand 0.2071 of its length from its ends.",
        sources: &[&doc::GERE, &doc::BEALL],
        formula: "σ = 6·M/(b·t²) flat, 6·M/(t·b²) on edge, MPa",
        example: Some(strip),
        ..Record::FORMULA
    },
];

/// A 125 mm disc with a 42 mm flange.
fn disc() -> Disc {
    Disc {
        name: String::new(),
        diameter: 125.0,
        kerf: 2.2,
        obstruction: 42.0,
        max_rpm: 12_200.0,
        bore: BORE_MM,
        bond: Bond::Diamond,
        usage: DiscUse::All,
    }
}

fn deepest() -> Example {
    Example {
        given: "a 125 mm disc, flange 42 mm, plate 6 mm".into(),
        result: format!("{:.1} mm", deepest_mm(&disc(), 6.0)),
    }
}

fn chord() -> Example {
    let at = |below| half_length(&disc(), 33.0, below);
    Example {
        given: "a 125 mm disc lowered 33 mm into stone of 30 mm".into(),
        result: format!(
            "c(0) = {:.1} mm at the face, c(30) = {:.1} mm at the underside",
            at(0.0),
            at(30.0)
        ),
    }
}

fn ridge() -> Example {
    Example {
        given: "an arc of r 320 mm, stations 6° apart".into(),
        result: format!("{:.2} mm", cusp_height(320.0, 6_f64.to_radians())),
    }
}

fn step() -> Example {
    let under = half_length(&disc(), 33.0, 30.0);
    let widest = widest_step(320.0, 0.5, under);
    let count = (FRAC_PI_2 / widest).ceil();
    Example {
        given: format!("r 320 mm, cusp 0.5 mm, c(t) {under:.1} mm"),
        result: format!(
            "{:.2}°: {count:.0} steps for a quarter circle",
            widest.to_degrees()
        ),
    }
}

fn polygon() -> Example {
    Example {
        given: "a circle of r 320 mm, 16 straight cuts".into(),
        result: format!("{:.1} mm at each corner", polygon_corner(320.0, 16)),
    }
}

fn square_metre() -> Example {
    Example {
        given: "30 mm of stone of 2700 kg/m³".into(),
        result: format!("{:.1} kg/m²", area_mass_kg_m2(30.0, 2700.0)),
    }
}

fn team() -> Example {
    let of = |people: usize, sum: f64| team_factor(people).unwrap_or(0.0) * sum;
    Example {
        given: "two people of 20 kg each; three of 50 kg each (HSE L23)".into(),
        result: format!("{:.1} kg; {:.0} kg", of(2, 40.0), of(3, 150.0)),
    }
}

fn shares() -> Example {
    let corners = [(0.0, 0.0), (6.0, 0.0), (6.0, 4.0), (0.0, 4.0)];
    let springs = corners.map(|(x, y)| Spring {
        at: Point::new(x, y),
        stiffness: 1.0,
    });
    // 2 and 1 ft off the centre of 6 × 4 ft.
    let load_at = Point::new(5.0, 3.0);
    let listed = |forces: Vec<f64>| {
        let words: Vec<String> = forces.iter().map(|force| format!("{force:.1}")).collect();
        words.join(", ")
    };
    let pulling = bilateral(&springs, 100.0, load_at);
    let pushing = unilateral(&springs, 100.0, load_at).forces;
    let pushing = pushing.iter().map(|force| force.unwrap_or(0.0)).collect();
    Example {
        given: "100 t on four equal springs at the corners of 6 × 4 ft, 2 and 1 ft off the centre"
            .into(),
        result: format!(
            "{} t if they could pull; {} t as they only push",
            listed(pulling),
            listed(pushing)
        ),
    }
}

fn lift() -> Example {
    // NIOSH 94-110, example 4, at the origin of the lift; frequency 3 a minute for 45 minutes, fair
    // grip below 30 in.
    let task = Task {
        horizontal: 10.0,
        height: 22.0,
        travel: 37.0,
        turn_deg: 0.0,
        frequency: 0.88,
        coupling: 0.95,
    };
    let limit = recommended_weight_limit(&task, &US_CUSTOMARY);
    Example {
        given: "NIOSH 94-110, example 4: H 10 in, V 22 in, D 37 in, FM 0.88, CM 0.95; load 26 lb"
            .into(),
        result: format!("RWL {limit:.2} lb, lifting index {:.2}", 26.0 / limit),
    }
}

fn strip() -> Example {
    const LENGTH: f64 = 915.0;
    const WIDTH: f64 = 305.0;
    let corners = [(0.0, 0.0), (LENGTH, 0.0), (LENGTH, WIDTH), (0.0, WIDTH)];
    let outline = Outline::polygon(&corners.map(|(x, y)| Point::new(x, y)));
    let stress = outline.map_or(0.0, |outline| {
        let region = Region::solid(outline);
        let strip = BeamProfile::new(&region, Axes::of(&region));
        let slice = PlateSection {
            // 10.28 kN/m over the width.
            weight_n_per_mm2: 10.28 / WIDTH,
            thickness_mm: 22.0,
        };
        let inset = 0.2071 * LENGTH;
        let beam = Beam::new(&strip, slice);
        beam.worst(Orientation::Flat, [inset, LENGTH - inset])
            .stress_mpa
    });
    Example {
        given: "a strip 915 × 305 × 22 mm, 10.28 kN/m, supports 0.2071 of the length from its ends (Gere)".into(),
        result: format!("{stress:.2} MPa"),
    }
}
