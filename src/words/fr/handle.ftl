# Findings of handling: a line, and in full.

crush-and-falls = { $stone } : la pierre écrase ce sur quoi elle tombe
    .detail = Ses { $mass } appuient avec { $weight }. Sur chant, la pierre repose sur { $thickness } : une poussée de { $push } sur son bord supérieur la fait basculer, et penchée de plus de { $tips } elle tombe toute seule, sur une bande de { $shadow } de large de chaque côté : personne ne s'y tient, et personne n'essaie de la rattraper. L'attacher à quelque chose qui tient avant que quiconque la lâche, une pierre à la fois ; ce contre quoi elle s'appuie doit l'empêcher de tomber en avant et empêcher son pied de glisser. Penchée de { $leans }, elle tire par son bord supérieur sur l'attache avec { $pulls }, dans cet ordre ; l'attache et ce à quoi elle est fixée doivent tenir plusieurs fois cette force. La poser sur deux tasseaux, jamais à même le sol : pas de doigts, pas d'orteils et pas d'enfants dans l'intervalle.

way-in-blocked = le plan n'entre pas : { $place }
    .detail = Sur chant, il manque { $edge_short } ({ $edge_measure } : il faut { $edge_needs }, il y a { $edge_has }). Debout, il manque { $upright_short } ({ $upright_measure } : il faut { $upright_needs }, il y a { $upright_has }). Ce qui aide, un de ces remèdes, ou les deux là où il manque deux cotes à une position : { $remedies }. À plat, il ne passe pas non plus.

way-in-upright = le plan ne passe que debout : { $place }
    .detail = Sur chant, il manque { $edge_short } ({ $edge_measure } : il faut { $edge_needs }, il y a { $edge_has }). Debout, il passe avec { $spare } de jeu. Ce qui aide, un de ces remèdes, ou les deux là où il manque deux cotes à une position : { $remedies }. Le dresser sur son petit côté demande { $stand_up } de hauteur libre : le faire avant ce passage, avec l'engin et les personnes que son poids demande, et jamais dans un escalier.

way-in-flat-only = le plan ne passe qu'à plat, ce qui est déconseillé : { $place }
    .detail = Sur chant, il manque { $edge_short } ({ $edge_measure } : il faut { $edge_needs }, il y a { $edge_has }). Debout, il manque { $upright_short } ({ $upright_measure } : il faut { $upright_needs }, il y a { $upright_has }). À plat, il passe avec { $spare } de jeu. Ce qui aide, un de ces remèdes, ou les deux là où il manque deux cotes à une position : { $remedies }. À plat, il peut casser net sous son propre poids : voir le tableau de flexion, et ne le porter à plat que sur un panneau plein, sinon pas du tout.

way-in-tight = passage juste : { $place }
    .detail = Porté { $pose }, le plan passe avec seulement { $spare } de jeu. Mesurer de nouveau à l'endroit le plus étroit, et faire passer avant la pierre un tasseau de la longueur de la pierre et une planche de sa hauteur.

way-in-slab = couper avant de rentrer la pierre : la tranche entière s'arrête ici : { $place }
    .detail = Sur chant, il manque { $edge_short } ({ $edge_measure } : il faut { $edge_needs }, il y a { $edge_has }). Debout, il manque { $upright_short } ({ $upright_measure } : il faut { $upright_needs }, il y a { $upright_has }). Ce qui aide, un de ces remèdes, ou les deux là où il manque deux cotes à une position : { $remedies }. Le plan fini passe : décharger et couper de ce côté-ci du passage.

way-in-slab-flat = couper avant de rentrer la pierre : la tranche entière ne passe qu'à plat : { $place }
    .detail = Sur chant, il manque { $edge_short } ({ $edge_measure } : il faut { $edge_needs }, il y a { $edge_has }). Debout, il manque { $upright_short } ({ $upright_measure } : il faut { $upright_needs }, il y a { $upright_has }). À plat, la tranche passe avec { $spare } de jeu, et peut casser net sous son propre poids. Ce qui aide, un de ces remèdes, ou les deux là où il manque deux cotes à une position : { $remedies }. Le plan fini passe : décharger et couper de ce côté-ci du passage.

tips-out-of-hands = { $stone } : la pierre bascule avec des personnes à ces places
    .detail = Le point d'équilibre se trouve { $off } à côté de ce que ces places peuvent tenir. Mettre des personnes des deux côtés de ce point.

