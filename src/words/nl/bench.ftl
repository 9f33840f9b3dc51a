# The bench pages, the annex and the answers in a terminal.

bench-head = plan { $plan } · pagina { $number } van { $count }
bench-head-annex = plan { $plan } · bijlage, pagina A{ $number } van A{ $count }
bench-foot = Plaatselijke regels, aanwijzingen van fabrikanten en deskundige mensen gaan vóór dit blad.
bench-foot-cut = Eerst inritsen. Nooit wringen, nooit zijwaarts duwen. Na het klemmen: uit, wachten, vrijmaken, pas op volle toeren weer erin.
bench-stop = STOP
bench-kills-now = dodelijk
bench-kills-later = dodelijk, later
bench-maims = verminkt
bench-lasting = blijft levenslang
bench-breaks-stone = breekt de steen
bench-blank = invullen
bench-sentences = { $a } { $b }
bench-term = { $term }

# At a glance
bench-glance = In één oogopslag
bench-glance-title = In één oogopslag: { $work }
bench-work-straight = { $count ->
    [one] één rand zagen
   *[other] { $count } randen zagen
 }
bench-work-curves = { $count ->
    [one] één ronding insteken
   *[other] { $count } rondingen insteken
 }
bench-work-openings = { $count ->
    [one] één uitsparing maken
   *[other] { $count } uitsparingen maken
 }
bench-glance-alt = De plaat van boven met het blad, { $length } bij { $width }, de sneden op volgorde en de reststukken met hun gewicht.
bench-glance-open = Voordat de machine start: regel elk punt, schrijf op wat bleek, vink dan af
bench-glance-warnings = Wat dit werk met je kan doen, het ergste eerst
bench-top-size = { $length } × { $width }
bench-waste-name = { $name } { $mass }
bench-keep = blijft
bench-top-corner = hoek { $corner }
bench-practice-here = oefenen
bench-tile-top = afgewerkt blad
bench-tile-slab = plaat
bench-tile-waste = zwaarste reststuk
bench-tile-sawing = schijf in steen
bench-tile-setting = instellen
bench-tile-silica = silica in het slib
bench-tile-silica-dry = silica in het stof
bench-tile-likely = hoogstens; wellicht { $mass }
bench-tile-likely-thick = hoogstens; wellicht { $mass }; { $thick }
bench-tile-no-waste = er valt geen stuk af
bench-tile-after = { $name }, snede { $cut }
bench-tile-shares = { $count ->
    [one] één persoon, één dag
   *[other] verdeel over { $count } personen of dagen
 }
bench-tile-with-other = met { $other } ander werk: { $shares }
bench-tile-without-edges = { $shares }; zonder randen
bench-not-counted = Slijpen, polijsten en breken van de randen zit hier in geen getal, tenzij het onder [[today]] staat; het telt mee in de dag van dezelfde persoon.
bench-tile-set-ups = { $count ->
    [one] één keer instellen
   *[other] { $count } keer instellen
 }
bench-tile-of-dust = hoogstens, in { $mass } steen

# Mark out
bench-mark = Aftekenen
bench-mark-title = Teken elke lijn af vóór de eerste snede
bench-mark-rule = Teken elke lijn dwars over de hele plaat af vóór de eerste snede. Een snede neemt een merkteken weg; de lijn op de steen die blijft, is nog te zien.
bench-mark-alt = De plaat van boven met elke lijn om af te tekenen, de merktekens aan de randen en elk draaipunt en gat.
bench-mark-what = punt
bench-mark-off = van de afgetekende lijn
bench-mark-off-that = van lijn { $cut }
bench-mark-named = { $mark }
bench-mark-off-short = { $cut }: { $distance }
bench-mark-on-short = op { $cut }
bench-mark-off-line = lijn { $cut }: { $distance }
bench-mark-on-line = op lijn { $cut }
bench-mark-check = controle
bench-mark-line-check = controle lijn
bench-mark-on-curve = lijn van snede { $cut }
bench-mark-keep = lijn die blijft
bench-mark-guide = geleider, idem
bench-mark-tape-from = rolmaat
bench-marked = { $mark } { $distance }
bench-marked-from = { $mark } { $corner } { $distance }
bench-tape = { $corner } { $distance }
bench-mark-pivot = { $mark } draaipunt
bench-mark-chord = { $mark } koorde
bench-mark-hole = { $mark } gat
bench-mark-stop = { $mark } eindpunt
bench-mark-both = Snede { $cut }: { $distance } vanaf hoek { $corner } van het blad langs beide lijnen.
bench-mark-along = Snede { $cut }, vanaf hoek { $corner } van het blad: { $before } terug, { $after } verder.
bench-mark-guides = Elke geleiderlijn loopt { $offset } naast haar lijn die blijft, van het ene einde tot het andere.
bench-mark-rough = Een hoek aan een ruwe kant ligt waar draden langs zijn twee kanten elkaar kruisen: markeer die eerst.
bench-mark-tape = Houd de haak van de rolmaat precies op de hoek. Wijkt een controle meer dan { $tape } af: meet opnieuw, verschuif de lijn niet. { $guides }
bench-mark-between = Een tweeëndertigste inch is het midden tussen twee strepen van een rolmaat die zestienden toont.
bench-end = { $mark }: { $distance } van { $corner } op { $edge }

