//! The plan as text for a terminal: the same numbers as the sheet, in the same order.

use std::fmt::Write;

use crate::cut::{
    CentreMark, CurveSetOut, Cut, CutKind, LeftOver, MarkedLine, PivotPlace, Remains, Removal,
    RunEnd, SetOut, StraightSetOut,
};
use crate::diag::Finding;
use crate::plan::Plan;
use crate::sheet::figure::{Figures, angle, area, face, time};
use crate::sheet::measured;

/// The plan in words and numbers.
#[must_use]
pub fn plan(plan: &Plan) -> String {
    let figures = Figures {
        units: plan.job.units,
    };
    let mut text = Text {
        figures,
        out: String::new(),
    };
    text.heading(plan);
    text.findings("STOP", &plan.stops);
    text.findings("Caution", &plan.cautions);
    text.stone(plan);
    text.placement(plan);
    super::text_curve::repair(&mut text.out, figures, plan);
    super::text_curve::practice(&mut text.out, figures, plan);
    for cut in &plan.cuts {
        text.cut(cut);
    }
    text.pieces(plan);
    super::text_safety::write(&mut text.out, figures, plan);
    let moving = &plan.handling.moving;
    super::text_moving::way(&mut text.out, figures, moving);
    super::text_moving::numbers(
        &mut text.out,
        figures,
        moving,
        super::text_moving::Shown::Both,
    );
    text.assumed(plan);
    text.out
}

struct Text {
    figures: Figures,
    out: String,
}

impl Text {
    fn line(&mut self, line: &str) {
        self.out.push_str(line);
        self.out.push('\n');
    }

    fn part(&mut self, name: &str) {
        let _ = writeln!(self.out, "\n{}", name.to_uppercase());
    }

    fn row(&mut self, name: &str, value: &str) {
        let _ = writeln!(self.out, "  {name:<18} {value}");
    }

    fn heading(&mut self, plan: &Plan) {
        let job = &plan.job;
        self.line(&job.title);
        self.row("region", &job.region_name);
        let notes = [
            ("date", &job.date),
            ("made for", &job.made_for),
            ("made by", &job.made_by),
            ("note", &job.note),
        ];
        for (name, value) in notes {
            if !value.is_empty() {
                self.row(name, value);
            }
        }
        let totals = &plan.totals;
        self.row(
            "cuts",
            &format!(
                "{} straight, {} curved",
                totals.straight_cuts, totals.curves
            ),
        );
        self.row("sawn face", &face(totals.face_mm2));
        self.row("disc in stone", &time(totals.sawing_minutes));
        self.row("setting up", &time(totals.set_up_minutes));
    }

    fn findings(&mut self, word: &str, findings: &[Finding]) {
        for finding in findings {
            let _ = writeln!(self.out, "\n{word}: {} [{}]", finding.title, finding.id);
            let _ = writeln!(
                self.out,
                "  {}\n  Source: {}",
                finding.detail, finding.source
            );
        }
    }

    fn stone(&mut self, plan: &Plan) {
        let figures = self.figures;
        self.part("stone");
        self.row("kind", &plan.stone.name);
        let t = plan.slab.thickness;
        self.row(
            "thickness",
            &format!(
                "{} mean, {} to {}",
                figures.small(t.mean),
                figures.small(t.least),
                figures.small(t.most)
            ),
        );
        self.row("slab", &area(plan.slab.area_mm2));
        self.measured(plan);
        self.row("slab weighs", &figures.mass_range(&plan.slab.mass));
        self.row("finished top", &area(plan.top.area_mm2));
        self.row("top weighs", &figures.mass_range(&plan.top.mass));
    }

    fn measured(&mut self, plan: &Plan) {
        let (figures, slab) = (self.figures, &plan.slab);
        self.row("slab measured by", measured::how(slab));
        for line in measured::misclosures(figures, slab) {
            self.row("tapes", &line);
        }
        let corners = measured::corners(figures, slab);
        for line in corners
            .into_iter()
            .chain(measured::diagonals(figures, slab))
        {
            self.row("square", &line);
        }
    }

    fn placement(&mut self, plan: &Plan) {
        let figures = self.figures;
        self.part("place on the slab");
        let place = &plan.placement;
        self.row("turn", &angle(place.turn.to_radians()));
        for corner in &plan.top.corners {
            self.row(
                &format!("top corner {}", corner.name),
                &format!(
                    "x {}, y {} from slab corner A",
                    figures.tape(corner.at.x),
                    figures.tape(corner.at.y)
                ),
            );
        }
        for edge in &plan.top.edges {
            let what = edge.flush_with.as_ref().map_or_else(
                || format!("sawn, {} left on it", figures.small(edge.allowance)),
                |slab_edge| format!("lies on slab edge {slab_edge}"),
            );
            self.row(&format!("edge {}", edge.name), &what);
        }
        self.row("least to spare", &figures.small(place.least_spare));
    }

