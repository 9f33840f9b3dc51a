# Templates, shapes and drawings.

template-top = Szablon w pełnej wielkości: cały blat
template-curve = Szablon w pełnej wielkości: łuk cięcia { $number }
template-opening = Szablon w pełnej wielkości: otwór { $number }, { $what }
template-corner = Szablon w pełnej wielkości: narożnik { $corner }
template-count = { $count ->
    [one] Jeden arkusz
    [few] { $count } arkusze
   *[other] { $count } arkuszy
 } · { $job } · plan { $plan }
template-tile = { $count ->
    [one] jedna strona
   *[other] jeden z { $count } arkuszy
 } · { $part } · { $job } · plan { $plan }
template-measure = Najpierw zmierz: jeśli to nie jest 100, drukuj w skali 100 %, bez dopasowania do strony.
template-again = Zmierz oba paski na każdym arkuszu. Drukarkę, która trochę się myli, poprawia ponowny wydruk z --measured i obiema długościami.
template-join = Odetnij każdy arkusz wzdłuż prawej i górnej linii ramki. Połóż go na następnym tak, aby krzyżyki się pokryły, i sklej je na płaskiej desce.
template-lay = Połóż krzyżyki z nazwami na znakach o tych samych nazwach na kamieniu, a krawędzie na jego krawędziach. Przed cięciem sprawdź jedną długość taśmą.
template-scaled = wydruk × { $across } wszerz, × { $up } wzwyż, według zmierzonych pasków
template-map = Jak leżą arkusze
template-line-keep = linia, która zostaje: gotowa krawędź
template-line-saw = linia cięcia: gotowa krawędź i naddatek na wykończenie
template-line-slab = krawędź płyty: połóż na krawędzi kamienia
template-line-slot = co tarcza lub koronka zabiera z lica; długie boki wskazują kierunek tarczy
template-line-station = stanowisko z numerem
template-line-flange = tak szerokie są kołnierz i głowica nad szczeliną: zostaw wolne miejsce
template-line-mark = znak, który już jest na kamieniu, albo linia od niego
bench-curve-template = W pełnej wielkości na papierze: kerfwright template
