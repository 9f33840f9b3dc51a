# Findings of repair: a line, and in full.

opening-larger = Ausschnitt { $number } wird größer: ist er noch abgedeckt?
    .detail = Ausschnitt { $number }, { $what }, wird { $long } × { $wide } statt { $long_asked } × { $wide_asked }: { $more } mehr bei { $sides }. Ob der Rand dessen, was hineinkommt, seine Kante noch abdeckt und noch Stein zum Aufliegen oder Klemmen findet, ist hier nicht bekannt: der Rand muss dort { $more } weiter reichen, als es die gewünschte Öffnung verlangt hat. Das Teil einlegen oder seinen Rand messen, bevor weiter geschnitten wird.

# Why what is left of a begun job cannot be planned, in one line.

repair-no-stone = die Flächen, die gesägt sein sollen, lassen keinen Stein übrig
repair-no-outline = der Stein, wie er jetzt ist, hat keinen Umriss, der sich benennen lässt
repair-openings-meet = { $one } und { $other } würden ineinander durchbrechen; aus beiden eine Öffnung machen ([[top.cutout]])
repair-opening-breaks-edge = { $opening } würde die Kante dessen, was von der fertigen Platte übrig ist, um { $by } durchbrechen; weglassen ([[top.cutout]]), kleiner machen oder für den Stein eine andere Platte planen
repair-opening-no-figure = { $opening } hat keine Form mehr, wenn die Seiten bis in unverletzten Stein hinausrücken; neu planen, größer oder in anderer Form ([[top.cutout]])
repair-never-sawn = as_cut: Kante { $edge } liegt auf einer Kante der Rohplatte und war nie zu sägen; aus as_cut.done und as_cut.edge weglassen
repair-trims-first = as_cut: Ecke { $corner } soll geschnitten sein, Kante { $edges } aber nicht; Kantenschnitte kommen vor Rundungen. In as_cut.done eintragen
repair-nothing-left = die gewünschte Platte ragt mit ihren Zugaben { $by } über den unverletzten Stein hinaus, der übrig ist, und von der gewünschten Form ist nichts zu retten: auch mit um { $most } eingerückten Kanten läge sie auf Stein, der fort ist. Den Stein messen und eine andere Platte dafür planen
repair-no-such-cut = as_cut.cuts: einen Schnitt { $number } gibt es nicht; das Blatt dieser Auftragsdatei hat die Schnitte 1 bis { $last }
