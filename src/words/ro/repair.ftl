# Findings of repair: a line, and in full.

opening-larger = Decupajul { $number } iese mai mare: mai este acoperit?
    .detail = Decupajul { $number }, { $what }, ajunge la { $long } × { $wide } în loc de { $long_asked } × { $wide_asked }: cu { $more } mai mult, laturi: { $sides }. Nu se știe aici dacă bordura piesei care se pune în decupaj îi mai acoperă marginea și dacă piesa mai găsește piatră pe care să stea sau de care să fie prinsă: bordura trebuie să ajungă acolo cu { $more } mai departe decât cerea decupajul dorit. Așezați piesa la probă sau măsurați-i bordura înainte de a tăia orice altceva.

# Why what is left of a begun job cannot be planned, in one line.

repair-no-stone = fețele date ca tăiate nu lasă piatră
repair-no-outline = piatra așa cum este acum nu are un contur care să poată fi numit
repair-openings-meet = { $one } și { $other } s-ar sparge unul în altul; faceți din cele două un singur decupaj ([[top.cutout]])
repair-opening-breaks-edge = { $opening } ar sparge cu { $by } marginea din ce rămâne din blat; renunțați la el ([[top.cutout]]), faceți-l mai mic sau planificați alt blat pentru piatră
repair-opening-no-figure = { $opening } rămâne fără formă când laturile lui sunt mutate până la piatra nevătămată; planificați-l din nou, mai mare sau cu altă formă ([[top.cutout]])
repair-never-sawn = as_cut: marginea { $edge } stă pe o margine a plăcii și nu trebuia tăiată niciodată; scoateți-o din as_cut.done și din as_cut.edge
repair-trims-first = as_cut: colțul { $corner } este dat ca tăiat, dar nu și marginea { $edges }; tăieturile de margine vin înaintea curbelor. Puneți-o în as_cut.done
repair-nothing-left = blatul cerut, cu adaosurile lui, iese cu { $by } peste piatra nevătămată care rămâne și nimic din forma dorită nu se poate salva: chiar cu marginile mutate înăuntru cu { $most } ar sta pe piatră care nu mai este. Măsurați piatra și planificați alt blat pentru ea
repair-no-such-cut = as_cut.cuts: nu există tăietura { $number }; fișa acestui fișier de lucrare are tăieturile de la 1 la { $last }
