# Findings of hazards: a line, and in full.

working-alone = maar één persoon: niemand die het werk stopt, niemand die hulp roept
    .detail = Opgegeven personen: { $people }, minstens 2 zolang er een schijf draait (oordeel). Zoek iemand die klaarstaat, of geef in lift.check_call op wie weet waar je bent en op welke tijden die belt; neemt niemand op: dan komt die persoon.

second-person = Een tweede persoon { $at ->
    [plug-tap] bij stekker en waterkraan
    [plug] bij de stekker
    [valve-tap] bij luchtkraan en waterkraan
    [valve] bij de luchtkraan
    [tap] bij de waterkraan
   *[sight] in het zicht
 }, die de zager ziet en verder niets doet
    .detail = Van de { $people } personen staat er één daar, in het zicht van de zager, uit de lijn van de schijf, met ademmasker en gehoorbescherming. Een opgestoken hand of een hand op de schouder betekent uit, en niemand vraagt waarom.

who-is-bound = Bouwplaats, bedrijf of eigen werk: weet welke regel geldt
    .detail = Op een bouwplaats (29 CFR 1926.1153) is een rij van tabel 1, tot op de letter gevolgd, genoeg. Een bedrijf dat werkbladen maakt valt onder algemene industrie (29 CFR 1910.1053): daar is geen tabel, de blootstelling wordt beoordeeld. Een particulier is aan geen van beide gebonden; de tabel is de beste gepubliceerde leidraad, en het stof richt dezelfde schade aan.

no-dry-sweeping = Niet droog vegen, geen perslucht
    .detail = { $rule }{ $borrowed } Ongeveer { $stone } steen, waarvan tot { $silica } silica, ligt er na de sneden: droog stuift het weer op. Stofzuiger: { $vacuum }{ $vacuum_borrowed }.

vacuum-before-the-mask-comes-off = Stof overal opgezogen voordat het masker af gaat
    .detail = Geen enkele kap vangt alle { $stone }, het minst aan de einden van een snede. Vloer, richels, machine en kleren worden afgezogen voordat er een masker afgaat: { $vacuum }{ $vacuum_borrowed }.

cold-water = Handen warm en droog; witte of gevoelloze vingers: stop voor vandaag
    .detail = Waterdichte mouwen, voor elk uur een droog paar handschoenen, pauzes in de warmte. Koude, witte of gevoelloze vingers: stop voor die dag, door kou doen trillingen eerder schade.

frost = Niet nat zagen bij vorst
    .detail = Onder ongeveer 3 °C (oordeel) bevriest slib onder de voeten en staat het water stil in slang en sproeier: geen water, niet zagen. Maak machine en slang leeg vóór de nacht.

local-rules-first = Plaatselijke regels, aanwijzingen van fabrikanten en deskundige personen gaan vóór dit blad
    .detail = Dit blad is geen vergunning. Regio waarvoor de cijfers gelden: { $region }. Ga de geldende regels na bij { $authority }. Hefmiddelen, elektra, constructie en steen die asbest kan bevatten, zijn werk voor erkende vakmensen.

slurry-clean-up = Slib opgeruimd voordat het droogt; emmers nodig: { $buckets }
    .detail = Ongeveer { $kilos }: { $water } l water ({ $flow } l/min zolang de schijf zaagt) en { $stone } steen, emmers van { $bucket } l: { $buckets }. Droog is het precies het stof dat het water heeft neergehouden. Zeil onder de schragen, bijeenschrapen en opzuigen met een waterzuiger zolang het nat is, kleren, laarzen en machine afspoelen, de rest laten bezinken; niets in putje of riool.

dust-bags = Zakken van de afzuiger dicht en weg; zakken nodig: { $bags }
    .detail = Ongeveer { $stone } steen als de kap alles opving, zakken van hoogstens { $bag }: { $bags }. Wissel de zak met het ademmasker op, buiten; sluit hem voordat hij uit de afzuiger komt; schud hem nooit uit en leeg hem nooit om nog eens te gebruiken.

falling-stone = Niemand onder de steen, nooit een vallende plaat opvangen
    .detail = { $mass } kg/m² bij de grootste gemeten dikte en de zwaarste steen van de soort. Reststuk en blijvende steen zijn allebei gesteund vóór de eerste zaaggang; niemands voeten of vingers eronder of ertussen; sta nooit waar een plaat op zijn kant kan vallen, en probeer er nooit een op te vangen.

