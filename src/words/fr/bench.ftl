# The bench pages, the annex and the answers in a terminal.

bench-head = projet { $plan } · page { $number } sur { $count }
bench-head-annex = projet { $plan } · annexe, page A{ $number } sur A{ $count }
bench-foot = Règles locales, notices des fabricants et personnes compétentes passent avant cette fiche.
bench-foot-cut = Entailler d'abord. Ni tordre, ni pousser de côté. Disque pincé : éteindre, attendre, dégager, rentrer seulement à pleine vitesse.
bench-stop = STOP
bench-kills-now = tue
bench-kills-later = tue plus tard
bench-maims = mutile
bench-lasting = reste à vie
bench-breaks-stone = casse la pierre
bench-blank = à remplir
bench-sentences = { $a } { $b }
bench-term = { $term }

# At a glance
bench-glance = En bref
bench-glance-title = En bref : { $work }
bench-work-straight = { $count ->
    [one] scier un bord
   *[other] scier { $count } bords
 }
bench-work-curves = { $count ->
    [one] couper une courbe
   *[other] couper { $count } courbes
 }
bench-work-openings = { $count ->
    [one] faire une découpe
   *[other] faire { $count } découpes
 }
bench-glance-alt = La tranche vue d'en haut avec le plan, { $length } sur { $width }, les coupes dans l'ordre et les chutes avec leur poids.
bench-glance-open = Avant de démarrer la machine : régler chaque point, noter le résultat, puis cocher
bench-glance-warnings = Ce que ce travail peut vous faire, le pire d'abord
bench-top-size = { $length } × { $width }
bench-waste-name = { $name } { $mass }
bench-keep = garder
bench-top-corner = angle { $corner }
bench-practice-here = essais
bench-tile-top = plan fini
bench-tile-slab = tranche
bench-tile-waste = chute la plus lourde
bench-tile-sawing = disque dans la pierre
bench-tile-setting = mise en place
bench-tile-silica = silice dans la boue
bench-tile-silica-dry = silice dans la poussière
bench-tile-likely = au plus ; probable { $mass }
bench-tile-likely-thick = au plus ; probable { $mass }; { $thick }
bench-tile-no-waste = aucune chute ne tombe
bench-tile-after = { $name }, coupe { $cut }
bench-tile-shares = { $count ->
    [one] une personne, un jour
   *[other] répartir sur { $count } personnes ou jours
 }
bench-tile-with-other = avec { $other } d'autre travail : { $shares }
bench-tile-without-edges = { $shares } ; sans finition
bench-not-counted = Meuler, polir et adoucir les bords n'est compté nulle part ici, sauf si [[today]] le nomme ; cela compte dans la journée de la même personne.
bench-tile-set-ups = { $count ->
    [one] une mise en place
   *[other] { $count } mises en place
 }
bench-tile-of-dust = au plus, dans { $mass } de pierre

# Mark out
bench-mark = Tracer
bench-mark-title = Tracer toutes les lignes avant la première coupe
bench-mark-rule = Tracer chaque ligne d'un bout à l'autre de la tranche avant la première coupe. Une coupe emporte un repère ; la ligne se voit encore sur la pierre qui reste.
bench-mark-alt = La tranche vue d'en haut avec chaque ligne à tracer, ses repères aux bords, et chaque pivot et trou.
bench-mark-what = point
bench-mark-off = depuis la ligne tracée
bench-mark-off-that = depuis la ligne { $cut }
bench-mark-named = { $mark }
bench-mark-off-short = { $cut }: { $distance }
bench-mark-on-short = sur { $cut }
bench-mark-off-line = ligne { $cut } : { $distance }
bench-mark-on-line = sur la ligne { $cut }
bench-mark-check = contrôle
bench-mark-line-check = contrôle ligne
bench-mark-on-curve = ligne de la coupe { $cut }
bench-mark-keep = ligne à garder
bench-mark-guide = guide, idem
bench-mark-tape-from = mètre
bench-marked = { $mark } { $distance }
bench-marked-from = { $mark } { $corner } { $distance }
bench-tape = { $corner } { $distance }
bench-mark-pivot = { $mark } pivot
bench-mark-chord = { $mark } corde
bench-mark-hole = { $mark } trou
bench-mark-stop = { $mark } arrêt
bench-mark-both = Coupe { $cut } : { $distance } depuis l'angle { $corner } du plan sur les deux lignes.
bench-mark-along = Coupe { $cut }, depuis l'angle { $corner } du plan : { $before } en arrière, { $after } en avant.
bench-mark-guides = Chaque ligne de guide court à { $offset } de sa ligne à garder, d'un bout à l'autre.
bench-mark-rough = Un coin à un bord brut est là où se croisent des cordeaux tendus le long de ses deux bords : le marquer d'abord.
bench-mark-tape = Tenir le crochet du mètre sur l'angle même. Plus de { $tape } d'écart à un contrôle : mesurer de nouveau, ne pas décaler la ligne. { $guides }
bench-mark-between = Un trente-deuxième de pouce est le milieu entre deux traits d'un mètre qui montre les seizièmes.
bench-end = { $mark } : { $distance } depuis { $corner } sur { $edge }

