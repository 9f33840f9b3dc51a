# Findings of hazards: a line, and in full.

working-alone = tylko jedna osoba: nikogo, kto przerwie pracę, nikogo, kto wezwie pomoc
    .detail = Wpisana liczba osób: { $people }, co najmniej 2, gdy tarcza się obraca (nasza ocena). Znaleźć kogoś, kto stoi w gotowości i nie robi nic innego, albo czekać, aż ktoś będzie.

second-person = Druga osoba { $at ->
    [plug-tap] przy wtyczce i kranie
    [plug] przy wtyczce
    [valve-tap] przy zaworze powietrza i kranie
    [valve] przy zaworze powietrza
    [tap] przy kranie z wodą
   *[sight] w zasięgu wzroku
 }, która widzi operatora i nie robi nic innego
    .detail = Liczba osób: { $people }; jedna z nich stoi tam, w polu widzenia operatora, poza linią tarczy, w ochronie oddechowej i ochronie słuchu. Podniesiona ręka albo ręka na ramieniu znaczy: wyłączyć, i nikt nie pyta dlaczego.

who-is-bound = budowa, zakład czy praca własna: który przepis obowiązuje
    .detail = Na budowie (29 CFR 1926.1153) wystarcza wiersz tabeli 1, przestrzegany co do litery. Zakład, który wytwarza blaty, to przemysł ogólny (29 CFR 1910.1053): tam tabeli nie ma, ocenia się narażenie. Osoby prywatnej nie wiąże żaden z nich; tabela jest najlepszą opublikowaną wskazówką, a pył szkodzi tak samo.

no-dry-sweeping = nie zamiatać na sucho, nie używać sprężonego powietrza
    .detail = { $rule }{ $borrowed } Około { $stone } kamienia, w tym do { $silica } krzemionki, zalega po cięciach: na sucho znowu wzbija się w powietrze. Odkurzacz: { $vacuum }{ $vacuum_borrowed }.

vacuum-before-the-mask-comes-off = pył, którego nie chwyciła osłona odciągowa, leży wszędzie: odkurzyć go przed zdjęciem maski
    .detail = Żadna osłona odciągowa nie chwyta wszystkiego z { $stone }, najmniej na końcach cięcia. Podłogę, półki i gzymsy, maszynę i ubranie odkurza się, zanim ktokolwiek zdejmie maskę: { $vacuum }{ $vacuum_borrowed }.

cold-water = zimna woda: ręce ciepłe i suche
    .detail = Nieprzemakalne rękawy, sucha para rękawic na każdą godzinę, przerwy w cieple. Zimne, białe lub zdrętwiałe palce: koniec na ten dzień, w zimnie drgania szkodzą szybciej.

frost = żadnego cięcia na mokro na mrozie
    .detail = Poniżej około 3 °C (nasza ocena) szlam zamarza pod nogami, a woda staje w wężu i dyszy: nie ma wody, nie ma cięcia. Przed nocą opróżnić maszynę i wąż z wody.

local-rules-first = miejscowe przepisy, instrukcje producentów i osoby kompetentne mają pierwszeństwo przed tym arkuszem
    .detail = Arkusz nie jest zezwoleniem. Region, z którego są jego wartości: { $region }. Sprawdzić obowiązujące przepisy; pytać: { $authority }. Urządzenia do podnoszenia, instalacja elektryczna, konstrukcja i kamień, który może zawierać azbest, są tylko dla osób z uprawnieniami.

slurry-clean-up = szlam zbiera się, zanim wyschnie: liczba wiader około { $buckets }
    .detail = Około { $kilos }: { $water } l wody ({ $flow } l/min, gdy tarcza tnie) i { $stone } kamienia; liczba wiader po { $bucket } l: { $buckets }. Po wyschnięciu to ten sam pył, który woda związała. Folia pod kozłami; zgarniać i odsysać odkurzaczem do pracy na mokro, póki mokry; spłukać ubranie, buty i maszynę; resztę zostawić, aż osiądzie; niczego do kanalizacji.

dust-bags = pył w odciągu: liczba worków około { $bags }
    .detail = Około { $stone } kamienia, gdyby osłona odciągowa chwyciła wszystko; liczba worków: { $bags }, najwyżej po { $bag }. Worek wymieniać w ochronie oddechowej, na zewnątrz, zamknąć go, zanim wyjdzie z odciągu, nigdy nie wytrzepywać ani nie opróżniać do ponownego użycia.

falling-stone = Nikogo pod kamieniem, nigdy nie łapać padającej płyty
    .detail = { $mass } kg/m² przy największej zmierzonej grubości i najcięższym kamieniu tego rodzaju. Przed pierwszym przejściem podparte i odpad, i kamień, który zostaje; niczyich stóp ani palców pod spodem ani pomiędzy; nigdy nie stawać tam, gdzie może upaść płyta stojąca na krawędzi, i nigdy nie próbować jej łapać.

