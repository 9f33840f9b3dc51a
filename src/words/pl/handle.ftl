# Findings of handling: a line, and in full.

crush-and-falls = { $stone }: miażdży to, na co spadnie
    .detail = { $mass } naciska z siłą { $weight }. Na krawędzi stoi na { $thickness }: pchnięcie z siłą { $push } w górną krawędź przewraca kamień, a pochylony o więcej niż { $tips } upada sam, na pas podłogi szerokości { $shadow } po każdej stronie: tam nikt nie stoi i nikt nie próbuje kamienia łapać. Przywiązać go do czegoś, co go utrzyma, zanim ktokolwiek go puści, zawsze jeden kamień naraz; to, o co się opiera, musi chronić go przed upadkiem do przodu, a jego dolną krawędź przed wyślizgnięciem. Przy pochyleniu { $leans }° górna krawędź ciągnie wiązanie z siłą { $pulls }, w tej kolejności; wiązanie i to, do czego jest zamocowane, muszą wytrzymać kilka razy tyle. Odstawiać na dwie łaty, nigdy na podłogę: palce rąk, palce stóp i dzieci z dala od szczeliny.

way-in-blocked = blat nie przejdzie: { $place }
    .detail = Na krawędzi brakuje { $edge_short } ({ $edge_measure }: potrzeba { $edge_needs }, jest { $edge_has }). Pionowo brakuje { $upright_short } ({ $upright_measure }: potrzeba { $upright_needs }, jest { $upright_has }). Co pomaga, jedno z tych, albo oba, gdy przy danym ustawieniu brakuje dwóch wymiarów: { $remedies }. Leżąc płasko też nie przejdzie.

way-in-upright = blat przejdzie tylko pionowo: { $place }
    .detail = Na krawędzi brakuje { $edge_short } ({ $edge_measure }: potrzeba { $edge_needs }, jest { $edge_has }). Pionowo przechodzi z zapasem { $spare }. Co pomaga, jedno z tych, albo oba, gdy przy danym ustawieniu brakuje dwóch wymiarów: { $remedies }. Postawienie na krótkim boku wymaga { $stand_up } wysokości w świetle: zrobić to przed tym miejscem, z takim urządzeniem i tyloma ludźmi, ilu wymaga masa, i nigdy na schodach.

way-in-flat-only = blat przejdzie tylko leżąc płasko, a to niewskazane: { $place }
    .detail = Na krawędzi brakuje { $edge_short } ({ $edge_measure }: potrzeba { $edge_needs }, jest { $edge_has }). Pionowo brakuje { $upright_short } ({ $upright_measure }: potrzeba { $upright_needs }, jest { $upright_has }). Płasko przechodzi z zapasem { $spare }. Co pomaga, jedno z tych, albo oba, gdy przy danym ustawieniu brakuje dwóch wymiarów: { $remedies }. Płasko może pęknąć pod własnym ciężarem: patrz tabela zginania; płasko nieść tylko na płycie podkładowej pod całą powierzchnią albo wcale.

way-in-tight = ciasna droga wniesienia: { $place }
    .detail = Niesiony { $pose } przechodzi z zapasem tylko { $spare }. Zmierzyć jeszcze raz w najwęższym miejscu i przed kamieniem przenieść tamtędy łatę o jego długości i deskę o jego wysokości.

way-in-slab = ciąć przed wniesieniem: cała płyta nie przejdzie w tym miejscu: { $place }
    .detail = Na krawędzi brakuje { $edge_short } ({ $edge_measure }: potrzeba { $edge_needs }, jest { $edge_has }). Pionowo brakuje { $upright_short } ({ $upright_measure }: potrzeba { $upright_needs }, jest { $upright_has }). Co pomaga, jedno z tych, albo oba, gdy przy danym ustawieniu brakuje dwóch wymiarów: { $remedies }. Gotowy blat przechodzi: rozładować i ciąć po tej stronie, przed tym miejscem.

way-in-slab-flat = ciąć przed wniesieniem: cała płyta przejdzie tylko leżąc płasko: { $place }
    .detail = Na krawędzi brakuje { $edge_short } ({ $edge_measure }: potrzeba { $edge_needs }, jest { $edge_has }). Pionowo brakuje { $upright_short } ({ $upright_measure }: potrzeba { $upright_needs }, jest { $upright_has }). Płasko przechodzi z zapasem { $spare } i może pęknąć pod własnym ciężarem. Co pomaga, jedno z tych, albo oba, gdy przy danym ustawieniu brakuje dwóch wymiarów: { $remedies }. Gotowy blat przechodzi: rozładować i ciąć po tej stronie, przed tym miejscem.