# Straight cuts
bench-straight = Coupes droites
bench-straight-title = Coupe droite, bord { $edge }, { $length } de long, pierre { $thick }
bench-relief-title = Coupe de dégagement en { $edge }, { $length } de long, pierre { $thick }
bench-straight-alt = La tranche avant la coupe le long du bord { $edge }, vue d'en haut : guide, cales, place de l'opérateur, et ce qui se détache : { $waste }.
bench-you = vous
bench-depth = profondeur
bench-depths = profondeurs
bench-trestles-move = Lever d'abord la pierre et déplacer les tréteaux : à { $first } et { $second } du bout de la tranche.
bench-trestles-board = Lever d'abord la pierre : à partir d'ici, elle repose sur un panneau plein et plan.
bench-late = Seulement après la coupe { $cut }, qui a sa propre page.
bench-fact-guide = guide
bench-fact-ends = ses bouts
bench-fact-moves = il est à
bench-fact-how = comment
bench-fact-bearers = cales
bench-fact-drill = percer d'abord
bench-fact-when = quand
bench-guide-kept = à { $offset } de la ligne à garder, sur la pierre qui reste
bench-guide-waste = à { $offset } de la ligne à garder, sur la chute
bench-ends = { $first } ; { $second }
bench-moves = { $places } depuis { $mark }, l'un après l'autre à chaque profondeur{ $clamp ->
    [no] ; là où aucun serre-joint n'atteint, une ventouse de serrage, essayée à la main
   *[yes] {""}
 }
bench-stone-end = le bout de la pierre vers { $mark }
bench-span = { $from } à { $to }
bench-how = { $parts }
bench-how-far-end = À chaque profondeur, d'abord les derniers { $length } en { $last }, de l'extérieur vers l'intérieur ; puis de l'autre bout jusque-là.
bench-how-stop = S'arrête en { $mark } : le centre du disque à { $short } au moins. Ce que laisse le disque rond vient en dernier et par-dessus : couronne dans la chute, puis meulage ; jamais par-dessous.
bench-how-stop-hole = Finit dans le trou percé en { $mark } : le centre du disque à { $short } au moins.
bench-how-allowance = { $left } restent pour la finition.
bench-how-breaks = À partir de { $depth }, elle peut se rompre.
bench-bearers = de chaque côté, { $off } : à { $at } depuis { $mark }
bench-bearers-even = { $count } de chaque côté, { $off } : de { $first } à { $last } depuis { $mark }, tous les { $step }
bench-bearers-off = à { $off } de la ligne
bench-bearers-off-each = à { $kept } de la ligne, à { $waste } sous la chute
bench-struck = par la ligne tracée { $first } à { $second } : un bout n'est plus là
bench-drill = Ø { $bit } en { $marks }, à l'eau, avant que le disque approche
bench-free-heavy = { $name } se détache : jusqu'à { $mass }. Elle repose sur ses propres cales, à niveau, avant la première passe. Ni main, ni pied, ni genou dessous ; personne ne la tient.
bench-free-carried = { $name } se détache : jusqu'à { $mass }. Elle repose sur ses propres cales, à niveau, avant la première passe. Ni main, ni pied, ni genou dessous ; personne ne la tient. { $away }
bench-away = Ensuite { $people } personnes { $how ->
            [flat] la portent à plat sur deux lattes au sol, à un cinquième de sa longueur de ses bouts.
           *[edge] la dressent sur son long côté, la portent sur chant sur deux lattes contre un mur et l'y attachent.
        }
bench-away-more = Il faut { $people } personnes pour la porter { $how ->
            [flat] à plat
           *[edge] sur chant
        }, ce travail en a moins : en trouver ou prendre une aide, ou la scier en travers là où elle est posée, un appui de chaque côté de la ligne.
bench-away-aid = Ensuite { $aid ->
            [trolley] { $people } personnes ({ $half }) la dressent sur chant et le chariot la porte, attachée,
            [vacuum] le palonnier à ventouses la porte, sur chant,
           *[gantry] le palan la porte, sur chant dans deux élingues,
        } sur deux lattes contre un mur ; l'y attacher.