lifter-off-the-edge = { $stone } : la personne { $lifter } n'a pas de bord à tenir
    .detail = La place indiquée est à { $away } du bord, plus de { $most }. Indiquer des places sur le bord, dans le repère propre du plan.

lifter-at-cutout = { $stone } : la personne { $lifter } lève à côté d'une découpe
    .detail = La place est à { $away } d'une découpe, moins qu'une largeur de main, { $least }. Lever là où la pierre est pleine, jamais par une bande étroite.

carry-too-far = { $way } : trop loin pour porter sans repos
    .detail = Les valeurs indicatives valent pour un port de { $most } au plus, contre le corps. Poser la pierre en chemin, sur chant, sur deux tasseaux, ou la rouler sur un chariot.

brace-the-rail = { $rail } ({ $cutouts }) : { $verdict }
    .detail = La bande a { $width } de large et { $length } de long ({ $stone }). À plat ou dans les mains des personnes, elle subit { $together } avec l'aide du reste de la pierre et { $alone } quand elle doit reprendre seule la flexion, comme lorsque ce côté est levé en premier ; sur chant sur deux appuis : { $on_edge } ; admis { $allowed }. Avant de lever, serrer le long de la bande, sur chant et en contact d'un bout à l'autre, du bois droit de { $timber_width } × { $timber_depth } (pièces côte à côte : { $timbers }), d'au moins { $timber_length } de long, avec des serre-joints à mors garnis posés aux deux bouts sur la pierre pleine : il reste alors { $braced }. Porter la pierre sur chant ; ne jamais la tenir ni la serrer à cet endroit.

brace-the-rail-on-a-frame = { $rail } ({ $cutouts }) : { $verdict }
    .detail = La bande a { $width } de large et { $length } de long ({ $stone }). À plat ou dans les mains des personnes, elle subit { $together } avec l'aide du reste de la pierre et { $alone } quand elle doit reprendre seule la flexion, comme lorsque ce côté est levé en premier ; sur chant sur deux appuis : { $on_edge } ; admis { $allowed }. Aucun bois n'est assez raide : coucher toute la pierre sur un châssis ou un panneau. Porter la pierre sur chant ; ne jamais la tenir ni la serrer à cet endroit.

brace-the-neck = { $stone }, { $neck } : ne doit pas porter la pierre qui est au-delà
    .detail = L'étranglement a { $width } de large ; à plat, les { $hanging } qui y pendent y produisent { $stress }, admis { $allowed }. Soutenir la pierre des deux côtés de l'étranglement chaque fois qu'elle est à plat. Avant de la lever, serrer le long de l'étranglement, sur chant et en contact d'un bout à l'autre, du bois droit de { $timber_width } × { $timber_depth } (pièces côte à côte : { $timbers }), d'au moins { $timber_length } de long, avec des serre-joints à mors garnis posés aux deux bouts sur la pierre pleine : il reste alors { $braced }.

brace-the-neck-on-a-frame = { $stone }, { $neck } : ne doit pas porter la pierre qui est au-delà
    .detail = L'étranglement a { $width } de large ; à plat, les { $hanging } qui y pendent y produisent { $stress }, admis { $allowed }. Soutenir la pierre des deux côtés de l'étranglement chaque fois qu'elle est à plat. Aucun bois n'est assez raide : coucher toute la pierre sur un châssis ou un panneau.

narrow-rail = { $rail } ({ $cutouts }) : plus étroite que l'usage du métier
    .detail = La bande se trouve à côté d'un trou de robinet et a { $width } de large ; { $least } est le minimum publié à côté d'une découpe, et rien de moins n'est publié pour un trou de robinet. Déplacer le trou ou le faire plus petit, ou demander si la pierre peut être renforcée par-dessous pour de bon.

guideline-is-not-a-limit = La valeur indicative de levage n'est pas une limite sûre
    .detail = { $each } par personne : cela vaut pour des adultes en bonne forme qui lèvent près du corps, à hauteur de taille, droits et rarement ; c'est moins pour beaucoup de personnes, et moins avec des mains mouillées, sur des marches et sur un sol inégal. Cela ne promet pas qu'un levage en dessous est sûr. L'équation de levage vaut pour lever, pas pour porter. Vérifier les règles en vigueur.

tips-off-supports = Le plan ne tient pas en place sur ses appuis
    .detail = Les appuis n'entourent pas le point d'équilibre. Ajouter ou déplacer des appuis avant de poser le plan.

support-lifts-off = { $support } : ne porte rien
    .detail = Le plan n'appuie pas dessus. Vérifier la place et la hauteur de cet appui ; ne pas tirer le plan vers le bas pour le toucher.

