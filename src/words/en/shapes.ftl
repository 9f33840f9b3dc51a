# Templates, shapes and drawings.

template-top = Full-size template: the whole top
template-curve = Full-size template: curve of cut { $number }
template-opening = Full-size template: opening { $number }, { $what }
template-corner = Full-size template: corner { $corner }
template-count = { $count ->
    [one] One tile
   *[other] { $count } tiles
 } · { $job } · plan { $plan }
template-tile = { $count ->
    [one] one page
   *[other] one of { $count } tiles
 } · { $part } · { $job } · plan { $plan }
template-measure = Measure this first: if it is not 100, print at 100 %, no fit to page.
template-again = Measure both bars on every tile. A printer that is out by a little is cured by printing again with --measured and the two lengths.
template-join = Cut each tile along the right and the upper line of its frame. Lay it over the next so that the crosses meet, and tape them together on a flat board.
template-lay = Lay the crosses with names on the marks of the same names on the stone, and the edges on its edges. Check one length with the tape before you saw.
template-scaled = printed × { $across } across, × { $up } up, after bars that were measured
template-map = How the tiles lie
template-line-keep = line to keep: the finished edge
template-line-saw = saw line: the finished edge and what is left for the finish
template-line-slab = edge of the slab: lay it on the stone's own edge
template-line-slot = what the disc or the bit takes in the face; its long sides are the disc's heading
template-line-station = station with its number
template-line-flange = so wide are flange and gear head above a slot: keep it clear
template-line-mark = mark that is on the stone already, or a line from one
bench-curve-template = Full size on paper: kerfwright template