tips-out-of-hands = { $stone }: przechyla się, gdy ludzie stoją w tych miejscach
    .detail = Środek ciężkości leży { $off } poza tym, co te miejsca mogą utrzymać. Ustawić ludzi po obu jego stronach.

lifter-off-the-edge = { $stone }: osoba { $lifter } nie ma krawędzi, za którą mogłaby trzymać
    .detail = Podane miejsce leży { $away } od krawędzi, więcej niż { $most }. Podać miejsca na krawędzi, w układzie współrzędnych samego blatu.

lifter-at-cutout = { $stone }: osoba { $lifter } podnosi obok wycięcia
    .detail = Miejsce leży { $away } od wycięcia, mniej niż szerokość dłoni, { $least }. Podnosić tam, gdzie kamień jest cały; nigdy nie chwytać za pasek kamienia przy wycięciu.

carry-too-far = { $way } to za daleko, aby nieść bez odpoczynku
    .detail = Masy orientacyjne dotyczą niesienia przy ciele na odległość do { $most }. Po drodze odstawić kamień na krawędzi na dwie łaty albo wieźć go na wózku.

brace-the-rail = { $rail } ({ $cutouts }): { $verdict }
    .detail = Ma { $width } szerokości i { $length } długości ({ $stone }). Gdy kamień leży płasko albo jest w rękach ludzi, naprężenie wynosi { $together } z pomocą reszty kamienia i { $alone }, gdy pasek musi sam przejąć zginanie, tak jak wtedy, gdy najpierw podnosi się tę stronę; na krawędzi na dwóch podporach: { $on_edge }; dopuszczalne { $allowed }. Przed podniesieniem zamocować wzdłuż paska, na sztorc i przylegające do kamienia na całej długości, proste drewno { $timber_width } × { $timber_depth } (liczba sztuk obok siebie: { $timbers }), długości co najmniej { $timber_length }, ściskami z podkładkami na pełnym kamieniu na obu końcach: zostaje wtedy { $braced }. Nieść na krawędzi; za ten pasek nigdy nie trzymać i nie zakładać na nim ścisków.

brace-the-rail-on-a-frame = { $rail } ({ $cutouts }): { $verdict }
    .detail = Ma { $width } szerokości i { $length } długości ({ $stone }). Gdy kamień leży płasko albo jest w rękach ludzi, naprężenie wynosi { $together } z pomocą reszty kamienia i { $alone }, gdy pasek musi sam przejąć zginanie, tak jak wtedy, gdy najpierw podnosi się tę stronę; na krawędzi na dwóch podporach: { $on_edge }; dopuszczalne { $allowed }. Żadne drewno nie jest dość sztywne: cały kamień ułożyć na ramie lub płycie podkładowej. Nieść na krawędzi; za ten pasek nigdy nie trzymać i nie zakładać na nim ścisków.

brace-the-neck = { $stone }, { $neck }: nie wolno mu dźwigać kamienia, który jest za nim
    .detail = Ma { $width } szerokości; wiszące na nim { $hanging }, gdy kamień leży płasko, daje naprężenie { $stress }, dopuszczalne { $allowed }. Gdy kamień leży płasko, zawsze podpierać go po obu stronach przewężenia. Przed podniesieniem zamocować wzdłuż przewężenia, na sztorc i przylegające do kamienia na całej długości, proste drewno { $timber_width } × { $timber_depth } (liczba sztuk obok siebie: { $timbers }), długości co najmniej { $timber_length }, ściskami z podkładkami na pełnym kamieniu na obu końcach: zostaje wtedy { $braced }.

brace-the-neck-on-a-frame = { $stone }, { $neck }: nie wolno mu dźwigać kamienia, który jest za nim
    .detail = Ma { $width } szerokości; wiszące na nim { $hanging }, gdy kamień leży płasko, daje naprężenie { $stress }, dopuszczalne { $allowed }. Gdy kamień leży płasko, zawsze podpierać go po obu stronach przewężenia. Żadne drewno nie jest dość sztywne: cały kamień ułożyć na ramie lub płycie podkładowej.

