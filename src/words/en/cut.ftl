# Findings of cuts and pieces: a line, and in full.

waste-not-freed = Cuts that do not meet leave waste on the top
    .detail = Parts of the waste that still hang on after the last cut: { $parts }, the largest of { $area } about { $along } along AB and { $up } up from corner A. It hangs on at: { $places }. No cut is missing, but those beside it meet neither each other nor the edge of the stone. Part it there with a core hole, or with one more plunge beside the last, on the waste side; never break it off.

said-weight = The seller's weight and the computed weight differ
    .detail = Said { $said }, computed { $computed }: { $off } %, more than { $tolerance }. One of stone, size or thickness is wrong. Plan the lift with the heavier figure and weigh the slab if you can.

fissure-in-waste = "{ $flaw }" runs through { $pieces }: it may break there
    .detail = Put bearers on both sides of it under { $pieces } before the first pass, so that each part lies by itself if it breaks. Never lift a piece flat or by one end across it: clamp straight timber over it on both faces first, or let it break and carry off the parts.{ $crossed ->
            [yes] {" "}Cutting across it (cuts: { $cuts }): shallow steps and no pressure there.
           *[no] {""}
        }

waste-needs-support = Waste too heavy to be held by hand comes free
    .detail = Waste piece (cut that frees it) and its weight at most: { $pieces }. Carry every piece over { $limit } on its own supports, level with the kept stone on both sides of the cut, before the first pass. A sagging piece closes the kerf on the disc.

curve-waste-heavy = The waste of a curve drops in a piece too heavy to hold
    .detail = Waste piece (cut that frees it) and its weight at most: { $pieces }. That is more than { $limit } (passes.waste_piece), and no straight cuts clear of the kept stone part it further. Bear it from below over its whole length before the last ring; nobody holds it, no foot under it.

stopped-cut-too-short = No disc of the kit finds room: { $places }
    .detail = There are { $room } between two stops; "{ $disc }" cuts { $length } long in the face when it is right through. With the same flange the smallest disc that gets through, { $least } across, cuts { $shortest } long; the largest that finds room is { $most } across. { $verdict } A core bit of about { $bit } makes it with a row of holes.{ $waste }

sawn-with-another = Edge { $edge } is sawn with the edge in line with it
    .detail = The trim of the edge in line with it makes edge { $edge } too, and leaves { $left } on it in place of { $allowance }. Grind off the difference, { $over }, or give both edges the same finish.

disc-too-small = The disc does not get through the stone
    .detail = "{ $disc }" cuts { $deepest } deep at most (diameter { $diameter }, obstruction { $obstruction }, plate { $plate }); { $needed } are needed: { $short } short. With the same flange a disc of at least { $least } is needed, on a machine made for that size.

no-room-for-guide = No room on the slab for the guide: { $places }
    .detail = The guide's edge is { $offset } from the cut; the slab is narrower than that on both sides of it, so the cut is not planned. Lay a board as thick as the stone ({ $thick }) against the slab, face level with face, clamp both to one bench and let the guide lie on the board. Or use a jig with a smaller offset (guide.offset).{ $waste }

