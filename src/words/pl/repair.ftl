# Findings of repair: a line, and in full.

opening-larger = Wycięcie { $number } wychodzi większe: czy nadal będzie zakryte?
    .detail = Wycięcie { $number }, { $what }, będzie miało { $long } × { $wide } zamiast { $long_asked } × { $wide_asked }: o { $more } więcej, boki: { $sides }. Nie wiadomo tu, czy obrzeże tego, co się w nie wkłada, nadal zakryje jego krawędź i nadal znajdzie kamień, na którym się oprze lub do którego zostanie zaciśnięte: obrzeże musi tam sięgać o { $more } dalej, niż było potrzebne przy żądanym wycięciu. Włożyć je na próbę albo zmierzyć jego obrzeże, zanim zostanie wycięte cokolwiek innego.