narrow-rail = { $rail } ({ $cutouts }): węższy, niż zostawia się w branży
    .detail = Leży obok otworu na baterię i ma { $width } szerokości; jako minimum obok wycięcia opublikowano { $least }, a dla otworu na baterię nie opublikowano nic mniejszego. Przesunąć otwór lub go zmniejszyć albo zapytać, czy kamień da się na stałe usztywnić od spodu.

guideline-is-not-a-limit = Wartość orientacyjna podnoszenia nie jest bezpieczną granicą
    .detail = { $each } na osobę dotyczy sprawnych dorosłych, którzy podnoszą blisko ciała, na wysokości pasa, prosto i rzadko; dla wielu ludzi, przy mokrych rękach, na schodach i na nierównym podłożu jest to mniej. Nie jest to obietnica, że podnoszenie poniżej tej wartości jest bezpieczne. Równanie podnoszenia dotyczy podnoszenia, nie niesienia. Sprawdzić obowiązujące przepisy.

tips-off-supports = Blat nie leży stabilnie na podporach
    .detail = Podpory nie obejmują środka ciężkości. Dodać lub przesunąć podpory, zanim blat zostanie położony.

support-lifts-off = { $support }: niczego nie podpiera
    .detail = Blat nie naciska na tę podporę. Sprawdzić jej miejsce i wysokość; nie dociągać do niej blatu.

falls-off-trestles = { $stone }: nie leży na kozłach
    .detail = Przy kozłach w odległości { $first } i { $second } od końca płyty środek ciężkości nie leży między nimi albo kamień do nich nie sięga. Przestawić je przed tym cięciem albo pominąć lift.trestles.

bends-on-trestles = { $stone }: dwa kozły nie wystarczą
    .detail = Na kozłach w odległości { $first } i { $second } od końca płyty naprężenie wynosi { $stress }, krotność dopuszczalnego: { $times }. Zamiast tego ułożyć kamień na płaskiej płycie podkładowej pod całą powierzchnią.

aid-too-weak = { $stone }: urządzenie do podnoszenia nie jest oznaczone na jego masę
    .detail = Urządzenie ({ $aid }) jest oznaczone na { $rated }; ten kamień wymaga { $needs }. Użyć takiego, które jest na to oznaczone, albo wziąć lżejszy kamień: pociąć go przed ruszeniem z miejsca.

aid-without-mark = co jest podane na urządzeniu ({ $aid })? Potrzeba { $needs }
    .detail = Odczytać podany na nim udźwig i wpisać go tutaj; najcięższy kamień: { $stone }. Bez oznaczenia udźwigu nie podnosić. W pliku zlecenia: lift.rated.

in-slings-no-place = { $stone }: brak miejsca na dwa zawiesia
    .detail = Gdziekolwiek przejdą dwa zawiesia, wiszący kamień jest zginany bardziej, niż wolno. Usztywnić go albo nieść ułożonego na ramie.

on-a-trolley = wózek: na krawędzi, przywiązany, na równym, poziomym podłożu
    .detail = Cięższym długim bokiem w dół, przywiązany do ramy wózka, po jednej osobie na każdym końcu i nikogo z boku. Przy zjeździe wózek przytrzymuje się od góry pochyłości. Instrukcja producenta ma pierwszeństwo.

on-a-trolley-numbers = { $stone }: jeśli się przewróci, zabije; wózek z oznaczonym udźwigiem { $rated } lub więcej
    .detail = Na wózku środek ciężkości kamienia jest { $height } nad podłogą, a całość przewraca się na podłożu o spadku poprzecznym { $tips } (w spoczynku, twarde koła; w ruchu wcześniej). Na poziomym trzeba pchać z siłą co najmniej { $push }, a na pochylni o nachyleniu 1:{ $run } jeszcze { $ramp } więcej, i ta siła ciągnie też wózek w dół.

