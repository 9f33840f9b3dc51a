# Findings of placement: a line, and in full.

measure-again = Zmierzyć jeszcze raz: zapas mieści się w błędzie taśmy mierniczej
    .detail = Blat mieści się z zapasem { $spare }; przy taśmie o dokładności ±{ $tape } dla pewności potrzeba co najmniej { $least }. Zmierzyć płytę jeszcze raz albo zmniejszyć blat.

edges-undescribed = Obejrzeć { $count ->
        [one] krawędź
       *[other] krawędzie
    } płyty { $edges }: blat wykorzystuje { $count ->
        [one] ją taką, jaka jest
       *[other] je takie, jakie są
    }
    .detail = Nikt nie podał, { $count ->
        [one] jaka jest krawędź płyty { $edges }. Przyjęto, że jest cięta
       *[other] jakie są krawędzie płyty { $edges }. Przyjęto, że są cięte
    }, i nie robi się tam żadnego cięcia. Obejrzeć przed rozpoczęciem: prosto przy liniale, pod kątem prostym do lica, czysto, bez odprysków i bez pęknięć biegnących w głąb. Jeśli tak, wpisać { $sawn } w [slab]. Jeśli nie, wpisać tam { $rough } i zaplanować od nowa: dojdzie co najmniej { $cuts ->
        [one] jedno cięcie
        [few] { $cuts } cięcia
        [many] { $cuts } cięć
       *[other] { $cuts } cięcia
    }.

turn-saves = Nieco obrócony, ten sam blat wymaga o { $saved } mniej cięcia
    .detail = Obrócony o { $turn } względem płyty, bez krawędzi leżącej wzdłuż krawędzi, blat wymaga o { $saved } mniej powierzchni cięcia niż w miejscu przyjętym tutaj. Trasowanie jest trudniejsze. Aby tak zrobić, wpisać w [place]: { $to } oraz { $at }.

# Why there is no place, in one line.

place-none-at-any-turn = Na płycie nie ma miejsca na blat przy żadnym obrocie ani na blat mniejszy dookoła o { $within }.
place-none-found = Nie znaleziono na płycie miejsca na blat. Nie dowiedziono, że przy żadnym obrocie go nie ma: wypróbować jakieś w [place].
place-at-fault = Miejsce podane w [place] jest błędne: blat nie może tam leżeć. Bez at i turn miejsce zostanie znalezione.
place-not-here = Blat nie może leżeć tam, gdzie go umieszczono.
place-none-begun = Żądanego blatu nie da się już uzyskać z tego, co zostało z płyty.

# What stands against a position.

place-outside = blat z naddatkiem wystaje o { $by } poza płytę { $part }; zmniejszyć tam blat co najmniej o { $by } albo wziąć większą płytę
place-outside-within-tape = blat z naddatkiem wystaje o { $by } poza płytę { $part }; to mieści się w błędzie taśmy mierniczej ({ $tape }): zmierzyć jeszcze raz
place-on-flaw = blat jest o { $by } za blisko „{ $flaw }” (odstęp { $clear }); przesunąć go albo zmniejszyć blat
place-near-rough-edge = blat jest o { $by } za blisko krawędzi płyty { $edge }, która jest surowa (slab.rough_margin { $margin }): kamień jest tam wyszczerbiony, a głębiej spękany; przesunąć go albo zmniejszyć blat
place-round-near-edge = blat jest o { $by } za blisko krawędzi płyty { $edge }: okrągły blat wymaga do wycięcia pasa { $least } dookoła; przesunąć go albo zmniejszyć blat
place-along-flaw = obcięcie { $part } biegłoby wzdłuż „{ $flaw }” na długości { $long }, w obrębie odstępu { $clear }: kamień może tam pęknąć; przesunąć lub obrócić blat
place-narrow-strip = przy krawędzi { $edge } zostałby do odcięcia pas { $width }, najmniej { $least }; przesunąć blat tak, aby krawędź leżała na krawędzi płyty lub dalej w głąb
place-factory-bow = krawędź { $edge } jest wygięta i oznaczona jako fabryczna (factory), ale wygiętą krawędź zawsze się tnie; nadać jej inne wykończenie
place-not-on-factory-edge = krawędź { $edge } jest oznaczona jako fabryczna, ale nie leży na fabrycznej krawędzi płyty; umieścić ją na takiej albo nadać jej inne wykończenie
place-no-sawn-outline = naddatków nie da się poprowadzić wokół obrysu blatu: krawędź jest na nie za krótka albo łuk za mały; zmienić tam wykończenie albo kształt
place-no-sawn-cutout = naddatek nie zostawia nic do wycięcia ({ $what }): wycięcie jest za małe albo jego łuk; powiększyć je albo zmienić jego wykończenie
place-vein = długi kierunek blatu odbiega od kierunku żyły o { $angle }; wpisać top.vein = "any", jeśli to nie ma znaczenia

# Sizes that fit, by the box round the finished top.

place-fits-smaller = o tym samym kształcie mieści się { $long } × { $deep }
place-fits-shorter = tylko z mniejszą długością mieści się { $long } × { $deep }
place-fits-narrower = tylko z mniejszą głębokością mieści się { $long } × { $deep }
