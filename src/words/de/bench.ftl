# The bench pages, the annex and the answers in a terminal.

bench-head = Plan { $plan } · Seite { $number } von { $count }
bench-head-annex = Plan { $plan } · Anhang, Seite A{ $number } von A{ $count }
bench-foot = Örtliche Vorschriften, Herstellerangaben und fachkundige Personen gehen diesem Blatt vor.
bench-foot-cut = Zuerst anritzen. Nie verkanten, nie seitlich drücken. Nach einem Klemmen: aus, warten, freimachen, erst bei voller Drehzahl wieder hinein.
bench-stop = STOPP
bench-kills-now = tödlich
bench-kills-later = tödlich, später
bench-maims = verstümmelt
bench-lasting = bleibt lebenslang
bench-breaks-stone = bricht den Stein
bench-blank = ausfüllen
bench-sentences = { $a } { $b }
bench-term = { $term }

# At a glance
bench-glance = Auf einen Blick
bench-glance-title = Auf einen Blick: { $work }
bench-work-straight = { $count ->
    [one] eine Kante sägen
   *[other] { $count } Kanten sägen
 }
bench-work-curves = { $count ->
    [one] eine Rundung eintauchen
   *[other] { $count } Rundungen eintauchen
 }
bench-work-openings = { $count ->
    [one] einen Ausschnitt schneiden
   *[other] { $count } Ausschnitte schneiden
 }
bench-glance-alt = Die Rohplatte von oben mit der fertigen Platte, { $length } mal { $width }, den Schnitten der Reihe nach und den Reststücken mit ihren Gewichten.
bench-glance-open = Bevor die Maschine anläuft: jedes klären, Ergebnis eintragen, dann abhaken
bench-glance-warnings = Was diese Arbeit anrichten kann, Schlimmstes zuerst
bench-top-size = { $length } × { $width }
bench-waste-name = { $name } { $mass }
bench-keep = bleibt
bench-top-corner = Ecke { $corner }
bench-practice-here = üben
bench-tile-top = fertige Platte
bench-tile-slab = Rohplatte
bench-tile-waste = schwerstes Reststück
bench-tile-sawing = Scheibe im Stein
bench-tile-setting = Einrichten
bench-tile-silica = Quarz im Schlamm
bench-tile-silica-dry = Quarz im Staub
bench-tile-likely = höchstens; wohl { $mass }
bench-tile-likely-thick = höchstens; wohl { $mass }; { $thick }
bench-tile-no-waste = kein Stück fällt ab
bench-tile-after = { $name }, Schnitt { $cut }
bench-tile-shares = { $count ->
    [one] eine Person, ein Tag
   *[other] auf { $count } Personen oder Tage verteilen
 }
bench-tile-with-other = mit { $other } anderer Arbeit: { $shares }
bench-tile-without-edges = { $shares }; ohne Kanten
bench-not-counted = Schleifen, Polieren und Fasen der Kanten ist hier nirgends eingerechnet, außer es steht unter [[today]]; es zählt zum Tag derselben Person.
bench-tile-set-ups = { $count ->
    [one] einmal einrichten
   *[other] { $count }-mal einrichten
 }
bench-tile-of-dust = höchstens, in { $mass } Stein

# Mark out
bench-mark = Anreißen
bench-mark-title = Jede Linie vor dem ersten Schnitt anreißen
bench-mark-rule = Vor dem ersten Schnitt jede Linie quer über die ganze Rohplatte anreißen. Ein Schnitt nimmt Marken weg; die Linie auf dem Stein, der bleibt, ist noch zu sehen.
bench-mark-alt = Die Rohplatte von oben mit jeder Linie zum Anreißen, ihren Marken an den Kanten und jedem Drehpunkt und Loch.
bench-mark-what = Punkt
bench-mark-off = neben der angerissenen Linie
bench-mark-off-that = neben Linie { $cut }
bench-mark-named = { $mark }
bench-mark-off-short = { $cut }: { $distance }
bench-mark-on-short = auf { $cut }
bench-mark-off-line = Linie { $cut }: { $distance }
bench-mark-on-line = auf Linie { $cut }
bench-mark-check = Kontrolle
bench-mark-line-check = Probe der Linie
bench-mark-on-curve = Linie von Schnitt { $cut }
bench-mark-keep = Linie, die bleibt
bench-mark-guide = Schiene, ebenso
bench-mark-tape-from = Bandmaß
bench-marked = { $mark } { $distance }
bench-marked-from = { $mark } { $corner } { $distance }
bench-tape = { $corner } { $distance }
bench-mark-pivot = { $mark } Drehpunkt
bench-mark-chord = { $mark } Sehne
bench-mark-hole = { $mark } Loch
bench-mark-stop = { $mark } Endpunkt
bench-mark-both = Schnitt { $cut }: { $distance } von Ecke { $corner } der Platte auf beiden Linien.
bench-mark-along = Schnitt { $cut }, von Ecke { $corner } der Platte: { $before } zurück, { $after } weiter.
bench-mark-guides = Jede Führungslinie läuft { $offset } neben ihrer Linie, die bleibt, von einem Ende zum anderen.
bench-mark-rough = Eine Ecke an einer rauen Kante liegt, wo Schnüre entlang ihrer beiden Kanten sich kreuzen: zuerst markieren.
bench-mark-tape = Den Haken des Bandmaßes genau an die Ecke halten. Weicht eine Kontrolle um mehr als { $tape } ab: neu messen, nicht die Linie verschieben. { $guides }
bench-mark-between = Ein Zweiunddreißigstel Zoll ist die Mitte zwischen zwei Strichen eines Bandmaßes, das Sechzehntel zeigt.
bench-end = { $mark }: { $distance } ab { $corner } an { $edge }

