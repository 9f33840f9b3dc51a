# The bench pages, the annex and the answers in a terminal.

bench-head = plan { $plan } · page { $number } of { $count }
bench-head-annex = plan { $plan } · annex, page A{ $number } of A{ $count }
bench-foot = Local rules, makers' instructions and competent people come before this sheet.
bench-foot-cut = Score first. Never twist, never push sideways. After a pinch: off, wait, free it, in again only at full speed.
bench-stop = STOP
bench-kills-now = kills
bench-kills-later = kills later
bench-maims = maims
bench-lasting = stays for life
bench-breaks-stone = breaks the stone
bench-blank = fill in
bench-sentences = { $a } { $b }
bench-term = { $term }

# At a glance
bench-glance = At a glance
bench-glance-title = At a glance: { $work }
bench-work-straight = { $count ->
    [one] saw one edge
   *[other] saw { $count } edges
 }
bench-work-curves = { $count ->
    [one] plunge one curve
   *[other] plunge { $count } curves
 }
bench-work-openings = { $count ->
    [one] cut one opening
   *[other] cut { $count } openings
 }
bench-glance-alt = The slab from above with the top, { $length } by { $width }, the cuts in order and the waste pieces with their weights.
bench-glance-open = Before the machine starts: settle each, write what was found, then tick
bench-glance-warnings = What this job can do to you, worst first
bench-top-size = { $length } × { $width }
bench-waste-name = { $name } { $mass }
bench-keep = keep
bench-top-corner = corner { $corner }
bench-practice-here = practise
bench-tile-top = finished top
bench-tile-slab = slab
bench-tile-waste = heaviest waste
bench-tile-sawing = disc in stone
bench-tile-setting = setting up
bench-tile-silica = silica in the mud
bench-tile-silica-dry = silica in the dust
bench-tile-likely = at most; likely { $mass }
bench-tile-likely-thick = at most; likely { $mass }; { $thick }
bench-tile-no-waste = no piece falls off
bench-tile-after = { $name }, cut { $cut }
bench-tile-shares = { $count ->
    [one] one person, one day
   *[other] share among { $count } people or days
 }
bench-tile-with-other = with { $other } of other work: { $shares }
bench-tile-without-edges = { $shares }; without finishing
bench-not-counted = Grinding, polishing and easing the edges is in no figure here unless [[today]] names it; it counts in the same person's day.
bench-tile-set-ups = { $count ->
    [one] one set-up
   *[other] { $count } set-ups
 }
bench-tile-of-dust = at most, in { $mass } of stone

# Mark out
bench-mark = Mark out
bench-mark-title = Mark out every line before the first cut
bench-mark-rule = Strike every line right across the whole slab before the first cut. A cut takes a mark away; the line on the stone that is left still shows.
bench-mark-alt = The slab from above with every line to strike, its marks at the edges, and every pivot and hole.
bench-mark-what = point
bench-mark-off = off the struck line
bench-mark-off-that = off line { $cut }
bench-mark-named = { $mark }
bench-mark-off-short = { $cut }: { $distance }
bench-mark-on-short = on { $cut }
bench-mark-off-line = line { $cut }: { $distance }
bench-mark-on-line = on line { $cut }
bench-mark-check = check
bench-mark-line-check = its check
bench-mark-on-curve = on curve { $cut }, straight
bench-mark-keep = line to keep
bench-mark-guide = guide, from same
bench-mark-tape-from = tape
bench-marked = { $mark } { $distance }
bench-marked-from = { $mark } { $corner } { $distance }
bench-tape = { $corner } { $distance }
bench-mark-pivot = { $mark } pivot
bench-mark-chord = { $mark } chord
bench-mark-hole = { $mark } hole
bench-mark-stop = { $mark } stop
bench-mark-both = Cut { $cut }: { $distance } from corner { $corner } of the top along both lines.
bench-mark-along = Cut { $cut }, from corner { $corner } of the top: { $before } back, { $after } on.
bench-mark-guides = Each guide's line runs { $offset } from its line to keep, from end to end.
bench-mark-rough = A corner at a rough edge is where strings along its two edges cross: mark it first.
bench-mark-tape = Hold the tape's hook on the corner itself. Off by more than { $tape } at a check: measure again, do not shift the line. { $guides }
bench-mark-between = A thirty-second of an inch is the middle between two marks of a tape that shows sixteenths.
bench-end = { $mark }: { $distance } from { $corner } on { $edge }

