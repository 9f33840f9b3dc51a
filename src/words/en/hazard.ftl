# Findings of hazards: a line, and in full.

working-alone = one person only: nobody to stop the work, nobody to call help
    .detail = People entered: { $people }, at least 2 while a disc turns (judgement). Find somebody who stands by, or say in lift.check_call who knows where you are and at what times they call; nobody answers: they come.

second-person = A second person { $at ->
    [plug-tap] at plug and tap
    [plug] at the plug
    [valve-tap] at air valve and tap
    [valve] at the air valve
    [tap] at the water tap
   *[sight] in sight
 }, who sees the cutter and does nothing else
    .detail = Of the { $people } people one stands there, in sight of the cutter, out of the line of the disc, with respirator and hearing protection. A raised hand or a hand on the shoulder means off, and nobody asks why.

who-is-bound = Building site, shop or your own work: know which rule holds
    .detail = On a building site (29 CFR 1926.1153) a row of Table 1, followed to the letter, is enough. A shop that makes worktops is general industry (29 CFR 1910.1053): no table there, exposure is assessed. A private person is bound by neither; the table is the best published guide, and the dust does the same harm.

no-dry-sweeping = No dry sweeping, no compressed air
    .detail = { $rule }{ $borrowed } About { $stone } of stone, up to { $silica } of it silica, lie about after the cuts: dry, they rise again. Vacuum: { $vacuum }{ $vacuum_borrowed }.

vacuum-before-the-mask-comes-off = Dust vacuumed everywhere before the mask comes off
    .detail = No shroud catches all of { $stone }, least of all at the ends of a cut. Floor, ledges, machine and clothes are vacuumed before any mask comes off: { $vacuum }{ $vacuum_borrowed }.

cold-water = Hands warm and dry; white or numb fingers: stop for the day
    .detail = Waterproof sleeves, a dry pair of gloves for each hour, breaks in the warm. Cold, white or numb fingers: stop for the day, cold makes vibration harm sooner.

frost = No wet cutting in frost
    .detail = Below about 3 °C (judgement) slurry freezes underfoot and water stands still in hose and nozzle: no water, no cutting. Empty machine and hose before the night.

local-rules-first = Local rules, makers' instructions and competent people come before this sheet
    .detail = The sheet is no permit. Region of its figures: { $region }. Check your current rules with { $authority }. Lifting gear, electrics, structure and stone that may hold asbestos are for licensed people.

slurry-clean-up = Slurry collected before it dries; buckets needed: { $buckets }
    .detail = About { $kilos }: { $water } l of water ({ $flow } l/min while the disc cuts) and { $stone } of stone, { $buckets } buckets of { $bucket } l. Dry, it is the dust you kept down. Sheet under the trestles, scrape and wet-vacuum while wet, rinse clothes, boots and machine, let the rest settle; none into drains.

dust-bags = Extractor bags closed and away; bags needed: { $bags }
    .detail = About { $stone } of stone if the shroud caught all of it, { $bags } bags of { $bag } at most. Change the bag with the respirator on, outdoors, closed before it leaves the extractor, never shaken out or emptied for another use.

falling-stone = Nobody below stone, never catch a slab that falls
    .detail = { $mass } kg/m² at the thickest reading and the heaviest stone of the kind. Waste and kept stone both borne before the first pass; nobody's feet or fingers below or between; never stand where a slab on edge can fall, and never try to catch one.

wet-floor = Slurry is slippery: boots, water led away, floor rinsed before anything is lifted
    .detail = Slip-proof boots, water led away from where people stand and carry{ $power ->
            [mains] , cables hung up out of the wet
           *[other] {""}
        }. Floor rinsed and cleared before any piece is lifted.

