# Findings of hazards: a line, and in full.

working-alone = o singură persoană: nimeni care să oprească lucrul, nimeni care să cheme ajutor
    .detail = Persoane introduse: { $people }, cel puțin 2 cât timp se rotește un disc (aprecierea noastră). Găsiți pe cineva care stă pregătit și nu face nimic altceva sau așteptați până este cineva.

second-person = O a doua persoană { $at ->
    [plug-tap] la ștecher și la robinet
    [plug] la ștecher
    [valve-tap] la robinetul de aer și la cel de apă
    [valve] la robinetul de aer
    [tap] la robinetul de apă
   *[sight] la vedere
 }, care vede operatorul și nu face nimic altceva
    .detail = Persoane: { $people }; una dintre ele stă acolo, în câmpul vizual al operatorului, în afara liniei discului, cu protecție respiratorie și cu protecția auzului. O mână ridicată sau o mână pe umăr înseamnă oprire, și nimeni nu întreabă de ce.

who-is-bound = șantier, atelier sau lucru propriu: ce regulă este valabilă
    .detail = Pe șantier (29 CFR 1926.1153) un rând din tabelul 1, respectat întocmai, este suficient. Un atelier care face blaturi este industrie generală (29 CFR 1910.1053): acolo nu există tabel, expunerea se evaluează. O persoană particulară nu este obligată de niciuna dintre ele; tabelul este cel mai bun ghid publicat, iar praful face același rău.

no-dry-sweeping = fără măturat uscat, fără aer comprimat
    .detail = { $rule }{ $borrowed } Circa { $stone } de piatră, din care până la { $silica } silice, rămân împrăștiate după tăieturi: uscate, se ridică din nou în aer. Aspirator: { $vacuum }{ $vacuum_borrowed }.

vacuum-before-the-mask-comes-off = praful scăpat de apărătoarea de aspirație este peste tot: aspirați-l înainte să se scoată masca
    .detail = Nicio apărătoare de aspirație nu prinde tot din { $stone }, cel mai puțin la capetele tăieturii. Podeaua, pervazurile, mașina și hainele se aspiră înainte să se scoată vreo mască: { $vacuum }{ $vacuum_borrowed }.

cold-water = apă rece: mâini ținute calde și uscate
    .detail = Mâneci impermeabile, o pereche uscată de mănuși pentru fiecare oră, pauze la cald. Degete reci, albe sau amorțite: opriți lucrul pe ziua aceea, la frig vibrațiile fac rău mai repede.

frost = fără tăiere umedă pe îngheț
    .detail = Sub circa 3 °C (aprecierea noastră) șlamul îngheață sub picioare, iar apa stă pe loc în furtun și în duză: fără apă nu se taie. Goliți de apă mașina și furtunul înainte de noapte.

local-rules-first = regulile locale, instrucțiunile producătorilor și oamenii competenți trec înaintea acestei fișe
    .detail = Fișa nu este o autorizație. Regiunea din care îi sunt valorile: { $region }. Verificați regulile în vigoare; adresați-vă la: { $authority }. Utilajele de ridicat, instalația electrică, structura și piatra care poate conține azbest sunt numai pentru persoane autorizate.

slurry-clean-up = șlamul se adună înainte să se usuce: găleți, circa { $buckets }
    .detail = Circa { $kilos }: { $water } l de apă ({ $flow } l/min cât timp taie discul) și { $stone } de piatră; găleți de { $bucket } l: { $buckets }. Uscat, este praful pe care l-ați reținut. Folie sub capre, răzuiți și aspirați cu aspirator pentru lichide cât este umed, clătiți hainele, cizmele și mașina, lăsați restul să se depună; nimic la canalizare.

dust-bags = praful din exhaustor: saci, circa { $bags }
    .detail = Circa { $stone } de piatră dacă ar prinde apărătoarea de aspirație tot; saci de cel mult { $bag }: { $bags }. Schimbați sacul cu protecția respiratorie pusă, în aer liber, închis înainte să iasă din exhaustor, niciodată scuturat sau golit ca să fie folosit din nou.

falling-stone = Nimeni sub piatră, nu prindeți niciodată o placă care cade
    .detail = { $mass } kg/m² la cea mai mare grosime măsurată și la cea mai grea piatră de acest fel. Bucata care se desprinde și piatra care rămâne, amândouă sprijinite înainte de prima trecere; nimeni cu picioarele sau degetele dedesubt sau între ele; nu stați niciodată unde poate cădea o placă așezată pe cant și nu încercați niciodată să prindeți una.