bench-away-sawn = Aucune équipe ne la porte : la scier en travers là où elle est posée, un appui de chaque côté de la ligne, ou prendre une aide.
bench-free-light = { $name } se détache : jusqu'à { $mass }. Une cale dessous avant la première passe ; aucune main dessous.
bench-free-flaw = « { $flaw } » la traverse : elle peut casser là. Appuis des deux côtés ; un bois droit serré par-dessus avant de la lever.
bench-free-station = { $name } se détache vers la station { $station }, dernière profondeur : jusqu'à { $mass }. Une cale dessous avant la première passe ; aucune main dessous.
bench-measured = bord { $edge }, manque ou reste (0 voulu)
bench-cut-by = coupé par, heure

# Curves
bench-curve = Courbe, coupe { $cuts }
bench-curve-title = { $count ->
    [one] Une station de la courbe en { $corners } par plongée, { $depths } profondeurs
   *[other] { $count } stations de la courbe en { $corners } par plongées, { $depths } profondeurs
 }
bench-curve-alt = La courbe vue d'en haut avec ses stations numérotées, le pivot ou la corde, et la chute.
bench-curve-how = Comment
bench-curve-line = rayon { $radius } ; { $left } restent pour la finition
bench-curve-line-inside = rayon { $radius } ; { $left } restent pour la finition ; les stations sur le rayon { $stations }
bench-curve-rise = corde { $chord }, la courbe monte de { $rise } au milieu
bench-curve-struck = { $points }, tracé avant la coupe 1 : voir Tracer
bench-curve-swing = { $mark } : à { $radius } de chacun de { $points }
bench-curve-stations = Tracer la ligne autour du pivot. Mesurer chaque station tout droit depuis le repère à côté de son numéro ; les voisines sont à { $apart } l'une de l'autre.
bench-curve-ordinates = Tracer la corde. Reporter chaque station le long d'elle et d'équerre ; les voisines sont à { $apart } l'une de l'autre.
bench-curve-plunge = Disque d'équerre au bras à la station : face proche à { $near } du pivot, repère du gabarit à { $arm }. Se tenir à côté de sa ligne, jamais dedans. Descendre droit, remonter droit. Ne jamais le guider en courbe.
bench-curve-plunge-guide = Bord du guide à { $offset } de la station et à { $gap } de la courbe, { $half } de part et d'autre ; face proche sur la courbe. Se tenir à côté de sa ligne, jamais dedans. Descendre droit, remonter droit. Ne jamais le guider en courbe.
bench-curve-plunge-square = Tracer le centre de l'arc, à { $radius } des deux bouts de la corde. Le disque se tient d'équerre à la ligne du centre par la station, sa face extérieure, celle loin du centre, à la station ; le bord du guide { $offset } au-delà. Se tenir à côté de sa ligne, jamais dedans. Tout droit en bas, tout droit dehors. Ne jamais le faire tourner.
bench-curve-rings = Toutes les stations à une profondeur, puis toutes à la suivante : { $depths }. La pierre fait { $thick }.
bench-curve-ridges = Il reste des arêtes de { $left } : les enlever à l'eau avec un plateau diamant ou un disque à lamelles, grain 60, le long de la courbe, jusqu'à la ligne ; puis 120, 200, 400.
bench-fact-pivot = pivot
bench-fact-chord = corde
bench-fact-stands = il repose sur
bench-fact-swing = se trouve
bench-fact-line = ligne à garder
bench-arm = repère { $length }
bench-pivot-top = le plan : ruban ou ventouse, jamais percé
bench-pivot-cutout = de la pierre qui tombe plus tard, encore en place
bench-pivot-waste = la chute : garder ce morceau à sa place jusqu'à la fin de la courbe
bench-pivot-off = à côté de la pierre : y fixer quelque chose de même hauteur
bench-station = n°
bench-station-along = le long
bench-station-off = écart
bench-station-off-waste = écart, vers la chute
bench-relief-first = D'abord les coupes de dégagement, pour que la chute parte en morceaux.
bench-relief-cut = coupe
bench-relief-guide = guide sur repères
bench-relief-length = longueur
bench-two-marks = { $first } et { $second }

