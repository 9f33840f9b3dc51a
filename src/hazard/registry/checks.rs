//! What the stages of the plan look at and report, explained.

use crate::handle::guideline::{ISO_11228, L23_FIGURES, L23_TEAM};
use crate::tables::documents as doc;
use crate::tables::record::Record;
use crate::tables::{Source, stones::sources};

type Sources = &'static [&'static Source];

const JUDGED: Sources = &[&doc::OUR_JUDGEMENT];
const COMPUTED: Sources = &[&doc::COMPUTED];
const TEAM: Sources = &[&L23_TEAM, &L23_FIGURES];

const fn check(
    [id, title]: [&'static str; 2],
    what: &'static str,
    why: &'static str,
    what_to_do: &'static str,
    sources: Sources,
) -> Record {
    Record {
        id,
        title,
        what,
        why,
        what_to_do,
        sources,
        ..Record::CHECK
    }
}

/// The checks of placement, cuts and pieces.
pub(super) static OF_CUTTING: &[Record] = &[
    check(
        ["measure-again", "The fit is within the error of the tape"],
        "The top fits the slab with less to spare than twice the tape error.",
        "Two readings, each off by the tape's error the wrong way, and it does not fit.",
        "Measure the places named again, twice, with the better tape; a fit that holds then is one.",
        JUDGED,
    ),
    check(
        ["disc-too-small", "The disc does not get through the stone"],
        "Half of what the disc exceeds flange or gear head by, less everything between machine and stone, is \
         less than the depth that is needed.",
        "The stone hangs together below the cut and breaks where it likes.",
        "A bigger disc on a machine for it, a thinner plate, or cut the rest from below.",
        COMPUTED,
    ),
    check(
        ["no-room-for-guide", "The guide has no place on the slab"],
        "Neither kept stone nor waste is wide enough for the straight guide beside the cut.",
        "A guide that overhangs tips, and the cut runs off.",
        "Something of the same height beside the slab, clamped to the bench with it.",
        COMPUTED,
    ),
    check(
        [
            "arm-out-of-reach",
            "The circle jig cannot be set to the radius",
        ],
        "The arm needed for a curve is shorter or longer than the jig allows.",
        "A jig held by hand at its end wanders.",
        "Another arm, or another radius.",
        COMPUTED,
    ),
    check(
        ["corner-ground-by-hand", "A curve too small for plunges"],
        "The round corner is smaller than what plunges could make better than a grinder.",
        "Plunges would cut into kept stone.",
        "Saw it square or clipped, grind to the template.",
        COMPUTED,
    ),
    check(
        ["cuts-not-planned", "Not every cut of this top is planned"],
        "The top asks for a cut that this version does not set out.",
        "A plan with a gap looks like a whole one.",
        "Have that part cut by a shop, or change the shape.",
        COMPUTED,
    ),
    check(
        [
            "said-weight",
            "The seller's weight and the computed weight differ",
        ],
        "They are more than a tenth apart.",
        "One of stone, size or thickness is wrong, and every lift is planned from them.",
        "Plan with the heavier figure and weigh the slab if you can.",
        JUDGED,
    ),
    check(
        ["waste-needs-support", "Waste too heavy to be held by hand"],
        "A piece of more than 5 kg comes free.",
        "It drops, closes the kerf on the disc, and breaks its corner out of the kept stone.",
        "Its own bearers, level with the kept stone, before the last pass.",
        &[&doc::OUR_JUDGEMENT, &doc::GRINDER_WARNINGS],
    ),
];

/// The checks of lifting, carrying and setting down.
pub(super) static OF_HANDLING: &[Record] = &[
    check(
        ["not-a-hand-lift", "Not a hand lift"],
        "The stone weighs more than a team may lift by the guideline of the region.",
        "Backs, fingers and stone break together.",
        "Trolley on edge, vacuum lifter, gantry; or have it delivered to its place.",
        &[&L23_FIGURES, &L23_TEAM, &ISO_11228],
    ),
    check(
        ["more-than-four", "More than four people do not lift as one"],
        "Two people can count on two thirds of their sum, three on half; for more nothing is published.",
        "They do not lift at the same moment, and each is overloaded in turn.",
        "An aid, or fewer people and a lighter piece.",
        TEAM,
    ),
    check(
        [
            "lifter-over-guideline",
            "One person carries more than the guideline",
        ],
        "The share of one lifter, from where everybody stands, is above what one person should lift.",
        "The stone is stiff: who stands nearer its balance point carries more, whether strong or not.",
        "Stand elsewhere, more people, or an aid.",
        &[&L23_FIGURES, &ISO_11228],
    ),
    check(
        ["tips-out-of-hands", "It tips out of the hands"],
        "The balance point lies outside the people's stands.",
        "It swings down on the free side as soon as it is lifted.",
        "Stand on both sides of the balance point.",
        COMPUTED,
    ),
    check(
        ["lifter-off-the-edge", "A stand that is not at the edge"],
        "A place given for a lifter lies away from the stone's edge.",
        "Nobody can take hold there, so the shares do not hold.",
        "Give places at the edge.",
        COMPUTED,
    ),
    check(
        ["bends-flat", "Lying flat it can snap"],
        "The stress from its own weight, flat on two supports, is near or above what the stone is allowed.",
        "Stone breaks without bending first, at a vein or a hole.",
        "Carry it on edge; lay it on a full board.",
        &[&doc::COMPUTED, &sources::BEALL],
    ),
    check(
        ["carry-on-edge", "Carry it on edge"],
        "The same stone on edge is stressed far less than flat.",
        "On edge its depth carries, flat only its thickness.",
        "On edge on a trolley, tied, two people at its ends and nobody below.",
        COMPUTED,
    ),
    check(
        ["crush-and-falls", "It crushes what it falls on"],
        "How much stone falls, and from what height, when a slab on edge tips.",
        "Nobody catches a falling slab.",
        "Tie it whenever it stands; nobody on the side it can fall to.",
        &[&doc::COMMON_PRACTICE],
    ),
    check(
        [
            "tips-off-supports",
            "The top does not lie still on its supports",
        ],
        "The balance point lies outside what it stands on.",
        "It tips when the last hand lets go.",
        "Another support, or one moved out.",
        COMPUTED,
    ),
    check(
        [
            "support-over-limit",
            "A support carries more than its limit",
        ],
        "Its share of the top's weight is above the limit given for it.",
        "A cabinet side that gives way lets the top crack across its neighbour.",
        "A stronger support, or more of them.",
        COMPUTED,
    ),
    check(
        ["support-lifts-off", "A support carries nothing"],
        "The top is lifted off it by its own weight elsewhere.",
        "It rocks there, and a hand pushed under the edge is caught.",
        "Pack it, or leave it out of the reckoning.",
        COMPUTED,
    ),
    check(
        ["flaws-and-strength", "Strength does not hold across flaws"],
        "The strength in the tables is that of sound stone.",
        "Across a fissure or a mend there may be none.",
        "Keep supports on both sides of it; strap or stiffen it before it is moved.",
        COMPUTED,
    ),
    check(
        [
            "guideline-is-not-a-limit",
            "The lifting guideline is not a safe limit",
        ],
        "The figures are for good conditions: close to the body, at the best height, a good grip.",
        "Stone has no handles and the floor is wet.",
        "Take less, or an aid.",
        &[&L23_FIGURES],
    ),
    check(
        ["falling-stone", "Falling stone"],
        "Every square metre of slab weighs tens of kilograms.",
        "Waste drops from the last pass, slabs on edge fall over: feet, fingers, legs.",
        "Both sides held before the last pass, nothing of anybody below, never catch a falling slab.",
        &[&doc::COMMON_PRACTICE],
    ),
    check(
        ["wet-floor", "Slurry makes the floor slippery"],
        "Water and stone flour on a smooth floor.",
        "Somebody slips with a running disc or a hundredweight of stone in the hands.",
        "Slip-proof boots, water led away, floor rinsed and cleared before anything is lifted.",
        &[&doc::COMMON_PRACTICE],
    ),
];
