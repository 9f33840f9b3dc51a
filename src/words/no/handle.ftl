# Findings of handling: a line, and in full.

crush-and-falls = { $stone }: den knuser det den faller på
    .detail = { $mass } trykker med { $weight }. På høykant står den på { $thickness }: et skyv på { $push } mot overkanten velter den, og heller den mer enn { $tips }, faller den av seg selv, over en stripe på { $shadow } til hver side: der står ingen, og ingen prøver å ta imot den. Surr den fast til noe som holder, før noen slipper taket, én stein om gangen; det den lener seg mot, må hindre at den faller forover og at foten glir ut. Når den heller { $leans }, drar overkanten i surringen med { $pulls }, i denne rekkefølgen; surringen og det den er festet i, må tåle flere ganger så mye. Sett den ned på to lekter, aldri på gulvet: hold fingrer, tær og barn unna mellomrommet.

way-in-blocked = benkeplaten kommer ikke inn: { $place }
    .detail = På høykant mangler { $edge_short } ({ $edge_measure }: trengs { $edge_needs }, finnes { $edge_has }). På kortsiden mangler { $upright_short } ({ $upright_measure }: trengs { $upright_needs }, finnes { $upright_has }). Dette hjelper, ett av dem, eller begge der en stilling mangler to mål: { $remedies }. Liggende flatt går den heller ikke gjennom.

way-in-upright = benkeplaten går bare gjennom stående på kortsiden: { $place }
    .detail = På høykant mangler { $edge_short } ({ $edge_measure }: trengs { $edge_needs }, finnes { $edge_has }). På kortsiden går den gjennom med { $spare } til overs. Dette hjelper, ett av dem, eller begge der en stilling mangler to mål: { $remedies }. Å reise den på kortsiden krever { $stand_up } fri høyde: gjør det før dette stedet, med det hjelpemiddelet og de personene vekten krever, og aldri i en trapp.

way-in-flat-only = benkeplaten går bare gjennom liggende flatt, noe som frarådes: { $place }
    .detail = På høykant mangler { $edge_short } ({ $edge_measure }: trengs { $edge_needs }, finnes { $edge_has }). På kortsiden mangler { $upright_short } ({ $upright_measure }: trengs { $upright_needs }, finnes { $upright_has }). Flatt går den gjennom med { $spare } til overs. Dette hjelper, ett av dem, eller begge der en stilling mangler to mål: { $remedies }. Flatt kan den knekke under sin egen vekt: se tabellen over bøyning, og bær den flatt på en hel underlagsplate eller ikke i det hele tatt.

way-in-tight = trang vei inn: { $place }
    .detail = Båret { $pose } går den gjennom med bare { $spare } til overs. Mål igjen på det smaleste stedet, og bær en lekte så lang som steinen og en fjøl så høy som den gjennom før steinen.

way-in-slab = kutt før den bæres inn: hele platen stoppes av { $place }
    .detail = På høykant mangler { $edge_short } ({ $edge_measure }: trengs { $edge_needs }, finnes { $edge_has }). På kortsiden mangler { $upright_short } ({ $upright_measure }: trengs { $upright_needs }, finnes { $upright_has }). Dette hjelper, ett av dem, eller begge der en stilling mangler to mål: { $remedies }. Den ferdige benkeplaten går gjennom: last av og kutt på denne siden av stedet.

way-in-slab-flat = kutt før den bæres inn: hele platen går bare gjennom liggende flatt: { $place }
    .detail = På høykant mangler { $edge_short } ({ $edge_measure }: trengs { $edge_needs }, finnes { $edge_has }). På kortsiden mangler { $upright_short } ({ $upright_measure }: trengs { $upright_needs }, finnes { $upright_has }). Flatt går den gjennom med { $spare } til overs, og den kan knekke under sin egen vekt. Dette hjelper, ett av dem, eller begge der en stilling mangler to mål: { $remedies }. Den ferdige benkeplaten går gjennom: last av og kutt på denne siden av stedet.

tips-out-of-hands = { $stone }: den tipper med personer på disse plassene
    .detail = Tyngdepunktet ligger { $off } utenfor det plassene kan holde. Sett personer på begge sider av det.