# Straight cuts
bench-straight = Rechte sneden
bench-straight-title = Recht, rand { $edge }, { $length } lang, steen { $thick }
bench-relief-title = Ontlastsnede bij { $edge }, { $length } lang, steen { $thick }
bench-straight-alt = De plaat vóór de snede langs rand { $edge }, van boven: geleider, blokken, waar de zager staat en wat er loskomt: { $waste }.
bench-you = zager
bench-depth = diepte
bench-depths = dieptes
bench-trestles-move = Til eerst de steen eraf en verplaats de schragen: { $first } en { $second } van het einde van de plaat.
bench-trestles-board = Til eerst de steen eraf: vanaf hier ligt hij op een volle, vlakke draagplaat.
bench-late = Pas na snede { $cut }, die een eigen pagina heeft.
bench-fact-guide = geleider
bench-fact-ends = einden
bench-fact-moves = hij ligt op
bench-fact-how = hoe
bench-fact-bearers = blokken
bench-fact-drill = eerst boren
bench-fact-when = wanneer
bench-guide-kept = { $offset } van de lijn die blijft, op de steen die blijft
bench-guide-waste = { $offset } van de lijn die blijft, op het reststuk
bench-ends = { $first }; { $second }
bench-moves = { $places } vanaf { $mark }, na elkaar op elke diepte{ $clamp ->
    [no] ; waar geen klem bij komt, een zuignapklem, met de hand geprobeerd
   *[yes] {""}
 }
bench-stone-end = het einde van de steen naar { $mark } toe
bench-span = { $from } tot { $to }
bench-how = { $parts }
bench-how-far-end = Op elke diepte eerst de laatste { $length } bij { $last }, van buiten naar binnen; dan van het andere einde tot daar.
bench-how-stop = Stopt bij { $mark }: midden van de schijf niet dichter dan { $short }. Wat de ronde schijf laat staan komt het laatst en van boven: kernboor in het afval, dan slijpen; nooit van onderen.
bench-how-stop-hole = Eindigt in het geboorde gat bij { $mark }: midden van de schijf niet dichter dan { $short }.
bench-how-allowance = { $left } blijft staan voor de afwerking.
bench-how-breaks = Vanaf { $depth } kan het afbreken.
bench-bearers = aan elke kant, { $off }: { $at } vanaf { $mark }
bench-bearers-even = { $count } aan elke kant, { $off }: van { $first } tot { $last } vanaf { $mark }, om de { $step }
bench-bearers-off = { $off } van de lijn
bench-bearers-off-each = { $kept } van de lijn, { $waste } onder het reststuk
bench-struck = volgens de afgetekende lijn { $first } tot { $second }: een einde is weg
bench-drill = Ø { $bit } bij { $marks }, nat, voordat de schijf in de buurt komt
bench-free-heavy = { $name } komt los: tot { $mass }. Het ligt op eigen blokken, vlak, vóór de eerste zaaggang. Geen hand, voet of knie eronder; niemand houdt het vast.
bench-free-carried = { $name } komt los: tot { $mass }. Het ligt op eigen blokken, vlak, vóór de eerste zaaggang. Geen hand, voet of knie eronder; niemand houdt het vast. { $away }
bench-away = Daarna { $how ->
            [flat] dragen { $people } personen het vlak naar twee latten op de vloer, een vijfde van de lengte van de einden.
           *[edge] zetten { $people } personen het op de lange kant, dragen het op zijn kant naar twee latten tegen een muur en binden het daar vast.
        }
bench-away-more = Er zijn { $people } personen nodig om het weg te dragen, { $how ->
            [flat] vlak
           *[edge] op zijn kant
        }, en deze klus heeft er minder: haal ze of een hulpmiddel, of zaag het dwars door waar het ligt, met een oplegger aan beide kanten van de lijn.
bench-away-aid = Daarna brengt { $aid ->
            [trolley] de wagen het, door { $people } personen ({ $half }) op zijn kant gezet en vastgebonden,
            [vacuum] de vacuümheffer het, op zijn kant,
           *[gantry] de takel het, op zijn kant in twee stroppen,
        } naar twee latten tegen een muur; bind het daar vast.
