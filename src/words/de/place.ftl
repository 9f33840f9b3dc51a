# Findings of placement: a line, and in full.

measure-again = noch einmal messen: die Passung liegt im Fehler des Bandmaßes
    .detail = Die fertige Platte passt mit { $spare } Spiel; mit einem Bandmaß, das auf ±{ $tape } genau ist, braucht es mindestens { $least }, um sicher zu sein. Die Rohplatte noch einmal messen, oder die fertige Platte kleiner machen.

edges-undescribed = { $count ->
        [one] Kante { $edges } der Rohplatte ansehen: die fertige Platte nutzt sie, wie sie ist
       *[other] Kanten { $edges } der Rohplatte ansehen: die fertige Platte nutzt sie, wie sie sind
    }
    .detail = Niemand hat gesagt, wie { $count ->
        [one] Kante { $edges } der Rohplatte ist. Sie gilt als gesägt
       *[other] die Kanten { $edges } der Rohplatte sind. Sie gelten als gesägt
    }, und dort wird nicht geschnitten. Vor dem Beginn ansehen: gerade am Richtscheit, rechtwinklig zur Fläche, sauber, keine Ausbrüche und keine Risse nach innen. Wenn ja, unter [slab] eintragen: { $sawn }. Wenn nicht, dort eintragen: { $rough }, und neu planen: das gibt mindestens { $cuts ->
        [one] einen Schnitt
       *[other] { $cuts } Schnitte
    } mehr.

turn-saves = ein wenig gedreht wird für dieselbe Platte { $saved } weniger gesägt
    .detail = Um { $turn } gegen die Rohplatte gedreht, ohne dass eine Kante an einer Kante liegt, wird { $saved } weniger Schnittfläche gesägt als an dem Platz, der hier genommen ist. Das Anreißen ist schwieriger. Dafür unter [place] eintragen: { $to } und { $at }.

# Why there is no place, in one line.

place-none-at-any-turn = Für die fertige Platte gibt es auf der Rohplatte in keiner Drehung einen Platz, auch nicht für eine ringsum { $within } kleinere.
place-none-found = Auf der Rohplatte wurde kein Platz für die fertige Platte gefunden. Dass es in keiner Drehung einen gibt, ist nicht bewiesen: eine unter [place] versuchen.
place-at-fault = Der Platz unter [place] ist falsch: dort darf die fertige Platte nicht liegen. Ohne at und turn wird ein Platz gefunden.
place-not-here = Die fertige Platte darf dort nicht liegen, wo sie hingesetzt ist.
place-none-begun = Die gewünschte Platte ist aus dem, was von der Rohplatte übrig ist, nicht mehr zu machen.

# What stands against a position.

place-outside = die fertige Platte ragt mit ihrer Zugabe { $by } über { $part } der Rohplatte hinaus; die fertige Platte dort mindestens { $by } kleiner machen oder eine größere Rohplatte nehmen
place-outside-within-tape = die fertige Platte ragt mit ihrer Zugabe { $by } über { $part } der Rohplatte hinaus; das liegt im Fehler des Bandmaßes ({ $tape }): noch einmal messen
place-on-flaw = die fertige Platte kommt „{ $flaw }“ um { $by } zu nahe (Abstand { $clear }); verschieben oder die fertige Platte kleiner machen
place-near-rough-edge = die fertige Platte kommt der Kante { $edge } der Rohplatte um { $by } zu nahe, die rau ist (slab.rough_margin { $margin }): der Stein ist dort ausgebrochen und weiter innen gerissen; verschieben oder die fertige Platte kleiner machen
place-round-near-edge = die fertige Platte kommt der Kante { $edge } der Rohplatte um { $by } zu nahe: eine runde Platte braucht zum Sägen ringsum einen Streifen von { $least }; verschieben oder die fertige Platte kleiner machen
place-along-flaw = der Kantenschnitt { $part } liefe auf { $long } an „{ $flaw }“ entlang, innerhalb des Abstands von { $clear }: der Stein kann dort brechen; die fertige Platte verschieben oder drehen
place-narrow-strip = an Kante { $edge } bliebe ein Streifen von { $width } abzusägen, Mindestmaß { $least }; die fertige Platte so verschieben, dass die Kante auf der Kante der Rohplatte oder weiter innen liegt
place-factory-bow = Kante { $edge } ist gebogen und als Werkskante (factory) bezeichnet, aber eine gebogene Kante wird immer gesägt; ihr eine andere Bearbeitung geben
place-not-on-factory-edge = Kante { $edge } ist als Werkskante (factory) bezeichnet, liegt aber auf keiner Werkskante der Rohplatte; auf eine legen oder ihr eine andere Bearbeitung geben
place-no-sawn-outline = die Zugaben lassen sich nicht um den Umriss der fertigen Platte führen: eine Kante ist zu kurz oder ein Bogen zu klein dafür; dort die Bearbeitung oder die Form ändern
place-no-sawn-cutout = die Zugabe lässt von „{ $what }“ nichts zu sägen übrig: zu klein, oder ein Bogen darin ist es; größer machen oder die Bearbeitung ändern
place-vein = die Längsrichtung der fertigen Platte liegt { $angle } neben der Ader; top.vein = "any" eintragen, wenn das nichts ausmacht

# Sizes that fit, by the box round the finished top.

place-fits-smaller = bei gleicher Form passt { $long } × { $deep }
place-fits-shorter = nur kürzer passt { $long } × { $deep }
place-fits-narrower = nur schmaler passt { $long } × { $deep }