# Straight cuts
bench-straight = Gerade Schnitte
bench-straight-title = Gerade, Kante { $edge }, { $length } lang, Stein { $thick }
bench-relief-title = Entlastungsschnitt bei { $edge }, { $length } lang, Stein { $thick }
bench-straight-alt = Die Rohplatte vor dem Schnitt an Kante { $edge }, von oben: Führung, Unterlagen, wo der Bediener steht und was frei wird: { $waste }.
bench-you = Bediener
bench-depth = Tiefe
bench-depths = Tiefen
bench-trestles-move = Zuerst den Stein abheben und die Böcke versetzen: { $first } und { $second } vom Ende der Rohplatte.
bench-trestles-board = Zuerst den Stein abheben: ab hier liegt er auf einer vollen, ebenen Tragplatte.
bench-late = Erst nach Schnitt { $cut }, der seine eigene Seite hat.
bench-fact-guide = Führung
bench-fact-ends = Enden
bench-fact-moves = sie liegt bei
bench-fact-how = wie
bench-fact-bearers = Unterlagen
bench-fact-drill = erst bohren
bench-fact-when = wann
bench-guide-kept = { $offset } neben der Linie, die bleibt, auf dem Stein, der bleibt
bench-guide-waste = { $offset } neben der Linie, die bleibt, auf dem Reststück
bench-ends = { $first }; { $second }
bench-moves = { $places } ab { $mark }, nacheinander bei jeder Tiefe{ $clamp ->
    [no] ; wo keine Zwinge hinreicht, ein Saughalter, von Hand geprüft
   *[yes] {""}
 }
bench-stone-end = dem Ende des Steins bei { $mark }
bench-span = { $from } bis { $to }
bench-how = { $parts }
bench-how-far-end = Bei jeder Tiefe zuerst die letzten { $length } bei { $last }, von außen nach innen; dann vom anderen Ende bis dorthin.
bench-how-stop = Endet bei { $mark }: Scheibenmitte nicht näher als { $short }. Was die runde Scheibe stehen lässt, kommt zuletzt und von oben: Kernbohrer im Abfall, dann schleifen; nie von unten.
bench-how-stop-hole = Endet im Bohrloch bei { $mark }: Scheibenmitte nicht näher als { $short }.
bench-how-allowance = { $left } bleiben zum Bearbeiten stehen.
bench-how-breaks = Ab { $depth } kann es abbrechen.
bench-bearers = auf jeder Seite, { $off }: { $at } ab { $mark }
bench-bearers-even = { $count } auf jeder Seite, { $off }: von { $first } bis { $last } ab { $mark }, alle { $step }
bench-bearers-off = { $off } neben der Linie
bench-bearers-off-each = { $kept } neben der Linie, { $waste } unter dem Reststück
bench-struck = nach der angerissenen Linie { $first } bis { $second }: ein Ende ist weg
bench-drill = Ø { $bit } bei { $marks }, nass, bevor die Scheibe in die Nähe kommt
bench-free-heavy = { $name } wird frei: bis { $mass }. Vor dem ersten Durchgang liegt es auf eigenen Unterlagen, eben. Keine Hand, kein Fuß, kein Knie darunter; niemand hält es.
bench-free-carried = { $name } wird frei: bis { $mass }. Vor dem ersten Durchgang liegt es auf eigenen Unterlagen, eben. Keine Hand, kein Fuß, kein Knie darunter; niemand hält es. { $away }
bench-away = Dann { $how ->
            [flat] tragen es { $people } Personen flach auf zwei Latten am Boden, ein Fünftel der Länge von den Enden.
           *[edge] stellen es { $people } Personen auf die Längsseite, tragen es hochkant zu zwei Latten an einer Wand und binden es dort an.
        }
bench-away-more = Zum Wegtragen, { $how ->
            [flat] flach
           *[edge] hochkant
        }, braucht es { $people } Personen, dieser Auftrag hat weniger: Leute oder ein Hilfsmittel holen, oder es liegend quer durchsägen, Unterlagen auf beiden Seiten der Linie.
bench-away-aid = Dann bringt es { $aid ->
            [trolley] der Wagen, von { $people } Personen ({ $half }) aufgestellt und angebunden,
            [vacuum] der Vakuumheber, hochkant,
           *[gantry] das Hebezeug, hochkant in zwei Schlingen,
        } zu zwei Latten an einer Wand; dort anbinden.
