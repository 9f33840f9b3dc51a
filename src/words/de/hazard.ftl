# Findings of hazards: a line, and in full.

working-alone = nur eine Person: niemand, der die Arbeit anhält, niemand, der Hilfe ruft
    .detail = Eingetragene Personen: { $people }, mindestens 2, solange sich eine Scheibe dreht (Ermessen). Jemanden suchen, der bereitsteht, oder in lift.check_call angeben, wer weiß, wo man ist, und wann diese Person anruft; meldet sich niemand: sie kommt.

second-person = Eine zweite Person { $at ->
    [plug-tap] an Stecker und Wasserhahn
    [plug] am Stecker
    [valve-tap] an Luftventil und Wasserhahn
    [valve] am Luftventil
    [tap] am Wasserhahn
   *[sight] in Sichtweite
 }, die den Bediener sieht und sonst nichts tut
    .detail = Von den { $people } Personen steht eine dort, im Blick des Bedieners, nicht in der Linie der Scheibe, mit Atemschutz und Gehörschutz. Eine erhobene Hand oder eine Hand auf der Schulter heißt Aus, und niemand fragt, warum.

who-is-bound = Baustelle, Betrieb oder eigene Arbeit: wissen, welche Regel gilt
    .detail = Auf einer Baustelle (29 CFR 1926.1153) genügt eine Zeile der Tabelle 1, wenn sie buchstabengetreu befolgt wird. Ein Betrieb, der Arbeitsplatten herstellt, fällt unter die Regel für die allgemeine Industrie (29 CFR 1910.1053): dort gibt es keine Tabelle, die Exposition wird beurteilt. Eine Privatperson ist an keine der beiden gebunden; die Tabelle ist die beste veröffentlichte Anleitung, und der Staub richtet denselben Schaden an.

no-dry-sweeping = Nicht trocken fegen, keine Druckluft
    .detail = { $rule }{ $borrowed } Etwa { $stone } Stein, davon bis zu { $silica } Siliciumdioxid, liegen nach den Schnitten herum: trocken steigt das wieder in die Luft. Staubsauger: { $vacuum }{ $vacuum_borrowed }.

vacuum-before-the-mask-comes-off = Staub überall abgesaugt, bevor die Maske abgenommen wird
    .detail = Keine Haube fängt die ganzen { $stone }, am wenigsten an den Enden eines Schnitts. Boden, Vorsprünge, Maschine und Kleidung werden abgesaugt, bevor irgendeine Maske abgenommen wird: { $vacuum }{ $vacuum_borrowed }.

cold-water = Hände warm und trocken; weiße oder taube Finger: Schluss für heute
    .detail = Wasserdichte Ärmel, für jede Stunde ein trockenes Paar Handschuhe, Pausen im Warmen. Kalte, weiße oder taube Finger: für heute aufhören, durch Kälte schadet Vibration früher.

frost = Kein Nassschnitt bei Frost
    .detail = Unter etwa 3 °C (Ermessen) gefriert Schlamm unter den Füßen, und das Wasser bleibt in Schlauch und Düse stehen: kein Wasser, kein Schneiden. Maschine und Schlauch vor der Nacht entleeren.

local-rules-first = Örtliche Vorschriften, Herstellerangaben und fachkundige Personen gehen diesem Blatt vor
    .detail = Dieses Blatt ist keine Erlaubnis. Region, für die seine Werte gelten: { $region }. Die geltenden Regeln hier erfragen: { $authority }. Hebezeuge, Elektrik, Tragwerk und Stein, der Asbest enthalten kann, sind Sache zugelassener Fachleute.

slurry-clean-up = Schlamm aufgenommen, bevor er trocknet; nötige Eimer: { $buckets }
    .detail = Etwa { $kilos }: { $water } l Wasser ({ $flow } l/min, solange die Scheibe schneidet) und { $stone } Stein, { $buckets } Eimer zu { $bucket } l. Getrocknet ist er genau der Staub, den das Wasser unten gehalten hat. Plane unter die Böcke, zusammenschieben und mit einem Nasssauger aufnehmen, solange er nass ist, Kleidung, Stiefel und Maschine abspülen, den Rest absetzen lassen; nichts in den Abfluss.

dust-bags = Beutel des Entstaubers verschlossen und weg; nötige Beutel: { $bags }
    .detail = Etwa { $stone } Stein, wenn die Haube alles fing, { $bags } Beutel zu höchstens { $bag }. Den Beutel mit Atemschutz wechseln, im Freien; ihn verschließen, bevor er aus dem Entstauber kommt; ihn nie ausschütteln und nie zur Wiederverwendung leeren.

falling-stone = Niemand unter dem Stein, nie eine fallende Platte auffangen
    .detail = { $mass } kg/m² bei der größten gemessenen Dicke und dem schwersten Stein dieser Art. Reststück und bleibender Stein sind beide vor dem ersten Durchgang von unten getragen; niemand hat Füße oder Finger darunter oder dazwischen; nie dort stehen, wohin eine hochkant stehende Platte fallen kann, und nie versuchen, eine aufzufangen.