falls-off-trestles = { $stone } : la pierre ne repose pas sur les tréteaux
    .detail = Avec des tréteaux à { $first } et { $second } du bout de la tranche, son point d'équilibre n'est pas entre eux, ou la pierre ne les atteint pas. Les déplacer avant cette coupe, ou ne pas saisir lift.trestles.

bends-on-trestles = { $stone } : deux tréteaux ne suffisent pas
    .detail = Sur des tréteaux à { $first } et { $second } du bout de la tranche, la pierre subit { $stress }, { $times } fois ce qui est admis. La coucher plutôt sur un panneau plein et plan, sur toute sa surface.

aid-too-weak = { $stone } : l'engin de levage n'est pas marqué pour ce poids
    .detail = L'engin ({ $aid }) est marqué pour { $rated } ; cette pierre demande { $needs }. En prendre un qui est marqué pour cela, ou une pierre plus légère : couper avant de la déplacer.

aid-without-mark = quelle charge est marquée ici : { $aid } ? Il faut { $needs }
    .detail = Lire la charge marquée sur l'engin et la noter ici ; la pierre la plus lourde : { $stone }. Pas de marquage, pas de levage. Dans le fichier : lift.rated.

in-slings-no-place = { $stone } : pas de place pour deux élingues
    .detail = Où que passent deux élingues, la pierre y pend plus fléchie qu'il n'est admis. La renforcer, ou la porter couchée sur un châssis.

on-a-trolley = le chariot : pierre sur chant, attachée, sur sol horizontal
    .detail = Le grand côté le plus lourd en bas, la pierre attachée au châssis du chariot, quelqu'un à chaque bout et personne à côté. Pour charger, placer le chariot contre ce grand côté, roues calées, basculer la pierre autour de lui sur le plateau, et l'attacher avant que quiconque la lâche. En descente, le chariot est retenu depuis le haut de la pente. La notice du fabricant passe d'abord.

on-a-trolley-numbers = { $stone } : si elle bascule, elle tue ; un chariot marqué pour { $rated } ou plus
    .detail = Sur le chariot, le point d'équilibre est à { $height } au-dessus du sol, et le tout se renverse sur un sol en dévers de { $tips } (à l'arrêt, roues dures : plus tôt en roulant). Il faut une poussée d'au moins { $push } à l'horizontale, et sur une rampe de 1 sur { $run } encore { $ramp } de plus, qui tirent aussi vers le bas de la pente.

under-a-vacuum-lifter = l'appareil à ventouses : marqué pour deux fois le poids, et une deuxième sécurité
    .detail = Seulement sur une face sèche, propre, saine, polie ou adoucie : jamais sur une face brute ou éclatée, et nulle part en travers d'un défaut ou d'une réparation. Sur une face verticale, les ventouses ne tiennent que par frottement : prendre pour cela le chiffre du fabricant. Une deuxième sécurité (sangle, élingue) sous la pierre à tout moment. La lever d'une largeur de main, attendre, et regarder si chaque ventouse tient avant de la déplacer. La notice du fabricant passe d'abord.{ $wet ->
        [yes] {" "}Ce travail se coupe à l'eau : rincer d'abord la boue et laisser sécher la face.
       *[other] {""}
    }{ $face ->
        [porous] {" "}Cette pierre est poreuse : l'air passe à travers et la prise lâche. Demander au fabricant, ou employer des élingues.
        [split] {" "}Cette pierre est souvent vendue avec une face éclatée : aucune ventouse ne tient dessus.
       *[other] {""}
    }

under-a-vacuum-lifter-numbers = { $stone } : si elle tombe, elle tue ; un appareil à ventouses marqué pour { $rated } ou plus
    .detail = Ventouses par paires de part et d'autre du point d'équilibre : { $cups }, et chacune porte { $each }.

under-a-vacuum-lifter-no-room = { $stone } : un appareil à ventouses n'a pas la place
    .detail = Il devrait être marqué pour { $rated } ou plus, mais il n'y a pas la place pour une paire de ventouses de part et d'autre du point d'équilibre. Employer des élingues ou un chariot.

in-slings = le portique : installé et employé par une personne compétente
    .detail = Crochet au-dessus du point d'équilibre, arêtes protégées, élingues liées de façon à ne pas pouvoir glisser l'une vers l'autre, une corde de guidage à chaque bout, personne dessous ni à côté. La lever d'une largeur de main et regarder si elle pend à niveau avant de la déplacer. Les appareils de levage sont vérifiés, marqués, et installés par une personne compétente, agréée là où la loi le demande.

