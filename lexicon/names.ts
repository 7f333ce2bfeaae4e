/**
 * Words that are also names. SCOWL lists only what a dictionary prints in lower
 * case, but its larger classes hold oddities that readers know only as names
 * (*phoebe*, a bird; *jasper*, a stone). Reviewed by hand.
 */

/** SCOWL class up to which a word that subtitles usually capitalize is kept. */
const TRUSTED_SIZE = 40;

/** From the larger classes: words to keep although subtitles capitalize them. */
const KEPT: ReadonlySet<string> = new Set(
  `abracadabra achoo addle airman airmen airways albatrosses alder anaconda anemometer antarctic
   aqua archangel arrowhead arty aster avenger babel balderdash barker barrow barrows batten batty
   beau beck beefsteak belle berg biff bight birdie birdsong boatman bogey bole boles boll bosh
   bracken braid braille brier brigadier buccaneers buckler buckwheat bullseye bunny bunt burl
   carver castor cay celesta centaur centaurs centurion cheerio chimera cirque clews cloverleaf
   compendium coots corolla cote councilwoman cove craven cress crusher cupid cutlass cyan cyclops
   dace dado daffy dahlia dairymen dale dales dang dangler dasher dateline dell digger ding dingo
   dipper dippers dirk doc dodger dodgers dory dotty dowager draper drapers duh dumbo earthlings
   echelon emery emu energizer equalizer esplanade fairways fallow fang felicity fie fife finch
   fink fjords flagstaff flan flax flotsam flywheel funks gibbon gibbons gird glider gobbler
   goldfinch google grail grange greenwood griffin grouse guardsmen haft haggis hake halcyon hank
   hap harbinger haw hawthorn hedgerow highness hogan hoke hominy honeybees hoover hopper hoppers
   hornpipe horsemen howler huckleberry humph humus huntsman hydra iceman inquirer jasmine jig
   josh joule junco katydid ketch kip laird lam lama lamplighter lancer larch lark lea lees
   lemming linden longhorn lough marauders marchers marlin marten mayflower mead meadowlark meany
   merino mesa midge midland milch moonstone moray morrow motes mucky mulberry muskrats myrtle
   naan nautilus nix och oddball oh ooh osprey outfitters overlord oxbow oxford parry pathfinder
   peachy phew philharmonic pic pied pinto pip piper pippin pita pix plowman pong pony pooh poplin
   poppa pow prancer pshaw pug quid quin quince quint quoth raceway rah rampart ramparts ranger
   raptor raptors rawhide redbird reedy rick ricks riff rime ringer ringers ripper roadshow roan
   rood rosebud rosette rover rusk russet salamanders sander savanna scat scud scull seaway
   sentinel shad shah shearer shim skittle skittles skylark slasher sloe slough smiley smoothie
   snapdragon sniffy snoopy snowshoes sonny sower spam spartan spinner spinney spiny sprite
   stardust starling steed stein steppe stile stiles sturgeons sully sunfish sunspot superman
   superwoman swain swede tallyho tam tattler telly tench thanksgiving thrall thrasher thruway
   timberland titan titans toastmaster tom toms tosh trey tribune trotter tuber tunny turbo tusk
   tut twain tweedy twiggy twill twister undersecretary unpainted unsmiling upland uplands vale
   valedictory viking vikings wallaby walleye watcher watchers weevil weir wen whistler whit
   whiting wiggly wight wintergreen wold wolverine woodman wormwood yahoo yang yea yikes yin yip
   yow yuck yuk yup zed zephyr zilch zinnia zippy`
    .trim()
    .split(/\s+/),
);

/** Names, Greek letters, brands and fragments that the smaller classes let through. */
const DROPPED: ReadonlySet<string> = new Set(
  `ain ares bates betas betcha brinks burrs chars chi cox croft crofts cs cums daemon daemons deb
   deming drake dunno eh em ergo es et gaucher gimme gonna gotcha gotta hays hes hicks ids ifs
   innit inputted japan japans khan khans kinda la lacy lemme ls lu mars mas meg mi mics mien
   miller millers ms mu nu numbest offed payed phi rev rho sears serge sh shes sikh sim sims sol
   ti tis torsi trey ts uh um wanna wells hajj oles pshaw shoppes welsh welshed withe welshing westerner whatcha xi yer yest`
    .trim()
    .split(/\s+/),
);

/** Short words that are words: every other spelling of one or two letters is a symbol or abbreviation. */
const SHORT: ReadonlySet<string> = new Set(
  `a ad ah am an as at ax be by do ex go ha he hi ho id if in is it lo ma me my no of oh on or ow
   ox pa pi so to up us we ye yo`
    .trim()
    .split(/\s+/),
);

/** Whether a spelling is kept as a word, given its size class and whether subtitles capitalize it. */
export function isWordNotName(
  word: string,
  size: number,
  capitalized: boolean,
  stems: ReadonlySet<string>,
): boolean {
  if (word.length <= 2) return SHORT.has(word);
  if (!/[aeiouy]/.test(word) || DROPPED.has(word)) return false;
  if (!capitalized || size <= 20 || KEPT.has(word)) return true;
  if (size > TRUSTED_SIZE) return false;
  return stems.has(word) || size <= 35;
}