    fn cut(&mut self, cut: &Cut) {
        let figures = self.figures;
        let (kind, what) = match cut.kind {
            CutKind::Straight if cut.edge.contains('-') => ("straight along edge", &cut.edge),
            CutKind::Straight => ("straight, flat at corner", &cut.edge),
            CutKind::Curve if cut.edge.contains('-') => ("curve along edge", &cut.edge),
            CutKind::Curve => ("curve at corner", &cut.edge),
            CutKind::Relief => ("relief in the waste of curve", &cut.edge),
            CutKind::Core => ("core holes at", &cut.edge),
        };
        self.part(&format!("cut {}: {kind} {what}", cut.number));
        if let Some(number) = cut.cutout {
            self.row("cutout", &number.to_string());
        }
        let what = if cut.tool.disc().is_some() {
            "disc"
        } else {
            "core bit"
        };
        self.row(what, &cut.tool.name());
        self.row("length", &figures.size(cut.length));
        self.row("depth", &figures.small(cut.full_depth));
        self.row("allowance", &figures.small(cut.allowance));
        self.row("disc in stone", &time(cut.minutes));
        let depths: Vec<String> = cut
            .passes
            .iter()
            .map(|p| format!("{:.1}", p.depth))
            .collect();
        self.row("passes, mm", &depths.join(", "));
        match &cut.set_out {
            SetOut::Guide(set_out) => self.guide(set_out),
            SetOut::Pivot(set_out) => self.pivot(set_out, cut.cusp),
            SetOut::Ordinates(set_out) => {
                super::text_curve::ordinates(&mut self.out, figures, set_out, cut.cusp);
            }
            SetOut::Centres(marks) => self.centres(marks),
        }
        for left in &cut.left_to_remove {
            self.row("left to remove", &left_words(left, figures));
        }
        if !cut.tails_out.is_empty() {
            let cuts: Vec<String> = cut.tails_out.iter().map(ToString::to_string).collect();
            self.row(
                "tails taken out",
                &format!("those of cuts {}", cuts.join(", ")),
            );
        }
        self.row("frees", &cut.frees.join(", "));
    }

    fn stops(&mut self, set_out: &StraightSetOut) {
        let figures = self.figures;
        for stop in &set_out.stops {
            let words = format!(
                "x {}, y {} from slab corner A; the disc's centre stays {} short of it",
                figures.tape(stop.at.x),
                figures.tape(stop.at.y),
                figures.tape(stop.centre_short)
            );
            self.row("stops at", &words);
        }
    }

    fn guide(&mut self, set_out: &StraightSetOut) {
        let figures = self.figures;
        self.marked("cut line", &set_out.face);
        self.marked("guide edge", &set_out.guide);
        let side = match set_out.guide_side {
            crate::cut::GuideSide::Kept => "on the kept stone",
            crate::cut::GuideSide::Waste => "on the waste",
        };
        self.row(
            "guide",
            &format!(
                "{side}, {} from the cut line",
                figures.small(set_out.guide_to_face)
            ),
        );
        if set_out.set_ups.len() > 1 {
            let spans: Vec<String> = set_out
                .set_ups
                .iter()
                .map(|s| format!("{} to {}", figures.tape(s.from), figures.tape(s.to)))
                .collect();
            let from = match set_out.set_ups_from {
                RunEnd::Start => "from the first mark",
                RunEnd::End => "from the second mark",
                RunEnd::StoneAtStart => "from the end of the stone towards the first mark",
                RunEnd::StoneAtEnd => "from the end of the stone towards the second mark",
                RunEnd::StopAtStart => "from where the cut stops towards the first mark",
            };
            self.row("guide set at", &format!("{} {from}", spans.join("; ")));
        }
        self.stops(set_out);
        if set_out.far_end > 0.0 {
            self.row(
                "far end",
                &format!(
                    "saw the last {} from outside inwards",
                    figures.tape(set_out.far_end)
                ),
            );
        }
    }

