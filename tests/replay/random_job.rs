//! Random jobs, written as job-file text; the same seed gives the same job.

use std::fmt::Write as _;

use super::Wish;
use super::plane::{Place, Stone, moved};

/// A source of numbers that look random: `SplitMix64`.
#[derive(Clone, Debug)]
pub(crate) struct Dice(pub(crate) u64);

impl Dice {
    fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        z ^ (z >> 31)
    }

    /// 0 to 1, the 1 left out.
    pub(crate) fn share(&mut self) -> f64 {
        (self.next() >> 11) as f64 / (1_u64 << 53) as f64
    }

    /// A length between two, to a tenth.
    pub(crate) fn between(&mut self, low: f64, high: f64) -> f64 {
        ((low + (high - low) * self.share()) * 10.0).round() / 10.0
    }

    pub(crate) fn chance(&mut self, share: f64) -> bool {
        self.share() < share
    }

    pub(crate) fn below(&mut self, count: usize) -> usize {
        (self.next() % count as u64) as usize
    }

    pub(crate) fn pick<T: Clone>(&mut self, of: &[T]) -> T {
        of[self.below(of.len())].clone()
    }
}

/// What is done to a corner of the top.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum Corner {
    Sharp,
    Round(f64),
    Clip(f64),
    Scoop(f64),
}

/// An opening of the top: symmetrical, its middle in the top's frame.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Opening {
    pub(crate) at: Place,
    pub(crate) shape: Opened,
    pub(crate) finish: &'static str,
}

/// The shape of an opening.
#[derive(Clone, Copy, Debug)]
pub(crate) enum Opened {
    /// Across.
    Circle(f64),
    /// Length, depth and the radius of all corners.
    Rectangle([f64; 2], f64),
}

/// A flaw of the slab.
#[derive(Clone, Debug)]
pub(crate) enum Flaw {
    Spot(Place, f64),
    Line(Vec<Place>),
    Area(Vec<Place>),
}

/// A job as a person would describe it, lengths in mm whatever unit it is written in.
#[derive(Clone, Debug)]
pub(crate) struct RandomJob {
    pub(crate) slab: Vec<Place>,
    pub(crate) states: Vec<&'static str>,
    pub(crate) flaws: Vec<(Flaw, f64)>,
    pub(crate) top: Vec<Place>,
    pub(crate) corners: Vec<Corner>,
    pub(crate) finishes: Vec<&'static str>,
    pub(crate) allowances: [f64; 3],
    pub(crate) tape: f64,
    pub(crate) vein: Option<(f64, &'static str)>,
    pub(crate) fixed: Option<(Place, f64)>,
    pub(crate) least_strip: f64,
    pub(crate) thickness: Vec<f64>,
    /// Diameter, kerf and obstruction of each disc.
    pub(crate) discs: Vec<[f64; 3]>,
    pub(crate) bits: Vec<f64>,
    pub(crate) openings: Vec<Opening>,
    pub(crate) plate: f64,
    pub(crate) wish: Wish,
    pub(crate) far_end: f64,
    pub(crate) guide: [f64; 3],
    pub(crate) inches: bool,
}

/// Diameter, kerf and obstruction of discs, mm.
const DISCS: [[f64; 3]; 4] = [
    [125.0, 2.2, 34.0],
    [125.0, 2.2, 20.0],
    [180.0, 2.6, 60.0],
    [230.0, 3.2, 80.0],
];

impl RandomJob {
    /// The job of a seed with inside corners, hollow arcs or openings in its top, which lies in the middle of
    /// its slab; several discs and core bits.
    pub(crate) fn with_insides(seed: u64) -> Self {
        let mut job = Self::of(seed);
        let dice = &mut Dice(seed.wrapping_mul(0x2000_0003).wrapping_add(7));
        let (long, deep) = (dice.between(900.0, 2200.0), dice.between(500.0, 1100.0));
        let (top, corners) = reflex_top(dice, long, deep);
        job.openings = openings(dice, &top);
        job.finishes = top
            .iter()
            .map(|_| dice.pick(&["polish", "ease", "saw"]))
            .collect();
        (job.top, job.corners) = (top, corners);
        let edge = dice.between(40.0, 120.0);
        let (l, d) = (long + 2.0 * edge, deep + 2.0 * edge);
        job.slab = vec![[0.0, 0.0], [l, 0.0], [l, d], [0.0, d]];
        job.states = vec!["sawn"; 4];
        job.flaws = Vec::new();
        job.vein = None;
        job.least_strip = 5.0;
        let turn = dice.pick(&[0.0, 0.0, 180.0, 2.0]);
        job.fixed = Some(centred(&job.slab, &job.top, turn));
        job.discs = DISCS.into_iter().filter(|_| dice.chance(0.5)).collect();
        if job.discs.is_empty() {
            job.discs.push(DISCS[0]);
        }
        job.bits = [20.0, 35.0, 50.0, 68.0]
            .into_iter()
            .filter(|_| dice.chance(0.6))
            .collect();
        // A figure that is none is not what is tried here.
        if kerfwright::job::read(&job.text()).is_err() {
            job.openings.clear();
        }
        if kerfwright::job::read(&job.text()).is_err() {
            job.corners = vec![Corner::Sharp; job.top.len()];
        }
        job
    }

