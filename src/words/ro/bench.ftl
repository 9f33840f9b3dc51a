# The bench pages, the annex and the answers in a terminal.

bench-head = plan { $plan } · pagina { $number } din { $count }
bench-head-annex = plan { $plan } · anexă, pagina A{ $number } din A{ $count }
bench-foot = Regulile locale, instrucțiunile producătorilor și persoanele competente au întâietate față de această fișă.
bench-foot-cut = Întâi crestați. Nu răsuciți, nu împingeți lateral. Dacă discul se prinde: oprit, așteptați, eliberați-l, din nou în piatră numai la turație plină.
bench-stop = STOP
bench-kills-now = ucide
bench-kills-later = ucide mai târziu
bench-maims = mutilează
bench-lasting = rămâne pe viață
bench-breaks-stone = rupe piatra
bench-blank = de completat
bench-sentences = { $a } { $b }
bench-term = { $term }

# At a glance
bench-glance = Pe scurt
bench-glance-title = Pe scurt: { $work }
bench-work-straight = { $count ->
    [one] o margine de tăiat
    [few] { $count } margini de tăiat
   *[other] { $count } de margini de tăiat
 }
bench-work-curves = { $count ->
    [one] o curbă cu intrări de sus
    [few] { $count } curbe cu intrări de sus
   *[other] { $count } de curbe cu intrări de sus
 }
bench-work-openings = { $count ->
    [one] o deschizătură de tăiat
    [few] { $count } deschizături de tăiat
   *[other] { $count } de deschizături de tăiat
 }
bench-glance-alt = Placa văzută de sus cu blatul, { $length } pe { $width }, tăieturile în ordine și resturile cu greutatea lor.
bench-glance-open = Înainte de pornirea mașinii: lămuriți fiecare punct, scrieți rezultatul, bifați
bench-glance-warnings = Ce vă poate face această lucrare, ce e mai rău întâi
bench-top-size = { $length } × { $width }
bench-waste-name = { $name } { $mass }
bench-keep = rămâne
bench-top-corner = colț { $corner }
bench-practice-here = probă
bench-tile-top = blatul finit
bench-tile-slab = placa
bench-tile-waste = restul cel mai greu
bench-tile-sawing = disc în piatră
bench-tile-setting = pregătire
bench-tile-silica = silice în șlam
bench-tile-silica-dry = silice în praf
bench-tile-likely = cel mult; probabil { $mass }
bench-tile-likely-thick = cel mult; probabil { $mass }; { $thick }
bench-tile-no-waste = nu cade nicio bucată
bench-tile-after = { $name }, tăietura { $cut }
bench-tile-shares = { $count ->
    [one] o persoană, o zi
    [few] împărțit la { $count } persoane sau zile
   *[other] împărțit la { $count } de persoane sau zile
 }
bench-tile-with-other = cu { $other } de altă muncă: { $shares }
bench-tile-without-edges = { $shares }; fără finisare
bench-not-counted = Polizarea, lustruirea și teșirea marginilor nu sunt cuprinse în nicio cifră de aici, dacă nu stau la [[today]]; se adună la ziua aceleiași persoane.
bench-tile-set-ups = { $count ->
    [one] o așezare
    [few] { $count } așezări
   *[other] { $count } de așezări
 }
bench-tile-of-dust = cel mult, în { $mass } de piatră

# Mark out
bench-mark = Trasare
bench-mark-title = Trasați toate liniile înainte de prima tăietură
bench-mark-rule = Trageți fiecare linie peste toată placa înainte de prima tăietură. O tăietură ia un semn; linia de pe piatra care rămâne se vede încă.
bench-mark-alt = Placa văzută de sus cu toate liniile de trasat, semnele lor la margini și toate pivoturile și găurile.
bench-mark-what = punct
bench-mark-off = de la linia trasată
bench-mark-off-that = de la linia { $cut }
bench-mark-named = { $mark }
bench-mark-off-short = { $cut }: { $distance }
bench-mark-on-short = pe { $cut }
bench-mark-off-line = linia { $cut }: { $distance }
bench-mark-on-line = pe linia { $cut }
bench-mark-check = control
bench-mark-line-check = control linie
bench-mark-on-curve = linia tăieturii { $cut }
bench-mark-keep = linia de păstrat
bench-mark-guide = ghidaj, idem
bench-mark-tape-from = ruletă
bench-marked = { $mark } { $distance }
bench-marked-from = { $mark } { $corner } { $distance }
bench-tape = { $corner } { $distance }
bench-mark-pivot = { $mark } pivot
bench-mark-chord = { $mark } coardă
bench-mark-hole = { $mark } gaură
bench-mark-stop = { $mark } oprire
bench-mark-both = Tăietura { $cut }: { $distance } de la colțul { $corner } al blatului pe ambele linii.
bench-mark-along = Tăietura { $cut }, de la colțul { $corner } al blatului: { $before } înapoi, { $after } înainte.
bench-mark-guides = Fiecare linie de ghidaj merge la { $offset } de linia ei de păstrat, de la un capăt la altul.
bench-mark-rough = Un colț la o muchie brută este acolo unde se încrucișează sforile de-a lungul celor două muchii: marcați-l întâi.
bench-mark-tape = Țineți cârligul ruletei chiar pe colț. La control o abatere mai mare de { $tape }: măsurați din nou, nu mutați linia. { $guides }
bench-mark-between = O treizeci și doime de inch este mijlocul dintre două diviziuni ale unei rulete care arată șaisprezecimi.
bench-end = { $mark }: { $distance } de la { $corner } pe { $edge }

