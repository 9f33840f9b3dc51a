# Findings of handling: a line, and in full.

crush-and-falls = { $stone }: das Stück zerquetscht, worauf es fällt
    .detail = { $mass } drücken mit { $weight }. Hochkant steht das Stück auf { $thickness }: ein Schub von { $push } an der Oberkante kippt es, und bei mehr als { $tips } Neigung fällt es von selbst, über einen Streifen von { $shadow } Breite auf jeder der beiden Seiten: dort steht niemand, und niemand versucht, es aufzufangen. An etwas anbinden, das hält, bevor irgendjemand loslässt, immer nur einen Stein auf einmal; woran es lehnt, muss verhindern, dass es nach vorn fällt und dass sein Fuß wegrutscht. Bei { $leans } Neigung zieht die Oberkante am Halteband mit { $pulls }, in dieser Reihenfolge; das Band und das, woran es befestigt ist, müssen ein Mehrfaches davon halten. Auf zwei Leisten absetzen, nie auf den Boden: kein Finger, kein Zeh und kein Kind im Spalt.

way-in-blocked = die fertige Platte kommt nicht hinein: { $place }
    .detail = Hochkant fehlen { $edge_short } ({ $edge_measure }: nötig { $edge_needs }, vorhanden { $edge_has }). Aufrecht auf der kurzen Seite fehlen { $upright_short } ({ $upright_measure }: nötig { $upright_needs }, vorhanden { $upright_has }). Was hilft, eines davon, oder beide, wo einer Lage zwei Maße fehlen: { $remedies }. Auch flach liegend geht sie nicht hindurch.

way-in-upright = die fertige Platte geht nur aufrecht durch: { $place }
    .detail = Hochkant fehlen { $edge_short } ({ $edge_measure }: nötig { $edge_needs }, vorhanden { $edge_has }). Aufrecht auf der kurzen Seite geht sie mit { $spare } Spiel hindurch. Was hilft, eines davon, oder beide, wo einer Lage zwei Maße fehlen: { $remedies }. Zum Aufstellen auf die kurze Seite braucht es { $stand_up } lichte Höhe: vor der Stelle tun, mit dem Hebegerät und den Personen, die das Gewicht verlangt, und nie auf einer Treppe.

way-in-flat-only = die fertige Platte geht nur flach liegend durch, was nicht ratsam ist: { $place }
    .detail = Hochkant fehlen { $edge_short } ({ $edge_measure }: nötig { $edge_needs }, vorhanden { $edge_has }). Aufrecht auf der kurzen Seite fehlen { $upright_short } ({ $upright_measure }: nötig { $upright_needs }, vorhanden { $upright_has }). Flach geht sie mit { $spare } Spiel hindurch. Was hilft, eines davon, oder beide, wo einer Lage zwei Maße fehlen: { $remedies }. Flach kann sie unter ihrem eigenen Gewicht brechen: siehe die Biegetabelle, und flach nur auf einer vollen Tragplatte tragen oder gar nicht.

way-in-tight = enger Weg hinein: { $place }
    .detail = Lage beim Tragen: { $pose }. Es bleiben nur { $spare } Spiel. An der engsten Stelle nachmessen, und vor dem Stein eine Latte von seiner Länge und ein Brett von seiner Höhe hindurchtragen.

way-in-slab = vor dem Hineintragen schneiden: die ganze Rohplatte bleibt stecken: { $place }
    .detail = Hochkant fehlen { $edge_short } ({ $edge_measure }: nötig { $edge_needs }, vorhanden { $edge_has }). Aufrecht auf der kurzen Seite fehlen { $upright_short } ({ $upright_measure }: nötig { $upright_needs }, vorhanden { $upright_has }). Was hilft, eines davon, oder beide, wo einer Lage zwei Maße fehlen: { $remedies }. Die fertige Platte geht hindurch: abladen und auf dieser Seite davon schneiden.

