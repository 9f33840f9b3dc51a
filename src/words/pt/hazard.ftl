# Findings of hazards: a line, and in full.

working-alone = uma pessoa só: ninguém para parar o trabalho, ninguém para pedir ajuda
    .detail = Pessoas indicadas: { $people }; pelo menos 2 enquanto um disco roda (critério nosso). Arranje alguém que fique por perto e não faça mais nada, ou espere até haver alguém.

second-person = Uma segunda pessoa { $at ->
    [plug-tap] junto da ficha e da torneira
    [plug] junto da ficha
    [valve-tap] junto da válvula do ar e da torneira
    [valve] junto da válvula do ar
    [tap] junto da torneira
   *[sight] à vista
 }, que vê o operador e não faz mais nada
    .detail = Das { $people } pessoas, uma fica aí, à vista do operador, fora da linha do disco, com proteção respiratória e auditiva. Uma mão levantada ou uma mão no ombro significa desligar, e ninguém pergunta porquê.

who-is-bound = obra, oficina ou trabalho próprio: que regra vale
    .detail = Numa obra (29 CFR 1926.1153) basta uma linha da tabela 1, cumprida à letra. Uma oficina que faz tampos é indústria geral (29 CFR 1910.1053): aí não há tabela, avalia-se a exposição. Um particular não está obrigado por nenhuma das duas; a tabela é o melhor guia publicado, e o pó faz o mesmo mal.

no-dry-sweeping = não varrer a seco, não usar ar comprimido
    .detail = { $rule }{ $borrowed } Depois dos cortes ficam espalhados cerca de { $stone } de pedra, dos quais até { $silica } de sílica: secos, voltam a levantar-se. Aspirador: { $vacuum }{ $vacuum_borrowed }.

vacuum-before-the-mask-comes-off = o pó que escapou à cobertura de aspiração está por todo o lado: aspirá-lo antes de tirar a máscara
    .detail = Nenhuma cobertura de aspiração apanha todos os { $stone }, muito menos nas pontas de um corte. Chão, saliências, máquina e roupa são aspirados antes de alguém tirar a máscara: { $vacuum }{ $vacuum_borrowed }.

cold-water = água fria: mãos quentes e secas
    .detail = Manguitos impermeáveis, um par de luvas secas para cada hora, pausas num sítio quente. Dedos frios, brancos ou dormentes: pare por esse dia; com frio a vibração faz mal mais cedo.

frost = não cortar com água quando gela
    .detail = Abaixo de cerca de 3 °C (critério nosso) a lama gela debaixo dos pés e a água deixa de correr na mangueira e no bico: sem água não se corta. Esvazie a máquina e a mangueira antes da noite.

local-rules-first = as regras locais, as instruções dos fabricantes e as pessoas competentes prevalecem sobre esta folha
    .detail = Esta folha não é uma autorização. Região dos valores: { $region }. Verifique as regras em vigor com { $authority }. Equipamento de elevação, eletricidade, estrutura e pedra que possa conter amianto são para pessoal autorizado.

slurry-clean-up = a lama recolhe-se antes de secar; baldes: cerca de { $buckets }
    .detail = Cerca de { $kilos }: { $water } l de água ({ $flow } l/min enquanto o disco corta) e { $stone } de pedra; baldes de { $bucket } l: { $buckets }. Seca, é o pó que reteve. Plástico debaixo dos cavaletes; recolher com raspador e aspirador de líquidos enquanto está molhada; enxaguar roupa, botas e máquina; deixar assentar o resto; nada nos esgotos.

dust-bags = o pó no extrator; sacos: cerca de { $bags }
    .detail = Cerca de { $stone } de pedra se a cobertura de aspiração apanhasse tudo; sacos de { $bag } no máximo: { $bags }. Troque o saco com a proteção respiratória posta, ao ar livre, fechado antes de sair do extrator, nunca sacudido nem esvaziado para voltar a usar.

falling-stone = Ninguém debaixo da pedra, nunca agarrar uma chapa que cai
    .detail = { $mass } kg/m² com a maior espessura medida e a pedra mais pesada do seu tipo. A sobra e a pedra que fica, ambas bem apoiadas antes da primeira passagem; nem pés nem dedos de ninguém por baixo ou pelo meio; nunca fique onde uma chapa posta de cutelo possa cair, e nunca tente agarrá-la.

