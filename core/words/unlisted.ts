import { UNLISTED_LONGER } from './unlisted-longer.ts';

/**
 * Short words that the word list does not have and that are heard as words all the same: rare,
 * dialect and British words (those of SCOWL's sizes 10 to 70 that a board could make, but for some of
 * three letters that no class would know), and from memory abbreviations, names of things and people,
 * comic sounds and well-known invented words. Shown as nonsense they would be no nonsense. Sorted.
 */
const UNLISTED: ReadonlySet<string> = new Set(
  `bairn bam bant bap barm bess bev bez bezz bice bield bine blag blain blat blate blear bleb blem
    blench blime bling bloop blop bludge boart bodge bome bon boop borg bork bort bosk boz brant
    brea breeb breve brie brill brit broe brose bruin brut brux bup cafe cark cass cate cath
    celt cess chale cham chape chaw chazz chem chile chimb chinch chine chirk chirm chise chite
    chive cho chon chonk choy chub chud chuff chyle clave clepe clime cline clo clomb clomp
    clonk coit colm coof corf cose coss couth coz coze crake cratch cred cree creel crine croft
    cronk crouse cruck crump crunk cuke culm curch cusk cutch cuzz cyme daff dag darg dass dat
    datch daw dax dem der dess dev dib diff dight doil doit donk dorp dow doy draff draught
    dreck dree dreg drek drut dunt dush dutch fadge faff farl fash fass fauve faw feb fem feme
    feng fid fidge fing firth fitch fiz flam flanch fleam fledge fleer fletch flib flitch flong
    flub flump foin foo foor forb foy frack frag frap frat frit frith froo frosh frow froy frue
    frug fud fuff fum fung gack gam gamb gamp gar gath gean ghat ghee gie gite glaive glebe
    gleet glim gloam glom glub gluck goff gonk goop goot gop gork goss gran greave gree grey
    gride grift grig grith gronk grot grum guck gud guib gur gurge guss guv halm hame han harl
    heb heme hent herm hern hest het heth hob hoff holm holp hon hong hoon houn hoy huck hup
    jaff jag jape jarl jass jat jav jeb jeck jefe jeg jel jid jiff jit joff jook jop jor jose
    joss jow jube jud juke jun jung juss keb kedge keef keff kell kelt kep kerf kern ket kev
    kibe kief kier kine kish knar knish knop knout knur knurl krunk lar lat lave lear leb leer
    leet ler letch lev lier loach loke lub lunk lur lut luv lyn mage malm mang marl maun maund
    meck meff mell mex mezz miff ming moke mome moof moog mook moop mould moult moy mump mung
    mure muzz myn nabe nad naff naif nair nang nar nard nass natch nath nazz neff ness nev niff
    nile ning noil nom nong nope nout noy nuff nuss nuth palp parve pash peag peart peb ped perm
    pern pesh pezz phage pib pice piff pirn pish plage plaint plash pleach plebe plew plier
    ploce ploo plork po poe pome pone pood pooge poont poot poult powl prate prese prew prink
    prise prob prole prosh prue puce pud pule pung quag quant quass quean quern quirt rad rafe
    raff ralf rass razz rea reave ree reest reeve rell rem resh rete rey rhea rhomb rish rith
    rive rom rond rosh roup rud sabe saith sar sard scamp scape schmo schmoe scop scrag screak
    scroop scrum scrump scup scut scutch scute seck seng shan sheave shem shemp shen shend shep
    shick shitch shive shmo shon shonk shool shrieve shrike shrive shroff shub shud shug shum
    sib sim skean skeg skelp skep skink skint skirl skite skive slake sleave slier sliest slub
    slutch slype smalt smarm smaze smee smef smew smirch smolt smoosh smote smurf smush smutch
    smuve snarf snark snart snath sneck snig snoo snoof snook snozz soave sook sorb sorn sosh
    spag spall spang spelt spile spilt spline splish splodge sploosh splore splosh spoilt spork
    sprag sprat spriest sprit sprog sprue spruik spume squame squee squill squinch stang steeve
    stim stipe stirk stob stodge stonk stook stope stoss stound stour stoush strake strath stree
    strick strine strop stroud strow stroy stull sud suint swage swale swart swarth swash swink
    swizz swole swuck syce tace taff tain targe tarn tash tass taw tay taze teck ter teth thad
    thar thebe theer ther thier thill thoe thom thon thonk thorp thow thoze thrave thrawn threap
    thunk thur tig tige tish titch tiz tizz tonk tope trad trass trave treen tret trike trine
    troat tron trope trull tud tway twix twonk twoo vade vair vang varve vax veg veld vell ven
    veng ver vick vid vide vig vip vire vit vive viz vo voe vole vom voo vouge vowl vox voy wabe
    wadge wame wast waw weer weest wersh wert wess wharve whelm wibe wike wive wodge wong wook
    wort wraith wud wug wum wump yag yair yar yare yass yean yeb yer yick yike yikes ying yipe
    yiss yol yoof yoor yoot yur yuss zag zan zane zarf zat zax zazz zeb zen zep zig zill zin zob
    zod zoon zoot zot zowl zuke zune`
    .split(/\s+/)
    .filter(Boolean),
);

/** Why such a word is no nonsense, as a teacher says it. */
export const UNLISTED_REASON = 'It is heard as a word, though the word list does not have it.';

/** Whether a spelling, lower case, is such a word: of one beat or, with UNLISTED_LONGER, of more. */
export function isUnlistedWord(word: string): boolean {
  return UNLISTED.has(word) || UNLISTED_LONGER.has(word);
}