# Straight cuts
bench-straight = Tăieturi drepte
bench-straight-title = Dreaptă, marginea { $edge }, lungime { $length }, piatră { $thick }
bench-relief-title = Tăietură de degajare la { $edge }, lungime { $length }, piatră { $thick }
bench-straight-alt = Placa văzută de sus înainte de tăietura pe marginea { $edge }: ghidaj, suporturi, locul operatorului și ce se desprinde: { $waste }.
bench-you = operator
bench-depth = adâncime
bench-depths = adâncimi
bench-trestles-move = Întâi ridicați piatra jos și mutați caprele: la { $first } și { $second } de capătul plăcii.
bench-trestles-board = Întâi ridicați piatra jos: de aici încolo stă pe un panou plan, sub toată suprafața.
bench-late = Numai după tăietura { $cut }, care are pagina ei.
bench-fact-guide = ghidaj
bench-fact-ends = capetele lui
bench-fact-moves = stă la
bench-fact-how = cum
bench-fact-bearers = suporturi
bench-fact-drill = întâi găuriți
bench-fact-when = când
bench-guide-kept = la { $offset } de linia de păstrat, pe piatra care rămâne
bench-guide-waste = la { $offset } de linia de păstrat, pe rest
bench-ends = { $first }; { $second }
bench-moves = { $places } de la { $mark }, pe rând la fiecare adâncime{ $clamp ->
    [no] ; unde nu ajunge nicio menghină, o ventuză de fixare, încercată cu mâna
   *[yes] {""}
 }
bench-stone-end = capătul pietrei dinspre { $mark }
bench-span = { $from } până la { $to }
bench-how = { $parts }
bench-how-far-end = La fiecare adâncime întâi ultimii { $length } la { $last }, din afară spre interior; apoi de la celălalt capăt până acolo.
bench-how-stop = Se oprește la { $mark }: centrul discului nu mai aproape de { $short }. Ce lasă discul rotund se scoate la urmă și de sus: carotă în rest, apoi șlefuit; niciodată de dedesubt.
bench-how-stop-hole = Se termină în gaura de la { $mark }: centrul discului nu mai aproape de { $short }.
bench-how-allowance = { $left } rămân pentru finisare.
bench-how-breaks = De la { $depth } se poate rupe.
bench-bearers = de fiecare parte, { $off }: la { $at } de la { $mark }
bench-bearers-even = { $count } de fiecare parte, { $off }: de la { $first } la { $last } de la { $mark }, la fiecare { $step }
bench-bearers-off = la { $off } de linie
bench-bearers-off-each = la { $kept } de linie, la { $waste } sub rest
bench-struck = după linia trasată { $first } la { $second }: un capăt nu mai este
bench-drill = Ø { $bit } la { $marks }, cu apă, înainte să se apropie discul
bench-free-heavy = { $name } se desprinde: până la { $mass }. Stă pe suporturile ei, la nivel, înainte de prima trecere. Nicio mână, niciun picior, niciun genunchi sub ea; nimeni nu o ține.
bench-free-carried = { $name } se desprinde: până la { $mass }. Stă pe suporturile ei, la nivel, înainte de prima trecere. Nicio mână, niciun picior, niciun genunchi sub ea; nimeni nu o ține. { $away }
bench-away = Apoi { $people } persoane { $how ->
            [flat] o duc culcată pe două șipci pe podea, la o cincime din lungime de la capete.
           *[edge] o ridică pe latura lungă, o duc pe cant pe două șipci lângă un perete și o leagă acolo.
        }
bench-away-more = E nevoie de { $people } persoane ca să fie dusă { $how ->
            [flat] culcată
           *[edge] pe cant
        }, iar lucrarea are mai puține: găsiți-le sau un mijloc ajutător, ori tăiați-o de-a curmezișul unde stă, cu un suport de fiecare parte a liniei.
bench-away-aid = Apoi { $aid ->
            [trolley] { $people } persoane ({ $half }) o ridică pe cant și căruciorul o duce, legată,
            [vacuum] ridicătorul cu vid o duce, pe cant,
           *[gantry] palanul o duce, pe cant în două chingi,
        } pe două șipci lângă un perete; legați-o acolo.
