# Findings of hazards: a line, and in full.

working-alone = une seule personne : personne pour arrêter le travail, personne pour appeler à l'aide
    .detail = Personnes saisies : { $people }, au moins 2 tant qu'un disque tourne (appréciation). Trouver quelqu'un qui se tient prêt, ou indiquer dans lift.check_call qui sait où vous êtes et à quelles heures cette personne appelle ; si personne ne répond, elle vient.

second-person = Une deuxième personne { $at ->
    [plug-tap] à la prise et au robinet
    [plug] à la prise
    [valve-tap] à la vanne d'air et au robinet
    [valve] à la vanne d'air
    [tap] au robinet d'eau
   *[sight] en vue
 }, qui voit l'opérateur et ne fait rien d'autre
    .detail = Sur les { $people } personnes, une se tient là, à la vue de l'opérateur, hors de la ligne du disque, avec masque et protection auditive. Une main levée ou une main sur l'épaule veut dire arrêt, et personne ne demande pourquoi.

who-is-bound = Chantier, atelier ou travail pour soi : savoir quelle règle s'applique
    .detail = Sur un chantier (29 CFR 1926.1153), une ligne du tableau 1 suivie à la lettre suffit. Un atelier qui fabrique des plans de travail relève de l'industrie générale (29 CFR 1910.1053) : là, pas de tableau, l'exposition est évaluée. Un particulier n'est tenu par aucune de ces deux règles ; le tableau est le meilleur guide publié, et la poussière fait les mêmes dégâts.

no-dry-sweeping = Pas de balayage à sec, pas d'air comprimé
    .detail = { $rule }{ $borrowed } Après les coupes, environ { $stone } de pierre, dont jusqu'à { $silica } de silice, traînent partout : une fois secs, ils repassent dans l'air. Aspirateur : { $vacuum }{ $vacuum_borrowed }.

vacuum-before-the-mask-comes-off = Poussière aspirée partout avant d'enlever le masque
    .detail = Aucun carter d'aspiration ne capte la totalité des { $stone }, encore moins aux bouts d'une coupe. Sol, rebords, machine et vêtements sont aspirés avant que quiconque enlève son masque : { $vacuum }{ $vacuum_borrowed }.

cold-water = Mains chaudes et sèches ; doigts blancs ou engourdis : arrêter pour la journée
    .detail = Manches imperméables, une paire de gants secs pour chaque heure, pauses au chaud. Doigts froids, blancs ou engourdis : arrêter pour la journée, le froid rend les vibrations nocives plus tôt.

frost = Pas de coupe à l'eau par temps de gel
    .detail = Au-dessous d'environ 3 °C (appréciation), la boue gèle sous les pieds et l'eau ne circule plus dans le tuyau et la buse : pas d'eau, pas de coupe. Vider la machine et le tuyau avant la nuit.

local-rules-first = Règles locales, notices des fabricants et personnes compétentes passent avant cette fiche
    .detail = Cette fiche n'est pas une autorisation. Région de ses valeurs : { $region }. Vérifier les règles en vigueur avec { $authority }. Les appareils de levage, l'électricité, la structure et la pierre qui peut contenir de l'amiante reviennent à des professionnels agréés.

slurry-clean-up = Boue ramassée avant qu'elle sèche ; seaux nécessaires : { $buckets }
    .detail = Environ { $kilos } : { $water } l d'eau ({ $flow } l/min pendant que le disque coupe) et { $stone } de pierre, { $buckets } seaux de { $bucket } l. Une fois sèche, elle redevient la poussière que l'eau retenait. Bâche sous les tréteaux, racler et aspirer avec un aspirateur à eau tant que c'est mouillé, rincer vêtements, bottes et machine, laisser le reste se déposer ; rien dans les égouts ni les canalisations.

dust-bags = Sacs de l'extracteur fermés et évacués ; sacs nécessaires : { $bags }
    .detail = Environ { $stone } de pierre si le carter d'aspiration captait tout ; sacs de { $bag } au plus : { $bags }. Changer le sac masque en place, à l'extérieur ; le sac est fermé avant de sortir de l'extracteur, jamais secoué ni vidé pour resservir.

falling-stone = Personne sous la pierre, ne jamais rattraper une tranche qui tombe
    .detail = { $mass } kg/m² à l'épaisseur mesurée la plus forte et avec la pierre la plus lourde de ce genre. La chute et la pierre gardée sont toutes deux soutenues avant la première passe ; aucun pied ni aucun doigt dessous ou entre les deux ; ne jamais se tenir là où une tranche posée sur chant peut tomber, et ne jamais essayer d'en rattraper une.

