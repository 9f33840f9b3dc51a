# Findings of handling: a line, and in full.

crush-and-falls = { $stone }: strivește tot ce este sub ea când cade
    .detail = { $mass } apasă cu { $weight }. Pe cant stă pe { $thickness }: o împingere de { $push } în muchia de sus o răstoarnă, iar înclinată cu mai mult de { $tips } cade singură, peste o fâșie de podea lată de { $shadow } de fiecare parte: acolo nu stă nimeni și nimeni nu încearcă să o prindă. Legați-o de ceva care ține înainte ca cineva să îi dea drumul, câte o singură piatră; lucrul de care se sprijină trebuie să nu o lase să cadă în față și să nu îi lase baza să alunece în afară. La o înclinare de { $leans }°, muchia de sus trage de legătură cu { $pulls }, în această ordine; legătura și lucrul de care este fixată trebuie să reziste la o forță de câteva ori mai mare. Așezați-o pe două șipci, niciodată direct pe podea: degetele de la mâini și de la picioare și copiii afară din spațiul dintre piatră și podea.

way-in-blocked = blatul nu intră: { $place }
    .detail = Pe cant: lipsă { $edge_short } ({ $edge_measure }: necesar { $edge_needs }, există { $edge_has }). Vertical: lipsă { $upright_short } ({ $upright_measure }: necesar { $upright_needs }, există { $upright_has }). Ce ajută, una dintre acestea sau ambele, când unei poziții îi lipsesc două măsuri: { $remedies }. Nici culcat nu trece.

way-in-upright = blatul trece numai vertical: { $place }
    .detail = Pe cant: lipsă { $edge_short } ({ $edge_measure }: necesar { $edge_needs }, există { $edge_has }). Vertical trece cu o rezervă de { $spare }. Ce ajută, una dintre acestea sau ambele, când unei poziții îi lipsesc două măsuri: { $remedies }. Ca să îl ridicați pe latura scurtă este nevoie de { $stand_up } de înălțime liberă: faceți-o înainte de acest loc, cu utilajul și cu persoanele pe care le cere greutatea, și niciodată pe trepte.

way-in-flat-only = blatul trece numai culcat, ceea ce nu se recomandă: { $place }
    .detail = Pe cant: lipsă { $edge_short } ({ $edge_measure }: necesar { $edge_needs }, există { $edge_has }). Vertical: lipsă { $upright_short } ({ $upright_measure }: necesar { $upright_needs }, există { $upright_has }). Culcat trece cu o rezervă de { $spare }. Ce ajută, una dintre acestea sau ambele, când unei poziții îi lipsesc două măsuri: { $remedies }. Culcat se poate rupe sub propria greutate: vedeți tabelul de încovoiere; culcat se cară numai pe un panou sub toată suprafața sau deloc.

way-in-tight = loc strâmt pe drumul de intrare: { $place }
    .detail = Dus { $pose } trece cu o rezervă de numai { $spare }. Măsurați din nou în locul cel mai îngust și treceți întâi, înaintea pietrei, o șipcă de lungimea pietrei și o scândură de înălțimea pietrei.

way-in-slab = tăiați înainte de a duce înăuntru: placa întreagă este oprită în acest loc: { $place }
    .detail = Pe cant: lipsă { $edge_short } ({ $edge_measure }: necesar { $edge_needs }, există { $edge_has }). Vertical: lipsă { $upright_short } ({ $upright_measure }: necesar { $upright_needs }, există { $upright_has }). Ce ajută, una dintre acestea sau ambele, când unei poziții îi lipsesc două măsuri: { $remedies }. Blatul finit trece: descărcați și tăiați de partea aceasta, înainte de acest loc.