# Straight cuts
bench-straight = Straight cuts
bench-straight-title = Straight, edge { $edge }, { $length } long, stone { $thick }
bench-relief-title = Relief cut at { $edge }, { $length } long, stone { $thick }
bench-straight-alt = The slab before the cut along edge { $edge }, from above: guide, bearers, where the sawyer stands, and what comes free: { $waste }.
bench-you = you
bench-depth = depth
bench-depths = depths
bench-trestles-move = First lift the stone off and move the trestles: { $first } and { $second } from the slab's end.
bench-trestles-board = First lift the stone off: from here on it lies on a full flat board.
bench-late = Only after cut { $cut }, which has its own page.
bench-fact-guide = guide
bench-fact-ends = its ends
bench-fact-moves = it lies at
bench-fact-how = how
bench-fact-bearers = bearers
bench-fact-drill = drill first
bench-fact-when = when
bench-guide-kept = { $offset } from the line to keep, on the stone that stays
bench-guide-waste = { $offset } from the line to keep, on the waste
bench-ends = { $first }; { $second }
bench-moves = { $places } from { $mark }, each in turn at every depth{ $clamp ->
    [no] ; where no clamp reaches, a suction clamp, tried by hand
   *[yes] {""}
 }
bench-stone-end = the stone's end towards { $mark }
bench-span = { $from } to { $to }
bench-how = { $parts }
bench-how-far-end = At every depth the last { $length } at { $last } first, from outside inwards; then from the other end up to it.
bench-how-stop = Stops at { $mark }: the disc's centre no nearer than { $short }. What the round disc leaves goes last and from above: core bit in the waste, then ground off; never from underneath.
bench-how-stop-hole = Ends in the drilled hole at { $mark }: the disc's centre no nearer than { $short }.
bench-how-allowance = { $left } stays on for finishing.
bench-how-breaks = From { $depth } on it can break off.
bench-bearers = on each side, { $off }: { $at } along from { $mark }
bench-bearers-even = { $count } on each side, { $off }: from { $first } to { $last } along from { $mark }, every { $step }
bench-bearers-off = { $off } off the line
bench-bearers-off-each = { $kept } off the line, { $waste } under the waste
bench-struck = by the struck line { $first } to { $second }: an end of it has gone
bench-drill = Ø { $bit } at { $marks }, wet, before the disc comes near
bench-free-heavy = { $name } comes free: up to { $mass }. It lies on its own bearers, level, before the first pass. No hand, foot or knee under it; nobody holds it.
bench-free-carried = { $name } comes free: up to { $mass }. It lies on its own bearers, level, before the first pass. No hand, foot or knee under it; nobody holds it. { $away }
bench-away = Then { $people } people { $how ->
            [flat] carry it flat to two battens on the floor, a fifth of its length in from its ends.
           *[edge] turn it up on its long side, carry it on edge to two battens at a wall and tie it there.
        }
bench-away-more = It takes { $people } people to carry it off, { $how ->
            [flat] flat
           *[edge] on edge
        }, and this job has fewer: get them or an aid, or saw it across where it lies, a bearer on both sides of the line.
bench-away-aid = Then { $aid ->
            [trolley] { $people } people ({ $half }) turn it up on its long side and the trolley takes it, tied,
            [vacuum] the vacuum lifter takes it, on edge,
           *[gantry] the hoist takes it, on edge in two slings,
        } to two battens at a wall; tie it there.