in-slings-numbers = { $stone } : si elle tombe, elle tue ; élingues à { $first } et { $second } du bout gauche
    .detail = Du bout du bas si la pierre est dessinée debout. { $each } pendent à chaque élingue ; avec { $legs } entre les brins, chaque brin tire { $factor } fois le poids, { $tension }, et le crochet se trouve à { $hook } ou plus au-dessus de la pierre.

not-a-hand-lift = ne se lève pas à la main : { $stones }
    .detail = { $masses }. { $people ->
        [one] Une personne peut compter sur { $team }
       *[other] { $people } personnes qui lèvent ensemble peuvent compter sur { $team }
    } ; au-delà d'environ deux fois cette valeur, le risque est grave même pour des personnes en forme et formées. Indiquer un engin dans lift.aid : un chariot qui porte la pierre sur chant, marqué pour { $rated } ou plus, sur sol horizontal seulement (poussée d'au moins { $push }) ; un appareil à ventouses marqué pour { $vacuum } ou plus, sur une face sèche, propre et intacte ; un portique ou un palan avec des élingues, marqué pour { $rated } ou plus et installé par une personne compétente en appareils de levage. Relever la plus lourde sur chant demande { $tilt } du côté opposé, au départ.

breaks-in-hands = casserait dans les mains : { $stones }
    .detail = { $masses }. De quelque façon que { $people ->
        [one] une personne la tienne
       *[other] { $people } personnes la tiennent
    }, à plat ou sur chant, la pierre fléchit plus qu'il n'est admis. La renforcer, la coucher sur un panneau, ou indiquer un engin dans lift.aid : un chariot marqué pour { $rated } ou plus ; un appareil à ventouses marqué pour { $vacuum } ou plus ; un portique avec des élingues, installé par une personne compétente.

more-than-four = trop de personnes pour lever d'un seul geste : { $people }
    .detail = Plus de { $most } personnes ont peu de chances de travailler comme une équipe, et aucune part de leur force sur laquelle compter n'est publiée. Employer un engin de levage, ou moins de personnes et une pièce plus légère.

lifter-over-guideline = plus que la valeur indicative : { $stones }
    .detail = { $masses }. { $people ->
        [one] Une personne peut compter sur { $team }
       *[other] { $people } personnes qui lèvent ensemble peuvent compter sur { $team }
    } : une valeur qui invite à regarder de plus près, pas une limite. Avant de lever, décider qui lève, par où l'on passe et où l'on pose ; plus de personnes, une pièce plus légère ou un engin vaut mieux. Relever la plus lourde sur chant demande { $tilt } du côté opposé, au départ.

tilt-over-guideline = décider comment on la relève sur chant ; au côté opposé il faut : { $stones }
    .detail = { $people ->
        [one] Une personne peut compter sur { $team }
       *[other] { $people } personnes ensemble peuvent compter sur { $team } en tout
    }. La garder sur chant de la livraison jusqu'à sa place. { $hands ->
            [0] Ce qui demande plus d'environ le double ne se tourne pas à la main : là le risque est grave même pour des gens forts et formés. Un palan, un appareil à ventouses ou un châssis qui bascule avec la pierre attachée, par une personne compétente : décider lequel avant la livraison.
           *[other] Pour la tourner, caler le grand côté autour duquel elle tourne pour qu'il ne puisse pas glisser, tout le monde au grand côté opposé, la relever par étapes sur des cales, et tenir l'attache prête avant qu'elle soit debout ; ou la tourner avec un palan ou un appareil à ventouses.
        } Personne ne se tient du côté où elle peut tomber.

bends-flat-always = { $stone } : jamais à plat sur deux appuis
    .detail = Pierre { $how } : { $stress } là où sa largeur est de { $width }, à { $at } du bout, soit { $times } fois la valeur admise de { $allowed } (résistance ÷ coefficient de sécurité), même sur les deux meilleurs appuis. La garder sur chant, ou la coucher sur un panneau plein et plan.{ $flaws ->
        [0] {""}
        [one] {" "}La tranche a un défaut : en travers de lui, la résistance ne vaut pas.
       *[other] {" "}La tranche a { $flaws } défauts : en travers d'eux, la résistance ne vaut pas.
    }