way-in-slab-flat = tăiați înainte de a duce înăuntru: placa întreagă trece numai culcată: { $place }
    .detail = Pe cant: lipsă { $edge_short } ({ $edge_measure }: necesar { $edge_needs }, există { $edge_has }). Vertical: lipsă { $upright_short } ({ $upright_measure }: necesar { $upright_needs }, există { $upright_has }). Culcată trece cu o rezervă de { $spare } și se poate rupe sub propria greutate. Ce ajută, una dintre acestea sau ambele, când unei poziții îi lipsesc două măsuri: { $remedies }. Blatul finit trece: descărcați și tăiați de partea aceasta, înainte de acest loc.

tips-out-of-hands = { $stone }: se răstoarnă cu persoanele în aceste locuri
    .detail = Centrul de greutate se află cu { $off } în afara a ceea ce pot ține aceste locuri. Puneți persoane de ambele părți ale lui.

lifter-off-the-edge = { $stone }: persoana { $lifter } nu are margine de care să țină
    .detail = Locul dat se află la { $away } de margine, mai mult de { $most }. Dați locuri pe margine, în sistemul de coordonate al blatului.

lifter-at-cutout = { $stone }: persoana { $lifter } ridică lângă un decupaj
    .detail = Locul se află la { $away } de un decupaj, mai puțin de o lățime de palmă, { $least }. Ridicați unde piatra este întreagă, niciodată de fâșia îngustă de lângă un decupaj.

carry-too-far = { $way }: prea departe pentru a căra fără odihnă
    .detail = Valorile orientative sunt pentru cărat lipit de corp pe cel mult { $most }. Pe drum așezați piatra pe cant, pe două șipci, sau duceți-o cu un cărucior.

brace-the-rail = { $rail } ({ $cutouts }): { $verdict }
    .detail = Are lățimea de { $width } și lungimea de { $length } ({ $stone }). Cu piatra culcată sau în mâinile oamenilor, solicitarea este de { $together } cu ajutorul restului pietrei și de { $alone } când fâșia trebuie să preia singură încovoierea, ca atunci când partea aceea este ridicată prima; pe cant pe două suporturi: { $on_edge }; admis { $allowed }. Înainte de ridicare prindeți de-a lungul ei, pe cant și atingând pe toată lungimea, lemn drept de { $timber_width } × { $timber_depth } (bucăți una lângă alta: { $timbers }), lung de cel puțin { $timber_length }, cu menghine capitonate pe piatra întreagă la ambele capete: atunci rămân { $braced }. Duceți piatra pe cant; nu o țineți și nu o prindeți niciodată în menghine în acel loc.

brace-the-rail-on-a-frame = { $rail } ({ $cutouts }): { $verdict }
    .detail = Are lățimea de { $width } și lungimea de { $length } ({ $stone }). Cu piatra culcată sau în mâinile oamenilor, solicitarea este de { $together } cu ajutorul restului pietrei și de { $alone } când fâșia trebuie să preia singură încovoierea, ca atunci când partea aceea este ridicată prima; pe cant pe două suporturi: { $on_edge }; admis { $allowed }. Niciun lemn nu este destul de rigid: așezați toată piatra pe un cadru sau pe un panou. Duceți piatra pe cant; nu o țineți și nu o prindeți niciodată în menghine în acel loc.

brace-the-neck = { $stone }, { $neck }: nu are voie să poarte piatra de dincolo de ea
    .detail = Are lățimea de { $width }; { $hanging } care atârnă de ea când piatra este culcată dau o solicitare de { $stress }, admis { $allowed }. Țineți piatra sprijinită de ambele părți ale îngustării ori de câte ori este culcată. Înainte de ridicare prindeți de-a lungul ei, pe cant și atingând pe toată lungimea, lemn drept de { $timber_width } × { $timber_depth } (bucăți una lângă alta: { $timbers }), lung de cel puțin { $timber_length }, cu menghine capitonate pe piatra întreagă la ambele capete: atunci rămân { $braced }.

brace-the-neck-on-a-frame = { $stone }, { $neck }: nu are voie să poarte piatra de dincolo de ea
    .detail = Are lățimea de { $width }; { $hanging } care atârnă de ea când piatra este culcată dau o solicitare de { $stress }, admis { $allowed }. Țineți piatra sprijinită de ambele părți ale îngustării ori de câte ori este culcată. Niciun lemn nu este destul de rigid: așezați toată piatra pe un cadru sau pe un panou.

