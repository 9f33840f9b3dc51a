# Findings of repair: a line, and in full.

opening-larger = Wycięcie { $number } wychodzi większe: czy nadal będzie zakryte?
    .detail = Wycięcie { $number }, { $what }, będzie miało { $long } × { $wide } zamiast { $long_asked } × { $wide_asked }: o { $more } więcej, boki: { $sides }. Nie wiadomo tu, czy obrzeże tego, co się w nie wkłada, nadal zakryje jego krawędź i nadal znajdzie kamień, na którym się oprze lub do którego zostanie zaciśnięte: obrzeże musi tam sięgać o { $more } dalej, niż było potrzebne przy żądanym wycięciu. Włożyć je na próbę albo zmierzyć jego obrzeże, zanim zostanie wycięte cokolwiek innego.

# Why what is left of a begun job cannot be planned, in one line.

repair-no-stone = powierzchnie podane jako przecięte nie zostawiają żadnego kamienia
repair-no-outline = kamień w obecnym stanie nie ma obrysu, który da się nazwać
repair-openings-meet = te wycięcia przebiłyby się do siebie: { $one }, { $other }; zrobić z obu jedno wycięcie ([[top.cutout]])
repair-opening-breaks-edge = wycięcie ({ $opening }) przebiłoby o { $by } krawędź tego, co zostało z blatu; pominąć je ([[top.cutout]]), zmniejszyć albo zaplanować z tego kamienia inny blat
repair-opening-no-figure = wycięcie ({ $opening }) nie ma kształtu, gdy jego boki odsunie się do nieuszkodzonego kamienia; zaplanować je na nowo, większe albo o innym kształcie ([[top.cutout]])
repair-never-sawn = as_cut: krawędź { $edge } leży na krawędzi płyty i nie miała być cięta; usunąć ją z as_cut.done i as_cut.edge
repair-trims-first = as_cut: narożnik { $corner } jest podany jako wycięty, a krawędź { $edges } nie; obcięcia idą przed łukami. Wpisać ją do as_cut.done
repair-nothing-left = żądany blat z naddatkami wystaje o { $by } poza nieuszkodzony kamień, który został, i nic z żądanego kształtu nie da się uratować: nawet z krawędziami cofniętymi o { $most } leżałby na kamieniu, którego już nie ma. Zmierzyć kamień i zaplanować z niego inny blat
repair-no-such-cut = as_cut.cuts: nie ma cięcia { $number }; arkusz tego pliku zlecenia ma cięcia od 1 do { $last }