way-in-slab-flat = vor dem Hineintragen schneiden: die ganze Rohplatte geht nur flach liegend durch: { $place }
    .detail = Hochkant fehlen { $edge_short } ({ $edge_measure }: nötig { $edge_needs }, vorhanden { $edge_has }). Aufrecht auf der kurzen Seite fehlen { $upright_short } ({ $upright_measure }: nötig { $upright_needs }, vorhanden { $upright_has }). Flach geht sie mit { $spare } Spiel hindurch und kann unter ihrem eigenen Gewicht brechen. Was hilft, eines davon, oder beide, wo einer Lage zwei Maße fehlen: { $remedies }. Die fertige Platte geht hindurch: abladen und auf dieser Seite davon schneiden.

tips-out-of-hands = { $stone }: kippt mit Personen an diesen Plätzen
    .detail = Der Schwerpunkt liegt { $off } neben dem, was die Plätze halten können. Personen auf beide Seiten davon stellen.

lifter-off-the-edge = { $stone }: Person { $lifter } hat keine Kante zum Fassen
    .detail = Der angegebene Platz liegt { $away } von der Kante, mehr als { $most }. Plätze an der Kante angeben, im eigenen Koordinatensystem der fertigen Platte.

lifter-at-cutout = { $stone }: Person { $lifter } hebt neben einem Ausschnitt
    .detail = Der Platz liegt { $away } von einem Ausschnitt, weniger als eine Handbreite, { $least }. Dort heben, wo der Stein ganz ist, nie an einem Steg.

carry-too-far = { $way }: zu weit, um ohne Pause zu tragen
    .detail = Die Richtwerte gelten für Wege bis { $most }, nah am Körper getragen. Den Stein unterwegs hochkant auf zwei Leisten absetzen oder auf einem Plattenwagen rollen.

brace-the-rail = { $rail } ({ $cutouts }): { $verdict }
    .detail = Er ist { $width } breit und { $length } lang ({ $stone }). Flach liegend oder in den Händen wird er mit { $together } beansprucht, wenn der übrige Stein mithilft, und mit { $alone }, wenn er die Biegung allein aufnehmen muss, etwa wenn diese Seite zuerst gehoben wird; hochkant auf zwei Stützen: { $on_edge }; zulässig { $allowed }. Vor dem Anheben gerades Kantholz von { $timber_width } × { $timber_depth } hochkant daran entlang klemmen, überall anliegend (Hölzer nebeneinander: { $timbers }), mindestens { $timber_length } lang, mit gepolsterten Zwingen auf ganzem Stein an beiden Enden: dann bleiben { $braced }. Den Stein hochkant tragen; dort nie anfassen oder klemmen.

brace-the-rail-on-a-frame = { $rail } ({ $cutouts }): { $verdict }
    .detail = Er ist { $width } breit und { $length } lang ({ $stone }). Flach liegend oder in den Händen wird er mit { $together } beansprucht, wenn der übrige Stein mithilft, und mit { $alone }, wenn er die Biegung allein aufnehmen muss, etwa wenn diese Seite zuerst gehoben wird; hochkant auf zwei Stützen: { $on_edge }; zulässig { $allowed }. Kein Holz ist steif genug: den ganzen Stein auf einen Rahmen oder eine Tragplatte betten. Den Stein hochkant tragen; dort nie anfassen oder klemmen.

brace-the-neck = { $stone }, { $neck }: darf den Stein dahinter nicht tragen
    .detail = Sie ist { $width } breit; hängen beim Flachliegen { $hanging } daran, sind es { $stress }, zulässig { $allowed }. Den Stein auf beiden Seiten davon stützen, immer wenn er flach liegt. Vor dem Anheben gerades Kantholz von { $timber_width } × { $timber_depth } hochkant daran entlang klemmen, überall anliegend (Hölzer nebeneinander: { $timbers }), mindestens { $timber_length } lang, mit gepolsterten Zwingen auf ganzem Stein an beiden Enden: dann bleiben { $braced }.

brace-the-neck-on-a-frame = { $stone }, { $neck }: darf den Stein dahinter nicht tragen
    .detail = Sie ist { $width } breit; hängen beim Flachliegen { $hanging } daran, sind es { $stress }, zulässig { $allowed }. Den Stein auf beiden Seiten davon stützen, immer wenn er flach liegt. Kein Holz ist steif genug: den ganzen Stein auf einen Rahmen oder eine Tragplatte betten.