under-a-vacuum-lifter = podnośnik próżniowy: o udźwigu podwójnym wobec masy i z drugim zabezpieczeniem
    .detail = Tylko na suchej, czystej, zdrowej, polerowanej lub szlifowanej powierzchni: nigdy na szorstkiej ani łupanej i nigdzie nad wadą lub sklejeniem. Na pionowej powierzchni przyssawki trzymają tylko tarciem: przyjąć podaną na to wartość producenta. Drugie zabezpieczenie (pas, zawiesie) pod kamieniem przez cały czas. Podnieść na szerokość dłoni, odczekać i przed przemieszczeniem sprawdzić, czy każda przyssawka trzyma. Instrukcja producenta ma pierwszeństwo.{ $wet ->
            [yes] {" "}W tej pracy tnie się z wodą: najpierw zmyć szlam i dać powierzchni wyschnąć.
           *[other] {""}
        }{ $face ->
            [porous] {" "}Ten kamień jest porowaty: powietrze przez niego przechodzi i chwyt zawodzi. Zapytać producenta albo użyć zawiesi.
            [split] {" "}Ten kamień często sprzedaje się z powierzchnią łupaną: żadna przyssawka na niej nie trzyma.
           *[other] {""}
        }

under-a-vacuum-lifter-numbers = { $stone }: jeśli spadnie, zabije; podnośnik próżniowy z oznaczonym udźwigiem { $rated } lub więcej
    .detail = Przyssawki parami wokół środka ciężkości, liczba: { $cups }; każda niesie { $each }.

under-a-vacuum-lifter-no-room = { $stone }: dla podnośnika próżniowego nie ma miejsca
    .detail = Musiałby być oznaczony na { $rated } lub więcej, ale wokół środka ciężkości nie ma miejsca na parę przyssawek. Użyć zawiesi albo wózka.

in-slings = suwnica bramowa: ustawia ją i obsługuje osoba kompetentna
    .detail = Hak nad środkiem ciężkości, krawędzie osłonięte podkładkami, zawiesia związane tak, aby nie mogły się zsunąć ku sobie, lina prowadząca na każdym końcu, nikogo pod kamieniem ani obok niego. Urządzenia do podnoszenia muszą być po przeglądzie, oznaczone i ustawione przez osobę kompetentną, a gdzie prawo tego wymaga, z uprawnieniami.

in-slings-numbers = { $stone }: jeśli spadnie, zabije; zawiesia w odległości { $first } i { $second } od lewego końca
    .detail = Od dolnego końca, gdy stoi pionowo. Na każdym zawiesiu wisi { $each }; przy kącie { $legs } między cięgnami siła w każdym z nich to { $factor } ciężaru, { $tension }, a hak wisi { $hook } lub wyżej nad kamieniem.

not-a-hand-lift = nie do podnoszenia rękami: { $stones }
    .detail = { $masses }. { $people ->
            [one] Jedna osoba może liczyć na { $team }
            [few] { $people } osoby podnoszące razem mogą liczyć na { $team }
            [many] { $people } osób podnoszących razem może liczyć na { $team }
           *[other] { $people } osoby podnoszące razem mogą liczyć na { $team }
        }; powyżej mniej więcej dwukrotności tej wartości ryzyko jest poważne nawet dla sprawnych, przeszkolonych osób. Podać urządzenie w lift.aid: wózek, który wiezie kamień na krawędzi, o udźwigu { $rated } lub więcej, tylko na równym, poziomym podłożu (pchanie z siłą co najmniej { $push }); podnośnik próżniowy o udźwigu { $vacuum } lub więcej, na suchej, czystej, nieprzerwanej powierzchni; suwnica bramowa lub wciągnik z zawiesiami, o udźwigu { $rated } lub więcej, ustawione przez osobę kompetentną w sprawach urządzeń do podnoszenia. Postawienie najcięższego na krawędzi wymaga na początku { $tilt } po przeciwnej stronie.

breaks-in-hands = pękłby ludziom w rękach: { $stones }
    .detail = { $masses }. Jakkolwiek { $people ->
            [one] trzyma go jedna osoba
            [few] trzymają go { $people } osoby
            [many] trzyma go { $people } osób
           *[other] trzymają go { $people } osoby
        }, płasko czy na krawędzi, kamień jest zginany bardziej, niż wolno. Usztywnić go, ułożyć na płycie podkładowej albo podać urządzenie w lift.aid: wózek o udźwigu { $rated } lub więcej; podnośnik próżniowy o udźwigu { $vacuum } lub więcej; suwnica bramowa z zawiesiami, ustawiona przez osobę kompetentną.

more-than-four = za dużo osób, aby podnosić równo jak jedna: { $people }
    .detail = Mało prawdopodobne, aby więcej osób niż { $most } pracowało jako zespół, i nie opublikowano, na jaką część ich siły można wtedy liczyć. Użyć urządzenia albo mniej osób i lżejszego elementu.