# Openings
bench-opening = Découpe { $number }
bench-opening-title = Découpe : { $what }, pierre { $thick }
bench-opening-alt = La découpe vue d'en haut avec ses trous, coupes et lignes de guide, et la pierre la plus étroite à côté.
bench-opening-corner-alt = Un angle de la découpe : les lignes tracées et les points à côté
bench-opening-what = quoi
bench-opening-marks = repères
bench-opening-how = comment
bench-opening-depths = profondeurs
bench-depths-straight = droites
bench-depths-curve = courbes
bench-opening-stop = centre à { $short } avant { $mark }
bench-opening-hole = percer Ø { $bit }
bench-opening-straight = droite, { $length }
bench-opening-curve = courbe, { $length }
bench-opening-swing = rayon { $radius }, bras { $arm }, { $count } stations
bench-opening-plunges = { $count } plongées le long d'une corde de { $chord }, flèche { $rise }
bench-opening-drill = à l'eau, tout droit, d'en haut
bench-opening-stations-chord = Stations, coupe { $cuts } : le long de la corde depuis le repère e, et d'équerre à elle
bench-opening-stations-pivot = Stations, coupe { $cuts } : tout droit depuis les repères tracés
bench-opening-step-drill = Percer d'abord tous les trous : le disque s'arrête alors dans un trou, et aucune coupe n'entre dans l'angle.
bench-opening-step-saw = Scier de trou en trou, chaque coupe à pleine profondeur avant la suivante. Le disque est rond : en dessous, les bouts des coupes tiennent encore le morceau. Le libérer par-dessus, la couronne dans la chute sur chaque bout, le reste meulé ; personne ne travaille dessous. La pierre doit être soutenue tout autour et sous le morceau qui tombe.
bench-opening-step-saw-parted = Scier de trou en trou, chaque coupe à pleine profondeur avant la suivante. Le disque est rond : en dessous, les bouts des coupes tiendraient encore le morceau ; les trous à côté d'eux le séparent là, et ce qui reste est meulé. Personne ne travaille dessous. La pierre doit être soutenue tout autour et sous le morceau qui tombe.
bench-opening-step-last = La dernière coupe libère le morceau : d'abord des cales dessous, personne en dessous. Dès lors la pierre est faible à côté de la découpe : poser les renforts avant de la bouger.
bench-rail = { $what }
bench-rail-holds = { $width } de large : tient ; portée sur chant, jamais par la bande
bench-rail-brace = { $width } de large : seulement avec renforts. { $splint }
bench-rail-weak = { $width } de large : trop faible même avec renforts. { $splint }
bench-splint = { $count } × bois { $wide } × { $high }, { $length } de long, serrés en place avant la première coupe ici

# Moving
bench-move = Déplacer et poser
bench-move-title = Sur chant, à la main, attachée dès qu'elle est debout
bench-move-title-trolley = Sur chant sur le chariot, attachée, sol horizontal
bench-move-title-vacuum = Sur chant sous l'appareil à ventouses
bench-move-title-gantry = Sur chant dans deux élingues
bench-move-slab = Tranche sur les tréteaux, { $alike ->
    [yes] un grand côté en bas
   *[no] { $side } en bas
 }
bench-move-top = Plan à sa place, { $alike ->
    [yes] un grand côté en bas
   *[no] { $side } en bas
 }
bench-move-alt = La pierre sur chant avec son engin et une personne à chaque bout, à l'échelle ; elle pèse jusqu'à { $mass }.
bench-move-on-edge = Jamais à plat par ses bouts : elle casse net. Sur chant tout le long, couchée seulement au-dessus des deux tréteaux. Ne jamais soulever un seul bout.
bench-move-tied = Sur chant tout le long, attachée dès qu'elle est debout.
bench-turn-slab = sur chant à côté des deux tréteaux, l'engin calé ; grand côté du bas sur les deux à la fois, puis à plat : { $hands ->
    [none] pas à la main, mais au palan, à l'appareil à ventouses ou au châssis basculant
    [open] comme décidé page 1 : tous au grand côté opposé, personne dessous
    [aid] tournée par l'appareil, deux personnes guident
   *[team] tous au grand côté opposé, personne dessous
 }. L'attache en dernier.
bench-turn-top = sur chant à côté de sa place, puis sur des lattes rembourrées en travers : { $hands ->
    [none] pas à la main, mais au palan, à l'appareil à ventouses ou au châssis basculant
    [open] comme décidé page 1 : tous au grand côté opposé, personne dessous
    [aid] tourné par l'appareil, deux personnes guident
   *[team] tous au grand côté opposé, personne dessous
 }. Lattes ôtées une à une, le grand côté levé avec des coins, aucun doigt dessous.
