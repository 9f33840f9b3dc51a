//! Small signs in a drawing: marks, pivots, stations, ringed numbers, balance points, words at a point.

use std::f64::consts::PI;

use super::drawing::Drawing;
use super::item::{Anchor, Ink, Item, Path, PenStroke};
use super::labels::{Cover, Prefer, around, centred, half_of};
use super::pen::{MIDDLE_MM, NARROW_MM, WIDE_MM, grown};
use crate::document::figure::Lettering;
use crate::geom::{Arc, Bounds, Point, Seg, Vector};

/// Stations that lie so far apart on paper are all numbered, mm.
const ROOM_MM: f64 = 5.5;
/// Radius of the ring round a cut's number, mm.
const RING_MM: f64 = 3.2;
/// From a point to the middle of its name on paper, mm.
const NAME_OFF_MM: f64 = 4.6;

impl Drawing {
    /// A part that can be pointed at on a screen, over everything that is drawn.
    pub fn part(&mut self, name: &str, segs: &[Seg]) {
        let run = segs.iter().map(|s| self.seg(s)).collect();
        self.over.push(Item::Part(name.to_owned(), run));
    }

    /// A mark on the stone: a short cross stroke with its name beside it.
    pub fn mark(&mut self, at: Point, name: &str) {
        let c = self.at(at);
        let stroke = PenStroke::solid(MIDDLE_MM, Ink::Black);
        let arm = Vector::new(1.3, 1.3);
        let runs = vec![
            vec![Seg::Line(c - arm, c + arm)],
            vec![Seg::Line(c - arm.left(), c + arm.left())],
        ];
        self.over.push(Path::open(runs, stroke).into());
        self.labels.occupy(grown(Bounds::around([c]), 1.2));
        self.label_on_paper(c, name, &self.style(Lettering::Name), Prefer::Beside);
    }

    /// A cross at a pivot or a centre, with its name.
    pub fn pivot(&mut self, at: Point, name: &str) {
        let (c, arm) = (self.at(at), 2.6);
        let stroke = PenStroke::solid(WIDE_MM, Ink::Black);
        let runs = [Vector::new(arm, 0.0), Vector::new(0.0, arm)];
        let runs = runs.map(|v| vec![Seg::Line(c - v, c + v)]).to_vec();
        self.over.push(Path::open(runs, stroke).into());
        self.labels.occupy(grown(Bounds::around([c]), arm));
        if !name.is_empty() {
            self.label_on_paper(c, name, &self.style(Lettering::Name), Prefer::Beside);
        }
    }

    /// Stations along a curve: a short stroke at each; numbered where there is room for it, else the first,
    /// the last and every fifth.
    pub fn stations(&mut self, all: &[(Point, Vector)]) {
        let stroke = PenStroke::solid(MIDDLE_MM, Ink::Black);
        let apart = all.windows(2).map(|two| two[0].0.distance(two[1].0));
        let roomy = self.length(apart.fold(f64::MAX, f64::min)) >= ROOM_MM;
        for (i, (at, way)) in all.iter().enumerate() {
            let (c, way) = (self.at(*at), self.way(*way));
            self.over.push(Path::line(c, c + way * 2.6, stroke).into());
            let number = i + 1;
            let near_last = all.len() - number < 3 && number != all.len();
            let fifth = number % 5 == 0 && !near_last;
            if roomy || number == 1 || number == all.len() || fifth {
                self.station(c, way, &number.to_string());
            }
        }
    }

    /// The number of a station: straight ahead of its stroke where there is room.
    fn station(&mut self, at: Point, way: Vector, number: &str) {
        let style = self.style(Lettering::Name);
        let (ahead, half) = (at + way * 6.0, half_of(number, &style));
        if self
            .labels
            .is_free(around(ahead, half), ahead, Cover::Lines)
        {
            let text = centred(number, ahead, &style);
            let white = Path::frame(grown(text.bounds(), 0.3), None, Some(Ink::White));
            let taken = text.bounds();
            self.letter([white.into(), text.into()], taken);
        } else {
            self.label_on_paper(at, number, &style, Prefer::Beside);
        }
    }

    /// The balance point: a disc with two black quarters.
    pub fn balance(&mut self, at: Point) {
        let (c, r) = (self.at(at), 2.0);
        let quarter = |start: f64| {
            let arc = Arc {
                centre: c,
                radius: r,
                start,
                sweep: std::f64::consts::FRAC_PI_2,
            };
            let seg = Seg::Arc(arc);
            vec![Seg::Line(c, seg.start()), seg, Seg::Line(seg.end(), c)]
        };
        let stroke = PenStroke::solid(NARROW_MM, Ink::Black);
        let circle = crate::geom::seg::circle(c, r);
        self.over
            .push(Path::closed(vec![circle], Some(stroke), Some(Ink::White)).into());
        let quarters = vec![quarter(0.0), quarter(PI)];
        self.over
            .push(Path::closed(quarters, None, Some(Ink::Black)).into());
        self.labels.occupy(grown(Bounds::around([c]), r));
    }

    /// A ringed number near a point, moved off in a direction, where there is room; it may sit on a
    /// line.
    pub fn ring(&mut self, at: Point, off: Vector, text: &str) {
        let (on, half) = (self.at(at), Vector::new(RING_MM, RING_MM));
        let wanted = on + self.way(off) * RING_MM * 1.3;
        let found = self.labels.any_spot(wanted, half, Prefer::Centred);
        let centre = found.map_or(wanted, |s| s.centre);
        let leader = found.and_then(|s| s.leader).is_some();
        let line = leader.then_some(Seg::Line(on, centre));
        let led = self.labels.lead(on, line);
        self.over.extend(led);
        let circle = crate::geom::seg::circle(centre, RING_MM);
        let stroke = PenStroke::solid(MIDDLE_MM, Ink::Black);
        let ring = Path::closed(vec![circle], Some(stroke), Some(Ink::White));
        let name = self.style(Lettering::Name);
        let cap = super::typeface::cap_height_mm(name.face, name.size_pt);
        let base = Point::new(centre.x, centre.y - cap / 2.0);
        let number = name.text(text, base, Anchor::Middle);
        self.letter([ring.into(), number.into()], around(centre, half));
    }

    /// A name a little way from a point in a direction of the world.
    pub fn towards(&mut self, at: Point, way: Vector, lettering: Lettering, text: &str) {
        let spot = self.at(at) + self.way(way) * NAME_OFF_MM;
        self.label_on_paper(spot, text, &self.style(lettering), Prefer::Centred);
    }

    /// A name beside a point of paper.
    pub fn beside(&mut self, at: Point, lettering: Lettering, text: &str) {
        self.label_on_paper(at, text, &self.style(lettering), Prefer::Beside);
    }

    /// Words at a point, as near to it as there is room.
    pub fn label(&mut self, at: Point, lettering: Lettering, text: &str) {
        let at = self.at(at);
        self.label_on_paper(at, text, &self.style(lettering), Prefer::Centred);
    }
}
