//! The checks of placement, cuts and pieces.

use super::{COMPUTED, JUDGED, check};
use crate::cut::{core, curve, cutout, disc, inside, making, rail, stopped, straight};
use crate::tables::documents as doc;
use crate::tables::record::Record;
use crate::{piece, place};

/// The checks of placement, cuts and pieces.
pub(in crate::hazard::registry) static OF_CUTTING: &[Record] = &[
    check(
        ["measure-again", "The fit is within the error of the tape"],
        "The top fits the slab with less to spare than twice the tape error.",
        "Two readings, each off by the tape's error the wrong way, and it does not fit.",
        "Measure the places named again, twice, with the better tape; a fit that holds then is one.",
        JUDGED,
    ).saying(&[place::MEASURE_AGAIN]),
    check(
        ["edges-undescribed", "Edges of the slab that nobody has described"],
        "The top lies on edges of the slab that the job file calls neither factory nor sawn nor rough.",
        "A chipped, crooked or cracked edge becomes a finished edge of the top.",
        "Look along each with a straightedge and a square before the start, then name it under [slab].",
        JUDGED,
    ).saying(&[place::EDGES_UNDESCRIBED]),
    check(
        ["turn-saves", "A turn in between takes less sawing"],
        "No edge of the top lies along an edge of the slab, and the top turned in between takes at least 10 % less \
         sawn face and leaves no smaller rectangle.",
        "More cutting than needed: more dust, more noise, more time at the machine.",
        "Weigh it against the harder setting out; the lines for [place] stand in the message.",
        JUDGED,
    ).saying(&[place::TURN_SAVES]),
    check(
        ["disc-too-small", "The disc does not get through the stone"],
        "Half of what the disc exceeds flange or gear head by, less everything between machine and stone, is \
         less than the depth that is needed.",
        "The stone hangs together below the cut and breaks where it likes.",
        "A bigger disc on a machine for it, a thinner plate, or cut the rest from below.",
        COMPUTED,
    ).saying(&[disc::TOO_SMALL]),
    check(
        ["no-room-for-guide", "The guide has no place on the slab"],
        "Neither kept stone nor waste is wide enough for the straight guide beside the cut.",
        "A guide that overhangs tips, and the cut runs off.",
        "Something of the same height beside the slab, clamped to the bench with it.",
        COMPUTED,
    ).saying(&[straight::NO_ROOM]),
    check(
        [
            "arm-out-of-reach",
            "The circle jig cannot be set to the radius",
        ],
        "The arm needed for a curve is shorter or longer than the jig allows.",
        "A jig held by hand at its end wanders.",
        "Another arm, or another radius.",
        COMPUTED,
    ).saying(&[curve::NO_ARM]),
    check(
        ["corner-ground-by-hand", "A curve too small for plunges"],
        "The round corner is smaller than what plunges could make better than a grinder.",
        "Plunges would cut into kept stone.",
        "Saw it square or clipped, grind to the template.",
        COMPUTED,
    ).saying(&[curve::GROUND]),
    check(
        [
            "said-weight",
            "The seller's weight and the computed weight differ",
        ],
        "They are more than a tenth apart.",
        "One of stone, size or thickness is wrong, and every lift is planned from them.",
        "Plan with the heavier figure and weigh the slab if you can.",
        JUDGED,
    ).saying(&[piece::SAID_WEIGHT]),
    check(
        ["waste-needs-support", "Waste too heavy to be held by hand"],
        "A piece of more than 5 kg comes free.",
        "It drops, closes the kerf on the disc, and breaks its corner out of the kept stone.",
        "Its own bearers, level with the kept stone, before the first pass.",
        &[&doc::OUR_JUDGEMENT, &doc::GRINDER_WARNINGS],
    ).saying(&[piece::NEEDS_SUPPORT]),
    check(
        ["fissure-in-waste", "A fissure runs through waste"],
        "A flaw along a line runs through a piece that comes free, or a cut crosses it.",
        "Across it the stone may have no strength: a part breaks off and falls, or closes the kerf.",
        "Bearers on both sides of it; never lifted across it without a splint.",
        JUDGED,
    ).saying(&[piece::FISSURE]),
    check(
        ["hangs-on-a-strip", "The kept stone hangs on a narrow strip"],
        "Somewhere the kept stone is narrower than it is thick.",
        "It breaks there in the sawing or in the lifting.",
        "Move or change what leaves the strip.",
        JUDGED,
    ).saying(&[rail::STRIP, rail::STRIP_BETWEEN, rail::STRIP_AT_CORNER]),
    check(
        ["rail-too-narrow", "A cutout leaves too narrow a rail"],
        "The stone left beside a cutout is narrower than what is published as the least.",
        "The rail is the weakest place when the top is moved.",
        "Move the cutout where the rail opposite has stone to give, else make it smaller.",
        &[&doc::MIA_RAILS],
    ).saying(&[rail::NARROW, rail::NARROW_BOTH, rail::NARROW_BETWEEN]),
    check(
        ["opening-larger", "A cutout came out larger than was asked"],
        "A side of an opening was sawn too far into the stone that was to be kept, or a chip took it there.",
        "A rim that no longer covers the edge leaves a gap, and water runs into it; clips find no stone.",
        "Lay in what goes there, or measure its rim, before anything else is cut.",
        COMPUTED,
    )
    .saying(&[crate::repair::rim::LARGER]),
    check(
        ["inside-corner-radius", "An inside corner gets a radius"],
        "An inside corner is left round by the core hole that begins it.",
        "A crack begins in a sharp inside corner.",
        "At least 10 mm; plan what stands in it with that radius.",
        &[&doc::OUR_JUDGEMENT, &doc::MIA_RAILS],
    ).saying(&[inside::RADIUS, inside::NEAREST]),
    check(
        ["core-holes-close", "Core holes overlap or nearly touch"],
        "Two holes of a row, of a chain or of neighbouring corners leave less than 5 mm between them, or none.",
        "A bit that begins beside a hole runs into it and off its mark; a thin web breaks out.",
        "A template for the bit clamped over each middle, light pressure.",
        JUDGED,
    )
    .saying(&[core::CLOSE]),
    check(
        [
            "inside-corner-needs-core-bit",
            "An inside corner needs a core hole",
        ],
        "No core bit of the kit makes the hole that an inside corner begins with.",
        "Cuts that stop in a corner without a hole start a crack there.",
        "A bit of at least 20 mm, named in the job file as [[core_bit]].",
        &[&doc::OUR_JUDGEMENT, &doc::MIA_RAILS],
    ).saying(&[inside::NO_BIT]),
    check(
        ["much-to-grind", "Much is left to grind inside a curve"],
        "A straight slot inside a hollow curve must keep off its ends and leaves stone at its middle.",
        "More than 10 mm is hours of grinding, dust and vibration.",
        "A smaller disc, or a core bit of the curve's own size.",
        COMPUTED,
    ).saying(&[inside::MUCH]),
    check(
        [
            "no-disc-for-hollow",
            "No disc of the kit fits into a hollow",
        ],
        "The disc's cut in the face is longer than the hollow is wide.",
        "It would saw into kept stone on both sides.",
        "A core bit, or a chain of holes.",
        COMPUTED,
    ).saying(&[inside::NO_DISC]),
    check(
        [
            "stopped-cut-too-short",
            "No disc finds room between two stops",
        ],
        "A cut that must stop at both ends is shorter than the disc's slot.",
        "It would saw past a corner into kept stone.",
        "A smaller disc, or a row of core holes.",
        COMPUTED,
    ).saying(&[stopped::TOO_SHORT]),
    check(
        [
            "opening-narrower-than-kerf",
            "An opening has no room for the kerf",
        ],
        "Sawn along one side, the disc is already in the stone at the other.",
        "It takes kept stone, which nothing puts back.",
        "A wider opening, a thinner disc, or a shop.",
        COMPUTED,
    ).saying(&[cutout::NARROWER_THAN_KERF]),
    check(
        [
            "piece-held-below",
            "Nothing in the kit parts an opening's piece at the underside",
        ],
        "The disc is round: at the underside a cut that stops ends short, and there the piece hangs on.",
        "A piece that is broken out takes kept stone with it, or drops unawares.",
        "A smaller core bit, named in the job file as [[core_bit]]: holes beside the ends are then placed and timed.",
        COMPUTED,
    ).saying(&[cutout::HELD_BELOW]),
    check(
        [
            "waste-not-freed",
            "Cuts that do not meet leave waste on the top",
        ],
        "After the last cut some waste still hangs on to the top, and no cut is missing.",
        "It would be broken off by hand, and take kept stone with it.",
        "Part it where it hangs on, with a core hole or one more plunge beside the last, on the waste side.",
        COMPUTED,
    ).saying(&[piece::NOT_FREED]),
    check(
        ["curve-without-arm", "A curve set out from its chord"],
        "The circle jig's arm does not reach; the marks follow from the chord instead.",
        "Marks from a chord add up small errors.",
        "Check the last mark against the next corner before the first plunge.",
        COMPUTED,
    ).saying(&[curve::WITHOUT_ARM]),
    check(
        [
            "sawn-with-another",
            "An edge sawn with the edge in line with it",
        ],
        "One trim makes two edges in line whose finishes ask for different allowances.",
        "One of them gets more stone left on it than its finish needs.",
        "Grind off the difference, or give both the same finish.",
        COMPUTED,
    ).saying(&[making::WITH_ANOTHER]),
    check(
        [
            "curve-waste-heavy",
            "Waste outside a curve too heavy for a hand",
        ],
        "No straight cut clear of the kept stone parts it into pieces that a hand can hold.",
        "It drops when the last ring of plunges goes through.",
        "Borne from below over its whole length before the last ring; nobody holds it.",
        JUDGED,
    ).saying(&[piece::CURVE_WASTE]),
];
