# Findings of repair: a line, and in full.

opening-larger = L'apertura { $number } diventa più grande: è ancora coperta?
    .detail = L'apertura { $number }, { $what }, sarà di { $long } × { $wide } invece di { $long_asked } × { $wide_asked }: { $more } in più in { $sides }. Qui non si sa se il bordo di ciò che vi si inserisce copre ancora il bordo dell'apertura, né se trova ancora pietra su cui poggiare o a cui essere serrato: lì il bordo di quel pezzo deve arrivare { $more } più in là di quanto serviva all'apertura richiesta. Metterlo dentro, o misurarne il bordo, prima di tagliare qualsiasi altra cosa.