wet-floor = Schlamm ist rutschig: Stiefel, Wasser abgeleitet, Boden gespült, bevor etwas gehoben wird
    .detail = Rutschfeste Stiefel, Wasser von den Stellen weggeleitet, an denen Leute stehen und tragen{ $power ->
            [mains] , Kabel hochgehängt, aus dem Nassen heraus
           *[other] {""}
        }. Boden abgespült und freigeräumt, bevor ein Stück gehoben wird.

vibration-over-limit = Vibration A(8) { $day } m/s² in { $all } min des Tages, Grenzwert { $limit } m/s²
    .detail = { $a } an { $minutes } Minuten des Tages mit dieser Maschine, { $points } Punkte mit allem anderen: A(8) { $day }, Grenzwert { $limit }{ $borrowed }, erreicht nach { $to_limit } Minuten. Die Arbeit auf { $people } Personen oder Tage verteilen, höchstens { $to_limit } Minuten für jede; unter dem Auslösewert { $action } braucht es { $people_action }. Die Tage oder Personen als dust.days eintragen. Warm halten, scharfe Scheibe, lockerer Griff. Die geltenden Regeln prüfen.

vibration-over-action = Vibration A(8) { $day } m/s² in { $all } min des Tages, Auslösewert { $action } m/s²
    .detail = { $a } an { $minutes } Minuten des Tages mit dieser Maschine, { $points } Punkte mit allem anderen zusammen: A(8) { $day }, Auslösewert { $action }{ $borrowed }, erreicht nach { $to_action } Minuten. Die Arbeit auf { $people_action } Personen oder Tage verteilen, jeweils höchstens { $to_action } Minuten; sich warm halten, scharfe Scheibe, lockerer Griff. Die geltenden Regeln prüfen.

vibration-unknown = Vibration der Maschine: in ihrer Anleitung nachlesen
    .detail = Vibrationswert { $a }: keine handgeführte Maschine ist ohne Vibration. Den Wert des Herstellers nehmen oder { $usual } m/s² für einen Winkelschleifer auf Stein, und machine.vibration eintragen.

disc-over-marked-rpm = { $disc }: Maschine { $machine } U/min, auf der Scheibe stehen { $marked }
    .detail = Die Maschine dreht um { $over } U/min schneller als die { $marked }, die auf der Scheibe stehen ({ $speed }, gekennzeichnet für { $marked_speed }). Die Scheibe kann auseinanderfliegen: eine Scheibe verwenden, die für { $machine } oder mehr gekennzeichnet ist, oder eine langsamere Maschine.

disc-mark-unknown = { $disc }: höchste Drehzahl nicht bekannt
    .detail = Maschine { $machine } U/min, Aufschrift der Scheibe nicht bekannt. Die Aufschrift auf der Scheibe ablesen und disc.max_rpm eintragen; eine Scheibe ohne Aufschrift wird nicht benutzt.

machine-speed-unknown = Drehzahl der Maschine ist nicht bekannt
    .detail = Maschine { $machine } U/min: ohne ihre wahre Drehzahl lässt sich keine Scheibe prüfen. Typenschild ablesen und machine.rpm eintragen.

kickback-pinched-disc = Neben der Linie der Scheibe stehen; klemmt sie: anhalten, freimachen, erst bei voller Drehzahl wieder hinein
    .detail = Neben der Linie der Scheibe stehen, beide Hände an der Maschine, Schutzhaube montiert, niemand in dieser Linie. Nach dem Klemmen: anhalten, Scheibe stillstehen lassen, befreien, nur mit voller Drehzahl wieder in den Schnitt gehen; nie im Schnitt anlaufen lassen.

resin-disc-expired = { $disc }: letzter Tag war { $expires }
    .detail = Datum der Arbeit { $date }, letzter Tag der Scheibe { $expires }. Kunstharzgebundene Scheiben halten ab Herstellung höchstens { $years } Jahre: die Scheibe zerbrechen und eine neue oder eine Diamantscheibe nehmen.

resin-disc-age-unknown = { $disc }: kunstharzgebunden, letzter Tag nicht bekannt
    .detail = Kunstharzgebundene Scheiben halten ab Herstellung höchstens { $years } Jahre, und Feuchtigkeit verkürzt das. Monat oder Quartal auf Ring oder Etikett ablesen und disc.expires eintragen; eine kunstharzgebundene Scheibe ohne Datum wird nicht benutzt.

resin-disc-age = { $disc }: nicht nach dem { $expires }
    .detail = Letzter Tag der Scheibe { $expires }: mit dem Tag der Arbeit vergleichen. Bis dahin trocken und flach liegend aufbewahren; eine Scheibe, die feucht wurde oder heruntergefallen ist, wird zerbrochen und weggeworfen.

disc-before-use = Scheibe angesehen: keine Risse, Bohrung und Flansche passen, Schutzhaube in ihrer Größe
    .detail = Keine Risse, passende Bohrung, beide Flansche von dieser Maschine und sauber, Drehrichtungspfeil richtig herum, Schutzhaube in der Größe der Scheibe, Schlitze im Rand höchstens { $gap }, nie eine abgenutzte Scheibe einer größeren Maschine. Bei { $speed } ist jedes lose Stück ein Geschoss.

