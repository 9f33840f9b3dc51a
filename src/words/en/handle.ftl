# Findings of handling: a line, and in full.

crush-and-falls = { $stone }: it crushes what it falls on
    .detail = { $mass } presses with { $weight }. On edge it stands on { $thickness }: { $push } of push on its upper edge tips it, and leaning more than { $tips } it falls by itself, over a strip { $shadow } wide on either side: nobody stands there, and nobody tries to catch it. Tie it to something that holds before anybody lets go, one stone at a time; what it leans on must keep it from falling forward and its foot from slipping out. Leaning { $leans }, its upper edge pulls on the tie with { $pulls }, in this order; the tie and what it is fixed to must hold several times that. Set it down on two battens, never on the floor: fingers, toes and children out of the gap.

way-in-blocked = the top does not get in: { $place }
    .detail = On edge { $edge_short } are missing ({ $edge_measure }: needed { $edge_needs }, there { $edge_has }). Upright { $upright_short } are missing ({ $upright_measure }: needed { $upright_needs }, there { $upright_has }). What helps, one of these, or both where a pose lacks two measures: { $remedies }. Lying flat it does not go through either.

way-in-upright = the top passes only upright: { $place }
    .detail = On edge { $edge_short } are missing ({ $edge_measure }: needed { $edge_needs }, there { $edge_has }). Upright it goes through with { $spare } to spare. What helps, one of these, or both where a pose lacks two measures: { $remedies }. To stand it up on its short side takes { $stand_up } of clear height: do it before the place, with the aid and the people its weight asks for, and never on a stair.

way-in-flat-only = the top passes only lying flat, which is not advised: { $place }
    .detail = On edge { $edge_short } are missing ({ $edge_measure }: needed { $edge_needs }, there { $edge_has }). Upright { $upright_short } are missing ({ $upright_measure }: needed { $upright_needs }, there { $upright_has }). Flat it goes through with { $spare } to spare. What helps, one of these, or both where a pose lacks two measures: { $remedies }. Flat it may snap under its own weight: see the bending table, and carry it flat on a full board or not at all.

way-in-tight = tight way in: { $place }
    .detail = Carried { $pose } it goes through with only { $spare } to spare. Measure again at the narrowest place, and carry a batten of the stone's length and a board of its height through before the stone.

way-in-slab = cut before carrying in: the whole slab is stopped at { $place }
    .detail = On edge { $edge_short } are missing ({ $edge_measure }: needed { $edge_needs }, there { $edge_has }). Upright { $upright_short } are missing ({ $upright_measure }: needed { $upright_needs }, there { $upright_has }). What helps, one of these, or both where a pose lacks two measures: { $remedies }. The finished top goes through: unload and cut on this side of it.

way-in-slab-flat = cut before carrying in: the whole slab passes only lying flat: { $place }
    .detail = On edge { $edge_short } are missing ({ $edge_measure }: needed { $edge_needs }, there { $edge_has }). Upright { $upright_short } are missing ({ $upright_measure }: needed { $upright_needs }, there { $upright_has }). Flat it goes through with { $spare } to spare, and may snap under its own weight. What helps, one of these, or both where a pose lacks two measures: { $remedies }. The finished top goes through: unload and cut on this side of it.

tips-out-of-hands = { $stone }: it tips with people in these places
    .detail = The balance point lies { $off } beside what the places can hold. Put people on both sides of it.

lifter-off-the-edge = { $stone }: lifter { $lifter } has no edge to hold
    .detail = The place given lies { $away } from the edge, more than { $most }. Give places on the edge, in the top's own frame.

lifter-at-cutout = { $stone }: lifter { $lifter } lifts beside a cutout
    .detail = The place lies { $away } from a cutout, less than a hand's width, { $least }. Lift where the stone is whole, never by a rail.

carry-too-far = { $way } is too far to carry without a rest
    .detail = The guideline weights are for carries up to { $most } against the body. Set the stone down on edge on two battens on the way, or wheel it on a trolley.