wet-floor = șlamul face podeaua alunecoasă
    .detail = Cizme antiderapante, apa dusă departe de unde oamenii stau și cară{ $power ->
            [mains] , cablurile atârnate deasupra udului
           *[other] {""}
        }. Podeaua clătită și eliberată înainte să se ridice vreo bucată.

vibration-over-limit = vibrații A(8) { $day } m/s² în { $all } min din zi, limita { $limit } m/s²
    .detail = { $a } timp de { $minutes } min în acea zi cu această mașină, puncte cu tot restul: { $points }. A(8) { $day }, limita { $limit }{ $borrowed }, atinsă după { $to_limit } min. Împărțiți lucrul pe mai multe persoane sau zile: { $people }, cel mult { $to_limit } min fiecare; numărul de persoane sau zile necesar pentru a rămâne sub valoarea de acțiune { $action }: { $people_action }. Stați la cald, disc bine ascuțit, prindere ușoară. Verificați regulile în vigoare.

vibration-over-action = vibrații A(8) { $day } m/s² în { $all } min din zi, valoarea de acțiune { $action } m/s²
    .detail = { $a } timp de { $minutes } min în acea zi cu această mașină, puncte cu tot restul: { $points }. A(8) { $day }, valoarea de acțiune { $action }{ $borrowed }, atinsă după { $to_action } min. Împărțiți lucrul pe mai multe persoane sau zile: { $people_action }, cel mult { $to_action } min fiecare; stați la cald, disc bine ascuțit, prindere ușoară. Verificați regulile în vigoare.

vibration-unknown = vibrațiile mașinii: citiți-le în instrucțiuni
    .detail = Mărime { $a }: nicio mașină de mână nu este fără vibrații. Luați valoarea producătorului sau { $usual } m/s² pentru un polizor unghiular pe piatră și introduceți machine.vibration.

disc-over-marked-rpm = { $disc }: mașina { $machine } rot/min, discul marcat { $marked }
    .detail = Mașina se rotește cu { $over } rot/min mai repede decât { $marked } rot/min marcate pe disc ({ $speed }, marcat pentru { $marked_speed }). Discul se poate sparge în bucăți care zboară: folosiți unul marcat pentru { $machine } sau mai mult, sau o mașină mai lentă.

disc-mark-unknown = { $disc }: turația maximă nu este cunoscută
    .detail = Mașina { $machine } rot/min, marcajul discului necunoscut. Citiți marcajul de pe disc și introduceți disc.max_rpm; un disc fără marcaj nu se folosește.

machine-speed-unknown = turația mașinii nu este cunoscută
    .detail = Mașina { $machine } rot/min: fără turația ei adevărată nu se poate verifica niciun disc. Citiți plăcuța și introduceți machine.rpm.

kickback-pinched-disc = un disc prins în tăietură produce recul
    .detail = Stați lângă linia discului, nu în ea, țineți cu două mâini, apărătoarea montată, nimeni în acea linie. După o prindere: opriți, așteptați până când discul se oprește, eliberați-l, intrați din nou numai la turație plină; nu porniți niciodată cu discul în tăietură.

resin-disc-expired = { $disc }: ultima zi de folosire a fost { $expires }
    .detail = Data lucrării { $date }, ultima zi de folosire a discului { $expires }. Durata discurilor cu liant de rășină, în ani de la fabricație: cel mult { $years }. Rupeți acest disc și luați unul nou sau un disc diamantat.

resin-disc-age-unknown = { $disc }: cu liant de rășină, ultima zi de folosire necunoscută
    .detail = Durata discurilor cu liant de rășină, în ani de la fabricație: cel mult { $years }, iar umezeala o scurtează. Citiți luna sau trimestrul de pe inel sau de pe etichetă și introduceți disc.expires; un disc cu liant de rășină fără dată nu se folosește.

resin-disc-age = { $disc }: nu se folosește după { $expires }
    .detail = Ultima zi de folosire a discului { $expires }: comparați-o cu ziua lucrului. Până atunci păstrat uscat și culcat; un disc care a fost umed sau a fost scăpat pe jos se rupe și se aruncă.

disc-before-use = controlați discul înainte de fiecare montare
    .detail = Fără fisuri, gaura potrivită, ambele flanșe ale mașinii însăși și curate, săgeata în sensul bun, apărătoarea pe mărimea discului, goluri în margine cel mult { $gap }, niciodată un disc uzat de la o mașină mai mare. La { $speed } orice bucată desprinsă este un proiectil.

support-both-sides = Ambele părți ale tăieturii sprijinite de dedesubt, aproape de ea
    .detail = Suporturi sub ambele părți, aproape de tăietură și la marginile pietrei, ca tăietura să rămână deschisă până la capăt. Bucata care se desprinde stă pe suporturile ei înainte de prima trecere; nicio mână, niciun picior, niciun genunchi sub ea.

