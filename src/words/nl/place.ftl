# Findings of placement: a line, and in full.

measure-again = opnieuw meten: de passing valt binnen de fout van de rolmaat
    .detail = Het blad past met { $spare } over; met een rolmaat die op ±{ $tape } juist is, is minstens { $least } nodig om zeker te zijn. Meet de plaat opnieuw, of maak het blad kleiner.

edges-undescribed = { $count ->
        [one] Bekijk plaatrand { $edges }: het blad gebruikt die zoals hij is
       *[other] Bekijk plaatranden { $edges }: het blad gebruikt die zoals ze zijn
    }
    .detail = Niemand heeft gezegd hoe { $count ->
        [one] plaatrand { $edges } is. Hij geldt als gezaagd
       *[other] plaatranden { $edges } zijn. Ze gelden als gezaagd
    } en daar wordt niet gezaagd. Kijk vóór het begin: recht langs een rei, haaks op het vlak, schoon, geen schilfers en geen scheuren naar binnen. Zo ja, schrijf { $sawn } onder [slab]. Zo niet, schrijf daar { $rough } en plan opnieuw: dat geeft minstens { $cuts ->
        [one] één snede
       *[other] { $cuts } sneden
    } meer.

turn-saves = iets gedraaid kost hetzelfde blad { $saved } minder zaagwerk
    .detail = Onder { $turn } ten opzichte van de plaat, zonder dat een rand langs een rand ligt, wordt { $saved } minder vlak gezaagd dan op de plaats die hier genomen is. Het aftekenen is moeilijker. Schrijf daarvoor onder [place]: { $to } en { $at }.

# Why there is no place, in one line.

place-none-at-any-turn = Er is op de plaat in geen enkele draaiing plaats voor het blad, ook niet voor een dat rondom { $within } kleiner is.
place-none-found = Er is geen plaats voor het blad op de plaat gevonden. Dat er in geen enkele draaiing een is, is niet bewezen: probeer er een onder [place].
place-at-fault = De plaats onder [place] is fout: daar mag het blad niet liggen. Zonder at en turn wordt er een plaats gevonden.
place-not-here = Het blad mag niet liggen waar het is neergezet.
place-none-begun = Het gevraagde blad is niet meer te halen uit wat er van de plaat over is.

# What stands against a position.

place-outside = het blad met zijn overmaat steekt { $by } buiten { $part } van de plaat; maak het blad daar minstens { $by } kleiner, of neem een grotere plaat
place-outside-within-tape = het blad met zijn overmaat steekt { $by } buiten { $part } van de plaat; dat valt binnen de fout van de rolmaat ({ $tape }): meet opnieuw
place-on-flaw = het blad komt { $by } te dicht bij „{ $flaw }” (afstand { $clear }); verplaats het, of maak het blad kleiner
place-near-rough-edge = het blad komt { $by } te dicht bij plaatrand { $edge }, die ruw is (slab.rough_margin { $margin }): de steen is daar afgeschilferd, en verder naar binnen gescheurd; verplaats het, of maak het blad kleiner
place-round-near-edge = het blad komt { $by } te dicht bij plaatrand { $edge }: een rond blad heeft rondom een strook van { $least } nodig om gezaagd te worden; verplaats het, of maak het blad kleiner
place-along-flaw = de randsnede van { $part } zou over { $long } langs „{ $flaw }” lopen, binnen de afstand van { $clear }: de steen kan daar breken; verplaats of draai het blad
place-narrow-strip = bij rand { $edge } zou een strook van { $width } af te zagen zijn, minimum { $least }; verplaats het blad zodat de rand op de plaatrand of verder naar binnen ligt
place-factory-bow = rand { $edge } is gebogen en als fabrieksrand (factory) opgegeven, maar een gebogen rand wordt altijd gezaagd; geef hem een andere afwerking
place-not-on-factory-edge = rand { $edge } is als fabrieksrand (factory) opgegeven maar ligt niet op een fabrieksrand van de plaat; leg hem op een, of geef hem een andere afwerking
place-no-sawn-outline = de overmaten kunnen niet rond de omtrek van het blad: een rand is te kort of een boog te klein daarvoor; verander daar de afwerking, of de vorm
place-no-sawn-cutout = de overmaat laat van „{ $what }” niets over om te zagen: te klein, of een boog ervan is dat; maak groter, of verander de afwerking
place-vein = de lange richting van het blad ligt { $angle } van die van de ader; zet top.vein = "any" als dat niet uitmaakt

# Sizes that fit, by the box round the finished top.

place-fits-smaller = in dezelfde vorm past { $long } × { $deep }
place-fits-shorter = alleen korter past { $long } × { $deep }
place-fits-narrower = alleen smaller past { $long } × { $deep }
