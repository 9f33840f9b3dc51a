# Findings of repair: a line, and in full.

opening-larger = uitsparing { $number } wordt groter: is ze nog bedekt?
    .detail = Uitsparing { $number }, { $what }, wordt { $long } × { $wide } in plaats van { $long_asked } × { $wide_asked }: { $more } meer bij { $sides }. Of de rand van wat erin komt de kant van de uitsparing nog bedekt, en nog steen vindt om op te rusten of aan vastgeklemd te worden, is hier niet bekend: die rand moet daar { $more } verder reiken dan de uitsparing zoals gevraagd nodig had. Leg het erin, of meet de rand ervan, voordat er iets anders wordt gezaagd.

# Why what is left of a begun job cannot be planned, in one line.

repair-no-stone = de vlakken die gezaagd heten te zijn laten geen steen over
repair-no-outline = de steen zoals hij nu is heeft geen omtrek die te benoemen is
repair-openings-meet = { $one } en { $other } zouden in elkaar doorbreken; maak van de twee één opening ([[top.cutout]])
repair-opening-breaks-edge = { $opening } zou de rand van wat er van het blad over is { $by } doorbreken; laat het weg ([[top.cutout]]), maak het kleiner, of plan een ander blad voor de steen
repair-opening-no-figure = { $opening } heeft geen vorm meer wanneer de zijden naar onbeschadigde steen zijn verplaatst; plan het opnieuw, groter of in een andere vorm ([[top.cutout]])
repair-never-sawn = as_cut: rand { $edge } ligt op een rand van de plaat en hoefde nooit gezaagd te worden; laat hem weg uit as_cut.done en as_cut.edge
repair-trims-first = as_cut: hoek { $corner } heet gezaagd te zijn, maar rand { $edges } niet; randsneden komen vóór rondingen. Zet hem in as_cut.done
repair-nothing-left = het gevraagde blad steekt met zijn overmaat { $by } buiten de onbeschadigde steen die over is, en van de gewenste vorm is niets te redden: zelfs met de randen { $most } naar binnen zou het op steen liggen die weg is. Meet de steen en plan er een ander blad voor
repair-no-such-cut = as_cut.cuts: er is geen snede { $number }; het blad van dit opdrachtbestand heeft de sneden 1 tot { $last }
