# Findings of cuts and pieces: a line, and in full.

waste-not-freed = Cięcia, które się nie spotykają, zostawiają odpad przy blacie
    .detail = Części odpadu, które po ostatnim cięciu jeszcze się trzymają, liczba: { $parts }, największa { $area } około { $along } wzdłuż AB i { $up } w górę od narożnika A. Trzyma się tu: { $places }. Nie brakuje żadnego cięcia, ale te obok nie spotykają ani siebie, ani krawędzi kamienia. Oddzielić go tam otworem wierconym koronką albo jeszcze jednym wcięciem z góry obok ostatniego, po stronie odpadu; nigdy nie odłamywać.

said-weight = Masa podana przez sprzedawcę i masa obliczona różnią się
    .detail = Podano { $said }, obliczono { $computed }: { $off } %, więcej niż { $tolerance }. Jedno się nie zgadza: kamień, wymiary albo grubość. Zaplanować podnoszenie według większej wartości i w miarę możliwości zważyć płytę.

fissure-in-waste = „{ $flaw }” biegnie przez { $pieces }: tam może pęknąć
    .detail = Przed pierwszym przejściem podkłady po obu jej stronach pod { $pieces }, aby każda część leżała osobno, gdy pęknie. Nigdy nie podnosić kawałka na płasko ani za jeden koniec w poprzek niej: najpierw docisnąć proste drewno po obu stronach, albo pozwolić pęknąć i odnieść części.{ $crossed ->
            [yes] {" "}Gdzie cięcie ją przecina (cięcia: { $cuts }): małe kroki, bez nacisku.
           *[no] {""}
        }

waste-needs-support = Odcinany jest odpad zbyt ciężki, aby trzymać go rękami
    .detail = Kawałek odpadu (cięcie, które go uwalnia) i jego masa najwyżej: { $pieces }. Każdy kawałek powyżej { $limit } przed pierwszym przejściem oprzeć na jego własnych podporach, równo z kamieniem, który zostaje, po obu stronach cięcia. Opadający kawałek zaciska rzaz na tarczy.

curve-waste-heavy = Odpad z łuku spada w kawałku zbyt ciężkim, aby go trzymać
    .detail = Kawałek odpadu (cięcie, które go uwalnia) i jego masa najwyżej: { $pieces }. To więcej niż { $limit } (passes.waste_piece), a żadne proste cięcia, które omijają kamień, który zostaje, nie podzielą go dalej. Przed ostatnią serią wcięć podeprzeć go od dołu na całej długości; nikt go nie trzyma, żadnej stopy pod nim.

stopped-cut-too-short = Żadna tarcza z zestawu się nie mieści: { $places }
    .detail = Między dwoma punktami, w których cięcie musi się skończyć, jest { $room }; „{ $disc }”, gdy przejdzie na wylot, tnie w powierzchni kamienia na długości { $length }. Z tym samym kołnierzem najmniejsza tarcza, która przecina na wylot, o średnicy { $least }, tnie na długości { $shortest }; największa, która się mieści, ma średnicę { $most }. { $verdict } Koronka około { $bit } robi to rzędem otworów.{ $waste }

sawn-with-another = Krawędź { $edge } jest cięta razem z krawędzią leżącą z nią w jednej linii
    .detail = Cięcie krawędzi leżącej z nią w jednej linii wykonuje też krawędź { $edge } i zostawia na niej { $left } zamiast { $allowance }. Zeszlifować różnicę, { $over }, albo dać obu krawędziom takie samo wykończenie.

disc-too-small = Tarcza nie przecina kamienia na wylot
    .detail = „{ $disc }” tnie najwyżej na głębokość { $deepest } (średnica { $diameter }, kołnierz lub głowica { $obstruction }, płyta przyrządu { $plate }); potrzeba { $needed }: brakuje { $short }. Z tym samym kołnierzem potrzebna jest tarcza co najmniej { $least }, na maszynie zbudowanej do tego rozmiaru.