core-holes-close = Core holes of cut { $cut } overlap or leave a thin web
    .detail = The nearest two are { $apart } from middle to middle, bit { $bit } across: a bit that begins beside a hole runs into it, and less than { $web } of stone between two holes breaks out. Hold the bit in a template clamped over each middle (a board with a hole of the bit's size), and press lightly.

rail-too-narrow = Cutout { $cutout }{ $called } leaves too narrow a rail at { $edge }
    .detail = cutout { $cutout } leaves a { $rail } of { $width }{ $tap }, least { $least }; move it { $by } { $away }. That rail lies along { $edge } of the top.

rails-add-up = Cutout { $cutout }{ $called }: the rails on both sides of it are too narrow together
    .detail = { $rail } of { $width }{ $tap }, least { $least }; { $other } of { $other_width }{ $other_tap }, least { $other_least }. Together { $sum }, where { $needed } are needed: moving the cutout helps neither. What gives is the cutout, { $short } smaller that way, or the top, as much larger; otherwise brace both rails before the stone is moved.

rail-too-narrow-between = Cutouts { $first }{ $called_first } and { $second }{ $called_second } leave too narrow a rail between them
    .detail = cutouts { $first } and { $second } leave a rail of { $width } between them, least { $least }; move them { $by } apart.

hangs-on-a-strip = Only { $about } of stone are left between cutout { $cutout } and the edge
    .detail = That strip is { $width } wide, narrower than the stone is thick ({ $thick }). It breaks in the sawing or in the lifting. Move or change what leaves it, to at least { $least }.

hangs-on-a-strip-between = Only { $about } of stone are left between cutouts { $first } and { $second }
    .detail = That strip is { $width } wide, narrower than the stone is thick ({ $thick }). It breaks in the sawing or in the lifting. Move or change what leaves it, to at least { $least }.

hangs-on-a-strip-corner = Only { $about } of stone are left behind the inside corner at { $edge }
    .detail = That strip is { $width } wide, narrower than the stone is thick ({ $thick }). It breaks in the sawing or in the lifting. Move or change what leaves it, to at least { $least }.

curve-without-arm = The curve at { $part } is set out from its chord, without the circle jig
    .detail = The arm would be { $arm }; the jig goes from { $shortest } to { $longest }: { $by } { $which }. Strike the chord and lay the straight guide on the two marks of each station; or make an arm that fits.

arm-out-of-reach = The circle jig cannot be set for a whole circle ({ $part })
    .detail = The arm would be { $arm }; the jig goes from { $shortest } to { $longest }: { $by } { $which }. A whole circle has no chord to set it out from. Make an arm that fits, or choose another radius.

corner-ground-by-hand = The curve at { $part } is ground by hand
    .detail = The trims beside it and their kerfs leave no stone for a plunge. Mark the curve on the stone and grind it by hand after the last cut.

inside-corner-radius = { $part } gets a radius of { $left }
    .detail = Radius asked for: { $given }{ $sharp }. A crack begins in an inside corner of less than { $least }. The plan leaves a radius of { $left } there, that of the core hole.{ $still }

inside-corner-nearest-radius = { $part } gets a radius of { $left }
    .detail = Radius asked for: { $given }. The nearest core bit leaves { $left }, { $ground } of stone in the corner. Grind it off by hand, or keep it.

much-to-grind = { $part }: much is left to grind
    .detail = "{ $disc }" cuts { $length } long in the face; inside a radius of { $radius } it must stand { $face } from the middle, and leaves { $left } beside the middle of every slot, more than { $much }. A smaller disc or a core bit of { $bit } or less leaves less.

no-disc-for-hollow = { $places }: no disc of the kit can cut this hollow
    .detail = "{ $disc }" cuts { $length } long in the face; the hollow has a radius of { $radius }, { $across } across. With the same flange the smallest disc that gets through, { $least } across, cuts { $shortest } long; the largest that finds room is { $most } across. { $verdict }{ $either } A core bit of { $bit } makes it in one hole, a smaller one in a chain of holes.{ $waste }

inside-corner-needs-core-bit = Core hole needed: { $places }
    .detail = { $kit } A crack begins in a sharp inside corner: it needs a radius of at least { $radius }, so a core bit of at least { $least } across, drilled before the cuts that stop there. Name it in the job file ([[core_bit]]).{ $waste }

# One piece of a list: its name, the cut that frees it, its weight.
piece-of-cut = { $piece } ({ $cut }): { $mass }

# A piece of the boundary of the top, or of an opening.
part-edge = edge { $name }
part-edge-opening = edge { $name } of cutout { $cutout }
part-corner = corner { $name }
part-corner-opening = corner { $name } of cutout { $cutout }
part-corners = corners { $name }
part-corners-opening = corners { $name } of cutout { $cutout }
part-all-round = the whole circle
part-all-round-opening = the whole circle of cutout { $cutout }

# What stays on the top for want of a cut, behind the cause.
waste-stays = {" "}Waste stays on the top for it, parts: { $parts }, the largest of { $area } about { $along } along AB and { $up } up from corner A. The job cannot be finished from this sheet.

# What a job calls a cutout, behind its number.
cutout-called = {" "}({ $name })

piece-held-below = No core bit of the kit parts the piece of cutout { $cutout }{ $called } at the underside
    .detail = The disc is round: at the underside each cut ends { $run_out } short of its end in the face, and there the piece hangs on. Holes beside the ends, drilled from above before the sawing, part it; the kit has no bit that finds room for them, so they are neither placed nor in the minutes. Bring one and enter it as [[core_bit]], or have the opening cut by a shop. Nobody works underneath, and the piece is never broken out: the crack runs into the top.

opening-narrower-than-kerf = The kerf has no room in cutout { $cutout }{ $called }
    .detail = Sawn along one side, a kerf of { $kerf } goes into the stone to keep at the other. Make the opening wider than the kerf, take a thinner disc, or have it cut by a shop.{ $waste }