narrow-rail = { $rail } ({ $cutouts }): mai îngustă decât se lasă în meserie
    .detail = Se află lângă o gaură de robinet și are lățimea de { $width }; ca minim lângă un decupaj este publicat { $least }, iar pentru o gaură de robinet nimic mai mic. Mutați gaura sau micșorați-o ori întrebați dacă piatra poate fi rigidizată definitiv pe dedesubt.

guideline-is-not-a-limit = Valoarea orientativă de ridicare nu este o limită sigură
    .detail = { $each } de persoană este pentru adulți în formă care ridică aproape de corp, la înălțimea taliei, drept și rar; este mai puțin pentru mulți oameni, pentru mâini ude, trepte și teren neregulat. Nu promite că o ridicare sub această valoare este sigură. Ecuația ridicării este pentru ridicare, nu pentru cărat. Verificați regulile în vigoare.

tips-off-supports = Blatul nu stă liniștit pe suporturi
    .detail = Suporturile nu cuprind centrul de greutate. Adăugați sau mutați suporturi înainte de a așeza blatul.

support-lifts-off = { $support }: nu duce nimic
    .detail = Blatul nu apasă pe acest suport. Controlați-i locul și înălțimea; nu trageți blatul în jos până la el.

falls-off-trestles = { $stone }: nu stă pe capre
    .detail = Cu caprele la { $first } și { $second } de capătul plăcii, centrul de greutate nu este între ele sau piatra nu ajunge până la ele. Mutați-le înainte de acea tăietură sau lăsați deoparte lift.trestles.

bends-on-trestles = { $stone }: două capre nu ajung
    .detail = Pe caprele la { $first } și { $second } de capătul plăcii solicitarea este de { $stress }, adică { $times } × valoarea admisă. Așezați piatra în schimb pe un panou plan, sub toată suprafața.

aid-too-weak = { $stone }: utilajul de ridicat nu este marcat pentru greutatea aceasta
    .detail = Utilajul ({ $aid }) este marcat pentru { $rated }; această piatră cere { $needs }. Folosiți unul marcat pentru atât sau o piatră mai ușoară: tăiați-o înainte de a o muta.

aid-without-mark = ce este marcat pe: { $aid }? Este nevoie de { $needs }
    .detail = Citiți sarcina marcată pe el și scrieți-o aici; cel mai greu: { $stone }. Fără marcaj nu se ridică. În fișier: lift.rated.

in-slings-no-place = { $stone }: niciun loc pentru două chingi
    .detail = Oriunde trec două chingi, atârnă încovoiată mai mult decât este admis. Întăriți-o sau duceți-o așezată pe un cadru.

on-a-trolley = căruciorul: piatra pe cant, legată, pe teren plan și orizontal
    .detail = Piatra cu latura lungă mai grea în jos, legată de cadrul căruciorului, câte o persoană la fiecare capăt și nimeni în lateral. La coborâre căruciorul este ținut din partea de sus a pantei. Instrucțiunile producătorului au întâietate.

on-a-trolley-numbers = { $stone }: dacă se răstoarnă, ucide; un cărucior marcat pentru { $rated } sau mai mult
    .detail = Pe cărucior centrul de greutate al pietrei este la { $height } deasupra podelei, iar căruciorul cu piatra se răstoarnă pe teren înclinat lateral cu { $tips } (stând pe loc, roți tari: mai devreme în mișcare). Cere o împingere de cel puțin { $push } pe orizontală, iar pe o rampă de 1 la { $run } încă { $ramp }, forță care îl și trage la vale.