wet-floor = szlam robi podłogę śliską
    .detail = Buty przeciwpoślizgowe, woda odprowadzona z miejsc, gdzie ludzie stoją i noszą{ $power ->
            [mains] , kable zawieszone ponad mokrą podłogą
           *[other] {""}
        }. Podłogę spłukać i uprzątnąć, zanim podniesie się jakikolwiek kawałek.

vibration-over-limit = drgania A(8) { $day } m/s² w { $all } min dnia, wartość graniczna { $limit } m/s²
    .detail = { $a } przez { $minutes } min tego dnia z tą maszyną, punkty razem z całą inną pracą: { $points }. A(8) { $day }, wartość graniczna { $limit }{ $borrowed }, osiągana po { $to_limit } min. Podzielić pracę; liczba osób lub dni: { $people }, najwyżej po { $to_limit } min; aby zostać poniżej wartości działania { $action }, potrzebna liczba osób lub dni: { $people_action }. Nie marznąć, ostra tarcza, lekki chwyt. Sprawdzić obowiązujące przepisy.

vibration-over-action = drgania A(8) { $day } m/s² w { $all } min dnia, wartość działania { $action } m/s²
    .detail = { $a } przez { $minutes } min tego dnia z tą maszyną, punkty razem z całą inną pracą: { $points }. A(8) { $day }, wartość działania { $action }{ $borrowed }, osiągana po { $to_action } min. Podzielić pracę; liczba osób lub dni: { $people_action }, najwyżej po { $to_action } min; nie marznąć, ostra tarcza, lekki chwyt. Sprawdzić obowiązujące przepisy.

vibration-unknown = drgania maszyny: odczytać z instrukcji
    .detail = Wielkość { $a }: żadna maszyna ręczna nie jest wolna od drgań. Przyjąć wartość producenta albo { $usual } m/s² dla szlifierki kątowej na kamieniu i wpisać machine.vibration.

disc-over-marked-rpm = { $disc }: maszyna { $machine } obr./min, oznaczenie tarczy { $marked }
    .detail = Maszyna obraca się o { $over } obr./min szybciej niż { $marked } obr./min oznaczone na tarczy ({ $speed }, oznaczenie na { $marked_speed }). Tarcza może się rozerwać: użyć tarczy oznaczonej na { $machine } lub więcej albo wolniejszej maszyny.

disc-mark-unknown = { $disc }: najwyższa prędkość nieznana
    .detail = Maszyna { $machine } obr./min, oznaczenie tarczy nieznane. Odczytać oznaczenie na tarczy i wpisać disc.max_rpm; tarczy bez oznaczenia nie wolno używać.

machine-speed-unknown = prędkość obrotowa maszyny nieznana
    .detail = Maszyna { $machine } obr./min: bez jej prawdziwej prędkości nie można sprawdzić żadnej tarczy. Odczytać tabliczkę i wpisać machine.rpm.

kickback-pinched-disc = zakleszczona tarcza powoduje odbicie
    .detail = Stać obok linii tarczy, trzymać dwiema rękami, osłona tarczy założona, w tej linii nikogo. Po zakleszczeniu: wyłączyć, poczekać, aż tarcza stanie, uwolnić ją, wejść w kamień ponownie tylko przy pełnych obrotach; nigdy nie włączać maszyny z tarczą w rzazie.

resin-disc-expired = { $disc }: ostatnim dniem użycia był { $expires }
    .detail = Data pracy { $date }, ostatni dzień użycia tarczy { $expires }. Trwałość tarcz na spoiwie żywicznym, w latach od produkcji: najwyżej { $years }. Tę tarczę złamać i wziąć nową albo tarczę diamentową.

resin-disc-age-unknown = { $disc }: spoiwo żywiczne, ostatni dzień użycia nieznany
    .detail = Trwałość tarcz na spoiwie żywicznym, w latach od produkcji: najwyżej { $years }, a wilgoć ją skraca. Odczytać miesiąc lub kwartał na pierścieniu lub etykiecie i wpisać disc.expires; tarczy na spoiwie żywicznym bez daty nie wolno używać.

resin-disc-age = { $disc }: nie używać po { $expires }
    .detail = Ostatni dzień użycia tarczy { $expires }: porównać go z dniem pracy. Do tego czasu przechowywać na sucho i na płasko; tarczę, która zawilgotniała lub upadła, złamać i wyrzucić.

disc-before-use = obejrzeć tarczę przed każdym założeniem
    .detail = Bez pęknięć, otwór pasuje, oba kołnierze oryginalne od tej maszyny i czyste, strzałka w dobrą stronę, osłona na rozmiar tej tarczy, przerwy w obwodzie najwyżej { $gap }, nigdy zużyta tarcza z większej maszyny. Przy { $speed } każdy oderwany kawałek jest pociskiem.

support-both-sides = Obie strony cięcia podparte od spodu, blisko niego
    .detail = Podpory pod obiema stronami, blisko cięcia i przy krawędziach kamienia, tak aby rzaz był otwarty aż do końca. Przed pierwszym przejściem odpad leży na własnych podporach; żadnej ręki, stopy ani kolana pod nim.