support-both-sides = Beide Seiten des Schnitts von unten getragen, nahe am Schnitt
    .detail = Unterlagen unter beiden Seiten nahe am Schnitt und an den Rändern des Steins, damit die Schnittfuge bis zum Ende offen bleibt. Das Reststück liegt vor dem ersten Durchgang auf eigenen Unterlagen; keine Hand, kein Fuß, kein Knie darunter.

rim-speed-over-limit = { $disc }: Umfangsgeschwindigkeit { $speed }, höchste gekennzeichnete Klasse { $highest }
    .detail = Eine Scheibe von { $diameter } läuft bei { $machine } U/min mit { $speed }; kein Farbstreifen erlaubt mehr als { $highest }. Kleinere Scheibe oder langsamere Maschine.

rim-speed-above-hand-discs = { $disc }: Umfangsgeschwindigkeit { $speed }, Scheiben für Handmaschinen sind für { $hand } gebaut
    .detail = Eine Scheibe von { $diameter } läuft bei { $machine } U/min mit { $speed }. Über { $hand } m/s (roter Streifen) nur eine Scheibe mit grünem Streifen ({ $highest } m/s): nach dem Streifen sehen oder höchstens { $slower } U/min wählen.

disc-run-down = Die Scheibe läuft nach dem Ausschalten nach: warten, bis sie steht
    .detail = Sekunden, bei einer großen Scheibe länger: die Maschine frei von Stein, Schlauch und Kleidung halten, bis die Scheibe stillsteht, dann erst ablegen. { $power ->
            [mains] Stecker heraus
            [battery] Akku heraus
            [air] Luftschlauch ab
           *[engine] Motor aus
        }, bevor die Scheibe angefasst wird.

new-disc-run = Neue Scheibe zuerst ohne Last laufen lassen, niemand in ihrer Linie
    .detail = { $minutes } Minute mit voller Drehzahl, Schutzhaube montiert, Maschine vom Körper weg gehalten, niemand in der Ebene der Scheibe, nach jedem Aufspannen. Vibriert oder singt sie: ausschalten, stillstehen lassen, noch einmal ansehen.

never-steer-the-disc = Die Scheibe wird nie gelenkt, verkantet oder seitlich gedrückt
    .detail = Seitliche Last biegt und bricht eine Scheibe. Erlaubte seitliche Last: keine. Rundungen werden wie gezeichnet aus geraden Eintauchschnitten gemacht; nie mit der Seitenfläche einer Trennscheibe schleifen.

disc-bore = { $disc }: Bohrung { $bore } auf einer Aufnahme von { $seat }
    .detail = Bohrung { $bore }, Aufnahme { $seat }, üblich { $usual }, höchstens { $play } Unterschied. Eine lose Scheibe läuft unrund und bricht, eine enge geht nicht auf die Aufnahme. Die richtige Scheibe für die Maschine: kein Reduzierring, kein Nachfeilen, keine Beilage.

protector-unknown = Gehörschutz: welcher, und was steht darauf?
    .detail = SNR, H M L oder NRR auf der Schachtel ablesen und hier eintragen: { $level } am Ohr beim Schneiden, und ab { $duty } dB(A) über den Tag ist Gehörschutz Pflicht. In der Auftragsdatei: [protector].

protector-too-weak = Gehörschutz zu schwach: darunter { $day } dB(A) über den Tag
    .detail = { $level } beim Schneiden, { $holds } dB zurückgehalten{ $borrowed }: { $ear } am Ohr, { $day } über den Tag, höchstens { $duty } erlaubt. Gehörschutz mit höherem Dämmwert, Stöpsel unter Kapseln oder weniger Minuten.

protector-too-strong = Gehörschutz zu stark: { $ear } dB(A) am Ohr
    .detail = { $level } beim Schneiden, { $holds } dB zurückgehalten{ $borrowed }: { $ear } am Ohr. Unter { $quiet } werden Rufe und Warnungen überhört: Handzeichen vereinbaren oder einen Gehörschutz mit niedrigerem Dämmwert nehmen.

protector-foreign-rating = der Dämmwert des Gehörschutzes ist nicht der, mit dem hier gerechnet wird
    .detail = SNR, H M L (EN 352) und NRR (amerikanisch) werden unterschiedlich geprüft und nie gegeneinander getauscht. Gerechnet wurde nach dem eigenen Verfahren des Gehörschutzes, auf die strengere Art: { $holds } dB zurückgehalten. Nach dem Dämmwert fragen, der am Ort der Arbeit zählt.

noise-over-limit = Lärm des Tages { $under } dB(A) unter dem Gehörschutz, Grenzwert { $limit } dB(A)
    .detail = { $level } dB(A) an { $hours } Stunden des Tages mit dieser Maschine: { $day_exact } dB(A) über den Tag ohne Gehörschutz, { $under } dB(A) darunter, Grenzwert { $limit } dB(A){ $borrowed }. Einen Gehörschutz mit höherer Dämmung nehmen ([protector]), Stöpsel unter dem Kapselgehörschutz, oder das Sägen auf Tage verteilen (dust.days). Die geltenden Regeln prüfen.

noise-unknown = Lärm der Maschine: in ihrer Anleitung nachlesen
    .detail = Pegel { $level } dB(A): kein Winkelschleifer ist lautlos. Den Wert des Herstellers nehmen oder { $usual } dB(A) für eine große Scheibe auf Stein, und machine.noise eintragen. Bis dahin Gehörschutz tragen.

