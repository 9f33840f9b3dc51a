# Findings of placement: a line, and in full.

measure-again = Mesurer de nouveau : le jeu est dans l'erreur du mètre ruban
    .detail = Le plan tient dans la tranche avec { $spare } de jeu ; avec un mètre ruban juste à ±{ $tape }, il faut au moins { $least } pour en être sûr. Mesurer de nouveau la tranche, ou faire le plan plus petit.

edges-undescribed = Regarder { $count ->
        [one] le bord
       *[other] les bords
    } { $edges } de la tranche : le plan { $count ->
        [one] l'emploie tel quel
       *[other] les emploie tels quels
    }
    .detail = Personne n'a dit comment { $count ->
        [one] est le bord { $edges } de la tranche. Il est pris pour scié
       *[other] sont les bords { $edges } de la tranche. Ils sont pris pour sciés
    } et aucune coupe ne s'y fait. Regarder avant de commencer : droit le long d'une règle, d'équerre avec la face, propre, sans éclats ni fissures qui rentrent. Si c'est le cas, écrire { $sawn } sous [slab]. Sinon, y écrire { $rough } et recalculer : cela fait { $cuts ->
        [one] une coupe
       *[other] { $cuts } coupes
    } de plus au moins.

turn-saves = Un peu tourné, le même plan demande { $saved } de sciage en moins
    .detail = Tourné de { $turn } par rapport à la tranche, sans bord le long d'un bord, { $saved } de surface sciée en moins qu'à la place prise ici. Le traçage est plus difficile. Pour l'avoir, écrire sous [place] : { $to } et { $at }.

# Why there is no place, in one line.

place-none-at-any-turn = Il n'y a pas de place pour le plan sur la tranche, quelle que soit sa rotation, ni pour un plan plus petit de { $within } tout autour.
place-none-found = Aucune place trouvée pour le plan sur la tranche. Qu'il n'y en ait pour aucune rotation n'est pas prouvé : en essayer une sous [place].
place-at-fault = La place sous [place] est en cause : le plan ne peut pas être là. Sans at ni turn, une place se trouve.
place-not-here = Le plan ne peut pas être là où il est mis.
place-none-begun = Ce qui reste de la tranche ne donne plus le plan demandé.

# What stands against a position.

place-outside = le plan avec sa surcote dépasse de { $by } la tranche en { $part } ; le faire plus petit là d'au moins { $by }, ou prendre une tranche plus grande
place-outside-within-tape = le plan avec sa surcote dépasse de { $by } la tranche en { $part } ; c'est dans l'erreur du mètre ({ $tape }) : mesurer de nouveau
place-on-flaw = le plan vient de { $by } trop près de « { $flaw } » (distance à garder { $clear }) ; le déplacer, ou le faire plus petit
place-near-rough-edge = le plan vient de { $by } trop près du bord { $edge } de la tranche, qui est brut (slab.rough_margin { $margin }) : la pierre y est éclatée, et fissurée plus loin ; le déplacer, ou le faire plus petit
place-round-near-edge = le plan vient de { $by } trop près du bord { $edge } de la tranche : un plan rond demande une bande de { $least } tout autour pour être scié ; le déplacer, ou le faire plus petit
place-along-flaw = la coupe de bord { $part } suivrait « { $flaw } » sur { $long }, en deçà de la distance à garder { $clear } : la pierre peut y casser ; déplacer ou tourner le plan
place-narrow-strip = le bord { $edge } laisserait une bande de { $width } à scier, minimum { $least } ; déplacer le plan pour que ce bord soit sur celui de la tranche ou plus à l'intérieur
place-factory-bow = le bord { $edge } est cintré et noté factory, mais un bord cintré est toujours scié ; lui donner une autre finition
place-not-on-factory-edge = le bord { $edge } est noté factory mais n'est pas sur un bord d'usine de la tranche ; le mettre sur un tel bord, ou lui donner une autre finition
place-no-sawn-outline = les surcotes ne font pas le tour du contour : un bord est trop court ou un arc trop petit pour elles ; changer là la finition, ou la forme
place-no-sawn-cutout = la surcote ne laisse rien à scier ici : { $what } ; la découpe est trop petite, ou un de ses arcs ; la faire plus grande, ou changer sa finition
place-vein = la longueur du plan fait { $angle } avec la veine ; mettre top.vein = "any" si cela n'importe pas

# Sizes that fit, by the box round the finished top.

place-fits-smaller = dans la même forme, { $long } × { $deep } tient
place-fits-shorter = avec moins de longueur seulement, { $long } × { $deep } tient
place-fits-narrower = avec moins de profondeur seulement, { $long } × { $deep } tient