wet-floor = a lama torna o chão escorregadio
    .detail = Botas antiderrapantes, água levada para longe de onde se está de pé e se carrega{ $power ->
            [mains] , cabos pendurados fora do molhado
           *[other] {""}
        }. Chão enxaguado e desimpedido antes de levantar qualquer peça.

vibration-over-limit = vibração A(8) { $day } m/s² em { $all } min do dia, limite { $limit } m/s²
    .detail = { $a } durante { $minutes } minutos por dia com esta máquina, { $points } pontos com tudo o resto: A(8) { $day }, limite { $limit }{ $borrowed }, atingido em { $to_limit } minutos. Reparta o trabalho por { $people } pessoas ou dias, no máximo { $to_limit } minutos cada; para ficar abaixo do valor de ação { $action } são precisos { $people_action }. Mantenha o corpo quente, disco afiado, segure sem apertar. Verifique as regras em vigor.

vibration-over-action = vibração A(8) { $day } m/s² em { $all } min do dia, valor de ação { $action } m/s²
    .detail = { $a } durante { $minutes } minutos por dia com esta máquina, { $points } pontos com tudo o resto: A(8) { $day }, valor de ação { $action }{ $borrowed }, atingido em { $to_action } minutos. Reparta o trabalho por { $people_action } pessoas ou dias, no máximo { $to_action } minutos cada; mantenha o corpo quente, disco afiado, segure sem apertar. Verifique as regras em vigor.

vibration-unknown = vibração da máquina: leia-a nas instruções
    .detail = Valor indicado { $a }: nenhuma máquina manual está livre de vibração. Use o valor do fabricante, ou { $usual } m/s² para uma rebarbadora em pedra, e indique machine.vibration.

disc-over-marked-rpm = { $disc }: máquina { $machine } rot/min, disco marcado { $marked } rot/min
    .detail = A máquina roda { $over } rot/min mais depressa do que as { $marked } marcadas no disco ({ $speed }, marcado para { $marked_speed }). O disco pode rebentar: use um marcado para { $machine } ou mais, ou uma máquina mais lenta.

disc-mark-unknown = { $disc }: velocidade máxima desconhecida
    .detail = Máquina { $machine } rot/min, marcação do disco desconhecida. Leia a marcação no disco e indique disc.max_rpm; um disco sem marcação não se usa.

machine-speed-unknown = velocidade da máquina desconhecida
    .detail = Máquina { $machine } rot/min: sem a velocidade verdadeira não se pode verificar nenhum disco. Leia a placa e indique machine.rpm.

kickback-pinched-disc = um disco entalado dá um recuo violento
    .detail = Fique ao lado da linha do disco, duas mãos na máquina, resguardo montado, ninguém nessa linha. Se entalar: pare, espere que fique imóvel, solte-o, volte a entrar só à velocidade máxima; nunca arranque dentro do corte.

resin-disc-expired = { $disc }: o último dia foi { $expires }
    .detail = Data do trabalho { $date }, último dia do disco { $expires }. Os discos de resina duram no máximo { $years } anos desde o fabrico: parta-o, e use um novo ou um disco de diamante.

resin-disc-age-unknown = { $disc }: ligado com resina, último dia desconhecido
    .detail = Os discos de resina duram no máximo { $years } anos desde o fabrico, e a humidade encurta esse prazo. Leia o mês ou o trimestre no anel ou na etiqueta e indique disc.expires; um disco de resina sem data não se usa.

resin-disc-age = { $disc }: não usar depois de { $expires }
    .detail = Último dia do disco { $expires }: compare-o com o dia do trabalho. Até lá, guardado em seco e deitado; um que apanhou humidade ou caiu parte-se e deita-se fora.

disc-before-use = examine o disco antes de cada montagem
    .detail = Sem fissuras, furo que serve, as duas flanges próprias da máquina e limpas, seta no sentido certo, resguardo do tamanho do disco, ranhuras do bordo de { $gap } no máximo, nunca um disco gasto de uma máquina maior. A { $speed } cada pedaço solto é um projétil.

support-both-sides = Os dois lados do corte apoiados por baixo, perto dele
    .detail = Apoios debaixo dos dois lados, perto do corte e nas bordas da pedra, para que o rasgo fique aberto até ao fim. A sobra assenta nos seus próprios apoios antes da primeira passagem; nenhuma mão, pé ou joelho por baixo.