rim-speed-over-limit = { $disc }: viteză periferică { $speed }, cea mai mare clasă marcată { $highest }
    .detail = Un disc de { $diameter } la { $machine } rot/min merge cu { $speed }; nicio dungă nu permite mai mult de { $highest }. Disc mai mic sau mașină mai lentă.

rim-speed-above-hand-discs = { $disc }: viteză periferică { $speed }, discurile pentru mașini de mână sunt făcute pentru { $hand }
    .detail = Un disc de { $diameter } la { $machine } rot/min merge cu { $speed }. Peste { $hand } m/s (dungă roșie) numai un disc cu dungă verde ({ $highest } m/s): verificați dacă o are sau coborâți la { $slower } rot/min sau mai puțin.

disc-run-down = discul se mai rotește după oprirea din întrerupător
    .detail = Secunde, mai mult la un disc mare: țineți mașina departe de piatră, furtun și haine până când discul se oprește, abia apoi puneți-o jos. { $power ->
            [mains] Ștecherul scos
            [battery] Acumulatorul scos
            [air] Furtunul de aer desfăcut
           *[engine] Motorul oprit
        } înainte să se atingă discul.

new-disc-run = Disc nou: întâi merge în gol, toată lumea în afara liniei lui
    .detail = { $minutes } min la turație plină, apărătoarea montată, mașina ținută departe de corp, nimeni în planul discului, la fiecare montare. Vibrează sau țiuie: opriți, așteptați până când discul se oprește, controlați din nou.

never-steer-the-disc = un disc taie drept: nu îl conduceți niciodată pe o curbă
    .detail = Apăsarea laterală îndoaie și sparge discul. Apăsare laterală permisă: niciuna. Curbele se fac din intrări drepte de sus, ca în desen; nu se șlefuiește cu fața laterală a unui disc de tăiere.

disc-bore = { $disc }: gaură de { $bore } pe un guler de centrare de { $seat }
    .detail = Gaură { $bore }, guler de centrare { $seat }, de obicei { $usual }, diferență cel mult { $play }. Un disc cu joc bate și se sparge, unul strâmt nu intră. Discul potrivit pentru mașină: fără bucșă, fără pilire, fără adaos.

protector-unknown = protector auditiv: care, și ce scrie pe el?
    .detail = Citiți SNR, H M L sau NRR de pe cutie și scrieți aici: { $level } la ureche în timpul tăierii, iar { $duty } dB(A) pe toată ziua fac protecția obligatorie. În fișier: [protector].

protector-too-weak = protector auditiv prea slab: { $day } dB(A) pe toată ziua sub el
    .detail = { $level } în timpul tăierii, { $holds } dB reținuți{ $borrowed }: { $ear } la ureche, { $day } pe toată ziua, cel mult { $duty }. Un protector cu atenuare mai mare, dopuri sub căști sau mai puține minute.

protector-too-strong = protector auditiv prea puternic: { $ear } dB(A) la ureche
    .detail = { $level } în timpul tăierii, { $holds } dB reținuți{ $borrowed }: { $ear } la ureche. Sub { $quiet } strigătele și avertismentele nu se mai aud: stabiliți semne cu mâna sau luați unul cu atenuare mai mică.

protector-foreign-rating = indicele protectorului auditiv nu este cel cu care se socotește aici
    .detail = SNR, H M L (EN 352) și NRR (american) se încearcă diferit și nu se schimbă niciodată unul cu altul. S-a socotit după sistemul propriu al indicelui dat, în felul mai strict: { $holds } dB reținuți. Cereți indicele valabil acolo unde lucrați.

noise-over-limit = zgomotul zilei { $under } dB(A) sub protector, limita { $limit } dB(A)
    .detail = { $level } dB(A) timp de { $hours } ore din zi cu această mașină: { $day_exact } dB(A) pe zi fără protector, { $under } dB(A) sub el, limita { $limit } dB(A){ $borrowed }. Luați un protector cu atenuare mai mare ([protector]), dopuri sub căști, sau împărțiți tăiatul pe mai multe zile (dust.days). Verificați regulile în vigoare.

noise-unknown = zgomotul mașinii: citiți-l în instrucțiuni
    .detail = Nivel { $level } dB(A): niciun polizor unghiular nu este silențios. Luați valoarea producătorului sau { $usual } dB(A) pentru un disc mare pe piatră și introduceți machine.noise. Purtați până atunci protecția auzului.

