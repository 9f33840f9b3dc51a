# The bench pages, the annex and the answers in a terminal.

bench-head = plan { $plan } · strona { $number } z { $count }
bench-head-annex = plan { $plan } · załącznik, strona A{ $number } z A{ $count }
bench-foot = Przepisy miejscowe, instrukcje producentów i osoby kompetentne mają pierwszeństwo przed tym arkuszem.
bench-foot-cut = Najpierw naciąć. Nigdy nie skręcać, nigdy nie pchać w bok. Po zakleszczeniu: wyłączyć, odczekać, uwolnić tarczę, znów w kamień tylko przy pełnych obrotach.
bench-stop = STOP
bench-kills-now = zabija
bench-kills-later = zabija później
bench-maims = okalecza
bench-lasting = zostaje na całe życie
bench-breaks-stone = łamie kamień
bench-blank = wypełnić
bench-sentences = { $a } { $b }
bench-term = { $term }

# At a glance
bench-glance = W skrócie
bench-glance-title = W skrócie: { $work }
bench-work-straight = { $count ->
    [one] jedna krawędź do odcięcia
    [few] { $count } krawędzie do odcięcia
    [many] { $count } krawędzi do odcięcia
   *[other] { $count } krawędzi do odcięcia
 }
bench-work-curves = { $count ->
    [one] jeden łuk cięciami wgłębnymi
    [few] { $count } łuki cięciami wgłębnymi
    [many] { $count } łuków cięciami wgłębnymi
   *[other] { $count } łuku cięciami wgłębnymi
 }
bench-work-openings = { $count ->
    [one] jedno wycięcie do wykonania
    [few] { $count } wycięcia do wykonania
    [many] { $count } wycięć do wykonania
   *[other] { $count } wycięcia do wykonania
 }
bench-glance-alt = Płyta z góry z blatem, { $length } na { $width }, cięcia po kolei i kawałki odpadu z ich masami.
bench-glance-open = Przed uruchomieniem maszyny: wyjaśnić każdy punkt, wpisać wynik, odhaczyć
bench-glance-warnings = Co ta praca może ci zrobić, najgorsze najpierw
bench-top-size = { $length } × { $width }
bench-waste-name = { $name } { $mass }
bench-keep = zostaje
bench-top-corner = narożnik { $corner }
bench-practice-here = próba
bench-tile-top = gotowy blat
bench-tile-slab = płyta
bench-tile-waste = najcięższy odpad
bench-tile-sawing = tarcza w kamieniu
bench-tile-setting = ustawianie
bench-tile-silica = krzemionka w szlamie
bench-tile-silica-dry = krzemionka w pyle
bench-tile-likely = najwyżej; raczej { $mass }
bench-tile-likely-thick = najwyżej; raczej { $mass }; { $thick }
bench-tile-no-waste = żaden kawałek nie odpada
bench-tile-after = { $name }, cięcie { $cut }
bench-tile-shares = { $count ->
    [one] jedna osoba, jeden dzień
    [few] podzielić na { $count } osoby lub dni
    [many] podzielić na { $count } osób lub dni
   *[other] podzielić na { $count } osoby lub dnia
 }
bench-tile-with-other = z { $other } innej pracy: { $shares }
bench-tile-without-edges = { $shares }; bez obróbki
bench-not-counted = Szlifowanie, polerowanie i fazowanie krawędzi nie jest tu nigdzie wliczone, chyba że stoi pod [[today]]; liczy się do dnia tej samej osoby.
bench-tile-set-ups = { $count ->
    [one] jedno ustawienie
    [few] { $count } ustawienia
    [many] { $count } ustawień
   *[other] { $count } ustawienia
 }
bench-tile-of-dust = najwyżej, w { $mass } kamienia

# Mark out
bench-mark = Trasowanie
bench-mark-title = Wytrasować wszystkie linie przed pierwszym cięciem
bench-mark-rule = Każdą linię wykreślić przez całą płytę przed pierwszym cięciem. Cięcie zabiera znak; linię na kamieniu, który zostaje, nadal widać.
bench-mark-alt = Płyta z góry ze wszystkimi liniami do wykreślenia, ich znakami na krawędziach oraz wszystkimi osiami obrotu i otworami.
bench-mark-what = punkt
bench-mark-off = od wytrasowanej linii
bench-mark-off-that = od linii { $cut }
bench-mark-named = { $mark }
bench-mark-off-short = { $cut }: { $distance }
bench-mark-on-short = na { $cut }
bench-mark-off-line = linia { $cut }: { $distance }
bench-mark-on-line = na linii { $cut }
bench-mark-check = kontrola
bench-mark-line-check = kontrola linii
bench-mark-on-curve = linia cięcia { $cut }
bench-mark-keep = linia do zachowania
bench-mark-guide = prowadnica, jw.
bench-mark-tape-from = miara
bench-marked = { $mark } { $distance }
bench-marked-from = { $mark } { $corner } { $distance }
bench-tape = { $corner } { $distance }
bench-mark-pivot = { $mark } oś obrotu
bench-mark-chord = { $mark } cięciwa
bench-mark-hole = { $mark } otwór
bench-mark-stop = { $mark } koniec cięcia
bench-mark-both = Cięcie { $cut }: { $distance } od narożnika { $corner } blatu wzdłuż obu linii.
bench-mark-along = Cięcie { $cut }, od narożnika { $corner } blatu: { $before } wstecz, { $after } dalej.
bench-mark-guides = Każda linia prowadnicy biegnie { $offset } od swojej linii do zachowania, od końca do końca.
bench-mark-rough = Narożnik przy surowej krawędzi jest tam, gdzie krzyżują się sznurki wzdłuż obu krawędzi: zaznaczyć go najpierw.
bench-mark-tape = Zaczep miary trzymać na samym narożniku. Przy kontroli odchyłka większa niż { $tape }: zmierzyć jeszcze raz, nie przesuwać linii. { $guides }
bench-mark-between = Jedna trzydziesta druga cala to środek między dwiema kreskami taśmy mierniczej, która pokazuje szesnaste części cala.
bench-end = { $mark }: { $distance } od { $corner } na { $edge }