bench-away-sawn = Kein Team trägt es weg: liegend quer durchsägen, Unterlagen auf beiden Seiten der Linie, oder ein Hilfsmittel holen.
bench-free-light = { $name } wird frei: bis { $mass }. Vor dem ersten Durchgang eine Unterlage darunter; keine Hand darunter.
bench-free-flaw = An „{ $flaw }“ kann es brechen: Unterlagen auf beiden Seiten davon, gerades Kantholz darüber klemmen, bevor es gehoben wird.
bench-free-station = { $name } wird etwa bei Station { $station } frei, letzte Tiefe: bis { $mass }. Vor dem ersten Durchgang eine Unterlage darunter; keine Hand darunter.
bench-measured = Kante { $edge }, zu kurz oder über (Soll 0)
bench-cut-by = Bediener, Zeit

# Curves
bench-curve = Rundung, Schnitt { $cuts }
bench-curve-title = { $count ->
    [one] Eine Station der Rundung bei { $corners } eintauchen, { $depths } Tiefen
   *[other] { $count } Stationen der Rundung bei { $corners } eintauchen, { $depths } Tiefen
 }
bench-curve-alt = Die Rundung von oben mit ihren nummerierten Stationen, dem Drehpunkt oder der Sehne und dem Reststück.
bench-curve-how = Wie
bench-curve-line = Radius { $radius }; { $left } bleiben zum Bearbeiten stehen
bench-curve-line-inside = Radius { $radius }; { $left } bleiben zum Bearbeiten stehen; die Stationen auf Radius { $stations }
bench-curve-rise = Sehne { $chord }, in der Mitte steigt die Rundung { $rise } darüber
bench-curve-struck = { $points }, vor Schnitt 1 angerissen: siehe Anreißen
bench-curve-swing = { $mark }: { $radius } von jeder der Marken { $points }
bench-curve-stations = Die Linie um den Drehpunkt anreißen. Jede Station geradlinig ab der Marke messen, die bei ihrer Nummer steht; Nachbarn liegen { $apart } auseinander.
bench-curve-ordinates = Die Sehne anreißen. Jede Station darauf abtragen und rechtwinklig dazu; Nachbarn liegen { $apart } auseinander.
bench-curve-plunge = Scheibe an der Station rechtwinklig zum Arm: nahe Seite { $near } vom Drehpunkt, Vorrichtungsmarke { $arm }. Neben ihrer Linie stehen, nie darin. Gerade hinein, gerade heraus. Nie um die Rundung lenken.
bench-curve-plunge-guide = Führungskante { $offset } von der Station und { $half } links und rechts von ihr { $gap } von der Rundung; nahe Scheibenseite auf der Rundung. Neben ihrer Linie stehen, nie darin. Gerade hinein, gerade heraus. Nie um die Rundung lenken.
bench-curve-plunge-square = Den Mittelpunkt des Bogens anreißen, { $radius } von beiden Enden der Sehne. Die Scheibe steht rechtwinklig zur Linie vom Mittelpunkt durch die Station, ihre äußere Seite, die vom Mittelpunkt weg, an der Station; die Kante der Führung { $offset } dahinter. Neben ihrer Linie stehen, nie darin. Gerade hinunter, gerade heraus. Nie herumlenken.
bench-curve-rings = Alle Stationen auf eine Tiefe, dann alle auf die nächste: { $depths }. Der Stein ist { $thick } dick.
bench-curve-ridges = Grate von { $left } bleiben: nass mit Diamant-Schleiftopf oder Fächerscheibe, Körnung 60, entlang der Rundung bis zur Linie abtragen; dann 120, 200, 400.
bench-fact-pivot = Drehpunkt
bench-fact-chord = Sehne
bench-fact-stands = er steht auf
bench-fact-swing = zu finden
bench-fact-line = Linie, die bleibt
bench-arm = Marke { $length }
bench-pivot-top = fertige Platte: kleben oder saugen, nie bohren
bench-pivot-cutout = Stein, der später herausfällt, noch an seinem Platz
bench-pivot-waste = Reststück: es bleibt an seinem Platz, bis die Rundung fertig ist
bench-pivot-off = neben dem Stein: dort etwas von gleicher Höhe befestigen
bench-station = Nr.
bench-station-along = entlang
bench-station-off = quer
bench-station-off-waste = ab, in den Abfall
bench-relief-first = Zuerst die Entlastungsschnitte, damit das Reststück in Teilen abgeht.
bench-relief-cut = Schnitt
bench-relief-guide = Führung an Marken
bench-relief-length = Länge
bench-two-marks = { $first } und { $second }