    fn marked(&mut self, name: &str, line: &MarkedLine) {
        let figures = self.figures;
        let mark = |mark: &crate::cut::EdgeMark| {
            format!(
                "{} from {} on {}",
                figures.tape(mark.tie.distance),
                mark.tie.corner,
                mark.on
            )
        };
        let (start, end) = (mark(&line.start), mark(&line.end));
        let check = &line.check;
        self.row(
            name,
            &format!(
                "{start}; {end}; check {} to the first mark {}",
                check.corner,
                figures.tape(check.distance)
            ),
        );
    }

    fn pivot(&mut self, set_out: &CurveSetOut, cusp: f64) {
        let figures = self.figures;
        let ties: Vec<String> = set_out
            .pivot_ties
            .iter()
            .map(|t| format!("{} from {}", figures.tape(t.distance), t.corner))
            .collect();
        self.row("pivot", &ties.join(", "));
        let on = match set_out.pivot_on {
            PivotPlace::Top => "the kept stone: tape or suction, never drilled",
            PivotPlace::Cutout => "the piece that falls out of a cutout, still in place",
            PivotPlace::Waste => "waste",
            PivotPlace::Off => "something fixed beside the slab at the same height",
        };
        self.row("pivot stands on", on);
        self.row("arm", &figures.tape(set_out.arm));
        self.row("sawn radius", &figures.tape(set_out.sawn_radius));
        self.row("cusps", &figures.small(cusp));
        let chord = set_out.stations.get(1).map_or(0.0, |s| s.chord);
        self.row(
            "step",
            &format!("{}, chord {}", angle(set_out.step), figures.small(chord)),
        );
        let unit = figures.unit();
        let _ = writeln!(
            self.out,
            "  station    angle  from 1 {unit:<4}      x {unit:<4}      y {unit}"
        );
        for s in &set_out.stations {
            let _ = writeln!(
                self.out,
                "  {:>7} {:>8} {:>11} {:>11} {:>11}{}",
                s.number,
                angle(s.angle),
                figures.tape_bare(s.from_first),
                figures.tape_bare(s.touch.x),
                figures.tape_bare(s.touch.y),
                if s.in_stone {
                    ""
                } else {
                    "  already cut: no plunge"
                }
            );
        }
    }

    fn centres(&mut self, marks: &[CentreMark]) {
        let figures = self.figures;
        for mark in marks {
            let ties: Vec<String> = mark
                .ties
                .iter()
                .map(|t| format!("{} from {}", figures.tape(t.distance), t.corner))
                .collect();
            let words = format!(
                "{} across: {}",
                figures.small(mark.diameter),
                ties.join(", ")
            );
            self.row("hole", &words);
        }
    }

    fn pieces(&mut self, plan: &Plan) {
        let figures = self.figures;
        self.part("pieces");
        for piece in &plan.pieces {
            let best = piece.best_rectangle.as_ref().map_or_else(String::new, |b| {
                format!(
                    ", holds {} × {}",
                    figures.size_bare(b.long_mm),
                    figures.size(b.short_mm)
                )
            });
            let words = format!(
                "after cut {}: {}, {}{best}",
                piece.after_cut,
                area(piece.area_mm2),
                figures.mass_range(&piece.mass)
            );
            self.row(&piece.name, &words);
        }
        let b = &plan.balance_sheet;
        self.row(
            "areas",
            &format!(
                "slab {} = top {} + allowance {} + kerf {} + offcuts {}",
                area(b.slab_mm2),
                area(b.top_mm2),
                area(b.allowance_mm2),
                area(b.kerf_mm2),
                area(b.offcuts_mm2)
            ),
        );
    }

    fn assumed(&mut self, plan: &Plan) {
        self.part("assumed");
        for a in &plan.assumed {
            let _ = writeln!(self.out, "  {} = {} ({})", a.key, a.value, a.why);
        }
    }
}

/// What is left to take off by hand, and how.
fn left_words(left: &LeftOver, figures: Figures) -> String {
    let what = match left.why {
        Remains::Cusps => "ridges",
        Remains::Tail => "tail at the underside",
        Remains::Hollow => "beside the middle of a slot",
        Remains::HollowUnder => "beside the ends of a slot underneath",
        Remains::Corner => "in a corner",
        Remains::Beside => "on an edge sawn with another",
    };
    let how = match left.by {
        Removal::Ground => "ground off",
        Removal::FromCoreHole => "by hand from the core hole",
        Removal::FromBelow => "from below or by hand",
    };
    if left.left < left.length {
        let (all, rest) = (figures.small(left.length), figures.small(left.left));
        format!("{what}: {all}, {rest} beyond the core hole, {how}")
    } else {
        format!("{what}: {}, {how}", figures.small(left.length))
    }
}
