/** Sentences with r-controlled vowels and diphthongs. */
export const R_VOWEL_SENTENCES = `
# er
My sister said nothing, but her letter said it all.
There is nothing better than butter, if you ask my sister.
My sister ate dinner in the tree.
The letter is in the silver box.
The river is deeper after the rain.
The hamster is faster than my sister.
Winter is over, but my fingers are still cold.
A spider is a clever helper.
Finish the letter after dinner.
The pepper went up her nose!
The rooster woke the teacher.
The butter is under the ladder.
My sister is better at chess than the teacher.
Never let a hamster drive.

# ar
Omar parked his car in the yard.
Omar and the shark had a party.
Our car is always in the barn.
Whisper the number to your partner.
The farm cat sat in the dark barn.
A star is far, but the park is not.
The shark has sharp teeth and a smart hat.
We start the march with the harp.
My arm is stuck in the jar!
The dog barks at the stars.
Carmen made a card and a scarf.
The party starts after dark.
This tart is as hard as a rock!
A lark sang in the yard.
The car is in the barn, and the cart is in the yard.
Sharks do not need a scarf.
Start the car and mark the map.

# ur
The fur on the cat curls.
My turn, then your turn!
The surf turned my hat upside down.
Do not burn the turnips!
On Thursday we surf.
The curb is high, so lift your feet and turn.
A burst of rain hit the surf.
Turn on the light and curl up with me.
It hurts when I bump my elbow.
It is your turn to turn the rope.

# or
The school is short of forks.
The corn grows in the north.
I was born in a storm.
The short fork is for the corn.
We play a sport in the morning.
The torn shorts are on the porch.
He honked the horn at the stork.
A storm in the north made the porch wet.
Popcorn is popping on the porch.
The stork sorts forks for fun.
The storm is over, so let us eat corn on the porch.
My horn is worn, but it still honks.
Sort the corks by size, or sort them for fun.

# ir
The pretty bird hid in the corn.
The girl will move when the bird is gone.
The first bird chirps at six.
A girl in a green skirt twirls.
My shirt has dirt on it.
Stir the dirt and plant the seeds.
Sir, there is a bird on your hat!
The thirsty girl drank a glass of milk.
It is his birthday, so the bird sings first.
The dirt on my skirt is in the shape of a bird.

# ou
Count the clouds out loud.
We found a trout under the couch!
The hound dug up the ground.
The trout has a proud mouth.
The snow in the south is not on the ground.
Do not shout, or the hound will shout back.
She counted ten sprouts in the ground.
A round cloud came up from the south.
He found his mouth with the spoon.
The scout ran round and round the tree.
I am so proud that I can shout out loud!
The sound of the hound is loud.

# oi, oy
My toys move, and then they are gone.
Four boys and a toy stood at the door.
The boy has a toy and a coin.
The noisy boy enjoys the drum.
Point to the soil where the seeds grow.
Roy pointed at the foil, and it was a coin.
Roy dropped the coin in the soil.
Boil an egg and join us.
This toy is a joy, but it is noisy.
"Enjoy the moist soil," said the frog.

# ow as in cow
You should know how to splash.
How many seals can read?
How did the cow get down?
The brown cow has a crown.
The clown in town has a frown.
The flower is brown now.
A shower fell on the town.
Now the cow is in the tower.
We went to town to see the clowns.
The crowd let the cow go first.
An owl sat on the crown of the clown.
Power down and look at the flowers.
The cowboy joined the boys at lunch.

# au, aw
Both paws can pull the straw.
The hawk saw a claw in the straw.
Paul draws a fawn on the lawn.
We yawn at dawn.
The launch is at dawn, so do not yawn.
Haul the straw to the barn.
The cat has a sharp claw and a strong jaw.
The crab crawls on the lawn.
It is the fault of the fawn.
Can a dog draw with its paw?
The hawk yawned, and then I yawned.
`;