# Straight cuts
bench-straight = Cięcia proste
bench-straight-title = Proste, krawędź { $edge }, długość { $length }, kamień { $thick }
bench-relief-title = Cięcie odciążające przy { $edge }, długość { $length }, kamień { $thick }
bench-straight-alt = Płyta z góry przed cięciem wzdłuż krawędzi { $edge }: prowadnica, podpory, miejsce operatora i to, co się uwalnia: { $waste }.
bench-you = operator
bench-depth = głębokość
bench-depths = głębokości
bench-trestles-move = Najpierw zdjąć kamień i przestawić kozły: { $first } i { $second } od końca płyty.
bench-trestles-board = Najpierw zdjąć kamień: odtąd leży na płaskiej płycie podkładowej pod całą powierzchnią.
bench-late = Dopiero po cięciu { $cut }, które ma własną stronę.
bench-fact-guide = prowadnica
bench-fact-ends = jej końce
bench-fact-moves = leży na
bench-fact-how = jak
bench-fact-bearers = podpory
bench-fact-drill = najpierw wiercić
bench-fact-when = kiedy
bench-guide-kept = { $offset } od linii do zachowania, na kamieniu, który zostaje
bench-guide-waste = { $offset } od linii do zachowania, na odpadzie
bench-ends = { $first }; { $second }
bench-moves = { $places } od { $mark }, kolejno na każdej głębokości{ $clamp ->
    [no] ; gdzie nie sięga ścisk, przyssawka mocująca, sprawdzona ręką
   *[yes] {""}
 }
bench-stone-end = końca kamienia w stronę { $mark }
bench-span = { $from } do { $to }
bench-how = { $parts }
bench-how-far-end = Na każdej głębokości najpierw ostatnie { $length } przy { $last }, z zewnątrz do środka; potem od drugiego końca aż do tego miejsca.
bench-how-stop = Kończy się przy { $mark }: środek tarczy nie bliżej niż { $short }. To, co zostawia okrągła tarcza, usuwa się na końcu i od góry: wiertłem koronowym w odpadzie, potem szlifierką; nigdy od spodu.
bench-how-stop-hole = Kończy się w wywierconym otworze przy { $mark }: środek tarczy nie bliżej niż { $short }.
bench-how-allowance = Na wykończenie zostaje { $left }.
bench-how-breaks = Od { $depth } może się odłamać.
bench-bearers = po każdej stronie, { $off }: { $at } od { $mark } wzdłuż cięcia
bench-bearers-even = { $count } po każdej stronie, { $off }: od { $first } do { $last } od { $mark } wzdłuż cięcia, co { $step }
bench-bearers-off = { $off } od linii
bench-bearers-off-each = { $kept } od linii, { $waste } pod odpadem
bench-struck = według wykreślonej linii { $first } do { $second }: jednego końca już nie ma
bench-drill = Ø { $bit } przy { $marks }, na mokro, zanim zbliży się tarcza
bench-free-heavy = Uwalnia się { $name }: do { $mass }. Przed pierwszym przejściem leży poziomo na własnych podporach. Żadnej ręki, stopy ani kolana pod spodem; nikt nie podtrzymuje.
bench-free-carried = Uwalnia się { $name }: do { $mass }. Przed pierwszym przejściem leży poziomo na własnych podporach. Żadnej ręki, stopy ani kolana pod spodem; nikt nie podtrzymuje. { $away }
bench-away = Potem { $how ->
            [flat] przenosi to na płasko tyle osób: { $people }, na dwie łaty na podłodze, o jedną piątą długości od końców.
           *[edge] stawia to na dłuższym boku i przenosi pionowo tyle osób: { $people }, na dwie łaty przy ścianie; tam przywiązać.
        }
bench-away-more = Do odniesienia { $how ->
            [flat] na płasko
           *[edge] pionowo
        } potrzeba tylu osób: { $people }, a w tym zleceniu jest mniej: znaleźć je albo pomoc, albo przeciąć to w poprzek tam, gdzie leży, z podkładem po obu stronach linii.
