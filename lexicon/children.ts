/**
 * Words of a young child's day that film subtitles make look rare. Written for
 * this project; each is ranked no lower than the band where children's
 * everyday words stand. Alphabetical order is not kept: they are grouped as
 * they come to mind, by theme.
 */
export const CHILDRENS_WORDS: ReadonlySet<string> = new Set(
  `ant bat bear beaver bee beetle bird bug bull bunny butterfly calf camel cat caterpillar cheetah chick
   chicken chimp clam cod colt cow crab crow cub deer dog dolphin donkey dove dragon duck duckling
   eagle eel elephant elk emu fawn fin fish flea fly foal fox frog giraffe goat goldfish goose gorilla
   gull hamster hare hawk hen hippo hog horse hound insect jellyfish kangaroo kid kitten koala ladybug
   lamb leopard lion lizard lobster mole monkey moose mosquito moth mouse mule newt octopus ostrich
   otter owl ox oyster panda parrot peacock penguin pet pig pigeon pony pup puppy rabbit raccoon ram
   rat rhino robin rooster seal shark sheep shell shrimp skunk slug snail snake sparrow spider squid
   squirrel swan tadpole tiger toad trout turkey turtle wasp whale wolf worm yak zebra
   acorn bark bay beach blossom branch breeze brook bud bush cave cliff cloud daisy dew dirt dusk dust
   fern field flood flower fog forest frost garden grass hail hay hedge hill hive ice icicle island
   jungle lake lawn leaf leaves log maple mist moon moss moth mud nest nut oak ocean petal pine plant
   pond pool puddle rain rainbow reef ripe river rock root rose sand sea seed shade shadow sky snow
   soil splash spring sprout star stem stick stone storm stream summer sun sunny sunset sunshine thistle thorn
   thunder tide tree trunk tulip twig vine wave weed wind windy winter wood woods
   apple bacon bagel banana bean beans beef beet berry biscuit bread broccoli brunch bun butter cabbage
   cake candy carrot celery cereal cheese cherry chips chocolate chop cocoa coconut cookie corn cracker
   cream crisp crumb crumbs crust cupcake dessert dinner dip dish dough egg feast fig fork fries fruit
   fudge garlic glass grape gravy ham honey hungry jam jar jelly juice ketchup kettle knife lemon
   lemonade lettuce lime lunch meal meat melon milk mint muffin mug mushroom mustard noodle noodles nuts
   oats olive onion orange oven pan pancake pasta peach peanut pear peas pepper pickle picnic pie
   pineapple pizza plate plum popcorn pork pot potato pretzel pudding pumpkin radish raisin raspberry
   recipe rice salad salt sandwich sauce sausage sip slice snack soda soup spice spinach spoon steak
   stew strawberry sugar supper sweet syrup taco tart tea toast tomato vanilla waffle walnut water wheat
   yam yogurt
   apron backpack badge bag ball balloon band basket bat bath bathtub bead bed bedroom bedtime bell belt
   bench bib bike blanket block boat book boot boots bottle bow bowl box bracelet brick broom brush
   bubble bucket button cab cage candle cane cap cape cart castle ceiling chain chair chalk circle clap
   clay clip clock closet coat coin collar comb computer cot couch crayon crib crown cube cup curl
   curtain desk dice dishes doll door drawer dress drill drum dryer easel eraser faucet fan feather
   fence flag flashlight floor flute folder gate gift glove gloves glue goggles gown grid gum hammer
   handle harp hat helmet hinge hood hook hoop hose house hut ink jacket jeans jet jewel jug key kite
   kitchen knot lace ladder lamp lantern latch lid lock lunchbox magnet map marble mask mat mattress
   medal mirror mitten mitten mittens mop nail napkin necklace needle net notebook oar package pad page
   pail paint paintbrush pajamas pants paper patch paw pen pencil penny piano pillow pin pipe plug
   pocket poster puppet purse puzzle quilt raft rag rake ribbon ring robe robot rocket rod roof rope rug
   ruler sack saddle sail sandal sandbox saw scarf scissors scooter screw seat shampoo sheet shelf ship
   shirt shoe shoes shorts shovel shower sign sink skate skateboard skirt sled sleeve slide slipper soap
   sock socks sofa sponge stair stairs stamp stapler stool stove strap straw string suitcase sweater
   swing table tack tag tank tap tape tent thread tile tire toaster toilet tool tooth toothbrush
   toothpaste towel toy trash tray trombone truck trumpet tub tube tunnel twine umbrella van vase vest
   violin wagon wall wand watch wax web wheel whistle wig window wing wire wok xylophone yard yarn yoyo
   zipper
   alphabet art ask bake blend blink bounce brag bump chase chew chin chirp chop clean climb cluck count
   crawl cry cut dance dig dive drag draw drip dump erase fold frown giggle glide grin grow growl gulp
   hatch hiss hop hug hum hunt itch jog jump kick knit leap lick limp listen mend mix moo nap nibble nod
   paste peel peek pinch play poke pop pounce pout pull push quack quiz race reach read rhyme ride roar
   rub run scrub shout shrink sing sit skip slip smile sniff snore sob spell spill spin splash squeak
   squeeze stretch sweep swim swing thump tickle tiptoe toss trot tug twirl twist wag wiggle wink wipe
   wiggly write yawn yell zigzag zip zoom
   ankle arm aunt baby back beard belly blond body bone boy brain brother bump cheek chest child children
   clown classmate cousin cowboy crew curly dad daddy dentist doctor ear elbow elf eye face farmer father
   feet fever finger fireman fist foot forehead friend ghost giant girl granddad grandma grandmother
   grandpa hair hand heart heel hip janitor king knee knuckle leg lip lungs mama mom mommy mother mouth
   muscle neck nose nurse papa pilot pirate police prince princess queen rib sailor scab shin shoulder
   sister skin stomach teacher teeth thumb toe toes tongue tummy twin uncle vet waist witch wizard wrist
   afraid angry awake big blue bossy brave bright brown busy chilly clever cold cozy crisp cute damp dark
   dirty dizzy dry dull fluffy fuzzy gentle glad gray green grumpy happy hot itchy jolly kind lazy little
   loud lucky mad messy muddy neat nice noisy numb odd pink plain polite proud purple quick quiet red
   rough round sad scary shiny shy silly sleepy slim slimy sloppy slow smooth sneaky soft soggy sore
   sour spicy sticky stinky strong tall tame tan thick thin tidy tiny tired ugly warm weak wet white wild
   wise yellow young yummy
   add addition alarm april autumn august birthday center cent christmas class classroom clock date
   december dime eight eighteen eighty eleven even february fifteen fifty first five forty four fourteen
   fraction friday half holiday homework hour hundred inch january july june library math may minute
   monday month morning nickel night nine nineteen ninety noon november number october odd one playground
   principal quarter recess riddle rhombus saturday school second september seven seventeen seventy six
   sixteen sixty spelling square story subtract subtraction sunday ten third thirteen thirty thousand
   three thursday today tomorrow triangle tuesday twelve twenty two vowel wednesday week weekend year
   yesterday zero zoo
   ambulance barn bicycle bridge bus camp canoe carnival circus city farm ferry garage highway jeep
   parade park rocket sailboat store street subway taxi town tractor traffic trail train tricycle tugboat
   village`
    .trim()
    .split(/\s+/),
);