rim-speed-over-limit = { $disc }: prędkość obwodowa { $speed }, najwyższa oznaczana klasa { $highest }
    .detail = Tarcza { $diameter } przy { $machine } obr./min ma prędkość { $speed }; żaden pasek na tarczy nie dopuszcza więcej niż { $highest }. Mniejsza tarcza albo wolniejsza maszyna.

rim-speed-above-hand-discs = { $disc }: prędkość obwodowa { $speed }, tarcze do maszyn ręcznych są robione na { $hand }
    .detail = Tarcza { $diameter } przy { $machine } obr./min ma prędkość { $speed }. Powyżej { $hand } m/s (czerwony pasek) tylko tarcza z zielonym paskiem ({ $highest } m/s): sprawdzić, czy go ma, albo zejść do { $slower } obr./min lub mniej.

disc-run-down = po wyłączeniu tarcza nadal się obraca
    .detail = Trwa to sekundy, przy dużej tarczy dłużej: trzymać maszynę z dala od kamienia, węża i ubrania, aż tarcza stanie, dopiero potem odłożyć. { $power ->
            [mains] Wyjąć wtyczkę
            [battery] Wyjąć akumulator
            [air] Odłączyć wąż powietrza
           *[engine] Zgasić silnik
        }, zanim ktoś dotknie tarczy.

new-disc-run = świeżo założona tarcza pracuje najpierw bez obciążenia, nikogo w jej płaszczyźnie
    .detail = { $minutes } min na pełnych obrotach, osłona tarczy założona, maszyna trzymana z dala od ciała, nikogo w płaszczyźnie tarczy, po każdym założeniu. Drży lub śpiewa: wyłączyć, poczekać, aż stanie, obejrzeć jeszcze raz.

never-steer-the-disc = tarcza tnie prosto: nigdy nie prowadzić jej po łuku
    .detail = Nacisk boczny wygina i łamie tarczę. Dozwolony nacisk boczny: żaden. Łuki robi się z prostych wcięć z góry, jak na rysunku; bokiem tarczy tnącej nie wolno szlifować.

disc-bore = { $disc }: otwór { $bore } na osadzeniu { $seat }
    .detail = Otwór { $bore }, osadzenie { $seat }, zwykle { $usual }, różnica najwyżej { $play }. Luźna tarcza bije i pęka, ciasna nie wchodzi. Właściwa tarcza do tej maszyny: żadnych tulei, żadnego piłowania, żadnych podkładek.

protector-unknown = ochronnik słuchu: jaki i co na nim napisano?
    .detail = Odczytać SNR, H M L lub NRR na opakowaniu i wpisać tutaj: { $level } przy uchu podczas cięcia, a { $duty } dB(A) w ciągu dnia czyni ochronę obowiązkiem. W pliku zlecenia: [protector].

protector-too-weak = ochronnik słuchu za słaby: pod nim { $day } dB(A) w ciągu dnia
    .detail = { $level } podczas cięcia, zatrzymuje { $holds } dB{ $borrowed }: { $ear } przy uchu, { $day } w ciągu dnia, najwyżej { $duty }. Ochronnik o wyższym tłumieniu, zatyczki pod nausznikami albo mniej minut.

protector-too-strong = ochronnik słuchu za silny: { $ear } dB(A) przy uchu
    .detail = { $level } podczas cięcia, zatrzymuje { $holds } dB{ $borrowed }: { $ear } przy uchu. Poniżej { $quiet } nie słychać wołania i ostrzeżeń: umówić znaki ręką albo wziąć ochronnik o niższym tłumieniu.

protector-foreign-rating = wskaźnik ochronnika słuchu nie jest tym, według którego się tu liczy
    .detail = SNR, H M L (EN 352) i NRR (amerykański) bada się różnie i nigdy nie zamienia jednego na drugi. Policzono według systemu właściwego dla podanego wskaźnika, w ostrzejszy sposób: zatrzymuje { $holds } dB. Zażądać wskaźnika, który obowiązuje tam, gdzie odbywa się praca.

noise-over-limit = hałas dnia pod ochronnikiem słuchu { $under } dB(A), wartość graniczna { $limit } dB(A)
    .detail = { $level } dB(A) przez { $hours } h tego dnia z tą maszyną: { $day_exact } dB(A) w ciągu dnia bez ochronnika, { $under } dB(A) pod nim, wartość graniczna { $limit } dB(A){ $borrowed }. Wziąć ochronnik o wyższym tłumieniu ([protector]), zatyczki pod nausznikami albo rozłożyć cięcie na kilka dni (dust.days). Sprawdzić obowiązujące przepisy.

noise-unknown = hałas maszyny: odczytać z instrukcji
    .detail = Poziom { $level } dB(A): żadna szlifierka kątowa nie jest cicha. Przyjąć wartość producenta albo { $usual } dB(A) dla dużej tarczy na kamieniu i wpisać machine.noise. Do tego czasu nosić ochronę słuchu.