rim-speed-over-limit = { $disc }: velocidade periférica { $speed }, classe marcada mais alta { $highest }
    .detail = Um disco de { $diameter } a { $machine } rot/min anda a { $speed }; nenhuma risca de cor permite mais de { $highest }. Disco mais pequeno ou máquina mais lenta.

rim-speed-above-hand-discs = { $disc }: velocidade periférica { $speed }, os discos para máquinas manuais são feitos para { $hand }
    .detail = Um disco de { $diameter } a { $machine } rot/min anda a { $speed }. Acima de { $hand } m/s (risca vermelha), só um disco com risca verde ({ $highest } m/s): procure essa risca, ou use { $slower } rot/min ou menos.

disc-run-down = o disco continua a rodar depois de desligar
    .detail = Segundos, mais tempo com um disco grande: mantenha a máquina longe da pedra, da mangueira e da roupa até o disco ficar imóvel, e só então a pouse. { $power ->
            [mains] Ficha fora
            [battery] Bateria fora
            [air] Mangueira de ar desligada
           *[engine] Motor parado
        } antes de tocar no disco.

new-disc-run = Disco novo: primeiro a rodar sem carga, todos fora da sua linha
    .detail = { $minutes } minuto à velocidade máxima, resguardo montado, máquina afastada do corpo, ninguém no plano do disco, em cada montagem. Se trepidar ou chiar: desligue, espere que fique imóvel, veja-o outra vez.

never-steer-the-disc = um disco corta a direito: nunca o conduza numa curva
    .detail = A carga lateral dobra e parte um disco. Carga lateral permitida: nenhuma. As curvas fazem-se com cortes retos por imersão, como no desenho; não se desbasta com a face de um disco de corte.

disc-bore = { $disc }: furo de { $bore } num assento de { $seat }
    .detail = Furo { $bore }, assento { $seat }, habitual { $usual }, diferença máxima { $play }. Um disco com folga roda descentrado e parte-se, um apertado não entra. O disco certo para a máquina: sem casquilho, sem limar, sem calços.

protector-unknown = protetor auditivo: qual, e o que está escrito nele?
    .detail = Leia SNR, H M L ou NRR na caixa e escreva aqui: { $level } no ouvido ao cortar, e a partir de { $duty } dB(A) ao longo do dia a proteção é obrigatória. No ficheiro: [protector].

protector-too-weak = protetor auditivo fraco demais: { $day } dB(A) ao longo do dia por baixo dele
    .detail = { $level } ao cortar, { $holds } dB retidos{ $borrowed }: { $ear } no ouvido, { $day } ao longo do dia, no máximo { $duty }. Um protetor com um valor mais alto, tampões por baixo dos abafadores, ou menos minutos.

protector-too-strong = protetor auditivo forte demais: { $ear } dB(A) no ouvido
    .detail = { $level } ao cortar, { $holds } dB retidos{ $borrowed }: { $ear } no ouvido. Abaixo de { $quiet } não se ouvem gritos nem avisos: combinem sinais com a mão, ou use um com um valor mais baixo.

protector-foreign-rating = o valor do protetor não é aquele com que se calcula aqui
    .detail = SNR, H M L (EN 352) e NRR (americano) são ensaiados de forma diferente e nunca se trocam. Foi calculado pelo seu próprio sistema, da forma mais estrita: { $holds } dB retidos. Peça o valor que conta no local onde trabalha.

noise-over-limit = ruído do dia { $under } dB(A) sob o protetor, limite { $limit } dB(A)
    .detail = { $level } dB(A) durante { $hours } horas do dia com esta máquina: { $day_exact } dB(A) no dia sem protetor, { $under } dB(A) sob ele, limite { $limit } dB(A){ $borrowed }. Use um protetor com maior atenuação ([protector]), tampões sob abafadores, ou reparta o corte por vários dias (dust.days). Verifique as regras em vigor.

noise-unknown = ruído da máquina: leia-o nas instruções
    .detail = Nível { $level } dB(A): nenhuma rebarbadora é silenciosa. Use o valor do fabricante, ou { $usual } dB(A) para um disco grande em pedra, e indique machine.noise. Até lá use proteção auditiva.

