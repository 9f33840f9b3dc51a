# Findings of placement: a line, and in full.

measure-again = Misurare di nuovo: il margine è dentro l'errore del metro
    .detail = Il piano sta nella lastra con { $spare } di margine; con un metro preciso a ±{ $tape } servono almeno { $least } per essere sicuri. Misurare di nuovo la lastra, o fare il piano più piccolo.

edges-undescribed = Guardare { $count ->
        [one] il bordo
       *[other] i bordi
    } { $edges } della lastra: il piano { $count ->
        [one] lo usa com'è
       *[other] li usa come sono
    }
    .detail = Nessuno ha detto { $count ->
        [one] com'è il bordo { $edges } della lastra. È preso come tagliato
       *[other] come sono i bordi { $edges } della lastra. Sono presi come tagliati
    } e lì non si fa nessun taglio. Guardare prima di cominciare: diritto lungo una riga, a squadra con la faccia, pulito, senza scheggiature né crepe che entrano. Se è così, scrivere { $sawn } sotto [slab]. Se no, scrivere lì { $rough } e progettare di nuovo: fa { $cuts ->
        [one] un taglio
       *[other] { $cuts } tagli
    } in più almeno.

turn-saves = Un po' girato, lo stesso piano richiede { $saved } di taglio in meno
    .detail = Girato di { $turn } rispetto alla lastra, senza un bordo lungo un bordo, si taglia { $saved } di superficie in meno che nel posto preso qui. È più difficile da tracciare. Per averlo, scrivere sotto [place]: { $to } e { $at }.

# Why there is no place, in one line.

place-none-at-any-turn = Sulla lastra non c'è posto per il piano in nessuna rotazione, né per uno più piccolo di { $within } tutto intorno.
place-none-found = Nessun posto trovato per il piano sulla lastra. Che non ci sia in nessuna rotazione non è provato: provarne uno sotto [place].
place-at-fault = Il posto sotto [place] è la causa: il piano non può stare lì. Senza at e turn un posto si trova.
place-not-here = Il piano non può stare dove è messo.
place-none-begun = Da ciò che resta della lastra il piano richiesto non si ricava più.

# What stands against a position.

place-outside = il piano con il materiale in più sporge di { $by } dalla lastra in { $part }; farlo lì più piccolo di almeno { $by }, o prendere una lastra più grande
place-outside-within-tape = il piano con il materiale in più sporge di { $by } dalla lastra in { $part }; è entro l'errore del metro ({ $tape }): misurare di nuovo
place-on-flaw = il piano viene di { $by } troppo vicino a «{ $flaw }» (distanza da tenere { $clear }); spostarlo, o farlo più piccolo
place-near-rough-edge = il piano viene di { $by } troppo vicino al bordo { $edge } della lastra, che è grezzo (slab.rough_margin { $margin }): lì la pietra è scheggiata, e crepata più in dentro; spostarlo, o farlo più piccolo
place-round-near-edge = il piano viene di { $by } troppo vicino al bordo { $edge } della lastra: un piano tondo richiede una striscia di { $least } tutto intorno per essere tagliato; spostarlo, o farlo più piccolo
place-along-flaw = il taglio di rifilo { $part } correrebbe lungo «{ $flaw }» per { $long }, entro la distanza da tenere { $clear }: lì la pietra può rompersi; spostare o girare il piano
place-narrow-strip = il bordo { $edge } lascerebbe una striscia di { $width } da tagliare, minimo { $least }; spostare il piano in modo che quel bordo stia su quello della lastra o più in dentro
place-factory-bow = il bordo { $edge } è curvo e segnato factory, ma un bordo curvo viene sempre tagliato; dargli un'altra finitura
place-not-on-factory-edge = il bordo { $edge } è segnato factory ma non sta su un bordo di fabbrica della lastra; metterlo su uno, o dargli un'altra finitura
place-no-sawn-outline = il materiale in più non fa il giro del contorno del piano: un bordo è troppo corto o un arco troppo piccolo; cambiare lì la finitura, o la forma
place-no-sawn-cutout = il materiale in più non lascia niente da tagliare qui: { $what }; l'apertura è troppo piccola, o un suo arco; farla più grande, o cambiare la sua finitura
place-vein = la lunghezza del piano fa { $angle } con la vena; mettere top.vein = "any" se non importa

# Sizes that fit, by the box round the finished top.

place-fits-smaller = con la stessa forma ci sta { $long } × { $deep }
place-fits-shorter = solo con meno lunghezza ci sta { $long } × { $deep }
place-fits-narrower = solo con meno profondità ci sta { $long } × { $deep }