# Openings
bench-opening = Ausschnitt { $number }
bench-opening-title = Ausschnitt: { $what }, Stein { $thick }
bench-opening-alt = Der Ausschnitt von oben mit seinen Löchern, Schnitten und Führungslinien und dem schmalsten Stein daneben.
bench-opening-corner-alt = Eine Ecke des Ausschnitts: die angerissenen Linien und die Punkte daneben
bench-opening-what = was
bench-opening-marks = Marken
bench-opening-how = wie
bench-opening-depths = Tiefen
bench-depths-straight = gerade
bench-depths-curve = rund
bench-opening-stop = Scheibenmitte bleibt { $short } vor { $mark }
bench-opening-hole = Bohren Ø { $bit }
bench-opening-straight = gerade, { $length }
bench-opening-curve = rund, { $length }
bench-opening-swing = Radius { $radius }, Arm { $arm }, { $count } Stationen
bench-opening-plunges = { $count } Eintauchschnitte an einer Sehne von { $chord }, Stich { $rise }
bench-opening-drill = nass, gerade hinunter, von oben
bench-opening-stations-chord = Stationen, Schnitt { $cuts }: entlang der Sehne ab Marke e, und rechtwinklig davon ab
bench-opening-stations-pivot = Stationen, Schnitt { $cuts }: geradlinig ab den angerissenen Marken
bench-opening-step-drill = Zuerst jedes Loch bohren: dann endet die Scheibe in einem Loch, und kein Schnitt läuft in die Ecke weiter.
bench-opening-step-saw = Von Loch zu Loch sägen, jeden Schnitt auf volle Tiefe vor dem nächsten. Die Scheibe ist rund: unten halten die Enden der Schnitte das Stück noch. Von oben lösen, mit dem Kernbohrer im Abfall über jedem Ende, den Rest schleifen; niemand arbeitet darunter. Der Stein muss rundum aufliegen, auch unter dem Stück, das fällt.
bench-opening-step-saw-parted = Von Loch zu Loch sägen, jeden Schnitt auf volle Tiefe vor dem nächsten. Die Scheibe ist rund: unten würden die Enden der Schnitte das Stück noch halten; die Löcher neben ihnen trennen es dort, und was stehen bleibt, wird abgeschliffen. Niemand arbeitet darunter. Der Stein muss rundum aufliegen, auch unter dem Stück, das fällt.
bench-opening-step-last = Der letzte Schnitt löst das Stück: zuerst Unterlagen darunter, niemand darunter. Ab jetzt ist der Stein neben dem Ausschnitt schwach: Versteifung dran, bevor er bewegt wird.
bench-rail = { $what }
bench-rail-holds = { $width } breit: hält; hochkant tragen, nie am Steg fassen
bench-rail-brace = { $width } breit: nur mit Versteifung. { $splint }
bench-rail-weak = { $width } breit: auch mit Versteifung zu schwach. { $splint }
bench-splint = { $count } × Kantholz { $wide } × { $high }, { $length } lang, vor dem ersten Schnitt hier festgeklemmt

# Moving
bench-move = Tragen und absetzen
bench-move-title = Hochkant, von Hand, angebunden, wenn er steht
bench-move-title-trolley = Hochkant auf dem Plattenwagen, angebunden, auf ebenem Boden
bench-move-title-vacuum = Hochkant unter dem Vakuumheber
bench-move-title-gantry = Hochkant in zwei Hebebändern
bench-move-slab = Rohplatte auf die Böcke, { $alike ->
    [yes] eine Langseite unten
   *[no] { $side } unten
 }
bench-move-top = Fertige Platte an den Platz, { $alike ->
    [yes] eine Langseite unten
   *[no] { $side } unten
 }
bench-move-alt = Der Stein hochkant mit seinem Hebegerät und einer Person an jedem Ende, maßstäblich; er wiegt bis zu { $mass }.
bench-move-on-edge = Nie flach an den Enden: er bricht durch. Den ganzen Weg hochkant, flach erst über beiden Böcken. Nie ein Ende anheben.
bench-move-tied = Den ganzen Weg hochkant, angebunden, sobald er steht.
bench-turn-slab = hochkant neben beide Böcke, das Gefährt blockiert; untere Langseite auf beide zugleich, dann flach: { $hands ->
    [none] nicht von Hand, sondern mit Hebezug, Vakuumheber oder Kippgestell
    [open] wie auf Seite 1 geklärt: alle an der fernen Langseite, niemand darunter
    [aid] vom Heber gedreht, zwei Personen führen
   *[team] alle an der fernen Langseite, niemand darunter
 }. Sicherung zuletzt ab.
bench-turn-top = hochkant neben den Platz, dann flach auf gepolsterte Latten quer darüber: { $hands ->
    [none] nicht von Hand, sondern mit Hebezug, Vakuumheber oder Kippgestell
    [open] wie auf Seite 1 geklärt: alle an der fernen Langseite, niemand darunter
    [aid] vom Heber gedreht, zwei Personen führen
   *[team] alle an der fernen Langseite, niemand darunter
 }. Latten einzeln heraus, die Langseite mit Keilen angehoben, kein Finger darunter.