extractor-filter = o filtro do extrator tem de reter { $holds } e ser limpo enquanto trabalha
    .detail = Caudal de ar { $has }, mínimo { $asks }. Esse caudal só vale com um filtro limpo de pelo menos { $holds }, um ciclone ou limpeza do filtro, e a cobertura de aspiração encostada à pedra: { $vacuum }{ $borrowed }; a classe M deixa passar no máximo { $m }. Nas duas pontas de um corte e nas entradas por imersão a cobertura de aspiração fica aberta: aí, devagar.

control-cut-less = cortar menos
    .detail = serram-se { $face } m² de face de corte, { $minutes } minutos com o disco na pedra: cada borda que fica como está não levanta pó

control-shop = mandar cortar com água numa oficina
    .detail = uma serra de ponte com água corta isto em poucos minutos, e { $grams } de pedra nunca chegam ao seu local

control-at-the-disc = { $method ->
    [water] água no disco
    [shroud] cobertura de aspiração no disco
   *[none] água ou aspiração no disco
 }
    .detail = água numa máquina própria para isso, ou uma cobertura de aspiração com pelo menos { $airflow } para um disco de { $disc }

control-outdoors = ao ar livre
    .detail = com ar em movimento, vento de lado, longe de portas e de entradas de ar

control-distance = distância
    .detail = ninguém sem proteção respiratória onde se veja pó ou névoa, e ninguém na linha do disco

control-mask = a máscara, por último
    .detail = que se ajuste a quem a usa, na pele barbeada se for justa, posta até o local estar limpo

controls-open = mais forte do que a máscara, ainda em aberto: { $what }
    .detail = Faça-o, ou escreva porque não: cada um tira pó que a máscara teria de reter.

no-dust-control = corte a seco sem nada que retenha o pó
    .detail = Controlo do pó: nenhum; pede-se pelo menos um de dois. Use água numa máquina própria para isso, ou uma cobertura de aspiração com um extrator suficientemente forte para o disco, ou mande cortar com água numa oficina. A seco e sem cobertura de aspiração não está em nenhuma linha da tabela; nenhuma proteção respiratória o compensa, e atinge todos os que estão por perto.

water-flow = água no disco sem interrupção, tanta que não se veja pó
    .detail = Conta-se com { $flow } litros por minuto. A regra não indica nenhum valor para rebarbadoras; para cortadoras de disco portáteis aconselham-se { $advised } litros por minuto. Água no bordo do disco desde antes de ele tocar na pedra até ter saído dela. Se se vir pó ou vapor: pare, mais água.

water-too-little = { $flow } litros por minuto é menos do que se aconselha para uma cortadora de disco portátil
    .detail = { $flow } litros por minuto, { $advised } aconselhados para cortadoras de disco portáteis: menos água retém menos pó. Depósito ou bico maior, e não se corta enquanto se vir pó.

shroud-airflow-unknown = não se conhece o caudal de ar do extrator
    .detail = Caudal de ar desconhecido; um disco de { $disc } pede pelo menos { $asks } m³/h. Sem esse dado não está comprovado que a cobertura de aspiração retém o pó: leia a placa do extrator e indique dust.airflow, ou corte com água.

shroud-airflow-too-small = o extrator move { $has }, o disco pede { $asks }
    .detail = Caudal de ar { $has }, mínimo { $asks } m³/h para um disco de { $disc }. Use um extrator mais forte, um disco mais pequeno, ou corte com água.

not-in-table-indoors = não consta da tabela da autoridade: a exposição tem de ser avaliada
    .detail = Esta máquina, esta medida, no interior, { $hours } h nesse dia: nenhuma linha. Ninguém publicou que proteção respiratória é suficiente. Para o exterior há linhas com água e com cobertura de aspiração: mude o local ou a medida para um que conste da tabela, ou mande avaliar a exposição por uma pessoa competente.

not-in-table = não consta da tabela da autoridade: a exposição tem de ser avaliada
    .detail = Esta máquina, esta medida, no exterior, { $hours } h nesse dia: nenhuma linha. Ninguém publicou que proteção respiratória é suficiente. Mude a medida para uma que conste da tabela para esta máquina, ou mande avaliar a exposição por uma pessoa competente.