wet-floor = La boue glisse : bottes, eau menée ailleurs, sol rincé avant de rien lever
    .detail = Bottes antidérapantes, eau menée loin des endroits où l'on se tient et où l'on porte{ $power ->
            [mains] , câbles suspendus hors de l'eau
           *[other] {""}
        }. Sol rincé et dégagé avant de lever la moindre pièce.

vibration-over-limit = vibrations A(8) { $day } m/s² en { $all } min de la journée, limite { $limit } m/s²
    .detail = { $a } pendant { $minutes } minutes dans la journée avec cette machine, { $points } points avec tout le reste : A(8) { $day }, limite { $limit }{ $borrowed }, atteinte après { $to_limit } minutes. Répartir le travail sur { $people } personnes ou jours, au plus { $to_limit } minutes chacun ; pour rester sous la valeur d'action { $action }, il en faut { $people_action }. Saisir les jours ou les personnes dans dust.days. Rester au chaud, disque bien coupant, prise légère. Vérifier les règles en vigueur.

vibration-over-action = vibrations A(8) { $day } m/s² en { $all } min de la journée, valeur d'action { $action } m/s²
    .detail = { $a } pendant { $minutes } minutes dans la journée avec cette machine, { $points } points avec tout le reste : A(8) { $day }, valeur d'action { $action }{ $borrowed }, atteinte après { $to_action } minutes. Répartir le travail sur { $people_action } personnes ou jours, au plus { $to_action } minutes chacun ; rester au chaud, disque bien coupant, prise légère. Vérifier les règles en vigueur.

vibration-unknown = vibrations de la machine : les lire dans sa notice
    .detail = Valeur { $a } : aucune machine portative n'est sans vibrations. Prendre la valeur du fabricant, ou { $usual } m/s² pour une meuleuse sur la pierre, et saisir machine.vibration.

disc-over-marked-rpm = { $disc } : machine { $machine } tr/min, disque marqué { $marked }
    .detail = La machine tourne { $over } tr/min plus vite que les { $marked } marqués sur le disque ({ $speed }, marqué pour { $marked_speed }). Le disque peut voler en éclats : en prendre un marqué pour { $machine } ou plus, ou une machine plus lente.

disc-mark-unknown = { $disc } : vitesse maximale inconnue
    .detail = Machine { $machine } tr/min, marquage du disque inconnu. Lire le marquage sur le disque et saisir disc.max_rpm ; un disque sans marquage ne s'emploie pas.

machine-speed-unknown = vitesse de la machine inconnue
    .detail = Machine { $machine } tr/min : sans sa vraie vitesse, aucun disque ne peut être vérifié. Lire la plaque signalétique et saisir machine.rpm.

kickback-pinched-disc = À côté de la ligne du disque ; pincé : arrêter, dégager, rentrer à pleine vitesse
    .detail = Se tenir à côté de la ligne du disque, deux mains sur la machine, carter de protection en place, personne dans cette ligne. Après un pincement : arrêter, attendre l'arrêt complet du disque, le dégager, ne rentrer dans la coupe qu'à pleine vitesse ; ne jamais démarrer dans la coupe.

resin-disc-expired = { $disc } : son dernier jour était le { $expires }
    .detail = Travail daté du { $date }, dernier jour du disque { $expires }. Les disques à résine durent au plus { $years } ans après leur fabrication : briser celui-ci, et en prendre un neuf ou un disque diamant.

resin-disc-age-unknown = { $disc } : à liant résine, dernier jour inconnu
    .detail = Les disques à résine durent au plus { $years } ans après leur fabrication, et l'humidité raccourcit cette durée. Lire le mois ou le trimestre sur la bague ou l'étiquette et saisir disc.expires ; un disque à résine sans date ne s'emploie pas.

resin-disc-age = { $disc } : pas après le { $expires }
    .detail = Dernier jour du disque { $expires } : le comparer avec le jour du travail. Jusque-là, le garder au sec et posé à plat ; un disque qui a pris l'humidité ou qui est tombé est brisé et jeté.

disc-before-use = Disque examiné : pas de fissures, alésage et flasques justes, carter à sa taille
    .detail = Pas de fissures, alésage qui convient, les deux flasques d'origine de la machine et propres, flèche dans le bon sens, carter de protection à la taille du disque, fentes du bord de { $gap } au plus, jamais un disque usé venant d'une machine plus grande. À { $speed }, chaque morceau détaché part comme une balle.

support-both-sides = Les deux côtés de la coupe soutenus par-dessous, tout près d'elle
    .detail = Des cales sous les deux côtés, près de la coupe et aux bords de la pierre, pour que le trait de coupe reste ouvert jusqu'au bout. La chute repose sur ses propres cales avant la première passe ; ni main, ni pied, ni genou dessous.

