# Findings of cuts and pieces: a line, and in full.

waste-not-freed = Kutt som ikke møtes, lar avkapp henge på benkeplaten
    .detail = Deler av avkappet som fortsatt henger fast etter siste kutt: { $parts }, den største på { $area } omtrent { $along } langs AB og { $up } opp fra hjørne A. Det henger ved: { $places }. Ingen kutt mangler, men de ved siden av møter verken hverandre eller kanten på steinen. Skill det der med et kjernehull, eller med ett dykkutt til ved siden av det siste, på avkappets side; brekk det aldri av.

said-weight = Selgerens vekt og den beregnede vekten er ulike
    .detail = Oppgitt { $said }, beregnet { $computed }: { $off } %, mer enn { $tolerance }. Steinslaget, målene eller tykkelsen er feil. Planlegg løftet etter det tyngste tallet, og vei platen hvis du kan.

fissure-in-waste = «{ $flaw }» går gjennom { $pieces }: den kan brekke der
    .detail = Underlag på begge sider av den under { $pieces } før første gjennomgang, så hver del ligger for seg om den brekker. Løft aldri et stykke flatt eller i én ende tvers over den: klem rette lekter over den på begge sider først, eller la den brekke og bær bort delene.{ $crossed ->
            [yes] {" "}Der kuttet krysser den (kutt: { $cuts }): små steg og ikke noe trykk.
           *[no] {""}
        }

waste-needs-support = Avkapp som er for tungt til å holdes for hånd, løsner
    .detail = Bit (kutt som løsner den) og vekt, høyst: { $pieces }. Hver bit over { $limit } skal bæres av egne støtter, i høyde med steinen som blir igjen, på begge sider av kuttet, før første gjennomgang. En bit som siger, klemmer kuttesporet sammen om skiva.

curve-waste-heavy = Avkappet fra en kurve faller i et stykke som er for tungt å holde
    .detail = Bit (kutt som løsner den) og vekt, høyst: { $pieces }. Det er mer enn { $limit } (passes.waste_piece), og ingen rette kutt klar av steinen som blir igjen, deler den videre. Støtt den nedenfra over hele lengden før siste runde; ingen holder den, ingen fot under den.

stopped-cut-too-short = Ingen skive i utstyret får plass: { $places }
    .detail = Det er { $room } mellom to stopp i kuttet; «{ $disc }» kutter { $length } langt i oversiden når den er helt gjennom. Med samme flens kutter den minste skiva som kommer gjennom, { $least } i diameter, { $shortest } langt; den største som får plass, er { $most } i diameter. { $verdict } Et kjernebor på omtrent { $bit } lager det med en rad av hull.{ $waste }

sawn-with-another = Kant { $edge } sages sammen med kanten på linje med den
    .detail = Kantkuttet for kanten på linje med den lager også kant { $edge }, og lar { $left } stå igjen på den i stedet for { $allowance }. Slip bort forskjellen, { $over }, eller gi begge kantene samme kantbearbeiding.

disc-too-small = Skiva kommer ikke gjennom steinen
    .detail = «{ $disc }» kutter høyst { $deepest } dypt (diameter { $diameter }, hinder { $obstruction }, grunnplate { $plate }); det trengs { $needed }: { $short } for lite. Med samme flens trengs en skive på minst { $least }, på en maskin som er laget for den størrelsen.

no-room-for-guide = Føringen har ingen plass på platen: { $places }
    .detail = Kanten på føringen ligger { $offset } fra kuttet; platen er smalere enn det på begge sider av kuttet, så kuttet er ikke planlagt. Legg en planke like tykk som steinen ({ $thick }) inntil platen, flate i høyde med flate, spenn begge fast på samme benk og la føringen ligge på planken. Eller bruk en jigg med mindre avstand (guide.offset).{ $waste }

core-holes-close = Kjernehullene i kutt { $cut } overlapper eller har bare en tynn vegg mellom seg
    .detail = De to nærmeste ligger { $apart } fra sentrum til sentrum, kjernebor { $bit } i diameter: et bor som begynner ved siden av et hull, glir inn i det, og mindre enn { $web } stein mellom to hull brekker ut. Styr boret i en mal som er spent fast over hvert sentrum (en fjøl med et hull i borets størrelse), og trykk lett.

rail-too-narrow = Utskjæring { $cutout }{ $called } gir en for smal steinstripe ved { $edge }
    .detail = utskjæring { $cutout } gir en { $rail } på { $width }{ $tap }, minst { $least }; flytt den { $by } { $away }. Steinstripen ligger langs { $edge } på benkeplaten.

rails-add-up = Utskjæring { $cutout }{ $called }: steinstripene på begge sider er for smale til sammen
    .detail = { $rail } på { $width }{ $tap }, minst { $least }; { $other } på { $other_width }{ $other_tap }, minst { $other_least }. Til sammen { $sum }, det trengs { $needed }: å flytte utskjæringen hjelper ingen av dem. Det som må vike, er utskjæringen, { $short } mindre den veien, eller benkeplaten, like mye større; ellers må begge stripene stives av før steinen flyttes.

rail-too-narrow-between = Utskjæring { $first }{ $called_first } og { $second }{ $called_second } gir en for smal steinstripe mellom seg
    .detail = utskjæring { $first } og { $second } gir en steinstripe på { $width } mellom seg, minst { $least }; flytt dem { $by } fra hverandre.

