# Findings of placement: a line, and in full.

measure-again = Measure again: the fit is within the error of the tape
    .detail = The top fits with { $spare } to spare; with a tape good to ±{ $tape } at least { $least } is needed to be sure. Measure the slab again, or make the top smaller.

edges-undescribed = Look at slab { $count ->
        [one] edge
       *[other] edges
    } { $edges }: the top uses { $count ->
        [one] it as it is
       *[other] them as they are
    }
    .detail = Nobody has said what slab { $count ->
        [one] edge { $edges } is like. It is taken as sawn
       *[other] edges { $edges } are like. They are taken as sawn
    } and no cut is made there. Look before the start: straight along a straightedge, square to the face, clean, no chips and no cracks that run in. If so, write { $sawn } under [slab]. If not, write { $rough } there and plan again: that makes { $cuts ->
        [one] one cut
       *[other] { $cuts } cuts
    } more at least.

turn-saves = Turned a little, the same top takes { $saved } less sawing
    .detail = At { $turn } to the slab's frame, with no edge along an edge, { $saved } less face is sawn than at the place taken here. It is harder to set out. To have it, write under [place]: { $to } and { $at }.

# Why there is no place, in one line.

place-none-at-any-turn = There is no place for the top on the slab at any turn, nor for one smaller by { $within } all round.
place-none-found = No place for the top was found on the slab. That there is none at some turn is not proved: try one under [place].
place-at-fault = The place under [place] is at fault: the top may not lie there. Without at and turn, a place is found.
place-not-here = The top may not lie where it is put.
place-none-begun = The top as asked can no longer be had from what is left of the slab.

# What stands against a position.

place-outside = the top with its allowance sticks out { $by } over slab { $part }; make the top at least { $by } smaller there, or take a larger slab
place-outside-within-tape = the top with its allowance sticks out { $by } over slab { $part }; that is within the tape's error ({ $tape }): measure again
place-on-flaw = the top comes { $by } too near to "{ $flaw }" (clearance { $clear }); move it, or make the top smaller
place-near-rough-edge = the top comes { $by } too near to slab edge { $edge }, which is rough (slab.rough_margin { $margin }): the stone is chipped there, and cracked further in; move it, or make the top smaller
place-round-near-edge = the top comes { $by } too near to slab edge { $edge }: a round top needs a strip of { $least } all round to be sawn; move it, or make the top smaller
place-along-flaw = the trim of { $part } would run along "{ $flaw }" for { $long }, within its clearance of { $clear }: the stone may break there; move or turn the top
place-narrow-strip = edge { $edge } would leave a strip of { $width } to saw off, least { $least }; move the top so that the edge lies on the slab's edge or farther in
place-factory-bow = edge { $edge } is bowed and marked factory, but a bowed edge is always sawn; give it another finish
place-not-on-factory-edge = edge { $edge } is marked factory but does not lie on a factory edge of the slab; place it on one, or give it another finish
place-no-sawn-outline = the allowances cannot be carried round the top's outline: an edge is too short or an arc too small for them; change the finish there, or the shape
place-no-sawn-cutout = the allowance leaves nothing of { $what } to saw: it is too small, or an arc of it is; make it larger, or change its finish
place-vein = the top's long direction lies { $angle } from the vein's; set top.vein = "any" if that does not matter

# Sizes that fit, by the box round the finished top.

place-fits-smaller = of the same shape, { $long } × { $deep } fits
place-fits-shorter = with less length only, { $long } × { $deep } fits
place-fits-narrower = with less depth only, { $long } × { $deep } fits