bench-away-sawn = Geen ploeg draagt het weg: zaag het dwars door waar het ligt, met een oplegger aan beide kanten van de lijn, of haal een hulpmiddel.
bench-free-light = { $name } komt los: tot { $mass }. Een blok eronder vóór de eerste zaaggang; geen hand eronder.
bench-free-flaw = ‘{ $flaw }’ loopt erdoor: daar kan het breken. Opleggers aan beide kanten ervan; recht hout eroverheen geklemd voor het getild wordt.
bench-free-station = { $name } komt ongeveer bij station { $station } los, laatste diepte: tot { $mass }. Een blok eronder vóór de eerste zaaggang; geen hand eronder.
bench-measured = rand { $edge }, te kort of over (0 gewenst)
bench-cut-by = gezaagd door, tijd

# Curves
bench-curve = Ronding, snede { $cuts }
bench-curve-title = { $count ->
    [one] Steek één station van de ronding bij { $corners } in, { $depths } dieptes
   *[other] Steek { $count } stations van de ronding bij { $corners } in, { $depths } dieptes
 }
bench-curve-alt = De ronding van boven met haar genummerde stations, het draaipunt of de koorde, en het reststuk.
bench-curve-how = Hoe
bench-curve-line = straal { $radius }; { $left } blijft staan voor de afwerking
bench-curve-line-inside = straal { $radius }; { $left } blijft staan voor de afwerking; de stations op straal { $stations }
bench-curve-rise = koorde { $chord }, in het midden ligt de ronding { $rise } hoger
bench-curve-struck = { $points }, afgetekend vóór snede 1: zie Aftekenen
bench-curve-swing = { $mark }: { $radius } vanaf elk van { $points }
bench-curve-stations = Teken de lijn af rond het draaipunt. Meet elk station recht vanaf het merkteken naast zijn nummer; buren liggen { $apart } uit elkaar.
bench-curve-ordinates = Teken de koorde af. Zet elk station erlangs uit en haaks erop; buren liggen { $apart } uit elkaar.
bench-curve-plunge = Schijf haaks op de arm bij het station: nabije vlak { $near } van het draaipunt, merkteken mal { $arm }. Sta naast zijn lijn, nooit erin. Recht omlaag, recht eruit. Stuur nooit de bocht om.
bench-curve-plunge-guide = Rand van de geleider { $offset } van het station en { $gap } van de ronding, { $half } aan weerszijden; nabije vlak op de ronding. Sta naast zijn lijn, nooit erin. Recht omlaag, recht eruit. Stuur nooit de bocht om.
bench-curve-plunge-square = Teken het middelpunt van de boog af, { $radius } van beide einden van de koorde. De schijf staat haaks op de lijn van het middelpunt door het station, haar buitenkant, die van het middelpunt af, bij het station; de kant van de geleider { $offset } daarachter. Sta naast haar lijn, nooit erin. Recht omlaag, recht eruit. Stuur haar nooit rond.
bench-curve-rings = Alle stations tot één diepte, dan alle tot de volgende: { $depths }. De steen is { $thick } dik.
bench-curve-ridges = Er blijven ribbels van { $left }: neem ze nat weg met een diamantkomschijf of lamellenschijf, korrel 60, langs de ronding, tot de lijn; dan 120, 200, 400.
bench-fact-pivot = draaipunt
bench-fact-chord = koorde
bench-fact-stands = het staat op
bench-fact-swing = te vinden
bench-fact-line = lijn die blijft
bench-arm = merk { $length }
bench-pivot-top = het blad: tape of zuignap, nooit boren
bench-pivot-cutout = steen die er later uitvalt, nog op zijn plaats
bench-pivot-waste = het reststuk: houd het op zijn plaats tot de ronding klaar is
bench-pivot-off = naast de steen: zet daar iets van dezelfde hoogte vast
bench-station = nr.
bench-station-along = langs
bench-station-off = haaks
bench-station-off-waste = af, het afval in
bench-relief-first = Eerst de ontlastsneden, zodat het reststuk in delen loskomt.
bench-relief-cut = snede
bench-relief-guide = geleider op merken
bench-relief-length = lengte
bench-two-marks = { $first } en { $second }

