# Findings of repair: a line, and in full.

opening-larger = Cutout { $number } comes out larger: is it still covered?
    .detail = Cutout { $number }, { $what }, becomes { $long } × { $wide } in place of { $long_asked } × { $wide_asked }: { $more } more at { $sides }. Whether the rim of what goes in still covers its edge, and still finds stone to stand on or be clamped to, is not known here: the rim must reach { $more } farther there than the opening as asked needed. Lay it in, or measure its rim, before anything else is cut.