extractor-filter = filtrul exhaustorului trebuie să rețină { $holds } și să fie curățat în timpul lucrului
    .detail = Debit de aer { $has }, minimum { $asks }. Debitul este valabil numai cu un filtru curat care reține cel puțin { $holds }, cu un ciclon sau cu curățarea filtrului și cu apărătoarea de aspirație așezată pe piatră: { $vacuum }{ $borrowed }; clasa M lasă să treacă cel mult { $m }. La ambele capete ale tăieturii și la intrările de sus apărătoarea de aspirație rămâne deschisă: acolo înaintați încet.

control-cut-less = tăiați mai puțin
    .detail = se taie o față de { $face } m², { $minutes } min cu discul în piatră: orice margine care rămâne cum este nu ridică praf

control-shop = dați-o la tăiat cu apă la un atelier
    .detail = un ferăstrău-pod cu apă taie piesa în câteva minute, iar { $grams } de piatră nu ajung niciodată la locul lucrului

control-at-the-disc = { $method ->
    [water] apă la disc
    [shroud] apărătoare cu aspirație la disc
   *[none] apă sau aspirație la disc
 }
    .detail = apă la o mașină omologată pentru aceasta sau o apărătoare de aspirație cu cel puțin { $airflow } pentru un disc de { $disc }

control-outdoors = în aer liber
    .detail = în aer în mișcare, vânt din lateral, departe de uși și de prize de aer

control-distance = distanță
    .detail = nimeni fără protecție respiratorie unde se vede praf sau ceață, și nimeni în linia discului

control-mask = masca, la urmă
    .detail = potrivită purtătorului, ras proaspăt la masca etanșă, purtată până când locul este curat

controls-open = mai puternic decât masca, încă deschis: { $what }
    .detail = Faceți-o sau scrieți de ce nu: fiecare ia praf pe care altfel masca ar trebui să-l rețină.

no-dust-control = tăiere uscată fără nimic care să rețină praful
    .detail = Măsură împotriva prafului: niciuna; cerută cel puțin una din două. Folosiți apă la o mașină omologată pentru aceasta sau o apărătoare de aspirație cu un exhaustor destul de puternic pentru disc, sau dați-o la tăiat cu apă la un atelier. Tăierea uscată și fără apărătoare de aspirație nu este în niciun rând al tabelului; nicio protecție respiratorie nu o compensează, iar praful ajunge la toți cei din apropiere.

water-flow = apă pe disc fără întrerupere, destulă ca să nu se vadă praf
    .detail = S-a socotit cu { $flow } l/min. Regula nu dă nicio valoare pentru un polizor unghiular; { $advised } l/min se recomandă pentru mașinile de debitat ținute în mână. Apă la marginea discului înainte ca discul să atingă piatra și până iese din ea. Se vede praf sau abur: opriți, mai multă apă.

water-too-little = { $flow } l/min este mai puțin decât se recomandă pentru o mașină de debitat ținută în mână
    .detail = { $flow } l/min, iar pentru mașinile de debitat ținute în mână se recomandă { $advised } l/min: mai puțină apă reține mai puțin praf. Rezervor sau duză mai mare și nicio tăietură cât timp se vede praf.

shroud-airflow-unknown = debitul de aer al exhaustorului nu este cunoscut
    .detail = Debit de aer necunoscut; un disc de { $disc } cere cel puțin { $asks } m³/h. Fără această valoare efectul apărătorii de aspirație nu este dovedit: citiți plăcuța exhaustorului și introduceți dust.airflow sau tăiați cu apă.

shroud-airflow-too-small = exhaustorul dă { $has }, discul cere { $asks }
    .detail = Debit de aer { $has }, minimum { $asks } m³/h pentru un disc de { $disc }. Folosiți un exhaustor mai puternic, un disc mai mic sau tăiați cu apă.

not-in-table-indoors = nu este în tabelul autorității: expunerea trebuie evaluată
    .detail = Această mașină, această măsură, în interior, { $hours } h din zi: niciun rând. Nimeni nu a publicat ce protecție respiratorie este suficientă. În aer liber există rânduri pentru apă și pentru apărătoarea de aspirație: schimbați locul sau măsura cu unul care este în tabel sau cereți evaluarea expunerii de către o persoană competentă.

not-in-table = nu este în tabelul autorității: expunerea trebuie evaluată
    .detail = Această mașină, această măsură, în aer liber, { $hours } h din zi: niciun rând. Nimeni nu a publicat ce protecție respiratorie este suficientă. Schimbați măsura cu una pe care tabelul o are pentru această mașină sau cereți evaluarea expunerii de către o persoană competentă.

