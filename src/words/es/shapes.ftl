# Templates, shapes and drawings.

template-top = Plantilla a tamaño real: la encimera entera
template-curve = Plantilla a tamaño real: curva del corte { $number }
template-opening = Plantilla a tamaño real: hueco { $number }, { $what }
template-corner = Plantilla a tamaño real: esquina { $corner }
template-count = { $count ->
    [one] Una hoja
   *[other] { $count } hojas
 } · { $job } · plan { $plan }
template-tile = { $count ->
    [one] una página
   *[other] una de { $count } hojas
 } · { $part } · { $job } · plan { $plan }
template-measure = Mida esto primero: si no son 100, imprima al 100 %, sin ajustar a la página.
template-again = Mida las dos barras en cada hoja. Una impresora que se desvía poco se corrige: imprima otra vez con --measured y las dos longitudes.
template-join = Corte cada hoja por la línea derecha y la línea superior del marco. Póngala sobre la siguiente de modo que las cruces coincidan y péguelas sobre un tablero plano.
template-lay = Ponga las cruces con nombre sobre las marcas del mismo nombre en la piedra, y los bordes sobre sus bordes. Compruebe una longitud con la cinta antes de serrar.
template-scaled = impreso × { $across } a lo ancho, × { $up } a lo alto, según las barras medidas
template-map = Cómo van las hojas
template-line-keep = línea que se conserva: el borde acabado
template-line-saw = línea de sierra: el borde acabado y lo que queda para el acabado
template-line-slab = borde de la tabla: póngalo sobre el borde de la piedra
template-line-slot = lo que el disco o la corona quita en la cara; los lados largos dan la dirección del disco
template-line-station = estación con su número
template-line-flange = anchura de la brida y del cabezal sobre una ranura: déjela libre
template-line-mark = marca que ya está en la piedra, o una línea desde ella
bench-curve-template = A tamaño real en papel: kerfwright template
