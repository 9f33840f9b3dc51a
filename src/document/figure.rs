//! What a drawing shows: typed things at their places in the world, in mm, with no paper in it.

use crate::geom::{Bounds, Outline, Point, Seg, Vector};
use crate::words::{Message, Value};

/// A drawing. Its frame is the slab's for a view from above; for a side view x runs along the floor
/// and y up from it.
#[derive(Clone, Debug)]
pub struct Figure {
    /// What it shows, in words, for whoever does not see it.
    pub alt: Message,
    /// The part of the world that is shown; things outside it are cut off when `clipped`.
    pub frame: Bounds,
    /// True to cut off what lies outside the frame.
    pub clipped: bool,
    /// True when the drawing is turned half round, so that its reader stands below it.
    pub turned: bool,
    /// True to draw a scale bar below it.
    pub scaled: bool,
    /// How much of the page's free height it takes against the other drawings.
    pub weight: u8,
    /// The things, later ones over earlier ones.
    pub things: Vec<Thing>,
}

/// How a closed shape is drawn.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Shape {
    /// Stone that is kept: plain, its edge wide.
    Kept,
    /// Waste: hatched.
    Waste,
    /// Stone that has gone: dotted.
    Gone,
    /// An edge alone.
    Edge,
    /// What the disc takes: solid.
    Kerf,
    /// The guide: a pale bar.
    Guide,
    /// Timber, steel, wheels: pale, a narrow edge.
    Tool,
    /// Where nobody stands: widely hatched, dashed.
    Danger,
}

/// How a line is drawn.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LineStyle {
    /// A line to strike, or an axis: long dash and dot.
    SetOut,
    /// Under the stone: dashed.
    Hidden,
    /// A flaw.
    Flaw,
    /// The clearance of a flaw.
    Clearance,
    /// The floor, a rope, a leg.
    Solid,
    /// A leader or a circle of reach.
    Thin,
}

/// Which side of the drawing a dimension lies on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Side {
    /// Below.
    Below,
    /// Above.
    Above,
    /// To the left.
    Left,
    /// To the right.
    Right,
}

/// How a label is set.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Lettering {
    /// A number to act by.
    Number,
    /// A name of a mark, a corner or a part.
    Name,
    /// A word.
    Word,
}

/// A thing in a drawing.
#[derive(Clone, Debug)]
pub enum Thing {
    /// A closed shape: its rings.
    Area(Shape, Vec<Vec<Seg>>),
    /// An open line.
    Line(LineStyle, Vec<Seg>),
    /// Words inside an area, or beside it with a leader: the area, a place in it, the words.
    Within(Outline, Point, Lettering, Value),
    /// Words at a point, as near to it as there is room.
    Label(Point, Lettering, Value),
    /// A name a little way from a point in a direction.
    Towards(Point, Vector, Lettering, Value),
    /// A mark on the stone with its name.
    Mark(Point, String),
    /// A cut's number in a ring, moved off in a direction.
    Ring(Point, Vector, usize),
    /// A cross at a pivot or a centre, with its name.
    Pivot(Point, String),
    /// Stations along a curve: where each is, and the direction its number lies in; numbered from 1.
    Stations(Vec<(Point, Vector)>),
    /// A balance point.
    Balance(Point),
    /// A dimension on a side, in a row counted from the drawing outwards from 0.
    Dimension(Point, Point, Side, u8, Value),
    /// A person seen from above who faces a direction, with a word.
    PersonAbove(Point, Vector, Value),
    /// A person seen from the side at a place on the floor, facing right or left, hands at a height.
    PersonSide(Point, bool, f64),
    /// An arrow from a point to a point.
    Arrow(Point, Point),
    /// A trestle seen from the side: the middle of its top.
    TrestleSide(Point),
    /// A trolley seen from its end or its side: the middle of its deck on the floor, deck height, length.
    TrolleySide(Point, f64, f64),
    /// The machine seen from above on a line, heading in a direction.
    MachineAbove(Point, Vector),
    /// A part that can be pointed at on a screen: its name, and where it runs. Not seen on paper.
    Part(String, Vec<Seg>),
}

impl Figure {
    /// An empty drawing of a part of the world.
    #[must_use]
    pub const fn new(alt: Message, frame: Bounds) -> Self {
        Self {
            alt,
            frame,
            clipped: false,
            turned: false,
            scaled: true,
            weight: 1,
            things: Vec::new(),
        }
    }

    /// Adds a thing.
    pub fn add(&mut self, thing: Thing) {
        self.things.push(thing);
    }

    /// Adds things.
    pub fn extend(&mut self, things: impl IntoIterator<Item = Thing>) {
        self.things.extend(things);
    }
}