bench-away-sawn = No team carries it off: saw it across where it lies, a bearer on both sides of the line, or bring an aid.
bench-free-light = { $name } comes free: up to { $mass }. A bearer under it before the first pass; no hand below.
bench-free-flaw = "{ $flaw }" may break it: bearers on both sides of that, straight timber clamped over it before it is lifted.
bench-free-station = { $name } comes free: up to { $mass }, about station { $station } of the last depth. A bearer under it before the first pass; no hand below.
bench-measured = edge { $edge }, short or over (0 wanted)
bench-cut-by = cut by, time

# Curves
bench-curve = Curve, cut { $cuts }
bench-curve-title = { $count ->
    [one] Plunge one station of the curve at { $corners }, to { $depths } depths
   *[other] Plunge { $count } stations of the curve at { $corners }, to { $depths } depths
 }
bench-curve-alt = The curve from above with its stations, numbered, the pivot or the chord, and the waste.
bench-curve-how = How
bench-curve-line = radius { $radius }; { $left } stays on for finishing
bench-curve-line-inside = radius { $radius }; { $left } stays on for finishing; the stations on radius { $stations }
bench-curve-rise = chord { $chord }, the curve rises { $rise } over it in the middle
bench-curve-struck = { $points }, struck before cut 1: see Mark out
bench-curve-swing = { $mark }: { $radius } from each of { $points }
bench-curve-stations = Strike the line about the pivot. Tape every station straight from the mark beside its number; neighbours are { $apart } apart.
bench-curve-ordinates = Strike the chord. Set off every station along it and square from it; neighbours are { $apart } apart.
bench-curve-plunge = Disc square to the arm at the station: near face { $near } from the pivot, jig's mark { $arm }. Stand beside its line, never in it. Straight down, straight out. Never steer it round.
bench-curve-plunge-guide = Guide's edge { $offset } from the station and { $gap } from the curve { $half } to either side of it; near face on the curve. Stand beside its line, never in it. Straight down, straight out. Never steer it round.
bench-curve-plunge-square = Strike the arc's centre, { $radius } from both ends of the chord. The disc stands square to the line from the centre through the station, its outer face, the one away from the centre, at the station; the guide's edge { $offset } beyond it. Stand beside its line, never in it. Straight down, straight out. Never steer it round.
bench-curve-rings = All stations to one depth, then all to the next: { $depths }. The stone is { $thick }.
bench-curve-ridges = Ridges of { $left } stay: take them down wet with a diamond cup or flap disc, 60 grit, along the curve, as far as the line; then finish with 120, 200, 400.
bench-fact-pivot = pivot
bench-fact-chord = chord
bench-fact-stands = it stands on
bench-fact-swing = found by
bench-fact-line = line to keep
bench-arm = jig's mark { $length }
bench-pivot-top = the top: tape or suction, never drilled
bench-pivot-cutout = stone that falls out later, still in place
bench-pivot-waste = the waste: keep that piece in its place until the curve is done
bench-pivot-off = beside the stone: fix something of the same height there
bench-station = no.
bench-station-along = along
bench-station-off = off
bench-station-off-waste = off, into the waste
bench-relief-first = First the relief cuts, so that the waste comes off in pieces.
bench-relief-cut = cut
bench-relief-guide = guide on marks
bench-relief-length = length
bench-two-marks = { $first } and { $second }

