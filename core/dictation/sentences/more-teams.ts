/** Sentences with more vowel teams, vowels changed by a neighbor, and quiet partners. */
export const MORE_TEAM_SENTENCES = `
# ie as in shield, ey
Four babies sat at the door.
Anyone can see that the donkey is beautiful.
The ferry carried a parrot and a raccoon.
The donkey has the key to the field.
The puppies hid the cookies in the chimney.
The turkey believes it is a donkey.
The babies and the ponies rode the trolley.
The chief gave me a brief smile.
The hockey team sat in the valley.
Ladies, the puppies are in the field.
I believe the donkey ate the cookies.
Alley cats tell the best stories.
The key is in the field with the daisies.
Our bunnies have families in the valley.
It is a relief to find the keys.

# ea as in bread
I bought bread, and then we had to break it.
The bread is ready, so spread the jam.
My head is as light as a feather.
A heavy sweater made him sweat.
Breakfast is bread and jam.
Instead of bread, the duck ate my hat.
The weather is pleasant, but my feather is wet.
The thread is steady, but my hand is not.
He went ahead and spread the weather map.
A feather is not heavy, even on your head.

# ew, both sounds
She brought the busy crew a stew.
The crew chewed the new stew.
A few bolts flew off the jeep.
The newspaper blew away.
The crew threw the stew in the sea.
I chew it a few times.
The newt drew a jewel.
The crew grew beans on the deck.
Dew fell, and a few seeds grew.
She drew the crew in the newspaper.
The wind blew, and the jewels flew.
She bought a book and brought it home.

# ie as in pie, oe
The water goes down, and the cow looks.
I caught the pie, so you do not have to buy one.
We go, he goes, and the duck will go last.
He tried the pie and cried.
Joe went on tiptoe to the pie.
The flies tried the fries.
Tie the rope, but not to your toe.
"The pie is for the flies," said the spider.
Potatoes do not have toes.
She lies in the sun and eats tomatoes.
Untie my toe, please!
He dried his toes and tried again.
The skies cried, and then the sun came out.
Joe tied the pies to the goat.

# ue, both sounds
My daughter got up early to find the clue.
The clue is in the glue.
Rescue the cat on Tuesday!
We continue to argue about the barbecue.
It is true that glue is sticky.
Follow the clue to the rescue!
On Tuesday we argue, and then we eat.
The value of glue is that it holds.
The rescue team got stuck in the glue.
Sue has a clue about the barbecue.
The glue is due on Tuesday.
We value a true friend.
I heard an early bird.

# ar and or after w
Write the word, and then draw it.
My favorite worm lives in the earth.
The author of this book draws straws.
The worm works in the warm garden.
The doctor has a warm tractor.
An actor forgot his words.
"The world is full of worms," said the bird.
I warn you, the worm is warm.
Do not forget your homework.
The sailor told the doctor a secret.
A word of warning: the worm is ticklish.
The tractor is working in the warm sun.
The worst actor in the world is my cat.
The doctor is worth a warm thank you.
The editor forgot a word.

# o as in monkey
The monkey sat still for one hour.
The monkey has honey on its gloves.
A dozen monkeys cover the bed.
My grandmother shovels the snow for fun.
I wonder who put a sponge in my bed.
Mother loves Monday and honey.
My son has wonderful gloves.
The other monkey has the shovel.
Cover the honey, or the monkeys will come.
My brother lost another dozen gloves.
Come to the front and discover the honey.

# all, alk
I learn to walk tall in the hall.
The tennis ball is missing, and my puppy is grinning.
We walk and talk in the hall.
All the balls fell in the small stall.
The chalk is by the basketball.
Walk down the hall, and do not fall.
Salt fell on the football.
A small koala took a walk.

# a after w and qu
I often want to watch a movie about swans.
She will wash the dish.
The swan wants to wash in the swamp.
I want a waffle, not a walnut.
The wasp wanders over the water.
The squad swapped watches.
Watch the swan swallow a squash.
Wash the wand, and the water will shine.
What a waffle! I want two.
The swan watched us wash the van.
He wanted to swap a wallet for a waffle.
The swamp is full of water and wasps.
The quality of the waffle is good.
The tall boy talks to the wall.
The koala always falls asleep on the wall.

# kn, wr
Sometimes the knight likes to knit.
Sleep tight, little knight of the night!
The knight bumped his knee.
Knock, knock! Who is there?
Wrap the gift and knot the string.
I know the knight who wrote this.
Write with your wrist, not with your knee.
She knits socks for knights.
I knew the knot was wrong.
Kneel, and I will wrap your wrist.
The writer knows how to knit.
He wrote the wrong name on the wrapper.

# gn, mb
The gnat went straight to the crumb, even though it was small.
The lamb has a crumb on its nose.
A gnat sat on the lamb.
The plumber sat on his thumb.
Design a sign with your thumb.
My thumb is numb from the snow.
The gnome gave a crumb to the lamb.
A gnat is as small as a crumb.
The plumber found a gnome in the sink.

# ph
Whose elephant is on the phone?
Andrew flew to the sea with his nephew.
The elephant is on the phone.
The dolphin took a photo.
My nephew knows the alphabet.
A dolphin cannot use a telephone.
The elephant sat for a photograph.
Phone the elephants and invite them to lunch.
My nephew has a photo of a dolphin.
The phone rang, but it was just an elephant.
The alphabet has no elephant in it.
The graph shows that dolphins like photos.
Ralph phoned his nephew in the morning.
`;
