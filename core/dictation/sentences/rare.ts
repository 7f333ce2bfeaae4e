/** Sentences with rarer vowels and rarer vowels with r. */
export const RARE_SENTENCES = `
# -ain, -ine, -ite, -ome
The captain is behind the curtain.
I am certain the captain is asleep.
Imagine a mountain of mashed potatoes.
The engine took us up the mountain.
A fountain is behind the curtain.
The captain took his medicine.
Imagine a fountain of juice!
The engine is on the opposite side.
My favorite mountain is the small one.
The villain is certain, but the captain is kind.
It will be ready in a minute, captain.
Separate the opposite socks.
My stomach is not at school today.

# augh, ough
My daughter taught the cat a trick.
I thought I ought to help.
The naughty goat got caught.
We fought the wind with an umbrella.
He taught me, and I taught him.
The haughty cat sought a seat.
Thoughtful people share.
I thought the goat was naughty, but it was just hungry.
The daughters brought a thoughtful gift.
You ought to see what I caught!

# ou as in double
A year ago I was a year younger.
My cousin is in trouble.
The young couple lives in the country.
My young cousin doubled over with giggles.
A touch of frost is in the country.
Do not touch that, or there is trouble.
The younger cousin got into double trouble.
A couple of young ducks live in the country.
It was no trouble, just a touch of mud.

# i as in radio, i_e as in machine
The prince sat in the police car by chance.
I am speechless with happiness.
The champion has a new companion.
The piano is in the studio.
The radio played, and the pony danced.
The taxi driver has a radio.
Broccoli is funnier than macaroni.
The stadium was quiet at night.
A magazine about police cats is on the piano.
We ski happier when it snows.
The audience is happier than the pianist.
It is easier to ski than to fly.
The police gave the alien a ride.
The radio is on the piano in the taxi.

# -ous
This enormous pie is delicious.
A dangerous slide is not for us.
The generous giant has enormous socks.
My cat is jealous of the famous dog.
It is ridiculous to be jealous of a sandwich.
A gorgeous sunset made me joyous.
The nervous dragon is not dangerous.
Obviously, the cake was delicious.
The enormous snail is famous for being slow.

# y as in gym, y_e, ye
The fitness of the snail is a mystery to me.
The gym has a new system.
My bicycle is a mystery.
The python likes to type.
What type of crystal is this?
The symbol on the tricycle is a star.
Goodbye, and bring the tricycle.
The style of this hat is a mystery.
Type a symbol and say goodbye.
Bread made of rye is a type of bread.
The lynx rode a bicycle to the gym.
The league has a unique cup.

# eigh, ei as in reindeer
Eight reindeer came to the sleigh.
The neighbor weighs his cat.
The weight of the sleigh is eighty pounds.
My neighbor has eighteen cats.
The reindeer has a weight on its back.
Neighbors are good to have.
Eighteen plus eighty is a lot.
Does the sleigh weigh more than the reindeer?
The freight train weighs more than a sleigh.
My eight neighbors ride in one sleigh.

# ou as in soup
The soup is for the group.
A group of tall ducks came for soup.
The route to the soup is short.
You and your group may eat soup.
Our daily routine is soup and a nap.
The soup went cold on the route home.
The group took the long route.
Soup is my routine on Monday.
The cougar has no use for soup.

# ei as in ceiling
Either the ceiling is low, or I am tall.
I received a kite, and neither wing is torn.
The ceiling has a spider.
Did you receive my letter?
Neither the cat nor the dog can reach the ceiling.
Either seize the day or take a nap.
She received a receipt for the ceiling fan.
I perceive a fly on the ceiling.
Neither of us can see the ceiling in the dark.

# ui, eu
The fruit juice is on my suit.
The cruise ship has fruit for all.
I am neutral about fruit.
The bruise on the fruit is brown.
A juicy fruit fell in my suitcase.
My swimsuit is in the suitcase.
The suitcase is full of juicy fruit.
We recruit players for the fruit team.
A bruise is blue and then it is yellow.
In his suit, he went on a cruise.
Cut along the line with the scissors.
My tongue is blue from the fruit.

# ar as in parent, er as in cherub
My aquarium has an alien in it.
My parents are in the library.
The librarian is not scary.
I compared the dictionary to a brick.
The canary is wary of the library.
Sharing with parents is necessary.
The dictionary is scary, but it helps.
Various parents came to the ceremony.
The library area is for sharing books.
It is necessary to feed the canary.
An experiment in the library was a bit scary.
The vegetarian canary likes carrots.

# our as in four, oor
Omar writes a word on the floor with chalk.
Four doors are on this floor.
Pour the soup, but not on the floor.
We play indoors on the floor.
The fourth door is yours.
The court is indoors.
Pour the milk into four cups.
The golf course is outdoors, of course.
Of course, the door is open.
The doorbell rang four times.

# ear as in earth, our as in journey
We search the earth for pearls.
The early bird learned to type.
My journey is in my journal.
Learn a word each day on your journey.
It takes courage to rehearse.
The pearl is on earth, and we search for it.
She earned a pearl for her courage.
I encourage you to learn early.
The journey around the earth is long.
We learned to search and heard the earth hum.

# er as in hero, ir as in spirit
A mysterious, marvelous smell came from the kitchen.
Our hero had cereal for lunch.
The mysterious hero is serious.
It is a miracle that the cereal is hot.
The spirit of the team is high.
The hero has zero fear.
A serious hero eats cereal.
The series is about a mysterious pyramid.
The material of the cape is mysterious.
Zero plus zero is still zero.
The interior of the pyramid is dark.
I had an experience with a serious mirror.

# our as in tour, ur as in rural and fury
The curious tourist is on a tour.
A tour of the rural village is fun.
The jury is curious about the cat.
During the tour, I lost my hat.
The tourist had a furious goose behind him.
The rural mural shows a curious hen.
The poor tourist sat on gum.
During lunch, the jury had soup.

# irr, urr and other rare ones
The squirrel has syrup on its tail.
Hurry! The squirrel is stirring the soup.
My cat will purr if you hurry.
A furry squirrel ran up the tree.
The syrup is on the furry cat.
The forest has a squirrel in each tree.
We hurry, and the squirrels scurry.
Stirring syrup takes courage.
The hurricane was over, and the squirrels ran out.
A purring cat is a furry motor.

# ere, ier
Here is the pier.
The fierce wind is severe.
A sphere is round like the earth.
The fierce cat is sincerely sorry.
The cashier sat on the pier.
A severe wind blew the cashier off the pier.
The kitten is merely fierce.
"I am here," said the fierce bear.

# ir as in pirate, yre
I admire your tired feet.
The pirate is tired.
The pirate heard a siren.
A spiral staircase made the pirate tired.
The tired pirate retired to bed.
The pirates admired the spiral shell.
I am tired of pirates in the bath.
The siren inspired the pirate to dance.
The pirate hired a cook and a parrot.
Our environment inspired the pirate.
`;