bench-fact-flat = tranche, à plat
bench-fact-set = plan, posé
bench-move-hands = Où vont les mains
bench-move-hands-on-edge = Où vont les mains : elle y pend sur chant, jamais à plat
bench-move-trestles = Deux tréteaux de côté : distances du bout { $corner }, et ce que porte chacun
bench-move-supports = Sur quoi il repose : le milieu de chaque appui, comme dessiné
bench-hands-alt = La pierre vue d'en haut avec une personne à chaque place, et ce que chacune porte.
bench-hands = { $number } : { $mass }
bench-trestles-alt = La tranche sur deux tréteaux, à { $first } et { $second } de son bout.
bench-supports-alt = Le plan vu d'en haut sur ses appuis, avec ce que porte chacun.
bench-supports-short = Tel quel, pas assez : d'abord plus d'appuis, voir page 1.
bench-free-span = { $length } au plus large ; au plus { $limit }
bench-overhang = { $edge } : { $length } ; au plus { $limit }. Y mettre un appui
bench-overhang-person = { $edge } : { $length } ; personne ne s'y appuie, ou y mettre un appui
bench-bearing-over = une personne qui s'appuie sur le plan y met { $person }, il peut porter { $limit } : personne ne s'y assied ni ne s'y appuie, ou ajouter un appui
bench-support-name = { $number } { $what }
bench-support = { $along } de la gauche, { $up } du bas ; porte au plus { $mass }
bench-fact-trolley = chariot
bench-fact-vacuum = ventouses
bench-fact-slings = élingues
bench-fact-lift = à la main
bench-fact-fall = si elle tombe
bench-fact-free = sans appui
bench-fact-over = au-delà des appuis
bench-trolley = marqué pour { $rated } ou plus ; poussée { $push } à l'horizontale
bench-rated = marqué pour { $rated } ou plus
bench-slings = { $each } sur chacune, { $tension } dans chaque brin à { $angle }
bench-fall = personne à moins de { $clear } de chaque côté ; l'attacher
bench-lift-never = jamais : à { $people }, compter sur { $limit } en tout{ $two }
bench-lift-two = {""}, à deux sur { $mass }
bench-lift-above = au-dessus de la valeur : une personne porte { $carried }, la valeur est { $limit } ; décider d'abord (page 1)
bench-lift-over = pas ainsi : une personne porterait { $carried }, la valeur est { $limit }
bench-lift-tips = pas ainsi : elle bascule
bench-lift-breaks = pas à la main : à plat ou sur chant, elle fléchit trop ; la renforcer ou prendre un engin
bench-lift-many = pas ainsi : { $people } personnes ne lèvent pas d'un seul geste
bench-lift-within = { $people } personnes, chacune jusqu'à { $most } ; aucun chiffre ne rend un levage sûr

# Dust, noise, hands
bench-dust = Poussière, bruit, mains
bench-dust-title = Poussière, bruit, mains
bench-dust-order = Le plus fort d'abord : ce qui enlève la poussière
bench-dust-limits = Combien, combien de temps
bench-dust-settled = Réglé pour ce travail
bench-control = { $state ->
    [done] { $what } : prévu
    [open] { $what } : ENCORE À FAIRE
   *[other] { $what } : y veiller le jour même
 }
bench-fact-mask = masque ici
bench-fact-hands = mains
bench-fact-ears = oreilles
bench-fact-slurry = boue
bench-fact-slurry-dry = poussière
bench-fact-silica = elle contient
bench-fact-vacuum-class = aspirateur
bench-mask-at-hand = { $mask } ; rasé de près, étanchéité vérifiée ; mis avant la première coupe, ôté quand le sol est propre
bench-hands-allowed = { $action } par jour et par personne, tout ce qui vibre compris ; ce travail demande { $job }
bench-hands-other = { $hands }, un autre travail compte { $other }
bench-hands-never = cette machine vibre trop, même pour une minute : une autre machine
bench-ears = { $level } à l'oreille : protection dès avant le premier démarrage ; sans elle, { $minutes } remplissent la journée
bench-slurry = environ { $mass }, seaux : { $buckets } ; raclée et aspirée mouillée, jamais à l'égout
bench-bags = { $bags ->
    [one] un sac d'extracteur
   *[other] jusqu'à { $bags } sacs d'extracteur
 }
bench-nothing-caught = rien ne la retient
bench-silica = jusqu'à { $dust } de pierre, dont { $silica } de silice
bench-wear-mask = Masque : facteur { $factor } ou plus
bench-wear-mask-here = { $mask } : facteur { $factor }
bench-wear-mask-ready = Masque porté pendant la coupe, jusqu'au sol nettoyé
bench-wear-mask-assess = Masque : faire d'abord évaluer l'exposition
bench-wear-ears = Oreilles : { $level }
bench-wear-eyes = Lunettes-masque et écran facial
bench-wear-hands = Gants ajustés, pas de poignets lâches
bench-wear-feet = Chaussures à coque, antidérapantes
bench-wear-disc = Disque : tourne encore après l'arrêt