rim-speed-over-limit = { $disc } : vitesse périphérique { $speed }, classe marquée la plus haute { $highest }
    .detail = Un disque de { $diameter } à { $machine } tr/min tourne à { $speed } ; aucune bande de couleur n'autorise plus de { $highest }. Disque plus petit ou machine plus lente.

rim-speed-above-hand-discs = { $disc } : vitesse périphérique { $speed }, les disques portatifs sont faits pour { $hand }
    .detail = Un disque de { $diameter } à { $machine } tr/min tourne à { $speed }. Au-dessus de { $hand } m/s (bande rouge), seulement un disque à bande verte ({ $highest } m/s) : la chercher sur le disque, ou rester à { $slower } tr/min ou moins.

disc-run-down = Le disque continue de tourner après l'arrêt : attendre qu'il s'immobilise
    .detail = Pendant des secondes, plus longtemps avec un grand disque : tenir la machine à l'écart de la pierre, du tuyau et des vêtements jusqu'à l'arrêt complet du disque, puis la poser. { $power ->
            [mains] Fiche débranchée
            [battery] Batterie retirée
            [air] Tuyau d'air débranché
           *[engine] Moteur arrêté
        } avant de toucher le disque.

new-disc-run = Disque neuf : d'abord à vide, personne dans sa ligne
    .detail = { $minutes } minute à pleine vitesse, carter de protection en place, machine tenue à l'écart du corps, personne ne se tient dans le plan du disque, à chaque montage. S'il vibre ou siffle : éteindre, attendre l'arrêt complet, examiner de nouveau.

never-steer-the-disc = Ne jamais diriger, tordre ni pousser le disque de côté
    .detail = Une charge latérale plie et casse un disque. Charge latérale admise : aucune. Les courbes se font par plongées droites, comme sur le dessin ; ne pas meuler avec le plat d'un disque à tronçonner.

disc-bore = { $disc } : alésage { $bore } sur un centrage de { $seat }
    .detail = Alésage { $bore }, centrage { $seat }, usuel { $usual }, écart au plus { $play }. Un disque qui a du jeu tourne faux et casse, un disque trop juste ne se monte pas. Le bon disque pour la machine : pas de bague, pas de coup de lime, pas de cale.

protector-unknown = protection auditive : laquelle, et qu'y lit-on ?
    .detail = Lire SNR, H M L ou NRR sur la boîte et le noter ici : { $level } à l'oreille pendant la coupe, et { $duty } dB(A) sur la journée rendent la protection obligatoire. Dans le fichier : [protector].

protector-too-weak = protection auditive trop faible : { $day } dB(A) sur la journée sous la protection
    .detail = { $level } pendant la coupe, { $holds } dB retenus{ $borrowed } : { $ear } à l'oreille, { $day } sur la journée, au plus { $duty } admis. Une protection d'indice plus élevé, des bouchons d'oreilles sous le casque antibruit, ou moins de minutes.

protector-too-strong = protection auditive trop forte : { $ear } dB(A) à l'oreille
    .detail = { $level } pendant la coupe, { $holds } dB retenus{ $borrowed } : { $ear } à l'oreille. En dessous de { $quiet }, on n'entend plus les appels ni les avertissements : convenir de signes de la main, ou prendre une protection d'indice plus bas.

protector-foreign-rating = l'indice de la protection auditive n'est pas celui qui compte ici
    .detail = SNR, H M L (EN 352) et NRR (américain) sont mesurés différemment et ne se remplacent jamais l'un par l'autre. Le calcul a suivi le barème propre à cet indice, de la façon la plus stricte : { $holds } dB retenus. Demander l'indice qui compte là où se fait le travail.

noise-over-limit = bruit de la journée { $under } dB(A) sous la protection, limite { $limit } dB(A)
    .detail = { $level } dB(A) pendant { $hours } heures de la journée avec cette machine : { $day_exact } dB(A) sur la journée sans protection, { $under } dB(A) dessous, limite { $limit } dB(A){ $borrowed }. Prendre une protection d'indice plus élevé ([protector]), des bouchons sous le casque antibruit, ou répartir le sciage sur plusieurs jours (dust.days). Vérifier les règles en vigueur.

noise-unknown = bruit de la machine : le lire dans sa notice
    .detail = Niveau { $level } dB(A) : aucune meuleuse n'est silencieuse. Prendre la valeur du fabricant, ou { $usual } dB(A) pour un grand disque sur la pierre, et saisir machine.noise. Jusque-là, porter une protection auditive.