wet-floor = Slib is glad: laarzen, water weggeleid, vloer gespoeld voordat er iets getild wordt
    .detail = Antisliplaarzen, water weggeleid van waar mensen staan en dragen{ $power ->
            [mains] , snoeren opgehangen uit het nat
           *[other] {""}
        }. Vloer afgespoeld en vrijgemaakt voordat er een stuk getild wordt.

vibration-over-limit = trillingen A(8) { $day } m/s² in { $all } min van de dag, grenswaarde { $limit } m/s²
    .detail = { $a } gedurende { $minutes } minuten van de dag met deze machine, { $points } punten met al het andere erbij: A(8) { $day }, grenswaarde { $limit }{ $borrowed }, bereikt na { $to_limit } minuten. Verdeel het werk over { $people } personen of dagen, hoogstens { $to_limit } minuten elk; onder de actiewaarde { $action } zijn er { $people_action } nodig. Vul de dagen of personen in als dust.days. Warm blijven, scherpe schijf, losse greep. Ga de geldende regels na.

vibration-over-action = trillingen A(8) { $day } m/s² in { $all } min van de dag, actiewaarde { $action } m/s²
    .detail = { $a } gedurende { $minutes } minuten van de dag met deze machine, { $points } punten met al het andere erbij: A(8) { $day }, actiewaarde { $action }{ $borrowed }, bereikt na { $to_action } minuten. Verdeel het werk over { $people_action } personen of dagen, elk hoogstens { $to_action } minuten; blijf warm, scherpe schijf, losse greep. Ga de geldende regels na.

vibration-unknown = trillingen van de machine: lees ze in de handleiding
    .detail = Sterkte { $a }: geen enkele handmachine is zonder trillingen. Neem het cijfer van de fabrikant, of { $usual } m/s² voor een haakse slijper op steen, en vul machine.vibration in.

disc-over-marked-rpm = { $disc }: machine { $machine } t/min, op de schijf staat { $marked }
    .detail = De machine draait { $over } t/min sneller dan de { $marked } die op de schijf staat ({ $speed }, opschrift voor { $marked_speed }). De schijf kan uit elkaar vliegen: gebruik een schijf met opschrift { $machine } of meer, of een langzamere machine.

disc-mark-unknown = { $disc }: hoogste toerental niet bekend
    .detail = Machine { $machine } t/min, opschrift van de schijf niet bekend. Lees het opschrift op de schijf en vul disc.max_rpm in; een schijf zonder opschrift wordt niet gebruikt.

machine-speed-unknown = toerental van de machine is niet bekend
    .detail = Machine { $machine } t/min: zonder het ware toerental kan geen enkele schijf gecontroleerd worden. Lees het typeplaatje en vul machine.rpm in.

kickback-pinched-disc = Sta naast de lijn van de schijf; klemt ze: stop, maak vrij, pas op volle toeren weer erin
    .detail = Sta naast de lijn van de schijf, twee handen aan de machine, beschermkap gemonteerd, niemand in die lijn. Na het klemmen: stop, laat de schijf stilstaan, maak haar vrij, ga alleen op volle toeren weer de snede in; start nooit in de snede.

resin-disc-expired = { $disc }: de laatste dag was { $expires }
    .detail = Datum van het werk { $date }, laatste dag van de schijf { $expires }. Kunstharsgebonden schijven gaan hoogstens { $years } jaar na het maken mee: breek de schijf, en neem een nieuwe of een diamantschijf.

resin-disc-age-unknown = { $disc }: kunstharsgebonden, laatste dag niet bekend
    .detail = Kunstharsgebonden schijven gaan hoogstens { $years } jaar na het maken mee, en vocht maakt dat korter. Lees maand of kwartaal op ring of etiket en vul disc.expires in; een kunstharsgebonden schijf zonder datum wordt niet gebruikt.

resin-disc-age = { $disc }: niet na { $expires }
    .detail = Laatste dag van de schijf { $expires }: vergelijk die met de dag van het werk. Tot dan droog en plat liggend bewaard; een schijf die vochtig is geworden of gevallen is, wordt gebroken en weggegooid.

disc-before-use = Schijf bekeken: geen scheuren, asgat en flenzen passen, beschermkap van haar eigen maat
    .detail = Geen scheuren, passend asgat, beide flenzen van deze machine en schoon, pijl de goede kant op, beschermkap van de maat van de schijf, gleuven in de rand hoogstens { $gap }, nooit een afgesleten schijf van een grotere machine. Bij { $speed } is elk los stuk een projectiel.

support-both-sides = Beide kanten van de snede van onderen gesteund, dicht bij de snede
    .detail = Blokken onder beide kanten dicht bij de snede en aan de randen van de steen, zodat de zaagsnede tot het einde open blijft. Het reststuk ligt vóór de eerste zaaggang op zijn eigen blokken; geen hand, voet of knie eronder.