bench-away-aid = Potem { $aid ->
            [trolley] wózek zabiera to, postawione na krawędzi (osób: { $people }; { $half }) i przywiązane,
            [vacuum] podnośnik próżniowy zabiera to, pionowo,
           *[gantry] wciągnik zabiera to, pionowo w dwóch pasach,
        } na dwie łaty przy ścianie; tam przywiązać.
bench-away-sawn = Żaden zespół tego nie odniesie: przeciąć w poprzek tam, gdzie leży, z podkładem po obu stronach linii, albo sprowadzić pomoc.
bench-free-light = Uwalnia się { $name }: do { $mass }. Przed pierwszym przejściem podpora pod spodem; żadnej ręki poniżej.
bench-free-flaw = „{ $flaw }” przechodzi przez to: może tam pęknąć. Podkłady po obu stronach; proste drewno zaciśnięte na wierzchu, zanim się podniesie.
bench-free-station = { $name } uwalnia się mniej więcej przy pozycji { $station }, ostatnia głębokość: do { $mass }. Przed pierwszym przejściem podpora pod spodem; żadnej ręki poniżej.
bench-measured = krawędź { $edge }, brak lub nadmiar (ma być 0)
bench-cut-by = kto ciął, godzina

# Curves
bench-curve = Łuk, cięcie { $cuts }
bench-curve-title = { $count ->
    [one] Jedna pozycja łuku przy { $corners } cięciem wgłębnym, { $depths } głębokości
    [few] { $count } pozycje łuku przy { $corners } cięciami wgłębnymi, { $depths } głębokości
    [many] { $count } pozycji łuku przy { $corners } cięciami wgłębnymi, { $depths } głębokości
   *[other] { $count } pozycji łuku przy { $corners } cięciami wgłębnymi, { $depths } głębokości
 }
bench-curve-alt = Łuk z góry z ponumerowanymi pozycjami, osią obrotu lub cięciwą i odpadem.
bench-curve-how = Jak
bench-curve-line = promień { $radius }; na wykończenie zostaje { $left }
bench-curve-line-inside = promień { $radius }; na wykończenie zostaje { $left }; pozycje na promieniu { $stations }
bench-curve-rise = cięciwa { $chord }, w środku łuk wznosi się nad nią o { $rise }
bench-curve-struck = { $points }, wyznaczone przed cięciem 1: zob. Trasowanie
bench-curve-swing = { $mark }: { $radius } od każdego z { $points }
bench-curve-stations = Wykreślić linię wokół osi obrotu. Każdą pozycję odmierzyć w linii prostej od znaku podanego przy jej numerze; odstęp między sąsiednimi { $apart }.
bench-curve-ordinates = Wykreślić cięciwę. Każdą pozycję odłożyć wzdłuż niej i prostopadle do niej; odstęp między sąsiednimi { $apart }.
bench-curve-plunge = Tarcza przy pozycji prostopadle do ramienia: bliższa strona { $near } od osi obrotu, znak przyrządu { $arm }. Stać obok jej linii, nigdy w niej. Prosto w dół, prosto do góry. Nigdy nie prowadzić jej po łuku.
bench-curve-plunge-guide = Krawędź prowadnicy { $offset } od pozycji i { $gap } od łuku w odległości { $half } po obu jej stronach; bliższa strona tarczy na łuku. Stać obok jej linii, nigdy w niej. Prosto w dół, prosto do góry. Nigdy nie prowadzić jej po łuku.
bench-curve-plunge-square = Wyznaczyć środek łuku, { $radius } od obu końców cięciwy. Tarcza stoi prostopadle do linii od środka przez pozycję, jej zewnętrzna strona, ta dalej od środka, na pozycji; krawędź prowadnicy { $offset } dalej. Stać obok jej linii, nigdy na niej. Prosto w dół, prosto w górę. Nigdy nie skręcać.
bench-curve-rings = Wszystkie pozycje na jedną głębokość, potem wszystkie na następną: { $depths }. Kamień ma { $thick }.
bench-curve-ridges = Zostają grzbiety { $left }: zebrać je na mokro diamentową ściernicą garnkową lub tarczą listkową, ziarno 60, wzdłuż łuku, do linii; potem 120, 200, 400.
bench-fact-pivot = oś obrotu
bench-fact-chord = cięciwa
bench-fact-stands = stoi na
bench-fact-swing = jak znaleźć
bench-fact-line = linia do zachowania
bench-arm = znak { $length }
bench-pivot-top = blat: taśma lub przyssawka, nigdy nie wiercić
bench-pivot-cutout = kamień, który wypadnie później, jeszcze na swoim miejscu
bench-pivot-waste = odpad: ten kawałek zostaje na swoim miejscu, aż łuk będzie gotowy
bench-pivot-off = obok kamienia: zamocować tam coś o tej samej wysokości
bench-station = nr
bench-station-along = wzdłuż
bench-station-off = w bok
bench-station-off-waste = od, w odpad
bench-relief-first = Najpierw cięcia odciążające, aby odpad odchodził w kawałkach.
bench-relief-cut = cięcie
bench-relief-guide = prowadnica na znakach
bench-relief-length = długość
bench-two-marks = { $first } i { $second }

