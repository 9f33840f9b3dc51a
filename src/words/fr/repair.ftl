# Findings of repair: a line, and in full.

opening-larger = La découpe { $number } devient plus grande : est-elle encore couverte ?
    .detail = La découpe { $number }, { $what }, aura { $long } × { $wide } au lieu de { $long_asked } × { $wide_asked } : { $more } de plus en { $sides }. On ne sait pas ici si le rebord de ce qui s'y pose couvre encore le bord de la découpe, ni s'il trouve encore de la pierre pour y reposer ou y être serré : à cet endroit, le rebord doit aller { $more } plus loin que ne le demandait l'ouverture voulue. Poser la pièce dedans, ou mesurer son rebord, avant de couper quoi que ce soit d'autre.

# Why what is left of a begun job cannot be planned, in one line.

repair-no-stone = les faces dites coupées ne laissent pas de pierre
repair-no-outline = la pierre dans son état actuel n'a pas de contour qui puisse être nommé
repair-openings-meet = { $one } et { $other } se rejoindraient en cassant la pierre ; faire des deux une seule ouverture ([[top.cutout]])
repair-opening-breaks-edge = { $opening } casserait de { $by } le bord de ce qui reste du plan ; l'ôter ([[top.cutout]]), la faire plus petite, ou prévoir un autre plan pour cette pierre
repair-opening-no-figure = { $opening } n'a plus de forme une fois ses côtés repoussés jusqu'à la pierre intacte ; la prévoir de nouveau, plus grande ou d'une autre forme ([[top.cutout]])
repair-never-sawn = as_cut : le bord { $edge } est sur un bord de la tranche et n'était jamais à couper ; l'ôter de as_cut.done et de as_cut.edge
repair-trims-first = as_cut : le coin { $corner } est dit coupé, mais pas le bord { $edges } ; les coupes de bord viennent avant les courbes. Le mettre dans as_cut.done
repair-nothing-left = le plan demandé, avec ses surcotes, dépasse de { $by } la pierre intacte qui reste, et rien de la forme voulue ne peut être sauvé : même avec ses bords rentrés de { $most }, il serait sur de la pierre disparue. Mesurer la pierre et prévoir pour elle un autre plan
repair-no-such-cut = as_cut.cuts : il n'y a pas de coupe { $number } ; la feuille de ce fichier de travail a les coupes 1 à { $last }