rim-speed-over-limit = { $disc }: omtreksnelheid { $speed }, hoogste gemarkeerde klasse { $highest }
    .detail = Een schijf van { $diameter } loopt bij { $machine } t/min met { $speed }; geen enkele kleurstreep staat meer toe dan { $highest }. Kleinere schijf of langzamere machine.

rim-speed-above-hand-discs = { $disc }: omtreksnelheid { $speed }, schijven voor handmachines zijn gemaakt voor { $hand }
    .detail = Een schijf van { $diameter } loopt bij { $machine } t/min met { $speed }. Boven { $hand } m/s (rode streep) alleen een schijf met een groene streep ({ $highest } m/s): kijk of die erop staat, of neem { $slower } t/min of minder.

disc-run-down = De schijf draait door na het uitzetten: wacht tot ze stilstaat
    .detail = Seconden, langer bij een grote schijf: houd de machine vrij van steen, slang en kleren tot de schijf stilstaat, leg haar dan pas neer. { $power ->
            [mains] Stekker eruit
            [battery] Accu eruit
            [air] Luchtslang los
           *[engine] Motor uit
        } voordat de schijf wordt aangeraakt.

new-disc-run = Nieuwe schijf eerst onbelast laten draaien, iedereen uit haar lijn
    .detail = { $minutes } minuut op volle toeren, beschermkap gemonteerd, machine van het lichaam af gehouden, niemand in het vlak van de schijf, na elke montage. Trilt of zingt ze: uit, laat haar stilstaan, kijk opnieuw.

never-steer-the-disc = De schijf wordt nooit gestuurd, gewrongen of zijwaarts geduwd
    .detail = Zijdelingse belasting buigt en breekt een schijf. Toegestane zijdelingse belasting: geen. Rondingen worden gemaakt met rechte insteeksneden zoals getekend; niet slijpen met de vlakke kant van een doorslijpschijf.

disc-bore = { $disc }: asgat { $bore } op een opname van { $seat }
    .detail = Asgat { $bore }, opname { $seat }, gebruikelijk { $usual }, hoogstens { $play } verschil. Een losse schijf loopt niet zuiver rond en breekt, een krappe gaat er niet op. De juiste schijf voor de machine: geen verloopring, niet vijlen, geen vulplaatje.

protector-unknown = gehoorbescherming: welke, en wat staat erop?
    .detail = Lees SNR, H M L of NRR op de doos en schrijf het hier: { $level } bij het oor tijdens het zagen, en vanaf { $duty } dB(A) over de dag is gehoorbescherming verplicht. In het bestand: [protector].

protector-too-weak = gehoorbescherming te zwak: eronder { $day } dB(A) over de dag
    .detail = { $level } tijdens het zagen, { $holds } dB tegengehouden{ $borrowed }: { $ear } bij het oor, { $day } over de dag, hoogstens { $duty } toegestaan. Gehoorbescherming met een hogere dempingswaarde, oordoppen onder oorkappen, of minder minuten.

protector-too-strong = gehoorbescherming te sterk: { $ear } dB(A) bij het oor
    .detail = { $level } tijdens het zagen, { $holds } dB tegengehouden{ $borrowed }: { $ear } bij het oor. Onder { $quiet } worden roepen en waarschuwingen gemist: spreek handgebaren af, of neem gehoorbescherming met een lagere dempingswaarde.

protector-foreign-rating = de dempingswaarde van de gehoorbescherming is niet die waarmee hier gerekend wordt
    .detail = SNR, H M L (EN 352) en NRR (Amerikaans) worden verschillend getest en nooit omgewisseld. Er is gerekend volgens het eigen stelsel van de gehoorbescherming, op de strengere manier: { $holds } dB tegengehouden. Vraag naar de dempingswaarde die telt waar het werk gebeurt.

noise-over-limit = geluid over de dag { $under } dB(A) onder de gehoorbescherming, grenswaarde { $limit } dB(A)
    .detail = { $level } dB(A) gedurende { $hours } uur van de dag met deze machine: { $day_exact } dB(A) over de dag zonder gehoorbescherming, { $under } dB(A) eronder, grenswaarde { $limit } dB(A){ $borrowed }. Neem gehoorbescherming met een hogere dempingswaarde ([protector]), oordoppen onder oorkappen, of verdeel het zagen over dagen (dust.days). Ga de geldende regels na.

noise-unknown = geluid van de machine: lees het in de handleiding
    .detail = Niveau { $level } dB(A): geen enkele haakse slijper is stil. Neem het cijfer van de fabrikant, of { $usual } dB(A) voor een grote schijf op steen, en vul machine.noise in. Draag tot dan gehoorbescherming.