bench-fact-flat = Rohplatte, flach
bench-fact-set = Platte, absetzen
bench-move-hands = Griffstellen
bench-move-hands-on-edge = Griffstellen: er hängt hochkant darin, nie flach
bench-move-trestles = Zwei Böcke von der Seite: Abstände vom Ende { $corner }, und was jeder trägt
bench-move-supports = Worauf sie steht: die Mitte jeder Stütze, wie gezeichnet
bench-hands-alt = Der Stein von oben mit einer Person an jedem Platz und dem, was jede trägt.
bench-hands = { $number }: { $mass }
bench-trestles-alt = Die Rohplatte auf zwei Böcken, { $first } und { $second } von ihrem Ende.
bench-supports-alt = Die fertige Platte von oben auf ihren Stützen mit dem, was jede trägt.
bench-supports-short = So nicht genug: zuerst mehr Auflage, siehe Seite 1.
bench-free-span = höchstens { $limit }; hier bis { $length }
bench-overhang = { $edge }: { $length }; höchstens { $limit }. Dort abstützen
bench-overhang-person = { $edge }: { $length }; niemand stützt sich dort auf, oder dort abstützen
bench-bearing-over = stützt sich jemand auf die Platte, sind es { $person }, tragen darf sie { $limit }: niemand sitzt oder lehnt dort, oder eine Stütze dazu
bench-support-name = { $number } { $what }
bench-support = { $along } von links, { $up } von unten; trägt höchstens { $mass }
bench-fact-trolley = Wagen
bench-fact-vacuum = Vakuumheber
bench-fact-slings = Hebebänder
bench-fact-lift = von Hand
bench-fact-fall = wenn er fällt
bench-fact-free = ohne Stütze
bench-fact-over = über Stützen hinaus
bench-trolley = Aufschrift { $rated } oder mehr; Schub { $push } auf ebenem Boden
bench-rated = Aufschrift { $rated } oder mehr
bench-slings = { $each } je Band, { $tension } je Strang bei { $angle }
bench-fall = niemand näher als { $clear }, auf beiden Seiten; anbinden
bench-lift-never = nie: { $people } zusammen zählen für insgesamt { $limit }{ $two }
bench-lift-two = {""}, zwei für { $mass }
bench-lift-above = über dem Richtwert: eine Person trägt { $carried }, Richtwert { $limit }; zuerst klären (Seite 1)
bench-lift-over = so nicht: eine Person trüge { $carried }, Richtwert { $limit }
bench-lift-tips = so nicht: er kippt
bench-lift-breaks = nicht von Hand: flach und hochkant zu stark gebogen; versteifen oder Hebegerät nehmen
bench-lift-many = so nicht: { $people } Personen heben nicht als Team
bench-lift-within = { $people } Personen, jede bis { $most }; kein Wert macht ein Heben sicher

# Dust, noise, hands
bench-dust = Staub, Lärm, Hände
bench-dust-title = Staub, Lärm, Hände
bench-dust-order = Wirksamstes zuerst: was den Staub wegnimmt
bench-dust-limits = Wie viel, wie lange
bench-dust-settled = Für diese Arbeit geklärt
bench-control = { $state ->
    [done] { $what }: vorgesehen
    [open] { $what }: NOCH OFFEN
   *[other] { $what }: am Tag selbst beachten
 }
bench-fact-mask = Maske hier
bench-fact-hands = Hände
bench-fact-ears = Ohren
bench-fact-slurry = Schlamm
bench-fact-slurry-dry = Staub
bench-fact-silica = was darin ist
bench-fact-vacuum-class = Sauger
bench-mask-at-hand = { $mask }; glatt rasiert, Dichtsitz geprüft; auf vor dem ersten Schnitt, ab, wenn der Boden sauber ist
bench-hands-allowed = { $action } am Tag je Person, alles mitgezählt, was rüttelt; diese Arbeit braucht { $job }
bench-hands-other = { $hands }, andere Arbeit zählt { $other }
bench-hands-never = diese Maschine vibriert für jede Minute zu stark: eine andere Maschine
bench-ears = { $level } am Ohr: Gehörschutz auf vor dem ersten Start; ohne ihn ist der Tag nach { $minutes } voll
bench-slurry = etwa { $mass }, Eimer: { $buckets }; nass geschabt und gesaugt, nie in einen Abfluss
bench-bags = { $bags ->
    [one] ein Entstauberbeutel
   *[other] bis zu { $bags } Entstauberbeutel
 }
bench-nothing-caught = nichts fängt es auf
bench-silica = bis zu { $dust } Stein, davon { $silica } Quarz
bench-wear-mask = Maske: Faktor { $factor } oder mehr
bench-wear-mask-here = { $mask }: Faktor { $factor }
bench-wear-mask-ready = Maske auf beim Schneiden, bis der Boden sauber ist
bench-wear-mask-assess = Maske: erst die Exposition beurteilen lassen
bench-wear-ears = Ohren: { $level }
bench-wear-eyes = Korbbrille und Visier
bench-wear-hands = Enge Handschuhe, keine losen Bündchen
bench-wear-feet = Rutschfeste Stiefel mit Schutzkappe
bench-wear-disc = Scheibe: läuft nach dem Ausschalten nach