lifter-off-the-edge = { $stone }: person { $lifter } har ingen kant å holde i
    .detail = Plassen som er oppgitt, ligger { $away } fra kanten, mer enn { $most }. Oppgi plasser på kanten, i benkeplatens eget koordinatsystem.

lifter-at-cutout = { $stone }: person { $lifter } løfter ved siden av en utskjæring
    .detail = Plassen ligger { $away } fra en utskjæring, mindre enn en håndsbredde, { $least }. Løft der steinen er hel, aldri i en steinstripe ved en utskjæring.

carry-too-far = { $way } er for langt å bære uten en hvil
    .detail = De veiledende vektene gjelder for bæring inntil { $most }, tett mot kroppen. Sett steinen ned på høykant på to lekter underveis, eller kjør den på tralle.

brace-the-rail = { $rail } ({ $cutouts }): { $verdict }
    .detail = Den er { $width } bred og { $length } lang ({ $stone }). Når steinen ligger flatt eller i hendene på folk, er spenningen { $together } med hjelp av resten av steinen og { $alone } når den må ta bøyningen alene, som når den siden løftes først; på høykant på to støtter: { $on_edge }; tillatt { $allowed }. Før steinen løftes, skal rett trevirke på { $timber_width } × { $timber_depth } (stykker side om side: { $timbers }), minst { $timber_length } langt, klemmes fast langs den, på høykant og i kontakt hele veien, med polstrede tvinger på hel stein i begge ender: da gjenstår { $braced }. Bær steinen på høykant; hold eller klem den aldri der.

brace-the-rail-on-a-frame = { $rail } ({ $cutouts }): { $verdict }
    .detail = Den er { $width } bred og { $length } lang ({ $stone }). Når steinen ligger flatt eller i hendene på folk, er spenningen { $together } med hjelp av resten av steinen og { $alone } når den må ta bøyningen alene, som når den siden løftes først; på høykant på to støtter: { $on_edge }; tillatt { $allowed }. Ikke noe trevirke er stivt nok: legg hele steinen an på en ramme eller en underlagsplate. Bær steinen på høykant; hold eller klem den aldri der.

brace-the-neck = { $stone }, { $neck }: må ikke bære steinen bortenfor
    .detail = Innsnevringen er { $width } bred; { $hanging } som henger i den når steinen ligger flatt, gir { $stress } i den, tillatt { $allowed }. Hold steinen oppe på begge sider av den hver gang steinen ligger flatt. Før steinen løftes, skal rett trevirke på { $timber_width } × { $timber_depth } (stykker side om side: { $timbers }), minst { $timber_length } langt, klemmes fast langs innsnevringen, på høykant og i kontakt hele veien, med polstrede tvinger på hel stein i begge ender: da gjenstår { $braced }.

brace-the-neck-on-a-frame = { $stone }, { $neck }: må ikke bære steinen bortenfor
    .detail = Innsnevringen er { $width } bred; { $hanging } som henger i den når steinen ligger flatt, gir { $stress } i den, tillatt { $allowed }. Hold steinen oppe på begge sider av den hver gang steinen ligger flatt. Ikke noe trevirke er stivt nok: legg hele steinen an på en ramme eller en underlagsplate.

narrow-rail = { $rail } ({ $cutouts }): smalere enn faget lar den være
    .detail = Den ligger ved siden av et kranhull og er { $width } bred; { $least } er publisert som det minste ved siden av en utskjæring, og ikke noe mindre for et kranhull. Flytt hullet eller gjør det mindre, eller spør om steinen kan stives av varig fra undersiden.

guideline-is-not-a-limit = Den veiledende verdien for løft er ingen trygg grense
    .detail = { $each } per person gjelder for voksne i god form som løfter tett inntil kroppen, i midjehøyde, uten å vri seg, og sjelden; det er mindre for mange mennesker, med våte hender, i trapper og på ujevn grunn. Verdien er ingen garanti for at et løft under den er trygt. Løfteligningen gjelder løfting, ikke bæring. Sjekk gjeldende regler.

tips-off-supports = Benkeplaten ligger ikke stabilt på støttene
    .detail = Støttene når ikke rundt tyngdepunktet. Sett inn flere støtter eller flytt dem før benkeplaten settes ned.