extractor-filter = Entstauber mit sauberem Filter, das { $holds } zurückhält, im Betrieb abgereinigt
    .detail = Luftmenge { $has }, mindestens { $asks }. Sie zählt nur mit sauberem Filter, das mindestens { $holds } zurückhält, mit Zyklon oder Filterabreinigung und mit der Haube auf dem Stein: { $vacuum }{ $borrowed }; Klasse M lässt höchstens { $m } durch. An beiden Enden eines Schnitts und beim Eintauchen steht die Haube offen: dort langsam arbeiten.

control-cut-less = weniger schneiden
    .detail = { $face } m² Schnittfläche werden gesägt, { $minutes } Minuten mit der Scheibe im Stein: jede Kante, die bleibt, wie sie ist, macht keinen Staub

control-shop = von einem Betrieb nass schneiden lassen
    .detail = eine Brückensäge unter Wasser schneidet das in wenigen Minuten, und { $grams } Stein kommen gar nicht erst an den eigenen Platz

control-at-the-disc = { $method ->
    [water] Wasser an der Scheibe
    [shroud] Absaughaube an der Scheibe
   *[none] Wasser oder Absaugung an der Scheibe
 }
    .detail = Wasser an einer dafür freigegebenen Maschine oder eine Absaughaube mit mindestens { $airflow } für eine Scheibe von { $disc }

control-outdoors = im Freien
    .detail = in bewegter Luft, Wind von der Seite, weg von Türen und Luftansaugöffnungen

control-distance = Abstand
    .detail = niemand ohne Atemschutz, wohin Staub oder Nebel ziehen kann, und niemand in der Linie der Scheibe

control-mask = die Maske zuletzt
    .detail = passend für die Person, die sie trägt, bei dicht sitzender Maske glatt rasiert, getragen, bis der Platz sauber ist

controls-open = stärker als die Maske, noch offen: { $what }
    .detail = Tun, oder eintragen, warum nicht: jedes nimmt Staub weg, den sonst die Maske halten müsste.

no-dust-control = Trockenschnitt, und nichts hält den Staub zurück
    .detail = Staubschutzmaßnahme: keine, mindestens eine von zweien ist verlangt. Wasser an einer dafür freigegebenen Maschine verwenden, oder eine Absaughaube mit einem Entstauber, der für die Scheibe stark genug ist, oder von einem Betrieb nass schneiden lassen. Trocken und ohne Haube steht in keiner Zeile der Tabelle; kein Atemschutz gleicht das aus, und der Staub erreicht alle in der Nähe.

water-flow = Wasser am Scheibenrand, bevor die Scheibe den Stein berührt, bis sie ihn verlassen hat
    .detail = Gerechnet ist mit { $flow } Litern je Minute. Die Regel nennt für einen Winkelschleifer keinen Wert; für handgeführte Trennschleifer werden { $advised } Liter je Minute empfohlen. Wasser am Scheibenrand, bevor die Scheibe den Stein berührt, bis sie ihn verlassen hat. Staub oder Dampf zu sehen: anhalten, das Wasser auf den Rand richten, die Düse freimachen; mehr als { $advised } Liter je Minute halten nicht mehr Staub zurück.

water-too-little = { $flow } Liter je Minute sind weniger, als für einen handgeführten Trennschleifer empfohlen
    .detail = { $flow } Liter je Minute, { $advised } werden für handgeführte Trennschleifer empfohlen: weniger hält weniger Staub zurück. Das Wasser auf den Rand richten, die Düse freimachen, den Behälter füllen.

shroud-airflow-unknown = Luftmenge des Entstaubers ist nicht bekannt
    .detail = Luftmenge nicht bekannt, eine Scheibe von { $disc } verlangt mindestens { $asks } m³/h. Ohne diesen Wert ist die Wirkung der Absaughaube nicht nachgewiesen: Typenschild des Entstaubers ablesen und dust.airflow eintragen, oder nass schneiden.

shroud-airflow-too-small = Entstauber fördert { $has }, die Scheibe verlangt { $asks }
    .detail = Luftmenge { $has }, mindestens { $asks } m³/h für eine Scheibe von { $disc }. Einen stärkeren Entstauber oder eine kleinere Scheibe verwenden, oder nass schneiden.

not-in-table-indoors = nicht in der Tabelle der Behörde: die Exposition muss beurteilt werden
    .detail = Diese Maschine, diese Maßnahme, in Räumen, { $hours } h am Tag: keine Zeile. Niemand hat veröffentlicht, welcher Atemschutz reicht. Für das Freie gibt es Zeilen mit Wasser und mit Absaughaube: Ort oder Maßnahme so ändern, dass die Tabelle sie aufführt, oder die Exposition von einer fachkundigen Person beurteilen lassen.

not-in-table = nicht in der Tabelle der Behörde: die Exposition muss beurteilt werden
    .detail = Diese Maschine, diese Maßnahme, im Freien, { $hours } h am Tag: keine Zeile. Niemand hat veröffentlicht, welcher Atemschutz reicht. Zu einer Maßnahme wechseln, die die Tabelle für diese Maschine aufführt, oder die Exposition von einer fachkundigen Person beurteilen lassen.

