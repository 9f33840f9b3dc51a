//! The checks of lifting, carrying and setting down.

use super::{COMPUTED, JUDGED, Sources, check};
use crate::handle::aid::finding as aid;
use crate::handle::fall;
use crate::handle::finding::{self, lift, narrow, setting, strength};
use crate::handle::route::finding as way;
use crate::tables::documents as doc;
use crate::tables::documents::{ISO_11228, L23_FIGURES, L23_TEAM};
use crate::tables::record::Record;

const TEAM: Sources = &[&L23_TEAM, &L23_FIGURES];

/// The checks of lifting, carrying and setting down.
pub(in crate::hazard::registry) static OF_HANDLING: &[Record] = &[
    check(
        ["not-a-hand-lift", "Not a hand lift"],
        "The stone weighs more than a team may lift by the guideline of the region.",
        "Backs, fingers and stone break together.",
        "Trolley on edge, vacuum lifter, gantry; or have it delivered to its place.",
        &[&L23_FIGURES, &L23_TEAM, &ISO_11228],
    )
    .saying(&[lift::NOT_A_HAND_LIFT, lift::BREAKS_IN_HANDS]),
    check(
        ["more-than-four", "More than four people do not lift as one"],
        "Two people can count on two thirds of their sum, three on half; for more nothing is published.",
        "They do not lift at the same moment, and each is overloaded in turn.",
        "An aid, or fewer people and a lighter piece.",
        TEAM,
    )
    .saying(&[lift::MORE_THAN_FOUR]),
    check(
        [
            "lifter-over-guideline",
            "One person carries more than the guideline",
        ],
        "The share of one lifter, from where everybody stands, is above what one person should lift.",
        "The stone is stiff: who stands nearer its balance point carries more, whether strong or not.",
        "Stand elsewhere, more people, or an aid.",
        &[&L23_FIGURES, &ISO_11228],
    )
    .saying(&[lift::OVER, lift::TILT]),
    check(
        ["tips-out-of-hands", "It tips out of the hands"],
        "The balance point lies outside the people's stands.",
        "It swings down on the free side as soon as it is lifted.",
        "Stand on both sides of the balance point.",
        COMPUTED,
    )
    .saying(&[lift::TIPS]),
    check(
        ["lifter-off-the-edge", "A stand that is not at the edge"],
        "A place given for a lifter lies away from the stone's edge.",
        "Nobody can take hold there, so the shares do not hold.",
        "Give places at the edge.",
        COMPUTED,
    )
    .saying(&[lift::OFF_THE_EDGE]),
    check(
        ["bends-flat", "Lying flat it can snap"],
        "The stress from its own weight, flat on two supports, is near or above what the stone is allowed.",
        "Stone breaks without bending first, at a vein or a hole.",
        "Carry it on edge; lay it on a full board.",
        &[&doc::COMPUTED, &doc::BEALL],
    )
    .saying(&[strength::BENDS_FLAT, strength::NOT_FLAT]),
    check(
        ["carry-on-edge", "Carry it on edge"],
        "The same stone on edge is stressed far less than flat.",
        "On edge its depth carries, flat only its thickness.",
        "On edge on a trolley, tied, two people at its ends and nobody below.",
        COMPUTED,
    )
    .saying(&[strength::NOT_BY_ITS_ENDS, strength::BRACED_ON_EDGE]),
    check(
        ["crush-and-falls", "It crushes what it falls on"],
        "How much stone falls, and from what height, when a slab on edge tips.",
        "Nobody catches a falling slab.",
        "Tie it whenever it stands; nobody on the side it can fall to.",
        &[&doc::COMMON_PRACTICE],
    )
    .saying(&[fall::FALLS]),
    check(
        [
            "tips-off-supports",
            "The top does not lie still on its supports",
        ],
        "The balance point lies outside what it stands on.",
        "It tips when the last hand lets go.",
        "Another support, or one moved out.",
        COMPUTED,
    )
    .saying(&[setting::TIPS]),
    check(
        ["rests-poorly", "The top wants more under it"],
        "How far edges reach beyond the supports, the widest stretch between them, what each carries, and what \
         a person of 1 kN at the worst place does to stone and supports.",
        "Tops break and tip years after they were set, when somebody sits on an edge or stands on them.",
        "Brackets, legs, rails; supports closer together and beside every cutout.",
        &[&doc::COMPUTED, &doc::MIA_RAILS, &doc::BEALL],
    )
    .saying(&[setting::RESTS]),
    check(
        ["support-lifts-off", "A support carries nothing"],
        "The top is lifted off it by its own weight elsewhere.",
        "It rocks there, and a hand pushed under the edge is caught.",
        "Pack it, or leave it out of the reckoning.",
        COMPUTED,
    )
    .saying(&[setting::IDLE]),
    check(
        ["flaws-and-strength", "Strength does not hold across flaws"],
        "The strength in the tables is that of sound stone.",
        "Across a fissure or a mend there may be none.",
        "Keep supports on both sides of it; strap or stiffen it before it is moved.",
        COMPUTED,
    )
    .saying(&[strength::FLAWED]),
    check(
        [
            "guideline-is-not-a-limit",
            "The lifting guideline is not a safe limit",
        ],
        "The figures are for good conditions: close to the body, at the best height, a good grip.",
        "Stone has no handles and the floor is wet.",
        "Take less, or an aid.",
        &[&L23_FIGURES],
    )
    .saying(&[finding::NOT_A_LIMIT]),
    check(
        ["lifter-at-cutout", "A lifter beside a cutout"],
        "A place to lift lies less than a hand's width from a cutout.",
        "The rail there is the weakest stone of the top.",
        "Lift where the stone is whole.",
        JUDGED,
    )
    .saying(&[lift::AT_CUTOUT]),
    check(
        ["carry-too-far", "Too far to carry without a rest"],
        "The guideline weights hold for 10 m against the body.",
        "Grip goes before strength does.",
        "Set it down on edge on two battens on the way, or wheel it.",
        &[&L23_FIGURES],
    )
    .saying(&[lift::TOO_FAR]),
    check(
        ["narrow-rail", "A narrow rail beside a tap hole"],
        "The stone left beside a tap hole is narrower than what is published as the least beside a cutout.",
        "It cracks when the top is lifted flat; nothing less is published for tap holes.",
        "Move the hole, make it smaller, or stiffen the rail from below.",
        &[&doc::MIA_RAILS],
    )
    .saying(&[narrow::NARROW]),
    check(
        [
            "brace-the-neck",
            "A narrow place must not carry the stone beyond it",
        ],
        "What hangs on a neck lying flat stresses it near or above what the stone is allowed.",
        "It snaps at the neck.",
        "Hold both sides up whenever it lies flat; strap a splint across it before it is moved.",
        &[&doc::COMPUTED, &doc::BEALL],
    )
    .saying(&[narrow::BRACE_NECK, narrow::BED_NECK]),
    check(
        [
            "falls-off-trestles",
            "The stone does not lie on the trestles",
        ],
        "After a cut its balance point is not between the trestles, or it does not reach them.",
        "It tips with the last pass.",
        "Move the trestles before that cut.",
        COMPUTED,
    )
    .saying(&[strength::FALLS]),
    check(
        ["bends-on-trestles", "Two trestles are not enough"],
        "On the trestles the stress is above what the stone is allowed.",
        "It snaps on the bench.",
        "Bed it on a full flat board.",
        &[&doc::COMPUTED, &doc::BEALL],
    )
    .saying(&[strength::BENDS_ON_TRESTLES,  strength::MOVED]),
    check(
        ["on-a-trolley", "The trolley"],
        "The stone stands on edge on wheels.",
        "On a slope it runs, on a sill it stops and the stone goes on.",
        "Tied to the frame, level ground, somebody at either end and nobody beside it.",
        &[&doc::COMMON_PRACTICE],
    )
    .saying(&[aid::TROLLEY, aid::STONE_ON_TROLLEY]),
    check(
        ["under-a-vacuum-lifter", "The vacuum lifter"],
        "Cups hold the stone by its face.",
        "Dust, damp, pores or a split face let air in, and the hold goes at once.",
        "Marked for twice the weight, a second securing, nobody below.",
        &[&doc::COMMON_PRACTICE],
    )
    .saying(&[aid::VACUUM, aid::STONE_UNDER_CUPS, aid::NO_ROOM_FOR_CUPS]),
    check(
        ["in-slings", "The gantry or hoist"],
        "The stone hangs in slings.",
        "Slings slide together and the stone slips out between them.",
        "Set up and used by somebody competent, where the law asks for it licensed.",
        &[&doc::COMMON_PRACTICE],
    )
    .saying(&[aid::SLINGS, aid::STONE_IN_SLINGS, aid::NO_PLACE_FOR_SLINGS]),
    check(
        ["aid-too-weak", "The aid is not marked for the weight"],
        "The lifting aid at hand is marked for less than the stone needs.",
        "It fails with the stone in the air.",
        "One that is marked for it, or cut before the stone is moved.",
        &[&doc::COMMON_PRACTICE],
    )
    .saying(&[aid::TOO_WEAK, aid::UNMARKED]),
    check(
        ["way-in-upright", "The top passes only upright"],
        "A door or corner lets it through only standing on its short side.",
        "Standing so it is tall, heavy at the top, and tips.",
        "Stand it up before the place with aid and people enough; never on a stair.",
        COMPUTED,
    )
    .saying(&[way::UPRIGHT]),
    check(
        ["way-in-flat-only", "The top passes only lying flat"],
        "A door or corner lets it through only flat.",
        "Flat it may snap under its own weight.",
        "On a full board, or by another way.",
        COMPUTED,
    )
    .saying(&[way::FLAT]),
    check(
        [
            "brace-the-rail",
            "A rail must be braced before the top is moved",
        ],
        "The stone beside a cutout is stressed near or above what it is allowed when the top lies flat.",
        "It cracks at the cutout's corner on the way in.",
        "A stiff batten strapped across the cutout, and the top carried on edge.",
        &[&doc::COMPUTED, &doc::BEALL],
    )
    .saying(&[narrow::BRACE_RAIL, narrow::BED_RAIL]),
    check(
        [
            "way-in-blocked",
            "The top does not pass a place on the way in",
        ],
        "Neither on edge, nor upright, nor flat does it go through a door or round a corner.",
        "A worktop that cannot be brought in is found out with six people holding it.",
        "Another way in, a window, or a joint in the top.",
        COMPUTED,
    )
    .saying(&[way::BLOCKED]),
    check(
        ["way-in-tight", "A tight place on the way in"],
        "It passes with less to spare than hands and straps take.",
        "Fingers are crushed against the frame.",
        "Measure again; take doors off; try it with a batten of the same size.",
        COMPUTED,
    )
    .saying(&[way::TIGHT]),
    check(
        ["way-in-slab", "The slab does not pass where the top does"],
        "A place on the way to where it is cut lets the finished top through, but not the slab.",
        "It stands in the yard with nowhere to be cut.",
        "Cut it outside, before that place.",
        COMPUTED,
    )
    .saying(&[way::SLAB, way::SLAB_FLAT]),
];