# Openings
bench-opening = Opening { $number }
bench-opening-title = Opening: { $what }, stone { $thick }
bench-opening-alt = The opening from above with its holes, cuts and guide lines, and the narrowest stone beside it.
bench-opening-corner-alt = A corner of the opening: the struck lines and the points off them
bench-opening-what = what
bench-opening-marks = marks
bench-opening-how = how
bench-opening-depths = depths
bench-depths-straight = straight
bench-depths-curve = round
bench-opening-stop = centre stays { $short } short of { $mark }
bench-opening-hole = drill Ø { $bit }
bench-opening-straight = straight, { $length }
bench-opening-curve = round, { $length }
bench-opening-swing = radius { $radius }, arm { $arm }, { $count } stations
bench-opening-plunges = { $count } plunges along a chord of { $chord }, rise { $rise }
bench-opening-drill = wet, straight down, from above
bench-opening-stations-chord = Stations of cut { $cuts }: along the chord from mark e, and square off it
bench-opening-stations-pivot = Stations of cut { $cuts }: straight from the struck marks
bench-opening-step-drill = Drill every hole first: the disc then stops in a hole, and no cut runs on into the corner.
bench-opening-step-saw = Saw from hole to hole, each cut to its full depth before the next. The disc is round: at the underside the ends of the cuts still hold the piece. Free it from above, the core bit in the waste across each end, the rest ground off; nobody works underneath. The stone must be borne all round and under the piece that drops.
bench-opening-step-saw-parted = Saw from hole to hole, each cut to its full depth before the next. The disc is round: at the underside the ends of the cuts would still hold the piece; the holes beside them part it there, and what stays on is ground off. Nobody works underneath. The stone must be borne all round and under the piece that drops.
bench-opening-step-last = Bearers under the piece before the first cut, nobody below; the last end frees it. From now on the stone is weak beside the opening: splints on before it moves.
bench-rail = { $what }
bench-rail-holds = { $width } wide: holds; carried on edge, never by the strip
bench-rail-brace = { $width } wide: only with splints. { $splint }
bench-rail-weak = { $width } wide: too weak even with splints. { $splint }
bench-splint = { $count } × timber { $wide } × { $high }, { $length } long, clamped on before the first cut here

# Moving
bench-move = Move and set down
bench-move-title = On edge, by hand, tied when it stands
bench-move-title-trolley = On edge on the trolley, tied, on level ground
bench-move-title-vacuum = On edge under the vacuum lifter
bench-move-title-gantry = On edge in two slings
bench-move-slab = Slab to the trestles, { $alike ->
    [yes] either side down
   *[no] { $side } down
 }
bench-move-top = Top to its place, { $alike ->
    [yes] either side down
   *[no] { $side } down
 }
bench-move-alt = The stone on edge with its aid and a person at either end, to scale; it weighs up to { $mass }.
bench-move-on-edge = Never flat by its ends: it snaps. On edge all the way, turned flat only over both trestles or its own place. Never lift one end.
bench-move-tied = On edge all the way, tied whenever it stands.
bench-turn-slab = on edge beside both trestles, what carries it blocked; the bottom edge on to both at once, then flat: { $hands ->
    [none] no hands, but a hoist, a vacuum lifter or a tilting frame
    [open] as page 1 settles it: everybody at the far long side, nobody below
    [aid] turned by the lifter, two people guide it
   *[team] everybody at the far long side, nobody below
 }. Tie off last.
bench-turn-top = off the trestles as the slab came, the other way round; on edge beside its place, down on to padded battens across it: { $hands ->
    [none] no hands, but a hoist, a vacuum lifter or a tilting frame
    [open] as page 1 settles it: everybody at the far long side, nobody below
    [aid] turned by the lifter, two people guide it
   *[team] everybody at the far long side, nobody below
 }. Battens out one by one, the long side raised with wedges, no finger under it.