# Helper
bench-emergency = Numéro d'urgence : { $number }
bench-vacuum-off = Où couper l'aspiration
bench-helper-weight = La tranche pèse jusqu'à { $slab }, le plan fini jusqu'à { $top }. { $hands ->
    [none] Personne ne les lève à la main.
    [top] Personne ne lève la tranche à la main, personne le plan seul.
   *[both] Personne ne les lève seul.
 }

# The day and its record
bench-day = Journée et relevé
bench-day-title = La journée, et ce qui s'est passé
bench-day-what = quoi
bench-day-minutes = durée
bench-day-at = fait à
bench-day-read = Lire à voix haute la page de l'assistant, essayer les signes d'arrêt, remplir la page 1
bench-day-unload = Décharger la tranche sur chant, attachée ; puis à plat sur les tréteaux
bench-day-mark = Tracer et contrôler chaque ligne ; s'exercer dans la chute
bench-day-straight = Coupe { $cut }, bord { $edge } : { $waste } se détache
bench-day-curve = Coupe { $cuts }, courbe { $edge }
bench-day-opening = Coupes { $cuts }, découpe : { $what }
bench-day-sum = Toutes les coupes : { $stone } disque dans la pierre, { $setting } de mise en place
bench-day-move = Le plan sur chant, attaché, à sa place
bench-day-clean = Boue ramassée mouillée, sol rincé, puis masques enlevés
bench-day-clean-dry = Poussière aspirée partout, puis masques enlevés
bench-day-bring = À apporter
bench-day-practice = S'exercer d'abord dans la chute
bench-day-wrong = Quand ça tourne mal
bench-day-started = début
bench-day-ended = fin
bench-day-initials = initiales
bench-day-date = date
bench-day-annex = Calculs, tableaux, avertissements complets et sources : kerfwright sheet FICHIER --annex
bench-bring-guide = guide
bench-bring-guide-is = droit, { $length }, et deux serre-joints{ $suction ->
    [yes] , une ventouse de serrage
   *[no] {""}
 }{ $jig ->
    [yes] , bras de compas et son pivot
   *[no] {""}
 }
bench-bring-discs = disques
bench-bring-discs-are = { $discs }, avec une réserve{ $grind ->
    [yes] , meule diamantée ou disques à lamelles pour meuler
   *[no] {""}
 }
bench-bring-bits = couronnes
bench-bring-bits-are = { $bits }, prévues pour la vitesse de la machine qui les tourne ; un gabarit pour les guider
bench-bring-bearers = cales
bench-bring-bearers-are = { $count } cales de même hauteur, en bois tendre, de { $long }, et des coins ; sur le plancher{ $edges }
bench-bring-bearers-edges = {""}, dont { $count } sous les bords sans coupe
bench-bring-deck = plancher
bench-bring-deck-are = planches épaisses d'au moins { $thick } le long de la tranche sur les deux tréteaux, longues de { $length }, côte à côte sur { $wide } ; dessus les cales, et dessus la tranche
bench-bring-turn = pour coucher
bench-bring-turn-is = palan, appareil à ventouses ou châssis basculant
bench-bring-carry = pour porter
bench-bring-carry-is = { $aid ->
    [trolley] chariot marqué pour { $rated }, deux tréteaux
    [vacuum] appareil à ventouses marqué pour { $rated }, deux tréteaux
    [gantry] portique avec élingues pour { $rated }, deux tréteaux
   *[none] deux tréteaux
 }, sangles, lattes, aspirateur ; ce que montrent les signaux
bench-bring-tape = traçage
bench-bring-tape-is = { $rolls ->
    [one] un rouleau de ruban de masquage de { $roll }
   *[other] { $rolls } rouleaux de ruban de masquage, { $roll } chacun
 }, mètre en acier, équerre, crayon fin, cordeau à craie
bench-bring-water = eau
bench-bring-water-is = { $water } en tout ; seaux pour la boue : { $buckets }
bench-practice-cut = une coupe
bench-practice-cut-is = dans { $piece } comme dessiné, { $length } de long, à { $depths }
bench-practice-plunge = plongées
bench-practice-plunge-is = de même dans { $piece }, trois côte à côte, à { $depths }
bench-practice-offset = bord du guide à face proche du disque ({ $reckoned })
bench-practice-jig = repère du gabarit à face proche du disque ({ $reckoned })
bench-practice-minutes = minutes dans la pierre ; longueur, profondeur
bench-practice-differs = Autre chiffre qu'entre parenthèses : décaler d'autant les repères du guide ou le bras ; les lignes à garder restent.
bench-wrong-cracks = elle se fend
bench-wrong-cracks-do = Éteindre. Personne dessous. Des cales sous les deux parties avant de rien bouger ; puis mesurer et recalculer ce qui reste.
bench-wrong-pinches = le disque se pince
bench-wrong-pinches-do = Éteindre, attendre l'arrêt du disque, ouvrir le trait avec des coins, sortir la machine. Rentrer seulement à pleine vitesse.
bench-wrong-slips = elle quitte la ligne
bench-wrong-slips-do = Éteindre. Mesurer de combien et à quelle profondeur, l'écrire dans le fichier de travail sous ce qui s'est passé : un nouveau calcul dit ce qui reste du plan.