# Openings
bench-opening = Uitsparing { $number }
bench-opening-title = Uitsparing: { $what }, steen { $thick }
bench-opening-alt = De uitsparing van boven met haar gaten, sneden en geleiderlijnen, en de smalste steen ernaast.
bench-opening-corner-alt = Een hoek van de uitsparing: de afgetekende lijnen en de punten ernaast
bench-opening-what = wat
bench-opening-marks = merken
bench-opening-how = hoe
bench-opening-depths = dieptes
bench-depths-straight = recht
bench-depths-curve = rond
bench-opening-stop = midden blijft { $short } vóór { $mark }
bench-opening-hole = boren Ø { $bit }
bench-opening-straight = recht, { $length }
bench-opening-curve = rond, { $length }
bench-opening-swing = straal { $radius }, arm { $arm }, { $count } stations
bench-opening-plunges = { $count } insteeksneden langs een koorde van { $chord }, pijl { $rise }
bench-opening-drill = nat, recht omlaag, van boven
bench-opening-stations-chord = Stations, snede { $cuts }: langs de koorde vanaf merkteken e, en haaks erop
bench-opening-stations-pivot = Stations, snede { $cuts }: recht vanaf de afgetekende merktekens
bench-opening-step-drill = Boor eerst elk gat: de schijf stopt dan in een gat, en geen snede loopt door in de hoek.
bench-opening-step-saw = Zaag van gat tot gat, elke snede op volle diepte vóór de volgende. De schijf is rond: onderaan houden de uiteinden van de sneden het stuk nog vast. Maak het van boven los, de kernboor in het afval over elk uiteinde, de rest slijpen; niemand werkt eronder. De steen moet rondom gesteund zijn, en ook onder het stuk dat valt.
bench-opening-step-saw-parted = Zaag van gat tot gat, elke snede op volle diepte vóór de volgende. De schijf is rond: onderaan zouden de uiteinden van de sneden het stuk nog vasthouden; de gaten ernaast scheiden het daar, en wat blijft staan wordt afgeslepen. Niemand werkt eronder. De steen moet rondom gesteund zijn, en ook onder het stuk dat valt.
bench-opening-step-last = De laatste snede maakt het stuk los: eerst blokken eronder, niemand eronder. Vanaf nu is de steen naast de uitsparing zwak: spalken erop voordat hij beweegt.
bench-rail = { $what }
bench-rail-holds = { $width } breed: houdt; op zijn kant dragen, nooit aan de strook
bench-rail-brace = { $width } breed: alleen met spalken. { $splint }
bench-rail-weak = { $width } breed: zelfs met spalken te zwak. { $splint }
bench-splint = { $count } × hout { $wide } × { $high }, { $length } lang, vastgeklemd vóór de eerste snede hier

# Moving
bench-move = Dragen en neerzetten
bench-move-title = Op zijn kant, met de hand, staand vastgebonden
bench-move-title-trolley = Op zijn kant op de plaatwagen, vastgebonden, op vlakke grond
bench-move-title-vacuum = Op zijn kant onder de vacuümheffer
bench-move-title-gantry = Op zijn kant in twee hijsbanden
bench-move-slab = Plaat naar de schragen, { $alike ->
    [yes] een lange kant onder
   *[no] { $side } onder
 }
bench-move-top = Blad naar zijn plaats, { $alike ->
    [yes] een lange kant onder
   *[no] { $side } onder
 }
bench-move-alt = De steen op zijn kant met het hefmiddel en een persoon aan elk einde, op schaal; hij weegt tot { $mass }.
bench-move-on-edge = Nooit plat aan de einden: hij breekt. De hele weg op zijn kant, pas plat gelegd boven beide schragen. Nooit één einde optillen.
bench-move-tied = De hele weg op zijn kant, vastgebonden zodra hij staat.
bench-turn-slab = op zijn kant naast beide schragen, het vervoer geblokkeerd; onderste lange kant op beide tegelijk, dan plat: { $hands ->
    [none] niet met de hand, maar met takel, vacuümheffer of kantelframe
    [open] zoals blad 1 het regelt: iedereen aan de verre lange kant, niemand eronder
    [aid] gedraaid door de heffer, twee personen geleiden
   *[team] iedereen aan de verre lange kant, niemand eronder
 }. Sjorband als laatste af.
bench-turn-top = op zijn kant naast zijn plaats, dan op beklede latten dwars erover: { $hands ->
    [none] niet met de hand, maar met takel, vacuümheffer of kantelframe
    [open] zoals blad 1 het regelt: iedereen aan de verre lange kant, niemand eronder
    [aid] gedraaid door de heffer, twee personen geleiden
   *[team] iedereen aan de verre lange kant, niemand eronder
 }. Latten één voor één eruit, de lange kant met wiggen gelicht, geen vinger eronder.