extractor-filter = filtr odciągu musi zatrzymywać { $holds } i być czyszczony w czasie pracy
    .detail = Przepływ powietrza { $has }, najmniej { $asks }. Liczy się tylko z czystym filtrem zatrzymującym co najmniej { $holds }, z cyklonem lub czyszczeniem filtra i z osłoną odciągową przylegającą do kamienia: { $vacuum }{ $borrowed }; klasa M przepuszcza najwyżej { $m }. Na obu końcach cięcia i przy wcięciach z góry osłona odciągowa jest otwarta: tam prowadzić powoli.

control-cut-less = ciąć mniej
    .detail = powierzchnia cięcia { $face } m², { $minutes } min z tarczą w kamieniu: każda krawędź, która zostaje, jaka jest, nie daje pyłu

control-shop = zlecić cięcie na mokro zakładowi
    .detail = piła mostowa z wodą tnie to w kilka minut, a { $grams } kamienia nigdy nie trafia do miejsca pracy

control-at-the-disc = { $method ->
    [water] woda przy tarczy
    [shroud] osłona z odciągiem przy tarczy
   *[none] woda lub odciąg przy tarczy
 }
    .detail = woda na maszynie do tego dopuszczonej albo osłona odciągowa z przepływem co najmniej { $airflow } dla tarczy { $disc }

control-outdoors = na zewnątrz
    .detail = w ruchu powietrza, wiatr z boku, z dala od drzwi i wlotów powietrza

control-distance = odległość
    .detail = nikogo bez ochrony oddechowej tam, gdzie widać pył lub mgłę, i nikogo w linii tarczy

control-mask = maska, na końcu
    .detail = pasująca do noszącego, przy masce szczelnej gładko ogolona skóra, noszona, aż miejsce będzie czyste

controls-open = skuteczniejsze niż maska, jeszcze otwarte: { $what }
    .detail = Zrobić albo wpisać, dlaczego nie: każde usuwa pył, który musiałaby zatrzymać maska.

no-dust-control = cięcie na sucho, a nic nie zatrzymuje pyłu
    .detail = Środek przeciw pyłowi: brak; wymagany co najmniej jeden z dwóch. Użyć wody na maszynie do tego dopuszczonej albo osłony odciągowej z odciągiem dość mocnym dla tej tarczy, albo zlecić cięcie na mokro zakładowi. Cięcia na sucho bez osłony odciągowej nie ma w żadnym wierszu tabeli; żadna ochrona oddechowa tego nie zastąpi, a pył dociera do wszystkich w pobliżu.

water-flow = woda na tarczę bez przerwy, tyle, aby nie było widać pyłu
    .detail = Przyjęty przepływ: { $flow } l/min. Przepis nie podaje wartości dla szlifierki kątowej; dla ręcznych przecinarek zaleca się { $advised } l/min. Woda na obwodzie tarczy, zanim dotknie ona kamienia i aż z niego wyjdzie. Widać pył lub parę: przerwać, więcej wody.

water-too-little = { $flow } l/min to mniej, niż zaleca się dla przecinarki ręcznej
    .detail = { $flow } l/min, a dla ręcznych przecinarek zaleca się { $advised } l/min: mniej wody wiąże mniej pyłu. Większy zbiornik lub większa dysza; nie ciąć, gdy widać pył.

shroud-airflow-unknown = przepływ powietrza odciągu nieznany
    .detail = Przepływ powietrza nieznany, tarcza { $disc } wymaga co najmniej { $asks } m³/h. Bez tej wartości działanie osłony odciągowej nie jest potwierdzone: odczytać tabliczkę odciągu i wpisać dust.airflow albo ciąć na mokro.

shroud-airflow-too-small = odciąg daje { $has }, tarcza wymaga { $asks }
    .detail = Przepływ powietrza { $has }, najmniej { $asks } m³/h dla tarczy { $disc }. Użyć mocniejszego odciągu, mniejszej tarczy albo ciąć na mokro.

not-in-table-indoors = nie ma w tabeli urzędu: trzeba ocenić narażenie
    .detail = Ta maszyna, ten środek, w pomieszczeniu, { $hours } h tego dnia: brak wiersza. Nikt nie opublikował, jaka ochrona oddechowa wystarczy. Na zewnątrz są wiersze dla wody i dla osłony odciągowej: zmienić miejsce lub środek na takie, jakie podaje tabela, albo zlecić ocenę narażenia osobie kompetentnej.

not-in-table = nie ma w tabeli urzędu: trzeba ocenić narażenie
    .detail = Ta maszyna, ten środek, na zewnątrz, { $hours } h tego dnia: brak wiersza. Nikt nie opublikował, jaka ochrona oddechowa wystarczy. Zmienić środek na taki, który tabela podaje dla tej maszyny, albo zlecić ocenę narażenia osobie kompetentnej.

indoors-exhaust = w pomieszczeniu: powietrze trzeba także odciągać na zewnątrz
    .detail = Miejsce: w pomieszczeniu. Ciąć na zewnątrz, jeśli to możliwe. W przeciwnym razie odciągać widoczny pył na otwarte powietrze, zamknąć i odgrodzić pomieszczenie i nikogo nie wpuszczać bez ochrony oddechowej.