lifter-over-guideline = więcej niż wartość orientacyjna: { $stones }
    .detail = { $masses }. { $people ->
            [one] Jedna osoba może liczyć na { $team }
            [few] { $people } osoby podnoszące razem mogą liczyć na { $team }
            [many] { $people } osób podnoszących razem może liczyć na { $team }
           *[other] { $people } osoby podnoszące razem mogą liczyć na { $team }
        }: to wartość, przy której trzeba się przyjrzeć dokładniej, nie granica. Przed podniesieniem ustalić, kto podnosi, którędy i gdzie się odstawia kamień; lepiej więcej osób, lżejszy element albo urządzenie. Postawienie najcięższego na krawędzi wymaga na początku { $tilt } po przeciwnej stronie.

tilt-over-guideline = ustalić, jak stawia się go na krawędzi; po przeciwnej stronie wymaga to: { $stones }
    .detail = { $people ->
            [one] Jedna osoba może liczyć na { $team }
            [few] { $people } osoby razem mogą liczyć łącznie na { $team }
            [many] { $people } osób razem może liczyć łącznie na { $team }
           *[other] { $people } osoby razem mogą liczyć łącznie na { $team }
        }. Przenieść go na krawędzi od dostawy aż tam, gdzie jest potrzebny. { $hands ->
            [0] Tego, co wymaga więcej niż około dwukrotności, nikt nie obraca rękami: tam zagrożenie jest poważne także dla silnych, przeszkolonych ludzi. Wciągnik, podnośnik próżniowy lub stojak, który przechyla się z przywiązanym kamieniem, przez osobę kompetentną: ustalić co, zanim przyjedzie.
           *[other] Aby go obrócić, zablokować długi bok, wokół którego się obraca, aby nie mógł się ześlizgnąć, wszyscy przy przeciwnym długim boku, podnosić stopniowo na klockach i mieć mocowanie gotowe, zanim stanie; albo obrócić go wciągnikiem lub podnośnikiem próżniowym.
        } Nikt nie stoi po stronie, na którą może upaść.

bends-flat-always = { $stone }: nigdy płasko na dwóch podporach
    .detail = Kamień leżący { $how }: { $stress } tam, gdzie ma { $width } szerokości, { $at } od końca; dopuszczalne { $allowed } (wytrzymałość ÷ współczynnik bezpieczeństwa), krotność dopuszczalnego: { $times }. Tak jest nawet na dwóch podporach ustawionych najlepiej. Trzymać go na krawędzi albo ułożyć na płaskiej płycie podkładowej pod całą powierzchnią.{ $flaws ->
            [0] {""}
            [one] {" "}Płyta ma wadę: w tym miejscu wytrzymałość nie obowiązuje.
            [few] {" "}Płyta ma { $flaws } wady: w tych miejscach wytrzymałość nie obowiązuje.
            [many] {" "}Płyta ma { $flaws } wad: w tych miejscach wytrzymałość nie obowiązuje.
           *[other] {" "}Płyta ma { $flaws } wady: w tych miejscach wytrzymałość nie obowiązuje.
        }

bends-flat = { $stone }: płasko może pęknąć, gdy trzyma się go za końce
    .detail = Kamień leżący { $how }: { $stress } tam, gdzie ma { $width } szerokości, { $at } od końca; dopuszczalne { $allowed } (wytrzymałość ÷ współczynnik bezpieczeństwa), krotność dopuszczalnego: { $times }. Nigdy nie podnosić jednego jego końca, gdy leży płasko. Płasko wolno mu leżeć tylko na podporach w odległości { $first } i { $second } od lewego końca (od dolnego, gdy stoi pionowo); wtedy jest { $best }. Nieść go na krawędzi.{ $flaws ->
            [0] {""}
            [one] {" "}Płyta ma wadę: w tym miejscu wytrzymałość nie obowiązuje.
            [few] {" "}Płyta ma { $flaws } wady: w tych miejscach wytrzymałość nie obowiązuje.
            [many] {" "}Płyta ma { $flaws } wad: w tych miejscach wytrzymałość nie obowiązuje.
           *[other] {" "}Płyta ma { $flaws } wady: w tych miejscach wytrzymałość nie obowiązuje.
        }

