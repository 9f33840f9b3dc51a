# Findings of cuts and pieces: a line, and in full.

waste-not-freed = Tăieturi care nu se întâlnesc lasă rest prins de blat
    .detail = Părți de rest care mai țin după ultima tăietură: { $parts }, cea mai mare de { $area }, la circa { $along } de-a lungul AB și { $up } în sus de la colțul A. Ține la: { $places }. Nu lipsește nicio tăietură, dar cele de alături nu se întâlnesc nici între ele, nici cu marginea pietrei. Despărțiți-l acolo cu o gaură de carotă sau cu încă o intrare de sus lângă ultima, pe partea restului; nu îl rupeți niciodată.

said-weight = Greutatea dată de vânzător și cea calculată diferă
    .detail = Spus { $said }, calculat { $computed }: { $off } %, mai mult de { $tolerance }. Una dintre ele este greșită: piatra, dimensiunile sau grosimea. Planificați ridicarea cu valoarea mai mare și cântăriți placa dacă puteți.

fissure-in-waste = „{ $flaw }” trece prin { $pieces }: se poate rupe acolo
    .detail = Înainte de prima trecere, suporturi de ambele părți sub { $pieces }, ca fiecare parte să stea singură dacă se rupe. Nu ridicați niciodată o piesă culcată sau de un capăt peste ea: strângeți întâi lemne drepte peste ea pe ambele fețe, sau lăsați-o să se rupă și duceți părțile.{ $crossed ->
            [yes] {" "}Unde tăietura o traversează (tăieturi: { $cuts }): pași mici și fără apăsare.
           *[no] {""}
        }

waste-needs-support = Se desprinde un rest prea greu pentru a fi ținut cu mâna
    .detail = Bucata de rest (tăietura care o eliberează) și greutatea ei, cel mult: { $pieces }. Orice bucată de peste { $limit } se așază pe suporturile ei, la același nivel cu piatra care rămâne, de ambele părți ale tăieturii, înainte de prima trecere. O bucată care se lasă în jos închide fanta tăieturii pe disc.

curve-waste-heavy = Restul unei curbe cade într-o bucată prea grea pentru a fi ținută
    .detail = Bucata de rest (tăietura care o eliberează) și greutatea ei, cel mult: { $pieces }. Este mai mult de { $limit } (passes.waste_piece), și nicio tăietură dreaptă care ocolește piatra care rămâne nu o mai împarte. Sprijiniți-o de dedesubt pe toată lungimea ei înainte de ultima serie de intrări; nimeni nu o ține, niciun picior sub ea.

stopped-cut-too-short = Niciun disc din trusă nu are loc: { $places }
    .detail = Între cele două puncte în care tăietura trebuie să se oprească sunt { $room }; „{ $disc }” taie pe { $length } lungime în fața pietrei când a trecut prin toată grosimea. Cu aceeași flanșă, cel mai mic disc care trece prin toată grosimea, cu diametrul de { $least }, taie pe { $shortest } lungime; cel mai mare care are loc are diametrul de { $most }. { $verdict } O carotieră de circa { $bit } o face cu un rând de găuri.{ $waste }

sawn-with-another = Marginea { $edge } se taie odată cu marginea aflată în linie cu ea
    .detail = Tăietura marginii aflate în linie cu ea face și marginea { $edge } și lasă pe ea { $left } în loc de { $allowance }. Șlefuiți diferența, { $over }, sau dați ambelor margini același finisaj.

disc-too-small = Discul nu trece prin toată grosimea pietrei
    .detail = „{ $disc }” taie cel mult { $deepest } adâncime (diametru { $diameter }, flanșă sau cap de angrenaj { $obstruction }, talpa dispozitivului { $plate }); necesar { $needed }: lipsă { $short }. Cu aceeași flanșă este nevoie de un disc de cel puțin { $least }, pe o mașină făcută pentru acea mărime.