    /// The job of a seed.
    pub(crate) fn of(seed: u64) -> Self {
        let dice = &mut Dice(seed.wrapping_mul(0x1000_0001));
        let (long, deep) = (dice.between(700.0, 3000.0), dice.between(400.0, 1100.0));
        let slab = slab(dice, long, deep);
        let n = slab.len();
        let states: Vec<&str> = (0..n)
            .map(|_| dice.pick(&["factory", "sawn", "sawn", "rough"]))
            .collect();
        let (top, corners) = top(dice, long, deep);
        let usual: &[&str] = &["polish", "ease", "saw"];
        let with_factory: &[&str] = &["polish", "ease", "saw", "factory"];
        let any_factory = states.contains(&"factory") && dice.chance(0.5);
        let from = if any_factory { with_factory } else { usual };
        let finishes = top.iter().map(|_| dice.pick(from)).collect();
        let thick = dice.between(12.0, 40.0);
        Self {
            flaws: flaws(dice, &slab, long, deep),
            finishes,
            allowances: dice.pick(&[[1.0, 0.5, 0.0], [2.0, 1.0, 0.3], [0.0, 0.0, 0.0]]),
            tape: dice.pick(&[0.5, 1.0, 2.0]),
            vein: dice.chance(0.2).then(|| {
                (
                    dice.between(-40.0, 40.0),
                    dice.pick(&["along", "across", "any"]),
                )
            }),
            fixed: dice.chance(0.25).then(|| {
                let turn = dice.pick(&[0.0, 90.0, 180.0, 3.0]);
                fixed(dice, &slab, &top, turn)
            }),
            least_strip: dice.pick(&[5.0, 10.0, 25.0]),
            thickness: vec![thick, thick + dice.between(0.0, 1.5)],
            discs: vec![dice.pick(&DISCS)],
            bits: Vec::new(),
            openings: Vec::new(),
            plate: dice.pick(&[0.0, 3.0, 6.0]),
            wish: Wish {
                score: dice.pick(&[1.0, 2.0]),
                step: dice.pick(&[4.0, 6.0, 15.0]),
                plunge_step: dice.pick(&[8.0, 10.0]),
                through: dice.pick(&[2.0, 3.0, 5.0]),
                cusp: dice.pick(&[0.3, 0.5, 1.0]),
            },
            far_end: dice.pick(&[0.0, 60.0]),
            guide: [
                dice.between(600.0, 3000.0),
                dice.between(60.0, 200.0),
                100.0,
            ],
            inches: dice.chance(0.15),
            slab,
            states,
            top,
            corners,
        }
    }