indoors-exhaust = no interior: o ar também tem de ser extraído
    .detail = Local: interior. Corte ao ar livre se for possível. Senão, extraia o pó visível para o exterior, isole o espaço e não deixe entrar ninguém sem proteção respiratória.

marble-veins = os veios do mármore podem ter muito mais sílica do que a pedra
    .detail = O mármore no seu todo tem no máximo { $share } % de sílica; os veios podem ter muito mais. Trate um corte ao longo ou através de um veio como um corte em pedra rica em sílica.

stone-kind-unknown = { $stone }: não se sabe o que a liga
    .detail = A pedra ligada com resina e com 1 % de sílica ou mais conta como pedra aglomerada. Peça a ficha técnica. Se for: { $rule }

silica-unknown = { $stone }: pergunte pela parte de sílica
    .detail = Sílica { $share } % no máximo, segundo o que foi indicado: quase nenhuma pedra está isenta dela. Enquanto uma ficha técnica não disser que esta o está, trate-a como rica em sílica (acima de { $threshold } %) e indique stone.silica.

engineered-stone-banned = aqui é proibido cortar pedra aglomerada
    .detail = { $rule }

engineered-stone-dry = pedra aglomerada sem água
    .detail = Métodos húmidos: nenhum; são pedidos. { $rule }

engineered-stone-powered-respirator = pedra aglomerada sem proteção respiratória com ventilador
    .detail = Proteção respiratória com ventilador: nenhuma disponível; é pedida. { $rule }

engineered-stone = pedra aglomerada: primeiro aplicam-se regras mais estritas
    .detail = { $rule } Deixar o corte a uma oficina autorizada é a opção segura.

high-silica-stone = { $stone }: pode ter até { $high } % de sílica
    .detail = Sílica de { $low } a { $high } % da pedra; acima de { $threshold } % é considerada rica (valor da Califórnia, usado aqui em toda a parte). O pó deixa cicatrizes nos pulmões para sempre: controlo do pó e proteção respiratória desde o primeiro contacto até ao fim da limpeza, e ninguém por perto sem proteção respiratória.

california-silica-rule = trabalho de alta exposição: com água, em zona delimitada, com a proteção respiratória mais forte
    .detail = Sílica até { $high } %. { $rule }

silica-rich-stone-dry = trabalho de alta exposição sem água: a Califórnia pede métodos húmidos
    .detail = Sílica até { $high } %. { $rule }

sparks-into-extractor = aço na pedra: as faíscas entram no extrator
    .detail = Aço que se pode cortar com um extrator a trabalhar: nenhum. As faíscas pegam fogo ao saco. Retire primeiro o aço, mantenha os cortes longe dele ou corte com água.

sparks-from-steel = o aço na pedra lança faíscas
    .detail = Nada que arda a menos de { $clear } (critério nosso), um balde cheio de água e um extintor à mão, um disco que o fabricante permita para aço, sem fazer força. Uma hora depois do último corte veja outra vez se há fumo.

steel-not-known = aço na pedra: veja, não há ou onde?
    .detail = Muitas vezes há varões e malha colados no dorso da chapa. Veja o dorso, passe um íman ao longo de cada linha de corte. No ficheiro: stone.steel ("none" ou "some").

supply-unprotected = água com alimentação da rede sem interruptor diferencial, GFCI ou 110 V com o ponto médio à terra
    .detail = Proteção: nenhuma conhecida; pede-se: interruptor diferencial de { $rcd } ou menos, GFCI classe A ({ $gfci }) ou 110 V com o ponto médio à terra ({ $volts } à terra). Aqui: { $rule }{ $borrowed }. Havendo água, sem proteção não se corta.

supply-unprotected-dry = alimentação da rede sem interruptor diferencial, GFCI ou 110 V com o ponto médio à terra
    .detail = Proteção: nenhuma conhecida; pede-se: interruptor diferencial de { $rcd } ou menos, GFCI classe A ({ $gfci }) ou 110 V com o ponto médio à terra ({ $volts } à terra). Aqui: { $rule }{ $borrowed }. Ponha um na linha de alimentação e carregue primeiro no botão de teste.

wet-mains = Botão de teste do diferencial ou GFCI, se houver, premido: dispara. Fichas secas e fora do chão
    .detail = Botão de teste premido antes do primeiro corte, e a proteção tem de disparar. Fichas e ligações fora do chão e secas, cabos pendurados em laço para que a água pingue antes da ficha, mãos secas na ficha e no interruptor. Se disparar ao cortar: pare, descubra porquê, nunca o mantenha ligado à força.