under-a-vacuum-lifter = dispozitivul de ridicare cu vacuum: marcat pentru dublul greutății și cu a doua asigurare
    .detail = Numai pe o față uscată, curată, sănătoasă, lustruită sau șlefuită mat: niciodată pe una aspră sau despicată și nicăieri peste un defect sau o lipitură. Pe o față verticală ventuzele țin numai prin frecare: folosiți valoarea dată de producător pentru aceasta. O a doua asigurare (bandă, chingă) sub piatră, tot timpul. Ridicați-o cu un lat de palmă, așteptați și vedeți că țin toate ventuzele, înainte de a o muta. Instrucțiunile producătorului au întâietate.{ $wet ->
        [yes] {" "}La această lucrare se taie cu apă: întâi spălați șlamul și lăsați fața să se usuce.
       *[other] {""}
    }{ $face ->
        [porous] {" "}Această piatră este poroasă: aerul trece prin ea și ventuza nu mai ține. Întrebați producătorul sau folosiți chingi.
        [split] {" "}Această piatră se vinde adesea cu fața despicată: pe aceasta nu ține nicio ventuză.
       *[other] {""}
    }

under-a-vacuum-lifter-numbers = { $stone }: dacă se desprinde, ucide; un dispozitiv de ridicare cu vacuum marcat pentru { $rated } sau mai mult
    .detail = Ventuze în perechi în jurul centrului de greutate, număr: { $cups }, iar fiecare duce { $each }.

under-a-vacuum-lifter-no-room = { $stone }: un dispozitiv de ridicare cu vacuum nu are loc
    .detail = Ar trebui să fie marcat pentru { $rated } sau mai mult, dar nu este loc pentru o pereche de ventuze în jurul centrului de greutate. Folosiți chingi sau un cărucior.

in-slings = macaraua portal: instalată și folosită de o persoană competentă
    .detail = Cârligul deasupra centrului de greutate, muchiile protejate cu căptușeală, chingile legate ca să nu poată aluneca una spre alta, o frânghie de ghidare la fiecare capăt, nimeni sub piatră sau lângă ea. Utilajele de ridicat sunt verificate, marcate și instalate de o persoană competentă și, unde legea o cere, autorizată.

in-slings-numbers = { $stone }: dacă se desprinde, ucide; chingi la { $first } și { $second } de capătul stâng
    .detail = De capătul de jos, dacă stă vertical. Pe fiecare chingă atârnă { $each }; cu { $legs } între ramuri fiecare ramură trage cu { $factor } din greutate, { $tension }, iar cârligul atârnă la { $hook } sau mai sus deasupra pietrei.

not-a-hand-lift = nu se ridică cu mâna: { $stones }
    .detail = { $masses }. { $people ->
        [one] O persoană poate conta pe { $team }
        [few] { $people } persoane care ridică împreună pot conta pe { $team }
       *[other] { $people } de persoane care ridică împreună pot conta pe { $team }
    }; de la circa dublul acestei valori riscul este grav chiar și pentru oameni în formă și instruiți. Numiți un utilaj în lift.aid: un cărucior care duce piatra pe cant, marcat pentru { $rated } sau mai mult, numai pe teren orizontal (împingere cu cel puțin { $push }); un dispozitiv de ridicare cu vacuum marcat pentru { $vacuum } sau mai mult, pe o față uscată, curată, neîntreruptă; o macara portal sau un palan cu chingi, marcate pentru { $rated } sau mai mult și montate de o persoană competentă în utilaje de ridicat. Ridicarea pe cant a celei mai grele cere la început { $tilt } la latura opusă.

breaks-in-hands = s-ar rupe în mâinile oamenilor: { $stones }
    .detail = { $masses }. Oricum ar ține-o { $people ->
        [one] o persoană
        [few] { $people } persoane
       *[other] { $people } de persoane
    }, culcată sau pe cant, este încovoiată mai mult decât este admis. Întăriți-o, așezați-o pe un panou sau numiți un utilaj în lift.aid: un cărucior marcat pentru { $rated } sau mai mult; un dispozitiv de ridicare cu vacuum marcat pentru { $vacuum } sau mai mult; o macara portal cu chingi, montată de o persoană competentă.