indoors-exhaust = în interior: aerul trebuie și evacuat
    .detail = Locul: în interior. Tăiați în aer liber dacă se poate. Altfel evacuați praful vizibil afară, închideți și izolați încăperea și nu lăsați pe nimeni să intre fără protecție respiratorie.

marble-veins = vinele din marmură pot conține mult mai multă silice decât piatra
    .detail = Marmura în ansamblu are cel mult { $share } % silice; vinele ei pot avea mult mai mult. Tratați o tăietură de-a lungul unei vine sau prin ea ca pe o tăietură în piatră bogată în silice.

stone-kind-unknown = { $stone }: nu se știe ce o leagă
    .detail = Piatra legată cu rășină și care conține 1 % silice sau mai mult se consideră piatră compozită. Cereți fișa tehnică. Dacă este piatră compozită: { $rule }

silica-unknown = { $stone }: întrebați de conținutul de silice
    .detail = Silice introdusă cel mult { $share } %: aproape nicio piatră nu este fără silice. Până când o fișă tehnică nu confirmă acest conținut, tratați piatra ca bogată în silice (peste { $threshold } %) și introduceți stone.silica.

engineered-stone-banned = tăierea pietrei compozite este interzisă aici
    .detail = { $rule }

engineered-stone-dry = piatră compozită fără apă
    .detail = Metode umede: niciuna, cerute. { $rule }

engineered-stone-powered-respirator = piatră compozită fără protecție respiratorie cu ventilator
    .detail = Protecție respiratorie cu ventilator: niciuna la îndemână, cerută. { $rule }

engineered-stone = piatră compozită: regulile mai stricte trec înainte
    .detail = { $rule } Alegerea sigură este să lăsați tăierea pe seama unui atelier autorizat.

high-silica-stone = { $stone }: poate avea până la { $high } % silice
    .detail = Silicea este între { $low } și { $high } % din piatră; peste { $threshold } % piatra se consideră bogată în silice (valoarea Californiei, folosită aici peste tot). Praful ei lasă cicatrici în plămâni pentru totdeauna: măsură împotriva prafului și protecție respiratorie de la prima atingere până la sfârșitul curățeniei, și nimeni în apropiere fără protecție respiratorie.

california-silica-rule = lucrare cu expunere mare: cu apă, într-o zonă delimitată, cu cea mai puternică protecție respiratorie
    .detail = Silice până la { $high } %. { $rule }

silica-rich-stone-dry = lucrare cu expunere mare fără apă: California cere metode umede
    .detail = Silice până la { $high } %. { $rule }

sparks-into-extractor = oțel în piatră: scânteile ajung în exhaustor
    .detail = Oțel permis la tăiere cu exhaustorul pornit: deloc. Scânteile îi aprind sacul. Scoateți întâi oțelul, țineți tăieturile departe de el sau tăiați cu apă.

sparks-from-steel = oțelul din piatră aruncă scântei
    .detail = Nimic care arde pe o rază de { $clear } (aprecierea noastră), o găleată plină cu apă și un stingător la îndemână, un disc pe care producătorul lui îl permite pentru oțel, fără apăsare. La o oră după ultima tăietură controlați încă o dată dacă nu iese fum.

steel-not-known = oțel în piatră: verificați, nu este sau unde?
    .detail = În spatele plăcii sunt adesea lipite bare și plasă. Uitați-vă pe spate, treceți un magnet pe fiecare linie de tăiere. În fișier: stone.steel ("none" = nu este, "some" = este).

supply-unprotected = apă la o alimentare de la rețea fără întrerupător diferențial (RCD), fără GFCI și fără 110 V cu mijlocul legat la pământ
    .detail = Protecție: niciuna cunoscută; cerut: întrerupător diferențial (RCD) de { $rcd } sau mai puțin, GFCI clasa A ({ $gfci }) sau 110 V cu mijlocul legat la pământ ({ $volts } față de pământ). Aici: { $rule }{ $borrowed }. Cu apă prin preajmă, fără protecție nu se taie.

supply-unprotected-dry = alimentare de la rețea fără întrerupător diferențial (RCD), fără GFCI și fără 110 V cu mijlocul legat la pământ
    .detail = Protecție: niciuna cunoscută; cerut: întrerupător diferențial (RCD) de { $rcd } sau mai puțin, GFCI clasa A ({ $gfci }) sau 110 V cu mijlocul legat la pământ ({ $volts } față de pământ). Aici: { $rule }{ $borrowed }. Montați o astfel de protecție pe cablul de alimentare și apăsați întâi butonul ei de încercare.