engine-indoors = motor de combustão no interior: monóxido de carbono
    .detail = Motores no interior ou num pátio fechado: nenhum permitido. O gás de escape mata sem aviso; corte ao ar livre, ou use uma máquina a bateria, a ar ou ligada à rede.

engine-fumes = motor de combustão: gases de escape e combustível
    .detail = Ao ar livre e com ar de todos os lados, nunca numa vala, numa tenda ou num canto entre muros. Escape longe da cara do operador e da do ajudante. Abasteça com o motor frio e arranque noutro sítio.

water-on-mains-unrated = água numa máquina ligada à rede que não é feita para isso: choque elétrico
    .detail = Aptidão para água: nenhuma; pede-se: declarada pelo fabricante, para corte com água. As advertências normalizadas proíbem água numa rebarbadora comum ligada à rede; nem um interruptor diferencial nem um GFCI fazem dela uma máquina para água. Use uma máquina própria para corte com água, ou uma cobertura de aspiração e um extrator.

water-not-rated = água numa máquina que não é feita para isso
    .detail = Aptidão para água: nenhuma; pede-se: declarada pelo fabricante, para corte com água. Use uma máquina cujo fabricante permita água, ou uma cobertura de aspiração e um extrator.

battery-wet = bateria fora antes de tocar no disco, baterias sempre secas
    .detail = As baterias trocam-se longe da lama e com as mãos secas; uma bateria que se molhou por dentro não volta a ser usada nem carregada. A bateria sai antes de se examinar ou trocar o disco.

air-hose = ar comprimido: engates com pino de segurança, pressão não superior à da placa
    .detail = A velocidade indicada de { $rpm } rot/min vale só com a pressão da placa: mais pressão, mais velocidade. Regulador e engates de segurança montados, escape do ar dirigido para longe do pó e das mãos, mangueira esvaziada antes de tocar no disco. Nunca sopre o pó nem limpe a roupa com o ar.

respirator-class = leia a classe marcada no equipamento: { $mask }
    .detail = O fator vai de { $least } a { $most } conforme a classe ({ $marks }); pede-se { $apf } ou mais{ $borrowed }. Conta como { $least } até a marcação estar indicada em dust.respirator: use um equipamento marcado para { $apf } ou mais.

respirator-not-in-scheme = { $mask }: sem fator no sistema desta região
    .detail = Proteção respiratória: { $mask }; fator 0 aqui, pede-se um{ $borrowed }. Os fatores de dois sistemas nunca se misturam; uma máscara sem linha neste conta como nenhuma. Primeiro os passos em falta da ordem das medidas; depois uma que esteja aprovada no local onde trabalha.

respirator-unlisted = { $mask }: sem fator no sistema desta região
    .detail = Fator 0; a tabela não pede nenhum{ $borrowed }. Pode ser que retenha o pó, mas aqui nenhuma regra a conta: peça uma que esteja aprovada no local onde trabalha.

respirator-missing = não há proteção respiratória disponível
    .detail = Proteção respiratória: nenhuma; pede-se fator { $apf } ou mais{ $borrowed }. Primeiro os passos em falta da ordem das medidas; depois arranje uma que se ajuste a quem a usa e indique dust.respirator.

respirator-missing-unassessed = não há proteção respiratória disponível e nada define qual é suficiente
    .detail = Proteção respiratória: nenhuma; nada do que está publicado define o fator: a exposição tem de ser avaliada. Primeiro os passos em falta da ordem das medidas; depois mande avaliar a exposição, arranje a proteção respiratória que daí resultar e indique dust.respirator.

respirator-none-asked = não há proteção respiratória disponível; a tabela não pede nenhuma aqui
    .detail = Proteção respiratória: nenhuma; a tabela não pede nenhuma{ $borrowed }. A tabela só vale enquanto a medida funcionar sem falhas: tenha uma pronta, e use-a sempre que se vir pó e para limpar.

respirator-not-fit-tested = mande testar o ajuste da máscara em quem a usa
    .detail = Proteção respiratória: { $mask }; o fator só conta depois de um ensaio de ajuste e na pele barbeada; até lá não se pode contar com ela. Mande fazer o ensaio de ajuste, ou use um capuz com ventilador.

