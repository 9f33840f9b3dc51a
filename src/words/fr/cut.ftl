# Findings of cuts and pieces: a line, and in full.

waste-not-freed = Des coupes qui ne se rejoignent pas laissent de la chute sur le plan
    .detail = Parties de la chute qui tiennent encore après la dernière coupe : { $parts }, la plus grande de { $area }, à environ { $along } le long de AB et { $up } vers le haut depuis l'angle A. Elle tient à : { $places }. Aucune coupe ne manque, mais celles d'à côté ne rejoignent ni l'autre ni le bord de la pierre. L'y séparer par un trou de carottage, ou par une plongée de plus à côté de la dernière, du côté de la chute ; ne jamais la casser.

said-weight = Le poids du vendeur et le poids calculé diffèrent
    .detail = Annoncé { $said }, calculé { $computed } : { $off } %, plus de { $tolerance }. La pierre, les dimensions ou l'épaisseur : un de ces points est faux. Préparer le levage avec le chiffre le plus lourd, et peser la tranche si c'est possible.

fissure-in-waste = « { $flaw } » traverse { $pieces } : ça peut casser là
    .detail = Avant la première passe, des cales des deux côtés sous { $pieces }, pour que chaque partie repose seule si ça casse. Ne jamais soulever une pièce à plat ou par un bout par-dessus : d'abord serrer des bois droits dessus, sur les deux faces, ou laisser casser et emporter les morceaux.{ $crossed ->
            [yes] {" "}Là où la coupe la croise (coupes : { $cuts }) : petites profondeurs, sans appuyer.
           *[no] {""}
        }

waste-needs-support = Une chute trop lourde pour être tenue à la main se détache
    .detail = Chute (coupe qui la détache) et son poids au plus : { $pieces }. Porter chaque chute de plus de { $limit } sur ses propres cales, de niveau avec la pierre gardée, des deux côtés de la coupe, avant la première passe. Une pièce qui s'affaisse referme le trait de coupe sur le disque.

curve-waste-heavy = La chute d'une courbe tombe en une pièce trop lourde pour être tenue
    .detail = Chute (coupe qui la détache) et son poids au plus : { $pieces }. C'est plus de { $limit } (passes.waste_piece), et aucune coupe droite à l'écart de la pierre gardée ne la divise davantage. La porter par-dessous sur toute sa longueur avant le dernier tour ; personne ne la tient, pas de pied dessous.

stopped-cut-too-short = Aucun disque de l'outillage ne trouve place : { $places }
    .detail = Il y a { $room } entre deux points d'arrêt ; « { $disc } » coupe sur { $length } de long en surface quand il a traversé toute la pierre. Avec le même flasque, le plus petit disque qui traverse, de { $least } de diamètre, coupe sur { $shortest } de long ; le plus grand qui y trouve place a { $most } de diamètre. { $verdict } Une couronne d'environ { $bit } fait cette coupe par une rangée de trous.{ $waste }

sawn-with-another = Le bord { $edge } est scié avec le bord aligné sur lui
    .detail = La coupe de bord du bord aligné sur lui fait aussi le bord { $edge }, et y laisse { $left } au lieu de { $allowance }. Meuler la différence, { $over }, ou donner la même finition aux deux bords.

disc-too-small = Le disque ne traverse pas la pierre
    .detail = « { $disc } » coupe à { $deepest } de profondeur au plus (diamètre { $diameter }, encombrement { $obstruction }, plaque { $plate }) ; il faut { $needed } : il manque { $short }. Avec le même flasque, il faut un disque d'au moins { $least }, sur une machine faite pour cette taille.

no-room-for-guide = Pas de place pour le guide sur la tranche : { $places }
    .detail = Le bord du guide est à { $offset } de la coupe ; la tranche est plus étroite que cela des deux côtés de la coupe, qui n'est donc pas prévue. Poser contre la tranche une planche de l'épaisseur de la pierre ({ $thick }), les deux faces au même niveau, serrer les deux sur un même établi et poser le guide sur la planche. Ou employer un gabarit dont le décalage est plus petit (guide.offset).{ $waste }

core-holes-close = Trous de la coupe { $cut } : ils se chevauchent ou laissent une cloison mince
    .detail = Les deux plus proches sont à { $apart } de centre à centre, couronne de { $bit } de diamètre : une couronne qui attaque à côté d'un trou glisse dedans, et moins de { $web } de pierre entre deux trous éclatent. Tenir la couronne dans un gabarit serré au-dessus de chaque centre (une planche percée d'un trou de la taille de la couronne), et appuyer légèrement.

rail-too-narrow = La découpe { $cutout }{ $called } laisse une bande trop étroite en { $edge }
    .detail = La découpe { $cutout } laisse ceci : { $rail } de { $width }{ $tap }, minimum { $least } ; déplacer la découpe de { $by } { $away }. Cette bande longe le plan en { $edge }.

rails-add-up = Découpe { $cutout }{ $called } : les bandes des deux côtés sont trop étroites ensemble
    .detail = { $rail } de { $width }{ $tap }, minimum { $least } ; { $other } de { $other_width }{ $other_tap }, minimum { $other_least }. Ensemble { $sum }, il en faut { $needed } : déplacer la découpe n'aide ni l'une ni l'autre. C'est la découpe qui cède, plus petite de { $short } dans ce sens, ou le plan, plus grand d'autant ; sinon, raidir les deux bandes avant de déplacer la pierre.

rail-too-narrow-between = Les découpes { $first }{ $called_first } et { $second }{ $called_second } laissent entre elles une bande trop étroite
    .detail = Les découpes { $first } et { $second } laissent entre elles une bande de { $width }, minimum { $least } ; les écarter de { $by } de plus.