extractor-filter = Extracteur à filtre propre qui retient { $holds }, décolmaté en marche
    .detail = Débit d'air { $has }, minimum { $asks }. L'extracteur ne compte qu'avec un filtre propre retenant au moins { $holds }, un cyclone ou un décolmatage du filtre, et le carter d'aspiration appliqué sur la pierre : { $vacuum }{ $borrowed } ; la classe M laisse passer au plus { $m }. Aux deux bouts d'une coupe et dans les plongées, le carter d'aspiration reste ouvert : y aller lentement.

control-cut-less = couper moins
    .detail = { $face } m² de face sont sciés, { $minutes } minutes avec le disque dans la pierre : aucun bord laissé tel quel ne soulève de poussière

control-shop = faire couper à l'eau par un atelier
    .detail = une débiteuse à pont sous eau coupe cela en quelques minutes, et { $grams } de pierre n'arrivent jamais sur votre lieu de travail

control-at-the-disc = { $method ->
    [water] eau au disque
    [shroud] carter d'aspiration au disque
   *[none] eau ou aspiration au disque
 }
    .detail = eau sur une machine prévue pour cela, ou carter d'aspiration avec au moins { $airflow } pour un disque de { $disc }

control-outdoors = à l'extérieur
    .detail = dans l'air en mouvement, vent de côté, loin des portes et des prises d'air

control-distance = distance
    .detail = personne sans masque là où de la poussière ou du brouillard peut dériver, et personne dans la ligne du disque

control-mask = le masque, en dernier
    .detail = ajusté à la personne qui le porte, rasée de près s'il est étanche, gardé jusqu'à ce que le lieu soit propre

controls-open = plus fort que le masque, encore à faire : { $what }
    .detail = Le faire, ou noter pourquoi non : chacun enlève de la poussière que le masque devrait retenir.

no-dust-control = coupe à sec sans rien pour retenir la poussière
    .detail = Mesure contre la poussière : aucune ; demandée : au moins une des deux. Employer l'eau sur une machine prévue pour cela, ou un carter d'aspiration avec un extracteur assez puissant pour le disque, ou faire couper à l'eau par un atelier. La coupe à sec et sans carter d'aspiration ne figure dans aucune ligne du tableau ; aucun masque ne compense ce manque, et la poussière atteint tous ceux qui sont à proximité.

water-flow = Eau au bord du disque avant qu'il touche la pierre, jusqu'à ce qu'il l'ait quittée
    .detail = Débit compté : { $flow } litres par minute. La règle ne donne aucun chiffre pour une meuleuse ; { $advised } litres par minute sont conseillés pour les découpeuses à disque portatives. Eau au bord du disque avant qu'il touche la pierre, et jusqu'à ce qu'il l'ait quittée. Poussière ou vapeur visible : arrêter, diriger l'eau sur le bord du disque, déboucher la buse ; plus de { $advised } litres par minute ne retiennent pas plus de poussière.

water-too-little = { $flow } litres par minute : moins que ce qui est conseillé pour une découpeuse portative
    .detail = { $flow } litres par minute, { $advised } conseillés pour les découpeuses à disque portatives : moins d'eau retient moins de poussière. Diriger l'eau sur le bord du disque, déboucher la buse, remplir le réservoir.

shroud-airflow-unknown = débit d'air de l'extracteur inconnu
    .detail = Débit d'air inconnu, un disque de { $disc } demande au moins { $asks } m³/h. Sans ce chiffre, l'efficacité du carter d'aspiration n'est pas prouvée : lire la plaque de l'extracteur et saisir dust.airflow, ou couper à l'eau.

shroud-airflow-too-small = l'extracteur déplace { $has }, le disque demande { $asks }
    .detail = Débit d'air { $has }, minimum { $asks } m³/h pour un disque de { $disc }. Prendre un extracteur plus puissant ou un disque plus petit, ou couper à l'eau.

not-in-table-indoors = absent du tableau de l'autorité : l'exposition doit être évaluée
    .detail = Cette machine, cette mesure contre la poussière, à l'intérieur, { $hours } h dans la journée : aucune ligne. Personne n'a publié quel masque suffit. À l'extérieur, le tableau a des lignes pour l'eau et pour un carter d'aspiration : changer de lieu ou de mesure pour un cas qui figure au tableau, ou faire évaluer l'exposition par une personne compétente.

not-in-table = absent du tableau de l'autorité : l'exposition doit être évaluée
    .detail = Cette machine, cette mesure contre la poussière, à l'extérieur, { $hours } h dans la journée : aucune ligne. Personne n'a publié quel masque suffit. Changer de mesure pour une autre qui figure au tableau pour cette machine, ou faire évaluer l'exposition par une personne compétente.

