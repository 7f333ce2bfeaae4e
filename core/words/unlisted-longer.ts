/**
 * Words that the word list does not have, that boards of longer words could make, and that are heard as
 * words all the same: *speckle*, *magpie*, *maddest*, *doorframe*. Those of SCOWL's sizes 10 to 70, American
 * and British, that some board with everything taught would have shown as nonsense; of words of one beat
 * and three letters unlisted.ts has those that a class would know. Sorted; long because it is a list.
 */
export const UNLISTED_LONGER: ReadonlySet<string> = new Set(
  `aba abeam abed abies abler abridge actin adit adown adust afore aga agar agist agon ague
    aguish ahem airbed airboat airbrush airdrome airdrop airframe airglow airless airlike airman
    airplay airscrew airshow airsick airstream airtime alar alate alba albite alder aldol alga
    algal algin alky alow alum alvine amain ambit ambler ambo ament ampler ana anile anion anions
    anis anlace anlage anna annal anta antral antrum aport appose apses apsis apter arbor argal
    argent argon argot ariel armet armful armhole armless armlet armlets armload arpent arrant
    artel artier arty ashlar asker aslant aslope asper aspers assay aster astern asters atman
    attar attune atween auburn aulic aver avion baba babas babel babul bached baches badman badmen
    bagful bagger bagman bagmen bailer bairns baiter balas balded baldest baldies baldly baldy
    baler balker balky ballon ballute bandbox bander bandog bandore bandsaw banes bankbook
    bankcard bannock bantam banting banyan baps baptist barbie barbies barbing bareback bareness
    barflies barhop barkeep barker barmaid barmen barms barmy barney barnstorm barret barton
    basher basion basques basset bassist basso bassos baster basters bastes batching batfish
    bather bathmat batik batman batmen batten battier battik battue batty bawler bayard beading
    beadle beamy beanie beanies beaning beano becket bedder bedeck bedel bedhead bedim bedmate
    bedsit bedspring bedstead beebread beeline beeves beezer befit befog begot begum beldam belga
    belie belies belike belling belying bema bemas bemock bemuse bename bencher bended bennes
    bennet bens benumb berk berks berlin berthing besom besot bespread bestead besting betake
    betas bethel beths betta bevel bevy bezel bicorn bidet bielded bielding bields biffed biffin
    biffing bifid biform bigfoot biggin biggish bigshot bilbo bilges bilker bilking billies billon
    billy biltong binal binate bindle bines binger binman binmen binned binning bipack biped
    biplane bipod birches birching birded birder birding birdman birdshot birling birther
    birthrate bises bismuth bister bitmap bitstock bitted bittern bittier bitting blading blags
    blague blains blamer blanches blanching blander blandest blandly blanker blankest blaster
    blather blats bleacher bleaker bleakest bleated blebs bleeder bleeper blenched blenches
    blenching blighter blighting blindest blindfish blindside blinker blither blithest bloater
    blonder blondest blooding blooped blooping bloops blotching blotto blowfish blowflies blowgun
    blowhole blowsy blowzy bluebell bluecoat bluefish blueness bluepoint bluestone bluesy blueweed
    bluffest blunger blunter bluntest blunting blusher boaster boated boater bobbies bobby bocage
    boded bodied boding bodkin boffin bogie bogle bola bolide bolo bolter bombproof bombsight
    bombsite bonking bonzer booger bookcraft bookman bookstack bookstand boomer boonies bootjack
    boozy borehole boresome bornite bosket boson bosquet botcher botches botching botel botflies
    botnet bounden bounder bourgeon bovid bowfin bowhead bowleg bowlful bowline bowman bowmen
    bowses bowshot bowwow bowyer boxboard boxfish boxful boxlike boxroom boxwood boyla brabble
    bracer brads braider brailing braining brainpan brainsick brainwork braless brander branks
    branny brants brasher brashest brawest brawler brayer brazer brazers breading breams breasting
    breeks brents bricking brickle briefer briefness brills brimful brimless brimmer brindle
    bringer brisker briskest brisking brits broacher broaches broaching brogan brogue broider
    bromal bromate bromic brooded brooder broods brooking browner brownest brucine bruins bruited
    bruiting brumal brunching bruter bubal bubba bubo bucker buckish budded budder buddle bugler
    bulbil bulbul bullas bulling bullish bullock bulrush bumbag bumbler bumboat bumf bumkin
    bunching bunging bunion bunions bunted bunter bunters bunyip burble burbled burbles burbot
    burbs burgage burgeon burgle burgles burka burnet burnish burstone burthen burton burweed
    busbies busby busgirl bushbuck bushing bushman bushmen busies busked busker buskin busking
    busman busmen bussed busses bustier bustler butches buttes butties butty butut bypath byplay
    byword cabbed cabbing caber cabman cabmen cabob cabstand caches caddis caddish cadent caftan
    cager caging caking caky calash calcar calcine caliph calla callant calmest calving calzone
    camail camass camber camboose camion camions camlet campo campy candent candler caner canfield
    canna cannas canner canso canted cantier canting cantle canto canton cantos cantus canty
    canzone capful capon capos capper capsid capstone captious caput carbide carboy carder cardie
    cardies carding carfare carhop carjack carked carking carks carline carling carman carnet
    carnies carny carpark carpel carper carpers carport carpus carrel cartage carter carters
    carvel carven carver carwash casease cashback cashbox cashless casques cassis catbird catboat
    catfall catgut cation cations catkin catsuit cattier cattish caucus cauda caudate cauline
    causer causey cavil cavy cawed ceca ceded ceder ceding cedis ceiba cella cellos celom celtuce
    censed censer censes cental centime cento centred centric centrum centum cermet certs cervine
    cesta cestus chadar chador chafer chaffer chaffing chainman chairborne chairlift chalets
    chalking challot chalone chamade champed chandler chanson chanter chanters chantress chantries
    chantry chapbook chapman chapmen chappie chappies chapping chappy charlie charlies charlock
    charmless charnel chartist chassed chasten chaster chastest chattier chawed chawing chazan
    cheapness cheeking cheeping cheerless cheerly cheeseboard cheesewood chelas chemmy chequed
    cheques chequing chertier cherty chervil chested chevet chicane chicer chicle chico chider
    chiding chiefer chiefest childbed childcare childproof chiller chillest chillies chimer
    chinches chinless chinned chinning chinwag chipboard chirked chirking chirks chitin chiton
    chitter chitters chivy chocking choker cholent choler choline chook chooser chordal chordate
    chorion chorions chortler chowed chubs chufas chuffed chuffing chuffs chummed chunder chunking
    chunter churner cimex cinching cither citral citrate citric citron cittern civet clacker
    claimer clamber clamper clamshell clamworm clanger clasping classing classist clastic clearcut
    clearness clearway clearways clinching clinger clinker cliquish clocker cloistral clomped
    clomping clomps clonal clonking clonus cloture clouted clouting cloven clubber clubby clubfoot
    clubman clumpy clunker clunking coacher coaler coaling coasted coastguard cobber coble cobnut
    coca cocos coda codas codded codding coder codex codfish codon coffer coffle cogon cohosh
    coiling coiner coking coley colic collet collets collie colloid collop colly colone colter
    colters coltish colure coly comate combos comedown comfit comped comping comps coned confab
    conger conic coning conking conman contos convex cony cookhouse cookshop cooktop coolish
    cooping cootie cooties copal copalm coper copses copter copters coquet corbel corbie cordage
    cordate corded corder cording corkboard corker corking corky cornball cornet corning cornpone
    cornrow cornus corries corves corvine coset coshed cosher coshes coshing cosign cosplay
    cossack cosses cosset costa costal costate costive costrel cotes cotta cottier coucal couchant
    coulter coupler courser courter courtier couther couthest couvade covin cowbell cowbird
    cowfish cowhand cowing cowitch cowling cowman cowmen cowpox cowshed coyer cozen crabber
    crabgrass crabstick cranage craning crankle crap crapy crasher crasis crasser crassest craton
    craven crayfish creatine credent creels creeper crenate crenel crested cresting cretic cribble
    cricking crikey crimper crimping crimple crinite crinum crispest crisping crispness cristate
    croaker crofter crofting crofts crooking crossest crouches crowfoot cruder crudest cruelness
    cruller crumbing crumby crumped crumping crumpling crumply crumps cruncher cruses crusher
    crusting cruxes cubage cubeb cuber cubing cubit cuddies cuddy culch culet culex cullet culling
    cullis cully culms cultic cultish cultism cultist cultrate cultus culver cunning cupel cupful
    cupid cuppas curdle curdy curler cursive curtal curtate curter curtest curvet cusks cusped
    cuspid cusses custos cutches cutin cutis cutler cuttle cutty cutup cyma cymar cymas cypress
    cyton dabber dabchick dabster daces dachas dada dadas dado dafter daftest dags daimon daintier
    daises daleth daman damar dammar dammit dampest dampish damply damson dander dandle danging
    danish danker dankest daphnes dapple darbies darkle darksome darnel darner darted darter
    darters dasher dashpot dater daters dative dato dauber daubing davit dawdler daybed daybook
    dayflies daylong dayspring dazes dazing deadest deadfall deadhead deadness deadpan deafer
    deafest dearness dearths deathday deathful deathless deathlike deathwatch deaves debs debus
    deckle declaim decry deeded deeding deepness deffer deffest defog deforce defter deftest degas
    delate delver demark demit demob dentate dentin dentine desman desmid destine devoice dibble
    dibbuk dicot dieback diesis diestock dieted dimness dimwit dingbat dinging dinned dipsos
    disbud dishpan dishrag disjoin dispart displant disport dissed disserve distend distension
    distention distil dits ditsy dittos ditzes divan divas divot dizen dobbed dobbin dobbing dobra
    docent docker dodos doffing doges dogface dogfish dogger doggish doggo dogie dogsled doited
    dolling dollish dolman dolmen dolor doltish doming dona donas donee donjon donnas donnish
    doodler doorframe doormen doornail doorstone dooryard doozy dorky dormer dorser dorty dossed
    dosser dosses dossing dotage dotcom doter doters dottle doubler doubter doubters douching
    douma douser douses dovish dowel downfield downing downland downstage downstroke downwash
    dowser dowses doyen dozer dozers drabble drafter dragger draggle draggy dragster drainboard
    drainer drat draughts drawbar drawling dreamless drenches drenching driftnet driller droit
    droller drollest dropkick dropsy drowses drugget drumbeat drumfire drumfish drumhead drumlin
    drunker drunkest dryly dubbin ducal ducat duchy duded duding dudish duffed duffel duffer
    duffing dugong duiker dulcet dulling dullish dulses duma dumbhead dumbly dumbness dumbo dumbos
    dumdum dumper dumpers dumpish dumpsite dunging dunite dunlin dunnage dunner dunning dunnite
    dunno dunnock duper dupers duping duple dustup duvet earthborn earthlight earthman earthmen
    earthnut earthward earthwork eatage ebon ecus eddo efface effuse egger eider eland elapse
    elate elfish elide elute elver embow emend emmer emmet emplace emplane emprise emptor enate
    endue enjoin entailment entreat entreatment enwind ergo ergot esker espies esprit espy essive
    ester esters estop estray estrous estrum eta evert evzone explant eyer facer faddish fader
    fado faffed faffing faffs fainer fainest faintness faithless faitor faller famish fanboy
    fandom fanion fanions fanjet fanlight fanning fanon farcy fardel farmhand farmstead fastness
    fatback fating fatness fatso fatsos fatted fattier fattish faucal faulted faulting faunal
    faves favus fawner fayer feaster fecal feces fecit feebler feebly feedbag feedstock felid
    fellies felly felsite felted felting fended ferny ferrate ferric fesses fessing festal festoon
    feta fetcher feted fetial feting fetor fettle fewness fezzes fiches fichus fico fictile
    fictive ficus fifer fila filar filches filer fillip filmy filo filses filtrate filum finback
    finfish finfoot finis finking finned finny fino fipple fireback firebird fireboard fireboat
    firebox firedog fireguard fireless firelock firescreen firestone firestorm fireweed fireworm
    firmest firming firths fishgig fishnet fistic fitches fitful fitment fiver fizgig fizzes
    flacon flagger flaggy flagman flagmen flagon flagrance flaker flamen flamer flanged flanker
    flashboard flashcard flashest flashgun flatboat flatbread flatcar flatfish flatfoot flatmate
    flattie flattish flattop flatus flaunter flavine flayer flecking fleeted fleeter fleetest
    fleetness flesher fleshes fleshing fleshless fleshly fletcher flighted flightier flincher
    flinches flinger flipper flitches flooder flopper flosses flounder flouted flouter fluky
    flumped flumping flumps flusher flushest flushness fluster fluter flutist fluty fluxes fluxing
    foaling fobbing fogbound fogbow fogdog fogy fogyish foiling folic folie follies foment
    footboard footboy footed footer footfall footman footmark footmen footsies footstone foppish
    forbode forborne forby forceless forcer forded fording fordo forecourse foreland forelock
    forename forenamed forepart foreplay foreside forfend forkful formant formate formic formless
    fossas fosses fossick fouler foulest founts fourfold fourpence fourteenth fowling foxfire
    foxhound foxhunt foxing fracked fracking fracks frailer frailest framer franker frankest
    franking fraps frats frazzle freeboard freeborn freeform freehold freeload freeman freemen
    freeness freephone freestone freeware freewill freighting frena frenum fribble friended
    friending frig frighted frighting frilling fringing frisette frisker frisket frisson frizzes
    frizzing frizzle frons fronton frostbit froward frowner fruiter fruiting frustum fucus fuddle
    fugal fulfil fulled fulling fullish fulls fumbler fumy fundus funfair funking funner furbish
    furcate furfur furling furlong furzy fusil fusser fusses futtock futzed futzes futzing fuzzed
    fuzzes fuzzing gabble gable gabled gables gaby gadded gadding gadid gaffer gaffing gaga gagman
    gagmen gainer gainless gainly galas gallic galloon galop galosh gamba gamic gamin gammer
    gammon gammy gamps gamy ganef gangboard ganger gannet ganof gaped garbing garble garbler
    garboard gardant garfish garget garner garnet garpike gasbag gashing gaskin gaslit gasman
    gasmen gasper gasser gassy gastight gating gats gaucher gauchest gauger gaunter gauntest
    gauntness gawker gazer gazers geddit gelcap gelded gelding gelid gelling gemot genet genic
    genip genned genning genro gentes german germane germen germy gesso gestate getup ghats
    ghosted gibbet gibbon gibed giber gibing gifting gigot gigue gilder gilds gilled gimel gimlet
    gimmes ginning gipon girded girding girdler girlhood girly girted girths girting girts gites
    gits glabrate gladsome glassing glazer glazers gleaner gleets glinted glinting glister glitzy
    gloaming gloated gloater globed gloms glooming glosser glosses glover gloving gluten gnarling
    gnashes gnomish gnomon gnoses gnosis goalies goatish gobang gobbed gobbet gobbing gobies gobo
    goby godchild godhead godhood godown godship godson goffer goggle goiter goldfield goldsmith
    goldstone golem gonging gonif gonion gonna gonzo goober goodman google googles googly gooses
    goosy gopak gorget gorgon gosling gosport gossoon gotta gouger gowning goyim goyish grabble
    grackle gradate grafter gramps grampus grandly grandness granger grans grantee granter
    granters grasper grassing gratin graving grayer grazer grazers greaves greenback greenfield
    greenflies greenhead greening greenlet greenling greenly greenmail greenroom greensand
    greenstone greenwood greeter greyer gribble griddle griever grifter griper gripers grisette
    griskin grison grivet grizzle groaner grogshop groomer grossest grots grottier grotty grouched
    grouches grouching grounder groundnut groundsel grouser grouses grouted grouter grouting
    grouts grouty growler growly grubbed grubber gruffer gruffest grunter gucks guddle guggle
    guider guilder gula gulas gulches gulden gules gullies gulling gulper gulpers gumbos gummas
    gunboat gunlock gunnel gunny gunplay gunsel gunship gunsmith gunstock gunter gurged gurging
    gusset gussies gussy gusted gustier gutta guttate guttier guttle gutty guyed guying guyot
    habile hacek hachure hackle hades hafiz hagbut hagfish haggish hailer hairball hairband
    haircare hairlike hairnet hairpiece hairspring hairworm hajes hakim haled haler halest halide
    halms haloid halon halving halyard hamal hamate hames hammed hamming hammy handcar handcraft
    handhold handpick handsaw handsel handspring hangbird hangdog haply hapten hardboard hardbound
    hardpan hardstand hardtack hardtop harked harking harmer harper harpers harpies harpy hartal
    hashes hashing hashtag haslet haslets hassock hastate hasted hastier hasting hatbox hatcher
    hatpin hatted hatting haunter haver hawing hawker hayed hayfield hayfork haying hayward hazan
    hazel hazer hazers hazes hazmat headcase headcount headhunt headman headmen headmost headnote
    headpiece headpin headship headspring headstand headstock headstream hearken hearses hearted
    hearten heartier heaths hector heddle heeding hefted hefting heller helot helves hemin hemmer
    hempen henbit henpeck hepcat heptad herbage herby herder heths hetman hewing hexer hexes
    hexing hided hider higgle highball highborn highboy highchair highline highpoint hightest
    hijab hila hillock hilum hindmost hinging hinnies hinny hins hinter hinters hipbath hipbone
    hiphop hipness hipping hipster hispid histone hitcher hived hiving hoarded hoarder hobnail
    hodden hodman hodmen hogback hogfish hoister holdback holden hollies holmic holpen honker
    hooding hoofer hooper hooping hopple hopsack horsebox horsecar horseflies horseless horseman
    horsemen horseweed hotbox hotcake hotfoot hotkey hotness hotpot hotted hotting hounder
    housebound houseboy housecoat houseflies houseful houseless houseline housemaid houseman
    housemate housemen houseroom housetop howler huffish huger hulas huller hulling humbler humic
    hummer hummock humphed humphing humping humpy humus hunching huntress hurdler hurler hurley
    hurter hurtle hushes hushing husked husker husking hutches hydrous hyla hymned hymning hypha
    hyson ichor icier idem impost infill infix inkstand inline inmost inset intendment intension
    izard jabot jading jailing jakes jalap jampan japan japed japes japing jarful jasper jatos
    jaunted jaunting jazzes jebel jelling jennet jerkin jested jetsam jetted jetton jewfish jibbed
    jibbing jibing jiffs jigger jilting jinking jitney jitter jobbing joggle joinder jointed
    jointer jointing jolter jolters joltier jolting jolty josher joshes josses journo jousted
    jouster joyed joying joyless juba jugal jugful jugum juicer jujus jumbuck junker junkman junta
    juntas jupon jussive juster justest justle jutted karmic keening kelson kelter kelvin kenaf
    kendo kenned kenning kerbed kerned kerning kernite kersey ketches kevel keycard keystone
    keyway kibes kibosh kiddish kiddo kiddos killick kilned kilning kilted kilter kina kinas kinda
    kines kingbird kingcraft kingcup kingfish kingship kinin kinking kino kinos kipped kipping
    kishkes kited kitted kitting kittle knapped knavish knawel kneaded kneader kneads kneehole
    kneepan knelled knelling knicker knifing knishes knobbed knocker knotting knouts knurled
    knurling knurls kobo kolo koses koto lacer laches lacier lacy laddie laddies laddish laded
    ladler lagan laker laky lama lamas lambed lambing lamer laming lamming lampas lanate landform
    landman landmen landside lanker lankest lanner lanyard lapboard lapful lapin lappet lapser
    lapsing lapsus larboard larches larded larder larding lardon lardy largeness largish largo
    larked larker larking larval lasher lassos lated lateen lathed lathing latish latkes lats
    latten lauded lauder lauding lavas lavash laved laver laves laving laxer laxest laxness layup
    lazed lazes lazing lazying leacher leaches leaching leafing leaker leanest leanly leaper
    leashing leched leches lection lector leeboard leeward lefter leftest leges legist legman
    legmen legroom leman lemma lemmas lemming lemur lenis leno lensing lepta leptin lepton lesses
    letup levant levin lewis liber libra librate licit lidded lido lidos liefer liefest lifter
    ligan liger lightface lightproof lightship lightsome liker lilo lilos limbic limbos limbus
    limen liming limner limning limper limpest limpet limpid limply linage lindane linden lindies
    lindy lingcod linin linkboy linker linkman linkmen linnet lino linsang linstock lintel linter
    lintier linty liny lipid lippy liquate lisped lisper lissom listel lister litas lither lithest
    livest loaches loather lobar lobber lobo locos locus loden lofted loftier lofting logan loges
    loggy login logion logjam logon logy loment longship longsome looper looseness loped loper
    loping lopping lorded lording losel lota lotic louden loudness louses loutish louver lovesome
    lowborn lowboy lowed lowish lowland lowlife lowness lubing lucent lucking ludo luffas luffing
    luged luges lugger luging lulus lumen lummox lumpen lumper lumpers lumping lumpish lunate
    lunette lunger lungfish lungful lunging lupin lupus lurcher lurches lurching lurker lusher
    lushness lutist luxes maces macing mackle macle madden maddest madding maffick mages magpie
    magpies mags magus maiger maigre mailbag mailer mailshot maimer mainbrace mainspring maintop
    malar mallow mallows maltier malting malty malware mamba mambas mambos mammet mammies mammon
    mammy mams mana manas manat mandrel manful manlike manmade manna mannish manses manta mantas
    mantes mantic mantric maquis marbly marcel marcher margent marka marlin marline marls marly
    marten maser masher mashup masjid masker masques massif massy masted mastic mastiff matcher
    maters matier matin matting mattock matzo matzos matzot mauger mauler maunder maunds maven
    mavis maxes maxing mayflies mayweed mazard mazer mazers mazy mealies meander meandrous meanly
    meatier meatman meatmen meatus medius meeker meekest megass megrim megs melded melding melic
    meloid meltage melter melton mems menage mender mensal menses mercer merlin merlon merman
    mermen mesas meshes meshing mesic meson mestee metage metes metic metis mezzos mica midcourse
    midden midis midmost midship miffing miffs miking milden mildest mildish miler milker milkfish
    milkmaid milkmen millage miller millet milline milo milord milos milt milted milter milting
    milts mimer minder minim minion minster mintage minter minters mintier minting minyan misdeed
    misdid misdone mishmash mislay mislike mismate misname misnamed miso misplay misted misting
    miter miters mither mitis mitral mitred mizzen mizzle moaner moated mobbing mobcap mochas
    mocker modal modish moiler moiling moister moistest mojo mola molas molder moline molted
    molter moly monad monas montes moocher mooches moonfish moonless moonrise moonscape moonset
    moonshot moonstone moonwalk mooted mooting moper mopers mopes mopish moppet mordant mordent
    morion morions morphing moshed moshes moshing mosses motet motile motmot mottle moulded
    moulder moulding moulds moulted moulting moults mounded mounding mounter mounters mounties
    mouthpart mucin mucker mucose mudcat mudfish mudpack mudslide mudstone muffing muftis mugful
    muggle muggles mugshot mujik mulches muley mulish muller mullock mumbler mumbly mummer muncher
    munches muntin murphies murphy murther muser musette musher mushes musjid muskeg musky muslin
    musses mussy mustier muter muting mutism muzak muzhik muzzy myna nabbing nabob nacho naffer
    naffest naifs nailer naker namer napes napper nappers nappies nappy narcose nardoo nards narky
    nasion natal natant nates natron naughtier naves neaps nearness nebbish nebs needful needler
    negus nekton nelson neper nephron nerval nervine nerving nervy nesses netball netbook netty
    neuter neuters nevus newel newish newsboy newsgirl niches nicker nictate nidus niffy niftier
    nightcap nihil nimbi nimbler nimbly nimbus nimby ninon nipas nisus niter nitpick nitric nival
    nixes nixing nobble nocked nodal noddle nodus nogs nohow noisette noisome nolo noma nomad
    nomen nonage nones nonet nooses noplace norland norther northing noshed nosher noshes noshing
    nostrum notate notching notum noway noways nowise nubbin nubble nubile nuder nudes nudest
    nudnick nudnik nuggar nuking numbat numbest numbles numbly numen nurser nutcase nuthatch
    nutpick nuttier nutting nymphet oatcake obi obit octal octan octant octet offish ogler oiler
    oiling oka oldness olla ollas omer onscreen onside onsite ontic opal optime orca ordo oriel
    orlop ornis orzo oses osmic ostler otic ourself outman outmatch outmost outplace outplay
    outport outsource outvote ova ovate ovine ovoid oxbow oxford oyer pacer pachas pacier packer
    pacy padnag paintbox paler palest paling palish palling pallor pally palmar palmate palmer
    palming palmy palsies palter palters paly pampas pandit paned panfish panful panted pantie
    panties pantile panto pantos panzer panzers pappus parches parching parget parkin parky
    parlous parser parses partan parton parvis pasha pasquil passade passim passus pastern pastier
    pastil pastis paten pathless pathname patin patine patness patsies patsy patten pavan pavid
    pavis paxes paxwax payed payphone paywall peachy peacoat peags peaky pealed peals pearling
    peatier peaty peba pebas peckish pedate peeler peeper pekes pelage pelham pelmet peltate
    peltry pended penlight penman penmen penna penname pennate penning pennon penstock pentad
    pepping pepsin peptic peptize peptone perching permed perming perms perter pertest pesade
    pesty petter pettier pettish pewit phages phellem phenom phished phishing phocine phonate
    phonic phonon phonying photic pica picot picul piddle piddock piffle pigfish piggin piggish
    pika piked piker piking pilaf pilch pilchard pilfer pilling pillock pilous pilpul pily pimply
    pincher piney pinfish pinfold pinhead pinion pinions pinite pinker pinkest pinna pinnace
    pinnas pinnate pinnies pinny pinta pintle pinto pintos pinup pinwork pinworm pinyin pinyon
    pipage pipit pipkin pipped pippin pipping piquet piquing piso pita pitas pithless pitman piton
    pitsaw pitta pittas placer placet placid plagal plaided plainest plaints planar planer planing
    planish planking plantain plashed plashes plashing plasmas plasmic plasmid plasmin platen
    plater plats platy playboy playgirl playlet playlets playlist playsuit pleached pleaches
    pleaching pleader pleating plica plicate plighted plighter plighting plonking plucker plumper
    plumpest plumping plunker plunking plusher plushest poaches pocking poco podded podding pogo
    pogy pointier poises poisha polder poled polis poller pomade pomes pommel pones ponging pontes
    pontiff pontine ponying pooches pooching poods pooka pooping poorness popgun popish poppet
    popple popup porcine porgy portage ported portend portfire posher poshest poshness posies
    posit posset postbag postbox postboy postdate postern postie posties posy potage potash potboy
    poteen potence potful pother potman potmen potpie potpies potshot pottage pottier pottle potto
    pottos pouching pounder pouter poxes pranging prat prawning praxes precast preclean precut
    preform prelate presentment presort presser pressies pressor prestress preterm pretest
    pretreat pretreatment pricier priding priestcraft primo prinked prinker prinking prinks
    prisage proctor prodder proudness pruner pseudy puca puckish pudding puds puffin pula pulas
    puled puler pules puling puller pullet pulped pulping pulques pumas pumper puncher punctate
    pundit pungs punker punkest punned punnet punning pupal pupped pupping pureness purger purlin
    purling purpler pursy pushpin pusses puttier putto putzes quackish quaffer quaffing quaggas
    quahog quailing quainter quaintest quaked quamash quanta quantic quantize quartan quartern
    quartic quartile quarto quashes quashing queening queller quelling quencher quenches quenching
    querns quested quester quiches quieting quillet quillon quilter quinate quintan quintet
    quipping quipus quirking quirts quisling quizzer quoit quoited quoiting quoits quondam quoter
    rabbet rabbin rachis racier racon raddle radon rads raffish rafted rafter raga ragas ragbag
    ragman ragtop raider railcard railer railhead raiment rainband rainless rainproof rajes raker
    rakish rales ralline ramen ramjet rammer rammish rampart ramped ramping ramrod ramtil randan
    rankest rankle ranter ranters rappee rappel rappen raptor rareness rasher rashest rashness
    rasper rasping raster rasters rata ratal ratan ratbag ratel rater raters ratoon rattan ratter
    ratters rattier rattish rattoon ravel raver ravish rawest razes razzed razzes razzing reacher
    readapt readies readopt realer realest realness reamer reaming reata reaver reaves reaving
    reawake reawoke rebid rebus recode recomb recto rector rectrix rectus recut redbird redbreast
    redbud redbug redcap redcoat redden redfin redfish redtop redux redyed redyes reefing reeker
    reeler reenter reeves reffing refix refold regex regrade regrown rehang reheard rehouse rehung
    reinfect reinfuse reinsert reinter reinvest rejig rejudge relight reline relist remap remex
    remindful remix rems rends renes renin rennet rennin rentier repack repass replant resat
    reshes reship resit respire restack restage rester restitch restive retest retie retold retook
    retouched retries rets retted retting revet revoice rewed reweigh rhachis rhesus rhinal rhombs
    rhombus riband ribber ribcage riced ricer rices ricing ricked ricking rident rifer riffing
    riffle rifler rifted rifting rigger rightest riling rilled rillet rimed rimes rimless rimple
    rimrock rimy ringster ringtone rinses rinsing ripcord riper ripper rippers ripsaw rishi rived
    riven rives riving roadbed roadhog roadhouse roadshow roadstead roamer roaster roband robing
    roble robles robomb rochet roger roguish roiling roister romper rompish rondel rondos roods
    rooking roosted roper ropers ropy rosette rosin rostrate rota rotas rotgut rotter rotters
    rouble rouging roundest roundhouse roundness rouser rouses rousted rousting rover roves rowel
    rowlock rubdown rubel rubes ruble rubstone ruched rucked rucking ruddle ruddock ruffed rugger
    rumal rumba rumbas rumbler rumbly rumen rummer rumple rumpling rumply rundle runic runless
    runlet runlets runnel runtier runtish runty rupee ruses rusher russet rustier rustproof
    ruthful ruths rutile rutted ruttish sabbath sabin sables sabot sabra sachem sachet sacker
    sades sadhus sagas sager sago sahib saiga sailboard sailfish sailplane sakes sakis salep
    sallet sallets sallies sallow saltant salter saltern saltest saltine saltire saltish saltus
    salver salving samba sambar sambas samiel sampan sandbar sandflies sandhog sandmen sandstone
    sanjak sapid sapping sards sarky sarnie sarnies sarsen sartor sasin sasses satang sated sateen
    satem sating satyr sauger savate sawfish sawflies sawyer saxes sayer scabble scamps scandent
    scansion scanted scanter scantest scantier scanties scanting scanty scarper scarpers scarping
    scathed scatty scauper schoolbag schoolbook schoolchild schoolman schoolmate schoolmen scoffer
    scolder scooper scorches scorner scorning scorper scotching scouter scowler scowls scrags
    scrambler scrapper scrappers scrapple scrapyard scratcher scrawling scrawly screaked screaking
    screaks screener screenshot screwworm scrimper scrimping scrouge scrumped scrumping scrumps
    scrums scrunches scrunching scudo scuffing sculler sculling sculpsit sculptress scumble
    scumbles scummy scups scuta scutage scutate scuts scutter scutum seabed seabird seaborne
    seadog seafront sealer seamark seaming seamount seamy seaplane seaquake searcher seascape
    seawall seaward seaware seaway seaways sebum secant sedum seemly selfness selsyn semis sendal
    senna sennight senor sentience sentient sepal sepalled sepses septa septal septate septet
    septime septum sequent serval sestet seta setscrew settee shacked shacking shackle shadbush
    shadchan shaddock shaduf shafting shaley shalloon shallop shallot shalom shamble shambled
    shammed shammer shamming shamrock shamus shantung shaper shapers sharked sharpie sharpies
    sharping shaved shaving shebang sheeted sheeting shekel shelduck shellac sheller shelly shelty
    shewed shewing shielder shifter shimmed shimming shinbone shindies shindy shinned shinnies
    shinny shipborne shipman shippen shipper shippers shirker shirted shirting shivas shoaling
    shogun shopfront shoppes shortbread shorties shortish shorty shotten shouter showbread
    showground showpiece showplace shrieker shriller shrillest shrilling shrimper shrimping
    shrinker shrouding shucker shunting sibs sibship sicking sickish sidle sifter sigil sika
    silage sild silds sillies silted siltier silting silty silvas sima simar simba simper simpers
    sims sinew singsong sinless sinter sinters sippet sisal sises siskin sited situs sixfold sizer
    skeeter skegs skepful skeps sketcher skiffle skilling skimmer skinful skinks skinner skintight
    skipjack skippet skirled skirling skirls skirted skitter skitters skittle skycap skyjack
    skyscape skywalk skyward skyway slackest slanging slasher sleeker sleekest sleeking sleeted
    sleeting slicer slickest slicking slighter slighting slightness slingback slinger slipcase
    slippage slippy slipstream sloshes sloucher slouches sloven slubs slumdog slumlord slummer
    slummy smacker smarms smarted smarting smartness smasher smelted smelter smelters smirched
    smirches smirching smirker smocking smolder smooches smoulder smugger smutched smutches
    smutching snaffle snailing snapback snarler snicking sniggle snoods snooks snooper snorter
    snorters snottier snowbird snowcap snowdrift snowdrop snowfield snowline snowmen snowshed
    snowslide snuffer snuffing snuffle snugger soaker soba socage socle sodded sofar soffit
    softback softbound sola solan solder soldo soled soling solon solus solute soma somas someway
    someways somewise sonant sones songful sonly sonnies soother sopor sorbed sorbing sorbs
    soreness sorgo sorter sorters sortie sortied sorties sotted sottish souled soundbar soundbite
    soundboard soundcheck soundest soundness soundproof soundscape soundstage souping souter
    souther southing southland spacer spacier spader spading spandrel spanged spanging spangs
    spanker sparge sparger sparker sparky sparling sparry sparser spartan spawner specking speckle
    spectate speeder speedster spelter spica spicate spicer spicier spieler spieling spiffing
    spiked spiller spindly spindrift spinet spinner spinney spinous spiny spital splasher
    splendent splendrous splenius splinted splinting sploshed sploshes sploshing splotch splotched
    splotches splotching sponger sponson spontoon spoofing spooler spooling spoony sported
    spottier spouted spouter spraddle sprags spraining sprats springer sprinted sprits sprogs
    spurner spurning spurted squareness squawker squeaker squealer squiggle squills squinched
    squinches squinching squinter squintest squirmer squishes stabler stably stacker stagy staider
    staidest stainer stairhead staler stalest staling stalky stamen stamin stamper stampers
    stancher stanches stanchest stanching stander stannic stannite stannum starches starching
    stardust starfruit starker starkest starless starlike starling stases stashes stasis statant
    stater statism statist stative stator staving stayer steadied steading stealage stealer
    steepest steeping stellate stenches sternest sternum stertor stewpan stickle stiffest stiffing
    stiller stillest stilling stinker stinted stinter stinting stipple stirks stirps stitcher
    stoker stoma stomas stonking stony stopple stouter stoutest stouts stover straggle strainer
    stranding streaker streambed streamer streamlet streamlets streamway strickle strictness
    strops studbook stuffer stumbler stumer stumpage stumper stumpers stumping stumpy stylet
    stylets stymies subdeb subgroup subhead subjoin submiss suborn subsense subserve subtend sudor
    sudsy suffuse sulcate sulcus sulky sullage sullies sully sulphone summa summat sunbath sunbed
    sunblock sunbow sundeck sunder sundog sunfish sunhat sunless sunned sunproof sunroom sunstone
    sunstroke sunsuit sunward sunwise supping surds surfbird surfboat surgy surprint surtax suslik
    sussed susses sussing sutler swacked swamper swanker swankest swanking swarded swashed swashes
    swashing swathing sweatband sweatbox sweatsuit sweeny sweetbread sweetcorn sweeting sweetish
    sweetshop sweller swellest swelter swifter swimwear swinger swipple swisher swishest switcher
    swizzle swooshes swooshing swound tabbies tabbing tabby tabes tabor tacet taches tacker tacket
    taction taipan taka tala talas talion tallage tallish talon taluk talus tamale tamis tamped
    tamping tana tanbark tankful tannage tannate tannic tannin tansy tanto tantric tapas tappet
    tarns tarpan tarsal tarsus tarted tartest tarting tartrate tarty tarweed taser tasses tasset
    tatted tatter tatters tattie tattier tatties tatting tatty taunter tauter tautest tawny taxer
    taxman taxmen teabag teacake teahouse tealight tearless teasel teashop techy teds tegmen
    telfer telic telnet telson tempos tenace tenches tendance tenno tennos tenon tenpin tenser
    tensing tensive tensor tentage tenter tenters tercel tercet tergal termor ternate terra terret
    terry terser tertial tesla teslas testa testas testate testier teston teths texted thaler
    thanes thatches thatching thebes theca thenar thermic therms thetas thetic thickish thills
    thinness thinnish thirlage tholes tholos thralling thrasher thrashes threader threshes
    threshing thrips throated thronging thrushes thruster thudded thwack thyrsus tical tided
    tiding tiffed tiffin tiffing tigon tildes tiler tilter tilth timbal tinder tined tinging
    tinner tinning tinny tinpot tinsmith tinstone tinter tinware tipcat tippet tippex tipple
    titches tithed tither tithing titis titrate toddies toddy todies tody toecap toiler tokay tola
    tolan tolar tolus tombed tombing tonal tonging toning tontine tonus tony tooted tooter
    toothlike topaz topcoat toped topee toper topers topes tophus toping topmost topnotch topper
    toppers topside toques torpid torpor torsion tortile tortious toshes tossup toted toter tother
    totted totting tourney touter towboat towhead towline towpath tractate tractile tractive
    tragus traject tramcar tramline tramper trampers trampler tramroad tramway tramways tranches
    transfix tranship transom trapan trashes travail trawling treacle treader treadle treater
    trembler trembly trencher trenching trended trending tresses tricker tricorn tricot trifler
    triform trigon trilbies trilby trilling trimer trinal triplane tripling triply tripper
    trippers trippet triter triton trivet troated troating troats trocar trogon troller trona
    trooping troubler trouper troupers trouping trover truckle trunking trusses trussing truster
    trustful trustier truther tryma tryster tubal tuber tubful tuchun tucker tucket tufa tufted
    tufter tufting tumid tums tunnies tunny tuple tuques turbid turbit turbo turbot turdine
    turfing turfy turgent turndown turnon turnstone turps tushes tusker tussis tussock tutted
    tutting tuttis twanged twanging twangs tweedy tweeness tweeny tweeted tweeter tweeters
    tweeting twerk twerked twerking twerks twiddle twiner twinging twining twinning twinset
    twirler tympan typal ullage ulna ulnar ulster umbel umber umbles umbra unfix unhealthful
    unhouse unis unlay unlive unmake unman unmindful unsent unstop unvoice upcast updo upmost
    uprise upspring upstroke urger usance utile vagal vagus vainer vainest valance valence vales
    valgus valiance valine valses valval valvate valving vamper vamping vampish vanda vandal
    vandas vanned vanning vanward vaped vapes vaping varlet varlets vaster vastest vatic vatted
    vatting vaulter vaunted vaunter vaunting veges vela velar velate velds vellum velum velure
    vena vended venin ventage venter venters ventral verbid verdant verger vernal verso vertex
    vertus vervet vesper vespers vespid vesta vestal vestries vestry vesture vetches veter vetting
    viced vicing viewless viking viler vimen vina vinic vino vinous virga virion virions virtus
    vised vises vising vita vitric vittle vivas voguish voider voiding volant volar volplane
    volute volvas vomer votive vulgus vulval wacker wackest wader wadis waftage wafture waggish
    waifish waitron waled wales waling walling wanly wantage warbler warded warder wardship
    warless warmish warmness warpage warper warplane wartier warty washboard washday washin
    washtub wastage waster wastrel watcher waxwing wayless weakfish weaner webby webcam webcast
    webfoot webpage wedder weeder weeper welkin wellie wellies welling welly welshed welsher
    welshing welted welter welters welting wended wending weskit wester westers westing wether
    wetness whacker whams wharves wheeler wheelhouse wheelman wheelwork whelked whelmed whelming
    whelms whelping whenas whicker whiffet whiffing whiffle whiled whiling whilom whimsies whinger
    whippet whirler whished whishing whistler whited whiten whither whiting whitish whizkid
    whooper whoopers wicker wides wielder wienie wienies wikis wildcard wildfire wilding wiled
    wiling willet wimped wimping wimpish wimple winching windage windbag windbound windburn winder
    windproof windscreen windstorm windtight wingback wingding winger wingtip winker winkle wisen
    wises wisher wising withed withing witted witter witters wittier witting wived wiving wizen
    woaded wonted woodbine woodblock woodcraft woodcut wooding woodman woodmen woodnote woodprint
    woodsy woofed woofer woofing wooled wools wordage workbag workfare workhouse workmate
    workpiece worksite workspace worktop wormy worser worsting woulds wounder wowing wraiths
    wrasses wrathful wreaker wreathing wrested wrester wresting wristband writhen wronger wrongest
    wronging wuss wusses yamen yapok yapon yashmak yawed yawing yawner yeaned yeaning yeans
    yearlies yearling yearlong yentas yeses yessed yessing yester yetis yipped yipping yobbos
    yoking yonks yorker yowled yulan yurts zaffer zaftig zarfs zayin zazen zebus zenith zeta zetas
    zibet zigs zinging zippy zither zitis zizith zoftig zonked zoster zounds`.split(/\s+/),
);