respirator-clean-shaven = barbeado nesse dia, vedação verificada de cada vez
    .detail = Proteção respiratória: { $mask }; com ensaio de ajuste, e isso só vale na pele barbeada: a barba por fazer conta como barba. Verifique a vedação cada vez que a põe; outro tamanho ou outra marca, ou outra cara, exige um novo ensaio.

respirator-below-required = { $mask }: aqui conta como fator { $has }, pede-se { $apf }
    .detail = Proteção respiratória: { $mask }; fator { $has }, pede-se { $apf } ou mais{ $borrowed }. Primeiro os passos em falta da ordem das medidas: uma medida mais forte vem antes de uma máscara mais forte. Depois, uma proteção respiratória com fator { $apf } ou mais; os fatores de dois sistemas nunca se misturam.

nuisance-mask = uma máscara sem classe não é proteção respiratória
    .detail = Fator 0: não tem classe, e o pó fino atravessa-a e entra pelos bordos. Não conta de todo como proteção respiratória. Arranje uma com uma classe que conte aqui e indique dust.respirator.

asbestos-not-tested = { $stone } pode ter minerais de amianto: não se corta antes de ser analisada
    .detail = Amianto que se pode cortar: nenhum. Antes do primeiro corte mande um laboratório analisar uma lasca desta chapa, ou obtenha a análise da própria pedreira, e preencha stone.asbestos, stone.report e stone.date. Sem resultado claro, é trabalho para pessoas licenciadas.

asbestos-declaration = { $stone }: peça a declaração da pedreira sobre minerais de amianto
    .detail = { $stone } está entre as rochas que os podem ter. Peça ao vendedor a declaração da pedreira e preencha stone.asbestos, stone.report e stone.date.

binder-unknown = { $stone }: não se sabe o que a liga, por isso conta como pedra aglomerada
    .detail = Uma pedra com 1 % de sílica ou mais, cujo ligante ninguém indicou, conta como aglomerada até stone.binder dizer outra coisa. { $rule }

resin-in-fired-slab = { $stone }: não tem resina?
    .detail = O grés porcelânico e a pedra sinterizada só ficam fora da proibição se não tiverem resina. Peça a ficha técnica e preencha stone.binder. { $rule }

supply-unprotected-outdoors = rede elétrica ao ar livre sem interruptor diferencial, GFCI ou 110 V com o ponto médio à terra
    .detail = Proteção: nenhuma conhecida; pede-se: interruptor diferencial de { $rcd } ou menos, GFCI classe A ({ $gfci }) ou 110 V com o ponto médio à terra ({ $volts } à terra). Aqui: { $rule }{ $borrowed }. Ao ar livre, o chão molhado e os cabos danificados tornam mortal uma avaria: ponha um na linha de alimentação, carregue no botão de teste e preencha machine.protected.

speed-assumed = leia a velocidade na placa ou no disco: { $what }, suposto
    .detail = Suposto: { $what }. Leia a placa da máquina e a marcação do disco e preencha machine.rpm e disc.max_rpm: a verificação do disco com a máquina só vale com os valores verdadeiros.

disc-larger-than-machine = { $disc }: { $diameter }; a máquina é feita para { $largest } no máximo
    .detail = Diâmetro { $diameter }, maior disco da máquina e do seu resguardo { $largest }. Use um disco mais pequeno, ou uma máquina feita para este; nunca tire o resguardo.

respirator-filter = uma N95 não chega aqui: pede-se um filtro da série 100 ou HEPA
    .detail = Proteção respiratória: N95; pede-se: fator 10 ou mais com um filtro da série 100 ou HEPA. Arranje uma semimáscara com filtros P100 ou melhor e preencha dust.respirator.

no-water-flow = método com água sem caudal: isso é cortar a seco
    .detail = Água: 0 litros por minuto. A seco e sem cobertura de aspiração não está em nenhuma linha da tabela, e nenhuma proteção respiratória o compensa. Leve água ao rebordo do disco e preencha dust.water, ou use uma cobertura de aspiração e um extrator.

speed-assumed-of = { $what } { $speed } rotações por minuto

