# Findings of repair: a line, and in full.

opening-larger = Utskjæring { $number } blir større: er den fortsatt dekket?
    .detail = Utskjæring { $number }, { $what }, blir { $long } × { $wide } i stedet for { $long_asked } × { $wide_asked }: { $more } mer ved { $sides }. Om flensen på det som skal ned i den, fortsatt dekker kanten på utskjæringen, og fortsatt får stein å stå på eller klemmes fast i, er ikke kjent her: flensen må nå { $more } lenger ut der enn den ønskede åpningen krevde. Legg det ned i, eller mål flensen, før noe annet kuttes.

# Why what is left of a begun job cannot be planned, in one line.

repair-no-stone = flatene som er oppgitt som kuttet, lar ingen stein bli igjen
repair-no-outline = steinen slik den er nå, har ikke noe omriss som kan navngis
repair-openings-meet = { $one } og { $other } ville bryte inn i hverandre; gjør de to til én åpning ([[top.cutout]])
repair-opening-breaks-edge = { $opening } ville bryte kanten på det som er igjen av benkeplaten med { $by }; utelat den ([[top.cutout]]), gjør den mindre, eller planlegg en annen benkeplate for steinen
repair-opening-no-figure = { $opening } har ingen form når sidene er flyttet ut til uskadd stein; planlegg den på nytt, større eller med en annen form ([[top.cutout]])
repair-never-sawn = as_cut: kant { $edge } ligger på en kant på platen og skulle aldri kuttes; ta den ut av as_cut.done og as_cut.edge
repair-trims-first = as_cut: hjørne { $corner } er oppgitt som kuttet, men ikke kant { $edges }; kantkutt kommer før kurver. Sett den inn i as_cut.done
repair-nothing-left = den ønskede benkeplaten med arbeidsmonn når { $by } ut over den uskadde steinen som er igjen, og ingenting av den ønskede formen kan reddes: selv med kantene flyttet inn { $most } ville den ligge på stein som er borte. Mål steinen og planlegg en annen benkeplate for den
repair-no-such-cut = as_cut.cuts: det finnes ikke noe kutt { $number }; arket til denne jobbfilen har kutt 1 til { $last }