bench-fact-flat = slab, laid flat
bench-fact-set = top, set down
bench-move-hands = Where hands go
bench-move-hands-on-edge = Where hands go: it hangs on edge in them, never flat
bench-move-trestles = Two trestles from the side: distances from end { $corner }, and the most of the stone that each bears
bench-move-supports = What it stands on: the middle of each support, as drawn
bench-hands-alt = The stone from above with a person at each place, and what each carries.
bench-hands = { $number }: { $mass }
bench-trestles-alt = The slab on two trestles, { $first } and { $second } from its end.
bench-supports-alt = The top from above on its supports with what each carries.
bench-supports-short = Not enough as it stands: more under it first, see page 1.
bench-free-span = { $length } at the widest; at most { $limit }
bench-overhang = { $edge }: { $length }; at most { $limit }. Put a support there
bench-overhang-person = { $edge }: { $length }; nobody leans there, or put a support there
bench-bearing-over = a person leaning on the top puts { $person } on it, it may carry { $limit }: nobody sits or leans there, or add a support
bench-support-name = { $number } { $what }
bench-support = { $along } from the left, { $up } up; up to { $mass } of stone on it
bench-fact-trolley = trolley
bench-fact-vacuum = vacuum lifter
bench-fact-slings = slings
bench-fact-lift = by hand
bench-fact-fall = if it falls
bench-fact-free = without support
bench-fact-over = beyond supports
bench-trolley = marked for { $rated } or more; push { $push } on the level
bench-rated = marked for { $rated } or more
bench-slings = { $each } on each, { $tension } in each leg at { $angle }
bench-fall = nobody within { $clear } on either side; tie it
bench-lift-never = never: { $people } together count on { $limit }{ $two }
bench-lift-two = {""}, two on { $mass }
bench-lift-above = above the figure: one carries { $carried }, the figure is { $limit }; settle it first (page 1)
bench-lift-over = not like this: one would carry { $carried }, the figure is { $limit }
bench-lift-tips = not like this: it tips over
bench-lift-breaks = not by hand: flat or on edge it is bent too far; brace it or use an aid
bench-lift-many = not like this: { $people } people do not lift as one
bench-lift-within = { $people } people, each up to { $most }; no figure makes a lift safe

# Dust, noise, hands
bench-dust = Dust, noise, hands
bench-dust-title = Dust, noise, hands
bench-dust-order = Strongest first: what takes the dust away
bench-dust-limits = How much, how long
bench-dust-settled = Settled for this job
bench-control = { $state ->
    [done] { $what }: planned
    [open] { $what }: STILL OPEN
   *[other] { $what }: see to it on the day
 }
bench-fact-mask = mask here
bench-fact-hands = hands
bench-fact-ears = ears
bench-fact-slurry = slurry
bench-fact-slurry-dry = dust
bench-fact-silica = what it holds
bench-fact-vacuum-class = vacuum
bench-mask-at-hand = { $mask }; clean-shaven, seal checked; on before the first cut, off when the floor is clean
bench-hands-allowed = { $action } a day for each person, all that shakes counted in; this job takes { $job }
bench-hands-other = { $hands }, other work counts as { $other }
bench-hands-never = this machine shakes too much for any minute: another machine
bench-ears = { $level } at the ear: protection on before the first start; without it { $minutes } fill the day
bench-slurry = about { $mass }, buckets: { $buckets }; scraped and vacuumed wet, never down a drain
bench-bags = { $bags ->
    [one] one extractor bag
   *[other] up to { $bags } extractor bags
 }
bench-nothing-caught = nothing catches it
bench-silica = up to { $dust } of stone, { $silica } of it silica
bench-wear-mask = Mask: factor { $factor } or more
bench-wear-mask-here = { $mask }: factor { $factor }
bench-wear-mask-ready = Mask on while cutting, until the floor is clean
bench-wear-mask-assess = Mask: have the exposure assessed first
bench-wear-ears = Ears: { $level }
bench-wear-eyes = Goggles and face shield
bench-wear-hands = Tight gloves, no loose cuffs
bench-wear-feet = Boots with caps that do not slip
bench-wear-disc = Disc: keeps spinning after the switch is off

# Helper
bench-emergency = Emergency number: { $number }
bench-vacuum-off = Vacuum is switched off at
bench-helper-weight = The slab weighs up to { $slab }, the top up to { $top }. { $hands ->
    [none] Nobody lifts them by hand.
    [top] Nobody lifts the slab by hand, nobody the top alone.
   *[both] Nobody lifts them alone.
 }