extractor-filter = Afzuiger met schoon filter dat { $holds } tegenhoudt, tijdens het werk gereinigd
    .detail = Luchtstroom { $has }, minstens { $asks }. Die telt alleen met een schoon filter dat minstens { $holds } tegenhoudt, met een cycloon of filterreiniging, en met de kap op de steen: { $vacuum }{ $borrowed }; klasse M laat hoogstens { $m } door. Aan beide einden van een snede en bij het insteken staat de kap open: werk daar langzaam.

control-cut-less = minder zagen
    .detail = { $face } m² zaagvlak wordt gezaagd, { $minutes } minuten met de schijf in de steen: elke rand die blijft zoals hij is, maakt geen stof

control-shop = nat laten zagen door een bedrijf
    .detail = een brugzaag onder water zaagt dit in een paar minuten, en { $grams } steen komt nooit op de eigen plek

control-at-the-disc = { $method ->
    [water] water bij de schijf
    [shroud] stofafzuigkap bij de schijf
   *[none] water of afzuiging bij de schijf
 }
    .detail = water op een machine die daarvoor is goedgekeurd, of een stofafzuigkap met minstens { $airflow } voor een schijf van { $disc }

control-outdoors = buiten
    .detail = in bewegende lucht, wind van opzij, weg van deuren en luchtinlaten

control-distance = afstand
    .detail = niemand zonder ademmasker waar stof of nevel heen kan drijven, en niemand in de lijn van de schijf

control-mask = het masker, als laatste
    .detail = passend voor de drager, gladgeschoren bij een aansluitend masker, gedragen tot de plek schoon is

controls-open = sterker dan het masker, nog open: { $what }
    .detail = Doe het, of schrijf op waarom niet: elk neemt stof weg dat het masker zou moeten tegenhouden.

no-dust-control = droog zagen, en niets houdt het stof tegen
    .detail = Stofmaatregel: geen, minstens een van twee is vereist. Gebruik water op een machine die daarvoor is goedgekeurd, of een stofafzuigkap met een afzuiger die sterk genoeg is voor de schijf, of laat het nat zagen door een bedrijf. Droog en zonder kap staat in geen enkele rij van de tabel; geen ademmasker maakt dat goed, en het stof bereikt iedereen in de buurt.

water-flow = Water op de rand van de schijf voordat ze de steen raakt, tot ze eruit is
    .detail = Gerekend is met { $flow } liter per minuut. De regel noemt geen cijfer voor een haakse slijper; { $advised } liter per minuut wordt aangeraden voor handbediende doorslijpmachines. Water op de rand van de schijf voordat de schijf de steen raakt, en tot ze eruit is. Stof of damp te zien: stop, richt het water op de rand, maak de sproeier vrij; meer dan { $advised } liter per minuut houdt niet meer stof neer.

water-too-little = { $flow } liter per minuut is minder dan aangeraden voor een handbediende doorslijpmachine
    .detail = { $flow } liter per minuut, { $advised } aangeraden voor handbediende doorslijpmachines: minder water houdt minder stof neer. Richt het water op de rand, maak de sproeier vrij, vul het vat.

shroud-airflow-unknown = luchtstroom van de afzuiger is niet bekend
    .detail = Luchtstroom niet bekend, een schijf van { $disc } vraagt minstens { $asks } m³/h. Zonder dat cijfer is de werking van de stofafzuigkap niet bewezen: lees het typeplaatje van de afzuiger af en vul dust.airflow in, of zaag nat.

shroud-airflow-too-small = afzuiger verplaatst { $has }, de schijf vraagt { $asks }
    .detail = Luchtstroom { $has }, minstens { $asks } m³/h voor een schijf van { $disc }. Gebruik een sterkere afzuiger of een kleinere schijf, of zaag nat.

not-in-table-indoors = niet in de tabel van de toezichthouder: de blootstelling moet beoordeeld worden
    .detail = Deze machine, deze maatregel, binnen, { $hours } h op een dag: geen rij. Niemand heeft gepubliceerd welk ademmasker genoeg is. Voor buiten zijn er rijen met water en met een stofafzuigkap: verander plaats of maatregel in een die in de tabel staat, of laat de blootstelling beoordelen door een deskundig persoon.

not-in-table = niet in de tabel van de toezichthouder: de blootstelling moet beoordeeld worden
    .detail = Deze machine, deze maatregel, buiten, { $hours } h op een dag: geen rij. Niemand heeft gepubliceerd welk ademmasker genoeg is. Verander de maatregel in een die voor deze machine in de tabel staat, of laat de blootstelling beoordelen door een deskundig persoon.