# Openings
bench-opening = Wycięcie { $number }
bench-opening-title = Wycięcie: { $what }, kamień { $thick }
bench-opening-alt = Wycięcie z góry z otworami, cięciami i liniami prowadnicy oraz najwęższym kamieniem obok niego.
bench-opening-corner-alt = Narożnik wycięcia: wytrasowane linie i punkty obok nich
bench-opening-what = co
bench-opening-marks = znaki
bench-opening-how = jak
bench-opening-depths = głębokości
bench-depths-straight = proste
bench-depths-curve = po łuku
bench-opening-stop = środek tarczy zostaje { $short } przed { $mark }
bench-opening-hole = wiercić Ø { $bit }
bench-opening-straight = proste, { $length }
bench-opening-curve = po łuku, { $length }
bench-opening-swing = promień { $radius }, ramię { $arm }, liczba pozycji: { $count }
bench-opening-plunges = liczba cięć wgłębnych: { $count }, wzdłuż cięciwy { $chord }, strzałka { $rise }
bench-opening-drill = na mokro, prosto w dół, od góry
bench-opening-stations-chord = Pozycje, cięcie { $cuts }: wzdłuż cięciwy od znaku e i prostopadle do niej
bench-opening-stations-pivot = Pozycje, cięcie { $cuts }: w linii prostej od naniesionych znaków
bench-opening-step-drill = Najpierw wywiercić wszystkie otwory: tarcza kończy wtedy w otworze i żadne cięcie nie wychodzi dalej w narożnik.
bench-opening-step-saw = Ciąć od otworu do otworu, każde cięcie do pełnej głębokości przed następnym. Tarcza jest okrągła: od spodu końce cięć jeszcze trzymają kawałek. Uwolnić go od góry, wiertłem koronowym w odpadzie nad każdym końcem, resztę zeszlifować; nikt nie pracuje pod spodem. Kamień musi być podparty dookoła i pod kawałkiem, który wypada.
bench-opening-step-saw-parted = Ciąć od otworu do otworu, każde cięcie do pełnej głębokości przed następnym. Tarcza jest okrągła: od spodu końce cięć jeszcze trzymałyby kawałek; otwory obok nich oddzielają go tam, a to, co zostaje, zeszlifować. Nikt nie pracuje pod spodem. Kamień musi być podparty dookoła i pod kawałkiem, który wypada.
bench-opening-step-last = Ostatnie cięcie uwalnia kawałek: najpierw podpory pod nim, nikogo pod spodem. Odtąd kamień obok wycięcia jest słaby: listwy wzmacniające, zanim się go ruszy.
bench-rail = { $what }
bench-rail-holds = szerokość { $width }: wytrzyma; nieść na krawędzi, nigdy za pasek
bench-rail-brace = szerokość { $width }: tylko z listwami wzmacniającymi. { $splint }
bench-rail-weak = szerokość { $width }: za słaby nawet z listwami wzmacniającymi. { $splint }
bench-splint = { $count } × drewno { $wide } × { $high }, długość { $length }, zaciśnięte przed pierwszym cięciem w tym miejscu

# Moving
bench-move = Przenoszenie i ustawianie
bench-move-title = Na krawędzi, ręcznie, przywiązany, gdy stoi
bench-move-title-trolley = Na krawędzi na wózku, przywiązany, na poziomym podłożu
bench-move-title-vacuum = Na krawędzi pod podnośnikiem próżniowym
bench-move-title-gantry = Na krawędzi w dwóch zawiesiach
bench-move-slab = Płyta na kozły, { $alike ->
    [yes] dowolny bok w dół
   *[no] { $side } w dół
 }
bench-move-top = Blat na miejsce, { $alike ->
    [yes] dowolny bok w dół
   *[no] { $side } w dół
 }
bench-move-alt = Kamień na krawędzi ze swoim urządzeniem i po jednej osobie na każdym końcu, w skali; waży do { $mass }.
bench-move-on-edge = Nigdy płasko, trzymany za końce: pęka. Przez całą drogę na krawędzi, kładziony płasko dopiero nad oboma kozłami. Nigdy nie podnosić jednego końca.
bench-move-tied = Przez całą drogę na krawędzi, przywiązany zawsze, gdy stoi.
bench-turn-slab = na krawędzi obok obu kozłów, pojazd zablokowany; dolny długi bok na oba naraz, potem płasko: { $hands ->
    [none] nie rękami, lecz wciągnikiem, podnośnikiem próżniowym lub stojakiem przechylnym
    [open] jak ustalono na stronie 1: wszyscy przy przeciwnym długim boku, nikt pod spodem
    [aid] obraca podnośnik, dwie osoby prowadzą
   *[team] wszyscy przy przeciwnym długim boku, nikt pod spodem
 }. Mocowanie na końcu.
bench-turn-top = na krawędzi obok miejsca, potem na wyłożone listwy w poprzek: { $hands ->
    [none] nie rękami, lecz wciągnikiem, podnośnikiem próżniowym lub stojakiem przechylnym
    [open] jak ustalono na stronie 1: wszyscy przy przeciwnym długim boku, nikt pod spodem
    [aid] obraca podnośnik, dwie osoby prowadzą
   *[team] wszyscy przy przeciwnym długim boku, nikt pod spodem
 }. Listwy po jednej, długi bok podniesiony klinami, żadnego palca pod spodem.