bench-away-sawn = Nicio echipă nu o duce: tăiați-o de-a curmezișul unde stă, cu un suport de fiecare parte a liniei, sau aduceți un mijloc ajutător.
bench-free-light = { $name } se desprinde: până la { $mass }. Un suport sub ea înainte de prima trecere; nicio mână dedesubt.
bench-free-flaw = „{ $flaw }” trece prin ea: se poate rupe acolo. Suporturi de ambele părți; lemn drept strâns deasupra înainte de ridicare.
bench-free-station = { $name } se desprinde cam la poziția { $station }, ultima adâncime: până la { $mass }. Un suport sub ea înainte de prima trecere; nicio mână dedesubt.
bench-measured = marginea { $edge }, lipsă sau în plus (trebuie 0)
bench-cut-by = tăiat de, ora

# Curves
bench-curve = Curbă, tăietura { $cuts }
bench-curve-title = { $count ->
    [one] O poziție a curbei de la { $corners } prin intrare de sus, { $depths } adâncimi
    [few] { $count } poziții ale curbei de la { $corners } prin intrări de sus, { $depths } adâncimi
   *[other] { $count } de poziții ale curbei de la { $corners } prin intrări de sus, { $depths } adâncimi
 }
bench-curve-alt = Curba văzută de sus cu pozițiile ei, numerotate, pivotul sau coarda și restul.
bench-curve-how = Cum
bench-curve-line = raza { $radius }; { $left } rămân pentru finisare
bench-curve-line-inside = raza { $radius }; { $left } rămân pentru finisare; pozițiile pe raza { $stations }
bench-curve-rise = coarda { $chord }, curba urcă la mijloc cu { $rise } peste ea
bench-curve-struck = { $points }, trasat înainte de tăietura 1: vezi Trasare
bench-curve-swing = { $mark }: la { $radius } de fiecare dintre { $points }
bench-curve-stations = Trasați linia în jurul pivotului. Măsurați fiecare poziție drept de la semnul de lângă numărul ei; vecinele sunt la { $apart }.
bench-curve-ordinates = Trasați coarda. Măsurați fiecare poziție de-a lungul ei și perpendicular pe ea; vecinele sunt la { $apart }.
bench-curve-plunge = Discul perpendicular pe braț la poziție: fața apropiată la { $near } de pivot, semnul dispozitivului la { $arm }. Stați lângă linia lui, niciodată în ea. Drept în jos, drept afară. Nu îl conduceți niciodată pe curbă.
bench-curve-plunge-guide = Marginea ghidajului la { $offset } de poziție și la { $gap } de curbă, { $half } de o parte și de alta; fața apropiată pe curbă. Stați lângă linia lui, niciodată în ea. Drept în jos, drept afară. Nu îl conduceți niciodată pe curbă.
bench-curve-plunge-square = Trasați centrul arcului, la { $radius } de ambele capete ale coardei. Discul stă perpendicular pe linia din centru prin poziție, cu fața exterioară, cea dinspre afară de centru, la poziție; marginea ghidajului cu { $offset } mai departe. Stați lângă linia lui, niciodată pe ea. Drept în jos, drept afară. Nu îl rotiți niciodată.
bench-curve-rings = Toate pozițiile la o adâncime, apoi toate la următoarea: { $depths }. Piatra are { $thick }.
bench-curve-ridges = Rămân creste de { $left }: luați-le cu apă, cu oală diamantată sau disc lamelar, granulația 60, de-a lungul curbei, până la linie; apoi 120, 200, 400.
bench-fact-pivot = pivot
bench-fact-chord = coardă
bench-fact-stands = stă pe
bench-fact-swing = se află
bench-fact-line = linia de păstrat
bench-arm = semn { $length }
bench-pivot-top = blat: bandă sau ventuză, niciodată găurit
bench-pivot-cutout = piatra care cade mai târziu, încă la locul ei
bench-pivot-waste = rest: țineți bucata la locul ei până e gata curba
bench-pivot-off = lângă piatră: fixați acolo ceva de aceeași înălțime
bench-station = nr.
bench-station-along = de-a lungul
bench-station-off = în lături
bench-station-off-waste = lateral, spre rest
bench-relief-first = Întâi tăieturile de degajare, ca restul să cadă pe bucăți.
bench-relief-cut = tăietură
bench-relief-guide = ghidaj pe semne
bench-relief-length = lungime
bench-two-marks = { $first } și { $second }