indoors-exhaust = binnen: de lucht moet ook worden afgezogen
    .detail = Plaats: binnen. Zaag buiten als het kan. Zuig anders het zichtbare stof af naar de open lucht, sluit de ruimte af, en laat niemand zonder ademmasker binnen.

marble-veins = aders in marmer kunnen veel meer silica bevatten dan de steen
    .detail = Marmer als geheel bevat hoogstens { $share } % silica; de aders kunnen veel meer bevatten. Behandel een snede langs of door een ader als een snede in steen die rijk is aan silica.

stone-kind-unknown = { $stone }: het bindmiddel is niet bekend
    .detail = Steen die met hars gebonden is en 1 % silica of meer bevat, geldt als composietsteen. Vraag het gegevensblad op en vul stone.binder in. Als het zo is: { $rule }

silica-unknown = { $stone }: vraag naar het aandeel silica
    .detail = Silica volgens de invoer hoogstens { $share } %: bijna geen enkele steen is er vrij van. Zolang geen gegevensblad dat zegt, behandel de steen als rijk aan silica (boven { $threshold } %), en vul stone.silica in.

engineered-stone-banned = composietsteen mag hier niet gezaagd worden
    .detail = { $rule }

engineered-stone-dry = composietsteen zonder water
    .detail = Zaag alleen nat. { $rule }

engineered-stone-powered-respirator = composietsteen zonder aangedreven ademmasker
    .detail = Aangedreven ademmasker: niet aanwezig, wel vereist. { $rule }

engineered-stone = composietsteen: strengere regels gaan voor
    .detail = { $rule } De veilige keuze is het werk over te laten aan een erkend bedrijf.

high-silica-stone = { $stone }: tot { $high } % silica mogelijk
    .detail = Silica { $low } tot { $high } % van de steen, boven { $threshold } % geldt hij als rijk daaraan (cijfer van Californië, hier overal gebruikt). Het stof geeft littekens in de longen die nooit meer weggaan: stofmaatregel en ademmasker van de eerste aanraking tot het einde van het opruimen, en niemand zonder ademmasker in de buurt.

california-silica-rule = werk met hoge blootstelling: nat, in een afgezet gebied, met het sterkste ademmasker
    .detail = Silica tot { $high } %. { $rule }

silica-rich-stone-dry = werk met hoge blootstelling zonder water: Californië eist natte methoden
    .detail = Silica tot { $high } %. { $rule }

sparks-into-extractor = staal in de steen: vonken gaan de afzuiger in
    .detail = Staal dat gezaagd mag worden terwijl er een afzuiger draait: geen. Vonken steken de zak van de afzuiger in brand. Haal het staal er eerst uit, blijf er met de sneden vandaan, of zaag nat.

sparks-from-steel = staal in de steen geeft vonken
    .detail = Niets brandbaars binnen { $clear } (oordeel), een volle emmer water en een brandblusser bij de hand. Alleen een schijf die de fabrikant voor staal toelaat. Niet duwen. Kijk een uur na de laatste snede nog eens of er rook is.

steel-not-known = staal in de steen: kijk, geen of waar?
    .detail = In de achterkant van een plaat zijn vaak staven en gaas gelijmd. Bekijk de achterkant, ga met een magneet langs elke zaaglijn. In het bestand: stone.steel ("none" of "some").

supply-unprotected = water bij netstroom zonder aardlekschakelaar (RCD), GFCI of 110 V met geaard midden
    .detail = Beveiliging: geen bekend, vereist: aardlekschakelaar (RCD) van { $rcd } of minder, GFCI klasse A ({ $gfci }), of 110 V met geaard midden ({ $volts } tegen aarde). Hier: { $rule }{ $borrowed }. Met water in de buurt geldt: zonder beveiliging wordt niet gezaagd.

supply-unprotected-dry = netstroom zonder aardlekschakelaar (RCD), GFCI of 110 V met geaard midden
    .detail = Beveiliging: geen bekend, vereist: aardlekschakelaar (RCD) van { $rcd } of minder, GFCI klasse A ({ $gfci }), of 110 V met geaard midden ({ $volts } tegen aarde). Hier: { $rule }{ $borrowed }. Zet zo'n beveiliging in de voedingsleiding en druk eerst op haar testknop.

