# Findings of repair: a line, and in full.

opening-larger = La découpe { $number } devient plus grande : est-elle encore couverte ?
    .detail = La découpe { $number }, { $what }, aura { $long } × { $wide } au lieu de { $long_asked } × { $wide_asked } : { $more } de plus en { $sides }. On ne sait pas ici si le rebord de ce qui s'y pose couvre encore le bord de la découpe, ni s'il trouve encore de la pierre pour y reposer ou y être serré : à cet endroit, le rebord doit aller { $more } plus loin que ne le demandait l'ouverture voulue. Poser la pièce dedans, ou mesurer son rebord, avant de couper quoi que ce soit d'autre.