bench-fact-flat = płyta, płasko
bench-fact-set = blat, osadzanie
bench-move-hands = Gdzie trzymać
bench-move-hands-on-edge = Gdzie trzymać: wisi w rękach na krawędzi, nigdy płasko
bench-move-trestles = Dwa kozły z boku: odległości od końca { $corner } i ile każdy niesie
bench-move-supports = Na czym stoi: środek każdej podpory, jak na rysunku
bench-hands-alt = Kamień z góry, osoba w każdym miejscu i ile każda dźwiga.
bench-hands = { $number }: { $mass }
bench-trestles-alt = Płyta na dwóch kozłach, { $first } i { $second } od jej końca.
bench-supports-alt = Blat z góry na podporach i ile każda z nich niesie.
bench-supports-short = Tak nie wystarczy: najpierw więcej podpór, patrz strona 1.
bench-free-span = { $length } w najszerszym miejscu; najwyżej { $limit }
bench-overhang = { $edge }: { $length }; najwyżej { $limit }. Dać tam podporę
bench-overhang-person = { $edge }: { $length }; nikt się tam nie opiera albo dać tam podporę
bench-bearing-over = osoba oparta o blat obciąża go o { $person }, dopuszczalne { $limit }: nikt tam nie siada ani się nie opiera, albo dodać podporę
bench-support-name = { $number } { $what }
bench-support = { $along } od lewej, { $up } od dołu; niesie najwyżej { $mass }
bench-fact-trolley = wózek
bench-fact-vacuum = podnośnik próżniowy
bench-fact-slings = zawiesia
bench-fact-lift = ręcznie
bench-fact-fall = gdy upadnie
bench-fact-free = bez podpory
bench-fact-over = poza podpory
bench-trolley = oznaczony na { $rated } lub więcej; pchanie { $push } na poziomie
bench-rated = oznaczony na { $rated } lub więcej
bench-slings = { $each } na każdym, { $tension } w każdym cięgnie przy { $angle }
bench-fall = nikogo bliżej niż { $clear } po obu stronach; przywiązać
bench-lift-never = nigdy: { $people } razem może liczyć na { $limit } łącznie{ $two }
bench-lift-two = {""}, dwie osoby na { $mass }
bench-lift-above = powyżej wartości orientacyjnej: jedna osoba dźwiga { $carried }, wartość to { $limit }; najpierw ustalić (strona 1)
bench-lift-over = nie tak: jedna osoba dźwigałaby { $carried }, wartość orientacyjna to { $limit }
bench-lift-tips = nie tak: przechyla się
bench-lift-breaks = nie rękami: płasko lub na krawędzi zgina się za mocno; usztywnić albo użyć urządzenia
bench-lift-many = nie tak: tyle osób nie podniesie równo jak jedna: { $people }
bench-lift-within = liczba osób: { $people }, każda do { $most }; żadna wartość nie czyni podnoszenia bezpiecznym

# Dust, noise, hands
bench-dust = Pył, hałas, dłonie
bench-dust-title = Pył, hałas, dłonie
bench-dust-order = Najpierw najskuteczniejsze: co zabiera pył
bench-dust-limits = Ile i jak długo
bench-dust-settled = Ustalone dla tego zlecenia
bench-control = { $state ->
    [done] { $what }: zaplanowane
    [open] { $what }: JESZCZE OTWARTE
   *[other] { $what }: dopilnować w dniu pracy
 }
bench-fact-mask = maska tutaj
bench-fact-hands = dłonie
bench-fact-ears = uszy
bench-fact-slurry = szlam
bench-fact-slurry-dry = pył
bench-fact-silica = co zawiera
bench-fact-vacuum-class = odkurzacz
bench-mask-at-hand = { $mask }; twarz gładko ogolona, szczelność sprawdzona; zakłada się przed pierwszym cięciem, zdejmuje przy czystej podłodze
bench-hands-allowed = { $action } dziennie na osobę, licząc wszystko, co wibruje; to zlecenie zajmuje { $job }
bench-hands-other = { $hands }, inna praca liczy się jako { $other }
bench-hands-never = ta maszyna drga za mocno nawet na jedną minutę: inna maszyna
bench-ears = { $level } przy uchu: ochrona założona przed pierwszym uruchomieniem; bez niej { $minutes } wyczerpuje cały dzień
bench-slurry = około { $mass }, wiadra: { $buckets }; zgarniać i odsysać na mokro, nigdy do kanalizacji
bench-bags = { $bags ->
    [one] jeden worek odkurzacza
    [few] do { $bags } worków odkurzacza
    [many] do { $bags } worków odkurzacza
   *[other] do { $bags } worka odkurzacza
 }
