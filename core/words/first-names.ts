/**
 * Common first names of one syllable that are no words: good nonsense is never
 * somebody's name. From memory, of many places; first names only, and a name
 * that is also a word (*Jack*, *Will*) is judged as the word. Sorted.
 */
const FIRST_NAMES: ReadonlySet<string> = new Set(
  `abe al ann anne art barb bart bea beth blake blair bo brad brent brett britt brock bruce bryce
   cal carl chad chase chet chris chuck clark claire clay clint cole craig curt dale dan dane dave
   dean deb dee del denise des dev dex dina dirk don donn doug drew duane earl ed elle em eve
   finn fitz flo floyd fran frank fred gabe gail gene george ger gil glen greg gus gwen hal hank
   hans heath hugh ian ike jade jake james jan jane janet jay jean jed jeff jen jer jess jill jim
   jin jo joan job joe joel john josh jude jules june kai kate kay keith ken kent kev kim kip kirk
   kit kurt kyle kym lane lars lea lee len leo les lew lex lin linc liv liz lloyd lou luis luke
   lyle lynn mae mag marge marc mark matt maude max meg mel mick mike min mo myles nate ned neil
   nell nick nils noel nor nyle pam pat paul peg penn pete phil pip quinn rae raj ralph ray reg
   rex rhys rick rob rod ron rose ross roy russ ruth sal sam saul scott sean seb seth shane shaun
   shay shel sid sue sven tad tam ted tess tim tom tod todd tran trent trish troy ty val vern
   vic vin von wade wayne wes win xu yan yu zac zach zak zed zeke zoe`
    .split(/\s+/)
    .filter(Boolean),
);

/** Whether a spelling, lower case, is a common first name. */
export function isFirstName(word: string): boolean {
  return FIRST_NAMES.has(word);
}
