# Findings of cuts and pieces: a line, and in full.

waste-not-freed = Schnitte, die sich nicht treffen, lassen Rest an der fertigen Platte
    .detail = Teile der Reststücke, die nach dem letzten Schnitt noch hängen: { $parts }, der größte mit { $area } etwa { $along } entlang AB und { $up } hoch von Ecke A. Er hängt an: { $places }. Es fehlt kein Schnitt, aber die daneben treffen weder einander noch den Rand des Steins. Dort mit einer Kernbohrung trennen oder mit einem weiteren Eintauchschnitt neben dem letzten, auf der Seite des Rests; nie abbrechen.

said-weight = das Gewicht des Verkäufers und das gerechnete weichen ab
    .detail = Genannt { $said }, gerechnet { $computed }: { $off } %, mehr als { $tolerance }. Eines davon stimmt nicht: Stein, Größe oder Dicke. Das Heben mit dem höheren Wert planen, und die Rohplatte wiegen, wenn es geht.

fissure-in-waste = „{ $flaw }“ läuft durch { $pieces }: dort kann es brechen
    .detail = Vor dem ersten Durchgang Unterlagen auf beiden Seiten davon unter { $pieces }, damit jeder Teil für sich liegt, wenn es bricht. Ein Stück nie flach oder an einem Ende darüber hinweg heben: zuerst gerade Hölzer auf beiden Seiten darüber klemmen, oder es brechen lassen und die Teile wegtragen.{ $crossed ->
            [yes] {" "}Wo der Schnitt es kreuzt (Schnitte: { $cuts }): kleine Schritte, kein Druck.
           *[no] {""}
        }

waste-needs-support = ein Reststück wird frei, das zu schwer für die Hand ist
    .detail = Reststück (Schnitt, der es löst) und sein Gewicht, höchstens: { $pieces }. Jedes Stück über { $limit } vor dem ersten Durchgang auf eigene Unterlagen legen, auf beiden Seiten des Schnitts in einer Höhe mit dem bleibenden Stein. Ein absackendes Stück klemmt die Scheibe in der Schnittfuge ein.

curve-waste-heavy = das Reststück einer Rundung fällt in einem Stück, das zu schwer zum Halten ist
    .detail = Reststück (Schnitt, der es löst) und sein Gewicht, höchstens: { $pieces }. Das ist mehr als { $limit } (passes.waste_piece), und keine geraden Schnitte mit Abstand zum bleibenden Stein teilen es weiter. Vor der letzten Runde auf ganzer Länge von unten stützen; niemand hält es, kein Fuß darunter.

stopped-cut-too-short = keine vorhandene Scheibe findet Platz: { $places }
    .detail = Zwischen den zwei Stellen, an denen der Schnitt enden muss, sind { $room }; „{ $disc }“ schneidet, wenn sie ganz durch ist, { $length } lang in der Oberfläche. Mit demselben Flansch schneidet die kleinste Scheibe, die durchkommt, mit { $least } Durchmesser, { $shortest } lang; die größte, die Platz findet, hat { $most } Durchmesser. { $verdict } Eine Bohrkrone von etwa { $bit } macht den Schnitt mit einer Lochreihe.{ $waste }

sawn-with-another = Kante { $edge } wird zusammen mit der Kante gesägt, die in einer Linie mit ihr liegt
    .detail = Der Schnitt der Kante in gleicher Linie macht auch Kante { $edge } und lässt { $left } daran stehen statt { $allowance }. Den Unterschied, { $over }, abschleifen, oder beiden Kanten dieselbe Bearbeitung geben.

disc-too-small = die Scheibe kommt nicht durch den Stein
    .detail = „{ $disc }“ schneidet höchstens { $deepest } tief (Durchmesser { $diameter }, Hindernis { $obstruction }, Grundplatte { $plate }); { $needed } sind nötig: es fehlen { $short }. Mit demselben Flansch braucht es eine Scheibe von mindestens { $least }, auf einer Maschine, die für diese Größe gebaut ist.

no-room-for-guide = kein Platz für die Führung auf der Rohplatte: { $places }
    .detail = Die Kante der Führung liegt { $offset } neben dem Schnitt; die Rohplatte ist auf beiden Seiten davon schmaler, deshalb ist der Schnitt nicht geplant. Ein Brett so dick wie der Stein ({ $thick }) an die Rohplatte legen, Oberfläche bündig, beide auf einer Unterlage festklemmen und die Führung auf das Brett legen. Oder eine Vorrichtung mit kleinerem Abstand nehmen (guide.offset).{ $waste }

