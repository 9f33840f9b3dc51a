# Findings of handling: a line, and in full.

crush-and-falls = { $stone }: verplettert waar hij op valt
    .detail = { $mass } drukt met { $weight }. Op zijn kant staat de steen op { $thickness }: een duw van { $push } tegen de bovenrand kantelt hem, en meer dan { $tips } scheef valt hij vanzelf, over een strook van { $shadow } breed aan elk van beide kanten: daar staat niemand, en niemand probeert hem op te vangen. Bind hem vast aan iets dat houdt voordat iemand loslaat, één steen tegelijk; waar hij tegen leunt, moet beletten dat hij naar voren valt en dat zijn voet wegglijdt. Bij { $leans } scheefstand trekt de bovenrand met { $pulls } aan de sjorband, in deze volgorde; de sjorband en waar die aan vastzit, moeten een veelvoud daarvan houden. Zet hem neer op twee latten, nooit op de vloer: vingers, tenen en kinderen uit de spleet.

way-in-blocked = het blad komt niet binnen: { $place }
    .detail = Op zijn kant komt men { $edge_short } tekort ({ $edge_measure }: nodig { $edge_needs }, aanwezig { $edge_has }). Rechtop komt men { $upright_short } tekort ({ $upright_measure }: nodig { $upright_needs }, aanwezig { $upright_has }). Wat helpt, één van deze, of beide als er in één stand twee maten tekortkomen: { $remedies }. Plat gaat het er ook niet door.

way-in-upright = het blad gaat er alleen rechtop door: { $place }
    .detail = Op zijn kant komt men { $edge_short } tekort ({ $edge_measure }: nodig { $edge_needs }, aanwezig { $edge_has }). Rechtop gaat het erdoor met { $spare } over. Wat helpt, één van deze, of beide als er in één stand twee maten tekortkomen: { $remedies }. Het op zijn korte kant zetten vraagt { $stand_up } vrije hoogte: doe dat vóór die plaats, met het hefmiddel en de mensen die zijn gewicht vraagt, en nooit op een trap.

way-in-flat-only = het blad gaat er alleen plat door, wat niet aan te raden is: { $place }
    .detail = Op zijn kant komt men { $edge_short } tekort ({ $edge_measure }: nodig { $edge_needs }, aanwezig { $edge_has }). Rechtop komt men { $upright_short } tekort ({ $upright_measure }: nodig { $upright_needs }, aanwezig { $upright_has }). Plat gaat het erdoor met { $spare } over. Wat helpt, één van deze, of beide als er in één stand twee maten tekortkomen: { $remedies }. Plat kan het onder zijn eigen gewicht doorbreken: zie de buigtabel, en draag het plat op een draagplaat onder het hele oppervlak of helemaal niet.

way-in-tight = krappe weg naar binnen: { $place }
    .detail = Gedragen { $pose }: het gaat erdoor met maar { $spare } over. Meet op de smalste plaats opnieuw, en draag vóór de steen een lat van zijn lengte en een plank van zijn hoogte erdoor.

way-in-slab = zagen vóór het binnendragen: de hele plaat blijft steken: { $place }
    .detail = Op zijn kant komt men { $edge_short } tekort ({ $edge_measure }: nodig { $edge_needs }, aanwezig { $edge_has }). Rechtop komt men { $upright_short } tekort ({ $upright_measure }: nodig { $upright_needs }, aanwezig { $upright_has }). Wat helpt, één van deze, of beide als er in één stand twee maten tekortkomen: { $remedies }. Het afgewerkte blad gaat erdoor: uitladen en aan deze kant ervan zagen.

way-in-slab-flat = zagen vóór het binnendragen: de hele plaat gaat er alleen plat door: { $place }
    .detail = Op zijn kant komt men { $edge_short } tekort ({ $edge_measure }: nodig { $edge_needs }, aanwezig { $edge_has }). Rechtop komt men { $upright_short } tekort ({ $upright_measure }: nodig { $upright_needs }, aanwezig { $upright_has }). Plat gaat hij erdoor met { $spare } over, en kan hij onder zijn eigen gewicht doorbreken. Wat helpt, één van deze, of beide als er in één stand twee maten tekortkomen: { $remedies }. Het afgewerkte blad gaat erdoor: uitladen en aan deze kant ervan zagen.

tips-out-of-hands = { $stone }: kantelt met mensen op deze plaatsen
    .detail = Het zwaartepunt ligt { $off } naast wat de plaatsen kunnen houden. Zet mensen aan beide kanten ervan.