indoors-exhaust = in Räumen: die Luft muss zusätzlich abgesaugt werden
    .detail = Ort: in Räumen. Wenn irgend möglich im Freien schneiden. Sonst den sichtbaren Staub ins Freie absaugen, den Raum abschotten und niemanden ohne Atemschutz hineinlassen.

marble-veins = Adern im Marmor können weit mehr Siliciumdioxid enthalten als der Stein
    .detail = Marmor als Ganzes hat höchstens { $share } % Siliciumdioxid; seine Adern können weit mehr haben. Einen Schnitt entlang einer Ader oder durch eine Ader wie einen Schnitt in Stein behandeln, der reich an Siliciumdioxid ist.

stone-kind-unknown = { $stone }: das Bindemittel ist nicht bekannt
    .detail = Harzgebundener Stein mit 1 % Siliciumdioxid oder mehr gilt als Quarzkomposit. Das Datenblatt besorgen und stone.binder eintragen. Wenn es so ist: { $rule }

silica-unknown = { $stone }: nach dem Quarzanteil fragen
    .detail = Siliciumdioxid laut Eingabe höchstens { $share } %: kaum ein Stein ist frei davon. Bis ein Datenblatt das bestätigt, den Stein als reich an Siliciumdioxid (über { $threshold } %) behandeln, und stone.silica eintragen.

engineered-stone-banned = Quarzkomposit darf hier nicht geschnitten werden
    .detail = { $rule }

engineered-stone-dry = Quarzkomposit ohne Wasser
    .detail = Nur nass schneiden. { $rule }

engineered-stone-powered-respirator = Quarzkomposit ohne Gebläse-Atemschutz
    .detail = Gebläse-Atemschutz: keiner vorhanden, aber verlangt. { $rule }

engineered-stone = Quarzkomposit: strengere Regeln gehen vor
    .detail = { $rule } Die sichere Wahl ist, die Arbeit einem zugelassenen Betrieb zu überlassen.

high-silica-stone = { $stone }: bis zu { $high } % Siliciumdioxid möglich
    .detail = Siliciumdioxid { $low } bis { $high } % des Steins, über { $threshold } % gilt er als reich daran (Wert aus Kalifornien, hier überall verwendet). Der Staub vernarbt die Lunge für immer: Staubschutzmaßnahme und Atemschutz vom ersten Handgriff bis zum Ende des Saubermachens, und niemand ohne Atemschutz in der Nähe.

california-silica-rule = Arbeit mit hoher Exposition: nass, in abgegrenztem Bereich, mit dem stärksten Atemschutz
    .detail = Siliciumdioxid bis zu { $high } %. { $rule }

silica-rich-stone-dry = Arbeit mit hoher Exposition ohne Wasser: Kalifornien verlangt Nassverfahren
    .detail = Siliciumdioxid bis zu { $high } %. { $rule }

sparks-into-extractor = Stahl im Stein: Funken gelangen in den Entstauber
    .detail = Stahl, der bei laufendem Entstauber geschnitten werden darf: keiner. Funken setzen seinen Beutel in Brand. Den Stahl zuerst herausnehmen, mit den Schnitten Abstand davon halten oder nass schneiden.

sparks-from-steel = Stahl im Stein wirft Funken
    .detail = Nichts Brennbares im Umkreis von { $clear } (Ermessen), ein voller Wassereimer und ein Feuerlöscher griffbereit. Nur eine Scheibe, die ihr Hersteller für Stahl zulässt. Nicht drücken. Eine Stunde nach dem letzten Schnitt noch einmal nach Rauch sehen.

steel-not-known = Stahl im Stein: nachsehen, keiner oder wo?
    .detail = Auf der Rückseite einer Platte sind oft Stäbe und Gewebe eingeklebt. Die Rückseite ansehen, einen Magneten an jeder Schnittlinie entlangführen. In der Auftragsdatei: stone.steel ("none" oder "some").

supply-unprotected = Wasser bei Netzstrom ohne FI-Schutzschalter (RCD), GFCI oder 110 V mit geerdeter Mitte
    .detail = Schutz: keiner bekannt, verlangt: FI-Schutzschalter (RCD) mit { $rcd } oder weniger, GFCI Klasse A ({ $gfci }) oder 110 V mit geerdeter Mitte ({ $volts } gegen Erde). Hier: { $rule }{ $borrowed }. Wo Wasser in der Nähe ist, gilt: ohne Schutz wird nicht geschnitten.

supply-unprotected-dry = Netzstrom ohne FI-Schutzschalter (RCD), GFCI oder 110 V mit geerdeter Mitte
    .detail = Schutz: keiner bekannt, verlangt: FI-Schutzschalter (RCD) mit { $rcd } oder weniger, GFCI Klasse A ({ $gfci }) oder 110 V mit geerdeter Mitte ({ $volts } gegen Erde). Hier: { $rule }{ $borrowed }. Einen solchen Schutz in die Zuleitung setzen und zuerst seine Prüftaste drücken.