core-holes-close = Kernbohrungen von Schnitt { $cut } überschneiden sich oder lassen nur eine dünne Wand
    .detail = Die zwei, die am nächsten beieinander liegen, sind { $apart } von Mitte zu Mitte, Bohrkrone { $bit } Durchmesser: eine Krone, die neben einem Loch ansetzt, läuft hinein, und weniger als { $web } Stein zwischen zwei Löchern bricht aus. Die Krone in einer Schablone führen, die über jeder Mitte festgeklemmt ist (ein Brett mit einem Loch von der Größe der Krone), und nur leicht drücken.

rail-too-narrow = Ausschnitt { $cutout }{ $called } lässt einen zu schmalen Steg bei { $edge }
    .detail = Ausschnitt { $cutout } lässt einen Steg ({ $rail }) von { $width }{ $tap }, Mindestmaß { $least }; um { $by } verschieben, Richtung: { $away }. Dieser Steg liegt entlang { $edge } der fertigen Platte.

rails-add-up = Ausschnitt { $cutout }{ $called }: die Stege auf beiden Seiten sind zusammen zu schmal
    .detail = { $rail } { $width }{ $tap }, Mindestmaß { $least }; { $other } { $other_width }{ $other_tap }, Mindestmaß { $other_least }. Zusammen { $sum }, nötig sind { $needed }: Verschieben hilft keinem von beiden. Nachgeben muss der Ausschnitt, in dieser Richtung { $short } kleiner, oder die fertige Platte, um so viel größer; sonst beide Stege versteifen, bevor der Stein bewegt wird.

rail-too-narrow-between = die Ausschnitte { $first }{ $called_first } und { $second }{ $called_second } lassen zwischen sich einen zu schmalen Steg
    .detail = Die Ausschnitte { $first } und { $second } lassen zwischen sich einen Steg von { $width }, Mindestmaß { $least }; um { $by } auseinanderrücken.

hangs-on-a-strip = nur { $about } Stein bleiben zwischen Ausschnitt { $cutout } und der Kante
    .detail = Dieser Streifen ist { $width } breit, schmaler als der Stein dick ist ({ $thick }). Er bricht beim Sägen oder beim Heben. Ändern oder verschieben, was ihn übrig lässt, bis mindestens { $least } bleiben.

hangs-on-a-strip-between = nur { $about } Stein bleiben zwischen den Ausschnitten { $first } und { $second }
    .detail = Dieser Streifen ist { $width } breit, schmaler als der Stein dick ist ({ $thick }). Er bricht beim Sägen oder beim Heben. Ändern oder verschieben, was ihn übrig lässt, bis mindestens { $least } bleiben.

hangs-on-a-strip-corner = nur { $about } Stein bleiben hinter der Innenecke bei { $edge }
    .detail = Dieser Streifen ist { $width } breit, schmaler als der Stein dick ist ({ $thick }). Er bricht beim Sägen oder beim Heben. Ändern oder verschieben, was ihn übrig lässt, bis mindestens { $least } bleiben.

curve-without-arm = die Rundung bei { $part } wird von ihrer Sehne aus angerissen, ohne die Kreisvorrichtung
    .detail = Der Arm wäre { $arm } lang; die Vorrichtung reicht von { $shortest } bis { $longest }: { $by } { $which }. Die Sehne anreißen und die gerade Führung an die zwei Marken jeder Station legen; oder einen Arm bauen, der passt.

arm-out-of-reach = die Kreisvorrichtung lässt sich für einen ganzen Kreis nicht einstellen ({ $part })
    .detail = Der Arm wäre { $arm } lang; die Vorrichtung reicht von { $shortest } bis { $longest }: { $by } { $which }. Ein ganzer Kreis hat keine Sehne, von der aus er sich anreißen ließe. Einen Arm bauen, der passt, oder einen anderen Radius wählen.

corner-ground-by-hand = die Rundung bei { $part } wird von Hand geschliffen
    .detail = Die Kantenschnitte daneben und ihre Schnittfugen lassen keinen Stein für einen Eintauchschnitt. Die Rundung auf dem Stein anzeichnen und nach dem letzten Schnitt von Hand schleifen.