narrow-rail = { $rail } ({ $cutouts }): schmaler, als das Handwerk ihn lässt
    .detail = Er liegt neben einem Hahnloch und ist { $width } breit; { $least } sind als Mindestmaß neben einem Ausschnitt veröffentlicht, für ein Hahnloch kein geringeres. Das Loch versetzen oder kleiner machen, oder fragen, ob der Stein von unten dauerhaft versteift werden kann.

guideline-is-not-a-limit = der Richtwert fürs Heben ist keine sichere Grenze
    .detail = { $each } je Person gelten für körperlich fitte Erwachsene, die nah am Körper, in Hüfthöhe, gerade und selten heben; für viele Menschen, für nasse Hände, Stufen und unebenen Boden ist es weniger. Das ist keine Zusage, dass eine Last darunter sicher zu heben ist. Die Hebegleichung gilt für das Heben, nicht für das Tragen. Die geltenden Regeln prüfen.

tips-off-supports = die fertige Platte liegt nicht kippsicher auf ihren Stützen
    .detail = Die Stützen umfassen den Schwerpunkt nicht. Vor dem Absetzen Stützen hinzufügen oder versetzen.

support-lifts-off = { $support }: trägt nichts
    .detail = Die fertige Platte drückt nicht darauf. Platz und Höhe prüfen; die Platte nicht darauf herunterziehen.

falls-off-trestles = { $stone }: liegt nicht auf den Böcken
    .detail = Mit Böcken { $first } und { $second } vom Ende der Rohplatte entfernt liegt der Schwerpunkt nicht dazwischen, oder das Stück reicht nicht bis zu ihnen. Vor diesem Schnitt versetzen, oder lift.trestles weglassen.

bends-on-trestles = { $stone }: zwei Böcke reichen nicht
    .detail = Auf Böcken { $first } und { $second } vom Ende der Rohplatte wird das Stück mit { $stress } beansprucht, dem { $times }-fachen des Zulässigen. Stattdessen auf eine volle, ebene Tragplatte betten.

aid-too-weak = { $stone }: das Hebegerät ist nicht für das Gewicht gekennzeichnet
    .detail = Das Hebegerät ({ $aid }) ist für { $rated } gekennzeichnet; dieser Stein braucht { $needs }. Eines nehmen, das dafür gekennzeichnet ist, oder einen leichteren Stein: vor dem Bewegen schneiden.

aid-without-mark = was steht auf dem Hebegerät ({ $aid })? Es braucht { $needs }
    .detail = Die Traglast darauf ablesen und hier eintragen; am schwersten: { $stone }. Keine Kennzeichnung, kein Heben. In der Auftragsdatei: lift.rated.

in-slings-no-place = { $stone }: kein Platz für zwei Hebebänder
    .detail = Wo auch immer zwei Hebebänder verlaufen, wird der hängende Stein stärker gebogen als zulässig. Versteifen oder auf einen Rahmen gebettet tragen.

on-a-trolley = der Plattenwagen: hochkant, angebunden, auf ebenem Boden
    .detail = Die schwerere Langseite unten, am Rahmen des Wagens angebunden, an jedem Ende jemand und niemand daneben. Zum Beladen den Wagen an diese Langseite stellen, Räder blockiert, den Stein über sie auf die Ladefläche kippen und anbinden, bevor jemand loslässt. Bergab wird er von der Bergseite aus zurückgehalten. Die Anleitung des Herstellers geht vor.

on-a-trolley-numbers = { $stone }: kippt sie, tötet sie; ein Plattenwagen, gekennzeichnet für { $rated } oder mehr
    .detail = Auf dem Wagen liegt der Schwerpunkt { $height } über dem Boden, und der Wagen kippt um auf Boden mit { $tips } Quergefälle (stehend, harte Reifen: in Fahrt früher). Auf ebenem Boden braucht er mindestens { $push } Schub, auf einer Rampe 1 zu { $run } weitere { $ramp }, die ihn auch bergab ziehen.