brace-the-rail = { $rail } ({ $cutouts }): { $verdict }
    .detail = { $stone }: { $width } wide, { $length } long. Lying flat or in people's hands it is stressed { $together } with the other stone's help and { $alone } when it must take the bending alone, as when that side is lifted first; on edge on two supports: { $on_edge }; allowed { $allowed }. Before it is lifted clamp along it, on edge and touching all the way, straight timber of { $timber_width } × { $timber_depth } (pieces side by side: { $timbers }), at least { $timber_length } long, with padded clamps on whole stone at both ends: that leaves { $braced }. Carry it on edge; never hold or clamp it there.

brace-the-rail-on-a-frame = { $rail } ({ $cutouts }): { $verdict }
    .detail = { $stone }: { $width } wide, { $length } long. Lying flat or in people's hands it is stressed { $together } with the other stone's help and { $alone } when it must take the bending alone, as when that side is lifted first; on edge on two supports: { $on_edge }; allowed { $allowed }. No timber is stiff enough: bed the whole stone on a frame or board. Carry it on edge; never hold or clamp it there.

brace-the-neck = { $stone }, { $neck }: it must not carry the stone beyond it
    .detail = It is { $width } wide; { $hanging } hanging on it lying flat stresses it { $stress }, allowed { $allowed }. Hold the stone up on both sides of it whenever it lies flat. Before it is lifted clamp along it, on edge and touching all the way, straight timber of { $timber_width } × { $timber_depth } (pieces side by side: { $timbers }), at least { $timber_length } long, with padded clamps on whole stone at both ends: that leaves { $braced }.

brace-the-neck-on-a-frame = { $stone }, { $neck }: it must not carry the stone beyond it
    .detail = It is { $width } wide; { $hanging } hanging on it lying flat stresses it { $stress }, allowed { $allowed }. Hold the stone up on both sides of it whenever it lies flat. No timber is stiff enough: bed the whole stone on a frame or board.

narrow-rail = { $rail } ({ $cutouts }): narrower than the trade leaves it
    .detail = It lies beside a tap hole and is { $width } wide; { $least } is published as the least beside a cutout, and nothing less for a tap hole. Move the hole or make it smaller, or ask whether the stone can be stiffened from below for good.

guideline-is-not-a-limit = The lifting guideline is not a safe limit
    .detail = { $each } a person is for fit adults lifting close, at waist height, straight and seldom; it is less for many people, for wet hands, steps and rough ground. It is no promise that a lift below it is safe. The lifting equation is for lifting, not for carrying. Check your current rules.

tips-off-supports = The top does not lie still on its supports
    .detail = The supports do not reach round the balance point. Add or move supports before it is set down.

support-lifts-off = { $support } carries nothing
    .detail = The top does not press on it. Check its place and height; do not pull the top down to it.

falls-off-trestles = { $stone }: it does not lie on the trestles
    .detail = With trestles { $first } and { $second } from the slab's end its balance point is not between them, or it does not reach them. Move them before that cut, or leave lift.trestles out.

bends-on-trestles = { $stone }: two trestles are not enough
    .detail = On trestles { $first } and { $second } from the slab's end it is stressed { $stress }, { $times } times what is allowed. Bed it on a full flat board instead.

aid-too-weak = { $stone }: the lifting aid is not marked for its weight
    .detail = The aid ({ $aid }) is marked for { $rated }; this stone needs { $needs }. Use one that is marked for it, or a lighter stone: cut before it is moved.

aid-without-mark = what is marked on the { $aid }? It needs { $needs }
    .detail = Read the load marked on it and write it here; the heaviest is the { $stone }. No mark, no lift. In the job file: lift.rated.

in-slings-no-place = { $stone }: no place for two slings
    .detail = Wherever two slings pass it hangs bent further than is allowed. Brace it, or carry it bedded on a frame.

on-a-trolley = the trolley: on edge, tied, on level ground
    .detail = The heavier long side down, tied to the trolley's frame, somebody on either end and nobody beside it. To load it stand the trolley against that long side, wheels blocked, tilt the stone up about it onto the deck, and tie it before anybody lets go. Going down, it is held back from uphill. Maker's instructions come first.

on-a-trolley-numbers = { $stone }: it kills if it tips; a trolley marked for { $rated } or more
    .detail = On the trolley its balance point is { $height } above the floor, and it tips over on ground that falls across by { $tips } (standing still, hard tyres: sooner when it moves). It takes a push of { $push } at least on the level, and on a ramp of 1 in { $run } another { $ramp }, which also pulls it downhill.