bench-fact-flat = plaat, plat
bench-fact-set = blad, neerzetten
bench-move-hands = Waar de handen gaan
bench-move-hands-on-edge = Waar de handen gaan: hij hangt er op zijn kant in, nooit plat
bench-move-trestles = Twee schragen van opzij: afstanden vanaf einde { $corner }, en wat elke draagt
bench-move-supports = Waarop het staat: het midden van elke steun, zoals getekend
bench-hands-alt = De steen van boven met een persoon op elke plaats, en wat elk draagt.
bench-hands = { $number }: { $mass }
bench-trestles-alt = De plaat op twee schragen, { $first } en { $second } van haar einde.
bench-supports-alt = Het blad van boven op zijn steunen met wat elk draagt.
bench-supports-short = Zo niet genoeg: eerst meer steun, zie blad 1.
bench-free-span = { $length } op het breedst; hoogstens { $limit }
bench-overhang = { $edge }: { $length }; hoogstens { $limit }. Zet daar een steun
bench-overhang-person = { $edge }: { $length }; niemand leunt daar, of zet er een steun
bench-bearing-over = iemand die op het blad leunt, zet er { $person } op, dragen mag het { $limit }: niemand zit of leunt daar, of zet er een steun bij
bench-support-name = { $number } { $what }
bench-support = { $along } van links, { $up } van onder; draagt hoogstens { $mass }
bench-fact-trolley = plaatwagen
bench-fact-vacuum = vacuümheffer
bench-fact-slings = hijsbanden
bench-fact-lift = met de hand
bench-fact-fall = als hij valt
bench-fact-free = zonder steun
bench-fact-over = buiten de steunen
bench-trolley = opschrift { $rated } of meer; duw { $push } op vlakke grond
bench-rated = opschrift { $rated } of meer
bench-slings = { $each } aan elk, { $tension } in elk part bij { $angle }
bench-fall = niemand binnen { $clear } aan beide kanten; bind hem vast
bench-lift-never = nooit: { $people } samen rekenen op { $limit } in totaal{ $two }
bench-lift-two = {""}, twee op { $mass }
bench-lift-above = boven de richtwaarde: één draagt { $carried }, de richtwaarde is { $limit }; eerst regelen (blad 1)
bench-lift-over = zo niet: één zou { $carried } dragen, de richtwaarde is { $limit }
bench-lift-tips = zo niet: hij kantelt
bench-lift-breaks = niet met de hand: plat en op zijn kant buigt hij te veel; verstevig of neem een hefmiddel
bench-lift-many = zo niet: { $people } personen tillen niet als één
bench-lift-within = { $people } personen, elk tot { $most }; geen cijfer maakt tillen veilig

# Dust, noise, hands
bench-dust = Stof, geluid, handen
bench-dust-title = Stof, geluid, handen
bench-dust-order = Sterkste eerst: wat het stof wegneemt
bench-dust-limits = Hoeveel, hoe lang
bench-dust-settled = Geregeld voor dit werk
bench-control = { $state ->
    [done] { $what }: voorzien
    [open] { $what }: NOG OPEN
   *[other] { $what }: op de dag zelf op letten
 }
bench-fact-mask = masker hier
bench-fact-hands = handen
bench-fact-ears = oren
bench-fact-slurry = slib
bench-fact-slurry-dry = stof
bench-fact-silica = wat erin zit
bench-fact-vacuum-class = stofzuiger
bench-mask-at-hand = { $mask }; gladgeschoren, aansluiting gecontroleerd; op vóór de eerste snede, af als de vloer schoon is
bench-hands-allowed = { $action } per dag voor elk, alles wat trilt meegeteld; dit werk vraagt { $job }
bench-hands-other = { $hands }, ander werk telt { $other }
bench-hands-never = deze machine trilt te veel voor elke minuut: neem een andere machine
bench-ears = { $level } bij het oor: gehoorbescherming op vóór de eerste start; zonder is de dag na { $minutes } vol
bench-slurry = ongeveer { $mass }, emmers: { $buckets }; nat geschraapt en opgezogen, nooit in het riool
bench-bags = { $bags ->
    [one] één zak van de afzuiger
   *[other] tot { $bags } zakken van de afzuiger
 }
bench-nothing-caught = niets vangt het op
bench-silica = tot { $dust } steen, waarvan { $silica } silica
bench-wear-mask = Masker: factor { $factor } of meer
bench-wear-mask-here = { $mask }: factor { $factor }
bench-wear-mask-ready = Masker op tijdens het zagen, tot de vloer schoon is
bench-wear-mask-assess = Masker: laat eerst de blootstelling beoordelen
bench-wear-ears = Oren: { $level }
bench-wear-eyes = Ruimzichtbril en gelaatsscherm
bench-wear-hands = Strakke handschoenen, geen losse mouwen
bench-wear-feet = Antisliplaarzen met veiligheidsneus
bench-wear-disc = Schijf: draait door na het uitzetten