# Openings
bench-opening = Deschizătura { $number }
bench-opening-title = Deschizătură: { $what }, piatră { $thick }
bench-opening-alt = Deschizătura văzută de sus cu găurile, tăieturile și liniile de ghidaj, și piatra cea mai îngustă de lângă ea.
bench-opening-corner-alt = Un colț al deschizăturii: liniile trasate și punctele de lângă ele
bench-opening-what = ce
bench-opening-marks = semne
bench-opening-how = cum
bench-opening-depths = adâncimi
bench-depths-straight = drept
bench-depths-curve = rotund
bench-opening-stop = centrul rămâne cu { $short } înainte de { $mark }
bench-opening-hole = gaură Ø { $bit }
bench-opening-straight = dreaptă, { $length }
bench-opening-curve = rotundă, { $length }
bench-opening-swing = raza { $radius }, braț { $arm }, poziții: { $count }
bench-opening-plunges = intrări de sus: { $count }, pe o coardă de { $chord }, săgeata { $rise }
bench-opening-drill = cu apă, drept în jos, de sus
bench-opening-stations-chord = Poziții, tăietura { $cuts }: de-a lungul coardei de la semnul e, și perpendicular pe ea
bench-opening-stations-pivot = Poziții, tăietura { $cuts }: drept de la semnele trasate
bench-opening-step-drill = Găuriți întâi toate găurile: discul se oprește apoi într-o gaură și nicio tăietură nu trece în colț.
bench-opening-step-saw = Tăiați din gaură în gaură, fiecare tăietură la toată adâncimea înainte de următoarea. Discul este rotund: dedesubt capetele tăieturilor țin încă bucata. Eliberați-o de sus, cu carota în rest peste fiecare capăt, ce rămâne se șlefuiește; nimeni nu lucrează dedesubt. Piatra trebuie sprijinită de jur împrejur și sub bucata care cade.
bench-opening-step-saw-parted = Tăiați din gaură în gaură, fiecare tăietură la toată adâncimea înainte de următoarea. Discul este rotund: dedesubt capetele tăieturilor ar ține încă bucata; găurile de lângă ele o despart acolo, iar ce rămâne se șlefuiește. Nimeni nu lucrează dedesubt. Piatra trebuie sprijinită de jur împrejur și sub bucata care cade.
bench-opening-step-last = Ultima tăietură eliberează bucata: întâi suporturi sub ea, nimeni dedesubt. De acum piatra este slabă lângă deschizătură: atele prinse înainte de a o mișca.
bench-rail = { $what }
bench-rail-holds = lățime { $width }: ține; se duce pe cant, niciodată de fâșie
bench-rail-brace = lățime { $width }: numai cu atele. { $splint }
bench-rail-weak = lățime { $width }: prea slabă chiar cu atele. { $splint }
bench-splint = { $count } × lemn { $wide } × { $high }, lungime { $length }, prins înainte de prima tăietură aici

# Moving
bench-move = Mutare și așezare
bench-move-title = Pe cant, cu mâna, legată când stă
bench-move-title-trolley = Pe cant pe cărucior, legată, pe teren orizontal
bench-move-title-vacuum = Pe cant sub dispozitivul cu vacuum
bench-move-title-gantry = Pe cant în două chingi
bench-move-slab = Placa pe capre, { $alike ->
    [yes] oricare latură jos
   *[no] { $side } jos
 }
bench-move-top = Blatul la locul lui, { $alike ->
    [yes] oricare latură jos
   *[no] { $side } jos
 }
bench-move-alt = Piatra pe cant cu utilajul ei și câte o persoană la fiecare capăt, la scară; cântărește până la { $mass }.
bench-move-on-edge = Niciodată culcată, ținută de capete: se rupe. Pe cant tot drumul, culcată numai deasupra ambelor capre. Nu ridicați niciodată un singur capăt.
bench-move-tied = Pe cant tot drumul, legată ori de câte ori stă.
bench-turn-slab = pe cant lângă ambele capre, vehiculul blocat; latura lungă de jos pe amândouă deodată, apoi culcată: { $hands ->
    [none] nu cu mâna, ci cu palan, dispozitiv cu vacuum sau cadru basculant
    [open] cum stabilește pagina 1: toți la latura lungă opusă, nimeni dedesubt
    [aid] o întoarce dispozitivul, două persoane ghidează
   *[team] toți la latura lungă opusă, nimeni dedesubt
 }. Legătura la urmă.
bench-turn-top = pe cant lângă locul lui, apoi pe șipci căptușite de-a curmezișul: { $hands ->
    [none] nu cu mâna, ci cu palan, dispozitiv cu vacuum sau cadru basculant
    [open] cum stabilește pagina 1: toți la latura lungă opusă, nimeni dedesubt
    [aid] îl întoarce dispozitivul, două persoane ghidează
   *[team] toți la latura lungă opusă, nimeni dedesubt
 }. Șipcile pe rând, latura lungă ridicată cu pene, niciun deget dedesubt.