under-a-vacuum-lifter = der Vakuumheber: gekennzeichnet für das doppelte Gewicht, und eine zweite Sicherung
    .detail = Nur auf trockener, sauberer, gesunder, polierter oder feingeschliffener Fläche: nie auf rauer oder spaltrauer, und nirgends über einer Fehlstelle oder einer Ausbesserung. An einer senkrechten Fläche halten die Sauger nur durch Reibung: dafür die Angabe des Herstellers nehmen. Jederzeit eine zweite Sicherung (Gurt, Hebeband) unter dem Stein. Eine Handbreit anheben, warten und prüfen, ob jeder Sauger hält, bevor der Stein bewegt wird. Die Anleitung des Herstellers geht vor.{ $wet ->
            [yes] {" "}Bei dieser Arbeit wird mit Wasser geschnitten: zuerst den Schlamm abwaschen und die Fläche trocknen lassen.
           *[other] {""}
        }{ $face ->
            [porous] {" "}Dieser Stein ist porös: Luft geht hindurch, und der Halt versagt. Den Hersteller fragen, oder Hebebänder verwenden.
            [split] {" "}Dieser Stein wird oft mit spaltrauer Fläche verkauft: darauf hält kein Sauger.
           *[other] {""}
        }

under-a-vacuum-lifter-numbers = { $stone }: fällt sie, tötet sie; ein Vakuumheber, gekennzeichnet für { $rated } oder mehr
    .detail = Sauger paarweise um den Schwerpunkt: { $cups }, jeder trägt { $each }.

under-a-vacuum-lifter-no-room = { $stone }: kein Platz für einen Vakuumheber
    .detail = Er müsste für { $rated } oder mehr gekennzeichnet sein, aber um den Schwerpunkt ist kein Platz für ein Paar Sauger. Hebebänder oder einen Plattenwagen nehmen.

in-slings = der Portalkran: aufgebaut und bedient von einer fachkundigen Person
    .detail = Haken über dem Schwerpunkt, Kanten gepolstert, die Hebebänder so verbunden, dass sie nicht zueinander rutschen können, an jedem Ende ein Führungsseil, niemand darunter oder daneben. Eine Handbreit anheben und prüfen, ob der Stein waagerecht hängt, bevor er bewegt wird. Hebezeug ist geprüft, gekennzeichnet und von einer fachkundigen, wo das Gesetz es verlangt zugelassenen Person aufgebaut.

in-slings-numbers = { $stone }: fällt sie, tötet sie; Hebebänder { $first } und { $second } vom linken Ende
    .detail = Aufrecht gezeichnet: vom unteren Ende. An jedem Hebeband hängen { $each }; mit { $legs } zwischen den Strängen zieht jeder das { $factor }-fache des Gewichts, { $tension }, und der Haken hängt { $hook } oder mehr über dem Stein.

not-a-hand-lift = nicht von Hand zu heben: { $stones }
    .detail = { $masses }. { $people ->
            [one] Eine Person darf mit { $team } rechnen
           *[other] { $people } Personen, die gemeinsam heben, dürfen mit { $team } rechnen
        }; über etwa dem Doppelten davon ist die Gefahr auch für fitte, geübte Personen groß. Ein Hebegerät in lift.aid angeben: ein Plattenwagen, der hochkant trägt, gekennzeichnet für { $rated } oder mehr, nur auf ebenem Boden (Schub mindestens { $push }); ein Vakuumheber, gekennzeichnet für { $vacuum } oder mehr, auf trockener, sauberer, durchgehender Fläche; ein Portalkran oder Hebezug mit Hebebändern, gekennzeichnet für { $rated } oder mehr und von einer in Hebezeug fachkundigen Person aufgebaut. Das schwerste Stück hochkant zu kippen braucht am Anfang an der fernen Seite { $tilt }.