vibration-over-limit = vibration A(8) { $day } m/s² in { $all } min of the day, limit { $limit } m/s²
    .detail = { $a } for { $minutes } minutes in the day with this machine, { $points } points with everything else: A(8) { $day }, limit { $limit }{ $borrowed }, reached after { $to_limit } minutes. Split the work over { $people } people or days, at most { $to_limit } minutes each; below the action value { $action } it takes { $people_action }. Enter the days or people as dust.days. Keep warm, sharp disc, light grip. Check your current rules.

vibration-over-action = vibration A(8) { $day } m/s² in { $all } min of the day, action value { $action } m/s²
    .detail = { $a } for { $minutes } minutes in the day with this machine, { $points } points with everything else: A(8) { $day }, action value { $action }{ $borrowed }, reached after { $to_action } minutes. Split the work over { $people_action } people or days, at most { $to_action } minutes each; keep warm, sharp disc, light grip. Check your current rules.

vibration-unknown = vibration of the machine: read it in its instructions
    .detail = Magnitude { $a }: no hand machine is without vibration. Take the maker's figure, or { $usual } m/s² for a grinder on stone, and enter machine.vibration.

disc-over-marked-rpm = { $disc }: machine { $machine } turns a minute, disc marked { $marked }
    .detail = The machine turns { $over } a minute faster than the { $marked } marked on the disc ({ $speed }, marked for { $marked_speed }). The disc may fly apart: use one marked for { $machine } or more, or a slower machine.

disc-mark-unknown = { $disc }: highest speed not known
    .detail = Machine { $machine } turns a minute, disc mark not known. Read the mark on the disc and enter disc.max_rpm; a disc without a mark is not used.

machine-speed-unknown = speed of the machine is not known
    .detail = Machine { $machine } turns a minute: without its true speed no disc can be checked. Read the plate and enter machine.rpm.

kickback-pinched-disc = Stand beside the line of the disc; pinched: stop, free it, enter again at full speed
    .detail = Stand beside the line of the disc, two hands, guard on, nobody in that line. After a pinch: stop, let it stand still, free it, enter again at full speed only; never start in the cut.

resin-disc-expired = { $disc }: its last day was { $expires }
    .detail = Job dated { $date }, last day of the disc { $expires }. Resin discs last { $years } years from making at most: break it, and take a new one or a diamond disc.

resin-disc-age-unknown = { $disc }: resin-bonded, last day not known
    .detail = Resin discs last { $years } years from making at most, and damp shortens that. Read the month or quarter on ring or label and enter disc.expires; a resin disc without a date is not used.

resin-disc-age = { $disc }: not after { $expires }
    .detail = Last day of the disc { $expires }: compare it with the day of the work. Kept dry and lying flat until then; one that was damp or dropped is broken and thrown away.

disc-before-use = Disc looked at: no cracks, bore and flanges fit, guard of its own size
    .detail = No cracks, bore to fit, both flanges the machine's own and clean, arrow the right way, guard of the disc's own size, gaps in the rim at most { $gap }, never a worn disc from a bigger machine. At { $speed } every loose piece is a shot.

support-both-sides = Both sides of the cut borne from below, close to it
    .detail = Bearers under both sides near the cut and at the edges of the stone, so that the kerf stays open to its end. The waste lies on its own bearers before the first pass; no hand, foot or knee below it.

rim-speed-over-limit = { $disc }: rim speed { $speed }, highest marked class { $highest }
    .detail = A { $diameter } disc at { $machine } turns a minute runs at { $speed }; no stripe allows more than { $highest }. Smaller disc or slower machine.

rim-speed-above-hand-discs = { $disc }: rim speed { $speed }, hand discs are made for { $hand }
    .detail = A { $diameter } disc at { $machine } turns a minute runs at { $speed }. Above { $hand } m/s (red stripe) only a disc with a green stripe ({ $highest } m/s): look for it, or take { $slower } turns a minute or less.