indoors-exhaust = à l'intérieur : l'air doit aussi être évacué
    .detail = Lieu : à l'intérieur. Couper à l'extérieur si c'est possible. Sinon, évacuer la poussière visible à l'air libre, isoler le local, et ne laisser entrer personne sans masque.

marble-veins = les veines du marbre peuvent contenir bien plus de silice que la pierre
    .detail = Le marbre dans son ensemble contient au plus { $share } % de silice ; ses veines peuvent en contenir bien plus. Traiter une coupe le long d'une veine ou à travers une veine comme une coupe dans une pierre riche en silice.

stone-kind-unknown = { $stone } : on ne sait pas ce qui lie la pierre
    .detail = Une pierre liée à la résine qui contient 1 % de silice ou plus compte comme pierre agglomérée. Demander la fiche technique et saisir stone.binder. Si c'est de la pierre agglomérée : { $rule }

silica-unknown = { $stone } : demander sa part de silice
    .detail = Silice saisie : { $share } % au plus, or presque aucune pierre n'en est exempte. Tant qu'une fiche technique n'atteste pas cette teneur, traiter la pierre comme riche en silice (au-dessus de { $threshold } %), et saisir stone.silica.

engineered-stone-banned = la pierre agglomérée ne doit pas être coupée ici
    .detail = { $rule }

engineered-stone-dry = pierre agglomérée sans eau
    .detail = Méthodes humides : aucune, alors qu'elles sont demandées. { $rule }

engineered-stone-powered-respirator = pierre agglomérée sans masque à ventilation assistée
    .detail = Masque à ventilation assistée : aucun disponible, alors qu'il est demandé. { $rule }

engineered-stone = pierre agglomérée : des règles plus strictes passent d'abord
    .detail = { $rule } Laisser cette pierre à un atelier agréé est le choix sûr.

high-silica-stone = { $stone } : peut contenir jusqu'à { $high } % de silice
    .detail = Silice : { $low } à { $high } % de la pierre ; au-dessus de { $threshold } %, la pierre compte comme riche en silice (valeur de la Californie, employée partout ici). Sa poussière laisse dans les poumons des cicatrices définitives : mesure contre la poussière et masque du premier contact jusqu'à la fin du nettoyage, et personne ne reste à proximité sans masque.

california-silica-rule = travail à forte exposition : à l'eau, en zone réglementée, le masque le plus protecteur
    .detail = Silice jusqu'à { $high } %. { $rule }

silica-rich-stone-dry = travail à forte exposition sans eau : la Californie demande des méthodes humides
    .detail = Silice jusqu'à { $high } %. { $rule }

sparks-into-extractor = acier dans la pierre : les étincelles entrent dans l'extracteur
    .detail = Acier que l'on peut couper avec un extracteur en marche : aucun. Les étincelles mettent le feu à son sac. Retirer d'abord l'acier, garder les coupes à l'écart de l'acier, ou couper à l'eau.

sparks-from-steel = l'acier dans la pierre projette des étincelles
    .detail = Rien qui puisse brûler à moins de { $clear } (appréciation), un seau plein d'eau et un extincteur à portée de main, un disque que son fabricant admet pour l'acier, ne pas forcer. Une heure après la dernière coupe, revenir voir s'il y a de la fumée.

steel-not-known = acier dans la pierre : regarder, aucun ou où ?
    .detail = Des tiges ou un treillis sont souvent collés au dos d'une tranche. Regarder le dos, passer un aimant le long de chaque ligne de coupe. Dans le fichier : stone.steel ("none" pour aucun, "some" s'il y en a).

supply-unprotected = eau sur le secteur sans DDR, sans GFCI et sans 110 V à point milieu à la terre
    .detail = Protection : aucune connue ; demandé : dispositif différentiel (DDR) de { $rcd } ou moins, GFCI classe A ({ $gfci }), ou 110 V à point milieu mis à la terre ({ $volts } à la terre). Ici : { $rule }{ $borrowed }. En présence d'eau, pas de protection veut dire pas de coupe.

supply-unprotected-dry = secteur sans DDR, sans GFCI et sans 110 V à point milieu à la terre
    .detail = Protection : aucune connue ; demandé : dispositif différentiel (DDR) de { $rcd } ou moins, GFCI classe A ({ $gfci }), ou 110 V à point milieu mis à la terre ({ $volts } à la terre). Ici : { $rule }{ $borrowed }. Monter une protection sur le câble d'alimentation et appuyer d'abord sur son bouton d'essai.

