# Findings of cuts and pieces: a line, and in full.

waste-not-freed = sneden die elkaar niet raken laten reststeen aan het blad zitten
    .detail = Delen van het reststuk die na de laatste snede nog vastzitten: { $parts }, het grootste van { $area } ongeveer { $along } langs AB en { $up } omhoog vanaf hoek A. Het zit vast bij: { $places }. Er ontbreekt geen snede, maar die ernaast raken elkaar niet en ook de rand van de steen niet. Maak het daar los met een kernboring, of met nog een insteeksnede naast de laatste, aan de kant van het reststuk; breek het nooit af.

said-weight = het gewicht van de verkoper en het berekende gewicht verschillen
    .detail = Opgegeven { $said }, berekend { $computed }: { $off } %, meer dan { $tolerance }. Steensoort, maat of dikte klopt niet. Plan het tillen met het zwaarste van de twee en weeg de plaat als het kan.

fissure-in-waste = "{ $flaw }" loopt door { $pieces }: het kan daar breken
    .detail = Vóór de eerste zaaggang blokken aan beide kanten ervan onder { $pieces }, zodat elk deel op zichzelf ligt als het breekt. Til een stuk nooit vlak of aan één einde eroverheen: klem er eerst rechte latten overheen aan beide vlakken, of laat het breken en draag de delen weg.{ $crossed ->
            [yes] {" "}Waar de zaagsnede hem kruist (zaagsneden: { $cuts }): kleine stappen en geen druk.
           *[no] {""}
        }

waste-needs-support = er komt een reststuk los dat te zwaar is om vast te houden
    .detail = Reststuk (snede die het losmaakt) en zijn gewicht, hoogstens: { $pieces }. Laat elk stuk boven { $limit } vóór de eerste zaaggang op eigen steunen rusten, gelijk met de blijvende steen, aan beide kanten van de snede. Een zakkend stuk knijpt de zaagsnede om de schijf dicht.

curve-waste-heavy = het reststuk van een ronding valt in een stuk dat te zwaar is om vast te houden
    .detail = Reststuk (snede die het losmaakt) en zijn gewicht, hoogstens: { $pieces }. Dat is meer dan { $limit } (passes.waste_piece), en geen rechte sneden die vrij blijven van de blijvende steen verdelen het verder. Ondersteun het vóór de laatste ronde van onderen over zijn hele lengte; niemand houdt het vast, geen voet eronder.

stopped-cut-too-short = geen aanwezige schijf heeft plaats: { $places }
    .detail = Er is { $room } tussen twee stopplaatsen; „{ $disc }” zaagt over een lengte van { $length } in het vlak van de steen als ze er helemaal doorheen is. Met dezelfde flens zaagt de kleinste schijf die door de steen komt, diameter { $least }, over een lengte van { $shortest }; de grootste die er plaats heeft, heeft een diameter van { $most }. { $verdict } Een kernboor van ongeveer { $bit } maakt de snede met een rij gaten.{ $waste }

sawn-with-another = rand { $edge } wordt meegezaagd met de rand in dezelfde lijn
    .detail = De randsnede van de rand in dezelfde lijn maakt ook rand { $edge }, en laat er { $left } op in plaats van { $allowance }. Slijp het verschil weg, { $over }, of geef beide randen dezelfde afwerking.

disc-too-small = de schijf komt niet door de steen
    .detail = „{ $disc }” zaagt hoogstens { $deepest } diep (diameter { $diameter }, obstakel { $obstruction }, voetplaat { $plate }); { $needed } is nodig: { $short } te weinig. Met dezelfde flens is een schijf van minstens { $least } nodig, op een machine die voor die maat gemaakt is.

