/**
 * Meanings of our own, in plain words that a teacher can say aloud to children:
 * the sense of a child's world first. For the words that drills show: each that
 * 2,405 drills of seeds by chance, at every step of our order from the ninth on,
 * showed as a real word has one, but *sot*. Also where WordNet's first fit sense
 * is another, is cut, or is unkind.
 * Written for this project by a language model, read by no practicing teacher
 * yet. At most 60 signs each. Sorted.
 */
const TEXT = `
ail: to feel sick
babble: to talk with no sense
babe: a very young child
back: the side behind
backed: moved the other way; helped someone
backing: moving the other way; helping someone
backs: moves the other way; the sides behind
bacon: salty strips of meat from a pig
bad: not good
badge: a small sign that you wear
bag: something to carry things in
bagging: putting things in a sack
bail: to scoop water out of a boat
bait: food on a hook to catch fish
bake: to cook in an oven
baking: making bread or cake in the oven
bald: with no hair on the head
bale: a big bundle of hay tied up
baling: tying hay up in big bundles
balk: to stop and not want to go on
ball: a round thing to throw or kick
balm: a soft cream that soothes your skin
ban: to say that something is not allowed
band: people who play music together
bang: a sudden loud noise
bank: a place to keep money; the side of a river
banks: the two sides of a river; places to keep money
banning: saying that something is not allowed
bar: a long, thin piece of metal or soap
barb: a sharp point that holds a hook in place
bard: someone who sang old stories long ago
bare: with nothing on
barge: a long, flat boat for heavy loads
bark: the sound that a dog makes; the skin of a tree
barn: a big farm building for animals and hay
bars: long pieces of metal or soap
basal: at the bottom
base: the bottom part; you run to it in a ball game
bash: to hit hard
bashed: hit hard
bashes: hits hard
bashing: hitting hard
basin: a wide, deep bowl
basing: building on
basis: what something rests on
bask: to lie in the warm sun
basked: lay in the warm sun
bass: a very low voice; a fish
basses: people with very low voices; kinds of fish
bat: a stick to hit a ball; an animal that flies at night
bath: a wash in a tub of water
baths: washes in a tub of water
bats: animals that fly at night; sticks to hit a ball
battle: a long fight
bawl: to cry loudly
bay: a place where the sea reaches into the land
be: to live; am, is and are come from it
beach: sand along the sea
bead: a small ball with a hole to string it
beak: the hard mouth of a bird
beam: a long, thick piece of wood; a line of light
bean: a seed that you can eat
bear: a big furry animal that sleeps all winter
beard: hair on a man's chin
bears: big furry animals that sleep all winter
beast: a large animal
beasts: large animals
beat: to win; to hit again and again
beating: hitting again and again; winning
beats: hits again and again; wins
bed: where you sleep
bedding: sheets and blankets
bee: an insect that makes honey
beef: meat from a cow
beep: a short, high sound
beeper: a small machine that makes a short, high sound
beeping: making a short, high sound
beeps: makes a short, high sound
bees: insects that make honey
beet: a dark red root that you can eat
beets: dark red roots that you can eat
beg: to ask and ask for something
begging: asking and asking for something
bell: it rings when you swing or press it
bells: they ring when you swing or press them
belt: a strap that holds up your pants
bench: a long seat for many people
bend: to make a curve in something
bending: making a curve in something
bends: makes a curve in something
bent: not straight
berm: a long, low wall of earth
best: better than all the others
bests: does better than the others
bet: to say what you think will happen
bets: says what you think will happen
bib: a cloth that keeps a baby's shirt clean
bid: to offer to pay for something
bidding: saying how much you will pay
biding: waiting for the right time
bier: a stand for a box that holds someone who died
big: large
bight: a wide bay; a loop in a rope
bike: it has two wheels and you push its pedals
biking: going on two wheels with pedals
bill: a paper that says what you must pay; a bird's beak
billing: asking for money on paper
bin: a box to keep or throw things in
bind: to tie together
bird: an animal with feathers and wings
birth: when a baby is born
bison: a big, shaggy animal like an ox
bit: a small piece; used the teeth
bite: to cut with your teeth
biting: cutting with the teeth
bits: small pieces
biz: short for business
blab: to tell a secret
black: the darkest color
blacked: made dark as night
blacks: makes dark as night
blade: the sharp part of a knife; one leaf of grass
blame: to say who did something wrong
bland: with hardly any taste
blank: with nothing on it
blanks: empty places to write in
blare: to make a very loud sound
blast: a strong burst of wind or noise
blasted: burst with a loud noise
bleaches: makes white
bleaching: making white
bleat: the sound of a sheep or a goat
bled: lost blood
bleed: to lose blood
bleeding: losing blood
bleep: a short, high sound from a machine
blend: to mix or join smoothly
bless: to ask for good to come to someone
blesses: asks for good to come to someone
blessing: a wish for good to come
blew: pushed air out
blink: to shut your eyes and open them fast
blinking: shutting your eyes and opening them fast
blip: a tiny dot of light or a tiny sound
bliss: being as happy as can be
bloat: to swell up
blob: a soft lump with no shape
block: a toy to build with; to stand in the way
blog: pages on the internet where someone writes
bloke: a man, as people in England say
blond: light yellow, of hair
bloom: to open, as a flower does
blot: a spot of ink
blouse: a shirt for a girl or a woman
blow: to push out air
blown: pushed along with air
blows: pushes out air
blue: the color of the sky
bluff: to act as if you are sure when you are not
bluffed: acted as if sure
blunt: not sharp
blur: something that you cannot see clearly
blurb: a few words on a book that tell what is in it
blush: to get red cheeks because you feel shy
boar: a wild pig
board: a long, flat piece of wood
boat: it carries people on water
bob: to move up and down
bobbin: a small roll that thread is wound on
bobbing: moving up and down
bog: wet, soft ground
bogging: getting stuck in wet ground
boggle: to be so surprised that you cannot think
boil: to heat water until it bubbles
bold: brave
bole: the trunk of a tree
boll: the part of a cotton plant that holds the seeds
bolt: a metal bar that keeps a door shut
bond: what holds people together
bone: a hard part inside your body
bonnet: a hat tied under the chin
boo: a word to scare someone
book: pages with words and pictures
boom: a deep, loud sound
boor: a rude person
boost: a push up
boot: a shoe that covers your ankle
booth: a small place to sit, buy or vote
bop: to dance
bopping: dancing
bore: to make someone tired by being dull
born: brought into life
boss: the person who tells others what work to do
bossed: told others what to do
both: the two of them
bottle: a tall jar with a narrow neck
bought: got with money
bound: to jump along; tied up
bout: a short time of being sick; a match
bow: two loops in a ribbon; it shoots arrows
bowl: a deep round dish
bows: loops in ribbons; bends to thank the people who clap
box: it has four sides, a bottom, and often a lid
boy: a child who will be a man
brag: to say how great you are
brain: the part in your head that thinks
brake: the part that makes a bike or car stop
bran: the outside of a grain, good to eat
branch: an arm of a tree
brand: the name of the maker
brass: a yellow metal for horns
brat: a child who behaves badly
brave: not letting fear stop you
brawn: strong muscles
breach: a hole broken in a wall
bread: a food baked from flour
bream: a kind of fish
breath: air that goes in and out of you
bred: kept animals so that they have young
breed: one kind of dog, cow or horse
bribe: money given to make someone do wrong
brick: a hard block to build walls with
bride: a woman on her wedding day
bridge: a road over water
brief: short
brig: a ship with two masts
bright: giving a lot of light
brim: the edge of a cup or a hat
bring: to come with something
broke: came apart
brook: a small stream
broom: a brush on a long stick
brought: came with
brow: the hair over your eye
brown: the color of chocolate
brows: the lines of hair over your eyes
brunch: a meal late in the morning
brunt: the hardest part of a hit
brush: a tool with hairs to clean or paint with
brute: someone strong and cruel
bubble: a ball of air with a thin skin of soap
buck: a male deer
buckle: it closes a belt
bucks: male deer; dollars
bud: a flower that is not open yet
budding: starting to open, as a flower does
buff: to rub until it shines
buffs: rubs until it shines
bug: an insect
bugging: making someone a little angry
bulk: the largest part
bump: to hit against; a small lump
bumped: hit against
bumps: small lumps; hits against
bun: a small round bread
bunch: things held or tied together, such as grapes
bundle: things tied together
bunk: one bed above another
bunked: slept in a bed over another
bunker: a safe room under the ground; sand on a golf course
bunking: sleeping in a bed over another
bur: a seed that sticks to your socks
burn: to be on fire
burnt: hurt or made black by fire
burst: to break open suddenly
bus: it carries many people along the road
bused: took many people along the road
buses: they carry many people along the road
busing: taking many people along the road
buss: a kiss
bust: to break
buster: someone who breaks something
busting: breaking
busts: breaks
but: it joins two things that do not match
buzz: the sound that a bee makes
by: close to; next to
bye: what you say when you leave
cab: a car with a driver that you pay for
cackle: to laugh like a hen
cad: a man who does not act well toward others
cage: a box with bars for an animal or a bird
cake: a sweet food for a birthday
call: to say a name loudly; to phone
calm: quiet and still
cam: a wheel that pushes a part of a machine
came: moved toward here
camp: to live in a tent for fun
can: to be able to; a round metal box
candle: a stick of wax that burns with a small light
cane: a stick to help you walk
canning: keeping food in jars
cannon: a very big gun on wheels, long ago
cannot: is not able to
cant: a slope to one side
cap: a soft hat
cape: a coat with no sleeves that hangs down your back
capping: putting a lid on
car: it has four wheels and an engine
card: a stiff piece of paper with a picture or a note
care: to look after; to think it matters
cars: they have four wheels and an engine
cart: a box on wheels to push or pull
carve: to cut wood or stone into a shape
cash: coins and paper money
cast: the people in a play; it keeps a broken arm still
cat: a small furry pet that purrs
catch: to get hold of a ball in the air
catches: gets hold of a ball in the air
catching: getting hold of a ball in the air
cattle: cows and bulls
caught: got hold of a ball in the air
cave: a hollow place in a hill
cell: a tiny part of a living thing; a room in a jail
cent: a penny
chaffed: teased in a friendly way
chaffs: teases in a friendly way
chain: metal rings joined in a long line
chair: a seat with a back
chairs: seats with backs
chalk: a white stick to write on a board
champ: the winner
channel: a place for a river or a boat; one station on TV
chap: a man or a boy
chaps: men or boys
char: to burn until it is black
charge: to ask for money; to fill a battery; to rush at
charm: a small thing for luck; being nice to be with
chart: a drawing that shows numbers
chase: to run after
chasing: running after
chat: a friendly talk
cheap: costing little
cheat: to win by not playing fair
check: to make sure; a mark that says yes
checked: looked to make sure
checks: makes sure; marks that say yes
cheek: the soft side of your face
cheep: the sound that a baby bird makes
cheer: to shout because you are happy
cheers: shouts because you are happy
chef: a person who cooks for a job
chert: a hard stone that breaks into sharp pieces
chess: a board game with kings and queens
chest: the front of your body; a large box
chew: to bite food again and again
chick: a baby bird
chicks: baby birds
chief: the leader of a group
child: a young boy or girl
chill: to make cold
chimp: an ape with long arms
chin: the part of your face below your mouth
chip: a thin piece, often to eat
chipping: breaking small pieces off
chips: thin pieces, often to eat
chirp: the sound that a small bird makes
chit: a small note that says what you owe
chits: small notes that say what you owe
chomp: to bite hard with noise
chop: to cut into pieces
chopping: cutting into pieces
chops: cuts into pieces
chore: a job to do at home
chose: picked one
chow: food
chuck: to throw
chugging: going along with the sound of a steam engine
chum: a friend
chumming: being a friend
chunk: a thick piece
church: a building where people pray
churn: to beat milk until it turns to butter
clacked: made a sharp sound, as of two sticks
claim: to say that something is true or is yours
clam: a sea animal in a shell
clamp: a tool that holds things together
clan: a big family
clap: to hit your hands together
clash: to hit with a loud noise; to not go together
clashes: does not go together
clashing: not going together
clasp: to hold tightly; a hook that closes
class: children who learn together
claw: a sharp nail on an animal's foot
claws: sharp nails on an animal's foot
clay: soft earth to make pots with
clean: not dirty
clear: easy to see through
clears: takes everything off
clerk: a person who sells in a shop or works in an office
click: a short, sharp sound
clicked: made a short, sharp sound
clicker: a small thing that you press to change the TV
clicks: makes a short, sharp sound
cliff: a high, steep wall of rock
clinched: made sure of winning
clincher: what makes it sure in the end
clinches: makes sure of winning
clip: a small thing that holds papers or hair
clips: small things that hold papers or hair
clock: it shows the time
clocked: found out how fast it went
clocks: they show the time
clod: a lump of earth
clog: to block a pipe; a wooden shoe
clone: an exact copy
close: to shut; near
clot: a thick lump
cloth: what shirts and sheets are made of
cloud: white or gray and full of rain, in the sky
clown: someone in a circus who makes people laugh
cloy: to be too sweet
club: people who meet to do a thing they like
cluck: the sound that a hen makes
clucks: makes the sound of a hen
clue: something that helps you find an answer
clutched: held very tightly
clutches: holds very tightly
coach: a person who trains a team
coal: a black rock that burns
coast: the land next to the sea
coat: you wear it outside when it is cold
cod: a fish that people eat
coddle: to take too much care of someone
code: signs that only some people can read
cog: a tooth on a wheel of a machine
coin: a round piece of metal money
cold: not hot; it makes you sneeze
colt: a young male horse
con: a reason against something
conning: tricking someone out of money
coo: the sound that a dove makes
cook: to make food with heat
cool: a little cold
cop: a police officer
cope: to manage something hard
copping: catching or getting
cord: a thick string
core: the middle of an apple
corn: yellow seeds that grow on a cob
cost: how much you must pay
cot: a small, light bed
count: to say numbers in order
course: a path; lessons about one thing
court: a place to play ball; where a judge works
cow: a farm animal that gives milk
cowl: a hood on a long coat
cows: farm animals that give milk
coy: acting shy
crab: a sea animal with claws
crack: a thin line where something is broken
cracked: broke, but not apart
crackle: the sound of a fire or of dry leaves
cracks: thin lines where something is broken
craft: making things by hand
cram: to push too much in
cramp: a sudden tight pain in a muscle
crank: a handle that you turn round and round
crash: to hit with a loud noise
crashed: hit with a loud noise
crashes: hits with a loud noise
crashing: hitting with a loud noise
crate: a big wooden box
craw: the part of a bird's throat that holds food
crawl: to move on hands and knees
creak: the sound that an old door makes
cream: the thick part of milk
crease: a line where paper was folded
creep: to move slowly and quietly
creme: a soft, sweet filling
crew: the people who work on a ship or a plane
crib: a baby's bed with high sides
crime: something bad that is against the law
crisp: dry and easy to break with a crunch
crook: someone who steals; a bent stick
crop: plants that a farmer grows
crops: plants that a farmer grows
cross: a little angry; to go to the other side
crow: a big black bird
crowd: very many people in one place
crown: a king or a queen wears it on the head
crows: big black birds
crude: made in a rough way
crumb: a tiny bit of bread or cake
crumple: to crush paper into a ball
crunch: the sound of eating a carrot
crush: to press until it breaks
crust: the hard outside of bread
cry: to have tears come from your eyes
cub: a young bear, lion or fox
cud: grass that a cow chews again
cuddle: to hold close in your arms
cue: a sign that it is your turn
cuff: the end of a sleeve
cup: you drink from it
cur: a dog that is not friendly
curb: the edge of a street
cure: to make a sick person well
curl: hair that bends round and round
curve: a line that bends
cut: to make pieces with scissors or a knife
cute: sweet and nice to look at
dab: to touch lightly
dad: a father
daft: silly
dam: a wall that holds back water
dame: an old word for a lady
damp: a little wet
damped: made a little wet
damping: making a little wet
damps: makes a little wet
dare: to be brave enough to do it
dark: with no light
dash: to run quickly
dashed: ran quickly
dashes: runs quickly; short lines
dashing: running quickly
date: the day, month and year
dating: writing the day on; going out with someone
dawn: the time when the sun comes up
day: the time when it is light
deaf: not able to hear
deal: to hand out cards; what two people agree on
dealing: giving out cards
dealt: gave out cards
dear: loved very much
debt: money that you owe
deck: the floor of a ship; a set of cards
deed: something that someone did
deem: to think
deep: far down
deepest: farthest down
deeps: the parts of the sea that are farthest down
deer: an animal that lives in the woods and has antlers
deft: quick and clever with the hands
den: where a fox or a bear lives
dent: a place that was pushed in
dents: places that were pushed in
desk: a table to write at
desks: tables to write at
dew: small drops on the grass in the morning
dice: cubes with dots that you roll in a game
did: made or worked at something
dig: to make a hole in the ground
digging: making a hole in the ground
dim: not bright
dime: a coin worth ten cents
dimming: making less bright
din: a lot of loud noise
dine: to eat dinner
dining: eating at a table with others
dinning: making a lot of noise
dint: a small hollow in something that was hit
dip: to put in and take out again
dipping: putting in and taking out again
dire: very bad
dirt: earth; mud on your hands or shoes
dish: a plate or a bowl
disk: a flat, round thing
ditch: a long hole that carries water
dive: to go into water with your head first
dock: the place where a boat is tied up
docks: places where ships are tied up
dodge: to move quickly so that nothing hits you
doe: a mother deer
dog: a pet that barks
doge: the ruler of an Italian city long ago
dogging: going after someone all the time
doll: a toy that looks like a person
don: to put on clothes
doom: a very bad end
door: you open it to go into a room
dorm: a house where students sleep
dos: parties
dose: how much medicine you take at one time
dosh: money, as people in England say
dost: an old word for do
dot: a small round mark
dote: to love someone very much
dove: a white or gray bird
down: toward the ground
drab: dull, with no bright colors
draft: the first try at writing something
drag: to pull along the ground
drain: a hole that water runs out through
dram: a tiny weight
drank: swallowed water or milk
draw: to make a picture with a pencil
drawl: to speak slowly with long sounds
drawn: made with a pencil
dray: a low, strong cart
dread: to be afraid of what may come
dream: pictures in your mind when you sleep
drench: to make very wet
dress: a top and a skirt in one piece
dressed: having clothes on
drew: made a picture with a pencil
drift: to be carried slowly by wind or water
drill: a tool that makes holes
drills: tools that make holes
drink: to swallow water or milk
drinks: swallows water or milk; water, milk and juice
drip: to fall in drops
drive: to make a car go
drone: a male bee; a flying machine that no one rides in
drones: male bees; flying machines that no one rides in
drool: water that runs out of a baby's mouth
drop: to let fall; a tiny bit of water
drove: made a car go
drown: to go under water and not be able to breathe
drum: you hit it to make music
drupe: a fruit with a stone, such as a peach
dry: not wet
dub: to give a name to
duck: a bird that swims and quacks
ducks: birds that swim and quack
dud: a thing that does not work
dude: a man or a boy
due: meant to be there by now
dug: made a hole in the ground
dull: not bright or not sharp
dump: a place for trash; to drop all at once
dumped: dropped all at once
dun: a dull, grayish brown
dune: a hill of sand by the sea
dupe: to trick someone
dusk: the time when it gets dark
dust: fine, dry dirt
dye: to change the color of cloth
face: eyes, nose, mouth and all around them
fact: something that is true
fad: something many people like for a short time
fade: to lose color slowly
fail: to not be able to do it
fain: an old word for gladly
faint: hard to hear or see
fainted: passed out and fell
fair: right for everyone; rides and games in a field
faith: believing in someone
fake: not real
faking: acting as if it is real
fall: to drop to the ground; the time when leaves come down
fame: when very many people know you
fan: it blows air to keep you cool
fans: people who love a team; they blow air
far: a long way off
farce: a very silly play
fare: the money you pay for a bus
farm: land where food is grown and animals live
fast: quick
fat: thick or big around
fate: what must happen
fault: when someone did it, it is theirs
fawn: a baby deer
fax: a letter sent over the phone line
fears: is afraid of
feast: a very big meal
feat: something that is very hard to do
fed: gave food to
fee: money you pay to get in or to join
feed: to give food to
feel: to know by touching
fees: money you pay to get in or to join
feet: you stand on them
fell: dropped to the ground
felt: knew by touching; a thick, soft cloth
fen: low, wet land
fend: to take care of yourself
fens: low, wet lands
fer: for, as some people say it
fern: a green plant with leaves like feathers
fess: to say that you did it
fest: a big party with music or food
fetch: to go and bring back
few: not many
fib: a small lie
fickle: changing your mind all the time
fiddle: a violin
fief: land that a king gave to a lord
field: open land with grass or plants
fiend: a very bad person in a story
fig: a soft, sweet fruit
fight: to hit each other or shout
fighter: a person who never gives up; a boxer
fights: hits or shouts at each other
file: papers kept together; a tool to make smooth
fill: to make full
filling: what is inside a pie; making full
film: a movie
fin: the part that a fish steers with
find: to see what you were looking for
fine: very good; not sick
fir: a tree with needles that stays green
fire: what burns hot and bright
firm: hard; not moving
first: before all the others
fish: an animal with fins that swims
fishes: tries to catch something with a hook and a line
fishing: trying to catch something with a hook and a line
fist: a tightly closed hand
fit: to be the right size
five: the number after four
fix: to make right what is broken
fixes: makes right what is broken
fixing: making right what is broken
fizz: to make many small bubbles
fizzle: to end in a weak way
flag: a cloth on a pole that stands for a country
flair: being very good at something
flame: the bright part of a fire
flank: the side of an animal
flap: to move up and down like a wing
flare: a sudden bright flame
flash: a sudden bright light
flashed: gave a sudden bright light
flashing: giving sudden bright lights
flat: with no bumps or hills
flaw: a small thing that is wrong
flaws: small things that are wrong
flay: to take the skin off
flea: a tiny insect that jumps and bites
fled: ran away
flee: to run away from danger
fleet: many ships together
flesh: the soft part under the skin
fleshed: filled out with more
flew: moved through the air
flex: to bend
flick: to hit quickly with a finger
flight: a trip through the air
fling: to throw hard
flint: a hard stone that makes sparks
flip: to turn over quickly
flips: turns over quickly
flit: to fly or move lightly
float: to stay on top of the water
flock: many birds or sheep together
flocked: came together in a big group
floe: a big sheet of ice on the sea
floor: you walk on it in a room
flop: to fall down loosely
flour: powder made from wheat
flow: to move along like water
flown: gone through the air
flows: moves along like water
flue: the pipe that smoke goes up through
flush: to get red in the face; to wash down with water
flushed: red in the face
flute: a thin pipe that makes music when you blow
flux: a time when things keep changing
fly: to move through the air with wings
foal: a baby horse
foam: many tiny bubbles
fob: a small thing on a ring of keys
foe: someone who fights against you
fog: a cloud close to the ground
foist: to make someone take what they do not want
fold: to bend one part over another
fond: liking someone very much
food: what you eat
foot: you stand on it; twelve inches
fop: a man who thinks only of his clothes
for: meant to be given to
force: a push or a pull; to make someone do it
fore: at the front
forge: a place where iron is heated and shaped
fork: you eat with it
form: a shape; a paper with blanks to write in
fort: a strong place to keep safe in
forth: out or forward
fought: had a fight
foul: dirty or bad; against the rules of a game
found: saw what you were looking for
fount: where water comes out of the ground
four: the number after three
fourth: after the third
fowl: a bird such as a hen or a turkey
fox: a wild animal with a bushy tail
frame: the edge around a picture
frank: saying just what you think
fraud: a trick to get money
fray: to come apart in threads at the edge
free: costing nothing; not locked up
freed: let out
freeze: to turn to ice; to stand very still
french: of France, or what people speak there
fresh: just made or just picked
fret: to worry
fridge: a box in the kitchen that keeps food cold
frog: a small green animal that hops and croaks
frond: a long leaf of a palm or a fern
frost: thin ice on grass on a cold morning
froth: many small bubbles on top
frown: to look cross or sad
fruit: apples, pears and plums
frump: someone in dull, old clothes
fry: to cook in hot oil
fudge: a soft, sweet candy
fun: what you have when you play
fund: money kept for one thing
funnel: a cone to pour through
fur: the soft hair of an animal
fuss: too much worry about a small thing
fuzz: soft, short hair
gab: to talk a lot
gad: to go about for fun
gag: a joke
gain: to get more
gait: the way you walk
gal: a girl or a woman
gale: a very strong wind
game: something to play with rules
gang: a group that does things together
gap: an empty space between two things
gas: fuel for a car; something as thin as air
gash: a long, deep cut
gashed: cut long and deep
gashes: long, deep cuts
gasp: to breathe in fast because you are surprised
gasped: breathed in fast
gasps: breathes in fast
gassed: put fuel in
gate: a door in a fence
gave: handed to someone to keep
gear: a wheel with teeth; the things you need to do a sport
gel: a thick, wet jelly
gem: a stone that shines, such as a ruby
gene: a tiny part of you that comes from your parents
gent: a polite man
germ: a tiny living thing that can make you sick
get: to come to have
gets: comes to have
gibe: to laugh at someone in a mean way
gift: what you give to someone
gig: a show by a band
giggle: to laugh in a silly way
gill: what a fish breathes with
gilt: covered with gold
gilts: young female pigs
girl: a child who will be a woman
gist: the main idea
give: to hand to someone to keep
glad: happy
glade: an open place in a forest
glass: you can see through it; you drink from it
gleam: a soft light
glee: great joy
glen: a narrow valley
glib: talking smoothly without thinking
glide: to move smoothly
glint: a quick flash of light
gloat: to be too glad that you won
globe: a round map of the world
glow: to give a soft light
glue: it makes paper stick together
glum: sad and quiet
glut: much more than anyone needs
gnarled: twisted, like an old tree
gnaw: to bite on again and again, as a dog does on a bone
goal: where the ball must go to score
goat: an animal with horns and a beard
gob: a lump of something soft
gobble: to eat fast
golf: a game with a small ball, a club and holes
good: nice; not bad
gosh: what you say when you are surprised
got: came to have
gown: a long dress
grab: to take quickly
grabs: takes quickly
grace: moving in a smooth, beautiful way
grad: a student who finished school
grade: one year in school; a mark for your work
grafted: joined one plant to another
grafting: joining one plant to another
grail: a cup that knights look for in old stories
grain: a seed of wheat, rice or corn
gram: a small weight, about a paper clip
grand: very big and fine
grant: to give what was asked for
granted: gave what was asked for
granting: giving what was asked for
grape: a small round fruit that grows in bunches
graph: a drawing that shows how numbers change
grasp: to hold tightly
grass: the green plant that lawns are made of
grave: very serious; a place where the dead are laid
gray: the color of rain clouds
grease: thick, sticky fat or oil
grebe: a bird that swims and dives
greed: wanting more than you need
green: the color of grass
greet: to say hello
grew: got bigger
grid: lines that cross and make squares
grief: great sadness
grill: to cook over a fire
grim: serious and not happy
grin: a big smile
grind: to crush to powder
grip: to hold tight
grips: holds tight
grist: grain to be made into flour
grit: tiny bits of sand or stone
groom: to brush a horse; a man on his wedding day
groove: a long, thin cut in something
ground: the earth under your feet
group: people or things that are together
grow: to get bigger
growl: the deep sound of an angry dog
grown: big, not a child any more
grows: gets bigger
growth: getting bigger
grub: a young insect that looks like a worm
grudge: being angry about something for a long time
grunt: the sound that a pig makes
gull: a white and gray bird by the sea
gulp: to swallow fast
gum: something soft that you chew
gush: to flow out fast
gushes: flows out fast
gushing: flowing out fast
gut: your belly
gym: a big room for sports
hack: to cut with rough strokes
hacked: cut with rough strokes
hacking: cutting with rough strokes
had: owned; held
hag: an old witch in a story
haggle: to talk until a price gets lower
hail: small balls of ice that fall like rain
hair: it grows on your head
hall: a long room that leads to other rooms
ham: meat from a pig
hand: the part of your arm with fingers
handed: gave with the fingers
handing: giving with the fingers
handle: the part you hold
hands: the parts of your arms with fingers
hang: to be up on a hook
hap: an old word for luck
hard: not soft; not easy
hare: an animal like a big rabbit
harm: to hurt
harp: a big instrument with strings to pluck
harsh: rough; not kind
hart: a male deer
has: owns; holds
hash: meat and potatoes cut small and fried
hassle: something that gives you too much trouble
hat: you wear it on your head
hatch: to come out of an egg
hatches: comes out of an egg
hatching: coming out of an egg
hats: you wear them on your head
haul: to pull something heavy
haunt: to come back to a place, as ghosts do in stories
have: to own; to hold
haven: a safe place
haw: a red berry on a bush with thorns
hay: dry grass for animals to eat
he: that boy or man
head: the top part of your body
heal: to get well again
healing: getting well again
heap: a messy pile
hear: to use your ears
heard: found out with the ears
hears: uses the ears
heat: being hot
heating: making hot
heckle: to shout at someone who is speaking
hedge: bushes that grow in a line like a wall
heel: the back of your foot
held: kept in the hands
helm: the wheel that steers a ship
help: to make it easier for someone
hem: the sewn edge of a skirt
hemp: a plant whose stems make rope
hen: a female chicken
her: that girl or woman
herd: a group of animals that live together
here: in this place
hers: that girl's or that woman's
hew: to cut with an ax
hex: a magic spell that brings bad luck
hid: put where no one could see it
hidden: put where no one can see it
hide: to go where no one can see you
high: far up
hike: a long walk in the woods or hills
hill: ground that is higher than the rest
hilt: the handle of a sword
him: that boy or man
hind: at the back; a female deer
hint: a little help to find an answer
hip: the side of your body where your leg begins
hips: the sides of your body where the legs begin
hire: to give someone a job
his: of that boy or man
hiss: the sound that a snake makes
hit: to strike with your hand or a bat
hitch: to tie one thing to another
hitches: ties one thing to another
hitching: tying one thing to another
hits: strikes
hive: a home for bees
hobble: to walk with a limp
hocked: gave a thing away to get money for a while
hog: a big pig
hogging: keeping it all and not sharing
hold: to have in your hands
hole: an empty place in something
home: where you live
honk: the sound of a goose or a car
honked: made the sound of a goose
honks: makes the sound of a goose
hood: the part of a coat that covers your hair
hoof: the hard foot of a horse
hook: a bent piece that things hang on
hoop: a big ring
hop: to jump on one foot
hope: to wish that something good will happen
hopping: jumping on one foot
horn: a hard point on a goat's head; it honks
hose: a long tube that water runs through
hot: very warm
hound: a dog that hunts
house: a building where people live
how: in what way
howl: the long cry of a wolf
hub: the middle of a wheel
huddle: to crowd close together
huff: to breathe hard; to be a bit angry
huffs: breathes hard
hug: to hold someone in your arms
huge: very, very big
hugging: holding someone in your arms
hull: the bottom of a ship
hum: to sing with your mouth closed
human: a person
humming: singing with your mouth closed
hunch: a feeling that you are right
hung: was up on a hook
hunk: a big piece
hunt: to look hard for something
hurt: to have pain; to make someone feel pain
hushed: quiet
hut: a very small house
hutch: a home for a rabbit
hymn: a song for church
jab: to poke quickly
jabbing: poking quickly
jack: a tool that lifts up a car
jacked: lifted up, as a car with a flat tire
jacks: a game with a ball and small metal stars
jail: a place where people who broke the law are locked up
jam: sweet fruit to put on bread
jamming: pushing in tight
jar: a glass pot with a lid
jaw: the bone that moves when you chew
jazz: a kind of music with a lively beat
jeep: a small, strong car for rough roads
jest: a joke
jet: a fast airplane
jib: a small sail in front
jig: a lively dance
job: the work that someone does
jog: to run slowly
jogging: running slowly
join: to put together; to become one of a group
joke: a story that makes people laugh
jot: to write down quickly
joy: a very happy feeling
judge: the person who decides who is right
jug: something to pour from
jump: to push off the ground with your feet
jumped: pushed off the ground with both feet
jumps: pushes off the ground with both feet
junk: old things that no one wants
just: fair; only a moment ago
jut: to stick out
keen: wanting something very much; sharp
keep: to not give away
keg: a small barrel
ken: what a person knows
kettle: a pot to boil water in
key: you open a lock with it
kibble: dry food for dogs and cats
kick: to hit with your foot
kicked: hit with the foot
kicks: hits with the foot
kid: a child; a young goat
kidding: not being serious
kilt: a pleated skirt that men wear in Scotland
kilts: pleated skirts that men wear in Scotland
kin: your family
kindle: to start a fire
king: a man who rules a country
kip: a short sleep, as people in England say
kiss: to touch with your lips
kit: a set of things to make or do something
kite: it flies on a long string
knead: to press dough with your hands
knee: where your leg bends
kneel: to go down on your knees
knell: the slow sound of a bell when someone died
knelt: went down on the knees
knit: to make cloth from yarn with two needles
knob: a round handle
knock: to hit a door with your hand
knot: where string is tied
know: to have it in your mind
known: having been learned or met
lab: a room to find things out by trying
label: a piece of paper that says what is inside
labs: rooms to find things out by trying
lace: thin cloth with holes; a string for your shoe
lack: to not have enough
lacked: did not have enough
lacking: not having enough
lacks: does not have enough
lad: a boy
lag: to be slower than the others
lagging: being slower than the others
laid: put down
lain: been flat, as in bed
lair: the home of a wild animal
laird: a man who owns land in Scotland
lake: a big body of water with land all around
lam: a run to get away from the police
lamb: a young sheep
lamp: it gives light in a room
land: the part of the earth that is not water
landed: came down on the ground
lander: a spaceship that sets down on the moon
landing: coming down on the ground
lands: comes down on the ground
lane: a narrow road, or one part of a road
lap: the top of your legs when you sit
lapping: drinking with the tongue, as a cat does
laps: the tops of your legs when you sit; drinks as a cat does
lark: a small bird that sings
lash: one hair at the edge of your eye
lashed: tied with rope
lashes: hairs at the edges of your eyes
lashing: tying with rope
lass: a girl
last: after all the others
lasted: went on for some time
lasting: going on for a long time
lasts: goes on for some time
latch: a small bar that keeps a gate shut
late: after the right time
lath: a thin strip of wood
laud: to say how good someone is
law: a rule for everyone in a country
lawn: grass around a house
laws: rules for everyone in a country
lax: not strict
lay: to put something down
lea: open land with grass
leach: to drain out slowly
lead: to go first and show the way
leaf: a flat green part of a plant
leafs: turns the pages quickly
leak: to let water drip out through a hole
lean: to bend to one side
leaning: bending to one side
leap: to jump far
leaping: jumping far
learn: to come to know
lease: a paper that lets you rent a house
leash: a strap to walk a dog on
leasing: renting
least: the smallest amount
leave: to go away
led: showed the way
ledge: a narrow shelf on a rock or a wall
lee: the side away from the wind
leech: a worm that sucks blood
left: the side across from right; went away
leg: you walk on two of them
legs: you walk on two of them
lend: to let someone use a thing for a while
lending: letting someone use a thing for a while
lends: lets someone use a thing for a while
lens: the clear part of glasses or of a camera
lent: let someone use something for a while
less: not as much
lest: so that something will not happen
let: to say that someone may
lets: says that someone may
lib: a short word for freedom
lick: to move your tongue over something
licked: moved the tongue over
licking: moving the tongue over
lid: the top that closes a pot or a jar
lie: to say what is not true; to be flat
lien: a claim on a house until money is paid back
life: the time from birth on
lift: to pick up
light: what lets us see; not heavy
lighted: made a fire; made bright
lighter: not so heavy; it makes a small flame
lighting: lamps and how they shine
lights: lamps; makes a fire
like: to think that something is nice
lilt: a light, happy way of speaking or singing
limb: an arm, a leg or a branch
lime: a small green fruit that tastes sour
limp: to walk with a sore foot
line: a long, thin mark
link: one ring of a chain
linked: joined as in a chain
linking: joining as in a chain
links: rings of a chain
lint: tiny bits of cloth from the dryer
lip: the edge of your mouth
lips: the edges of your mouth
lisp: to say th when you mean s
list: words or names, one under another
listed: written one under another
listing: writing one under another
lists: words or names, one under another
lit: gave light; set on fire
little: small
live: to have life; to have a home
load: what a truck carries
loaf: bread before it is sliced
loan: money or a thing that you must give back
lobbing: throwing high and slow
lobs: throws high and slow
lock: you open it with a key
locked: shut with a key
locking: shutting with a key
locks: you open them with keys
lode: a line of gold or silver in the rock
lodge: a small house in the woods
loft: a room under the roof
log: a piece of a tree trunk
loge: a seat near the stage, up high
logging: cutting down trees
logs: pieces of tree trunks
loin: the part of the body below the ribs
lone: only one, with no others
long: far from end to end
loo: a toilet, as people in England say
look: to use your eyes
loop: the shape of a ring made by a string
loose: not tight
loot: things that robbers took
lop: to cut off a branch
lope: to run with long, easy steps
lord: a man with great power, long ago
lore: old stories and what people know from them
lorn: an old word for lonely
loss: not having a thing any more
lost: not able to find the way
lot: many, or a piece of land
loud: making a lot of noise
louse: a tiny insect that lives in hair
lout: a rude person
low: near the ground; not high
luck: good things that just happen
lug: to carry something heavy
lugging: carrying something heavy
lull: a short quiet time
lump: a small, hard bump
lunch: the meal in the middle of the day
lung: the part of your body that holds air
lurch: to roll suddenly to one side
lure: something that makes you want to come near
lush: green and growing thick
lye: a strong stuff that soap was made with
mad: angry
made: put together
maid: a woman paid to clean a house
mail: letters and boxes that are brought to you
main: the most important
make: to put together
making: putting together
male: a boy or a man
mall: a big building with many shops
man: a grown-up boy
mane: the long hair on a horse's neck
manning: working a machine or a desk
mans: works a machine or a desk
map: a drawing that shows where places are
mapping: drawing where places are
mar: to spoil how a thing looks
march: to walk in step; the third month
mare: a mother horse
mark: a spot, a line or a check
mart: a place where things are sold
mash: to crush until soft
mashed: crushed until soft
mashes: crushes until soft
mashing: crushing until soft
mask: it covers your face
mason: a person who builds with stone or brick
mass: how much of something there is
masses: great amounts
mast: the tall pole that holds a sail
master: someone who is very good at something
mat: a small rug
match: to go well together; a small stick that makes fire
mate: a friend; one of two animals that belong together
math: numbers, shapes and counting
mating: coming together to have young
maul: to hurt with claws
maw: the mouth of a hungry animal
may: to be allowed to
maze: paths where it is hard to find the way out
me: the one who is speaking
meal: breakfast, lunch or dinner
mean: not kind; to want to say
meant: had in mind
meat: food from an animal's body
meddle: to mix in where you are not wanted
meet: to come together with someone
meld: to join into one
melt: to turn to water when it gets warm
meme: a funny picture that people send around
men: grown-up boys
mend: to fix what is torn or broken
mere: only; no more than
merge: to come together into one
mesh: a net of threads or wires
meshed: fit together, as the teeth of two wheels
mess: when things are dirty or all over
messed: made dirty or mixed up
messes: things that are dirty or all over
messing: making dirty or mixed up
met: came together with someone
mete: to give out in parts
mettle: being brave enough to go on
mew: the sound that a kitten makes
mice: more than one mouse
mid: halfway
middle: the part halfway between the ends
midge: a tiny fly that bites
might: maybe will; great strength
mike: short for microphone
mil: a very small length
mild: not strong; not too hot or too cold
mile: as far as you walk in about twenty minutes
milk: a white drink from cows
mill: a place where grain is made into flour
mime: to act with no words
mince: to cut very small
mind: the part of you that thinks
mine: of me; a deep hole where coal is dug
mining: digging coal or gold out of the earth
mink: a small animal with soft brown fur
mint: a plant with a fresh taste
minus: less; the sign for taking away
mirth: fun and laughing
miss: to not hit or not catch
missed: did not hit or catch
missing: not there; not hitting
mist: a thin fog
mite: a tiny animal, smaller than a flea
mix: to stir together
moan: a low, sad sound
mob: a big, wild crowd
mock: to laugh at someone in an unkind way
mod: a change that players make to a computer game
mode: a way of doing something
mold: green fuzz on old food; a form to shape things
mole: a small animal that digs tunnels
mom: a mother
moo: the sound that a cow makes
mood: how you feel today
moon: it shines in the sky at night
moons: they go around planets
moor: to tie up a boat
moose: a very large deer
moot: not worth talking about any more
mop: you wash a floor with it
mopping: washing the floor
more: a larger number
moss: soft green plants on stones and trees
most: more than all the others
moth: an insect like a butterfly that flies at night
mourn: to be very sad that someone died
mouse: a small animal with a long tail
mouth: you eat and speak with it
mow: to cut grass
mows: cuts the grass
much: a lot
muck: wet dirt
mucks: makes dirty
mud: wet, soft earth
muddle: a mix-up
muff: a warm roll of fur for your hands
mug: a big cup with a handle
mule: an animal that is half horse and half donkey
mum: silent, saying nothing
munch: to eat with noise
mush: something soft and wet
mushed: made soft and wet; drove a dog sled
musk: a strong smell from an animal
must: to have to
mutt: a dog of mixed kinds
my: of me
myth: a very old story
nab: to catch or grab
nabs: catches or grabs
nag: to ask someone again and again
nagging: asking someone again and again
nail: a thin pointed piece of metal to hammer
name: what you are called
naming: giving something a word to be called by
nap: a short sleep
napping: sleeping for a short time
naught: nothing
naval: of ships that fight at sea
nave: the long middle part of a church
navel: your belly button
nay: an old word for no
neap: the kind of tide that moves least
near: close by
nears: comes close
neat: with everything in its place
neck: the part that holds up your head
necked: having the part that holds up the head
necking: making a bottle thin at the top
necks: they hold up our heads
need: to have to have
neigh: the sound that a horse makes
nerve: it carries feelings to your brain
nest: a bird's home
nested: made a home as birds do
nests: homes of birds
net: string tied with holes, to catch fish or balls
nettle: a plant that stings
new: just made or just bought
nib: the sharp tip of a pen
nibble: to eat with tiny bites
nice: kind; good
nick: a small cut
nicked: cut a little
nicking: cutting a little
nicks: small cuts
niece: the daughter of your brother or sister
nigh: an old word for close by
night: the time when it is dark
nights: the times when it is dark
nil: nothing
nine: the number after eight
nip: a small bite
nit: the egg of a louse
nod: to move your head up and down for yes
nodding: moving your head up and down for yes
node: a knot or a place where lines come together
noise: a loud sound
non: a word part that means not
nook: a small, quiet corner
noon: twelve o'clock in the day
nor: and not
north: where a compass needle points
nose: you smell with it
nosh: to eat a snack
not: it turns a yes into a no
notch: a small cut shaped like a V
note: a short letter; a sound in music
noting: writing down to keep in mind
nought: a zero
noun: a word for a person, a place or a thing
now: at this time
nub: a small lump; the main point
null: worth nothing
numb: when you cannot feel anything there
nun: a woman who lives and prays with others
nurse: a person who takes care of sick people
nut: a seed with a hard shell
nuts: seeds with hard shells
pace: how fast you go
pack: to put things in a bag
packed: put into a bag or a box
packing: putting things in a bag
packs: puts things in a bag
pact: what two sides agree on
pad: something soft, or paper to write on
padding: soft stuff inside
paddle: a short oar
page: one side of a sheet in a book
paid: gave money for
pail: a bucket
pain: what you feel when something hurts
paint: color that you put on with a brush
pair: two that belong together
pal: a friend
pale: light in color
pall: a dark cloud of smoke
palm: the inside of your hand; a tree with big leaves
pan: a flat thing to cook in
pant: to breathe fast, as a dog does
panting: breathing fast, as a dog does
pants: they cover your legs
par: how many hits a golf hole should take
pare: to peel with a knife
park: a place with grass and trees to play in
part: a piece of a whole
pass: to go by; to hand over
passed: went by; did well on a test
passes: goes by; hands over
past: the time before now
paste: thick, wet glue
pat: to touch softly with your hand
patch: a piece of cloth over a hole
patched: with a piece of cloth over a hole
patching: putting a piece of cloth over a hole
path: a small way to walk on
paw: the foot of a dog or a cat
pawl: a small bar that keeps a wheel from turning back
pawn: the smallest piece in chess
pay: to give money for something
pea: a small round green vegetable
peace: a time without fighting
peach: a soft, fuzzy fruit with a stone
peak: the top of a mountain
peaks: tops of mountains
pear: a sweet fruit, thin at the top
pearl: a white bead that grows in a shell
peas: small round green vegetables
peat: earth that can be burned when it is dry
pebble: a small, smooth stone
peck: to bite with a beak
pecked: bit with a beak
pecking: biting with a beak
pecks: bites with a beak
peddle: to sell things from house to house
peek: to look quickly when you should not
peel: to take off the skin of a fruit
peeled: with the skin taken off
peep: a short look; the sound of a chick
peer: to look hard; a person as old as you
peers: looks hard; people as old as you
peg: a small stick to hang things on
pen: you write with it in ink
pep: energy
per: for each
pet: an animal that lives with you
pets: animals that live with you
pew: a long bench in a church
phish: to trick people into giving a password
phone: you talk to people far away with it
pick: to choose; to take off a plant
picked: chose; took off a plant
picking: choosing; taking off a plant
pickle: a cucumber kept in salt water
picks: chooses; takes off a plant
pie: a baked crust with a filling
piece: one part of something
pier: a long walk built out over the water
pig: a farm animal that says oink
pigging: eating too much
pile: many things on top of each other
pill: a small piece of medicine to swallow
pimple: a small red spot on the skin
pin: a thin, sharp bit of metal that holds things
pinch: to squeeze between two fingers
pine: a tree with needles and cones
ping: a short, high sound of metal
pink: a light red
pinning: holding together with something thin and sharp
pip: a small seed in an apple
pipe: a tube that water runs through
pips: small seeds in an apple
pit: a hole in the ground; the seed of a peach
pitch: to throw a ball to a batter
pitching: throwing a ball to a batter
pith: the soft white part under an orange's skin
pix: short for photos
place: where something is
plain: with nothing added; wide flat land
plan: what you think out before you do it
plane: it flies through the air with people in it
plant: it grows in the ground and has leaves
plate: a flat dish
play: to have fun; to make music
plea: a strong asking for help
plead: to beg very hard
pledge: a promise
plight: a bad place to be in
plod: to walk with slow, heavy steps
plop: the sound of a stone that falls in water
plot: what happens in a story
plow: a tool that turns over the earth on a farm
ploy: a clever trick
plug: it stops a hole or goes into the wall
plum: a sweet purple fruit
plump: round and soft
plush: soft and thick, as a teddy bear
ply: one layer of wood or paper
pocked: full of small holes
pod: where peas grow
point: the sharp end
poke: to push with a finger
pole: a long, thin stick of wood or metal
poll: a count of what people think
pond: a small lake
pong: a very bad smell
pool: a place to swim
poor: having very little money
pop: a small, sharp burst
popping: bursting with a small, sharp sound
pops: bursts with a small, sharp sound
porch: a floor with a roof at a house door
pork: meat from a pig
port: a place where ships come in
pose: to hold still for a picture
post: a pole in the ground; to send by mail
pot: something deep to cook in
pots: deep things to cook in
pound: to hit hard; sixteen ounces
pour: to let water run out of a cup
pout: to push out your lips when you are cross
pow: the sound of a hit in a comic
pox: a sickness with spots on the skin
pram: a baby carriage
prank: a trick to make people laugh
pray: to talk to God
preach: to tell people how they should live
prep: to get things ready
press: to push on
pressed: pushed on
presses: pushes on
price: how much money a thing costs
pride: being glad of what you did
priest: a person who leads people in church
prime: the best; a number such as three, five or seven
print: to make letters that do not join
prize: what you win
probe: to look into with care
prod: to poke
prom: a dance at a high school
prone: lying on your stomach; likely to
proof: what shows that a thing is so
prop: something that holds a thing up
proud: glad of what you did
prow: the front end of a ship
prowl: to move about quietly as a hunting cat does
pry: to pull open by force
pucks: hard, flat discs for hockey
puddle: water that lies on the ground after rain
puff: a small cloud of air or smoke
puffs: small clouds of air or smoke
pulp: the soft inside of a fruit
pummel: to hit many times with your fists
pump: it pushes water or air through a pipe
pumped: pushed air or water through a pipe
pun: a joke with a word that means two things
punch: to hit with your fist; a fruit drink
punk: a loud, fast kind of music
pup: a young dog
pups: young dogs
pure: with nothing mixed in
purge: to clean out what is bad
purl: a stitch in knitting
putt: to hit a golf ball softly
puzzle: a game of pieces to fit together; a hard question
quack: the sound that a duck makes
quacking: making the sound of a duck
quad: four of something
qualm: a feeling that something may be wrong
queen: a woman who rules a country
quell: to make something stop
quest: a long search for something
quick: fast
quicker: faster
quickest: fastest
quid: a pound of money in England
quill: a pen made from a feather
quilt: a warm cover made of many pieces
quin: one of five children born together
quint: one of five children born together
quip: a clever joke
quit: to stop doing something
quite: very; all the way
quiz: a short test
quote: to say the exact words of someone
rabbit: a small animal with long ears that hops
rabble: a loud, wild crowd
race: to see who is fastest
rack: a frame to hang or put things on
racked: put on a frame
racks: frames to hang or put things on
raft: a flat boat made of logs tied together
rafting: riding down a river on logs or rubber
rag: an old piece of cloth
rage: very strong anger
ragging: teasing
raid: a sudden attack
rail: a bar to hold on to; what a train runs on
rain: water that falls from clouds
rake: a tool to gather leaves
raking: gathering leaves
ram: a male sheep
ramming: hitting hard with the front
ran: moved fast on foot
ranch: a farm for cows or horses
rang: made a sound like a bell
rank: your place in a row from first to last
ranks: places in a row from first to last
ranted: shouted on and on
rap: to knock; a song that is spoken fast
rapping: knocking; speaking fast to a beat
rare: not seen often
rash: red spots on your skin
rat: an animal like a big mouse
rate: how fast or how often
rating: saying how good a thing is
rattle: a baby's toy that shakes with noise
rave: to say how good a thing is, again and again
raving: saying again and again how good a thing is
raw: not cooked
ray: a thin line of light
reach: to stretch out your hand for
read: to look at words and know what they say
real: true, not made up
realm: the land of a king
rear: the back part
red: the color of a ripe strawberry
reed: a tall grass by the water
reef: rocks or coral just under the sea
reel: a wheel that string is wound on
ref: the person who says who plays fair
rent: money you pay to live in a house that is not yours
rep: short for someone who speaks for others
reps: how many times you do an exercise
rest: to be still after work or play
rested: was still after work or play
resting: being still after work or play
rests: is still after work or play
rib: a bone in your chest
ribbing: teasing in a friendly way
ribbon: a long strip of cloth for hair or gifts
rice: small white grains that you cook
rich: having a lot of money
rid: free of something you do not want
ridden: sat on as it went
ridding: getting free of something
riddle: a tricky question to guess
ride: to sit on a bike, a horse or a bus as it goes
ridge: the long top of a hill
riding: sitting on a bike or a horse as it goes
rife: found all over, as something bad
rig: a big truck
rigging: the ropes on a ship
right: correct; not left
rim: the round edge of a cup or a wheel
ring: a round band for a finger; the sound of a bell
rip: to tear
ripe: ready to eat, as fruit
ripping: tearing
ripple: a tiny wave
rips: tears
rise: to go up
risk: a chance that something goes wrong
risked: took a chance
risks: takes a chance
road: cars drive on it
roam: to walk about with no plan
roar: the sound that a lion makes
roast: to cook in an oven
rob: to take what is not yours
robbing: taking what is not yours
robe: a long, loose coat to wear at home
robin: a bird with a red chest
rock: a big stone
rocked: moved back and forth
rocking: moving back and forth
rocks: big stones; moves back and forth
rod: a long, thin stick
rode: sat on a bike, a horse or a bus
roe: the eggs of a fish
role: the part you play
roll: to turn over and over
romp: to play in a wild, noisy way
roof: the top of a house
room: a part of a house with walls and a door
roost: a place where birds sleep
root: the part of a plant under the ground
rope: a very thick string
rose: a flower with thorns; went up
rot: to go bad
rote: saying over and over to keep it in mind
round: shaped like a ball
rouse: to wake someone up
roust: to make someone get up
rove: to go here and there
row: things in a line; to move a boat with oars
rows: things in lines; moves a boat with oars
rub: to move your hand back and forth over something
rubbing: moving your hand back and forth on something
rubbish: trash
rubble: broken stones of a house that fell
rude: not polite
rue: to be sorry for
ruffs: bands of feathers around birds' necks
rug: a soft mat on the floor
rule: something that you must do or must not do
run: to move fast on your feet
rune: a letter cut in stone long ago
rung: a step of a ladder
running: moving fast on your feet
rush: to hurry
rushed: hurried
rut: a deep track made by wheels
rye: a plant whose seeds make dark bread
sac: a small bag inside an animal or plant
sack: a big bag
sacked: put in big bags
sacking: rough cloth for big bags
sacks: big bags
sad: not happy
saddle: the seat on a horse
safe: away from danger
sag: to hang down in the middle
sage: a wise person; a gray-green plant to cook with
sagging: hanging down in the middle
sail: a big cloth that catches the wind on a boat
saint: a very good and holy person
sainted: called very good and holy
saints: very good and holy people
sake: the good of someone
sale: when things cost less for a while
salt: white grains that we put on food
same: not different
sample: a little bit to try
sand: tiny bits of rock on a beach
sanded: made smooth with rough paper
sanding: making smooth with rough paper
sands: makes smooth with rough paper
sane: with a clear mind
sang: made music with the voice
sank: went down in the water
sans: without
sap: the juice inside a tree
saps: makes weak, little by little
sashes: wide ribbons around the waist
sat: rested on a chair or on the floor
save: to keep for later; to get out of danger
saving: keeping for later; getting out of danger
saw: looked at; a tool to cut wood
saws: tools to cut wood
sax: a shiny horn for playing jazz
say: to speak
scab: the crust over a cut that heals
scale: you stand on it to see how heavy you are
scalp: the skin under your hair
scam: a trick to get money
scan: to look over quickly
scant: hardly enough
scar: a mark where a cut healed
scare: to make afraid
scarf: a long cloth that keeps your neck warm
sconce: a lamp on a wall
scoop: a big, deep spoon
scoot: to go quickly
scope: how far something reaches
score: how many points a team has
scorn: thinking that someone is not good enough
scout: someone sent ahead to look around
scram: to run away quickly
scrap: a small piece that is left over
scrape: to rub with something sharp
scraps: small pieces that are left over
scratch: to rub an itch
scrawl: to write fast and badly
scream: to cry out in a loud, high voice
scree: loose stones on the side of a mountain
screech: a high, loud cry
screen: the flat part of a TV or tablet that you look at
scrip: a paper used in place of money
script: the words that actors say
scrub: to rub hard to make clean
scrunch: to squeeze up small
scull: a light boat for rowing
sea: a very large body of salt water
seal: a sea animal with flippers; to close tightly
sear: to burn the outside quickly
search: to look all over for something
seas: very large bodies of salt water
seat: a place to sit
seated: sitting
seats: places to sit
sedge: a plant like grass in wet places
see: to use your eyes
seed: a plant grows from it
seek: to look for
seeker: someone who looks for something
seeking: looking for
seem: to look as if
seemed: looked as if
seeming: looking as if
seen: looked at
seep: to run out very slowly
seeped: ran out very slowly
seeping: running out very slowly
sees: uses the eyes
self: the person that you are
sell: to give something for money
seller: someone who gives things for money
selling: giving things for money
sells: gives things for money
send: to make something go to someone
sending: making something go to someone
sends: makes something go to someone
sens: money in some lands far away
sent: made something go to someone
sere: dry and brown
serf: a poor farm worker who was not free, long ago
serve: to bring food to people
set: to put in a place; a group that belongs together
sets: puts in a place; groups that belong together
settle: to go and live in a place; to get quiet
shack: a small, rough house
shacks: small, rough houses
shade: a place out of the sun
shaft: a long, thin handle; a deep, narrow hole
shafted: with a long, thin handle
shake: to move quickly up and down
shaken: moved up and down fast
shaking: moving up and down fast
shall: will
shaman: a healer who speaks with spirits
shame: a bad feeling when you did something wrong
shaming: making someone feel bad
shams: things that are not real
shape: a circle, a square or a triangle
shaping: giving a form to
share: to let others have some
shark: a big fish with many sharp teeth
sharp: good for cutting
shave: to cut hair off the skin
shaven: with the hair cut off
she: that girl or woman
shed: a small house for tools
sheep: an animal that gives us wool
sheer: thin enough to see through; very steep
sheet: a thin cloth on a bed; one piece of paper
shelf: a board to put books on
shell: the hard outside of an egg, a nut or a snail
shelling: taking the hard outside off nuts or peas
shells: hard outsides of eggs, nuts or snails
shew: an old way to write show
shield: something to hold up to keep you safe
shift: to move over a little
shilling: a coin used in England long ago
shills: talks people into buying
shin: the front of your leg below the knee
shine: to give light
shinning: climbing a pole with arms and legs
shins: the fronts of your legs below the knees
ship: a big boat
shipping: sending things far away
ships: big boats
shirt: you wear it on the top part of your body
shock: a bad surprise; what you feel from a live wire
shocked: very surprised in a bad way
shocking: surprising in a bad way
shocks: surprises in a bad way
shone: gave light
shoo: what you say to make a hen go away
shook: moved up and down fast
shop: a small store
shopping: going to stores to buy things
shops: small stores
shore: the land along the sea or a lake
shot: sent a ball at a goal
shout: to call very loudly
show: to let someone see
shown: let someone see
shows: lets someone see
shred: to tear into thin strips
shrew: a tiny animal like a mouse with a long nose
shrimp: a small sea animal with ten legs
shrine: a holy place
shrink: to get smaller
shun: to keep away from
shunning: keeping away from
shush: to tell someone to be quiet
shut: to close
shuttle: a bus or a spaceship that goes back and forth
shy: a little afraid of people you do not know
sick: not well
sicked: told a dog to chase
sickle: a curved blade to cut grass or wheat
side: left is one, right is the other
sigh: to let out a long breath
sight: what your eyes do
sighted: saw; able to see
sighting: seeing something rare
sights: things to see
silk: a soft, shiny cloth made by worms
sill: the flat board under a window
sills: flat boards under windows
silt: fine mud that a river leaves
simple: easy
sin: something bad that a person does
sing: to make music with your voice
sink: to go down in water; where you wash the dishes
sinking: going down in water
sinks: goes down in water; you wash dishes in them
sinning: doing something bad
sins: bad things that a person does
sip: to drink a little
sipping: drinking a little at a time
sips: drinks a little
sir: a polite word for a man
sire: what people called a king
sister: a girl with the same mother and father
sit: to rest on a chair or on the floor
site: a place for a building; pages on the internet
sits: rests on a chair
six: the number after five
size: how big something is
sizzle: the sound of food in a hot pan
skate: to glide over ice on blades
sketch: a quick drawing
skill: being able to do a thing well
skim: to take off the top; to read fast
skin: what covers your body
skip: to hop from foot to foot
skirt: cloth that hangs from your waist
skit: a short, funny play
skull: the bones of your head
sky: where the clouds and the stars are
slack: loose; not pulled tight
slam: to shut with a bang
slang: words that friends use but not books
slap: to hit with a flat hand
slash: to cut with a long sweep
slat: a thin, flat piece of wood
slate: a gray stone that splits into flat pieces
sled: you slide down snow on it
sleep: to rest at night with your eyes shut
sleeping: resting at night with the eyes shut
sleeve: the part of a shirt around your arm
sleigh: a big sled that horses pull
slew: a large number
slice: a thin, flat piece of bread or cheese
slick: smooth and easy to slip on
slicked: made smooth with water or oil
slicks: makes smooth with water or oil
slid: moved smoothly along
slide: to move smoothly; you go down it at the playground
slight: small and thin
slightest: smallest
slim: thin
sling: a cloth that holds a hurt arm
slip: to slide and fall
slit: a long, thin cut
slob: a messy person
sloe: a small, sour, dark fruit
slop: to spill over the edge
slope: ground that goes up or down
slosh: to move about in water with noise
slot: a thin hole for a coin
slow: not fast
slows: goes less fast
sludge: thick, wet mud
slug: a snail without a shell
slum: a part of a city where people are very poor
slur: to run words together so that they are not clear
slurp: to drink with a loud noise
sly: good at tricking others
smack: to hit with a flat hand
smacked: hit with a flat hand
smacking: hitting with a flat hand
smacks: hits with a flat hand
small: little
smart: quick to learn and think
smash: to break into pieces with a crash
smashed: broke into pieces with a crash
smashing: breaking into pieces with a crash
smear: to spread something sticky
smell: what your nose does
smelling: using the nose
smells: uses the nose
smelt: to melt rock to get metal; a small fish
smile: to turn up your mouth because you are happy
smith: a person who makes things out of metal
smock: a long, loose shirt to paint in
smog: dirty, foggy air in a city
smoke: the gray cloud that comes from a fire
smudge: a dirty mark
smug: too pleased with yourself
snack: a little food between meals
snag: to catch on something sharp
snail: a slow animal with a shell on its back
snake: a long animal with no legs
snap: to break with a crack
snare: a trap made of string
snarl: to growl and show the teeth
snatch: to grab quickly
sneak: to go so that no one sees or hears you
sneer: to smile in a mean way
sneeze: to blow air out of your nose all at once
sniff: to smell with quick breaths
snip: to cut with scissors
snipe: a bird with a long bill
snit: a short bad temper
snitch: to tell on someone
snore: to make a noise while asleep
snout: the long nose of a pig
snow: white flakes that fall when it is cold
snows: white flakes fall from the sky
snub: to act as if someone is not there
soak: to make very wet
soap: you wash your hands with it
soar: to fly high without moving the wings
sob: to cry hard
sobbing: crying hard
sock: you wear it on your foot
socked: hit hard
socks: you wear them on your feet
sod: grass with its roots and earth
sodden: very wet all through
soft: not hard
soil: earth that plants grow in
sold: gave for money
sole: the bottom of a shoe or a foot
song: music with words
soon: in a short time
sooner: at an earlier time
soonest: at the earliest time
soot: black dust from a fire
sop: to take up water with bread or a cloth
sopping: so wet that it drips
sore: hurting a little
sort: to put things that are alike together
sought: looked for
sound: what you hear
soup: a hot food that you eat with a spoon
sour: tasting like a lemon
source: where something comes from
sours: goes bad, as milk does
south: the other way from north
sow: to put seeds in the ground
sown: put into the ground, as seeds
sows: puts seeds in the ground; mother pigs
soy: a bean that some milk is made from
space: room; where the stars are
spake: an old word for said
spam: mail that no one wants
spams: sends mail that no one wants
span: to reach across
spans: reaches across
spar: to box for practice
spare: one more than you need
spark: a tiny bit of fire that flies up
spawn: to lay eggs in water, as fish and frogs do
speak: to say words
spear: a long stick with a sharp point
specks: tiny spots
speech: a talk in front of people
speed: how fast something goes
speeding: going too fast
speeds: goes fast
spell: to say or write the letters of a word
spelling: saying or writing the letters of a word
spells: says or writes the letters of a word
spend: to use money or time
spends: uses money or time
spent: used up, as money or time
spice: it makes food taste good, as pepper does
spiel: a long talk to sell something
spill: to let milk or water run out
spin: to turn around and around
spine: the row of bones down your back
spit: to push out of your mouth
spite: wanting to hurt someone's feelings
splash: to make water fly about
splat: the sound of something wet that hits the floor
splay: to spread apart
split: to break or cut into two parts
spoil: to make bad; to go bad
spoke: said words; a thin bar in a wheel
spoon: you eat soup with it
spoor: the marks and smell of a wild animal
spore: a tiny seed of a mushroom or a fern
sport: a game such as soccer
spot: a small round mark; a place
spouse: a husband or a wife
spout: the part of a teapot that you pour from
sprain: to twist a foot or a hand so that it hurts
sprawl: to lie with your arms and legs spread out
spray: to blow out tiny drops
spread: to put butter on bread; to open out wide
spree: a time of doing a lot of one fun thing
spring: the time of year when flowers come up
sprint: to run as fast as you can
sprout: to begin to grow
spruce: a tree with needles that stays green
sprung: jumped up
spry: quick and lively, even when old
spud: a potato
spur: a sharp point on a rider's boot
spurge: a wild plant with milky juice
spurn: to turn away in a mean way
spurt: to shoot out in a stream
spy: someone who watches in secret
squab: a young pigeon
squad: a small group that works together
square: a shape with four equal sides
squash: to press flat; a vegetable like a pumpkin
squat: to sit down low on your heels
squeak: the sound that a mouse makes
squib: a small firework
squid: a sea animal with ten arms
squint: to look with your eyes almost shut
squirm: to twist about because you cannot sit still
stack: a neat pile
stacked: put in a neat pile
stacks: neat piles
staff: the people who work in a place; a long stick
staffs: long sticks
stage: actors stand on it
stain: a spot that will not wash out
stair: one of the steps to another floor
stairs: steps to another floor
stake: a pointed stick in the ground
stale: old and dry, as bread
stalk: the long stem of a plant
stall: a small room for a horse; to wait on purpose
stamp: a small paper that you stick on a letter
stand: to be on your feet
standing: being on your feet
staph: a germ that makes a cut sore
star: a tiny light in the night sky
starch: white stuff in potatoes and bread
stare: to look for a long time
stars: tiny lights in the night sky
start: to begin
starve: to be very, very hungry
stash: to hide something for later
stashing: hiding for later
state: one of the fifty parts of our country
stay: to not go away
steal: to take what belongs to someone else
stealing: taking what belongs to someone else
steam: what comes up from very hot water
steel: a strong, hard metal
steep: going up or down in a sharp slant
steer: to turn the wheel of a car
stem: the part of a plant that holds the flower
stent: a tiny tube that a doctor puts in
step: to put one foot down; one part of a stair
steps: puts one foot down; parts of a stair
stern: strict; the back of a ship
stet: a sign to leave a word as it was
stew: meat and vegetables cooked slowly in a pot
stick: a thin piece of wood; to hold fast with glue
sticking: holding fast as with glue
sticks: thin pieces of wood; holds fast as with glue
stiff: hard to bend
still: not moving
stilts: tall poles to walk on
sting: to hurt with a sharp point, as bees do
stinger: the sharp point of a bee
stink: to smell bad
stinking: smelling bad
stinks: smells bad
stint: a time spent doing one job
stir: to mix with a spoon
stitches: the marks that thread makes when you sew
stitching: sewing with thread
stock: things kept in a store to sell
stocked: filled with things to sell
stocking: a long sock
stocks: things kept in a store to sell
stole: took what was not theirs
stomp: to walk with loud, heavy steps
stone: a small rock
stood: was on two feet
stooge: someone who is made fun of in a show
stool: a seat with no back
stop: to not go on
stops: does not go on
store: a place to buy things
stork: a big white bird with long red legs
storm: strong wind with rain or snow
stoup: a small basin for water
stove: you cook on it
stow: to put away
stows: puts away
straddle: to have one leg on each side
strain: to try too hard
strap: a long band that holds something on
straw: dry stems of wheat; you drink through it
stray: a pet that has no home
streak: a long, thin mark
stream: a small river
street: a road in a town
stress: a worried, tight feeling
stretch: to make longer by pulling
strew: to throw here and there
strict: making sure that rules are kept
stride: to walk with long steps
strike: to hit; when a batter swings and misses
string: a thin cord
strip: a long, narrow piece
strips: long, narrow pieces
strive: to try hard
stroke: to move your hand softly over something
strong: able to lift heavy things
struck: hit
struggle: to try very hard
strum: to brush your hand over the strings of a guitar
stub: a short end that is left; to bump your toe
stuck: not able to move
stud: a small round button or pin
stuff: things of any kind
stuffs: pushes in until it is full
stump: what is left when a tree is cut down
stun: to surprise very much
stung: hurt by a bee
stunt: a hard trick that people like to watch
sty: where pigs live
sub: a boat that goes under water; a teacher for a day
subbing: teaching in place of someone who is sick
such: of that kind; so very
suck: to pull in with your mouth
suckle: to drink milk from a mother
sudden: quick, when you do not expect it
sue: to ask a judge to make someone pay
suit: a coat and pants that match
sulk: to be cross and not talk
sum: what you get when you add
summing: adding up
summit: the top of a mountain
summon: to call someone to come
sump: a hole where water gathers
sun: the star that gives us light by day
sung: made music with the voice
sunk: gone to the bottom of the water
sunning: lying where it is bright and warm
sup: to eat the evening meal
supple: easy to bend
surf: waves that break on the beach
surge: a sudden strong rush
swab: a bit of cotton on a stick
swam: moved through water with arms and legs
swamp: wet land with trees
swan: a big white bird with a long neck
swap: to trade one thing for another
swatch: a small piece of cloth to show what it is like
swath: a wide strip
sway: to move slowly from side to side
sweat: water on your skin when you are hot
sweep: to clean a floor with a broom
sweet: tasting like sugar
swell: to get bigger
swept: cleaned with a broom
swerve: to turn aside suddenly
swift: very fast
swill: to drink a lot at once; food for pigs
swim: to move through water
swine: pigs
swing: a seat on ropes that goes to and fro
switch: you flip it to turn on a light
swore: promised in a very serious way
sworn: promised in a very serious way
swot: to study hard, as people in England say
tab: a small flap to pull
tabs: small flaps to pull
tack: a short, sharp nail
tacked: put up with short, sharp nails
tacking: putting up with short, sharp nails
tackle: to grab someone and stop the run
tacks: short, sharp nails
tad: a little bit
tag: a game of chasing; a label
tagging: touching someone in a game of chase
tail: the part at the back that a dog wags
take: to get hold of
taken: got hold of
taking: getting hold of
tale: a story
talk: to say things to each other
tall: high from top to bottom
tam: a round, flat Scottish hat
tame: used to people; not wild
taming: making a wild animal used to people
tan: light brown
tangs: strong, sharp tastes
tank: a big box for water or fish
tanking: filling a big box with water
tanks: big boxes for water or fish
tanning: getting brown in the sun
tans: gets brown in the sun
tap: to touch lightly; you turn it for water
tape: a sticky strip
taping: holding with a sticky strip
tapping: touching lightly again and again
taps: touches lightly; you turn them for water
tar: a thick black stuff for roads
tarp: a big sheet that keeps rain off
tart: a small pie; tasting sour
task: a piece of work to do
tasked: given work to do
tasking: giving work to do
tasks: pieces of work to do
taste: what your tongue does
tat: to make lace by hand
tattle: to tell on someone
taught: helped someone learn
taunt: to tease in a mean way
taut: pulled tight
tax: money that people pay to the country
taxes: money that people pay to the country
taxing: making people pay money to the country
tea: a hot drink made from leaves
teach: to help someone learn
teal: a color between blue and green
team: people who play together against others
tear: a drop from your eye; to rip
tears: drops from your eyes; rips
tease: to make fun of someone
tee: a small peg for a golf ball
teen: someone from thirteen to nineteen
teeth: you chew with them
tell: to say something to someone
teller: a person who works in a bank
telling: saying to someone
tells: says to someone
temp: someone who works in a place for a short time
temper: how easily you get angry
tempest: a very big storm
temping: working in a place for a short time
temple: a building where people pray
ten: the number after nine
tench: a kind of fish
tend: to take care of
tended: took care of
tending: taking care of
tends: takes care of
tennis: a game with rackets, a ball and a net
tens: there are two of these in twenty
tent: a house of cloth to camp in
tented: covered like a camp
term: a part of the school year
tern: a sea bird like a small gull
terse: using very few words
test: questions that show what you know
tested: tried out
testing: trying out
text: words on a page; to write to someone on a phone
thank: to say that you are glad of what someone did
thanking: saying that you are glad of what someone did
theft: taking what is not yours
theme: the main idea of a story
thew: an old word for a muscle
thick: not thin
thief: someone who takes what is not theirs
thigh: the top part of your leg
thin: not thick
thing: anything you can see or touch
think: to use your mind
thinking: using the mind
thinks: uses the mind
third: after the second
thirst: needing to drink
thorn: a sharp point on a stem
thought: what is in your mind
thread: a thin string to sew with
threat: words that say you will be hurt
three: the number after two
threw: made a thing fly out of the hand
thrift: being careful with money
thrill: a sudden feeling of great joy
thrilled: very, very happy
thrilling: making your heart beat fast
throat: the inside of your neck
throe: a strong, sudden pain
throne: the chair of a king or a queen
throw: to make a ball fly out of your hand
thrown: tossed through the air
throws: makes a ball fly out of the hand
thrum: a low, steady sound
thrush: a brown bird that sings well
thrust: to push hard
thumb: the short, thick finger
thump: a dull, heavy sound
tick: the sound that a clock makes
ticked: made the sound of a clock
ticking: making the sound of a clock
tickle: to touch lightly and make someone laugh
ticks: makes the sound of a clock
tide: the sea coming in and going out
tie: to make a knot or a bow
tier: one of the rows, each higher than the last
tiffs: small fights between friends
tight: fitting very closely
tighter: fitting more closely
til: up to the time that
tile: a flat, hard square on a floor or a wall
till: up to the time that; the box for money in a store
tilled: got the ground ready for seeds
tilling: getting the ground ready for seeds
tilt: to lean to one side
tilting: leaning to one side
tilts: leans to one side
time: minutes, hours and days
timing: doing it at just the right moment
tin: a soft, silver metal
tine: one of the points of a fork
ting: the high sound of a small bell
tinted: with a little color added
tinting: adding a little color
tints: adds a little color
tip: the very end of something
tipping: making lean over
tips: the very ends; makes lean over
tire: the rubber around a wheel
toad: an animal like a frog with bumpy skin
toast: bread made brown and crisp
toddle: to walk as a baby does
toe: one of the five on your foot
tog: to dress in warm clothes
toggle: to switch back and forth
toil: to work very hard
told: said to someone
tole: painted metal trays and pots
toll: money you pay to use a road
tom: a male cat or turkey
ton: a very heavy weight
tone: how a voice or a note sounds
tong: one arm of a tool that picks up hot things
too: also; more than enough
took: got hold of
tool: a thing to work with, such as a hammer
tooth: you chew with it
top: the highest part
topping: what is put on a pizza or on ice cream
topple: to fall over
tops: the highest parts; toys that spin
tor: a rocky hill
torch: a stick with fire at one end
tore: ripped
torn: ripped apart
toss: to throw
tossed: threw
toting: carrying
tow: to pull a car or a boat with a rope
town: houses and streets where people live
tows: pulls with a rope
toy: something to play with
trace: to draw over the lines of a picture
track: marks that feet leave; rails for a train
tracked: went after the marks of feet
tracks: marks that feet leave; rails for a train
trade: to give one thing and get another
trail: a path in the woods
train: cars that run on rails
trait: what someone is like, such as kind or shy
tram: a train that runs in the street
trample: to step on and crush
trap: something to catch an animal
traps: they catch animals
trash: what you throw away
trawl: to pull a big net behind a boat
tray: a flat board to carry food on
tread: to step; the part of a tire on the road
treat: something special and good
treated: gave something special to
treating: giving something special to
treats: special, good things
treble: a high voice or sound
tree: a tall plant with a trunk and branches
trees: tall plants with trunks and branches
trend: what more and more people do
tribe: families who live together as one people
trick: something you do to fool or surprise people
tricked: fooled
trickle: to run slowly, drop by drop
tricks: things you do to fool or surprise people
trim: to cut a little off
trip: to catch your foot and fall; a journey
triple: three times as much
trips: catches a foot and falls; journeys
trite: said so often that it is dull
troop: a group of scouts or soldiers
trot: how a horse runs slowly
trout: a fish that lives in streams
truce: when two sides stop fighting
truck: a big car that carries heavy things
trucks: big cars that carry heavy things
trudge: to walk slowly because you are tired
true: so; not made up
trundle: to roll along slowly
trunk: an elephant's long nose; the thick part of a tree
trust: to believe that someone will do right
try: to see if you can do it
tub: you take a bath in it
tube: a long, hollow thing
tuck: to push the edge in
tucked: pushed the edges in
tucking: pushing the edges in
tucks: pushes the edges in
tuft: a small bunch of grass or hair
tug: to pull hard
tugging: pulling hard
tun: a very big barrel
tune: the notes of a song
tunnel: a long hole through a hill
turf: grass and the earth under it
turn: to go round; when it is your time to play
tussle: a rough fight that is half play
tut: a sound you make when you do not like something
tux: a black suit for a party
twee: too sweet and cute
twig: a small branch
twill: a strong cloth with slanting lines
twin: one of two children born together
twine: strong string
twirl: to spin around
twist: to turn one end
twixt: an old word for between
type: to write on a keyboard; a kind
vain: too proud of how you look
vale: low land between hills
van: a car with a lot of room
vane: it shows which way the wind blows
vast: very, very big
vat: a very big tub
vault: to jump over; a strong room for money
vaunt: to say how great you are
veal: meat from a calf
veep: short for vice president
veer: to turn suddenly to one side
vend: to sell
vent: an opening that lets air in or out
verb: a word for what someone does
verge: the edge of something
verse: some lines of a poem or a song
verve: a lot of energy
vest: a coat without sleeves
vet: a doctor for animals
vetch: a climbing plant like a pea
vibe: the feeling you get in a place
vice: a bad habit
vie: to try to beat others
vile: very bad
vim: a lot of energy
vine: a plant that climbs up a wall
voice: the sound you make when you speak or sing
void: an empty space
vote: to say which one you choose
vouch: to say that you are sure it is true
vow: a very serious promise
vows: makes a very serious promise
wacks: hits hard
wad: a lump of paper or cloth
wade: to walk in water
wag: to move a tail from side to side
wage: money that is paid for work
wagging: moving a tail from side to side
wail: a long, loud cry
waist: the middle of your body, where a belt goes
wait: to stay until something happens
wake: to stop being asleep
waken: to stop sleeping
waking: stopping being asleep
walk: to go on foot
wall: the side of a room
wan: pale and tired
wand: a stick for magic
wane: to get smaller, as the moon does
waning: getting smaller, as the moon does
want: to wish to have
ward: a big room in a hospital
ware: a thing that is made to be sold
warm: a little hot
warn: to tell of danger
warp: to bend out of shape
wart: a small hard bump on the skin
wash: to make clean with water
wasp: a thin insect that stings
waste: to use more than you need
watch: to look at; a small clock on your arm
wave: to move your hand to say hello; water that rolls in
waving: moving your hand to say hello
wax: what candles are made of
way: how to get there
we: you and I
weak: not strong
wear: to have on, as clothes
wears: has on, as clothes
web: what a spider makes
webbing: strong cloth straps; the skin between a duck's toes
wed: to marry
wedding: the day when two people marry
week: seven days
weep: to cry
weft: the threads that go across in cloth
weigh: to find out how heavy something is
weld: to join metal with heat
welded: joined metal with heat
welding: joining metal with heat
well: in a good way; a deep hole with water
wen: a lump under the skin
went: moved away from here
west: where the sun goes down
wet: with water on it
whack: to hit with a loud sound
whacked: hit with a loud sound
whacking: hitting with a loud sound
whale: a very big animal that lives in the sea
wheat: a plant whose seeds make flour
when: at what time
whet: to make sharp
which: what one
whiff: a little smell of something
while: a time; at the same time as
whim: a sudden idea
whip: to beat cream or eggs fast
whisked: beat eggs; took away quickly
whisks: tools to beat eggs with
whist: a card game for four
whit: a tiny bit
white: the color of snow
whiz: to go by very fast
why: for what reason
wicks: the strings in candles
wide: far from side to side
wife: the woman that someone is married to
wig: hair that you can put on
wigging: putting false hair on
wiggle: to move from side to side
will: is going to
win: to come in first in a game
wind: moving air; to turn round and round
wing: a bird flies with it
wink: to close one eye and open it again
winked: closed one eye and opened it again
winks: closes one eye and opens it again
winning: coming in first
wipe: to rub clean with a cloth
wire: a thin thread of metal
wish: to want something very much
wished: wanted something very much
wishes: wants something very much
wishing: wanting something very much
wisp: a thin bit of hair or smoke
wist: an old word for knew
wit: a quick, funny mind
witch: a woman in stories who does magic
witches: women in stories who do magic
witching: doing magic
with: together; having
wiz: someone who is very good at something
woe: great sadness
wok: a round pan
woke: stopped being asleep
woo: to try to make someone love you
wood: what trees are made of
word: letters that say something
wore: had on, as clothes
work: what people do at a job
world: the earth and all that is on it
worm: a long, soft animal that lives in the earth
worn: old from being used a lot
worse: not as good as before
worst: not as good as all the others
worth: how much something costs or means
wound: a place where the body is hurt
wow: what you say when you are surprised
wrap: to put paper around
wrath: great anger
wreck: a ship or a car that is broken
wren: a very small brown bird
wrench: a tool that turns nuts and bolts
wrest: to pull away by force
wring: to twist a wet cloth until water runs out
wrist: where your hand joins your arm
writ: a paper from a judge
write: to put words on paper
wrong: not right
wrote: put words on paper
wrung: twisted until the water ran out
wurst: a German sausage
yak: a big animal with long hair
yam: a sweet, orange root to eat
yap: to bark in a high voice
yard: the grass around a house; three feet
yarn: thick thread to knit with
yaw: to turn from side to side, as a ship does
yawn: to open your mouth wide because you are tired
ye: an old word for you
year: twelve months
yeast: it makes bread dough rise
yell: to shout
yelling: shouting
yen: money in Japan; a wish for something
yep: a short word that says it is so
yes: the word to say that it is so
yet: up to now
yew: a tree with dark needles and red berries
yield: to let others go first
yin: the dark, quiet half of a Chinese sign with two halves
yip: a short, high bark
yon: an old word for over there
yore: a time long ago
yow: what you say when something hurts
yum: what you say when food tastes good
yup: a short word that says it is so
zap: to hit with a quick flash
zed: what people in England call the last letter
zing: a sharp, fast sound; a lot of energy
zip: to close a coat by its metal teeth
zit: a small red spot on your skin
zone: a place for one use
zoo: a place to see wild animals
`;

/** Our own meanings by word. */
export const OWN_MEANINGS: ReadonlyMap<string, string> = new Map(
  TEXT.trim()
    .split('\n')
    .map((line): [string, string] => {
      const at = line.indexOf(': ');
      return [line.slice(0, at), line.slice(at + 2)];
    }),
);