bench-fact-flat = placa, culcată
bench-fact-set = blat, așezat
bench-move-hands = Unde vin mâinile
bench-move-hands-on-edge = Unde vin mâinile: atârnă în ele pe cant, niciodată culcată
bench-move-trestles = Două capre din lateral: distanțe de la capătul { $corner } și ce duce fiecare
bench-move-supports = Pe ce stă: mijlocul fiecărui suport, ca în desen
bench-hands-alt = Piatra văzută de sus cu câte o persoană la fiecare loc și cât duce fiecare.
bench-hands = { $number }: { $mass }
bench-trestles-alt = Placa pe două capre, la { $first } și { $second } de capătul ei.
bench-supports-alt = Blatul văzut de sus pe suporturile lui, cu ce duce fiecare.
bench-supports-short = Așa nu ajunge: întâi mai mult sprijin, vezi pagina 1.
bench-free-span = { $length } în locul cel mai lat; cel mult { $limit }
bench-overhang = { $edge }: { $length }; cel mult { $limit }. Puneți acolo un suport
bench-overhang-person = { $edge }: { $length }; nimeni nu se reazemă acolo, sau puneți un suport
bench-bearing-over = o persoană rezemată pe blat pune { $person } pe el, are voie { $limit }: nimeni nu se așază și nu se reazemă acolo, sau adăugați un suport
bench-support-name = { $number } { $what }
bench-support = { $along } de la stânga, { $up } de jos; duce cel mult { $mass }
bench-fact-trolley = cărucior
bench-fact-vacuum = vacuum
bench-fact-slings = chingi
bench-fact-lift = cu mâna
bench-fact-fall = dacă cade
bench-fact-free = fără suport
bench-fact-over = dincolo de suporturi
bench-trolley = marcat pentru { $rated } sau mai mult; împingere { $push } pe orizontală
bench-rated = marcat pentru { $rated } sau mai mult
bench-slings = { $each } pe fiecare, { $tension } în fiecare ramură la { $angle }
bench-fall = nimeni la mai puțin de { $clear }, de ambele părți; legați-o
bench-lift-never = niciodată: { $people } împreună se bazează pe { $limit } în total{ $two }
bench-lift-two = {""}, doi pe { $mass }
bench-lift-above = peste valoare: una duce { $carried }, valoarea este { $limit }; întâi stabiliți (pagina 1)
bench-lift-over = nu așa: una ar duce { $carried }, valoarea este { $limit }
bench-lift-tips = nu așa: se răstoarnă
bench-lift-breaks = nu cu mâna: culcată sau pe cant se încovoaie prea mult; întăriți-o sau folosiți un utilaj
bench-lift-many = nu așa: un grup de { $people } nu ridică deodată
bench-lift-within = persoane: { $people }, fiecare până la { $most }; nicio valoare nu face ridicarea sigură

# Dust, noise, hands
bench-dust = Praf, zgomot, mâini
bench-dust-title = Praf, zgomot, mâini
bench-dust-order = Ce e mai puternic întâi: ce ia praful
bench-dust-limits = Cât de mult, cât timp
bench-dust-settled = Stabilit pentru această lucrare
bench-control = { $state ->
    [done] { $what }: prevăzut
    [open] { $what }: ÎNCĂ DESCHIS
   *[other] { $what }: de urmărit în ziua lucrării
 }
bench-fact-mask = masca aici
bench-fact-hands = mâini
bench-fact-ears = urechi
bench-fact-slurry = șlam
bench-fact-slurry-dry = praf
bench-fact-silica = ce conține
bench-fact-vacuum-class = aspirator
bench-mask-at-hand = { $mask }; proaspăt ras, etanșeitatea verificată; pusă înainte de prima tăietură, scoasă când podeaua e curată
bench-hands-allowed = { $action } pe zi de persoană, cu tot ce vibrează; această lucrare ia { $job }
bench-hands-other = { $hands }, altă muncă contează { $other }
bench-hands-never = această mașină vibrează prea tare pentru orice minut: altă mașină
bench-ears = { $level } la ureche: protecția pusă înainte de prima pornire; fără ea { $minutes } umplu ziua
bench-slurry = circa { $mass }, găleți: { $buckets }; se răzuiește și se aspiră ud, niciodată la canalizare
bench-bags = saci de exhaustor: până la { $bags }
bench-nothing-caught = nimic nu îl prinde
bench-silica = până la { $dust } de piatră, din care { $silica } silice
bench-wear-mask = Mască: factor { $factor } sau mai mare
bench-wear-mask-here = { $mask }: factor { $factor }
bench-wear-mask-ready = Masca pusă în timpul tăierii, până când podeaua e curată
bench-wear-mask-assess = Mască: cereți întâi evaluarea expunerii
bench-wear-ears = Urechi: { $level }
bench-wear-eyes = Ochelari închiși și vizieră
bench-wear-hands = Mănuși strânse, fără manșete largi
bench-wear-feet = Bocanci cu bombeu, care nu alunecă
bench-wear-disc = Disc: se mai rotește după oprire

