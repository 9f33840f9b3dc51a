# Templates, shapes and drawings.

template-top = Dima a grandezza naturale: il piano intero
template-curve = Dima a grandezza naturale: curva del taglio { $number }
template-opening = Dima a grandezza naturale: apertura { $number }, { $what }
template-corner = Dima a grandezza naturale: angolo { $corner }
template-count = { $count ->
    [one] Un foglio
   *[other] { $count } fogli
 } · { $job } · piano { $plan }
template-tile = { $count ->
    [one] una pagina
   *[other] uno di { $count } fogli
 } · { $part } · { $job } · piano { $plan }
template-measure = Misurare prima questo: se non è 100, stampare al 100 %, senza adattare alla pagina.
template-again = Misurare le due barre su ogni foglio. Una stampante che sbaglia di poco si corregge: stampare di nuovo con --measured e le due lunghezze.
template-join = Tagliare ogni foglio lungo la linea destra e la linea superiore della cornice. Posarlo sul successivo in modo che le croci coincidano e unirli con nastro su una tavola piana.
template-lay = Posare le croci con nome sui segni dello stesso nome sulla pietra, e i bordi sui suoi bordi. Controllare una lunghezza col metro prima di tagliare.
template-scaled = stampato × { $across } in larghezza, × { $up } in altezza, secondo le barre misurate
template-map = Come stanno i fogli
template-line-keep = linea da tenere: il bordo finito
template-line-saw = linea di taglio: il bordo finito e ciò che resta per la finitura
template-line-slab = bordo della lastra: posarlo sul bordo della pietra
template-line-slot = ciò che il disco o la corona toglie in superficie; i lati lunghi danno la direzione del disco
template-line-station = stazione con il suo numero
template-line-flange = larghezza di flangia e testa sopra una fessura: tenere libero
template-line-mark = segno già presente sulla pietra, o una linea da esso
bench-curve-template = A grandezza naturale su carta: kerfwright template