marble-veins = żyły w marmurze mogą zawierać dużo więcej krzemionki niż sam kamień
    .detail = Marmur jako całość zawiera najwyżej { $share } % krzemionki; jego żyły mogą zawierać dużo więcej. Cięcie wzdłuż żyły lub przez żyłę traktować jak cięcie kamienia bogatego w krzemionkę.

stone-kind-unknown = { $stone }: nie wiadomo, jakie ma spoiwo
    .detail = Kamień związany żywicą i zawierający 1 % krzemionki lub więcej liczy się jako konglomerat. Zażądać karty danych materiału. Jeśli to konglomerat: { $rule }

silica-unknown = { $stone }: zapytać o udział krzemionki
    .detail = Wpisano krzemionkę najwyżej { $share } %: prawie żaden kamień nie jest od niej wolny. Dopóki karta danych materiału nie potwierdzi tej zawartości, traktować kamień jako bogaty w krzemionkę (powyżej { $threshold } %) i wpisać stone.silica.

engineered-stone-banned = konglomeratu nie wolno tu ciąć
    .detail = { $rule }

engineered-stone-dry = konglomerat bez wody
    .detail = Metody mokre: brak, wymagane. { $rule }

engineered-stone-powered-respirator = konglomerat bez ochrony oddechowej z nawiewem
    .detail = Ochrona oddechowa z nawiewem: na miejscu brak, wymagana. { $rule }

engineered-stone = konglomerat: ostrzejsze przepisy mają pierwszeństwo
    .detail = { $rule } Bezpieczny wybór to zlecić cięcie zakładowi z uprawnieniami.

high-silica-stone = { $stone } może zawierać do { $high } % krzemionki
    .detail = Krzemionka stanowi od { $low } do { $high } % kamienia; powyżej { $threshold } % kamień liczy się jako bogaty w krzemionkę (wartość kalifornijska, tu stosowana wszędzie). Jego pył zostawia w płucach blizny na zawsze: środek przeciw pyłowi i ochrona oddechowa od pierwszego dotknięcia aż do końca sprzątania, a bez ochrony oddechowej nikogo w pobliżu.

california-silica-rule = praca o wysokim narażeniu: na mokro, w wydzielonej strefie, z najsilniejszym sprzętem ochrony dróg oddechowych
    .detail = Krzemionka do { $high } %. { $rule }

silica-rich-stone-dry = praca o wysokim narażeniu bez wody: Kalifornia wymaga metod mokrych
    .detail = Krzemionka do { $high } %. { $rule }

sparks-into-extractor = stal w kamieniu: iskry lecą do odciągu
    .detail = Stal, którą wolno ciąć przy włączonym odciągu: żadna. Iskry podpalają worek odciągu. Najpierw usunąć stal, prowadzić cięcia z dala od niej albo ciąć na mokro.

sparks-from-steel = stal w kamieniu sypie iskrami
    .detail = Niczego palnego w promieniu { $clear } (nasza ocena), pełne wiadro wody i gaśnica pod ręką, tarcza dopuszczona przez producenta do stali, bez dociskania. Godzinę po ostatnim cięciu jeszcze raz sprawdzić, czy nic nie dymi.

steel-not-known = stal w kamieniu: sprawdzić, brak czy gdzie?
    .detail = W spód płyty często wklejone są pręty i siatka. Obejrzeć spód, przesunąć magnes wzdłuż każdej linii cięcia. W pliku zlecenia: stone.steel ("none" = brak, "some" = jest).

supply-unprotected = woda przy zasilaniu z sieci bez wyłącznika różnicowoprądowego (RCD), bez GFCI i bez 110 V z uziemionym środkiem
    .detail = Zabezpieczenie: żadne nie jest znane; wymagane: wyłącznik różnicowoprądowy (RCD) { $rcd } lub mniej, GFCI klasy A ({ $gfci }) albo 110 V z uziemionym środkiem ({ $volts } do ziemi). Tutaj: { $rule }{ $borrowed }. Gdy w pobliżu jest woda, brak zabezpieczenia oznacza zakaz cięcia.

supply-unprotected-dry = zasilanie z sieci bez wyłącznika różnicowoprądowego (RCD), bez GFCI i bez 110 V z uziemionym środkiem
    .detail = Zabezpieczenie: żadne nie jest znane; wymagane: wyłącznik różnicowoprądowy (RCD) { $rcd } lub mniej, GFCI klasy A ({ $gfci }) albo 110 V z uziemionym środkiem ({ $volts } do ziemi). Tutaj: { $rule }{ $borrowed }. Włączyć takie zabezpieczenie w przewód zasilający i najpierw nacisnąć jego przycisk testowy.

wet-mains = Przycisk testu wyłącznika RCD lub GFCI, jeśli jest, naciśnięty: wyłącza. Wtyczki suche i nad podłożem
    .detail = Przed pierwszym cięciem nacisnąć przycisk testowy: zabezpieczenie musi wyłączyć prąd. Wtyczki i złącza suche i nad ziemią, przewody zawieszone w pętli, tak aby woda skapywała przed wtyczką, suche ręce przy wtyczce i wyłączniku. Jeśli zadziała w czasie cięcia: przerwać, znaleźć przyczynę, nigdy nie przytrzymywać go na siłę.