wet-mains = Butonul de test al RCD sau GFCI, dacă există, apăsat: declanșează. Ștecherele uscate și ridicate de pe jos
    .detail = Butonul de încercare se apasă înainte de prima tăietură, iar protecția trebuie să declanșeze. Ștecherele și îmbinările uscate și ridicate de la pământ, cablurile atârnate în buclă, ca apa să picure înainte de ștecher, mâini uscate la ștecher și la întrerupător. Dacă declanșează în timpul tăierii: opriți, aflați de ce, nu o țineți niciodată apăsată cu forța.

engine-indoors = motor cu ardere în interior: monoxid de carbon
    .detail = Motoare în interior sau într-o curte închisă: niciunul permis. Gazele de eșapament omoară fără avertisment; tăiați în aer liber sau folosiți o mașină cu acumulator, cu aer comprimat sau la rețea.

engine-fumes = motor cu ardere: gaze de eșapament și combustibil
    .detail = În aer liber, cu aer din toate părțile, niciodată într-o groapă, într-un cort sau într-un colț între ziduri. Gazele de eșapament departe de fețele ambelor persoane. Alimentați numai cu motorul rece și porniți-l în alt loc.

water-on-mains-unrated = apă la o mașină la rețea care nu este făcută pentru apă: electrocutare
    .detail = Omologare pentru apă: niciuna; cerută: de la producător, pentru tăiere umedă. Avertismentele standard interzic apa la un polizor unghiular obișnuit la rețea; un întrerupător diferențial (RCD) sau un GFCI nu face din el o mașină pentru apă. Folosiți o mașină omologată pentru tăiere umedă sau o apărătoare de aspirație și un exhaustor.

water-not-rated = apă la o mașină care nu este făcută pentru apă
    .detail = Omologare pentru apă: niciuna; cerută: de la producător, pentru tăiere umedă. Folosiți o mașină al cărei producător permite apa sau o apărătoare de aspirație și un exhaustor.

battery-wet = acumulatorul scos înainte să se atingă discul, acumulatorii ținuți uscați
    .detail = Acumulatorii se schimbă departe de șlam, cu mâinile uscate; un acumulator în care a intrat apă nu se mai folosește și nu se mai încarcă. Acumulatorul se scoate înainte să se controleze sau să se schimbe discul.

air-hose = aer comprimat: racorduri asigurate cu știft, presiune nu mai mare decât pe plăcuță
    .detail = Turația introdusă, { $rpm } rot/min, este valabilă numai la presiunea de pe plăcuță: presiune mai mare înseamnă turație mai mare. Regulator de presiune și racorduri de siguranță montate, evacuarea aerului dusă departe de praf și de mâini, furtunul golit de presiune înainte să se atingă discul. Nu suflați niciodată praful și nu curățați niciodată hainele suflând aer.

respirator-class = citiți clasa marcată: { $mask }
    .detail = Factorul este de la { $least } până la { $most } după clasă ({ $marks }), cerut { $apf } sau mai mult{ $borrowed }. Se socotește { $least } până când marcajul este introdus ca dust.respirator: folosiți una cu marcaj pentru { $apf } sau mai mult.

respirator-not-in-scheme = { $mask }: fără factor în sistemul acestei regiuni
    .detail = { $mask }: factor 0 aici, iar unul este cerut{ $borrowed }. Factorii din două sisteme nu se amestecă niciodată; o mască fără rând în acesta se socotește ca nicio mască. Întâi pașii care în ordinea măsurilor au starea LIPSEȘTE; apoi una aprobată acolo unde lucrați.

respirator-unlisted = { $mask }: fără factor în sistemul acestei regiuni
    .detail = Factor 0, niciunul cerut de tabel{ $borrowed }. Poate că reține praful, dar nicio regulă de aici nu o recunoaște: cereți una aprobată acolo unde lucrați.

respirator-missing = nicio protecție respiratorie la îndemână
    .detail = Protecție respiratorie: niciuna; se cere un factor de { $apf } sau mai mult{ $borrowed }. Întâi pașii care în ordinea măsurilor au starea LIPSEȘTE; apoi procurați una care se potrivește purtătorului și introduceți dust.respirator.

respirator-missing-unassessed = nicio protecție respiratorie la îndemână, și nimic nu stabilește care este suficientă
    .detail = Protecție respiratorie: niciuna; factorul nu este stabilit de nimic publicat: expunerea trebuie evaluată. Întâi pașii care în ordinea măsurilor au starea LIPSEȘTE; apoi cereți evaluarea, procurați protecția respiratorie care rezultă din ea și introduceți dust.respirator.

respirator-none-asked = nicio protecție respiratorie la îndemână; tabelul nu cere una aici
    .detail = Protecție respiratorie: niciuna; niciuna cerută de tabel{ $borrowed }. Tabelul este valabil numai cât timp măsura lui funcționează fără defect: țineți una pregătită și purtați-o ori de câte ori se vede praf și la curățenie.