breaks-in-hands = würde in den Händen brechen: { $stones }
    .detail = { $masses }. Wie auch immer { $people ->
            [one] eine Person es hält
           *[other] { $people } Personen es halten
        }, flach oder hochkant wird es stärker gebogen als zulässig. Versteifen, auf eine Tragplatte betten oder ein Hebegerät in lift.aid angeben: ein Plattenwagen, gekennzeichnet für { $rated } oder mehr; ein Vakuumheber, gekennzeichnet für { $vacuum } oder mehr; ein Portalkran mit Hebebändern, von einer fachkundigen Person aufgebaut.

more-than-four = zu viele Personen, um gemeinsam zu heben: { $people }
    .detail = Mehr als { $most } Personen arbeiten kaum als ein Team, und für sie ist kein Anteil ihrer Kraft veröffentlicht, mit dem man rechnen könnte. Ein Hebegerät nehmen, oder weniger Personen und ein leichteres Stück.

lifter-over-guideline = mehr als der Richtwert: { $stones }
    .detail = { $masses }. { $people ->
            [one] Eine Person darf mit { $team } rechnen
           *[other] { $people } Personen, die gemeinsam heben, dürfen mit { $team } rechnen
        }: ein Wert, bei dem genauer hinzusehen ist, keine Grenze. Vor dem Heben klären, wer hebt, welchen Weg und wo abgesetzt wird; mehr Personen, ein leichteres Stück oder ein Hebegerät ist besser. Das schwerste Stück hochkant zu kippen braucht am Anfang an der fernen Seite { $tilt }.

tilt-over-guideline = klären, wie sie hochkant gekippt wird; an der fernen Seite braucht das: { $stones }
    .detail = { $people ->
            [one] Eine Person darf mit { $team } rechnen
           *[other] { $people } Personen zusammen dürfen mit insgesamt { $team } rechnen
        }. Den Stein von der Lieferung bis an seinen Platz hochkant lassen. { $hands ->
            [0] Was mehr als etwa das Doppelte braucht, dreht niemand von Hand: dort ist die Gefahr auch für kräftige, geübte Leute ernst. Hebezug, Vakuumheber oder ein Gestell, das mit dem festgebundenen Stein kippt, durch eine fachkundige Person: vor der Lieferung festlegen, was.
           *[other] Zum Umlegen die Langseite, um die er dreht, gegen Wegrutschen sichern, alle an die ferne Langseite, in Stufen auf Klötzen anheben, und die Sicherung bereithalten, bevor er steht; oder mit einem Hebezug oder Vakuumheber drehen.
        } Niemand steht auf der Seite, auf die er fallen kann.

bends-flat-always = { $stone }: nie flach auf zwei Stützen
    .detail = Lage: { $how }: { $stress }, wo es { $width } breit ist, { $at } vom Ende; zulässig { $allowed } (Festigkeit ÷ Sicherheitsbeiwert), das ist das { $times }-fache davon, selbst auf den besten zwei Stützen. Hochkant lassen oder auf eine volle, ebene Tragplatte betten.{ $flaws ->
            [0] {""}
            [one] {" "}Die Rohplatte hat eine Fehlstelle: dort gilt die Festigkeit nicht.
           *[other] {" "}Die Rohplatte hat { $flaws } Fehlstellen: dort gilt die Festigkeit nicht.
        }

bends-flat = { $stone }: kann flach durchbrechen, wenn das Stück an den Enden gehalten wird
    .detail = Lage: { $how }: { $stress }, wo es { $width } breit ist, { $at } vom Ende; zulässig { $allowed } (Festigkeit ÷ Sicherheitsbeiwert), das ist das { $times }-fache davon. Nie ein Ende anheben, solange es flach liegt. Flach darf es nur auf Stützen { $first } und { $second } vom linken Ende liegen (aufrecht gezeichnet: vom unteren Ende), dort sind es { $best }; hochkant tragen.{ $flaws ->
            [0] {""}
            [one] {" "}Die Rohplatte hat eine Fehlstelle: dort gilt die Festigkeit nicht.
           *[other] {" "}Die Rohplatte hat { $flaws } Fehlstellen: dort gilt die Festigkeit nicht.
        }