wet-mains = Prüftaste (FI/RCD, GFCI), wo es eine gibt, gedrückt: löst aus. Stecker trocken, vom Boden weg
    .detail = Prüftaste vor dem ersten Schnitt drücken, der Schutz muss auslösen. Stecker und Kupplungen vom Boden weg und trocken, Leitungen in einer Schlaufe aufgehängt, damit das Wasser vor dem Stecker abtropft, trockene Hände an Stecker und Schalter. Löst der Schutz beim Schneiden aus: anhalten, die Ursache finden, ihn nie mit Gewalt eingeschaltet halten.

engine-indoors = Verbrennungsmotor in Räumen: Kohlenmonoxid
    .detail = Verbrennungsmotoren in Räumen oder in einem geschlossenen Hof: keine erlaubt. Abgas tötet ohne Vorwarnung; im Freien schneiden oder eine Maschine mit Akku, Druckluft oder Netzanschluss verwenden.

engine-fumes = Verbrennungsmotor: Abgas und Kraftstoff
    .detail = Im Freien mit Luft von allen Seiten, nie in einer Grube, einem Zelt oder einer ummauerten Ecke. Abgas weg von den Gesichtern beider Personen. Nur bei kaltem Motor tanken und an einer anderen Stelle starten.

water-on-mains-unrated = Wasser an einer Netzmaschine, die nicht dafür gebaut ist: Stromschlag
    .detail = Freigabe für den Nassschnitt: keine, verlangt: eine vom Hersteller. Die genormten Sicherheitshinweise verbieten Wasser an einem gewöhnlichen Winkelschleifer mit Netzanschluss; ein FI-Schutzschalter (RCD) oder ein GFCI macht daraus keine Nassmaschine. Eine für den Nassschnitt freigegebene Maschine verwenden oder Absaughaube und Entstauber.

water-not-rated = Wasser an einer Maschine, die nicht dafür gebaut ist
    .detail = Freigabe für den Nassschnitt: keine, verlangt: eine vom Hersteller. Eine Maschine verwenden, deren Hersteller Wasser erlaubt, oder Absaughaube und Entstauber.

battery-wet = Akku heraus, bevor die Scheibe angefasst wird, Akkus trocken halten
    .detail = Akkus werden abseits vom Schlamm mit trockenen Händen gewechselt; ein Akku, der innen nass wurde, wird nicht mehr benutzt und nicht mehr geladen. Der Akku kommt heraus, bevor die Scheibe angesehen oder gewechselt wird.

air-hose = Luftschlauch heil, Kupplungen gesichert, Wasser aus der Luftleitung
    .detail = Die eingetragene Drehzahl von { $rpm } U/min gilt nur beim Druck auf dem Typenschild: mehr Druck, mehr Drehzahl. Druckregler und Sicherheitskupplungen angebaut, Abluft weg von Staub und Händen geleitet, Schlauch entleert und drucklos, bevor die Scheibe angefasst wird. Nie Staub wegblasen, nie Kleidung abblasen.

respirator-class = Klasse auf dem Gerät ablesen: { $mask }
    .detail = Sein Faktor ist je nach Klasse { $least } bis { $most } ({ $marks }), verlangt ist { $apf } oder mehr{ $borrowed }. Es zählt mit { $least }, bis die Kennzeichnung unter dust.respirator eingetragen ist: eines verwenden, dessen Kennzeichnung { $apf } oder mehr bedeutet.

respirator-not-in-scheme = { $mask }: kein Faktor im Verzeichnis dieser Region
    .detail = { $mask }: hier Faktor 0, ein Faktor ist verlangt{ $borrowed }. Faktoren aus zwei Verzeichnissen werden nie vermischt; eine Maske ohne Zeile in diesem Verzeichnis zählt wie keine. Zuerst die offenen Stufen der Rangfolge der Maßnahmen; dann ein Atemschutz, der am Ort der Arbeit zugelassen ist.

respirator-unlisted = { $mask }: kein Faktor im Verzeichnis dieser Region
    .detail = Faktor 0, nach der Tabelle keiner verlangt{ $borrowed }. Das Gerät mag Staub durchaus zurückhalten, aber keine Regel hier zählt es: nach einem Atemschutz fragen, der am Ort der Arbeit zugelassen ist.

respirator-missing = kein Atemschutz vorhanden
    .detail = Atemschutz: keiner, verlangt ist Faktor { $apf } oder mehr{ $borrowed }. Zuerst die offenen Stufen der Rangfolge der Maßnahmen; dann einen besorgen, der der Person passt, die ihn trägt, und dust.respirator eintragen.

respirator-missing-unassessed = kein Atemschutz vorhanden, und nichts legt fest, welcher reicht
    .detail = Atemschutz: keiner; der Faktor ist durch nichts Veröffentlichtes festgelegt: die Exposition muss beurteilt werden. Zuerst die offenen Stufen der Rangfolge der Maßnahmen; dann die Exposition beurteilen lassen, den Atemschutz besorgen, der sich daraus ergibt, und dust.respirator eintragen.

respirator-none-asked = kein Atemschutz vorhanden; die Tabelle verlangt hier keinen
    .detail = Atemschutz: keiner, nach der Tabelle keiner verlangt{ $borrowed }. Die Tabelle gilt nur, solange ihre Maßnahme fehlerfrei wirkt, und der schädliche Staub ist zu fein, um ihn zu sehen: einen passenden Atemschutz bereithalten und tragen, solange sich die Scheibe dreht, und beim Saubermachen.