# The day and its record
bench-day = Day and record
bench-day-title = The day, and what happened
bench-day-what = what
bench-day-minutes = takes
bench-day-at = done at
bench-day-read = Read the helper's page aloud, try the stop signs, fill in page 1
bench-day-unload = Unload the slab on edge, tied; then flat on the trestles
bench-day-mark = Mark out and check every line; practise in the waste
bench-day-straight = Cut { $cut }, edge { $edge }: { $waste } comes off
bench-day-curve = Cut { $cuts }, curve { $edge }
bench-day-opening = Cuts { $cuts }, opening: { $what }
bench-day-sum = All cuts: { $stone } with the disc in the stone, { $setting } setting up
bench-day-move = The top on edge, tied, to its place
bench-day-clean = Slurry up while wet, floor rinsed, then masks off
bench-day-clean-dry = Dust vacuumed everywhere, then masks off
bench-day-bring = Bring
bench-day-practice = Practise in the waste first
bench-day-wrong = When it goes wrong
bench-day-started = started
bench-day-ended = ended
bench-day-initials = initials
bench-day-date = date
bench-day-annex = Working, tables, every warning in full and the sources: kerfwright sheet JOB --annex
bench-bring-guide = guide
bench-bring-guide-is = straight, { $length }, and two clamps{ $suction ->
    [yes] , a suction clamp
   *[no] {""}
 }{ $jig ->
    [yes] ; circle jig and its pivot
   *[no] {""}
 }
bench-bring-discs = discs
bench-bring-discs-are = { $discs }, and a spare{ $grind ->
    [yes] ; diamond cup or flap discs to grind with
   *[no] {""}
 }
bench-bring-bits = core bits
bench-bring-bits-are = { $bits }, made for the speed of the machine that turns them; a template to guide each
bench-bring-bearers = bearers
bench-bring-bearers-are = { $count } softwood blocks of one height, { $long } long, and wedges; laid before the slab{ $edges }
bench-bring-bearers-edges = {""}; { $count } are for edges without a cut
bench-bring-deck = deck
bench-bring-deck-are = boards { $thick } thick or more along the slab over both trestles, { $length } long, { $wide } wide in all; the bearers on them
bench-bring-turn = to turn
bench-bring-turn-is = hoist, vacuum lifter or tilting frame
bench-bring-carry = to carry
bench-bring-carry-is = { $aid ->
    [trolley] trolley marked for { $rated }, two trestles
    [vacuum] vacuum lifter marked for { $rated }, two trestles
    [gantry] gantry with slings for { $rated }, two trestles
   *[none] two trestles
 }, ties, battens, vacuum; what the signs show
bench-bring-tape = marking
bench-bring-tape-is = { $rolls ->
    [one] one { $roll } roll of masking tape
   *[other] { $rolls } rolls of masking tape, { $roll } each
 }, steel tape, square, fine pencil, chalk line
bench-bring-water = water
bench-bring-water-is = { $water } in all; buckets for the slurry: { $buckets }
bench-practice-cut = a cut
bench-practice-cut-is = in { $piece } where it is drawn, { $length } long, to { $depths }
bench-practice-plunge = plunges
bench-practice-plunge-is = in { $piece } likewise, three beside each other, to { $depths }
bench-practice-offset = guide's edge to disc's near face ({ $reckoned })
bench-practice-jig = jig's mark to disc's near face ({ $reckoned })
bench-practice-minutes = minutes in the stone; length, depth
bench-practice-differs = Another figure than in brackets: move guide or arm by as much, never a line.
bench-wrong-cracks = it cracks
bench-wrong-cracks-do = Off. Nobody under it. Bearers under both parts before anything moves; then measure and plan what is left.
bench-wrong-pinches = it pinches
bench-wrong-pinches-do = Off, let the disc stand still, wedge the kerf open, lift the machine out. In again only at full speed.
bench-wrong-slips = it slips off the line
bench-wrong-slips-do = Off. Measure how far and how deep, write it in the job file under what happened: a new plan says what is left of the top.

