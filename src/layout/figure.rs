//! Figures on paper: a round scale, a scale bar, and the things drawn in their order.

use super::drawing::{Drawing, Margins};
use super::item::{Anchor, Dash, Ink, Item, Path, PenStroke as Pen, Tag, Typeface};
use super::lettering::{opposite, rows_mm};
use super::pen::{MIDDLE_MM, NARROW_MM, WIDE_MM};
use super::people;
use super::setter::{Extent, Setter};
use super::wrap::Style;
use crate::document::figure::{Figure, LineStyle, Shape, Side, Thing};
use crate::geom::{Bounds, Point};
use crate::words::{System, Value};

/// The reductions drawn to, the n of 1 : n: whole and easily reckoned with (judgement).
const METRIC: [f64; 26] = [
    1.0, 2.0, 2.5, 3.0, 4.0, 5.0, 6.0, 7.5, 8.0, 10.0, 12.0, 12.5, 14.0, 15.0, 16.0, 18.0, 20.0,
    22.0, 25.0, 30.0, 35.0, 40.0, 50.0, 75.0, 100.0, 200.0,
];
/// The same for inches: 12 is an inch to the foot.
const INCH: [f64; 20] = [
    1.0, 2.0, 3.0, 4.0, 5.0, 6.0, 8.0, 10.0, 12.0, 14.0, 16.0, 18.0, 20.0, 24.0, 28.0, 32.0, 40.0,
    48.0, 96.0, 192.0,
];
/// Lengths of a scale bar, mm of the world.
const BARS_MM: [f64; 7] = [10.0, 50.0, 100.0, 200.0, 500.0, 1000.0, 2000.0];
/// The same for inches: 1, 2, 6, 12, 24, 48 inches.
const BARS_INCH: [f64; 6] = [25.4, 50.8, 152.4, 304.8, 609.6, 1219.2];
/// A scale bar is at least so long on paper, mm.
const BAR_MM: f64 = 14.0;
/// Height of a scale bar below a drawing, mm.
const UNDER_MM: f64 = 5.0;
/// What is drawn is never lower than this, mm.
const LEAST_MM: f64 = 16.0;
/// The most of a page that a drawing takes.
pub(super) const MOST_SHARE: f64 = 0.72;

impl Setter {
    /// Heights of a figure at a width.
    pub(super) fn figure_extent(&self, figure: &Figure, width: f64) -> Extent {
        let margins = margins(figure);
        let free = (width - margins.across[0] - margins.across[1]).max(20.0);
        let reduction = self.reduction(figure.frame.width() / free);
        let upright = margins.upright[0] + margins.upright[1] + under(figure);
        let liked = figure.frame.height() / reduction + upright;
        let liked = liked.min(self.page_mm * MOST_SHARE);
        let least = (liked * self.least_share).max(upright + LEAST_MM);
        Extent {
            least: least.min(liked),
            liked,
        }
    }

    /// The next round reduction.
    fn reduction(&self, least: f64) -> f64 {
        let ladder: &[f64] = match self.writer.system {
            System::Metric => &METRIC,
            System::Inch => &INCH,
        };
        let step = ladder.iter().find(|n| **n >= least - 1e-9);
        step.copied()
            .unwrap_or_else(|| (least / 100.0).ceil() * 100.0)
    }

    /// A figure in an area, and the height it takes.
    pub(super) fn figure(&self, figure: &Figure, area: Bounds) -> (Vec<Item>, f64) {
        let margins = margins(figure);
        let across = area.width() - margins.across[0] - margins.across[1];
        let upright = margins.upright[0] + margins.upright[1] + under(figure);
        let high = (area.height() - upright).max(8.0);
        let least = (figure.frame.width() / across.max(20.0)).max(figure.frame.height() / high);
        let reduction = self.reduction(least);
        let used = figure.frame.height() / reduction + upright;
        let paper = Bounds {
            min: Point::new(area.min.x, area.max.y - used + under(figure)),
            max: area.max,
        };
        let mut drawing = Drawing::new(
            figure.frame,
            paper,
            margins,
            reduction,
            figure.turned,
            self.kind.least_pt,
        );
        drawing.unit_told = self.to_scale && figure.scaled;
        if figure.clipped {
            drawing = drawing.clipped(figure.frame);
        }
        for thing in &figure.things {
            if let Thing::Mark(at, name) | Thing::Pivot(at, name) = thing
                && drawing.shows(*at)
                && !name.is_empty()
            {
                drawing.labels.occupy_named(drawing.at(*at));
            }
        }
        // What labels must keep off is drawn before the first label, dimensions before names.
        for rank in 0..=LAST_RANK {
            for thing in figure.things.iter().filter(|t| rank_of(t) == rank) {
                self.draw(&mut drawing, thing);
            }
        }
        let mut items = vec![Item::Begin(Tag::Figure(self.writer.say(&figure.alt)))];
        items.extend(drawing.finish());
        if figure.scaled {
            let below = Point::new(area.max.x, area.max.y - used);
            items.extend(self.scale_bar(reduction, below));
        }
        items.push(Item::End);
        (items, used)
    }