lifter-off-the-edge = { $stone }: persoon { $lifter } heeft geen rand om vast te houden
    .detail = De opgegeven plaats ligt { $away } van de rand, meer dan { $most }. Geef plaatsen op de rand op, in het eigen assenstelsel van het blad.

lifter-at-cutout = { $stone }: persoon { $lifter } tilt naast een uitsparing
    .detail = De plaats ligt { $away } van een uitsparing, minder dan een handbreedte, { $least }. Til waar de steen heel is, nooit aan een smalle strook naast een uitsparing.

carry-too-far = { $way }: te ver om zonder rust te dragen
    .detail = De richtgewichten gelden voor dragen tot { $most }, dicht tegen het lichaam. Zet de steen onderweg op zijn kant op twee latten neer, of rijd hem op een plaatwagen.

brace-the-rail = { $rail } ({ $cutouts }): { $verdict }
    .detail = Dit stuk steen is { $width } breed en { $length } lang ({ $stone }). Plat liggend of in mensenhanden wordt het met { $together } belast als de rest van de steen meehelpt, en met { $alone } als het de buiging alleen moet opnemen, zoals wanneer die kant het eerst wordt opgetild; op zijn kant op twee steunen: { $on_edge }; toelaatbaar { $allowed }. Klem vóór het tillen recht hout van { $timber_width } × { $timber_depth } erlangs, het hout op zijn kant en over de hele lengte aanliggend (stukken naast elkaar: { $timbers }), minstens { $timber_length } lang, met beklede klemmen op hele steen aan beide einden: dan blijft er { $braced } over. Draag de steen op zijn kant; houd of klem hem nooit op die plek.

brace-the-rail-on-a-frame = { $rail } ({ $cutouts }): { $verdict }
    .detail = Dit stuk steen is { $width } breed en { $length } lang ({ $stone }). Plat liggend of in mensenhanden wordt het met { $together } belast als de rest van de steen meehelpt, en met { $alone } als het de buiging alleen moet opnemen, zoals wanneer die kant het eerst wordt opgetild; op zijn kant op twee steunen: { $on_edge }; toelaatbaar { $allowed }. Geen hout is stijf genoeg: leg de hele steen op een draagframe of draagplaat. Draag de steen op zijn kant; houd of klem hem nooit op die plek.

brace-the-neck = { $stone }, { $neck }: mag de steen daarachter niet dragen
    .detail = Deze plek is { $width } breed; als de steen plat ligt en er { $hanging } aan hangt, wordt ze met { $stress } belast, toelaatbaar { $allowed }. Ondersteun de steen aan beide kanten ervan, telkens als hij plat ligt. Klem vóór het tillen recht hout van { $timber_width } × { $timber_depth } erlangs, het hout op zijn kant en over de hele lengte aanliggend (stukken naast elkaar: { $timbers }), minstens { $timber_length } lang, met beklede klemmen op hele steen aan beide einden: dan blijft er { $braced } over.

brace-the-neck-on-a-frame = { $stone }, { $neck }: mag de steen daarachter niet dragen
    .detail = Deze plek is { $width } breed; als de steen plat ligt en er { $hanging } aan hangt, wordt ze met { $stress } belast, toelaatbaar { $allowed }. Ondersteun de steen aan beide kanten ervan, telkens als hij plat ligt. Geen hout is stijf genoeg: leg de hele steen op een draagframe of draagplaat.

narrow-rail = { $rail } ({ $cutouts }): smaller dan in het vak wordt aangehouden
    .detail = Dit stuk steen ligt naast een kraangat en is { $width } breed; { $least } is gepubliceerd als minimum naast een uitsparing, en voor een kraangat geen kleinere maat. Verplaats het gat of maak het kleiner, of vraag of de steen van onderen blijvend verstevigd kan worden.

guideline-is-not-a-limit = de richtwaarde voor tillen is geen veilige grens
    .detail = { $each } per persoon geldt voor gezonde, fitte volwassenen die dicht bij het lichaam, op heuphoogte, met rechte houding en zelden tillen; voor veel mensen, voor natte handen, treden en oneffen grond is het minder. De richtwaarde is geen belofte dat tillen daaronder veilig is. De tilvergelijking geldt voor tillen, niet voor dragen. Ga de geldende regels na.

tips-off-supports = het blad ligt niet stabiel op zijn steunen
    .detail = De steunen staan niet rondom het zwaartepunt. Zet er steunen bij of verplaats ze voordat het blad wordt neergelegd.

support-lifts-off = { $support }: draagt niets
    .detail = Het blad drukt er niet op. Controleer plaats en hoogte; trek het blad er niet naar omlaag.

