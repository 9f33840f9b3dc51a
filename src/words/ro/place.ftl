# Findings of placement: a line, and in full.

measure-again = Măsurați din nou: potrivirea este în eroarea ruletei
    .detail = Blatul încape cu o rezervă de { $spare }; cu o ruletă de ±{ $tape } pentru siguranță este nevoie de cel puțin { $least }. Măsurați placa din nou sau faceți blatul mai mic.

edges-undescribed = Verificați { $count ->
        [one] marginea plăcii
       *[other] marginile plăcii
    } { $edges }: blatul { $count ->
        [one] o folosește așa cum este
       *[other] le folosește așa cum sunt
    }
    .detail = Nimeni nu a spus cum { $count ->
        [one] este marginea { $edges } a plăcii. Se socotește tăiată
       *[other] sunt marginile { $edges } ale plăcii. Se socotesc tăiate
    } și acolo nu se face nicio tăietură. Verificați înainte de început: drept de-a lungul unui dreptar, perpendicular pe față, curat, fără știrbituri și fără fisuri care intră. Dacă da, scrieți { $sawn } sub [slab]. Dacă nu, scrieți acolo { $rough } și planificați din nou: aceasta face cel puțin { $cuts ->
        [one] o tăietură
        [few] { $cuts } tăieturi
       *[other] { $cuts } de tăieturi
    } în plus.

turn-saves = Puțin rotit, același blat cere cu { $saved } mai puțină tăiere
    .detail = Rotit cu { $turn } față de placă, fără nicio margine pe o margine, se taie cu { $saved } mai puțină suprafață decât în locul ales aici. Trasarea este mai grea. Pentru aceasta scrieți sub [place]: { $to } și { $at }.

# Why there is no place, in one line.

place-none-at-any-turn = Nu există loc pentru blat pe placă la nicio rotire, nici pentru unul mai mic cu { $within } de jur împrejur.
place-none-found = Nu s-a găsit loc pentru blat pe placă. Nu este dovedit că nu există la nicio rotire: încercați una sub [place].
place-at-fault = Locul de sub [place] este greșit: blatul nu are voie să stea acolo. Fără at și turn se găsește un loc.
place-not-here = Blatul nu are voie să stea unde este pus.
place-none-begun = Blatul cerut nu se mai poate scoate din ce rămâne din placă.

# What stands against a position.

place-outside = blatul cu adaosul lui iese cu { $by } din placă la { $part }; faceți blatul acolo mai mic cu cel puțin { $by } sau luați o placă mai mare
place-outside-within-tape = blatul cu adaosul lui iese cu { $by } din placă la { $part }; este în eroarea ruletei ({ $tape }): măsurați din nou
place-on-flaw = blatul vine cu { $by } prea aproape de „{ $flaw }” (distanță { $clear }); mutați-l sau faceți-l mai mic
place-near-rough-edge = blatul vine cu { $by } prea aproape de marginea { $edge } a plăcii, care este brută (slab.rough_margin { $margin }): acolo piatra este știrbită, iar mai spre interior fisurată; mutați-l sau faceți-l mai mic
place-round-near-edge = blatul vine cu { $by } prea aproape de marginea { $edge } a plăcii: un blat rotund are nevoie de o fâșie de { $least } de jur împrejur ca să fie tăiat; mutați-l sau faceți-l mai mic
place-along-flaw = tăietura pentru { $part } ar merge de-a lungul „{ $flaw }” pe { $long }, la mai puțin de distanța de { $clear }: piatra se poate rupe acolo; mutați sau rotiți blatul
place-narrow-strip = marginea { $edge } ar lăsa de tăiat o fâșie de { $width }, minimum { $least }; mutați blatul astfel încât marginea să stea pe marginea plăcii sau mai spre interior
place-factory-bow = marginea { $edge } este curbă și notată factory, dar o margine curbă se taie întotdeauna; dați-i alt finisaj
place-not-on-factory-edge = marginea { $edge } este notată factory, dar nu stă pe o margine de fabrică a plăcii; așezați-o pe una sau dați-i alt finisaj
place-no-sawn-outline = adaosurile nu se pot duce în jurul conturului blatului: o margine este prea scurtă sau un arc prea mic pentru ele; schimbați acolo finisajul sau forma
place-no-sawn-cutout = adaosul nu lasă nimic de tăiat din: { $what }; este prea mic sau un arc al lui este; faceți-l mai mare sau schimbați-i finisajul
place-vein = direcția lungă a blatului este la { $angle } față de cea a vinei; puneți top.vein = "any" dacă nu contează

# Sizes that fit, by the box round the finished top.

place-fits-smaller = de aceeași formă încape { $long } × { $deep }
place-fits-shorter = numai cu lungime mai mică încape { $long } × { $deep }
place-fits-narrower = numai cu adâncime mai mică încape { $long } × { $deep }
