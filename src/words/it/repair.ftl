# Findings of repair: a line, and in full.

opening-larger = L'apertura { $number } diventa più grande: è ancora coperta?
    .detail = L'apertura { $number }, { $what }, sarà di { $long } × { $wide } invece di { $long_asked } × { $wide_asked }: { $more } in più in { $sides }. Qui non si sa se il bordo di ciò che vi si inserisce copre ancora il bordo dell'apertura, né se trova ancora pietra su cui poggiare o a cui essere serrato: lì il bordo di quel pezzo deve arrivare { $more } più in là di quanto serviva all'apertura richiesta. Metterlo dentro, o misurarne il bordo, prima di tagliare qualsiasi altra cosa.

# Why what is left of a begun job cannot be planned, in one line.

repair-no-stone = le facce date per tagliate non lasciano pietra
repair-no-outline = la pietra com'è adesso non ha un contorno che si possa nominare
repair-openings-meet = { $one } e { $other } si aprirebbero l'una nell'altra; fare delle due una sola apertura ([[top.cutout]])
repair-opening-breaks-edge = { $opening } romperebbe di { $by } il bordo di ciò che resta del piano; toglierla ([[top.cutout]]), farla più piccola, o prevedere un altro piano per la pietra
repair-opening-no-figure = { $opening } resta senza forma quando i suoi lati sono spostati fino alla pietra sana; prevederla di nuovo, più grande o di un'altra forma ([[top.cutout]])
repair-never-sawn = as_cut: il bordo { $edge } sta su un bordo della lastra e non era mai da tagliare; toglierlo da as_cut.done e da as_cut.edge
repair-trims-first = as_cut: l'angolo { $corner } è dato per tagliato, ma non il bordo { $edges }; i tagli di rifilo vengono prima delle curve. Metterlo in as_cut.done
repair-nothing-left = il piano richiesto, con il materiale in più, sporge di { $by } dalla pietra sana che resta, e niente della forma voluta si può salvare: anche con i bordi rientrati di { $most } starebbe su pietra che non c'è più. Misurare la pietra e prevedere per essa un altro piano
repair-no-such-cut = as_cut.cuts: non c'è un taglio { $number }; il foglio di questo file di lavoro ha i tagli da 1 a { $last }
