/**
 * Meanings of our own, in plain words that a teacher can say aloud to children:
 * the sense of a child's world first. For words that boards and drills show
 * often, and where WordNet's first fit sense is another, is cut, or is unkind.
 * Written for this project by a language model, read by no practicing teacher
 * yet. At most 60 signs each. Sorted.
 */
const TEXT = `
ail: to feel sick
bag: something to carry things in
balm: a soft cream that soothes your skin
ban: to say that something is not allowed
bang: a sudden loud noise
bash: to hit hard
bat: a stick to hit a ball; an animal that flies at night
bath: a wash in a tub of water
beg: to ask and ask for something
bell: it rings when you swing or press it
bib: a cloth that keeps a baby's shirt clean
bid: to offer to pay for something
bill: a paper that says what you must pay; a bird's beak
bin: a box to keep or throw things in
blab: to tell a secret
blip: a tiny dot of light or a tiny sound
blob: a soft lump with no shape
blog: pages on the internet where someone writes
blot: a spot of ink
bob: to move up and down
bog: wet, soft ground
bop: to dance
boss: the person who tells others what work to do
brag: to say how great you are
bran: the outside of a grain, good to eat
brat: a child who behaves badly
brig: a ship with two masts
brim: the edge of a cup or a hat
buck: a male deer
bud: a flower that is not open yet
buff: to rub until it shines
bug: an insect
bun: a small round bread
buss: a kiss
buzz: the sound that a bee makes
cab: a car with a driver that you pay for
cad: a man who does not act well toward others
calm: quiet and still
cam: a wheel that pushes a part of a machine
cap: a soft hat
cash: coins and paper money
cat: a small furry pet that purrs
chap: a man or a boy
chat: a friendly talk
chef: a person who cooks for a job
chin: the part of your face below your mouth
chip: a thin piece, often to eat
chop: to cut into pieces
chum: a friend
clam: a sea animal in a shell
clan: a big family
clap: to hit your hands together
clip: a small thing that holds papers or hair
clog: to block a pipe; a wooden shoe
clot: a thick lump
cod: a fish that people eat
cog: a tooth on a wheel of a machine
con: a reason against something
cot: a small, light bed
crab: a sea animal with claws
cram: to push too much in
crib: a baby's bed with high sides
crop: plants that a farmer grows
cub: a young bear, lion or fox
cuff: the end of a sleeve
cup: you drink from it
dab: to touch lightly
dam: a wall that holds back water
dash: to run quickly
debt: money that you owe
deck: the floor of a ship; a set of cards
den: where a fox or a bear lives
dig: to make a hole in the ground
dim: not bright
dip: to put in and take out again
dish: a plate or a bowl
dock: the place where a boat is tied up
dog: a pet that barks
doll: a toy that looks like a person
don: to put on clothes
dot: a small round mark
dote: to love someone very much
dove: a white or gray bird
drab: dull, with no bright colors
drag: to pull along the ground
drip: to fall in drops
drum: you hit it to make music
dub: to give a name to
duck: a bird that swims and quacks
dud: a thing that does not work
dull: not bright or not sharp
fad: something many people like for a short time
fan: it blows air to keep you cool
fat: thick or big around
fen: low, wet land
fib: a small lie
fig: a soft, sweet fruit
fill: to make full
fin: the part that a fish steers with
fizz: to make many small bubbles
flag: a cloth on a pole that stands for a country
flap: to move up and down like a wing
flat: with no bumps or hills
flex: to bend
flip: to turn over quickly
flit: to fly or move lightly
flop: to fall down loosely
flux: a time when things keep changing
fog: a cloud close to the ground
fox: a wild animal with a bushy tail
fret: to worry
frog: a small green animal that hops and croaks
fuss: too much worry about a small thing
fuzz: soft, short hair
gab: to talk a lot
gag: a joke
gait: the way you walk
gal: a girl or a woman
gang: a group that does things together
gap: an empty space between two things
gash: a long, deep cut
gel: a thick, wet jelly
gem: a stone that shines, such as a ruby
gig: a show by a band
glib: talking smoothly without thinking
glum: sad and quiet
gnarled: twisted, like an old tree
gob: a lump of something soft
grab: to take quickly
gram: a small weight, about a paper clip
grid: lines that cross and make squares
grim: serious and not happy
grin: a big smile
grip: to hold tight
grit: tiny bits of sand or stone
grub: a young insect that looks like a worm
gull: a white and gray bird by the sea
gum: something soft that you chew
gush: to flow out fast
gym: a big room for sports
hag: an old witch in a story
hall: a long room that leads to other rooms
ham: meat from a pig
hash: meat and potatoes cut small and fried
hem: the sewn edge of a skirt
hen: a female chicken
hill: ground that is higher than the rest
hip: the side of your body where your leg begins
hiss: the sound that a snake makes
hog: a big pig
hop: to jump on one foot
huff: to breathe hard; to be a bit angry
hug: to hold someone in your arms
hull: the bottom of a ship
hum: to sing with your mouth closed
hut: a very small house
hymn: a song for church
jab: to poke quickly
jam: sweet fruit to put on bread
jazz: a kind of music with a lively beat
jet: a fast airplane
jig: a lively dance
jog: to run slowly
jot: to write down quickly
jug: something to pour from
keg: a small barrel
ken: what a person knows
kick: to hit with your foot
kin: your family
kiss: to touch with your lips
kit: a set of things to make or do something
knit: to make cloth from yarn with two needles
knob: a round handle
knot: where string is tied
lab: a room to find things out by trying
lack: to not have enough
lad: a boy
lag: to be slower than the others
lamb: a young sheep
lap: the top of your legs when you sit
lass: a girl
lick: to move your tongue over something
lid: the top that closes a pot or a jar
limb: an arm, a leg or a branch
lip: the edge of your mouth
log: a piece of a tree trunk
lug: to carry something heavy
lull: a short quiet time
lung: the part of your body that holds air
mall: a big building with many shops
map: a drawing that shows where places are
mash: to crush until soft
mass: how much of something there is
mat: a small rug
math: numbers, shapes and counting
mill: a place where grain is made into flour
mince: to cut very small
miss: to not hit or not catch
mix: to stir together
mob: a big, wild crowd
mock: to laugh at someone in an unkind way
mop: you wash a floor with it
moss: soft green plants on stones and trees
moth: an insect like a butterfly that flies at night
muck: wet dirt
mud: wet, soft earth
muff: a warm roll of fur for your hands
mug: a big cup with a handle
mum: silent, saying nothing
mutt: a dog of mixed kinds
myth: a very old story
nab: to catch or grab
nag: to ask someone again and again
nap: a short sleep
net: string tied with holes, to catch fish or balls
nib: the sharp tip of a pen
nick: a small cut
nip: a small bite
nod: to move your head up and down for yes
numb: when you cannot feel anything there
nun: a woman who lives and prays with others
nut: a seed with a hard shell
pack: to put things in a bag
pad: something soft, or paper to write on
pal: a friend
palm: the inside of your hand; a tree with big leaves
pan: a flat thing to cook in
pat: to touch softly with your hand
path: a small way to walk on
peck: to bite with a beak
peeled: with the skin taken off
peg: a small stick to hang things on
pen: you write with it in ink
pep: energy
pet: an animal that lives with you
pig: a farm animal that says oink
pin: a thin, sharp bit of metal that holds things
pit: a hole in the ground; the seed of a peach
plot: what happens in a story
plug: it stops a hole or goes into the wall
plum: a sweet purple fruit
pod: where peas grow
poll: a count of what people think
pot: something deep to cook in
prom: a dance at a high school
prop: something that holds a thing up
puff: a small cloud of air or smoke
pun: a joke with a word that means two things
pup: a young dog
putt: to hit a golf ball softly
quiz: a short test
rack: a frame to hang or put things on
rag: an old piece of cloth
ram: a male sheep
rap: to knock; a song that is spoken fast
rash: red spots on your skin
rat: an animal like a big mouse
ref: the person who says who plays fair
rib: a bone in your chest
rich: having a lot of money
rig: a big truck
rim: the round edge of a cup or a wheel
rip: to tear
rob: to take what is not yours
rock: a big stone
rod: a long, thin stick
rot: to go bad
rub: to move your hand back and forth over something
rug: a soft mat on the floor
rung: a step of a ladder
rush: to hurry
rut: a deep track made by wheels
sac: a small bag inside an animal or plant
sack: a big bag
sag: to hang down in the middle
sap: the juice inside a tree
sax: a shiny horn for playing jazz
scab: the crust over a cut that heals
scam: a trick to get money
scan: to look over quickly
sconce: a lamp on a wall
shed: a small house for tools
shin: the front of your leg below the knee
sip: to drink a little
skin: what covers your body
skip: to hop from foot to foot
slam: to shut with a bang
slap: to hit with a flat hand
sled: you slide down snow on it
slim: thin
slip: to slide and fall
slit: a long, thin cut
slob: a messy person
slot: a thin hole for a coin
slug: a snail without a shell
smug: too pleased with yourself
snag: to catch on something sharp
snap: to break with a crack
sob: to cry hard
sock: you wear it on your foot
sod: grass with its roots and earth
song: music with words
span: to reach across
spin: to turn around and around
spit: to push out of your mouth
stem: the part of a plant that holds the flower
stud: a small round button or pin
stun: to surprise very much
sub: a boat that goes under water; a teacher for a day
suck: to pull in with your mouth
sum: what you get when you add
swan: a big white bird with a long neck
swap: to trade one thing for another
swim: to move through water
tab: a small flap to pull
tack: a short, sharp nail
tad: a little bit
tag: a game of chasing; a label
tall: high from top to bottom
tan: light brown
tap: to touch lightly; you turn it for water
tax: money that people pay to the country
thin: not thick
tick: the sound that a clock makes
tin: a soft, silver metal
tip: the very end of something
toll: money you pay to use a road
tom: a male cat or turkey
ton: a very heavy weight
toss: to throw
trap: something to catch an animal
trim: to cut a little off
trot: how a horse runs slowly
tub: you take a bath in it
tuck: to push the edge in
tug: to pull hard
tun: a very big barrel
twig: a small branch
twin: one of two children born together
van: a car with a lot of room
vat: a very big tub
vet: a doctor for animals
wad: a lump of paper or cloth
wag: to move a tail from side to side
wax: what candles are made of
web: what a spider makes
wed: to marry
wen: a lump under the skin
wet: with water on it
whim: a sudden idea
whip: to beat cream or eggs fast
whiz: to go by very fast
wig: hair that you can put on
wing: a bird flies with it
wit: a quick, funny mind
wok: a round pan
wrap: to put paper around
yak: a big animal with long hair
yam: a sweet, orange root to eat
yap: to bark in a high voice
yell: to shout
yen: money in Japan; a wish for something
zap: to hit with a quick flash
zip: to close a coat by its metal teeth
zit: a small red spot on your skin
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
