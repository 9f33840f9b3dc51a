# Findings of repair: a line, and in full.

opening-larger = Cutout { $number } comes out larger: is it still covered?
    .detail = Cutout { $number }, { $what }, becomes { $long } × { $wide } in place of { $long_asked } × { $wide_asked }: { $more } more at { $sides }. Whether the rim of what goes in still covers its edge, and still finds stone to stand on or be clamped to, is not known here: the rim must reach { $more } farther there than the opening as asked needed. Lay it in, or measure its rim, before anything else is cut.

# Why what is left of a begun job cannot be planned, in one line.

repair-no-stone = the faces that are said to be cut leave no stone
repair-no-outline = the stone as it is now has no outline that can be named
repair-openings-meet = { $one } and { $other } would break into each other; make one opening of the two ([[top.cutout]])
repair-opening-breaks-edge = { $opening } would break the edge of what is left of the top by { $by }; leave it out ([[top.cutout]]), make it smaller, or plan another top for the stone
repair-opening-no-figure = { $opening } has no figure once its sides are moved out to unhurt stone; plan it anew, larger or as another shape ([[top.cutout]])
repair-never-sawn = as_cut: edge { $edge } lies on an edge of the slab and was never to be cut; leave it out of as_cut.done and as_cut.edge
repair-trims-first = as_cut: corner { $corner } is said to be cut, but not edge { $edges }; trims come before curves. Put it into as_cut.done
repair-nothing-left = the top as asked, with its allowances, reaches { $by } over the unhurt stone that is left, and nothing of the wanted shape can be saved: even with its edges moved in by { $most } it would lie on stone that is gone. Measure the stone and plan another top for it
repair-no-such-cut = as_cut.cuts: there is no cut { $number }; the sheet of this job file has cuts 1 to { $last }