no-room-for-guide = Ghidajul nu are loc pe placă: { $places }
    .detail = Muchia ghidajului este la { $offset } de tăietură; placa este mai îngustă de atât de ambele părți ale ei, așa că tăietura nu este planificată. Puneți lângă placă o scândură la fel de groasă ca piatra ({ $thick }), față la nivel cu față, strângeți-le pe amândouă pe aceeași masă și așezați ghidajul pe scândură. Sau folosiți un dispozitiv cu o distanță mai mică (guide.offset).{ $waste }

core-holes-close = Găurile de carotă ale tăieturii { $cut } se suprapun sau lasă un perete subțire
    .detail = Cele mai apropiate două sunt la { $apart }, de la mijloc la mijloc, iar carotiera are diametrul de { $bit }: o carotieră care începe lângă o gaură fuge în ea, iar mai puțin de { $web } de piatră între două găuri se rupe. Țineți carotiera într-un șablon prins cu menghine deasupra fiecărui mijloc (o scândură cu o gaură de mărimea carotierei) și apăsați ușor.

rail-too-narrow = Decupajul { $cutout }{ $called } lasă o fâșie prea îngustă la marginea { $edge }
    .detail = Decupajul { $cutout } lasă: { $rail }, { $width }{ $tap }, minimum { $least }; mutați-l cu { $by } { $away }. Fâșia aceea se află de-a lungul marginii { $edge } a blatului.

rails-add-up = Decupajul { $cutout }{ $called }: fâșiile de pe ambele părți sunt împreună prea înguste
    .detail = { $rail }: { $width }{ $tap }, minimum { $least }; { $other }: { $other_width }{ $other_tap }, minimum { $other_least }. Împreună { $sum }, sunt necesari { $needed }: mutarea decupajului nu ajută niciuneia. Cedează decupajul, cu { $short } mai mic în acea direcție, sau blatul, cu tot atât mai mare; altfel rigidizați ambele fâșii înainte ca piatra să fie mutată.

rail-too-narrow-between = Decupajele { $first }{ $called_first } și { $second }{ $called_second } lasă între ele o fâșie prea îngustă
    .detail = Decupajele { $first } și { $second } lasă între ele o fâșie de { $width }, minimum { $least }; depărtați-le cu { $by }.

hangs-on-a-strip = Între decupajul { $cutout } și margine rămân numai { $about } de piatră
    .detail = Fâșia aceasta are lățimea de { $width }, mai îngustă decât este de groasă piatra ({ $thick }). Se rupe la tăiere sau la ridicare. Mutați sau schimbați ce o face atât de îngustă, ca să rămână cel puțin { $least }.

hangs-on-a-strip-between = Între decupajele { $first } și { $second } rămân numai { $about } de piatră
    .detail = Fâșia aceasta are lățimea de { $width }, mai îngustă decât este de groasă piatra ({ $thick }). Se rupe la tăiere sau la ridicare. Mutați sau schimbați ce o face atât de îngustă, ca să rămână cel puțin { $least }.

hangs-on-a-strip-corner = În spatele colțului interior de la { $edge } rămân numai { $about } de piatră
    .detail = Fâșia aceasta are lățimea de { $width }, mai îngustă decât este de groasă piatra ({ $thick }). Se rupe la tăiere sau la ridicare. Mutați sau schimbați ce o face atât de îngustă, ca să rămână cel puțin { $least }.

curve-without-arm = Curba ({ $part }) se trasează de la coarda ei, fără dispozitivul de cercuri
    .detail = Brațul ar fi de { $arm }; dispozitivul se reglează de la { $shortest } la { $longest }: cu { $by } { $which }. Trasați coarda și așezați ghidajul drept pe cele două semne ale fiecărei poziții; sau faceți un braț care se potrivește.

arm-out-of-reach = Dispozitivul de cercuri nu se poate regla pentru un cerc întreg ({ $part })
    .detail = Brațul ar fi de { $arm }; dispozitivul se reglează de la { $shortest } la { $longest }: cu { $by } { $which }. Un cerc întreg nu are coardă de la care să fie trasat. Faceți un braț care se potrivește sau alegeți altă rază.

