//! What becomes of one edge.

/// What is known of an edge, distances in mm from its line to keep, outwards.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Edge {
    /// Stone that was to be left on it, mm.
    pub allowance_mm: f64,
    /// Where its face lies; nothing when it has not been cut.
    pub face_mm: Option<f64>,
    /// How much farther out a slanting face lies at one end than at the other, mm: it falls short by it.
    pub taper_mm: f64,
    /// How far out the stone is unhurt all along it: the face, or deeper where a chip or a slip of a
    /// neighbouring curve bites into it; infinite when nothing is known against it.
    pub unhurt_mm: f64,
}

/// What is done with an edge.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Settled {
    /// How far the finished line moves in, mm.
    pub moved_mm: f64,
    /// When it is not sawn again: the unhurt stone that may be counted on over the finished line, mm; no
    /// more than the allowance, however much stands there.
    pub ready_mm: Option<f64>,
    /// Stone to take off beyond the finished line, where it is thickest, mm; nothing before it is sawn.
    pub take_off_mm: f64,
}

/// Settles one edge.
///
/// - Unhurt up to its line, or hurt no deeper than the allowance: the finished line stays.
/// - Hurt deeper: the line moves in until the whole allowance is unhurt again.
/// - What then stands over the line to keep is ground off up to `grind_mm`. More is sawn off, and as a
///   strip narrower than `least_strip_mm` lets the disc wander, the line moves in as far as that strip
///   needs. A face that merely came out too far costs no size: it is ground, however much it is,
///   unless the strip is wide enough to saw.
#[must_use]
pub fn settle(edge: Edge, grind_mm: f64, least_strip_mm: f64) -> Settled {
    let Edge {
        allowance_mm,
        face_mm,
        taper_mm,
        unhurt_mm,
    } = edge;
    let lost = -unhurt_mm > allowance_mm + crate::geom::SAME_MM;
    let mut moved_mm = if lost { -unhurt_mm } else { 0.0 };
    let Some(face_mm) = face_mm else {
        return Settled {
            moved_mm,
            ready_mm: None,
            take_off_mm: 0.0,
        };
    };
    // A wedge is as much to grind as a strip of half its thickness.
    let strip = face_mm + moved_mm - taper_mm / 2.0;
    let sawn_again = strip > grind_mm && (lost || strip >= least_strip_mm);
    if sawn_again {
        moved_mm += (least_strip_mm - strip).max(0.0);
    }
    Settled {
        moved_mm,
        ready_mm: (!sawn_again)
            .then_some((allowance_mm + moved_mm + unhurt_mm.min(face_mm)).min(allowance_mm)),
        take_off_mm: if sawn_again {
            0.0
        } else {
            allowance_mm + moved_mm + face_mm
        },
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn edge(allowance_mm: f64, face_mm: f64, unhurt_mm: f64) -> Edge {
        Edge {
            allowance_mm,
            face_mm: Some(face_mm),
            taper_mm: 0.0,
            unhurt_mm,
        }
    }

    fn is(settled: Settled, moved: f64, ready: Option<f64>, take_off: f64) {
        assert_eq!(
            settled,
            Settled {
                moved_mm: moved,
                ready_mm: ready,
                take_off_mm: take_off
            }
        );
    }

    #[test]
    fn a_slip_inside_the_allowance_costs_nothing() {
        is(
            settle(edge(1.0, -0.75, -0.75), 3.0, 10.0),
            0.0,
            Some(0.25),
            0.25,
        );
        is(
            settle(edge(1.0, -1.0, -1.0), 3.0, 10.0),
            0.0,
            Some(0.0),
            0.0,
        );
    }

    #[test]
    fn a_slip_beyond_it_moves_the_line_by_the_slip() {
        is(
            settle(edge(1.0, -1.5, -1.5), 3.0, 10.0),
            1.5,
            Some(1.0),
            1.0,
        );
    }

    #[test]
    fn a_face_that_came_out_too_far_costs_no_size() {
        is(settle(edge(1.0, 2.0, 2.0), 3.0, 10.0), 0.0, Some(1.0), 3.0);
        is(settle(edge(1.0, 6.0, 6.0), 3.0, 10.0), 0.0, Some(1.0), 7.0);
        is(settle(edge(1.0, 12.0, 12.0), 3.0, 10.0), 0.0, None, 0.0);
    }

    #[test]
    fn a_chip_is_ground_out_or_sawn_off() {
        // Within the allowance; ground out; too deep to grind: sawn as a strip of ten.
        is(settle(edge(1.0, 0.0, -0.5), 3.0, 10.0), 0.0, Some(0.5), 1.0);
        is(settle(edge(1.0, 0.0, -2.5), 3.0, 10.0), 2.5, Some(1.0), 3.5);
        is(settle(edge(1.0, 0.0, -6.0), 3.0, 10.0), 10.0, None, 0.0);
        is(settle(edge(1.0, 0.0, -12.0), 3.0, 10.0), 12.0, None, 0.0);
    }

    #[test]
    fn a_slanting_face_moves_the_line_by_its_deepest_end_and_leaves_a_wedge() {
        let slant = Edge {
            taper_mm: 4.0,
            ..edge(1.0, 0.0, -4.0)
        };
        is(settle(slant, 3.0, 10.0), 4.0, Some(1.0), 5.0);
    }

    #[test]
    fn an_edge_not_yet_cut_only_has_to_clear_a_chip() {
        let open = Edge {
            allowance_mm: 1.0,
            face_mm: None,
            taper_mm: 0.0,
            unhurt_mm: -4.0,
        };
        is(settle(open, 3.0, 10.0), 4.0, None, 0.0);
        let unhurt = Edge {
            unhurt_mm: f64::INFINITY,
            ..open
        };
        is(settle(unhurt, 3.0, 10.0), 0.0, None, 0.0);
    }
}