under-a-vacuum-lifter = the vacuum lifter: marked for twice the weight, and a second securing
    .detail = Only on a dry, clean, sound, polished or honed face: never on a rough or split one, and nowhere across a flaw or a mend. On an upright face the cups hold by friction only: use the maker's figure for that. A second securing (strap, sling) under the stone at all times. Raise it a hand's breadth, wait, and look that every cup holds before it is moved. Maker's instructions come first.{ $wet ->
            [yes] {" "}This job cuts with water: wash the slurry off and let the face dry first.
           *[other] {""}
        }{ $face ->
            [porous] {" "}This stone is porous: air goes through it and the hold fails. Ask the maker, or use slings.
            [split] {" "}This stone is often sold with a split face: no cup holds on that.
           *[other] {""}
        }

under-a-vacuum-lifter-numbers = { $stone }: it kills if it drops; a vacuum lifter marked for { $rated } or more
    .detail = Cups in pairs about the balance point: { $cups }, and each carries { $each }.

under-a-vacuum-lifter-no-room = { $stone }: a vacuum lifter has no room
    .detail = It would have to be marked for { $rated } or more, but there is no room for a pair of cups about the balance point. Use slings or a trolley.

in-slings = the gantry: set up and used by somebody competent
    .detail = Hook over the balance point, edges padded, the slings tied so that they cannot slide together, a tag line at each end, nobody under or beside it. Raise it a hand's breadth and look that it hangs level before it is moved. Lifting gear is inspected, marked, and set up by a competent, where the law asks for it licensed, person.

in-slings-numbers = { $stone }: it kills if it drops; slings { $first } and { $second } from its left end
    .detail = From the lower end when upright. { $each } hang on each sling; with { $legs } between the legs each pulls { $factor } of the weight, { $tension }, and the hook hangs { $hook } or more above the stone.

not-a-hand-lift = not a hand lift: { $stones }
    .detail = { $masses }. { $people ->
            [one] One person may count on { $team }
           *[other] { $people } people lifting together may count on { $team }
        }; beyond about twice that the risk is serious even for fit, trained people. Name an aid in lift.aid: a trolley that carries it on edge, marked for { $rated } or more, on level ground only (push at least { $push }); a vacuum lifter marked for { $vacuum } or more on a dry, clean, unbroken face; a gantry or hoist with slings, marked for { $rated } or more and set up by somebody competent with lifting gear. Tilting the heaviest up on edge takes { $tilt } at the far side at the start.

breaks-in-hands = it would break in people's hands: { $stones }
    .detail = { $masses }. However { $people ->
            [one] one person holds it
           *[other] { $people } people hold it
        }, flat or on edge, it is bent further than is allowed. Brace it, bed it on a board, or name an aid in lift.aid: a trolley marked for { $rated } or more; a vacuum lifter marked for { $vacuum } or more; a gantry with slings, set up by somebody competent.

more-than-four = too many people to lift as one: { $people }
    .detail = More than { $most } people are unlikely to work as a team, and no share of their strength is published to count on. Use an aid, or fewer people and a lighter piece.

lifter-over-guideline = more than the guideline figure: { $stones }
    .detail = { $masses }. { $people ->
            [one] One person may count on { $team }
           *[other] { $people } people lifting together may count on { $team }
        }: a figure to look closer at, no limit. Before it is lifted settle who lifts, the way, and where it is rested; more people, a lighter piece or an aid is better. Tilting the heaviest up on edge takes { $tilt } at the far side at the start.

tilt-over-guideline = settle how it is tilted up on edge, which takes at the far side: { $stones }
    .detail = { $people ->
            [one] One person may count on { $team }
           *[other] { $people } people together may count on { $team } in all
        }. Take it on edge from the delivery to where it is needed. { $hands ->
            [0] What takes more than about twice that no hands turn: there the risk is serious even for fit, trained people. A hoist, a vacuum lifter or a frame that tilts with the stone tied to it, by somebody competent: settle which before it comes.
           *[other] To turn it, block the long side it turns about so that it cannot slide, everybody at the far long side, raise it in steps on blocks, and have the tie ready before it stands; or turn it with a hoist or a vacuum lifter.
        } Nobody stands on the side it can fall to.

