# Templates, shapes and drawings.

template-top = Gabarit grandeur nature : le plan entier
template-curve = Gabarit grandeur nature : courbe de la coupe { $number }
template-opening = Gabarit grandeur nature : ouverture { $number }, { $what }
template-corner = Gabarit grandeur nature : angle { $corner }
template-count = { $count ->
    [one] Une feuille
   *[other] { $count } feuilles
 } · { $job } · plan { $plan }
template-tile = { $count ->
    [one] une page
   *[other] une feuille sur { $count }
 } · { $part } · { $job } · plan { $plan }
template-measure = À mesurer d'abord : si ce n'est pas 100, imprimez à 100 %, sans ajuster à la page.
template-again = Mesurez les deux barres sur chaque feuille. Une imprimante un peu fausse se corrige : imprimez encore une fois avec --measured et les deux longueurs.
template-join = Coupez chaque feuille le long du trait droit et du trait haut du cadre. Posez-la sur la suivante pour que les croix se recouvrent, et collez-les sur une planche plane.
template-lay = Posez les croix nommées sur les repères du même nom tracés sur la pierre, et les bords sur ses bords. Contrôlez une longueur au mètre avant de scier.
template-scaled = imprimé × { $across } en travers, × { $up } en hauteur, d'après les barres mesurées
template-map = Position des feuilles
template-line-keep = ligne à garder : le bord fini
template-line-saw = ligne de sciage : le bord fini et ce qui reste pour la finition
template-line-slab = bord de la tranche : à poser sur le bord de la pierre
template-line-slot = ce que le disque ou la couronne enlève en surface ; les longs côtés donnent la direction du disque
template-line-station = station avec son numéro
template-line-flange = largeur du flasque et de la tête au-dessus d'une fente : à laisser libre
template-line-mark = repère déjà tracé sur la pierre, ou ligne qui en part
bench-curve-template = Grandeur nature sur papier : kerfwright template