inside-corner-radius = { $part } bekommt einen Radius von { $left }
    .detail = Gewünschter Radius: { $given }{ $sharp }. In einer Innenecke unter { $least } beginnt ein Riss. Der Plan lässt dort einen Radius von { $left }, den der Kernbohrung.{ $still }

inside-corner-nearest-radius = { $part } bekommt einen Radius von { $left }
    .detail = Gewünschter Radius: { $given }. Die nächstliegende Bohrkrone lässt { $left }, und in der Ecke bleiben { $ground } Stein. Von Hand wegschleifen oder so lassen.

much-to-grind = { $part }: viel bleibt zu schleifen
    .detail = „{ $disc }“ schneidet { $length } lang in der Oberfläche; in einem Radius von { $radius } muss sie { $face } von der Mitte stehen und lässt neben der Mitte jedes Schlitzes { $left } stehen, mehr als { $much }. Eine kleinere Scheibe oder eine Bohrkrone von { $bit } oder weniger lässt weniger.

no-disc-for-hollow = { $places }: keine vorhandene Scheibe kann diese Hohlrundung schneiden
    .detail = „{ $disc }“ schneidet { $length } lang in der Oberfläche; die Hohlrundung hat einen Radius von { $radius } und ist { $across } weit. Mit demselben Flansch schneidet die kleinste Scheibe, die durchkommt, mit { $least } Durchmesser, { $shortest } lang; die größte, die Platz findet, hat { $most } Durchmesser. { $verdict }{ $either } Eine Bohrkrone von { $bit } macht sie in einem Loch, eine kleinere in einer Lochreihe.{ $waste }

inside-corner-needs-core-bit = Kernbohrung nötig: { $places }
    .detail = { $kit } In einer scharfen Innenecke beginnt ein Riss: sie braucht einen Radius von mindestens { $radius }, also eine Bohrkrone von mindestens { $least } Durchmesser, gebohrt vor den Schnitten, die dort enden. In der Auftragsdatei angeben ([[core_bit]]).{ $waste }

# One piece of a list: its name, the cut that frees it, its weight.
piece-of-cut = { $piece } ({ $cut }): { $mass }

# A piece of the boundary of the top, or of an opening.
part-edge = Kante { $name }
part-edge-opening = Kante { $name } von Ausschnitt { $cutout }
part-corner = Ecke { $name }
part-corner-opening = Ecke { $name } von Ausschnitt { $cutout }
part-corners = Ecken { $name }
part-corners-opening = Ecken { $name } von Ausschnitt { $cutout }
part-all-round = der ganze Kreis
part-all-round-opening = der ganze Kreis von Ausschnitt { $cutout }

# What stays on the top for want of a cut, behind the cause.
waste-stays = {" "}Deshalb bleibt Rest an der fertigen Platte, Teile: { $parts }, der größte mit { $area } etwa { $along } entlang AB und { $up } hoch von Ecke A. Die Arbeit lässt sich mit diesem Blatt nicht fertigstellen.

# What a job calls a cutout, behind its number.
cutout-called = {" "}({ $name })

piece-held-below = Kein Kernbohrer trennt das Stück aus Ausschnitt { $cutout }{ $called } an der Unterseite
    .detail = Die Scheibe ist rund: an der Unterseite endet jeder Schnitt { $run_out } vor seinem Ende in der Oberfläche, und dort hängt das Stück noch. Löcher neben den Enden, vor dem Sägen von oben gebohrt, trennen es; kein vorhandener Kernbohrer findet dort Platz, deshalb sind sie weder gesetzt noch in den Minuten. Einen mitbringen und als [[core_bit]] eintragen oder den Ausschnitt in einem Betrieb schneiden lassen. Niemand arbeitet darunter, und das Stück wird nie ausgebrochen: der Riss läuft in die Platte.

opening-narrower-than-kerf = die Schnittfuge hat im Ausschnitt { $cutout }{ $called } keinen Platz
    .detail = An einer Seite gesägt, greift eine Fuge von { $kerf } an der anderen in den Stein, der bleiben soll. Den Ausschnitt breiter machen als die Fuge, eine dünnere Scheibe nehmen oder ihn in einem Betrieb schneiden lassen.{ $waste }