falls-off-trestles = { $stone }: ligt niet op de schragen
    .detail = Met schragen op { $first } en { $second } van het einde van de plaat ligt het zwaartepunt er niet tussen, of de steen reikt niet tot de schragen. Verplaats ze vóór die snede, of laat lift.trestles weg.

bends-on-trestles = { $stone }: twee schragen zijn niet genoeg
    .detail = Op schragen op { $first } en { $second } van het einde van de plaat wordt de steen met { $stress } belast, { $times } keer wat toelaatbaar is. Leg hem in plaats daarvan op een vlakke draagplaat onder zijn hele oppervlak.

aid-too-weak = { $stone }: het opschrift van het hefmiddel is te laag voor dit gewicht
    .detail = Opschrift van het hefmiddel ({ $aid }): { $rated }; deze steen vraagt { $needs }. Gebruik er een waarop dat staat, of een lichtere steen: zaag voordat hij wordt verplaatst.

aid-without-mark = wat staat er op het hefmiddel ({ $aid })? Nodig is { $needs }
    .detail = Lees de last af die erop staat en schrijf die hier; het zwaarst: { $stone }. Geen opschrift, niet heffen. In het bestand: lift.rated.

in-slings-no-place = { $stone }: geen plaats voor twee hijsbanden
    .detail = Waar twee hijsbanden ook lopen, de hangende steen buigt meer dan toelaatbaar is. Verstevig hem, of draag hem geheel ondersteund op een draagframe.

on-a-trolley = de plaatwagen: op de kant, vastgebonden, op vlakke grond zonder helling
    .detail = De zwaardere lange kant onder, de steen aan het frame van de wagen gebonden, iemand aan elk einde en niemand ernaast. Zet de wagen om te laden tegen die lange kant, wielen geblokkeerd, kantel de steen daarover op de wagen, en bind hem vast voordat iemand loslaat. Bergaf wordt hij vanaf de hoge kant tegengehouden. De aanwijzingen van de fabrikant gaan voor.

on-a-trolley-numbers = { $stone }: als hij kantelt, doodt hij; een plaatwagen met opschrift { $rated } of meer
    .detail = Op de wagen ligt het zwaartepunt { $height } boven de vloer, en de wagen kantelt op grond met { $tips } dwarshelling (stilstaand, harde banden: eerder als hij rijdt). Op vlakke grond zonder helling is een duw van minstens { $push } nodig, en op een helling van 1 op { $run } nog eens { $ramp }, die hem ook omlaag trekt.

under-a-vacuum-lifter = de vacuümheffer: opschrift voor het dubbele gewicht, en een tweede borging
    .detail = Alleen op een droog, schoon, gaaf, gepolijst of gezoet vlak: nooit op een ruw of gekloofd vlak, en nergens over een gebrek of een herstelde plek. Op een rechtop staand vlak houden de zuignappen alleen door wrijving: gebruik daarvoor het cijfer van de fabrikant. Altijd een tweede borging (spanband, hijsband) onder de steen. Til hem een handbreed op, wacht, en kijk of elke zuignap houdt voordat hij wordt verplaatst. De aanwijzingen van de fabrikant gaan voor.{ $wet ->
            [yes] {" "}Bij dit werk wordt met water gezaagd: spoel eerst het slib af en laat het vlak drogen.
           *[other] {""}
        }{ $face ->
            [porous] {" "}Deze steen is poreus: er gaat lucht doorheen en de zuignappen laten los. Vraag het de fabrikant, of gebruik hijsbanden.
            [split] {" "}Deze steen wordt vaak met een gekloofd vlak verkocht: daarop houdt geen enkele zuignap.
           *[other] {""}
        }

under-a-vacuum-lifter-numbers = { $stone }: als hij valt, doodt hij; een vacuümheffer met opschrift { $rated } of meer
    .detail = Zuignappen in paren rond het zwaartepunt: { $cups }, en elk draagt { $each }.

under-a-vacuum-lifter-no-room = { $stone }: geen plaats voor een vacuümheffer
    .detail = Er zou een opschrift { $rated } of meer op moeten staan, maar er is rond het zwaartepunt geen plaats voor een paar zuignappen. Gebruik hijsbanden of een plaatwagen.

in-slings = de portaalkraan: opgesteld en bediend door een deskundig persoon
    .detail = Haak boven het zwaartepunt, randen bekleed, de hijsbanden zo vastgezet dat ze niet naar elkaar toe kunnen glijden, een stuurlijn aan elk einde, niemand eronder of ernaast. Til hem een handbreed op en kijk of hij waterpas hangt voordat hij wordt verplaatst. Hijsgereedschap is gekeurd, van een opschrift voorzien en opgesteld door een deskundig persoon, die bevoegd is waar de wet dat eist.