no-room-for-guide = Na płycie nie ma miejsca na prowadnicę: { $places }
    .detail = Krawędź prowadnicy jest { $offset } od cięcia; płyta po obu jego stronach jest węższa, dlatego to cięcie nie jest zaplanowane. Przyłożyć do płyty deskę tak grubą jak kamień ({ $thick }), powierzchnie na równo, zacisnąć obie na jednym stole i położyć prowadnicę na desce. Albo użyć przyrządu o mniejszym odsunięciu (guide.offset).{ $waste }

core-holes-close = Otwory wiercone koronką w cięciu { $cut } zachodzą na siebie albo zostawiają cienką ściankę
    .detail = Dwa najbliższe są { $apart } od siebie, od środka do środka, koronka ma średnicę { $bit }: koronka, która zaczyna obok otworu, wpada do niego, a mniej niż { $web } kamienia między dwoma otworami się wykrusza. Prowadzić koronkę w szablonie przymocowanym ściskami nad każdym środkiem (deska z otworem o rozmiarze koronki) i naciskać lekko.

rail-too-narrow = Wycięcie { $cutout }{ $called } zostawia zbyt wąski pasek przy krawędzi { $edge }
    .detail = Wycięcie { $cutout } zostawia: { $rail }, { $width }{ $tap }, najmniej { $least }; przesunąć je o { $by } { $away }. Ten pasek leży wzdłuż krawędzi { $edge } blatu.

rails-add-up = Wycięcie { $cutout }{ $called }: paski po obu stronach są razem zbyt wąskie
    .detail = { $rail }: { $width }{ $tap }, najmniej { $least }; { $other }: { $other_width }{ $other_tap }, najmniej { $other_least }. Razem { $sum }, potrzeba { $needed }: przesunięcie wycięcia nie pomoże żadnemu. Ustąpić musi wycięcie, o { $short } mniejsze w tę stronę, albo blat, o tyle większy; inaczej usztywnić oba paski, zanim kamień zostanie ruszony.

rail-too-narrow-between = Wycięcia { $first }{ $called_first } i { $second }{ $called_second } zostawiają między sobą zbyt wąski pasek
    .detail = Wycięcia { $first } i { $second } zostawiają między sobą pasek { $width }, najmniej { $least }; rozsunąć je o { $by }.

hangs-on-a-strip = Między wycięciem { $cutout } a krawędzią zostaje tylko { $about } kamienia
    .detail = Ten pasek ma { $width } szerokości, mniej niż grubość kamienia ({ $thick }). Pęknie przy cięciu albo przy podnoszeniu. Przesunąć lub zmienić to, co go zostawia, do co najmniej { $least }.

hangs-on-a-strip-between = Między wycięciami { $first } i { $second } zostaje tylko { $about } kamienia
    .detail = Ten pasek ma { $width } szerokości, mniej niż grubość kamienia ({ $thick }). Pęknie przy cięciu albo przy podnoszeniu. Przesunąć lub zmienić to, co go zostawia, do co najmniej { $least }.

hangs-on-a-strip-corner = Za narożnikiem wewnętrznym przy { $edge } zostaje tylko { $about } kamienia
    .detail = Ten pasek ma { $width } szerokości, mniej niż grubość kamienia ({ $thick }). Pęknie przy cięciu albo przy podnoszeniu. Przesunąć lub zmienić to, co go zostawia, do co najmniej { $least }.

curve-without-arm = Łuk ({ $part }) wyznacza się od cięciwy, bez przyrządu do łuków
    .detail = Ramię miałoby { $arm }; przyrząd sięga od { $shortest } do { $longest }: o { $by } { $which }. Wykreślić cięciwę i w każdej pozycji przyłożyć prowadnicę prostą do jej dwóch znaków albo zrobić pasujące ramię.

arm-out-of-reach = Przyrządu do łuków nie da się ustawić na pełny okrąg ({ $part })
    .detail = Ramię miałoby { $arm }; przyrząd sięga od { $shortest } do { $longest }: o { $by } { $which }. Pełny okrąg nie ma cięciwy, od której dałoby się go wyznaczyć. Zrobić pasujące ramię albo wybrać inny promień.

corner-ground-by-hand = Łuk ({ $part }) szlifuje się ręcznie
    .detail = Cięcia krawędzi obok niego i ich rzazy nie zostawiają kamienia na wcięcie z góry. Zaznaczyć łuk na kamieniu i po ostatnim cięciu zeszlifować go ręcznie.

