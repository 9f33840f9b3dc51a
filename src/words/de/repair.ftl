# Findings of repair: a line, and in full.

opening-larger = Ausschnitt { $number } wird größer: ist er noch abgedeckt?
    .detail = Ausschnitt { $number }, { $what }, wird { $long } × { $wide } statt { $long_asked } × { $wide_asked }: { $more } mehr bei { $sides }. Ob der Rand dessen, was hineinkommt, seine Kante noch abdeckt und noch Stein zum Aufliegen oder Klemmen findet, ist hier nicht bekannt: der Rand muss dort { $more } weiter reichen, als es die gewünschte Öffnung verlangt hat. Das Teil einlegen oder seinen Rand messen, bevor weiter geschnitten wird.