respirator-not-fit-tested = die Maske am Träger auf Dichtsitz prüfen lassen
    .detail = { $mask }: der Faktor zählt nur nach einem Fit-Test und auf glatt rasierter Haut; bis dahin ist kein Verlass darauf. Prüfen lassen oder eine Haube mit Gebläse verwenden.

respirator-clean-shaven = Glatt rasiert, Dichtsitzkontrolle der Maske bei jedem Aufsetzen
    .detail = { $mask }: Fit-Test bestanden, und das gilt nur auf glatt rasierter Haut, Stoppeln zählen als Bart. Bei jedem Aufsetzen prüfen, ob die Maske dicht sitzt; eine neue Größe oder Marke oder ein anderes Gesicht braucht einen neuen Fit-Test.

respirator-below-required = { $mask }: zählt hier mit Faktor { $has }, verlangt ist { $apf }
    .detail = { $mask }: Faktor { $has }, verlangt ist { $apf } oder mehr{ $borrowed }. Zuerst die offenen Stufen der Rangfolge der Maßnahmen: eine stärkere Maßnahme kommt vor einer stärkeren Maske. Dann ein Atemschutz mit Faktor { $apf } oder mehr; Faktoren aus zwei Verzeichnissen werden nie vermischt.

nuisance-mask = eine Maske ohne Klasse ist kein Atemschutz
    .detail = Faktor 0: sie trägt keine Klasse, und feiner Staub geht durch sie hindurch und an ihr vorbei. Sie zählt so, als wäre gar kein Atemschutz da. Einen Atemschutz mit einer Klasse besorgen, die hier zählt, und dust.respirator eintragen.

asbestos-not-tested = { $stone } kann Asbestminerale enthalten: vor einer Prüfung nicht schneiden
    .detail = Asbest, der geschnitten werden darf: keiner. Vor dem ersten Schnitt einen Splitter dieser Platte in einem Labor prüfen lassen oder das Prüfergebnis des Steinbruchs besorgen, und stone.asbestos, stone.report und stone.date eintragen. Ohne eindeutiges Ergebnis ist es Arbeit für zugelassene Fachleute.

asbestos-declaration = { $stone }: die Erklärung des Steinbruchs zu Asbestmineralen verlangen
    .detail = { $stone } gehört zu den Gesteinen, die sie enthalten können. Beim Händler die Erklärung des Steinbruchs verlangen und stone.asbestos, stone.report und stone.date eintragen.

binder-unknown = { $stone }: das Bindemittel ist nicht bekannt, also gilt er als Quarzkomposit
    .detail = Ein Stein mit 1 % Siliciumdioxid oder mehr, dessen Bindemittel niemand genannt hat, gilt als Quarzkomposit, bis stone.binder etwas anderes sagt. { $rule }

resin-in-fired-slab = { $stone }: ist er frei von Harz?
    .detail = Feinsteinzeug und Sinterstein sind vom Verbot nur ausgenommen, wenn sie kein Harz enthalten. Das Datenblatt besorgen und stone.binder eintragen. { $rule }

supply-unprotected-outdoors = Netzstrom im Freien ohne FI-Schutzschalter (RCD), GFCI oder 110 V mit geerdeter Mitte
    .detail = Schutz: keiner bekannt, verlangt: FI-Schutzschalter (RCD) mit { $rcd } oder weniger, GFCI Klasse A ({ $gfci }) oder 110 V mit geerdeter Mitte ({ $volts } gegen Erde). Hier: { $rule }{ $borrowed }. Im Freien machen nasser Boden und beschädigte Leitungen einen Fehler tödlich: einen Schutz in die Zuleitung setzen, seine Prüftaste drücken und machine.protected eintragen.

speed-assumed = Drehzahl von Schild oder Scheibe ablesen: { $what } ist angenommen
    .detail = Angenommen: { $what }. Das Typenschild der Maschine und die Aufschrift der Scheibe ablesen und machine.rpm und disc.max_rpm eintragen: die Prüfung von Scheibe gegen Maschine gilt nur für die wahren Werte.

disc-larger-than-machine = { $disc }: { $diameter }, die Maschine ist für höchstens { $largest } gebaut
    .detail = Durchmesser { $diameter }, größte Scheibe der Maschine und ihrer Schutzhaube { $largest }. Eine kleinere Scheibe nehmen oder eine Maschine, die für diese gebaut ist; nie die Schutzhaube abnehmen.

respirator-filter = eine N95 reicht hier nicht: verlangt ist ein Filter der 100er-Reihe oder HEPA
    .detail = Atemschutz: N95, verlangt: Faktor 10 oder mehr mit einem Filter der 100er-Reihe oder HEPA. Eine Halbmaske mit P100-Filtern oder Besseres besorgen und dust.respirator eintragen.

no-water-flow = Nassverfahren ohne Durchfluss: das ist Trockenschneiden
    .detail = Wasser: 0 Liter je Minute. Trocken und ohne Absaughaube steht in keiner Zeile der Tabelle, und kein Atemschutz gleicht das aus. Wasser an den Scheibenrand bringen und dust.water eintragen, oder Absaughaube und Entstauber verwenden.

speed-assumed-of = { $what } { $speed } Umdrehungen je Minute