corner-ground-by-hand = Curba ({ $part }) se șlefuiește manual
    .detail = Tăieturile de margine de lângă ea și fantele lor nu lasă piatră pentru o intrare de sus. Însemnați curba pe piatră și șlefuiți-o manual după ultima tăietură.

inside-corner-radius = { $part } primește o rază de { $left }
    .detail = Rază cerută: { $given }{ $sharp }. Într-un colț interior cu raza sub { $least } începe o fisură. Planul lasă acolo o rază de { $left }, cea a găurii de carotă.{ $still }

inside-corner-nearest-radius = { $part } primește o rază de { $left }
    .detail = Rază cerută: { $given }. Cea mai apropiată carotieră lasă { $left } și, în colț, { $ground } de piatră. Șlefuiți această piatră manual sau lăsați-o.

much-to-grind = { $part }: rămâne mult de șlefuit
    .detail = „{ $disc }” taie pe { $length } lungime în fața pietrei; în interiorul unei raze de { $radius } trebuie să stea la { $face } de mijloc și lasă { $left } lângă mijlocul fiecărei fante, mai mult de { $much }. Un disc mai mic sau o carotieră de { $bit } sau mai puțin lasă mai puțin.

no-disc-for-hollow = { $places }: niciun disc din trusă nu poate tăia această curbă interioară
    .detail = „{ $disc }” taie pe { $length } lungime în fața pietrei; curba interioară are raza de { $radius } și diametrul de { $across }. Cu aceeași flanșă, cel mai mic disc care trece prin toată grosimea, cu diametrul de { $least }, taie pe { $shortest } lungime; cel mai mare care are loc are diametrul de { $most }. { $verdict }{ $either } O carotieră de { $bit } o face dintr-o singură gaură, una mai mică dintr-un șir de găuri.{ $waste }

inside-corner-needs-core-bit = Este nevoie de o gaură de carotă: { $places }
    .detail = { $kit } Într-un colț interior ascuțit începe o fisură: are nevoie de o rază de cel puțin { $radius }, deci de o carotieră cu diametrul de cel puțin { $least }, cu care se găurește înainte de tăieturile care se opresc acolo. Numiți-o în fișierul lucrării ([[core_bit]]).{ $waste }

# One piece of a list: its name, the cut that frees it, its weight.
piece-of-cut = { $piece } ({ $cut }): { $mass }

# A piece of the boundary of the top, or of an opening.
part-edge = marginea { $name }
part-edge-opening = marginea { $name } din decupajul { $cutout }
part-corner = colțul { $name }
part-corner-opening = colțul { $name } din decupajul { $cutout }
part-corners = colțurile { $name }
part-corners-opening = colțurile { $name } din decupajul { $cutout }
part-all-round = tot cercul
part-all-round-opening = tot cercul din decupajul { $cutout }

# What stays on the top for want of a cut, behind the cause.
waste-stays = {" "}De aceea rămâne rest prins de blat, părți: { $parts }, cea mai mare de { $area }, la circa { $along } de-a lungul AB și { $up } în sus de la colțul A. Lucrarea nu se poate termina după această fișă.

# What a job calls a cutout, behind its number.
cutout-called = {" "}({ $name })

piece-held-below = Nicio carotă nu desparte dedesubt bucata din decupajul { $cutout }{ $called }
    .detail = Discul este rotund: dedesubt fiecare tăietură se termină cu { $run_out } înaintea capătului ei de pe față, iar acolo bucata încă se ține. Găuri lângă capete, date de sus înainte de tăiere, o despart; nicio carotă disponibilă nu are loc acolo, deci nu sunt nici trasate, nici cuprinse în minute. Aduceți una și treceți-o ca [[core_bit]] sau dați decupajul unui atelier. Nimeni nu lucrează dedesubt, iar bucata nu se rupe niciodată afară: fisura intră în blat.

opening-narrower-than-kerf = Tăietura nu are loc în decupajul { $cutout }{ $called }
    .detail = Tăiată pe o latură, o fantă de { $kerf } intră pe cealaltă în piatra care rămâne. Faceți decupajul mai lat decât fanta, luați un disc mai subțire sau dați-l unui atelier.{ $waste }
