# Templates, shapes and drawings.

template-top = Mal op ware grootte: het hele blad
template-curve = Mal op ware grootte: bocht van snede { $number }
template-opening = Mal op ware grootte: opening { $number }, { $what }
template-corner = Mal op ware grootte: hoek { $corner }
template-count = { $count ->
    [one] Eén vel
   *[other] { $count } vellen
 } · { $job } · plan { $plan }
template-tile = { $count ->
    [one] één pagina
   *[other] één van { $count } vellen
 } · { $part } · { $job } · plan { $plan }
template-measure = Meet dit eerst: is het geen 100, druk dan af op 100 %, niet passend op de pagina.
template-again = Meet beide balken op elk vel. Een printer die iets afwijkt, wordt gecorrigeerd: druk opnieuw af met --measured en de twee lengten.
template-join = Snijd elk vel langs de rechter- en de bovenlijn van het kader. Leg het zo over het volgende dat de kruisjes samenvallen, en plak ze op een vlakke plank aan elkaar.
template-lay = Leg de kruisjes met namen op de gelijknamige merken op de steen, en de randen op zijn randen. Controleer één lengte met het meetlint voordat u zaagt.
template-scaled = afgedrukt × { $across } in de breedte, × { $up } in de hoogte, naar gemeten balken
template-map = Hoe de vellen liggen
template-line-keep = lijn die blijft staan: de afgewerkte rand
template-line-saw = zaaglijn: de afgewerkte rand en wat blijft voor de afwerking
template-line-slab = rand van de plaat: leg die op de rand van de steen
template-line-slot = wat de schijf of de boor in het oppervlak wegneemt; de lange zijden geven de richting van de schijf
template-line-station = station met zijn nummer
template-line-flange = zo breed zijn flens en tandwielkop boven een sleuf: houd dat vrij
template-line-mark = merk dat al op de steen staat, of een lijn ervandaan
bench-curve-template = Op ware grootte op papier: kerfwright template