# Helper
bench-emergency = Alarmnummer: { $number }
bench-vacuum-off = Stofzuiger uitzetten bij
bench-helper-weight = De plaat weegt tot { $slab }, het blad tot { $top }. { $hands ->
    [none] Niemand tilt ze met de hand.
    [top] Niemand tilt de plaat met de hand, niemand het blad alleen.
   *[both] Niemand tilt ze alleen.
 }

# The day and its record
bench-day = Dag en verslag
bench-day-title = De dag, en wat er gebeurd is
bench-day-what = wat
bench-day-minutes = duurt
bench-day-at = klaar om
bench-day-read = Lees de helperpagina voor, oefen de stoptekens, vul pagina 1 in
bench-day-unload = Plaat op zijn kant lossen, vastgebonden; dan plat op de schragen
bench-day-mark = Teken elke lijn af en controleer ze; oefen in het reststuk
bench-day-straight = Snede { $cut }, rand { $edge }: { $waste } komt los
bench-day-curve = Snede { $cuts }, ronding { $edge }
bench-day-opening = Sneden { $cuts }, uitsparing: { $what }
bench-day-sum = Alle sneden: { $stone } schijf in de steen, { $setting } instellen
bench-day-move = Blad op zijn kant, vastgebonden, op zijn plaats
bench-day-clean = Slib nat opruimen, vloer spoelen, dan maskers af
bench-day-clean-dry = Overal stof opzuigen, dan maskers af
bench-day-bring = Meenemen
bench-day-practice = Oefen eerst in het reststuk
bench-day-wrong = Als het misgaat
bench-day-started = begonnen
bench-day-ended = klaar
bench-day-initials = paraaf
bench-day-date = datum
bench-day-annex = Berekening, tabellen, elke waarschuwing voluit en de bronnen: kerfwright sheet WERK --annex
bench-bring-guide = geleider
bench-bring-guide-is = recht, { $length }, en twee klemmen{ $suction ->
    [yes] , een zuignapklem
   *[no] {""}
 }{ $jig ->
    [yes] ; cirkelarm met draaipunt
   *[no] {""}
 }
bench-bring-discs = schijven
bench-bring-discs-are = { $discs }, met reserve{ $grind ->
    [yes] ; diamantkom of lamellenschijven om te slijpen
   *[no] {""}
 }
bench-bring-bits = kernboren
bench-bring-bits-are = { $bits }, gemaakt voor het toerental van de machine die ze draait; een mal die ze leidt
bench-bring-bearers = blokken
bench-bring-bearers-are = { $count } blokken van één hoogte, zachthout, { $long } lang, en wiggen; op de planken{ $edges }
bench-bring-bearers-edges = {""}, waarvan { $count } onder de randen zonder snede
bench-bring-deck = planken
bench-bring-deck-are = planken van minstens { $thick } dik in de lengte van de plaat over beide schragen, { $length } lang, naast elkaar { $wide } breed; daarop de blokken, daarop de plaat
bench-bring-turn = om te kantelen
bench-bring-turn-is = takel, vacuümheffer of kantelframe
bench-bring-carry = om te dragen
bench-bring-carry-is = { $aid ->
    [trolley] plaatwagen met opschrift { $rated }, twee schragen
    [vacuum] vacuümheffer met opschrift { $rated }, twee schragen
    [gantry] portaal met hijsbanden voor { $rated }, twee schragen
   *[none] twee schragen
 }, sjorbanden, latten, stofzuiger; wat de borden tonen
bench-bring-tape = aftekenen
bench-bring-tape-is = { $rolls ->
    [one] één rol afplaktape, { $roll }
   *[other] { $rolls } rollen afplaktape, elk { $roll }
 }, stalen rolmaat, winkelhaak, fijn potlood, slaglijn
bench-bring-water = water
bench-bring-water-is = { $water } in totaal; emmers voor het slib: { $buckets }
bench-practice-cut = een snede
bench-practice-cut-is = in { $piece } waar het getekend is, { $length } lang, tot { $depths }
bench-practice-plunge = insteken
bench-practice-plunge-is = net zo in { $piece }, drie naast elkaar, tot { $depths }
bench-practice-offset = rand geleider tot nabije vlak schijf ({ $reckoned })
bench-practice-jig = merkteken mal tot nabije vlak schijf ({ $reckoned })
bench-practice-minutes = minuten in de steen; lengte, diepte
bench-practice-differs = Ander getal dan tussen haakjes: verschuif de merktekens van de geleider of de arm evenveel; de lijnen die blijven niet.
bench-wrong-cracks = hij scheurt
bench-wrong-cracks-do = Uit. Niemand eronder. Blokken onder beide delen voordat er iets beweegt; dan meten en plannen wat er over is.
bench-wrong-pinches = hij klemt
bench-wrong-pinches-do = Uit, laat de schijf stilstaan, zet de zaagsnede open met wiggen, til de machine eruit. Pas op volle toeren weer erin.
bench-wrong-slips = van de lijn af
bench-wrong-slips-do = Uit. Meet hoe ver en hoe diep, schrijf het in het werkbestand bij wat er gebeurd is: een nieuw plan zegt wat er van het blad over is.