support-lifts-off = { $support }: bærer ingenting
    .detail = Benkeplaten trykker ikke på den. Kontroller plassering og høyde; trekk ikke benkeplaten ned mot den.

falls-off-trestles = { $stone }: den blir ikke liggende på bukkene
    .detail = Med bukker { $first } og { $second } fra platens ende ligger tyngdepunktet ikke mellom dem, eller den når ikke bort til dem. Flytt dem før det kuttet, eller utelat lift.trestles.

bends-on-trestles = { $stone }: to bukker er ikke nok
    .detail = På bukker { $first } og { $second } fra platens ende er spenningen { $stress }, { $times } ganger det tillatte. Legg i stedet hele flaten an på en hel, plan underlagsplate.

aid-too-weak = { $stone }: hjelpemiddelet er ikke merket for vekten
    .detail = Hjelpemiddelet ({ $aid }) er merket for { $rated }; denne steinen krever { $needs }. Bruk et som er merket for det, eller en lettere stein: kutt før den flyttes.

aid-without-mark = hva er hjelpemiddelet ({ $aid }) merket for? Det kreves { $needs }
    .detail = Les av lasten det er merket for, og skriv den her; tyngst: { $stone }. Ikke merket, ikke noe løft. I jobbfilen: lift.rated.

in-slings-no-place = { $stone }: ingen plass til to løftestropper
    .detail = Uansett hvor to stropper går, bøyes den mer enn tillatt når den henger. Stiv den av, eller bær den lagt an på en ramme.

on-a-trolley = tralle: på høykant, bundet fast, på vannrett underlag
    .detail = Den tyngste langsiden ned, bundet fast til rammen på trallen, en person i hver ende og ingen ved siden av. Når den lastes, settes trallen inntil den langsiden, med hjulene sperret; vipp steinen om langsiden opp på lasteplanet, og bind den fast før noen slipper. I nedoverbakke holdes den igjen ovenfra i bakken. Produsentens anvisning går foran.

on-a-trolley-numbers = { $stone }: tipper den, dreper den; en tralle merket for { $rated } eller mer
    .detail = På trallen ligger tyngdepunktet { $height } over gulvet, og den velter på underlag som heller { $tips } sidelengs (stillestående, harde hjul: tidligere når den er i bevegelse). Den krever et skyv på minst { $push } på vannrett underlag, og i en rampe med stigning 1:{ $run } ytterligere { $ramp }, som også drar den nedover.

under-a-vacuum-lifter = vakuumløfter: merket for det dobbelte av vekten, og en sikring i tillegg
    .detail = Bare på en tørr, ren, feilfri, polert eller finslipt flate: aldri på en ru eller kløyvd, og ingen steder på tvers av en feil eller en reparasjon. På en loddrett flate holder sugekoppene bare ved friksjon: bruk produsentens tall for det. En sikring i tillegg (bånd, løftestropp) under steinen hele tiden. Løft den en håndsbredd, vent, og se at hver sugekopp holder før den flyttes. Produsentens anvisning går foran.{ $wet ->
            [yes] {" "}I dette arbeidet kuttes det med vann: vask av slammet og la flaten tørke først.
           *[other] {""}
        }{ $face ->
            [porous] {" "}Denne steinen er porøs: luft går gjennom den, og grepet svikter. Spør produsenten, eller bruk løftestropper.
            [split] {" "}Denne steinen selges ofte med kløyvd flate: ingen sugekopp holder på den.
           *[other] {""}
        }

under-a-vacuum-lifter-numbers = { $stone }: faller den, dreper den; en vakuumløfter merket for { $rated } eller mer
    .detail = Sugekopper parvis om tyngdepunktet: { $cups }, og hver bærer { $each }.

under-a-vacuum-lifter-no-room = { $stone }: ingen plass til en vakuumløfter
    .detail = Den måtte være merket for { $rated } eller mer, men det er ikke plass til et par sugekopper om tyngdepunktet. Bruk løftestropper eller tralle.

in-slings = portalkran: satt opp og brukt av en fagkyndig
    .detail = Kroken over tyngdepunktet, kantene polstret, stroppene bundet slik at de ikke kan gli mot hverandre, en styreline i hver ende, ingen under eller ved siden av. Løft den en håndsbredd og se at den henger vannrett før den flyttes. Løfteutstyr kontrolleres, merkes og settes opp av en fagkyndig person, med godkjenning der loven krever det.

