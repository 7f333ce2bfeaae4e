/**
 * Meanings of our own, in plain words that a teacher can say aloud to children:
 * the sense of a child's world first. For words that boards and drills show
 * often, and where WordNet's first fit sense is another, is cut, or is unkind.
 * Written for this project by a language model, read by no practicing teacher
 * yet. At most 60 signs each. Sorted.
 */
const TEXT = `
ail: to feel sick
babble: to talk with no sense
back: the side behind
bad: not good
badge: a small sign that you wear
bag: something to carry things in
bail: to scoop water out of a boat
bait: food on a hook to catch fish
bake: to cook in an oven
bald: with no hair on the head
ball: a round thing to throw or kick
balm: a soft cream that soothes your skin
ban: to say that something is not allowed
band: people who play music together
bang: a sudden loud noise
bank: a place to keep money; the side of a river
bare: with nothing on
base: the bottom part; you run to it in a ball game
bash: to hit hard
basis: what something rests on
bat: a stick to hit a ball; an animal that flies at night
bath: a wash in a tub of water
battle: a long fight
bay: a place where the sea reaches into the land
be: to live; am, is and are come from it
bead: a small ball with a hole to string it
beak: the hard mouth of a bird
bean: a seed that you can eat
beast: a large animal
beat: to win; to hit again and again
bed: where you sleep
bee: an insect that makes honey
beef: meat from a cow
beep: a short, high sound
beet: a dark red root that you can eat
beg: to ask and ask for something
bell: it rings when you swing or press it
belt: a strap that holds up your pants
bench: a long seat for many people
bend: to make a curve in something
best: better than all the others
bet: to say what you think will happen
bib: a cloth that keeps a baby's shirt clean
bid: to offer to pay for something
big: large
bill: a paper that says what you must pay; a bird's beak
bin: a box to keep or throw things in
bind: to tie together
bit: a small piece; used the teeth
blab: to tell a secret
black: the darkest color
blame: to say who did something wrong
blast: a strong burst of wind or noise
bled: lost blood
bleed: to lose blood
blend: to mix or join smoothly
bless: to ask for good to come to someone
blew: pushed air out
blip: a tiny dot of light or a tiny sound
bliss: being as happy as can be
blob: a soft lump with no shape
block: a toy to build with; to stand in the way
blog: pages on the internet where someone writes
blond: light yellow, of hair
bloom: to open, as a flower does
blot: a spot of ink
blow: to push out air
blue: the color of the sky
boar: a wild pig
boat: it carries people on water
bob: to move up and down
bog: wet, soft ground
boil: to heat water until it bubbles
bold: brave
bolt: a metal bar that keeps a door shut
bond: what holds people together
bone: a hard part inside your body
boo: a word to scare someone
book: pages with words and pictures
boost: a push up
booth: a small place to sit, buy or vote
bop: to dance
bore: to make someone tired by being dull
born: brought into life
boss: the person who tells others what work to do
bottle: a tall jar with a narrow neck
bound: to jump along; tied up
bout: a short time of being sick; a match
bow: two loops in a ribbon; it shoots arrows
bowl: a deep round dish
box: it has four sides, a bottom, and often a lid
brag: to say how great you are
brain: the part in your head that thinks
bran: the outside of a grain, good to eat
brand: the name of the maker
brass: a yellow metal for horns
brat: a child who behaves badly
bread: a food baked from flour
breath: air that goes in and out of you
brick: a hard block to build walls with
bride: a woman on her wedding day
brig: a ship with two masts
brim: the edge of a cup or a hat
broke: came apart
brook: a small stream
broom: a brush on a long stick
brought: came with
brown: the color of chocolate
buck: a male deer
bud: a flower that is not open yet
buff: to rub until it shines
bug: an insect
bump: to hit against; a small lump
bun: a small round bread
bundle: things tied together
bunk: one bed above another
burn: to be on fire
bus: it carries many people along the road
buss: a kiss
bust: to break
but: it joins two things that do not match
buzz: the sound that a bee makes
bye: what you say when you leave
cab: a car with a driver that you pay for
cad: a man who does not act well toward others
cake: a sweet food for a birthday
calm: quiet and still
cam: a wheel that pushes a part of a machine
camp: to live in a tent for fun
can: to be able to; a round metal box
candle: a stick of wax that burns with a small light
cap: a soft hat
cape: a coat with no sleeves that hangs down your back
car: it has four wheels and an engine
care: to look after; to think it matters
cart: a box on wheels to push or pull
cash: coins and paper money
cast: the people in a play; it keeps a broken arm still
cat: a small furry pet that purrs
cattle: cows and bulls
caught: got hold of a ball in the air
cave: a hollow place in a hill
cent: a penny
chair: a seat with a back
chalk: a white stick to write on a board
champ: the winner
chap: a man or a boy
chase: to run after
chat: a friendly talk
cheap: costing little
check: to make sure; a mark that says yes
cheer: to shout because you are happy
chef: a person who cooks for a job
chess: a board game with kings and queens
chest: the front of your body; a large box
chick: a baby bird
child: a young boy or girl
chill: to make cold
chin: the part of your face below your mouth
chip: a thin piece, often to eat
chop: to cut into pieces
chum: a friend
claim: to say that something is true or is yours
clam: a sea animal in a shell
clamp: a tool that holds things together
clan: a big family
clap: to hit your hands together
class: children who learn together
clay: soft earth to make pots with
clean: not dirty
clear: easy to see through
click: a short, sharp sound
cliff: a high, steep wall of rock
clip: a small thing that holds papers or hair
clock: it shows the time
clod: a lump of earth
clog: to block a pipe; a wooden shoe
clone: an exact copy
clot: a thick lump
cloth: what shirts and sheets are made of
club: people who meet to do a thing they like
coal: a black rock that burns
coast: the land next to the sea
coat: you wear it outside when it is cold
cod: a fish that people eat
code: signs that only some people can read
cog: a tooth on a wheel of a machine
con: a reason against something
cop: a police officer
cot: a small, light bed
cow: a farm animal that gives milk
crab: a sea animal with claws
craft: making things by hand
cram: to push too much in
cramp: a sudden tight pain in a muscle
crash: to hit with a loud noise
crate: a big wooden box
creak: the sound that an old door makes
cream: the thick part of milk
creep: to move slowly and quietly
crew: the people who work on a ship or a plane
crib: a baby's bed with high sides
crisp: dry and easy to break with a crunch
crook: someone who steals; a bent stick
crop: plants that a farmer grows
cross: a little angry; to go to the other side
crow: a big black bird
crown: a king or a queen wears it on the head
crude: made in a rough way
crush: to press until it breaks
cry: to have tears come from your eyes
cub: a young bear, lion or fox
cud: grass that a cow chews again
cuff: the end of a sleeve
cup: you drink from it
cut: to make pieces with scissors or a knife
dab: to touch lightly
dad: a father
dam: a wall that holds back water
damp: a little wet
dare: to be brave enough to do it
dash: to run quickly
date: the day, month and year
day: the time when it is light
deaf: not able to hear
deal: to hand out cards; what two people agree on
debt: money that you owe
deck: the floor of a ship; a set of cards
deem: to think
deep: far down
deer: an animal that lives in the woods and has antlers
den: where a fox or a bear lives
dent: a place that was pushed in
desk: a table to write at
did: made or worked at something
dig: to make a hole in the ground
dim: not bright
dime: a coin worth ten cents
din: a lot of loud noise
dine: to eat dinner
dip: to put in and take out again
dish: a plate or a bowl
disk: a flat, round thing
ditch: a long hole that carries water
dock: the place where a boat is tied up
doe: a mother deer
dog: a pet that barks
doll: a toy that looks like a person
don: to put on clothes
doom: a very bad end
door: you open it to go into a room
dot: a small round mark
dote: to love someone very much
dove: a white or gray bird
drab: dull, with no bright colors
draft: the first try at writing something
drag: to pull along the ground
drain: a hole that water runs out through
draw: to make a picture with a pencil
dream: pictures in your mind when you sleep
drench: to make very wet
drift: to be carried slowly by wind or water
drill: a tool that makes holes
drip: to fall in drops
drop: to let fall; a tiny bit of water
drove: made a car go
drown: to go under water and not be able to breathe
drum: you hit it to make music
dry: not wet
dub: to give a name to
duck: a bird that swims and quacks
dud: a thing that does not work
dug: made a hole in the ground
dull: not bright or not sharp
dune: a hill of sand by the sea
dusk: the time when it gets dark
dust: fine, dry dirt
dye: to change the color of cloth
face: eyes, nose, mouth and all around them
fad: something many people like for a short time
fade: to lose color slowly
fail: to not be able to do it
faint: hard to hear or see
fair: right for everyone; rides and games in a field
fake: not real
fame: when very many people know you
fan: it blows air to keep you cool
far: a long way off
farm: land where food is grown and animals live
fast: quick
fat: thick or big around
fate: what must happen
fax: a letter sent over the phone line
feast: a very big meal
feat: something that is very hard to do
fed: gave food to
fee: money you pay to get in or to join
feel: to know by touching
feet: you stand on them
fell: dropped to the ground
felt: knew by touching; a thick, soft cloth
fen: low, wet land
fern: a green plant with leaves like feathers
fetch: to go and bring back
fib: a small lie
fig: a soft, sweet fruit
fight: to hit each other or shout
file: papers kept together; a tool to make smooth
fill: to make full
film: a movie
fin: the part that a fish steers with
fine: very good; not sick
fire: what burns hot and bright
fish: an animal with fins that swims
fist: a tightly closed hand
fit: to be the right size
five: the number after four
fix: to make right what is broken
fizz: to make many small bubbles
flag: a cloth on a pole that stands for a country
flame: the bright part of a fire
flap: to move up and down like a wing
flare: a sudden bright flame
flash: a sudden bright light
flat: with no bumps or hills
flea: a tiny insect that jumps and bites
flee: to run away from danger
fleet: many ships together
flesh: the soft part under the skin
flew: moved through the air
flex: to bend
flick: to hit quickly with a finger
flight: a trip through the air
flip: to turn over quickly
flit: to fly or move lightly
float: to stay on top of the water
flock: many birds or sheep together
floor: you walk on it in a room
flop: to fall down loosely
flour: powder made from wheat
flow: to move along like water
flown: gone through the air
flute: a thin pipe that makes music when you blow
flux: a time when things keep changing
fly: to move through the air with wings
foal: a baby horse
fog: a cloud close to the ground
fold: to bend one part over another
fond: liking someone very much
food: what you eat
forge: a place where iron is heated and shaped
fork: you eat with it
forth: out or forward
fought: had a fight
found: saw what you were looking for
four: the number after three
fox: a wild animal with a bushy tail
frame: the edge around a picture
free: costing nothing; not locked up
fresh: just made or just picked
fret: to worry
fridge: a box in the kitchen that keeps food cold
frog: a small green animal that hops and croaks
frost: thin ice on grass on a cold morning
frown: to look cross or sad
fruit: apples, pears and plums
fun: what you have when you play
fur: the soft hair of an animal
fuss: too much worry about a small thing
fuzz: soft, short hair
gab: to talk a lot
gag: a joke
gait: the way you walk
gal: a girl or a woman
gang: a group that does things together
gap: an empty space between two things
gas: fuel for a car; something as thin as air
gash: a long, deep cut
gel: a thick, wet jelly
gem: a stone that shines, such as a ruby
germ: a tiny living thing that can make you sick
get: to come to have
gig: a show by a band
giggle: to laugh in a silly way
girl: a child who will be a woman
give: to hand to someone to keep
glad: happy
glass: you can see through it; you drink from it
glib: talking smoothly without thinking
glide: to move smoothly
glint: a quick flash of light
globe: a round map of the world
glow: to give a soft light
glum: sad and quiet
gnarled: twisted, like an old tree
goal: where the ball must go to score
gob: a lump of something soft
gobble: to eat fast
got: came to have
grab: to take quickly
grain: a seed of wheat, rice or corn
gram: a small weight, about a paper clip
grand: very big and fine
grant: to give what was asked for
grasp: to hold tightly
grass: the green plant that lawns are made of
gray: the color of rain clouds
grease: thick, sticky fat or oil
green: the color of grass
greet: to say hello
grew: got bigger
grid: lines that cross and make squares
grief: great sadness
grill: to cook over a fire
grim: serious and not happy
grin: a big smile
grip: to hold tight
grit: tiny bits of sand or stone
groom: to brush a horse; a man on his wedding day
ground: the earth under your feet
grow: to get bigger
grown: big, not a child any more
grows: gets bigger
growth: getting bigger
grub: a young insect that looks like a worm
grudge: being angry about something for a long time
gull: a white and gray bird by the sea
gum: something soft that you chew
gush: to flow out fast
gym: a big room for sports
hack: to cut with rough strokes
had: owned; held
hag: an old witch in a story
hail: small balls of ice that fall like rain
hair: it grows on your head
hall: a long room that leads to other rooms
ham: meat from a pig
hand: the part of your arm with fingers
handle: the part you hold
hare: an animal like a big rabbit
has: owns; holds
hash: meat and potatoes cut small and fried
hat: you wear it on your head
hatch: to come out of an egg
have: to own; to hold
hay: dry grass for animals to eat
he: that boy or man
heal: to get well again
heap: a messy pile
hear: to use your ears
heat: being hot
hedge: bushes that grow in a line like a wall
heel: the back of your foot
held: kept in the hands
help: to make it easier for someone
hem: the sewn edge of a skirt
hen: a female chicken
her: that girl or woman
herd: a group of animals that live together
here: in this place
hid: put where no one could see it
hide: to go where no one can see you
high: far up
hill: ground that is higher than the rest
him: that boy or man
hint: a little help to find an answer
hip: the side of your body where your leg begins
hire: to give someone a job
his: of that boy or man
hiss: the sound that a snake makes
hit: to strike with your hand or a bat
hitch: to tie one thing to another
hive: a home for bees
hobble: to walk with a limp
hog: a big pig
hoop: a big ring
hop: to jump on one foot
horn: a hard point on a goat's head; it honks
hot: very warm
how: in what way
hub: the middle of a wheel
huddle: to crowd close together
huff: to breathe hard; to be a bit angry
hug: to hold someone in your arms
hull: the bottom of a ship
hum: to sing with your mouth closed
hunch: a feeling that you are right
hung: was up on a hook
hunk: a big piece
hunt: to look hard for something
hut: a very small house
hutch: a home for a rabbit
hymn: a song for church
jab: to poke quickly
jam: sweet fruit to put on bread
jar: a glass pot with a lid
jazz: a kind of music with a lively beat
jeep: a small, strong car for rough roads
jest: a joke
jet: a fast airplane
jig: a lively dance
job: the work that someone does
jog: to run slowly
jot: to write down quickly
judge: the person who decides who is right
jug: something to pour from
just: fair; only a moment ago
jut: to stick out
keg: a small barrel
ken: what a person knows
kick: to hit with your foot
kid: a child; a young goat
kin: your family
kiss: to touch with your lips
kit: a set of things to make or do something
knee: where your leg bends
knit: to make cloth from yarn with two needles
knob: a round handle
knot: where string is tied
lab: a room to find things out by trying
label: a piece of paper that says what is inside
lack: to not have enough
lad: a boy
lag: to be slower than the others
lamb: a young sheep
lamp: it gives light in a room
land: the part of the earth that is not water
lane: a narrow road, or one part of a road
lap: the top of your legs when you sit
lark: a small bird that sings
lass: a girl
last: after all the others
late: after the right time
law: a rule for everyone in a country
lawn: grass around a house
lay: to put something down
lead: to go first and show the way
leaf: a flat green part of a plant
leak: to let water drip out through a hole
lean: to bend to one side
leap: to jump far
learn: to come to know
lease: a paper that lets you rent a house
leash: a strap to walk a dog on
least: the smallest amount
led: showed the way
ledge: a narrow shelf on a rock or a wall
left: the side across from right; went away
leg: you walk on two of them
lend: to let someone use a thing for a while
lent: let someone use something for a while
less: not as much
lest: so that something will not happen
lick: to move your tongue over something
lid: the top that closes a pot or a jar
lie: to say what is not true; to be flat
life: the time from birth on
lift: to pick up
light: what lets us see; not heavy
limb: an arm, a leg or a branch
lime: a small green fruit that tastes sour
line: a long, thin mark
link: one ring of a chain
lip: the edge of your mouth
list: words or names, one under another
lit: gave light; set on fire
little: small
live: to have life; to have a home
loaf: bread before it is sliced
loan: money or a thing that you must give back
lock: you open it with a key
lodge: a small house in the woods
loft: a room under the roof
log: a piece of a tree trunk
lone: only one, with no others
long: far from end to end
look: to use your eyes
loop: the shape of a ring made by a string
loose: not tight
loot: things that robbers took
loss: not having a thing any more
lost: not able to find the way
lot: many, or a piece of land
low: near the ground; not high
luck: good things that just happen
lug: to carry something heavy
lull: a short quiet time
lung: the part of your body that holds air
mad: angry
made: put together
mail: letters and boxes that are brought to you
main: the most important
make: to put together
male: a boy or a man
mall: a big building with many shops
man: a grown-up boy
map: a drawing that shows where places are
mash: to crush until soft
mask: it covers your face
mass: how much of something there is
mat: a small rug
mate: a friend; one of two animals that belong together
math: numbers, shapes and counting
may: to be allowed to
maze: paths where it is hard to find the way out
meal: breakfast, lunch or dinner
mean: not kind; to want to say
meant: had in mind
meat: food from an animal's body
meet: to come together with someone
melt: to turn to water when it gets warm
men: grown-up boys
mend: to fix what is torn or broken
mere: only; no more than
merge: to come together into one
mesh: a net of threads or wires
mess: when things are dirty or all over
met: came together with someone
mice: more than one mouse
middle: the part halfway between the ends
mile: as far as you walk in about twenty minutes
milk: a white drink from cows
mill: a place where grain is made into flour
mince: to cut very small
mine: of me; a deep hole where coal is dug
mink: a small animal with soft brown fur
mint: a plant with a fresh taste
miss: to not hit or not catch
mist: a thin fog
mix: to stir together
moan: a low, sad sound
mob: a big, wild crowd
mock: to laugh at someone in an unkind way
mold: green fuzz on old food; a form to shape things
mole: a small animal that digs tunnels
moo: the sound that a cow makes
moon: it shines in the sky at night
moor: to tie up a boat
moose: a very large deer
mop: you wash a floor with it
more: a larger number
moss: soft green plants on stones and trees
most: more than all the others
moth: an insect like a butterfly that flies at night
mouse: a small animal with a long tail
mouth: you eat and speak with it
mow: to cut grass
much: a lot
muck: wet dirt
mud: wet, soft earth
muddle: a mix-up
muff: a warm roll of fur for your hands
mug: a big cup with a handle
mule: an animal that is half horse and half donkey
mum: silent, saying nothing
must: to have to
mutt: a dog of mixed kinds
my: of me
myth: a very old story
nab: to catch or grab
nag: to ask someone again and again
nail: a thin pointed piece of metal to hammer
name: what you are called
nap: a short sleep
near: close by
neat: with everything in its place
neck: the part that holds up your head
neigh: the sound that a horse makes
nerve: it carries feelings to your brain
nest: a bird's home
net: string tied with holes, to catch fish or balls
new: just made or just bought
nib: the sharp tip of a pen
nick: a small cut
night: the time when it is dark
nine: the number after eight
nip: a small bite
nod: to move your head up and down for yes
non: a word part that means not
nor: and not
north: where a compass needle points
not: it turns a yes into a no
notch: a small cut shaped like a V
note: a short letter; a sound in music
numb: when you cannot feel anything there
nun: a woman who lives and prays with others
nut: a seed with a hard shell
pack: to put things in a bag
packed: put into a bag or a box
pad: something soft, or paper to write on
paddle: a short oar
page: one side of a sheet in a book
pail: a bucket
pain: what you feel when something hurts
paint: color that you put on with a brush
pair: two that belong together
pal: a friend
pale: light in color
palm: the inside of your hand; a tree with big leaves
pan: a flat thing to cook in
par: how many hits a golf hole should take
part: a piece of a whole
pass: to go by; to hand over
past: the time before now
pat: to touch softly with your hand
path: a small way to walk on
paw: the foot of a dog or a cat
pay: to give money for something
pea: a small round green vegetable
peace: a time without fighting
peak: the top of a mountain
pearl: a white bead that grows in a shell
peck: to bite with a beak
peel: to take off the skin of a fruit
peeled: with the skin taken off
peep: a short look; the sound of a chick
peg: a small stick to hang things on
pen: you write with it in ink
pep: energy
per: for each
pet: an animal that lives with you
pick: to choose; to take off a plant
pickle: a cucumber kept in salt water
pie: a baked crust with a filling
piece: one part of something
pier: a long walk built out over the water
pig: a farm animal that says oink
pile: many things on top of each other
pill: a small piece of medicine to swallow
pin: a thin, sharp bit of metal that holds things
pinch: to squeeze between two fingers
pine: a tree with needles and cones
pink: a light red
pipe: a tube that water runs through
pit: a hole in the ground; the seed of a peach
pitch: to throw a ball to a batter
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
plot: what happens in a story
plug: it stops a hole or goes into the wall
plum: a sweet purple fruit
pod: where peas grow
point: the sharp end
poke: to push with a finger
pole: a long, thin stick of wood or metal
poll: a count of what people think
pond: a small lake
poor: having very little money
pop: a small, sharp burst
pork: meat from a pig
port: a place where ships come in
pot: something deep to cook in
pound: to hit hard; sixteen ounces
pour: to let water run out of a cup
pout: to push out your lips when you are cross
prank: a trick to make people laugh
prep: to get things ready
pride: being glad of what you did
print: to make letters that do not join
prom: a dance at a high school
prone: lying on your stomach; likely to
proof: what shows that a thing is so
prop: something that holds a thing up
pry: to pull open by force
puddle: water that lies on the ground after rain
puff: a small cloud of air or smoke
pulp: the soft inside of a fruit
pump: it pushes water or air through a pipe
pun: a joke with a word that means two things
pup: a young dog
putt: to hit a golf ball softly
quack: the sound that a duck makes
queen: a woman who rules a country
quest: a long search for something
quick: fast
quilt: a warm cover made of many pieces
quit: to stop doing something
quiz: a short test
quote: to say the exact words of someone
race: to see who is fastest
rack: a frame to hang or put things on
raft: a flat boat made of logs tied together
rag: an old piece of cloth
rage: very strong anger
raid: a sudden attack
rain: water that falls from clouds
rake: a tool to gather leaves
ram: a male sheep
ran: moved fast on foot
ranch: a farm for cows or horses
rang: made a sound like a bell
rank: your place in a row from first to last
rap: to knock; a song that is spoken fast
rare: not seen often
rash: red spots on your skin
rat: an animal like a big mouse
rate: how fast or how often
rattle: a baby's toy that shakes with noise
rave: to say how good a thing is, again and again
raw: not cooked
ray: a thin line of light
reach: to stretch out your hand for
read: to look at words and know what they say
real: true, not made up
rear: the back part
red: the color of a ripe strawberry
reef: rocks or coral just under the sea
reel: a wheel that string is wound on
ref: the person who says who plays fair
rent: money you pay to live in a house that is not yours
rest: to be still after work or play
rib: a bone in your chest
rich: having a lot of money
rid: free of something you do not want
riddle: a tricky question to guess
ride: to sit on a bike, a horse or a bus as it goes
ridge: the long top of a hill
rig: a big truck
right: correct; not left
rim: the round edge of a cup or a wheel
ring: a round band for a finger; the sound of a bell
rip: to tear
ripe: ready to eat, as fruit
ripple: a tiny wave
rise: to go up
risk: a chance that something goes wrong
road: cars drive on it
roam: to walk about with no plan
roar: the sound that a lion makes
roast: to cook in an oven
rob: to take what is not yours
robin: a bird with a red chest
rock: a big stone
rod: a long, thin stick
role: the part you play
roll: to turn over and over
roof: the top of a house
room: a part of a house with walls and a door
root: the part of a plant under the ground
rot: to go bad
round: shaped like a ball
row: things in a line; to move a boat with oars
rub: to move your hand back and forth over something
rude: not polite
rug: a soft mat on the floor
run: to move fast on your feet
rung: a step of a ladder
rush: to hurry
rut: a deep track made by wheels
rye: a plant whose seeds make dark bread
sac: a small bag inside an animal or plant
sack: a big bag
sad: not happy
saddle: the seat on a horse
safe: away from danger
sag: to hang down in the middle
sail: a big cloth that catches the wind on a boat
sake: the good of someone
sale: when things cost less for a while
salt: white grains that we put on food
same: not different
sand: tiny bits of rock on a beach
sane: with a clear mind
sang: made music with the voice
sank: went down in the water
sap: the juice inside a tree
sat: rested on a chair or on the floor
save: to keep for later; to get out of danger
sax: a shiny horn for playing jazz
say: to speak
scab: the crust over a cut that heals
scale: you stand on it to see how heavy you are
scam: a trick to get money
scan: to look over quickly
scare: to make afraid
sconce: a lamp on a wall
score: how many points a team has
scram: to run away quickly
scrap: a small piece that is left over
scrape: to rub with something sharp
scratch: to rub an itch
scream: to cry out in a loud, high voice
screen: the flat part of a TV or tablet that you look at
scrub: to rub hard to make clean
sea: a very large body of salt water
seal: a sea animal with flippers; to close tightly
sear: to burn the outside quickly
search: to look all over for something
seat: a place to sit
see: to use your eyes
seed: a plant grows from it
seek: to look for
seem: to look as if
seen: looked at
self: the person that you are
sell: to give something for money
send: to make something go to someone
sent: made something go to someone
set: to put in a place; a group that belongs together
shack: a small, rough house
shade: a place out of the sun
shall: will
shame: a bad feeling when you did something wrong
share: to let others have some
shed: a small house for tools
sheer: thin enough to see through; very steep
shell: the hard outside of an egg, a nut or a snail
shift: to move over a little
shin: the front of your leg below the knee
ship: a big boat
shop: a small store
shot: sent a ball at a goal
shout: to call very loudly
show: to let someone see
shrimp: a small sea animal with ten legs
shrink: to get smaller
shy: a little afraid of people you do not know
sick: not well
side: left is one, right is the other
sight: what your eyes do
silk: a soft, shiny cloth made by worms
sin: something bad that a person does
sing: to make music with your voice
sink: to go down in water; where you wash the dishes
sip: to drink a little
sister: a girl with the same mother and father
sit: to rest on a chair or on the floor
six: the number after five
skill: being able to do a thing well
skin: what covers your body
skip: to hop from foot to foot
sky: where the clouds and the stars are
slam: to shut with a bang
slang: words that friends use but not books
slap: to hit with a flat hand
slash: to cut with a long sweep
sled: you slide down snow on it
sleep: to rest at night with your eyes shut
sleeve: the part of a shirt around your arm
slick: smooth and easy to slip on
slid: moved smoothly along
slim: thin
slip: to slide and fall
slit: a long, thin cut
slob: a messy person
slope: ground that goes up or down
slot: a thin hole for a coin
slow: not fast
slug: a snail without a shell
smash: to break into pieces with a crash
smell: what your nose does
smile: to turn up your mouth because you are happy
smith: a person who makes things out of metal
smug: too pleased with yourself
snag: to catch on something sharp
snail: a slow animal with a shell on its back
snake: a long animal with no legs
snap: to break with a crack
snare: a trap made of string
snatch: to grab quickly
sniff: to smell with quick breaths
snore: to make a noise while asleep
snow: white flakes that fall when it is cold
snub: to act as if someone is not there
soak: to make very wet
soap: you wash your hands with it
soar: to fly high without moving the wings
sob: to cry hard
sock: you wear it on your foot
sod: grass with its roots and earth
soft: not hard
soil: earth that plants grow in
sole: the bottom of a shoe or a foot
song: music with words
soon: in a short time
sore: hurting a little
sort: to put things that are alike together
sound: what you hear
soup: a hot food that you eat with a spoon
sour: tasting like a lemon
south: the other way from north
sow: to put seeds in the ground
space: room; where the stars are
span: to reach across
spare: one more than you need
spark: a tiny bit of fire that flies up
speech: a talk in front of people
speed: how fast something goes
spell: to say or write the letters of a word
spend: to use money or time
spent: used up, as money or time
spill: to let milk or water run out
spin: to turn around and around
spine: the row of bones down your back
spit: to push out of your mouth
splash: to make water fly about
split: to break or cut into two parts
spoon: you eat soup with it
sport: a game such as soccer
spot: a small round mark; a place
sprain: to twist a foot or a hand so that it hurts
spray: to blow out tiny drops
spring: the time of year when flowers come up
sprout: to begin to grow
spud: a potato
spy: someone who watches in secret
squid: a sea animal with ten arms
stain: a spot that will not wash out
stair: one of the steps to another floor
stake: a pointed stick in the ground
stale: old and dry, as bread
stall: a small room for a horse; to wait on purpose
stamp: a small paper that you stick on a letter
stand: to be on your feet
star: a tiny light in the night sky
stare: to look for a long time
start: to begin
state: one of the fifty parts of our country
stay: to not go away
steal: to take what belongs to someone else
steam: what comes up from very hot water
steel: a strong, hard metal
steep: going up or down in a sharp slant
steer: to turn the wheel of a car
stem: the part of a plant that holds the flower
step: to put one foot down; one part of a stair
stew: meat and vegetables cooked slowly in a pot
stick: a thin piece of wood; to hold fast with glue
stiff: hard to bend
still: not moving
sting: to hurt with a sharp point, as bees do
stir: to mix with a spoon
stock: things kept in a store to sell
stole: took what was not theirs
stone: a small rock
stood: was on two feet
stool: a seat with no back
stop: to not go on
storm: strong wind with rain or snow
stove: you cook on it
strain: to try too hard
strap: a long band that holds something on
stray: a pet that has no home
streak: a long, thin mark
stream: a small river
street: a road in a town
stress: a worried, tight feeling
stretch: to make longer by pulling
string: a thin cord
strip: a long, narrow piece
strum: to brush your hand over the strings of a guitar
stud: a small round button or pin
stuff: things of any kind
stun: to surprise very much
stunt: a hard trick that people like to watch
sub: a boat that goes under water; a teacher for a day
suck: to pull in with your mouth
suit: a coat and pants that match
sum: what you get when you add
sun: the star that gives us light by day
sung: made music with the voice
sunk: gone to the bottom of the water
surf: waves that break on the beach
swam: moved through water with arms and legs
swamp: wet land with trees
swan: a big white bird with a long neck
swap: to trade one thing for another
sweep: to clean a floor with a broom
sweet: tasting like sugar
swell: to get bigger
swim: to move through water
swing: a seat on ropes that goes to and fro
switch: you flip it to turn on a light
tab: a small flap to pull
tack: a short, sharp nail
tackle: to grab someone and stop the run
tad: a little bit
tag: a game of chasing; a label
take: to get hold of
tale: a story
talk: to say things to each other
tall: high from top to bottom
tame: used to people; not wild
tan: light brown
tank: a big box for water or fish
tap: to touch lightly; you turn it for water
tape: a sticky strip
tar: a thick black stuff for roads
taste: what your tongue does
taught: helped someone learn
taunt: to tease in a mean way
tax: money that people pay to the country
tea: a hot drink made from leaves
teach: to help someone learn
teal: a color between blue and green
team: people who play together against others
tear: a drop from your eye; to rip
teen: someone from thirteen to nineteen
tell: to say something to someone
ten: the number after nine
tend: to take care of
tent: a house of cloth to camp in
term: a part of the school year
test: questions that show what you know
thick: not thin
thief: someone who takes what is not theirs
thin: not thick
thing: anything you can see or touch
thorn: a sharp point on a stem
thought: what is in your mind
thread: a thin string to sew with
threw: made a thing fly out of the hand
thrill: a sudden feeling of great joy
throat: the inside of your neck
throne: the chair of a king or a queen
throw: to make a ball fly out of your hand
thrust: to push hard
thumb: the short, thick finger
tick: the sound that a clock makes
tickle: to touch lightly and make someone laugh
tide: the sea coming in and going out
tie: to make a knot or a bow
tight: fitting very closely
tile: a flat, hard square on a floor or a wall
till: up to the time that; the box for money in a store
time: minutes, hours and days
tin: a soft, silver metal
tip: the very end of something
tire: the rubber around a wheel
toe: one of the five on your foot
told: said to someone
toll: money you pay to use a road
tom: a male cat or turkey
ton: a very heavy weight
tone: how a voice or a note sounds
too: also; more than enough
tool: a thing to work with, such as a hammer
tooth: you chew with it
top: the highest part
torch: a stick with fire at one end
torn: ripped apart
toss: to throw
tow: to pull a car or a boat with a rope
town: houses and streets where people live
toy: something to play with
track: marks that feet leave; rails for a train
trade: to give one thing and get another
trail: a path in the woods
train: cars that run on rails
trap: something to catch an animal
trash: what you throw away
tray: a flat board to carry food on
treat: something special and good
tree: a tall plant with a trunk and branches
trend: what more and more people do
tribe: families who live together as one people
trick: something you do to fool or surprise people
trickle: to run slowly, drop by drop
trim: to cut a little off
trip: to catch your foot and fall; a journey
triple: three times as much
troop: a group of scouts or soldiers
trot: how a horse runs slowly
trout: a fish that lives in streams
true: so; not made up
try: to see if you can do it
tub: you take a bath in it
tube: a long, hollow thing
tuck: to push the edge in
tug: to pull hard
tun: a very big barrel
tune: the notes of a song
twig: a small branch
twin: one of two children born together
twist: to turn one end
vain: too proud of how you look
vale: low land between hills
van: a car with a lot of room
vast: very, very big
vat: a very big tub
veal: meat from a calf
vent: an opening that lets air in or out
verb: a word for what someone does
verse: some lines of a poem or a song
vest: a coat without sleeves
vet: a doctor for animals
vote: to say which one you choose
wad: a lump of paper or cloth
wag: to move a tail from side to side
wage: money that is paid for work
wait: to stay until something happens
wake: to stop being asleep
walk: to go on foot
wall: the side of a room
wand: a stick for magic
want: to wish to have
warm: a little hot
warn: to tell of danger
wash: to make clean with water
wasp: a thin insect that stings
waste: to use more than you need
wax: what candles are made of
way: how to get there
weak: not strong
web: what a spider makes
wed: to marry
weigh: to find out how heavy something is
well: in a good way; a deep hole with water
wen: a lump under the skin
went: moved away from here
west: where the sun goes down
wet: with water on it
whack: to hit with a loud sound
wheat: a plant whose seeds make flour
when: at what time
whim: a sudden idea
whip: to beat cream or eggs fast
white: the color of snow
whiz: to go by very fast
why: for what reason
wide: far from side to side
wig: hair that you can put on
wiggle: to move from side to side
will: is going to
win: to come in first in a game
wind: moving air; to turn round and round
wing: a bird flies with it
wink: to close one eye and open it again
wire: a thin thread of metal
wish: to want something very much
wit: a quick, funny mind
with: together; having
wok: a round pan
woke: stopped being asleep
wood: what trees are made of
wore: had on, as clothes
world: the earth and all that is on it
worm: a long, soft animal that lives in the earth
worse: not as good as before
worth: how much something costs or means
wound: a place where the body is hurt
wow: what you say when you are surprised
wrap: to put paper around
wrench: a tool that turns nuts and bolts
wrist: where your hand joins your arm
wrote: put words on paper
yak: a big animal with long hair
yam: a sweet, orange root to eat
yap: to bark in a high voice
yarn: thick thread to knit with
yeast: it makes bread dough rise
yell: to shout
yen: money in Japan; a wish for something
yes: the word to say that it is so
yet: up to now
yip: a short, high bark
zap: to hit with a quick flash
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
