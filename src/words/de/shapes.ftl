# Templates, shapes and drawings.

template-top = Schablone in voller Größe: die ganze Platte
template-curve = Schablone in voller Größe: Rundung von Schnitt { $number }
template-opening = Schablone in voller Größe: Ausschnitt { $number }, { $what }
template-corner = Schablone in voller Größe: Ecke { $corner }
template-count = { $count ->
    [one] Ein Blatt
   *[other] { $count } Blätter
 } · { $job } · Plan { $plan }
template-tile = { $count ->
    [one] eine Seite
   *[other] eines von { $count } Blättern
 } · { $part } · { $job } · Plan { $plan }
template-measure = Zuerst nachmessen: Sind es nicht 100, mit 100 % drucken, nicht an die Seite anpassen.
template-again = Auf jedem Blatt beide Balken messen. Ein Drucker, der wenig abweicht, wird berichtigt: noch einmal drucken mit --measured und den beiden Längen.
template-join = Jedes Blatt am rechten und am oberen Rahmenstrich abschneiden. So über das nächste legen, dass die Kreuze sich decken, und auf einem ebenen Brett zusammenkleben.
template-lay = Die Kreuze mit Namen auf die gleichnamigen Marken am Stein legen und die Kanten auf seine Kanten. Vor dem Sägen eine Länge mit dem Bandmaß prüfen.
template-scaled = gedruckt × { $across } quer, × { $up } hoch, nach gemessenen Balken
template-map = Wie die Blätter liegen
template-line-keep = Linie, die stehen bleibt: die fertige Kante
template-line-saw = Sägelinie: die fertige Kante und was für die Bearbeitung stehen bleibt
template-line-slab = Kante der Rohplatte: auf die Kante des Steins legen
template-line-slot = was Scheibe oder Bohrkrone in der Oberseite wegnimmt; die langen Seiten zeigen die Richtung der Scheibe
template-line-station = Station mit ihrer Nummer
template-line-flange = so breit sind Flansch und Getriebekopf über einem Schlitz: frei halten
template-line-mark = Marke, die schon auf dem Stein ist, oder eine Linie von ihr aus
bench-curve-template = In voller Größe auf Papier: kerfwright template
