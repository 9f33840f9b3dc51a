//! Safety signs of ISO 7010, drawn by our own hand from the standard's descriptions: for a mandatory
//! action a filled disc with the symbol in white, for a warning a triangle with a black edge and
//! symbol. On paper the disc's blue is the accent colour, which prints as a dark grey.

use std::f64::consts::{PI, TAU};

use super::item::{Ink, Item, Path, PenStroke};
use crate::document::sign::Sign;
use crate::geom::seg::{capsule, circle, ring};
use crate::geom::{Arc, Point, Seg};

/// A sign in a square box from its lower left corner.
#[must_use]
pub fn sign_items(sign: Sign, low: Point, side_mm: f64) -> Vec<Item> {
    let brush = Brush {
        low,
        unit: side_mm / 100.0,
    };
    if sign == Sign::Warning {
        return brush.warning();
    }
    let mut items = vec![shape(
        circle(brush.at(50.0, 50.0), brush.unit * 50.0),
        Ink::Accent,
    )];
    items.extend(match sign {
        Sign::Ears => brush.ears(),
        Sign::Eyes => brush.eyes(),
        Sign::Feet => brush.boot(),
        Sign::Hands => brush.glove(),
        Sign::Lungs | Sign::Warning => brush.mask(),
    });
    items
}

fn shape(ring: Vec<Seg>, ink: Ink) -> Item {
    Path::closed(vec![ring], None, Some(ink)).into()
}

/// Draws in hundredths of the sign's side.
#[derive(Clone, Copy)]
struct Brush {
    low: Point,
    unit: f64,
}

impl Brush {
    fn at(&self, x: f64, y: f64) -> Point {
        Point::new(self.low.x + x * self.unit, self.low.y + y * self.unit)
    }

    fn polygon(&self, points: &[(f64, f64)], ink: Ink) -> Item {
        let points: Vec<Point> = points.iter().map(|(x, y)| self.at(*x, *y)).collect();
        shape(ring(&points), ink)
    }

    fn dot(&self, x: f64, y: f64, radius: f64, ink: Ink) -> Item {
        shape(circle(self.at(x, y), radius * self.unit), ink)
    }

    fn bar(&self, a: (f64, f64), b: (f64, f64), half: f64, ink: Ink) -> Item {
        shape(
            capsule(self.at(a.0, a.1), self.at(b.0, b.1), half * self.unit),
            ink,
        )
    }

    fn bow(
        &self,
        centre: (f64, f64),
        radius: f64,
        from: f64,
        sweep: f64,
        wide: f64,
        ink: Ink,
    ) -> Item {
        let arc = Arc {
            centre: self.at(centre.0, centre.1),
            radius: radius * self.unit,
            start: from,
            sweep,
        };
        let line = PenStroke::solid(wide * self.unit, ink);
        Path::open(vec![vec![Seg::Arc(arc)]], line).into()
    }

    /// A head in white: the base of the signs for ears, eyes and lungs.
    fn head(&self) -> Vec<Item> {
        vec![
            self.dot(50.0, 58.0, 25.0, Ink::White),
            self.polygon(
                &[
                    (29.0, 66.0),
                    (71.0, 66.0),
                    (66.0, 40.0),
                    (57.0, 26.0),
                    (43.0, 26.0),
                    (34.0, 40.0),
                ],
                Ink::White,
            ),
            self.polygon(
                &[(38.0, 32.0), (62.0, 32.0), (66.0, 10.0), (34.0, 10.0)],
                Ink::White,
            ),
        ]
    }

    fn ears(&self) -> Vec<Item> {
        let mut items = self.head();
        items.push(self.bow((50.0, 56.0), 30.5, 0.0, PI, 4.5, Ink::White));
        items.push(self.bow((50.0, 56.0), 27.0, 0.0, PI, 2.5, Ink::Accent));
        for x in [21.5, 78.5] {
            items.push(self.bar((x, 46.0), (x, 60.0), 8.5, Ink::Accent));
            items.push(self.bar((x, 46.0), (x, 60.0), 6.5, Ink::White));
        }
        items
    }