no-room-for-guide = geen plaats voor de geleider op de plaat: { $places }
    .detail = De rand van de geleider ligt { $offset } van de snede; de plaat is aan beide kanten daarvan smaller dan dat, dus de snede is niet ingepland. Leg een plank zo dik als de steen ({ $thick }) tegen de plaat, vlak op één hoogte, klem beide op één werkbank en leg de geleider op de plank. Of gebruik een mal met een kleinere afstand (guide.offset).{ $waste }

core-holes-close = kernboringen van snede { $cut } overlappen of laten een dunne wand staan
    .detail = De twee gaten die het dichtst bij elkaar liggen: { $apart } van midden tot midden, kernboor { $bit }: een boor die naast een gat begint, loopt erin, en minder dan { $web } steen tussen twee gaten breekt uit. Houd de boor in een boormal die over elk midden is vastgeklemd (een plank met een gat zo groot als de boor), en druk licht.

rail-too-narrow = uitsparing { $cutout }{ $called } laat een te smalle strook over bij { $edge }
    .detail = Uitsparing { $cutout } laat te weinig steen over: { $rail }, { $width }{ $tap }, minimum { $least }; verplaats de uitsparing { $by } { $away }. Die strook ligt langs { $edge } van het blad.

rails-add-up = uitsparing { $cutout }{ $called }: de stroken aan beide kanten zijn samen te smal
    .detail = { $rail }, { $width }{ $tap }, minimum { $least }; { $other }, { $other_width }{ $other_tap }, minimum { $other_least }. Samen { $sum }, terwijl { $needed } nodig is: verplaatsen helpt geen van beide. Wat moet wijken is de uitsparing, { $short } kleiner in die richting, of het blad, evenveel groter; verstevig anders beide stroken voordat de steen wordt verplaatst.

rail-too-narrow-between = de uitsparingen { $first }{ $called_first } en { $second }{ $called_second } laten tussen elkaar een te smalle strook over
    .detail = De uitsparingen { $first } en { $second } laten tussen elkaar een strook van { $width } over, minimum { $least }; zet ze { $by } verder uit elkaar.

hangs-on-a-strip = er blijft maar { $about } steen tussen uitsparing { $cutout } en de rand
    .detail = Die strook is { $width } breed, smaller dan de steen dik is ({ $thick }). Ze breekt bij het zagen of bij het tillen. Verplaats of verander wat die strook overlaat, tot er minstens { $least } blijft.

hangs-on-a-strip-between = er blijft maar { $about } steen tussen de uitsparingen { $first } en { $second }
    .detail = Die strook is { $width } breed, smaller dan de steen dik is ({ $thick }). Ze breekt bij het zagen of bij het tillen. Verplaats of verander wat die strook overlaat, tot er minstens { $least } blijft.

hangs-on-a-strip-corner = er blijft maar { $about } steen achter de binnenhoek bij { $edge }
    .detail = Die strook is { $width } breed, smaller dan de steen dik is ({ $thick }). Ze breekt bij het zagen of bij het tillen. Verplaats of verander wat die strook overlaat, tot er minstens { $least } blijft.

curve-without-arm = de ronding bij { $part } wordt vanaf haar koorde uitgezet, zonder de cirkelmal
    .detail = De arm zou { $arm } zijn; de mal gaat van { $shortest } tot { $longest }: { $by } { $which }. Teken de koorde af en leg de rechte geleider op de twee merktekens van elk station; of maak een arm die past.

arm-out-of-reach = de cirkelmal is niet in te stellen voor een hele cirkel ({ $part })
    .detail = De arm zou { $arm } zijn; de mal gaat van { $shortest } tot { $longest }: { $by } { $which }. Een hele cirkel heeft geen koorde waarmee hij is uit te zetten. Maak een arm die past, of kies een andere straal.

corner-ground-by-hand = de ronding bij { $part } wordt met de hand geslepen
    .detail = De randsneden ernaast en de breedte van hun zaagsneden laten geen steen over voor een insteeksnede. Teken de ronding op de steen af en slijp haar na de laatste snede met de hand.