bystanders = Sonst niemand in der Nähe: Kinder, Nachbarn und Tiere weg und gewarnt
    .detail = Staub, Nebel und Lärm reichen weiter als der Schneidplatz, und ein Stück einer gebrochenen Scheibe fliegt Dutzende Meter weit. Den Platz absperren, den Nachbarn sagen, wann es losgeht, und die Scheibe anhalten, wenn jemand ohne Maske, Korbbrille und Gehörschutz hereinkommt.

windows-and-intakes = Fenster, Türen und Luftansaugöffnungen zu, Lüftung aus
    .detail = Der schädliche Staub ist zu fein, um ihn zu sehen, und zieht weit. Fenster und Türen des Hauses schließen und die Nachbarn darum bitten; Lüftung, Wärmepumpe und Klimaanlage nahe am Platz ausschalten; auf der windabgewandten Seite davon schneiden.

working-height = Stein zwischen Hüfte und Ellbogen, fester Boden, keine Leiter
    .detail = Böcke in Arbeitshöhe und ebener Boden unter beiden Füßen. Nie von einer Leiter oder einem Tritt aus schneiden, nie über der Schulter, nie unterhalb des Steins kniend: ein Rückschlag wirft um, und die Maschine kommt hinterher.

eyes = Geschlossene Korbbrille, Gesichtsschutzschirm darüber, Augenspülung in Reichweite
    .detail = Eine Bügelbrille lässt Splitter und Körner von unten und von der Seite hinein. Korbbrillen für alle in der Nähe; ein Schirm allein reicht nicht. Körner im Auge: spülen, nie reiben; einen Splitter, der bleibt, holt der Arzt heraus.

side-handle = Zusatzgriff und Schutzhaube dran, zwei Hände, Schalter nie arretiert
    .detail = Eine Hand hält keinen Rückschlag. Die Schutzhaube steht zwischen Scheibe und Gesicht, und kein Schnitt ist es wert, sie abzunehmen. Ein arretierter Schalter lässt die Scheibe weiterlaufen, wenn die Maschine hinfällt{ $power ->
            [mains] ; nach einem Stromausfall ausschalten, bevor der Stecker wieder hineinkommt
           *[other] {""}
        }.

leads = Leitung und Schläuche hinter dir, heil, abgerollt, weg von Scheibe und Füßen
    .detail = Über die Schulter und nach hinten, nie über den Schnitt oder den Weg. Eine beschädigte Leitung wird nicht benutzt. Kupplungen trocken und vom Boden weg; eine Kabeltrommel ganz abrollen, sonst wird sie heiß.

hoses = Schläuche hinter dir, heil, weg von Scheibe und Füßen
    .detail = Über die Schulter und nach hinten, nie über den Schnitt oder den Weg. Ein Schlauch, der leckt oder geknickt ist, wird nicht benutzt.

leaning-slabs = Platten hochkant angebunden oder auf einem A-Bock; immer nur eine bewegen, niemand, wo sie hinfallen können
    .detail = Sechs Menschen wurden in Großbritannien in fünf Jahren von Platten getötet, die beim Lagern oder Bewegen umfielen. A-Bock auf ebenem Boden, Fuß von der Wand weg, angebunden; nie die Sicherung eines Stapels lösen, wenn jemand davor steht; niemand zwischen zwei Platten. Eine, die zu fallen beginnt, wird losgelassen: weglaufen, nie halten.

not-for-everyone = Nicht für diese Arbeit: Schwangere, Kranke an Lunge, Herz, Hand oder Rücken, Minderjährige, Müde, Betrunkene
    .detail = Lungenkrankheit, weiße Finger, ein schwaches Herz, ein Herzschrittmacher, dessen Hersteller vor Maschinen warnt, ein kaputter Rücken, Schwangerschaft: zuerst den Arzt fragen. Niemand unter dem Mindestalter, niemand, der müde ist, niemand nach Alkohol, Drogen oder Mitteln, die langsam machen.

first-aid = Erste Hilfe bereit: Druckverband, Augenspülung, Telefon, die Adresse aufgeschrieben
    .detail = Eine verletzte Schlagader tötet in Minuten: fest auf die Wunde drücken, Verband oder Abbindung, Notruf. Strom aus, bevor jemand mit Stromschlag angefasst wird. Unter Stein eingeklemmt: zuerst Notruf, nur mit einem Hebegerät anheben. Wer Erste Hilfe kann, wird vor dem Beginn genannt.

moment-before = Vorher

moment-cutting = Beim Schneiden

moment-moving = Beim Bewegen von Stein

moment-after = Nachher

settled-asbestos = Frei von Asbestmineralen geprüft: { $report }, { $date }

settled-controlled = Stein mit { $share } Siliciumdioxid wird mit Schutzmaßnahme geschnitten, wie die Regel verlangt

settled-noise = { $level } beim Schneiden, { $under } dB(A) über den Tag unter dem Gehörschutz, Grenzwert { $limit } dB(A)

settled-mask = { $mask }: zählt mit Faktor { $has }, verlangt ist { $apf }

settled-check-call = Allein, mit verabredetem Anruf: { $who }

settled-supply = Netzstrom geschützt

settled-speed = { $disc }: Aufschrift { $marked } Umdrehungen je Minute, Maschine { $machine }