bench-nothing-caught = nic go nie wychwytuje
bench-silica = do { $dust } kamienia, w tym { $silica } krzemionki
bench-wear-mask = Maska: współczynnik { $factor } lub więcej
bench-wear-mask-here = { $mask }: współczynnik { $factor }
bench-wear-mask-ready = Maska na twarzy podczas cięcia, aż podłoga będzie czysta
bench-wear-mask-assess = Maska: najpierw zlecić ocenę narażenia
bench-wear-ears = Uszy: { $level }
bench-wear-eyes = Gogle i osłona twarzy
bench-wear-hands = Przylegające rękawice, bez luźnych mankietów
bench-wear-feet = Nieślizgające się buty z podnoskiem
bench-wear-disc = Tarcza: kręci się jeszcze po wyłączeniu

# Helper
bench-emergency = Numer alarmowy: { $number }
bench-vacuum-off = Odkurzacz wyłącza się w
bench-helper-weight = Płyta waży do { $slab }, blat do { $top }. { $hands ->
    [none] Nikt nie podnosi ich rękami.
    [top] Nikt nie podnosi płyty rękami ani blatu samemu.
   *[both] Nikt nie podnosi ich sam.
 }

# The day and its record
bench-day = Dzień i zapis
bench-day-title = Dzień pracy i co się wydarzyło
bench-day-what = co
bench-day-minutes = trwa
bench-day-at = zrobione o
bench-day-read = Przeczytać na głos stronę pomocnika, wypróbować znaki stop, wypełnić stronę 1
bench-day-unload = Rozładować płytę na krawędzi, przywiązaną; potem płasko na kozły
bench-day-mark = Wytrasować i sprawdzić każdą linię; próba w odpadzie
bench-day-straight = Cięcie { $cut }, krawędź { $edge }: odpada { $waste }
bench-day-curve = Cięcia { $cuts }, łuk { $edge }
bench-day-opening = Cięcia { $cuts }, otwór: { $what }
bench-day-sum = Wszystkie cięcia: { $stone } tarcza w kamieniu, { $setting } ustawianie
bench-day-move = Blat na krawędzi, przywiązany, na swoje miejsce
bench-day-clean = Szlam zebrać, póki mokry, podłogę spłukać, potem zdjąć maski
bench-day-clean-dry = Pył odkurzyć wszędzie, potem zdjąć maski
bench-day-bring = Zabrać
bench-day-practice = Najpierw próba w odpadzie
bench-day-wrong = Gdy coś pójdzie źle
bench-day-started = początek
bench-day-ended = koniec
bench-day-initials = inicjały
bench-day-date = data
bench-day-annex = Obliczenia, tabele, każde ostrzeżenie w całości i źródła: kerfwright sheet JOB --annex
bench-bring-guide = prowadnica
bench-bring-guide-is = prosta, { $length }, i dwa ściski{ $suction ->
    [yes] , przyssawka mocująca
   *[no] {""}
 }{ $jig ->
    [yes] ; ramię cyrkla z osią
   *[no] {""}
 }
bench-bring-discs = tarcze
bench-bring-discs-are = { $discs } z zapasem{ $grind ->
    [yes] ; garnek diamentowy lub ściernice listkowe do szlifowania
   *[no] {""}
 }
bench-bring-bits = wiertła koronowe
bench-bring-bits-are = { $bits }, przeznaczone do obrotów maszyny, która je obraca; szablon do prowadzenia
bench-bring-bearers = łaty
bench-bring-bearers-are = { $count } klocków jednej wysokości, drewno iglaste, po { $long }, i kliny; na pomoście{ $edges }
bench-bring-bearers-edges = {""}, z tego { $count } pod krawędziami bez cięcia
bench-bring-deck = pomost
bench-bring-deck-are = deski grubości co najmniej { $thick } wzdłuż płyty na obu kozłach, długości { $length }, obok siebie na szerokość { $wide }; na nich łaty, a na łatach płyta
bench-bring-turn = do kładzenia
bench-bring-turn-is = wciągnik, podnośnik próżniowy lub stojak przechylny
bench-bring-carry = do noszenia
bench-bring-carry-is = { $aid ->
    [trolley] wózek oznaczony na { $rated }, dwa kozły
    [vacuum] podnośnik próżniowy oznaczony na { $rated }, dwa kozły
    [gantry] suwnica z zawiesiami na { $rated }, dwa kozły
   *[none] dwa kozły
 }, pasy, listwy, odkurzacz; to, co na znakach
bench-bring-tape = trasowanie
bench-bring-tape-is = { $rolls ->
    [one] jedna rolka taśmy maskującej { $roll }
   *[other] taśma maskująca, liczba rolek po { $roll }: { $rolls }
 }, taśma miernicza stalowa, kątownik, cienki ołówek, sznur traserski