    fn eyes(&self) -> Vec<Item> {
        let mut items = self.head();
        items.push(self.bar((20.0, 57.0), (80.0, 57.0), 2.6, Ink::Accent));
        for x in [38.5, 61.5] {
            items.push(self.dot(x, 57.0, 11.0, Ink::Accent));
            items.push(self.dot(x, 57.0, 7.5, Ink::White));
        }
        items
    }

    fn mask(&self) -> Vec<Item> {
        let mut items = self.head();
        items.push(self.polygon(
            &[
                (31.0, 52.0),
                (50.0, 60.0),
                (69.0, 52.0),
                (65.0, 36.0),
                (56.0, 26.0),
                (44.0, 26.0),
                (35.0, 36.0),
            ],
            Ink::Accent,
        ));
        items.push(self.polygon(
            &[
                (35.5, 49.5),
                (50.0, 55.5),
                (64.5, 49.5),
                (61.0, 37.5),
                (54.0, 29.5),
                (46.0, 29.5),
                (39.0, 37.5),
            ],
            Ink::White,
        ));
        items.push(self.dot(50.0, 41.0, 6.5, Ink::Accent));
        items.push(self.bar((26.0, 56.0), (33.0, 51.0), 1.6, Ink::Accent));
        items.push(self.bar((74.0, 56.0), (67.0, 51.0), 1.6, Ink::Accent));
        for x in [41.0, 59.0] {
            items.push(self.dot(x, 66.0, 2.6, Ink::Accent));
        }
        items
    }

    fn boot(&self) -> Vec<Item> {
        vec![
            self.polygon(
                &[
                    (30.0, 82.0),
                    (54.0, 82.0),
                    (54.0, 48.0),
                    (70.0, 43.0),
                    (79.0, 36.0),
                    (80.0, 27.0),
                    (30.0, 27.0),
                ],
                Ink::White,
            ),
            self.polygon(
                &[
                    (28.0, 24.0),
                    (81.0, 24.0),
                    (81.0, 18.0),
                    (52.0, 18.0),
                    (48.0, 15.0),
                    (28.0, 15.0),
                ],
                Ink::White,
            ),
            self.bow((66.0, 30.0), 13.0, 0.0, TAU / 4.0, 2.0, Ink::Accent),
            self.bar((31.0, 74.0), (53.0, 74.0), 1.0, Ink::Accent),
            self.bar((54.0, 62.0), (46.0, 60.0), 1.0, Ink::Accent),
            self.bar((54.0, 54.0), (47.0, 52.0), 1.0, Ink::Accent),
        ]
    }

    fn glove(&self) -> Vec<Item> {
        let mut items = vec![
            self.polygon(
                &[(35.0, 46.0), (66.0, 46.0), (63.0, 24.0), (38.0, 24.0)],
                Ink::White,
            ),
            self.polygon(
                &[(36.0, 21.5), (65.0, 21.5), (67.0, 10.0), (34.0, 10.0)],
                Ink::White,
            ),
        ];
        let fingers = [(39.0, 75.0), (47.0, 82.0), (55.0, 81.0), (62.8, 72.0)];
        items.extend(fingers.map(|(x, tip)| self.bar((x, 42.0), (x, tip), 3.4, Ink::White)));
        items.push(self.bar((38.0, 34.0), (24.0, 56.0), 4.2, Ink::White));
        items
    }

    fn warning(&self) -> Vec<Item> {
        vec![
            self.polygon(&[(0.0, 6.0), (100.0, 6.0), (50.0, 93.0)], Ink::Black),
            self.polygon(&[(11.0, 12.5), (89.0, 12.5), (50.0, 80.0)], Ink::White),
            self.polygon(
                &[(45.0, 62.0), (55.0, 62.0), (52.5, 32.0), (47.5, 32.0)],
                Ink::Black,
            ),
            self.dot(50.0, 23.0, 4.6, Ink::Black),
        ]
    }
}