# Repair
bench-repair = Wat er gebeurd is
bench-repair-title = Wat er gebeurd is, en wat er over is
bench-repair-alt = De steen zoals hij is, het blad dat over is, en gestippeld het blad zoals gewenst.
bench-repair-as-planned = Alles ligt op zijn lijn. Ga door zoals gepland.
bench-repair-within = De overmaat vangt het op: er is niets verloren. Slijp tot de afgewerkte lijn.
bench-repair-grind = Er is niets verloren: aan een rand staat te veel. Slijp het weg tot de afgewerkte lijn.
bench-repair-again = Er is niets verloren: aan een rand staat te veel. Zaag de strook eraf, volgens zijn bladzijde.
bench-repair-smaller = Het blad wordt kleiner. Vraag het de opdrachtgever vóór de volgende snede.
bench-repair-opening = Een uitsparing wordt anders dan gewenst. Vraag het de opdrachtgever vóór de volgende snede.
bench-repair-same-a = Letters zijn hoeken van de steen zoals hij nu is. A ligt waar het lag, AB loopt zoals het liep; de andere zijn nieuw.
bench-repair-new = Letters zijn hoeken van de steen zoals hij nu is: alle zijn nieuw. Schrijf ze op de steen.
bench-repair-wanted = gewenst
bench-repair-now = nu
bench-repair-weighs = weegt
bench-repair-first = eerst
bench-repair-run-outs = maak af wat de snede liet staan: { $pieces }
bench-repair-grind-first = tot de lijn wegslijpen vóór de volgende snede: { $edges }
bench-repair-lines = in het werkbestand
bench-repair-part = deel
bench-repair-came = geworden
bench-repair-is-wanted = gewenst
bench-repair-is-now = nu
bench-repair-do = te doen
bench-repair-edge = rand { $name }
bench-repair-corner = hoek { $name }, { $what }
bench-came-not-cut = niet gezaagd
bench-came-on-line = op de lijn
bench-came-short = { $off } te weinig
bench-came-over = { $off } te veel
bench-came-slanting-short = { $start } tot { $end } te weinig
bench-came-slanting-over = { $start } tot { $end } te veel
bench-do-nothing = niets
bench-do-finish = alleen afwerken
bench-do-grind = { $off } slijpen
bench-do-cut = zagen: zie pagina