bends-flat = { $stone } : à plat, tenue par ses bouts, elle peut casser net
    .detail = Pierre { $how } : { $stress } là où sa largeur est de { $width }, à { $at } du bout, soit { $times } fois la valeur admise de { $allowed } (résistance ÷ coefficient de sécurité). Ne jamais soulever un bout tant que la pierre est à plat. À plat, elle ne peut reposer que sur des appuis à { $first } et { $second } du bout gauche (bout du bas si elle est dessinée debout), où elle subit { $best } ; la porter sur chant.{ $flaws ->
        [0] {""}
        [one] {" "}La tranche a un défaut : en travers de lui, la résistance ne vaut pas.
       *[other] {" "}La tranche a { $flaws } défauts : en travers d'eux, la résistance ne vaut pas.
    }

carry-on-edge-not-by-its-ends = { $stone } : pas même sur chant par les bouts
    .detail = Pierre { $how } : { $stress }, soit { $times } fois la valeur admise de { $allowed }. La tenir ou la poser à { $first } et { $second } du bout, où elle subit { $best }. Le calcul suppose une pierre saine.

carry-on-edge-braced = { $stone } : pas même sur chant tant qu'il n'y a pas de renfort
    .detail = Pierre { $how } : { $stress }, soit { $times } fois la valeur admise de { $allowed }. Renforcer d'abord ses parties étroites, ou la porter couchée sur un châssis. Le calcul suppose une pierre saine.

flaws-and-strength = { $count ->
        [one] La tranche a un défaut
       *[other] La tranche a { $count } défauts
    } : les chiffres de résistance ne valent pas en travers { $count ->
        [one] de lui
       *[other] d'eux
    }
    .detail = Toutes les contraintes ici supposent une pierre saine ; à une fissure ou à une réparation, elle peut casser bien en dessous. La garder sur chant, sur un panneau plein ou un châssis.

trestles-are-moved = les tréteaux se déplacent avant la coupe { $cuts }
    .detail = Aucune place ne convient à toutes les coupes. Lever la pierre comme son poids le demande, les déplacer, la reposer ; les nouvelles places sont sur la fiche de cette coupe.

rests-poorly = mettre plus d'appuis sous le plan : { $what }
    .detail = { $parts }. Des appuis plus rapprochés, à côté de chaque découpe, plus à l'extérieur. Ni vis ni colle ne retient un plan qui bascule.

# What is wrong with how the top rests: in short, and in full.
rests-overhang = porte-à-faux
rests-overhang-part = { $edges } { $count ->
        [one] dépasse
       *[other] dépassent
    } les appuis de { $reach } (limite publiée : { $limit })
rests-overhang-person = porte-à-faux
rests-overhang-person-part = { $edges } { $count ->
        [one] dépasse
       *[other] dépassent
    } les appuis de { $reach } (limite publiée : { $limit }) et, avec une personne sur le bord, il est à { $times } de ce qui est admis
rests-span = portée
rests-span-part = la plus grande longueur sans appui est de { $span } (limite publiée : { $limit })
rests-tips = il bascule si quelqu'un s'appuie
rests-tips-part = une personne de { $force } { $place } le fait basculer de ses appuis
rests-bends = quelqu'un qui s'appuie
rests-bends-part = une personne de { $force } { $place } le charge à { $times } de ce qui est admis
rests-bends-elsewhere = quelqu'un qui s'appuie
rests-bends-elsewhere-part = une personne de { $force } { $place } le charge à { $times } de ce qui est admis, le plus { $section }
lean-worst = au pire endroit
lean-rail = sur la { $rail } ({ $cutouts })
lean-overhang = sur le porte-à-faux ({ $edge })
lean-between = entre les appuis { $first } et { $second }
lean-over = au-dessus de l'appui { $support }
rests-over = { $support }
rests-over-part = { $support } porte jusqu'à { $carried }, plus que sa limite de { $limit }
rests-over-person = { $support } avec une personne
rests-over-person-part = { $support } porte jusqu'à { $with_person } avec une personne de { $force } (limite { $limit })
none-published = rien pour une pierre aussi mince

# A stone in a list of stones.
stone-of-mass = { $stone } { $mass }

# What would make a way passable.
remedy-upright = passer debout, ce qui demande { $n } de hauteur
remedy-cut-to = couper à { $n } de long au plus avant ce passage
remedy-widen-before = donner au moins { $n } de large au passage avant l'angle
remedy-widen-after = donner au moins { $n } de large au passage après l'angle
remedy-widen = donner au moins { $n } de large au passage : ôter le battant, les butées, un dormant
remedy-raise = donner au moins { $n } de hauteur libre pour le passage { $how }