# Repair
bench-repair = What happened
bench-repair-title = What happened, and what is left
bench-repair-alt = The stone as it is, the top that is left, and dashed the top as it was wanted.
bench-repair-as-planned = Everything lies on its line. Go on as planned.
bench-repair-within = The allowance takes it up: nothing is lost. Grind to the finished line.
bench-repair-grind = Nothing is lost: too much stands on an edge. Grind it down to the finished line.
bench-repair-again = Nothing is lost: too much stands on an edge. Saw the strip off, by its page.
bench-repair-smaller = The top comes out smaller. Ask whoever ordered it before the next cut.
bench-repair-opening = An opening comes out other than wanted. Ask whoever ordered it before the next cut.
bench-repair-same-a = Letters are corners of the stone as it is now. A is where it was, AB runs as it did; the others are new.
bench-repair-new = Letters are corners of the stone as it is now: all are new. Write them on the stone.
bench-repair-wanted = wanted
bench-repair-now = now
bench-repair-weighs = weighs
bench-repair-first = first
bench-repair-run-outs = finish what the cut left standing: { $pieces }
bench-repair-grind-first = grind down to the line before the next cut: { $edges }
bench-repair-lines = in the job file
bench-repair-part = part
bench-repair-came = came out
bench-repair-is-wanted = wanted
bench-repair-is-now = now
bench-repair-do = to do
bench-repair-edge = edge { $name }
bench-repair-corner = corner { $name }, { $what }
bench-came-not-cut = not cut
bench-came-on-line = on its line
bench-came-short = { $off } short
bench-came-over = { $off } over
bench-came-slanting-short = { $start } to { $end } short
bench-came-slanting-over = { $start } to { $end } over
bench-do-nothing = nothing
bench-do-finish = finish only
bench-do-grind = grind { $off }
bench-do-cut = cut: see its page