wet-mains = Testknop (RCD, GFCI), als die er is, ingedrukt: schakelt uit. Stekkers droog en van de grond
    .detail = Testknop indrukken vóór de eerste snede: de beveiliging moet uitschakelen. Stekkers en koppelingen van de grond en droog, snoeren opgehangen in een lus zodat water er vóór de stekker afdruipt, droge handen aan stekker en schakelaar. Schakelt de beveiliging uit tijdens het zagen: stop, zoek uit waarom, houd haar nooit met geweld ingeschakeld.

engine-indoors = verbrandingsmotor binnen: koolmonoxide
    .detail = Verbrandingsmotoren binnen of op een gesloten binnenplaats: geen toegestaan. Uitlaatgas doodt zonder waarschuwing; zaag in de open lucht, of gebruik een machine op accu, perslucht of netstroom.

engine-fumes = verbrandingsmotor: uitlaatgas en brandstof
    .detail = In de open lucht met lucht van alle kanten, nooit in een put, een tent of een ommuurde hoek. Uitlaatgas weg van de gezichten van beide personen. Tank alleen met koude motor, en start op een andere plek.

water-on-mains-unrated = water op een netmachine die er niet voor gemaakt is: elektrische schok
    .detail = Goedkeuring voor nat zagen: geen, vereist: een van de fabrikant. De genormeerde waarschuwingen verbieden water op een gewone haakse slijper op netstroom; een aardlekschakelaar (RCD) of GFCI maakt er geen natte machine van. Gebruik een machine die voor nat zagen is goedgekeurd, of een stofafzuigkap en een afzuiger.

water-not-rated = water op een machine die er niet voor gemaakt is
    .detail = Goedkeuring voor nat zagen: geen, vereist: een van de fabrikant. Gebruik een machine waarvan de fabrikant water toestaat, of een stofafzuigkap en een afzuiger.

battery-wet = Accu eruit voordat de schijf wordt aangeraakt, accu's droog houden
    .detail = Accu's worden uit de buurt van het slib gewisseld, met droge handen; een accu die vanbinnen nat is geworden, wordt niet meer gebruikt of geladen. De accu gaat eruit voordat de schijf wordt bekeken of gewisseld.

air-hose = Luchtslang heel, koppelingen geborgd, water uit de luchtleiding
    .detail = Het ingevulde toerental van { $rpm } t/min geldt alleen bij de druk op het typeplaatje: meer druk, meer toeren. Drukregelaar en veiligheidskoppelingen aangebracht, uitlaatlucht weggeleid van stof en handen, slang leeg en drukloos voordat de schijf wordt aangeraakt. Blaas nooit stof weg en blaas nooit kleren schoon.

respirator-class = lees de klasse af die op het ademmasker staat: { $mask }
    .detail = De factor is { $least } tot { $most } naar klasse ({ $marks }), { $apf } of meer vereist{ $borrowed }. Het telt als { $least } tot de aanduiding is ingevuld als dust.respirator: gebruik een ademmasker met een aanduiding voor { $apf } of meer.

respirator-not-in-scheme = { $mask }: geen factor in het stelsel van deze regio
    .detail = { $mask }: factor 0 hier, een factor is vereist{ $borrowed }. Factoren van twee stelsels worden nooit gemengd; een masker zonder rij in dit stelsel telt als geen masker. Eerst de open stappen van de volgorde van maatregelen; dan een ademmasker dat is goedgekeurd waar het werk gebeurt.

respirator-unlisted = { $mask }: geen factor in het stelsel van deze regio
    .detail = Factor 0, volgens de tabel geen vereist{ $borrowed }. Het kan best stof tegenhouden, maar geen regel hier telt het mee: vraag naar een ademmasker dat is goedgekeurd waar het werk gebeurt.

respirator-missing = geen ademmasker aanwezig
    .detail = Ademmasker: geen, factor { $apf } of meer vereist{ $borrowed }. Eerst de open stappen van de volgorde van maatregelen; zorg dan voor een ademmasker dat de drager past, en vul dust.respirator in.

respirator-missing-unassessed = geen ademmasker aanwezig, en niets legt vast welk masker genoeg is
    .detail = Ademmasker: geen; de factor is door niets gepubliceerds vastgelegd: de blootstelling moet beoordeeld worden. Eerst de open stappen van de volgorde van maatregelen; laat dan de blootstelling beoordelen, zorg voor het ademmasker dat daaruit volgt, en vul dust.respirator in.

respirator-none-asked = geen ademmasker aanwezig; de tabel vraagt er hier geen
    .detail = Ademmasker: geen, volgens de tabel geen gevraagd{ $borrowed }. De tabel geldt alleen zolang haar maatregel zonder fout werkt, en het stof dat schaadt is te fijn om te zien: houd er een klaar dat past, en draag het zolang de schijf draait en bij het opruimen.