respirator-not-fit-tested = cereți testarea etanșeității măștii pe cel care o poartă
    .detail = { $mask }: factorul contează numai după o probă de etanșeitate și pe pielea proaspăt rasă; până atunci nu vă puteți baza pe el. Cereți proba sau folosiți o glugă cu ventilator.

respirator-clean-shaven = ras proaspăt în ziua lucrului, etanșeitatea verificată de fiecare dată
    .detail = { $mask }: cu probă de etanșeitate făcută, iar aceasta este valabilă numai pe pielea proaspăt rasă; barba de câteva zile se consideră barbă. Verificați etanșeitatea la fiecare punere; o altă mărime sau marcă, sau o altă față, cere o probă nouă.

respirator-below-required = { $mask }: se socotește aici cu factor { $has }, cerut { $apf }
    .detail = { $mask }: factor { $has }, cerut { $apf } sau mai mult{ $borrowed }. Întâi pașii care în ordinea măsurilor au starea LIPSEȘTE: o măsură mai puternică trece înaintea unei măști mai puternice. Apoi protecție respiratorie cu un factor { $apf } sau mai mult; factorii din două sisteme nu se amestecă niciodată.

nuisance-mask = o mască fără clasă nu este protecție respiratorie
    .detail = Factor 0: nu are nicio clasă, iar praful fin trece prin ea și pe lângă ea. Se socotește ca lipsă totală a protecției respiratorii. Procurați una cu o clasă valabilă aici și introduceți dust.respirator.

asbestos-not-tested = { $stone } poate conține minerale de azbest: nu se taie înainte de analiză
    .detail = Azbest care se poate tăia: deloc. Înainte de prima tăietură cereți unui laborator să analizeze o așchie din această placă sau luați analiza carierei și completați stone.asbestos, stone.report și stone.date. Fără un rezultat clar este o lucrare pentru persoane autorizate.

asbestos-declaration = { $stone }: cereți declarația carierei despre mineralele de azbest
    .detail = { $stone } este printre rocile care le pot conține. Cereți vânzătorului declarația carierei și completați stone.asbestos, stone.report și stone.date.

binder-unknown = { $stone }: nu se știe ce o leagă, deci se socotește piatră compozită
    .detail = O piatră cu 1 % silice sau mai mult, al cărei liant nu l-a spus nimeni, se socotește compozită până când stone.binder spune altceva. { $rule }

resin-in-fired-slab = { $stone }: este fără rășină?
    .detail = Gresia porțelanată și piatra sinterizată sunt scoase din interdicție numai dacă nu conțin rășină. Cereți fișa tehnică și completați stone.binder. { $rule }

supply-unprotected-outdoors = rețea electrică în aer liber fără RCD, GFCI sau 110 V cu mijlocul legat la pământ
    .detail = Protecție: niciuna cunoscută; cerut: întrerupător diferențial (RCD) de { $rcd } sau mai puțin, GFCI clasa A ({ $gfci }) sau 110 V cu mijlocul legat la pământ ({ $volts } față de pământ). Aici: { $rule }{ $borrowed }. În aer liber, pământul ud și cablurile deteriorate fac o defecțiune mortală: montați o astfel de protecție pe cablu, apăsați butonul ei de încercare și completați machine.protected.

speed-assumed = citiți viteza de pe plăcuță sau disc: { $what }, presupus
    .detail = Presupus: { $what }. Citiți plăcuța mașinii și marcajul discului și completați machine.rpm și disc.max_rpm: verificarea discului față de mașină este valabilă numai cu valorile adevărate.

disc-larger-than-machine = { $disc }: { $diameter }; mașina este făcută pentru cel mult { $largest }
    .detail = Diametru { $diameter }, cel mai mare disc al mașinii și al apărătorii ei { $largest }. Folosiți un disc mai mic sau o mașină făcută pentru acesta; nu scoateți niciodată apărătoarea.

respirator-filter = o mască N95 nu ajunge aici: se cere un filtru din seria 100 sau HEPA
    .detail = Protecție respiratorie: N95; cerut: factor 10 sau mai mare cu un filtru din seria 100 sau HEPA. Luați o semimască cu filtre P100 sau mai bună și completați dust.respirator.

no-water-flow = metodă cu apă, dar fără debit: aceasta este tăiere uscată
    .detail = Apă: 0 litri pe minut. Tăierea uscată și fără apărătoare de aspirație nu este în niciun rând al tabelului și nicio protecție respiratorie nu o compensează. Aduceți apă la marginea discului și completați dust.water, sau folosiți o apărătoare de aspirație și un exhaustor.