inside-corner-radius = { $part } dostaje promień { $left }
    .detail = Żądany promień: { $given }{ $sharp }. W narożniku wewnętrznym o promieniu mniejszym niż { $least } zaczyna się pęknięcie. Plan zostawia tam promień { $left }, taki jak otwór wiercony koronką.{ $still }

inside-corner-nearest-radius = { $part } dostaje promień { $left }
    .detail = Żądany promień: { $given }. Najbliższa koronka zostawia { $left }, a w narożniku { $ground } kamienia. Zeszlifować to ręcznie albo zostawić.

much-to-grind = { $part }: dużo zostaje do zeszlifowania
    .detail = „{ $disc }” tnie w powierzchni kamienia na długości { $length }; wewnątrz promienia { $radius } musi stać { $face } od środka i zostawia { $left } obok środka każdego wcięcia, więcej niż { $much }. Mniejsza tarcza albo koronka { $bit } lub mniej zostawia mniej.

no-disc-for-hollow = { $places }: żadna tarcza z zestawu nie może wyciąć tego wklęsłego łuku
    .detail = „{ $disc }” tnie w powierzchni kamienia na długości { $length }; wklęsły łuk ma promień { $radius }, średnicę { $across }. Z tym samym kołnierzem najmniejsza tarcza, która przecina na wylot, o średnicy { $least }, tnie na długości { $shortest }; największa, która się mieści, ma średnicę { $most }. { $verdict }{ $either } Koronka { $bit } robi go jednym otworem, mniejsza szeregiem otworów.{ $waste }

inside-corner-needs-core-bit = Potrzebny otwór wiercony koronką: { $places }
    .detail = { $kit } W ostrym narożniku wewnętrznym zaczyna się pęknięcie: potrzebny jest promień co najmniej { $radius }, czyli koronka o średnicy co najmniej { $least }, wiercona przed cięciami, które tam się kończą. Wpisać ją w pliku zlecenia ([[core_bit]]).{ $waste }

# One piece of a list: its name, the cut that frees it, its weight.
piece-of-cut = { $piece } ({ $cut }): { $mass }

# A piece of the boundary of the top, or of an opening.
part-edge = krawędź { $name }
part-edge-opening = krawędź { $name } wycięcia { $cutout }
part-corner = narożnik { $name }
part-corner-opening = narożnik { $name } wycięcia { $cutout }
part-corners = narożniki { $name }
part-corners-opening = narożniki { $name } wycięcia { $cutout }
part-all-round = cały okrąg
part-all-round-opening = cały okrąg wycięcia { $cutout }

# What stays on the top for want of a cut, behind the cause.
waste-stays = {" "}Dlatego odpad trzyma się blatu, liczba części: { $parts }, największa { $area } około { $along } wzdłuż AB i { $up } w górę od narożnika A. Tej pracy nie da się ukończyć według tego arkusza.

# What a job calls a cutout, behind its number.
cutout-called = {" "}({ $name })

piece-held-below = Żadne wiertło koronowe nie oddziela od spodu kawałka z wycięcia { $cutout }{ $called }
    .detail = Tarcza jest okrągła: od spodu każde cięcie kończy się { $run_out } przed swoim końcem na powierzchni i tam kawałek jeszcze się trzyma. Otwory obok końców, wiercone od góry przed cięciem, oddzielają go; żadne dostępne wiertło się tam nie mieści, dlatego nie są ani wyznaczone, ani ujęte w minutach. Przynieść takie i wpisać jako [[core_bit]] albo zlecić wycięcie zakładowi. Nikt nie pracuje pod spodem, a kawałka nigdy się nie wyłamuje: pęknięcie biegnie w blat.

opening-narrower-than-kerf = Rzaz nie mieści się w otworze { $cutout }{ $called }
    .detail = Cięty wzdłuż jednego boku rzaz { $kerf } wchodzi po drugiej stronie w kamień, który ma zostać. Zrób otwór szerszy niż rzaz, weź cieńszą tarczę albo zleć to zakładowi.{ $waste }