# Repair
bench-repair = Ce qui s'est passé
bench-repair-title = Ce qui s'est passé, et ce qui reste
bench-repair-alt = La pierre telle qu'elle est, le plan qui reste, et en tirets le plan demandé.
bench-repair-as-planned = Tout est sur sa ligne. Continuer comme prévu.
bench-repair-within = La surcote l'absorbe : rien n'est perdu. Meuler jusqu'à la ligne finie.
bench-repair-grind = Rien n'est perdu : il reste trop de pierre sur un bord. Meuler jusqu'à la ligne finie.
bench-repair-again = Rien n'est perdu : il reste trop de pierre sur un bord. Scier la bande, selon sa page.
bench-repair-smaller = Le plan sera plus petit. Demander à qui l'a commandé avant la coupe suivante.
bench-repair-opening = Une découpe sera autre que demandée. Demander à qui l'a commandée avant la coupe suivante.
bench-repair-same-a = Les lettres sont les angles de la pierre telle qu'elle est. A est où il était, AB va comme avant ; les autres sont nouvelles.
bench-repair-new = Les lettres sont les angles de la pierre telle quelle : toutes sont nouvelles. Les écrire sur la pierre.
bench-repair-wanted = demandé
bench-repair-now = maintenant
bench-repair-weighs = pèse
bench-repair-first = d'abord
bench-repair-run-outs = finir ce que la coupe a laissé debout : { $pieces }
bench-repair-grind-first = meuler jusqu'à la ligne avant la coupe suivante : { $edges }
bench-repair-lines = dans le fichier
bench-repair-part = partie
bench-repair-came = résultat
bench-repair-is-wanted = demandé
bench-repair-is-now = maintenant
bench-repair-do = à faire
bench-repair-edge = bord { $name }
bench-repair-corner = angle { $name }, { $what }
bench-came-not-cut = pas coupé
bench-came-on-line = sur sa ligne
bench-came-short = { $off } en moins
bench-came-over = { $off } en trop
bench-came-slanting-short = { $start } à { $end } en moins
bench-came-slanting-over = { $start } à { $end } en trop
bench-do-nothing = rien
bench-do-finish = finition seule
bench-do-grind = meuler { $off }
bench-do-cut = couper : voir sa page

