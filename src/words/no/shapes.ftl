# Templates, shapes and drawings.

template-top = Mal i full størrelse: hele platen
template-curve = Mal i full størrelse: kurven i snitt { $number }
template-opening = Mal i full størrelse: åpning { $number }, { $what }
template-corner = Mal i full størrelse: hjørne { $corner }
template-count = { $count ->
    [one] Ett ark
   *[other] { $count } ark
 } · { $job } · plan { $plan }
template-tile = { $count ->
    [one] én side
   *[other] ett av { $count } ark
 } · { $part } · { $job } · plan { $plan }
template-measure = Mål dette først: er det ikke 100, skriv ut med 100 %, uten å tilpasse til siden.
template-again = Mål begge strekene på hvert ark. En skriver som bommer litt, rettes ved å skrive ut på nytt med --measured og de to lengdene.
template-join = Klipp hvert ark langs den høyre og den øvre rammelinjen. Legg det over det neste slik at kryssene dekker hverandre, og teip dem sammen på et plant bord.
template-lay = Legg kryssene med navn på merkene med samme navn på steinen, og kantene på kantene. Kontroller én lengde med målebånd før du sager.
template-scaled = skrevet ut × { $across } på tvers, × { $up } i høyden, etter målte streker
template-map = Slik ligger arkene
template-line-keep = linje som blir stående: den ferdige kanten
template-line-saw = saglinje: den ferdige kanten og det som blir igjen til finishen
template-line-slab = kanten av råplaten: legg den på steinens kant
template-line-slot = det skiven eller boret tar i oversiden; langsidene viser skivens retning
template-line-station = stasjon med nummer
template-line-flange = så brede er flens og girhode over et spor: hold det fritt
template-line-mark = merke som alt er på steinen, eller en linje fra det
bench-curve-template = I full størrelse på papir: kerfwright template