respirator-not-fit-tested = laat het masker op de drager passen en testen
    .detail = { $mask }: de factor telt alleen na een pastest en op gladgeschoren huid; tot dan kan er niet op gerekend worden. Laat een pastest doen, of gebruik een aangedreven kap.

respirator-clean-shaven = Gladgeschoren, aansluiting van het masker elke keer gecontroleerd
    .detail = { $mask }: pastest gedaan, en die geldt alleen op gladgeschoren huid, stoppels tellen als baard. Controleer de aansluiting elke keer bij het opzetten; een nieuwe maat of een nieuw merk, of een ander gezicht, vraagt een nieuwe pastest.

respirator-below-required = { $mask }: telt hier als factor { $has }, vereist is { $apf }
    .detail = { $mask }: factor { $has }, { $apf } of meer vereist{ $borrowed }. Eerst de open stappen van de volgorde van maatregelen: een sterkere maatregel gaat vóór een sterker masker. Dan een ademmasker met een factor van { $apf } of meer; factoren van twee stelsels worden nooit gemengd.

nuisance-mask = een masker zonder klasse is geen ademmasker
    .detail = Factor 0: het draagt geen klasse, en fijn stof gaat erdoorheen en eromheen. Het telt alsof er helemaal geen ademmasker is. Zorg voor een ademmasker met een klasse die hier telt, en vul dust.respirator in.

asbestos-not-tested = { $stone } kan asbestmineralen bevatten: niet zagen voordat hij getest is
    .detail = Asbest die gezaagd mag worden: geen. Laat vóór de eerste snede een laboratorium een splinter van deze plaat testen, of vraag de test van de groeve zelf op, en vul stone.asbestos, stone.report en stone.date in. Zonder duidelijke uitslag is het werk voor erkende vakmensen.

asbestos-declaration = { $stone }: vraag de verklaring van de groeve over asbestmineralen
    .detail = { $stone } hoort bij de gesteenten die ze kunnen bevatten. Vraag de handelaar om de verklaring van de groeve en vul stone.asbestos, stone.report en stone.date in.

binder-unknown = { $stone }: het bindmiddel is niet bekend, dus telt hij als composietsteen
    .detail = Een steen met 1 % silica of meer waarvan niemand het bindmiddel heeft genoemd, telt als composietsteen tot stone.binder iets anders zegt. { $rule }

resin-in-fired-slab = { $stone }: is hij vrij van hars?
    .detail = Keramiek en gesinterde steen zijn alleen van het verbod uitgezonderd als ze geen hars bevatten. Vraag het gegevensblad op en vul stone.binder in. { $rule }

supply-unprotected-outdoors = netstroom buiten zonder aardlekschakelaar (RCD), GFCI of 110 V met geaard midden
    .detail = Bescherming: geen bekend, vereist: aardlekschakelaar (RCD) van { $rcd } of minder, GFCI klasse A ({ $gfci }), of 110 V met geaard midden ({ $volts } tegen aarde). Hier: { $rule }{ $borrowed }. Buiten maken natte grond en beschadigde snoeren een fout dodelijk: zet er een in de leiding, druk op de testknop en vul machine.protected in.

speed-assumed = lees het toerental van plaatje of schijf: { $what } is aangenomen
    .detail = Aangenomen: { $what }. Lees het typeplaatje van de machine en het opschrift van de schijf af, en vul machine.rpm en disc.max_rpm in: de controle van schijf tegen machine geldt alleen voor de echte cijfers.

disc-larger-than-machine = { $disc }: { $diameter }, de machine is gemaakt voor hoogstens { $largest }
    .detail = Diameter { $diameter }, grootste schijf van de machine en haar beschermkap { $largest }. Gebruik een kleinere schijf, of een machine die voor deze gemaakt is; haal de beschermkap er nooit af.

respirator-filter = een N95 is hier niet genoeg: een filter van de 100-serie of HEPA is vereist
    .detail = Ademmasker: N95, vereist: factor 10 of meer met een filter van de 100-serie of HEPA. Zorg voor een halfmasker met P100-filters of beter, en vul dust.respirator in.

no-water-flow = natte methode zonder waterstroom: dat is droog zagen
    .detail = Water: 0 liter per minuut. Droog en zonder kap staat in geen enkele rij van de tabel, en geen ademmasker maakt dat goed. Breng water op de rand van de schijf en vul dust.water in, of gebruik een stofafzuigkap en een afzuiger.

speed-assumed-of = { $what } { $speed } toeren per minuut