in-slings-numbers = { $stone }: als hij valt, doodt hij; hijsbanden op { $first } en { $second } van zijn linkereinde
    .detail = Van het onderste einde als de steen rechtop is getekend. Aan elke hijsband hangt { $each }; met { $legs } tussen de parten trekt elk part met { $factor } van het gewicht, { $tension }, en de haak hangt { $hook } of meer boven de steen.

not-a-hand-lift = niet met de hand te tillen: { $stones }
    .detail = { $masses }. { $people ->
            [one] Eén persoon mag op { $team } rekenen
           *[other] { $people } personen die samen tillen, mogen op { $team } rekenen
        }; boven ongeveer het dubbele daarvan is het gevaar ook voor fitte, geoefende mensen groot. Noem een hefmiddel in lift.aid: een plaatwagen die de steen op zijn kant draagt, met opschrift { $rated } of meer, alleen op vlakke grond zonder helling (duw minstens { $push }); een vacuümheffer met opschrift { $vacuum } of meer, op een droog, schoon, ononderbroken vlak; een portaalkraan of takel met hijsbanden, met opschrift { $rated } of meer en opgesteld door iemand die deskundig is in hijsgereedschap. De zwaarste op zijn kant kantelen vraagt in het begin { $tilt } aan de verre kant.

breaks-in-hands = zou in de handen breken: { $stones }
    .detail = { $masses }. Hoe { $people ->
            [one] één persoon hem ook vasthoudt
           *[other] { $people } personen hem ook vasthouden
        }, plat of op zijn kant, hij buigt meer dan toelaatbaar is. Verstevig hem, leg hem op een draagplaat, of noem een hefmiddel in lift.aid: een plaatwagen met opschrift { $rated } of meer; een vacuümheffer met opschrift { $vacuum } of meer; een portaalkraan met hijsbanden, opgesteld door een deskundig persoon.

more-than-four = te veel mensen om samen te tillen: { $people }
    .detail = Meer dan { $most } mensen werken waarschijnlijk niet als ploeg samen, en er is geen deel van hun kracht gepubliceerd om op te rekenen. Gebruik een hefmiddel, of minder mensen en een lichter stuk.

lifter-over-guideline = meer dan de richtwaarde: { $stones }
    .detail = { $masses }. { $people ->
            [one] Eén persoon mag op { $team } rekenen
           *[other] { $people } personen die samen tillen, mogen op { $team } rekenen
        }: een cijfer om beter te kijken, geen grens. Spreek vóór het tillen af wie tilt, welke weg, en waar wordt neergezet; meer mensen, een lichter stuk of een hefmiddel is beter. De zwaarste op zijn kant kantelen vraagt in het begin { $tilt } aan de verre kant.

tilt-over-guideline = regel hoe hij op zijn kant wordt gekanteld; aan de verre kant vraagt dat: { $stones }
    .detail = { $people ->
            [one] Eén persoon mag op { $team } rekenen
           *[other] { $people } personen samen mogen op { $team } in totaal rekenen
        }. Houd de steen op zijn kant van de levering tot waar hij nodig is. { $hands ->
            [0] Wat meer dan ongeveer het dubbele vraagt, draait niemand met de hand: daar is het gevaar ook voor sterke, geoefende mensen ernstig. Een takel, een vacuümheffer of een frame dat met de vastgebonden steen kantelt, door iemand die er bevoegd voor is: leg vast wat, voordat hij komt.
           *[other] Om hem te draaien: blokkeer de lange kant waarover hij draait zodat die niet wegglijdt, iedereen aan de verre lange kant, til hem in stappen op blokken, en houd de sjorband klaar voordat hij staat; of draai hem met een takel of vacuümheffer.
        } Niemand staat aan de kant waarheen hij kan vallen.

bends-flat-always = { $stone }: nooit plat op twee steunen
    .detail = Liggend ({ $how }): { $stress } waar de steen { $width } breed is, { $at } van het einde: { $times } keer de toelaatbare { $allowed } (sterkte ÷ veiligheidsfactor), zelfs op de beste twee steunen. Houd hem op zijn kant, of leg hem op een vlakke draagplaat onder zijn hele oppervlak.{ $flaws ->
            [0] {""}
            [one] {" "}De plaat heeft een gebrek: daar geldt de sterkte niet.
           *[other] {" "}De plaat heeft { $flaws } gebreken: daar geldt de sterkte niet.
        }