more-than-four = prea multe persoane ca să ridice deodată: { $people }
    .detail = Este puțin probabil ca un număr de persoane mai mare de { $most } să lucreze ca o echipă, și nu este publicată nicio parte din forța lor pe care să se poată conta. Folosiți un utilaj de ridicat sau mai puține persoane și o bucată mai ușoară.

lifter-over-guideline = peste valoarea orientativă: { $stones }
    .detail = { $masses }. { $people ->
        [one] O persoană poate conta pe { $team }
        [few] { $people } persoane care ridică împreună pot conta pe { $team }
       *[other] { $people } de persoane care ridică împreună pot conta pe { $team }
    }: o valoare de la care se cercetează mai atent, nu o limită. Înainte de ridicare stabiliți cine ridică, drumul și unde se pune jos; mai multe persoane, o bucată mai ușoară sau un utilaj este mai bine. Ridicarea pe cant a celei mai grele cere la început { $tilt } la latura opusă.

tilt-over-guideline = stabiliți cum se ridică pe cant; la latura opusă cere: { $stones }
    .detail = { $people ->
        [one] O persoană poate conta pe { $team }
        [few] { $people } persoane împreună pot conta pe { $team } în total
       *[other] { $people } de persoane împreună pot conta pe { $team } în total
    }. Duceți-o pe cant de la livrare până unde este nevoie de ea. { $hands ->
            [0] Ce cere peste aproximativ dublu nu se întoarce cu mâna: acolo riscul este grav chiar și pentru oameni puternici și instruiți. Un palan, un dispozitiv cu vacuum sau un cadru care basculează cu piatra legată, de o persoană competentă: stabiliți care înainte să vină.
           *[other] Ca să o întoarceți, blocați latura lungă pe care se rotește, ca să nu alunece; toată lumea la latura lungă opusă; ridicați-o în trepte pe cale și țineți legătura pregătită înainte să stea în picioare; sau întoarceți-o cu un palan sau cu un dispozitiv cu vacuum.
        } Nimeni nu stă pe partea pe care poate cădea.

bends-flat-always = { $stone }: nu are voie să stea în poziție culcată pe două suporturi
    .detail = Piatra { $how }: { $stress } unde are lățimea de { $width }, la { $at } de capăt; admis { $allowed } (rezistența ÷ coeficientul de siguranță), adică { $times } × valoarea admisă, chiar și pe cele mai bune două suporturi. Țineți-o pe cant sau așezați-o pe un panou plan, sub toată suprafața.{ $flaws ->
        [0] {""}
        [one] {" "}Placa are un defect: peste el rezistența nu este valabilă.
        [few] {" "}Placa are { $flaws } defecte: peste ele rezistența nu este valabilă.
       *[other] {" "}Placa are { $flaws } de defecte: peste ele rezistența nu este valabilă.
    }

bends-flat = { $stone }: în poziție culcată se poate rupe
    .detail = Piatra { $how }: { $stress } unde are lățimea de { $width }, la { $at } de capăt; admis { $allowed } (rezistența ÷ coeficientul de siguranță), adică { $times } × valoarea admisă. Nu ridicați niciodată un capăt al ei cât timp este culcată. Culcată are voie să stea numai pe suporturi la { $first } și { $second } de capătul stâng (de capătul de jos, dacă stă vertical), unde are { $best }; duceți-o pe cant.{ $flaws ->
        [0] {""}
        [one] {" "}Placa are un defect: peste el rezistența nu este valabilă.
        [few] {" "}Placa are { $flaws } defecte: peste ele rezistența nu este valabilă.
       *[other] {" "}Placa are { $flaws } de defecte: peste ele rezistența nu este valabilă.
    }

carry-on-edge-not-by-its-ends = { $stone }: se cară pe cant, niciodată în poziție culcată, și nu de capete
    .detail = Piatra { $how }: { $stress }; admis { $allowed }, adică { $times } × valoarea admisă. Țineți-o sau sprijiniți-o la { $first } și { $second } de capăt, unde are { $best }. S-a socotit o piatră fără defecte.