# Helper
bench-emergency = Notruf: { $number }
bench-vacuum-off = Sauger ausschalten:
bench-helper-weight = Die Rohplatte wiegt bis { $slab }, die fertige Platte bis { $top }. { $hands ->
    [none] Niemand hebt sie von Hand.
    [top] Niemand hebt die Rohplatte von Hand, niemand die fertige Platte allein.
   *[both] Niemand hebt sie allein.
 }

# The day and its record
bench-day = Tag und Protokoll
bench-day-title = Der Tag, und was geschehen ist
bench-day-what = was
bench-day-minutes = dauert
bench-day-at = fertig um
bench-day-read = Die Helferseite vorlesen, die Stoppzeichen üben, Seite 1 ausfüllen
bench-day-unload = Rohplatte hochkant abladen, angebunden; dann flach auf die Böcke
bench-day-mark = Jede Linie anreißen und prüfen; im Reststück üben
bench-day-straight = Schnitt { $cut }, Kante { $edge }: { $waste } geht ab
bench-day-curve = Schnitt { $cuts }, Rundung { $edge }
bench-day-opening = Schnitte { $cuts }, Ausschnitt: { $what }
bench-day-sum = Alle Schnitte: { $stone } Scheibe im Stein, { $setting } Einrichten
bench-day-move = Fertige Platte hochkant, angebunden, an den Platz
bench-day-clean = Schlamm nass aufnehmen, Boden spülen, dann Masken ab
bench-day-clean-dry = Staub überall absaugen, dann Masken ab
bench-day-bring = Mitbringen
bench-day-practice = Zuerst im Reststück üben
bench-day-wrong = Wenn es schiefgeht
bench-day-started = begonnen
bench-day-ended = beendet
bench-day-initials = Kürzel
bench-day-date = Datum
bench-day-annex = Rechnung, Tabellen, jede Warnung in voller Länge und die Quellen: kerfwright sheet AUFTRAG --annex
bench-bring-guide = Führung
bench-bring-guide-is = gerade, { $length }, und zwei Zwingen{ $suction ->
    [yes] , ein Saughalter
   *[no] {""}
 }{ $jig ->
    [yes] ; Zirkelarm mit Drehpunkt
   *[no] {""}
 }
bench-bring-discs = Scheiben
bench-bring-discs-are = { $discs }, mit Reserve{ $grind ->
    [yes] ; Diamanttopf oder Fächerscheiben zum Schleifen
   *[no] {""}
 }
bench-bring-bits = Kernbohrer
bench-bring-bits-are = { $bits }, für die Drehzahl der Maschine gemacht, die sie dreht; eine Schablone, die sie führt
bench-bring-bearers = Unterlagen
bench-bring-bearers-are = { $count } Klötze von gleicher Höhe, Weichholz, { $long } lang, und Keile; auf dem Bohlenbelag{ $edges }
bench-bring-bearers-edges = {""}, davon { $count } unter den Kanten ohne Schnitt
bench-bring-deck = Bohlenbelag
bench-bring-deck-are = Bohlen, mindestens { $thick } dick, längs unter der Rohplatte über beide Böcke, { $length } lang, nebeneinander { $wide } breit; darauf die Unterlagen, darauf die Platte
bench-bring-turn = zum Kippen
bench-bring-turn-is = Hebezug, Vakuumheber oder Kippgestell
bench-bring-carry = zum Tragen
bench-bring-carry-is = { $aid ->
    [trolley] Plattenwagen, Aufschrift { $rated }, zwei Böcke
    [vacuum] Vakuumheber, Aufschrift { $rated }, zwei Böcke
    [gantry] Portal mit Hebebändern für { $rated }, zwei Böcke
   *[none] zwei Böcke
 }, Gurte, Latten, Sauger; was die Schilder zeigen
bench-bring-tape = Anreißen
bench-bring-tape-is = { $rolls ->
    [one] eine Rolle Abklebeband, { $roll }
   *[other] { $rolls } Rollen Abklebeband, je { $roll }
 }, Stahlbandmaß, Winkel, feiner Stift, Schlagschnur
bench-bring-water = Wasser
bench-bring-water-is = insgesamt { $water }; Eimer für den Schlamm: { $buckets }
bench-practice-cut = ein Schnitt
bench-practice-cut-is = in { $piece }, wo gezeichnet, { $length } lang, auf { $depths }
bench-practice-plunge = Eintauchen
bench-practice-plunge-is = ebenso in { $piece }, drei nebeneinander, auf { $depths }
bench-practice-offset = Führungskante bis nahe Scheibenseite ({ $reckoned })
bench-practice-jig = Vorrichtungsmarke bis nahe Scheibenseite ({ $reckoned })
bench-practice-minutes = Minuten im Stein; Länge, Tiefe
bench-practice-differs = Andere Zahl als in Klammern: Führungsmarken oder Arm um so viel versetzen; die Linien, die bleiben, nicht.
bench-wrong-cracks = er reißt
bench-wrong-cracks-do = Aus. Niemand darunter. Unterlagen unter beide Teile, bevor sich etwas bewegt; dann messen und planen, was bleibt.
bench-wrong-pinches = sie klemmt
bench-wrong-pinches-do = Aus, Scheibe stillstehen lassen, Schnittfuge aufkeilen, Maschine herausheben. Erst bei voller Drehzahl wieder hinein.
bench-wrong-slips = von der Linie ab
bench-wrong-slips-do = Aus. Messen, wie weit und wie tief, und in der Auftragsdatei unter dem Geschehenen eintragen: ein neuer Plan sagt, was von der fertigen Platte bleibt.