engine-indoors = silnik spalinowy w pomieszczeniu: tlenek węgla (czad)
    .detail = Silniki w pomieszczeniu lub na zamkniętym podwórzu: żaden nie jest dozwolony. Spaliny zabijają bez ostrzeżenia; ciąć na otwartym powietrzu albo użyć maszyny na akumulator, na sprężone powietrze lub na prąd z sieci.

engine-fumes = silnik spalinowy: spaliny i paliwo
    .detail = Na otwartym powietrzu, z dostępem powietrza z każdej strony, nigdy w wykopie, w namiocie ani w kącie między ścianami. Spaliny z dala od twarzy obu osób. Paliwo dolewać tylko przy zimnym silniku, a uruchamiać go w innym miejscu.

water-on-mains-unrated = woda na maszynie sieciowej, która nie jest do tego zbudowana: porażenie prądem
    .detail = Dopuszczenie do pracy z wodą: brak; wymagane: od producenta, do cięcia na mokro. Standardowe ostrzeżenia zabraniają użycia wody ze zwykłą szlifierką kątową na prąd z sieci; wyłącznik różnicowoprądowy (RCD) ani GFCI nie czyni z niej maszyny do pracy na mokro. Użyć maszyny dopuszczonej do cięcia na mokro albo osłony odciągowej i odciągu.

water-not-rated = woda na maszynie, która nie jest do tego zbudowana
    .detail = Dopuszczenie do pracy z wodą: brak; wymagane: od producenta, do cięcia na mokro. Użyć maszyny, której producent dopuszcza wodę, albo osłony odciągowej i odciągu.

battery-wet = akumulator wyjęty, zanim ktoś dotknie tarczy; akumulatory zawsze suche
    .detail = Akumulatory wymienia się z dala od szlamu, suchymi rękami; akumulatora, do którego wnętrza dostała się woda, nie wolno już używać ani ładować. Akumulator wyjmuje się, zanim ogląda się lub wymienia tarczę.

air-hose = sprężone powietrze: złącza zabezpieczone zawleczką, ciśnienie nie wyższe niż na tabliczce
    .detail = Wpisana prędkość { $rpm } obr./min obowiązuje tylko przy ciśnieniu z tabliczki: większe ciśnienie to większa prędkość. Założone: reduktor ciśnienia i złącza bezpieczne; wylot powietrza skierowany z dala od pyłu i rąk; wąż opróżniony z ciśnienia, zanim ktoś dotknie tarczy. Nigdy nie zdmuchiwać pyłu ani nie przedmuchiwać ubrania.

respirator-class = odczytać oznaczenie klasy: { $mask }
    .detail = Współczynnik wynosi od { $least } do { $most } zależnie od klasy ({ $marks }), wymagany { $apf } lub więcej{ $borrowed }. Liczy się jako { $least }, dopóki oznaczenie nie zostanie wpisane jako dust.respirator: użyć sprzętu o oznaczeniu odpowiadającym { $apf } lub więcej.

respirator-not-in-scheme = { $mask }: bez współczynnika w systemie tego regionu
    .detail = { $mask }: współczynnik tutaj 0, a współczynnik jest wymagany{ $borrowed }. Współczynników z dwóch systemów nigdy się nie miesza; maska bez wiersza w tym systemie liczy się jako brak maski. Najpierw kroki, które w kolejności środków mają stan BRAK; potem ochrona oddechowa dopuszczona tam, gdzie odbywa się praca.

respirator-unlisted = { $mask }: bez współczynnika w systemie tego regionu
    .detail = Współczynnik 0, tabela żadnego nie wymaga{ $borrowed }. Może i zatrzymuje pył, ale żaden tutejszy przepis jej nie uznaje: zażądać ochrony oddechowej dopuszczonej tam, gdzie odbywa się praca.

respirator-missing = brak ochrony oddechowej na miejscu
    .detail = Ochrona oddechowa: brak; wymagany współczynnik { $apf } lub więcej{ $borrowed }. Najpierw kroki, które w kolejności środków mają stan BRAK; potem zdobyć taką, która pasuje do noszącego, i wpisać dust.respirator.

respirator-missing-unassessed = brak ochrony oddechowej na miejscu i nic nie rozstrzyga, jaka wystarczy
    .detail = Ochrona oddechowa: brak; współczynnika nie rozstrzyga nic, co opublikowano: trzeba ocenić narażenie. Najpierw kroki, które w kolejności środków mają stan BRAK; potem zlecić ocenę, zdobyć ochronę oddechową, która z niej wynika, i wpisać dust.respirator.

respirator-none-asked = brak ochrony oddechowej na miejscu; tabela jej tu nie wymaga
    .detail = Ochrona oddechowa: brak; tabela żadnej nie wymaga{ $borrowed }. Tabela obowiązuje tylko wtedy, gdy jej środek działa bez zarzutu: mieć ochronę oddechową pod ręką i nosić ją zawsze, gdy widać pył, oraz przy sprzątaniu.