bench-bring-water = woda
bench-bring-water-is = razem { $water }; wiadra na szlam: { $buckets }
bench-practice-cut = cięcie
bench-practice-cut-is = w { $piece } jak na rysunku, długość { $length }, na głębokość { $depths }
bench-practice-plunge = zagłębienia
bench-practice-plunge-is = tak samo w { $piece }, trzy obok siebie, na głębokość { $depths }
bench-practice-offset = krawędź prowadnicy do bliższej strony tarczy ({ $reckoned })
bench-practice-jig = znak przyrządu do bliższej strony tarczy ({ $reckoned })
bench-practice-minutes = minuty w kamieniu; długość, głębokość
bench-practice-differs = Inna liczba niż w nawiasie: przesunąć o tyle znaki prowadnicy lub ramię; linie do zachowania zostają.
bench-wrong-cracks = pęka
bench-wrong-cracks-do = Wyłączyć. Nikogo pod spodem. Łaty pod obie części, zanim cokolwiek się ruszy; potem zmierzyć i zaplanować to, co zostało.
bench-wrong-pinches = zakleszcza
bench-wrong-pinches-do = Wyłączyć, poczekać, aż tarcza stanie, rozeprzeć rzaz klinem, wyjąć maszynę. Ponownie w rzaz tylko z pełnymi obrotami.
bench-wrong-slips = schodzi z linii
bench-wrong-slips-do = Wyłączyć. Zmierzyć, jak daleko i jak głęboko, zapisać w pliku zlecenia w części o tym, co się wydarzyło: nowy plan powie, co zostało z blatu.

# Repair
bench-repair = Co się wydarzyło
bench-repair-title = Co się wydarzyło i co zostało
bench-repair-alt = Kamień taki, jaki jest, blat, który został, i linią przerywaną blat, jaki miał być.
bench-repair-as-planned = Wszystko leży na swojej linii. Dalej według planu.
bench-repair-within = Mieści się w naddatku: nic nie stracone. Szlifować do linii gotowej.
bench-repair-grind = Nic nie jest stracone: na krawędzi zostało za dużo. Zeszlifować do gotowej linii.
bench-repair-again = Nic nie jest stracone: na krawędzi zostało za dużo. Odciąć pasek, według jego strony.
bench-repair-smaller = Blat wychodzi mniejszy. Przed następnym cięciem zapytać zamawiającego.
bench-repair-opening = Otwór wychodzi inny, niż miał być. Przed następnym cięciem zapytać zamawiającego.
bench-repair-same-a = Litery to naroża kamienia takiego, jaki jest teraz. A jest tam, gdzie było, AB biegnie jak przedtem; pozostałe są nowe.
bench-repair-new = Litery to naroża kamienia takiego, jaki jest teraz: wszystkie są nowe. Napisać je na kamieniu.
bench-repair-wanted = miało być
bench-repair-now = teraz
bench-repair-weighs = waży
bench-repair-first = najpierw
bench-repair-run-outs = dokończyć to, co cięcie zostawiło: { $pieces }
bench-repair-grind-first = zeszlifować do linii przed następnym cięciem: { $edges }
bench-repair-lines = w pliku zlecenia
bench-repair-part = część
bench-repair-came = wyszło
bench-repair-is-wanted = miało być
bench-repair-is-now = teraz
bench-repair-do = do zrobienia
bench-repair-edge = krawędź { $name }
bench-repair-corner = naroże { $name }, { $what }
bench-came-not-cut = nie cięte
bench-came-on-line = na swojej linii
bench-came-short = o { $off } za mało
bench-came-over = o { $off } za dużo
bench-came-slanting-short = od { $start } do { $end } za mało
bench-came-slanting-over = od { $start } do { $end } za dużo
bench-do-nothing = nic
bench-do-finish = tylko wykończyć
bench-do-grind = zeszlifować { $off }
bench-do-cut = ciąć: patrz jego strona