# Repair
bench-repair = Was geschehen ist
bench-repair-title = Was geschehen ist, und was bleibt
bench-repair-alt = Der Stein, wie er ist, die fertige Platte, die bleibt, und gestrichelt die gewünschte.
bench-repair-as-planned = Alles liegt auf seiner Linie. Weiter wie geplant.
bench-repair-within = Die Zugabe fängt es auf: nichts ist verloren. Bis zur fertigen Linie schleifen.
bench-repair-grind = Nichts ist verloren: an einer Kante steht zu viel. Bis zur fertigen Linie abschleifen.
bench-repair-again = Nichts ist verloren: an einer Kante steht zu viel. Den Streifen absägen, nach seiner Seite.
bench-repair-smaller = Die fertige Platte wird kleiner. Vor dem nächsten Schnitt den Auftraggeber fragen.
bench-repair-opening = Ein Ausschnitt wird anders als gewünscht. Vor dem nächsten Schnitt den Auftraggeber fragen.
bench-repair-same-a = Buchstaben sind Ecken des Steins, wie er jetzt ist. A liegt, wo es lag, AB läuft wie zuvor; die anderen sind neu.
bench-repair-new = Buchstaben sind Ecken des Steins, wie er jetzt ist: alle sind neu. Auf den Stein schreiben.
bench-repair-wanted = gewünscht
bench-repair-now = jetzt
bench-repair-weighs = wiegt
bench-repair-first = zuerst
bench-repair-run-outs = fertig machen, was der Schnitt stehen ließ: { $pieces }
bench-repair-grind-first = vor dem nächsten Schnitt bis zur Linie abschleifen: { $edges }
bench-repair-lines = in der Auftragsdatei
bench-repair-part = Teil
bench-repair-came = geworden
bench-repair-is-wanted = gewünscht
bench-repair-is-now = jetzt
bench-repair-do = zu tun
bench-repair-edge = Kante { $name }
bench-repair-corner = Ecke { $name }, { $what }
bench-came-not-cut = ungeschnitten
bench-came-on-line = auf der Linie
bench-came-short = { $off } zu wenig
bench-came-over = { $off } zu viel
bench-came-slanting-short = { $start } bis { $end } zu wenig
bench-came-slanting-over = { $start } bis { $end } zu viel
bench-do-nothing = nichts
bench-do-finish = nur bearbeiten
bench-do-grind = { $off } schleifen
bench-do-cut = schneiden: siehe Seite