respirator-not-fit-tested = zlecić próbę dopasowania maski na osobie, która ją nosi
    .detail = { $mask }: współczynnik liczy się dopiero po teście dopasowania i na gładko ogolonej skórze; do tego czasu nie można na niego liczyć. Zlecić test albo użyć kaptura z nawiewem.

respirator-clean-shaven = w dniu pracy gładko ogolona skóra, szczelność sprawdzana za każdym razem
    .detail = { $mask }: po teście dopasowania, a ten obowiązuje tylko na gładko ogolonej skórze, zarost kilkudniowy liczy się jako broda. Sprawdzać szczelność przy każdym zakładaniu; nowy rozmiar, nowa marka albo inna twarz wymaga nowego testu.

respirator-below-required = { $mask }: współczynnik liczy się tu jako { $has }, wymagany { $apf }
    .detail = { $mask }: współczynnik { $has }, wymagany { $apf } lub więcej{ $borrowed }. Najpierw kroki, które w kolejności środków mają stan BRAK: skuteczniejszy środek idzie przed skuteczniejszą maską. Potem ochrona oddechowa o współczynniku { $apf } lub więcej; współczynników z dwóch systemów nigdy się nie miesza.

nuisance-mask = maska bez klasy nie jest ochroną oddechową
    .detail = Współczynnik 0: maska nie ma klasy, a drobny pył przechodzi przez nią i obok niej. Liczy się ją jako całkowity brak ochrony oddechowej. Zdobyć ochronę oddechową o klasie, która się tu liczy, i wpisać dust.respirator.

asbestos-not-tested = { $stone }: może zawierać minerały azbestowe, nie ciąć przed zbadaniem
    .detail = Azbest, który wolno ciąć: żaden. Przed pierwszym cięciem oddać odłamek tej płyty do zbadania w laboratorium albo uzyskać badanie z kamieniołomu i wpisać stone.asbestos, stone.report i stone.date. Bez jednoznacznie czystego wyniku to praca dla osób z uprawnieniami.

asbestos-declaration = { $stone }: zażądać deklaracji kamieniołomu o minerałach azbestowych
    .detail = { $stone } należy do skał, które mogą je zawierać. Poprosić sprzedawcę o deklarację kamieniołomu i wpisać stone.asbestos, stone.report i stone.date.

binder-unknown = { $stone }: spoiwo nie jest znane, więc kamień liczy się jako konglomerat
    .detail = Kamień o zawartości krzemionki 1 % lub więcej, którego spoiwa nikt nie podał, liczy się jako konglomerat, dopóki stone.binder nie mówi inaczej. { $rule }

resin-in-fired-slab = { $stone }: czy nie zawiera żywicy?
    .detail = Gres porcelanowy i spiek kwarcowy są wyłączone z zakazu tylko wtedy, gdy nie zawierają żywicy. Poprosić o kartę danych i wpisać stone.binder. { $rule }

supply-unprotected-outdoors = zasilanie z sieci na zewnątrz bez wyłącznika różnicowoprądowego (RCD), bez GFCI i bez 110 V z uziemionym środkiem
    .detail = Zabezpieczenie: żadne nie jest znane; wymagane: wyłącznik różnicowoprądowy (RCD) { $rcd } lub mniej, GFCI klasy A ({ $gfci }) albo 110 V z uziemionym środkiem ({ $volts } do ziemi). Tutaj: { $rule }{ $borrowed }. Na zewnątrz mokre podłoże i uszkodzone przewody sprawiają, że zwarcie zabija: włączyć zabezpieczenie w przewód zasilający, nacisnąć jego przycisk testowy i wpisać machine.protected.

speed-assumed = odczytać prędkość z tabliczki lub tarczy: { $what }, założono
    .detail = Założono: { $what }. Odczytać tabliczkę maszyny i oznaczenie na tarczy i wpisać machine.rpm oraz disc.max_rpm: porównanie tarczy z maszyną obowiązuje tylko dla prawdziwych wartości.

disc-larger-than-machine = { $disc }: { $diameter }, maszyna jest przeznaczona najwyżej dla { $largest }
    .detail = Średnica { $diameter }, największa tarcza maszyny i jej osłony { $largest }. Użyć mniejszej tarczy albo maszyny przeznaczonej dla tej; nigdy nie zdejmować osłony.

respirator-filter = N95 tu nie wystarcza: wymagany jest filtr serii 100 lub HEPA
    .detail = Ochrona dróg oddechowych: N95, wymagane: współczynnik 10 lub większy z filtrem serii 100 lub HEPA. Wziąć półmaskę z filtrami P100 lub lepszą i wpisać dust.respirator.

no-water-flow = metoda mokra bez przepływu wody: to cięcie na sucho
    .detail = Woda: 0 litrów na minutę. Cięcia na sucho bez osłony odciągowej nie ma w żadnym wierszu tabeli i żadna maska tego nie wyrówna. Doprowadzić wodę do obrzeża tarczy i wpisać dust.water albo użyć osłony odciągowej i odkurzacza.

speed-assumed-of = { $what } { $speed } obrotów na minutę