bends-flat-always = { $stone }: never flat on two supports
    .detail = Lying { $how }: { $stress } where it is { $width } wide, { $at } from the end; allowed { $allowed } (strength ÷ safety factor), { $times } times, even on the best two supports. Keep it on edge, or bed it on a full flat board.{ $flaws ->
            [0] {""}
            [one] {" "}The slab has a flaw: across it the strength does not hold.
           *[other] {" "}The slab has { $flaws } flaws: across them the strength does not hold.
        }

bends-flat = { $stone }: flat it can snap when it is held by its ends
    .detail = Lying { $how }: { $stress } where it is { $width } wide, { $at } from the end; allowed { $allowed } (strength ÷ safety factor), { $times } times. Never lift one end of it while it lies flat. Flat it may lie only on supports { $first } and { $second } from the left end (lower end when upright), where it is { $best }; carry it on edge.{ $flaws ->
            [0] {""}
            [one] {" "}The slab has a flaw: across it the strength does not hold.
           *[other] {" "}The slab has { $flaws } flaws: across them the strength does not hold.
        }

carry-on-edge-not-by-its-ends = { $stone }: not even on edge by its ends
    .detail = Lying { $how }: { $stress }; allowed { $allowed }, { $times } times. Hold or stand it { $first } and { $second } from the end, where it is { $best }. Sound stone is assumed.

carry-on-edge-braced = { $stone }: not even on edge before it is braced
    .detail = Lying { $how }: { $stress }; allowed { $allowed }, { $times } times. Brace its narrow parts first, or carry it bedded on a frame. Sound stone is assumed.

flaws-and-strength = { $count ->
            [one] The slab has a flaw
           *[other] The slab has { $count } flaws
        }: the strength figures do not hold across { $count ->
            [one] it
           *[other] them
        }
    .detail = Every stress here assumes sound stone; at a fissure or a mend it may break far below it. Keep it on edge, on a full board or frame.

trestles-are-moved = the trestles are moved before cut { $cuts }
    .detail = No one place serves all the cuts. Lift the stone off as its weight asks for, move them, lay it down again; the new places stand on the card of that cut.

rests-poorly = put more under the top: { $what }
    .detail = { $parts }. Supports closer together, beside every cutout, farther out. Neither screw nor glue holds a top that tips.

# What is wrong with how the top rests: in short, and in full.
rests-overhang = overhang
rests-overhang-part = { $edges } { $count ->
            [one] reaches
           *[other] reach
        } { $reach } beyond the supports (published limit: { $limit })
rests-overhang-person = overhang
rests-overhang-person-part = { $edges } { $count ->
            [one] reaches
           *[other] reach
        } { $reach } beyond the supports (published limit: { $limit }) and with a person on the edge it is stressed to { $times } of what is allowed
rests-span = span
rests-span-part = the widest stretch without support is { $span } (published limit: { $limit })
rests-tips = it tips when somebody leans on it
rests-tips-part = a person of { $force } { $place } tips it off its supports
rests-bends = somebody leaning on it
rests-bends-part = a person of { $force } { $place } stresses it to { $times } of what is allowed
rests-bends-elsewhere = somebody leaning on it
rests-bends-elsewhere-part = a person of { $force } { $place } stresses it to { $times } of what is allowed, most { $section }
lean-worst = at the worst place
lean-rail = at the { $rail } ({ $cutouts })
lean-overhang = on the overhang at { $edge }
lean-between = between supports { $first } and { $second }
lean-over = over support { $support }
rests-over = { $support }
rests-over-part = { $support } carries up to { $carried }, more than its limit of { $limit }
rests-over-person = { $support } with a person
rests-over-person-part = { $support } carries up to { $with_person } with a person of { $force } (limit { $limit })
none-published = nothing for stone so thin

# A stone in a list of stones.
stone-of-mass = { $stone } { $mass }

# What would make a way passable.
remedy-upright = take it upright, which needs { $n } of height
remedy-cut-to = cut it to at most { $n } long before this place
remedy-widen-before = make the way before the corner at least { $n } wide
remedy-widen-after = make the way after the corner at least { $n } wide
remedy-widen = make it at least { $n } wide: take off the leaf, the stops, a frame
remedy-raise = make at least { $n } of clear height for it { $how }
