# Templates, shapes and drawings.

template-top = Șablon la mărime naturală: blatul întreg
template-curve = Șablon la mărime naturală: curba tăierii { $number }
template-opening = Șablon la mărime naturală: decuparea { $number }, { $what }
template-corner = Șablon la mărime naturală: colțul { $corner }
template-count = { $count ->
    [one] O foaie
    [few] { $count } foi
   *[other] { $count } de foi
 } · { $job } · plan { $plan }
template-tile = { $count ->
    [one] o pagină
   *[other] una din { $count } foi
 } · { $part } · { $job } · plan { $plan }
template-measure = Măsurați întâi: dacă nu sunt 100, tipăriți la 100 %, fără potrivire la pagină.
template-again = Măsurați ambele bare pe fiecare foaie. O imprimantă care greșește puțin se corectează: tipăriți din nou cu --measured și cele două lungimi.
template-join = Tăiați fiecare foaie pe linia din dreapta și pe linia de sus a chenarului. Puneți-o peste următoarea astfel încât crucile să se suprapună și lipiți-le pe o scândură plană.
template-lay = Puneți crucile cu nume pe semnele cu același nume de pe piatră, și muchiile pe muchiile ei. Verificați o lungime cu ruleta înainte de tăiere.
template-scaled = tipărit × { $across } pe lățime, × { $up } pe înălțime, după barele măsurate
template-map = Cum stau foile
template-line-keep = linia care rămâne: muchia finită
template-line-saw = linia de tăiere: muchia finită și ce rămâne pentru finisare
template-line-slab = muchia plăcii: puneți-o pe muchia pietrei
template-line-slot = ce ia discul sau carota din față; laturile lungi dau direcția discului
template-line-station = stația cu numărul ei
template-line-flange = atât de late sunt flanșa și capul deasupra unei fante: lăsați liber
template-line-mark = semn care este deja pe piatră, sau o linie de la el
bench-curve-template = La mărime naturală pe hârtie: kerfwright template