bystanders = Mais ninguém perto: crianças, vizinhos e animais afastados, e avisados
    .detail = Pó, névoa e ruído chegam mais longe do que o local de corte, e um pedaço de um disco partido voa dezenas de metros. Vede o local, avise os vizinhos quando começar, e pare o disco se entrar alguém sem máscara, óculos e proteção auditiva.

windows-and-intakes = Janelas, portas e entradas de ar fechadas, ventilação desligada
    .detail = O pó que faz mal é fino demais para se ver e vai longe. Feche as janelas e portas da casa e peça o mesmo aos vizinhos; desligue ventilação, bomba de calor e ar condicionado perto do local; corte a sotavento deles.

working-height = Pedra entre a anca e o cotovelo, chão firme, sem escada
    .detail = Cavaletes à altura de trabalho e chão nivelado sob os dois pés. Nunca corte de uma escada ou de um degrau, acima do ombro, nem de joelhos abaixo da pedra: um ressalto atira-o ao chão e a máquina vem atrás.

eyes = Óculos fechados, viseira por cima, lava-olhos ao alcance
    .detail = Os óculos abertos deixam entrar lascas e areia por baixo e de lado. Óculos fechados para todos os que estão perto; só a viseira não chega. Areia no olho: lavar, nunca esfregar; uma lasca que fica é para o médico.

side-handle = Punho lateral e resguardo montados, duas mãos, interruptor nunca bloqueado
    .detail = Uma só mão não aguenta um ressalto. O resguardo está entre o disco e a cara, e nenhum corte vale tirá-lo. Um interruptor bloqueado deixa o disco a rodar depois de a máquina cair{ $power ->
            [mains] ; após uma falha de corrente, desligue o interruptor antes de voltar a ligar a ficha
           *[other] {""}
        }.

leads = Cabo e mangueiras atrás de si, inteiros, desenrolados, longe do disco e dos pés
    .detail = Por cima do ombro e para trás, nunca através do corte ou do caminho. Um cabo danificado não se usa. Ligações secas e acima do chão; um enrolador desenrola-se todo, senão aquece.

hoses = Mangueiras atrás de si, inteiras, longe do disco e dos pés
    .detail = Por cima do ombro e para trás, nunca através do corte ou do caminho. Uma mangueira que verte ou está dobrada não se usa.

leaning-slabs = Chapas de cutelo amarradas ou num cavalete em A; mover uma de cada vez, ninguém onde possam cair
    .detail = Seis pessoas morreram em cinco anos na Grã-Bretanha por chapas que caíram ao serem guardadas ou manuseadas. Cavalete em A em chão plano, pés afastados da parede, amarrado; nunca soltar a amarração de um lote com alguém à frente; ninguém entre duas chapas. Uma que começa a cair larga-se: fugir, nunca a segurar.

not-for-everyone = Não é trabalho para: grávidas, doentes do pulmão, coração, mãos ou costas, menores, quem está cansado ou bebeu
    .detail = Doença pulmonar, dedos brancos, coração fraco, um pacemaker cujo fabricante avisa contra máquinas, costas lesionadas, gravidez: pergunte primeiro a um médico. Nenhum menor, ninguém cansado, ninguém depois de álcool ou drogas que tornam lento.

first-aid = Primeiros socorros prontos: penso compressivo, lava-olhos, telefone, a morada escrita
    .detail = Uma artéria cortada mata em minutos: carregar com força na ferida, ligadura ou torniquete, ligar. Cortar a corrente antes de tocar em quem levou um choque. Esmagado sob a pedra: ligar primeiro, levantar só com um meio de elevação. Quem sabe primeiros socorros é nomeado antes de começar.

moment-before = Antes

moment-cutting = Durante o corte

moment-moving = Ao mover a pedra

moment-after = Depois

settled-asbestos = Analisada, sem minerais de amianto: { $report }, { $date }

settled-controlled = A pedra com { $share } de sílica corta-se sob controlo, como a regra pede

settled-noise = { $level } ao cortar, { $under } dB(A) no dia sob o protetor, limite { $limit } dB(A)

settled-mask = { $mask }: conta como fator { $has }, pede-se { $apf }

settled-check-call = Sozinho, com chamada combinada: { $who }

settled-supply = Rede elétrica protegida

settled-speed = { $disc }: marcado { $marked } rotações por minuto, máquina { $machine }
