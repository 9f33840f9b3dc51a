# Templates, shapes and drawings.

template-top = Molde em tamanho real: o tampo inteiro
template-curve = Molde em tamanho real: curva do corte { $number }
template-opening = Molde em tamanho real: abertura { $number }, { $what }
template-corner = Molde em tamanho real: canto { $corner }
template-count = { $count ->
    [one] Uma folha
   *[other] { $count } folhas
 } · { $job } · plano { $plan }
template-tile = { $count ->
    [one] uma página
   *[other] uma de { $count } folhas
 } · { $part } · { $job } · plano { $plan }
template-measure = Meça isto primeiro: se não forem 100, imprima a 100 %, sem ajustar à página.
template-again = Meça as duas barras em cada folha. Uma impressora que erra um pouco corrige-se: imprima de novo com --measured e os dois comprimentos.
template-join = Corte cada folha pela linha direita e pela linha superior da moldura. Ponha-a sobre a seguinte de modo que as cruzes coincidam e cole-as sobre uma tábua plana.
template-lay = Ponha as cruzes com nome sobre as marcas do mesmo nome na pedra, e as arestas sobre as suas arestas. Confira um comprimento com a fita antes de serrar.
template-scaled = impresso × { $across } na largura, × { $up } na altura, segundo as barras medidas
template-map = Como ficam as folhas
template-line-keep = linha a manter: a aresta acabada
template-line-saw = linha de serra: a aresta acabada e o que fica para o acabamento
template-line-slab = aresta da chapa: ponha-a sobre a aresta da pedra
template-line-slot = o que o disco ou a coroa tira na face; os lados compridos dão a direção do disco
template-line-station = estação com o seu número
template-line-flange = largura da flange e da cabeça sobre uma ranhura: deixe livre
template-line-mark = marca que já está na pedra, ou uma linha a partir dela
bench-curve-template = Em tamanho real no papel: kerfwright template
