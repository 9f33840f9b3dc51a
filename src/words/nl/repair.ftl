# Findings of repair: a line, and in full.

opening-larger = uitsparing { $number } wordt groter: is ze nog bedekt?
    .detail = Uitsparing { $number }, { $what }, wordt { $long } × { $wide } in plaats van { $long_asked } × { $wide_asked }: { $more } meer bij { $sides }. Of de rand van wat erin komt de kant van de uitsparing nog bedekt, en nog steen vindt om op te rusten of aan vastgeklemd te worden, is hier niet bekend: die rand moet daar { $more } verder reiken dan de uitsparing zoals gevraagd nodig had. Leg het erin, of meet de rand ervan, voordat er iets anders wordt gezaagd.
