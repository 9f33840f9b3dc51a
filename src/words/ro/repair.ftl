# Findings of repair: a line, and in full.

opening-larger = Decupajul { $number } iese mai mare: mai este acoperit?
    .detail = Decupajul { $number }, { $what }, ajunge la { $long } × { $wide } în loc de { $long_asked } × { $wide_asked }: cu { $more } mai mult, laturi: { $sides }. Nu se știe aici dacă bordura piesei care se pune în decupaj îi mai acoperă marginea și dacă piesa mai găsește piatră pe care să stea sau de care să fie prinsă: bordura trebuie să ajungă acolo cu { $more } mai departe decât cerea decupajul dorit. Așezați piesa la probă sau măsurați-i bordura înainte de a tăia orice altceva.
