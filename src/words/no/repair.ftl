# Findings of repair: a line, and in full.

opening-larger = Utskjæring { $number } blir større: er den fortsatt dekket?
    .detail = Utskjæring { $number }, { $what }, blir { $long } × { $wide } i stedet for { $long_asked } × { $wide_asked }: { $more } mer ved { $sides }. Om flensen på det som skal ned i den, fortsatt dekker kanten på utskjæringen, og fortsatt får stein å stå på eller klemmes fast i, er ikke kjent her: flensen må nå { $more } lenger ut der enn den ønskede åpningen krevde. Legg det ned i, eller mål flensen, før noe annet kuttes.