bystanders = Nikogo innego w pobliżu: dzieci, sąsiedzi i zwierzęta z dala i uprzedzeni
    .detail = Pył, mgła i hałas sięgają dalej niż miejsce cięcia, a odłamek pękniętej tarczy leci na dziesiątki metrów. Odgrodzić miejsce, powiedzieć sąsiadom o rozpoczęciu i zatrzymać tarczę, gdy ktoś wejdzie bez maski, gogli i ochrony słuchu.

windows-and-intakes = Okna, drzwi i wloty powietrza zamknięte, wentylacja wyłączona
    .detail = Szkodliwy pył jest zbyt drobny, aby go widzieć, i niesie się daleko. Zamknąć okna i drzwi domu i poprosić o to sąsiadów; wyłączyć wentylację, pompę ciepła i klimatyzację w pobliżu; ciąć po ich zawietrznej.

working-height = Kamień między biodrem a łokciem, pewne podłoże, żadnej drabiny
    .detail = Kozły na wysokości roboczej i równe podłoże pod obiema stopami. Nigdy nie ciąć z drabiny ani stopnia, powyżej barku ani klęcząc poniżej kamienia: odbicie przewraca człowieka, a maszyna leci za nim.

eyes = Zamknięte gogle, na nich osłona twarzy, płukanka do oczu pod ręką
    .detail = Okulary przepuszczają odpryski i pył od dołu i z boku. Gogle dla każdego w pobliżu; sama osłona twarzy nie wystarcza. Ziarno w oku: płukać, nigdy nie trzeć; z odpryskiem, który zostaje, do lekarza.

side-handle = Uchwyt boczny i osłona założone, dwie ręce, wyłącznik nigdy zablokowany
    .detail = Jedna ręka nie utrzyma odbicia. Osłona stoi między tarczą a twarzą i żadne cięcie nie jest warte jej zdjęcia. Przy zablokowanym wyłączniku tarcza obraca się dalej po upuszczeniu maszyny{ $power ->
            [mains] ; po zaniku prądu wyłączyć, zanim wtyczka znów trafi do gniazda
           *[other] {""}
        }.

leads = Przewód i węże z tyłu, całe, rozwinięte, z dala od tarczy i stóp
    .detail = Przez ramię i do tyłu, nigdy w poprzek cięcia ani przejścia. Uszkodzonego przewodu nie używać. Złącza suche i nad ziemią; bęben rozwinąć, bo inaczej się nagrzewa.

hoses = Węże z tyłu, całe, z dala od tarczy i stóp
    .detail = Przez ramię i do tyłu, nigdy w poprzek cięcia ani przejścia. Węża, który cieknie lub jest załamany, nie używać.

leaning-slabs = Płyty na krawędzi przywiązane lub na stojaku A; przenosić po jednej, nikogo tam, gdzie mogą upaść
    .detail = W Wielkiej Brytanii w ciągu pięciu lat sześć osób zabiły płyty, które upadły przy składowaniu lub przenoszeniu. Stojak A na równym podłożu, stopy odsunięte od ściany, przywiązane; nigdy nie luzować mocowania pakietu, gdy ktoś stoi przed nim; nikogo między dwiema płytami. Płytę, która zaczyna padać, puścić: uciekać, nigdy jej nie trzymać.

not-for-everyone = Nie do tej pracy: kobiety w ciąży, chorzy na płuca, serce, ręce lub kręgosłup, młodociani, zmęczeni, nietrzeźwi
    .detail = Choroba płuc, białe palce, słabe serce, rozrusznik, którego producent ostrzega przed maszynami, uraz kręgosłupa, ciąża: najpierw zapytać lekarza. Nikt niepełnoletni, nikt zmęczony, nikt po alkoholu ani środkach, które spowalniają.

first-aid = Pierwsza pomoc gotowa: opatrunek uciskowy, płukanka do oczu, telefon, zapisany adres
    .detail = Przecięta tętnica zabija w kilka minut: mocno uciskać ranę, opatrunek uciskowy lub opaska zaciskowa, dzwonić. Odłączyć prąd, zanim dotknie się porażonego. Przygniecenie kamieniem: najpierw dzwonić, podnosić tylko urządzeniem. Przed rozpoczęciem wskazać, kto zna pierwszą pomoc.

moment-before = Przed

moment-cutting = Podczas cięcia

moment-moving = Podczas przenoszenia kamienia

moment-after = Po

settled-asbestos = Zbadano, bez minerałów azbestowych: { $report }, { $date }

settled-controlled = Kamień o zawartości krzemionki { $share } tnie się pod kontrolą, jak wymaga przepis

settled-noise = { $level } podczas cięcia, { $under } dB(A) w ciągu dnia pod ochronnikiem słuchu, wartość graniczna { $limit } dB(A)

settled-mask = { $mask }: liczy się jako współczynnik { $has }, wymagany { $apf }

settled-check-call = Praca w pojedynkę, z umówionym telefonem: { $who }

settled-supply = Zasilanie z sieci zabezpieczone

settled-speed = { $disc }: oznaczenie { $marked } obrotów na minutę, maszyna { $machine }
