//! The parts of a job that a template can be printed of.

use std::fmt;
use std::str::FromStr;

use crate::cut::CutKind;
use crate::geom::Seg;
use crate::plan::{OpeningNote, Plan};
use crate::words::{Message, Value};

/// A part of the finished top.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum NamedPart {
    /// The whole top.
    Top,
    /// The curve that is made by a cut, by its number on the sheet.
    Curve(usize),
    /// An opening, counted from 1.
    Opening(usize),
    /// A corner that is cut off straight, by its name.
    Clip(String),
    /// A corner that is scooped out, by its name.
    Scoop(String),
}

/// The parts of a plan, the whole top last.
#[must_use]
pub fn parts(plan: &Plan) -> Vec<NamedPart> {
    let curves = plan.cuts.iter().filter(|c| c.kind == CutKind::Curve);
    let curves = curves.filter(|c| c.cutout.is_none());
    let openings = 1..=plan.top.openings.len();
    let pieces = plan.top.parts.iter().zip(plan.top.outline.segs());
    let corners = pieces.filter_map(|(part, seg)| {
        let is_corner = !part.name.contains('-');
        match seg {
            Seg::Line(..) if is_corner => Some(NamedPart::Clip(part.name.clone())),
            Seg::Arc(arc) if is_corner && arc.sweep < 0.0 => {
                Some(NamedPart::Scoop(part.name.clone()))
            }
            _ => None,
        }
    });
    curves
        .map(|c| NamedPart::Curve(c.number))
        .chain(openings.map(NamedPart::Opening))
        .chain(corners)
        .chain([NamedPart::Top])
        .collect()
}

impl NamedPart {
    /// What it is, for a heading.
    #[must_use]
    pub fn title(&self, plan: &Plan) -> Message {
        match self {
            Self::Top => Message::plain("template-top"),
            Self::Curve(number) => {
                Message::new("template-curve", [("number", Value::count(*number))])
            }
            Self::Opening(number) => {
                let what = self.opening(plan).map_or("", |o| o.what.as_str());
                let args = [
                    ("number", Value::count(*number)),
                    ("what", Value::name(what)),
                ];
                Message::new("template-opening", args)
            }
            Self::Clip(corner) | Self::Scoop(corner) => {
                Message::new("template-corner", [("corner", Value::name(corner))])
            }
        }
    }

    /// The opening that it is.
    pub(super) fn opening<'a>(&self, plan: &'a Plan) -> Option<&'a OpeningNote> {
        match self {
            Self::Opening(number) => plan.top.openings.get(number.checked_sub(1)?),
            _ => None,
        }
    }
}

/// As it is asked for: `curve-3`.
impl fmt::Display for NamedPart {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Top => f.write_str("top"),
            Self::Curve(number) => write!(f, "curve-{number}"),
            Self::Opening(number) => write!(f, "opening-{number}"),
            Self::Clip(corner) => write!(f, "clip-{corner}"),
            Self::Scoop(corner) => write!(f, "scoop-{corner}"),
        }
    }
}

impl FromStr for NamedPart {
    type Err = String;

    fn from_str(text: &str) -> Result<Self, String> {
        let unknown = || {
            format!(
                "\"{text}\" is no part: top, curve-3, opening-1, clip-2, scoop-2 and the like are"
            )
        };
        if text == "top" {
            return Ok(Self::Top);
        }
        let (kind, name) = text.split_once('-').ok_or_else(unknown)?;
        let number = || name.parse::<usize>().map_err(|_| unknown());
        match kind {
            "curve" => Ok(Self::Curve(number()?)),
            "opening" => Ok(Self::Opening(number()?)),
            "clip" => Ok(Self::Clip(number()?.to_string())),
            "scoop" => Ok(Self::Scoop(number()?.to_string())),
            _ => Err(unknown()),
        }
    }
}