carry-on-edge-braced = { $stone }: nici pe cant înainte de întărire
    .detail = Piatra { $how }: { $stress }; admis { $allowed }, adică { $times } × valoarea admisă. Întăriți întâi părțile ei înguste sau duceți-o așezată pe un cadru. S-a socotit o piatră fără defecte.

flaws-and-strength = { $count ->
        [one] Placa are un defect
        [few] Placa are { $count } defecte
       *[other] Placa are { $count } de defecte
    }: valorile de rezistență nu sunt valabile peste { $count ->
        [one] el
       *[other] ele
    }
    .detail = Toate solicitările de aici presupun o piatră fără defecte; la o fisură sau la o lipitură se poate rupe mult sub aceste valori. Țineți-o pe cant, pe un panou sub toată suprafața sau pe un cadru.

trestles-are-moved = caprele se mută înainte de tăietura { $cuts }
    .detail = Niciun loc nu este bun pentru toate tăieturile. Ridicați piatra jos așa cum cere greutatea ei, mutați caprele, așezați-o la loc; noile locuri sunt pe fișa acelei tăieturi.

rests-poorly = puneți mai multe suporturi sub blat: { $what }
    .detail = { $parts }. Suporturi mai apropiate, lângă fiecare decupaj, mai spre exterior. Nici șurubul, nici adezivul nu ține un blat care se răstoarnă.

# What is wrong with how the top rests: in short, and in full.
rests-overhang = ieșire în consolă
rests-overhang-part = { $edges } { $count ->
        [one] iese
       *[other] ies
    } cu { $reach } în afara suporturilor (limita publicată: { $limit })
rests-overhang-person = ieșire în consolă
rests-overhang-person-part = { $edges } { $count ->
        [one] iese
       *[other] ies
    } cu { $reach } în afara suporturilor (limita publicată: { $limit }), iar cu o persoană pe margine ajunge la { $times } din valoarea admisă
rests-span = deschidere
rests-span-part = cea mai mare porțiune fără suport este de { $span } (limita publicată: { $limit })
rests-tips = se răstoarnă dacă se reazemă cineva
rests-tips-part = o persoană de { $force } { $place } îl răstoarnă de pe suporturi
rests-bends = cineva rezemat pe el
rests-bends-part = o persoană de { $force } { $place } îl solicită la { $times } din valoarea admisă
rests-bends-elsewhere = cineva rezemat pe el
rests-bends-elsewhere-part = o persoană de { $force } { $place } îl solicită la { $times } din valoarea admisă, cel mai mult { $section }
lean-worst = în locul cel mai rău
lean-rail = pe { $rail } ({ $cutouts })
lean-overhang = pe consolă ({ $edge })
lean-between = între suporturile { $first } și { $second }
lean-over = deasupra suportului { $support }
rests-over = { $support }
rests-over-part = { $support } duce până la { $carried }, mai mult decât limita de { $limit }
rests-over-person = { $support } cu o persoană
rests-over-person-part = { $support } duce până la { $with_person } cu o persoană de { $force } (limita { $limit })
none-published = nimic pentru o piatră atât de subțire

# A stone in a list of stones.
stone-of-mass = { $stone } { $mass }

# What would make a way passable.
remedy-upright = duceți-o vertical, ceea ce cere o înălțime de { $n }
remedy-cut-to = tăiați-o la cel mult { $n } lungime înainte de acest loc
remedy-widen-before = faceți drumul dinainte de colț lat de cel puțin { $n }
remedy-widen-after = faceți drumul de după colț lat de cel puțin { $n }
remedy-widen = faceți trecerea lată de cel puțin { $n }: scoateți foaia ușii, baghetele, un toc
remedy-raise = faceți cel puțin { $n } de înălțime liberă ca să treacă { $how }
