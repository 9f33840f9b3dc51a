//! A part of the top as the lines that are printed at 1:1 and laid on the stone.

use super::part::NamedPart;
use crate::cut::{Cut, SetOut};
use crate::document::mark;
use crate::geom::seg::circle;
use crate::geom::{Bounds, Outline, Point, Seg, Vector, clip};
use crate::plan::Plan;
use crate::words::{Message, Value};

/// So far round a part its neighbours are shown, mm (judgement: an edge to lay along is as long as a
/// hand).
const ROUND_MM: f64 = 80.0;
/// Half the length of a mark's strokes, mm.
const MARK_MM: f64 = 6.0;
/// Length of a station's stroke into the kept stone, and from there to its number, mm.
const STATION_MM: f64 = 12.0;
const NUMBER_MM: f64 = 5.0;
/// So far the strokes that show the flange's width stand out on both sides of the slot, mm.
const FLANGE_MM: f64 = 5.0;

/// A template.
#[derive(Clone, Debug)]
pub struct Template {
    /// The part it shows.
    pub part: NamedPart,
    /// What it is.
    pub title: Message,
    /// Its lines, in the slab's frame.
    pub lines: Vec<PaperLine>,
    /// The words beside them.
    pub labels: Vec<Label>,
}

/// A run of pieces that has one meaning.
#[derive(Clone, Debug)]
pub struct PaperLine {
    /// What it means.
    pub role: Role,
    /// The pieces.
    pub segs: Vec<Seg>,
}

/// A few characters at a place.
#[derive(Clone, Debug)]
pub struct Label {
    /// The middle of the words.
    pub at: Point,
    /// The words.
    pub words: Value,
}

/// What a line means.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Role {
    /// The finished edge.
    Keep,
    /// The saw's near face: the finished edge and what is left for the finish.
    Saw,
    /// An edge of the slab.
    Slab,
    /// What the disc or the bit takes in the face.
    Slot,
    /// A station's stroke.
    Station,
    /// How wide flange and gear head are above a slot.
    Flange,
    /// A mark that is on the stone already, and the line from a pivot.
    Mark,
}

impl Role {
    /// All of them, in the order they are explained.
    pub const ALL: [Self; 7] = [
        Self::Keep,
        Self::Saw,
        Self::Slab,
        Self::Slot,
        Self::Station,
        Self::Flange,
        Self::Mark,
    ];

    /// The message that explains it.
    #[must_use]
    pub const fn message(self) -> &'static str {
        match self {
            Self::Keep => "template-line-keep",
            Self::Saw => "template-line-saw",
            Self::Slab => "template-line-slab",
            Self::Slot => "template-line-slot",
            Self::Station => "template-line-station",
            Self::Flange => "template-line-flange",
            Self::Mark => "template-line-mark",
        }
    }
}

/// The template of a part; nothing when the plan has no such part.
#[must_use]
pub fn template(plan: &Plan, part: &NamedPart) -> Option<Template> {
    let window = window(plan, part)?;
    let mut template = Template {
        part: part.clone(),
        title: part.title(plan),
        lines: Vec::new(),
        labels: Vec::new(),
    };
    template.outline(Role::Keep, &plan.top.outline, window);
    template.outline(Role::Saw, &plan.top.sawn_outline, window);
    template.outline(Role::Slab, &plan.slab.outline, window);
    template.openings(plan, part);
    for cut in plan.cuts.iter().filter(|cut| makes(cut, part)) {
        template.cut(cut);
    }
    template.sort();
    Some(template)
}

/// Whether a cut makes something of a part.
fn makes(cut: &Cut, part: &NamedPart) -> bool {
    match part {
        NamedPart::Top => true,
        NamedPart::Curve(number) => cut.number == *number,
        NamedPart::Opening(number) => cut.cutout == Some(*number),
        NamedPart::Clip(corner) | NamedPart::Scoop(corner) => {
            cut.cutout.is_none() && cut.edge.split(", ").any(|name| name == corner)
        }
    }
}

/// What is shown of the stone round a part.
fn window(plan: &Plan, part: &NamedPart) -> Option<Bounds> {
    let bounds = match part {
        NamedPart::Top => return Some(grown(plan.top.sawn_outline.bounds(), 1.0)),
        NamedPart::Opening(_) => part.opening(plan)?.outline.bounds(),
        NamedPart::Curve(number) => {
            let cut = plan.cuts.iter().find(|c| c.number == *number)?;
            let stations = &cut
                .set_out
                .curve()
                .filter(|_| cut.cutout.is_none())?
                .stations;
            let touches = Bounds::around(stations.iter().map(|s| s.touch));
            let pieces = pieces(plan, |name| cut.edge.split(", ").any(|e| e == name));
            pieces.fold(touches, |b, seg| b.joined(seg.bounds()))
        }
        NamedPart::Clip(corner) | NamedPart::Scoop(corner) => pieces(plan, |name| name == corner)
            .map(Seg::bounds)
            .reduce(Bounds::joined)?,
    };
    Some(grown(bounds, ROUND_MM))
}

/// The pieces of the finished outline that belong to edges or corners of some names.
fn pieces(plan: &Plan, named: impl Fn(&str) -> bool) -> impl Iterator<Item = &Seg> {
    let pieces = plan.top.parts.iter().zip(plan.top.outline.segs());
    pieces
        .filter(move |(part, _)| named(&part.name))
        .map(|(_, seg)| seg)
}

fn grown(area: Bounds, by_mm: f64) -> Bounds {
    let by = Vector::new(by_mm, by_mm);
    Bounds {
        min: area.min - by,
        max: area.max + by,
    }
}