wet-mains = Bouton d'essai (DDR, GFCI), s'il existe, pressé : il déclenche. Fiches au sec, au-dessus du sol
    .detail = Bouton d'essai pressé avant la première coupe : la protection doit déclencher. Fiches et raccords électriques au-dessus du sol et au sec, câbles suspendus en boucle pour que l'eau goutte avant la fiche, mains sèches à la fiche et à l'interrupteur. Si la protection déclenche pendant la coupe : arrêter, trouver la cause, ne jamais la maintenir enclenchée de force.

engine-indoors = moteur thermique à l'intérieur : monoxyde de carbone
    .detail = Moteurs thermiques à l'intérieur ou dans une cour fermée : aucun admis. Les gaz d'échappement tuent sans prévenir ; couper en plein air, ou prendre une machine à batterie, à air comprimé ou sur secteur.

engine-fumes = moteur thermique : gaz d'échappement et carburant
    .detail = En plein air avec de l'air de tous les côtés, jamais dans une fosse, jamais sous une tente, jamais dans un coin entouré de murs. Échappement dirigé loin des deux visages. Faire le plein moteur froid, et démarrer à un autre endroit.

water-on-mains-unrated = eau sur une machine sur secteur qui n'est pas faite pour cela : choc électrique
    .detail = Aptitude déclarée pour l'eau : aucune ; demandée : celle du fabricant, pour la coupe à l'eau. Les avertissements normalisés interdisent l'eau sur une meuleuse ordinaire sur secteur ; un dispositif différentiel (DDR) ou un GFCI n'en fait pas une machine pour la coupe à l'eau. Prendre une machine prévue pour la coupe à l'eau, ou un carter d'aspiration et un extracteur.

water-not-rated = eau sur une machine qui n'est pas faite pour cela
    .detail = Aptitude déclarée pour l'eau : aucune ; demandée : celle du fabricant, pour la coupe à l'eau. Prendre une machine dont le fabricant admet l'eau, ou un carter d'aspiration et un extracteur.

battery-wet = Batterie retirée avant de toucher le disque, batteries gardées au sec
    .detail = Les batteries se changent loin de la boue, avec des mains sèches ; une batterie dont l'intérieur a pris l'eau n'est plus utilisée ni rechargée. La batterie est retirée avant de regarder ou de changer le disque.

air-hose = Flexible d'air intact, raccords assurés, pas d'eau dans l'air
    .detail = La vitesse saisie de { $rpm } tr/min ne vaut qu'à la pression de la plaque : plus de pression, plus de vitesse. Régulateur de pression et raccords de sécurité montés, échappement dirigé loin de la poussière et des mains, flexible purgé avant de toucher le disque. Ne jamais souffler la poussière, ne jamais nettoyer les vêtements à l'air comprimé.

respirator-class = lire la classe marquée sur le masque : { $mask }
    .detail = Son facteur va de { $least } à { $most } selon la classe ({ $marks }), { $apf } ou plus demandé{ $borrowed }. Il compte pour { $least } tant que le marquage n'est pas saisi dans dust.respirator : en employer un marqué pour { $apf } ou plus.

respirator-not-in-scheme = { $mask } : aucun facteur dans le barème de cette région
    .detail = { $mask } : facteur 0 ici, alors qu'un facteur est demandé{ $borrowed }. Les facteurs de deux barèmes ne se mélangent jamais ; un masque sans ligne dans celui-ci compte comme aucun masque. D'abord ce qui reste À FAIRE dans l'ordre des mesures ; ensuite un masque agréé là où se fait le travail.

respirator-unlisted = { $mask } : aucun facteur dans le barème de cette région
    .detail = Facteur 0, aucun demandé par le tableau{ $borrowed }. Il se peut qu'il retienne la poussière, mais aucune règle ne le compte ici : demander un masque agréé là où se fait le travail.

respirator-missing = aucun masque disponible
    .detail = Masque : aucun ; facteur demandé : { $apf } ou plus{ $borrowed }. D'abord ce qui reste À FAIRE dans l'ordre des mesures ; ensuite s'en procurer un bien ajusté à la personne qui le porte, et saisir dust.respirator.

respirator-missing-unassessed = aucun masque disponible, et rien n'établit lequel suffit
    .detail = Masque : aucun ; facteur : aucune publication ne le fixe, l'exposition doit être évaluée. D'abord ce qui reste À FAIRE dans l'ordre des mesures ; ensuite faire évaluer l'exposition, se procurer le masque qui en résulte, et saisir dust.respirator.