hangs-on-a-strip = Il ne reste que { $about } de pierre entre la découpe { $cutout } et le bord
    .detail = Cette bande a { $width } de large, moins que l'épaisseur de la pierre ({ $thick }). Elle casse au sciage ou au levage. Déplacer ou changer ce qui la laisse, jusqu'à { $least } au moins.

hangs-on-a-strip-between = Il ne reste que { $about } de pierre entre les découpes { $first } et { $second }
    .detail = Cette bande a { $width } de large, moins que l'épaisseur de la pierre ({ $thick }). Elle casse au sciage ou au levage. Déplacer ou changer ce qui la laisse, jusqu'à { $least } au moins.

hangs-on-a-strip-corner = Il ne reste que { $about } de pierre derrière l'angle rentrant en { $edge }
    .detail = Cette bande a { $width } de large, moins que l'épaisseur de la pierre ({ $thick }). Elle casse au sciage ou au levage. Déplacer ou changer ce qui la laisse, jusqu'à { $least } au moins.

curve-without-arm = La courbe ({ $part }) se trace à partir de sa corde, sans le gabarit à cercles
    .detail = Le bras devrait avoir { $arm } ; le gabarit va de { $shortest } à { $longest } : le bras est { $which }, de { $by }. Tracer la corde et poser le guide droit sur les deux repères de chaque station ; ou faire un bras qui convient.

arm-out-of-reach = Le gabarit à cercles ne peut pas se régler pour un cercle entier ({ $part })
    .detail = Le bras devrait avoir { $arm } ; le gabarit va de { $shortest } à { $longest } : le bras est { $which }, de { $by }. Un cercle entier n'a pas de corde à partir de laquelle le tracer. Faire un bras qui convient, ou choisir un autre rayon.

corner-ground-by-hand = La courbe ({ $part }) se meule à la main
    .detail = Les coupes de bord voisines et leurs traits de coupe ne laissent pas de pierre pour une plongée. Marquer la courbe sur la pierre et la meuler à la main après la dernière coupe.

inside-corner-radius = { $part } : le rayon sera de { $left }
    .detail = Rayon demandé : { $given }{ $sharp }. Une fissure part d'un angle rentrant de moins de { $least } de rayon. Les coupes prévues y laissent un rayon de { $left }, celui du trou de carottage.{ $still }

inside-corner-nearest-radius = { $part } : le rayon sera de { $left }
    .detail = Rayon demandé : { $given }. La couronne la plus proche laisse { $left }, soit { $ground } de pierre dans l'angle. Les meuler à la main, ou les laisser.

much-to-grind = { $part } : il reste beaucoup à meuler
    .detail = « { $disc } » coupe sur { $length } de long en surface ; à l'intérieur d'un rayon de { $radius }, il doit se tenir à { $face } du centre, et il laisse { $left } à côté du milieu de chaque fente, plus de { $much }. Un disque plus petit ou une couronne de { $bit } ou moins laisse moins.

no-disc-for-hollow = { $places } : aucun disque de l'outillage ne peut couper cette courbe rentrante
    .detail = « { $disc } » coupe sur { $length } de long en surface ; la courbe rentrante a un rayon de { $radius }, soit { $across } d'un côté à l'autre. Avec le même flasque, le plus petit disque qui traverse, de { $least } de diamètre, coupe sur { $shortest } de long ; le plus grand qui y trouve place a { $most } de diamètre. { $verdict }{ $either } Une couronne de { $bit } la fait en un seul trou, une plus petite en une chaîne de trous.{ $waste }

inside-corner-needs-core-bit = Trou de carottage nécessaire : { $places }
    .detail = { $kit } Une fissure part d'un angle rentrant vif : il faut un rayon d'au moins { $radius }, donc une couronne d'au moins { $least } de diamètre, et un trou percé avant les coupes qui s'arrêtent là. L'indiquer dans le fichier de travail ([[core_bit]]).{ $waste }

# One piece of a list: its name, the cut that frees it, its weight.
piece-of-cut = { $piece } ({ $cut }) : { $mass }

# A piece of the boundary of the top, or of an opening.
part-edge = bord { $name }
part-edge-opening = bord { $name } de la découpe { $cutout }
part-corner = angle { $name }
part-corner-opening = angle { $name } de la découpe { $cutout }
part-corners = angles { $name }
part-corners-opening = angles { $name } de la découpe { $cutout }
part-all-round = tout le cercle
part-all-round-opening = tout le cercle de la découpe { $cutout }

# What stays on the top for want of a cut, behind the cause.
waste-stays = {" "}De la chute tient donc encore au plan, parties : { $parts }, la plus grande de { $area }, à environ { $along } le long de AB et { $up } vers le haut depuis l'angle A. Le travail ne peut pas être terminé avec cette fiche.

# What a job calls a cutout, behind its number.
cutout-called = {" "}({ $name })

piece-held-below = Aucune couronne ne sépare en dessous le morceau de la découpe { $cutout }{ $called }
    .detail = Le disque est rond : en dessous, chaque coupe s'arrête { $run_out } avant son bout en surface, et là le morceau tient encore. Des trous à côté des bouts, percés par-dessus avant de scier, le séparent ; aucune couronne disponible n'y trouve place, ils ne sont donc ni placés ni comptés dans les minutes. En apporter une et l'inscrire comme [[core_bit]], ou confier l'ouverture à un atelier. Personne ne travaille dessous, et le morceau n'est jamais cassé : la fissure court dans le plan.

opening-narrower-than-kerf = Le trait de scie n'a pas la place dans la découpe { $cutout }{ $called }
    .detail = Scié d'un côté, un trait de { $kerf } entre de l'autre dans la pierre à garder. Faire la découpe plus large que le trait, prendre un disque plus mince ou la confier à un atelier.{ $waste }