# The annex
annex-findings = Jeder Befund in voller Länge
annex-stops = Stopps: die Arbeit darf nicht beginnen, solange einer davon besteht
annex-open = Offen: vor dem Beginn auszufüllen oder anzusehen
annex-warnings = Warnhinweise
annex-every = Jedes Mal
annex-stone = Stein, Lage und Stücke
annex-strength = Liegen, Stehen, Heben
annex-way = Der Weg hinein
annex-health = Staub, Hände, Ohren: die Werte
annex-assumed = Werte, die die Auftragsdatei offen ließ
annex-sources = Quellen
annex-key = Schlüssel
annex-value = Wert
annex-why = warum
annex-what = was
annex-document = Dokument
annex-clause = Abschnitt
annex-year = Jahr
annex-no-year = ohne Jahr
annex-place = Lage auf der Rohplatte
annex-pieces = Stücke
annex-cuts = Schnitte
annex-balance = Rohplatte { $slab } = fertige Platte { $top } + Zugabe an den Kanten { $left } + Schnittfugen { $kerf } + Reststücke { $waste }. Krümel zwischen Schlitzen zählen zur Schnittfuge.
annex-range = { $low } bis { $high }
annex-three = { $low } bis { $high }, wohl { $likely }
annex-kind = Stein
annex-density = Dichte
annex-thickness = Dicke
annex-allowed = Festigkeit
annex-strength-is = { $strength } ÷ { $factor } ({ $source })
annex-slab-area = Rohplatte, Fläche
annex-slab-mass = Rohplatte wiegt
annex-top-mass = fertige Platte wiegt
annex-spare = kleinstes Spiel
annex-turn = gedreht
annex-corner = Ecke der fertigen Platte
annex-corner-of-top = Ecke { $name }
annex-x = x ab A entlang AB
annex-y = y ab A, rechtwinklig dazu
annex-edge = Kante
annex-edge-sawn = gesägt, { $left } Zugabe darauf
annex-edge-flush = auf Rohplattenkante { $edge }
annex-length = Länge
annex-lies = wie sie liegt
annex-piece = Stück
annex-after = nach Schnitt
annex-area = Fläche
annex-mass = wiegt
annex-rectangle = darin ein Rechteck von
annex-left = bleibender Stein
annex-tool = Werkzeug
annex-core-bit = Kernbohrer { $bit }
annex-bending = Spannung unter Eigengewicht, × 1,2 für die Handhabung, im dünnsten Stein; nur gesunder Stein
annex-stone-state = Stein
annex-state = { $name }
annex-flat-best = flach, beste Unterlagen
annex-flat-hands = flach, in Händen
annex-flat-ends = flach, an den Enden
annex-one-end = ein Ende angehoben
annex-on-edge = hochkant, an den Enden
annex-may = zulässig
annex-lifting = Heben von Hand, und was Hebegeräte brauchen
annex-slab = Rohplatte
annex-top = fertige Platte
annex-guideline = Richtwert
annex-guideline-is = { $each } für eine Person ({ $source }); keine Zusage, dass weniger sicher zu heben ist
annex-person = Person
annex-from-end = vom Ende
annex-from-side = von der Seite
annex-carries = trägt
annex-figure = Wert in diesem Team
annex-trolley-rated = Wagen, Aufschrift
annex-trolley-push = Schub, eben
annex-trolley-ramp = 1 zu 12: dazu
annex-trolley-tips = kippt quer bei
annex-vacuum-rated = Vakuumheber, Aufschrift
annex-sling-pull = Zug je Strang des Hebebands
annex-leans = hochkant fällt er über
annex-rails = Schmaler Stein neben Ausschnitten
annex-rail-is = { $width } breit, { $length } lang: { $together } mit seinem Nachbarn, { $alone } allein
annex-setting = Auf ihren Stützen
annex-support = Stütze
annex-carries-most = trägt höchstens
annex-with-person = mit Person darauf
annex-reaches = ragt hinaus
annex-person-stress = Spannung mit Person
annex-way-of = Der Weg: { $name }
annex-way-place = Stelle
annex-way-carried = am besten getragen
annex-way-spare = Platz
annex-way-clears = { $spare } Spiel
annex-way-tight = eng: { $spare } Spiel
annex-way-short = { $short } zu wenig
annex-way-note = Jede Stelle noch einmal messen, mit den Personen und dem Hebegerät, die tragen.
annex-limit = Siliciumdioxid
annex-vibration = Vibration
annex-vibration-is = { $reckoned } einschließlich Unsicherheit, { $job } bei dieser Arbeit; der Tag { $day }; Auslösewert { $action }, Grenzwert { $limit } ({ $source })
annex-noise = Lärm
annex-noise-is = { $level } für { $hours }; der Tag { $day }; Schutzpflicht ab { $duty } ({ $source })
annex-cited = { $document }{ $borrowed }; die geltenden Regeln prüfen
annex-cited-year = { $document }, { $year }{ $borrowed }; die geltenden Regeln prüfen
annex-masks = Masken, die ihn erreichen
annex-mask = { $mask } (Faktor { $factor })
annex-authority = nach den Regeln fragen bei

# In a terminal
answer-job = Auftrag
answer-fits = passt
answer-fits-is = fertige Platte { $length } × { $width }, an der engsten Stelle { $spare } Spiel
answer-weighs = wiegt
answer-weighs-is = fertige Platte bis { $top }, Rohplatte bis { $slab }
answer-time = Zeit
answer-time-is = { $stone } mit der Scheibe im Stein, { $setting } Einrichten
answer-straight = gerade, Kante { $edge }, { $length }
answer-relief = Entlastung bei { $edge }, { $length }
answer-curve = Rundung bei { $edge }, { $length }
answer-hole = Löcher bei { $edge }
answer-guide = { $first } ab { $from }, { $second } ab { $to }
answer-chord = Sehne { $length }
answer-frees = löst
answer-more = Mehr mit --full:
answer-sheet = fertige Platte  { $low } bis { $high }
    Schnitte        { $straight } gerade, { $curves } rund
    Sägezeit        { $sawing } mit der Scheibe im Stein, { $setting } Einrichten
    Stopps          { $stops }
weigh-stone = { $name }
weigh-place = Lage
weigh-no-fit = die fertige Platte passt nicht auf diese Rohplatte: gewogen wie gewünscht
weigh-region = Region
weigh-balance = Schwerpunkt
weigh-balance-is = { $end } vom Ende, { $side } von der Seite
weigh-mass = wiegt
weigh-mass-is = höchstens { $high }: damit das Heben planen; wohl { $likely }, mindestens { $low }
weigh-size = Größe
weigh-size-is = { $length } × { $width } × { $thick }, { $area }
weigh-tilt = hochkippen

# On a telephone
phone-plan = Plan { $plan }
phone-contents = Inhalt
phone-light = Hell oder dunkel
phone-back = Zurück
phone-next = Weiter
phone-bar = Weg durch das Blatt
phone-clear = Alle Häkchen auf diesem Telefon löschen
phone-forgets = Dieses Programm vergisst die Häkchen, wenn es geschlossen wird. Die Datei in einem Browser öffnen.