respirator-none-asked = aucun masque disponible ; le tableau n'en demande pas ici
    .detail = Masque : aucun, aucun demandé par le tableau{ $borrowed }. Le tableau ne vaut que tant que sa mesure contre la poussière fonctionne sans défaut, et la poussière nocive est trop fine pour se voir : en avoir un bien ajusté, et le porter tant que le disque tourne et pour le nettoyage.

respirator-not-fit-tested = faire tester l'ajustement du masque sur son porteur
    .detail = { $mask } : son facteur ne compte qu'après un essai d'ajustement et sur une peau rasée de près ; jusque-là, on ne peut pas compter dessus. Faire faire l'essai, ou prendre une cagoule à ventilation assistée.

respirator-clean-shaven = Rasé de près, étanchéité du masque vérifiée chaque fois
    .detail = { $mask } : essai d'ajustement fait, et il ne vaut que sur une peau rasée de près ; une barbe naissante compte comme une barbe. Vérifier l'étanchéité chaque fois qu'on le met ; une nouvelle taille ou marque, ou un autre visage, demande un nouvel essai.

respirator-below-required = { $mask } : compte ici pour le facteur { $has }, { $apf } demandé
    .detail = { $mask } : facteur { $has }, { $apf } ou plus demandé{ $borrowed }. D'abord ce qui reste À FAIRE dans l'ordre des mesures : une mesure plus forte passe avant un masque plus fort. Ensuite un masque de facteur { $apf } ou plus ; les facteurs de deux barèmes ne se mélangent jamais.

nuisance-mask = un masque sans classe n'est pas une protection
    .detail = Facteur 0 : il ne porte aucune classe, et la poussière fine passe à travers et sur les côtés. Il ne compte pour rien. S'en procurer un d'une classe qui compte ici, et saisir dust.respirator.

asbestos-not-tested = { $stone } : peut contenir des minéraux d'amiante, ne pas couper avant une analyse
    .detail = Amiante que l'on peut couper : aucun. Avant la première coupe, faire analyser un éclat de cette tranche par un laboratoire, ou obtenir l'analyse de la carrière, et saisir stone.asbestos, stone.report et stone.date. Sans résultat clair, c'est un travail pour des professionnels agréés.

asbestos-declaration = { $stone } : demander à la carrière sa déclaration sur les minéraux d'amiante
    .detail = { $stone } : une des roches qui peuvent en contenir. Demander au négociant la déclaration de la carrière et saisir stone.asbestos, stone.report et stone.date.

binder-unknown = { $stone } : liant inconnu, compte donc comme pierre agglomérée
    .detail = Une pierre à 1 % de silice ou plus dont personne n'a dit le liant compte comme pierre agglomérée tant que stone.binder ne dit pas autre chose. { $rule }

resin-in-fired-slab = { $stone } : est-ce sans résine ?
    .detail = Le grès cérame et la pierre frittée n'échappent à l'interdiction que s'ils ne contiennent pas de résine. Demander la fiche technique et saisir stone.binder. { $rule }

supply-unprotected-outdoors = secteur à l'extérieur sans DDR, sans GFCI et sans 110 V à point milieu à la terre
    .detail = Protection : aucune connue ; demandé : dispositif différentiel (DDR) de { $rcd } ou moins, GFCI classe A ({ $gfci }), ou 110 V à point milieu mis à la terre ({ $volts } à la terre). Ici : { $rule }{ $borrowed }. Dehors, un sol mouillé et des câbles abîmés rendent un défaut mortel : monter une protection sur le câble, appuyer sur son bouton d'essai, et saisir machine.protected.

speed-assumed = lire la vitesse sur la plaque ou le disque : { $what }, supposé
    .detail = Supposé : { $what }. Lire la plaque de la machine et le marquage du disque, et saisir machine.rpm et disc.max_rpm : la vérification du disque avec la machine ne vaut que pour les vrais chiffres.

disc-larger-than-machine = { $disc } : { $diameter }, la machine est faite pour { $largest } au plus
    .detail = Diamètre { $diameter }, plus grand disque de la machine et de son carter { $largest }. Prendre un disque plus petit, ou une machine faite pour celui-ci ; ne jamais enlever le carter de protection.

respirator-filter = un N95 ne suffit pas ici : filtre de la série 100 ou HEPA demandé
    .detail = Masque : N95 ; demandé : facteur 10 ou plus avec filtre de la série 100 ou HEPA. Se procurer un demi-masque à filtres P100 ou mieux, et saisir dust.respirator.

no-water-flow = méthode à l'eau sans débit : c'est une coupe à sec
    .detail = Eau : 0 litre par minute. À sec et sans carter d'aspiration ne figure dans aucune ligne du tableau, et aucun masque ne compense ce manque. Amener l'eau au bord du disque et saisir dust.water, ou employer un carter d'aspiration et un extracteur.