# Helper
bench-emergency = Număr de urgență: { $number }
bench-vacuum-off = Aspirația se oprește la
bench-helper-weight = Placa cântărește până la { $slab }, blatul până la { $top }. { $hands ->
    [none] Nimeni nu le ridică cu mâinile.
    [top] Nimeni nu ridică placa cu mâinile, nimeni blatul singur.
   *[both] Nimeni nu le ridică singur.
 }

# The day and its record
bench-day = Ziua și evidența
bench-day-title = Ziua și ce s-a întâmplat
bench-day-what = ce
bench-day-minutes = durează
bench-day-at = gata la
bench-day-read = Citiți cu voce tare pagina asistentului, încercați semnele de oprire, completați pagina 1
bench-day-unload = Descărcați placa pe cant, legată; apoi culcată pe capre
bench-day-mark = Trasați și controlați fiecare linie; exersați în rest
bench-day-straight = Tăietura { $cut }, marginea { $edge }: se desprinde { $waste }
bench-day-curve = Tăietura { $cuts }, curba { $edge }
bench-day-opening = Tăieturile { $cuts }, deschizătura: { $what }
bench-day-sum = Toate tăieturile: { $stone } cu discul în piatră, { $setting } pregătire
bench-day-move = Blatul pe cant, legat, la locul lui
bench-day-clean = Șlamul adunat ud, podeaua clătită, apoi jos măștile
bench-day-clean-dry = Praful aspirat peste tot, apoi jos măștile
bench-day-bring = Aduceți
bench-day-practice = Întâi exersați în rest
bench-day-wrong = Când merge prost
bench-day-started = început
bench-day-ended = sfârșit
bench-day-initials = inițiale
bench-day-date = data
bench-day-annex = Calculul, tabelele, toate avertizările în întregime și sursele: kerfwright sheet JOB --annex
bench-bring-guide = ghidaj
bench-bring-guide-is = drept, { $length }, și două menghine{ $suction ->
    [yes] , o ventuză de fixare
   *[no] {""}
 }{ $jig ->
    [yes] ; braț de compas cu pivot
   *[no] {""}
 }
bench-bring-discs = discuri
bench-bring-discs-are = { $discs }, cu rezervă{ $grind ->
    [yes] ; oală diamantată sau discuri lamelare pentru șlefuit
   *[no] {""}
 }
bench-bring-bits = carote
bench-bring-bits-are = { $bits }, făcute pentru turația mașinii care le rotește; un șablon care le ghidează
bench-bring-bearers = suporturi
bench-bring-bearers-are = { $count } de aceeași înălțime, lemn moale, de { $long }, și pene; pe podină{ $edges }
bench-bring-bearers-edges = {""}, din care { $count } sub marginile fără tăietură
bench-bring-deck = podină
bench-bring-deck-are = scânduri groase de cel puțin { $thick } de-a lungul plăcii peste ambele capre, lungi de { $length }, alăturate pe { $wide }; pe ele suporturile, pe acestea placa
bench-bring-turn = pentru culcat
bench-bring-turn-is = palan, dispozitiv cu vacuum sau cadru basculant
bench-bring-carry = pentru transport
bench-bring-carry-is = { $aid ->
    [trolley] cărucior marcat pentru { $rated }, două capre
    [vacuum] dispozitiv cu vacuum marcat pentru { $rated }, două capre
    [gantry] portal cu chingi pentru { $rated }, două capre
   *[none] două capre
 }, chingi de legat, șipci, aspirator; ce arată semnele
bench-bring-tape = trasare
bench-bring-tape-is = { $rolls ->
    [one] o rolă de bandă de mascare de { $roll }
   *[other] { $rolls } de role de bandă de mascare, { $roll } fiecare
 }, ruletă de oțel, echer, creion subțire, sfoară de trasat
bench-bring-water = apă
bench-bring-water-is = { $water } în total; găleți pentru șlam: { $buckets }
bench-practice-cut = o tăietură
bench-practice-cut-is = în { $piece } unde este desenat, lungime { $length }, la { $depths }
bench-practice-plunge = intrări de sus
bench-practice-plunge-is = la fel în { $piece }, trei alăturate, la { $depths }
bench-practice-offset = marginea ghidajului la fața apropiată a discului ({ $reckoned })
bench-practice-jig = semnul dispozitivului la fața apropiată a discului ({ $reckoned })
bench-practice-minutes = minute în piatră; lungime, adâncime
bench-practice-differs = Alt număr decât în paranteză: mutați cu atât semnele ghidajului sau brațul; liniile de păstrat rămân.
bench-wrong-cracks = crapă
bench-wrong-cracks-do = Oprit. Nimeni sub ea. Suporturi sub ambele părți înainte să se miște ceva; apoi măsurați și planificați ce rămâne.
bench-wrong-pinches = se prinde
bench-wrong-pinches-do = Oprit, lăsați discul să stea, deschideți fanta cu pene, ridicați mașina afară. Din nou în piatră numai la turație plină.
bench-wrong-slips = fuge de pe linie
bench-wrong-slips-do = Oprit. Măsurați cât de departe și cât de adânc, scrieți în fișierul lucrării la ce s-a întâmplat: un plan nou spune ce rămâne din blat.

