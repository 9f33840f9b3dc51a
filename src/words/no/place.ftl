# Findings of placement: a line, and in full.

measure-again = Mål igjen: klaringen er innenfor målebåndets feil
    .detail = Benkeplaten får plass med { $spare } til overs; med et målebånd som er nøyaktig på ±{ $tape }, trengs minst { $least } for å være sikker. Mål platen igjen, eller gjør benkeplaten mindre.

edges-undescribed = { $count ->
        [one] Se på platekant { $edges }: benkeplaten bruker den som den er
       *[other] Se på platekantene { $edges }: benkeplaten bruker dem som de er
    }
    .detail = Ingen har sagt hvordan { $count ->
        [one] platekant { $edges } er. Den regnes som saget
       *[other] platekantene { $edges } er. De regnes som saget
    }, og der kuttes det ikke. Se før start: rett langs en rettholt, vinkelrett på flaten, ren, ingen avskallinger og ingen sprekker innover. Hvis ja, skriv { $sawn } under [slab]. Hvis ikke, skriv { $rough } der og planlegg på nytt: det gir minst { $cuts ->
        [one] ett kutt
       *[other] { $cuts } kutt
    } til.

turn-saves = Litt dreid trenger den samme benkeplaten { $saved } mindre saging
    .detail = Dreid { $turn } mot platen, uten at noen kant ligger langs en kant, sages { $saved } mindre flate enn på plassen som er valgt her. Det er vanskeligere å merke opp. For å få det, skriv under [place]: { $to } og { $at }.

# Why there is no place, in one line.

place-none-at-any-turn = Det er ikke plass til benkeplaten på platen i noen dreining, heller ikke til en som er { $within } mindre hele veien rundt.
place-none-found = Det ble ikke funnet plass til benkeplaten på platen. At det ikke finnes i noen dreining, er ikke bevist: prøv en under [place].
place-at-fault = Plassen under [place] er feil: benkeplaten kan ikke ligge der. Uten at og turn finnes det en plass.
place-not-here = Benkeplaten kan ikke ligge der den er satt.
place-none-begun = Den ønskede benkeplaten kan ikke lenger tas ut av det som er igjen av platen.

# What stands against a position.

place-outside = benkeplaten med arbeidsmonn stikker { $by } ut over { $part } på platen; gjør benkeplaten minst { $by } mindre der, eller ta en større plate
place-outside-within-tape = benkeplaten med arbeidsmonn stikker { $by } ut over { $part } på platen; det er innenfor målebåndets feil ({ $tape }): mål igjen
place-on-flaw = benkeplaten kommer { $by } for nær «{ $flaw }» (avstand { $clear }); flytt den, eller gjør benkeplaten mindre
place-near-rough-edge = benkeplaten kommer { $by } for nær platekant { $edge }, som er ru (slab.rough_margin { $margin }): steinen er avskallet der, og sprukket lenger inn; flytt den, eller gjør benkeplaten mindre
place-round-near-edge = benkeplaten kommer { $by } for nær platekant { $edge }: en rund benkeplate trenger en stripe på { $least } hele veien rundt for å kunne sages; flytt den, eller gjør benkeplaten mindre
place-along-flaw = kantkuttet for { $part } ville gå langs «{ $flaw }» i { $long }, innenfor avstanden på { $clear }: steinen kan brekke der; flytt eller drei benkeplaten
place-narrow-strip = kant { $edge } ville gi en stripe på { $width } å sage av, minst { $least }; flytt benkeplaten slik at kanten ligger på platekanten eller lenger inn
place-factory-bow = kant { $edge } er buet og oppgitt som fabrikkant (factory), men en buet kant sages alltid; gi den en annen kantbearbeiding
place-not-on-factory-edge = kant { $edge } er oppgitt som fabrikkant (factory), men ligger ikke på en fabrikkant på platen; legg den på en, eller gi den en annen kantbearbeiding
place-no-sawn-outline = arbeidsmonnet kan ikke føres rundt omrisset av benkeplaten: en kant er for kort eller en bue for liten til det; endre kantbearbeidingen der, eller formen
place-no-sawn-cutout = arbeidsmonnet lar ingenting av «{ $what }» bli igjen å sage: den er for liten, eller en bue i den er det; gjør den større, eller endre kantbearbeidingen
place-vein = lengderetningen på benkeplaten ligger { $angle } fra åren; sett top.vein = "any" hvis det ikke betyr noe

# Sizes that fit, by the box round the finished top.

place-fits-smaller = i samme form går { $long } × { $deep }
place-fits-shorter = bare kortere går { $long } × { $deep }
place-fits-narrower = bare smalere går { $long } × { $deep }