# The annex
annex-findings = Chaque point en entier
annex-stops = Stops : le travail ne doit pas commencer tant qu'il en reste un
annex-open = Ouvert : à remplir ou à regarder avant le début
annex-warnings = Avertissements
annex-every = Chaque fois
annex-stone = Pierre, place et pièces
annex-strength = À plat, debout, levage
annex-way = L'accès
annex-health = Poussière, mains, oreilles : les chiffres
annex-assumed = Valeurs que le fichier de travail a laissées ouvertes
annex-sources = Sources
annex-key = clé
annex-value = valeur
annex-why = pourquoi
annex-what = quoi
annex-document = document
annex-clause = article
annex-year = année
annex-no-year = non notée
annex-place = Place du plan sur la tranche
annex-pieces = Pièces
annex-cuts = Coupes
annex-balance = Tranche { $slab } = plan fini { $top } + surcote laissée aux bords { $left } + trait de coupe { $kerf } + chutes { $waste }. Les miettes entre les fentes comptent comme trait de coupe.
annex-range = { $low } à { $high }
annex-three = { $low } à { $high }, probable { $likely }
annex-kind = pierre
annex-density = masse volumique
annex-thickness = épaisseur
annex-allowed = résistance
annex-strength-is = { $strength } ÷ { $factor } ({ $source })
annex-slab-area = tranche, surface
annex-slab-mass = la tranche pèse
annex-top-mass = le plan pèse
annex-spare = jeu minimal
annex-turn = tourné de
annex-corner = angle du plan
annex-corner-of-top = angle { $name }
annex-x = x depuis A le long de AB
annex-y = y depuis A d'équerre
annex-edge = bord
annex-edge-sawn = scié, { $left } laissés dessus
annex-edge-flush = sur le bord { $edge } de la tranche
annex-length = longueur
annex-lies = position
annex-piece = pièce
annex-after = après coupe
annex-area = surface
annex-mass = pèse
annex-rectangle = contient un rectangle de
annex-left = pierre gardée
annex-tool = outil
annex-core-bit = couronne de { $bit }
annex-bending = Contrainte sous son propre poids, × 1,2 pour la manutention, dans la pierre la plus mince ; pierre saine seulement
annex-stone-state = pierre
annex-state = { $name }
annex-flat-best = à plat, meilleures cales
annex-flat-hands = à plat, en mains
annex-flat-ends = à plat, par les bouts
annex-one-end = un bout levé
annex-on-edge = sur chant, par les bouts
annex-may = admis
annex-lifting = Lever à la main, et ce qu'il faut aux engins
annex-slab = tranche
annex-top = plan
annex-guideline = valeur indicative
annex-guideline-is = { $each } pour une personne ({ $source }) ; cela ne promet pas qu'un levage en dessous est sûr
annex-person = personne
annex-from-end = depuis le bout
annex-from-side = depuis le côté
annex-carries = porte
annex-figure = valeur dans cette équipe
annex-trolley-rated = chariot marqué pour
annex-trolley-push = poussée, à plat
annex-trolley-ramp = pente 1 sur 12, en plus
annex-trolley-tips = bascule en dévers à
annex-vacuum-rated = ventouses marquées pour
annex-sling-pull = traction par brin d'élingue
annex-leans = sur chant, tombe au-delà de
annex-rails = Pierre étroite à côté des découpes
annex-rail-is = { $width } de large, { $length } de long : { $together } avec sa voisine, { $alone } seule
annex-setting = Sur ses appuis
annex-support = appui
annex-carries-most = porte au plus
annex-with-person = avec une personne appuyée
annex-reaches = dépasse de
annex-person-stress = contrainte avec une personne
annex-way-of = Le chemin : { $name }
annex-way-place = passage
annex-way-carried = mieux porté
annex-way-spare = jeu
annex-way-clears = { $spare } de jeu
annex-way-tight = juste : { $spare } de jeu
annex-way-short = il manque { $short }
annex-way-note = Mesurer de nouveau chaque passage avec les personnes et l'engin qui portent.
annex-limit = silice
annex-vibration = vibrations
annex-vibration-is = { $reckoned } incertitude comprise, { $job } pour ce travail ; la journée { $day } ; action { $action }, limite { $limit } ({ $source })
annex-noise = bruit
annex-noise-is = { $level } pendant { $hours } ; la journée { $day } ; obligation dès { $duty } ({ $source })
annex-cited = { $document }{ $borrowed } ; vérifier les règles en vigueur
annex-cited-year = { $document }, { $year }{ $borrowed } ; vérifier les règles en vigueur
annex-masks = masques qui suffisent
annex-mask = { $mask } (facteur { $factor })
annex-authority = s'informer sur les règles

# In a terminal
answer-job = travail
answer-fits = tient
answer-fits-is = plan { $length } × { $width }, { $spare } de jeu au plus juste
answer-weighs = pèse
answer-weighs-is = plan jusqu'à { $top }, tranche jusqu'à { $slab }
answer-time = temps
answer-time-is = { $stone } avec le disque dans la pierre, { $setting } de mise en place
answer-straight = droite, bord { $edge }, { $length }
answer-relief = dégagement en { $edge }, { $length }
answer-curve = courbe en { $edge }, { $length }
answer-hole = trous en { $edge }
answer-guide = { $first } depuis { $from }, { $second } depuis { $to }
answer-chord = corde { $length }
answer-frees = libère
answer-more = Plus avec --full :
answer-sheet = plan fini        { $low } à { $high }
    coupes           { $straight } droites, { $curves } courbes
    temps de sciage  { $sawing } avec le disque dans la pierre, { $setting } de mise en place
    stops            { $stops }
weigh-stone = { $name }
weigh-place = place
weigh-no-fit = le plan ne tient pas sur cette tranche : il est pesé tel que demandé
weigh-region = région
weigh-balance = point d'équilibre
weigh-balance-is = à { $end } du bout, à { $side } du côté
weigh-mass = pèse
weigh-mass-is = au plus { $high } : lever avec cette valeur ; probable { $likely }, au moins { $low }
weigh-size = taille
weigh-size-is = { $length } × { $width } × { $thick }, { $area }
weigh-tilt = la relever

# On a telephone
phone-plan = plan { $plan }
phone-contents = Sommaire
phone-light = Clair ou sombre
phone-back = Retour
phone-next = Suivant
phone-bar = Navigation dans la fiche
phone-clear = Décocher tout sur ce téléphone
phone-forgets = Ce lecteur oublie les coches quand on le ferme. Ouvrir le fichier dans un navigateur.