# Repair
bench-repair = Ce s-a întâmplat
bench-repair-title = Ce s-a întâmplat și ce rămâne
bench-repair-alt = Piatra așa cum este, blatul care rămâne și, punctat, blatul dorit.
bench-repair-as-planned = Totul este pe linia lui. Continuați după plan.
bench-repair-within = Adaosul acoperă: nu se pierde nimic. Șlefuiți până la linia finită.
bench-repair-grind = Nimic nu este pierdut: pe o margine a rămas prea mult. Șlefuiți până la linia finită.
bench-repair-again = Nimic nu este pierdut: pe o margine a rămas prea mult. Tăiați fâșia, după pagina ei.
bench-repair-smaller = Blatul iese mai mic. Întrebați pe cine l-a comandat înainte de următoarea tăietură.
bench-repair-opening = O deschizătură iese altfel decât s-a dorit. Întrebați pe cine a comandat înainte de următoarea tăietură.
bench-repair-same-a = Literele sunt colțurile pietrei așa cum este acum. A este unde era, AB merge ca înainte; celelalte sunt noi.
bench-repair-new = Literele sunt colțurile pietrei așa cum este acum: toate sunt noi. Scrieți-le pe piatră.
bench-repair-wanted = dorit
bench-repair-now = acum
bench-repair-weighs = cântărește
bench-repair-first = întâi
bench-repair-run-outs = terminați ce a lăsat tăietura în picioare: { $pieces }
bench-repair-grind-first = șlefuiți până la linie înainte de tăietura următoare: { $edges }
bench-repair-lines = în fișierul lucrării
bench-repair-part = parte
bench-repair-came = a ieșit
bench-repair-is-wanted = dorit
bench-repair-is-now = acum
bench-repair-do = de făcut
bench-repair-edge = marginea { $name }
bench-repair-corner = colțul { $name }, { $what }
bench-came-not-cut = netăiat
bench-came-on-line = pe linia ei
bench-came-short = lipsesc { $off }
bench-came-over = în plus { $off }
bench-came-slanting-short = de la { $start } la { $end } prea puțin
bench-came-slanting-over = de la { $start } la { $end } prea mult
bench-do-nothing = nimic
bench-do-finish = numai finisare
bench-do-grind = șlefuiți { $off }
bench-do-cut = tăiați: vedeți pagina ei