    /// The job file.
    pub(crate) fn text(&self) -> String {
        let mut text = String::new();
        let unit = if self.inches { "in" } else { "mm" };
        let l = |v: f64| self.length(v);
        let _ = writeln!(
            text,
            "[job]\nunits = \"{unit}\"\n[stone]\nkind = \"gabbro\""
        );
        let thickness: Vec<String> = self.thickness.iter().map(|t| l(*t)).collect();
        let _ = writeln!(text, "thickness = [{}]", thickness.join(", "));
        let _ = writeln!(text, "[slab]\ncorners = {}", self.points(&self.slab));
        let named = |state: &str| {
            let names: Vec<String> = (0..self.slab.len())
                .filter(|i| self.states[*i] == state)
                .map(|i| format!("\"{}\"", slab_edge(i, self.slab.len())))
                .collect();
            names.join(", ")
        };
        let _ = writeln!(
            text,
            "factory = [{}]\nrough = [{}]",
            named("factory"),
            named("rough")
        );
        let _ = writeln!(text, "tape = {}", l(self.tape));
        if let Some((vein, _)) = self.vein {
            let _ = writeln!(text, "vein = {vein}");
        }
        for (flaw, clear) in &self.flaws {
            let place = match flaw {
                Flaw::Spot(at, across) => {
                    let at = self.points(&[*at]);
                    let at = at.trim_matches(['[', ']']);
                    format!("spot = {{ at = [{at}], across = {} }}", l(*across))
                }
                Flaw::Line(points) => format!("line = {}", self.points(points)),
                Flaw::Area(points) => format!("area = {}", self.points(points)),
            };
            let _ = writeln!(
                text,
                "[[slab.flaw]]\nwhat = \"mend\"\n{place}\nclear = {}",
                l(*clear)
            );
        }
        self.write_top(&mut text);
        self.write_kit(&mut text);
        text
    }

    fn write_top(&self, text: &mut String) {
        let l = |v: f64| self.length(v);
        let _ = writeln!(text, "[top]\ncorners = {}", self.points(&self.top));
        let treated = |of: fn(&Corner) -> Option<f64>| {
            let each: Vec<String> = (0..self.top.len())
                .filter_map(|i| Some(format!("{} = {}", i + 1, l(of(&self.corners[i])?))))
                .collect();
            each.join(", ")
        };
        let round = treated(|c| {
            if let Corner::Round(r) = c {
                Some(*r)
            } else {
                None
            }
        });
        let clip = treated(|c| {
            if let Corner::Clip(r) = c {
                Some(*r)
            } else {
                None
            }
        });
        let scoop = treated(|c| {
            if let Corner::Scoop(r) = c {
                Some(*r)
            } else {
                None
            }
        });
        let _ = writeln!(text, "round = {{ {round} }}\nclip = {{ {clip} }}");
        if !scoop.is_empty() {
            let _ = writeln!(text, "scoop = {{ {scoop} }}");
        }
        let n = self.top.len();
        let finishes: Vec<String> = (0..n)
            .map(|i| {
                format!(
                    "\"{}-{}\" = \"{}\"",
                    i + 1,
                    (i + 1) % n + 1,
                    self.finishes[i]
                )
            })
            .collect();
        let _ = writeln!(text, "finish = {{ {} }}", finishes.join(", "));
        if let Some((_, wish)) = self.vein {
            let _ = writeln!(text, "vein = \"{wish}\"");
        }
        let [polish, ease, saw] = self.allowances.map(l);
        let _ = writeln!(
            text,
            "allowance = {{ polish = {polish}, ease = {ease}, saw = {saw} }}"
        );
        for opening in &self.openings {
            let at = self.points(&[opening.at]);
            let _ = writeln!(text, "[[top.cutout]]\nat = {}", &at[1..at.len() - 1]);
            let _ = writeln!(text, "finish = \"{}\"", opening.finish);
            let _ = match opening.shape {
                Opened::Circle(across) => writeln!(text, "circle = {}", l(across)),
                Opened::Rectangle([a, b], r) if r > 0.0 => {
                    let r = l(r);
                    let round = format!("{{ 1 = {r}, 2 = {r}, 3 = {r}, 4 = {r} }}");
                    writeln!(text, "rectangle = [{}, {}]\nround = {round}", l(a), l(b))
                }
                Opened::Rectangle([a, b], _) => writeln!(text, "rectangle = [{}, {}]", l(a), l(b)),
            };
        }
        let _ = writeln!(text, "[place]\nleast_strip = {}", l(self.least_strip));
        if let Some((at, turn)) = self.fixed {
            let at = self.points(&[at]);
            let _ = writeln!(text, "at = {}\nturn = {turn}", &at[1..at.len() - 1]);
        }
    }