bystanders = Niemand anders in de buurt: kinderen, buren en dieren weg en gewaarschuwd
    .detail = Stof, nevel en geluid reiken verder dan de zaagplek, en een stuk van een gebroken schijf vliegt tientallen meters ver. Zet de plek af, zeg de buren wanneer je begint, en stop de schijf als er iemand binnenkomt zonder masker, ruimzichtbril en gehoorbescherming.

windows-and-intakes = Ramen, deuren en luchtinlaten dicht, ventilatie uit
    .detail = Het stof dat schaadt is te fijn om te zien en drijft ver. Sluit ramen en deuren van het huis en vraag de buren dat ook te doen; zet ventilatie, warmtepomp en airco bij de plek uit; zaag aan de kant waar de wind van het huis af waait.

working-height = Steen tussen heup en elleboog, vaste grond, geen ladder
    .detail = Schragen op werkhoogte en vlakke grond onder beide voeten. Zaag nooit vanaf een ladder of een trede, boven de schouder, of geknield onder de steen: een terugslag werpt je om en de machine komt erachteraan.

eyes = Sluitende ruimzichtbril, gelaatsscherm erover, oogspoeling binnen bereik
    .detail = Een gewone bril laat splinters en gruis van onderen en van opzij binnen. Een ruimzichtbril voor iedereen in de buurt; een scherm alleen is niet genoeg. Gruis in het oog: spoelen, nooit wrijven; een splinter die blijft zitten, is voor een arts.

side-handle = Zijhandgreep en beschermkap erop, twee handen, schakelaar nooit vergrendeld
    .detail = Eén hand houdt geen terugslag. De beschermkap zit tussen schijf en gezicht, en geen snede is het waard haar eraf te halen. Een vergrendelde schakelaar laat de schijf doordraaien als de machine valt{ $power ->
            [mains] ; zet na een stroomstoring uit voordat de stekker er weer in gaat
           *[other] {""}
        }.

leads = Snoer en slangen achter je, heel, afgerold, vrij van schijf en voeten
    .detail = Over de schouder en naar achteren, nooit over de snede of de weg. Een beschadigd snoer wordt niet gebruikt. Verbindingen droog en van de grond; een haspel wordt helemaal afgerold, anders wordt hij heet.

hoses = Slangen achter je, heel, vrij van schijf en voeten
    .detail = Over de schouder en naar achteren, nooit over de snede of de weg. Een slang die lekt of geknikt is, wordt niet gebruikt.

leaning-slabs = Platen op hun kant vastgebonden of op een A-bok; één tegelijk verplaatst, niemand waar ze kunnen vallen
    .detail = In Groot-Brittannië zijn in vijf jaar zes mensen gedood door platen die vielen bij opslag of verplaatsen. A-bok op vlakke grond, voet van de muur af, vastgebonden; maak nooit de band van een pak los als er iemand voor staat; niemand tussen twee platen. Een plaat die begint te vallen, laat je los: ren weg, houd haar nooit tegen.

not-for-everyone = Niet voor dit werk: zwangeren, wie ziek is aan long, hart, hand of rug, jongeren, wie moe of dronken is
    .detail = Longziekte, witte vingers, een zwak hart, een pacemaker waarvan de fabrikant voor machines waarschuwt, een zere rug, zwangerschap: vraag eerst een arts. Niemand onder de leeftijd, niemand die moe is, niemand na alcohol, drugs of medicijnen die traag maken.

first-aid = Eerste hulp klaar: drukverband, oogspoeling, telefoon, het adres opgeschreven
    .detail = Een doorgesneden slagader doodt binnen minuten: druk hard op de wond, verband of tourniquet, bel. Stroom uit voordat iemand met een elektrische schok wordt aangeraakt. Bekneld onder steen: eerst bellen, alleen optillen met een hefmiddel. Wie eerste hulp kan geven, wordt vóór het begin genoemd.

moment-before = Vooraf

moment-cutting = Bij het zagen

moment-moving = Bij het verplaatsen van steen

moment-after = Achteraf

settled-asbestos = Getest vrij van asbestmineralen: { $report }, { $date }

settled-controlled = Steen met { $share } silica wordt met een maatregel gezaagd, zoals de regel vraagt

settled-noise = { $level } tijdens het zagen, { $under } dB(A) over de dag onder de gehoorbescherming, grenswaarde { $limit } dB(A)

settled-mask = { $mask }: telt als factor { $has }, { $apf } gevraagd

settled-check-call = Alleen, met een afgesproken belletje: { $who }

settled-supply = Netstroom beveiligd

settled-speed = { $disc }: opschrift { $marked } toeren per minuut, machine { $machine }