carry-on-edge-not-by-its-ends = { $stone }: auch hochkant nicht an den Enden
    .detail = Lage: { $how }: { $stress }; zulässig { $allowed }, das ist das { $times }-fache davon. { $first } und { $second } vom Ende entfernt halten oder aufstellen, dort sind es { $best }. Gerechnet ist mit gesundem Stein.

carry-on-edge-braced = { $stone }: auch hochkant nicht, bevor das Stück versteift ist
    .detail = Lage: { $how }: { $stress }; zulässig { $allowed }, das ist das { $times }-fache davon. Zuerst die schmalen Stellen versteifen, oder auf einen Rahmen gebettet tragen. Gerechnet ist mit gesundem Stein.

flaws-and-strength = { $count ->
            [one] Die Rohplatte hat eine Fehlstelle
           *[other] Die Rohplatte hat { $count } Fehlstellen
        }: dort gelten die Festigkeitswerte nicht
    .detail = Jede Spannung hier setzt gesunden Stein voraus; an einem Riss oder einer Ausbesserung kann er weit darunter brechen. Hochkant halten, auf einer vollen Tragplatte oder einem vollen Rahmen.

trestles-are-moved = die Böcke werden vor Schnitt { $cuts } versetzt
    .detail = Kein Platz passt für alle Schnitte. Den Stein abheben, wie sein Gewicht es verlangt, die Böcke versetzen, wieder ablegen; die neuen Plätze stehen auf der Karte dieses Schnitts.

rests-poorly = mehr unter die fertige Platte stellen: { $what }
    .detail = { $parts }. Stützen enger setzen, neben jeden Ausschnitt, weiter außen. Weder Schraube noch Kleber hält eine Platte, die kippt.

# What is wrong with how the top rests: in short, and in full.
rests-overhang = Überstand
rests-overhang-part = { $edges } { $count ->
            [one] ragt
           *[other] ragen
        } { $reach } über die Stützen hinaus (veröffentlichte Grenze: { $limit })
rests-overhang-person = Überstand
rests-overhang-person-part = { $edges } { $count ->
            [one] ragt
           *[other] ragen
        } { $reach } über die Stützen hinaus (veröffentlichte Grenze: { $limit }), und mit einer Person auf der Kante sind es { $times } des Zulässigen
rests-span = freie Länge
rests-span-part = die weiteste Strecke ohne Stütze ist { $span } (veröffentlichte Grenze: { $limit })
rests-tips = sie kippt, wenn sich jemand darauf stützt
rests-tips-part = eine Person mit { $force } { $place } kippt sie von den Stützen
rests-bends = jemand stützt sich darauf
rests-bends-part = eine Person von { $force } { $place } beansprucht sie mit { $times } des Zulässigen
rests-bends-elsewhere = jemand stützt sich darauf
rests-bends-elsewhere-part = eine Person von { $force } { $place } beansprucht sie mit { $times } des Zulässigen, am meisten { $section }
lean-worst = an der ungünstigsten Stelle
lean-rail = an der schmalen Stelle „{ $rail }“ ({ $cutouts })
lean-overhang = auf dem Überstand, { $edge },
lean-between = zwischen den Stützen { $first } und { $second }
lean-over = über der Stütze { $support }
rests-over = { $support }
rests-over-part = { $support } trägt bis zu { $carried }, mehr als die Grenze von { $limit }
rests-over-person = { $support } mit einer Person
rests-over-person-part = { $support } trägt bis zu { $with_person } mit einer Person von { $force } (Grenze { $limit })
none-published = nichts für so dünnen Stein

# A stone in a list of stones.
stone-of-mass = { $stone } { $mass }

# What would make a way passable.
remedy-upright = aufrecht auf der kurzen Seite nehmen, dafür braucht es { $n } Höhe
remedy-cut-to = vor dieser Stelle auf höchstens { $n } Länge schneiden
remedy-widen-before = den Weg vor der Ecke mindestens { $n } breit machen
remedy-widen-after = den Weg nach der Ecke mindestens { $n } breit machen
remedy-widen = mindestens { $n } breit machen: Türblatt, Anschläge oder Rahmen abnehmen
remedy-raise = mindestens { $n } lichte Höhe dafür schaffen { $how }