speed-assumed-of = { $what } { $speed } tr/min

bystanders = Personne d'autre à proximité : enfants, voisins et animaux éloignés et prévenus
    .detail = Poussière, brouillard et bruit portent plus loin que le lieu de coupe, et un morceau de disque brisé vole à des dizaines de mètres. Fermer le lieu, dire aux voisins quand on commence, et arrêter le disque quand quelqu'un entre sans masque, lunettes-masque et protection auditive.

windows-and-intakes = Fenêtres, portes et prises d'air fermées, ventilation arrêtée
    .detail = La poussière nocive est trop fine pour se voir et va loin. Fermer fenêtres et portes de la maison et demander aux voisins d'en faire autant ; arrêter ventilation, pompe à chaleur et climatisation près du lieu ; couper sous leur vent.

working-height = Pierre entre hanche et coude, sol ferme, pas d'échelle
    .detail = Tréteaux à hauteur de travail et sol horizontal sous les deux pieds. Ne jamais couper sur une échelle ou une marche, au-dessus de l'épaule, ni à genoux plus bas que la pierre : un rebond vous fait tomber et la machine suit.

eyes = Lunettes-masque, écran facial par-dessus, rince-œil à portée
    .detail = De simples lunettes laissent entrer éclats et grains par-dessous et de côté. Lunettes-masque pour tous à proximité ; un écran seul ne suffit pas. Un grain dans l'œil : rincer, ne jamais frotter ; un éclat qui reste est pour le médecin.

side-handle = Poignée latérale et carter montés, deux mains, interrupteur jamais bloqué
    .detail = Une seule main ne retient pas un rebond. Le carter de protection est entre le disque et le visage, et aucune coupe ne vaut de l'enlever. Un interrupteur bloqué fait tourner le disque après une chute de la machine{ $power ->
            [mains] {" "}; après une panne de courant, éteindre avant de rebrancher
           *[other] {""}
        }.

leads = Câble et tuyaux derrière soi, intacts, déroulés, loin du disque et des pieds
    .detail = Par-dessus l'épaule et derrière, jamais en travers de la coupe ou du passage. Un câble abîmé ne s'emploie pas. Raccords au sec et au-dessus du sol ; un enrouleur se déroule, sinon il chauffe.

hoses = Tuyaux derrière soi, intacts, loin du disque et des pieds
    .detail = Par-dessus l'épaule et derrière, jamais en travers de la coupe ou du passage. Un tuyau qui fuit ou qui est plié ne s'emploie pas.

leaning-slabs = Tranches sur chant attachées ou sur un chevalet ; une à la fois, personne là où elles tombent
    .detail = En Grande-Bretagne, six personnes ont été tuées en cinq ans par des tranches tombées pendant le stockage ou la manutention. Chevalet en A sur sol horizontal, pieds écartés du mur, tranches attachées ; ne jamais défaire l'attache d'un lot avec quelqu'un devant ; personne entre deux tranches. Une tranche qui commence à tomber, on la lâche : fuir, ne jamais la retenir.

not-for-everyone = Pas pour : femmes enceintes, malades (poumons, cœur, mains, dos), trop jeunes, fatigués, ivres
    .detail = Maladie des poumons, doigts blancs, cœur faible, stimulateur cardiaque dont le fabricant met en garde contre les machines, dos blessé, grossesse : demander d'abord à un médecin. Aucun mineur, personne de fatigué, personne après de l'alcool ou des drogues ou médicaments qui ralentissent.

first-aid = Secours prêts : pansement compressif, rince-œil, téléphone, adresse notée
    .detail = Une artère coupée tue en quelques minutes : appuyer fort sur la plaie, pansement compressif ou garrot, appeler. Couper le courant avant de toucher quelqu'un d'électrisé. Écrasé sous la pierre : appeler d'abord, lever seulement avec un engin. Qui connaît les premiers secours est désigné avant de commencer.

moment-before = Avant

moment-cutting = Pendant la coupe

moment-moving = Pendant le déplacement

moment-after = Après

settled-asbestos = Analysée, sans minéraux d'amiante : { $report }, { $date }

settled-controlled = Pierre à { $share } de silice coupée sous contrôle, comme la règle le demande

settled-noise = { $level } pendant la coupe, { $under } dB(A) sur la journée sous la protection, limite { $limit } dB(A)

settled-mask = { $mask } : compte pour le facteur { $has }, { $apf } demandé

settled-check-call = Seul, avec un appel convenu : { $who }

settled-supply = Alimentation secteur protégée

settled-speed = { $disc } : marqué { $marked } tr/min, machine { $machine }