# The annex
annex-findings = Każde ustalenie w całości
annex-stops = Zakazy startu: pracy nie wolno zacząć, dopóki trwa choć jeden z nich
annex-open = Otwarte: do wypełnienia lub obejrzenia przed startem
annex-warnings = Ostrzeżenia
annex-every = Za każdym razem
annex-stone = Kamień, położenie i kawałki
annex-strength = Leżenie, stanie, podnoszenie
annex-way = Droga wniesienia
annex-health = Pył, dłonie, uszy: wartości
annex-assumed = Wartości, których plik zlecenia nie podał
annex-sources = Źródła
annex-key = klucz
annex-value = wartość
annex-why = dlaczego
annex-what = co
annex-document = dokument
annex-clause = punkt
annex-year = rok
annex-no-year = nie podano
annex-place = Gdzie blat leży na płycie
annex-pieces = Kawałki
annex-cuts = Cięcia
annex-balance = Płyta { $slab } = gotowy blat { $top } + naddatek na krawędziach { $left } + rzaz { $kerf } + odpad { $waste }. Okruchy między nacięciami liczą się jako rzaz.
annex-range = { $low } do { $high }
annex-three = { $low } do { $high }, prawdopodobnie { $likely }
annex-kind = kamień
annex-density = gęstość
annex-thickness = grubość
annex-allowed = wytrzymałość
annex-strength-is = { $strength } ÷ { $factor } ({ $source })
annex-slab-area = płyta, powierzchnia
annex-slab-mass = płyta waży
annex-top-mass = blat waży
annex-spare = najmniejszy zapas
annex-turn = obrót
annex-corner = naroże blatu
annex-corner-of-top = naroże { $name }
annex-x = x od A wzdłuż AB
annex-y = y od A prostopadle do niej
annex-edge = krawędź
annex-edge-sawn = cięta, naddatek { $left }
annex-edge-flush = leży na krawędzi płyty { $edge }
annex-length = długość
annex-lies = jak leży
annex-piece = kawałek
annex-after = po cięciu
annex-area = powierzchnia
annex-mass = waży
annex-rectangle = mieści prostokąt
annex-left = kamień do zachowania
annex-tool = narzędzie
annex-core-bit = wiertło koronowe { $bit }
annex-bending = Naprężenie od ciężaru własnego, × 1,2 na przenoszenie, w najcieńszym kamieniu; tylko kamień bez wad
annex-stone-state = kamień
annex-state = { $name }
annex-flat-best = płasko, najlepsze łaty
annex-flat-hands = płasko, w rękach
annex-flat-ends = płasko, za końce
annex-one-end = jeden koniec podniesiony
annex-on-edge = na krawędzi, za końce
annex-may = dopuszczalne
annex-lifting = Podnoszenie rękami i czego wymagają urządzenia
annex-slab = płyta
annex-top = blat
annex-guideline = wartość orientacyjna
annex-guideline-is = { $each } na jedną osobę ({ $source }); nie daje pewności, że podnoszenie poniżej niej jest bezpieczne
annex-person = osoba
annex-from-end = od końca
annex-from-side = od boku
annex-carries = dźwiga
annex-figure = wartość w tym zespole
annex-trolley-rated = wózek oznaczony na
annex-trolley-push = pchanie, poziomo
annex-trolley-ramp = spadek 1:12 dodaje
annex-trolley-tips = przewraca się na bok
annex-vacuum-rated = podnośnik próżniowy oznaczony na
annex-sling-pull = siła w cięgnie zawiesia
annex-leans = na krawędzi upada powyżej
annex-rails = Wąskie paski kamienia przy otworach
annex-rail-is = szerokość { $width }, długość { $length }: { $together } z sąsiednim, { $alone } sam
annex-setting = Na podporach
annex-support = podpora
annex-carries-most = dźwiga najwyżej
annex-with-person = z opartą osobą
annex-reaches = wystaje poza
annex-person-stress = naprężenie z osobą
annex-way-of = Droga wniesienia: { $name }
annex-way-place = miejsce
annex-way-carried = najlepiej nieść
annex-way-spare = luz
annex-way-clears = zapas { $spare }
annex-way-tight = ciasno: zapas { $spare }
annex-way-short = brakuje { $short }
annex-way-note = Zmierzyć każde miejsce jeszcze raz, z niosącymi ludźmi i urządzeniem.
annex-limit = krzemionka
annex-vibration = drgania
annex-vibration-is = { $reckoned } z niepewnością, { $job } tego zlecenia; dzień { $day }; próg działania { $action }, wartość graniczna { $limit } ({ $source })
annex-noise = hałas
annex-noise-is = { $level } przez { $hours }; dzień { $day }; obowiązek od { $duty } ({ $source })
annex-cited = { $document }{ $borrowed }; sprawdzić obowiązujące przepisy
annex-cited-year = { $document }, { $year }{ $borrowed }; sprawdzić obowiązujące przepisy
annex-masks = maski, które wystarczą
annex-mask = { $mask } (współczynnik { $factor })
annex-authority = o przepisy pytać

# In a terminal
answer-job = zlecenie
answer-fits = mieści się
answer-fits-is = blat { $length } × { $width }, zapas { $spare } w najciaśniejszym miejscu
answer-weighs = waży
answer-weighs-is = blat do { $top }, płyta do { $slab }
answer-time = czas
answer-time-is = { $stone } z tarczą w kamieniu, { $setting } na ustawianie
answer-straight = prosto, krawędź { $edge }, { $length }
answer-relief = nacięcie odciążające przy { $edge }, { $length }
answer-curve = łuk przy { $edge }, { $length }
answer-hole = otwory przy { $edge }
answer-guide = { $first } od { $from }, { $second } od { $to }
answer-chord = cięciwa { $length }
answer-frees = uwalnia
answer-more = Więcej z --full:
answer-sheet = gotowy blat    { $low } do { $high }
    cięcia         { $straight } proste, { $curves } łukowe
    czas cięcia    { $sawing } z tarczą w kamieniu, { $setting } na ustawianie
    zakazy startu  { $stops }
weigh-stone = { $name }
weigh-place = miejsce
weigh-no-fit = blat nie mieści się na tej płycie: ważony taki, jaki miał być
weigh-region = obszar
weigh-balance = środek ciężkości
weigh-balance-is = { $end } od końca, { $side } od boku
weigh-mass = waży
weigh-mass-is = najwyżej { $high }: do podnoszenia przyjąć tę wartość; prawdopodobnie { $likely }, co najmniej { $low }
weigh-size = wymiary
weigh-size-is = { $length } × { $width } × { $thick }, { $area }
weigh-tilt = postawienie na krawędzi

# On a telephone
phone-plan = plan { $plan }
phone-contents = Spis treści
phone-light = Jasno lub ciemno
phone-back = Wstecz
phone-next = Dalej
phone-bar = Droga przez arkusz
phone-clear = Odznacz wszystko na tym telefonie
phone-forgets = Ta przeglądarka plików zapomina zaznaczenia po zamknięciu. Otwórz plik w przeglądarce internetowej.