    fn write_kit(&self, text: &mut String) {
        let l = |v: f64| self.length(v);
        let wish = self.wish;
        let [score, step, plunge] = [wish.score, wish.step, wish.plunge_step].map(l);
        let [through, cusp, far] = [wish.through, wish.cusp, self.far_end].map(l);
        let [guide, offset, overlap] = self.guide.map(l);
        let _ = write!(
            text,
            "[machine]\nplate = {}\n\
             [passes]\nscore = {score}\nstep = {step}\nplunge_step = {plunge}\n\
             through = {through}\ncusp = {cusp}\nfar_end = {far}\n\
             [guide]\nlength = {guide}\noffset = {offset}\noverlap = {overlap}\n",
            l(self.plate)
        );
        for (i, disc) in self.discs.iter().enumerate() {
            let [diameter, kerf, obstruction] = disc.map(l);
            let _ = write!(
                text,
                "[[disc]]\nname = \"disc {i}\"\ndiameter = {diameter}\nkerf = {kerf}\n\
                 obstruction = {obstruction}\nmax_rpm = 12200\n"
            );
        }
        for bit in &self.bits {
            let _ = writeln!(text, "[[core_bit]]\ndiameter = {}", l(*bit));
        }
    }

    /// A length in the file's unit, every digit kept.
    fn length(&self, mm: f64) -> String {
        let value = if self.inches { mm / 25.4 } else { mm };
        format!("{value}")
    }

    fn points(&self, points: &[Place]) -> String {
        let each: Vec<String> = points
            .iter()
            .map(|p| format!("[{}, {}]", self.length(p[0]), self.length(p[1])))
            .collect();
        format!("[{}]", each.join(", "))
    }

