/**
 * Common first names of one syllable that are no words: good nonsense is never
 * somebody's name. From memory, of many places; first names only, and a name
 * that is also a word (*Jack*, *Will*) is judged as the word. Sorted.
 */
const FIRST_NAMES: ReadonlySet<string> = new Set(
  `abe al ann anne art barb bart bea ben beth bing blair blake blanche bo brad bree brent bret
   brett britt brock bruce bryce burke burt cal carl chad chan charles chase cher chet chris chuck
   claire clare clark claus clay clem cleve clint clive cobb cole conn craig curt dale dan dane
   dave dean deb dee del denise des dev dex di dina dirk dix dom don donn doug drake drew duane
   dwight earl ed elle em eve fay finn fitz flo floyd fran frank fred fritz gabe gage gail garth
   gene george ger gil glen greg griff gus gwen hal hank hans hayes heath hodge holmes holt hugh
   hy ian ike jade jake james jan jane janet jay jean jed jeff jen jer jess jill jim jin jo joan
   job joe joel john josh joyce juan jude jules june kai kane kate kay keith ken kent kev kim
   kip kirk kit knox kurt kyle kym lane lars lea lee len leo les lew lex lin linc liv liz lloyd
   lou lu luis luke lyle lynn mac mack mae mag mal marc marge mark matt maude max meg mel mick
   mike min mitch mo moe moore morse mort myles nan nat nate neal ned neil nell nick nils noel nor
   nyle ole pam pat paul peg penn pete phil pip quinn rae raj ralph rand ray reese reg rex rhys
   rick rob rod rog ron rose ross roy rube russ ruth sal sam sarge saul scott sean seb seth shane
   shaun shaw shawn shay shel sid sioux sloan sol spence starr steve sue sven tad tam tate ted
   tess thor thorpe tim tod todd tom tran trent trey trish troy ty val vern vi vic vin von wade
   walsh walt wang wayne wells wes win wynn xu yale yan york yu zac zach zack zak zed zeke zoe`
    .split(/\s+/)
    .filter(Boolean),
);

/** Whether a spelling, lower case, is a common first name. */
export function isFirstName(word: string): boolean {
  return FIRST_NAMES.has(word);
}