in-slings-numbers = { $stone }: faller den, dreper den; løftestropper { $first } og { $second } fra venstre ende
    .detail = Fra nedre ende når lengden går oppover på tegningen. { $each } henger i hver stropp; med { $legs } mellom partene drar hver part med { $factor } av vekten, { $tension }, og kroken henger { $hook } eller mer over steinen.

not-a-hand-lift = løftes ikke for hånd: { $stones }
    .detail = { $masses }. { $people ->
            [one] Én person kan regne med { $team }
           *[other] { $people } personer som løfter sammen, kan regne med { $team }
        }; over omtrent det dobbelte er faren stor selv for sterke, øvde folk. Før inn et hjelpemiddel i lift.aid: en tralle som bærer den på høykant, merket for { $rated } eller mer, bare på vannrett underlag (skyv minst { $push }); en vakuumløfter merket for { $vacuum } eller mer på en tørr, ren, hel flate; en portalkran eller talje med løftestropper, merket for { $rated } eller mer og satt opp av en som er fagkyndig på løfteutstyr. Å vippe den tyngste opp på høykant krever { $tilt } ved den motsatte siden i starten.

breaks-in-hands = ville brekke i hendene: { $stones }
    .detail = { $masses }. Uansett hvordan { $people ->
            [one] én person holder den
           *[other] { $people } personer holder den
        }, flatt eller på høykant, bøyes den mer enn tillatt. Stiv den av, legg den an på en underlagsplate, eller før inn et hjelpemiddel i lift.aid: en tralle merket for { $rated } eller mer; en vakuumløfter merket for { $vacuum } eller mer; en portalkran med løftestropper, satt opp av en fagkyndig.

more-than-four = for mange personer til å løfte som én: { $people }
    .detail = Flere enn { $most } personer arbeider neppe sammen som ett lag, og det er ikke publisert noen andel av styrken deres å regne med. Bruk et hjelpemiddel, eller færre personer og et lettere stykke.

lifter-over-guideline = mer enn den veiledende verdien: { $stones }
    .detail = { $masses }. { $people ->
            [one] Én person kan regne med { $team }
           *[other] { $people } personer som løfter sammen, kan regne med { $team }
        }: et tall som ber deg se nøyere etter, ingen grense. Avtal før løftet hvem som løfter, veien og hvor den settes ned; flere personer, et lettere stykke eller et hjelpemiddel er bedre. Å vippe den tyngste opp på høykant krever { $tilt } ved den motsatte siden i starten.

tilt-over-guideline = avklar hvordan den vippes opp på høykant; på motsatt side krever det: { $stones }
    .detail = { $people ->
            [one] Én person kan regne med { $team }
           *[other] { $people } personer sammen kan regne med { $team } i alt
        }. Ta den på høykant fra leveringen til der den trengs. { $hands ->
            [0] Det som krever mer enn omtrent det dobbelte, snus ikke for hånd: der er faren alvorlig også for sterke, øvde folk. En talje, en vakuumløfter eller et stativ som vipper med steinen surret fast, ved en kyndig person: bestem hvilket før den kommer.
           *[other] Når den må snus: sperr langsiden den dreier om, så den ikke kan gli, alle ved den motsatte langsiden, løft den trinnvis på klosser, og ha surringen klar før den står; eller snu den med talje eller vakuumløfter.
        } Ingen står på den siden den kan falle mot.

bends-flat-always = { $stone }: aldri flatt på to støtter
    .detail = Når den ligger { $how }: { $stress } der den er { $width } bred, { $at } fra enden; tillatt { $allowed } (fasthet ÷ sikkerhetsfaktor), { $times } ganger det tillatte, selv på de to beste støttene. Hold den på høykant, eller legg hele flaten an på en hel, plan underlagsplate.{ $flaws ->
            [0] {""}
            [one] {" "}Platen har en feil: på tvers av den gjelder ikke fastheten.
           *[other] {" "}Platen har { $flaws } feil: på tvers av dem gjelder ikke fastheten.
        }