impl Template {
    /// Everything it shows, as a box.
    #[must_use]
    pub fn bounds(&self) -> Bounds {
        let segs = self.lines.iter().flat_map(|l| &l.segs).map(Seg::bounds);
        segs.reduce(Bounds::joined).unwrap_or(Bounds::around([]))
    }

    /// The roles of its lines, in their order.
    #[must_use]
    pub fn roles(&self) -> Vec<Role> {
        let shown = |role: &Role| self.lines.iter().any(|l| l.role == *role);
        Role::ALL.into_iter().filter(shown).collect()
    }

    fn line(&mut self, role: Role, segs: Vec<Seg>) {
        self.lines.push(PaperLine { role, segs });
    }

    fn stroke(&mut self, role: Role, from: Point, to: Point) {
        self.line(role, vec![Seg::Line(from, to)]);
    }

    /// What a window shows of an outline. A sawn edge without an allowance is the finished one.
    fn outline(&mut self, role: Role, outline: &Outline, window: Bounds) {
        for seg in outline.segs().iter().flat_map(|s| clip::inside(s, window)) {
            let known =
                |line: &PaperLine| line.role < role && line.segs.iter().any(|s| same(s, &seg));
            if role == Role::Slab || !self.lines.iter().any(known) {
                self.line(role, vec![seg]);
            }
        }
    }

    fn openings(&mut self, plan: &Plan, part: &NamedPart) {
        let all = plan.top.openings.iter().enumerate();
        let shown =
            all.filter(|(i, _)| *part == NamedPart::Top || *part == NamedPart::Opening(i + 1));
        for (_, opening) in shown {
            self.line(Role::Keep, opening.outline.segs().to_vec());
            if opening.allowance > 0.0 {
                self.line(Role::Saw, opening.made.segs().to_vec());
            }
            self.tie(plan, opening.outline.centroid());
        }
    }

    /// The shortest way from an opening's middle to the sawn edge of the top, with its length.
    fn tie(&mut self, plan: &Plan, from: Point) {
        let feet = plan.top.sawn_outline.segs().iter();
        let feet = feet.map(|seg| seg.at(seg.nearest(from)));
        let Some(foot) = feet.min_by(|a, b| a.distance(from).total_cmp(&b.distance(from))) else {
            return;
        };
        self.stroke(Role::Mark, from, foot);
        let words = Value::tape(from.distance(foot));
        let aside = (foot - from).unit().left() * (2.0 * STATION_MM);
        self.label(from + (foot - from) * 0.7 + aside, words);
    }

    fn label(&mut self, at: Point, words: Value) {
        self.labels.push(Label { at, words });
    }

    fn cut(&mut self, cut: &Cut) {
        if !matches!(cut.set_out, SetOut::Guide(_)) {
            for slot in cut.slots() {
                self.line(Role::Slot, slot.segs().to_vec());
            }
        }
        self.stations(cut);
        for point in mark::points(cut) {
            self.mark(point.at, &point.name);
        }
        for (name, station) in mark::stations(cut) {
            self.mark(station.at, &name);
        }
        if let SetOut::Pivot(curve) = &cut.set_out
            && let Some(middle) = curve.stations.get(curve.stations.len() / 2)
        {
            let to_pivot = (curve.pivot - middle.touch).unit();
            let short_of_number = to_pivot * (STATION_MM + 2.0 * NUMBER_MM);
            self.stroke(Role::Mark, curve.pivot, middle.touch + short_of_number);
        }
    }

    fn stations(&mut self, cut: &Cut) {
        let Some(curve) = cut.set_out.curve() else {
            return;
        };
        let last = curve.stations.len();
        for station in &curve.stations {
            let out = (station.touch - curve.pivot).unit();
            // The kept stone lies within an outside arc, and round a hollow one.
            let kept = if curve.inside.is_some() { out } else { -out };
            self.stroke(
                Role::Station,
                station.touch,
                station.touch + kept * STATION_MM,
            );
            let at = station.touch + kept * (STATION_MM + NUMBER_MM);
            self.label(at, Value::name(station.number.to_string()));
            if station.number == 1 || station.number == last || station.number % 10 == 0 {
                self.flange(cut, station.touch, kept);
            }
        }
    }

    /// Two strokes across a slot, as far apart as flange or gear head is wide.
    fn flange(&mut self, cut: &Cut, touch: Point, kept: Vector) {
        let Some(disc) = cut.tool.disc() else { return };
        for side in [-0.5, 0.5] {
            let at = touch + kept.left() * (disc.obstruction * side);
            let (from, to) = (at + kept * FLANGE_MM, at - kept * (disc.kerf + FLANGE_MM));
            self.stroke(Role::Flange, from, to);
        }
    }

    /// A cross at a mark that is on the stone, with the name it has there.
    fn mark(&mut self, at: Point, name: &str) {
        let arm = Vector::new(MARK_MM, 0.0);
        self.stroke(Role::Mark, at - arm, at + arm);
        self.stroke(Role::Mark, at - arm.left(), at + arm.left());
        self.line(Role::Mark, circle(at, MARK_MM / 2.0));
        self.label(at + Vector::new(MARK_MM, MARK_MM), Value::name(name));
    }

    /// The lines that matter most are drawn last, over the others.
    fn sort(&mut self) {
        self.lines.sort_by_key(|line| std::cmp::Reverse(line.role));
    }
}

/// Whether two pieces lie on each other, end to end.
fn same(a: &Seg, b: &Seg) -> bool {
    const SAME_MM: f64 = 1e-3;
    [0.0, 0.5, 1.0]
        .iter()
        .all(|s| a.at(*s).distance(b.at(*s)) < SAME_MM)
}