disc-run-down = The disc keeps spinning after the switch is off: wait until it stands
    .detail = Seconds, longer with a big disc: hold the machine clear of stone, hose and clothes until the disc stands still, then put it down. { $power ->
            [mains] Plug out
            [battery] Battery out
            [air] Air hose off
           *[engine] Engine stopped
        } before the disc is touched.

new-disc-run = New disc run without load first, everybody out of its line
    .detail = { $minutes } minute at full speed, guard on, machine held away, nobody in the plane of the disc, for each mounting. It shakes or sings: off, let it stand still, look again.

never-steer-the-disc = The disc is never steered, twisted or pressed sideways
    .detail = Side load bends and breaks a disc. Side load allowed: none. Curves are made of straight plunges as drawn; no grinding with the flat of a cutting disc.

disc-bore = { $disc }: bore { $bore } on a seat of { $seat }
    .detail = Bore { $bore }, seat { $seat }, usual { $usual }, at most { $play } apart. A loose disc runs out of true and breaks, a tight one does not go on. The right disc for the machine: no bushing, no filing, no shim.

protector-unknown = hearing protector: which one, and what stands on it?
    .detail = Read SNR, H M L or NRR on the box and write it here: { $level } at the ear while cutting, and { $duty } dB(A) over the day makes protection a duty. In the job file: [protector].

protector-too-weak = hearing protector too weak: { $day } dB(A) over the day under it
    .detail = { $level } while cutting, { $holds } dB held back{ $borrowed }: { $ear } at the ear, { $day } over the day, at most { $duty }. A protector with a higher rating, plugs under muffs, or fewer minutes.

protector-too-strong = hearing protector too strong: { $ear } dB(A) at the ear
    .detail = { $level } while cutting, { $holds } dB held back{ $borrowed }: { $ear } at the ear. Below { $quiet } calls and warnings are missed: agree on hand signs, or take one with a lower rating.

protector-foreign-rating = the protector's rating is not the one that is reckoned with here
    .detail = SNR, H M L (EN 352) and NRR (American) are tested differently and never exchanged. It was reckoned by its own scheme, the stricter way: { $holds } dB held back. Ask for the rating that counts where you are.

noise-over-limit = noise of the day { $under } dB(A) under the protector, limit { $limit } dB(A)
    .detail = { $level } dB(A) for { $hours } hours of the day with this machine: { $day_exact } dB(A) over the day without protector, { $under } dB(A) under it, limit { $limit } dB(A){ $borrowed }. Take a protector with a higher rating ([protector]), plugs under muffs, or spread the sawing over days (dust.days). Check your current rules.

noise-unknown = noise of the machine: read it in its instructions
    .detail = Level { $level } dB(A): no grinder is silent. Take the maker's figure, or { $usual } dB(A) for a large disc on stone, and enter machine.noise. Wear hearing protection until then.

extractor-filter = Extractor with a clean filter that holds { $holds }, cleaned while it runs
    .detail = Airflow { $has }, least { $asks }. It counts with a clean filter of at least { $holds }, a cyclone or filter cleaning, and the shroud on the stone: { $vacuum }{ $borrowed }; class M lets through at most { $m }. Both ends of a cut and plunges leave the shroud open: go slowly there.

control-cut-less = cut less
    .detail = { $face } m² of face are sawn, { $minutes } minutes with the disc in the stone: every edge that stays as it is raises no dust

control-shop = have it cut wet by a shop
    .detail = a bridge saw under water cuts this in a few minutes, and { $grams } of stone never reach your place

control-at-the-disc = { $method ->
    [water] water at the disc
    [shroud] shroud and extractor at the disc
   *[none] water or extraction at the disc
 }
    .detail = water on a machine rated for it, or a shroud with at least { $airflow } for a { $disc } disc

control-outdoors = outdoors
    .detail = in moving air, wind from the side, away from doors and air intakes

control-distance = distance
    .detail = nobody without a respirator where dust or mist can drift, and nobody in line with the disc