hangs-on-a-strip = Bare { $about } stein blir igjen mellom utskjæring { $cutout } og kanten
    .detail = Den stripen er { $width } bred, smalere enn steinen er tykk ({ $thick }). Den brekker under sagingen eller under løftet. Flytt eller endre det som lager den, slik at den blir minst { $least }.

hangs-on-a-strip-between = Bare { $about } stein blir igjen mellom utskjæring { $first } og { $second }
    .detail = Den stripen er { $width } bred, smalere enn steinen er tykk ({ $thick }). Den brekker under sagingen eller under løftet. Flytt eller endre det som lager den, slik at den blir minst { $least }.

hangs-on-a-strip-corner = Bare { $about } stein blir igjen bak det innvendige hjørnet ved { $edge }
    .detail = Den stripen er { $width } bred, smalere enn steinen er tykk ({ $thick }). Den brekker under sagingen eller under løftet. Flytt eller endre det som lager den, slik at den blir minst { $least }.

curve-without-arm = Kurven ved { $part } merkes opp fra korden, uten sirkeljiggen
    .detail = Armen ville bli { $arm }; jiggen går fra { $shortest } til { $longest }: { $by } { $which }. Strek opp korden og legg den rette føringen på de to merkene for hver stasjon; eller lag en arm som passer.

arm-out-of-reach = Sirkeljiggen kan ikke stilles inn for en hel sirkel ({ $part })
    .detail = Armen ville bli { $arm }; jiggen går fra { $shortest } til { $longest }: { $by } { $which }. En hel sirkel har ingen korde å merke den opp fra. Lag en arm som passer, eller velg en annen radius.

corner-ground-by-hand = Kurven ved { $part } slipes for hånd
    .detail = Kantkuttene ved siden av og kuttesporene deres lar det ikke bli igjen stein til et dykkutt. Merk opp kurven på steinen og slip den for hånd etter siste kutt.

inside-corner-radius = { $part } får en radius på { $left }
    .detail = Ønsket radius: { $given }{ $sharp }. I et innvendig hjørne på mindre enn { $least } begynner en sprekk. Planen gir en radius på { $left } der, radien til kjernehullet.{ $still }

inside-corner-nearest-radius = { $part } får en radius på { $left }
    .detail = Ønsket radius: { $given }. Det nærmeste kjerneboret gir { $left }, og { $ground } stein blir stående i hjørnet. Slip den bort for hånd, eller la den stå.

much-to-grind = { $part }: mye blir igjen å slipe
    .detail = «{ $disc }» kutter { $length } langt i oversiden; innvendig i en radius på { $radius } må den stå { $face } fra sentrum, og det blir stående { $left } ved siden av midten av hvert spor, mer enn { $much }. Med en mindre skive eller et kjernebor på { $bit } eller mindre blir det stående mindre.

no-disc-for-hollow = { $places }: ingen skive i utstyret kan kutte denne innvendige kurven
    .detail = «{ $disc }» kutter { $length } langt i oversiden; den innvendige kurven har en radius på { $radius }, { $across } i diameter. Med samme flens kutter den minste skiva som kommer gjennom, { $least } i diameter, { $shortest } langt; den største som får plass, er { $most } i diameter. { $verdict }{ $either } Et kjernebor på { $bit } lager den i ett hull, et mindre i en kjede av hull.{ $waste }

inside-corner-needs-core-bit = Kjernehull trengs: { $places }
    .detail = { $kit } I et skarpt innvendig hjørne begynner en sprekk: det må ha en radius på minst { $radius }, altså et kjernebor på minst { $least } i diameter, boret før kuttene som stopper der. Før det inn i jobbfilen ([[core_bit]]).{ $waste }

# One piece of a list: its name, the cut that frees it, its weight.
piece-of-cut = { $piece } ({ $cut }): { $mass }

# A piece of the boundary of the top, or of an opening.
part-edge = kant { $name }
part-edge-opening = kant { $name } i utskjæring { $cutout }
part-corner = hjørne { $name }
part-corner-opening = hjørne { $name } i utskjæring { $cutout }
part-corners = hjørner { $name }
part-corners-opening = hjørner { $name } i utskjæring { $cutout }
part-all-round = hele sirkelen
part-all-round-opening = hele sirkelen i utskjæring { $cutout }

# What stays on the top for want of a cut, behind the cause.
waste-stays = {" "}Derfor blir avkapp hengende på benkeplaten, deler: { $parts }, den største på { $area } omtrent { $along } langs AB og { $up } opp fra hjørne A. Arbeidet kan ikke gjøres ferdig etter dette arket.

# What a job calls a cutout, behind its number.
cutout-called = {" "}({ $name })

piece-held-below = Ingen kjernebor skiller biten i utsparing { $cutout }{ $called } på undersiden
    .detail = Skiva er rund: på undersiden slutter hvert kutt { $run_out } før enden i overflaten, og der henger biten fortsatt. Hull ved siden av endene, boret ovenfra før sagingen, skiller den; ingen tilgjengelig kjernebor får plass der, så de er verken plassert eller med i minuttene. Ta med en og før den opp som [[core_bit]], eller få åpningen skåret på et verksted. Ingen arbeider under, og biten brekkes aldri ut: sprekken løper inn i benkeplaten.

opening-narrower-than-kerf = Sagsporet har ikke plass i utsparing { $cutout }{ $called }
    .detail = Saget langs den ene siden går et spor på { $kerf } inn i steinen som skal bli på den andre. Gjør utsparingen bredere enn sporet, ta en tynnere skive eller få det gjort på et verksted.{ $waste }