carry-on-edge-not-by-its-ends = { $stone }: nawet na krawędzi nie trzymać za końce
    .detail = Kamień leżący { $how }: { $stress }; dopuszczalne { $allowed }, krotność dopuszczalnego: { $times }. Trzymać go lub opierać w odległości { $first } i { $second } od końca, gdzie jest { $best }. Założono kamień bez wad.

carry-on-edge-braced = { $stone }: nawet na krawędzi nie wolno przed usztywnieniem
    .detail = Kamień leżący { $how }: { $stress }; dopuszczalne { $allowed }, krotność dopuszczalnego: { $times }. Najpierw usztywnić jego wąskie części albo nieść go ułożonego na ramie. Założono kamień bez wad.

flaws-and-strength = { $count ->
            [one] Płyta ma wadę
            [few] Płyta ma { $count } wady
            [many] Płyta ma { $count } wad
           *[other] Płyta ma { $count } wady
        }: wartości wytrzymałości nie obowiązują { $count ->
            [one] w tym miejscu
           *[other] w tych miejscach
        }
    .detail = Wszystkie podane tu naprężenia zakładają kamień bez wad; na rysie lub sklejeniu może on pęknąć przy dużo mniejszych. Trzymać go na krawędzi, na pełnej płycie podkładowej lub na ramie.

trestles-are-moved = kozły przestawia się przed cięciem { $cuts }
    .detail = Żadne jedno ustawienie nie pasuje do wszystkich cięć. Zdjąć kamień tak, jak wymaga jego masa, przestawić kozły, położyć go z powrotem; nowe miejsca podano na karcie tego cięcia.

rests-poorly = dać więcej podpór pod blat: { $what }
    .detail = { $parts }. Podpory gęściej, obok każdego wycięcia, dalej na zewnątrz. Ani wkręt, ani klej nie utrzyma blatu, który się przechyla.

# What is wrong with how the top rests: in short, and in full.
rests-overhang = nawis
rests-overhang-part = { $edges } { $count ->
            [one] wystaje
            [few] wystają
            [many] wystaje
           *[other] wystają
        } { $reach } poza podpory (opublikowana granica: { $limit })
rests-overhang-person = nawis
rests-overhang-person-part = { $edges } { $count ->
            [one] wystaje
            [few] wystają
            [many] wystaje
           *[other] wystają
        } { $reach } poza podpory (opublikowana granica: { $limit }), a z osobą na krawędzi dochodzi do { $times } dopuszczalnego
rests-span = rozpiętość
rests-span-part = najszerszy odcinek bez podparcia ma { $span } (opublikowana granica: { $limit })
rests-tips = przechyla się, gdy ktoś się oprze
rests-tips-part = osoba o nacisku { $force } { $place } przechyla blat z podpór
rests-bends = ktoś się o niego opiera
rests-bends-part = osoba o nacisku { $force } { $place } obciąża go do { $times } dopuszczalnego
rests-bends-elsewhere = ktoś się o niego opiera
rests-bends-elsewhere-part = osoba o nacisku { $force } { $place } obciąża go do { $times } dopuszczalnego, najbardziej { $section }
lean-worst = w najgorszym miejscu
lean-rail = w miejscu: { $rail } ({ $cutouts })
lean-overhang = na nawisie ({ $edge })
lean-between = między podporami { $first } i { $second }
lean-over = nad podporą { $support }
rests-over = { $support }
rests-over-part = { $support } przenosi do { $carried }, więcej niż swoją granicę { $limit }
rests-over-person = { $support } z osobą
rests-over-person-part = { $support } przenosi do { $with_person } z osobą o nacisku { $force } (granica { $limit })
none-published = nic dla tak cienkiego kamienia

# A stone in a list of stones.
stone-of-mass = { $stone } { $mass }

# What would make a way passable.
remedy-upright = przenieść go pionowo, na co potrzeba { $n } wysokości
remedy-cut-to = przed tym miejscem przyciąć go do długości najwyżej { $n }
remedy-widen-before = poszerzyć drogę przed zakrętem do co najmniej { $n }
remedy-widen-after = poszerzyć drogę za zakrętem do co najmniej { $n }
remedy-widen = poszerzyć do co najmniej { $n }: zdjąć skrzydło, listwy oporowe, ościeżnicę
remedy-raise = uzyskać dla niego co najmniej { $n } wolnej wysokości { $how }