control-mask = the mask, last
    .detail = fitting its wearer, clean-shaven where it is tight, worn until the place is clean

controls-open = stronger than the mask, still open: { $what }
    .detail = Do it, or write why not: each takes away dust that the mask would have to hold.

no-dust-control = dry cutting with nothing to hold the dust
    .detail = Dust control: none, at least one of two is asked for. Use water on a machine rated for it, or a shroud with an extractor strong enough for the disc, or have it cut wet by a shop. Dry and unshrouded is in no row of the table; no respirator makes up for it, and it reaches everybody nearby.

water-flow = Water at the rim before the disc touches the stone, until it has left it
    .detail = { $flow } litres a minute reckoned with. The rule names no figure for a grinder; { $advised } litres a minute is advised for hand-held cut-off saws. Water at the rim before the disc touches the stone, until it has left it. Dust or steam seen: stop, aim the water at the rim, unblock the nozzle; more than { $advised } litres a minute holds no more dust.

water-too-little = { $flow } litres a minute is less than is advised for a hand-held saw
    .detail = { $flow } litres a minute, { $advised } advised for hand-held cut-off saws: less holds down less dust. Aim the water at the rim, unblock the nozzle, fill the container.

shroud-airflow-unknown = airflow of the extractor is not known
    .detail = Airflow not known, a { $disc } disc asks for at least { $asks } m³/h. Without it the shroud's control is not proven: read the extractor's plate and enter dust.airflow, or cut wet.

shroud-airflow-too-small = extractor moves { $has }, the disc asks for { $asks }
    .detail = Airflow { $has }, least { $asks } m³/h for a { $disc } disc. Use a stronger extractor, a smaller disc, or cut wet.

not-in-table-indoors = not in the regulator's table: exposure must be assessed
    .detail = This machine, this control, indoors, { $hours } h of the day: no row. Nobody has published which respirator is enough. Outdoors has rows for water and for a shroud: change place or control to one that the table lists, or have the exposure assessed by a competent person.

not-in-table = not in the regulator's table: exposure must be assessed
    .detail = This machine, this control, outdoors, { $hours } h of the day: no row. Nobody has published which respirator is enough. Change the control to one that the table lists for this machine, or have the exposure assessed by a competent person.

indoors-exhaust = indoors: air must be drawn out as well
    .detail = Place: indoors. Cut outdoors if it can be done. Otherwise exhaust the visible dust to the open, close off the room, and let nobody in without a respirator.

marble-veins = veins in marble can hold far more silica than the stone
    .detail = Marble as a whole is at most { $share } % silica; its veins can be far more. Treat a cut along or through a vein as a cut in stone rich in silica.

stone-kind-unknown = { $stone }: what binds it is not known
    .detail = Stone bound with resin and holding 1 % silica or more counts as engineered stone. Ask for the data sheet and enter stone.binder. If it is: { $rule }

silica-unknown = { $stone }: ask for its share of silica
    .detail = Silica { $share } % at most as entered: hardly any stone is free of it. Until a data sheet says so, treat it as rich in silica (above { $threshold } %), and enter stone.silica.

engineered-stone-banned = engineered stone may not be cut here
    .detail = { $rule }

engineered-stone-dry = engineered stone without water
    .detail = Wet methods: none, asked for. { $rule }

engineered-stone-powered-respirator = engineered stone without a powered respirator
    .detail = Powered respirator: none at hand, asked for. { $rule }

engineered-stone = engineered stone: stricter rules come first
    .detail = { $rule } Leaving it to a licensed shop is the safe choice.

