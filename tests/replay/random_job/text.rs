//! A random job written as a job file.

use std::fmt::Write as _;

use super::{Corner, Dice, Flaw, Opened, RandomJob};
use crate::replay::plane::Place;

impl RandomJob {
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

    /// The job file with one or two edges bowed outwards; nothing when its top is not a plain figure.
    pub(crate) fn bowed(&self, seed: u64) -> Option<String> {
        let dice = &mut Dice(seed ^ 0xB0);
        let n = self.top.len();
        let unit = if self.inches { 25.4 } else { 1.0 };
        let edges = [dice.below(n), dice.below(n)];
        let mut bows: Vec<String> = Vec::new();
        for (k, edge) in edges.into_iter().enumerate() {
            if k > 0 && edge == edges[0] {
                continue;
            }
            let (a, b) = (self.top[edge], self.top[(edge + 1) % n]);
            let long = (a[0] - b[0]).hypot(a[1] - b[1]);
            let rise = long * (0.01 + 0.08 * dice.share()) / unit;
            bows.push(format!("\"{}-{}\" = {rise}", edge + 1, (edge + 1) % n + 1));
        }
        let text = self.text();
        let line = format!("[top]\nbow = {{ {} }}\n", bows.join(", "));
        text.contains("[top]\n")
            .then(|| text.replacen("[top]\n", &line, 1))
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