    /// The name of a slab edge, counted from 0.
    pub(crate) fn slab_edge(&self, edge: usize) -> String {
        slab_edge(edge, self.slab.len())
    }
}

fn slab_edge(edge: usize, count: usize) -> String {
    let letter = |i: usize| char::from(b'A' + (i % count) as u8);
    format!("{}{}", letter(edge), letter(edge + 1))
}

fn slab(dice: &mut Dice, long: f64, deep: f64) -> Vec<Place> {
    let mut wobble = |p: Place| {
        [
            p[0] + dice.between(-8.0, 8.0),
            p[1] + dice.between(-8.0, 8.0),
        ]
    };
    let square = [[0.0, 0.0], [long, 0.0], [long, deep], [0.0, deep]];
    let askew = [
        square[0],
        wobble(square[1]),
        wobble(square[2]),
        wobble(square[3]),
    ];
    match dice.below(10) {
        0..=2 => square.to_vec(),
        3..=5 => askew.to_vec(),
        6..=7 => {
            let [a, b, c, d] = askew;
            let (back, down) = (
                dice.between(40.0, long * 0.3),
                dice.between(40.0, deep * 0.4),
            );
            let mut corners = vec![a, b, [c[0], c[1] - down], [c[0] - back, c[1]], d];
            if dice.chance(0.5) {
                corners[1] = [b[0] - dice.between(30.0, 200.0), b[1]];
                corners.insert(2, [b[0], b[1] + dice.between(30.0, deep * 0.3)]);
            }
            corners
        }
        _ => {
            let (x, y) = (
                dice.between(long * 0.5, long * 0.85),
                dice.between(deep * 0.4, deep * 0.8),
            );
            vec![
                [0.0, 0.0],
                [long, 0.0],
                [long, y],
                [x, y],
                [x, deep],
                [0.0, deep],
            ]
        }
    }
}

fn top(dice: &mut Dice, long: f64, deep: f64) -> (Vec<Place>, Vec<Corner>) {
    let share = if dice.chance(0.3) {
        (0.85, 1.0)
    } else {
        (0.3, 0.85)
    };
    let (l, d) = (
        dice.between(long * share.0, long * share.1),
        dice.between(deep * share.0, deep * share.1),
    );
    let mut corners = vec![[0.0, 0.0], [l, 0.0], [l, d], [0.0, d]];
    let half = l.min(d) / 2.0;
    let askew = dice.chance(0.25);
    if askew {
        corners[1][1] += dice.between(0.0, d * 0.1);
        corners[2][0] -= dice.between(0.0, l * 0.2);
        corners[3][0] += dice.between(0.0, l * 0.05);
    }
    let mut treated = vec![Corner::Sharp; 4];
    match dice.below(6) {
        0 if !askew && l >= d => {
            treated[1] = Corner::Round(d / 2.0);
            treated[2] = Corner::Round(d / 2.0);
        }
        1 if !askew => treated = vec![Corner::Round(half); 4],
        2 => {}
        _ => {
            for corner in &mut treated {
                *corner = match dice.below(4) {
                    0 | 1 => Corner::Round(dice.between(10.0, half * 0.7)),
                    2 => Corner::Clip(dice.between(10.0, half * 0.6)),
                    _ => Corner::Sharp,
                };
            }
        }
    }
    if dice.chance(0.15) && treated[3] == Corner::Sharp {
        // A fifth corner: the upper left one cut off by an edge of its own.
        let [x, y] = corners[3];
        let by = dice.between(30.0, half * 0.25);
        corners[3] = [x + by, y];
        corners.push([x, y - by]);
        treated = treated.into_iter().map(|_| Corner::Sharp).collect();
        treated.push(Corner::Sharp);
    }
    (corners, treated)
}

fn flaws(dice: &mut Dice, slab: &[Place], long: f64, deep: f64) -> Vec<(Flaw, f64)> {
    let slab = Stone::ring(slab);
    let count = dice.pick(&[0, 0, 1, 2]);
    (0..count)
        .filter_map(|_| {
            let at = [
                dice.between(20.0, long - 20.0),
                dice.between(20.0, deep - 20.0),
            ];
            let on = |p: Place, dice: &mut Dice, by: f64| {
                let turn = dice.share() * std::f64::consts::TAU;
                let q = moved(p, [turn.cos(), turn.sin()], by);
                [q[0].clamp(1.0, long - 1.0), q[1].clamp(1.0, deep - 1.0)]
            };
            let flaw = match dice.below(3) {
                0 => Flaw::Spot(at, dice.between(5.0, 60.0)),
                1 => Flaw::Line(vec![at, on(at, dice, 150.0)]),
                _ => Flaw::Area(vec![
                    at,
                    [at[0] + dice.between(20.0, 90.0), at[1]],
                    [at[0] + 10.0, at[1] + dice.between(20.0, 90.0)],
                ]),
            };
            let clear = dice.pick(&[0.0, 5.0, 15.0]);
            // A flaw off the slab is the reader's to refuse.
            slab.holds(at).then_some((flaw, clear))
        })
        .collect()
}

/// A place near the middle of the slab, or flush in its corner A.
fn fixed(dice: &mut Dice, slab: &[Place], top: &[Place], turn: f64) -> (Place, f64) {
    if dice.chance(0.3) {
        return ([1.0, 1.0], 0.0);
    }
    let centre = |ring: &[Place]| {
        let mean = |k: usize| {
            let all = ring.iter().map(|p| p[k]);
            let (low, high) = all.fold((f64::MAX, f64::MIN), |m, v| (m.0.min(v), m.1.max(v)));
            f64::midpoint(low, high)
        };
        [mean(0), mean(1)]
    };
    let (sin, cos) = turn.to_radians().sin_cos();
    let of = centre(top);
    let here = [of[0] * cos - of[1] * sin, of[0] * sin + of[1] * cos];
    let on = centre(slab);
    let at = [on[0] - here[0], on[1] - here[1]];
    let near = |v: f64, dice: &mut Dice| ((v + dice.between(-40.0, 40.0)) * 10.0).round() / 10.0;
    ([near(at[0], dice), near(at[1], dice)], turn)
}

/// A top with an inside corner, a notch, a hollow, or a plain one that openings will be cut into.
fn reflex_top(dice: &mut Dice, l: f64, d: f64) -> (Vec<Place>, Vec<Corner>) {
    let x = dice.between(l * 0.3, l * 0.6);
    let y = dice.between(d * 0.35, d * 0.6);
    let corner = |dice: &mut Dice| match dice.below(5) {
        0 => Corner::Round(dice.pick(&[10.0, 17.5, 20.0, 25.0])),
        1 => Corner::Round(dice.between(40.0, 140.0)),
        _ => Corner::Sharp,
    };
    match dice.below(5) {
        0 => {
            let corners = vec![[0.0, 0.0], [l, 0.0], [l, y], [x, y], [x, d], [0.0, d]];
            let mut treated = vec![Corner::Sharp; 6];
            treated[3] = corner(dice);
            if dice.chance(0.4) {
                treated[1] = Corner::Round(dice.between(10.0, 100.0));
            }
            (corners, treated)
        }
        1 => {
            let wide = dice.between(120.0, l * 0.3);
            let corners = vec![
                [0.0, 0.0],
                [l, 0.0],
                [l, d],
                [x + wide, d],
                [x + wide, y],
                [x, y],
                [x, d],
                [0.0, d],
            ];
            let mut treated = vec![Corner::Sharp; 8];
            treated[4] = corner(dice);
            treated[5] = corner(dice);
            (corners, treated)
        }
        2 => {
            let mut treated = vec![Corner::Sharp; 4];
            treated[2] = Corner::Scoop(dice.between(20.0, d * 0.5));
            if dice.chance(0.3) {
                treated[0] = Corner::Clip(dice.between(20.0, 120.0));
            }
            (vec![[0.0, 0.0], [l, 0.0], [l, d], [0.0, d]], treated)
        }
        _ => {
            let mut treated = vec![Corner::Sharp; 4];
            if dice.chance(0.3) {
                treated[1] = Corner::Round(dice.between(20.0, 120.0));
            }
            (vec![[0.0, 0.0], [l, 0.0], [l, d], [0.0, d]], treated)
        }
    }
}

/// Openings apart from each other and from the edges, in the part of the top that every figure has.
fn openings(dice: &mut Dice, top: &[Place]) -> Vec<Opening> {
    let long = top[1][0];
    let deep = top[2][1].min(
        top.iter()
            .map(|p| p[1])
            .filter(|y| *y > 0.0)
            .fold(f64::MAX, f64::min),
    );
    let count = if top.len() > 4 {
        dice.below(2)
    } else {
        dice.below(3)
    };
    let each = long / (count.max(1) as f64);
    (0..count)
        .filter_map(|i| {
            let (wide, high) = (each - 140.0, deep - 140.0);
            if wide < 60.0 || high < 60.0 {
                return None;
            }
            let shape = match dice.below(4) {
                0 => Opened::Circle(dice.pick(&[35.0, 36.0, 50.0, 20.0])),
                1 => Opened::Circle(dice.between(40.0, wide.min(high))),
                _ => {
                    let (a, b) = (dice.between(50.0, wide), dice.between(50.0, high));
                    let most = a.min(b) / 2.0 - 1.0;
                    let r = dice.pick(&[0.0, 10.0, 17.5, 25.0, 60.0]);
                    Opened::Rectangle([a, b], if r < most { r } else { 0.0 })
                }
            };
            Some(Opening {
                at: [each * (i as f64 + 0.5), deep / 2.0],
                shape,
                finish: dice.pick(&["saw", "ease", "polish"]),
            })
        })
        .collect()
}

/// The middle of the top's box over the middle of the slab's.
fn centred(slab: &[Place], top: &[Place], turn: f64) -> (Place, f64) {
    let middle = |ring: &[Place], k: usize| {
        let all = ring.iter().map(|p| p[k]);
        let (low, high) = all.fold((f64::MAX, f64::MIN), |m, v| (m.0.min(v), m.1.max(v)));
        f64::midpoint(low, high)
    };
    let (sin, cos) = turn.to_radians().sin_cos();
    let of = [middle(top, 0), middle(top, 1)];
    let here = [of[0] * cos - of[1] * sin, of[0] * sin + of[1] * cos];
    let on = [middle(slab, 0), middle(slab, 1)];
    (
        [0, 1].map(|k| ((on[k] - here[k]) * 10.0).round() / 10.0),
        turn,
    )
}