speed-assumed-of = { $what } { $speed } rotații pe minut

bystanders = Nimeni altcineva aproape: copii, vecini și animale departe și anunțați
    .detail = Praful, ceața și zgomotul ajung mai departe decât locul de tăiere, iar o bucată dintr-un disc spart zboară zeci de metri. Îngrădiți locul, spuneți vecinilor când începeți și opriți discul când intră cineva fără mască, ochelari și protecția auzului.

windows-and-intakes = Ferestre, uși și prize de aer închise, ventilația oprită
    .detail = Praful care face rău este prea fin ca să fie văzut și ajunge departe. Închideți ferestrele și ușile casei și rugați vecinii să facă la fel; opriți ventilația, pompa de căldură și aerul condiționat de lângă loc; tăiați sub vânt față de ele.

working-height = Piatra între șold și cot, teren tare, fără scară
    .detail = Capre la înălțimea de lucru și teren orizontal sub ambele picioare. Nu tăiați niciodată de pe o scară sau o treaptă, deasupra umărului sau în genunchi sub piatră: un recul vă aruncă și mașina vine după.

eyes = Ochelari închiși, peste ei o vizieră, spălător de ochi la îndemână
    .detail = Ochelarii obișnuiți lasă așchiile și nisipul să intre de jos și din lateral. Ochelari închiși pentru toți cei de aproape; numai viziera nu ajunge. Nisip în ochi: clătiți, nu frecați niciodată; o așchie care rămâne este pentru medic.

side-handle = Mânerul lateral și apărătoarea montate, două mâini, întrerupătorul niciodată blocat
    .detail = O singură mână nu ține un recul. Apărătoarea stă între disc și față și nicio tăietură nu merită scoaterea ei. Un întrerupător blocat lasă discul să se rotească după ce mașina a căzut{ $power ->
            [mains] ; după o pană de curent opriți întrerupătorul înainte de a pune ștecherul la loc
           *[other] {""}
        }.

leads = Cablul și furtunurile în spate, întregi, desfășurate, departe de disc și de picioare
    .detail = Peste umăr și în spate, niciodată peste tăietură sau peste drum. Un cablu deteriorat nu se folosește. Îmbinările uscate și ridicate de la pământ; un tambur se desfășoară tot, altfel se încinge.

hoses = Furtunurile în spate, întregi, departe de disc și de picioare
    .detail = Peste umăr și în spate, niciodată peste tăietură sau peste drum. Un furtun care curge sau este îndoit nu se folosește.

leaning-slabs = Plăci pe cant legate sau pe un stativ în A; se mută una câte una, nimeni unde pot cădea
    .detail = Șase oameni au murit în cinci ani în Marea Britanie din cauza plăcilor căzute la depozitare sau manevrare. Stativ în A pe teren orizontal, picioarele depărtate de perete, legat; nu desfaceți niciodată legătura unui pachet cu cineva în față; nimeni între două plăci. Una care începe să cadă se lasă: fugiți, nu o țineți niciodată.

not-for-everyone = Nu este pentru: gravide, bolnavi de plămâni, inimă, mâini sau spate, minori, oameni obosiți sau băuți
    .detail = Boală de plămâni, degete albe, inimă slabă, un stimulator cardiac al cărui producător avertizează față de mașini, spate rănit, sarcină: întrebați întâi un medic. Niciun minor, nimeni obosit, nimeni după alcool sau droguri care încetinesc.

first-aid = Primul ajutor pregătit: pansament compresiv, spălător de ochi, telefon, adresa scrisă
    .detail = O arteră tăiată ucide în câteva minute: apăsați tare pe rană, pansament sau garou, sunați. Curentul oprit înainte de a atinge pe cineva electrocutat. Strivit sub piatră: întâi sunați, ridicați numai cu un utilaj. Cine știe primul ajutor este numit înainte de început.

moment-before = Înainte

moment-cutting = În timpul tăierii

moment-moving = La mutarea pietrei

moment-after = După

settled-asbestos = Analizată, fără minerale de azbest: { $report }, { $date }

settled-controlled = Piatra cu { $share } silice se taie sub control, cum cere regula

settled-noise = { $level } la tăiere, { $under } dB(A) pe zi sub protector, limita { $limit } dB(A)

settled-mask = { $mask }: se socotește cu factorul { $has }, cerut { $apf }

settled-check-call = Singur, cu un apel convenit: { $who }

settled-supply = Alimentare de la rețea protejată

settled-speed = { $disc }: marcat { $marked } rotații pe minut, mașina { $machine }