bends-flat = { $stone }: kan plat doorbreken als hij aan zijn einden wordt gehouden
    .detail = Liggend ({ $how }): { $stress } waar de steen { $width } breed is, { $at } van het einde: { $times } keer de toelaatbare { $allowed } (sterkte ÷ veiligheidsfactor). Til nooit één einde op terwijl de steen plat ligt. Plat mag hij alleen liggen op steunen op { $first } en { $second } van het linkereinde (het onderste einde als hij rechtop is getekend), waar het { $best } is; draag hem op zijn kant.{ $flaws ->
            [0] {""}
            [one] {" "}De plaat heeft een gebrek: daar geldt de sterkte niet.
           *[other] {" "}De plaat heeft { $flaws } gebreken: daar geldt de sterkte niet.
        }

carry-on-edge-not-by-its-ends = { $stone }: zelfs op zijn kant niet aan zijn einden
    .detail = Liggend ({ $how }): { $stress }; toelaatbaar { $allowed }, dat is { $times } keer zoveel. Houd hem vast of zet hem neer op { $first } en { $second } van het einde, waar het { $best } is. Aangenomen is dat de steen gaaf is.

carry-on-edge-braced = { $stone }: zelfs niet op zijn kant voordat hij verstevigd is
    .detail = Liggend ({ $how }): { $stress }; toelaatbaar { $allowed }, dat is { $times } keer zoveel. Verstevig eerst de smalle delen, of draag hem geheel ondersteund op een draagframe. Aangenomen is dat de steen gaaf is.

flaws-and-strength = { $count ->
            [one] de plaat heeft een gebrek
           *[other] de plaat heeft { $count } gebreken
        }: de cijfers voor de sterkte gelden daar niet
    .detail = Elke spanning hier gaat uit van gave steen; bij een scheur of een herstelde plek kan de steen al ver daaronder breken. Houd hem op zijn kant, op een draagplaat onder zijn hele oppervlak of op een draagframe.

trestles-are-moved = de schragen worden verplaatst vóór snede { $cuts }
    .detail = Geen enkele plaats is goed voor alle sneden. Til de steen eraf zoals zijn gewicht vraagt, verplaats de schragen, leg hem weer neer; de nieuwe plaatsen staan op de kaart van die snede.

rests-poorly = zet meer onder het blad: { $what }
    .detail = { $parts }. Steunen dichter bij elkaar, naast elke uitsparing, verder naar buiten. Schroef noch lijm houdt een blad dat kantelt.

# What is wrong with how the top rests: in short, and in full.
rests-overhang = overstek
rests-overhang-part = { $edges } { $count ->
            [one] steekt
           *[other] steken
        } { $reach } buiten de steunen uit (gepubliceerde grens: { $limit })
rests-overhang-person = overstek
rests-overhang-person-part = { $edges } { $count ->
            [one] steekt
           *[other] steken
        } { $reach } buiten de steunen uit (gepubliceerde grens: { $limit }) en met een persoon op de rand komt het op { $times } van wat mag
rests-span = overspanning
rests-span-part = het langste stuk zonder steun is { $span } (gepubliceerde grens: { $limit })
rests-tips = het kantelt als iemand erop leunt
rests-tips-part = een persoon van { $force } { $place } kantelt het van zijn steunen
rests-bends = iemand die erop leunt
rests-bends-part = een persoon van { $force } { $place } belast het tot { $times } van wat mag
rests-bends-elsewhere = iemand die erop leunt
rests-bends-elsewhere-part = een persoon van { $force } { $place } belast het tot { $times } van wat mag, het meest { $section }
lean-worst = op de slechtste plaats
lean-rail = op de { $rail } ({ $cutouts })
lean-overhang = op het overstek ({ $edge })
lean-between = tussen de steunen { $first } en { $second }
lean-over = boven steun { $support }
rests-over = { $support }
rests-over-part = { $support } draagt tot { $carried }, meer dan de grens van { $limit }
rests-over-person = { $support } met een persoon
rests-over-person-part = { $support } draagt tot { $with_person } met een persoon van { $force } (grens { $limit })
none-published = niets voor steen die zo dun is

# A stone in a list of stones.
stone-of-mass = { $stone } { $mass }

# What would make a way passable.
remedy-upright = draag het er rechtop door, dat vraagt { $n } hoogte
remedy-cut-to = zaag het vóór deze plaats tot hoogstens { $n } lang
remedy-widen-before = maak de weg vóór de hoek minstens { $n } breed
remedy-widen-after = maak de weg na de hoek minstens { $n } breed
remedy-widen = maak de doorgang minstens { $n } breed: haal het deurblad, de aanslagen of een kozijn weg
remedy-raise = zorg voor minstens { $n } vrije hoogte voor doorgang { $how }