# The annex
annex-findings = Every finding in full
annex-stops = Stops: the job must not start while one of these stands
annex-open = Open: to be filled in or looked at before the start
annex-warnings = Warnings
annex-every = Every time
annex-stone = Stone, place and pieces
annex-strength = Lying, standing, lifting
annex-way = The way in
annex-health = Dust, hands, ears: the figures
annex-assumed = Values that the job file left open
annex-sources = Sources
annex-key = key
annex-value = value
annex-why = why
annex-what = what
annex-document = document
annex-clause = clause
annex-year = year
annex-no-year = none noted
annex-place = Where the top lies on the slab
annex-pieces = Pieces
annex-cuts = Cuts
annex-balance = Slab { $slab } = finished top { $top } + left on the edges { $left } + kerf { $kerf } + waste { $waste }. Crumbs between slots count as kerf.
annex-range = { $low } to { $high }
annex-three = { $low } to { $high }, likely { $likely }
annex-kind = stone
annex-density = density
annex-thickness = thickness
annex-allowed = strength
annex-strength-is = { $strength } ÷ { $factor } ({ $source })
annex-slab-area = slab, area
annex-slab-mass = slab weighs
annex-top-mass = top weighs
annex-spare = least to spare
annex-turn = turned
annex-corner = corner of the top
annex-corner-of-top = corner { $name }
annex-x = x from A along AB
annex-y = y from A square to it
annex-edge = edge
annex-edge-sawn = sawn, { $left } left on it
annex-edge-flush = lies on slab edge { $edge }
annex-length = length
annex-lies = how it lies
annex-piece = piece
annex-after = after cut
annex-area = area
annex-mass = weighs
annex-rectangle = holds a rectangle of
annex-left = kept stone
annex-tool = tool
annex-core-bit = core bit of { $bit }
annex-bending = Stress under its own weight, × 1.2 for handling, in the thinnest stone; sound stone only
annex-stone-state = stone
annex-state = { $name }
annex-flat-best = flat, best bearers
annex-flat-hands = flat, in hands
annex-flat-ends = flat, by its ends
annex-one-end = one end lifted
annex-on-edge = on edge, by its ends
annex-may = allowed
annex-lifting = Lifting by hand, and what aids need
annex-slab = slab
annex-top = top
annex-guideline = guideline
annex-guideline-is = { $each } for one person ({ $source }); no promise that a lift below it is safe
annex-person = person
annex-from-end = from the end
annex-from-side = from the side
annex-carries = carries
annex-figure = figure in this team
annex-trolley-rated = trolley marked for
annex-trolley-push = push, level
annex-trolley-ramp = 1 in 12 adds
annex-trolley-tips = tips across
annex-vacuum-rated = vacuum marked for
annex-sling-pull = pull in a sling's leg
annex-leans = on edge falls beyond
annex-rails = Narrow stone beside openings
annex-rail-is = { $width } wide, { $length } long: { $together } with its neighbour, { $alone } alone
annex-setting = On its supports
annex-support = support
annex-carries-most = carries at most
annex-with-person = with a person leaning
annex-reaches = reaches beyond
annex-person-stress = stress with a person
annex-way-of = The way of the { $name }
annex-way-place = place
annex-way-carried = best carried
annex-way-spare = room
annex-way-clears = { $spare } to spare
annex-way-tight = tight: { $spare } to spare
annex-way-short = { $short } too little
annex-way-note = Measure every place again with the people and the aid that carry.
annex-limit = silica
annex-vibration = vibration
annex-vibration-is = { $reckoned } with its uncertainty, { $job } of this job; the day { $day }; action { $action }, limit { $limit } ({ $source })
annex-noise = noise
annex-noise-is = { $level } for { $hours }; the day { $day }; duty from { $duty } ({ $source })
annex-cited = { $document }{ $borrowed }; check your current rules
annex-cited-year = { $document }, { $year }{ $borrowed }; check your current rules
annex-masks = masks that reach it
annex-mask = { $mask } (factor { $factor })
annex-authority = ask about the rules

# In a terminal
answer-job = job
answer-fits = fits
answer-fits-is = top { $length } × { $width }, { $spare } to spare at the tightest
answer-weighs = weighs
answer-weighs-is = top up to { $top }, slab up to { $slab }
answer-time = time
answer-time-is = { $stone } with the disc in the stone, { $setting } setting up
answer-straight = straight, edge { $edge }, { $length }
answer-relief = relief at { $edge }, { $length }
answer-curve = curve at { $edge }, { $length }
answer-hole = holes at { $edge }
answer-guide = { $first } from { $from }, { $second } from { $to }
answer-chord = chord { $length }
answer-frees = frees
answer-more = More with --full:
answer-sheet = finished top  { $low } to { $high }
    cuts          { $straight } straight, { $curves } curved
    sawing time   { $sawing } with the disc in the stone, { $setting } setting up
    stops         { $stops }
weigh-stone = { $name }
weigh-place = place
weigh-no-fit = the top does not fit this slab: it is weighed as wanted
weigh-region = region
weigh-balance = balance point
weigh-balance-is = { $end } from the end, { $side } from the side
weigh-mass = weighs
weigh-mass-is = at most { $high }: lift with this one; likely { $likely }, at least { $low }
weigh-size = size
weigh-size-is = { $length } × { $width } × { $thick }, { $area }
weigh-tilt = tilting it up

# On a telephone
phone-plan = plan { $plan }
phone-contents = Contents
phone-light = Bright or dark
phone-back = Back
phone-next = Next
phone-bar = Way through the sheet
phone-clear = Untick everything on this telephone
phone-forgets = This viewer forgets ticks when it is closed. Open the file in a browser.