    /// A bar of a round length of the world, its right end at a point, with the scale.
    fn scale_bar(&self, reduction: f64, right: Point) -> Vec<Item> {
        let bars: &[f64] = match self.writer.system {
            System::Metric => &BARS_MM,
            System::Inch => &BARS_INCH,
        };
        let Some(bar) = bars.iter().find(|mm| **mm / reduction >= BAR_MM) else {
            return Vec::new();
        };
        let length = bar / reduction;
        let size = f64::max(9.0, self.kind.least_pt);
        let style = Style::new(Typeface::Regular, size, size * 0.44);
        let mut text = self.writer.write(&Value::size(*bar));
        if self.to_scale {
            text = format!("{text}   1 : {reduction}");
        }
        let base = Point::new(right.x, right.y + 1.2);
        let end = Point::new(right.x - style.width_mm(&text) - 2.0, right.y + 2.3);
        let start = Point::new(end.x - length, end.y);
        let half = start.midpoint(end);
        let thick = |a: Point, b: Point, ink| -> Item {
            let low = Point::new(a.x, a.y - 0.6);
            let high = Point::new(b.x, b.y + 0.6);
            let line = Pen::solid(NARROW_MM, Ink::Black);
            Path::frame(
                Bounds {
                    min: low,
                    max: high,
                },
                Some(line),
                Some(ink),
            )
            .into()
        };
        vec![
            thick(start, half, Ink::Black),
            thick(half, end, Ink::White),
            style.text(text, base, Anchor::End).into(),
        ]
    }

    fn draw(&self, drawing: &mut Drawing, thing: &Thing) {
        match thing {
            Thing::Area(shape, rings) => drawing.area(*shape, rings),
            Thing::Line(stroke, segs) => drawing.line(segs, pen(*stroke), apart(*stroke)),
            Thing::Within(outline, at, lettering, value) => {
                drawing.within(outline, *at, *lettering, &self.writer.write(value));
            }
            Thing::Label(at, lettering, value) => {
                drawing.label(*at, *lettering, &self.writer.write(value));
            }
            Thing::Towards(at, way, lettering, value) => {
                drawing.towards(*at, *way, *lettering, &self.writer.write(value));
            }
            Thing::Mark(at, name) if drawing.shows(*at) => drawing.mark(*at, name),
            Thing::Ring(at, off, number) if drawing.shows(*at) => {
                drawing.ring(*at, *off, &number.to_string());
            }
            Thing::Mark(..) | Thing::Ring(..) => {}
            Thing::Pivot(at, name) => drawing.pivot(*at, name),
            Thing::Stations(all) => drawing.stations(all),
            Thing::Balance(at) => drawing.balance(*at),
            Thing::Dimension(from, to, side, row, value) => {
                drawing.dimension(*from, *to, *side, *row, &self.writer.write(value));
            }
            Thing::PersonAbove(at, facing, word) => {
                people::above(drawing, *at, *facing, &self.writer.write(word));
            }
            Thing::PersonSide(at, right, hands) => people::side(drawing, *at, *right, *hands),
            Thing::Arrow(from, to) => people::arrow(drawing, *from, *to),
            Thing::TrestleSide(top) => people::trestle(drawing, *top),
            Thing::TrolleySide(at, deck, length) => {
                people::trolley(drawing, *at, *deck, *length);
            }
            Thing::MachineAbove(at, heading) => people::machine(drawing, *at, *heading),
            Thing::Part(name, segs) => drawing.part(name, segs),
        }
    }
}

/// Paper for the scale bar of a figure that has one, mm.
const fn under(figure: &Figure) -> f64 {
    if figure.scaled { UNDER_MM } else { 0.0 }
}

/// Paper left free round a figure's frame for its dimensions and names, mm.
fn margins(figure: &Figure) -> Margins {
    let rows = |wanted: Side| {
        let each = figure.things.iter().filter_map(|thing| match thing {
            Thing::Dimension(_, _, side, row, _) => {
                let side = if figure.turned {
                    opposite(*side)
                } else {
                    *side
                };
                (side == wanted).then_some(row + 1)
            }
            _ => None,
        });
        rows_mm(each.max().unwrap_or(0))
    };
    Margins {
        across: [rows(Side::Left), rows(Side::Right)],
        upright: [rows(Side::Below), rows(Side::Above)],
    }
}

const LAST_RANK: u8 = 6;

/// What is drawn first: shapes and lines, then people, then dimensions, rings and the corners' names, then marks,
/// then words.
const fn rank_of(thing: &Thing) -> u8 {
    match thing {
        Thing::Area(Shape::Guide, _) | Thing::MachineAbove(..) => 1,
        Thing::Area(..) | Thing::Line(..) => 0,
        Thing::TrestleSide(_)
        | Thing::TrolleySide(..)
        | Thing::PersonSide(..)
        | Thing::Arrow(..)
        | Thing::Stations(_)
        | Thing::Balance(_) => 2,
        Thing::PersonAbove(..) => 3,
        Thing::Dimension(..) | Thing::Ring(..) | Thing::Towards(..) => 4,
        Thing::Mark(..) | Thing::Pivot(..) => 5,
        Thing::Within(..) | Thing::Label(..) | Thing::Part(..) => LAST_RANK,
    }
}

const fn apart(stroke: LineStyle) -> bool {
    matches!(stroke, LineStyle::SetOut | LineStyle::Flaw)
}

const fn pen(stroke: LineStyle) -> Pen {
    match stroke {
        LineStyle::SetOut => Pen::solid(NARROW_MM, Ink::Black).dashed(Dash::DashDot),
        LineStyle::Hidden => Pen::solid(NARROW_MM * 1.3, Ink::Black).dashed(Dash::Dashed),
        LineStyle::Flaw => Pen::solid(WIDE_MM, Ink::Accent),
        LineStyle::Clearance => Pen::solid(NARROW_MM, Ink::Accent).dashed(Dash::Dashed),
        LineStyle::Solid => Pen::solid(MIDDLE_MM, Ink::Black),
        LineStyle::Thin => Pen::solid(NARROW_MM, Ink::Black),
    }
}