high-silica-stone = { $stone } may be up to { $high } % silica
    .detail = Silica { $low } to { $high } % of the stone, above { $threshold } % counts as rich (California's figure, used everywhere here). Its dust scars the lungs for good: control and respirator from the first touch to the last of the cleaning up, and nobody near without one.

california-silica-rule = work of high exposure: wet, in a regulated area, the strongest respirator
    .detail = Silica up to { $high } %. { $rule }

silica-rich-stone-dry = work of high exposure without water: California asks for wet methods
    .detail = Silica up to { $high } %. { $rule }

sparks-into-extractor = steel in the stone: sparks go into the extractor
    .detail = Steel that may be cut with an extractor running: none. Sparks set fire to its bag. Take the steel out first, keep the cuts clear of it, or cut wet.

sparks-from-steel = steel in the stone throws sparks
    .detail = Nothing that burns within { $clear } (judgement), a full bucket and an extinguisher at hand, a disc that its maker allows for steel, no push. Look again for smoke an hour after the last cut.

steel-not-known = steel in the stone: look, none or where?
    .detail = Rods and mesh are often glued into the back of a slab. Look at the back, run a magnet along every cut line. In the job file: stone.steel ("none" or "some").

supply-unprotected = water on a mains supply without RCD, GFCI or 110 V centre-earthed
    .detail = Protection: none known, asked for: RCD of { $rcd } or less, GFCI class A ({ $gfci }), or 110 V with the centre earthed ({ $volts } to earth). Here: { $rule }{ $borrowed }. With water about, no protection means no cutting.

supply-unprotected-dry = mains supply without RCD, GFCI or 110 V centre-earthed
    .detail = Protection: none known, asked for: RCD of { $rcd } or less, GFCI class A ({ $gfci }), or 110 V with the centre earthed ({ $volts } to earth). Here: { $rule }{ $borrowed }. Put one in the lead and press its test button first.

wet-mains = Test button (RCD, GFCI), where there is one, pressed: it trips. Plugs dry and off the ground
    .detail = Test button pressed before the first cut, and it must trip. Plugs and joints off the ground and dry, leads hung in a loop so that water drips off before the plug, dry hands at plug and switch. It trips while cutting: stop, find out why, never hold it in.

engine-indoors = combustion engine indoors: carbon monoxide
    .detail = Engines indoors or in a closed yard: none allowed. Exhaust gas kills without warning; cut in the open, or use a battery, air or mains machine.

engine-fumes = combustion engine: exhaust and fuel
    .detail = In the open with air on all sides, never in a pit, a tent or a walled corner. Exhaust away from both faces. Refuel with the engine cold, and start it at another place.

water-on-mains-unrated = water on a mains machine that is not made for it: electric shock
    .detail = Wet rating: none, asked for: by the maker, for wet cutting. The standard warnings forbid water on an ordinary mains grinder; an RCD or GFCI does not make it a wet machine. Use a machine rated for wet cutting, or a shroud and an extractor.

water-not-rated = water on a machine that is not made for it
    .detail = Wet rating: none, asked for: by the maker, for wet cutting. Use a machine whose maker allows water, or a shroud and an extractor.

battery-wet = Battery out before the disc is touched, packs kept dry
    .detail = Packs are changed away from the slurry with dry hands; a pack that got wet inside is not used or charged again. The pack comes out before the disc is looked at or changed.

air-hose = Air hose whole, couplings secured, water off the air line
    .detail = Entered speed { $rpm } turns a minute holds at the plate's pressure only: more pressure, more speed. Regulator and safety couplings fitted, exhaust led away from dust and hands, hose emptied before the disc is touched. Never blow dust or clothes clean.

respirator-class = read the class marked on the { $mask }
    .detail = Its factor is { $least } to { $most } by class ({ $marks }), { $apf } or more asked for{ $borrowed }. It counts as { $least } until the mark is entered as dust.respirator: use one marked for { $apf } or more.

respirator-not-in-scheme = { $mask } has no factor in this region's scheme
    .detail = { $mask }: factor 0 here, one asked for{ $borrowed }. Factors of two schemes are never mixed; a mask without a row in this one counts as none. First the open steps of the order of controls; then one that is approved where you are.

respirator-unlisted = { $mask } has no factor in this region's scheme
    .detail = Factor 0, none asked for by the table{ $borrowed }. It may well hold dust back, but no rule here counts it: ask for one that is approved where you are.

respirator-missing = no respirator at hand
    .detail = Respirator: none, factor { $apf } or more asked for{ $borrowed }. First the open steps of the order of controls; then get one that fits its wearer, and enter dust.respirator.

respirator-missing-unassessed = no respirator at hand, and nothing settles which is enough
    .detail = Respirator: none; factor not settled by anything published: exposure must be assessed. First the open steps of the order of controls; then have it assessed, get the respirator that follows, and enter dust.respirator.

respirator-none-asked = no respirator at hand; the table asks for none here
    .detail = Respirator: none, none asked for by the table{ $borrowed }. The table holds only while its control works without a fault, and the dust that harms is too fine to be seen: have one that fits, and wear it while the disc turns and for cleaning up.

respirator-not-fit-tested = have the mask fit-tested on its wearer
    .detail = { $mask }: its factor counts only after a fit test and on clean-shaven skin; until then it cannot be counted on. Have it tested, or use a powered hood.

respirator-clean-shaven = Clean-shaven, seal of the mask checked each time
    .detail = { $mask }: fit-tested, and that holds on clean-shaven skin only, stubble counts as a beard. Check the seal each time it is put on; a new size or make, or another face, needs a new test.

respirator-below-required = { $mask } counts as factor { $has } here, { $apf } asked for
    .detail = { $mask }: factor { $has }, { $apf } or more asked for{ $borrowed }. First the open steps of the order of controls: a stronger control comes before a stronger mask. Then a respirator with a factor of { $apf } or more; factors of two schemes are never mixed.

nuisance-mask = a mask without a class is no respirator
    .detail = Factor 0: it carries no class, and fine dust goes through it and round it. It is counted as no respirator at all. Get one with a class that counts here, and enter dust.respirator.

asbestos-not-tested = { $stone } may hold asbestos minerals: not cut before it was tested
    .detail = Asbestos that may be cut: none. Before the first cut have a laboratory test a chip of this slab, or get the quarry's own test, and enter stone.asbestos, stone.report and stone.date. Without a clear result it is work for licensed people.

asbestos-declaration = { $stone }: ask for the quarry's declaration on asbestos minerals
    .detail = { $stone } is among the rocks that can hold them. Ask the dealer for the quarry's declaration and enter stone.asbestos, stone.report and stone.date.

binder-unknown = { $stone }: what binds it is not known, so it counts as engineered stone
    .detail = A stone with 1 % silica or more whose binder nobody said counts as engineered until stone.binder says otherwise. { $rule }

resin-in-fired-slab = { $stone }: is it free of resin?
    .detail = Porcelain and sintered stone are left out of the ban only if they hold no resin. Ask for the data sheet and enter stone.binder. { $rule }

supply-unprotected-outdoors = mains supply outdoors without RCD, GFCI or 110 V centre-earthed
    .detail = Protection: none known, asked for: RCD of { $rcd } or less, GFCI class A ({ $gfci }), or 110 V with the centre earthed ({ $volts } to earth). Here: { $rule }{ $borrowed }. Outdoors, wet ground and damaged leads make a fault deadly: put one in the lead, press its test button, and enter machine.protected.

speed-assumed = read the speed from plate or disc: { $what } is assumed
    .detail = Assumed: { $what }. Read the machine's plate and the mark on the disc, and enter machine.rpm and disc.max_rpm: the check of disc against machine holds for the true figures only.

disc-larger-than-machine = { $disc }: { $diameter }, the machine is made for { $largest } at most
    .detail = Diameter { $diameter }, largest disc of the machine and its guard { $largest }. Use a smaller disc, or a machine made for this one; never take the guard off.

respirator-filter = an N95 is not enough here: a filter of the 100 series or HEPA is asked for
    .detail = Respirator: N95, asked for: factor 10 or more with a filter of the 100 series or HEPA. Get a half mask with P100 filters or better, and enter dust.respirator.

no-water-flow = water method with no flow: that is dry cutting
    .detail = Water: 0 litres a minute. Dry and unshrouded is in no row of the table, and no respirator makes up for it. Bring water to the rim and enter dust.water, or use a shroud and an extractor.

speed-assumed-of = { $what } { $speed } turns a minute

bystanders = Nobody else near: children, neighbours and animals away and told
    .detail = Dust, mist and noise reach farther than the cutting place, and a piece of a broken disc flies tens of metres. Close the place off, tell the neighbours when you start, and stop the disc when somebody comes in without mask, goggles and hearing protection.

windows-and-intakes = Windows, doors and air intakes shut, ventilation off
    .detail = The dust that harms is too fine to be seen and drifts far. Shut windows and doors of the house and ask the neighbours to; switch off ventilation, heat pump and air conditioning near the place; cut downwind of them.

working-height = Stone between hip and elbow, firm ground, no ladder
    .detail = Trestles at working height and level ground under both feet. Never cut from a ladder or a step, above the shoulder, or kneeling below the stone: a kick throws you and the machine comes after.

eyes = Goggles that close, a face shield over them, eyewash within reach
    .detail = Spectacles let chips and grit in from below and from the side. Goggles for everybody near; a shield alone is not enough. Grit in the eye: rinse, never rub; a splinter that stays is for a doctor.

side-handle = Side handle and guard on, two hands, switch never locked on
    .detail = One hand does not hold a kickback. The guard stands between disc and face, and no cut is worth taking it off. A locked switch keeps the disc turning after the machine was dropped{ $power ->
            [mains] ; after a power failure switch off before the plug goes in again
           *[other] {""}
        }.

leads = Lead and hoses behind you, whole, unrolled, clear of disc and feet
    .detail = Over the shoulder and behind, never across the cut or the way. A damaged lead is not used. Joints dry and off the ground; a drum is unrolled, or it gets hot.

hoses = Hoses behind you, whole, clear of disc and feet
    .detail = Over the shoulder and behind, never across the cut or the way. A hose that leaks or is kinked is not used.

leaning-slabs = Slabs on edge tied or on an A-frame; one moved at a time, nobody where they can fall
    .detail = Six people were killed in five years in Great Britain by slabs that fell while stored or handled. A-frame on level ground, feet out from the wall, tied; never loosen the tie of a pack with somebody in front of it; nobody between two slabs. One that starts to fall is let go: run, never hold it.

not-for-everyone = Not for this work: the pregnant, the ill of lung, heart, hand or back, the young, tired or drunk
    .detail = Lung disease, white fingers, a weak heart, a pacemaker whose maker warns of machines, a hurt back, pregnancy: ask a doctor first. Nobody under age, nobody tired, nobody after alcohol or drugs that slow.

first-aid = First aid ready: pressure bandage, eyewash, telephone, the address written down
    .detail = A cut artery kills within minutes: press hard on the wound, bandage or tourniquet, call. Power off before somebody shocked is touched. Crushed under stone: call first, lift only with an aid. Who knows first aid is named before the start.

moment-before = Before

moment-cutting = While cutting

moment-moving = While moving stone

moment-after = After

settled-asbestos = Tested free of asbestos minerals: { $report }, { $date }

settled-controlled = Stone with { $share } silica is cut under control, as the rule asks

settled-noise = { $level } while cutting, { $under } dB(A) over the day under the protector, limit { $limit } dB(A)

settled-mask = { $mask }: counts as factor { $has }, { $apf } asked for

settled-check-call = Alone, with a call agreed: { $who }

settled-supply = Mains supply protected

settled-speed = { $disc }: marked { $marked } turns a minute, machine { $machine }