# The annex
annex-findings = Toate constatările în întregime
annex-stops = Stop: lucrarea nu are voie să înceapă cât timp stă una dintre acestea
annex-open = Deschis: de completat sau de verificat înainte de început
annex-warnings = Avertizări
annex-every = De fiecare dată
annex-stone = Piatra, locul și bucățile
annex-strength = Culcat, în picioare, ridicat
annex-way = Drumul de intrare
annex-health = Praf, mâini, urechi: valorile
annex-assumed = Valori lăsate deschise în fișierul lucrării
annex-sources = Surse
annex-key = cheie
annex-value = valoare
annex-why = de ce
annex-what = ce
annex-document = document
annex-clause = clauză
annex-year = an
annex-no-year = niciunul notat
annex-place = Unde stă blatul pe placă
annex-pieces = Bucăți
annex-cuts = Tăieturi
annex-balance = Placa { $slab } = blatul finit { $top } + rămas la margini { $left } + fante { $kerf } + resturi { $waste }. Fărâmele dintre tăieturi se socotesc la fante.
annex-range = { $low } până la { $high }
annex-three = { $low } până la { $high }, probabil { $likely }
annex-kind = piatra
annex-density = densitate
annex-thickness = grosime
annex-allowed = rezistență
annex-strength-is = { $strength } ÷ { $factor } ({ $source })
annex-slab-area = placa, suprafață
annex-slab-mass = placa cântărește
annex-top-mass = blatul cântărește
annex-spare = rezerva cea mai mică
annex-turn = rotit
annex-corner = colțul blatului
annex-corner-of-top = colțul { $name }
annex-x = x de la A de-a lungul AB
annex-y = y de la A perpendicular pe ea
annex-edge = margine
annex-edge-sawn = tăiată, { $left } rămân pe ea
annex-edge-flush = stă pe marginea plăcii { $edge }
annex-length = lungime
annex-lies = cum stă
annex-piece = bucată
annex-after = după tăietura
annex-area = suprafață
annex-mass = cântărește
annex-rectangle = încape un dreptunghi de
annex-left = piatra păstrată
annex-tool = unealtă
annex-core-bit = carotă de { $bit }
annex-bending = Solicitarea sub propria greutate, × 1,2 pentru manevrare, în piatra cea mai subțire; numai piatră fără defecte
annex-stone-state = piatra
annex-state = { $name }
annex-flat-best = culcat, cele mai bune suporturi
annex-flat-hands = culcat, în mâini
annex-flat-ends = culcat, de capete
annex-one-end = un capăt ridicat
annex-on-edge = pe cant, de capete
annex-may = admis
annex-lifting = Ridicare cu mâna și ce cer utilajele
annex-slab = placa
annex-top = blatul
annex-guideline = valoare orientativă
annex-guideline-is = { $each } pentru o persoană ({ $source }); nu promite că o ridicare sub ea este sigură
annex-person = persoana
annex-from-end = de la capăt
annex-from-side = de la latură
annex-carries = duce
annex-figure = valoarea în această echipă
annex-trolley-rated = cărucior marcat pentru
annex-trolley-push = împingere, pe orizontală
annex-trolley-ramp = 1 la 12 adaugă
annex-trolley-tips = se răstoarnă lateral la
annex-vacuum-rated = vacuum marcat pentru
annex-sling-pull = tracțiunea în ramura unei chingi
annex-leans = pe cant cade dincolo de
annex-rails = Piatră îngustă lângă deschizături
annex-rail-is = lățime { $width }, lungime { $length }: { $together } cu vecina, { $alone } singură
annex-setting = Pe suporturile lui
annex-support = suport
annex-carries-most = duce cel mult
annex-with-person = cu o persoană rezemată
annex-reaches = iese în afara
annex-person-stress = solicitarea cu o persoană
annex-way-of = Drumul: { $name }
annex-way-place = loc
annex-way-carried = cel mai bine dus
annex-way-spare = spațiu
annex-way-clears = rezervă { $spare }
annex-way-tight = strâmt: rezervă { $spare }
annex-way-short = lipsesc { $short }
annex-way-note = Măsurați din nou fiecare loc, împreună cu persoanele și utilajul care cară.
annex-limit = silice
annex-vibration = vibrații
annex-vibration-is = { $reckoned } cu incertitudinea ei, { $job } din această lucrare; ziua { $day }; acțiune { $action }, limita { $limit } ({ $source })
annex-noise = zgomot
annex-noise-is = { $level } timp de { $hours }; ziua { $day }; obligație de la { $duty } ({ $source })
annex-cited = { $document }{ $borrowed }; verificați regulile în vigoare
annex-cited-year = { $document }, { $year }{ $borrowed }; verificați regulile în vigoare
annex-masks = măști care ajung
annex-mask = { $mask } (factor { $factor })
annex-authority = întrebați despre reguli

# In a terminal
answer-job = lucrare
answer-fits = încape
answer-fits-is = blatul { $length } × { $width }, rezervă { $spare } unde e mai strâmt
answer-weighs = cântărește
answer-weighs-is = blatul până la { $top }, placa până la { $slab }
answer-time = timp
answer-time-is = { $stone } cu discul în piatră, { $setting } pregătire
answer-straight = dreaptă, marginea { $edge }, { $length }
answer-relief = degajare la { $edge }, { $length }
answer-curve = curba de la { $edge }, { $length }
answer-hole = găuri la { $edge }
answer-guide = { $first } de la { $from }, { $second } de la { $to }
answer-chord = coarda { $length }
answer-frees = eliberează
answer-more = Mai mult cu --full:
answer-sheet = blat finit    { $low } până la { $high }
    tăieturi      { $straight } drepte, { $curves } curbe
    timp de tăiat { $sawing } cu discul în piatră, { $setting } pregătire
    stopuri       { $stops }
weigh-stone = { $name }
weigh-place = loc
weigh-no-fit = blatul nu încape pe această placă: se cântărește cum s-a dorit
weigh-region = regiune
weigh-balance = punct de echilibru
weigh-balance-is = la { $end } de capăt, la { $side } de latură
weigh-mass = cântărește
weigh-mass-is = cel mult { $high }: cu aceasta ridicați; probabil { $likely }, cel puțin { $low }
weigh-size = dimensiuni
weigh-size-is = { $length } × { $width } × { $thick }, { $area }
weigh-tilt = ridicarea pe cant

# On a telephone
phone-plan = plan { $plan }
phone-contents = Cuprins
phone-light = Luminos sau întunecat
phone-back = Înapoi
phone-next = Înainte
phone-bar = Drumul prin foaie
phone-clear = Debifează tot pe acest telefon
phone-forgets = Acest program uită bifele când este închis. Deschideți fișierul într-un browser.