bends-flat = { $stone }: flatt kan den knekke når den holdes i endene
    .detail = Når den ligger { $how }: { $stress } der den er { $width } bred, { $at } fra enden; tillatt { $allowed } (fasthet ÷ sikkerhetsfaktor), { $times } ganger det tillatte. Løft aldri den ene enden mens den ligger flatt. Flatt får den bare ligge på støtter { $first } og { $second } fra venstre ende (nedre ende når lengden går oppover på tegningen); da er det { $best }; bær den på høykant.{ $flaws ->
            [0] {""}
            [one] {" "}Platen har en feil: på tvers av den gjelder ikke fastheten.
           *[other] {" "}Platen har { $flaws } feil: på tvers av dem gjelder ikke fastheten.
        }

carry-on-edge-not-by-its-ends = { $stone }: ikke engang på høykant i endene
    .detail = Når den ligger { $how }: { $stress }; tillatt { $allowed }, { $times } ganger det tillatte. Hold den eller la den stå { $first } og { $second } fra enden; da er det { $best }. Det forutsetter feilfri stein.

carry-on-edge-braced = { $stone }: ikke engang på høykant før den er stivet av
    .detail = Når den ligger { $how }: { $stress }; tillatt { $allowed }, { $times } ganger det tillatte. Stiv av de smale delene først, eller bær den lagt an på en ramme. Det forutsetter feilfri stein.

flaws-and-strength = { $count ->
            [one] Platen har en feil
           *[other] Platen har { $count } feil
        }: tallene for fasthet gjelder ikke på tvers av { $count ->
            [one] den
           *[other] dem
        }
    .detail = Alle spenninger her forutsetter feilfri stein; ved en sprekk eller en reparasjon kan den brekke ved langt lavere spenning. Hold den på høykant, på en hel underlagsplate eller en ramme.

trestles-are-moved = bukkene flyttes før kutt { $cuts }
    .detail = Ingen plass passer for alle kuttene. Løft steinen av slik vekten krever, flytt bukkene, legg den ned igjen; de nye plassene står på kortet for det kuttet.

rests-poorly = sett mer under benkeplaten: { $what }
    .detail = { $parts }. Støtter tettere, ved siden av hver utskjæring, lenger ut. Verken skrue eller lim holder en benkeplate som tipper.

# What is wrong with how the top rests: in short, and in full.
rests-overhang = utspring
rests-overhang-part = { $edges } { $count ->
            [one] rager
           *[other] rager
        } { $reach } ut over støttene (publisert grense: { $limit })
rests-overhang-person = utspring
rests-overhang-person-part = { $edges } { $count ->
            [one] rager
           *[other] rager
        } { $reach } ut over støttene (publisert grense: { $limit }), og med en person på kanten er den på { $times } av det tillatte
rests-span = spenn
rests-span-part = den lengste strekningen uten støtte er { $span } (publisert grense: { $limit })
rests-tips = den tipper når noen lener seg på den
rests-tips-part = en person på { $force } { $place } tipper den av støttene
rests-bends = noen lener seg på den
rests-bends-part = en person på { $force } { $place } belaster den til { $times } av det tillatte
rests-bends-elsewhere = noen lener seg på den
rests-bends-elsewhere-part = en person på { $force } { $place } belaster den til { $times } av det tillatte, mest { $section }
lean-worst = på det verste stedet
lean-rail = ved { $rail } ({ $cutouts })
lean-overhang = på utspringet ({ $edge })
lean-between = mellom støttene { $first } og { $second }
lean-over = over støtten { $support }
rests-over = { $support }
rests-over-part = { $support } bærer inntil { $carried }, mer enn grensen på { $limit }
rests-over-person = { $support } med en person
rests-over-person-part = { $support } bærer inntil { $with_person } med en person på { $force } (grense { $limit })
none-published = ingenting for så tynn stein

# A stone in a list of stones.
stone-of-mass = { $stone } { $mass }

# What would make a way passable.
remedy-upright = ta den på kortsiden, noe som krever { $n } høyde
remedy-cut-to = kutt den til en lengde på høyst { $n } før dette stedet
remedy-widen-before = gjør veien før hjørnet minst { $n } bred
remedy-widen-after = gjør veien etter hjørnet minst { $n } bred
remedy-widen = gjør stedet minst { $n } bredt: ta av dørbladet, anslagslistene, en karm
remedy-raise = skaff minst { $n } fri høyde for den { $how }