inside-corner-radius = { $part } krijgt een straal van { $left }
    .detail = Gevraagde straal: { $given }{ $sharp }. In een binnenhoek met een straal van minder dan { $least } begint een scheur. Het plan laat daar een straal van { $left }, die van de kernboring.{ $still }

inside-corner-nearest-radius = { $part } krijgt een straal van { $left }
    .detail = Gevraagde straal: { $given }. De kernboor die daar het dichtst bij komt, laat een straal van { $left }, en { $ground } steen in de hoek. Slijp die met de hand weg, of laat hem zitten.

much-to-grind = { $part }: er blijft veel te slijpen
    .detail = „{ $disc }” zaagt over een lengte van { $length } in het vlak van de steen; binnen een straal van { $radius } moet ze { $face } van het midden blijven, en naast het midden van elke zaagsleuf laat ze { $left } staan, meer dan { $much }. Een kleinere schijf of een kernboor van { $bit } of minder laat minder staan.

no-disc-for-hollow = { $places }: geen aanwezige schijf kan deze holle ronding zagen
    .detail = „{ $disc }” zaagt over een lengte van { $length } in het vlak van de steen; de holle ronding heeft een straal van { $radius } en is { $across } wijd. Met dezelfde flens zaagt de kleinste schijf die door de steen komt, diameter { $least }, over een lengte van { $shortest }; de grootste die er plaats heeft, heeft een diameter van { $most }. { $verdict }{ $either } Een kernboor van { $bit } maakt de ronding in één gat, een kleinere met een rij gaten.{ $waste }

inside-corner-needs-core-bit = kernboring nodig: { $places }
    .detail = { $kit } In een scherpe binnenhoek begint een scheur: er is een straal van minstens { $radius } nodig, dus een kernboor met een diameter van minstens { $least }, geboord vóór de sneden die daar stoppen. Noem hem in het werkbestand ([[core_bit]]).{ $waste }

# One piece of a list: its name, the cut that frees it, its weight.
piece-of-cut = { $piece } ({ $cut }): { $mass }

# A piece of the boundary of the top, or of an opening.
part-edge = rand { $name }
part-edge-opening = rand { $name } van uitsparing { $cutout }
part-corner = hoek { $name }
part-corner-opening = hoek { $name } van uitsparing { $cutout }
part-corners = hoeken { $name }
part-corners-opening = hoeken { $name } van uitsparing { $cutout }
part-all-round = de hele cirkel
part-all-round-opening = de hele cirkel van uitsparing { $cutout }

# What stays on the top for want of a cut, behind the cause.
waste-stays = {" "}Daardoor blijft reststeen aan het blad vastzitten, delen: { $parts }, het grootste van { $area } ongeveer { $along } langs AB en { $up } omhoog vanaf hoek A. Het werk kan met deze afdruk niet worden afgemaakt.

# What a job calls a cutout, behind its number.
cutout-called = {" "}({ $name })

piece-held-below = Geen kernboor scheidt het stuk van uitsparing { $cutout }{ $called } aan de onderkant
    .detail = De schijf is rond: onderaan eindigt elke snede { $run_out } vóór haar einde in het vlak, en daar hangt het stuk nog vast. Gaten naast de uiteinden, van boven geboord vóór het zagen, scheiden het; geen aanwezige kernboor vindt er plaats, dus zijn ze niet geplaatst en niet in de minuten. Neem er een mee en zet hem als [[core_bit]], of laat de uitsparing in een werkplaats zagen. Niemand werkt eronder, en het stuk wordt nooit uitgebroken: de scheur loopt het blad in.

opening-narrower-than-kerf = De zaagsnede heeft geen plaats in uitsparing { $cutout }{ $called }
    .detail = Langs de ene kant gezaagd komt een snede van { $kerf } aan de andere kant in de steen die moet blijven. Maak de uitsparing breder dan de snede, neem een dunnere schijf of laat het in een werkplaats doen.{ $waste }
