//! How many plunges a curve takes, found again by trying ever finer steps and looking at every thousandth
//! of the arc: no formula of the planner's is used.

use serde_json::Value;

use super::{list, number, plan};

/// Disc diameter, thickness, through, radius and cusp wanted, mm.
#[derive(Clone, Copy, Debug)]
struct Case {
    disc: f64,
    thick: f64,
    through: f64,
    radius: f64,
    cusp: f64,
}

const fn case(disc: f64, thick: f64, through: f64, radius: f64, cusp: f64) -> Case {
    Case {
        disc,
        thick,
        through,
        radius,
        cusp,
    }
}

const OUTSIDE: [Case; 7] = [
    case(125.0, 30.0, 3.0, 320.0, 0.5),
    case(125.0, 20.0, 3.0, 150.0, 0.5),
    case(125.0, 30.0, 2.0, 60.0, 1.0),
    case(180.0, 40.0, 5.0, 320.0, 0.3),
    case(230.0, 30.0, 3.0, 500.0, 2.0),
    case(230.0, 20.0, 5.0, 25.0, 0.5),
    case(180.0, 12.0, 2.0, 900.0, 4.0),
];

const INSIDE: [Case; 7] = [
    case(125.0, 30.0, 3.0, 260.0, 0.5),
    case(125.0, 20.0, 3.0, 150.0, 0.5),
    case(125.0, 30.0, 2.0, 400.0, 0.5),
    case(180.0, 40.0, 5.0, 420.0, 0.5),
    case(230.0, 30.0, 3.0, 480.0, 0.5),
    case(230.0, 20.0, 5.0, 300.0, 0.5),
    case(180.0, 12.0, 2.0, 220.0, 0.5),
];

impl Case {
    fn curve(self, treatment: &str) -> Value {
        let text = format!(
            "[stone]\nkind = \"granite\"\nthickness = {}\n[slab]\nrectangle = [2600, 1900]\n\
             rough = [\"AB\", \"BC\", \"CD\", \"DA\"]\n[top]\nrectangle = [2200, 1500]\n\
             {treatment} = {{ 3 = {} }}\nfinish = {{ \"1-2\" = \"saw\", \"2-3\" = \"saw\", \
             \"3-4\" = \"saw\", \"4-1\" = \"saw\" }}\n[machine]\nplate = 0\n[[disc]]\ndiameter = {}\n\
             kerf = 2.2\nobstruction = 20\n[passes]\nthrough = {}\ncusp = {}\n[circle_jig]\n\
             reach = [1, 3000]\n",
            self.thick, self.radius, self.disc, self.through, self.cusp
        );
        let plan = plan(&text);
        let mut curves = list(&plan, "cuts").iter().filter(|c| c["kind"] == "curve");
        curves
            .next()
            .unwrap_or_else(|| panic!("no curve in\n{text}"))
            .clone()
    }

    /// Half the length of the disc's cut at a depth, by walking along its rim.
    fn reach(self, below: f64) -> f64 {
        let (radius, depth) = (self.disc / 2.0, self.thick + self.through);
        let deep_enough = |i: &u32| {
            let x = f64::from(*i) * 1e-4;
            // The rim at x lies this far under the face.
            depth - (radius - (radius * radius - x * x).max(0.0).sqrt()) >= below
        };
        #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
        let end = (radius * 1e4) as u32;
        let last = (0..=end)
            .take_while(deep_enough)
            .last()
            .expect("it is in the stone");
        f64::from(last) * 1e-4
    }
}

/// The least number of equal steps of a quarter circle for which every place of it is served.
fn fewest(served: impl Fn(f64, f64) -> bool) -> u32 {
    const LOOKED_AT: u32 = 4000;
    let quarter = std::f64::consts::FRAC_PI_2;
    (1..1000)
        .find(|count| {
            let step = quarter / f64::from(*count);
            (0..=LOOKED_AT).all(|i| {
                let at = quarter * f64::from(i) / f64::from(LOOKED_AT);
                let off = at - (at / step).round() * step;
                served(off, step)
            })
        })
        .expect("some number does")
}

fn steps(curve: &Value) -> u32 {
    let count = list(&curve["set_out"]["pivot"], "stations").len();
    u32::try_from(count - 1).expect("few")
}

#[test]
fn outside() {
    for case in OUTSIDE {
        let (r, under) = (case.radius, case.reach(case.thick));
        let fewest = fewest(|off, _| {
            let ridge = r / off.cos() - r;
            ridge <= case.cusp + 1e-6 && r * off.tan().abs() <= under + 1e-3
        });
        assert_eq!(steps(&case.curve("round")), fewest, "{case:?}");
    }
}

#[test]
fn inside() {
    for case in INSIDE {
        let (r, face, under) = (case.radius, case.reach(0.0), case.reach(case.thick));
        // The farthest place of the outer face at which both its ends are still inside the circle.
        let (mut near, mut far) = (0.0, r);
        for _ in 0..60 {
            let middle = f64::midpoint(near, far);
            if middle.hypot(face) <= r {
                near = middle;
            } else {
                far = middle;
            }
        }
        let curve = case.curve("scoop");
        let said = &curve["set_out"]["pivot"]["inside"];
        super::near(number(said, "face_at_mm"), near, 1e-2);
        super::near(number(said, "sagitta_mm"), r - near, 1e-2);
        super::near(number(said, "left_under_mm"), r - near.hypot(under), 1e-2);
        let fewest = fewest(|off, _| near * off.tan().abs() <= under + 1e-3);
        assert_eq!(steps(&curve), fewest, "{case:?}");
    }
}