# The annex
annex-findings = Elke bevinding voluit
annex-stops = Stops: het werk mag niet beginnen zolang een hiervan geldt
annex-open = Open: in te vullen of na te kijken vóór het begin
annex-warnings = Waarschuwingen
annex-every = Elke keer
annex-stone = Steen, plaats en stukken
annex-strength = Liggen, staan, tillen
annex-way = De weg erin
annex-health = Stof, handen, oren: de cijfers
annex-assumed = Waarden die het werkbestand openliet
annex-sources = Bronnen
annex-key = sleutel
annex-value = waarde
annex-why = waarom
annex-what = wat
annex-document = document
annex-clause = artikel
annex-year = jaar
annex-no-year = geen genoteerd
annex-place = Waar het blad op de plaat ligt
annex-pieces = Stukken
annex-cuts = Sneden
annex-balance = Plaat { $slab } = afgewerkt blad { $top } + overmaat op de randen { $left } + zaagsneden { $kerf } + reststukken { $waste }. Kruimels tussen zaagsleuven tellen als zaagsnede.
annex-range = { $low } tot { $high }
annex-three = { $low } tot { $high }, wellicht { $likely }
annex-kind = steen
annex-density = dichtheid
annex-thickness = dikte
annex-allowed = sterkte
annex-strength-is = { $strength } ÷ { $factor } ({ $source })
annex-slab-area = plaat, oppervlak
annex-slab-mass = plaat weegt
annex-top-mass = blad weegt
annex-spare = minste speling
annex-turn = gedraaid
annex-corner = hoek van het blad
annex-corner-of-top = hoek { $name }
annex-x = x vanaf A langs AB
annex-y = y vanaf A, haaks erop
annex-edge = rand
annex-edge-sawn = gezaagd, { $left } overmaat erop
annex-edge-flush = ligt op plaatrand { $edge }
annex-length = lengte
annex-lies = hoe het ligt
annex-piece = stuk
annex-after = na snede
annex-area = oppervlak
annex-mass = weegt
annex-rectangle = bevat een rechthoek van
annex-left = blijvende steen
annex-tool = gereedschap
annex-core-bit = kernboor van { $bit }
annex-bending = Spanning onder het eigen gewicht, × 1,2 voor het hanteren, in de dunste steen; alleen gave steen
annex-stone-state = steen
annex-state = { $name }
annex-flat-best = plat, beste steunen
annex-flat-hands = plat, in handen
annex-flat-ends = plat, aan de einden
annex-one-end = één einde opgetild
annex-on-edge = op zijn kant, aan de einden
annex-may = toelaatbaar
annex-lifting = Tillen met de hand, en wat hefmiddelen vragen
annex-slab = plaat
annex-top = blad
annex-guideline = richtwaarde
annex-guideline-is = { $each } voor één persoon ({ $source }); geen belofte dat tillen daaronder veilig is
annex-person = persoon
annex-from-end = van het einde
annex-from-side = van de zijkant
annex-carries = draagt
annex-figure = cijfer in deze ploeg
annex-trolley-rated = plaatwagen, opschrift
annex-trolley-push = duw, vlak
annex-trolley-ramp = 1 op 12: extra
annex-trolley-tips = kantelt dwars bij
annex-vacuum-rated = vacuümheffer, opschrift
annex-sling-pull = trek per part
annex-leans = op zijn kant valt hij voorbij
annex-rails = Smalle steen naast uitsparingen
annex-rail-is = { $width } breed, { $length } lang: { $together } met zijn buur, { $alone } alleen
annex-setting = Op zijn steunen
annex-support = steun
annex-carries-most = draagt hoogstens
annex-with-person = met iemand die leunt
annex-reaches = steekt uit
annex-person-stress = spanning met een persoon
annex-way-of = De weg: { $name }
annex-way-place = plaats
annex-way-carried = best te dragen
annex-way-spare = ruimte
annex-way-clears = { $spare } over
annex-way-tight = krap: { $spare } over
annex-way-short = { $short } te weinig
annex-way-note = Meet elke plaats opnieuw met de mensen en het hefmiddel waarmee wordt gedragen.
annex-limit = silica
annex-vibration = trillingen
annex-vibration-is = { $reckoned } met de onzekerheid, { $job } bij dit werk; de dag { $day }; actiewaarde { $action }, grenswaarde { $limit } ({ $source })
annex-noise = geluid
annex-noise-is = { $level } gedurende { $hours }; de dag { $day }; plicht vanaf { $duty } ({ $source })
annex-cited = { $document }{ $borrowed }; ga de geldende regels na
annex-cited-year = { $document }, { $year }{ $borrowed }; ga de geldende regels na
annex-masks = maskers die hem halen
annex-mask = { $mask } (factor { $factor })
annex-authority = vraag naar de regels bij

# In a terminal
answer-job = werk
answer-fits = past
answer-fits-is = blad { $length } × { $width }, { $spare } over op de krapste plaats
answer-weighs = weegt
answer-weighs-is = blad tot { $top }, plaat tot { $slab }
answer-time = tijd
answer-time-is = { $stone } met de schijf in de steen, { $setting } instellen
answer-straight = recht, rand { $edge }, { $length }
answer-relief = ontlasting bij { $edge }, { $length }
answer-curve = ronding bij { $edge }, { $length }
answer-hole = gaten bij { $edge }
answer-guide = { $first } vanaf { $from }, { $second } vanaf { $to }
answer-chord = koorde { $length }
answer-frees = maakt los
answer-more = Meer met --full:
answer-sheet = afgewerkt blad  { $low } tot { $high }
    sneden          { $straight } recht, { $curves } rond
    zaagtijd        { $sawing } met de schijf in de steen, { $setting } instellen
    stops           { $stops }
weigh-stone = { $name }
weigh-place = plaats
weigh-no-fit = het blad past niet op deze plaat: gewogen zoals gewenst
weigh-region = regio
weigh-balance = zwaartepunt
weigh-balance-is = { $end } van het einde, { $side } van de zijkant
weigh-mass = weegt
weigh-mass-is = hoogstens { $high }: til met dit cijfer; wellicht { $likely }, minstens { $low }
weigh-size = maat
weigh-size-is = { $length } × { $width } × { $thick }, { $area }
weigh-tilt = rechtop kantelen

# On a telephone
phone-plan = plan { $plan }
phone-contents = Inhoud
phone-light = Licht of donker
phone-back = Terug
phone-next = Volgende
phone-bar = Weg door het blad
phone-clear = Alle vinkjes op deze telefoon wissen
phone-forgets = Deze lezer vergeet de vinkjes als hij wordt gesloten. Open het bestand in een browser.
